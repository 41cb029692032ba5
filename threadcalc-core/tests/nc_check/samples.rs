//! Whole programs of `tests/nc` with what a check has to say of each.

use std::collections::BTreeMap;

use serde_json::Value as Json;
use threadcalc_core::nc::{CheckOptions, Checker, Event, FindingNumber, ProgramFinding, TappedHole};
use threadcalc_core::{Dialect, Length};

use super::pieces::in_pieces;
use super::programs::{Sample, dialect, options, samples};

fn checked(program: &[u8], dialect: &Dialect, options: &CheckOptions) -> (Vec<TappedHole>, Vec<ProgramFinding>) {
    let (mut holes, mut findings) = (Vec::new(), Vec::new());
    for event in in_pieces(&mut Checker::new(dialect, options), program, program.len()) {
        match event {
            Event::Hole(hole) => holes.push(hole),
            Event::Finding(finding) => findings.push(finding),
        }
    }
    findings.sort_by_key(|finding| (finding.line(), finding.column()));
    (holes, findings)
}

fn number(number: FindingNumber) -> Json {
    match number {
        FindingNumber::Double(value) => Json::from(value),
        FindingNumber::Text(text) => Json::from(text),
    }
}

/// The same number, to the decimals that are printed or to a millionth.
fn agrees(expected: &Json, found: &Json) -> bool {
    let (Some(expected), Some(found)) = (expected.as_f64(), found.as_f64()) else { return expected == found };
    let printed = expected.to_string();
    let decimals = printed.split_once('.').map_or(0, |(_, decimals)| decimals.len());
    let half = 0.5 * 10_f64.powi(-i32::try_from(decimals).unwrap());
    (found - expected).abs() <= (expected.abs() * 1e-6).max(if decimals >= 3 { half * 1.001 } else { 0.0 })
}

fn holes_agree(expected: &Json, found: &[TappedHole]) -> Result<(), String> {
    let expected = expected.as_array().unwrap();
    let shown: Vec<Json> = found
        .iter()
        .map(|hole| {
            let double = |value: Option<Length>| value.map(Length::to_f64);
            serde_json::json!({
                "line": hole.line, "lead_mm": double(hole.lead_mm), "hand": hole.hand.map(|hand| hand.name()),
                "count": hole.count, "speed_rpm": double(hole.speed_rpm), "feed": double(hole.feed),
            })
        })
        .collect();
    let same = expected.len() == shown.len()
        && expected.iter().zip(&shown).all(|(expected, found)| {
            expected.as_object().unwrap().iter().all(|(key, value)| agrees(value, &found[key]))
        });
    if same { Ok(()) } else { Err(format!("holes: {expected:#?}\nfound: {shown:#?}")) }
}

fn findings_agree(run: &Json, found: &[ProgramFinding]) -> Result<(), String> {
    let mut free: Vec<_> = found.iter().collect();
    for expected in run["findings"].as_array().unwrap() {
        let place = free.iter().position(|finding| {
            let numbers: BTreeMap<_, _> = finding.numbers().map(|(key, value)| (key.name(), number(value))).collect();
            finding.id().name() == expected["id"]
                && u64::from(finding.line()) == expected["line"]
                && finding.severity().name() == expected["severity"]
                && expected.get("certain").is_none_or(|certain| certain.as_bool() == Some(finding.certain()))
                && expected["numbers"]
                    .as_object()
                    .unwrap()
                    .iter()
                    .all(|(key, value)| numbers.get(key.as_str()).is_some_and(|found| agrees(value, found)))
        });
        let Some(place) = place else { return Err(format!("missing: {expected}")) };
        free.remove(place);
    }
    for finding in free {
        let name = finding.id().name();
        if finding.severity().name() != "info" || run["must_not"].as_array().unwrap().iter().any(|id| *id == name) {
            return Err(format!("not expected: {finding}"));
        }
    }
    Ok(())
}

#[test]
fn programs_are_judged_as_expected() {
    let (mut runs, mut wrong) = (0, Vec::new());
    for Sample { name, program, runs: expected } in samples() {
        for run in &expected {
            let (holes, findings) = checked(&program, &dialect(&run["dialect"]), &options(&run["options"]));
            let agreed = holes_agree(&run["tapped_holes"], &holes).and_then(|()| findings_agree(run, &findings));
            if let Err(why) = agreed {
                let all: Vec<_> = findings.iter().map(ToString::to_string).collect();
                wrong.push(format!("{name} ({}): {why}\nall: {all:#?}", run["label"]));
            }
            runs += 1;
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n\n"));
    assert_eq!(runs, 17);
}
