//! `Pipe`: the dimensions of a pipe thread.

use pyo3::prelude::*;
use threadcalc_core as core;

use crate::number::optional_fraction;

/// Basic dimensions of a pipe thread in millimetres, exact; None where its standard has none.
#[pyclass(module = "threadcalc", frozen, eq)]
#[derive(Clone, Copy, PartialEq)]
pub struct Pipe(pub core::Pipe);

type Exact<'py> = PyResult<Option<Bound<'py, PyAny>>>;

#[pymethods]
impl Pipe {
    /// Outside diameter of the pipe, D.
    #[getter]
    fn pipe_diameter_mm<'py>(&self, py: Python<'py>) -> Exact<'py> {
        optional_fraction(py, self.0.pipe_diameter_mm)
    }

    /// Pitch diameter at the small end, E0.
    #[getter]
    fn pitch_diameter_small_end_mm<'py>(&self, py: Python<'py>) -> Exact<'py> {
        optional_fraction(py, self.0.pitch_diameter_small_end_mm)
    }

    /// Pitch diameter at the gauge plane, E1, D2 or d2.
    #[getter]
    fn pitch_diameter_gauge_plane_mm<'py>(&self, py: Python<'py>) -> Exact<'py> {
        optional_fraction(py, self.0.pitch_diameter_gauge_plane_mm)
    }

    /// Length of hand-tight engagement, L1.
    #[getter]
    fn hand_tight_length_mm<'py>(&self, py: Python<'py>) -> Exact<'py> {
        optional_fraction(py, self.0.hand_tight_length_mm)
    }

    /// Length of effective thread, L2.
    #[getter]
    fn effective_length_mm<'py>(&self, py: Python<'py>) -> Exact<'py> {
        optional_fraction(py, self.0.effective_length_mm)
    }

    /// Pitch diameter at the end of the effective thread, E2.
    #[getter]
    fn pitch_diameter_effective_mm<'py>(&self, py: Python<'py>) -> Exact<'py> {
        optional_fraction(py, self.0.pitch_diameter_effective_mm)
    }

    /// Minor diameter at the small end, K0.
    #[getter]
    fn minor_diameter_small_end_mm<'py>(&self, py: Python<'py>) -> Exact<'py> {
        optional_fraction(py, self.0.minor_diameter_small_end_mm)
    }

    /// Height of the thread, h.
    #[getter]
    fn thread_height_mm<'py>(&self, py: Python<'py>) -> Exact<'py> {
        optional_fraction(py, self.0.thread_height_mm)
    }

    /// Gauge length of ISO 7-1.
    #[getter]
    fn gauge_length_mm<'py>(&self, py: Python<'py>) -> Exact<'py> {
        optional_fraction(py, self.0.gauge_length_mm)
    }

    /// Useful thread of ISO 7-1 at the basic gauge length.
    #[getter]
    fn useful_length_mm<'py>(&self, py: Python<'py>) -> Exact<'py> {
        optional_fraction(py, self.0.useful_length_mm)
    }

    /// Turns that the gauge may stand off, either way.
    #[getter]
    fn gauge_tolerance_turns<'py>(&self, py: Python<'py>) -> Exact<'py> {
        optional_fraction(py, self.0.gauge_tolerance_turns)
    }

    /// Standard, edition and table or rule.
    #[getter]
    fn source(&self) -> &'static str {
        self.0.source
    }

    /// How sure the table's values are.
    #[getter]
    fn confidence(&self) -> &'static str {
        self.0.confidence.name()
    }

    fn __repr__(&self) -> String {
        let diameter = self.0.pitch_diameter_gauge_plane_mm;
        let shown = diameter.map_or_else(|| String::from("none"), |diameter| diameter.to_string());
        format!("<Pipe pitch diameter at the gauge plane {shown} mm, {}>", self.0.source)
    }
}
