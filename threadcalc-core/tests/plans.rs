//! Whole plans, line by line and finding by finding.

use threadcalc_core::{
    Code, Error, Finding, FindingId, Form, Job, Plan, Severity, Side, Value, plan, standard_threads,
};

fn planned(fields: &[(&str, &str)]) -> Plan {
    asked(fields).expect("a plan")
}

fn asked(fields: &[(&str, &str)]) -> Result<Plan, Error> {
    let mut job = Job::default();
    let usual = [("unit", "mm"), ("mode", "per_minute"), ("decimals", "3"), ("rpm", "600"), ("hole", "blind")];
    let rest = [("full_thread_depth_mm", "12"), ("tap", "cut"), ("dialect", "rs274ngc")];
    for (key, value) in usual.iter().chain(&rest).chain(fields) {
        job.set(key, Value::Text(value.as_bytes())).expect("a field of a job");
    }
    plan(&job)
}

fn finding(plan: &Plan, id: FindingId) -> Option<Finding> {
    plan.findings.iter().find(|finding| finding.id() == id).copied()
}

/// A left-hand hole on an inch machine, worked by hand: limits ISO 965-1, percents 1.299 P, chamfer
/// form C of DIN 2197; the rest common practice.
#[test]
fn the_left_hand_hole_of_the_worked_example() {
    let plan = planned(&[
        ("thread", "M10x1-6H-LH"),
        ("unit", "inch"),
        ("decimals", "4"),
        ("rpm", "480"),
        ("full_thread_depth_mm", "18"),
        ("drill_sets", "metric letter fractional"),
        ("dialect.tap_lh", "G74"),
        ("dialect.needs_spindle_running", "false"),
    ]);
    let blocks: Vec<String> = plan.cycle.blocks().map(|line| line.to_string()).collect();
    assert_eq!(blocks, ["G17 G20 G90 G94", "S480", "G99 G74 Z-0.8268 R0.2 F18.8976", "G80"]);
    assert_eq!(plan.cycle.restore().collect::<Vec<_>>(), ["G94", "F", "M3"]);
    let text = plan.to_string();
    for line in [
        "M10x1-6H-LH   LEFT HAND   blind, 18 mm full thread   INCH machine",
        "minor dia 8.917 to 9.153 mm",
        "9.000 mm (0.3543 in)   77.0 % of 1.299P = 92.4 % of 1.0825P",
        "T = 9.093 mm (0.3580 in)         69.8 %  in limits, 0.060 mm left",
        "S480 = 15.1 m/min = 49 ft/min",
        "480 x 1 / 25.4 = 18.897638",
        "lead cut 0.999998 mm, error -0.0002 %, under 0.0001 mm in 18 mm",
        "S240 F9.4488           S360 F14.1732          S381 F15. exact",
        "S480 F18.8976*         S508 F20. exact",
        "21.000   0.8268   Z-0.8268",
        "24.000   0.9449",
        "26.704   1.0513   Z-1.0514",
        "R plane 5.080 mm (0.2000 in) = 5.1 turns above the face",
        "plain pin 8.917 mm enters, 9.153 mm does not",
        "its shank must say LH",
    ] {
        let words = |text: &str| text.split_whitespace().collect::<Vec<_>>().join(" ");
        assert!(words(&text).contains(&words(line)), "{line:?} is not in\n{text}");
    }
}

#[test]
fn the_card_of_a_fractional_speed_has_the_exact_speed_just_below() {
    let plan = planned(&[("thread", "M8x1.25-6H"), ("rpm", "650.5"), ("machine.speed_step", "0.5"), ("decimals", "0")]);
    let exact: Vec<String> = plan.card().filter(|row| row.exact).map(|row| row.rpm.to_string()).collect();
    assert!(exact.contains(&String::from("648")), "{exact:?}");
    let plan = planned(&[("thread", "M8x1.25-6H"), ("rpm", "648.5"), ("machine.speed_step", "0.5"), ("decimals", "0")]);
    let exact: Vec<String> = plan.card().filter(|row| row.exact).map(|row| row.rpm.to_string()).collect();
    assert!(exact.contains(&String::from("648")), "{exact:?}");
}

#[test]
fn a_speed_that_the_machine_cuts_is_a_warning_and_a_step_is_not() {
    let cut = planned(&[("thread", "M8x1.25-6H"), ("rpm", "3000"), ("machine.highest_rpm", "2000")]);
    let cut = finding(&cut, FindingId::SpeedRounded).expect("speed-rounded");
    assert_eq!(cut.severity(), Severity::Warning);
    let step = planned(&[("thread", "M8x1.25-6H"), ("rpm", "600.4")]);
    let step = finding(&step, FindingId::SpeedRounded).expect("speed-rounded");
    assert_eq!(step.severity(), Severity::Info);
}

#[test]
fn no_speed_mends_a_feed_per_revolution() {
    let fields = [("thread", "M8x1.25-6H"), ("unit", "inch"), ("mode", "per_revolution"), ("decimals", "2")];
    let rounded = finding(&planned(&fields), FindingId::FeedRounded).expect("feed-rounded");
    assert_eq!((rounded.severity(), rounded.suggestion()), (Severity::Error, "more decimals"));
}

#[test]
fn a_dialect_without_a_name_is_the_control() {
    let plan = planned(&[("thread", "M8x1.25-6H-LH"), ("dialect", "unset"), ("dialect.tap_rh", "G84")]);
    let lacks = finding(&plan, FindingId::CodeNotOnControl).expect("code-not-on-control");
    assert_eq!(lacks.suggestion(), "it has no left-hand tapping cycle");
}

#[test]
fn a_formed_hole_is_not_gauged_by_the_cut_threads_limits() {
    let text = planned(&[("thread", "M8x1.25-6H"), ("tap", "form")]).to_string();
    assert!(!text.contains("plain pin") && text.contains("a form tap makes its own minor diameter"));
}

#[test]
fn a_suggestion_wider_than_a_line_wraps() {
    let text = planned(&[("thread", "1/8-27 NPSC"), ("percent", "90")]).to_string();
    let wide: Vec<_> = text.lines().filter(|line| line.chars().count() > 80).collect();
    assert!(wide.is_empty(), "{wide:?}");
    let words = text.split_whitespace().collect::<Vec<_>>().join(" ");
    assert!(words.contains("pipe-family (straight, for couplings: not NPT (taper), NPSM or NPSF;"), "{text}");
}

/// The tap of the worked example goes 12.36 turns deep for basic size; the first hole one less.
#[test]
fn the_taper_hole_of_the_worked_example() {
    let plan = asked_without_depth(&[("thread", "1/4-18 NPT"), ("rpm", "200"), ("drill_mm", "11.1")]).expect("a plan");
    let text = plan.to_string();
    for line in [
        "hand tight, 4.10 turns                       5.786   0.2278",
        "+ tap through its ring = BASIC, 12.36 turns 17.445   0.6868",
        "FIRST HOLE, one turn shallow                16.034   0.6312   Z-16.033",
        "+ trim and chips = DRILL FULL DIA           21.678   0.8535",
        "+ point 118 deg = DRILL POINT               25.013   0.9848",
        "mm per minute (G94): F282.222",
        "1 turn either way (0.088 mm on diameter a turn)",
    ] {
        assert!(text.contains(line), "{line}\n{text}");
    }
    let exact: Vec<_> = plan.card().filter(|row| row.exact).map(|row| row.feed.word().to_owned()).collect();
    assert_eq!(exact, ["F279.4", "F292.1"]);
}

fn asked_without_depth(fields: &[(&str, &str)]) -> Result<Plan, Error> {
    let mut job = Job::default();
    let usual = [("unit", "mm"), ("mode", "per_minute"), ("decimals", "3"), ("rpm", "600"), ("hole", "blind")];
    for (key, value) in usual.iter().chain(&[("tap", "cut"), ("dialect", "rs274ngc")]).chain(fields) {
        job.set(key, Value::Text(value.as_bytes())).expect("a field of a job");
    }
    plan(&job)
}

#[test]
fn every_pipe_thread_that_is_tapped_has_a_plan() {
    for thread in standard_threads(None, None).filter(|thread| thread.form().is_pipe()) {
        let text = thread.to_string();
        let made = if thread.form().is_taper() {
            asked_without_depth(&[("thread", text.as_str()), ("projection_mm", "12")])
        } else {
            let straight_national = matches!(thread.form(), Form::Npsc | Form::Npsm | Form::Npsf);
            let percent: &[_] = if straight_national { &[("percent", "90")] } else { &[] };
            asked(&[&[("thread", text.as_str())], percent].concat())
        };
        match made {
            Ok(plan) => {
                assert_eq!((plan.drill.basis, plan.thread.side()), (None, Some(Side::Internal)), "{thread}");
                assert_eq!(plan.taper.is_some(), thread.form().is_taper(), "{thread}");
            }
            // An external thread has no tap drill, and a dryseal one no height of its own.
            Err(error) if thread.form() == Form::R => assert_eq!(error.code(), Code::Contradiction, "{thread}"),
            Err(error) if thread.form() == Form::Npsf => assert_eq!(error.code(), Code::NotSourced, "{thread}"),
            // Whole millimetres above 51 mm miss some limits, and the inch sets end at 3 1/2 in.
            Err(error) => {
                let none = error.code() == Code::NoDrill && thread.major_mm().to_f64() > 51.0;
                assert!(none, "{thread}: {error}");
            }
        }
    }
}

/// Everything that a plan computes stands under one of its sources.
#[test]
fn every_number_of_a_plan_has_its_source() {
    let screw = [("screw.property_class", "8.8"), ("part_shear_mpa", "200"), ("coating_um", "5")];
    let more = [("material", "aluminium"), ("machine.gears", "20 4000 90"), ("countersink_mm", "9")];
    let plan = planned(&[&[("thread", "M8x1.25-6H")], &screw[..], &more[..]].concat());
    let taper = asked_without_depth(&[("thread", "1/4-18 NPT")]).expect("a plan");
    // The job is the caller's, and what is found and said has the sources of what it speaks of.
    let said = ["schema", "job", "findings", "withheld", "not_checked", "sources", "blocks", "restore"];
    let of_feed = ["asked_rpm", "programmed_rpm", "lead_cut_mm", "axial_error_mm", "card"];
    for plan in [plan, taper] {
        let json = serde_json::to_value(plan).expect("JSON");
        let parts: Vec<_> = plan.sources().map(|source| source.part).collect();
        for (key, value) in json.as_object().expect("an object") {
            let key = if of_feed.contains(&key.as_str()) { "feed" } else { key.as_str() };
            let key = if key == "taper" { "depths" } else { key };
            let sourced = parts.iter().any(|part| part.split('.').next() == Some(key));
            assert!(value.is_null() || said.contains(&key) || sourced, "{key} has no source");
        }
        assert!(plan.sources().all(|source| !source.source.is_empty()));
    }
}

#[test]
fn what_is_given_is_no_longer_unchecked() {
    let bare: Vec<_> = planned(&[("thread", "M8")]).not_checked().collect();
    let given = [("part_thickness_mm", "40"), ("tap_mark", "M8 6H"), ("machine.acceleration_rpm_s", "3000")];
    let told: Vec<_> = planned(&[&[("thread", "M8")], &given[..]].concat()).not_checked().collect();
    assert!(bare.contains(&"part thickness") && bare.contains(&"clamps"));
    assert!(!told.contains(&"part thickness") && told.contains(&"clamps") && told.len() + 3 == bare.len());
}
