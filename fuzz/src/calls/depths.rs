//! Depths back from a drilled hole, its bottom and its mouth, and depths of programs.

use threadcalc::*;

use super::protocol::{error_room, fixed_text, list, pointer, request, room, sized, succeeded};
use super::threads::{ratio_at, ratio_in, thread_at, thread_in};
use super::{Input, State};

fn blind_hole(state: &State, input: &mut Input<'_>) -> threadcalc_blind_hole_t {
    threadcalc_blind_hole_t {
        size: 0,
        drill_depth_to: input.choice(),
        tap_set_on: input.choice(),
        reserved: u32::from(input.seldom()),
        drill_depth_mm: input.ratio(state),
        drill_mm: input.ratio(state),
        point_angle_deg: input.ratio(state),
        bottom_clearance_mm: input.ratio(state),
        tap_centre_mm: input.ratio(state),
    }
}

pub fn full_thread_that_fits(state: &mut State, input: &mut Input<'_>) {
    let (thread, hole) = (thread_in(state, input), blind_hole(state, input));
    let (hole, chamfer) = (request(input, &hole), ratio_in(state, input));
    let (thread, chamfer) = (thread_at(thread.as_ref()), ratio_at(chamfer.as_ref()));
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let call = |found, size, error| unsafe {
        threadcalc_full_thread_that_fits(thread, pointer(hole.as_ref()), chamfer, found, size, error)
    };
    let Some(found) = sized::<threadcalc_blind_thread_t>(input, call) else { return };
    assert!(hole.as_ref().is_some_and(|hole| !hole.is_refused), "no such request is taken");
    assert!(found.full_thread_mm.numerator > 0 && !found.drill_point_mm.is_infinite());
    state.ratio = found.full_thread_mm;
}

pub fn chamfers_for_full_thread(state: &mut State, input: &mut Input<'_>) {
    let (thread, hole) = (thread_in(state, input), blind_hole(state, input));
    let (hole, wanted) = (request(input, &hole), ratio_in(state, input));
    let (thread, wanted) = (thread_at(thread.as_ref()), ratio_at(wanted.as_ref()));
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let call = |place, capacity, count, error| unsafe {
        threadcalc_chamfers_for_full_thread(thread, pointer(hole.as_ref()), wanted, place, capacity, count, error)
    };
    let Some(found) = list::<threadcalc_chamfer_reading_t>(input, 10, call) else { return };
    assert_eq!(found.len(), 10);
    assert!(found.iter().all(|reading| reading.gives_wanted == 0 || reading.full_thread_mm.numerator > 0));
}

pub fn bottoming(state: &mut State, input: &mut Input<'_>) {
    let thread = thread_in(state, input);
    let numbers = [(); 4].map(|()| ratio_in(state, input));
    let [tap, point, drill, angle] = numbers.each_ref().map(|number| ratio_at(number.as_ref()));
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let call = |found, size, error| unsafe {
        threadcalc_bottoming(thread_at(thread.as_ref()), tap, point, drill, angle, found, size, error)
    };
    let Some(found) = sized::<threadcalc_bottoming_t>(input, call) else { return };
    assert_eq!(found.reading_count, if found.is_certain == 1 { 1 } else { 4 });
    for reading in &found.readings[..usize::try_from(found.reading_count).expect("a count")] {
        assert!((1..=found.worst).contains(&reading.verdict) && reading.room_mm.denominator > 0);
        assert_eq!(reading.verdict == THREADCALC_BOTTOM_VERDICT_ERROR, reading.room_mm.numerator < 0);
    }
    state.ratio = found.readings[0].full_diameter_mm;
}

pub fn run_out(state: &mut State, input: &mut Input<'_>) {
    let (thread, kind) = (thread_in(state, input), input.choice());
    let (error, result) = (error_room(input), room::<threadcalc_ratio_t>(input));
    // SAFETY: the pointers are NULL or of live memory.
    let status = unsafe { threadcalc_run_out(thread_at(thread.as_ref()), kind, result.pointer(), error.pointer()) };
    if succeeded(status, &error, &[&result]) {
        state.ratio = result.value();
        assert!(state.ratio.numerator > 0);
    }
}

pub fn countersinks(state: &mut State, input: &mut Input<'_>) {
    let thread = thread_in(state, input);
    let thread = thread_at(thread.as_ref());
    let numbers = [(); 3].map(|()| ratio_in(state, input));
    let [diameter, angle, hole] = numbers.each_ref().map(|number| ratio_at(number.as_ref()));
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let call =
        |found, size, error| unsafe { threadcalc_countersink(thread, diameter, angle, hole, found, size, error) };
    if let Some(found) = sized::<threadcalc_countersunk_t>(input, call) {
        assert!(found.full_thread_lost_mm > 0.0 && found.tip_mm.is_finite());
        assert!((0.0..=found.full_thread_lost_mm).contains(&found.depth_at_major_mm));
    }
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let call = |usual, size, error| unsafe { threadcalc_usual_countersink(thread, usual, size, error) };
    if let Some(usual) = sized::<threadcalc_usual_countersink_t>(input, call) {
        state.ratio = usual.most_mm;
    }
}

pub fn program_depths(state: &mut State, input: &mut Input<'_>) {
    let (depth, derived) = (ratio_in(state, input), input.double());
    let (unit, decimals, side) = (input.choice(), input.choice(), input.choice());
    let depth = ratio_at(depth.as_ref());
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let call =
        |found, size, error| unsafe { threadcalc_program_depth(depth, unit, decimals, side, found, size, error) };
    let exact = sized::<threadcalc_program_depth_t>(input, call);
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let call = |found, size, error| unsafe {
        threadcalc_program_depth_of_derived(derived, unit, decimals, side, found, size, error)
    };
    let derived = sized::<threadcalc_program_depth_t>(input, call);
    for found in exact.iter().chain(&derived) {
        assert!(fixed_text(&found.text).contains('.') && found.value.numerator >= 0);
        state.ratio = found.depth_mm;
    }
}

pub fn through_hole(state: &mut State, input: &mut Input<'_>) {
    let thread = thread_in(state, input);
    let asked = threadcalc_through_hole_request_t {
        size: 0,
        tap_set_on: input.choice(),
        part_thickness_mm: input.ratio(state),
        chamfer_threads: input.ratio(state),
        over_travel_turns: input.ratio(state),
        drill_mm: input.ratio(state),
        point_angle_deg: input.ratio(state),
        drill_clearance_mm: input.ratio(state),
        tap_centre_mm: input.ratio(state),
    };
    let asked = request(input, &asked);
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let call = |found, size, error| unsafe {
        threadcalc_through_hole(thread_at(thread.as_ref()), pointer(asked.as_ref()), found, size, error)
    };
    let Some(found) = sized::<threadcalc_through_hole_t>(input, call) else { return };
    assert!(asked.as_ref().is_some_and(|asked| !asked.is_refused), "no such request is taken");
    assert!(found.tap_below_mm.numerator >= 0 && found.drill_below_mm >= 0.0);
    state.ratio = found.tap_mm;
}
