//! What a control makes of a program: the members of a dialect behind what it calls things.

use threadcalc_core::{
    BlockOrder, Dialect, Error, FeedBasis, FeedMode, Field, NoPoint, NumberSpaces, RepeatZero, RigidUntil, Unit, Value,
};

use crate::dialect::{flag_of, threadcalc_dialect_t};
use crate::memory::text_of;
use crate::status::optional;

/// Sets what is given.
pub(crate) fn read_reading(given: &threadcalc_dialect_t, dialect: &mut Dialect) -> Result<(), Error> {
    read_texts(given, dialect)?;
    read_answers(given, dialect)?;
    read_numbers(given, dialect)?;
    read_choices(given, dialect)
}

fn read_texts(given: &threadcalc_dialect_t, dialect: &mut Dialect) -> Result<(), Error> {
    let texts = [
        ("units_codes.inch", text_of(&given.units_codes_inch)),
        ("units_codes.mm", text_of(&given.units_codes_mm)),
        ("stroke_code", text_of(&given.stroke_code)),
        ("mirror_on", text_of(&given.mirror_on)),
        ("mirror_off", text_of(&given.mirror_off)),
        ("scale_on", text_of(&given.scale_on)),
        ("scale_off", text_of(&given.scale_off)),
        ("rotate_on", text_of(&given.rotate_on)),
        ("rotate_off", text_of(&given.rotate_off)),
        ("subprogram_call", text_of(&given.subprogram_call)),
        ("subprogram_return", text_of(&given.subprogram_return)),
        ("lead_word", text_of(&given.lead_word)),
        ("repeat_word", text_of(&given.repeat_word)),
    ];
    let mut texts = texts.into_iter().filter(|(_, text)| !text.is_empty());
    texts.try_for_each(|(key, text)| dialect.set(key, Value::Text(text)))
}

fn read_answers(given: &threadcalc_dialect_t, dialect: &mut Dialect) -> Result<(), Error> {
    for (key, answer, field) in [
        ("cycle_starts_spindle", given.cycle_starts_spindle, Field::DialectStartsSpindle),
        ("S_in_cycle_block_allowed", given.s_in_cycle_block_allowed, Field::DialectSpeedInCycle),
        ("peck_returns_to_R", given.peck_returns_to_r, Field::DialectPeckReturns),
        ("mirror_flips_hand", given.mirror_flips_hand, Field::DialectMirrorHand),
        ("rapid_cancels_cycle", given.rapid_cancels_cycle, Field::DialectRapidCancels),
        ("cycle_words_sticky_across_cancel", given.cycle_words_sticky_across_cancel, Field::DialectCycleSticky),
        ("F_converted_on_units_change", given.f_converted_on_units_change, Field::DialectFeedConverted),
        ("override_locked_in_cycle", given.override_locked_in_cycle, Field::DialectOverride),
        ("unlisted_codes_alarm", given.unlisted_codes_alarm, Field::DialectUnlisted),
        ("semicolon_comment", given.semicolon_comment, Field::DialectSemicolon),
    ] {
        dialect.set(key, flag_of(answer, field)?)?;
    }
    Ok(())
}

fn read_numbers(given: &threadcalc_dialect_t, dialect: &mut Dialect) -> Result<(), Error> {
    let (increments, decimals) = (Field::DialectLeastIncrement, Field::DialectMostDecimals);
    for (key, number, field) in [
        ("S_decimals", given.s_decimals, Field::DialectSpeedDecimals),
        ("max_block_chars", given.max_block_chars, Field::DialectLongestLine),
        ("least_increment.axis.mm", given.least_increment_axis_mm, increments),
        ("least_increment.axis.inch", given.least_increment_axis_inch, increments),
        ("least_increment.F_per_min.mm", given.least_increment_f_per_min_mm, increments),
        ("least_increment.F_per_min.inch", given.least_increment_f_per_min_inch, increments),
        ("least_increment.F_per_rev.mm", given.least_increment_f_per_rev_mm, increments),
        ("least_increment.F_per_rev.inch", given.least_increment_f_per_rev_inch, increments),
        ("max_decimals.axis.mm", given.max_decimals_axis_mm, decimals),
        ("max_decimals.axis.inch", given.max_decimals_axis_inch, decimals),
        ("max_decimals.F_per_min.mm", given.max_decimals_f_per_min_mm, decimals),
        ("max_decimals.F_per_min.inch", given.max_decimals_f_per_min_inch, decimals),
        ("max_decimals.F_per_rev.mm", given.max_decimals_f_per_rev_mm, decimals),
        ("max_decimals.F_per_rev.inch", given.max_decimals_f_per_rev_inch, decimals),
    ] {
        dialect.set(key, number.read(field)?.map_or(Value::Absent, Value::Exact))?;
    }
    Ok(())
}

/// Puts the choice of a number in its place, if there is one.
macro_rules! choose {
    ($place:expr, $number:expr, $choice:ident, $field:ident) => {
        let choice = optional($number, $choice::from_number, Field::$field, $choice::CHOICES)?;
        $place = choice.or($place);
    };
}

fn read_choices(given: &threadcalc_dialect_t, dialect: &mut Dialect) -> Result<(), Error> {
    let reading = &mut dialect.reading;
    choose!(reading.units_default, given.units_default, Unit, DialectUnitsDefault);
    choose!(reading.feed_mode_default, given.feed_mode_default, FeedMode, DialectModeDefault);
    choose!(reading.feed_basis, given.feed_basis, FeedBasis, DialectFeedBasis);
    choose!(reading.rigid_tap_code_until, given.rigid_tap_code_sticky_until, RigidUntil, DialectRigidUntil);
    choose!(reading.repeat_zero_means, given.repeat_zero_means, RepeatZero, DialectRepeatZero);
    choose!(reading.no_point, given.no_point, NoPoint, DialectNoPoint);
    choose!(reading.spaces_in_numbers, given.spaces_in_numbers, NumberSpaces, DialectNumberSpaces);
    choose!(reading.order_table, given.order_table, BlockOrder, DialectOrder);
    Ok(())
}
