//! Exact numbers as text.

use core::fmt;

use super::{Decimal, Length, power_of_ten};
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
    #[inline(never)]
    pub fn as_decimal(self) -> Option<Decimal> {
        // A power of ten is a multiple of 2^a 5^b as soon as it is the a-th and the b-th.
        let bottom = self.denominator();
        let twos = bottom.trailing_zeros();
        let (mut rest, mut fives) = (bottom.wrapping_shr(twos), 0_u32);
        while rest % 5 == 0 {
            rest /= 5;
            fives = fives.saturating_add(1);
        }
        let decimals = u8::try_from(twos.max(fives)).ok().filter(|_| rest == 1)?;
        let factor = power_of_ten(decimals).ok()?.checked_div(bottom)?;
        Decimal::new(self.numerator.checked_mul(factor)?, decimals).ok()
    }
}

pub(crate) fn str_from(buffer: &[u8; 32], start: usize) -> &str {
    buffer.get(start..).and_then(|bytes| core::str::from_utf8(bytes).ok()).unwrap_or("")
}
