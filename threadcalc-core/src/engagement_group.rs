//! ISO 965-1: short, normal and long engagement of metric threads, and the classes recommended for each.

use crate::error::{Code, Error, Field};
use crate::form::Form;
use crate::length::Length;
use crate::limits::{Confidence, LONGEST_ENGAGEMENT_MM};
use crate::named::named;
use crate::range::above_zero;
use crate::thread::{Side, Thread};

named! {
    /// How long a thread engages, beside its diameter and pitch.
    pub enum EngagementGroup {
        /// Short.
        Short = 1 "S",
        /// Normal: what the classes of tolerance are made for.
        Normal = 2 "N",
        /// Long.
        Long = 3 "L",
    }
}

named! {
    /// What a thread is for, where a class is recommended.
    pub enum FitQuality {
        /// Precision threads, where the fit may vary little.
        Fine = 1 "fine",
        /// General use.
        Medium = 2 "medium",
        /// Where threads are hard to make: hot rolled bars, long blind holes.
        Coarse = 3 "coarse",
    }
}

/// Lengths of normal engagement of one diameter and pitch, and the group of a length.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub struct EngagementLengths {
    /// The group of the length that was asked for.
    pub group: EngagementGroup,
    /// Normal is longer than this; up to this it is short.
    pub normal_over_mm: Length,
    /// Normal is up to this; more is long.
    pub normal_to_mm: Length,
    /// Standard, edition and table or rule.
    pub source: &'static str,
    /// How sure the lengths are.
    pub confidence: Confidence,
}

/// Pitch in µm; normal over and up to, in 0.1 mm.
type Row = (u16, u16, u16);

struct Step {
    /// The smallest diameter of the step, in µm: the step is above it.
    over_um: u32,
    to_um: u32,
    rows: &'static [Row],
}

const fn step(over_um: u32, to_um: u32, rows: &'static [Row]) -> Step {
    Step { over_um, to_um, rows }
}

/// Machinery's Handbook 27 table 7 (p. 1792); the first step from a reprint of ISO 965-2 (M1, M1.2, M1.4).
const STEPS: [Step; 9] = [
    step(990, 1_400, &[(250, 6, 17), (300, 7, 20)]),
    step(1_400, 2_800, &[(200, 5, 15), (250, 6, 19), (350, 8, 26), (400, 10, 30), (450, 13, 38)]),
    step(2_800, 5_600, &[(350, 10, 30), (500, 15, 45), (600, 17, 50), (700, 20, 60), (750, 22, 67), (800, 25, 75)]),
    step(5_600, 11_200, &[(750, 24, 71), (1_000, 30, 90), (1_250, 40, 120), (1_500, 50, 150)]),
    step(
        11_200,
        22_400,
        &[(1_000, 38, 110), (1_250, 45, 130), (1_500, 56, 160), (1_750, 60, 180), (2_000, 80, 240), (2_500, 100, 300)],
    ),
    step(
        22_400,
        45_000,
        &[
            (1_000, 40, 120),
            (1_500, 63, 190),
            (2_000, 85, 250),
            (3_000, 120, 360),
            (3_500, 150, 450),
            (4_000, 180, 530),
            (4_500, 210, 630),
        ],
    ),
    step(
        45_000,
        90_000,
        &[
            (1_500, 75, 220),
            (2_000, 95, 280),
            (3_000, 150, 450),
            (4_000, 190, 560),
            (5_000, 240, 710),
            (5_500, 280, 850),
            (6_000, 320, 950),
        ],
    ),
    step(90_000, 180_000, &[(2_000, 120, 360), (3_000, 180, 530), (4_000, 240, 710), (6_000, 360, 1_060)]),
    step(180_000, 355_000, &[(3_000, 200, 600), (4_000, 260, 800), (6_000, 400, 1_180)]),
];

/// Outside the tables.
const SMALLEST_PITCH: Length = Length::parts(1, 5);
const LARGEST_PITCH: Length = Length::integer(8);

/// Whether a length of engagement is short, normal or long for a metric thread, and where normal begins and ends.
///
/// ```text
/// normal over   2.24 P d^0.2     P, d in mm; d: the smallest diameter of the thread's step, 0.99 1.4 2.8 5.6 11.2
/// normal to     6.7 P d^0.2      22.4 45 90 180 355; to 0.01 mm
/// ```
///
/// The standard's table governs and leaves the formula by -6 to +21 %; the formula is for what the table does not
/// have, and `confidence` says so. The limits of size of a class are the same for every group: what changes
/// is the class that is recommended, [`recommended_class`](EngagementGroup::recommended_class). Unified threads
/// have no groups: their tolerance counts with the length itself, [`Thread::limits_at`].
///
/// # Errors
/// [`Code::DoesNotApply`] for threads other than ISO metric M, [`Code::OutOfRange`] for a length outside 0 to
/// 10 000 mm, [`Code::NotSourced`] outside 1 to 355 mm and pitches of 0.2 to 8 mm.
///
/// # Example
/// ```
/// use threadcalc_core::{EngagementGroup, FitQuality, Length, Side, Thread, engagement_group};
///
/// // M8 is long above 12 mm: 7H where 6H would do up to there.
/// let found = engagement_group(&Thread::read(b"M8")?, Length::integer(20))?;
/// assert_eq!((found.normal_over_mm.to_string(), found.normal_to_mm.to_string()), ("4".into(), "12".into()));
/// assert_eq!(found.group, EngagementGroup::Long);
/// assert_eq!(found.group.recommended_class(Side::Internal, FitQuality::Medium), Some("7H"));
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// ISO 965-1, table of lengths of engagement, as Machinery's Handbook 27 p. 1792 and a reprint of ISO 965-2 print it;
/// the formula from memory.
pub fn engagement_group(thread: &Thread, length_mm: Length) -> Result<EngagementLengths, Error> {
    if thread.form() != Form::Metric || thread.is_wire_insert() {
        return Err(Error::new(Code::DoesNotApply, Field::Form)
            .hint_text("groups of length are of ISO metric threads M; Unified ones have limits_at a length"));
    }
    above_zero(length_mm, Field::EngagementLength, LONGEST_ENGAGEMENT_MM)?;
    let (over, to, source, confidence) = normal(thread)?;
    let group = if length_mm <= over {
        EngagementGroup::Short
    } else if length_mm <= to {
        EngagementGroup::Normal
    } else {
        EngagementGroup::Long
    };
    Ok(EngagementLengths { group, normal_over_mm: over, normal_to_mm: to, source, confidence })
}

fn normal(thread: &Thread) -> Result<(Length, Length, &'static str, Confidence), Error> {
    let (major, pitch) = (thread.major_mm(), thread.pitch_mm());
    let um = |count: u32| Length::parts(count, 1_000);
    let holds = |step: &&Step| um(step.over_um) < major && major <= um(step.to_um);
    let step = STEPS.iter().find(holds).ok_or(
        Error::new(Code::NotSourced, Field::Diameter)
            .got(major.to_f64())
            .within(1.0, 355.0)
            .hint_text("ISO 965-1 has threads of 1 to 355 mm"),
    )?;
    if let Some((_, over, to)) = step.rows.iter().find(|row| um(u32::from(row.0)) == pitch) {
        let tenths = |count: u16| Length::parts(u32::from(count), 10);
        return Ok((tenths(*over), tenths(*to), "ISO 965-1, table of lengths of engagement", Confidence::Confirmed));
    }
    if pitch < SMALLEST_PITCH || pitch > LARGEST_PITCH {
        return Err(Error::new(Code::NotSourced, Field::Pitch)
            .got(pitch.to_f64())
            .within(SMALLEST_PITCH.to_f64(), LARGEST_PITCH.to_f64())
            .hint_text("ISO 965-1 has pitches of 0.2 to 8 mm"));
    }
    let power = pitch.to_f64() * libm::pow(f64::from(step.over_um) / 1000.0, 0.2);
    // From 0.4 to 200 mm, so that hundredths fit.
    let hundredths = |times: f64| Length::parts(libm::rint(times * power * 100.0) as u32, 100);
    Ok((hundredths(2.24), hundredths(6.7), "ISO 965-1, formula for lengths of engagement", Confidence::Formula))
}

impl EngagementGroup {
    /// The class of tolerance that the standard recommends for an engagement of this length: position H inside,
    /// h for fine and g for other external threads; `None` where it has none (short and coarse).
    ///
    /// | | S | N | L |
    /// |---|---|---|---|
    /// | internal, fine | 4H | 5H | 6H |
    /// | internal, medium | 5H | 6H | 7H |
    /// | internal, coarse | – | 7H | 8H |
    /// | external, fine | 3h4h | 4h | 5h4h |
    /// | external, medium | 5g6g | 6g | 7g6g |
    /// | external, coarse | – | 8g | 9g8g |
    ///
    /// Where the length is not known, the class of normal engagement is taken. Up to 1.4 mm the medium class is a
    /// grade finer: 5H and 6h.
    ///
    /// # Example
    /// ```
    /// use threadcalc_core::{EngagementGroup, FitQuality, Side};
    ///
    /// let class = EngagementGroup::Long.recommended_class(Side::External, FitQuality::Medium);
    /// assert_eq!(class, Some("7g6g"));
    /// ```
    ///
    /// # Source
    /// ISO 965-1, recommended classes, from memory; the grades of internal threads as tap makers print them.
    #[must_use]
    pub const fn recommended_class(self, side: Side, quality: FitQuality) -> Option<&'static str> {
        Some(match (side, quality, self) {
            (Side::Internal, FitQuality::Fine, Self::Short) => "4H",
            (Side::Internal, FitQuality::Fine, Self::Normal) | (Side::Internal, FitQuality::Medium, Self::Short) => {
                "5H"
            }
            (Side::Internal, FitQuality::Fine, Self::Long) | (Side::Internal, FitQuality::Medium, Self::Normal) => "6H",
            (Side::Internal, FitQuality::Medium, Self::Long) | (Side::Internal, FitQuality::Coarse, Self::Normal) => {
                "7H"
            }
            (Side::Internal, FitQuality::Coarse, Self::Long) => "8H",
            (Side::External, FitQuality::Fine, Self::Short) => "3h4h",
            (Side::External, FitQuality::Fine, Self::Normal) => "4h",
            (Side::External, FitQuality::Fine, Self::Long) => "5h4h",
            (Side::External, FitQuality::Medium, Self::Short) => "5g6g",
            (Side::External, FitQuality::Medium, Self::Normal) => "6g",
            (Side::External, FitQuality::Medium, Self::Long) => "7g6g",
            (Side::External, FitQuality::Coarse, Self::Normal) => "8g",
            (Side::External, FitQuality::Coarse, Self::Long) => "9g8g",
            (_, FitQuality::Coarse, Self::Short) => return None,
        })
    }
}

#[cfg(test)]
mod tests {
    use super::STEPS;

    #[test]
    fn every_cell_is_near_the_formula() {
        for (place, step) in STEPS.iter().enumerate() {
            assert!(place == 0 || STEPS[place - 1].to_um == step.over_um);
            for (pitch_um, over, to) in step.rows {
                let power = f64::from(*pitch_um) / 1000.0 * libm::pow(f64::from(step.over_um) / 1000.0, 0.2);
                for (tenths, factor) in [(*over, 2.24), (*to, 6.7)] {
                    let ratio = f64::from(tenths) / 10.0 / (factor * power);
                    assert!((0.94..1.21).contains(&ratio), "{pitch_um} um in {} um: {ratio}", step.over_um);
                }
            }
        }
    }
}
