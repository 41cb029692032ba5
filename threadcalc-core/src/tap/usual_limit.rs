//! The H or D limit that tap makers recommend for a class of thread, bare and under a plating.

use super::closing_mm;
use super::limit::{LimitLetter, TapLimit};
use crate::error::{Code, Error, Field};
use crate::form::Form;
use crate::length::Length;
use crate::thread::{Side, Thread};

/// Major diameter in ten thousandths of an inch, threads per inch, H for 2B and for 3B.
const UNIFIED: [(u32, u32, u8, u8); 34] = [
    (600, 80, 2, 2),
    (730, 64, 2, 2),
    (730, 72, 2, 2),
    (860, 56, 2, 2),
    (860, 64, 2, 2),
    (990, 48, 3, 2),
    (990, 56, 2, 2),
    (1120, 40, 3, 2),
    (1120, 48, 3, 2),
    (1250, 40, 3, 2),
    (1250, 44, 3, 2),
    (1380, 32, 3, 2),
    (1380, 40, 3, 2),
    (1640, 32, 3, 3),
    (1640, 36, 3, 3),
    (1900, 24, 3, 3),
    (1900, 32, 3, 3),
    (2160, 24, 3, 3),
    (2160, 28, 3, 3),
    (2500, 20, 5, 3),
    (2500, 28, 4, 3),
    (3125, 18, 5, 3),
    (3125, 24, 4, 3),
    (3750, 16, 5, 3),
    (3750, 24, 4, 3),
    (4375, 14, 5, 3),
    (4375, 20, 5, 3),
    (5000, 13, 5, 4),
    (5000, 20, 5, 3),
    (5625, 12, 5, 4),
    (5625, 18, 5, 3),
    (6250, 11, 5, 4),
    (6250, 18, 5, 3),
    (7500, 10, 5, 4),
];

/// Major diameter and pitch in hundredths of a millimetre, D for 6H: M1.6, M1.8, M5 to M8, M10 and M10x1.25 as
/// printed, the others from memory of the same tables.
const METRIC: [(i64, i64, u8); 22] = [
    (160, 35, 3),
    (180, 35, 3),
    (200, 40, 3),
    (250, 45, 3),
    (300, 50, 3),
    (350, 60, 4),
    (400, 70, 4),
    (450, 75, 4),
    (500, 80, 4),
    (600, 100, 5),
    (700, 100, 5),
    (800, 100, 5),
    (800, 125, 5),
    (1_000, 125, 5),
    (1_000, 150, 6),
    (1_200, 175, 6),
    (1_400, 200, 7),
    (1_600, 200, 7),
    (2_000, 250, 7),
    (2_400, 300, 8),
    (3_000, 350, 9),
    (3_600, 400, 9),
];

/// The limit of a ground tap that tap makers recommend to cut a class of thread in the usual materials, not
/// plated: H for Unified threads, D for metric ones, whose taps of the inch system it is.
///
/// A recommendation and no standard: a tap that cuts oversize (soft or stringy material, a holder that runs out)
/// needs a smaller number, one that closes in (cast iron, thin walls) a larger one. GO and NOT GO decide.
///
/// # Errors
/// [`Code::ClassUnset`] without a class, [`Code::DoesNotApply`] for an external class or another thread than UN and M,
/// [`Code::NotSourced`] for the hole of a wire insert and what nobody has read: other classes than 2B, 3B and 6H, other Unified sizes than
/// those of UNC and UNF up to 3/4-10, other metric ones than the coarse pitches of M1.6 to M36 of the first
/// choice, M1.8, M3.5, M4.5, M7, M14, M8x1 and M10x1.25.
///
/// # Example
/// ```
/// use threadcalc_core::{Thread, usual_tap_limit};
///
/// assert_eq!(usual_tap_limit(&Thread::read(b"1/4-20 UNC-2B")?)?.to_string(), "H5");
/// assert_eq!(usual_tap_limit(&Thread::read(b"1/4-20 UNC-3B")?)?.to_string(), "H3");
/// assert_eq!(usual_tap_limit(&Thread::read(b"M6-6H")?)?.to_string(), "D5");
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// A tap maker's printed recommendations for classes 2B and 3B. D: printed recommendations for 6H (M1.6, M1.8)
/// and the one limit for which a tap maker's printed list has each of the other sizes: it names no class, but lies
/// within 8 µm of the ISO class 2 tap beside it; common practice. M2 to M4.5 and M12 to M36: from memory; each takes
/// 39 to 47 % of the tolerance of 6H.
pub fn usual_tap_limit(thread: &Thread) -> Result<TapLimit, Error> {
    if !matches!(thread.form(), Form::Unified | Form::Metric) {
        return Err(Error::new(Code::DoesNotApply, Field::Form)
            .hint_text("limits by class have been read for UN and M threads only"));
    }
    if thread.is_wire_insert() {
        return Err(Error::new(Code::NotSourced, Field::Form)
            .hint_text("which limit the tap for a wire insert usually has: see the insert's maker"));
    }
    let class = thread.tolerance_class().ok_or(Error::new(Code::ClassUnset, Field::ToleranceClass))?;
    if class.side() == Some(Side::External) {
        return Err(Error::new(Code::DoesNotApply, Field::ToleranceClass).hint_text("a tap cuts internal threads"));
    }
    match (thread.form(), class.as_str()) {
        (Form::Unified, "2B") => h_limit(thread, |row| row.2),
        (Form::Unified, "3B") => h_limit(thread, |row| row.3),
        (Form::Metric, "6H") => d_limit(thread),
        _ => Err(Error::new(Code::NotSourced, Field::ToleranceClass).hint_text("read for 2B, 3B and 6H only")),
    }
}

/// The H limit of a size by the column of its class.
fn h_limit(thread: &Thread, number: impl Fn(&(u32, u32, u8, u8)) -> u8) -> Result<TapLimit, Error> {
    let (major, pitch) = (thread.major_mm(), thread.pitch_mm());
    // 10000 D / 25.4 and 25.4 / P, without the reduction to lowest terms that exact lengths come to.
    let size = quotient((major.numerator(), 50_000), (major.denominator(), 127));
    let tpi = quotient((pitch.denominator(), 127), (pitch.numerator(), 5));
    let is_listed = |row: &&(u32, u32, u8, u8)| size == Some(i64::from(row.0)) && tpi == Some(i64::from(row.1));
    let row = UNIFIED.iter().find(is_listed).filter(|_| thread.starts() == 1);
    let not_read = Error::new(Code::NotSourced, Field::Diameter).hint_text("read for UNC and UNF up to 3/4-10 only");
    TapLimit::new(LimitLetter::H, number(row.ok_or(not_read)?))
}

/// The D limit of a size for 6H.
fn d_limit(thread: &Thread) -> Result<TapLimit, Error> {
    let hundredths = |length: Length| length.times(Length::integer(100)).ok().and_then(Length::whole);
    let (size, pitch) = (hundredths(thread.major_mm()), hundredths(thread.pitch_mm()));
    let row = METRIC.iter().find(|row| size == Some(row.0) && pitch == Some(row.1)).filter(|_| thread.starts() == 1);
    let not_read = Error::new(Code::NotSourced, Field::Diameter)
        .hint_text("known for coarse pitches of M1.6 to M36, M8x1 and M10x1.25 only: take ISO class 2");
    let (_, _, number) = row.ok_or(not_read)?;
    TapLimit::new(LimitLetter::D, *number)
}

/// The limit of a ground tap for a thread that is gauged after plating: the usual one, raised by what the plating
/// closes the pitch diameter.
///
/// ```text
/// n = usual n + closing / step, rounded up      closing = 4 × thickness on a 60° thread
///                                               step 0.0005 in (H), 0.013 mm (D)
/// ```
///
/// It leaves the tap its usual place in the class; the smallest limit that leaves room for the plating at all
/// is [`h_limit_for_plating`](crate::h_limit_for_plating). `plating_um` is the thickness on the surface in µm.
///
/// # Errors
/// Those of [`usual_tap_limit`]; [`Code::OutOfRange`] for a plating outside 0 to 1000 µm or a number beyond 30.
///
/// # Example
/// ```
/// use threadcalc_core::{Length, Thread, usual_tap_limit_for_plating};
///
/// // 0.0003 in = 7.62 µm close the pitch diameter by 0.0012 in, three steps: H5 becomes H8.
/// let limit = usual_tap_limit_for_plating(&Thread::read(b"1/4-20 UNC-2B")?, Length::new(762, 100)?)?;
/// assert_eq!(limit.to_string(), "H8");
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// Four times the thickness, raised by as many limits: common practice. The usual limit: as [`usual_tap_limit`].
pub fn usual_tap_limit_for_plating(thread: &Thread, plating_um: Length) -> Result<TapLimit, Error> {
    usual_tap_limit(thread)?.raised(closing_mm(thread, plating_um)?)
}

/// A product over another, if that is a whole number.
fn quotient((a, b): (i64, i64), (c, d): (i64, i64)) -> Option<i64> {
    let (over, under) = (a.checked_mul(b)?, c.checked_mul(d)?);
    over.checked_rem(under).filter(|rest| *rest == 0)?;
    over.checked_div(under)
}
