//! The speeds that make a feed word exact.

use super::{Unit, lowest_above_highest, product};
use crate::error::{Code, Error, Field};
use crate::length::{Length, Ratio, Rounding, power_of_ten};

/// Whole speeds at which a per-minute feed word is exact, nearest to a speed first.
#[derive(Clone, Debug)]
pub struct ExactSpeeds {
    rpm: Ratio,
    step: i64,
    below: Option<i64>,
    above: Option<i64>,
    lowest: i64,
    highest: i64,
    left: usize,
}

/// Whole speeds within `lowest..=highest` at which the feed word is exact, at most `count` of them,
/// nearest to `rpm` first, the lower one first on a tie; there may be none.
///
/// # Errors
/// [`Code::OutOfRange`] for a lead or speed that is not positive or more than 9 decimals;
/// [`Code::Contradiction`] if `lowest` is above `highest`; [`Code::Overflow`].
///
/// # Example
/// ```
/// use threadcalc_core::{Length, Thread, Unit, exact_speeds};
///
/// let lead = Thread::read(b"5/8-11 UNC")?.lead_mm();
/// let speeds = exact_speeds(lead, Length::integer(445), Unit::Inch, 0, 2, 1, None)?;
/// assert_eq!(speeds.collect::<Vec<_>>(), [440, 451]);
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// Derived: multiples of the denominator of lead × 10^decimals.
pub fn exact_speeds(
    lead_mm: Length,
    rpm: Ratio,
    unit: Unit,
    decimals: u8,
    count: usize,
    lowest: i64,
    highest: Option<i64>,
) -> Result<ExactSpeeds, Error> {
    let power = power_of_ten(decimals)?;
    for (value, field) in [(lead_mm, Field::Lead), (rpm, Field::Rpm)] {
        if !value.is_positive() {
            return Err(Error::new(Code::OutOfRange, field).got(value.to_f64()).hint_text("a number above 0"));
        }
    }
    let highest = highest.unwrap_or(i64::MAX);
    if lowest < 1 {
        return Err(Error::new(Code::OutOfRange, Field::Lowest)
            .got(lowest as f64)
            .within(1.0, f64::NAN)
            .hint_text("a whole speed, 1 or more"));
    }
    if lowest > highest {
        return Err(lowest_above_highest(Length::integer(lowest), Length::integer(highest)));
    }
    let step = exact_step(lead_mm, unit, power)?;
    let floor = rpm.round_to(0, Rounding::Down)?.units();
    let steps = floor.checked_div(step).unwrap_or(0);
    let below = steps.checked_mul(step);
    let above = steps.checked_add(1).and_then(|steps| steps.checked_mul(step));
    let mut speeds = ExactSpeeds { rpm, step, below, above, lowest, highest, left: count };
    speeds.enter_range();
    Ok(speeds)
}

/// The whole speeds with an exact word are the multiples of this one.
fn exact_step(lead_mm: Length, unit: Unit, power: i64) -> Result<i64, Error> {
    let (unit_top, unit_bottom) = unit.parts_of_mm();
    let top = product([lead_mm.numerator(), unit_top, power, 1]);
    let bottom = product([lead_mm.denominator(), unit_bottom, 1, 1]);
    if let (Some(top), Some(bottom)) = (top, bottom) {
        return Ok(Length::new(top, bottom)?.denominator());
    }
    Ok(lead_mm.over(unit.in_mm())?.times(Length::integer(power))?.denominator())
}

/// The whole speeds next below and next above `rpm` at which the feed word is exact and which the control
/// can hold, from half of `rpm` to its double and from `lowest` to `highest`; `None` where there is none.
///
/// All speeds are in revolutions per minute. A control holds the multiples of `step`.
///
/// # Errors
/// [`Code::OutOfRange`] for a lead, speed or step that is not positive or more than 9 decimals;
/// [`Code::Overflow`].
///
/// # Example
/// ```
/// use threadcalc_core::{Length, Thread, Unit, nearest_exact_speeds};
///
/// let lead = Thread::read(b"5/8-11 UNC")?.lead_mm();
/// let near = nearest_exact_speeds(lead, Length::integer(445), Unit::Inch, 0, Length::ONE, None, None)?;
/// assert_eq!(near, (Some(440), Some(451)));
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// Derived: common multiples of the step's numerator and the denominator of lead × 10^decimals.
pub fn nearest_exact_speeds(
    lead_mm: Length,
    rpm: Ratio,
    unit: Unit,
    decimals: u8,
    step: Ratio,
    lowest: Option<Ratio>,
    highest: Option<Ratio>,
) -> Result<(Option<i64>, Option<i64>), Error> {
    let power = power_of_ten(decimals)?;
    for (value, field) in [(lead_mm, Field::Lead), (rpm, Field::Rpm), (step, Field::Step)] {
        if !value.is_positive() {
            return Err(Error::new(Code::OutOfRange, field).got(value.to_f64()).hint_text("a number above 0"));
        }
    }
    // A whole number is a multiple of a fraction in lowest terms when its numerator divides it.
    let exact = exact_step(lead_mm, unit, power)?;
    let shared = Length::new(step.numerator(), exact)?.numerator();
    let Some(step) = exact.checked_mul(shared) else { return Ok((None, None)) };
    let steps =
        |speed: Ratio, rounding| speed.round_to(0, rounding).map(|whole| whole_steps(whole.units(), step, rounding));
    let under = steps(rpm, Rounding::Up)?.saturating_sub(1);
    let over = steps(rpm, Rounding::Down)?.saturating_add(1);
    let most = highest.map_or(Ok(i64::MAX), |highest| steps(highest, Rounding::Down))?;
    let least = lowest.map_or(Ok(1), |lowest| steps(lowest, Rounding::Up))?;
    let multiple = |steps: i64| steps.checked_mul(step).filter(|_| (least.max(1)..=most).contains(&steps));
    let below = multiple(under.min(most)).filter(|below| !rpm.is_more_than((2, 1), Length::integer(*below)));
    let above = multiple(over.max(least)).filter(|above| !Length::integer(*above).is_more_than((2, 1), rpm));
    Ok((below, above))
}

/// A whole speed in steps, rounded down or up.
fn whole_steps(speed: i64, step: i64, rounding: Rounding) -> i64 {
    let whole = speed.checked_div_euclid(step).unwrap_or(0);
    let has_part = speed.checked_rem_euclid(step).is_some_and(|part| part > 0);
    whole.saturating_add(i64::from(has_part && rounding == Rounding::Up))
}

impl ExactSpeeds {
    /// Moves both sides to the nearest multiples inside the range.
    fn enter_range(&mut self) {
        if self.below.is_some_and(|below| below > self.highest) {
            let top = self.highest.checked_div(self.step).and_then(|steps| steps.checked_mul(self.step));
            (self.below, self.above) = (top, None);
        }
        if self.above.is_some_and(|above| above < self.lowest) {
            let steps = self.lowest.checked_add(self.step.saturating_sub(1)).and_then(|sum| sum.checked_div(self.step));
            (self.below, self.above) = (None, steps.and_then(|steps| steps.checked_mul(self.step)));
        }
        self.drop_outside();
    }

    fn drop_outside(&mut self) {
        self.below = self.below.filter(|below| *below >= self.lowest && *below > 0);
        self.above = self.above.filter(|above| *above <= self.highest);
    }
}

impl Iterator for ExactSpeeds {
    type Item = i64;

    fn next(&mut self) -> Option<i64> {
        self.left = self.left.checked_sub(1)?;
        let away = |speed: i64| Length::integer(speed).minus(self.rpm).map(Length::magnitude).ok();
        let lower_first = match (self.below, self.above) {
            (Some(below), Some(above)) => away(below)? <= away(above)?,
            (below, _) => below.is_some(),
        };
        let speed = if lower_first { self.below } else { self.above };
        if lower_first {
            self.below = self.below.and_then(|below| below.checked_sub(self.step));
        } else {
            self.above = self.above.and_then(|above| above.checked_add(self.step));
        }
        self.drop_outside();
        speed
    }
}
