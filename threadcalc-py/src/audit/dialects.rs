//! Which dialect a file is written in: that of the deepest folder.

use std::path::{Path, PathBuf};

use pyo3::prelude::*;
use pyo3::types::{PyDict, PyString};
use threadcalc_core::{Dialect, Job};

use super::paths::raise_with;
use crate::cycle::dialect_of;

/// The dialects of an audit.
#[derive(Debug)]
pub struct Dialects {
    /// Folder without links and its dialect; the empty one holds everything.
    by_folder: Vec<(PathBuf, Dialect)>,
}

impl Dialects {
    /// From one dialect, or from a dict of folders.
    pub fn from_python(value: &Bound<'_, PyAny>) -> PyResult<Self> {
        let by_folder = match value.cast::<PyDict>() {
            Ok(folders) if !folders.is_empty() && !folders.keys().iter().any(|key| is_field(&key)) => {
                folders.iter().map(|(folder, dialect)| of_folder(&folder, &dialect)).collect::<PyResult<_>>()?
            }
            _ => vec![(PathBuf::new(), dialect_of(value)?)],
        };
        Ok(Self { by_folder })
    }

    /// The number of the dialect of a file.
    pub fn of(&self, place: &Path) -> Option<usize> {
        let around = self.by_folder.iter().zip(0_usize..).filter(|((folder, _), _)| place.starts_with(folder));
        around.max_by_key(|((folder, _), _)| folder.components().count()).map(|(_, number)| number)
    }

    /// The dialect with this number.
    pub fn get(&self, number: usize) -> Option<&Dialect> {
        self.by_folder.get(number).map(|(_, dialect)| dialect)
    }
}

/// Whether a key is a field of a dialect, and so no folder.
fn is_field(key: &Bound<'_, PyAny>) -> bool {
    let Ok(key) = key.cast::<PyString>() else { return false };
    let key = key.to_string_lossy();
    let mut fields = Job::keys().filter_map(|field| field.strip_prefix("dialect."));
    fields.any(|field| field.split('.').next() == Some(&key))
}

fn of_folder(folder: &Bound<'_, PyAny>, dialect: &Bound<'_, PyAny>) -> PyResult<(PathBuf, Dialect)> {
    let path: PathBuf = folder.extract()?;
    let words = "no such folder; a key of dialect is a folder or a field of a dialect";
    let place = path.canonicalize().map_err(|error| raise_with(&error, words, &path))?;
    Ok((place, dialect_of(dialect)?))
}
