//! What a drawing may have meant by a thread that no standard lists.

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

/// Up to eight near threads, nearest first within each reason.
#[derive(Clone, Copy, Debug, Default)]
pub struct NearThreads {
    found: [Option<(Text<24>, Near)>; MOST],
}

impl NearThreads {
    /// The designations with the reason each is near.
    pub fn iter(&self) -> impl Iterator<Item = (&str, Near)> {
        self.found.iter().flatten().map(|(text, reason)| (text.as_str(), *reason))
    }

    /// Adds a thread that is not among them yet.
    fn push(&mut self, thread: Option<Thread>, reason: Near) {
        let text = thread.map_or(Text::new(), |thread| canonical(&thread));
        if text.is_empty() || self.iter().any(|(held, _)| held == text.as_str()) {
            return;
        }
        if let Some(free) = self.found.iter_mut().find(|slot| slot.is_none()) {
            *free = Some((text, reason));
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
    // A pipe thread of another size cannot be.
    let Some(diameter) = thread.nominal_mm() else { return found };
    let sought = Sought { diameter, own: thread.without_class().with_hand(Hand::Right) };
    let listed = super::sizes(thread.form());
    slips(&mut found, &sought, listed, |slip| slip == Slip::OfKeys, MOST_SLIPS);
    search(&mut found, &sought, listed);
    if thread.form().is_unified() && !thread.is_wire_insert() {
        same_figures(&mut found, thread);
    }
    slips(&mut found, &sought, listed, |_| true, MOST);
    found
}

/// The thread that others are near, of one start.
struct Sought {
    diameter: Length,
    own: Thread,
}

impl Sought {
    /// The listed thread, for a wire insert if this one is.
    fn build(&self, (diameter, pitch): (Length, Length)) -> Option<Thread> {
        let thread = Thread::build(self.own.form(), diameter, pitch, 1).ok()?;
        if self.own.is_wire_insert() { thread.with_wire_insert().ok() } else { Some(thread) }
    }

    /// Whether size or pitch are another one, which one character at most can have made.
    fn is_beside(&self, (diameter, pitch): (Length, Length)) -> bool {
        (diameter == self.diameter) != (pitch == self.own.pitch_mm())
    }
}

/// The canonical text; empty if there is none.
fn canonical(thread: &Thread) -> Text<24> {
    let mut text = Text::new();
    if write!(text, "{thread}").is_ok() { text } else { Text::new() }
}

/// Size and pitch of a canonical text, without the word of the series: `1/4-20` of `1/4-20 UNC`.
fn figures(text: &Text<24>) -> &[u8] {
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
fn slips(
    found: &mut NearThreads,
    sought: &Sought,
    listed: impl Iterator<Item = (Length, Length)> + Clone,
    is_wanted: impl Fn(Slip) -> bool,
    most: usize,
) {
    let own = canonical(&sought.own.with_starts(1).unwrap_or(sought.own));
    let is_slip = |row: &(Length, Length)| {
        let text = sought.build(*row).map_or(Text::new(), |thread| canonical(&thread));
        Slip::between(figures(&own), figures(&text)).is_some_and(&is_wanted)
    };
    let rank = |row: (Length, Length)| (away(row.0, sought.diameter), away(row.1, sought.own.pitch_mm()));
    let mut nearest: [Option<(Length, Length)>; MOST] = [None; MOST];
    let kept = nearest.get_mut(..most.min(MOST)).unwrap_or(&mut []);
    // Keeps the nearest in their order.
    for row in listed.filter(|row| sought.is_beside(*row)).filter(is_slip) {
        let mut row = Some(row);
        for slot in kept.iter_mut() {
            let is_nearer = match (row, *slot) {
                (Some(new), Some(held)) => rank(new) < rank(held),
                (new, held) => new.is_some() && held.is_none(),
            };
            if is_nearer {
                core::mem::swap(slot, &mut row);
            }
        }
    }
    for row in nearest {
        found.push(row.and_then(|row| sought.build(row)), Near::OneCharacter);
    }
}

fn away(a: Length, b: Length) -> Length {
    a.minus(b).map_or(Length::integer(i64::MAX), Length::magnitude)
}

/// The pipe threads that are written with the same size and threads per inch.
fn same_figures(found: &mut NearThreads, thread: &Thread) {
    let sixteenth_mm = Length::parts(127, 80);
    let size = thread.named_by().over(sixteenth_mm).ok().and_then(Length::whole);
    for form in [Form::Npt, Form::G] {
        let same = |pipe: &PipeSize| Some(i64::from(pipe.sixteenths)) == size && pipe.pitch == thread.pitch_mm();
        let pipe = pipe_sizes(form).find(same).map(|pipe| Thread::of_pipe_size(form, pipe));
        found.push(pipe, Near::SameFigures);
    }
}

/// The two nearest of the same diameter, then the nearest below and above of the same pitch.
fn search(found: &mut NearThreads, sought: &Sought, listed: impl Iterator<Item = (Length, Length)> + Clone) {
    let (diameter, pitch) = (sought.diameter, sought.own.pitch_mm());
    let same_diameter = listed.clone().filter(|(d, p)| *d == diameter && *p != pitch);
    let first = same_diameter.clone().min_by_key(|(_, p)| away(*p, pitch));
    let second = same_diameter.filter(|row| Some(*row) != first).min_by_key(|(_, p)| away(*p, pitch));
    let same_pitch = listed.filter(|(d, p)| *p == pitch && *d != diameter);
    let below = same_pitch.clone().filter(|(d, _)| *d < diameter).max_by_key(|(d, _)| *d);
    let above = same_pitch.filter(|(d, _)| *d > diameter).min_by_key(|(d, _)| *d);
    let reasons = [Near::SameDiameter, Near::SameDiameter, Near::SamePitch, Near::SamePitch];
    for (row, reason) in [first, second, below, above].into_iter().zip(reasons) {
        found.push(row.and_then(|row| sought.build(row)), reason);
    }
}
