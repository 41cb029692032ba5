//! Threads mentioned in the comments of a program and in tool lists.

mod borders;
mod segment;

use crate::callout::{self, Callout};
use crate::form::Form;
use crate::plain::Plain;
use crate::series;
use crate::series::Series;
use crate::thread::Thread;
pub(crate) use borders::is_tap_word;
use borders::{begins_free, ends_free, next_word, word_before};
use segment::Segment;

/// How many threads of one comment are listed.
const MOST_FOUND: usize = 4;

/// How much text behind a place is looked at for a designation.
const WINDOW: usize = 96;

/// A thread that a comment mentions.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub struct FoundThread {
    /// The thread.
    pub thread: Thread,
    /// Where its text begins, in bytes.
    pub at: usize,
    /// How many bytes its text is.
    pub length: usize,
}

/// The threads that a comment mentions.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Comment {
    found: [Option<FoundThread>; MOST_FOUND],
    more: bool,
}

impl Comment {
    /// The first four threads, in order.
    pub fn threads(&self) -> impl Iterator<Item = &FoundThread> {
        self.found.iter().flatten()
    }

    /// True if the comment mentions more than those.
    #[must_use]
    pub const fn more(&self) -> bool {
        self.more
    }

    fn push(&mut self, found: FoundThread) {
        match self.found.iter_mut().find(|slot| slot.is_none()) {
            Some(free) => *free = Some(found),
            None => self.more = true,
        }
    }
}

/// Finds the threads that a comment or a line of a tool list mentions; never an error.
///
/// | text | thread if |
/// |---|---|
/// | `M8X1.25`, `MF10X1`, `M16XPH3P1.5` | ISO 261 lists it; a special only with a tap word or a tap |
/// | `M8` | a tap word stands in the comment or the tool is a tap, and the size has a coarse pitch |
/// | `M2.5`, `M8-6H` | always: no code of a program looks like this |
/// | `1/4-20 UNC-2B`, `10-32 UNF`, `#10-32` | always |
/// | `1/4-20`, `10-32`, `.250-20` | ASME B1.1 lists it and it stands alone |
/// | `1-8` | as before, with a tap word or a tap |
/// | `MJ6x1`, `TR40X7`, `1/4-28 UNJF`, `1 1/2-4 ACME`, `1/2 BSW`, `M8 STI` | as those above |
/// | `2BA`, `W1/2`, `S0.8` | a tap word stands in the comment or the tool is a tap |
/// | `G1/4`, `RC1/2`, `1/4 NPT` | it is a pipe size with its fraction or its name |
///
/// Tap words: TAP, THREAD, THD, GEWINDE, TARAUD, FILET, ROSCA and their like. `LH`, `LEFT HAND` and
/// `2 START` behind a thread belong to it. Dates, part numbers, times, tool diameters, quantities and words
/// of a program (`M30`, `G1`, `S600`) are no threads, and a contradiction (`1/4-20 UNF`) is none either.
///
/// `tool_is_tap`: the tool list says that the tool is a tap. Offsets are bytes. The time is linear in the
/// length of the text.
///
/// # Example
/// ```
/// use threadcalc_core::read_comment;
///
/// let comment = read_comment(b"T5 TAP M8 LH, REV 10-24, 1/4-20 HOLES M8 COOLANT", false);
/// let found: Vec<String> = comment.threads().map(|found| found.thread.to_string()).collect();
/// assert_eq!(found, ["M8x1.25-LH", "1/4-20 UNC"]);
/// assert_eq!(read_comment(b"M8 ON", false).threads().count(), 0);
/// ```
///
/// # Source
/// Common practice.
#[must_use]
pub fn read_comment(text: &[u8], tool_is_tap: bool) -> Comment {
    let has_tap_word = segment::has_tap_word(text);
    let mut comment = Comment::default();
    let (mut place, mut segment, mut last_end) = (0_usize, Segment::of(text, 0), None);
    while let Some(first) = text.get(place).copied() {
        if place >= segment.end {
            segment = Segment::of(text, place.saturating_add(1));
            place = place.saturating_add(1);
            continue;
        }
        let next = place.saturating_add(1);
        if !matches!(first, b'0'..=b'9' | b'.' | b'#') && !first.is_ascii_alphabetic() {
            place = next;
            continue;
        }
        let about = About { text, segment: &segment, place, last_end, has_tap_word, tool_is_tap };
        match about.found() {
            Some(found) => {
                comment.push(found);
                if comment.more {
                    break;
                }
                place = found.at.saturating_add(found.length).max(next);
                last_end = Some(place);
            }
            None => place = next,
        }
    }
    comment
}

/// A place of a comment and what is known around it.
struct About<'a> {
    text: &'a [u8],
    segment: &'a Segment,
    place: usize,
    last_end: Option<usize>,
    has_tap_word: bool,
    tool_is_tap: bool,
}

impl About<'_> {
    /// The thread that begins at the place.
    fn found(&self) -> Option<FoundThread> {
        let rest = self.text.get(self.place..)?;
        if !begins_free(self.text, self.place, self.last_end) || self.is_bare_metric(rest) {
            return None;
        }
        let window = rest.get(..WINDOW).unwrap_or(rest);
        let (thread, length) = if window.iter().all(|byte| byte.is_ascii() && *byte != b'\t') {
            self.judged(window)?
        } else {
            let (plain, _) = Plain::<WINDOW>::of(window);
            let (thread, length) = self.judged(plain.text())?;
            (thread, plain.origin(length))
        };
        ends_free(rest.get(length..).unwrap_or(&[])).then_some(FoundThread { thread, at: self.place, length })
    }

    /// An M with a number that nothing makes a thread, by the byte behind it: the usual word of a program.
    fn is_bare_metric(&self, rest: &[u8]) -> bool {
        let [b'M' | b'm', behind @ ..] = rest else { return false };
        let figures = behind.iter().take(WINDOW).take_while(|byte| byte.is_ascii_digit()).count();
        let next = behind.get(figures..).and_then(|behind| callout::after_blanks(behind).first());
        let goes_on = |byte: &u8| matches!(byte, b'x' | b'X' | b'*' | b'-' | b'.' | b',' | b'0'..=b'9' | 0x80..);
        figures > 0 && !self.is_tapping() && !next.is_some_and(goes_on)
    }

    /// A thread at the start of a plain window, if it cannot be anything else.
    fn judged(&self, window: &[u8]) -> Option<(Thread, usize)> {
        let Callout::Thread(thread, length) = callout::read(window) else { return None };
        let (piece, behind) = window.split_at_checked(length)?;
        let accepted = match thread.form() {
            form if form.is_pipe() => self.is_pipe(piece),
            Form::Metric | Form::MetricJ => self.is_metric(&thread, piece, behind),
            Form::Trapezoidal => !self.is_named_otherwise(),
            // A speed, initials, a width: what few letters say only a tap word makes sure.
            // `S1` may be the number of a spindle.
            Form::Miniature if !piece.contains(&b'.') => false,
            Form::Miniature | Form::Ba => self.is_tapping() && !self.segment.is_code && !self.is_named_otherwise(),
            Form::Whitworth if callout::is_bare_w(piece) => self.is_tapping() && !self.segment.is_code,
            _ => self.is_unified(&thread, piece, behind),
        };
        accepted.then_some((thread, length))
    }

    /// A tap word, or a tap in the tool list.
    const fn is_tapping(&self) -> bool {
        self.has_tap_word || self.tool_is_tap
    }

    fn is_metric(&self, thread: &Thread, piece: &[u8], behind: &[u8]) -> bool {
        let classed = thread.tolerance_class().is_some();
        if self.segment.is_code && !(classed || self.segment.has_tap_word && self.is_pitch_written(piece)) {
            return false;
        }
        if self.is_named_otherwise() {
            return false;
        }
        if self.is_pitch_written(piece) {
            let is_thinkable = || {
                let coarse = series::pitch_of(Series::Coarse, thread.major_mm());
                coarse.is_none_or(|coarse| coarse.plus(coarse).is_ok_and(|twice| thread.pitch_mm() <= twice))
            };
            return thread.series().is_some() || (self.is_tapping() && is_thinkable());
        }
        let figures = piece.iter().skip(1).skip_while(|byte| !byte.is_ascii_digit());
        let whole =
            figures.clone().take_while(|byte| matches!(byte, b'0'..=b'9' | b'.' | b',')).all(u8::is_ascii_digit);
        if !whole || classed {
            return thread.series().is_some();
        }
        // M03 is a code: sizes have no leading zero.
        let leading_zero = figures.clone().next() == Some(&b'0');
        self.is_tapping() && !leading_zero && !self.is_code_word(thread, behind)
    }

    /// `M8X1.25`, or `M8-1.25`; a dash before a whole number parts other things as well.
    fn is_pitch_written(&self, piece: &[u8]) -> bool {
        let behind = piece.iter().skip(1).skip_while(|byte| !byte.is_ascii_digit());
        let mut behind = behind.skip_while(|byte| matches!(byte, b'0'..=b'9' | b'.' | b',' | b' '));
        match behind.next() {
            Some(b'x' | b'X' | b'*') => true,
            Some(b'-') => {
                let mut pitch = behind.skip_while(|byte| **byte == b' ').skip_while(|byte| byte.is_ascii_digit());
                match pitch.next() {
                    Some(b'.' | b',') => true,
                    Some(next) => !next.is_ascii_alphabetic() && self.is_tapping(),
                    None => self.is_tapping(),
                }
            }
            _ => false,
        }
    }

    /// M6 behind a tool number, M3 beside a speed, M8 that is coolant.
    fn is_code_word(&self, thread: &Thread, behind: &[u8]) -> bool {
        const CODES: [&[u8]; 17] = [
            b"COOLANT",
            b"COOL",
            b"FLOOD",
            b"MIST",
            b"AIR",
            b"ON",
            b"OFF",
            b"END",
            b"STOP",
            b"OPT",
            b"OPTIONAL",
            b"CODE",
            b"SPINDLE",
            b"RESET",
            b"REWIND",
            b"CLAMP",
            b"UNCLAMP",
        ];
        let diameter = thread.major_mm().whole();
        let spindle = self.segment.has_speed && matches!(diameter, Some(3..=5));
        let change = self.segment.has_tool && diameter == Some(6);
        let by_context = (spindle || change) && !self.segment.has_tap_word;
        let before = word_before(self.text, self.place);
        by_context
            || callout::is_one_of(next_word(behind), &CODES)
            || callout::is_one_of(before.as_slice(), &[b"CODE", b"COOLANT"])
    }

    fn is_unified(&self, thread: &Thread, piece: &[u8], behind: &[u8]) -> bool {
        if callout::names_series(piece) || piece.first().is_some_and(|first| is_name_of_inch_thread(*first)) {
            return true;
        }
        if self.segment.is_code && !self.segment.has_tap_word {
            return false;
        }
        if !thread.is_standard() && thread.starts() == 1 || self.is_named_otherwise() || is_counted(behind) {
            return false;
        }
        let size = piece.iter().take_while(|byte| **byte != b'-').count();
        let (size, _) = piece.split_at_checked(size).unwrap_or((piece, &[]));
        if matches!(piece.first(), Some(b'#' | b'N' | b'n' | b'U' | b'u')) {
            return true;
        }
        // A dash between blanks parts the figures of a sentence.
        if size.last() == Some(&b' ') && !self.is_tapping() {
            return false;
        }
        if size.contains(&b'/') {
            return true;
        }
        let point = size.iter().position(|byte| matches!(byte, b'.' | b','));
        let decimals = point.map_or(0, |point| size.len().saturating_sub(point).saturating_sub(1));
        if decimals > 0 {
            return decimals >= 3 || self.is_tapping();
        }
        // A number size; whole inches are an everyday pair of figures.
        thread.major_mm() < crate::length::Length::INCH || self.is_tapping()
    }

    /// Pipe threads: the fraction or the name says that they are none of a program's words.
    fn is_pipe(&self, piece: &[u8]) -> bool {
        let named = piece.windows(2).any(|pair| pair.eq_ignore_ascii_case(b"NP") || pair.eq_ignore_ascii_case(b"BS"));
        // R is a radius in most comments, P a point.
        let open = matches!(piece, [b'R' | b'r' | b'P' | b'p', b'0'..=b'9' | b' ' | b'T' | b't' | b'F' | b'f', ..]);
        if (self.segment.is_code || open) && !(self.segment.has_tap_word || open && self.is_tapping()) {
            return false;
        }
        (named || piece.contains(&b'/')) && !self.is_named_otherwise()
    }

    /// The word before says that the figures are the number of something else.
    fn is_named_otherwise(&self) -> bool {
        const NAMES: [&[u8]; 46] = [
            b"PN",
            b"PART",
            b"NO",
            b"NUMBER",
            b"DATE",
            b"DATED",
            b"REV",
            b"REVISION",
            b"REVISED",
            b"ISSUE",
            b"DWG",
            b"DRG",
            b"DRAWING",
            b"JOB",
            b"ORDER",
            b"PO",
            b"WO",
            b"OP",
            b"OPS",
            b"OPERATION",
            b"OPERATIONS",
            b"SN",
            b"SERIAL",
            b"ITEM",
            b"ITEMS",
            b"LINE",
            b"LINES",
            b"SEQ",
            b"BLOCK",
            b"BLOCKS",
            b"PROG",
            b"PROGRAM",
            b"PGM",
            b"PAGE",
            b"PAGES",
            b"STEP",
            b"STEPS",
            b"VER",
            b"VERSION",
            b"ASSY",
            b"LOT",
            b"BATCH",
            b"TEL",
            b"PHONE",
            b"MODEL",
            b"TIME",
        ];
        callout::is_one_of(word_before(self.text, self.place).as_slice(), &NAMES)
    }
}

/// UNC, ACME, BSW, STI, PULL-BUTT, WHIT before the size; N may be a number.
const fn is_name_of_inch_thread(first: u8) -> bool {
    matches!(first.to_ascii_uppercase(), b'U' | b'A' | b'B' | b'S' | b'P' | b'W')
}

/// Whether what follows makes two figures an amount: `10-32 PCS`, `12-24 VDC`.
fn is_counted(behind: &[u8]) -> bool {
    const UNITS: [&[u8]; 35] = [
        b"PCS", b"PC", b"PIECES", b"PARTS", b"EA", b"HRS", b"HR", b"HOURS", b"MIN", b"MINS", b"MINUTES", b"SEC",
        b"SECS", b"MM", b"CM", b"DEG", b"RPM", b"SFM", b"IPM", b"AM", b"PM", b"LB", b"LBS", b"KG", b"PSI", b"USD",
        b"EUR", b"VDC", b"VAC", b"VOLT", b"VOLTS", b"DAYS", b"WEEKS", b"MONTHS", b"PERCENT",
    ];
    let word = next_word(behind);
    callout::is_one_of(word, &UNITS) && !is_tap_word(word)
}
