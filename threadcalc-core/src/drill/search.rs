//! Finding drills by diameter without looking at all of them.
//!
//! Every listed diameter is a whole number of picometres (1e-9 mm), so that all comparisons are of integers.

use core::cmp::{Ordering, Reverse};

use super::own::MOST_OWN_DRILLS;
use super::stock::{Drills, Stock};
use super::{Drill, DrillSet, DrillSets, sizes};
use crate::length::Length;

/// A drill of a set by its place, with its diameter; or one of another diameter.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Spot {
    pub(super) picometres: i64,
    set: Option<DrillSet>,
    place: u16,
}

impl Spot {
    pub(super) const NONE: Self = Self { picometres: 0, set: None, place: 0 };

    /// The place of a drill whose diameter is a whole number of picometres.
    pub(super) fn of(drill: &Drill) -> Option<Self> {
        Some(Self { picometres: drill.diameter.picometres()?, set: drill.set, place: drill.place })
    }

    pub(super) fn drill(&self) -> Drill {
        Drill { set: self.set, place: self.place, diameter: Length::decimal_parts(self.picometres, 9, 9) }
    }
}

/// Picometres in one count of a set's table: micrometres, 1/10000 in, 1/64 in.
const MICROMETRE: i64 = 1_000_000;
const TEN_THOUSANDTH: i64 = 2_540_000;
const SIXTY_FOURTH: i64 = 396_875_000;

impl DrillSet {
    /// The diameters by name, as counts, and the picometres in one.
    const fn counts(self) -> (&'static [u32], i64) {
        match self {
            Self::Metric => (&sizes::METRIC_UM, MICROMETRE),
            Self::Number => (&sizes::NUMBER_E4_IN, TEN_THOUSANDTH),
            Self::Letter => (&sizes::LETTER_E4_IN, TEN_THOUSANDTH),
            Self::Fractional => (&sizes::FRACTIONAL_64THS, SIXTY_FOURTH),
        }
    }

    /// The drill at a place by name.
    pub(super) fn at_place(self, place: usize) -> Option<Spot> {
        let (counts, unit) = self.counts();
        let picometres = i64::from(*counts.get(place)?).saturating_mul(unit);
        Some(Spot { picometres, set: Some(self), place: place as u16 })
    }

    /// How many drills are smaller than the mark.
    fn smaller(self, mark: i64) -> usize {
        let (counts, unit) = self.counts();
        let is_smaller = |count: &u32| i64::from(*count).saturating_mul(unit) < mark;
        match self {
            // Named from the largest.
            Self::Number => counts.len().saturating_sub(counts.partition_point(|count| !is_smaller(count))),
            _ => counts.partition_point(is_smaller),
        }
    }

    fn counted_from_smallest(self, index: usize) -> Option<Spot> {
        let place = match self {
            Self::Number => self.counts().0.len().checked_sub(1)?.checked_sub(index)?,
            _ => index,
        };
        self.at_place(place)
    }

    /// The drill of exactly this diameter.
    pub(super) fn at(self, picometres: i64) -> Option<Spot> {
        self.counted_from_smallest(self.smaller(picometres)).filter(|spot| spot.picometres == picometres)
    }
}

/// How many drills of a set are looked at below the mark, and from it on: the chosen one is the first
/// on either side, and two more are shown beside it.
const BESIDE: usize = 3;
const MOST_SPOTS: usize = MOST_OWN_DRILLS;
const _: () = assert!(MOST_SPOTS >= 2 * BESIDE * DrillSet::ALL.len());

/// A drill and those beside it.
pub(super) struct Found {
    pub(super) chosen: Spot,
    beside: [Option<Spot>; 4],
}

impl Found {
    /// What is made of the drills beside it.
    pub(super) fn beside<T: Copy>(&self, make: impl Fn(&Spot) -> Option<T>) -> [Option<T>; 4] {
        let mut made = [None; 4];
        for (place, spot) in made.iter_mut().zip(&self.beside) {
            *place = spot.as_ref().and_then(&make);
        }
        made
    }
}

/// The drills on both sides of a mark, set by set; of a list all.
pub(super) struct Window {
    spots: [Spot; MOST_SPOTS],
    count: usize,
}

impl Window {
    pub(super) const EMPTY: Self = Self { spots: [Spot::NONE; MOST_SPOTS], count: 0 };

    /// Fills an empty window: large, it stays where it is.
    pub(super) fn fill(&mut self, stock: &Stock<'_>, mark: i64) {
        match stock.drills {
            Drills::Sets(sets) => self.fill_from_sets(sets, mark),
            Drills::Own(own) => own.spots().iter().for_each(|spot| self.push(*spot)),
        }
    }

    /// Of each set the last drills below the mark and the first that are not.
    fn fill_from_sets(&mut self, sets: DrillSets, mark: i64) {
        for set in DrillSet::ALL.iter().copied().filter(|set| sets.holds(*set)) {
            let smaller = set.smaller(mark);
            for place in smaller.saturating_sub(BESIDE)..smaller.saturating_add(BESIDE) {
                if let Some(spot) = set.counted_from_smallest(place) {
                    self.push(spot);
                }
            }
        }
    }

    fn push(&mut self, spot: Spot) {
        if let Some(slot) = self.spots.get_mut(self.count) {
            *slot = spot;
            self.count = self.count.saturating_add(1);
        }
    }

    fn spots(&self) -> &[Spot] {
        self.spots.get(..self.count).unwrap_or(&[])
    }

    /// The usable drill with the smallest distance; ties to the larger, then to the first set.
    pub(super) fn nearest<D: PartialOrd + Copy>(
        &self,
        usable: impl Fn(i64) -> bool,
        away: impl Fn(i64) -> D,
    ) -> Option<Spot> {
        let rank = |spot: &Spot| (Reverse(spot.picometres), spot.set.map(DrillSet::number));
        let mut best: Option<(&Spot, D)> = None;
        for spot in self.spots().iter().filter(|spot| usable(spot.picometres)) {
            let distance = away(spot.picometres);
            match best {
                Some((held, least)) if least < distance || (least == distance && rank(held) <= rank(spot)) => {}
                _ => best = Some((spot, distance)),
            }
        }
        best.map(|(spot, _)| *spot)
    }

    /// A chosen drill with the two next smaller and the two next larger diameters, smallest first.
    ///
    /// Of drills of one diameter the last of the window is the next smaller, the first the next larger.
    pub(super) fn found(&self, chosen: Spot) -> Found {
        let (mut smaller, mut larger) = ([None; 2], [None; 2]);
        for spot in self.spots() {
            if spot.picometres < chosen.picometres {
                keep_nearest(&mut smaller, spot, |spot, held| spot.picometres.cmp(&held.picometres), true);
            } else if spot.picometres > chosen.picometres {
                keep_nearest(&mut larger, spot, |spot, held| held.picometres.cmp(&spot.picometres), false);
            }
        }
        let [lower, lowest] = smaller;
        let [upper, uppermost] = larger;
        Found { chosen, beside: [lowest, lower, upper, uppermost].map(Option::<&Spot>::copied) }
    }
}

/// Keeps the two nearest different diameters, of equal ones the last or the first.
fn keep_nearest<'a>(
    kept: &mut [Option<&'a Spot>; 2],
    spot: &'a Spot,
    nearer: impl Fn(&Spot, &Spot) -> Ordering,
    last_of_equals: bool,
) {
    let [nearest, next] = kept;
    match nearest.map_or(Ordering::Greater, |held| nearer(spot, held)) {
        Ordering::Greater => (*nearest, *next) = (Some(spot), *nearest),
        Ordering::Equal if last_of_equals => *nearest = Some(spot),
        Ordering::Equal => {}
        Ordering::Less => {
            let against_next = next.map_or(Ordering::Greater, |held| nearer(spot, held));
            if against_next.is_gt() || (against_next.is_eq() && last_of_equals) {
                *next = Some(spot);
            }
        }
    }
}

/// The drill of exactly this diameter, of the first set that has it.
pub(super) fn exactly(diameter_mm: Length) -> Option<Drill> {
    let picometres = diameter_mm.picometres()?;
    DrillSet::ALL.iter().find_map(|set| set.at(picometres)).map(|spot| spot.drill())
}
