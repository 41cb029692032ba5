//! The samples of `tests/nc`: programs, and what each run of their checks is told.

use std::fs;

use serde_json::Value as Json;
use threadcalc_core::nc::CheckOptions;
use threadcalc_core::{Dialect, Length, Value};

/// A program, its name, and the runs that are expected of it.
pub struct Sample {
    pub name: String,
    pub program: Vec<u8>,
    pub runs: Vec<Json>,
}

/// All samples, by name.
pub fn samples() -> Vec<Sample> {
    let folder = concat!(env!("CARGO_MANIFEST_DIR"), "/../tests/nc");
    let mut paths: Vec<_> = fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().path()).collect();
    paths.retain(|path| path.to_str().unwrap().ends_with(".expect.json"));
    paths.sort();
    let sample = |path| {
        let expected: Json = serde_json::from_slice(&fs::read(path).unwrap()).unwrap();
        let name = expected["program"].as_str().unwrap().to_string();
        let program = fs::read(format!("{folder}/{name}")).unwrap();
        Sample { name, program, runs: expected["runs"].as_array().unwrap().clone() }
    };
    paths.into_iter().map(sample).collect()
}

fn set(dialect: &mut Dialect, key: &str, value: &Json) {
    let set = |dialect: &mut Dialect, value: Value<'_>| {
        dialect.set(key, value).unwrap_or_else(|error| panic!("{key}: {error}"));
    };
    match value {
        Json::Null => set(dialect, Value::Absent),
        Json::Bool(flag) => set(dialect, Value::Flag(*flag)),
        Json::Number(number) => set(dialect, Value::Double(number.as_f64().unwrap())),
        Json::String(text) => set(dialect, Value::Text(text.as_bytes())),
        Json::Array(list) => {
            let texts: Vec<_> = list.iter().map(|item| item.as_str().unwrap()).collect();
            set(dialect, Value::Text(texts.join(" ").as_bytes()));
        }
        Json::Object(object) => {
            for (inner, value) in object {
                self::set(dialect, &format!("{key}.{inner}"), value);
            }
        }
    }
}

/// The dialect of a run.
pub fn dialect(fields: &Json) -> Dialect {
    let mut dialect = Dialect::unset();
    for (key, value) in fields.as_object().unwrap() {
        set(&mut dialect, key, value);
    }
    dialect
}

/// The options of a run.
pub fn options(fields: &Json) -> CheckOptions {
    let mut options = CheckOptions::default();
    options.surface_z_mm = Some(Length::from_f64(fields["surface_z_mm"].as_f64().unwrap()).unwrap());
    options.block_delete = fields["block_delete"].as_bool().unwrap();
    options.leave_macros = !fields["evaluate_macros"].as_bool().unwrap();
    options
}
