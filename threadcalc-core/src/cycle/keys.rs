//! The fields of a dialect by name: the one place where a door's keys and values are understood.

use super::dialect::{CodeText, Dialect, DwellUnit, LetterText, RetractIn};
use crate::error::{Code, Error, Field};
use crate::named::nearest;
use crate::value::{Value, choice, decimals, flag, short, text};

/// Both lists of keys from one, so that they cannot differ.
macro_rules! keys {
    ($($key:literal),+ $(,)?) => {
        impl Dialect {
            /// Every field by its name.
            pub const KEYS: &'static [&'static str] = &[$($key),+];
            /// The same names as they stand in a job.
            pub(crate) const KEYS_IN_JOB: &'static [&'static str] = &[$(concat!("dialect.", $key)),+];
        }
    };
}

keys![
    "name",
    "tap_rh",
    "tap_lh",
    "lh_by_spindle_direction",
    "feed_per_minute",
    "feed_per_revolution",
    "needs_spindle_running",
    "rigid_tap_code",
    "rigid_tap_code_has_s",
    "peck_word",
    "peck_code_rh",
    "peck_code_lh",
    "dwell_word",
    "dwell_unit",
    "retract_word",
    "retract_in",
    "return_r_plane",
    "return_initial",
    "axis_decimals_mm",
    "axis_decimals_inch",
    "trailing_point",
];

/// Letters that the cycle writes itself, or that mean something else on every control.
const TAKEN: &[u8] = b"FGMNORSTXYZ";

impl Dialect {
    /// Sets one field by its name.
    ///
    /// A code is a letter and digits, `G84` or `G84.2`; a word is a letter; [`Value::Absent`] leaves the
    /// field as it is. The text `none` says that the control has no such code or word.
    ///
    /// # Errors
    /// [`Code::UnknownKey`] with the nearest known key, and for the value [`Code::UnknownValue`],
    /// [`Code::OutOfRange`], or what the reader of a number says.
    ///
    /// # Example
    /// ```
    /// use threadcalc_core::{Dialect, Value};
    ///
    /// let mut mill = Dialect::rs274ngc();
    /// mill.set("tap_lh", Value::Text(b"G74"))?;
    /// mill.set("peck_word", Value::Text(b"Q"))?;
    /// assert_eq!(mill.set("peck", Value::Text(b"Q")).unwrap_err().hint(), "peck_word");
    /// # Ok::<(), threadcalc_core::Error>(())
    /// ```
    pub fn set(&mut self, key: &str, value: Value<'_>) -> Result<(), Error> {
        if value == Value::Absent && Self::KEYS.contains(&key) {
            return Ok(());
        }
        match key {
            "name" => self.name = short(text(value, Field::DialectName)?, Field::DialectName)?,
            "tap_rh" => self.tap_rh = code(value, Field::DialectTapRight)?,
            "tap_lh" => self.tap_lh = code(value, Field::DialectTapLeft)?,
            "lh_by_spindle_direction" => self.lh_by_spindle_direction = flag(value, Field::DialectLeftBySpindle)?,
            "feed_per_minute" => self.feed_per_minute = needed(code(value, Field::DialectPerMinute)?)?,
            "feed_per_revolution" => self.feed_per_revolution = code(value, Field::DialectPerRevolution)?,
            "needs_spindle_running" => self.needs_spindle_running = flag(value, Field::DialectSpindle)?,
            "rigid_tap_code" => self.rigid_tap_code = code(value, Field::DialectRigidCode)?,
            "rigid_tap_code_has_s" => self.rigid_tap_code_has_s = flag(value, Field::DialectRigidCodeSpeed)?,
            "peck_word" => self.peck_word = letter(value, Field::DialectPeckWord)?,
            "peck_code_rh" => self.peck_code_rh = code(value, Field::DialectPeckRight)?,
            "peck_code_lh" => self.peck_code_lh = code(value, Field::DialectPeckLeft)?,
            "dwell_word" => self.dwell_word = letter(value, Field::DialectDwellWord)?,
            "dwell_unit" => {
                let unit = choice(value, Field::DialectDwellUnit, DwellUnit::from_name, DwellUnit::CHOICES)?;
                self.dwell_unit = Some(unit);
            }
            "retract_word" => self.retract_word = letter(value, Field::DialectRetractWord)?,
            "retract_in" => {
                let counted = choice(value, Field::DialectRetractIn, RetractIn::from_name, RetractIn::CHOICES)?;
                self.retract_in = Some(counted);
            }
            "return_r_plane" => self.return_r_plane = code(value, Field::DialectReturnRPlane)?,
            "return_initial" => self.return_initial = code(value, Field::DialectReturnInitial)?,
            "axis_decimals_mm" => self.axis_decimals_mm = decimals(value, Field::DialectDecimalsMm)?,
            "axis_decimals_inch" => self.axis_decimals_inch = decimals(value, Field::DialectDecimalsInch)?,
            "trailing_point" => self.trailing_point = flag(value, Field::DialectPoint)?,
            _ => {
                return Err(Error::new(Code::UnknownKey, Field::Key).hint_text(nearest(
                    "",
                    key,
                    Self::KEYS.iter().copied(),
                )));
            }
        }
        Ok(())
    }
}

/// A code that no control can be without.
fn needed(code: Option<CodeText>) -> Result<CodeText, Error> {
    code.ok_or(Error::new(Code::UnknownValue, Field::DialectPerMinute).hint_text("a code such as G94"))
}

/// A code: one letter and digits, perhaps with a point, `G84`, `G84.2`; or none.
fn code(value: Value<'_>, field: Field) -> Result<Option<CodeText>, Error> {
    let written = text(value, field)?;
    if written == b"none" {
        return Ok(None);
    }
    let digits = |part: &[u8]| !part.is_empty() && part.iter().all(u8::is_ascii_digit);
    let well_formed = match written {
        [letter, rest @ ..] => letter.is_ascii_uppercase() && rest.splitn(2, |byte| *byte == b'.').all(digits),
        [] => false,
    };
    if !well_formed {
        return Err(Error::new(Code::UnknownValue, field).hint_text("a code such as G84"));
    }
    short(written, field).map(Some)
}

/// The letter of a word that the cycle does not have already; or none.
fn letter(value: Value<'_>, field: Field) -> Result<Option<LetterText>, Error> {
    match text(value, field)? {
        b"none" => Ok(None),
        written @ [letter] if is_free(*letter) => short(written, field).map(Some),
        _ => Err(Error::new(Code::UnknownValue, field)
            .hint_text("one capital letter, but none of F G M N O R S T X Y Z, or none")),
    }
}

/// Whether a letter can name a word of the dialect's own.
pub(super) fn is_free(letter: u8) -> bool {
    letter.is_ascii_uppercase() && !TAKEN.contains(&letter)
}

/// What is not there by itself is null; what has to be taken away is the text that does so.
#[cfg(feature = "serde")]
fn or_none(code: &Option<CodeText>) -> &str {
    code.as_ref().map_or("none", CodeText::as_str)
}

#[cfg(feature = "serde")]
impl serde::Serialize for Dialect {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        use serde::ser::SerializeStruct;
        let mut fields = serializer.serialize_struct("Dialect", Self::KEYS.len())?;
        fields.serialize_field("name", &self.name)?;
        fields.serialize_field("tap_rh", &self.tap_rh)?;
        fields.serialize_field("tap_lh", &self.tap_lh)?;
        fields.serialize_field("lh_by_spindle_direction", &self.lh_by_spindle_direction)?;
        fields.serialize_field("feed_per_minute", &self.feed_per_minute)?;
        fields.serialize_field("feed_per_revolution", &self.feed_per_revolution)?;
        fields.serialize_field("needs_spindle_running", &self.needs_spindle_running)?;
        fields.serialize_field("rigid_tap_code", &self.rigid_tap_code)?;
        fields.serialize_field("rigid_tap_code_has_s", &self.rigid_tap_code_has_s)?;
        fields.serialize_field("peck_word", &self.peck_word)?;
        fields.serialize_field("peck_code_rh", &self.peck_code_rh)?;
        fields.serialize_field("peck_code_lh", &self.peck_code_lh)?;
        fields.serialize_field("dwell_word", &self.dwell_word)?;
        fields.serialize_field("dwell_unit", &self.dwell_unit)?;
        fields.serialize_field("retract_word", &self.retract_word)?;
        fields.serialize_field("retract_in", &self.retract_in)?;
        fields.serialize_field("return_r_plane", or_none(&self.return_r_plane))?;
        fields.serialize_field("return_initial", or_none(&self.return_initial))?;
        fields.serialize_field("axis_decimals_mm", &self.axis_decimals_mm)?;
        fields.serialize_field("axis_decimals_inch", &self.axis_decimals_inch)?;
        fields.serialize_field("trailing_point", &self.trailing_point)?;
        fields.end()
    }
}
