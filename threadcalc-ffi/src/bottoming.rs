//! The bottom of a blind hole: whether the tap runs into it, and the run-out of the standard.

use threadcalc_core::{BottomReading, Bottoming, Field, RunOut, USUAL_POINT_ANGLES_DEG, bottoming, run_out_mm};

use crate::codes::threadcalc_status;
use crate::depth_choices::{threadcalc_bottom_verdict, threadcalc_run_out_kind};
use crate::memory::{Output, SizedOutput, fill, input};
use crate::number::{given, perhaps};
use crate::status::{guard, required, threadcalc_error_t};
use crate::types::{threadcalc_ratio_t, threadcalc_thread_t};

/// The bottom of a hole as one point angle makes it. Frozen.
#[repr(C)]
#[derive(Clone, Copy, Default)]
pub struct threadcalc_bottom_reading_t {
    /// What the room means.
    pub verdict: threadcalc_bottom_verdict,
    /// 0.
    pub reserved: u32,
    /// The point angle in degrees.
    pub point_angle_deg: threadcalc_ratio_t,
    /// How deep the hole has its full diameter, in mm; below 0 where the point alone is deeper.
    pub full_diameter_mm: threadcalc_ratio_t,
    /// From the very end of the tap to there, in mm.
    pub room_mm: threadcalc_ratio_t,
}

impl threadcalc_bottom_reading_t {
    fn of(reading: &BottomReading) -> Self {
        Self {
            verdict: reading.verdict.number(),
            reserved: 0,
            point_angle_deg: threadcalc_ratio_t::of(reading.point_angle_deg),
            full_diameter_mm: threadcalc_ratio_t::of(reading.full_diameter_mm),
            room_mm: threadcalc_ratio_t::of(reading.room_mm),
        }
    }
}

/// The readings of one hole: one for a known point angle, one for each usual angle otherwise. Frozen.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct threadcalc_bottoming_t {
    /// The worst verdict of all readings.
    pub worst: threadcalc_bottom_verdict,
    /// 1 if the angle was given, 0 if the usual ones were assumed.
    pub is_certain: i32,
    /// How many readings there are, 1 or 4.
    pub reading_count: i32,
    /// 0.
    pub reserved: u32,
    /// The readings, the sharpest point first; zeros behind the last.
    pub readings: [threadcalc_bottom_reading_t; 4],
}

impl threadcalc_bottoming_t {
    fn of(bottoming: &Bottoming) -> Self {
        let none = [threadcalc_bottom_reading_t::default(); USUAL_POINT_ANGLES_DEG.len()];
        let readings = bottoming.readings().map(|reading| threadcalc_bottom_reading_t::of(&reading));
        let (readings, reading_count) = fill(none, readings);
        Self {
            worst: bottoming.worst().number(),
            is_certain: i32::from(bottoming.is_certain()),
            reading_count,
            reserved: 0,
            readings,
        }
    }
}

/// The room below a tap in a blind hole whose depth is given to the drill's point. found_size is
/// sizeof(threadcalc_bottoming_t).
///
/// full diameter = drill point - d/2 / tan(point angle / 2); room = full diameter - end of the tap. Less than
/// 0 is an error, 0 to 1 pitch a warning. tap_end_mm counts from the face to the very end of the tap, its
/// centre included. point_angle_deg may be NULL or 0/0: unknown; then every usual angle is answered: 118,
/// 130, 135 and 140 degrees. Exact; the height of the point is taken to the next 0.000001 mm above (at 90
/// and 180 degrees it is exact).
/// Errors: missing, out-of-range, overflow, those of threadcalc_thread_write, structure-size.
/// Source: common practice.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_bottoming(
    thread: *const threadcalc_thread_t,
    tap_end_mm: *const threadcalc_ratio_t,
    drill_point_mm: *const threadcalc_ratio_t,
    drill_mm: *const threadcalc_ratio_t,
    point_angle_deg: *const threadcalc_ratio_t,
    found: *mut threadcalc_bottoming_t,
    found_size: usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let thread = unsafe { input(thread) }?.read()?;
        let tap_end = unsafe { given(tap_end_mm, Field::TapEnd) }?;
        let point = unsafe { given(drill_point_mm, Field::DrillPoint) }?;
        let drill = unsafe { given(drill_mm, Field::Drill) }?;
        let angle = unsafe { perhaps(point_angle_deg, Field::PointAngle) }?;
        let place = unsafe { SizedOutput::new(found, found_size) }?;
        place.write(threadcalc_bottoming_t::of(&bottoming(&thread, tap_end, point, drill, angle)?));
        Ok(())
    })
}

/// The run-out of a blind hole for an ISO metric thread, in mm: the hole has to have its full diameter at
/// least to full thread + run-out. By pitch, for coarse and fine threads alike.
///
/// Errors: missing, unknown-value, does-not-apply (another thread than M, the hole of a wire insert), not-sourced
/// (pitches that the table does not have, the short and the long run-out), contradiction (external thread), those of threadcalc_thread_write.
/// Source: DIN 76-1, run-out of blind tapped holes, e1.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_run_out(
    thread: *const threadcalc_thread_t,
    run_out: threadcalc_run_out_kind,
    run_out_mm: *mut threadcalc_ratio_t,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let thread = unsafe { input(thread) }?.read()?;
        let run_out = required(run_out, RunOut::from_number, Field::RunOut, RunOut::CHOICES)?;
        let place = unsafe { Output::new(run_out_mm) }?;
        place.write(threadcalc_ratio_t::of(self::run_out_mm(&thread, run_out)?));
        Ok(())
    })
}
