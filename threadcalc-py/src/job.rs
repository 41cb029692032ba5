//! `Job`: what a plan is asked for.

use pyo3::prelude::*;
use pyo3::types::{PyDict, PyMapping};
use threadcalc_core::{self as core, Code, Field};

use crate::error::ThreadcalcError;
use crate::fields::set_all;
use crate::number::wrong_type;
use crate::thread::designation;

/// One tapped hole, by the fields of a job.
#[pyclass(module = "threadcalc", frozen, eq)]
#[derive(Clone, PartialEq)]
pub struct Job(pub core::Job);

/// The core's job from a dict or a `Job`.
pub fn job_of(job: &Bound<'_, PyAny>) -> PyResult<core::Job> {
    if let Ok(job) = job.cast::<Job>() {
        return Ok(job.get().0);
    }
    if let Ok(fields) = job.cast::<PyDict>() {
        return from_dict(fields);
    }
    match job.cast::<PyMapping>() {
        Ok(fields) => from_dict(&PyDict::from_sequence(fields.items()?.as_any())?),
        Err(_) => Err(wrong_type(job, Field::Job, "a dict or a Job")),
    }
}

fn from_dict(fields: &Bound<'_, PyDict>) -> PyResult<core::Job> {
    let mut job = core::Job::default();
    set_all(&mut job, "", fields)?;
    Ok(job)
}

/// The text of a JSON, or the exception of what could not be written.
pub fn json_of(written: serde_json::Result<String>) -> PyResult<String> {
    written.map_err(|error| {
        let code = Code::Overflow;
        ThreadcalcError::new_err((error.to_string(), code.number(), code.name(), None::<u32>, "", Field::Job.name()))
    })
}

/// A JSON text as Python objects.
pub fn parsed<'py>(py: Python<'py>, json: &str) -> PyResult<Bound<'py, PyAny>> {
    py.import("json")?.call_method1("loads", (json,))
}

#[pymethods]
impl Job {
    #[new]
    #[pyo3(signature = (**fields), text_signature = "(**fields)")]
    fn new(fields: Option<&Bound<'_, PyDict>>) -> PyResult<Self> {
        fields.map_or_else(|| Ok(core::Job::default()), from_dict).map(Self)
    }

    /// The required fields that are not given.
    #[getter]
    fn missing(&self) -> Vec<&'static str> {
        self.0.missing().map(|error| error.field().name()).collect()
    }

    /// The job as the text of its JSON.
    fn to_json(&self) -> PyResult<String> {
        writable(&self.0)?;
        json_of(serde_json::to_string(&self.0))
    }

    /// The job as a dict; `plan` takes it back.
    fn to_dict<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        parsed(py, &self.to_json()?)
    }

    fn __repr__(&self) -> String {
        let thread = self.0.thread.and_then(|thread| designation(&thread).ok());
        format!("<Job {}>", thread.unwrap_or_default())
    }
}

/// Refuses a thread that has no designation: neither page nor JSON could name it.
pub fn writable(job: &core::Job) -> PyResult<()> {
    job.thread.map_or(Ok(()), |thread| designation(&thread).map(drop))
}
