//! The feed of a lead and its word, and nothing else.

#![no_std]
#![no_main]

use core::hint::black_box;

use threadcalc_core::{FeedMode, Length, Ratio, Unit, feed};

#[unsafe(no_mangle)]
extern "C" fn _start() {
    size::begin();
    let (lead, rpm) = (black_box(Length::ONE), black_box(None::<Ratio>));
    let made = feed(lead, rpm, black_box(Unit::Mm), black_box(FeedMode::PerMinute), black_box(3));
    black_box(made.as_ref().map(|feed| feed.word()).ok());
}
