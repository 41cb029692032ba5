//! The floors under `feed` and `plan`: calls of the same signature and answer that do nothing, and the core alone.

use std::hint::black_box;
use std::sync::OnceLock;
use std::time::Instant;

use pyo3::prelude::*;
use threadcalc_core::{FeedMode, Length, Unit};

use crate::error::raise;
use crate::feed::Feed;
use crate::job::Job;
use crate::plan::Plan;

/// Does nothing; has the signature and the return class of `feed`.
#[pyfunction]
#[pyo3(signature = (thread_or_lead_mm, rpm=None, *, unit, mode, decimals))]
pub fn empty_feed(
    thread_or_lead_mm: &Bound<'_, PyAny>,
    rpm: Option<&Bound<'_, PyAny>>,
    unit: &Bound<'_, PyAny>,
    mode: &Bound<'_, PyAny>,
    decimals: &Bound<'_, PyAny>,
) -> PyResult<Feed> {
    static ANSWER: OnceLock<threadcalc_core::Feed> = OnceLock::new();
    let _ = (thread_or_lead_mm, rpm, unit, mode, decimals);
    if let Some(feed) = ANSWER.get() {
        return Ok(Feed(*feed));
    }
    let feed = threadcalc_core::feed(Length::ONE, None, Unit::Mm, FeedMode::PerRevolution, 3).map_err(raise)?;
    Ok(Feed(*ANSWER.get_or_init(|| feed)))
}

/// Does nothing; has the signature and the return class of `plan`, and room of its own for the answer.
#[pyfunction]
pub fn empty_plan(job: &Bound<'_, PyAny>) -> PyResult<Plan> {
    static ANSWER: OnceLock<threadcalc_core::Plan> = OnceLock::new();
    if let Some(plan) = ANSWER.get() {
        return Ok(Plan(Box::new(*plan)));
    }
    let plan = threadcalc_core::plan(&job.cast::<Job>()?.get().0).map_err(raise)?;
    Ok(Plan(Box::new(*ANSWER.get_or_init(|| plan))))
}

/// Nanoseconds of so many plans of the core, without Python.
#[pyfunction]
pub fn core_plans_ns(job: &Bound<'_, Job>, calls: u32) -> u128 {
    let job = &job.get().0;
    let start = Instant::now();
    for _ in 0..calls {
        let _ = black_box(&threadcalc_core::plan(black_box(job)));
    }
    start.elapsed().as_nanos()
}
