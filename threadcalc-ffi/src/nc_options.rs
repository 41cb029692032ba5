//! What a check is told beside the program.

use threadcalc_core::nc::{CheckOptions, Tool, ToolKind};
use threadcalc_core::{Error, Field, Holder, Machine};

use crate::choices::threadcalc_answer;
use crate::dialect::flag_of;
use crate::gear::threadcalc_gear_t;
use crate::job::set_gears;
use crate::memory::{Request, starts};
use crate::nc_choices::threadcalc_tool_kind;
use crate::status::optional;
use crate::tap_choices::threadcalc_holder;
use crate::types::{threadcalc_ratio_t, threadcalc_thread_t};

/// What a check is told. Begin with THREADCALC_CHECK_OPTIONS_INIT; a member left at zero is "not given".
#[repr(C)]
#[derive(Clone, Copy)]
pub struct threadcalc_check_options_t {
    /// sizeof(threadcalc_check_options_t).
    pub size: u32,
    /// Whether the switch for block delete is on: blocks that begin with / are left out; no if not given.
    pub block_delete: threadcalc_answer,
    /// Whether formulas and variables are computed; yes if not given.
    pub evaluate_macros: threadcalc_answer,
    /// How taps are held, where the tool list does not say; rigid if not given.
    pub holder: threadcalc_holder,
    /// The thread of every tapped hole, before what the program's comments say.
    pub thread: threadcalc_thread_t,
    /// The face of the part in the program's Z, in mm; 0 if not given.
    pub surface_z_mm: threadcalc_ratio_t,
    /// Full thread that the drawing wants, in mm.
    pub full_thread_depth_mm: threadcalc_ratio_t,
    /// Under-feed that is wanted, in percent of the lead.
    pub underfeed_percent: threadcalc_ratio_t,
    /// Specific cutting force in N/mm2 for kc P^2 D / 8000; without it the torque is not checked.
    pub cutting_force_n_mm2: threadcalc_ratio_t,
    /// Highest spindle speed of the machine for tapping, in turns per minute.
    pub machine_highest_rpm: threadcalc_ratio_t,
    /// Feed limit of the axis that taps, in mm/min.
    pub machine_axis_feed_limit_mm_min: threadcalc_ratio_t,
    /// How fast the spindle gains and loses speed, in rpm/s.
    pub machine_acceleration_rpm_s: threadcalc_ratio_t,
    /// Turns that the tap needs above the face; 2 if not given.
    pub machine_least_clearance_turns: threadcalc_ratio_t,
    /// How many of machine_gears there are, 0 to 4.
    pub machine_gear_count: i32,
    /// 0.
    pub reserved: u32,
    /// The spindle's gears with their torque; none: torque is not checked.
    pub machine_gears: [threadcalc_gear_t; 4],
}

// SAFETY: integers, doubles and arrays of these.
unsafe impl Request for threadcalc_check_options_t {
    const STARTS: &'static [usize] = starts![
        block_delete,
        evaluate_macros,
        holder,
        thread,
        surface_z_mm,
        full_thread_depth_mm,
        underfeed_percent,
        cutting_force_n_mm2,
        machine_highest_rpm,
        machine_axis_feed_limit_mm_min,
        machine_acceleration_rpm_s,
        machine_least_clearance_turns,
        machine_gear_count,
        reserved,
        machine_gears,
    ];
}

impl threadcalc_check_options_t {
    pub(crate) fn read(&self) -> Result<CheckOptions, Error> {
        let mut options = CheckOptions::default();
        options.set("block_delete", flag_of(self.block_delete, Field::BlockDelete)?)?;
        options.set("evaluate_macros", flag_of(self.evaluate_macros, Field::EvaluateMacros)?)?;
        options.holder = optional(self.holder, Holder::from_number, Field::Holder, Holder::CHOICES)?;
        options.thread = self.thread.read_optional()?;
        options.surface_z_mm = self.surface_z_mm.read(Field::SurfaceZ)?;
        options.full_thread_depth_mm = self.full_thread_depth_mm.read(Field::FullThreadDepth)?;
        options.underfeed_percent = self.underfeed_percent.read(Field::Underfeed)?;
        options.cutting_force_n_mm2 = self.cutting_force_n_mm2.read(Field::CuttingForce)?;
        crate::feed::checked_reserve(self.reserved)?;
        self.read_machine(&mut options.machine)?;
        Ok(options)
    }

    fn read_machine(&self, machine: &mut Machine) -> Result<(), Error> {
        machine.highest_rpm = self.machine_highest_rpm.read(Field::MachineHighest)?;
        machine.axis_feed_limit_mm_min = self.machine_axis_feed_limit_mm_min.read(Field::MachineFeedLimit)?;
        machine.acceleration_rpm_s = self.machine_acceleration_rpm_s.read(Field::MachineAcceleration)?;
        machine.least_clearance_turns = self.machine_least_clearance_turns.read(Field::MachineClearance)?;
        set_gears(machine, self.machine_gear_count, &self.machine_gears)
    }
}

/// A tool of the shop's list. Begin with THREADCALC_TOOL_INIT; a member left at zero is "not given".
#[repr(C)]
#[derive(Clone, Copy)]
pub struct threadcalc_tool_t {
    /// sizeof(threadcalc_tool_t).
    pub size: u32,
    /// Its number in the program, T.
    pub number: u32,
    /// What it is.
    pub kind: threadcalc_tool_kind,
    /// How it is held.
    pub holder: threadcalc_holder,
    /// The thread that it taps.
    pub thread: threadcalc_thread_t,
    /// Its diameter in mm.
    pub diameter_mm: threadcalc_ratio_t,
    /// A drill's point angle in degrees.
    pub point_angle_deg: threadcalc_ratio_t,
    /// Threads of a tap's chamfer.
    pub chamfer_threads: threadcalc_ratio_t,
}

// SAFETY: integers and arrays of integers only.
unsafe impl Request for threadcalc_tool_t {
    const STARTS: &'static [usize] =
        starts![number, kind, holder, thread, diameter_mm, point_angle_deg, chamfer_threads];
}

impl threadcalc_tool_t {
    pub(crate) fn read(&self) -> Result<Tool, Error> {
        let mut tool = Tool::default();
        tool.number = self.number;
        tool.kind = optional(self.kind, ToolKind::from_number, Field::ToolKind, ToolKind::CHOICES)?;
        tool.holder = optional(self.holder, Holder::from_number, Field::Holder, Holder::CHOICES)?;
        tool.thread = self.thread.read_optional()?;
        tool.diameter_mm = self.diameter_mm.read(Field::Diameter)?;
        tool.point_angle_deg = self.point_angle_deg.read(Field::PointAngle)?;
        tool.chamfer_threads = self.chamfer_threads.read(Field::ChamferThreads)?;
        Ok(tool)
    }
}
