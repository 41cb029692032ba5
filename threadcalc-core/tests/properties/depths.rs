//! Depths back from a drilled hole, its bottom and its mouth, and depths of programs.

use proptest::prelude::*;
use threadcalc_core::{
    BlindHole, BottomVerdict, ChamferForm, Code, DepthRequest, DepthRounding, DrilledTo, Field, Form, Hole, Length,
    RunOut, Side, TapSetOn, Thread, ThroughHoleRequest, Unit, bottoming, chamfers_for_full_thread, countersink, depths,
    full_thread_that_fits, program_depth, program_depth_of_derived, run_out_mm, through_hole, usual_countersink,
};

use crate::values::{config, length, parts, thread};

fn plus(a: Length, b: Length) -> Length {
    a.plus(b).unwrap()
}

fn minus(a: Length, b: Length) -> Length {
    a.minus(b).unwrap()
}

fn set_on() -> impl Strategy<Value = TapSetOn> {
    prop_oneof![Just(TapSetOn::Front), Just(TapSetOn::Centre)]
}

/// Angles of drills, those whose point has an exact height among them.
fn angle() -> impl Strategy<Value = Length> {
    prop_oneof![4 => parts(121..=360, 2), 1 => Just(Length::integer(90)), 1 => Just(Length::integer(180))]
}

fn hole() -> impl Strategy<Value = BlindHole> {
    let to = prop_oneof![Just(DrilledTo::FullDiameter), Just(DrilledTo::Point)];
    let sizes = (parts(1..=10_000, 100), to, parts(1..=400, 100), proptest::option::weighted(0.9, angle()));
    (sizes, parts(0..=1_000, 100), parts(0..=500, 100), set_on()).prop_map(
        |((depth, to, drill, angle), clearance, centre, set_on)| BlindHole {
            drill_depth_mm: depth,
            drill_depth_to: to,
            drill_mm: drill,
            point_angle_deg: angle,
            bottom_clearance_mm: clearance,
            tap_centre_mm: centre,
            tap_set_on: set_on,
        },
    )
}

/// What forward depths are asked for the thread that was found.
fn forward(hole: &BlindHole, full_thread_mm: Length, chamfer_threads: Length) -> DepthRequest {
    DepthRequest {
        full_thread_mm,
        chamfer_threads,
        drill_mm: hole.drill_mm,
        point_angle_deg: hole.point_angle_deg.unwrap_or(Length::integer(118)),
        bottom_clearance_mm: hole.bottom_clearance_mm,
        tap_centre_mm: hole.tap_centre_mm,
        tap_set_on: hole.tap_set_on,
        hole: Hole::Blind,
    }
}

/// A millionth of a millimetre, and the rounding of doubles.
const STEP: f64 = 1.001e-6;

proptest! {
    #![proptest_config(config(1_500))]

    #[test]
    fn depths_lead_back_to_the_drilled_hole(thread in thread(), hole in hole(), chamfer in parts(0..=80, 10)) {
        let found = match full_thread_that_fits(&thread, &hole, chamfer) {
            Ok(found) => found,
            Err(error) => {
                let unknown = hole.drill_depth_to == DrilledTo::Point && hole.point_angle_deg.is_none();
                match error.code() {
                    Code::DoesNotApply => prop_assert!(thread.form().is_taper()),
                    Code::Missing => prop_assert!(unknown && error.field() == Field::PointAngle),
                    Code::OutOfRange if error.field() == Field::Drill => prop_assert!(hole.drill_mm > thread.major_mm()),
                    code => {
                        prop_assert_eq!((code, error.field()), (Code::OutOfRange, Field::DrillDepth));
                        // A hole that passes what the error says has some thread.
                        let enough = Length::new((error.low() * 1000.0).ceil() as i64 + 1, 1000).unwrap();
                        let deeper = BlindHole { drill_depth_mm: enough, ..hole };
                        prop_assert!(full_thread_that_fits(&thread, &deeper, chamfer).is_ok(), "{}", error);
                    }
                }
                return Ok(());
            }
        };
        let again = depths(&thread, &forward(&hole, found.full_thread_mm, chamfer)).unwrap();
        prop_assert_eq!(
            (again.tap_mm, again.program_tap_mm, again.full_diameter_mm),
            (found.tap_mm, found.program_tap_mm, found.full_diameter_mm)
        );
        if hole.drill_depth_to == DrilledTo::FullDiameter {
            prop_assert_eq!(again.full_diameter_mm, hole.drill_depth_mm);
            prop_assert_eq!(found.drill_point_mm, hole.point_angle_deg.map(|_| again.drill_point_mm));
        } else {
            let given = hole.drill_depth_mm.to_f64();
            prop_assert_eq!(found.drill_point_mm, Some(given));
            // Never deeper than the hole, and no shallower than the height of the point is rounded.
            prop_assert!((-1e-9..STEP).contains(&(given - again.drill_point_mm)), "{} {}", given, again.drill_point_mm);
        }
    }

    #[test]
    fn the_found_thread_is_the_longest_and_grows_with_the_hole(
        thread in thread(), hole in hole(), chamfer in parts(0..=80, 10), more in parts(1..=500, 100)
    ) {
        let Ok(found) = full_thread_that_fits(&thread, &hole, chamfer) else { return Ok(()) };
        let longer = depths(&thread, &forward(&hole, plus(found.full_thread_mm, more), chamfer)).unwrap();
        prop_assert!(longer.full_diameter_mm > found.full_diameter_mm);
        let of = |hole: BlindHole, chamfer| full_thread_that_fits(&thread, &hole, chamfer).map(|found| found.full_thread_mm);
        let deeper = BlindHole { drill_depth_mm: plus(hole.drill_depth_mm, more), ..hole };
        prop_assert_eq!(of(deeper, chamfer), Ok(plus(found.full_thread_mm, more)));
        let less = [
            of(BlindHole { bottom_clearance_mm: plus(hole.bottom_clearance_mm, more), ..hole }, chamfer),
            of(BlindHole { tap_centre_mm: plus(hole.tap_centre_mm, more), ..hole }, chamfer),
            of(hole, plus(chamfer, more)),
        ];
        prop_assert!(less.iter().flatten().all(|less| *less < found.full_thread_mm));
    }

    #[test]
    fn chamfers_agree_with_the_thread_that_fits(thread in thread(), hole in hole(), wanted in parts(1..=6_000, 100)) {
        let Ok(readings) = chamfers_for_full_thread(&thread, &hole, wanted) else {
            prop_assert!(full_thread_that_fits(&thread, &hole, Length::ZERO).is_err());
            return Ok(());
        };
        for (reading, form) in readings.iter().zip(ChamferForm::ALL) {
            prop_assert_eq!((reading.form, reading.chamfer_threads), (*form, form.threads().1));
            let fits = full_thread_that_fits(&thread, &hole, reading.chamfer_threads).ok();
            prop_assert_eq!(reading.full_thread_mm, fits.map(|fits| fits.full_thread_mm));
            let is_enough = reading.full_thread_mm.is_some_and(|left| left >= wanted);
            prop_assert_eq!(reading.gives_wanted, is_enough && *form != ChamferForm::B);
        }
    }

    #[test]
    fn the_room_is_what_is_left_of_the_hole(
        thread in thread(), tap in parts(1..=6_000, 100), point in parts(1..=8_000, 100), drill in parts(1..=400, 100),
        angle in proptest::option::of(angle())
    ) {
        let Ok(found) = bottoming(&thread, tap, point, drill, angle) else {
            prop_assert!(drill > thread.major_mm());
            return Ok(());
        };
        prop_assert_eq!((found.is_certain(), found.readings().count()), (angle.is_some(), if angle.is_some() { 1 } else { 4 }));
        let rooms: Vec<_> = found.readings().map(|reading| reading.room_mm).collect();
        prop_assert!(rooms.is_sorted(), "a flatter point leaves more room");
        for reading in found.readings() {
            prop_assert_eq!(reading.room_mm, minus(reading.full_diameter_mm, tap));
            let half = (reading.point_angle_deg.to_f64() / 2.0).to_radians();
            let height = drill.to_f64() / 2.0 * half.cos() / half.sin();
            let off = point.to_f64() - height - reading.full_diameter_mm.to_f64();
            prop_assert!((-1e-9..STEP).contains(&off), "{}", off);
            let verdict = if reading.room_mm.is_negative() {
                BottomVerdict::Error
            } else if reading.room_mm > thread.pitch_mm() {
                BottomVerdict::Fine
            } else {
                BottomVerdict::Warning
            };
            prop_assert_eq!(reading.verdict, verdict);
            // The same angle, said.
            let said = bottoming(&thread, tap, point, drill, Some(reading.point_angle_deg)).unwrap();
            prop_assert_eq!(said.readings().next(), Some(reading));
            prop_assert!(found.worst().number() >= verdict.number());
        }
        prop_assert!(found.readings().any(|reading| reading.verdict == found.worst()));
    }

    #[test]
    fn a_countersink_takes_more_where_it_is_wider_or_sharper(
        thread in thread(), diameter in parts(1..=5_000, 100), more in parts(1..=500, 100), angle in parts(60..=129, 1),
        hole in proptest::option::of(parts(1..=400, 100))
    ) {
        let Ok(found) = countersink(&thread, diameter, angle, hole) else { return Ok(()) };
        prop_assert!(thread.side() != Some(Side::External) && !thread.form().is_taper());
        prop_assert!(0.0 <= found.depth_at_major_mm && found.full_thread_lost_mm < found.tip_mm);
        prop_assert!(found.depth_at_major_mm <= found.full_thread_lost_mm && 0.0 < found.full_thread_lost_mm);
        prop_assert_eq!(found.depth_at_major_mm > 0.0, diameter > thread.major_mm());
        let wider = countersink(&thread, plus(diameter, more), angle, hole).unwrap();
        prop_assert!(wider.full_thread_lost_mm > found.full_thread_lost_mm && wider.tip_mm > found.tip_mm);
        let flatter = countersink(&thread, diameter, plus(angle, Length::ONE), hole).unwrap();
        prop_assert!(flatter.full_thread_lost_mm < found.full_thread_lost_mm && flatter.tip_mm < found.tip_mm);
        // At 90 degrees a cone is as deep as its radius.
        let square = countersink(&thread, diameter, Length::integer(90), hole).unwrap();
        prop_assert!((square.tip_mm * 2.0 - diameter.to_f64()).abs() < 1e-9);
    }

    #[test]
    fn depths_of_programs_are_on_the_safe_side(
        depth in parts(0..=9_999_999, 1_000), thirds in 0..3_i64, decimals in 0..=6_u8, inch in any::<bool>()
    ) {
        let depth = plus(depth, Length::new(thirds, 3_000).unwrap());
        let unit = if inch { Unit::Inch } else { Unit::Mm };
        let step = Length::new(1, 10_i64.pow(u32::from(decimals))).unwrap().times(unit.in_mm()).unwrap();
        let of = |rounding| program_depth(depth, unit, decimals, rounding).unwrap();
        let (deeper, shallower) = (of(DepthRounding::Deeper), of(DepthRounding::Shallower));
        prop_assert!(shallower.depth_mm <= depth && depth <= deeper.depth_mm);
        prop_assert!(minus(deeper.depth_mm, depth) < step && minus(depth, shallower.depth_mm) < step);
        for found in [deeper, shallower] {
            prop_assert_eq!(found.value.times(unit.in_mm()).unwrap(), found.depth_mm);
            let text = found.text.as_str();
            prop_assert!(text.contains('.') && !text.starts_with('.'), "{}", text);
            prop_assert!(!text.ends_with('0') || text == "0." , "{}", text);
            let read = threadcalc_core::read_number(text.trim_end_matches('.').as_bytes());
            prop_assert_eq!(read, Ok(found.value));
            // What is said once is said again.
            for rounding in [DepthRounding::Deeper, DepthRounding::Shallower] {
                prop_assert_eq!(program_depth(found.depth_mm, unit, decimals, rounding), Ok(found));
            }
        }
        let derived = program_depth_of_derived(depth.to_f64(), unit, decimals, DepthRounding::Deeper).unwrap();
        prop_assert!(minus(derived.depth_mm, deeper.depth_mm).magnitude() <= step);
    }

    #[test]
    fn what_comes_out_below_is_beyond_the_thickness(
        thread in thread(), (thickness, chamfer, turns) in (parts(1..=10_000, 100), parts(0..=200, 10), parts(0..=200, 10)),
        (drill, angle) in (parts(1..=400, 100), angle()), (clearance, centre) in (parts(0..=500, 100), parts(0..=500, 100)),
        set_on in set_on()
    ) {
        let request = ThroughHoleRequest {
            part_thickness_mm: thickness,
            chamfer_threads: chamfer,
            over_travel_turns: turns,
            drill_mm: drill,
            point_angle_deg: angle,
            drill_clearance_mm: clearance,
            tap_centre_mm: centre,
            tap_set_on: set_on,
        };
        let Ok(found) = through_hole(&thread, &request) else {
            prop_assert!(thread.form().is_taper() || drill > thread.major_mm());
            return Ok(());
        };
        prop_assert_eq!(found.tap_mm, plus(thickness, found.tap_below_mm));
        prop_assert_eq!(found.full_diameter_mm, plus(thickness, clearance));
        prop_assert!((found.drill_point_mm - thickness.to_f64() - found.drill_below_mm).abs() < 1e-9);
        // Without over-travel it is the tap of a hole as deep as the part is thick.
        let forward = DepthRequest {
            full_thread_mm: thickness,
            chamfer_threads: chamfer,
            drill_mm: drill,
            point_angle_deg: angle,
            bottom_clearance_mm: clearance,
            tap_centre_mm: centre,
            tap_set_on: set_on,
            hole: Hole::Through,
        };
        let same = depths(&thread, &forward).unwrap();
        prop_assert_eq!((same.program_tap_mm, same.full_diameter_mm), (found.program_tap_mm, found.full_diameter_mm));
        prop_assert_eq!(same.drill_point_mm, found.drill_point_mm);
        prop_assert_eq!(minus(found.tap_mm, same.tap_mm), turns.times(thread.lead_mm()).unwrap());
    }

    #[test]
    fn any_numbers_give_depths_or_an_error(
        thread in thread(), (a, b, c, d) in (length(), length(), length(), length()), decimals in any::<u8>(),
        derived in any::<f64>()
    ) {
        let hole = BlindHole {
            drill_depth_mm: a,
            drill_depth_to: DrilledTo::Point,
            drill_mm: b,
            point_angle_deg: Some(c),
            bottom_clearance_mm: d,
            tap_centre_mm: Length::ZERO,
            tap_set_on: TapSetOn::Front,
        };
        if let Ok(found) = full_thread_that_fits(&thread, &hole, Length::integer(3)) {
            prop_assert!(found.full_thread_mm.is_positive());
        }
        if let Ok(found) = countersink(&thread, a, b, Some(c)) {
            prop_assert!(found.tip_mm.is_finite() && found.full_thread_lost_mm > 0.0);
        }
        if let Ok(found) = bottoming(&thread, a, b, c, Some(d)) {
            prop_assert!(found.readings().count() == 1);
        }
        if let Ok(found) = program_depth(a, Unit::Inch, decimals, DepthRounding::Deeper) {
            prop_assert!(decimals <= 9 && found.depth_mm >= a);
        }
        if let Ok(found) = program_depth_of_derived(derived, Unit::Mm, decimals, DepthRounding::Shallower) {
            prop_assert!(found.depth_mm.to_f64() <= derived + 1e-9);
        }
    }

    #[test]
    fn run_outs_and_usual_countersinks_are_those_of_metric_holes(thread in thread()) {
        let is_metric = thread.form() == Form::Metric && !thread.is_wire_insert();
        let is_metric_hole = is_metric && thread.side() != Some(Side::External);
        match run_out_mm(&thread, RunOut::Normal) {
            Ok(run_out) => {
                let four_turns = thread.pitch_mm().times(Length::integer(4)).unwrap();
                prop_assert!(is_metric_hole && run_out >= four_turns);
            }
            Err(error) if error.code() == Code::Contradiction => prop_assert_eq!(thread.side(), Some(Side::External)),
            Err(error) if is_metric => prop_assert_eq!(error.code(), Code::NotSourced),
            Err(error) => prop_assert_eq!(error.code(), Code::DoesNotApply),
        }
        prop_assert_eq!(usual_countersink(&thread).is_ok(), is_metric_hole);
    }
}

/// A coarser thread needs more room, but fewer threads of it.
#[test]
fn run_outs_grow_with_the_pitch() {
    let of = |thread: Thread| run_out_mm(&thread, RunOut::Normal).ok().map(|run_out| (thread.pitch_mm(), run_out));
    let mut known: Vec<_> = threadcalc_core::standard_threads(Some(Form::Metric), None).filter_map(of).collect();
    known.sort();
    known.dedup();
    assert_eq!(known.len(), 24, "every pitch of the table is that of a standard thread");
    assert!(known.is_sorted_by(|a, b| a.0 < b.0 && a.1 < b.1));
}
