//! A check from its data, as `json.rs` writes it: the same holes and findings.

use core::fmt;
use core::marker::PhantomData;

use serde::de::{Deserialize, Deserializer, Error as _, MapAccess, SeqAccess, Visitor};

use super::declared::ThreadSource;
use super::finding::{
    Evidence, EvidenceKind, FindingNumber, MOST_CALLS_TOLD, MOST_EVIDENCE, MOST_NUMBERS, ProgramFinding,
    ProgramNumberKey,
};
use super::finding_id::ProgramFindingId;
use super::list::List;
use super::readings;
use super::report::{Reason, TappedHole, Unchecked};
use super::work_offset::WorkOffset;
use crate::feed::{FeedMode, Unit};
use crate::finding::Severity;
use crate::length::Length;
use crate::text::Text;
use crate::thread::{Hand, Thread};

/// The texts that stand for a number: hands and letters.
const NUMBER_TEXTS: [&str; 6] = ["LH", "RH", "G", "M", "R", "Z"];

/// What stands in the data as text.
trait FromText: Sized {
    fn from_text(text: &str) -> Option<Self>;
}

macro_rules! by_name {
    ($($name:ty),+) => {$(
        impl FromText for $name {
            fn from_text(text: &str) -> Option<Self> {
                Self::from_name(text.as_bytes())
            }
        }
    )+};
}
by_name!(EvidenceKind, FeedMode, Hand, ProgramFindingId, ProgramNumberKey, Reason, Severity, ThreadSource, Unit);

impl FromText for Length {
    fn from_text(text: &str) -> Option<Self> {
        crate::number::read_number(text.as_bytes()).ok()
    }
}

impl FromText for Thread {
    fn from_text(text: &str) -> Option<Self> {
        Self::read(text.as_bytes()).ok()
    }
}

impl FromText for WorkOffset {
    fn from_text(text: &str) -> Option<Self> {
        Self::read(text)
    }
}

impl<const N: usize> FromText for Text<N> {
    fn from_text(text: &str) -> Option<Self> {
        Self::holding(text)
    }
}

/// A reading.
impl FromText for &'static str {
    fn from_text(text: &str) -> Option<Self> {
        readings::ALL.into_iter().find(|known| *known == text)
    }
}

/// A value that stands in the data as text.
struct Read<T>(T);

impl<'de, T: FromText> Deserialize<'de> for Read<T> {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        struct OfText<T>(PhantomData<T>);
        impl<T: FromText> Visitor<'_> for OfText<T> {
            type Value = Read<T>;

            fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                f.write_str("a text that this version writes")
            }

            fn visit_str<E: serde::de::Error>(self, text: &str) -> Result<Read<T>, E> {
                T::from_text(text).map(Read).ok_or_else(|| E::invalid_value(serde::de::Unexpected::Str(text), &self))
            }
        }
        deserializer.deserialize_str(OfText(PhantomData))
    }
}

fn of<T>(read: Option<Read<T>>) -> Option<T> {
    read.map(|read| read.0)
}

/// Up to `N` items of a list; a longer one is refused.
struct UpTo<T, const N: usize>(List<Option<T>, N>);

impl<'de, T: Deserialize<'de> + Copy, const N: usize> Deserialize<'de> for UpTo<T, N> {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        struct OfList<T, const N: usize>(PhantomData<T>);
        impl<'de, T: Deserialize<'de> + Copy, const N: usize> Visitor<'de> for OfList<T, N> {
            type Value = UpTo<T, N>;

            fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                f.write_str("a list that is not longer than a finding's")
            }

            fn visit_seq<A: SeqAccess<'de>>(self, mut items: A) -> Result<UpTo<T, N>, A::Error> {
                let mut list = List::new(None);
                while let Some(item) = items.next_element::<T>()? {
                    if !list.push(Some(item)) {
                        return Err(A::Error::invalid_length(N, &self));
                    }
                }
                Ok(UpTo(list))
            }
        }
        deserializer.deserialize_seq(OfList(PhantomData))
    }
}

impl<'de> Deserialize<'de> for FindingNumber {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        struct OfNumber;
        impl Visitor<'_> for OfNumber {
            type Value = FindingNumber;

            fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                f.write_str("a number, a hand or a letter")
            }

            fn visit_f64<E>(self, value: f64) -> Result<FindingNumber, E> {
                Ok(FindingNumber::Double(value))
            }

            fn visit_u64<E>(self, value: u64) -> Result<FindingNumber, E> {
                Ok(FindingNumber::Double(value as f64))
            }

            fn visit_i64<E>(self, value: i64) -> Result<FindingNumber, E> {
                Ok(FindingNumber::Double(value as f64))
            }

            fn visit_str<E: serde::de::Error>(self, text: &str) -> Result<FindingNumber, E> {
                let known = NUMBER_TEXTS.into_iter().find(|known| *known == text);
                known.map(FindingNumber::Text).ok_or_else(|| E::invalid_value(serde::de::Unexpected::Str(text), &self))
            }
        }
        deserializer.deserialize_any(OfNumber)
    }
}

/// The numbers of a finding, in their order.
struct Numbers(List<Option<(ProgramNumberKey, FindingNumber)>, MOST_NUMBERS>);

impl<'de> Deserialize<'de> for Numbers {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        struct OfMap;
        impl<'de> Visitor<'de> for OfMap {
            type Value = Numbers;

            fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                f.write_str("the numbers of a finding by name")
            }

            fn visit_map<A: MapAccess<'de>>(self, mut items: A) -> Result<Numbers, A::Error> {
                let mut list = List::new(None);
                while let Some((key, number)) = items.next_entry::<Read<ProgramNumberKey>, FindingNumber>()? {
                    if !list.push(Some((key.0, number))) {
                        return Err(A::Error::invalid_length(MOST_NUMBERS, &self));
                    }
                }
                Ok(Numbers(list))
            }
        }
        deserializer.deserialize_map(OfMap)
    }
}

impl<'de> Deserialize<'de> for Evidence {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        #[derive(serde::Deserialize)]
        struct Fields {
            kind: Read<EvidenceKind>,
            line: u32,
        }
        let read = Fields::deserialize(deserializer)?;
        Ok(Self { kind: read.kind.0, line: read.line })
    }
}

/// What its JSON holds; the message follows from the rest.
impl<'de> Deserialize<'de> for ProgramFinding {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        #[derive(serde::Deserialize)]
        struct Fields {
            id: Read<ProgramFindingId>,
            severity: Read<Severity>,
            line: u32,
            column: u32,
            end_column: u32,
            program: Option<u64>,
            call_path: UpTo<u32, MOST_CALLS_TOLD>,
            tool: Option<u32>,
            hole: Option<u32>,
            thread: Option<Read<Thread>>,
            numbers: Numbers,
            evidence: UpTo<Evidence, MOST_EVIDENCE>,
            suggestion: Read<Text<48>>,
            replaces: bool,
            reading: Read<&'static str>,
            certain: bool,
        }
        let read = Fields::deserialize(deserializer)?;
        let mut finding = Self::new(read.id.0, read.line, read.column, read.end_column).severe(read.severity.0);
        for (key, number) in read.numbers.0.as_slice().iter().flatten() {
            finding.set(*key, *number);
        }
        for evidence in read.evidence.0.as_slice().iter().flatten() {
            finding = finding.because(evidence.kind, evidence.line);
        }
        finding.calls.iter_mut().zip(read.call_path.0.as_slice().iter().flatten()).for_each(|(to, line)| *to = *line);
        finding.program = read.program;
        finding.tool = read.tool;
        finding.hole = read.hole;
        finding.thread = of(read.thread);
        finding.reading = read.reading.0;
        finding.certain = read.certain;
        let suggestion = read.suggestion.0;
        let put = if read.replaces { Self::write_over } else { Self::write };
        Ok(put(finding, suggestion.as_str()))
    }
}

impl<'de> Deserialize<'de> for TappedHole {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        #[derive(serde::Deserialize)]
        struct Fields {
            line: u32,
            number: u32,
            lead_mm: Option<Read<Length>>,
            speed_rpm: Option<Read<Length>>,
            feed: Option<Read<Length>>,
            hand: Option<Read<Hand>>,
            count: u32,
            depth_mm: Option<Read<Length>>,
            thread: Option<Read<Thread>>,
            source: Option<Read<ThreadSource>>,
            tool: Option<u32>,
            program: Option<u64>,
            x_mm: Option<Read<Length>>,
            y_mm: Option<Read<Length>>,
            work_offset: Read<WorkOffset>,
            unit: Option<Read<Unit>>,
            feed_mode: Option<Read<FeedMode>>,
        }
        let read = Fields::deserialize(deserializer)?;
        Ok(Self {
            line: read.line,
            number: read.number,
            lead_mm: of(read.lead_mm),
            speed_rpm: of(read.speed_rpm),
            feed: of(read.feed),
            hand: of(read.hand),
            count: read.count,
            depth_mm: of(read.depth_mm),
            thread: of(read.thread),
            source: of(read.source),
            tool: read.tool,
            program: read.program,
            x_mm: of(read.x_mm),
            y_mm: of(read.y_mm),
            work_offset: read.work_offset.0,
            unit: of(read.unit),
            feed_mode: of(read.feed_mode),
        })
    }
}

impl<'de> Deserialize<'de> for Unchecked {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        #[derive(serde::Deserialize)]
        struct Fields {
            reason: Read<Reason>,
            count: u32,
            first_line: u32,
        }
        let read = Fields::deserialize(deserializer)?;
        Ok(Self { reason: read.reason.0, count: read.count, first_line: read.first_line })
    }
}
