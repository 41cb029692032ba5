//! The two worked pages of a machinist, number for number, as they were written down by hand.
//!
//! Source: common practice; limits of ISO 965-1 and lengths of ASME B1.20.1 and B94.9 as the pages quote them.

use threadcalc_core::{
    Alternative, Basis, Drill, FindingId, IsoTapClass, Job, Length, NumberKey, Plan, Tap, Unit, Value, WithinLimits,
    exact_speeds, judge_drill, percent_thread, plan, surface_speed_m_min,
};

const INCH: f64 = 25.4;

fn planned(fields: &[(&str, &str)]) -> Plan {
    let mut job = Job::default();
    for (key, value) in fields {
        job.set(key, Value::Text(value.as_bytes())).expect("a field of a job");
    }
    plan(&job).expect("a plan")
}

/// A number as the page prints it: within half a unit of its last digit.
#[track_caller]
fn prints(value: f64, printed: &str) {
    let decimals = printed.split_once('.').map_or(0, |(_, digits)| digits.len());
    let want: f64 = printed.parse().expect("a number");
    let half = 0.5 * 0.1_f64.powi(i32::try_from(decimals).unwrap()) * (1.0 + 1e-9);
    assert!((value - want).abs() <= half, "{value} does not print {printed}");
}

#[track_caller]
fn exactly(value: Option<Length>, printed: &str) {
    assert_eq!(value.map(|value| value.to_string()).as_deref(), Some(printed));
}

/// The pairs of the card: speed, word, and whether the word is exact.
fn card(plan: &Plan) -> Vec<(String, String, bool)> {
    plan.card().map(|row| (row.rpm.to_string(), row.feed.word().to_owned(), row.exact)).collect()
}

fn judged(plan: &Plan, name: &str) -> Alternative {
    let drill = Drill::read(name.as_bytes()).unwrap();
    judge_drill(&plan.thread, drill, Tap::Cut, Some(Basis::ThreeQuartersH), None).unwrap().chosen
}

fn left_hand_in_inches() -> Plan {
    planned(&[
        ("thread", "M10x1-6H-LH"),
        ("unit", "inch"),
        ("mode", "per_minute"),
        ("decimals", "4"),
        ("rpm", "480"),
        ("hole", "blind"),
        ("full_thread_depth_mm", "18"),
        ("tap", "cut"),
        ("tap_kind", "spiral_flute"),
        ("holder", "rigid"),
        ("material", "aluminium"),
        ("drill_sets", "metric letter fractional"),
        ("dialect.name", "mill-3"),
        ("dialect.tap_lh", "G74"),
    ])
}

#[test]
fn the_left_hand_page_thread_drill_and_tap() {
    let plan = left_hand_in_inches();
    let (thread, limits) = (plan.thread, plan.limits.expect("limits"));
    exactly(Some(thread.major_mm()), "10");
    exactly(Some(thread.pitch_mm()), "1");
    prints(thread.lead_mm().to_f64(), "1.000");
    prints(thread.lead_mm().to_f64() / INCH, "0.03937");
    assert_eq!((thread.starts(), thread.series().map(|series| series.name())), (1, Some("fine")));
    exactly(limits.pitch_diameter_mm.0, "9.35");
    exactly(limits.pitch_diameter_mm.1, "9.5");
    exactly(limits.minor_mm.0, "8.917");
    exactly(limits.minor_mm.1, "9.153");

    let chosen = plan.drill.chosen;
    exactly(Some(chosen.drill.diameter_mm()), "9");
    prints(chosen.drill.diameter_mm().to_f64() / INCH, "0.3543");
    prints(chosen.percent, "77.0");
    let flanks = percent_thread(&thread, chosen.drill.diameter_mm(), Tap::Cut, Some(Basis::FiveEighthsH)).unwrap();
    prints(flanks, "92.4");
    assert_eq!(chosen.within_limits, WithinLimits::Yes);
    let probable = plan.drill.probable.expect("a probable hole");
    exactly(Some(probable.hole_mm), "9.075");
    assert!(probable.left_to_limit_mm.is_some_and(|left| !left.is_negative()), "9.075 OK");
    for (name, inch, percent, left) in [("T", "0.3580", "69.8", "0.060"), ("23/64", "0.3594", "67.1", "0.025")] {
        let drill = judged(&plan, name);
        prints(drill.drill.diameter_mm().to_f64() / INCH, inch);
        prints(drill.percent, percent);
        prints(drill.left_to_limit_mm.unwrap().to_f64(), left);
    }
    let small = judged(&plan, "S");
    prints(small.drill.diameter_mm().to_f64(), "8.839");
    prints(small.drill.diameter_mm().to_f64() / INCH, "0.3480");
    assert_eq!(small.within_limits, WithinLimits::No, "S is under minimum");

    assert_eq!(plan.tap_class.and_then(|tap| tap.class), Some(IsoTapClass::Class2));
    exactly(plan.job.chamfer_threads, "3");
}

#[test]
fn the_left_hand_page_speed_and_feed() {
    let plan = left_hand_in_inches();
    let surface = surface_speed_m_min(plan.thread.major_mm(), plan.programmed_rpm).unwrap();
    prints(surface, "15.1");
    prints(surface / 0.3048, "49");
    let torque = plan.spindle.torque.expect("a torque");
    prints(torque.likely_nm, "0.9");
    prints(torque.low_nm, "0.4");
    prints(torque.high_nm, "1.3");
    let assumed = plan.findings.iter().find(|finding| finding.id() == FindingId::CuttingForceAssumed).unwrap();
    assert_eq!(assumed.numbers().collect::<Vec<_>>(), [(NumberKey::CuttingForce, 700.0)]);
    assert_eq!(assumed.suggestion(), "from memory of the trade");

    assert_eq!((plan.feed.word(), plan.job.unit), ("F18.8976", Some(Unit::Inch)));
    prints(plan.thread.lead_mm().to_f64() * plan.programmed_rpm.to_f64() / INCH, "18.89764");
    prints(plan.lead_cut_mm.to_f64(), "0.999998");
    prints(plan.lead_error.to_f64() * 100.0, "-0.0002");
    assert!(plan.axial_error_mm.magnitude().to_f64() < 0.0001);
    let wanted = [
        ("240", "F9.4488", false),
        ("360", "F14.1732", false),
        ("381", "F15.", true),
        ("480", "F18.8976", false),
        ("508", "F20.", true),
    ];
    assert_eq!(card(&plan), wanted.map(|(rpm, word, exact)| (rpm.into(), word.into(), exact)));
}

#[test]
fn the_left_hand_page_depths_cycle_and_gauges() {
    let plan = left_hand_in_inches();
    let (depths, job) = (plan.depths, plan.job);
    exactly(job.full_thread_depth_mm, "18");
    prints(18.0 / INCH, "0.7087");
    exactly(Some(depths.tap_mm), "21");
    prints(depths.tap_mm.to_f64() / INCH, "0.8268");
    exactly(Some(depths.full_diameter_mm), "24");
    prints(depths.full_diameter_mm.to_f64() / INCH, "0.9449");
    prints(depths.drill_point_mm, "26.704");
    prints(depths.drill_point_mm / INCH, "1.0513");
    exactly(job.point_angle_deg, "118");
    exactly(job.bottom_clearance_mm, "3");
    let r_plane = job.r_plane_mm.unwrap().to_f64();
    prints(r_plane, "5.08");
    prints(r_plane / INCH, "0.2");
    prints(r_plane / plan.thread.lead_mm().to_f64(), "5.1");
    prints(plan.spindle.time.turns, "26.1");
    prints(plan.spindle.time.time_in_s, "3.3");
    prints(plan.spindle.time.time_out_s, "3.3");

    let blocks: Vec<String> = plan.cycle.blocks().map(|line| line.to_string()).collect();
    let tapping = blocks.iter().find(|line| line.contains("G74")).expect("a left-hand cycle");
    assert_eq!(tapping, "G99 G74 Z-0.8268 R0.2 F18.8976");
    assert!(plan.cycle.words().any(|word| word == "S480") && blocks.last().is_some_and(|line| line == "G80"));
    // Deeper for the drill: 26.704 mm is 1.05134 in.
    assert!(plan.to_string().contains("Z-1.0514"));
    assert_eq!(plan.cycle.restore().collect::<Vec<_>>(), ["G94", "F", "M3"]);

    prints(18.0 / plan.thread.pitch_mm().to_f64(), "18");
    let not_go = plan.not_go.expect("a rule");
    assert!(not_go.most_turns == 2 && not_go.standard.contains("ISO 1502"));
    assert!(plan.to_string().contains("plain pin 8.917 mm (0.3511 in) enters, 9.153 mm (0.3604 in) does not"));
    assert!(plan.to_string().contains("LEFT-HAND gauges, turn anticlockwise"));
}

fn taper_in_millimetres() -> Plan {
    planned(&[
        ("thread", "1/4-18 NPT"),
        ("unit", "mm"),
        ("mode", "per_minute"),
        ("decimals", "3"),
        ("rpm", "200"),
        ("hole", "blind"),
        ("tap", "cut"),
        ("holder", "rigid"),
        ("drill_mm", "11.1"),
        ("dialect", "rs274ngc"),
    ])
}

#[test]
fn the_taper_page_thread_drill_and_feed() {
    let plan = taper_in_millimetres();
    let pipe = plan.thread.pipe().unwrap();
    prints(plan.thread.lead_mm().to_f64(), "1.411111");
    exactly(Some(plan.thread.major_mm()), "13.716");
    prints(pipe.pitch_diameter_gauge_plane_mm.unwrap().to_f64(), "12.487");
    prints(Drill::read(b"7/16").unwrap().diameter_mm().to_f64(), "11.113");
    exactly(Some(plan.drill.chosen.drill.diameter_mm()), "11.1");
    assert!(plan.drill.chosen.percent.is_nan(), "percent of thread is not for tapers");
    let full = plan.findings.iter().find(|finding| finding.id() == FindingId::TaperHole).unwrap();
    prints(full.numbers().next().unwrap().1, "5.8");
    assert_eq!(plan.feed.word(), "F282.222");
    prints(plan.thread.lead_mm().to_f64() * plan.programmed_rpm.to_f64(), "282.2222");
    prints(plan.lead_error.to_f64() * 100.0, "-0.00008");
    let exact: Vec<_> = card(&plan).into_iter().filter(|row| row.2).map(|(rpm, word, _)| (rpm, word)).collect();
    assert_eq!(exact, [("198", "F279.4"), ("207", "F292.1")].map(|(rpm, word)| (rpm.into(), word.into())));
    // The page's third exact speed lies further off than the card shows.
    let more = exact_speeds(plan.thread.lead_mm(), plan.programmed_rpm, Unit::Mm, 3, 6, 1, None).unwrap();
    let more: Vec<i64> = more.collect();
    assert!([180, 198, 207].iter().all(|rpm| more.contains(rpm)), "{more:?}");
    prints(plan.thread.lead_mm().to_f64() * 180.0, "254");
}

#[test]
fn the_taper_page_depths_and_gauge() {
    let plan = taper_in_millimetres();
    let taper = plan.taper.expect("depths of a taper thread");
    let inches = |mm: f64| mm / INCH;
    prints(taper.hand_tight_mm.to_f64(), "5.786");
    prints(inches(taper.hand_tight_mm.to_f64()), "0.2278");
    prints(taper.hand_tight_turns.to_f64(), "4.10");
    prints(inches(taper.projection_mm.to_f64()), "0.459");
    prints(inches(taper.projection_tolerance_mm.unwrap().to_f64()), "0.0625");
    prints(taper.tap_mm.to_f64(), "17.445");
    prints(inches(taper.tap_mm.to_f64()), "0.6868");
    prints(taper.tap_turns.to_f64(), "12.36");
    // The page prints 16.033, rounded twice by way of 0.6312 in: 0.6868 in less one turn is 16.0336 mm.
    prints(taper.first_hole_mm.to_f64(), "16.034");
    prints(inches(taper.first_hole_mm.to_f64()), "0.6312");
    prints(taper.tap_turns.to_f64() - 1.0, "11.36");
    exactly(Some(plan.depths.program_tap_mm), "16.033");
    prints(taper.full_diameter_mm.to_f64(), "21.678");
    prints(inches(taper.full_diameter_mm.to_f64()), "0.8535");
    prints(taper.drill_point_mm, "25.013");
    prints(inches(taper.drill_point_mm), "0.9848");
    prints(taper.diameter_per_turn_mm.to_f64(), "0.088");
    prints(plan.thread.pitch_mm().to_f64(), "1.41");
    exactly(Some(taper.gauge_tolerance_turns), "1");
    let text = plan.to_string();
    assert!(text.contains("taper plug, hand tight, notch to face: flush") && text.contains("19 TPI, 55 deg"));
}
