//! ASME B1.20.1-1983 limits of straight pipe threads, NPSC and NPSM.
//!
//! ```text
//! NPSC       pitch diameter   E1 ± 3 p/32, what the taper of NPT gives in 1 1/2 turns
//!            minor diameter   from the smallest pitch diameter − 0.8 p; no largest
//! NPSM       pitch diameter   internal 2B from E1, external 2A from E1 − allowance
//!            major diameter   external: to the largest pitch diameter + 3/4 H
//!            minor diameter   internal: from the smallest pitch diameter − H/2
//! ```
//!
//! Pitch diameters to 4 places of an inch, crests to 3, ties to the even digit. The rule gives every printed
//! limit of NPSC. Allowance and tolerances of NPSM are those of its printed table: ASME B1.1's formulas, on the
//! outside diameter of the pipe and 9 p of engagement, miss them by up to 0.0002 in.

use super::{Confidence, Limits, Range};
use crate::Unit;
use crate::error::{Code, Error, Field};
use crate::length::{Length, Rounding};
use crate::series;
use crate::thread::{Side, Thread};

/// 3/4 H and H/2 of a 60° thread in pitches.
const CREST_ABOVE: Length = Length::parts(64_951_905, 100_000_000);
const CREST_BELOW: Length = Length::parts(43_301_270, 100_000_000);

/// Allowance and tolerances of one size of NPSM: those of the pitch diameter in 1/10000 in, those of the crests
/// in 1/1000 in.
struct Mechanical {
    sixteenths: u16,
    allowance_e4: u16,
    external_e4: u16,
    internal_e4: u16,
    major_e3: u16,
    minor_e3: u16,
}

const fn m(sixteenths: u16, pitch_e4: [u16; 3], crest_e3: [u16; 2]) -> Mechanical {
    let [allowance_e4, external_e4, internal_e4] = pitch_e4;
    let [major_e3, minor_e3] = crest_e3;
    Mechanical { sixteenths, allowance_e4, external_e4, internal_e4, major_e3, minor_e3 }
}

/// A gauge maker's print of the standard's table; Machinery's Handbook 27 has the sizes up to 3/4 alike.
const MECHANICAL: [Mechanical; 15] = [
    m(2, [11, 36, 47], [7, 6]),
    m(4, [13, 44, 58], [9, 13]),
    m(6, [14, 45, 59], [9, 9]),
    m(8, [15, 51, 67], [10, 12]),
    m(12, [16, 53, 69], [10, 12]),
    m(16, [17, 58, 76], [12, 10]),
    m(20, [18, 60, 78], [12, 9]),
    m(24, [18, 61, 79], [12, 9]),
    m(32, [19, 62, 81], [12, 9]),
    m(40, [22, 74, 98], [15, 19]),
    m(48, [23, 76, 99], [15, 19]),
    m(56, [23, 77, 100], [15, 13]),
    m(64, [23, 77, 100], [15, 13]),
    m(80, [24, 79, 105], [15, 13]),
    m(96, [24, 81, 105], [15, 12]),
];

/// E1: the pitch diameter of NPT at the gauge plane, in inches, not rounded.
#[inline(never)]
fn gauge_plane_in(thread: &Thread) -> Result<Length, Error> {
    let none = Error::new(Code::NotSourced, Field::Diameter);
    thread.pipe()?.pitch_diameter_gauge_plane_mm.ok_or(none)?.over(Length::INCH)
}

fn to_places(inches: Length, places: u8) -> Result<Length, Error> {
    inches.round_to(places, Rounding::HalfEven)?.to_length()
}

#[inline(never)]
fn in_mm(range_in: Range) -> Result<Range, Error> {
    let one = |inches: Option<Length>| inches.map(|inches| inches.times(Length::INCH)).transpose();
    Ok((one(range_in.0)?, one(range_in.1)?))
}

fn limits(major_in: Range, pitch_diameter_in: Range, minor_in: Range, source: &'static str) -> Result<Limits, Error> {
    Ok(Limits {
        major_mm: in_mm(major_in)?,
        pitch_diameter_mm: in_mm(pitch_diameter_in)?,
        minor_mm: in_mm(minor_in)?,
        native_unit: Unit::Inch,
        decimals: 3,
        source,
        confidence: Confidence::Confirmed,
    })
}

/// E1 to the places of the standard's tables, in mm: the basic pitch diameter of NPSC.
pub(super) fn basic_pitch_diameter(thread: &Thread) -> Result<Length, Error> {
    to_places(gauge_plane_in(thread)?, 4)?.times(Length::INCH)
}

/// NPSC: one side, one class.
pub(super) fn couplings(thread: &Thread) -> Result<Limits, Error> {
    let (basic, pitch) = (gauge_plane_in(thread)?, thread.pitch_mm().over(Length::INCH)?);
    let off = pitch.times(const { Length::parts(3, 32) })?;
    let (low, high) = (to_places(basic.minus(off)?, 4)?, to_places(basic.plus(off)?, 4)?);
    let minor = to_places(low.minus(pitch.times(const { Length::parts(4, 5) })?)?, 3)?;
    limits(
        (None, None),
        (Some(low), Some(high)),
        (Some(minor), None),
        "ASME B1.20.1-1983, limits of NPSC: E1 and 3/32 p",
    )
}

/// NPSM: 2A external, 2B internal.
pub(super) fn free_fitting(thread: &Thread) -> Result<Limits, Error> {
    const SOURCE: &str = "ASME B1.20.1-1983, table of NPSM limits of size";
    let unset = Error::new(Code::ClassUnset, Field::ToleranceClass).hint_text("write the class: 1/8-27 NPSM-2B");
    let side = thread.tolerance_class().and_then(|class| class.side()).ok_or(unset)?;
    let sixteenths = series::inch_pipe(thread).map(|size| size.sixteenths);
    let row = MECHANICAL.iter().find(|row| Some(row.sixteenths) == sixteenths);
    let row = row.ok_or(Error::new(Code::NotSourced, Field::Diameter))?;
    let (basic, pitch) = (to_places(gauge_plane_in(thread)?, 4)?, thread.pitch_mm().over(Length::INCH)?);
    let e4 = |count: u16| Length::decimal_parts(i64::from(count), 4, 4);
    let e3 = |count: u16| Length::decimal_parts(i64::from(count), 3, 3);
    if side == Side::Internal {
        let minor = to_places(basic.minus(pitch.times(CREST_BELOW)?)?, 3)?;
        let pitch_diameter = (Some(basic), Some(basic.plus(e4(row.internal_e4))?));
        let minor = (Some(minor), Some(minor.plus(e3(row.minor_e3))?));
        return limits((None, None), pitch_diameter, minor, SOURCE);
    }
    let high = basic.minus(e4(row.allowance_e4))?;
    let major = to_places(high.plus(pitch.times(CREST_ABOVE)?)?, 3)?;
    let major = (Some(major.minus(e3(row.major_e3))?), Some(major));
    limits(major, (Some(high.minus(e4(row.external_e4))?), Some(high)), (None, None), SOURCE)
}

#[cfg(test)]
mod tests {
    use super::{MECHANICAL, gauge_plane_in};
    use crate::form::Form;
    use crate::series::standard_threads;

    /// 0.0015 D^(1/3) + 0.0015 √LE + 0.015 p^(2/3) of ASME B1.1 with D of the pipe and LE of 9 p, in 1/10000 in.
    fn tolerance_2a_e4(pipe_in: f64, pitch_in: f64) -> f64 {
        15.0 * (libm::cbrt(pipe_in) + libm::sqrt(9.0 * pitch_in)) + 150.0 * libm::pow(pitch_in, 2.0 / 3.0)
    }

    #[test]
    fn every_cell_of_npsm_is_near_the_rule_of_unified_threads() {
        let mut rows = MECHANICAL.iter();
        for thread in standard_threads(Some(Form::Npsm), None) {
            let row = rows.next().unwrap();
            assert!(gauge_plane_in(&thread).is_ok(), "{thread}");
            let [pipe, pitch] = [thread.major_mm(), thread.pitch_mm()].map(|length| length.to_f64() / 25.4);
            let two_a = tolerance_2a_e4(pipe, pitch);
            let cells = [(row.allowance_e4, 0.3), (row.external_e4, 1.0), (row.internal_e4, 1.3)];
            for (printed, factor) in cells {
                assert!((f64::from(printed) - factor * two_a).abs() < 2.0, "{thread}: {printed}");
            }
            // 0.06 p^(2/3), and for the minor diameter between 1/12 p and 1/4 p.
            assert!((f64::from(row.major_e3) - 60.0 * libm::pow(pitch, 2.0 / 3.0)).abs() < 0.6, "{thread}");
            assert!((0.08..0.25).contains(&(f64::from(row.minor_e3) / 1000.0 / pitch)), "{thread}");
        }
        assert!(rows.next().is_none());
    }
}
