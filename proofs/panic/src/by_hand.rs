//! Entries that rustdoc's list is not enough for: functions that take a function, or a type of any kind.

#[cfg(feature = "planted")]
use crate::entry;

// Exactly what must not happen in the core: an index that nobody has checked.
#[cfg(feature = "planted")]
entry!("planted", (numbers: &[u64], place: usize) => numbers[place]);
