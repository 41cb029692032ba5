//! Taps: kinds, chamfers, classes and limits, what the shank says, and whether it suits the job.

mod chamfer;
mod class;
mod judge;
mod judge_size;
mod limit;
mod mark;
mod usual_limit;
mod words;

pub use chamfer::{ChamferForm, chamfers_that_fit};
pub use class::{IsoTap, IsoTapClass, iso_tap_class};
pub(crate) use judge::judge_tap_in;
pub use judge::{TapJob, judge_tap};
pub use limit::{LimitLetter, TapLimit, h_limit_for_plating};
pub use mark::{ShankMark, read_shank_mark};
pub use usual_limit::{usual_tap_limit, usual_tap_limit_for_plating};

use crate::coating::pitch_diameter_growth_mm;
use crate::depth::Hole;
use crate::drill::Tap;
use crate::error::{Error, Field};
use crate::length::Length;
use crate::named::named;
use crate::thread::Thread;

named! {
    /// How a tap is built.
    pub enum TapKind {
        /// Straight flutes, a hand tap among them.
        StraightFlute = 1 "straight_flute",
        /// Straight flutes with a spiral point, which pushes the chips ahead.
        SpiralPoint = 2 "spiral_point",
        /// Spiral flutes, which draw the chips back.
        SpiralFlute = 3 "spiral_flute",
        /// Forms the thread without chips.
        Form = 4 "form",
    }
}

named! {
    /// How well something suits.
    pub enum Suits {
        /// The usual choice.
        Well = 1 "well",
        /// Works where the reason says.
        WithCare = 2 "with_care",
        /// Trouble to be expected.
        Badly = 3 "badly",
    }
}

/// A kind of tap in a kind of hole.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct TapAdvice {
    /// How well it suits.
    pub suits: Suits,
    /// Why.
    pub reason: &'static str,
}

impl TapKind {
    /// Whether it cuts or forms.
    #[must_use]
    pub const fn tap(self) -> Tap {
        match self {
            Self::Form => Tap::Form,
            _ => Tap::Cut,
        }
    }

    /// The factor K for [`torque_by_chip_area`](crate::torque_by_chip_area), coarse pitch in steel: straight
    /// flutes 1.35, spiral flutes 1.15, spiral point 0.95; `None` for a form tap, which leaves no chip: see
    /// [`FORMING_FACTOR`](crate::FORMING_FACTOR).
    ///
    /// # Source
    /// A tap maker's published table (chamfer of 5 threads for straight flutes).
    #[must_use]
    pub const fn torque_factor(self) -> Option<f64> {
        match self {
            Self::StraightFlute => Some(1.35),
            Self::SpiralFlute => Some(1.15),
            Self::SpiralPoint => Some(0.95),
            Self::Form => None,
        }
    }

    /// How the kind suits a through or a blind hole, and why.
    ///
    /// # Example
    /// ```
    /// use threadcalc_core::{Hole, Suits, TapKind};
    ///
    /// assert_eq!(TapKind::SpiralFlute.advice(Hole::Blind).suits, Suits::Well);
    /// assert_eq!(TapKind::SpiralPoint.advice(Hole::Blind).suits, Suits::Badly);
    /// ```
    ///
    /// # Source
    /// Common practice.
    #[must_use]
    pub const fn advice(self, hole: Hole) -> TapAdvice {
        let (suits, reason) = match (self, hole) {
            (Self::StraightFlute, Hole::Through) => {
                (Suits::WithCare, "chips stay in the flutes: for short chips, cast iron and brass")
            }
            (Self::StraightFlute, Hole::Blind) => {
                (Suits::WithCare, "chips stay in the flutes: for short chips, and with room for them below")
            }
            (Self::SpiralPoint, Hole::Through) => (Suits::Well, "pushes the chips ahead and out below"),
            (Self::SpiralPoint, Hole::Blind) => {
                (Suits::Badly, "pushes the chips to the bottom, where they jam: only with room for all of them")
            }
            (Self::SpiralFlute, Hole::Through) => {
                (Suits::WithCare, "weaker than a spiral point: for interrupted holes, or where no chip may fall below")
            }
            (Self::SpiralFlute, Hole::Blind) => (Suits::Well, "draws the chips up and out"),
            (Self::Form, _) => {
                (Suits::Well, "no chips: for material that flows, with its own larger hole, oil, and more torque")
            }
        };
        TapAdvice { suits, reason }
    }
}

/// How much a plating closes the pitch diameter, in millimetres.
fn closing_mm(thread: &Thread, plating_um: Length) -> Result<Length, Error> {
    pitch_diameter_growth_mm(thread, plating_um, Field::PlatingThickness)
}
