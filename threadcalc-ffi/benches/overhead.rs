//! What a call through the C interface costs above the same work asked of the core: nanoseconds and ratios of one run.
//!
//! Every C call goes through a function pointer that the compiler cannot see through, as from a C program. The
//! core starts from the same plain numbers and texts and its answer is taken apart to the same members; the lines
//! "at hand" show what a Rust caller saves who keeps the core's own types. Answers are compared before anything
//! is timed, and with `--check` nothing is timed. A line above its limit ends a timed run with an error.

use std::ffi::c_char;
use std::hint::black_box;
use std::mem::{MaybeUninit, size_of};
use std::process::ExitCode;
use std::ptr::{null, null_mut};
use std::time::Instant;

use threadcalc::*;
use threadcalc_core::{
    Basis, Drill, DrillSet, Error, FeedMode, Form, Hand, Length, Side, Tap, Thread, Unit, feed, percent_thread,
    programmed_speed, read_number,
};

const ROUNDS: usize = 1001;
const NANOSECONDS_A_ROUND: u128 = 50_000;
/// What the C interface may cost above the core, in nanoseconds of one call.
const LIMIT: Option<f64> = Some(5.0);
/// A thread in a structure also has a class whose end is looked for, and a series and a lead that must agree.
const LIMIT_OF_A_THREAD: Option<f64> = Some(10.0);
/// What a job's text to its plan's text may cost, in formatted numbers.
const LIMIT_OF_A_TEXT: Option<f64> = Some(300.0);
const NO_LIMIT: Option<f64> = None;

const METRIC: &[u8] = b"M8x1.25-6H";
const UNIFIED: &[u8] = b"7/16-14 UNC-2B";

fn once<T>(calls: u32, call: &mut impl FnMut() -> T) -> f64 {
    let start = Instant::now();
    for _ in 0..calls {
        black_box(call());
    }
    start.elapsed().as_nanos() as f64 / f64::from(calls)
}

fn calls_of<T>(call: &mut impl FnMut() -> T) -> u32 {
    let mut calls = 1_u32;
    while once(calls, call) as u128 * u128::from(calls) < NANOSECONDS_A_ROUND && calls < 1 << 24 {
        calls *= 2;
    }
    calls
}

/// Calls it some frames further down: where the stack lies against other memory within a page is chance, and
/// costs nanoseconds. Both sides are timed at every place.
#[inline(never)]
fn deeper(levels: usize, call: &mut dyn FnMut() -> f64) -> f64 {
    let frame = black_box([0_u8; 208]);
    let time = if levels == 0 { call() } else { deeper(levels - 1, call) };
    black_box(frame);
    time
}

/// The time of a quiet round: a tenth of the rounds is faster. What else the machine does only ever adds.
fn quiet(mut times: Vec<f64>) -> f64 {
    times.sort_by(f64::total_cmp);
    times[times.len() / 10]
}

/// Times both sides in turn and prints a line; false if it is above its limit, in nanoseconds above the core.
fn compare<A, B>(name: &str, limit: Option<f64>, c: impl FnMut() -> A, core: impl FnMut() -> B) -> bool {
    line(name, limit, c, core, |above, _| above)
}

/// The same with a limit of the ratio.
fn compare_by<A, B>(name: &str, limit: Option<f64>, c: impl FnMut() -> A, peer: impl FnMut() -> B) -> bool {
    line(name, limit, c, peer, |_, ratio| ratio)
}

fn line<A, B>(
    name: &str,
    limit: Option<f64>,
    mut c: impl FnMut() -> A,
    mut core: impl FnMut() -> B,
    limited: fn(f64, f64) -> f64,
) -> bool {
    if std::env::args().any(|argument| argument == "--check") {
        println!("{name}: the same answer");
        return true;
    }
    let (c_calls, core_calls) = (calls_of(&mut c), calls_of(&mut core));
    let (mut c_times, mut core_times) = (Vec::new(), Vec::new());
    for round in 0..ROUNDS {
        c_times.push(deeper(round % 16, &mut || once(c_calls, &mut c)));
        core_times.push(deeper(round % 16, &mut || once(core_calls, &mut core)));
    }
    let (c, core) = (quiet(c_times), quiet(core_times));
    let (above, ratio) = (c - core, c / core);
    let held = limit.is_none_or(|limit| limited(above, ratio) < limit);
    let shown = limit.map_or("-".into(), |limit| format!("{limit:.1}"));
    let mark = if held { "" } else { "  MISSED" };
    println!("{name:<34} | {c:>7.1} | {core:>7.1} | {above:>+7.1} | {ratio:>5.2} | {shown:>5}{mark}");
    held
}

/// A C call that writes one result, as a call without arguments: the room for the result is the caller's.
fn into_room<T>(call: impl Fn(*mut T) -> i32) -> impl FnMut() -> i32 {
    let mut room = MaybeUninit::<T>::uninit();
    move || call(black_box(room.as_mut_ptr()))
}

/// What a C call writes.
fn written<T: Copy>(call: impl Fn(*mut T) -> i32) -> T {
    let mut room = MaybeUninit::uninit();
    assert_eq!(call(room.as_mut_ptr()), THREADCALC_STATUS_OK);
    // SAFETY: the call succeeded, so it wrote all of it.
    unsafe { room.assume_init() }
}

fn ratio(value: Length) -> threadcalc_ratio_t {
    threadcalc_ratio_t { numerator: value.numerator(), denominator: value.denominator() }
}

/// An exact number made of the numerator and denominator that a caller holds.
fn made(number: &threadcalc_ratio_t) -> Result<Length, Error> {
    let number = black_box(number);
    Length::new(number.numerator, number.denominator)
}

fn lead() -> bool {
    let call = black_box(threadcalc_lead as unsafe extern "C" fn(_, _, _, _) -> _);
    let c = |place: *mut [i64; 2]| -> i32 {
        let text = black_box(UNIFIED);
        let numerator = place.cast::<i64>();
        // SAFETY: all pointers of this file are to memory of the size that the call is told, or may be NULL.
        unsafe { call(text.as_ptr(), text.len(), numerator, numerator.add(1)) }
    };
    let core = || {
        Thread::read(black_box(UNIFIED)).map(|thread| [thread.lead_mm().numerator(), thread.lead_mm().denominator()])
    };
    assert_eq!(Ok(written(c)), core());
    compare("lead", LIMIT, into_room(c), core)
}

fn feed_word() -> bool {
    type Call = unsafe extern "C" fn(*const u8, usize, f64, i32, i32, i32, *mut c_char, usize, *mut usize) -> i32;
    type Word = ([u8; 24], usize);
    let call = black_box(threadcalc_feed_word as Call);
    let c = |place: *mut Word| -> i32 {
        let (designation, rpm) = (black_box(UNIFIED), black_box(650.0));
        // SAFETY: as in lead.
        unsafe {
            let (text, needed) = ((&raw mut (*place).0).cast(), &raw mut (*place).1);
            call(designation.as_ptr(), designation.len(), rpm, 1, 1, 3, text, 24, needed)
        }
    };
    // As a Rust caller does who keeps the word in a buffer of his own, with a NUL.
    let core = || -> Result<Word, Error> {
        let lead = Thread::read(black_box(UNIFIED))?.lead_mm();
        let rpm = Length::from_f64(black_box(650.0))?;
        let feed = feed(lead, Some(rpm), black_box(Unit::Mm), black_box(FeedMode::PerMinute), black_box(3))?;
        let mut text = [0; 24];
        let word = feed.word().as_bytes();
        text[..word.len()].copy_from_slice(word);
        Ok((text, word.len() + 1))
    };
    let ((got, needed), (wanted, length)) = (written(c), core().unwrap());
    assert_eq!((&got[..needed], needed), (&wanted[..length], length));
    compare("feed_word", LIMIT, into_room(c), core)
}

/// A thread taken apart as the C structure holds it.
fn members(thread: &Thread) -> ([i32; 7], [threadcalc_ratio_t; 5], [u8; 8]) {
    let mut class = [0; 8];
    for (place, byte) in class.iter_mut().zip(thread.tolerance_class().map_or([0; 6], |class| class.text().padded())) {
        *place = byte;
    }
    let choices = [
        thread.form().number(),
        thread.series().map_or(0, |series| series.number()),
        i32::from(thread.starts()),
        thread.hand().number(),
        thread.side().map_or(0, |side| side.number()),
        i32::from(thread.is_standard()),
        thread.written_as().map_or(0, |written_as| written_as.number()),
    ];
    let lengths = [
        thread.nominal_mm().map_or(threadcalc_ratio_t::default(), ratio),
        ratio(thread.major_mm()),
        ratio(thread.pitch_mm()),
        ratio(thread.lead_mm()),
        ratio(thread.taper_on_diameter()),
    ];
    (choices, lengths, class)
}

/// threadcalc_thread_read of a text, with the room for the thread still to be named.
fn thread_read(text: &'static [u8]) -> impl Fn(*mut threadcalc_thread_t) -> i32 + Copy {
    let call = black_box(threadcalc_thread_read as unsafe extern "C" fn(_, _, _, _) -> _);
    move |place| {
        let text = black_box(text);
        // SAFETY: as in lead.
        unsafe { call(text.as_ptr(), text.len(), place, null_mut()) }
    }
}

fn threads() -> bool {
    let c = thread_read(METRIC);
    let core = || Thread::read(black_box(METRIC)).map(|thread| members(&thread));
    let (thread, wanted) = (written(c), core().unwrap());
    let lengths = [thread.nominal_mm, thread.major_mm, thread.pitch_mm, thread.lead_mm, thread.taper_on_diameter];
    assert_eq!(lengths, wanted.1);
    assert_eq!((thread.form, thread.tolerance_class.map(|byte| byte as u8)), (wanted.0[0], wanted.2));
    compare("thread_read, members never read", NO_LIMIT, into_room(c), || Thread::read(black_box(METRIC)));
    compare("thread_read", LIMIT, into_room(c), core)
}

fn numbers() -> bool {
    let call = black_box(threadcalc_read_number as unsafe extern "C" fn(_, _, _, _) -> _);
    let c = |place: *mut threadcalc_ratio_t| -> i32 {
        let text = black_box(b"1179.286");
        // SAFETY: as in lead.
        unsafe { call(text.as_ptr(), text.len(), place, null_mut()) }
    };
    let core = || read_number(black_box(b"1179.286")).map(ratio);
    assert_eq!(Ok(written(c)), core());
    compare("read_number", LIMIT, into_room(c), core)
}

fn speeds() -> bool {
    let call = black_box(threadcalc_programmed_speed as unsafe extern "C" fn(_, _, _, _, _, _) -> _);
    let (asked, step) = (Length::new(10_003, 10).unwrap(), Length::integer(10));
    let (asked_c, step_c) = (ratio(asked), ratio(step));
    let c = |place: *mut threadcalc_ratio_t| -> i32 {
        // SAFETY: as in lead.
        unsafe { call(black_box(&raw const asked_c), black_box(&raw const step_c), null(), null(), place, null_mut()) }
    };
    let at_hand = || programmed_speed(black_box(asked), black_box(step), None, None);
    let core = || programmed_speed(made(&asked_c)?, made(&step_c)?, None, None).map(ratio);
    assert_eq!((Ok(written(c)), at_hand().map(ratio)), (core(), core()));
    compare("programmed_speed, Lengths at hand", NO_LIMIT, into_room(c), at_hand);
    compare("programmed_speed", LIMIT, into_room(c), core)
}

fn drills() -> bool {
    let call = black_box(threadcalc_drill_named as unsafe extern "C" fn(_, _, _, _, _) -> _);
    let c = |place: *mut threadcalc_drill_t| -> i32 {
        let (set, name) = (black_box(DrillSet::Number.number()), black_box(b"#7"));
        // SAFETY: as in lead.
        unsafe { call(set, name.as_ptr(), name.len(), place, null_mut()) }
    };
    // The name is part of the answer in C; in Rust it is made when it is asked for.
    let core = || {
        let drill = Drill::named(black_box(DrillSet::Number), black_box(b"#7"));
        drill.map(|drill| (drill.set(), ratio(drill.diameter_mm()), drill.name().padded()))
    };
    assert_eq!(written(c).diameter_mm, core().unwrap().1);
    compare("drill_named", LIMIT, into_room(c), core)
}

fn feeds() -> bool {
    let call = black_box(threadcalc_feed as unsafe extern "C" fn(_, _, _, _) -> _);
    let (lead, rpm, decimals) = (Thread::read(UNIFIED).unwrap().lead_mm(), Length::integer(650), Length::integer(3));
    let asked = threadcalc_feed_request_t {
        size: size_of::<threadcalc_feed_request_t>() as u32,
        unit: Unit::Mm.number(),
        mode: FeedMode::PerMinute.number(),
        reserved: 0,
        decimals: ratio(decimals),
        lead_mm: ratio(lead),
        rpm: ratio(rpm),
    };
    let c = |place: *mut threadcalc_feed_t| -> i32 {
        // SAFETY: as in lead.
        unsafe { call(black_box(&raw const asked), place, size_of::<threadcalc_feed_t>(), null_mut()) }
    };
    // All that the C structure holds.
    let all = |lead: Length, rpm: Length, decimals: Length| -> Result<_, Error> {
        let decimals = decimals.whole().and_then(|whole| u8::try_from(whole).ok()).unwrap_or(u8::MAX);
        let feed = feed(lead, Some(rpm), black_box(Unit::Mm), black_box(FeedMode::PerMinute), decimals)?;
        let numbers = [feed.value()?, feed.exact()?, feed.lead_error()?, feed.lead_cut_mm()?];
        Ok((feed.word_text().padded(), numbers.map(ratio)))
    };
    let at_hand = || all(black_box(lead), black_box(rpm), black_box(decimals));
    let core = || all(made(&asked.lead_mm)?, made(&asked.rpm)?, made(&asked.decimals)?);
    let (found, wanted) = (written(c), core().unwrap());
    assert_eq!([found.value, found.exact, found.lead_error, found.lead_cut_mm], wanted.1);
    compare("feed, Lengths at hand", NO_LIMIT, into_room(c), at_hand);
    compare("feed", LIMIT, into_room(c), core)
}

fn percents() -> bool {
    let call = black_box(threadcalc_percent_thread as unsafe extern "C" fn(_, _, _, _, _, _) -> _);
    let (thread, given) = (Thread::read(UNIFIED).unwrap(), written(thread_read(UNIFIED)));
    let drill = Length::new(9347, 1000).unwrap();
    let (drill_c, cut, basis) = (ratio(drill), Tap::Cut, Basis::ThreeQuartersH);
    let c = |place: *mut f64| -> i32 {
        let (given, drill) = (black_box(&raw const given), black_box(&raw const drill_c));
        // SAFETY: as in lead.
        unsafe { call(given, drill, black_box(cut.number()), black_box(basis.number()), place, null_mut()) }
    };
    let at_hand = || percent_thread(black_box(&thread), black_box(drill), black_box(cut), black_box(Some(basis)));
    // A structure of the caller's may hold anything: the thread is built and checked on every call.
    let core = || {
        let thread = Thread::from_parts(
            black_box(Form::Unified),
            made(&given.nominal_mm)?,
            made(&given.pitch_mm)?,
            i64::from(*black_box(&given.starts)),
            black_box(Hand::Right),
            black_box(Some(Side::Internal)),
            black_box(b"2B"),
        )?;
        percent_thread(&thread, made(&drill_c)?, black_box(cut), black_box(Some(basis)))
    };
    assert_eq!((Ok(written(c)), at_hand()), (core(), core()));
    compare("percent_thread, Thread at hand", NO_LIMIT, into_room(c), at_hand);
    compare("percent_thread", LIMIT_OF_A_THREAD, into_room(c), core)
}

/// The JSON door, text to text, by one formatted number: there is no core call that does the same.
fn plan_json() -> bool {
    const JOB: &[u8] = br#"{"schema":1,"thread":"7/16-14 UNC-2B","rpm":650,"unit":"mm","mode":"per_minute","decimals":3,"hole":"blind","full_thread_depth_mm":20,"tap":"cut","dialect":"rs274ngc"}"#;
    type Call = unsafe extern "C" fn(*const u8, usize, *mut c_char, usize, *mut usize) -> i32;
    let call = black_box(threadcalc_plan_json as Call);
    let mut text = vec![0_u8; 16_384];
    let mut needed = 0;
    let mut c = || {
        let (job, room) = (black_box(JOB), text.as_mut_ptr().cast());
        // SAFETY: as in lead.
        let status = unsafe { call(job.as_ptr(), job.len(), room, 16_384, &raw mut needed) };
        (status, needed)
    };
    let (status, length) = c();
    assert_eq!(status, THREADCALC_STATUS_OK);
    let formatted = || format!("{:.3}", black_box(8.994_f64));
    let held = compare_by("plan_json, text to text", LIMIT_OF_A_TEXT, c, formatted);
    assert!(String::from_utf8_lossy(&text[..length]).contains("\"F1179.286\""));
    held
}

fn main() -> ExitCode {
    let heads = ["call through C", "C ns", "core ns", "above", "ratio", "limit"];
    println!(
        "{:<34} | {:>7} | {:>7} | {:>7} | {:>5} | {:>5}",
        heads[0], heads[1], heads[2], heads[3], heads[4], heads[5]
    );
    let version = black_box(threadcalc_abi_version as extern "C" fn() -> i32);
    assert_eq!(version(), THREADCALC_ABI_VERSION);
    compare("abi_version, an empty call", NO_LIMIT, || version(), || THREADCALC_ABI_VERSION);
    let held = [lead(), feed_word(), threads(), numbers(), speeds(), drills(), feeds(), percents(), plan_json()];
    if held.into_iter().all(|held| held) { ExitCode::SUCCESS } else { ExitCode::FAILURE }
}
