//! Programs that are checked: the samples with what is expected of them, and what holds of every program.

mod bounds;
mod calls;
mod cycles;
mod drawn;
mod faults;
mod lead_word;
mod messages;
mod report;
mod samples;
mod told;

#[path = "../support/pieces.rs"]
mod pieces;
#[path = "../support/samples.rs"]
mod programs;
#[path = "../support/random.rs"]
mod random;
#[path = "../support/whole.rs"]
mod whole;
