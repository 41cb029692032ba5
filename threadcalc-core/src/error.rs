//! The one error of the crate: no result can exist.

use core::fmt;

pub use crate::field::Field;
use crate::text::write_f64;

/// What went wrong. The numbers are stable and the same in Rust, C and Python.
///
/// 1 to 99 come from the core; 100 and above from the borders (C, JSON).
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, thiserror::Error)]
#[repr(u16)]
#[non_exhaustive]
pub enum Code {
    /// The text is empty or blank.
    #[error("nothing to read")]
    Empty = 1,
    /// The text stops making sense at the byte given.
    #[error("cannot be read")]
    Unreadable = 2,
    /// The text is longer than any of its kind.
    #[error("too long")]
    TooLong = 3,
    /// The number has no exact value here (more than 9 decimals, NaN, infinity).
    #[error("not an exact number")]
    NotExact = 4,
    /// The number is outside the range that makes sense.
    #[error("out of range")]
    OutOfRange = 5,
    /// An exact result does not fit in 64-bit numerator and denominator.
    #[error("too large for exact arithmetic")]
    Overflow = 6,
    /// The series that is named has another pitch at this diameter.
    #[error("the series contradicts the pitch")]
    SeriesMismatch = 7,
    /// The tolerance class does not exist for this thread.
    #[error("no such tolerance class for this thread")]
    UnknownClass = 8,
    /// Limits need a tolerance class.
    #[error("no tolerance class given")]
    ClassUnset = 9,
    /// The standard's value has not been read, and is not guessed.
    #[error("the standard's value is not sourced yet")]
    NotSourced = 10,
    /// The feed is smaller than half its last decimal.
    #[error("the feed rounds to zero at these decimals")]
    FeedRoundsToZero = 11,
    /// A required value is missing.
    #[error("missing")]
    Missing = 12,
    /// The value is not one of the choices.
    #[error("not one of the choices")]
    UnknownValue = 13,
    /// The key is not known.
    #[error("unknown key")]
    UnknownKey = 14,
    /// Two values exclude each other.
    #[error("contradicts another value")]
    Contradiction = 15,
    /// No drill of the sets lies within the limits.
    #[error("no drill of these sets fits")]
    NoDrill = 16,
    /// A fit names two threads; one was expected.
    #[error("a fit names two threads")]
    Fit = 17,
    /// The thread form is known but not supported by this version.
    #[error("this thread form is not supported yet")]
    UnsupportedForm = 18,
    /// The question has no meaning for this thread.
    #[error("has no meaning for this thread")]
    DoesNotApply = 19,
    /// A pointer that must point somewhere is null (C).
    #[error("null pointer")]
    NullPointer = 100,
    /// The size member of a request is not one this library knows (C).
    #[error("wrong structure size")]
    StructureSize = 101,
    /// The caller's buffer is too short; the length needed was written (C).
    #[error("buffer too short")]
    BufferTooShort = 102,
    /// The field is part of the contract, but not supported by this version.
    #[error("not supported yet")]
    UnsupportedField = 103,
    /// The text is not JSON, or not of the shape expected.
    #[error("not readable as JSON")]
    BadJson = 104,
}

impl Code {
    /// Every code, in the order of its number.
    pub const ALL: &'static [Self] = &[
        Self::Empty,
        Self::Unreadable,
        Self::TooLong,
        Self::NotExact,
        Self::OutOfRange,
        Self::Overflow,
        Self::SeriesMismatch,
        Self::UnknownClass,
        Self::ClassUnset,
        Self::NotSourced,
        Self::FeedRoundsToZero,
        Self::Missing,
        Self::UnknownValue,
        Self::UnknownKey,
        Self::Contradiction,
        Self::NoDrill,
        Self::Fit,
        Self::UnsupportedForm,
        Self::DoesNotApply,
        Self::NullPointer,
        Self::StructureSize,
        Self::BufferTooShort,
        Self::UnsupportedField,
        Self::BadJson,
    ];

    /// The stable number; 0 is success and never an error.
    #[must_use]
    pub const fn number(self) -> i32 {
        self as i32
    }

    /// The code with this number.
    #[must_use]
    pub fn from_number(number: i32) -> Option<Self> {
        Self::ALL.iter().copied().find(|code| code.number() == number)
    }

    /// The stable name, in the spelling of the reference tables.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Empty => "empty",
            Self::Unreadable => "unreadable",
            Self::TooLong => "too-long",
            Self::NotExact => "not-exact",
            Self::OutOfRange => "out-of-range",
            Self::Overflow => "overflow",
            Self::SeriesMismatch => "series-mismatch",
            Self::UnknownClass => "unknown-class",
            Self::ClassUnset => "class-unset",
            Self::NotSourced => "not-sourced",
            Self::FeedRoundsToZero => "feed-rounds-to-zero",
            Self::Missing => "missing",
            Self::UnknownValue => "unknown-value",
            Self::UnknownKey => "unknown-key",
            Self::Contradiction => "contradiction",
            Self::NoDrill => "no-drill",
            Self::Fit => "fit",
            Self::UnsupportedForm => "unsupported-form",
            Self::DoesNotApply => "does-not-apply",
            Self::NullPointer => "null-pointer",
            Self::StructureSize => "structure-size",
            Self::BufferTooShort => "buffer-too-short",
            Self::UnsupportedField => "unsupported-field",
            Self::BadJson => "bad-json",
        }
    }
}

/// Why no result can exist. `Copy`, 48 bytes, no heap.
///
/// Match on [`code`](Error::code), not on the text.
#[derive(Clone, Copy, Debug)]
pub struct Error {
    got: f64,
    low: f64,
    high: f64,
    hint: &'static str,
    at: u32,
    code: Code,
    field: Field,
}

const _: () = assert!(size_of::<Error>() <= 48);

impl Error {
    /// An error about a whole value.
    #[must_use]
    pub const fn new(code: Code, field: Field) -> Self {
        Self { got: f64::NAN, low: f64::NAN, high: f64::NAN, hint: "", at: NOWHERE, code, field }
    }

    /// The same error at a byte offset of the text that was read.
    #[must_use]
    pub const fn at_byte(mut self, at: usize) -> Self {
        self.at = if at < NOWHERE as usize { at as u32 } else { NOWHERE };
        self
    }

    /// The same error with what was given.
    #[must_use]
    pub const fn got(mut self, got: f64) -> Self {
        self.got = got;
        self
    }

    /// The same error with the range that would do (NaN: open end).
    #[must_use]
    pub const fn within(mut self, low: f64, high: f64) -> Self {
        self.low = low;
        self.high = high;
        self
    }

    /// The same error with what would be right.
    #[must_use]
    pub const fn hint_text(mut self, hint: &'static str) -> Self {
        self.hint = hint;
        self
    }

    /// The same error about another value.
    #[must_use]
    pub const fn about(mut self, field: Field) -> Self {
        self.field = field;
        self
    }

    /// What went wrong.
    #[must_use]
    pub const fn code(&self) -> Code {
        self.code
    }

    /// The value that the error speaks of.
    #[must_use]
    pub const fn field(&self) -> Field {
        self.field
    }

    /// Byte offset in the text that was read, `None` where no text was.
    #[must_use]
    pub const fn at(&self) -> Option<u32> {
        if self.at == NOWHERE { None } else { Some(self.at) }
    }

    /// What was given, NaN if that is not a number.
    #[must_use]
    pub const fn value(&self) -> f64 {
        self.got
    }

    /// Lower end of what would do, NaN if open.
    #[must_use]
    pub const fn low(&self) -> f64 {
        self.low
    }

    /// Upper end of what would do, NaN if open.
    #[must_use]
    pub const fn high(&self) -> f64 {
        self.high
    }

    /// What would be right, in words; empty if the numbers say it all.
    #[must_use]
    pub const fn hint(&self) -> &'static str {
        self.hint
    }
}

const NOWHERE: u32 = u32::MAX;

impl PartialEq for Error {
    fn eq(&self, other: &Self) -> bool {
        let bits = |e: &Self| [e.got.to_bits(), e.low.to_bits(), e.high.to_bits()];
        (self.code, self.field, self.at, self.hint) == (other.code, other.field, other.at, other.hint)
            && bits(self) == bits(other)
    }
}

impl Eq for Error {}

impl core::error::Error for Error {}

impl fmt::Display for Error {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.field.name())?;
        f.write_str(": ")?;
        fmt::Display::fmt(&self.code, f)?;
        if let Some(at) = self.at() {
            f.write_str(" at byte ")?;
            write_f64(f, f64::from(at))?;
        }
        if !self.got.is_nan() {
            f.write_str(", got ")?;
            write_f64(f, self.got)?;
        }
        match (self.low.is_nan(), self.high.is_nan()) {
            (true, true) => {}
            (false, true) => {
                f.write_str(", at least ")?;
                write_f64(f, self.low)?;
            }
            (true, false) => {
                f.write_str(", at most ")?;
                write_f64(f, self.high)?;
            }
            (false, false) => {
                f.write_str(", expected ")?;
                write_f64(f, self.low)?;
                if self.low < self.high {
                    f.write_str(" to ")?;
                    write_f64(f, self.high)?;
                }
            }
        }
        if !self.hint.is_empty() {
            f.write_str(if self.code == Code::UnknownKey { "; the nearest known key is " } else { "; " })?;
            f.write_str(self.hint)?;
        }
        Ok(())
    }
}
