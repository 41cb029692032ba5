//! Why a file was not checked.

use std::fmt;

use serde::{Deserialize, Serialize};

/// Why a file was not checked.
#[derive(Clone, Debug, PartialEq, Deserialize, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Skipped {
    SymbolicLink,
    NoRegularFile,
    NotReadable(String),
    NoDialect,
    TooLarge { bytes: u64, most: u64 },
    Empty,
    Utf16,
    Binary { byte: u64 },
    NotAProgram,
    ChangedWhileRead,
}

impl Skipped {
    /// The stable name of the reason, without what differs from file to file.
    pub const fn name(&self) -> &'static str {
        match self {
            Self::SymbolicLink => "symbolic-link",
            Self::NoRegularFile => "no-regular-file",
            Self::NotReadable(_) => "not-readable",
            Self::NoDialect => "no-dialect",
            Self::TooLarge { .. } => "too-large",
            Self::Empty => "empty",
            Self::Utf16 => "utf-16",
            Self::Binary { .. } => "binary",
            Self::NotAProgram => "not-a-program",
            Self::ChangedWhileRead => "changed-while-read",
        }
    }
}

/// `too-large: 12 bytes, at most 10`
impl fmt::Display for Skipped {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}: ", self.name())?;
        match self {
            Self::SymbolicLink => f.write_str("not followed, it may lead elsewhere or in a circle; name its target"),
            Self::NoRegularFile => f.write_str("a device, a pipe or a socket"),
            Self::NotReadable(words) => f.write_str(words),
            Self::NoDialect => f.write_str("it stands in none of the folders that have a dialect"),
            Self::TooLarge { bytes, most } => write!(f, "{bytes} bytes, at most {most}"),
            Self::Empty => f.write_str("nothing in it but blanks"),
            Self::Utf16 => f.write_str("begins with a byte order mark of UTF-16; save it as plain text"),
            Self::Binary { byte } => write!(f, "no text, byte {byte} is NUL"),
            Self::NotAProgram => f.write_str("no line with a G, M, T or O word that can be read"),
            Self::ChangedWhileRead => f.write_str("somebody wrote to it meanwhile; audit it again"),
        }
    }
}
