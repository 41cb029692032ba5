//! How deep to tap and to drill a taper pipe thread: its depth sets its size.

use crate::depth::point_height_mm;
use crate::error::{Code, Error, Field};
use crate::length::Length;
use crate::pipe::TAPER;
use crate::series;
use crate::thread::{Side, Thread};

/// What the depths of a taper pipe hole are made of. Lengths in millimetres, exact.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct TaperDepthRequest {
    /// How far the small end of this tap projects through its ring gauge: measure yours. Without it the
    /// projection of ASME B94.9 is used for NPT and NPTF; Rc has none.
    pub projection_mm: Option<Length>,
    /// The drilled hole.
    pub drill_mm: Length,
    /// Point angle of the drill in degrees, above 60 and up to 180.
    pub point_angle_deg: Length,
    /// Room below the tap for chips; one turn more is kept for trimming the depth.
    pub bottom_clearance_mm: Length,
}

/// Depths of a taper pipe hole from the face, in millimetres; turns from the face.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct TaperDepths {
    /// From the face to the plane that the tap's ring stands at: L1 (NPT, NPTF), the gauge length (Rc).
    pub hand_tight_mm: Length,
    /// How far the tap projects through the ring.
    pub projection_mm: Length,
    /// How much the table's projection may be off, either way; `None` for a measured tap.
    pub projection_tolerance_mm: Option<Length>,
    /// To the end of the tap for a thread of basic size.
    pub tap_mm: Length,
    /// The same for the first hole: one turn shallow, then gauge.
    pub first_hole_mm: Length,
    /// To the end of the drill's full diameter: one turn for trimming and the clearance below the tap.
    pub full_diameter_mm: Length,
    /// To the drill's point; derived.
    pub drill_point_mm: f64,
    /// Turns of the tap in the hole for basic size.
    pub tap_turns: Length,
    /// Turns of hand-tight engagement.
    pub hand_tight_turns: Length,
    /// Change of diameter for one turn deeper: P/16.
    pub diameter_per_turn_mm: Length,
    /// Turns that the gauge may stand off, either way.
    pub gauge_tolerance_turns: Length,
}

/// The depths of a taper pipe hole.
///
/// ```text
/// tap           = L1 + projection of the tap through the L1 ring
/// first hole    = tap − 1 P, so that the gauge decides before the thread is too large
/// full diameter = tap + 1 P + bottom clearance
/// drill point   = full diameter + d/2 / tan(point angle / 2)
/// turns         = depth / P;  one turn is P/16 on the diameter
/// ```
///
/// # Errors
/// [`Code::DoesNotApply`] for straight threads, [`Code::Contradiction`] for external ones,
/// [`Code::Missing`] for a projection that no table has, [`Code::OutOfRange`], [`Code::Overflow`].
///
/// # Example
/// ```
/// use threadcalc_core::{Length, TaperDepthRequest, Thread, taper_depths};
///
/// let thread = Thread::read(b"1/4-18 NPT")?;
/// let request = TaperDepthRequest {
///     projection_mm: None, // of ASME B94.9
///     drill_mm: Length::new(111, 10)?,
///     point_angle_deg: Length::integer(118),
///     bottom_clearance_mm: thread.pitch_mm().times(Length::integer(2))?,
/// };
/// let found = taper_depths(&thread, &request)?;
/// assert!((found.tap_mm.to_f64() - 17.445).abs() < 0.0005);
/// assert!((found.tap_turns.to_f64() - 12.36).abs() < 0.005);
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// ASME B1.20.1-1983 (L1); ASME B94.9-2008, table of taper pipe tap limits (projection); ISO 7-1:1994
/// (gauge length); one turn for trimming: common practice.
pub fn taper_depths(thread: &Thread, request: &TaperDepthRequest) -> Result<TaperDepths, Error> {
    if !thread.form().is_taper() {
        return Err(Error::new(Code::DoesNotApply, Field::Form).hint_text("a taper thread: NPT, NPTF or Rc"));
    }
    if thread.side() == Some(Side::External) {
        return Err(Error::new(Code::Contradiction, Field::Side).hint_text("the tapped hole is Rc or NPT"));
    }
    check(thread, request)?;
    let (projection, tolerance) = projection(thread, request)?;
    let (pipe, pitch) = (thread.pipe()?, thread.pitch_mm());
    let hand_tight = pipe.hand_tight_length_mm.or(pipe.gauge_length_mm).unwrap_or(Length::ZERO);
    let tap = hand_tight.plus(projection)?;
    let full_diameter = tap.plus(pitch)?.plus(request.bottom_clearance_mm)?;
    Ok(TaperDepths {
        hand_tight_mm: hand_tight,
        projection_mm: projection,
        projection_tolerance_mm: tolerance,
        tap_mm: tap,
        first_hole_mm: tap.minus(pitch)?,
        full_diameter_mm: full_diameter,
        drill_point_mm: full_diameter.to_f64() + point_height_mm(request.drill_mm, request.point_angle_deg),
        tap_turns: tap.over(pitch)?,
        hand_tight_turns: hand_tight.over(pitch)?,
        diameter_per_turn_mm: pitch.times(TAPER)?,
        gauge_tolerance_turns: pipe.gauge_tolerance_turns.unwrap_or(Length::ONE),
    })
}

/// The measured projection, or that of the table with its tolerance: 1/16 in up to 3/4, 3/32 in above.
fn projection(thread: &Thread, request: &TaperDepthRequest) -> Result<(Length, Option<Length>), Error> {
    if let Some(measured) = request.projection_mm {
        return Ok((measured, None));
    }
    let missing = Error::new(Code::Missing, Field::Projection)
        .hint_text("measure how far the tap's small end projects through the ring gauge, in mm");
    let size = series::inch_pipe(thread).filter(|size| size.projection_e4_in > 0).ok_or(missing)?;
    let tolerance =
        if size.sixteenths <= 12 { const { Length::parts(1, 16) } } else { const { Length::parts(937, 10_000) } };
    Ok((series::e4_inches(size.projection_e4_in), Some(tolerance.times(Length::INCH)?)))
}

fn check(thread: &Thread, request: &TaperDepthRequest) -> Result<(), Error> {
    let out_of_range = |field, value: Length, low: f64, high: f64, hint| {
        Err(Error::new(Code::OutOfRange, field).got(value.to_f64()).within(low, high).hint_text(hint))
    };
    let most = Length::integer(1000);
    let fits = |value: Length| value.is_positive() && value <= most;
    if let Some(projection) = request.projection_mm.filter(|projection| !fits(*projection)) {
        return out_of_range(Field::Projection, projection, 0.0, 1000.0, "above 0");
    }
    if !request.drill_mm.is_positive() || request.drill_mm >= thread.major_mm() {
        let most = thread.major_mm().to_f64();
        return out_of_range(Field::Drill, request.drill_mm, 0.0, most, "above 0 and below the major diameter");
    }
    if request.point_angle_deg <= Length::integer(60) || request.point_angle_deg > Length::integer(180) {
        return out_of_range(Field::PointAngle, request.point_angle_deg, 60.0, 180.0, "above 60 degrees");
    }
    if request.bottom_clearance_mm.is_negative() || request.bottom_clearance_mm > most {
        return out_of_range(Field::BottomClearance, request.bottom_clearance_mm, 0.0, 1000.0, "0 or more");
    }
    Ok(())
}
