//! Exact rational numbers: lengths, speeds, feeds and errors of them.

mod divisor;
mod double;
mod text;

use core::cmp::Ordering;
use core::num::NonZeroI64;

pub use crate::decimal::Decimal;
use crate::error::{Code, Error, Field};
pub(crate) use divisor::divide;
use divisor::{Factor, gcd64, gcd128};
pub(crate) use text::str_from;

/// An exact rational number: a length in millimetres, unless a name says otherwise.
///
/// Numerator and denominator are 64-bit, the denominator is positive and the fraction is in lowest
/// terms, so equality and hash are on the value. Every operation is checked: a result that does not
/// fit is [`Code::Overflow`], never a wrapped or rounded number.
///
/// ```
/// use threadcalc_core::Length;
///
/// let pitch = Length::new(254, 140)?; // 25.4 mm / 14
/// assert_eq!((pitch.numerator(), pitch.denominator()), (127, 70));
/// assert_eq!(pitch.times(Length::integer(500))?.to_string(), "6350/7");
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
#[derive(Clone, Copy, PartialEq, Eq, Hash)]
pub struct Length {
    numerator: i64,
    // Never 0, so that "none" needs no room of its own.
    denominator: NonZeroI64,
}

/// The same exact rational where it is no length: a speed in rpm, a relative error.
pub type Ratio = Length;

/// How an exact value is brought to a number of decimals.
///
/// | mode | 0.25 | 0.35 | 0.251 | −0.25 | −0.251 |
/// |---|---|---|---|---|---|
/// | `HalfEven` | 0.2 | 0.4 | 0.3 | −0.2 | −0.3 |
/// | `Down` | 0.2 | 0.3 | 0.2 | −0.3 | −0.3 |
/// | `Up` | 0.3 | 0.4 | 0.3 | −0.2 | −0.2 |
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Rounding {
    /// To the nearest, ties to the even digit.
    HalfEven,
    /// Towards minus infinity.
    Down,
    /// Towards plus infinity.
    Up,
}

/// The most decimals an exact decimal text may have.
pub const MOST_DECIMALS: u8 = 9;

/// 10^0 to 10^9.
const POWERS: [i64; 10] = [1, 10, 100, 1_000, 10_000, 100_000, 1_000_000, 10_000_000, 100_000_000, 1_000_000_000];

/// 5^0 to 5^9.
const POWERS_OF_FIVE: [i64; 10] = [1, 5, 25, 125, 625, 3_125, 15_625, 78_125, 390_625, 1_953_125];

/// Parts of one that the usual exact numbers are whole numbers of.
const PICOMETRES: u32 = 1_000_000_000;

pub(crate) fn power_of_ten(decimals: u8) -> Result<i64, Error> {
    POWERS
        .get(usize::from(decimals))
        .copied()
        .ok_or(Error::new(Code::OutOfRange, Field::Decimals).got(decimals as f64).within(0.0, MOST_DECIMALS as f64))
}

const ONE: NonZeroI64 = match NonZeroI64::new(1) {
    Some(one) => one,
    None => NonZeroI64::MAX,
};

const FIVE: Factor = Factor::of(5);
const FIVES: Factor = Factor::of(625);

const OVERFLOW: Error = Error::new(Code::Overflow, Field::Length);

/// Product of two 64-bit numbers: always fits in 128 bits.
const fn wide(a: i64, b: i64) -> i128 {
    (a as i128).wrapping_mul(b as i128)
}

impl Length {
    /// Zero.
    pub const ZERO: Self = Self::integer(0);
    /// One.
    pub const ONE: Self = Self::integer(1);
    /// One inch, exactly 25.4 mm.
    pub const INCH: Self = Self::parts(127, 5);

    /// `numerator / denominator`, brought to lowest terms.
    ///
    /// # Errors
    /// [`Code::OutOfRange`] if the denominator is 0, [`Code::Overflow`] if the fraction does not fit.
    pub fn new(numerator: i64, denominator: i64) -> Result<Self, Error> {
        Self::from_products((numerator, 1), (denominator, 1))
    }

    /// `whole + part / power`, both 0 or more; only the reduced fraction has to fit.
    pub(crate) fn with_decimals(whole: i64, part: i64, power: i64) -> Result<Self, Error> {
        let units = wide(whole, power).checked_add(i128::from(part)).ok_or(OVERFLOW)?;
        Self::from_wide(units, i128::from(power))
    }

    /// A whole number.
    #[must_use]
    pub const fn integer(value: i64) -> Self {
        // i64::MIN has no negative; it stands for the nearest number that has one.
        let numerator = if value == i64::MIN { i64::MIN.wrapping_add(1) } else { value };
        Self { numerator, denominator: ONE }
    }

    /// `count` parts of `1 / parts`, for tables; `parts` is positive.
    pub(crate) const fn parts(count: u32, parts: u32) -> Self {
        let divisor = match gcd64(count as u64, parts as u64) {
            0 => 1,
            divisor => divisor,
        };
        let (numerator, denominator) = ((count as u64).checked_div(divisor), (parts as u64).checked_div(divisor));
        match (numerator, denominator) {
            (Some(numerator), Some(denominator)) => Self::of_parts(numerator as i64, denominator as i64),
            _ => Self::ZERO,
        }
    }

    /// `units / (2^twos × 5^fives)`, at most 9 of each: a decimal needs no search for a common divisor.
    #[inline(never)]
    pub(crate) fn decimal_parts(units: i64, twos: u32, fives: u32) -> Self {
        let shared = units.trailing_zeros().min(twos);
        let (mut numerator, mut fives) = (units.wrapping_shr(shared), fives);
        for (factor, count) in [(&FIVES, 4), (&FIVE, 1)] {
            while fives >= count {
                let Some(part) = factor.out_of(numerator) else { break };
                (numerator, fives) = (part, fives.wrapping_sub(count));
            }
        }
        let fives = POWERS_OF_FIVE.get(fives as usize).copied().unwrap_or(0);
        Self::of_parts(numerator, fives.wrapping_shl(twos.wrapping_sub(shared)))
    }

    /// A product over a product: nearly all fit 64 bits, where everything costs a fraction.
    #[inline]
    fn from_products(top: (i64, i64), bottom: (i64, i64)) -> Result<Self, Error> {
        match (top.0.checked_mul(top.1), bottom.0.checked_mul(bottom.1)) {
            (Some(top), Some(bottom)) if bottom != 0 => Self::from_parts(top, bottom),
            _ => Self::from_wide(wide(top.0, top.1), wide(bottom.0, bottom.1)),
        }
    }

    #[inline(never)]
    fn from_wide(numerator: i128, denominator: i128) -> Result<Self, Error> {
        if denominator == 0 {
            return Err(Error::new(Code::OutOfRange, Field::Length).hint_text("a denominator cannot be 0"));
        }
        let (top, bottom) = (numerator.unsigned_abs(), denominator.unsigned_abs());
        let negative = (numerator < 0) != (denominator < 0);
        if let (Ok(top), Ok(bottom)) = (u64::try_from(top), u64::try_from(bottom)) {
            return Self::from_magnitudes(top, bottom, negative);
        }
        let divisor = gcd128(top, bottom);
        let lowest = |value: u128| value.checked_div(divisor).and_then(|part| u64::try_from(part).ok()).ok_or(OVERFLOW);
        Self::of_lowest(lowest(top)?, lowest(bottom)?, negative)
    }

    /// The same of parts that fit, where the denominator is not 0.
    fn from_parts(numerator: i64, denominator: i64) -> Result<Self, Error> {
        let negative = (numerator < 0) != (denominator < 0);
        Self::from_magnitudes(numerator.unsigned_abs(), denominator.unsigned_abs(), negative)
    }

    /// `top / bottom`, where `bottom` is not 0.
    fn from_magnitudes(top: u64, bottom: u64, negative: bool) -> Result<Self, Error> {
        let divisor = gcd64(top, bottom);
        if divisor == 1 {
            return Self::of_lowest(top, bottom, negative);
        }
        let lowest = |value: u64| value.checked_div(divisor).ok_or(OVERFLOW);
        Self::of_lowest(lowest(top)?, lowest(bottom)?, negative)
    }

    /// Parts in lowest terms; 0 where a caller broke the rule that the denominator is positive.
    const fn of_parts(numerator: i64, denominator: i64) -> Self {
        match NonZeroI64::new(denominator) {
            Some(denominator) => Self { numerator, denominator },
            None => Self::ZERO,
        }
    }

    fn of_lowest(top: u64, bottom: u64, negative: bool) -> Result<Self, Error> {
        let (Ok(top), Ok(denominator)) = (i64::try_from(top), i64::try_from(bottom)) else { return Err(OVERFLOW) };
        Ok(Self::of_parts(if negative { top.wrapping_neg() } else { top }, denominator))
    }

    /// Numerator, in lowest terms; carries the sign.
    #[must_use]
    pub const fn numerator(self) -> i64 {
        self.numerator
    }

    /// Denominator, in lowest terms; positive.
    #[must_use]
    pub const fn denominator(self) -> i64 {
        self.denominator.get()
    }

    /// True below 0.
    #[must_use]
    pub const fn is_negative(self) -> bool {
        self.numerator < 0
    }

    /// True above 0.
    #[must_use]
    pub const fn is_positive(self) -> bool {
        self.numerator > 0
    }

    /// The whole number this is, if it is one.
    #[must_use]
    pub const fn whole(self) -> Option<i64> {
        if self.denominator() == 1 { Some(self.numerator) } else { None }
    }

    /// As a whole number of 1e-9, if it is one: of millimetres, picometres.
    pub(crate) fn picometres(self) -> Option<i64> {
        let bottom = u32::try_from(self.denominator()).ok()?;
        if PICOMETRES.checked_rem(bottom)? != 0 {
            return None;
        }
        self.numerator.checked_mul(i64::from(PICOMETRES.checked_div(bottom)?))
    }

    /// Rounded to a whole number of 1e-9; beyond 64 bits the largest of its sign.
    pub(crate) fn picometres_to(self, rounding: Rounding) -> i64 {
        if let Some(whole) = self.picometres() {
            return whole;
        }
        let beyond = if self.numerator < 0 { i64::MIN } else { i64::MAX };
        let rounded = divide(wide(self.numerator, i64::from(PICOMETRES)), i128::from(self.denominator()), rounding);
        rounded.and_then(|rounded| i64::try_from(rounded).ok()).unwrap_or(beyond)
    }

    /// How far a number of picometres is from this, in parts of picometres that are the same for every number.
    pub(crate) fn away(self, picometres: i64) -> u128 {
        wide(picometres, self.denominator()).abs_diff(wide(self.numerator, i64::from(PICOMETRES)))
    }

    /// Sum.
    ///
    /// # Errors
    /// [`Code::Overflow`] if it does not fit.
    pub fn plus(self, other: Self) -> Result<Self, Error> {
        if other.numerator == 0 {
            return Ok(self);
        }
        // Beside a whole number the other keeps its denominator, and the sum is in lowest terms.
        let is_whole = self.denominator() == 1 || other.denominator() == 1;
        // Decimals of many places need no search for a common divisor; of few, the search is short.
        if !is_whole && self.denominator().max(other.denominator()) > 100 {
            if let (Some(left), Some(right)) = (self.picometres(), other.picometres()) {
                if let Some(sum) = left.checked_add(right) {
                    return Ok(Self::decimal_parts(sum, 9, 9));
                }
            }
        }
        match self.sum_over(other) {
            Some((sum, bottom)) if is_whole => Self::of_lowest(sum.unsigned_abs(), bottom.unsigned_abs(), sum < 0),
            Some((sum, bottom)) => Self::from_parts(sum, bottom),
            None => {
                let left = wide(self.numerator, other.denominator());
                let sum = left.checked_add(wide(other.numerator, self.denominator())).ok_or(OVERFLOW)?;
                Self::from_wide(sum, wide(self.denominator(), other.denominator()))
            }
        }
    }

    /// The sum over one denominator, where both fit 64 bits.
    fn sum_over(self, other: Self) -> Option<(i64, i64)> {
        if self.denominator() == other.denominator() {
            return Some((self.numerator.checked_add(other.numerator)?, self.denominator()));
        }
        let left = self.numerator.checked_mul(other.denominator())?;
        let right = other.numerator.checked_mul(self.denominator())?;
        Some((left.checked_add(right)?, self.denominator().checked_mul(other.denominator())?))
    }

    /// Difference.
    ///
    /// # Errors
    /// [`Code::Overflow`] if it does not fit.
    pub fn minus(self, other: Self) -> Result<Self, Error> {
        self.plus(other.negative())
    }

    /// Product.
    ///
    /// # Errors
    /// [`Code::Overflow`] if it does not fit.
    #[inline(never)]
    pub fn times(self, other: Self) -> Result<Self, Error> {
        if other == Self::ONE {
            return Ok(self);
        }
        if self.numerator == 0 || other.numerator == 0 {
            return Ok(Self::ZERO);
        }
        if other.denominator() == 1 {
            return self.times_whole(other.numerator);
        }
        Self::from_products((self.numerator, other.numerator), (self.denominator(), other.denominator()))
    }

    /// With a whole number only that and the denominator can have a common divisor, which is found fast: both are small.
    fn times_whole(self, whole: i64) -> Result<Self, Error> {
        let bottom = self.denominator();
        let shared = gcd64(whole.unsigned_abs(), bottom.unsigned_abs()) as i64;
        let (factor, bottom) = (whole.checked_div(shared), bottom.checked_div(shared));
        match (factor.and_then(|factor| self.numerator.checked_mul(factor)), bottom) {
            (Some(top), Some(bottom)) if top != i64::MIN => Ok(Self::of_parts(top, bottom)),
            _ => Err(OVERFLOW),
        }
    }

    /// Quotient.
    ///
    /// # Errors
    /// [`Code::OutOfRange`] if `other` is 0, [`Code::Overflow`] if the quotient does not fit.
    #[inline(never)]
    pub fn over(self, other: Self) -> Result<Self, Error> {
        if other == Self::ONE {
            return Ok(self);
        }
        Self::from_products((self.numerator, other.denominator()), (self.denominator(), other.numerator))
    }

    /// The number with the other sign.
    #[must_use]
    pub const fn negative(self) -> Self {
        Self { numerator: self.numerator.wrapping_neg(), denominator: self.denominator }
    }

    /// The number without its sign.
    #[must_use]
    pub const fn magnitude(self) -> Self {
        if self.numerator < 0 { self.negative() } else { self }
    }

    /// The value at a number of decimals.
    ///
    /// # Errors
    /// [`Code::OutOfRange`] above 9 decimals, [`Code::Overflow`] if the digits do not fit.
    #[inline(never)]
    pub fn round_to(self, decimals: u8, rounding: Rounding) -> Result<Decimal, Error> {
        let power = power_of_ten(decimals)?;
        if let Some(units) = self.whole().and_then(|whole| whole.checked_mul(power)) {
            return Decimal::new(units, decimals);
        }
        let top = wide(self.numerator, power);
        let units = divide(top, i128::from(self.denominator()), rounding).ok_or(OVERFLOW)?;
        Decimal::new(i64::try_from(units).map_err(|_| OVERFLOW)?, decimals)
    }

    /// The largest multiple of `step` that is not above this value.
    ///
    /// # Errors
    /// [`Code::OutOfRange`] if `step` is 0, [`Code::Overflow`] if the result does not fit.
    pub fn down_to_multiple(self, step: Self) -> Result<Self, Error> {
        // The multiples of a negative step are those of its magnitude.
        let step = step.magnitude();
        if let (Some(whole), Some(step)) = (self.whole(), step.whole()) {
            if let Some(rest) = whole.checked_rem_euclid(step) {
                return whole.checked_sub(rest).map(Self::integer).ok_or(OVERFLOW);
            }
        }
        let steps = self.over(step)?.round_to(0, Rounding::Down)?;
        steps.to_length()?.times(step)
    }
}

impl Length {
    /// Whether this is more than `top / bottom` of `other`, both small, without making that part.
    /// Beyond 125 bits the products are held at their limit and count as equal.
    pub(crate) fn is_more_than(self, (top, bottom): (i32, i32), other: Self) -> bool {
        let own = wide(self.numerator, other.denominator()).saturating_mul(i128::from(bottom));
        own > wide(other.numerator, self.denominator()).saturating_mul(i128::from(top))
    }
}

impl PartialOrd for Length {
    fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
        Some(self.cmp(other))
    }
}

impl Ord for Length {
    fn cmp(&self, other: &Self) -> Ordering {
        wide(self.numerator, other.denominator()).cmp(&wide(other.numerator, self.denominator()))
    }
}
