//! From bytes to a thread.

use super::{inch, metric, pipe, unified};
use crate::cursor::Cursor;
use crate::error::{Code, Error, Field};
use crate::form::Form;
use crate::thread::{Hand, Thread};
use crate::tolerance_class::ToleranceClass;

/// The longest designation that is looked at, in bytes.
pub(super) const LONGEST: usize = 80;

const EXAMPLES: &str = "a designation such as M8x1.25-6H, 1/4-20 UNC-2B, G1/2 or 1/4-18 NPT";

/// Words that name a form this version does not read, before the size or behind it.
const OTHER_FORMS: [&[u8]; 11] =
    [b"PTF", b"NS", b"UNM", b"RD", b"PG", b"NPS", b"NPSL", b"NPSH", b"NPSI", b"NPTR", b"ANPT"];

/// Reads one whole designation.
pub(crate) fn read(text: &[u8]) -> Result<Thread, Error> {
    if text.len() > LONGEST {
        return Err(Error::new(Code::TooLong, Field::Designation).at_byte(LONGEST).hint_text("at most 80 bytes"));
    }
    let mut cursor = Cursor::new(text, Field::Designation);
    cursor.skip_blanks();
    if cursor.is_at_end() {
        return Err(cursor.error(Code::Empty).hint_text(EXAMPLES));
    }
    let leading = hand(&mut cursor);
    if leading.is_some() {
        skip_separator(&mut cursor);
    }
    let insert = take_insert_word(&mut cursor);
    if insert {
        skip_separator(&mut cursor);
    }
    let start = cursor.place();
    let thread = match cursor.peek() {
        Some(b'0'..=b'9' | b'.' | b'#' | 0x80..) => unified::read(&mut cursor),
        _ => read_word(&mut cursor),
    };
    let thread =
        thread.map_err(|error| if error.at().is_none() { error.at_byte(cursor.place()) } else { error }).map_err(
            |error| if error.hint().is_empty() && error.low().is_nan() { error.hint_text(EXAMPLES) } else { error },
        )?;
    let thread = if insert { thread.with_wire_insert().map_err(|error| error.at_byte(start))? } else { thread };
    match leading {
        None => Ok(thread),
        Some(hand) => with_leading_hand(thread, hand, text, start),
    }
}

/// `STI`, or `EG` before a metric size: the hole of a wire insert.
#[inline(never)]
fn take_insert_word(cursor: &mut Cursor<'_>) -> bool {
    matches!(cursor.peek(), Some(b'S' | b's' | b'E' | b'e')) && (cursor.take_word(b"STI") || cursor.take_word(b"EG"))
}

/// A hand that stood before the size, unless the other one stands behind it.
fn with_leading_hand(thread: Thread, leading: Hand, text: &[u8], start: usize) -> Result<Thread, Error> {
    let mut cursor = Cursor::new(text, Field::Designation);
    for place in start..text.len() {
        cursor.go_back_to(place);
        if hand(&mut cursor).is_some_and(|behind| behind != leading) {
            return Err(two_hands(place));
        }
    }
    Ok(thread.with_hand(leading))
}

fn two_hands(place: usize) -> Error {
    Error::new(Code::Contradiction, Field::Hand).at_byte(place).hint_text("left or right hand, not both")
}

/// A designation that begins with a word: a metric or pipe thread, a series before its size, or `No.`
fn read_word(cursor: &mut Cursor<'_>) -> Result<Thread, Error> {
    if let Some(form) = metric::family(cursor) {
        return metric::read(cursor, form);
    }
    if let Some(family) = pipe::family(cursor) {
        return pipe::read(cursor, family);
    }
    if let Some(family) = inch::family(cursor) {
        return inch::read(cursor, family);
    }
    if matches!(cursor.peek(), Some(b'N' | b'n' | b'U' | b'u')) {
        return unified::read(cursor);
    }
    Err(unreadable(cursor))
}

/// The error for text that makes no sense here, or is a form known but not supported.
pub(super) fn unreadable(cursor: &Cursor<'_>) -> Error {
    if OTHER_FORMS.iter().any(|word| cursor.is_at_word(word)) {
        return cursor.error(Code::UnsupportedForm).hint_text(
            "threads read: M MJ S Tr, UN UNR UNJ, ACME, BUTT, BSW BSF BA, STI, G R Rp Rc, NPT NPTF NPSC NPSM NPSF",
        );
    }
    cursor.error(Code::Unreadable).hint_text(EXAMPLES)
}

/// Blanks and at most one dash between two parts; returns where the next part starts.
#[inline(never)]
pub(super) fn skip_separator(cursor: &mut Cursor<'_>) -> usize {
    cursor.skip_blanks();
    cursor.take_dash();
    cursor.skip_blanks();
    cursor.place()
}

pub(super) fn at_tail_word(cursor: &mut Cursor<'_>) -> bool {
    let place = cursor.place();
    let found = hand(cursor).is_some() || take_insert_word(cursor);
    cursor.go_back_to(place);
    found
}

/// `LH`, `L.H.`, `LEFT`, `LEFT HAND`, and the same for the right hand.
fn hand(cursor: &mut Cursor<'_>) -> Option<Hand> {
    let (hand, words): (Hand, [&[u8]; 3]) = match cursor.peek()? {
        b'L' | b'l' => (Hand::Left, [b"LEFT", b"LH", b"LEFTHAND"]),
        b'R' | b'r' => (Hand::Right, [b"RIGHT", b"RH", b"RIGHTHAND"]),
        _ => return None,
    };
    if words.iter().any(|word| cursor.take_word(word)) {
        let after = cursor.place();
        skip_separator(cursor);
        if !cursor.take_word(b"HAND") && !cursor.take_word(b"HANDED") {
            cursor.go_back_to(after);
        }
        return Some(hand);
    }
    // `L.H.`, `L. H`
    let start = cursor.place();
    cursor.skip(1);
    let dotted = cursor.take(b'.');
    cursor.skip_blanks();
    if dotted && cursor.take_word(b"H") {
        cursor.take(b'.');
        return Some(hand);
    }
    cursor.go_back_to(start);
    None
}

/// `2 START`, `2-START`, `TWO STARTS`.
pub(super) fn read_starts(cursor: &mut Cursor<'_>) -> Option<i64> {
    const COUNTS: [(&[u8], i64); 9] = [
        (b"SINGLE", 1),
        (b"DOUBLE", 2),
        (b"TWO", 2),
        (b"TRIPLE", 3),
        (b"THREE", 3),
        (b"FOUR", 4),
        (b"FIVE", 5),
        (b"SIX", 6),
        (b"EIGHT", 8),
    ];
    let start = cursor.place();
    // A class, `2B`, is met most.
    if matches!(cursor.rest(), [b'0'..=b'9', b'A' | b'B' | b'G' | b'H' | b'g' | b'h', ..]) {
        return None;
    }
    let count = match cursor.whole_number() {
        Ok(Some(count)) => Some(count),
        _ => COUNTS.iter().find(|(word, _)| cursor.take_word(word)).map(|(_, count)| *count),
    };
    skip_separator(cursor);
    if count.is_some() && (cursor.take_word(b"START") || cursor.take_word(b"STARTS")) {
        return count;
    }
    cursor.go_back_to(start);
    None
}

/// Class, hand and number of starts, in any order, also in brackets, then the end.
pub(super) fn tail(cursor: &mut Cursor<'_>, thread: Thread) -> Result<Thread, Error> {
    let mut said = Said { thread, hand: None, starts: thread.starts() > 1, after_dash: false };
    loop {
        let before = cursor.place();
        skip_separator(cursor);
        let mut between = Cursor::new(cursor.since(before), Field::Designation);
        between.skip_blanks();
        said.after_dash = !between.is_at_end();
        if cursor.is_at_end() {
            // Blanks may end a designation, a dash may not.
            return if said.after_dash {
                Err(cursor.error(Code::Unreadable).hint_text("a class or LH behind the dash"))
            } else {
                Ok(said.thread)
            };
        }
        let bracket = cursor.take(b'(');
        cursor.skip_blanks();
        said.take(cursor)?;
        if bracket && !closes(cursor) {
            return Err(cursor.error(Code::Unreadable).hint_text("a closing bracket"));
        }
    }
}

/// Takes a closing bracket behind blanks.
pub(super) fn closes(cursor: &mut Cursor<'_>) -> bool {
    cursor.skip_blanks();
    cursor.take(b')')
}

/// Lead and pitch, or another number, say how many starts there are.
pub(super) fn other_starts(count: i64, place: usize) -> Error {
    Error::new(Code::Contradiction, Field::Starts)
        .at_byte(place)
        .got(count as f64)
        .hint_text("lead and pitch, or another number, say how many starts there are")
}

/// A thread and what its text has said so far.
struct Said {
    thread: Thread,
    hand: Option<Hand>,
    starts: bool,
    after_dash: bool,
}

impl Said {
    /// The next of hand, starts and class.
    fn take(&mut self, cursor: &mut Cursor<'_>) -> Result<(), Error> {
        let place = cursor.place();
        if let Some(hand) = hand(cursor) {
            if self.hand.is_some_and(|said| said != hand) {
                return Err(two_hands(place));
            }
            (self.hand, self.thread) = (Some(hand), self.thread.with_hand(hand));
            return Ok(());
        }
        if take_insert_word(cursor) {
            self.thread = self.thread.with_wire_insert().map_err(|error| error.at_byte(place))?;
            return Ok(());
        }
        if let Some(count) = read_starts(cursor) {
            if self.starts && count != i64::from(self.thread.starts()) {
                return Err(other_starts(count, place));
            }
            let thread = self.thread.with_starts(count).map_err(|e| e.at_byte(place))?;
            (self.starts, self.thread) = (true, thread);
            return Ok(());
        }
        if cursor.take_word(b"CLASS") || cursor.take_word(b"CL") {
            cursor.take(b'.');
            cursor.skip_blanks();
        }
        let place = cursor.place();
        let lettered = self.thread.form().is_pipe() && at_single_letter(cursor) || at_class_word(cursor, &self.thread);
        let digit = matches!(cursor.peek(), Some(b'0'..=b'9'));
        if self.thread.tolerance_class().is_some() || !(digit || lettered) {
            return Err(match cursor.peek() {
                Some(b'S' | b's' | b'N' | b'n' | b'L' | b'l') if at_single_letter(cursor) => cursor
                    .error(Code::Unreadable)
                    .hint_text("left hand is LH; a length of engagement stands right behind the class of M, MJ or Tr: M20x2-7H-L"),
                _ => unreadable(cursor),
            });
        }
        self.thread = class(cursor, self.thread, place, self.after_dash)?;
        Ok(())
    }
}

/// Whether a class that is a word stands here: `close`, `medium`, `free`, `normal`. Not all are classes of BA: the
/// refusal says which are.
fn at_class_word(cursor: &Cursor<'_>, thread: &Thread) -> bool {
    let length = cursor.rest().iter().take_while(|byte| byte.is_ascii_alphabetic()).count();
    let word = cursor.rest().get(..length).unwrap_or(&[]);
    matches!(thread.form(), Form::Whitworth | Form::Ba) && ToleranceClass::new(Form::Whitworth, word).is_ok()
}

/// Whether one letter stands here, a times sign aside.
fn at_single_letter(cursor: &Cursor<'_>) -> bool {
    let letter = |place: usize| cursor.rest().get(place).is_some_and(u8::is_ascii_alphabetic);
    letter(0) && !letter(1) && !matches!(cursor.peek(), Some(b'x' | b'X'))
}

/// `-S`, `-N` or `-L` behind a class: the length of engagement, and not the start of `-LH`.
fn take_engagement(cursor: &mut Cursor<'_>) {
    let ends = |next: Option<&u8>| next.is_none_or(|next| !next.is_ascii_alphanumeric() && *next != b'.');
    match cursor.rest() {
        [b'-', b'S' | b's' | b'N' | b'n' | b'L' | b'l', behind @ ..] if ends(behind.first()) => cursor.skip(2),
        _ => {}
    }
}

fn class(cursor: &mut Cursor<'_>, thread: Thread, place: usize, after_dash: bool) -> Result<Thread, Error> {
    while cursor.peek().is_some_and(|byte| byte.is_ascii_alphanumeric()) {
        cursor.skip(1);
    }
    // `6HLH`: the hand may follow without a dash.
    let run = cursor.since(place);
    if let Some((class, hand)) = run.len().checked_sub(2).and_then(|length| run.split_at_checked(length)) {
        if class.len() > 1 && (hand.eq_ignore_ascii_case(b"LH") || hand.eq_ignore_ascii_case(b"RH")) {
            cursor.go_back_to(place.saturating_add(class.len()));
        }
    }
    // `BUTT-2`, and not the count of `BUTT 2 PLCS`.
    if cursor.since(place).len() == 1 && !after_dash && thread.form().is_translating() {
        cursor.go_back_to(place);
        return Err(cursor.error(Code::Unreadable).hint_text("a bare class stands behind a dash: BUTT-2"));
    }
    if thread.form().has_engagement_groups() {
        take_engagement(cursor);
    }
    let thread = thread.with_class(cursor.since(place)).map_err(|error| error.at_byte(place))?;
    let after = cursor.place();
    cursor.skip_blanks();
    if cursor.peek() == Some(b'/') {
        return Err(cursor.error(Code::Fit).hint_text("one class; a fit such as 6H/6g names two threads: read_fit"));
    }
    cursor.go_back_to(after);
    Ok(thread)
}
