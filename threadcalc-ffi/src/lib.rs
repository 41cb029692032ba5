//! The C library of threadcalc: plain structures and calls over `threadcalc-core`, and the JSON door.
//!
//! The contract is `include/threadcalc.h`, which is made from this crate. Names here are the header's.
//! Every call goes through one guard, checks its pointers, asks the core and writes the answer; there
//! is no arithmetic. The Rust items are for the program `threadcalc-lines` and for tests: only the C
//! interface is stable.

#![deny(clippy::float_arithmetic, clippy::arithmetic_side_effects)]
#![allow(non_camel_case_types, reason = "the names are those of the C header")]
#![allow(clippy::missing_safety_doc, reason = "the header's first paragraph says what pointers have to be")]

mod choices;
mod codes;
mod comment;
mod cycle;
mod depth;
mod dialect;
mod drill;
mod feed;
mod finding_ids;
mod flat;
mod hole_note;
mod job;
mod json;
mod limits;
mod lines;
mod memory;
mod names;
mod number;
mod pipe;
mod plan;
mod status;
mod tap_choices;
mod taper_depth;
mod thread;
mod types;

pub use choices::*;
pub use codes::*;
pub use comment::*;
pub use cycle::*;
pub use depth::*;
pub use dialect::*;
pub use drill::*;
pub use feed::*;
pub use finding_ids::*;
pub use flat::*;
pub use hole_note::*;
pub use job::*;
pub use limits::*;
pub use lines::answer_line;
pub use names::*;
pub use number::*;
pub use pipe::*;
pub use plan::*;
pub use status::threadcalc_error_t;
pub use tap_choices::*;
pub use taper_depth::*;
pub use thread::*;
pub use types::*;
