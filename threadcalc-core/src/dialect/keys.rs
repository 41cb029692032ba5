//! The fields of a dialect by name: the one place where a door's keys and values are understood.

use super::{CodeText, Dialect, DwellUnit, LetterText, RetractIn};
use crate::error::{Code, Error, Field};
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
    "retract_multiplier_word",
    "retract_in",
    "return_r_plane",
    "return_initial",
    "axis_decimals_mm",
    "axis_decimals_inch",
    "trailing_point",
    "units_default",
    "feed_mode_default",
    "units_codes",
    "units_codes.inch",
    "units_codes.mm",
    "feed_basis",
    "lead_word",
    "stroke_code",
    "cycle_starts_spindle",
    "rigid_tap_code_sticky_until",
    "S_in_cycle_block_allowed",
    "S_decimals",
    "peck_returns_to_R",
    "repeat_word",
    "repeat_zero_means",
    "no_point",
    "least_increment",
    "least_increment.axis",
    "least_increment.axis.mm",
    "least_increment.axis.inch",
    "least_increment.F_per_min",
    "least_increment.F_per_min.mm",
    "least_increment.F_per_min.inch",
    "least_increment.F_per_rev",
    "least_increment.F_per_rev.mm",
    "least_increment.F_per_rev.inch",
    "max_decimals",
    "max_decimals.axis",
    "max_decimals.axis.mm",
    "max_decimals.axis.inch",
    "max_decimals.F_per_min",
    "max_decimals.F_per_min.mm",
    "max_decimals.F_per_min.inch",
    "max_decimals.F_per_rev",
    "max_decimals.F_per_rev.mm",
    "max_decimals.F_per_rev.inch",
    "mirror_on",
    "mirror_off",
    "scale_on",
    "scale_off",
    "rotate_on",
    "rotate_off",
    "mirror_flips_hand",
    "rapid_cancels_cycle",
    "cycle_words_sticky_across_cancel",
    "F_converted_on_units_change",
    "override_locked_in_cycle",
    "unlisted_codes_alarm",
    "semicolon_comment",
    "max_block_chars",
    "spaces_in_numbers",
    "subprogram_call",
    "subprogram_return",
    "order_table",
];

/// Letters that the cycle writes itself, or that mean something else on every control.
const TAKEN: &[u8] = b"FGMNORSTXYZ";

impl Dialect {
    /// Sets one field by its name.
    ///
    /// A code is a letter and digits, `G84` or `G84.2`; a word is a letter; [`Value::Absent`] leaves the
    /// field as it is. The text `none` says that the control has no such code or word, the text `unknown` that
    /// nobody has said whether it does something when it reads. A field inside another has a point in its name,
    /// `units_codes.inch`, `least_increment.axis.mm`.
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
            "dwell_unit" => self.dwell_unit = Some(dwell_unit(value)?),
            "retract_multiplier_word" => self.retract_multiplier_word = letter(value, Field::DialectRetractWord)?,
            "retract_in" => {
                let counted = choice(value, Field::DialectRetractIn, RetractIn::from_name, RetractIn::CHOICES)?;
                self.retract_in = Some(counted);
            }
            "return_r_plane" => self.return_r_plane = code(value, Field::DialectReturnRPlane)?,
            "return_initial" => self.return_initial = code(value, Field::DialectReturnInitial)?,
            "axis_decimals_mm" => self.axis_decimals_mm = decimals(value, Field::DialectDecimalsMm)?,
            "axis_decimals_inch" => self.axis_decimals_inch = decimals(value, Field::DialectDecimalsInch)?,
            "trailing_point" => self.trailing_point = flag(value, Field::DialectPoint)?,
            _ => return self.reading.set(key, value),
        }
        Ok(())
    }
}

impl Dialect {
    /// Whether a field of this name holds codes: a door hands a list of them in as one text with blanks between.
    ///
    /// # Example
    /// ```
    /// use threadcalc_core::{Dialect, Value};
    ///
    /// assert!(Dialect::takes_codes("units_codes.inch") && !Dialect::takes_codes("peck_word"));
    /// let mut mill = Dialect::unset();
    /// let both = ["G20", "G70"].join(" ");
    /// mill.set("units_codes.inch", Value::Text(both.as_bytes()))?;
    /// assert_eq!(mill.reading.inch_codes.map(|code| code.unwrap_or_default().to_string()), ["G20", "G70"]);
    /// # Ok::<(), threadcalc_core::Error>(())
    /// ```
    #[must_use]
    pub fn takes_codes(key: &str) -> bool {
        const TEXT: Value<'_> = Value::Text(b"G1");
        let mut any = Self::unset();
        Self::KEYS.contains(&key) && key != "name" && any.set(key, TEXT).is_ok()
    }
}

/// Seconds and milliseconds by their names or their signs.
fn dwell_unit(value: Value<'_>) -> Result<DwellUnit, Error> {
    match value {
        Value::Text(b"s") => Ok(DwellUnit::Seconds),
        Value::Text(b"ms") => Ok(DwellUnit::Milliseconds),
        _ => choice(value, Field::DialectDwellUnit, DwellUnit::from_name, DwellUnit::CHOICES),
    }
}

/// A code that no control can be without.
fn needed(code: Option<CodeText>) -> Result<CodeText, Error> {
    code.ok_or(Error::new(Code::UnknownValue, Field::DialectPerMinute).hint_text("a code such as G94"))
}

/// A code: one letter and digits, perhaps with a point, `G84`, `G84.2`; or none.
pub(super) fn code(value: Value<'_>, field: Field) -> Result<Option<CodeText>, Error> {
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
pub(super) fn letter(value: Value<'_>, field: Field) -> Result<Option<LetterText>, Error> {
    match text(value, field)? {
        b"none" => Ok(None),
        written @ [letter] if is_free(*letter) => short(written, field).map(Some),
        _ => Err(Error::new(Code::UnknownValue, field)
            .hint_text("one capital letter, but none of F G M N O R S T X Y Z, or none")),
    }
}

/// Whether a letter can name a word of the dialect's own.
pub(crate) fn is_free(letter: u8) -> bool {
    letter.is_ascii_uppercase() && !TAKEN.contains(&letter)
}
