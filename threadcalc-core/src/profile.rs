//! The basic profile of a thread: unrounded formulas.

use crate::thread::{Form, Thread};

/// √3 / 2: the height of the fundamental triangle of a 60° thread in pitches.
const TRIANGLE: f64 = 0.866_025_403_784_438_6;

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
/// Derived doubles: the standards' own rounded values are in `Limits`.
///
/// # Source
/// ISO 68-1 and ISO 724; ISO 898-1 (As); ASME B1.1-2003 (UN, UNR and their stress area).
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
        let (major, pitch) = (self.major_mm().to_f64(), self.pitch_mm().to_f64());
        let height = TRIANGLE * pitch;
        let pitch_diameter = major - 0.75 * height;
        let (external_minor, stress_diameter) = match self.form() {
            Form::Metric => {
                let d3 = major - 17.0 / 12.0 * height;
                (d3, (pitch_diameter + d3) / 2.0)
            }
            Form::Unified => (major - 1.375 * height, major - 0.9743 * pitch),
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
