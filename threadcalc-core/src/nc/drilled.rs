//! Holes that the program has drilled and tapped so far, by place.

use super::state::Position;
use crate::length::Length;

/// How many drilled holes are kept, and how many tapped ones; the oldest go first.
const MOST_HOLES: usize = 256;

/// Places nearer than this are one hole.
const SAME_PLACE: Length = Length::parts(1, 100);

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

/// The last holes, a ring.
#[derive(Clone, Debug)]
struct Ring<T> {
    held: [Option<T>; MOST_HOLES],
    next: usize,
}

impl<T: Copy> Ring<T> {
    const fn new() -> Self {
        Self { held: [None; MOST_HOLES], next: 0 }
    }

    /// Adds one; true if an older one had to go.
    fn push(&mut self, item: T) -> bool {
        let Some(slot) = self.held.get_mut(self.next) else { return false };
        self.next = if self.next.saturating_add(1) < MOST_HOLES { self.next.saturating_add(1) } else { 0 };
        slot.replace(item).is_some()
    }

    fn iter(&self) -> impl Iterator<Item = T> + '_ {
        self.held.iter().flatten().copied()
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
        let had = self.any;
        *self = Self { holes: Ring::new(), any: had, somewhere: had };
        had
    }

    /// Adds a hole; true if an older one had to go.
    pub(super) fn push(&mut self, hole: DrilledHole) -> bool {
        let forgets = self.holes.push(hole);
        self.somewhere |= forgets;
        forgets
    }

    /// What was drilled at a place: the deepest that is below the thread's crests, of those that are no spots.
    pub(super) fn at(&self, place: &Place, major_mm: Option<Length>) -> Option<DrilledHole> {
        let below = |hole: &DrilledHole| hole.diameter_mm.zip(major_mm).is_none_or(|(drill, major)| drill < major);
        let here = self.holes.iter().filter(|hole| hole.place.is(place));
        here.filter(|hole| !hole.is_spot && below(hole)).reduce(|deepest, hole| match (deepest.z_mm, hole.z_mm) {
            (Some(deep), Some(z)) if z >= deep => deepest,
            _ => hole,
        })
    }

    /// Whether anything was drilled at a place, a spot too.
    pub(super) fn has(&self, place: &Place) -> bool {
        self.holes.iter().any(|hole| hole.place.is(place))
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
        self.0.push((place, line));
    }

    /// The line that tapped a place before.
    pub(super) fn line_of(&self, place: &Place) -> Option<u32> {
        self.0.iter().find(|(tapped, _)| tapped.is(place)).map(|(_, line)| line)
    }
}
