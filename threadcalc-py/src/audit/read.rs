//! A program from its file: opened read only, read once, and only if it may be one.

use std::fs::{self, File, Metadata};
use std::io::{self, Read};
use std::path::Path;
use std::time::UNIX_EPOCH;

use serde::Serialize;
use threadcalc_core::nc::{Blocks, ReaderSettings};

use super::skipped::Skipped;

/// Within how many bytes a NUL tells that a file is no text.
const FIRST_BYTES: usize = 8192;

/// What tells that a file is still the same.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Stamp {
    pub size: u64,
    pub modified_ns: i64,
}

impl Stamp {
    /// The stamp of a file that may be read.
    pub fn of(path: &Path, largest_bytes: u64) -> Result<Self, Skipped> {
        fs::metadata(path).and_then(|found| Self::from(&found)).map_err(not_readable)?.within(largest_bytes)
    }

    fn from(found: &Metadata) -> io::Result<Self> {
        let modified = found.modified()?;
        let of = |time: std::time::Duration| i64::try_from(time.as_nanos()).unwrap_or(i64::MAX);
        let modified_ns = match modified.duration_since(UNIX_EPOCH) {
            Ok(behind) => of(behind),
            Err(before) => of(before.duration()).saturating_neg(),
        };
        Ok(Self { size: found.len(), modified_ns })
    }

    fn within(self, largest_bytes: u64) -> Result<Self, Skipped> {
        if self.size > largest_bytes {
            return Err(Skipped::TooLarge { bytes: self.size, most: largest_bytes });
        }
        Ok(self)
    }
}

/// All bytes of a file, and the stamp under which they were read.
pub fn read(path: &Path, largest_bytes: u64) -> Result<(Vec<u8>, Stamp), Skipped> {
    let mut file = File::open(path).map_err(not_readable)?;
    let stamp = |file: &File| file.metadata().and_then(|found| Stamp::from(&found)).map_err(not_readable);
    let before = stamp(&file)?.within(largest_bytes)?;
    let mut bytes = Vec::with_capacity(usize::try_from(before.size).unwrap_or(0));
    // A file that grows while it is read is not read without end.
    file.by_ref().take(before.size.saturating_add(1)).read_to_end(&mut bytes).map_err(not_readable)?;
    if stamp(&file)? != before || bytes.len() as u64 != before.size {
        return Err(Skipped::ChangedWhileRead);
    }
    Ok((bytes, before))
}

/// Why these bytes are no program, if they are none.
pub fn unfit(bytes: &[u8]) -> Option<Skipped> {
    if bytes.starts_with(b"\xFF\xFE") || bytes.starts_with(b"\xFE\xFF") {
        return Some(Skipped::Utf16);
    }
    if bytes.iter().all(u8::is_ascii_whitespace) {
        return Some(Skipped::Empty);
    }
    let nul = bytes.iter().take(FIRST_BYTES).zip(1_u64..).find(|(byte, _)| **byte == 0);
    if let Some((_, byte)) = nul {
        return Some(Skipped::Binary { byte });
    }
    (!has_a_code(bytes)).then_some(Skipped::NotAProgram)
}

fn has_a_code(bytes: &[u8]) -> bool {
    let mut blocks = Blocks::new(bytes, ReaderSettings::default());
    while let Some(block) = blocks.next() {
        let is_code = || block.words().iter().any(|word| matches!(word.letter(), b'G' | b'M' | b'T'));
        if block.is_readable() && (block.program_number().is_some() || is_code()) {
            return true;
        }
    }
    false
}

/// The system's own words.
pub fn not_readable(error: io::Error) -> Skipped {
    Skipped::NotReadable(error.to_string())
}
