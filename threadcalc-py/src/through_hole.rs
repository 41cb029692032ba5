//! What comes out below a part with a tapped through hole.

use pyo3::prelude::*;
use threadcalc_core::{self as core, Field, Length, TapSetOn, ThroughHoleRequest};

use crate::answer::answer;
use crate::error::raise;
use crate::number::{exact, optional_exact};
use crate::text::optional_choice;
use crate::thread::Thread;

answer! {
    /// Depths of a tapped through hole, and what comes out below.
    ThroughHole(core::ThroughHole) {
        /// To the point that the tap's length offset is set on.
        program_tap_mm,
        /// To the very end of the tap at its deepest.
        tap_mm,
        /// What of that comes out below.
        tap_below_mm,
        /// To the end of the drill's full diameter.
        full_diameter_mm,
        /// To the drill's point.
        drill_point_mm,
        /// What of that comes out below.
        drill_below_mm,
    }
}

/// How far tap and drill come out below a part.
#[pyfunction]
#[pyo3(
    signature = (thread, part_thickness_mm, *, chamfer_threads, drill_mm, point_angle_deg, drill_clearance_mm,
        over_travel_turns=None, tap_centre_mm=None, tap_set_on=None),
    text_signature = "(thread, part_thickness_mm, *, chamfer_threads, drill_mm, point_angle_deg, drill_clearance_mm, over_travel_turns=0, tap_centre_mm=0, tap_set_on='front')"
)]
#[expect(clippy::too_many_arguments, reason = "keywords in Python, so that none is mistaken for another")]
pub fn through_hole(
    thread: &Bound<'_, Thread>,
    part_thickness_mm: &Bound<'_, PyAny>,
    chamfer_threads: &Bound<'_, PyAny>,
    drill_mm: &Bound<'_, PyAny>,
    point_angle_deg: &Bound<'_, PyAny>,
    drill_clearance_mm: &Bound<'_, PyAny>,
    over_travel_turns: Option<&Bound<'_, PyAny>>,
    tap_centre_mm: Option<&Bound<'_, PyAny>>,
    tap_set_on: Option<&Bound<'_, PyAny>>,
) -> PyResult<ThroughHole> {
    let request = ThroughHoleRequest {
        part_thickness_mm: exact(part_thickness_mm, Field::PartThickness)?,
        chamfer_threads: exact(chamfer_threads, Field::ChamferThreads)?,
        over_travel_turns: optional_exact(over_travel_turns, Field::OverTravel)?.unwrap_or(Length::ZERO),
        drill_mm: exact(drill_mm, Field::Drill)?,
        point_angle_deg: exact(point_angle_deg, Field::PointAngle)?,
        drill_clearance_mm: exact(drill_clearance_mm, Field::DrillClearance)?,
        tap_centre_mm: optional_exact(tap_centre_mm, Field::TapCentre)?.unwrap_or(Length::ZERO),
        tap_set_on: optional_choice(tap_set_on)?.unwrap_or(TapSetOn::Front),
    };
    core::through_hole(&thread.get().0, &request).map(ThroughHole).map_err(raise)
}
