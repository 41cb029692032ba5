//! Torque of a tap, always as a band, and the power it takes.

use crate::error::{Code, Error, Field};
use crate::length::{Length, Ratio};
use crate::range::{above_zero, within};
use crate::thread::Thread;

/// Cutting forces beyond these are of no material that is tapped, in N/mm².
const FORCE_N_MM2: (f64, f64) = (50.0, 20_000.0);
/// A factor outside this range is a slip of the point.
const FACTOR: (f64, f64) = (0.1, 20.0);
/// How far a new tap's torque may be off, either way, and how often a worn one takes it (trade, judgement).
const NEW_TAP_SPREAD: f64 = 0.5;
const WORN_TAP: f64 = 2.0;

/// A cutting force that belongs to [`torque_by_pitch`] and to no other formula, in N/mm².
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ForceByPitch(f64);

/// A cutting force that belongs to [`torque_by_chip_area`] and to no other formula, in N/mm².
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ForceByChipArea(f64);

impl ForceByPitch {
    /// A force out of a table that names the formula kc P² D / 8000.
    ///
    /// # Errors
    /// [`Code::OutOfRange`] outside 50 to 20 000 N/mm².
    pub fn new(n_mm2: f64) -> Result<Self, Error> {
        within(n_mm2, Field::CuttingForce, FORCE_N_MM2.0, FORCE_N_MM2.1).map(Self)
    }

    /// A starting value of ours.
    pub(super) const fn starting(n_mm2: f64) -> Self {
        Self(n_mm2)
    }

    /// The force in N/mm².
    #[must_use]
    pub const fn n_mm2(self) -> f64 {
        self.0
    }
}

impl ForceByChipArea {
    /// A force out of a table that names the formula tan(theta) kc K (D − Do)² (D + 2 Do) / 24000.
    ///
    /// # Errors
    /// [`Code::OutOfRange`] outside 50 to 20 000 N/mm².
    pub fn new(n_mm2: f64) -> Result<Self, Error> {
        within(n_mm2, Field::CuttingForce, FORCE_N_MM2.0, FORCE_N_MM2.1).map(Self)
    }

    /// A starting value of ours.
    pub(super) const fn starting(n_mm2: f64) -> Self {
        Self(n_mm2)
    }

    /// The force in N/mm².
    #[must_use]
    pub const fn n_mm2(self) -> f64 {
        self.0
    }
}

/// A factor that nobody knows better than to a range; a parameter, with the value to start from.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct FactorRange {
    /// Smallest in use.
    pub low: f64,
    /// Where to start from without better knowledge: the middle, a judgement.
    pub start: f64,
    /// Largest in use.
    pub high: f64,
}

/// A form tap takes 2 to 3 times the torque of a cutting tap in the same thread (a tap maker's published
/// rule); the start is the middle.
pub const FORMING_FACTOR: FactorRange = FactorRange { low: 2.0, start: 2.5, high: 3.0 };
/// A taper pipe tap, which cuts on its whole length, takes 2 to 3 times the torque (trade, judgement).
pub const TAPER_FACTOR: FactorRange = FactorRange { low: 2.0, start: 2.5, high: 3.0 };

/// Torque of a tap in newton metres: never one number.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct TorqueBand {
    /// A new tap under good conditions: half the likely torque.
    pub low_nm: f64,
    /// What the formula gives.
    pub likely_nm: f64,
    /// A new tap under bad conditions: half as much again.
    pub high_nm: f64,
    /// A worn tap: twice the likely torque.
    pub worn_nm: f64,
}

impl TorqueBand {
    fn around(likely_nm: f64) -> Self {
        Self {
            low_nm: likely_nm * (1.0 - NEW_TAP_SPREAD),
            likely_nm,
            high_nm: likely_nm * (1.0 + NEW_TAP_SPREAD),
            worn_nm: likely_nm * WORN_TAP,
        }
    }
}

/// The torque of a tap from pitch and diameter.
///
/// ```text
/// M = starts × factor × kc P² D / 8000     Nm; kc in N/mm², P and D in mm
/// ```
///
/// `force`: out of a table for this very formula, which knows nothing of the drilled hole and of the kind
/// of tap. `factor`: 1 for a cutting tap in a straight thread; see [`FORMING_FACTOR`], [`TAPER_FACTOR`].
/// A tap with several starts cuts as many grooves at once: the formula counts per start, with the pitch,
/// not the lead. D is the basic major diameter, of the hole of a wire insert its own.
///
/// The formula was made for M and UN. It takes the groove as P²/4, which Tr and ACME have too (half a pitch deep
/// and wide); stub ACME has less, the other forms a little more, within the band. The square profiles rub more on
/// their flanks: count on the upper half of the band.
///
/// # Errors
/// [`Code::OutOfRange`] for a factor outside 0.1 to 20.
///
/// # Example
/// ```
/// use threadcalc_core::{ForceByPitch, Thread, torque_by_pitch};
///
/// let band = torque_by_pitch(&Thread::read(b"M10")?, ForceByPitch::new(2500.0)?, 1.0)?;
/// assert!((band.likely_nm - 7.03).abs() < 0.005);
/// assert!((band.worn_nm - 14.06).abs() < 0.005);
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// A tap maker's published formula; the band, the starts and other forms than M and UN: common practice.
pub fn torque_by_pitch(thread: &Thread, force: ForceByPitch, factor: f64) -> Result<TorqueBand, Error> {
    let factor = within(factor, Field::TorqueFactor, FACTOR.0, FACTOR.1)?;
    let (pitch, diameter) = (thread.pitch_mm().to_f64(), thread.major_mm().to_f64());
    let per_start = force.0 * pitch * pitch * diameter / 8000.0;
    Ok(TorqueBand::around(f64::from(thread.starts()) * factor * per_start))
}

/// The torque of a cutting tap from the metal that the drilled hole leaves.
///
/// ```text
/// M = starts × factor × tan(theta) kc (D − Do)² (D + 2 Do) / 24000     Nm; kc in N/mm², D and Do in mm
/// ```
///
/// `theta` is the angle of a flank, 30° or 27.5°; BA 23.75°. `force`: out of a table for this very formula. `factor`:
/// for the kind of tap, in steel 1.35 (straight flutes), 1.15 (spiral flutes), 0.95 (spiral point), times what
/// else the caller knows. Starts as in [`torque_by_pitch`].
///
/// # Errors
/// [`Code::OutOfRange`] for a factor outside 0.1 to 20 or a hole outside 0 to the major diameter;
/// [`Code::DoesNotApply`] for taper threads, whose tap cuts on its whole length, and for Tr, ACME and buttress,
/// whose groove is no triangle.
///
/// # Example
/// ```
/// use threadcalc_core::{ForceByChipArea, Length, Thread, torque_by_chip_area};
///
/// let (thread, hole) = (Thread::read(b"M10")?, Length::new(17, 2)?);
/// let band = torque_by_chip_area(&thread, hole, ForceByChipArea::new(3900.0)?, 1.15)?;
/// assert!((band.likely_nm - 6.55).abs() < 0.005);
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// A tap maker's published formula; the band and the starts: common practice.
pub fn torque_by_chip_area(
    thread: &Thread,
    drill_mm: Length,
    force: ForceByChipArea,
    factor: f64,
) -> Result<TorqueBand, Error> {
    let factor = within(factor, Field::TorqueFactor, FACTOR.0, FACTOR.1)?;
    if thread.form().is_taper() {
        return Err(Error::new(Code::DoesNotApply, Field::Form)
            .hint_text("a taper thread: the torque by pitch with a factor of 2 to 3"));
    }
    if thread.form().is_translating() {
        return Err(Error::new(Code::DoesNotApply, Field::Form)
            .hint_text("the groove of this thread is no triangle: the torque by pitch"));
    }
    if !drill_mm.is_positive() || drill_mm >= thread.major_mm() {
        return Err(Error::new(Code::OutOfRange, Field::Drill)
            .got(drill_mm.to_f64())
            .within(0.0, thread.major_mm().to_f64())
            .hint_text("above 0 and below the major diameter"));
    }
    let [leading, following] = thread.profile().flank_angles_deg;
    let tangent = |degrees: f64| libm::tan(degrees * (core::f64::consts::PI / 180.0));
    let flanks = (tangent(leading) + tangent(following)) / 2.0;
    let deep = thread.major_mm().minus(drill_mm)?.to_f64();
    let arm = thread.major_mm().plus(drill_mm.times(Length::integer(2))?)?.to_f64();
    let per_start = flanks * force.0 * deep * deep * arm / 24_000.0;
    Ok(TorqueBand::around(f64::from(thread.starts()) * factor * per_start))
}

/// The power that a torque takes at a speed, in kilowatts.
///
/// ```text
/// P = 2 pi M n / 60000     M in Nm, n in rpm
/// ```
///
/// # Errors
/// [`Code::OutOfRange`] for a torque outside 0 to 1 000 000 Nm or a speed outside 0 to 1 000 000 rpm.
///
/// # Example
/// ```
/// use threadcalc_core::{Length, power_kw};
///
/// assert!((power_kw(7.03, Length::integer(500))? - 0.368).abs() < 0.0005);
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// Mechanics; derived.
pub fn power_kw(torque_nm: f64, rpm: Ratio) -> Result<f64, Error> {
    let torque = within(torque_nm, Field::Torque, 0.0, 1e6)?;
    let rpm = above_zero(rpm, Field::Rpm, super::MOST_RPM)?.to_f64();
    Ok(2.0 * core::f64::consts::PI * torque * rpm / 60_000.0)
}
