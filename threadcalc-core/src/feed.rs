//! The synchronised feed: the word a control reads and what it is worth.

mod exact;

use core::fmt;

pub use exact::{ExactSpeeds, exact_speeds, nearest_exact_speeds};

use crate::error::{Code, Error, Field};
use crate::length::{Decimal, Length, Ratio, Rounding, power_of_ten};
use crate::named::named;
use crate::text::Text;

named! {
    /// The unit the machine is set to. Never has a default.
    pub enum Unit {
        /// Millimetres (G21).
        Mm = 1 "mm",
        /// Inches (G20).
        Inch = 2 "inch",
    }
}

impl Unit {
    /// One of this unit in millimetres.
    #[must_use]
    pub const fn in_mm(self) -> Length {
        match self {
            Self::Mm => Length::ONE,
            Self::Inch => Length::INCH,
        }
    }

    /// One millimetre in this unit, as numerator and denominator.
    const fn parts_of_mm(self) -> (i64, i64) {
        match self {
            Self::Mm => (1, 1),
            Self::Inch => (5, 127),
        }
    }
}

named! {
    /// What the feed is counted by. Never has a default.
    pub enum FeedMode {
        /// Units per minute (G94).
        PerMinute = 1 "per_minute",
        /// Units per revolution (G95).
        PerRevolution = 2 "per_revolution",
    }
}

/// The speed that the control will really hold: rounded down to its step, never up.
///
/// `rpm`, `step`, `lowest` and `highest` in revolutions per minute, exact. A speed above `highest`
/// comes down to it.
///
/// # Errors
/// [`Code::OutOfRange`] if a speed or the step is not positive, or nothing is left above `lowest`;
/// [`Code::Contradiction`] if `lowest` is above `highest`.
///
/// # Example
/// ```
/// use threadcalc_core::{Length, programmed_speed, read_number};
///
/// let held = programmed_speed(read_number(b"1000.3")?, Length::ONE, None, None)?;
/// assert_eq!(held, Length::integer(1000));
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// Common practice: controls drop the part of an S word that is finer than their step.
pub fn programmed_speed(
    rpm: Ratio,
    step: Ratio,
    lowest: Option<Ratio>,
    highest: Option<Ratio>,
) -> Result<Ratio, Error> {
    for (value, field) in
        [(Some(rpm), Field::Rpm), (Some(step), Field::Step), (lowest, Field::Lowest), (highest, Field::Highest)]
    {
        if let Some(value) = value.filter(|value| !value.is_positive()) {
            return Err(Error::new(Code::OutOfRange, field).got(value.to_f64()).hint_text("a speed in rpm above 0"));
        }
    }
    if let (Some(lowest), Some(highest)) = (lowest, highest) {
        if lowest > highest {
            return Err(lowest_above_highest(lowest, highest));
        }
    }
    held_speed(rpm, step, lowest, highest)?.ok_or_else(|| {
        Error::new(Code::OutOfRange, Field::Rpm)
            .got(rpm.to_f64())
            .within(lowest.unwrap_or(step).to_f64(), highest.map_or(f64::NAN, Length::to_f64))
            .hint_text("no programmable speed is left: speeds are rounded down to the step")
    })
}

/// The same of values that are known to be right; None where no programmable speed is left.
pub(crate) fn held_speed(
    rpm: Ratio,
    step: Ratio,
    lowest: Option<Ratio>,
    highest: Option<Ratio>,
) -> Result<Option<Ratio>, Error> {
    let wanted = highest.map_or(rpm, |highest| rpm.min(highest));
    let held = wanted.down_to_multiple(step)?;
    Ok(Some(held).filter(|held| *held >= lowest.unwrap_or(step) && held.is_positive()))
}

fn lowest_above_highest(lowest: Ratio, highest: Ratio) -> Error {
    Error::new(Code::Contradiction, Field::Lowest)
        .got(lowest.to_f64())
        .within(f64::NAN, highest.to_f64())
        .hint_text("the lowest speed is above the highest")
}

/// A synchronised feed: its word, the value a control reads back from it, and its error.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Feed {
    word: Text<24>,
    value: Decimal,
    unit: Unit,
    mode: FeedMode,
    lead: Length,
    rpm: Option<Ratio>,
    is_exact: bool,
}

/// The feed of a lead: `lead × rpm` per minute, or the lead itself per revolution.
///
/// `lead_mm` in millimetres, `rpm` the programmed speed (only per minute), `decimals` 0 to 9 of the
/// feed word. Rounded once, half to even. The text has no trailing zeros, always a point and one
/// digit before it, no exponent and no locale.
///
/// # Errors
/// [`Code::Missing`] without a speed per minute, [`Code::Contradiction`] with one per revolution,
/// [`Code::OutOfRange`] for a lead or speed that is not positive or more than 9 decimals,
/// [`Code::FeedRoundsToZero`], [`Code::Overflow`].
///
/// # Example
/// ```
/// use threadcalc_core::{FeedMode, Length, Thread, Unit, feed};
///
/// let lead = Thread::read(b"1/4-20 UNC")?.lead_mm();
/// let feed = feed(lead, Some(Length::integer(720)), Unit::Mm, FeedMode::PerMinute, 3)?;
/// assert_eq!(feed.word(), "F914.4");
/// assert_eq!(feed.lead_error()?, Length::ZERO);
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// ISO 6983-1 (F with G94 and G95); 1 in = 25.4 mm exactly.
pub fn feed(lead_mm: Length, rpm: Option<Ratio>, unit: Unit, mode: FeedMode, decimals: u8) -> Result<Feed, Error> {
    if !lead_mm.is_positive() {
        return Err(Error::new(Code::OutOfRange, Field::Lead).got(lead_mm.to_f64()).hint_text("a lead in mm above 0"));
    }
    let speed = match (mode, rpm) {
        (FeedMode::PerMinute, Some(rpm)) if rpm.is_positive() => rpm,
        (FeedMode::PerMinute, Some(rpm)) => {
            return Err(Error::new(Code::OutOfRange, Field::Rpm).got(rpm.to_f64()).hint_text("a speed in rpm above 0"));
        }
        (FeedMode::PerMinute, None) => {
            return Err(Error::new(Code::Missing, Field::Rpm).hint_text("a feed per minute needs the programmed speed"));
        }
        (FeedMode::PerRevolution, Some(rpm)) => {
            return Err(Error::new(Code::Contradiction, Field::Rpm)
                .got(rpm.to_f64())
                .hint_text("a feed per revolution is the lead: give no speed"));
        }
        (FeedMode::PerRevolution, None) => Length::ONE,
    };
    let (value, is_exact) = rounded(lead_mm, speed, unit, decimals)?;
    if value.units() == 0 {
        return Err(Error::new(Code::FeedRoundsToZero, Field::Decimals)
            .got(f64::from(decimals))
            .hint_text("more decimals, or a higher speed"));
    }
    Ok(Feed { word: feed_word(value), value, unit, mode, lead: lead_mm, rpm, is_exact })
}

/// Lead × speed in the unit, rounded half to even, and whether it was so before.
fn rounded(lead: Length, speed: Ratio, unit: Unit, decimals: u8) -> Result<(Decimal, bool), Error> {
    let power = power_of_ten(decimals)?;
    let (unit_top, unit_bottom) = unit.parts_of_mm();
    let top = product([lead.numerator(), speed.numerator(), power, unit_top]);
    let bottom = product([lead.denominator(), speed.denominator(), unit_bottom, 1]);
    if let (Some(top), Some(bottom)) = (top, bottom) {
        // The usual case: everything fits in 64 bits and one machine division does it.
        if let (Some(quotient), Some(rest)) = (top.checked_div(bottom), top.checked_rem(bottom)) {
            let twice = rest.cmp(&bottom.wrapping_sub(rest));
            let up = twice.is_gt() || (twice.is_eq() && quotient & 1 == 1);
            return Ok((Decimal::new(quotient.saturating_add(i64::from(up)), decimals)?, rest == 0));
        }
    }
    let exact = lead.times(speed)?.over(unit.in_mm())?;
    let value = exact.round_to(decimals, Rounding::HalfEven)?;
    Ok((value, value.to_length()? == exact))
}

fn product(factors: [i64; 4]) -> Option<i64> {
    factors.into_iter().try_fold(1_i64, i64::checked_mul)
}

/// `F914.4`, `F750.`, `F0.05`.
fn feed_word(value: Decimal) -> Text<24> {
    Text::with_letter(b'F', value.without_zeros(), true)
}

impl Feed {
    /// The word, `F914.4`.
    #[must_use]
    pub fn word(&self) -> &str {
        self.word.as_str()
    }

    /// The word as a text held inline.
    #[must_use]
    pub const fn word_text(&self) -> Text<24> {
        self.word
    }

    /// The number of the word, `914.4`.
    #[must_use]
    pub fn text(&self) -> &str {
        self.word().get(1..).unwrap_or("")
    }

    /// The unit of the word.
    #[must_use]
    pub const fn unit(&self) -> Unit {
        self.unit
    }

    /// The feed mode of the word.
    #[must_use]
    pub const fn mode(&self) -> FeedMode {
        self.mode
    }

    /// The decimals that it was rounded to.
    pub(crate) const fn decimals(&self) -> u8 {
        self.value.decimals()
    }

    /// The lead that it was made for, in millimetres.
    pub(crate) const fn lead_mm(&self) -> Length {
        self.lead
    }

    /// The speed that it was made for; None per revolution.
    pub(crate) const fn rpm(&self) -> Option<Ratio> {
        self.rpm
    }

    /// What a control reads back from the text, exact, in the unit of the word.
    ///
    /// # Errors
    /// None for a feed made by [`feed`]: its digits fit.
    pub fn value(&self) -> Result<Ratio, Error> {
        self.value.to_length()
    }

    /// The feed before rounding, exact, in the unit of the word.
    ///
    /// # Errors
    /// [`Code::Overflow`] if the exact fraction does not fit in 64-bit parts.
    pub fn exact(&self) -> Result<Ratio, Error> {
        let per_minute = self.rpm.map_or(Ok(self.lead), |rpm| self.lead.times(rpm))?;
        per_minute.over(self.unit.in_mm())
    }

    /// `value / exact − 1`, exact; positive means the programmed lead is too long.
    ///
    /// # Errors
    /// [`Code::Overflow`] if the exact fraction does not fit in 64-bit parts.
    pub fn lead_error(&self) -> Result<Ratio, Error> {
        if self.is_exact {
            return Ok(Length::ZERO);
        }
        if let Some((value, exact)) = self.word_and_exact() {
            // The usual case: both over the one denominator.
            return Length::new(value.saturating_sub(exact), exact);
        }
        self.value()?.over(self.exact()?)?.minus(Length::ONE)
    }

    /// Whether the word is the feed before rounding.
    pub(crate) const fn is_exact(&self) -> bool {
        self.is_exact
    }

    /// The word and the feed before rounding over one denominator, where both fit.
    fn word_and_exact(&self) -> Option<(i64, i64)> {
        let speed = self.rpm.unwrap_or(Length::ONE);
        let (unit_top, unit_bottom) = self.unit.parts_of_mm();
        let power = power_of_ten(self.value.decimals()).ok()?;
        let value = product([self.value.units(), self.lead.denominator(), speed.denominator(), unit_bottom])?;
        let exact = product([power, self.lead.numerator(), speed.numerator(), unit_top])?;
        Some((value, exact))
    }

    /// The lead that will really be cut, in millimetres.
    ///
    /// # Errors
    /// [`Code::Overflow`] if the exact fraction does not fit in 64-bit parts.
    pub fn lead_cut_mm(&self) -> Result<Length, Error> {
        let speed = self.rpm.unwrap_or(Length::ONE);
        let (unit_top, unit_bottom) = self.unit.parts_of_mm();
        let power = power_of_ten(self.value.decimals())?;
        let top = product([self.value.units(), unit_bottom, speed.denominator(), 1]);
        let bottom = product([power, unit_top, speed.numerator(), 1]);
        if let (Some(top), Some(bottom)) = (top, bottom) {
            return Length::new(top, bottom);
        }
        let mm = self.value()?.times(self.unit.in_mm())?;
        self.rpm.map_or(Ok(mm), |rpm| mm.over(rpm))
    }

    /// `lead_error × depth`, in millimetres: how far the tap is from true at that depth.
    ///
    /// # Errors
    /// [`Code::OutOfRange`] for a negative depth, [`Code::Overflow`].
    pub fn axial_error_mm(&self, depth_mm: Length) -> Result<Length, Error> {
        not_negative(depth_mm)?;
        self.lead_error()?.times(depth_mm)
    }

    /// The same with the lead error at hand.
    pub(crate) fn axial_error_of(lead_error: Ratio, depth_mm: Length) -> Result<Length, Error> {
        not_negative(depth_mm)?;
        lead_error.times(depth_mm)
    }
}

fn not_negative(depth_mm: Length) -> Result<(), Error> {
    if depth_mm.is_negative() {
        return Err(Error::new(Code::OutOfRange, Field::Depth)
            .got(depth_mm.to_f64())
            .hint_text("a depth in mm, 0 or more"));
    }
    Ok(())
}

/// The word.
impl fmt::Display for Feed {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.word())
    }
}
