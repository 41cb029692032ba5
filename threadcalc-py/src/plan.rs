//! `plan`: one job in, one plan out.

use pyo3::prelude::*;
use pyo3::types::PyDict;
use threadcalc_core as core;

use crate::countersink::Countersunk;
use crate::cutting::TorqueBand;
use crate::depth::Depths;
use crate::engagement::Engagement;
use crate::error::raise;
use crate::feed::Feed;
use crate::finding::{Finding, list_findings};
use crate::gauge::{Gauges, NotGoRule};
use crate::gear::GearFit;
use crate::job::{Job, job_of, json_of, parsed, writable};
use crate::limits::{Limits, Profile};
use crate::motion::{FeedFit, HolderTravel, TappingTime};
use crate::number::fraction;
use crate::tap::IsoTap;
use crate::tap_drill::TapDrill;
use crate::tap_mark::TapLimit;
use crate::taper_depth::TaperDepths;
use crate::thread::Thread;

/// A speed and the feed that belongs to it.
#[pyclass(module = "threadcalc", frozen, eq)]
#[derive(Clone, Copy, PartialEq)]
pub struct CardRow(core::CardRow);

#[pymethods]
impl CardRow {
    /// Speed in turns per minute.
    #[getter]
    fn rpm<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        fraction(py, self.0.rpm)
    }

    /// Its feed.
    #[getter]
    fn feed(&self) -> Feed {
        Feed(self.0.feed)
    }

    /// True if the word is exact.
    #[getter]
    fn exact(&self) -> bool {
        self.0.exact
    }

    /// True for the speed of the plan.
    #[getter]
    fn planned(&self) -> bool {
        self.0.planned
    }

    fn __repr__(&self) -> String {
        format!("<CardRow S{} {}>", self.0.rpm, self.0.feed)
    }
}

/// What holder, spindle and axis have to do for one hole.
#[pyclass(module = "threadcalc", frozen, eq)]
#[derive(Clone, Copy, PartialEq)]
pub struct Spindle(core::Spindle);

#[pymethods]
impl Spindle {
    /// Torque of the tap; None without a material or a cutting force.
    #[getter]
    fn torque(&self) -> Option<TorqueBand> {
        self.0.torque.map(TorqueBand)
    }

    /// Power that the likely torque takes, in kW.
    #[getter]
    fn power_kw(&self) -> Option<f64> {
        self.0.power_kw
    }

    /// The gear, for the largest torque of a new tap.
    #[getter]
    fn gear(&self) -> Option<GearFit> {
        self.0.gear.map(GearFit)
    }

    /// Speeds and times from the R plane to the bottom and back, all strokes of a job with pecks.
    #[getter]
    fn time(&self) -> TappingTime {
        TappingTime(self.0.time)
    }

    /// Time of all the holes of the part without the ways between them, in seconds.
    #[getter]
    fn all_holes_s(&self) -> Option<f64> {
        self.0.all_holes_s
    }

    /// The axis feed against its limit.
    #[getter]
    fn axis(&self) -> Option<FeedFit> {
        self.0.axis.map(FeedFit)
    }

    /// How far the holder has to give; None for a rigid one.
    #[getter]
    fn holder_travel(&self) -> Option<HolderTravel> {
        self.0.holder_travel.map(HolderTravel)
    }

    fn __repr__(&self) -> String {
        format!("<Spindle {} turns, {} s>", self.0.time.turns, self.0.time.time_s)
    }
}

/// Everything from a callout to a tapping block.
#[pyclass(module = "threadcalc", frozen)]
pub struct Plan(pub Box<core::Plan>);

#[pymethods]
impl Plan {
    /// The words of the tapping block in order.
    #[getter]
    fn words(&self) -> Vec<String> {
        self.0.cycle.words().map(str::to_owned).collect()
    }

    /// The program lines in order.
    #[getter]
    fn blocks(&self) -> Vec<String> {
        self.0.cycle.blocks().map(|block| block.as_str().to_owned()).collect()
    }

    /// What the next operation must set again.
    #[getter]
    fn restore(&self) -> Vec<String> {
        self.0.cycle.restore().map(str::to_owned).collect()
    }

    /// The ids of the findings that withhold the words.
    #[getter]
    fn withheld(&self) -> Vec<&'static str> {
        self.0.withheld.iter().flatten().map(|id| id.name()).collect()
    }

    /// What is doubtful or wrong.
    #[getter]
    fn findings(&self) -> Vec<Finding> {
        list_findings(&self.0.findings)
    }

    /// The thread, internal, with the class that was used.
    #[getter]
    fn thread(&self) -> Thread {
        Thread(self.0.thread)
    }

    /// The job as it was planned: every assumption filled in.
    #[getter]
    fn job(&self) -> Job {
        Job(self.0.job)
    }

    /// Basic profile.
    #[getter]
    fn profile(&self) -> Profile {
        Profile(self.0.profile)
    }

    /// Limits of size; None where the standard's values are not sourced.
    #[getter]
    fn limits(&self) -> Option<Limits> {
        self.0.limits.map(Limits)
    }

    /// The drill, its percent and its neighbours.
    #[getter]
    fn drill(&self) -> TapDrill {
        TapDrill(self.0.drill)
    }

    /// The feed.
    #[getter]
    fn feed(&self) -> Feed {
        Feed(self.0.feed)
    }

    /// The speed that the control will hold.
    #[getter]
    fn programmed_rpm<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        fraction(py, self.0.programmed_rpm)
    }

    /// The speed asked for.
    #[getter]
    fn asked_rpm<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        fraction(py, self.0.asked_rpm)
    }

    /// The lead that will be cut, in millimetres.
    #[getter]
    fn lead_cut_mm<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        fraction(py, self.0.lead_cut_mm)
    }

    /// Error of the lead over the full thread depth, in millimetres.
    #[getter]
    fn axial_error_mm<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        fraction(py, self.0.axial_error_mm)
    }

    /// Depths from the face.
    #[getter]
    fn depths(&self) -> Depths {
        Depths(self.0.depths)
    }

    /// Speeds with their feeds, slowest first.
    #[getter]
    fn card(&self) -> Vec<CardRow> {
        self.0.card().copied().map(CardRow).collect()
    }

    /// What this plan did not check.
    #[getter]
    fn not_checked(&self) -> Vec<&'static str> {
        self.0.not_checked().collect()
    }

    /// Depths of a taper thread; None for a straight one.
    #[getter]
    fn taper(&self) -> Option<TaperDepths> {
        self.0.taper.map(TaperDepths)
    }

    /// The countersink and what it takes of the full thread; None without one.
    #[getter]
    fn countersink(&self) -> Option<Countersunk> {
        self.0.countersink.map(Countersunk)
    }

    /// What holder, spindle and axis have to do.
    #[getter]
    fn spindle(&self) -> Spindle {
        Spindle(self.0.spindle)
    }

    /// Class of tap by ISO 2857; None for inch and pipe threads.
    #[getter]
    fn tap_class(&self) -> Option<IsoTap> {
        self.0.tap_class.map(IsoTap)
    }

    /// The H limit that leaves room for the plating.
    #[getter]
    fn tap_limit(&self) -> Option<TapLimit> {
        self.0.tap_limit.map(TapLimit)
    }

    /// What the joint carries; None without a screw.
    #[getter]
    fn joint(&self) -> Option<Engagement> {
        self.0.joint.map(Engagement)
    }

    /// The gauges to fetch.
    #[getter]
    fn gauges(&self) -> Gauges {
        Gauges(self.0.gauges)
    }

    /// Minor diameter that a formed thread is judged by; None for cut threads and where none was read.
    #[getter]
    fn formed_minor_mm<'py>(&self, py: Python<'py>) -> PyResult<Option<(Bound<'py, PyAny>, Bound<'py, PyAny>)>> {
        self.0.formed_minor_mm.map(|(low, high)| Ok((fraction(py, low)?, fraction(py, high)?))).transpose()
    }

    /// How far NOT GO may enter; None where that has not been read.
    #[getter]
    fn not_go(&self) -> Option<NotGoRule> {
        self.0.not_go.map(NotGoRule)
    }

    /// The source of every part of the plan, by its name.
    #[getter]
    fn sources<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyDict>> {
        let sources = PyDict::new(py);
        for source in self.0.sources() {
            sources.set_item(source.part, source.source)?;
        }
        Ok(sources)
    }

    /// The plan as a page of text.
    #[getter]
    fn text(&self) -> String {
        self.0.to_string()
    }

    /// The plan as the text of its JSON.
    fn to_json(&self) -> PyResult<String> {
        json_of(serde_json::to_string(&*self.0))
    }

    /// The plan as a dict.
    fn to_dict<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        parsed(py, &self.to_json()?)
    }

    fn __str__(&self) -> String {
        self.text()
    }

    fn __repr__(&self) -> String {
        format!("<Plan {} S{} {}>", self.0.thread, self.0.programmed_rpm, self.0.feed)
    }
}

/// Plans one tapped hole.
#[pyfunction]
#[pyo3(signature = (job, /))]
pub fn plan(job: &Bound<'_, PyAny>) -> PyResult<Plan> {
    match job.cast::<Job>() {
        Ok(job) => planned(&job.get().0),
        Err(_) => planned(&job_of(job)?),
    }
}

fn planned(job: &core::Job) -> PyResult<Plan> {
    writable(job)?;
    match core::plan(job) {
        Ok(plan) => Ok(Plan(Box::new(plan))),
        Err(error) => Err(raise(error)),
    }
}
