//! What a fit of threads carries: areas in tension and in shear, which part gives way first, and the
//! length of engagement that it takes.

use core::f64::consts::PI;

use crate::error::{Code, Error, Field};
use crate::length::Length;
use crate::limits::Limits;
use crate::named::named;
use crate::thread::{Side, Thread};

/// 1 / √3 as the formulas print it.
const FLANK: f64 = 0.577_35;
/// Far below and above any material or load, so that no result leaves the doubles.
pub(crate) const STRENGTHS_MPA: (f64, f64) = (1e-6, 1e5);
const LOADS_N: (f64, f64) = (1e-6, 1e15);
const LONGEST_MM: Length = Length::integer(10_000);

named! {
    /// The part of a fit that gives way first.
    pub enum Weakest {
        /// The screw breaks in tension.
        Screw = 1 "screw",
        /// The screw's threads strip.
        External = 2 "external",
        /// The threads of the hole strip.
        Internal = 3 "internal",
    }
}

/// What an engagement is made of. Lengths in millimetres, exact; strengths in MPa = N/mm².
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct EngagementRequest {
    /// Length of engagement, incomplete threads and all.
    pub length_mm: Length,
    /// What of it has no full thread, chamfers of hole and screw and the tap's chamfer; 0 if there is none.
    pub without_full_thread_mm: Length,
    /// Shear strength of the tapped part.
    pub internal_shear_mpa: f64,
    /// Shear strength of the screw.
    pub external_shear_mpa: f64,
    /// Tensile strength of the screw.
    pub external_tensile_mpa: f64,
    /// The hole as it was drilled, instead of the largest minor diameter of the internal class.
    pub drilled_mm: Option<Length>,
    /// An axial load to be held against the weakest part, in newtons.
    pub load_n: Option<f64>,
}

/// What a fit carries; derived doubles.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Engagement {
    /// Tensile stress area of the screw.
    pub tensile_area_mm2: f64,
    /// Shear area of the threads in the hole.
    pub internal_shear_area_mm2: f64,
    /// Shear area of the screw's threads.
    pub external_shear_area_mm2: f64,
    /// Load that breaks the screw.
    pub tensile_load_n: f64,
    /// Load that strips the hole.
    pub internal_strip_load_n: f64,
    /// Load that strips the screw.
    pub external_strip_load_n: f64,
    /// What gives way first; of equals the screw, then its threads.
    pub weakest: Weakest,
    /// The length of engagement, incomplete threads and all, at which the weaker of the two threads
    /// carries the screw's tensile load.
    pub required_length_mm: f64,
    /// Strip load of the screw's threads over that of the hole's, J; above 1 the hole strips first.
    pub strip_ratio: f64,
    /// The weakest part's load over the load given; `None` without one.
    pub safety_factor: Option<f64>,
}

/// What a screw and a tapped hole carry together, at the limits of size that overlap least.
///
/// ```text
/// L  = length − length without full thread
/// At = π/4 ((d2 + d3)/2)² (M, MJ, UNJ),  π/4 (D − 0.9743/n)² (UN, UNR)
/// screw's threads  ASs = π n L D1max (1/(2n) + 0.57735 (d2min − D1max))
/// hole's threads   ASn = π n L dmin  (1/(2n) + 0.57735 (dmin − D2max))
/// loads            At × tensile strength, ASs and ASn × shear strengths
/// required length  L at which the smaller of both strip loads is the tensile load
/// J                (ASs × screw's shear strength) / (ASn × hole's shear strength)
/// ```
///
/// n is threads per length, D1max the largest minor diameter of the hole or the hole as drilled, D2max
/// its largest pitch diameter, dmin and d2min the screw's smallest major and pitch diameters.
///
/// Static loads along the axis, threads that share them evenly, and the strengths given: no bending, no
/// fatigue, no temperature, no creep, no bursting of a thin wall, no torque. Structural, pressure and
/// lifting joints belong to the engineer responsible.
///
/// # Errors
/// [`Code::ClassUnset`], and the others of [`Thread::limits`]; [`Code::Contradiction`] if the sides are
/// swapped, if form, diameter, pitch, starts or hand differ, or if the classes leave no overlap;
/// [`Code::DoesNotApply`] for threads other than M, MJ, UN, UNR and UNJ, and for holes of wire inserts;
/// [`Code::OutOfRange`] for lengths, strengths, a drilled hole
/// or a load that make no sense.
///
/// # Example
/// ```
/// use threadcalc_core::{EngagementRequest, Length, Thread, Weakest, engagement};
///
/// let (hole, screw) = (Thread::read(b"M10x1.5-6H")?, Thread::read(b"M10x1.5-6g")?);
/// let request = EngagementRequest {
///     length_mm: Length::integer(10),
///     without_full_thread_mm: Length::ZERO,
///     internal_shear_mpa: 200.0,
///     external_shear_mpa: 480.0,
///     external_tensile_mpa: 800.0,
///     drilled_mm: None,
///     load_n: None,
/// };
/// let found = engagement(&hole, &screw, &request)?;
/// assert!((found.external_shear_area_mm2 - 155.80).abs() < 0.005);
/// assert_eq!(found.weakest, Weakest::Internal);
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// FED-STD-H28/2B and ASME B1.1 appendix B (shear areas, length of engagement, J); ISO 898-1 (At of M);
/// ASME B1.1 (At of UN).
pub fn engagement(internal: &Thread, external: &Thread, request: &EngagementRequest) -> Result<Engagement, Error> {
    let overlap = Overlap::of(internal, external, request.drilled_mm)?;
    let full_mm = full_length(request)?;
    let strength = |value, field| in_range(value, field, STRENGTHS_MPA);
    let internal_shear = strength(request.internal_shear_mpa, Field::InternalShear)?;
    let external_shear = strength(request.external_shear_mpa, Field::ExternalShear)?;
    let tensile = strength(request.external_tensile_mpa, Field::ExternalTensile)?;
    let threads = full_mm / external.pitch_mm().to_f64();
    let (internal_area, external_area) = (overlap.internal_mm2 * threads, overlap.external_mm2 * threads);
    let tensile_area = external.profile().stress_area_mm2;
    let tensile_load = tensile_area * tensile;
    let (internal_load, external_load) = (internal_area * internal_shear, external_area * external_shear);
    let strip = internal_load.min(external_load);
    let weakest = if tensile_load <= strip {
        Weakest::Screw
    } else if external_load <= internal_load {
        Weakest::External
    } else {
        Weakest::Internal
    };
    let load = request.load_n.map(|load| in_range(load, Field::Load, LOADS_N)).transpose()?;
    Ok(Engagement {
        tensile_area_mm2: tensile_area,
        internal_shear_area_mm2: internal_area,
        external_shear_area_mm2: external_area,
        tensile_load_n: tensile_load,
        internal_strip_load_n: internal_load,
        external_strip_load_n: external_load,
        weakest,
        required_length_mm: tensile_load / (strip / full_mm) + request.without_full_thread_mm.to_f64(),
        strip_ratio: external_load / internal_load,
        safety_factor: load.map(|load| tensile_load.min(strip) / load),
    })
}

/// Shear areas of one thread, one pitch long.
struct Overlap {
    internal_mm2: f64,
    external_mm2: f64,
}

impl Overlap {
    fn of(internal: &Thread, external: &Thread, drilled_mm: Option<Length>) -> Result<Self, Error> {
        let (hole, screw) = (limits_of(internal, Side::Internal)?, limits_of(external, Side::External)?);
        same_thread(internal, external)?;
        let no_limits = Error::new(Code::NotSourced, Field::ToleranceClass).hint_text("such as 6H and 6g, 2B and 2A");
        let (minor_most, pitch_most) = hole.minor_mm.1.zip(hole.pitch_diameter_mm.1).ok_or(no_limits)?;
        let (major_least, pitch_least) = screw.major_mm.0.zip(screw.pitch_diameter_mm.0).ok_or(no_limits)?;
        let core = screw.minor_mm.1.ok_or(no_limits)?;
        if drilled_mm.is_some_and(|drilled| drilled <= core || drilled >= major_least) {
            return Err(Error::new(Code::OutOfRange, Field::Drilled)
                .got(drilled_mm.map_or(f64::NAN, Length::to_f64))
                .within(core.to_f64(), major_least.to_f64())
                .hint_text("above the core of the largest screw and below the crests of the smallest"));
        }
        let (minor, pitch) = (drilled_mm.unwrap_or(minor_most).to_f64(), external.pitch_mm().to_f64());
        let major = major_least.to_f64();
        let thickness = |inner: f64, outer: f64| pitch / 2.0 + FLANK * (inner - outer);
        let internal_thick = thickness(major, pitch_most.to_f64());
        let external_thick = thickness(pitch_least.to_f64(), minor);
        if minor >= major || internal_thick <= 0.0 || external_thick <= 0.0 {
            return Err(Error::new(Code::Contradiction, Field::ToleranceClass)
                .hint_text("at their limits these classes leave no threads that hold each other"));
        }
        Ok(Self { internal_mm2: PI * major * internal_thick, external_mm2: PI * minor * external_thick })
    }
}

fn limits_of(thread: &Thread, side: Side) -> Result<Limits, Error> {
    carries_a_screw(thread)?;
    let limits = thread.limits()?;
    if thread.side() != Some(side) {
        return Err(Error::new(Code::Contradiction, Field::Side)
            .hint_text("the internal thread comes first, the external one behind it"));
    }
    Ok(limits)
}

/// Whether the formulas are about this thread: 60° screws whose tensile area is known.
pub(crate) fn carries_a_screw(thread: &Thread) -> Result<(), Error> {
    let hint = match thread.form() {
        _ if thread.is_wire_insert() => {
            "in the hole of a wire insert the insert carries: its maker says what it holds in which material"
        }
        form if form.is_metric() || form.is_unified() => return Ok(()),
        form if form.is_pipe() => "a pipe thread seals or holds a fitting; this is about screws of M and UN",
        form if form.is_translating() => "a thread that moves a load: its nut is the designer's",
        _ => "no tensile area of this thread has been read; this is about screws of M and UN",
    };
    Err(Error::new(Code::DoesNotApply, Field::Form).hint_text(hint))
}

fn same_thread(internal: &Thread, external: &Thread) -> Result<(), Error> {
    let same = [
        // The hole of UNR is UN.
        (internal.form() == external.of_hole().form(), Field::Form),
        (internal.major_mm() == external.major_mm(), Field::Diameter),
        (internal.pitch_mm() == external.pitch_mm(), Field::Pitch),
        (internal.starts() == external.starts(), Field::Starts),
        (internal.hand() == external.hand(), Field::Hand),
    ];
    match same.into_iter().find(|(same, _)| !same) {
        Some((_, field)) => {
            Err(Error::new(Code::Contradiction, field).hint_text("both threads of a fit have the same"))
        }
        None => Ok(()),
    }
}

/// The length with full threads, in millimetres.
fn full_length(request: &EngagementRequest) -> Result<f64, Error> {
    let (length, without) = (request.length_mm, request.without_full_thread_mm);
    let range = |value: Length, field| Error::new(Code::OutOfRange, field).got(value.to_f64());
    if !length.is_positive() || length > LONGEST_MM {
        return Err(range(length, Field::EngagementLength).within(0.0, LONGEST_MM.to_f64()));
    }
    if without.is_negative() || without >= length {
        return Err(range(without, Field::WithoutFullThread)
            .within(0.0, length.to_f64())
            .hint_text("from 0 to less than the length of engagement"));
    }
    Ok(length.minus(without)?.to_f64())
}

fn in_range(value: f64, field: Field, (least, most): (f64, f64)) -> Result<f64, Error> {
    if value >= least && value <= most {
        return Ok(value);
    }
    Err(Error::new(Code::OutOfRange, field).got(value).within(least, most))
}

named! {
    /// Property classes of screws.
    pub enum PropertyClass {
        /// 4.6
        P46 = 1 "4.6",
        /// 4.8
        P48 = 2 "4.8",
        /// 5.6
        P56 = 3 "5.6",
        /// 5.8
        P58 = 4 "5.8",
        /// 6.8
        P68 = 5 "6.8",
        /// 8.8
        P88 = 6 "8.8",
        /// 9.8
        P98 = 7 "9.8",
        /// 10.9
        P109 = 8 "10.9",
        /// 12.9
        P129 = 9 "12.9",
    }
}

/// Shear strength of steel over its tensile strength (common practice).
const SHEAR_OF_TENSILE: f64 = 0.6;
/// Diameters that ISO 898-1 covers, and the largest of class 9.8, which is also the largest of the lower
/// strength of class 8.8.
const SMALLEST_MM: Length = Length::parts(16, 10);
const LARGEST_MM: Length = Length::integer(39);
const LARGEST_SMALL_MM: Length = Length::integer(16);

/// Strengths to begin with where nothing better is known: marked, and never a default.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct StartingStrength {
    /// Smallest tensile strength of the property class or the group of materials.
    pub tensile_mpa: f64,
    /// 0.6 of it.
    pub shear_mpa: f64,
    /// Where both are from.
    pub source: &'static str,
}

impl StartingStrength {
    pub(crate) const fn of_tensile(tensile_mpa: f64, source: &'static str) -> Self {
        Self { tensile_mpa, shear_mpa: tensile_mpa * SHEAR_OF_TENSILE, source }
    }
}

impl PropertyClass {
    /// The smallest tensile strength of a screw of the class and of this nominal diameter, and 0.6 of it as
    /// shear strength.
    ///
    /// Class 8.8 has 800 MPa up to 16 mm and 830 MPa above; class 9.8 ends at 16 mm. The 0.6 is common practice
    /// for steel, not the standard's: a measured or specified shear strength comes first.
    ///
    /// # Errors
    /// [`Code::OutOfRange`] for a diameter that the standard has no strength for in this class: below 1.6 mm,
    /// above 39 mm, above 16 mm in class 9.8.
    ///
    /// ```
    /// use threadcalc_core::{Length, PropertyClass};
    ///
    /// let m10 = PropertyClass::P88.starting_strength(Length::integer(10))?;
    /// assert_eq!((m10.tensile_mpa, m10.shear_mpa), (800.0, 480.0));
    /// assert_eq!(PropertyClass::P88.starting_strength(Length::integer(20))?.tensile_mpa, 830.0);
    /// # Ok::<(), threadcalc_core::Error>(())
    /// ```
    ///
    /// # Source
    /// ISO 898-1:2013 scope and table 3, from memory; shear: common practice.
    pub fn starting_strength(self, diameter_mm: Length) -> Result<StartingStrength, Error> {
        let largest = if matches!(self, Self::P98) { LARGEST_SMALL_MM } else { LARGEST_MM };
        if diameter_mm < SMALLEST_MM || diameter_mm > largest {
            return Err(Error::new(Code::OutOfRange, Field::Diameter)
                .got(diameter_mm.to_f64())
                .within(SMALLEST_MM.to_f64(), largest.to_f64())
                .hint_text(
                    "diameters in mm that ISO 898-1 has this class for: beyond, give the screw's tensile strength",
                ));
        }
        let tensile_mpa = match self {
            Self::P46 => 400.0,
            Self::P48 => 420.0,
            Self::P56 => 500.0,
            Self::P58 => 520.0,
            Self::P68 => 600.0,
            Self::P88 if diameter_mm <= LARGEST_SMALL_MM => 800.0,
            Self::P88 => 830.0,
            Self::P98 => 900.0,
            Self::P109 => 1040.0,
            Self::P129 => 1220.0,
        };
        let source = "ISO 898-1:2013 table 3, from memory; shear 0.6 of it, common practice";
        Ok(StartingStrength::of_tensile(tensile_mpa, source))
    }
}
