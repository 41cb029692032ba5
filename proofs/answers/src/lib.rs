//! What every machine is asked: the same source, the same text to the last bit.
//!
//! No standard library and no heap: a machine hands in a place to write to and nothing else.

#![no_std]

#[path = "../../../threadcalc-core/tests/support/jobs.rs"]
#[allow(missing_docs, reason = "belongs to the tests of the core")]
mod jobs;
mod known;
mod page;
#[path = "../../../threadcalc-core/tests/support/random.rs"]
#[allow(missing_docs, reason = "belongs to the tests of the core")]
mod random;

use core::fmt::{self, Write};

use jobs::{Hash, SEED, double, draw, ratio, write_items};
use random::Random;
use threadcalc_core::{Plan, Thread, plan};

pub use known::write_known;
pub use page::Page;

/// How many plans are asked for.
pub const JOBS: usize = 1000;

/// Designations, one a line; lines that begin with `#` do not count.
const LISTED: &[u8] = include_bytes!("../../../tests/same_bits/threads.txt");

/// Room for the threads of the list.
const MOST_THREADS: usize = 128;

/// Writes one line for each thread of the list and one for each of the random jobs.
///
/// # Errors
/// What `out` says, or a plan whose exact numbers do not fit.
pub fn write_answers(out: &mut dyn Write) -> fmt::Result {
    let lines = || LISTED.split(|byte| *byte == b'\n').filter(|line| !line.is_empty() && !line.starts_with(b"#"));
    assert!(lines().count() <= MOST_THREADS, "more threads than there is room for");
    let first = lines().next().and_then(|line| Thread::read(line).ok()).expect("a list that begins with a thread");
    let mut threads = [first; MOST_THREADS];
    let mut count = 0;
    for (place, line) in threads.iter_mut().zip(lines()) {
        *place = Thread::read(line).expect("a designation of the list");
        write_thread(out, place)?;
        count += 1;
    }
    let mut random = Random(SEED);
    for _ in 0..JOBS {
        match plan(&draw(&mut random, &threads[..count])) {
            Ok(plan) => write_plan(out, &plan)?,
            Err(error) => writeln!(out, "error {} {}", error.code().name(), error.field())?,
        }
    }
    Ok(())
}

/// Designation, lead, profile and limits.
fn write_thread(out: &mut dyn Write, thread: &Thread) -> fmt::Result {
    write!(out, "{thread}")?;
    ratio(out, thread.lead_mm())?;
    let profile = thread.profile();
    for value in [
        profile.triangle_height_mm,
        profile.major_mm,
        profile.pitch_diameter_mm,
        profile.minor_mm,
        profile.external_minor_mm,
        profile.stress_area_mm2,
    ] {
        double(out, value)?;
    }
    match thread.limits() {
        Ok(limits) => {
            for limit in [limits.minor_mm.0, limits.minor_mm.1].into_iter().flatten() {
                ratio(out, limit)?;
            }
        }
        Err(error) => write!(out, "|{}", error.code().name())?,
    }
    out.write_str("\n")
}

/// The items of tests/same_bits/README.md and the hash of the plan's text.
fn write_plan(out: &mut dyn Write, plan: &Plan) -> fmt::Result {
    let mut hash = Hash::EMPTY;
    write!(hash, "{plan}")?;
    write_items(out, plan)?;
    writeln!(out, "|{:016x}", hash.0)
}
