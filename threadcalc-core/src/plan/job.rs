//! What a plan is asked for.

use crate::cutting::{Gear, Material, TorquePoint};
use crate::depth::{Hole, TapSetOn};
use crate::dialect::{Dialect, ReturnTo, axis_decimals};
use crate::drill::{Basis, DrillSets, OwnDrills, Tap};
use crate::engagement::PropertyClass;
use crate::error::{Code, Error, Field};
use crate::feed::{FeedMode, Unit};
use crate::length::{Length, Ratio};
use crate::motion::Holder;
use crate::number::check_digits;
use crate::tap::{ChamferForm, TapKind};
use crate::text::Text;
use crate::thread::Thread;

/// The most gears that a job's machine holds.
pub const MOST_MACHINE_GEARS: usize = 4;

/// The machine: speeds in rpm, feeds in mm/min.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
#[non_exhaustive]
pub struct Machine {
    /// Highest spindle speed for tapping.
    pub highest_rpm: Option<Ratio>,
    /// Lowest spindle speed for tapping.
    pub lowest_rpm: Option<Ratio>,
    /// Step in which the control holds a speed; 1 if not given.
    pub speed_step: Option<Ratio>,
    /// Feed limit of the axis that taps, in mm/min.
    pub axis_feed_limit_mm_min: Option<Length>,
    /// How fast the spindle gains and loses speed, in rpm/s.
    pub acceleration_rpm_s: Option<Ratio>,
    /// Speed on the way out over speed on the way in; 1 if not given.
    pub retract_factor: Option<Ratio>,
    /// Turns that the tap needs above the face, whatever the holder.
    pub least_clearance_turns: Option<Ratio>,
    /// The spindle's gears with their torque; none: torque is not checked.
    pub gears: [Option<Gear>; MOST_MACHINE_GEARS],
}

impl Machine {
    /// Adds a gear: lowest and highest speed in rpm, then the torque in Nm over the whole range, or pairs of
    /// speed and torque that reach over it.
    ///
    /// # Errors
    /// [`Code::TooLong`] beyond [`MOST_MACHINE_GEARS`]; [`Code::OutOfRange`] for a list that is no gear; those of
    /// [`Gear::new`].
    pub fn add_gear(&mut self, numbers: &[Ratio]) -> Result<(), Error> {
        let shape = Error::new(Code::OutOfRange, Field::MachineGears)
            .got(numbers.len() as f64)
            .hint_text("lowest rpm, highest rpm, torque in Nm; or after the two speeds up to 8 pairs of rpm and Nm");
        let [lowest, highest, curve @ ..] = numbers else { return Err(shape) };
        let mut points = [TorquePoint { rpm: *lowest, torque_nm: 0.0 }; 8];
        let count = match curve {
            [torque] => {
                points = [TorquePoint { rpm: *lowest, torque_nm: torque.to_f64() }; 8];
                1
            }
            _ => {
                let pairs = curve.chunks_exact(2);
                if pairs.len() < 2 || pairs.len() > points.len() || !pairs.remainder().is_empty() {
                    return Err(shape);
                }
                let count = pairs.len();
                for (point, pair) in points.iter_mut().zip(pairs) {
                    if let [rpm, torque] = pair {
                        *point = TorquePoint { rpm: *rpm, torque_nm: torque.to_f64() };
                    }
                }
                count
            }
        };
        let gear = Gear::new(*lowest, *highest, points.get(..count).unwrap_or(&[]))?;
        let free = self.gears.iter_mut().find(|slot| slot.is_none());
        *free.ok_or(
            Error::new(Code::TooLong, Field::MachineGears)
                .got(MOST_MACHINE_GEARS as f64 + 1.0)
                .within(0.0, MOST_MACHINE_GEARS as f64)
                .hint_text("give the gears that tapping runs in"),
        )? = Some(gear);
        Ok(())
    }
}

/// The screw that goes into the hole, for what the joint carries. Strengths in MPa.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
#[non_exhaustive]
pub struct Screw {
    /// Class of its thread; 6g or 2A if not given.
    pub tolerance_class: Option<Text<8>>,
    /// Property class: its tensile strength is a starting value where none is given.
    pub property_class: Option<PropertyClass>,
    /// Tensile strength.
    pub tensile_mpa: Option<Ratio>,
    /// Shear strength; 0.6 of the tensile strength if not given.
    pub shear_mpa: Option<Ratio>,
    /// Length of engagement in mm, at most the full thread depth; that depth if not given.
    pub engagement_mm: Option<Length>,
    /// Load along the axis in newtons.
    pub load_n: Option<Ratio>,
}

/// One tapped hole. Fields are named as in JSON and Python; None is "not given".
#[derive(Clone, Copy, Debug, Default, PartialEq)]
#[non_exhaustive]
pub struct Job {
    /// The thread. Required.
    pub thread: Option<Thread>,
    /// Unit of the machine. Required.
    pub unit: Option<Unit>,
    /// Feed mode. Required.
    pub mode: Option<FeedMode>,
    /// Decimals of the feed word, 0 to 9. Required.
    pub decimals: Option<u8>,
    /// Spindle speed asked for. This or a surface speed is required.
    pub rpm: Option<Ratio>,
    /// Surface speed at the major diameter in m/min, instead of `rpm`.
    pub surface_speed_m_min: Option<Ratio>,
    /// Surface speed at the major diameter in ft/min, instead of `rpm`.
    pub surface_speed_ft_min: Option<Ratio>,
    /// Through or blind. Required.
    pub hole: Option<Hole>,
    /// Full thread from the face in mm. Required, but not for a taper thread, whose depth follows from its gauge.
    pub full_thread_depth_mm: Option<Length>,
    /// Cut or form tap. Required.
    pub tap: Option<Tap>,
    /// How the tap is built.
    pub tap_kind: Option<TapKind>,
    /// What stands on the tap's shank: it is judged against the job.
    pub tap_mark: Option<Text<96>>,
    /// Threads of the tap's chamfer; 3 (the longest of form C) if neither this nor a form is given.
    pub chamfer_threads: Option<Length>,
    /// Form of the chamfer, A to F: planned on its longest.
    pub chamfer_form: Option<ChamferForm>,
    /// Where the tap's length offset is set; required with a male centre.
    pub tap_set_on: Option<TapSetOn>,
    /// Length of the tap's male centre in mm; 0 if not given.
    pub tap_centre_mm: Option<Length>,
    /// How far a taper pipe tap's small end projects through its ring gauge, in mm; of ASME B94.9 if not given.
    pub projection_mm: Option<Length>,
    /// How the tap is held; rigid if not given.
    pub holder: Option<Holder>,
    /// How far the holder can be drawn out, 0 to 1000 mm; a rigid one cannot.
    pub holder_extension_mm: Option<Length>,
    /// How far the holder can be pushed in, 0 to 1000 mm; a rigid one cannot.
    pub holder_compression_mm: Option<Length>,
    /// Percent by which the feed stays below the lead, so that the holder is drawn out; 0 if not given.
    pub underfeed_percent: Option<Ratio>,
    /// Turns that the spindle coasts on at the bottom of a hole; 0 if not given.
    pub over_travel_turns: Option<Ratio>,
    /// The drills to choose from.
    pub drill_sets: DrillSets,
    /// The drills that the shop owns, instead of `drill_sets`.
    pub drill_list: OwnDrills,
    /// How much larger than the drill its hole is, in mm, below the major diameter; the usual oversize if not given.
    pub oversize_mm: Option<Length>,
    /// The drill there is, in mm; instead of `drill_sets`, `drill_list` and `percent`.
    pub drill_mm: Option<Length>,
    /// Whether a taper thread's hole is reamed to the taper before it is tapped; no if not given.
    pub taper_reamer: Option<bool>,
    /// Percent of thread wanted.
    pub percent: Option<Ratio>,
    /// Basis of the percent.
    pub basis: Option<Basis>,
    /// Point angle of the drill in degrees; 118 if not given.
    pub point_angle_deg: Option<Length>,
    /// Room below the tap in mm; 3 pitches in a blind hole if not given.
    pub bottom_clearance_mm: Option<Length>,
    /// The hole that is already drilled, to the end of its full diameter, in mm, above 0.
    pub drill_depth_mm: Option<Length>,
    /// Thickness of the part at the hole, in mm, above 0.
    pub part_thickness_mm: Option<Length>,
    /// Diameter of the countersink at the face, in mm.
    pub countersink_mm: Option<Length>,
    /// Included angle of the countersink in degrees; 90 if not given.
    pub countersink_angle_deg: Option<Length>,
    /// R plane above the face in mm; 5 mm or 0.2 in, or what the holder needs, if not given.
    pub r_plane_mm: Option<Length>,
    /// Depth of a peck in mm; none if not given.
    pub peck_mm: Option<Length>,
    /// Wait at the bottom in seconds; 0 if not given.
    pub dwell_s: Option<Ratio>,
    /// Where the tap returns to; the R plane if not given.
    pub return_to: Option<ReturnTo>,
    /// Thickness of a plating that the thread is gauged after, in micrometres; 0 if not given.
    pub coating_um: Option<Length>,
    /// Material of the part, for starting values.
    pub material: Option<Material>,
    /// Specific cutting force in N/mm2 for kc P² D / 8000, instead of the material's starting value.
    pub cutting_force_n_mm2: Option<Ratio>,
    /// Shear strength of the part in MPa, for what the joint carries; without it the material has one to start from.
    pub part_shear_mpa: Option<Ratio>,
    /// The screw that goes in.
    pub screw: Option<Screw>,
    /// How many such holes the part has, for the time.
    pub hole_count: Option<Length>,
    /// The machine.
    pub machine: Machine,
    /// The control's dialect.
    pub dialect: Option<Dialect>,
}

impl Job {
    /// Every required field that is not given, with what would be right.
    pub fn missing(&self) -> impl Iterator<Item = Error> {
        let no_speed = self.rpm.or(self.surface_speed_m_min).or(self.surface_speed_ft_min).is_none();
        let taper = self.thread.is_some_and(|thread| thread.form().is_taper());
        let required = [
            (self.thread.is_none(), Field::Thread, "a designation such as M8x1.25-6H or 1/4-20 UNC-2B"),
            (self.unit.is_none(), Field::Unit, Unit::CHOICES),
            (self.mode.is_none(), Field::Mode, FeedMode::CHOICES),
            (self.decimals.is_none(), Field::Decimals, "decimals of the feed word, 0 to 9"),
            (no_speed, Field::Rpm, "the spindle speed in rpm, or surface_speed_m_min, or surface_speed_ft_min"),
            (self.hole.is_none(), Field::Hole, Hole::CHOICES),
            (self.full_thread_depth_mm.is_none() && !taper, Field::FullThreadDepth, "full thread from the face in mm"),
            (self.tap.is_none(), Field::Tap, Tap::CHOICES),
        ];
        let absent = required.into_iter().filter(|(absent, _, _)| *absent);
        absent.map(|(_, field, hint)| Error::new(Code::Missing, field).hint_text(hint))
    }

    /// Decimals of axis words: the dialect's, or the usual ones.
    pub(super) fn axis_decimals(&self, unit: Unit) -> u8 {
        self.dialect.map_or(axis_decimals(unit), |dialect| dialect.decimals(unit))
    }

    /// Refuses numbers that a plan could not be written with.
    #[inline(never)]
    pub(super) fn check_digits(&self) -> Result<(), Error> {
        let screw = self.screw.unwrap_or_default();
        let check = |number: Option<Length>, field| match number {
            Some(number) => check_digits(number, field),
            None => Ok(()),
        };
        check(self.rpm, Field::Rpm)?;
        check(self.surface_speed_m_min, Field::SurfaceSpeed)?;
        check(self.surface_speed_ft_min, Field::SurfaceSpeedFeet)?;
        check(self.full_thread_depth_mm, Field::FullThreadDepth)?;
        check(self.chamfer_threads, Field::ChamferThreads)?;
        check(self.tap_centre_mm, Field::TapCentre)?;
        check(self.projection_mm, Field::Projection)?;
        check(self.holder_extension_mm, Field::HolderExtension)?;
        check(self.holder_compression_mm, Field::HolderCompression)?;
        check(self.underfeed_percent, Field::Underfeed)?;
        check(self.over_travel_turns, Field::OverTravel)?;
        check(self.oversize_mm, Field::Oversize)?;
        check(self.drill_mm, Field::Drill)?;
        check(self.percent, Field::Percent)?;
        check(self.point_angle_deg, Field::PointAngle)?;
        check(self.bottom_clearance_mm, Field::BottomClearance)?;
        check(self.drill_depth_mm, Field::DrillDepth)?;
        check(self.part_thickness_mm, Field::PartThickness)?;
        check(self.countersink_mm, Field::Countersink)?;
        check(self.countersink_angle_deg, Field::CountersinkAngle)?;
        check(self.r_plane_mm, Field::RPlane)?;
        check(self.peck_mm, Field::Peck)?;
        check(self.dwell_s, Field::Dwell)?;
        check(self.coating_um, Field::Coating)?;
        check(self.cutting_force_n_mm2, Field::CuttingForce)?;
        check(self.part_shear_mpa, Field::PartShear)?;
        check(screw.tensile_mpa, Field::ScrewTensile)?;
        check(screw.shear_mpa, Field::ScrewShear)?;
        check(screw.engagement_mm, Field::ScrewEngagement)?;
        check(screw.load_n, Field::ScrewLoad)?;
        check(self.hole_count, Field::HoleCount)?;
        check(self.machine.highest_rpm, Field::MachineHighest)?;
        check(self.machine.lowest_rpm, Field::MachineLowest)?;
        check(self.machine.speed_step, Field::MachineStep)?;
        check(self.machine.axis_feed_limit_mm_min, Field::MachineFeedLimit)?;
        check(self.machine.acceleration_rpm_s, Field::MachineAcceleration)?;
        check(self.machine.retract_factor, Field::MachineRetract)?;
        check(self.machine.least_clearance_turns, Field::MachineClearance)?;
        Ok(())
    }
}
