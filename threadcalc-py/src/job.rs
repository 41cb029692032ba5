//! `Job`: what a plan is asked for.

use pyo3::exceptions::PyTypeError;
use pyo3::prelude::*;
use pyo3::types::{PyBool, PyBytes, PyDict, PyFloat, PyList, PyMapping, PySet, PyString, PyTuple};
use threadcalc_core::{self as core, Code, Field, Value};

use crate::cycle::Dialect;
use crate::error::{ThreadcalcError, raise_key};
use crate::number::{exact, wrong_type, wrong_type_of};
use crate::text::bytes_of;
use crate::thread::{Thread, designation};

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

/// Sets every field of a dict; the fields of `machine`, `screw` and `dialect` are dotted.
pub fn set_all(job: &mut core::Job, prefix: &str, fields: &Bound<'_, PyDict>) -> PyResult<()> {
    for (key, value) in fields {
        let Ok(name) = key.cast::<PyString>() else { return Err(wrong_type(&key, Field::Key, "str")) };
        let key = format!("{prefix}{}", name.to_string_lossy());
        match value.cast::<PyDict>() {
            Ok(inner) if core::Job::is_group(&key) => set_all(job, &format!("{key}."), inner)?,
            _ => set(job, &key, &value)?,
        }
    }
    Ok(())
}

fn set(job: &mut core::Job, key: &str, value: &Bound<'_, PyAny>) -> PyResult<()> {
    match key {
        "thread" => {
            if let Ok(thread) = value.cast::<Thread>() {
                job.thread = Some(thread.get().0);
                return Ok(());
            }
        }
        "dialect" => {
            if let Ok(dialect) = value.cast::<Dialect>() {
                job.dialect = Some(dialect.get().0);
                return Ok(());
            }
        }
        "drill_sets" | "drill_list" if is_collection(value) => {
            return value.try_iter()?.try_for_each(|name| set_value(job, key, &name?));
        }
        _ if is_collection(value) && key.strip_prefix("dialect.").is_some_and(core::Dialect::takes_codes) => {
            let field = Field::from_name(key.as_bytes()).unwrap_or(Field::Dialect);
            let codes = value.try_iter()?.map(|code| bytes_of(&code?, field).map(|code| code.to_vec()));
            return apply(job, key, Value::Text(&codes.collect::<PyResult<Vec<_>>>()?.join(&b' ')));
        }
        _ if !value.is_none() && core::Job::is_group(key) => return Err(wrong_type_of(value, key, "a dict")),
        "machine.gears" if is_collection(value) => return set_gears(job, key, value),
        _ => {}
    }
    set_value(job, key, value)
}

/// A list of gears, each a list of numbers.
fn set_gears(job: &mut core::Job, key: &str, gears: &Bound<'_, PyAny>) -> PyResult<()> {
    for gear in gears.try_iter()? {
        let gear = gear?;
        if !is_collection(&gear) {
            return Err(wrong_type(&gear, Field::MachineGears, "a list of numbers for each gear"));
        }
        let numbers = gear.try_iter()?.map(|number| exact(&number?, Field::MachineGears));
        let numbers = numbers.collect::<PyResult<Vec<_>>>()?;
        apply(job, key, Value::Numbers(&numbers))?;
    }
    Ok(())
}

fn is_collection(value: &Bound<'_, PyAny>) -> bool {
    value.is_instance_of::<PyList>() || value.is_instance_of::<PyTuple>() || value.is_instance_of::<PySet>()
}

fn set_value(job: &mut core::Job, key: &str, value: &Bound<'_, PyAny>) -> PyResult<()> {
    let field = Field::from_name(key.as_bytes()).unwrap_or(Field::Key);
    if value.is_none() {
        return apply(job, key, Value::Absent);
    }
    if value.is_instance_of::<PyString>() || value.is_instance_of::<PyBytes>() {
        let text = bytes_of(value, field)?;
        return apply(job, key, Value::Text(&text));
    }
    if let Ok(double) = value.cast::<PyFloat>() {
        return apply(job, key, Value::Double(double.extract()?));
    }
    if value.is_instance_of::<PyBool>() {
        return set_flag(job, key, value, field);
    }
    match exact(value, field) {
        Ok(number) => apply(job, key, Value::Exact(number)),
        // An unknown key is the first thing to say, whatever stands behind it.
        Err(error) => core::Job::default()
            .set(key, Value::Absent)
            .map_err(|unknown| raise_key(unknown, key))
            .and(Err(wanted(key, value, field, error))),
    }
}

/// Of a value whose type no number has: what the field takes, if that is no number.
fn wanted(key: &str, value: &Bound<'_, PyAny>, field: Field, error: PyErr) -> PyErr {
    match core::Job::default().set(key, Value::Numbers(&[])) {
        Err(wanted)
            if wanted.code() == Code::UnknownValue
                && wanted.hint() != "a number"
                && error.is_instance_of::<PyTypeError>(value.py()) =>
        {
            wrong_type(value, field, wanted.hint())
        }
        _ => error,
    }
}

/// A bool is a flag; where a number or a text is asked for, its type is wrong.
fn set_flag(job: &mut core::Job, key: &str, value: &Bound<'_, PyAny>, field: Field) -> PyResult<()> {
    match job.set(key, Value::Flag(value.extract()?)) {
        Err(error) if error.code() == Code::UnknownValue => Err(wrong_type(value, field, error.hint())),
        answer => answer.map_err(|error| raise_key(error, key)),
    }
}

fn apply(job: &mut core::Job, key: &str, value: Value<'_>) -> PyResult<()> {
    job.set(key, value).map_err(|error| raise_key(error, key))
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
