//! Jobs as JSON from a few bytes: well formed, with keys and values picked from tables.

/// A job that can be planned; picks change it.
const BASE: [(&str, &str); 9] = [
    ("schema", "1"),
    ("thread", r#""M8""#),
    ("unit", r#""mm""#),
    ("mode", r#""per_minute""#),
    ("decimals", "3"),
    ("rpm", "650"),
    ("hole", r#""blind""#),
    ("full_thread_depth_mm", "20"),
    ("tap", r#""cut""#),
];

const KEYS: [&str; 46] = [
    "schema",
    "thread",
    "unit",
    "mode",
    "decimals",
    "rpm",
    "hole",
    "full_thread_depth_mm",
    "tap",
    "chamfer_threads",
    "tap_set_on",
    "tap_centre_mm",
    "drill_sets",
    "drill_mm",
    "percent",
    "basis",
    "point_angle_deg",
    "bottom_clearance_mm",
    "r_plane_mm",
    "machine",
    "machine.highest_rpm",
    "machine.lowest_rpm",
    "machine.speed_step",
    "dialect",
    "dialect.name",
    "dialect.tap_rh",
    "dialect.tap_lh",
    "dialect.feed_per_revolution",
    "dialect.needs_spindle_running",
    "dialect.lh_by_spindle_direction",
    "dialect.feed_per_minute",
    "dialect.rigid_tap_code",
    "dialect.rigid_tap_code_has_s",
    "dialect.peck_word",
    "dialect.peck_code_rh",
    "dialect.peck_code_lh",
    "dialect.dwell_word",
    "dialect.dwell_unit",
    "dialect.retract_word",
    "dialect.retract_in",
    "dialect.return_r_plane",
    "dialect.return_initial",
    "dialect.axis_decimals_mm",
    "dialect.axis_decimals_inch",
    "dialect.trailing_point",
    "id",
];

/// The first value leaves the key out.
const VALUES: [&str; 64] = [
    "",
    "null",
    "true",
    "false",
    "0",
    "1",
    "2",
    "3",
    "9",
    "10",
    "20",
    "60",
    "100",
    "118",
    "180",
    "600",
    "3000",
    "1e12",
    "-1",
    "0.1",
    "0.05",
    "2.5",
    "6.8",
    "8.5",
    "0.3333333333",
    "9223372036854775807",
    "18446744073709551615",
    "1e308",
    r#""127/70""#,
    r#""1/3""#,
    r#""1,5""#,
    r#""1/0""#,
    r#""999999999999/1000000000000""#,
    r#""mm""#,
    r#""inch""#,
    r#""per_minute""#,
    r#""per_revolution""#,
    r#""blind""#,
    r#""through""#,
    r#""cut""#,
    r#""form""#,
    r#""front""#,
    r#""centre""#,
    r#""3H/4""#,
    r#""5H/8""#,
    r#""metric""#,
    r#"["number","letter","fractional"]"#,
    "[]",
    "{}",
    r#""rs274ngc""#,
    r#""unset""#,
    r#""G84""#,
    r#""G84.2""#,
    r#""M8x1.25-6H""#,
    r#""M10x1-LH""#,
    r#""M1""#,
    r#""M3-6g""#,
    r#""M16xPh3P1.5""#,
    r#""M300x4-6H""#,
    r#""1/4-20 UNC-2B""#,
    r##""#10-32""##,
    r#""1/4-18""#,
    r#""\u00d8\n\"\\""#,
    r#""a name longer than any""#,
];

/// Each pair of bytes sets one key to one value; a value beyond the table is a number of tenths.
#[must_use]
pub fn json(picks: &[u8]) -> Vec<u8> {
    let mut members: Vec<(&str, String)> = BASE.iter().map(|(key, value)| (*key, (*value).into())).collect();
    for pick in picks.chunks_exact(2) {
        let key = KEYS[usize::from(pick[0]) % KEYS.len()];
        members.retain(|(known, _)| *known != key);
        match VALUES.get(usize::from(pick[1])) {
            Some(&"") => {}
            Some(value) => members.push((key, (*value).into())),
            None => members.push((key, format!("{}", f64::from(pick[1]) / 10.0))),
        }
    }
    object(&members).into_bytes()
}

/// The members as an object, those with a dot as members of an object in it.
fn object(members: &[(&str, String)]) -> String {
    let inner = |name: &str| -> Vec<(&str, String)> {
        let of = members.iter().filter_map(|(key, value)| Some((key.split_once('.')?, value)));
        of.filter(|((outer, _), _)| *outer == name).map(|((_, key), value)| (key, value.clone())).collect()
    };
    let mut texts = Vec::new();
    for name in ["machine", "dialect"] {
        if !inner(name).is_empty() {
            texts.push(format!("\"{name}\":{}", object(&inner(name))));
        }
    }
    for (key, value) in members.iter().filter(|(key, _)| !key.contains('.') && inner(key).is_empty()) {
        texts.push(format!("\"{key}\":{value}"));
    }
    format!("{{{}}}", texts.join(","))
}
