//! `Thread`: one designation.

use std::fmt::Write;

use pyo3::prelude::*;
use pyo3::types::{PyString, PyTuple, PyType};
use threadcalc_core::{self as core, Code, Error, Field, Length, WrittenAs};

use crate::error::{raise, raise_designation};
use crate::finding::{Finding, list_findings};
use crate::limits::{CoatingGrowth, Limits, Profile};
use crate::number::{exact, fraction, optional_fraction, whole};
use crate::pipe::Pipe;
use crate::text::{bytes_of, choose, optional_choice};

/// A screw thread, immutable and hashable.
#[pyclass(module = "threadcalc", frozen, eq, hash)]
#[derive(Clone, Copy, PartialEq, Eq, Hash)]
pub struct Thread(pub core::Thread);

/// The canonical designation; a thread of very odd figures has none.
pub fn designation(thread: &core::Thread) -> PyResult<String> {
    let mut text = String::new();
    match write!(text, "{thread}") {
        Ok(()) => Ok(text),
        Err(_) => Err(raise(Error::new(Code::Overflow, Field::Designation))),
    }
}

/// `Thread('…')` where the text says it all, else the exact figures.
fn constructor(thread: &core::Thread) -> String {
    let written = designation(thread).unwrap_or_default();
    let read = core::Thread::read(written.as_bytes()).ok();
    if read == Some(*thread) {
        return format!("Thread('{written}')");
    }
    if let Some(side) = thread.side() {
        if read.and_then(|read| read.with_side(side).ok()) == Some(*thread) {
            return format!("Thread('{written}').with_side('{side}')");
        }
    }
    let ratio = |value: Length| format!("({}, {})", value.numerator(), value.denominator());
    format!(
        "Thread._from_parts('{}', {}, {}, {}, '{}', {}, '{}')",
        thread.form(),
        ratio(thread.major_mm()),
        ratio(thread.pitch_mm()),
        thread.starts(),
        thread.hand(),
        thread.side().map_or_else(|| String::from("None"), |side| format!("'{side}'")),
        thread.tolerance_class().as_ref().map_or("", |class| class.as_str()),
    )
}

#[pymethods]
impl Thread {
    #[new]
    #[pyo3(signature = (designation, /))]
    fn new(designation: &Bound<'_, PyAny>) -> PyResult<Self> {
        let text = bytes_of(designation, Field::Designation)?;
        core::Thread::read(&text).map(Self).map_err(raise_designation)
    }

    /// An ISO metric thread from diameter and pitch in millimetres.
    #[staticmethod]
    fn metric(diameter_mm: &Bound<'_, PyAny>, pitch_mm: &Bound<'_, PyAny>) -> PyResult<Self> {
        let (diameter, pitch) = (exact(diameter_mm, Field::Diameter)?, exact(pitch_mm, Field::Pitch)?);
        core::Thread::metric(diameter, pitch).map(Self).map_err(raise)
    }

    /// A Unified thread from its size and threads per inch.
    #[staticmethod]
    fn unified(diameter_in: &Bound<'_, PyAny>, threads_per_inch: &Bound<'_, PyAny>) -> PyResult<Self> {
        let per_inch = exact(threads_per_inch, Field::ThreadsPerInch)?;
        let thread = match diameter_in.is_instance_of::<PyString>() {
            true => core::Thread::unified_size(&bytes_of(diameter_in, Field::Diameter)?, per_inch),
            false => core::Thread::unified(exact(diameter_in, Field::Diameter)?, per_inch),
        };
        thread.map(Self).map_err(raise)
    }

    /// The same thread with this tolerance class.
    #[pyo3(signature = (tolerance_class, /))]
    fn with_class(&self, tolerance_class: &Bound<'_, PyAny>) -> PyResult<Self> {
        let class = bytes_of(tolerance_class, Field::ToleranceClass)?;
        self.0.with_class(&class).map(Self).map_err(raise)
    }

    /// The same thread on this side of the fit.
    #[pyo3(signature = (side, /))]
    fn with_side(&self, side: &Bound<'_, PyAny>) -> PyResult<Self> {
        self.0.with_side(choose(side)?).map(Self).map_err(raise)
    }

    /// The same thread with this hand.
    #[pyo3(signature = (hand, /))]
    fn with_hand(&self, hand: &Bound<'_, PyAny>) -> PyResult<Self> {
        Ok(Self(self.0.with_hand(choose(hand)?)))
    }

    /// The same thread with this number of starts.
    #[pyo3(signature = (starts, /))]
    fn with_starts(&self, starts: &Bound<'_, PyAny>) -> PyResult<Self> {
        self.0.with_starts(whole(starts, Field::Starts)?).map(Self).map_err(raise)
    }

    /// The tapped hole that takes a wire insert for this thread.
    fn with_wire_insert(&self) -> PyResult<Self> {
        self.0.with_wire_insert().map(Self).map_err(raise)
    }

    /// The basic profile.
    fn profile(&self) -> Profile {
        Profile(self.0.profile())
    }

    /// The limits of size of the tolerance class.
    fn limits(&self) -> PyResult<Limits> {
        self.0.limits().map(Limits).map_err(raise)
    }

    /// The limits of size of the tolerance class where this much of a Unified thread engages.
    fn limits_at(&self, length_mm: &Bound<'_, PyAny>) -> PyResult<Limits> {
        self.0.limits_at(exact(length_mm, Field::EngagementLength)?).map(Limits).map_err(raise)
    }

    /// How much a coating changes the diameters.
    fn coating_growth(&self, thickness_um: &Bound<'_, PyAny>) -> PyResult<CoatingGrowth> {
        self.0.coating_growth(exact(thickness_um, Field::CoatingThickness)?).map(CoatingGrowth).map_err(raise)
    }

    /// The limits of size to make the thread to, so that it keeps those of its class once it is coated.
    fn limits_before_coating(
        &self,
        thinnest_um: &Bound<'_, PyAny>,
        thickest_um: &Bound<'_, PyAny>,
    ) -> PyResult<Limits> {
        let thinnest = exact(thinnest_um, Field::CoatingThinnest)?;
        let thickest = exact(thickest_um, Field::CoatingThickest)?;
        self.0.limits_before_coating(thinnest, thickest).map(Limits).map_err(raise)
    }

    /// The thickest coating that the allowance of the class has room for, in micrometres.
    fn thickest_coating_um<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        fraction(py, self.0.thickest_coating_um().map_err(raise)?)
    }

    /// The dimensions of a pipe thread.
    fn pipe(&self) -> PyResult<Pipe> {
        self.0.pipe().map(Pipe).map_err(raise)
    }

    /// The profile's name.
    #[getter]
    fn form(&self) -> &'static str {
        self.0.form().name()
    }

    /// The standard's series, None for a metric special and for pipe threads.
    #[getter]
    fn series(&self) -> Option<&'static str> {
        self.0.series().map(core::Series::name)
    }

    /// True if the standard lists this diameter with this pitch.
    #[getter]
    fn is_standard(&self) -> bool {
        self.0.is_standard()
    }

    /// The text that names the size.
    #[getter]
    fn size(&self) -> String {
        self.0.size().as_str().to_owned()
    }

    /// The diameter that names the thread, in millimetres; None for a pipe thread.
    #[getter]
    fn nominal_mm<'py>(&self, py: Python<'py>) -> PyResult<Option<Bound<'py, PyAny>>> {
        optional_fraction(py, self.0.nominal_mm())
    }

    /// Basic major diameter in millimetres.
    #[getter]
    fn major_mm<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        fraction(py, self.0.major_mm())
    }

    /// Pitch in millimetres.
    #[getter]
    fn pitch_mm<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        fraction(py, self.0.pitch_mm())
    }

    /// Lead in millimetres.
    #[getter]
    fn lead_mm<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        fraction(py, self.0.lead_mm())
    }

    /// Number of starts.
    #[getter]
    fn starts(&self) -> u8 {
        self.0.starts()
    }

    /// "right" or "left".
    #[getter]
    fn hand(&self) -> &'static str {
        self.0.hand().name()
    }

    /// Taper on the diameter, 0 for straight threads.
    #[getter]
    fn taper_on_diameter<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        fraction(py, self.0.taper_on_diameter())
    }

    /// "internal", "external" or None.
    #[getter]
    fn side(&self) -> Option<&'static str> {
        self.0.side().map(core::Side::name)
    }

    /// The tolerance class as written, or None.
    #[getter]
    fn tolerance_class(&self) -> Option<String> {
        self.0.tolerance_class().map(|class| class.text().as_str().to_owned())
    }

    /// How long the thread engages, as the designation says: "S", "N" or "L".
    #[getter]
    fn engagement(&self) -> Option<&'static str> {
        self.0.tolerance_class().map(|class| class.engagement().name())
    }

    /// True for the hole of a wire insert.
    #[getter]
    fn wire_insert(&self) -> bool {
        self.0.is_wire_insert()
    }

    /// The older or open name that the thread was read from, or None.
    #[getter]
    fn written_as(&self) -> Option<&'static str> {
        self.0.written_as().map(WrittenAs::name)
    }

    /// How strongly the standard prefers the diameter, or None.
    #[getter]
    fn choice(&self) -> Option<u8> {
        core::choice(&self.0)
    }

    /// True if ISO 262 selects this diameter and pitch.
    #[getter]
    fn is_iso_262(&self) -> bool {
        core::is_iso_262(&self.0)
    }

    /// What is doubtful about the thread.
    #[getter]
    fn findings(&self) -> Vec<Finding> {
        list_findings(&self.0.findings())
    }

    fn __str__(&self) -> PyResult<String> {
        designation(&self.0)
    }

    fn __repr__(&self) -> String {
        constructor(&self.0)
    }

    /// The figures, for pickle and copy: exact where the text would not be.
    fn __reduce__<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyTuple>> {
        let (py, thread) = (slf.py(), slf.get().0);
        let parts = |value: Length| (value.numerator(), value.denominator());
        let class = thread.tolerance_class();
        let arguments = (
            thread.form().name(),
            parts(thread.major_mm()),
            parts(thread.pitch_mm()),
            thread.starts(),
            thread.hand().name(),
            thread.side().map(core::Side::name),
            class.as_ref().map_or("", |class| class.as_str()),
            thread.written_as().map(WrittenAs::name),
        );
        (py.get_type::<Self>().getattr("_from_parts")?, arguments).into_pyobject(py)
    }

    /// The thread of `__reduce__`.
    #[classmethod]
    #[pyo3(signature = (form, major_mm, pitch_mm, starts, hand, side, tolerance_class, written_as=None))]
    #[expect(clippy::too_many_arguments, reason = "the parts of a pickled thread, written by __reduce__ alone")]
    fn _from_parts(
        _class: &Bound<'_, PyType>,
        form: &Bound<'_, PyAny>,
        major_mm: (i64, i64),
        pitch_mm: (i64, i64),
        starts: i64,
        hand: &Bound<'_, PyAny>,
        side: Option<&Bound<'_, PyAny>>,
        tolerance_class: &str,
        written_as: Option<&Bound<'_, PyAny>>,
    ) -> PyResult<Self> {
        let major = Length::new(major_mm.0, major_mm.1).map_err(raise)?;
        let pitch = Length::new(pitch_mm.0, pitch_mm.1).map_err(raise)?;
        let (form, hand, side) = (choose(form)?, choose(hand)?, optional_choice(side)?);
        let thread = core::Thread::from_parts(form, major, pitch, starts, hand, side, tolerance_class.as_bytes())
            .map_err(raise)?;
        match optional_choice(written_as)? {
            Some(written_as) => thread.with_written_as(written_as).map(Self).map_err(raise),
            None => Ok(Self(thread)),
        }
    }
}

/// Reads a fit: the internal and the external thread.
#[pyfunction]
#[pyo3(signature = (text, /))]
pub fn read_fit(text: &Bound<'_, PyAny>) -> PyResult<(Thread, Thread)> {
    let text = bytes_of(text, Field::Designation)?;
    let (internal, external) = core::read_fit(&text).map_err(raise_designation)?;
    Ok((Thread(internal), Thread(external)))
}

/// Every thread of the standard series.
#[pyfunction]
#[pyo3(signature = (form=None, series=None))]
pub fn standard_threads(form: Option<&Bound<'_, PyAny>>, series: Option<&Bound<'_, PyAny>>) -> PyResult<Vec<Thread>> {
    Ok(core::standard_threads(optional_choice(form)?, optional_choice(series)?).map(Thread).collect())
}

/// The standard threads of all families about a diameter.
#[pyfunction]
#[pyo3(signature = (diameter_mm, within_mm))]
pub fn threads_near_diameter(diameter_mm: &Bound<'_, PyAny>, within_mm: &Bound<'_, PyAny>) -> PyResult<Vec<Thread>> {
    let (diameter, within) = (exact(diameter_mm, Field::Diameter)?, exact(within_mm, Field::Within)?);
    Ok(core::threads_near_diameter(diameter, within).map_err(raise)?.map(Thread).collect())
}

/// The standard threads of all families about a pitch.
#[pyfunction]
#[pyo3(signature = (pitch_mm, within_mm))]
pub fn threads_near_pitch(pitch_mm: &Bound<'_, PyAny>, within_mm: &Bound<'_, PyAny>) -> PyResult<Vec<Thread>> {
    let (pitch, within) = (exact(pitch_mm, Field::Pitch)?, exact(within_mm, Field::Within)?);
    Ok(core::threads_near_pitch(pitch, within).map_err(raise)?.map(Thread).collect())
}

/// Designations of standard threads near this one, with the reason each is near.
#[pyfunction]
#[pyo3(signature = (thread, /))]
pub fn near(thread: &Bound<'_, Thread>) -> Vec<(String, &'static str)> {
    core::near(&thread.get().0).iter().map(|(text, reason)| (text.to_owned(), reason.name())).collect()
}
