//! Exact numbers as text.

use core::fmt;

use super::{Decimal, Length, MOST_DECIMALS, power_of_ten};
use crate::text::digits;

/// The exact text: a decimal where the value is one, else `numerator/denominator`.
impl fmt::Display for Length {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let mut buffer = [0; 32];
        if let Some(decimal) = self.as_decimal() {
            return fmt::Display::fmt(&decimal, f);
        }
        if self.numerator < 0 {
            f.write_str("-")?;
        }
        for (separator, part) in [("", self.numerator), ("/", self.denominator())] {
            f.write_str(separator)?;
            let start = digits(&mut buffer, part.unsigned_abs(), 0, false);
            f.write_str(str_from(&buffer, start))?;
        }
        Ok(())
    }
}

impl fmt::Debug for Length {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        fmt::Display::fmt(self, f)
    }
}

#[cfg(feature = "serde")]
impl serde::Serialize for Length {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}

impl Length {
    /// The value as a decimal with the fewest decimals, if it has one of at most 9.
    #[must_use]
    pub fn as_decimal(self) -> Option<Decimal> {
        let mut bottom = self.denominator();
        for decimals in 0..=MOST_DECIMALS {
            let power = power_of_ten(decimals).ok()?;
            if power.checked_rem(bottom)? == 0 {
                bottom = power.checked_div(bottom)?;
                return Decimal::new(self.numerator.checked_mul(bottom)?, decimals).ok();
            }
        }
        None
    }
}

pub(crate) fn str_from(buffer: &[u8; 32], start: usize) -> &str {
    buffer.get(start..).and_then(|bytes| core::str::from_utf8(bytes).ok()).unwrap_or("")
}
