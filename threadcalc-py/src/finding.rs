//! `Finding`: what is doubtful or wrong.

use pyo3::prelude::*;
use pyo3::types::PyDict;
use threadcalc_core as core;

/// Something doubtful or wrong that does not keep a result from existing.
#[pyclass(module = "threadcalc", frozen, eq)]
#[derive(Clone, PartialEq)]
pub struct Finding(pub core::Finding);

/// The findings of an answer as a list.
pub fn list_findings<const N: usize>(findings: &core::Findings<N>) -> Vec<Finding> {
    findings.iter().copied().map(Finding).collect()
}

#[pymethods]
impl Finding {
    /// The stable id.
    #[getter]
    fn id(&self) -> &'static str {
        self.0.id().name()
    }

    /// "error", "warning" or "info".
    #[getter]
    fn severity(&self) -> &'static str {
        self.0.severity().name()
    }

    /// What it means, in one line.
    #[getter]
    fn message(&self) -> &'static str {
        self.0.message()
    }

    /// The numbers, by name.
    #[getter]
    fn numbers<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyDict>> {
        let numbers = PyDict::new(py);
        for (key, value) in self.0.numbers() {
            numbers.set_item(key.name(), value)?;
        }
        Ok(numbers)
    }

    /// The input that it rests on, by its name in a job.
    #[getter]
    fn evidence(&self) -> &'static str {
        self.0.evidence()
    }

    /// What would be right; may be empty.
    #[getter]
    fn suggestion(&self) -> &str {
        self.0.suggestion()
    }

    fn __str__(&self) -> String {
        self.0.to_string()
    }

    fn __repr__(&self) -> String {
        format!("<Finding {}>", self.0)
    }
}
