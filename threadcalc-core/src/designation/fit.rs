//! Fits: two threads in one designation, `M8x1.25-6H/6g`, `1/4-20 UNC-2A/2B`, `Rp/R 1/2`.

use super::read::{LONGEST, read};
use crate::cursor::Cursor;
use crate::error::{Code, Error, Field};
use crate::text::placed;
use crate::thread::{Side, Thread};

const EXAMPLES: &str = "a fit such as M8x1.25-6H/6g, 1/4-20 UNC-2A/2B or Rp/R 1/2";

/// Reads a fit: the internal thread, then the external one, whatever their order in the text. A class of both sides,
/// normal of BA, 2G of ACME, gets the side that the other leaves.
///
/// # Errors
/// Those of [`Thread::read`]; [`Code::Missing`] for a text with one class only, [`Code::Contradiction`]
/// for two classes of one side, and for two different ones that are of both sides (2G/3G of ACME).
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
    let head = text.get(..slash).unwrap_or(&[]);
    let not_two = |at| {
        Error::new(Code::Unreadable, Field::Designation).at_byte(at).hint_text("one class on each side of one slash")
    };
    // A text that ends too soon ends at the slash.
    match read(head) {
        Err(error) if error.code() == Code::Empty => return Err(not_two(slash)),
        Err(error) if error.at().is_some_and(|at| at as usize == slash) => return Err(error),
        _ => {}
    }
    let first = read_joined(head, cursor.rest(), cursor.place())
        .map_err(|error| if error.code() == Code::Fit { not_two(slash) } else { error })?;
    if class.is_empty() {
        return Err(not_two(class_place));
    }
    if first.tolerance_class().is_none() {
        return Err(missing.at_byte(slash));
    }
    let second = first.without_class().with_class(class).map_err(|error| error.at_byte(class_place))?;
    one_of_each(first, second).ok_or(
        Error::new(Code::Contradiction, Field::ToleranceClass)
            .at_byte(class_place)
            .hint_text("one class of the hole and one of the screw, as in 6H/6g"),
    )
}

/// The hole, then the screw. A class of both sides is that of the side left over; of two the same it makes no
/// difference which.
fn one_of_each(first: Thread, second: Thread) -> Option<(Thread, Thread)> {
    let other = |side| if side == Side::Internal { Side::External } else { Side::Internal };
    let same = first.tolerance_class() == second.tolerance_class();
    let side = first.side().or(second.side().map(other)).or(same.then_some(Side::Internal))?;
    let (first, second) = (first.with_side(side).ok()?, second.with_side(other(side)).ok()?);
    Some(if side == Side::Internal { (first, second) } else { (second, first) })
}

/// Reads the text without the second class; offsets behind it are moved back to the whole text.
#[inline(never)]
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

/// `Rp/R 1/2`, `Rc/R 1/2`: the internal thread first, or `R/Rp 1/2`.
fn jointing_pair(text: &[u8]) -> Option<Result<(Thread, Thread), Error>> {
    let mut cursor = Cursor::new(text, Field::Designation);
    cursor.skip_blanks();
    let first = jointing_name(&mut cursor)?;
    if !cursor.take(b'/') || text.len() > LONGEST {
        return None;
    }
    let second_place = cursor.place();
    let Some(second) = jointing_name(&mut cursor) else {
        let error = cursor.error(Code::Unreadable).hint_text("the other thread's name, as in Rp/R 1/2");
        return Some(Err(error));
    };
    let is_external = |name: &[u8]| name == b"R";
    if is_external(first) == is_external(second) {
        return Some(Err(Error::new(Code::Contradiction, Field::Designation)
            .at_byte(second_place)
            .hint_text("one of the hole, Rp or Rc, and one of the pipe, R")));
    }
    let read_as = |name: &'static [u8]| read_joined(name, cursor.rest(), cursor.place());
    let (internal, external) = if is_external(first) { (second, first) } else { (first, second) };
    Some(read_as(internal).and_then(|internal| Ok((internal, read_as(external)?))))
}

/// Takes the name of a thread of ISO 7-1.
fn jointing_name(cursor: &mut Cursor<'_>) -> Option<&'static [u8]> {
    let names: [&[u8]; 3] = [b"Rp", b"Rc", b"R"];
    names.into_iter().find(|name| cursor.take_word(name))
}
