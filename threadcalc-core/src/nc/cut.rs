//! The lead that a block will cut, under every reading of what is not known.

use super::list::List;
use super::readings;
use super::state::{Mode, State};
use crate::dialect::{Dialect, FeedBasis};
use crate::feed::{FeedMode, Unit};
use crate::length::Length;

/// How many readings are told apart.
const MOST_READINGS: usize = 8;

/// A lead and what was read to get it; empty where nothing was open.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Cut {
    pub lead_mm: Length,
    pub reading: &'static str,
}

/// How F makes the lead.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Basis {
    PerMinute,
    PerRevolution,
}

impl Basis {
    pub(super) const fn other(self) -> Self {
        match self {
            Self::PerMinute => Self::PerRevolution,
            Self::PerRevolution => Self::PerMinute,
        }
    }

    /// The lead of a feed at a speed, in mm.
    pub(super) fn lead_mm(self, feed: Length, speed: Option<Length>, unit: Unit) -> Option<Length> {
        let feed = if unit == Unit::Inch { feed.times(Length::INCH).ok()? } else { feed };
        match self {
            Self::PerRevolution => Some(feed),
            Self::PerMinute => feed.over(speed.filter(|speed| speed.is_positive())?).ok(),
        }
    }

    /// The feed of a lead at a speed, in the program's unit.
    pub(super) fn feed(self, lead_mm: Length, speed: Option<Length>, unit: Unit) -> Option<Length> {
        let lead = if unit == Unit::Inch { lead_mm.over(Length::INCH).ok()? } else { lead_mm };
        match self {
            Self::PerRevolution => Some(lead),
            Self::PerMinute => lead.times(speed?).ok(),
        }
    }

    pub(super) const fn mode(self) -> FeedMode {
        match self {
            Self::PerMinute => FeedMode::PerMinute,
            Self::PerRevolution => FeedMode::PerRevolution,
        }
    }
}

/// The leads of a hole; none where a value is missing.
#[derive(Clone, Debug)]
pub(super) struct Cuts(List<Cut, MOST_READINGS>);

impl Cuts {
    pub(super) fn of(state: &State, dialect: &Dialect) -> Self {
        let mut cuts = Self(List::new(Cut { lead_mm: Length::ZERO, reading: "" }));
        if is_by_lead_word(state, dialect) {
            if let Some(lead_mm) = state.cycle.lead.and_then(|said| said.value) {
                cuts.add(lead_mm, "");
            }
            return cuts;
        }
        let Some(feed) = state.feed else { return cuts };
        let Some(value) = feed.said.value else { return cuts };
        let speed = state.speed.and_then(|said| said.value);
        for (unit, by_unit) in units(state, dialect) {
            for (basis, by_basis) in bases(state, dialect) {
                if let Some(lead_mm) = basis.lead_mm(value, speed, unit) {
                    cuts.add(lead_mm, if by_unit.is_empty() { by_basis } else { by_unit });
                }
            }
        }
        cuts
    }

    /// The same lead under another reading needs no second place, and no lead is none.
    fn add(&mut self, lead_mm: Length, reading: &'static str) {
        if lead_mm.is_positive() && !self.0.as_slice().iter().any(|cut| cut.lead_mm == lead_mm) {
            self.0.push(Cut { lead_mm, reading });
        }
    }

    pub(super) fn iter(&self) -> impl Iterator<Item = Cut> + '_ {
        self.0.as_slice().iter().copied()
    }

    pub(super) fn first(&self) -> Option<Cut> {
        self.iter().next()
    }

    /// Whether nothing was open that matters.
    pub(super) fn is_one(&self) -> bool {
        self.0.len() == 1
    }
}

/// Whether the lead is a word of its own, and F cuts nothing.
pub(super) fn is_by_lead_word(state: &State, dialect: &Dialect) -> bool {
    match dialect.reading.feed_basis {
        Some(FeedBasis::LeadWord) => true,
        Some(_) => state.uses_lead_word(),
        None => state.cycle.lead.is_some(),
    }
}

/// The units that F may be in.
fn units(state: &State, dialect: &Dialect) -> impl Iterator<Item = (Unit, &'static str)> {
    let now = state.unit();
    let set = state.feed.and_then(|feed| feed.unit);
    let converted = dialect.reading.feed_converted_on_units_change;
    let found = match (now, set, converted) {
        (Some(now), Some(set), _) if now == set => [Some((now, "")), None],
        (_, Some(set), Some(true)) => [Some((set, "")), None],
        (Some(now), Some(set), None) => {
            [Some((now, readings::UNITS_KEEP_FEED)), Some((set, readings::UNITS_CONVERT_FEED))]
        }
        (Some(now), _, _) => [Some((now, "")), None],
        (None, _, _) => [Some((Unit::Mm, readings::STARTS_IN_MM)), Some((Unit::Inch, readings::STARTS_IN_INCHES))],
    };
    found.into_iter().flatten()
}

/// What F may be counted by in a tapping cycle.
pub(super) fn bases(state: &State, dialect: &Dialect) -> impl Iterator<Item = (Basis, &'static str)> {
    let by_mode = match state.mode.map(|mode| mode.value) {
        Some(Mode::Feed(FeedMode::PerMinute)) => [Some(Basis::PerMinute), None],
        Some(Mode::Feed(FeedMode::PerRevolution)) => [Some(Basis::PerRevolution), None],
        Some(Mode::InverseTime) => [None, None],
        None => [Some(Basis::PerMinute), Some(Basis::PerRevolution)],
    };
    let found = match dialect.reading.feed_basis {
        Some(FeedBasis::PerMinuteAlways) => [Some((Basis::PerMinute, "")), None, None],
        Some(FeedBasis::PerRevolutionInTapCycle) => [Some((Basis::PerRevolution, "")), None, None],
        Some(_) => match by_mode {
            [Some(one), Some(other)] => {
                [Some((one, readings::STARTS_PER_MINUTE)), Some((other, readings::STARTS_PER_REVOLUTION)), None]
            }
            [one, _] => [one.map(|one| (one, "")), None, None],
        },
        None => {
            let [one, other] = by_mode;
            let named = |basis: Basis| (basis, readings::FEED_BY_MODE);
            [one.map(named), other.map(named), Some((Basis::PerRevolution, readings::FEED_IS_LEAD))]
        }
    };
    found.into_iter().flatten()
}
