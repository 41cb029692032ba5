//! Threads of all families by their diameter or their pitch.

use super::threads_of_form;
use crate::error::{Code, Error, Field};
use crate::form::Form;
use crate::length::Length;
use crate::number::check_digits;
use crate::range::above_zero;
use crate::thread::{LARGEST_DIAMETER_MM, Thread};

/// The standard threads of all families whose basic major diameter is about this one, in the order of
/// [`standard_threads`](crate::standard_threads).
///
/// `diameter_mm` as it was measured, `within_mm` how far a diameter may be from it, both in millimetres. Of pipe
/// threads the diameter of the thread counts, of NPT and its kin the pipe's outside. A screw measures less than its
/// basic diameter, by allowance, tolerance and wear.
///
/// # Errors
/// [`Code::OutOfRange`] for a diameter outside 0 to 2000 mm or a negative `within_mm`; [`Code::Overflow`] for more
/// digits than a drawing has.
///
/// # Example
/// ```
/// use threadcalc_core::{Length, threads_near_diameter};
///
/// let found = threads_near_diameter(Length::new(127, 20)?, Length::new(1, 100)?)?; // 6.35 mm
/// let texts: Vec<_> = found.map(|thread| thread.to_string()).collect();
/// assert!(texts.contains(&"1/4-20 UNC".into()) && texts.contains(&"1/4-26 BSF".into()));
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// Those of [`standard_threads`](crate::standard_threads).
pub fn threads_near_diameter(
    diameter_mm: Length,
    within_mm: Length,
) -> Result<impl Iterator<Item = Thread> + Clone, Error> {
    let diameter = above_zero(diameter_mm, Field::Diameter, LARGEST_DIAMETER_MM)?;
    let (least, most) = about(diameter, Field::Diameter, within_mm)?;
    let is_wanted = move |major: Length, _| least <= major && major <= most;
    Ok(Form::ALL.iter().copied().flat_map(move |form| threads_of_form(form, is_wanted)))
}

/// The standard threads of all families whose pitch is about this one, in the order of
/// [`standard_threads`](crate::standard_threads).
///
/// `pitch_mm` and `within_mm` in millimetres. The threads have one start: of a lead with several starts the
/// pitch is the lead over their number.
///
/// # Errors
/// [`Code::OutOfRange`] for a pitch outside 0 to 1000 mm or a negative `within_mm`; [`Code::Overflow`] for more
/// digits than a drawing has.
///
/// # Example
/// ```
/// use threadcalc_core::{Length, threads_near_pitch};
///
/// let found = threads_near_pitch(Length::new(23, 100)?, Length::ZERO)?; // 0.23 mm
/// assert_eq!(found.map(|thread| thread.to_string()).collect::<Vec<_>>(), ["14 BA"]);
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// Those of [`standard_threads`](crate::standard_threads).
pub fn threads_near_pitch(pitch_mm: Length, within_mm: Length) -> Result<impl Iterator<Item = Thread> + Clone, Error> {
    let pitch = above_zero(pitch_mm, Field::Pitch, crate::motion::MOST_LEAD)?;
    let (least, most) = about(pitch, Field::Pitch, within_mm)?;
    let is_wanted = move |_, pitch: Length| least <= pitch && pitch <= most;
    Ok(Form::ALL.iter().copied().flat_map(move |form| threads_of_form(form, is_wanted)))
}

/// From `value − within` to `value + within`.
fn about(value: Length, field: Field, within: Length) -> Result<(Length, Length), Error> {
    if within.is_negative() || within > Length::integer(LARGEST_DIAMETER_MM) {
        return Err(Error::new(Code::OutOfRange, Field::Within)
            .got(within.to_f64())
            .within(0.0, LARGEST_DIAMETER_MM as f64)
            .hint_text("how far it may be off, in mm; 0 is exactly"));
    }
    check_digits(value, field)?;
    check_digits(within, Field::Within)?;
    let of_field = |error: Error| error.about(field);
    Ok((value.minus(within).map_err(of_field)?, value.plus(within).map_err(of_field)?))
}
