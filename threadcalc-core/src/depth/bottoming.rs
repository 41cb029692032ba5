//! Whether a tap runs into the bottom of a hole whose depth is given to the drill's point.

use super::{MOST_MM, angle_bounds, check, drill_bounds, safe_point_height_mm};
use crate::error::{Error, Field};
use crate::length::Length;
use crate::named::named;
use crate::thread::Thread;

/// The point angles of drills in everyday use, in degrees. Common practice.
pub const USUAL_POINT_ANGLES_DEG: [Length; 4] =
    [Length::integer(118), Length::integer(130), Length::integer(135), Length::integer(140)];

named! {
    /// What the room below a tap means. The larger number is the worse.
    pub enum BottomVerdict {
        /// More than one pitch of room.
        Fine = 1 "fine",
        /// 0 to 1 pitch: no room for chips, nor for a spindle that stops late.
        Warning = 2 "warning",
        /// Less than 0: the tap runs into the cone of the hole.
        Error = 3 "error",
    }
}

impl BottomVerdict {
    /// Less than no room is wrong, up to one pitch doubtful.
    pub(crate) fn of(room_mm: Length, thread: &Thread) -> Self {
        match room_mm {
            room if room.is_negative() => Self::Error,
            room if room <= thread.pitch_mm() => Self::Warning,
            _ => Self::Fine,
        }
    }
}

/// The bottom of a hole as one point angle makes it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct BottomReading {
    /// The point angle in degrees.
    pub point_angle_deg: Length,
    /// How deep the hole has its full diameter, in millimetres; below 0 where the point alone is deeper.
    pub full_diameter_mm: Length,
    /// From the very end of the tap to there, in millimetres.
    pub room_mm: Length,
    /// What that means.
    pub verdict: BottomVerdict,
}

/// The readings of one hole: one for a known point angle, one for each usual angle otherwise.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Bottoming {
    readings: [Option<BottomReading>; USUAL_POINT_ANGLES_DEG.len()],
    is_certain: bool,
}

impl Bottoming {
    /// The readings, the sharpest point first.
    pub fn readings(&self) -> impl Iterator<Item = BottomReading> + Clone + '_ {
        self.readings.iter().copied().flatten()
    }

    /// The worst verdict of all readings.
    pub fn worst(&self) -> BottomVerdict {
        self.readings()
            .map(|reading| reading.verdict)
            .max_by_key(|verdict| verdict.number())
            .unwrap_or(BottomVerdict::Error)
    }

    /// Whether the angle was given: readings of assumed angles are never certain.
    #[must_use]
    pub const fn is_certain(&self) -> bool {
        self.is_certain
    }
}

/// The room below a tap in a blind hole whose depth is given to the drill's point.
///
/// ```text
/// full diameter = drill point − d/2 / tan(point angle / 2)
/// room          = full diameter − end of the tap
/// ```
///
/// Less than 0 is an error, 0 to 1 pitch a warning. `tap_end_mm`: from the face to the very end of the tap,
/// its centre included; `drill_point_mm`: from the face to the tip of the drill. Where the point angle is
/// unknown, every usual one is answered: 118, 130, 135 and 140 degrees. Exact; the height of the point is
/// taken to the next 0.000001 mm above (at 90° and 180° it is exact).
///
/// # Errors
/// [`OutOfRange`](crate::Code::OutOfRange) for depths that are not above 0 and up to 10 000 mm, a drill above
/// the major diameter, an angle that is not above 60° and up to 180°; [`Overflow`](crate::Code::Overflow).
///
/// # Example
/// ```
/// use threadcalc_core::{BottomVerdict, Length, Thread, bottoming};
///
/// let thread = Thread::read(b"M8")?;
/// let (tap, point, drill) = (Length::new(79, 4)?, Length::integer(22), Length::new(34, 5)?);
/// let found = bottoming(&thread, tap, point, drill, None)?;
/// let verdicts: Vec<_> = found.readings().map(|reading| reading.verdict.name()).collect();
/// assert_eq!(verdicts, ["warning", "warning", "warning", "warning"]); // 0.207 to 1.012 mm of room
/// assert_eq!((found.worst(), found.is_certain()), (BottomVerdict::Warning, false));
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// Common practice.
pub fn bottoming(
    thread: &Thread,
    tap_end_mm: Length,
    drill_point_mm: Length,
    drill_mm: Length,
    point_angle_deg: Option<Length>,
) -> Result<Bottoming, Error> {
    let most = Length::integer(MOST_MM);
    check(&[
        (tap_end_mm, Field::TapEnd, Length::ZERO, most),
        (drill_point_mm, Field::DrillPoint, Length::ZERO, most),
        drill_bounds(thread, drill_mm),
    ])?;
    let read = |angle: Length| {
        let full_diameter = drill_point_mm.minus(safe_point_height_mm(drill_mm, angle)?)?;
        let room = full_diameter.minus(tap_end_mm)?;
        let verdict = BottomVerdict::of(room, thread);
        Ok(BottomReading { point_angle_deg: angle, full_diameter_mm: full_diameter, room_mm: room, verdict })
    };
    let mut readings = [None; USUAL_POINT_ANGLES_DEG.len()];
    if let Some(angle) = point_angle_deg {
        check(&[angle_bounds(angle)])?;
        if let Some(first) = readings.first_mut() {
            *first = Some(read(angle)?);
        }
    } else {
        for (place, angle) in readings.iter_mut().zip(USUAL_POINT_ANGLES_DEG) {
            *place = Some(read(angle)?);
        }
    }
    Ok(Bottoming { readings, is_certain: point_angle_deg.is_some() })
}
