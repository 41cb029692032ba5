//! Any bytes as a program that is checked: the same whole and in pieces, places within it, and calls that end.
//!
//! The first byte holds the dialect and the options, the second the size of the pieces.
#![no_main]

use libfuzzer_sys::fuzz_target;
use threadcalc_core::Dialect;
use threadcalc_core::nc::{CheckOptions, Event, ProgramCheck};
use threadcalc_fuzz::nc::{self, Lines};

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
        _ => nc::with(&MILL, Dialect::unset()),
    };
    let mut options = CheckOptions::default();
    options.block_delete = flags & 4 != 0;
    options.leave_macros = flags & 8 != 0;
    let mut lines = Lines::default();
    let lines = lines.of(program);
    // None of these knows a code that calls.
    let whole: Vec<Event> = ProgramCheck::new(program, &dialect, &options).collect();
    for size in [1, usize::from(*size).max(1)] {
        let mut events = Vec::new();
        nc::in_pieces(&mut nc::checker(&dialect, &options, &[]), program, size, |event| events.push(event));
        assert!(whole == events, "in pieces of {size}");
    }
    whole.iter().for_each(|event| is_sound(event, lines));
    // A call can run the text again, but not without end.
    let dialect = nc::with(&CALLS, dialect);
    let most = (100_000 + 2 * program.len()) * 60;
    let mut told = ProgramCheck::new(program, &dialect, &options);
    assert!(told.by_ref().inspect(|event| is_sound(event, lines)).take(most).count() < most);
    assert!(told.not_checked().all(|reason| reason.count > 0 && !reason.reason.text().is_empty()));
});

fn is_sound(event: &Event, lines: &Lines) {
    nc::event(event, lines);
    nc::text(event);
}
