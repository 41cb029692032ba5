//! What the fuzz targets share: what has to hold of every answer, and ways to ask from a few bytes.
//!
//! A target is a file in `src/bin`. It hands the bytes it is given to the library and asserts; libFuzzer
//! looks for bytes that reach new code or break an assertion. A panic anywhere, the library's own
//! included, ends the process before the guard of the C border can catch it.

pub mod calls;
pub mod check;
pub mod job;
pub mod nc;
pub mod storm;
