//! Chamfers of taps: how many threads they take, and where they fit.

use crate::depth::Hole;
use crate::length::{Length, Ratio};
use crate::named::named;

named! {
    /// The chamfer of a tap by its letter or by its name.
    pub enum ChamferForm {
        /// 6 to 8 threads.
        A = 1 "A",
        /// 3.5 to 5.5 threads, with spiral point.
        B = 2 "B",
        /// 2 to 3 threads.
        C = 3 "C",
        /// 3.5 to 5 threads.
        D = 4 "D",
        /// 1.5 to 2 threads.
        E = 5 "E",
        /// 1 to 1.5 threads.
        F = 6 "F",
        /// 7 to 10 threads.
        Taper = 7 "taper",
        /// 3 to 5 threads.
        Plug = 8 "plug",
        /// 2 to 2.5 threads.
        SemiBottoming = 9 "semi_bottoming",
        /// 1 to 2 threads.
        Bottoming = 10 "bottoming",
    }
}

impl ChamferForm {
    /// The shortest and the longest chamfer of the form in threads. Plan on the longest.
    ///
    /// ```
    /// use threadcalc_core::ChamferForm;
    ///
    /// let (shortest, longest) = ChamferForm::C.threads();
    /// assert_eq!((shortest.to_string(), longest.to_string()), ("2".into(), "3".into()));
    /// ```
    ///
    /// # Source
    /// DIN 2197 as tap makers print it (B to 5.5: from memory of the standard, some print 5); the names:
    /// tap makers' published tables.
    #[must_use]
    pub const fn threads(self) -> (Ratio, Ratio) {
        let (shortest, longest) = match self {
            Self::A => (12, 16),
            Self::B => (7, 11),
            Self::C => (4, 6),
            Self::D => (7, 10),
            Self::E => (3, 4),
            Self::F => (2, 3),
            Self::Taper => (14, 20),
            Self::Plug => (6, 10),
            Self::SemiBottoming => (4, 5),
            Self::Bottoming => (2, 4),
        };
        (Length::parts(shortest, 2), Length::parts(longest, 2))
    }

    /// The kind of hole that the form is made for; `None` for both.
    ///
    /// # Source
    /// Common practice.
    #[must_use]
    pub const fn usual_hole(self) -> Option<Hole> {
        match self {
            Self::A | Self::B | Self::Taper => Some(Hole::Through),
            Self::E | Self::F | Self::Bottoming => Some(Hole::Blind),
            Self::C | Self::D | Self::Plug | Self::SemiBottoming => None,
        }
    }

    /// Whether the longest chamfer of the form has room, in threads: in a blind hole between the end of full
    /// thread and the end of the drilled diameter, below a through hole down to what the tap may not touch.
    /// Form B never fits a blind hole: its spiral point drives the chips to the bottom.
    ///
    /// # Example
    /// ```
    /// use threadcalc_core::{ChamferForm, Hole, Length};
    ///
    /// assert!(ChamferForm::C.fits(Hole::Blind, Length::integer(3)));
    /// assert!(!ChamferForm::B.fits(Hole::Blind, Length::integer(10)));
    /// ```
    ///
    /// # Source
    /// As [`threads`](Self::threads); form B: common practice.
    #[must_use]
    pub fn fits(self, hole: Hole, room_threads: Ratio) -> bool {
        let drives_chips_down = self == Self::B && hole == Hole::Blind;
        !drives_chips_down && self.threads().1 <= room_threads
    }
}

/// The forms that fit a hole with this room, in threads; see [`ChamferForm::fits`].
///
/// # Example
/// ```
/// use threadcalc_core::{ChamferForm, Hole, Length, chamfers_that_fit};
///
/// let forms: Vec<ChamferForm> = chamfers_that_fit(Hole::Blind, Length::new(5, 2)?).collect();
/// assert_eq!(forms, [ChamferForm::E, ChamferForm::F, ChamferForm::SemiBottoming, ChamferForm::Bottoming]);
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
pub fn chamfers_that_fit(hole: Hole, room_threads: Ratio) -> impl Iterator<Item = ChamferForm> {
    ChamferForm::ALL.iter().copied().filter(move |form| form.fits(hole, room_threads))
}
