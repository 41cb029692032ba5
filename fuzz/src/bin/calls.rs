//! Calls of the C interface in a row: status, error, results, room needed, and memory that is not theirs.
#![no_main]

use libfuzzer_sys::fuzz_target;

fuzz_target!(|bytes: &[u8]| threadcalc_fuzz::calls::run(bytes));
