//! Metric designations: `M8x1.25-6H`, `MF10x1`, `M16xPh3P1.5-6H-LH`, `MJ6x1-4H5H`, `Tr40x7`, `S0.8`.

use super::read::{at_tail_word, closes, skip_separator, tail};
use crate::cursor::Cursor;
use crate::error::{Code, Error, Field};
use crate::form::Form;
use crate::length::Length;
use crate::series;
use crate::series::Series;
use crate::thread::{MOST_STARTS, Thread};

/// Takes the letters that stand first: M, MJ, Tr, S.
pub(super) fn family(cursor: &mut Cursor<'_>) -> Option<Form> {
    let (form, length) = match cursor.rest() {
        [b'M' | b'm', b'J' | b'j', ..] => (Form::MetricJ, 2),
        [b'M' | b'm', ..] => (Form::Metric, 1),
        [b'T' | b't', b'R' | b'r', next, ..] if !next.is_ascii_alphabetic() => (Form::Trapezoidal, 2),
        [b'S' | b's', behind @ ..] if is_miniature_size(behind) => (Form::Miniature, 1),
        _ => return None,
    };
    cursor.skip(length);
    Some(form)
}

/// Less than two: what else an S stands before is a spindle speed or the name of a steel.
fn is_miniature_size(mut behind: &[u8]) -> bool {
    while let [b' ' | b'-', rest @ ..] = behind {
        behind = rest;
    }
    match behind {
        [b'0', b'.' | b',', ..] | [b'.', ..] | [b'1'] => true,
        [b'1', next, ..] => !next.is_ascii_alphanumeric(),
        _ => false,
    }
}

/// Reads from behind the letters to the end.
pub(super) fn read(cursor: &mut Cursor<'_>, form: Form) -> Result<Thread, Error> {
    let fine_place = cursor.place();
    let fine = form == Form::Metric && matches!(cursor.peek(), Some(b'F' | b'f'));
    if fine {
        cursor.skip(1);
    }
    cursor.skip_blanks();
    let diameter_place = cursor.place();
    let diameter = cursor.decimal().map_err(|e| e.hint_text("a diameter in mm, as in M8x1.25"))?;
    if !diameter.is_positive() {
        return Err(Error::new(Code::OutOfRange, Field::Diameter)
            .at_byte(diameter_place)
            .got(diameter.to_f64())
            .hint_text("a diameter in mm, above 0"));
    }
    let after_diameter = cursor.place();
    cursor.skip_blanks();
    let (pitch, starts) = if cursor.take_times() || take_dash_before_pitch(cursor) || at_pitch_letter(cursor) {
        cursor.skip_blanks();
        let place = cursor.place();
        let (pitch, starts) = metric_pitch(cursor)?;
        (Some((pitch, place)), starts)
    } else {
        cursor.go_back_to(after_diameter);
        (None, 1)
    };
    let (pitch, pitch_place) = match pitch {
        Some(given) => given,
        None => {
            let fine = fine || says_fine(cursor);
            let pitch = own_pitch(cursor, form, diameter, fine).map_err(|error| match error.field() {
                Field::Diameter => error.at_byte(diameter_place),
                _ => error,
            })?;
            (pitch, diameter_place)
        }
    };
    if form == Form::Miniature {
        let own = own_pitch(cursor, form, diameter, fine).map_err(|error| error.at_byte(diameter_place))?;
        if pitch != own {
            return Err(Error::new(Code::SeriesMismatch, Field::Pitch)
                .at_byte(pitch_place)
                .got(pitch.to_f64())
                .within(own.to_f64(), own.to_f64())
                .hint_text("ISO 1501 has one pitch for a diameter: leave it out"));
        }
    }
    let thread = Thread::build(form, diameter, pitch, starts).map_err(|error| match error.field() {
        Field::Pitch => error.at_byte(pitch_place),
        _ => error.at_byte(diameter_place),
    })?;
    if fine && thread.series() == Some(Series::Coarse) {
        return Err(Error::new(Code::SeriesMismatch, Field::Designation)
            .at_byte(fine_place)
            .got(pitch.to_f64())
            .hint_text("MF says fine, but this pitch is the coarse one: write M, or the fine pitch"));
    }
    check_series_word(cursor, &thread)?;
    tail(cursor, thread)
}

/// `P1.5` or `Ph3P1.5` without a times sign before it.
#[inline(never)]
fn at_pitch_letter(cursor: &mut Cursor<'_>) -> bool {
    let start = cursor.place();
    let letter = matches!(cursor.peek(), Some(b'P' | b'p'));
    cursor.skip(1);
    if matches!(cursor.peek(), Some(b'H' | b'h')) {
        cursor.skip(1);
    }
    cursor.skip_blanks();
    let number = cursor.decimal().is_ok();
    cursor.go_back_to(start);
    letter && number
}

fn says_fine(cursor: &mut Cursor<'_>) -> bool {
    let start = cursor.place();
    skip_separator(cursor);
    let fine = cursor.is_at_word(b"FINE");
    cursor.go_back_to(start);
    fine
}

/// `COARSE` or `FINE` behind the pitch has to be true.
fn check_series_word(cursor: &mut Cursor<'_>, thread: &Thread) -> Result<(), Error> {
    let before = cursor.place();
    let place = skip_separator(cursor);
    let said = if cursor.take_word(b"COARSE") {
        Series::Coarse
    } else if cursor.take_word(b"FINE") {
        Series::Fine
    } else {
        cursor.go_back_to(before);
        return Ok(());
    };
    if thread.series() == Some(said) {
        return Ok(());
    }
    Err(Error::new(Code::SeriesMismatch, Field::Designation)
        .at_byte(place)
        .got(thread.pitch_mm().to_f64())
        .hint_text("ISO 261 does not list this pitch as the one that the word says"))
}

/// A dash before a pitch, `M8-1.25`: a number that no letter follows, as one would a grade, `M8-6H`.
fn take_dash_before_pitch(cursor: &mut Cursor<'_>) -> bool {
    let start = cursor.place();
    let dashed = cursor.take_dash();
    cursor.skip_blanks();
    let number = cursor.place();
    let lettered = at_pitch_letter(cursor);
    let pitch = dashed && (lettered || (cursor.decimal().is_ok() && !is_grade_or_starts(cursor)));
    cursor.go_back_to(if pitch { number } else { start });
    pitch
}

fn is_grade_or_starts(cursor: &mut Cursor<'_>) -> bool {
    if cursor.peek().is_some_and(|byte| byte.is_ascii_alphabetic()) {
        return !at_tail_word(cursor);
    }
    skip_separator(cursor);
    cursor.is_at_word(b"START") || cursor.is_at_word(b"STARTS")
}

fn no_miniature(diameter: Length) -> Error {
    Error::new(Code::OutOfRange, Field::Diameter)
        .got(diameter.to_f64())
        .within(0.3, 1.4)
        .hint_text("ISO 1501 has S 0.3 0.35 0.4 0.45 0.5 0.55 0.6 0.7 0.8 0.9 1 1.1 1.2 1.4, one pitch each")
}

/// The pitch that the diameter alone says: the coarse one of M and MJ, the only one of S.
fn own_pitch(cursor: &Cursor<'_>, form: Form, diameter: Length, fine: bool) -> Result<Length, Error> {
    match form {
        Form::Miniature => {
            series::listed(form).find(|row| row.diameter == diameter).map(|row| row.pitch).ok_or(no_miniature(diameter))
        }
        Form::Trapezoidal => Err(cursor
            .error(Code::Missing)
            .about(Field::Pitch)
            .hint_text("ISO 2904 has several pitches for a diameter: give it, as in Tr40x7")),
        _ => coarse_pitch(cursor, diameter, fine),
    }
}

fn coarse_pitch(cursor: &Cursor<'_>, diameter: Length, fine: bool) -> Result<Length, Error> {
    let missing = cursor.error(Code::Missing).about(Field::Pitch);
    if fine {
        return Err(missing.hint_text("a fine thread needs its pitch, as in MF10x1"));
    }
    series::pitch_of(Series::Coarse, diameter)
        .ok_or(missing.hint_text("ISO 261 has no coarse pitch for this diameter: give the pitch, as in M10x1"))
}

/// `1.25`, `P1.25`, or lead and pitch of a multi-start thread, `Ph3P1.5`, `3 (P1.5)`.
fn metric_pitch(cursor: &mut Cursor<'_>) -> Result<(Length, u8), Error> {
    let pitch_hint = "a pitch in mm, as in M8x1.25, or lead and pitch, as in M16xPh3P1.5";
    let named = match cursor.rest() {
        [b'P' | b'p', b'H' | b'h', ..] => 2,
        [b'P' | b'p', ..] => 1,
        _ => 0,
    };
    cursor.skip(named);
    cursor.skip_blanks();
    let lead_place = cursor.place();
    let first = cursor.decimal().map_err(|e| e.hint_text(pitch_hint))?;
    take_millimetres(cursor);
    if named == 1 || (named == 0 && !at_pitch_behind_lead(cursor)) {
        return Ok((first, 1));
    }
    cursor.skip_blanks();
    let bracket = named == 0 && cursor.take(b'(');
    cursor.skip_blanks();
    if !matches!(cursor.peek(), Some(b'P' | b'p')) {
        return Err(cursor.error(Code::Unreadable).hint_text("the pitch behind the lead, as in M16xPh3P1.5"));
    }
    cursor.skip(1);
    cursor.skip_blanks();
    let pitch_place = cursor.place();
    let pitch = cursor.decimal().map_err(|e| e.hint_text(pitch_hint))?;
    take_millimetres(cursor);
    if bracket && !closes(cursor) {
        return Err(cursor.error(Code::Unreadable).hint_text("a closing bracket, as in M16x3(P1.5)"));
    }
    if !pitch.is_positive() {
        return Err(cursor.error(Code::OutOfRange).at_byte(pitch_place).hint_text("a pitch above 0"));
    }
    Ok((pitch, starts_of(first, pitch, lead_place)?))
}

fn take_millimetres(cursor: &mut Cursor<'_>) {
    let start = cursor.place();
    cursor.skip_blanks();
    if !cursor.take_word(b"MM") {
        cursor.go_back_to(start);
    }
}

/// `(P1.5)` or `P1.5` behind the lead, as older drawings have it.
fn at_pitch_behind_lead(cursor: &mut Cursor<'_>) -> bool {
    let start = cursor.place();
    cursor.skip_blanks();
    cursor.take(b'(');
    cursor.skip_blanks();
    let pitch = at_pitch_letter(cursor);
    cursor.go_back_to(start);
    pitch
}

fn starts_of(lead: Length, pitch: Length, place: usize) -> Result<u8, Error> {
    let starts = lead.over(pitch)?;
    let count =
        starts.whole().filter(|count| (1..=MOST_STARTS).contains(count)).and_then(|count| u8::try_from(count).ok());
    count.ok_or(
        Error::new(Code::Contradiction, Field::Designation)
            .at_byte(place)
            .got(starts.to_f64())
            .within(1.0, MOST_STARTS as f64)
            .hint_text("the lead is a whole number of pitches: lead / pitch = starts"),
    )
}
