//! ASME B1.9-1973 limits of size of buttress threads: the hole of class 2, by the standard's rule in whole numbers.
//!
//! The screw has an allowance that has not been read, and so have classes 3. Of the hole's major diameter nothing
//! was read but that the screw's crests pass.

use super::asme_b1_1::{OVERFLOW, inches};
use super::asme_b1_1_minor::{cube_root, divided, inch_parts, square_root, times};
use super::{Confidence, Limits, Range, side_of, single_start};
use crate::Unit;
use crate::error::{Code, Error, Field};
use crate::length::Length;
use crate::thread::{Side, Thread};

/// The ends of the ranges of diameters that have one tolerance each, in 1/10000 in: the first is where the first
/// range begins.
const RANGE_ENDS_E4: [i128; 10] = [5_000, 7_000, 10_000, 15_000, 25_000, 40_000, 60_000, 100_000, 160_000, 240_000];
/// 20 to 1 threads per inch.
const PITCHES_MM: (Length, Length) = (Length::parts(127, 100), Length::INCH);

#[inline(never)]
pub(super) fn limits(thread: &Thread, class: &str) -> Result<Limits, Error> {
    let not_read = Error::new(Code::NotSourced, Field::ToleranceClass)
        .hint_text("of buttress threads read: the hole of class 2, one start, 1/2 to 24 in, 20 to 1 threads per inch");
    if !class.starts_with('2') {
        return Err(not_read);
    }
    if side_of(thread)? == Side::External {
        return Err(not_read.about(Field::Side));
    }
    single_start(thread)?;
    if thread.pitch_mm() < PITCHES_MM.0 || thread.pitch_mm() > PITCHES_MM.1 {
        return Err(not_read.about(Field::Pitch).got(thread.pitch_mm().to_f64()));
    }
    let diameter = inch_parts(thread.major_mm(), 10_000)?;
    let sum = sum_of_range(diameter).ok_or(not_read.about(Field::Diameter).got(thread.major_mm().to_f64()))?;
    let pitch_e8 = inch_parts(thread.pitch_mm(), 100_000_000)?;
    let tolerance = tolerance(sum, pitch_e8)?;
    let from = |tenths: i128| -> Result<Range, Error> {
        // D less so many tenths of a pitch.
        let depth_e9 = times(pitch_e8, tenths)?;
        let low = divided(times(diameter, 100_000)?.checked_sub(depth_e9).ok_or(OVERFLOW)?, 100_000)?;
        Ok((Some(inches(low)?), Some(inches(low.checked_add(tolerance).ok_or(OVERFLOW)?)?)))
    };
    Ok(Limits {
        major_mm: (None, None),
        pitch_diameter_mm: from(6)?,
        minor_mm: from(12)?,
        native_unit: Unit::Inch,
        decimals: 4,
        source: "ASME B1.9-1973, tolerances of class 2",
        confidence: Confidence::Rule,
    })
}

/// Both ends of a diameter's range, added.
#[inline(never)]
fn sum_of_range(diameter: i128) -> Option<i128> {
    let [begin, ends @ ..] = RANGE_ENDS_E4;
    let mut begin = begin;
    for end in ends {
        if begin <= diameter && diameter <= end {
            return begin.checked_add(end);
        }
        begin = end;
    }
    None
}

/// 0.002 ∛D + 0.0173 √p, D the mean of the range, in 1/10000 in.
fn tolerance(sum: i128, pitch_e8: i128) -> Result<i128, Error> {
    // Half of the sum in 1/10000 in is five times it in 1/100000 in; roots in 1e-12.
    let mean_e36 = times(times(sum, 5)?, 10_000_000_000_000_000_000_000_000_000_000)?;
    let of_pitch = square_root(times(pitch_e8, 10_000_000_000_000_000)?);
    let sum_e16 = times(cube_root(mean_e36), 20)?.checked_add(times(of_pitch, 173)?).ok_or(OVERFLOW)?;
    divided(sum_e16, 1_000_000_000_000)
}
