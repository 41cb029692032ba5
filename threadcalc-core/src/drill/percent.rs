//! Percent of thread: the height of thread that a drilled hole leaves, on a named basis.

use crate::error::{Code, Error, Field};
use crate::form::Form;
use crate::length::{Length, Ratio};
use crate::named::named;
use crate::profile::height_in_pitches;
use crate::thread::{Side, Thread};

named! {
    /// What 100 % of thread is. Two bases are in print; neither is a default.
    pub enum Basis {
        /// 3/4 H, 1.299038 P on the diameter: the inch trade's charts.
        ThreeQuartersH = 1 "3H/4",
        /// 5/8 H, 1.082532 P on the diameter: the basic height, down to the basic minor diameter.
        FiveEighthsH = 2 "5H/8",
    }
}

impl Basis {
    /// 100 % of thread on the diameter, in pitches: 2 × 3/4 H or 2 × 5/8 H, H = √3/2 P.
    #[must_use]
    pub const fn pitches(self) -> f64 {
        match self {
            Self::ThreeQuartersH => 1.299_038_105_676_658,
            Self::FiveEighthsH => 1.082_531_754_730_548_3,
        }
    }
}

named! {
    /// How the tap makes the thread.
    pub enum Tap {
        /// It cuts chips.
        Cut = 1 "cut",
        /// It displaces metal; also called a roll tap.
        Form = 2 "form",
    }
}

/// 100 % of thread of a form tap on the diameter, in pitches (common practice).
const FORM_PITCHES: f64 = 0.68;
/// 100 % of NPSC and NPSM on the diameter, in pitches: twice 0.8 p.
const NATIONAL_PIPE_PITCHES: f64 = 1.6;

/// 100 % of thread on the diameter, in millimetres, and the major diameter that it is measured from.
#[derive(Clone, Copy)]
pub(super) struct FullHeight {
    height: f64,
    major: Length,
    /// The same as a whole number of picometres, if it is one.
    major_picometres: Option<i64>,
}

/// The full height of a thread's holes, whatever their drill.
pub(super) fn full_height(thread: &Thread, tap: Tap, basis: Option<Basis>) -> Result<FullHeight, Error> {
    let form = thread.form();
    if thread.side() == Some(Side::External) {
        return Err(Error::new(Code::Contradiction, Field::Side).hint_text("an external thread has no tap drill"));
    }
    if form.is_taper() {
        return Err(Error::new(Code::DoesNotApply, Field::Percent)
            .hint_text("a straight hole leaves another percent at each turn of a taper thread: size it by its depth"));
    }
    let pitches = match (tap, basis) {
        (Tap::Form, Some(_)) => {
            return Err(Error::new(Code::Contradiction, Field::Basis)
                .hint_text("a form tap has its own 100 %, 0.68 P: give no basis"));
        }
        (Tap::Form, None) => formed(form)?,
        (Tap::Cut, basis) => cut_height(thread, basis)?,
    };
    let major = major_of_hole(thread)?;
    Ok(FullHeight {
        height: pitches * thread.pitch_mm().to_f64(),
        major,
        major_picometres: major.picometres().filter(|whole| *whole < MOST_PICOMETRES),
    })
}

/// Below this, picometres and parts of a millimetre are exact as doubles: 4 m.
const MOST_PICOMETRES: i64 = 4_000_000_000_000;
const PICOMETRES_IN_MM: f64 = 1e9;

impl FullHeight {
    /// The percent of a hole that is a whole number of picometres, where that is known; the same double.
    pub(super) fn percent_at(&self, drill_mm: Length, picometres: Option<i64>) -> Result<f64, Error> {
        match (self.major_picometres, picometres) {
            // The difference is exact, and so is the one rounding of its quotient.
            (Some(major), Some(drill)) if 0 < drill && drill < major => {
                Ok(major.saturating_sub(drill) as f64 / PICOMETRES_IN_MM / self.height * 100.0)
            }
            _ => self.percent(drill_mm),
        }
    }

    pub(super) fn percent(&self, drill_mm: Length) -> Result<f64, Error> {
        if !drill_mm.is_positive() || drill_mm >= self.major {
            return Err(Error::new(Code::OutOfRange, Field::Drill)
                .got(drill_mm.to_f64())
                .within(0.0, self.major.to_f64())
                .hint_text("the hole's diameter in mm, above 0 and below the major diameter"));
        }
        // The difference is taken exactly, so that equal holes give equal percents.
        Ok(self.major.minus_to_f64(drill_mm)? / self.height * 100.0)
    }
}

/// 100 % of a form tap in pitches, for the threads that are formed.
pub(super) fn formed(form: Form) -> Result<f64, Error> {
    if form.is_sixty() {
        return Ok(FORM_PITCHES);
    }
    if form.is_translating() {
        return Err(Error::new(Code::DoesNotApply, Field::Tap)
            .hint_text("this thread is cut: its profile is too deep and too square to be formed"));
    }
    Err(Error::new(Code::NotSourced, Field::Tap).hint_text("0.68 P is a rule for 60 degree threads"))
}

/// 100 % of a cut thread in pitches: two bases for M and UN, the form's own height for all others.
fn cut_height(thread: &Thread, basis: Option<Basis>) -> Result<f64, Error> {
    let form = thread.form();
    match (form, basis) {
        _ if has_bases(form) => basis.map(Basis::pitches).ok_or_else(|| {
            Error::new(Code::Missing, Field::Basis).hint_text("3H/4 (1.299 P, inch charts) or 5H/8 (1.0825 P)")
        }),
        (_, Some(_)) => Err(Error::new(Code::Contradiction, Field::Basis)
            .hint_text("3H/4 and 5H/8 are bases of M and UN; this thread's 100 % is its own height: give no basis")),
        (Form::Npsf | Form::Nptf, None) => {
            Err(Error::new(Code::NotSourced, Field::Form).hint_text("the height of dryseal threads has not been read"))
        }
        (form, None) if form.is_inch_pipe() => Ok(NATIONAL_PIPE_PITCHES),
        (form, None) if form.is_whitworth_pipe() => Ok(height_in_pitches(Form::Whitworth, thread.pitch_mm())),
        (form, None) => Ok(height_in_pitches(form, thread.pitch_mm())),
    }
}

/// Whether charts give the percent of this form on two bases.
pub(super) fn has_bases(form: Form) -> bool {
    matches!(form, Form::Metric | Form::Unified | Form::UnifiedR)
}

/// The diameter over the roots of the tapped hole, which the thread's height is measured from.
fn major_of_hole(thread: &Thread) -> Result<Length, Error> {
    match thread.form() {
        // Straight threads on the pipe's name: E1 + 0.8 p.
        Form::Npsc | Form::Npsm => {
            let pipe = thread.pipe()?;
            let gauge_plane = pipe.pitch_diameter_gauge_plane_mm.unwrap_or(Length::ZERO);
            gauge_plane.plus(pipe.thread_height_mm.unwrap_or(Length::ZERO))
        }
        _ => Ok(thread.major_mm()),
    }
}

/// The hole for a percent of thread, in millimetres.
///
/// ```text
/// cut:   D − 1.299038 P × percent/100   (M, UN; basis 3H/4)
///        D − 1.082532 P × percent/100   (M, UN; basis 5H/8)
///        D − height × percent/100       (all others: no basis, the form's own height)
/// form:  D − 0.68 P × percent/100       (threads of 60°)
/// ```
///
/// | form | height on the diameter |
/// |---|---|
/// | MJ, UNJ | 0.974279 P |
/// | S | 0.96 P |
/// | BSW, BSF, G, Rp | 1.280655 P |
/// | BA | 1.2 P to 0.01 mm |
/// | buttress | 1.2 P |
/// | Tr, ACME | P |
/// | stub ACME | 0.6 P |
/// | NPSC, NPSM | 1.6 P, from E1 + 0.8 P |
///
/// D is the hole's own major diameter: that of the hole of a wire insert is larger than the screw's.
///
/// # Errors
/// [`Code::Missing`] for M and UN with a cut tap without a basis, [`Code::Contradiction`] for a form tap or
/// another thread with one or for an external thread, [`Code::OutOfRange`] outside 0 < percent ≤ 100,
/// [`Code::DoesNotApply`] for taper threads and for formed Tr, ACME and buttress, [`Code::NotSourced`] for NPSF
/// and other formed threads that are not of 60°.
///
/// # Example
/// ```
/// use threadcalc_core::{Basis, Length, Tap, Thread, drill_diameter};
///
/// let thread = Thread::read(b"1/4-20 UNC-2B")?;
/// let hole = drill_diameter(&thread, Length::integer(75), Tap::Cut, Some(Basis::ThreeQuartersH))?;
/// assert!((hole / 25.4 - 0.2013).abs() < 0.00005);
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// Machinery's Handbook 31, tap drill sizes and percentage of thread (3H/4) and its text formula
/// (5H/8); form taps: common practice; own heights: those of [`Thread::profile`], ISO 228-1:2000 and
/// ASME B1.20.1-1983.
pub fn drill_diameter(thread: &Thread, percent: Ratio, tap: Tap, basis: Option<Basis>) -> Result<f64, Error> {
    if !percent.is_positive() || percent > Length::integer(100) {
        return Err(Error::new(Code::OutOfRange, Field::Percent)
            .got(percent.to_f64())
            .within(0.0, 100.0)
            .hint_text("above 0"));
    }
    let FullHeight { height, major, .. } = full_height(thread, tap, basis)?;
    Ok(major.to_f64() - height * percent.to_f64() / 100.0)
}

/// The percent of thread that a drilled hole leaves; the inverse of [`drill_diameter`].
///
/// `drill_mm` is the hole's diameter in millimetres, above 0 and below the major diameter.
///
/// # Errors
/// As [`drill_diameter`]; [`Code::OutOfRange`] for a hole that leaves no thread.
///
/// # Source
/// As [`drill_diameter`].
pub fn percent_thread(thread: &Thread, drill_mm: Length, tap: Tap, basis: Option<Basis>) -> Result<f64, Error> {
    full_height(thread, tap, basis)?.percent(drill_mm)
}
