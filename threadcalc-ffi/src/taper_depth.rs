//! How deep to tap and to drill a taper pipe thread.

use core::mem::offset_of;

use threadcalc_core::{Error, Field, TaperDepthRequest, TaperDepths, taper_depths};

use crate::codes::threadcalc_status;
use crate::memory::{Request, SizedOutput, input, request};
use crate::status::{guard, threadcalc_error_t};
use crate::types::{threadcalc_ratio_t, threadcalc_thread_t};

/// What the depths of a taper pipe hole are made of: mm, exact. Begin with
/// THREADCALC_TAPER_DEPTH_REQUEST_INIT.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct threadcalc_taper_depth_request_t {
    /// sizeof(threadcalc_taper_depth_request_t).
    pub size: u32,
    /// 0.
    pub reserved: u32,
    /// How far the small end of this tap projects through its ring gauge: measure yours. Left out: the
    /// projection of ASME B94.9 for NPT and NPTF; required for Rc, which has none.
    pub projection_mm: threadcalc_ratio_t,
    /// The drilled hole's diameter. Required.
    pub drill_mm: threadcalc_ratio_t,
    /// Point angle of the drill in degrees, above 60 and up to 180. Required.
    pub point_angle_deg: threadcalc_ratio_t,
    /// Room below the tap for chips; one turn more is kept for trimming the depth. Required.
    pub bottom_clearance_mm: threadcalc_ratio_t,
}

// SAFETY: integers only.
unsafe impl Request for threadcalc_taper_depth_request_t {
    const STARTS: &'static [usize] = &[
        offset_of!(Self, reserved),
        offset_of!(Self, projection_mm),
        offset_of!(Self, drill_mm),
        offset_of!(Self, point_angle_deg),
        offset_of!(Self, bottom_clearance_mm),
    ];
}

impl threadcalc_taper_depth_request_t {
    fn read(&self) -> Result<TaperDepthRequest, Error> {
        crate::feed::checked_reserve(self.reserved)?;
        Ok(TaperDepthRequest {
            projection_mm: self.projection_mm.read(Field::Projection)?,
            drill_mm: self.drill_mm.required(Field::Drill)?,
            point_angle_deg: self.point_angle_deg.required(Field::PointAngle)?,
            bottom_clearance_mm: self.bottom_clearance_mm.required(Field::BottomClearance)?,
        })
    }
}

/// Depths of a taper pipe hole from the face, in mm; turns from the face. Frozen.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct threadcalc_taper_depths_t {
    /// From the face to the plane that the tap's ring stands at: L1 (NPT, NPTF), the gauge length (Rc).
    pub hand_tight_mm: threadcalc_ratio_t,
    /// How far the tap projects through the ring.
    pub projection_mm: threadcalc_ratio_t,
    /// How much the table's projection may be off, either way; 0/0 for a measured tap.
    pub projection_tolerance_mm: threadcalc_ratio_t,
    /// To the end of the tap for a thread of basic size.
    pub tap_mm: threadcalc_ratio_t,
    /// The same for the first hole: one turn shallow, then gauge.
    pub first_hole_mm: threadcalc_ratio_t,
    /// To the end of the drill's full diameter: one turn for trimming and the clearance below the tap.
    pub full_diameter_mm: threadcalc_ratio_t,
    /// To the drill's point; derived.
    pub drill_point_mm: f64,
    /// Turns of the tap in the hole for basic size.
    pub tap_turns: threadcalc_ratio_t,
    /// Turns of hand-tight engagement.
    pub hand_tight_turns: threadcalc_ratio_t,
    /// Change of diameter for one turn deeper: P/16.
    pub diameter_per_turn_mm: threadcalc_ratio_t,
    /// Turns that the gauge may stand off, either way.
    pub gauge_tolerance_turns: threadcalc_ratio_t,
}

impl threadcalc_taper_depths_t {
    pub(crate) fn of(depths: &TaperDepths) -> Self {
        let exact = threadcalc_ratio_t::of;
        Self {
            hand_tight_mm: exact(depths.hand_tight_mm),
            projection_mm: exact(depths.projection_mm),
            projection_tolerance_mm: threadcalc_ratio_t::of_option(depths.projection_tolerance_mm),
            tap_mm: exact(depths.tap_mm),
            first_hole_mm: exact(depths.first_hole_mm),
            full_diameter_mm: exact(depths.full_diameter_mm),
            drill_point_mm: depths.drill_point_mm,
            tap_turns: exact(depths.tap_turns),
            hand_tight_turns: exact(depths.hand_tight_turns),
            diameter_per_turn_mm: exact(depths.diameter_per_turn_mm),
            gauge_tolerance_turns: exact(depths.gauge_tolerance_turns),
        }
    }
}

/// The depths of a taper pipe hole: its depth sets its size. found_size is
/// sizeof(threadcalc_taper_depths_t).
///
/// tap = L1 + projection of the tap through the L1 ring; first hole = tap - 1 P;
/// full diameter = tap + 1 P + bottom clearance; drill point = full diameter + d/2 / tan(point angle / 2);
/// turns = depth / P.
/// Errors: does-not-apply (straight thread), contradiction (external thread), missing (also a projection
/// that no table has), out-of-range, overflow, those of threadcalc_thread_write, structure-size,
/// unsupported-field.
/// Source: ASME B1.20.1-1983 (L1); ASME B94.9-2008, table of taper pipe tap limits (projection);
/// ISO 7-1:1994 (gauge length); one turn for trimming: common practice.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_taper_depths(
    thread: *const threadcalc_thread_t,
    depth_request: *const threadcalc_taper_depth_request_t,
    found: *mut threadcalc_taper_depths_t,
    found_size: usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let thread = unsafe { input(thread) }?.read()?;
        let asked = unsafe { request(depth_request) }?.read()?;
        let place = unsafe { SizedOutput::new(found, found_size) }?;
        place.write(threadcalc_taper_depths_t::of(&taper_depths(&thread, &asked)?));
        Ok(())
    })
}
