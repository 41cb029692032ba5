//! Depths of a tapped hole.

use pyo3::prelude::*;
use threadcalc_core::{self as core, DepthRequest, Field, Hole, Length, TapSetOn};

use crate::error::raise;
use crate::number::{exact, fraction, optional_exact};
use crate::text::optional_choice;
use crate::thread::Thread;

/// Depths from the face, in millimetres.
#[pyclass(module = "threadcalc", frozen, eq)]
#[derive(Clone, Copy, PartialEq)]
pub struct Depths(pub core::Depths);

#[pymethods]
impl Depths {
    /// To the very end of the tap, its centre included.
    #[getter]
    fn tap_mm<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        fraction(py, self.0.tap_mm)
    }

    /// To the point that the tap's length offset is set on.
    #[getter]
    fn program_tap_mm<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        fraction(py, self.0.program_tap_mm)
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

    fn __repr__(&self) -> String {
        format!("<Depths tap {} full diameter {} mm>", self.0.tap_mm, self.0.full_diameter_mm)
    }
}

/// How deep to tap and to drill.
#[pyfunction]
#[pyo3(
    signature = (thread, full_thread_mm, *, chamfer_threads, drill_mm, point_angle_deg, bottom_clearance_mm,
        tap_centre_mm=None, tap_set_on=None, through=false),
    text_signature = "(thread, full_thread_mm, *, chamfer_threads, drill_mm, point_angle_deg, bottom_clearance_mm, tap_centre_mm=0, tap_set_on='front', through=False)"
)]
#[expect(clippy::too_many_arguments, reason = "keywords in Python, so that none is mistaken for another")]
pub fn depths(
    thread: &Bound<'_, Thread>,
    full_thread_mm: &Bound<'_, PyAny>,
    chamfer_threads: &Bound<'_, PyAny>,
    drill_mm: &Bound<'_, PyAny>,
    point_angle_deg: &Bound<'_, PyAny>,
    bottom_clearance_mm: &Bound<'_, PyAny>,
    tap_centre_mm: Option<&Bound<'_, PyAny>>,
    tap_set_on: Option<&Bound<'_, PyAny>>,
    through: bool,
) -> PyResult<Depths> {
    let request = DepthRequest {
        full_thread_mm: exact(full_thread_mm, Field::FullThreadDepth)?,
        chamfer_threads: exact(chamfer_threads, Field::ChamferThreads)?,
        drill_mm: exact(drill_mm, Field::Drill)?,
        point_angle_deg: exact(point_angle_deg, Field::PointAngle)?,
        bottom_clearance_mm: exact(bottom_clearance_mm, Field::BottomClearance)?,
        tap_centre_mm: optional_exact(tap_centre_mm, Field::TapCentre)?.unwrap_or(Length::ZERO),
        tap_set_on: optional_choice(tap_set_on)?.unwrap_or(TapSetOn::Front),
        hole: if through { Hole::Through } else { Hole::Blind },
    };
    core::depths(&thread.get().0, &request).map(Depths).map_err(raise)
}
