//! Names of drills, what a drill probably cuts, the hole of a form tap, and judging a drill.

use threadcalc::*;

use super::drills::{one_drill, tap_drill_is_sound};
use super::memory::Exact;
use super::protocol::{error_room, room, sized, succeeded};
use super::threads::{place_of, ratio_at, ratio_in, text_in, thread_at, thread_in};
use super::{Input, State};

/// A drill that a call gave, or NULL.
fn drill_in(state: &State, input: &mut Input<'_>) -> Option<Exact> {
    let drill = state.drills[input.place(state.drills.len())];
    (!input.seldom()).then(|| Exact::of(&drill))
}

fn drill_at(drill: Option<&Exact>) -> *const threadcalc_drill_t {
    drill.map_or(core::ptr::null(), Exact::pointer)
}

pub fn read(state: &mut State, input: &mut Input<'_>) {
    let (name, length) = text_in(input);
    let name = place_of(name.as_ref());
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    one_drill(state, input, |drill, error| unsafe { threadcalc_read_drill(name, length, drill, error) });
}

pub fn probable_hole(state: &mut State, input: &mut Input<'_>) {
    let (drill, oversize) = (drill_in(state, input), ratio_in(state, input));
    let (error, result) = (error_room(input), room::<threadcalc_ratio_t>(input));
    // SAFETY: the pointers are NULL or of live memory.
    let status = unsafe {
        threadcalc_probable_hole(
            drill_at(drill.as_ref()),
            ratio_at(oversize.as_ref()),
            result.pointer(),
            error.pointer(),
        )
    };
    if succeeded(status, &error, &[&result]) {
        state.ratio = result.value();
        assert!(state.ratio.denominator > 0);
    }
}

pub fn form_hole(state: &mut State, input: &mut Input<'_>) {
    let thread = thread_in(state, input);
    let (error, least, most) =
        (error_room(input), room::<threadcalc_ratio_t>(input), room::<threadcalc_ratio_t>(input));
    // SAFETY: the pointers are NULL or of live memory.
    let status =
        unsafe { threadcalc_form_hole(thread_at(thread.as_ref()), least.pointer(), most.pointer(), error.pointer()) };
    if succeeded(status, &error, &[&least, &most]) {
        let least: threadcalc_ratio_t = least.value();
        assert!(least.numerator > 0 && least.denominator > 0);
        state.ratio = most.value();
    }
}

pub fn judge(state: &mut State, input: &mut Input<'_>) {
    let (thread, drill, oversize) = (thread_in(state, input), drill_in(state, input), ratio_in(state, input));
    let oversize = if input.byte() < 0x80 { None } else { oversize };
    let (tap, basis) = (input.choice(), input.choice());
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let call = |found, size, error| unsafe {
        threadcalc_judge_drill(
            thread_at(thread.as_ref()),
            drill_at(drill.as_ref()),
            tap,
            basis,
            ratio_at(oversize.as_ref()),
            found,
            size,
            error,
        )
    };
    if let Some(found) = sized(input, call) {
        tap_drill_is_sound(&found);
        assert_eq!(found.alternative_count, 0);
    }
}
