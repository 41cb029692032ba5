//! The bottom of a blind hole: whether the tap runs into it, and the run-out of the standard.

use pyo3::prelude::*;
use threadcalc_core::{self as core, Field};

use crate::answer::answer;
use crate::error::raise;
use crate::number::{exact, fraction, optional_exact};
use crate::text::choose;
use crate::thread::Thread;

answer! {
    /// The bottom of a hole as one point angle makes it.
    BottomReading(core::BottomReading) {
        /// The point angle.
        point_angle_deg,
        /// How deep the hole has its full diameter.
        full_diameter_mm,
        /// From the very end of the tap to there.
        room_mm,
        /// What that means.
        verdict,
    }
}

/// The readings of one hole.
#[pyclass(module = "threadcalc", frozen, eq)]
#[derive(Clone, Copy, PartialEq)]
pub struct Bottoming(core::Bottoming);

#[pymethods]
impl Bottoming {
    /// The readings, the sharpest point first.
    #[getter]
    fn readings(&self) -> Vec<BottomReading> {
        self.0.readings().map(BottomReading).collect()
    }

    /// The worst verdict of all readings.
    #[getter]
    fn worst(&self) -> &'static str {
        self.0.worst().name()
    }

    /// Whether the angle was given.
    #[getter]
    fn is_certain(&self) -> bool {
        self.0.is_certain()
    }

    fn __repr__(&self) -> String {
        let readings = self.0.readings().map(|reading| format!("{} {}", reading.point_angle_deg, reading.verdict));
        format!("<Bottoming {}>", readings.collect::<Vec<_>>().join(", "))
    }
}

/// The room below a tap in a blind hole whose depth is given to the drill's point.
#[pyfunction]
#[pyo3(signature = (thread, tap_end_mm, drill_point_mm, *, drill_mm, point_angle_deg=None))]
pub fn bottoming(
    thread: &Bound<'_, Thread>,
    tap_end_mm: &Bound<'_, PyAny>,
    drill_point_mm: &Bound<'_, PyAny>,
    drill_mm: &Bound<'_, PyAny>,
    point_angle_deg: Option<&Bound<'_, PyAny>>,
) -> PyResult<Bottoming> {
    let (tap_end, point) = (exact(tap_end_mm, Field::TapEnd)?, exact(drill_point_mm, Field::DrillPoint)?);
    let (drill, angle) = (exact(drill_mm, Field::Drill)?, optional_exact(point_angle_deg, Field::PointAngle)?);
    core::bottoming(&thread.get().0, tap_end, point, drill, angle).map(Bottoming).map_err(raise)
}

/// The run-out of a blind hole for an ISO metric thread.
#[pyfunction]
pub fn run_out_mm<'py>(thread: &Bound<'py, Thread>, run_out: &Bound<'py, PyAny>) -> PyResult<Bound<'py, PyAny>> {
    let found = core::run_out_mm(&thread.get().0, choose(run_out)?).map_err(raise)?;
    fraction(thread.py(), found)
}
