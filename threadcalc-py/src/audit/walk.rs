//! The files of an audit, in an order that does not depend on the file system.

use std::collections::HashSet;
use std::io;
use std::path::{Path, PathBuf};

use pyo3::prelude::*;
use walkdir::WalkDir;

use super::dialects::Dialects;
use super::known::Hashed;
use super::paths::{folder_of, place_of, raise_of, raise_with, slashed};
use super::read::not_readable;
use super::skipped::Skipped;

/// After how many files somebody may press Ctrl-C.
const FILES_AT_A_TIME: usize = 1024;

/// A folder that was named, or the folder of a file that was.
struct Root {
    /// As it was named.
    shown: PathBuf,
    /// Without links.
    place: PathBuf,
}

/// A file, or what stands in its place.
struct Entry {
    root: usize,
    below: PathBuf,
    dialect: Option<usize>,
    skipped: Option<Skipped>,
}

/// The files of an audit.
#[derive(Default)]
pub struct Files {
    roots: Vec<Root>,
    entries: Vec<Entry>,
    /// Files whose names are no program's.
    pub left_out: u64,
}

/// A file of an audit.
pub struct Found<'a> {
    /// As it was named.
    pub path: PathBuf,
    /// Where it stands, for a journal.
    pub place: String,
    /// Its name below the folder that was named, for a baseline.
    pub name: String,
    /// The number of its dialect.
    pub dialect: Option<usize>,
    /// Why it is not to be read.
    pub skipped: Option<&'a Skipped>,
}

impl Files {
    /// How many there are.
    pub fn count(&self) -> usize {
        self.entries.len()
    }

    /// The one with this number, from 0.
    pub fn get(&self, number: usize) -> Option<Found<'_>> {
        let entry = self.entries.get(number)?;
        let root = self.roots.get(entry.root)?;
        Some(Found {
            path: root.shown.join(&entry.below),
            place: slashed(&root.place.join(&entry.below)),
            name: slashed(&entry.below),
            dialect: entry.dialect,
            skipped: entry.skipped.as_ref(),
        })
    }
}

/// One part of so many; every file is in one of them, whatever other files there are.
#[derive(Clone, Copy)]
pub struct Part {
    number: u32,
    parts: u32,
}

impl Part {
    /// The part with this number, from 0.
    pub fn new(number: u32, parts: u32) -> Option<Self> {
        (number < parts).then_some(Self { number, parts })
    }

    fn has(self, below: &Path) -> bool {
        Hashed::new().part(slashed(below).as_bytes()).key().modulo(self.parts) == Some(self.number)
    }
}

/// How files are found.
pub struct Walk<'a> {
    /// How the names of programs end, in lower case and with the point; the empty one: names without a point.
    pub suffixes: Option<&'a [String]>,
    pub part: Option<Part>,
    pub dialects: &'a Dialects,
    /// Files that are ours: journal and baseline.
    pub own: &'a [PathBuf],
}

impl Walk<'_> {
    /// All files below these paths, each once, those of a folder by name.
    pub fn files(&self, paths: &[PathBuf]) -> PyResult<Files> {
        let mut files = Files::default();
        let mut seen = HashSet::new();
        for path in paths {
            let raise = |error: io::Error| raise_of(&error, path);
            if path.metadata().map_err(raise)?.is_dir() {
                let place = path.canonicalize().map_err(raise)?;
                files.roots.push(Root { shown: path.clone(), place });
                self.folder(path, &mut files, &mut seen)?;
            } else {
                let place = folder_of(path).canonicalize().map_err(raise)?;
                let shown = path.parent().unwrap_or(Path::new("")).to_owned();
                files.roots.push(Root { shown, place });
                let below = PathBuf::from(path.file_name().unwrap_or_default());
                let is_file = path.is_file();
                self.add(below, (!is_file).then_some(Skipped::NoRegularFile), &mut files, &mut seen);
            }
        }
        Ok(files)
    }

    fn folder(&self, folder: &Path, files: &mut Files, seen: &mut HashSet<PathBuf>) -> PyResult<()> {
        for (entry, count) in WalkDir::new(folder).min_depth(1).sort_by_file_name().into_iter().zip(1_usize..) {
            if count % FILES_AT_A_TIME == 0 {
                Python::attach(|py| py.check_signals())?;
            }
            let (path, kind) = match entry {
                Ok(entry) if entry.file_type().is_dir() => continue,
                Ok(entry) => (entry.path().to_owned(), Ok(entry.file_type())),
                Err(error) => (error.path().unwrap_or(folder).to_owned(), Err(error)),
            };
            let skipped = match kind {
                Ok(kind) if kind.is_symlink() => Some(Skipped::SymbolicLink),
                Ok(kind) if !kind.is_file() => Some(Skipped::NoRegularFile),
                Ok(_) => None,
                Err(error) => Some(not_readable(error.into_io_error().unwrap_or(io::ErrorKind::Other.into()))),
            };
            let below = path.strip_prefix(folder).unwrap_or(&path).to_owned();
            if let (true, Some(Skipped::NotReadable(words))) = (below.as_os_str().is_empty(), &skipped) {
                // The folder itself was named: nothing of it was audited.
                return Err(raise_with(&io::ErrorKind::PermissionDenied.into(), words, folder));
            }
            let is_folder = matches!(skipped, Some(Skipped::NotReadable(_)));
            if is_folder || self.is_program(&below) {
                self.add(below, skipped, files, seen);
            } else {
                files.left_out = files.left_out.saturating_add(1);
            }
        }
        Ok(())
    }

    /// Whether a name is one of a program.
    fn is_program(&self, path: &Path) -> bool {
        let Some(suffixes) = self.suffixes else { return true };
        let name = path.file_name().unwrap_or_default().as_encoded_bytes().to_ascii_lowercase();
        suffixes.iter().any(|suffix| match suffix.as_bytes() {
            b"" => !name.contains(&b'.'),
            suffix => name.ends_with(suffix),
        })
    }

    fn add(&self, below: PathBuf, skipped: Option<Skipped>, files: &mut Files, seen: &mut HashSet<PathBuf>) {
        let root = files.roots.len().saturating_sub(1);
        let Some(place) = files.roots.get(root).map(|root| root.place.join(&below)) else { return };
        let is_ours = || self.part.is_none_or(|part| part.has(&below));
        if self.own.contains(&place) || seen.contains(&place) || !is_ours() {
            return;
        }
        let dialect = self.dialects.of(&place);
        let skipped = skipped.or_else(|| dialect.is_none().then_some(Skipped::NoDialect));
        files.entries.push(Entry { root, below, dialect, skipped });
        seen.insert(place);
    }
}

/// Where files of ours stand, so that an audit does not take them for programs.
pub fn places_of(own: &[&Path]) -> Vec<PathBuf> {
    own.iter().filter_map(|path| place_of(path).ok()).collect()
}
