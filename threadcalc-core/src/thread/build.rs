//! Threads made from their parts.

use super::{Hand, Side, Thread};
use crate::error::{Code, Error, Field};
use crate::form::Form;
use crate::length::Length;
use crate::number::check_digits;
use crate::series;

/// The most starts that are read.
pub(crate) const MOST_STARTS: i64 = 12;
/// The largest nominal diameter, in millimetres: beyond any standard of screw threads.
pub(crate) const LARGEST_DIAMETER_MM: i64 = 2000;

/// The coarsest pitch, in diameters.
const COARSEST: (i32, i32) = (5, 8);

impl Thread {
    /// The thread of the screw that goes into the insert, where this is the hole of one.
    pub(crate) const fn screw_of_wire_insert(self) -> Self {
        Self { wire_insert: false, major: self.nominal, ..self }
    }

    /// An ISO metric thread, right hand, single start, from its diameter and pitch in millimetres.
    ///
    /// # Errors
    /// [`Code::OutOfRange`] if diameter and pitch make no thread.
    pub fn metric(diameter_mm: Length, pitch_mm: Length) -> Result<Self, Error> {
        Self::build(Form::Metric, diameter_mm, pitch_mm, 1)
    }

    /// A Unified thread, right hand, single start, from its diameter in inches and threads per inch.
    ///
    /// # Errors
    /// [`Code::OutOfRange`] if diameter and pitch make no thread.
    pub fn unified(diameter_in: Length, threads_per_inch: Length) -> Result<Self, Error> {
        let pitch = pitch_of(threads_per_inch)?;
        Self::build(Form::Unified, diameter_in.times(Length::INCH)?, pitch, 1)
    }

    /// A Unified thread from the text that names its size: `1/4`, `#10`, `No. 10`, `10`, `1 1/4`, `0.3`.
    ///
    /// A bare whole number is a number size or inches as in a designation: `10` with 32, `1` with 8.
    ///
    /// # Errors
    /// Those of the designation reader for the size, and of [`Thread::unified`].
    pub fn unified_size(size: &[u8], threads_per_inch: Length) -> Result<Self, Error> {
        let pitch = pitch_of(threads_per_inch)?;
        Self::build(Form::Unified, crate::designation::unified_diameter(size, pitch)?, pitch, 1)
    }

    /// A thread of any diameter and pitch; a pipe thread is made from its size.
    pub(crate) fn build(form: Form, major: Length, pitch: Length, starts: u8) -> Result<Self, Error> {
        let largest = Length::integer(LARGEST_DIAMETER_MM);
        if !major.is_positive() || major > largest {
            return Err(Error::new(Code::OutOfRange, Field::Diameter)
                .got(major.to_f64())
                .within(0.0, largest.to_f64())
                .hint_text("the diameter in mm, above 0"));
        }
        // Beyond 5/8 of the diameter the basic profile has hardly a core left to call a thread.
        if !pitch.is_positive() || pitch.is_more_than(COARSEST, major) {
            return Err(Error::new(Code::OutOfRange, Field::Pitch)
                .got(pitch.to_f64())
                .within(0.0, major.times(const { Length::parts(5, 8) })?.to_f64())
                .hint_text("the pitch in mm, above 0 and at most 5/8 of the diameter"));
        }
        for (value, field) in [(major, Field::Diameter), (pitch, Field::Pitch)] {
            check_digits(value, field)?;
        }
        if starts > 1 {
            if form.has_fixed_sizes() {
                return Err(Error::new(Code::OutOfRange, Field::Starts).got(f64::from(starts)).within(1.0, 1.0));
            }
            pitch.times(Length::integer(i64::from(starts)))?;
        }
        let (series, is_listed) = series::place(form, major, pitch);
        if !is_listed && form.has_fixed_sizes() {
            return Err(Error::new(Code::OutOfRange, Field::Diameter)
                .got(major.to_f64())
                .hint_text("a diameter of the standard with its own pitch: these sizes are fixed"));
        }
        Ok(Self { series, starts, is_listed, ..Self::plain(form, major, pitch) })
    }

    const fn plain(form: Form, major: Length, pitch: Length) -> Self {
        let (hand, side, nominal) = (Hand::Right, form.side(), major);
        let (series, written_as, class) = (None, None, None);
        let (starts, is_listed, wire_insert) = (1, true, false);
        Self { form, hand, side, series, starts, is_listed, wire_insert, written_as, nominal, major, pitch, class }
    }

    /// A pipe thread of a standard's size.
    pub(crate) const fn of_pipe_size(form: Form, size: series::PipeSize) -> Self {
        Self::plain(form, size.major, size.pitch)
    }

    /// A pipe thread from its basic major diameter and pitch.
    fn pipe_from_parts(form: Form, major: Length, pitch: Length) -> Result<Self, Error> {
        let size = series::pipe_sizes(form).find(|size| size.major == major).ok_or(
            Error::new(Code::OutOfRange, Field::Diameter)
                .got(major.to_f64())
                .hint_text("the basic major diameter of a size that the standard lists"),
        )?;
        if size.pitch != pitch {
            return Err(Error::new(Code::SeriesMismatch, Field::Pitch)
                .got(pitch.to_f64())
                .within(size.pitch.to_f64(), size.pitch.to_f64())
                .hint_text("the pitch that the standard has for this pipe size"));
        }
        Ok(Self::of_pipe_size(form, size))
    }

    /// A thread from its parts, as the C structure holds them; `class` may be empty. A pipe thread is
    /// found by its basic major diameter, any other made from the diameter that names it.
    ///
    /// # Errors
    /// [`Code::OutOfRange`] for a size, pitch or number of starts that makes no thread,
    /// [`Code::SeriesMismatch`] for a pitch that the pipe size does not have,
    /// [`Code::UnknownClass`], [`Code::Contradiction`] if class and side disagree.
    pub fn from_parts(
        form: Form,
        major_mm: Length,
        pitch_mm: Length,
        starts: i64,
        hand: Hand,
        side: Option<Side>,
        class: &[u8],
    ) -> Result<Self, Error> {
        let thread = if form.is_pipe() {
            Self::pipe_from_parts(form, major_mm, pitch_mm)?
        } else {
            Self::build(form, major_mm, pitch_mm, 1)?
        };
        let thread = thread.with_starts(starts)?.with_hand(hand);
        let thread = if class.is_empty() { thread } else { thread.with_class(class)? };
        side.map_or(Ok(thread), |side| thread.with_side(side))
    }
}

/// The pitch in millimetres of a number of threads per inch.
pub(crate) fn pitch_of(threads_per_inch: Length) -> Result<Length, Error> {
    if !threads_per_inch.is_positive() {
        return Err(Error::new(Code::OutOfRange, Field::ThreadsPerInch)
            .got(threads_per_inch.to_f64())
            .hint_text("threads per inch above 0"));
    }
    Length::INCH.over(threads_per_inch)
}
