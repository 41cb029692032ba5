//! What comes out below a part with a tapped through hole.

use super::{
    FROM_ZERO, MOST_MM, TapSetOn, angle_bounds, chamfer_bounds, check, drill_bounds, point_height_mm, straight,
};
use crate::error::{Error, Field};
use crate::length::{Length, Ratio};
use crate::thread::Thread;

/// What a tapped through hole is made of. Lengths in millimetres, exact.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct ThroughHoleRequest {
    /// Thickness of the part at the hole.
    pub part_thickness_mm: Length,
    /// Threads of the tap's chamfer; plan on the longest of its form.
    pub chamfer_threads: Ratio,
    /// Turns that the spindle coasts on after the programmed depth.
    pub over_travel_turns: Ratio,
    /// The drilled hole.
    pub drill_mm: Length,
    /// Point angle of the drill in degrees, above 60 and up to 180.
    pub point_angle_deg: Length,
    /// How far the drill's full diameter has to come out, so that no burr is left: 0 or more.
    pub drill_clearance_mm: Length,
    /// Length of the tap's male centre, 0 without one.
    pub tap_centre_mm: Length,
    /// Where the tap's length offset is set.
    pub tap_set_on: TapSetOn,
}

/// Depths of a tapped through hole: from the face, and what comes out below the back face. Millimetres.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct ThroughHole {
    /// To the point that the tap's length offset is set on: what the program says.
    pub program_tap_mm: Length,
    /// To the very end of the tap at its deepest: centre and over-travel included.
    pub tap_mm: Length,
    /// What of that comes out below.
    pub tap_below_mm: Length,
    /// To the end of the drill's full diameter.
    pub full_diameter_mm: Length,
    /// To the drill's point; derived.
    pub drill_point_mm: f64,
    /// What of that comes out below; derived.
    pub drill_below_mm: f64,
}

/// How far tap and drill come out below a part: the room that vice, parallels and table have to leave.
///
/// ```text
/// tap below     = chamfer threads × P + tap centre + over-travel turns × lead
/// tap           = thickness + tap below;  the program leaves out the over-travel
/// full diameter = thickness + drill clearance
/// drill below   = drill clearance + d/2 / tan(point angle / 2)
/// ```
///
/// The whole thickness gets full thread.
///
/// # Errors
/// [`OutOfRange`](crate::Code::OutOfRange) names the value that makes no sense (over-travel: 0 to 20 turns);
/// [`DoesNotApply`](crate::Code::DoesNotApply) for taper threads; [`Overflow`](crate::Code::Overflow).
///
/// # Example
/// ```
/// use threadcalc_core::{Length, TapSetOn, ThroughHoleRequest, Thread, through_hole};
///
/// let request = ThroughHoleRequest {
///     part_thickness_mm: Length::integer(20),
///     chamfer_threads: Length::new(11, 2)?, // form B at its longest
///     over_travel_turns: Length::ONE,
///     drill_mm: Length::new(34, 5)?,
///     point_angle_deg: Length::integer(118),
///     drill_clearance_mm: Length::ONE,
///     tap_centre_mm: Length::ZERO,
///     tap_set_on: TapSetOn::Front,
/// };
/// let found = through_hole(&Thread::read(b"M8")?, &request)?;
/// assert_eq!((found.tap_below_mm.to_string(), found.tap_mm.to_string()), ("8.125".into(), "28.125".into()));
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// Common practice; chamfer lengths by form: DIN 2197.
pub fn through_hole(thread: &Thread, request: &ThroughHoleRequest) -> Result<ThroughHole, Error> {
    straight(thread)?;
    let most = Length::integer(MOST_MM);
    check(&[
        (request.part_thickness_mm, Field::PartThickness, Length::ZERO, most),
        chamfer_bounds(request.chamfer_threads),
        (request.over_travel_turns, Field::OverTravel, FROM_ZERO, Length::integer(20)),
        drill_bounds(thread, request.drill_mm),
        angle_bounds(request.point_angle_deg),
        (request.drill_clearance_mm, Field::DrillClearance, FROM_ZERO, most),
        (request.tap_centre_mm, Field::TapCentre, FROM_ZERO, most),
    ])?;
    let front_below = request.chamfer_threads.times(thread.pitch_mm())?;
    let programmed_below = front_below.plus(request.tap_centre_mm)?;
    let tap_below = programmed_below.plus(request.over_travel_turns.times(thread.lead_mm())?)?;
    let full_diameter = request.part_thickness_mm.plus(request.drill_clearance_mm)?;
    let point = point_height_mm(request.drill_mm, request.point_angle_deg);
    Ok(ThroughHole {
        program_tap_mm: request.part_thickness_mm.plus(match request.tap_set_on {
            TapSetOn::Front => front_below,
            TapSetOn::Centre => programmed_below,
        })?,
        tap_mm: request.part_thickness_mm.plus(tap_below)?,
        tap_below_mm: tap_below,
        full_diameter_mm: full_diameter,
        drill_point_mm: full_diameter.to_f64() + point,
        drill_below_mm: request.drill_clearance_mm.to_f64() + point,
    })
}
