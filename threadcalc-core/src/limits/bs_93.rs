//! BS 93 limits of size of BA threads: bolts of the close and the normal class, and the one class of nuts.
//!
//! ```text
//!                  allowance   major     pitch diameter   minor
//! close, 0 to 10   none        0.15 p    0.08 p + 0.02    0.16 p + 0.04
//! normal, 0 to 10  0.025       0.20 p    0.10 p + 0.025   0.20 p + 0.05
//! normal, 11 to 16 none        0.25 p    0.10 p + 0.025   0.20 p + 0.05
//! nut              none        none      0.12 p + 0.03    0.375 p            mm
//! ```
//!
//! Formulas and basic diameters as Machinery's Handbook 31, p. 2115, prints them. No printed limits have been read,
//! nor how the standard's tables round: a tolerance is taken to the nearest 0.001 mm, ties to the smaller.

use super::iso_965_1::{OVERFLOW, millimetres, whole_um};
use super::{Confidence, Limits, Range, side_of};
use crate::Unit;
use crate::error::{Code, Error, Field};
use crate::length::Length;
use crate::series::{ba_depth, ba_number};
use crate::thread::{Side, Thread};

/// The last numbers of the close class, and of the tables that have been read.
const LAST_CLOSE: i64 = 10;
const LAST_READ: i64 = 16;
/// Taken off every diameter of a normal bolt up to the last number of the close class, in micrometres.
const ALLOWANCE_UM: i64 = 25;

/// So many thousandths of the pitch, and so many micrometres beside them.
type Tolerance = (i64, i64);

#[inline(never)]
pub(super) fn limits(thread: &Thread, class: &str) -> Result<Limits, Error> {
    let number = ba_number(thread.major_mm(), thread.pitch_mm()).ok_or(OVERFLOW)?;
    if class == "close" && number > LAST_CLOSE {
        return Err(Error::new(Code::UnknownClass, Field::ToleranceClass)
            .hint_text("close bolts are No. 0 to 10 BA, normal ones No. 0 to 16; nuts have the one class normal"));
    }
    if number > LAST_READ {
        return Err(Error::new(Code::NotSourced, Field::Diameter)
            .got(thread.major_mm().to_f64())
            .hint_text("of BA the limits of No. 0 to 16 have been read"));
    }
    let zones = Zones::of(thread)?;
    let (major_mm, pitch_diameter_mm, minor_mm) = match (side_of(thread)?, class) {
        (Side::Internal, _) => {
            let major = Some(millimetres(zones.major));
            ((major, None), zones.above(zones.pitch_diameter, (120, 30))?, zones.above(zones.minor, (375, 0))?)
        }
        (Side::External, "close") => zones.bolt(0, [(150, 0), (80, 20), (160, 40)])?,
        (Side::External, _) if number <= LAST_CLOSE => zones.bolt(ALLOWANCE_UM, [(200, 0), (100, 25), (200, 50)])?,
        (Side::External, _) => zones.bolt(0, [(250, 0), (100, 25), (200, 50)])?,
    };
    Ok(Limits {
        major_mm,
        pitch_diameter_mm,
        minor_mm,
        native_unit: Unit::Mm,
        decimals: 3,
        source: "BS 93, formulas of tolerances, to the nearest 0.001 mm",
        confidence: Confidence::Rule,
    })
}

/// The basic sizes, in micrometres.
struct Zones {
    pitch: i64,
    major: i64,
    pitch_diameter: i64,
    minor: i64,
}

impl Zones {
    fn of(thread: &Thread) -> Result<Self, Error> {
        let um = |length: Length| whole_um(length).ok_or(OVERFLOW);
        let (major, depth) = (thread.major_mm(), ba_depth(thread.pitch_mm()));
        let pitch_diameter = major.minus(depth)?;
        Ok(Self {
            pitch: um(thread.pitch_mm())?,
            major: um(major)?,
            pitch_diameter: um(pitch_diameter)?,
            minor: um(pitch_diameter.minus(depth)?)?,
        })
    }

    fn tolerance(&self, (thousandths, beside): Tolerance) -> Result<i64, Error> {
        // Just below half of one: a tie goes to the smaller tolerance.
        let of_pitch = self.pitch.checked_mul(thousandths).and_then(|part| part.checked_add(499)?.checked_div(1000));
        of_pitch.and_then(|part| part.checked_add(beside)).ok_or(OVERFLOW)
    }

    fn above(&self, basic: i64, tolerance: Tolerance) -> Result<Range, Error> {
        let high = basic.checked_add(self.tolerance(tolerance)?).ok_or(OVERFLOW)?;
        Ok((Some(millimetres(basic)), Some(millimetres(high))))
    }

    fn bolt(&self, allowance: i64, [major, pitch, minor]: [Tolerance; 3]) -> Result<(Range, Range, Range), Error> {
        let zone = |basic: i64, tolerance| {
            let high = basic.checked_sub(allowance).ok_or(OVERFLOW)?;
            let low = high.checked_sub(self.tolerance(tolerance)?).ok_or(OVERFLOW)?;
            Ok::<Range, Error>((Some(millimetres(low)), Some(millimetres(high))))
        };
        Ok((zone(self.major, major)?, zone(self.pitch_diameter, pitch)?, zone(self.minor, minor)?))
    }
}
