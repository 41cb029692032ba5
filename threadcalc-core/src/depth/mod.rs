//! How deep to tap and to drill: forward, back from a drilled hole, and what stands in the way at either end.

mod blind;
mod bottoming;
mod countersink;
mod program;
mod run_out;
mod through;

pub(crate) use blind::chamfer_that_gives;
pub use blind::{BlindHole, BlindThread, ChamferReading, DrilledTo, chamfers_for_full_thread, full_thread_that_fits};
pub use bottoming::{BottomReading, BottomVerdict, Bottoming, USUAL_POINT_ANGLES_DEG, bottoming};
pub use countersink::{Countersunk, UsualCountersink, countersink, usual_countersink};
pub use program::{DepthRounding, ProgramDepth, program_depth, program_depth_of_derived};
pub use run_out::{RunOut, run_out_mm};
pub use through::{ThroughHole, ThroughHoleRequest, through_hole};

use crate::error::{Code, Error, Field};
use crate::length::Length;
use crate::named::named;
use crate::thread::Thread;

named! {
    /// Whether the hole goes through the part.
    pub enum Hole {
        /// It does.
        Through = 1 "through",
        /// It does not.
        Blind = 2 "blind",
    }
}

named! {
    /// The place on the tap that its length offset is set on.
    pub enum TapSetOn {
        /// The front of the chamfer.
        Front = 1 "front",
        /// The tip of the male centre.
        Centre = 2 "centre",
    }
}

/// What the depths are made of. Lengths in millimetres, exact.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct DepthRequest {
    /// Full thread from the face.
    pub full_thread_mm: Length,
    /// Threads of the tap's chamfer; plan on the longest of its form.
    pub chamfer_threads: Length,
    /// The drilled hole.
    pub drill_mm: Length,
    /// Point angle of the drill in degrees, above 60 and up to 180.
    pub point_angle_deg: Length,
    /// Room below the tap: stop and chips.
    pub bottom_clearance_mm: Length,
    /// Length of the tap's male centre, 0 without one.
    pub tap_centre_mm: Length,
    /// Where the tap's length offset is set.
    pub tap_set_on: TapSetOn,
    /// Through or blind.
    pub hole: Hole,
}

/// Depths from the face, in millimetres.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Depths {
    /// To the very end of the tap, its centre included.
    pub tap_mm: Length,
    /// To the point that the tap's length offset is set on: what the program says.
    pub program_tap_mm: Length,
    /// To the end of the drill's full diameter.
    pub full_diameter_mm: Length,
    /// To the drill's point; derived.
    pub drill_point_mm: f64,
}

impl Depths {
    /// No hole yet.
    pub(crate) const NONE: Self = Self {
        tap_mm: Length::ZERO,
        program_tap_mm: Length::ZERO,
        full_diameter_mm: Length::ZERO,
        drill_point_mm: 0.0,
    };
}

/// The depths of a tapped hole.
///
/// ```text
/// tap           = full thread + chamfer threads × P + tap centre
/// full diameter = tap + bottom clearance           (through: full thread + bottom clearance)
/// drill point   = full diameter + d/2 / tan(point angle / 2)
/// ```
///
/// # Errors
/// [`Code::OutOfRange`] names the value that makes no sense; [`Code::Overflow`];
/// [`Code::DoesNotApply`] for taper threads, see [`taper_depths`](crate::taper_depths).
///
/// # Example
/// ```
/// use threadcalc_core::{DepthRequest, Hole, Length, TapSetOn, Thread, depths};
///
/// let request = DepthRequest {
///     full_thread_mm: Length::integer(16),
///     chamfer_threads: Length::integer(3), // form C at its longest
///     drill_mm: Length::new(34, 5)?,
///     point_angle_deg: Length::integer(118),
///     bottom_clearance_mm: Length::new(15, 4)?,
///     tap_centre_mm: Length::ZERO,
///     tap_set_on: TapSetOn::Front,
///     hole: Hole::Blind,
/// };
/// let found = depths(&Thread::read(b"M8")?, &request)?;
/// assert_eq!(found.tap_mm.to_string(), "19.75");
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// Common practice; chamfer lengths by form: DIN 2197.
pub fn depths(thread: &Thread, request: &DepthRequest) -> Result<Depths, Error> {
    straight(thread)?;
    let most = Length::integer(MOST_MM);
    check(&[
        (request.full_thread_mm, Field::FullThreadDepth, Length::ZERO, most),
        chamfer_bounds(request.chamfer_threads),
        drill_bounds(thread, request.drill_mm),
        angle_bounds(request.point_angle_deg),
        (request.bottom_clearance_mm, Field::BottomClearance, FROM_ZERO, most),
        (request.tap_centre_mm, Field::TapCentre, FROM_ZERO, most),
    ])?;
    let chamfer = request.chamfer_threads.times(thread.pitch_mm())?;
    let front = request.full_thread_mm.plus(chamfer)?;
    let tap = front.plus(request.tap_centre_mm)?;
    let to_clear = match request.hole {
        Hole::Blind => tap,
        Hole::Through => request.full_thread_mm,
    };
    let full_diameter = to_clear.plus(request.bottom_clearance_mm)?;
    Ok(Depths {
        tap_mm: tap,
        program_tap_mm: match request.tap_set_on {
            TapSetOn::Front => front,
            TapSetOn::Centre => tap,
        },
        full_diameter_mm: full_diameter,
        drill_point_mm: full_diameter.to_f64() + point_height_mm(request.drill_mm, request.point_angle_deg),
    })
}

/// The deepest hole that is looked at.
const MOST_MM: i64 = 10_000;
/// As a lower end: 0 itself will do. Other lower ends have to be passed.
const FROM_ZERO: Length = Length::integer(-1);

/// A value, its name, the end that it has to be above, and the most it may be.
type Bounds = (Length, Field, Length, Length);

fn chamfer_bounds(threads: Length) -> Bounds {
    (threads, Field::ChamferThreads, FROM_ZERO, Length::integer(20))
}

fn drill_bounds(thread: &Thread, drill_mm: Length) -> Bounds {
    (drill_mm, Field::Drill, Length::ZERO, thread.major_mm())
}

fn angle_bounds(point_angle_deg: Length) -> Bounds {
    (point_angle_deg, Field::PointAngle, Length::integer(60), Length::integer(180))
}

fn check(bounds: &[Bounds]) -> Result<(), Error> {
    for (value, field, above, most) in bounds {
        let low_enough = if above.is_negative() { value.is_negative() } else { value <= above };
        if low_enough || value > most {
            let error = Error::new(Code::OutOfRange, *field).got(value.to_f64());
            let error = error.within(above.to_f64().max(0.0), most.to_f64());
            return Err(match *field {
                _ if above.is_negative() => error,
                Field::PointAngle => error.hint_text("above 60 degrees"),
                _ => error.hint_text(if *above == Length::ZERO { "above 0" } else { "above the lower end" }),
            });
        }
    }
    Ok(())
}

fn straight(thread: &Thread) -> Result<(), Error> {
    if thread.form().is_taper() {
        return Err(Error::new(Code::DoesNotApply, Field::FullThreadDepth)
            .hint_text("a taper thread's depth follows from its gauge: use the taper depths"));
    }
    Ok(())
}

/// Height of a drill's point in millimetres: d/2 / tan(angle/2).
pub(crate) fn point_height_mm(drill_mm: Length, point_angle_deg: Length) -> f64 {
    cone_height_mm(drill_mm.to_f64(), point_angle_deg)
}

fn cone_height_mm(diameter_mm: f64, angle_deg: Length) -> f64 {
    let half_angle = angle_deg.to_f64() / 2.0 * (core::f64::consts::PI / 180.0);
    diameter_mm / 2.0 / libm::tan(half_angle)
}

/// The height of a drill's point as an exact number that is never too small.
///
/// Exact at 180° and 90°, the only angles of a rational number of degrees whose half has a rational
/// tangent; else the next millionth of a millimetre above.
fn safe_point_height_mm(drill_mm: Length, point_angle_deg: Length) -> Result<Length, Error> {
    match point_angle_deg.whole() {
        Some(180) => Ok(Length::ZERO),
        Some(90) => drill_mm.over(Length::integer(2)),
        _ => Length::new(libm::ceil(point_height_mm(drill_mm, point_angle_deg) * 1e6) as i64, 1_000_000),
    }
}
