//! Where a serialised value and a hash go: nowhere, but not so that the optimiser knows.

use core::fmt::{self, Display};
use core::hash::Hasher;
use core::hint::black_box;

use serde::ser::{self, Serialize, Serializer};

/// Takes all that is written to it.
#[derive(Clone, Copy)]
pub(crate) struct Sink;

/// A format may refuse any value.
#[derive(Debug)]
pub(crate) struct Refused;

impl Display for Refused {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("refused")
    }
}

impl core::error::Error for Refused {}

impl ser::Error for Refused {
    fn custom<T: Display>(message: T) -> Self {
        let _kept = black_box(shown(&message));
        Self
    }
}

/// Somewhere text goes.
struct Paper;

impl fmt::Write for Paper {
    fn write_str(&mut self, text: &str) -> fmt::Result {
        black_box(text);
        black_box(Ok(()))
    }
}

fn shown(value: &(impl Display + ?Sized)) -> fmt::Result {
    fmt::write(&mut Paper, format_args!("{value}"))
}

impl Hasher for Sink {
    fn write(&mut self, bytes: &[u8]) {
        black_box(bytes);
    }

    fn finish(&self) -> u64 {
        black_box(0)
    }
}

/// What a real format answers: sometimes an error.
fn taken<T>(value: T) -> Result<(), Refused> {
    black_box(value);
    black_box(Ok(()))
}

macro_rules! plain {
    ($($method:ident: $kind:ty),+ $(,)?) => {
        $(fn $method(self, value: $kind) -> Result<(), Refused> { taken(value) })+
    };
}

impl Serializer for Sink {
    type Ok = ();
    type Error = Refused;
    type SerializeSeq = Self;
    type SerializeTuple = Self;
    type SerializeTupleStruct = Self;
    type SerializeTupleVariant = Self;
    type SerializeMap = Self;
    type SerializeStruct = Self;
    type SerializeStructVariant = Self;

    plain! {
        serialize_bool: bool, serialize_i8: i8, serialize_i16: i16, serialize_i32: i32, serialize_i64: i64,
        serialize_u8: u8, serialize_u16: u16, serialize_u32: u32, serialize_u64: u64, serialize_f32: f32,
        serialize_f64: f64, serialize_char: char, serialize_str: &str, serialize_bytes: &[u8],
        serialize_unit_struct: &'static str,
    }

    fn serialize_none(self) -> Result<(), Refused> {
        taken(())
    }

    fn serialize_some<T: Serialize + ?Sized>(self, value: &T) -> Result<(), Refused> {
        value.serialize(self)
    }

    fn serialize_unit(self) -> Result<(), Refused> {
        taken(())
    }

    fn serialize_unit_variant(self, _: &'static str, _: u32, variant: &'static str) -> Result<(), Refused> {
        taken(variant)
    }

    fn serialize_newtype_struct<T: Serialize + ?Sized>(self, _: &'static str, value: &T) -> Result<(), Refused> {
        value.serialize(self)
    }

    fn serialize_newtype_variant<T: Serialize + ?Sized>(
        self,
        _: &'static str,
        _: u32,
        _: &'static str,
        value: &T,
    ) -> Result<(), Refused> {
        value.serialize(self)
    }

    fn serialize_seq(self, length: Option<usize>) -> Result<Self, Refused> {
        taken(length).map(|()| self)
    }

    fn serialize_tuple(self, _: usize) -> Result<Self, Refused> {
        Ok(self)
    }

    fn serialize_tuple_struct(self, _: &'static str, _: usize) -> Result<Self, Refused> {
        Ok(self)
    }

    fn serialize_tuple_variant(self, _: &'static str, _: u32, _: &'static str, _: usize) -> Result<Self, Refused> {
        Ok(self)
    }

    fn serialize_map(self, length: Option<usize>) -> Result<Self, Refused> {
        taken(length).map(|()| self)
    }

    fn serialize_struct(self, _: &'static str, _: usize) -> Result<Self, Refused> {
        Ok(self)
    }

    fn serialize_struct_variant(self, _: &'static str, _: u32, _: &'static str, _: usize) -> Result<Self, Refused> {
        Ok(self)
    }

    fn collect_str<T: Display + ?Sized>(self, value: &T) -> Result<(), Refused> {
        shown(value).map_err(|_| Refused)
    }
}

/// A compound value whose parts come one by one.
macro_rules! compound {
    ($($which:ident: $method:ident),+ $(,)?) => {
        $(impl ser::$which for Sink {
            type Ok = ();
            type Error = Refused;

            fn $method<T: Serialize + ?Sized>(&mut self, value: &T) -> Result<(), Refused> {
                value.serialize(*self)
            }

            fn end(self) -> Result<(), Refused> {
                taken(())
            }
        })+
    };
}

compound! {
    SerializeSeq: serialize_element,
    SerializeTuple: serialize_element,
    SerializeTupleStruct: serialize_field,
    SerializeTupleVariant: serialize_field,
}

/// A compound value whose parts have names.
macro_rules! named_compound {
    ($($which:ident),+) => {
        $(impl ser::$which for Sink {
            type Ok = ();
            type Error = Refused;

            fn serialize_field<T: Serialize + ?Sized>(&mut self, name: &'static str, value: &T) -> Result<(), Refused> {
                taken(name)?;
                value.serialize(*self)
            }

            fn end(self) -> Result<(), Refused> {
                taken(())
            }
        })+
    };
}

named_compound!(SerializeStruct, SerializeStructVariant);

impl ser::SerializeMap for Sink {
    type Ok = ();
    type Error = Refused;

    fn serialize_key<T: Serialize + ?Sized>(&mut self, key: &T) -> Result<(), Refused> {
        key.serialize(*self)
    }

    fn serialize_value<T: Serialize + ?Sized>(&mut self, value: &T) -> Result<(), Refused> {
        value.serialize(*self)
    }

    fn end(self) -> Result<(), Refused> {
        taken(())
    }
}
