//! Spindle speed, torque and power.

use pyo3::prelude::*;
use threadcalc_core::{self as core, FactorRange as Factors, Field, ForceByChipArea, ForceByPitch, Material};

use crate::answer::answer;
use crate::error::raise;
use crate::number::{double, exact, optional_double_of};
use crate::text::choose;
use crate::thread::Thread;

/// The spindle speed at which a diameter in millimetres runs at a surface speed in m/min.
#[pyfunction]
pub fn spindle_speed(diameter_mm: &Bound<'_, PyAny>, surface_speed_m_min: &Bound<'_, PyAny>) -> PyResult<f64> {
    let diameter = exact(diameter_mm, Field::Diameter)?;
    core::spindle_speed(diameter, exact(surface_speed_m_min, Field::SurfaceSpeed)?).map_err(raise)
}

/// The spindle speed at which a diameter in inches runs at a surface speed in feet per minute.
#[pyfunction]
pub fn spindle_speed_feet(diameter_in: &Bound<'_, PyAny>, surface_speed_ft_min: &Bound<'_, PyAny>) -> PyResult<f64> {
    let diameter = exact(diameter_in, Field::Diameter)?;
    core::spindle_speed_feet(diameter, exact(surface_speed_ft_min, Field::SurfaceSpeed)?).map_err(raise)
}

/// The surface speed of a diameter at a spindle speed.
#[pyfunction]
pub fn surface_speed_m_min(diameter_mm: &Bound<'_, PyAny>, rpm: &Bound<'_, PyAny>) -> PyResult<f64> {
    core::surface_speed_m_min(exact(diameter_mm, Field::Diameter)?, exact(rpm, Field::Rpm)?).map_err(raise)
}

answer! {
    /// Torque of a tap: never one number.
    TorqueBand(core::TorqueBand) {
        /// A new tap under good conditions.
        low_nm,
        /// What the formula gives.
        likely_nm,
        /// A new tap under bad conditions.
        high_nm,
        /// A worn tap.
        worn_nm,
    }
}

/// The factor of a torque; 1 if none is given.
fn factor_of(factor: Option<&Bound<'_, PyAny>>) -> PyResult<f64> {
    Ok(optional_double_of(factor, Field::TorqueFactor)?.unwrap_or(1.0))
}

/// The torque of a tap from pitch and diameter, as a band.
#[pyfunction]
#[pyo3(
    signature = (thread, cutting_force_n_mm2, *, factor=None),
    text_signature = "(thread, cutting_force_n_mm2, *, factor=1)"
)]
pub fn torque_by_pitch(
    thread: &Bound<'_, Thread>,
    cutting_force_n_mm2: &Bound<'_, PyAny>,
    factor: Option<&Bound<'_, PyAny>>,
) -> PyResult<TorqueBand> {
    let force = ForceByPitch::new(double(cutting_force_n_mm2, Field::CuttingForce)?).map_err(raise)?;
    core::torque_by_pitch(&thread.get().0, force, factor_of(factor)?).map(TorqueBand).map_err(raise)
}

/// The likely torque of a tap from pitch and diameter.
#[pyfunction]
#[pyo3(
    signature = (thread, cutting_force_n_mm2, *, factor=None),
    text_signature = "(thread, cutting_force_n_mm2, *, factor=1)"
)]
pub fn torque_nm(
    thread: &Bound<'_, Thread>,
    cutting_force_n_mm2: &Bound<'_, PyAny>,
    factor: Option<&Bound<'_, PyAny>>,
) -> PyResult<f64> {
    torque_by_pitch(thread, cutting_force_n_mm2, factor).map(|band| band.0.likely_nm)
}

/// The torque of a cutting tap from the metal that the drilled hole leaves, as a band.
#[pyfunction]
#[pyo3(signature = (thread, cutting_force_n_mm2, *, drill_mm, factor))]
pub fn torque_by_chip_area(
    thread: &Bound<'_, Thread>,
    cutting_force_n_mm2: &Bound<'_, PyAny>,
    drill_mm: &Bound<'_, PyAny>,
    factor: &Bound<'_, PyAny>,
) -> PyResult<TorqueBand> {
    let force = ForceByChipArea::new(double(cutting_force_n_mm2, Field::CuttingForce)?).map_err(raise)?;
    let (drill, factor) = (exact(drill_mm, Field::Drill)?, double(factor, Field::TorqueFactor)?);
    core::torque_by_chip_area(&thread.get().0, drill, force, factor).map(TorqueBand).map_err(raise)
}

/// The power that a torque takes at a speed, in kilowatts.
#[pyfunction]
pub fn power_kw(torque_nm: &Bound<'_, PyAny>, rpm: &Bound<'_, PyAny>) -> PyResult<f64> {
    core::power_kw(double(torque_nm, Field::Torque)?, exact(rpm, Field::Rpm)?).map_err(raise)
}

answer! {
    /// A factor that nobody knows better than to a range.
    FactorRange(Factors) {
        /// Smallest in use.
        low,
        /// Where to start from.
        start,
        /// Largest in use.
        high,
    }
}

/// How much more torque a form tap takes than a cutting tap.
#[pyfunction]
pub fn forming_factor() -> FactorRange {
    FactorRange(core::FORMING_FACTOR)
}

/// How much more torque a taper pipe tap takes.
#[pyfunction]
pub fn taper_factor() -> FactorRange {
    FactorRange(core::TAPER_FACTOR)
}

/// Cutting forces of a group of materials to start from.
#[pyclass(module = "threadcalc", frozen, eq)]
#[derive(Clone, Copy, PartialEq)]
pub struct StartingForces(Material);

#[pymethods]
impl StartingForces {
    /// The group of materials.
    #[getter]
    fn material(&self) -> &'static str {
        self.0.name()
    }

    /// For the torque by pitch, in N/mm2.
    #[getter]
    fn by_pitch_n_mm2(&self) -> f64 {
        self.0.force_by_pitch().n_mm2()
    }

    /// For the torque by chip area, in N/mm2.
    #[getter]
    fn by_chip_area_n_mm2(&self) -> Option<f64> {
        self.0.force_by_chip_area().map(ForceByChipArea::n_mm2)
    }

    /// True if read in a published table; False: from memory of the trade.
    #[getter]
    fn is_read(&self) -> bool {
        self.0.is_read()
    }

    fn __repr__(&self) -> String {
        format!("<StartingForces {} by pitch {} N/mm2>", self.material(), self.by_pitch_n_mm2())
    }
}

/// The groups of materials.
#[pyfunction]
pub fn materials() -> Vec<&'static str> {
    Material::ALL.iter().map(|material| material.name()).collect()
}

/// Cutting forces of a group of materials to start from.
#[pyfunction]
#[pyo3(signature = (material, /))]
pub fn starting_forces(material: &Bound<'_, PyAny>) -> PyResult<StartingForces> {
    choose(material).map(StartingForces)
}
