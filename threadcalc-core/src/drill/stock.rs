//! What a tap drill is chosen from.

use super::{DrillSets, OwnDrills};
use crate::length::Length;

/// The drills to choose from: sets or a list; and how much oversize they cut, where that is known.
///
/// ```
/// use threadcalc_core::{DrillSets, Length, Stock};
///
/// let stock = Stock::from(DrillSets::INCH).with_oversize_mm(Length::new(5, 100)?);
/// # let _ = stock;
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
#[derive(Clone, Copy, Debug)]
pub struct Stock<'a> {
    pub(super) drills: Drills<'a>,
    pub(super) oversize: Option<Length>,
}

#[derive(Clone, Copy, Debug)]
pub(super) enum Drills<'a> {
    Sets(DrillSets),
    Own(&'a OwnDrills),
}

impl Stock<'_> {
    /// The same drills, whose holes are this much larger than they are, in mm; 0 or more.
    #[must_use]
    pub const fn with_oversize_mm(mut self, oversize_mm: Length) -> Self {
        self.oversize = Some(oversize_mm);
        self
    }

    pub(super) const fn is_own(&self) -> bool {
        matches!(self.drills, Drills::Own(_))
    }
}

impl From<DrillSets> for Stock<'_> {
    fn from(sets: DrillSets) -> Self {
        Self { drills: Drills::Sets(sets), oversize: None }
    }
}

impl<'a> From<&'a OwnDrills> for Stock<'a> {
    fn from(own: &'a OwnDrills) -> Self {
        Self { drills: Drills::Own(own), oversize: None }
    }
}
