//! The threads that comments of programs and lines of tool lists mention.

use threadcalc_core::{Field, FoundThread, read_comment};

use crate::codes::threadcalc_status;
use crate::memory::{Output, bytes, list};
use crate::status::{flag, guard, threadcalc_error_t};
use crate::types::{offset, threadcalc_thread_t};

/// A thread that a comment mentions. Frozen.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct threadcalc_found_thread_t {
    /// The thread.
    pub thread: threadcalc_thread_t,
    /// Where its text begins, in bytes.
    pub at: i64,
    /// How many bytes its text is.
    pub length: i64,
}

impl threadcalc_found_thread_t {
    fn of(found: &FoundThread) -> Self {
        Self { thread: threadcalc_thread_t::of(&found.thread), at: offset(found.at), length: offset(found.length) }
    }
}

/// Finds the threads that a comment or a line of a tool list mentions, the first four in order. Dates, part
/// numbers, tool diameters and words of a program are none; nor is a designation that contradicts itself.
///
/// tool_is_tap is 1 if the tool list says that the tool is a tap, else 0: a bare M8 is a thread then.
/// count is how many threads are listed, up to 4; with too little room only count is written. has_more is 1
/// if the comment mentions more than those, else 0; it may be NULL.
/// Errors: unknown-value (tool_is_tap), buffer-too-short. No text is an error.
/// Source: common practice.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_read_comment(
    text: *const u8,
    length: usize,
    tool_is_tap: i32,
    threads: *mut threadcalc_found_thread_t,
    capacity: usize,
    count: *mut usize,
    has_more: *mut i32,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let text = unsafe { bytes(text, length) }?;
        let comment = read_comment(text, flag(tool_is_tap, Field::Tap)?);
        unsafe { list(|| comment.threads().map(threadcalc_found_thread_t::of), threads, capacity, count) }?;
        if !has_more.is_null() {
            unsafe { Output::new(has_more) }?.write(i32::from(comment.more()));
        }
        Ok(())
    })
}
