//! Words, lines, and what has to be restored: the shape of a cycle.

use crate::dialect::CodeText;
use crate::error::{Code, Error, Field};
use crate::length::Length;
use crate::text::Text;

/// A word of a program.
pub(super) type Word = Text<24>;

/// A line of a program: at most eight words, of which only the feed fills its 24 bytes.
type Line = Text<152>;

/// The most words and lines of one tapped hole.
const MOST_WORDS: usize = 18;
const MOST_BLOCKS: usize = 5;

/// The words of one tapped hole at the place the spindle stands, in program lines.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Cycle {
    words: [Word; MOST_WORDS],
    count: u8,
    ends: [u8; MOST_BLOCKS],
    restore: [Option<(Word, &'static str)>; 3],
}

impl Cycle {
    /// The words in order.
    pub fn words(&self) -> impl Iterator<Item = &str> {
        self.words.iter().filter(|word| !word.is_empty()).map(Text::as_str)
    }

    /// The program lines in order, words separated by blanks.
    pub fn blocks(&self) -> impl Iterator<Item = Text<152>> + '_ {
        let starts = core::iter::once(0).chain(self.ends.iter().copied());
        starts.zip(self.ends.iter().copied()).filter(|(start, end)| start < end).map(|(start, end)| {
            let mut line = Line::new();
            for word in self.words.get(usize::from(start)..usize::from(end)).unwrap_or(&[]) {
                let joint = if line.is_empty() { "" } else { " " };
                // Two codes of 8 bytes, the feed of 24, three lengths of 17, dwell and factor of 16, blanks.
                let _fits = line.push(joint) && line.push(word.as_str());
            }
            line
        })
    }

    /// What the next operation must set again: feed mode, F, spindle direction.
    pub fn restore(&self) -> impl Iterator<Item = &str> {
        self.restore.iter().flatten().map(|(word, _)| word.as_str())
    }

    /// The same with the reason of each.
    pub(crate) fn restore_reasons(&self) -> impl Iterator<Item = (&str, &'static str)> {
        self.restore.iter().flatten().map(|(word, reason)| (word.as_str(), *reason))
    }

    /// Writes one more word of the line where it will stand; one without text is none.
    fn put<T>(&mut self, write: impl FnOnce(&mut Word) -> T) -> Option<T> {
        let place = self.words.get_mut(usize::from(self.count))?;
        let written = write(place);
        self.count = self.count.saturating_add(u8::from(!place.is_empty()));
        Some(written)
    }

    /// One more word of the line, shorter than any word may be.
    pub(super) fn word(&mut self, text: &str) {
        let _fits = self.put(|place| place.push(text));
    }

    /// One more word of the line, made of a code of the dialect.
    pub(super) fn code(&mut self, code: CodeText) {
        self.text(code.widened());
    }

    /// One more word of the line as it is.
    pub(super) fn text(&mut self, word: Word) {
        self.put(|place| *place = word);
    }

    /// One more word: a letter with a number that a control reads, without trailing zeros, a point behind a
    /// whole number if asked.
    #[inline(never)]
    pub(super) fn number(&mut self, letter: u8, value: Length, point: bool, field: Field) -> Result<(), Error> {
        let not_exact =
            || Error::new(Code::NotExact, field).got(value.to_f64()).hint_text("a number of at most 9 decimals");
        let decimal = value.as_decimal().ok_or_else(not_exact)?;
        self.text(Text::with_letter(letter, decimal, point));
        Ok(())
    }

    /// Ends the line.
    pub(super) fn end_line(&mut self) {
        if let Some(end) = self.ends.iter_mut().find(|end| **end == 0) {
            *end = self.count;
        }
    }

    pub(super) fn restore_later(&mut self, word: &str, reason: &'static str) {
        if let Some(place) = self.restore.iter_mut().find(|place| place.is_none()) {
            *place = Some((Text::holding(word).unwrap_or_default(), reason));
        }
    }
}
