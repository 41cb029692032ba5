//! How many holes, and where: counts, sides, circles.

use super::Sides;
use super::read::Reader;
use super::values::set_once;
use super::words::Word;
use crate::callout::{self, Callout};
use crate::cursor::Cursor;
use crate::error::{Code, Error, Field};
use crate::plain::DIAMETER;

/// The most holes one note speaks of.
const MOST_HOLES: i64 = 9_999;

impl Reader<'_> {
    pub fn set_count(&mut self, given: i64, at: usize) -> Result<(), Error> {
        let count = u32::try_from(given).ok().filter(|_| (1..=MOST_HOLES).contains(&given));
        let count = count.ok_or(
            Error::new(Code::OutOfRange, Field::HoleCount)
                .at_byte(at)
                .got(given as f64)
                .within(1.0, MOST_HOLES as f64)
                .hint_text("how many holes"),
        )?;
        set_once(&mut self.draft.count, count, Field::HoleCount, at)
    }

    /// Takes what makes a whole number a count: `4X`, `4 PLCS`, `(4)`, the dash of `4-M8`.
    pub fn is_counted(&mut self, in_parentheses: bool) -> bool {
        if self.take_word(Word::Places) {
            return true;
        }
        let start = self.place;
        if self.take_times() {
            let counted = !self.is_angle_next();
            self.place = if counted { self.place } else { start };
            return counted;
        }
        let is_thread = |text| matches!(callout::read(text), Callout::Thread(..));
        self.rest().strip_prefix(b"-").is_some_and(is_thread) || (in_parentheses && self.take_sign(b')'))
    }

    /// `1X45°`
    fn is_angle_next(&mut self) -> bool {
        let start = self.place;
        self.skip_blanks();
        let angle = matches!(self.measured(), Ok(Some(_))) && self.take_degrees();
        self.place = start;
        angle
    }

    pub fn count(&mut self) -> Result<bool, Error> {
        self.skip_colon();
        // Only digits: `QTY 1 1/4-20` is one of 1/4-20.
        let at = self.place;
        let mut cursor = Cursor::new(self.text, Field::HoleCount);
        cursor.go_back_to(at);
        let Some(count) = cursor.whole_number()?.filter(|_| !matches!(cursor.peek(), Some(b'.' | b',' | b'/'))) else {
            return Ok(false);
        };
        self.place = cursor.place();
        self.set_count(count, at)?;
        Ok(true)
    }

    pub fn side(&mut self, side: Sides) -> bool {
        // A second side is of another feature, which one value cannot say: it stays unread.
        let first = self.draft.sides.is_none_or(|known| known == side);
        if first {
            self.draft.sides = Some(side);
        }
        first
    }

    /// Behind ON: a circle, `ON Ø100`, `ON A 100 DIA B.C.`; else the word says nothing.
    pub fn on_circle(&mut self) -> Result<bool, Error> {
        let start = self.place;
        self.take_word(Word::Filler);
        let mut is_circle = self.take_sign(DIAMETER);
        self.skip_blanks();
        if let Some(diameter) = self.measured()? {
            is_circle |= self.take_word(Word::Diameter);
            is_circle |= self.take_word(Word::BoltCircle);
            if is_circle {
                self.draft.bolt_circle.set(diameter, Field::BoltCircle)?;
                return Ok(true);
            }
        }
        self.place = start;
        Ok(true)
    }

    /// Behind BOLT CIRCLE, PCD: its diameter.
    pub fn bolt_circle(&mut self) -> Result<bool, Error> {
        self.skip_colon();
        self.take_sign(DIAMETER);
        self.skip_blanks();
        let Some(diameter) = self.measured()? else { return Ok(false) };
        self.draft.bolt_circle.set(diameter, Field::BoltCircle)?;
        Ok(true)
    }
}
