//! Text of drawings and programs in plain ASCII, every byte with the place it came from.
//!
//! Drawings write × and Ø, typographic quotes and dashes, hard blanks and vulgar fractions, in UTF-8 or
//! as lone Latin-1 bytes. One step makes plain ASCII of them, so that no reader needs a second grammar.

use core::ops::Range;

/// Ø, ⌀ and the Φ that stands for them.
pub(crate) const DIAMETER: u8 = 1;
/// ↧.
pub(crate) const DEPTH: u8 = 2;
/// ⌵.
pub(crate) const COUNTERSINK: u8 = 3;
/// ⌴.
pub(crate) const COUNTERBORE: u8 = 4;
/// °.
pub(crate) const DEGREE: u8 = 5;
/// ±.
pub(crate) const PLUS_MINUS: u8 = 6;
/// A character that no reader knows.
pub(crate) const OTHER: u8 = 0x1A;

/// Plain text of at most `N` bytes.
pub(crate) struct Plain<const N: usize> {
    bytes: [u8; N],
    from: [u16; N],
    length: usize,
    end: u16,
}

/// What a character is in plain text.
enum Sign {
    Byte(u8),
    Fraction(&'static [u8]),
    Nothing,
}

impl<const N: usize> Plain<N> {
    /// As much of the text as there is room for, and whether that is all of it.
    pub(crate) fn of(text: &[u8]) -> (Self, bool) {
        let mut plain = Self { bytes: [0; N], from: [0; N], length: 0, end: 0 };
        let mut place = 0_usize;
        while let Some(rest) = text.get(place..).filter(|rest| !rest.is_empty()) {
            let (sign, width) = sign(rest);
            let (before, next) = (plain.text().last().copied(), rest.get(width).copied());
            let behind = place.saturating_add(width);
            if !plain.push_sign(sign, place..behind, before, next) {
                break;
            }
            place = behind;
        }
        plain.end = u16::try_from(place).unwrap_or(u16::MAX);
        (plain, place >= text.len())
    }

    /// The plain text.
    pub(crate) fn text(&self) -> &[u8] {
        self.bytes.get(..self.length).unwrap_or(&[])
    }

    /// Where the byte at a place of the plain text came from; its end comes from the end.
    pub(crate) fn origin(&self, place: usize) -> usize {
        let from = if place < self.length { self.from.get(place).copied() } else { None };
        usize::from(from.unwrap_or(self.end))
    }

    fn push_sign(&mut self, sign: Sign, places: Range<usize>, before: Option<u8>, next: Option<u8>) -> bool {
        let digit = |byte: Option<u8>| byte.is_some_and(|byte| byte.is_ascii_digit());
        let Range { start: place, end: behind } = places;
        match sign {
            Sign::Nothing => true,
            Sign::Byte(byte) => self.push(byte, place),
            // `1½` is 1 1/2, and what follows is no part of the denominator.
            Sign::Fraction(text) => {
                (!digit(before) || self.push(b' ', place))
                    && text.iter().all(|byte| self.push(*byte, place))
                    && (!digit(next) || self.push(b' ', behind))
            }
        }
    }

    fn push(&mut self, byte: u8, place: usize) -> bool {
        let (Some(slot), Some(from)) = (self.bytes.get_mut(self.length), self.from.get_mut(self.length)) else {
            return false;
        };
        *slot = byte;
        *from = u16::try_from(place).unwrap_or(u16::MAX);
        self.length = self.length.saturating_add(1);
        true
    }
}

/// The first character of a text that is not empty, and how many bytes it is.
fn sign(rest: &[u8]) -> (Sign, usize) {
    match rest {
        [b'\t', ..] => (Sign::Byte(b' '), 1),
        [b'\r' | b'\n', ..] => (Sign::Byte(b'\n'), 1),
        [byte @ 0x20..=0x7E, ..] => (Sign::Byte(*byte), 1),
        [0xC2..=0xDF, ..] | [0xE0..=0xEF, ..] | [0xF0..=0xF7, ..] => wide_sign(rest),
        [byte, ..] => (latin_sign(*byte), 1),
        [] => (Sign::Nothing, 1),
    }
}

/// Lone bytes above ASCII: Latin-1, and the quotes and dashes that Windows put into its gap.
#[inline(never)]
fn latin_sign(byte: u8) -> Sign {
    match byte {
        0xA0 => Sign::Byte(b' '),
        0xB0 => Sign::Byte(DEGREE),
        0xB1 => Sign::Byte(PLUS_MINUS),
        0xBC => Sign::Fraction(b"1/4"),
        0xBD => Sign::Fraction(b"1/2"),
        0xBE => Sign::Fraction(b"3/4"),
        0xD7 => Sign::Byte(b'x'),
        0xD8 | 0xF8 => Sign::Byte(DIAMETER),
        0x91 | 0x92 | 0xB4 => Sign::Byte(b'\''),
        0x93 | 0x94 => Sign::Byte(b'"'),
        0x96 | 0x97 => Sign::Byte(b'-'),
        _ => Sign::Byte(OTHER),
    }
}

/// A character of UTF-8, or the lone byte before bytes that do not continue it.
fn wide_sign(rest: &[u8]) -> (Sign, usize) {
    let width = match rest {
        // × and Ø as lone bytes come before two letters of other scripts.
        [0xD7 | 0xD8, ..] => 1,
        [0xC2..=0xDF, 0x80..=0xBF, ..] => 2,
        [0xE0..=0xEF, 0x80..=0xBF, 0x80..=0xBF, ..] => 3,
        [0xF0..=0xF4, 0x80..=0xBF, 0x80..=0xBF, 0x80..=0xBF, ..] => 4,
        _ => 1,
    };
    let sign = match rest {
        [byte, ..] if width == 1 => latin_sign(*byte),
        [0xC2, byte, ..] => latin_sign(if *byte >= 0xA0 { *byte } else { 0 }),
        [0xC3, 0x97, ..] => Sign::Byte(b'x'),
        [0xC3, 0x98 | 0xB8, ..] | [0xCE, 0xA6, ..] | [0xCF, 0x86, ..] => Sign::Byte(DIAMETER),
        [0xE2, second, third, ..] => symbol(*second, *third),
        [0xE3, 0x80, 0x80, ..] => Sign::Byte(b' '),
        [0xEF, 0xBB, 0xBF, ..] => Sign::Nothing,
        _ => Sign::Byte(OTHER),
    };
    (sign, width)
}

/// U+2000 to U+2FFF, by the bytes behind 0xE2.
fn symbol(second: u8, third: u8) -> Sign {
    Sign::Byte(match (second, third) {
        (0x80, 0x80..=0x8A | 0xAF) | (0x81, 0x9F) => b' ',
        (0x80, 0x8B..=0x8F) => return Sign::Nothing,
        (0x80, 0x90..=0x95) | (0x88, 0x92) => b'-',
        (0x80, 0x98 | 0x99 | 0x9B | 0xB2) => b'\'',
        (0x80, 0x9C | 0x9D | 0x9F | 0xB3) => b'"',
        (0x81, 0x84) | (0x88, 0x95) => b'/',
        (0x8C, 0x80) | (0x88, 0x85) => DIAMETER,
        (0x86, 0xA7) => DEPTH,
        (0x8C, 0xB5) => COUNTERSINK,
        (0x8C, 0xB4) => COUNTERBORE,
        (0x9C, 0x95) | (0xA8, 0xAF) => b'x',
        (0x85, fraction) => return vulgar(fraction),
        _ => OTHER,
    })
}

/// U+2150 to U+215E, by their last byte.
fn vulgar(last: u8) -> Sign {
    Sign::Fraction(match last {
        0x90 => b"1/7",
        0x91 => b"1/9",
        0x92 => b"1/10",
        0x93 => b"1/3",
        0x94 => b"2/3",
        0x95 => b"1/5",
        0x96 => b"2/5",
        0x97 => b"3/5",
        0x98 => b"4/5",
        0x99 => b"1/6",
        0x9A => b"5/6",
        0x9B => b"1/8",
        0x9C => b"3/8",
        0x9D => b"5/8",
        0x9E => b"7/8",
        _ => return Sign::Byte(OTHER),
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::vec;
    use std::vec::Vec;

    fn plain(text: &[u8]) -> (Vec<u8>, Vec<usize>) {
        let (plain, whole) = Plain::<64>::of(text);
        assert!(whole);
        let places = (0..=plain.text().len()).map(|place| plain.origin(place)).collect();
        (plain.text().to_vec(), places)
    }

    #[test]
    fn signs_of_utf8_and_lone_bytes_are_the_same() {
        for (utf8, lone) in [("×", 0xD7), ("Ø", 0xD8), ("ø", 0xF8), ("°", 0xB0), ("½", 0xBD), ("¼", 0xBC), ("¾", 0xBE)]
        {
            assert_eq!(plain(utf8.as_bytes()).0, plain(&[lone]).0, "{utf8}");
        }
        assert_eq!(plain("⌀↧⌵⌴".as_bytes()).0, [DIAMETER, DEPTH, COUNTERSINK, COUNTERBORE]);
        assert_eq!(plain("–—‘’“”″′⁄−\u{a0}\u{2009}".as_bytes()).0, b"--''\"\"\"'/-  ");
    }

    #[test]
    fn fractions_stand_apart_and_keep_their_place() {
        assert_eq!(plain("1½-6".as_bytes()), (b"1 1/2-6".to_vec(), vec![0, 1, 1, 1, 1, 3, 4, 5]));
        assert_eq!(plain("½20".as_bytes()), (b"1/2 20".to_vec(), vec![0, 0, 0, 2, 2, 3, 4]));
        assert_eq!(plain("⅝-11".as_bytes()).0, b"5/8-11");
    }

    #[test]
    fn what_is_unknown_is_one_sign_each() {
        assert_eq!(plain("аж 钻 😀".as_bytes()).0, [OTHER, OTHER, b' ', OTHER, b' ', OTHER]);
        assert_eq!(plain(b"\0\x01\x7f\xff\xc3").0, [OTHER; 5]);
        assert_eq!(plain(b"\xef\xbb\xbfM8"), (b"M8".to_vec(), vec![3, 4, 5]));
    }

    #[test]
    fn what_has_no_room_is_left_and_said() {
        let (plain, whole) = Plain::<4>::of("M8 ½".as_bytes());
        assert!(!whole);
        assert_eq!((plain.text(), plain.origin(4)), (&b"M8 1"[..], 3));
    }
}
