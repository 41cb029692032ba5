//! Which standard pitch a lead is.

use super::cut::Basis;
use crate::error::{Code, Error, Field};
use crate::feed::{FeedMode, Unit};
use crate::length::Length;
use crate::named::named;

/// Pitches of ISO 261 in micrometres.
const METRIC_UM: [u32; 25] = [
    200, 250, 300, 350, 400, 450, 500, 600, 700, 750, 800, 1000, 1250, 1500, 1750, 2000, 2500, 3000, 3500, 4000, 4500,
    5000, 5500, 6000, 8000,
];
/// Threads per inch in tenths: ASME B1.1, with 27, 18, 14, 11½ and 8 of ASME B1.20.1, 28, 19, 14 and 11 of
/// ISO 228-1.
const TENTHS_PER_INCH: [u32; 29] = [
    800, 720, 640, 560, 480, 440, 400, 360, 320, 280, 270, 240, 200, 190, 180, 160, 140, 130, 120, 115, 110, 100, 90,
    80, 70, 60, 50, 45, 40,
];

/// Less than half of what parts the nearest two pitches: 0.35 %.
const WITHIN: Length = Length::parts(7, 2000);
/// Two pitches this near to a lead leave it open which of them it is: 0.45 %.
const AMBIGUOUS: Length = Length::parts(9, 2000);
/// The most that may be asked for: half of the lead.
const MOST_WITHIN: Length = Length::parts(1, 2);
/// How many pitches of an answer are listed.
const MOST_MATCHES: usize = 8;
const MOST_LEAD: Length = Length::integer(1000);

named! {
    /// What can be said of a lead.
    pub enum LeadVerdict {
        /// It is one pitch, and no other is near.
        Identified = 1 "identified",
        /// It may be more than one.
        Ambiguous = 2 "ambiguous",
        /// It is none.
        Nonstandard = 3 "nonstandard",
    }
}

/// A standard pitch that a lead may be.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub struct Match {
    /// The pitch in mm.
    pub pitch_mm: Length,
    /// Threads per inch; None for a metric pitch.
    pub tpi: Option<Length>,
    /// Lead over pitch, less 1.
    pub error: Length,
}

/// The standard pitches that a lead may be, the nearest first. Where none is near, the two nearest.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Identified {
    verdict: LeadVerdict,
    matches: [Option<Match>; MOST_MATCHES],
}

impl Identified {
    /// What can be said.
    #[must_use]
    pub const fn verdict(&self) -> LeadVerdict {
        self.verdict
    }

    /// The pitches, the nearest first.
    pub fn matches(&self) -> impl Iterator<Item = &Match> {
        self.matches.iter().flatten()
    }
}

/// Finds the standard pitches that a lead in millimetres may be.
///
/// ```text
/// one pitch within 0.35 %             identified
/// two within 0.45 %, or within more
/// than that if `within` says so       ambiguous
/// else                                nonstandard, with the two nearest
/// ```
///
/// `within` is a relative error, 0.35 % if not given. A lead says nothing of the diameter, and of a thread with
/// several starts nothing of the pitch.
///
/// # Errors
/// [`Code::OutOfRange`] for a lead that is not above 0 and up to 1000 mm, or for `within` not above 0 and up to
/// 0.5; [`Code::Overflow`].
///
/// # Example
/// ```
/// use threadcalc_core::Length;
/// use threadcalc_core::nc::{LeadVerdict, identify};
///
/// let found = identify(Length::new(127, 100)?, None)?;
/// assert_eq!(found.verdict(), LeadVerdict::Identified);
/// assert_eq!(found.matches().next().unwrap().tpi, Some(Length::integer(20)));
/// let found = identify(Length::new(7969, 10_000)?, None)?;
/// assert_eq!(found.verdict(), LeadVerdict::Ambiguous); // 0.8 mm or 32 threads per inch
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// Pitches: ISO 261:1998, ASME B1.1-2003, ASME B1.20.1-1983, ISO 228-1:2000; the rule: derived from the gaps
/// between them.
pub fn identify(lead_mm: Length, within: Option<Length>) -> Result<Identified, Error> {
    if !lead_mm.is_positive() || lead_mm > MOST_LEAD {
        return Err(Error::new(Code::OutOfRange, Field::Lead).got(lead_mm.to_f64()).within(0.0, MOST_LEAD.to_f64()));
    }
    let within = within.unwrap_or(WITHIN);
    if !within.is_positive() || within > MOST_WITHIN {
        return Err(Error::new(Code::OutOfRange, Field::Within)
            .got(within.to_f64())
            .within(0.0, MOST_WITHIN.to_f64())
            .hint_text("a relative error above 0, such as 0.0035"));
    }
    let mut near = Nearest::new();
    for (pitch_mm, tpi) in pitches() {
        near.add(lead_mm, pitch_mm, tpi)?;
    }
    Ok(near.answer(within))
}

/// The same from the words of a program: the lead is F over S, or F itself, in the program's unit.
///
/// `decimals` are those that F was written with and `most_decimals` those that the control takes: with as many, F
/// may be a rounded one, and half of its last digit is added to what is let through.
///
/// # Errors
/// Those of [`identify`]; [`Code::OutOfRange`] for a feed or a speed that is not above 0;
/// [`Code::Missing`] for a feed per minute without a speed.
///
/// # Example
/// ```
/// use threadcalc_core::{FeedMode, Length, Unit};
/// use threadcalc_core::nc::{FedLead, LeadVerdict, identify_fed};
///
/// let mut fed = FedLead::new(Length::new(5, 100)?, Unit::Inch, FeedMode::PerRevolution);
/// (fed.decimals, fed.most_decimals) = (Some(2), Some(2));
/// // F0.05 in two decimals may be 20 threads per inch, 1.25 mm or 19 threads per inch.
/// assert_eq!(identify_fed(&fed)?.verdict(), LeadVerdict::Ambiguous);
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// As [`identify`].
pub fn identify_fed(fed: &FedLead) -> Result<Identified, Error> {
    let positive = |value: Length, field| {
        if value.is_positive() { Ok(value) } else { Err(Error::new(Code::OutOfRange, field).got(value.to_f64())) }
    };
    let feed = positive(fed.feed, Field::Feed)?;
    let basis = match fed.mode {
        FeedMode::PerMinute => Basis::PerMinute,
        FeedMode::PerRevolution => Basis::PerRevolution,
    };
    let speed = match (fed.rpm, fed.mode) {
        (Some(rpm), _) => Some(positive(rpm, Field::Rpm)?),
        (None, FeedMode::PerRevolution) => None,
        (None, FeedMode::PerMinute) => return Err(Error::new(Code::Missing, Field::Rpm)),
    };
    let lead = basis.lead_mm(feed, speed, fed.unit).ok_or(Error::new(Code::Overflow, Field::Lead))?;
    let may_be_rounded = fed.decimals.is_some() && fed.decimals >= fed.most_decimals && fed.most_decimals.is_some();
    let half = fed.decimals.filter(|_| may_be_rounded).and_then(super::number::power_of_ten);
    let widened = half.and_then(|power| Length::new(1, power.checked_mul(2)?).ok()?.over(feed).ok());
    let within = widened.map_or(WITHIN, |half| WITHIN.plus(half).unwrap_or(MOST_WITHIN).min(MOST_WITHIN));
    identify(lead, Some(within))
}

/// What a program says of a lead.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct FedLead {
    /// F as it is written.
    pub feed: Length,
    /// The program's unit.
    pub unit: Unit,
    /// The feed mode.
    pub mode: FeedMode,
    /// S; needed for feed per minute.
    pub rpm: Option<Length>,
    /// Decimals that F is written with.
    pub decimals: Option<u8>,
    /// Decimals that the control takes.
    pub most_decimals: Option<u8>,
}

impl FedLead {
    /// A feed in a unit and a mode.
    #[must_use]
    pub const fn new(feed: Length, unit: Unit, mode: FeedMode) -> Self {
        Self { feed, unit, mode, rpm: None, decimals: None, most_decimals: None }
    }
}

/// Every standard pitch, with its threads per inch.
pub(super) fn pitches() -> impl Iterator<Item = (Length, Option<Length>)> {
    let metric = METRIC_UM.into_iter().map(|um| (Length::parts(um, 1000), None));
    let inch = TENTHS_PER_INCH.into_iter().map(|tenths| {
        // 25.4 mm over tenths of threads: 254 / tenths.
        (Length::parts(254, tenths), Some(Length::parts(tenths, 10)))
    });
    metric.chain(inch)
}

/// The nearest pitches so far, in order of their distance.
struct Nearest {
    held: [Option<Match>; MOST_MATCHES],
}

impl Nearest {
    const fn new() -> Self {
        Self { held: [None; MOST_MATCHES] }
    }

    fn add(&mut self, lead_mm: Length, pitch_mm: Length, tpi: Option<Length>) -> Result<(), Error> {
        // Farther than this no answer needs it, but for the nearest two of a lead that is far from all.
        let error = lead_mm.over(pitch_mm)?.minus(Length::ONE)?;
        let mut next = Some(Match { pitch_mm, tpi, error });
        for slot in &mut self.held {
            let is_nearer = match (next, *slot) {
                (Some(next), Some(held)) => next.error.magnitude() < held.error.magnitude(),
                (Some(_), None) => true,
                (None, _) => false,
            };
            if is_nearer {
                core::mem::swap(slot, &mut next);
            }
        }
        Ok(())
    }

    fn answer(mut self, within: Length) -> Identified {
        let count = |limit: Length, held: &[Option<Match>]| {
            held.iter().flatten().filter(|one| one.error.magnitude() <= limit).count()
        };
        let (hits, close) = (count(within, &self.held), count(AMBIGUOUS.max(within), &self.held));
        let (verdict, shown) = match (hits, close) {
            (1, _) => (LeadVerdict::Identified, 1),
            (2.., _) => (LeadVerdict::Ambiguous, hits),
            (0, 2..) => (LeadVerdict::Ambiguous, close),
            (0, _) => (LeadVerdict::Nonstandard, 2),
        };
        for slot in self.held.iter_mut().skip(shown) {
            *slot = None;
        }
        Identified { verdict, matches: self.held }
    }
}
