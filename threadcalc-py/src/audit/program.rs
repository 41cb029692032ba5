//! `AuditedProgram`: what an audit says of a file.

use std::path::PathBuf;

use pyo3::prelude::*;
use threadcalc_core::nc;

use super::baseline::Collected;
use super::known::Mark;
use crate::check::Report;
use crate::program_finding::ProgramFinding;

/// What an audit says of a file.
#[pyclass(module = "threadcalc", frozen)]
pub struct AuditedProgram {
    pub path: PathBuf,
    /// Its name below the folder that was named.
    pub name: String,
    pub skipped: Option<String>,
    pub report: Option<Py<Report>>,
    /// For each finding of the report: what tells it again, and whether the baseline knew it.
    pub marks: Vec<(Mark, bool)>,
}

#[pymethods]
impl AuditedProgram {
    /// The file, below the path that was named.
    #[getter]
    fn path(&self) -> PathBuf {
        self.path.clone()
    }

    /// What the check has to say; None if it was skipped.
    #[getter]
    fn report(&self, py: Python<'_>) -> Option<Py<Report>> {
        self.report.as_ref().map(|report| report.clone_ref(py))
    }

    /// Why it was not checked; None if it was.
    #[getter]
    fn skipped(&self) -> Option<&str> {
        self.skipped.as_deref()
    }

    /// What the baseline did not know, the dangerous first.
    #[getter]
    fn findings(&self) -> Vec<ProgramFinding> {
        self.by_danger(false)
    }

    /// What the baseline knew, the dangerous first.
    #[getter]
    fn silenced(&self) -> Vec<ProgramFinding> {
        self.by_danger(true)
    }

    fn __str__(&self) -> String {
        let path = self.path.display();
        if let Some(skipped) = &self.skipped {
            return format!("{path}: skipped, {skipped}");
        }
        let lines: Vec<_> = self.findings().iter().map(|finding| format!("{path}: {}", finding.0)).collect();
        if lines.is_empty() { format!("{path}: no findings") } else { lines.join("\n") }
    }

    fn __repr__(&self) -> String {
        let what = match &self.skipped {
            Some(skipped) => format!("skipped, {skipped}"),
            None => format!("{} findings, {} silenced", self.findings().len(), self.silenced().len()),
        };
        format!("<AuditedProgram {}: {what}>", self.path.display())
    }
}

impl AuditedProgram {
    fn all(&self) -> impl Iterator<Item = (&nc::ProgramFinding, &(Mark, bool))> {
        self.report.iter().flat_map(|report| &report.get().findings).zip(&self.marks)
    }

    fn by_danger(&self, is_known: bool) -> Vec<ProgramFinding> {
        let mut found: Vec<_> = self.all().filter(|(_, (_, known))| *known == is_known).map(|(one, _)| *one).collect();
        // A stable sort: those of one severity stay in the order of the report.
        found.sort_by_key(|finding| finding.severity().number());
        found.into_iter().map(ProgramFinding).collect()
    }

    /// Hands its findings to a baseline.
    pub fn collect(&self, collected: &mut Collected) {
        self.all().for_each(|(finding, (mark, _))| collected.add(&self.name, finding, mark));
    }
}
