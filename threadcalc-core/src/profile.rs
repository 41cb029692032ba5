//! The basic profile of a thread: unrounded formulas.

use crate::error::Error;
use crate::form::Form;
use crate::length::{Length, Rounding};
use crate::series::ba_depth;
use crate::thread::Thread;

/// √3 / 2: the height of the fundamental triangle of a 60° thread in pitches.
const TRIANGLE: f64 = 0.866_025_403_784_438_6;
/// 1 / (2 tan 27.5°) and two thirds of it: triangle and height of a 55° thread in pitches.
const WHITWORTH_TRIANGLE: f64 = 0.960_491_063_485_583;
const WHITWORTH_DEPTH: f64 = 0.640_327_375_657_055_3;
/// The triangles of BA (1 / (2 tan 23.75°)), Tr (15°), ACME (14.5°) and buttress (1 / (tan 7° + tan 45°)).
const BA_TRIANGLE: f64 = 1.136_336_439_463_34;
const TRAPEZOIDAL_TRIANGLE: f64 = 1.866_025_403_784_438_6;
const ACME_TRIANGLE: f64 = 1.933_356_547_449_369_2;
const BUTTRESS_TRIANGLE: f64 = 0.890_642_813_253_358_7;

/// The basic profile of a thread, unrounded, in millimetres.
///
/// | member | symbol | 60° thread |
/// |---|---|---|
/// | `triangle_height_mm` | H | √3/2 P |
/// | `major_mm` | D, d | D |
/// | `pitch_diameter_mm` | D2, d2 | D − 3/4 H |
/// | `minor_mm` | D1 | D − 5/4 H; MJ and UNJ D − 9/8 H |
/// | `external_minor_mm` | d3 | D − 17/12 H (M), D − 11/8 H (UN, UNR), D − 4/3 H (MJ, UNJ) |
/// | `stress_area_mm2` | As | π/4 ((d2 + d3)/2)² (M, MJ, UNJ), π/4 (D − 0.9743/n)² (UN, UNR) |
///
/// The hole of a wire insert has its own D, larger than that of the screw by 3/2 H.
///
/// | thread | H | D − D2 | D − D1 | D − d3 |
/// |---|---|---|---|---|
/// | S | 0.866025 P | 0.649519 P | 0.96 P | 1.12 P |
/// | BSW, BSF | 0.960491 P | 0.640327 P | 1.280654 P | 1.280654 P |
/// | BA | 1.136337 P | 0.6 P to 0.005 mm, h | 2 h | 2 h |
/// | Tr | 1.866025 P | 0.5 P | P | P + 2 ac: ac 0.15 (P 1.5), 0.25 (2 to 5), 0.5 (6 to 12), 1 mm |
/// | ACME | 1.933357 P | 0.5 P | P | P + 0.020 in, P + 0.010 in above 10 threads per inch |
/// | stub ACME | 1.933357 P | 0.3 P | 0.6 P | 0.6 P + the same |
/// | buttress | 0.890643 P | 0.6 P | 1.2 P | 1.325424 P |
///
/// Pipe threads at the gauge plane: H = 0.960491 P and D2 = D − 0.640327 P, D1 = D − 1.280654 P (G, R,
/// Rp, Rc); D2 = E1, crests and roots 0.8 p apart (NPT, NPSC, NPSM; not read for NPTF and NPSF: NaN).
/// Derived doubles: the standards' own rounded values are in `Limits`. NaN: the standard has none.
///
/// # Source
/// ISO 68-1 and ISO 724; ISO 898-1 (As); ASME B1.1-2003 (UN, UNR and their stress area); ISO 5855-1:1999;
/// ASME B1.15-1995; SAE AS8879D; ISO 1501:2009 (from memory; D2 and D1: JIS B 0201-1973, which has the same); BS 84;
/// BS 93 (its printed diameters of No. 0 to 16, by the same rounding beyond); ISO 2901, ISO 2904:2020; ASME B1.5-1997;
/// ASME B1.8-1988; ASME B1.9-1973; ISO 228-1:2000; ISO 7-1:1994; ASME B1.20.1-1983. The stress area of MJ
/// and UNJ is that of ISO 898-1 on their own root.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Profile {
    /// Height of the fundamental triangle, H.
    pub triangle_height_mm: f64,
    /// Basic major diameter.
    pub major_mm: f64,
    /// Basic pitch diameter.
    pub pitch_diameter_mm: f64,
    /// Basic minor diameter of the internal thread.
    pub minor_mm: f64,
    /// Minor diameter of the external thread at its root.
    pub external_minor_mm: f64,
    /// Tensile stress area of the external thread.
    pub stress_area_mm2: f64,
    /// Angles of the two flanks against the normal to the axis, in degrees; that of the leading flank first.
    pub flank_angles_deg: [f64; 2],
}

/// How a straight thread is shaped: its triangle in pitches, the rest in units of `unit` pitches, the triangle
/// of a 60° thread.
struct Shape {
    triangle: f64,
    unit: f64,
    /// D − D2.
    pitch: f64,
    /// D − D1.
    minor: f64,
    /// D − d3, and the clearance of the root that is no part of the pitch, in mm.
    root: f64,
    clearance_mm: f64,
    flanks: [f64; 2],
}

impl Shape {
    const fn sixty(minor: f64, root: f64) -> Self {
        Self { triangle: TRIANGLE, unit: TRIANGLE, pitch: 0.75, minor, root, clearance_mm: 0.0, flanks: [30.0; 2] }
    }

    const fn even(triangle: f64, depth: f64, clearance_mm: f64, flank: f64) -> Self {
        let (minor, flanks) = (2.0 * depth, [flank; 2]);
        Self { triangle, unit: 1.0, pitch: depth, minor, root: minor, clearance_mm, flanks }
    }

    const fn buttress(flanks: [f64; 2]) -> Self {
        let (pitch, minor, root) = (0.6, 1.2, 1.325_424);
        Self { triangle: BUTTRESS_TRIANGLE, unit: 1.0, pitch, minor, root, clearance_mm: 0.0, flanks }
    }

    /// That of a straight thread; pipe threads have their own.
    fn of(form: Form, pitch: Length) -> Self {
        match form {
            Form::Metric => Self::sixty(1.25, 17.0 / 12.0),
            Form::MetricJ | Form::UnifiedJ => Self::sixty(1.125, 4.0 / 3.0),
            Form::Miniature => Self::sixty(0.96 / TRIANGLE, 1.12 / TRIANGLE),
            Form::Whitworth => Self::even(WHITWORTH_TRIANGLE, WHITWORTH_DEPTH, 0.0, 27.5),
            Form::Ba => Self::even(BA_TRIANGLE, ba_depth(pitch).to_f64() / pitch.to_f64(), 0.0, 23.75),
            Form::Trapezoidal => Self::even(TRAPEZOIDAL_TRIANGLE, 0.5, 2.0 * crest_clearance(pitch).to_f64(), 15.0),
            Form::Acme => Self::even(ACME_TRIANGLE, 0.5, acme_clearance(pitch).to_f64(), 14.5),
            Form::StubAcme => Self::even(ACME_TRIANGLE, 0.3, acme_clearance(pitch).to_f64(), 14.5),
            Form::Buttress => Self::buttress([45.0, 7.0]),
            Form::PullButtress => Self::buttress([7.0, 45.0]),
            _ => Self::sixty(1.25, 1.375),
        }
    }
}

/// The basic height of a straight thread on the diameter, D − D1, in pitches; pipe threads have their own.
pub(crate) fn height_in_pitches(form: Form, pitch: Length) -> f64 {
    // The clearance of the roots is no part of it.
    let shape = Shape::of(form, pitch);
    shape.minor * shape.unit
}

/// What an error along the axis is on the pitch diameter, 2 H / P, in thousandths: 1732 at 60°.
pub(crate) fn axial_on_pitch_diameter_e3(form: Form) -> u32 {
    // No triangle depends on the pitch.
    let own = Shape::of(form, Length::ONE).triangle;
    let triangle = if form.is_whitworth_pipe() { WHITWORTH_TRIANGLE } else { own };
    libm::rint(2000.0 * triangle) as u32
}

/// ac of ISO 2904: the clearance on the root of Tr, in millimetres.
pub(crate) fn crest_clearance(pitch: Length) -> Length {
    if pitch < Length::integer(2) {
        const { Length::parts(15, 100) }
    } else if pitch < Length::integer(6) {
        const { Length::parts(1, 4) }
    } else if pitch < Length::integer(14) {
        const { Length::parts(1, 2) }
    } else {
        Length::ONE
    }
}

/// The clearance on the diameter of ACME's roots in 1/10000 in: 0.020 in, above 10 threads per inch 0.010 in.
pub(crate) fn acme_clearance_e4_in(pitch: Length) -> u16 {
    let tenth_of_an_inch = const { Length::parts(127, 50) };
    if pitch < tenth_of_an_inch { 100 } else { 200 }
}

/// The same in millimetres.
fn acme_clearance(pitch: Length) -> Length {
    Length::parts(u32::from(acme_clearance_e4_in(pitch)).saturating_mul(127), 50_000)
}

/// The basic major diameter of the hole that takes a wire insert, to the decimals of its standard.
pub(crate) fn wire_insert_major(form: Form, nominal: Length, pitch: Length) -> Result<Length, Error> {
    wire_insert_diameter(form, nominal, pitch, 1_299_038_106)
}

/// A diameter of that hole so many 1e-9 pitches above the screw's, to the decimals of its standard.
pub(crate) fn wire_insert_diameter(form: Form, nominal: Length, pitch: Length, above_e9: u32) -> Result<Length, Error> {
    let exact = nominal.plus(pitch.times(Length::parts(above_e9, 1_000_000_000))?)?;
    if form.is_metric() {
        return exact.round_to(3, Rounding::HalfEven)?.to_length();
    }
    exact.over(Length::INCH)?.round_to(4, Rounding::HalfEven)?.to_length()?.times(Length::INCH)
}

impl Thread {
    /// The basic profile.
    ///
    /// ```
    /// use threadcalc_core::Thread;
    ///
    /// let profile = Thread::read(b"M10")?.profile();
    /// assert!((profile.pitch_diameter_mm - 9.026).abs() < 0.0005); // ISO 724
    /// # Ok::<(), threadcalc_core::Error>(())
    /// ```
    #[must_use]
    pub fn profile(&self) -> Profile {
        let form = self.form();
        if form.is_pipe() {
            return pipe_profile(self);
        }
        let pitch = self.pitch_mm().to_f64();
        let shape = Shape::of(form, self.pitch_mm());
        let height = shape.triangle * pitch;
        let nominal = self.named_by().to_f64();
        let major = if self.is_wire_insert() { nominal + 1.5 * height } else { nominal };
        let unit = shape.unit * pitch;
        let pitch_diameter = major - shape.pitch * unit;
        let external_minor = major - shape.root * unit - shape.clearance_mm;
        let stress_diameter = match form {
            _ if self.is_wire_insert() => f64::NAN,
            Form::Unified | Form::UnifiedR => major - 0.9743 * pitch,
            Form::Metric | Form::MetricJ | Form::UnifiedJ => (pitch_diameter + external_minor) / 2.0,
            _ => f64::NAN,
        };
        Profile {
            triangle_height_mm: height,
            major_mm: major,
            pitch_diameter_mm: pitch_diameter,
            minor_mm: major - shape.minor * unit,
            external_minor_mm: if self.is_wire_insert() { f64::NAN } else { external_minor },
            stress_area_mm2: core::f64::consts::FRAC_PI_4 * stress_diameter * stress_diameter,
            flank_angles_deg: shape.flanks,
        }
    }
}

/// At the gauge plane, which for a tapped hole is its face.
fn pipe_profile(thread: &Thread) -> Profile {
    let pitch = thread.pitch_mm().to_f64();
    let whitworth = thread.form().is_whitworth_pipe();
    let (triangle, depth, angle) =
        if whitworth { (WHITWORTH_TRIANGLE, WHITWORTH_DEPTH, 27.5) } else { (TRIANGLE, 0.8, 30.0) };
    // The sharper thread of the dryseal forms has not been read: no crests and roots of them.
    let depth = if matches!(thread.form(), Form::Nptf | Form::Npsf) { f64::NAN } else { depth * pitch };
    let pitch_diameter = if whitworth {
        thread.major_mm().to_f64() - depth
    } else {
        let gauge_plane = thread.pipe().ok().and_then(|pipe| pipe.pitch_diameter_gauge_plane_mm);
        gauge_plane.map_or(f64::NAN, Length::to_f64)
    };
    Profile {
        triangle_height_mm: triangle * pitch,
        major_mm: pitch_diameter + depth,
        pitch_diameter_mm: pitch_diameter,
        minor_mm: pitch_diameter - depth,
        external_minor_mm: pitch_diameter - depth,
        stress_area_mm2: f64::NAN,
        flank_angles_deg: [angle, angle],
    }
}
