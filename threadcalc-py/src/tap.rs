//! Kinds and chamfers of taps, and the class of tap for a thread.

use pyo3::IntoPyObjectExt;
use pyo3::prelude::*;
use threadcalc_core::{self as core, Field, IsoTapClass, Length};

use crate::answer::answer;
use crate::error::raise;
use crate::number::{exact, fraction, optional_exact};
use crate::text::choose;
use crate::thread::Thread;

/// A kind of tap.
#[pyclass(module = "threadcalc", frozen, eq, hash)]
#[derive(Clone, Copy, PartialEq, Eq, Hash)]
pub struct TapKind(core::TapKind);

#[pymethods]
impl TapKind {
    #[new]
    #[pyo3(signature = (name, /))]
    fn new(name: &Bound<'_, PyAny>) -> PyResult<Self> {
        choose(name).map(Self)
    }

    /// The name.
    #[getter]
    fn name(&self) -> &'static str {
        self.0.name()
    }

    /// Whether it cuts or forms.
    #[getter]
    fn tap(&self) -> &'static str {
        self.0.tap().name()
    }

    /// The factor for the torque by chip area; None for a form tap.
    #[getter]
    fn torque_factor(&self) -> Option<f64> {
        self.0.torque_factor()
    }

    /// How the kind suits a through or a blind hole, and why.
    #[pyo3(signature = (hole, /))]
    fn advice(&self, hole: &Bound<'_, PyAny>) -> PyResult<TapAdvice> {
        Ok(TapAdvice(self.0.advice(choose(hole)?)))
    }

    fn __repr__(&self) -> String {
        format!("TapKind('{}')", self.0)
    }

    /// The name, for pickle and copy.
    fn __reduce__<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        (slf.py().get_type::<Self>(), (slf.get().name(),)).into_bound_py_any(slf.py())
    }
}

answer! {
    /// A kind of tap in a kind of hole.
    TapAdvice(core::TapAdvice) {
        /// How well it suits.
        suits,
        /// Why.
        reason,
    }
}

/// The chamfer of a tap.
#[pyclass(module = "threadcalc", frozen, eq, hash)]
#[derive(Clone, Copy, PartialEq, Eq, Hash)]
pub struct ChamferForm(pub core::ChamferForm);

#[pymethods]
impl ChamferForm {
    #[new]
    #[pyo3(signature = (name, /))]
    fn new(name: &Bound<'_, PyAny>) -> PyResult<Self> {
        choose(name).map(Self)
    }

    /// The letter or the name.
    #[getter]
    fn name(&self) -> &'static str {
        self.0.name()
    }

    /// The shortest chamfer of the form.
    #[getter]
    fn shortest_threads<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        fraction(py, self.0.threads().0)
    }

    /// The longest chamfer of the form.
    #[getter]
    fn longest_threads<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        fraction(py, self.0.threads().1)
    }

    /// The kind of hole that the form is made for; None for both.
    #[getter]
    fn usual_hole(&self) -> Option<&'static str> {
        self.0.usual_hole().map(core::Hole::name)
    }

    /// Whether the longest chamfer of the form has room.
    fn fits(&self, hole: &Bound<'_, PyAny>, room_threads: &Bound<'_, PyAny>) -> PyResult<bool> {
        Ok(self.0.fits(choose(hole)?, exact(room_threads, Field::RoomThreads)?))
    }

    fn __repr__(&self) -> String {
        format!("ChamferForm('{}')", self.0)
    }

    /// The name, for pickle and copy.
    fn __reduce__<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        (slf.py().get_type::<Self>(), (slf.get().name(),)).into_bound_py_any(slf.py())
    }
}

/// The forms of chamfer that fit a hole.
#[pyfunction]
pub fn chamfers_that_fit(hole: &Bound<'_, PyAny>, room_threads: &Bound<'_, PyAny>) -> PyResult<Vec<ChamferForm>> {
    let room = exact(room_threads, Field::RoomThreads)?;
    Ok(core::chamfers_that_fit(choose(hole)?, room).map(ChamferForm).collect())
}

/// The tap class for a thread, plated or not.
#[pyclass(module = "threadcalc", frozen, eq)]
#[derive(Clone, Copy, PartialEq)]
pub struct IsoTap(pub core::IsoTap);

#[pymethods]
impl IsoTap {
    /// The class; None if the standard has none.
    #[getter]
    fn tap_class(&self) -> Option<&'static str> {
        self.0.class.map(IsoTapClass::name)
    }

    /// How much the plating closes the pitch diameter.
    #[getter]
    fn closing_mm<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        fraction(py, self.0.closing_mm)
    }

    fn __repr__(&self) -> String {
        format!("<IsoTap class {} closing {} mm>", self.tap_class().unwrap_or("none"), self.0.closing_mm)
    }
}

/// The thickness of a plating; 0 if none is given.
pub fn plating_of(plating_um: Option<&Bound<'_, PyAny>>) -> PyResult<Length> {
    Ok(optional_exact(plating_um, Field::PlatingThickness)?.unwrap_or(Length::ZERO))
}

/// The class of tap for the tolerance class of a thread and the plating of the hole.
#[pyfunction]
#[pyo3(signature = (thread, *, plating_um=None), text_signature = "(thread, *, plating_um=0)")]
pub fn iso_tap_class(thread: &Bound<'_, Thread>, plating_um: Option<&Bound<'_, PyAny>>) -> PyResult<IsoTap> {
    core::iso_tap_class(&thread.get().0, plating_of(plating_um)?).map(IsoTap).map_err(raise)
}

/// The smallest and the largest pitch diameter of a tap of a class.
#[pyfunction]
pub fn iso_tap_pitch_diameter_mm<'py>(
    thread: &Bound<'py, Thread>,
    tap_class: &Bound<'py, PyAny>,
) -> PyResult<(Bound<'py, PyAny>, Bound<'py, PyAny>)> {
    let class: IsoTapClass = choose(tap_class)?;
    let (smallest, largest) = class.pitch_diameter_mm(&thread.get().0).map_err(raise)?;
    Ok((fraction(thread.py(), smallest)?, fraction(thread.py(), largest)?))
}
