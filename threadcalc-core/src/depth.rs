//! How deep to tap and to drill.

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
    if thread.form().is_taper() {
        return Err(Error::new(Code::DoesNotApply, Field::FullThreadDepth)
            .hint_text("a taper thread's depth follows from its gauge: use the taper depths"));
    }
    check(thread, request)?;
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

/// Height of a drill's point in millimetres: d/2 / tan(angle/2).
pub(crate) fn point_height_mm(drill_mm: Length, point_angle_deg: Length) -> f64 {
    let half_angle = point_angle_deg.to_f64() / 2.0 * (core::f64::consts::PI / 180.0);
    drill_mm.to_f64() / 2.0 / libm::tan(half_angle)
}

fn check(thread: &Thread, request: &DepthRequest) -> Result<(), Error> {
    let most = Length::integer(10_000);
    let ranges = [
        (request.full_thread_mm, Field::FullThreadDepth, Length::ZERO, most),
        (request.chamfer_threads, Field::ChamferThreads, Length::integer(-1), Length::integer(20)),
        (request.drill_mm, Field::Drill, Length::ZERO, thread.major_mm()),
        (request.point_angle_deg, Field::PointAngle, Length::integer(60), Length::integer(180)),
        (request.bottom_clearance_mm, Field::BottomClearance, Length::integer(-1), most),
        (request.tap_centre_mm, Field::TapCentre, Length::integer(-1), most),
    ];
    for (value, field, above, most) in ranges {
        // −1 stands for "0 or more": the other values have to be above their lower end.
        let low_enough = if above.is_negative() { value.is_negative() } else { value <= above };
        if low_enough || value > most {
            return Err(Error::new(Code::OutOfRange, field)
                .got(value.to_f64())
                .within(above.to_f64().max(0.0), most.to_f64()));
        }
    }
    Ok(())
}
