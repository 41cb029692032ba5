//! In which values two holes differ, and which cannot be compared.

use crate::length::Length;
use crate::named::named;
use crate::nc::report::TappedHole;

/// Leads nearer than this are one where F had to be written anew: the tap itself is off by more.
const LEAD_NOISE: Length = Length::parts(1, 10_000);
/// Lengths nearer than this are one where the unit is another: half of 0.0001 in and half of 0.001 mm.
const UNIT_NOISE_MM: Length = Length::parts(2, 1000);

named! {
    /// What of a tapped hole is compared.
    pub enum HoleValue {
        /// The lead that is cut.
        Lead = 1 "lead",
        /// From the face to the tap's end.
        Depth = 2 "depth",
        /// The hand that is cut.
        Hand = 3 "hand",
        /// S.
        Speed = 4 "speed",
        /// How many holes, one behind the other.
        Count = 5 "count",
        /// The thread that is expected.
        Thread = 6 "thread",
        /// The tool in the spindle.
        Tool = 7 "tool",
        /// X, Y and the work offset.
        Place = 8 "place",
    }
}

/// Some of the values of a hole.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct HoleValues(u16);

impl HoleValues {
    /// None of them.
    pub const NONE: Self = Self(0);

    /// These and one more.
    #[must_use]
    pub const fn with(self, value: HoleValue) -> Self {
        Self(self.0 | (1 << value as u16))
    }

    /// True if the value is one of these.
    #[must_use]
    pub const fn holds(self, value: HoleValue) -> bool {
        self.0 & (1 << value as u16) != 0
    }

    /// True if there is none.
    #[must_use]
    pub const fn is_empty(self) -> bool {
        self.0 == 0
    }

    /// The values, in the order of their numbers.
    pub fn iter(self) -> impl Iterator<Item = HoleValue> + Clone {
        HoleValue::ALL.iter().copied().filter(move |value| self.holds(*value))
    }

    pub(super) const fn without(self, value: HoleValue) -> Self {
        Self(self.0 & !(1 << value as u16))
    }
}

/// What became of a hole's values.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Differences {
    pub changed: HoleValues,
    /// Not known on either side: neither the same nor another.
    pub not_compared: HoleValues,
}

impl Differences {
    pub(super) fn between(old: &TappedHole, new: &TappedHole) -> Self {
        let mut found = Self { changed: HoleValues::NONE, not_compared: HoleValues::NONE };
        let same_unit = old.unit == new.unit;
        let same_words = same_unit && (old.feed_mode, old.speed_rpm) == (new.feed_mode, new.speed_rpm);
        let is_length = |a: Length, b: Length| a == b || (!same_unit && is_near(a, b, UNIT_NOISE_MM));
        let is_lead = |a: Length, b: Length| a == b || (!same_words && is_ratio_near(a, b));
        found.add(HoleValue::Lead, old.lead_mm, new.lead_mm, is_lead);
        found.add(HoleValue::Depth, old.depth_mm, new.depth_mm, is_length);
        found.add(HoleValue::Hand, old.hand, new.hand, |a, b| a == b);
        found.add(HoleValue::Speed, old.speed_rpm, new.speed_rpm, |a, b| a == b);
        found.add(HoleValue::Count, Some(old.count), Some(new.count), |a, b| a == b);
        // That nobody names a thread is known.
        found.add(HoleValue::Thread, Some(old.thread), Some(new.thread), |a, b| a == b);
        found.add(HoleValue::Tool, old.tool, new.tool, |a, b| a == b);
        found.add(HoleValue::Place, Some(old.work_offset), Some(new.work_offset), |a, b| a == b);
        found.add(HoleValue::Place, old.x_mm, new.x_mm, is_length);
        found.add(HoleValue::Place, old.y_mm, new.y_mm, is_length);
        found
    }

    fn add<T: Copy>(&mut self, value: HoleValue, old: Option<T>, new: Option<T>, is_same: impl Fn(T, T) -> bool) {
        match (old, new) {
            (Some(old), Some(new)) if is_same(old, new) => {}
            (None, None) => self.not_compared = self.not_compared.with(value),
            _ => self.changed = self.changed.with(value),
        }
    }
}

fn is_near(a: Length, b: Length, within: Length) -> bool {
    a.minus(b).is_ok_and(|off| off.magnitude() <= within)
}

fn is_ratio_near(a: Length, b: Length) -> bool {
    // By the larger, so that it does not matter which is which.
    let larger = a.magnitude().max(b.magnitude());
    larger.times(LEAD_NOISE).is_ok_and(|within| is_near(a, b, within))
}
