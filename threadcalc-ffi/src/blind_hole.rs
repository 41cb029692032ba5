//! What a blind hole of a given depth has room for.

use core::mem::offset_of;

use threadcalc_core::{
    BlindHole, BlindThread, ChamferReading, DrilledTo, Error, Field, chamfers_for_full_thread, full_thread_that_fits,
};

use crate::choices::threadcalc_tap_set_on;
use crate::codes::threadcalc_status;
use crate::depth::tap_end;
use crate::depth_choices::threadcalc_drilled_to;
use crate::memory::{Request, SizedOutput, input, list, request};
use crate::number::given;
use crate::status::{guard, required, threadcalc_error_t};
use crate::tap_choices::threadcalc_chamfer_form;
use crate::types::{threadcalc_ratio_t, threadcalc_thread_t};

/// A blind hole that is drilled, and what has to have room in it below the thread: mm, exact. Begin with
/// THREADCALC_BLIND_HOLE_INIT.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct threadcalc_blind_hole_t {
    /// sizeof(threadcalc_blind_hole_t).
    pub size: u32,
    /// What the depth is measured to. Required.
    pub drill_depth_to: threadcalc_drilled_to,
    /// Where the tap's length offset is set; required with a male centre.
    pub tap_set_on: threadcalc_tap_set_on,
    /// 0.
    pub reserved: u32,
    /// Depth of the hole from the face, above 0 and up to 10 000. Required.
    pub drill_depth_mm: threadcalc_ratio_t,
    /// The drilled hole's diameter. Required.
    pub drill_mm: threadcalc_ratio_t,
    /// Point angle of the drill in degrees, above 60 and up to 180; required for a depth to the point.
    pub point_angle_deg: threadcalc_ratio_t,
    /// Room below the tap: stop and chips. Required.
    pub bottom_clearance_mm: threadcalc_ratio_t,
    /// Length of the tap's male centre; left out: none.
    pub tap_centre_mm: threadcalc_ratio_t,
}

// SAFETY: integers only.
unsafe impl Request for threadcalc_blind_hole_t {
    const STARTS: &'static [usize] = &[
        offset_of!(Self, drill_depth_to),
        offset_of!(Self, tap_set_on),
        offset_of!(Self, reserved),
        offset_of!(Self, drill_depth_mm),
        offset_of!(Self, drill_mm),
        offset_of!(Self, point_angle_deg),
        offset_of!(Self, bottom_clearance_mm),
        offset_of!(Self, tap_centre_mm),
    ];
}

impl threadcalc_blind_hole_t {
    fn read(&self) -> Result<BlindHole, Error> {
        crate::feed::checked_reserve(self.reserved)?;
        let (tap_centre_mm, tap_set_on) = tap_end(self.tap_centre_mm, self.tap_set_on)?;
        let (to, choices) = (self.drill_depth_to, DrilledTo::CHOICES);
        Ok(BlindHole {
            drill_depth_mm: self.drill_depth_mm.required(Field::DrillDepth)?,
            drill_depth_to: required(to, DrilledTo::from_number, Field::DrilledTo, choices)?,
            drill_mm: self.drill_mm.required(Field::Drill)?,
            point_angle_deg: self.point_angle_deg.read(Field::PointAngle)?,
            bottom_clearance_mm: self.bottom_clearance_mm.required(Field::BottomClearance)?,
            tap_centre_mm,
            tap_set_on,
        })
    }
}

/// The thread that a blind hole has room for: depths from the face in mm. Frozen.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct threadcalc_blind_thread_t {
    /// The longest full thread.
    pub full_thread_mm: threadcalc_ratio_t,
    /// To the very end of the tap, its centre included.
    pub tap_mm: threadcalc_ratio_t,
    /// To the point that the tap's length offset is set on: what the program says.
    pub program_tap_mm: threadcalc_ratio_t,
    /// To the end of the drill's full diameter.
    pub full_diameter_mm: threadcalc_ratio_t,
    /// To the drill's point; derived. NaN if neither it nor the angle was given.
    pub drill_point_mm: f64,
}

impl threadcalc_blind_thread_t {
    fn of(thread: &BlindThread) -> Self {
        let exact = threadcalc_ratio_t::of;
        Self {
            full_thread_mm: exact(thread.full_thread_mm),
            tap_mm: exact(thread.tap_mm),
            program_tap_mm: exact(thread.program_tap_mm),
            full_diameter_mm: exact(thread.full_diameter_mm),
            drill_point_mm: thread.drill_point_mm.unwrap_or(f64::NAN),
        }
    }
}

/// One form of chamfer in a blind hole. Frozen.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct threadcalc_chamfer_reading_t {
    /// The form.
    pub form: threadcalc_chamfer_form,
    /// 1 if a tap of this form gives the full thread that is wanted, else 0.
    pub gives_wanted: i32,
    /// Its longest chamfer in threads.
    pub chamfer_threads: threadcalc_ratio_t,
    /// The full thread above that chamfer in mm; 0/0 if nothing is left.
    pub full_thread_mm: threadcalc_ratio_t,
}

impl threadcalc_chamfer_reading_t {
    fn of(reading: &ChamferReading) -> Self {
        Self {
            form: reading.form.number(),
            gives_wanted: i32::from(reading.gives_wanted),
            chamfer_threads: threadcalc_ratio_t::of(reading.chamfer_threads),
            full_thread_mm: threadcalc_ratio_t::of_option(reading.full_thread_mm),
        }
    }
}

/// The longest full thread in a blind hole that is drilled to a given depth: threadcalc_depths back.
/// chamfer_threads is 0 to 20, the longest of the tap's form. found_size is
/// sizeof(threadcalc_blind_thread_t).
///
/// full diameter = depth, or depth - d/2 / tan(point angle / 2) for a depth to the point;
/// tap = full diameter - bottom clearance; full thread = tap - tap centre - chamfer threads x P. Exact; the
/// height of the point is taken to the next 0.000001 mm above (at 90 and 180 degrees it is exact).
/// Errors: missing, unknown-value, out-of-range (drill_depth_mm with the depth that has to be passed where
/// nothing is left for a full thread), does-not-apply (a taper thread), overflow, those of
/// threadcalc_thread_write, structure-size, unsupported-field.
/// Source: common practice; chamfer lengths by form: DIN 2197.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_full_thread_that_fits(
    thread: *const threadcalc_thread_t,
    hole: *const threadcalc_blind_hole_t,
    chamfer_threads: *const threadcalc_ratio_t,
    found: *mut threadcalc_blind_thread_t,
    found_size: usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let thread = unsafe { input(thread) }?.read()?;
        let hole = unsafe { request(hole) }?.read()?;
        let chamfer = unsafe { given(chamfer_threads, Field::ChamferThreads) }?;
        let place = unsafe { SizedOutput::new(found, found_size) }?;
        place.write(threadcalc_blind_thread_t::of(&full_thread_that_fits(&thread, &hole, chamfer)?));
        Ok(())
    })
}

/// Every form of chamfer in a blind hole, A to F first: the full thread above its longest chamfer, and whether
/// that is what is wanted. B drives its chips to the bottom and never gives it.
///
/// wanted_mm is the full thread wanted, above 0. count is how many readings there are, 10; with too little
/// room only count is written.
/// Errors: as threadcalc_full_thread_that_fits, but for a hole that is too shallow; buffer-too-short.
/// Source: DIN 2197 as tap makers print it.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_chamfers_for_full_thread(
    thread: *const threadcalc_thread_t,
    hole: *const threadcalc_blind_hole_t,
    wanted_mm: *const threadcalc_ratio_t,
    readings: *mut threadcalc_chamfer_reading_t,
    capacity: usize,
    count: *mut usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let thread = unsafe { input(thread) }?.read()?;
        let hole = unsafe { request(hole) }?.read()?;
        let wanted = unsafe { given(wanted_mm, Field::FullThreadDepth) }?;
        let found = chamfers_for_full_thread(&thread, &hole, wanted)?;
        unsafe { list(|| found.iter().map(threadcalc_chamfer_reading_t::of), readings, capacity, count) }?;
        Ok(())
    })
}
