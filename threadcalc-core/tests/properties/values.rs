//! Random inputs.

use proptest::collection::vec;
use proptest::prelude::*;
use proptest::test_runner::RngSeed;
use threadcalc_core::{Form, Hand, Length, Thread, standard_threads};

/// The same cases on every run, and no files beside the tests; PROPTEST_RNG_SEED draws others.
pub fn config(cases: u32) -> ProptestConfig {
    let seed = std::env::var("PROPTEST_RNG_SEED").ok().and_then(|seed| seed.parse().ok()).unwrap_or(20_261_125);
    ProptestConfig { cases, failure_persistence: None, rng_seed: RngSeed::Fixed(seed), ..ProptestConfig::default() }
}

/// Whole numbers that are small, of any size, or at the ends of 64 bits.
fn whole() -> impl Strategy<Value = i64> {
    prop_oneof![-10_i64..=1_000, any::<i64>(), Just(i64::MIN), Just(i64::MAX), Just(i64::MIN + 1), Just(1 << 53)]
}

/// Any length there is.
pub fn length() -> impl Strategy<Value = Length> {
    (whole(), whole()).prop_filter_map("no such fraction", |(top, bottom)| Length::new(top, bottom).ok())
}

/// `count / parts` for counts of a range.
pub fn parts(counts: std::ops::RangeInclusive<i64>, parts: i64) -> impl Strategy<Value = Length> {
    counts.prop_map(move |count| Length::new(count, parts).unwrap())
}

/// Bytes: any, or such as stand in designations and numbers.
pub fn bytes() -> impl Strategy<Value = Vec<u8>> {
    let letters = b"MmxXPhH0123456789.,-/ #NoUCFESLRTIBAGgJ()*\"\xd7\xc3\x97\0\xff".to_vec();
    let piece = prop_oneof![
        Just("M8"),
        Just("x1.25"),
        Just("-6H"),
        Just("-LH"),
        Just("1/4"),
        Just("-20"),
        Just(" UNC"),
        Just("-2B"),
        Just("xPh3P1.5"),
        Just("10-32"),
        Just("0.0625P-0.1875L(3 STARTS)"),
        Just(" UN"),
        Just("99999999999999999999"),
        Just("1 1/4"),
        Just("/"),
        Just("-"),
        Just(" "),
        Just("0"),
        Just("."),
        Just("4.5"),
        Just("NPT"),
        Just("G"),
        Just("RC"),
        Just("BSP"),
        Just("UNC"),
        Just("½"),
        Just("×"),
        Just(" LEFT HAND"),
        Just("2 START"),
        Just("/6g"),
        Just("/2A"),
        Just("Rp/R"),
        Just("LH "),
        Just("(.190)"),
        Just("(two starts)"),
        Just(" CLASS "),
        Just("P1.5"),
        Just("\""),
        Just("#"),
    ];
    prop_oneof![
        vec(any::<u8>(), 0..100),
        vec(proptest::sample::select(letters), 0..24),
        vec(piece, 0..7).prop_map(|pieces| pieces.concat().into_bytes()),
    ]
}

fn class(form: Form) -> BoxedStrategy<String> {
    match form {
        Form::Metric => prop_oneof![Just(String::new()), "[4-8][GH]", "[3-9][efgh]", "[3-9][g][468][g]"].boxed(),
        Form::Unified => prop_oneof![Just(String::new()), "[123][AB]"].boxed(),
        Form::G => prop_oneof![Just(String::new()), "[AB]"].boxed(),
        Form::Npsm => prop_oneof![Just(String::new()), "2[AB]"].boxed(),
        Form::Nptf => prop_oneof![Just(String::new()), "[12]"].boxed(),
        _ => Just(String::new()).boxed(),
    }
}

fn pipe() -> impl Strategy<Value = Thread> {
    let pipes: Vec<_> = standard_threads(None, None).filter(|thread| thread.form().is_pipe()).collect();
    proptest::sample::select(pipes)
}

fn metric() -> impl Strategy<Value = Thread> {
    let diameter = prop_oneof![parts(1..=300, 1), parts(10..=3_000, 10), parts(300..=300_000, 1_000)];
    let pitch = prop_oneof![parts(1..=160, 20), parts(50..=8_000, 1_000)];
    (diameter, pitch).prop_filter_map("no thread", |(diameter, pitch)| Thread::metric(diameter, pitch).ok())
}

fn unified() -> impl Strategy<Value = Thread> {
    let numbered = parts(60..=216, 1_000);
    let diameter = prop_oneof![parts(4..=384, 64), parts(60..=6_000, 1_000), parts(600..=60_000, 10_000), numbered];
    let per_inch = prop_oneof![parts(8..=160, 2), parts(4..=80, 1)];
    (diameter, per_inch).prop_filter_map("no thread", |(diameter, per_inch)| Thread::unified(diameter, per_inch).ok())
}

/// Threads, mostly specials and some pipe threads: any number of starts, both hands, every class.
pub fn thread() -> impl Strategy<Value = Thread> {
    let starts = prop_oneof![3 => Just(1_i64), 1 => 1_i64..=12];
    let single = prop_oneof![2 => metric(), 2 => unified(), 1 => pipe()];
    (single, starts, any::<bool>()).prop_flat_map(|(thread, starts, left)| {
        let starts = if thread.form().is_pipe() { 1 } else { starts };
        let thread = thread.with_starts(starts).unwrap().with_hand(if left { Hand::Left } else { Hand::Right });
        let classed = move |class: String| {
            if class.is_empty() { thread } else { thread.with_class(class.as_bytes()).unwrap() }
        };
        class(thread.form()).prop_map(classed)
    })
}
