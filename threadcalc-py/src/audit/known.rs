//! What tells a finding again when the lines around it have moved: what it says and the text it rests on.

use serde::{Deserialize, Serialize};
use sha2::{Digest, Sha256};
use threadcalc_core::nc::{FindingNumber, ProgramFinding, ProgramNumberKey};

/// How much of a block is shown to who reads a baseline.
const SHOWN_CHARS: usize = 80;

/// What tells a finding again.
#[derive(Clone, Debug, PartialEq, Deserialize, Serialize)]
pub struct Mark {
    pub key: Key,
    /// The block, for people.
    pub block: String,
}

/// The first half of a SHA-256, as 32 hexadecimal digits.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Deserialize, Serialize)]
#[serde(try_from = "String", into = "String")]
pub struct Key(u128);

impl Key {
    /// Which of so many it falls into.
    pub fn modulo(self, parts: u32) -> Option<u32> {
        self.0.checked_rem(u128::from(parts)).and_then(|rest| u32::try_from(rest).ok())
    }
}

impl From<Key> for String {
    fn from(key: Key) -> Self {
        format!("{:032x}", key.0)
    }
}

impl TryFrom<String> for Key {
    type Error = &'static str;

    fn try_from(text: String) -> Result<Self, Self::Error> {
        let digits = Some(text.as_str()).filter(|text| text.len() == 32 && !text.starts_with('+'));
        let value = digits.and_then(|text| u128::from_str_radix(text, 16).ok());
        value.map(Self).ok_or("a key has 32 hexadecimal digits")
    }
}

/// A hash of parts that are kept apart.
pub struct Hashed(Sha256);

impl Hashed {
    pub fn new() -> Self {
        Self(Sha256::new())
    }

    pub fn part(mut self, part: &[u8]) -> Self {
        self.0.update((part.len() as u64).to_le_bytes());
        self.0.update(part);
        self
    }

    pub fn key(self) -> Key {
        let whole = self.0.finalize();
        Key(whole.first_chunk().map_or(0, |half| u128::from_be_bytes(*half)))
    }
}

/// The marks of these findings of a text, in their order.
pub fn marks(text: &[u8], findings: &[ProgramFinding]) -> Vec<Mark> {
    if findings.is_empty() {
        return Vec::new();
    }
    let lines = Lines::of(text);
    findings.iter().map(|finding| mark(finding, &lines)).collect()
}

fn mark(finding: &ProgramFinding, lines: &Lines<'_>) -> Mark {
    let thread = finding.thread().map(ToString::to_string).unwrap_or_default();
    let mut hashed = Hashed::new();
    for said in [finding.id().name(), finding.severity().name(), finding.reading(), &thread] {
        hashed = hashed.part(said.as_bytes());
    }
    for (key, number) in finding.numbers().filter(|(key, _)| !is_line(*key)) {
        let value = match number {
            FindingNumber::Double(value) => format!("{value}"),
            FindingNumber::Text(text) => text.to_owned(),
        };
        hashed = hashed.part(key.name().as_bytes()).part(value.as_bytes());
    }
    let block = lines.get(finding.line());
    hashed = hashed.part(b"block").part(&plain(block));
    for evidence in finding.evidence() {
        hashed = hashed.part(evidence.kind.name().as_bytes()).part(&plain(lines.get(evidence.line)));
    }
    let shown = String::from_utf8_lossy(block.trim_ascii()).chars().take(SHOWN_CHARS).collect();
    Mark { key: hashed.key(), block: shown }
}

/// A number that only says where something stands.
const fn is_line(key: ProgramNumberKey) -> bool {
    matches!(key, ProgramNumberKey::ChangedAtLine | ProgramNumberKey::SetAtLine)
}

/// A block without case, blanks and N number. Comments are kept: they name threads and tools.
fn plain(block: &[u8]) -> Vec<u8> {
    let solid = block.iter().filter(|byte| !byte.is_ascii_whitespace()).map(u8::to_ascii_uppercase);
    let mut solid: Vec<u8> = solid.collect();
    let mut at = usize::from(solid.first() == Some(&b'/'));
    let is_digit = |solid: &Vec<u8>, at: usize| solid.get(at).is_some_and(u8::is_ascii_digit);
    if at == 1 && is_digit(&solid, at) {
        at = 2;
    }
    if solid.get(at) == Some(&b'N') {
        let digits = solid.iter().skip(at).skip(1).take_while(|byte| byte.is_ascii_digit()).count();
        if digits > 0 {
            solid.drain(at..at.saturating_add(digits).saturating_add(1));
        }
    }
    solid
}

/// The lines of a text, as the reader of programs counts them.
struct Lines<'a>(Vec<&'a [u8]>);

impl<'a> Lines<'a> {
    fn of(text: &'a [u8]) -> Self {
        let mut rest = text.strip_prefix(b"\xEF\xBB\xBF").unwrap_or(text);
        let mut lines = Vec::new();
        while !rest.is_empty() {
            let end = rest.iter().position(|byte| matches!(byte, b'\n' | b'\r')).unwrap_or(rest.len());
            let (line, behind) = rest.split_at(end);
            lines.push(line);
            rest = behind.strip_prefix(b"\r\n").or_else(|| behind.get(1..)).unwrap_or_default();
        }
        Self(lines)
    }

    /// The line with this number, from 1; nothing for 0.
    fn get(&self, number: u32) -> &'a [u8] {
        let place = usize::try_from(number).ok().and_then(|number| number.checked_sub(1));
        place.and_then(|place| self.0.get(place)).copied().unwrap_or_default()
    }
}
