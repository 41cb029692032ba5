//! The schema of a check's report: one line a key.

use serde_json::{Value, json};
use threadcalc_core::nc::{EvidenceKind, ProgramFindingId, ProgramNumberKey, Reason, ThreadSource};
use threadcalc_core::{FeedMode, Hand, SCHEMA, Severity, Unit};

use crate::words::{
    Key, always, choice, exact, flag, list, may, must, names, object, schema, some_of, text, whole, written,
};

#[rustfmt::skip]
fn keys() -> Vec<Key> {
    vec![
        must("schema", always(SCHEMA), "Version of this JSON."),
        must("tapped_holes", list(object(&hole())), "The blocks that tap, in the order in which they run."),
        must("findings", list(object(&finding())), "What is doubtful or wrong, by line and column."),
        must("not_checked", list(object(&unchecked())), "What this check could not check, and why."),
        must("never_checked", list(text()), "What no check of a text can see."),
    ]
}

#[rustfmt::skip]
pub fn hole() -> Vec<Key> {
    vec![
        must("line", whole(1), "The line, from 1."),
        must("number", whole(1), "Which of the program's tapping blocks it is, from 1."),
        may("lead_mm", exact(), "The lead that is cut in mm; null if it cannot be computed."),
        may("speed_rpm", exact(), "S in rpm; null if it is not known."),
        may("feed", exact(), "F in the program's unit and mode; null if it is not known."),
        may("hand", choice(Hand::ALL), "The hand that is cut; null if it depends on the control."),
        must("count", whole(0), "How many holes, one behind the other."),
        may("depth_mm", exact(), "From the face to the tap's end in mm; null if it is not known."),
        may("thread", text(), "Designation of the thread that is expected; null if nobody names one."),
        may("source", choice(ThreadSource::ALL), "Who names the thread."),
        may("tool", whole(0), "The tool in the spindle, T; null if it is not known."),
        may("program", whole(0), "The number of the program; null if it has none."),
        may("x_mm", exact(), "Where the hole is in the program's X in mm, of several the last one; null if it is not known."),
        may("y_mm", exact(), "The same in Y."),
        must("work_offset", text(), "The work offset that both are counted from; G54 if the program names none."),
        may("unit", choice(Unit::ALL), "The unit that the program is in; null if it does not say."),
        may("feed_mode", choice(FeedMode::ALL), "The feed mode that holds; null if the program does not say."),
    ]
}

#[rustfmt::skip]
fn finding() -> Vec<Key> {
    vec![
        must("id", choice(ProgramFindingId::ALL), "What it is."),
        must("severity", choice(Severity::ALL), "How bad it is."),
        must("line", whole(1), "The line, from 1."),
        must("column", whole(1), "Where in the line it begins, in bytes from 1."),
        must("end_column", whole(1), "The column behind its end."),
        may("program", whole(0), "The number of the program that the line is in; null if it has none."),
        must("call_path", list(whole(1)), "Lines of the calls that lead to the line, the outermost four, the outermost first."),
        may("tool", whole(0), "The tool in the spindle, T; null if it is not known."),
        may("hole", whole(1), "Which tapping block of the program, from 1; null if it speaks of none."),
        may("thread", text(), "Designation of the thread that the hole is to have; null if nobody names one."),
        must("message", text(), "What will happen, in words."),
        must("text", text(), "The same with the reading it holds under and with what to write."),
        must("numbers", some_of(&names(ProgramNumberKey::ALL), json!({ "type": ["number", "string", "null"] })), "Its numbers, derived, with their units in the names; some are a letter or a hand."),
        must("evidence", list(object(&evidence())), "The lines that it rests on."),
        must("grounds", text(), "What it rests on, in words; may be empty."),
        must("suggestion", text(), "What to write instead; may be empty."),
        must("replaces", flag(), "Whether the suggestion takes the place of what stands from column to end_column; else it is to be added, or stands for a word of another block."),
        must("reading", text(), "Which reading of an unknown fact it holds under; may be empty."),
        must("certain", flag(), "False if it rests on something assumed."),
    ]
}

#[rustfmt::skip]
fn evidence() -> Vec<Key> {
    vec![
        must("kind", choice(EvidenceKind::ALL), "What the line did."),
        must("line", whole(0), "The line, from 1; 0: the control's own default or an input of the check."),
        must("text", text(), "The same in words."),
    ]
}

#[rustfmt::skip]
pub fn unchecked() -> Vec<Key> {
    vec![
        must("reason", choice(Reason::ALL), "Why."),
        must("text", text(), "The same in words."),
        must("count", whole(1), "How often."),
        must("first_line", whole(0), "The first line."),
    ]
}

/// The whole schema.
pub fn report() -> Value {
    let about = "The answer to a check of a program. Exact values are texts, derived ones numbers, null is what there is \
        none of. Lengths are in mm, and the names carry the units.";
    schema("report.schema.json", "Report: the check of a program", about, &["exact"], written(&keys()))
}
