//! What a plan is asked for.

use core::mem::offset_of;

use threadcalc_core::{Basis, Error, FeedMode, Field, Hole, Job, Tap, TapSetOn, Unit, Value};

use crate::choices::{
    threadcalc_basis, threadcalc_drill_sets, threadcalc_hole, threadcalc_mode, threadcalc_tap, threadcalc_tap_set_on,
    threadcalc_unit,
};
use crate::dialect::{optional_dialect, threadcalc_dialect_t};
use crate::memory::Request;
use crate::status::optional;
use crate::types::{drill_sets, threadcalc_ratio_t, threadcalc_thread_t};

/// One tapped hole. Begin with THREADCALC_JOB_INIT; a member left at zero is "not given".
///
/// What is missing beyond the required members is assumed, and each assumption is a finding of the plan.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct threadcalc_job_t {
    /// sizeof(threadcalc_job_t).
    pub size: u32,
    /// Unit of the machine. Required.
    pub unit: threadcalc_unit,
    /// Feed per minute or per revolution. Required.
    pub mode: threadcalc_mode,
    /// Through or blind. Required.
    pub hole: threadcalc_hole,
    /// Cut or form tap. Required.
    pub tap: threadcalc_tap,
    /// Basis of the percent.
    pub basis: threadcalc_basis,
    /// Where the tap's length offset is set; required with a male centre.
    pub tap_set_on: threadcalc_tap_set_on,
    /// The drills to choose from.
    pub drill_sets: threadcalc_drill_sets,
    /// The thread. Required.
    pub thread: threadcalc_thread_t,
    /// Decimals of the feed word, a whole number 0 to 9: {3, 1}. Required.
    pub decimals: threadcalc_ratio_t,
    /// Spindle speed asked for, in turns per minute. Required.
    pub rpm: threadcalc_ratio_t,
    /// Full thread from the face in mm. Required.
    pub full_thread_depth_mm: threadcalc_ratio_t,
    /// Threads of the tap's chamfer; 3, the longest of form C, if not given.
    pub chamfer_threads: threadcalc_ratio_t,
    /// Length of the tap's male centre in mm; 0 if not given.
    pub tap_centre_mm: threadcalc_ratio_t,
    /// The drill there is, in mm; instead of drill_sets and percent.
    pub drill_mm: threadcalc_ratio_t,
    /// Percent of thread wanted.
    pub percent: threadcalc_ratio_t,
    /// Point angle of the drill in degrees; 118 if not given.
    pub point_angle_deg: threadcalc_ratio_t,
    /// Room below the tap in mm; 3 pitches in a blind hole if not given.
    pub bottom_clearance_mm: threadcalc_ratio_t,
    /// R plane above the face in mm; 5 mm or 0.2 in if not given.
    pub r_plane_mm: threadcalc_ratio_t,
    /// Highest spindle speed of the machine for tapping, in turns per minute.
    pub machine_highest_rpm: threadcalc_ratio_t,
    /// Lowest spindle speed of the machine for tapping.
    pub machine_lowest_rpm: threadcalc_ratio_t,
    /// Step in which the control holds a speed; 1 if not given.
    pub machine_speed_step: threadcalc_ratio_t,
    /// The control's dialect; without it (NULL) a plan has no words.
    pub dialect: *const threadcalc_dialect_t,
}

// SAFETY: integers, arrays of integers and a pointer that may be NULL.
unsafe impl Request for threadcalc_job_t {
    const STARTS: &'static [usize] = &[
        offset_of!(Self, unit),
        offset_of!(Self, mode),
        offset_of!(Self, hole),
        offset_of!(Self, tap),
        offset_of!(Self, basis),
        offset_of!(Self, tap_set_on),
        offset_of!(Self, drill_sets),
        offset_of!(Self, thread),
        offset_of!(Self, decimals),
        offset_of!(Self, rpm),
        offset_of!(Self, full_thread_depth_mm),
        offset_of!(Self, chamfer_threads),
        offset_of!(Self, tap_centre_mm),
        offset_of!(Self, drill_mm),
        offset_of!(Self, percent),
        offset_of!(Self, point_angle_deg),
        offset_of!(Self, bottom_clearance_mm),
        offset_of!(Self, r_plane_mm),
        offset_of!(Self, machine_highest_rpm),
        offset_of!(Self, machine_lowest_rpm),
        offset_of!(Self, machine_speed_step),
        offset_of!(Self, dialect),
    ];
}

impl threadcalc_job_t {
    /// # Safety
    /// The dialect is NULL or points to one.
    pub(crate) unsafe fn read(&self) -> Result<Job, Error> {
        let mut job = Job::default();
        job.thread = self.thread.read_optional()?;
        job.unit = optional(self.unit, Unit::from_number, Field::Unit, Unit::CHOICES)?;
        job.mode = optional(self.mode, FeedMode::from_number, Field::Mode, FeedMode::CHOICES)?;
        job.hole = optional(self.hole, Hole::from_number, Field::Hole, Hole::CHOICES)?;
        job.tap = optional(self.tap, Tap::from_number, Field::Tap, Tap::CHOICES)?;
        job.basis = optional(self.basis, Basis::from_number, Field::Basis, Basis::CHOICES)?;
        job.tap_set_on = optional(self.tap_set_on, TapSetOn::from_number, Field::TapSetOn, TapSetOn::CHOICES)?;
        job.drill_sets = drill_sets(self.drill_sets)?;
        let decimals = self.decimals.read(Field::Decimals)?.map_or(Value::Absent, Value::Exact);
        job.set("decimals", decimals)?;
        job.rpm = self.rpm.read(Field::Rpm)?;
        job.full_thread_depth_mm = self.full_thread_depth_mm.read(Field::FullThreadDepth)?;
        job.chamfer_threads = self.chamfer_threads.read(Field::ChamferThreads)?;
        job.tap_centre_mm = self.tap_centre_mm.read(Field::TapCentre)?;
        job.drill_mm = self.drill_mm.read(Field::Drill)?;
        job.percent = self.percent.read(Field::Percent)?;
        job.point_angle_deg = self.point_angle_deg.read(Field::PointAngle)?;
        job.bottom_clearance_mm = self.bottom_clearance_mm.read(Field::BottomClearance)?;
        job.r_plane_mm = self.r_plane_mm.read(Field::RPlane)?;
        job.machine.highest_rpm = self.machine_highest_rpm.read(Field::MachineHighest)?;
        job.machine.lowest_rpm = self.machine_lowest_rpm.read(Field::MachineLowest)?;
        job.machine.speed_step = self.machine_speed_step.read(Field::MachineStep)?;
        job.dialect = unsafe { optional_dialect(self.dialect) }?;
        Ok(job)
    }
}
