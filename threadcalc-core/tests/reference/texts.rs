//! Ways to write a thread: many for one, two threads in one text, and what is refused, and where.

use crate::Failure;
use crate::table::{Got, Row, Table};
use threadcalc_core::{Finding, Thread, read_fit};

/// The ids of findings, as a cell lists them.
pub fn ids<'f>(findings: impl Iterator<Item = &'f Finding>) -> Got {
    Got::TextOrNone(findings.map(|finding| finding.id().name()).collect::<Vec<_>>().join(" "))
}

/// The thread again, as a door makes it of what it was given back.
fn of_its_parts(thread: &Thread) -> Result<Thread, Failure> {
    let (form, starts, hand, side) = (thread.form(), i64::from(thread.starts()), thread.hand(), thread.side());
    let class = thread.tolerance_class();
    let class = class.map(|class| class.text());
    let class = class.as_ref().map_or("", |class| class.as_str()).as_bytes();
    let diameter = thread.nominal_mm().unwrap_or(thread.major_mm());
    let again = Thread::from_parts(form, diameter, thread.pitch_mm(), starts, hand, side, class)?;
    let again = if thread.is_wire_insert() { again.with_wire_insert()? } else { again };
    assert_eq!(again, *thread);
    Ok(match thread.written_as() {
        Some(written_as) => again.with_written_as(written_as)?,
        None => again,
    })
}

#[test]
fn makes_holes_for_wire_inserts() {
    Table::open("wire_insert").check(|row| {
        let hole = Thread::read(&row.bytes("designation"))?.with_wire_insert()?;
        Ok(vec![("hole", Got::Text(hole.to_string())), ("major_mm", Got::Exact(Some(hole.major_mm())))])
    });
}

#[test]
fn reads_written_forms() {
    Table::open("written_form").check(|row| {
        let thread = Thread::read(&row.bytes("text"))?;
        assert_eq!(of_its_parts(&thread)?.findings(), thread.findings(), "{}: made of its parts", row.cell("id"));
        Ok(vec![("canonical", Got::Text(thread.to_string())), ("findings", ids(thread.findings().iter()))])
    });
}

#[test]
fn reads_fits() {
    Table::open("fit").check(|row| {
        let (internal, external) = read_fit(&row.bytes("text"))?;
        Ok(vec![("internal", Got::Text(internal.to_string())), ("external", Got::Text(external.to_string()))])
    });
}

#[test]
fn refuses_bad_designations_where_they_are_bad() {
    Table::open("bad_designation").check(|row: Row<'_>| {
        assert!(!row.cell("at").is_empty(), "{} names no byte", row.cell("id"));
        match Thread::read(&row.bytes("text")) {
            Ok(thread) => Err(Failure::Read(thread.to_string())),
            Err(error) => {
                let way_out = !error.hint().is_empty() || !error.low().is_nan();
                assert!(way_out, "{}: {error} tells no way out", row.cell("id"));
                Err(error.into())
            }
        }
    });
}
