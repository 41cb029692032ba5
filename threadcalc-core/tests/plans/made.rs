//! What a plan holds, finding by finding and number by number.

use std::collections::BTreeSet;

use threadcalc_core::{
    Code, FindingId, Form, Job, Length, NumberKey, Severity, Side, TapSetOn, ThroughHoleRequest, Value,
    standard_threads, through_hole,
};

use super::plans::{asked, asked_without_depth, finding, number, planned};

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
    assert!(
        !text.contains("6.912 mm does not")
            && text.contains("6.982 mm does not")
            && text.contains("a form tap makes its own minor diameter")
    );
}

/// What is said to fit a hole that is drilled already leaves the bottom clearance, the tap's centre and the way
/// that the spindle coasts: planned on, the tap has room. Full threads by hand: drilled − clearance − chamfer −
/// centre − coasting, in mm.
#[test]
fn what_fits_a_drilled_hole_has_room_when_it_is_planned_on() {
    let hole = [("thread", "M10-6H"), ("chamfer_threads", "3")];
    let asked: [([&str; 5], f64, Option<&str>); 5] = [
        // Full thread, drilled, clearance, centre, turns; what fits, and the longest chamfer for the thread asked for.
        (["16", "20", "4.5", "0", "0"], 11.0, None),
        (["12", "20", "4.5", "0", "2"], 8.0, None),
        (["16", "20", "1.6", "0", "0"], 13.9, Some("F")),
        (["12", "18", "1.6", "0", "0.5"], 11.15, Some("E")),
        (["10", "18", "1.6", "3", "0"], 8.9, Some("E")),
    ];
    let keys = ["full_thread_depth_mm", "drill_depth_mm", "bottom_clearance_mm", "tap_centre_mm", "over_travel_turns"];
    for (values, fits, form) in asked {
        let fields: Vec<_> = keys.into_iter().zip(values).chain([("tap_set_on", "front")]).collect();
        let first: Vec<_> = hole.iter().chain(&fields).copied().collect();
        let told = finding(&planned(&first), FindingId::TapBottoms).expect("no room for chips");
        assert_eq!(number(&told, NumberKey::FullThreadMm), Some(fits), "{fields:?}");
        let suggested = told.suggestion().strip_prefix("drill deeper, or tap less deep").expect("always said");
        assert_eq!(suggested, form.map_or(String::new(), |form| format!("; chamfer form {form} fits")), "{fields:?}");
        let depth = fits.to_string();
        let shallower: Vec<_> = first.iter().copied().chain([("full_thread_depth_mm", &*depth)]).collect();
        assert!(finding(&planned(&shallower), FindingId::TapBottoms).is_none(), "{fields:?} with {depth} mm");
        if let Some(form) = form {
            let mut shorter: Vec<_> = first.iter().copied().filter(|(key, _)| *key != "chamfer_threads").collect();
            shorter.push(("chamfer_form", form));
            assert!(finding(&planned(&shorter), FindingId::TapBottoms).is_none(), "{fields:?} with form {form}");
        }
    }
}

/// A through hole of a plan whose thread is as long as its part is thick is that of `through_hole`.
#[test]
fn a_through_hole_is_the_same_planned_and_asked_alone() {
    let mm = |top, bottom| Length::new(top, bottom).unwrap();
    let plan = planned(&[
        ("thread", "M8-6H"),
        ("hole", "through"),
        ("full_thread_depth_mm", "20"),
        ("part_thickness_mm", "20"),
        ("chamfer_threads", "5.5"),
        ("over_travel_turns", "1"),
        ("drill_mm", "6.8"),
        ("point_angle_deg", "118"),
        ("bottom_clearance_mm", "1"),
        ("tap_centre_mm", "2"),
        ("tap_set_on", "centre"),
    ]);
    let request = ThroughHoleRequest {
        part_thickness_mm: mm(20, 1),
        chamfer_threads: mm(11, 2),
        over_travel_turns: Length::ONE,
        drill_mm: mm(34, 5),
        point_angle_deg: mm(118, 1),
        drill_clearance_mm: Length::ONE,
        tap_centre_mm: mm(2, 1),
        tap_set_on: TapSetOn::Centre,
    };
    let alone = through_hole(&plan.thread, &request).unwrap();
    let told = finding(&plan, FindingId::TapComesOut).expect("it comes out");
    assert_eq!(number(&told, NumberKey::BelowMm), Some(alone.tap_below_mm.to_f64()));
    assert_eq!(plan.depths.program_tap_mm, alone.program_tap_mm);
    assert_eq!(plan.depths.full_diameter_mm, alone.full_diameter_mm);
    assert_eq!(plan.depths.drill_point_mm, alone.drill_point_mm);
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

/// Every number below `value`, by its dotted path; a number may be a text.
fn numbers(value: &serde_json::Value, path: &str, found: &mut BTreeSet<String>) {
    let is_number = |text: &str| text.starts_with(|first: char| first.is_ascii_digit() || first == '-');
    match value {
        serde_json::Value::Number(_) => drop(found.insert(path.into())),
        serde_json::Value::String(text) if is_number(text) => drop(found.insert(path.into())),
        serde_json::Value::Array(items) => items.iter().for_each(|item| numbers(item, path, found)),
        serde_json::Value::Object(members) => {
            members.iter().for_each(|(key, value)| numbers(value, &format!("{path}.{key}"), found));
        }
        _ => {}
    }
}

/// Everything that a plan computes stands under one of its sources, be it a part or a part of a part.
#[test]
fn every_number_of_a_plan_has_its_source() {
    let screw =
        [("screw.property_class", "8.8"), ("part_shear_mpa", "200"), ("screw.load_n", "900"), ("coating_um", "5")];
    let more =
        [("material", "aluminium"), ("machine.gears", "20 4000 90"), ("countersink_mm", "9"), ("hole_count", "8")];
    let giving =
        [("holder", "tension_compression"), ("underfeed_percent", "2"), ("machine.axis_feed_limit_mm_min", "9000")];
    let all = [&screw[..], &more[..], &giving[..]].concat();
    let plans = [
        planned(&[&[("thread", "M8x1.25-6H")], &all[..]].concat()),
        planned(&[&[("thread", "1/4-20 UNC-2B")], &all[..]].concat()),
        planned(&[("thread", "M8x1.25-6H"), ("tap", "form")]),
        asked_without_depth(&[("thread", "1/4-18 NPT")]).expect("a plan"),
    ];
    // The job is the caller's, and what is found and said has the sources of what it speaks of.
    let said = ["schema", "job", "findings", "withheld", "not_checked", "sources", "blocks", "restore"];
    let of_feed = ["asked_rpm", "programmed_rpm", "lead_cut_mm", "axial_error_mm", "card"];
    let mut seen = BTreeSet::new();
    for plan in &plans {
        let json = serde_json::to_value(plan).expect("JSON");
        let parts: Vec<_> = plan.sources().map(|source| source.part).collect();
        for (key, value) in json.as_object().expect("an object").iter().filter(|(key, _)| !said.contains(&key.as_str()))
        {
            let mut found = BTreeSet::new();
            let part = if of_feed.contains(&key.as_str()) { "feed" } else { key.as_str() };
            numbers(value, if part == "taper" { "depths" } else { part }, &mut found);
            for path in &found {
                let is_of =
                    |part: &&str| path.strip_prefix(part).is_some_and(|rest| rest.is_empty() || rest.starts_with('.'));
                assert!(parts.iter().any(is_of), "{path} of {key} has no source");
            }
            seen.append(&mut found);
        }
        for part in parts.iter().filter(|part| !part.starts_with("job.")) {
            let held = json.pointer(&format!("/{}", part.replace('.', "/")));
            assert!(held.is_some_and(|held| !held.is_null()), "{part} is no part of this plan");
        }
        assert!(plan.sources().all(|source| !source.source.is_empty()));
    }
    for part in ["torque.", "power_kw", "gear.", "time.", "all_holes_s", "axis.", "holder_travel."] {
        assert!(seen.iter().any(|path| path.starts_with(&format!("spindle.{part}"))), "no plan here has {part}");
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

/// What is refused leaves the job as it is: of a list, nothing of it is kept.
#[test]
fn a_refused_value_leaves_the_job_as_it_is() {
    let refused = [
        ("drill_list", "6.8,,7"),
        ("drill_sets", "metric feet"),
        ("screw.tensile_mpa", "steel"),
        ("dialect.tap_rh", "84"),
        ("machine.gears", "20 600"),
    ];
    for (key, value) in refused {
        let mut job = Job::default();
        assert!(job.set(key, Value::Text(value.as_bytes())).is_err(), "{key}: {value}");
        assert_eq!(job, Job::default(), "{key}: {value}");
    }
}
