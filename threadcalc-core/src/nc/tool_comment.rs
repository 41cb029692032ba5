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
/// A tap has a chamfer.
const OF_TAPS: [&[u8]; 1] = [b"CHAMFER"];
const FORMS: [&[u8]; 8] =
    [b"FORM", b"FORMING", b"ROLL", b"ROLLING", b"FLUTELESS", b"FORMER", b"GEWINDEFORMER", b"FURCHER"];

/// Twist drills that make holes to tap, for the guess at a unit.
const LEAST_DRILL_MM: Length = Length::parts(6, 10);
const MOST_DRILL_MM: Length = Length::parts(80, 1);

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
        let (mut kind, mut spot, mut form, mut before) = (None, false, false, None);
        for word in words(text) {
            spot |= is_one_of(word, &SPOTS);
            // `FORM C` is a chamfer's form, not a kind of tap.
            form |= is_one_of(word, &FORMS) && !is_chamfer_form(text, word);
            let named = kind_of(word);
            // The first word says what the tool is, but a tap drill is a drill and a thread mill a mill.
            let is_rest = kind.is_none() || (before == Some(ToolKind::Tap) && !is_one_of(word, &OF_TAPS));
            kind = named.filter(|_| is_rest).or(kind);
            before = named;
        }
        let kind = match kind {
            Some(ToolKind::Drill) if spot => Some(ToolKind::SpotDrill),
            Some(ToolKind::Tap) if form => Some(ToolKind::FormTap),
            None if spot => Some(ToolKind::SpotDrill),
            kind => kind,
        };
        let drill_mm = if kind == Some(ToolKind::Drill) { diameter(text, unit) } else { None };
        Self { kind, drill_mm }
    }

    /// Reads a line of a tool list, which may stand before the program says its unit: then a diameter without a mark
    /// is in the unit in which such a drill exists, and not known where it does in both.
    pub(super) fn read_listed(text: &[u8], unit: Option<Unit>) -> Self {
        if unit.is_some() {
            return Self::read(text, unit);
        }
        let (mm, inch) = (Self::read(text, Some(Unit::Mm)), Self::read(text, Some(Unit::Inch)));
        let exists = |read: &Self| read.drill_mm.filter(|mm| (LEAST_DRILL_MM..=MOST_DRILL_MM).contains(mm));
        let drill_mm = match (exists(&mm), exists(&inch)) {
            (Some(mm), Some(inch)) => (mm == inch).then_some(mm),
            (mm, inch) => mm.or(inch),
        };
        Self { drill_mm, ..mm }
    }
}

/// What one word says that a tool is.
fn kind_of(word: &[u8]) -> Option<ToolKind> {
    if is_one_of(word, &OTHERS) {
        Some(ToolKind::Other)
    } else if is_one_of(word, &DRILLS) {
        Some(ToolKind::Drill)
    } else {
        is_tap_word(word).then_some(ToolKind::Tap)
    }
}

fn is_one_of(word: &[u8], list: &[&[u8]]) -> bool {
    list.iter().any(|known| word.eq_ignore_ascii_case(known))
}

fn words(text: &[u8]) -> impl Iterator<Item = &[u8]> {
    text.split(|byte| !byte.is_ascii_alphabetic()).filter(|word| !word.is_empty())
}

/// Whether one letter alone stands behind the word.
fn is_chamfer_form(text: &[u8], word: &[u8]) -> bool {
    let mut later = words(text).skip_while(|other| !other.eq_ignore_ascii_case(word)).skip(1);
    word.eq_ignore_ascii_case(b"FORM") && later.next().is_some_and(|next| matches!(next, [b'A'..=b'F' | b'a'..=b'f']))
}

/// The diameter of a drill in a text: `6.8`, `.201`, `13/64`, `#7`, `D6.8`; a whole number only behind the word for
/// the drill, since the number of a tool, of its flutes and its length are written too.
fn diameter(text: &[u8], unit: Option<Unit>) -> Option<Length> {
    let tokens = || text.split(|byte| matches!(byte, b' ' | b'\t' | b':' | b'=' | b'(' | b')' | b';'));
    if let Some(found) = tokens().filter(|token| !is_whole(token)).find_map(|token| of_token(token, unit)) {
        return Some(found);
    }
    let mut later = tokens().filter(|token| !token.is_empty());
    later.by_ref().find(|token| is_one_of(token, &DRILLS))?;
    of_token(later.next()?, unit)
}

fn is_whole(token: &[u8]) -> bool {
    token.iter().all(u8::is_ascii_digit)
}

fn of_token(token: &[u8], unit: Option<Unit>) -> Option<Length> {
    let token = match token {
        [b'D' | b'd' | 0xD8, rest @ ..] | [0xC3, 0x98, rest @ ..] => rest,
        all => all,
    };
    let token = token.strip_suffix(b",").or(token.strip_suffix(b".")).unwrap_or(token);
    if token.first() == Some(&b'#') || (token.contains(&b'/') && token.first().is_some_and(u8::is_ascii_digit)) {
        return Drill::read(token).ok().map(|drill| drill.diameter_mm());
    }
    let is_part = |byte: &&u8| byte.is_ascii_digit() || matches!(byte, b'.' | b',');
    let (number, mark) = token.split_at_checked(token.iter().take_while(is_part).count())?;
    let is_mm = mark.eq_ignore_ascii_case(b"mm");
    let is_inch = mark == b"\"" || mark.eq_ignore_ascii_case(b"in") || number.first() == Some(&b'.');
    if number.is_empty() || !(is_mm || is_inch || mark.is_empty()) {
        return None;
    }
    let value = with_point(number).filter(|value| value.is_positive())?;
    if is_mm || (!is_inch && unit != Some(Unit::Inch)) {
        return Some(value);
    }
    value.times(Length::INCH).ok()
}

/// A number with a point or, as half the world writes it, a comma.
fn with_point(number: &[u8]) -> Option<Length> {
    let mut written = [0_u8; 12];
    let written = written.get_mut(..number.len())?;
    written.iter_mut().zip(number).for_each(|(to, from)| *to = if *from == b',' { b'.' } else { *from });
    read_number(written).ok()
}
