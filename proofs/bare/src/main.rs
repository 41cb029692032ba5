//! The core in a program of its own: no standard library, no C library, no heap.
//!
//! `bare` checks known answers and prints them; its exit code is 0 only if all are right.
//! `bare answers` prints what every machine is asked; `bare planted` checks one answer wrongly.

#![no_std]
#![no_main]

#[cfg(feature = "heap")]
extern crate alloc;

mod system;

use core::ffi::{CStr, c_char};

use answers::Page;

/// Where the start code hands over: the arguments as the kernel laid them out.
///
/// # Safety
/// `arguments` points to `count` C strings.
pub(crate) unsafe fn main(count: usize, arguments: *const *const c_char) -> i32 {
    // SAFETY: the kernel's count and strings.
    let asked = (count > 1).then(|| unsafe { CStr::from_ptr(*arguments.add(1)) }.to_bytes());
    let mut page = Page::new(system::write);
    let right = match asked {
        Some(b"answers") => answers::write_answers(&mut page).is_ok(),
        Some(other) => answers::write_known(&mut page, other == b"planted") == Ok(true),
        None => answers::write_known(&mut page, false) == Ok(true),
    };
    #[cfg(feature = "heap")]
    let right = right && !alloc::string::ToString::to_string(&threadcalc_core::Length::ONE).is_empty();
    i32::from(!(page.end() && right))
}
