//! Dialects through the JSON door.

use super::*;
use threadcalc_core::Dialect;

/// A control that was never built, in the types that JSON has.
const NEUTRAL: &str = r#"{
    "name": "neutral-F-is-lead", "tap_rh": ["G84"], "tap_lh": "G74", "dwell_unit": "s", "units_default": null,
    "feed_mode_default": "G94", "units_codes": {"inch": ["G20", "G70"], "mm": "G21"},
    "feed_basis": "per_rev_in_tap_cycle", "rigid_tap_code": null, "cycle_starts_spindle": true,
    "mirror_flips_hand": "unknown", "rapid_cancels_cycle": "no", "least_increment": null, "S_decimals": 0,
    "max_decimals": {"axis": {"mm": 3, "inch": "4"}, "F_per_min": null, "F_per_rev": {"mm": null}},
    "max_block_chars": 256, "mirror_on": ["G51.1"], "subprogram_call": "M98", "order_table": "units_first"
}"#;

fn job_with(dialect: &str) -> Result<Job, Fault> {
    read_job(format!(r#"{{"schema": 1, "dialect": {dialect}}}"#).as_bytes())
}

#[test]
fn a_dialect_is_read_in_the_types_of_json() {
    let mut wanted = Dialect::unset();
    for (key, value) in [
        ("name", "neutral-F-is-lead"),
        ("tap_rh", "G84"),
        ("tap_lh", "G74"),
        ("dwell_unit", "seconds"),
        ("feed_mode_default", "per_minute"),
        ("units_codes.inch", "G20 G70"),
        ("units_codes.mm", "G21"),
        ("feed_basis", "per_rev_in_tap_cycle"),
        ("cycle_starts_spindle", "yes"),
        ("rapid_cancels_cycle", "false"),
        ("S_decimals", "0"),
        ("max_decimals.axis.mm", "3"),
        ("max_decimals.axis.inch", "4"),
        ("max_block_chars", "256"),
        ("mirror_on", "G51.1"),
        ("subprogram_call", "M98"),
        ("order_table", "units_first"),
    ] {
        wanted.set(key, Value::Text(value.as_bytes())).expect(key);
    }
    let job = job_with(NEUTRAL).expect("a job");
    assert_eq!(job.dialect, Some(wanted));
}

#[test]
fn what_serde_writes_is_read_back() {
    for dialect in [NEUTRAL, r#""rs274ngc""#, "{}"] {
        let job = job_with(dialect).expect("a job");
        let text = serde_json::to_vec(&job).expect("a job is JSON");
        assert_eq!(read_job(&text).expect("a job").dialect, job.dialect, "{dialect}");
    }
}

#[test]
fn a_value_of_the_wrong_shape_is_told_with_its_key() {
    for (dialect, key, code, hint) in [
        (r#"{"peck_word": ["Q"]}"#, "dialect.peck_word", Code::UnknownValue, "one value, not a list"),
        (r#"{"tap_rh": ["G84", "G74"]}"#, "dialect.tap_rh", Code::UnknownValue, "a code such as G84"),
        (r#"{"units_codes": ["G20"]}"#, "dialect.units_codes", Code::UnknownValue, "an object, not a list"),
        (r#"{"units_codes": {"in": "G20"}}"#, "dialect.units_codes.in", Code::UnknownKey, "dialect.units_codes.inch"),
        (
            r#"{"units_codes": {"mm": ["G21", "G71", "G171"]}}"#,
            "dialect.units_codes.mm",
            Code::TooLong,
            "at most two codes",
        ),
        (
            r#"{"max_decimals": 3}"#,
            "dialect.max_decimals",
            Code::UnknownValue,
            "an object with axis, F_per_min and F_per_rev, each with mm and inch",
        ),
        (
            r#"{"max_decimals": {"axis": 3}}"#,
            "dialect.max_decimals.axis",
            Code::UnknownValue,
            "an object with mm and inch",
        ),
        (
            r#"{"max_decimals": {"axis": {"mm": {}}}}"#,
            "dialect.max_decimals.axis.mm",
            Code::UnknownValue,
            "one value, not an object",
        ),
        (r#"{"S_decimals": 1, "S_decimals": 1}"#, "dialect.S_decimals", Code::BadJson, "this key stands here twice"),
    ] {
        let fault = job_with(dialect).expect_err(dialect);
        assert_eq!((fault.key.as_deref(), fault.error.code(), fault.error.hint()), (Some(key), code, hint));
    }
}
