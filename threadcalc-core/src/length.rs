//! Exact rational numbers: lengths, speeds, feeds and errors of them.

use core::cmp::Ordering;
use core::fmt;

pub use crate::decimal::Decimal;
use crate::error::{Code, Error, Field};
use crate::text::digits;

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
    denominator: i64,
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

/// Parts of one that the usual exact numbers are whole numbers of.
const PICOMETRES: u32 = 1_000_000_000;

pub(crate) fn power_of_ten(decimals: u8) -> Result<i64, Error> {
    POWERS
        .get(usize::from(decimals))
        .copied()
        .ok_or(Error::new(Code::OutOfRange, Field::Decimals).got(decimals as f64).within(0.0, MOST_DECIMALS as f64))
}

const OVERFLOW: Error = Error::new(Code::Overflow, Field::Length);

/// Product of two 64-bit numbers: always fits in 128 bits.
const fn wide(a: i64, b: i64) -> i128 {
    (a as i128).wrapping_mul(b as i128)
}

const fn gcd64(mut a: u64, mut b: u64) -> u64 {
    if a == 0 || b == 0 {
        return a | b;
    }
    let shift = (a | b).trailing_zeros();
    a >>= a.trailing_zeros();
    b >>= b.trailing_zeros();
    // Without a branch on which is the larger: nothing could foretell it.
    loop {
        let difference = a.wrapping_sub(b);
        if difference == 0 {
            return a << shift;
        }
        let smaller = if a < b { a } else { b };
        b = a.abs_diff(b) >> difference.trailing_zeros();
        a = smaller;
    }
}

fn gcd128(mut a: u128, mut b: u128) -> u128 {
    while b != 0 {
        if let (Ok(a), Ok(b)) = (u64::try_from(a), u64::try_from(b)) {
            return u128::from(gcd64(a, b));
        }
        (a, b) = (b, a.checked_rem(b).unwrap_or(0));
    }
    a
}

impl Length {
    /// Zero.
    pub const ZERO: Self = Self::integer(0);
    /// One.
    pub const ONE: Self = Self::integer(1);
    /// One inch, exactly 25.4 mm.
    pub const INCH: Self = Self { numerator: 127, denominator: 5 };

    /// `numerator / denominator`, brought to lowest terms.
    ///
    /// # Errors
    /// [`Code::OutOfRange`] if the denominator is 0, [`Code::Overflow`] if the fraction does not fit.
    pub fn new(numerator: i64, denominator: i64) -> Result<Self, Error> {
        Self::from_wide(i128::from(numerator), i128::from(denominator))
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
        Self { numerator, denominator: 1 }
    }

    /// `count` parts of `1 / parts`, for tables; `parts` is positive.
    pub(crate) const fn parts(count: u32, parts: u32) -> Self {
        let divisor = match gcd64(count as u64, parts as u64) {
            0 => 1,
            divisor => divisor,
        };
        let (numerator, denominator) = ((count as u64).checked_div(divisor), (parts as u64).checked_div(divisor));
        match (numerator, denominator) {
            (Some(numerator), Some(denominator)) if denominator > 0 => {
                Self { numerator: numerator as i64, denominator: denominator as i64 }
            }
            _ => Self::ZERO,
        }
    }

    /// `units / (2^twos × 5^fives)`, at most 9 of each: a decimal needs no search for a common divisor.
    pub(crate) fn decimal_parts(units: i64, twos: u32, fives: u32) -> Self {
        let shared = units.trailing_zeros().min(twos);
        let (mut numerator, mut fives) = (units.wrapping_shr(shared), fives);
        while fives >= 4 && numerator % 625 == 0 {
            numerator /= 625;
            fives = fives.wrapping_sub(4);
        }
        while fives > 0 && numerator % 5 == 0 {
            numerator /= 5;
            fives = fives.wrapping_sub(1);
        }
        let denominator = 5_i64.wrapping_pow(fives).wrapping_shl(twos.wrapping_sub(shared));
        Self { numerator, denominator }
    }

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

    /// `top / bottom`, where `bottom` is not 0.
    fn from_magnitudes(top: u64, bottom: u64, negative: bool) -> Result<Self, Error> {
        let divisor = gcd64(top, bottom);
        let lowest = |value: u64| value.checked_div(divisor).ok_or(OVERFLOW);
        Self::of_lowest(lowest(top)?, lowest(bottom)?, negative)
    }

    fn of_lowest(top: u64, bottom: u64, negative: bool) -> Result<Self, Error> {
        let (Ok(top), Ok(denominator)) = (i64::try_from(top), i64::try_from(bottom)) else { return Err(OVERFLOW) };
        Ok(Self { numerator: if negative { top.wrapping_neg() } else { top }, denominator })
    }

    /// Numerator, in lowest terms; carries the sign.
    #[must_use]
    pub const fn numerator(self) -> i64 {
        self.numerator
    }

    /// Denominator, in lowest terms; positive.
    #[must_use]
    pub const fn denominator(self) -> i64 {
        self.denominator
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
        if self.denominator == 1 { Some(self.numerator) } else { None }
    }

    /// As a whole number of 1e-9, if it is one: of millimetres, picometres.
    pub(crate) fn picometres(self) -> Option<i64> {
        let bottom = u32::try_from(self.denominator).ok()?;
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
        let rounded = divide(wide(self.numerator, i64::from(PICOMETRES)), i128::from(self.denominator), rounding);
        rounded.and_then(|rounded| i64::try_from(rounded).ok()).unwrap_or(beyond)
    }

    /// How far a number of picometres is from this, in parts of picometres that are the same for every number.
    pub(crate) fn away(self, picometres: i64) -> u128 {
        wide(picometres, self.denominator).abs_diff(wide(self.numerator, i64::from(PICOMETRES)))
    }

    /// Sum.
    ///
    /// # Errors
    /// [`Code::Overflow`] if it does not fit.
    pub fn plus(self, other: Self) -> Result<Self, Error> {
        // Decimals of many places need no search for a common divisor; of few, the search is short.
        if self.denominator.max(other.denominator) > 100 {
            if let (Some(left), Some(right)) = (self.picometres(), other.picometres()) {
                if let Some(sum) = left.checked_add(right) {
                    return Ok(Self::decimal_parts(sum, 9, 9));
                }
            }
        }
        let left = wide(self.numerator, other.denominator);
        let sum = left.checked_add(wide(other.numerator, self.denominator)).ok_or(OVERFLOW)?;
        Self::from_wide(sum, wide(self.denominator, other.denominator))
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
    pub fn times(self, other: Self) -> Result<Self, Error> {
        Self::from_wide(wide(self.numerator, other.numerator), wide(self.denominator, other.denominator))
    }

    /// Quotient.
    ///
    /// # Errors
    /// [`Code::OutOfRange`] if `other` is 0, [`Code::Overflow`] if the quotient does not fit.
    pub fn over(self, other: Self) -> Result<Self, Error> {
        Self::from_wide(wide(self.numerator, other.denominator), wide(self.denominator, other.numerator))
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

    /// The nearest double to the difference; no common divisor is sought for it.
    ///
    /// # Errors
    /// [`Code::Overflow`] if the difference does not fit.
    pub(crate) fn minus_to_f64(self, other: Self) -> Result<f64, Error> {
        const EXACT: u64 = 1 << 53;
        let fits = |value: &i64| value.unsigned_abs() <= EXACT;
        let bottom = self.denominator.checked_mul(other.denominator).filter(fits);
        let left = self.numerator.checked_mul(other.denominator);
        let right = other.numerator.checked_mul(self.denominator);
        let top = left.zip(right).and_then(|(left, right)| left.checked_sub(right)).filter(fits);
        match (top, bottom) {
            (Some(top), Some(bottom)) => Ok(top as f64 / bottom as f64),
            _ => Ok(self.minus(other)?.to_f64()),
        }
    }

    /// The nearest double, correctly rounded (ties to even), on every platform.
    #[must_use]
    pub fn to_f64(self) -> f64 {
        const EXACT: u64 = 1 << 53;
        let (top, bottom) = (self.numerator.unsigned_abs(), self.denominator.unsigned_abs());
        let magnitude =
            if top <= EXACT && bottom <= EXACT { top as f64 / bottom as f64 } else { divide_wide(top, bottom) };
        if self.numerator < 0 { -magnitude } else { magnitude }
    }

    /// The value at a number of decimals.
    ///
    /// # Errors
    /// [`Code::OutOfRange`] above 9 decimals, [`Code::Overflow`] if the digits do not fit.
    pub fn round_to(self, decimals: u8, rounding: Rounding) -> Result<Decimal, Error> {
        let top = wide(self.numerator, power_of_ten(decimals)?);
        let units = divide(top, i128::from(self.denominator), rounding).ok_or(OVERFLOW)?;
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

    /// The exact value that a double stands for: that of its shortest decimal text.
    ///
    /// # Errors
    /// [`Code::NotExact`] for NaN, infinity or more than 9 decimals, [`Code::Overflow`] beyond 64 bits.
    pub fn from_f64(value: f64) -> Result<Self, Error> {
        crate::number::from_f64(value)
    }
}

/// `top / bottom` for whole numbers, rounded; `None` if `bottom` is 0.
pub(crate) fn divide(top: i128, bottom: i128, rounding: Rounding) -> Option<i128> {
    let (quotient, rest) = (top.checked_div_euclid(bottom)?, top.checked_rem_euclid(bottom)?);
    let up = match rounding {
        Rounding::Down => false,
        Rounding::Up => rest != 0,
        Rounding::HalfEven => match rest.cmp(&bottom.checked_sub(rest)?) {
            Ordering::Less => false,
            Ordering::Greater => true,
            Ordering::Equal => quotient & 1 == 1,
        },
    };
    quotient.checked_add(i128::from(up))
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

impl Length {
    /// Whether this is more than `top / bottom` of `other`, both small, without making that part.
    /// Beyond 125 bits the products are held at their limit and count as equal.
    pub(crate) fn is_more_than(self, (top, bottom): (i32, i32), other: Self) -> bool {
        let own = wide(self.numerator, other.denominator).saturating_mul(i128::from(bottom));
        own > wide(other.numerator, self.denominator).saturating_mul(i128::from(top))
    }
}

impl PartialOrd for Length {
    fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
        Some(self.cmp(other))
    }
}

impl Ord for Length {
    fn cmp(&self, other: &Self) -> Ordering {
        wide(self.numerator, other.denominator).cmp(&wide(other.numerator, self.denominator))
    }
}

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
        for (separator, part) in [("", self.numerator), ("/", self.denominator)] {
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
        let mut bottom = self.denominator;
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
