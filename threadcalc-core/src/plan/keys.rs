//! The names and values of a job's fields, as every door hands them in.

use super::job::{Job, Machine, Screw};
use crate::cutting::Material;
use crate::depth::{Hole, TapSetOn};
use crate::dialect::{Dialect, ReturnTo};
use crate::drill::{Basis, Drill, DrillSet, Tap};
use crate::engagement::PropertyClass;
use crate::error::{Code, Error, Field};
use crate::feed::{FeedMode, Unit};
use crate::length::Length;
use crate::motion::Holder;
use crate::named::nearest;
use crate::number::read_number;
use crate::tap::{ChamferForm, TapKind};
use crate::text::Text;
use crate::thread::Thread;
use crate::value::{Value, choice, decimals, flag, number, short, text};

/// Every key of a job; those of `machine` and `screw` are dotted, those of the dialect are its own.
const KEYS: [&str; 62] = [
    "schema",
    "thread",
    "unit",
    "mode",
    "decimals",
    "rpm",
    "surface_speed_m_min",
    "surface_speed_ft_min",
    "hole",
    "full_thread_depth_mm",
    "tap",
    "tap_kind",
    "tap_mark",
    "chamfer_threads",
    "chamfer_form",
    "tap_set_on",
    "tap_centre_mm",
    "projection_mm",
    "holder",
    "holder_extension_mm",
    "holder_compression_mm",
    "underfeed_percent",
    "over_travel_turns",
    "drill_sets",
    "drill_list",
    "oversize_mm",
    "drill_mm",
    "taper_reamer",
    "percent",
    "basis",
    "point_angle_deg",
    "bottom_clearance_mm",
    "drill_depth_mm",
    "part_thickness_mm",
    "countersink_mm",
    "countersink_angle_deg",
    "r_plane_mm",
    "peck_mm",
    "dwell_s",
    "coating_um",
    "material",
    "cutting_force_n_mm2",
    "part_shear_mpa",
    "hole_count",
    "machine",
    "machine.highest_rpm",
    "machine.lowest_rpm",
    "machine.speed_step",
    "machine.axis_feed_limit_mm_min",
    "machine.acceleration_rpm_s",
    "machine.retract_factor",
    "machine.least_clearance_turns",
    "machine.gears",
    "screw",
    "screw.tolerance_class",
    "screw.property_class",
    "screw.tensile_mpa",
    "screw.shear_mpa",
    "screw.engagement_mm",
    "screw.load_n",
    "return_to",
    "dialect",
];

impl Job {
    /// Every field by its name, as [`set`](Self::set) takes it and as the JSON of a job nests it; those of machine,
    /// screw and dialect are dotted.
    ///
    /// # Example
    /// ```
    /// use threadcalc_core::{Job, Value};
    ///
    /// let of_screw: Vec<_> = Job::keys().filter_map(|key| key.strip_prefix("screw.")).collect();
    /// assert!(of_screw.contains(&"load_n") && Job::keys().any(|key| key == "dialect.tap_rh"));
    /// assert!(Job::keys().all(|key| Job::default().set(key, Value::Absent).is_ok()));
    /// ```
    pub fn keys() -> impl Iterator<Item = &'static str> + Clone {
        KEYS.iter().chain(Dialect::KEYS_IN_JOB).copied()
    }

    /// Sets one field by its name: the one place where the doors' names and values are understood.
    ///
    /// Fields of machine, screw and dialect are dotted: `machine.speed_step`, `dialect.tap_lh`. `drill_sets`
    /// takes one set name at a time and adds it, or several separated by blanks; `drill_list` takes
    /// a name or a diameter and adds it, or several names with commas between them; `machine.gears` takes the
    /// numbers of one gear at a time, as a list or as a text with blanks, and adds it.
    ///
    /// # Errors
    /// [`Code::UnknownKey`] with the nearest known key, and for the value [`Code::UnknownValue`],
    /// [`Code::OutOfRange`], or what its reader says; the job is then as it was.
    pub fn set(&mut self, key: &str, value: Value<'_>) -> Result<(), Error> {
        if value == Value::Absent && Self::keys().any(|known| known == key) {
            return Ok(());
        }
        if let Some(key) = key.strip_prefix("machine.") {
            return self.machine.set(key, value);
        }
        if let Some(key) = key.strip_prefix("screw.") {
            let mut screw = self.screw.unwrap_or_default();
            screw.set(key, value)?;
            self.screw = Some(screw);
            return Ok(());
        }
        if let Some(slot) = self.number_slot(key) {
            let field = Field::from_name(key.as_bytes()).unwrap_or(Field::Key);
            *slot = Some(number(value, field).map_err(|error| named_drill(error, field))?);
            return Ok(());
        }
        match key {
            "schema" => check_schema(value)?,
            "thread" => self.thread = Some(Thread::read(text(value, Field::Thread)?)?),
            "unit" => self.unit = Some(choice(value, Field::Unit, Unit::from_name, Unit::CHOICES)?),
            "mode" => self.mode = Some(choice(value, Field::Mode, FeedMode::from_name, FeedMode::CHOICES)?),
            "decimals" => self.decimals = Some(decimals(value, Field::Decimals)?),
            "hole" => self.hole = Some(choice(value, Field::Hole, Hole::from_name, Hole::CHOICES)?),
            "tap" => self.tap = Some(choice(value, Field::Tap, Tap::from_name, Tap::CHOICES)?),
            "tap_kind" => self.tap_kind = Some(choice(value, Field::TapKind, TapKind::from_name, TapKind::CHOICES)?),
            "tap_mark" => self.tap_mark = Some(mark(value)?),
            "chamfer_form" => {
                let form = choice(value, Field::ChamferForm, ChamferForm::from_name, ChamferForm::CHOICES)?;
                self.chamfer_form = Some(form);
            }
            "tap_set_on" => {
                self.tap_set_on = Some(choice(value, Field::TapSetOn, TapSetOn::from_name, TapSetOn::CHOICES)?)
            }
            "holder" => self.holder = Some(choice(value, Field::Holder, Holder::from_name, Holder::CHOICES)?),
            "material" => self.material = Some(choice(value, Field::Material, Material::from_name, Material::CHOICES)?),
            "taper_reamer" => self.taper_reamer = Some(flag(value, Field::TaperReamer)?),
            "drill_sets" => self.add_drill_sets(text(value, Field::DrillSets)?)?,
            "drill_list" => self.add_drills(value)?,
            "basis" => self.basis = Some(choice(value, Field::Basis, Basis::from_name, Basis::CHOICES)?),
            "return_to" => {
                self.return_to = Some(choice(value, Field::ReturnTo, ReturnTo::from_name, ReturnTo::CHOICES)?)
            }
            "dialect" => self.dialect = Some(Dialect::built_in(text(value, Field::Dialect)?)?),
            _ => return self.set_dialect(key, value),
        }
        Ok(())
    }

    /// Whether there are fields below this name: `machine`, `dialect`, `dialect.units_codes`.
    ///
    /// # Example
    /// ```
    /// use threadcalc_core::{Job, Value};
    ///
    /// // What a door has to do with the members of an object.
    /// assert!(Job::is_group("machine") && Job::is_group("dialect.max_decimals.axis") && !Job::is_group("thread"));
    /// let mut job = Job::default();
    /// job.set("dialect.max_decimals.axis.mm", Value::Text(b"3"))?;
    /// assert_eq!(job.dialect.map(|mill| mill.reading.max_decimals.axis.mm), Some(Some(3)));
    /// # Ok::<(), threadcalc_core::Error>(())
    /// ```
    #[must_use]
    pub fn is_group(key: &str) -> bool {
        Self::keys().any(|known| known.strip_prefix(key).is_some_and(|rest| rest.starts_with('.')))
    }

    /// The fields that hold a plain number, by the names of the fields themselves.
    fn number_slot(&mut self, key: &str) -> Option<&mut Option<Length>> {
        Some(match key {
            "rpm" => &mut self.rpm,
            "surface_speed_m_min" => &mut self.surface_speed_m_min,
            "surface_speed_ft_min" => &mut self.surface_speed_ft_min,
            "full_thread_depth_mm" => &mut self.full_thread_depth_mm,
            "chamfer_threads" => &mut self.chamfer_threads,
            "tap_centre_mm" => &mut self.tap_centre_mm,
            "projection_mm" => &mut self.projection_mm,
            "holder_extension_mm" => &mut self.holder_extension_mm,
            "holder_compression_mm" => &mut self.holder_compression_mm,
            "underfeed_percent" => &mut self.underfeed_percent,
            "over_travel_turns" => &mut self.over_travel_turns,
            "oversize_mm" => &mut self.oversize_mm,
            "drill_mm" => &mut self.drill_mm,
            "percent" => &mut self.percent,
            "point_angle_deg" => &mut self.point_angle_deg,
            "bottom_clearance_mm" => &mut self.bottom_clearance_mm,
            "drill_depth_mm" => &mut self.drill_depth_mm,
            "part_thickness_mm" => &mut self.part_thickness_mm,
            "countersink_mm" => &mut self.countersink_mm,
            "countersink_angle_deg" => &mut self.countersink_angle_deg,
            "r_plane_mm" => &mut self.r_plane_mm,
            "peck_mm" => &mut self.peck_mm,
            "dwell_s" => &mut self.dwell_s,
            "coating_um" => &mut self.coating_um,
            "cutting_force_n_mm2" => &mut self.cutting_force_n_mm2,
            "part_shear_mpa" => &mut self.part_shear_mpa,
            "hole_count" => &mut self.hole_count,
            _ => return None,
        })
    }

    fn set_dialect(&mut self, key: &str, value: Value<'_>) -> Result<(), Error> {
        let own = key.strip_prefix("dialect.").ok_or(unknown("", key))?;
        let mut dialect = self.dialect.unwrap_or(Dialect::unset());
        // The key is told as it stands in a job.
        let told = |error: Error| if error.code() == Code::UnknownKey { unknown("", key) } else { error };
        dialect.set(own, value).map_err(told)?;
        self.dialect = Some(dialect);
        Ok(())
    }

    /// A drill by its diameter or its name, or several names with commas between them.
    fn add_drills(&mut self, value: Value<'_>) -> Result<(), Error> {
        match value {
            Value::Text(names) => {
                let mut list = self.drill_list;
                names.split(|byte| *byte == b',').try_for_each(|name| list.read(name))?;
                self.drill_list = list;
                Ok(())
            }
            _ => {
                let diameter = number(value, Field::DrillList).map_err(|error| self.drill_list.fault(error))?;
                self.drill_list.add(Drill::of_diameter(diameter))
            }
        }
    }

    fn add_drill_sets(&mut self, names: &[u8]) -> Result<(), Error> {
        let mut sets = self.drill_sets;
        for name in names.split(|byte| matches!(byte, b' ' | b',')).filter(|name| !name.is_empty()) {
            let set = DrillSet::from_name(name)
                .ok_or(Error::new(Code::UnknownValue, Field::DrillSets).hint_text(DrillSet::CHOICES))?;
            sets = sets.with(set);
        }
        self.drill_sets = sets;
        Ok(())
    }
}

impl Machine {
    pub(crate) fn set(&mut self, key: &str, value: Value<'_>) -> Result<(), Error> {
        let (slot, field) = match key {
            "highest_rpm" => (&mut self.highest_rpm, Field::MachineHighest),
            "lowest_rpm" => (&mut self.lowest_rpm, Field::MachineLowest),
            "speed_step" => (&mut self.speed_step, Field::MachineStep),
            "axis_feed_limit_mm_min" => (&mut self.axis_feed_limit_mm_min, Field::MachineFeedLimit),
            "acceleration_rpm_s" => (&mut self.acceleration_rpm_s, Field::MachineAcceleration),
            "retract_factor" => (&mut self.retract_factor, Field::MachineRetract),
            "least_clearance_turns" => (&mut self.least_clearance_turns, Field::MachineClearance),
            "gears" => {
                return match value {
                    Value::Numbers(numbers) => self.add_gear(numbers),
                    Value::Text(text) => self.add_written_gear(text),
                    _ => Err(Error::new(Code::UnknownValue, Field::MachineGears)
                        .hint_text("a list of gears, each a list: lowest rpm, highest rpm, torque in Nm")),
                }
                .map_err(|error| error.about(Field::MachineGears));
            }
            _ => return Err(unknown("machine.", key)),
        };
        *slot = Some(number(value, field)?);
        Ok(())
    }

    /// The numbers of a gear as one text, separated by blanks.
    fn add_written_gear(&mut self, text: &[u8]) -> Result<(), Error> {
        let mut numbers = [Length::ZERO; 19];
        let mut count = 0_usize;
        let mut places = numbers.iter_mut();
        for word in text.split(|byte| *byte == b' ').filter(|word| !word.is_empty()) {
            let Some(place) = places.next() else { break };
            *place = read_number(word)?;
            count = count.saturating_add(1);
        }
        self.add_gear(numbers.get(..count).unwrap_or(&[]))
    }
}

impl Screw {
    fn set(&mut self, key: &str, value: Value<'_>) -> Result<(), Error> {
        let (slot, field) = match key {
            "tensile_mpa" => (&mut self.tensile_mpa, Field::ScrewTensile),
            "shear_mpa" => (&mut self.shear_mpa, Field::ScrewShear),
            "engagement_mm" => (&mut self.engagement_mm, Field::ScrewEngagement),
            "load_n" => (&mut self.load_n, Field::ScrewLoad),
            "tolerance_class" => {
                self.tolerance_class = Some(short(text(value, Field::ScrewClass)?, Field::ScrewClass)?);
                return Ok(());
            }
            "property_class" => {
                let (read, choices) = (PropertyClass::from_name, PropertyClass::CHOICES);
                self.property_class = Some(choice(value, Field::ScrewProperty, read, choices)?);
                return Ok(());
            }
            _ => return Err(unknown("screw.", key)),
        };
        *slot = Some(number(value, field)?);
        Ok(())
    }
}

/// A drill's name is no number: the list takes names.
fn named_drill(error: Error, field: Field) -> Error {
    let is_name = field == Field::Drill && error.code() == Code::Unreadable;
    if is_name { error.hint_text("a diameter in mm; drill_list takes names such as #7, F, 13/64 in") } else { error }
}

fn unknown(prefix: &str, key: &str) -> Error {
    Error::new(Code::UnknownKey, Field::Key).hint_text(nearest(prefix, key, Job::keys()))
}

/// A tap's mark as it stands on the shank: printable ASCII, blanks and all.
fn mark(value: Value<'_>) -> Result<Text<96>, Error> {
    let written = text(value, Field::TapMark)?;
    let printable = written.iter().all(|byte| matches!(byte, b' '..=b'~'));
    let held = core::str::from_utf8(written).ok().filter(|_| printable).and_then(Text::holding);
    held.ok_or(Error::new(Code::UnknownValue, Field::TapMark).hint_text("up to 96 printable ASCII bytes"))
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
