//! Drills and percent of thread.

use pyo3::IntoPyObjectExt;
use pyo3::prelude::*;
use pyo3::types::{PyTuple, PyType};
use threadcalc_core::{self as core, DrillSets, Field};

use crate::error::raise;
use crate::number::{exact, fraction};
use crate::text::{bytes_of, choose, optional_choice};
use crate::thread::Thread;

/// A drill of one of the sets, or one of another diameter.
#[pyclass(module = "threadcalc", frozen, eq, hash)]
#[derive(Clone, Copy, PartialEq, Eq, Hash)]
pub struct Drill(pub core::Drill);

#[pymethods]
impl Drill {
    #[new]
    fn new(set: &Bound<'_, PyAny>, name: &Bound<'_, PyAny>) -> PyResult<Self> {
        let name = bytes_of(name, Field::Drill)?;
        core::Drill::named(choose(set)?, &name).map(Self).map_err(raise)
    }

    /// The drill of exactly this diameter in the sets, else one that is named by its diameter.
    #[classmethod]
    #[pyo3(signature = (diameter_mm, /))]
    fn of_diameter(_class: &Bound<'_, PyType>, diameter_mm: &Bound<'_, PyAny>) -> PyResult<Self> {
        Ok(Self(core::Drill::of_diameter(exact(diameter_mm, Field::Drill)?)))
    }

    /// The drill that a name or a diameter means.
    #[classmethod]
    #[pyo3(signature = (name, /))]
    fn read(_class: &Bound<'_, PyType>, name: &Bound<'_, PyAny>) -> PyResult<Self> {
        core::Drill::read(&bytes_of(name, Field::Drill)?).map(Self).map_err(raise)
    }

    /// The name in its set.
    #[getter]
    fn name(&self) -> String {
        self.0.name().as_str().to_owned()
    }

    /// The diameter in millimetres.
    #[getter]
    fn diameter_mm<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        fraction(py, self.0.diameter_mm())
    }

    /// The set; None for a diameter that stands in no set.
    #[getter]
    fn set(&self) -> Option<&'static str> {
        self.0.set().map(core::DrillSet::name)
    }

    fn __str__(&self) -> String {
        self.name()
    }

    fn __repr__(&self) -> String {
        match self.set() {
            Some(set) => format!("Drill('{set}', '{}')", self.name()),
            None => format!("Drill.of_diameter('{}')", self.0.diameter_mm()),
        }
    }

    /// The set and the name, or the diameter, for pickle and copy.
    fn __reduce__<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        let (py, drill) = (slf.py(), slf.get());
        let class = py.get_type::<Self>();
        match drill.set() {
            Some(set) => (class, (set, drill.name())).into_bound_py_any(py),
            None => (class.getattr("of_diameter")?, (drill.0.diameter_mm().to_string(),)).into_bound_py_any(py),
        }
    }
}

/// Every drill of the sets; of all sets if none is named.
#[pyfunction]
#[pyo3(signature = (*sets))]
pub fn drills(sets: &Bound<'_, PyTuple>) -> PyResult<Vec<Drill>> {
    let named = sets.iter().try_fold(DrillSets::NONE, |named, set| Ok::<_, PyErr>(named.with(choose(&set)?)))?;
    let sets = if sets.is_empty() { DrillSets::ALL } else { named };
    Ok(core::drills(sets).map(Drill).collect())
}

/// The hole for a percent of thread, in millimetres.
#[pyfunction]
#[pyo3(signature = (thread, percent, *, tap, basis=None))]
pub fn drill_diameter(
    thread: &Bound<'_, Thread>,
    percent: &Bound<'_, PyAny>,
    tap: &Bound<'_, PyAny>,
    basis: Option<&Bound<'_, PyAny>>,
) -> PyResult<f64> {
    let percent = exact(percent, Field::Percent)?;
    core::drill_diameter(&thread.get().0, percent, choose(tap)?, optional_choice(basis)?).map_err(raise)
}

/// The percent of thread that a hole leaves.
#[pyfunction]
#[pyo3(signature = (thread, drill_mm, *, tap, basis=None))]
pub fn percent_thread(
    thread: &Bound<'_, Thread>,
    drill_mm: &Bound<'_, PyAny>,
    tap: &Bound<'_, PyAny>,
    basis: Option<&Bound<'_, PyAny>>,
) -> PyResult<f64> {
    let drill = exact(drill_mm, Field::Drill)?;
    core::percent_thread(&thread.get().0, drill, choose(tap)?, optional_choice(basis)?).map_err(raise)
}
