//! Pipe designations: `G1/2A`, `Rc 1/2`, `1/4-18 NPT`, `NPT 1/4`, `1 1/4 BSPT`.

use super::read::{read_starts, skip_separator, tail};
use crate::cursor::Cursor;
use crate::error::{Code, Error, Field};
use crate::form::{Form, WrittenAs};
use crate::length::Length;
use crate::series::{self, PipeSize};
use crate::thread::{Thread, pitch_of};

/// A family as written.
#[derive(Clone, Copy)]
pub(super) enum Family {
    Named(Form),
    Open(WrittenAs),
}

impl Family {
    const fn form(self) -> Form {
        match self {
            Self::Named(form) => form,
            Self::Open(written_as) => written_as.form(),
        }
    }
}

/// The names of pipe threads, longer ones before those they begin with.
const FAMILIES: [(&[u8], Family); 15] = [
    (b"NPTF", Family::Named(Form::Nptf)),
    (b"NPSC", Family::Named(Form::Npsc)),
    (b"NPSM", Family::Named(Form::Npsm)),
    (b"NPSF", Family::Named(Form::Npsf)),
    (b"NPT", Family::Named(Form::Npt)),
    (b"BSPP", Family::Open(WrittenAs::Bspp)),
    (b"BSPT", Family::Open(WrittenAs::Bspt)),
    (b"BSP", Family::Open(WrittenAs::Bsp)),
    (b"PF", Family::Open(WrittenAs::Pf)),
    (b"PT", Family::Open(WrittenAs::Pt)),
    (b"PS", Family::Open(WrittenAs::Ps)),
    (b"RC", Family::Named(Form::Rc)),
    (b"RP", Family::Named(Form::Rp)),
    (b"G", Family::Named(Form::G)),
    (b"R", Family::Named(Form::R)),
];

/// Takes the name of a pipe thread that stands here.
pub(super) fn family(cursor: &mut Cursor<'_>) -> Option<Family> {
    if !matches!(cursor.peek()?.to_ascii_uppercase(), b'N' | b'B' | b'P' | b'R' | b'G') {
        return None;
    }
    let (_, family) = FAMILIES.iter().find(|(word, _)| cursor.take_name(word))?;
    if matches!(family, Family::Named(Form::Npt)) && take_open_f(cursor) {
        return Some(Family::Open(WrittenAs::NptOrNptf));
    }
    Some(*family)
}

/// `(F)` behind NPT.
fn take_open_f(cursor: &mut Cursor<'_>) -> bool {
    let start = cursor.place();
    cursor.skip_blanks();
    let open = cursor.take(b'(') && cursor.take_word(b"F") && cursor.take(b')');
    if !open {
        cursor.go_back_to(start);
    }
    open
}

/// Reads from behind the name that stands first.
pub(super) fn read(cursor: &mut Cursor<'_>, family: Family) -> Result<Thread, Error> {
    if cursor.peek() == Some(b'/') && matches!(family, Family::Named(Form::R | Form::Rp | Form::Rc)) {
        return Err(cursor.error(Code::Fit).hint_text("Rp/R and Rc/R name two threads: read_fit"));
    }
    let behind_name = cursor.place();
    let place = skip_separator(cursor);
    let size = cursor.size_number().map_err(|e| with_hint(e, "a pipe size behind the name, as in G1/2 or NPT 1/4"))?;
    if family.form() == Form::Nptf && is_class_and_size(cursor.text_from(behind_name)) {
        return Err(cursor
            .error(Code::Unreadable)
            .at_byte(place)
            .hint_text("class 1 and size 1/4, or size 1 1/4? Write 1/4-18 NPTF-1 or 1 1/4-11.5 NPTF"));
    }
    cursor.take_inch_word();
    take_outside_diameter(cursor);
    let before = cursor.place();
    let pitch_place = skip_separator(cursor);
    // `NPT 1/4 x 18`; but what looks like `G1 X11` comes from a program.
    let crossed = !family.form().is_whitworth_pipe() && cursor.take_times();
    let pitch_place = if crossed { skip_separator(cursor) } else { pitch_place };
    let pitch = if at_pitch(cursor, family) { Some((threads_per_inch(cursor)?, pitch_place)) } else { None };
    if pitch.is_none() {
        cursor.go_back_to(before);
    }
    finish(cursor, family, (size, place), pitch)
}

/// A number behind the size is the threads per inch unless it is the class of NPTF.
fn at_pitch(cursor: &mut Cursor<'_>, family: Family) -> bool {
    let start = cursor.place();
    let starts = read_starts(cursor).is_some();
    cursor.go_back_to(start);
    let number = cursor.whole_number().ok().flatten().filter(|_| !starts);
    let next = cursor.peek();
    cursor.go_back_to(start);
    let is_class = family.form() == Form::Nptf && matches!(number, Some(1 | 2));
    number.is_some() && !is_class && !next.is_some_and(|byte| byte.is_ascii_alphabetic())
}

fn threads_per_inch(cursor: &mut Cursor<'_>) -> Result<Length, Error> {
    let place = cursor.place();
    let threads = threads_number(cursor).map_err(|e| e.hint_text("threads per inch, as in 1/4-18 NPT"))?;
    pitch_of(threads).map_err(|error| error.about(Field::Designation).at_byte(place))
}

/// `14`, `4.5`, `11 1/2`. Of finer pitches only a named series has parts, `20 1/3 UNS`: in `1/4-20 1/2` the
/// fraction is another thing.
pub(super) fn threads_number(cursor: &mut Cursor<'_>) -> Result<Length, Error> {
    let start = cursor.place();
    let whole = cursor.decimal();
    let after = cursor.place();
    // Only a joint before a figure, a slash or a one-character fraction can lead to more of the number.
    if whole.is_ok() && !matches!(cursor.rest(), [b' ' | b'-', b'0'..=b'9' | 0x80.., ..] | [b'/' | 0x80.., ..]) {
        return whole;
    }
    cursor.go_back_to(start);
    let mixed = cursor.mixed_number();
    let end = cursor.place();
    // A pitch in inches, beside its lead.
    let is_pitch = matches!(cursor.rest(), [b'P' | b'p', b'-', ..]);
    cursor.skip_blanks();
    let named = is_pitch || matches!(cursor.peek(), Some(b'U' | b'u'));
    cursor.go_back_to(end);
    match whole {
        Ok(threads) if threads > Length::integer(11) && !named => {
            cursor.go_back_to(after);
            whole
        }
        _ => mixed,
    }
}

/// The error with this hint unless it has one of its own.
fn with_hint(error: Error, hint: &'static str) -> Error {
    if error.hint().is_empty() { error.hint_text(hint) } else { error }
}

/// `-1 1/4` and `-2-1/4` behind NPTF may begin with its class.
fn is_class_and_size(text: &[u8]) -> bool {
    matches!(text, [b'-', b'1' | b'2', b' ' | b'-', b'0'..=b'9', ..])
}

/// `O.D.` or `OD` behind the size; returns where it stands.
pub(super) fn take_outside_diameter(cursor: &mut Cursor<'_>) -> Option<usize> {
    let after = cursor.place();
    cursor.skip_blanks();
    if !matches!(cursor.peek(), Some(b'O' | b'o')) {
        cursor.go_back_to(after);
        return None;
    }
    let place = cursor.place();
    if cursor.take_name(b"OD") {
        return Some(place);
    }
    cursor.go_back_to(after);
    None
}

/// The thread of a size and a family, its pitch checked if it was written; then class and hand.
pub(super) fn finish(
    cursor: &mut Cursor<'_>,
    family: Family,
    (size, place): (Length, usize),
    pitch: Option<(Length, usize)>,
) -> Result<Thread, Error> {
    let form = family.form();
    let found = pipe_size(form, size).ok_or(
        Error::new(Code::OutOfRange, Field::Designation).at_byte(place).got(size.to_f64()).hint_text(sizes(form)),
    )?;
    if let Some((pitch, place)) = pitch.filter(|(pitch, _)| *pitch != found.pitch) {
        let per_inch = |pitch: Length| Length::INCH.over(pitch).map_or(f64::NAN, Length::to_f64);
        return Err(Error::new(Code::SeriesMismatch, Field::ThreadsPerInch)
            .at_byte(place)
            .got(per_inch(pitch))
            .within(per_inch(found.pitch), per_inch(found.pitch))
            .hint_text("this pipe thread has the threads per inch expected: is it another family?"));
    }
    let thread = Thread::of_pipe_size(form, found);
    let thread = match family {
        Family::Named(_) => thread,
        Family::Open(written_as) => thread.with_written_as(written_as)?,
    };
    tail(cursor, thread)
}

fn pipe_size(form: Form, size: Length) -> Option<PipeSize> {
    let sixteenths = size.times(Length::integer(16)).ok()?.whole()?;
    series::pipe_sizes(form).find(|listed| i64::from(listed.sixteenths) == sixteenths)
}

const fn sizes(form: Form) -> &'static str {
    match form {
        Form::Npt => {
            "a size of NPT: 1/16 1/8 1/4 3/8 1/2 3/4 1 1 1/4 1 1/2 2 2 1/2 3 3 1/2 4 5 6 8 10 12 14 16 18 20 24"
        }
        Form::Nptf => "a size of NPTF: 1/16 1/8 1/4 3/8 1/2 3/4 1 1 1/4 1 1/2 2 2 1/2 3",
        Form::Npsc => "a size of NPSC: 1/8 1/4 3/8 1/2 3/4 1 1 1/4 1 1/2 2 2 1/2 3 3 1/2 4",
        Form::Npsm => "a size of NPSM: 1/8 1/4 3/8 1/2 3/4 1 1 1/4 1 1/2 2 2 1/2 3 3 1/2 4 5 6",
        Form::Npsf => "a size of NPSF: 1/16 1/8 1/4 3/8 1/2 3/4 1",
        Form::G => {
            "a size of G: 1/16 1/8 1/4 3/8 1/2 5/8 3/4 7/8 1 1 1/8 1 1/4 1 1/2 1 3/4 2 2 1/4 2 1/2 2 3/4 3 3 1/2 4 4 1/2 5 5 1/2 6"
        }
        _ => "a size of R, Rp, Rc: 1/16 1/8 1/4 3/8 1/2 3/4 1 1 1/4 1 1/2 2 2 1/2 3 4 5 6",
    }
}
