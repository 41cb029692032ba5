//! What holds for every input: no panic, an error or a result that agrees with itself.

mod cycles;
mod depths;
mod dialects;
mod engagements;
mod feeds;
mod holes;
mod identified;
mod jobs;
mod limits;
mod notes;
mod numbers;
mod tapers;
mod threads;
mod typing;
mod values;
