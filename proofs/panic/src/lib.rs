//! Every public function of the core in one library that cannot be loaded if one of them can panic.
//!
//! Each entry is exported, so that the optimiser knows no more of its arguments than their types, and
//! keeps its result. The panic handler calls a function that exists nowhere: if any
//! panic can be reached, the linked library asks for that function by name.
//!
//! The entries are written by `api.py` from rustdoc's list of the core; what it cannot write stands in
//! `by_hand.rs`.

#![no_std]

mod by_hand;
mod sink;
mod spring;

/// One exported function of this name, whose arguments nobody knows at compile time.
macro_rules! entry {
    ($name:literal, ($($argument:ident: $kind:ty),*) => $body:expr) => {
        const _: () = {
            #[unsafe(export_name = $name)]
            fn entry($($argument: $kind),*) {
                let _kept = core::hint::black_box($body);
            }
        };
    };
}
pub(crate) use entry;

/// Everything that an iterator gives.
pub(crate) fn all<I: Iterator>(items: I) {
    for item in items {
        core::hint::black_box(item);
    }
}

/// The entries that rustdoc's list is enough for.
mod from_list {
    use core::fmt::{Debug, Display, Formatter, Write};
    use core::hash::Hash;

    use serde::{Deserialize, Serialize};
    use threadcalc_core::nc::*;
    use threadcalc_core::*;

    use crate::all;
    use crate::sink::Sink;
    use crate::spring::Spring;

    include!(env!("THREADCALC_ENTRIES"));
}

#[panic_handler]
fn panicked(_: &core::panic::PanicInfo<'_>) -> ! {
    unsafe extern "C" {
        safe fn threadcalc_panic_is_linked() -> !;
    }
    threadcalc_panic_is_linked()
}
