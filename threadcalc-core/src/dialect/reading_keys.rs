//! The fields of a reading by name.

use super::keys::{code, letter};
use super::{
    BlockOrder, CodeText, DecimalsByWord, Dialect, FeedBasis, NoPoint, NumberSpaces, Reading, RepeatZero, RigidUntil,
};
use crate::error::{Code, Error, Field};
use crate::feed::{FeedMode, Unit};
use crate::length::Length;
use crate::named::nearest;
use crate::value::{Value, choice, decimals, flag, number, text};

impl Reading {
    /// Sets one field by its name in a dialect.
    pub(super) fn set(&mut self, key: &str, value: Value<'_>) -> Result<(), Error> {
        if let Some((slot, field)) = self.code_slot(key) {
            *slot = code(value, field)?;
            return Ok(());
        }
        if let Some((slot, field)) = self.flag_slot(key) {
            *slot = known_flag(value, field)?;
            return Ok(());
        }
        match key {
            "units_default" => {
                self.units_default = Some(choice(value, Field::DialectUnitsDefault, Unit::from_name, Unit::CHOICES)?);
            }
            "feed_mode_default" => self.feed_mode_default = Some(feed_mode(value)?),
            "units_codes.inch" => self.inch_codes = codes(value, Field::DialectInchCodes)?,
            "units_codes.mm" => self.mm_codes = codes(value, Field::DialectMmCodes)?,
            "feed_basis" => {
                let basis = choice(value, Field::DialectFeedBasis, FeedBasis::from_name, FeedBasis::CHOICES)?;
                self.feed_basis = Some(basis);
            }
            "lead_word" => self.lead_word = letter(value, Field::DialectLeadWord)?,
            "rigid_tap_code_sticky_until" => {
                let until = choice(value, Field::DialectRigidUntil, RigidUntil::from_name, RigidUntil::CHOICES)?;
                self.rigid_tap_code_until = Some(until);
            }
            "S_decimals" => self.speed_decimals = Some(decimals(value, Field::DialectSpeedDecimals)?),
            "repeat_word" => self.repeat_word = letter(value, Field::DialectRepeatWord)?,
            "repeat_zero_means" => {
                let zero = choice(value, Field::DialectRepeatZero, RepeatZero::from_name, RepeatZero::CHOICES)?;
                self.repeat_zero_means = Some(zero);
            }
            "no_point" => {
                self.no_point = Some(choice(value, Field::DialectNoPoint, NoPoint::from_name, NoPoint::CHOICES)?);
            }
            "max_block_chars" => self.max_block_chars = Some(longest_line(value)?),
            "spaces_in_numbers" => {
                let (read, choices) = (NumberSpaces::from_name, NumberSpaces::CHOICES);
                self.spaces_in_numbers = Some(choice(value, Field::DialectNumberSpaces, read, choices)?);
            }
            "order_table" => {
                self.order_table =
                    Some(choice(value, Field::DialectOrder, BlockOrder::from_name, BlockOrder::CHOICES)?);
            }
            _ => return self.set_decimals(key, value),
        }
        Ok(())
    }

    fn code_slot(&mut self, key: &str) -> Option<(&mut Option<CodeText>, Field)> {
        Some(match key {
            "stroke_code" => (&mut self.stroke_code, Field::DialectStrokeCode),
            "mirror_on" => (&mut self.mirror_on, Field::DialectMirrorOn),
            "mirror_off" => (&mut self.mirror_off, Field::DialectMirrorOff),
            "scale_on" => (&mut self.scale_on, Field::DialectScaleOn),
            "scale_off" => (&mut self.scale_off, Field::DialectScaleOff),
            "rotate_on" => (&mut self.rotate_on, Field::DialectRotateOn),
            "rotate_off" => (&mut self.rotate_off, Field::DialectRotateOff),
            "subprogram_call" => (&mut self.subprogram_call, Field::DialectCall),
            "subprogram_return" => (&mut self.subprogram_return, Field::DialectReturn),
            _ => return None,
        })
    }

    fn flag_slot(&mut self, key: &str) -> Option<(&mut Option<bool>, Field)> {
        Some(match key {
            "cycle_starts_spindle" => (&mut self.cycle_starts_spindle, Field::DialectStartsSpindle),
            "S_in_cycle_block_allowed" => (&mut self.speed_in_cycle_block, Field::DialectSpeedInCycle),
            "peck_returns_to_R" => (&mut self.peck_returns_to_r, Field::DialectPeckReturns),
            "mirror_flips_hand" => (&mut self.mirror_flips_hand, Field::DialectMirrorHand),
            "rapid_cancels_cycle" => (&mut self.rapid_cancels_cycle, Field::DialectRapidCancels),
            "cycle_words_sticky_across_cancel" => {
                (&mut self.cycle_words_sticky_across_cancel, Field::DialectCycleSticky)
            }
            "F_converted_on_units_change" => (&mut self.feed_converted_on_units_change, Field::DialectFeedConverted),
            "override_locked_in_cycle" => (&mut self.override_locked_in_cycle, Field::DialectOverride),
            "unlisted_codes_alarm" => (&mut self.unlisted_codes_alarm, Field::DialectUnlisted),
            "semicolon_comment" => (&mut self.semicolon_comment, Field::DialectSemicolon),
            _ => return None,
        })
    }

    /// `least_increment.F_per_min.mm` and its like, and what is no key at all.
    fn set_decimals(&mut self, key: &str, value: Value<'_>) -> Result<(), Error> {
        if let Some(slot) = key.strip_prefix("least_increment.").and_then(|of| slot_of(&mut self.least_increment, of)) {
            *slot = Some(increment(value)?);
        } else if let Some(slot) = key.strip_prefix("max_decimals.").and_then(|of| slot_of(&mut self.max_decimals, of))
        {
            *slot = Some(decimals(value, Field::DialectMostDecimals)?);
        } else {
            return Err(no_value(key));
        }
        Ok(())
    }
}

/// Why a key takes no value: others stand below it, or nobody knows it.
fn no_value(key: &str) -> Error {
    const BY_WORD: &str = "an object with axis, F_per_min and F_per_rev, each with mm and inch";
    let (field, hint) = match key {
        "units_codes" => (Field::DialectUnitsCodes, "an object with inch and mm"),
        "least_increment" => (Field::DialectLeastIncrement, BY_WORD),
        "max_decimals" => (Field::DialectMostDecimals, BY_WORD),
        _ if !Dialect::KEYS.contains(&key) => {
            let nearest = nearest("", key, Dialect::KEYS.iter().copied());
            return Error::new(Code::UnknownKey, Field::Key).hint_text(nearest);
        }
        _ if key.starts_with("least_increment.") => (Field::DialectLeastIncrement, "an object with mm and inch"),
        _ => (Field::DialectMostDecimals, "an object with mm and inch"),
    };
    Error::new(Code::UnknownValue, field).hint_text(hint)
}

fn slot_of<'a>(words: &'a mut DecimalsByWord, key: &str) -> Option<&'a mut Option<u8>> {
    let (word, unit) = key.split_once(['.'])?;
    let of = match word {
        "axis" => &mut words.axis,
        "F_per_min" => &mut words.feed_per_minute,
        "F_per_rev" => &mut words.feed_per_revolution,
        _ => return None,
    };
    match unit {
        "mm" => Some(&mut of.mm),
        "inch" => Some(&mut of.inch),
        _ => None,
    }
}

/// A mode by its name or by the code that mills have for it.
fn feed_mode(value: Value<'_>) -> Result<FeedMode, Error> {
    match value {
        Value::Text(b"G94") => Ok(FeedMode::PerMinute),
        Value::Text(b"G95") => Ok(FeedMode::PerRevolution),
        _ => choice(value, Field::DialectModeDefault, FeedMode::from_name, FeedMode::CHOICES),
    }
}

/// Yes, no, or that it is not known.
fn known_flag(value: Value<'_>, field: Field) -> Result<Option<bool>, Error> {
    match value {
        Value::Text(b"unknown") => Ok(None),
        Value::Text(b"yes") => Ok(Some(true)),
        Value::Text(b"no") => Ok(Some(false)),
        _ => flag(value, field).map(Some).map_err(|error| error.hint_text("true, false, or unknown")),
    }
}

/// Up to two codes, separated by blanks.
fn codes(value: Value<'_>, field: Field) -> Result<[Option<CodeText>; 2], Error> {
    let mut found = [None; 2];
    let mut free = found.iter_mut();
    for one in text(value, field)?.split(|byte| *byte == b' ').filter(|one| !one.is_empty()) {
        let Some(one) = code(Value::Text(one), field)? else { continue };
        *free.next().ok_or(Error::new(Code::TooLong, field).hint_text("at most two codes"))? = Some(one);
    }
    Ok(found)
}

/// A least increment as its decimals: 0.001 has three.
fn increment(value: Value<'_>) -> Result<u8, Error> {
    let given = number(value, Field::DialectLeastIncrement)?;
    let parts = u64::try_from(given.denominator()).unwrap_or(0);
    let power = 10_u64.checked_pow(parts.checked_ilog10().unwrap_or(0));
    if given.numerator() == 1 && power == Some(parts) && parts <= 1_000_000_000 {
        return Ok(parts.checked_ilog10().and_then(|decimals| u8::try_from(decimals).ok()).unwrap_or(0));
    }
    Err(Error::new(Code::OutOfRange, Field::DialectLeastIncrement)
        .got(given.to_f64())
        .within(1e-9, 1.0)
        .hint_text("1, 0.1, 0.01, 0.001 and so on"))
}

fn longest_line(value: Value<'_>) -> Result<u16, Error> {
    let given = number(value, Field::DialectLongestLine)?;
    let whole = given.whole().and_then(|whole| u16::try_from(whole).ok()).filter(|_| given >= Length::ONE);
    whole.ok_or(
        Error::new(Code::OutOfRange, Field::DialectLongestLine)
            .got(given.to_f64())
            .within(1.0, f64::from(u16::MAX))
            .hint_text("a whole number of characters"),
    )
}
