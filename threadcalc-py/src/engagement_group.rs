//! Groups of engagement of metric threads, and the classes recommended for them.

use pyo3::prelude::*;
use threadcalc_core::{self as core, EngagementGroup, Field};

use crate::answer::answer;
use crate::error::raise;
use crate::number::exact;
use crate::text::choose;
use crate::thread::Thread;

answer! {
    /// Lengths of normal engagement of one diameter and pitch, and the group of a length.
    EngagementLengths(core::EngagementLengths) {
        /// The group of the length that was asked for.
        group,
        /// Normal is longer than this.
        normal_over_mm,
        /// Normal is up to this.
        normal_to_mm,
        /// Standard, edition and table or rule.
        source,
        /// How sure the lengths are.
        confidence,
    }
}

/// Whether a length of engagement is short, normal or long for a metric thread.
#[pyfunction]
pub fn engagement_group(thread: &Bound<'_, Thread>, length_mm: &Bound<'_, PyAny>) -> PyResult<EngagementLengths> {
    let length = exact(length_mm, Field::EngagementLength)?;
    core::engagement_group(&thread.get().0, length).map(EngagementLengths).map_err(raise)
}

/// The class of tolerance of metric threads that is recommended for a group of engagement.
#[pyfunction]
pub fn recommended_class(
    side: &Bound<'_, PyAny>,
    group: &Bound<'_, PyAny>,
    quality: &Bound<'_, PyAny>,
) -> PyResult<Option<&'static str>> {
    let group: EngagementGroup = choose(group)?;
    Ok(group.recommended_class(choose(side)?, choose(quality)?))
}
