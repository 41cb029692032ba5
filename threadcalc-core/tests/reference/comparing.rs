//! What became of the tapped holes between two versions of a program.

use super::checks::{dialect, lines, pairs};
use super::table::{Got, Row, Table};
use threadcalc_core::nc::{CheckOptions, Event, HoleCounts, ProgramCheck, TappedHole, compare, scratch_for};
use threadcalc_core::{Error, Value};

/// The tapped holes of a row's program.
fn holes_of(row: Row<'_>, column: &str) -> Result<Vec<TappedHole>, Error> {
    let mut options = CheckOptions::default();
    for (key, value) in pairs(row.cell("options")) {
        options.set(key, Value::Text(value.as_bytes()))?;
    }
    let program = lines(&row.bytes(column));
    let hole = |event| if let Event::Hole(hole) = event { Some(hole) } else { None };
    Ok(ProgramCheck::new(&program, &dialect(row.cell("dialect"))?, &options).filter_map(hole).collect())
}

#[test]
fn compares_programs() {
    Table::open("nc_compare").check(|row| {
        let (old, new) = (holes_of(row, "old")?, holes_of(row, "new")?);
        let mut scratch = vec![7; scratch_for(old.len(), new.len())];
        let comparison = compare(&old, &new, &mut scratch)?;
        let HoleCounts { before, after, changed, added, removed, .. } = comparison.counts();
        for change in comparison.changes() {
            let text = change.to_string();
            assert!(change.changed.iter().all(|value| text.contains(&format!("{value} "))), "{text}");
        }
        let changes: Vec<_> = comparison.changes().map(|change| change.to_string().replace(',', ";")).collect();
        let open: Vec<_> = comparison.not_compared().map(|open| format!("{}:{}", open.value, open.count)).collect();
        Ok(vec![
            ("counts", Got::Text(format!("{before} {after} {changed} {added} {removed}"))),
            ("text", Got::TextOrNone(changes.join(" | "))),
            ("not_compared", Got::TextOrNone(open.join(" "))),
        ])
    });
}
