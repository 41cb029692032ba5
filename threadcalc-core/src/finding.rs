//! What is doubtful or wrong, in one shape everywhere.

use core::fmt;

pub use crate::finding_id::FindingId;
use crate::named::named;
pub use crate::number_key::NumberKey;
use crate::text::{Text, write_f64};

named! {
    /// How bad a finding is.
    pub enum Severity {
        /// Wrong: no words are given while it stands.
        Error = 1 "error",
        /// Doubtful: look at it before pressing start.
        Warning = 2 "warning",
        /// Good to know, or an assumption that was made.
        Info = 3 "info",
    }
}

impl Severity {
    /// An error, or only a warning.
    pub(crate) const fn error_if(is_error: bool) -> Self {
        if is_error { Self::Error } else { Self::Warning }
    }
}

/// How many numbers a finding can carry.
const MOST_NUMBERS: usize = 3;

/// Something doubtful or wrong that does not keep a result from existing.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Finding {
    id: FindingId,
    severity: Severity,
    evidence: &'static str,
    keys: [Option<NumberKey>; MOST_NUMBERS],
    values: [f64; MOST_NUMBERS],
    suggestion: Text<96>,
}

impl Finding {
    /// A finding with the severity of its id.
    #[must_use]
    pub const fn new(id: FindingId) -> Self {
        Self {
            id,
            severity: id.severity(),
            evidence: "",
            keys: [None; MOST_NUMBERS],
            values: [0.0; MOST_NUMBERS],
            suggestion: Text::new(),
        }
    }

    /// The same finding with this severity.
    #[must_use]
    pub const fn with_severity(mut self, severity: Severity) -> Self {
        self.severity = severity;
        self
    }

    /// The same finding with the input it rests on.
    #[must_use]
    pub const fn with_evidence(mut self, evidence: &'static str) -> Self {
        self.evidence = evidence;
        self
    }

    /// The same finding with one more number; a fourth has no room and is left out.
    #[must_use]
    pub fn with_number(mut self, key: NumberKey, value: f64) -> Self {
        self.add_number(key, value);
        self
    }

    pub(crate) const fn rate(&mut self, severity: Severity) {
        self.severity = severity;
    }

    pub(crate) fn add_number(&mut self, key: NumberKey, value: f64) {
        let free = self.keys.iter_mut().zip(&mut self.values).find(|(key, _)| key.is_none());
        if let Some((free, place)) = free {
            (*free, *place) = (Some(key), value);
        }
    }

    /// The same finding with more of what would be right; what does not fit is left out whole.
    #[must_use]
    pub fn with_suggestion(mut self, text: &str) -> Self {
        self.suggest(text);
        self
    }

    pub(crate) fn suggest(&mut self, text: &str) {
        // A suggestion is advice; a part of it that has no room is better absent than cut.
        let _fits = self.suggestion.push(text);
    }

    pub(crate) fn suggest_as_written(&mut self, what: &impl fmt::Display) {
        use fmt::Write;
        // What is written here is shorter than the room.
        let _fits = write!(self.suggestion, "{what}");
    }

    /// The stable id.
    #[must_use]
    pub const fn id(&self) -> FindingId {
        self.id
    }

    /// How bad it is.
    #[must_use]
    pub const fn severity(&self) -> Severity {
        self.severity
    }

    /// What it means, in one line.
    #[must_use]
    pub const fn message(&self) -> &'static str {
        self.id.message()
    }

    /// The input that it rests on, by its name in a job.
    #[must_use]
    pub const fn evidence(&self) -> &'static str {
        self.evidence
    }

    /// The numbers, by name.
    pub fn numbers(&self) -> impl Iterator<Item = (NumberKey, f64)> + '_ {
        self.keys.iter().zip(&self.values).filter_map(|(key, value)| key.map(|key| (key, *value)))
    }

    /// What would be right; may be empty.
    #[must_use]
    pub fn suggestion(&self) -> &str {
        self.suggestion.as_str()
    }
}

/// `warning not-standard: not in a standard series; near M10x1.25`.
impl fmt::Display for Finding {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.severity.name())?;
        f.write_str(" ")?;
        f.write_str(self.id.name())?;
        f.write_str(": ")?;
        f.write_str(self.message())?;
        for (key, value) in self.numbers() {
            f.write_str(", ")?;
            f.write_str(key.name())?;
            f.write_str(" ")?;
            write_f64(f, value)?;
        }
        if !self.suggestion.is_empty() {
            f.write_str(": ")?;
            f.write_str(self.suggestion())?;
        }
        Ok(())
    }
}

#[cfg(feature = "serde")]
impl serde::Serialize for Finding {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        use serde::ser::SerializeStruct;
        struct Numbers<'a>(&'a Finding);
        impl serde::Serialize for Numbers<'_> {
            fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
                serializer.collect_map(self.0.numbers().map(|(key, value)| (key.name(), value)))
            }
        }
        let mut finding = serializer.serialize_struct("Finding", 6)?;
        finding.serialize_field("id", &self.id)?;
        finding.serialize_field("severity", &self.severity)?;
        finding.serialize_field("message", self.message())?;
        finding.serialize_field("numbers", &Numbers(self))?;
        finding.serialize_field("evidence", self.evidence)?;
        finding.serialize_field("suggestion", self.suggestion())?;
        finding.end()
    }
}

/// How many findings a plan holds.
pub(crate) const MOST_FINDINGS: usize = 16;

/// The findings of one answer, in the order they were made.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Findings<const N: usize = MOST_FINDINGS> {
    held: [Option<Finding>; N],
    count: usize,
}

impl<const N: usize> Findings<N> {
    /// No findings.
    #[must_use]
    pub const fn new() -> Self {
        Self { held: [None; N], count: 0 }
    }

    /// Adds one. With no room left the last place says so, and nothing is lost silently.
    pub fn push(&mut self, finding: Finding) {
        self.open().push(finding);
    }

    /// These findings to add to, whatever room they have.
    pub(crate) fn open(&mut self) -> OpenFindings<'_> {
        OpenFindings { held: &mut self.held, count: &mut self.count }
    }

    /// Adds one of this id and input, filled in where it stands.
    pub(crate) fn write(&mut self, id: FindingId, evidence: &'static str, fill_in: impl FnOnce(&mut Finding)) {
        self.open().write(id, evidence, fill_in);
    }

    /// Adds all of another answer.
    pub fn extend<const M: usize>(&mut self, others: &Findings<M>) {
        for finding in others.iter() {
            self.push(*finding);
        }
    }

    /// The findings.
    pub fn iter(&self) -> impl Iterator<Item = &Finding> {
        self.held.iter().take(self.count).flatten()
    }

    /// True if one of them is of severity error.
    #[must_use]
    pub fn has_error(&self) -> bool {
        self.iter().any(|finding| finding.severity == Severity::Error)
    }
}

/// Findings that are added to where they stand, so that no second list of them takes room.
pub(crate) struct OpenFindings<'a> {
    held: &'a mut [Option<Finding>],
    count: &'a mut usize,
}

impl OpenFindings<'_> {
    pub(crate) fn write(&mut self, id: FindingId, evidence: &'static str, fill_in: impl FnOnce(&mut Finding)) {
        match self.held.get_mut(*self.count) {
            Some(free) => {
                *self.count = self.count.saturating_add(1);
                fill_in(free.insert(Finding::new(id).with_evidence(evidence)));
            }
            None => self.push(Finding::new(id)),
        }
    }

    pub(crate) fn push(&mut self, finding: Finding) {
        if let Some(free) = self.held.get_mut(*self.count) {
            *free = Some(finding);
            *self.count = self.count.saturating_add(1);
            return;
        }
        if let Some(last) = self.held.last_mut() {
            let severe = finding.severity == Severity::Error || last.is_some_and(|f| f.severity == Severity::Error);
            let severity = if severe { Severity::Error } else { Severity::Warning };
            *last = Some(Finding::new(FindingId::MoreFindings).with_severity(severity));
        }
    }
}

impl<const N: usize> Default for Findings<N> {
    fn default() -> Self {
        Self::new()
    }
}

#[cfg(feature = "serde")]
impl<const N: usize> serde::Serialize for Findings<N> {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_seq(self.iter())
    }
}
