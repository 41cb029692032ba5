//! What a check has to say of programs.

use super::table::{Got, Table};
use threadcalc_core::nc::{CheckOptions, Event, ProgramCheck, Tool};
use threadcalc_core::{Dialect, Error, Length, Severity, Value};

/// `key=value; key=value`
fn pairs(cell: &str) -> impl Iterator<Item = (&str, &str)> {
    cell.split("; ").filter_map(|pair| pair.split_once('='))
}

fn dialect(cell: &str) -> Result<Dialect, Error> {
    let mut dialect = Dialect::unset();
    for (key, value) in pairs(cell) {
        match key {
            "base" => dialect = Dialect::built_in(value.as_bytes())?,
            _ => dialect.set(key, Value::Text(value.as_bytes()))?,
        }
    }
    Ok(dialect)
}

/// Six digits, without trailing zeros.
fn short(lead: Option<Length>) -> String {
    let Some(lead) = lead else { return String::from("none") };
    let text = format!("{:.5e}", lead.to_f64());
    text.parse::<f64>().unwrap().to_string()
}

#[test]
fn judges_programs() {
    Table::open("nc_check").check(|row| {
        let program = row.cell("program").replace(" | ", "\n");
        let mut options = CheckOptions::default();
        for (key, value) in pairs(row.cell("options")) {
            options.set(key, Value::Text(value.as_bytes()))?;
        }
        let dialect = dialect(row.cell("dialect"))?;
        let mut check = ProgramCheck::new(program.as_bytes(), &dialect, &options);
        let mut tool = Tool::default();
        for (key, value) in pairs(row.cell("tools")) {
            tool.set(key, Value::Text(value.as_bytes()))?;
        }
        if !row.cell("tools").is_empty() {
            check.add_tool(&tool)?;
        }
        let (mut holes, mut found) = (Vec::new(), Vec::new());
        for event in check {
            match event {
                Event::Hole(hole) => {
                    let hand = hole.hand.map_or("none", |hand| hand.name());
                    holes.push(format!("{}:{}:{hand}", hole.line, short(hole.lead_mm)));
                }
                Event::Finding(finding) => found.push(finding),
            }
        }
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
