//! Holes that the program has drilled and tapped so far, by place.

use super::state::Position;
use crate::length::Length;

/// How many drilled holes are kept, and how many tapped ones; the oldest go first.
const MOST_HOLES: usize = 256;

/// Places nearer than this are one hole.
const SAME_PLACE: Length = Length::parts(1, 100);

/// Keys of one place are this far apart at most: both coordinates are rounded down to tenths, and a tenth of Y is
/// worth one less.
const KEYS_OF_ONE: u32 = 14;

/// How many keys are looked at together.
const TOGETHER: usize = 16;

/// A place on the part under a work offset.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Place {
    pub x: Length,
    pub y: Length,
    pub work_offset: u32,
}

impl Place {
    pub(super) fn of(position: Position, work_offset: u32) -> Option<Self> {
        Some(Self { x: position.x?, y: position.y?, work_offset })
    }

    /// Where it is, roughly: places that are one differ by at most [`KEYS_OF_ONE`].
    fn key(&self) -> u32 {
        let tenths = |length: Length| {
            let tenths = i128::from(length.numerator()).wrapping_mul(10);
            // Far beyond any machine a division of 64 bits will not do.
            match (i64::try_from(tenths), length.denominator()) {
                (Ok(tenths), denominator) => tenths.checked_div_euclid(denominator).unwrap_or(0) as u32,
                (Err(_), denominator) => tenths.checked_div_euclid(i128::from(denominator)).unwrap_or(0) as u32,
            }
        };
        tenths(self.x).wrapping_add(tenths(self.y).wrapping_mul(KEYS_OF_ONE.wrapping_sub(1)))
    }

    fn is(&self, other: &Self) -> bool {
        let near = |a: Length, b: Length| a.minus(b).is_ok_and(|off| off.magnitude() < SAME_PLACE);
        self.work_offset == other.work_offset && near(self.x, other.x) && near(self.y, other.y)
    }
}

/// A drilled hole.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct DrilledHole {
    pub place: Place,
    /// Z of the drill's point, in mm.
    pub z_mm: Option<Length>,
    pub diameter_mm: Option<Length>,
    pub point_angle_deg: Option<Length>,
    /// A spot drill makes no hole to tap.
    pub is_spot: bool,
    pub line: u32,
}

/// The last holes, a ring, each with the key of its place.
#[derive(Clone, Debug)]
struct Ring<T> {
    held: [Option<T>; MOST_HOLES],
    keys: [u32; MOST_HOLES],
    length: usize,
    next: usize,
}

impl<T: Copy> Ring<T> {
    const fn new() -> Self {
        Self { held: [None; MOST_HOLES], keys: [0; MOST_HOLES], length: 0, next: 0 }
    }

    /// Forgets all of them.
    fn clear(&mut self) {
        (self.length, self.next) = (0, 0);
    }

    /// Adds one; true if an older one had to go.
    fn push(&mut self, place: &Place, item: T) -> bool {
        let (Some(slot), Some(key)) = (self.held.get_mut(self.next), self.keys.get_mut(self.next)) else {
            return false;
        };
        (*slot, *key) = (Some(item), place.key());
        let forgets = self.next < self.length;
        self.next = self.next.saturating_add(1);
        self.length = self.length.max(self.next);
        if self.next >= MOST_HOLES {
            self.next = 0;
        }
        forgets
    }

    /// Those that may be at a place, in order.
    fn near(&self, place: &Place) -> impl Iterator<Item = &T> {
        let from = place.key().wrapping_sub(KEYS_OF_ONE);
        let is_near = move |key: &u32| key.wrapping_sub(from) <= KEYS_OF_ONE.wrapping_mul(2);
        let held = self.held.get(..self.length).unwrap_or(&[]).chunks(TOGETHER);
        let both = self.keys.chunks(TOGETHER).zip(held);
        let has_near = move |keys: &[u32]| keys.iter().fold(false, |any, key| any | is_near(key));
        both.filter(move |(keys, _)| has_near(keys))
            .flat_map(move |(keys, held)| keys.iter().zip(held).filter(move |(key, _)| is_near(key)))
            .filter_map(|(_, held)| held.as_ref())
    }
}

/// The drilled holes.
#[derive(Clone, Debug)]
pub(super) struct Drilled {
    holes: Ring<DrilledHole>,
    /// The program drills at all.
    pub any: bool,
    /// Holes have been drilled where nobody knows, or been forgotten.
    pub somewhere: bool,
}

impl Drilled {
    pub(super) const fn new() -> Self {
        Self { holes: Ring::new(), any: false, somewhere: false }
    }

    /// Forgets where holes are; true if there were any.
    pub(super) fn forget(&mut self) -> bool {
        self.holes.clear();
        self.somewhere = self.any;
        self.any
    }

    /// Adds a hole; true if an older one had to go.
    pub(super) fn push(&mut self, hole: DrilledHole) -> bool {
        let forgets = self.holes.push(&hole.place, hole);
        self.somewhere |= forgets;
        forgets
    }

    /// What was drilled at a place: the deepest that is below the thread's crests, of those that are no spots.
    pub(super) fn at(&self, place: &Place, major_mm: Option<Length>) -> Option<DrilledHole> {
        let below = |hole: &DrilledHole| hole.diameter_mm.zip(major_mm).is_none_or(|(drill, major)| drill < major);
        let here = self.holes.near(place).filter(|hole| hole.place.is(place)).copied();
        here.filter(|hole| !hole.is_spot && below(hole)).reduce(|deepest, hole| match (deepest.z_mm, hole.z_mm) {
            (Some(deep), Some(z)) if z >= deep => deepest,
            _ => hole,
        })
    }

    /// Whether anything was drilled at a place, a spot too.
    pub(super) fn has(&self, place: &Place) -> bool {
        self.holes.near(place).any(|hole| hole.place.is(place))
    }
}

/// The tapped holes.
#[derive(Clone, Debug)]
pub(super) struct Tapped(Ring<(Place, u32)>);

impl Tapped {
    pub(super) const fn new() -> Self {
        Self(Ring::new())
    }

    pub(super) fn push(&mut self, place: Place, line: u32) {
        self.0.push(&place, (place, line));
    }

    pub(super) fn clear(&mut self) {
        self.0.clear();
    }

    /// The line that tapped a place before.
    pub(super) fn line_of(&self, place: &Place) -> Option<u32> {
        self.0.near(place).find(|(tapped, _)| tapped.is(place)).map(|(_, line)| *line)
    }
}
