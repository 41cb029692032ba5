//! Any bytes at the JSON door, and well-formed jobs from a few bytes; the line door has to agree.
#![no_main]

use libfuzzer_sys::fuzz_target;
use serde_json::Value;
use threadcalc::{
    THREADCALC_STATUS_BAD_JSON, THREADCALC_STATUS_BUFFER_TOO_SHORT, THREADCALC_STATUS_OK,
    THREADCALC_STATUS_UNKNOWN_KEY, answer_line, threadcalc_error_t, threadcalc_plan_json,
    threadcalc_plan_json_with_error,
};
use threadcalc_core::Thread;
use threadcalc_fuzz::calls::memory::{Exact, Room};
use threadcalc_fuzz::calls::protocol::{succeeded, text_in};
use threadcalc_fuzz::{check, job};

/// How the message of an unknown key `id` begins; the name of a known key ends it.
const UNKNOWN_ID: &str = "id: key: unknown key; the nearest known key is ";

/// No JSON text begins with this byte: behind it stand picks for a well-formed job.
const PICKS: u8 = 0xFF;

fuzz_target!(|bytes: &[u8]| {
    match bytes {
        [PICKS, picks @ ..] => door(&job::json(picks)),
        _ => door(bytes),
    }
});

fn door(job: &[u8]) {
    let given = Exact::new(job);
    let (error, needed) = (Room::of::<threadcalc_error_t>(), Room::of::<usize>());
    let nowhere = core::ptr::null_mut();
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let status = unsafe {
        threadcalc_plan_json_with_error(given.pointer(), job.len(), nowhere, 0, needed.pointer(), error.pointer())
    };
    assert!(!succeeded(status, &error, &[]), "no text has room in no bytes");
    if status == THREADCALC_STATUS_BUFFER_TOO_SHORT {
        let plan = plan_of(&given, needed.value());
        let plan: Value = serde_json::from_str(&plan).expect("a plan is JSON");
        plan_is_sound(&plan);
        line_agrees(job, Ok(&plan));
    } else {
        assert!(needed.is_untouched(), "a length is needed only for a text that exists");
        let error: threadcalc_error_t = error.value();
        if status == THREADCALC_STATUS_BAD_JSON && error.at >= 0 {
            assert!(error.at <= i64::try_from(job.len()).expect("a short job"), "at {}", error.at);
        }
        line_agrees(job, Err(status));
    }
}

/// The plan, by the one call into exactly the room that it needs, by the other into room to spare; one
/// byte too little is too little.
fn plan_of(given: &Exact, length: usize) -> String {
    let (short, exact, roomy) = (Room::new(length - 1), Room::new(length), Room::new(length + 100));
    let into = |room: &Room, capacity| {
        let needed = Room::of::<usize>();
        // SAFETY: the pointers are of live memory of these lengths.
        let status = unsafe {
            threadcalc_plan_json(given.pointer(), given.length(), room.pointer(), capacity, needed.pointer())
        };
        assert_eq!(needed.value::<usize>(), length);
        status
    };
    assert_eq!(into(&short, length - 1), THREADCALC_STATUS_BUFFER_TOO_SHORT);
    assert!(short.is_untouched(), "a text is written whole or not at all");
    assert_eq!(into(&exact, length), THREADCALC_STATUS_OK);
    let (error, needed) = (Room::of::<threadcalc_error_t>(), Room::of::<usize>());
    // SAFETY: as above.
    let status = unsafe {
        let (place, count) = (roomy.pointer(), needed.pointer());
        threadcalc_plan_json_with_error(given.pointer(), given.length(), place, length + 100, count, error.pointer())
    };
    assert!(succeeded(status, &error, &[]));
    assert_eq!(text_in(&roomy, needed.value()), text_in(&exact, length));
    text_in(&exact, length)
}

/// Its thread reads back, and no words stand beside an error.
fn plan_is_sound(plan: &Value) {
    let designation = plan["thread"]["designation"].as_str().expect("a plan has a thread");
    check::thread(&Thread::read(designation.as_bytes()).expect("its thread can be read"));
    let list = |key: &str| plan[key].as_array().expect("a plan has this list");
    let has_error = list("findings").iter().any(|finding| finding["severity"] == "error");
    assert!(!has_error || list("words").is_empty(), "words while an error stands");
    assert_eq!(list("withheld").is_empty(), !list("words").is_empty());
}

/// The reply of the line door: JSON in one line that says what the JSON door said. Its key `id` is
/// unknown to the JSON door, and a `check` or a `compare` makes another request of the line.
fn line_agrees(job: &[u8], said: Result<&Value, i32>) {
    let reply = answer_line(job);
    assert!(!reply.contains('\n'), "{reply}");
    let reply: Value = serde_json::from_str(&reply).expect("a reply is JSON");
    // It belongs to whoever asks, so the line door never says that it is unknown.
    let unknown = reply["error"]["message"].as_str().and_then(|message| message.strip_prefix(UNKNOWN_ID));
    assert!(unknown.is_none_or(|nearest| nearest.contains(':')), "{reply}");
    // A value of `id` that is no number for the one door is skipped by the other.
    let has = |own: &[u8]| job.windows(own.len()).any(|key| key == own);
    let own_key = said == Err(THREADCALC_STATUS_UNKNOWN_KEY)
        || [&b"\"id\""[..], b"\"check\"", b"\"compare\""].into_iter().any(has);
    assert!(reply["ok"] == said.is_ok() || own_key, "{said:?}: {reply}");
    match said {
        Ok(plan) => assert_eq!(&reply["plan"], plan),
        Err(status) => assert!(reply["error"]["code"] == status || own_key, "{status}: {reply}"),
    }
}
