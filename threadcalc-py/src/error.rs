//! The one place where core errors become Python exceptions.

use pyo3::import_exception;
use pyo3::prelude::*;
use threadcalc_core::{Error, Field};

import_exception!(threadcalc.errors, DesignationError);
import_exception!(threadcalc.errors, ThreadcalcError);

/// What a failed designation, a failed value or a failed key of a job raises.
#[derive(Clone, Copy)]
enum Reading<'a> {
    Designation,
    Value,
    Key(&'a str),
}

fn exception(error: Error, reading: Reading<'_>) -> PyErr {
    let text = error.to_string();
    let message = match reading {
        // "key" alone would not say which of the job's keys.
        Reading::Key(key) if error.field() == Field::Key => format!("{key}{}", text.trim_start_matches("key")),
        _ => text,
    };
    let code = error.code();
    let arguments =
        (message, code.number(), code.name(), error.at(), error.hint().to_owned(), error.field().name().to_owned());
    match reading {
        Reading::Designation | Reading::Key("thread") => DesignationError::new_err(arguments),
        _ => ThreadcalcError::new_err(arguments),
    }
}

/// The exception of a bad value.
#[cold]
pub fn raise(error: Error) -> PyErr {
    exception(error, Reading::Value)
}

/// The exception of a designation that cannot be read.
#[cold]
pub fn raise_designation(error: Error) -> PyErr {
    exception(error, Reading::Designation)
}

/// The exception of a bad key or value of a job; names the key.
#[cold]
pub fn raise_key(error: Error, key: &str) -> PyErr {
    exception(error, Reading::Key(key))
}
