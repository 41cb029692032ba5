//! How much stack a plan takes beside its job and its answer, on a stack that is painted before the call.
//!
//! A line a job: the bytes of the stack that the call wrote to, and with the answer's own. A call above the
//! limit ends the program with an error. With `planted` every call takes another 16 KiB, which has to be found.

use std::arch::asm;
use std::hint::black_box;
use std::mem::{MaybeUninit, size_of};
use std::process::ExitCode;

use threadcalc_core::{Code, Error, Field, Job, Plan, Value, plan};

/// What the call may take beside its job and its answer, whatever the job asks for.
const LIMIT: usize = 8 * 1024;
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

/// Everything that a plan can be asked about holder, part, spindle and machine.
const EVERY_PART: &[(&str, &str)] = &[
    ("holder", "tension_compression"),
    ("underfeed_percent", "2"),
    ("over_travel_turns", "0.5"),
    ("coating_um", "5"),
    ("part_thickness_mm", "26"),
    ("material", "aluminium"),
    ("hole_count", "8"),
    ("dwell_s", "0.3"),
    ("machine.highest_rpm", "600"),
    ("machine.acceleration_rpm_s", "100"),
    ("machine.axis_feed_limit_mm_min", "500"),
    ("machine.retract_factor", "2"),
    ("machine.gears", "20 500 1"),
    ("machine.gears", "20 4000 1 80 500 60 4000 10"),
];
/// A blind hole with a screw in it.
const SCREWED: &[(&str, &str)] = &[
    ("full_thread_depth_mm", "20"),
    ("countersink_mm", "9"),
    ("drill_depth_mm", "24"),
    ("part_shear_mpa", "250"),
    ("screw.property_class", "8.8"),
    ("screw.load_n", "10000"),
];

/// The thread, and what its job asks for beside the usual.
fn jobs() -> Vec<(&'static str, Job)> {
    let deep = &[("full_thread_depth_mm", "20")][..];
    let own_drills = &[("drill_list", "6.8, 8.5, #7")][..];
    let of = |thread: &'static str, more: &[&[(&str, &str)]]| {
        let mut asked = vec![("thread", thread)];
        asked.extend(more.iter().flat_map(|part| part.iter().copied()));
        job(&asked)
    };
    let mark = |text: &'static str| [("tap_mark", text)];
    vec![
        ("M8x1.25-6H", of("M8x1.25-6H", &[deep])),
        ("7/16-14 UNC-2B", of("7/16-14 UNC-2B", &[deep])),
        ("1/4-18 NPT", of("1/4-18 NPT", &[])),
        ("Tr20x4", of("Tr20x4", &[deep])),
        ("1/2-10 ACME-2G", of("1/2-10 ACME-2G", &[deep])),
        ("a wire insert", of("M8x1.25 STI", &[deep])),
        ("a special thread", of("1/4-18 UNS", &[deep])),
        ("a special metric thread", of("M9.3x0.77", &[deep, own_drills])),
        ("M8, every part", of("M8", &[SCREWED, EVERY_PART, &mark("M8x1.25 6H")])),
        ("M8, every part, D limit", of("M8", &[SCREWED, EVERY_PART, &mark("M8x1.25 D5 C LH QQ")])),
        ("MJ8, every part", of("MJ8x1", &[SCREWED, EVERY_PART, &mark("MJ8x1 4H6H")])),
        ("3/8-16 UNC, every part", of("3/8-16 UNC-2B", &[SCREWED, EVERY_PART, &mark("3/8-16 UNC GH3")])),
        ("M8, formed, every part", of("M8", &[&[("tap", "form")], SCREWED, EVERY_PART, &mark("M8 6HX FORM C")])),
        ("1/4 NPT, every part", of("1/4 NPT", &[EVERY_PART, &mark("1/4-18 NPT")])),
        ("Tr20x4, every part", of("Tr20x4", &[deep, EVERY_PART, &mark("Tr20x4 7H")])),
        ("a wire insert, every part", of("1/4-20 UNC STI", &[deep, EVERY_PART, &mark("1/4-20 UNC STI H3")])),
        ("a special thread, every part", of("1/4-18 UNS", &[deep, EVERY_PART, &mark("1/4-18 UNS 2B")])),
    ]
}

/// Threads of every family, with every kind of mark, hole, tap and machine.
fn sweep() -> Vec<Job> {
    const THREADS: [&str; 36] = [
        "M1.4",
        "M3-5H",
        "M8-6G",
        "M10x1-6H-LH",
        "M9.3x0.77",
        "M36x3-7H",
        "MJ6x1",
        "MJ12x1.5-4H5H",
        "S0.9",
        "1-64 UNC",
        "1/4-20 UNC-3B",
        "1/4-28 UNF-2B",
        "1 1/2-8 UN-2B",
        "10-36 UNS-2B",
        "1/2-13 UNC-2B-LH",
        "5/16-24 UNJF-3B",
        "1/4-20 UNRC",
        "1/8 NPT",
        "1/2 NPTF",
        "1/8-27 NPSM",
        "G1/4",
        "Rc1/2",
        "Rp3/8",
        "1/4 BSW",
        "3/8-20 BSF",
        "2 BA",
        "Tr12x3-7H",
        "Tr20x8(P4)",
        "1/2-10 ACME-3G",
        "1/2-10 STUB ACME",
        "1-8 BUTT-2B",
        "M6 STI",
        "10-32 UNF STI",
        "1/4-18",
        "M8x1.25",
        "M12x1.75(2 STARTS)",
    ];
    const MARKS: [&str; 6] =
        ["M8 ISO2 6HX", "M10 D6 EG", "1/4-20 UNC GH5 LH", "1/2-13 2B FORM B", "1/8-27 NPT", "STI 6G QQ"];
    let mut jobs = Vec::new();
    for thread in THREADS {
        for mark in MARKS {
            for (tap, hole, unit, mode) in [
                ("cut", "blind", "mm", "per_minute"),
                ("form", "through", "inch", "per_revolution"),
                ("cut", "through", "inch", "per_minute"),
            ] {
                let mut job = Job::default();
                let own = [("thread", thread), ("unit", unit), ("mode", mode), ("decimals", "4"), ("rpm", "650")];
                let more = [("hole", hole), ("tap", tap), ("tap_mark", mark), ("dialect", "rs274ngc")];
                let is_taper = ["1/8 NPT", "1/2 NPTF", "Rc1/2"].contains(&thread);
                let deep: &[_] = if is_taper { &[] } else { &[("full_thread_depth_mm", "12"), ("peck_mm", "3")] };
                for (key, value) in own.iter().chain(&more).chain(EVERY_PART).chain(deep) {
                    job.set(key, Value::Text(value.as_bytes())).unwrap();
                }
                jobs.push(job);
            }
        }
    }
    jobs
}

fn main() -> ExitCode {
    let planted = std::env::args().any(|argument| argument == "planted");
    let mut nothing =
        Call { job: &Job::default(), planned: MaybeUninit::uninit(), plan: black_box(refused), planted: false };
    let caller = taken(&mut nothing);
    println!("a job takes {} bytes, a plan {}", size_of::<Job>(), size_of::<Plan>());
    let mut held = true;
    for (name, job) in &jobs() {
        let mut call = Call { job, planned: MaybeUninit::uninit(), plan: black_box(plan), planted };
        let taken = taken(&mut call) - caller;
        // SAFETY: the call has written it.
        let planned = unsafe { call.planned.assume_init() };
        // A job that is refused early would take little room and prove nothing.
        held &= planned.is_ok();
        let what =
            planned.map_or_else(|error| error.to_string(), |plan| format!("{} findings", plan.findings.iter().count()));
        let within = taken <= LIMIT;
        let mark = if within { "" } else { ", ABOVE THE LIMIT" };
        println!("{name}: {taken} bytes beside of 8 KiB, {} with the plan; {what}{mark}", taken + size_of::<Plan>());
        held &= within;
    }
    let (mut most, mut plans, swept) = (0, 0, sweep());
    for job in &swept {
        let mut call = Call { job, planned: MaybeUninit::uninit(), plan: black_box(plan), planted };
        most = most.max(taken(&mut call) - caller);
        // SAFETY: the call has written it.
        plans += usize::from(unsafe { call.planned.assume_init() }.is_ok());
    }
    let mark = if most <= LIMIT { "" } else { ", ABOVE THE LIMIT" };
    println!("{} jobs of every family, {plans} of them planned: at most {most} bytes{mark}", swept.len());
    held &= most <= LIMIT && plans > swept.len() / 2;
    if held { ExitCode::SUCCESS } else { ExitCode::FAILURE }
}
