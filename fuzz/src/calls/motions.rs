//! Strokes, axis feeds, patterns and holders.

use threadcalc::*;

use super::protocol::{error_room, pointer, request, room, sized, succeeded};
use super::threads::{ratio_at, ratio_in, thread_at, thread_in};
use super::{Input, State};

pub fn tapping_time(state: &mut State, input: &mut Input<'_>) {
    let flags = input.byte();
    let asked = threadcalc_motion_request_t {
        size: 0,
        acceleration_is_given: i32::from(flags >> 6),
        lead_mm: input.ratio(state),
        rpm: input.ratio(state),
        travel_mm: input.ratio(state),
        retract_factor: input.ratio(state),
        acceleration_rpm_s: input.double(),
        dwell_s: input.double(),
        peck_mm: if flags & 1 == 0 { threadcalc_ratio_t::default() } else { input.ratio(state) },
    };
    let asked = request(input, &asked);
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let call = |found, size, error| unsafe { threadcalc_tapping_time(pointer(asked.as_ref()), found, size, error) };
    let Some(found) = sized::<threadcalc_tapping_time_t>(input, call) else { return };
    assert!(asked.is_some_and(|asked| !asked.is_refused), "no such request is taken");
    let positive = [found.reached_rpm, found.retract_rpm, found.turns, found.time_in_s, found.time_out_s];
    assert!(positive.iter().all(|value| value.is_finite() && *value > 0.0), "{positive:?}");
    assert!(found.time_s >= found.time_in_s.max(found.time_out_s) && found.turns_to_speed >= 0.0);
    assert!((0..=1).contains(&found.reaches_speed) && (1..=1000).contains(&found.strokes));
}

/// The two directions of a ramp: the turns to a speed are at most those that the speed after them had.
pub fn ramp(state: &mut State, input: &mut Input<'_>) {
    let (rpm, acceleration) = (ratio_in(state, input), input.double());
    let (error, turns) = (error_room(input), room::<f64>(input));
    let rpm = ratio_at(rpm.as_ref());
    // SAFETY: the pointers are NULL or of live memory.
    let status = unsafe { threadcalc_turns_to_speed(rpm, acceleration, turns.pointer(), error.pointer()) };
    let given = if succeeded(status, &error, &[&turns]) { turns.value() } else { input.double() };
    let (error, speed) = (error_room(input), room::<f64>(input));
    // SAFETY: the pointers are NULL or of live memory.
    let status = unsafe { threadcalc_speed_after_turns(given, acceleration, speed.pointer(), error.pointer()) };
    if succeeded(status, &error, &[&speed]) {
        let speed: f64 = speed.value();
        assert!((speed * speed / (120.0 * acceleration) - given).abs() <= 1e-12 * given, "{given} {acceleration}");
    }
}

pub fn feed_fit(state: &mut State, input: &mut Input<'_>) {
    let numbers = [(); 4].map(|()| ratio_in(state, input));
    let [lead, rpm, factor, limit] = numbers.each_ref().map(|number| ratio_at(number.as_ref()));
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let call = |fit, size, error| unsafe { threadcalc_feed_fit(lead, rpm, factor, limit, fit, size, error) };
    let Some(fit) = sized::<threadcalc_feed_fit_t>(input, call) else { return };
    for number in [fit.feed_mm_min, fit.retract_feed_mm_min, fit.fastest_rpm] {
        assert!(number.numerator > 0 && number.denominator > 0);
    }
    assert!((0..=1).contains(&fit.is_within));
    state.ratio = fit.feed_mm_min;
}

pub fn pattern_time(state: &mut State, input: &mut Input<'_>) {
    let holes = u32::from_ne_bytes(input.int32().to_ne_bytes()) >> (input.byte() % 32);
    let (distance, feed, seconds) = (ratio_in(state, input), ratio_in(state, input), input.double());
    let (error, result) = (error_room(input), room::<f64>(input));
    let (distance, feed) = (ratio_at(distance.as_ref()), ratio_at(feed.as_ref()));
    // SAFETY: the pointers are NULL or of live memory.
    let status =
        unsafe { threadcalc_pattern_time_s(holes, distance, feed, seconds, result.pointer(), error.pointer()) };
    if succeeded(status, &error, &[&result]) {
        let time: f64 = result.value();
        assert!(time.is_finite() && time >= seconds, "{time}");
    }
}

pub fn holder_clearance(state: &mut State, input: &mut Input<'_>) {
    let (thread, holder) = (thread_in(state, input), input.choice());
    let thread = thread_at(thread.as_ref());
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let call = |found, size, error| unsafe { threadcalc_holder_clearance(thread, holder, found, size, error) };
    let Some(room) = sized::<threadcalc_holder_clearance_t>(input, call) else { return };
    assert!((1..=3).contains(&holder));
    for number in [room.least_mm, room.ample_mm, room.least_turns, room.ample_turns] {
        assert!(number.numerator > 0 && number.denominator > 0);
    }
    state.ratio = room.ample_mm;
}

/// How far a holder has to give; exactly that much is room for it.
pub fn holder_travel(state: &mut State, input: &mut Input<'_>) {
    let numbers = [(); 4].map(|()| ratio_in(state, input));
    let [lead, depth, underfeed, over_travel] = numbers.each_ref().map(|number| ratio_at(number.as_ref()));
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let call = |found, size, error| unsafe {
        threadcalc_holder_travel(lead, depth, underfeed, over_travel, found, size, error)
    };
    let found = sized::<threadcalc_holder_travel_t>(input, call);
    let rooms = match found {
        Some(found) => [found.extension_mm, found.compression_mm],
        None => [(); 2].map(|()| input.ratio(state)),
    };
    let (error, fits) = (error_room(input), room::<i32>(input));
    let [extension, compression] = rooms.each_ref().map(|room| &raw const *room);
    // SAFETY: the pointers are NULL or of live memory.
    let status = unsafe {
        let fits = fits.pointer();
        threadcalc_holder_fits(lead, depth, underfeed, over_travel, extension, compression, fits, error.pointer())
    };
    if succeeded(status, &error, &[&fits]) {
        let fits: i32 = fits.value();
        assert!((0..=1).contains(&fits) && (found.is_none() || fits == 1), "what it gives is room for it");
    }
}
