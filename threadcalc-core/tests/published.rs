//! Printed values of standards through whole plans.

use threadcalc_core::{
    FindingId, Job, Length, Plan, PropertyClass, RunOut, Series, Value, Weakest, plan, run_out_mm, standard_threads,
};

fn planned(fields: &[(&str, &str)]) -> Plan {
    let usual = [
        ("unit", "mm"),
        ("mode", "per_minute"),
        ("decimals", "3"),
        ("rpm", "100"),
        ("hole", "blind"),
        ("tap", "cut"),
        ("holder", "rigid"),
        ("dialect", "rs274ngc"),
    ];
    let mut job = Job::default();
    for (key, value) in usual.iter().chain(fields) {
        job.set(key, Value::Text(value.as_bytes())).expect("a field of a job");
    }
    plan(&job).expect("a plan")
}

/// ISO 898-1, minimum ultimate tensile loads of coarse threads: nominal stress area in mm2 as printed, and
/// newtons for classes 4.6, 5.8, 8.8 and 10.9: 800 MPa up to M16 and 830 MPa
/// above in class 8.8, whose loads from M18 on are from memory.
const TENSILE_LOADS: [(&str, f64, f64, [f64; 4]); 19] = [
    ("M3", 5.03, 0.005, [2010.0, 2620.0, 4020.0, 5230.0]),
    ("M3.5", 6.78, 0.005, [2710.0, 3530.0, 5420.0, 7050.0]),
    ("M4", 8.78, 0.005, [3510.0, 4570.0, 7020.0, 9130.0]),
    ("M5", 14.2, 0.05, [5680.0, 7380.0, 11_350.0, 14_800.0]),
    ("M6", 20.1, 0.05, [8040.0, 10_400.0, 16_100.0, 20_900.0]),
    ("M7", 28.9, 0.05, [11_600.0, 15_000.0, 23_100.0, 30_100.0]),
    ("M8", 36.6, 0.05, [14_600.0, 19_000.0, 29_200.0, 38_100.0]),
    ("M10", 58.0, 0.05, [23_200.0, 30_200.0, 46_400.0, 60_300.0]),
    ("M12", 84.3, 0.05, [33_700.0, 43_800.0, 67_400.0, 87_700.0]),
    ("M14", 115.0, 0.5, [46_000.0, 59_800.0, 92_000.0, 120_000.0]),
    ("M16", 157.0, 0.5, [62_800.0, 81_600.0, 125_000.0, 163_000.0]),
    ("M18", 192.0, 0.5, [76_800.0, 99_800.0, 159_000.0, 200_000.0]),
    ("M20", 245.0, 0.5, [98_000.0, 127_000.0, 203_000.0, 255_000.0]),
    ("M22", 303.0, 0.5, [121_000.0, 158_000.0, 252_000.0, 315_000.0]),
    ("M24", 353.0, 0.5, [141_000.0, 184_000.0, 293_000.0, 367_000.0]),
    ("M27", 459.0, 0.5, [184_000.0, 239_000.0, 381_000.0, 477_000.0]),
    ("M30", 561.0, 0.5, [224_000.0, 292_000.0, 466_000.0, 583_000.0]),
    ("M33", 694.0, 0.5, [278_000.0, 361_000.0, 576_000.0, 722_000.0]),
    ("M36", 817.0, 0.5, [327_000.0, 425_000.0, 678_000.0, 850_000.0]),
];
const CLASSES: [PropertyClass; 4] = [PropertyClass::P46, PropertyClass::P58, PropertyClass::P88, PropertyClass::P109];

/// The standard rounds the area first and the load again, to three digits and now and then down: the plan's load is
/// that of the unrounded area, so it may be off by both, and by no more.
#[test]
fn the_tensile_load_of_a_plans_screw_is_that_of_iso_898_1() {
    let mut checked = 0;
    for (thread, area, half, loads) in TENSILE_LOADS {
        for (class, load) in CLASSES.into_iter().zip(loads).filter(|(_, load)| !load.is_nan()) {
            let fields = [("thread", thread), ("full_thread_depth_mm", "60"), ("part_shear_mpa", "900")];
            let joint = planned(&[&fields[..], &[("screw.property_class", class.name())]].concat()).joint.unwrap();
            assert!((joint.tensile_area_mm2 - area).abs() <= half, "{thread}: {}", joint.tensile_area_mm2);
            let digit = 10_f64.powf(load.log10().floor() - 2.0);
            let slack = half * joint.tensile_load_n / joint.tensile_area_mm2 + digit;
            let off = (joint.tensile_load_n - load).abs();
            assert!(off <= slack, "{thread} {}: {} for {load}", class.name(), joint.tensile_load_n);
            assert_eq!(joint.weakest, Weakest::Screw, "{thread} {}: long and strong", class.name());
            checked += 1;
        }
    }
    assert_eq!(checked, 19 * 4);
}

/// DIN 76-1 run-out e1 by pitch: of a hole drilled that much deeper than its thread nothing is said, of one a
/// micrometre shallower it is.
#[test]
fn the_run_out_of_din_76_1_is_just_enough() {
    const MICROMETRE: (i64, i64) = (1, 1000);
    let mut pitches = Vec::new();
    for thread in standard_threads(None, Some(Series::Coarse)) {
        let Ok(run_out) = run_out_mm(&thread, RunOut::Normal) else { continue };
        pitches.push(thread.pitch_mm().to_string());
        let depth = thread.major_mm();
        let enough = depth.plus(run_out).unwrap();
        let short = enough.minus(Length::new(MICROMETRE.0, MICROMETRE.1).unwrap()).unwrap();
        for (drilled, told) in [(enough, false), (short, true)] {
            let class = if depth.to_f64() <= 1.4 { "5H" } else { "6H" };
            let plan = planned(&[
                ("thread", &format!("{thread}-{class}")),
                ("full_thread_depth_mm", &depth.to_string()),
                ("drill_depth_mm", &drilled.to_string()),
                ("drill_mm", &thread.major_mm().minus(thread.pitch_mm()).unwrap().to_string()),
                ("chamfer_threads", "1"),
            ]);
            let said = plan.findings.iter().any(|finding| finding.id() == FindingId::RunOutShort);
            assert_eq!(said, told, "{thread} drilled to {drilled}");
        }
    }
    pitches.dedup();
    assert!(pitches.len() >= 19, "{pitches:?}");
}

/// NOT GO may enter two turns by ISO 1502 and three by ASME B1.2, as gauge makers quote both.
#[test]
fn the_plan_names_the_turns_of_its_own_standard() {
    for (thread, turns, standard) in [
        ("M3-6H", 2, "ISO 1502"),
        ("M8x1-6G", 2, "ISO 1502"),
        ("M24-7H-LH", 2, "ISO 1502"),
        ("4-40 UNC-2B", 3, "ASME B1.2"),
        ("1/4-28 UNF-3B", 3, "ASME B1.2"),
        ("1-8 UNC-2B", 3, "ASME B1.2"),
    ] {
        let plan = planned(&[("thread", thread), ("full_thread_depth_mm", "10"), ("bottom_clearance_mm", "20")]);
        let rule = plan.not_go.expect("a rule");
        assert_eq!(i32::from(rule.most_turns), turns, "{thread}");
        assert!(rule.standard.contains(standard), "{thread}: {}", rule.standard);
        assert!(plan.to_string().contains(&format!("NOT GO at most {turns} turns")), "{thread}");
    }
    let taper = planned(&[("thread", "1/4-18 NPT")]);
    assert!(taper.not_go.is_none(), "a taper gauge stands off by turns and has no NOT GO");
}

/// As tables of tapping speeds and a CNC textbook print them: asked in m/min or ft/min at the major diameter, held in
/// whole revolutions, fed at the lead.
#[test]
fn printed_speeds_and_feeds_come_through_a_plan() {
    for (thread, unit, speed, asked, held, word) in [
        // 15 m/min on 10 mm is 477.5 rpm: a tap maker's table of speeds.
        ("M10-6H", "mm", ("surface_speed_m_min", "15"), 477.5, "477", "F715.5"),
        // 50 ft/min on 1/4 in is 763.9 rpm: 12 / pi in exact form, printed as 3.82.
        ("1/4-20 UNC-2B", "inch", ("surface_speed_ft_min", "50"), 763.9, "763", "F38.15"),
        // A CNC textbook (2021, p. 201): 1/4-20 at 700 rpm is 35 in/min; 889 mm/min.
        ("1/4-20 UNC-2B", "inch", ("rpm", "700"), 700.0, "700", "F35."),
        ("1/4-20 UNC-2B", "mm", ("rpm", "700"), 700.0, "700", "F889."),
        // S100 at a pitch of 1.25 is F125: documentation of an open control.
        ("M8x1.25-6H", "mm", ("rpm", "100"), 100.0, "100", "F125."),
        // NISTIR 6556: S300 at 2 threads a millimetre is F150.
        ("M3x0.5-6H", "mm", ("rpm", "300"), 300.0, "300", "F150."),
        // 5/16-18: 25.4 / 18 = 1.4111 mm, 0.0556 in a turn.
        ("5/16-18 UNC-2B", "mm", ("rpm", "1000"), 1000.0, "1000", "F1411.111"),
        ("5/16-18 UNC-2B", "inch", ("rpm", "1000"), 1000.0, "1000", "F55.556"),
    ] {
        let mut job = Job::default();
        let fixed = [("mode", "per_minute"), ("decimals", "3"), ("hole", "blind"), ("tap", "cut")];
        let own = [("thread", thread), ("unit", unit), speed, ("full_thread_depth_mm", "8")];
        for (key, value) in fixed.iter().chain(&own) {
            job.set(key, Value::Text(value.as_bytes())).unwrap();
        }
        let plan = plan(&job).unwrap();
        assert!((plan.asked_rpm.to_f64() - asked).abs() <= 0.05, "{thread}: {}", plan.asked_rpm);
        assert_eq!((plan.programmed_rpm.to_string().as_str(), plan.feed.word()), (held, word), "{thread} {unit}");
    }
}

/// A tap maker's table of cutting forces for kc P2 D / 8000 and its worked example: M10 with 2500 N/mm2 is 7.03 Nm,
/// and at 500 rpm 0.368 kW.
#[test]
fn printed_cutting_forces_come_through_a_plan() {
    for (material, force) in [
        ("free_cutting_steel", 2300.0),
        ("structural_steel", 2500.0),
        ("tempered_steel", 2600.0),
        ("high_strength_steel", 3600.0),
        ("tool_steel", 3600.0),
        ("austenitic_stainless", 3200.0),
        ("grey_cast_iron", 1600.0),
        ("malleable_cast_iron", 1100.0),
        ("copper_alloy", 720.0),
    ] {
        let fields = [("thread", "M10-6H"), ("full_thread_depth_mm", "15"), ("material", material), ("rpm", "500")];
        let spindle = planned(&fields).spindle;
        let torque = spindle.torque.unwrap().likely_nm;
        assert!((torque - force * 2.25 * 10.0 / 8000.0).abs() < 1e-9, "{material}: {torque}");
        if material == "structural_steel" {
            assert!((torque - 7.03).abs() <= 0.005 && (spindle.power_kw.unwrap() - 0.368).abs() <= 0.0005);
        }
    }
}
