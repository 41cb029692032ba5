//! The nearest double of an exact number, and the exact number of a double.

use super::Length;
use crate::error::Error;

/// Up to here every whole number is a double.
const EXACT: u64 = 1 << 53;

fn is_double(value: &i64) -> bool {
    value.unsigned_abs() <= EXACT
}

impl Length {
    /// The nearest double to the difference; no common divisor is sought for it.
    ///
    /// # Errors
    /// [`Overflow`](crate::Code::Overflow) if the difference does not fit.
    pub(crate) fn minus_to_f64(self, other: Self) -> Result<f64, Error> {
        let bottom = self.denominator().checked_mul(other.denominator()).filter(is_double);
        let left = self.numerator.checked_mul(other.denominator());
        let right = other.numerator.checked_mul(self.denominator());
        let top = left.zip(right).and_then(|(left, right)| left.checked_sub(right)).filter(is_double);
        match (top, bottom) {
            (Some(top), Some(bottom)) => Ok(top as f64 / bottom as f64),
            _ => Ok(self.minus(other)?.to_f64()),
        }
    }

    /// The nearest double to the quotient; no common divisor is sought for it.
    ///
    /// # Errors
    /// Those of [`Length::over`].
    pub(crate) fn over_to_f64(self, other: Self) -> Result<f64, Error> {
        let top = self.numerator.checked_mul(other.denominator()).filter(is_double);
        let bottom = self.denominator().checked_mul(other.numerator).filter(is_double);
        match (top, bottom) {
            // 0 over a negative number is 0 without a sign, as the exact number is.
            (Some(top), Some(bottom)) if top != 0 && bottom != 0 => Ok(top as f64 / bottom as f64),
            _ => Ok(self.over(other)?.to_f64()),
        }
    }

    /// The nearest double, correctly rounded (ties to even), on every platform.
    #[must_use]
    #[inline(never)]
    pub fn to_f64(self) -> f64 {
        let (top, bottom) = (self.numerator.unsigned_abs(), self.denominator().unsigned_abs());
        let magnitude =
            if top <= EXACT && bottom <= EXACT { top as f64 / bottom as f64 } else { divide_wide(top, bottom) };
        if self.numerator < 0 { -magnitude } else { magnitude }
    }

    /// The exact value that a double stands for: that of its shortest decimal text.
    ///
    /// # Errors
    /// [`NotExact`](crate::Code::NotExact) for NaN, infinity or more than 9 decimals, [`Overflow`](crate::Code::Overflow) beyond 64 bits.
    pub fn from_f64(value: f64) -> Result<Self, Error> {
        crate::number::from_f64(value)
    }
}

/// Correctly rounded quotient of two 64-bit numbers that are not both exact doubles.
fn divide_wide(top: u64, bottom: u64) -> f64 {
    // With its top bit at 63 and 64 bits below, the quotient has at least 65 bits: the rest only has
    // to be sticky for the one rounding in the conversion to be the correct one.
    let lift = u128::from(top.leading_zeros().min(63));
    let scaled = u128::from(top).wrapping_shl(lift as u32) << 64;
    let bottom = u128::from(bottom);
    let quotient = scaled.checked_div(bottom).unwrap_or(0);
    let sticky = u128::from(scaled.checked_rem(bottom).unwrap_or(0) != 0);
    let power = f64::from_bits(959_u64.wrapping_sub(lift as u64) << 52); // 2^-(64 + lift)
    (quotient | sticky) as f64 * power
}
