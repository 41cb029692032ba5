//! A dialect as data; what is not known is null.

use serde::ser::{Serialize, SerializeStruct, Serializer};

use super::{CodeText, DecimalsByWord, Dialect, Reading, WordDecimals};
use crate::feed::Unit;

/// Top-level fields: the keys without those inside an object.
const FIELDS: usize = 55;

/// What is not there by itself is null; what has to be taken away is the text that does so.
fn or_none(code: &Option<CodeText>) -> &str {
    code.as_ref().map_or("none", CodeText::as_str)
}

impl Serialize for Dialect {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut fields = serializer.serialize_struct("Dialect", FIELDS)?;
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
        fields.serialize_field("retract_multiplier_word", &self.retract_multiplier_word)?;
        fields.serialize_field("retract_in", &self.retract_in)?;
        fields.serialize_field("return_r_plane", or_none(&self.return_r_plane))?;
        fields.serialize_field("return_initial", or_none(&self.return_initial))?;
        fields.serialize_field("axis_decimals_mm", &self.axis_decimals_mm)?;
        fields.serialize_field("axis_decimals_inch", &self.axis_decimals_inch)?;
        fields.serialize_field("trailing_point", &self.trailing_point)?;
        serialize_reading(&self.reading, &mut fields)?;
        fields.end()
    }
}

fn serialize_reading<F: SerializeStruct>(reading: &Reading, fields: &mut F) -> Result<(), F::Error> {
    fields.serialize_field("units_default", &reading.units_default)?;
    fields.serialize_field("feed_mode_default", &reading.feed_mode_default)?;
    fields.serialize_field("units_codes", &UnitsCodes(reading))?;
    fields.serialize_field("feed_basis", &reading.feed_basis)?;
    fields.serialize_field("lead_word", &reading.lead_word)?;
    fields.serialize_field("stroke_code", &reading.stroke_code)?;
    fields.serialize_field("cycle_starts_spindle", &reading.cycle_starts_spindle)?;
    fields.serialize_field("rigid_tap_code_sticky_until", &reading.rigid_tap_code_until)?;
    fields.serialize_field("S_in_cycle_block_allowed", &reading.speed_in_cycle_block)?;
    fields.serialize_field("S_decimals", &reading.speed_decimals)?;
    fields.serialize_field("peck_returns_to_R", &reading.peck_returns_to_r)?;
    fields.serialize_field("repeat_word", &reading.repeat_word)?;
    fields.serialize_field("repeat_zero_means", &reading.repeat_zero_means)?;
    fields.serialize_field("no_point", &reading.no_point)?;
    fields.serialize_field("least_increment", &ByWord(&reading.least_increment, WordDecimals::increment))?;
    fields.serialize_field("max_decimals", &ByWord(&reading.max_decimals, WordDecimals::of))?;
    fields.serialize_field("mirror_on", &reading.mirror_on)?;
    fields.serialize_field("mirror_off", &reading.mirror_off)?;
    fields.serialize_field("scale_on", &reading.scale_on)?;
    fields.serialize_field("scale_off", &reading.scale_off)?;
    fields.serialize_field("rotate_on", &reading.rotate_on)?;
    fields.serialize_field("rotate_off", &reading.rotate_off)?;
    fields.serialize_field("mirror_flips_hand", &reading.mirror_flips_hand)?;
    fields.serialize_field("rapid_cancels_cycle", &reading.rapid_cancels_cycle)?;
    fields.serialize_field("cycle_words_sticky_across_cancel", &reading.cycle_words_sticky_across_cancel)?;
    fields.serialize_field("F_converted_on_units_change", &reading.feed_converted_on_units_change)?;
    fields.serialize_field("override_locked_in_cycle", &reading.override_locked_in_cycle)?;
    fields.serialize_field("unlisted_codes_alarm", &reading.unlisted_codes_alarm)?;
    fields.serialize_field("semicolon_comment", &reading.semicolon_comment)?;
    fields.serialize_field("max_block_chars", &reading.max_block_chars)?;
    fields.serialize_field("spaces_in_numbers", &reading.spaces_in_numbers)?;
    fields.serialize_field("subprogram_call", &reading.subprogram_call)?;
    fields.serialize_field("subprogram_return", &reading.subprogram_return)?;
    fields.serialize_field("order_table", &reading.order_table)
}

/// The codes of both units.
struct UnitsCodes<'a>(&'a Reading);

impl Serialize for UnitsCodes<'_> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut codes = serializer.serialize_struct("UnitsCodes", 2)?;
        codes.serialize_field("inch", &List(&self.0.inch_codes))?;
        codes.serialize_field("mm", &List(&self.0.mm_codes))?;
        codes.end()
    }
}

struct List<'a>(&'a [Option<CodeText>]);

impl Serialize for List<'_> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_seq(self.0.iter().flatten())
    }
}

/// Numbers by word and unit.
struct ByWord<'a, T>(&'a DecimalsByWord, NumberOf<T>);

/// The number of a word in a unit.
type NumberOf<T> = fn(WordDecimals, Unit) -> Option<T>;

impl<T: Serialize> Serialize for ByWord<'_, T> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let of = |decimals| ByUnit(decimals, self.1);
        let mut words = serializer.serialize_struct("ByWord", 3)?;
        words.serialize_field("axis", &of(self.0.axis))?;
        words.serialize_field("F_per_min", &of(self.0.feed_per_minute))?;
        words.serialize_field("F_per_rev", &of(self.0.feed_per_revolution))?;
        words.end()
    }
}

struct ByUnit<T>(WordDecimals, NumberOf<T>);

impl<T: Serialize> Serialize for ByUnit<T> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut units = serializer.serialize_struct("ByUnit", 2)?;
        units.serialize_field("mm", &(self.1)(self.0, Unit::Mm))?;
        units.serialize_field("inch", &(self.1)(self.0, Unit::Inch))?;
        units.end()
    }
}
