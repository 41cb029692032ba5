//! What a check has to say of programs.

use std::fmt::Debug;

use super::pieces::in_pieces;
use super::table::{Got, Table};
use threadcalc_core::nc::{
    CheckOptions, Checker, Event, FindingNumber, ProgramCheck, ProgramFinding, ProgramFindingId, Reason, Tool,
};
use threadcalc_core::{Dialect, Error, Length, Severity, Value};

/// `key=value; key=value`
pub fn pairs(cell: &str) -> impl Iterator<Item = (&str, &str)> {
    cell.split("; ").filter_map(|pair| pair.split_once('='))
}

pub fn dialect(cell: &str) -> Result<Dialect, Error> {
    let mut dialect = Dialect::unset();
    for (key, value) in pairs(cell) {
        match key {
            "base" => dialect = Dialect::built_in(value.as_bytes())?,
            _ => dialect.set(key, Value::Text(value.as_bytes()))?,
        }
    }
    Ok(dialect)
}

/// ` | ` stands for the end of a line.
pub fn lines(cell: &[u8]) -> Vec<u8> {
    let mut program = Vec::new();
    let mut rest = cell;
    while let Some(at) = rest.windows(3).position(|bytes| bytes == b" | ") {
        program.extend_from_slice(&rest[..at]);
        program.push(b'\n');
        rest = &rest[at + 3..];
    }
    program.extend_from_slice(rest);
    program
}

/// Six digits, without trailing zeros.
fn short(lead: Option<Length>) -> String {
    let Some(lead) = lead else { return String::from("none") };
    let text = format!("{:.5e}", lead.to_f64());
    text.parse::<f64>().unwrap().to_string()
}

/// What a finding rests on lies in the program, and what it says has no gap.
fn is_sound(finding: &ProgramFinding, end: u32) {
    let lines = finding.evidence().map(|evidence| evidence.line).chain(finding.call_path());
    assert!(lines.chain([finding.line()]).all(|line| line <= end), "{finding:?}");
    let is_finite = |number| !matches!(number, FindingNumber::Double(value) if !value.is_finite());
    assert!(finding.numbers().all(|(_, number)| is_finite(number)), "{finding:?}");
    assert!(!finding.to_string().contains(['{', '}', '?']) && finding.suggestion().is_ascii(), "{finding}");
    let grounds = finding.grounds();
    assert_eq!(grounds.is_empty(), grounds.to_string().is_empty(), "{finding:?}");
}

/// Its data makes the same again.
fn comes_back<T: serde::Serialize + serde::de::DeserializeOwned + PartialEq + Debug>(one: &T) {
    let data = serde_json::to_string(one).unwrap();
    assert_eq!(serde_json::from_str::<T>(&data).unwrap_or_else(|error| panic!("{error}: {data}")), *one);
}

#[test]
fn judges_programs() {
    Table::open("nc_check").check(|row| {
        let program = lines(&row.bytes("program"));
        let mut options = CheckOptions::default();
        for (key, value) in pairs(row.cell("options")) {
            options.set(key, Value::Text(value.as_bytes()))?;
        }
        let dialect = dialect(row.cell("dialect"))?;
        let mut check = ProgramCheck::new(&program, &dialect, &options);
        let mut pieces = Checker::new(&dialect, &options);
        for cell in row.cell("tools").split('|').filter(|cell| !cell.trim().is_empty()) {
            let mut tool = Tool::default();
            for (key, value) in pairs(cell.trim()) {
                tool.set(key, Value::Text(value.as_bytes()))?;
            }
            check.add_tool(&tool)?;
            pieces.add_tool(&tool)?;
        }
        let (mut holes, mut found) = (Vec::new(), Vec::new());
        let events: Vec<Event> = check.by_ref().collect();
        let piecewise = in_pieces(&mut pieces, &program, 7);
        // A call is followed only where all of the program is at hand.
        if pieces.not_checked().all(|told| told.reason != Reason::CallNotFollowed) {
            assert!(events == piecewise && check.not_checked().eq(pieces.not_checked()), "{}", row.cell("id"));
        }
        for event in events {
            match event {
                Event::Hole(hole) => {
                    comes_back(&hole);
                    let hand = hole.hand.map_or("none", |hand| hand.name());
                    holes.push(format!("{}:{}:{hand}", hole.line, short(hole.lead_mm)));
                }
                Event::Finding(finding) => found.push(finding),
            }
        }
        let end = 1 + program.iter().filter(|byte| **byte == b'\n').count() as u32;
        found.iter().for_each(|finding| is_sound(finding, end));
        found.iter().for_each(comes_back);
        check.not_checked().for_each(|one| comes_back(&one));
        found.sort_by_key(|finding| (finding.line(), finding.id().name()));
        let wanted = row.cell("findings");
        let is_told = |severity: Severity, id: &str| severity != Severity::Info || wanted.contains(id);
        let shown: Vec<_> = found
            .iter()
            .filter(|finding| is_told(finding.severity(), finding.id().name()))
            .map(|finding| format!("{}:{}:{}", finding.line(), finding.id(), finding.severity()))
            .collect();
        Ok(vec![("holes", Got::TextOrNone(holes.join(" "))), ("findings", Got::TextOrNone(shown.join(" ")))])
    });
}

/// Readings of the control's own defaults, which no row of the table has.
#[test]
fn findings_under_other_readings_come_back() {
    for (fields, program, reading) in [
        ("tap_rh=G84", "G94 S500 M3 | G84 X0 Y0 Z-12. R5. F500. | M30", "the control starts in mm"),
        (
            "tap_rh=G84; feed_basis=by_mode",
            "G21 S500 M3 | G84 X0 Y0 Z-12. R5. F500. | M30",
            "the control starts per minute",
        ),
    ] {
        let (program, dialect) = (lines(program.as_bytes()), dialect(fields).unwrap());
        let mut readings = Vec::new();
        for event in ProgramCheck::new(&program, &dialect, &CheckOptions::default()) {
            if let Event::Finding(finding) = event {
                comes_back(&finding);
                readings.push(finding.reading());
            }
        }
        assert!(readings.contains(&reading), "{reading}: {readings:?}");
    }
}

#[test]
fn every_finding_has_a_row_that_fires() {
    let table = include_str!("../../../tests/reference/nc_check.csv");
    let names = ProgramFindingId::ALL.iter().map(|id| id.name());
    let silent: Vec<_> = names.filter(|name| !table.contains(&format!(":{name}:"))).collect();
    assert!(silent.is_empty(), "{silent:?}");
}
