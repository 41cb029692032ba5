//! What an audit is asked for, from Python.

use std::num::NonZero;
use std::path::PathBuf;
use std::thread::available_parallelism;

use pyo3::exceptions::{PyTypeError, PyValueError};
use pyo3::prelude::*;
use pyo3::types::PyString;

use super::walk::Part;

/// One path or several.
pub fn paths(value: &Bound<'_, PyAny>) -> PyResult<Vec<PathBuf>> {
    if is_path(value)? {
        return Ok(vec![value.extract()?]);
    }
    value.try_iter()?.map(|path| path?.extract()).collect()
}

fn is_path(value: &Bound<'_, PyAny>) -> PyResult<bool> {
    Ok(value.is_instance_of::<PyString>() || value.hasattr("__fspath__")?)
}

/// How the names of programs end: in lower case, with the point; the empty one stands for names without a point.
pub fn suffixes(value: Option<&Bound<'_, PyAny>>) -> PyResult<Option<Vec<String>>> {
    let Some(value) = value else { return Ok(None) };
    if value.is_instance_of::<PyString>() {
        return Err(PyTypeError::new_err("suffixes: a list of str such as [\".nc\", \".tap\"], not one str"));
    }
    let of_one = |suffix: PyResult<Bound<'_, PyAny>>| -> PyResult<String> {
        let suffix = suffix?.extract::<String>()?.to_ascii_lowercase();
        Ok(if suffix.is_empty() || suffix.starts_with('.') { suffix } else { format!(".{suffix}") })
    };
    value.try_iter()?.map(of_one).collect::<PyResult<_>>().map(Some)
}

/// How many workers: as many as there are processors, unless somebody says so.
pub fn workers(asked: Option<usize>) -> PyResult<usize> {
    match asked {
        Some(0) => Err(PyValueError::new_err("workers: at least 1, or None for one on each processor")),
        Some(asked) => Ok(asked),
        None => Ok(available_parallelism().map_or(1, NonZero::get)),
    }
}

/// One part of so many.
pub fn part((number, parts): (u32, u32)) -> PyResult<Part> {
    let wrong =
        || PyValueError::new_err(format!("part: ({number}, {parts}): a number from 0, below how many there are"));
    Part::new(number, parts).ok_or_else(wrong)
}
