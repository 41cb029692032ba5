//! What an exact answer costs beside the plain one: ratios of times taken in the same run.
//!
//! A ratio travels between machines where a time does not. Every answer is checked before it is timed,
//! and a ratio above its limit ends the run with an error. With `--check` nothing is timed.

use std::hint::black_box;
use std::process::ExitCode;
use std::time::Instant;

use threadcalc_core::{FeedMode, Length, Thread, Unit, feed, plan};

#[path = "../tests/support/job.rs"]
mod job;

const ROUNDS: usize = 401;
const NANOSECONDS_A_ROUND: u128 = 200_000;

/// Nanoseconds of one call.
fn once<T>(calls: u32, call: &mut impl FnMut() -> T) -> f64 {
    let start = Instant::now();
    for _ in 0..calls {
        black_box(call());
    }
    start.elapsed().as_nanos() as f64 / f64::from(calls)
}

/// How many calls fill a round.
fn calls_of<T>(call: &mut impl FnMut() -> T) -> u32 {
    let mut calls = 1_u32;
    while once(calls, call) as u128 * u128::from(calls) < NANOSECONDS_A_ROUND && calls < 1 << 24 {
        calls *= 2;
    }
    calls
}

/// The time of a quiet round: a tenth of the rounds is faster. What else the machine does only ever adds.
fn quiet(mut times: Vec<f64>) -> f64 {
    times.sort_by(f64::total_cmp);
    times[times.len() / 10]
}

/// Prints one line of the table; false if the limit is missed.
///
/// Both are timed in turn in every round, so that a quiet spell of the machine meets both.
fn compare<A, B>(
    name: &str,
    mut ours: impl FnMut() -> A,
    peer: &str,
    mut theirs: impl FnMut() -> B,
    limit: Option<f64>,
) -> bool {
    if std::env::args().any(|argument| argument == "--check") {
        println!("{name}: the right answer");
        return true;
    }
    let (our_calls, their_calls) = (calls_of(&mut ours), calls_of(&mut theirs));
    let (mut our_times, mut their_times) = (Vec::new(), Vec::new());
    for _ in 0..ROUNDS {
        our_times.push(once(our_calls, &mut ours));
        their_times.push(once(their_calls, &mut theirs));
    }
    let (ours, theirs) = (quiet(our_times), quiet(their_times));
    let ratio = ours / theirs;
    let shown = limit.map_or("-".into(), |limit| format!("{limit:.2}"));
    let held = limit.is_none_or(|limit| ratio <= limit);
    let mark = if held { "" } else { "  MISSED" };
    println!("{name:<34} | {ours:>8.1} | {peer:<38} | {theirs:>7.1} | {ratio:>7.2} | {shown:>6}{mark}");
    held
}

fn feed_word() -> bool {
    let lead = Thread::read(b"7/16-14 UNC-2B").unwrap().lead_mm();
    let ours = |rpm: i64| feed(black_box(lead), Some(Length::integer(rpm)), Unit::Mm, FeedMode::PerMinute, 3);
    let theirs = |rpm: f64| format!("{:.3}", rpm * 25.4 / 14.0);
    assert_eq!(ours(650).unwrap().text(), theirs(650.0), "both are 1179.286");
    let formatted = "format!(\"{:.3}\", rpm * 25.4 / 14.0)";
    let ours = || ours(black_box(650)).unwrap();
    let theirs = || theirs(black_box(650.0));
    compare("feed/7/16-14 650 rpm, with text", ours, formatted, theirs, Some(0.4))
}

fn designations() -> bool {
    let parse = || black_box("12.345678").parse::<f64>().unwrap();
    assert_eq!(parse(), 12.345_678);
    let canonical = ["1/4-20 UNC-2B", "M8x1.25-6H", "7/16-14 UNC-2B"];
    let held = canonical.map(|text| {
        let read = || Thread::read(black_box(text.as_bytes())).unwrap();
        assert_eq!(read().to_string(), text);
        compare(&format!("read/{text}"), read, "\"12.345678\".parse::<f64>()", parse, Some(15.0))
    });
    held.into_iter().all(|held| held)
}

fn limits() -> bool {
    // Text, smallest and largest pitch diameter in mm, and the ratio that must hold.
    let threads = [
        ("M8x1.25-6H", "7.188", "7.348", 2.0),
        ("M10x1.5-6g", "8.862", "8.994", 2.0),
        ("M20x1.5-5g6g", "18.882", "18.994", 2.0),
        ("Tr16x4-7H", "14", "14.355", 2.0),
        ("Tr40x7-8c", "35.8", "36.25", 2.0),
        ("10 BA-close", "1.442", "1.49", 2.0),
        ("1/4-20 UNC-2B", "5.5245", "5.64896", 10.0),
        ("1/2-13 UNC-2A", "11.2649", "11.3919", 10.0),
    ];
    let formatted = || format!("{:.3}", black_box(8.994_f64));
    assert_eq!(formatted(), "8.994");
    let held = threads.map(|(text, low, high, limit)| {
        let thread = Thread::read(text.as_bytes()).unwrap();
        let (least, most) = thread.limits().unwrap().pitch_diameter_mm;
        assert_eq!([least, most].map(|end| end.unwrap().to_string()), [low, high], "{text}");
        let ours = || black_box(&thread).limits().unwrap();
        compare(&format!("limits/{text}"), ours, "format!(\"{:.3}\", 8.994)", formatted, Some(limit))
    });
    held.into_iter().all(|held| held)
}

fn plans() -> bool {
    // Thread, unit and speed of a job, its feed word, and the ratio that must hold.
    let jobs = [
        ("M8x1.25-6H", "mm", "650", "F812.5", 25.0),
        ("7/16-14 UNC-2B", "mm", "650", "F1179.286", 25.0),
        ("1/4-20 UNC-2B", "inch", "720", "F36.", 25.0),
    ];
    let formatted = || format!("{:.3}", black_box(8.994_f64));
    let held = jobs.map(|(thread, unit, rpm, word, limit)| {
        let job = job::of_thread(thread, unit, rpm);
        let made = plan(&job).unwrap();
        assert_eq!(made.feed.word(), word);
        assert!(made.cycle.words().any(|held| held == word), "{thread}: the words stand in the plan");
        // The answer stays where it was made: a caller who moves it on pays for that himself.
        let ours = || black_box(&plan(black_box(&job))).is_ok();
        compare(&format!("plan/{thread}, {unit}"), ours, "format!(\"{:.3}\", 8.994)", formatted, Some(limit))
    });
    held.into_iter().all(|held| held)
}

fn plan_text() -> bool {
    let made = plan(&job::of("7/16-14 UNC-2B")).unwrap();
    assert!(made.to_string().contains("F1179.286"));
    let mut text = String::with_capacity(16_384);
    let write = || {
        use std::fmt::Write;
        text.clear();
        write!(text, "{}", black_box(&made)).unwrap();
        text.len()
    };
    let formatted = || format!("{:.3}", black_box(8.994_f64));
    compare("plan text/7/16-14", write, "format!(\"{:.3}\", 8.994)", formatted, None)
}

fn main() -> ExitCode {
    let heads = ["operation", "ns", "peer", "peer ns", "ratio", "limit"];
    println!(
        "{:<34} | {:>8} | {:<38} | {:>7} | {:>7} | {:>6}",
        heads[0], heads[1], heads[2], heads[3], heads[4], heads[5]
    );
    let held = [feed_word(), designations(), limits(), plans(), plan_text()];
    if held.into_iter().all(|held| held) { ExitCode::SUCCESS } else { ExitCode::FAILURE }
}
