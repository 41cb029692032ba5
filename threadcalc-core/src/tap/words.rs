//! The words that stand on a tap's shank beside its thread.

use super::chamfer::ChamferForm;
use super::class::IsoTapClass;
use super::limit::{LimitLetter, TapLimit};
use crate::form::Form;
use crate::thread::Hand;
use crate::tolerance_class::ToleranceClass;

/// What one word says.
#[derive(Clone, Copy)]
pub(super) enum Word {
    Hand(Hand),
    /// The class of thread that the tap cuts; true if it is within the maker's own limits, `6HX`.
    Class(ToleranceClass, bool),
    /// A limit; true if the G for ground stands before it.
    Limit(TapLimit, bool),
    IsoClass(IsoTapClass),
    Chamfer(ChamferForm),
    Ground,
    WireInsert,
    /// `ISO` (true) or `DIN`, which a number follows.
    Standard(bool),
    /// `FORM`, which the letter of a chamfer may follow.
    Form,
    /// Known, and of no account here: material, coating, flutes.
    Nothing,
}

/// Materials, coatings and builds; nothing is asked of them.
const NO_ACCOUNT: [&[u8]; 32] = [
    b"HSS",
    b"HSSE",
    b"HSS-E",
    b"HSS-PM",
    b"HSSE-PM",
    b"HSS-E-PM",
    b"HSSCO",
    b"HSS-CO",
    b"HSS-CO5",
    b"HSSCO5",
    b"HSS-G",
    b"PM",
    b"CO",
    b"CO5",
    b"CO8",
    b"VHM",
    b"CARBIDE",
    b"VAP",
    b"TIN",
    b"TICN",
    b"TIALN",
    b"ALCRN",
    b"CRN",
    b"NIT",
    b"TAP",
    b"HAND",
    b"FL",
    b"FLUTE",
    b"FLUTES",
    b"SPIRAL",
    b"POINT",
    b"TOL",
];

/// Names of chamfers as they are marked.
const CHAMFERS: [(&[u8], ChamferForm); 7] = [
    (b"TAPER", ChamferForm::Taper),
    (b"PLUG", ChamferForm::Plug),
    (b"BOTTOMING", ChamferForm::Bottoming),
    (b"BOTT", ChamferForm::Bottoming),
    (b"SEMI-BOTTOMING", ChamferForm::SemiBottoming),
    (b"SEMIBOTTOMING", ChamferForm::SemiBottoming),
    (b"SEMI-BOTT", ChamferForm::SemiBottoming),
];

/// Reads one word; `None` if it is none of the shank's own, perhaps a part of the thread.
pub(super) fn read(word: &[u8]) -> Option<Word> {
    let is = |known: &[u8]| word.eq_ignore_ascii_case(known);
    if [&b"LH"[..], b"L.H.", b"L.H", b"LEFT", b"LEFT-HAND"].into_iter().any(is) {
        return Some(Word::Hand(Hand::Left));
    }
    if [&b"RH"[..], b"R.H.", b"R.H", b"RIGHT", b"RIGHT-HAND"].into_iter().any(is) {
        return Some(Word::Hand(Hand::Right));
    }
    if is(b"STI") || is(b"EG") {
        return Some(Word::WireInsert);
    }
    if is(b"ISO") || is(b"DIN") {
        return Some(Word::Standard(is(b"ISO")));
    }
    if is(b"FORM") {
        return Some(Word::Form);
    }
    if is(b"GROUND") {
        return Some(Word::Ground);
    }
    if let Some((_, form)) = CHAMFERS.iter().find(|(name, _)| is(name)) {
        return Some(Word::Chamfer(*form));
    }
    if NO_ACCOUNT.iter().any(|known| is(known)) || is_count_of_flutes(word) {
        return Some(Word::Nothing);
    }
    match word {
        [letter] => chamfer_letter(*letter).map(Word::Chamfer),
        [b'I' | b'i', b'S' | b's', b'O' | b'o', rest @ ..] | [b'D' | b'd', b'I' | b'i', b'N' | b'n', rest @ ..] => {
            numbered_standard(rest, is_iso(word))
        }
        _ => class(word).or_else(|| limit(word)),
    }
}

fn is_iso(word: &[u8]) -> bool {
    matches!(word.first(), Some(b'I' | b'i'))
}

/// `ISO2` is a class of tap, `ISO529` and `DIN371` are standards of its body.
pub(super) fn numbered_standard(number: &[u8], iso: bool) -> Option<Word> {
    match number {
        [digit @ b'1'..=b'3'] if iso => {
            IsoTapClass::from_number(i32::from(digit.wrapping_sub(b'0'))).map(Word::IsoClass)
        }
        [b'0'..=b'9', ..] if number.iter().all(|byte| byte.is_ascii_digit() || *byte == b'-') => Some(Word::Nothing),
        _ => None,
    }
}

/// The letter of a chamfer by DIN 2197.
pub(super) fn chamfer_letter(letter: u8) -> Option<ChamferForm> {
    match letter {
        b'A'..=b'F' | b'a'..=b'f' => ChamferForm::from_name(&[letter]),
        _ => None,
    }
}

/// `6H`, `6HX`, `7G`, `2B`, `2BX`, `4H5H`, `2G`.
fn class(word: &[u8]) -> Option<Word> {
    let (class, own) = match word {
        [class @ .., b'X' | b'x'] if matches!(class.len(), 2 | 4) => (class, true),
        _ => (word, false),
    };
    let form = match class {
        [b'4'..=b'8', b'H' | b'G'] => Form::Metric,
        [b'4'..=b'6', b'H' | b'G', b'5' | b'6', b'H' | b'G'] => Form::MetricJ,
        [b'9', b'H'] => Form::Trapezoidal,
        [b'2' | b'3', b'G' | b'g'] => Form::Acme,
        [b'1'..=b'3', b'B' | b'b'] => Form::Unified,
        _ => return None,
    };
    ToleranceClass::new(form, class).ok().map(|class| Word::Class(class, own))
}

/// `H3`, `GH3`, `L1`, `D5`.
fn limit(word: &[u8]) -> Option<Word> {
    let (word, ground) = match word {
        [b'G' | b'g', rest @ ..] => (rest, true),
        _ => (word, false),
    };
    let (letter, digits) = word.split_first()?;
    let letter = LimitLetter::from_name(&[*letter])?;
    if digits.is_empty() || digits.len() > 2 || !digits.iter().all(u8::is_ascii_digit) {
        return None;
    }
    let number = digits.iter().fold(0_u8, |sum, digit| sum.saturating_mul(10).saturating_add(digit & 15));
    TapLimit::new(letter, number).ok().map(|limit| Word::Limit(limit, ground))
}

/// `3FL`, `4FLUTE`, `Z3`.
fn is_count_of_flutes(word: &[u8]) -> bool {
    match word {
        [b'Z' | b'z', b'2'..=b'9'] => true,
        [b'2'..=b'9', rest @ ..] => {
            [&b"FL"[..], b"FLUTE", b"FLUTES"].iter().any(|name| rest.eq_ignore_ascii_case(name))
        }
        _ => false,
    }
}
