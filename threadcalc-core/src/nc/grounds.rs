//! What a finding of a program rests on, in words.

use core::fmt;

use super::finding::{Evidence, EvidenceKind, ProgramFinding};
use crate::length::Length;

/// What a finding rests on, in one line: the lines that it follows from, the calls, the tool, the thread.
#[derive(Clone, Copy, Debug)]
pub struct Grounds<'a>(&'a ProgramFinding);

impl<'a> Grounds<'a> {
    pub(super) const fn of(finding: &'a ProgramFinding) -> Self {
        Self(finding)
    }

    /// Whether it rests on nothing but its own block.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        let finding = self.0;
        finding.tool().is_none() && finding.evidence().next().is_none() && finding.call_path().next().is_none()
    }
}

/// `M6x1-6H named in line 12, F set in line 15, called from line 4, T2`
impl fmt::Display for Grounds<'_> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let finding = self.0;
        let mut gap = "";
        for evidence in finding.evidence() {
            f.write_str(core::mem::replace(&mut gap, ", "))?;
            match (evidence.kind, finding.thread()) {
                (EvidenceKind::Thread, Some(thread)) => write!(f, "{thread} named")?,
                _ => f.write_str(evidence.kind.text())?,
            }
            evidence.place(f)?;
        }
        for line in finding.call_path() {
            f.write_str(core::mem::replace(&mut gap, ", "))?;
            f.write_str("called from line ")?;
            number(line, f)?;
        }
        if let Some(tool) = finding.tool() {
            f.write_str(gap)?;
            f.write_str("T")?;
            number(tool, f)?;
        }
        Ok(())
    }
}

impl EvidenceKind {
    /// What the line did, in words.
    #[must_use]
    pub const fn text(self) -> &'static str {
        match self {
            Self::Speed => "S set",
            Self::Feed => "F set",
            Self::Units => "unit set",
            Self::FeedMode => "feed mode set",
            Self::Cycle => "cycle begun",
            Self::Tool => "tool changed",
            Self::Thread => "thread named",
            Self::Drill => "hole drilled",
            Self::BlockDelete => "block delete",
        }
    }
}

impl Evidence {
    fn place(self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        if self.line == 0 {
            return f.write_str(" outside the program");
        }
        f.write_str(" in line ")?;
        number(self.line, f)
    }
}

/// `F set in line 15`
impl fmt::Display for Evidence {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.kind.text())?;
        self.place(f)
    }
}

pub(super) fn number(value: u32, f: &mut fmt::Formatter<'_>) -> fmt::Result {
    fmt::Display::fmt(&Length::integer(i64::from(value)), f)
}
