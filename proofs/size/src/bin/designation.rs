//! Designations read and written, and the lists of standard threads.

#![no_std]
#![no_main]

use core::fmt::Write;
use core::hint::black_box;

use size::{Port, begin, text};
use threadcalc_core::{Form, Series, Thread, standard_threads};

#[unsafe(no_mangle)]
extern "C" fn _start() {
    begin();
    if let Ok(thread) = black_box(Thread::read(text())) {
        black_box(write!(Port, "{thread}").is_ok());
    }
    for thread in standard_threads(black_box(None::<Form>), black_box(None::<Series>)) {
        black_box(thread);
    }
}
