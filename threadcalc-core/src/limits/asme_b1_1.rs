//! ASME B1.1-2003 limits of size of UN threads, by the standard's rule in whole numbers.
//!
//! Diameter to 4 places of an inch, pitch to 8, depths and tolerances of major and pitch diameter to 6,
//! allowance and minor diameter with its tolerance to 4, ties to the even digit; 1B and 2B minor
//! diameters from 0.138 in up are given to 3 places, the smallest 3B one likewise. Half to even is what
//! reproduces the printed tables; the standard does not spell it out.

use super::asme_b1_1_minor::{cube_root, divided, inch_parts, minor_tolerance, square_root, times};
use super::asme_b1_1_printed::{Asked, Printed};
use super::{Confidence, Limits};
use crate::Unit;
use crate::error::{Code, Error, Field};
use crate::length::Length;
use crate::series::Series;
use crate::thread::Thread;

pub(super) const OVERFLOW: Error = Error::new(Code::Overflow, Field::Diameter);

/// 3/4 H, 5/4 H and, for the rounded root of UNR, 11/8 H of a 60° thread in 1e-8 pitches.
const PITCH_DEPTH_E8: i128 = 64_951_905;
const MINOR_DEPTH_E8: i128 = 108_253_175;
const ROUNDED_DEPTH_E8: i128 = 119_078_493;

/// The sizes that everything is made of.
pub(super) struct Size {
    pub diameter_e4: i128,
    pub diameter_e8: i128,
    pub pitch_e8: i128,
    /// P^(2/3) in 1e-12.
    pub pitch_power_e12: i128,
}

impl Size {
    fn of(thread: &Thread) -> Result<Self, Error> {
        let pitch_e8 = inch_parts(thread.pitch_mm(), 100_000_000)?;
        // P² in 1e-16, times 1e20, has its cube root in 1e-12.
        let square_e36 = times(times(pitch_e8, pitch_e8)?, 100_000_000_000_000_000_000)?;
        Ok(Self {
            diameter_e4: inch_parts(thread.major_mm(), 10_000)?,
            diameter_e8: inch_parts(thread.major_mm(), 100_000_000)?,
            pitch_e8,
            pitch_power_e12: cube_root(square_e36),
        })
    }

    /// The length of engagement that the standard's tables are made for, in 1e-8 in: the diameter in the series
    /// with graded and with the coarsest pitches, nine pitches in the others.
    fn usual_engagement_e8(&self, thread: &Thread) -> Result<i128, Error> {
        if is_for_a_diameter(thread) { Ok(self.diameter_e8) } else { times(self.pitch_e8, 9) }
    }

    /// T_d2 of class 2A, 0.0015 D^(1/3) + 0.0015 √LE + 0.015 P^(2/3), in 1e-16 in.
    #[inline(never)]
    fn pitch_tolerance_e16(&self, engaged_e8: i128) -> Result<i128, Error> {
        let of_diameter_e12 = cube_root(times(self.diameter_e8, 10_000_000_000_000_000_000_000_000_000)?);
        let of_length_e12 = square_root(times(engaged_e8, 10_000_000_000_000_000)?);
        let short_e16 = times(of_diameter_e12.checked_add(of_length_e12).ok_or(OVERFLOW)?, 15)?;
        short_e16.checked_add(times(self.pitch_power_e12, 150)?).ok_or(OVERFLOW)
    }

    /// A diameter in 1e-4 in less a depth in pitches, which is held to 6 places.
    #[inline(never)]
    fn less_depth(&self, diameter_e4: i128, depth_e8: i128) -> Result<i128, Error> {
        less_e6(diameter_e4, divided(times(depth_e8, self.pitch_e8)?, 10_000_000_000)?)
    }
}

/// Whether the tables are for an engagement of one diameter, not of nine pitches.
fn is_for_a_diameter(thread: &Thread) -> bool {
    matches!(thread.series(), Some(Series::Unc | Series::Unf | Series::Un4 | Series::Un6 | Series::Un8))
}

/// Whether the tables hold for a length, and whether it is theirs: up to 1.5 diameters, or 5 to 15 pitches.
fn is_usual(thread: &Thread, engaged_mm: Length) -> Result<(bool, bool), Error> {
    if is_for_a_diameter(thread) {
        let diameters = engaged_mm.over(thread.major_mm())?;
        return Ok((diameters <= const { Length::parts(3, 2) }, diameters == Length::ONE));
    }
    let pitches = engaged_mm.over(thread.pitch_mm())?;
    let holds = Length::integer(5) <= pitches && pitches <= Length::integer(15);
    Ok((holds, pitches == Length::integer(9)))
}

/// `diameter − tolerance`, with the tolerance in 1e-6 in, to 4 places.
#[inline(never)]
fn less_e6(diameter_e4: i128, tolerance_e6: i128) -> Result<i128, Error> {
    divided(times(diameter_e4, 100)?.checked_sub(tolerance_e6).ok_or(OVERFLOW)?, 100)
}

/// Tolerance of the pitch diameter in thousandths of that of 2A.
fn class_factor(class: &str) -> i128 {
    match class {
        "1A" => 1_500,
        "2A" => 1_000,
        "3A" => 750,
        "1B" => 1_950,
        "2B" => 1_300,
        _ => 975,
    }
}

#[inline(never)]
pub(super) fn limits(thread: &Thread, class: &str) -> Result<Limits, Error> {
    let size = Size::of(thread)?;
    let tolerance_2a_e16 = size.pitch_tolerance_e16(size.usual_engagement_e8(thread)?)?;
    of_class(Asked { thread, diameter_e4: size.diameter_e4, class, at_usual_length: true }, &size, tolerance_2a_e16)
}

/// The limits where this much engages: the tolerance of the pitch diameter counts with it, and nothing else.
pub(super) fn limits_at(thread: &Thread, class: &str, engaged_mm: Length) -> Result<Limits, Error> {
    let (holds, is_theirs) = is_usual(thread, engaged_mm)?;
    if is_theirs {
        return limits(thread, class);
    }
    let (size, engaged_e8) = (Size::of(thread)?, inch_parts(engaged_mm, 100_000_000)?);
    let asked = Asked { thread, diameter_e4: size.diameter_e4, class, at_usual_length: false };
    let found = of_class(asked, &size, size.pitch_tolerance_e16(engaged_e8)?)?;
    let source = if holds { AT_USUAL_LENGTH } else { AT_LENGTH };
    // That the allowance stays is from memory.
    let confidence = if matches!(class, "1A" | "2A") { Confidence::Memory } else { Confidence::Rule };
    Ok(Limits { source, confidence, ..found })
}

fn of_class(asked: Asked<'_>, size: &Size, tolerance_2a_e16: i128) -> Result<Limits, Error> {
    // The factor goes to the sum as it is: with the sum at 6 places 6-40 3B would miss its printed limit.
    let tolerance_e6 = divided(times(tolerance_2a_e16, class_factor(asked.class))?, 10_000_000_000_000)?;
    if !asked.class.ends_with('A') {
        let minor = internal_minor(asked, size)?;
        return internal(asked, size, tolerance_e6, minor);
    }
    let (allowance_e4, source) = match asked.class {
        "3A" => (0, SOURCE),
        _ if asked.at_usual_length => allowance(asked, tolerance_2a_e16)?,
        // GO does not change with the length.
        _ => allowance(asked, size.pitch_tolerance_e16(size.usual_engagement_e8(asked.thread)?)?)?,
    };
    external(asked, size, (allowance_e4, source), tolerance_e6)
}

#[inline(never)]
fn internal(asked: Asked<'_>, size: &Size, tolerance_e6: i128, minor: (i128, i128)) -> Result<Limits, Error> {
    let Asked { thread, class, .. } = asked;
    let printed = (asked.pitch_diameter(), asked.minor_diameter());
    let (low, high) = (minor.0, or_printed(printed.1, minor.1));
    let pitch_low = size.less_depth(size.diameter_e4, PITCH_DEPTH_E8)?;
    let pitch_high = or_printed(printed.0, less_e6(pitch_low, times(tolerance_e6, -1)?)?);
    // Far finer than any thread of the standard, the tolerance is less than the places it is given to.
    if low >= high || pitch_low >= pitch_high {
        return Err(no_tolerance(thread));
    }
    Ok(Limits {
        major_mm: (Some(thread.major_mm()), None),
        pitch_diameter_mm: (Some(inches(pitch_low)?), Some(inches(pitch_high)?)),
        minor_mm: (Some(inches(low)?), Some(inches(high)?)),
        native_unit: Unit::Inch,
        decimals: if has_three_places(size) && class != "3B" { 3 } else { 4 },
        source: match printed {
            (Some(_), _) => PITCH_PRINTED,
            (_, Some(_)) => MINOR_PRINTED,
            _ => SOURCE,
        },
        confidence: confidence(printed.0.or(printed.1)),
    })
}

/// From 0.138 in up the minor diameters are given to three places.
const fn has_three_places(size: &Size) -> bool {
    size.diameter_e4 >= 1_380
}

/// The smallest and largest minor diameter by the rule.
#[inline(never)]
fn internal_minor(asked: Asked<'_>, size: &Size) -> Result<(i128, i128), Error> {
    let Asked { thread, class, .. } = asked;
    let minor = size.less_depth(size.diameter_e4, MINOR_DEPTH_E8)?;
    let largest = minor.checked_add(minor_tolerance(thread, class, size)?).ok_or(OVERFLOW)?;
    let to_three = |e4: i128| divided(e4, 10).and_then(|e3| times(e3, 10));
    let low = if has_three_places(size) { to_three(minor)? } else { minor };
    let high = if has_three_places(size) && class != "3B" { to_three(largest)? } else { largest };
    Ok((low, high))
}

#[inline(never)]
fn external(
    asked: Asked<'_>,
    size: &Size,
    (allowance_e4, source): (i128, &'static str),
    tolerance_e6: i128,
) -> Result<Limits, Error> {
    let Asked { thread, class, .. } = asked;
    let printed = asked.pitch_diameter();
    let major_high = size.diameter_e4.checked_sub(allowance_e4).ok_or(OVERFLOW)?;
    // 0.090 P^(2/3) for 1A, 0.060 P^(2/3) for 2A and 3A, to 6 places.
    let major_factor = if class == "1A" { 90 } else { 60 };
    let major_low = less_e6(major_high, divided(times(size.pitch_power_e12, major_factor)?, 1_000_000_000)?)?;
    let pitch_high = size.less_depth(major_high, PITCH_DEPTH_E8)?;
    let pitch_low = or_printed(printed, less_e6(pitch_high, tolerance_e6)?);
    let minor = size.less_depth(major_high, ROUNDED_DEPTH_E8)?;
    // Far finer than any thread of the standard no tolerance is left, far smaller no core.
    if major_low >= major_high || pitch_low >= pitch_high || pitch_low <= 0 || minor <= 0 {
        return Err(no_tolerance(thread));
    }
    Ok(Limits {
        major_mm: (Some(inches(major_low)?), Some(inches(major_high)?)),
        pitch_diameter_mm: (Some(inches(pitch_low)?), Some(inches(pitch_high)?)),
        minor_mm: (None, Some(inches(minor)?)),
        native_unit: Unit::Inch,
        decimals: 4,
        source: if printed.is_some() { PITCH_PRINTED } else { source },
        confidence: confidence(printed),
    })
}

const SOURCE: &str = "ASME B1.1-2003, formulas for limits of size";
const PITCH_PRINTED: &str = "ASME B1.1-2003, formulas for limits of size, pitch diameter as printed";
const MINOR_PRINTED: &str = "ASME B1.1-2003, formulas for limits of size, minor diameter as printed";
const AT_LENGTH: &str = "ASME B1.1-2003, formulas at this length of engagement, beyond those of its tables";
const AT_USUAL_LENGTH: &str = "ASME B1.1-2003, formulas at this length of engagement; its tables hold for it too";
const ALLOWANCE_PRINTED: &str = "ASME B1.1-2003, formulas for limits of size, allowance as printed";

/// 0.3 T_d2 of 2A to 4 places, or what the standard prints instead.
fn allowance(asked: Asked<'_>, tolerance_2a_e16: i128) -> Result<(i128, &'static str), Error> {
    match asked.allowance_e4() {
        Some(printed_e4) => Ok((printed_e4, ALLOWANCE_PRINTED)),
        None => Ok((divided(times(divided(tolerance_2a_e16, 10_000_000_000)?, 3)?, 1000)?, SOURCE)),
    }
}

fn or_printed(printed: Option<Printed>, by_rule_e4: i128) -> i128 {
    printed.map_or(by_rule_e4, |printed| printed.e4)
}

fn confidence(printed: Option<Printed>) -> Confidence {
    let read = printed.is_some_and(|printed| printed.is_whole_row);
    if read { Confidence::Confirmed } else { Confidence::Rule }
}

/// The major diameter less a depth in 1e-8 pitches, in 1/10000 in.
#[inline(never)]
pub(super) fn diameter_less(thread: &Thread, depth_e8: i128) -> Result<i128, Error> {
    let size = Size::of(thread)?;
    size.less_depth(size.diameter_e4, depth_e8)
}

/// The basic pitch diameter, which every class but 1A and 2A begins at.
pub(super) fn basic_pitch_diameter(thread: &Thread) -> Result<Length, Error> {
    inches(diameter_less(thread, PITCH_DEPTH_E8)?)
}

/// The basic pitch and minor diameters to 4 places, in 1/10000 in.
pub(super) fn pitch_and_minor(thread: &Thread) -> Result<[i128; 2], Error> {
    Ok([diameter_less(thread, PITCH_DEPTH_E8)?, diameter_less(thread, MINOR_DEPTH_E8)?])
}

fn no_tolerance(thread: &Thread) -> Error {
    Error::new(Code::NotSourced, Field::Pitch)
        .got(thread.pitch_mm().to_f64())
        .hint_text("the standard's rule leaves no tolerance at so fine a pitch")
}

pub(super) fn inches(e4: i128) -> Result<Length, Error> {
    // 127/5 mm to the inch, so 127 / (2^4 × 5^5) mm to the 1/10000 in.
    let e4 = i64::try_from(e4).map_err(|_| OVERFLOW)?;
    Ok(Length::decimal_parts(e4.checked_mul(127).ok_or(OVERFLOW)?, 4, 5))
}

#[cfg(test)]
mod tests {
    use crate::length::Length;
    use crate::limits::{Confidence, Limits};
    use crate::thread::Thread;

    fn at(text: &str, inches: (i64, i64)) -> Limits {
        let length = Length::new(inches.0, inches.1).and_then(|length| length.times(Length::INCH)).unwrap();
        Thread::read(text.as_bytes()).and_then(|thread| thread.limits_at(length)).unwrap()
    }

    fn listed(text: &str) -> Limits {
        Thread::read(text.as_bytes()).and_then(|thread| thread.limits()).unwrap()
    }

    #[test]
    fn the_length_of_the_tables_has_their_limits() {
        for (text, length) in [("1/2-13 UNC-2A", (1, 2)), ("1/2-28 UNEF-2B", (9, 28)), ("15/16-12 UN-2A", (9, 12))] {
            assert_eq!(at(text, length), listed(text), "{text}");
        }
        // What was read in print is of that length.
        assert_eq!(at("15/16-12 UN-3A", (8, 12)).confidence, Confidence::Rule);
    }

    #[test]
    fn the_answer_says_whether_the_tables_hold() {
        let holds = |text, length| at(text, length).source.ends_with("hold for it too");
        assert!(holds("1/2-13 UNC-2A", (3, 4)) && !holds("1/2-13 UNC-2A", (751, 1000)));
        assert!(holds("1/2-28 UNEF-2B", (15, 28)) && !holds("1/2-28 UNEF-2B", (151, 280)));
        assert!(holds("1/2-28 UNEF-2B", (5, 28)) && !holds("1/2-28 UNEF-2B", (49, 280)));
    }

    #[test]
    fn only_the_far_limit_of_the_pitch_diameter_moves_with_the_length() {
        for (text, confidence) in [
            ("1/2-13 UNC-1A", Confidence::Memory),
            ("12-32 UNEF-2A", Confidence::Memory),
            ("1/4-20 UNC-3A", Confidence::Rule),
            ("10-36 UNS-2B", Confidence::Rule),
        ] {
            let (long, own) = (at(text, (4, 1)), listed(text));
            assert_eq!(
                (long.major_mm, long.minor_mm, long.confidence),
                (own.major_mm, own.minor_mm, confidence),
                "{text}"
            );
            let ([low, high], [own_low, own_high]) = [long.pitch_diameter_mm, own.pitch_diameter_mm]
                .map(|range| [range.0.unwrap(), range.1.unwrap()])
                .into();
            let (moved, stays) =
                if text.ends_with('A') { (low < own_low, high == own_high) } else { (high > own_high, low == own_low) };
            assert!(moved && stays, "{text}");
        }
    }
}
