//! The words of designations, and whether one could begin or goes on with a series.

/// Words that a designation begins with before its figures.
const BEGINNINGS: [&[u8]; 43] = [
    b"M", b"MF", b"MJ", b"G", b"R", b"RC", b"RP", b"NO", b"NPT", b"NPTF", b"NPSC", b"NPSM", b"NPSF", b"BSP", b"BSPP",
    b"BSPT", b"PF", b"PS", b"PT", b"UN", b"UNC", b"UNF", b"UNEF", b"UNS", b"UNR", b"UNRC", b"UNRF", b"UNREF", b"UNJ",
    b"UNJC", b"UNJF", b"UNJEF", b"UNJS", b"TR", b"S", b"ACME", b"BUTT", b"BSW", b"BSF", b"WHIT", b"W", b"BA", b"NC",
];

/// Words before one of those.
const BEFORE_BEGINNINGS: [&[u8]; 5] = [b"STI", b"EG", b"STUB", b"PULL", b"PUSH"];

/// Series and forms that are written behind the figures.
const SERIES_WORDS: [&[u8]; 40] = [
    b"UN", b"UNC", b"UNF", b"UNEF", b"UNS", b"UNR", b"UNRC", b"UNRF", b"UNREF", b"UNRS", b"UNJ", b"UNJC", b"UNJF",
    b"UNJEF", b"UNJS", b"NC", b"NF", b"NEF", b"NPT", b"NPTF", b"NPSC", b"NPSM", b"NPSF", b"ACME", b"STUB", b"BSW",
    b"BSF", b"BSP", b"BSPP", b"BSPT", b"BA", b"STI", b"PTF", b"OD", b"TPI", b"BUTT", b"PULL", b"PUSH", b"WHIT", b"W",
];

/// Whether a designation could begin here; cheap, and wrong only by saying yes.
pub(crate) fn could_begin(text: &[u8]) -> bool {
    match text {
        [b'0'..=b'9', ..] | [b'.', b'0'..=b'9', ..] => figures_go_on(text),
        [b'#', rest @ ..] => after_blanks(rest).first().is_some_and(u8::is_ascii_digit),
        [letter, ..] if letter.is_ascii_alphabetic() => {
            let (word, rest) = leading_word(text);
            if is_one_of(word, &BEFORE_BEGINNINGS) {
                return could_begin(after_blanks(rest.strip_prefix(b"-").unwrap_or(rest)));
            }
            if !is_one_of(word, &BEGINNINGS) {
                return false;
            }
            let rest = rest.strip_prefix(b".").filter(|_| word.len() == 2).unwrap_or(rest);
            matches!(after_blanks(rest), [b'0'..=b'9', ..] | [b'.', b'0'..=b'9', ..])
        }
        _ => false,
    }
}

/// Whether a dash or a word that can be a series follows the size.
#[inline(never)]
fn figures_go_on(text: &[u8]) -> bool {
    const LONGEST_SIZE: usize = 24;
    let is_size = |byte: &&u8| matches!(**byte, b'0'..=b'9' | b'.' | b',' | b'/' | b' ' | b'"' | b'\'');
    let size = text.iter().take(LONGEST_SIZE).take_while(is_size).count();
    let next = text.get(size).map(u8::to_ascii_uppercase);
    matches!(next, Some(b'-' | b'U' | b'N' | b'B' | b'O' | b'A' | b'S' | b'P' | b'I' | b'W'))
}

/// Whether a word behind the first figures names a series.
#[inline(never)]
pub(crate) fn names_series(text: &[u8]) -> bool {
    let figures = text
        .iter()
        .take_while(|byte| matches!(byte, b'0'..=b'9' | b'.' | b',' | b'/' | b'-' | b' ' | b'"' | b'\'' | b'#'))
        .count();
    let (word, _) = leading_word(text.get(figures..).unwrap_or(&[]));
    is_series_word(word)
}

/// Whether a word is a series or a form that is written behind the figures.
pub(super) fn is_series_word(word: &[u8]) -> bool {
    is_one_of(word, &SERIES_WORDS)
}

/// Letters at the start of a text, and the rest.
#[inline(never)]
pub(crate) fn leading_word(text: &[u8]) -> (&[u8], &[u8]) {
    let length = text.iter().take_while(|byte| byte.is_ascii_alphabetic()).count();
    text.split_at_checked(length).unwrap_or((text, &[]))
}

/// The text without the blanks that it begins with.
pub(crate) fn after_blanks(mut text: &[u8]) -> &[u8] {
    while let [b' ', rest @ ..] = text {
        text = rest;
    }
    text
}

/// Whether a word is in a list, whatever its case.
#[inline(never)]
pub(crate) fn is_one_of(word: &[u8], list: &[&[u8]]) -> bool {
    list.iter().any(|known| word.eq_ignore_ascii_case(known))
}
