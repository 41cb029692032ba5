//! The check of a program: all of it at hand, or in pieces.

use threadcalc_core::nc::{CheckOptions, Checker, Event, ProgramCheck};
use threadcalc_core::{Dialect, Value};

/// What a check gave, so that none of it can be left out.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Found {
    /// Blocks that tap.
    pub holes: usize,
    /// Findings.
    pub findings: usize,
    /// The sum of the lines of both.
    pub lines: u64,
}

impl Found {
    fn add(&mut self, event: &Event) {
        let line = match event {
            Event::Hole(hole) => {
                self.holes += 1;
                hole.line
            }
            Event::Finding(finding) => {
                self.findings += 1;
                finding.line()
            }
        };
        self.lines += u64::from(line);
    }
}

/// A mill of the shop that the program is written for.
pub fn mill() -> Dialect {
    let mut mill = Dialect::unset();
    for (key, value) in [
        ("tap_rh", "G84"),
        ("tap_lh", "G74"),
        ("feed_per_revolution", "G95"),
        ("feed_mode_default", "per_minute"),
        ("feed_basis", "by_mode"),
        ("cycle_starts_spindle", "true"),
        ("no_point", "as_written"),
        ("rapid_cancels_cycle", "true"),
        ("subprogram_call", "M98"),
        ("subprogram_return", "M99"),
    ] {
        mill.set(key, Value::Text(value.as_bytes())).unwrap();
    }
    mill
}

pub fn whole(text: &[u8], mill: &Dialect) -> Found {
    let mut found = Found::default();
    ProgramCheck::new(text, mill, &CheckOptions::default()).for_each(|event| found.add(&event));
    found
}

pub fn in_pieces(text: &[u8], mill: &Dialect, size: usize) -> Found {
    let mut found = Found::default();
    let mut checker = Checker::new(mill, &CheckOptions::default());
    for mut piece in text.chunks(size) {
        while !piece.is_empty() {
            piece = &piece[checker.read(piece)..];
            while let Some(event) = checker.next_event() {
                found.add(&event);
            }
        }
    }
    checker.finish();
    while let Some(event) = checker.next_event() {
        found.add(&event);
    }
    found
}
