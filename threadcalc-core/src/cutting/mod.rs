//! Spindle speed from surface speed and back; torque, power and gear of a tapping job.
//!
//! Surface speeds and cutting forces are the tap maker's: the tap's own card beats every number here.

mod gear;
mod material;
mod torque;

pub(crate) use gear::fit_of;
pub use gear::{Gear, GearFit, MOST_GEARS, TorquePoint, gear_fit};
pub use material::Material;
pub use torque::{
    FORMING_FACTOR, FactorRange, ForceByChipArea, ForceByPitch, TAPER_FACTOR, TorqueBand, power_kw,
    torque_by_chip_area, torque_by_pitch,
};

use core::f64::consts::PI;

use crate::error::{Code, Error, Field};
use crate::length::{Length, Ratio};
use crate::range::above_zero;

/// Beyond any diameter, surface speed (m/min or ft/min) and spindle speed of a machine tool.
const MOST_DIAMETER: i64 = 2_000;
const MOST_SURFACE_SPEED: i64 = 20_000;
pub(crate) const MOST_RPM: i64 = 1_000_000;

/// The spindle speed at which a diameter runs at a surface speed, in rpm, not rounded.
///
/// ```text
/// n = 1000 v / (pi D)     v in m/min, D in mm
/// ```
///
/// What the control holds of it is [`programmed_speed`](crate::programmed_speed).
///
/// # Errors
/// [`Code::OutOfRange`] for a diameter outside 0 to 2 000 mm or a surface speed outside 0 to 20 000 m/min,
/// [`Code::Overflow`].
///
/// # Example
/// ```
/// use threadcalc_core::{Length, spindle_speed};
///
/// let rpm = spindle_speed(Length::integer(10), Length::integer(15))?;
/// assert!((rpm - 477.46).abs() < 0.01);
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// Tool makers' published formulas; common practice.
pub fn spindle_speed(diameter_mm: Length, surface_speed_m_min: Length) -> Result<f64, Error> {
    turns(diameter_mm, surface_speed_m_min, 1000)
}

/// The spindle speed at which a diameter in inches runs at a surface speed in feet per minute, in rpm.
///
/// ```text
/// n = 12 v / (pi D)       v in ft/min, D in inches
/// ```
///
/// # Errors
/// [`Code::OutOfRange`] for a diameter outside 0 to 2 000 in or a surface speed outside 0 to 20 000 ft/min,
/// [`Code::Overflow`].
///
/// # Example
/// ```
/// use threadcalc_core::{Length, spindle_speed_feet};
///
/// let rpm = spindle_speed_feet(Length::new(1, 4)?, Length::integer(50))?;
/// assert!((rpm - 763.94).abs() < 0.01);
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// Tool makers' published formulas; common practice.
pub fn spindle_speed_feet(diameter_in: Length, surface_speed_ft_min: Length) -> Result<f64, Error> {
    turns(diameter_in, surface_speed_ft_min, 12)
}

/// The surface speed of a diameter at a spindle speed, in m/min; feet per minute are m/min / 0.3048.
///
/// ```text
/// v = pi D n / 1000
/// ```
///
/// # Errors
/// [`Code::OutOfRange`] for a diameter outside 0 to 2 000 mm or a speed outside 0 to 1 000 000 rpm,
/// [`Code::Overflow`].
///
/// # Example
/// ```
/// use threadcalc_core::{Length, surface_speed_m_min};
///
/// let speed = surface_speed_m_min(Length::integer(10), Length::integer(480))?;
/// assert!((speed - 15.08).abs() < 0.01);
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// Tool makers' published formulas; common practice.
pub fn surface_speed_m_min(diameter_mm: Length, rpm: Ratio) -> Result<f64, Error> {
    above_zero(diameter_mm, Field::Diameter, MOST_DIAMETER)?;
    above_zero(rpm, Field::Rpm, MOST_RPM)?;
    Ok(diameter_mm.times(rpm)?.over(Length::integer(1000))?.to_f64() * PI)
}

/// Everything but pi is exact, and divided once.
fn turns(diameter: Length, surface_speed: Length, per_unit: i64) -> Result<f64, Error> {
    above_zero(diameter, Field::Diameter, MOST_DIAMETER)?;
    above_zero(surface_speed, Field::SurfaceSpeed, MOST_SURFACE_SPEED)?;
    let speed = surface_speed.times(Length::integer(per_unit))?.over(diameter)?.to_f64() / PI;
    // A microscopic diameter has a speed that no spindle and no later formula holds.
    if speed > MOST_RPM as f64 {
        return Err(Error::new(Code::OutOfRange, Field::Rpm).got(speed).within(0.0, MOST_RPM as f64));
    }
    Ok(speed)
}
