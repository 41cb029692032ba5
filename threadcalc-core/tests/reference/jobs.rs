//! Whole plans, and single fields of a job.

use crate::Failure;
use crate::table::{Got, Results, Row, Table};
use threadcalc_core::{Dialect, Finding, FindingId, Job, Plan, Unit, Value, WithinLimits, plan, read_number};

/// Columns that are fields of the job by the same name.
const FIELDS: [&str; 13] = [
    "unit",
    "mode",
    "decimals",
    "rpm",
    "hole",
    "full_thread_depth_mm",
    "tap",
    "drill_sets",
    "drill_mm",
    "percent",
    "basis",
    "tap_set_on",
    "tap_centre_mm",
];
const DOTTED: [(&str, &str); 4] = [
    ("speed_step", "machine.speed_step"),
    ("highest_rpm", "machine.highest_rpm"),
    ("tap_rh", "dialect.tap_rh"),
    ("tap_lh", "dialect.tap_lh"),
];

fn job(row: Row<'_>) -> Result<Job, Failure> {
    let mut job = Job::default();
    let dialect = Some(row.cell("dialect")).filter(|name| *name != "own");
    let named = [("thread", row.cell("designation")), ("dialect", dialect.unwrap_or(""))];
    let same = FIELDS.map(|key| (key, row.cell(key)));
    let dotted = DOTTED.map(|(column, key)| (key, row.cell(column)));
    for (key, cell) in named.into_iter().chain(same).chain(dotted).filter(|(_, cell)| !cell.is_empty()) {
        job.set(key, Value::Text(cell.as_bytes()))?;
    }
    if row.cell("dialect") == "rs274ngc" {
        assert_eq!(job.dialect, Some(Dialect::built_in(b"rs274ngc")?));
        assert_eq!(job.dialect, Some(Dialect::rs274ngc()));
    }
    Ok(job)
}

fn graded(finding: &Finding) -> String {
    format!("{}/{}", finding.id().name(), finding.severity().name())
}

/// What the parts of a plan say of each other.
fn agrees(job: &Job, plan: &Plan, place: &str) {
    let assumed = plan.findings.iter().any(|finding| finding.id() == FindingId::ClassAssumed);
    if assumed {
        let class = plan.thread.tolerance_class().map(|class| class.as_str().to_owned());
        let medium = job.thread.map(|thread| thread.medium_internal_class().to_owned());
        assert_eq!(class, medium, "{place}: the class assumed");
    }
    let hole = plan.drill.chosen.drill.diameter_mm();
    let within = plan.limits.and_then(|limits| limits.minor_holds(hole));
    let said = plan.drill.chosen.within_limits;
    if said != WithinLimits::DoesNotApply {
        assert_eq!(within, Some(said == WithinLimits::Yes), "{place}: within the limits");
    }
    let words: Vec<_> = plan.cycle.words().collect();
    let blocks: Vec<_> = plan.cycle.blocks().map(|block| block.to_string()).collect();
    assert_eq!(words.join(" "), blocks.join(" "), "{place}: the words are those of the blocks");
    assert_eq!(plan.findings.has_error(), plan.findings.iter().any(|finding| finding.severity().name() == "error"));
    assert!(plan.to_string().contains(plan.feed.word()), "{place}: the page shows the word");
}

fn list<T: ToString>(items: impl Iterator<Item = T>, between: &str) -> Got {
    Got::TextOrNone(items.map(|item| item.to_string()).collect::<Vec<_>>().join(between))
}

fn results(row: Row<'_>) -> Result<Results, Failure> {
    let job = job(row)?;
    let plan = plan(&job)?;
    agrees(&job, &plan, row.cell("id"));
    let confidence = plan.limits.map(|limits| limits.confidence.name().replace(' ', "-"));
    Ok(vec![
        ("thread", Got::Text(plan.thread.to_string())),
        ("drill", Got::Text(plan.drill.chosen.drill.name().to_string())),
        ("programmed_rpm", Got::Exact(Some(plan.programmed_rpm))),
        ("word", Got::Text(plan.feed.word().into())),
        ("axial_error_mm", Got::Exact(Some(plan.axial_error_mm))),
        ("program_tap_mm", Got::Exact(Some(plan.depths.program_tap_mm))),
        ("card", list(plan.card().map(|row| format!("S{}={}", row.rpm, row.feed.word())), " ")),
        ("blocks", list(plan.cycle.blocks(), "; ")),
        ("restore", list(plan.cycle.restore(), " ")),
        ("withheld", list(plan.withheld.iter().flatten().map(|id| id.name()), " ")),
        ("findings", list(plan.findings.iter().map(graded), " ")),
        ("confidence", Got::TextOrNone(confidence.unwrap_or_default())),
    ])
}

#[test]
fn plans_jobs() {
    Table::open("plan").check(results);
}

#[test]
fn sets_fields_of_a_job() {
    Table::open("job_field").check(|row| {
        let (mut job, key, value) = (Job::default(), row.cell("key"), row.bytes("value"));
        job.set(key, Value::Text(&value))?;
        assert!(!Job::is_group(key) || key == "dialect", "{key} holds fields and no value");
        assert!(key.rsplit_once('.').is_none_or(|(room, _)| Job::is_group(room)), "{key} is inside another");
        if let (Some(key), Some(mill)) = (key.strip_prefix("dialect."), &job.dialect) {
            set_alone(mill, key, &value);
        }
        let next = job.missing().next().map(|error| error.field().name());
        Ok(vec![("next_missing", Got::Text(next.unwrap_or_default().into()))])
    });
}

/// The same field of a dialect that is in no job.
fn set_alone(in_job: &Dialect, key: &str, value: &[u8]) {
    let mut alone = Dialect::unset();
    alone.set(key, Value::Text(value)).expect("what a job takes");
    assert_eq!(alone, *in_job, "{key}");
    let is_code = value == b"none" || matches!(value, [b'A'..=b'Z', b'0'..=b'9', ..]);
    assert!(is_code || !Dialect::takes_codes(key), "{key} takes no codes");
    if let Some(word) = key.strip_prefix("least_increment.") {
        let increments = alone.reading.least_increment;
        let of = match word.split_once('.').expect("word and unit") {
            ("axis", _) => increments.axis,
            ("F_per_min", _) => increments.feed_per_minute,
            _ => increments.feed_per_revolution,
        };
        let unit = if word.ends_with(".mm") { Unit::Mm } else { Unit::Inch };
        assert_eq!(of.increment(unit), read_number(value).ok(), "{key}");
    }
}

/// A job as text: `key=value`, separated by semicolons.
fn job_of_text(text: &str) -> Result<Job, Failure> {
    let mut job = Job::default();
    for pair in text.split("; ") {
        let (key, value) = pair.split_once('=').expect("key=value");
        job.set(key, Value::Text(value.as_bytes()))?;
    }
    Ok(job)
}

fn text_of(shown: Option<impl ToString>) -> Got {
    Got::Text(shown.map_or_else(|| "-".into(), |shown| shown.to_string()))
}

/// A derived value that a plan may not have.
fn derived(value: Option<f64>) -> Got {
    Got::Double(value.unwrap_or(f64::NAN))
}

#[test]
fn plans_whole_holes() {
    Table::open("whole_plan").check(|row| {
        let job = job_of_text(&String::from_utf8(row.bytes("job")).expect("UTF-8"))?;
        let plan = plan(&job)?;
        agrees(&job, &plan, row.cell("id"));
        let (spindle, joint) = (plan.spindle, plan.joint);
        Ok(vec![
            ("drill", Got::Text(plan.drill.chosen.drill.name().to_string())),
            ("programmed_rpm", Got::Exact(Some(plan.programmed_rpm))),
            ("word", Got::Text(plan.feed.word().into())),
            ("program_tap_mm", Got::Exact(Some(plan.depths.program_tap_mm))),
            ("full_diameter_mm", Got::Exact(Some(plan.depths.full_diameter_mm))),
            ("drill_point_mm", Got::Double(plan.depths.drill_point_mm)),
            ("torque_nm", derived(spindle.torque.map(|torque| torque.likely_nm))),
            ("power_kw", derived(spindle.power_kw)),
            ("time_s", Got::Double(spindle.time.time_s)),
            ("reached_rpm", Got::Double(spindle.time.reached_rpm)),
            ("extension_mm", Got::Exact(spindle.holder_travel.map(|travel| travel.extension_mm))),
            ("tap_class", text_of(plan.tap_class.and_then(|tap| tap.class).map(|class| class.name()))),
            ("tap_limit", text_of(plan.tap_limit)),
            ("weakest", text_of(joint.map(|joint| joint.weakest.name()))),
            ("required_length_mm", derived(joint.map(|joint| joint.required_length_mm))),
            ("safety_factor", derived(joint.and_then(|joint| joint.safety_factor))),
            ("lost_mm", derived(plan.countersink.map(|sunk| sunk.full_thread_lost_mm))),
            ("not_go_turns", text_of(plan.not_go.map(|rule| rule.most_turns))),
            ("formed_minor_mm", text_of(plan.formed_minor_mm.map(|(low, high)| format!("{low} {high}")))),
            ("blocks", blocks_of(&plan)),
            ("withheld", list(plan.withheld.iter().flatten().map(|id| id.name()), " ")),
            ("findings", list(plan.findings.iter().map(graded), " ")),
        ])
    });
}

fn blocks_of(plan: &Plan) -> Got {
    let blocks: Vec<_> = plan.cycle.blocks().map(|block| block.to_string()).collect();
    Got::Text(blocks.join("; "))
}
