//! A place in a text, and the small things that are read there.

use crate::error::{Code, Error, Field};
use crate::length::{Length, MOST_DECIMALS, power_of_ten};
use crate::text::placed;

/// Blanks besides space and tab: no-break (also as the lone Latin-1 byte), en to hair, narrow no-break.
const BLANKS: [&[u8]; 12] = [
    b"\xC2\xA0",
    b"\xA0",
    b"\xE2\x80\xAF",
    b"\xE2\x80\x82",
    b"\xE2\x80\x83",
    b"\xE2\x80\x84",
    b"\xE2\x80\x85",
    b"\xE2\x80\x86",
    b"\xE2\x80\x87",
    b"\xE2\x80\x88",
    b"\xE2\x80\x89",
    b"\xE2\x80\x8A",
];
/// Hyphens, en and em dash (also as the lone bytes of Windows-1252), minus.
const DASHES: [&[u8]; 8] = [
    b"\xE2\x80\x90",
    b"\xE2\x80\x91",
    b"\xE2\x80\x92",
    b"\xE2\x80\x93",
    b"\xE2\x80\x94",
    b"\xE2\x88\x92",
    b"\x96",
    b"\x97",
];
/// Inch marks besides `"`: double prime, typographic quotes (also Windows-1252), two single quotes.
const INCH_MARKS: [&[u8]; 8] = [
    b"\xE2\x80\xB3",
    b"\xE2\x80\x9C",
    b"\xE2\x80\x9D",
    b"\x93",
    b"\x94",
    b"''",
    b"\xE2\x80\x99\xE2\x80\x99",
    b"\xE2\x80\xB2\xE2\x80\xB2",
];
/// Times signs besides `x` and `*`: the sign, also as the lone byte, the cross mark, the cross product.
const TIMES: [&[u8]; 4] = [b"\xC3\x97", b"\xD7", b"\xE2\x9C\x95", b"\xE2\xA8\xAF"];
/// Fraction slash and division slash.
const SLASHES: [&[u8]; 2] = [b"\xE2\x81\x84", b"\xE2\x88\x95"];
/// One-character fractions.
const VULGAR_FRACTIONS: [(&[u8], u32, u32); 10] = [
    (b"\xC2\xBC", 1, 4),
    (b"\xC2\xBD", 1, 2),
    (b"\xC2\xBE", 3, 4),
    (b"\xBC", 1, 4),
    (b"\xBD", 1, 2),
    (b"\xBE", 3, 4),
    (b"\xE2\x85\x9B", 1, 8),
    (b"\xE2\x85\x9C", 3, 8),
    (b"\xE2\x85\x9D", 5, 8),
    (b"\xE2\x85\x9E", 7, 8),
];

/// A place in a text that is read as bytes.
pub(crate) struct Cursor<'a> {
    text: &'a [u8],
    place: usize,
    field: Field,
    improper: bool,
}

impl<'a> Cursor<'a> {
    pub(crate) const fn new(text: &'a [u8], field: Field) -> Self {
        Self { text, place: 0, field, improper: false }
    }

    pub(crate) const fn error(&self, code: Code) -> Error {
        Error::new(code, self.field).at_byte(self.place)
    }

    pub(crate) const fn place(&self) -> usize {
        self.place
    }

    pub(crate) fn go_back_to(&mut self, place: usize) {
        self.place = place;
    }

    pub(crate) fn rest(&self) -> &'a [u8] {
        self.text.get(self.place..).unwrap_or(&[])
    }

    pub(crate) fn since(&self, start: usize) -> &'a [u8] {
        self.text.get(start..self.place).unwrap_or(&[])
    }

    pub(crate) fn text_from(&self, start: usize) -> &'a [u8] {
        self.text.get(start..).unwrap_or(&[])
    }

    #[inline]
    pub(crate) fn peek(&self) -> Option<u8> {
        self.text.get(self.place).copied()
    }

    pub(crate) fn is_at_end(&self) -> bool {
        self.place >= self.text.len()
    }

    #[inline]
    pub(crate) fn skip(&mut self, count: usize) {
        self.place = self.place.saturating_add(count).min(self.text.len());
    }

    /// Skips blanks, the no-break, thin and narrow ones of a word processor too.
    #[inline]
    pub(crate) fn skip_blanks(&mut self) {
        // Nearly always there is none: a letter, a digit or a sign.
        if !matches!(self.peek(), None | Some(b'!'..=b'~')) {
            self.skip_some_blanks();
        }
    }

    #[cold]
    fn skip_some_blanks(&mut self) {
        loop {
            match self.peek() {
                Some(b' ' | b'\t') => self.skip(1),
                Some(0x80..) if self.take_any(&BLANKS) => {}
                _ => return,
            }
        }
    }

    /// Takes whichever of these byte sequences stands here.
    #[cold]
    pub(crate) fn take_any(&mut self, sequences: &[&[u8]]) -> bool {
        let rest = self.rest();
        let found = sequences.iter().find(|sequence| rest.starts_with(sequence));
        self.skip(found.map_or(0, |sequence| sequence.len()));
        found.is_some()
    }

    /// Takes a dash: the hyphen, a typographic dash or the minus sign.
    #[inline]
    pub(crate) fn take_dash(&mut self) -> bool {
        self.take(b'-') || (matches!(self.peek(), Some(0x80..)) && self.take_any(&DASHES))
    }

    /// Takes a times sign: `x`, `X`, `*`, `×` in UTF-8 or as the lone byte 0xD7.
    pub(crate) fn take_times(&mut self) -> bool {
        match self.peek() {
            Some(b'x' | b'X' | b'*') => self.skip(1),
            Some(byte) if byte >= 0x80 => return self.take_any(&TIMES),
            _ => return false,
        }
        true
    }

    /// Takes an inch mark: the straight or typographic double quote, or two single ones.
    pub(crate) fn take_inch_mark(&mut self) -> bool {
        match self.peek() {
            Some(b'"') => self.skip(1),
            Some(b'\'' | 0x80..) => return self.take_any(&INCH_MARKS),
            _ => return false,
        }
        true
    }

    /// Takes an inch mark, or `IN`, `IN.`, `INCH` behind blanks.
    pub(crate) fn take_inch_word(&mut self) -> bool {
        if matches!(self.peek(), None | Some(b'-' | b'0'..=b'9' | b'(')) {
            return false;
        }
        let start = self.place;
        if self.take_inch_mark() {
            return true;
        }
        self.skip_blanks();
        let found = self.take_word(b"INCH") || self.take_word(b"IN");
        if found {
            self.take(b'.');
        } else {
            self.place = start;
        }
        found
    }

    fn take_slash(&mut self) -> bool {
        self.take(b'/') || (matches!(self.peek(), Some(0x80..)) && self.take_any(&SLASHES))
    }

    /// A fraction that is one character, `½`, in UTF-8 or as the lone Latin-1 byte.
    fn vulgar_fraction(&mut self) -> Option<Length> {
        if matches!(self.peek(), Some(0x80..)) { self.take_vulgar_fraction() } else { None }
    }

    #[cold]
    fn take_vulgar_fraction(&mut self) -> Option<Length> {
        let rest = self.rest();
        let (sequence, top, bottom) = VULGAR_FRACTIONS.iter().find(|(bytes, _, _)| rest.starts_with(bytes))?;
        self.skip(sequence.len());
        Some(Length::parts(*top, *bottom))
    }

    pub(crate) fn take(&mut self, byte: u8) -> bool {
        let found = self.peek() == Some(byte);
        if found {
            self.skip(1);
        }
        found
    }

    /// Whether an ASCII word stands here, whatever its case, not followed by a further letter.
    #[inline(never)]
    pub(crate) fn is_at_word(&self, word: &[u8]) -> bool {
        let rest = self.rest();
        rest.len() >= word.len()
            && rest.iter().zip(word).all(|(a, b)| a.eq_ignore_ascii_case(b))
            && !rest.get(word.len()).is_some_and(u8::is_ascii_alphabetic)
    }

    /// Takes the word if it stands here.
    pub(crate) fn take_word(&mut self, word: &[u8]) -> bool {
        let found = self.is_at_word(word);
        if found {
            self.skip(word.len());
        }
        found
    }

    /// Takes an abbreviation, plain or dotted: `BSPT`, `B.S.P.T.`
    pub(crate) fn take_name(&mut self, name: &[u8]) -> bool {
        self.take_word(name) || self.take_dotted(name)
    }

    fn take_dotted(&mut self, name: &[u8]) -> bool {
        if self.rest().get(1) != Some(&b'.') {
            return false;
        }
        let start = self.place;
        let same = |own: Option<u8>, letter: u8| own.is_some_and(|own| own.eq_ignore_ascii_case(&letter));
        for (place, letter) in placed(name.iter()) {
            let dotted = place == 0 || self.take(b'.');
            if !dotted || !same(self.peek(), *letter) {
                self.place = start;
                return false;
            }
            self.skip(1);
        }
        self.take(b'.');
        let whole = name.len() > 1 && !self.peek().is_some_and(|byte| byte.is_ascii_alphabetic());
        if !whole {
            self.place = start;
        }
        whole
    }

    fn digit(&self) -> Option<i64> {
        self.peek().filter(u8::is_ascii_digit).map(|byte| i64::from(byte & 15))
    }

    /// An error about a number's value speaks of the whole number: it points at its first byte.
    fn about_number_at(&self, start: usize, error: Error) -> Error {
        if error.code() == Code::Unreadable { error } else { error.about(self.field).at_byte(start) }
    }

    /// Digits only; `None` if there is none here.
    pub(crate) fn whole_number(&mut self) -> Result<Option<i64>, Error> {
        let start = self.place;
        let mut value = None;
        while let Some(digit) = self.digit() {
            let sum = value.unwrap_or(0_i64).checked_mul(10).and_then(|tens| tens.checked_add(digit));
            value = Some(sum.ok_or(Error::new(Code::Overflow, self.field).at_byte(start))?);
            self.skip(1);
        }
        Ok(value)
    }

    /// `12`, `1.25`, `1,25`, `.5`, `5.`
    pub(crate) fn decimal(&mut self) -> Result<Length, Error> {
        let start = self.place;
        self.decimal_parts().map_err(|error| self.about_number_at(start, error))
    }

    fn decimal_parts(&mut self) -> Result<Length, Error> {
        let whole = self.whole_number()?;
        // `5.` is a number, but a comma that no digit follows is none of its.
        let is_decimal = match (self.peek(), self.rest().get(1)) {
            (Some(b'.'), _) => true,
            (Some(b','), Some(next)) => next.is_ascii_digit(),
            _ => false,
        };
        if !is_decimal {
            return whole.map(Length::integer).ok_or(self.error(Code::Unreadable));
        }
        self.skip(1);
        let (mut part, mut decimals, mut zeros) = (0_i64, 0_u8, 0_u8);
        let behind = self.place;
        while let Some(digit) = self.digit() {
            if digit == 0 {
                zeros = zeros.saturating_add(1);
            } else {
                let more = zeros.saturating_add(1);
                decimals = decimals.saturating_add(more);
                if decimals > MOST_DECIMALS {
                    return Err(self
                        .error(Code::NotExact)
                        .hint_text("at most 9 decimals; give a ratio or threads per inch instead"));
                }
                part = part
                    .checked_mul(power_of_ten(more)?)
                    .and_then(|part| part.checked_add(digit))
                    .ok_or(self.error(Code::Overflow))?;
                zeros = 0;
            }
            self.skip(1);
        }
        if whole.is_none() && self.place == behind {
            return Err(self.error(Code::Unreadable));
        }
        Length::with_decimals(whole.unwrap_or(0), part, power_of_ten(decimals)?)
    }

    /// A number of inches as a drawing has it: `11/2` is a slip for `1 1/2`, and nothing is 5 1/2 by it.
    pub(crate) fn size_number(&mut self) -> Result<Length, Error> {
        let start = self.place;
        self.improper = false;
        let value = self.mixed_number()?;
        if self.improper {
            let error = Error::new(Code::Unreadable, self.field).at_byte(start);
            return Err(error.hint_text("whole inches and their fraction apart: 1 1/2, not 11/2"));
        }
        Ok(value)
    }

    /// A decimal, `3/4`, `1 1/4`, `1-1/4`, `½` or `1½`.
    pub(crate) fn mixed_number(&mut self) -> Result<Length, Error> {
        let start = self.place;
        self.mixed_parts().map_err(|error| self.about_number_at(start, error))
    }

    fn mixed_parts(&mut self) -> Result<Length, Error> {
        if let Some(fraction) = self.vulgar_fraction() {
            return Ok(fraction);
        }
        let start = self.place;
        let first = self.decimal()?;
        if first.whole().is_none() || self.since(start).iter().any(|byte| matches!(byte, b'.' | b',')) {
            return Ok(first);
        }
        if self.take_slash() {
            return self.over_denominator(first);
        }
        let after_first = self.place;
        if self.take_joint() || matches!(self.peek(), Some(0x80..)) {
            if let Some(fraction) = self.vulgar_fraction() {
                return first.plus(fraction);
            }
            if self.place > after_first {
                if let Some(top) = self.whole_number()? {
                    if self.take_slash() {
                        return first.plus(self.over_denominator(Length::integer(top))?);
                    }
                }
            }
            self.place = after_first;
        }
        Ok(first)
    }

    /// What may join whole inches and their fraction: blanks or a dash.
    fn take_joint(&mut self) -> bool {
        let start = self.place;
        self.skip_blanks();
        self.place > start || self.take_dash()
    }

    fn over_denominator(&mut self, top: Length) -> Result<Length, Error> {
        let bottom = self.whole_number()?.ok_or(self.error(Code::Unreadable))?;
        // Of the inch's own fractions; others are exact ratios.
        self.improper = matches!(bottom, 1 | 2 | 4 | 8 | 16 | 32 | 64) && top >= Length::integer(bottom);
        top.over(Length::integer(bottom))
    }
}
