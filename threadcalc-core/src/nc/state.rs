//! The modal state of a program: what holds at a block, and which line set it.

use super::codes::Spindle;
use super::number::Number;
use crate::dialect::Dialect;
use crate::feed::{FeedMode, Unit};
use crate::length::Length;
use crate::thread::Hand;

/// A value and the line that set it; line 0 is the control's own default.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Held<T> {
    pub value: T,
    pub line: u32,
}

impl<T> Held<T> {
    pub(super) const fn new(value: T, line: u32) -> Self {
        Self { value, line }
    }
}

/// What F is counted by.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Mode {
    Feed(FeedMode),
    InverseTime,
}

/// A word as it stands: its value, None where it is not known, and its place.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Said {
    pub value: Option<Length>,
    pub written: Option<Number>,
    pub line: u32,
    pub column: u32,
    pub end_column: u32,
    /// It has no point, and the control counts least increments.
    pub counted: bool,
    /// It is no number, which has been told.
    pub unreadable: bool,
}

/// F, with the unit and the mode that held when it was set.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct FeedWord {
    pub said: Said,
    pub unit: Option<Unit>,
    pub mode: Option<Mode>,
    /// Set for tapping: by a tool that is a tap, or in a block that taps.
    pub for_tapping: bool,
}

/// The motion of group 1 that holds.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Motion {
    /// None has been given.
    None,
    Rapid,
    Feed,
    Tap {
        hand: Hand,
        pecks: bool,
    },
    Stroke,
    Drill,
    OtherCycle,
    Cancelled,
    /// A block that could not be read came between.
    Unknown,
}

impl Motion {
    pub(super) const fn is_cycle(self) -> bool {
        matches!(self, Self::Tap { .. } | Self::Drill | Self::OtherCycle)
    }

    pub(super) const fn taps(self) -> bool {
        matches!(self, Self::Tap { .. } | Self::Stroke)
    }
}

/// The words of a cycle that stay for the next holes, in millimetres where they are lengths.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(super) struct CycleWords {
    pub r: Option<Said>,
    pub z: Option<Said>,
    pub peck: Option<Said>,
    pub dwell: Option<Said>,
    pub retract: Option<Said>,
    pub lead: Option<Said>,
    /// R and Z were set while increments held.
    pub incremental: bool,
    /// The line of the cycle's code.
    pub line: u32,
    /// A tool was changed since the code.
    pub other_tool: bool,
    /// Holes since the code.
    pub holes: u32,
    /// Z before the cycle.
    pub initial_z: Option<Length>,
}

impl CycleWords {
    /// Z of R and of the bottom, in millimetres: under G91 R counts from where the tool stands, and Z from R.
    pub(super) fn heights(&self) -> (Option<Length>, Option<Length>) {
        let value = |said: Option<Said>| said.and_then(|said| said.value);
        let (r, z) = (value(self.r), value(self.z));
        if !self.incremental {
            return (r, z);
        }
        let r = r.zip(self.initial_z).and_then(|(r, from)| from.plus(r).ok());
        (r, r.zip(z).and_then(|(r, z)| r.plus(z).ok()))
    }

    /// The same of a single stroke, which begins where the tool stands.
    pub(super) fn stroke_heights(&self) -> (Option<Length>, Option<Length>) {
        let (from, z) = (self.initial_z, self.z.and_then(|said| said.value));
        (from, if self.incremental { from.zip(z).and_then(|(from, z)| from.plus(z).ok()) } else { z })
    }
}

/// A place on the part; None where it is not known.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(super) struct Position {
    pub x: Option<Length>,
    pub y: Option<Length>,
    pub z: Option<Length>,
}

/// All that holds at a block.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct State {
    pub units: Option<Held<Unit>>,
    pub mode: Option<Held<Mode>>,
    pub surface_speed: Option<Held<bool>>,
    /// The line of the feed mode that was tapped under.
    pub tapped_mode_line: Option<u32>,
    pub feed: Option<FeedWord>,
    pub speed: Option<Said>,
    pub spindle: Held<Spindle>,
    pub motion: Motion,
    pub cycle: CycleWords,
    pub return_stated: bool,
    pub incremental: Option<Held<bool>>,
    pub plane_is_xy: Held<bool>,
    pub compensation: Held<bool>,
    pub length_offset: Held<bool>,
    pub work_offset: u32,
    pub mirror: Held<bool>,
    pub mirrored_axes: u32,
    pub scale: Held<bool>,
    pub rotate: Held<bool>,
    pub overrides_locked: bool,
    /// The code for rigid tapping and its S.
    pub rigid: Option<Held<Option<Length>>>,
    /// The code stood in the program, and it is not told how long it holds.
    pub rigid_is_open: bool,
    pub tool_pending: Option<u32>,
    pub tool: Option<Held<Option<u32>>>,
    pub position: Position,
    pub program: Option<u64>,
    pub ended: bool,
}

impl State {
    pub(super) fn start(dialect: &Dialect) -> Self {
        let off = Held::new(false, 0);
        Self {
            units: dialect.reading.units_default.map(|unit| Held::new(unit, 0)),
            mode: dialect.reading.feed_mode_default.map(|mode| Held::new(Mode::Feed(mode), 0)),
            surface_speed: None,
            tapped_mode_line: None,
            feed: None,
            speed: None,
            spindle: Held::new(Spindle::Stopped, 0),
            motion: Motion::None,
            cycle: CycleWords::default(),
            return_stated: false,
            incremental: None,
            plane_is_xy: Held::new(true, 0),
            compensation: off,
            length_offset: off,
            work_offset: 540,
            mirror: off,
            mirrored_axes: 0,
            scale: off,
            rotate: off,
            overrides_locked: false,
            rigid: None,
            rigid_is_open: false,
            tool_pending: None,
            tool: None,
            position: Position::default(),
            program: None,
            ended: false,
        }
    }

    pub(super) fn unit(&self) -> Option<Unit> {
        self.units.map(|units| units.value)
    }

    /// A length of the program in millimetres; in the unit that is not known, taken for millimetres.
    pub(super) fn in_mm(&self, length: Length) -> Option<Length> {
        match self.unit() {
            Some(Unit::Inch) => length.times(Length::INCH).ok(),
            _ => Some(length),
        }
    }

    /// A word that is a length, in millimetres.
    pub(super) fn said_in_mm(&self, said: Said) -> Said {
        Said { value: said.value.and_then(|value| self.in_mm(value)), ..said }
    }

    /// A single stroke with its lead written in it needs no F.
    pub(super) fn uses_lead_word(&self) -> bool {
        self.motion == Motion::Stroke && self.cycle.lead.is_some()
    }

    pub(super) fn is_incremental(&self) -> bool {
        self.incremental.is_some_and(|held| held.value)
    }
}

/// What a block does, beside what holds after it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Effects {
    pub act: Act,
    /// The motion whose code stands in it.
    pub motion_code: Option<Motion>,
    /// A move while the cycle stays: on controls where only G80 ends it.
    pub moves_in_cycle: bool,
    pub tool_change: bool,
    pub feed_word: bool,
    pub rigid_code: bool,
    /// Holes at this block, one behind the other.
    pub repeats: u32,
    /// X or Y stands in it.
    pub moves_across: bool,
    /// Places mean something else behind it.
    pub origin_moves: bool,
    pub call: Option<Call>,
    pub call_return: bool,
    pub program_end: bool,
    /// A code that the control does not have.
    pub foreign: Option<Found>,
    /// Two codes of one group: the second.
    pub twice: Option<Found>,
    /// Values that are not known, by their letters.
    pub unknown: u32,
    /// The first of them.
    pub unknown_at: Option<Found>,
}

/// A code or word of a block, and its place.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Found {
    pub letter: u8,
    pub tenths: u32,
    pub column: u32,
    pub end_column: u32,
}

/// The motion that a block makes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Act {
    None,
    Rapid,
    FeedMove,
    /// Taps at the position that holds after the block.
    Tap,
    /// Drills there.
    Drill,
    OtherCycle,
    /// Axis words without a motion to use them.
    Nothing,
    /// Axis words under a motion that is not known.
    NotKnown,
}

/// A call of a subprogram.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Call {
    pub program: Option<u64>,
    pub repeats: u32,
}

/// The bit of a letter in [`Effects::unknown`].
pub(super) const fn letter_bit(letter: u8) -> u32 {
    1_u32.wrapping_shl(letter as u32 & 31)
}
