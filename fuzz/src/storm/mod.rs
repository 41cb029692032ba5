//! Many programs, drawn from numbers: the same for the same seed, so that a case that fails can be run alone.

mod case;
mod draw;
mod random;
mod told;

pub use case::{Storm, Tally};
pub use draw::Known;
pub use told::Told;
