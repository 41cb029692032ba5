//! ASME B1.1-2003 minor diameter of internal threads, by the standard's rule in whole numbers.
//!
//! Diameter to 4 places, pitch to 8, 2 h_n to 6, minor diameter and its tolerance to 4, ties to the even digit;
//! 1B and 2B from 0.138 in up are given to 3 places, the smallest 3B diameter likewise. Half to even
//! is what reproduces the printed tables; the standard does not spell it out.

use super::{Confidence, Limits};
use crate::Unit;
use crate::error::{Code, Error, Field};
use crate::length::{Length, Rounding, divide};
use crate::thread::Thread;

const OVERFLOW: Error = Error::new(Code::Overflow, Field::Diameter);

pub(super) fn limits(thread: &Thread, class: &str) -> Result<Limits, Error> {
    let diameter = thread.major_mm().over(Length::INCH)?;
    let diameter_e4 = scaled(diameter, 10_000)?;
    let pitch_e8 = scaled(thread.pitch_mm().over(Length::INCH)?, 100_000_000)?;
    let basic_e4 = diameter_less(diameter_e4, 108_253_175, pitch_e8)?;
    let tolerance_e4 = match class {
        "3B" => tolerance_3b(thread, diameter, pitch_e8)?,
        _ => tolerance_2b(thread, diameter, pitch_e8)?,
    };
    let largest_e4 = basic_e4.checked_add(tolerance_e4).ok_or(OVERFLOW)?;
    let three_places = diameter_e4 >= 1_380;
    let to_three = |e4: i128| divide(e4, 10, Rounding::HalfEven).and_then(|e3| e3.checked_mul(10)).ok_or(OVERFLOW);
    let low = if three_places { to_three(basic_e4)? } else { basic_e4 };
    let high = if three_places && class != "3B" { to_three(largest_e4)? } else { largest_e4 };
    if low >= high {
        // Far finer than any thread of the standard, the tolerance is less than the places it is given to.
        return Err(Error::new(Code::NotSourced, Field::Pitch)
            .got(thread.pitch_mm().to_f64())
            .hint_text("the standard's rule leaves no tolerance at so fine a pitch"));
    }
    Ok(Limits {
        major_mm: (Some(thread.major_mm()), None),
        pitch_diameter_mm: (Some(inches(diameter_less(diameter_e4, 64_951_905, pitch_e8)?)?), None),
        minor_mm: (Some(inches(low)?), Some(inches(high)?)),
        native_unit: Unit::Inch,
        decimals: if three_places && class != "3B" { 3 } else { 4 },
        source: "ASME B1.1-2003, minor diameter of internal threads",
        confidence: Confidence::Rule,
    })
}

/// 1B and 2B: T_D1 in 1/10000 in.
fn tolerance_2b(thread: &Thread, diameter: Length, pitch_e8: i128) -> Result<i128, Error> {
    // 0.25 P − 0.4 P², in 1e-18 like all that follows.
    let flat = quarter_rule(pitch_e8, 25, 40)?;
    if is_below_quarter_inch(diameter) {
        // 0.05 P^(2/3) + 0.03 P/D − 0.002, between 0.25 P − 0.4 P² and 0.394 P.
        let sloped = sloped_rule(diameter, pitch_e8)?;
        let most = times(pitch_e8, 3_940_000_000)?;
        return to_e4(sloped.min(most).max(flat));
    }
    let coarser_than_four = thread.pitch_mm() > Length::new(127, 20)?;
    to_e4(if coarser_than_four { times(pitch_e8, 1_500_000_000)? } else { flat })
}

/// 3B: T_D1 in 1/10000 in.
fn tolerance_3b(thread: &Thread, diameter: Length, pitch_e8: i128) -> Result<i128, Error> {
    let sloped = sloped_rule(diameter, pitch_e8)?;
    let most = times(pitch_e8, 3_940_000_000)?;
    // 0.23 P − 1.5 P² for 13 threads per inch and finer, 0.12 P for 12 and coarser.
    let finer = thread.pitch_mm() <= Length::new(127, 65)?;
    let least = if finer { quarter_rule(pitch_e8, 23, 150)? } else { times(pitch_e8, 1_200_000_000)? };
    to_e4(sloped.min(most).max(least))
}

fn is_below_quarter_inch(diameter: Length) -> bool {
    diameter < Length::parts(1, 4)
}

/// `linear/100 P − square/100 P²` in 1e-18.
fn quarter_rule(pitch_e8: i128, linear: i128, square: i128) -> Result<i128, Error> {
    let first = times(pitch_e8, times(linear, 100_000_000)?)?;
    let second = times(times(pitch_e8, pitch_e8)?, square)?;
    first.checked_sub(second).ok_or(OVERFLOW)
}

/// `0.05 P^(2/3) + 0.03 P/D − 0.002` in 1e-18.
fn sloped_rule(diameter: Length, pitch_e8: i128) -> Result<i128, Error> {
    // P² in 1e-16, times 1e20, has its cube root in 1e-12.
    let square = times(pitch_e8, pitch_e8)?;
    let root_e12 = cube_root(times(square, 100_000_000_000_000_000_000)?);
    let first = times(root_e12, 50_000)?;
    let over = times(times(pitch_e8, 300_000_000)?, i128::from(diameter.denominator()))?;
    let second = over.checked_div(i128::from(diameter.numerator())).ok_or(OVERFLOW)?;
    first.checked_add(second).and_then(|sum| sum.checked_sub(2_000_000_000_000_000)).ok_or(OVERFLOW)
}

fn times(a: i128, b: i128) -> Result<i128, Error> {
    a.checked_mul(b).ok_or(OVERFLOW)
}

fn to_e4(value_e18: i128) -> Result<i128, Error> {
    divide(value_e18, 100_000_000_000_000, Rounding::HalfEven).ok_or(OVERFLOW)
}

fn scaled(value: Length, parts: i128) -> Result<i128, Error> {
    let top = times(i128::from(value.numerator()), parts)?;
    divide(top, i128::from(value.denominator()), Rounding::HalfEven).ok_or(OVERFLOW)
}

/// Diameter less `factor_e8 × P` (that product to 6 places), to 4 places, in 1/10000 in.
fn diameter_less(diameter_e4: i128, factor_e8: i128, pitch_e8: i128) -> Result<i128, Error> {
    let depth_e6 = divide(times(factor_e8, pitch_e8)?, 10_000_000_000, Rounding::HalfEven).ok_or(OVERFLOW)?;
    let less_e6 = times(diameter_e4, 100)?.checked_sub(depth_e6).ok_or(OVERFLOW)?;
    divide(less_e6, 100, Rounding::HalfEven).ok_or(OVERFLOW)
}

fn inches(e4: i128) -> Result<Length, Error> {
    let e4 = i64::try_from(e4).map_err(|_| OVERFLOW)?;
    Length::new(e4, 10_000)?.times(Length::INCH)
}

/// The whole cube root, rounded down, of a number below 2^126.
fn cube_root(value: i128) -> i128 {
    let cube = |root: i128| root.checked_mul(root).and_then(|square| square.checked_mul(root));
    (0..42_u32).rev().fold(0_i128, |root, bit| {
        let tried = root | (1_i128 << bit);
        if cube(tried).is_some_and(|cube| cube <= value) { tried } else { root }
    })
}
