//! Words, lines, and what has to be restored: the shape of a cycle.

use crate::error::{Code, Error, Field};
use crate::length::{Length, str_from};
use crate::text::{Text, digits};

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

    pub(super) fn line(&mut self, words: &[Word]) {
        // The lines that are there end one behind the other; a line that is not there ends at 0.
        let mut count = self.ends.iter().copied().fold(0, u8::max);
        for word in words.iter().filter(|word| !word.is_empty()) {
            if let Some(place) = self.words.get_mut(usize::from(count)) {
                *place = *word;
                count = count.saturating_add(1);
            }
        }
        if let Some(end) = self.ends.iter_mut().find(|end| **end == 0) {
            *end = count;
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
    let mut buffer = [0; 32];
    let start = digits(&mut buffer, decimal.units().unsigned_abs(), decimal.decimals(), decimal.decimals() > 0);
    let sign = if decimal.units() < 0 { "-" } else { "" };
    let tail = if point && decimal.decimals() == 0 { "." } else { "" };
    let mut text = Word::new();
    let fits = [letter, sign, str_from(&buffer, start), tail].into_iter().all(|part| text.push(part));
    if fits { Ok(text) } else { Err(fails(Code::Overflow)) }
}
