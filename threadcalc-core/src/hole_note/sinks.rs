//! Countersinks, counterbores and spotfaces: sizes behind their sign or word.

use super::read::{Feature, Reader};
use super::values::Measured;
use super::words::Word;
use crate::callout::{self, Callout};
use crate::error::{Error, Field};
use crate::plain::DIAMETER;

/// Included angles that tools are made with; a bare number among them is an angle.
const ANGLES: [i64; 7] = [60, 82, 90, 100, 110, 118, 120];

/// What the marks at a number say of it.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Mark {
    Diameter,
    Angle,
    None,
}

/// A number of a countersink or counterbore.
#[derive(Clone, Copy)]
struct Size {
    value: Measured,
    mark: Mark,
}

impl Size {
    fn is_bare_angle(self) -> bool {
        self.mark == Mark::None && self.value.whole.is_some_and(|whole| ANGLES.contains(&whole))
    }
}

impl Reader<'_> {
    pub fn begin_countersink(&mut self) {
        self.draft.countersunk = true;
        self.current = Feature::Countersink;
    }

    pub fn begin_counterbore(&mut self, spotface: bool) -> Result<(), Error> {
        self.draft.counterbored = true;
        self.draft.spotface |= spotface;
        self.begin(Feature::Counterbore)
    }

    /// Behind ⌵ or CSK: a diameter and an angle, in either order, marked or not.
    pub fn countersink(&mut self) -> Result<bool, Error> {
        self.begin_countersink();
        let Some(first) = self.size()? else { return Ok(true) };
        let start = self.place;
        let second = if self.take_times() || first.mark == Mark::Angle { self.size()? } else { None };
        if second.is_none() {
            self.place = start;
        }
        // Unmarked, the angle is the number that tools are made with: `10 x 90`, `90 x 10`, `90`.
        let first_is_angle = first.mark == Mark::Angle
            || (first.is_bare_angle()
                && self.draft.countersink_angle.is_none()
                && second.is_none_or(|second| second.mark != Mark::Angle && !second.is_bare_angle()));
        self.set_size(first, first_is_angle)?;
        if let Some(second) = second {
            self.set_size(second, second.mark == Mark::Angle || (second.mark == Mark::None && !first_is_angle))?;
        }
        Ok(true)
    }

    fn set_size(&mut self, size: Size, is_angle: bool) -> Result<(), Error> {
        if is_angle { self.set_angle(size.value) } else { self.draft.countersink.set(size.value, Field::Countersink) }
    }

    /// Behind ⌴, C'BORE or SPOTFACE: the diameter; a depth comes by its own words.
    pub fn counterbore(&mut self, spotface: bool) -> Result<bool, Error> {
        self.begin_counterbore(spotface)?;
        if self.take_word(Word::Spotface) {
            self.begin_counterbore(true)?;
        }
        let start = self.place;
        match self.size()? {
            Some(size) if size.mark != Mark::Angle => {
                self.draft.counterbore.set(size.value, Field::Counterbore)?;
            }
            _ => self.place = start,
        }
        Ok(true)
    }

    /// A number that belongs to the word before it, and what its marks say.
    fn size(&mut self) -> Result<Option<Size>, Error> {
        let start = self.place;
        self.skip_colon();
        self.take_word(Word::Filler);
        let diameter = self.take_sign(DIAMETER);
        self.skip_blanks();
        let size =
            if diameter || matches!(callout::read(self.rest()), Callout::None) { self.measured()? } else { None };
        let Some(value) = size else {
            self.place = start;
            return Ok(None);
        };
        let mark = if diameter || value.unit.is_some() {
            self.take_word(Word::Diameter);
            Mark::Diameter
        } else if self.take_word(Word::Diameter) {
            Mark::Diameter
        } else if self.take_degrees() {
            Mark::Angle
        } else {
            Mark::None
        };
        // `CSK 4 PLCS`, `C'BORE 8 DEEP`: the number is of what follows.
        if matches!(self.next_word(), Some((Word::Deep | Word::Min | Word::Places, _)))
            && mark != Mark::Angle
            && !diameter
        {
            self.place = start;
            return Ok(None);
        }
        Ok(Some(Size { value, mark }))
    }
}
