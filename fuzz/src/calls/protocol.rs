//! How every call answers: status, error, results only on success, room needed.

use core::ffi::{CStr, c_char};

use threadcalc::{THREADCALC_STATUS_BUFFER_TOO_SHORT, THREADCALC_STATUS_OK, threadcalc_error_t, threadcalc_status};
use threadcalc_core::{Code, Field};

use super::input::Input;
use super::memory::{Room, bytes_of};

/// A member of fixed length, up to its NUL, which has to be there.
#[must_use]
pub fn fixed_text(member: &[c_char]) -> String {
    let bytes: Vec<u8> = member.iter().map(|byte| *byte as u8).collect();
    let text = CStr::from_bytes_until_nul(&bytes).expect("a text ends with a NUL");
    text.to_str().expect("a text is UTF-8").into()
}

/// Room for an error, or NULL.
pub fn error_room(input: &mut Input<'_>) -> Room {
    if input.seldom() { Room::null() } else { Room::of::<threadcalc_error_t>() }
}

/// Room for a `T`, or NULL.
pub fn room<T>(input: &mut Input<'_>) -> Room {
    if input.seldom() { Room::null() } else { Room::of::<T>() }
}

/// True on success. The error says what the status says, and on failure no result is written.
pub fn succeeded(status: threadcalc_status, error: &Room, results: &[&Room]) -> bool {
    if status == THREADCALC_STATUS_OK {
        assert!(error.is_untouched(), "an error is written only on failure");
        return true;
    }
    assert!(Code::from_number(status).is_some(), "status {status}");
    assert!(results.iter().all(|room| room.is_untouched()), "a result is written only on success: {status}");
    if !error.bytes().is_empty() {
        let error: threadcalc_error_t = error.value();
        assert_eq!(error.code, status);
        assert!(error.field == 0 || Field::from_number(error.field).is_some(), "field {}", error.field);
        assert!(error.at >= -1, "at {}", error.at);
        assert!(!fixed_text(&error.message).is_empty());
    }
    false
}

/// One result of a size that the call is told; the whole result, if it was written.
pub fn sized<T: Copy>(
    input: &mut Input<'_>,
    call: impl Fn(*mut T, usize, *mut threadcalc_error_t) -> threadcalc_status,
) -> Option<T> {
    let own = size_of::<T>();
    let size = match input.byte() {
        0xF8.. => 0,
        0xE0.. => input.place(255) * own.div_ceil(200),
        _ => own,
    };
    let null = input.seldom();
    let (error, result) = (error_room(input), if null { Room::null() } else { Room::new(size) });
    let status = call(result.pointer(), size, error.pointer());
    if !succeeded(status, &error, &[&result]) {
        return None;
    }
    assert!(size > 0 && !null, "there was room");
    assert!(result.is_untouched_from(own), "written behind the result");
    if size == own {
        return Some(result.value());
    }
    let whole = Room::new(own);
    assert_eq!(call(whole.pointer(), own, core::ptr::null_mut()), THREADCALC_STATUS_OK);
    let common = size.min(own);
    assert!(result.bytes()[..common] == whole.bytes()[..common], "a shorter result is the beginning of the whole");
    Some(whole.value())
}

/// How much room the caller has: mostly enough.
fn capacity(input: &mut Input<'_>, enough: usize) -> usize {
    match input.byte() {
        0xF0.. => 0,
        0xC0.. => input.place(256),
        _ => enough,
    }
}

/// A text; `None` if there is none, or if the caller left out a pointer.
pub fn text(
    input: &mut Input<'_>,
    call: impl Fn(*mut c_char, usize, *mut usize, *mut threadcalc_error_t) -> threadcalc_status,
) -> Option<String> {
    let error = error_room(input);
    text_with(input, &error, call)
}

/// The same for a call that has no error to write.
pub fn text_only(
    input: &mut Input<'_>,
    call: impl Fn(*mut c_char, usize, *mut usize) -> threadcalc_status,
) -> Option<String> {
    text_with(input, &Room::null(), |place, capacity, needed, _| call(place, capacity, needed))
}

fn text_with(
    input: &mut Input<'_>,
    error: &Room,
    call: impl Fn(*mut c_char, usize, *mut usize, *mut threadcalc_error_t) -> threadcalc_status,
) -> Option<String> {
    let capacity = capacity(input, 8192);
    let needed = room::<usize>(input);
    let place = if input.seldom() { Room::null() } else { Room::new(capacity) };
    let status = call(place.pointer(), capacity, needed.pointer(), error.pointer());
    if status != THREADCALC_STATUS_BUFFER_TOO_SHORT {
        return succeeded(status, error, &[&place, &needed]).then(|| text_in(&place, needed.value()));
    }
    assert!(!succeeded(status, error, &[&place]));
    let length: usize = needed.value();
    assert!(length > capacity, "{length} is needed, there were {capacity}");
    for short in [length - 1, length] {
        let (place, again) = (Room::new(short), Room::of::<usize>());
        let status = call(place.pointer(), short, again.pointer(), core::ptr::null_mut());
        assert_eq!(again.value::<usize>(), length);
        if short == length {
            assert_eq!(status, THREADCALC_STATUS_OK);
            return Some(text_in(&place, length));
        }
        assert_eq!(status, THREADCALC_STATUS_BUFFER_TOO_SHORT);
        assert!(place.is_untouched(), "a text is written whole or not at all");
    }
    None
}

/// The text in its room, which needed this length with its NUL and nothing behind it.
#[must_use]
pub fn text_in(place: &Room, length: usize) -> String {
    assert!(place.is_untouched_from(length), "written behind the text");
    let text = CStr::from_bytes_with_nul(&place.bytes()[..length]).expect("one NUL, at the end");
    text.to_str().expect("a text is UTF-8").into()
}

/// A list; `None` if there is none, or if the caller left out a pointer.
pub fn list<T: Copy>(
    input: &mut Input<'_>,
    enough: usize,
    call: impl Fn(*mut T, usize, *mut usize, *mut threadcalc_error_t) -> threadcalc_status,
) -> Option<Vec<T>> {
    let capacity = capacity(input, enough);
    let (error, count) = (error_room(input), room::<usize>(input));
    let place = if input.seldom() { Room::null() } else { Room::new(capacity * size_of::<T>()) };
    let status = call(place.pointer(), capacity, count.pointer(), error.pointer());
    if status != THREADCALC_STATUS_BUFFER_TOO_SHORT {
        return succeeded(status, &error, &[&place, &count]).then(|| items_in(&place, count.value()));
    }
    assert!(!succeeded(status, &error, &[&place]));
    let found: usize = count.value();
    assert!(found > capacity, "{found} are there, there was room for {capacity}");
    let (place, again) = (Room::new(found * size_of::<T>()), Room::of::<usize>());
    let status = call(place.pointer(), found, again.pointer(), core::ptr::null_mut());
    assert_eq!((status, again.value()), (THREADCALC_STATUS_OK, found));
    Some(items_in(&place, found))
}

/// The items in their room, of which there are this many and nothing behind them.
fn items_in<T: Copy>(place: &Room, found: usize) -> Vec<T> {
    assert!(place.is_untouched_from(found * size_of::<T>()), "written behind the list");
    let mut items = place.items();
    assert!(items.len() >= found, "{found} items counted in room for {}", items.len());
    items.truncate(found);
    items
}

/// A request of whatever size the caller says, in exactly the memory that it promises.
pub struct Request {
    /// The bytes of the request.
    pub bytes: super::memory::Exact,
    /// True if no version of the library can take it.
    pub is_refused: bool,
}

/// A request with its own size, or seldom with another one; `None` is NULL.
pub fn request<T: Copy>(input: &mut Input<'_>, value: &T) -> Option<Request> {
    const LARGEST: usize = 4096;
    let own = size_of::<T>();
    let mut bytes = bytes_of(value).to_vec();
    let mut is_refused = false;
    let pick = input.byte();
    let size = match pick {
        0xFF => return None,
        0xFC.. => input.int32() as u32,
        0xE8.. => u32::try_from(own + input.place(64)).expect("a small size"),
        0xE0.. => u32::try_from(input.place(own)).expect("a small size"),
        _ => u32::try_from(own).expect("a small size"),
    };
    match usize::try_from(size).expect("32 bits fit") {
        promised if promised > LARGEST => is_refused = true,
        promised if promised > own => {
            bytes.resize(promised, 0);
            // A member behind the last one that this version knows, and it is set.
            is_refused = pick % 2 == 1;
            *bytes.last_mut().expect("longer than nothing") = u8::from(is_refused);
        }
        promised => bytes.truncate(promised.max(size_of::<u32>())),
    }
    bytes[..4].copy_from_slice(&size.to_ne_bytes());
    Some(Request { bytes: super::memory::Exact::new(&bytes), is_refused })
}

/// The pointer of a request, NULL without one.
pub fn pointer<T>(request: Option<&Request>) -> *const T {
    request.map_or(core::ptr::null(), |request| request.bytes.pointer())
}
