//! Lines that only move, many at a time.
//!
//! Nearly all of a milling program is lines of G0 to G3, X, Y, Z, I, J, K, R and F with plain numbers. Where no
//! cycle is active and places are absolute, nothing can be found at such a line, and of a run of them only the last
//! G, X, Y, Z and F are left: the others are overwritten before anybody asks. So a run is only looked over, and its
//! last words are read.
//!
//! A line belongs to a run if all of this holds; any other is left to the reader:
//! - it is these letters with a number each, and an end of line of the kind that the program began with; blanks
//!   stand behind numbers only; no letter stands twice, and the line is not longer than a control takes;
//! - a number has at least one digit, at most one point and no `+`, and at most seven digits before and behind it;
//! - N is the first and not alone, without sign and point; G is 0 to 3, with a zero before it or not.
//!
//! Behind a run stands the beginning of another line with a letter or a comment: a block for the reader, so that what
//! is known of the block that was read last is the same as if all had been read.
//!
//! The bits of sixty-four bytes are looked at together. Whether something stands in a stretch twice, a sum tells:
//! added to a stretch of ones, a one clears all from there to its end, and only a second is left standing.

use super::number::{Digits, Number, Sign};
use super::planes::{KEPT, LETTERS, Planes, WIDTH};

/// What a reader takes for a line of a run.
#[derive(Clone, Copy, Debug)]
pub(super) struct Lines {
    /// They end with CR and LF, not with LF alone.
    pub end_with_cr: bool,
    /// The most bytes of a line.
    pub most_chars: u32,
}

/// Longer runs are cut: their lines are counted in 32 bits.
const MOST_RUN: usize = 1 << 30;

/// A line that is longer has no end among some sixty-four bytes.
const MOST_CHARS: u32 = 2 * WIDTH as u32 - 2;

/// Sixty-four bytes of a run that have a letter.
#[derive(Clone, Copy, Debug)]
struct Place {
    byte: usize,
    /// The letters and the ends of lines among them, a bit each.
    letters: u64,
    line_feeds: u64,
    /// How many lines end before.
    lines_ended: u32,
}

/// A run of lines.
#[derive(Clone, Debug)]
pub(super) struct Run<'a> {
    bytes: &'a [u8],
    lines: u32,
    /// The last place of each letter that is kept; it may be in the line that ends the run.
    places: [Option<Place>; KEPT],
}

/// A word of a run.
#[derive(Clone, Copy, Debug)]
pub(super) struct LastWord {
    pub number: Number,
    /// How many lines of the run stand before its own.
    pub lines_before: u32,
    pub column: u32,
    pub end_column: u32,
}

impl<'a> Run<'a> {
    /// The lines of a run at the beginning of these bytes, where a line begins; None if there are none.
    pub(super) fn of(bytes: &'a [u8], lines: Lines) -> Option<Self> {
        let text = bytes.get(..MOST_RUN).unwrap_or(bytes);
        let mut places = [None; KEPT];
        let mut look = Look::at_line(lines);
        let (mut base, mut end, mut begun, mut ended) = (0_usize, 0_usize, 0_u32, 0_u32);
        while let Some(these) = text.get(base..).and_then(<[u8]>::first_chunk::<WIDTH>) {
            let Some(planes) = Planes::of(these) else { break };
            let (begins, bad) = look.over(&planes);
            for (place, plane) in places.iter_mut().zip(planes.letters) {
                let letters = plane & below(bad);
                if letters != 0 {
                    let line_feeds = planes.line_feed;
                    *place = Some(Place { byte: base, letters, line_feeds, lines_ended: ended });
                }
            }
            let mut begins_line = begins & below(bad);
            let next = these.get(bad.trailing_zeros() as usize).copied();
            if next.is_some_and(begins_other_block) {
                begins_line |= begins & bad & bad.wrapping_neg();
            }
            if begins_line != 0 {
                end = base.wrapping_add(WIDTH - 1).wrapping_sub(begins_line.leading_zeros() as usize);
            }
            begun = begun.wrapping_add(begins_line.count_ones());
            if bad != 0 {
                break;
            }
            ended = ended.wrapping_add(planes.line_feed.count_ones());
            base = base.wrapping_add(WIDTH);
        }
        let bytes = bytes.get(..end).filter(|bytes| !bytes.is_empty())?;
        Some(Self { bytes, lines: begun.saturating_sub(1), places })
    }

    /// How many bytes it has.
    pub(super) const fn bytes(&self) -> usize {
        self.bytes.len()
    }

    /// How many lines.
    pub(super) const fn lines(&self) -> u32 {
        self.lines
    }

    /// The last word of a letter.
    pub(super) fn last(&self, letter: u8) -> Option<LastWord> {
        let kind = LETTERS.iter().position(|other| *other == letter)?;
        let place = self.places.get(kind).copied()??;
        // Letters behind the end of the run are none of it.
        let room = self.bytes.len().saturating_sub(place.byte);
        let inside = u32::try_from(room)
            .ok()
            .and_then(|room| 1_u64.checked_shl(room))
            .map_or(u64::MAX, |bit| bit.wrapping_sub(1));
        let letters = place.letters & inside;
        let (byte, lines_before) = if letters == 0 {
            let before = self.bytes.get(..place.byte).unwrap_or(self.bytes);
            let byte = before.iter().rposition(|byte| *byte == letter)?;
            (byte, self.lines.wrapping_sub(line_ends(self.bytes.get(byte..)?)))
        } else {
            let last = 63_u32.wrapping_sub(letters.leading_zeros());
            let ended = (place.line_feeds & 1_u64.wrapping_shl(last).wrapping_sub(1)).count_ones();
            (place.byte.wrapping_add(last as usize), place.lines_ended.wrapping_add(ended))
        };
        let (before, behind) = self.bytes.split_at_checked(byte)?;
        let line = before.iter().rposition(|byte| *byte == b'\n').map_or(0, |end| end.wrapping_add(1));
        let in_line = byte.wrapping_sub(line);
        let column = u32::try_from(in_line).ok()?.saturating_add(1);
        let (number, length) = number(behind.get(1..)?)?;
        Some(LastWord { number, lines_before, column, end_column: column.saturating_add(1).saturating_add(length) })
    }
}

/// How many lines end in a text.
fn line_ends(text: &[u8]) -> u32 {
    text.iter().fold(0_u32, |ends, byte| ends.wrapping_add(u32::from(*byte == b'\n')))
}

/// The number at the beginning of a text, and how long it is.
fn number(text: &[u8]) -> Option<(Number, u32)> {
    let (mut digits, mut length) = (Digits::NONE, 0_u32);
    for byte in text {
        length = length.saturating_add(1);
        match byte {
            b'-' => {
                digits.push_sign(Sign::Minus, length);
            }
            b'.' | b'0'..=b'9' => digits.push(*byte, length, false),
            _ => break,
        }
    }
    Some((digits.number().ok()?, length.saturating_sub(1)))
}

/// What the bytes looked over so far leave for the next: planes before, and ones that are carried over.
struct Look {
    lines: Lines,
    /// Where the line began, counted from the bytes that come.
    line: i64,
    letter: u64,
    digit: u64,
    two_digits: u64,
    four_digits: u64,
    point: u64,
    point_behind_digit: u64,
    minus: u64,
    blank: u64,
    line_feed: u64,
    carriage_return: u64,
    n: u64,
    g: u64,
    small_behind_g: u64,
    zero_behind_g: u64,
    second_of_g: u64,
    carried_point: u64,
    carried_n: u64,
    carried_letters: [u64; LETTERS.len()],
}

impl Look {
    /// Before the first byte of a line.
    const fn at_line(lines: Lines) -> Self {
        Self {
            lines,
            line: 0,
            letter: 0,
            digit: 0,
            two_digits: 0,
            four_digits: 0,
            point: 0,
            point_behind_digit: 0,
            minus: 0,
            blank: 0,
            line_feed: u64::MAX,
            carriage_return: 0,
            n: 0,
            g: 0,
            small_behind_g: 0,
            zero_behind_g: 0,
            second_of_g: 0,
            carried_point: 0,
            carried_n: 0,
            carried_letters: [0; LETTERS.len()],
        }
    }

    /// The bytes with which lines begin, and those at which no line of a run goes on.
    #[inline(always)]
    fn over(&mut self, this: &Planes) -> (u64, u64) {
        let letter = this.letters.iter().fold(0, |all, plane| all | plane);
        let begins = moved(this.line_feed, &mut self.line_feed, 1);
        let starts = letter & begins;
        let digit = moved(this.digit, &mut self.digit, 1);
        let bad = !self.follows(this, letter, starts, digit)
            | self.repeats(this, letter, digit)
            | self.line_numbers(this, letter, begins)
            | self.motions(this)
            | self.line_ends(this);
        (begins, bad)
    }

    /// The bytes that may stand behind the one before.
    #[inline(always)]
    fn follows(&mut self, this: &Planes, letter: u64, starts: u64, digit: u64) -> u64 {
        let point = moved(this.point, &mut self.point, 1);
        let whole = moved(this.point & digit, &mut self.point_behind_digit, 1);
        let sign = moved(letter, &mut self.letter, 1);
        let number = sign | moved(this.minus, &mut self.minus, 1) | digit;
        let behind_number = digit | whole | moved(this.blank, &mut self.blank, 1);
        let new_line = moved(this.carriage_return, &mut self.carriage_return, 1);
        let ends = if self.lines.end_with_cr {
            (this.carriage_return & behind_number) | (this.line_feed & new_line)
        } else {
            this.line_feed & behind_number
        };
        ((letter | this.blank) & behind_number)
            | starts
            | (this.minus & sign)
            | (this.point & number)
            | (this.digit & (number | point))
            | ends
    }

    /// The eighth digit of a row, the second point of a number, the second of a letter in a line.
    #[inline(always)]
    fn repeats(&mut self, this: &Planes, letter: u64, digit: u64) -> u64 {
        let two = this.digit & digit;
        let four = two & moved(two, &mut self.two_digits, 2);
        let eight = four & moved(four, &mut self.four_digits, 4);
        let mut repeats = eight | (this.point & sum(this.point, !letter, &mut self.carried_point));
        for (plane, carried) in this.letters.iter().zip(&mut self.carried_letters) {
            repeats |= plane & sum(*plane, !this.line_feed, carried);
        }
        repeats
    }

    /// N inside a line, its sign and point, and the end of a line that has nothing else.
    #[inline(always)]
    fn line_numbers(&mut self, this: &Planes, letter: u64, begins: u64) -> u64 {
        let [_, _, _, _, _, n, ..] = this.letters;
        let first = moved(n, &mut self.n, 1) & !letter;
        let cleared = !sum(first, !letter, &mut self.carried_n);
        (n & !begins) | ((this.point | this.minus | this.line_feed) & cleared)
    }

    /// What G has behind it that makes it none of the moves.
    #[inline(always)]
    fn motions(&mut self, this: &Planes) -> u64 {
        let [g, ..] = this.letters;
        let numeric = this.digit | this.point;
        let first = moved(g, &mut self.g, 1);
        let behind = moved(first & this.small, &mut self.small_behind_g, 1);
        let second = behind & this.small & moved(first & this.zero, &mut self.zero_behind_g, 1);
        let third = moved(second, &mut self.second_of_g, 1);
        (first & !this.small) | (behind & numeric & !second) | (third & numeric)
    }

    /// Ends of lines that are too long; all, if no line ends here.
    #[inline(always)]
    fn line_ends(&mut self, this: &Planes) -> u64 {
        if self.lines.most_chars >= MOST_CHARS {
            return if this.line_feed == 0 { u64::MAX } else { 0 };
        }
        let (mut ends, mut long) = (this.line_feed, 0_u64);
        let most = i64::from(self.lines.most_chars).wrapping_add(i64::from(self.lines.end_with_cr));
        while ends != 0 {
            let end = i64::from(ends.trailing_zeros());
            if end.wrapping_sub(self.line) > most {
                long |= ends & ends.wrapping_neg();
            }
            self.line = end.wrapping_add(1);
            ends &= ends.wrapping_sub(1);
        }
        self.line = self.line.wrapping_sub(WIDTH as i64);
        long
    }
}

/// A plane moved on by some bytes, behind the last of those before.
#[inline(always)]
fn moved(plane: u64, before: &mut u64, by: u32) -> u64 {
    let last = core::mem::replace(before, plane);
    plane.wrapping_shl(by) | last.wrapping_shr(64_u32.wrapping_sub(by))
}

/// The sum of two planes, with what is carried over from before and to what follows.
#[inline(always)]
fn sum(plane: u64, ones: u64, carried: &mut u64) -> u64 {
    let sum = u128::from(plane).wrapping_add(u128::from(ones)).wrapping_add(u128::from(*carried));
    *carried = sum.wrapping_shr(64) as u64;
    sum as u64
}

/// Whether a line that begins so is a block, and none of a run.
fn begins_other_block(byte: u8) -> bool {
    byte == b'(' || (byte.is_ascii_uppercase() && !LETTERS.contains(&byte))
}

/// The bits below the lowest that is set.
#[inline(always)]
const fn below(bits: u64) -> u64 {
    bits.wrapping_sub(1) & !bits
}
