//! Taps: kinds, chamfers, classes and limits, marks of shanks, and whether a tap suits.

use threadcalc::*;

use super::memory::Exact;
use super::protocol::{error_room, fixed_text, list, pointer, request, room, sized, succeeded};
use super::threads::{finding_is_sound, keep, place_of, ratio_at, ratio_in, thread_at, thread_in};
use super::{Input, State};

/// Marks that lead somewhere.
const MARKS: [&str; 14] = [
    "M8x1.25 6HX LH",
    "1/4-20 UNC GH3 HSS",
    "M10 D5",
    "STI 1/4-20 UNC H2 PLUG",
    "EGM8 6H",
    "M8 DIN 371 HSS-E ISO2/6H C",
    "M16xPh3P1.5 7G B",
    "HSS 2BX 3FL L1",
    "MJ6x1 4H5H",
    "Tr16x4 7H LH",
    "1/2-10 ACME 2G",
    "2 BA HSS",
    "1/4-18 NPT QQ",
    "",
];

pub fn kind(_state: &mut State, input: &mut Input<'_>) {
    let (kind, hole) = (input.choice(), input.choice());
    let (error, tap) = (error_room(input), room::<threadcalc_tap>(input));
    // SAFETY: the pointers are NULL or of live memory.
    let status = unsafe { threadcalc_tap_of_kind(kind, tap.pointer(), error.pointer()) };
    if succeeded(status, &error, &[&tap]) {
        assert!((1..=2).contains(&tap.value::<threadcalc_tap>()));
    }
    let (error, factor) = (error_room(input), room::<f64>(input));
    // SAFETY: the pointers are NULL or of live memory.
    let status = unsafe { threadcalc_tap_torque_factor(kind, factor.pointer(), error.pointer()) };
    if succeeded(status, &error, &[&factor]) {
        // NaN for the tap that forms.
        assert_eq!(factor.value::<f64>().is_nan(), kind == THREADCALC_TAP_KIND_FORM);
    }
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let call = |advice, size, error| unsafe { threadcalc_tap_advice(kind, hole, advice, size, error) };
    if let Some(advice) = sized::<threadcalc_tap_advice_t>(input, call) {
        assert!((1..=3).contains(&advice.suits) && !fixed_text(&advice.reason).is_empty());
    }
}

pub fn chamfer(state: &mut State, input: &mut Input<'_>) {
    let form = input.choice();
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let call = |chamfer, size, error| unsafe { threadcalc_chamfer(form, chamfer, size, error) };
    if let Some(chamfer) = sized::<threadcalc_chamfer_t>(input, call) {
        assert!(chamfer.shortest_threads.numerator > 0 && (0..=2).contains(&chamfer.usual_hole));
        state.ratio = chamfer.longest_threads;
    }
}

/// The forms that fit are those that fit one by one.
pub fn chamfers_that_fit(state: &mut State, input: &mut Input<'_>) {
    let (hole, length) = (input.choice(), ratio_in(state, input));
    let length = ratio_at(length.as_ref());
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let call =
        |forms, room, count, error| unsafe { threadcalc_chamfers_that_fit(hole, length, forms, room, count, error) };
    let Some(forms) = list::<threadcalc_chamfer_form>(input, 16, call) else { return };
    let form = input.choice();
    let (error, fits) = (error_room(input), room::<i32>(input));
    // SAFETY: the pointers are NULL or of live memory.
    let status = unsafe { threadcalc_chamfer_fits(form, hole, length, fits.pointer(), error.pointer()) };
    if succeeded(status, &error, &[&fits]) {
        assert_eq!(fits.value::<i32>(), i32::from(forms.contains(&form)));
    }
}

pub fn iso_tap(state: &mut State, input: &mut Input<'_>) {
    let (thread, plating) = (thread_in(state, input), ratio_in(state, input));
    let (thread, plating) = (thread_at(thread.as_ref()), ratio_at(plating.as_ref()));
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let call = |tap, size, error| unsafe { threadcalc_iso_tap(thread, plating, tap, size, error) };
    if let Some(tap) = sized::<threadcalc_iso_tap_t>(input, call) {
        assert!((0..=3).contains(&tap.tap_class) && tap.closing_mm.denominator > 0);
    }
    let class = input.choice();
    let (error, range) = (error_room(input), room::<threadcalc_range_t>(input));
    // SAFETY: the pointers are NULL or of live memory.
    let status = unsafe { threadcalc_iso_tap_pitch_diameter_mm(thread, class, range.pointer(), error.pointer()) };
    if succeeded(status, &error, &[&range]) {
        state.ratio = range.value::<threadcalc_range_t>().high;
        assert!(state.ratio.numerator > 0);
    }
}

/// The call of a limit's sizes.
type OfLimit = unsafe extern "C" fn(
    *const threadcalc_tap_limit_t,
    *const threadcalc_thread_t,
    *mut threadcalc_range_t,
    *mut threadcalc_error_t,
) -> threadcalc_status;

fn limit_in(input: &mut Input<'_>) -> threadcalc_tap_limit_t {
    threadcalc_tap_limit_t { letter: input.choice(), number: input.choice() }
}

pub fn limit(state: &mut State, input: &mut Input<'_>) {
    let limit = limit_in(input);
    let limit = (!input.seldom()).then(|| Exact::of(&limit));
    let limit = limit.as_ref().map_or(core::ptr::null(), Exact::pointer);
    let thread = thread_in(state, input);
    for call in [threadcalc_tap_limit_above_basic_mm as OfLimit, threadcalc_tap_limit_pitch_diameter_mm] {
        let (error, range) = (error_room(input), room::<threadcalc_range_t>(input));
        // SAFETY: the pointers are NULL or of live memory.
        let status = unsafe { call(limit, thread_at(thread.as_ref()), range.pointer(), error.pointer()) };
        if succeeded(status, &error, &[&range]) {
            state.ratio = range.value::<threadcalc_range_t>().high;
            assert!(state.ratio.denominator > 0);
        }
    }
}

/// The call of a limit for a plating.
type ForPlating = unsafe extern "C" fn(
    *const threadcalc_thread_t,
    *const threadcalc_ratio_t,
    *mut threadcalc_tap_limit_t,
    *mut threadcalc_error_t,
) -> threadcalc_status;

pub fn limit_for_plating(state: &mut State, input: &mut Input<'_>) {
    let (thread, plating) = (thread_in(state, input), ratio_in(state, input));
    for (call, letters) in [
        (threadcalc_h_limit_for_plating as ForPlating, &[THREADCALC_LIMIT_LETTER_H][..]),
        (threadcalc_usual_tap_limit_for_plating, &[THREADCALC_LIMIT_LETTER_H, THREADCALC_LIMIT_LETTER_D]),
    ] {
        let (error, limit) = (error_room(input), room::<threadcalc_tap_limit_t>(input));
        // SAFETY: the pointers are NULL or of live memory.
        let status = unsafe {
            let (thread, plating) = (thread_at(thread.as_ref()), ratio_at(plating.as_ref()));
            call(thread, plating, limit.pointer(), error.pointer())
        };
        if succeeded(status, &error, &[&limit]) {
            let limit: threadcalc_tap_limit_t = limit.value();
            assert!(letters.contains(&limit.letter) && (1..=30).contains(&limit.number));
        }
    }
}

pub fn usual_limit(state: &mut State, input: &mut Input<'_>) {
    let thread = thread_in(state, input);
    let (error, limit) = (error_room(input), room::<threadcalc_tap_limit_t>(input));
    // SAFETY: the pointers are NULL or of live memory.
    let status = unsafe { threadcalc_usual_tap_limit(thread_at(thread.as_ref()), limit.pointer(), error.pointer()) };
    if succeeded(status, &error, &[&limit]) {
        let limit: threadcalc_tap_limit_t = limit.value();
        assert!([THREADCALC_LIMIT_LETTER_H, THREADCALC_LIMIT_LETTER_D].contains(&limit.letter));
        assert!((2..=6).contains(&limit.number));
    }
}

fn read_mark(input: &mut Input<'_>) -> Option<(threadcalc_shank_mark_t, usize)> {
    let pick = usize::from(input.byte());
    let text = MARKS.get(pick).map_or_else(|| input.bytes(pick % 100).to_vec(), |text| text.as_bytes().to_vec());
    let place = (!input.seldom()).then(|| Exact::new(&text));
    let place = place_of(place.as_ref());
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let call = |mark, size, error| unsafe { threadcalc_read_shank_mark(place, text.len(), mark, size, error) };
    sized(input, call).map(|mark| (mark, text.len()))
}

pub fn mark(state: &mut State, input: &mut Input<'_>) {
    let Some((mark, length)) = read_mark(input) else { return };
    assert!((1..=2).contains(&mark.hand) && (0..=3).contains(&mark.iso_class) && (0..=10).contains(&mark.chamfer_form));
    assert!([mark.own_limits, mark.ground, mark.wire_insert].iter().all(|flag| (0..=1).contains(flag)));
    assert!(mark.not_read_at >= 0 && mark.not_read_length >= 0);
    assert!(mark.not_read_at + mark.not_read_length <= i64::try_from(length).expect("a short text"));
    let _class = fixed_text(&mark.tolerance_class);
    if mark.thread.form != THREADCALC_FORM_UNSET {
        keep(state, input, mark.thread, true);
    }
}

/// A mark that was read is taken as it is; one with a member changed is taken or refused.
pub fn judge(state: &mut State, input: &mut Input<'_>) {
    let mut mark = read_mark(input).map_or_else(threadcalc_shank_mark_t::default, |(mark, _)| mark);
    let mut is_as_read = false;
    match input.byte() >> 4 {
        0 => mark.thread = input.thread(state),
        1 => mark.hand = input.choice(),
        2 => mark.own_limits = input.choice(),
        3 => mark.ground = input.choice(),
        4 => mark.wire_insert = input.choice(),
        5 => mark.limit = limit_in(input),
        6 => mark.iso_class = input.choice(),
        7 => mark.chamfer_form = input.choice(),
        8 => (mark.not_read_at, mark.not_read_length) = (input.int64(), input.int64()),
        9 => mark.tolerance_class = [input.byte(), input.byte(), input.byte(), 0, 0, 0, 0, 0].map(|byte| byte as _),
        _ => is_as_read = true,
    }
    let job = threadcalc_tap_job_t {
        size: 0,
        hole: input.choice(),
        wire_insert: i32::from(input.byte() >> 6),
        reserved: u32::from(input.seldom()),
        thread: input.thread(state),
        plating_um: input.ratio(state),
        room_threads: input.ratio(state),
    };
    let asked = request(input, &job);
    let given = Exact::of(&mark);
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let call = |findings, room, count, error| unsafe {
        threadcalc_judge_tap(given.pointer(), pointer(asked.as_ref()), findings, room, count, error)
    };
    if let Some(findings) = list::<threadcalc_finding_t>(input, 12, call) {
        assert!(findings.len() <= 12 && asked.as_ref().is_some_and(|asked| !asked.is_refused));
        findings.iter().for_each(finding_is_sound);
        return;
    }
    // With a job that nothing can be said against, what was read is judged.
    if is_as_read {
        let thread = super::threads::known(b"M8-6H");
        let job = threadcalc_tap_job_t {
            size: u32::try_from(size_of::<threadcalc_tap_job_t>()).expect("a small size"),
            hole: 0,
            wire_insert: 0,
            reserved: 0,
            thread,
            plating_um: threadcalc_ratio_t::default(),
            room_threads: threadcalc_ratio_t::default(),
        };
        let (job, found, count) = (
            Exact::of(&job),
            super::memory::Room::new(12 * size_of::<threadcalc_finding_t>()),
            super::memory::Room::of::<usize>(),
        );
        // SAFETY: the pointers are of live memory of these lengths.
        let status = unsafe {
            threadcalc_judge_tap(
                given.pointer(),
                job.pointer(),
                found.pointer(),
                12,
                count.pointer(),
                core::ptr::null_mut(),
            )
        };
        assert_eq!(status, THREADCALC_STATUS_OK);
    }
}
