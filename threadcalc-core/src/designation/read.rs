//! From bytes to a thread.

use super::{metric, unified};
use crate::error::{Code, Error, Field};
use crate::number::Cursor;
use crate::thread::{Hand, Thread};

/// The longest designation that is looked at, in bytes.
const LONGEST: usize = 80;

const EXAMPLES: &str = "a designation such as M8x1.25-6H or 1/4-20 UNC-2B";

/// Words that begin a designation of a form this version does not read, longest first.
const OTHER_FORMS: [&[u8]; 20] = [
    b"ACME", b"STUB", b"BSPP", b"BSPT", b"BSW", b"BSF", b"BSP", b"NPTF", b"NPSM", b"NPSF", b"NPSC", b"NPT", b"MJ",
    b"TR", b"RC", b"RP", b"BA", b"PT", b"G", b"R",
];

/// Words behind size and pitch that name a form this version does not read.
const OTHER_SERIES: [&[u8]; 16] = [
    b"UNRC", b"UNRF", b"UNREF", b"UNRS", b"UNR", b"UNJC", b"UNJF", b"UNJEF", b"UNJS", b"UNJ", b"NPTF", b"NPT", b"ACME",
    b"BSW", b"BSF", b"BSP",
];

/// Reads one whole designation.
pub(crate) fn read(text: &[u8]) -> Result<Thread, Error> {
    if text.len() > LONGEST {
        return Err(Error::new(Code::TooLong, Field::Designation).at_byte(LONGEST).hint_text("at most 80 bytes"));
    }
    let mut cursor = Cursor::new(text, Field::Designation);
    cursor.skip_blanks();
    let thread = match cursor.peek() {
        None => return Err(cursor.error(Code::Empty).hint_text(EXAMPLES)),
        Some(b'M' | b'm') => metric::read(&mut cursor),
        Some(b'0'..=b'9' | b'.' | b'#' | b'N' | b'n') => unified::read(&mut cursor),
        Some(_) => Err(unreadable(&cursor)),
    };
    thread.map_err(|error| if error.at().is_none() { error.at_byte(cursor.place()) } else { error })
}

/// The error for text that makes no sense here, or is a form known but not supported.
pub(super) fn unreadable(cursor: &Cursor<'_>) -> Error {
    let rest = cursor.rest();
    let starts_with = |word: &&[u8]| {
        rest.len() >= word.len()
            && rest.iter().zip(*word).all(|(a, b)| a.eq_ignore_ascii_case(b))
            && !rest.get(word.len()).is_some_and(u8::is_ascii_alphabetic)
    };
    if OTHER_FORMS.iter().chain(&OTHER_SERIES).any(starts_with) {
        return cursor.error(Code::UnsupportedForm).hint_text("this version reads ISO metric M and Unified threads");
    }
    cursor.error(Code::Unreadable).hint_text(EXAMPLES)
}

/// Blanks and at most one dash between two parts; returns where the next part starts.
pub(super) fn skip_separator(cursor: &mut Cursor<'_>) -> usize {
    cursor.skip_blanks();
    cursor.take(b'-');
    cursor.skip_blanks();
    cursor.place()
}

pub(super) fn at_tail_word(cursor: &mut Cursor<'_>) -> bool {
    let place = cursor.place();
    let found = hand(cursor).is_some();
    cursor.go_back_to(place);
    found
}

fn hand(cursor: &mut Cursor<'_>) -> Option<Hand> {
    if cursor.take_word(b"LH") || cursor.take_word(b"LEFT") {
        return Some(Hand::Left);
    }
    (cursor.take_word(b"RH") || cursor.take_word(b"RIGHT")).then_some(Hand::Right)
}

/// Class and hand, in either order, each at most once, then the end.
pub(super) fn tail(cursor: &mut Cursor<'_>, mut thread: Thread) -> Result<Thread, Error> {
    let mut handed = false;
    loop {
        let before = cursor.place();
        let place = skip_separator(cursor);
        if cursor.is_at_end() {
            let dangling = cursor.since(before).contains(&b'-');
            return if dangling {
                Err(cursor.error(Code::Unreadable).hint_text("a class or LH behind the dash"))
            } else {
                Ok(thread)
            };
        }
        if !handed {
            if let Some(hand) = hand(cursor) {
                thread = thread.with_hand(hand);
                handed = true;
                continue;
            }
        }
        if thread.tolerance_class().is_some() || !matches!(cursor.peek(), Some(b'0'..=b'9')) {
            return Err(unreadable(cursor));
        }
        thread = class(cursor, thread, place)?;
    }
}

fn class(cursor: &mut Cursor<'_>, thread: Thread, place: usize) -> Result<Thread, Error> {
    while cursor.peek().is_some_and(|byte| byte.is_ascii_alphanumeric()) {
        cursor.skip(1);
    }
    let thread = thread.with_class(cursor.since(place)).map_err(|error| error.at_byte(place))?;
    if cursor.peek() == Some(b'/') {
        return Err(cursor.error(Code::Fit).hint_text("one class; a fit such as 6H/6g names two threads"));
    }
    Ok(thread)
}
