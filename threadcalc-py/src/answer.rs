//! One macro for the classes of answers that are nothing but named values.

use pyo3::IntoPyObjectExt;
use pyo3::prelude::*;
use threadcalc_core as core;

use crate::number::fraction;

/// A value of an answer, as Python sees it and as `repr` writes it.
pub trait Shown {
    fn shown<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>>;
    fn text(&self) -> String;
}

impl Shown for core::Length {
    fn shown<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        fraction(py, *self)
    }

    fn text(&self) -> String {
        self.to_string()
    }
}

impl<T: Shown> Shown for Option<T> {
    fn shown<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        self.as_ref().map_or_else(|| Ok(py.None().into_bound(py)), |value| value.shown(py))
    }

    fn text(&self) -> String {
        self.as_ref().map_or_else(|| String::from("none"), T::text)
    }
}

impl<const N: usize> Shown for core::Text<N> {
    fn shown<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        self.as_str().into_bound_py_any(py)
    }

    fn text(&self) -> String {
        self.to_string()
    }
}

macro_rules! plain {
    ($($type:ty),+) => {$(
        impl Shown for $type {
            fn shown<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
                self.into_bound_py_any(py)
            }

            fn text(&self) -> String {
                self.to_string()
            }
        }
    )+};
}
plain!(bool, f64, i64, u8, u16, u32, usize, &'static str);

macro_rules! by_name {
    ($($type:ident),+ $(,)?) => {$(
        impl Shown for core::$type {
            fn shown<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
                self.name().into_bound_py_any(py)
            }

            fn text(&self) -> String {
                self.name().to_owned()
            }
        }
    )+};
}
by_name!(
    BlockOrder,
    BottomVerdict,
    ChamferForm,
    Confidence,
    DwellUnit,
    EngagementGroup,
    FeedBasis,
    FeedMode,
    GaugeKind,
    NoPoint,
    NumberSpaces,
    RepeatZero,
    RetractIn,
    RigidUntil,
    Suits,
    Unit,
    Weakest,
);

/// The name of a getter: that of its field, unless another is said.
macro_rules! name_of {
    ($field:ident) => {
        stringify!($field)
    };
    ($field:ident $name:literal) => {
        $name
    };
}
pub(crate) use name_of;

/// A class over an answer of the core: a getter for each field that is named, and `repr`. `as` gives a getter
/// another name than its field's.
macro_rules! answer {
    (
        $(#[$meta:meta])*
        $name:ident($core:ty) { $($(#[$field_meta:meta])* $field:ident $(as $shown:literal)?),+ $(,)? }
        $($more:tt)*
    ) => {
        $(#[$meta])*
        #[pyo3::pyclass(module = "threadcalc", frozen, eq)]
        #[derive(Clone, Copy, PartialEq)]
        pub struct $name(pub $core);

        #[pyo3::pymethods]
        impl $name {
            $(
                $(#[$field_meta])*
                #[getter]
                $(#[pyo3(name = $shown)])?
                fn $field<'py>(&self, py: pyo3::Python<'py>) -> pyo3::PyResult<pyo3::Bound<'py, pyo3::PyAny>> {
                    $crate::answer::Shown::shown(&self.0.$field, py)
                }
            )+

            fn __repr__(&self) -> String {
                let shown = [$(format!("{} {}", $crate::answer::name_of!($field $($shown)?), $crate::answer::Shown::text(&self.0.$field))),+];
                format!("<{} {}>", stringify!($name), shown.join(", "))
            }

            $($more)*
        }
    };
}
pub(crate) use answer;
