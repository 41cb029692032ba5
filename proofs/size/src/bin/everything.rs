//! Every public function and method of the core, and everything that it writes as text.

#![no_std]
#![no_main]

use core::fmt::{Display, Write};
use core::hint::black_box;

use size::{Port, begin, text};
use threadcalc_core::{
    Cycle, DrillSets, Form, Job, Length, Ratio, Series, Thread, Unit, Value, drills, exact_speeds, near, plan,
    read_comment, standard_threads,
};

fn write(value: impl Display) {
    black_box(write!(Port, "{value}").is_ok());
}

fn take<T>(items: impl Iterator<Item = T>) {
    for item in items {
        black_box(item);
    }
}

/// What lists hand out one by one is made when it is asked for.
fn take_lists(thread: &Thread, cycle: &Cycle) {
    take(standard_threads(black_box(None::<Form>), black_box(None::<Series>)));
    take(drills(black_box(DrillSets::ALL)));
    take(near(thread).iter());
    take(read_comment(text(), black_box(false)).threads());
    take(cycle.words());
    take(cycle.blocks());
    take(cycle.restore());
    let (lead, rpm) = (thread.lead_mm(), black_box(Ratio::ONE));
    if let Ok(speeds) = exact_speeds(lead, rpm, black_box(Unit::Mm), black_box(3), black_box(5), black_box(1), None) {
        take(speeds);
    }
}

#[unsafe(no_mangle)]
extern "C" fn _start() {
    begin();
    // One line a function, made by `check` of what the core exports.
    black_box(include!(env!("SIZE_PUBLIC")));
    let mut job = Job::default();
    let key = core::str::from_utf8(text()).unwrap_or("");
    for value in [Value::Text(text()), Value::Exact(black_box(Length::ONE)), Value::Double(black_box(1.0))] {
        if let Err(error) = job.set(key, value) {
            write(error);
        }
    }
    take(job.missing());
    if let Ok(plan) = plan(&job) {
        write(plan);
        write(plan.thread);
        write(plan.asked_rpm);
        take(plan.card());
        take(plan.findings.iter());
        take_lists(&plan.thread, &plan.cycle);
    }
}
