//! Drills, percents of thread and depths.

use proptest::prelude::*;
use threadcalc_core::{
    Basis, Code, DepthRequest, Depths, Drill, DrillSet, DrillSets, Form, Hole, Length, Side, Tap, TapDrillRequest,
    TapSetOn, Thread, WithinLimits, depths, drill_diameter, drills, percent_thread, tap_drill,
};

use crate::values::{bytes, config, length, parts, thread};

fn internal(thread: &Thread) -> bool {
    thread.side() != Some(Side::External)
}

fn tap() -> impl Strategy<Value = (Tap, Option<Basis>)> {
    prop_oneof![
        Just((Tap::Cut, Some(Basis::ThreeQuartersH))),
        Just((Tap::Cut, Some(Basis::FiveEighthsH))),
        Just((Tap::Form, None)),
    ]
}

fn sets() -> impl Strategy<Value = DrillSets> {
    (1..16_u8).prop_map(|bits| {
        let held = DrillSet::ALL.iter().enumerate().filter(|(place, _)| bits & (1 << place) != 0);
        held.fold(DrillSets::NONE, |sets, (_, set)| sets.with(*set))
    })
}

/// A double as the nearest exact number of 9 decimals.
fn to_nine_decimals(value: f64) -> Length {
    Length::new((value * 1e9).round() as i64, 1_000_000_000).unwrap()
}

fn request() -> impl Strategy<Value = DepthRequest> {
    let lengths = (parts(1..=10_000, 100), parts(0..=200, 10), parts(1..=100, 100), parts(61..=180, 1));
    let places = (parts(0..=1_000, 100), parts(0..=500, 100), any::<bool>(), any::<bool>());
    (lengths, places).prop_map(|((full, chamfer, drill, angle), (clearance, centre, on_centre, through))| {
        DepthRequest {
            full_thread_mm: full,
            chamfer_threads: chamfer,
            drill_mm: drill,
            point_angle_deg: angle,
            bottom_clearance_mm: clearance,
            tap_centre_mm: centre,
            tap_set_on: if on_centre { TapSetOn::Centre } else { TapSetOn::Front },
            hole: if through { Hole::Through } else { Hole::Blind },
        }
    })
}

fn none_is_shallower(deeper: &Depths, than: &Depths) -> bool {
    deeper.tap_mm >= than.tap_mm
        && deeper.program_tap_mm >= than.program_tap_mm
        && deeper.full_diameter_mm >= than.full_diameter_mm
        && deeper.drill_point_mm >= than.drill_point_mm
}

#[test]
fn every_drill_is_found_by_its_name_and_by_its_diameter() {
    let mut count = 0;
    for set in DrillSet::ALL {
        let of_set: Vec<Drill> = drills(DrillSets::NONE.with(*set)).collect();
        for drill in &of_set {
            assert_eq!(Drill::named(*set, drill.name().as_str().as_bytes()), Ok(*drill));
            assert_eq!(Drill::of_diameter(drill.diameter_mm()).diameter_mm(), drill.diameter_mm());
            assert_eq!(drill.set(), Some(*set));
        }
        let falls = *set == DrillSet::Number;
        let in_order = |a: &Drill, b: &Drill| (a.diameter_mm() < b.diameter_mm()) != falls;
        assert!(of_set.is_sorted_by(in_order), "{set}");
        count += of_set.len();
    }
    assert_eq!(drills(DrillSets::ALL).count(), count);
    assert_eq!(drills(DrillSets::NONE).count(), 0);
}

proptest! {
    #![proptest_config(config(1_500))]

    #[test]
    fn percent_and_hole_are_inverse(thread in thread(), (tap, basis) in tap(), percent in parts(1..=1_000, 10)) {
        let Ok(hole) = drill_diameter(&thread, percent, tap, basis) else {
            prop_assert!(!internal(&thread));
            return Ok(());
        };
        prop_assert!(hole < thread.major_mm().to_f64());
        let drill = to_nine_decimals(hole);
        if !drill.is_positive() {
            return Ok(());
        }
        let back = percent_thread(&thread, drill, tap, basis).unwrap();
        // Half a unit of the ninth decimal of the hole, in percent, and some rounding of doubles.
        let per_mm = 100.0 / (basis.map_or(0.68, Basis::pitches) * thread.pitch_mm().to_f64());
        let rounding = 8.0 * f64::EPSILON * thread.major_mm().to_f64();
        let most = (0.5e-9 + rounding) * per_mm;
        prop_assert!((back - percent.to_f64()).abs() <= most, "{} {} percent gives {}", thread, percent, back);
    }

    #[test]
    fn a_larger_drill_leaves_less_thread(thread in thread(), (tap, basis) in tap(), a in 1..=999_i64, b in 1..=999_i64) {
        let of = |part: i64| {
            let drill = thread.major_mm().times(Length::new(part, 1_000).unwrap()).unwrap();
            percent_thread(&thread, drill, tap, basis)
        };
        if let (Ok(of_a), Ok(of_b)) = (of(a), of(b)) {
            prop_assert_eq!(a.cmp(&b), of_b.partial_cmp(&of_a).unwrap());
        }
    }

    #[test]
    fn any_numbers_give_a_percent_or_an_error(thread in thread(), value in length(), (tap, basis) in tap()) {
        if let Ok(hole) = drill_diameter(&thread, value, tap, basis) {
            prop_assert!(value.is_positive() && value <= Length::integer(100) && hole.is_finite());
        }
        if let Ok(percent) = percent_thread(&thread, value, tap, basis) {
            prop_assert!(percent > 0.0 && percent.is_finite());
        }
        for (tap, basis) in [(Tap::Cut, None), (Tap::Form, Some(Basis::FiveEighthsH))] {
            prop_assert!(percent_thread(&thread, value, tap, basis).is_err());
            prop_assert!(drill_diameter(&thread, value, tap, basis).is_err());
        }
    }

    #[test]
    fn a_chosen_drill_agrees_with_itself(
        thread in thread(), (tap, basis) in tap(), percent in proptest::option::of(parts(1..=100, 1)), sets in sets()
    ) {
        let found = match tap_drill(&thread, &TapDrillRequest { tap, percent, basis, sets, taper_reamer: false }) {
            Ok(found) => found,
            Err(error) => {
                let without_drill = [Code::NoDrill, Code::OutOfRange].contains(&error.code());
                prop_assert!(without_drill || error.code() == Code::Contradiction && !internal(&thread), "{}", error);
                return Ok(());
            }
        };
        let drill = found.chosen.drill;
        prop_assert!(drill.set().is_some_and(|set| sets.holds(set)));
        prop_assert_eq!(found.basis, basis);
        prop_assert_eq!(percent_thread(&thread, drill.diameter_mm(), tap, basis), Ok(found.chosen.percent));
        let held = found.limits.and_then(|limits| limits.minor_holds(drill.diameter_mm()));
        let within = held.map_or(WithinLimits::DoesNotApply, |held| if held { WithinLimits::Yes } else { WithinLimits::No });
        prop_assert_eq!(found.chosen.within_limits, within);
        prop_assert!(percent.is_some() || within != WithinLimits::No, "{} {}", thread, drill.name());
        if let Some(percent) = percent {
            let hole = drill_diameter(&thread, percent, tap, basis).unwrap();
            let off = |drill: &Drill| (drill.diameter_mm().to_f64() - hole).abs();
            prop_assert!(drills(sets).all(|other| off(&other) >= off(&drill)), "{} is not the nearest", drill.name());
        }
        if percent.is_none() {
            let depth = if tap == Tap::Cut { thread.pitch_mm() } else { thread.pitch_mm().over(Length::integer(2)).unwrap() };
            let hole = thread.major_mm().minus(depth).unwrap();
            let usable = drills(sets).map(|drill| drill.diameter_mm());
            let usable = usable.filter(|d| found.limits.and_then(|limits| limits.minor_holds(*d)) != Some(false));
            // The nearest, ties to the larger.
            let want = usable.min_by_key(|d| (d.minus(hole).unwrap().magnitude(), d.negative()));
            prop_assert_eq!(Some(drill.diameter_mm()), want);
        }
        let beside: Vec<Length> = found.alternatives.iter().flatten().map(|other| other.drill.diameter_mm()).collect();
        prop_assert!(beside.is_sorted_by(|a, b| a < b) && !beside.contains(&drill.diameter_mm()));
    }

    #[test]
    fn any_drill_has_its_diameter(diameter in length(), name in bytes()) {
        let drill = Drill::of_diameter(diameter);
        prop_assert_eq!(drill.diameter_mm(), diameter);
        for set in DrillSet::ALL {
            if let Ok(drill) = Drill::named(*set, &name) {
                let written = drill.name();
                prop_assert_eq!(written.as_str().as_bytes(), &name[..]);
            }
        }
        prop_assert!(Form::ALL.iter().all(|form| !DrillSets::usual(*form).is_none()));
    }

    #[test]
    fn more_of_anything_is_never_shallower(thread in thread(), request in request(), more in parts(1..=500, 100)) {
        let Ok(found) = depths(&thread, &request) else {
            prop_assert!(request.drill_mm > thread.major_mm());
            return Ok(());
        };
        prop_assert!(found.drill_point_mm >= found.full_diameter_mm.to_f64());
        prop_assert!(found.program_tap_mm <= found.tap_mm && found.tap_mm >= request.full_thread_mm);
        let cleared = if request.hole == Hole::Through { request.full_thread_mm } else { found.tap_mm };
        prop_assert_eq!(found.full_diameter_mm, cleared.plus(request.bottom_clearance_mm).unwrap());
        let add = |value: Length| value.plus(more).unwrap();
        let grown = [
            DepthRequest { full_thread_mm: add(request.full_thread_mm), ..request },
            DepthRequest { chamfer_threads: add(request.chamfer_threads), ..request },
            DepthRequest { bottom_clearance_mm: add(request.bottom_clearance_mm), ..request },
            DepthRequest { tap_centre_mm: add(request.tap_centre_mm), ..request },
            DepthRequest { drill_mm: add(request.drill_mm), ..request },
        ];
        for deeper in grown.iter().filter_map(|request| depths(&thread, request).ok()) {
            prop_assert!(none_is_shallower(&deeper, &found), "{:?} {:?}", deeper, found);
        }
        let blunt = DepthRequest { point_angle_deg: add(request.point_angle_deg), ..request };
        if let Ok(blunt) = depths(&thread, &blunt) {
            prop_assert!(blunt.drill_point_mm <= found.drill_point_mm);
        }
    }

    #[test]
    fn any_numbers_give_depths_or_an_error(thread in thread(), of in proptest::array::uniform6(length())) {
        let [full_thread_mm, chamfer_threads, drill_mm, point_angle_deg, bottom_clearance_mm, tap_centre_mm] = of;
        let (tap_set_on, hole) = (TapSetOn::Centre, Hole::Blind);
        let request = DepthRequest {
            full_thread_mm, chamfer_threads, drill_mm, point_angle_deg, bottom_clearance_mm, tap_centre_mm, tap_set_on, hole,
        };
        if let Ok(found) = depths(&thread, &request) {
            prop_assert!(found.drill_point_mm.is_finite() && found.tap_mm >= full_thread_mm);
        }
    }
}
