//! The C library of threadcalc: plain structures and calls over `threadcalc-core`, and the JSON door.
//!
//! The contract is `include/threadcalc.h`, which is made from this crate. Names here are the header's.
//! Every call goes through one guard, checks its pointers, asks the core and writes the answer; there
//! is no arithmetic. The Rust items are for the program `threadcalc-lines` and for tests: only the C
//! interface is stable.

#![deny(clippy::float_arithmetic, clippy::arithmetic_side_effects)]
#![allow(non_camel_case_types, reason = "the names are those of the C header")]
#![allow(clippy::missing_safety_doc, reason = "the header's first paragraph says what pointers have to be")]

mod blind_hole;
mod bottoming;
mod choices;
mod coating;
mod codes;
mod comment;
mod countersink;
mod cutting;
mod cycle;
mod depth;
mod depth_choices;
mod dialect;
mod dialect_choices;
mod drill;
mod engagement;
mod engagement_group;
mod feed;
mod finding_ids;
mod flat;
mod gauge;
mod gauge_moves;
mod gear;
mod holder;
mod hole_note;
mod identify;
mod job;
mod json;
mod judged_drill;
mod limits;
mod lines;
mod memory;
mod motion;
mod names;
mod nc_checker;
mod nc_choices;
mod nc_compare;
mod nc_event;
mod nc_finding_ids;
mod nc_json;
mod nc_options;
mod number;
mod pipe;
mod plan;
mod program_depth;
mod reading;
mod spindle;
mod status;
mod tap;
mod tap_choices;
mod tap_mark;
mod taper_depth;
mod thread;
mod through_hole;
mod types;

pub use blind_hole::*;
pub use bottoming::*;
pub use choices::*;
pub use coating::*;
pub use codes::*;
pub use comment::*;
pub use countersink::*;
pub use cutting::*;
pub use cycle::*;
pub use depth::*;
pub use depth_choices::*;
pub use dialect::*;
pub use dialect_choices::*;
pub use drill::*;
pub use engagement::*;
pub use engagement_group::*;
pub use feed::*;
pub use finding_ids::*;
pub use flat::*;
pub use gauge::*;
pub use gauge_moves::*;
pub use gear::*;
pub use holder::*;
pub use hole_note::*;
pub use identify::*;
pub use job::*;
pub use judged_drill::*;
pub use limits::*;
pub use lines::answer_line;
pub use motion::*;
pub use names::*;
pub use nc_checker::*;
pub use nc_choices::*;
pub use nc_compare::threadcalc_compare_json;
pub use nc_event::*;
pub use nc_finding_ids::*;
pub use nc_json::threadcalc_check_json;
pub use nc_options::*;
pub use number::*;
pub use pipe::*;
pub use plan::*;
pub use program_depth::*;
pub use spindle::*;
pub use status::threadcalc_error_t;
pub use tap::*;
pub use tap_choices::*;
pub use tap_mark::*;
pub use taper_depth::*;
pub use thread::*;
pub use through_hole::*;
pub use types::*;
