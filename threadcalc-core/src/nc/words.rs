//! The words that are easily read, eight bytes at a time: letters with plain numbers, no fault.
//!
//! Nearly all of a program is of these. Whatever else stands there is left to the scanner, which would
//! make the same of what is read here.

use super::block::{Block, Word, WordValue};
use super::number::{Number, Sign, power_of_ten};

/// A `u64` of one byte eight times.
const fn eight(byte: u8) -> u64 {
    u64::from_le_bytes([byte; 8])
}

/// Takes words from the beginning of a line; how many bytes that are. The next byte is no part of them.
#[inline]
pub(super) fn take(line: &[u8], block: &mut Block) -> usize {
    let mut place = 0_usize;
    while let Some((letter, behind)) = line.get(place..).and_then(<[u8]>::split_first) {
        if !letter.is_ascii_alphabetic() || place >= FURTHEST {
            break;
        }
        let Some((number, length)) = number(behind) else { break };
        let end = place.wrapping_add(1).wrapping_add(length);
        let Some(next) = behind.get(length..).and_then(next_item) else { break };
        let letter = letter.to_ascii_uppercase();
        let (column, end_column) = (place.wrapping_add(1) as u32, end.wrapping_add(1) as u32);
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

/// Columns are exact so far.
const FURTHEST: usize = 1 << 30;

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

/// A number of at most seven digits before its point and seven behind it, and how many bytes it is.
#[inline]
fn number(text: &[u8]) -> Option<(Number, usize)> {
    let (sign, length) = match text.first()? {
        b'-' => (Sign::Minus, 1_usize),
        b'+' => (Sign::Plus, 1),
        _ => (Sign::None, 0),
    };
    let (whole, whole_digits, after) = digits(text.get(length..)?)?;
    let length = length.wrapping_add(usize::from(whole_digits));
    if after != b'.' {
        return (whole_digits > 0).then(|| (Number::of(whole, 0, whole_digits, sign, false), length));
    }
    let length = length.wrapping_add(1);
    let (part, decimals, _) = digits(text.get(length..)?)?;
    if whole_digits == 0 && decimals == 0 {
        return None;
    }
    let mantissa = whole.wrapping_mul(power_of_ten(decimals)?).wrapping_add(part);
    Some((Number::of(mantissa, decimals, whole_digits, sign, true), length.wrapping_add(usize::from(decimals))))
}

/// The digits at the beginning of eight bytes, how many there are, and the byte behind them; `None` if all
/// are digits.
#[inline]
fn digits(text: &[u8]) -> Option<(i64, u8, u8)> {
    let bytes = u64::from_le_bytes(*text.first_chunk()?);
    let digits = bytes ^ eight(b'0');
    // The top bit of each byte that is no digit; only the first matters, so carries beyond it do not.
    let others = (digits.wrapping_add(eight(0x76)) | digits) & eight(0x80);
    if others == 0 {
        return None;
    }
    let count = others.trailing_zeros() / 8;
    let after = bytes.wrapping_shr(count.wrapping_mul(8)) as u8;
    // Moved to the end of eight bytes, with zeros before them; then pairs, fours, eight at a time.
    let moved = digits.wrapping_shl(56_u32.wrapping_sub(count.wrapping_mul(8))).wrapping_shl(8);
    let pairs = moved.wrapping_mul(2561).wrapping_shr(8) & 0x00FF_00FF_00FF_00FF;
    let fours = pairs.wrapping_mul(6_553_601).wrapping_shr(16) & 0x0000_FFFF_0000_FFFF;
    let value = fours.wrapping_mul(42_949_672_960_001).wrapping_shr(32);
    Some((value as i64, count as u8, after))
}
