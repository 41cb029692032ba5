//! Gears of a spindle and the torque that they hold.

use pyo3::prelude::*;
use threadcalc_core::{self as core, Code, Error, Field, MOST_GEARS, TorquePoint};

use crate::answer::answer;
use crate::error::raise;
use crate::number::{double, exact, wrong_type};

/// A gear: its range of speeds and the torque over it.
#[pyclass(module = "threadcalc", frozen, eq)]
#[derive(Clone, Copy, PartialEq)]
pub struct Gear(core::Gear);

#[pymethods]
impl Gear {
    #[new]
    fn new(lowest_rpm: &Bound<'_, PyAny>, highest_rpm: &Bound<'_, PyAny>, points: &Bound<'_, PyAny>) -> PyResult<Self> {
        let (lowest, highest) = (exact(lowest_rpm, Field::Lowest)?, exact(highest_rpm, Field::Highest)?);
        let given = points.try_iter().map_err(|_| wrong_type(points, Field::TorqueCurve, POINTS))?;
        let points: Vec<_> = given.map(|point| point_of(&point?)).collect::<PyResult<_>>()?;
        core::Gear::new(lowest, highest, &points).map(Self).map_err(raise)
    }

    /// Lowest speed.
    #[getter]
    fn lowest_rpm<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        crate::number::fraction(py, self.0.lowest_rpm())
    }

    /// Highest speed.
    #[getter]
    fn highest_rpm<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        crate::number::fraction(py, self.0.highest_rpm())
    }

    /// The torque at a speed; None outside the range.
    fn torque_nm(&self, rpm: &Bound<'_, PyAny>) -> PyResult<Option<f64>> {
        Ok(self.0.torque_nm(exact(rpm, Field::Rpm)?))
    }

    /// The largest speed of the range at which the curve holds a torque.
    fn fastest_for(&self, torque_nm: &Bound<'_, PyAny>) -> PyResult<Option<f64>> {
        Ok(self.0.fastest_for(double(torque_nm, Field::Torque)?))
    }

    fn __repr__(&self) -> String {
        format!("<Gear {} to {} rpm>", self.0.lowest_rpm(), self.0.highest_rpm())
    }
}

const POINTS: &str = "pairs of rpm and Nm";

/// A point of a torque curve from a pair.
fn point_of(pair: &Bound<'_, PyAny>) -> PyResult<TorquePoint> {
    let wrong = |_| wrong_type(pair, Field::TorqueCurve, POINTS);
    let (rpm, torque): (Bound<'_, PyAny>, Bound<'_, PyAny>) = pair.extract().map_err(wrong)?;
    Ok(TorquePoint { rpm: exact(&rpm, Field::TorqueCurve)?, torque_nm: double(&torque, Field::Torque)? })
}

answer! {
    /// How a speed and a torque fit the gears of a spindle.
    GearFit(core::GearFit) {
        /// The gear with the most torque at the speed, counted from 0.
        gear,
        /// The torque that it holds there.
        torque_nm,
        /// Whether that is enough.
        is_enough,
        /// The largest speed of any gear at which the torque is there.
        fastest_rpm,
    }
}

/// Finds the gear for a torque and a speed.
#[pyfunction]
pub fn gear_fit(gears: &Bound<'_, PyAny>, torque_nm: &Bound<'_, PyAny>, rpm: &Bound<'_, PyAny>) -> PyResult<GearFit> {
    let mut held = Vec::new();
    for gear in gears.try_iter().map_err(|_| wrong_type(gears, Field::Gears, "gears"))? {
        let gear = gear?;
        held.push(gear.cast::<Gear>().map_err(|_| wrong_type(&gear, Field::Gears, "Gear"))?.get().0);
        // One more than the core takes, and it refuses: an endless iterator ends here.
        if held.len() > MOST_GEARS {
            return Err(raise(
                Error::new(Code::OutOfRange, Field::Gears).got(held.len() as f64).within(1.0, MOST_GEARS as f64),
            ));
        }
    }
    core::gear_fit(&held, double(torque_nm, Field::Torque)?, exact(rpm, Field::Rpm)?).map(GearFit).map_err(raise)
}
