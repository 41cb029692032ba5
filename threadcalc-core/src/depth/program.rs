//! Depths as a program says them: in the machine's unit, rounded once, to the safe side.

use core::fmt::Write;

use super::MOST_MM;
use crate::error::{Code, Error, Field};
use crate::feed::Unit;
use crate::length::{Length, Rounding};
use crate::named::named;
use crate::range::{within, zero_or_more};
use crate::text::Text;

named! {
    /// The side that a depth may be off to.
    pub enum DepthRounding {
        /// Straight threads and drills: never less full thread, never less room.
        Deeper = 1 "deeper",
        /// The first hole of a taper pipe tap: it can be tapped deeper, but not made smaller again.
        Shallower = 2 "shallower",
    }
}

/// A depth as a program says it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct ProgramDepth {
    /// The number of the word without sign and letter: no trailing zeros, always a point, `19.75`, `21.`.
    pub text: Text<24>,
    /// What a control reads back from it, in the unit of the program.
    pub value: Length,
    /// The same in millimetres.
    pub depth_mm: Length,
}

/// A depth in the unit of the program, at its decimals, rounded once to the side that is safe.
///
/// `depth_mm`: from the face down, 0 to 10 000; `decimals`: 0 to 9 (3 for millimetres and 4 for inches are
/// usual). Exact: 21 mm is `0.8268` in, which is 21.00072 mm.
///
/// # Errors
/// [`Code::OutOfRange`], [`Code::Overflow`].
///
/// # Example
/// ```
/// use threadcalc_core::{DepthRounding, Length, Unit, program_depth};
///
/// let tap = program_depth(Length::integer(21), Unit::Inch, 4, DepthRounding::Deeper)?;
/// assert_eq!((tap.text.as_str(), tap.depth_mm.to_string()), ("0.8268", "21.00072".into()));
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// Common practice; ISO 6983-1 (numbers with a point); 1 in = 25.4 mm exactly.
pub fn program_depth(
    depth_mm: Length,
    unit: Unit,
    decimals: u8,
    rounding: DepthRounding,
) -> Result<ProgramDepth, Error> {
    zero_or_more(depth_mm, Field::Depth, MOST_MM)?;
    let side = match rounding {
        DepthRounding::Deeper => Rounding::Up,
        DepthRounding::Shallower => Rounding::Down,
    };
    let value = depth_mm.over(unit.in_mm())?.round_to(decimals, side)?.to_length()?;
    let point = if value.whole().is_some() { "." } else { "" };
    let mut text = Text::new();
    // At most 5 digits, a point and 9 digits.
    write!(text, "{value}{point}").map_err(|_| Error::new(Code::Overflow, Field::Depth))?;
    Ok(ProgramDepth { text, value, depth_mm: value.times(unit.in_mm())? })
}

/// The same of a derived depth, such as that of a drill's point.
///
/// A double carries noise in its last digits that is no depth: the nearest 0.000000001 mm is rounded, so
/// that 26 made of sums of doubles does not become 26.001.
///
/// # Errors
/// As [`program_depth`]; NaN is [`Code::OutOfRange`].
///
/// # Example
/// ```
/// use threadcalc_core::{DepthRounding, Unit, program_depth_of_derived};
///
/// let point = program_depth_of_derived(26.703_872_785, Unit::Mm, 3, DepthRounding::Deeper)?;
/// assert_eq!(point.text.as_str(), "26.704");
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// As [`program_depth`].
pub fn program_depth_of_derived(
    depth_mm: f64,
    unit: Unit,
    decimals: u8,
    rounding: DepthRounding,
) -> Result<ProgramDepth, Error> {
    let depth = within(depth_mm, Field::Depth, 0.0, MOST_MM as f64)?;
    let billionths = libm::rint(depth * 1e9) as i64;
    program_depth(Length::new(billionths, 1_000_000_000)?, unit, decimals, rounding)
}
