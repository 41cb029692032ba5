//! What a blind hole of a given depth has room for.

use pyo3::prelude::*;
use threadcalc_core::{self as core, BlindHole, Field, Length, TapSetOn};

use crate::answer::answer;
use crate::error::raise;
use crate::number::{exact, optional_exact};
use crate::text::{choose, optional_choice};
use crate::thread::Thread;

answer! {
    /// The thread that a blind hole has room for.
    BlindThread(core::BlindThread) {
        /// The longest full thread.
        full_thread_mm,
        /// To the very end of the tap, its centre included.
        tap_mm,
        /// To the point that the tap's length offset is set on.
        program_tap_mm,
        /// To the end of the drill's full diameter.
        full_diameter_mm,
        /// To the drill's point; None if neither it nor the angle was given.
        drill_point_mm,
    }
}

answer! {
    /// One form of chamfer in a blind hole.
    ChamferReading(core::ChamferReading) {
        /// The form.
        form,
        /// Its longest chamfer in threads.
        chamfer_threads,
        /// The full thread above that chamfer; None if nothing is left.
        full_thread_mm,
        /// Whether a tap of this form gives the full thread that is wanted.
        gives_wanted,
    }
}

/// The drilled hole, for a tap that is set on its front.
fn hole_of(
    drill_depth_mm: &Bound<'_, PyAny>,
    drill_depth_to: &Bound<'_, PyAny>,
    drill_mm: &Bound<'_, PyAny>,
    bottom_clearance_mm: &Bound<'_, PyAny>,
    point_angle_deg: Option<&Bound<'_, PyAny>>,
    tap_centre_mm: Option<&Bound<'_, PyAny>>,
) -> PyResult<BlindHole> {
    Ok(BlindHole {
        drill_depth_mm: exact(drill_depth_mm, Field::DrillDepth)?,
        drill_depth_to: choose(drill_depth_to)?,
        drill_mm: exact(drill_mm, Field::Drill)?,
        point_angle_deg: optional_exact(point_angle_deg, Field::PointAngle)?,
        bottom_clearance_mm: exact(bottom_clearance_mm, Field::BottomClearance)?,
        tap_centre_mm: optional_exact(tap_centre_mm, Field::TapCentre)?.unwrap_or(Length::ZERO),
        tap_set_on: TapSetOn::Front,
    })
}

/// The longest full thread in a blind hole that is drilled to a given depth.
#[pyfunction]
#[pyo3(
    signature = (thread, drill_depth_mm, *, drill_depth_to, drill_mm, chamfer_threads, bottom_clearance_mm,
        point_angle_deg=None, tap_centre_mm=None, tap_set_on=None),
    text_signature = "(thread, drill_depth_mm, *, drill_depth_to, drill_mm, chamfer_threads, bottom_clearance_mm, point_angle_deg=None, tap_centre_mm=0, tap_set_on='front')"
)]
#[expect(clippy::too_many_arguments, reason = "keywords in Python, so that none is mistaken for another")]
pub fn full_thread_that_fits(
    thread: &Bound<'_, Thread>,
    drill_depth_mm: &Bound<'_, PyAny>,
    drill_depth_to: &Bound<'_, PyAny>,
    drill_mm: &Bound<'_, PyAny>,
    chamfer_threads: &Bound<'_, PyAny>,
    bottom_clearance_mm: &Bound<'_, PyAny>,
    point_angle_deg: Option<&Bound<'_, PyAny>>,
    tap_centre_mm: Option<&Bound<'_, PyAny>>,
    tap_set_on: Option<&Bound<'_, PyAny>>,
) -> PyResult<BlindThread> {
    let mut hole =
        hole_of(drill_depth_mm, drill_depth_to, drill_mm, bottom_clearance_mm, point_angle_deg, tap_centre_mm)?;
    hole.tap_set_on = optional_choice(tap_set_on)?.unwrap_or(TapSetOn::Front);
    let chamfer = exact(chamfer_threads, Field::ChamferThreads)?;
    core::full_thread_that_fits(&thread.get().0, &hole, chamfer).map(BlindThread).map_err(raise)
}

/// Every form of chamfer in a blind hole, and whether it gives the full thread that is wanted.
#[pyfunction]
#[pyo3(
    signature = (thread, wanted_mm, *, drill_depth_mm, drill_depth_to, drill_mm, bottom_clearance_mm,
        point_angle_deg=None, tap_centre_mm=None),
    text_signature = "(thread, wanted_mm, *, drill_depth_mm, drill_depth_to, drill_mm, bottom_clearance_mm, point_angle_deg=None, tap_centre_mm=0)"
)]
#[expect(clippy::too_many_arguments, reason = "keywords in Python, so that none is mistaken for another")]
pub fn chamfers_for_full_thread(
    thread: &Bound<'_, Thread>,
    wanted_mm: &Bound<'_, PyAny>,
    drill_depth_mm: &Bound<'_, PyAny>,
    drill_depth_to: &Bound<'_, PyAny>,
    drill_mm: &Bound<'_, PyAny>,
    bottom_clearance_mm: &Bound<'_, PyAny>,
    point_angle_deg: Option<&Bound<'_, PyAny>>,
    tap_centre_mm: Option<&Bound<'_, PyAny>>,
) -> PyResult<Vec<ChamferReading>> {
    let hole = hole_of(drill_depth_mm, drill_depth_to, drill_mm, bottom_clearance_mm, point_angle_deg, tap_centre_mm)?;
    let wanted = exact(wanted_mm, Field::FullThreadDepth)?;
    let found = core::chamfers_for_full_thread(&thread.get().0, &hole, wanted).map_err(raise)?;
    Ok(found.into_iter().map(ChamferReading).collect())
}
