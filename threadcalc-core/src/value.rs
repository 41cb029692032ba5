//! Values that a door hands in by name, and how each kind of them is read.

use crate::error::{Code, Error, Field};
use crate::length::{Length, MOST_DECIMALS};
use crate::number::read_number;
use crate::text::Text;

/// A value that a door (JSON, Python, command line) hands in for a field of a job or of a dialect.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Value<'a> {
    /// Text: a name, a designation, or a number as written.
    Text(&'a [u8]),
    /// An exact number.
    Exact(Length),
    /// A double; it stands for its shortest decimal text.
    Double(f64),
    /// Yes or no.
    Flag(bool),
    /// A list of exact numbers.
    Numbers(&'a [Length]),
    /// Not given.
    Absent,
}

pub(crate) fn text<'a>(value: Value<'a>, field: Field) -> Result<&'a [u8], Error> {
    match value {
        Value::Text(text) => Ok(text),
        _ => Err(Error::new(Code::UnknownValue, field).hint_text("a text")),
    }
}

pub(crate) fn number(value: Value<'_>, field: Field) -> Result<Length, Error> {
    let read = match value {
        Value::Exact(number) => Ok(number),
        Value::Double(double) => Length::from_f64(double),
        Value::Text(text) => read_number(text),
        Value::Flag(_) | Value::Absent | Value::Numbers(_) => {
            Err(Error::new(Code::UnknownValue, field).hint_text("a number"))
        }
    };
    read.map_err(|error| error.about(field))
}

pub(crate) fn flag(value: Value<'_>, field: Field) -> Result<bool, Error> {
    match value {
        Value::Flag(flag) => Ok(flag),
        Value::Text(b"true") => Ok(true),
        Value::Text(b"false") => Ok(false),
        _ => Err(Error::new(Code::UnknownValue, field).hint_text("true or false")),
    }
}

/// How many decimals, 0 to 9.
pub(crate) fn decimals(value: Value<'_>, field: Field) -> Result<u8, Error> {
    let given = number(value, field)?;
    let whole = given.whole().and_then(|whole| u8::try_from(whole).ok()).filter(|whole| *whole <= MOST_DECIMALS);
    let range = Error::new(Code::OutOfRange, field).got(given.to_f64()).within(0.0, f64::from(MOST_DECIMALS));
    whole.ok_or(range.hint_text("a whole number of decimals"))
}

pub(crate) fn choice<T>(
    value: Value<'_>,
    field: Field,
    read: impl Fn(&[u8]) -> Option<T>,
    choices: &'static str,
) -> Result<T, Error> {
    let named = match value {
        Value::Text(text) => read(text),
        _ => None,
    };
    named.ok_or(Error::new(Code::UnknownValue, field).hint_text(choices))
}

/// A short printable text without blanks.
pub(crate) fn short<const N: usize>(text: &[u8], field: Field) -> Result<Text<N>, Error> {
    let printable = text.iter().all(u8::is_ascii_graphic);
    let held = core::str::from_utf8(text).ok().filter(|_| printable).and_then(Text::holding);
    held.ok_or(Error::new(Code::UnknownValue, field).hint_text("a short printable ASCII text without blanks"))
}
