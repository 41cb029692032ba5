//! The check of a program in pieces: the one handle of this library, in the caller's memory.

use threadcalc_core::nc::{Checker, Unchecked};
use threadcalc_core::{Code, Error, Field};

use core::ffi::c_char;

use crate::codes::threadcalc_status;
use crate::dialect::{optional_dialect, threadcalc_dialect_t};
use crate::memory::{Output, SizedOutput, bytes, fixed_text, request};
use crate::nc_choices::{THREADCALC_REASON_UNSET, threadcalc_reason};
use crate::nc_event::threadcalc_program_event_t;
use crate::nc_options::{threadcalc_check_options_t, threadcalc_tool_t};
use crate::status::{guard, threadcalc_error_t};

/// A check that is under way, in memory of the caller's: threadcalc_checker_size bytes, aligned to 16. It holds no
/// pointers and is never ended: the memory is the caller's to reuse. One thread at a time.
pub struct threadcalc_checker_t {
    _opaque: [u8; 0],
}

/// What stands in the memory.
#[repr(C, align(16))]
struct Handle {
    mark: u64,
    is_finished: bool,
    checker: Checker,
}

/// What a handle that was begun begins with: memory that was not is noticed nearly always.
const MARK: u64 = 0x7443_6865_636b_6572;

const NOT_BEGUN: Error = Error::new(Code::Missing, Field::Pointer).hint_text("call threadcalc_checker_begin first");

/// A handle that was begun.
///
/// # Safety
/// `checker` is NULL or points to the memory of a handle, which nobody else uses during the call.
unsafe fn handle<'a>(checker: *mut threadcalc_checker_t) -> Result<&'a mut Handle, Error> {
    let handle = unsafe { memory(checker) }?;
    // SAFETY: aligned, and the caller promises the memory; only its mark is read before it is known to be one.
    if unsafe { (&raw const (*handle).mark).read() } != MARK {
        return Err(NOT_BEGUN);
    }
    // SAFETY: threadcalc_checker_begin wrote all of it.
    Ok(unsafe { &mut *handle })
}

/// # Safety
/// None beyond what the caller does with the pointer.
unsafe fn memory(checker: *mut threadcalc_checker_t) -> Result<*mut Handle, Error> {
    if checker.is_null() {
        return Err(Error::new(Code::NullPointer, Field::Pointer));
    }
    let handle = checker.cast::<Handle>();
    if !handle.is_aligned() {
        let error = Error::new(Code::OutOfRange, Field::Pointer);
        return Err(error.hint_text("memory for a checker is aligned to 16 bytes, as that of malloc is"));
    }
    Ok(handle)
}

/// How many bytes a check takes.
#[unsafe(no_mangle)]
pub extern "C" fn threadcalc_checker_size() -> usize {
    size_of::<Handle>()
}

/// Begins the check of a program in memory of the caller's, of size bytes. The options may be NULL.
///
/// The memory need not be cleared; what stood there is gone. Calls of subprograms are not followed here, since a piece
/// that has gone by cannot be read again: threadcalc_check_json follows them.
/// Errors: null-pointer, out-of-range (memory that is not aligned to 16 bytes), structure-size, missing (no dialect),
/// those of threadcalc_cycle for a dialect, unknown-value.
/// Source: RS274/NGC, NISTIR 6556; ISO 6983-1; where controls differ, the dialect.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_checker_begin(
    checker: *mut threadcalc_checker_t,
    size: usize,
    dialect: *const threadcalc_dialect_t,
    options: *const threadcalc_check_options_t,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let place = unsafe { memory(checker) }?;
        if size < size_of::<Handle>() {
            return Err(Error::new(Code::StructureSize, Field::Size)
                .hint_text("threadcalc_checker_size() bytes")
                .into());
        }
        let dialect = unsafe { optional_dialect(dialect) }?.ok_or(Error::new(Code::Missing, Field::Dialect))?;
        let options = if options.is_null() { None } else { Some(unsafe { request(options) }?.read()?) };
        let checker = Checker::new(&dialect, &options.unwrap_or_default());
        // SAFETY: aligned, and the caller promises `size` bytes.
        unsafe { place.write(Handle { mark: MARK, is_finished: false, checker }) };
        Ok(())
    })
}

/// Tells a tool of the shop's list, before the program is read; of two with one number the first counts.
///
/// Errors: null-pointer, missing (not begun), too-long (more than 64 tools), structure-size, unknown-value, those of
/// threadcalc_thread_write.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_checker_add_tool(
    checker: *mut threadcalc_checker_t,
    tool: *const threadcalc_tool_t,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let handle = unsafe { handle(checker) }?;
        handle.checker.add_tool(&unsafe { request(tool) }?.read()?)?;
        Ok(())
    })
}

/// Takes bytes of the program until something is found or all are taken; taken says how many. Then ask
/// threadcalc_checker_next until it gives THREADCALC_EVENT_NONE, and hand over the rest.
///
/// Errors: null-pointer, missing (not begun), contradiction (the program was finished).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_checker_read(
    checker: *mut threadcalc_checker_t,
    program: *const u8,
    length: usize,
    taken: *mut usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let handle = unsafe { handle(checker) }?;
        let program = unsafe { bytes(program, length) }?;
        let taken = unsafe { Output::new(taken) }?;
        if handle.is_finished {
            let error = Error::new(Code::Contradiction, Field::Pointer);
            return Err(error.hint_text("the program was finished: begin another check").into());
        }
        taken.write(handle.checker.read(program));
        Ok(())
    })
}

/// The next hole or finding that is known; kind is THREADCALC_EVENT_NONE if there is none. event_size is
/// sizeof(threadcalc_program_event_t).
///
/// Errors: null-pointer, missing (not begun), structure-size.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_checker_next(
    checker: *mut threadcalc_checker_t,
    event: *mut threadcalc_program_event_t,
    event_size: usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let handle = unsafe { handle(checker) }?;
        let place = unsafe { SizedOutput::new(event, event_size) }?;
        place.write(threadcalc_program_event_t::of_option(handle.checker.next_event().as_ref()));
        Ok(())
    })
}

/// The program ends here: what can be said only now is to be taken with threadcalc_checker_next. Again it does nothing.
///
/// Errors: null-pointer, missing (not begun).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_checker_finish(
    checker: *mut threadcalc_checker_t,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let handle = unsafe { handle(checker) }?;
        handle.is_finished = true;
        handle.checker.finish();
        Ok(())
    })
}

/// How often something was not checked, and where first. New members are added at the end only.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct threadcalc_unchecked_t {
    /// Why; THREADCALC_REASON_UNSET behind the last.
    pub reason: threadcalc_reason,
    /// How often.
    pub count: u32,
    /// The first line.
    pub first_line: u32,
    /// 0.
    pub reserved: u32,
    /// The reason in words.
    pub text: [c_char; 64],
}

impl threadcalc_unchecked_t {
    const NONE: Self = Self { reason: THREADCALC_REASON_UNSET, count: 0, first_line: 0, reserved: 0, text: [0; 64] };

    fn of(unchecked: Unchecked) -> Self {
        Self {
            reason: unchecked.reason.number(),
            count: unchecked.count,
            first_line: unchecked.first_line,
            reserved: 0,
            text: fixed_text(unchecked.reason.text()),
        }
    }
}

/// What was not checked so far, by index from 0; behind the last, reason is THREADCALC_REASON_UNSET.
///
/// Errors: null-pointer, missing (not begun), structure-size.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_checker_not_checked(
    checker: *mut threadcalc_checker_t,
    index: usize,
    unchecked: *mut threadcalc_unchecked_t,
    unchecked_size: usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let handle = unsafe { handle(checker) }?;
        let place = unsafe { SizedOutput::new(unchecked, unchecked_size) }?;
        let found = handle.checker.not_checked().nth(index);
        place.write(found.map_or(threadcalc_unchecked_t::NONE, threadcalc_unchecked_t::of));
        Ok(())
    })
}
