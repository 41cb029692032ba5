//! Reading of NC programs in the word-address format of ISO 6983-1 and RS274/NGC.
//!
//! A program is bytes. [`Reader`] takes them in pieces of any size and gives [`Block`]s: words with exact
//! numbers or formulas, comments, and the faults of each line with their columns. [`evaluate`] computes a
//! formula with the [`Variables`] that the program has set. What the words do is another question; which
//! standard pitch the lead is that they make, [`identify`] and [`identify_feed`] say.

mod apply;
mod block;
mod checker;
mod codes;
mod comments;
mod compare;
mod cut;
mod declared;
mod drilled;
mod expression;
mod fault;
mod finding;
mod finding_id;
mod finding_keys;
mod formula;
#[cfg(feature = "serde")]
mod from_json;
mod go;
mod grounds;
mod hole;
mod identify;
#[cfg(feature = "serde")]
mod json;
mod judge;
mod lead;
mod lines;
mod list;
mod listed_tools;
mod machine;
mod message;
mod modal;
mod name;
mod number;
mod option_keys;
mod options;
mod pass;
mod pending;
mod planes;
mod postfix;
mod program;
mod quick;
mod reader;
mod readings;
mod report;
mod report_text;
mod scan;
mod shadow;
mod state;
mod tapping;
mod tool_comment;
mod turns;
mod unnamed;
mod values;
mod variables;
mod word;
mod words;
mod work_offset;

pub use crate::series::{PitchSystem, PitchSystems};
pub use block::Block;
pub use checker::Checker;
pub use comments::BlockComment;
pub use compare::{
    ChangeKind, Comparison, ComparisonReport, HoleChange, HoleCounts, HoleValue, HoleValues, NEVER_COMPARED,
    NotCompared, compare, scratch_for,
};
pub use declared::ThreadSource;
pub use fault::{Fault, FaultKind};
pub use finding::{
    Evidence, EvidenceKind, FindingNumber, FindingText, Grounds, Message, ProgramFinding, ProgramNumberKey,
};
pub use finding_id::ProgramFindingId;
pub use formula::{Unresolved, evaluate};
pub use identify::{
    FeedWords, Identification, LEAD_WITHIN, LeadVerdict, Match, identify, identify_feed, threads_of_pitch,
};
pub use judge::MOST_TOOLS;
pub use lines::{LineEnd, LineEnds};
pub use number::{Number, Sign};
pub use options::{CheckOptions, Tool, ToolKind};
pub use postfix::{Binary, Formula, Operation, Unary};
pub use program::ProgramCheck;
pub use reader::{Blocks, Reader, ReaderSettings, Taken};
pub use report::{CHECK_CAUTIONS, Event, NEVER_CHECKED, Reason, Report, TappedHole, Unchecked};
pub use variables::{Variable, Variables};
pub use word::{Assignment, InnerDelete, Word, WordValue, code_tenths};
pub use work_offset::WorkOffset;
