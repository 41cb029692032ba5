//! What a program does that is doubtful or wrong, and where.

use core::fmt;

use super::finding_id::ProgramFindingId;
pub use super::finding_keys::{EvidenceKind, ProgramNumberKey};
pub use super::grounds::Grounds;
pub use super::message::Message;
use crate::finding::Severity;
use crate::length::Length;
use crate::text::Text;
use crate::thread::Thread;

/// A line that a finding rests on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Evidence {
    /// What the line did.
    pub kind: EvidenceKind,
    /// The line, from 1; 0: no line, the control's own default or an input of the check.
    pub line: u32,
}

/// A number of a finding; some are a letter or a hand.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum FindingNumber {
    /// A number, derived.
    Double(f64),
    /// A short text, such as `LH` or `R`.
    Text(&'static str),
}

pub(super) const MOST_NUMBERS: usize = 9;
/// How many of the calls that lead to a line are told.
pub(super) const MOST_CALLS_TOLD: usize = 4;
pub(super) const MOST_EVIDENCE: usize = 6;

/// Something doubtful or wrong in a program.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ProgramFinding {
    pub(super) id: ProgramFindingId,
    pub(super) severity: Severity,
    pub(super) line: u32,
    pub(super) column: u32,
    pub(super) end_column: u32,
    pub(super) program: Option<u64>,
    pub(super) tool: Option<u32>,
    pub(super) hole: Option<u32>,
    pub(super) thread: Option<Thread>,
    pub(super) calls: [u32; MOST_CALLS_TOLD],
    pub(super) certain: bool,
    pub(super) reading: &'static str,
    replaces: bool,
    numbers: [Option<(ProgramNumberKey, FindingNumber)>; MOST_NUMBERS],
    evidence: [Option<Evidence>; MOST_EVIDENCE],
    suggestion: Text<48>,
}

impl ProgramFinding {
    pub(super) const fn new(id: ProgramFindingId, line: u32, column: u32, end_column: u32) -> Self {
        Self {
            id,
            severity: id.severity(),
            line,
            column,
            end_column,
            program: None,
            tool: None,
            hole: None,
            thread: None,
            calls: [0; MOST_CALLS_TOLD],
            certain: true,
            reading: "",
            replaces: false,
            numbers: [None; MOST_NUMBERS],
            evidence: [None; MOST_EVIDENCE],
            suggestion: Text::new(),
        }
    }

    pub(super) const fn severe(mut self, severity: Severity) -> Self {
        self.severity = severity;
        self
    }

    pub(super) fn with(self, key: ProgramNumberKey, value: f64) -> Self {
        self.with_number(key, FindingNumber::Double(value))
    }

    pub(super) fn with_number(mut self, key: ProgramNumberKey, value: FindingNumber) -> Self {
        self.set(key, value);
        self
    }

    pub(super) fn with_some(self, key: ProgramNumberKey, value: Option<f64>) -> Self {
        match value {
            Some(value) => self.with(key, value),
            None => self,
        }
    }

    /// Sets a number, in its place if it is there already; one without room is left out.
    pub(super) fn set(&mut self, key: ProgramNumberKey, value: FindingNumber) {
        let place = self.numbers.iter().position(|slot| slot.is_none_or(|(taken, _)| taken == key));
        if let Some(slot) = place.and_then(|place| self.numbers.get_mut(place)) {
            *slot = Some((key, value));
        }
    }

    /// A line that it rests on; one without room is left out.
    pub(super) fn because(mut self, kind: EvidenceKind, line: u32) -> Self {
        if let Some(slot) = self.evidence.iter_mut().find(|slot| slot.is_none()) {
            *slot = Some(Evidence { kind, line });
        }
        self
    }

    /// What to write instead; what does not fit is left out whole.
    pub(super) fn write(mut self, text: &str) -> Self {
        let _fits = self.suggestion.push(text);
        self
    }

    /// The same for a word that stands where the finding is.
    pub(super) fn write_over(mut self, text: &str) -> Self {
        self.replaces = self.suggestion.push(text);
        self
    }

    pub(super) const fn uncertain(mut self, reading: &'static str) -> Self {
        self.certain = false;
        self.reading = reading;
        self
    }

    /// The stable id.
    #[must_use]
    pub const fn id(&self) -> ProgramFindingId {
        self.id
    }

    /// How bad it is.
    #[must_use]
    pub const fn severity(&self) -> Severity {
        self.severity
    }

    /// The line, from 1.
    #[must_use]
    pub const fn line(&self) -> u32 {
        self.line
    }

    /// Where in the line it begins, in bytes from 1.
    #[must_use]
    pub const fn column(&self) -> u32 {
        self.column
    }

    /// The column behind its end.
    #[must_use]
    pub const fn end_column(&self) -> u32 {
        self.end_column
    }

    /// The number of the program that the line is in; `None` if it has none.
    #[must_use]
    pub const fn program(&self) -> Option<u64> {
        self.program
    }

    /// The lines of the calls that lead to the line, the outermost four, the outermost first.
    pub fn call_path(&self) -> impl Iterator<Item = u32> + '_ {
        self.calls.iter().copied().filter(|line| *line != 0)
    }

    /// The tool in the spindle; `None` if it is not known.
    #[must_use]
    pub const fn tool(&self) -> Option<u32> {
        self.tool
    }

    /// Which tapped hole of the program, from 1.
    #[must_use]
    pub const fn hole(&self) -> Option<u32> {
        self.hole
    }

    /// The thread that the hole is to have, where one is declared.
    #[must_use]
    pub const fn thread(&self) -> Option<&Thread> {
        self.thread.as_ref()
    }

    /// The numbers, by name.
    pub fn numbers(&self) -> impl Iterator<Item = (ProgramNumberKey, FindingNumber)> + '_ {
        self.numbers.iter().flatten().copied()
    }

    /// The lines that it rests on.
    pub fn evidence(&self) -> impl Iterator<Item = Evidence> + '_ {
        self.evidence.iter().flatten().copied()
    }

    /// What to write instead; may be empty.
    #[must_use]
    pub fn suggestion(&self) -> &str {
        self.suggestion.as_str()
    }

    /// Whether the suggestion takes the place of what stands from column to end column; else it is to be added, or
    /// stands for a word of another block.
    #[must_use]
    pub const fn replaces(&self) -> bool {
        self.replaces
    }

    /// Which reading of an unset dialect or of an unknown fact it holds under; empty if under every one.
    #[must_use]
    pub const fn reading(&self) -> &'static str {
        self.reading
    }

    /// False if it rests on something assumed.
    #[must_use]
    pub const fn certain(&self) -> bool {
        self.certain
    }

    /// Where a report lists it: by line and column, and findings of one place by their ids.
    #[must_use]
    pub const fn place(&self) -> (u32, u32, i32) {
        (self.line, self.column, self.id.number())
    }

    /// What it rests on, in one line; empty if on nothing but its own block.
    #[must_use]
    pub const fn grounds(&self) -> Grounds<'_> {
        Grounds::of(self)
    }

    /// What will happen, under which reading, and what to write, in one line.
    #[must_use]
    pub const fn text(&self) -> FindingText<'_> {
        FindingText(self)
    }

    /// What will happen, in one line.
    #[must_use]
    pub const fn message(&self) -> Message<'_> {
        Message::of(self)
    }
}

/// `error lead-mismatch, line 8, column 5: cuts a lead of 2 mm, the thread has 1 mm: write F350.`
impl fmt::Display for ProgramFinding {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.severity.name())?;
        f.write_str(" ")?;
        f.write_str(self.id.name())?;
        f.write_str(", line ")?;
        fmt::Display::fmt(&Length::integer(i64::from(self.line)), f)?;
        f.write_str(", column ")?;
        fmt::Display::fmt(&Length::integer(i64::from(self.column)), f)?;
        f.write_str(": ")?;
        fmt::Display::fmt(&self.text(), f)
    }
}

/// What will happen, under which reading, and what to write, in one line.
#[derive(Clone, Copy, Debug)]
pub struct FindingText<'a>(&'a ProgramFinding);

/// `cuts a lead of 2 mm, the thread has 1 mm (if F is per minute): write F350.`
impl fmt::Display for FindingText<'_> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let finding = self.0;
        fmt::Display::fmt(&finding.message(), f)?;
        if !finding.reading.is_empty() && finding.id != ProgramFindingId::DialectUnset {
            f.write_str(" (if ")?;
            f.write_str(finding.reading)?;
            f.write_str(")")?;
        }
        if !finding.suggestion.is_empty() {
            f.write_str(": write ")?;
            f.write_str(finding.suggestion())?;
        }
        Ok(())
    }
}
