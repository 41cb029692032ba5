//! The choice of a tap drill.

use std::borrow::Cow;

use pyo3::prelude::*;
use pyo3::types::{PyBytes, PyString};
use threadcalc_core::{self as core, Code, DrillSet, DrillSets, Error, Field, OwnDrills, Stock, TapDrillRequest};

use crate::drill::Drill;
use crate::error::raise;
use crate::finding::{Finding, list_findings};
use crate::limits::Limits;
use crate::number::{exact, fraction, optional_double, optional_exact, optional_fraction, wrong_type};
use crate::text::{bytes_of, choose, optional_choice};
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

    /// The hole that the drill probably leaves, in millimetres.
    #[getter]
    fn probable_hole_mm<'py>(&self, py: Python<'py>) -> PyResult<Option<Bound<'py, PyAny>>> {
        optional_fraction(py, self.0.probable.map(|probable| probable.hole_mm))
    }

    /// Percent of thread that the probable hole leaves.
    #[getter]
    fn probable_percent(&self) -> Option<f64> {
        self.0.probable.map(|probable| probable.percent)
    }

    /// What the probable hole leaves to the largest minor diameter, in millimetres.
    #[getter]
    fn probable_left_to_limit_mm<'py>(&self, py: Python<'py>) -> PyResult<Option<Bound<'py, PyAny>>> {
        optional_fraction(py, self.0.probable.and_then(|probable| probable.left_to_limit_mm))
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

/// A drill, its name, or its diameter in millimetres.
pub fn drill_of(drill: &Bound<'_, PyAny>) -> PyResult<core::Drill> {
    if let Ok(drill) = drill.cast::<Drill>() {
        return Ok(drill.get().0);
    }
    if drill.is_instance_of::<PyString>() || drill.is_instance_of::<PyBytes>() {
        return core::Drill::read(&bytes_of(drill, Field::Drill)?).map_err(raise);
    }
    Ok(core::Drill::of_diameter(exact(drill, Field::Drill)?))
}

/// The drills of a list.
fn own_drills(drills: &Bound<'_, PyAny>) -> PyResult<OwnDrills> {
    if drills.is_instance_of::<PyString>() || drills.is_instance_of::<PyBytes>() {
        return Err(wrong_type(drills, Field::DrillList, "a list of drills"));
    }
    let mut own = OwnDrills::new();
    for drill in drills.try_iter().map_err(|_| wrong_type(drills, Field::DrillList, "a list of drills"))? {
        let drill = drill?;
        let added = match name_of(&drill)? {
            Some(name) => own.read(&name),
            None => own.add(drill_of(&drill)?),
        };
        added.map_err(raise)?;
    }
    Ok(own)
}

/// The bytes of a drill that is given by its name.
fn name_of<'a>(drill: &'a Bound<'_, PyAny>) -> PyResult<Option<Cow<'a, [u8]>>> {
    if drill.is_instance_of::<PyString>() || drill.is_instance_of::<PyBytes>() {
        return bytes_of(drill, Field::DrillList).map(Some);
    }
    Ok(None)
}

/// Chooses the drill of the sets, or of a list, for a tapped hole.
#[pyfunction]
#[pyo3(signature = (
    thread, *, tap, percent=None, basis=None, sets=None, taper_reamer=false, drills=None, oversize_mm=None
))]
#[expect(clippy::too_many_arguments, reason = "keywords of Python")]
pub fn tap_drill(
    thread: &Bound<'_, Thread>,
    tap: &Bound<'_, PyAny>,
    percent: Option<&Bound<'_, PyAny>>,
    basis: Option<&Bound<'_, PyAny>>,
    sets: Option<&Bound<'_, PyAny>>,
    taper_reamer: bool,
    drills: Option<&Bound<'_, PyAny>>,
    oversize_mm: Option<&Bound<'_, PyAny>>,
) -> PyResult<TapDrill> {
    let thread = &thread.get().0;
    let own = drills.map(own_drills).transpose()?;
    let stock = match (sets, &own) {
        (Some(_), Some(_)) => {
            let both = Error::new(Code::Contradiction, Field::DrillSets);
            return Err(raise(both.hint_text("either sets or a list")));
        }
        (None, Some(own)) => Stock::from(own),
        (sets, None) => Stock::from(sets.map_or_else(|| Ok(DrillSets::usual(thread.form())), sets_of)?),
    };
    let oversize = optional_exact(oversize_mm, Field::Oversize)?;
    let request = TapDrillRequest {
        tap: choose(tap)?,
        percent: optional_exact(percent, Field::Percent)?,
        basis: optional_choice(basis)?,
        sets: oversize.map_or(stock, |oversize| stock.with_oversize_mm(oversize)),
        taper_reamer,
    };
    core::tap_drill(thread, &request).map(TapDrill).map_err(raise)
}

/// Judges a drill that the shop has for a tapped hole.
#[pyfunction]
#[pyo3(signature = (thread, drill, *, tap, basis=None, oversize_mm=None))]
pub fn judge_drill(
    thread: &Bound<'_, Thread>,
    drill: &Bound<'_, PyAny>,
    tap: &Bound<'_, PyAny>,
    basis: Option<&Bound<'_, PyAny>>,
    oversize_mm: Option<&Bound<'_, PyAny>>,
) -> PyResult<TapDrill> {
    let oversize = optional_exact(oversize_mm, Field::Oversize)?;
    core::judge_drill(&thread.get().0, drill_of(drill)?, choose(tap)?, optional_choice(basis)?, oversize)
        .map(TapDrill)
        .map_err(raise)
}

/// The hole that a drill probably leaves, in millimetres.
#[pyfunction]
#[pyo3(signature = (drill, oversize_mm=None))]
pub fn probable_hole_mm<'py>(
    drill: &Bound<'py, PyAny>,
    oversize_mm: Option<&Bound<'py, PyAny>>,
) -> PyResult<Bound<'py, PyAny>> {
    let oversize = optional_exact(oversize_mm, Field::Oversize)?;
    fraction(drill.py(), core::probable_hole_mm(&drill_of(drill)?, oversize).map_err(raise)?)
}

/// The usual window of the hole for a form tap, in millimetres.
#[pyfunction]
pub fn form_hole_mm<'py>(thread: &Bound<'py, Thread>) -> PyResult<(Bound<'py, PyAny>, Bound<'py, PyAny>)> {
    let (least, most) = core::form_hole_mm(&thread.get().0).map_err(raise)?;
    Ok((fraction(thread.py(), least)?, fraction(thread.py(), most)?))
}
