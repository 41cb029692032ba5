//! What holder, spindle and axis have to do for a planned hole.

use threadcalc_core::Spindle;

use crate::countersink::threadcalc_countersunk_t;
use crate::cutting::threadcalc_torque_band_t;
use crate::engagement::threadcalc_engagement_t;
use crate::gauge::threadcalc_not_go_rule_t;
use crate::gear::threadcalc_gear_fit_t;
use crate::holder::threadcalc_holder_travel_t;
use crate::memory::{Zeroed, or_zeros};
use crate::motion::{threadcalc_feed_fit_t, threadcalc_tapping_time_t};
use crate::tap::threadcalc_iso_tap_t;
use crate::tap_mark::threadcalc_tap_limit_t;
use crate::taper_depth::threadcalc_taper_depths_t;

// SAFETY: integers, doubles and arrays of these only.
unsafe impl Zeroed for threadcalc_torque_band_t {}
// SAFETY: as above.
unsafe impl Zeroed for threadcalc_gear_fit_t {}
// SAFETY: as above.
unsafe impl Zeroed for threadcalc_feed_fit_t {}
// SAFETY: as above.
unsafe impl Zeroed for threadcalc_holder_travel_t {}
// SAFETY: as above.
unsafe impl Zeroed for threadcalc_taper_depths_t {}
// SAFETY: as above.
unsafe impl Zeroed for threadcalc_iso_tap_t {}
// SAFETY: as above.
unsafe impl Zeroed for threadcalc_tap_limit_t {}
// SAFETY: as above.
unsafe impl Zeroed for threadcalc_engagement_t {}
// SAFETY: as above.
unsafe impl Zeroed for threadcalc_not_go_rule_t {}
// SAFETY: as above.
unsafe impl Zeroed for threadcalc_countersunk_t {}

/// What holder, spindle and axis have to do for one hole. Frozen. A part that its has_ member denies is zeros.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct threadcalc_spindle_t {
    /// 1 if torque and power_kw hold something: the job has a material or a cutting force.
    pub has_torque: i32,
    /// 1 if gear holds something: the job has a torque and the machine gears.
    pub has_gear: i32,
    /// 1 if axis holds something: the machine has a feed limit.
    pub has_axis: i32,
    /// 1 if holder_travel holds something: the holder gives.
    pub has_holder_travel: i32,
    /// Torque of the tap.
    pub torque: threadcalc_torque_band_t,
    /// Power that the likely torque takes at the programmed speed, in kW; NaN without a torque.
    pub power_kw: f64,
    /// Time of all the holes of the part without the ways between them, in seconds; NaN without a count.
    pub all_holes_s: f64,
    /// The gear, for the largest torque of a new tap.
    pub gear: threadcalc_gear_fit_t,
    /// Speeds and times from the R plane to the bottom and back, all strokes of a job with pecks.
    pub time: threadcalc_tapping_time_t,
    /// The axis feed against its limit.
    pub axis: threadcalc_feed_fit_t,
    /// How far the holder has to give.
    pub holder_travel: threadcalc_holder_travel_t,
}

impl threadcalc_spindle_t {
    pub(crate) fn of(spindle: &Spindle) -> Self {
        Self {
            has_torque: i32::from(spindle.torque.is_some()),
            has_gear: i32::from(spindle.gear.is_some()),
            has_axis: i32::from(spindle.axis.is_some()),
            has_holder_travel: i32::from(spindle.holder_travel.is_some()),
            torque: or_zeros(spindle.torque.as_ref().map(threadcalc_torque_band_t::of)),
            power_kw: spindle.power_kw.unwrap_or(f64::NAN),
            all_holes_s: spindle.all_holes_s.unwrap_or(f64::NAN),
            gear: or_zeros(spindle.gear.as_ref().map(threadcalc_gear_fit_t::of)),
            time: threadcalc_tapping_time_t::of(&spindle.time),
            axis: or_zeros(spindle.axis.as_ref().map(threadcalc_feed_fit_t::of)),
            holder_travel: or_zeros(spindle.holder_travel.as_ref().map(threadcalc_holder_travel_t::of)),
        }
    }
}
