//! What the spindle and the axis have to do for a tapped hole: speed reached, time, axis feed.

mod holder;

pub(crate) use holder::least_clearance_mm;
pub use holder::{Holder, HolderClearance, HolderTravel, holder_clearance, holder_travel};

use crate::cutting::MOST_RPM;
use crate::error::{Error, Field};
use crate::length::{Length, Ratio};
use crate::range::{above_zero, within, zero_or_more};

/// Beyond any lead, travel and feed of a machine tool, in mm and mm/min.
pub(crate) const MOST_LEAD: i64 = 1_000;
pub(crate) const MOST_TRAVEL: i64 = 10_000;
const MOST_FEED: i64 = 10_000_000;
/// Spindles between a hand wheel and a grinding spindle, in rpm/s.
const ACCELERATION: (f64, f64) = (1.0, 1e7);
/// A slower way out than a tenth of the way in is a slip of the point; there is no machine's limit here.
const RETRACT: (Length, i64) = (Length::parts(1, 10), 1_000);
const MOST_SECONDS: f64 = 1e6;
const MOST_TURNS: f64 = 1e6;
const MOST_HOLES: f64 = 1e9;
/// A hole of more strokes than this is a slip of the peck's point or unit.
const MOST_STROKES: i32 = 1_000;

/// The motion that taps one hole. Lengths in millimetres.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TappingMotion {
    /// Lead of the thread.
    pub lead_mm: Length,
    /// Programmed speed.
    pub rpm: Ratio,
    /// From the R plane to the bottom of the stroke: more than the depth from the face.
    pub travel_mm: Length,
    /// How fast the spindle gains and loses speed, the same both ways; `None`: not known, no ramps, so
    /// that the time is the least there can be.
    pub acceleration_rpm_s: Option<f64>,
    /// Speed on the way out over speed on the way in, 0.1 or more. The machine's highest speed does not
    /// limit it here.
    pub retract_factor: Ratio,
    /// Wait at the bottom of each stroke, in seconds.
    pub dwell_s: f64,
    /// Depth of a peck: the strokes end at one peck from the R plane, at two, and so on, the last at the full
    /// travel; `None`: one stroke. A thousandth of the travel to all of it.
    pub peck_mm: Option<Length>,
}

/// What tapping a hole comes to.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
#[non_exhaustive]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct TappingTime {
    /// The fastest that the spindle turns on the way in: that of the last stroke, the deepest.
    pub reached_rpm: f64,
    /// The fastest that it turns on the way out, after the last stroke.
    pub retract_rpm: f64,
    /// Whether the programmed speed is reached on the way in, in the last stroke at least.
    pub reaches_speed: bool,
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
    /// How many strokes; 1 without a peck.
    pub strokes: u32,
}

/// The speed that a tapping stroke reaches, and the time that the hole takes.
///
/// Assumed: the axis follows the turning spindle exactly, as a synchronised cycle has it; the spindle
/// starts at rest at the R plane, gains speed at a constant rate, holds it, loses it at the same rate and
/// stands still at the bottom; it waits; the same back. Both ramps lie within the travel. A control that
/// smooths its ramps takes longer. With a peck the tap goes back to the R plane after every stroke, at the
/// speed of the way out, and in again from there: a control that only breaks the chip at each peck takes
/// less than this.
///
/// ```text
/// N  = travel / lead                              turns of the stroke
/// n² / (60 a)                                     turns of both ramps; n in rpm, a in rpm/s
/// long stroke   t = 60 N / n + n / a              reached = n
/// short stroke  t = 2 reached / a                 reached = sqrt(60 a N)
/// out           the same with n × retract factor
/// pecks         the sums over strokes of peck, 2 peck, 3 peck … and at last travel
/// turns to speed = n² / (120 a)
/// ```
///
/// # Errors
/// [`OutOfRange`](crate::Code::OutOfRange) names the value that makes no sense;
/// [`Overflow`](crate::Code::Overflow).
///
/// # Example
/// ```
/// use threadcalc_core::{Length, TappingMotion, Thread, tapping_time};
///
/// let motion = TappingMotion {
///     lead_mm: Thread::read(b"M8")?.lead_mm(),
///     rpm: Length::integer(3000),
///     travel_mm: Length::integer(20), // 16 turns
///     acceleration_rpm_s: Some(3000.0),
///     retract_factor: Length::ONE,
///     dwell_s: 0.0,
///     peck_mm: None,
/// };
/// let found = tapping_time(&motion)?;
/// assert!(!found.reaches_speed);
/// assert!((found.reached_rpm - 1697.06).abs() < 0.01);
/// assert!((found.time_s - 2.263).abs() < 0.001);
///
/// // 4, 8, 12 and 16 turns.
/// let pecked = tapping_time(&TappingMotion { peck_mm: Some(Length::integer(5)), ..motion })?;
/// assert!(pecked.strokes == 4 && pecked.reached_rpm == found.reached_rpm);
/// assert!((pecked.time_s - 6.954).abs() < 0.001);
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// Mechanics; derived.
pub fn tapping_time(motion: &TappingMotion) -> Result<TappingTime, Error> {
    let lead = above_zero(motion.lead_mm, Field::Lead, MOST_LEAD)?;
    let rpm = above_zero(motion.rpm, Field::Rpm, MOST_RPM)?;
    let travel = above_zero(motion.travel_mm, Field::Travel, MOST_TRAVEL)?;
    let factor = retract(motion.retract_factor)?;
    let dwell = within(motion.dwell_s, Field::Dwell, 0.0, MOST_SECONDS)?;
    let acceleration = match motion.acceleration_rpm_s {
        Some(rate) => Some(within(rate, Field::Acceleration, ACCELERATION.0, ACCELERATION.1)?),
        None => None,
    };
    let turns = travel.over_to_f64(lead)?;
    let (asked, asked_out) = (rpm.to_f64(), rpm.times(factor)?.to_f64());
    let (reached, mut time_in) = stroke(asked, turns, acceleration);
    let (retract, mut time_out) = stroke(asked_out, turns, acceleration);
    let mut strokes = 1;
    if let Some(peck) = motion.peck_mm {
        strokes = strokes_of(peck, travel)?;
        let turns_of_peck = peck.over_to_f64(lead)?;
        for pecks in 1..strokes {
            let turns = f64::from(pecks) * turns_of_peck;
            time_in += stroke(asked, turns, acceleration).1;
            time_out += stroke(asked_out, turns, acceleration).1;
        }
    }
    let turns_to_speed = acceleration.map_or(0.0, |rate| asked * asked / (120.0 * rate));
    Ok(TappingTime {
        reached_rpm: reached,
        retract_rpm: retract,
        reaches_speed: reached >= asked,
        turns,
        turns_to_speed,
        distance_to_speed_mm: turns_to_speed * lead.to_f64(),
        time_in_s: time_in,
        time_out_s: time_out,
        time_s: time_in + f64::from(strokes) * dwell + time_out,
        strokes,
    })
}

/// How many strokes a travel takes, each a peck deeper than the one before, the last as deep as is left.
fn strokes_of(peck: Length, travel: Length) -> Result<u32, Error> {
    let count = (1..=MOST_STROKES).find(|strokes| !travel.is_more_than((*strokes, 1), peck));
    count.filter(|_| peck <= travel).map(i32::unsigned_abs).ok_or_else(|| {
        let most = travel.to_f64();
        Error::new(crate::Code::OutOfRange, Field::Peck)
            .got(peck.to_f64())
            .within(most / f64::from(MOST_STROKES), most)
            .hint_text("at most the way from R to the bottom, in at most 1000 strokes")
    })
}

/// Speed reached in rpm and time in seconds of one way, from rest to rest.
fn stroke(rpm: f64, turns: f64, acceleration: Option<f64>) -> (f64, f64) {
    let Some(rate) = acceleration else { return (rpm, 60.0 * turns / rpm) };
    if rpm * rpm / (60.0 * rate) <= turns {
        (rpm, 60.0 * turns / rpm + rpm / rate)
    } else {
        let reached = libm::sqrt(60.0 * rate * turns);
        (reached, 2.0 * reached / rate)
    }
}

pub(crate) fn retract(factor: Ratio) -> Result<Ratio, Error> {
    let (least, most) = RETRACT;
    if factor < least || factor > Length::integer(most) {
        return Err(Error::new(crate::Code::OutOfRange, Field::RetractFactor)
            .got(factor.to_f64())
            .within(least.to_f64(), most as f64));
    }
    Ok(factor)
}

/// Turns that the spindle makes from standstill to a speed: what the tap needs above the face if it is to
/// enter at full speed.
///
/// ```text
/// N = n² / (120 a)     n in rpm, a in rpm/s
/// ```
///
/// # Errors
/// [`OutOfRange`](crate::Code::OutOfRange) for a speed outside 0 to 1 000 000 rpm or an acceleration
/// outside 1 to 10 000 000 rpm/s.
///
/// # Example
/// ```
/// use threadcalc_core::{Length, turns_to_speed};
///
/// assert_eq!(turns_to_speed(Length::integer(600), 1500.0)?, 2.0);
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// Mechanics; derived.
pub fn turns_to_speed(rpm: Ratio, acceleration_rpm_s: f64) -> Result<f64, Error> {
    let rpm = above_zero(rpm, Field::Rpm, MOST_RPM)?.to_f64();
    let rate = within(acceleration_rpm_s, Field::Acceleration, ACCELERATION.0, ACCELERATION.1)?;
    Ok(rpm * rpm / (120.0 * rate))
}

/// The speed that the spindle has after a number of turns from standstill.
///
/// ```text
/// n = sqrt(120 a N)    n in rpm, a in rpm/s
/// ```
///
/// # Errors
/// [`OutOfRange`](crate::Code::OutOfRange) for turns outside 0 to 1 000 000 or an acceleration outside 1
/// to 10 000 000 rpm/s.
///
/// # Example
/// ```
/// use threadcalc_core::speed_after_turns;
///
/// assert_eq!(speed_after_turns(2.0, 1500.0)?, 600.0);
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// Mechanics; derived.
pub fn speed_after_turns(turns: f64, acceleration_rpm_s: f64) -> Result<f64, Error> {
    let turns = within(turns, Field::Turns, 0.0, MOST_TURNS)?;
    let rate = within(acceleration_rpm_s, Field::Acceleration, ACCELERATION.0, ACCELERATION.1)?;
    Ok(libm::sqrt(120.0 * rate * turns))
}

/// How a tapping stroke fits the feed limit of its axis; exact.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct FeedFit {
    /// Axis feed on the way in.
    pub feed_mm_min: Length,
    /// Axis feed on the way out.
    pub retract_feed_mm_min: Length,
    /// Whether both are within the limit.
    pub is_within: bool,
    /// The largest speed that both are within the limit at; not rounded.
    pub fastest_rpm: Ratio,
}

/// Checks the axis feed that a lead and a speed ask for against the axis' limit. Some controls clamp the
/// axis silently and cut the wrong pitch.
///
/// ```text
/// feed = lead × n        retract feed = feed × retract factor
/// fastest n = limit / (lead × the larger of 1 and the retract factor)
/// ```
///
/// # Errors
/// [`OutOfRange`](crate::Code::OutOfRange) names the value that makes no sense;
/// [`Overflow`](crate::Code::Overflow).
///
/// # Example
/// ```
/// use threadcalc_core::{Length, feed_fit};
///
/// let lead = Length::new(5, 4)?;
/// let fit = feed_fit(lead, Length::integer(4000), Length::ONE, Length::integer(4000))?;
/// assert!(!fit.is_within);
/// assert_eq!(fit.fastest_rpm.to_string(), "3200");
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// Derived.
pub fn feed_fit(lead_mm: Length, rpm: Ratio, retract_factor: Ratio, limit_mm_min: Length) -> Result<FeedFit, Error> {
    let lead = above_zero(lead_mm, Field::Lead, MOST_LEAD)?;
    let limit = above_zero(limit_mm_min, Field::FeedLimit, MOST_FEED)?;
    let factor = retract(retract_factor)?;
    let feed = lead.times(above_zero(rpm, Field::Rpm, MOST_RPM)?)?;
    let retract_feed = feed.times(factor)?;
    Ok(FeedFit {
        feed_mm_min: feed,
        retract_feed_mm_min: retract_feed,
        is_within: feed <= limit && retract_feed <= limit,
        fastest_rpm: limit.over(lead.times(factor.max(Length::ONE))?)?,
    })
}

/// The time of a pattern of holes for a quotation, in seconds.
///
/// ```text
/// t = holes × (seconds per hole + 60 × rapid distance / rapid feed)
/// ```
///
/// `rapid_distance_mm`: from hole to hole, and down to R and up again where the cycle returns higher; per
/// hole, the way to the first one included. The axes' own ramps, tool change and coolant are not in it.
///
/// # Errors
/// [`OutOfRange`](crate::Code::OutOfRange) names the value that makes no sense;
/// [`Overflow`](crate::Code::Overflow).
///
/// # Example
/// ```
/// use threadcalc_core::{Length, pattern_time_s};
///
/// let time = pattern_time_s(12, Length::integer(50), Length::integer(20_000), 3.35)?;
/// assert!((time - 42.0).abs() < 1e-9);
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// Derived.
pub fn pattern_time_s(
    holes: u32,
    rapid_distance_mm: Length,
    rapid_feed_mm_min: Length,
    seconds_per_hole: f64,
) -> Result<f64, Error> {
    let holes = within(f64::from(holes), Field::HoleCount, 1.0, MOST_HOLES)?;
    let distance = zero_or_more(rapid_distance_mm, Field::RapidDistance, MOST_TRAVEL)?;
    let feed = above_zero(rapid_feed_mm_min, Field::RapidFeed, MOST_FEED)?;
    let seconds = within(seconds_per_hole, Field::SecondsPerHole, 0.0, MOST_SECONDS)?;
    Ok(holes * (seconds + 60.0 * distance.over(feed)?.to_f64()))
}
