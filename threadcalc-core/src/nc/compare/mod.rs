//! Two versions of a program: which tapped holes are not what they were.

mod align;
mod change;
#[cfg(feature = "serde")]
mod json;
mod places;
mod report;
mod shown;
mod values;

pub use change::{ChangeKind, HoleChange};
pub use report::ComparisonReport;
pub use values::{HoleValue, HoleValues};

use align::{LONE, Pairs};

use super::report::TappedHole;
use crate::error::{Code, Error, Field};
use values::Differences;

/// What no comparison of tapped holes can see.
pub const NEVER_COMPARED: [&str; 4] = [
    "what does not tap: drilling, moves, stops",
    "R planes, dwells, retract speeds and how the spindle is driven",
    "tool lengths, offsets and the tools themselves",
    "whether either version is right: check it",
];

/// How many words of scratch [`compare`] takes for so many holes.
///
/// ```
/// assert_eq!(threadcalc_core::nc::scratch_for(3, 4), 14);
/// ```
#[must_use]
pub const fn scratch_for(old: usize, new: usize) -> usize {
    old.saturating_add(new).saturating_mul(2)
}

/// Which holes of two versions of a program are the same hole, and what became of them.
#[derive(Clone, Copy, Debug)]
pub struct Comparison<'a> {
    old: &'a [TappedHole],
    new: &'a [TappedHole],
    of_old: &'a [u32],
    of_new: &'a [u32],
}

/// A value that was not known on either side.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct NotCompared {
    /// What was not compared.
    pub value: HoleValue,
    /// At how many holes.
    pub count: u32,
    /// The first of them, in the old version.
    pub before: TappedHole,
    /// The same in the new version.
    pub after: TappedHole,
}

/// How many holes there are of what.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
#[non_exhaustive]
pub struct HoleCounts {
    /// Blocks that tap in the old version.
    pub before: u32,
    /// The same in the new version.
    pub after: u32,
    /// In both, and something of them has changed.
    pub changed: u32,
    /// In the new version only.
    pub added: u32,
    /// In the old version only.
    pub removed: u32,
}

/// Compares the tapped holes of two versions of a program.
///
/// A hole is found again by its place first: work offset, X and Y, and at one place by the order of visits. What is
/// left, holes that have moved and those whose place depends on a variable, is paired in the order of the program
/// so that most agree, then by thread or lead; a hole of another thread at another place is no pair, but one hole
/// removed and one added.
///
/// Sorting takes the time of n log n, pairing at most 128 comparisons a hole; both happen in `scratch`, of at least
/// [`scratch_for`] words, and in 9 KB of stack. What `scratch` held is overwritten.
///
/// The unit, the feed mode and F are no values: they make the lead. Where they or S differ, leads within 0.01 % are
/// the same, and where the units differ, lengths within 0.002 mm; what the same words say is compared exactly.
/// A value that is not known on one side is a change; on both, it is not compared.
///
/// # Errors
/// [`Code::OutOfRange`] if `scratch` is too short, [`Code::TooLong`] beyond 2^32 - 2 holes.
///
/// # Example
/// ```
/// use threadcalc_core::Dialect;
/// use threadcalc_core::nc::{CheckOptions, Event, ProgramCheck, TappedHole, compare, scratch_for};
///
/// let holes = |program: &[u8]| -> Vec<TappedHole> {
///     let check = ProgramCheck::new(program, &Dialect::rs274ngc(), &CheckOptions::default());
///     check.filter_map(|event| if let Event::Hole(hole) = event { Some(hole) } else { None }).collect()
/// };
/// let old = holes(b"G17 G21 G90 G94\nT1 M6 (TAP M8)\nS640 M3\nG98 G84 X0 Y0 Z-12. R5. F800.\nX20.\nG80\nM30\n");
/// let new = holes(b"G17 G21 G90 G94\nT1 M6 (TAP M8)\nS640 M3\nG98 G84 X20. Y0 Z-12. R5. F800.\nX0 F1024.\nG80\nM30\n");
/// let mut scratch = vec![0; scratch_for(old.len(), new.len())];
/// let comparison = compare(&old, &new, &mut scratch)?;
/// let changes: Vec<_> = comparison.changes().map(|change| change.to_string()).collect();
/// assert_eq!(changes, ["hole 2, line 5 (before: hole 1, line 4): lead 1.25 -> 1.6 mm"]);
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// Longest common subsequence: common practice of comparing texts. What is compared: common practice.
pub fn compare<'a>(
    old: &'a [TappedHole],
    new: &'a [TappedHole],
    scratch: &'a mut [u32],
) -> Result<Comparison<'a>, Error> {
    if old.len() >= LONE as usize || new.len() >= LONE as usize {
        return Err(Error::new(Code::TooLong, Field::Program));
    }
    let needed = scratch_for(old.len(), new.len());
    let short = Error::new(Code::OutOfRange, Field::Program).got(scratch.len() as f64);
    let short = short.within(needed as f64, f64::INFINITY).hint_text("scratch of scratch_for words");
    let (of_old, rest) = scratch.split_at_mut_checked(old.len()).ok_or(short)?;
    let (of_new, rest) = rest.split_at_mut_checked(new.len()).ok_or(short)?;
    let (old_order, rest) = rest.split_at_mut_checked(old.len()).ok_or(short)?;
    let new_order = rest.get_mut(..new.len()).ok_or(short)?;
    of_old.fill(LONE);
    of_new.fill(LONE);
    let mut pairs = Pairs { old, new, of_old: &mut *of_old, of_new: &mut *of_new };
    places::pair_by_place(&mut pairs, old_order, new_order);
    let (a, b) = (pairs.lone_old(old_order, |_| true), pairs.lone_new(new_order, |_| true));
    pairs.align(a, b, false);
    Ok(Comparison { old, new, of_old, of_new })
}

impl<'a> Comparison<'a> {
    /// What has changed: the holes of the new version in their order, then those that it no longer has.
    pub fn changes(&self) -> impl Iterator<Item = HoleChange> + Clone + 'a {
        self.pairs().filter_map(|(before, after)| HoleChange::of(before, after))
    }

    /// The values that were not known on either side, with how many holes.
    pub fn not_compared(&self) -> impl Iterator<Item = NotCompared> + Clone + 'a {
        let both = self.pairs().filter_map(|(before, after)| before.zip(after));
        HoleValue::ALL.iter().filter_map(move |value| {
            let mut open =
                both.clone().filter(|(before, after)| Differences::between(before, after).not_compared.holds(*value));
            let (before, after) = open.next()?;
            let count = open.fold(1_u32, |count, _| count.saturating_add(1));
            Some(NotCompared { value: *value, count, before: *before, after: *after })
        })
    }

    /// How many holes there are of what.
    #[must_use]
    pub fn counts(&self) -> HoleCounts {
        let length = |holes: &[TappedHole]| u32::try_from(holes.len()).unwrap_or(u32::MAX);
        let mut counts = HoleCounts { before: length(self.old), after: length(self.new), ..HoleCounts::default() };
        for change in self.changes() {
            let of_kind = match change.kind() {
                ChangeKind::Changed => &mut counts.changed,
                ChangeKind::Added => &mut counts.added,
                ChangeKind::Removed => &mut counts.removed,
            };
            *of_kind = of_kind.saturating_add(1);
        }
        counts
    }

    /// Every hole of both versions once.
    fn pairs(&self) -> impl Iterator<Item = (Option<&'a TappedHole>, Option<&'a TappedHole>)> + Clone + 'a {
        let old = self.old;
        let of_new = self.new.iter().zip(self.of_new).map(|(after, of_new)| (old.get(*of_new as usize), Some(after)));
        let lone = self.old.iter().zip(self.of_old).filter(|(_, of_old)| **of_old == LONE);
        of_new.chain(lone.map(|(before, _)| (Some(before), None)))
    }
}
