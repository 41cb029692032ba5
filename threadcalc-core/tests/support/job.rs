//! The one job that tests and benches plan.

use threadcalc_core::{Job, Value};

/// A blind hole with this thread at 650 rpm, 20 mm deep, on the built-in control.
pub fn of(thread: &str) -> Job {
    of_thread(thread, "mm", "650")
}

/// The same on a machine in this unit, at this speed.
pub fn of_thread(thread: &str, unit: &str, rpm: &str) -> Job {
    let mut job = Job::default();
    for (key, value) in [
        ("thread", thread),
        ("rpm", rpm),
        ("unit", unit),
        ("mode", "per_minute"),
        ("decimals", "3"),
        ("hole", "blind"),
        ("full_thread_depth_mm", "20"),
        ("tap", "cut"),
        ("dialect", "rs274ngc"),
    ] {
        job.set(key, Value::Text(value.as_bytes())).unwrap();
    }
    job
}
