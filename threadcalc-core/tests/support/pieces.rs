//! A check of a program that comes in pieces.

use threadcalc_core::nc::{Checker, Event};

/// All events of a program that is handed over so many bytes at a time.
pub fn in_pieces(checker: &mut Checker, program: &[u8], size: usize) -> Vec<Event> {
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
