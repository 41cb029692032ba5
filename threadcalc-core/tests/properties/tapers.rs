//! Taper pipe threads: their drills and their depths.

use proptest::prelude::*;
use threadcalc_core::{
    Code, Drill, FindingId, Form, Hand, Length, Side, Tap, TapDrillRequest, TaperDepthRequest, Thread, WithinLimits,
    drills, standard_threads, tap_drill, taper_depths,
};

use crate::holes::{sets, tap};
use crate::values::{config, length, parts, thread};

fn taper() -> impl Strategy<Value = Thread> {
    let tapers: Vec<_> = standard_threads(None, None).filter(|thread| thread.form().is_taper()).collect();
    (proptest::sample::select(tapers), any::<bool>())
        .prop_map(|(thread, left)| thread.with_hand(if left { Hand::Left } else { Hand::Right }))
}

fn over_sixteen(length: Length) -> Length {
    length.over(Length::integer(16)).unwrap()
}

/// The hole that the rule wants, from the printed dimensions, and whether a smaller drill is out.
fn wanted(thread: &Thread, taper_reamer: bool) -> (Length, bool) {
    let (pipe, pitch) = (thread.pipe().unwrap(), thread.pitch_mm());
    if thread.form() == Form::Rc {
        let face = pipe.pitch_diameter_gauge_plane_mm.unwrap().minus(pipe.thread_height_mm.unwrap()).unwrap();
        let end = face.minus(over_sixteen(pipe.useful_length_mm.unwrap())).unwrap();
        return (if taper_reamer { end } else { face }, !taper_reamer);
    }
    // NPT and NPTF: K0 = E0 - 0.8 p, and three threads further in K3.
    let small_end = pipe.pitch_diameter_small_end_mm.unwrap();
    let k0 = small_end.minus(pitch.times(Length::new(4, 5).unwrap()).unwrap()).unwrap();
    let three = over_sixteen(pitch.times(Length::integer(3)).unwrap());
    (if taper_reamer { k0.minus(three).unwrap() } else { k0 }, false)
}

fn request() -> impl Strategy<Value = TaperDepthRequest> {
    let sizes = (proptest::option::of(parts(1..=3_000, 100)), parts(1..=400, 10));
    (sizes, parts(61..=180, 1), parts(0..=1_000, 100)).prop_map(|((projection, drill), angle, clearance)| {
        TaperDepthRequest {
            projection_mm: projection,
            drill_mm: drill,
            point_angle_deg: angle,
            bottom_clearance_mm: clearance,
        }
    })
}

/// The sizes for which the table of taper pipe taps has a projection: up to 3 in.
fn has_table_projection(thread: &Thread) -> bool {
    thread.form() != Form::Rc && thread.major_mm() <= Length::new(35 * 254, 100).unwrap()
}

proptest! {
    #![proptest_config(config(1_500))]

    #[test]
    fn a_taper_drill_agrees_with_itself(
        thread in taper(), odd in 0..4_u8, (tap, basis) in tap(), percent in proptest::option::of(parts(1..=100, 1)),
        sets in sets(), taper_reamer in any::<bool>()
    ) {
        let (tap, basis, percent) = if odd == 0 { (tap, basis, percent) } else { (Tap::Cut, None, None) };
        let found = tap_drill(&thread, &TapDrillRequest { tap, percent, basis, sets, taper_reamer });
        let refused = match thread.form() {
            Form::R => Some(Code::Contradiction),
            _ if percent.is_some() || basis.is_some() || tap == Tap::Form => Some(Code::DoesNotApply),
            _ => None,
        };
        if let Some(code) = refused {
            prop_assert_eq!(found.map(|_| ()).map_err(|error| error.code()), Err(code));
            return Ok(());
        }
        let (hole, not_below) = wanted(&thread, taper_reamer);
        let away = |drill: &Drill| drill.diameter_mm().minus(hole).unwrap().magnitude();
        let usable = drills(sets).filter(|drill| !not_below || drill.diameter_mm() >= hole);
        // The nearest, ties to the larger; one that is a pitch off is none.
        let want = usable.min_by_key(|drill| (away(drill), drill.diameter_mm().negative()));
        let want = want.filter(|drill| away(drill) <= thread.pitch_mm()).map(|drill| drill.diameter_mm());
        let found = match found {
            Ok(found) => found,
            Err(error) => {
                prop_assert_eq!((error.code(), want), (Code::NoDrill, None), "{}", error);
                return Ok(());
            }
        };
        prop_assert_eq!(Some(found.chosen.drill.diameter_mm()), want, "{}", thread);
        prop_assert!(found.chosen.drill.set().is_some_and(|set| sets.holds(set)));
        prop_assert!(found.chosen.percent.is_nan() && found.basis.is_none() && found.limits.is_none());
        prop_assert_eq!(found.chosen.within_limits, WithinLimits::DoesNotApply);
        let told = found.findings.iter().any(|finding| finding.id() == FindingId::TaperHole);
        prop_assert_eq!(told, !taper_reamer);
        let beside: Vec<Length> = found.alternatives.iter().flatten().map(|other| other.drill.diameter_mm()).collect();
        prop_assert!(beside.is_sorted_by(|a, b| a < b) && !beside.contains(&found.chosen.drill.diameter_mm()));
    }

    #[test]
    fn taper_depths_agree_with_themselves(thread in taper(), request in request(), more in parts(1..=500, 100)) {
        let found = match taper_depths(&thread, &request) {
            Ok(found) => found,
            Err(error) => {
                match error.code() {
                    Code::Contradiction => prop_assert_eq!(thread.side(), Some(Side::External)),
                    Code::Missing => {
                        prop_assert!(request.projection_mm.is_none() && !has_table_projection(&thread), "{}", thread);
                    }
                    _ => prop_assert!(request.drill_mm >= thread.major_mm(), "{}", error),
                }
                return Ok(());
            }
        };
        prop_assert!(thread.side() != Some(Side::External));
        let (pitch, pipe) = (thread.pitch_mm(), thread.pipe().unwrap());
        prop_assert_eq!(Some(found.hand_tight_mm), pipe.hand_tight_length_mm.or(pipe.gauge_length_mm));
        prop_assert_eq!(found.projection_tolerance_mm.is_none(), request.projection_mm.is_some());
        prop_assert!(request.projection_mm.is_none_or(|measured| measured == found.projection_mm));
        prop_assert_eq!(found.hand_tight_mm.plus(found.projection_mm), Ok(found.tap_mm));
        prop_assert_eq!(found.first_hole_mm.plus(pitch), Ok(found.tap_mm));
        prop_assert_eq!(found.tap_mm.plus(pitch).and_then(|end| end.plus(request.bottom_clearance_mm)), Ok(found.full_diameter_mm));
        prop_assert!(found.drill_point_mm >= found.full_diameter_mm.to_f64());
        prop_assert_eq!(found.tap_turns.times(pitch), Ok(found.tap_mm));
        prop_assert_eq!(found.hand_tight_turns.times(pitch), Ok(found.hand_tight_mm));
        prop_assert_eq!(found.diameter_per_turn_mm, over_sixteen(pitch));
        prop_assert_eq!(Some(found.gauge_tolerance_turns), pipe.gauge_tolerance_turns);
        let deeper = TaperDepthRequest { projection_mm: found.projection_mm.plus(more).ok(), ..request };
        let deeper = taper_depths(&thread, &deeper).unwrap();
        prop_assert_eq!(deeper.tap_mm.minus(found.tap_mm), Ok(more));
        prop_assert!(deeper.drill_point_mm > found.drill_point_mm && deeper.tap_turns > found.tap_turns);
    }

    #[test]
    fn any_numbers_give_taper_depths_or_an_error(
        thread in thread(), of in proptest::array::uniform4(length()), table in any::<bool>()
    ) {
        let [projection, drill_mm, point_angle_deg, bottom_clearance_mm] = of;
        let projection_mm = (!table).then_some(projection);
        let request = TaperDepthRequest { projection_mm, drill_mm, point_angle_deg, bottom_clearance_mm };
        match taper_depths(&thread, &request) {
            Ok(found) => prop_assert!(found.drill_point_mm.is_finite() && thread.form().is_taper()),
            Err(error) => prop_assert_eq!(error.code() == Code::DoesNotApply, !thread.form().is_taper(), "{}", error),
        }
    }
}
