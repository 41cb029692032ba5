//! Pipe threads: the dimensions that a straight thread does not have.

use crate::error::{Code, Error, Field};
use crate::form::Form;
use crate::length::Length;
use crate::limits::Confidence;
use crate::series;
use crate::thread::Thread;

/// Basic dimensions of a pipe thread in millimetres, exact; `None` where its standard has none.
///
/// | member | symbol | rule |
/// |---|---|---|
/// | `pipe_diameter_mm` | D | outside diameter of the pipe |
/// | `pitch_diameter_small_end_mm` | E0 | D − (0.05 D + 1.1) p, D in inches |
/// | `pitch_diameter_gauge_plane_mm` | E1; d2, D2 | E0 + L1/16; ISO: d − h |
/// | `hand_tight_length_mm` | L1 | table |
/// | `effective_length_mm` | L2 | (0.80 D + 6.8) p, D in inches |
/// | `pitch_diameter_effective_mm` | E2 | E0 + L2/16 |
/// | `minor_diameter_small_end_mm` | K0 | E0 − 0.8 p |
/// | `thread_height_mm` | h | 0.8 p; ISO: 0.640327 P as printed |
/// | `gauge_length_mm` | | table (R, Rc) |
/// | `useful_length_mm` | | table, at the basic gauge length (R, Rc) |
/// | `gauge_tolerance_turns` | | turns that the gauge may stand off, either way |
///
/// # Source
/// ASME B1.20.1-1983 table 2 and its formulas (NPT, NPSC, NPSM); ASME B1.20.3 (NPTF, NPSF: E0, E1, L1,
/// L2 as NPT; the height of their sharper thread has not been read); ISO 7-1:1994; ISO 228-1:2000.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Pipe {
    /// Outside diameter of the pipe, D.
    pub pipe_diameter_mm: Option<Length>,
    /// Pitch diameter at the small end, E0; at the end of the pipe, deepest in the hole.
    pub pitch_diameter_small_end_mm: Option<Length>,
    /// Pitch diameter at the gauge plane, E1, D2 or d2: at the face of a tapped hole.
    pub pitch_diameter_gauge_plane_mm: Option<Length>,
    /// Length of hand-tight engagement, L1.
    pub hand_tight_length_mm: Option<Length>,
    /// Length of effective thread, L2.
    pub effective_length_mm: Option<Length>,
    /// Pitch diameter at the end of the effective thread, E2.
    pub pitch_diameter_effective_mm: Option<Length>,
    /// Minor diameter at the small end, K0.
    pub minor_diameter_small_end_mm: Option<Length>,
    /// Height of the thread, h.
    pub thread_height_mm: Option<Length>,
    /// Gauge length of ISO 7-1.
    pub gauge_length_mm: Option<Length>,
    /// Useful thread of ISO 7-1 at the basic gauge length.
    pub useful_length_mm: Option<Length>,
    /// Turns that the gauge may stand off, either way.
    pub gauge_tolerance_turns: Option<Length>,
    /// Standard, edition and table or rule.
    pub source: &'static str,
    /// How sure the table's values are.
    pub confidence: Confidence,
}

/// Change of diameter over length of every taper pipe thread.
pub(crate) const TAPER: Length = Length::parts(1, 16);

impl Thread {
    /// The dimensions of a pipe thread.
    ///
    /// # Errors
    /// [`Code::DoesNotApply`] if the thread is none.
    ///
    /// # Example
    /// ```
    /// use threadcalc_core::{Length, Thread};
    ///
    /// let pipe = Thread::read(b"1/4-18 NPT")?.pipe()?;
    /// let hand_tight = pipe.hand_tight_length_mm.unwrap_or(Length::ZERO);
    /// assert_eq!(hand_tight.over(Length::INCH)?.to_string(), "0.2278"); // ASME B1.20.1 table 2
    /// # Ok::<(), threadcalc_core::Error>(())
    /// ```
    ///
    /// # Source
    /// As [`Pipe`].
    pub fn pipe(&self) -> Result<Pipe, Error> {
        let none = Error::new(Code::DoesNotApply, Field::Form).hint_text("a pipe thread, such as G1/2 or 1/4-18 NPT");
        if self.form().is_whitworth_pipe() {
            return whitworth(self, series::metric_pipe(self).ok_or(none)?);
        }
        inch(self, series::inch_pipe(self).ok_or(none)?)
    }
}

fn inch(thread: &Thread, size: &series::InchPipe) -> Result<Pipe, Error> {
    let (outside, pitch) = (thread.major_mm(), thread.pitch_mm());
    let outside_in = outside.over(Length::INCH)?;
    let hand_tight = series::e4_inches(size.hand_tight_e4_in);
    let below =
        outside_in.times(const { Length::parts(1, 20) })?.plus(const { Length::parts(11, 10) })?.times(pitch)?;
    let small_end = outside.minus(below)?;
    let effective =
        outside_in.times(const { Length::parts(4, 5) })?.plus(const { Length::parts(34, 5) })?.times(pitch)?;
    let dryseal = matches!(thread.form(), Form::Nptf | Form::Npsf);
    let height = pitch.times(const { Length::parts(4, 5) })?;
    let gauge_plane = small_end.plus(hand_tight.times(TAPER)?)?;
    let taper = thread.form().is_taper();
    let of_taper = |value: Length| taper.then_some(value);
    Ok(Pipe {
        pipe_diameter_mm: Some(outside),
        pitch_diameter_small_end_mm: of_taper(small_end),
        pitch_diameter_gauge_plane_mm: Some(gauge_plane),
        hand_tight_length_mm: of_taper(hand_tight),
        effective_length_mm: of_taper(effective),
        pitch_diameter_effective_mm: of_taper(small_end.plus(effective.times(TAPER)?)?),
        minor_diameter_small_end_mm: of_taper(small_end.minus(height)?).filter(|_| !dryseal),
        thread_height_mm: (!dryseal).then_some(height),
        gauge_length_mm: None,
        useful_length_mm: None,
        gauge_tolerance_turns: of_taper(Length::ONE),
        source: if dryseal { "ASME B1.20.3, dimensions as ASME B1.20.1" } else { "ASME B1.20.1-1983 table 2" },
        confidence: if dryseal { Confidence::Memory } else { Confidence::Rule },
    })
}

fn whitworth(thread: &Thread, size: &series::MetricPipe) -> Result<Pipe, Error> {
    let height = series::whitworth_height(size.per_inch);
    let taper = thread.form().is_taper();
    let e2 = |count: u16| taper.then(|| Length::parts(u32::from(count), 100));
    let jointing = thread.form() != Form::G;
    let diameter = thread.major_mm().minus(height)?;
    let turns = if thread.form() == Form::R { size.external_turns() } else { size.internal_turns() };
    Ok(Pipe {
        pipe_diameter_mm: None,
        pitch_diameter_small_end_mm: match e2(size.gauge_length_e2_mm) {
            Some(length) => Some(diameter.minus(length.times(TAPER)?)?),
            None => None,
        },
        pitch_diameter_gauge_plane_mm: Some(diameter),
        hand_tight_length_mm: None,
        effective_length_mm: None,
        pitch_diameter_effective_mm: None,
        minor_diameter_small_end_mm: None,
        thread_height_mm: Some(height),
        gauge_length_mm: e2(size.gauge_length_e2_mm),
        useful_length_mm: e2(size.useful_e2_mm),
        gauge_tolerance_turns: jointing.then_some(turns),
        source: if jointing { "ISO 7-1:1994 tables 1 and 2" } else { "ISO 228-1:2000 table 1" },
        confidence: if jointing { Confidence::Memory } else { Confidence::Confirmed },
    })
}
