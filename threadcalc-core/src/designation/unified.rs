//! Unified designations: `1/4-20 UNC-2B`, `#10-32`, `1-1/4-7`, `3/4-0.0625P-0.1875L(3 STARTS) UNF`.

use super::read::{at_tail_word, closes, other_starts, read_starts, skip_separator, tail, unreadable};
use super::unified_size::{UnifiedSize, unified_size};
use super::{inch, pipe};
use crate::cursor::Cursor;
use crate::error::{Code, Error, Field};
use crate::form::{Form, WrittenAs};
use crate::length::{Length, Rounding};
use crate::series;
use crate::series::Series;
use crate::thread::{MOST_STARTS, Thread, pitch_of};

/// Reads from the size, or from a series that stands before it, to the end.
pub(super) fn read(cursor: &mut Cursor<'_>) -> Result<Thread, Error> {
    let series_place = cursor.place();
    let leading = series_token(cursor).map(|named| (named, series_place));
    if leading.is_some() {
        skip_separator(cursor);
    }
    if leading.is_some() && at_class(cursor) {
        return Err(cursor.error(Code::Unreadable).hint_text("the size first, the class behind it: 1/4-20 UNC-2B"));
    }
    let size_place = cursor.place();
    let size = unified_size(cursor)?;
    let outside_diameter = pipe::take_outside_diameter(cursor);
    let after_size = cursor.place();
    cursor.skip_blanks();
    let crossed = cursor.take_times();
    if !crossed {
        skip_separator(cursor);
    }
    if let Some(family) = pipe::family(cursor) {
        return pipe::finish(cursor, family, (size.of_pipe(size_place)?, size_place), None);
    }
    if let Some(family) = inch::family(cursor) {
        return inch::finish(cursor, family, (&size, size_place), None);
    }
    let of_pipe_only = |named: Option<usize>| match named {
        Some(place) => Err(Error::new(Code::Unreadable, Field::Designation)
            .at_byte(place)
            .hint_text("an outside diameter names a pipe, as in 14 O.D.-8 NPT")),
        None => Ok(()),
    };
    cursor.skip_blanks();
    let pitch_place = cursor.place();
    if !at_number(cursor) || at_class(cursor) {
        let thread = without_pitch(cursor, &size, size_place, after_size, leading);
        return match thread {
            Err(error) if matches!(error.code(), Code::Unreadable | Code::UnsupportedForm) => thread,
            _ => of_pipe_only(outside_diameter).and(thread),
        };
    }
    if pitch_place == after_size {
        return Err(cursor.error(Code::Unreadable).hint_text("a dash between size and threads per inch: 1/4-20"));
    }
    let (pitch, starts) = unified_pitch(cursor)?;
    let after_pitch = cursor.place();
    let series_place = skip_separator(cursor);
    if let Some(family) = pipe::family(cursor) {
        return pipe::finish(cursor, family, (size.of_pipe(size_place)?, size_place), Some((pitch, pitch_place)));
    }
    if let Some(family) = inch::family(cursor) {
        return inch::finish(cursor, family, (&size, size_place), Some(((pitch, starts), pitch_place)));
    }
    of_pipe_only(outside_diameter)?;
    let following = series_token(cursor);
    let form = leading.map(|(token, _)| token).or(following).map_or(Form::Unified, |token| token.form);
    let thread = build(form, (&size, size_place), (pitch, pitch_place), starts)?;
    if let Some((token, place)) = leading {
        check_series(&thread, token, place)?;
    }
    if let Some(token) = following {
        check_series(&thread, token, series_place)?;
    } else if leading.is_none() && crossed {
        return Err(cursor.error(Code::Unreadable).hint_text("the series behind it, or a dash: 1/4-20"));
    } else if leading.is_none() && cursor.peek().is_some_and(|byte| byte.is_ascii_alphabetic()) && !at_tail_word(cursor)
    {
        return Err(unreadable(cursor));
    } else {
        cursor.go_back_to(after_pitch);
    }
    let thread = noted(thread, following.or(leading.map(|(token, _)| token)))?;
    tail(cursor, thread)
}

/// Whether a class stands here and no number, `2B`.
fn at_class(cursor: &Cursor<'_>) -> bool {
    match cursor.rest() {
        [b'1'..=b'3', b'A' | b'a' | b'B' | b'b', next, ..] => !next.is_ascii_alphanumeric(),
        [b'1'..=b'3', b'A' | b'a' | b'B' | b'b'] => true,
        _ => false,
    }
}

pub(super) fn at_number(cursor: &Cursor<'_>) -> bool {
    matches!(cursor.peek(), Some(b'0'..=b'9' | b'.' | b',' | 0x80..))
}

fn build(
    form: Form,
    (size, size_place): (&UnifiedSize, usize),
    (pitch, pitch_place): (Length, usize),
    starts: u8,
) -> Result<Thread, Error> {
    Thread::build(form, size.diameter(pitch)?, pitch, starts).map_err(|error| match error.field() {
        Field::Pitch => error.at_byte(pitch_place),
        _ => error.at_byte(size_place),
    })
}

/// `1/4 UNC`: a graded series names the pitch of its size.
fn without_pitch(
    cursor: &mut Cursor<'_>,
    size: &UnifiedSize,
    size_place: usize,
    after_size: usize,
    leading: Option<(Token, usize)>,
) -> Result<Thread, Error> {
    let at = cursor.place();
    let Some((token, place)) = series_token(cursor).map(|token| (token, at)).or(leading) else {
        return Err(match unreadable(cursor) {
            error if error.code() == Code::UnsupportedForm => error,
            error => error.hint_text("threads per inch behind the size, as in 1/4-20"),
        });
    };
    if cursor.place() == at {
        cursor.go_back_to(after_size);
    }
    let missing = Error::new(Code::Missing, Field::ThreadsPerInch).at_byte(place);
    let (NamedSeries::Graded(series) | NamedSeries::Older(series)) = token.named else {
        return Err(missing.hint_text("UN is several series: write the threads per inch, as in 5/16-20 UN"));
    };
    let (first, second) = size.readings();
    let listed = |diameter: &Length| series::pitch_of(series, *diameter).map(|pitch| (*diameter, pitch));
    let (diameter, pitch) = match (first.as_ref().and_then(listed), second.as_ref().and_then(listed)) {
        (Some(found), None) | (None, Some(found)) => found,
        (Some(_), Some(_)) => {
            return Err(missing.hint_text(
                "a number size and a size in inches both stand in this series: write the threads per inch",
            ));
        }
        (None, None) => {
            return Err(
                missing.hint_text("this series does not list the size: write the threads per inch, as in 1/4-20")
            );
        }
    };
    let thread = Thread::build(token.form, diameter, pitch, 1).map_err(|error| error.at_byte(size_place))?;
    tail(cursor, noted(thread, Some(token))?)
}

/// Threads per inch, or pitch and lead of a multi-start thread, `0.0625P-0.1875L(3 STARTS)`.
pub(super) fn unified_pitch(cursor: &mut Cursor<'_>) -> Result<(Length, u8), Error> {
    let place = cursor.place();
    let threads = pipe::threads_number(cursor).map_err(|e| e.hint_text("threads per inch, as in 1/4-20"))?;
    if matches!(cursor.peek(), Some(b'P' | b'p')) {
        cursor.skip(1);
        return multi_start(cursor, threads, place);
    }
    let pitch = pitch_of(threads).map_err(|error| error.about(Field::Designation).at_byte(place))?;
    let after = cursor.place();
    cursor.skip_blanks();
    if !cursor.take_word(b"TPI") {
        cursor.go_back_to(after);
    }
    Ok((pitch, 1))
}

fn multi_start(cursor: &mut Cursor<'_>, pitch_in: Length, place: usize) -> Result<(Length, u8), Error> {
    let hint = "pitch and lead in inches, as in 3/4-0.0625P-0.1875L(3 STARTS) UN";
    skip_separator(cursor);
    let lead_place = cursor.place();
    let lead_in = cursor.mixed_number().map_err(|e| e.hint_text(hint))?;
    if !matches!(cursor.peek(), Some(b'L' | b'l')) {
        return Err(cursor.error(Code::Unreadable).hint_text(hint));
    }
    cursor.skip(1);
    if !pitch_in.is_positive() {
        return Err(Error::new(Code::OutOfRange, Field::Designation).at_byte(place).hint_text("a pitch above 0"));
    }
    // Both are printed rounded: the starts are the nearest whole ratio, the pitch the threads per
    // inch (whole or half) that round to the figures printed.
    let starts = lead_in.over(pitch_in)?.round_to(0, Rounding::HalfEven)?.units();
    let pitch_in = unrounded_pitch(pitch_in)?;
    let exact_lead = pitch_in.times(Length::integer(starts))?;
    let off = exact_lead.minus(lead_in)?.magnitude();
    let starts = u8::try_from(starts)
        .ok()
        .filter(|_| (1..=MOST_STARTS).contains(&starts) && off <= const { Length::parts(1, 10_000) });
    let starts = starts.ok_or(
        Error::new(Code::Contradiction, Field::Designation)
            .at_byte(lead_place)
            .hint_text("the lead is a whole number of pitches: lead / pitch = starts"),
    )?;
    let after = cursor.place();
    cursor.skip_blanks();
    if cursor.take(b'(') {
        cursor.skip_blanks();
        let place = cursor.place();
        let hint = "the number of starts, as in (3 STARTS)";
        let count = read_starts(cursor).ok_or(cursor.error(Code::Unreadable).hint_text(hint))?;
        if count != i64::from(starts) {
            return Err(other_starts(count, place));
        }
        if !closes(cursor) {
            return Err(cursor.error(Code::Unreadable).hint_text(hint));
        }
    } else {
        cursor.go_back_to(after);
    }
    Ok((pitch_in.times(Length::INCH)?, starts))
}

/// The pitch of the whole or half threads per inch that rounds to the decimals printed.
fn unrounded_pitch(printed: Length) -> Result<Length, Error> {
    let halves = Length::integer(2).over(printed)?.round_to(0, Rounding::HalfEven)?.units();
    let candidate = Length::new(2, halves.max(1))?;
    let decimals = printed.as_decimal().map_or(9, |decimal| decimal.decimals());
    let rounded = candidate.round_to(decimals.max(4), Rounding::HalfEven)?.to_length()?;
    Ok(if rounded == printed { candidate } else { printed })
}

/// The series that a token names; `UN` is any of the constant-pitch series.
#[derive(Clone, Copy)]
enum NamedSeries {
    Graded(Series),
    Older(Series),
    Constant,
}

/// A series as written, and the form that its name says.
#[derive(Clone, Copy)]
struct Token {
    form: Form,
    named: NamedSeries,
}

fn series_token(cursor: &mut Cursor<'_>) -> Option<Token> {
    match cursor.peek() {
        Some(b'U' | b'u') => {}
        Some(b'N' | b'n') => return american_national(cursor),
        _ => return None,
    }
    let graded = [
        (Series::Unc, "UNC", "UNRC", "UNJC"),
        (Series::Unf, "UNF", "UNRF", "UNJF"),
        (Series::Unef, "UNEF", "UNREF", "UNJEF"),
        (Series::Uns, "UNS", "UNRS", "UNJS"),
    ];
    let named = graded.into_iter().find_map(|(series, plain, rounded, large)| {
        Some((take_form(cursor, [plain, rounded, large])?, NamedSeries::Graded(series)))
    });
    let (form, named) = match named {
        Some(found) => found,
        None => (take_form(cursor, ["UN", "UNR", "UNJ"])?, NamedSeries::Constant),
    };
    Some(Token { form, named })
}

/// Takes one of the names that a series has in UN, UNR and UNJ.
fn take_form(cursor: &mut Cursor<'_>, names: [&str; 3]) -> Option<Form> {
    let forms = [Form::Unified, Form::UnifiedR, Form::UnifiedJ];
    names.into_iter().zip(forms).find(|(name, _)| cursor.take_name(name.as_bytes())).map(|(_, form)| form)
}

/// NC, NF and NEF, which UNC, UNF and UNEF followed with the same sizes and pitches.
fn american_national(cursor: &mut Cursor<'_>) -> Option<Token> {
    let older: [(&[u8], Series); 3] = [(b"NC", Series::Unc), (b"NF", Series::Unf), (b"NEF", Series::Unef)];
    let (_, series) = older.into_iter().find(|(name, _)| cursor.take_name(name))?;
    Some(Token { form: Form::Unified, named: NamedSeries::Older(series) })
}

/// The thread with a note of the older name that its series was written with.
fn noted(thread: Thread, token: Option<Token>) -> Result<Thread, Error> {
    match token.map(|token| token.named) {
        Some(NamedSeries::Older(_)) => thread.with_written_as(WrittenAs::AmericanNational),
        _ => Ok(thread),
    }
}

fn check_series(thread: &Thread, Token { form, named }: Token, place: usize) -> Result<(), Error> {
    if form != thread.form() {
        return Err(Error::new(Code::Contradiction, Field::Designation)
            .at_byte(place)
            .hint_text("one series, before the size or behind it, not two"));
    }
    let actual = thread.series().unwrap_or(Series::Uns);
    let agrees = match named {
        NamedSeries::Graded(series) | NamedSeries::Older(series) => series == actual,
        NamedSeries::Constant => actual.token() == "UN" || thread.starts() > 1,
    };
    if agrees || (thread.starts() > 1 && matches!(named, NamedSeries::Graded(Series::Uns))) {
        return Ok(());
    }
    let per_inch = |pitch: Length| Length::INCH.over(pitch).map_or(f64::NAN, Length::to_f64);
    let listed = match named {
        NamedSeries::Graded(series) | NamedSeries::Older(series) => {
            series::pitch_of(series, thread.major_mm()).map_or(f64::NAN, per_inch)
        }
        NamedSeries::Constant => f64::NAN,
    };
    Err(Error::new(Code::SeriesMismatch, Field::ThreadsPerInch)
        .at_byte(place)
        .got(per_inch(thread.pitch_mm()))
        .within(listed, listed)
        .hint_text(mismatch_hint(actual, !listed.is_nan())))
}

/// Both readings: by the pitch as written, and by the series as written (its pitch is a number).
fn mismatch_hint(actual: Series, series_lists_the_size: bool) -> &'static str {
    macro_rules! readings {
        ($series:literal) => {
            if series_lists_the_size {
                concat!(
                    "read by its pitch it is ",
                    $series,
                    ", read by its series it has the pitch expected: write one or the other"
                )
            } else {
                concat!("read by its pitch it is ", $series, "; the series written does not list it")
            }
        };
    }
    match actual {
        Series::Unc => readings!("UNC"),
        Series::Unf => readings!("UNF"),
        Series::Unef => readings!("UNEF"),
        Series::Uns => readings!("a special, UNS"),
        _ => readings!("a constant-pitch thread, UN"),
    }
}
