//! The reader of NC programs: every rule of its grammar, whole programs, any bytes.

mod exact;
mod formulas;
mod numbers;
mod pieces;
mod programs;
mod rules;
mod show;
