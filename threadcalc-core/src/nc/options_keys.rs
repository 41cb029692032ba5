//! What a check is told, by name: the one place where a door's keys and values are understood.

use super::options::{CheckOptions, Tool, ToolKind};
use crate::error::{Code, Error, Field};
use crate::motion::Holder;
use crate::named::nearest;
use crate::plan::Job;
use crate::thread::Thread;
use crate::value::{Value, choice, flag, number, text};

impl CheckOptions {
    /// Every option by its name, beside those of the machine.
    const OWN: &'static [&'static str] = &[
        "surface_z_mm",
        "block_delete",
        "evaluate_macros",
        "thread",
        "full_thread_depth_mm",
        "holder",
        "underfeed_percent",
        "cutting_force_n_mm2",
    ];

    /// Every option by its name, as [`set`](Self::set) takes it; those of the machine are dotted, as in a job.
    pub fn keys() -> impl Iterator<Item = &'static str> + Clone {
        let machine = Job::keys().filter(|key| *key == "machine" || key.starts_with("machine."));
        Self::OWN.iter().copied().chain(machine)
    }

    /// Sets one option by its name; [`Value::Absent`] leaves it as it is.
    ///
    /// # Errors
    /// [`Code::UnknownKey`] with the nearest known key, and for the value [`Code::UnknownValue`] or what its reader
    /// says; the options are then as they were.
    ///
    /// # Example
    /// ```
    /// use threadcalc_core::nc::CheckOptions;
    /// use threadcalc_core::{Length, Value};
    ///
    /// let mut options = CheckOptions::default();
    /// options.set("evaluate_macros", Value::Flag(false))?;
    /// options.set("machine.highest_rpm", Value::Text(b"4000"))?;
    /// assert!(options.leave_macros && options.machine.highest_rpm == Some(Length::integer(4000)));
    /// # Ok::<(), threadcalc_core::Error>(())
    /// ```
    pub fn set(&mut self, key: &str, value: Value<'_>) -> Result<(), Error> {
        if value == Value::Absent && Self::keys().any(|known| known == key) {
            return Ok(());
        }
        match key {
            "surface_z_mm" => self.surface_z_mm = Some(number(value, Field::SurfaceZ)?),
            "block_delete" => self.block_delete = flag(value, Field::BlockDelete)?,
            "evaluate_macros" => self.leave_macros = !flag(value, Field::EvaluateMacros)?,
            "thread" => self.thread = Some(Thread::read(text(value, Field::Thread)?)?),
            "full_thread_depth_mm" => self.full_thread_depth_mm = Some(number(value, Field::FullThreadDepth)?),
            "holder" => self.holder = Some(choice(value, Field::Holder, Holder::from_name, Holder::CHOICES)?),
            "underfeed_percent" => self.underfeed_percent = Some(number(value, Field::Underfeed)?),
            "cutting_force_n_mm2" => self.cutting_force_n_mm2 = Some(number(value, Field::CuttingForce)?),
            _ => match key.strip_prefix("machine.") {
                Some(key) => return self.machine.set(key, value),
                None => {
                    return Err(Error::new(Code::UnknownKey, Field::Key).hint_text(nearest("", key, Self::keys())));
                }
            },
        }
        Ok(())
    }
}

impl Tool {
    /// Every field by its name.
    pub const KEYS: &'static [&'static str] =
        &["number", "kind", "thread", "diameter_mm", "point_angle_deg", "chamfer_threads", "holder"];

    /// Sets one field by its name; [`Value::Absent`] leaves it as it is.
    ///
    /// # Errors
    /// Those of [`CheckOptions::set`]; [`Code::OutOfRange`] for a tool number that is none.
    pub fn set(&mut self, key: &str, value: Value<'_>) -> Result<(), Error> {
        if value == Value::Absent && Self::KEYS.contains(&key) {
            return Ok(());
        }
        match key {
            "number" => self.number = tool_number(value)?,
            "kind" => self.kind = Some(choice(value, Field::Tool, ToolKind::from_name, ToolKind::CHOICES)?),
            "thread" => self.thread = Some(Thread::read(text(value, Field::Thread)?)?),
            "diameter_mm" => self.diameter_mm = Some(number(value, Field::Drill)?),
            "point_angle_deg" => self.point_angle_deg = Some(number(value, Field::PointAngle)?),
            "chamfer_threads" => self.chamfer_threads = Some(number(value, Field::ChamferThreads)?),
            "holder" => self.holder = Some(choice(value, Field::Holder, Holder::from_name, Holder::CHOICES)?),
            _ => {
                let known = nearest("", key, Self::KEYS.iter().copied());
                return Err(Error::new(Code::UnknownKey, Field::Key).hint_text(known));
            }
        }
        Ok(())
    }
}

fn tool_number(value: Value<'_>) -> Result<u32, Error> {
    let given = number(value, Field::Tool)?;
    let whole = given.whole().and_then(|whole| u32::try_from(whole).ok());
    let range = Error::new(Code::OutOfRange, Field::Tool).got(given.to_f64()).within(0.0, f64::from(u32::MAX));
    whole.ok_or(range.hint_text("the tool's number in the program, T"))
}
