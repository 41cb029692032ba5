//! What a check finds: tapped holes, and what is doubtful or wrong.

use pyo3::IntoPyObjectExt;
use pyo3::prelude::*;
use pyo3::types::PyDict;
use threadcalc_core::nc::{self, FindingNumber};

use crate::number::optional_fraction;
use crate::thread::Thread;

/// A block that taps, and what it cuts.
#[pyclass(module = "threadcalc", frozen, eq)]
#[derive(Clone, Copy, PartialEq)]
pub struct TappedHole(pub nc::TappedHole);

#[pymethods]
impl TappedHole {
    /// The line, from 1.
    #[getter]
    fn line(&self) -> u32 {
        self.0.line
    }

    /// Which of the program's tapping blocks it is, from 1.
    #[getter]
    fn number(&self) -> u32 {
        self.0.number
    }

    /// The lead that is cut, in mm; None if it cannot be computed.
    #[getter]
    fn lead_mm<'py>(&self, py: Python<'py>) -> PyResult<Option<Bound<'py, PyAny>>> {
        optional_fraction(py, self.0.lead_mm)
    }

    /// S; None if it is not known.
    #[getter]
    fn speed_rpm<'py>(&self, py: Python<'py>) -> PyResult<Option<Bound<'py, PyAny>>> {
        optional_fraction(py, self.0.speed_rpm)
    }

    /// F in the program's unit and mode; None if it is not known.
    #[getter]
    fn feed<'py>(&self, py: Python<'py>) -> PyResult<Option<Bound<'py, PyAny>>> {
        optional_fraction(py, self.0.feed)
    }

    /// "right" or "left"; None if it depends on the control.
    #[getter]
    fn hand(&self) -> Option<&'static str> {
        self.0.hand.map(|hand| hand.name())
    }

    /// How many holes, one behind the other.
    #[getter]
    fn count(&self) -> u32 {
        self.0.count
    }

    /// From the face to the tap's end, in mm; None if it is not known.
    #[getter]
    fn depth_mm<'py>(&self, py: Python<'py>) -> PyResult<Option<Bound<'py, PyAny>>> {
        optional_fraction(py, self.0.depth_mm)
    }

    /// The thread that is expected; None if nobody names one.
    #[getter]
    fn thread(&self) -> Option<Thread> {
        self.0.thread.map(Thread)
    }

    /// Who names it.
    #[getter]
    fn source(&self) -> Option<&'static str> {
        self.0.source.map(|source| source.name())
    }

    /// The tool in the spindle.
    #[getter]
    fn tool(&self) -> Option<u32> {
        self.0.tool
    }

    /// Where the hole is in the program's X, in mm; of several the last one. None if it is not known.
    #[getter]
    fn x_mm<'py>(&self, py: Python<'py>) -> PyResult<Option<Bound<'py, PyAny>>> {
        optional_fraction(py, self.0.x_mm)
    }

    /// The same in Y.
    #[getter]
    fn y_mm<'py>(&self, py: Python<'py>) -> PyResult<Option<Bound<'py, PyAny>>> {
        optional_fraction(py, self.0.y_mm)
    }

    /// The work offset that both are counted from, "G54" or "G54.1 P2"; "G54" if the program names none.
    #[getter]
    fn work_offset(&self) -> String {
        self.0.work_offset.to_string()
    }

    /// "mm" or "inch": the unit that the program is in; None if it does not say.
    #[getter]
    fn unit(&self) -> Option<&'static str> {
        self.0.unit.map(|unit| unit.name())
    }

    /// "per_minute" or "per_revolution": the feed mode that holds; None if the program does not say.
    #[getter]
    fn feed_mode(&self) -> Option<&'static str> {
        self.0.feed_mode.map(|mode| mode.name())
    }

    fn __repr__(&self) -> String {
        let lead = self.0.lead_mm.map_or_else(|| String::from("not known"), |lead| lead.to_string());
        format!("<TappedHole line {}: lead {lead}>", self.0.line)
    }
}

/// Something doubtful or wrong in a program.
#[pyclass(module = "threadcalc", frozen, eq)]
#[derive(Clone, Copy, PartialEq)]
pub struct ProgramFinding(pub nc::ProgramFinding);

#[pymethods]
impl ProgramFinding {
    /// The stable id.
    #[getter]
    fn id(&self) -> &'static str {
        self.0.id().name()
    }

    /// "error", "warning" or "info".
    #[getter]
    fn severity(&self) -> &'static str {
        self.0.severity().name()
    }

    /// The line, from 1.
    #[getter]
    fn line(&self) -> u32 {
        self.0.line()
    }

    /// Where in the line it begins, in bytes from 1.
    #[getter]
    fn column(&self) -> u32 {
        self.0.column()
    }

    /// The column behind its end.
    #[getter]
    fn end_column(&self) -> u32 {
        self.0.end_column()
    }

    /// The number of the program that the line is in.
    #[getter]
    fn program(&self) -> Option<u64> {
        self.0.program()
    }

    /// The lines of the calls that lead to the line, the outermost first.
    #[getter]
    fn call_path(&self) -> Vec<u32> {
        self.0.call_path().collect()
    }

    /// The tool in the spindle.
    #[getter]
    fn tool(&self) -> Option<u32> {
        self.0.tool()
    }

    /// Which tapping block of the program, from 1.
    #[getter]
    fn hole(&self) -> Option<u32> {
        self.0.hole()
    }

    /// The thread that the hole is to have.
    #[getter]
    fn thread(&self) -> Option<Thread> {
        self.0.thread().copied().map(Thread)
    }

    /// What will happen, in one line.
    #[getter]
    fn message(&self) -> String {
        self.0.message().to_string()
    }

    /// The same with the reading it holds under and with what to write.
    #[getter]
    fn text(&self) -> String {
        self.0.text().to_string()
    }

    /// The numbers, by name; a hand or a letter is a str.
    #[getter]
    fn numbers<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyDict>> {
        let numbers = PyDict::new(py);
        for (key, number) in self.0.numbers() {
            let value = match number {
                FindingNumber::Double(value) => value.into_bound_py_any(py)?,
                FindingNumber::Text(text) => text.into_bound_py_any(py)?,
            };
            numbers.set_item(key.name(), value)?;
        }
        Ok(numbers)
    }

    /// The lines that it rests on: what each did, and its number; 0 is no line of the program.
    #[getter]
    fn evidence(&self) -> Vec<(&'static str, u32)> {
        self.0.evidence().map(|evidence| (evidence.kind.name(), evidence.line)).collect()
    }

    /// What it rests on, in one line; may be empty.
    #[getter]
    fn grounds(&self) -> String {
        self.0.grounds().to_string()
    }

    /// What to write instead; may be empty.
    #[getter]
    fn suggestion(&self) -> &str {
        self.0.suggestion()
    }

    /// Whether the suggestion takes the place of what stands from column to end column.
    #[getter]
    fn replaces(&self) -> bool {
        self.0.replaces()
    }

    /// Which reading of what is not known it holds under; empty if under every one.
    #[getter]
    fn reading(&self) -> &'static str {
        self.0.reading()
    }

    /// False if it rests on something assumed.
    #[getter]
    fn certain(&self) -> bool {
        self.0.certain()
    }

    fn __str__(&self) -> String {
        self.0.to_string()
    }

    fn __repr__(&self) -> String {
        format!("<ProgramFinding {}>", self.0)
    }
}

/// What a finding of a program means, by its id.
#[pyclass(module = "threadcalc", frozen, eq)]
#[derive(Clone, Copy, PartialEq)]
pub struct ProgramFindingKind(nc::ProgramFindingId);

#[pymethods]
impl ProgramFindingKind {
    /// The stable id.
    #[getter]
    fn id(&self) -> &'static str {
        self.0.name()
    }

    /// The stable number of the id, as in C.
    #[getter]
    fn number(&self) -> i32 {
        self.0.number()
    }

    /// The severity unless the numbers say otherwise.
    #[getter]
    fn severity(&self) -> &'static str {
        self.0.severity().name()
    }

    /// What it means, in one sentence.
    #[getter]
    fn meaning(&self) -> &'static str {
        self.0.meaning()
    }

    /// What a finding of it says, with the names of its numbers in braces.
    #[getter]
    fn message(&self) -> &'static str {
        self.0.message()
    }

    fn __repr__(&self) -> String {
        format!("<ProgramFindingKind {}>", self.0)
    }
}

/// Every kind of finding that a check can have.
#[pyfunction]
pub fn program_finding_kinds() -> Vec<ProgramFindingKind> {
    nc::ProgramFindingId::ALL.iter().copied().map(ProgramFindingKind).collect()
}
