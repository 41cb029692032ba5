//! ISO 965-1:2013, tolerance of the minor diameter of internal threads, T_D1, in micrometres.
//!
//! The standard's table governs: its formula, rounded to the R40 series, differs in single cells.

use super::{Confidence, Limits};
use crate::Unit;
use crate::error::{Code, Error, Field};
use crate::length::{Length, Rounding, divide};
use crate::thread::Thread;
use Confidence::{Confirmed, Memory};

/// One pitch of the table: µm, then T_D1 of grades 5 and 6 with the status of each cell.
struct Row {
    pitch_um: u16,
    grade_5: Option<(u16, Confidence)>,
    grade_6: Option<(u16, Confidence)>,
}

const fn row(pitch_um: u16, grade_5: (u16, Confidence), grade_6: Option<(u16, Confidence)>) -> Row {
    Row { pitch_um, grade_5: Some(grade_5), grade_6 }
}

/// Transcribed from ISO 965-1's table of T_D1. `Confirmed`: the R40 value of the formula agrees, or
/// printed limits show the cell; `Memory`: neither.
#[rustfmt::skip]
const MINOR: [Row; 24] = [
    row(250, (56, Memory), None), // formula, R40: 60
    row(300, (67, Confirmed), Some((85, Confirmed))),
    row(350, (80, Confirmed), Some((100, Confirmed))),
    row(400, (90, Confirmed), Some((112, Confirmed))),
    row(450, (100, Confirmed), Some((125, Confirmed))),
    row(500, (112, Memory), Some((140, Confirmed))), // formula, R40: 106 and 132; M3 6H prints 2.599
    row(600, (125, Confirmed), Some((160, Confirmed))),
    row(700, (140, Confirmed), Some((180, Confirmed))),
    row(750, (150, Confirmed), Some((190, Confirmed))),
    row(800, (160, Confirmed), Some((200, Confirmed))),
    row(1000, (190, Memory), Some((236, Confirmed))), // formula, R40: 180 and 224; M6 6H prints 5.153
    row(1250, (212, Confirmed), Some((265, Confirmed))),
    row(1500, (236, Memory), Some((300, Confirmed))), // formula, R40: 250 for grade 5
    row(1750, (265, Confirmed), Some((335, Confirmed))),
    row(2000, (300, Confirmed), Some((375, Confirmed))),
    row(2500, (355, Confirmed), Some((450, Confirmed))), // formula, R40: 425 for grade 6; M20 6H prints 17.744
    row(3000, (400, Confirmed), Some((500, Confirmed))),
    row(3500, (450, Confirmed), Some((560, Confirmed))),
    row(4000, (475, Confirmed), Some((600, Confirmed))),
    row(4500, (530, Confirmed), Some((670, Confirmed))),
    row(5000, (560, Confirmed), Some((710, Confirmed))),
    row(5500, (600, Confirmed), Some((750, Confirmed))),
    row(6000, (630, Confirmed), Some((800, Confirmed))),
    row(8000, (800, Confirmed), Some((1000, Confirmed))),
];

/// 5/4 H and 3/4 H of a 60° thread in 1e-15 pitches.
const MINOR_DEPTH_E15: i128 = 1_082_531_754_730_548;
const PITCH_DEPTH_E15: i128 = 649_519_052_838_329;

pub(super) fn limits(thread: &Thread, class: &str) -> Result<Limits, Error> {
    let (tolerance_um, confidence) = minor_tolerance(thread, class)?;
    let low = basic(thread, MINOR_DEPTH_E15)?;
    let high = low.plus(Length::parts(u32::from(tolerance_um), 1000))?;
    Ok(Limits {
        major_mm: (Some(thread.major_mm()), None),
        pitch_diameter_mm: (Some(basic(thread, PITCH_DEPTH_E15)?), None),
        minor_mm: (Some(low), Some(high)),
        native_unit: Unit::Mm,
        decimals: 3,
        source: "ISO 965-1:2013, minor diameter of internal threads",
        confidence,
    })
}

fn minor_tolerance(thread: &Thread, class: &str) -> Result<(u16, Confidence), Error> {
    let outside = Error::new(Code::NotSourced, Field::Pitch)
        .got(thread.pitch_mm().to_f64())
        .hint_text("ISO 965-1 has no minor-diameter tolerance of this grade for this pitch");
    let row =
        MINOR.iter().find(|row| Length::parts(u32::from(row.pitch_um), 1000) == thread.pitch_mm()).ok_or(outside)?;
    match class {
        "5H" => row.grade_5.ok_or(outside),
        "6H" => row.grade_6.ok_or(outside),
        _ => Err(Error::new(Code::NotSourced, Field::ToleranceClass).hint_text("this version has 5H and 6H")),
    }
}

/// Basic diameter at a depth on the diameter, to three decimals as ISO 724 gives it.
///
/// The factor is irrational, so no tie can occur: half to even names the rounding all the same.
fn basic(thread: &Thread, depth_e15: i128) -> Result<Length, Error> {
    const E12: i128 = 1_000_000_000_000;
    let overflow = Error::new(Code::Overflow, Field::Pitch);
    let pitch = thread.pitch_mm();
    let top = depth_e15.checked_mul(i128::from(pitch.numerator())).ok_or(overflow)?;
    let bottom = E12.checked_mul(i128::from(pitch.denominator())).ok_or(overflow)?;
    let depth_um = divide(top, bottom, Rounding::HalfEven).and_then(|um| i64::try_from(um).ok()).ok_or(overflow)?;
    let diameter = thread.major_mm().round_to(3, Rounding::HalfEven)?.to_length()?;
    diameter.minus(Length::new(depth_um, 1000)?)
}
