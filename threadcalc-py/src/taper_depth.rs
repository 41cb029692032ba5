//! Depths of a taper pipe hole.

use pyo3::prelude::*;
use threadcalc_core::{self as core, Field, TaperDepthRequest};

use crate::error::raise;
use crate::number::{exact, fraction, optional_exact, optional_fraction};
use crate::thread::Thread;

/// Depths of a taper pipe hole from the face, in millimetres; turns from the face.
#[pyclass(module = "threadcalc", frozen, eq)]
#[derive(Clone, Copy, PartialEq)]
pub struct TaperDepths(pub core::TaperDepths);

#[pymethods]
impl TaperDepths {
    /// From the face to the plane that the tap's ring stands at.
    #[getter]
    fn hand_tight_mm<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        fraction(py, self.0.hand_tight_mm)
    }

    /// How far the tap projects through the ring.
    #[getter]
    fn projection_mm<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        fraction(py, self.0.projection_mm)
    }

    /// How much the table's projection may be off, either way; None for a measured tap.
    #[getter]
    fn projection_tolerance_mm<'py>(&self, py: Python<'py>) -> PyResult<Option<Bound<'py, PyAny>>> {
        optional_fraction(py, self.0.projection_tolerance_mm)
    }

    /// To the end of the tap for a thread of basic size.
    #[getter]
    fn tap_mm<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        fraction(py, self.0.tap_mm)
    }

    /// The same for the first hole: one turn shallow, then gauge.
    #[getter]
    fn first_hole_mm<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        fraction(py, self.0.first_hole_mm)
    }

    /// To the end of the drill's full diameter.
    #[getter]
    fn full_diameter_mm<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        fraction(py, self.0.full_diameter_mm)
    }

    /// To the drill's point.
    #[getter]
    fn drill_point_mm(&self) -> f64 {
        self.0.drill_point_mm
    }

    /// Turns of the tap in the hole for basic size.
    #[getter]
    fn tap_turns<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        fraction(py, self.0.tap_turns)
    }

    /// Turns of hand-tight engagement.
    #[getter]
    fn hand_tight_turns<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        fraction(py, self.0.hand_tight_turns)
    }

    /// Change of diameter for one turn deeper.
    #[getter]
    fn diameter_per_turn_mm<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        fraction(py, self.0.diameter_per_turn_mm)
    }

    /// Turns that the gauge may stand off, either way.
    #[getter]
    fn gauge_tolerance_turns<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        fraction(py, self.0.gauge_tolerance_turns)
    }

    fn __repr__(&self) -> String {
        format!("<TaperDepths tap {} full diameter {} mm>", self.0.tap_mm, self.0.full_diameter_mm)
    }
}

/// How deep to tap and to drill a taper pipe thread.
#[pyfunction]
#[pyo3(signature = (thread, *, drill_mm, point_angle_deg, bottom_clearance_mm, projection_mm=None))]
pub fn taper_depths(
    thread: &Bound<'_, Thread>,
    drill_mm: &Bound<'_, PyAny>,
    point_angle_deg: &Bound<'_, PyAny>,
    bottom_clearance_mm: &Bound<'_, PyAny>,
    projection_mm: Option<&Bound<'_, PyAny>>,
) -> PyResult<TaperDepths> {
    let request = TaperDepthRequest {
        projection_mm: optional_exact(projection_mm, Field::Projection)?,
        drill_mm: exact(drill_mm, Field::Drill)?,
        point_angle_deg: exact(point_angle_deg, Field::PointAngle)?,
        bottom_clearance_mm: exact(bottom_clearance_mm, Field::BottomClearance)?,
    };
    core::taper_depths(&thread.get().0, &request).map(TaperDepths).map_err(raise)
}
