//! `check`: what a program does to its tapped holes.

use std::borrow::Cow;

use pyo3::prelude::*;
use pyo3::types::{PyBool, PyBytes, PyDict, PyFloat, PyString};
use threadcalc_core as core;
use threadcalc_core::nc::{CheckOptions, Event, ProgramCheck, Tool, Unchecked};
use threadcalc_core::{Error, Field, Value};

use crate::cycle::dialect_of;
use crate::error::{raise, raise_key};
use crate::number::{exact, wrong_type};
use crate::program_finding::{ProgramFinding, TappedHole};
use crate::text::bytes_of;
use crate::thread::Thread;

/// What a check has to say of a program.
#[pyclass(module = "threadcalc", frozen)]
pub struct Report {
    pub(crate) holes: Vec<core::nc::TappedHole>,
    findings: Vec<core::nc::ProgramFinding>,
    pub(crate) not_checked: Vec<Unchecked>,
}

#[pymethods]
impl Report {
    /// The blocks that tap, in the order in which they run.
    #[getter]
    fn tapped_holes(&self) -> Vec<TappedHole> {
        self.holes.iter().copied().map(TappedHole).collect()
    }

    /// What is doubtful or wrong, by line.
    #[getter]
    fn findings(&self) -> Vec<ProgramFinding> {
        self.findings.iter().copied().map(ProgramFinding).collect()
    }

    /// What was not checked and why: what this program left open, and what no text shows.
    #[getter]
    fn not_checked(&self) -> Vec<String> {
        let open = self.not_checked.iter().map(|one| match one.count {
            1 => format!("line {}: {}", one.first_line, one.reason.text()),
            count => format!("from line {} on, {count} times: {}", one.first_line, one.reason.text()),
        });
        open.chain(core::nc::NEVER_CHECKED.iter().map(|what| (*what).to_owned())).collect()
    }

    /// The worst first, then the holes, then what was not checked.
    fn __str__(&self) -> String {
        let mut worst: Vec<_> = self.findings.iter().collect();
        worst.sort_by_key(|finding| (finding.severity().number(), finding.line()));
        let mut lines: Vec<String> = worst.iter().map(|finding| format!("{finding}")).collect();
        if lines.is_empty() {
            lines.push(String::from("no findings"));
        }
        lines.push(format!("{} tapping blocks were checked", self.holes.len()));
        lines.push(String::from("not checked:"));
        lines.extend(self.not_checked().into_iter().map(|what| format!("  {what}")));
        lines.join("\n")
    }

    fn __repr__(&self) -> String {
        format!("<Report: {} tapping blocks, {} findings>", self.holes.len(), self.findings.len())
    }
}

/// Checks a program: bytes, text, or the path of a file.
#[pyfunction]
#[pyo3(signature = (program, *, dialect, options=None, machine=None, tools=None))]
pub fn check(
    py: Python<'_>,
    program: &Bound<'_, PyAny>,
    dialect: &Bound<'_, PyAny>,
    options: Option<&Bound<'_, PyDict>>,
    machine: Option<&Bound<'_, PyDict>>,
    tools: Option<&Bound<'_, PyAny>>,
) -> PyResult<Report> {
    let told = Told::read(dialect, options, machine, tools)?;
    let text = text_of(program)?;
    py.detach(|| told.check(&text)).map_err(raise)
}

/// What a check is told beside the program.
pub(crate) struct Told {
    dialect: core::Dialect,
    options: CheckOptions,
    tools: Vec<Tool>,
}

impl Told {
    pub(crate) fn read(
        dialect: &Bound<'_, PyAny>,
        options: Option<&Bound<'_, PyDict>>,
        machine: Option<&Bound<'_, PyDict>>,
        tools: Option<&Bound<'_, PyAny>>,
    ) -> PyResult<Self> {
        let dialect = dialect_of(dialect)?;
        let mut asked = CheckOptions::default();
        set_all(options, "", &mut |key, value| asked.set(key, value))?;
        set_all(machine, "machine.", &mut |key, value| asked.set(key, value))?;
        let tools = tools.map_or(Ok(Vec::new()), list_of_tools)?;
        Ok(Self { dialect, options: asked, tools })
    }

    pub(crate) fn check(&self, text: &[u8]) -> Result<Report, Error> {
        let mut check = ProgramCheck::new(text, &self.dialect, &self.options);
        self.tools.iter().try_for_each(|tool| check.add_tool(tool))?;
        let (mut holes, mut findings) = (Vec::new(), Vec::new());
        for event in &mut check {
            match event {
                Event::Hole(hole) => holes.push(hole),
                Event::Finding(finding) => findings.push(finding),
            }
        }
        findings.sort_by_key(|finding| (finding.line(), finding.column(), finding.id().number()));
        Ok(Report { holes, findings, not_checked: check.not_checked().collect() })
    }
}

/// The bytes of a program: given, of a text, or of a file.
pub(crate) fn text_of<'a>(program: &'a Bound<'_, PyAny>) -> PyResult<Cow<'a, [u8]>> {
    if let Ok(bytes) = program.cast::<PyBytes>() {
        return Ok(Cow::Borrowed(bytes.as_bytes()));
    }
    if program.is_instance_of::<PyString>() {
        return bytes_of(program, Field::Program).map(|text| Cow::Owned(text.into_owned()));
    }
    let path: std::path::PathBuf =
        program.extract().map_err(|_| wrong_type(program, Field::Program, "bytes, str or a path"))?;
    Ok(Cow::Owned(std::fs::read(path)?))
}

fn list_of_tools(tools: &Bound<'_, PyAny>) -> PyResult<Vec<Tool>> {
    let of_one = |tool: PyResult<Bound<'_, PyAny>>| {
        let tool = tool?;
        let fields = tool.cast::<PyDict>().map_err(|_| wrong_type(&tool, Field::Tool, "a dict for each tool"))?;
        let mut made = Tool::default();
        set_all(Some(fields), "", &mut |key, value| made.set(key, value))?;
        Ok(made)
    };
    tools.try_iter()?.map(of_one).collect()
}

/// Hands every field of a dict on, by its name.
fn set_all(
    fields: Option<&Bound<'_, PyDict>>,
    prefix: &str,
    set: &mut dyn FnMut(&str, Value<'_>) -> Result<(), Error>,
) -> PyResult<()> {
    let Some(fields) = fields else { return Ok(()) };
    for (key, value) in fields {
        let Ok(name) = key.cast::<PyString>() else { return Err(wrong_type(&key, Field::Key, "str")) };
        let key = format!("{prefix}{}", name.to_string_lossy());
        if key == "machine.gears" && !value.is_none() && !value.is_instance_of::<PyString>() {
            for gear in value.try_iter()? {
                let numbers = gear?.try_iter()?.map(|number| exact(&number?, Field::MachineGears));
                let numbers = numbers.collect::<PyResult<Vec<_>>>()?;
                set(&key, Value::Numbers(&numbers)).map_err(|error| raise_key(error, &key))?;
            }
            continue;
        }
        set_one(&key, &value, set)?;
    }
    Ok(())
}

fn set_one(
    key: &str,
    value: &Bound<'_, PyAny>,
    set: &mut dyn FnMut(&str, Value<'_>) -> Result<(), Error>,
) -> PyResult<()> {
    let mut apply = |value: Value<'_>| set(key, value).map_err(|error| raise_key(error, key));
    if value.is_none() {
        return apply(Value::Absent);
    }
    if let Ok(thread) = value.cast::<Thread>() {
        return apply(Value::Text(crate::thread::designation(&thread.get().0)?.as_bytes()));
    }
    if value.is_instance_of::<PyString>() {
        return apply(Value::Text(&bytes_of(value, Field::Key)?));
    }
    if value.is_instance_of::<PyBool>() {
        return apply(Value::Flag(value.extract()?));
    }
    if let Ok(double) = value.cast::<PyFloat>() {
        return apply(Value::Double(double.extract()?));
    }
    apply(Value::Exact(exact(value, Field::Key)?))
}
