//! Times, feeds and holders of tapping strokes.

use pyo3::prelude::*;
use threadcalc_core::{self as core, Code, Error, Field, Holder, Length, TappingMotion};

use crate::answer::answer;
use crate::error::raise;
use crate::number::{double, exact, optional_double_of, optional_exact, whole};
use crate::text::choose;
use crate::thread::Thread;

answer! {
    /// What tapping a hole comes to.
    TappingTime(core::TappingTime) {
        /// The fastest that the spindle turns on the way in, in the last stroke.
        reached_rpm,
        /// The fastest that it turns on the way out, after the last stroke.
        retract_rpm,
        /// Whether the programmed speed is reached on the way in, in the last stroke at least.
        reaches_speed,
        /// Turns of the last stroke.
        turns,
        /// Turns from standstill to the programmed speed.
        turns_to_speed,
        /// The way that these turns take.
        distance_to_speed_mm,
        /// Time in, of all strokes.
        time_in_s,
        /// Time out, of all strokes.
        time_out_s,
        /// Time in, the dwell of each stroke and time out.
        time_s,
        /// How many strokes.
        strokes,
    }
}

/// The speed that a tapping stroke reaches, and the time that the hole takes.
#[pyfunction]
#[pyo3(
    signature = (lead_mm, rpm, travel_mm, *, acceleration_rpm_s, retract_factor=None, dwell_s=None, peck_mm=None),
    text_signature = "(lead_mm, rpm, travel_mm, *, acceleration_rpm_s, retract_factor=1, dwell_s=0, peck_mm=None)"
)]
pub fn tapping_time(
    lead_mm: &Bound<'_, PyAny>,
    rpm: &Bound<'_, PyAny>,
    travel_mm: &Bound<'_, PyAny>,
    acceleration_rpm_s: Option<&Bound<'_, PyAny>>,
    retract_factor: Option<&Bound<'_, PyAny>>,
    dwell_s: Option<&Bound<'_, PyAny>>,
    peck_mm: Option<&Bound<'_, PyAny>>,
) -> PyResult<TappingTime> {
    let motion = TappingMotion {
        lead_mm: exact(lead_mm, Field::Lead)?,
        rpm: exact(rpm, Field::Rpm)?,
        travel_mm: exact(travel_mm, Field::Travel)?,
        acceleration_rpm_s: optional_double_of(acceleration_rpm_s, Field::Acceleration)?,
        retract_factor: optional_exact(retract_factor, Field::RetractFactor)?.unwrap_or(Length::ONE),
        dwell_s: optional_double_of(dwell_s, Field::Dwell)?.unwrap_or(0.0),
        peck_mm: optional_exact(peck_mm, Field::Peck)?,
    };
    core::tapping_time(&motion).map(TappingTime).map_err(raise)
}

/// Turns that the spindle makes from standstill to a speed.
#[pyfunction]
pub fn turns_to_speed(rpm: &Bound<'_, PyAny>, acceleration_rpm_s: &Bound<'_, PyAny>) -> PyResult<f64> {
    let rpm = exact(rpm, Field::Rpm)?;
    core::turns_to_speed(rpm, double(acceleration_rpm_s, Field::Acceleration)?).map_err(raise)
}

/// The speed that the spindle has after a number of turns from standstill.
#[pyfunction]
pub fn speed_after_turns(turns: &Bound<'_, PyAny>, acceleration_rpm_s: &Bound<'_, PyAny>) -> PyResult<f64> {
    let turns = double(turns, Field::Turns)?;
    core::speed_after_turns(turns, double(acceleration_rpm_s, Field::Acceleration)?).map_err(raise)
}

answer! {
    /// How a tapping stroke fits the feed limit of its axis.
    FeedFit(core::FeedFit) {
        /// Axis feed on the way in.
        feed_mm_min,
        /// Axis feed on the way out.
        retract_feed_mm_min,
        /// Whether both are within the limit.
        is_within,
        /// The largest speed that both are within the limit at.
        fastest_rpm,
    }
}

/// Checks the axis feed that a lead and a speed ask for against the limit of the axis.
#[pyfunction]
#[pyo3(
    signature = (lead_mm, rpm, *, feed_limit_mm_min, retract_factor=None),
    text_signature = "(lead_mm, rpm, *, feed_limit_mm_min, retract_factor=1)"
)]
pub fn feed_fit(
    lead_mm: &Bound<'_, PyAny>,
    rpm: &Bound<'_, PyAny>,
    feed_limit_mm_min: &Bound<'_, PyAny>,
    retract_factor: Option<&Bound<'_, PyAny>>,
) -> PyResult<FeedFit> {
    let (lead, rpm) = (exact(lead_mm, Field::Lead)?, exact(rpm, Field::Rpm)?);
    let factor = optional_exact(retract_factor, Field::RetractFactor)?.unwrap_or(Length::ONE);
    core::feed_fit(lead, rpm, factor, exact(feed_limit_mm_min, Field::FeedLimit)?).map(FeedFit).map_err(raise)
}

/// The time of a pattern of holes, in seconds.
#[pyfunction]
#[pyo3(signature = (holes, *, rapid_distance_mm, rapid_feed_mm_min, seconds_per_hole))]
pub fn pattern_time_s(
    holes: &Bound<'_, PyAny>,
    rapid_distance_mm: &Bound<'_, PyAny>,
    rapid_feed_mm_min: &Bound<'_, PyAny>,
    seconds_per_hole: &Bound<'_, PyAny>,
) -> PyResult<f64> {
    let count = whole(holes, Field::HoleCount)?;
    let out_of_range = || raise(Error::new(Code::OutOfRange, Field::HoleCount).got(count as f64).within(1.0, 1e9));
    let holes = u32::try_from(count).map_err(|_| out_of_range())?;
    let distance = exact(rapid_distance_mm, Field::RapidDistance)?;
    let (feed, seconds) =
        (exact(rapid_feed_mm_min, Field::RapidFeed)?, double(seconds_per_hole, Field::SecondsPerHole)?);
    core::pattern_time_s(holes, distance, feed, seconds).map_err(raise)
}

answer! {
    /// Room from the R plane to the face by holder.
    HolderClearance(core::HolderClearance) {
        /// The least in use.
        least_mm,
        /// What is always enough for the holder.
        ample_mm,
        /// Turns of the spindle over the least.
        least_turns,
        /// Turns of the spindle over the ample one.
        ample_turns,
    }
}

/// The room from the R plane to the face that is in use.
#[pyfunction]
pub fn holder_clearance(thread: &Bound<'_, Thread>, holder: &Bound<'_, PyAny>) -> PyResult<HolderClearance> {
    core::holder_clearance(&thread.get().0, choose::<Holder>(holder)?).map(HolderClearance).map_err(raise)
}

answer! {
    /// How far a holder has to give.
    HolderTravel(core::HolderTravel) {
        /// The tap is pulled out of the holder by this much.
        extension_mm,
        /// The tap is pushed into the holder by this much.
        compression_mm,
    }

    /// Whether a holder with this much extension and compression has room for it.
    fn fits(&self, extension_mm: &Bound<'_, PyAny>, compression_mm: &Bound<'_, PyAny>) -> PyResult<bool> {
        Ok(self.0.fits(exact(extension_mm, Field::Length)?, exact(compression_mm, Field::Length)?))
    }
}

/// How far a tension and compression holder has to give in a hole.
#[pyfunction]
#[pyo3(signature = (lead_mm, depth_mm, *, underfeed_percent, over_travel_turns))]
pub fn holder_travel(
    lead_mm: &Bound<'_, PyAny>,
    depth_mm: &Bound<'_, PyAny>,
    underfeed_percent: &Bound<'_, PyAny>,
    over_travel_turns: &Bound<'_, PyAny>,
) -> PyResult<HolderTravel> {
    let (lead, depth) = (exact(lead_mm, Field::Lead)?, exact(depth_mm, Field::Depth)?);
    let underfeed = exact(underfeed_percent, Field::Underfeed)?;
    core::holder_travel(lead, depth, underfeed, exact(over_travel_turns, Field::OverTravel)?)
        .map(HolderTravel)
        .map_err(raise)
}
