//! Spindle speed from surface speed and back, torque and power of a tap.

use threadcalc_core::{
    Error, FORMING_FACTOR, FactorRange, Field, ForceByChipArea, ForceByPitch, Length, Material, TAPER_FACTOR,
    TorqueBand, power_kw, spindle_speed, spindle_speed_feet, surface_speed_m_min, torque_by_chip_area, torque_by_pitch,
};

use crate::codes::threadcalc_status;
use crate::memory::{Output, SizedOutput, input};
use crate::number::given;
use crate::status::{guard, required, threadcalc_error_t};
use crate::tap_choices::threadcalc_material;
use crate::types::{threadcalc_ratio_t, threadcalc_thread_t};

/// The calls that make a double of two exact numbers.
///
/// # Safety
/// As for every input and output of the library.
unsafe fn of_two(
    (first, first_field): (*const threadcalc_ratio_t, Field),
    (second, second_field): (*const threadcalc_ratio_t, Field),
    result: *mut f64,
    error: *mut threadcalc_error_t,
    compute: impl FnOnce(Length, Length) -> Result<f64, Error>,
) -> threadcalc_status {
    guard(error, || {
        let first = unsafe { given(first, first_field) }?;
        let second = unsafe { given(second, second_field) }?;
        let place = unsafe { Output::new(result) }?;
        place.write(compute(first, second)?);
        Ok(())
    })
}

/// The spindle speed at which a diameter runs at a surface speed, in turns per minute, not rounded:
/// n = 1000 v / (pi D), v in m/min, D in mm. What the control holds of it is threadcalc_programmed_speed.
///
/// Errors: missing, out-of-range (a diameter outside 0 to 2 000 mm, a surface speed outside 0 to
/// 20 000 m/min, or a speed above 1 000 000), overflow.
/// Source: tool makers' published formulas; common practice.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_spindle_speed(
    diameter_mm: *const threadcalc_ratio_t,
    surface_speed_m_min: *const threadcalc_ratio_t,
    rpm: *mut f64,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    let speed = (surface_speed_m_min, Field::SurfaceSpeed);
    unsafe { of_two((diameter_mm, Field::Diameter), speed, rpm, error, spindle_speed) }
}

/// The spindle speed at which a diameter in inches runs at a surface speed in feet per minute, in turns
/// per minute, not rounded: n = 12 v / (pi D).
///
/// Errors: missing, out-of-range (a diameter outside 0 to 2 000 in, a surface speed outside 0 to
/// 20 000 ft/min, or a speed above 1 000 000), overflow.
/// Source: tool makers' published formulas; common practice.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_spindle_speed_feet(
    diameter_in: *const threadcalc_ratio_t,
    surface_speed_ft_min: *const threadcalc_ratio_t,
    rpm: *mut f64,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    let speed = (surface_speed_ft_min, Field::SurfaceSpeed);
    unsafe { of_two((diameter_in, Field::Diameter), speed, rpm, error, spindle_speed_feet) }
}

/// The surface speed of a diameter at a spindle speed, in m/min: v = pi D n / 1000. Feet per minute are
/// m/min / 0.3048.
///
/// Errors: missing, out-of-range (a diameter outside 0 to 2 000 mm, a speed outside 0 to 1 000 000 turns
/// per minute), overflow.
/// Source: tool makers' published formulas; common practice.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_surface_speed_m_min(
    diameter_mm: *const threadcalc_ratio_t,
    rpm: *const threadcalc_ratio_t,
    surface_speed: *mut f64,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    unsafe { of_two((diameter_mm, Field::Diameter), (rpm, Field::Rpm), surface_speed, error, surface_speed_m_min) }
}

/// Torque of a tap in Nm: never one number. Frozen.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct threadcalc_torque_band_t {
    /// A new tap under good conditions: half the likely torque.
    pub low_nm: f64,
    /// What the formula gives.
    pub likely_nm: f64,
    /// A new tap under bad conditions: half as much again.
    pub high_nm: f64,
    /// A worn tap: twice the likely torque.
    pub worn_nm: f64,
}

impl threadcalc_torque_band_t {
    pub(crate) fn of(band: &TorqueBand) -> Self {
        Self { low_nm: band.low_nm, likely_nm: band.likely_nm, high_nm: band.high_nm, worn_nm: band.worn_nm }
    }
}

/// The torque of a tap from pitch and diameter. band_size is sizeof(threadcalc_torque_band_t).
///
/// M = starts x factor x kc P^2 D / 8000, in Nm; kc in N/mm2 out of a table for this very formula, P and
/// the basic major diameter D in mm. factor: 1 for a cutting tap in a straight thread; see
/// threadcalc_forming_factor and threadcalc_taper_factor.
/// Errors: out-of-range (a force outside 50 to 20 000 N/mm2, a factor outside 0.1 to 20), those of
/// threadcalc_thread_write, structure-size.
/// Source: a tap maker's published formula; the band and the starts: common practice.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_torque_by_pitch(
    thread: *const threadcalc_thread_t,
    force_by_pitch_n_mm2: f64,
    factor: f64,
    band: *mut threadcalc_torque_band_t,
    band_size: usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let thread = unsafe { input(thread) }?.read()?;
        let place = unsafe { SizedOutput::new(band, band_size) }?;
        let force = ForceByPitch::new(force_by_pitch_n_mm2)?;
        place.write(threadcalc_torque_band_t::of(&torque_by_pitch(&thread, force, factor)?));
        Ok(())
    })
}

/// The torque of a cutting tap from the metal that the drilled hole leaves. band_size is
/// sizeof(threadcalc_torque_band_t).
///
/// M = starts x factor x tan(theta) kc (D - Do)^2 (D + 2 Do) / 24000, in Nm; theta the angle of a flank, kc
/// in N/mm2 out of a table for this very formula, D and the hole Do in mm. factor: for the kind of tap, in
/// steel 1.35 (straight flutes), 1.15 (spiral flutes), 0.95 (spiral point).
/// Errors: missing, out-of-range (a hole outside 0 to the major diameter, a force outside 50 to
/// 20 000 N/mm2, a factor outside 0.1 to 20), does-not-apply (taper thread), those of
/// threadcalc_thread_write, structure-size.
/// Source: a tap maker's published formula; the band and the starts: common practice.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_torque_by_chip_area(
    thread: *const threadcalc_thread_t,
    drill_mm: *const threadcalc_ratio_t,
    force_by_chip_area_n_mm2: f64,
    factor: f64,
    band: *mut threadcalc_torque_band_t,
    band_size: usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let thread = unsafe { input(thread) }?.read()?;
        let drill = unsafe { given(drill_mm, Field::Drill) }?;
        let place = unsafe { SizedOutput::new(band, band_size) }?;
        let force = ForceByChipArea::new(force_by_chip_area_n_mm2)?;
        place.write(threadcalc_torque_band_t::of(&torque_by_chip_area(&thread, drill, force, factor)?));
        Ok(())
    })
}

/// Cutting forces to start from; the tap maker's own replace them. Frozen.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct threadcalc_starting_forces_t {
    /// For threadcalc_torque_by_pitch, in N/mm2.
    pub by_pitch_n_mm2: f64,
    /// For threadcalc_torque_by_chip_area, in N/mm2; NaN where the table has none.
    pub by_chip_area_n_mm2: f64,
    /// 1 if they were read in a published table; 0: from memory of the trade.
    pub is_read: i32,
    /// 0.
    pub reserved: i32,
}

/// The cutting forces of a group of materials to start from. forces_size is
/// sizeof(threadcalc_starting_forces_t).
///
/// Errors: missing, unknown-value, structure-size.
/// Source: a tap maker's published tables, one for each formula; aluminium from memory of the trade.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_starting_forces(
    material: threadcalc_material,
    forces: *mut threadcalc_starting_forces_t,
    forces_size: usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let material = required(material, Material::from_number, Field::Material, Material::CHOICES)?;
        let place = unsafe { SizedOutput::new(forces, forces_size) }?;
        place.write(threadcalc_starting_forces_t {
            by_pitch_n_mm2: material.force_by_pitch().n_mm2(),
            by_chip_area_n_mm2: material.force_by_chip_area().map_or(f64::NAN, ForceByChipArea::n_mm2),
            is_read: i32::from(material.is_read()),
            reserved: 0,
        });
        Ok(())
    })
}

/// A factor that nobody knows better than to a range. Frozen.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct threadcalc_factor_range_t {
    /// Smallest in use.
    pub low: f64,
    /// Where to start from without better knowledge.
    pub start: f64,
    /// Largest in use.
    pub high: f64,
}

/// Writes a range of factors.
///
/// # Safety
/// As for every output of the library.
unsafe fn write_factor(
    factor: FactorRange,
    range: *mut threadcalc_factor_range_t,
    range_size: usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let place = unsafe { SizedOutput::new(range, range_size) }?;
        place.write(threadcalc_factor_range_t { low: factor.low, start: factor.start, high: factor.high });
        Ok(())
    })
}

/// How much more torque a form tap takes than a cutting tap in the same thread: 2 to 3, start at 2.5.
/// range_size is sizeof(threadcalc_factor_range_t).
///
/// Errors: structure-size.
/// Source: a tap maker's published rule; the start, its middle: a judgement.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_forming_factor(
    range: *mut threadcalc_factor_range_t,
    range_size: usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    unsafe { write_factor(FORMING_FACTOR, range, range_size, error) }
}

/// How much more torque a taper pipe tap takes, which cuts on its whole length: 2 to 3, start at 2.5.
/// range_size is sizeof(threadcalc_factor_range_t).
///
/// Errors: structure-size.
/// Source: common practice.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_taper_factor(
    range: *mut threadcalc_factor_range_t,
    range_size: usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    unsafe { write_factor(TAPER_FACTOR, range, range_size, error) }
}

/// The power that a torque takes at a speed, in kW: P = 2 pi M n / 60000.
///
/// Errors: missing, out-of-range (a torque outside 0 to 1 000 000 Nm, a speed outside 0 to 1 000 000 turns
/// per minute).
/// Source: mechanics; derived.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_power_kw(
    torque_nm: f64,
    rpm: *const threadcalc_ratio_t,
    power: *mut f64,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let rpm = unsafe { given(rpm, Field::Rpm) }?;
        let place = unsafe { Output::new(power) }?;
        place.write(power_kw(torque_nm, rpm)?);
        Ok(())
    })
}
