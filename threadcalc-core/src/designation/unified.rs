//! Unified designations: `1/4-20 UNC-2B`, `#10-32`, `1-1/4-7`, `3/4-0.0625P-0.1875L(3 STARTS) UNF`.

use super::pipe;
use super::read::{at_tail_word, skip_separator, tail, unreadable};
use crate::cursor::Cursor;
use crate::error::{Code, Error, Field};
use crate::form::Form;
use crate::length::{Length, Rounding};
use crate::series;
use crate::thread::{MOST_STARTS, Series, Thread, pitch_of};

/// Reads from the size, or from a series that stands before it, to the end.
pub(super) fn read(cursor: &mut Cursor<'_>) -> Result<Thread, Error> {
    let series_place = cursor.place();
    let leading = series_token(cursor).map(|named| (named, series_place));
    if leading.is_some() {
        skip_separator(cursor);
    }
    let size_place = cursor.place();
    let size = unified_size(cursor)?;
    pipe::take_outside_diameter_words(cursor);
    let after_size = cursor.place();
    let pitch_place = skip_separator(cursor);
    if let Some(family) = pipe::family(cursor) {
        return pipe::finish(cursor, family, (size.of_pipe(size_place)?, size_place), None);
    }
    let crossed = pitch_place == cursor.place() && cursor.take_times();
    cursor.skip_blanks();
    let pitch_place = cursor.place();
    if !at_number(cursor) {
        return without_pitch(cursor, &size, size_place, after_size, leading);
    }
    let (pitch, starts) = unified_pitch(cursor)?;
    let series_place = skip_separator(cursor);
    if let Some(family) = pipe::family(cursor) {
        return pipe::finish(cursor, family, (size.of_pipe(size_place)?, size_place), Some((pitch, pitch_place)));
    }
    let thread = build(&size, pitch, starts, size_place, pitch_place)?;
    if let Some(named) = series_token(cursor) {
        check_series(&thread, named, series_place)?;
    } else if let Some((named, place)) = leading {
        check_series(&thread, named, place)?;
    } else if crossed {
        return Err(cursor.error(Code::Unreadable).hint_text("the series behind it, or a dash: 1/4-20"));
    } else if cursor.peek().is_some_and(|byte| byte.is_ascii_alphabetic()) && !at_tail_word(cursor) {
        return Err(unreadable(cursor));
    }
    tail(cursor, thread)
}

fn at_number(cursor: &Cursor<'_>) -> bool {
    matches!(cursor.peek(), Some(b'0'..=b'9' | b'.' | b',' | 0x80..))
}

fn build(
    size: &UnifiedSize,
    pitch: Length,
    starts: u8,
    size_place: usize,
    pitch_place: usize,
) -> Result<Thread, Error> {
    Thread::build(Form::Unified, size.diameter(pitch)?, pitch, starts).map_err(|error| match error.field() {
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
    leading: Option<(NamedSeries, usize)>,
) -> Result<Thread, Error> {
    let at = cursor.place();
    let named = series_token(cursor).map(|named| (named, at)).or(leading);
    let Some((NamedSeries::Graded(series), place)) = named else {
        cursor.go_back_to(at);
        return Err(match unreadable(cursor) {
            error if error.code() == Code::UnsupportedForm => error,
            error => error.hint_text("threads per inch behind the size, as in 1/4-20"),
        });
    };
    if cursor.place() == at {
        cursor.go_back_to(after_size);
    }
    let missing = Error::new(Code::Missing, Field::ThreadsPerInch).at_byte(place);
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
    let thread = Thread::build(Form::Unified, diameter, pitch, 1).map_err(|error| error.at_byte(size_place))?;
    tail(cursor, thread)
}

/// A size as written: what a bare whole number means depends on the pitch.
enum UnifiedSize {
    Inches(Length),
    Number(i64),
    Bare(i64),
}

impl UnifiedSize {
    /// The diameter in millimetres.
    fn diameter(&self, pitch: Length) -> Result<Length, Error> {
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
    fn readings(&self) -> (Option<Length>, Option<Length>) {
        let inches = |inches: Length| inches.times(Length::INCH).ok();
        match self {
            Self::Inches(size) => (None, inches(*size)),
            Self::Number(number) => (number_diameter(*number).ok(), None),
            Self::Bare(number) => (number_diameter(*number).ok(), inches(Length::integer(*number))),
        }
    }

    /// The nominal pipe size in inches.
    fn of_pipe(&self, place: usize) -> Result<Length, Error> {
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
pub(crate) fn is_number_size(number: i64, inches: Length, pitch: Length) -> bool {
    let listed = |diameter| series::of(Form::Unified, diameter, pitch) != Some(Series::Uns);
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

fn unified_size(cursor: &mut Cursor<'_>) -> Result<UnifiedSize, Error> {
    let numbered = cursor.take(b'#') || {
        let word = cursor.take_word(b"NO");
        if word {
            cursor.take(b'.');
        }
        word
    };
    if numbered {
        cursor.skip_blanks();
        let place = cursor.place();
        let number =
            cursor.whole_number()?.ok_or(cursor.error(Code::Unreadable).hint_text("a number size, as in #10-32"))?;
        number_diameter(number).map_err(|error| error.at_byte(place))?;
        return Ok(UnifiedSize::Number(number));
    }
    if matches!(cursor.peek(), Some(b'N' | b'n')) {
        return Err(unreadable(cursor));
    }
    let start = cursor.place();
    let value = cursor.mixed_number()?;
    // `10` may be a number size; a point, a fraction or an inch mark makes it inches.
    let bare = cursor.since(start).iter().all(u8::is_ascii_digit);
    let size = value.whole().filter(|_| bare).map_or(UnifiedSize::Inches(value), UnifiedSize::Bare);
    Ok(if cursor.take_inch_mark() { inches(size) } else { size })
}

fn inches(size: UnifiedSize) -> UnifiedSize {
    match size {
        UnifiedSize::Bare(whole) => UnifiedSize::Inches(Length::integer(whole)),
        size => size,
    }
}

/// Threads per inch, or pitch and lead of a multi-start thread, `0.0625P-0.1875L(3 STARTS)`.
fn unified_pitch(cursor: &mut Cursor<'_>) -> Result<(Length, u8), Error> {
    let place = cursor.place();
    let threads = cursor.mixed_number().map_err(|e| e.hint_text("threads per inch, as in 1/4-20"))?;
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
    let lead_in = cursor.decimal().map_err(|e| e.hint_text(hint))?;
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
    let starts =
        u8::try_from(starts).ok().filter(|_| (1..=MOST_STARTS).contains(&starts) && off <= Length::parts(1, 10_000));
    let starts = starts.ok_or(
        Error::new(Code::Contradiction, Field::Designation)
            .at_byte(lead_place)
            .hint_text("the lead is a whole number of pitches: lead / pitch = starts"),
    )?;
    let after = cursor.place();
    cursor.skip_blanks();
    if cursor.take(b'(') {
        cursor.skip_blanks();
        let count_place = cursor.place();
        let count = cursor.whole_number()?;
        cursor.skip_blanks();
        let named = cursor.take_word(b"STARTS") || cursor.take_word(b"START");
        cursor.skip_blanks();
        if count != Some(i64::from(starts)) || !named || !cursor.take(b')') {
            return Err(cursor
                .error(Code::Unreadable)
                .at_byte(count_place)
                .hint_text("the number of starts, as in (3 STARTS)"));
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
    Constant,
}

fn series_token(cursor: &mut Cursor<'_>) -> Option<NamedSeries> {
    if !matches!(cursor.peek(), Some(b'U' | b'u')) {
        return None;
    }
    let graded = [Series::Unc, Series::Unf, Series::Unef, Series::Uns];
    if let Some(series) = graded.into_iter().find(|series| cursor.take_word(series.token().as_bytes())) {
        return Some(NamedSeries::Graded(series));
    }
    cursor.take_word(b"UN").then_some(NamedSeries::Constant)
}

fn check_series(thread: &Thread, named: NamedSeries, place: usize) -> Result<(), Error> {
    let actual = thread.series().unwrap_or(Series::Uns);
    let agrees = match named {
        NamedSeries::Graded(series) => series == actual,
        NamedSeries::Constant => actual.token() == "UN" || thread.starts() > 1,
    };
    if agrees || (thread.starts() > 1 && matches!(named, NamedSeries::Graded(Series::Uns))) {
        return Ok(());
    }
    let per_inch = |pitch: Length| Length::INCH.over(pitch).map_or(f64::NAN, Length::to_f64);
    let listed = match named {
        NamedSeries::Graded(series) => series::pitch_of(series, thread.major_mm()).map_or(f64::NAN, per_inch),
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
