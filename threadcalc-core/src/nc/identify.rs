//! Which standard pitch the lead of a program is.
//!
//! Exact throughout: leads, errors and tolerances are ratios, and no decision is taken on a double. More
//! than one start is never inferred, and a lead alone never gives a diameter.

mod words;

use core::fmt;

pub use words::{FeedWords, identify_feed};

use crate::error::{Code, Error, Field};
use crate::form::Form;
use crate::length::{Length, Ratio, Rounding};
use crate::motion::MOST_LEAD;
use crate::named::named;
use crate::number::check_digits;
use crate::range::above_zero;
use crate::series::{ListedPitch, PITCHES, PitchSystems, threads_of_form};
use crate::thread::{LARGEST_DIAMETER_MM, MOST_STARTS, Thread};

/// How far a lead may be off a pitch that it is identified with: less than half of the smallest gap
/// between two pitches, 0.8 mm and 32 threads per inch.
pub const LEAD_WITHIN: Ratio = Length::parts(7, 2000);
/// Between two pitches that are both this near, neither is the lead's.
const AMBIGUOUS_WITHIN: Ratio = Length::parts(9, 2000);
/// Two leads nearer than this are one.
const EXACT_WITHIN: Ratio = Length::parts(1, 1_000_000);
/// Beyond this, neighbours of neighbours would do.
const MOST_WITHIN: Ratio = Length::parts(1, 4);
/// As many matches as one line of a report has room for.
const MOST_WRITTEN: usize = 4;
/// Half a thousandth of an inch: tables of tools write diameters no finer.
const DIAMETER_WITHIN_MM: Length = Length::parts(127, 10_000);

named! {
    /// What a lead says of the thread.
    pub enum LeadVerdict {
        /// One pitch is near.
        Identified = 1 "identified",
        /// More than one pitch may be meant.
        Ambiguous = 2 "ambiguous",
        /// No pitch is near.
        Nonstandard = 3 "nonstandard",
    }
}

/// A standard pitch and how far a lead is from it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub struct Match {
    /// The pitch in millimetres.
    pub pitch_mm: Length,
    /// Its threads per inch; `None` for a metric pitch.
    pub tpi: Option<Length>,
    /// The systems whose tables list it.
    pub systems: PitchSystems,
    /// `lead / (pitch × starts) − 1`; positive means that the lead is too long.
    pub lead_error: Ratio,
    /// Whether the lead, or one that its rounded words stand for, is within the tolerance.
    pub is_within: bool,
}

impl Match {
    /// Whether the lead is this pitch to one in a million.
    #[must_use]
    pub fn is_exact(&self) -> bool {
        self.lead_error.magnitude() <= EXACT_WITHIN
    }
}

/// `0.8 mm`, `32 TPI`; the alternate form `{:#}` has the error with it, `32 TPI (+0.397 %)`.
impl fmt::Display for Match {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let (number, unit) = match self.tpi {
            Some(per_inch) => (per_inch, " TPI"),
            None => (self.pitch_mm, " mm"),
        };
        fmt::Display::fmt(&number, f)?;
        f.write_str(unit)?;
        if f.alternate() {
            let percent = self.lead_error.times(Length::integer(100));
            if let Ok(percent) = percent.and_then(|percent| percent.round_to(3, Rounding::HalfEven)) {
                write!(f, " ({}{percent} %)", if percent.units() > 0 { "+" } else { "" })?;
            }
        }
        Ok(())
    }
}

/// The standard pitches that a lead may be.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Identification {
    lead: Leads,
    /// The same over one start.
    pitch: Leads,
    within: Ratio,
    starts: u8,
    hits: u8,
    verdict: LeadVerdict,
}

/// A lead, and the shortest and longest that its words may stand for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
struct Leads {
    own: Length,
    shortest: Length,
    longest: Length,
}

impl Leads {
    const fn one(lead: Length) -> Self {
        Self { own: lead, shortest: lead, longest: lead }
    }

    fn over(self, starts: Length) -> Result<Self, Error> {
        let part = |lead: Length| lead.over(starts).map_err(|error| error.about(Field::Lead));
        Ok(Self { own: part(self.own)?, shortest: part(self.shortest)?, longest: part(self.longest)? })
    }

    /// Whether one of them is within the tolerance of a pitch; an exact one always is.
    fn are_near(self, pitch: Length, within: Ratio) -> bool {
        let Ok(off) = pitch.times(within.max(EXACT_WITHIN)) else { return false };
        pitch.plus(off).is_ok_and(|most| self.shortest <= most)
            && pitch.minus(off).is_ok_and(|least| self.longest >= least)
    }
}

/// The standard pitches that a lead may be.
///
/// `lead_mm` in millimetres, above 0 and up to 1000; `within` the relative tolerance, 0 to 0.25, usually
/// [`LEAD_WITHIN`]; `starts` as they are declared, else 1: more are never inferred, and a lead alone never
/// gives a diameter. One pitch within the tolerance is identified, more are ambiguous, and so are two within
/// 0.45 % where the nearest is not within 0.35 %.
///
/// A holder that is under-fed on purpose shortens the lead by more than pitches lie apart: use the declared
/// thread there.
///
/// # Errors
/// [`Code::OutOfRange`] for a lead, tolerance or number of starts outside its range; [`Code::Overflow`] for
/// more digits than a program has.
///
/// # Example
/// ```
/// use threadcalc_core::nc::{LEAD_WITHIN, LeadVerdict, identify};
/// use threadcalc_core::read_number;
///
/// let found = identify(read_number(b"1.8143")?, LEAD_WITHIN, 1)?;
/// assert_eq!(found.verdict(), LeadVerdict::Identified);
/// assert_eq!(found.matches().map(|near| near.to_string()).collect::<Vec<_>>(), ["14 TPI"]);
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// The pitches of ISO 261, ASME B1.1, ISO 228-1, ISO 7-1, ASME B1.20.1 and B1.20.3; derived.
pub fn identify(lead_mm: Length, within: Ratio, starts: i64) -> Result<Identification, Error> {
    identify_leads(Leads::one(lead_mm), within, starts)
}

/// The same of a lead whose feed may be off by half of its last digit, in parts of the feed.
pub(super) fn identify_rounded(lead_mm: Length, half_digit: Ratio) -> Result<Identification, Error> {
    let off = lead_mm.times(half_digit)?;
    let lead = Leads { own: lead_mm, shortest: lead_mm.minus(off)?, longest: lead_mm.plus(off)? };
    identify_leads(lead, LEAD_WITHIN, 1)
}

fn identify_leads(lead: Leads, within: Ratio, starts: i64) -> Result<Identification, Error> {
    above_zero(lead.own, Field::Lead, MOST_LEAD)?;
    if within.is_negative() || within > MOST_WITHIN {
        return Err(Error::new(Code::OutOfRange, Field::Within)
            .got(within.to_f64())
            .within(0.0, MOST_WITHIN.to_f64())
            .hint_text("a part of the lead: 0.0035 is 0.35 %"));
    }
    check_digits(lead.own, Field::Lead)?;
    check_digits(within, Field::Within)?;
    let count = checked_starts(starts)?;
    let pitch = lead.over(Length::integer(starts))?;
    let near = |listed: &ListedPitch| pitch.are_near(listed.mm(), within);
    let (finer, coarser) = around(pitch.own);
    let too_fine = finer.partition_point(|listed| !near(listed));
    let hits = finer.len().saturating_sub(too_fine).saturating_add(coarser.partition_point(near));
    let verdict = match hits {
        0 | 1 if is_between(pitch.own) => LeadVerdict::Ambiguous,
        0 => LeadVerdict::Nonstandard,
        1 => LeadVerdict::Identified,
        _ => LeadVerdict::Ambiguous,
    };
    Ok(Identification { lead, pitch, within, starts: count, hits: u8::try_from(hits).unwrap_or(u8::MAX), verdict })
}

fn checked_starts(starts: i64) -> Result<u8, Error> {
    let count = u8::try_from(starts).ok().filter(|_| (1..=MOST_STARTS).contains(&starts));
    count.ok_or(Error::new(Code::OutOfRange, Field::Starts).got(starts as f64).within(1.0, MOST_STARTS as f64))
}

/// The listed pitches up to this one, and those above it.
fn around(pitch: Length) -> (&'static [ListedPitch], &'static [ListedPitch]) {
    let place = PITCHES.partition_point(|listed| listed.mm() <= pitch);
    PITCHES.split_at_checked(place).unwrap_or((&PITCHES, &[]))
}

/// Whether two pitches are near and neither is near enough, whatever the tolerance asked for.
fn is_between(pitch: Length) -> bool {
    let mut errors = Outward::from(pitch).map(|(_, error)| error.magnitude());
    errors.next().is_some_and(|nearest| nearest > LEAD_WITHIN)
        && errors.next().is_some_and(|second| second <= AMBIGUOUS_WITHIN)
}

/// The listed pitches and a lead's errors from them, nearest first.
#[derive(Clone)]
struct Outward {
    pitch: Length,
    finer: &'static [ListedPitch],
    coarser: &'static [ListedPitch],
}

impl Outward {
    fn from(pitch: Length) -> Self {
        let (finer, coarser) = around(pitch);
        Self { pitch, finer, coarser }
    }

    fn error(&self, listed: Option<&ListedPitch>) -> Option<Ratio> {
        self.pitch.over(listed?.mm()).and_then(|ratio| ratio.minus(Length::ONE)).ok()
    }
}

impl Iterator for Outward {
    type Item = (ListedPitch, Ratio);

    fn next(&mut self) -> Option<Self::Item> {
        let (below, above) = (self.error(self.finer.last()), self.error(self.coarser.first()));
        let finer_first = match (below, above) {
            (Some(below), Some(above)) => below.magnitude() <= above.magnitude(),
            (below, _) => below.is_some(),
        };
        if finer_first {
            let (listed, finer) = self.finer.split_last()?;
            self.finer = finer;
            Some((*listed, below?))
        } else {
            let (listed, coarser) = self.coarser.split_first()?;
            self.coarser = coarser;
            Some((*listed, above?))
        }
    }
}

impl Identification {
    /// What the lead says of the thread.
    #[must_use]
    pub const fn verdict(&self) -> LeadVerdict {
        self.verdict
    }

    /// The lead in millimetres.
    #[must_use]
    pub const fn lead_mm(&self) -> Length {
        self.lead.own
    }

    /// The shortest lead in millimetres that rounded words may stand for; else the lead.
    #[must_use]
    pub const fn shortest_lead_mm(&self) -> Length {
        self.lead.shortest
    }

    /// The longest lead in millimetres that rounded words may stand for; else the lead.
    #[must_use]
    pub const fn longest_lead_mm(&self) -> Length {
        self.lead.longest
    }

    /// The starts that were declared.
    #[must_use]
    pub const fn starts(&self) -> u8 {
        self.starts
    }

    /// The pitches that the lead may be, nearest first and the finer one first on a tie: those within the
    /// tolerance; where there is none, or one that another is as near as, the two nearest.
    ///
    /// An exact one stands first, and the others behind it are what rounding may have made of it.
    pub fn matches(&self) -> impl Iterator<Item = Match> + Clone + use<> {
        let (pitch, within) = (self.pitch, self.within);
        let by_tolerance = self.hits > 1 || self.verdict == LeadVerdict::Identified;
        let count = if by_tolerance { usize::from(self.hits) } else { 2 };
        let all = Outward::from(pitch.own).map(move |(listed, lead_error)| Match {
            pitch_mm: listed.mm(),
            tpi: listed.threads_per_inch(),
            systems: listed.systems(),
            lead_error,
            is_within: pitch.are_near(listed.mm(), within),
        });
        all.filter(move |near| near.is_within || !by_tolerance).take(count)
    }
}

/// The first four matches with their errors: `0.8 mm (-0.388 %); 32 TPI (+0.397 %)`.
impl fmt::Display for Identification {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let mut between = "";
        for near in self.matches().take(MOST_WRITTEN) {
            write!(f, "{between}{near:#}")?;
            between = "; ";
        }
        Ok(())
    }
}

/// The standard threads of a pitch and about a diameter, with these starts, in the order of
/// [`standard_threads`](crate::standard_threads).
///
/// `pitch_mm` as a match gives it, `diameter_mm` as a table of tools or a comment gives it, both in
/// millimetres: a basic major diameter within 0.0127 mm (0.0005 in) of it is the same. Pipe threads have one
/// start. MJ, UNR and UNJ have the diameters and pitches of M and UN and are not told apart by them.
///
/// # Errors
/// [`Code::OutOfRange`] for a pitch, diameter or number of starts outside its range; [`Code::Overflow`] for
/// more digits than a drawing has.
///
/// # Example
/// ```
/// use threadcalc_core::nc::threads_of_pitch;
/// use threadcalc_core::{Length, read_number};
///
/// let threads = threads_of_pitch(Length::new(127, 160)?, read_number(b"4.83")?, 1)?;
/// assert_eq!(threads.map(|thread| thread.to_string()).collect::<Vec<_>>(), ["10-32 UNF"]);
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// Those of [`standard_threads`](crate::standard_threads); the room of the diameter is derived from three
/// decimals of an inch.
pub fn threads_of_pitch(
    pitch_mm: Length,
    diameter_mm: Length,
    starts: i64,
) -> Result<impl Iterator<Item = Thread> + Clone, Error> {
    let pitch = above_zero(pitch_mm, Field::Pitch, MOST_LEAD)?;
    let diameter = above_zero(diameter_mm, Field::Diameter, LARGEST_DIAMETER_MM)?;
    check_digits(diameter, Field::Diameter)?;
    checked_starts(starts)?;
    let about = |error: Error| error.about(Field::Diameter);
    let least = diameter.minus(DIAMETER_WITHIN_MM).map_err(about)?;
    let most = diameter.plus(DIAMETER_WITHIN_MM).map_err(about)?;
    let forms = Form::ALL.iter().copied().filter(|form| !form.repeats_sizes());
    let is_wanted = move |major, of_thread| of_thread == pitch && (least..=most).contains(&major);
    let listed = forms.flat_map(move |form| threads_of_form(form, is_wanted));
    Ok(listed.filter_map(move |thread| thread.with_starts(starts).ok()))
}
