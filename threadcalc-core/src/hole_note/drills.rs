//! Drills: by diameter, number, letter or fraction.

use super::read::{Feature, Reader};
use super::values::Measured;
use super::words::Word;
use crate::callout::{self, Callout};
use crate::drill::{Drill, DrillSet};
use crate::error::{Error, Field};
use crate::feed::Unit;
use crate::text::Text;

impl Reader<'_> {
    pub fn set_drill(&mut self, diameter: Measured) -> Result<(), Error> {
        // A fraction names a drill: inches whatever the drawing is in.
        let unit = if diameter.fraction { diameter.unit.or(Some(Unit::Inch)) } else { diameter.unit };
        let named = diameter.named || diameter.fraction;
        self.draft.drill.set(Measured { unit, named, ..diameter }, Field::Drill)?;
        self.begin(Feature::Drill)
    }

    /// A drill by its name, in inches, exact.
    fn set_named_drill(&mut self, set: DrillSet, name: &[u8], at: usize) -> Result<bool, Error> {
        let Ok(drill) = Drill::named(set, name) else { return Ok(false) };
        let value = drill.diameter_mm();
        self.set_drill(Measured { value, unit: Some(Unit::Mm), fraction: false, whole: None, named: true, at })?;
        Ok(true)
    }

    /// `#7`, `No. 7 DRILL`; `needs_word` if only DRILL behind it says so.
    pub fn numbered_drill(&mut self, needs_word: bool) -> Result<bool, Error> {
        self.skip_blanks();
        let at = self.place;
        let Some(number) = self.measured()?.and_then(|measured| measured.whole) else { return Ok(false) };
        let mut name = Text::<24>::new();
        let written = core::fmt::Write::write_fmt(&mut name, format_args!("#{number}"));
        if !self.take_word(Word::Drill) && needs_word || written.is_err() {
            return Ok(false);
        }
        self.set_named_drill(DrillSet::Number, name.as_str().as_bytes(), at)
    }

    /// A letter drill, `F`, that stands alone; `needs_word` if only DRILL behind it says so.
    pub fn letter_drill(&mut self, needs_word: bool) -> Result<bool, Error> {
        let (at, start) = (self.place, self.place);
        let [letter, after @ ..] = self.rest() else { return Ok(false) };
        if !letter.is_ascii_alphabetic() || after.first().is_some_and(|next| next.is_ascii_alphanumeric()) {
            return Ok(false);
        }
        let name = [letter.to_ascii_uppercase()];
        self.skip(1);
        if !self.take_word(Word::Drill) && needs_word {
            self.place = start;
            return Ok(false);
        }
        self.set_named_drill(DrillSet::Letter, &name, at)
    }

    /// `5/16 (.3125) DRILL`.
    pub fn drill_said_twice(&mut self, first: Measured) -> Result<bool, Error> {
        let start = self.place;
        if self.take_sign(b'(') {
            if let Some(second) = self.measured()? {
                if self.take_sign(b')') && self.take_word(Word::Drill) {
                    self.set_drill(first)?;
                    self.set_drill(second)?;
                    return Ok(true);
                }
            }
        }
        self.place = start;
        Ok(false)
    }

    /// Behind DRILL: a size, if there is none yet.
    pub fn drill(&mut self) -> Result<bool, Error> {
        let start = self.place;
        self.skip_colon();
        if self.draft.drill.is_set() {
            self.place = start;
            self.begin(Feature::Drill)?;
            return Ok(true);
        }
        let letter = !matches!(self.rest(), [b'x' | b'X' | b'a' | b'A', b' ', b'0'..=b'9' | b'.', ..]);
        if letter && self.letter_drill(false)? {
            return Ok(true);
        }
        if self.at_number() && matches!(callout::read(self.rest()), Callout::None) {
            let size = self.measured()?;
            let plain = self.next_is_plain() || self.next_is_cut_off_by_times();
            if let Some(diameter) = size.filter(|_| plain) {
                self.take_word(Word::Hole);
                self.set_drill(diameter)?;
                return Ok(true);
            }
        }
        self.place = start;
        self.begin(Feature::Drill)?;
        Ok(true)
    }

    /// `DRILL 6.8 X 20`: a number that is followed by a times sign and another one.
    fn next_is_cut_off_by_times(&mut self) -> bool {
        let start = self.place;
        let times = self.take_times();
        self.skip_blanks();
        let number = self.at_number();
        self.place = start;
        times && number
    }
}
