//! What a control calls things.

use core::ffi::c_char;

use threadcalc_core::{Code, Dialect, DwellUnit, Error, Field, RetractIn, Value};

use crate::choices::{
    THREADCALC_ANSWER_NO, THREADCALC_ANSWER_UNSET, THREADCALC_ANSWER_YES, THREADCALC_DIALECT_OWN,
    THREADCALC_DIALECT_RS274NGC, THREADCALC_DIALECT_UNSET, threadcalc_answer, threadcalc_dialect,
    threadcalc_dwell_unit, threadcalc_mode, threadcalc_retract_in, threadcalc_unit,
};
use crate::dialect_choices::{
    threadcalc_block_order, threadcalc_feed_basis, threadcalc_no_point, threadcalc_repeat_zero, threadcalc_rigid_until,
    threadcalc_spaces_in_numbers,
};
use crate::memory::{Request, request, starts, text_of};
use crate::reading::read_reading;
use crate::status::optional;
use crate::types::threadcalc_ratio_t;

/// What a control calls things, and what it makes of a program: a claim about one machine that somebody must have
/// proved there.
///
/// Begin with THREADCALC_DIALECT_INIT and a base; a member left at zero stays as the base has it. Every text
/// ends with a NUL or fills its member. A code is a letter and digits, "G84"; a word is a letter, but none of
/// F G M N O R S T X Y Z; "none" says that the control has no such code or word. From units_default on nothing that
/// is written depends on the members: they are for checking a program, and what is not given there is not known.
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
    /// The unit before any units code.
    pub units_default: threadcalc_unit,
    /// The feed mode before any code of it.
    pub feed_mode_default: threadcalc_mode,
    /// What F is in a tapping cycle. Right on one control, F1.5 breaks the tap on another.
    pub feed_basis: threadcalc_feed_basis,
    /// How long rigid_tap_code holds.
    pub rigid_tap_code_sticky_until: threadcalc_rigid_until,
    /// What no repeats mean.
    pub repeat_zero_means: threadcalc_repeat_zero,
    /// What a number without a point is.
    pub no_point: threadcalc_no_point,
    /// What blanks inside a number are.
    pub spaces_in_numbers: threadcalc_spaces_in_numbers,
    /// In what order the words of a block act.
    pub order_table: threadcalc_block_order,
    /// Whether the tapping cycle starts the spindle.
    pub cycle_starts_spindle: threadcalc_answer,
    /// Whether S may stand in the cycle's own block.
    pub s_in_cycle_block_allowed: threadcalc_answer,
    /// Whether a peck returns to the R plane; if not it breaks the chip in the hole.
    pub peck_returns_to_r: threadcalc_answer,
    /// Whether a mirrored tapping cycle changes its hand.
    pub mirror_flips_hand: threadcalc_answer,
    /// Whether G0 to G3 end a cycle.
    pub rapid_cancels_cycle: threadcalc_answer,
    /// Whether R and Z of a cancelled cycle are still there for the next one.
    pub cycle_words_sticky_across_cancel: threadcalc_answer,
    /// Whether a change of units converts F.
    pub f_converted_on_units_change: threadcalc_answer,
    /// Whether overrides are locked inside the cycle.
    pub override_locked_in_cycle: threadcalc_answer,
    /// Whether codes that neither the dialect names nor all mills share are an alarm.
    pub unlisted_codes_alarm: threadcalc_answer,
    /// Whether a semicolon begins a comment.
    pub semicolon_comment: threadcalc_answer,
    /// Codes of inches, one or two with a blank between, "G20 G70"; both if not given.
    pub units_codes_inch: [c_char; 22],
    /// Codes of millimetres: "G21 G71" if not given.
    pub units_codes_mm: [c_char; 22],
    /// Code of one synchronised stroke that is no cycle.
    pub stroke_code: [c_char; 12],
    /// Code that mirrors an axis.
    pub mirror_on: [c_char; 12],
    /// Code that ends mirroring.
    pub mirror_off: [c_char; 12],
    /// Code that scales.
    pub scale_on: [c_char; 12],
    /// Code that ends scaling.
    pub scale_off: [c_char; 12],
    /// Code that rotates.
    pub rotate_on: [c_char; 12],
    /// Code that ends rotation.
    pub rotate_off: [c_char; 12],
    /// Code that calls a subprogram, its number behind P.
    pub subprogram_call: [c_char; 12],
    /// Code that returns from one.
    pub subprogram_return: [c_char; 12],
    /// Letter of the lead, where it does not stand behind F.
    pub lead_word: [c_char; 8],
    /// Letter of repeats, "L".
    pub repeat_word: [c_char; 8],
    /// Decimals of S that the control keeps, 0 to 9.
    pub s_decimals: threadcalc_ratio_t,
    /// The longest line that the control takes in characters, 1 to 65535.
    pub max_block_chars: threadcalc_ratio_t,
    /// Least increment of axis words in mm programs, {1, 1000}: 1, 0.1, 0.01 and so on to nine decimals.
    pub least_increment_axis_mm: threadcalc_ratio_t,
    /// Least increment of axis words in inch programs.
    pub least_increment_axis_inch: threadcalc_ratio_t,
    /// Least increment of F per minute in mm programs.
    pub least_increment_f_per_min_mm: threadcalc_ratio_t,
    /// Least increment of F per minute in inch programs.
    pub least_increment_f_per_min_inch: threadcalc_ratio_t,
    /// Least increment of F per revolution in mm programs.
    pub least_increment_f_per_rev_mm: threadcalc_ratio_t,
    /// Least increment of F per revolution in inch programs.
    pub least_increment_f_per_rev_inch: threadcalc_ratio_t,
    /// The most decimals of axis words in mm programs, 0 to 9.
    pub max_decimals_axis_mm: threadcalc_ratio_t,
    /// The most decimals of axis words in inch programs.
    pub max_decimals_axis_inch: threadcalc_ratio_t,
    /// The most decimals of F per minute in mm programs.
    pub max_decimals_f_per_min_mm: threadcalc_ratio_t,
    /// The most decimals of F per minute in inch programs.
    pub max_decimals_f_per_min_inch: threadcalc_ratio_t,
    /// The most decimals of F per revolution in mm programs.
    pub max_decimals_f_per_rev_mm: threadcalc_ratio_t,
    /// The most decimals of F per revolution in inch programs.
    pub max_decimals_f_per_rev_inch: threadcalc_ratio_t,
}

// SAFETY: integers and arrays of integers only.
unsafe impl Request for threadcalc_dialect_t {
    const STARTS: &'static [usize] = starts![
        base,
        needs_spindle_running,
        lh_by_spindle_direction,
        rigid_tap_code_has_s,
        trailing_point,
        dwell_unit,
        retract_in,
        axis_decimals_mm,
        axis_decimals_inch,
        name,
        tap_rh,
        tap_lh,
        feed_per_minute,
        feed_per_revolution,
        rigid_tap_code,
        peck_code_rh,
        peck_code_lh,
        return_r_plane,
        return_initial,
        peck_word,
        dwell_word,
        retract_multiplier_word,
        units_default,
        feed_mode_default,
        feed_basis,
        rigid_tap_code_sticky_until,
        repeat_zero_means,
        no_point,
        spaces_in_numbers,
        order_table,
        cycle_starts_spindle,
        s_in_cycle_block_allowed,
        peck_returns_to_r,
        mirror_flips_hand,
        rapid_cancels_cycle,
        cycle_words_sticky_across_cancel,
        f_converted_on_units_change,
        override_locked_in_cycle,
        unlisted_codes_alarm,
        semicolon_comment,
        units_codes_inch,
        units_codes_mm,
        stroke_code,
        mirror_on,
        mirror_off,
        scale_on,
        scale_off,
        rotate_on,
        rotate_off,
        subprogram_call,
        subprogram_return,
        lead_word,
        repeat_word,
        s_decimals,
        max_block_chars,
        least_increment_axis_mm,
        least_increment_axis_inch,
        least_increment_f_per_min_mm,
        least_increment_f_per_min_inch,
        least_increment_f_per_rev_mm,
        least_increment_f_per_rev_inch,
        max_decimals_axis_mm,
        max_decimals_axis_inch,
        max_decimals_f_per_min_mm,
        max_decimals_f_per_min_inch,
        max_decimals_f_per_rev_mm,
        max_decimals_f_per_rev_inch,
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
        read_reading(self, &mut dialect)?;
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
