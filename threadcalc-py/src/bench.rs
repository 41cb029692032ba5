//! The floor under `feed`: a call of the same signature and answer that does nothing.

use std::sync::OnceLock;

use pyo3::prelude::*;
use threadcalc_core::{FeedMode, Length, Unit};

use crate::error::raise;
use crate::feed::Feed;

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
