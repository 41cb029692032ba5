//! What the comment of a tool says that it is.

use super::options::ToolKind;
use crate::comment::is_tap_word;
use crate::drill::Drill;
use crate::feed::Unit;
use crate::length::Length;
use crate::number::read_number;

/// Drills in the languages that programs are written in; spot drills by what stands before.
const DRILLS: [&[u8]; 8] = [b"DRILL", b"DRL", b"DR", b"BOHRER", b"SPIRALBOHRER", b"FORET", b"BROCA", b"PUNTA"];
const SPOTS: [&[u8]; 8] = [b"SPOT", b"CENTER", b"CENTRE", b"CENTERDRILL", b"SPOTDRILL", b"ANBOHRER", b"NC", b"POINTER"];
const OTHERS: [&[u8]; 15] = [
    b"ENDMILL",
    b"MILL",
    b"MILLING",
    b"FACEMILL",
    b"THREADMILL",
    b"FRAESER",
    b"FRAISE",
    b"FRESA",
    b"REAMER",
    b"REIBAHLE",
    b"CHAMFER",
    b"COUNTERSINK",
    b"BORING",
    b"PROBE",
    b"CUTTER",
];
const FORMS: [&[u8]; 8] =
    [b"FORM", b"FORMING", b"ROLL", b"ROLLING", b"FLUTELESS", b"FORMER", b"GEWINDEFORMER", b"FURCHER"];

/// What a comment says of its tool.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(super) struct ToolText {
    pub kind: Option<ToolKind>,
    /// The diameter of a drill, in mm.
    pub drill_mm: Option<Length>,
}

impl ToolText {
    /// Reads the comment of a tool; a diameter without a mark is in the program's unit.
    pub(super) fn read(text: &[u8], unit: Option<Unit>) -> Self {
        let (mut tap, mut drill, mut spot, mut other, mut form) = (false, false, false, false, false);
        for word in words(text) {
            let is = |list: &[&[u8]]| list.iter().any(|known| word.eq_ignore_ascii_case(known));
            tap |= is_tap_word(word);
            drill |= is(&DRILLS);
            spot |= is(&SPOTS);
            other |= is(&OTHERS);
            // `FORM C` is a chamfer's form, not a kind of tap.
            form |= is(&FORMS) && !is_chamfer_form(text, word);
        }
        let kind = if other {
            Some(ToolKind::Other)
        } else if drill {
            Some(if spot { ToolKind::SpotDrill } else { ToolKind::Drill })
        } else if tap {
            Some(if form { ToolKind::FormTap } else { ToolKind::Tap })
        } else if spot {
            Some(ToolKind::SpotDrill)
        } else {
            None
        };
        let drill_mm = if kind == Some(ToolKind::Drill) { diameter(text, unit) } else { None };
        Self { kind, drill_mm }
    }
}

fn words(text: &[u8]) -> impl Iterator<Item = &[u8]> {
    text.split(|byte| !byte.is_ascii_alphabetic()).filter(|word| !word.is_empty())
}

/// Whether one letter alone stands behind the word.
fn is_chamfer_form(text: &[u8], word: &[u8]) -> bool {
    let mut later = words(text).skip_while(|other| !other.eq_ignore_ascii_case(word)).skip(1);
    word.eq_ignore_ascii_case(b"FORM") && later.next().is_some_and(|next| matches!(next, [b'A'..=b'F' | b'a'..=b'f']))
}

/// The first diameter of a text: `6.8`, `.201`, `13/64`, `#7`, `D6.8`.
fn diameter(text: &[u8], unit: Option<Unit>) -> Option<Length> {
    let mut tokens = text.split(|byte| matches!(byte, b' ' | b'\t' | b',' | b':' | b'=' | b'(' | b')'));
    tokens.find_map(|token| of_token(token, unit))
}

fn of_token(token: &[u8], unit: Option<Unit>) -> Option<Length> {
    let token = match token {
        [b'D' | b'd' | 0xD8, rest @ ..] | [0xC3, 0x98, rest @ ..] => rest,
        all => all,
    };
    if token.first() == Some(&b'#') || (token.contains(&b'/') && token.first().is_some_and(u8::is_ascii_digit)) {
        return Drill::read(token).ok().map(|drill| drill.diameter_mm());
    }
    let length = token.iter().take_while(|byte| byte.is_ascii_digit() || **byte == b'.').count();
    let (number, mark) = token.split_at_checked(length)?;
    // A whole number alone may be a tool's number or a length: only a decimal or a unit makes it a diameter.
    let is_mm = mark.eq_ignore_ascii_case(b"mm");
    let is_inch = mark == b"\"" || mark.eq_ignore_ascii_case(b"in") || number.first() == Some(&b'.');
    if number.is_empty() || !(is_mm || is_inch || mark.is_empty()) {
        return None;
    }
    let value = read_number(number).ok().filter(|value| value.is_positive())?;
    if is_mm || (!is_inch && unit != Some(Unit::Inch)) {
        return Some(value);
    }
    value.times(Length::INCH).ok()
}
