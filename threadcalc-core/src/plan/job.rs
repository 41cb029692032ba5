//! What a plan is asked for.

use crate::cycle::Dialect;
use crate::depth::{Hole, TapSetOn};
use crate::drill::{Basis, DrillSet, DrillSets, Tap};
use crate::error::{Code, Error, Field};
use crate::feed::{FeedMode, Unit};
use crate::length::{Length, Ratio};
use crate::named::nearest;
use crate::number::check_digits;
use crate::thread::Thread;
pub use crate::value::Value;
use crate::value::{choice, decimals, number, text};

/// The machine, as far as a plan of this version needs it; speeds in rpm.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
#[non_exhaustive]
pub struct Machine {
    /// Highest spindle speed for tapping.
    pub highest_rpm: Option<Ratio>,
    /// Lowest spindle speed for tapping.
    pub lowest_rpm: Option<Ratio>,
    /// Step in which the control holds a speed; 1 if not given.
    pub speed_step: Option<Ratio>,
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
    /// Spindle speed asked for. Required.
    pub rpm: Option<Ratio>,
    /// Through or blind. Required.
    pub hole: Option<Hole>,
    /// Full thread from the face in mm. Required.
    pub full_thread_depth_mm: Option<Length>,
    /// Cut or form tap. Required.
    pub tap: Option<Tap>,
    /// Threads of the tap's chamfer; 3 (the longest of form C) if not given.
    pub chamfer_threads: Option<Length>,
    /// Where the tap's length offset is set; required with a male centre.
    pub tap_set_on: Option<TapSetOn>,
    /// Length of the tap's male centre in mm; 0 if not given.
    pub tap_centre_mm: Option<Length>,
    /// The drills to choose from.
    pub drill_sets: DrillSets,
    /// The drill there is, in mm; instead of `drill_sets` and `percent`.
    pub drill_mm: Option<Length>,
    /// Percent of thread wanted.
    pub percent: Option<Ratio>,
    /// Basis of the percent.
    pub basis: Option<Basis>,
    /// Point angle of the drill in degrees; 118 if not given.
    pub point_angle_deg: Option<Length>,
    /// Room below the tap in mm; 3 pitches in a blind hole if not given.
    pub bottom_clearance_mm: Option<Length>,
    /// R plane above the face in mm; 5 mm or 0.2 in if not given.
    pub r_plane_mm: Option<Length>,
    /// The machine.
    pub machine: Machine,
    /// The control's dialect.
    pub dialect: Option<Dialect>,
}

/// Every key of a job, dotted for the fields of `machine`; those of the dialect are its own.
const KEYS: [&str; 24] = [
    "schema",
    "thread",
    "unit",
    "mode",
    "decimals",
    "rpm",
    "hole",
    "full_thread_depth_mm",
    "tap",
    "chamfer_threads",
    "tap_set_on",
    "tap_centre_mm",
    "drill_sets",
    "drill_mm",
    "percent",
    "basis",
    "point_angle_deg",
    "bottom_clearance_mm",
    "r_plane_mm",
    "machine",
    "machine.highest_rpm",
    "machine.lowest_rpm",
    "machine.speed_step",
    "dialect",
];

/// Keys of the contract that this version does not compute with yet.
const NOT_YET: [&str; 10] = [
    "surface_speed_m_min",
    "holder",
    "over_travel_turns",
    "underfeed_percent",
    "coating_um",
    "cutting_force_n_mm2",
    "machine.axis_feed_limit_mm_min",
    "machine.acceleration_rpm_s",
    "machine.gears",
    "machine.retract_factor",
];

impl Job {
    /// Sets one field by its name: the one place where the doors' names and values are understood.
    ///
    /// Fields of the machine and of the dialect are dotted: `machine.speed_step`, `dialect.tap_lh`.
    /// `drill_sets` takes one set name at a time and adds it, or several separated by blanks.
    ///
    /// # Errors
    /// [`Code::UnknownKey`] with the nearest known key, [`Code::UnsupportedField`], and for the value
    /// [`Code::UnknownValue`], [`Code::OutOfRange`], or what its reader says.
    pub fn set(&mut self, key: &str, value: Value<'_>) -> Result<(), Error> {
        if value == Value::Absent && known_keys().any(|known| known == key) {
            return Ok(());
        }
        match key {
            "schema" => check_schema(value)?,
            "thread" => self.thread = Some(Thread::read(text(value, Field::Thread)?)?),
            "unit" => self.unit = Some(choice(value, Field::Unit, Unit::from_name, Unit::CHOICES)?),
            "mode" => self.mode = Some(choice(value, Field::Mode, FeedMode::from_name, FeedMode::CHOICES)?),
            "decimals" => self.decimals = Some(decimals(value, Field::Decimals)?),
            "rpm" => self.rpm = Some(number(value, Field::Rpm)?),
            "hole" => self.hole = Some(choice(value, Field::Hole, Hole::from_name, Hole::CHOICES)?),
            "full_thread_depth_mm" => self.full_thread_depth_mm = Some(number(value, Field::FullThreadDepth)?),
            "tap" => self.tap = Some(choice(value, Field::Tap, Tap::from_name, Tap::CHOICES)?),
            "chamfer_threads" => self.chamfer_threads = Some(number(value, Field::ChamferThreads)?),
            "tap_set_on" => {
                self.tap_set_on = Some(choice(value, Field::TapSetOn, TapSetOn::from_name, TapSetOn::CHOICES)?)
            }
            "tap_centre_mm" => self.tap_centre_mm = Some(number(value, Field::TapCentre)?),
            "drill_sets" => self.add_drill_sets(text(value, Field::DrillSets)?)?,
            "drill_mm" => self.drill_mm = Some(number(value, Field::Drill)?),
            "percent" => self.percent = Some(number(value, Field::Percent)?),
            "basis" => self.basis = Some(choice(value, Field::Basis, Basis::from_name, Basis::CHOICES)?),
            "point_angle_deg" => self.point_angle_deg = Some(number(value, Field::PointAngle)?),
            "bottom_clearance_mm" => self.bottom_clearance_mm = Some(number(value, Field::BottomClearance)?),
            "r_plane_mm" => self.r_plane_mm = Some(number(value, Field::RPlane)?),
            "machine.highest_rpm" => self.machine.highest_rpm = Some(number(value, Field::MachineHighest)?),
            "machine.lowest_rpm" => self.machine.lowest_rpm = Some(number(value, Field::MachineLowest)?),
            "machine.speed_step" => self.machine.speed_step = Some(number(value, Field::MachineStep)?),
            "dialect" => self.dialect = Some(Dialect::built_in(text(value, Field::Dialect)?)?),
            _ => return self.set_dialect(key, value),
        }
        Ok(())
    }

    /// Every required field that is not given, with what would be right.
    pub fn missing(&self) -> impl Iterator<Item = Error> {
        let required = [
            (self.thread.is_none(), Field::Thread, "a designation such as M8x1.25-6H or 1/4-20 UNC-2B"),
            (self.unit.is_none(), Field::Unit, Unit::CHOICES),
            (self.mode.is_none(), Field::Mode, FeedMode::CHOICES),
            (self.decimals.is_none(), Field::Decimals, "decimals of the feed word, 0 to 9"),
            (self.rpm.is_none(), Field::Rpm, "the spindle speed in rpm"),
            (self.hole.is_none(), Field::Hole, Hole::CHOICES),
            (self.full_thread_depth_mm.is_none(), Field::FullThreadDepth, "full thread from the face in mm"),
            (self.tap.is_none(), Field::Tap, Tap::CHOICES),
        ];
        let absent = required.into_iter().filter(|(absent, _, _)| *absent);
        absent.map(|(_, field, hint)| Error::new(Code::Missing, field).hint_text(hint))
    }

    /// Refuses numbers that a plan could not be written with.
    pub(super) fn check_digits(&self) -> Result<(), Error> {
        let numbers = [
            (self.rpm, Field::Rpm),
            (self.full_thread_depth_mm, Field::FullThreadDepth),
            (self.chamfer_threads, Field::ChamferThreads),
            (self.tap_centre_mm, Field::TapCentre),
            (self.drill_mm, Field::Drill),
            (self.percent, Field::Percent),
            (self.point_angle_deg, Field::PointAngle),
            (self.bottom_clearance_mm, Field::BottomClearance),
            (self.r_plane_mm, Field::RPlane),
            (self.machine.highest_rpm, Field::MachineHighest),
            (self.machine.lowest_rpm, Field::MachineLowest),
            (self.machine.speed_step, Field::MachineStep),
        ];
        numbers.into_iter().try_for_each(|(number, field)| number.map_or(Ok(()), |number| check_digits(number, field)))
    }

    fn set_dialect(&mut self, key: &str, value: Value<'_>) -> Result<(), Error> {
        if NOT_YET.contains(&key) {
            return Err(Error::new(Code::UnsupportedField, Field::Key)
                .hint_text("part of the contract, not computed with in this version: leave it out"));
        }
        let unknown = Error::new(Code::UnknownKey, Field::Key).hint_text(nearest(key, known_keys()));
        let own = key.strip_prefix("dialect.").ok_or(unknown)?;
        let mut dialect = self.dialect.unwrap_or(Dialect::unset());
        // The key is told as it stands in a job.
        dialect.set(own, value).map_err(|error| if error.code() == Code::UnknownKey { unknown } else { error })?;
        self.dialect = Some(dialect);
        Ok(())
    }

    fn add_drill_sets(&mut self, names: &[u8]) -> Result<(), Error> {
        for name in names.split(|byte| matches!(byte, b' ' | b',')).filter(|name| !name.is_empty()) {
            let set = DrillSet::from_name(name)
                .ok_or(Error::new(Code::UnknownValue, Field::DrillSets).hint_text(DrillSet::CHOICES))?;
            self.drill_sets = self.drill_sets.with(set);
        }
        Ok(())
    }
}

fn check_schema(value: Value<'_>) -> Result<(), Error> {
    let given = number(value, Field::Schema)?;
    if given == Length::integer(super::SCHEMA) {
        return Ok(());
    }
    Err(Error::new(Code::UnknownValue, Field::Schema)
        .got(given.to_f64())
        .within(super::SCHEMA as f64, super::SCHEMA as f64))
}

/// Every key, those of the dialect as they stand in a job.
fn known_keys() -> impl Iterator<Item = &'static str> {
    KEYS.iter().chain(Dialect::KEYS_IN_JOB).copied()
}
