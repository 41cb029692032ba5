//! ASME B18.29.1-2010 and B18.29.2M-2005 limits of size of the tapped holes that take wire inserts.
//!
//! The holes are those of ASME B1.1 and of M, larger by 3/2 H "to accommodate the wire": the tolerances are those of
//! the screw's size. The smallest pitch diameters of the inch holes are those that ASME B94.9's taps are numbered
//! from; how much larger the minor diameter may be has not been read.

use super::asme_b1_1::{self, inches};
use super::{Confidence, Limits, Range, iso_965_1};
use crate::error::{Code, Error, Field};
use crate::form::Form;
use crate::length::Length;
use crate::profile::wire_insert_diameter;
use crate::thread::Thread;

/// Pitch and minor diameter above the screw's major diameter, 3/4 H and 1/4 H, in 1e-9 pitches.
const PITCH_ABOVE_E9: u32 = 649_519_053;
const MINOR_ABOVE_E9: u32 = 216_506_351;

#[inline(never)]
pub(super) fn limits(thread: &Thread, class: &str) -> Result<Limits, Error> {
    let screw = thread.screw_of_wire_insert();
    let (of_screw, pitch_low, minor_low, source) = match (thread.form(), class) {
        (Form::Unified, "2B" | "3B") => {
            let [pitch, minor] = asme_b1_1::pitch_and_minor(thread)?;
            (asme_b1_1::limits(&screw, class)?, inches(pitch)?, inches(minor)?, INCH)
        }
        (Form::Metric, "4H" | "5H" | "6H" | "4H5H") => {
            let above = |factor| wire_insert_diameter(Form::Metric, screw.major_mm(), screw.pitch_mm(), factor);
            (iso_965_1::without_minor(&screw, class)?, above(PITCH_ABOVE_E9)?, above(MINOR_ABOVE_E9)?, METRIC)
        }
        _ => {
            return Err(Error::new(Code::NotSourced, Field::ToleranceClass)
                .hint_text("of holes for wire inserts read: 2B 3B of UN, 4H 5H 6H 4H5H of M"));
        }
    };
    Ok(Limits {
        major_mm: (Some(thread.major_mm()), None),
        pitch_diameter_mm: (Some(pitch_low), Some(pitch_low.plus(width(of_screw.pitch_diameter_mm)?)?)),
        minor_mm: (Some(minor_low), None),
        decimals: if thread.form().is_inch() { 4 } else { 3 },
        source,
        // That the tolerance goes by the screw's size, not by the hole's.
        confidence: of_screw.confidence.or_less_sure(Confidence::Memory),
        ..of_screw
    })
}

const INCH: &str = "ASME B18.29.1-2010: ASME B1.1-2003 on larger diameters";
const METRIC: &str = "ASME B18.29.2M-2005: ISO 965-1:2013 on larger diameters";

fn width(range: Range) -> Result<Length, Error> {
    match range {
        (Some(low), Some(high)) => high.minus(low),
        _ => Ok(Length::ZERO),
    }
}
