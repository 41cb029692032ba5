//! Dialects by the names of their fields: every one can be set, is refused what it cannot be, and comes back from
//! its JSON.

use std::collections::BTreeSet;

use proptest::prelude::*;
use threadcalc_core::{Code, Dialect, Field, Job, Length, Unit, Value};

use crate::values::config;

/// Fields that take the same, what they take, and what they refuse with the hint.
struct Kind {
    keys: &'static [&'static str],
    good: &'static [&'static str],
    bad: &'static [(&'static str, &'static str)],
}

const A_NAME: &str = "a short printable ASCII text without blanks";
const A_CODE: &str = "a code such as G84";
const A_LETTER: &str = "one capital letter, but none of F G M N O R S T X Y Z, or none";
const DECIMALS: &str = "a whole number of decimals";
const INCREMENT: &str = "1, 0.1, 0.01, 0.001 and so on";
const CHARACTERS: &str = "a whole number of characters";
const BY_UNIT: &str = "an object with mm and inch";
const NUMBER: &str = "a number such as 1.25 or 127/70, without unit or exponent";

#[rustfmt::skip]
const KINDS: [Kind; 20] = [
    Kind {
        keys: &["name"],
        good: &["mill-1", "neutral-F-is-lead", "nineteen-bytes-long"],
        bad: &[("two words", A_NAME), ("a-name-of-twenty-now", A_NAME)],
    },
    Kind {
        keys: &[
            "tap_rh", "tap_lh", "feed_per_revolution", "rigid_tap_code", "peck_code_rh", "peck_code_lh",
            "return_r_plane", "return_initial", "stroke_code", "mirror_on", "mirror_off", "scale_on", "scale_off",
            "rotate_on", "rotate_off", "subprogram_call", "subprogram_return",
        ],
        good: &["G384", "M98.1", "none"],
        bad: &[("84", A_CODE), ("", A_CODE), ("G84.", A_CODE), ("G84 G74", A_CODE), ("unknown", A_CODE)],
    },
    Kind { keys: &["feed_per_minute"], good: &["G194", "G98"], bad: &[("none", "a code such as G94"), ("94", A_CODE)] },
    Kind {
        keys: &["units_codes.inch", "units_codes.mm"],
        good: &["G170", "G20 G170", "none", "", "none G170"],
        bad: &[("20", A_CODE), ("G20 70", A_CODE), ("G20 G70 G170", "at most two codes")],
    },
    Kind {
        keys: &["peck_word", "dwell_word", "retract_multiplier_word", "lead_word", "repeat_word"],
        good: &["L", "Q", "none"],
        bad: &[("R", A_LETTER), ("", A_LETTER), ("q", A_LETTER), ("LL", A_LETTER)],
    },
    Kind {
        keys: &["lh_by_spindle_direction", "needs_spindle_running", "rigid_tap_code_has_s", "trailing_point"],
        good: &["true", "false"],
        bad: &[("unknown", "true or false"), ("1", "true or false")],
    },
    Kind {
        keys: &[
            "cycle_starts_spindle", "S_in_cycle_block_allowed", "peck_returns_to_R", "mirror_flips_hand",
            "rapid_cancels_cycle", "cycle_words_sticky_across_cancel", "F_converted_on_units_change",
            "override_locked_in_cycle", "unlisted_codes_alarm", "semicolon_comment",
        ],
        good: &["true", "false", "yes", "no", "unknown"],
        bad: &[("perhaps", "true, false, or unknown"), ("1", "true, false, or unknown")],
    },
    Kind {
        keys: &["dwell_unit"],
        good: &["seconds", "milliseconds", "s", "ms"],
        bad: &[("minutes", "one of: seconds milliseconds")],
    },
    Kind { keys: &["retract_in"], good: &["factor", "percent"], bad: &[("times", "one of: factor percent")] },
    Kind { keys: &["units_default"], good: &["mm", "inch"], bad: &[("cm", "one of: mm inch")] },
    Kind {
        keys: &["feed_mode_default"],
        good: &["per_minute", "per_revolution", "G94", "G95"],
        bad: &[("G93", "one of: per_minute per_revolution")],
    },
    Kind {
        keys: &["feed_basis"],
        good: &["by_mode", "per_min_always", "per_rev_in_tap_cycle", "lead_word"],
        bad: &[("mode", "one of: by_mode per_min_always per_rev_in_tap_cycle lead_word")],
    },
    Kind {
        keys: &["rigid_tap_code_sticky_until"],
        good: &["next_cycle", "cycle_cancelled", "spindle_code", "program_end"],
        bad: &[("G80", "one of: next_cycle cycle_cancelled spindle_code program_end")],
    },
    Kind {
        keys: &["repeat_zero_means"],
        good: &["error", "store_only", "once"],
        bad: &[("0", "one of: error store_only once")],
    },
    Kind {
        keys: &["no_point"],
        good: &["as_written", "least_increment"],
        bad: &[("integer", "one of: as_written least_increment")],
    },
    Kind { keys: &["spaces_in_numbers"], good: &["ignored", "error"], bad: &[("blank", "one of: ignored error")] },
    Kind {
        keys: &["order_table"],
        good: &["rs274ngc", "units_first"],
        bad: &[("as_written", "one of: rs274ngc units_first")],
    },
    Kind {
        keys: &[
            "axis_decimals_mm", "axis_decimals_inch", "S_decimals", "max_decimals.axis.mm", "max_decimals.axis.inch",
            "max_decimals.F_per_min.mm", "max_decimals.F_per_min.inch", "max_decimals.F_per_rev.mm",
            "max_decimals.F_per_rev.inch",
        ],
        good: &["0", "5", "9"],
        bad: &[("10", DECIMALS), ("-1", DECIMALS), ("2.5", DECIMALS), ("two", NUMBER)],
    },
    Kind {
        keys: &[
            "least_increment.axis.mm", "least_increment.axis.inch", "least_increment.F_per_min.mm",
            "least_increment.F_per_min.inch", "least_increment.F_per_rev.mm", "least_increment.F_per_rev.inch",
        ],
        good: &["1", "0.001", "1/10000", "0.000000001"],
        bad: &[
            ("0", INCREMENT), ("-0.001", INCREMENT), ("0.005", INCREMENT), ("1/3", INCREMENT), ("10", INCREMENT),
            ("1/10000000000", INCREMENT), ("fine", NUMBER),
        ],
    },
    Kind {
        keys: &["max_block_chars"],
        good: &["1", "256", "65535"],
        bad: &[("0", CHARACTERS), ("-1", CHARACTERS), ("80.5", CHARACTERS), ("65536", CHARACTERS), ("long", NUMBER)],
    },
];

/// The fields that hold others.
const GROUPS: [(&str, &str); 9] = [
    ("units_codes", "an object with inch and mm"),
    ("least_increment", "an object with axis, F_per_min and F_per_rev, each with mm and inch"),
    ("max_decimals", "an object with axis, F_per_min and F_per_rev, each with mm and inch"),
    ("least_increment.axis", BY_UNIT),
    ("least_increment.F_per_min", BY_UNIT),
    ("least_increment.F_per_rev", BY_UNIT),
    ("max_decimals.axis", BY_UNIT),
    ("max_decimals.F_per_min", BY_UNIT),
    ("max_decimals.F_per_rev", BY_UNIT),
];

fn kinds() -> impl Iterator<Item = (&'static str, &'static Kind)> {
    KINDS.iter().flat_map(|kind| kind.keys.iter().map(move |key| (*key, kind)))
}

#[test]
fn every_field_is_of_a_kind() {
    let known: BTreeSet<_> = kinds().map(|(key, _)| key).chain(GROUPS.map(|(key, _)| key)).collect();
    assert_eq!(known, Dialect::KEYS.iter().copied().collect());
    assert_eq!(kinds().count() + GROUPS.len(), known.len(), "a key stands twice");
}

#[test]
fn every_field_takes_what_is_right_alone_and_in_a_job() {
    for (key, kind) in kinds() {
        let mut seen = Vec::new();
        for good in kind.good {
            let (mut mill, mut job) = (Dialect::unset(), Job::default());
            mill.set(key, Value::Text(good.as_bytes())).unwrap_or_else(|error| panic!("{key}={good}: {error}"));
            job.set(&format!("dialect.{key}"), Value::Text(good.as_bytes())).unwrap();
            assert_eq!(job.dialect, Some(mill), "{key}={good}");
            let before = mill;
            mill.set(key, Value::Absent).unwrap();
            assert_eq!(mill, before, "{key}: what is not given changes nothing");
            seen.push(mill);
        }
        assert!(seen.iter().any(|mill| *mill != Dialect::unset()), "{key} changes nothing");
        let codes = kind.bad.iter().any(|(_, hint)| *hint == A_CODE);
        assert_eq!(Dialect::takes_codes(key), codes, "{key}");
    }
}

#[test]
fn every_field_refuses_what_is_wrong_and_says_what_is_right() {
    for (key, kind) in kinds() {
        for (bad, hint) in kind.bad {
            let mut mill = Dialect::unset();
            let error = mill.set(key, Value::Text(bad.as_bytes())).expect_err(bad);
            // The numbers by word and unit share the field of their group.
            let field = if key.matches('.').count() == 2 { key.split('.').next().unwrap() } else { key };
            assert_eq!(error.field().name(), format!("dialect.{field}"), "{key}={bad}");
            assert_eq!(error.hint(), *hint, "{key}={bad}");
            assert_eq!(mill, Dialect::unset(), "{key}={bad} is refused and leaves nothing");
        }
    }
}

#[test]
fn a_group_has_no_value_of_its_own() {
    for (key, hint) in GROUPS {
        let error = Dialect::unset().set(key, Value::Text(b"G20")).unwrap_err();
        assert_eq!((error.code(), error.hint()), (Code::UnknownValue, hint));
        let (field, _) = key.split_once('.').unwrap_or((key, ""));
        assert_eq!(error.field().name(), format!("dialect.{field}"));
        assert_eq!(Dialect::unset().set(key, Value::Absent), Ok(()));
        assert!(Job::is_group(&format!("dialect.{key}")) && !Dialect::takes_codes(key));
    }
    for (key, near) in [("least_increment.axi", "least_increment.axis"), ("units_codes.in", "units_codes.inch")] {
        let error = Dialect::unset().set(key, Value::Text(b"1")).unwrap_err();
        assert_eq!((error.code(), error.field(), error.hint()), (Code::UnknownKey, Field::Key, near));
    }
    assert!(!Job::is_group("dialect.units_codes.inch") && !Job::is_group("dialect.tap_rh") && !Job::is_group(""));
}

/// 3 decimals are thousandths; what nobody has said, and what no control has, is no number.
#[test]
fn an_increment_is_one_of_the_last_decimal() {
    let mut mill = Dialect::unset();
    mill.set("least_increment.axis.mm", Value::Text(b"0.001")).unwrap();
    let mut axis = mill.reading.least_increment.axis;
    assert_eq!(axis.increment(Unit::Mm), Some(Length::new(1, 1_000).unwrap()));
    assert_eq!(axis.increment(Unit::Inch), None);
    axis.inch = Some(10);
    assert_eq!(axis.increment(Unit::Inch), None);
}

/// Sets what the JSON of a dialect says, as a door does: objects by dotted names, lists of codes as one text.
fn set_all(mill: &mut Dialect, prefix: &str, json: &serde_json::Value) {
    use serde_json::Value as Json;
    for (key, value) in json.as_object().expect("an object") {
        let key = format!("{prefix}{key}");
        let set = match value {
            Json::Object(_) => {
                assert!(Job::is_group(&format!("dialect.{key}")), "{key}");
                set_all(mill, &format!("{key}."), value);
                Ok(())
            }
            Json::Array(codes) => {
                assert!(Dialect::takes_codes(&key), "{key}");
                let codes: Vec<_> = codes.iter().map(|code| code.as_str().expect("a text")).collect();
                mill.set(&key, Value::Text(codes.join(" ").as_bytes()))
            }
            Json::Null => mill.set(&key, Value::Absent),
            Json::Bool(flag) => mill.set(&key, Value::Flag(*flag)),
            Json::String(text) => mill.set(&key, Value::Text(text.as_bytes())),
            Json::Number(number) => mill.set(&key, Value::Exact(Length::integer(number.as_i64().expect("whole")))),
        };
        set.unwrap_or_else(|error| panic!("{key}: {error}"));
    }
}

/// Every field in its place: the names of the JSON are the keys.
fn leaves(json: &serde_json::Value, prefix: &str, found: &mut BTreeSet<String>) {
    for (key, value) in json.as_object().expect("an object") {
        found.insert(format!("{prefix}{key}"));
        if value.is_object() {
            leaves(value, &format!("{prefix}{key}."), found);
        }
    }
}

#[test]
fn the_json_has_exactly_the_keys() {
    let mut written = BTreeSet::new();
    leaves(&serde_json::to_value(Dialect::unset()).unwrap(), "", &mut written);
    assert_eq!(written, Dialect::KEYS.iter().map(|key| String::from(*key)).collect());
}

proptest! {
    #![proptest_config(config(2_000))]

    #[test]
    fn a_dialect_comes_back_from_its_json(
        picks in proptest::collection::vec(proptest::option::weighted(0.8, any::<prop::sample::Index>()), kinds().count()),
        standard in any::<bool>(),
    ) {
        let mut mill = if standard { Dialect::rs274ngc() } else { Dialect::unset() };
        for ((key, kind), pick) in kinds().zip(&picks) {
            if let Some(pick) = pick {
                mill.set(key, Value::Text(pick.get(kind.good).as_bytes())).unwrap();
            }
        }
        let json = serde_json::to_value(mill).unwrap();
        let mut back = Dialect::unset();
        set_all(&mut back, "", &json);
        prop_assert_eq!(back, mill);
        prop_assert_eq!(serde_json::to_value(back).unwrap(), json);
    }
}
