//! Sizes of Unified threads: `1/4`, `#10`, `No. 10`, `1-1/4`, `.250`, `10 (.190)`.

use super::read::{closes, skip_separator, unreadable};
use crate::cursor::Cursor;
use crate::error::{Code, Error, Field};
use crate::form::Form;
use crate::length::Length;
use crate::series;

/// A size as written: what a bare whole number means depends on the pitch.
pub(super) enum UnifiedSize {
    Inches(Length),
    Number(i64),
    Bare(i64),
}

impl UnifiedSize {
    /// The diameter in millimetres.
    pub(super) fn diameter(&self, pitch: Length) -> Result<Length, Error> {
        match self {
            Self::Inches(inches) => inches.times(Length::INCH),
            Self::Number(number) => number_diameter(*number),
            Self::Bare(number) => {
                let inches = Length::integer(*number).times(Length::INCH)?;
                if is_number_size(*number, inches, pitch) { number_diameter(*number) } else { Ok(inches) }
            }
        }
    }
}

impl UnifiedSize {
    /// What the size may be: a number size, inches, or either.
    pub(super) fn readings(&self) -> (Option<Length>, Option<Length>) {
        let inches = |inches: Length| inches.times(Length::INCH).ok();
        match self {
            Self::Inches(size) => (None, inches(*size)),
            Self::Number(number) => (number_diameter(*number).ok(), None),
            Self::Bare(number) => (number_diameter(*number).ok(), inches(Length::integer(*number))),
        }
    }

    /// The diameter in millimetres of a size that can only be in inches.
    pub(super) fn in_inches(&self) -> Result<Length, Error> {
        match self {
            Self::Inches(inches) => inches.times(Length::INCH),
            Self::Bare(whole) => Length::integer(*whole).times(Length::INCH),
            Self::Number(number) => Err(Error::new(Code::Unreadable, Field::Designation)
                .got(*number as f64)
                .hint_text("a size in inches, as in 1 1/2-4 ACME; number sizes are Unified and BA")),
        }
    }

    /// The number of a size that is one or may be one.
    pub(super) const fn number(&self) -> Option<i64> {
        match self {
            Self::Bare(number) | Self::Number(number) => Some(*number),
            Self::Inches(_) => None,
        }
    }

    /// The nominal pipe size in inches.
    pub(super) fn of_pipe(&self, place: usize) -> Result<Length, Error> {
        match self {
            Self::Inches(inches) => Ok(*inches),
            Self::Bare(number) => Ok(Length::integer(*number)),
            Self::Number(_) => Err(Error::new(Code::Unreadable, Field::Designation)
                .at_byte(place)
                .hint_text("a pipe size is inches, as in 1/4-18 NPT")),
        }
    }
}

/// ASME B1.1: number sizes 0 to 12 are 0.060 in + 0.013 in × number.
#[inline(never)]
fn number_diameter(number: i64) -> Result<Length, Error> {
    let thousandths = number.checked_mul(13).and_then(|n| n.checked_add(60));
    match thousandths {
        Some(thousandths) if (0..=12).contains(&number) => Length::new(thousandths, 1000)?.times(Length::INCH),
        _ => Err(Error::new(Code::OutOfRange, Field::Designation)
            .got(number as f64)
            .within(0.0, 12.0)
            .hint_text("a number size from 0 to 12")),
    }
}

/// Whether a bare whole number before a pitch is a number size (10-32) and not inches (1-8).
///
/// The reading that a standard series lists wins; with neither listed, pitches of 24 threads per
/// inch and finer belong to the number sizes, which have no coarser ones.
#[inline(never)]
pub(crate) fn is_number_size(number: i64, inches: Length, pitch: Length) -> bool {
    let listed = |diameter| series::place(Form::Unified, diameter, pitch).1;
    match number_diameter(number) {
        Err(_) => false,
        Ok(diameter) if listed(diameter) => true,
        Ok(_) => {
            !listed(inches) && pitch.times(Length::integer(24)).is_ok_and(|twenty_four| twenty_four <= Length::INCH)
        }
    }
}

/// The diameter in millimetres of a size text, whose bare numbers are read by the pitch.
pub(crate) fn unified_diameter(size: &[u8], pitch: Length) -> Result<Length, Error> {
    let mut cursor = Cursor::new(size, Field::Diameter);
    cursor.skip_blanks();
    let read = unified_size(&mut cursor)?;
    cursor.skip_blanks();
    if !cursor.is_at_end() {
        return Err(cursor.error(Code::Unreadable).hint_text("a size such as 1/4, #10, 1 1/4 or 0.3"));
    }
    read.diameter(pitch)
}

pub(super) fn unified_size(cursor: &mut Cursor<'_>) -> Result<UnifiedSize, Error> {
    let numbered = take_number_mark(cursor);
    cursor.skip_blanks();
    if !numbered && matches!(cursor.peek(), Some(b'N' | b'n')) {
        return Err(unreadable(cursor));
    }
    let start = cursor.place();
    let size = if numbered {
        let number = cursor.whole_number()?;
        UnifiedSize::Number(number.ok_or(cursor.error(Code::Unreadable).hint_text("a number size, as in #10-32"))?)
    } else {
        let value = cursor.size_number()?;
        // `10` may be a number size; a point, a fraction or an inch mark makes it inches.
        let bare = cursor.since(start).iter().all(u8::is_ascii_digit);
        value.whole().filter(|_| bare).map_or(UnifiedSize::Inches(value), UnifiedSize::Bare)
    };
    let zeros = matches!(cursor.since(start), [b'0', b'0', ..]) && !matches!(size, UnifiedSize::Inches(_));
    let size = match size {
        UnifiedSize::Number(number) => {
            number_diameter(number).map_err(|error| error.at_byte(start))?;
            size
        }
        size if cursor.take_inch_word() => inches(size),
        size => size,
    };
    let none_such = Error::new(Code::OutOfRange, Field::Designation)
        .at_byte(start)
        .hint_text("ASME B1.1 has number sizes from 0 to 12, none of 00 or 000");
    let size = with_decimal(cursor, size).map_err(|error| if zeros { none_such } else { error })?;
    if zeros && (cursor.is_at_end() || is_before_pitch(cursor)) {
        return Err(none_such);
    }
    Ok(size)
}

/// Whether figures follow, as threads per inch do.
fn is_before_pitch(cursor: &mut Cursor<'_>) -> bool {
    let start = cursor.place();
    skip_separator(cursor);
    let figures = matches!(cursor.peek(), Some(b'0'..=b'9' | b'.'));
    cursor.go_back_to(start);
    figures
}

/// `#`, `No.`, `Nr.`, `Nº` or `№` before a number size.
fn take_number_mark(cursor: &mut Cursor<'_>) -> bool {
    const SIGNS: [&[u8]; 9] = [
        b"\xE2\x84\x96",
        b"N\xC2\xBA",
        b"N\xC2\xB0",
        b"N\xBA",
        b"N\xB0",
        b"n\xC2\xBA",
        b"n\xC2\xB0",
        b"n\xBA",
        b"n\xB0",
    ];
    match cursor.peek() {
        Some(b'#') => return cursor.take(b'#'),
        Some(b'N' | b'n' | 0x80..) => {}
        _ => return false,
    }
    let found = cursor.take_any(&SIGNS) || cursor.take_word(b"NO") || cursor.take_word(b"NR");
    if found {
        cursor.take(b'.');
    }
    found
}

/// A size with its decimal behind it, `10 (.190)`: it settles whether a bare number is a number size.
fn with_decimal(cursor: &mut Cursor<'_>, size: UnifiedSize) -> Result<UnifiedSize, Error> {
    if !matches!(cursor.peek(), Some(b'(' | b' ' | b'\t' | 0x80..)) {
        return Ok(size);
    }
    let before = cursor.place();
    let Some((decimal, place)) = bracketed_decimal(cursor) else { return Ok(size) };
    // A decimal of three places may be rounded: .312 for 5/16.
    let agrees = |diameter: Option<Length>| {
        let inches = diameter.and_then(|diameter| diameter.over(Length::INCH).ok());
        let off = inches.and_then(|inches| inches.minus(decimal).ok()).map(Length::magnitude);
        off.is_some_and(|off| off <= const { Length::parts(1, 2000) })
    };
    match (size.readings(), &size) {
        ((number, _), UnifiedSize::Bare(bare) | UnifiedSize::Number(bare)) if agrees(number) => {
            Ok(UnifiedSize::Number(*bare))
        }
        ((_, from_inches), _) if agrees(from_inches) => Ok(inches(size)),
        // `#7 (.201) DRILL`: no thread, and the bracket is not ours.
        _ if !is_before_pitch(cursor) => {
            cursor.go_back_to(before);
            Ok(size)
        }
        _ => Err(Error::new(Code::Contradiction, Field::Designation)
            .at_byte(place)
            .got(decimal.to_f64())
            .hint_text("the decimal is not that of the size: No. 10 is .190, 1/4 is .250")),
    }
}

/// `(.190)` and where its number stands; what else a bracket holds is left alone.
fn bracketed_decimal(cursor: &mut Cursor<'_>) -> Option<(Length, usize)> {
    let before = cursor.place();
    cursor.skip_blanks();
    if cursor.take(b'(') {
        cursor.skip_blanks();
        let place = cursor.place();
        let decimal = cursor.decimal().ok();
        if decimal.is_some() && closes(cursor) {
            return decimal.map(|decimal| (decimal, place));
        }
    }
    cursor.go_back_to(before);
    None
}

fn inches(size: UnifiedSize) -> UnifiedSize {
    match size {
        UnifiedSize::Bare(whole) => UnifiedSize::Inches(Length::integer(whole)),
        size => size,
    }
}
