//! The schema of a comparison of two versions: one line a key.

use serde_json::Value;
use threadcalc_core::SCHEMA;
use threadcalc_core::nc::{ChangeKind, HoleValue};

use crate::report::{hole, unchecked};
use crate::words::{Key, always, choice, list, may, must, object, schema, text, whole, written};

#[rustfmt::skip]
fn keys() -> Vec<Key> {
    vec![
        must("schema", always(SCHEMA), "Version of this JSON."),
        must("counts", object(&counts()), "How many holes there are of what."),
        must("changes", list(object(&change())), "What has changed: the holes of the new version in their order, then those that it no longer has."),
        must("not_compared", list(object(&not_compared())), "The values that were known on neither side."),
        must("before_not_checked", list(object(&unchecked())), "What the check of the old version could not see, and why."),
        must("after_not_checked", list(object(&unchecked())), "The same of the new version."),
        must("never_compared", list(text()), "What no comparison of tapped holes can see."),
    ]
}

#[rustfmt::skip]
fn counts() -> Vec<Key> {
    vec![
        must("before", whole(0), "Blocks that tap in the old version."),
        must("after", whole(0), "The same in the new version."),
        must("changed", whole(0), "In both, and something of them has changed."),
        must("added", whole(0), "In the new version only."),
        must("removed", whole(0), "In the old version only."),
    ]
}

#[rustfmt::skip]
fn change() -> Vec<Key> {
    vec![
        must("kind", choice(ChangeKind::ALL), "What became of the hole."),
        must("text", text(), "The same in one line, in the unit of the new version."),
        must("changed", list(choice(HoleValue::ALL)), "What has changed; empty for a hole that is new or gone."),
        must("not_compared", list(choice(HoleValue::ALL)), "What was known on neither side."),
        may("before", object(&hole()), "The hole in the old version; null if it is new."),
        may("after", object(&hole()), "The hole in the new version; null if it is gone."),
    ]
}

#[rustfmt::skip]
fn not_compared() -> Vec<Key> {
    vec![
        must("value", choice(HoleValue::ALL), "What was not compared."),
        must("count", whole(1), "At how many holes."),
        must("before_line", whole(1), "The first of them: its line in the old version."),
        must("after_line", whole(1), "The same in the new version."),
    ]
}

/// The whole schema.
pub fn comparison() -> Value {
    let about = "The answer to a comparison of two versions of a program: which tapped holes are not what they were. \
        Exact values are texts, null is what there is none of. Lengths are in mm, and the names carry the units.";
    let title = "Comparison: two versions of a program";
    schema("comparison.schema.json", title, about, &["exact"], written(&keys()))
}
