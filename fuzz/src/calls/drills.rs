//! Drills, percent of thread, tap drills.

use threadcalc::*;

use super::memory::Exact;
use super::protocol::{error_room, fixed_text, list as list_of, pointer, request, room, sized, succeeded};
use super::threads::{finding_is_sound, place_of, ratio_at, ratio_in, text_in, thread_at, thread_in};
use super::{Input, State};

pub fn drill_is_sound(drill: &threadcalc_drill_t) {
    assert!((0..=4).contains(&drill.set) && drill.diameter_mm.denominator > 0);
    assert!(drill.set == 0 || !fixed_text(&drill.name).is_empty());
}

/// What the calls that give one drill have in common.
pub fn one_drill(
    state: &mut State,
    input: &mut Input<'_>,
    call: impl Fn(*mut threadcalc_drill_t, *mut threadcalc_error_t) -> threadcalc_status,
) {
    let (error, result) = (error_room(input), room::<threadcalc_drill_t>(input));
    let status = call(result.pointer(), error.pointer());
    if succeeded(status, &error, &[&result]) {
        let drill: threadcalc_drill_t = result.value();
        drill_is_sound(&drill);
        state.keep_drill(input, drill);
    }
}

pub fn list(state: &mut State, input: &mut Input<'_>) {
    let sets = u32::from_ne_bytes(input.choice().to_ne_bytes());
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let call = |place, room, count, error| unsafe { threadcalc_drills(sets, place, room, count, error) };
    let found: Vec<threadcalc_drill_t> = list_of(input, 16, call).unwrap_or_default();
    if !found.is_empty() {
        let drill = &found[usize::from(input.byte()) * found.len() / 256];
        drill_is_sound(drill);
        state.ratio = drill.diameter_mm;
    }
}

pub fn named(state: &mut State, input: &mut Input<'_>) {
    let (set, (name, length)) = (input.choice(), text_in(input));
    let name = place_of(name.as_ref());
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    one_drill(state, input, |drill, error| unsafe { threadcalc_drill_named(set, name, length, drill, error) });
}

pub fn of_diameter(state: &mut State, input: &mut Input<'_>) {
    let diameter = ratio_in(state, input);
    let diameter = ratio_at(diameter.as_ref());
    // SAFETY: the pointers are NULL or of live memory.
    one_drill(state, input, |drill, error| unsafe { threadcalc_drill_of_diameter(diameter, drill, error) });
}

/// The call of [`diameter`] or [`percent`].
type OfThread = unsafe extern "C" fn(
    *const threadcalc_thread_t,
    *const threadcalc_ratio_t,
    threadcalc_tap,
    threadcalc_basis,
    *mut f64,
    *mut threadcalc_error_t,
) -> threadcalc_status;

fn double_of(state: &State, input: &mut Input<'_>, call: OfThread) {
    let (thread, number) = (thread_in(state, input), ratio_in(state, input));
    let (tap, basis) = (input.choice(), input.choice());
    let (error, result) = (error_room(input), room::<f64>(input));
    // SAFETY: the pointers are NULL or of live memory.
    let status = unsafe {
        call(thread_at(thread.as_ref()), ratio_at(number.as_ref()), tap, basis, result.pointer(), error.pointer())
    };
    if succeeded(status, &error, &[&result]) {
        assert!(result.value::<f64>().is_finite());
    }
}

pub fn diameter(state: &mut State, input: &mut Input<'_>) {
    double_of(state, input, threadcalc_drill_diameter);
}

pub fn percent(state: &mut State, input: &mut Input<'_>) {
    double_of(state, input, threadcalc_percent_thread);
}

/// Its counts lie within its lists, its texts are texts.
pub fn tap_drill_is_sound(found: &threadcalc_tap_drill_t) {
    drill_is_sound(&found.chosen.drill);
    let count = |count: i32| usize::try_from(count).expect("a count");
    for judged in &found.alternatives[..count(found.alternative_count)] {
        drill_is_sound(&judged.drill);
        // Of a taper thread there is no percent.
        assert!((1..=3).contains(&judged.within_limits) && !judged.percent.is_infinite());
    }
    found.findings[..count(found.finding_count)].iter().for_each(finding_is_sound);
    assert!((0..=1).contains(&found.limits.is_given));
    let _source = fixed_text(&found.limits.source);
    let has_hole = found.probable_hole_mm.denominator > 0;
    assert_eq!(has_hole, !found.probable_percent.is_nan(), "a hole has a percent");
    assert!(has_hole || found.probable_left_to_limit_mm.denominator == 0);
}

fn pointer_of(listed: Option<&Exact>) -> *const threadcalc_drill_t {
    listed.map_or(core::ptr::null(), Exact::pointer)
}

pub fn tap_drill(state: &mut State, input: &mut Input<'_>) {
    let thread = thread_in(state, input);
    // Of the known drills so many; a count without a list is refused.
    let count = if input.byte() < 0xA0 { 0 } else { input.place(state.drills.len()) };
    let listed = (count > 0).then(|| Exact::of(&state.drills));
    let asked = threadcalc_tap_drill_request_t {
        size: 0,
        tap: input.choice(),
        basis: input.choice(),
        sets: u32::from_ne_bytes(input.choice().to_ne_bytes()),
        taper_reamer: i32::from(input.byte() >> 6),
        reserved: u32::from(input.seldom()),
        percent: input.ratio(state),
        drills: pointer_of(listed.as_ref()),
        drill_count: if input.seldom() { usize::from(input.byte()) * usize::from(listed.is_none()) } else { count },
        oversize_mm: if input.seldom() { input.ratio(state) } else { threadcalc_ratio_t::default() },
    };
    let asked = request(input, &asked);
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let call = |found, size, error| unsafe {
        threadcalc_tap_drill(thread_at(thread.as_ref()), pointer(asked.as_ref()), found, size, error)
    };
    let Some(found) = sized(input, call) else { return };
    assert!(asked.as_ref().is_some_and(|asked| !asked.is_refused), "no such request is taken");
    tap_drill_is_sound(&found);
    state.keep_drill(input, found.chosen.drill);
}
