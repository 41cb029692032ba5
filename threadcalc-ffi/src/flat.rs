//! Calls with integers, doubles and byte pointers only, for hosts that cannot build structures.
//!
//! Unit 1 mm, 2 inch; mode 1 per minute, 2 per revolution.

use core::ffi::c_char;
use core::ptr::null_mut;

use threadcalc_core::{FeedMode, Field, Length, Thread, Unit, feed, plan};

use crate::codes::threadcalc_status;
use crate::feed::decimals as checked_decimals;
use crate::json::{as_json, read_job};
use crate::memory::{Output, Sink, bytes, bytes_out, text_out};
use crate::status::{guard, required, threadcalc_error_t};

/// Version of the binary interface: raised on any break.
pub const THREADCALC_ABI_VERSION: i32 = 1;

/// The lead of a designation in mm, exact, in lowest terms.
///
/// Errors: those of threadcalc_thread_read.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_lead(
    designation: *const u8,
    length: usize,
    numerator: *mut i64,
    denominator: *mut i64,
) -> threadcalc_status {
    guard(null_mut(), || {
        let designation = unsafe { bytes(designation, length) }?;
        let numerator = unsafe { Output::new(numerator) }?;
        let denominator = unsafe { Output::new(denominator) }?;
        let lead = Thread::read(designation)?.lead_mm();
        numerator.write(lead.numerator());
        denominator.write(lead.denominator());
        Ok(())
    })
}

/// The feed word of a designation: "F914.4". At most 24 bytes with its NUL.
///
/// rpm is the programmed speed in turns per minute; it stands for its shortest decimal text. Per
/// revolution it has to be 0. unit 1 mm, 2 inch; mode 1 per minute, 2 per revolution; decimals 0 to 9.
/// needed counts the NUL.
/// Errors: those of threadcalc_thread_read, threadcalc_exact_number and threadcalc_feed; buffer-too-short.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_feed_word(
    designation: *const u8,
    length: usize,
    rpm: f64,
    unit: i32,
    mode: i32,
    decimals: i32,
    text: *mut c_char,
    capacity: usize,
    needed: *mut usize,
) -> threadcalc_status {
    guard(null_mut(), || {
        let lead = Thread::read(unsafe { bytes(designation, length) }?)?.lead_mm();
        let unit = required(unit, Unit::from_number, Field::Unit, Unit::CHOICES)?;
        let mode = required(mode, FeedMode::from_number, Field::Mode, FeedMode::CHOICES)?;
        let decimals = checked_decimals(Length::integer(i64::from(decimals)))?;
        let speed = Length::from_f64(rpm).map_err(|error| error.about(Field::Rpm))?;
        let left_out = mode == FeedMode::PerRevolution && speed == Length::ZERO;
        let feed = feed(lead, (!left_out).then_some(speed), unit, mode, decimals)?;
        let word = feed.word().as_bytes();
        let write = |sink: &mut Sink<'_>| {
            sink.take(word);
            Ok(())
        };
        unsafe { text_out(write, text, capacity, needed) }?;
        Ok(())
    })
}

/// The JSON door: the JSON text of a job in, the JSON text of its plan out. UTF-8; needed counts the NUL.
///
/// The keys are those of threadcalc_job_t, with the objects machine and dialect; schema (1) is required,
/// an unknown key is an error. An exact number is a number or a text, "127/70".
/// Errors: bad-json, too-long (65536 bytes), unknown-key, those of threadcalc_plan, buffer-too-short.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_plan_json(
    job: *const u8,
    length: usize,
    text: *mut c_char,
    capacity: usize,
    needed: *mut usize,
) -> threadcalc_status {
    unsafe { threadcalc_plan_json_with_error(job, length, text, capacity, needed, null_mut()) }
}

/// threadcalc_plan_json that says what is wrong: at is the byte of the JSON text for bad-json, and the
/// byte of the key's own text otherwise; the message names the key.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_plan_json_with_error(
    job: *const u8,
    length: usize,
    text: *mut c_char,
    capacity: usize,
    needed: *mut usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let plan = plan(&read_job(unsafe { bytes(job, length) }?)?)?;
        let json = as_json(&plan)?;
        unsafe { bytes_out(&json, text, capacity, needed) }?;
        Ok(())
    })
}

/// The version of the binary interface of the library that runs; compare it with THREADCALC_ABI_VERSION.
#[unsafe(no_mangle)]
pub extern "C" fn threadcalc_abi_version() -> i32 {
    THREADCALC_ABI_VERSION
}
