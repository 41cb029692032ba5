//! Plans one tapped hole and prints the plan.
//!
//! Without arguments: a clamp-bar hole in the eight-valve body of the demo shop, which makes
//! irrigation manifolds. With arguments: a hole of your own,
//!
//! ```text
//! cargo run --example tap_hole -- "7/16-14 UNC-2B" --rpm 650 --unit mm --mode per-minute \
//!     --decimals 3 --hole blind --depth-mm 20 --tap cut --dialect rs274ngc
//! ```
//!
//! Every field of a job is an option of the same name: `--drill-mm 9.3`, `--machine.speed-step 10`.

use std::io::Write;
use std::process::ExitCode;

use threadcalc_core::{Error, Job, Value, plan};

const DEMO: [&str; 17] = [
    "7/16-14 UNC-2B",
    "--rpm",
    "650",
    "--unit",
    "mm",
    "--mode",
    "per-minute",
    "--decimals",
    "3",
    "--hole",
    "blind",
    "--depth-mm",
    "20",
    "--tap",
    "cut",
    "--dialect",
    "rs274ngc",
];

fn main() -> ExitCode {
    let mut arguments: Vec<String> = std::env::args().skip(1).collect();
    if arguments.is_empty() {
        arguments = DEMO.map(String::from).to_vec();
    }
    match job(&arguments).and_then(|job| plan(&job).map_err(|error| error.to_string())) {
        Ok(plan) => {
            // A reader that closes the pipe early is no failure of the plan.
            let _closed = write!(std::io::stdout(), "{plan}");
            ExitCode::SUCCESS
        }
        Err(message) => {
            eprintln!("{message}");
            ExitCode::from(2)
        }
    }
}

/// The designation and `--name value` pairs as a job; names every option that is missing.
fn job(arguments: &[String]) -> Result<Job, String> {
    let mut job = Job::default();
    let mut rest = arguments.iter();
    while let Some(argument) = rest.next() {
        let Some(name) = argument.strip_prefix("--") else {
            job.set("thread", Value::Text(argument.as_bytes())).map_err(|error| error.to_string())?;
            continue;
        };
        let value = rest.next().ok_or(format!("--{name}: a value is missing behind it"))?;
        let key = match name {
            "depth-mm" => String::from("full_thread_depth_mm"),
            _ => name.replace('-', "_"),
        };
        job.set(&key, Value::Text(value.as_bytes())).map_err(|error| format!("--{name} {value}: {error}"))?;
    }
    let missing: Vec<String> = job.missing().map(|error| asked_for(&error)).collect();
    if missing.is_empty() { Ok(job) } else { Err(missing.join("\n")) }
}

fn asked_for(error: &Error) -> String {
    let option = match error.field().name() {
        "thread" => String::from("the thread"),
        "full_thread_depth_mm" => String::from("--depth-mm"),
        name => format!("--{}", name.replace('_', "-")),
    };
    format!("{option} is missing: {}", error.hint())
}
