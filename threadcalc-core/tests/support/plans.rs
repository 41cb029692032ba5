//! Plans that tests make of a few fields, and what is looked up in them.

use threadcalc_core::{Error, Finding, FindingId, Job, NumberKey, Plan, Value, plan};

pub fn planned(fields: &[(&str, &str)]) -> Plan {
    asked(fields).expect("a plan")
}

pub fn asked(fields: &[(&str, &str)]) -> Result<Plan, Error> {
    let mut job = Job::default();
    let usual = [("unit", "mm"), ("mode", "per_minute"), ("decimals", "3"), ("rpm", "600"), ("hole", "blind")];
    let rest = [("full_thread_depth_mm", "12"), ("tap", "cut"), ("dialect", "rs274ngc")];
    for (key, value) in usual.iter().chain(&rest).chain(fields) {
        job.set(key, Value::Text(value.as_bytes())).expect("a field of a job");
    }
    plan(&job)
}

pub fn asked_without_depth(fields: &[(&str, &str)]) -> Result<Plan, Error> {
    let mut job = Job::default();
    let usual = [("unit", "mm"), ("mode", "per_minute"), ("decimals", "3"), ("rpm", "600"), ("hole", "blind")];
    for (key, value) in usual.iter().chain(&[("tap", "cut"), ("dialect", "rs274ngc")]).chain(fields) {
        job.set(key, Value::Text(value.as_bytes())).expect("a field of a job");
    }
    plan(&job)
}

pub fn finding(plan: &Plan, id: FindingId) -> Option<Finding> {
    plan.findings.iter().find(|finding| finding.id() == id).copied()
}

pub fn number(finding: &Finding, key: NumberKey) -> Option<f64> {
    finding.numbers().find(|(held, _)| *held == key).map(|(_, value)| value)
}

/// The words of a printed page, one blank apart.
pub fn words_of(plan: &Plan) -> String {
    plan.to_string().split_whitespace().collect::<Vec<_>>().join(" ")
}
