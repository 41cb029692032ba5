//! Jobs as JSON from a few bytes: well formed, with keys of a job and values picked from a table.

use threadcalc_core::Job;

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

/// The first value leaves the key out.
const VALUES: [&str; 89] = [
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
    r#""MJ8x1.25-4H5H""#,
    r#""1/2 BSW""#,
    r#""2 BA""#,
    r#""Tr40x14P7-7H""#,
    r#""1/2-10 ACME-2G""#,
    r#""2.5-4 BUTT""#,
    r#""M8 STI""#,
    r#""1/4-28 UNJF-3B""#,
    r#""S1""#,
    r#""1/4-20 UNC-2B""#,
    r##""#10-32""##,
    r#""1/4-18""#,
    r#""\u00d8\n\"\\""#,
    r#""a name longer than any""#,
    r#""1/4-18 NPT""#,
    r#""rigid""#,
    r#""tension_compression""#,
    r#""floating""#,
    r#""spiral_point""#,
    r#""C""#,
    r#""M8x1.25 6HX LH""#,
    r#""aluminium""#,
    r#""8.8""#,
    r#""6g""#,
    r#""initial""#,
    "[[20,600,40]]",
    r#"[[20,600,20,"40.5",600,7],[20,4000,8]]"#,
    r##"["#7","F",6.8,"8.5"]"##,
    r#""6.8,7""#,
    "12",
];

/// Each pair of bytes sets one key to one value; a value beyond the table is a number of tenths. Beside the keys
/// of a job there is `id`, the line door's own.
#[must_use]
pub fn json(picks: &[u8]) -> Vec<u8> {
    let keys: Vec<&str> = Job::keys().chain(["id"]).collect();
    let mut members: Vec<(&str, String)> = BASE.iter().map(|(key, value)| (*key, (*value).into())).collect();
    for pick in picks.chunks_exact(2) {
        let key = keys[usize::from(pick[0]) % keys.len()];
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
    let mut names: Vec<&str> = members.iter().filter_map(|(key, _)| Some(key.split_once('.')?.0)).collect();
    names.dedup();
    for (place, name) in names.iter().enumerate() {
        if !names[..place].contains(name) {
            texts.push(format!("\"{name}\":{}", object(&inner(name))));
        }
    }
    for (key, value) in members.iter().filter(|(key, _)| !key.contains('.') && inner(key).is_empty()) {
        texts.push(format!("\"{key}\":{value}"));
    }
    format!("{{{}}}", texts.join(","))
}
