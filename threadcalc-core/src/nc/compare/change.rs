//! What became of one hole, in words.

use core::fmt;

use super::shown::Shown;
use super::values::{Differences, HoleValue, HoleValues};
use crate::feed::Unit;
use crate::length::Length;
use crate::named::named;
use crate::nc::report::TappedHole;

named! {
    /// What became of a hole.
    pub enum ChangeKind {
        /// It stands in both versions, and something of it is another.
        Changed = 1 "changed",
        /// It stands in the new version only.
        Added = 2 "added",
        /// It stands in the old version only.
        Removed = 3 "removed",
    }
}

/// A hole that is not what it was.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct HoleChange {
    /// The hole in the old version; None if it is new.
    pub before: Option<TappedHole>,
    /// The hole in the new version; None if it is gone.
    pub after: Option<TappedHole>,
    /// What has changed; none of a hole that is new or gone.
    pub changed: HoleValues,
    /// What was not known on either side.
    pub not_compared: HoleValues,
}

impl HoleChange {
    /// What became of a hole; None if nothing did.
    pub(super) fn of(before: Option<&TappedHole>, after: Option<&TappedHole>) -> Option<Self> {
        let differences = before.zip(after).map(|(before, after)| Differences::between(before, after));
        if differences.is_some_and(|differences| differences.changed.is_empty()) {
            return None;
        }
        let none = Differences { changed: HoleValues::NONE, not_compared: HoleValues::NONE };
        let Differences { changed, not_compared } = differences.unwrap_or(none);
        Some(Self { before: before.copied(), after: after.copied(), changed, not_compared })
    }

    /// What became of it.
    #[must_use]
    pub const fn kind(&self) -> ChangeKind {
        match (&self.before, &self.after) {
            (None, _) => ChangeKind::Added,
            (_, None) => ChangeKind::Removed,
            _ => ChangeKind::Changed,
        }
    }
}

/// One line: which hole, where it stands in both versions, and what has changed from what to what, in the unit of
/// the new version.
impl fmt::Display for HoleChange {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match (&self.before, &self.after) {
            (Some(before), Some(after)) => {
                write_block(f, after)?;
                if (before.number, before.line) != (after.number, after.line) {
                    f.write_str(" (before: ")?;
                    write_block(f, before)?;
                    f.write_str(")")?;
                }
                let mut separator = ": ";
                for value in self.changed.iter() {
                    f.write_str(separator)?;
                    write_change(f, value, before, after)?;
                    separator = ", ";
                }
                for (place, value) in (0..usize::MAX).zip(self.not_compared.iter()) {
                    f.write_str(if place == 0 { "; not known before nor now: " } else { ", " })?;
                    f.write_str(value.name())?;
                }
                Ok(())
            }
            (_, Some(hole)) => write_lone(f, hole, " added: "),
            (Some(hole), None) => write_lone(f, hole, " of the old version removed: "),
            (None, None) => Ok(()),
        }
    }
}

pub(super) fn write_block(f: &mut fmt::Formatter<'_>, hole: &TappedHole) -> fmt::Result {
    f.write_str("hole ")?;
    write_whole(f, hole.number)?;
    f.write_str(", line ")?;
    write_whole(f, hole.line)
}

pub(super) fn write_whole(f: &mut fmt::Formatter<'_>, number: u32) -> fmt::Result {
    fmt::Display::fmt(&Length::integer(i64::from(number)), f)
}

/// A hole that stands in one version only, with all that is known of it.
fn write_lone(f: &mut fmt::Formatter<'_>, hole: &TappedHole, what: &str) -> fmt::Result {
    write_block(f, hole)?;
    let mut separator = what;
    for value in HoleValue::ALL.iter().copied().filter(|value| is_told(*value, hole)) {
        let shown = Shown::of(value, hole, hole.unit);
        for part in [separator, value.name(), " ", shown.text(), shown.unit()] {
            f.write_str(part)?;
        }
        separator = ", ";
    }
    Ok(())
}

/// What goes without saying is not said.
fn is_told(value: HoleValue, hole: &TappedHole) -> bool {
    match value {
        HoleValue::Count => hole.count != 1,
        HoleValue::Thread => hole.thread.is_some(),
        _ => true,
    }
}

fn write_change(f: &mut fmt::Formatter<'_>, value: HoleValue, before: &TappedHole, after: &TappedHole) -> fmt::Result {
    f.write_str(value.name())?;
    f.write_str(" ")?;
    let (old, new) = (Shown::of(value, before, after.unit), Shown::of(value, after, after.unit));
    if old.text() == new.text() {
        // Where the decimals do not show it, the exact numbers do.
        return write_pair(f, &Shown::exact(value, before), &Shown::exact(value, after));
    }
    write_pair(f, &old, &new)?;
    if value == HoleValue::Lead && after.unit == Some(Unit::Inch) {
        // A pitch in millimetres is not known again in inches.
        let (old, new) = (Shown::of(value, before, Some(Unit::Mm)), Shown::of(value, after, Some(Unit::Mm)));
        f.write_str(" (")?;
        write_pair(f, &old, &new)?;
        f.write_str(")")?;
    }
    Ok(())
}

/// Both with the unit behind them, or behind the one that is known.
fn write_pair(f: &mut fmt::Formatter<'_>, old: &Shown, new: &Shown) -> fmt::Result {
    let unit_of_old = if new.unit().is_empty() { old.unit() } else { "" };
    [old.text(), unit_of_old, " -> ", new.text(), new.unit()].into_iter().try_for_each(|part| f.write_str(part))
}
