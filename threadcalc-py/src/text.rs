//! Texts and names in.

use std::borrow::Cow;

use pyo3::prelude::*;
use pyo3::types::{PyBytes, PyString};
use threadcalc_core::{
    Basis, ChamferForm, Code, DepthRounding, DrillSet, DrilledTo, EngagementGroup, Error, FeedMode, Field, FitQuality,
    Form, GaugeReading, Hand, Holder, Hole, IsoTapClass, LimitLetter, Material, PropertyClass, ReturnTo, RunOut,
    Series, Side, Tap, TapKind, TapSetOn, Unit, WrittenAs,
};

use crate::error::raise_key;
use crate::number::{wrong_type, wrong_type_of};

/// The bytes of a str (UTF-8) or of bytes.
pub fn bytes_of<'a>(value: &'a Bound<'_, PyAny>, field: Field) -> PyResult<Cow<'a, [u8]>> {
    if let Ok(text) = value.cast::<PyString>() {
        if let Ok(text) = text.to_str() {
            return Ok(Cow::Borrowed(text.as_bytes()));
        }
        // A lone surrogate has no UTF-8; its bytes are unreadable where they stand.
        let encoded = text.call_method1("encode", ("utf-8", "surrogatepass"))?;
        return Ok(Cow::Owned(encoded.cast::<PyBytes>()?.as_bytes().to_vec()));
    }
    match value.cast::<PyBytes>() {
        Ok(bytes) => Ok(Cow::Borrowed(bytes.as_bytes())),
        Err(_) => Err(wrong_type(value, field, "str or bytes")),
    }
}

/// A closed set of names.
pub trait Choice: Sized {
    const FIELD: Field;
    /// What the caller calls it; the field's own name where it has one.
    const NAME: &'static str;
    const CHOICES: &'static str;
    fn named(name: &[u8]) -> Option<Self>;
}

macro_rules! choice {
    (@name $field:ident) => { Field::$field.name() };
    (@name $field:ident $text:literal) => { $text };
    ($($name:ident: $field:ident $($text:literal)?),+ $(,)?) => {$(
        impl Choice for $name {
            const FIELD: Field = Field::$field;
            const NAME: &'static str = choice!(@name $field $($text)?);
            const CHOICES: &'static str = Self::CHOICES;
            fn named(name: &[u8]) -> Option<Self> {
                Self::from_name(name)
            }
        }
    )+};
}

choice!(
    Basis: Basis,
    ChamferForm: Key "chamfer",
    DepthRounding: DepthRounding,
    DrillSet: DrillSets,
    DrilledTo: DrilledTo,
    EngagementGroup: EngagementGroup,
    FeedMode: Mode,
    FitQuality: FitQuality,
    Form: Form,
    GaugeReading: GaugeReading,
    Hand: Hand,
    Hole: Hole,
    Holder: Key "holder",
    IsoTapClass: IsoTapClass,
    LimitLetter: TapLimit,
    Material: Key "material",
    PropertyClass: Key "property_class",
    RunOut: RunOut,
    ReturnTo: ReturnTo,
    Series: Series,
    Side: Side,
    Tap: Tap,
    TapKind: Key "tap_kind",
    TapSetOn: TapSetOn,
    Unit: Unit,
    WrittenAs: WrittenAs,
);

/// The choice that a text names.
pub fn choose<T: Choice>(value: &Bound<'_, PyAny>) -> PyResult<T> {
    let Ok(text) = value.cast::<PyString>() else { return Err(wrong_type_of(value, T::NAME, "str")) };
    let chosen = text.to_str().ok().and_then(|name| T::named(name.as_bytes()));
    chosen.ok_or_else(|| raise_key(Error::new(Code::UnknownValue, T::FIELD).hint_text(T::CHOICES), T::NAME))
}

/// As [`choose`], with `None` for "not given".
pub fn optional_choice<T: Choice>(value: Option<&Bound<'_, PyAny>>) -> PyResult<Option<T>> {
    value.map(choose).transpose()
}
