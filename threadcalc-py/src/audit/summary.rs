//! `AuditSummary`: what an audit comes to.

use std::collections::BTreeMap;
use std::fmt;

use pyo3::prelude::*;
use threadcalc_core::nc::{NEVER_CHECKED, ProgramFinding, Reason};

use super::work::Outcome;

/// What the files so far come to.
#[pyclass(module = "threadcalc", frozen)]
#[derive(Clone, Default)]
pub struct AuditSummary {
    total: usize,
    left_out: u64,
    done: usize,
    checked: u64,
    with_findings: u64,
    skipped: BTreeMap<&'static str, u64>,
    /// By number of severity and by id, findings and those of them that the baseline knew.
    found: BTreeMap<(i32, &'static str), Count>,
    tapping_blocks: u64,
    without_lead: u64,
    not_checked: BTreeMap<&'static str, u64>,
    known_left: Option<u64>,
}

#[derive(Clone, Copy, Default)]
struct Count {
    shown: u64,
    silenced: u64,
    severity: &'static str,
}

fn count<K: Ord>(counts: &mut BTreeMap<K, u64>, key: K, more: u64) {
    let held = counts.entry(key).or_insert(0);
    *held = held.saturating_add(more);
}

impl AuditSummary {
    /// Of so many files, before the first.
    pub fn new(total: usize, left_out: u64) -> Self {
        Self { total, left_out, ..Self::default() }
    }

    /// With so many findings of the baseline that did not occur.
    pub fn with_known_left(self, known_left: Option<u64>) -> Self {
        Self { known_left, ..self }
    }

    /// Counts a file.
    pub fn add(&mut self, outcome: &Outcome, is_known: &[bool]) {
        self.done = self.done.saturating_add(1);
        let report = match outcome {
            Outcome::Skipped(skipped) => return count(&mut self.skipped, skipped.name(), 1),
            Outcome::Checked(report, _marks) => report,
        };
        self.checked = self.checked.saturating_add(1);
        self.with_findings = self.with_findings.saturating_add(u64::from(is_known.contains(&false)));
        for (finding, known) in report.findings.iter().zip(is_known) {
            self.add_finding(finding, *known);
        }
        for hole in &report.holes {
            self.tapping_blocks = self.tapping_blocks.saturating_add(1);
            self.without_lead = self.without_lead.saturating_add(u64::from(hole.lead_mm.is_none()));
        }
        for open in &report.not_checked {
            count(&mut self.not_checked, open.reason.name(), u64::from(open.count));
        }
    }

    fn add_finding(&mut self, finding: &ProgramFinding, is_known: bool) {
        let severity = finding.severity();
        let held = self.found.entry((severity.number(), finding.id().name())).or_default();
        held.severity = severity.name();
        let counted = if is_known { &mut held.silenced } else { &mut held.shown };
        *counted = counted.saturating_add(1);
    }

    fn by_severity(&self, of: impl Fn(&Count) -> u64) -> BTreeMap<&'static str, u64> {
        let mut sums = BTreeMap::new();
        self.found.values().filter(|held| of(held) > 0).for_each(|held| count(&mut sums, held.severity, of(held)));
        sums
    }
}

#[pymethods]
impl AuditSummary {
    /// The files of the audit.
    #[getter]
    fn total(&self) -> usize {
        self.total
    }

    /// The files so far.
    #[getter]
    pub fn done(&self) -> usize {
        self.done
    }

    /// The programs that were checked.
    #[getter]
    fn checked(&self) -> u64 {
        self.checked
    }

    /// The programs with a finding that the baseline did not know.
    #[getter]
    fn with_findings(&self) -> u64 {
        self.with_findings
    }

    /// The files that were not checked, by reason.
    #[getter]
    fn skipped(&self) -> BTreeMap<&'static str, u64> {
        self.skipped.clone()
    }

    /// The files whose names are no program's.
    #[getter]
    fn left_out(&self) -> u64 {
        self.left_out
    }

    /// How many findings the baseline did not know, by severity and id.
    #[getter]
    fn findings(&self) -> BTreeMap<(&'static str, &'static str), u64> {
        let shown = self.found.iter().filter(|(_, held)| held.shown > 0);
        shown.map(|((_, id), held)| ((held.severity, *id), held.shown)).collect()
    }

    /// How many findings the baseline did not know, by severity.
    #[getter]
    fn severities(&self) -> BTreeMap<&'static str, u64> {
        self.by_severity(|held| held.shown)
    }

    /// How many findings the baseline knew, by severity.
    #[getter]
    fn silenced(&self) -> BTreeMap<&'static str, u64> {
        self.by_severity(|held| held.silenced)
    }

    /// How many findings of the baseline did not occur so far; None without a baseline.
    #[getter]
    fn known_left(&self) -> Option<u64> {
        self.known_left
    }

    /// The blocks that tap.
    #[getter]
    fn tapping_blocks(&self) -> u64 {
        self.tapping_blocks
    }

    /// Those of them whose lead could not be computed.
    #[getter]
    fn without_lead(&self) -> u64 {
        self.without_lead
    }

    /// How often something was not checked, by reason.
    #[getter]
    fn not_checked(&self) -> BTreeMap<&'static str, u64> {
        self.not_checked.clone()
    }

    fn __str__(&self) -> String {
        self.to_string()
    }

    fn __repr__(&self) -> String {
        format!("<AuditSummary: {} of {} files, {} checked>", self.done, self.total, self.checked)
    }
}

impl fmt::Display for AuditSummary {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        writeln!(f, "files: {} of {}", self.done, self.total)?;
        writeln!(f, "  checked: {}, {} of them with findings", self.checked, self.with_findings)?;
        for (reason, count) in &self.skipped {
            writeln!(f, "  skipped, {reason}: {count}")?;
        }
        if self.left_out > 0 {
            writeln!(f, "  left out by their names: {}", self.left_out)?;
        }
        writeln!(f, "findings:{}", if self.found.is_empty() { " none" } else { "" })?;
        for ((_, id), held) in &self.found {
            write!(f, "  {} {id}: {}", held.severity, held.shown)?;
            if held.silenced > 0 {
                write!(f, ", and {} silenced by the baseline", held.silenced)?;
            }
            writeln!(f)?;
        }
        if let Some(left) = self.known_left {
            writeln!(f, "  in the baseline and not found: {left}")?;
        }
        let known = self.tapping_blocks.saturating_sub(self.without_lead);
        write!(f, "tapping blocks: {known} checked, {} whose lead could not be computed", self.without_lead)?;
        for (name, count) in &self.not_checked {
            let text = Reason::from_name(name.as_bytes()).map_or("", Reason::text);
            write!(f, "\n  not checked, {text}: {count}")?;
        }
        f.write_str("\nnot checked in any program:")?;
        NEVER_CHECKED.iter().try_for_each(|what| write!(f, "\n  {what}"))
    }
}
