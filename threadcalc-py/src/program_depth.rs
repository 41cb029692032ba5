//! Depths as a program says them.

use pyo3::prelude::*;
use threadcalc_core::{self as core, Field};

use crate::answer::answer;
use crate::error::raise;
use crate::number::{decimals as decimals_of, double, exact};
use crate::text::choose;

answer! {
    /// A depth as a program says it.
    ProgramDepth(core::ProgramDepth) {
        /// The number of the word without sign and letter.
        text,
        /// What a control reads back from it, in the unit of the program.
        value,
        /// The same in millimetres.
        depth_mm,
    }
}

/// A depth in the unit of the program, rounded once to the side that is safe.
#[pyfunction]
#[pyo3(signature = (depth_mm, *, unit, decimals, rounding))]
pub fn program_depth(
    depth_mm: &Bound<'_, PyAny>,
    unit: &Bound<'_, PyAny>,
    decimals: &Bound<'_, PyAny>,
    rounding: &Bound<'_, PyAny>,
) -> PyResult<ProgramDepth> {
    let depth = exact(depth_mm, Field::Depth)?;
    core::program_depth(depth, choose(unit)?, decimals_of(decimals)?, choose(rounding)?)
        .map(ProgramDepth)
        .map_err(raise)
}

/// The same of a derived depth, whose last digits are no depth.
#[pyfunction]
#[pyo3(signature = (depth_mm, *, unit, decimals, rounding))]
pub fn program_depth_of_derived(
    depth_mm: &Bound<'_, PyAny>,
    unit: &Bound<'_, PyAny>,
    decimals: &Bound<'_, PyAny>,
    rounding: &Bound<'_, PyAny>,
) -> PyResult<ProgramDepth> {
    let depth = double(depth_mm, Field::Depth)?;
    core::program_depth_of_derived(depth, choose(unit)?, decimals_of(decimals)?, choose(rounding)?)
        .map(ProgramDepth)
        .map_err(raise)
}
