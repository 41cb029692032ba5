//! Drills: the four sets, percent of thread, and the choice of a tap drill.

mod choice;
mod form_hole;
mod judge;
mod oversize;
mod own;
mod percent;
mod search;
mod sizes;
mod stock;
mod taper;

pub use choice::{TapDrillRequest, tap_drill};
pub use form_hole::form_hole_mm;
pub use judge::{Alternative, ProbableHole, TapDrill, WithinLimits, judge_drill};
pub(crate) use judge::{class_assumed, judge_given};
pub use oversize::probable_hole_mm;
pub use own::{MOST_OWN_DRILLS, OwnDrills};
pub use percent::{Basis, Tap, drill_diameter, percent_thread};
pub use stock::Stock;

use core::fmt::Write;

use crate::error::{Code, Error, Field};
use crate::length::Length;
use crate::named::named;
use crate::text::Text;

named! {
    /// A set of drills.
    pub enum DrillSet {
        /// Metric sizes, named by their diameter.
        Metric = 1 "metric",
        /// Number sizes, `#1` to `#97`.
        Number = 2 "number",
        /// Letter sizes, `A` to `Z`.
        Letter = 3 "letter",
        /// Fractional inch sizes, `1/64` to `3 1/2`.
        Fractional = 4 "fractional",
    }
}

/// Several sets of drills.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub struct DrillSets(u8);

impl DrillSets {
    /// No set.
    pub const NONE: Self = Self(0);
    /// All four sets.
    pub const ALL: Self =
        Self::NONE.with(DrillSet::Metric).with(DrillSet::Number).with(DrillSet::Letter).with(DrillSet::Fractional);
    /// The three inch sets.
    pub const INCH: Self = Self::NONE.with(DrillSet::Number).with(DrillSet::Letter).with(DrillSet::Fractional);

    /// These sets and one more.
    #[must_use]
    pub const fn with(self, set: DrillSet) -> Self {
        Self(self.0 | (1 << set as u8))
    }

    /// True if the set is one of these.
    #[must_use]
    pub const fn holds(self, set: DrillSet) -> bool {
        self.0 & (1 << set as u8) != 0
    }

    /// True if there is no set.
    #[must_use]
    pub const fn is_none(self) -> bool {
        self.0 == 0
    }
}

/// A drill of one of the sets, or one of another diameter.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Drill {
    set: Option<DrillSet>,
    place: u16,
    diameter: Length,
}

impl Drill {
    /// The set it belongs to; None for a diameter that stands in no set.
    #[must_use]
    pub const fn set(&self) -> Option<DrillSet> {
        self.set
    }

    /// The diameter in millimetres, exact.
    #[must_use]
    pub const fn diameter_mm(&self) -> Length {
        self.diameter
    }

    /// The name: `6.8`, `#7`, `F`, `5/16`, `1 1/64`.
    #[must_use]
    pub fn name(&self) -> Text<24> {
        let mut name = Text::new();
        let written = match self.set {
            Some(DrillSet::Metric) | None => write!(name, "{}", self.diameter),
            Some(DrillSet::Number) => write!(name, "#{}", self.place.saturating_add(1)),
            Some(DrillSet::Letter) => {
                let letter = u8::try_from(self.place).ok().and_then(|place| b'A'.checked_add(place));
                name.write_char(char::from(letter.unwrap_or(b'?')))
            }
            Some(DrillSet::Fractional) => {
                let all = sizes::FRACTIONAL_64THS.get(usize::from(self.place)).copied();
                write_fraction(&mut name, all.unwrap_or(0))
            }
        };
        // Listed names fit; a given diameter with more digits than a name holds has no name.
        if written.is_ok() { name } else { Text::new() }
    }

    /// The drill of exactly this diameter in the sets, else one that is named by its diameter.
    #[must_use]
    pub fn of_diameter(diameter_mm: Length) -> Self {
        search::exactly(diameter_mm).unwrap_or(Self { set: None, place: 0, diameter: diameter_mm })
    }

    /// The drill of a set with this name.
    ///
    /// # Errors
    /// [`Code::UnknownValue`] if the set has no such drill.
    pub fn named(set: DrillSet, name: &[u8]) -> Result<Self, Error> {
        let found = drills(DrillSets::NONE.with(set)).find(|drill| drill.name().as_str().as_bytes() == name);
        found.ok_or(Error::new(Code::UnknownValue, Field::Drill).hint_text(match set {
            DrillSet::Metric => "a metric drill by its diameter, such as 6.8",
            DrillSet::Number => "#1 to #97",
            DrillSet::Letter => "A to Z",
            DrillSet::Fractional => "1/64 to 3 1/2: 64ths to 1 3/4, 32nds to 2 1/4, then 16ths",
        }))
    }
}

fn write_fraction(name: &mut Text<24>, all: u32) -> core::fmt::Result {
    let (whole, part) = (all / 64, Length::parts(all % 64, 64));
    match (whole, part.numerator()) {
        (0, _) => write!(name, "{}/{}", part.numerator(), part.denominator()),
        (_, 0) => write!(name, "{whole}"),
        _ => write!(name, "{whole} {}/{}", part.numerator(), part.denominator()),
    }
}

/// Every drill of the sets, set by set, each in the order of its names.
///
/// # Source
/// ASME B94.11M (number, letter, fractional); ISO 235 (metric).
pub fn drills(sets: DrillSets) -> impl Iterator<Item = Drill> + Clone {
    DrillSet::ALL
        .iter()
        .filter(move |set| sets.holds(**set))
        .flat_map(|set| (0..usize::MAX).map_while(|place| set.at_place(place)).map(|spot| spot.drill()))
}

#[cfg(feature = "serde")]
impl serde::Serialize for Drill {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        use serde::ser::SerializeStruct;
        let mut drill = serializer.serialize_struct("Drill", 3)?;
        drill.serialize_field("name", &self.name())?;
        drill.serialize_field("diameter_mm", &self.diameter)?;
        drill.serialize_field("set", &self.set)?;
        drill.end()
    }
}
