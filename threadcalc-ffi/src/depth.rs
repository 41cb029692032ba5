//! How deep to tap and to drill.

use core::mem::offset_of;

use threadcalc_core::{DepthRequest, Depths, Error, Field, Hole, Length, TapSetOn, depths};

use crate::choices::{threadcalc_hole, threadcalc_tap_set_on};
use crate::codes::threadcalc_status;
use crate::memory::{Request, SizedOutput, input, request};
use crate::status::{guard, optional, required, threadcalc_error_t};
use crate::types::{threadcalc_ratio_t, threadcalc_thread_t};

/// What depths are made of: mm, exact. Begin with THREADCALC_DEPTH_REQUEST_INIT.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct threadcalc_depth_request_t {
    /// sizeof(threadcalc_depth_request_t).
    pub size: u32,
    /// Through or blind. Required.
    pub hole: threadcalc_hole,
    /// Where the tap's length offset is set; required with a male centre.
    pub tap_set_on: threadcalc_tap_set_on,
    /// 0.
    pub reserved: u32,
    /// Full thread from the face, above 0. Required.
    pub full_thread_mm: threadcalc_ratio_t,
    /// Threads of the tap's chamfer, 0 to 20; plan on the longest of its form. Required.
    pub chamfer_threads: threadcalc_ratio_t,
    /// The drilled hole's diameter. Required.
    pub drill_mm: threadcalc_ratio_t,
    /// Point angle of the drill in degrees, above 60 and up to 180. Required.
    pub point_angle_deg: threadcalc_ratio_t,
    /// Room below the tap: stop and chips. Required.
    pub bottom_clearance_mm: threadcalc_ratio_t,
    /// Length of the tap's male centre; left out: none.
    pub tap_centre_mm: threadcalc_ratio_t,
}

// SAFETY: integers only.
unsafe impl Request for threadcalc_depth_request_t {
    const STARTS: &'static [usize] = &[
        offset_of!(Self, hole),
        offset_of!(Self, tap_set_on),
        offset_of!(Self, reserved),
        offset_of!(Self, full_thread_mm),
        offset_of!(Self, chamfer_threads),
        offset_of!(Self, drill_mm),
        offset_of!(Self, point_angle_deg),
        offset_of!(Self, bottom_clearance_mm),
        offset_of!(Self, tap_centre_mm),
    ];
}

impl threadcalc_depth_request_t {
    fn read(&self) -> Result<DepthRequest, Error> {
        crate::feed::checked_reserve(self.reserved)?;
        let (tap_centre_mm, tap_set_on) = tap_end(self.tap_centre_mm, self.tap_set_on)?;
        Ok(DepthRequest {
            full_thread_mm: self.full_thread_mm.required(Field::FullThreadDepth)?,
            chamfer_threads: self.chamfer_threads.required(Field::ChamferThreads)?,
            drill_mm: self.drill_mm.required(Field::Drill)?,
            point_angle_deg: self.point_angle_deg.required(Field::PointAngle)?,
            bottom_clearance_mm: self.bottom_clearance_mm.required(Field::BottomClearance)?,
            tap_centre_mm,
            tap_set_on,
            hole: required(self.hole, Hole::from_number, Field::Hole, Hole::CHOICES)?,
        })
    }
}

/// The length of a tap's male centre, and where its length offset is set: a centre leaves that open.
pub(crate) fn tap_end(
    tap_centre_mm: threadcalc_ratio_t,
    tap_set_on: threadcalc_tap_set_on,
) -> Result<(Length, TapSetOn), Error> {
    let centre = tap_centre_mm.read(Field::TapCentre)?.unwrap_or(Length::ZERO);
    let set_on = if centre == Length::ZERO {
        optional(tap_set_on, TapSetOn::from_number, Field::TapSetOn, TapSetOn::CHOICES)?.unwrap_or(TapSetOn::Front)
    } else {
        required(tap_set_on, TapSetOn::from_number, Field::TapSetOn, TapSetOn::CHOICES)?
    };
    Ok((centre, set_on))
}

/// Depths from the face in mm. Frozen.
#[repr(C)]
#[derive(Clone, Copy, Default)]
pub struct threadcalc_depths_t {
    /// To the very end of the tap, its centre included.
    pub tap_mm: threadcalc_ratio_t,
    /// To the point that the tap's length offset is set on: what the program says.
    pub program_tap_mm: threadcalc_ratio_t,
    /// To the end of the drill's full diameter.
    pub full_diameter_mm: threadcalc_ratio_t,
    /// To the drill's point; derived.
    pub drill_point_mm: f64,
}

impl threadcalc_depths_t {
    pub(crate) fn of(depths: &Depths) -> Self {
        Self {
            tap_mm: threadcalc_ratio_t::of(depths.tap_mm),
            program_tap_mm: threadcalc_ratio_t::of(depths.program_tap_mm),
            full_diameter_mm: threadcalc_ratio_t::of(depths.full_diameter_mm),
            drill_point_mm: depths.drill_point_mm,
        }
    }
}

/// The depths of a tapped hole. found_size is sizeof(threadcalc_depths_t).
///
/// tap = full thread + chamfer threads x P + tap centre; full diameter = tap + bottom clearance (through:
/// full thread + bottom clearance); drill point = full diameter + d/2 / tan(point angle / 2).
/// Errors: missing, unknown-value, out-of-range, overflow, does-not-apply (a taper thread: see
/// threadcalc_taper_depths), those of threadcalc_thread_write, structure-size, unsupported-field.
/// Source: common practice; chamfer lengths by form: DIN 2197.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_depths(
    thread: *const threadcalc_thread_t,
    depth_request: *const threadcalc_depth_request_t,
    found: *mut threadcalc_depths_t,
    found_size: usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let thread = unsafe { input(thread) }?.read()?;
        let asked = unsafe { request(depth_request) }?.read()?;
        let place = unsafe { SizedOutput::new(found, found_size) }?;
        place.write(threadcalc_depths_t::of(&depths(&thread, &asked)?));
        Ok(())
    })
}
