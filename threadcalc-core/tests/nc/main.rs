//! The reader of NC programs: every rule of its grammar, whole programs, any bytes.

mod exact;
mod formulas;
mod numbers;
mod peer;
mod pieces;
mod programs;
mod rules;
mod show;

#[path = "../support/random.rs"]
mod random;
