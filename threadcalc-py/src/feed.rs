//! Programmed speed, synchronised feed and exact speeds.

use pyo3::prelude::*;
use threadcalc_core::{self as core, Code, Error, Field, Length};

use crate::error::raise;
use crate::number::{decimals as decimals_of, exact, fraction, optional_exact, whole};
use crate::text::choose;
use crate::thread::Thread;

/// The most speeds that one call lists.
const MOST_SPEEDS: i64 = 100_000;

/// A synchronised feed; its exact numbers are made when asked for.
#[pyclass(module = "threadcalc", frozen, eq)]
#[derive(Clone, Copy, PartialEq)]
pub struct Feed(pub core::Feed);

#[pymethods]
impl Feed {
    /// The word of the program.
    #[getter]
    fn word(&self) -> &str {
        self.0.word()
    }

    /// The number of the word.
    #[getter]
    fn text(&self) -> &str {
        self.0.text()
    }

    /// The unit of the word.
    #[getter]
    fn unit(&self) -> &'static str {
        self.0.unit().name()
    }

    /// The feed mode of the word.
    #[getter]
    fn mode(&self) -> &'static str {
        self.0.mode().name()
    }

    /// What a control reads back from the text.
    #[getter]
    fn value<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        fraction(py, self.0.value().map_err(raise)?)
    }

    /// The feed before rounding.
    #[getter]
    fn exact<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        fraction(py, self.0.exact().map_err(raise)?)
    }

    /// Value over exact, less one.
    #[getter]
    fn lead_error<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        fraction(py, self.0.lead_error().map_err(raise)?)
    }

    /// The lead that will really be cut, in millimetres.
    #[getter]
    fn lead_cut_mm<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        fraction(py, self.0.lead_cut_mm().map_err(raise)?)
    }

    /// How far the tap is from true at a depth, in millimetres.
    fn axial_error_mm<'py>(&self, depth_mm: &Bound<'py, PyAny>) -> PyResult<Bound<'py, PyAny>> {
        let depth = exact(depth_mm, Field::Depth)?;
        fraction(depth_mm.py(), self.0.axial_error_mm(depth).map_err(raise)?)
    }

    fn __str__(&self) -> &str {
        self.0.word()
    }

    fn __repr__(&self) -> String {
        format!("<Feed {} {} {}>", self.0.word(), self.0.unit(), self.0.mode())
    }
}

/// The lead of a thread, or a lead in millimetres.
fn lead_of(thread_or_lead_mm: &Bound<'_, PyAny>) -> PyResult<Length> {
    match thread_or_lead_mm.cast::<Thread>() {
        Ok(thread) => Ok(thread.get().0.lead_mm()),
        Err(_) => exact(thread_or_lead_mm, Field::Lead),
    }
}

/// The synchronised feed of a thread or lead.
#[pyfunction]
#[pyo3(signature = (thread_or_lead_mm, rpm=None, *, unit, mode, decimals))]
pub fn feed(
    thread_or_lead_mm: &Bound<'_, PyAny>,
    rpm: Option<&Bound<'_, PyAny>>,
    unit: &Bound<'_, PyAny>,
    mode: &Bound<'_, PyAny>,
    decimals: &Bound<'_, PyAny>,
) -> PyResult<Feed> {
    let (lead, rpm) = (lead_of(thread_or_lead_mm)?, optional_exact(rpm, Field::Rpm)?);
    core::feed(lead, rpm, choose(unit)?, choose(mode)?, decimals_of(decimals)?).map(Feed).map_err(raise)
}

/// The speed that the control will really hold.
#[pyfunction]
#[pyo3(signature = (rpm, *, step=None, lowest=None, highest=None), text_signature = "(rpm, *, step=1, lowest=None, highest=None)")]
pub fn programmed_speed<'py>(
    rpm: &Bound<'py, PyAny>,
    step: Option<&Bound<'py, PyAny>>,
    lowest: Option<&Bound<'py, PyAny>>,
    highest: Option<&Bound<'py, PyAny>>,
) -> PyResult<Bound<'py, PyAny>> {
    let step = optional_exact(step, Field::Step)?.unwrap_or(Length::ONE);
    let (lowest, highest) = (optional_exact(lowest, Field::Lowest)?, optional_exact(highest, Field::Highest)?);
    let held = core::programmed_speed(exact(rpm, Field::Rpm)?, step, lowest, highest).map_err(raise)?;
    fraction(rpm.py(), held)
}

/// Whole speeds at which the feed word is exact, nearest first.
#[pyfunction]
#[pyo3(
    signature = (thread_or_lead_mm, rpm, *, unit, decimals, count=None, lowest=None, highest=None),
    text_signature = "(thread_or_lead_mm, rpm, *, unit, decimals, count=5, lowest=1, highest=None)"
)]
pub fn exact_speeds(
    thread_or_lead_mm: &Bound<'_, PyAny>,
    rpm: &Bound<'_, PyAny>,
    unit: &Bound<'_, PyAny>,
    decimals: &Bound<'_, PyAny>,
    count: Option<&Bound<'_, PyAny>>,
    lowest: Option<&Bound<'_, PyAny>>,
    highest: Option<&Bound<'_, PyAny>>,
) -> PyResult<Vec<i64>> {
    let given = |value: Option<&Bound<'_, PyAny>>, field| value.map(|value| whole(value, field)).transpose();
    let (lead, rpm) = (lead_of(thread_or_lead_mm)?, exact(rpm, Field::Rpm)?);
    let (lowest, highest) = (given(lowest, Field::Lowest)?.unwrap_or(1), given(highest, Field::Highest)?);
    let count = count_of(given(count, Field::Count)?.unwrap_or(5))?;
    core::exact_speeds(lead, rpm, choose(unit)?, decimals_of(decimals)?, count, lowest, highest)
        .map(Iterator::collect)
        .map_err(raise)
}

/// The whole speeds next below and above a speed at which the feed word is exact.
#[pyfunction]
#[pyo3(signature = (thread_or_lead_mm, rpm, *, unit, decimals, step=None, lowest=None, highest=None))]
pub fn nearest_exact_speeds(
    thread_or_lead_mm: &Bound<'_, PyAny>,
    rpm: &Bound<'_, PyAny>,
    unit: &Bound<'_, PyAny>,
    decimals: &Bound<'_, PyAny>,
    step: Option<&Bound<'_, PyAny>>,
    lowest: Option<&Bound<'_, PyAny>>,
    highest: Option<&Bound<'_, PyAny>>,
) -> PyResult<(Option<i64>, Option<i64>)> {
    let (lead, rpm) = (lead_of(thread_or_lead_mm)?, exact(rpm, Field::Rpm)?);
    let step = optional_exact(step, Field::Step)?.unwrap_or(Length::ONE);
    let (lowest, highest) = (optional_exact(lowest, Field::Lowest)?, optional_exact(highest, Field::Highest)?);
    core::nearest_exact_speeds(lead, rpm, choose(unit)?, decimals_of(decimals)?, step, lowest, highest).map_err(raise)
}

fn count_of(count: i64) -> PyResult<usize> {
    usize::try_from(count)
        .ok()
        .filter(|_| count <= MOST_SPEEDS)
        .ok_or_else(|| raise(Error::new(Code::OutOfRange, Field::Count).within(0.0, MOST_SPEEDS as f64)))
}
