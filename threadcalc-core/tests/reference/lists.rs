//! Threads made of their parts, lists, doubles, the errors of feeds, depths.

use crate::table::{Got, Row, Table};
use crate::{Failure, decimals, job_with, number, optional_number, thread, unit};
use threadcalc_core::{
    DepthRequest, Drill, FindingId, Form, Hand, Hole, Job, Length, Series, Side, TapSetOn, Thread, Value, choice,
    depths, drills, feed, is_iso_262, near, standard_threads,
};

fn made(row: Row<'_>) -> Result<Thread, Failure> {
    let size = row.required("size")?;
    let mut thread = match row.cell("form") {
        "metric" => Thread::metric(number(row, "size")?, number(row, "pitch")?)?,
        "unified" => Thread::unified(number(row, "size")?, number(row, "pitch")?)?,
        _ => Thread::unified_size(size.as_bytes(), number(row, "pitch")?)?,
    };
    if let Ok(starts) = row.cell("starts").parse() {
        thread = thread.with_starts(starts)?;
    }
    if let Some(hand) = Hand::from_name(row.cell("hand").as_bytes()) {
        thread = thread.with_hand(hand);
    }
    let (class, side) = (row.cell("tolerance_class").as_bytes(), Side::from_name(row.cell("side").as_bytes()));
    if !class.is_empty() {
        thread = thread.with_class(class)?;
    }
    if let Some(side) = side {
        thread = thread.with_side(side)?;
    }
    let (starts, hand) = (i64::from(thread.starts()), thread.hand());
    let again = Thread::from_parts(thread.form(), thread.major_mm(), thread.pitch_mm(), starts, hand, side, class)?;
    assert_eq!(again, thread, "{}: made of all parts at once", row.cell("id"));
    Ok(thread)
}

#[test]
fn makes_threads_of_parts() {
    Table::open("thread_parts").check(|row| {
        let thread = made(row)?;
        let per_inch = (thread.form() == Form::Unified).then(|| number(row, "pitch")).transpose()?;
        assert_eq!(thread.threads_per_inch(), per_inch, "{}: threads per inch", row.cell("id"));
        Ok(vec![
            ("canonical", Got::Text(thread.to_string())),
            ("series", Got::TextOrNone(thread.series().map_or("", |series| series.name()).into())),
            ("on_side", Got::TextOrNone(thread.side().map_or("", |side| side.name()).into())),
            ("lead_mm", Got::Exact(Some(thread.lead_mm()))),
        ])
    });
}

/// A choice that may be left out; a name that is none is an error as in every door.
fn narrowed<T>(row: Row<'_>, column: &str, read: impl Fn(&[u8]) -> Option<T>) -> Result<Option<T>, Failure> {
    let name = row.cell(column);
    let found = read(name.as_bytes());
    if found.is_none() && !name.is_empty() { Err(Failure::NoChoice) } else { Ok(found) }
}

#[test]
fn lists_standard_threads() {
    Table::open("standard_threads").check(|row| {
        let form = narrowed(row, "form", Form::from_name)?;
        let series = narrowed(row, "series", Series::from_name)?;
        let all: Vec<Thread> = standard_threads(form, series).collect();
        let shown = |thread: Option<&Thread>| Got::TextOrNone(thread.map_or(String::new(), Thread::to_string));
        Ok(vec![
            ("count", Got::Text(all.len().to_string())),
            ("first", shown(all.first())),
            ("last", shown(all.last())),
        ])
    });
}

#[test]
fn says_how_a_thread_stands_in_its_standard() {
    let yes = |is: bool| Got::Text(if is { "yes" } else { "no" }.into());
    Table::open("standing").check(|row| {
        let thread = thread(row)?;
        Ok(vec![
            ("standard", yes(thread.is_standard())),
            ("choice", Got::Text(choice(&thread).map_or("-".into(), |choice| choice.to_string()))),
            ("iso_262", yes(is_iso_262(&thread))),
        ])
    });
}

#[test]
fn finds_near_threads() {
    Table::open("near").check(|row| {
        let thread = thread(row)?;
        let found: Vec<_> = near(&thread).iter().map(|(text, reason)| format!("{text} {reason}")).collect();
        let findings = thread.findings();
        let doubt = findings.iter().find(|finding| finding.id() == FindingId::NotStandard);
        let suggestion = doubt.map_or("", |finding| finding.suggestion()).replace(", ", "; ");
        Ok(vec![("near", Got::TextOrNone(found.join("; "))), ("suggestion", Got::TextOrNone(suggestion))])
    });
}

#[test]
fn lists_drills() {
    Table::open("drills").check(|row| {
        let all: Vec<Drill> = drills(job_with("drill_sets", row.cell("sets"))?.drill_sets).collect();
        let shown = |drill: Option<&Drill>| Got::Text(drill.map_or(String::new(), |drill| drill.name().to_string()));
        Ok(vec![
            ("count", Got::Text(all.len().to_string())),
            ("first", shown(all.first())),
            ("last", shown(all.last())),
        ])
    });
}

#[test]
fn finds_the_drill_of_a_diameter() {
    Table::open("drill_of_diameter").check(|row| {
        let drill = Drill::of_diameter(number(row, "diameter_mm")?);
        let set = drill.set().map_or("", |set| set.name());
        Ok(vec![("name", Got::Text(drill.name().to_string())), ("set", Got::TextOrNone(set.into()))])
    });
}

#[test]
fn takes_doubles_for_what_they_stand_for() {
    Table::open("exact_number").check(|row| {
        let double = row.cell("number").parse().unwrap();
        let value = Length::from_f64(double)?;
        let mut job = Job::default();
        job.set("rpm", Value::Double(double))?;
        assert_eq!(job.rpm, Some(value), "{}: in a job", row.cell("id"));
        Ok(vec![
            ("text", Got::Text(value.to_string())),
            ("value", Got::Exact(Some(value))),
            ("number", Got::Double(value.to_f64())),
        ])
    });
}

#[test]
fn gives_the_errors_of_feeds() {
    Table::open("feed_error").check(|row| {
        let mode = job_with("mode", row.cell("mode"))?.mode.ok_or(Failure::ByType)?;
        let rpm = if mode.name() == "per_minute" { Some(number(row, "rpm")?) } else { None };
        let feed = feed(thread(row)?.lead_mm(), rpm, unit(row)?, mode, decimals(row)?)?;
        Ok(vec![
            ("text", Got::Text(feed.text().into())),
            ("value", Got::Exact(Some(feed.value()?))),
            ("lead_cut_mm", Got::Exact(Some(feed.lead_cut_mm()?))),
            ("axial_error_mm", Got::Exact(Some(feed.axial_error_mm(number(row, "depth_mm")?)?))),
        ])
    });
}

#[test]
fn gives_depths() {
    Table::open("depths").check(|row| {
        let request = DepthRequest {
            full_thread_mm: number(row, "full_thread_mm")?,
            chamfer_threads: number(row, "chamfer_threads")?,
            drill_mm: number(row, "drill_mm")?,
            point_angle_deg: number(row, "point_angle_deg")?,
            bottom_clearance_mm: number(row, "bottom_clearance_mm")?,
            tap_centre_mm: optional_number(row, "tap_centre_mm")?.unwrap_or(Length::ZERO),
            tap_set_on: TapSetOn::from_name(row.cell("tap_set_on").as_bytes()).unwrap_or(TapSetOn::Front),
            hole: Hole::from_name(row.cell("hole").as_bytes()).ok_or(Failure::ByType)?,
        };
        let found = depths(&thread(row)?, &request)?;
        Ok(vec![
            ("tap_mm", Got::Exact(Some(found.tap_mm))),
            ("program_tap_mm", Got::Exact(Some(found.program_tap_mm))),
            ("full_diameter_mm", Got::Exact(Some(found.full_diameter_mm))),
            ("drill_point_mm", Got::Double(found.drill_point_mm)),
        ])
    });
}
