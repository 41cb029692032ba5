//! The words that are easily read, eight bytes at a time: letters with plain numbers, no fault.
//!
//! Nearly all of a program is of these. Whatever else stands there is left to the scanner, which would
//! make the same of what is read here.

use super::block::Block;
use super::number::{Number, Sign, power_of_ten};
use super::word::{Word, WordValue};

/// A `u64` of one byte eight times.
const fn eight(byte: u8) -> u64 {
    u64::from_le_bytes([byte; 8])
}

/// Takes words from where one may begin, at this column; how many bytes that are. The next byte is no part of
/// them. With `BLANKS` one may stand behind each letter.
#[inline(always)]
pub(super) fn take<const BLANKS: bool>(line: &[u8], column: u32, block: &mut Block) -> usize {
    let mut place = 0_usize;
    while let Some((letter, behind)) = line.get(place..).and_then(<[u8]>::split_first) {
        if !letter.is_ascii_alphabetic() || place >= FURTHEST {
            break;
        }
        let Some(read) = (if BLANKS { number_behind_blank(behind) } else { number(behind) }) else { break };
        let length = read.length;
        let end = place.wrapping_add(1).wrapping_add(length);
        let Some(next) = behind.get(length..).and_then(next_item) else { break };
        let letter = letter.to_ascii_uppercase();
        let (column, end_column) = (column.wrapping_add(place as u32), column.wrapping_add(end as u32));
        let number = read.number();
        let takes = match letter {
            b'N' => block.push_line_number(number),
            b'O' => false,
            _ => block.push_sound(Word::new(letter, WordValue::Number(number), column, end_column)),
        };
        if !takes {
            break;
        }
        place = end.wrapping_add(next);
    }
    place
}

/// Together with a column that is no further, columns are exact so far.
pub(super) const FURTHEST: usize = 1 << 30;

/// How many blanks stand before the next item; `None` if the number before them may go on behind them.
#[inline]
fn next_item(behind: &[u8]) -> Option<usize> {
    let mut blanks = 0_usize;
    loop {
        match behind.get(blanks)? {
            b' ' | b'\t' => blanks = blanks.wrapping_add(1),
            b'\n' | b'\r' | b'(' | b'A'..=b'Z' | b'a'..=b'z' => return Some(blanks),
            _ => return None,
        }
    }
}

/// A number as it was read, and how many bytes it is. Not yet a [`Number`]: its small members would go by
/// way of memory, and slowly.
struct Read {
    digits: i64,
    decimals: u32,
    whole_digits: u32,
    sign: Sign,
    point: bool,
    length: usize,
}

impl Read {
    #[inline]
    const fn number(&self) -> Number {
        Number::of(self.digits, self.decimals as u8, self.whole_digits as u8, self.sign, self.point)
    }
}

/// A number, and the blank before it if there is one.
#[inline]
fn number_behind_blank(text: &[u8]) -> Option<Read> {
    let behind = text.strip_prefix(b" ").unwrap_or(text);
    let read = number(behind)?;
    Some(Read { length: read.length.wrapping_add(text.len()).wrapping_sub(behind.len()), ..read })
}

/// A number; `None` for one of more than seven digits before or behind its point.
#[inline(always)]
fn number(text: &[u8]) -> Option<Read> {
    let (sign, length) = match text.first()? {
        b'-' => (Sign::Minus, 1_usize),
        b'+' => (Sign::Plus, 1),
        _ => (Sign::None, 0),
    };
    let bytes = Eight::of(text.get(length..)?)?;
    let whole_digits = count(bytes.others);
    if bytes.at(whole_digits) != b'.' {
        let length = length.wrapping_add(whole_digits as usize);
        let digits = value(bytes.digits, whole_digits);
        return matches!(whole_digits, 1..=7).then_some(Read {
            digits,
            decimals: 0,
            whole_digits,
            sign,
            point: false,
            length,
        });
    }
    // Nearly always what is behind the point is in these eight bytes as well: without the point it is one number.
    let behind = bytes.others & bytes.others.wrapping_sub(1);
    if behind == 0 {
        return long_number(text.get(length..)?, sign, length);
    }
    let end = count(behind);
    let before = low_bytes(whole_digits);
    let joined = (bytes.digits & before) | (bytes.digits.wrapping_shr(8) & !before);
    let digits = end.wrapping_sub(1);
    let decimals = digits.wrapping_sub(whole_digits);
    let length = length.wrapping_add(end as usize);
    (digits > 0).then_some(Read { digits: value(joined, digits), decimals, whole_digits, sign, point: true, length })
}

/// The same, where the point is in the first eight bytes and the end is not.
#[cold]
fn long_number(text: &[u8], sign: Sign, length: usize) -> Option<Read> {
    let whole = Eight::of(text)?;
    let whole_digits = count(whole.others);
    let point = length.wrapping_add(whole_digits as usize);
    let part = Eight::of(text.get(whole_digits as usize..)?.get(1..)?)?;
    let decimals = count(part.others);
    if decimals > 7 {
        return None;
    }
    let digits = value(whole.digits, whole_digits)
        .wrapping_mul(power_of_ten(decimals as u8)?)
        .wrapping_add(value(part.digits, decimals));
    let length = point.wrapping_add(1).wrapping_add(decimals as usize);
    Some(Read { digits, decimals, whole_digits, sign, point: true, length })
}

/// Eight bytes of a text.
struct Eight {
    bytes: u64,
    /// 0 to 9 for a digit.
    digits: u64,
    /// The top bit of each byte that is no digit, exact up to the first byte above 127.
    others: u64,
}

impl Eight {
    #[inline]
    fn of(text: &[u8]) -> Option<Self> {
        let bytes = u64::from_le_bytes(*text.first_chunk()?);
        let digits = bytes ^ eight(b'0');
        // What is no digit is at least 10: with 0x76 its top bit is set, if it was not before.
        let others = (digits.wrapping_add(eight(0x76)) | digits) & eight(0x80);
        Some(Self { bytes, digits, others })
    }

    #[inline]
    const fn at(&self, place: u32) -> u8 {
        // Behind the last of them there is none.
        if place < 8 { self.bytes.wrapping_shr(place.wrapping_mul(8)) as u8 } else { 0 }
    }
}

/// How many bytes stand before the first that is marked.
#[inline]
const fn count(marks: u64) -> u32 {
    marks.trailing_zeros() / 8
}

/// All bits of the first bytes, up to seven of them.
#[inline]
const fn low_bytes(count: u32) -> u64 {
    1_u64.wrapping_shl(count.wrapping_mul(8)).wrapping_sub(1)
}

/// The number that the first digits are, up to seven of them.
#[inline]
const fn value(digits: u64, count: u32) -> i64 {
    // Moved to the end of eight bytes, with zeros before them; then pairs, fours, eight at a time.
    let moved = digits.wrapping_shl(56_u32.wrapping_sub(count.wrapping_mul(8))).wrapping_shl(8);
    let pairs = moved.wrapping_mul(2561).wrapping_shr(8) & 0x00FF_00FF_00FF_00FF;
    let fours = pairs.wrapping_mul(6_553_601).wrapping_shr(16) & 0x0000_FFFF_0000_FFFF;
    fours.wrapping_mul(42_949_672_960_001).wrapping_shr(32) as i64
}
