//! Finding drills by diameter without looking at all of them.

use super::{Drill, DrillSet, DrillSets, FRACTIONS, sizes};
use crate::length::Length;

impl DrillSet {
    const fn count(self) -> u16 {
        match self {
            Self::Metric => sizes::METRIC_UM.len() as u16,
            Self::Number => sizes::NUMBER_E4_IN.len() as u16,
            Self::Letter => sizes::LETTER_E4_IN.len() as u16,
            Self::Fractional => FRACTIONS,
        }
    }

    /// The drill at a place counted from the smallest; number drills are named from the largest.
    fn ascending(self, place: u16) -> Option<Drill> {
        match self {
            Self::Number => Drill::at(self, self.count().checked_sub(1)?.checked_sub(place)?),
            _ => Drill::at(self, place),
        }
    }

    /// The largest drill that `is_below` holds for and the smallest that it does not.
    fn split(self, is_below: &impl Fn(Length) -> bool) -> [Option<Drill>; 2] {
        let (mut low, mut high) = (0, self.count());
        while low < high {
            let middle = low.midpoint(high);
            if self.ascending(middle).is_some_and(|drill| is_below(drill.diameter_mm())) {
                low = middle.saturating_add(1);
            } else {
                high = middle;
            }
        }
        [low.checked_sub(1).and_then(|place| self.ascending(place)), self.ascending(low)]
    }
}

/// Of each set the largest drill that `is_below` holds for and the smallest that it does not.
///
/// `is_below` holds up to some diameter and for none beyond it.
pub(super) fn around(sets: DrillSets, is_below: impl Fn(Length) -> bool) -> impl Iterator<Item = Drill> {
    DrillSet::ALL.iter().filter(move |set| sets.holds(**set)).flat_map(move |set| set.split(&is_below)).flatten()
}

/// The largest drill below a diameter.
pub(super) fn next_smaller(sets: DrillSets, than: Length) -> Option<Drill> {
    around(sets, move |diameter| diameter < than).filter(|d| d.diameter_mm() < than).max_by_key(Drill::diameter_mm)
}

/// The smallest drill above a diameter.
pub(super) fn next_larger(sets: DrillSets, than: Length) -> Option<Drill> {
    around(sets, move |diameter| diameter <= than).filter(|d| d.diameter_mm() > than).min_by_key(Drill::diameter_mm)
}

/// The drill of exactly this diameter, of the first set that has it.
pub(super) fn exactly(diameter_mm: Length) -> Option<Drill> {
    around(DrillSets::ALL, move |diameter| diameter < diameter_mm).find(|drill| drill.diameter_mm() == diameter_mm)
}
