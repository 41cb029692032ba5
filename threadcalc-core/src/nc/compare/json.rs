//! A comparison as data.

use serde::ser::{Serialize, SerializeStruct, Serializer};

use super::change::HoleChange;
use super::report::ComparisonReport;
use super::values::HoleValues;
use super::{HoleCounts, NEVER_COMPARED, NotCompared};
use crate::json::{Array, Shown, serialize_fields};
use crate::plan::SCHEMA;

impl Serialize for ComparisonReport<'_> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serialize_fields!(serializer, "ComparisonReport",
            "schema": SCHEMA,
            "counts": self.comparison.counts(),
            "changes": Array(self.comparison.changes()),
            "not_compared": Array(self.comparison.not_compared()),
            "before_not_checked": self.before_not_checked,
            "after_not_checked": self.after_not_checked,
            "never_compared": NEVER_COMPARED,
        )
    }
}

impl Serialize for HoleCounts {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serialize_fields!(serializer, "HoleCounts",
            "before": self.before,
            "after": self.after,
            "changed": self.changed,
            "added": self.added,
            "removed": self.removed,
        )
    }
}

impl Serialize for HoleChange {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serialize_fields!(serializer, "HoleChange",
            "kind": self.kind(),
            "text": Shown(self),
            "changed": self.changed,
            "not_compared": self.not_compared,
            "before": self.before,
            "after": self.after,
        )
    }
}

impl Serialize for HoleValues {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_seq(self.iter())
    }
}

impl Serialize for NotCompared {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serialize_fields!(serializer, "NotCompared",
            "value": self.value,
            "count": self.count,
            "before_line": self.before.line,
            "after_line": self.after.line,
        )
    }
}
