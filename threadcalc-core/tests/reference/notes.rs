//! The tables of texts around designations: hole notes and comments.

use crate::table::{Failure, Got, Results, Row, Table};
use threadcalc_core::{HoleNote, Length, NumberKey, Unit, read_comment, read_hole_note};

fn flags(note: &HoleNote) -> String {
    let flags = [
        (note.thread_through(), "thread-through"),
        (note.drill_through(), "drill-through"),
        (note.has_countersink(), "countersink"),
        (note.has_counterbore(), "counterbore"),
        (note.is_spotface(), "spotface"),
        (note.equally_spaced(), "equally-spaced"),
    ];
    flags.iter().filter(|(set, _)| *set).map(|(_, name)| *name).collect::<Vec<_>>().join(" ")
}

/// Byte and length of each finding `not-read`.
fn unread(note: &HoleNote) -> String {
    let number = |finding: &threadcalc_core::Finding, key| finding.numbers().find(|(known, _)| *known == key);
    let places = note.findings().iter().filter_map(|finding| {
        let (byte, length) = (number(finding, NumberKey::Byte)?.1, number(finding, NumberKey::Length)?.1);
        Some(format!("{byte}+{length}"))
    });
    places.collect::<Vec<_>>().join(" ")
}

fn hole_note_results(row: Row<'_>) -> Result<Results, Failure> {
    let unit = Unit::from_name(row.cell("unit").as_bytes());
    let note = read_hole_note(&row.bytes("text"), unit)?;
    let shown = |value: Option<Length>| Got::TextOrNone(value.map(|value| value.to_string()).unwrap_or_default());
    let thread = note.thread().map(|thread| thread.to_string());
    let place = |place: usize| Got::TextOrNone(thread.as_ref().map(|_| place.to_string()).unwrap_or_default());
    let findings: Vec<_> = note.findings().iter().map(|finding| finding.id().name()).collect();
    Ok(vec![
        ("count", Got::TextOrNone(note.count().map(|count| count.to_string()).unwrap_or_default())),
        ("thread_at", place(note.thread_at())),
        ("thread_length", place(note.thread_length())),
        ("thread", Got::TextOrNone(thread.unwrap_or_default())),
        ("thread_depth_mm", shown(note.thread_depth_mm())),
        ("drill_mm", shown(note.drill_mm())),
        ("drill_depth_mm", shown(note.drill_depth_mm())),
        ("countersink_mm", shown(note.countersink_mm())),
        ("countersink_angle_deg", shown(note.countersink_angle_deg())),
        ("counterbore_mm", shown(note.counterbore_mm())),
        ("counterbore_depth_mm", shown(note.counterbore_depth_mm())),
        ("bolt_circle_mm", shown(note.bolt_circle_mm())),
        ("flags", Got::TextOrNone(flags(&note))),
        ("sides", Got::TextOrNone(note.sides().map_or("", |sides| sides.name()).into())),
        ("plating", Got::TextOrNone(note.plating().map_or("", |plating| plating.name()).into())),
        ("findings", Got::TextOrNone(findings.join(" "))),
        ("unread", Got::TextOrNone(unread(&note))),
    ])
}

#[test]
fn reads_hole_notes() {
    Table::open("hole_note").check(hole_note_results);
}

#[test]
fn finds_threads_in_comments() {
    Table::open("comment").check(|row| {
        let tap = job_flag(row.cell("tool_is_tap"));
        let comment = read_comment(&row.bytes("text"), tap);
        let threads: Vec<_> = comment.threads().map(|found| found.thread.to_string()).collect();
        let places: Vec<_> = comment.threads().map(|found| format!("{}+{}", found.at, found.length)).collect();
        Ok(vec![
            ("threads", Got::TextOrNone(threads.join(";"))),
            ("places", Got::TextOrNone(places.join(" "))),
            ("more", Got::Text(String::from(if comment.more() { "yes" } else { "no" }))),
        ])
    });
}

fn job_flag(cell: &str) -> bool {
    match cell {
        "yes" => true,
        "no" => false,
        other => panic!("yes or no, not {other}"),
    }
}
