//! The file of known findings: one line each, sorted, to be compared line by line.

use std::collections::{BTreeMap, HashMap};
use std::fs;
use std::io::Write;
use std::path::{Path, PathBuf};

use pyo3::exceptions::PyValueError;
use pyo3::prelude::*;
use serde::{Deserialize, Serialize};
use threadcalc_core::nc::ProgramFinding;

use super::known::{Key, Mark};
use super::paths::raise_of;

/// The number of the format.
const SCHEMA: u32 = 1;

#[derive(Deserialize, Serialize)]
struct Head {
    known_findings_schema: u32,
}

/// A known finding. Its order is that of the file.
#[derive(PartialEq, Eq, PartialOrd, Ord, Deserialize, Serialize)]
struct Entry {
    file: String,
    id: String,
    block: String,
    key: Key,
    severity: String,
}

#[derive(Deserialize, Serialize)]
struct Line {
    #[serde(flatten)]
    entry: Entry,
    count: u32,
}

/// How many of each known finding were not met yet.
pub struct Known(HashMap<(String, Key), u32>);

impl Known {
    /// From a file.
    pub fn read(path: &Path) -> PyResult<Self> {
        let text = fs::read_to_string(path).map_err(|error| raise_of(&error, path))?;
        let wrong = |what: String| PyValueError::new_err(format!("baseline {}: {what}", path.display()));
        let mut lines = text.lines().zip(1_u64..).filter(|(line, _)| !line.trim().is_empty());
        let head = lines.next().and_then(|(line, _)| serde_json::from_str::<Head>(line).ok());
        let Some(Head { known_findings_schema: schema }) = head else {
            return Err(wrong(format!(
                "its first line has to be {{\"known_findings_schema\":{SCHEMA}}}, as write_baseline writes it"
            )));
        };
        if schema != SCHEMA {
            return Err(wrong(format!("schema {schema}, this version reads {SCHEMA}; write it anew")));
        }
        let mut known = HashMap::new();
        for (line, number) in lines {
            let read: Line = serde_json::from_str(line).map_err(|error| wrong(format!("line {number}: {error}")))?;
            // A line that a merge of two versions doubled is no second finding.
            let count = known.entry((read.entry.file, read.entry.key)).or_insert(0);
            *count = read.count.max(*count);
        }
        Ok(Self(known))
    }

    /// Whether a finding is known; every known one silences one.
    pub fn takes(&mut self, file: &str, mark: &Mark) -> bool {
        let left = self.0.get_mut(&(file.to_owned(), mark.key)).filter(|left| **left > 0);
        left.is_some_and(|left| {
            *left = left.saturating_sub(1);
            true
        })
    }

    /// How many were not met.
    pub fn left(&self) -> u64 {
        self.0.values().fold(0, |sum, left| sum.saturating_add(u64::from(*left)))
    }
}

/// What a baseline is written from.
#[derive(Default)]
pub struct Collected(BTreeMap<Entry, u32>);

impl Collected {
    pub fn add(&mut self, file: &str, finding: &ProgramFinding, mark: &Mark) {
        let entry = Entry {
            file: file.to_owned(),
            id: finding.id().name().to_owned(),
            block: mark.block.clone(),
            key: mark.key,
            severity: finding.severity().name().to_owned(),
        };
        let count = self.0.entry(entry).or_insert(0);
        *count = count.saturating_add(1);
    }

    /// Writes the file whole or not at all; how many findings it holds.
    pub fn write(self, path: &Path) -> PyResult<u64> {
        let mut text = json(&Head { known_findings_schema: SCHEMA })?;
        let mut findings = 0_u64;
        for (entry, count) in self.0 {
            text.push_str(&json(&Line { entry, count })?);
            findings = findings.saturating_add(u64::from(count));
        }
        replace(path, text.as_bytes()).map_err(|error| raise_of(&error, path))?;
        Ok(findings)
    }
}

fn json(value: &impl Serialize) -> PyResult<String> {
    let written = serde_json::to_string(value).map_err(|error| PyValueError::new_err(error.to_string()))?;
    Ok(written + "\n")
}

/// Puts a file in the place of another in one step: a crash leaves the old one or the new one.
fn replace(path: &Path, bytes: &[u8]) -> std::io::Result<()> {
    let mut part = path.as_os_str().to_owned();
    part.push(".part");
    let part = PathBuf::from(part);
    let mut file = fs::File::create(&part)?;
    file.write_all(bytes)?;
    file.sync_all()?;
    fs::rename(&part, path)
}
