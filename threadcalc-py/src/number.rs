//! Exact numbers in and out.

use pyo3::exceptions::PyTypeError;
use pyo3::prelude::*;
use pyo3::sync::PyOnceLock;
use pyo3::types::{PyBool, PyFloat, PyInt, PyString, PyType};
use threadcalc_core::{Code, Error, Field, Length};

use crate::error::raise;
use crate::text::bytes_of;

/// The exact value of an int, Fraction, Decimal, str or float.
pub fn exact(value: &Bound<'_, PyAny>, field: Field) -> PyResult<Length> {
    // The everyday case first: no import and no attribute is looked up on it. A bool is no exact int.
    if value.is_exact_instance_of::<PyInt>() {
        return whole(value, field).map(Length::integer);
    }
    if let Ok(double) = value.cast::<PyFloat>() {
        return Length::from_f64(double.extract()?).map_err(|error| raise(error.about(field)));
    }
    exact_of_others(value, field)
}

/// As [`exact`], with `None` for "not given".
pub fn optional_exact(value: Option<&Bound<'_, PyAny>>, field: Field) -> PyResult<Option<Length>> {
    value.map(|value| exact(value, field)).transpose()
}

#[cold]
fn exact_of_others(value: &Bound<'_, PyAny>, field: Field) -> PyResult<Length> {
    let py = value.py();
    if value.is_instance_of::<PyBool>() {
        return Err(wrong_type(value, field, "a number"));
    }
    if value.is_instance_of::<PyString>() {
        return threadcalc_core::read_number(&bytes_of(value, field)?).map_err(|error| raise(error.about(field)));
    }
    if value.is_instance(fraction_class(py)?)? {
        let part = |name| value.getattr(name).and_then(|part| whole(&part, field));
        return Length::new(part("numerator")?, part("denominator")?).map_err(|error| raise(error.about(field)));
    }
    if value.is_instance(decimal_class(py)?)? {
        return exact_of_decimal(value, field);
    }
    // Whole numbers of other libraries say so by __index__.
    if value.hasattr("__index__")? {
        return whole(value, field).map(Length::integer);
    }
    Err(wrong_type(value, field, "an int, Fraction, Decimal, str or float"))
}

/// A Decimal is decimal text: the same digits, the same limits.
fn exact_of_decimal(value: &Bound<'_, PyAny>, field: Field) -> PyResult<Length> {
    // Beyond these places no 64-bit fraction of 9 decimals is left, and the plain text would be huge.
    const PLACES: std::ops::RangeInclusive<i64> = -20..=20;
    let finite: bool = value.call_method0("is_finite")?.extract()?;
    let zero = finite && !value.is_truthy()?;
    if zero {
        return Ok(Length::ZERO);
    }
    let place: i64 = if finite { value.call_method0("adjusted")?.extract()? } else { i64::MAX };
    if !PLACES.contains(&place) {
        let code = if finite && place > 0 { Code::Overflow } else { Code::NotExact };
        return Err(raise(
            Error::new(code, field).hint_text("at most 9 decimals; give a ratio or threads per inch instead"),
        ));
    }
    let plain = value.call_method1("__format__", ("f",))?;
    let text: String = plain.extract()?;
    let text = if text.contains('.') { text.trim_end_matches('0') } else { &text };
    threadcalc_core::read_number(text.as_bytes()).map_err(|error| raise(error.about(field)))
}

/// A whole number of 64 bits.
pub fn whole(value: &Bound<'_, PyAny>, field: Field) -> PyResult<i64> {
    if value.is_instance_of::<PyBool>() {
        return Err(wrong_type(value, field, "a whole number"));
    }
    let overflow = || raise(Error::new(Code::Overflow, field).hint_text("a whole number of 64 bits"));
    match value.extract::<i64>() {
        // The one number that has no negative.
        Ok(i64::MIN) => Err(overflow()),
        Ok(number) => Ok(number),
        Err(error) if error.is_instance_of::<pyo3::exceptions::PyOverflowError>(value.py()) => Err(overflow()),
        Err(_) => Err(wrong_type(value, field, "a whole number")),
    }
}

/// The double of an int, float, Fraction, Decimal or str, for a value that is derived or measured.
pub fn double(value: &Bound<'_, PyAny>, field: Field) -> PyResult<f64> {
    if value.is_instance_of::<PyBool>() {
        return Err(wrong_type(value, field, "a number"));
    }
    if value.is_instance_of::<PyString>() {
        return exact(value, field).map(Length::to_f64);
    }
    match value.extract() {
        Ok(double) => Ok(double),
        Err(error) if error.is_instance_of::<pyo3::exceptions::PyOverflowError>(value.py()) => {
            Err(raise(Error::new(Code::Overflow, field)))
        }
        Err(_) => Err(wrong_type(value, field, "an int, Fraction, Decimal, str or float")),
    }
}

/// As [`double`], with `None` for "not given".
pub fn optional_double_of(value: Option<&Bound<'_, PyAny>>, field: Field) -> PyResult<Option<f64>> {
    value.map(|value| double(value, field)).transpose()
}

/// The decimals of a word.
pub fn decimals(value: &Bound<'_, PyAny>) -> PyResult<u8> {
    let given = whole(value, Field::Decimals)?;
    u8::try_from(given).map_err(|_| raise(Error::new(Code::OutOfRange, Field::Decimals).within(0.0, 9.0)))
}

/// A value of a type that cannot stand for what is asked.
#[cold]
pub fn wrong_type(value: &Bound<'_, PyAny>, field: Field, wanted: &str) -> PyErr {
    wrong_type_of(value, field.name(), wanted)
}

/// The same where the value has a name that is no field.
#[cold]
pub fn wrong_type_of(value: &Bound<'_, PyAny>, name: &str, wanted: &str) -> PyErr {
    let given = value.get_type().name().map_or_else(|_| String::from("object"), |name| name.to_string());
    PyTypeError::new_err(format!("{name}: expected {wanted}, got {given}"))
}

/// An exact number as `fractions.Fraction`.
pub fn fraction(py: Python<'_>, value: Length) -> PyResult<Bound<'_, PyAny>> {
    fraction_class(py)?.call1((value.numerator(), value.denominator()))
}

/// As [`fraction`], `None` where there is none.
pub fn optional_fraction(py: Python<'_>, value: Option<Length>) -> PyResult<Option<Bound<'_, PyAny>>> {
    value.map(|value| fraction(py, value)).transpose()
}

/// A derived value, `None` where the core says NaN: there is none.
pub fn optional_double(value: f64) -> Option<f64> {
    if value.is_nan() { None } else { Some(value) }
}

fn fraction_class(py: Python<'_>) -> PyResult<&Bound<'_, PyType>> {
    static CLASS: PyOnceLock<Py<PyType>> = PyOnceLock::new();
    CLASS.import(py, "fractions", "Fraction")
}

fn decimal_class(py: Python<'_>) -> PyResult<&Bound<'_, PyType>> {
    static CLASS: PyOnceLock<Py<PyType>> = PyOnceLock::new();
    CLASS.import(py, "decimal", "Decimal")
}

/// Reads an exact number as people write it; point or comma, never a locale.
#[pyfunction]
#[pyo3(signature = (text, /))]
pub fn read_number<'py>(text: &Bound<'py, PyAny>) -> PyResult<Bound<'py, PyAny>> {
    let value = threadcalc_core::read_number(&bytes_of(text, Field::Number)?).map_err(raise)?;
    fraction(text.py(), value)
}
