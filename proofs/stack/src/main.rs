//! How much stack a plan takes beside its job and its answer, on a stack that is painted before the call.
//!
//! A line a job: the bytes of the stack that the call wrote to, and with the answer's own. A call above the
//! limit ends the program with an error. With `planted` every call takes another 16 KiB, which has to be found.

use std::arch::asm;
use std::hint::black_box;
use std::mem::{MaybeUninit, size_of};
use std::process::ExitCode;

use threadcalc_core::{Code, Error, Field, Job, Plan, Value, plan};

/// What the call may take beside its job and its answer, in KiB: the aim, for a thread of a standard and for one
/// whose near threads have to be found.
const USUAL: usize = 8;
/// The same with every part of a plan, measured, so that it does not grow: the tap's shank is read and judged.
const WHOLE: usize = 14;
const ROOM: usize = 256 * 1024;
const PAINT: u8 = 0xA5;

/// What goes in and comes out: both lie outside the stack that is measured.
struct Call<'a> {
    job: &'a Job,
    planned: MaybeUninit<Result<Plan, Error>>,
    plan: fn(&Job) -> Result<Plan, Error>,
    planted: bool,
}

extern "C" fn one_plan(call: &mut Call<'_>) {
    if call.planted {
        another_16_kib();
    }
    call.planned = MaybeUninit::new((call.plan)(call.job));
}

/// What the caller's own frame takes, its room for the answer included: to be taken off.
#[inline(never)]
fn refused(_: &Job) -> Result<Plan, Error> {
    Err(Error::new(Code::Missing, Field::Job))
}

#[inline(never)]
fn another_16_kib() {
    black_box([0_u8; 16 * 1024]);
}

/// The bytes of a fresh stack that a call writes to.
fn taken(call: &mut Call<'_>) -> usize {
    let mut stack = vec![PAINT; ROOM];
    let end = stack.as_mut_ptr_range().end as usize;
    let top = end - end % 64;
    let enter: extern "C" fn(&mut Call<'_>) = one_plan;
    // SAFETY: the call gets a stack of its own, large enough and aligned, and comes back to the old one, which
    // is kept in a register that the callee has to keep.
    unsafe {
        asm!("mov r12, rsp", "mov rsp, {top}", "call {enter}", "mov rsp, r12",
            top = in(reg) top, enter = in(reg) enter, in("rdi") call, out("r12") _, clobber_abi("C"));
    }
    let untouched = stack.iter().take_while(|byte| **byte == PAINT).count();
    ROOM - end % 64 - untouched
}

/// A job of keys and values.
fn job(more: &[(&str, &str)]) -> Job {
    let usual = [
        ("unit", "mm"),
        ("mode", "per_minute"),
        ("decimals", "3"),
        ("rpm", "650"),
        ("hole", "blind"),
        ("tap", "cut"),
        ("dialect", "rs274ngc"),
    ];
    let mut job = Job::default();
    for (key, value) in usual.iter().chain(more) {
        job.set(key, Value::Text(value.as_bytes())).unwrap();
    }
    job
}

fn main() -> ExitCode {
    let planted = std::env::args().any(|argument| argument == "planted");
    let deep = ("full_thread_depth_mm", "20");
    let jobs = [
        ("M8x1.25-6H", USUAL, job(&[("thread", "M8x1.25-6H"), deep])),
        ("7/16-14 UNC-2B", USUAL, job(&[("thread", "7/16-14 UNC-2B"), deep])),
        ("1/4-18 NPT", USUAL, job(&[("thread", "1/4-18 NPT")])),
        ("a special thread", USUAL, job(&[("thread", "1/4-18 UNS"), deep])),
        ("a special metric thread", USUAL, job(&[("thread", "M9.3x0.77"), deep, ("drill_list", "6.8, 8.5, #7")])),
        (
            "every part of a plan",
            WHOLE,
            job(&[
                ("thread", "M8"),
                deep,
                ("holder", "tension_compression"),
                ("underfeed_percent", "2"),
                ("over_travel_turns", "0.5"),
                ("tap_mark", "M8x1.25 6H"),
                ("coating_um", "5"),
                ("countersink_mm", "9"),
                ("drill_depth_mm", "24"),
                ("part_thickness_mm", "26"),
                ("material", "aluminium"),
                ("hole_count", "8"),
                ("part_shear_mpa", "250"),
                ("screw.property_class", "8.8"),
                ("screw.load_n", "10000"),
                ("machine.highest_rpm", "600"),
                ("machine.acceleration_rpm_s", "100"),
                ("machine.axis_feed_limit_mm_min", "500"),
                ("machine.gears", "20 500 1"),
                ("machine.gears", "20 4000 1 80 500 60 4000 10"),
            ]),
        ),
    ];
    let mut nothing =
        Call { job: &Job::default(), planned: MaybeUninit::uninit(), plan: black_box(refused), planted: false };
    let caller = taken(&mut nothing);
    println!("a job takes {} bytes, a plan {}", size_of::<Job>(), size_of::<Plan>());
    let mut held = true;
    for (name, limit, job) in &jobs {
        let mut call = Call { job, planned: MaybeUninit::uninit(), plan: black_box(plan), planted };
        let taken = taken(&mut call) - caller;
        // SAFETY: the call has written it.
        let planned = unsafe { call.planned.assume_init() };
        let what =
            planned.map_or_else(|error| error.to_string(), |plan| format!("{} findings", plan.findings.iter().count()));
        let within = taken <= limit * 1024;
        let mark = if within { "" } else { ", ABOVE THE LIMIT" };
        println!(
            "{name}: {taken} bytes beside of {limit} KiB, {} with the plan; {what}{mark}",
            taken + size_of::<Plan>()
        );
        held &= within;
    }
    if held { ExitCode::SUCCESS } else { ExitCode::FAILURE }
}
