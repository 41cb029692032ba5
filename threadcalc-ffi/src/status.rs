//! The one place where a failure leaves the library.

use core::ffi::c_char;
use core::fmt;
use std::panic::{AssertUnwindSafe, catch_unwind};

use threadcalc_core::{Code, Error, Field};

use crate::codes::{THREADCALC_STATUS_INTERNAL_FAULT, THREADCALC_STATUS_OK, threadcalc_field, threadcalc_status};
use crate::memory::fixed_text;

/// Why a call failed. Frozen. Written only on failure; may be left out (NULL) in every call.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct threadcalc_error_t {
    /// What the call returned.
    pub code: threadcalc_status,
    /// The value that the error speaks of.
    pub field: threadcalc_field,
    /// Byte offset, from 0, in the text that was read; -1 if there is none.
    pub at: i64,
    /// What was given, NaN if that is not a number.
    pub got: f64,
    /// Lower end of what would do, NaN if open.
    pub low: f64,
    /// Upper end of what would do, NaN if open.
    pub high: f64,
    /// All of it in words, for people; not for programs.
    pub message: [c_char; 256],
}

/// A failure on its way out: the core's error, and the JSON key it came from.
#[derive(Debug)]
pub(crate) struct Fault {
    pub error: Error,
    pub key: Option<Box<str>>,
}

impl From<Error> for Fault {
    fn from(error: Error) -> Self {
        Self { error, key: None }
    }
}

/// The core's text; the key stands before it where the field does not already name it.
impl fmt::Display for Fault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        if let Some(key) = self.key.as_deref().filter(|key| *key != self.error.field().name()) {
            write!(f, "{key}: ")?;
        }
        fmt::Display::fmt(&self.error, f)
    }
}

/// Runs one exported call: no panic leaves it, and every failure becomes a status.
pub(crate) fn guard(error: *mut threadcalc_error_t, call: impl FnOnce() -> Result<(), Fault>) -> threadcalc_status {
    match catch_unwind(AssertUnwindSafe(call)) {
        Ok(Ok(())) => THREADCALC_STATUS_OK,
        Ok(Err(fault)) => refuse(error, &fault),
        Err(payload) => {
            // Dropping it could panic again; a panic here is a bug, and leaking a few bytes of it is not.
            core::mem::forget(payload);
            report_panic(error)
        }
    }
}

// Out of line, so that a call that succeeds does not carry the frame of one that fails.
#[cold]
#[inline(never)]
fn refuse(error: *mut threadcalc_error_t, fault: &Fault) -> threadcalc_status {
    let code = fault.error.code().number();
    write_error(error, || threadcalc_error_t {
        code,
        field: fault.error.field().number(),
        at: fault.error.at().map_or(-1, i64::from),
        got: fault.error.value(),
        low: fault.error.low(),
        high: fault.error.high(),
        // A key of the caller's JSON stands in it, and may hold a NUL, which would end it early.
        message: fixed_text(&fault.to_string().replace('\0', "?")),
    });
    code
}

#[cold]
#[inline(never)]
fn report_panic(error: *mut threadcalc_error_t) -> threadcalc_status {
    write_error(error, || threadcalc_error_t {
        code: THREADCALC_STATUS_INTERNAL_FAULT,
        field: 0,
        at: -1,
        got: f64::NAN,
        low: f64::NAN,
        high: f64::NAN,
        message: fixed_text("internal fault of the library, please report it"),
    });
    THREADCALC_STATUS_INTERNAL_FAULT
}

fn write_error(place: *mut threadcalc_error_t, make: impl FnOnce() -> threadcalc_error_t) {
    if !place.is_null() {
        // SAFETY: not null, and the header asks for a structure of the caller's.
        unsafe { place.write(make()) };
    }
}

/// The error of a choice that has to be made, or of a number that is none of the choices.
pub(crate) fn required<T>(
    number: i32,
    read: impl Fn(i32) -> Option<T>,
    field: Field,
    choices: &'static str,
) -> Result<T, Error> {
    optional(number, read, field, choices)?.ok_or_else(|| Error::new(Code::Missing, field).hint_text(choices))
}

/// 0 is "not given"; any other number has to be one of the choices.
pub(crate) fn optional<T>(
    number: i32,
    read: impl Fn(i32) -> Option<T>,
    field: Field,
    choices: &'static str,
) -> Result<Option<T>, Error> {
    if number == 0 {
        return Ok(None);
    }
    let unknown = || Error::new(Code::UnknownValue, field).got(f64::from(number)).hint_text(choices);
    read(number).map(Some).ok_or_else(unknown)
}

/// A flag says 0 or 1 and nothing else, so that a stray number is noticed.
pub(crate) fn flag(number: i32, field: Field) -> Result<bool, Error> {
    match number {
        0 => Ok(false),
        1 => Ok(true),
        _ => Err(Error::new(Code::UnknownValue, field).got(f64::from(number)).hint_text("0 no, 1 yes")),
    }
}

/// A double that its flag may leave out. One that is set behind the back of its flag is no slip to pass over.
pub(crate) fn given_double(is_given: i32, value: f64, field: Field) -> Result<Option<f64>, Error> {
    match (flag(is_given, field)?, value == 0.0) {
        (true, _) => Ok(Some(value)),
        (false, true) => Ok(None),
        (false, false) => Err(Error::new(Code::Contradiction, field)
            .got(value)
            .hint_text("a value that is given has its flag, ..._is_given, at 1")),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::memory::text_of;

    #[test]
    fn a_panic_becomes_a_status() {
        let mut error = core::mem::MaybeUninit::<threadcalc_error_t>::zeroed();
        let status = guard(error.as_mut_ptr(), || panic!("planted"));
        assert_eq!(status, THREADCALC_STATUS_INTERNAL_FAULT);
        // SAFETY: guard wrote it, and zeroed memory is a valid value all the same.
        let error = unsafe { error.assume_init() };
        assert_eq!(error.code, THREADCALC_STATUS_INTERNAL_FAULT);
        assert!(text_of(&error.message).starts_with(b"internal fault"));
    }

    #[test]
    fn the_key_stands_before_an_error_that_does_not_name_it() {
        let fault = |key: &str| Fault { error: Error::new(Code::UnknownKey, Field::Key), key: Some(key.into()) };
        assert_eq!(fault("speed").to_string(), "speed: key: unknown key");
        assert_eq!(fault("key").to_string(), "key: unknown key");
    }
}
