//! The drills that a shop owns, and their names as people write them.

use super::search::Spot;
use super::{Drill, DrillSet};
use crate::error::{Code, Error, Field};
use crate::length::Length;
use crate::number::read_number;

/// The most drills of a list.
pub const MOST_OWN_DRILLS: usize = 24;

/// "I have only these drills": up to 24 of them, to choose a tap drill from instead of whole sets.
///
/// ```
/// use threadcalc_core::{OwnDrills, Tap, TapDrillRequest, Thread, tap_drill};
///
/// let mut own = OwnDrills::new();
/// for name in ["6.8", "#7", "F", "13/64"] {
///     own.read(name.as_bytes())?;
/// }
/// let request = TapDrillRequest { tap: Tap::Cut, percent: None, basis: None, sets: &own, taper_reamer: false };
/// assert_eq!(tap_drill(&Thread::read(b"M8-6H")?, &request)?.chosen.drill.name().as_str(), "6.8");
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct OwnDrills {
    spots: [Spot; MOST_OWN_DRILLS],
    count: usize,
}

impl OwnDrills {
    /// No drills.
    #[must_use]
    pub const fn new() -> Self {
        Self { spots: [Spot::NONE; MOST_OWN_DRILLS], count: 0 }
    }

    /// Adds a drill.
    ///
    /// # Errors
    /// [`Code::OutOfRange`] for a diameter that is not above 0, [`Code::NotExact`] for one with more than
    /// 9 decimals of a millimetre, [`Code::TooLong`] beyond 24 drills; each with the place of the drill in
    /// the list, from 1, as what was given.
    pub fn add(&mut self, drill: Drill) -> Result<(), Error> {
        let fault = |code, hint| self.fault(Error::new(code, Field::DrillList).hint_text(hint));
        if !drill.diameter_mm().is_positive() {
            return Err(fault(Code::OutOfRange, "a diameter in mm above 0; got is the drill's place in the list"));
        }
        let spot = Spot::of(&drill).ok_or(fault(Code::NotExact, "a diameter of at most 9 decimals of a millimetre"))?;
        let full = fault(Code::TooLong, "at most 24 drills");
        *self.spots.get_mut(self.count).ok_or(full)? = spot;
        self.count = self.count.saturating_add(1);
        Ok(())
    }

    /// Adds the drill with this name or diameter, as [`Drill::read`] reads it.
    ///
    /// # Errors
    /// Those of [`Drill::read`], about the list, and of [`OwnDrills::add`].
    pub fn read(&mut self, name: &[u8]) -> Result<(), Error> {
        let drill = Drill::read(name).map_err(|error| {
            let error = self.fault(error);
            match error.code() {
                Code::Unreadable => {
                    error.hint_text("a drill such as 6.8, #7, F, 13/64 in; got is its place in the list")
                }
                Code::OutOfRange => error.hint_text("a diameter above 0; got is the drill's place in the list"),
                _ => error,
            }
        })?;
        self.add(drill)
    }

    /// An error about the drill that was to be added next: of the list, with its place from 1.
    #[must_use]
    pub const fn fault(&self, error: Error) -> Error {
        error.about(Field::DrillList).got(self.count as f64 + 1.0)
    }

    /// The drills, in the order they were added.
    pub fn iter(&self) -> impl Iterator<Item = Drill> {
        self.spots().iter().map(Spot::drill)
    }

    /// True if there is none.
    #[must_use]
    pub const fn is_empty(&self) -> bool {
        self.count == 0
    }

    pub(super) fn spots(&self) -> &[Spot] {
        self.spots.get(..self.count).unwrap_or(&[])
    }
}

impl Default for OwnDrills {
    fn default() -> Self {
        Self::new()
    }
}

const NAMES: &str = "a drill such as 6.8, 6.8 mm, #7, No. 7, F, 13/64, 1 1/64 or 0.2010 in";

impl Drill {
    /// The drill that a name or a diameter means: `6.8`, `6.8 mm`, `#7`, `No. 7`, `F`, `13/64`, `1 1/64`,
    /// `0.2010 in`, `.2010"`.
    ///
    /// A number without a unit is in millimetres, also a whole one (the 2 inch drill is `2 in`); a fraction is in
    /// inches. A diameter that stands in no set is a
    /// drill named by its diameter.
    ///
    /// # Errors
    /// [`Code::Empty`]; [`Code::Unreadable`]; [`Code::UnknownValue`] for a number drill outside `#1` to `#97`;
    /// [`Code::OutOfRange`] for a diameter that is not above 0; those of [`read_number`].
    ///
    /// # Example
    /// ```
    /// use threadcalc_core::{Drill, DrillSet};
    ///
    /// assert_eq!(Drill::read(b"No. 7")?, Drill::named(DrillSet::Number, b"#7")?);
    /// assert_eq!(Drill::read(b"0.201 in")?.diameter_mm().to_string(), "5.1054");
    /// # Ok::<(), threadcalc_core::Error>(())
    /// ```
    ///
    /// # Source
    /// ASME B94.11M (number, letter, fractional); ISO 235 (metric).
    pub fn read(name: &[u8]) -> Result<Self, Error> {
        let text = name.trim_ascii();
        let wrong = |code| Error::new(code, Field::Drill).hint_text(NAMES);
        match text {
            [] => return Err(wrong(Code::Empty)),
            [letter] if letter.is_ascii_alphabetic() => {
                return Self::named(DrillSet::Letter, &[letter.to_ascii_uppercase()]);
            }
            _ => {}
        }
        if let Some(digits) = number_of(text) {
            let number = digits.iter().try_fold(0_usize, |number, digit| {
                let digit = usize::from(digit.checked_sub(b'0').filter(|digit| *digit <= 9)?);
                number.checked_mul(10)?.checked_add(digit)
            });
            let place = number.filter(|_| !digits.is_empty()).and_then(|number| number.checked_sub(1));
            return place
                .and_then(|place| DrillSet::Number.at_place(place))
                .map(|spot| spot.drill())
                .ok_or(Error::new(Code::UnknownValue, Field::Drill).hint_text("#1 to #97"));
        }
        let fraction = text.contains(&b'/');
        let (digits, unit) = unit_of(text);
        let value = read_number(digits).map_err(|error| error.about(Field::Drill).hint_text(NAMES))?;
        if !value.is_positive() {
            return Err(Error::new(Code::OutOfRange, Field::Drill).got(value.to_f64()).hint_text("a diameter above 0"));
        }
        let in_inches = match unit {
            Some(unit) => unit == crate::Unit::Inch,
            None => fraction,
        };
        if !in_inches {
            return Ok(Self::of_diameter(value));
        }
        let diameter = value.times(Length::INCH).map_err(|error| error.about(Field::Drill))?;
        // A size in inches is a fraction first: 1/4 is letter E as well.
        let fraction = diameter.picometres().and_then(|picometres| DrillSet::Fractional.at(picometres));
        Ok(fraction.map_or_else(|| Self::of_diameter(diameter), |spot| spot.drill()))
    }
}

/// What follows `#`, `No.` or `no`.
fn number_of(text: &[u8]) -> Option<&[u8]> {
    let rest = match text {
        [b'#', rest @ ..] | [b'N' | b'n', b'O' | b'o', b'.', rest @ ..] | [b'N' | b'n', b'O' | b'o', rest @ ..] => rest,
        _ => return None,
    };
    Some(rest.trim_ascii_start())
}

/// The digits, and the unit behind them.
fn unit_of(text: &[u8]) -> (&[u8], Option<crate::Unit>) {
    let (digits, unit) = match text {
        [digits @ .., b'M' | b'm', b'M' | b'm'] => (digits, Some(crate::Unit::Mm)),
        [digits @ .., b'I' | b'i', b'N' | b'n'] | [digits @ .., b'"'] => (digits, Some(crate::Unit::Inch)),
        _ => (text, None),
    };
    (digits.trim_ascii_end(), unit)
}
