//! The journal of an audit: a line for every file that was read, so that a later run need not read it again.

use std::collections::HashMap;
use std::fmt::Debug;
use std::fs::{File, OpenOptions};
use std::io::{self, BufRead, BufReader, Read, Seek, SeekFrom, Write};
use std::path::Path;
use std::sync::{Mutex, PoisonError};

use pyo3::exceptions::PyValueError;
use pyo3::prelude::*;
use serde::{Deserialize, Serialize};
use threadcalc_core::nc::{CheckOptions, ProgramFinding, TappedHole, Tool, Unchecked};

use super::dialects::Dialects;
use super::known::{Hashed, Key, Mark};
use super::paths::raise_of;
use super::read::Stamp;
use super::skipped::Skipped;
use super::work::Outcome;
use crate::check::Report;

/// The number of the format.
const SCHEMA: u32 = 1;

/// Under what the files were checked.
#[derive(Debug, PartialEq, Deserialize, Serialize)]
pub struct Head {
    audit_journal_schema: u32,
    version: String,
    dialect: Key,
    options: Key,
    tools: Key,
}

impl Head {
    pub fn new(dialects: &Dialects, options: &CheckOptions, tools: &[Tool]) -> Self {
        Self {
            audit_journal_schema: SCHEMA,
            version: env!("CARGO_PKG_VERSION").to_owned(),
            dialect: key_of(dialects),
            options: key_of(options),
            tools: key_of(&tools),
        }
    }

    /// What of another head is not as in this one.
    fn differs(&self, other: &Self) -> Option<String> {
        match () {
            () if self.audit_journal_schema != other.audit_journal_schema => {
                Some(format!("schema {}, this version writes {SCHEMA}", other.audit_journal_schema))
            }
            () if self.version != other.version => {
                Some(format!("written by version {}, this is {}", other.version, self.version))
            }
            () if self.dialect != other.dialect => Some("written under another dialect".into()),
            () if self.options != other.options => Some("written under other options or another machine".into()),
            () if self.tools != other.tools => Some("written under another list of tools".into()),
            () => None,
        }
    }
}

/// Every field of a value has a part in the text of its `Debug`.
fn key_of(value: &impl Debug) -> Key {
    Hashed::new().part(format!("{value:?}").as_bytes()).key()
}

/// A line of the journal, as it is written.
#[derive(Serialize)]
struct Line<'a> {
    file: &'a str,
    #[serde(flatten)]
    stamp: Stamp,
    report: Option<Written<'a>>,
    marks: &'a [Mark],
    skipped: Option<&'a Skipped>,
}

#[derive(Serialize)]
struct Written<'a> {
    tapped_holes: &'a [TappedHole],
    findings: &'a [ProgramFinding],
    not_checked: &'a [Unchecked],
}

/// What of a line is kept in memory.
#[derive(Deserialize)]
struct Indexed {
    file: String,
    size: u64,
    modified_ns: i64,
}

/// What of a line is an outcome.
#[derive(Deserialize)]
struct Restored {
    report: Option<RestoredReport>,
    marks: Vec<Mark>,
    skipped: Option<Skipped>,
}

#[derive(Deserialize)]
struct RestoredReport {
    tapped_holes: Vec<TappedHole>,
    findings: Vec<ProgramFinding>,
    not_checked: Vec<Unchecked>,
}

struct Place {
    stamp: Stamp,
    offset: u64,
    length: usize,
}

/// What a journal holds from earlier runs.
pub struct Journal {
    places: HashMap<String, Place>,
    file: Mutex<File>,
}

/// Where new lines go.
pub struct Writer {
    file: File,
}

/// The line of a file that was read.
pub fn line_of(file: &str, stamp: Stamp, outcome: &Outcome) -> serde_json::Result<String> {
    let (report, marks, skipped) = match outcome {
        Outcome::Skipped(skipped) => (None, [].as_slice(), Some(skipped)),
        Outcome::Checked(Report { holes, findings, not_checked }, marks) => {
            (Some(Written { tapped_holes: holes, findings, not_checked }), marks.as_slice(), None)
        }
    };
    Ok(serde_json::to_string(&Line { file, stamp, report, marks, skipped })? + "\n")
}

impl Journal {
    /// Opens a journal, or begins one; a line that a power cut tore off is cut off.
    pub fn open(path: &Path, head: &Head) -> PyResult<(Self, Writer)> {
        let raise = |error: io::Error| raise_of(&error, path);
        let written = serde_json::to_string(head).map_err(|error| PyValueError::new_err(error.to_string()))? + "\n";
        let open = || OpenOptions::new().read(true).append(true).create(true).open(path);
        let mut file = open().map_err(raise)?;
        let (places, end) = index(&file, head, &written).map_err(|error| match error {
            Fault::Io(error) => raise(error),
            Fault::Content(what) => PyValueError::new_err(format!("journal {}: {what}", path.display())),
        })?;
        file.set_len(end).map_err(raise)?;
        if end == 0 {
            file.write_all(written.as_bytes()).map_err(raise)?;
        }
        let reader = Mutex::new(File::open(path).map_err(raise)?);
        Ok((Self { places, file: reader }, Writer { file }))
    }

    /// What is known of a file with this stamp. What cannot be read is not known.
    pub fn get(&self, file: &str, stamp: Stamp) -> Option<Outcome> {
        let place = self.places.get(file).filter(|place| place.stamp == stamp)?;
        let mut bytes = vec![0; place.length];
        {
            let mut journal = self.file.lock().unwrap_or_else(PoisonError::into_inner);
            journal.seek(SeekFrom::Start(place.offset)).ok()?;
            journal.read_exact(&mut bytes).ok()?;
        }
        let Restored { report, marks, skipped } = serde_json::from_slice(&bytes).ok()?;
        if let Some(skipped) = skipped {
            return Some(Outcome::Skipped(skipped));
        }
        let RestoredReport { tapped_holes: holes, findings, not_checked } = report?;
        let report = Report { holes, findings, not_checked };
        (marks.len() == report.findings.len()).then_some(Outcome::Checked(report, marks))
    }
}

impl Writer {
    /// Adds a line in one write.
    pub fn add(&mut self, line: &str) -> io::Result<()> {
        self.file.write_all(line.as_bytes())
    }
}

enum Fault {
    Io(io::Error),
    Content(String),
}

impl From<io::Error> for Fault {
    fn from(error: io::Error) -> Self {
        Self::Io(error)
    }
}

/// The lines of a journal and where the last whole one ends.
fn index(file: &File, head: &Head, written: &str) -> Result<(HashMap<String, Place>, u64), Fault> {
    let mut reader = BufReader::new(file);
    let mut line = Vec::new();
    let mut places = HashMap::new();
    reader.read_until(b'\n', &mut line)?;
    if !line.ends_with(b"\n") && written.as_bytes().starts_with(&line) {
        return Ok((places, 0));
    }
    let found: Head = serde_json::from_slice(&line)
        .map_err(|_| Fault::Content("this file is no journal of an audit; name another".into()))?;
    if let Some(what) = head.differs(&found) {
        return Err(Fault::Content(format!("{what}; name another file, or delete this one to begin anew")));
    }
    let mut offset = line.len() as u64;
    // A line that cannot be read is a torn one if it is the last.
    let mut unreadable = None;
    for number in 2_u64.. {
        line.clear();
        let length = reader.read_until(b'\n', &mut line)?;
        if !line.ends_with(b"\n") {
            break;
        }
        if let Some(number) = unreadable {
            return Err(Fault::Content(format!("line {number} cannot be read; name another file, or delete this one")));
        }
        match serde_json::from_slice::<Indexed>(&line) {
            Ok(Indexed { file, size, modified_ns }) => {
                places.insert(file, Place { stamp: Stamp { size, modified_ns }, offset, length });
                offset = offset.saturating_add(length as u64);
            }
            Err(_) => unreadable = Some(number),
        }
    }
    Ok((places, offset))
}
