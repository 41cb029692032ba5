//! The countersink of a tapped hole, and the full thread that it takes away at the mouth.

use super::{MOST_MM, check, cone_height_mm, drill_bounds};
use crate::error::{Code, Error, Field};
use crate::form::Form;
use crate::length::Length;
use crate::thread::{Side, Thread};

/// A countersunk mouth. Depths from the face, in millimetres; derived.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Countersunk {
    /// To the tip of a pointed countersink that leaves this diameter at the face; one with a flat goes less deep.
    pub tip_mm: f64,
    /// To where the cone has narrowed to the major diameter: above it there is no thread at all. 0 for a
    /// countersink no larger than that.
    pub depth_at_major_mm: f64,
    /// To where the cone has narrowed to the hole: the thread is whole only from there on. What the
    /// countersink takes of the full thread.
    pub full_thread_lost_mm: f64,
}

/// The countersink that is usual for a thread. Exact.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct UsualCountersink {
    /// Smallest diameter at the face in millimetres.
    pub least_mm: Length,
    /// Largest diameter at the face in millimetres.
    pub most_mm: Length,
    /// Included angle in degrees.
    pub angle_deg: Length,
}

/// The depth of a countersink, and the full thread that it takes away at the mouth of a tapped hole.
///
/// ```text
/// tip              = C/2 / tan(angle/2)
/// depth at major   = (C − D)/2 / tan(angle/2), 0 if C is no larger than D
/// full thread lost = (C − hole)/2 / tan(angle/2)
/// ```
///
/// The thread stands between the hole and the major diameter, so a turn of it is whole only below the place
/// where the cone has narrowed to the hole. `countersink_mm`: diameter C at the face, larger than the hole;
/// `angle_deg`: included angle, 60 to 130 (90 and 120 are usual; 82 in the inch world); `hole_mm`: the
/// drilled hole, `None` for the basic minor diameter D1.
///
/// # Errors
/// [`Code::OutOfRange`]; [`Code::Contradiction`] for an external thread; [`Code::DoesNotApply`] for taper
/// threads, whose length counts from the gauge; [`Code::NotSourced`] for a profile that nobody has read.
///
/// # Example
/// ```
/// use threadcalc_core::{Length, Thread, countersink};
///
/// let (diameter, angle) = (Length::new(42, 5)?, Length::integer(90));
/// let found = countersink(&Thread::read(b"M8")?, diameter, angle, Some(Length::new(34, 5)?))?;
/// assert!((found.depth_at_major_mm - 0.2).abs() < 1e-12);
/// assert!((found.full_thread_lost_mm - 0.8).abs() < 1e-12);
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// Geometry; D1: as [`Thread::profile`].
pub fn countersink(
    thread: &Thread,
    countersink_mm: Length,
    angle_deg: Length,
    hole_mm: Option<Length>,
) -> Result<Countersunk, Error> {
    if thread.form().is_taper() {
        return Err(Error::new(Code::DoesNotApply, Field::Form)
            .hint_text("a straight thread: the length of a taper thread counts from its gauge"));
    }
    is_of_a_hole(thread)?;
    check(&[(countersink_mm, Field::Countersink, Length::ZERO, Length::integer(MOST_MM))])?;
    if !(Length::integer(60)..=Length::integer(130)).contains(&angle_deg) {
        return Err(Error::new(Code::OutOfRange, Field::CountersinkAngle).got(angle_deg.to_f64()).within(60.0, 130.0));
    }
    let (hole, is_larger) = match hole_mm {
        Some(hole) => {
            check(&[drill_bounds(thread, hole)])?;
            (hole.to_f64(), countersink_mm > hole)
        }
        None => {
            let minor = thread.profile().minor_mm;
            if minor.is_nan() {
                return Err(Error::new(Code::NotSourced, Field::Form).hint_text("give the drilled hole"));
            }
            (minor, countersink_mm.to_f64() > minor)
        }
    };
    if !is_larger {
        return Err(Error::new(Code::OutOfRange, Field::Countersink)
            .got(countersink_mm.to_f64())
            .within(hole, f64::NAN)
            .hint_text("larger than the hole"));
    }
    let over_major = countersink_mm.minus(thread.major_mm())?;
    Ok(Countersunk {
        tip_mm: cone_height_mm(countersink_mm.to_f64(), angle_deg),
        depth_at_major_mm: if over_major.is_positive() { cone_height_mm(over_major.to_f64(), angle_deg) } else { 0.0 },
        full_thread_lost_mm: cone_height_mm(countersink_mm.to_f64() - hole, angle_deg),
    })
}

/// The usual countersink of an ISO metric tapped hole: 1 to 1.05 times the nominal diameter, 120 degrees.
///
/// # Errors
/// [`Code::DoesNotApply`] for other threads than M and for holes of wire inserts; [`Code::Contradiction`] for an
/// external thread.
///
/// # Example
/// ```
/// use threadcalc_core::{Thread, usual_countersink};
///
/// let usual = usual_countersink(&Thread::read(b"M8")?)?;
/// assert_eq!((usual.least_mm.to_string(), usual.most_mm.to_string()), ("8".into(), "8.4".into()));
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// DIN 76-1, from memory; common practice.
pub fn usual_countersink(thread: &Thread) -> Result<UsualCountersink, Error> {
    is_of_a_hole(thread)?;
    if thread.form() != Form::Metric || thread.is_wire_insert() {
        return Err(Error::new(Code::DoesNotApply, Field::Form)
            .hint_text("DIN 76-1 is for M threads: give the countersink of the drawing"));
    }
    let nominal = thread.major_mm();
    Ok(UsualCountersink {
        least_mm: nominal,
        most_mm: nominal.times(const { Length::parts(105, 100) })?,
        angle_deg: Length::integer(120),
    })
}

fn is_of_a_hole(thread: &Thread) -> Result<(), Error> {
    if thread.side() == Some(Side::External) {
        return Err(Error::new(Code::Contradiction, Field::Side).hint_text("the countersink of a tapped hole"));
    }
    Ok(())
}
