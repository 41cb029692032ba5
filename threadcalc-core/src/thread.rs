//! What a thread is: form, size, pitch, starts, hand, class and side.

use core::hash::{Hash, Hasher};

use crate::error::{Code, Error, Field};
use crate::form::{Form, WrittenAs};
use crate::length::Length;
use crate::named::named;
use crate::number::check_digits;
use crate::series::{self, Series};
use crate::text::Text;
use crate::tolerance_class::ToleranceClass;

named! {
    /// The direction of the helix.
    pub enum Hand {
        /// Advances when turned clockwise.
        Right = 1 "right",
        /// Advances when turned anticlockwise.
        Left = 2 "left",
    }
}

named! {
    /// The side of a fit.
    pub enum Side {
        /// A tapped hole or a nut.
        Internal = 1 "internal",
        /// A screw.
        External = 2 "external",
    }
}

/// A screw thread. `Copy`, immutable; equality and hash are on values.
///
/// ```
/// use threadcalc_core::Thread;
///
/// let thread = Thread::read(b"1/4-20 UNC-2B")?;
/// assert_eq!(thread.lead_mm().to_string(), "1.27");
/// assert_eq!(thread, Thread::read(b".250-20 unc 2B")?);
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
#[derive(Clone, Copy, Debug)]
pub struct Thread {
    form: Form,
    hand: Hand,
    side: Option<Side>,
    series: Option<Series>,
    starts: u8,
    written_as: Option<WrittenAs>,
    major: Length,
    pitch: Length,
    lead: Length,
    class: Option<ToleranceClass>,
}

/// The most starts that are read.
pub(crate) const MOST_STARTS: i64 = 12;
/// The largest nominal diameter, in millimetres: beyond any standard of screw threads.
pub(crate) const LARGEST_DIAMETER_MM: i64 = 2000;

/// The coarsest pitch, in diameters.
const COARSEST: (i32, i32) = (5, 8);

impl Thread {
    /// Reads one designation; see `designation` for the forms. Offsets in errors are bytes.
    ///
    /// # Errors
    /// Every code of the designation reader: [`Code::Empty`], [`Code::Unreadable`], [`Code::TooLong`],
    /// [`Code::SeriesMismatch`], [`Code::UnknownClass`], [`Code::Fit`], [`Code::UnsupportedForm`],
    /// [`Code::OutOfRange`], [`Code::NotExact`], [`Code::Overflow`], [`Code::Missing`] for a metric
    /// diameter without a coarse pitch, [`Code::Contradiction`] for a lead that is no multiple of the pitch.
    pub fn read(text: &[u8]) -> Result<Self, Error> {
        crate::designation::read(text)
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

    /// A metric or Unified thread of any diameter and pitch.
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
                .within(0.0, major.times(Length::parts(5, 8))?.to_f64())
                .hint_text("the pitch in mm, above 0 and at most 5/8 of the diameter"));
        }
        for (value, field) in [(major, Field::Diameter), (pitch, Field::Pitch)] {
            check_digits(value, field)?;
        }
        let lead = if starts == 1 { pitch } else { pitch.times(Length::integer(i64::from(starts)))? };
        let series = series::of(form, major, pitch);
        Ok(Self { series, starts, lead, ..Self::plain(form, major, pitch) })
    }

    const fn plain(form: Form, major: Length, pitch: Length) -> Self {
        let (hand, side, lead) = (Hand::Right, form.side(), pitch);
        Self { form, hand, side, series: None, starts: 1, written_as: None, major, pitch, lead, class: None }
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
    /// found by its basic major diameter.
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

    /// The same thread with this tolerance class, and the side that follows from it.
    ///
    /// # Errors
    /// [`Code::UnknownClass`]; [`Code::Contradiction`] if the side was set to the other one.
    pub fn with_class(self, text: &[u8]) -> Result<Self, Error> {
        let class = ToleranceClass::new(self.form, text)?;
        // A bare G is internal by its name alone, and says external by its class.
        let side_was_set = self.class.is_none() && self.form.side() != self.side;
        match (class.side(), self.side) {
            (Some(of_class), Some(side)) if side_was_set && of_class != side => {
                Err(Error::new(Code::Contradiction, Field::ToleranceClass)
                    .hint_text("the class belongs to the other side of the fit"))
            }
            (of_class, side) => Ok(Self { class: Some(class), side: of_class.or(side), ..self }),
        }
    }

    /// The same thread without class and side, as a tap's shank names it.
    pub(crate) const fn without_class(self) -> Self {
        Self { class: None, side: self.form.side(), ..self }
    }

    /// The same thread on this side of the fit.
    ///
    /// # Errors
    /// [`Code::Contradiction`] if the form or the tolerance class belongs to the other side.
    pub fn with_side(self, side: Side) -> Result<Self, Error> {
        let of_class = self.class.and_then(|class| class.side());
        let of_form = if self.form == Form::G { None } else { self.form.side() };
        match of_class.or(of_form) {
            Some(own) if own != side => Err(Error::new(Code::Contradiction, Field::Side).hint_text(match self.form {
                Form::R => "R is the external thread; the hole for it is Rp or Rc",
                Form::Rp | Form::Rc => "Rp and Rc are internal threads; the external one is R",
                Form::Npsc | Form::Npsf => "this thread is internal only",
                _ => "the tolerance class belongs to the other side of the fit",
            })),
            _ => Ok(Self { side: Some(side), ..self }),
        }
    }

    /// The same thread with this hand.
    #[must_use]
    pub const fn with_hand(self, hand: Hand) -> Self {
        Self { hand, ..self }
    }

    /// The same thread with this number of starts.
    ///
    /// # Errors
    /// [`Code::OutOfRange`] outside 1 to 12; a pipe thread has 1.
    pub fn with_starts(self, starts: i64) -> Result<Self, Error> {
        let most = if self.form.is_pipe() { 1 } else { MOST_STARTS };
        let count = u8::try_from(starts)
            .ok()
            .filter(|_| (1..=most).contains(&starts))
            .ok_or(Error::new(Code::OutOfRange, Field::Starts).got(starts as f64).within(1.0, most as f64))?;
        let lead = if count == 1 { self.pitch } else { self.pitch.times(Length::integer(starts))? };
        Ok(Self { starts: count, lead, ..self })
    }

    /// The profile.
    #[must_use]
    pub const fn form(&self) -> Form {
        self.form
    }

    /// The standard's series; `None` for a metric special and for pipe threads.
    #[must_use]
    pub const fn series(&self) -> Option<Series> {
        self.series
    }

    /// True if the standard lists this size with this pitch, single start.
    #[must_use]
    pub fn is_standard(&self) -> bool {
        self.form.is_pipe() || (self.starts == 1 && self.series.is_some_and(|series| series != Series::Uns))
    }

    /// An older or open name that the thread was read from, `BSPT`; no part of its value.
    #[must_use]
    pub const fn written_as(&self) -> Option<WrittenAs> {
        self.written_as
    }

    /// The same thread, remembered as written under this older or open name.
    ///
    /// # Errors
    /// [`Code::Contradiction`] if the name stands for another form.
    pub fn with_written_as(self, written_as: WrittenAs) -> Result<Self, Error> {
        if written_as.form() != self.form {
            return Err(Error::new(Code::Contradiction, Field::WrittenAs)
                .hint_text("the name is read as another form of thread than this one"));
        }
        Ok(Self { written_as: Some(written_as), ..self })
    }

    /// The text that names the size: `10`, `1/2`, `No. 10`, `1 1/4`, `0.300`, `14 O.D.`
    #[must_use]
    pub fn size(&self) -> Text<16> {
        crate::designation::size_text(self)
    }

    /// The diameter that names the thread, in millimetres, exact; `None` for a pipe thread, whose size
    /// is a name.
    #[must_use]
    pub const fn nominal_mm(&self) -> Option<Length> {
        if self.form.is_pipe() { None } else { Some(self.major) }
    }

    /// Basic major diameter in millimetres, exact. NPT and its kin: the outside diameter of the pipe;
    /// R and Rc: at the gauge plane.
    #[must_use]
    pub const fn major_mm(&self) -> Length {
        self.major
    }

    /// Distance between neighbouring threads in millimetres, exact.
    #[must_use]
    pub const fn pitch_mm(&self) -> Length {
        self.pitch
    }

    /// Advance in one turn in millimetres, exact: pitch × starts.
    #[must_use]
    pub const fn lead_mm(&self) -> Length {
        self.lead
    }

    /// Number of starts.
    #[must_use]
    pub const fn starts(&self) -> u8 {
        self.starts
    }

    /// Right or left.
    #[must_use]
    pub const fn hand(&self) -> Hand {
        self.hand
    }

    /// Taper on the diameter: 1/16 for NPT, NPTF, R and Rc, 0 for the straight threads.
    #[must_use]
    pub const fn taper_on_diameter(&self) -> Length {
        if self.form.is_taper() { crate::pipe::TAPER } else { Length::ZERO }
    }

    /// Internal or external, where class or caller says so.
    #[must_use]
    pub const fn side(&self) -> Option<Side> {
        self.side
    }

    /// The tolerance class as written.
    #[must_use]
    pub const fn tolerance_class(&self) -> Option<ToleranceClass> {
        self.class
    }

    /// Threads per inch of Unified and pipe threads, exact; `None` for metric ones.
    #[must_use]
    pub fn threads_per_inch(&self) -> Option<Length> {
        (self.form != Form::Metric).then(|| Length::INCH.over(self.pitch).ok()).flatten()
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

impl PartialEq for Thread {
    fn eq(&self, other: &Self) -> bool {
        (self.form, self.hand, self.side, self.starts) == (other.form, other.hand, other.side, other.starts)
            && (self.major, self.pitch, self.class) == (other.major, other.pitch, other.class)
    }
}

impl Eq for Thread {}

impl Hash for Thread {
    fn hash<H: Hasher>(&self, state: &mut H) {
        (self.form, self.hand, self.side, self.starts).hash(state);
        (self.major, self.pitch, self.class).hash(state);
    }
}
