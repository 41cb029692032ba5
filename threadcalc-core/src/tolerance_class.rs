//! Tolerance classes: which exist for a form, and the side each belongs to.

use crate::error::{Code, Error, Field};
use crate::form::Form;
use crate::text::Text;
use crate::thread::Side;

/// A tolerance class as written, `6H`, `5g6g`, `2B`.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct ToleranceClass {
    text: Text<4>,
    side: Option<Side>,
}

impl ToleranceClass {
    /// A class that exists for this form.
    ///
    /// # Errors
    /// [`Code::UnknownClass`] with the classes that do exist.
    ///
    /// # Source
    /// ISO 965-1:2013 (grades 3 to 9, positions e to h, G and H); ASME B1.1-2003 (1A to 3B); ISO 228-1:2000
    /// (A, B external); ASME B1.20.1 (NPSM 2A, 2B) and ASME B1.20.3 (NPTF 1, 2), from memory.
    pub fn new(form: Form, text: &[u8]) -> Result<Self, Error> {
        let (side, hint) = match form {
            Form::Metric => (metric_class_side(text).map(Some), METRIC_CLASSES),
            Form::Unified => (unified_class_side(text).map(Some), UNIFIED_CLASSES),
            Form::G => (matches!(text, b"A" | b"a" | b"B" | b"b").then_some(Some(Side::External)), G_CLASSES),
            Form::Npsm => (unified_class_side(text).filter(|_| text.starts_with(b"2")).map(Some), NPSM_CLASSES),
            Form::Nptf => (matches!(text, b"1" | b"2").then_some(None), NPTF_CLASSES),
            _ => (None, "none: this pipe thread has no tolerance classes"),
        };
        let written = Text::ascii(text, form != Form::Metric);
        match (side, written) {
            (Some(side), Some(text)) => Ok(Self { text, side }),
            _ => Err(Error::new(Code::UnknownClass, Field::ToleranceClass).hint_text(hint)),
        }
    }

    /// The class as text.
    #[must_use]
    pub fn as_str(&self) -> &str {
        self.text.as_str()
    }

    /// The class as a text held inline.
    #[must_use]
    pub const fn text(&self) -> Text<4> {
        self.text
    }

    /// The side that the class belongs to; `None` for the classes of NPTF, which are for both.
    #[must_use]
    pub const fn side(&self) -> Option<Side> {
        self.side
    }
}

const METRIC_CLASSES: &str = "internal 4H to 8H or 4G to 8G, external 3h to 9h with e f g h, such as 6H or 5g6g";
const UNIFIED_CLASSES: &str = "internal 1B 2B 3B, external 1A 2A 3A";
const G_CLASSES: &str = "A or B for the external thread; the internal one has no class: G1/2";
const NPSM_CLASSES: &str = "internal 2B, external 2A";
const NPTF_CLASSES: &str = "1 or 2";

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

fn unified_class_side(text: &[u8]) -> Option<Side> {
    match text {
        [b'1'..=b'3', b'A' | b'a'] => Some(Side::External),
        [b'1'..=b'3', b'B' | b'b'] => Some(Side::Internal),
        _ => None,
    }
}
