//! Any bytes as a designation: a thread that agrees with itself, or an error that lies within them.
#![no_main]

use libfuzzer_sys::fuzz_target;
use threadcalc_core::Thread;
use threadcalc_fuzz::check;

fuzz_target!(|text: &[u8]| {
    match Thread::read(text) {
        Ok(thread) => check::thread(&thread),
        Err(error) => check::error_of_text(&error, text),
    }
});
