//! Any bytes as a designation and as a fit: threads that agree with themselves, or an error within the bytes.
#![no_main]

use libfuzzer_sys::fuzz_target;
use threadcalc_core::{Side, Thread, read_fit};
use threadcalc_fuzz::check;

fuzz_target!(|text: &[u8]| {
    let read = Thread::read(text);
    match &read {
        Ok(thread) => check::thread(thread),
        Err(error) => check::error_of_text(error, text),
    }
    match read_fit(text) {
        Ok((internal, external)) => {
            assert!(read.is_err(), "a fit is not one thread");
            assert_eq!([internal.side(), external.side()], [Some(Side::Internal), Some(Side::External)]);
            assert_eq!(internal.major_mm(), external.major_mm());
            check::thread(&internal);
            check::thread(&external);
        }
        Err(error) => check::error_of_text(&error, text),
    }
});
