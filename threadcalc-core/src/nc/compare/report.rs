//! A whole comparison in words, with what could not be compared.

use core::fmt;

use super::change::{write_block, write_whole};
use super::values::HoleValue;
use super::{Comparison, NEVER_COMPARED};
use crate::nc::report::{Reason, Unchecked};

/// What makes a hole go unseen.
const HIDES_HOLES: [Reason; 4] =
    [Reason::BlockNotRead, Reason::MacrosLeft, Reason::CallNotFollowed, Reason::BehindTheEnd];

/// All of a comparison, for its JSON and its text: a door collects the holes of both versions and what their checks
/// could not see. Written with [`NEVER_COMPARED`] beside it (feature `serde`).
#[derive(Clone, Copy, Debug)]
pub struct ComparisonReport<'a> {
    /// The holes.
    pub comparison: Comparison<'a>,
    /// What the check of the old version could not see.
    pub before_not_checked: &'a [Unchecked],
    /// The same of the new version.
    pub after_not_checked: &'a [Unchecked],
}

/// A line for every change, how many holes there are of what, and what was not compared.
impl fmt::Display for Comparison<'_> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        for change in self.changes() {
            fmt::Display::fmt(&change, f)?;
            f.write_str("\n")?;
        }
        let counts = self.counts();
        let is_same = counts.changed == 0 && counts.added == 0 && counts.removed == 0;
        if is_same {
            f.write_str("no tapped hole changed: ")?;
        }
        write_whole(f, counts.before)?;
        f.write_str(" tapping blocks before, ")?;
        write_whole(f, counts.after)?;
        f.write_str(" now")?;
        if is_same {
            f.write_str(", compared by")?;
            for (place, value) in (0..usize::MAX).zip(HoleValue::ALL) {
                f.write_str(if place == 0 { " " } else { ", " })?;
                f.write_str(value.name())?;
            }
        } else {
            for (between, count, what) in
                [(": ", counts.changed, " changed"), (", ", counts.added, " added"), (", ", counts.removed, " removed")]
            {
                f.write_str(between)?;
                write_whole(f, count)?;
                f.write_str(what)?;
            }
        }
        for open in self.not_compared() {
            f.write_str("\nnot compared, not known before nor now: ")?;
            f.write_str(open.value.name())?;
            f.write_str(" of ")?;
            write_whole(f, open.count)?;
            f.write_str(if open.count == 1 { " hole, " } else { " holes, first " })?;
            write_block(f, &open.after)?;
        }
        Ok(())
    }
}

/// The comparison, then what may hide holes in either version, then what is never compared.
impl fmt::Display for ComparisonReport<'_> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        fmt::Display::fmt(&self.comparison, f)?;
        for (version, not_checked) in [("old", self.before_not_checked), ("new", self.after_not_checked)] {
            for open in not_checked.iter().filter(|open| HIDES_HOLES.contains(&open.reason)) {
                for part in ["\nholes may be missing, ", version, " version, line "] {
                    f.write_str(part)?;
                }
                write_whole(f, open.first_line)?;
                f.write_str(": ")?;
                f.write_str(open.reason.text())?;
            }
        }
        f.write_str("\nnever compared:")?;
        for what in NEVER_COMPARED {
            f.write_str("\n  ")?;
            f.write_str(what)?;
        }
        Ok(())
    }
}
