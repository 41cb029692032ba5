//! The one job that tests and benches plan.

use threadcalc_core::{Job, Value};

/// A blind hole with this thread at 650 rpm, 20 mm deep, on the built-in control.
pub fn of(thread: &str) -> Job {
    let mut job = Job::default();
    for (key, value) in [
        ("thread", thread),
        ("rpm", "650"),
        ("unit", "mm"),
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
