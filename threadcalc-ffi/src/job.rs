//! What a plan is asked for.

use core::ffi::c_char;

use threadcalc_core::{
    Basis, ChamferForm, Code, Error, FeedMode, Field, Holder, Hole, Job, MOST_MACHINE_GEARS, Machine, Material,
    PropertyClass, ReturnTo, Screw, Tap, TapKind, TapSetOn, Unit, Value,
};

use crate::choices::{
    threadcalc_answer, threadcalc_basis, threadcalc_drill_sets, threadcalc_hole, threadcalc_mode, threadcalc_return_to,
    threadcalc_tap, threadcalc_tap_set_on, threadcalc_unit,
};
use crate::dialect::{flag_of, optional_dialect, threadcalc_dialect_t};
use crate::gear::threadcalc_gear_t;
use crate::judged_drill::own_drills;
use crate::memory::{Request, starts, text_of};
use crate::status::optional;
use crate::tap_choices::{
    threadcalc_chamfer_form, threadcalc_holder, threadcalc_material, threadcalc_property_class, threadcalc_tap_kind,
};
use crate::types::{drill_sets, threadcalc_drill_t, threadcalc_ratio_t, threadcalc_thread_t};

/// The screw of a joint. Frozen. All zeros: no screw. Strengths in MPa.
#[repr(C)]
#[derive(Clone, Copy, Default)]
pub struct threadcalc_screw_t {
    /// Property class: its tensile strength is a starting value where none is given.
    pub property_class: threadcalc_property_class,
    /// 0.
    pub reserved: i32,
    /// Class of its thread, "6g"; 6g or 2A if not given. Ends with a NUL or fills the member.
    pub tolerance_class: [c_char; 8],
    /// Tensile strength.
    pub tensile_mpa: threadcalc_ratio_t,
    /// Shear strength; 0.6 of the tensile strength if not given.
    pub shear_mpa: threadcalc_ratio_t,
    /// Length of engagement in mm; the full thread depth if not given.
    pub engagement_mm: threadcalc_ratio_t,
    /// Load along the axis in newtons.
    pub load_n: threadcalc_ratio_t,
}

impl threadcalc_screw_t {
    fn read(&self) -> Result<Option<Screw>, Error> {
        crate::feed::checked_reserve(u32::from_ne_bytes(self.reserved.to_ne_bytes()))?;
        let class = text_of(&self.tolerance_class);
        let choices = (PropertyClass::from_number, PropertyClass::CHOICES);
        let mut screw = Screw::default();
        screw.property_class = optional(self.property_class, choices.0, Field::ScrewProperty, choices.1)?;
        screw.tensile_mpa = self.tensile_mpa.read(Field::ScrewTensile)?;
        screw.shear_mpa = self.shear_mpa.read(Field::ScrewShear)?;
        screw.engagement_mm = self.engagement_mm.read(Field::ScrewEngagement)?;
        screw.load_n = self.load_n.read(Field::ScrewLoad)?;
        let mut job = Job::default();
        if screw != Screw::default() {
            job.screw = Some(screw);
        }
        if !class.is_empty() {
            job.set("screw.tolerance_class", Value::Text(class))?;
        }
        Ok(job.screw)
    }
}

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
    /// The drills that the shop owns, by name or diameter, instead of drill_sets; NULL without.
    pub drill_list: *const threadcalc_drill_t,
    /// How many of them there are, at most 24.
    pub drill_list_count: usize,
    /// How much larger than the drill its hole is, in mm; the usual oversize if not given.
    pub oversize_mm: threadcalc_ratio_t,
    /// Surface speed at the major diameter in m/min, instead of rpm.
    pub surface_speed_m_min: threadcalc_ratio_t,
    /// Surface speed at the major diameter in ft/min, instead of rpm.
    pub surface_speed_ft_min: threadcalc_ratio_t,
    /// How the tap is built.
    pub tap_kind: threadcalc_tap_kind,
    /// Form of the tap's chamfer: planned on its longest.
    pub chamfer_form: threadcalc_chamfer_form,
    /// How the tap is held; rigid if not given.
    pub holder: threadcalc_holder,
    /// Material of the part, for starting values.
    pub material: threadcalc_material,
    /// Whether a taper thread's hole is reamed to the taper before it is tapped; no if not given.
    pub taper_reamer: threadcalc_answer,
    /// Where the tap returns to; the R plane if not given.
    pub return_to: threadcalc_return_to,
    /// 0.
    pub reserved: i32,
    /// How many of machine_gears there are, 0 to 4.
    pub machine_gear_count: i32,
    /// What stands on the tap's shank, up to 96 bytes: it is judged against the job.
    pub tap_mark: [c_char; 104],
    /// How far a taper pipe tap's small end projects through its ring gauge, in mm; of ASME B94.9 if not given.
    pub projection_mm: threadcalc_ratio_t,
    /// How far the holder can be drawn out, in mm.
    pub holder_extension_mm: threadcalc_ratio_t,
    /// How far the holder can be pushed in, in mm.
    pub holder_compression_mm: threadcalc_ratio_t,
    /// Percent by which the feed stays below the lead; 0 if not given.
    pub underfeed_percent: threadcalc_ratio_t,
    /// Turns that the spindle coasts on at the bottom of a hole; 0 if not given.
    pub over_travel_turns: threadcalc_ratio_t,
    /// The hole that is already drilled, to the end of its full diameter, in mm.
    pub drill_depth_mm: threadcalc_ratio_t,
    /// Thickness of the part at the hole, in mm.
    pub part_thickness_mm: threadcalc_ratio_t,
    /// Diameter of the countersink at the face, in mm.
    pub countersink_mm: threadcalc_ratio_t,
    /// Included angle of the countersink in degrees; 90 if not given.
    pub countersink_angle_deg: threadcalc_ratio_t,
    /// Depth of a peck in mm; none if not given.
    pub peck_mm: threadcalc_ratio_t,
    /// Wait at the bottom in seconds; 0 if not given.
    pub dwell_s: threadcalc_ratio_t,
    /// Thickness of a plating that the thread is gauged after, in micrometres; 0 if not given.
    pub coating_um: threadcalc_ratio_t,
    /// Specific cutting force in N/mm2 for kc P^2 D / 8000, instead of the material's starting value.
    pub cutting_force_n_mm2: threadcalc_ratio_t,
    /// Shear strength of the part in MPa, for what the joint carries; without it the material has one to start from.
    pub part_shear_mpa: threadcalc_ratio_t,
    /// How many such holes the part has, for the time.
    pub hole_count: threadcalc_ratio_t,
    /// Feed limit of the axis that taps, in mm/min.
    pub machine_axis_feed_limit_mm_min: threadcalc_ratio_t,
    /// How fast the spindle gains and loses speed, in rpm/s.
    pub machine_acceleration_rpm_s: threadcalc_ratio_t,
    /// Speed on the way out over speed on the way in; 1 if not given.
    pub machine_retract_factor: threadcalc_ratio_t,
    /// Turns that the tap needs above the face, whatever the holder.
    pub machine_least_clearance_turns: threadcalc_ratio_t,
    /// The spindle's gears with their torque; none: torque is not checked.
    pub machine_gears: [threadcalc_gear_t; 4],
    /// The screw that goes in, for what the joint carries.
    pub screw: threadcalc_screw_t,
}

// SAFETY: integers, doubles, arrays of these and pointers that may be NULL.
unsafe impl Request for threadcalc_job_t {
    const STARTS: &'static [usize] = starts![
        unit,
        mode,
        hole,
        tap,
        basis,
        tap_set_on,
        drill_sets,
        thread,
        decimals,
        rpm,
        full_thread_depth_mm,
        chamfer_threads,
        tap_centre_mm,
        drill_mm,
        percent,
        point_angle_deg,
        bottom_clearance_mm,
        r_plane_mm,
        machine_highest_rpm,
        machine_lowest_rpm,
        machine_speed_step,
        dialect,
        drill_list,
        drill_list_count,
        oversize_mm,
        surface_speed_m_min,
        surface_speed_ft_min,
        tap_kind,
        chamfer_form,
        holder,
        material,
        taper_reamer,
        return_to,
        reserved,
        machine_gear_count,
        tap_mark,
        projection_mm,
        holder_extension_mm,
        holder_compression_mm,
        underfeed_percent,
        over_travel_turns,
        drill_depth_mm,
        part_thickness_mm,
        countersink_mm,
        countersink_angle_deg,
        peck_mm,
        dwell_s,
        coating_um,
        cutting_force_n_mm2,
        part_shear_mpa,
        hole_count,
        machine_axis_feed_limit_mm_min,
        machine_acceleration_rpm_s,
        machine_retract_factor,
        machine_least_clearance_turns,
        machine_gears,
        screw,
    ];
}

impl threadcalc_job_t {
    /// # Safety
    /// The dialect is NULL or points to one, the list of drills is NULL or has as many as its count says.
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
        job.drill_list = unsafe { own_drills(self.drill_list, self.drill_list_count) }?;
        job.oversize_mm = self.oversize_mm.read(Field::Oversize)?;
        self.read_tool(&mut job)?;
        self.read_hole(&mut job)?;
        self.read_machine(&mut job)?;
        job.screw = self.screw.read()?;
        Ok(job)
    }

    fn read_tool(&self, job: &mut Job) -> Result<(), Error> {
        let (form, forms) = (ChamferForm::from_number, ChamferForm::CHOICES);
        job.tap_kind = optional(self.tap_kind, TapKind::from_number, Field::TapKind, TapKind::CHOICES)?;
        job.chamfer_form = optional(self.chamfer_form, form, Field::ChamferForm, forms)?;
        job.holder = optional(self.holder, Holder::from_number, Field::Holder, Holder::CHOICES)?;
        job.set("taper_reamer", flag_of(self.taper_reamer, Field::TaperReamer)?)?;
        job.return_to = optional(self.return_to, ReturnTo::from_number, Field::ReturnTo, ReturnTo::CHOICES)?;
        crate::feed::checked_reserve(u32::from_ne_bytes(self.reserved.to_ne_bytes()))?;
        let mark = text_of(&self.tap_mark);
        if !mark.is_empty() {
            job.set("tap_mark", Value::Text(mark))?;
        }
        job.projection_mm = self.projection_mm.read(Field::Projection)?;
        job.holder_extension_mm = self.holder_extension_mm.read(Field::HolderExtension)?;
        job.holder_compression_mm = self.holder_compression_mm.read(Field::HolderCompression)?;
        job.underfeed_percent = self.underfeed_percent.read(Field::Underfeed)?;
        job.over_travel_turns = self.over_travel_turns.read(Field::OverTravel)?;
        job.surface_speed_m_min = self.surface_speed_m_min.read(Field::SurfaceSpeed)?;
        job.surface_speed_ft_min = self.surface_speed_ft_min.read(Field::SurfaceSpeedFeet)?;
        Ok(())
    }

    fn read_hole(&self, job: &mut Job) -> Result<(), Error> {
        job.material = optional(self.material, Material::from_number, Field::Material, Material::CHOICES)?;
        job.drill_depth_mm = self.drill_depth_mm.read(Field::DrillDepth)?;
        job.part_thickness_mm = self.part_thickness_mm.read(Field::PartThickness)?;
        job.countersink_mm = self.countersink_mm.read(Field::Countersink)?;
        job.countersink_angle_deg = self.countersink_angle_deg.read(Field::CountersinkAngle)?;
        job.peck_mm = self.peck_mm.read(Field::Peck)?;
        job.dwell_s = self.dwell_s.read(Field::Dwell)?;
        job.coating_um = self.coating_um.read(Field::Coating)?;
        job.cutting_force_n_mm2 = self.cutting_force_n_mm2.read(Field::CuttingForce)?;
        job.part_shear_mpa = self.part_shear_mpa.read(Field::PartShear)?;
        job.hole_count = self.hole_count.read(Field::HoleCount)?;
        Ok(())
    }

    fn read_machine(&self, job: &mut Job) -> Result<(), Error> {
        let machine = &mut job.machine;
        machine.axis_feed_limit_mm_min = self.machine_axis_feed_limit_mm_min.read(Field::MachineFeedLimit)?;
        machine.acceleration_rpm_s = self.machine_acceleration_rpm_s.read(Field::MachineAcceleration)?;
        machine.retract_factor = self.machine_retract_factor.read(Field::MachineRetract)?;
        machine.least_clearance_turns = self.machine_least_clearance_turns.read(Field::MachineClearance)?;
        set_gears(machine, self.machine_gear_count, &self.machine_gears)
    }
}

/// The gears of a machine, so many of them.
pub(crate) fn set_gears(machine: &mut Machine, given: i32, all: &[threadcalc_gear_t]) -> Result<(), Error> {
    let gears = usize::try_from(given).ok().and_then(|count| all.get(..count)).ok_or_else(|| {
        Error::new(Code::OutOfRange, Field::MachineGears).got(f64::from(given)).within(0.0, MOST_MACHINE_GEARS as f64)
    })?;
    for (place, gear) in machine.gears.iter_mut().zip(gears) {
        *place = Some(gear.read().map_err(|error| error.about(Field::MachineGears))?);
    }
    Ok(())
}
