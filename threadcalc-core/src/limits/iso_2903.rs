//! ISO 2903:2016 limits of size of Tr threads, class 7e of one start.
//!
//! The deviation e and the tolerance of the major diameter are cells of ISO 965-1, on which ISO 2903 is built; the
//! tolerance of the pitch diameter has steps and pitches of its own. Its cells were read in a screw maker's printed
//! table of limits.

use super::iso_965_1::{OVERFLOW, millimetres, whole_um};
use super::iso_965_1_table::{PITCHES, cell};
use super::{Confidence, Limits, single_start};
use crate::Unit;
use crate::error::{Code, Error, Field};
use crate::length::{Rounding, divide};
use crate::profile::crest_clearance;
use crate::thread::Thread;

/// T_d2 of grade 7: a pitch, the tolerance in micrometres, and whether a print was read.
struct Cell {
    pitch_um: u16,
    tolerance_um: i64,
    is_read: bool,
}

const fn read(pitch_um: u16, tolerance_um: i64) -> Cell {
    Cell { pitch_um, tolerance_um, is_read: true }
}

/// The cell of ISO 965-1 for the same step and pitch.
const fn from_memory(pitch_um: u16, tolerance_um: i64) -> Cell {
    Cell { pitch_um, tolerance_um, is_read: false }
}

/// The steps of diameters, over the end of the one before and up to their own.
static STEPS: [(i64, &[Cell]); 3] = [
    (11_200, &[from_memory(1_500, 170), read(2_000, 190), read(3_000, 212)]),
    (22_400, &[from_memory(2_000, 200), read(3_000, 224), read(4_000, 265), read(5_000, 280)]),
    (45_000, &[read(3_000, 250), read(5_000, 300)]),
];
const OVER_UM: i64 = 5_600;

/// What a class 7e of a size is made of, in micrometres.
struct Terms {
    diameter: i64,
    pitch: i64,
    /// ac, and e of the pitch diameter.
    clearance: i64,
    deviation: i64,
    major_tolerance: i64,
    pitch_tolerance: i64,
    is_read: bool,
}

impl Terms {
    fn of(thread: &Thread) -> Option<Self> {
        let (diameter, pitch) = (whole_um(thread.major_mm())?, whole_um(thread.pitch_mm())?);
        let (_, cells) = STEPS.iter().find(|(end, _)| OVER_UM < diameter && diameter <= *end)?;
        let own = cells.iter().find(|cell| i64::from(cell.pitch_um) == pitch)?;
        let shared = PITCHES.iter().find(|row| row.pitch_um == own.pitch_um)?;
        let ([.., e], [grade_4, ..]) = (shared.deviations, shared.major);
        Some(Self {
            diameter,
            pitch,
            clearance: whole_um(crest_clearance(thread.pitch_mm()))?,
            deviation: i64::from(cell(e)?.0),
            major_tolerance: i64::from(cell(grade_4)?.0),
            pitch_tolerance: own.tolerance_um,
            is_read: own.is_read,
        })
    }

    /// 1.25 T_d2 to whole micrometres, ties to the even one, and the deviation.
    fn minor_tolerance(&self) -> Result<i64, Error> {
        let five = i128::from(self.pitch_tolerance).checked_mul(5).ok_or(OVERFLOW)?;
        let rounded = divide(five, 4, Rounding::HalfEven).and_then(|um| i64::try_from(um).ok());
        rounded.and_then(|um| um.checked_add(self.deviation)).ok_or(OVERFLOW)
    }
}

#[inline(never)]
pub(super) fn limits(thread: &Thread, class: &str) -> Result<Limits, Error> {
    let not_read = |field| {
        Error::new(Code::NotSourced, field)
            .hint_text("of Tr read: 7e of one start, over 5.6 to 45 mm, standard pitches of 1.5 to 5 mm")
    };
    if class != "7e" {
        return Err(not_read(Field::ToleranceClass));
    }
    single_start(thread)?;
    let terms = Terms::of(thread).ok_or(not_read(Field::Diameter).got(thread.major_mm().to_f64()))?;
    let less = |from: i64, by: i64| from.checked_sub(by).ok_or(OVERFLOW);
    let half = terms.pitch.checked_div(2).ok_or(OVERFLOW)?;
    let pitch_high = less(less(terms.diameter, half)?, terms.deviation)?;
    let minor_high = less(less(terms.diameter, terms.pitch)?, terms.clearance.checked_mul(2).ok_or(OVERFLOW)?)?;
    let zone =
        |high: i64, tolerance: i64| less(high, tolerance).map(|low| (Some(millimetres(low)), Some(millimetres(high))));
    Ok(Limits {
        major_mm: zone(terms.diameter, terms.major_tolerance)?,
        pitch_diameter_mm: zone(pitch_high, terms.pitch_tolerance)?,
        minor_mm: zone(minor_high, terms.minor_tolerance()?)?,
        native_unit: Unit::Mm,
        decimals: 3,
        source: "ISO 2903:2016 and ISO 2904:2020; ISO 965-1:2013 (deviation e, T_d of grade 4)",
        confidence: if terms.is_read { Confidence::Confirmed } else { Confidence::Memory },
    })
}
