//! A check as data: exact values as text, derived ones as numbers, what is not given as null.

use serde::ser::{Serialize, SerializeStruct, Serializer};

use super::finding::{Evidence, FindingNumber, ProgramFinding};
use super::report::{NEVER_CHECKED, Report, TappedHole, Unchecked};
use crate::json::{Shown, serialize_fields};
use crate::plan::SCHEMA;

impl Serialize for Report<'_> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serialize_fields!(serializer, "Report",
            "schema": SCHEMA,
            "tapped_holes": self.tapped_holes,
            "findings": self.findings,
            "not_checked": self.not_checked,
            "never_checked": NEVER_CHECKED,
        )
    }
}

impl Serialize for TappedHole {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serialize_fields!(serializer, "TappedHole",
            "line": self.line,
            "number": self.number,
            "lead_mm": self.lead_mm,
            "speed_rpm": self.speed_rpm,
            "feed": self.feed,
            "hand": self.hand,
            "count": self.count,
            "depth_mm": self.depth_mm,
            "thread": self.thread.map(Shown),
            "source": self.source,
            "tool": self.tool,
            "program": self.program,
            "x_mm": self.x_mm,
            "y_mm": self.y_mm,
            "work_offset": self.work_offset,
            "unit": self.unit,
            "feed_mode": self.feed_mode,
        )
    }
}

impl Serialize for ProgramFinding {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serialize_fields!(serializer, "ProgramFinding",
            "id": self.id(),
            "severity": self.severity(),
            "line": self.line(),
            "column": self.column(),
            "end_column": self.end_column(),
            "program": self.program(),
            "call_path": CallPath(self),
            "tool": self.tool(),
            "hole": self.hole(),
            "thread": self.thread().map(Shown),
            "message": Shown(self.message()),
            "text": Shown(self.text()),
            "numbers": Numbers(self),
            "evidence": Lines(self),
            "grounds": Shown(self.grounds()),
            "suggestion": self.suggestion(),
            "replaces": self.replaces(),
            "reading": self.reading(),
            "certain": self.certain(),
        )
    }
}

struct CallPath<'a>(&'a ProgramFinding);

impl Serialize for CallPath<'_> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_seq(self.0.call_path())
    }
}

/// The numbers of a finding by their names.
struct Numbers<'a>(&'a ProgramFinding);

impl Serialize for Numbers<'_> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_map(self.0.numbers())
    }
}

impl Serialize for FindingNumber {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        match self {
            Self::Double(value) => serializer.serialize_f64(*value),
            Self::Text(text) => serializer.serialize_str(text),
        }
    }
}

/// The lines that a finding rests on.
struct Lines<'a>(&'a ProgramFinding);

impl Serialize for Lines<'_> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_seq(self.0.evidence())
    }
}

impl Serialize for Evidence {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serialize_fields!(serializer, "Evidence", "kind": self.kind, "line": self.line, "text": Shown(self))
    }
}

impl Serialize for Unchecked {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serialize_fields!(serializer, "Unchecked",
            "reason": self.reason,
            "text": self.reason.text(),
            "count": self.count,
            "first_line": self.first_line,
        )
    }
}
