//! The words of a block by letter, and its codes in the order in which they act.

use super::codes::Meaning;
use super::state::{Said, letter_bit};
use crate::dialect::LetterText;
use crate::length::Length;

/// How many codes of a block are followed; a block has at most four M words, and one G of a group.
const MOST_CODES: usize = 24;

/// The words of a block.
pub(super) struct Words {
    pub line: u32,
    said: [Option<Said>; 26],
    codes: [Option<(u8, Meaning)>; MOST_CODES],
}

impl Words {
    /// None yet.
    pub(super) const fn of_line(line: u32) -> Self {
        Self { line, said: [None; 26], codes: [None; MOST_CODES] }
    }

    pub(super) fn set(&mut self, letter: u8, said: Said) {
        if let Some(slot) = self.said.get_mut(usize::from(letter.wrapping_sub(b'A'))) {
            *slot = Some(said);
        }
    }

    pub(super) fn get(&self, letter: u8) -> Option<Said> {
        let place = usize::from(letter.wrapping_sub(b'A'));
        self.said.get(place).copied().flatten()
    }

    pub(super) fn of(&self, letter: Option<LetterText>) -> Option<Said> {
        let letter = letter?;
        self.get(*letter.as_str().as_bytes().first()?)
    }

    pub(super) fn has_axis(&self) -> bool {
        b"XYZ".iter().any(|axis| self.get(*axis).is_some())
    }

    /// The axes of the block, a bit each.
    pub(super) fn axes(&self) -> u32 {
        b"XYZ".iter().filter(|axis| self.get(**axis).is_some()).fold(0, |axes, axis| axes | letter_bit(*axis))
    }

    pub(super) fn place(&self, axis: u8) -> Option<Option<Length>> {
        self.get(axis).map(|said| said.value)
    }

    /// What its codes mean, in the order in which they act, each with its turn.
    pub(super) fn codes(&self) -> impl Iterator<Item = (u8, Meaning)> {
        self.codes.iter().map_while(|code| *code)
    }

    /// Adds a code behind those that act before it or stand before it and act at once; without room it is left out.
    pub(super) fn push_code(&mut self, meaning: Meaning, units_first: bool) {
        if self.codes.last().is_none_or(Option::is_some) {
            return;
        }
        let turn = turn(meaning, units_first);
        let behind = |other: &Option<(u8, Meaning)>| other.is_none_or(|(other, _)| other > turn);
        let Some(place) = self.codes.iter().position(behind) else { return };
        let mut moved = Some((turn, meaning));
        for slot in self.codes.iter_mut().skip(place) {
            moved = core::mem::replace(slot, moved);
            if moved.is_none() {
                break;
            }
        }
    }
}

/// The turn at which F is taken, and S and T behind it.
pub(super) const TAKES_F: u8 = 2;

/// When the codes of a block act (NISTIR 6556 table 8).
const fn turn(meaning: Meaning, units_first: bool) -> u8 {
    match meaning {
        Meaning::Units(_) if units_first => 0,
        Meaning::FeedMode(_) | Meaning::InverseTime | Meaning::SurfaceSpeed(_) => 1,
        Meaning::ToolChange => 3,
        Meaning::Spindle(_) | Meaning::RigidTap => 4,
        Meaning::Override(_) => 5,
        Meaning::Plane { .. } => 6,
        Meaning::Units(_) => 7,
        Meaning::CutterCompensation(_) | Meaning::LengthOffset(_) | Meaning::WorkOffset(_) => 8,
        Meaning::Incremental(_) | Meaning::Return => 9,
        Meaning::Mirror(_)
        | Meaning::Scale(_)
        | Meaning::Rotate(_)
        | Meaning::OwnAxisWords
        | Meaning::Origin
        | Meaning::Data => 10,
        // G80 before the move that stands beside it.
        Meaning::CancelCycle => 10,
        Meaning::Call | Meaning::CallReturn | Meaning::Stop | Meaning::ProgramEnd => 12,
        _ => 11,
    }
}
