//! Which gear of a spindle holds a torque at a speed.

use crate::error::{Code, Error, Field};
use crate::length::Ratio;
use crate::range::{above_zero, within};

/// The most gears of a spindle.
pub const MOST_GEARS: usize = 6;
/// The most points of a gear's torque curve.
const MOST_POINTS: usize = 8;
/// More torque than a machine tool has, in Nm.
const MOST_NM: f64 = 1e6;

/// A point of a torque curve.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TorquePoint {
    /// Spindle speed.
    pub rpm: Ratio,
    /// Torque that the spindle holds there, in Nm.
    pub torque_nm: f64,
}

/// A gear: its range of speeds and the torque over it, linear between the points.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Gear {
    lowest: Ratio,
    highest: Ratio,
    points: [Option<TorquePoint>; MOST_POINTS],
}

impl Gear {
    /// A gear from its range and up to 8 points of its torque curve, speeds ascending.
    ///
    /// One point is a torque that holds over the whole range. More have to reach from the lowest to the
    /// highest speed: beyond its last point a curve falls, and is not guessed. Take the curve of the duty
    /// that tapping is, which is short-time, not continuous.
    ///
    /// # Errors
    /// [`Code::Contradiction`] for a lowest speed above the highest or points that do not ascend;
    /// [`Code::OutOfRange`] for no point or more than 8, for points that do not reach over the range, and
    /// for speeds or torques that no spindle has.
    pub fn new(lowest_rpm: Ratio, highest_rpm: Ratio, points: &[TorquePoint]) -> Result<Self, Error> {
        above_zero(highest_rpm, Field::Highest, super::MOST_RPM)?;
        if lowest_rpm.is_negative() || lowest_rpm > highest_rpm {
            return Err(Error::new(Code::Contradiction, Field::Lowest)
                .got(lowest_rpm.to_f64())
                .within(0.0, highest_rpm.to_f64())
                .hint_text("a lowest speed of 0 or more that is not above the highest"));
        }
        let mut held = [None; MOST_POINTS];
        if points.is_empty() || points.len() > MOST_POINTS {
            return Err(Error::new(Code::OutOfRange, Field::TorqueCurve)
                .got(points.len() as f64)
                .within(1.0, MOST_POINTS as f64));
        }
        let mut before = None;
        for (slot, point) in held.iter_mut().zip(points) {
            within(point.torque_nm, Field::Torque, 0.0, MOST_NM)?;
            if point.rpm.is_negative() || before.is_some_and(|before| point.rpm <= before) {
                return Err(Error::new(Code::Contradiction, Field::TorqueCurve)
                    .got(point.rpm.to_f64())
                    .hint_text("the speeds of the points ascend, from 0 or more"));
            }
            before = Some(point.rpm);
            *slot = Some(*point);
        }
        let reaches = |first: &TorquePoint| first.rpm <= lowest_rpm && before.is_some_and(|last| last >= highest_rpm);
        if points.len() > 1 && !points.first().is_some_and(reaches) {
            return Err(Error::new(Code::OutOfRange, Field::TorqueCurve)
                .within(lowest_rpm.to_f64(), highest_rpm.to_f64())
                .hint_text("points from the lowest to the highest speed of the gear"));
        }
        Ok(Self { lowest: lowest_rpm, highest: highest_rpm, points: held })
    }

    /// Lowest speed.
    #[must_use]
    pub const fn lowest_rpm(&self) -> Ratio {
        self.lowest
    }

    /// Highest speed.
    #[must_use]
    pub const fn highest_rpm(&self) -> Ratio {
        self.highest
    }

    /// The points of its torque curve, speeds ascending.
    pub fn points(&self) -> impl Iterator<Item = TorquePoint> + Clone + '_ {
        self.points.iter().flatten().copied()
    }

    /// The torque at a speed in Nm; `None` outside the range.
    #[must_use]
    pub fn torque_nm(&self, rpm: Ratio) -> Option<f64> {
        if rpm < self.lowest || rpm > self.highest {
            return None;
        }
        let Some((first, second)) = self.segments().find(|(_, end)| rpm <= end.rpm) else {
            return self.points.iter().flatten().next().map(|only| only.torque_nm);
        };
        Some(between(first, second, rpm.to_f64()))
    }

    /// The largest speed of the range at which the curve holds a torque.
    #[must_use]
    pub fn fastest_for(&self, torque_nm: f64) -> Option<f64> {
        let (lowest, highest) = (self.lowest.to_f64(), self.highest.to_f64());
        let mut fastest = None;
        for (first, second) in self.segments() {
            let (from, to) = (first.rpm.to_f64().max(lowest), second.rpm.to_f64().min(highest));
            let (at_start, at_end) = (between(first, second, from), between(first, second, to));
            if from > to {
                continue;
            }
            if at_end >= torque_nm {
                fastest = Some(to);
            } else if at_start >= torque_nm {
                // The curve falls through the torque between the two.
                fastest = Some(from + (to - from) * ((at_start - torque_nm) / (at_start - at_end)));
            }
        }
        let only = self.points.iter().flatten().next().filter(|_| self.segments().next().is_none());
        only.map_or(fastest, |only| (only.torque_nm >= torque_nm).then_some(highest))
    }

    fn segments(&self) -> impl Iterator<Item = (TorquePoint, TorquePoint)> + '_ {
        let points = || self.points.iter().flatten().copied();
        points().zip(points().skip(1))
    }
}

/// On the line through two points of different speeds.
fn between(first: TorquePoint, second: TorquePoint, rpm: f64) -> f64 {
    let (from, to) = (first.rpm.to_f64(), second.rpm.to_f64());
    first.torque_nm + (second.torque_nm - first.torque_nm) * ((rpm - from) / (to - from))
}

/// How a speed and a torque fit the gears of a spindle.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct GearFit {
    /// The gear with the most torque at the speed, counted from 0 as given; `None` if none runs it.
    pub gear: Option<usize>,
    /// The torque that it holds there.
    pub torque_nm: Option<f64>,
    /// Whether that is enough.
    pub is_enough: bool,
    /// The largest speed of any gear at which the torque is there, whatever was asked; round it down.
    pub fastest_rpm: Option<f64>,
}

/// Finds the gear for a speed and a torque, and the largest speed that would do.
///
/// Where ranges overlap the gear with the most torque is taken, the first on a tie. A control that
/// chooses by the speed alone may take another one: force the range by its code.
///
/// Ask with `high_nm` of a [`TorqueBand`](crate::TorqueBand) for a new tap, with `worn_nm` for its end.
///
/// # Errors
/// [`Code::OutOfRange`] for no gear or more than 6, a torque below 0, or a speed that is not positive.
///
/// # Example
/// ```
/// use threadcalc_core::{Gear, Length, TorquePoint, gear_fit};
///
/// let point = |rpm, torque_nm| TorquePoint { rpm: Length::integer(rpm), torque_nm };
/// let gears = [
///     Gear::new(Length::integer(20), Length::integer(500), &[point(20, 120.0), point(500, 120.0)])?,
///     Gear::new(Length::integer(20), Length::integer(4000), &[point(20, 20.0), point(4000, 20.0)])?,
/// ];
/// let fit = gear_fit(&gears, 39.0, Length::integer(150))?; // M20 in steel
/// assert_eq!((fit.gear, fit.is_enough, fit.fastest_rpm), (Some(0), true, Some(500.0)));
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// Derived.
pub fn gear_fit(gears: &[Gear], torque_nm: f64, rpm: Ratio) -> Result<GearFit, Error> {
    if gears.is_empty() || gears.len() > MOST_GEARS {
        return Err(Error::new(Code::OutOfRange, Field::Gears).got(gears.len() as f64).within(1.0, MOST_GEARS as f64));
    }
    fit_of(gears.iter(), torque_nm, rpm)
}

/// The same of gears wherever they stand.
pub(crate) fn fit_of<'a>(gears: impl Iterator<Item = &'a Gear>, torque_nm: f64, rpm: Ratio) -> Result<GearFit, Error> {
    let wanted = within(torque_nm, Field::Torque, 0.0, MOST_NM)?;
    above_zero(rpm, Field::Rpm, super::MOST_RPM)?;
    let mut fit = GearFit { gear: None, torque_nm: None, is_enough: false, fastest_rpm: None };
    for (place, gear) in crate::text::placed(gears) {
        if let Some(held) = gear.torque_nm(rpm).filter(|held| fit.torque_nm.is_none_or(|best| *held > best)) {
            fit = GearFit { gear: Some(place), torque_nm: Some(held), is_enough: held >= wanted, ..fit };
        }
        let fastest = gear.fastest_for(wanted);
        if fastest.is_some_and(|fastest| fit.fastest_rpm.is_none_or(|best| fastest > best)) {
            fit.fastest_rpm = fastest;
        }
    }
    Ok(fit)
}
