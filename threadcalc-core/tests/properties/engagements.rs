//! What a fit carries: longer carries more, the required length is enough, the weakest is the least.

use proptest::prelude::*;
use threadcalc_core::{
    Code, Engagement, EngagementRequest, Error, Form, Job, Length, PropertyClass, Thread, Value, Weakest, engagement,
    plan,
};

use crate::values::{config, parts, thread};

/// Hole and screw of a thread, of coarse or fine classes; `None` for pipe threads.
fn fit(thread: &Thread, fine: bool) -> Option<(Thread, Thread)> {
    let (inside, outside) = match (thread.form(), fine) {
        (Form::Metric, true) => ("4H", "4h"),
        (Form::Metric, false) => ("7H", "8g"),
        (Form::Unified, true) => ("3B", "3A"),
        (Form::Unified, false) => ("1B", "1A"),
        _ => return None,
    };
    // The hole of a wire insert has no screw of its own.
    let of = |class: &str| thread.with_class(class.as_bytes()).ok().filter(|_| !thread.is_wire_insert());
    Some((of(inside)?, of(outside)?))
}

fn request(length_mm: Length, strengths: [f64; 3]) -> EngagementRequest {
    let [internal_shear_mpa, external_shear_mpa, external_tensile_mpa] = strengths;
    EngagementRequest {
        length_mm,
        without_full_thread_mm: Length::ZERO,
        internal_shear_mpa,
        external_shear_mpa,
        external_tensile_mpa,
        drilled_mm: None,
        load_n: None,
    }
}

fn loads(found: &Engagement) -> [f64; 3] {
    [found.tensile_load_n, found.external_strip_load_n, found.internal_strip_load_n]
}

/// Equal but for the rounding of a few operations.
fn same(a: f64, b: f64) -> bool {
    (a - b).abs() <= 1e-12 * a.abs().max(b.abs())
}

/// The joint of a plan: hole as drilled, length of engagement; the full thread is 20 mm deep.
fn planned_joint(thread: &Thread, drill_mm: Length, length_mm: Length) -> Result<Engagement, Error> {
    let mut job = Job::default();
    for (key, value) in [
        ("unit", "mm"),
        ("mode", "per_minute"),
        ("decimals", "3"),
        ("rpm", "100"),
        ("hole", "blind"),
        ("full_thread_depth_mm", "20"),
        ("tap", "cut"),
        ("part_shear_mpa", "250"),
        ("screw.tensile_mpa", "800"),
        ("screw.shear_mpa", "480"),
        ("screw.load_n", "1000"),
    ] {
        job.set(key, Value::Text(value.as_bytes())).unwrap();
    }
    job.thread = Some(*thread);
    job.set("drill_mm", Value::Exact(drill_mm)).unwrap();
    job.set("screw.engagement_mm", Value::Exact(length_mm)).unwrap();
    plan(&job).map(|plan| plan.joint.unwrap())
}

/// A fit that does not hold at all says so, and for no other reason than its sizes.
fn may_fail(error: Error) -> bool {
    matches!(error.code(), Code::NotSourced | Code::Contradiction | Code::Overflow)
}

proptest! {
    #![proptest_config(config(2_000))]

    #[test]
    fn longer_carries_more(
        thread in thread(), fine in any::<bool>(), length in parts(1..=2_000, 10), more in parts(1..=2_000, 10),
        strengths in [1.0..2_000.0, 1.0..2_000.0, 1.0..2_000.0]
    ) {
        let Some((hole, screw)) = fit(&thread, fine) else { return Ok(()) };
        let asked = request(length, strengths);
        let found = match engagement(&hole, &screw, &asked) {
            Ok(found) => found,
            Err(error) => {
                prop_assert!(may_fail(error), "{} {}", thread, error);
                return Ok(());
            }
        };
        prop_assert!(loads(&found).iter().all(|load| load.is_finite() && *load > 0.0), "{:?}", found);
        let sum = length.plus(more).unwrap();
        let longer = engagement(&hole, &screw, &EngagementRequest { length_mm: sum, ..asked }).unwrap();
        prop_assert!(longer.external_strip_load_n > found.external_strip_load_n);
        prop_assert!(longer.internal_strip_load_n > found.internal_strip_load_n);
        prop_assert_eq!(longer.tensile_load_n, found.tensile_load_n);
        prop_assert!(same(longer.required_length_mm, found.required_length_mm));
        // What has no full thread carries nothing and lengthens what is required.
        let chamfered = EngagementRequest { length_mm: sum, without_full_thread_mm: more, ..asked };
        let chamfered = engagement(&hole, &screw, &chamfered).unwrap();
        prop_assert_eq!(loads(&chamfered), loads(&found));
        prop_assert!(same(chamfered.required_length_mm, found.required_length_mm + more.to_f64()));
    }

    /// More percent of thread is a smaller hole. Inside the limits it never weakens the joint, and a longer
    /// engagement strengthens it.
    #[test]
    fn a_plans_joint_grows_with_percent_of_thread_and_length(
        thread in thread(), shares in [0..=1_000_i64, 0..=1_000_i64], lengths in [1..=2_000_i64, 1..=2_000_i64]
    ) {
        let Some((hole, _)) = fit(&thread, false) else { return Ok(()) };
        let Ok((Some(low), Some(high))) = hole.limits().map(|limits| limits.minor_mm) else { return Ok(()) };
        if thread.pitch_mm().times(Length::integer(4)).unwrap() > thread.major_mm() {
            return Ok(());
        }
        let drilled = |share: i64| {
            // To a ten-thousandth of a millimetre, which stays inside.
            let up = high.minus(low)?.times(Length::new(share, 1_000)?)?.to_f64();
            low.plus(Length::new((up * 1e4) as i64, 10_000)?)
        };
        let length = |tenths: i64| Length::new(tenths, 100).unwrap();
        let (small, large) = (shares[0].min(shares[1]), shares[0].max(shares[1]));
        let (short, long) = (length(lengths[0].min(lengths[1])), length(lengths[0].max(lengths[1])));
        let joint = |share, length| planned_joint(&hole, drilled(share)?, length);
        let (more, less) = match (joint(small, short), joint(large, short)) {
            (Ok(more), Ok(less)) => (more, less),
            (more, less) => {
                for error in [more.err(), less.err()].into_iter().flatten() {
                    prop_assert!(may_fail(error), "{} {}", thread, error);
                }
                return Ok(());
            }
        };
        prop_assert!(more.external_strip_load_n >= less.external_strip_load_n, "{} {:?} {:?}", hole, more, less);
        prop_assert_eq!(more.internal_strip_load_n, less.internal_strip_load_n);
        prop_assert!(more.safety_factor >= less.safety_factor);
        prop_assert!(more.required_length_mm <= less.required_length_mm);
        let longer = joint(small, long).unwrap();
        prop_assert!(longer.external_strip_load_n >= more.external_strip_load_n);
        prop_assert!(longer.internal_strip_load_n >= more.internal_strip_load_n);
        prop_assert!(longer.safety_factor >= more.safety_factor);
        prop_assert!(same(longer.required_length_mm, more.required_length_mm));
        prop_assert_eq!(longer.tensile_load_n, more.tensile_load_n);
    }

    #[test]
    fn the_weakest_is_the_least_and_the_required_length_is_enough(
        thread in thread(), fine in any::<bool>(), length in parts(1..=2_000, 10), load in 1e-3..1e7,
        strengths in [1.0..2_000.0, 1.0..2_000.0, 1.0..2_000.0]
    ) {
        let Some((hole, screw)) = fit(&thread, fine) else { return Ok(()) };
        let asked = EngagementRequest { load_n: Some(load), ..request(length, strengths) };
        let Ok(found) = engagement(&hole, &screw, &asked) else { return Ok(()) };
        let least = loads(&found).into_iter().fold(f64::INFINITY, f64::min);
        let place = Weakest::ALL.iter().position(|part| *part == found.weakest).unwrap();
        prop_assert_eq!(loads(&found)[place], least);
        prop_assert!(same(found.safety_factor.unwrap() * load, least));
        prop_assert!(same(found.strip_ratio * found.internal_strip_load_n, found.external_strip_load_n));
        let strip = found.internal_strip_load_n.min(found.external_strip_load_n);
        prop_assert!(same(strip / length.to_f64() * found.required_length_mm, found.tensile_load_n));
        prop_assert_eq!(found.weakest == Weakest::Screw, found.tensile_load_n <= strip);
        let unloaded = engagement(&hole, &screw, &request(length, strengths)).unwrap();
        prop_assert_eq!(unloaded.safety_factor, None);
    }

    #[test]
    fn a_larger_hole_leaves_the_screw_less(thread in thread(), share in 1..=998_i64) {
        let Some((hole, screw)) = fit(&thread, true) else { return Ok(()) };
        // Pitches near the diameter itself: there a larger hole shears the screw on a larger cylinder.
        if thread.pitch_mm().times(Length::integer(4)).unwrap() > thread.major_mm() {
            return Ok(());
        }
        let asked = request(Length::integer(10), [300.0, 480.0, 800.0]);
        let (Ok(limits), true) = (screw.limits(), engagement(&hole, &screw, &asked).is_ok()) else { return Ok(()) };
        let (core, crest) = (limits.minor_mm.1.unwrap(), limits.major_mm.0.unwrap());
        let at = |share: i64| {
            let up = crest.minus(core)?.times(Length::new(share, 1_000)?)?;
            engagement(&hole, &screw, &EngagementRequest { drilled_mm: Some(core.plus(up)?), ..asked })
        };
        match (at(share), at(share + 1)) {
            (Ok(small), Ok(large)) => {
                prop_assert!(large.external_shear_area_mm2 < small.external_shear_area_mm2, "{}", thread);
                prop_assert_eq!(large.internal_shear_area_mm2, small.internal_shear_area_mm2);
            }
            (small, large) => {
                for error in [small.err(), large.err()].into_iter().flatten() {
                    prop_assert!(may_fail(error), "{} {}", thread, error);
                }
            }
        }
        for (outside, code) in [(core, Code::OutOfRange), (crest, Code::OutOfRange)] {
            let outside = EngagementRequest { drilled_mm: Some(outside), ..asked };
            prop_assert_eq!(engagement(&hole, &screw, &outside).map_err(|error| error.code()), Err(code));
        }
    }
}

#[test]
fn numbers_that_are_no_strength_are_refused() {
    let [hole, screw] = [&b"M10x1.5-6H"[..], b"M10x1.5-6g"].map(|text| Thread::read(text).unwrap());
    let sound = [180.0, 480.0, 800.0];
    assert!(engagement(&hole, &screw, &request(Length::integer(10), sound)).is_ok());
    for wrong in [0.0, -0.0, -1.0, f64::NAN, f64::INFINITY, f64::NEG_INFINITY, f64::MIN_POSITIVE, f64::MAX] {
        for place in 0..3 {
            let mut strengths = sound;
            strengths[place] = wrong;
            let refused = engagement(&hole, &screw, &request(Length::integer(10), strengths)).map_err(|e| e.code());
            assert_eq!(refused, Err(Code::OutOfRange), "{wrong} at {place}");
        }
        let loaded = EngagementRequest { load_n: Some(wrong), ..request(Length::integer(10), sound) };
        assert_eq!(engagement(&hole, &screw, &loaded).map_err(|error| error.code()), Err(Code::OutOfRange), "{wrong}");
    }
}

#[test]
fn property_classes_say_their_own_strength() {
    for class in PropertyClass::ALL {
        let strength = class.starting_strength(Length::integer(10)).unwrap();
        // The number before the point is a hundredth of the nominal tensile strength.
        let hundreds: f64 = class.name().split('.').next().unwrap().parse().unwrap();
        let over = strength.tensile_mpa - 100.0 * hundreds;
        assert!((0.0..=40.0).contains(&over), "{class}: {}", strength.tensile_mpa);
        assert!(same(strength.shear_mpa, 0.6 * strength.tensile_mpa), "{class}");
        assert!(strength.source.contains("from memory") && strength.source.contains("common practice"));
    }
    let tensile = |class: &PropertyClass| class.starting_strength(Length::integer(10)).unwrap().tensile_mpa as i32;
    assert!(PropertyClass::ALL.is_sorted_by_key(tensile));
}
