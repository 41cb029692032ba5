//! `Comment`: the threads that a comment of a program mentions.

use pyo3::prelude::*;
use threadcalc_core::{self as core, Field};

use crate::text::bytes_of;
use crate::thread::Thread;

/// A thread that a comment mentions.
#[pyclass(module = "threadcalc", frozen, eq)]
#[derive(Clone, Copy, PartialEq)]
pub struct FoundThread(core::FoundThread);

#[pymethods]
impl FoundThread {
    /// The thread.
    #[getter]
    fn thread(&self) -> Thread {
        Thread(self.0.thread)
    }

    /// Where its text begins, in bytes.
    #[getter]
    fn at(&self) -> usize {
        self.0.at
    }

    /// How many bytes its text is.
    #[getter]
    fn length(&self) -> usize {
        self.0.length
    }

    fn __repr__(&self) -> String {
        format!("<FoundThread {} at {}>", self.0.thread, self.0.at)
    }
}

/// The threads that a comment mentions.
#[pyclass(module = "threadcalc", frozen, eq)]
#[derive(Clone, Copy, PartialEq)]
pub struct Comment(core::Comment);

#[pymethods]
impl Comment {
    /// The first four threads, in order.
    #[getter]
    fn threads(&self) -> Vec<FoundThread> {
        self.0.threads().copied().map(FoundThread).collect()
    }

    /// True if the comment mentions more than those.
    #[getter]
    fn more(&self) -> bool {
        self.0.more()
    }

    fn __repr__(&self) -> String {
        let threads: Vec<_> = self.0.threads().map(|found| found.thread.to_string()).collect();
        format!("<Comment [{}]{}>", threads.join(", "), if self.0.more() { " and more" } else { "" })
    }
}

/// Finds the threads that a comment or a line of a tool list mentions.
#[pyfunction]
#[pyo3(signature = (text, /, *, tool_is_tap=false))]
pub fn read_comment(text: &Bound<'_, PyAny>, tool_is_tap: bool) -> PyResult<Comment> {
    Ok(Comment(core::read_comment(&bytes_of(text, Field::Note)?, tool_is_tap)))
}
