//! Entries that rustdoc's list is not enough for: functions that take a function, or a type of any kind.
//!
//! ```text
//! entry!("Report::each", (this: &Report, take: fn(Finding)) => this.each(take));
//! ```

#![allow(unused_imports, reason = "an entry is to be one line")]

use core::fmt::Formatter;
use core::hint::black_box;

use threadcalc_core::*;

use crate::sink::Sink;
use crate::{all, entry};

entry!("tap_drill", (thread: &Thread, request: &TapDrillRequest) => tap_drill(thread, request));
entry!("threads_of_pitch", (pitch_mm: Length, diameter_mm: Length, starts: i64) => {
    nc::threads_of_pitch(pitch_mm, diameter_mm, starts).map(all)
});
entry!("threads_near_diameter", (diameter_mm: Length, within_mm: Length) => {
    threads_near_diameter(diameter_mm, within_mm).map(all)
});
entry!("threads_near_pitch", (pitch_mm: Length, within_mm: Length) => {
    threads_near_pitch(pitch_mm, within_mm).map(all)
});

// Exactly what must not happen in the core: an index that nobody has checked.
#[cfg(feature = "planted")]
entry!("planted", (numbers: &[u64], place: usize) => numbers[place]);
