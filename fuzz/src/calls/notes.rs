//! Hole notes and comments.

use threadcalc::*;

use super::memory::{Exact, Room};
use super::protocol::{list, sized};
use super::threads::{finding_is_sound, keep, place_of};
use super::{Input, State};

/// Notes and comments that lead somewhere.
const TEXTS: [&str; 12] = [
    "4X M8x1.25-6H \u{21a7}16 / \u{d8}6.8 \u{21a7}20",
    "1/4-20 UNC-2B THRU, #7 DRILL, 4 PLACES",
    "M8 x 20 DEEP CSK 10 x 90 DEG BOTH SIDES",
    "C'BORE 14 X 8 DEEP, 6 HOLES EQ SP ON 100 BC",
    "1/4-18 NPT",
    "\u{d8}10 THRU",
    "T7 M8X1.25 LH TAP S650",
    "TAP 1/4-20 UNC-2B, M6, G1/2, #10-32, 5/8-11",
    "M8 COOLANT ON",
    "M8 TAP AFTER PLATING 2 START",
    "",
    "\u{be}4X M8",
];

/// The text of a note, or NULL; the length is said all the same.
fn note_in(input: &mut Input<'_>) -> (Option<Exact>, usize) {
    let pick = usize::from(input.byte());
    let text = TEXTS.get(pick).map_or_else(|| input.bytes(pick).to_vec(), |text| text.as_bytes().to_vec());
    ((!input.seldom()).then(|| Exact::new(&text)), text.len())
}

pub fn hole_note(state: &mut State, input: &mut Input<'_>) {
    let ((text, length), unit) = (note_in(input), input.choice());
    let text = place_of(text.as_ref());
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let call = |note, size, error| unsafe { threadcalc_read_hole_note(text, length, unit, note, size, error) };
    let Some(note) = sized::<threadcalc_hole_note_t>(input, call) else { return };
    let end = i64::try_from(length).expect("a short text");
    assert!(note.thread_at >= 0 && note.thread_length >= 0 && note.thread_at + note.thread_length <= end);
    assert!((0..=3).contains(&note.sides) && (0..=2).contains(&note.plating));
    let count = usize::try_from(note.finding_count).expect("a count");
    note.findings[..count].iter().for_each(finding_is_sound);
    state.ratio = note.thread_depth_mm;
    if note.thread.form != THREADCALC_FORM_UNSET {
        keep(state, input, note.thread, true);
    }
}

pub fn comment(state: &mut State, input: &mut Input<'_>) {
    let ((text, length), tool_is_tap) = (note_in(input), i32::from(input.byte() >> 6));
    let text = place_of(text.as_ref());
    let has_more = if input.seldom() { Room::null() } else { Room::of::<i32>() };
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let call = |threads, room, count, error| unsafe {
        threadcalc_read_comment(text, length, tool_is_tap, threads, room, count, has_more.pointer(), error)
    };
    let Some(found) = list::<threadcalc_found_thread_t>(input, 4, call) else {
        assert!(has_more.is_untouched(), "a result is written only on success");
        return;
    };
    assert!(has_more.items::<i32>().iter().all(|more| *more == 0 || *more == 1 && !found.is_empty()));
    let mut end = 0;
    for thread in found {
        assert!(thread.at >= end && thread.length > 0);
        end = thread.at + thread.length;
        keep(state, input, thread.thread, true);
    }
    assert!(end <= i64::try_from(length).expect("a short text"));
}
