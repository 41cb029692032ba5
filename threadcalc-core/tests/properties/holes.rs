//! Drills, percents of thread and depths.

use proptest::prelude::*;
use threadcalc_core::{
    Basis, Code, DepthRequest, Depths, Drill, DrillSet, DrillSets, Form, Hole, Length, OwnDrills, Side, Tap,
    TapDrillRequest, TapSetOn, Thread, WithinLimits, depths, drill_diameter, drills, judge_drill, percent_thread,
    probable_hole_mm, tap_drill,
};

use crate::values::{bytes, config, length, parts, thread};

/// Threads that charts give on two bases.
fn has_bases(form: Form) -> bool {
    matches!(form, Form::Metric | Form::Unified | Form::UnifiedR)
}

fn is_of_sixty(form: Form) -> bool {
    has_bases(form) || matches!(form, Form::MetricJ | Form::Miniature | Form::UnifiedJ)
}

/// Why there is no percent for this thread with this tap on this basis; `None` if there is one.
fn refusal(thread: &Thread, tap: Tap, basis: Option<Basis>) -> Option<Code> {
    let form = thread.form();
    let is_square =
        matches!(form, Form::Trapezoidal | Form::Acme | Form::StubAcme | Form::Buttress | Form::PullButtress);
    match (tap, basis) {
        _ if thread.side() == Some(Side::External) => Some(Code::Contradiction),
        _ if form.is_taper() => Some(Code::DoesNotApply),
        (Tap::Form, Some(_)) => Some(Code::Contradiction),
        (Tap::Form, None) if is_square => Some(Code::DoesNotApply),
        (Tap::Form, None) => (!is_of_sixty(form)).then_some(Code::NotSourced),
        (Tap::Cut, None) if has_bases(form) => Some(Code::Missing),
        (Tap::Cut, Some(_)) if !has_bases(form) => Some(Code::Contradiction),
        _ => (form == Form::Npsf).then_some(Code::NotSourced),
    }
}

/// 100 % on the diameter in pitches: 2 x 3H/4, 2 x 5H/8, the form tap's 0.68, or the thread's own height.
fn full_height(thread: &Thread, tap: Tap, basis: Option<Basis>) -> f64 {
    let height_of_sixty = 3.0_f64.sqrt() / 2.0;
    match (tap, basis, thread.form()) {
        (Tap::Form, _, _) => 0.68,
        (_, Some(basis), _) => basis.pitches(),
        (_, _, Form::Npsc | Form::Npsm) => 1.6,
        (_, _, Form::MetricJ | Form::UnifiedJ) => 9.0 / 8.0 * height_of_sixty,
        (_, _, Form::Miniature) => 0.96,
        (_, _, Form::Ba | Form::Buttress | Form::PullButtress) => 1.2,
        (_, _, Form::Trapezoidal | Form::Acme) => 1.0,
        (_, _, Form::StubAcme) => 0.6,
        _ => 4.0 / 3.0 / (2.0 * 27.5_f64.to_radians().tan()),
    }
}

/// The hole without a percent, in hundredths of a pitch below the major diameter.
fn rule(thread: &Thread, tap: Tap) -> i64 {
    match thread.form() {
        _ if tap == Tap::Form => 50,
        Form::MetricJ | Form::UnifiedJ | Form::Ba => 90,
        Form::Miniature => 80,
        Form::Trapezoidal | Form::Acme => 95,
        Form::StubAcme => 57,
        Form::Buttress | Form::PullButtress => 114,
        _ => 100,
    }
}

/// What the height is measured from: NPSC and NPSM are 0.8 p outside the pitch diameter of NPT's gauge plane.
fn major_of_hole(thread: &Thread) -> f64 {
    let gauge_plane = thread.pipe().ok().and_then(|pipe| pipe.pitch_diameter_gauge_plane_mm);
    match (thread.form(), gauge_plane) {
        (Form::Npsc | Form::Npsm, Some(diameter)) => diameter.to_f64() + 0.8 * thread.pitch_mm().to_f64(),
        _ => thread.major_mm().to_f64(),
    }
}

pub fn tap() -> impl Strategy<Value = (Tap, Option<Basis>)> {
    let bases = [None, Some(Basis::ThreeQuartersH), Some(Basis::FiveEighthsH)];
    (prop_oneof![Just(Tap::Cut), Just(Tap::Form)], proptest::sample::select(bases.to_vec()))
}

/// A thread with a tap and a basis, mostly such as belong together.
fn tapped() -> impl Strategy<Value = (Thread, (Tap, Option<Basis>))> {
    (thread(), tap(), 0..8_u8).prop_map(|(thread, (tap, basis), odd)| {
        let fitting = match tap {
            _ if odd == 0 => (tap, basis),
            Tap::Form if is_of_sixty(thread.form()) => (Tap::Form, None),
            _ if has_bases(thread.form()) => (Tap::Cut, basis.or(Some(Basis::ThreeQuartersH))),
            _ => (Tap::Cut, None),
        };
        (thread, fitting)
    })
}

pub fn sets() -> impl Strategy<Value = DrillSets> {
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
    fn percent_and_hole_are_inverse((thread, (tap, basis)) in tapped(), percent in parts(1..=1_000, 10)) {
        let hole = drill_diameter(&thread, percent, tap, basis);
        prop_assert_eq!(hole.as_ref().err().map(|error| error.code()), refusal(&thread, tap, basis));
        let Ok(hole) = hole else { return Ok(()) };
        prop_assert!(hole < thread.major_mm().to_f64());
        let depth = full_height(&thread, tap, basis) * thread.pitch_mm().to_f64() * percent.to_f64() / 100.0;
        prop_assert!((major_of_hole(&thread) - depth - hole).abs() < 1e-9, "{} {} percent is {}", thread, percent, hole);
        let drill = to_nine_decimals(hole);
        if !drill.is_positive() {
            return Ok(());
        }
        let back = percent_thread(&thread, drill, tap, basis).unwrap();
        // Half a unit of the ninth decimal of the hole, in percent, and some rounding of doubles.
        let per_mm = 100.0 / (full_height(&thread, tap, basis) * thread.pitch_mm().to_f64());
        let rounding = 8.0 * f64::EPSILON * thread.major_mm().to_f64();
        let most = (0.5e-9 + rounding) * per_mm;
        prop_assert!((back - percent.to_f64()).abs() <= most, "{} {} percent gives {}", thread, percent, back);
    }

    #[test]
    fn a_larger_drill_leaves_less_thread((thread, (tap, basis)) in tapped(), a in 1..=999_i64, b in 1..=999_i64) {
        let of = |part: i64| {
            let drill = thread.major_mm().times(Length::new(part, 1_000).unwrap()).unwrap();
            percent_thread(&thread, drill, tap, basis)
        };
        if let (Ok(of_a), Ok(of_b)) = (of(a), of(b)) {
            prop_assert_eq!(a.cmp(&b), of_b.partial_cmp(&of_a).unwrap());
        }
    }

    #[test]
    fn any_numbers_give_a_percent_or_an_error((thread, (tap, basis)) in tapped(), value in length()) {
        if let Ok(hole) = drill_diameter(&thread, value, tap, basis) {
            prop_assert!(value.is_positive() && value <= Length::integer(100) && hole.is_finite());
        }
        if let Ok(percent) = percent_thread(&thread, value, tap, basis) {
            prop_assert!(percent > 0.0 && percent.is_finite());
        }
        if let Some(code) = refusal(&thread, tap, basis) {
            prop_assert_eq!(percent_thread(&thread, value, tap, basis).map_err(|error| error.code()), Err(code));
            prop_assert!(drill_diameter(&thread, value, tap, basis).is_err());
        }
    }

    #[test]
    fn a_chosen_drill_agrees_with_itself(
        (thread, (tap, basis)) in tapped(), percent in proptest::option::of(parts(1..=100, 1)), sets in sets()
    ) {
        if thread.form().is_taper() {
            return Ok(());
        }
        // Without a percent the basis only reports: 3H/4 if not said.
        let reported = if percent.is_none() && tap == Tap::Cut && has_bases(thread.form()) {
            basis.or(Some(Basis::ThreeQuartersH))
        } else {
            basis
        };
        let no_rule = percent.is_none() && matches!(thread.form(), Form::Npsc | Form::Npsm | Form::Npsf);
        let no_rule = (no_rule && tap == Tap::Cut).then_some(Code::NotSourced);
        let refused = refusal(&thread, tap, reported);
        let request = TapDrillRequest { tap, percent, basis, sets, taper_reamer: false };
        let reamed = tap_drill(&thread, &TapDrillRequest { taper_reamer: true, ..request });
        prop_assert_eq!(reamed.map(|_| ()).map_err(|error| error.code()), Err(Code::Contradiction));
        let found = match tap_drill(&thread, &request) {
            Ok(found) => found,
            Err(error) => {
                let without_drill = [Code::NoDrill, Code::OutOfRange].contains(&error.code());
                let mut refusals = [refused, no_rule].into_iter().flatten();
                prop_assert!(without_drill || refusals.any(|code| code == error.code()), "{}", error);
                return Ok(());
            }
        };
        prop_assert_eq!(refused.or(no_rule), None);
        let basis = reported;
        let drill = found.chosen.drill;
        prop_assert!(drill.set().is_some_and(|set| sets.holds(set)));
        prop_assert_eq!(found.basis, basis);
        prop_assert_eq!(percent_thread(&thread, drill.diameter_mm(), tap, basis), Ok(found.chosen.percent));
        let held = found.limits.and_then(|limits| match limits.minor_holds(drill.diameter_mm()) {
            // The standard sets no largest minor diameter of couplings.
            None => (thread.form() == Form::Npsc).then_some(true),
            held => held,
        });
        let within = held.map_or(WithinLimits::DoesNotApply, |held| if held { WithinLimits::Yes } else { WithinLimits::No });
        prop_assert_eq!(found.chosen.within_limits, within);
        prop_assert!(percent.is_some() || within != WithinLimits::No, "{} {}", thread, drill.name());
        if let Some(percent) = percent {
            let hole = drill_diameter(&thread, percent, tap, basis).unwrap();
            let off = |drill: &Drill| (drill.diameter_mm().to_f64() - hole).abs();
            prop_assert!(drills(sets).all(|other| off(&other) >= off(&drill)), "{} is not the nearest", drill.name());
        }
        if percent.is_none() {
            let depth = thread.pitch_mm().times(Length::new(rule(&thread, tap), 100).unwrap()).unwrap();
            let hole = thread.major_mm().minus(depth).unwrap();
            let usable = drills(sets).map(|drill| drill.diameter_mm());
            let usable = usable.filter(|d| found.limits.and_then(|limits| limits.minor_holds(*d)) != Some(false));
            // Where no limits are known, a tap that is not made to cut there is not given less than D1.
            let bound = tap == Tap::Cut && found.limits.is_none() && !thread.form().is_pipe();
            let bound = bound && (thread.is_wire_insert() || !has_bases(thread.form()));
            let basic = thread.profile().minor_mm - 1e-6 * thread.pitch_mm().to_f64();
            let usable = usable.filter(|d| !bound || d.to_f64() >= basic);
            // The nearest, ties to the larger.
            let want = usable.min_by_key(|d| (d.minus(hole).unwrap().magnitude(), d.negative()));
            prop_assert_eq!(Some(drill.diameter_mm()), want);
        }
        let beside: Vec<Length> = found.alternatives.iter().flatten().map(|other| other.drill.diameter_mm()).collect();
        prop_assert!(beside.is_sorted_by(|a, b| a < b) && !beside.contains(&drill.diameter_mm()));
    }

    #[test]
    fn a_list_of_all_near_drills_gives_what_the_sets_give(
        (thread, (tap, basis)) in tapped(), percent in proptest::option::of(parts(1..=100, 1)), sets in sets()
    ) {
        let request = TapDrillRequest { tap, percent, basis, sets, taper_reamer: false };
        let Ok(found) = tap_drill(&thread, &request) else { return Ok(()) };
        let mut own = OwnDrills::new();
        // Largest first: the order of a list says nothing.
        for other in found.alternatives.iter().rev().flatten() {
            own.add(other.drill).unwrap();
        }
        own.add(found.chosen.drill).unwrap();
        let of_list = TapDrillRequest { tap, percent, basis, sets: &own, taper_reamer: false };
        match tap_drill(&thread, &of_list) {
            // Without limits a list is bound to the holes of the tap, and whole sets to nothing.
            Ok(again) if again.chosen != found.chosen => {
                prop_assert!(percent.is_none() && found.limits.is_none(), "{}", again.chosen.drill.name());
            }
            Ok(again) => {
                prop_assert_eq!(again.alternatives, found.alternatives);
                prop_assert_eq!(again.findings, found.findings);
                prop_assert_eq!(again.probable, found.probable);
            }
            // What is far from every good hole is taken of sets and not of a list.
            Err(error) => prop_assert_eq!(error.code(), Code::NoDrill),
        }
        let judged = judge_drill(&thread, found.chosen.drill, tap, basis, None);
        if percent.is_none() && !thread.form().is_taper() {
            prop_assert_eq!(judged.unwrap().chosen, found.chosen);
        }
    }

    #[test]
    fn drills_cut_larger_and_never_by_much(diameter in parts(1..=60_000, 500), oversize in proptest::option::of(length())) {
        for drill in [Drill::of_diameter(diameter)].into_iter().chain(drills(DrillSets::ALL).step_by(7)) {
            if let Ok(hole) = probable_hole_mm(&drill, None) {
                let more = hole.minus(drill.diameter_mm()).unwrap().to_f64();
                prop_assert!((0.038..=0.183).contains(&more), "{} cuts {more} larger", drill.name());
            }
        }
        let drill = Drill::of_diameter(diameter);
        match (probable_hole_mm(&drill, oversize), oversize) {
            (Ok(hole), Some(oversize)) => prop_assert_eq!(hole.minus(diameter), Ok(oversize)),
            (Err(error), Some(oversize)) => {
                let code = if oversize.is_negative() { Code::OutOfRange } else { Code::Overflow };
                prop_assert_eq!(error.code(), code);
            }
            (found, None) => prop_assert!(found.is_ok() || diameter.to_f64() < 1.2 || diameter.to_f64() > 26.5),
        }
    }

    #[test]
    fn a_drill_has_the_name_that_it_is_read_by(name in bytes(), drill in 0..650_usize) {
        if let Ok(read) = Drill::read(&name) {
            prop_assert!(read.diameter_mm().is_positive());
        }
        let listed = drills(DrillSets::ALL).nth(drill).unwrap();
        let name = listed.name().to_string();
        // Whole inches are named by a number, which alone is in millimetres.
        let inches = listed.set() == Some(DrillSet::Fractional) && !name.contains('/');
        let name = if inches { format!("{name} in") } else { name };
        prop_assert_eq!(Drill::read(name.as_bytes()), Ok(listed));
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
        let found = match depths(&thread, &request) {
            Ok(found) => found,
            Err(error) if thread.form().is_taper() => {
                prop_assert_eq!(error.code(), Code::DoesNotApply);
                return Ok(());
            }
            Err(_) => {
                prop_assert!(request.drill_mm > thread.major_mm());
                return Ok(());
            }
        };
        prop_assert!(!thread.form().is_taper());
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
