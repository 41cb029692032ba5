//! What a worker does with a file.

use std::sync::Arc;

use pyo3::exceptions::PyRuntimeError;
use pyo3::prelude::*;
use rayon::{ThreadPool, ThreadPoolBuilder};
use threadcalc_core::nc::{CheckOptions, Tool};

use super::dialects::Dialects;
use super::journal::{Journal, line_of};
use super::known::{Mark, marks};
use super::read::{Stamp, read, unfit};
use super::skipped::Skipped;
use super::walk::{Files, Found};
use super::window::Window;
use crate::check::{Report, run};

/// How many results may wait for the one before them, for each worker.
const WAITING_FOR_EACH: usize = 16;

/// What came of a file.
pub enum Outcome {
    /// The report, and what tells its findings again.
    Checked(Report, Vec<Mark>),
    Skipped(Skipped),
}

/// What a worker hands over.
pub struct Done {
    pub outcome: Outcome,
    /// The line that goes into the journal, if there is one and the file is not in it.
    pub line: Option<String>,
}

/// Everything that workers look at.
pub struct Task {
    pub files: Files,
    pub dialects: Dialects,
    pub options: CheckOptions,
    pub tools: Vec<Tool>,
    pub largest_bytes: u64,
    pub journal: Option<Journal>,
    pub window: Window<Done>,
}

impl Task {
    /// The window of this many files and workers.
    pub fn window(files: usize, workers: usize) -> Window<Done> {
        Window::new(files, workers.saturating_mul(WAITING_FOR_EACH))
    }

    /// Begins to work.
    pub fn start(self: &Arc<Self>, workers: usize) -> PyResult<ThreadPool> {
        let stop = Arc::clone(self);
        let pool = ThreadPoolBuilder::new()
            .num_threads(workers)
            .thread_name(|number| format!("threadcalc-audit-{number}"))
            // A result that never comes would be waited for without end.
            .panic_handler(move |_| stop.window.stop())
            .build()
            .map_err(|error| PyRuntimeError::new_err(error.to_string()))?;
        let task = Arc::clone(self);
        pool.spawn_broadcast(move |_| {
            while let Some(number) = task.window.begin() {
                let Some(found) = task.files.get(number) else { return };
                task.window.finish(number, task.audit(&found));
            }
        });
        Ok(pool)
    }

    fn audit(&self, found: &Found<'_>) -> Done {
        self.try_audit(found).unwrap_or_else(|skipped| Done { outcome: Outcome::Skipped(skipped), line: None })
    }

    /// What depends on more than the bytes of the file is an error here, and not kept in a journal.
    fn try_audit(&self, found: &Found<'_>) -> Result<Done, Skipped> {
        if let Some(skipped) = found.skipped {
            return Err(skipped.clone());
        }
        if let Some(journal) = &self.journal {
            let stamp = Stamp::of(&found.path, self.largest_bytes)?;
            if let Some(outcome) = journal.get(&found.place, stamp) {
                return Ok(Done { outcome, line: None });
            }
        }
        let (bytes, stamp) = read(&found.path, self.largest_bytes)?;
        let outcome = match unfit(&bytes) {
            Some(skipped) => Outcome::Skipped(skipped),
            None => self.check(&bytes, found)?,
        };
        let line = self.journal.as_ref().and_then(|_| line_of(&found.place, stamp, &outcome).ok());
        Ok(Done { outcome, line })
    }

    fn check(&self, bytes: &[u8], found: &Found<'_>) -> Result<Outcome, Skipped> {
        let dialect = found.dialect.and_then(|number| self.dialects.get(number)).ok_or(Skipped::NoDialect)?;
        let report = run(bytes, dialect, &self.options, &self.tools);
        let report = report.map_err(|error| Skipped::NotReadable(error.to_string()))?;
        let marks = marks(bytes, &report.findings);
        Ok(Outcome::Checked(report, marks))
    }
}
