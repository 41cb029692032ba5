//! Whether a piece of a comment stands alone: what may touch it, and the words beside it.

use crate::callout::{self, Callout, after_blanks, could_begin, is_one_of, leading_word};

/// Words that speak of tapping; and beginnings of such words.
const TAP_WORDS: [&[u8]; 15] = [
    b"TAP",
    b"TAPS",
    b"TAPPED",
    b"TAPPING",
    b"THREAD",
    b"THREADS",
    b"THREADED",
    b"THREADING",
    b"THD",
    b"THDS",
    b"THRD",
    b"GEW",
    b"FILET",
    b"FILETS",
    b"FILETE",
];
const TAP_BEGINNINGS: [&[u8]; 4] = [b"GEWINDE", b"TARAUD", b"FILETAGE", b"ROSCA"];

/// Whether a word of letters speaks of tapping.
pub(crate) fn is_tap_word(word: &[u8]) -> bool {
    let begins =
        |beginning: &&[u8]| word.get(..beginning.len()).is_some_and(|part| part.eq_ignore_ascii_case(beginning));
    is_one_of(word, &TAP_WORDS) || TAP_BEGINNINGS.iter().any(begins)
}

/// The word that a text begins with behind blanks; a dash before it is no part of it.
pub(super) fn next_word(text: &[u8]) -> &[u8] {
    let text = after_blanks(text);
    let text = text.strip_prefix(b"-").or(text.strip_prefix(b"_")).or(text.strip_prefix(b"=")).unwrap_or(text);
    leading_word(after_blanks(text)).0
}

/// The word before a place, without its stops and slashes: `PN` of `P/N: 10-32`.
pub(super) struct WordBefore {
    letters: [u8; 12],
    length: usize,
}

impl WordBefore {
    pub fn as_slice(&self) -> &[u8] {
        let start = self.letters.len().saturating_sub(self.length);
        self.letters.get(start..).unwrap_or(&[])
    }
}

/// The word before a place; longer ones than any of the lists are cut and match none.
pub(super) fn word_before(text: &[u8], place: usize) -> WordBefore {
    let mut word = WordBefore { letters: [0; 12], length: 0 };
    let before = text.get(..place).unwrap_or(&[]).iter().rev();
    let mut gap = true;
    for byte in before.take(24) {
        match byte {
            b' ' | b'\t' | b':' | b'#' | b'=' if gap => {}
            b'.' | b'/' => {}
            letter if letter.is_ascii_alphabetic() => {
                gap = false;
                let slot = word.letters.len().checked_sub(word.length.saturating_add(1));
                match slot.and_then(|slot| word.letters.get_mut(slot)) {
                    Some(slot) => *slot = *letter,
                    None => break,
                }
                word.length = word.length.saturating_add(1);
            }
            _ => break,
        }
    }
    word
}

/// Letters that end before a place.
fn letters_before(text: &[u8], place: usize) -> &[u8] {
    let before = text.get(..place).unwrap_or(&[]);
    let length = before.iter().rev().take(24).take_while(|byte| byte.is_ascii_alphabetic()).count();
    before.get(before.len().saturating_sub(length)..).unwrap_or(&[])
}

/// Whether up to two digits that stand alone end before a place: the count of `4X` and `4-M8`.
fn is_count_before(text: &[u8], place: usize) -> bool {
    let before = text.get(..place).unwrap_or(&[]);
    let digits = before.iter().rev().take(4).take_while(|byte| byte.is_ascii_digit()).count();
    let border = before.len().checked_sub(digits.saturating_add(1)).and_then(|place| before.get(place));
    matches!(digits, 1..=3) && border.is_none_or(|byte| matches!(byte, b' ' | b'\t' | b'(' | b')' | b',' | b';' | b':'))
}

/// Whether a thread may begin here: nothing before it that it would be a part of.
pub(super) fn begins_free(text: &[u8], place: usize, last_end: Option<usize>) -> bool {
    let Some(before) = place.checked_sub(1) else { return true };
    let figures = text.get(place).is_some_and(|byte| !byte.is_ascii_alphabetic());
    let (last, second) = (text.get(before), before.checked_sub(1).and_then(|second| text.get(second)));
    let behind_digit = second.is_some_and(u8::is_ascii_digit);
    match last {
        Some(b' ' | b'\t' | b'\r' | b'\n' | b'(' | b')' | b'[' | b']' | b';' | b'"' | b'&' | b'!') => true,
        Some(b',' | b':' | b'+' | b'=') => !figures || !behind_digit && last != Some(&b'='),
        Some(b'x' | b'X' | b'*' | 0xD7) => is_count_before(text, before),
        Some(0x97) if second == Some(&0xC3) => is_count_before(text, before.saturating_sub(1)),
        Some(b'-' | b'_') => {
            is_tap_word(letters_before(text, before))
                || (matches!(text.get(place), Some(b'M' | b'm')) && is_count_before(text, before))
        }
        Some(b'/') => last_end == Some(before),
        Some(0xA0) => true,
        _ => false,
    }
}

/// Whether a thread may end here: nothing behind it that it would be a part of.
pub(super) fn ends_free(rest: &[u8]) -> bool {
    match rest {
        [] | [b' ' | b'\t' | b'\r' | b'\n' | b'(' | b')' | b'[' | b']' | b';' | b'"' | b'&' | b'!' | b'?', ..] => true,
        [b'.' | b',' | b':' | b'+', next, ..] => {
            !next.is_ascii_digit() && (rest.first() != Some(&b'.') || !next.is_ascii_alphabetic())
        }
        [b'.' | b',' | b':' | b'-' | b'_' | b'/' | b'+'] => true,
        // A depth or a length.
        [b'x' | b'X' | b'*' | 0xD7, after @ ..] | [0xC3, 0x97, after @ ..] => {
            matches!(after_blanks(after), [b'0'..=b'9' | b'.', ..])
        }
        [b'-' | b'_', after @ ..] => {
            let (word, _) = leading_word(after);
            matches!(after, [b' ' | b'\t', ..]) || is_tap_word(word) || is_one_of(word, &[b"LH", b"RH"])
        }
        [b'/', after @ ..] => {
            let (word, _) = leading_word(after);
            let listed = match after.first() {
                Some(first) if first.is_ascii_alphabetic() => could_begin(after),
                Some(_) => matches!(callout::read(after), Callout::Thread(thread, _) if thread.is_standard()),
                None => true,
            };
            matches!(after, [b' ' | b'\t', ..]) || listed || is_tap_word(word)
        }
        [0xA0, ..] | [0xC2, 0xA0, ..] => true,
        _ => false,
    }
}
