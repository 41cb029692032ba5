//! Inch threads that are named behind their size: ACME, buttress, BSW, BSF; and BA, whose size is a number.

use super::read::{skip_separator, tail};
use super::unified::{at_number, unified_pitch};
use super::unified_size::{UnifiedSize, unified_size};
use crate::cursor::Cursor;
use crate::error::{Code, Error, Field};
use crate::form::Form;
use crate::length::Length;
use crate::series::{self, Listed, Series};
use crate::thread::Thread;

/// A family as written; of Whitworth threads the series too.
#[derive(Clone, Copy)]
pub(super) struct Family {
    form: Form,
    series: Option<Series>,
}

/// Pitch and starts as written, and where.
pub(super) type Pitch = ((Length, u8), usize);

const fn family_of(form: Form, series: Option<Series>) -> Family {
    Family { form, series }
}

/// One word or two; the longer ones before those they begin with.
const FAMILIES: [(&[u8], &[u8], Family); 13] = [
    (b"STUB", b"ACME", family_of(Form::StubAcme, None)),
    (b"ACME", b"STUB", family_of(Form::StubAcme, None)),
    (b"ACME", b"", family_of(Form::Acme, None)),
    (b"PULL", b"BUTT", family_of(Form::PullButtress, None)),
    (b"PUSH", b"BUTT", family_of(Form::Buttress, None)),
    (b"BUTTRESS", b"", family_of(Form::Buttress, None)),
    (b"BUTT", b"", family_of(Form::Buttress, None)),
    (b"BSW", b"", family_of(Form::Whitworth, Some(Series::Bsw))),
    (b"BSF", b"", family_of(Form::Whitworth, Some(Series::Bsf))),
    (b"WHITWORTH", b"", family_of(Form::Whitworth, None)),
    (b"WHIT", b"", family_of(Form::Whitworth, None)),
    (b"W", b"", family_of(Form::Whitworth, None)),
    (b"BA", b"", family_of(Form::Ba, None)),
];

/// Takes the name of a family that stands here.
pub(super) fn family(cursor: &mut Cursor<'_>) -> Option<Family> {
    if !matches!(cursor.peek()?.to_ascii_uppercase(), b'A' | b'B' | b'P' | b'S' | b'W') {
        return None;
    }
    let start = cursor.place();
    FAMILIES.iter().find_map(|(first, second, family)| {
        let mut found = cursor.take_name(first);
        if found && !second.is_empty() {
            skip_separator(cursor);
            found = cursor.take_name(second);
        }
        if !found {
            cursor.go_back_to(start);
        } else if family.form == Form::Whitworth {
            cursor.take(b'.');
        }
        found.then_some(*family)
    })
}

/// Reads from behind the name that stands first.
pub(super) fn read(cursor: &mut Cursor<'_>, family: Family) -> Result<Thread, Error> {
    let place = skip_separator(cursor);
    let size = unified_size(cursor).map_err(|error| with_hint(error, "a size behind the name, as in BSW 1/4"))?;
    let after_size = cursor.place();
    let pitch_place = skip_separator(cursor);
    let pitch = if at_number(cursor) && pitch_place > after_size && !at_class(cursor) {
        Some((unified_pitch(cursor)?, pitch_place))
    } else {
        cursor.go_back_to(after_size);
        None
    };
    finish(cursor, family, (&size, place), pitch)
}

/// `2G`, `2A`: figures that a letter follows are no pitch, `0.4P` is.
fn at_class(cursor: &mut Cursor<'_>) -> bool {
    matches!(cursor.rest(), [b'1'..=b'9', letter, ..] if letter.is_ascii_alphabetic() && !matches!(letter, b'P' | b'p'))
}

fn with_hint(error: Error, hint: &'static str) -> Error {
    if error.hint().is_empty() { error.hint_text(hint) } else { error }
}

/// The thread of a size and a family, its pitch checked if it was written; then class and hand.
pub(super) fn finish(
    cursor: &mut Cursor<'_>,
    family: Family,
    (size, place): (&UnifiedSize, usize),
    pitch: Option<Pitch>,
) -> Result<Thread, Error> {
    let thread = match (family.form, pitch) {
        (Form::Ba, pitch) => {
            ba(size, pitch).map_err(|error| if error.at().is_none() { error.at_byte(place) } else { error })?
        }
        (_, None) => without_pitch(family, size).map_err(|error| error.at_byte(place))?,
        (_, Some((pitch, pitch_place))) => {
            let diameter = size.in_inches().map_err(|error| error.at_byte(place))?;
            let built = Thread::build(family.form, diameter, pitch.0, pitch.1);
            built.map_err(|error| error.at_byte(if error.field() == Field::Pitch { pitch_place } else { place }))?
        }
    };
    check_series(family, &thread, pitch.map_or(place, |(_, place)| place))?;
    tail(cursor, thread)
}

/// `1/4 BSW`: a series names the pitch of its size; of the others it has to be written.
fn without_pitch(family: Family, size: &UnifiedSize) -> Result<Thread, Error> {
    let diameter = size.in_inches()?;
    let series = family.series.or((family.form == Form::Whitworth).then_some(Series::Bsw));
    let listed = series::listed(family.form).filter(|row| row.diameter == diameter);
    let mut listed = listed.filter(|row| series.is_none() || row.series == series).map(|row| row.pitch);
    let missing = Error::new(Code::Missing, Field::ThreadsPerInch);
    match (listed.next(), listed.next()) {
        (Some(pitch), None) if series.is_some() => Thread::build(family.form, diameter, pitch, 1),
        (Some(pitch), None) => Err(missing
            .within(per_inch(pitch), per_inch(pitch))
            .hint_text("threads per inch behind the size; the preferred series has the number expected")),
        _ => {
            Err(missing
                .hint_text("no standard size has one pitch here: write the threads per inch, as in 1 1/2-4 ACME"))
        }
    }
}

/// `2 BA`: the number says diameter and pitch.
fn ba(size: &UnifiedSize, pitch: Option<Pitch>) -> Result<Thread, Error> {
    let Listed { diameter, pitch: own, .. } = size.number().and_then(series::ba_size).ok_or(
        Error::new(Code::OutOfRange, Field::Designation).within(0.0, 25.0).hint_text("a number of BA from 0 to 25"),
    )?;
    match pitch {
        Some((_, place)) => Err(Error::new(Code::Unreadable, Field::Designation)
            .at_byte(place)
            .hint_text("a BA number says the pitch: 2 BA")),
        None => Thread::build(Form::Ba, diameter, own, 1),
    }
}

fn per_inch(pitch: Length) -> f64 {
    Length::INCH.over(pitch).map_or(f64::NAN, Length::to_f64)
}

/// BSW and BSF have to be true.
fn check_series(family: Family, thread: &Thread, place: usize) -> Result<(), Error> {
    let Some(series) = family.series.filter(|series| thread.series() != Some(*series)) else { return Ok(()) };
    let listed = series::pitch_of(series, thread.major_mm()).map_or(f64::NAN, per_inch);
    Err(Error::new(Code::SeriesMismatch, Field::ThreadsPerInch)
        .at_byte(place)
        .got(per_inch(thread.pitch_mm()))
        .within(listed, listed)
        .hint_text(if listed.is_nan() {
            "the series does not list this size; a Whitworth thread of another pitch is written Whit."
        } else {
            "the series has the threads per inch expected; another pitch is written Whit."
        }))
}
