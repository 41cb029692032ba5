//! The time of the comment reader grows with the text and no faster: archives hold comments of any length.
//!
//! A program of its own, so that no other test takes its processor meanwhile.

use std::time::{Duration, Instant};

use threadcalc_core::read_comment;

/// The least of five runs.
fn time_of(text: &[u8]) -> Duration {
    let run = |_| {
        let start = Instant::now();
        let found = read_comment(text, false).threads().count();
        assert!(found <= 4);
        start.elapsed()
    };
    (0..5).map(run).min().unwrap()
}

#[test]
fn the_time_grows_with_the_length_and_no_faster() {
    for piece in [
        "M8 ",
        "10 - 32 ",
        "1/4-20-",
        "1/4-20 UNF ",
        "1 1/4-",
        "M8(",
        "G84X10Y20",
        "A",
        "....",
        "\u{d8}M8",
        "P/N 10-32 ",
    ] {
        let long = piece.repeat(40_000 / piece.len());
        let short = piece.repeat(1_250 / piece.len());
        // 32 times the text; a quadratic reader takes a thousand times as long.
        let ratio = time_of(long.as_bytes()).as_secs_f64() / time_of(short.as_bytes()).as_secs_f64();
        assert!(ratio < 250.0, "{piece}: {ratio} times as long");
    }
}
