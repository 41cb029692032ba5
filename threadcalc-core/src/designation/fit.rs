//! Fits: two threads in one designation, `M8x1.25-6H/6g`, `1/4-20 UNC-2A/2B`, `Rp/R 1/2`.

use super::read::{LONGEST, read};
use crate::cursor::Cursor;
use crate::error::{Code, Error, Field};
use crate::text::placed;
use crate::thread::{Side, Thread};

const EXAMPLES: &str = "a fit such as M8x1.25-6H/6g, 1/4-20 UNC-2A/2B or Rp/R 1/2";

/// Reads a fit: the internal thread, then the external one, whatever their order in the text.
///
/// # Errors
/// Those of [`Thread::read`]; [`Code::Missing`] for a text with one class only, [`Code::Contradiction`]
/// for two classes of one side.
///
/// # Example
/// ```
/// use threadcalc_core::read_fit;
///
/// let (internal, external) = read_fit(b"M8x1.25-6H/6g-LH")?;
/// assert_eq!(internal.to_string(), "M8x1.25-6H-LH");
/// assert_eq!(external.to_string(), "M8x1.25-6g-LH");
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// ISO 965-1:2013 (designation of a fit); ISO 7-1:1994 (Rp/R, Rc/R); ASME B1.1-2003; from memory.
pub fn read_fit(text: &[u8]) -> Result<(Thread, Thread), Error> {
    if let Some(fit) = jointing_pair(text) {
        return fit;
    }
    let missing = Error::new(Code::Missing, Field::ToleranceClass).hint_text(EXAMPLES);
    if read(text).is_ok() {
        return Err(missing.at_byte(text.len()));
    }
    // The slash of a fit is the last one; those of a size stand before it.
    let slash = placed(text.iter()).filter(|(_, byte)| **byte == b'/').last().map(|(place, _)| place);
    let Some(slash) = slash.filter(|_| text.len() <= LONGEST) else {
        return read(text).and(Err(missing));
    };
    let mut cursor = Cursor::new(text, Field::Designation);
    cursor.go_back_to(slash.saturating_add(1));
    cursor.skip_blanks();
    let class_place = cursor.place();
    while cursor.peek().is_some_and(|byte| byte.is_ascii_alphanumeric()) {
        cursor.skip(1);
    }
    let class = cursor.since(class_place);
    let first = read_joined(text.get(..slash).unwrap_or(&[]), cursor.rest(), cursor.place())?;
    if first.tolerance_class().is_none() {
        return Err(missing.at_byte(slash));
    }
    let second = first.without_class().with_class(class).map_err(|error| error.at_byte(class_place))?;
    match (first.side(), second.side()) {
        (Some(Side::Internal), Some(Side::External)) => Ok((first, second)),
        (Some(Side::External), Some(Side::Internal)) => Ok((second, first)),
        _ => Err(Error::new(Code::Contradiction, Field::ToleranceClass)
            .at_byte(class_place)
            .hint_text("one class of the hole and one of the screw, as in 6H/6g")),
    }
}

/// Reads the text without the second class; offsets behind it are moved back to the whole text.
fn read_joined(head: &[u8], tail: &[u8], tail_place: usize) -> Result<Thread, Error> {
    let mut joined = [0; LONGEST];
    let mut length = 0_usize;
    for (place, byte) in joined.iter_mut().zip(head.iter().chain(tail)) {
        *place = *byte;
        length = length.saturating_add(1);
    }
    read(joined.get(..length).unwrap_or(&[])).map_err(|error| match error.at() {
        Some(at) if at as usize >= head.len() => {
            error.at_byte((at as usize).saturating_sub(head.len()).saturating_add(tail_place))
        }
        _ => error,
    })
}

/// `Rp/R 1/2`, `Rc/R 1/2`: the internal thread first.
fn jointing_pair(text: &[u8]) -> Option<Result<(Thread, Thread), Error>> {
    let mut cursor = Cursor::new(text, Field::Designation);
    cursor.skip_blanks();
    let start = cursor.place();
    if !(cursor.take_word(b"RP") || cursor.take_word(b"RC")) || !cursor.take(b'/') {
        return None;
    }
    let name = text.get(start..cursor.place().saturating_sub(1))?;
    let external_place = cursor.place();
    if !cursor.take_word(b"R") || text.len() > LONGEST {
        return None;
    }
    let pair = || {
        let internal = read_joined(name, cursor.rest(), cursor.place())?;
        let external = read(text.get(external_place..).unwrap_or(&[]))?;
        Ok((internal, external))
    };
    Some(pair())
}
