//! The words of tapping cycles under many dialects.

use super::{decimals, number, optional_number, thread, unit};
use crate::Failure;
use crate::table::{Got, Results, Row, Table};
use threadcalc_core::{
    CycleRequest, Dialect, FeedMode, Field, Finding, Holder, ReturnTo, Value, cycle, feed, read_number,
};

/// A name of the dialect's, then its fields as `key=value`.
fn dialect(row: Row<'_>) -> Result<Dialect, Failure> {
    let mut words = row.required("dialect")?.split(' ');
    let mut dialect = Dialect::built_in(words.next().unwrap_or_default().as_bytes())?;
    for word in words {
        let (key, value) = word.split_once('=').unwrap();
        dialect.set(key, Value::Text(value.as_bytes()))?;
    }
    Ok(dialect)
}

fn choice<T>(row: Row<'_>, column: &str, read: impl Fn(&[u8]) -> Option<T>) -> Result<T, Failure> {
    read(row.required(column)?.as_bytes()).ok_or(Failure::NoChoice)
}

fn list<T: ToString>(items: impl Iterator<Item = T>, between: &str) -> Got {
    Got::TextOrNone(items.map(|item| item.to_string()).collect::<Vec<_>>().join(between))
}

fn results(row: Row<'_>) -> Result<Results, Failure> {
    let (dialect, thread) = (dialect(row)?, thread(row)?);
    let mode = choice(row, "mode", FeedMode::from_name)?;
    let rpm = number(row, "rpm")?;
    // No feed can be made for a speed of 0: the cycle itself is asked about it, with the feed of another.
    let made_for = if rpm.is_positive() { rpm } else { read_number(b"1")? };
    let speed = (mode == FeedMode::PerMinute).then_some(made_for);
    let request = CycleRequest {
        dialect: &dialect,
        thread: &thread,
        feed: &feed(thread.lead_mm(), speed, unit(row)?, mode, decimals(row)?)?,
        rpm,
        depth_mm: number(row, "depth_mm")?,
        r_plane_mm: number(row, "r_plane_mm")?,
        holder: choice(row, "holder", Holder::from_name)?,
        peck_mm: optional_number(row, "peck_mm")?,
        dwell_s: optional_number(row, "dwell_s")?,
        retract_factor: optional_number(row, "retract_factor")?,
        return_to: choice(row, "return_to", ReturnTo::from_name)?,
    };
    let made = cycle(&request)?;
    let words = made.unwrap_or_default();
    let refused = made.err();
    let of_finding = |text: fn(&Finding) -> &str| Got::TextOrNone(refused.as_ref().map_or("", text).into());
    let words_of_blocks: Vec<_> =
        words.blocks().flat_map(|line| line.as_str().split(' ').map(String::from).collect::<Vec<_>>()).collect();
    assert_eq!(words.words().collect::<Vec<_>>(), words_of_blocks, "the words are those of the blocks");
    Ok(vec![
        ("blocks", list(words.blocks(), "; ")),
        ("restore", list(words.restore(), " ")),
        ("refused", of_finding(|finding| finding.id().name())),
        ("reason", of_finding(Finding::suggestion)),
    ])
}

#[test]
fn writes_tapping_cycles() {
    Table::open("cycle").check(results);
}

#[test]
fn sets_every_field_of_a_dialect_by_its_name() {
    let named = |key: &str| Field::from_name(format!("dialect.{key}").as_bytes()).is_some();
    // Numbers by word and unit share one field.
    let shared = |key: &str| key.starts_with("least_increment.") || key.starts_with("max_decimals.");
    assert!(Dialect::KEYS.iter().all(|key| named(key) != shared(key)));
}
