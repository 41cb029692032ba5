//! H, L and D limits: the pitch diameter of a ground tap by a letter and a number.

use super::closing_mm;
use crate::error::{Code, Error, Field};
use crate::length::{Length, Ratio, Rounding};
use crate::named::named;
use crate::thread::Thread;

named! {
    /// The letter of a tap's limit.
    pub enum LimitLetter {
        /// Above basic, in steps of 0.0005 in.
        H = 1 "H",
        /// Below basic, in steps of 0.0005 in.
        L = 2 "L",
        /// Above basic on metric taps of the inch system, in steps of 0.013 mm.
        D = 3 "D",
    }
}

/// The largest number that is marked.
const MOST_NUMBER: u8 = 30;
/// Half a thousandth of an inch in mm, and its metric counterpart.
const INCH_STEP: Length = Length::parts(127, 10_000);
const METRIC_STEP: Length = Length::parts(13, 1_000);

/// The limit of a ground tap: `H3`, `D5`.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct TapLimit {
    letter: LimitLetter,
    number: u8,
}

impl TapLimit {
    /// A limit by letter and number.
    ///
    /// # Errors
    /// [`Code::OutOfRange`] for a number outside 1 to 30.
    pub fn new(letter: LimitLetter, number: u8) -> Result<Self, Error> {
        if (1..=MOST_NUMBER).contains(&number) {
            return Ok(Self { letter, number });
        }
        Err(Error::new(Code::OutOfRange, Field::TapLimit).got(f64::from(number)).within(1.0, f64::from(MOST_NUMBER)))
    }

    /// The letter.
    #[must_use]
    pub const fn letter(self) -> LimitLetter {
        self.letter
    }

    /// The number.
    #[must_use]
    pub const fn number(self) -> u8 {
        self.number
    }

    /// The limit that is larger by a length in mm, or by the least that is more.
    pub(super) fn raised(self, by_mm: Length) -> Result<Self, Error> {
        let step = if self.letter == LimitLetter::D { METRIC_STEP } else { INCH_STEP };
        let steps: Ratio = by_mm.over(step)?;
        let number = steps.round_to(0, Rounding::Up)?.units().saturating_add(i64::from(self.number));
        let of_number = Self::new(self.letter, u8::try_from(number).unwrap_or(u8::MAX));
        of_number.map_err(|error| error.got(number as f64))
    }

    /// How far the pitch diameter of the tap may lie above the basic one of the thread, smallest and
    /// largest, in millimetres.
    ///
    /// ```text
    /// H n   (n − 1) × 0.0005 in   to   n × 0.0005 in
    /// L n   −n × 0.0005 in        to   −(n − 1) × 0.0005 in
    /// D n   largest n × 0.013 mm; smallest 0.020 (P 0.8), 0.025 (P 1), 0.031 (P 1.25, 1.5) less
    /// ```
    ///
    /// The smallest of D is `None` at other pitches: the tolerance there has not been read.
    ///
    /// # Errors
    /// [`Code::NotSourced`] for H and L above 1 in, where the steps are wider; [`Code::Overflow`].
    ///
    /// # Example
    /// ```
    /// use threadcalc_core::{LimitLetter, TapLimit, Thread};
    ///
    /// let limit = TapLimit::new(LimitLetter::H, 3)?;
    /// let (smallest, largest) = limit.above_basic_mm(&Thread::read(b"1/4-20")?)?;
    /// assert_eq!(smallest.map(|s| s.to_string()), Some("0.0254".into())); // 0.0010 in
    /// assert_eq!(largest.to_string(), "0.0381"); // 0.0015 in
    /// # Ok::<(), threadcalc_core::Error>(())
    /// ```
    ///
    /// # Source
    /// ASME B94.9 from memory; D as a tap maker's published table gives it for M5 to M10.
    pub fn above_basic_mm(self, thread: &Thread) -> Result<(Option<Length>, Length), Error> {
        if self.letter != LimitLetter::D && thread.major_mm() > Length::INCH {
            return Err(Error::new(Code::NotSourced, Field::TapLimit)
                .hint_text("H and L limits above 1 in have wider steps, which have not been read"));
        }
        let number = Length::integer(i64::from(self.number));
        let below = number.minus(Length::ONE)?;
        match self.letter {
            LimitLetter::H => Ok((Some(below.times(INCH_STEP)?), number.times(INCH_STEP)?)),
            LimitLetter::L => Ok((Some(number.times(INCH_STEP)?.negative()), below.times(INCH_STEP)?.negative())),
            LimitLetter::D => {
                let largest = number.times(METRIC_STEP)?;
                let smallest = match metric_tolerance(thread.pitch_mm()) {
                    Some(tolerance) => Some(largest.minus(tolerance)?),
                    None => None,
                };
                Ok((smallest, largest))
            }
        }
    }

    /// The smallest and the largest pitch diameter of the tap in millimetres; the smallest is `None` where
    /// [`above_basic_mm`](Self::above_basic_mm) has none.
    ///
    /// # Errors
    /// Those of [`above_basic_mm`](Self::above_basic_mm); [`Code::DoesNotApply`] for taper threads and
    /// [`Code::NotSourced`] where the basic pitch diameter has not been read.
    ///
    /// # Example
    /// ```
    /// use threadcalc_core::{LimitLetter, TapLimit, Thread};
    ///
    /// let (smallest, largest) = TapLimit::new(LimitLetter::D, 5)?.pitch_diameter_mm(&Thread::read(b"M8")?)?;
    /// assert_eq!(smallest.map(|s| s.to_string()), Some("7.222".into()));
    /// assert_eq!(largest.to_string(), "7.253");
    /// # Ok::<(), threadcalc_core::Error>(())
    /// ```
    ///
    /// # Source
    /// As [`above_basic_mm`](Self::above_basic_mm); the basic pitch diameter: as [`Thread::limits`].
    pub fn pitch_diameter_mm(self, thread: &Thread) -> Result<(Option<Length>, Length), Error> {
        let basic = thread.basic_pitch_diameter_mm()?;
        let (smallest, largest) = self.above_basic_mm(thread)?;
        let smallest = match smallest {
            Some(smallest) => Some(basic.plus(smallest)?),
            None => None,
        };
        Ok((smallest, basic.plus(largest)?))
    }
}

/// `H3`.
impl core::fmt::Display for TapLimit {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.write_str(self.letter.name())?;
        crate::text::write_f64(f, f64::from(self.number))
    }
}

#[cfg(feature = "serde")]
impl serde::Serialize for TapLimit {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}

/// Tolerance of the tap's pitch diameter under a D limit, where it has been read.
fn metric_tolerance(pitch: Length) -> Option<Length> {
    const READ: [(Length, u32); 4] =
        [(Length::parts(8, 10), 20), (Length::ONE, 25), (Length::parts(5, 4), 31), (Length::parts(3, 2), 31)];
    READ.iter().find(|(listed, _)| *listed == pitch).map(|(_, um)| Length::parts(*um, 1000))
}

/// The number of the smallest H limit whose taps leave room for a plating.
///
/// ```text
/// n = closing / 0.0005 in, rounded up, + 1          closing = 4 × thickness on a 60° thread
/// ```
///
/// Without plating it is H1: taps are chosen larger than that for their life; what the class allows at most
/// is for the gauge.
///
/// # Errors
/// [`Code::OutOfRange`] for a plating outside 0 to 1000 µm or beyond H30, [`Code::NotSourced`] above 1 in.
///
/// # Example
/// ```
/// use threadcalc_core::{Length, Thread, h_limit_for_plating};
///
/// // 0.0003 in = 7.62 µm close the pitch diameter by 0.0012 in: H4 begins at 0.0015 in.
/// let limit = h_limit_for_plating(&Thread::read(b"1/4-20 UNC-2B")?, Length::new(762, 100)?)?;
/// assert_eq!(limit.to_string(), "H4");
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// ASME B94.9, from memory; derived.
pub fn h_limit_for_plating(thread: &Thread, plating_um: Length) -> Result<TapLimit, Error> {
    // H1 begins at the basic diameter.
    let limit = TapLimit { letter: LimitLetter::H, number: 1 }.raised(closing_mm(thread, plating_um)?)?;
    limit.above_basic_mm(thread).map(|_| limit)
}
