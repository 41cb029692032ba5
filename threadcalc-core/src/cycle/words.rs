//! Words, lines, and what has to be restored: the shape of a cycle.

use crate::error::{Code, Error, Field};
use crate::length::Length;
use crate::text::{Text, placed};

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
    ends: [u8; MOST_BLOCKS],
    restore: [Option<(Word, &'static str)>; 3],
}

impl Cycle {
    /// The words in order.
    pub fn words(&self) -> impl Iterator<Item = &str> {
        self.words.iter().map(Text::as_str).filter(|word| !word.is_empty())
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

    pub(super) fn line(&mut self, words: &[Word]) {
        let free = self.words.iter_mut().filter(|place| place.is_empty());
        for (place, word) in free.zip(words.iter().filter(|word| !word.is_empty())) {
            *place = *word;
        }
        let first_free = placed(self.words.iter()).find(|(_, word)| word.is_empty());
        let held = first_free.map_or(MOST_WORDS, |(place, _)| place);
        if let Some(end) = self.ends.iter_mut().find(|end| **end == 0) {
            *end = u8::try_from(held).unwrap_or(u8::MAX);
        }
    }

    pub(super) fn restore_later(&mut self, word: Word, reason: &'static str) {
        if let Some(place) = self.restore.iter_mut().find(|place| place.is_none()) {
            *place = Some((word, reason));
        }
    }
}

pub(super) fn word(text: &str) -> Word {
    Text::holding(text).unwrap_or_default()
}

/// A letter with a number that a control reads: no trailing zeros, a point behind a whole number if asked.
pub(super) fn number_word(letter: &str, value: Length, point: bool, field: Field) -> Result<Word, Error> {
    let fails = |code| Error::new(code, field).got(value.to_f64()).hint_text("a number of at most 9 decimals");
    let decimal = value.as_decimal().ok_or(fails(Code::NotExact))?;
    let tail = if point && value.whole().is_some() { "." } else { "" };
    let mut text = Word::new();
    core::fmt::write(&mut text, format_args!("{letter}{decimal}{tail}")).map_err(|_| fails(Code::Overflow))?;
    Ok(text)
}
