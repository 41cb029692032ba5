//! Checks of programs, in pieces and through JSON.

use threadcalc::*;

use super::cycles::dialect;
use super::memory::{Exact, Room};
use super::protocol::{error_room, fixed_text, pointer, room, sized, succeeded, text as text_of};
use super::{Input, State};

/// Programs of the letters that the input gives, between blocks that tap.
fn program(input: &mut Input<'_>) -> Vec<u8> {
    let mut text = b"G17 G21 G90 G94\nT1 M6 (TAP M6)\nG43 H1 Z5. S500 M3\nG98 G84 X0 Y0 Z-12. R5. F500.\n".to_vec();
    let length = input.place(64);
    text.extend_from_slice(input.bytes(length));
    text.extend_from_slice(b"\nX10.\nG80\nM30\n");
    text
}

pub fn pieces(state: &mut State, input: &mut Input<'_>) {
    let mill = dialect(state, input);
    let size = threadcalc_checker_size();
    let memory = Room::new(size);
    let checker: *mut threadcalc_checker_t = memory.pointer();
    let mut tool: threadcalc_tool_t = unsafe { core::mem::zeroed() };
    tool.size = size_of::<threadcalc_tool_t>() as u32;
    (tool.number, tool.kind, tool.thread) = (1, input.choice(), input.thread(state));
    let (mill, error) = (pointer(mill.as_ref()), error_room(input));
    // SAFETY: the pointers are NULL or of live memory of these sizes.
    let begun = unsafe { threadcalc_checker_begin(checker, size, mill, core::ptr::null(), error.pointer()) };
    if !succeeded(begun, &error, &[]) {
        return;
    }
    let error = error_room(input);
    // SAFETY: as above.
    succeeded(unsafe { threadcalc_checker_add_tool(checker, &raw const tool, error.pointer()) }, &error, &[]);
    let text = Exact::new(&program(input));
    let mut at = 0;
    while at < text.length() {
        let taken = room::<usize>(input);
        let error = error_room(input);
        // SAFETY: as above.
        let place = unsafe { text.pointer::<u8>().add(at) };
        let left = text.length() - at;
        // SAFETY: as above.
        let read = unsafe { threadcalc_checker_read(checker, place, left, taken.pointer(), error.pointer()) };
        if !succeeded(read, &error, &[&taken]) {
            return;
        }
        at += taken.value::<usize>();
        events(input, checker);
    }
    // SAFETY: as above.
    assert_eq!(unsafe { threadcalc_checker_finish(checker, core::ptr::null_mut()) }, THREADCALC_STATUS_OK);
    events(input, checker);
    // SAFETY: as above.
    let unchecked: Option<threadcalc_unchecked_t> =
        sized(input, |place, size, error| unsafe { threadcalc_checker_not_checked(checker, 0, place, size, error) });
    assert!(unchecked.is_none_or(|found| found.reason == 0 || !fixed_text(&found.text).is_empty()));
}

fn events(input: &mut Input<'_>, checker: *mut threadcalc_checker_t) {
    loop {
        // Taken once: the next call would give the next event, so its size is not tried twice.
        let (error, place) = (error_room(input), room::<threadcalc_program_event_t>(input));
        let size = size_of::<threadcalc_program_event_t>();
        // SAFETY: the checker was begun; the other pointers are NULL or of live memory of these sizes.
        let status = unsafe { threadcalc_checker_next(checker, place.pointer(), size, error.pointer()) };
        let event = succeeded(status, &error, &[&place]).then(|| place.value::<threadcalc_program_event_t>());
        let Some(event) = event.filter(|event| event.kind != THREADCALC_EVENT_NONE) else { return };
        assert!(event.line > 0);
        assert!(event.kind == THREADCALC_EVENT_HOLE || !fixed_text(&event.message).is_empty());
    }
}

pub fn json(_state: &mut State, input: &mut Input<'_>) {
    let program = Exact::new(&program(input));
    let request = Exact::new(br#"{"schema":1,"dialect":"rs274ngc"}"#);
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let report = text_of(input, |place, room, needed, error| unsafe {
        let (text, length) = (program.pointer(), program.length());
        threadcalc_check_json(text, length, request.pointer(), request.length(), place, room, needed, error)
    });
    let Some(report) = report else { return };
    let report: serde_json::Value = serde_json::from_str(&report).expect("a report is JSON");
    assert!(report["tapped_holes"][0]["lead_mm"] == "1", "{report}");
}

pub fn compare(_state: &mut State, input: &mut Input<'_>) {
    let (old, new) = (Exact::new(&program(input)), Exact::new(&program(input)));
    let request = Exact::new(br#"{"schema":1,"dialect":"rs274ngc"}"#);
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let compared = text_of(input, |place, room, needed, error| unsafe {
        let (before, after) = ((old.pointer(), old.length()), (new.pointer(), new.length()));
        let request = (request.pointer(), request.length());
        threadcalc_compare_json(before.0, before.1, after.0, after.1, request.0, request.1, place, room, needed, error)
    });
    let Some(compared) = compared else { return };
    let compared: serde_json::Value = serde_json::from_str(&compared).expect("a comparison is JSON");
    let count = |name: &str| compared["counts"][name].as_u64().expect("a count");
    let changes = compared["changes"].as_array().expect("changes").len() as u64;
    assert_eq!(changes, count("changed") + count("added") + count("removed"), "{compared}");
    assert_eq!(count("before") + count("added"), count("after") + count("removed"), "{compared}");
}
