//! The stroke of a tapped hole: speed reached, time, axis feed.

use core::mem::offset_of;

use threadcalc_core::{
    Error, FeedFit, Field, Length, TappingMotion, TappingTime, feed_fit, pattern_time_s, speed_after_turns,
    tapping_time, turns_to_speed,
};

use crate::codes::threadcalc_status;
use crate::memory::{Output, Request, SizedOutput, request};
use crate::number::{given, perhaps};
use crate::status::{given_double, guard, threadcalc_error_t};
use crate::types::threadcalc_ratio_t;

/// The motion that taps one hole. Begin with THREADCALC_MOTION_REQUEST_INIT.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct threadcalc_motion_request_t {
    /// sizeof(threadcalc_motion_request_t).
    pub size: u32,
    /// 1 if the acceleration is known; else 0 and acceleration_rpm_s 0: no ramps, so that the time is the
    /// least there can be.
    pub acceleration_is_given: i32,
    /// Lead of the thread in mm. Required.
    pub lead_mm: threadcalc_ratio_t,
    /// Programmed speed in turns per minute. Required.
    pub rpm: threadcalc_ratio_t,
    /// From the R plane to the bottom of the stroke in mm: more than the depth from the face. Required.
    pub travel_mm: threadcalc_ratio_t,
    /// Speed on the way out over speed on the way in, 0.1 or more; 0/0: 1. The machine's highest speed does
    /// not limit it here.
    pub retract_factor: threadcalc_ratio_t,
    /// How fast the spindle gains and loses speed, the same both ways, in turns per minute per second.
    pub acceleration_rpm_s: f64,
    /// Wait at the bottom of each stroke in seconds.
    pub dwell_s: f64,
    /// Depth of a peck in mm, a thousandth of the travel to all of it; 0/0: one stroke. The strokes end at one
    /// peck from the R plane, at two, and so on, the last at the full travel.
    pub peck_mm: threadcalc_ratio_t,
}

// SAFETY: integers and doubles only.
unsafe impl Request for threadcalc_motion_request_t {
    const STARTS: &'static [usize] = &[
        offset_of!(Self, acceleration_is_given),
        offset_of!(Self, lead_mm),
        offset_of!(Self, rpm),
        offset_of!(Self, travel_mm),
        offset_of!(Self, retract_factor),
        offset_of!(Self, acceleration_rpm_s),
        offset_of!(Self, dwell_s),
        offset_of!(Self, peck_mm),
    ];
}

impl threadcalc_motion_request_t {
    fn read(&self) -> Result<TappingMotion, Error> {
        Ok(TappingMotion {
            lead_mm: self.lead_mm.required(Field::Lead)?,
            rpm: self.rpm.required(Field::Rpm)?,
            travel_mm: self.travel_mm.required(Field::Travel)?,
            acceleration_rpm_s: given_double(self.acceleration_is_given, self.acceleration_rpm_s, Field::Acceleration)?,
            retract_factor: self.retract_factor.read(Field::RetractFactor)?.unwrap_or(Length::ONE),
            dwell_s: self.dwell_s,
            peck_mm: self.peck_mm.read(Field::Peck)?,
        })
    }
}

/// What tapping a hole comes to; derived. Frozen.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct threadcalc_tapping_time_t {
    /// The fastest that the spindle turns on the way in: that of the last stroke, the deepest.
    pub reached_rpm: f64,
    /// The fastest that it turns on the way out, after the last stroke.
    pub retract_rpm: f64,
    /// Turns of the last stroke.
    pub turns: f64,
    /// Turns from standstill to the programmed speed, reached or not.
    pub turns_to_speed: f64,
    /// The way that these turns take: an R plane at least this high lets the tap enter at full speed.
    pub distance_to_speed_mm: f64,
    /// Time in, of all strokes.
    pub time_in_s: f64,
    /// Time out, of all strokes.
    pub time_out_s: f64,
    /// Time in, the dwell of each stroke and time out.
    pub time_s: f64,
    /// 1 if the programmed speed is reached on the way in, in the last stroke at least, else 0.
    pub reaches_speed: i32,
    /// How many strokes; 1 without a peck.
    pub strokes: u32,
}

impl threadcalc_tapping_time_t {
    pub(crate) fn of(found: &TappingTime) -> Self {
        Self {
            reached_rpm: found.reached_rpm,
            retract_rpm: found.retract_rpm,
            turns: found.turns,
            turns_to_speed: found.turns_to_speed,
            distance_to_speed_mm: found.distance_to_speed_mm,
            time_in_s: found.time_in_s,
            time_out_s: found.time_out_s,
            time_s: found.time_s,
            reaches_speed: i32::from(found.reaches_speed),
            strokes: found.strokes,
        }
    }
}

/// The speed that a tapping stroke reaches, and the time that the hole takes. found_size is
/// sizeof(threadcalc_tapping_time_t).
///
/// Assumed: the axis follows the turning spindle exactly; the spindle starts at rest at the R plane, gains
/// speed at a constant rate, holds it, loses it at the same rate and stands still at the bottom; it waits;
/// the same back. A control that smooths its ramps takes longer. With a peck the tap goes back to the R plane
/// after every stroke, at the speed of the way out, and in again from there: a control that only breaks the
/// chip at each peck takes less than this. N = travel / lead turns; n in turns per minute, a in turns per
/// minute per second:
/// n^2 / (60 a) up to N: t = 60 N / n + n / a, reached = n; else t = 2 reached / a, reached = sqrt(60 a N);
/// out: the same with n x retract factor; turns to speed = n^2 / (120 a); pecks: the sums over strokes of peck,
/// 2 peck, 3 peck and at last travel.
/// Errors: missing, unknown-value (flag), contradiction (an acceleration without its flag), out-of-range
/// (lead 0 to 1 000 mm, speed 0 to 1 000 000, travel 0 to 10 000 mm, acceleration 1 to 10 000 000, retract
/// factor 0.1 to 1 000, dwell 0 to 1 000 000 s, peck from a thousandth of the travel to all of it), overflow, structure-size, unsupported-field.
/// Source: mechanics; derived.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_tapping_time(
    motion_request: *const threadcalc_motion_request_t,
    found: *mut threadcalc_tapping_time_t,
    found_size: usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let asked = unsafe { request(motion_request) }?.read()?;
        let place = unsafe { SizedOutput::new(found, found_size) }?;
        place.write(threadcalc_tapping_time_t::of(&tapping_time(&asked)?));
        Ok(())
    })
}

/// Turns that the spindle makes from standstill to a speed: what the tap needs above the face if it is to
/// enter at full speed. N = n^2 / (120 a), n in turns per minute, a in turns per minute per second.
///
/// Errors: missing, out-of-range (a speed outside 0 to 1 000 000, an acceleration outside 1 to 10 000 000).
/// Source: mechanics; derived.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_turns_to_speed(
    rpm: *const threadcalc_ratio_t,
    acceleration_rpm_s: f64,
    turns: *mut f64,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let rpm = unsafe { given(rpm, Field::Rpm) }?;
        let place = unsafe { Output::new(turns) }?;
        place.write(turns_to_speed(rpm, acceleration_rpm_s)?);
        Ok(())
    })
}

/// The speed that the spindle has after a number of turns from standstill, in turns per minute:
/// n = sqrt(120 a N), a in turns per minute per second.
///
/// Errors: out-of-range (turns outside 0 to 1 000 000, an acceleration outside 1 to 10 000 000).
/// Source: mechanics; derived.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_speed_after_turns(
    turns: f64,
    acceleration_rpm_s: f64,
    rpm: *mut f64,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let place = unsafe { Output::new(rpm) }?;
        place.write(speed_after_turns(turns, acceleration_rpm_s)?);
        Ok(())
    })
}

/// How a tapping stroke fits the feed limit of its axis; exact. Frozen.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct threadcalc_feed_fit_t {
    /// Axis feed on the way in, in mm/min.
    pub feed_mm_min: threadcalc_ratio_t,
    /// Axis feed on the way out, in mm/min.
    pub retract_feed_mm_min: threadcalc_ratio_t,
    /// The largest speed that both are within the limit at, in turns per minute; not rounded.
    pub fastest_rpm: threadcalc_ratio_t,
    /// 1 if both are within the limit, else 0.
    pub is_within: i32,
    /// 0.
    pub reserved: i32,
}

impl threadcalc_feed_fit_t {
    pub(crate) fn of(fit: &FeedFit) -> Self {
        Self {
            feed_mm_min: threadcalc_ratio_t::of(fit.feed_mm_min),
            retract_feed_mm_min: threadcalc_ratio_t::of(fit.retract_feed_mm_min),
            fastest_rpm: threadcalc_ratio_t::of(fit.fastest_rpm),
            is_within: i32::from(fit.is_within),
            reserved: 0,
        }
    }
}

/// Checks the axis feed that a lead and a speed ask for against the axis' limit, which some controls clamp
/// silently and then cut the wrong pitch. fit_size is sizeof(threadcalc_feed_fit_t).
///
/// feed = lead x n; retract feed = feed x retract factor; fastest n = limit / (lead x the larger of 1 and
/// the retract factor). retract_factor may be NULL or 0/0: 1.
/// Errors: missing, out-of-range (lead 0 to 1 000 mm, speed 0 to 1 000 000, retract factor 0.1 to 1 000,
/// limit 0 to 10 000 000 mm/min), overflow, structure-size.
/// Source: derived.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_feed_fit(
    lead_mm: *const threadcalc_ratio_t,
    rpm: *const threadcalc_ratio_t,
    retract_factor: *const threadcalc_ratio_t,
    feed_limit_mm_min: *const threadcalc_ratio_t,
    fit: *mut threadcalc_feed_fit_t,
    fit_size: usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let lead = unsafe { given(lead_mm, Field::Lead) }?;
        let rpm = unsafe { given(rpm, Field::Rpm) }?;
        let factor = unsafe { perhaps(retract_factor, Field::RetractFactor) }?.unwrap_or(Length::ONE);
        let limit = unsafe { given(feed_limit_mm_min, Field::FeedLimit) }?;
        let place = unsafe { SizedOutput::new(fit, fit_size) }?;
        place.write(threadcalc_feed_fit_t::of(&feed_fit(lead, rpm, factor, limit)?));
        Ok(())
    })
}

/// The time of a pattern of holes for a quotation, in seconds:
/// t = holes x (seconds per hole + 60 x rapid distance / rapid feed).
///
/// rapid_distance_mm: from hole to hole, and down to R and up again where the cycle returns higher; per
/// hole, the way to the first one included. The axes' own ramps, tool change and coolant are not in it.
/// Errors: missing, out-of-range (holes 1 to 1 000 000 000, distance 0 to 10 000 mm, rapid feed 0 to
/// 10 000 000 mm/min, seconds per hole 0 to 1 000 000), overflow.
/// Source: derived.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_pattern_time_s(
    holes: u32,
    rapid_distance_mm: *const threadcalc_ratio_t,
    rapid_feed_mm_min: *const threadcalc_ratio_t,
    seconds_per_hole: f64,
    time_s: *mut f64,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let distance = unsafe { given(rapid_distance_mm, Field::RapidDistance) }?;
        let feed = unsafe { given(rapid_feed_mm_min, Field::RapidFeed) }?;
        let place = unsafe { Output::new(time_s) }?;
        place.write(pattern_time_s(holes, distance, feed, seconds_per_hole)?);
        Ok(())
    })
}
