//! Which gear of a spindle holds a torque at a speed.

use threadcalc_core::{Code, Error, Field, Gear, GearFit, Length, MOST_GEARS, TorquePoint, gear_fit};

use crate::codes::threadcalc_status;
use crate::memory::{SizedOutput, items};
use crate::number::given;
use crate::status::{guard, threadcalc_error_t};
use crate::types::threadcalc_ratio_t;

/// A point of a torque curve. Frozen.
#[repr(C)]
#[derive(Clone, Copy, Default)]
pub struct threadcalc_torque_point_t {
    /// Spindle speed in turns per minute.
    pub rpm: threadcalc_ratio_t,
    /// Torque that the spindle holds there, in Nm.
    pub torque_nm: f64,
}

/// A gear of a spindle: its range of speeds and the torque over it, linear between the points. Frozen.
///
/// One point is a torque that holds over the whole range. More have to ascend and to reach from the lowest
/// to the highest speed. Take the curve of the duty that tapping is, which is short-time.
#[repr(C)]
#[derive(Clone, Copy, Default)]
pub struct threadcalc_gear_t {
    /// Lowest speed in turns per minute; may be 0/1.
    pub lowest_rpm: threadcalc_ratio_t,
    /// Highest speed in turns per minute.
    pub highest_rpm: threadcalc_ratio_t,
    /// How many of the points there are, 1 to 8.
    pub point_count: i32,
    /// 0.
    pub reserved: u32,
    /// The points; those behind point_count are not read.
    pub points: [threadcalc_torque_point_t; 8],
}

impl threadcalc_gear_t {
    pub(crate) fn read(&self) -> Result<Gear, Error> {
        crate::feed::checked_reserve(self.reserved)?;
        let lowest = self.lowest_rpm.required(Field::Lowest)?;
        let highest = self.highest_rpm.required(Field::Highest)?;
        let mut points = [TorquePoint { rpm: Length::ZERO, torque_nm: 0.0 }; 8];
        let places = usize::try_from(self.point_count).ok().and_then(|count| points.get_mut(..count));
        let places = places.ok_or_else(|| {
            Error::new(Code::OutOfRange, Field::TorqueCurve).got(f64::from(self.point_count)).within(1.0, 8.0)
        })?;
        for (place, point) in places.iter_mut().zip(&self.points) {
            *place = TorquePoint { rpm: point.rpm.required(Field::TorqueCurve)?, torque_nm: point.torque_nm };
        }
        Gear::new(lowest, highest, places)
    }
}

/// How a speed and a torque fit the gears of a spindle. Frozen.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct threadcalc_gear_fit_t {
    /// The gear with the most torque at the speed, counted from 0 as given; -1 if none runs it.
    pub gear: i32,
    /// 1 if its torque is enough, else 0.
    pub is_enough: i32,
    /// The torque that it holds there, in Nm; NaN if none runs the speed.
    pub torque_nm: f64,
    /// The largest speed of any gear at which the torque is there, whatever was asked; NaN if there is none.
    /// Round it down.
    pub fastest_rpm: f64,
}

impl threadcalc_gear_fit_t {
    pub(crate) fn of(fit: &GearFit) -> Self {
        Self {
            gear: fit.gear.and_then(|gear| i32::try_from(gear).ok()).unwrap_or(-1),
            is_enough: i32::from(fit.is_enough),
            torque_nm: fit.torque_nm.unwrap_or(f64::NAN),
            fastest_rpm: fit.fastest_rpm.unwrap_or(f64::NAN),
        }
    }
}

/// Finds the gear for a speed and a torque, and the largest speed that would do. gears has gear_count
/// gears, 1 to 6; fit_size is sizeof(threadcalc_gear_fit_t).
///
/// Where ranges overlap the gear with the most torque is taken, the first on a tie. A control that chooses
/// by the speed alone may take another one: force the range by its code. Ask with high_nm of a torque band
/// for a new tap, with worn_nm for its end.
/// Errors: missing, contradiction (a lowest speed above the highest, points that do not ascend),
/// out-of-range (no gear or more than 6, no point or more than 8, points that do not reach over the range,
/// a torque below 0, a speed not above 0), overflow, structure-size, unsupported-field.
/// Source: derived.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_gear_fit(
    gears: *const threadcalc_gear_t,
    gear_count: usize,
    torque_nm: f64,
    rpm: *const threadcalc_ratio_t,
    fit: *mut threadcalc_gear_fit_t,
    fit_size: usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let gears = unsafe { items(gears, gear_count, MOST_GEARS, Field::Gears) }?;
        let rpm = unsafe { given(rpm, Field::Rpm) }?;
        let place = unsafe { SizedOutput::new(fit, fit_size) }?;
        let held = read_all(gears)?;
        let held = held.as_ref().and_then(|held| held.get(..gear_count)).unwrap_or(&[]);
        place.write(threadcalc_gear_fit_t::of(&gear_fit(held, torque_nm, rpm)?));
        Ok(())
    })
}

/// Room for the most gears, there being no heap: those that were given, and behind them the first again.
fn read_all(gears: &[threadcalc_gear_t]) -> Result<Option<[Gear; MOST_GEARS]>, Error> {
    let Some(first) = gears.first() else { return Ok(None) };
    let mut held = [first.read()?; MOST_GEARS];
    for (place, gear) in held.iter_mut().zip(gears).skip(1) {
        *place = gear.read()?;
    }
    Ok(Some(held))
}
