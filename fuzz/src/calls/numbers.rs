//! Exact numbers, speeds and feeds.

use threadcalc::*;

use super::memory::{Exact, Room};
use super::protocol::{error_room, fixed_text, list, pointer, request, room, sized, succeeded, text};
use super::threads::{place_of, ratio_at, ratio_in, text_in};
use super::{Input, State};

/// What the calls that give one number have in common.
fn one_number(
    state: &mut State,
    input: &mut Input<'_>,
    call: impl Fn(*mut threadcalc_ratio_t, *mut threadcalc_error_t) -> threadcalc_status,
) -> Option<threadcalc_ratio_t> {
    let (error, result) = (error_room(input), room::<threadcalc_ratio_t>(input));
    let status = call(result.pointer(), error.pointer());
    succeeded(status, &error, &[&result]).then(|| {
        state.ratio = result.value();
        assert!(state.ratio.denominator > 0, "a result is in lowest terms");
        state.ratio
    })
}

/// The double nearest to a number that the library gave.
fn nearest(number: threadcalc_ratio_t) -> f64 {
    let (given, result) = (Exact::of(&number), Room::of::<f64>());
    // SAFETY: the pointers are of live memory.
    let status = unsafe { threadcalc_nearest_double(given.pointer(), result.pointer(), core::ptr::null_mut()) };
    assert_eq!(status, THREADCALC_STATUS_OK);
    result.value()
}

pub fn read(state: &mut State, input: &mut Input<'_>) {
    let (text, length) = text_in(input);
    let text = place_of(text.as_ref());
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let _number =
        one_number(state, input, |number, error| unsafe { threadcalc_read_number(text, length, number, error) });
}

pub fn write(state: &mut State, input: &mut Input<'_>) {
    let number = ratio_in(state, input);
    let number = ratio_at(number.as_ref());
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let call = |place, room, needed, error| unsafe { threadcalc_write_number(number, place, room, needed, error) };
    let Some(text) = text(input, call) else { return };
    assert!(text.len() < 41, "{text}");
    let again = Room::of::<threadcalc_ratio_t>();
    // SAFETY: the pointers are of live memory of these lengths.
    let status = unsafe { threadcalc_read_number(text.as_ptr(), text.len(), again.pointer(), core::ptr::null_mut()) };
    assert_eq!(status, THREADCALC_STATUS_OK, "{text}");
    state.ratio = again.value();
}

pub fn exact(state: &mut State, input: &mut Input<'_>) {
    let value = input.double();
    // SAFETY: the pointers are NULL or of live memory.
    let number = one_number(state, input, |number, error| unsafe { threadcalc_exact_number(value, number, error) });
    assert!(number.is_none_or(|number| nearest(number) == value), "{value}");
}

pub fn nearest_double(state: &mut State, input: &mut Input<'_>) {
    let number = ratio_in(state, input);
    let (error, result) = (error_room(input), room::<f64>(input));
    // SAFETY: the pointers are NULL or of live memory.
    let status = unsafe { threadcalc_nearest_double(ratio_at(number.as_ref()), result.pointer(), error.pointer()) };
    assert!(!succeeded(status, &error, &[&result]) || result.value::<f64>().is_finite());
}

pub fn programmed_speed(state: &mut State, input: &mut Input<'_>) {
    let numbers = [(); 4].map(|()| ratio_in(state, input));
    let [rpm, step, lowest, highest] = numbers.each_ref().map(|number| ratio_at(number.as_ref()));
    // SAFETY: the pointers are NULL or of live memory.
    let call = |held, error| unsafe { threadcalc_programmed_speed(rpm, step, lowest, highest, held, error) };
    let held = one_number(state, input, call);
    assert!(held.is_none_or(|held| held.numerator > 0), "a speed is above 0");
}

pub fn feed(state: &mut State, input: &mut Input<'_>) {
    let asked = threadcalc_feed_request_t {
        size: 0,
        unit: input.choice(),
        mode: input.choice(),
        reserved: u32::from(input.seldom()),
        decimals: input.ratio(state),
        lead_mm: input.ratio(state),
        rpm: input.ratio(state),
    };
    let asked = request(input, &asked);
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let call = |feed, size, error| unsafe { threadcalc_feed(pointer(asked.as_ref()), feed, size, error) };
    let Some(feed) = sized::<threadcalc_feed_t>(input, call) else { return };
    assert!(asked.is_some_and(|asked| !asked.is_refused), "no such request is taken");
    assert!(fixed_text(&feed.word).starts_with('F'));
    state.ratio = feed.lead_cut_mm;
}

pub fn exact_speeds(state: &mut State, input: &mut Input<'_>) {
    let (lead, rpm) = (ratio_in(state, input), ratio_in(state, input));
    let (lead, rpm) = (ratio_at(lead.as_ref()), ratio_at(rpm.as_ref()));
    let (unit, decimals) = (input.choice(), input.choice());
    let [lowest, highest] = [(); 2].map(|()| if input.seldom() { input.int64() } else { i64::from(input.byte()) });
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let call = |speeds, wanted, count, error| unsafe {
        threadcalc_exact_speeds(lead, rpm, unit, decimals, lowest, highest, speeds, wanted, count, error)
    };
    for speed in list::<i64>(input, 5, call).unwrap_or_default() {
        assert!(speed >= lowest && (highest == 0 || speed <= highest), "{speed} in {lowest} to {highest}");
    }
}

pub fn nearest_exact_speeds(state: &mut State, input: &mut Input<'_>) {
    let given = [(); 5].map(|()| ratio_in(state, input));
    let [lead, rpm, step, lowest, highest] = [0, 1, 2, 3, 4].map(|place: usize| ratio_at(given[place].as_ref()));
    let (unit, decimals) = (input.choice(), input.choice());
    let (error, below, above) = (error_room(input), room::<i64>(input), room::<i64>(input));
    // SAFETY: the pointers are NULL or of live memory.
    let status = unsafe {
        threadcalc_nearest_exact_speeds(
            lead,
            rpm,
            unit,
            decimals,
            step,
            lowest,
            highest,
            below.pointer(),
            above.pointer(),
            error.pointer(),
        )
    };
    if succeeded(status, &error, &[&below, &above]) {
        let (below, above) = (below.value::<i64>(), above.value::<i64>());
        assert!(below >= 0 && above >= 0 && (below == 0 || above == 0 || below < above));
    }
}
