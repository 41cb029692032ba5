//! What a check gives: tapped holes, findings, and what was not checked.

use super::declared::ThreadSource;
use super::finding::ProgramFinding;
use super::work_offset::WorkOffset;
use crate::feed::{FeedMode, Unit};
use crate::length::Length;
use crate::named::named;
use crate::thread::{Hand, Thread};

/// A block that taps, and what it cuts.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct TappedHole {
    /// The line, from 1.
    pub line: u32,
    /// Which of the program's tapping blocks it is, from 1.
    pub number: u32,
    /// The lead that is cut, in mm; None if it cannot be computed.
    pub lead_mm: Option<Length>,
    /// S; None if it is not known.
    pub speed_rpm: Option<Length>,
    /// F in the program's unit and mode; None if it is not known.
    pub feed: Option<Length>,
    /// The hand that is cut; None if it depends on the control.
    pub hand: Option<Hand>,
    /// How many holes, one behind the other.
    pub count: u32,
    /// From the face to the tap's end, in mm; None if it is not known.
    pub depth_mm: Option<Length>,
    /// The thread that is expected.
    pub thread: Option<Thread>,
    /// Who says so.
    pub source: Option<ThreadSource>,
    /// The tool in the spindle.
    pub tool: Option<u32>,
    /// The number of the program.
    pub program: Option<u64>,
    /// Where the hole is in the program's X, in mm; of several the last one. None if it is not known.
    pub x_mm: Option<Length>,
    /// The same in Y.
    pub y_mm: Option<Length>,
    /// The work offset that both are counted from; G54 if the program names none.
    pub work_offset: WorkOffset,
    /// The unit that the program is in; None if it does not say.
    pub unit: Option<Unit>,
    /// The feed mode that holds; None if the program does not say.
    pub feed_mode: Option<FeedMode>,
}

/// What comes out of a check, in the order in which it is known.
#[derive(Clone, Copy, Debug, PartialEq)]
#[allow(clippy::large_enum_variant, reason = "no heap to put the larger one on")]
pub enum Event {
    /// A block that taps.
    Hole(TappedHole),
    /// Something doubtful or wrong.
    Finding(ProgramFinding),
}

impl Event {
    pub(super) const NONE: Self =
        Self::Finding(ProgramFinding::new(super::finding_id::ProgramFindingId::NonAscii, 0, 0, 0));
}

named! {
    /// Why something was not checked.
    pub enum Reason {
        /// The lead of a hole could not be computed.
        LeadNotKnown = 1 "lead_not_known",
        /// No thread is declared and none was identified.
        ThreadNotKnown = 2 "thread_not_known",
        /// The depth of a hole could not be computed.
        DepthNotKnown = 3 "depth_not_known",
        /// Where a hole is could not be computed.
        PlaceNotKnown = 4 "place_not_known",
        /// The hole was drilled by a drill whose diameter is not known.
        DrillNotKnown = 5 "drill_not_known",
        /// The text was not read: a block with something that no reader takes.
        BlockNotRead = 6 "block_not_read",
        /// Formulas and variables were left alone, as asked.
        MacrosLeft = 7 "macros_left",
        /// A call was not followed.
        CallNotFollowed = 8 "call_not_followed",
        /// More drilled holes than are kept.
        HolesForgotten = 9 "holes_forgotten",
        /// More findings in one block than there is room for.
        FindingsLost = 10 "findings_lost",
        /// What stands behind the end of the program.
        BehindTheEnd = 11 "behind_the_end",
        /// The hand depends on the control.
        HandNotKnown = 12 "hand_not_known",
    }
}

impl Reason {
    /// What it means, in a few words.
    #[must_use]
    pub const fn text(self) -> &'static str {
        match self {
            Self::LeadNotKnown => "the lead could not be computed",
            Self::ThreadNotKnown => "no thread is named, the lead is all there is",
            Self::DepthNotKnown => "the depth could not be computed",
            Self::PlaceNotKnown => "the place of the hole could not be computed",
            Self::DrillNotKnown => "the diameter of the drill is not known",
            Self::BlockNotRead => "the block could not be read",
            Self::MacrosLeft => "formulas and variables were left alone",
            Self::CallNotFollowed => "the call was not followed",
            Self::HolesForgotten => "more drilled holes than are kept",
            Self::FindingsLost => "more findings in one block than there is room for",
            Self::BehindTheEnd => "text behind the end of the program",
            Self::HandNotKnown => "the hand depends on the control",
        }
    }
}

/// What no check of a text can see.
pub const NEVER_CHECKED: [&str; 6] = [
    "tool in the pocket and its offsets",
    "part, clamps and what the tap comes out into",
    "the tap itself: class, chamfer, wear",
    "switches and overrides at the machine",
    "whether the dialect is that of this machine",
    "pitch diameter: only the gauge shows it",
];

/// What stands at the foot of every report.
pub const CHECK_CAUTIONS: [&str; 3] = [
    "The machine's manual and the tap maker's data come first.",
    "No findings means nothing wrong in what was read, not that it is safe.",
    "Prove out: guards shut, above the part, single block, rapid reduced.",
];

/// How often something was not checked, and where first.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub struct Unchecked {
    /// Why.
    pub reason: Reason,
    /// How often.
    pub count: u32,
    /// The first line.
    pub first_line: u32,
}

/// What was not checked, by reason.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct NotChecked {
    held: [Option<Unchecked>; Reason::ALL.len()],
}

impl NotChecked {
    pub(super) const fn new() -> Self {
        Self { held: [None; Reason::ALL.len()] }
    }

    pub(super) fn note(&mut self, reason: Reason, line: u32) {
        let place = self.held.iter().position(|slot| slot.is_none_or(|held| held.reason == reason));
        let Some(slot) = place.and_then(|place| self.held.get_mut(place)) else { return };
        match slot {
            Some(held) => held.count = held.count.saturating_add(1),
            None => *slot = Some(Unchecked { reason, count: 1, first_line: line }),
        }
    }

    pub(super) fn iter(&self) -> impl Iterator<Item = Unchecked> + '_ {
        self.held.iter().flatten().copied()
    }
}

/// All of a check, for its JSON: a door collects the events, and the findings by line and column.
///
/// Written with [`NEVER_CHECKED`] beside it (feature `serde`).
#[derive(Clone, Copy, Debug)]
pub struct Report<'a> {
    /// The blocks that tap, in the order in which they run.
    pub tapped_holes: &'a [TappedHole],
    /// The findings.
    pub findings: &'a [ProgramFinding],
    /// What was not checked.
    pub not_checked: &'a [Unchecked],
}
