//! Numbers of a program: exact, with the way they were written.

use core::fmt;

use super::fault::FaultKind;
use crate::error::Error;
use crate::length::Length;
use crate::text::digits;

/// The most digits of a number, leading zeros not counted, and the most behind its point.
const MOST_DIGITS: u8 = 18;

/// 10^0 to 10^18.
const POWERS: [i64; 19] = {
    let mut powers = [1; 19];
    let (mut place, mut power) = (0_usize, 1_i64);
    while place < 19 {
        #[allow(clippy::indexing_slicing, reason = "in a constant: checked when compiled")]
        {
            powers[place] = power;
        }
        power = power.wrapping_mul(10);
        place = place.wrapping_add(1);
    }
    powers
};

pub(super) fn power_of_ten(exponent: u8) -> Option<i64> {
    POWERS.get(usize::from(exponent)).copied()
}

/// The sign that was written.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Sign {
    /// None was.
    None,
    /// `+`.
    Plus,
    /// `-`.
    Minus,
}

/// A number as a program has it: its exact value, and how it was written.
///
/// Displayed as it was written, but without blanks: `-0.50`, `+.5`, `007`, `5.`
///
/// ```
/// use threadcalc_core::nc::{Blocks, ReaderSettings, WordValue};
///
/// let mut program = Blocks::new(b"Z-0 1. 50", ReaderSettings::default());
/// let WordValue::Number(number) = program.next().unwrap().words()[0].value() else { panic!() };
/// assert_eq!((number.mantissa(), number.decimals(), number.had_point()), (-150, 2, true));
/// assert_eq!(number.to_string(), "-01.50");
/// assert_eq!(number.to_length()?.to_string(), "-1.5");
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// RS274/NGC, NISTIR 6556, section 3.3.2.1 (numbers); ISO 6983-1 (decimal sign).
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Number {
    mantissa: i64,
    decimals: u8,
    whole_digits: u8,
    sign: Sign,
    point: bool,
}

impl Number {
    /// Of digits and the sign before them.
    #[inline]
    pub(super) const fn of(digits: i64, decimals: u8, whole_digits: u8, sign: Sign, point: bool) -> Self {
        let mantissa = if matches!(sign, Sign::Minus) { digits.wrapping_neg() } else { digits };
        Self { mantissa, decimals, whole_digits, sign, point }
    }

    /// All digits as one whole number, with their sign.
    #[must_use]
    pub const fn mantissa(self) -> i64 {
        self.mantissa
    }

    /// How many digits were written behind the point, 0 to 18.
    #[must_use]
    pub const fn decimals(self) -> u8 {
        self.decimals
    }

    /// How many digits were written before the point, leading zeros too; 255 for more.
    #[must_use]
    pub const fn whole_digits(self) -> u8 {
        self.whole_digits
    }

    /// The sign that was written.
    #[must_use]
    pub const fn sign(self) -> Sign {
        self.sign
    }

    /// True if a decimal point was written, digits behind it or not.
    #[must_use]
    pub const fn had_point(self) -> bool {
        self.point
    }

    /// The number without sign or point, if none was written: a line or program number.
    pub(super) const fn plain(self) -> Option<u64> {
        if self.point || !matches!(self.sign, Sign::None) { None } else { Some(self.mantissa.unsigned_abs()) }
    }

    /// The exact value, in whatever unit the word has.
    ///
    /// # Errors
    /// [`Overflow`](crate::Code::Overflow), which no number of at most 18 digits reaches.
    pub fn to_length(self) -> Result<Length, Error> {
        match self.decimals {
            decimals @ 0..=9 => Ok(Length::decimal_parts(self.mantissa, u32::from(decimals), u32::from(decimals))),
            decimals => Length::new(self.mantissa, power_of_ten(decimals).unwrap_or(0)),
        }
    }
}

impl fmt::Display for Number {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self.sign {
            Sign::None => "",
            Sign::Plus => "+",
            Sign::Minus => "-",
        })?;
        let mut buffer = [0; 32];
        let start = digits(&mut buffer, self.mantissa.unsigned_abs(), self.decimals, self.point);
        let written = crate::length::str_from(&buffer, start);
        // At least one digit stands before the point there; here there may be none, or more zeros.
        let tail = usize::from(self.decimals).saturating_add(usize::from(self.point));
        let whole = written.len().saturating_sub(tail);
        for _ in whole..usize::from(self.whole_digits) {
            f.write_str("0")?;
        }
        let skipped = if self.whole_digits == 0 { whole } else { 0 };
        f.write_str(written.get(skipped..).unwrap_or(""))
    }
}

/// The digits of a number as they come, one byte after the other.
#[derive(Clone, Debug)]
pub(super) struct Digits {
    mantissa: i64,
    figures: u8,
    whole_digits: u8,
    decimals: u8,
    sign: Sign,
    point: bool,
    digit: bool,
    /// The column behind the last byte, 0 if there is none.
    end: u32,
    fault: Option<FaultKind>,
}

impl Digits {
    pub(super) const NONE: Self = Self {
        mantissa: 0,
        figures: 0,
        whole_digits: 0,
        decimals: 0,
        sign: Sign::None,
        point: false,
        digit: false,
        end: 0,
        fault: None,
    };

    pub(super) const fn sign(&self) -> Sign {
        self.sign
    }

    /// Takes a sign, unless something stands before it.
    pub(super) fn push_sign(&mut self, sign: Sign, column: u32) -> bool {
        let first = self.end == 0;
        if first {
            self.sign = sign;
            self.end = column.saturating_add(1);
        }
        first
    }

    /// Takes a digit or a point.
    pub(super) fn push(&mut self, byte: u8, column: u32, blanks_are_errors: bool) {
        if blanks_are_errors && self.end != 0 && self.end != column {
            self.fault = self.fault.or(Some(FaultKind::BlankInNumber));
        }
        self.end = column.saturating_add(1);
        if byte == b'.' {
            if self.point {
                self.fault = Some(FaultKind::BadNumber);
            }
            self.point = true;
            return;
        }
        self.digit = true;
        if self.mantissa != 0 || byte != b'0' {
            self.figures = self.figures.saturating_add(1);
        }
        let count = if self.point { &mut self.decimals } else { &mut self.whole_digits };
        *count = count.saturating_add(1);
        if self.figures > MOST_DIGITS || self.decimals > MOST_DIGITS {
            self.fault = self.fault.or(Some(FaultKind::TooManyDigits));
            return;
        }
        self.mantissa = self.mantissa.wrapping_mul(10).wrapping_add(i64::from(byte & 15));
    }

    /// What has come, as a number.
    pub(super) fn number(&self) -> Result<Number, FaultKind> {
        match self.fault {
            Some(fault) => Err(fault),
            None if !self.digit => Err(FaultKind::BadNumber),
            None => Ok(Number::of(self.mantissa, self.decimals, self.whole_digits, self.sign, self.point)),
        }
    }
}
