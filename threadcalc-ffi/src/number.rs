//! Exact numbers in and out, and the programmed speed.

use core::ffi::c_char;

use threadcalc_core::{Error, Field, Length, programmed_speed, read_number};

use crate::codes::threadcalc_status;
use crate::memory::{Output, bytes, input, text_out};
use crate::status::{guard, threadcalc_error_t};
use crate::types::threadcalc_ratio_t;

/// A number that has to be there.
///
/// # Safety
/// As for every input of the library.
pub(crate) unsafe fn given(pointer: *const threadcalc_ratio_t, field: Field) -> Result<Length, Error> {
    unsafe { input(pointer) }?.required(field)
}

/// A number that NULL or 0/0 leaves out.
///
/// # Safety
/// As for every input of the library.
pub(crate) unsafe fn perhaps(pointer: *const threadcalc_ratio_t, field: Field) -> Result<Option<Length>, Error> {
    if pointer.is_null() { Ok(None) } else { unsafe { input(pointer) }?.read(field) }
}

/// Reads an exact number: 1.25, 1,25, .5, -2.5, 127/70, 1 1/4. A comma is a decimal comma; there is no
/// thousands separator, no exponent and no locale.
///
/// Errors: empty, unreadable with the byte, too-long (64 bytes), not-exact (more than 9 decimals),
/// out-of-range (denominator 0), overflow.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_read_number(
    text: *const u8,
    length: usize,
    number: *mut threadcalc_ratio_t,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let text = unsafe { bytes(text, length) }?;
        let number = unsafe { Output::new(number) }?;
        number.write(threadcalc_ratio_t::of(read_number(text)?));
        Ok(())
    })
}

/// Writes an exact number: a decimal where it is one, else numerator/denominator. At most 41 bytes.
///
/// Errors: out-of-range (denominator 0), missing (0/0), buffer-too-short.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_write_number(
    number: *const threadcalc_ratio_t,
    text: *mut c_char,
    capacity: usize,
    needed: *mut usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let number = unsafe { given(number, Field::Number) }?;
        unsafe { text_out(|sink| sink.display(number), text, capacity, needed) }?;
        Ok(())
    })
}

/// The exact number that a double stands for: that of its shortest decimal text, 6.8 is 34/5.
///
/// Errors: not-exact (more than 9 decimals, NaN, infinity), overflow.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_exact_number(
    value: f64,
    number: *mut threadcalc_ratio_t,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let number = unsafe { Output::new(number) }?;
        number.write(threadcalc_ratio_t::of(Length::from_f64(value)?));
        Ok(())
    })
}

/// The nearest double of an exact number, correctly rounded; the same on every platform.
///
/// Errors: out-of-range (denominator 0), missing (0/0).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_nearest_double(
    number: *const threadcalc_ratio_t,
    value: *mut f64,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let number = unsafe { given(number, Field::Number) }?;
        let value = unsafe { Output::new(value) }?;
        value.write(number.to_f64());
        Ok(())
    })
}

/// The speed that the control will really hold: rounded down to its step, never up; a speed above the
/// highest comes down to it. All in turns per minute, exact.
///
/// step, lowest and highest may be NULL or 0/0: step 1, no limit.
/// Errors: missing (rpm), out-of-range (a speed or step not above 0, or nothing left above lowest),
/// overflow.
/// Source: common practice; controls drop the part of an S word that is finer than their step.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_programmed_speed(
    rpm: *const threadcalc_ratio_t,
    step: *const threadcalc_ratio_t,
    lowest: *const threadcalc_ratio_t,
    highest: *const threadcalc_ratio_t,
    programmed_rpm: *mut threadcalc_ratio_t,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let rpm = unsafe { given(rpm, Field::Rpm) }?;
        let step = unsafe { perhaps(step, Field::Step) }?.unwrap_or(Length::ONE);
        let lowest = unsafe { perhaps(lowest, Field::Lowest) }?;
        let highest = unsafe { perhaps(highest, Field::Highest) }?;
        let held = unsafe { Output::new(programmed_rpm) }?;
        held.write(threadcalc_ratio_t::of(programmed_speed(rpm, step, lowest, highest)?));
        Ok(())
    })
}
