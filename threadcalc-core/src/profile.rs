//! The basic profile of a thread: unrounded formulas.

use crate::form::Form;
use crate::length::Length;
use crate::thread::Thread;

/// √3 / 2: the height of the fundamental triangle of a 60° thread in pitches.
const TRIANGLE: f64 = 0.866_025_403_784_438_6;
/// 1 / (2 tan 27.5°) and two thirds of it: triangle and height of a 55° thread in pitches.
const WHITWORTH_TRIANGLE: f64 = 0.960_491_063_485_583;
const WHITWORTH_DEPTH: f64 = 0.640_327_375_657_055_3;

/// The basic profile of a thread, unrounded, in millimetres.
///
/// | member | symbol | 60° thread |
/// |---|---|---|
/// | `triangle_height_mm` | H | √3/2 P |
/// | `major_mm` | D, d | D |
/// | `pitch_diameter_mm` | D2, d2 | D − 3/4 H |
/// | `minor_mm` | D1 | D − 5/4 H |
/// | `external_minor_mm` | d3 | D − 17/12 H (M), D − 11/8 H (UNR) |
/// | `stress_area_mm2` | As | π/4 ((d2 + d3)/2)² (M), π/4 (D − 0.9743/n)² (UN) |
///
/// Pipe threads at the gauge plane: H = 0.960491 P and D2 = D − 0.640327 P, D1 = D − 1.280654 P (G, R,
/// Rp, Rc); D2 = E1, crests and roots 0.8 p apart (NPT, NPSC, NPSM; not read for NPTF and NPSF: NaN).
/// Derived doubles: the standards' own rounded values are in `Limits`. NaN: the standard has none.
///
/// # Source
/// ISO 68-1 and ISO 724; ISO 898-1 (As); ASME B1.1-2003 (UN, UNR and their stress area); ISO 228-1:2000;
/// ISO 7-1:1994; ASME B1.20.1-1983.
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
    /// Minor diameter of the external thread at its rounded root.
    pub external_minor_mm: f64,
    /// Tensile stress area of the external thread.
    pub stress_area_mm2: f64,
    /// Angles of the two flanks against the normal to the axis, in degrees.
    pub flank_angles_deg: [f64; 2],
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
        if self.form().is_pipe() {
            return pipe_profile(self);
        }
        let (major, pitch) = (self.major_mm().to_f64(), self.pitch_mm().to_f64());
        let height = TRIANGLE * pitch;
        let pitch_diameter = major - 0.75 * height;
        let (external_minor, stress_diameter) = if self.form() == Form::Metric {
            let d3 = major - 17.0 / 12.0 * height;
            (d3, (pitch_diameter + d3) / 2.0)
        } else {
            (major - 1.375 * height, major - 0.9743 * pitch)
        };
        Profile {
            triangle_height_mm: height,
            major_mm: major,
            pitch_diameter_mm: pitch_diameter,
            minor_mm: major - 1.25 * height,
            external_minor_mm: external_minor,
            stress_area_mm2: core::f64::consts::FRAC_PI_4 * stress_diameter * stress_diameter,
            flank_angles_deg: [30.0, 30.0],
        }
    }
}

/// At the gauge plane, which for a tapped hole is its face.
fn pipe_profile(thread: &Thread) -> Profile {
    let pitch = thread.pitch_mm().to_f64();
    let whitworth = thread.form().is_whitworth();
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
