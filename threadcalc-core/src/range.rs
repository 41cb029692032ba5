//! The one check of a double against the range that makes sense.

use crate::error::{Code, Error, Field};
use crate::length::Length;

/// The value if it lies within `low..=high`; NaN never does.
pub(crate) fn within(value: f64, field: Field, low: f64, high: f64) -> Result<f64, Error> {
    if (low..=high).contains(&value) {
        return Ok(value);
    }
    Err(Error::new(Code::OutOfRange, field).got(value).within(low, high))
}

/// The exact value if it is above 0 and at most `most`.
pub(crate) fn above_zero(value: Length, field: Field, most: i64) -> Result<Length, Error> {
    if value.is_positive() && value <= Length::integer(most) {
        return Ok(value);
    }
    Err(Error::new(Code::OutOfRange, field).got(value.to_f64()).within(0.0, most as f64).hint_text("above 0"))
}

/// The exact value if it lies within `0..=most`.
pub(crate) fn zero_or_more(value: Length, field: Field, most: i64) -> Result<Length, Error> {
    if !value.is_negative() && value <= Length::integer(most) {
        return Ok(value);
    }
    Err(Error::new(Code::OutOfRange, field).got(value.to_f64()).within(0.0, most as f64))
}
