//! Programs that are checked: the samples with what is expected of them, and what holds of every program.

mod bounds;
mod cycles;
mod drawn;
mod faults;
mod samples;
mod told;

#[path = "../support/random.rs"]
mod random;
