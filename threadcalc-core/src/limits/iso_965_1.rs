//! ISO 965-1:2013 limits of size of M threads, internal and external, by the standard's tables.
//!
//! A tolerance or deviation that the tables do not have is made by the standard's formula, rounded to
//! the R40 series, and the limits say so.

use super::iso_965_1_formula as formula;
use super::iso_965_1_table::{self as table, ByPitch, BySize, MINOR_DEPTH_E15, PITCH_DEPTH_E15};
use super::{Confidence, Limits};
use crate::Unit;
use crate::error::{Code, Error, Field};
use crate::length::{Length, Rounding, divide};
use crate::thread::Thread;

pub(super) const OVERFLOW: Error = Error::new(Code::Overflow, Field::Pitch);
/// The pitches and, in micrometres, the largest diameter that the formulas are made for; the largest is
/// the end of the last step of the edition of 1998.
const FORMULA_PITCHES_MM: (Length, Length) = (Length::parts(1, 5), Length::integer(8));
const LARGEST_UM: i64 = 355_000;

/// Grade and position of one diameter, `6` and `g`.
#[derive(Clone, Copy)]
struct Grade {
    digit: u8,
    position: u8,
}

impl Grade {
    /// The grades of the pitch and of the crest diameter: `5g6g`, or `6g` for both.
    fn of_class(class: &str) -> Option<(Self, Self)> {
        let (pitch, crest) = match *class.as_bytes() {
            [digit, position] => ([digit, position], [digit, position]),
            [digit, position, crest_digit, crest_position] => ([digit, position], [crest_digit, crest_position]),
            _ => return None,
        };
        let grade = |[digit, position]: [u8; 2]| Self { digit: digit.wrapping_sub(b'0'), position };
        Some((grade(pitch), grade(crest)))
    }

    const fn is_internal(self) -> bool {
        self.position.is_ascii_uppercase()
    }

    /// The place of the grade in a row that begins with this grade.
    fn place(self, first: u8) -> usize {
        usize::from(self.digit.wrapping_sub(first))
    }

    /// The column of the deviations; `None` for H and h, which have none.
    const fn deviation_column(self) -> Option<usize> {
        match self.position {
            b'G' | b'g' => Some(0),
            b'f' => Some(1),
            b'e' => Some(2),
            _ => None,
        }
    }
}

/// The basic sizes of a thread and the rows of the tables that are about it.
struct Basic {
    pitch_mm: Length,
    major_um: i64,
    pitch_diameter_um: i64,
    minor_um: i64,
    by_pitch: Option<&'static ByPitch>,
    by_size: Option<&'static BySize>,
}

impl Basic {
    fn of(thread: &Thread) -> Result<Self, Error> {
        let pitch_mm = thread.pitch_mm();
        let pitch_um = whole_um(pitch_mm);
        let major_um = match whole_um(thread.major_mm()) {
            Some(um) => um,
            None => thread.major_mm().round_to(3, Rounding::HalfEven)?.units(),
        };
        if major_um <= table::OVER_UM || major_um > LARGEST_UM {
            return Err(Error::new(Code::NotSourced, Field::Diameter)
                .got(thread.major_mm().to_f64())
                .within(1.0, 355.0)
                .hint_text("ISO 965-1 has tolerances of threads of 1 to 355 mm"));
        }
        let by_pitch = pitch_um.and_then(|um| table::PITCHES.iter().find(|row| i64::from(row.pitch_um) == um));
        let (pitch_depth, minor_depth) = match by_pitch {
            Some(row) => (i64::from(row.pitch_depth_um), i64::from(row.minor_depth_um)),
            None if pitch_mm < FORMULA_PITCHES_MM.0 || pitch_mm > FORMULA_PITCHES_MM.1 => {
                return Err(Error::new(Code::NotSourced, Field::Pitch)
                    .got(pitch_mm.to_f64())
                    .within(FORMULA_PITCHES_MM.0.to_f64(), FORMULA_PITCHES_MM.1.to_f64())
                    .hint_text("ISO 965-1 has tolerances of pitches of 0.2 to 8 mm"));
            }
            None => (depth_um(pitch_mm, PITCH_DEPTH_E15)?, depth_um(pitch_mm, MINOR_DEPTH_E15)?),
        };
        let step = table::STEPS.iter().find(|step| major_um <= step.to_um);
        let by_size = step.and_then(|step| step.rows.iter().find(|row| Some(i64::from(row.pitch_um)) == pitch_um));
        let less = |depth: i64| major_um.checked_sub(depth).ok_or(OVERFLOW);
        let (pitch_diameter_um, minor_um) = (less(pitch_depth)?, less(minor_depth)?);
        Ok(Self { pitch_mm, major_um, pitch_diameter_um, minor_um, by_pitch, by_size })
    }
}

/// Micrometres, of a length that is a whole number of them.
pub(super) fn whole_um(length: Length) -> Option<i64> {
    let parts = 1000_i64.checked_div(length.denominator())?;
    (parts.checked_mul(length.denominator())? == 1000).then_some(())?;
    length.numerator().checked_mul(parts)
}

/// A depth on the diameter, to three decimals of a millimetre as ISO 724 gives its diameters.
///
/// The factor is irrational, so no tie can occur: half to even names the rounding all the same.
pub(super) fn depth_um(pitch_mm: Length, depth_e15: i128) -> Result<i64, Error> {
    const E12: i128 = 1_000_000_000_000;
    let top = depth_e15.checked_mul(i128::from(pitch_mm.numerator())).ok_or(OVERFLOW)?;
    let bottom = E12.checked_mul(i128::from(pitch_mm.denominator())).ok_or(OVERFLOW)?;
    divide(top, bottom, Rounding::HalfEven).and_then(|um| i64::try_from(um).ok()).ok_or(OVERFLOW)
}

/// Takes cells of the tables, or the formula where there is no cell, and keeps what is least sure.
struct Taken {
    least_sure: Confidence,
}

impl Taken {
    fn cell(&mut self, packed: Option<u16>, formula: impl FnOnce() -> i64) -> i64 {
        let (um, confidence) = match packed.and_then(table::cell) {
            Some((um, confidence)) => (i64::from(um), confidence),
            None => (formula(), Confidence::Formula),
        };
        if confidence.number() > self.least_sure.number() {
            self.least_sure = confidence;
        }
        um
    }

    /// Distance of the tolerance zone from the basic size: upwards inside, downwards outside.
    fn deviation(&mut self, basic: &Basic, grade: Grade) -> i64 {
        let Some(column) = grade.deviation_column() else { return 0 };
        let packed = basic.by_pitch.and_then(|row| row.deviations.get(column).copied());
        self.cell(packed, || formula::deviation(column, basic.pitch_mm.to_f64()))
    }

    fn pitch_diameter(&mut self, basic: &Basic, grade: Grade) -> i64 {
        let packed = basic.by_size.and_then(|row| {
            if grade.is_internal() { row.internal.get(grade.place(4)) } else { row.external.get(grade.place(3)) }
        });
        let formula =
            || formula::pitch_diameter(grade.is_internal(), grade.digit, basic.pitch_mm.to_f64(), basic.major_um);
        self.cell(packed.copied(), formula)
    }

    fn minor(&mut self, basic: &Basic, grade: Grade) -> i64 {
        let packed = basic.by_pitch.and_then(|row| row.minor.get(grade.place(4)).copied());
        self.cell(packed, || formula::minor(grade.digit, basic.pitch_mm.to_f64()))
    }

    fn major(&mut self, basic: &Basic, grade: Grade) -> Result<i64, Error> {
        let column = match grade.digit {
            4 => 0,
            6 => 1,
            8 => 2,
            _ => {
                return Err(Error::new(Code::UnknownClass, Field::ToleranceClass).hint_text(
                    "the crests of an external thread have grades 4, 6 and 8: write both grades, such as 5g6g",
                ));
            }
        };
        let packed = basic.by_pitch.and_then(|row| row.major.get(column).copied());
        Ok(self.cell(packed, || formula::major(grade.digit, basic.pitch_mm.to_f64())))
    }
}

/// Limits of an M thread. The roots follow the position of the pitch diameter, the crests their own.
#[inline(never)]
pub(super) fn limits(thread: &Thread, class: &str) -> Result<Limits, Error> {
    limits_with(thread, class, true)
}

/// The same for threads whose minor diameter is another one; none is given.
pub(super) fn without_minor(thread: &Thread, class: &str) -> Result<Limits, Error> {
    limits_with(thread, class, false)
}

fn limits_with(thread: &Thread, class: &str, minor: bool) -> Result<Limits, Error> {
    let unknown = Error::new(Code::UnknownClass, Field::ToleranceClass).hint_text("such as 6H or 5g6g");
    let (pitch, crest) = Grade::of_class(class).ok_or(unknown)?;
    let basic = Basic::of(thread)?;
    let mut taken = Taken { least_sure: Confidence::Confirmed };
    let root_off = taken.deviation(&basic, pitch);
    let crest_off = if crest.position == pitch.position { root_off } else { taken.deviation(&basic, crest) };
    let pitch_tolerance = taken.pitch_diameter(&basic, pitch);
    let zone = |basic_um: i64, off: i64, tolerance: i64| -> Result<super::Range, Error> {
        let side = if pitch.is_internal() { 1 } else { -1_i64 };
        let near = side.checked_mul(off).and_then(|off| basic_um.checked_add(off)).ok_or(OVERFLOW)?;
        let far = side.checked_mul(tolerance).and_then(|wide| near.checked_add(wide)).ok_or(OVERFLOW)?;
        Ok((Some(millimetres(near.min(far))), Some(millimetres(near.max(far)))))
    };
    let pitch_diameter_mm = zone(basic.pitch_diameter_um, root_off, pitch_tolerance)?;
    let (major_mm, minor_mm) = if pitch.is_internal() {
        let minor = if minor { zone(basic.minor_um, crest_off, taken.minor(&basic, crest))? } else { (None, None) };
        ((zone(basic.major_um, root_off, 0)?.0, None), minor)
    } else {
        let major = zone(basic.major_um, crest_off, taken.major(&basic, crest)?)?;
        (major, (None, if minor { zone(basic.minor_um, root_off, 0)?.1 } else { None }))
    };
    Ok(Limits {
        major_mm,
        pitch_diameter_mm,
        minor_mm,
        native_unit: Unit::Mm,
        decimals: 3,
        source: source(taken.least_sure),
        confidence: taken.least_sure,
    })
}

const fn source(least_sure: Confidence) -> &'static str {
    match least_sure {
        Confidence::Formula => "ISO 965-1:2013, formulas, rounded to the R40 series; ISO 724",
        _ => "ISO 965-1:2013, tables of deviations and tolerances; ISO 724",
    }
}

pub(super) fn millimetres(um: i64) -> Length {
    Length::decimal_parts(um, 3, 3)
}
