//! The names and values of a check's options and of a tool list, as every door hands them in.

use super::options::{CheckOptions, Tool, ToolKind};
use crate::error::{Code, Error, Field};
use crate::length::Length;
use crate::motion::Holder;
use crate::named::nearest;
use crate::thread::Thread;
use crate::value::{Value, choice, flag, number, text};

impl CheckOptions {
    /// Every option by its name; those of the machine are dotted, as in a job.
    pub const KEYS: &'static [&'static str] = &[
        "surface_z_mm",
        "block_delete",
        "evaluate_macros",
        "thread",
        "full_thread_depth_mm",
        "holder",
        "underfeed_percent",
        "cutting_force_n_mm2",
        "machine.highest_rpm",
        "machine.lowest_rpm",
        "machine.speed_step",
        "machine.axis_feed_limit_mm_min",
        "machine.acceleration_rpm_s",
        "machine.retract_factor",
        "machine.least_clearance_turns",
        "machine.gears",
    ];

    /// Sets one option by its name; [`Value::Absent`] leaves it as it is.
    ///
    /// # Errors
    /// [`Code::UnknownKey`] with the nearest known key, and for the value [`Code::UnknownValue`],
    /// [`Code::OutOfRange`], or what its reader says.
    ///
    /// # Example
    /// ```
    /// use threadcalc_core::Value;
    /// use threadcalc_core::nc::CheckOptions;
    ///
    /// let mut options = CheckOptions::default();
    /// options.set("surface_z_mm", Value::Text(b"1.5"))?;
    /// options.set("machine.highest_rpm", Value::Double(4000.0))?;
    /// assert_eq!(options.set("surface_z", Value::Absent).unwrap_err().hint(), "surface_z_mm");
    /// # Ok::<(), threadcalc_core::Error>(())
    /// ```
    pub fn set(&mut self, key: &str, value: Value<'_>) -> Result<(), Error> {
        if value == Value::Absent && Self::KEYS.contains(&key) {
            return Ok(());
        }
        if let Some(key) = key.strip_prefix("machine.") {
            return self.machine.set(key, value);
        }
        match key {
            "surface_z_mm" => self.surface_z_mm = Some(number(value, Field::SurfaceZ)?),
            "block_delete" => self.block_delete = flag(value, Field::BlockDelete)?,
            "evaluate_macros" => self.leave_macros = !flag(value, Field::EvaluateMacros)?,
            "thread" => self.thread = Some(Thread::read(text(value, Field::Thread)?)?),
            "full_thread_depth_mm" => self.full_thread_depth_mm = Some(above_zero(value, Field::FullThreadDepth)?),
            "holder" => self.holder = Some(choice(value, Field::Holder, Holder::from_name, Holder::CHOICES)?),
            "underfeed_percent" => self.underfeed_percent = Some(underfeed(value)?),
            "cutting_force_n_mm2" => self.cutting_force_n_mm2 = Some(above_zero(value, Field::CuttingForce)?),
            _ => return Err(unknown(key, Self::KEYS)),
        }
        Ok(())
    }
}

impl Tool {
    /// Every field of a tool by its name.
    pub const KEYS: &'static [&'static str] =
        &["number", "kind", "thread", "diameter_mm", "point_angle_deg", "chamfer_threads", "holder"];

    /// Sets one field by its name; [`Value::Absent`] leaves it as it is.
    ///
    /// # Errors
    /// As [`CheckOptions::set`].
    ///
    /// # Example
    /// ```
    /// use threadcalc_core::Value;
    /// use threadcalc_core::nc::{Tool, ToolKind};
    ///
    /// let mut tool = Tool::default();
    /// for (key, value) in [("number", "12"), ("kind", "drill"), ("diameter_mm", "6.8")] {
    ///     tool.set(key, Value::Text(value.as_bytes()))?;
    /// }
    /// assert_eq!((tool.number, tool.kind), (12, Some(ToolKind::Drill)));
    /// # Ok::<(), threadcalc_core::Error>(())
    /// ```
    pub fn set(&mut self, key: &str, value: Value<'_>) -> Result<(), Error> {
        if value == Value::Absent && Self::KEYS.contains(&key) {
            return Ok(());
        }
        match key {
            "number" => self.number = tool_number(value)?,
            "kind" => self.kind = Some(choice(value, Field::ToolKind, ToolKind::from_name, ToolKind::CHOICES)?),
            "thread" => self.thread = Some(Thread::read(text(value, Field::Thread)?)?),
            "diameter_mm" => self.diameter_mm = Some(above_zero(value, Field::Diameter)?),
            "point_angle_deg" => self.point_angle_deg = Some(above_zero(value, Field::PointAngle)?),
            "chamfer_threads" => self.chamfer_threads = Some(above_zero(value, Field::ChamferThreads)?),
            "holder" => self.holder = Some(choice(value, Field::Holder, Holder::from_name, Holder::CHOICES)?),
            _ => return Err(unknown(key, Self::KEYS)),
        }
        Ok(())
    }
}

fn above_zero(value: Value<'_>, field: Field) -> Result<Length, Error> {
    let given = number(value, field)?;
    if given.is_positive() {
        return Ok(given);
    }
    Err(Error::new(Code::OutOfRange, field).got(given.to_f64()).within(0.0, f64::NAN).hint_text("above 0"))
}

/// 0 to 20 percent, as in a job.
fn underfeed(value: Value<'_>) -> Result<Length, Error> {
    let given = number(value, Field::Underfeed)?;
    if !given.is_negative() && given <= Length::integer(20) {
        return Ok(given);
    }
    Err(Error::new(Code::OutOfRange, Field::Underfeed).got(given.to_f64()).within(0.0, 20.0))
}

fn tool_number(value: Value<'_>) -> Result<u32, Error> {
    let given = number(value, Field::Tool)?;
    given.whole().and_then(|whole| u32::try_from(whole).ok()).ok_or(
        Error::new(Code::OutOfRange, Field::Tool)
            .got(given.to_f64())
            .within(0.0, f64::from(u32::MAX))
            .hint_text("the whole number behind T"),
    )
}

fn unknown(key: &str, known: &'static [&'static str]) -> Error {
    Error::new(Code::UnknownKey, Field::Key).hint_text(nearest("", key, known.iter().copied()))
}
