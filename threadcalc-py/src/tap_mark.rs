//! Limits of taps, what stands on their shanks, and whether a tap is the one for the job.

use pyo3::IntoPyObjectExt;
use pyo3::prelude::*;
use threadcalc_core::{self as core, Error, Field, TapJob};

use crate::error::{raise, raise_designation};
use crate::finding::{Finding, list_findings};
use crate::number::{fraction, optional_exact, optional_fraction, whole};
use crate::tap::{ChamferForm, plating_of};
use crate::text::{bytes_of, choose, optional_choice};
use crate::thread::Thread;

/// The limit of a ground tap.
#[pyclass(module = "threadcalc", frozen, eq, hash)]
#[derive(Clone, Copy, PartialEq, Eq, Hash)]
pub struct TapLimit(pub core::TapLimit);

type Pair<'py> = (Option<Bound<'py, PyAny>>, Bound<'py, PyAny>);

fn pair<'py>(py: Python<'py>, made: Result<(Option<core::Length>, core::Length), Error>) -> PyResult<Pair<'py>> {
    let (smallest, largest) = made.map_err(raise)?;
    Ok((optional_fraction(py, smallest)?, fraction(py, largest)?))
}

#[pymethods]
impl TapLimit {
    #[new]
    #[pyo3(signature = (letter, number, /))]
    fn new(letter: &Bound<'_, PyAny>, number: &Bound<'_, PyAny>) -> PyResult<Self> {
        let (letter, given) = (choose(letter)?, whole(number, Field::TapLimit)?);
        // What is no u8 is out of range as well: the core says which range.
        let number = u8::try_from(given).unwrap_or(u8::MAX);
        core::TapLimit::new(letter, number).map(Self).map_err(|error| raise(error.got(given as f64)))
    }

    /// The letter.
    #[getter]
    fn letter(&self) -> &'static str {
        self.0.letter().name()
    }

    /// The number.
    #[getter]
    fn number(&self) -> u8 {
        self.0.number()
    }

    /// How far the pitch diameter of the tap may lie above the basic one, smallest and largest.
    #[pyo3(signature = (thread, /))]
    fn above_basic_mm<'py>(&self, thread: &Bound<'py, Thread>) -> PyResult<Pair<'py>> {
        pair(thread.py(), self.0.above_basic_mm(&thread.get().0))
    }

    /// The smallest and the largest pitch diameter of the tap.
    #[pyo3(signature = (thread, /))]
    fn pitch_diameter_mm<'py>(&self, thread: &Bound<'py, Thread>) -> PyResult<Pair<'py>> {
        pair(thread.py(), self.0.pitch_diameter_mm(&thread.get().0))
    }

    fn __str__(&self) -> String {
        self.0.to_string()
    }

    fn __repr__(&self) -> String {
        format!("TapLimit('{}', {})", self.letter(), self.number())
    }

    /// Letter and number, for pickle and copy.
    fn __reduce__<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        let limit = slf.get();
        (slf.py().get_type::<Self>(), (limit.letter(), limit.number())).into_bound_py_any(slf.py())
    }
}

/// The smallest H limit whose taps leave room for a plating.
#[pyfunction]
pub fn h_limit_for_plating(thread: &Bound<'_, Thread>, plating_um: &Bound<'_, PyAny>) -> PyResult<TapLimit> {
    core::h_limit_for_plating(&thread.get().0, plating_of(Some(plating_um))?).map(TapLimit).map_err(raise)
}

/// The limit that tap makers recommend for a class of thread.
#[pyfunction]
#[pyo3(signature = (thread, /))]
pub fn usual_tap_limit(thread: &Bound<'_, Thread>) -> PyResult<TapLimit> {
    core::usual_tap_limit(&thread.get().0).map(TapLimit).map_err(raise)
}

/// The limit that tap makers recommend for a class of thread, raised for a plating.
#[pyfunction]
pub fn usual_tap_limit_for_plating(thread: &Bound<'_, Thread>, plating_um: &Bound<'_, PyAny>) -> PyResult<TapLimit> {
    core::usual_tap_limit_for_plating(&thread.get().0, plating_of(Some(plating_um))?).map(TapLimit).map_err(raise)
}

/// What the shank of a tap says; what it does not say is None or False.
#[pyclass(module = "threadcalc", frozen, eq)]
#[derive(Clone, Copy, PartialEq)]
pub struct ShankMark(core::ShankMark);

#[pymethods]
impl ShankMark {
    /// The thread, without class.
    #[getter]
    fn thread(&self) -> Option<Thread> {
        self.0.thread.map(Thread)
    }

    /// Left only if the shank says so.
    #[getter]
    fn hand(&self) -> &'static str {
        self.0.hand.name()
    }

    /// The class of thread that the tap is meant to cut.
    #[getter]
    fn tolerance_class(&self) -> Option<String> {
        self.0.tolerance_class.map(|class| class.as_str().to_owned())
    }

    /// Whether the maker's own limits apply.
    #[getter]
    fn own_limits(&self) -> bool {
        self.0.own_limits
    }

    /// Whether the thread of the tap is ground.
    #[getter]
    fn ground(&self) -> bool {
        self.0.ground
    }

    /// H, L or D limit.
    #[getter]
    fn limit(&self) -> Option<TapLimit> {
        self.0.limit.map(TapLimit)
    }

    /// Class of ISO 2857.
    #[getter]
    fn iso_class(&self) -> Option<&'static str> {
        self.0.iso_class.map(core::IsoTapClass::name)
    }

    /// Form of the chamfer.
    #[getter]
    fn chamfer(&self) -> Option<ChamferForm> {
        self.0.chamfer.map(ChamferForm)
    }

    /// Whether the tap is for a wire insert.
    #[getter]
    fn wire_insert(&self) -> bool {
        self.0.wire_insert
    }

    /// The first word that was not understood, by byte and length.
    #[getter]
    fn not_read(&self) -> Option<(usize, usize)> {
        self.0.not_read
    }

    fn __repr__(&self) -> String {
        let thread = self.0.thread.map_or_else(|| String::from("no thread"), |thread| thread.to_string());
        format!("<ShankMark {thread}>")
    }
}

/// Reads what stands on the shank of a tap.
#[pyfunction]
#[pyo3(signature = (text, /))]
pub fn read_shank_mark(text: &Bound<'_, PyAny>) -> PyResult<ShankMark> {
    core::read_shank_mark(&bytes_of(text, Field::TapMark)?).map(ShankMark).map_err(raise_designation)
}

/// Compares what stands on a shank with the job.
#[pyfunction]
#[pyo3(
    signature = (mark, thread, *, plating_um=None, hole=None, room_threads=None, wire_insert=false),
    text_signature = "(mark, thread, *, plating_um=0, hole=None, room_threads=None, wire_insert=False)"
)]
pub fn judge_tap(
    mark: &Bound<'_, ShankMark>,
    thread: &Bound<'_, Thread>,
    plating_um: Option<&Bound<'_, PyAny>>,
    hole: Option<&Bound<'_, PyAny>>,
    room_threads: Option<&Bound<'_, PyAny>>,
    wire_insert: bool,
) -> PyResult<Vec<Finding>> {
    let job = TapJob {
        thread: thread.get().0,
        plating_um: plating_of(plating_um)?,
        hole: optional_choice(hole)?,
        room_threads: optional_exact(room_threads, Field::RoomThreads)?,
        wire_insert,
    };
    core::judge_tap(&mark.get().0, &job).map(|findings| list_findings(&findings)).map_err(raise)
}
