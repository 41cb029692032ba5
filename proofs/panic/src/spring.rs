//! Where a value is read from: nobody knows what comes, and the format may refuse at any point.

use core::hint::black_box;

use serde::de::{self, DeserializeSeed, Deserializer, Expected, MapAccess, SeqAccess, Unexpected, Visitor};
use serde::forward_to_deserialize_any;

use crate::sink::Refused;

/// Gives anything.
#[derive(Clone, Copy)]
pub(crate) struct Spring;

/// What is expected and what came would be put into words by serde, which formats doubles by core's own means.
impl de::Error for Refused {
    fn custom<T: core::fmt::Display>(message: T) -> Self {
        <Self as serde::ser::Error>::custom(message)
    }

    fn invalid_type(_: Unexpected<'_>, _: &dyn Expected) -> Self {
        Self
    }

    fn invalid_value(_: Unexpected<'_>, _: &dyn Expected) -> Self {
        Self
    }
}

impl<'de> Deserializer<'de> for Spring {
    type Error = Refused;

    fn deserialize_any<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Refused> {
        match black_box(0_u8) {
            0 => visitor.visit_bool(black_box(false)),
            1 => visitor.visit_i64(black_box(0)),
            2 => visitor.visit_u64(black_box(0)),
            3 => visitor.visit_f64(black_box(0.0)),
            4 => visitor.visit_str(black_box("")),
            5 => visitor.visit_bytes(black_box(b"")),
            6 => visitor.visit_none(),
            7 => visitor.visit_unit(),
            8 => visitor.visit_seq(self),
            9 => visitor.visit_map(self),
            _ => Err(Refused),
        }
    }

    fn deserialize_option<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Refused> {
        if black_box(true) { visitor.visit_some(self) } else { self.deserialize_any(visitor) }
    }

    forward_to_deserialize_any! {
        bool i8 i16 i32 i64 i128 u8 u16 u32 u64 u128 f32 f64 char str string bytes byte_buf unit unit_struct
        newtype_struct seq tuple tuple_struct map struct enum identifier ignored_any
    }
}

impl<'de> SeqAccess<'de> for Spring {
    type Error = Refused;

    fn next_element_seed<T: DeserializeSeed<'de>>(&mut self, seed: T) -> Result<Option<T::Value>, Refused> {
        if black_box(true) { seed.deserialize(*self).map(Some) } else { Ok(None) }
    }
}

impl<'de> MapAccess<'de> for Spring {
    type Error = Refused;

    fn next_key_seed<K: DeserializeSeed<'de>>(&mut self, seed: K) -> Result<Option<K::Value>, Refused> {
        if black_box(true) { seed.deserialize(*self).map(Some) } else { Ok(None) }
    }

    fn next_value_seed<V: DeserializeSeed<'de>>(&mut self, seed: V) -> Result<V::Value, Refused> {
        seed.deserialize(*self)
    }
}
