//! Leads and words that are identified.

use threadcalc::*;

use super::memory::Room;
use super::protocol::{fixed_text, list, pointer, request};
use super::threads::{ratio_at, ratio_in};
use super::{Input, State};

/// What every answer holds by.
fn is_sound(state: &mut State, found: &threadcalc_identification_t, matches: &[threadcalc_match_t]) {
    assert!((1..=3).contains(&found.verdict) && (1..=12).contains(&found.starts));
    assert!(fixed_text(&found.text).ends_with(" %)"));
    let (within, count) = (matches.iter().filter(|near| near.is_within == 1).count(), matches.len());
    match found.verdict {
        THREADCALC_LEAD_VERDICT_IDENTIFIED => assert_eq!((within, count), (1, 1)),
        THREADCALC_LEAD_VERDICT_AMBIGUOUS => assert!(within == count || (within < 2 && count == 2)),
        _ => assert_eq!((within, count), (0, 2)),
    }
    let error =
        |near: &threadcalc_match_t| (near.lead_error.numerator as f64 / near.lead_error.denominator as f64).abs();
    assert!(matches.windows(2).all(|two| error(&two[0]) <= error(&two[1])), "nearest first");
    for near in matches {
        let systems = near.is_metric + near.is_unified + near.is_whitworth_pipe + near.is_npt;
        assert!(systems > 0 && (near.is_metric == 1) == (near.tpi.denominator == 0));
        assert!(fixed_text(&near.name).ends_with(if near.is_metric == 1 { " mm" } else { " TPI" }));
        assert!(near.is_exact == 0 || near.is_within == 1);
    }
    state.ratio = matches[0].pitch_mm;
}

fn starts(input: &mut Input<'_>) -> i32 {
    if input.seldom() { input.int32() } else { i32::from(input.byte() >> 4) }
}

/// The answer of the last call of a list that succeeded.
fn answer(place: &Room) -> threadcalc_identification_t {
    assert!(!place.is_untouched(), "an answer is written with its list");
    place.value()
}

pub fn lead(state: &mut State, input: &mut Input<'_>) {
    let (lead, within, starts) = (ratio_in(state, input), ratio_in(state, input), starts(input));
    let (lead, within) = (ratio_at(lead.as_ref()), ratio_at(within.as_ref()));
    let place = Room::of::<threadcalc_identification_t>();
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let call = |matches, capacity, count, error| unsafe {
        let size = size_of::<threadcalc_identification_t>();
        threadcalc_identify(lead, within, starts, place.pointer(), size, matches, capacity, count, error)
    };
    match list::<threadcalc_match_t>(input, 54, call) {
        Some(matches) => is_sound(state, &answer(&place), &matches),
        None => assert!(place.is_untouched(), "no answer without a list"),
    }
}

pub fn words(state: &mut State, input: &mut Input<'_>) {
    let asked = threadcalc_feed_words_t {
        size: 0,
        unit: input.choice(),
        mode: input.choice(),
        starts: starts(input),
        feed: input.ratio(state),
        feed_decimals: input.ratio(state),
        most_feed_decimals: input.ratio(state),
        rpm: input.ratio(state),
        rpm_decimals: input.ratio(state),
        most_rpm_decimals: input.ratio(state),
        within: input.ratio(state),
    };
    let asked = request(input, &asked);
    let place = Room::of::<threadcalc_identification_t>();
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let call = |matches, capacity, count, error| unsafe {
        let size = size_of::<threadcalc_identification_t>();
        let asked = pointer(asked.as_ref());
        threadcalc_identify_feed(asked, place.pointer(), size, matches, capacity, count, error)
    };
    let Some(matches) = list::<threadcalc_match_t>(input, 54, call) else {
        assert!(place.is_untouched(), "no answer without a list");
        return;
    };
    assert!(asked.is_some_and(|asked| !asked.is_refused), "no such request is taken");
    is_sound(state, &answer(&place), &matches);
}

pub fn threads(state: &mut State, input: &mut Input<'_>) {
    let (pitch, diameter, starts) = (ratio_in(state, input), ratio_in(state, input), starts(input));
    let (pitch, diameter) = (ratio_at(pitch.as_ref()), ratio_at(diameter.as_ref()));
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let call = |threads, capacity, count, error| unsafe {
        threadcalc_threads_of_pitch(pitch, diameter, starts, threads, capacity, count, error)
    };
    for thread in list::<threadcalc_thread_t>(input, 16, call).unwrap_or_default() {
        assert_eq!(thread.starts, starts.max(1));
        state.keep_thread(input, thread);
    }
}

/// Those about a diameter or a pitch, of all families.
pub fn near(state: &mut State, input: &mut Input<'_>) {
    let (value, within) = (ratio_in(state, input), ratio_in(state, input));
    let (value, within) = (ratio_at(value.as_ref()), ratio_at(within.as_ref()));
    let by_pitch = input.byte() & 1 == 1;
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let call = |threads, capacity, count, error| unsafe {
        if by_pitch {
            threadcalc_threads_near_pitch(value, within, threads, capacity, count, error)
        } else {
            threadcalc_threads_near_diameter(value, within, threads, capacity, count, error)
        }
    };
    for thread in list::<threadcalc_thread_t>(input, 64, call).unwrap_or_default() {
        assert_eq!(thread.starts, 1);
        state.keep_thread(input, thread);
    }
}
