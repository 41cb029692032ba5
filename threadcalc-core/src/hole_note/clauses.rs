//! The clauses of a hole note that begin with a number or a word.

use super::read::{Feature, Reader};
use super::values::{Measured, set_once};
use super::words::Word;
use super::{Plating, Sides};
use crate::callout::{self, Callout};
use crate::error::{Code, Error, Field};
use crate::length::Length;
use crate::plain::{COUNTERSINK, DIAMETER};

impl Reader<'_> {
    /// A feature begins: what was said before any is about it.
    pub fn begin(&mut self, feature: Feature) -> Result<(), Error> {
        self.current = feature;
        if let Some(depth) = self.waiting_depth.take() {
            self.set_depth(depth)?;
        }
        if let Some(at) = self.waiting_through.take() {
            self.set_through(at);
        }
        Ok(())
    }

    /// The depth of the current feature; false if it has none.
    fn set_depth(&mut self, depth: Measured) -> Result<bool, Error> {
        match self.current {
            Feature::Thread => self.draft.thread_depth.set(depth, Field::ThreadDepth)?,
            Feature::Drill => self.draft.drill_depth.set(depth, Field::DrillDepth)?,
            Feature::Counterbore => self.draft.counterbore_depth.set(depth, Field::CounterboreDepth)?,
            Feature::None if self.waiting_depth.is_none() => {
                self.waiting_depth = Some(depth);
                self.waiting_end = self.place;
            }
            Feature::None | Feature::Countersink => return Ok(false),
        }
        Ok(true)
    }

    /// THRU of the current feature; behind a countersink or counterbore it is that of the hole.
    fn set_through(&mut self, at: usize) {
        let drill = self.draft.drill.is_set() || self.draft.thread.is_none();
        match self.current {
            Feature::Thread => self.draft.thread_through = Some(at),
            Feature::Drill => self.draft.drill_through = Some(at),
            Feature::None => {
                self.waiting_through = Some(at);
                self.waiting_end = self.place;
            }
            Feature::Countersink | Feature::Counterbore if drill => self.draft.drill_through = Some(at),
            Feature::Countersink | Feature::Counterbore => self.draft.thread_through = Some(at),
        }
    }

    pub fn set_angle(&mut self, angle: Measured) -> Result<(), Error> {
        if !angle.value.is_positive() || angle.value >= Length::integer(180) {
            return Err(Error::new(Code::OutOfRange, Field::CountersinkAngle)
                .at_byte(angle.at)
                .got(angle.value.to_f64())
                .within(0.0, 180.0)
                .hint_text("the included angle in degrees"));
        }
        set_once(&mut self.draft.countersink_angle, angle.value, Field::CountersinkAngle, angle.at)
    }

    pub fn diameter_sign(&mut self) -> Result<bool, Error> {
        self.skip(1);
        self.skip_blanks();
        match self.measured()? {
            Some(diameter) => self.diameter(diameter),
            None => Ok(false),
        }
    }

    /// What a number that is certainly a diameter is the diameter of.
    pub fn diameter(&mut self, diameter: Measured) -> Result<bool, Error> {
        self.take_word(Word::Diameter);
        if self.sized_countersink(diameter, true)? || self.named_by_word(diameter)? {
            return Ok(true);
        }
        match self.current {
            Feature::Countersink if !self.draft.countersink.is_set() => {
                self.draft.countersink.set(diameter, Field::Countersink)?;
            }
            Feature::Counterbore if !self.draft.counterbore.is_set() => {
                self.draft.counterbore.set(diameter, Field::Counterbore)?;
            }
            _ => self.set_drill(diameter)?,
        }
        Ok(true)
    }

    /// `Ø10 X 90°`, `.50 X 82 CSK`: a diameter with an angle is a countersink; a bare number with an angle
    /// is a chamfer.
    fn sized_countersink(&mut self, diameter: Measured, is_diameter: bool) -> Result<bool, Error> {
        let start = self.place;
        if self.take_times() {
            self.skip_blanks();
            if let Some(angle) = self.measured()? {
                let marked = self.take_degrees();
                if self.take_word(Word::Countersink) || self.take_sign(COUNTERSINK) || (marked && is_diameter) {
                    self.begin_countersink();
                    self.draft.countersink.set(diameter, Field::Countersink)?;
                    self.set_angle(angle)?;
                    return Ok(true);
                }
            }
        }
        self.place = start;
        Ok(false)
    }

    /// The word behind a diameter says what it is of: `10 CSK`, `6.8 DRILL`, `100 B.C.`
    fn named_by_word(&mut self, diameter: Measured) -> Result<bool, Error> {
        let Some((word, length)) = self.next_word() else { return Ok(false) };
        match word {
            Word::Drill => self.set_drill(diameter)?,
            Word::BoltCircle => self.draft.bolt_circle.set(diameter, Field::BoltCircle)?,
            Word::Countersink => {
                self.begin_countersink();
                self.draft.countersink.set(diameter, Field::Countersink)?;
            }
            Word::Counterbore | Word::Spotface => {
                self.begin_counterbore(word == Word::Spotface)?;
                self.draft.counterbore.set(diameter, Field::Counterbore)?;
            }
            _ => return Ok(false),
        }
        self.skip(length);
        Ok(true)
    }

    /// A number, by what stands behind it.
    pub fn number(&mut self) -> Result<bool, Error> {
        let before = self.text.get(..self.place).unwrap_or(&[]);
        let in_parentheses = before.iter().rev().find(|byte| **byte != b' ') == Some(&b'(');
        let Some(number) = self.measured()? else { return Ok(false) };
        if self.take_degrees() {
            return self.angle(number);
        }
        if self.sized_countersink(number, false)? || self.named_by_word(number)? || self.drill_said_twice(number)? {
            return Ok(true);
        }
        let free = self.draft.count.is_none();
        if let Some(count) = number.whole.filter(|_| self.is_counted(in_parentheses && free)) {
            self.set_count(count, number.at)?;
            return Ok(true);
        }
        if self.take_word(Word::Diameter) {
            return self.diameter(number);
        }
        let again = in_parentheses && self.current == Feature::Drill && self.take_sign(b')');
        // `.201 THRU`: before any feature, what goes through is a drilled hole.
        let through = || matches!(self.next_word(), Some((Word::Through, _))) && self.current == Feature::None;
        if again || through() {
            self.set_drill(number)?;
            return Ok(true);
        }
        self.depth_by_word(number)
    }

    /// An angle: of the countersink whose word follows, or of the one that was read.
    fn angle(&mut self, angle: Measured) -> Result<bool, Error> {
        let start = self.place;
        if self.take_word(Word::Countersink) || self.take_sign(COUNTERSINK) {
            self.begin_countersink();
            self.set_angle(angle)?;
            return self.countersink();
        }
        // `90° X Ø10 CSK`
        if self.take_times() {
            self.take_sign(DIAMETER);
            self.skip_blanks();
            if let Some(diameter) = self.measured()? {
                self.take_word(Word::Diameter);
                if self.take_word(Word::Countersink) || self.take_sign(COUNTERSINK) {
                    self.begin_countersink();
                    self.draft.countersink.set(diameter, Field::Countersink)?;
                    self.set_angle(angle)?;
                    return Ok(true);
                }
            }
        }
        self.place = start;
        if self.current != Feature::Countersink {
            return Ok(false);
        }
        self.set_angle(angle)?;
        Ok(true)
    }

    /// `16 DEEP`, `16 MIN DEEP`, `16 FULL THREAD`, `16 MIN`.
    fn depth_by_word(&mut self, number: Measured) -> Result<bool, Error> {
        let least = self.take_word(Word::Min);
        if self.take_word(Word::FullThread) {
            self.begin(Feature::Thread)?;
            self.take_word(Word::Deep);
        } else {
            let deep = self.take_word(Word::Deep);
            if !deep && (!least || self.current == Feature::None) {
                return Ok(false);
            }
        }
        self.take_word(Word::Min);
        self.set_depth(number)
    }

    /// Behind ↧, DEPTH, DEEP.
    pub fn depth_of(&mut self) -> Result<bool, Error> {
        self.skip_colon();
        self.take_word(Word::Min);
        self.skip_colon();
        let Some(depth) = self.measured()? else { return Ok(false) };
        self.take_word(Word::Min);
        self.take_word(Word::Deep);
        self.set_depth(depth)
    }

    /// A times sign that is no part of a count: a depth behind it, a letter drill X, or only a joint.
    pub fn times(&mut self) -> Result<bool, Error> {
        if self.letter_drill(true)? {
            return Ok(true);
        }
        self.skip(1);
        self.skip_blanks();
        let start = self.place;
        if !self.at_number() || !matches!(callout::read(self.rest()), Callout::None) {
            // A joint between two features says nothing by itself; behind unread text it is part of that.
            return Ok(!self.rest().is_empty() && !self.draft.unread_is_open());
        }
        let Some(number) = self.measured()? else { return Ok(false) };
        if self.next_is_plain() && self.current != Feature::None && self.current != Feature::Countersink {
            if self.current == Feature::Thread && !self.draft.thread_depth.is_set() {
                self.draft.depth_read = Some(number.at);
            }
            return self.set_depth(number);
        }
        // What follows says what the number is.
        self.place = start;
        Ok(!self.draft.unread_is_open())
    }

    /// Whether nothing behind a number says what it is.
    pub fn next_is_plain(&mut self) -> bool {
        let start = self.place;
        let said = self.take_degrees() || self.take_times();
        self.place = start;
        let word = self.next_word().map(|(word, _)| word);
        !said
            && !matches!(
                word,
                Some(
                    Word::Deep
                        | Word::Min
                        | Word::FullThread
                        | Word::Places
                        | Word::Diameter
                        | Word::Drill
                        | Word::Countersink
                        | Word::Counterbore
                        | Word::Spotface
                        | Word::BoltCircle
                )
            )
    }

    /// A clause that begins with a word.
    pub fn word(&mut self) -> Result<bool, Error> {
        if self.letter_drill(true)? {
            return Ok(true);
        }
        let at = self.place;
        let Some((word, length)) = self.next_word() else { return Ok(false) };
        self.skip(length);
        match word {
            Word::Deep => return self.depth_of(),
            Word::Through => self.set_through(at),
            Word::Tap => self.begin(Feature::Thread)?,
            Word::Thread | Word::FullThread => return self.thread_word(),
            Word::Drill => return self.drill(),
            Word::Diameter => {
                self.skip_colon();
                return self.measured()?.map_or(Ok(false), |diameter| self.diameter(diameter));
            }
            Word::Countersink => return self.countersink(),
            Word::Counterbore | Word::Spotface => return self.counterbore(word == Word::Spotface),
            Word::Places => return Ok(self.draft.count.is_some()),
            Word::Count => return self.count(),
            Word::EquallySpaced => self.draft.equally_spaced = true,
            Word::BoltCircle => return self.bolt_circle(),
            Word::BothSides => return Ok(self.side(Sides::Both)),
            Word::NearSide => return Ok(self.side(Sides::Near)),
            Word::FarSide => return Ok(self.side(Sides::Far)),
            Word::AfterPlating => set_once(&mut self.draft.plating, Plating::After, Field::Plating, at)?,
            Word::BeforePlating => set_once(&mut self.draft.plating, Plating::Before, Field::Plating, at)?,
            Word::Applies => {
                let next = self.next_word().map(|(word, _)| word);
                return Ok(matches!(next, Some(Word::AfterPlating | Word::BeforePlating)));
            }
            Word::Min => return self.least(),
            Word::Letter => {
                self.skip_colon();
                return self.letter_drill(false);
            }
            Word::Number => return self.numbered_drill(true),
            Word::On => return self.on_circle(),
            Word::Hole | Word::Filler => {}
            Word::Degrees | Word::Mm | Word::Cm | Word::Inch => return Ok(false),
        }
        Ok(true)
    }

    /// THD, FULL THREAD: the depth behind it, or only that the thread is spoken of.
    fn thread_word(&mut self) -> Result<bool, Error> {
        self.begin(Feature::Thread)?;
        let start = self.place;
        self.skip_colon();
        if self.at_number() && matches!(callout::read(self.rest()), Callout::None) {
            let number = self.measured()?.filter(|_| self.next_is_plain());
            if let Some(depth) = number {
                return self.set_depth(depth);
            }
        }
        self.place = start;
        Ok(true)
    }

    /// MIN before a depth, or before words for depth.
    fn least(&mut self) -> Result<bool, Error> {
        self.skip_colon();
        if matches!(self.next_word(), Some((Word::Deep | Word::FullThread, _))) {
            return Ok(true);
        }
        let Some(number) = self.measured()? else { return Ok(false) };
        self.depth_by_word(number)
            .and_then(|done| if done || self.current == Feature::None { Ok(done) } else { self.set_depth(number) })
    }
}
