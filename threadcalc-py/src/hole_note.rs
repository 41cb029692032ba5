//! `HoleNote`: the whole hole note of a drawing.

use pyo3::prelude::*;
use threadcalc_core::{self as core, Field, Plating, Sides};

use crate::error::raise_designation;
use crate::finding::{Finding, list_findings};
use crate::number::optional_fraction;
use crate::text::{bytes_of, optional_choice};
use crate::thread::Thread;

/// A hole note as read; lengths exact and in millimetres, None where the note says none.
#[pyclass(module = "threadcalc", frozen, eq)]
#[derive(Clone, Copy, PartialEq)]
pub struct HoleNote(core::HoleNote);

type Exact<'py> = PyResult<Option<Bound<'py, PyAny>>>;

#[pymethods]
impl HoleNote {
    /// How many holes.
    #[getter]
    fn count(&self) -> Option<u32> {
        self.0.count()
    }

    /// The thread.
    #[getter]
    fn thread(&self) -> Option<Thread> {
        self.0.thread().map(Thread)
    }

    /// Where the thread's callout begins in the note, in bytes.
    #[getter]
    fn thread_at(&self) -> Option<usize> {
        self.0.thread().map(|_| self.0.thread_at())
    }

    /// How many bytes of the note the thread's callout is.
    #[getter]
    fn thread_length(&self) -> Option<usize> {
        self.0.thread().map(|_| self.0.thread_length())
    }

    /// Depth of full thread.
    #[getter]
    fn thread_depth_mm<'py>(&self, py: Python<'py>) -> Exact<'py> {
        optional_fraction(py, self.0.thread_depth_mm())
    }

    /// True if the thread goes through.
    #[getter]
    fn thread_through(&self) -> bool {
        self.0.thread_through()
    }

    /// Diameter of the drilled hole.
    #[getter]
    fn drill_mm<'py>(&self, py: Python<'py>) -> Exact<'py> {
        optional_fraction(py, self.0.drill_mm())
    }

    /// Depth of the drilled hole.
    #[getter]
    fn drill_depth_mm<'py>(&self, py: Python<'py>) -> Exact<'py> {
        optional_fraction(py, self.0.drill_depth_mm())
    }

    /// True if the drilled hole goes through.
    #[getter]
    fn drill_through(&self) -> bool {
        self.0.drill_through()
    }

    /// True if the hole is countersunk, with sizes or without.
    #[getter]
    fn has_countersink(&self) -> bool {
        self.0.has_countersink()
    }

    /// Diameter of the countersink.
    #[getter]
    fn countersink_mm<'py>(&self, py: Python<'py>) -> Exact<'py> {
        optional_fraction(py, self.0.countersink_mm())
    }

    /// Included angle of the countersink in degrees.
    #[getter]
    fn countersink_angle_deg<'py>(&self, py: Python<'py>) -> Exact<'py> {
        optional_fraction(py, self.0.countersink_angle_deg())
    }

    /// True if the hole is counterbored or spotfaced, with sizes or without.
    #[getter]
    fn has_counterbore(&self) -> bool {
        self.0.has_counterbore()
    }

    /// Diameter of the counterbore or spotface.
    #[getter]
    fn counterbore_mm<'py>(&self, py: Python<'py>) -> Exact<'py> {
        optional_fraction(py, self.0.counterbore_mm())
    }

    /// Depth of the counterbore or spotface.
    #[getter]
    fn counterbore_depth_mm<'py>(&self, py: Python<'py>) -> Exact<'py> {
        optional_fraction(py, self.0.counterbore_depth_mm())
    }

    /// True if the counterbore is a spotface.
    #[getter]
    fn is_spotface(&self) -> bool {
        self.0.is_spotface()
    }

    /// "near", "far", "both" or None.
    #[getter]
    fn sides(&self) -> Option<&'static str> {
        self.0.sides().map(Sides::name)
    }

    /// "after", "before" or None.
    #[getter]
    fn plating(&self) -> Option<&'static str> {
        self.0.plating().map(Plating::name)
    }

    /// True if the holes are equally spaced.
    #[getter]
    fn equally_spaced(&self) -> bool {
        self.0.equally_spaced()
    }

    /// Diameter of the circle that the holes lie on.
    #[getter]
    fn bolt_circle_mm<'py>(&self, py: Python<'py>) -> Exact<'py> {
        optional_fraction(py, self.0.bolt_circle_mm())
    }

    /// What was assumed, what is doubtful, and what was not understood.
    #[getter]
    fn findings(&self) -> Vec<Finding> {
        list_findings(self.0.findings())
    }

    fn __repr__(&self) -> String {
        let count = self.0.count().map_or_else(String::new, |count| format!(" {count}x"));
        let thread = self.0.thread().map_or_else(String::new, |thread| format!(" {thread}"));
        format!("<HoleNote{count}{thread}>")
    }
}

/// Reads the whole hole note of a drawing.
#[pyfunction]
#[pyo3(signature = (text, /, *, unit=None))]
pub fn read_hole_note(text: &Bound<'_, PyAny>, unit: Option<&Bound<'_, PyAny>>) -> PyResult<HoleNote> {
    let unit = optional_choice(unit)?;
    core::read_hole_note(&bytes_of(text, Field::Note)?, unit).map(HoleNote).map_err(raise_designation)
}
