//! `compare`: which tapped holes of a program are not what they were.

use pyo3::prelude::*;
use pyo3::types::{PyDict, PyIterator};
use threadcalc_core::Error;
use threadcalc_core::nc::{self, ComparisonReport, scratch_for};

use crate::check::{Report, run, text_of, told_of};
use crate::cycle::dialect_of;
use crate::error::raise;
use crate::job::{json_of, parsed};
use crate::program_finding::TappedHole;

/// A hole that is not what it was.
#[pyclass(module = "threadcalc", frozen, eq)]
#[derive(Clone, Copy, PartialEq)]
pub struct HoleChange(nc::HoleChange);

#[pymethods]
impl HoleChange {
    /// "changed", "added" or "removed".
    #[getter]
    fn kind(&self) -> &'static str {
        self.0.kind().name()
    }

    /// The hole in the old version; None if it is new.
    #[getter]
    fn before(&self) -> Option<TappedHole> {
        self.0.before.map(TappedHole)
    }

    /// The hole in the new version; None if it is gone.
    #[getter]
    fn after(&self) -> Option<TappedHole> {
        self.0.after.map(TappedHole)
    }

    /// What has changed; empty for a hole that is new or gone.
    #[getter]
    fn changed(&self) -> Vec<&'static str> {
        self.0.changed.iter().map(nc::HoleValue::name).collect()
    }

    /// What was not known on either side.
    #[getter]
    fn not_compared(&self) -> Vec<&'static str> {
        self.0.not_compared.iter().map(nc::HoleValue::name).collect()
    }

    fn __str__(&self) -> String {
        self.0.to_string()
    }

    fn __repr__(&self) -> String {
        format!("<HoleChange {}>", self.0)
    }
}

/// What has become of the tapped holes.
#[pyclass(module = "threadcalc", frozen)]
pub struct Comparison {
    old: Report,
    new: Report,
    changes: Vec<nc::HoleChange>,
    not_compared: Vec<nc::NotCompared>,
    counts: nc::HoleCounts,
}

impl Comparison {
    fn of(old: Report, new: Report) -> Result<Self, Error> {
        let (changes, not_compared, counts) = report(&old, &new, |report| {
            let comparison = &report.comparison;
            (comparison.changes().collect(), comparison.not_compared().collect(), comparison.counts())
        })?;
        Ok(Self { old, new, changes, not_compared, counts })
    }

    fn list(&self) -> Vec<HoleChange> {
        self.changes.iter().copied().map(HoleChange).collect()
    }
}

/// Pairs the holes of two checks anew, and looks at the whole.
fn report<T>(old: &Report, new: &Report, look: impl FnOnce(&ComparisonReport<'_>) -> T) -> Result<T, Error> {
    let mut scratch = vec![0; scratch_for(old.holes.len(), new.holes.len())];
    let comparison = nc::compare(&old.holes, &new.holes, &mut scratch)?;
    let (before_not_checked, after_not_checked) = (&old.not_checked[..], &new.not_checked[..]);
    Ok(look(&ComparisonReport { comparison, before_not_checked, after_not_checked }))
}

#[pymethods]
impl Comparison {
    /// What has changed: the holes of the new version in their order, then those that it no longer has.
    #[getter]
    fn changes(&self) -> Vec<HoleChange> {
        self.list()
    }

    /// At how many holes a value was known on neither side, by its name.
    #[getter]
    fn not_compared<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyDict>> {
        let counts = PyDict::new(py);
        self.not_compared.iter().try_for_each(|open| counts.set_item(open.value.name(), open.count))?;
        Ok(counts)
    }

    /// How many tapping blocks there are "before" and "after", and how many are "changed", "added" and "removed".
    #[getter]
    fn counts<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyDict>> {
        let counts = PyDict::new(py);
        for (name, count) in [
            ("before", self.counts.before),
            ("after", self.counts.after),
            ("changed", self.counts.changed),
            ("added", self.counts.added),
            ("removed", self.counts.removed),
        ] {
            counts.set_item(name, count)?;
        }
        Ok(counts)
    }

    /// The comparison as the text of its JSON.
    fn to_json(&self, py: Python<'_>) -> PyResult<String> {
        json_of(py.detach(|| report(&self.old, &self.new, |report| serde_json::to_string(report))).map_err(raise)?)
    }

    /// The comparison as a dict: its JSON, parsed.
    fn to_dict<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        parsed(py, &self.to_json(py)?)
    }

    fn __iter__<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyIterator>> {
        self.list().into_pyobject(py)?.try_iter()
    }

    fn __len__(&self) -> usize {
        self.changes.len()
    }

    /// A line for every change, how many there are, and what was not compared.
    fn __str__(&self, py: Python<'_>) -> PyResult<String> {
        py.detach(|| report(&self.old, &self.new, |report| report.to_string())).map_err(raise)
    }

    fn __repr__(&self) -> String {
        let nc::HoleCounts { changed, added, removed, .. } = self.counts;
        format!("<Comparison: {changed} changed, {added} added, {removed} removed>")
    }
}

/// Compares the tapped holes of two versions of a program: bytes, text, or the paths of files.
#[pyfunction]
#[pyo3(signature = (old, new, *, dialect, options=None, machine=None, tools=None))]
pub fn compare(
    py: Python<'_>,
    old: &Bound<'_, PyAny>,
    new: &Bound<'_, PyAny>,
    dialect: &Bound<'_, PyAny>,
    options: Option<&Bound<'_, PyDict>>,
    machine: Option<&Bound<'_, PyDict>>,
    tools: Option<&Bound<'_, PyAny>>,
) -> PyResult<Comparison> {
    let dialect = dialect_of(dialect)?;
    let (asked, tools) = told_of(options, machine, tools)?;
    let (old, new) = (text_of(old)?, text_of(new)?);
    let check = |text: &[u8]| run(text, &dialect, &asked, &tools);
    py.detach(|| Comparison::of(check(&old)?, check(&new)?)).map_err(raise)
}
