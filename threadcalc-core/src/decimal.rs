//! Numbers with a fixed count of decimals.

use core::fmt;

use crate::error::Error;
use crate::length::{Length, power_of_ten, str_from};
use crate::text::digits;

/// A number with a fixed count of decimals: `units / 10^decimals`.
///
/// Displayed with exactly its decimals: `6.800`.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Decimal {
    units: i64,
    decimals: u8,
}

impl Decimal {
    /// `units / 10^decimals`.
    ///
    /// # Errors
    /// [`OutOfRange`](crate::Code::OutOfRange) above 9 decimals.
    pub fn new(units: i64, decimals: u8) -> Result<Self, Error> {
        power_of_ten(decimals)?;
        Ok(Self { units, decimals })
    }

    /// All digits as one whole number.
    #[must_use]
    pub const fn units(self) -> i64 {
        self.units
    }

    /// How many of the digits stand behind the point.
    #[must_use]
    pub const fn decimals(self) -> u8 {
        self.decimals
    }

    /// The same number without zeros at the end of its decimals.
    pub(crate) const fn without_zeros(self) -> Self {
        // Of a number with a sign every division would cost more.
        let (mut units, mut decimals) = (self.units.unsigned_abs(), self.decimals);
        while decimals > 0 && units % 10 == 0 {
            (units, decimals) = (units / 10, decimals.saturating_sub(1));
        }
        let units = units as i64;
        Self { units: if self.units < 0 { units.wrapping_neg() } else { units }, decimals }
    }

    /// The exact value.
    ///
    /// # Errors
    /// [`Overflow`](crate::Code::Overflow) only for the one number that has no negative.
    #[inline(never)]
    pub fn to_length(self) -> Result<Length, Error> {
        if self.units == i64::MIN {
            return Length::new(self.units, power_of_ten(self.decimals)?);
        }
        let decimals = u32::from(self.decimals);
        Ok(Length::decimal_parts(self.units, decimals, decimals))
    }
}

impl fmt::Display for Decimal {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let mut buffer = [0; 32];
        if self.units < 0 {
            f.write_str("-")?;
        }
        let start = digits(&mut buffer, self.units.unsigned_abs(), self.decimals, self.decimals > 0);
        f.write_str(str_from(&buffer, start))
    }
}
