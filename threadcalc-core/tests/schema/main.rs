//! The committed schemas of the JSON of jobs, plans, reports and comparisons: made from the tables of this folder, and
//! held against the keys that a job takes and the text that the library writes.

mod comparison;
mod comparisons;
mod job;
#[path = "../support/jobs.rs"]
#[allow(dead_code, reason = "the hash is for another test")]
mod jobs;
mod plan;
mod plans;
#[path = "../support/random.rs"]
mod random;
mod report;
mod reports;
mod shapes;
mod words;

use std::collections::BTreeSet;
use std::path::{Path, PathBuf};

use serde_json::Value as Json;
use threadcalc_core::nc;
use threadcalc_core::{Code, FindingId, Job, NumberKey, Value};

use shapes::{Objects, listed, seen};

fn folder() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../schema")
}

fn committed(name: &str) -> Json {
    let path = folder().join(name);
    let text = std::fs::read_to_string(&path).unwrap_or_else(|error| panic!("{}: {error}", path.display()));
    serde_json::from_str(&text).expect("a schema is JSON")
}

/// Compares a committed schema with its tables, or writes it on request.
fn assert_committed(name: &str, made: &Json) {
    if std::env::var_os("THREADCALC_WRITE_SCHEMA").is_some_and(|wanted| wanted == "1") {
        let text = serde_json::to_string_pretty(made).unwrap() + "\n";
        std::fs::create_dir_all(folder()).unwrap();
        std::fs::write(folder().join(name), text).unwrap();
    }
    assert!(committed(name) == *made, "schema/{name} has drifted: run with THREADCALC_WRITE_SCHEMA=1");
}

#[test]
fn the_committed_schema_of_a_job_is_that_of_its_table() {
    assert_committed("job.schema.json", &job::job());
}

#[test]
fn the_committed_schema_of_a_plan_is_that_of_its_tables() {
    assert_committed("plan.schema.json", &plan::plan());
}

#[test]
fn the_committed_schema_of_a_report_is_that_of_its_tables() {
    assert_committed("report.schema.json", &report::report());
}

#[test]
fn the_committed_schema_of_a_comparison_is_that_of_its_tables() {
    assert_committed("comparison.schema.json", &comparison::comparison());
}

/// Every key of the objects, dotted: what stands in `machine` is `machine.…`.
fn dotted(objects: &Objects) -> BTreeSet<String> {
    let dotted = |path: &String, key: &String| if path.is_empty() { key.clone() } else { format!("{path}.{key}") };
    objects.iter().flat_map(|(path, keys)| keys.iter().map(move |key| dotted(path, key))).collect()
}

fn assert_same(what: &str, schema: &BTreeSet<String>, library: &BTreeSet<String>) {
    let missing: Vec<_> = library.difference(schema).collect();
    assert!(missing.is_empty(), "{what}: the schema lacks {missing:?}: a line in tests/schema for each");
    let gone: Vec<_> = schema.difference(library).collect();
    assert!(gone.is_empty(), "{what}: the library does not have {gone:?}");
}

#[test]
fn the_schema_of_a_job_has_exactly_the_keys_that_a_job_takes() {
    let listed = dotted(&listed(&committed("job.schema.json")));
    let known: BTreeSet<_> = Job::keys().map(String::from).collect();
    assert_eq!(known.len(), Job::keys().count(), "each key once");
    assert_same("a job", &listed, &known);
    for key in &listed {
        assert_eq!(Job::default().set(key, Value::Absent), Ok(()), "{key}");
        let unknown = Job::default().set(&format!("{key}_"), Value::Absent).expect_err("no key");
        assert_eq!(unknown.code(), Code::UnknownKey, "{key}_");
    }
}

#[test]
fn the_schema_of_a_plan_has_exactly_the_keys_that_are_written() {
    let mut listed = listed(&committed("plan.schema.json"));
    let mut written = Objects::new();
    plans::each(|plan| seen(plan, "", &mut written));
    // A finding carries some of the numbers; which there are is a list of the core's.
    let numbers: BTreeSet<_> = NumberKey::ALL.iter().map(|key| key.name().to_owned()).collect();
    assert_eq!(listed.remove("findings[].numbers"), Some(numbers.clone()));
    let carried = written.remove("findings[].numbers").expect("findings with numbers");
    assert!(carried.len() > 20 && carried.is_subset(&numbers), "{carried:?}");
    for (path, keys) in &listed {
        let written = written.get(path).unwrap_or_else(|| panic!("no plan of tests/schema/plans.rs has {path}"));
        assert_same(&format!("{path:?} of a plan"), keys, written);
    }
    assert_same("a plan: its objects", &listed.into_keys().collect(), &written.into_keys().collect());
}

#[test]
fn what_may_be_null_in_a_plan_is_null_in_some_and_not_in_others() {
    let schema = committed("plan.schema.json");
    let (mut nulls, mut values) = (BTreeSet::new(), BTreeSet::new());
    plans::each(|plan| shapes::nulls(plan, "", &mut nulls, &mut values));
    let mut nullable = BTreeSet::new();
    shapes::nullable(&schema, &mut nullable);
    // A number of a finding that is none is NaN, which no plan here has; a job leaves out what it likes.
    let of_plan = |path: &&String| !path.starts_with("findings[].numbers") && !path.starts_with("job.");
    let missing: Vec<_> = nullable.iter().filter(of_plan).filter(|path| !nulls.contains(*path)).collect();
    assert!(missing.is_empty(), "never null in a plan: {missing:?}");
    let wrong: Vec<_> = nulls.iter().filter(|path| !nullable.contains(*path)).collect();
    assert!(wrong.is_empty(), "null in a plan, not in the schema: {wrong:?}");
    let unseen: Vec<_> = nullable.iter().filter(of_plan).filter(|path| !values.contains(*path)).collect();
    assert!(unseen.is_empty(), "always null in a plan: {unseen:?}");
}

#[test]
fn the_schema_of_a_report_has_exactly_the_keys_that_are_written() {
    let mut listed = listed(&committed("report.schema.json"));
    let mut written = Objects::new();
    reports::each(|report| seen(report, "", &mut written));
    let numbers: BTreeSet<_> = nc::ProgramNumberKey::ALL.iter().map(|key| key.name().to_owned()).collect();
    assert_eq!(listed.remove("findings[].numbers"), Some(numbers.clone()));
    let carried = written.remove("findings[].numbers").expect("findings with numbers");
    assert!(carried.len() > 20 && carried.is_subset(&numbers), "{carried:?}");
    for (path, keys) in &listed {
        let written = written.get(path).unwrap_or_else(|| panic!("no report of tests/schema/reports.rs has {path}"));
        assert_same(&format!("{path:?} of a report"), keys, written);
    }
    assert_same("a report: its objects", &listed.into_keys().collect(), &written.into_keys().collect());
}

#[test]
fn what_may_be_null_in_a_report_is_null_in_some_and_not_in_others() {
    let (mut nulls, mut values, mut nullable) = (BTreeSet::new(), BTreeSet::new(), BTreeSet::new());
    reports::each(|report| shapes::nulls(report, "", &mut nulls, &mut values));
    shapes::nullable(&committed("report.schema.json"), &mut nullable);
    // A number of a finding that is none is NaN, which no report here has.
    nullable.retain(|path| !path.starts_with("findings[].numbers"));
    assert_eq!(nulls, nullable, "null in a report against null in the schema");
    let unseen: Vec<_> = nullable.difference(&values).collect();
    assert!(unseen.is_empty(), "always null in a report: {unseen:?}");
}

#[test]
fn the_schema_of_a_comparison_has_exactly_the_keys_that_are_written() {
    let mut written = Objects::new();
    comparisons::each(|comparison| seen(comparison, "", &mut written));
    let listed = listed(&committed("comparison.schema.json"));
    for (path, keys) in &listed {
        let written = written.get(path).unwrap_or_else(|| panic!("no comparison of tests/schema has {path}"));
        assert_same(&format!("{path:?} of a comparison"), keys, written);
    }
    assert_same("a comparison: its objects", &listed.into_keys().collect(), &written.into_keys().collect());
}

#[test]
fn what_may_be_null_in_a_comparison_is_null_in_some_and_not_in_others() {
    let (mut nulls, mut values, mut nullable) = (BTreeSet::new(), BTreeSet::new(), BTreeSet::new());
    comparisons::each(|comparison| shapes::nulls(comparison, "", &mut nulls, &mut values));
    shapes::nullable(&committed("comparison.schema.json"), &mut nullable);
    assert_eq!(nulls, nullable, "null in a comparison against null in the schema");
    let unseen: Vec<_> = nullable.difference(&values).collect();
    assert!(unseen.is_empty(), "always null in a comparison: {unseen:?}");
}

/// The library's own refusal lists the choices: they are those of the schema.
#[test]
fn the_choices_of_a_job_are_those_that_a_refusal_lists() {
    let mut choices = Vec::new();
    shapes::choices(&committed("job.schema.json"), &mut choices);
    let mut listed = 0;
    for (key, names) in &choices {
        for name in names {
            assert_eq!(Job::default().set(key, Value::Text(name.as_bytes())), Ok(()), "{key}: {name}");
        }
        let refused = Job::default().set(key, Value::Text(b"?")).expect_err("no choice");
        let Some(told) = refused.hint().strip_prefix("one of: ") else { continue };
        listed += 1;
        assert_eq!(told.split(' ').collect::<BTreeSet<_>>(), names.iter().map(String::as_str).collect(), "{key}");
    }
    assert!(listed >= 12, "{listed} keys of {choices:?} list their choices");
}

#[test]
fn the_ids_of_findings_are_those_of_the_core() {
    let schema = committed("plan.schema.json");
    let ids: BTreeSet<_> = FindingId::ALL.iter().map(|id| id.name()).collect();
    for place in ["/properties/findings/items/properties/id/enum", "/properties/withheld/items/enum"] {
        let listed = schema.pointer(place).and_then(Json::as_array).expect("a list of ids");
        assert_eq!(listed.iter().filter_map(Json::as_str).collect::<BTreeSet<_>>(), ids, "{place}");
    }
}
