//! The printed page of a plan, line by line.

use threadcalc_core::standard_threads;

use super::plans::{asked, asked_without_depth, planned, words_of};

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
        "M10x1-6H-LH   LEFT HAND   INCH machine   blind, 18 mm full thread",
        "minor dia 8.917 to 9.153 mm",
        "9.000 mm (0.3543 in)   77.0 % of 1.299P = 92.4 % of 1.0825P",
        "as drills cut: 9.000 + 0.075 = 9.075 mm, 71.2 %, 0.078 mm left: OK",
        "T = 9.093 mm (0.3580 in)         69.8 %  0.060 mm left: too little",
        "S480 = 15.1 m/min = 49 ft/min",
        "480 x 1 / 25.4 = 18.897638 in/min",
        "lead cut 0.999998 mm, error -0.0002 %, under 0.0001 mm in 18 mm",
        "S240 F9.4488           S360 F14.1732          S381 F15. exact",
        "S480 F18.8976*         S508 F20. exact",
        "21.000   0.8268   Z-0.8268",
        "24.000   0.9449",
        "26.704   1.0513   Z-1.0514",
        "R plane above the face, 5.1 turns 5.080 0.2000 R0.2000",
        "plain pin 8.917 mm (0.3511 in) enters, 9.153 mm (0.3604 in) does not",
        "its shank must say LH",
    ] {
        let words = |text: &str| text.split_whitespace().collect::<Vec<_>>().join(" ");
        assert!(words(&text).contains(&words(line)), "{line:?} is not in\n{text}");
    }
}

/// 1/4-20 UNC-2B: ASME B1.1 prints 0.2175 to 0.2224 and 0.196 to 0.207.
#[test]
fn pitch_diameters_in_inches_have_four_decimals_and_stand_first() {
    let text = words_of(&planned(&[("thread", "1/4-20 UNC-2B"), ("unit", "inch"), ("decimals", "4")]));
    assert!(text.contains("pitch dia 0.2175 to 0.2224 in (5.524 to 5.649 mm)"), "{text}");
    assert!(text.contains("minor dia 0.196 to 0.207 in (4.978 to 5.258 mm)"), "{text}");
}

/// What the page says of Z and R is what the cycle says, whatever decimals the control's axes have.
#[test]
fn the_pages_depths_have_the_decimals_of_the_dialect() {
    let text = words_of(&planned(&[
        ("thread", "M8x1.25-6H"),
        ("full_thread_depth_mm", "16.013"),
        ("dialect.axis_decimals_mm", "1"),
    ]));
    assert!(text.contains("G84 Z-19.8 R5. F750."), "{text}");
    assert!(text.contains("= TAP 19.763 0.7781 Z-19.8"), "{text}");
}

#[test]
fn the_page_looks_where_the_tap_returns_to() {
    let up = words_of(&planned(&[("thread", "M8x1.25-6H"), ("return_to", "initial")]));
    assert!(up.contains("G98 G84") && up.contains("3 The cycle returns to the height it began at"), "{up}");
    let near = words_of(&planned(&[("thread", "M8x1.25-6H")]));
    assert!(near.contains("G99 G84") && near.contains("3 The tap stops at R"), "{near}");
}

/// The feed mode's code is that of the control, not G94.
#[test]
fn the_page_names_the_controls_own_feed_code() {
    let text = words_of(&planned(&[
        ("thread", "M8x1.25-6H"),
        ("dialect.feed_per_minute", "G98"),
        ("dialect.return_r_plane", "none"),
        ("dialect.return_initial", "none"),
    ]));
    assert!(text.contains("mm per minute (G98): F750."), "{text}");
}

#[test]
fn a_plan_that_is_withheld_says_stop_before_any_number() {
    let plan = planned(&[("thread", "M10-6H"), ("full_thread_depth_mm", "16"), ("drill_depth_mm", "20")]);
    let text = plan.to_string();
    let second = text.lines().nth(1).unwrap_or_default();
    assert_eq!(second, " STOP     no cycle words, do not cut (see Findings): tap-bottoms");
    // A hole that is drilled already is not drilled again.
    assert!(!text.contains("DRILL POINT") && words_of(&plan).contains("DRILLED ALREADY, FULL DIA 20.000"), "{text}");
}

/// The gear by its place, its range and whether a worn tap, at twice the torque, still turns.
#[test]
fn the_page_says_which_gear_to_use() {
    // M20: kc 2500 x 2.5 squared x 20 / 8000 = 39.0625 Nm, 58.6 at the most, 78.1 worn.
    let fields =
        [("thread", "M20-6H"), ("rpm", "150"), ("full_thread_depth_mm", "30"), ("material", "structural_steel")];
    let text = words_of(&planned(
        &[&fields[..], &[("machine.gears", "100 4000 20"), ("machine.gears", "20 500 70")]].concat(),
    ));
    assert!(
        text.contains("gear 2 of 2, 20 to 500 rpm: 70 Nm there, enough for a new tap, NOT for a worn one"),
        "{text}"
    );
    let none = words_of(&planned(&[&fields[..], &[("machine.gears", "200 4000 20")]].concat()));
    assert!(none.contains("NO GEAR of this spindle runs S150"), "{none}");
}

/// 24.75 mm from R: strokes of 10, 20 and 24.75 mm are 43.8 turns at 10 a second. The words of a control without
/// pecks are withheld, the time stands.
#[test]
fn the_page_counts_the_strokes_of_pecks() {
    let hole = [("thread", "M8x1.25-6H"), ("full_thread_depth_mm", "16"), ("chamfer_threads", "3")];
    let more = [("r_plane_mm", "5"), ("holder", "rigid"), ("dwell_s", "0.5"), ("hole_count", "100")];
    let fields = [&hole[..], &more].concat();
    let (plain, pecked) = (planned(&fields), planned(&[&fields[..], &[("peck_mm", "10")]].concat()));
    assert!(words_of(&plain).contains("19.8 turns from R to the bottom: at least 2.0 s in + 2.0 s out"));
    let text = words_of(&pecked);
    assert!(
        text.contains("19.8 turns from R to the bottom, 3 strokes, each from R: at least 4.4 s in + 4.4 s out"),
        "{text}"
    );
    assert_eq!((plain.spindle.time.strokes, pecked.spindle.time.strokes), (1, 3));
    let all = pecked.spindle.all_holes_s.unwrap();
    assert!((all - 100.0 * (4.38 + 3.0 * 0.5 + 4.38)).abs() < 1e-9, "{all}");
}

/// A drill below the smallest minor diameter is not OK because oversize has room above it.
#[test]
fn a_drill_under_the_minimum_is_never_ok() {
    // M30 6H: minor diameter 26.211 to 26.771 (ISO 965-2).
    let text = words_of(&planned(&[("thread", "M30-6H"), ("drill_mm", "26")]));
    assert!(text.contains("= 26.075 mm, 86.3 %, still UNDER minimum"), "{text}");
    assert!(!text.contains("left: OK") && !text.contains("left to the largest"), "{text}");
}

/// ISO 7-1: the gauge of Rc 1/2 may stand off by 1 1/4 turns = 2.268 mm.
#[test]
fn what_the_taper_gauge_allows_is_its_turns_in_millimetres() {
    let plan = asked_without_depth(&[("thread", "Rc1/2"), ("projection_mm", "9.5")]).expect("a plan");
    assert!(words_of(&plan).contains("flush, 1.25 turns (2.27 mm) either way"), "{plan}");
}

/// Every page keeps to 80 columns and has neither an empty value nor a number that is none.
#[test]
fn no_page_has_an_empty_value() {
    let more: [&[(&str, &str)]; 5] = [
        &[],
        &[("tap", "form"), ("material", "aluminium"), ("hole", "through"), ("hole_count", "12")],
        &[("unit", "inch"), ("decimals", "4"), ("mode", "per_revolution"), ("dialect", "unset"), ("coating_um", "5")],
        &[("material", "copper_alloy"), ("machine.gears", "50 2000 0.5"), ("machine.acceleration_rpm_s", "900")],
        &[
            ("holder", "tension_compression"),
            ("underfeed_percent", "3"),
            ("over_travel_turns", "0.5"),
            ("oversize_mm", "0"),
        ],
    ];
    let mut pages = 0;
    for thread in standard_threads(None, None) {
        let text = thread.to_string();
        for fields in more {
            let fields = [&[("thread", text.as_str())], fields].concat();
            let made = if thread.form().is_taper() { asked_without_depth(&fields) } else { asked(&fields) };
            let Ok(plan) = made else { continue };
            pages += 1;
            let page = plan.to_string();
            for line in page.lines() {
                let poor = ["NaN", "?", "inf ", " mm,  ", "Z- ", "= mm", "( in)", "()", ": ;", ",,", ";;"];
                let found = poor.iter().find(|poor| line.contains(*poor));
                assert!(found.is_none() && !line.trim().is_empty() && !line.ends_with("Z-"), "{line:?} in\n{page}");
                assert!(line.len() <= 80, "{line:?} in\n{page}");
            }
        }
    }
    assert!(pages > 1000, "{pages}");
}

#[test]
fn a_suggestion_wider_than_a_line_wraps() {
    let text = planned(&[("thread", "1/8-27 NPSC"), ("percent", "90")]).to_string();
    let wide: Vec<_> = text.lines().filter(|line| line.chars().count() > 80).collect();
    assert!(wide.is_empty(), "{wide:?}");
    let words = text.split_whitespace().collect::<Vec<_>>().join(" ");
    assert!(words.contains("pipe-family: straight, for couplings: not NPT (taper), NPSM or NPSF;"), "{text}");
}

/// The tap of the worked example goes 12.36 turns deep for basic size; the first hole one less.
#[test]
fn the_taper_hole_of_the_worked_example() {
    let plan = asked_without_depth(&[("thread", "1/4-18 NPT"), ("rpm", "200"), ("drill_mm", "11.1")]).expect("a plan");
    let text = words_of(&plan);
    for line in [
        "hand tight, 4.10 turns                       5.786   0.2278",
        "+ tap through its ring = BASIC, 12.36 turns 17.445   0.6868",
        "FIRST HOLE, one turn shallow                16.034   0.6312   Z-16.033",
        "+ trim and chips = DRILL FULL DIA           21.678   0.8535",
        "+ point 118 deg = DRILL POINT               25.013   0.9848",
        "mm per minute (G94): F282.222",
        "1 turn (1.41 mm) either way",
        "pitch dia 12.487 mm at the face, gauged flush",
        "SIZE IS DEPTH: one turn deeper (1.411 mm) is 0.088 mm larger",
    ] {
        let line = line.split_whitespace().collect::<Vec<_>>().join(" ");
        assert!(text.contains(&line), "{line}\n{text}");
    }
    let exact: Vec<_> = plan.card().filter(|row| row.exact).map(|row| row.feed.word().to_owned()).collect();
    assert_eq!(exact, ["F279.4", "F292.1"]);
}
