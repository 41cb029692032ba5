//! Words and assignments: what a block is made of.

use super::number::Number;
use super::postfix::Formula;
use crate::length::{Length, Rounding};

/// What stands behind the letter of a word.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum WordValue {
    /// A number.
    Number(Number),
    /// A formula of the same block.
    Formula(Formula),
    /// Something that is no value: a fault of the block says what.
    Unreadable,
}

/// A word: a letter and its value.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Word {
    pub(super) value: WordValue,
    pub(super) column: u32,
    pub(super) end_column: u32,
    pub(super) letter: u8,
}

impl Word {
    #[inline]
    pub(super) const fn new(letter: u8, value: WordValue, column: u32, end_column: u32) -> Self {
        Self { value, column, end_column, letter }
    }

    /// The letter, in upper case.
    #[must_use]
    pub const fn letter(&self) -> u8 {
        self.letter
    }

    /// The value.
    #[must_use]
    pub const fn value(&self) -> WordValue {
        self.value
    }

    /// The value, if it is written as a number.
    #[must_use]
    pub const fn number(&self) -> Option<Number> {
        match self.value {
            WordValue::Number(number) => Some(number),
            _ => None,
        }
    }

    /// Where its letter stands, in bytes from 1.
    #[must_use]
    pub const fn column(&self) -> u32 {
        self.column
    }

    /// The column behind its last byte.
    #[must_use]
    pub const fn end_column(&self) -> u32 {
        self.end_column
    }

    /// The number of a G or M code in tenths, as [`code_tenths`] has it, if it is written as a number.
    ///
    /// ```
    /// use threadcalc_core::nc::{Blocks, ReaderSettings};
    ///
    /// let mut program = Blocks::new(b"G084 G51.1 G1.25", ReaderSettings::default());
    /// let tenths: Vec<_> = program.next().unwrap().words().iter().map(|word| word.code_tenths()).collect();
    /// assert_eq!(tenths, [Some(840), Some(511), None]);
    /// ```
    #[must_use]
    pub fn code_tenths(&self) -> Option<u32> {
        let number = self.number()?;
        // Nearly always a whole number of one to three digits.
        match (u32::try_from(number.mantissa()), number.decimals()) {
            (Ok(code @ 0..=9999), 0) => Some(code.saturating_mul(10)),
            (Ok(code @ 0..=99_999), 1) => Some(code),
            _ => code_tenths(number.to_length().ok()?),
        }
    }
}

/// The number of a G or M code in tenths: 84 is 840, 51.1 is 511.
///
/// `None` below 0, above 9999.9, and where no tenth is within 0.0001.
///
/// ```
/// use threadcalc_core::{Length, nc::code_tenths};
///
/// assert_eq!(code_tenths(Length::new(511, 10)?), Some(511));
/// assert_eq!(code_tenths(Length::new(83_999_95, 100_000)?), Some(840));
/// assert_eq!(code_tenths(Length::new(5, 4)?), None);
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// RS274/NGC, NISTIR 6556, section 3.3.2.1: a value that must be close to an integer is within 0.0001 of it.
#[must_use]
pub fn code_tenths(value: Length) -> Option<u32> {
    let tenths = value.round_to(1, Rounding::HalfEven).ok()?;
    let off = value.minus(tenths.to_length().ok()?).ok()?.magnitude();
    let is_near = off <= const { Length::parts(1, 10_000) };
    u32::try_from(tenths.units()).ok().filter(|tenths| is_near && *tenths <= 99_999)
}

/// `#index = value`: takes effect after all values of its block are read.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub struct Assignment {
    /// The number of the variable.
    pub index: WordValue,
    /// What it is to be.
    pub value: WordValue,
    /// Where its `#` stands, in bytes from 1.
    pub column: u32,
    /// The column behind its last byte.
    pub end_column: u32,
}

/// `/` behind the beginning of a block: what stands behind it is left out while the switch is on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub struct InnerDelete {
    /// Which switch, 1 to 9; 0 for a `/` without a number.
    pub level: u8,
    /// Where it stands, in bytes from 1.
    pub column: u32,
}
