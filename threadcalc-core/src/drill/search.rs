//! Finding drills by diameter without looking at all of them.

use core::cmp::Ordering;

use super::{Drill, DrillSet, DrillSets, FRACTIONS, counted, sizes};
use crate::length::Length;

/// A diameter that drills are compared with.
#[derive(Clone, Copy)]
pub(super) enum Mark {
    /// Exact, in mm.
    Exact(Length),
    /// Derived, in mm.
    Derived(f64),
}

impl Mark {
    /// How `count / parts` millimetres compare with the mark.
    fn order(self, count: u32, parts: u32) -> Ordering {
        match self {
            Self::Exact(length) => length.order_of(count, parts),
            Self::Derived(value) => {
                (f64::from(count) / f64::from(parts)).partial_cmp(&value).unwrap_or(Ordering::Greater)
            }
        }
    }
}

impl DrillSet {
    const fn count(self) -> u16 {
        match self {
            Self::Metric => sizes::METRIC_UM.len() as u16,
            Self::Number => sizes::NUMBER_E4_IN.len() as u16,
            Self::Letter => sizes::LETTER_E4_IN.len() as u16,
            Self::Fractional => FRACTIONS,
        }
    }

    /// The place, by name, of the drill counted from the smallest; number drills are named from the largest.
    const fn ascending(self, place: u16) -> u16 {
        match self {
            Self::Number => self.count().saturating_sub(1).saturating_sub(place),
            _ => place,
        }
    }

    /// How many drills are smaller than the mark, or not larger than it.
    fn smaller(self, mark: Mark, or_equal: bool) -> u16 {
        let (mut low, mut high) = (0, self.count());
        while low < high {
            let middle = low.midpoint(high);
            let order = counted(self, self.ascending(middle)).map_or(Ordering::Greater, |(n, d)| mark.order(n, d));
            if order == Ordering::Less || (or_equal && order == Ordering::Equal) {
                low = middle.saturating_add(1);
            } else {
                high = middle;
            }
        }
        low
    }

    fn counted_from_smallest(self, place: u16) -> Option<Drill> {
        if place < self.count() { Drill::at(self, self.ascending(place)) } else { None }
    }
}

fn of(sets: DrillSets) -> impl Iterator<Item = DrillSet> {
    DrillSet::ALL.iter().copied().filter(move |set| sets.holds(*set))
}

/// Of each set the largest drill below the mark and the smallest that is not.
pub(super) fn around(sets: DrillSets, mark: Mark) -> impl Iterator<Item = Drill> {
    of(sets).flat_map(move |set| {
        let smaller = set.smaller(mark, false);
        let below = smaller.checked_sub(1).and_then(|place| set.counted_from_smallest(place));
        [below, set.counted_from_smallest(smaller)].into_iter().flatten()
    })
}

/// The largest drill below a diameter.
pub(super) fn next_smaller(sets: DrillSets, than: Length) -> Option<Drill> {
    let below = |set: DrillSet| set.counted_from_smallest(set.smaller(Mark::Exact(than), false).checked_sub(1)?);
    of(sets).filter_map(below).max_by_key(Drill::diameter_mm)
}

/// The smallest drill above a diameter.
pub(super) fn next_larger(sets: DrillSets, than: Length) -> Option<Drill> {
    let above = |set: DrillSet| set.counted_from_smallest(set.smaller(Mark::Exact(than), true));
    of(sets).filter_map(above).min_by_key(Drill::diameter_mm)
}

/// The drill of exactly this diameter, of the first set that has it.
pub(super) fn exactly(diameter_mm: Length) -> Option<Drill> {
    around(DrillSets::ALL, Mark::Exact(diameter_mm)).find(|drill| drill.diameter_mm() == diameter_mm)
}
