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
    let classes = match form {
        Form::Metric => {
            return prop_oneof![Just(String::new()), "[4-8][GH]", "[3-9][efgh]", "[3-9][g][468][g]"].boxed();
        }
        Form::MetricJ => return prop_oneof![Just(String::new()), "4[GH][56][GH]", "[46]H", "4[gh]6[gh]", "6g"].boxed(),
        Form::Miniature => ["3G5", "3G6", "4H5", "4H6", "5h3"].as_slice(),
        Form::Unified => &["1A", "2A", "3A", "1B", "2B", "3B"],
        Form::UnifiedR => &["1A", "2A", "3A"],
        Form::UnifiedJ => &["2A", "3A", "2B", "3B"],
        Form::Whitworth => &["close", "medium", "free", "normal"],
        Form::Ba => &["close", "normal"],
        Form::Trapezoidal => &["7H", "8H", "9H", "7e", "8e", "8c", "9c"],
        Form::Acme => &["2G", "3G", "4G", "2C", "3C", "4C", "5C", "6C"],
        Form::StubAcme => &["2G"],
        Form::Buttress | Form::PullButtress => &["2", "3", "2A", "3A", "2B", "3B"],
        Form::G => &["A", "B"],
        Form::Npsm => &["2A", "2B"],
        Form::Nptf => &["1", "2"],
        _ => &[],
    };
    let classes: Vec<String> = classes.iter().map(ToString::to_string).chain([String::new()]).collect();
    proptest::sample::select(classes).boxed()
}

/// The threads of these forms that a standard lists.
fn listed(is_wanted: impl Fn(Form) -> bool) -> impl Strategy<Value = Thread> {
    let threads: Vec<_> = standard_threads(None, None).filter(|thread| is_wanted(thread.form())).collect();
    proptest::sample::select(threads)
}

fn made(form: Form, diameter: Length, pitch: Length) -> Option<Thread> {
    Thread::from_parts(form, diameter, pitch, 1, Hand::Right, None, b"").ok()
}

fn metric(forms: &'static [Form]) -> impl Strategy<Value = Thread> {
    let diameter = prop_oneof![parts(1..=300, 1), parts(10..=3_000, 10), parts(300..=300_000, 1_000)];
    let pitch = prop_oneof![parts(1..=160, 20), parts(50..=8_000, 1_000)];
    (proptest::sample::select(forms), diameter, pitch)
        .prop_filter_map("no thread", |(form, diameter, pitch)| made(form, diameter, pitch))
}

fn inch(forms: &'static [Form]) -> impl Strategy<Value = Thread> {
    let numbered = parts(60..=216, 1_000);
    let diameter = prop_oneof![parts(4..=384, 64), parts(60..=6_000, 1_000), parts(600..=60_000, 10_000), numbered];
    let per_inch = prop_oneof![parts(8..=160, 2), parts(4..=80, 1)];
    (proptest::sample::select(forms), diameter, per_inch).prop_filter_map("no thread", |(form, diameter, per_inch)| {
        made(form, diameter.times(Length::INCH).ok()?, Length::INCH.over(per_inch).ok()?)
    })
}

/// Families that have specials; the sizes of S and BA are fixed, as those of pipes are.
const METRIC: [Form; 3] = [Form::Metric, Form::MetricJ, Form::Trapezoidal];
const INCH: [Form; 8] = [
    Form::Unified,
    Form::UnifiedR,
    Form::UnifiedJ,
    Form::Whitworth,
    Form::Acme,
    Form::StubAcme,
    Form::Buttress,
    Form::PullButtress,
];

/// Threads of every family, mostly specials: any number of starts, both hands, every class, and holes for wire
/// inserts.
pub fn thread() -> impl Strategy<Value = Thread> {
    let starts = prop_oneof![3 => Just(1_i64), 1 => 1_i64..=12];
    let single = prop_oneof![
        2 => metric(&[Form::Metric]),
        2 => inch(&[Form::Unified]),
        2 => metric(&METRIC),
        2 => inch(&INCH),
        1 => listed(Form::is_pipe),
        2 => listed(|form| !form.is_pipe()),
    ];
    (single, starts, any::<bool>(), 0..4_u8).prop_flat_map(|(thread, starts, left, insert)| {
        let thread = if insert == 0 { thread.with_wire_insert().unwrap_or(thread) } else { thread };
        // Fixed sizes and the holes of inserts have one start.
        let thread = thread.with_starts(starts).unwrap_or(thread);
        let thread = thread.with_hand(if left { Hand::Left } else { Hand::Right });
        // Of the hole of an insert only the internal classes can be.
        class(thread.form()).prop_map(move |class| match class.as_str() {
            "" => thread,
            class => thread.with_class(class.as_bytes()).unwrap_or(thread),
        })
    })
}
