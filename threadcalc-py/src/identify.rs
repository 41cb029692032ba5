//! `Identification` and `Match`: which standard pitch the lead of a program is.

use pyo3::prelude::*;
use pyo3::types::PyTuple;
use threadcalc_core::nc::{self, FeedWords, LEAD_WITHIN, LeadVerdict};
use threadcalc_core::{Field, Ratio};

use crate::error::raise;
use crate::number::{decimals, exact, fraction, optional_exact, optional_fraction, whole};
use crate::text::choose;
use crate::thread::Thread;

/// A standard pitch and how far a lead is from it.
#[pyclass(module = "threadcalc", frozen, eq)]
#[derive(Clone, Copy, PartialEq)]
pub struct Match(nc::Match);

#[pymethods]
impl Match {
    /// The pitch.
    #[getter]
    fn pitch_mm<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        fraction(py, self.0.pitch_mm)
    }

    /// Its threads per inch; None for a metric pitch.
    #[getter]
    fn tpi<'py>(&self, py: Python<'py>) -> PyResult<Option<Bound<'py, PyAny>>> {
        optional_fraction(py, self.0.tpi)
    }

    /// The systems whose tables list it.
    #[getter]
    fn systems<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyTuple>> {
        let names: Vec<_> = self.0.systems.iter().map(|system| system.name()).collect();
        PyTuple::new(py, names)
    }

    /// Lead over pitch and starts, less one.
    #[getter]
    fn lead_error<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        fraction(py, self.0.lead_error)
    }

    /// Whether the lead is within the tolerance.
    #[getter]
    fn is_within(&self) -> bool {
        self.0.is_within
    }

    /// Whether the lead is this pitch to one in a million.
    #[getter]
    fn is_exact(&self) -> bool {
        self.0.is_exact()
    }

    fn __str__(&self) -> String {
        self.0.to_string()
    }

    fn __repr__(&self) -> String {
        format!("<Match {}, lead_error {}>", self.0, self.0.lead_error)
    }
}

/// What a lead says of the thread.
#[pyclass(module = "threadcalc", frozen, eq)]
#[derive(Clone, Copy, PartialEq)]
pub struct Identification(nc::Identification);

#[pymethods]
impl Identification {
    /// Identified, ambiguous or nonstandard.
    #[getter]
    fn verdict(&self) -> &'static str {
        self.0.verdict().name()
    }

    /// The pitches that the lead may be, nearest first.
    #[getter]
    fn matches(&self) -> Vec<Match> {
        self.0.matches().map(Match).collect()
    }

    /// The lead.
    #[getter]
    fn lead_mm<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        fraction(py, self.0.lead_mm())
    }

    /// The shortest lead that rounded words may stand for.
    #[getter]
    fn shortest_lead_mm<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        fraction(py, self.0.shortest_lead_mm())
    }

    /// The longest lead that rounded words may stand for.
    #[getter]
    fn longest_lead_mm<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        fraction(py, self.0.longest_lead_mm())
    }

    /// The starts that were declared.
    #[getter]
    fn starts(&self) -> u8 {
        self.0.starts()
    }

    fn __str__(&self) -> String {
        self.0.to_string()
    }

    fn __repr__(&self) -> String {
        let matches: Vec<_> = self.0.matches().map(|near| near.to_string()).collect();
        format!("<Identification {} [{}]>", self.0.verdict(), matches.join(", "))
    }
}

fn tolerance(within: Option<&Bound<'_, PyAny>>) -> PyResult<Ratio> {
    Ok(optional_exact(within, Field::Within)?.unwrap_or(LEAD_WITHIN))
}

fn declared(starts: Option<&Bound<'_, PyAny>>) -> PyResult<i64> {
    starts.map_or(Ok(1), |starts| whole(starts, Field::Starts))
}

/// The pitches that a lead may be, nearest first.
#[pyfunction]
#[pyo3(
    signature = (lead_mm, *, within=None, starts=None),
    text_signature = "(lead_mm, *, within=0.0035, starts=1)"
)]
pub fn identify(
    lead_mm: &Bound<'_, PyAny>,
    within: Option<&Bound<'_, PyAny>>,
    starts: Option<&Bound<'_, PyAny>>,
) -> PyResult<Vec<Match>> {
    let found = identify_lead(lead_mm, within, starts)?;
    Ok(if found.0.verdict() == LeadVerdict::Nonstandard { Vec::new() } else { found.matches() })
}

/// What a lead says of the thread.
#[pyfunction]
#[pyo3(
    signature = (lead_mm, *, within=None, starts=None),
    text_signature = "(lead_mm, *, within=0.0035, starts=1)"
)]
pub fn identify_lead(
    lead_mm: &Bound<'_, PyAny>,
    within: Option<&Bound<'_, PyAny>>,
    starts: Option<&Bound<'_, PyAny>>,
) -> PyResult<Identification> {
    let lead = exact(lead_mm, Field::Lead)?;
    nc::identify(lead, tolerance(within)?, declared(starts)?).map(Identification).map_err(raise)
}

/// What feed and speed of a program say of the thread.
#[pyfunction]
#[pyo3(
    signature = (
        feed, rpm=None, *, unit, mode, decimals=None, most_decimals=None, rpm_decimals=None, most_rpm_decimals=None,
        within=None, starts=None
    ),
    text_signature = "(feed, rpm=None, *, unit, mode, decimals=None, most_decimals=None, rpm_decimals=None, \
                      most_rpm_decimals=None, within=0.0035, starts=1)"
)]
#[allow(clippy::too_many_arguments, reason = "they are keywords in Python")]
pub fn identify_feed(
    feed: &Bound<'_, PyAny>,
    rpm: Option<&Bound<'_, PyAny>>,
    unit: &Bound<'_, PyAny>,
    mode: &Bound<'_, PyAny>,
    decimals: Option<&Bound<'_, PyAny>>,
    most_decimals: Option<&Bound<'_, PyAny>>,
    rpm_decimals: Option<&Bound<'_, PyAny>>,
    most_rpm_decimals: Option<&Bound<'_, PyAny>>,
    within: Option<&Bound<'_, PyAny>>,
    starts: Option<&Bound<'_, PyAny>>,
) -> PyResult<Identification> {
    let words = FeedWords {
        feed: exact(feed, Field::Feed)?,
        feed_decimals: places(decimals)?,
        most_feed_decimals: places(most_decimals)?,
        rpm: optional_exact(rpm, Field::Rpm)?,
        rpm_decimals: places(rpm_decimals)?,
        most_rpm_decimals: places(most_rpm_decimals)?,
        unit: choose(unit)?,
        mode: choose(mode)?,
    };
    nc::identify_feed(&words, tolerance(within)?, declared(starts)?).map(Identification).map_err(raise)
}

fn places(value: Option<&Bound<'_, PyAny>>) -> PyResult<Option<u8>> {
    value.map(decimals).transpose()
}

/// The standard threads of a pitch and about a diameter.
#[pyfunction]
#[pyo3(
    signature = (pitch_mm, diameter_mm, *, starts=None),
    text_signature = "(pitch_mm, diameter_mm, *, starts=1)"
)]
pub fn threads_of_pitch(
    pitch_mm: &Bound<'_, PyAny>,
    diameter_mm: &Bound<'_, PyAny>,
    starts: Option<&Bound<'_, PyAny>>,
) -> PyResult<Vec<Thread>> {
    let (pitch, diameter) = (exact(pitch_mm, Field::Pitch)?, exact(diameter_mm, Field::Diameter)?);
    let threads = nc::threads_of_pitch(pitch, diameter, declared(starts)?).map_err(raise)?;
    Ok(threads.map(Thread).collect())
}
