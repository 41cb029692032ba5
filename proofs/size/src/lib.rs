//! What the three programs share: a panic handler, a sink for text, and one planted fault.
//!
//! An entry hides what goes in behind `black_box`, so that no answer is computed while compiling, and
//! gives what comes out to `black_box`, so that no part of it is thrown away.

#![no_std]

use core::fmt;
use core::hint::black_box;

#[panic_handler]
fn panicked(_: &core::panic::PanicInfo<'_>) -> ! {
    loop {}
}

/// A text that the compiler knows nothing of.
#[must_use]
pub fn text() -> &'static [u8] {
    black_box(&b""[..])
}

/// Takes text as a port that sends bytes would.
#[derive(Debug)]
pub struct Port;

impl fmt::Write for Port {
    fn write_str(&mut self, text: &str) -> fmt::Result {
        black_box(text);
        Ok(())
    }
}

/// Where every program begins: takes a byte of the planted table, if it was asked for.
pub fn begin() {
    #[cfg(feature = "planted")]
    {
        const KIBIBYTES: usize = 64;
        // Not all the same: zeros would need no room.
        static TABLE: [u8; KIBIBYTES << 10] = {
            let mut table = [1; KIBIBYTES << 10];
            table[0] = 2;
            table
        };
        black_box(TABLE.get(black_box(0_usize)));
    }
}
