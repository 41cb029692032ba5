//! The other way round: what a blind hole of a given depth has room for.

use super::{
    FROM_ZERO, MOST_MM, TapSetOn, angle_bounds, chamfer_bounds, check, drill_bounds, point_height_mm,
    safe_point_height_mm, straight,
};
use crate::depth::Hole;
use crate::error::{Code, Error, Field};
use crate::length::{Length, Ratio};
use crate::named::named;
use crate::tap::ChamferForm;
use crate::thread::Thread;

named! {
    /// What the depth of a drilled hole is measured to.
    pub enum DrilledTo {
        /// The end of the full diameter.
        FullDiameter = 1 "full_diameter",
        /// The tip of the drill's point.
        Point = 2 "point",
    }
}

/// A blind hole that is drilled, and what has to have room in it below the thread. Millimetres, exact.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct BlindHole {
    /// Depth of the hole from the face.
    pub drill_depth_mm: Length,
    /// What that depth is measured to.
    pub drill_depth_to: DrilledTo,
    /// Diameter of the hole.
    pub drill_mm: Length,
    /// Point angle of the drill in degrees, above 60 and up to 180; needed for a depth to the point.
    pub point_angle_deg: Option<Length>,
    /// Room below the tap: stop and chips.
    pub bottom_clearance_mm: Length,
    /// Length of the tap's male centre, 0 without one.
    pub tap_centre_mm: Length,
    /// Where the tap's length offset is set.
    pub tap_set_on: TapSetOn,
}

/// The thread that a blind hole has room for. Depths from the face, in millimetres.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct BlindThread {
    /// The longest full thread.
    pub full_thread_mm: Length,
    /// To the very end of the tap, its centre included.
    pub tap_mm: Length,
    /// To the point that the tap's length offset is set on: what the program says.
    pub program_tap_mm: Length,
    /// To the end of the drill's full diameter.
    pub full_diameter_mm: Length,
    /// To the drill's point; derived. `None` if neither it nor the angle was given.
    pub drill_point_mm: Option<f64>,
}

/// One form of chamfer in a blind hole.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct ChamferReading {
    /// The form.
    pub form: ChamferForm,
    /// Its longest chamfer in threads.
    pub chamfer_threads: Ratio,
    /// The full thread above that chamfer; `None` if nothing is left.
    pub full_thread_mm: Option<Length>,
    /// Whether a tap of this form gives the full thread that is wanted; see [`ChamferForm::fits`].
    pub gives_wanted: bool,
}

/// The longest full thread in a blind hole that is drilled to a given depth: [`depths`](crate::depths) back.
///
/// ```text
/// full diameter = depth                              (depth to the full diameter)
///               = depth − d/2 / tan(point angle / 2) (depth to the point)
/// tap           = full diameter − bottom clearance
/// full thread   = tap − tap centre − chamfer threads × P
/// ```
///
/// Exact; the height of the point is taken to the next 0.000001 mm above, so that the thread is never too
/// long (at 90° and 180° it is exact). `chamfer_threads`: 0 to 20, the longest of the tap's form.
///
/// # Errors
/// [`Code::OutOfRange`] names the value that makes no sense, or `drill_depth_mm` with the depth that has to
/// be passed where nothing is left for a full thread; [`Code::Missing`] for a depth to the point without the
/// angle, see [`bottoming`](crate::bottoming); [`Code::DoesNotApply`] for taper threads; [`Code::Overflow`].
///
/// # Example
/// ```
/// use threadcalc_core::{BlindHole, DrilledTo, Length, TapSetOn, Thread, full_thread_that_fits};
///
/// let hole = BlindHole {
///     drill_depth_mm: Length::integer(24),
///     drill_depth_to: DrilledTo::FullDiameter,
///     drill_mm: Length::integer(9),
///     point_angle_deg: None,
///     bottom_clearance_mm: Length::integer(3),
///     tap_centre_mm: Length::ZERO,
///     tap_set_on: TapSetOn::Front,
/// };
/// let found = full_thread_that_fits(&Thread::read(b"M10x1")?, &hole, Length::integer(3))?;
/// assert_eq!((found.full_thread_mm, found.tap_mm), (Length::integer(18), Length::integer(21)));
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// Common practice; chamfer lengths by form: DIN 2197.
pub fn full_thread_that_fits(thread: &Thread, hole: &BlindHole, chamfer_threads: Ratio) -> Result<BlindThread, Error> {
    let full_diameter = full_diameter(thread, hole)?;
    check(&[chamfer_bounds(chamfer_threads)])?;
    let (tap, front) = tap_ends(hole, full_diameter)?;
    let full_thread = front.minus(chamfer_threads.times(thread.pitch_mm())?)?;
    if !full_thread.is_positive() {
        return Err(Error::new(Code::OutOfRange, Field::DrillDepth)
            .got(hole.drill_depth_mm.to_f64())
            .within(hole.drill_depth_mm.minus(full_thread)?.to_f64(), f64::NAN)
            .hint_text("no full thread fits: drill deeper, or take a shorter chamfer"));
    }
    Ok(BlindThread {
        full_thread_mm: full_thread,
        tap_mm: tap,
        program_tap_mm: match hole.tap_set_on {
            TapSetOn::Front => front,
            TapSetOn::Centre => tap,
        },
        full_diameter_mm: full_diameter,
        drill_point_mm: match (hole.drill_depth_to, hole.point_angle_deg) {
            (DrilledTo::Point, _) => Some(hole.drill_depth_mm.to_f64()),
            (DrilledTo::FullDiameter, Some(angle)) => {
                Some(full_diameter.to_f64() + point_height_mm(hole.drill_mm, angle))
            }
            (DrilledTo::FullDiameter, None) => None,
        },
    })
}

/// Every form of chamfer in a blind hole: the full thread above its longest chamfer, and whether that is what
/// is wanted. In the order of [`ChamferForm::ALL`], A to F first; B drives its chips to the bottom and never
/// gives it.
///
/// # Errors
/// As [`full_thread_that_fits`], but for a hole that is too shallow: then no form gives what is wanted.
///
/// # Example
/// ```
/// use threadcalc_core::{BlindHole, ChamferForm, DrilledTo, Length, TapSetOn, Thread, chamfers_for_full_thread};
///
/// let hole = BlindHole {
///     drill_depth_mm: Length::integer(22),
///     drill_depth_to: DrilledTo::FullDiameter,
///     drill_mm: Length::new(34, 5)?,
///     point_angle_deg: None,
///     bottom_clearance_mm: Length::integer(3),
///     tap_centre_mm: Length::ZERO,
///     tap_set_on: TapSetOn::Front,
/// };
/// let readings = chamfers_for_full_thread(&Thread::read(b"M8")?, &hole, Length::integer(16))?;
/// let forms = readings.iter().filter(|reading| reading.gives_wanted).map(|reading| reading.form);
/// let wanted = [ChamferForm::E, ChamferForm::F, ChamferForm::Bottoming]; // 19 − 16 mm is 2.4 threads of 1.25
/// assert_eq!(forms.collect::<Vec<_>>(), wanted);
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// DIN 2197 as tap makers print it, see [`ChamferForm::threads`].
pub fn chamfers_for_full_thread(
    thread: &Thread,
    hole: &BlindHole,
    wanted_mm: Length,
) -> Result<[ChamferReading; ChamferForm::ALL.len()], Error> {
    let (front, room_threads) = room_below(thread, hole, wanted_mm)?;
    let none = ChamferReading {
        form: ChamferForm::A,
        chamfer_threads: Length::ZERO,
        full_thread_mm: None,
        gives_wanted: false,
    };
    let mut readings = [none; ChamferForm::ALL.len()];
    for (reading, form) in readings.iter_mut().zip(ChamferForm::ALL.iter().copied()) {
        let chamfer_threads = form.threads().1;
        let left = front.minus(chamfer_threads.times(thread.pitch_mm())?)?;
        *reading = ChamferReading {
            form,
            chamfer_threads,
            full_thread_mm: Some(left).filter(|left| left.is_positive()),
            gives_wanted: form.fits(Hole::Blind, room_threads),
        };
    }
    Ok(readings)
}

/// The first of the forms that gives the full thread wanted.
#[inline(never)]
pub(crate) fn chamfer_that_gives(
    thread: &Thread,
    hole: &BlindHole,
    wanted_mm: Length,
) -> Result<Option<ChamferForm>, Error> {
    let (_, room_threads) = room_below(thread, hole, wanted_mm)?;
    Ok(ChamferForm::ALL.iter().copied().find(|form| form.fits(Hole::Blind, room_threads)))
}

/// Where the front of the deepest tap ends, and the threads of room from the full thread wanted to there.
#[inline(never)]
fn room_below(thread: &Thread, hole: &BlindHole, wanted_mm: Length) -> Result<(Length, Ratio), Error> {
    let full_diameter = full_diameter(thread, hole)?;
    check(&[(wanted_mm, Field::FullThreadDepth, Length::ZERO, Length::integer(MOST_MM))])?;
    let (_, front) = tap_ends(hole, full_diameter)?;
    Ok((front, front.minus(wanted_mm)?.over(thread.pitch_mm())?))
}

/// How deep the hole has its full diameter, once its values make sense.
fn full_diameter(thread: &Thread, hole: &BlindHole) -> Result<Length, Error> {
    straight(thread)?;
    let most = Length::integer(MOST_MM);
    check(&[
        (hole.drill_depth_mm, Field::DrillDepth, Length::ZERO, most),
        drill_bounds(thread, hole.drill_mm),
        (hole.bottom_clearance_mm, Field::BottomClearance, FROM_ZERO, most),
        (hole.tap_centre_mm, Field::TapCentre, FROM_ZERO, most),
    ])?;
    if let Some(angle) = hole.point_angle_deg {
        check(&[angle_bounds(angle)])?;
    }
    match (hole.drill_depth_to, hole.point_angle_deg) {
        (DrilledTo::FullDiameter, _) => Ok(hole.drill_depth_mm),
        (DrilledTo::Point, Some(angle)) => hole.drill_depth_mm.minus(safe_point_height_mm(hole.drill_mm, angle)?),
        (DrilledTo::Point, None) => Err(Error::new(Code::Missing, Field::PointAngle)
            .hint_text("a depth to the drill's point needs its angle; where nobody knows it, ask for every reading")),
    }
}

/// The deepest that the very end of the tap and the front of its chamfer may go.
fn tap_ends(hole: &BlindHole, full_diameter: Length) -> Result<(Length, Length), Error> {
    let tap = full_diameter.minus(hole.bottom_clearance_mm)?;
    Ok((tap, tap.minus(hole.tap_centre_mm)?))
}
