//! Dialects, and what a check says under them.

use threadcalc_core::nc::{CheckOptions, Event, ProgramCheck, ProgramFindingId};
use threadcalc_core::{Dialect, Severity, Value};

pub const MILL: &str = "tap_rh=G84 tap_lh=G74 feed_per_revolution=G95 feed_basis=by_mode needs_spindle_running=false";

/// A dialect with these fields on the one that says nothing.
pub fn dialect(fields: &str) -> Dialect {
    let mut dialect = Dialect::unset();
    for (key, value) in fields.split_whitespace().map(|pair| pair.split_once('=').unwrap()) {
        dialect.set(key, Value::Text(value.as_bytes())).unwrap();
    }
    dialect
}

/// A mill that calls subprograms.
pub fn with_calls() -> Dialect {
    dialect(&format!("{MILL} subprogram_call=M98 subprogram_return=M99 repeat_word=L"))
}

pub fn events(text: &[u8], dialect: &Dialect) -> Vec<Event> {
    ProgramCheck::new(text, dialect, &CheckOptions::default()).collect()
}

/// The errors and warnings.
pub fn found(text: &str, dialect: &Dialect) -> Vec<ProgramFindingId> {
    let severe = |event: &Event| match event {
        Event::Finding(finding) if finding.severity() != Severity::Info => Some(finding.id()),
        _ => None,
    };
    events(text.as_bytes(), dialect).iter().filter_map(severe).collect()
}

/// How many cases a test draws: `THREADCALC_NC_CASES`, or 2,000.
pub fn cases() -> u64 {
    std::env::var("THREADCALC_NC_CASES").map_or(2_000, |cases| cases.parse().expect("a number of cases"))
}
