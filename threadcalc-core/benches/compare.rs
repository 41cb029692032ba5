//! How long it takes to compare two versions of a long program, beside a public diff of the same lines.
//!
//! A ratio travels between machines where a time does not. The changes are counted before anything is timed, and a
//! ratio above its limit ends the run with an error. With `--check` nothing is timed.

use std::fmt::Write;
use std::hint::black_box;
use std::process::ExitCode;
use std::time::Instant;

use similar::{Algorithm, DiffOp, capture_diff_slices};
use threadcalc_core::Dialect;
use threadcalc_core::nc::{CheckOptions, Event, ProgramCheck, TappedHole, compare, scratch_for};

#[path = "../tests/support/random.rs"]
mod random;

use random::Random;

const HOLES: usize = 100_000;
const ROUNDS: usize = 5;
/// Of so many holes one has another depth.
const CHANGED_OF: u64 = 200;
/// How many times as long as the peer takes for the lines it may take for the holes, whatever they are.
const MOST_RATIO: f64 = 10.0;

/// Two versions: as they are written, and their holes.
struct Versions {
    name: &'static str,
    lines: [Vec<String>; 2],
    holes: [Vec<TappedHole>; 2],
}

/// `values` is how many depths there are; without places the order and the values are all that tells holes apart.
fn versions(name: &'static str, count: usize, random: &mut Random, values: u64, is_placed: bool) -> Versions {
    let mut line = |place: usize| {
        let place = if is_placed { format!("X{}. Y{}.", place % 400, place / 400) } else { "X#1 Y#2".into() };
        format!("G84 {place} Z-{}. R5. F800.", 10 + random.pick(values))
    };
    let old: Vec<_> = (0..count).map(&mut line).collect();
    // The first tenth comes last: a pattern that is tapped in another order.
    let mut new = old.clone();
    new.rotate_left(count / 10);
    for line in new.iter_mut().step_by(CHANGED_OF as usize) {
        *line = line.replace("Z-", "Z-9");
    }
    let lines = [old, new];
    Versions { name, holes: [holes(&lines[0]), holes(&lines[1])], lines }
}

fn holes(lines: &[String]) -> Vec<TappedHole> {
    let mut text = String::from("G17 G21 G90 G94\nT1 M6 (TAP M8)\nS640 M3\nG43 H1 Z25.\n");
    lines.iter().for_each(|line| writeln!(text, "{line}").unwrap());
    let hole = |event| if let Event::Hole(hole) = event { Some(hole) } else { None };
    ProgramCheck::new(text.as_bytes(), &Dialect::rs274ngc(), &CheckOptions::default()).filter_map(hole).collect()
}

fn ours(versions: &Versions) -> usize {
    let [old, new] = &versions.holes;
    let mut scratch = vec![0; scratch_for(old.len(), new.len())];
    compare(old, new, &mut scratch).unwrap().changes().count()
}

fn theirs(versions: &Versions) -> usize {
    let [old, new] = &versions.lines;
    let ops = capture_diff_slices(Algorithm::Myers, old, new);
    ops.iter().filter(|op| !matches!(op, DiffOp::Equal { .. })).count()
}

fn seconds(call: impl FnOnce() -> usize) -> f64 {
    let start = Instant::now();
    black_box(call());
    start.elapsed().as_secs_f64()
}

fn main() -> ExitCode {
    let is_check = std::env::args().any(|argument| argument == "--check");
    let count = if is_check { 2_000 } else { HOLES };
    let mut random = Random(1);
    let all = [
        versions("by place, in another order", count, &mut random, 9, true),
        versions("places not known, few depths", count, &mut random, 3, false),
        versions("places not known, all depths differ", count, &mut random, 1 << 40, false),
    ];
    let changed = count.div_ceil(CHANGED_OF as usize);
    assert_eq!(ours(&all[0]), changed, "by place, every hole is found again");
    assert!(all.iter().all(|versions| ours(versions) >= changed && versions.holes[0].len() == count));
    println!("{count} holes a side, {changed} changed, a tenth tapped in another order");
    if is_check {
        return ExitCode::SUCCESS;
    }
    // In turn in every round, so that a quiet spell of the machine meets all; the best of each.
    let (mut best, mut peer) = ([f64::MAX; 3], f64::MAX);
    for _ in 0..ROUNDS {
        best = std::array::from_fn(|place| best[place].min(seconds(|| ours(black_box(&all[place])))));
        peer = peer.min(seconds(|| theirs(black_box(&all[0]))));
    }
    println!("similar 3, Myers, the lines of the first: {:.3} s", peer);
    for (versions, time) in all.iter().zip(best) {
        println!("{:<36} {time:.3} s, ratio {:.2}, at most {MOST_RATIO}", versions.name, time / peer);
    }
    if best.iter().all(|time| time / peer <= MOST_RATIO) { ExitCode::SUCCESS } else { ExitCode::FAILURE }
}
