//! Gauges, what follows from them, and measurement over wires.

use pyo3::prelude::*;
use threadcalc_core::{self as core, Field, GaugeResult};

use crate::answer::answer;
use crate::error::raise;
use crate::number::{exact, fraction, optional_exact, optional_fraction};
use crate::text::choose;
use crate::thread::Thread;

answer! {
    /// A gauge to fetch, with the product's limits that it stands for.
    Gauge(core::Gauge) {
        /// What it is.
        kind,
        /// The pitch diameter that it stands for.
        pitch_diameter_mm,
        /// The major or minor diameter that it stands for.
        diameter_mm,
    }
}

/// The gauges of a thread.
#[pyclass(module = "threadcalc", frozen, eq)]
#[derive(Clone, Copy, PartialEq)]
pub struct Gauges(pub core::Gauges);

#[pymethods]
impl Gauges {
    /// GO before NOT GO, thread gauges before plain ones.
    #[getter]
    fn gauges(&self) -> Vec<Gauge> {
        self.0.iter().copied().map(Gauge).collect()
    }

    /// Left: left-hand gauges.
    #[getter]
    fn hand(&self) -> &'static str {
        self.0.hand.name()
    }

    /// True if the standard's medium class was taken.
    #[getter]
    fn class_assumed(&self) -> bool {
        self.0.class_assumed
    }

    /// The source of the limits; None where none have been read.
    #[getter]
    fn limits_source(&self) -> Option<&'static str> {
        self.0.limits_source
    }

    fn __repr__(&self) -> String {
        let names: Vec<_> = self.0.iter().map(|gauge| gauge.kind.name()).collect();
        format!("<Gauges {}>", names.join(" "))
    }
}

/// Which gauges to fetch for a thread.
#[pyfunction]
pub fn gauges(thread: &Bound<'_, Thread>) -> PyResult<Gauges> {
    core::gauges(&thread.get().0).map(Gauges).map_err(raise)
}

answer! {
    /// How far a NOT GO thread gauge may go.
    NotGoRule(core::NotGoRule) {
        /// The most turns.
        most_turns,
        /// The standard that says so.
        standard,
        /// What it says besides.
        remark,
    }
}

/// How far the NOT GO thread gauge of a thread may go.
#[pyfunction]
pub fn not_go_rule(thread: &Bound<'_, Thread>) -> PyResult<NotGoRule> {
    core::not_go_rule(&thread.get().0).map(NotGoRule).map_err(raise)
}

/// What to do after gauging a hole.
#[pyclass(module = "threadcalc", frozen, eq)]
#[derive(Clone, Copy, PartialEq)]
pub struct NextMove(core::NextMove);

#[pymethods]
impl NextMove {
    /// What becomes of this hole.
    #[getter]
    fn verdict(&self) -> &'static str {
        self.0.verdict.name()
    }

    /// The moves, first things first.
    #[getter]
    fn moves(&self) -> Vec<&'static str> {
        self.0.moves().map(core::Move::name).collect()
    }

    /// How much deeper the tap has to go; None where depth is not the question.
    #[getter]
    fn deeper_mm<'py>(&self, py: Python<'py>) -> PyResult<Option<Bound<'py, PyAny>>> {
        optional_fraction(py, self.0.deeper_mm)
    }

    fn __repr__(&self) -> String {
        format!("<NextMove {}: {}>", self.0.verdict, self.moves().join(" "))
    }
}

/// What to do after gauging a tapped hole.
#[pyfunction]
#[pyo3(signature = (thread, result, *, turns=None, required_turns=None))]
pub fn next_move(
    thread: &Bound<'_, Thread>,
    result: &Bound<'_, PyAny>,
    turns: Option<&Bound<'_, PyAny>>,
    required_turns: Option<&Bound<'_, PyAny>>,
) -> PyResult<NextMove> {
    let turns = optional_exact(turns, Field::Turns)?;
    let result = GaugeResult::new(choose(result)?, turns).map_err(raise)?;
    let required = optional_exact(required_turns, Field::Turns)?;
    core::next_move(&thread.get().0, required, result).map(NextMove).map_err(raise)
}

/// The depth that brings a taper plug flush, with the same R.
#[pyfunction]
pub fn trimmed_depth_mm<'py>(
    thread: &Bound<'py, Thread>,
    depth_mm: &Bound<'py, PyAny>,
    stand_off_turns: &Bound<'py, PyAny>,
) -> PyResult<Bound<'py, PyAny>> {
    let (depth, turns) = (exact(depth_mm, Field::Depth)?, exact(stand_off_turns, Field::StandOff)?);
    fraction(thread.py(), core::trimmed_depth_mm(&thread.get().0, depth, turns).map_err(raise)?)
}

answer! {
    /// An R plane from which the tap finds the thread again.
    ReEntry(core::ReEntry) {
        /// The R plane.
        r_mm,
        /// By how many pitches it has moved.
        pitches,
    }

    /// What else has to hold when a tap enters a tapped hole again.
    #[getter]
    fn rule(&self) -> &'static str {
        core::RE_ENTRY_RULE
    }
}

/// The R plane nearest to a wanted one that lies whole pitches from the R of the hole.
#[pyfunction]
pub fn re_entry_r(
    r_mm: &Bound<'_, PyAny>,
    pitch_mm: &Bound<'_, PyAny>,
    wanted_mm: &Bound<'_, PyAny>,
) -> PyResult<ReEntry> {
    let (r, pitch) = (exact(r_mm, Field::RPlane)?, exact(pitch_mm, Field::Pitch)?);
    core::re_entry_r(r, pitch, exact(wanted_mm, Field::RPlane)?).map(ReEntry).map_err(raise)
}

/// The wire that touches the flanks at the pitch line, in millimetres.
#[pyfunction]
pub fn best_wire_mm(thread: &Bound<'_, Thread>) -> PyResult<f64> {
    core::best_wire_mm(&thread.get().0).map_err(raise)
}

/// The measurement over three wires, in millimetres.
#[pyfunction]
#[pyo3(signature = (thread, wire_mm, pitch_diameter_mm, *, lead_angle=false))]
pub fn over_wires(
    thread: &Bound<'_, Thread>,
    wire_mm: &Bound<'_, PyAny>,
    pitch_diameter_mm: &Bound<'_, PyAny>,
    lead_angle: bool,
) -> PyResult<f64> {
    let (wire, diameter) = (exact(wire_mm, Field::Wire)?, exact(pitch_diameter_mm, Field::PitchDiameter)?);
    core::over_wires(&thread.get().0, wire, diameter, lead_angle).map_err(raise)
}
