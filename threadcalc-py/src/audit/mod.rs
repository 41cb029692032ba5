//! `audit`: checks whole folders of programs, by many workers, in a fixed order, and never writes to them.
//!
//! ```text
//! asked, dialects -> walk -> work (read, known, journal) -> window -> Audit (baseline, journal, summary) -> program
//! ```

mod asked;
mod baseline;
mod dialects;
mod journal;
mod known;
mod paths;
mod program;
mod read;
mod skipped;
mod summary;
mod walk;
mod window;
mod work;

use std::path::PathBuf;
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};
use std::time::Duration;

use pyo3::exceptions::PyRuntimeError;
use pyo3::prelude::*;
use pyo3::types::PyDict;
use rayon::ThreadPool;

use self::baseline::{Collected, Known};
use self::dialects::Dialects;
use self::journal::{Head, Journal, Writer};
use self::known::Mark;
pub use self::program::AuditedProgram;
pub use self::summary::AuditSummary;
use self::walk::{Walk, places_of};
use self::window::Taken;
use self::work::{Done, Outcome, Task};
use crate::check::{run, told_of};
use crate::error::raise;

/// How long a result is waited for before somebody may press Ctrl-C.
const PATIENCE: Duration = Duration::from_millis(50);
/// The largest file that is read if nobody says so: a worker holds a program whole.
const LARGEST_BYTES: u64 = 64 * 1024 * 1024;

/// The files of an audit, one after the other.
#[pyclass(module = "threadcalc", frozen)]
pub struct Audit {
    task: Arc<Task>,
    /// Ends its threads when it goes.
    _pool: ThreadPool,
    books: Mutex<Books>,
    journal_path: Option<PathBuf>,
}

/// What is kept from file to file.
struct Books {
    known: Option<Known>,
    journal: Option<Writer>,
    summary: AuditSummary,
}

/// What waiting for the next file comes to.
enum Next {
    File(usize, Outcome, Vec<bool>),
    NotYet,
    End,
    Failed,
}

#[pymethods]
impl Audit {
    fn __iter__(this: Py<Self>) -> Py<Self> {
        this
    }

    fn __next__(&self, py: Python<'_>) -> PyResult<Option<AuditedProgram>> {
        loop {
            match py.detach(|| self.next_file()) {
                Ok(Next::NotYet) => py.check_signals()?,
                Ok(Next::End) => return Ok(None),
                Ok(Next::Failed) => {
                    return Err(PyRuntimeError::new_err(
                        "the audit has stopped: a worker failed, or the journal could not be written",
                    ));
                }
                Ok(Next::File(number, outcome, known)) => return self.program(py, number, outcome, known),
                Err(error) => {
                    self.task.window.stop();
                    return Err(paths::raise_of(&error, self.journal_path.as_deref().unwrap_or("".as_ref())));
                }
            }
        }
    }

    fn __len__(&self) -> usize {
        self.task.files.count()
    }

    /// The files of the audit, known before the first is checked.
    #[getter]
    fn total(&self) -> usize {
        self.task.files.count()
    }

    /// How many of them were given.
    #[getter]
    fn done(&self) -> usize {
        self.books().summary.done()
    }

    /// What the files so far come to.
    #[getter]
    fn summary(&self) -> AuditSummary {
        let books = self.books();
        books.summary.clone().with_known_left(books.known.as_ref().map(Known::left))
    }

    fn __str__(&self) -> String {
        self.summary().to_string()
    }

    fn __repr__(&self) -> String {
        format!("<Audit: {} of {} files>", self.done(), self.total())
    }
}

impl Audit {
    fn books(&self) -> MutexGuard<'_, Books> {
        self.books.lock().unwrap_or_else(PoisonError::into_inner)
    }

    /// Waits a little; what comes is entered in the books before anybody sees it.
    fn next_file(&self) -> std::io::Result<Next> {
        let (number, Done { outcome, line }) = match self.task.window.take(PATIENCE) {
            Taken::Result(number, done) => (number, done),
            Taken::NotYet => return Ok(Next::NotYet),
            Taken::End => return Ok(Next::End),
            Taken::Stopped => return Ok(Next::Failed),
        };
        let mut books = self.books();
        let Books { known, journal, summary } = &mut *books;
        if let (Some(journal), Some(line)) = (journal, &line) {
            journal.add(line)?;
        }
        let is_known = match (&outcome, known) {
            (Outcome::Checked(_, marks), Some(known)) => {
                let name = self.task.files.get(number).map(|found| found.name).unwrap_or_default();
                marks.iter().map(|mark| known.takes(&name, mark)).collect()
            }
            (Outcome::Checked(_, marks), None) => vec![false; marks.len()],
            (Outcome::Skipped(_), _) => Vec::new(),
        };
        summary.add(&outcome, &is_known);
        Ok(Next::File(number, outcome, is_known))
    }

    fn program(
        &self,
        py: Python<'_>,
        number: usize,
        outcome: Outcome,
        is_known: Vec<bool>,
    ) -> PyResult<Option<AuditedProgram>> {
        let Some(found) = self.task.files.get(number) else { return Ok(None) };
        let (path, name) = (found.path, found.name);
        Ok(Some(match outcome {
            Outcome::Skipped(skipped) => {
                let skipped = Some(skipped.to_string());
                AuditedProgram { path, name, skipped, report: None, marks: Vec::new() }
            }
            Outcome::Checked(report, marks) => {
                let marks: Vec<(Mark, bool)> = marks.into_iter().zip(is_known).collect();
                AuditedProgram { path, name, skipped: None, report: Some(Py::new(py, report)?), marks }
            }
        }))
    }
}

/// Nobody will take what is not finished yet.
impl Drop for Audit {
    fn drop(&mut self) {
        self.task.window.stop();
    }
}

/// Checks files, and folders with all that is in them.
#[pyfunction]
#[pyo3(signature = (
    paths, *, dialect, options=None, machine=None, tools=None, workers=None, suffixes=None,
    largest_bytes=LARGEST_BYTES, baseline=None, resume=None, part=None
), text_signature = "(paths, *, dialect, options=None, machine=None, tools=None, workers=None, suffixes=None, largest_bytes=67108864, baseline=None, resume=None, part=None)")]
#[allow(clippy::too_many_arguments, reason = "they are keywords in Python")]
pub fn audit(
    py: Python<'_>,
    paths: &Bound<'_, PyAny>,
    dialect: &Bound<'_, PyAny>,
    options: Option<&Bound<'_, PyDict>>,
    machine: Option<&Bound<'_, PyDict>>,
    tools: Option<&Bound<'_, PyAny>>,
    workers: Option<usize>,
    suffixes: Option<&Bound<'_, PyAny>>,
    largest_bytes: u64,
    baseline: Option<PathBuf>,
    resume: Option<PathBuf>,
    part: Option<(u32, u32)>,
) -> PyResult<Audit> {
    let paths = asked::paths(paths)?;
    let suffixes = asked::suffixes(suffixes)?;
    let workers = asked::workers(workers)?;
    let part = part.map(asked::part).transpose()?;
    let dialects = Dialects::from_python(dialect)?;
    let (options, tools) = told_of(options, machine, tools)?;
    // What a check refuses, it refuses now and not at the first file.
    run(b"", &threadcalc_core::Dialect::unset(), &options, &tools).map_err(raise)?;
    let head = Head::new(&dialects, &options, &tools);
    py.detach(|| {
        let known = baseline.as_deref().map(Known::read).transpose()?;
        let journal = resume.as_deref().map(|path| Journal::open(path, &head)).transpose()?;
        let own: Vec<_> = [&baseline, &resume].into_iter().filter_map(Option::as_deref).collect();
        let walk = Walk { suffixes: suffixes.as_deref(), part, dialects: &dialects, own: &places_of(&own) };
        let files = walk.files(&paths)?;
        let (journal, writer) = journal.unzip();
        let window = Task::window(files.count(), workers);
        let summary = AuditSummary::new(files.count(), files.left_out);
        let task = Arc::new(Task { files, dialects, options, tools, largest_bytes, journal, window });
        let pool = task.start(workers)?;
        let books = Mutex::new(Books { known, journal: writer, summary });
        Ok(Audit { task, _pool: pool, books, journal_path: resume })
    })
}

/// Writes what these programs have as known findings.
#[pyfunction]
pub fn write_baseline(programs: &Bound<'_, PyAny>, path: PathBuf) -> PyResult<u64> {
    let mut collected = Collected::default();
    for program in programs.try_iter()? {
        program?.cast::<AuditedProgram>()?.get().collect(&mut collected);
    }
    collected.write(&path)
}
