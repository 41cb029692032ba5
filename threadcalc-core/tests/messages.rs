//! What a plan says of an impossible job: field, value, range and what would be right, word for word.

use std::collections::{BTreeMap, HashSet};

use threadcalc_core::{Error, Field, FindingId, Job, Length, Plan, Severity, Value, plan};

const HOLE: &str = "thread=M8x1.25-6H; unit=mm; mode=per_minute; decimals=3; rpm=600; hole=blind; \
                    full_thread_depth_mm=16; tap=cut; drill_mm=6.8; holder=rigid; dialect=rs274ngc";

/// The possible job that a line of the table starts from.
fn possible(name: &str) -> BTreeMap<&'static str, String> {
    let more = match name {
        "HOLE" => "",
        "TAPER" => "thread=1/4-18 NPT; -full_thread_depth_mm; drill_mm=11.1; rpm=200",
        "SCREW" => "part_shear_mpa=200; screw.property_class=8.8",
        "GEARS" => "material=structural_steel",
        "OWN" => "-dialect; dialect.tap_rh=G84",
        other => panic!("no job {other}"),
    };
    let mut job = BTreeMap::new();
    change(&mut job, HOLE);
    change(&mut job, more);
    job
}

/// `key=value` sets, `-key` leaves out; `; ` between them.
fn change<'t>(job: &mut BTreeMap<&'t str, String>, changes: &'t str) {
    for part in changes.split("; ").map(str::trim).filter(|part| !part.is_empty()) {
        match (part.strip_prefix('-'), part.split_once('=')) {
            (Some(key), _) => assert!(job.remove(key).is_some(), "{key} is not in the job"),
            (None, Some((key, value))) => drop(job.insert(key, value.into())),
            _ => panic!("neither key=value nor -key: {part}"),
        }
    }
}

fn planned(fields: &BTreeMap<&str, String>) -> Result<Plan, Error> {
    let mut job = Job::default();
    for (key, value) in fields {
        job.set(key, Value::Text(value.as_bytes()))?;
    }
    plan(&job)
}

/// Lines of `messages.txt`: job, changes, message.
fn lines() -> Vec<(&'static str, &'static str, &'static str)> {
    let told = include_str!("messages.txt").lines().filter(|line| !line.starts_with('#'));
    told.map(|line| {
        let mut parts = line.splitn(3, " | ");
        (parts.next().unwrap(), parts.next().unwrap(), parts.next().unwrap())
    })
    .collect()
}

#[test]
fn impossible_jobs_are_told_in_full() {
    let lines = lines();
    assert!(lines.len() >= 180, "{} lines", lines.len());
    assert_eq!(lines.iter().collect::<HashSet<_>>().len(), lines.len(), "a line stands twice");
    let mut faults = Vec::new();
    for (base, changes, message) in lines {
        let mut job = possible(base);
        assert!(planned(&job).is_ok(), "{base} is possible");
        change(&mut job, changes);
        let said = planned(&job).map_or_else(|error| error.to_string(), |_| "a plan".into());
        if said != message {
            faults.push(format!("{base} {changes}\n  want {message}\n  got  {said}"));
        }
    }
    assert!(faults.is_empty(), "{}", faults.join("\n"));
}

#[test]
fn no_error_leaves_a_person_alone() {
    for (base, changes, _) in lines() {
        let mut job = possible(base);
        change(&mut job, changes);
        let Err(error) = planned(&job) else { panic!("{changes}: a plan") };
        let range = !error.low().is_nan() || !error.high().is_nan();
        let unlike_all = error.field() == Field::Key && error.hint().is_empty();
        assert!(range || !error.hint().is_empty() || unlike_all, "{changes}: {error}");
    }
}

#[test]
fn numbers_that_are_none_are_told_as_such() {
    for key in ["rpm", "full_thread_depth_mm", "drill_mm", "screw.load_n", "machine.highest_rpm", "decimals"] {
        for (number, got) in [(f64::NAN, ""), (f64::INFINITY, ", got inf"), (f64::NEG_INFINITY, ", got -inf")] {
            let error = Job::default().set(key, Value::Double(number)).unwrap_err();
            assert_eq!(error.to_string(), format!("{key}: not an exact number{got}; a finite number"));
        }
        let error = Job::default().set(key, Value::Double(1e30)).unwrap_err();
        let wanted = "too large for exact arithmetic, got 1e30; numerator and denominator up to 10^12";
        assert_eq!(error.to_string(), format!("{key}: {wanted}"));
    }
}

#[test]
fn values_of_the_wrong_kind_are_told_by_what_would_be_right() {
    let one = [Length::ONE];
    for (key, value, message) in [
        ("thread", Value::Double(8.0), "thread: not one of the choices; a text"),
        ("unit", Value::Flag(true), "unit: not one of the choices; one of: mm inch"),
        ("rpm", Value::Flag(true), "rpm: not one of the choices; a number"),
        ("rpm", Value::Numbers(&one), "rpm: not one of the choices; a number"),
        ("taper_reamer", Value::Double(1.0), "taper_reamer: not one of the choices; true or false"),
        ("tap_mark", Value::Double(5.0), "tap_mark: not one of the choices; a text"),
        ("screw.tolerance_class", Value::Double(6.0), "screw.tolerance_class: not one of the choices; a text"),
        ("dialect.return_initial", Value::Double(98.0), "dialect.return_initial: not one of the choices; a text"),
    ] {
        assert_eq!(Job::default().set(key, value).unwrap_err().to_string(), message);
    }
}

/// What is found in a plan rests on a field of its job, by the job's own name for it.
#[test]
fn findings_rest_on_fields_of_the_job() {
    for changes in [
        "coating_um=200; tap_mark=M8x1.25 6H",
        "holder=floating; over_travel_turns=2; underfeed_percent=3",
        "part_thickness_mm=20; countersink_mm=40",
        "screw.load_n=1000000; part_shear_mpa=20; screw.property_class=8.8",
        "machine.gears=20 600 1; material=tool_steel; machine.axis_feed_limit_mm_min=100",
        "thread=M8x1.25-6g; drill_depth_mm=17",
    ] {
        let mut job = possible("HOLE");
        change(&mut job, changes);
        let plan = planned(&job).expect("a plan");
        assert!(plan.findings.iter().count() > 4, "{changes}");
        for finding in plan.findings.iter().filter(|finding| !finding.evidence().is_empty()) {
            let key = finding.evidence();
            assert!(Job::default().set(key, Value::Absent).is_ok(), "{changes}: {finding} rests on {key}");
        }
    }
}

#[test]
fn a_hole_that_is_drilled_already_has_its_own_floor() {
    let mut job = possible("HOLE");
    change(&mut job, "drill_depth_mm=30; part_thickness_mm=32");
    let plan = planned(&job).expect("a plan");
    let floor = plan.findings.iter().find(|finding| finding.id() == FindingId::FloorThin).expect("floor-thin");
    // 30 + 3.4 cot 59 degrees.
    let needed = floor.numbers().nth(1).expect("two numbers").1;
    assert!((needed - 32.042_926_1).abs() < 1e-6, "{needed}");
    assert!(floor.severity() == Severity::Error && floor.suggestion().contains("drilled already"));
}
