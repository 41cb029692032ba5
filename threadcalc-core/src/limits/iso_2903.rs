//! ISO 2903:2016 limits of size of Tr threads of one start.
//!
//! Grade 10, beyond those of ISO 2903, was read with its deviation c and the tolerance of the major diameter in
//! GOST 24739-81; one grade is four places of the R40 series, and a hole's tolerance stands five places above its
//! screw's. Of class 7e a screw maker's printed limits were read; they are what those steps make.

use super::iso_965_1::{OVERFLOW, millimetres, whole_um};
use super::iso_965_1_formula::R40;
use super::{Confidence, Limits, Range, single_start};
use crate::Unit;
use crate::error::{Code, Error, Field};
use crate::length::{Rounding, divide};
use crate::profile::crest_clearance;
use crate::thread::Thread;
use crate::tolerance_class::TRAPEZOIDAL_CLASSES;

/// Marks a step and pitch of which limits of 7e were read.
const READ: u16 = 1 << 15;
const READ_PLACE: u8 = 1 << 7;
/// How many numbers of R40 lie between a number and ten times it.
const DECADE: u8 = 40;
/// From a grade to the next.
const GRADE: u8 = 4;
/// From T_d2 to T_D2 of the same grade.
const HOLE: u8 = 5;
/// Above this pitch the deviation e is half of c in R40. So it is from 3 to 5 mm as read, and not at 1.5 and 2 mm.
const E_READ_UM: i64 = 5_000;

/// The tolerances of a pitch, as places in R40.
struct ByPitch {
    pitch_um: u16,
    /// es of e and c.
    deviations: [u8; 2],
    /// T_d of grade 4.
    major: u8,
    /// T_d2 of grade 10 by the steps of diameters.
    pitch_diameter: [u8; 5],
}

/// A step of diameters, over the end of the one before and up to its own, and the pitches that were read of it.
struct Step {
    to_um: i64,
    read: &'static str,
}

const OVER_UM: i64 = 5_600;
static STEPS: [Step; 5] = [
    Step { to_um: 11_200, read: "of Tr over 5.6 to 11.2 mm read: pitches of 1.5 2 3 mm" },
    Step { to_um: 22_400, read: "of Tr over 11.2 to 22.4 mm read: pitches of 2 3 4 5 mm" },
    Step { to_um: 45_000, read: "of Tr over 22.4 to 45 mm read: pitches of 2 3 5 6 7 8 10 12 mm" },
    Step { to_um: 90_000, read: "of Tr over 45 to 90 mm read: pitches of 3 4 5 8 9 10 12 14 16 18 20 mm" },
    Step { to_um: 180_000, read: "of Tr over 90 to 180 mm read: pitches of 4 5 6 8 12 14 16 18 20 22 24 28 32 mm" },
];

/// Deviations e and c, T_d of grade 4, T_d2 of grade 10 by the steps; 0: not read. That of pitch 3 in the first step
/// and of pitch 5 in the second are three grades above the 7e that was read.
#[rustfmt::skip]
static PITCHES: [ByPitch; 19] = [
    row(1_500, [67, 140], 150, [335, 0, 0, 0, 0]),
    row(2_000, [71, 150], 180, [READ | 375, 400, 425, 0, 0]),
    row(3_000, [85, 170], 236, [READ | 425, READ | 450, READ | 500, 530, 0]),
    row(4_000, [95, 190], 300, [0, READ | 530, 0, 600, 630]),
    row(5_000, [106, 212], 335, [0, READ | 560, READ | 600, 630, 710]),
    row(6_000, [118, 236], 375, [0, 0, 670, 0, 750]),
    row(7_000, [125, 250], 425, [0, 0, 710, 0, 0]),
    row(8_000, [132, 265], 450, [0, 0, 750, 800, 850]),
    row(9_000, [140, 280], 500, [0, 0, 0, 850, 0]),
    row(10_000, [150, 300], 530, [0, 0, 800, 850, 0]),
    row(12_000, [170, 335], 600, [0, 0, 850, 950, 1_000]),
    row(14_000, [180, 355], 670, [0, 0, 0, 1_000, 1_060]),
    row(16_000, [190, 375], 710, [0, 0, 0, 1_060, 1_120]),
    row(18_000, [200, 400], 800, [0, 0, 0, 1_120, 1_180]),
    row(20_000, [212, 425], 850, [0, 0, 0, 1_120, 1_180]),
    row(22_000, [224, 450], 900, [0, 0, 0, 0, 1_250]),
    row(24_000, [236, 475], 950, [0, 0, 0, 0, 1_320]),
    row(28_000, [250, 500], 1_060, [0, 0, 0, 0, 1_400]),
    row(32_000, [265, 530], 1_120, [0, 0, 0, 0, 1_500]),
];

const fn row(pitch_um: u16, [e, c]: [u16; 2], major: u16, [a, b, d, f, g]: [u16; 5]) -> ByPitch {
    ByPitch {
        pitch_um,
        deviations: [place(e), place(c)],
        major: place(major),
        pitch_diameter: [place(a), place(b), place(d), place(f), place(g)],
    }
}

/// The place of a number in R40 that begins at 10, its mark with it; 0 for none.
const fn place(marked: u16) -> u8 {
    let (um, mark) = (marked & !READ, if marked & READ == 0 { 0 } else { READ_PLACE });
    let (hundredths, mut place) = match um {
        ..100 => (um.wrapping_mul(10), 0),
        100..1_000 => (um, DECADE),
        _ => (um / 10, DECADE.wrapping_mul(2)),
    };
    let mut rest: &[u16] = &R40;
    while let [number, above @ ..] = rest {
        if *number == hundredths {
            return place | mark;
        }
        (rest, place) = (above, place.wrapping_add(1));
    }
    0
}

/// The number at a place.
fn number(place: u8) -> Option<i64> {
    let hundredths = i64::from(*R40.get(usize::from(place % DECADE))?);
    match place / DECADE {
        0 => hundredths.checked_div(10),
        1 => Some(hundredths),
        _ => hundredths.checked_mul(10),
    }
}

/// What a class of a size is made of, in micrometres.
struct Terms {
    diameter: i64,
    pitch_diameter: i64,
    minor: i64,
    /// 2 ac, between the crests of one side and the roots of the other.
    clearance: i64,
    deviation: i64,
    major_tolerance: i64,
    pitch_tolerance: i64,
    confidence: Confidence,
}

impl Terms {
    fn of(thread: &Thread, [grade, position]: [u8; 2]) -> Result<Self, Error> {
        let (cell, by_pitch) = cell(thread)?;
        let (is_read, grade_10) = (cell & READ_PLACE != 0, cell & !READ_PLACE);
        let steps_down = b'9'.saturating_sub(grade).saturating_add(1).saturating_mul(GRADE);
        let steps_up = if position == b'H' { HOLE } else { 0 };
        let [e, c] = by_pitch.deviations;
        let pitch = i64::from(by_pitch.pitch_um);
        let confidence = match (grade, position) {
            (b'7', b'e') if is_read => Confidence::Confirmed,
            (_, b'e') if pitch > E_READ_UM => Confidence::Memory,
            _ => Confidence::Rule,
        };
        let diameter = whole_um(thread.major_mm()).ok_or(OVERFLOW)?;
        let less = |by: Option<i64>| by.and_then(|by| diameter.checked_sub(by)).ok_or(OVERFLOW);
        let clearance = whole_um(crest_clearance(thread.pitch_mm()));
        Ok(Self {
            diameter,
            pitch_diameter: less(pitch.checked_div(2))?,
            minor: less(Some(pitch))?,
            clearance: clearance.and_then(|clearance| clearance.checked_mul(2)).ok_or(OVERFLOW)?,
            deviation: number(if position == b'c' { c } else { e }).ok_or(OVERFLOW)?,
            major_tolerance: number(by_pitch.major).ok_or(OVERFLOW)?,
            pitch_tolerance: number(grade_10.saturating_sub(steps_down).saturating_add(steps_up)).ok_or(OVERFLOW)?,
            confidence,
        })
    }

    fn screw(&self) -> Result<[Range; 3], Error> {
        let below = |from: i64, off: i64, tolerance: i64| -> Result<Range, Error> {
            let high = from.checked_sub(off).ok_or(OVERFLOW)?;
            let low = high.checked_sub(tolerance).ok_or(OVERFLOW)?;
            Ok((Some(millimetres(low)), Some(millimetres(high))))
        };
        // 1.25 T_d2 to whole micrometres, ties to the even one, and the deviation.
        let five = i128::from(self.pitch_tolerance).checked_mul(5).ok_or(OVERFLOW)?;
        let rounded = divide(five, 4, Rounding::HalfEven).and_then(|um| i64::try_from(um).ok());
        let minor_tolerance = rounded.and_then(|um| um.checked_add(self.deviation)).ok_or(OVERFLOW)?;
        Ok([
            below(self.diameter, 0, self.major_tolerance)?,
            below(self.pitch_diameter, self.deviation, self.pitch_tolerance)?,
            below(self.minor, self.clearance, minor_tolerance)?,
        ])
    }

    /// Position H. How much larger the minor diameter may be has not been read.
    fn hole(&self) -> Result<[Range; 3], Error> {
        let above = |from: i64, by: i64| from.checked_add(by).map(millimetres).ok_or(OVERFLOW);
        Ok([
            (Some(above(self.diameter, self.clearance)?), None),
            (Some(millimetres(self.pitch_diameter)), Some(above(self.pitch_diameter, self.pitch_tolerance)?)),
            (Some(millimetres(self.minor)), None),
        ])
    }
}

/// The place of T_d2 of grade 10 with its mark, and what else the pitch has.
fn cell(thread: &Thread) -> Result<(u8, &'static ByPitch), Error> {
    let (diameter_mm, pitch_mm) = (thread.major_mm(), thread.pitch_mm());
    let not_read = |field, hint| Error::new(Code::NotSourced, field).hint_text(hint);
    let outside = not_read(Field::Diameter, "of Tr read: diameters over 5.6 to 180 mm, pitches of 1.5 to 32 mm")
        .got(diameter_mm.to_f64())
        .within(5.6, 180.0);
    // Sizes between two micrometres are no sizes of the standard.
    let diameter = whole_um(diameter_mm).filter(|diameter| OVER_UM < *diameter).ok_or(outside)?;
    let (step, place) = STEPS.iter().zip(0..).find(|(step, _)| diameter <= step.to_um).ok_or(outside)?;
    let pitch = whole_um(pitch_mm);
    let by_pitch = PITCHES.iter().find(|row| Some(i64::from(row.pitch_um)) == pitch);
    by_pitch
        .and_then(|row| row.pitch_diameter.get(place).filter(|cell| **cell != 0).map(|cell| (*cell, row)))
        .ok_or(not_read(Field::Pitch, step.read).got(pitch_mm.to_f64()))
}

#[inline(never)]
pub(super) fn limits(thread: &Thread, class: &str) -> Result<Limits, Error> {
    single_start(thread)?;
    let unknown = Error::new(Code::UnknownClass, Field::ToleranceClass).hint_text(TRAPEZOIDAL_CLASSES);
    let class = <[u8; 2]>::try_from(class.as_bytes()).map_err(|_| unknown)?;
    let terms = Terms::of(thread, class)?;
    let [_, position] = class;
    let [major_mm, pitch_diameter_mm, minor_mm] = if position == b'H' { terms.hole() } else { terms.screw() }?;
    Ok(Limits {
        major_mm,
        pitch_diameter_mm,
        minor_mm,
        native_unit: Unit::Mm,
        decimals: 3,
        source: match terms.confidence {
            Confidence::Confirmed => "ISO 2903:2016, class 7e; ISO 2904:2020",
            Confidence::Memory => "ISO 2903:2016; GOST 24739-81 (class 10c): grades and deviation e by steps of R40",
            _ => "ISO 2903:2016; GOST 24739-81 (class 10c), other grades by steps of R40",
        },
        confidence: terms.confidence,
    })
}

#[cfg(test)]
mod tests {
    extern crate std;

    use std::format;
    use std::string::String;

    use super::{PITCHES, STEPS};

    #[test]
    fn a_hint_names_the_pitches_of_its_step() {
        for (place, step) in STEPS.iter().enumerate() {
            let read = PITCHES.iter().filter(|row| row.pitch_diameter[place] != 0);
            let named = read.map(|row| format!("{} ", f64::from(row.pitch_um) / 1000.0)).collect::<String>();
            assert!(step.read.ends_with(&format!("pitches of {named}mm")), "{} {named}", step.read);
        }
        // A number that is none of R40 would have no place.
        let places = PITCHES.iter().flat_map(|row| row.deviations.into_iter().chain([row.major]));
        assert!(places.into_iter().all(|place| place != 0));
    }
}
