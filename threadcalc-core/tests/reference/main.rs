//! Every table of `tests/reference`, row by row: the same rows that the C and Python doors run.

mod checks;
mod coating;
mod comparing;
mod cutting;
mod cycles;
mod depths;
mod drilling;
mod families;
mod gauging;
mod jobs;
mod lengths;
mod lines;
mod lists;
mod motion;
mod notes;
#[path = "../support/pieces.rs"]
mod pieces;
mod pipes;
mod programs;
mod table;
mod taps;
mod texts;

use table::{Failure, Got, Results, Row, Table};
use threadcalc_core::{
    Basis, Drill, DrillSet, EngagementRequest, Error, Feed, FeedMode, Job, Length, Limits, PropertyClass, Ratio, Tap,
    TapDrillRequest, Thread, Unit, Value, drill_diameter, engagement, exact_speeds, feed, percent_thread,
    programmed_speed, read_number, tap_drill,
};

type Made<T> = Result<T, Error>;
type Limit = Option<Ratio>;

// What `Failure::ByType` rests on: these inputs are no options, so that leaving one out does not compile.
const _: fn(&Thread, Ratio, Tap, Option<Basis>) -> Made<f64> = drill_diameter;
const _: fn(&Thread, Length, Tap, Option<Basis>) -> Made<f64> = percent_thread;
const _: fn(Length, Limit, Unit, FeedMode, u8) -> Made<Feed> = feed;
const _: fn(Ratio, Ratio, Limit, Limit) -> Made<Ratio> = programmed_speed;
const _: fn(DrillSet, &[u8]) -> Made<Drill> = Drill::named;

fn thread(row: Row<'_>) -> Result<Thread, Failure> {
    Ok(Thread::read(&row.bytes("designation"))?)
}

fn number(row: Row<'_>, column: &str) -> Result<Ratio, Failure> {
    Ok(read_number(row.required(column)?.as_bytes())?)
}

fn optional_number(row: Row<'_>, column: &str) -> Result<Option<Ratio>, Failure> {
    let cell = row.cell(column);
    if cell.is_empty() { Ok(None) } else { Ok(Some(read_number(cell.as_bytes())?)) }
}

/// A job with one field set, so that names are understood where every door understands them.
fn job_with(key: &str, cell: &str) -> Result<Job, Failure> {
    let mut job = Job::default();
    job.set(key, if cell.is_empty() { Value::Absent } else { Value::Text(cell.as_bytes()) })?;
    Ok(job)
}

fn unit(row: Row<'_>) -> Result<Unit, Failure> {
    job_with("unit", row.cell("unit"))?.unit.ok_or(Failure::ByType)
}

fn tap(row: Row<'_>) -> Result<Tap, Failure> {
    job_with("tap", row.cell("tap"))?.tap.ok_or(Failure::ByType)
}

fn basis(row: Row<'_>) -> Result<Option<Basis>, Failure> {
    Ok(job_with("basis", row.cell("basis"))?.basis)
}

/// Decimals go to the operation as they are; only what is no u8 is for the job's reader to refuse.
fn decimals(row: Row<'_>) -> Result<u8, Failure> {
    let cell = row.required("decimals")?;
    match cell.parse() {
        Ok(decimals) => Ok(decimals),
        Err(_) => job_with("decimals", cell)?.decimals.ok_or(Failure::ByType),
    }
}

fn whole(row: Row<'_>, column: &str) -> Option<i64> {
    let cell = row.cell(column);
    (!cell.is_empty()).then(|| cell.parse().unwrap())
}

/// A length in the row's unit.
fn in_unit(row: Row<'_>, length: Option<Length>) -> Result<Option<Length>, Failure> {
    let unit = unit(row)?;
    Ok(length.map(|length| length.over(unit.in_mm()).unwrap()))
}

#[test]
fn reads_numbers() {
    Table::open("read_number").check(|row| {
        let value = read_number(&row.bytes("text"))?;
        Ok(vec![("value", Got::Exact(Some(value)))])
    });
}

#[test]
fn reads_and_writes_designations() {
    Table::open("designation").check(|row| {
        let thread = Thread::read(&row.bytes("text"))?;
        let findings: Vec<_> = thread.findings().iter().map(|finding| finding.id().name()).collect();
        let class = thread.tolerance_class();
        Ok(vec![
            ("canonical", Got::Text(thread.to_string())),
            ("form", Got::Text(thread.form().to_string())),
            ("series", Got::TextOrNone(thread.series().map_or("", |series| series.name()).into())),
            ("size", Got::Text(thread.size().to_string())),
            ("tolerance_class", Got::TextOrNone(class.as_ref().map_or("", |class| class.as_str()).into())),
            ("side", Got::TextOrNone(thread.side().map_or("", |side| side.name()).into())),
            ("hand", Got::Text(thread.hand().to_string())),
            ("starts", Got::Text(thread.starts().to_string())),
            ("major_mm", Got::Exact(Some(thread.major_mm()))),
            ("findings", Got::TextOrNone(findings.join(" "))),
        ])
    });
}

#[test]
fn gives_pitch_and_lead() {
    Table::open("lead").check(|row| {
        let thread = thread(row)?;
        Ok(vec![
            ("pitch_mm", Got::Exact(Some(thread.pitch_mm()))),
            ("lead_mm", Got::Exact(Some(thread.lead_mm()))),
            ("starts", Got::Text(thread.starts().to_string())),
            ("hand", Got::Text(thread.hand().to_string())),
        ])
    });
}

#[test]
fn gives_the_metric_profile() {
    Table::open("profile_metric").check(|row| {
        let profile = thread(row)?.profile();
        Ok(vec![
            ("triangle_height_mm", Got::Double(profile.triangle_height_mm)),
            ("pitch_diameter_mm", Got::Double(profile.pitch_diameter_mm)),
            ("minor_mm", Got::Double(profile.minor_mm)),
            ("external_minor_mm", Got::Double(profile.external_minor_mm)),
            ("stress_area_mm2", Got::Double(profile.stress_area_mm2)),
        ])
    });
}

#[test]
fn gives_the_unified_profile() {
    Table::open("profile_unified").check(|row| {
        let profile = thread(row)?.profile();
        Ok(vec![
            ("pitch_diameter_in", Got::Double(profile.pitch_diameter_mm / 25.4)),
            ("minor_in", Got::Double(profile.minor_mm / 25.4)),
            ("external_minor_in", Got::Double(profile.external_minor_mm / 25.4)),
            ("stress_area_in2", Got::Double(profile.stress_area_mm2 / 645.16)),
        ])
    });
}

#[test]
fn gives_limits_of_size() {
    Table::open("minor_limits").check(|row| {
        let limits = thread(row)?.limits()?;
        let shown = |limit| Ok::<_, Failure>(Got::Exact(in_unit(row, limit)?));
        Ok(vec![
            ("minor_min", shown(limits.minor_mm.0)?),
            ("minor_max", shown(limits.minor_mm.1)?),
            ("pitch_min", shown(limits.pitch_diameter_mm.0)?),
            ("unit", Got::Text(limits.native_unit.to_string())),
        ])
    });
}

fn named_limits(limits: &Limits) -> [(&'static str, Option<Length>); 6] {
    let (major, pitch, minor) = (limits.major_mm, limits.pitch_diameter_mm, limits.minor_mm);
    [
        ("major_min", major.0),
        ("major_max", major.1),
        ("pitch_min", pitch.0),
        ("pitch_max", pitch.1),
        ("minor_min", minor.0),
        ("minor_max", minor.1),
    ]
}

/// All six limits in the unit of the row, and the standard's own unit.
fn six_limits(row: Row<'_>, limits: &Limits) -> Result<Results, Failure> {
    let mut results = Results::new();
    for (name, limit) in named_limits(limits) {
        results.push((name, Got::Exact(in_unit(row, limit)?)));
    }
    results.push(("unit", Got::Text(limits.native_unit.to_string())));
    Ok(results)
}

/// The limits, and which one the standard does not set.
fn size_limits(row: Row<'_>) -> Result<Results, Failure> {
    let limits = thread(row)?.limits()?;
    let named = named_limits(&limits).into_iter();
    let absent: Vec<_> = named.filter(|(_, limit)| limit.is_none()).map(|(name, _)| name).collect();
    let mut results = six_limits(row, &limits)?;
    results.push(("absent", Got::TextOrNone(absent.join(" "))));
    Ok(results)
}

#[test]
fn gives_metric_limits_of_size() {
    Table::open("limits_metric").check(size_limits);
}

#[test]
fn gives_unified_limits_of_size() {
    Table::open("limits_unified").check(size_limits);
}

/// What a fit carries, from its own columns.
fn strengths(row: Row<'_>) -> Result<Results, Failure> {
    let [internal, external] = ["internal", "external"].map(|side| Thread::read(&row.bytes(side)));
    let double = |column| number(row, column).map(Length::to_f64);
    let request = EngagementRequest {
        length_mm: number(row, "length_mm")?,
        without_full_thread_mm: optional_number(row, "without_full_thread_mm")?.unwrap_or(Length::ZERO),
        internal_shear_mpa: double("internal_shear_mpa")?,
        external_shear_mpa: double("external_shear_mpa")?,
        external_tensile_mpa: double("external_tensile_mpa")?,
        drilled_mm: optional_number(row, "drilled_mm")?,
        load_n: optional_number(row, "load_n")?.map(Length::to_f64),
    };
    let found = engagement(&internal?, &external?, &request)?;
    Ok(vec![
        ("tensile_area_mm2", Got::Double(found.tensile_area_mm2)),
        ("internal_shear_area_mm2", Got::Double(found.internal_shear_area_mm2)),
        ("external_shear_area_mm2", Got::Double(found.external_shear_area_mm2)),
        ("tensile_load_n", Got::Double(found.tensile_load_n)),
        ("internal_strip_load_n", Got::Double(found.internal_strip_load_n)),
        ("external_strip_load_n", Got::Double(found.external_strip_load_n)),
        ("weakest", Got::Text(found.weakest.to_string())),
        ("required_length_mm", Got::Double(found.required_length_mm)),
        ("strip_ratio", Got::Double(found.strip_ratio)),
        ("safety_factor", Got::Double(found.safety_factor.unwrap_or(f64::NAN))),
    ])
}

#[test]
fn gives_what_a_fit_carries() {
    Table::open("engagement").check(strengths);
}

#[test]
fn gives_strengths_to_start_from() {
    Table::open("starting_strength").check(|row| {
        let class = PropertyClass::from_name(row.cell("property_class").as_bytes()).ok_or(Failure::NoChoice)?;
        let strength = class.starting_strength(number(row, "diameter_mm")?)?;
        Ok(vec![("tensile_mpa", Got::Double(strength.tensile_mpa)), ("shear_mpa", Got::Double(strength.shear_mpa))])
    });
}

#[test]
fn knows_the_drills() {
    Table::open("drill").check(|row| {
        let name = row.required("set")?;
        job_with("drill_sets", name)?;
        let set = DrillSet::from_name(name.as_bytes()).unwrap();
        let drill = Drill::named(set, &row.bytes("name"))?;
        Ok(vec![("diameter_mm", Got::Exact(Some(drill.diameter_mm()))), ("name", Got::Text(drill.name().to_string()))])
    });
}

#[test]
fn gives_the_percent_of_thread() {
    Table::open("percent").check(|row| {
        let (thread, drill) = (thread(row)?, number(row, "drill_mm")?);
        let percent = percent_thread(&thread, drill, tap(row)?, basis(row)?)?;
        Ok(vec![("percent", Got::Double(percent))])
    });
}

#[test]
fn gives_the_hole_for_a_percent() {
    Table::open("drill_diameter").check(|row| {
        let (thread, percent) = (thread(row)?, number(row, "percent")?);
        let hole = drill_diameter(&thread, percent, tap(row)?, basis(row)?)?;
        Ok(vec![("drill_mm", Got::Double(hole))])
    });
}

#[test]
fn chooses_tap_drills() {
    Table::open("tap_drill").check(|row| {
        let request = TapDrillRequest {
            tap: tap(row)?,
            percent: optional_number(row, "percent")?,
            basis: basis(row)?,
            sets: job_with("drill_sets", row.cell("sets"))?.drill_sets,
            taper_reamer: false,
        };
        let found = tap_drill(&thread(row)?, &request)?.chosen;
        Ok(vec![
            ("drill", Got::Text(found.drill.name().to_string())),
            ("within_limits", Got::Text(found.within_limits.to_string())),
        ])
    });
}

#[test]
fn rounds_speeds_down_to_the_step() {
    Table::open("programmed_speed").check(|row| {
        let step = optional_number(row, "step")?.unwrap_or(Length::ONE);
        let (lowest, highest) = (optional_number(row, "lowest")?, optional_number(row, "highest")?);
        let held = programmed_speed(number(row, "rpm")?, step, lowest, highest)?;
        Ok(vec![("speed", Got::Exact(Some(held)))])
    });
}

fn feed_results(row: Row<'_>) -> Result<Results, Failure> {
    let (lead, rpm) = (thread(row)?.lead_mm(), optional_number(row, "rpm")?);
    let mode = job_with("mode", row.cell("mode"))?.mode.ok_or(Failure::ByType)?;
    let feed = feed(lead, rpm, unit(row)?, mode, decimals(row)?)?;
    Ok(vec![
        ("word", Got::Text(feed.word().into())),
        ("exact", Got::Exact(Some(feed.exact()?))),
        ("lead_error", Got::Exact(Some(feed.lead_error()?))),
    ])
}

#[test]
fn makes_feed_words() {
    Table::open("feed").check(feed_results);
}

#[test]
fn finds_exact_speeds() {
    Table::open("exact_speeds").check(|row| {
        let (lead, rpm) = (thread(row)?.lead_mm(), number(row, "rpm")?);
        let count = whole(row, "count").unwrap() as usize;
        let (lowest, highest) = (whole(row, "lowest").unwrap(), whole(row, "highest"));
        let speeds = exact_speeds(lead, rpm, unit(row)?, decimals(row)?, count, lowest, highest)?;
        let speeds: Vec<_> = speeds.map(|speed| speed.to_string()).collect();
        Ok(vec![("speeds", Got::TextOrNone(speeds.join(" ")))])
    });
}
