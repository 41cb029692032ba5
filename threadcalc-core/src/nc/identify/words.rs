//! The lead that feed and speed make, and the leads that their rounded digits may stand for.

use super::{Identification, Leads, identify_leads};
use crate::error::{Code, Error, Field};
use crate::feed::{FeedMode, Unit};
use crate::length::{Length, Ratio, power_of_ten};
use crate::number::check_digits;

/// Feed and speed of a program, and how they are written.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct FeedWords {
    /// The feed in the unit of the program, above 0.
    pub feed: Ratio,
    /// Decimals that the feed is written with, 0 to 9; `None` if that is not known.
    pub feed_decimals: Option<u8>,
    /// The most decimals that the control takes in a feed; `None` if that is not known.
    pub most_feed_decimals: Option<u8>,
    /// The speed in turns per minute, above 0; per minute only.
    pub rpm: Option<Ratio>,
    /// Decimals that the speed is written with; `None` if that is not known.
    pub rpm_decimals: Option<u8>,
    /// The most decimals that the control takes in a speed; `None` if that is not known.
    pub most_rpm_decimals: Option<u8>,
    /// Unit of the program.
    pub unit: Unit,
    /// What the feed is counted by.
    pub mode: FeedMode,
}

/// The standard pitches that feed and speed of a program may be.
///
/// The lead is feed / speed, or the feed itself per revolution. A word that is written with all the decimals
/// that the control takes may be rounded: it stands for everything within half of its last digit, and the
/// tolerance is counted from the nearest of these leads. `within` and `starts` as in
/// [`identify`](super::identify).
///
/// # Errors
/// [`Code::Missing`] without a speed per minute, [`Code::Contradiction`] with one per revolution and for a
/// value with more decimals than are said to be written, [`Code::OutOfRange`] for a feed or speed that is not
/// positive or more than 9 decimals, [`Code::Overflow`]; those of [`identify`](super::identify).
///
/// # Example
/// ```
/// use threadcalc_core::nc::{FeedWords, LEAD_WITHIN, identify_feed};
/// use threadcalc_core::{FeedMode, Unit, read_number};
///
/// let words = FeedWords {
///     feed: read_number(b"0.05")?,
///     feed_decimals: Some(2),
///     most_feed_decimals: Some(2),
///     rpm: None,
///     rpm_decimals: None,
///     most_rpm_decimals: None,
///     unit: Unit::Inch,
///     mode: FeedMode::PerRevolution,
/// };
/// let found = identify_feed(&words, LEAD_WITHIN, 1)?;
/// assert_eq!(found.matches().map(|near| near.to_string()).collect::<Vec<_>>(), ["20 TPI", "1.25 mm", "19 TPI"]);
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// ISO 6983-1 (F with G94 and G95); 1 in = 25.4 mm exactly; derived.
pub fn identify_feed(words: &FeedWords, within: Ratio, starts: i64) -> Result<Identification, Error> {
    let feed = Word::new(words.feed, words.feed_decimals, words.most_feed_decimals, Field::Feed)?;
    let speed = match (words.mode, words.rpm) {
        (FeedMode::PerMinute, Some(rpm)) => Word::new(rpm, words.rpm_decimals, words.most_rpm_decimals, Field::Rpm)?,
        (FeedMode::PerMinute, None) => {
            return Err(Error::new(Code::Missing, Field::Rpm).hint_text("a feed per minute needs the speed"));
        }
        (FeedMode::PerRevolution, Some(rpm)) => {
            return Err(Error::new(Code::Contradiction, Field::Rpm)
                .got(rpm.to_f64())
                .hint_text("a feed per revolution is the lead: give no speed"));
        }
        (FeedMode::PerRevolution, None) => Word { value: Length::ONE, half_digit: Length::ZERO },
    };
    let in_mm = |feed: Ratio, speed: Ratio| feed.over(speed)?.times(words.unit.in_mm());
    let leads = || {
        Ok(Leads {
            own: in_mm(feed.value, speed.value)?,
            shortest: in_mm(feed.least()?, speed.most()?)?,
            longest: in_mm(feed.most()?, speed.least()?)?,
        })
    };
    identify_leads(leads().map_err(|error: Error| error.about(Field::Lead))?, within, starts)
}

/// A number of a program and half of its last digit, 0 where it is not rounded.
struct Word {
    value: Ratio,
    half_digit: Ratio,
}

impl Word {
    fn new(value: Ratio, written: Option<u8>, most: Option<u8>, field: Field) -> Result<Self, Error> {
        if !value.is_positive() {
            return Err(Error::new(Code::OutOfRange, field).got(value.to_f64()).hint_text("above 0"));
        }
        check_digits(value, field)?;
        if let Some(most) = most {
            power_of_ten(most)?;
        }
        let Some(written) = written else { return Ok(Self { value, half_digit: Length::ZERO }) };
        let power = power_of_ten(written)?;
        if power.checked_rem(value.denominator()) != Some(0) {
            return Err(Error::new(Code::Contradiction, Field::Decimals)
                .got(f64::from(written))
                .hint_text("the value has more decimals than are said to be written"));
        }
        let is_rounded = most.is_some_and(|most| written >= most);
        let half_digit = if is_rounded { Length::new(1, power.saturating_mul(2))? } else { Length::ZERO };
        Ok(Self { value, half_digit })
    }

    /// Above 0, as the value is at least one whole last digit.
    fn least(&self) -> Result<Ratio, Error> {
        self.value.minus(self.half_digit)
    }

    fn most(&self) -> Result<Ratio, Error> {
        self.value.plus(self.half_digit)
    }
}
