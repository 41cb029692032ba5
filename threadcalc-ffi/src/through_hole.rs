//! What comes out below a part with a tapped through hole.

use core::mem::offset_of;

use threadcalc_core::{Error, Field, Length, ThroughHole, ThroughHoleRequest, through_hole};

use crate::choices::threadcalc_tap_set_on;
use crate::codes::threadcalc_status;
use crate::depth::tap_end;
use crate::memory::{Request, SizedOutput, input, request};
use crate::status::{guard, threadcalc_error_t};
use crate::types::{threadcalc_ratio_t, threadcalc_thread_t};

/// What a tapped through hole is made of: mm, exact. Begin with THREADCALC_THROUGH_HOLE_REQUEST_INIT.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct threadcalc_through_hole_request_t {
    /// sizeof(threadcalc_through_hole_request_t).
    pub size: u32,
    /// Where the tap's length offset is set; required with a male centre.
    pub tap_set_on: threadcalc_tap_set_on,
    /// Thickness of the part at the hole, above 0. Required.
    pub part_thickness_mm: threadcalc_ratio_t,
    /// Threads of the tap's chamfer, 0 to 20; plan on the longest of its form. Required.
    pub chamfer_threads: threadcalc_ratio_t,
    /// Turns that the spindle coasts on after the programmed depth, 0 to 20; left out: none.
    pub over_travel_turns: threadcalc_ratio_t,
    /// The drilled hole's diameter. Required.
    pub drill_mm: threadcalc_ratio_t,
    /// Point angle of the drill in degrees, above 60 and up to 180. Required.
    pub point_angle_deg: threadcalc_ratio_t,
    /// How far the drill's full diameter has to come out, so that no burr is left. Required.
    pub drill_clearance_mm: threadcalc_ratio_t,
    /// Length of the tap's male centre; left out: none.
    pub tap_centre_mm: threadcalc_ratio_t,
}

// SAFETY: integers only.
unsafe impl Request for threadcalc_through_hole_request_t {
    const STARTS: &'static [usize] = &[
        offset_of!(Self, tap_set_on),
        offset_of!(Self, part_thickness_mm),
        offset_of!(Self, chamfer_threads),
        offset_of!(Self, over_travel_turns),
        offset_of!(Self, drill_mm),
        offset_of!(Self, point_angle_deg),
        offset_of!(Self, drill_clearance_mm),
        offset_of!(Self, tap_centre_mm),
    ];
}

impl threadcalc_through_hole_request_t {
    fn read(&self) -> Result<ThroughHoleRequest, Error> {
        let (tap_centre_mm, tap_set_on) = tap_end(self.tap_centre_mm, self.tap_set_on)?;
        Ok(ThroughHoleRequest {
            part_thickness_mm: self.part_thickness_mm.required(Field::PartThickness)?,
            chamfer_threads: self.chamfer_threads.required(Field::ChamferThreads)?,
            over_travel_turns: self.over_travel_turns.read(Field::OverTravel)?.unwrap_or(Length::ZERO),
            drill_mm: self.drill_mm.required(Field::Drill)?,
            point_angle_deg: self.point_angle_deg.required(Field::PointAngle)?,
            drill_clearance_mm: self.drill_clearance_mm.required(Field::DrillClearance)?,
            tap_centre_mm,
            tap_set_on,
        })
    }
}

/// Depths of a tapped through hole in mm: from the face, and what comes out below the back face. Frozen.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct threadcalc_through_hole_t {
    /// To the point that the tap's length offset is set on: what the program says.
    pub program_tap_mm: threadcalc_ratio_t,
    /// To the very end of the tap at its deepest: centre and over-travel included.
    pub tap_mm: threadcalc_ratio_t,
    /// What of that comes out below.
    pub tap_below_mm: threadcalc_ratio_t,
    /// To the end of the drill's full diameter.
    pub full_diameter_mm: threadcalc_ratio_t,
    /// To the drill's point; derived.
    pub drill_point_mm: f64,
    /// What of that comes out below; derived.
    pub drill_below_mm: f64,
}

impl threadcalc_through_hole_t {
    fn of(found: &ThroughHole) -> Self {
        let exact = threadcalc_ratio_t::of;
        Self {
            program_tap_mm: exact(found.program_tap_mm),
            tap_mm: exact(found.tap_mm),
            tap_below_mm: exact(found.tap_below_mm),
            full_diameter_mm: exact(found.full_diameter_mm),
            drill_point_mm: found.drill_point_mm,
            drill_below_mm: found.drill_below_mm,
        }
    }
}

/// How far tap and drill come out below a part: the room that vice, parallels and table have to leave.
/// found_size is sizeof(threadcalc_through_hole_t).
///
/// tap below = chamfer threads x P + tap centre + over-travel turns x lead; tap = thickness + tap below; the
/// program leaves out the over-travel. Full diameter = thickness + drill clearance; drill below = drill
/// clearance + d/2 / tan(point angle / 2). The whole thickness gets full thread.
/// Errors: missing, unknown-value, out-of-range, does-not-apply (a taper thread), overflow, those of
/// threadcalc_thread_write, structure-size, unsupported-field.
/// Source: common practice; chamfer lengths by form: DIN 2197.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_through_hole(
    thread: *const threadcalc_thread_t,
    hole_request: *const threadcalc_through_hole_request_t,
    found: *mut threadcalc_through_hole_t,
    found_size: usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let thread = unsafe { input(thread) }?.read()?;
        let asked = unsafe { request(hole_request) }?.read()?;
        let place = unsafe { SizedOutput::new(found, found_size) }?;
        place.write(threadcalc_through_hole_t::of(&through_hole(&thread, &asked)?));
        Ok(())
    })
}
