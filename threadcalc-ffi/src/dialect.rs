//! What a control calls things.

use core::ffi::c_char;
use core::mem::offset_of;

use threadcalc_core::{Code, Dialect, DwellUnit, Error, Field, RetractIn, Value};

use crate::choices::{
    THREADCALC_ANSWER_NO, THREADCALC_ANSWER_UNSET, THREADCALC_ANSWER_YES, THREADCALC_DIALECT_OWN,
    THREADCALC_DIALECT_RS274NGC, THREADCALC_DIALECT_UNSET, threadcalc_answer, threadcalc_dialect,
    threadcalc_dwell_unit, threadcalc_retract_in,
};
use crate::memory::{Request, request, text_of};
use crate::status::optional;
use crate::types::threadcalc_ratio_t;

/// What a control calls things: a claim about one machine that somebody must have proved there.
///
/// Begin with THREADCALC_DIALECT_INIT and a base; a member left at zero stays as the base has it. Every text
/// ends with a NUL or fills its member. A code is a letter and digits, "G84"; a word is a letter, but none of
/// F G M N O R S T X Y Z; "none" says that the control has no such code or word.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct threadcalc_dialect_t {
    /// sizeof(threadcalc_dialect_t).
    pub size: u32,
    /// What the members are set in. Required.
    pub base: threadcalc_dialect,
    /// Whether the spindle must already turn when the cycle starts; yes if not given.
    pub needs_spindle_running: threadcalc_answer,
    /// Whether left hand is the right-hand cycle with the spindle turning backwards; no if not given.
    pub lh_by_spindle_direction: threadcalc_answer,
    /// Whether rigid_tap_code carries the speed; no if not given.
    pub rigid_tap_code_has_s: threadcalc_answer,
    /// Whether a whole length, feed or dwell in seconds has a point; yes if not given.
    pub trailing_point: threadcalc_answer,
    /// What the dwell is counted in; required for a dwell.
    pub dwell_unit: threadcalc_dwell_unit,
    /// What a faster way out is counted in; required for one.
    pub retract_in: threadcalc_retract_in,
    /// Decimals of axis words in mm, a whole number 0 to 9: {3, 1} if not given.
    pub axis_decimals_mm: threadcalc_ratio_t,
    /// Decimals of axis words in inches: {4, 1} if not given.
    pub axis_decimals_inch: threadcalc_ratio_t,
    /// The shop's own name for it, up to 16 bytes.
    pub name: [c_char; 20],
    /// Code of the right-hand tapping cycle, "G84".
    pub tap_rh: [c_char; 12],
    /// Code of the left-hand tapping cycle.
    pub tap_lh: [c_char; 12],
    /// Code of feed per minute; G94 if not given.
    pub feed_per_minute: [c_char; 12],
    /// Code of feed per revolution.
    pub feed_per_revolution: [c_char; 12],
    /// Code that makes the next tapping cycle a synchronised one, for rigid holders.
    pub rigid_tap_code: [c_char; 12],
    /// Code of the right-hand cycle with pecks, where that is a cycle of its own.
    pub peck_code_rh: [c_char; 12],
    /// Code of the left-hand cycle with pecks, where that is a cycle of its own.
    pub peck_code_lh: [c_char; 12],
    /// Code of the return to the R plane; G99 if not given.
    pub return_r_plane: [c_char; 12],
    /// Code of the return to the height before the cycle; G98 if not given.
    pub return_initial: [c_char; 12],
    /// Letter of a peck's depth, "Q".
    pub peck_word: [c_char; 8],
    /// Letter of the dwell at the bottom.
    pub dwell_word: [c_char; 8],
    /// Letter of a faster way out.
    pub retract_multiplier_word: [c_char; 8],
}

// SAFETY: integers and arrays of integers only.
unsafe impl Request for threadcalc_dialect_t {
    const STARTS: &'static [usize] = &[
        offset_of!(Self, base),
        offset_of!(Self, needs_spindle_running),
        offset_of!(Self, lh_by_spindle_direction),
        offset_of!(Self, rigid_tap_code_has_s),
        offset_of!(Self, trailing_point),
        offset_of!(Self, dwell_unit),
        offset_of!(Self, retract_in),
        offset_of!(Self, axis_decimals_mm),
        offset_of!(Self, axis_decimals_inch),
        offset_of!(Self, name),
        offset_of!(Self, tap_rh),
        offset_of!(Self, tap_lh),
        offset_of!(Self, feed_per_minute),
        offset_of!(Self, feed_per_revolution),
        offset_of!(Self, rigid_tap_code),
        offset_of!(Self, peck_code_rh),
        offset_of!(Self, peck_code_lh),
        offset_of!(Self, return_r_plane),
        offset_of!(Self, return_initial),
        offset_of!(Self, peck_word),
        offset_of!(Self, dwell_word),
        offset_of!(Self, retract_multiplier_word),
    ];
}

impl threadcalc_dialect_t {
    fn read(&self) -> Result<Dialect, Error> {
        let mut dialect = match self.base {
            THREADCALC_DIALECT_RS274NGC => Dialect::rs274ngc(),
            THREADCALC_DIALECT_OWN => Dialect::unset(),
            THREADCALC_DIALECT_UNSET => return Err(Error::new(Code::Missing, Field::Dialect).hint_text(BASES)),
            other => {
                return Err(Error::new(Code::UnknownValue, Field::Dialect).got(f64::from(other)).hint_text(BASES));
            }
        };
        self.texts()
            .into_iter()
            .filter(|(_, text)| !text.is_empty())
            .try_for_each(|(key, text)| dialect.set(key, Value::Text(text)))?;
        for (key, answer, field) in [
            ("needs_spindle_running", self.needs_spindle_running, Field::DialectSpindle),
            ("lh_by_spindle_direction", self.lh_by_spindle_direction, Field::DialectLeftBySpindle),
            ("rigid_tap_code_has_s", self.rigid_tap_code_has_s, Field::DialectRigidCodeSpeed),
            ("trailing_point", self.trailing_point, Field::DialectPoint),
        ] {
            dialect.set(key, flag_of(answer, field)?)?;
        }
        for (key, decimals, field) in [
            ("axis_decimals_mm", self.axis_decimals_mm, Field::DialectDecimalsMm),
            ("axis_decimals_inch", self.axis_decimals_inch, Field::DialectDecimalsInch),
        ] {
            dialect.set(key, decimals.read(field)?.map_or(Value::Absent, Value::Exact))?;
        }
        let (unit, counted) = (self.dwell_unit, self.retract_in);
        let unit = optional(unit, DwellUnit::from_number, Field::DialectDwellUnit, DwellUnit::CHOICES)?;
        dialect.dwell_unit = unit.or(dialect.dwell_unit);
        let counted = optional(counted, RetractIn::from_number, Field::DialectRetractIn, RetractIn::CHOICES)?;
        dialect.retract_in = counted.or(dialect.retract_in);
        Ok(dialect)
    }

    fn texts(&self) -> [(&'static str, &[u8]); 13] {
        [
            ("name", text_of(&self.name)),
            ("tap_rh", text_of(&self.tap_rh)),
            ("tap_lh", text_of(&self.tap_lh)),
            ("feed_per_minute", text_of(&self.feed_per_minute)),
            ("feed_per_revolution", text_of(&self.feed_per_revolution)),
            ("rigid_tap_code", text_of(&self.rigid_tap_code)),
            ("peck_code_rh", text_of(&self.peck_code_rh)),
            ("peck_code_lh", text_of(&self.peck_code_lh)),
            ("return_r_plane", text_of(&self.return_r_plane)),
            ("return_initial", text_of(&self.return_initial)),
            ("peck_word", text_of(&self.peck_word)),
            ("dwell_word", text_of(&self.dwell_word)),
            ("retract_multiplier_word", text_of(&self.retract_multiplier_word)),
        ]
    }
}

const BASES: &str = "THREADCALC_DIALECT_RS274NGC, or THREADCALC_DIALECT_OWN and the control's own codes";

pub(crate) fn flag_of(answer: threadcalc_answer, field: Field) -> Result<Value<'static>, Error> {
    match answer {
        THREADCALC_ANSWER_UNSET => Ok(Value::Absent),
        THREADCALC_ANSWER_YES => Ok(Value::Flag(true)),
        THREADCALC_ANSWER_NO => Ok(Value::Flag(false)),
        _ => Err(Error::new(Code::UnknownValue, field).got(f64::from(answer)).hint_text("unset, yes or no")),
    }
}

/// A dialect that may be left out.
///
/// # Safety
/// `pointer` is NULL or points to a dialect that begins with its own size.
pub(crate) unsafe fn optional_dialect(pointer: *const threadcalc_dialect_t) -> Result<Option<Dialect>, Error> {
    if pointer.is_null() {
        return Ok(None);
    }
    unsafe { request(pointer) }?.read().map(Some)
}
