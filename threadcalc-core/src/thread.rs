//! What a thread is: form, size, pitch, starts, hand, class and side.

mod build;

use core::hash::{Hash, Hasher};

use crate::error::{Code, Error, Field};
use crate::form::{Form, WrittenAs};
use crate::length::Length;
use crate::named::named;
use crate::series::Series;
use crate::text::Text;
use crate::tolerance_class::ToleranceClass;
pub(crate) use build::{LARGEST_DIAMETER_MM, MOST_STARTS, pitch_of};

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
    is_listed: bool,
    wire_insert: bool,
    written_as: Option<WrittenAs>,
    nominal: Length,
    major: Length,
    pitch: Length,
    class: Option<ToleranceClass>,
}

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
        let side = if self.wire_insert { Some(Side::Internal) } else { self.form.side() };
        Self { class: None, side, ..self }
    }

    /// The thread of the hole for this one, without a class.
    pub(crate) const fn of_hole(self) -> Self {
        let form = if matches!(self.form, Form::UnifiedR) { Form::Unified } else { self.form };
        Self { form, ..self }.without_class()
    }

    /// The same thread on this side of the fit.
    ///
    /// # Errors
    /// [`Code::Contradiction`] if the form or the tolerance class belongs to the other side.
    #[inline(never)]
    pub fn with_side(self, side: Side) -> Result<Self, Error> {
        let of_class = self.class.and_then(|class| class.side());
        let of_form = match self.form {
            Form::G => None,
            _ if self.wire_insert => Some(Side::Internal),
            form => form.side(),
        };
        match of_class.or(of_form) {
            Some(own) if own != side => Err(Error::new(Code::Contradiction, Field::Side).hint_text(match self.form {
                Form::R => "R is the external thread; the hole for it is Rp or Rc",
                Form::Rp | Form::Rc => "Rp and Rc are internal threads; the external one is R",
                Form::Npsc | Form::Npsf => "this thread is internal only",
                Form::UnifiedR => "UNR is the external thread; the hole for it is UN",
                _ if self.wire_insert => "the hole of a wire insert is internal",
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
    /// [`Code::OutOfRange`] outside 1 to 12; pipe threads, S, BA and the holes of wire inserts have 1.
    pub fn with_starts(self, starts: i64) -> Result<Self, Error> {
        let most = if self.form.has_fixed_sizes() || self.wire_insert { 1 } else { MOST_STARTS };
        let count = u8::try_from(starts)
            .ok()
            .filter(|_| (1..=most).contains(&starts))
            .ok_or(Error::new(Code::OutOfRange, Field::Starts).got(starts as f64).within(1.0, most as f64))?;
        if count > 1 {
            self.pitch.times(Length::integer(starts))?;
        }
        Ok(Self { starts: count, ..self })
    }

    /// The tapped hole that takes a wire insert for this thread: the same pitch on a larger diameter.
    ///
    /// # Errors
    /// [`Code::UnsupportedForm`] for another thread than M, MJ, UN and UNJ of one start,
    /// [`Code::Contradiction`] for an external one.
    ///
    /// # Example
    /// ```
    /// use threadcalc_core::Thread;
    ///
    /// let hole = Thread::read(b"M8x1.25")?.with_wire_insert()?;
    /// assert_eq!(hole.to_string(), "M8x1.25 STI");
    /// assert_eq!((hole.nominal_mm().unwrap().to_string(), hole.major_mm().to_string()), ("8".into(), "9.624".into()));
    /// # Ok::<(), threadcalc_core::Error>(())
    /// ```
    ///
    /// # Source
    /// ASME B18.29.1-2010 and B18.29.2M-2005: the major diameter is larger by 1.5 H, here to the standards'
    /// 0.001 mm and 0.0001 in; the formula from memory.
    #[inline(never)]
    pub fn with_wire_insert(self) -> Result<Self, Error> {
        if !(matches!(self.form, Form::Unified | Form::UnifiedJ) || self.form.is_metric()) || self.starts > 1 {
            return Err(Error::new(Code::UnsupportedForm, Field::Form)
                .hint_text("wire inserts are made for M, MJ, UN and UNJ threads of one start"));
        }
        if self.side == Some(Side::External) {
            return Err(Error::new(Code::Contradiction, Field::Side).hint_text("the hole of a wire insert is internal"));
        }
        let major = crate::profile::wire_insert_major(self.form, self.nominal, self.pitch)?;
        Ok(Self { wire_insert: true, side: Some(Side::Internal), major, ..self })
    }

    /// Whether this is the tapped hole of a wire insert.
    #[must_use]
    pub const fn is_wire_insert(&self) -> bool {
        self.wire_insert
    }

    /// The profile.
    #[must_use]
    pub const fn form(&self) -> Form {
        self.form
    }

    /// The standard's series; `None` for a metric special and for the families that have no series.
    #[must_use]
    pub const fn series(&self) -> Option<Series> {
        self.series
    }

    /// True if the standard lists this size with this pitch, single start; a trapezoidal or buttress thread
    /// with any number of starts. The hole of a wire insert: if the screw's standard does.
    #[must_use]
    pub const fn is_standard(&self) -> bool {
        self.is_listed && (self.starts == 1 || self.form.is_translating())
    }

    /// Whether the standard lists the size with this pitch, whatever the starts.
    pub(crate) const fn is_listed(&self) -> bool {
        self.is_listed
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
        if self.form.is_pipe() { None } else { Some(self.nominal) }
    }

    /// The diameter that the designation was read from, in millimetres; of a pipe thread its major diameter.
    pub(crate) const fn named_by(&self) -> Length {
        self.nominal
    }

    /// Basic major diameter in millimetres, exact. NPT and its kin: the outside diameter of the pipe;
    /// R and Rc: at the gauge plane; the hole of a wire insert: its own.
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
    pub fn lead_mm(&self) -> Length {
        if self.starts == 1 {
            return self.pitch;
        }
        // The product was looked at when the starts were set.
        self.pitch.times(Length::integer(i64::from(self.starts))).unwrap_or(self.pitch)
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

    /// Threads per inch of inch and pipe threads, exact; `None` for metric ones.
    #[must_use]
    pub fn threads_per_inch(&self) -> Option<Length> {
        self.form.is_inch().then(|| Length::INCH.over(self.pitch).ok()).flatten()
    }
}

impl PartialEq for Thread {
    fn eq(&self, other: &Self) -> bool {
        (self.form, self.hand, self.side, self.starts) == (other.form, other.hand, other.side, other.starts)
            && (self.nominal, self.pitch, self.class) == (other.nominal, other.pitch, other.class)
            && self.wire_insert == other.wire_insert
    }
}

impl Eq for Thread {}

impl Hash for Thread {
    fn hash<H: Hasher>(&self, state: &mut H) {
        (self.form, self.hand, self.side, self.starts).hash(state);
        (self.nominal, self.pitch, self.class, self.wire_insert).hash(state);
    }
}
