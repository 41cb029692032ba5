//! How much larger than itself a drill probably cuts.

use super::{Drill, DrillSet};
use crate::error::{Code, Error, Field};
use crate::length::{Length, Rounding};

/// Mean oversize of metric drills.
const METRIC_OVERSIZE: Length = Length::parts(75, 1_000);

/// From this diameter on the inch drills' mean oversize is no less.
const SMALL_METRIC: Length = Length::parts(7, 2);

/// Drill and its mean oversize in 1/10000 in, as printed beside the drills of the Unified tap drill chart.
/// The ends stand for 3/64 and 1 3/64.
#[rustfmt::skip]
const INCH_OVERSIZE: [(u16, u8); 38] = [
    (468, 15), (595, 15), (700, 17), (785, 19), (820, 19), (890, 20), (935, 20), (1_015, 23), (1_040, 23),
    (1_065, 23), (1_130, 26), (1_360, 29), (1_495, 32), (1_590, 32), (1_770, 35), (1_820, 35), (2_010, 38),
    (2_130, 38), (2_570, 38), (2_720, 41), (3_125, 44), (3_320, 44), (3_680, 46), (3_906, 46), (4_219, 47),
    (4_531, 47), (4_844, 48), (5_156, 48), (5_312, 50), (5_781, 50), (6_562, 51), (6_875, 50), (7_656, 52),
    (8_125, 52), (8_750, 59), (9_219, 60), (9_844, 67), (10_469, 72),
];

/// Picometres in 1/10000 in.
const TEN_THOUSANDTH: i64 = 2_540_000;

/// The hole that a drill probably leaves in average work, in millimetres: drills cut larger than they are.
///
/// ```text
/// number, letter, fractional: the mean oversize printed for the drill; between two drills by a straight
///                             line, to 0.0001 in: #7 0.2010 leaves 0.2048
/// others:                     drill + 0.075 mm; below 3.5 mm the inch drills' oversize where it is less
/// ```
///
/// `oversize_mm`, 0 or more, is the caller's own and takes the place of both.
///
/// # Errors
/// [`Code::NotSourced`] for drills without a printed oversize, below 3/64 in or, of inch drills, above
/// 1 3/64 in; [`Code::OutOfRange`] for an oversize below 0; [`Code::Overflow`].
///
/// # Example
/// ```
/// use threadcalc_core::{Drill, DrillSet, probable_hole_mm};
///
/// let hole = probable_hole_mm(&Drill::named(DrillSet::Number, b"#7")?, None)?;
/// assert!((hole.to_f64() / 25.4 - 0.2048).abs() < 1e-9);
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// Inch: a tap maker's tap drill chart with probable hole sizes; the straight line is derived. Metric: a
/// drill maker's tap drill page, mean oversize 0.075 mm; the lesser below 3.5 mm is common practice.
pub fn probable_hole_mm(drill: &Drill, oversize_mm: Option<Length>) -> Result<Length, Error> {
    drill.diameter_mm().plus(oversize(drill, oversize_mm)?)
}

fn oversize(drill: &Drill, given: Option<Length>) -> Result<Length, Error> {
    if let Some(given) = given {
        if given.is_negative() {
            return Err(Error::new(Code::OutOfRange, Field::Oversize)
                .got(given.to_f64())
                .hint_text("how much larger than the drill the hole is, in mm, 0 or more"));
        }
        return Ok(given);
    }
    let inch = matches!(drill.set(), Some(DrillSet::Number | DrillSet::Letter | DrillSet::Fractional));
    if !inch && drill.diameter_mm() >= SMALL_METRIC {
        return Ok(METRIC_OVERSIZE);
    }
    let printed = inch_oversize(drill.diameter_mm());
    let not_sourced = Error::new(Code::NotSourced, Field::Oversize)
        .got(drill.diameter_mm().to_f64())
        .hint_text("no oversize is printed for this drill: give your own in mm");
    printed.map(|printed| if inch { printed } else { printed.min(METRIC_OVERSIZE) }).ok_or(not_sourced)
}

/// The mean oversize of the printed drills on both sides, by a straight line; `None` beyond them.
fn inch_oversize(diameter_mm: Length) -> Option<Length> {
    let drill = diameter_mm.picometres_to(Rounding::HalfEven);
    let at = |point: &(u16, u8)| i64::from(point.0).saturating_mul(TEN_THOUSANDTH);
    let next = INCH_OVERSIZE.partition_point(|point| at(point) < drill).max(1);
    let (low, high) = (INCH_OVERSIZE.get(next.checked_sub(1)?)?, INCH_OVERSIZE.get(next)?);
    let beyond = drill.checked_sub(at(low)).filter(|beyond| *beyond >= 0)?;
    let rise = i64::from(high.1).checked_sub(i64::from(low.1))?;
    let run = at(high).checked_sub(at(low))?;
    let part = rise.checked_mul(beyond)?;
    let (whole, rest) = (part.checked_div_euclid(run)?, part.checked_rem_euclid(run)?);
    // Half to even, as everywhere.
    let above_half = rest.cmp(&run.checked_sub(rest)?);
    let up = above_half.is_gt() || (above_half.is_eq() && whole & 1 == 1);
    let counts = i64::from(low.1).checked_add(whole)?.checked_add(i64::from(up))?;
    Some(Length::decimal_parts(counts.checked_mul(127)?, 4, 5))
}
