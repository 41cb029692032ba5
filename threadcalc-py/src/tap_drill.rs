//! The choice of a tap drill.

use pyo3::prelude::*;
use pyo3::types::PyString;
use threadcalc_core::{self as core, Code, DrillSet, DrillSets, Error, Field, TapDrillRequest};

use crate::drill::Drill;
use crate::error::raise;
use crate::finding::{Finding, list_findings};
use crate::limits::Limits;
use crate::number::{optional_double, optional_exact, optional_fraction, wrong_type};
use crate::text::{choose, optional_choice};
use crate::thread::Thread;

/// A drill beside the chosen one, judged like it.
#[pyclass(module = "threadcalc", frozen, eq)]
#[derive(Clone, Copy, PartialEq)]
pub struct Alternative(core::Alternative);

#[pymethods]
impl Alternative {
    /// The drill.
    #[getter]
    fn drill(&self) -> Drill {
        Drill(self.0.drill)
    }

    /// Percent of thread on the basis of the answer; None for a taper thread.
    #[getter]
    fn percent(&self) -> Option<f64> {
        optional_double(self.0.percent)
    }

    /// "yes", "no" or "does-not-apply".
    #[getter]
    fn within_limits(&self) -> &'static str {
        self.0.within_limits.name()
    }

    /// What is left to the largest minor diameter, in millimetres.
    #[getter]
    fn left_to_limit_mm<'py>(&self, py: Python<'py>) -> PyResult<Option<Bound<'py, PyAny>>> {
        optional_fraction(py, self.0.left_to_limit_mm)
    }

    fn __repr__(&self) -> String {
        format!("<Alternative {} within limits: {}>", self.0.drill.name(), self.0.within_limits)
    }
}

/// A chosen tap drill.
#[pyclass(module = "threadcalc", frozen)]
pub struct TapDrill(pub core::TapDrill);

#[pymethods]
impl TapDrill {
    /// The drill.
    #[getter]
    fn drill(&self) -> Drill {
        Drill(self.0.chosen.drill)
    }

    /// Percent of thread that it leaves; None for a taper thread.
    #[getter]
    fn percent(&self) -> Option<f64> {
        optional_double(self.0.chosen.percent)
    }

    /// The basis of every percent here; None for a form tap and for pipe threads.
    #[getter]
    fn basis(&self) -> Option<&'static str> {
        self.0.basis.map(core::Basis::name)
    }

    /// "yes", "no" or "does-not-apply".
    #[getter]
    fn within_limits(&self) -> &'static str {
        self.0.chosen.within_limits.name()
    }

    /// What is left to the largest minor diameter, in millimetres.
    #[getter]
    fn left_to_limit_mm<'py>(&self, py: Python<'py>) -> PyResult<Option<Bound<'py, PyAny>>> {
        optional_fraction(py, self.0.chosen.left_to_limit_mm)
    }

    /// The limits that the hole was judged by.
    #[getter]
    fn limits(&self) -> Option<Limits> {
        self.0.limits.map(Limits)
    }

    /// The next smaller and larger drills of the sets, smallest first.
    #[getter]
    fn alternatives(&self) -> Vec<Alternative> {
        self.0.alternatives.iter().flatten().copied().map(Alternative).collect()
    }

    /// What is doubtful.
    #[getter]
    fn findings(&self) -> Vec<Finding> {
        list_findings(&self.0.findings)
    }

    fn __repr__(&self) -> String {
        format!("<TapDrill {} within limits: {}>", self.0.chosen.drill.name(), self.0.chosen.within_limits)
    }
}

/// Set names: one text, names separated by blanks, or several texts.
fn sets_of(sets: &Bound<'_, PyAny>) -> PyResult<DrillSets> {
    let mut named = DrillSets::NONE;
    if let Ok(text) = sets.cast::<PyString>() {
        let text = text.to_str().unwrap_or("?");
        for name in text.split_ascii_whitespace() {
            let set = DrillSet::from_name(name.as_bytes());
            named =
                named.with(set.ok_or_else(|| {
                    raise(Error::new(Code::UnknownValue, Field::DrillSets).hint_text(DrillSet::CHOICES))
                })?);
        }
        return Ok(named);
    }
    let names = sets.try_iter().map_err(|_| wrong_type(sets, Field::DrillSets, "names of drill sets"))?;
    for name in names {
        named = named.with(choose(&name?)?);
    }
    Ok(named)
}

/// Chooses the drill of the sets for a tapped hole.
#[pyfunction]
#[pyo3(signature = (thread, *, tap, percent=None, basis=None, sets=None, taper_reamer=false))]
pub fn tap_drill(
    thread: &Bound<'_, Thread>,
    tap: &Bound<'_, PyAny>,
    percent: Option<&Bound<'_, PyAny>>,
    basis: Option<&Bound<'_, PyAny>>,
    sets: Option<&Bound<'_, PyAny>>,
    taper_reamer: bool,
) -> PyResult<TapDrill> {
    let thread = &thread.get().0;
    let request = TapDrillRequest {
        tap: choose(tap)?,
        percent: optional_exact(percent, Field::Percent)?,
        basis: optional_choice(basis)?,
        sets: sets.map_or_else(|| Ok(DrillSets::usual(thread.form())), sets_of)?,
        taper_reamer,
    };
    core::tap_drill(thread, &request).map(TapDrill).map_err(raise)
}
