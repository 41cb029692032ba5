//! Gauges, what follows from them, and wires.

use core::ffi::CStr;

use threadcalc::*;

use super::protocol::{error_room, fixed_text, room, sized, succeeded};
use super::threads::{ratio_at, ratio_in, thread_at, thread_in};
use super::{Input, State};

pub fn list(state: &mut State, input: &mut Input<'_>) {
    let thread = thread_in(state, input);
    let thread = thread_at(thread.as_ref());
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let call = |set, size, error| unsafe { threadcalc_gauges(thread, set, size, error) };
    if let Some(set) = sized::<threadcalc_gauges_t>(input, call) {
        let count = usize::try_from(set.gauge_count).expect("a count");
        assert!(set.gauges[..count].iter().all(|gauge| (1..=10).contains(&gauge.kind)) && count > 0);
        assert!((1..=2).contains(&set.hand) && (0..=1).contains(&set.class_assumed));
        let _source = fixed_text(&set.limits_source);
        state.ratio = set.gauges[0].pitch_diameter_mm;
    }
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let call = |rule, size, error| unsafe { threadcalc_not_go_rule(thread, rule, size, error) };
    if let Some(rule) = sized::<threadcalc_not_go_rule_t>(input, call) {
        assert!((2..=3).contains(&rule.most_turns));
        assert!(!fixed_text(&rule.standard).is_empty() && !fixed_text(&rule.remark).is_empty());
    }
}

pub fn next_move(state: &mut State, input: &mut Input<'_>) {
    let (thread, reading) = (thread_in(state, input), input.choice());
    let (turns, asked) = (ratio_in(state, input), ratio_in(state, input));
    let (turns, asked) = (ratio_at(turns.as_ref()), ratio_at(asked.as_ref()));
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let call = |next, size, error| unsafe {
        threadcalc_next_move(thread_at(thread.as_ref()), reading, turns, asked, next, size, error)
    };
    if let Some(next) = sized::<threadcalc_next_move_t>(input, call) {
        let count = usize::try_from(next.move_count).expect("a count");
        assert!(next.moves[..count].iter().all(|number| (1..=14).contains(number)) && count > 0);
        assert!(next.moves[count..].iter().all(|number| *number == 0) && (1..=3).contains(&next.verdict));
        state.ratio = next.deeper_mm;
    }
}

pub fn trimmed_depth(state: &mut State, input: &mut Input<'_>) {
    let (thread, depth, turns) = (thread_in(state, input), ratio_in(state, input), ratio_in(state, input));
    let (error, deeper) = (error_room(input), room::<threadcalc_ratio_t>(input));
    // SAFETY: the pointers are NULL or of live memory.
    let status = unsafe {
        let (depth, turns) = (ratio_at(depth.as_ref()), ratio_at(turns.as_ref()));
        threadcalc_trimmed_depth_mm(thread_at(thread.as_ref()), depth, turns, deeper.pointer(), error.pointer())
    };
    if succeeded(status, &error, &[&deeper]) {
        state.ratio = deeper.value();
        assert!(state.ratio.numerator > 0 && state.ratio.denominator > 0);
    }
}

pub fn re_entry(state: &mut State, input: &mut Input<'_>) {
    let planes = [(); 3].map(|()| ratio_in(state, input));
    let [r, pitch, wanted] = planes.each_ref().map(|plane| ratio_at(plane.as_ref()));
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let call = |again, size, error| unsafe { threadcalc_re_entry_r(r, pitch, wanted, again, size, error) };
    if let Some(again) = sized::<threadcalc_re_entry_t>(input, call) {
        state.ratio = again.r_mm;
    }
    // SAFETY: the header says that it lives as long as the library.
    let rule = unsafe { CStr::from_ptr(threadcalc_re_entry_rule()) };
    assert!(rule.to_str().expect("a rule is UTF-8").ends_with("a tapped hole"));
}

pub fn wires(state: &mut State, input: &mut Input<'_>) {
    let thread = thread_in(state, input);
    let thread = thread_at(thread.as_ref());
    let (error, best) = (error_room(input), room::<f64>(input));
    // SAFETY: the pointers are NULL or of live memory.
    let status = unsafe { threadcalc_best_wire_mm(thread, best.pointer(), error.pointer()) };
    if succeeded(status, &error, &[&best]) {
        assert!(best.value::<f64>() > 0.0);
    }
    let (wire, diameter) = (ratio_in(state, input), ratio_in(state, input));
    let lead_angle = i32::from(input.byte() >> 6);
    let (error, over) = (error_room(input), room::<f64>(input));
    // SAFETY: the pointers are NULL or of live memory.
    let status = unsafe {
        let (wire, diameter) = (ratio_at(wire.as_ref()), ratio_at(diameter.as_ref()));
        threadcalc_over_wires(thread, wire, diameter, lead_angle, over.pointer(), error.pointer())
    };
    if succeeded(status, &error, &[&over]) {
        assert!(over.value::<f64>().is_finite() && lead_angle < 2);
    }
}
