//! 10,000 random plans and the reports of the samples hashed: the other doors have to print the same hashes.

#[path = "support/jobs.rs"]
mod jobs;
#[path = "support/random.rs"]
mod random;
#[path = "support/samples.rs"]
mod samples;
#[path = "support/whole.rs"]
mod whole;

use std::fmt::Write;
use std::path::{Path, PathBuf};

use jobs::{Hash, SEED, draw, write_items};
use random::Random;
use samples::{Sample, dialect, options, samples};
use threadcalc_core::nc::ProgramCheck;
use threadcalc_core::{Thread, plan};
use whole::Whole;

const JOBS: usize = 10_000;

fn folder() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../tests/same_bits")
}

#[test]
fn ten_thousand_plans_have_the_expected_hash() {
    let listed = std::fs::read_to_string(folder().join("threads.txt")).unwrap();
    let lines = listed.lines().filter(|line| !line.starts_with('#'));
    let threads: Vec<_> = lines.map(|line| Thread::read(line.as_bytes()).unwrap()).collect();
    let (mut random, mut hash) = (Random(SEED), Hash::EMPTY);
    let mut planned = 0;
    for _ in 0..JOBS {
        match plan(&draw(&mut random, &threads)) {
            Err(error) => writeln!(hash, "error {} {}", error.code().name(), error.field()).unwrap(),
            Ok(plan) => {
                planned += 1;
                let json = serde_json::to_string(&plan).unwrap();
                // The text of a plan ends in a line feed of its own.
                write_items(&mut hash, &plan).unwrap();
                write!(hash, "\n{plan}{json}\n").unwrap();
            }
        }
    }
    assert!(planned > JOBS / 2, "only {planned} jobs have a plan");
    is_expected(&hash, "expected.txt");
}

#[test]
fn the_reports_of_the_samples_have_the_expected_hash() {
    let mut hash = Hash::EMPTY;
    for Sample { name, program, runs } in samples() {
        for run in runs {
            let (dialect, options) = (dialect(&run["dialect"]), options(&run["options"]));
            let whole = Whole::of(ProgramCheck::new(&program, &dialect, &options));
            let json = serde_json::to_string(&whole.report()).unwrap_or_else(|error| panic!("{name}: {error}"));
            writeln!(hash, "{json}").unwrap();
        }
    }
    is_expected(&hash, "reports.txt");
}

fn is_expected(hash: &Hash, file: &str) {
    let (got, path) = (format!("{:016x}\n", hash.0), folder().join(file));
    if std::env::var_os("THREADCALC_WRITE_EXPECTED").is_some_and(|wanted| wanted == "1") {
        std::fs::write(&path, &got).unwrap();
    }
    let want = std::fs::read_to_string(&path).unwrap_or_else(|error| panic!("{}: {error}", path.display()));
    assert_eq!(got, want, "{file}");
}
