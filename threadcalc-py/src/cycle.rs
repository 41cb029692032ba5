//! `Dialect` and `cycle`: what a control calls things, and the words of one tapped hole.

use pyo3::prelude::*;
use pyo3::types::{PyDict, PyString};
use threadcalc_core::{self as core, CycleRequest, Field};

use crate::answer::answer;
use crate::error::raise;
use crate::feed::Feed;
use crate::fields::set_all;
use crate::finding::Finding;
use crate::job::{json_of, parsed};
use crate::number::{exact, optional_exact, wrong_type};
use crate::text::{bytes_of, choose};
use crate::thread::Thread;

answer! {
    /// What a control calls things.
    Dialect(core::Dialect) {
        /// The shop's own name for it.
        name,
        /// Code of the right-hand tapping cycle.
        tap_rh,
        /// Code of the left-hand tapping cycle.
        tap_lh,
        /// Whether left hand is the right-hand cycle with the spindle turning backwards.
        lh_by_spindle_direction,
        /// Code of feed per minute.
        feed_per_minute,
        /// Code of feed per revolution.
        feed_per_revolution,
        /// Whether the spindle must already turn when the cycle starts.
        needs_spindle_running,
        /// Code that makes the next tapping cycle a synchronised one.
        rigid_tap_code,
        /// Whether that code carries the speed.
        rigid_tap_code_has_s,
        /// Letter of a peck's depth.
        peck_word,
        /// Code of the right-hand cycle with pecks.
        peck_code_rh,
        /// Code of the left-hand cycle with pecks.
        peck_code_lh,
        /// Letter of the dwell at the bottom.
        dwell_word,
        /// What the dwell is counted in.
        dwell_unit,
        /// Letter of a faster way out.
        retract_multiplier_word,
        /// What the faster way out is counted in.
        retract_in,
        /// Code of the return to the R plane.
        return_r_plane,
        /// Code of the return to the height before the cycle.
        return_initial,
        /// Decimals of axis words in millimetres.
        axis_decimals_mm,
        /// Decimals of axis words in inches.
        axis_decimals_inch,
        /// Whether a whole length, feed or dwell in seconds has a point.
        trailing_point,
        /// What the control makes of a program.
        reading,
    }

    #[new]
    #[pyo3(signature = (base=None, /, **fields), text_signature = "(base='unset', /, **fields)")]
    fn new(base: Option<&Bound<'_, PyAny>>, fields: Option<&Bound<'_, PyDict>>) -> PyResult<Self> {
        let mut job = core::Job::default();
        job.dialect = Some(base.map_or(Ok(core::Dialect::unset()), dialect_of)?);
        if let Some(fields) = fields {
            set_all(&mut job, "dialect.", fields)?;
        }
        Ok(Self(job.dialect.unwrap_or(core::Dialect::unset())))
    }

    /// The dialect as the text of its JSON.
    #[pyo3(name = "to_json")]
    fn json(&self) -> PyResult<String> {
        json_of(serde_json::to_string(&self.0))
    }

    /// The dialect as a dict.
    #[pyo3(name = "to_dict")]
    fn dict<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        parsed(py, &self.json()?)
    }
}

/// The core's dialect from a `Dialect`, the name of a built-in one, or a dict.
pub fn dialect_of(value: &Bound<'_, PyAny>) -> PyResult<core::Dialect> {
    if let Ok(dialect) = value.cast::<Dialect>() {
        return Ok(dialect.get().0);
    }
    if value.is_instance_of::<PyString>() {
        return core::Dialect::built_in(&bytes_of(value, Field::Dialect)?).map_err(raise);
    }
    match value.cast::<PyDict>() {
        Ok(fields) => Dialect::new(None, Some(fields)).map(|dialect| dialect.0),
        Err(_) => Err(wrong_type(value, Field::Dialect, "a Dialect, a str or a dict")),
    }
}

/// The words of one tapped hole, or why there are none.
#[pyclass(module = "threadcalc", frozen, eq)]
#[derive(Clone, Copy, PartialEq)]
pub struct Cycle {
    cycle: core::Cycle,
    refused: Option<core::Finding>,
}

#[pymethods]
impl Cycle {
    /// The words in order.
    #[getter]
    fn words(&self) -> Vec<String> {
        self.cycle.words().map(str::to_owned).collect()
    }

    /// The program lines in order.
    #[getter]
    fn blocks(&self) -> Vec<String> {
        self.cycle.blocks().map(|block| block.as_str().to_owned()).collect()
    }

    /// What the next operation must set again, and only that.
    #[getter]
    fn restore(&self) -> Vec<String> {
        self.cycle.restore().map(str::to_owned).collect()
    }

    /// The finding that says why there are no words.
    #[getter]
    fn refused(&self) -> Option<Finding> {
        self.refused.map(Finding)
    }

    fn __repr__(&self) -> String {
        match &self.refused {
            Some(finding) => format!("<Cycle refused: {finding}>"),
            None => format!("<Cycle {}>", self.blocks().join("; ")),
        }
    }
}

/// The words of one tapped hole at the place the spindle stands.
#[pyfunction]
#[pyo3(signature = (
    thread, feed, *, dialect, rpm, depth_mm, r_plane_mm, holder, return_to, peck_mm=None, dwell_s=None,
    retract_factor=None
))]
#[allow(clippy::too_many_arguments, reason = "keywords of Python")]
pub fn cycle(
    thread: &Bound<'_, Thread>,
    feed: &Bound<'_, Feed>,
    dialect: &Bound<'_, PyAny>,
    rpm: &Bound<'_, PyAny>,
    depth_mm: &Bound<'_, PyAny>,
    r_plane_mm: &Bound<'_, PyAny>,
    holder: &Bound<'_, PyAny>,
    return_to: &Bound<'_, PyAny>,
    peck_mm: Option<&Bound<'_, PyAny>>,
    dwell_s: Option<&Bound<'_, PyAny>>,
    retract_factor: Option<&Bound<'_, PyAny>>,
) -> PyResult<Cycle> {
    let request = CycleRequest {
        dialect: &dialect_of(dialect)?,
        thread: &thread.get().0,
        feed: &feed.get().0,
        rpm: exact(rpm, Field::Rpm)?,
        depth_mm: exact(depth_mm, Field::Depth)?,
        r_plane_mm: exact(r_plane_mm, Field::RPlane)?,
        holder: choose(holder)?,
        peck_mm: optional_exact(peck_mm, Field::Peck)?,
        dwell_s: optional_exact(dwell_s, Field::Dwell)?,
        retract_factor: optional_exact(retract_factor, Field::RetractFactor)?,
        return_to: choose(return_to)?,
    };
    let made = core::cycle(&request).map_err(raise)?;
    Ok(Cycle { cycle: made.unwrap_or_default(), refused: made.err() })
}
