//! The reader of hole notes: its place in the text, and what each word begins.

use super::draft::Draft;
use super::values::Measured;
use super::words::{Word, word_at};
use crate::callout::{self, Callout};
use crate::cursor::Cursor;
use crate::error::{Code, Error, Field};
use crate::feed::Unit;
use crate::length::Length;
use crate::plain::{COUNTERBORE, COUNTERSINK, DEGREE, DEPTH, DIAMETER, PLUS_MINUS};

/// What a depth or THRU speaks of: the feature read last.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Feature {
    None,
    Thread,
    Drill,
    Countersink,
    Counterbore,
}

pub(super) struct Reader<'a> {
    pub text: &'a [u8],
    pub place: usize,
    pub draft: Draft,
    pub current: Feature,
    /// A depth and a THRU that stand before any feature.
    pub waiting_depth: Option<Measured>,
    pub waiting_through: Option<usize>,
    /// Where the text of what waits ends.
    pub waiting_end: usize,
}

/// Reads a plain text to its end.
pub(super) fn read(text: &[u8]) -> Result<Draft, Error> {
    let mut reader = Reader {
        text,
        place: 0,
        draft: Draft::default(),
        current: Feature::None,
        waiting_depth: None,
        waiting_through: None,
        waiting_end: 0,
    };
    while reader.skip_separators() {
        let start = reader.place;
        if reader.clause()? {
            reader.draft.close_unread();
        } else {
            reader.place = start;
            reader.leave_unread();
        }
        // Every clause takes something; this keeps the loop finite even if one does not.
        reader.place = reader.place.max(start.saturating_add(1));
    }
    // Nothing came that it could be the depth of.
    for at in reader.waiting_depth.map(|depth| depth.at).into_iter().chain(reader.waiting_through) {
        reader.draft.close_unread();
        reader.draft.leave_unread(at, reader.waiting_end.max(at));
    }
    Ok(reader.draft)
}

impl<'a> Reader<'a> {
    pub fn rest(&self) -> &'a [u8] {
        self.text.get(self.place..).unwrap_or(&[])
    }

    pub fn skip(&mut self, count: usize) {
        self.place = self.place.saturating_add(count).min(self.text.len());
    }

    pub fn skip_blanks(&mut self) {
        while matches!(self.rest(), [b' ' | b'\n', ..]) {
            self.skip(1);
        }
    }

    /// Blanks and the signs that only part words; false at the end of the text.
    fn skip_separators(&mut self) -> bool {
        loop {
            match self.rest() {
                [] => return false,
                [b'-', b'0'..=b'9' | b'.', ..] if self.is_sign() => return true,
                [b'.', b'0'..=b'9', ..] => return true,
                [b' ' | b'\n' | b',' | b';' | b':' | b'/' | b'|' | b'(' | b')' | b'&' | b'=' | b'.' | b'-', ..] => {
                    self.skip(1)
                }
                _ => return true,
            }
        }
    }

    /// Whether the dash here stands apart from what is before it: a sign, and no joint.
    fn is_sign(&self) -> bool {
        match self.place.checked_sub(1).and_then(|before| self.text.get(before)) {
            None => true,
            Some(before) => matches!(before, b' ' | b'\n' | b'(' | b':' | b'=' | DIAMETER..=COUNTERBORE),
        }
    }

    /// The word here and its length, behind blanks and a closing parenthesis.
    pub fn next_word(&self) -> Option<(Word, usize)> {
        let gap = self.rest().iter().take_while(|byte| matches!(byte, b' ' | b'\n' | b')')).count();
        let (word, length) = word_at(self.rest().get(gap..)?)?;
        Some((word, gap.saturating_add(length)))
    }

    /// Takes the word here if it is this one.
    pub fn take_word(&mut self, word: Word) -> bool {
        match self.next_word() {
            Some((found, length)) if found == word => {
                self.skip(length);
                true
            }
            _ => false,
        }
    }

    /// Takes a sign behind blanks.
    pub fn take_sign(&mut self, sign: u8) -> bool {
        let start = self.place;
        self.skip_blanks();
        let found = self.rest().first() == Some(&sign);
        self.place = if found { self.place.saturating_add(1) } else { start };
        found
    }

    /// Takes a times sign behind blanks: an x that begins no word.
    pub fn take_times(&mut self) -> bool {
        let start = self.place;
        self.skip_blanks();
        let found = matches!(self.rest(), [b'x' | b'X' | b'*', ..]);
        self.place = if found { self.place.saturating_add(1) } else { start };
        found
    }

    /// Takes a degree sign or word behind a number.
    pub fn take_degrees(&mut self) -> bool {
        self.take_sign(DEGREE) || self.take_word(Word::Degrees)
    }

    /// Takes colons and blanks between a word and its number.
    pub fn skip_colon(&mut self) {
        while matches!(self.rest(), [b' ' | b'\n' | b':' | b'=', ..]) {
            self.skip(1);
        }
    }

    /// Whether a number begins here.
    pub fn at_number(&self) -> bool {
        matches!(self.rest(), [b'0'..=b'9', ..] | [b'.' | b'-', b'0'..=b'9', ..] | [b'-', b'.', b'0'..=b'9', ..])
    }

    /// The number here with its unit mark, if there is one.
    pub fn measured(&mut self) -> Result<Option<Measured>, Error> {
        if !self.at_number() {
            return Ok(None);
        }
        let at = self.place;
        let negative = self.rest().first() == Some(&b'-');
        let mut cursor = Cursor::new(self.text, Field::Note);
        cursor.go_back_to(at.saturating_add(usize::from(negative)));
        let start = cursor.place();
        let value = match cursor.mixed_number() {
            Ok(value) => value,
            // Figures that are no number, `1/`: text that was not understood.
            Err(error) if error.code() == Code::Unreadable => return Ok(None),
            Err(error) => return Err(error.at_byte(at)),
        };
        let written = cursor.since(start);
        let fraction = written.contains(&b'/');
        let digits_only = written.iter().all(u8::is_ascii_digit);
        self.place = cursor.place();
        let mut value = if negative { value.negative() } else { value };
        let unit = self.unit_mark();
        if unit == Some((Unit::Mm, true)) {
            value = value.times(Length::integer(10)).map_err(|error| error.about(Field::Note).at_byte(at))?;
        }
        let whole = value.whole().filter(|_| digits_only && unit.is_none());
        self.leave_tolerance();
        Ok(Some(Measured { value, unit: unit.map(|(unit, _)| unit), fraction, whole, named: false, at }))
    }

    /// `mm`, `in`, `"`, or `cm`, which is said by the flag.
    fn unit_mark(&mut self) -> Option<(Unit, bool)> {
        if let [b'"', ..] = self.rest() {
            self.skip(1);
            return Some((Unit::Inch, false));
        }
        if let [b'\'', b'\'', ..] = self.rest() {
            self.skip(2);
            return Some((Unit::Inch, false));
        }
        let (word, length) = self.next_word()?;
        let unit = match word {
            Word::Mm => (Unit::Mm, false),
            Word::Cm => (Unit::Mm, true),
            Word::Inch => (Unit::Inch, false),
            _ => return None,
        };
        self.skip(length);
        Some(unit)
    }

    /// A tolerance behind a number stays unread; the word behind it is about the number all the same.
    fn leave_tolerance(&mut self) {
        let rest = self.rest();
        let blanks = rest.iter().take_while(|byte| **byte == b' ').count();
        if !matches!(rest.get(blanks..), Some([b'+' | PLUS_MINUS, b'0'..=b'9' | b'.' | b' ', ..])) {
            return;
        }
        let in_tolerance = |byte: &&u8| matches!(**byte, b'0'..=b'9' | b'.' | b'+' | b'-' | b'/' | PLUS_MINUS);
        let tolerance = rest.get(blanks..).unwrap_or(&[]).iter().take_while(in_tolerance).count();
        let start = self.place.saturating_add(blanks);
        self.place = start.saturating_add(tolerance);
        self.draft.leave_unread(start, self.place);
        self.draft.close_unread();
    }

    /// One clause of the note; false if this is none.
    fn clause(&mut self) -> Result<bool, Error> {
        if self.thread()? {
            return Ok(true);
        }
        match self.rest() {
            [DIAMETER, ..] => self.diameter_sign(),
            [DEPTH, ..] => {
                self.skip(1);
                self.depth_of()
            }
            [COUNTERSINK, ..] => {
                self.skip(1);
                self.countersink()
            }
            [COUNTERBORE, ..] => {
                self.skip(1);
                self.counterbore(false)
            }
            [b'#', ..] => {
                self.skip(1);
                self.numbered_drill(false)
            }
            [b'x' | b'X' | b'*', ..] => self.times(),
            [b'0'..=b'9' | b'.' | b'-', ..] => self.number(),
            [first, ..] if first.is_ascii_alphabetic() => {
                self.refuse_other_forms()?;
                self.word()
            }
            _ => Ok(false),
        }
    }

    /// A word that makes another thread of the one it stands apart from is no word to leave unread.
    fn refuse_other_forms(&self) -> Result<(), Error> {
        const OTHER_FORMS: [&[u8]; 6] = [b"ACME", b"STUB", b"BSW", b"BSF", b"STI", b"WHITWORTH"];
        if !callout::is_one_of(callout::leading_word(self.rest()).0, &OTHER_FORMS) {
            return Ok(());
        }
        Err(Error::new(Code::Unreadable, Field::Note)
            .at_byte(self.place)
            .hint_text("the word says another thread: write it with size and pitch, as in M8x1.25 STI or 1 1/2-4 ACME"))
    }

    /// The thread's designation, where one begins.
    fn thread(&mut self) -> Result<bool, Error> {
        self.leave_count_without_sign();
        let start = self.place;
        let (thread, length) = match callout::read(self.rest()) {
            Callout::None => return Ok(false),
            Callout::Thread(thread, length) => (thread, length),
            Callout::Wrong(error) => {
                return Err(error.at_byte(start.saturating_add(error.at().map_or(0, |at| at as usize))));
            }
        };
        if self.draft.thread.is_some_and(|(known, ..)| known != thread) {
            return Err(Error::new(Code::Contradiction, Field::Thread)
                .at_byte(start)
                .hint_text("one thread; a second one needs a note of its own"));
        }
        let end = start.saturating_add(length);
        if self.draft.thread.is_none() {
            self.draft.thread = Some((thread, start, end));
        }
        self.place = end;
        self.begin(Feature::Thread)?;
        Ok(true)
    }

    /// `4 1/4-20` is no thread of 4 1/4 in: the 4 stays unread.
    fn leave_count_without_sign(&mut self) {
        let start = self.place;
        let figures = self.rest().iter().take_while(|byte| byte.is_ascii_digit()).count();
        let Some([b' ', behind @ ..]) = self.rest().get(figures..).filter(|_| figures > 0) else { return };
        let is_standard = |text| matches!(callout::read(text), Callout::Thread(thread, _) if thread.is_standard());
        if is_standard(callout::after_blanks(behind)) && !is_standard(self.rest()) {
            self.draft.leave_unread(start, start.saturating_add(figures));
            self.draft.close_unread();
            self.skip(figures);
            self.skip_blanks();
        }
    }

    /// Marks a token as not understood and goes behind it.
    fn leave_unread(&mut self) {
        let start = self.place;
        let token = |kind: fn(&u8) -> bool| self.rest().iter().take_while(|byte| kind(byte)).count();
        let length = match self.rest() {
            [b'[', ..] => token(|byte| *byte != b']').saturating_add(1),
            [b'-', ..] => 1,
            [first, ..] if first.is_ascii_alphabetic() => token(u8::is_ascii_alphanumeric),
            [b'0'..=b'9' | b'.', ..] => token(|byte| matches!(byte, b'0'..=b'9' | b'.' | b'/')),
            _ => 1,
        };
        self.skip(length.max(1));
        self.draft.leave_unread(start, self.place);
    }
}
