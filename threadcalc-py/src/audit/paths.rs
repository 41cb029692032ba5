//! Paths as text that can be written down and compared, whatever bytes they have.

use std::ffi::OsStr;
use std::io;
use std::path::{Component, Path, PathBuf};

use pyo3::exceptions::PyOSError;
use pyo3::prelude::*;

/// A name as text; bytes that are no UTF-8 are written `\xE9`, a backslash is doubled.
fn text(name: &OsStr) -> String {
    let mut text = String::new();
    for chunk in name.as_encoded_bytes().utf8_chunks() {
        text.push_str(&chunk.valid().replace('\\', "\\\\"));
        chunk.invalid().iter().for_each(|byte| text.push_str(&format!("\\x{byte:02X}")));
    }
    text
}

/// A path as text, with `/` between its names on every system.
pub fn slashed(path: &Path) -> String {
    let of = |part: Component<'_>| if part == Component::RootDir { String::new() } else { text(part.as_os_str()) };
    path.components().map(of).collect::<Vec<_>>().join("/")
}

/// Where a file stands or will stand: its folder without links, and its own name.
pub fn place_of(path: &Path) -> io::Result<PathBuf> {
    let Some(name) = path.file_name() else { return path.canonicalize() };
    Ok(folder_of(path).canonicalize()?.join(name))
}

/// The folder that a path names before its last name.
pub fn folder_of(path: &Path) -> &Path {
    match path.parent() {
        Some(folder) if !folder.as_os_str().is_empty() => folder,
        _ => Path::new("."),
    }
}

/// The system's exception, with the path.
pub fn raise_of(error: &io::Error, path: &Path) -> PyErr {
    // The exception adds the number itself.
    let words = error.to_string();
    raise_with(error, words.split(" (os error").next().unwrap_or_default(), path)
}

/// The same in words of our own.
pub fn raise_with(error: &io::Error, words: &str, path: &Path) -> PyErr {
    PyOSError::new_err((error.raw_os_error().unwrap_or(0), words.to_owned(), path.as_os_str().to_owned()))
}
