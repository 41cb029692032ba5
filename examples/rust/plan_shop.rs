//! Plans the ten holes of the demo shop, `examples/shop/jobs.json`, and prints every plan.
//!
//! A job is what its machine says with what the hole says on top of it.

use std::error::Error;
use std::io::Write;

use serde_json::{Map, Value as Json, from_str};
use threadcalc_core::{Job, Value, plan};

const SHOP: &str = include_str!("../shop/jobs.json");

fn main() -> Result<(), Box<dyn Error>> {
    let shop: Json = from_str(SHOP)?;
    let jobs = shop["jobs"].as_array().ok_or("jobs: a list")?;
    let mut out = std::io::stdout().lock();
    for (number, entry) in (1..).zip(jobs) {
        let (title, machine) = (text(&entry["title"])?, text(&entry["machine"])?);
        let mut job = Job::default();
        for fields in [&shop["machines"][machine], &entry["job"]] {
            fill(&mut job, fields.as_object().ok_or(format!("{title}: an object"))?)?;
        }
        writeln!(out, "=== {number} of {}: {title} ({machine})", jobs.len())?;
        writeln!(out, "{}", plan(&job).map_err(|error| format!("{title}: {error}"))?)?;
    }
    Ok(())
}

/// Sets every field of the job by its name.
fn fill(job: &mut Job, fields: &Map<String, Json>) -> Result<(), Box<dyn Error>> {
    for (key, value) in fields {
        match value {
            // A list of gears; one gear is its numbers, with blanks between them.
            Json::Array(gears) => {
                for gear in gears.iter().filter_map(Json::as_array) {
                    let numbers: Vec<String> = gear.iter().map(Json::to_string).collect();
                    job.set(key, Value::Text(numbers.join(" ").as_bytes()))?;
                }
            }
            Json::String(text) => job.set(key, Value::Text(text.as_bytes()))?,
            other => job.set(key, Value::Text(other.to_string().as_bytes()))?,
        }
    }
    Ok(())
}

fn text(value: &Json) -> Result<&str, String> {
    value.as_str().ok_or(format!("{value}: a text"))
}
