//! The H limit that tap makers recommend for a class of thread.

use super::limit::{LimitLetter, TapLimit};
use crate::error::{Code, Error, Field};
use crate::form::Form;
use crate::thread::Thread;

/// Major diameter in ten thousandths of an inch, threads per inch, H for 2B and for 3B.
const READ: [(u32, u32, u8, u8); 34] = [
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

/// The limit of a ground tap that tap makers recommend to cut a class of Unified thread in the usual materials,
/// not plated.
///
/// A recommendation and no standard: a tap that cuts oversize (soft or stringy material, a holder that runs out)
/// needs a smaller number, one that closes in (cast iron, thin walls) a larger one. GO and NOT GO decide.
///
/// # Errors
/// [`Code::ClassUnset`] without a class, [`Code::DoesNotApply`] for an external class or a thread that is not
/// Unified, [`Code::NotSourced`] for what the table that was read does not have: other classes than 2B and 3B,
/// other sizes than those of UNC and UNF up to 3/4-10.
///
/// # Example
/// ```
/// use threadcalc_core::{Thread, usual_tap_limit};
///
/// assert_eq!(usual_tap_limit(&Thread::read(b"1/4-20 UNC-2B")?)?.to_string(), "H5");
/// assert_eq!(usual_tap_limit(&Thread::read(b"1/4-20 UNC-3B")?)?.to_string(), "H3");
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// A tap maker's printed recommendations for classes 2B and 3B; common practice.
pub fn usual_tap_limit(thread: &Thread) -> Result<TapLimit, Error> {
    if thread.form() != Form::Unified {
        return Err(Error::new(Code::DoesNotApply, Field::Form)
            .hint_text("H limits by class are those of Unified threads; metric taps have ISO classes or D limits"));
    }
    let class = thread.tolerance_class().ok_or(Error::new(Code::ClassUnset, Field::ToleranceClass))?;
    let is_3b = match class.as_str() {
        "2B" => false,
        "3B" => true,
        "1A" | "2A" | "3A" => {
            return Err(Error::new(Code::DoesNotApply, Field::ToleranceClass).hint_text("a tap cuts 2B or 3B"));
        }
        _ => return Err(Error::new(Code::NotSourced, Field::ToleranceClass).hint_text("read for 2B and 3B only")),
    };
    let (major, pitch) = (thread.major_mm(), thread.pitch_mm());
    // 10000 D / 25.4 and 25.4 / P, without the reduction to lowest terms that exact lengths come to.
    let size = quotient((major.numerator(), 50_000), (major.denominator(), 127));
    let tpi = quotient((pitch.denominator(), 127), (pitch.numerator(), 5));
    let is_listed = |row: &&(u32, u32, u8, u8)| size == Some(i64::from(row.0)) && tpi == Some(i64::from(row.1));
    let row = READ.iter().find(is_listed).filter(|_| thread.starts() == 1);
    let (_, _, for_2b, for_3b) =
        row.ok_or(Error::new(Code::NotSourced, Field::Diameter).hint_text("read for UNC and UNF up to 3/4-10 only"))?;
    TapLimit::new(LimitLetter::H, if is_3b { *for_3b } else { *for_2b })
}

/// A product over another, if that is a whole number.
fn quotient((a, b): (i64, i64), (c, d): (i64, i64)) -> Option<i64> {
    let (over, under) = (a.checked_mul(b)?, c.checked_mul(d)?);
    over.checked_rem(under).filter(|rest| *rest == 0)?;
    over.checked_div(under)
}
