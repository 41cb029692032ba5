//! A stretch of a text between parentheses, semicolons and line ends: comment, or words of a program?

use super::borders::is_tap_word;
use crate::callout::leading_word;

/// What is known of a stretch.
pub(super) struct Segment {
    /// Where the stretch ends.
    pub end: usize,
    /// It reads like a block of a program.
    pub is_code: bool,
    pub has_tap_word: bool,
    /// It has a spindle speed, S600.
    pub has_speed: bool,
    /// It has a tool number, T12.
    pub has_tool: bool,
}

/// Whether a word for tapping stands in a text.
pub(super) fn has_tap_word(mut text: &[u8]) -> bool {
    while !text.is_empty() {
        let (word, after) = leading_word(text);
        if is_tap_word(word) {
            return true;
        }
        text = after.get(1..).unwrap_or(&[]);
    }
    false
}

impl Segment {
    /// The stretch that begins at a place.
    pub fn of(text: &[u8], start: usize) -> Self {
        let rest = text.get(start..).unwrap_or(&[]);
        let length = rest.iter().take_while(|byte| !matches!(byte, b'(' | b')' | b';' | b'\n' | b'\r')).count();
        let stretch = rest.get(..length).unwrap_or(rest);
        let words = Words::of(stretch);
        let has_tap_word = has_tap_word(stretch);
        let moves = words.axes >= 2 || (words.axes == 1 && words.others > 0 && !has_tap_word);
        Self {
            end: start.saturating_add(length),
            is_code: words.preparatory || words.numbered || moves,
            has_tap_word,
            has_speed: words.speed,
            has_tool: words.tool,
        }
    }
}

/// The words of a program in a stretch: a letter and a number that stand alone.
#[derive(Default)]
struct Words {
    preparatory: bool,
    numbered: bool,
    speed: bool,
    tool: bool,
    axes: u32,
    others: u32,
}

impl Words {
    fn of(mut stretch: &[u8]) -> Self {
        let mut words = Self::default();
        let mut first = true;
        while let [byte, after @ ..] = stretch {
            if matches!(byte, b' ' | b'\t' | b'/') {
                stretch = after;
                continue;
            }
            if let Some(letter) = address(stretch) {
                words.count(letter, first);
            }
            first = false;
            let token = stretch.iter().take_while(|byte| !matches!(byte, b' ' | b'\t')).count();
            stretch = stretch.get(token..).unwrap_or(&[]);
        }
        words
    }

    fn count(&mut self, letter: u8, first: bool) {
        match letter {
            b'G' => self.preparatory = true,
            b'N' | b'O' => self.numbered |= first,
            b'X' | b'Y' | b'Z' | b'I' | b'J' | b'K' | b'A' | b'B' | b'C' | b'U' | b'V' | b'W' => {
                self.axes = self.axes.saturating_add(1);
            }
            b'M' => {}
            _ => self.others = self.others.saturating_add(1),
        }
        self.speed |= letter == b'S';
        self.tool |= letter == b'T';
    }
}

/// The letter, if a token is a letter and a number: `G84`, `Z-10.`, `F914.4`, and what is joined to it.
fn address(token: &[u8]) -> Option<u8> {
    let [letter, rest @ ..] = token else { return None };
    if !letter.is_ascii_alphabetic() {
        return None;
    }
    let rest = rest.strip_prefix(b"-").or(rest.strip_prefix(b"+")).unwrap_or(rest);
    let figures = rest.iter().take_while(|byte| matches!(byte, b'0'..=b'9' | b'.')).count();
    let (number, after) = rest.split_at_checked(figures)?;
    let has_digit = number.iter().any(u8::is_ascii_digit);
    // `G1/4` and `N10-32` are no words of a program; `G84X10` are two.
    let ends = match after {
        [] => true,
        [next, behind @ ..] => {
            matches!(next, b' ' | b'\t' | b',' | b':')
                || (next.is_ascii_alphabetic() && matches!(behind, [b'0'..=b'9' | b'-' | b'+' | b'.', ..]))
        }
    };
    (has_digit && ends).then_some(letter.to_ascii_uppercase())
}
