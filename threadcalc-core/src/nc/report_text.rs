//! A report as somebody at the machine reads it.

use core::fmt;

use super::grounds::number;
use super::report::{CHECK_CAUTIONS, NEVER_CHECKED, Report, TappedHole, Unchecked};
use crate::finding::Severity;

/// The worst first, each with what it rests on; then what was checked, and what was not.
impl fmt::Display for Report<'_> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        for severity in Severity::ALL {
            for finding in self.findings.iter().filter(|finding| finding.severity() == *severity) {
                writeln!(f, "{finding}")?;
                let grounds = finding.grounds();
                if !grounds.is_empty() {
                    writeln!(f, "  because: {grounds}")?;
                }
            }
        }
        if self.findings.is_empty() {
            f.write_str("no findings\n")?;
        }
        self.checked(f)?;
        if !self.not_checked.is_empty() {
            f.write_str("not checked in this program:\n")?;
        }
        self.not_checked.iter().try_for_each(|open| writeln!(f, "  {open}"))?;
        f.write_str("never checked, no text shows it:\n")?;
        NEVER_CHECKED.iter().try_for_each(|what| writeln!(f, "  {what}"))?;
        let mut gap = "";
        CHECK_CAUTIONS.iter().try_for_each(|caution| {
            f.write_str(core::mem::replace(&mut gap, "\n"))?;
            f.write_str(caution)
        })
    }
}

impl Report<'_> {
    /// How much of the tapping blocks was known, and so could be judged.
    fn checked(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        if self.tapped_holes.is_empty() {
            return f.write_str("checked: no tapping block was found\n");
        }
        f.write_str("checked: ")?;
        counted(self.tapped_holes.len(), "tapping block", f)?;
        let holes = self.tapped_holes.iter().fold(0_u32, |sum, hole| sum.saturating_add(hole.count));
        f.write_str(", ")?;
        counted(holes as usize, "hole", f)?;
        f.write_str("\n  of the blocks, ")?;
        self.known("lead", |hole| hole.lead_mm.is_some(), f)?;
        f.write_str(", ")?;
        self.known("thread", |hole| hole.thread.is_some(), f)?;
        f.write_str(", ")?;
        self.known("depth", |hole| hole.depth_mm.is_some(), f)?;
        f.write_str(", ")?;
        self.known("hand", |hole| hole.hand.is_some(), f)?;
        f.write_str("\n")
    }

    fn known(&self, what: &str, is: fn(&TappedHole) -> bool, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(what)?;
        f.write_str(" known in ")?;
        let known = self.tapped_holes.iter().fold(0_usize, |sum, hole| sum.saturating_add(usize::from(is(hole))));
        count(known, f)
    }
}

/// `line 5: the lead could not be computed`
impl fmt::Display for Unchecked {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(if self.count == 1 { "line " } else { "from line " })?;
        number(self.first_line, f)?;
        if self.count != 1 {
            f.write_str(" on, ")?;
            number(self.count, f)?;
            f.write_str(" times")?;
        }
        f.write_str(": ")?;
        f.write_str(self.reason.text())
    }
}

fn count(things: usize, f: &mut fmt::Formatter<'_>) -> fmt::Result {
    number(u32::try_from(things).unwrap_or(u32::MAX), f)
}

fn counted(things: usize, what: &str, f: &mut fmt::Formatter<'_>) -> fmt::Result {
    count(things, f)?;
    f.write_str(" ")?;
    f.write_str(what)?;
    f.write_str(if things == 1 { "" } else { "s" })
}
