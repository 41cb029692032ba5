//! What the JSON of several answers is written with.

use serde::ser::{Serialize, Serializer};

/// An iterator as a JSON array.
pub(crate) struct Array<I>(pub I);

impl<I: Iterator + Clone> Serialize for Array<I>
where
    I::Item: Serialize,
{
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_seq(self.0.clone())
    }
}

/// Anything displayed, as a JSON string.
pub(crate) struct Shown<T>(pub T);

impl<T: core::fmt::Display> Serialize for Shown<T> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(&self.0)
    }
}

macro_rules! serialize_fields {
    ($serializer:ident, $name:literal, $($key:literal: $value:expr),+ $(,)?) => {{
        let mut fields = $serializer.serialize_struct($name, [$($key),+].len())?;
        $(fields.serialize_field($key, &$value)?;)+
        fields.end()
    }};
}
pub(crate) use serialize_fields;
