//! ISO 228-1:2000 limits of G, internal and external A and B; ISO 7-1:1994 limits of Rp.

use super::{Confidence, Limits, Range};
use crate::Unit;
use crate::error::{Code, Error, Field};
use crate::length::Length;
use crate::series;
use crate::thread::{Side, Thread};

/// Basic pitch and minor diameter.
fn basic(thread: &Thread, per_inch: u8) -> Result<(Length, Length), Error> {
    let height = series::whitworth_height(per_inch);
    let pitch_diameter = thread.major_mm().minus(height)?;
    Ok((pitch_diameter, pitch_diameter.minus(height)?))
}

fn row(thread: &Thread) -> Result<&'static series::MetricPipe, Error> {
    series::metric_pipe(thread).ok_or(Error::new(Code::OutOfRange, Field::Diameter))
}

fn limits(major_mm: Range, pitch_diameter_mm: Range, minor_mm: Range, source: (&'static str, Confidence)) -> Limits {
    let (source, confidence) = source;
    Limits { major_mm, pitch_diameter_mm, minor_mm, native_unit: Unit::Mm, decimals: 3, source, confidence }
}

/// G: the internal thread has no class, the external one A or B.
pub(super) fn fastening(thread: &Thread) -> Result<Limits, Error> {
    const SOURCE: (&str, Confidence) = ("ISO 228-1:2000 table 1", Confidence::Confirmed);
    let size = row(thread)?;
    let (pitch, minor) = basic(thread, size.per_inch)?;
    let major = thread.major_mm();
    let tolerance = Length::parts(u32::from(size.pitch_tolerance_um), 1000);
    let twice = tolerance.times(Length::integer(2))?;
    let class = thread.tolerance_class();
    if thread.side() != Some(Side::External) {
        let crest = minor.plus(series::minor_tolerance(size.per_inch))?;
        let pitches = (Some(pitch), Some(pitch.plus(tolerance)?));
        return Ok(limits((Some(major), None), pitches, (Some(minor), Some(crest)), SOURCE));
    }
    let below = match class.as_ref().map(|class| class.as_str()) {
        Some("A") => tolerance,
        Some(_) => twice,
        None => {
            return Err(Error::new(Code::ClassUnset, Field::ToleranceClass)
                .hint_text("write the class of the external thread: G1/2A or G1/2B"));
        }
    };
    let majors = (Some(major.minus(twice)?), Some(major));
    Ok(limits(majors, (Some(pitch.minus(below)?), Some(pitch)), (None, Some(minor)), SOURCE))
}

/// Rp: every diameter may stand off as far as the gauge on a cone of 1:16, either way.
pub(super) fn jointing(thread: &Thread) -> Result<Limits, Error> {
    const SOURCE: (&str, Confidence) = ("ISO 7-1:1994 table 2", Confidence::Memory);
    let size = row(thread)?;
    let (pitch, minor) = basic(thread, size.per_inch)?;
    let off = Length::parts(u32::from(size.jointing_tolerance_um()), 1000);
    let around = |basic: Length| Ok((Some(basic.minus(off)?), Some(basic.plus(off)?)));
    let major = (Some(thread.major_mm().minus(off)?), None);
    Ok(limits(major, around(pitch)?, around(minor)?, SOURCE))
}
