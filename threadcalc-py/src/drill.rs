//! Drills and percent of thread.

use pyo3::prelude::*;
use pyo3::types::PyTuple;
use threadcalc_core::{self as core, DrillSets, Field};

use crate::error::raise;
use crate::number::{exact, fraction};
use crate::text::{choose, optional_choice};
use crate::thread::Thread;

/// A drill of one of the sets, or one of another diameter.
#[pyclass(module = "threadcalc", frozen, eq, hash)]
#[derive(Clone, Copy, PartialEq, Eq, Hash)]
pub struct Drill(pub core::Drill);

#[pymethods]
impl Drill {
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
        format!("<Drill {} = {} mm>", self.0.name(), self.0.diameter_mm())
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
