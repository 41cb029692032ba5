//! ASME B18.29.1-2010 and B18.29.2M-2005 limits of size of the tapped holes that take wire inserts.
//!
//! The holes are those of ASME B1.1 and of M, larger by 3/2 H "to accommodate the wire": the tolerances are those of
//! the screw's size. The smallest pitch diameters of the inch holes are those that ASME B94.9's taps are numbered
//! from; how much larger the minor diameter may be has not been read.

use super::asme_b1_1::{self, inches};
use super::{Confidence, Limits, iso_965_1};
use crate::Unit;
use crate::error::{Code, Error, Field};
use crate::form::Form;
use crate::length::Length;
use crate::profile::wire_insert_diameter;
use crate::thread::Thread;

/// Pitch and minor diameter above the screw's major diameter, 3/4 H and 1/4 H, in 1e-9 pitches.
const PITCH_ABOVE_E9: u32 = 649_519_053;
const MINOR_ABOVE_E9: u32 = 216_506_351;

const INCH: &str = "ASME B18.29.1-2010: ASME B1.1-2003 on larger diameters";
const METRIC: &str = "ASME B18.29.2M-2005: ISO 965-1:2013 on larger diameters";

#[inline(never)]
pub(super) fn limits(thread: &Thread, class: &str) -> Result<Limits, Error> {
    let of_screw = of_screw(&thread.screw_of_wire_insert(), class)?;
    let (pitch_low, minor_low) = smallest(thread, of_screw.major_mm)?;
    let is_inch = thread.form().is_inch();
    Ok(Limits {
        major_mm: (Some(thread.major_mm()), None),
        pitch_diameter_mm: (Some(pitch_low), Some(pitch_low.plus(of_screw.pitch_tolerance)?)),
        minor_mm: (Some(minor_low), None),
        native_unit: if is_inch { Unit::Inch } else { Unit::Mm },
        decimals: if is_inch { 4 } else { 3 },
        source: if is_inch { INCH } else { METRIC },
        // That the tolerance goes by the screw's size, not by the hole's.
        confidence: of_screw.confidence.or_less_sure(Confidence::Memory),
    })
}

/// The smallest pitch and minor diameter of the hole.
#[inline(never)]
fn smallest(thread: &Thread, screw_major_mm: Length) -> Result<(Length, Length), Error> {
    if thread.form().is_inch() {
        let [pitch, minor] = asme_b1_1::pitch_and_minor(thread)?;
        return Ok((inches(pitch)?, inches(minor)?));
    }
    let above = |factor| wire_insert_diameter(Form::Metric, screw_major_mm, thread.pitch_mm(), factor);
    Ok((above(PITCH_ABOVE_E9)?, above(MINOR_ABOVE_E9)?))
}

/// What the hole has of the thread of its screw.
struct OfScrew {
    major_mm: Length,
    pitch_tolerance: Length,
    confidence: Confidence,
}

#[inline(never)]
fn of_screw(screw: &Thread, class: &str) -> Result<OfScrew, Error> {
    let limits = match (screw.form(), class) {
        (Form::Unified, "2B" | "3B") => asme_b1_1::limits(screw, class),
        (Form::Metric, "4H" | "5H" | "6H" | "4H5H") => iso_965_1::without_minor(screw, class),
        _ => Err(Error::new(Code::NotSourced, Field::ToleranceClass)
            .hint_text("of holes for wire inserts read: 2B 3B of UN, 4H 5H 6H 4H5H of M")),
    }?;
    let pitch_tolerance = match limits.pitch_diameter_mm {
        (Some(low), Some(high)) => high.minus(low)?,
        _ => Length::ZERO,
    };
    Ok(OfScrew { major_mm: screw.major_mm(), pitch_tolerance, confidence: limits.confidence })
}
