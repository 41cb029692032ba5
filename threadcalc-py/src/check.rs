//! `check`: what a program does to its tapped holes.

use std::borrow::Cow;

use pyo3::prelude::*;
use pyo3::types::{PyBytes, PyDict, PyString};
use threadcalc_core as core;
use threadcalc_core::nc::{CheckOptions, Event, ProgramCheck, Tool, Unchecked};
use threadcalc_core::{Error, Field};

use crate::cycle::dialect_of;
use crate::error::raise;
use crate::fields::set_all;
use crate::job::{json_of, parsed};
use crate::number::wrong_type;
use crate::program_finding::{ProgramFinding, TappedHole};
use crate::text::bytes_of;

/// What a check has to say of a program.
#[pyclass(module = "threadcalc", frozen)]
pub struct Report {
    pub holes: Vec<core::nc::TappedHole>,
    pub findings: Vec<core::nc::ProgramFinding>,
    pub not_checked: Vec<Unchecked>,
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
        let never = core::nc::NEVER_CHECKED.iter().map(|what| (*what).to_owned());
        self.not_checked.iter().map(Unchecked::to_string).chain(never).collect()
    }

    /// What stands at the foot of every report.
    #[getter]
    fn cautions(&self) -> Vec<&'static str> {
        core::nc::CHECK_CAUTIONS.to_vec()
    }

    /// The report as the text of its JSON.
    fn to_json(&self) -> PyResult<String> {
        json_of(serde_json::to_string(&self.whole()))
    }

    /// The report as a dict.
    fn to_dict<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        parsed(py, &self.to_json()?)
    }

    fn __str__(&self) -> String {
        self.whole().to_string()
    }

    fn __repr__(&self) -> String {
        format!("<Report: {} tapping blocks, {} findings>", self.holes.len(), self.findings.len())
    }
}

impl Report {
    fn whole(&self) -> core::nc::Report<'_> {
        core::nc::Report { tapped_holes: &self.holes, findings: &self.findings, not_checked: &self.not_checked }
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
    let dialect = dialect_of(dialect)?;
    let (asked, tools) = told_of(options, machine, tools)?;
    let text = text_of(program)?;
    py.detach(|| run(&text, &dialect, &asked, &tools)).map_err(raise)
}

/// What a check is told beside the program and its dialect.
pub fn told_of(
    options: Option<&Bound<'_, PyDict>>,
    machine: Option<&Bound<'_, PyDict>>,
    tools: Option<&Bound<'_, PyAny>>,
) -> PyResult<(CheckOptions, Vec<Tool>)> {
    let mut asked = CheckOptions::default();
    for (fields, prefix) in [(options, ""), (machine, "machine.")] {
        fields.map_or(Ok(()), |fields| set_all(&mut asked, prefix, fields))?;
    }
    Ok((asked, tools.map_or(Ok(Vec::new()), list_of_tools)?))
}

/// Checks bytes; fails only for more tools than a check takes.
pub fn run(text: &[u8], dialect: &core::Dialect, options: &CheckOptions, tools: &[Tool]) -> Result<Report, Error> {
    let mut check = ProgramCheck::new(text, dialect, options);
    tools.iter().try_for_each(|tool| check.add_tool(tool))?;
    let (mut holes, mut findings) = (Vec::new(), Vec::new());
    for event in &mut check {
        match event {
            Event::Hole(hole) => holes.push(hole),
            Event::Finding(finding) => findings.push(finding),
        }
    }
    findings.sort_by_key(core::nc::ProgramFinding::place);
    Ok(Report { holes, findings, not_checked: check.not_checked().collect() })
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
        set_all(&mut made, "", fields)?;
        Ok(made)
    };
    tools.try_iter()?.map(of_one).collect()
}
