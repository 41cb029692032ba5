//! The hole of a form tap, and holes that are the other kind of tap's.

use super::Tap;
use super::percent::formed;
use crate::error::{Code, Error, Field};
use crate::length::Length;
use crate::thread::{Side, Thread};

/// 65 and 75 % of 0.68 P, in thousandths of the pitch.
const USUAL: (u32, u32) = (442, 510);
/// 50 to 80 % of 0.68 P: charts print form-tap drills of 55 to 77 %.
const FORMED: (u32, u32) = (340, 544);
/// From the basic minor diameter, 1.0825 P, to what no cut tap's class reaches: the largest minor diameter
/// of the classes is 0.75 P and more below the major diameter, but for the smallest Unified sizes.
const CUT: (u32, u32) = (750, 1_083);

/// The usual window of the hole for a form tap, smallest and largest diameter in millimetres, exact:
/// 75 and 65 % of its own height.
///
/// ```text
/// D − 0.68 P × 75/100 to D − 0.68 P × 65/100:  M8 7.3625 to 7.4475
/// ```
///
/// The tap maker's window for the tap and the material goes before it.
///
/// # Errors
/// [`Code::NotSourced`] for other threads than those of 60°, [`Code::DoesNotApply`] for Tr, ACME and buttress,
/// [`Code::Contradiction`] for an external thread, [`Code::OutOfRange`] where the pitch leaves no hole, [`Code::Overflow`].
///
/// # Example
/// ```
/// use threadcalc_core::{Thread, form_hole_mm};
///
/// let (least, most) = form_hole_mm(&Thread::read(b"M8-6H")?)?;
/// assert_eq!((least.to_string(), most.to_string()), ("7.3625".into(), "7.4475".into()));
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// Common practice: 65 to 75 % of 0.68 P on the diameter.
pub fn form_hole_mm(thread: &Thread) -> Result<(Length, Length), Error> {
    if thread.side() == Some(Side::External) {
        return Err(Error::new(Code::Contradiction, Field::Side).hint_text("an external thread has no tap drill"));
    }
    formed(thread.form())?;
    let window = (less(thread, USUAL.1)?, less(thread, USUAL.0)?);
    if !window.0.is_positive() {
        return Err(Error::new(Code::OutOfRange, Field::Pitch)
            .got(thread.pitch_mm().to_f64())
            .hint_text("the pitch leaves no hole at this diameter"));
    }
    Ok(window)
}

/// Whether a hole outside its own tap's is the other kind of tap's hole for this thread.
pub(super) fn is_other_taps(thread: &Thread, tap: Tap, hole: Length) -> bool {
    let (least, most) = if tap == Tap::Cut { FORMED } else { CUT };
    formed(thread.form()).is_ok()
        && less(thread, most).is_ok_and(|smallest| smallest <= hole)
        && less(thread, least).is_ok_and(|largest| hole <= largest)
}

/// Where a form tap's drill of a list may lie: from 100 to 50 % of its own height.
pub(super) fn reach(thread: &Thread) -> Result<(Length, Length), Error> {
    Ok((less(thread, 680)?, less(thread, FORMED.0)?))
}

/// The major diameter less thousandths of the pitch.
fn less(thread: &Thread, thousandths: u32) -> Result<Length, Error> {
    thread.major_mm().minus(thread.pitch_mm().times(Length::parts(thousandths, 1_000))?)
}
