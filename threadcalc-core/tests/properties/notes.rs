//! Hole notes and comments: any bytes, notes made of known parts, programs that hold no thread.

use proptest::collection::vec;
use proptest::prelude::*;
use proptest::sample::select;
use threadcalc_core::{
    Code, Comment, FindingId, HoleNote, Length, NumberKey, Sides, Thread, Unit, read_comment, read_hole_note,
    standard_threads,
};

use crate::values::{bytes, config};

/// Words, signs and numbers of notes, comments and programs, joined at random.
fn pieces() -> impl Strategy<Value = Vec<u8>> {
    const PIECES: [&[u8]; 72] = [
        b"M8",
        b"M8x1.25",
        b"M20 x 10",
        b"-6H",
        b"1/4-20",
        b" UNC",
        b"-2B",
        b"10-32",
        b"1-8",
        b"G1/2",
        b"1/4 NPT",
        b"RC 1/4",
        b"4X ",
        b"4",
        b" 16",
        b".5",
        b"0",
        b"-3",
        b"1 1/4",
        b"1.2345678901",
        b"99999999999999999999",
        b" DEEP",
        b" DEPTH ",
        b" THRU",
        b" TAP ",
        b" DRILL ",
        b"#7",
        b" F ",
        b" X ",
        b"x",
        b" DIA ",
        b"\xd8",
        "\u{d8}".as_bytes(),
        "\u{2300}".as_bytes(),
        "\u{21a7}".as_bytes(),
        "\u{2335}".as_bytes(),
        "\u{2334}".as_bytes(),
        b"\xb0",
        "\u{b0}".as_bytes(),
        "\u{bd}".as_bytes(),
        b"\xbd",
        b" CSK ",
        b" C'BORE ",
        b" SF ",
        b" PLCS ",
        b" HOLES ",
        b" QTY ",
        b" MIN ",
        b" FULL THREAD ",
        b" ON ",
        b" B.C. ",
        b" EQ SP ",
        b" AFTER PLATING ",
        b" BOTH SIDES ",
        b" NO. ",
        b"(",
        b")",
        b"/",
        b", ",
        b"\n",
        b"\"",
        b"mm",
        b" IN ",
        b"+0.1/-0.2",
        b" A1 ",
        b" LH",
        b" 2 START",
        b" CLASS 2B",
        b" G84 ",
        b" N10 ",
        b" T5 ",
        b" P/N ",
    ];
    vec(select(PIECES.to_vec()), 0..14).prop_map(|pieces| pieces.concat())
}

fn texts() -> impl Strategy<Value = Vec<u8>> {
    prop_oneof![3 => pieces(), 1 => bytes(), 1 => vec(any::<u8>(), 0..420)]
}

fn unit() -> impl Strategy<Value = Option<Unit>> {
    select(vec![None, Some(Unit::Mm), Some(Unit::Inch)])
}

/// All that a note says has to lie in its text and agree with itself.
fn assert_note(text: &[u8], note: &HoleNote) -> Result<(), TestCaseError> {
    let lengths = [
        note.thread_depth_mm(),
        note.drill_mm(),
        note.drill_depth_mm(),
        note.countersink_mm(),
        note.counterbore_mm(),
        note.counterbore_depth_mm(),
        note.bolt_circle_mm(),
        note.countersink_angle_deg(),
    ];
    prop_assert!(lengths.iter().flatten().all(|length| length.is_positive()));
    prop_assert!(note.count() != Some(0));
    prop_assert!(!note.thread_through() || note.thread_depth_mm().is_none());
    prop_assert!(!note.drill_through() || note.drill_depth_mm().is_none());
    prop_assert!(note.countersink_mm().is_none() || note.has_countersink());
    prop_assert!(note.counterbore_mm().is_none() || note.has_counterbore());
    let (at, length) = (note.thread_at(), note.thread_length());
    match note.thread() {
        None => prop_assert_eq!((at, length), (0, 0)),
        Some(thread) => assert_callout(text, at, length, thread)?,
    }
    for finding in note.findings().iter().filter(|finding| finding.id() == FindingId::NotRead) {
        let number = |key| finding.numbers().find(|(known, _)| *known == key).map(|(_, value)| value as usize);
        let (byte, length) = (number(NumberKey::Byte).unwrap(), number(NumberKey::Length).unwrap());
        prop_assert!(length > 0 && byte + length <= text.len(), "{byte}+{length} of {}", text.len());
    }
    Ok(())
}

/// What was taken for a thread reads as that thread when it stands alone; signs that only notes read apart.
fn assert_callout(text: &[u8], at: usize, length: usize, thread: Thread) -> Result<(), TestCaseError> {
    let callout = text.get(at..at + length);
    prop_assert!(callout.is_some_and(|callout| !callout.is_empty()));
    let callout = callout.unwrap();
    let class_word = callout.windows(2).any(|pair| pair.eq_ignore_ascii_case(b"CL"));
    if callout.is_ascii() && !class_word {
        prop_assert_eq!(Thread::read(callout), Ok(thread), "{}", String::from_utf8_lossy(callout));
    }
    Ok(())
}

fn assert_comment(text: &[u8], comment: &Comment) -> Result<(), TestCaseError> {
    let mut end = 0;
    for found in comment.threads() {
        prop_assert!(found.at >= end && found.length > 0, "in order, apart");
        end = found.at + found.length;
        assert_callout(text, found.at, found.length, found.thread)?;
    }
    prop_assert!(!comment.more() || comment.threads().count() == 4);
    Ok(())
}

/// A standard thread, its text, and a class.
fn callout() -> impl Strategy<Value = (Thread, String)> {
    let all: Vec<Thread> = standard_threads(None, None).filter(|thread| !thread.form().is_pipe()).collect();
    (select(all), any::<bool>()).prop_map(|(thread, classed)| {
        // The medium classes of the forms that have them.
        let class = thread.medium_internal_class().as_bytes();
        let thread = if classed && !class.is_empty() { thread.with_class(class).unwrap() } else { thread };
        (thread, thread.to_string())
    })
}

/// Tenths, as a drawing has them, and their text.
fn tenths() -> impl Strategy<Value = (Length, String)> {
    (1..=900_i64).prop_map(|count| {
        let length = Length::new(count, 10).unwrap();
        (length, length.to_string())
    })
}

proptest! {
    #![proptest_config(config(2_000))]

    #[test]
    fn any_bytes_are_a_note_or_an_error_within_them(text in texts(), unit in unit()) {
        let read = read_hole_note(&text, unit);
        match &read {
            Ok(note) => assert_note(&text, note)?,
            Err(error) => {
                prop_assert!(error.at().is_some_and(|at| at as usize <= text.len()), "{}", error);
                let overflow = error.code() == Code::Overflow;
                prop_assert!(!error.hint().is_empty() || !error.low().is_nan() || overflow, "{}", error);
            }
        }
        prop_assert_eq!(read_hole_note(&text, unit), read);
    }

    #[test]
    fn any_bytes_are_a_comment(text in texts(), tap in any::<bool>()) {
        assert_comment(&text, &read_comment(&text, tap))?;
    }

    #[test]
    fn a_note_of_known_parts_is_read_whole(
        (count, callout, depth, drill, drill_depth, csk) in (1..=99_u32, callout(), tenths(), tenths(), tenths(), tenths()),
        form in 0..6_usize,
        (through, both, lower) in (any::<bool>(), any::<bool>(), any::<bool>()),
    ) {
        let ((thread, name), (depth, depth_text)) = (callout, depth);
        let ((drill, drill_text), (drill_depth, drill_depth_text), (csk, csk_text)) = (drill, drill_depth, csk);
        let counted = [
            format!("{count}X @"), format!("@ {count} PLCS"), format!("({count}) @"),
            format!("@, {count} HOLES"), format!("QTY {count} @"), format!("{count} X @"),
        ];
        let deep = [
            format!("\u{21a7}{depth_text}"), format!("{depth_text} DEEP"), format!("X {depth_text} DEEP"),
            format!("DEPTH: {depth_text}"), format!("FULL THREAD {depth_text}"), format!("{depth_text} MIN FULL THD"),
        ];
        let drilled = [
            format!("\u{d8}{drill_text} \u{21a7}{drill_depth_text}"), format!("{drill_text} DIA {drill_depth_text} DEEP"),
            format!("DRILL {drill_text} X {drill_depth_text} DEEP"), format!("{drill_text} DRILL, {drill_depth_text} DP"),
            format!("\u{2300}{drill_text} DRILL DEPTH {drill_depth_text}"), format!("PILOT {drill_text} X {drill_depth_text}"),
        ];
        let sunk = [
            format!("\u{2335}\u{d8}{csk_text} X 90\u{b0}"), format!("CSK \u{d8}{csk_text} X 90 DEG"),
            format!("90 DEG CSK TO \u{d8}{csk_text}"), format!("C'SINK {csk_text} DIA X 90\u{b0}"),
            format!("\u{d8}{csk_text} X 90\u{b0} CSK"), format!("COUNTERSINK 90\u{b0} X {csk_text}"),
        ];
        let pick = |offset: usize| (form + offset * usize::from(lower)) % 6;
        // The count stands before its thread or between thread and depth: both are about the thread.
        let text = format!("{} {} / {} / {}{}", counted[pick(1)], if through { "THRU" } else { &deep[pick(2)] },
            drilled[pick(3)], sunk[pick(4)], if both { " BOTH SIDES" } else { "" });
        // The class alone tells by its case.
        let text = if lower { text.to_lowercase() } else { text }.replace('@', &name);
        let note = read_hole_note(text.as_bytes(), Some(Unit::Mm));
        prop_assert!(note.is_ok(), "{} {:?}", text, note);
        let note = note.unwrap();
        prop_assert_eq!(note.thread().map(|thread| thread.to_string()), Some(thread.to_string()), "{}", text);
        prop_assert_eq!(note.count(), Some(count), "{}", text);
        prop_assert_eq!(note.thread_depth_mm(), (!through).then_some(depth), "{}", text);
        prop_assert_eq!(note.thread_through(), through, "{}", text);
        prop_assert_eq!((note.drill_mm(), note.drill_depth_mm()), (Some(drill), Some(drill_depth)), "{}", text);
        prop_assert_eq!((note.countersink_mm(), note.countersink_angle_deg()), (Some(csk), Some(Length::integer(90))), "{}", text);
        prop_assert_eq!(note.sides(), both.then_some(Sides::Both), "{}", text);
        let unread = note.findings().iter().filter(|finding| finding.id() == FindingId::NotRead).count();
        prop_assert_eq!(unread, 0, "{}", text);
    }

    #[test]
    fn a_word_that_nobody_knows_is_never_dropped(callout in callout(), word in "[B-EHJKQV-Z]{4,9}") {
        for text in [format!("{} {word}", callout.1), format!("{word} {}", callout.1)] {
            let note = read_hole_note(text.as_bytes(), None).unwrap();
            let unread = |finding: &threadcalc_core::Finding| finding.id() == FindingId::NotRead;
            prop_assert!(note.findings().iter().any(unread), "{}", text);
        }
    }

    #[test]
    fn a_thread_among_words_is_found((thread, name) in callout(), before in "[A-Z ]{0,12}", after in "[A-Z]{3,9}") {
        let text = format!("TAP {before} ; {name} ; {after}");
        let comment = read_comment(text.as_bytes(), false);
        let found = comment.threads().find(|found| found.thread == thread);
        prop_assert!(found.is_some(), "{}: {:?}", text, comment);
        prop_assert_eq!(&text[found.unwrap().at..][..found.unwrap().length], name);
    }

    #[test]
    fn a_block_of_a_program_names_no_thread(
        g in 0..100_u32, tap in any::<bool>(), joint in select(vec![" ", ""]),
        words in vec((select(b"XYZFSTMDHPQRLIJKAB".to_vec()), -999..=9_999_i64, 0..4_u32), 1..9),
    ) {
        let mut block = format!("G{g}");
        for (letter, number, decimals) in words {
            let value = number as f64 / 10_f64.powi(decimals as i32);
            let value = if letter == b'M' { format!("{}", number.unsigned_abs() % 100) } else { value.to_string() };
            block = format!("{block}{joint}{}{value}", letter as char);
        }
        for block in [block.clone(), format!("N10{joint}{block}"), block.to_lowercase()] {
            let comment = read_comment(block.as_bytes(), tap);
            prop_assert_eq!(comment.threads().count(), 0, "{}: {:?}", block, comment);
        }
    }
}
