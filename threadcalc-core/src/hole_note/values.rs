//! What has been read of a note so far: values as written, and what contradicts them.

use crate::error::{Code, Error, Field};
use crate::feed::Unit;
use crate::length::Length;
use crate::number::check_digits;

/// A number as the note writes it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Measured {
    pub value: Length,
    /// The unit, where a mark or the name of a drill says it.
    pub unit: Option<Unit>,
    /// Written as a fraction, which on drawings is inches.
    pub fraction: bool,
    /// A whole number without point, fraction and mark.
    pub whole: Option<i64>,
    /// The name of a drill, whose printed diameter may be rounded.
    pub named: bool,
    pub at: usize,
}

/// The unit of lengths without a mark.
#[derive(Clone, Copy, Debug)]
pub(super) struct System {
    /// The drawing's unit.
    pub given: Option<Unit>,
    /// The unit of the thread's standard.
    pub of_thread: Option<Unit>,
}

impl Measured {
    /// The unit the value is in, and whether that was assumed.
    pub fn unit_in(&self, system: System) -> Result<(Unit, bool), Error> {
        if let Some(unit) = self.unit.or(system.given) {
            return Ok((unit, false));
        }
        let Some(unit) = system.of_thread else {
            return Err(Error::new(Code::Missing, Field::Unit)
                .at_byte(self.at)
                .hint_text("the drawing's unit: the note has no thread to go by, and this length has no mark"));
        };
        Ok((if self.fraction { Unit::Inch } else { unit }, true))
    }

    fn in_mm(&self, system: System, field: Field) -> Result<Length, Error> {
        let (unit, _) = self.unit_in(system)?;
        let value = self.value.times(unit.in_mm()).map_err(|error| error.about(field).at_byte(self.at))?;
        check_digits(value, field).map_err(|error| error.at_byte(self.at))?;
        Ok(value)
    }
}

/// One length of a note. It may be said twice, in one way or in two: `#7 (.201)`.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct Slot {
    first: Option<Measured>,
    again: Option<Measured>,
}

/// Two lengths for one thing.
fn contradiction(field: Field, at: usize) -> Error {
    Error::new(Code::Contradiction, field).at_byte(at).hint_text("the note gives this twice, and differently")
}

impl Slot {
    pub const fn is_set(&self) -> bool {
        self.first.is_some()
    }

    /// Where the length stands that was read last.
    pub fn at(&self) -> Option<usize> {
        self.again.or(self.first).map(|measured| measured.at)
    }

    pub fn set(&mut self, given: Measured, field: Field) -> Result<(), Error> {
        if !given.value.is_positive() {
            return Err(Error::new(Code::OutOfRange, field)
                .at_byte(given.at)
                .got(given.value.to_f64())
                .hint_text("a length above 0"));
        }
        let same = |held: Measured| (held.value, held.unit) == (given.value, given.unit);
        match (self.first, self.again) {
            (None, _) => self.first = Some(given),
            (Some(first), _) if same(first) => {}
            (_, None) => self.again = Some(given),
            (_, Some(again)) if same(again) => {}
            _ => return Err(contradiction(field, given.at)),
        }
        Ok(())
    }

    /// The length in millimetres; both ways of saying it have to agree.
    pub fn value(&self, system: System, field: Field) -> Result<Option<Length>, Error> {
        let Some(first) = self.first else { return Ok(None) };
        let value = first.in_mm(system, field)?;
        let Some(again) = self.again else { return Ok(Some(value)) };
        let other = again.in_mm(system, field)?;
        let off = value.minus(other).map_or(Length::ONE, Length::magnitude);
        // Charts print a named drill to three decimals of an inch: up to half of the last is rounding.
        let rounding = if first.named || again.named { const { Length::parts(127, 10_000) } } else { Length::ZERO };
        if off > rounding {
            return Err(contradiction(field, again.at));
        }
        Ok(Some(if again.named && !first.named { other } else { value }))
    }

    /// The values as written.
    pub fn measured(&self) -> impl Iterator<Item = Measured> {
        self.first.into_iter().chain(self.again)
    }
}

/// A thing that is said once: a count, an angle, a stage of plating.
pub(super) fn set_once<T: PartialEq>(held: &mut Option<T>, given: T, field: Field, at: usize) -> Result<(), Error> {
    match held {
        Some(known) if *known != given => Err(contradiction(field, at)),
        _ => {
            *held = Some(given);
            Ok(())
        }
    }
}
