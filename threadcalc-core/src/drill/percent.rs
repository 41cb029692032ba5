//! Percent of thread: the height of thread that a drilled hole leaves, on a named basis.

use crate::error::{Code, Error, Field};
use crate::length::{Length, Ratio};
use crate::named::named;
use crate::thread::{Side, Thread};

named! {
    /// What 100 % of thread is. Two bases are in print; neither is a default.
    pub enum Basis {
        /// 3/4 H, 1.299038 P on the diameter: the inch trade's charts.
        ThreeQuartersH = 1 "3H/4",
        /// 5/8 H, 1.082532 P on the diameter: the basic height, down to the basic minor diameter.
        FiveEighthsH = 2 "5H/8",
    }
}

impl Basis {
    /// 100 % of thread on the diameter, in pitches: 2 × 3/4 H or 2 × 5/8 H, H = √3/2 P.
    #[must_use]
    pub const fn pitches(self) -> f64 {
        match self {
            Self::ThreeQuartersH => 1.299_038_105_676_658,
            Self::FiveEighthsH => 1.082_531_754_730_548_3,
        }
    }
}

named! {
    /// How the tap makes the thread.
    pub enum Tap {
        /// It cuts chips.
        Cut = 1 "cut",
        /// It displaces metal; also called a roll tap.
        Form = 2 "form",
    }
}

/// 100 % of thread of a form tap on the diameter, in pitches (common practice).
const FORM_PITCHES: f64 = 0.68;

/// 100 % of thread on the diameter, in millimetres.
fn full_height(thread: &Thread, tap: Tap, basis: Option<Basis>) -> Result<f64, Error> {
    if thread.side() == Some(Side::External) {
        return Err(Error::new(Code::Contradiction, Field::Side).hint_text("an external thread has no tap drill"));
    }
    let pitches = match (tap, basis) {
        (Tap::Cut, Some(basis)) => basis.pitches(),
        (Tap::Form, None) => FORM_PITCHES,
        (Tap::Cut, None) => {
            return Err(
                Error::new(Code::Missing, Field::Basis).hint_text("3H/4 (1.299 P, inch charts) or 5H/8 (1.0825 P)")
            );
        }
        (Tap::Form, Some(_)) => {
            return Err(Error::new(Code::Contradiction, Field::Basis)
                .hint_text("a form tap has its own 100 %, 0.68 P: give no basis"));
        }
    };
    Ok(pitches * thread.pitch_mm().to_f64())
}

/// The hole for a percent of thread, in millimetres.
///
/// ```text
/// cut:   D − 1.299038 P × percent/100   (basis 3H/4)
///        D − 1.082532 P × percent/100   (basis 5H/8)
/// form:  D − 0.68 P × percent/100
/// ```
///
/// # Errors
/// [`Code::Missing`] for a cut tap without a basis, [`Code::Contradiction`] for a form tap with one or
/// for an external thread, [`Code::OutOfRange`] outside 0 < percent ≤ 100.
///
/// # Example
/// ```
/// use threadcalc_core::{Basis, Length, Tap, Thread, drill_diameter};
///
/// let thread = Thread::read(b"1/4-20 UNC-2B")?;
/// let hole = drill_diameter(&thread, Length::integer(75), Tap::Cut, Some(Basis::ThreeQuartersH))?;
/// assert!((hole / 25.4 - 0.2013).abs() < 0.00005);
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// Machinery's Handbook 31, tap drill sizes and percentage of thread (3H/4) and its text formula
/// (5H/8); form taps: common practice.
pub fn drill_diameter(thread: &Thread, percent: Ratio, tap: Tap, basis: Option<Basis>) -> Result<f64, Error> {
    if !percent.is_positive() || percent > Length::integer(100) {
        return Err(Error::new(Code::OutOfRange, Field::Percent).got(percent.to_f64()).within(0.0, 100.0));
    }
    let height = full_height(thread, tap, basis)?;
    Ok(thread.major_mm().to_f64() - height * percent.to_f64() / 100.0)
}

/// The percent of thread that a drilled hole leaves; the inverse of [`drill_diameter`].
///
/// `drill_mm` is the hole's diameter in millimetres, above 0 and below the major diameter.
///
/// # Errors
/// As [`drill_diameter`]; [`Code::OutOfRange`] for a hole that leaves no thread.
///
/// # Source
/// As [`drill_diameter`].
pub fn percent_thread(thread: &Thread, drill_mm: Length, tap: Tap, basis: Option<Basis>) -> Result<f64, Error> {
    if !drill_mm.is_positive() || drill_mm >= thread.major_mm() {
        return Err(Error::new(Code::OutOfRange, Field::Drill)
            .got(drill_mm.to_f64())
            .within(0.0, thread.major_mm().to_f64())
            .hint_text("the hole's diameter in mm, below the major diameter"));
    }
    let height = full_height(thread, tap, basis)?;
    // The difference is taken exactly, so that equal holes give equal percents.
    let depth = thread.major_mm().minus(drill_mm)?;
    Ok(depth.to_f64() / height * 100.0)
}
