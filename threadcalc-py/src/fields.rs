//! Fields of a dict, handed on by their names.

use pyo3::exceptions::PyTypeError;
use pyo3::prelude::*;
use pyo3::types::{PyBool, PyBytes, PyDict, PyFloat, PyList, PySet, PyString, PyTuple};
use threadcalc_core::nc::{CheckOptions, Tool};
use threadcalc_core::{Code, Dialect, Error, Field, Job, Value};

use crate::error::raise_key;
use crate::number::{exact, wrong_type, wrong_type_of};
use crate::text::bytes_of;
use crate::thread::{Thread, designation};

/// What takes values by name.
pub trait Fields: Default {
    fn set(&mut self, key: &str, value: Value<'_>) -> Result<(), Error>;

    /// Whether a key holds keys of its own.
    fn is_group(_key: &str) -> bool {
        false
    }

    /// Takes a thread that Python holds.
    fn set_thread(&mut self, thread: threadcalc_core::Thread) -> PyResult<()>;

    /// Takes a dialect that Python holds, if it is the value of one.
    fn set_dialect(&mut self, _dialect: Dialect) -> bool {
        false
    }
}

impl Fields for Job {
    fn set(&mut self, key: &str, value: Value<'_>) -> Result<(), Error> {
        Self::set(self, key, value)
    }

    fn is_group(key: &str) -> bool {
        Self::is_group(key)
    }

    fn set_thread(&mut self, thread: threadcalc_core::Thread) -> PyResult<()> {
        self.thread = Some(thread);
        Ok(())
    }

    fn set_dialect(&mut self, dialect: Dialect) -> bool {
        self.dialect = Some(dialect);
        true
    }
}

impl Fields for CheckOptions {
    fn set(&mut self, key: &str, value: Value<'_>) -> Result<(), Error> {
        Self::set(self, key, value)
    }

    fn set_thread(&mut self, thread: threadcalc_core::Thread) -> PyResult<()> {
        self.thread = Some(thread);
        designation(&thread).map(drop)
    }
}

impl Fields for Tool {
    fn set(&mut self, key: &str, value: Value<'_>) -> Result<(), Error> {
        Self::set(self, key, value)
    }

    fn set_thread(&mut self, thread: threadcalc_core::Thread) -> PyResult<()> {
        self.thread = Some(thread);
        designation(&thread).map(drop)
    }
}

/// Sets every field of a dict; the fields of a group are dotted.
pub fn set_all<T: Fields>(into: &mut T, prefix: &str, fields: &Bound<'_, PyDict>) -> PyResult<()> {
    for (key, value) in fields {
        let Ok(name) = key.cast::<PyString>() else { return Err(wrong_type(&key, Field::Key, "str")) };
        let key = format!("{prefix}{}", name.to_string_lossy());
        match value.cast::<PyDict>() {
            Ok(inner) if T::is_group(&key) => set_all(into, &format!("{key}."), inner)?,
            _ => set(into, &key, &value)?,
        }
    }
    Ok(())
}

fn set<T: Fields>(into: &mut T, key: &str, value: &Bound<'_, PyAny>) -> PyResult<()> {
    match key {
        "thread" => {
            if let Ok(thread) = value.cast::<Thread>() {
                return into.set_thread(thread.get().0);
            }
        }
        "dialect" => {
            let dialect = value.cast::<crate::cycle::Dialect>().map(|dialect| dialect.get().0);
            if dialect.is_ok_and(|dialect| into.set_dialect(dialect)) {
                return Ok(());
            }
        }
        "drill_sets" | "drill_list" if is_collection(value) => {
            return value.try_iter()?.try_for_each(|name| set_value(into, key, &name?));
        }
        _ if is_collection(value) && key.strip_prefix("dialect.").is_some_and(Dialect::takes_codes) => {
            let field = Field::from_name(key.as_bytes()).unwrap_or(Field::Dialect);
            let codes = value.try_iter()?.map(|code| bytes_of(&code?, field).map(|code| code.to_vec()));
            return apply(into, key, Value::Text(&codes.collect::<PyResult<Vec<_>>>()?.join(&b' ')));
        }
        _ if !value.is_none() && T::is_group(key) => return Err(wrong_type_of(value, key, "a dict")),
        "machine.gears" if is_collection(value) => return set_gears(into, key, value),
        _ => {}
    }
    set_value(into, key, value)
}

/// A list of gears, each a list of numbers.
fn set_gears<T: Fields>(into: &mut T, key: &str, gears: &Bound<'_, PyAny>) -> PyResult<()> {
    for gear in gears.try_iter()? {
        let gear = gear?;
        if !is_collection(&gear) {
            return Err(wrong_type(&gear, Field::MachineGears, "a list of numbers for each gear"));
        }
        let numbers = gear.try_iter()?.map(|number| exact(&number?, Field::MachineGears));
        let numbers = numbers.collect::<PyResult<Vec<_>>>()?;
        apply(into, key, Value::Numbers(&numbers))?;
    }
    Ok(())
}

fn is_collection(value: &Bound<'_, PyAny>) -> bool {
    value.is_instance_of::<PyList>() || value.is_instance_of::<PyTuple>() || value.is_instance_of::<PySet>()
}

fn set_value<T: Fields>(into: &mut T, key: &str, value: &Bound<'_, PyAny>) -> PyResult<()> {
    let field = Field::from_name(key.as_bytes()).unwrap_or(Field::Key);
    if value.is_none() {
        return apply(into, key, Value::Absent);
    }
    if value.is_instance_of::<PyString>() || value.is_instance_of::<PyBytes>() {
        let text = bytes_of(value, field)?;
        return apply(into, key, Value::Text(&text));
    }
    if let Ok(double) = value.cast::<PyFloat>() {
        return apply(into, key, Value::Double(double.extract()?));
    }
    if value.is_instance_of::<PyBool>() {
        return set_flag(into, key, value, field);
    }
    match exact(value, field) {
        Ok(number) => apply(into, key, Value::Exact(number)),
        // An unknown key is the first thing to say, whatever stands behind it.
        Err(error) => T::default()
            .set(key, Value::Absent)
            .map_err(|unknown| raise_key(unknown, key))
            .and(Err(wanted::<T>(key, value, field, error))),
    }
}

/// Of a value whose type no number has: what the field takes, if that is no number.
fn wanted<T: Fields>(key: &str, value: &Bound<'_, PyAny>, field: Field, error: PyErr) -> PyErr {
    match T::default().set(key, Value::Numbers(&[])) {
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
fn set_flag<T: Fields>(into: &mut T, key: &str, value: &Bound<'_, PyAny>, field: Field) -> PyResult<()> {
    match into.set(key, Value::Flag(value.extract()?)) {
        Err(error) if error.code() == Code::UnknownValue => Err(wrong_type(value, field, error.hint())),
        answer => answer.map_err(|error| raise_key(error, key)),
    }
}

fn apply<T: Fields>(into: &mut T, key: &str, value: Value<'_>) -> PyResult<()> {
    into.set(key, value).map_err(|error| raise_key(error, key))
}
