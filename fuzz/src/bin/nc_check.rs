//! Any bytes as a program that is checked: the same whole and in pieces, places within it, and calls that end.
//!
//! The first byte holds the dialect and the options, the second the size of the pieces.
#![no_main]

use libfuzzer_sys::fuzz_target;
use threadcalc_core::nc::{CheckOptions, Checker, Event, ProgramCheck};
use threadcalc_core::{Dialect, Value};

const MILL: [(&str, &str); 9] = [
    ("tap_rh", "G84"),
    ("tap_lh", "G74"),
    ("feed_per_revolution", "G95"),
    ("stroke_code", "G33.1"),
    ("lead_word", "K"),
    ("repeat_word", "L"),
    ("rigid_tap_code", "M135"),
    ("mirror_on", "G51.1"),
    ("mirror_off", "G50.1"),
];
const CALLS: [(&str, &str); 2] = [("subprogram_call", "M98"), ("subprogram_return", "M99")];

fuzz_target!(|bytes: &[u8]| {
    let [flags, size, program @ ..] = bytes else { return };
    let dialect = match flags & 3 {
        0 => Dialect::rs274ngc(),
        1 => Dialect::unset(),
        _ => with(&MILL, Dialect::unset()),
    };
    let mut options = CheckOptions::default();
    options.block_delete = flags & 4 != 0;
    options.leave_macros = flags & 8 != 0;
    // None of these knows a code that calls.
    let whole: Vec<Event> = ProgramCheck::new(program, &dialect, &options).collect();
    for size in [1, usize::from(*size).max(1)] {
        assert!(whole == in_pieces(program, size, &dialect, &options), "in pieces of {size}");
    }
    whole.iter().for_each(|event| is_sound(event, program));
    // A call can run the text again, but not without end.
    let dialect = with(&CALLS, dialect);
    let most = (100_000 + 2 * program.len()) * 60;
    let mut told = ProgramCheck::new(program, &dialect, &options);
    assert!(told.by_ref().inspect(|event| is_sound(event, program)).take(most).count() < most);
    assert!(told.not_checked().all(|reason| reason.count > 0 && !reason.reason.text().is_empty()));
});

fn with(fields: &[(&str, &str)], mut dialect: Dialect) -> Dialect {
    for (key, value) in fields {
        dialect.set(key, Value::Text(value.as_bytes())).expect("a code of the dialect");
    }
    dialect
}

fn in_pieces(program: &[u8], size: usize, dialect: &Dialect, options: &CheckOptions) -> Vec<Event> {
    let mut checker = Checker::new(dialect, options);
    let mut events = Vec::new();
    for mut piece in program.chunks(size) {
        while !piece.is_empty() {
            piece = &piece[checker.read(piece)..];
            events.extend(std::iter::from_fn(|| checker.next_event()));
        }
    }
    checker.finish();
    events.extend(std::iter::from_fn(|| checker.next_event()));
    events
}

fn is_sound(event: &Event, program: &[u8]) {
    let lines = 1 + program.iter().filter(|byte| matches!(byte, b'\n' | b'\r')).count() as u32;
    let is_line = |line: u32| (1..=lines).contains(&line);
    match event {
        Event::Hole(hole) => {
            assert!(is_line(hole.line) && hole.number > 0);
            assert!(hole.lead_mm.is_none_or(|lead| lead.is_positive()));
        }
        Event::Finding(finding) => {
            assert!(is_line(finding.line()), "line {} of {lines}", finding.line());
            assert!(0 < finding.column() && finding.column() <= finding.end_column(), "{finding:?}");
            assert!(finding.evidence().all(|evidence| evidence.line == 0 || is_line(evidence.line)), "{finding:?}");
            assert!(!finding.to_string().contains(['{', '}']), "{finding}");
        }
    }
}
