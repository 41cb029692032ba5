//! How fast a program is read and checked, beside the visitor of a public parser of the same words and beside
//! `grep -c G84` on the same program as a file.
//!
//! A ratio travels between machines where a time does not. The readings are checked against each other before
//! they are timed, and a ratio to the visitor below its limit ends the run with an error; that to `grep` is only
//! shown. `grep` is timed with the start of its process, its file in the page cache. With `--check` nothing is
//! timed.

use std::hint::black_box;
use std::process::ExitCode;
use std::time::Instant;

use threadcalc_core::nc::{Blocks, Reader, ReaderSettings};

#[path = "support/check.rs"]
mod check;
#[path = "support/grep.rs"]
mod grep;
#[path = "support/program.rs"]
mod program;
#[path = "support/visitor.rs"]
mod visitor;

const MEGABYTES: usize = 50;
const ROUNDS: usize = 9;
/// A disk's or a socket's usual piece.
const PIECE: usize = 65_536;
/// How many times as fast as the peer the reader and the check have to be.
const LEAST_RATIO: f64 = 4.0;

/// What a reading found, so that none of it can be left out.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Counts {
    /// Words, but for N and O.
    pub words: usize,
    /// N words.
    pub numbered: usize,
    /// Comments.
    pub comments: usize,
    /// The sum of all values.
    pub sum: f64,
}

impl Counts {
    fn add(&mut self, block: &threadcalc_core::nc::Block) {
        assert!(block.faults().is_empty(), "{:?}", block.faults());
        self.words += block.words().len();
        self.numbered += usize::from(block.line_number().is_some());
        self.comments += block.comments().count();
        for word in block.words() {
            let number = word.number().unwrap();
            self.sum += number.mantissa() as f64 * [1.0, 0.1, 0.01, 0.001][usize::from(number.decimals())];
        }
    }

    fn is_same(&self, other: &Self) -> bool {
        // The peer's numbers have 24 bits.
        let near = (self.sum - other.sum).abs() <= 1e-6 * self.sum.abs();
        near && (self.words, self.numbered, self.comments) == (other.words, other.numbered, other.comments)
    }
}

fn whole(text: &[u8]) -> Counts {
    let mut counts = Counts::default();
    let mut program = Blocks::new(text, ReaderSettings::default());
    while let Some(block) = program.next() {
        counts.add(block);
    }
    counts
}

fn in_pieces(text: &[u8]) -> Counts {
    let mut counts = Counts::default();
    let mut reader = Reader::new(ReaderSettings::default());
    for mut piece in text.chunks(PIECE) {
        while !piece.is_empty() {
            let taken = reader.read(piece);
            piece = &piece[taken.bytes..];
            if taken.is_block {
                counts.add(reader.block());
            }
        }
    }
    if reader.finish() {
        counts.add(reader.block());
    }
    counts
}

fn seconds<T>(call: impl FnOnce() -> T) -> f64 {
    let start = Instant::now();
    black_box(call());
    start.elapsed().as_secs_f64()
}

fn main() -> ExitCode {
    let is_check = std::env::args().any(|argument| argument == "--check");
    let text = program::milling(if is_check { 1 << 20 } else { MEGABYTES * 1_000_000 }, 1);
    let text_str = std::str::from_utf8(&text).unwrap();
    let (ours, theirs) = (whole(&text), visitor::counts(text_str));
    assert_eq!(ours, in_pieces(&text));
    assert!(ours.is_same(&theirs), "{ours:?}, {theirs:?}");
    println!("{} bytes, {} words, {} line numbers, {} comments", text.len(), ours.words, ours.numbered, ours.comments);
    let mill = check::mill();
    let found = check::whole(&text, &mill);
    assert_eq!(found, check::in_pieces(&text, &mill, PIECE));
    println!("{} tapping blocks, {} findings", found.holes, found.findings);
    if is_check {
        return ExitCode::SUCCESS;
    }
    let file = grep::File::of(&text);
    let has_grep = file.count().is_some();
    // In turn in every round, so that a quiet spell of the machine meets all; the best of each.
    let mut best = [f64::MAX; 6];
    for _ in 0..ROUNDS {
        let times = [
            seconds(|| whole(black_box(&text))),
            seconds(|| in_pieces(black_box(&text))),
            seconds(|| check::whole(black_box(&text), &mill)),
            seconds(|| check::in_pieces(black_box(&text), &mill, PIECE)),
            seconds(|| visitor::counts(black_box(text_str))),
            seconds(|| file.count()),
        ];
        best = std::array::from_fn(|place| f64::min(best[place], times[place]));
    }
    let [read, read_pieces, checked, checked_pieces, visitor, grep] = best.map(|time| text.len() as f64 / time / 1e6);
    println!("read, whole in memory      {read:>6.0} MB/s");
    println!("read, {PIECE} byte pieces    {read_pieces:>6.0} MB/s");
    println!("check, whole in memory     {checked:>6.0} MB/s");
    println!("check, {PIECE} byte pieces   {checked_pieces:>6.0} MB/s");
    println!("gcode 0.7, visitor         {visitor:>6.0} MB/s");
    let (read, checked) = (read.min(read_pieces) / visitor, checked.min(checked_pieces));
    if has_grep {
        println!("grep -c G84, with its start {grep:>5.0} MB/s");
        println!("check to grep {:.2}, wanted 1", checked / grep);
    } else {
        println!("grep -c G84                skipped: there is no grep");
    }
    let checked = checked / visitor;
    println!("read to visitor {read:.2}, check to visitor {checked:.2}, at least {LEAST_RATIO}");
    if read.min(checked) >= LEAST_RATIO { ExitCode::SUCCESS } else { ExitCode::FAILURE }
}
