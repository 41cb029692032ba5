//! The countersink of a tapped hole.

use pyo3::prelude::*;
use threadcalc_core::{self as core, Field};

use crate::answer::answer;
use crate::error::raise;
use crate::number::{exact, optional_exact};
use crate::thread::Thread;

answer! {
    /// A countersunk mouth.
    Countersunk(core::Countersunk) {
        /// To the tip of a pointed countersink.
        tip_mm,
        /// To where the cone has narrowed to the major diameter.
        depth_at_major_mm,
        /// To where the cone has narrowed to the hole: what it takes of the full thread.
        full_thread_lost_mm,
    }
}

answer! {
    /// The countersink that is usual for a thread.
    UsualCountersink(core::UsualCountersink) {
        /// Smallest diameter at the face.
        least_mm,
        /// Largest diameter at the face.
        most_mm,
        /// Included angle.
        angle_deg,
    }
}

/// The depth of a countersink, and the full thread that it takes away.
#[pyfunction]
#[pyo3(signature = (thread, countersink_mm, *, angle_deg, hole_mm=None))]
pub fn countersink(
    thread: &Bound<'_, Thread>,
    countersink_mm: &Bound<'_, PyAny>,
    angle_deg: &Bound<'_, PyAny>,
    hole_mm: Option<&Bound<'_, PyAny>>,
) -> PyResult<Countersunk> {
    let diameter = exact(countersink_mm, Field::Countersink)?;
    let (angle, hole) = (exact(angle_deg, Field::CountersinkAngle)?, optional_exact(hole_mm, Field::Drill)?);
    core::countersink(&thread.get().0, diameter, angle, hole).map(Countersunk).map_err(raise)
}

/// The usual countersink of an ISO metric tapped hole.
#[pyfunction]
pub fn usual_countersink(thread: &Bound<'_, Thread>) -> PyResult<UsualCountersink> {
    core::usual_countersink(&thread.get().0).map(UsualCountersink).map_err(raise)
}
