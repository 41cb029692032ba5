//! What stands on the shank of a tap.

use super::chamfer::ChamferForm;
use super::class::IsoTapClass;
use super::limit::TapLimit;
use super::words::{self, Word};
use crate::callout::{self, Callout};
use crate::error::{Code, Error, Field};
use crate::plain::Plain;
use crate::thread::{Hand, Thread};
use crate::tolerance_class::ToleranceClass;

/// More than a shank has room for, in bytes.
const LONGEST: usize = 96;

/// What the shank of a tap says. What it does not say is `None` or false, and never assumed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub struct ShankMark {
    /// The thread, without class.
    pub thread: Option<Thread>,
    /// Left only if the shank says so.
    pub hand: Hand,
    /// The class of thread that the tap is meant to cut.
    pub tolerance_class: Option<ToleranceClass>,
    /// `6HX`: the maker's own limits for that class, usually towards its upper end.
    pub own_limits: bool,
    /// `G` or `GROUND`: the thread of the tap is ground.
    pub ground: bool,
    /// H, L or D limit.
    pub limit: Option<TapLimit>,
    /// Class of ISO 2857, `ISO2`.
    pub iso_class: Option<IsoTapClass>,
    /// Form of the chamfer.
    pub chamfer: Option<ChamferForm>,
    /// `STI`, `EG`: for a wire insert, larger than the screw's own thread.
    pub wire_insert: bool,
    /// The first word that was not understood, by byte and length.
    pub not_read: Option<(usize, usize)>,
}

/// A shank that says nothing.
impl Default for ShankMark {
    fn default() -> Self {
        Self {
            thread: None,
            hand: Hand::Right,
            tolerance_class: None,
            own_limits: false,
            ground: false,
            limit: None,
            iso_class: None,
            chamfer: None,
            wire_insert: false,
            not_read: None,
        }
    }
}

/// The mark as it is read, blanked word by word.
struct Reader {
    bytes: [u8; LONGEST],
    length: usize,
    mark: ShankMark,
    understood: bool,
}

/// Reads what stands on the shank of a tap: `M8x1.25 6HX LH`, `1/4-20 UNC GH3 HSS`, `M10 D5`.
///
/// | word | meaning |
/// |---|---|
/// | `M8`, `1/4-20 UNC`, `G1/4` | the thread, as in a designation |
/// | `LH`, `LEFT` | left hand |
/// | `6H`, `6G`, `7G`, `2B` | the class of thread it cuts; with `X`, within the maker's own limits |
/// | `ISO1` to `ISO3` | class of ISO 2857 |
/// | `H3`, `GH3`, `L1`, `D5` | limit; with `G`, ground |
/// | `STI`, `EG` | for a wire insert |
/// | `C`, `FORM C`, `C/2-3`, `PLUG` | chamfer |
/// | `HSS`, `TIN`, `DIN 371`, `3FL` and their like | known, and of no account |
///
/// Words in any order. A word that is none of these is kept in `not_read`.
///
/// # Errors
/// [`Code::Empty`]; [`Code::TooLong`] above 96 bytes; [`Code::Unreadable`] if nothing is understood; those of
/// the designation reader if the thread contradicts itself. Offsets are bytes of the text.
///
/// # Example
/// ```
/// use threadcalc_core::{Hand, read_shank_mark};
///
/// let mark = read_shank_mark(b"HSS-E M8x1.25 6HX LH")?;
/// assert_eq!(mark.thread.map(|thread| thread.to_string()), Some("M8x1.25".into()));
/// assert_eq!((mark.hand, mark.own_limits), (Hand::Left, true));
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// Common practice; ASME B94.9 and DIN 2197 for letters, from memory.
pub fn read_shank_mark(text: &[u8]) -> Result<ShankMark, Error> {
    let error = |code| Error::new(code, Field::TapMark).hint_text("a mark such as M8x1.25 6HX LH or 1/4-20 UNC GH3");
    let (plain, whole) = Plain::<LONGEST>::of(text);
    if !whole {
        return Err(error(Code::TooLong).at_byte(LONGEST));
    }
    let mut reader = Reader::of(&plain);
    if reader.next_word(0).is_none() {
        return Err(error(Code::Empty).at_byte(0));
    }
    reader.read_words();
    reader.read_thread().map_err(|error| {
        let at = error.at().map_or(0, |at| at as usize);
        error.at_byte(plain.origin(at))
    })?;
    reader.read_words();
    let rest = reader.next_word(0);
    if !reader.understood {
        let at = rest.map_or(0, |(start, _)| plain.origin(start));
        return Err(error(Code::Unreadable).at_byte(at));
    }
    let origin = |(start, end): (usize, usize)| {
        let at = plain.origin(start);
        (at, plain.origin(end).saturating_sub(at))
    };
    Ok(ShankMark { not_read: rest.map(origin), ..reader.mark })
}

impl Reader {
    fn of(plain: &Plain<LONGEST>) -> Self {
        let mut bytes = [b' '; LONGEST];
        for (place, byte) in bytes.iter_mut().zip(plain.text()) {
            *place = *byte;
        }
        Self { bytes, length: plain.text().len(), mark: ShankMark::default(), understood: false }
    }

    fn text(&self) -> &[u8] {
        self.bytes.get(..self.length).unwrap_or(&[])
    }

    /// The next word from a place on, by its start and end, without dashes at its start.
    fn next_word(&self, from: usize) -> Option<(usize, usize)> {
        let text = self.text();
        let apart = |byte: &u8| matches!(byte, b' ' | b'\n' | b',' | b';' | b'(' | b')');
        let skipped = text.get(from..)?.iter().take_while(|byte| apart(byte) || **byte == b'-').count();
        let start = from.saturating_add(skipped);
        let length = text.get(start..)?.iter().take_while(|byte| !apart(byte)).count();
        (length > 0).then_some((start, start.saturating_add(length)))
    }

    fn blank(&mut self, start: usize, end: usize) {
        if let Some(place) = self.bytes.get_mut(start..end) {
            place.fill(b' ');
        }
        self.understood = true;
    }

    /// Takes every word that is the shank's own.
    fn read_words(&mut self) {
        let (mut from, mut before) = (0, None);
        while let Some((start, end)) = self.next_word(from) {
            let mut held = [b' '; LONGEST];
            let word = self.text().get(start..end).unwrap_or(&[]);
            let length = word.len();
            for (place, byte) in held.iter_mut().zip(word) {
                *place = *byte;
            }
            let word = held.get(..length).unwrap_or(&[]);
            let found = match before {
                Some(Word::Standard(iso)) => words::numbered_standard(word, iso).or_else(|| words::read(word)),
                _ => words::read(word),
            };
            match found {
                Some(found) => {
                    self.take(found);
                    self.blank(start, end);
                }
                None => self.take_parts(word, start, end),
            }
            (from, before) = (end, found);
        }
    }

    /// `ISO2/6H`, `C/2-3`: every part is a word; `EGM8`: the letters of a wire insert before the thread.
    fn take_parts(&mut self, word: &[u8], start: usize, end: usize) {
        let part = |part: &[u8]| {
            let is_range = part.iter().all(|byte| matches!(byte, b'0'..=b'9' | b'.' | b'-')) && part.contains(&b'-');
            words::read(part).or(is_range.then_some(Word::Nothing))
        };
        let begins_with_word = !word.first().is_some_and(u8::is_ascii_digit);
        if word.contains(&b'/') && begins_with_word && word.split(|byte| *byte == b'/').all(|p| part(p).is_some()) {
            for piece in word.split(|byte| *byte == b'/') {
                if let Some(found) = part(piece) {
                    self.take(found);
                }
            }
            self.blank(start, end);
        } else if matches!(word, [b'E' | b'e', b'G' | b'g', b'M' | b'm' | b'-', ..]) {
            self.mark.wire_insert = true;
            let letters = if word.get(2) == Some(&b'-') { 3 } else { 2 };
            self.blank(start, start.saturating_add(letters));
        }
    }

    fn take(&mut self, word: Word) {
        let mark = &mut self.mark;
        match word {
            Word::Hand(hand) => mark.hand = hand,
            Word::Class(class, own) => (mark.tolerance_class, mark.own_limits) = (Some(class), own),
            Word::Limit(limit, ground) => (mark.limit, mark.ground) = (Some(limit), mark.ground || ground),
            Word::IsoClass(class) => mark.iso_class = Some(class),
            Word::Chamfer(form) => mark.chamfer = Some(form),
            Word::Ground => mark.ground = true,
            Word::WireInsert => mark.wire_insert = true,
            Word::Standard(_) | Word::Form | Word::Nothing => {}
        }
    }

    /// Finds the thread among what is left. Offsets of errors are places of the plain text.
    fn read_thread(&mut self) -> Result<(), Error> {
        let mut from = 0;
        while let Some((start, end)) = self.next_word(from) {
            match callout::read(self.text().get(start..).unwrap_or(&[])) {
                Callout::Thread(thread, length) => {
                    self.mark.thread = Some(thread.without_class().with_hand(Hand::Right));
                    if thread.hand() == Hand::Left {
                        self.mark.hand = Hand::Left;
                    }
                    if let Some(class) = thread.tolerance_class() {
                        self.mark.tolerance_class = Some(class);
                    }
                    let behind = start.saturating_add(length);
                    // `M8x1.25-6HX`: the designation ends before the X.
                    let own = behind.saturating_add(1) == end && matches!(self.text().get(behind), Some(b'X' | b'x'));
                    self.mark.own_limits |= own && thread.tolerance_class().is_some();
                    self.blank(start, if own { end } else { behind });
                    return Ok(());
                }
                Callout::Wrong(error) => {
                    let at = error.at().map_or(0, |at| at as usize);
                    return Err(error.at_byte(start.saturating_add(at)));
                }
                Callout::None => from = end,
            }
        }
        Ok(())
    }
}
