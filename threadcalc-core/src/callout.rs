//! Where in a text a thread designation ends: the longest piece that the designation reader takes.
//!
//! The grammar of designations stays in one place. Here pieces of a text are offered to it, the
//! longest first, and the byte at which it stops says which piece to offer next.

mod words;

pub(crate) use words::{after_blanks, could_begin, is_one_of, leading_word, names_series};

use crate::error::{Code, Error};
use crate::form::Form;
use crate::length::Length;
use crate::series::{self, Series};
use crate::thread::Thread;
use words::is_series_word;

/// What stands at a place where a designation could begin.
pub(crate) enum Callout {
    /// No designation.
    None,
    /// A thread, and where its text ends.
    Thread(Thread, usize),
    /// Evidently a designation, and a wrong one. Offsets count from where the text begins.
    Wrong(Error),
}

/// The longest piece that is offered.
const WINDOW: usize = 80;
/// The most pieces that are offered at one place.
const MOST_OFFERS: usize = 24;

/// Reads the designation that the text begins with, and the words behind it that belong to it.
pub(crate) fn read(text: &[u8]) -> Callout {
    if !could_begin(text) {
        return Callout::None;
    }
    match longest(text) {
        Callout::Thread(thread, end) => with_class_word(text, thread, end),
        other => other,
    }
}

#[derive(PartialEq, Eq)]
enum Kind {
    Figure,
    Letter,
    Other,
}

#[inline(never)]
fn kind(text: &[u8], place: usize) -> Option<Kind> {
    let next_is_digit = || place.checked_add(1).and_then(|next| text.get(next)).is_some_and(u8::is_ascii_digit);
    Some(match text.get(place)? {
        b'0'..=b'9' => Kind::Figure,
        b'.' | b',' if next_is_digit() => Kind::Figure,
        b'a'..=b'z' | b'A'..=b'Z' => Kind::Letter,
        _ => Kind::Other,
    })
}

/// Whether a piece may end at this place of the text.
fn is_border(text: &[u8], place: usize) -> bool {
    let before = place.checked_sub(1).and_then(|before| kind(text, before));
    match (before, text.get(place)) {
        (Some(_), None) => true,
        // `6Hx16`: the times sign begins something new behind a letter too.
        (Some(before), Some(after)) => kind(text, place) != Some(before) || matches!(after, b'x' | b'X'),
        _ => false,
    }
}

fn last_border(text: &[u8], most: usize) -> Option<usize> {
    (1..=most).rev().find(|place| is_border(text, *place))
}

/// A piece without the blanks, stops and dashes at its end, which belong to the sentence.
fn trimmed(piece: &[u8]) -> &[u8] {
    let mut piece = piece;
    while let [rest @ .., b' ' | b'.' | b',' | b'-' | b'('] = piece {
        piece = rest;
    }
    piece
}

fn longest(text: &[u8]) -> Callout {
    let line = text.iter().take(WINDOW).take_while(|byte| matches!(byte, 0x20..=0x7E)).count();
    let text_of_line = text.get(..line).unwrap_or(text);
    // Cut off by the window, the last word is offered only up to its border.
    let mut end = if line < WINDOW { Some(line) } else { last_border(text_of_line, line.saturating_sub(1)) };
    let mut first_error = None;
    for _ in 0..MOST_OFFERS {
        let Some(offered) = end.filter(|end| *end > 0) else { break };
        let piece = trimmed(text_of_line.get(..offered).unwrap_or(&[]));
        let error = match Thread::read(piece) {
            Ok(thread) if !is_cut_fraction(text, piece.len()) && is_written_out(piece, &thread) => {
                let (thread, end) = sensible(text, piece, thread);
                return Callout::Thread(thread, end);
            }
            Ok(_) => {
                end = last_border(text_of_line, piece.len().saturating_sub(1));
                continue;
            }
            Err(error) => error,
        };
        if is_damning(&error, piece) {
            return Callout::Wrong(error);
        }
        if error.code() != Code::Unreadable {
            first_error.get_or_insert(error);
        }
        end = next_end(text_of_line, piece.len(), &error);
    }
    match first_error {
        Some(error) if is_evident(text) => Callout::Wrong(error),
        _ => Callout::None,
    }
}

/// Where the next shorter piece ends: at the byte that could not be read.
fn next_end(text: &[u8], offered: usize, error: &Error) -> Option<usize> {
    let shorter = offered.saturating_sub(1);
    let at = error.at().map_or(shorter, |at| at as usize);
    let most = match error.code() {
        // `10-32/8-32`: as one mixed number the first figures are refused, and some of them are a thread.
        Code::Unreadable if at == 0 && text.get(..offered).is_some_and(|piece| piece.contains(&b'/')) => shorter,
        Code::Unreadable => at.min(shorter),
        // A class or a number is refused as a whole: the piece that ends in the midst of it comes first.
        _ => at.saturating_add(run_at(text, at).len()).min(shorter),
    };
    last_border(text, most)
}

/// Letters and digits from a place on.
fn run_at(text: &[u8], place: usize) -> &[u8] {
    let rest = text.get(place..).unwrap_or(&[]);
    let length = rest.iter().take_while(|byte| byte.is_ascii_alphanumeric()).count();
    rest.get(..length).unwrap_or(rest)
}

/// `M8x1` is not the thread of `M8x1/2 DEEP`; `10-32/8-32` are two.
fn is_cut_fraction(text: &[u8], end: usize) -> bool {
    let Some([b'/', rest @ ..]) = text.get(end..) else { return false };
    let digits = rest.iter().take_while(|byte| byte.is_ascii_digit()).count();
    digits > 0 && rest.get(digits) != Some(&b'-')
}

/// Whether a thread that begins with its figures is written so that nothing else can be meant.
///
/// Of two bare numbers only those that a standard lists, or a size that is no whole number, are a
/// thread: not the depths of `10 12 DEEP`.
fn is_written_out(piece: &[u8], thread: &Thread) -> bool {
    let begins_with_figures = matches!(piece.first(), Some(b'0'..=b'9' | b'.'));
    let dashed = piece.contains(&b'-');
    let numbers_own_size = piece.contains(&b'/') || piece.first() == Some(&b'.');
    // `5 W` are watts; `1/2 W` and `3/8-16 W` are Whitworth threads.
    if is_bare_w(piece) && !dashed && !numbers_own_size {
        return false;
    }
    if !begins_with_figures || names_series(piece) {
        return true;
    }
    dashed && (thread.is_standard() || numbers_own_size)
}

/// Whether the one word that names a Whitworth thread is a W alone.
#[inline(never)]
pub(crate) fn is_bare_w(piece: &[u8]) -> bool {
    let mut words = piece.split(|byte| !byte.is_ascii_alphabetic()).filter(|word| !word.is_empty());
    words.next().is_some_and(|word| word.eq_ignore_ascii_case(b"W"))
}

/// Whether a text that gave no thread is a designation all the same.
fn is_evident(text: &[u8]) -> bool {
    match text.first() {
        Some(b'M' | b'm') => true,
        Some(b'0'..=b'9' | b'.' | b'#' | b'N' | b'n') => names_series(text),
        // A spindle speed, a width.
        Some(b'S' | b's' | b'W' | b'w') => false,
        // A radius is written with R as well.
        Some(b'R' | b'r') => !matches!(text, [_, b'0'..=b'9', b'.', ..] | [_, b'.', ..]) && text.contains(&b'/'),
        _ => true,
    }
}

/// Whether the error is of the designation itself and not of the words behind it.
fn is_damning(error: &Error, piece: &[u8]) -> bool {
    let at = error.at().map_or(0, |at| at as usize);
    match error.code() {
        Code::Contradiction => !is_drill_diameter(piece, at),
        Code::Fit => true,
        Code::SeriesMismatch => !is_apart(piece, at),
        Code::UnknownClass => is_class_like(piece, at),
        // The form is part of the thread: `1/4-20 STI` is no 1/4-20.
        Code::UnsupportedForm if at > 0 => is_series_word(leading_word(piece.get(at..).unwrap_or(&[])).0),
        _ => false,
    }
}

/// `#7 (.201) DRILL` is a drill with its diameter, and no thread of another one.
fn is_drill_diameter(piece: &[u8], at: usize) -> bool {
    let in_brackets = at.checked_sub(1).and_then(|before| piece.get(before)) == Some(&b'(');
    let behind = piece.get(at..).and_then(|rest| rest.split(|byte| *byte == b')').nth(1)).unwrap_or(&[]);
    let (word, _) = leading_word(after_blanks(behind));
    in_brackets && !word.is_empty() && !is_series_word(word)
}

/// The depth of `Rc 1/4 12 DEEP` is offered as threads per inch that the size does not have.
fn is_apart(piece: &[u8], at: usize) -> bool {
    let before = at.checked_sub(1).and_then(|before| piece.get(before));
    before == Some(&b' ') && piece.get(at).is_some_and(u8::is_ascii_digit)
}

/// `9Z`, `6H7H`: not the count of `4X` and not a depth.
fn is_class_like(piece: &[u8], at: usize) -> bool {
    let letter = |byte: &u8| byte.is_ascii_alphabetic() && !matches!(byte, b'x' | b'X');
    let run = run_at(piece, at);
    match run {
        [first, b] => first.is_ascii_digit() && letter(b),
        [first, b, second, d] => first.is_ascii_digit() && letter(b) && second.is_ascii_digit() && letter(d),
        _ => false,
    }
}

/// The reading that a draughtsman meant where the longest one makes a special that nobody lists.
///
/// `M20 x 10 DEEP` is M20, 10 deep; `1/4-20 1/2 DEEP` is 1/4-20, 1/2 deep; `10-32/8-32` is 10-32.
fn sensible(text: &[u8], piece: &[u8], thread: Thread) -> (Thread, usize) {
    let whole = (thread, piece.len());
    if thread.is_standard() || thread.starts() > 1 {
        return whole;
    }
    let cut = if thread.form() == Form::Metric {
        let coarse = series::pitch_of(Series::Coarse, thread.major_mm());
        let limit = coarse.and_then(|pitch| pitch.times(Length::integer(2)).ok());
        let is_depth = limit.is_some_and(|limit| thread.pitch_mm() > limit) || deep_follows(text.get(piece.len()..));
        piece.iter().position(|byte| matches!(byte, b'x' | b'X' | b'*' | b'-')).filter(|_| is_depth)
    } else {
        let is_joint = |byte: &u8| matches!(byte, b' ' | b'/');
        piece.iter().rposition(is_joint).filter(|_| thread.form() == Form::Unified)
    };
    let Some(shorter) = cut.and_then(|cut| piece.get(..cut)).map(trimmed) else { return whole };
    // `1/4-20 1/2`: the blank before the fraction comes before its slash.
    let blank = shorter.iter().rposition(|byte| *byte == b' ').filter(|_| thread.form() == Form::Unified);
    let shortest = blank.and_then(|cut| shorter.get(..cut)).map(trimmed);
    for piece in [Some(shorter), shortest].into_iter().flatten() {
        match Thread::read(piece) {
            Ok(thread) if thread.is_standard() => return (thread, piece.len()),
            _ => {}
        }
    }
    whole
}

/// Whether a word for depth comes next, a unit between them or not.
fn deep_follows(rest: Option<&[u8]>) -> bool {
    let (word, rest) = leading_word(after_blanks(rest.unwrap_or(&[])));
    let word = if is_one_of(word, &[b"MM"]) { leading_word(after_blanks(rest)).0 } else { word };
    is_one_of(word, &[b"DEEP", b"DP", b"DEPTH"])
}

/// The class in words behind the designation, `CLASS 2B`.
fn with_class_word(text: &[u8], thread: Thread, end: usize) -> Callout {
    let (word, after) = leading_word(after_separators(text.get(end..).unwrap_or(&[])));
    let class = run_at(after_separators(after), 0);
    let is_class = class.len() <= 4 && class.first().is_some_and(u8::is_ascii_digit);
    if thread.tolerance_class().is_some() || !is_class || !is_one_of(word, &[b"CLASS", b"CL"]) {
        return Callout::Thread(thread, end);
    }
    let behind = after_separators(after).len().saturating_sub(class.len());
    let class_end = text.len().saturating_sub(behind);
    match thread.with_class(class) {
        Ok(thread) => Callout::Thread(thread, class_end),
        Err(error) => Callout::Wrong(error.at_byte(class_end.saturating_sub(class.len()))),
    }
}

/// The text without blanks and a dash or comma at its start.
#[inline(never)]
fn after_separators(text: &[u8]) -> &[u8] {
    let text = after_blanks(text);
    after_blanks(text.strip_prefix(b"-").or(text.strip_prefix(b",")).unwrap_or(text))
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::string::{String, ToString};

    /// The thread and the text behind it, or the code of the error.
    fn shown(text: &str) -> String {
        match read(text.as_bytes()) {
            Callout::None => String::from("none"),
            Callout::Thread(thread, end) => std::format!("{thread}|{}", &text[end..]),
            Callout::Wrong(error) => std::format!("{} {}", error.code().name(), error.at().unwrap()).to_string(),
        }
    }

    #[test]
    fn the_longest_piece_is_taken() {
        for (text, want) in [
            ("M8x1.25-6H x 16 DEEP", "M8x1.25-6H| x 16 DEEP"),
            ("M8x1.25-6Hx16", "M8x1.25-6H|x16"),
            ("M8 x 20", "M8x1.25| x 20"),
            ("M8x20 DEEP", "M8x1.25|x20 DEEP"),
            ("M20 x 10 DEEP", "M20x2.5| x 10 DEEP"),
            ("M8x1/2 DEEP", "M8x1.25|x1/2 DEEP"),
            ("10-32/8-32", "10-32 UNF|/8-32"),
            ("M8, 16 DEEP", "M8x1.25|, 16 DEEP"),
            ("M8x1, 16 DEEP", "M8x1|, 16 DEEP"),
            ("M8x1.25. 4 PLCS", "M8x1.25|. 4 PLCS"),
            ("M8 8MM DEEP", "M8x1.25| 8MM DEEP"),
            ("M10x1.1-6H.", "M10x1.1-6H|."),
            ("1/4-20 UNC-2B .50 DP", "1/4-20 UNC-2B| .50 DP"),
            ("1/4-20 1/2 DEEP", "1/4-20 UNC| 1/2 DEEP"),
            ("10-32 UNF-2B THRU", "10-32 UNF-2B| THRU"),
            ("#10-32 X .375 DP", "10-32 UNF| X .375 DP"),
            ("1/4 20 UNC 4X", "1/4-20 UNC| 4X"),
            ("M10 LH THRU", "M10x1.5-LH| THRU"),
            ("M10x1.5 LEFT HAND THRU", "M10x1.5-LH| THRU"),
            ("M10 L.H. 2 START x", "M10xPh3P1.5-LH| x"),
            ("M8-16 DEEP", "M8x1.25|-16 DEEP"),
            ("M20-10 DEEP", "M20x2.5|-10 DEEP"),
            ("M8-1.25 THRU", "M8x1.25| THRU"),
            ("G1/2 A THRU", "G1/2A| THRU"),
            ("Rc 1/4 12 DEEP", "Rc1/4| 12 DEEP"),
            ("1/4-18 NPT X .5", "1/4-18 NPT| X .5"),
            ("UNF 1/4-28 X .5", "1/4-28 UNF| X .5"),
            ("1/4-20 UNC CLASS 2B", "1/4-20 UNC-2B|"),
            ("1/4-20 STI THRU", "1/4-20 UNC STI| THRU"),
            ("STI M8x1.25 16 DEEP", "M8x1.25 STI| 16 DEEP"),
            ("M8x1.25 STI THRU", "M8x1.25 STI| THRU"),
            ("MJ6x1-4H5H THRU", "MJ6x1-4H5H| THRU"),
            ("Tr40x14(P7)-7H LH THRU", "Tr40x14P7-7H-LH| THRU"),
            ("1/4-28 UNJF-3B THRU", "1/4-28 UNJF-3B| THRU"),
            ("1 1/2-4 ACME-2G x 2 DEEP", "1.500-4-ACME-2G| x 2 DEEP"),
            ("1/2-12 BSW THRU", "1/2-12 BSW| THRU"),
            ("2 BA THRU", "2 BA| THRU"),
            ("2BA x 10", "2 BA| x 10"),
            ("BSF 5/16 THRU", "5/16-22 BSF| THRU"),
            ("S0.8-4H5 THRU", "S0.8-4H5| THRU"),
        ] {
            assert_eq!(shown(text), want, "{text}");
        }
    }

    #[test]
    fn numbers_alone_are_no_thread() {
        for text in ["16-20 DEEP", "10 12 DEEP", "6.8 20", "4 10", ".201-.205", "M", "MIN 16", "RADIUS 3", "NO 7 DRILL"]
        {
            assert_eq!(shown(text), "none", "{text}");
        }
    }

    #[test]
    fn a_wrong_designation_says_so() {
        for (text, want) in [
            ("1/4-20 UNF THRU", "series-mismatch 7"),
            ("1/4-16 NPT", "series-mismatch 4"),
            ("M8-9Z THRU", "unknown-class 3"),
            ("1/4-20 PTF THRU", "unsupported-form 7"),
            ("M8x1.25-6g STI", "contradiction 11"),
            ("M8-6H/6g THRU", "fit 5"),
            ("M13 THRU", "missing 3"),
            ("M16xPh4P1.5 THRU", "contradiction 6"),
            ("1/4-0 UNC", "out-of-range 4"),
            ("M8 CLASS 9Z", "unknown-class 9"),
        ] {
            assert_eq!(shown(text), want, "{text}");
        }
    }
}
