//! The rows of `tests/reference/nc_check.csv`: a program, and exactly what a check has to say of it.

#[path = "reference/table.rs"]
#[allow(dead_code, reason = "a check has no numbers of its own to compare")]
mod table;

use table::{Failure, Got, Row, Table};
use threadcalc_core::nc::{CheckOptions, Event, Finding, FindingId, ProgramCheck, TappedHole, Tool, ToolKind};
use threadcalc_core::{Dialect, Holder, Length, Severity, Thread, Value, read_number};

/// `\xHH` is a byte that a CSV cannot hold; ` | ` stands between lines.
fn program(cell: &str) -> Vec<u8> {
    let mut bytes = Vec::new();
    let mut parts = cell.split("\\x");
    bytes.extend(parts.next().unwrap().bytes());
    for part in parts {
        bytes.push(u8::from_str_radix(&part[..2], 16).unwrap());
        bytes.extend(part[2..].bytes());
    }
    let text: Vec<&[u8]> = bytes.split(|byte| *byte == b'|').collect();
    let behind = |line: &'_ [u8]| line.strip_prefix(b" ").unwrap_or(line).to_vec();
    let mut lines: Vec<_> = text.into_iter().map(behind).collect();
    lines.iter_mut().for_each(|line| line.truncate(line.strip_suffix(b" ").map_or(line.len(), <[u8]>::len)));
    lines.iter().flat_map(|line| [line, &b"\n"[..]].concat()).collect()
}

fn pairs(cell: &str) -> impl Iterator<Item = (&str, &str)> {
    cell.split(';').filter(|pair| !pair.trim().is_empty()).map(|pair| pair.trim().split_once('=').unwrap())
}

fn dialect(cell: &str) -> Result<Dialect, Failure> {
    if cell == "rs274ngc" {
        return Ok(Dialect::rs274ngc());
    }
    let mut dialect = Dialect::unset();
    for (key, value) in pairs(cell) {
        dialect.set(key, Value::Text(value.as_bytes()))?;
    }
    Ok(dialect)
}

fn options(cell: &str) -> Result<CheckOptions, Failure> {
    let mut options = CheckOptions::default();
    for (key, value) in pairs(cell) {
        let number = || read_number(value.as_bytes()).map(Some);
        match key {
            "surface_z_mm" => options.surface_z_mm = number()?,
            "block_delete" => options.block_delete = value == "true",
            "evaluate_macros" => options.leave_macros = value == "false",
            "thread" => options.thread = Some(Thread::read(value.as_bytes())?),
            "full_thread_depth_mm" => options.full_thread_depth_mm = number()?,
            "holder" => options.holder = Holder::from_name(value.as_bytes()),
            "underfeed_percent" => options.underfeed_percent = number()?,
            "cutting_force_n_mm2" => options.cutting_force_n_mm2 = number()?,
            "highest_rpm" => options.machine.highest_rpm = number()?,
            "axis_feed_limit_mm_min" => options.machine.axis_feed_limit_mm_min = number()?,
            "acceleration_rpm_s" => options.machine.acceleration_rpm_s = number()?,
            "least_clearance_turns" => options.machine.least_clearance_turns = number()?,
            "gear" => {
                let gear: Result<Vec<Length>, _> = value.split(' ').map(|part| read_number(part.as_bytes())).collect();
                options.machine.add_gear(&gear?)?;
            }
            _ => panic!("no option {key}"),
        }
    }
    Ok(options)
}

fn tool(cell: &str) -> Result<Tool, Failure> {
    let mut tool = Tool::default();
    for (key, value) in pairs(cell) {
        let number = || read_number(value.as_bytes()).map(Some);
        match key {
            "number" => tool.number = value.parse().unwrap(),
            "kind" => tool.kind = ToolKind::from_name(value.as_bytes()),
            "thread" => tool.thread = Some(Thread::read(value.as_bytes())?),
            "diameter_mm" => tool.diameter_mm = number()?,
            "point_angle_deg" => tool.point_angle_deg = number()?,
            "chamfer_threads" => tool.chamfer_threads = number()?,
            "holder" => tool.holder = Holder::from_name(value.as_bytes()),
            _ => panic!("no key {key}"),
        }
    }
    Ok(tool)
}

fn hole(hole: &TappedHole) -> String {
    let hand = hole.hand.map_or("-", |hand| hand.name());
    let lead = hole.lead_mm.map_or("-".into(), |lead| lead.to_string());
    format!("{}:{lead}:{hand}", hole.line)
}

fn finding(finding: &Finding) -> String {
    format!("{}:{}:{}", finding.line(), finding.id().name(), finding.severity().name())
}

fn results(row: Row<'_>) -> Result<Vec<(&'static str, Got)>, Failure> {
    let program = program(row.cell("program"));
    let mut check = ProgramCheck::new(&program, &dialect(row.cell("dialect"))?, &options(row.cell("options"))?);
    for cell in row.cell("tools").split('|').filter(|cell| !cell.trim().is_empty()) {
        check.add_tool(&tool(cell)?)?;
    }
    let (mut holes, mut findings) = (Vec::new(), Vec::new());
    for event in check {
        match event {
            Event::Hole(event) => holes.push(hole(&event)),
            Event::Finding(event) => findings.push(event),
        }
    }
    assert!(findings.iter().all(|finding| !finding.to_string().contains(['{', '}'])), "{findings:#?}");
    findings.sort_by_key(|finding| (finding.line(), finding.id().number()));
    // What is only told for information counts in the rows that name one.
    let infos = row.cell("findings").contains(":info");
    let told = |finding: &&Finding| infos || finding.severity() != Severity::Info;
    let findings: Vec<_> = findings.iter().filter(told).map(finding).collect();
    Ok(vec![("holes", Got::TextOrNone(holes.join(" "))), ("findings", Got::TextOrNone(findings.join(" ")))])
}

#[test]
fn checks_programs() {
    Table::open("nc_check").check(results);
}

#[test]
fn every_finding_has_a_row_that_fires() {
    let table = include_str!("../../tests/reference/nc_check.csv");
    // What a lead alone says has rows of its own; more findings than there is room for, no program makes.
    let elsewhere = ["thread-identified", "ambiguous-thread", "nonstandard-lead", "more-findings"];
    let names = FindingId::ALL.iter().map(|id| id.name()).filter(|name| !elsewhere.contains(name));
    let silent: Vec<_> = names.filter(|name| !table.contains(&format!(":{name}:"))).collect();
    assert!(silent.is_empty(), "{silent:?}");
}
