//! `Profile` and `Limits` of a thread.

use pyo3::prelude::*;
use threadcalc_core as core;

use crate::answer::answer;
use crate::number::{optional_double, optional_fraction};

/// The basic profile, unrounded, in millimetres.
#[pyclass(module = "threadcalc", frozen, eq)]
#[derive(Clone, Copy, PartialEq)]
pub struct Profile(pub core::Profile);

#[pymethods]
impl Profile {
    /// Height of the fundamental triangle, H.
    #[getter]
    fn triangle_height_mm(&self) -> f64 {
        self.0.triangle_height_mm
    }

    /// Basic major diameter.
    #[getter]
    fn major_mm(&self) -> Option<f64> {
        optional_double(self.0.major_mm)
    }

    /// Basic pitch diameter.
    #[getter]
    fn pitch_diameter_mm(&self) -> Option<f64> {
        optional_double(self.0.pitch_diameter_mm)
    }

    /// Basic minor diameter of the internal thread.
    #[getter]
    fn minor_mm(&self) -> Option<f64> {
        optional_double(self.0.minor_mm)
    }

    /// Minor diameter of the external thread at its rounded root.
    #[getter]
    fn external_minor_mm(&self) -> Option<f64> {
        optional_double(self.0.external_minor_mm)
    }

    /// Tensile stress area of the external thread.
    #[getter]
    fn stress_area_mm2(&self) -> Option<f64> {
        optional_double(self.0.stress_area_mm2)
    }

    /// Angles of the two flanks against the normal to the axis, in degrees.
    #[getter]
    fn flank_angles_deg(&self) -> (f64, f64) {
        let [leading, following] = self.0.flank_angles_deg;
        (leading, following)
    }

    fn __repr__(&self) -> String {
        let shown = |value| optional_double(value).map_or_else(|| String::from("none"), |value| value.to_string());
        let (major, pitch, minor) = (self.0.major_mm, self.0.pitch_diameter_mm, self.0.minor_mm);
        format!("<Profile major {} pitch diameter {} minor {} mm>", shown(major), shown(pitch), shown(minor))
    }
}

answer! {
    /// How much a coating changes the diameters of a thread, in millimetres.
    CoatingGrowth(core::CoatingGrowth) {
        /// Major and minor diameter.
        crest_mm,
        /// Pitch diameter.
        pitch_diameter_mm,
    }
}

/// Limits of size, exact decimals of the standard, in millimetres.
#[pyclass(module = "threadcalc", frozen, eq)]
#[derive(Clone, Copy, PartialEq)]
pub struct Limits(pub core::Limits);

type Pair<'py> = (Option<Bound<'py, PyAny>>, Option<Bound<'py, PyAny>>);

fn pair<'py>(py: Python<'py>, range: core::Range) -> PyResult<Pair<'py>> {
    Ok((optional_fraction(py, range.0)?, optional_fraction(py, range.1)?))
}

#[pymethods]
impl Limits {
    /// Major diameter, smallest and largest.
    #[getter]
    fn major_mm<'py>(&self, py: Python<'py>) -> PyResult<Pair<'py>> {
        pair(py, self.0.major_mm)
    }

    /// Pitch diameter, smallest and largest.
    #[getter]
    fn pitch_diameter_mm<'py>(&self, py: Python<'py>) -> PyResult<Pair<'py>> {
        pair(py, self.0.pitch_diameter_mm)
    }

    /// Minor diameter, smallest and largest.
    #[getter]
    fn minor_mm<'py>(&self, py: Python<'py>) -> PyResult<Pair<'py>> {
        pair(py, self.0.minor_mm)
    }

    /// The unit in which the standard gives its decimals.
    #[getter]
    fn native_unit(&self) -> &'static str {
        self.0.native_unit.name()
    }

    /// How many decimals the standard gives, in that unit.
    #[getter]
    fn decimals(&self) -> u8 {
        self.0.decimals
    }

    /// Standard, edition and table or rule.
    #[getter]
    fn source(&self) -> &'static str {
        self.0.source
    }

    /// How sure the limits are.
    #[getter]
    fn confidence(&self) -> &'static str {
        self.0.confidence.name()
    }

    fn __repr__(&self) -> String {
        let shown = |end: Option<core::Length>| end.map_or_else(|| String::from("open"), |end| end.to_string());
        let (low, high) = self.0.minor_mm;
        format!("<Limits minor {} to {} mm, {}>", shown(low), shown(high), self.0.source)
    }
}
