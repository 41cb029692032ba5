//! Threads: read, built, written, listed, looked at.

use threadcalc::*;

use super::memory::{Exact, Room, bytes_of};
use super::protocol::{error_room, fixed_text, list, room, sized, succeeded, text};
use super::{Input, State};

/// A thread that can be read.
pub fn known(designation: &[u8]) -> threadcalc_thread_t {
    let result = Room::of::<threadcalc_thread_t>();
    // SAFETY: the pointers are of live memory of these lengths.
    let status = unsafe {
        threadcalc_thread_read(designation.as_ptr(), designation.len(), result.pointer(), core::ptr::null_mut())
    };
    assert_eq!(status, THREADCALC_STATUS_OK);
    result.value()
}

/// A thread that the library gave is one that it takes. Its text is the same thread, unless it was made
/// of numbers that no designation has.
pub fn keep(state: &mut State, input: &mut Input<'_>, thread: threadcalc_thread_t, has_designation: bool) {
    let given = Exact::of(&thread);
    let (written, needed) = (Room::new(81), Room::of::<usize>());
    // SAFETY: the pointers are of live memory of these lengths.
    let status = unsafe {
        threadcalc_thread_write(given.pointer(), written.pointer(), 81, needed.pointer(), core::ptr::null_mut())
    };
    assert_eq!(status, THREADCALC_STATUS_OK);
    state.keep_thread(input, thread);
    if !has_designation {
        return;
    }
    let length: usize = needed.value();
    let again = known(&written.bytes()[..length - 1]);
    let same = |mut thread: threadcalc_thread_t| {
        // A side that was set by hand stands in no text, and a name that was replaced neither.
        thread.side = if thread.tolerance_class[0] == 0 { 0 } else { thread.side };
        thread.written_as = 0;
        thread
    };
    assert!(bytes_of(&same(again)) == bytes_of(&same(thread)), "{}", String::from_utf8_lossy(written.bytes()));
}

/// What the calls that give one thread have in common.
fn one_thread(
    state: &mut State,
    input: &mut Input<'_>,
    call: impl Fn(*mut threadcalc_thread_t, *mut threadcalc_error_t) -> threadcalc_status,
    designation_length: Option<usize>,
) {
    let (error, result) = (error_room(input), room::<threadcalc_thread_t>(input));
    let status = call(result.pointer(), error.pointer());
    if succeeded(status, &error, &[&result]) {
        keep(state, input, result.value(), designation_length.is_some());
    } else if let (Some(error), Some(length)) = (error.items::<threadcalc_error_t>().first(), designation_length) {
        assert!(error.at <= i64::try_from(length).expect("a short text"), "at {}", error.at);
    }
}

/// The text of an input, or NULL; the length is said all the same.
pub fn text_in(input: &mut Input<'_>) -> (Option<Exact>, usize) {
    let text = input.text();
    ((!input.seldom()).then(|| Exact::new(&text)), text.len())
}

/// Where a text is, NULL if it is nowhere.
pub fn place_of(text: Option<&Exact>) -> *const u8 {
    text.map_or(core::ptr::null(), Exact::pointer)
}

/// A number of an input, or NULL.
pub fn ratio_in(state: &State, input: &mut Input<'_>) -> Option<Exact> {
    let ratio = input.ratio(state);
    (!input.seldom()).then(|| Exact::of(&ratio))
}

/// Where a number is, NULL if it is nowhere.
pub fn ratio_at(ratio: Option<&Exact>) -> *const threadcalc_ratio_t {
    ratio.map_or(core::ptr::null(), Exact::pointer)
}

/// A thread of an input, or NULL.
pub fn thread_in(state: &State, input: &mut Input<'_>) -> Option<Exact> {
    let thread = input.thread(state);
    (!input.seldom()).then(|| Exact::of(&thread))
}

/// Where a thread is, NULL if it is nowhere.
pub fn thread_at(thread: Option<&Exact>) -> *const threadcalc_thread_t {
    thread.map_or(core::ptr::null(), Exact::pointer)
}

pub fn read(state: &mut State, input: &mut Input<'_>) {
    let (text, length) = text_in(input);
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let call = |thread, error| unsafe { threadcalc_thread_read(place_of(text.as_ref()), length, thread, error) };
    one_thread(state, input, call, Some(length));
}

/// The hole of a wire insert for a thread.
pub fn wire_insert(state: &mut State, input: &mut Input<'_>) {
    let thread = thread_in(state, input);
    // SAFETY: the pointers are NULL or of live memory.
    let call = |hole, error| unsafe { threadcalc_thread_with_wire_insert(thread_at(thread.as_ref()), hole, error) };
    one_thread(state, input, call, None);
}

pub fn read_fit(state: &mut State, input: &mut Input<'_>) {
    let (text, length) = text_in(input);
    let (error, results) = (error_room(input), [(); 2].map(|()| room::<threadcalc_thread_t>(input)));
    let [internal, external] = results.each_ref().map(Room::pointer);
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let status = unsafe { threadcalc_read_fit(place_of(text.as_ref()), length, internal, external, error.pointer()) };
    if succeeded(status, &error, &[&results[0], &results[1]]) {
        let [internal, external] = results.each_ref().map(Room::value::<threadcalc_thread_t>);
        assert_eq!([internal.side, external.side], [THREADCALC_SIDE_INTERNAL, THREADCALC_SIDE_EXTERNAL]);
        keep(state, input, internal, true);
        keep(state, input, external, true);
    }
}

pub fn metric(state: &mut State, input: &mut Input<'_>) {
    let (diameter, pitch) = (ratio_in(state, input), ratio_in(state, input));
    let (diameter, pitch) = (ratio_at(diameter.as_ref()), ratio_at(pitch.as_ref()));
    // SAFETY: the pointers are NULL or of live memory.
    one_thread(state, input, |thread, error| unsafe { threadcalc_thread_metric(diameter, pitch, thread, error) }, None);
}

pub fn unified(state: &mut State, input: &mut Input<'_>) {
    let (diameter, per_inch) = (ratio_in(state, input), ratio_in(state, input));
    let (diameter, per_inch) = (ratio_at(diameter.as_ref()), ratio_at(per_inch.as_ref()));
    // SAFETY: the pointers are NULL or of live memory.
    let call = |thread, error| unsafe { threadcalc_thread_unified(diameter, per_inch, thread, error) };
    one_thread(state, input, call, None);
}

pub fn unified_size(state: &mut State, input: &mut Input<'_>) {
    let ((text, length), per_inch) = (text_in(input), ratio_in(state, input));
    let (size, per_inch) = (place_of(text.as_ref()), ratio_at(per_inch.as_ref()));
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let call = |thread, error| unsafe { threadcalc_thread_unified_size(size, length, per_inch, thread, error) };
    one_thread(state, input, call, None);
}

pub fn write(state: &mut State, input: &mut Input<'_>) {
    let thread = thread_in(state, input);
    let thread = thread_at(thread.as_ref());
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let call = |place, room, needed, error| unsafe { threadcalc_thread_write(thread, place, room, needed, error) };
    if let Some(text) = text(input, call) {
        assert!(!text.is_empty() && text.is_ascii());
    }
}

pub fn size_text(state: &mut State, input: &mut Input<'_>) {
    let thread = thread_in(state, input);
    let thread = thread_at(thread.as_ref());
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let call = |place, room, needed, error| unsafe { threadcalc_thread_size_text(thread, place, room, needed, error) };
    if let Some(text) = text(input, call) {
        assert!(text.is_ascii() && text.len() <= 16, "{text}");
    }
}

pub fn findings(state: &mut State, input: &mut Input<'_>) {
    let thread = thread_in(state, input);
    let thread = thread_at(thread.as_ref());
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let call = |place, room, count, error| unsafe { threadcalc_thread_findings(thread, place, room, count, error) };
    for finding in list::<threadcalc_finding_t>(input, 8, call).unwrap_or_default() {
        finding_is_sound(&finding);
    }
}

/// Its numbers are numbers of the tables, and its texts are texts.
pub fn finding_is_sound(finding: &threadcalc_finding_t) {
    assert!((1..=3).contains(&finding.severity) && finding.id > 0);
    let count = usize::try_from(finding.number_count).expect("a count");
    assert!(finding.number_key[..count].iter().all(|key| *key > 0));
    assert!(finding.number[..count].iter().all(|number| number.is_finite()));
    let _texts = [fixed_text(&finding.evidence), fixed_text(&finding.suggestion)];
}

pub fn standard(state: &mut State, input: &mut Input<'_>) {
    let (form, series) = (input.choice(), input.choice());
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let call =
        |place, room, count, error| unsafe { threadcalc_standard_threads(form, series, place, room, count, error) };
    let found: Vec<threadcalc_thread_t> = list(input, 16, call).unwrap_or_default();
    if !found.is_empty() {
        let place = usize::from(input.byte()) * found.len() / 256;
        keep(state, input, found[place], true);
    }
}

pub fn profile(state: &mut State, input: &mut Input<'_>) {
    let thread = thread_in(state, input);
    let thread = thread_at(thread.as_ref());
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let call = |profile, size, error| unsafe { threadcalc_profile(thread, profile, size, error) };
    if let Some(profile) = sized::<threadcalc_profile_t>(input, call) {
        // NaN where the standard has not been read.
        assert!((profile.major_mm > 0.0 || profile.major_mm.is_nan()) && profile.triangle_height_mm > 0.0);
    }
}

pub fn pipe(state: &mut State, input: &mut Input<'_>) {
    let thread = thread_in(state, input);
    let thread = thread_at(thread.as_ref());
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let call = |pipe, size, error| unsafe { threadcalc_pipe(thread, pipe, size, error) };
    if let Some(pipe) = sized::<threadcalc_pipe_t>(input, call) {
        assert!((1..=3).contains(&pipe.confidence) && !fixed_text(&pipe.source).is_empty());
        state.ratio = pipe.pipe_diameter_mm;
    }
}

/// The calls that say one small number of a thread.
pub fn preference(state: &mut State, input: &mut Input<'_>) {
    let thread = thread_in(state, input);
    let thread = thread_at(thread.as_ref());
    for (call, most) in [(threadcalc_choice as Preference, 3), (threadcalc_is_iso_262, 1)] {
        let (error, result) = (error_room(input), room::<i32>(input));
        // SAFETY: the pointers are NULL or of live memory.
        let status = unsafe { call(thread, result.pointer(), error.pointer()) };
        if succeeded(status, &error, &[&result]) {
            assert!((0..=most).contains(&result.value::<i32>()));
        }
    }
}

type Preference =
    unsafe extern "C" fn(*const threadcalc_thread_t, *mut i32, *mut threadcalc_error_t) -> threadcalc_status;

/// The group of a length of engagement, the class recommended for it, and the limits at it.
pub fn lengths(state: &mut State, input: &mut Input<'_>) {
    let (thread, length) = (thread_in(state, input), ratio_in(state, input));
    let (thread, length) = (thread_at(thread.as_ref()), ratio_at(length.as_ref()));
    let (side, mut group, quality) = (input.choice(), input.choice(), input.choice());
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let call = |found, size, error| unsafe { threadcalc_engagement_group(thread, length, found, size, error) };
    if let Some(found) = sized::<threadcalc_engagement_lengths_t>(input, call) {
        assert!((1..=3).contains(&found.group) && !fixed_text(&found.source).is_empty());
        assert!(found.normal_over_mm.numerator > 0);
        (group, state.ratio) = (found.group, found.normal_to_mm);
    }
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let call = |text, room, needed, error| unsafe {
        threadcalc_recommended_class(side, group, quality, text, room, needed, error)
    };
    if let Some(text) = text(input, call) {
        assert!(text.len() <= 4);
    }
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let call = |limits, size, error| unsafe { threadcalc_limits_at(thread, length, limits, size, error) };
    if let Some(limits) = sized::<threadcalc_limits_t>(input, call) {
        assert!(limits.is_given == 1 && limits.pitch_diameter_mm.high.numerator > 0);
    }
}

/// The growth by a coating, the limits before it, and what the allowance has room for.
pub fn coatings(state: &mut State, input: &mut Input<'_>) {
    let (thread, thin, thick) = (thread_in(state, input), ratio_in(state, input), ratio_in(state, input));
    let (thread, thin, thick) = (thread_at(thread.as_ref()), ratio_at(thin.as_ref()), ratio_at(thick.as_ref()));
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let call = |growth, size, error| unsafe { threadcalc_coating_growth(thread, thick, growth, size, error) };
    if let Some(growth) = sized::<threadcalc_coating_growth_t>(input, call) {
        assert!(
            growth.crest_mm.denominator > 0 && growth.pitch_diameter_mm.numerator >= growth.crest_mm.numerator.min(1)
        );
    }
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let call =
        |limits, size, error| unsafe { threadcalc_limits_before_coating(thread, thin, thick, limits, size, error) };
    if let Some(limits) = sized::<threadcalc_limits_t>(input, call) {
        assert!(limits.is_given == 1 && limits.pitch_diameter_mm.low.numerator > 0);
    }
    let (error, thickest) = (error_room(input), room::<threadcalc_ratio_t>(input));
    // SAFETY: the pointers are NULL or of live memory.
    let status = unsafe { threadcalc_thickest_coating_um(thread, thickest.pointer(), error.pointer()) };
    if succeeded(status, &error, &[&thickest]) {
        state.ratio = thickest.value();
        assert!(state.ratio.numerator >= 0 && state.ratio.denominator > 0);
    }
}

pub fn limits(state: &mut State, input: &mut Input<'_>) {
    let thread = thread_in(state, input);
    let thread = thread_at(thread.as_ref());
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let call = |limits, size, error| unsafe { threadcalc_limits(thread, limits, size, error) };
    if let Some(limits) = sized::<threadcalc_limits_t>(input, call) {
        assert!(limits.is_given == 1 && !fixed_text(&limits.source).is_empty());
        state.ratio = limits.minor_mm.high;
    }
}
