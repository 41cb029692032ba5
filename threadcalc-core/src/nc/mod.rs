//! Reading of NC programs in the word-address format of ISO 6983-1 and RS274/NGC.
//!
//! A program is bytes. [`Reader`] takes them in pieces of any size and gives [`Block`]s: words with exact
//! numbers or formulas, comments, and the faults of each line with their columns. [`evaluate`] computes a
//! formula with the [`Variables`] that the program has set. What the words do is another question; which
//! standard pitch the lead is that they make, [`identify`] and [`identify_feed`] say.

mod block;
mod comments;
mod expression;
mod fault;
mod formula;
mod identify;
mod lines;
mod list;
mod name;
mod number;
mod postfix;
mod reader;
mod scan;
mod variables;
mod word;
mod words;

pub use crate::series::{PitchSystem, PitchSystems};
pub use block::Block;
pub use comments::BlockComment;
pub use fault::{Fault, FaultKind};
pub use formula::{Unresolved, evaluate};
pub use identify::{
    FeedWords, Identification, LEAD_WITHIN, LeadVerdict, Match, identify, identify_feed, threads_of_pitch,
};
pub use lines::{LineEnd, LineEnds};
pub use number::{Number, Sign};
pub use postfix::{Binary, Formula, Operation, Unary};
pub use reader::{Blocks, Reader, ReaderSettings, Taken};
pub use variables::{Variable, Variables};
pub use word::{Assignment, InnerDelete, Word, WordValue, code_tenths};
