//! What a drawing may have meant by a thread that no standard lists.

use core::cmp::Ordering;
use core::fmt::Write;

use super::{PipeSize, pipe_sizes};
use crate::form::Form;
use crate::length::Length;
use crate::named::named;
use crate::text::Text;
use crate::thread::{Hand, Thread};

named! {
    /// Why a thread is near another one.
    pub enum Near {
        /// The same diameter, another pitch.
        SameDiameter = 1 "same-diameter",
        /// The same pitch, another diameter.
        SamePitch = 2 "same-pitch",
        /// A pipe thread written with the same figures.
        SameFigures = 3 "same-figures",
        /// One character typed wrong, missing or too much.
        OneCharacter = 4 "one-character",
    }
}

/// As many near threads as a drawing is worth.
const MOST: usize = 8;
/// Slips of typing that stand first.
const MOST_SLIPS: usize = 2;

/// The canonical text of a standard thread, right hand and without a class: a test holds all to this.
type Name = Text<21>;

/// Up to eight near threads, nearest first within each reason.
#[derive(Clone, Copy, Debug, Default)]
pub struct NearThreads {
    found: [Option<(Name, Near)>; MOST],
}

impl NearThreads {
    /// The designations with the reason each is near.
    pub fn iter(&self) -> impl Iterator<Item = (&str, Near)> {
        self.found.iter().flatten().map(|(text, reason)| (text.as_str(), *reason))
    }

    /// Adds a thread that is not among them yet.
    #[inline(never)]
    fn push(&mut self, thread: Option<Thread>, reason: Near) {
        let text = thread.map_or(Text::new(), |thread| canonical(&thread));
        if text.is_empty() {
            return;
        }
        for slot in &mut self.found {
            match slot {
                Some((held, _)) if *held == text => return,
                Some(_) => {}
                None => {
                    *slot = Some((text, reason));
                    return;
                }
            }
        }
    }
}

/// The standard threads nearest to `thread`, of its own form and never `thread` itself.
///
/// 1. Usual slips of typing, [`Near::OneCharacter`]: a character missing, one too much, or a figure for its
///    neighbour on the keys; at most two, of the same diameter first.
/// 2. The two nearest of the same diameter, then the next smaller and larger ones of the same pitch.
/// 3. For a Unified thread pipe threads of the same figures.
/// 4. Those that differ by any other character.
///
/// A thread is named once, with the first of its reasons. Of pipe threads, S and BA nothing is near: their sizes
/// are fixed.
#[must_use]
pub fn near(thread: &Thread) -> NearThreads {
    let mut found = NearThreads::default();
    add_near(&mut found, thread);
    found
}

/// In a place that the caller has, so that no second one is on the stack.
#[inline(never)]
pub(crate) fn add_near(found: &mut NearThreads, thread: &Thread) {
    // A pipe thread of another size cannot be.
    let Some(diameter) = thread.nominal_mm() else { return };
    let sought = Sought {
        form: thread.form(),
        diameter,
        pitch: thread.pitch_mm(),
        is_wire_insert: thread.is_wire_insert(),
        text: text_of_one_start(thread),
    };
    slips(found, &sought, false, MOST_SLIPS);
    search(found, &sought);
    if thread.form().is_unified() && !thread.is_wire_insert() {
        same_figures(found, thread);
    }
    slips(found, &sought, true, MOST);
}

/// The thread that others are near, of one start.
struct Sought {
    form: Form,
    diameter: Length,
    pitch: Length,
    is_wire_insert: bool,
    text: Name,
}

/// The canonical text of the thread with one start, right hand and without a class.
#[inline(never)]
fn text_of_one_start(thread: &Thread) -> Name {
    let plain = thread.without_class().with_hand(Hand::Right);
    canonical(&plain.with_starts(1).unwrap_or(plain))
}

impl Sought {
    /// The listed thread, for a wire insert if this one is.
    #[inline(never)]
    fn build(&self, (diameter, pitch): (Length, Length)) -> Option<Thread> {
        let thread = Thread::build(self.form, diameter, pitch, 1).ok()?;
        if self.is_wire_insert { thread.with_wire_insert().ok() } else { Some(thread) }
    }

    /// Which of two is nearer, by the diameter first; size and pitch part those that are as far off.
    #[inline(never)]
    fn order(&self, a: &(Length, Length), b: &(Length, Length)) -> Ordering {
        let diameter = away(a.0, self.diameter).cmp(&away(b.0, self.diameter));
        diameter.then_with(|| away(a.1, self.pitch).cmp(&away(b.1, self.pitch))).then_with(|| a.cmp(b))
    }

    /// Whether one character makes the text of a row; of the usual slips only, unless any will do.
    #[inline(never)]
    fn is_slip(&self, row: (Length, Length), is_any: bool) -> bool {
        let text = self.build(row).map_or(Text::new(), |thread| canonical(&thread));
        Slip::between(figures(&self.text), figures(&text)).is_some_and(|slip| is_any || slip == Slip::OfKeys)
    }

    /// Whether size or pitch are another one, which one character at most can have made.
    fn is_beside(&self, (diameter, pitch): (Length, Length)) -> bool {
        (diameter == self.diameter) != (pitch == self.pitch)
    }
}

/// The canonical text; empty if there is none.
#[inline(never)]
fn canonical(thread: &Thread) -> Name {
    let mut text = Text::new();
    if write!(text, "{thread}").is_ok() { text } else { Text::new() }
}

/// Size and pitch of a canonical text, without the word of the series: `1/4-20` of `1/4-20 UNC`.
fn figures(text: &Name) -> &[u8] {
    let bytes = text.as_str().as_bytes();
    // Over slices, whose places need no count that could overflow.
    let dash = bytes.iter().position(|byte| *byte == b'-').unwrap_or(0);
    let behind = bytes.get(dash..).unwrap_or(&[]);
    let word = behind.iter().position(|byte| *byte == b' ').unwrap_or(behind.len());
    bytes.get(..dash.saturating_add(word)).unwrap_or(bytes)
}

/// How one character makes a text of another one.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Slip {
    /// Missing, too much, or a neighbour on the keys.
    OfKeys,
    /// Another one.
    Other,
}

impl Slip {
    fn between(mut a: &[u8], mut b: &[u8]) -> Option<Self> {
        while let ([first, rest_of_a @ ..], [same, rest_of_b @ ..]) = (a, b) {
            if first != same {
                break;
            }
            (a, b) = (rest_of_a, rest_of_b);
        }
        while let ([rest_of_a @ .., last], [rest_of_b @ .., same]) = (a, b) {
            if last != same {
                break;
            }
            (a, b) = (rest_of_a, rest_of_b);
        }
        match (a, b) {
            ([], [_]) | ([_], []) => Some(Self::OfKeys),
            ([typed], [meant]) => Some(if beside(*typed, *meant) { Self::OfKeys } else { Self::Other }),
            _ => None,
        }
    }
}

/// Whether two figures are neighbours in the row of a keyboard or on a block of figures.
fn beside(a: u8, b: u8) -> bool {
    const ROW: &[u8] = b"1234567890";
    const BLOCK: [&[u8]; 3] = [b"0147", b"0258", b"369"];
    let next = |row: &[u8]| row.windows(2).any(|pair| pair == [a, b] || pair == [b, a]);
    next(ROW) || BLOCK.into_iter().any(next)
}

/// Adds those that one character makes, at most a number of them: of the same diameter first, nearest first.
///
/// One walk for each: to keep them all would take stack below which the texts are written.
#[inline(never)]
fn slips(found: &mut NearThreads, sought: &Sought, is_any: bool, most: usize) {
    let mut last = None;
    for _ in 0..most {
        let Some(row) = next_slip(sought, is_any, last) else { return };
        found.push(sought.build(row), Near::OneCharacter);
        last = Some(row);
    }
}

/// The nearest slip that is farther off than the last one.
fn next_slip(sought: &Sought, is_any: bool, last: Option<(Length, Length)>) -> Option<(Length, Length)> {
    let mut nearest = None;
    for row in super::sizes(sought.form) {
        let is_told = last.is_some_and(|last| sought.order(&row, &last) != Ordering::Greater);
        let is_farther = nearest.as_ref().is_some_and(|held| sought.order(&row, held) != Ordering::Less);
        if sought.is_beside(row) && !is_told && !is_farther && sought.is_slip(row, is_any) {
            nearest = Some(row);
        }
    }
    nearest
}

#[inline(never)]
fn away(a: Length, b: Length) -> Length {
    a.minus(b).map_or(Length::integer(i64::MAX), Length::magnitude)
}

/// The pipe threads that are written with the same size and threads per inch.
fn same_figures(found: &mut NearThreads, thread: &Thread) {
    let sixteenth_mm = const { Length::parts(127, 80) };
    let size = thread.named_by().over(sixteenth_mm).ok().and_then(Length::whole);
    for form in [Form::Npt, Form::G] {
        let same = |pipe: &PipeSize| Some(i64::from(pipe.sixteenths)) == size && pipe.pitch == thread.pitch_mm();
        let pipe = pipe_sizes(form).find(same).map(|pipe| Thread::of_pipe_size(form, pipe));
        found.push(pipe, Near::SameFigures);
    }
}

/// The two nearest of the same diameter, then the nearest below and above of the same pitch: in one walk.
#[inline(never)]
fn search(found: &mut NearThreads, sought: &Sought) {
    let (diameter, pitch) = (sought.diameter, sought.pitch);
    let [mut first, mut second, mut below, mut above] = [None::<(Length, Length)>; 4];
    for row in super::sizes(sought.form) {
        let (d, p) = row;
        if d == diameter && p != pitch {
            let is_nearer = |held: Option<(Length, Length)>| held.is_none_or(|(_, q)| away(p, pitch) < away(q, pitch));
            if is_nearer(first) {
                (first, second) = (Some(row), first);
            } else if is_nearer(second) && first != Some(row) {
                second = Some(row);
            }
        } else if p == pitch && d < diameter && below.is_none_or(|(held, _)| held <= d) {
            below = Some(row);
        } else if p == pitch && d > diameter && above.is_none_or(|(held, _)| d < held) {
            above = Some(row);
        }
    }
    let reasons = [Near::SameDiameter, Near::SameDiameter, Near::SamePitch, Near::SamePitch];
    for (row, reason) in [first, second, below, above].into_iter().zip(reasons) {
        found.push(row.and_then(|row| sought.build(row)), reason);
    }
}
