//! ASME B1.1-2003, tolerance of the internal minor diameter; and the whole-number arithmetic of the rule.

use super::asme_b1_1::{OVERFLOW, Size};
use crate::error::Error;
use crate::length::{Length, Rounding, divide};
use crate::thread::Thread;

/// T_D1 in 1/10000 in.
pub(super) fn minor_tolerance(thread: &Thread, class: &str, size: &Size) -> Result<i128, Error> {
    if class == "3B" {
        // 0.23 P − 1.5 P² for 13 threads per inch and finer, 0.12 P for 12 and coarser.
        let finer = thread.pitch_mm() <= const { Length::parts(127, 65) };
        let least = if finer { quarter_rule(size, 23, 150)? } else { times(size.pitch_e8, 1_200_000_000)? };
        return to_e4(sloped_rule(thread, size)?.max(least));
    }
    let flat = quarter_rule(size, 25, 40)?;
    let below_a_quarter = thread.major_mm() < const { Length::parts(127, 20) };
    if below_a_quarter {
        return to_e4(sloped_rule(thread, size)?.max(flat));
    }
    let coarser_than_four = thread.pitch_mm() > const { Length::parts(127, 20) };
    to_e4(if coarser_than_four { times(size.pitch_e8, 1_500_000_000)? } else { flat })
}

/// `linear/100 P − square/100 P²` in 1e-18.
fn quarter_rule(size: &Size, linear: i128, square: i128) -> Result<i128, Error> {
    let first = times(size.pitch_e8, times(linear, 100_000_000)?)?;
    let second = times(times(size.pitch_e8, size.pitch_e8)?, square)?;
    first.checked_sub(second).ok_or(OVERFLOW)
}

/// `0.05 P^(2/3) + 0.03 P/D − 0.002`, not more than `0.394 P`, in 1e-18.
fn sloped_rule(thread: &Thread, size: &Size) -> Result<i128, Error> {
    let diameter = thread.major_mm().over(Length::INCH)?;
    let first = times(size.pitch_power_e12, 50_000)?;
    let over = times(times(size.pitch_e8, 300_000_000)?, i128::from(diameter.denominator()))?;
    let second = over.checked_div(i128::from(diameter.numerator())).ok_or(OVERFLOW)?;
    let sum = first.checked_add(second).and_then(|sum| sum.checked_sub(2_000_000_000_000_000)).ok_or(OVERFLOW)?;
    Ok(sum.min(times(size.pitch_e8, 3_940_000_000)?))
}

fn to_e4(value_e18: i128) -> Result<i128, Error> {
    divided(value_e18, 100_000_000_000_000)
}

pub(super) fn times(a: i128, b: i128) -> Result<i128, Error> {
    // Nearly every factor fits 64 bits, where the product cannot overflow.
    if let (Ok(a), Ok(b)) = (i64::try_from(a), i64::try_from(b)) {
        return Ok(i128::from(a).wrapping_mul(i128::from(b)));
    }
    a.checked_mul(b).ok_or(OVERFLOW)
}

/// A quotient to the nearest whole number, ties to the even one.
pub(super) fn divided(top: i128, bottom: i128) -> Result<i128, Error> {
    divide(top, bottom, Rounding::HalfEven).ok_or(OVERFLOW)
}

/// A length in `1/parts` inches, rounded half to even.
pub(super) fn inch_parts(length: Length, parts: i128) -> Result<i128, Error> {
    let top = times(times(i128::from(length.numerator()), 5)?, parts)?;
    divided(top, times(i128::from(length.denominator()), 127)?)
}

/// The whole cube root, rounded down, of a number from 0.
pub(super) fn cube_root(value: i128) -> i128 {
    root_of(value, libm::cbrt(value as f64), 3)
}

/// The whole square root, rounded down, of a number from 0.
pub(super) fn square_root(value: i128) -> i128 {
    root_of(value, libm::sqrt(value as f64), 2)
}

/// The largest whole number whose power is not above `value`. The double only says where to begin to
/// look; whole numbers decide.
#[inline(never)]
fn root_of(value: i128, near: f64, degree: u32) -> i128 {
    let (value, mut root) = (value.max(0).unsigned_abs(), near as u64);
    while root > 0 && is_power_above(root, degree, value) {
        root = root.wrapping_sub(1);
    }
    while !is_power_above(root.wrapping_add(1), degree, value) {
        root = root.wrapping_add(1);
    }
    i128::from(root)
}

/// Whether the second or third power is above a number of 127 bits; that of its root, and of the next whole
/// number, has at most 128. Out of line: of the loops the compiler makes long ones with much stack.
#[inline(never)]
fn is_power_above(root: u64, degree: u32, value: u128) -> bool {
    let square = u128::from(root).wrapping_mul(u128::from(root));
    let power = if degree == 2 { square } else { square.wrapping_mul(u128::from(root)) };
    power > value
}

#[cfg(test)]
mod tests {
    use super::{cube_root, divide, divided, square_root};
    use crate::length::Rounding;

    #[test]
    fn short_and_long_divisions_agree() {
        const LONG: i128 = 10_000_000_000_000_000_000;
        for bottom in 1..=12 {
            for top in -60..=60 {
                let exact = divide(top, bottom, Rounding::HalfEven);
                assert_eq!(divided(top, bottom).ok(), exact, "{top} / {bottom}");
                assert_eq!(divided(top * LONG, bottom * LONG).ok(), exact, "{top} / {bottom}, long");
            }
        }
        assert!(divided(1, 0).is_err() && divided(i128::MAX, 0).is_err());
    }

    #[test]
    fn roots_are_the_largest_whole_numbers_below() {
        for root in [1, 2, 3, 999, 1_000_000_007, 400_000_000_001, 5_540_000_000_000] {
            assert_eq!([-1, 0].map(|off| cube_root(root * root * root + off)), [root - 1, root]);
            let root = root * 1_000;
            assert_eq!([-1, 0].map(|off| square_root(root * root + off)), [root - 1, root]);
        }
        assert_eq!((cube_root(0), square_root(0), square_root(3)), (0, 0, 1));
    }
}
