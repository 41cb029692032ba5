//! Depths as a program says them.

use core::ffi::c_char;

use threadcalc_core::{
    DepthRounding, Error, Field, Length, ProgramDepth, Unit, program_depth, program_depth_of_derived,
};

use crate::choices::threadcalc_unit;
use crate::codes::threadcalc_status;
use crate::depth_choices::threadcalc_depth_rounding;
use crate::memory::{SizedOutput, padded_text};
use crate::number::given;
use crate::status::{guard, required, threadcalc_error_t};
use crate::types::threadcalc_ratio_t;

/// A depth as a program says it. Frozen.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct threadcalc_program_depth_t {
    /// The number of the word without sign and letter: no trailing zeros, always a point, "19.75", "21.".
    pub text: [c_char; 32],
    /// What a control reads back from it, in the unit of the program.
    pub value: threadcalc_ratio_t,
    /// The same in mm.
    pub depth_mm: threadcalc_ratio_t,
}

impl threadcalc_program_depth_t {
    fn of(found: &ProgramDepth) -> Self {
        Self {
            text: padded_text(found.text),
            value: threadcalc_ratio_t::of(found.value),
            depth_mm: threadcalc_ratio_t::of(found.depth_mm),
        }
    }
}

/// Unit, decimals and side of a word.
fn word(
    unit: threadcalc_unit,
    decimals: i32,
    rounding: threadcalc_depth_rounding,
) -> Result<(Unit, u8, DepthRounding), Error> {
    let unit = required(unit, Unit::from_number, Field::Unit, Unit::CHOICES)?;
    let decimals = crate::feed::decimals(Length::integer(i64::from(decimals)))?;
    let side = required(rounding, DepthRounding::from_number, Field::DepthRounding, DepthRounding::CHOICES)?;
    Ok((unit, decimals, side))
}

/// A depth in the unit of the program, at its decimals, rounded once to the side that is safe. found_size is
/// sizeof(threadcalc_program_depth_t).
///
/// depth_mm is 0 to 10 000, from the face down; decimals is 0 to 9.
/// Errors: missing, unknown-value, out-of-range, overflow, structure-size.
/// Source: common practice; ISO 6983-1 (numbers with a point); 1 in = 25.4 mm exactly.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_program_depth(
    depth_mm: *const threadcalc_ratio_t,
    unit: threadcalc_unit,
    decimals: i32,
    rounding: threadcalc_depth_rounding,
    found: *mut threadcalc_program_depth_t,
    found_size: usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let depth = unsafe { given(depth_mm, Field::Depth) }?;
        let (unit, decimals, side) = word(unit, decimals, rounding)?;
        let place = unsafe { SizedOutput::new(found, found_size) }?;
        place.write(threadcalc_program_depth_t::of(&program_depth(depth, unit, decimals, side)?));
        Ok(())
    })
}

/// The same of a derived depth, such as that of a drill's point: the nearest 0.000000001 mm is rounded, since
/// the last digits of a double are no depth. found_size is sizeof(threadcalc_program_depth_t).
///
/// Errors: as threadcalc_program_depth; NaN is out-of-range.
/// Source: as threadcalc_program_depth.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_program_depth_of_derived(
    depth_mm: f64,
    unit: threadcalc_unit,
    decimals: i32,
    rounding: threadcalc_depth_rounding,
    found: *mut threadcalc_program_depth_t,
    found_size: usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let (unit, decimals, side) = word(unit, decimals, rounding)?;
        let place = unsafe { SizedOutput::new(found, found_size) }?;
        place.write(threadcalc_program_depth_t::of(&program_depth_of_derived(depth_mm, unit, decimals, side)?));
        Ok(())
    })
}
