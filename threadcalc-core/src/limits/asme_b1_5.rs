//! ASME B1.5-1997 limits of size of general purpose ACME threads, 2G, 3G and 4G, by the standard's rule in whole
//! numbers; and those of stub ACME threads, ASME B1.8-1988, whose fit is that of 2G on a height of their own.
//!
//! Every term is rounded to 4 places of an inch by itself, ties to the even digit, and only then added: that gives
//! each of the 35 printed limits of the seven preferred sizes that were read.

use super::asme_b1_1::{OVERFLOW, inches};
use super::asme_b1_1_minor::{divided, inch_parts, square_root, times};
use super::{Confidence, Limits, Range, side_of};
use crate::Unit;
use crate::error::{Code, Error, Field};
use crate::form::Form;
use crate::length::Length;
use crate::profile::acme_clearance_e4_in;
use crate::thread::{Side, Thread};

/// The ends of the ranges of diameters that have one allowance each, in 1/10000 in: the table of the centralizing
/// classes as Machinery's Handbook 27, p. 1841, prints it. The first range begins at 0.
const RANGE_ENDS_E4: [i128; 21] = [
    1_875, 3_125, 4_375, 5_625, 6_875, 8_125, 9_375, 10_625, 11_875, 13_125, 14_375, 15_625, 18_750, 21_250, 23_750,
    26_250, 28_750, 32_500, 37_500, 42_500, 47_500,
];
/// The pitches of the standard, 16 to 1 threads per inch.
const PITCHES_MM: (Length, Length) = (Length::parts(127, 80), Length::INCH);
/// What a class is made of: the allowance in thousandths of √mean, the pitch diameter's tolerance in ten-thousandths
/// of √P and of √D.
struct Class {
    allowance_e3: i128,
    of_pitch_e4: i128,
    of_diameter_e4: i128,
}

impl Class {
    fn of(class: &str) -> Result<Self, Error> {
        match class {
            "2G" => Ok(Self { allowance_e3: 8, of_pitch_e4: 300, of_diameter_e4: 60 }),
            "3G" => Ok(Self { allowance_e3: 6, of_pitch_e4: 140, of_diameter_e4: 28 }),
            "4G" => Ok(Self { allowance_e3: 4, of_pitch_e4: 100, of_diameter_e4: 20 }),
            _ => Err(Error::new(Code::NotSourced, Field::ToleranceClass)
                .hint_text("of ACME the limits of 2G 3G 4G have been read, not those of the centralizing classes")),
        }
    }
}

/// Everything in 1/10000 in.
struct Terms {
    diameter: i128,
    pitch_diameter: i128,
    minor: i128,
    /// Distance of the roots from the crests of the other side.
    clearance: i128,
    /// Tolerance of the crests: the screw's major diameter, the hole's minor diameter.
    crest: i128,
    /// Tolerance of the pitch diameter and, 1.5 times it, of the screw's minor diameter.
    pitch_tolerance: i128,
    minor_tolerance: i128,
}

impl Terms {
    fn of(thread: &Thread, class: &Class) -> Result<Self, Error> {
        let diameter = inch_parts(thread.major_mm(), 10_000)?;
        let (diameter_e8, pitch_e8) = (times(diameter, 10_000)?, inch_parts(thread.pitch_mm(), 100_000_000)?);
        // Basic height on the diameter, in tenths of the pitch; half of it is the depth of the pitch line.
        let height = if thread.form() == Form::StubAcme { 6 } else { 10 };
        let less = |twentieths: i128| {
            let depth = times(pitch_e8, twentieths)?;
            divided(times(diameter_e8, 20)?.checked_sub(depth).ok_or(OVERFLOW)?, 200_000)
        };
        // Roots in 1e-12.
        let of_pitch = square_root(times(pitch_e8, 10_000_000_000_000_000)?);
        let of_diameter = square_root(times(diameter, 100_000_000_000_000_000_000)?);
        let tolerance_e16 = times(of_pitch, class.of_pitch_e4)?
            .checked_add(times(of_diameter, class.of_diameter_e4)?)
            .ok_or(OVERFLOW)?;
        Ok(Self {
            diameter,
            pitch_diameter: less(height)?,
            minor: less(times(height, 2)?)?,
            clearance: i128::from(acme_clearance_e4_in(thread.pitch_mm())),
            // 0.05 P, not less than 0.005 in.
            crest: divided(pitch_e8, 200_000)?.max(50),
            pitch_tolerance: divided(tolerance_e16, 1_000_000_000_000)?,
            minor_tolerance: divided(times(tolerance_e16, 3)?, 2_000_000_000_000)?,
        })
    }
}

/// The allowance of a diameter in 1/10000 in, and whether the diameter is the mean of its range.
fn allowance(diameter: i128, class: &Class) -> Result<(i128, bool), Error> {
    let mut begin = 0_i128;
    for end in RANGE_ENDS_E4 {
        if diameter <= end {
            // Half of the sum in 1/10000 in is five times it in 1/100000 in.
            let sum = begin.checked_add(end).ok_or(OVERFLOW)?;
            let root_e12 = square_root(times(times(sum, 5)?, 10_000_000_000_000_000_000)?);
            let allowance = divided(times(root_e12, class.allowance_e3)?, 100_000_000_000)?;
            return Ok((allowance, times(diameter, 2)? == sum));
        }
        begin = end;
    }
    Err(Error::new(Code::NotSourced, Field::Diameter)
        .hint_text("the allowances of ACME threads have been read up to 4 3/4 in"))
}

#[inline(never)]
pub(super) fn limits(thread: &Thread, class: &str) -> Result<Limits, Error> {
    let factors = Class::of(class)?;
    super::single_start(thread)?;
    if thread.pitch_mm() < PITCHES_MM.0 || thread.pitch_mm() > PITCHES_MM.1 {
        return Err(Error::new(Code::NotSourced, Field::Pitch)
            .got(thread.pitch_mm().to_f64())
            .within(PITCHES_MM.0.to_f64(), PITCHES_MM.1.to_f64())
            .hint_text("ACME threads have 16 to 1 threads per inch"));
    }
    let (terms, side) = (Terms::of(thread, &factors)?, side_of(thread)?);
    let found = match side {
        Side::Internal => internal(&terms),
        Side::External => external(&terms, &factors, class),
    }?;
    Ok(if thread.form() == Form::StubAcme { of_stub(found, side) } else { found })
}

/// What is read of stub ACME: height and clearance, and that its fit and its allowances are those of 2G. That the
/// tolerances of crests and pitch diameter are so too is from memory; those of the roots are not known.
fn of_stub(found: Limits, side: Side) -> Limits {
    let Limits { major_mm, minor_mm, .. } = found;
    Limits {
        major_mm: if side == Side::Internal { (major_mm.0, None) } else { major_mm },
        minor_mm: if side == Side::External { (None, minor_mm.1) } else { minor_mm },
        source: "ASME B1.8-1988 with the allowances and tolerances of ASME B1.5-1997",
        confidence: Confidence::Memory,
        ..found
    }
}

fn internal(terms: &Terms) -> Result<Limits, Error> {
    let Terms { clearance, .. } = *terms;
    // The tolerance of the roots was read in one row, of 0.020 in; that of 0.010 in was not.
    let confidence = if clearance == 200 { Confidence::Rule } else { Confidence::Memory };
    let major = terms.diameter.checked_add(clearance).ok_or(OVERFLOW)?;
    given(
        upwards(major, clearance)?,
        upwards(terms.pitch_diameter, terms.pitch_tolerance)?,
        upwards(terms.minor, terms.crest)?,
        confidence,
    )
}

fn external(terms: &Terms, factors: &Class, class: &str) -> Result<Limits, Error> {
    let (allowance, is_mean) = allowance(terms.diameter, factors)?;
    let less = |from: i128, by: i128| from.checked_sub(by).ok_or(OVERFLOW);
    // That the general purpose classes share the allowances of the centralizing ones is read off 2G at the means.
    let confidence = if class == "2G" && is_mean { Confidence::Rule } else { Confidence::Memory };
    given(
        downwards(terms.diameter, terms.crest)?,
        downwards(less(terms.pitch_diameter, allowance)?, terms.pitch_tolerance)?,
        downwards(less(terms.minor, terms.clearance)?, terms.minor_tolerance)?,
        confidence,
    )
}

fn given(major_mm: Range, pitch_diameter_mm: Range, minor_mm: Range, confidence: Confidence) -> Result<Limits, Error> {
    Ok(Limits {
        major_mm,
        pitch_diameter_mm,
        minor_mm,
        native_unit: Unit::Inch,
        decimals: 4,
        source: "ASME B1.5-1997, formulas for limits of general purpose threads",
        confidence,
    })
}

#[inline(never)]
fn upwards(from: i128, tolerance: i128) -> Result<Range, Error> {
    Ok((Some(inches(from)?), Some(inches(from.checked_add(tolerance).ok_or(OVERFLOW)?)?)))
}

#[inline(never)]
fn downwards(from: i128, tolerance: i128) -> Result<Range, Error> {
    Ok((Some(inches(from.checked_sub(tolerance).ok_or(OVERFLOW)?)?), Some(inches(from)?)))
}
