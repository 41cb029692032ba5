//! Tolerance classes: which exist for a form, and the side each belongs to.

use crate::engagement_group::EngagementGroup;
use crate::error::{Code, Error, Field};
use crate::form::Form;
use crate::text::Text;
use crate::thread::Side;

/// A tolerance class as written, `6H`, `5g6g`, `2B`, with the length of engagement that stands behind it, `7H-L`.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct ToleranceClass {
    text: Text<6>,
    engagement: EngagementGroup,
    side: Option<Side>,
}

impl ToleranceClass {
    /// A class that exists for this form; behind one of M, MJ and Tr may stand `-S`, `-N` or `-L`.
    ///
    /// # Errors
    /// [`Code::UnknownClass`] with the classes that do exist.
    ///
    /// # Source
    /// ISO 965-1:2013 (grades 3 to 9, positions e to h, G and H); ASME B1.1-2003 (1A to 3B); ISO 228-1:2000
    /// (A, B external); ASME B1.20.1 (NPSM 2A, 2B) and ASME B1.20.3 (NPTF 1, 2); ISO 2903, ISO 1501, ASME B1.5, B1.8,
    /// B1.9, B1.15, BS 84, from memory; BS 93: Machinery's Handbook 31 p. 2115.
    pub fn new(form: Form, text: &[u8]) -> Result<Self, Error> {
        let (text, engagement) =
            if form.has_engagement_groups() { split_engagement(text) } else { (text, EngagementGroup::Normal) };
        let (side, hint) = match form {
            Form::Metric => (metric_class_side(text).map(Some), METRIC_CLASSES),
            Form::MetricJ => (metric_class_side(text).map(Some), METRIC_J_CLASSES),
            Form::Unified => (unified_class_side(text).map(Some), UNIFIED_CLASSES),
            Form::UnifiedR => (unified_class_side(text).filter(of_external).map(Some), UNR_CLASSES),
            Form::UnifiedJ => (unified_class_side(text).filter(|_| !text.starts_with(b"1")).map(Some), UNJ_CLASSES),
            Form::G => (matches!(text, b"A" | b"a" | b"B" | b"b").then_some(Some(Side::External)), G_CLASSES),
            Form::Npsm => (unified_class_side(text).filter(|_| text.starts_with(b"2")).map(Some), NPSM_CLASSES),
            Form::Nptf => (matches!(text, b"1" | b"2").then_some(None), NPTF_CLASSES),
            Form::Miniature => (miniature_class_side(text).map(Some), MINIATURE_CLASSES),
            Form::Trapezoidal => (trapezoidal_class_side(text).map(Some), TRAPEZOIDAL_CLASSES),
            Form::Acme => (is_acme_class(text).then_some(None), ACME_CLASSES),
            Form::StubAcme => (matches!(text, b"2G" | b"2g").then_some(None), STUB_ACME_CLASSES),
            Form::Buttress | Form::PullButtress => (buttress_class_side(text), BUTTRESS_CLASSES),
            Form::Whitworth => (word_class(text, &WHITWORTH).map(|(_, side)| side), WHITWORTH_CLASSES),
            Form::Ba => (word_class(text, &BA).map(|(_, side)| side), BA_CLASSES),
            Form::Npt | Form::Npsc | Form::Npsf | Form::R | Form::Rp | Form::Rc => {
                (None, "none: this pipe thread has no tolerance classes")
            }
        };
        let case_tells = matches!(form, Form::Metric | Form::MetricJ | Form::Trapezoidal | Form::Miniature);
        let written = match word_class(text, &WHITWORTH) {
            Some((word, _)) => Text::holding(word),
            None => Text::ascii(text, !case_tells),
        };
        match (side, written) {
            (Some(side), Some(text)) => Ok(Self { text, engagement, side }),
            _ => Err(Error::new(Code::UnknownClass, Field::ToleranceClass).hint_text(hint)),
        }
    }

    /// The class as text, without a length of engagement.
    #[must_use]
    pub fn as_str(&self) -> &str {
        self.text.as_str()
    }

    /// The class and, if it is not normal, the length of engagement behind it: `7H-L`.
    #[must_use]
    pub fn text(&self) -> Text<6> {
        let mut text = self.text;
        let suffix = match self.engagement {
            EngagementGroup::Short => "-S",
            EngagementGroup::Normal => "",
            EngagementGroup::Long => "-L",
        };
        // The classes of these forms have four bytes at most.
        let _fits = text.push(suffix);
        text
    }

    /// How long the thread engages, as the designation says; normal if it says nothing.
    #[must_use]
    pub const fn engagement(&self) -> EngagementGroup {
        self.engagement
    }

    /// The side that the class belongs to; `None` for the classes of NPTF, which are for both.
    #[must_use]
    pub const fn side(&self) -> Option<Side> {
        self.side
    }
}

/// `7H-L`: the class, and the length of engagement behind it.
#[inline(never)]
fn split_engagement(text: &[u8]) -> (&[u8], EngagementGroup) {
    match text {
        [class @ .., b'-', b'S' | b's'] => (class, EngagementGroup::Short),
        [class @ .., b'-', b'N' | b'n'] => (class, EngagementGroup::Normal),
        [class @ .., b'-', b'L' | b'l'] => (class, EngagementGroup::Long),
        _ => (text, EngagementGroup::Normal),
    }
}

const METRIC_J_CLASSES: &str = "internal 4H5H, 4H6H, 6H, 4G6G and the like, external 4h6h, 4g6g, 6g and the like";
const UNR_CLASSES: &str = "external 1A 2A 3A: the hole for UNR is UN";
const UNJ_CLASSES: &str = "internal 2B 3B, external 2A 3A";
const MINIATURE_CLASSES: &str = "internal 3G5 3G6 4H5 4H6, external 5h3";
pub(crate) const TRAPEZOIDAL_CLASSES: &str = "internal 7H 8H 9H, external 7e 8e 8c 9c";
const ACME_CLASSES: &str = "2G 3G 4G, centralizing 2C 3C 4C 5C 6C";
const STUB_ACME_CLASSES: &str = "2G";
const BUTTRESS_CLASSES: &str = "2 or 3; internal 2B 3B, external 2A 3A";
const WHITWORTH_CLASSES: &str = "external close, medium, free; internal medium or normal, with the side said";
const BA_CLASSES: &str = "external close, normal; internal normal, the one class of holes, with the side said";
/// The classes of BS 84 and BS 93 are words; `medium` and `normal` of both sides do not say which.
const WHITWORTH: [(&str, Option<Side>); 4] = [
    ("close", Some(Side::External)),
    ("medium", None),
    ("free", Some(Side::External)),
    ("normal", Some(Side::Internal)),
];
const BA: [(&str, Option<Side>); 2] = [("close", Some(Side::External)), ("normal", None)];

/// A class that is a word, whatever its case.
#[inline(never)]
fn word_class(text: &[u8], words: &[(&'static str, Option<Side>)]) -> Option<(&'static str, Option<Side>)> {
    words.iter().copied().find(|(word, _)| text.eq_ignore_ascii_case(word.as_bytes()))
}

const METRIC_CLASSES: &str = "internal 4H to 8H or 4G to 8G, external 3h to 9h with e f g h, such as 6H or 5g6g";
const UNIFIED_CLASSES: &str = "internal 1B 2B 3B, external 1A 2A 3A";
const G_CLASSES: &str = "A or B for the external thread; the internal one has no class: G1/2";
const NPSM_CLASSES: &str = "internal 2B, external 2A";
const NPTF_CLASSES: &str = "1 or 2";

#[inline(never)]
fn metric_class_side(text: &[u8]) -> Option<Side> {
    let part = |part: &[u8]| match part {
        [b'4'..=b'8', b'G' | b'H'] => Some(Side::Internal),
        [b'3'..=b'9', b'e' | b'f' | b'g' | b'h'] => Some(Side::External),
        _ => None,
    };
    if text.len() <= 2 {
        return part(text);
    }
    let (pitch, crest) = text.split_at_checked(2)?;
    let side = part(pitch)?;
    // The crest diameter of an external thread has grades 4, 6 and 8 only (ISO 965-1, table of T_d).
    let crest_grade_exists = side == Side::Internal || matches!(crest.first(), Some(b'4' | b'6' | b'8'));
    (part(crest) == Some(side) && crest_grade_exists).then_some(side)
}

#[inline(never)]
fn unified_class_side(text: &[u8]) -> Option<Side> {
    match text {
        [b'1'..=b'3', b'A' | b'a'] => Some(Side::External),
        [b'1'..=b'3', b'B' | b'b'] => Some(Side::Internal),
        _ => None,
    }
}

fn of_external(side: &Side) -> bool {
    *side == Side::External
}

/// ISO 1501: the grades of pitch and crest diameter about the position of both.
fn miniature_class_side(text: &[u8]) -> Option<Side> {
    match text {
        b"3G5" | b"3G6" | b"4H5" | b"4H6" => Some(Side::Internal),
        b"5h3" => Some(Side::External),
        _ => None,
    }
}

/// ISO 2903 (the classes of all qualities).
fn trapezoidal_class_side(text: &[u8]) -> Option<Side> {
    match text {
        b"7H" | b"8H" | b"9H" => Some(Side::Internal),
        b"7e" | b"8e" | b"8c" | b"9c" => Some(Side::External),
        _ => None,
    }
}

/// ASME B1.5: general purpose, and centralizing.
fn is_acme_class(text: &[u8]) -> bool {
    matches!(text, [b'2'..=b'4', b'G' | b'g'] | [b'2'..=b'6', b'C' | b'c'])
}

/// ASME B1.9: a bare 2 or 3 is for both sides.
fn buttress_class_side(text: &[u8]) -> Option<Option<Side>> {
    match text {
        b"2" | b"3" => Some(None),
        [b'2' | b'3', ..] => unified_class_side(text).map(Some),
        _ => None,
    }
}
