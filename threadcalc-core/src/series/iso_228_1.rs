//! ISO 228-1:2000 and ISO 7-1:1994: sizes of G, R, Rp and Rc, threads per inch, major diameter, gauge
//! length and tolerances.
//!
//! Thread height, pitch diameter and minor diameter follow from diameter and pitch, rounded as the
//! standards print them. Origin of the values: diameters, threads per inch and the tolerances of G were
//! read in an open data set and, for the minor diameter of G, confirmed by a second print; gauge lengths
//! up to 2 in, 3 in and 5 in were read; the other gauge lengths, useful thread lengths and every
//! tolerance of ISO 7-1 are from memory.

use crate::length::Length;

/// One size of the 55° pipe threads.
pub(crate) struct MetricPipe {
    /// Size in sixteenths of an inch.
    pub sixteenths: u16,
    /// Major diameter (R, Rc: at the gauge plane), d, in micrometres.
    pub major_um: u32,
    /// Threads per inch.
    pub per_inch: u8,
    /// Tolerance of the pitch diameter of G, internal and class A, in micrometres.
    pub pitch_tolerance_um: u16,
    /// Gauge length of R and Rc, in 1/100 mm; 0: ISO 7-1 does not list the size.
    pub gauge_length_e2_mm: u16,
    /// Useful thread of R at the basic gauge length, in 1/100 mm.
    pub useful_e2_mm: u16,
}

impl MetricPipe {
    /// Turns that a gauge may stand off R, either way: 1 up to 2 in, 1 1/2 above.
    pub(crate) fn external_turns(&self) -> Length {
        if self.is_small() { Length::ONE } else { const { Length::parts(3, 2) } }
    }

    /// Turns that a gauge may stand off Rc or Rp, either way: 1 1/4 up to 2 in, 1 1/2 above.
    pub(crate) fn internal_turns(&self) -> Length {
        if self.is_small() { const { Length::parts(5, 4) } } else { const { Length::parts(3, 2) } }
    }

    /// How far the diameters of Rp may be off, either way, in micrometres: the gauge's turns on 1:16.
    pub(crate) fn jointing_tolerance_um(&self) -> u16 {
        match self.per_inch {
            28 => 71,
            19 => 104,
            14 => 142,
            _ if self.is_small() => 180,
            _ => 216,
        }
    }

    fn is_small(&self) -> bool {
        self.sixteenths <= 32
    }
}

/// Thread height h of a pitch, in millimetres, as the standards round it.
pub(crate) fn whitworth_height(per_inch: u8) -> Length {
    let row = PITCHES.iter().find(|(own, _, _)| *own == per_inch);
    row.map_or(Length::ZERO, |(_, height_um, _)| Length::parts(u32::from(*height_um), 1000))
}

/// Tolerance of the minor diameter of G internal, in millimetres.
pub(crate) fn minor_tolerance(per_inch: u8) -> Length {
    let row = PITCHES.iter().find(|(own, _, _)| *own == per_inch);
    row.map_or(Length::ZERO, |(_, _, tolerance_um)| Length::parts(u32::from(*tolerance_um), 1000))
}

const fn g(
    sixteenths: u16,
    major_um: u32,
    per_inch: u8,
    pitch_tolerance_um: u16,
    gauge_length_e2_mm: u16,
    useful_e2_mm: u16,
) -> MetricPipe {
    MetricPipe { sixteenths, major_um, per_inch, pitch_tolerance_um, gauge_length_e2_mm, useful_e2_mm }
}

/// Sorted by size.
pub(crate) const SIZES: [MetricPipe; 24] = [
    g(1, 7723, 28, 107, 400, 650),
    g(2, 9728, 28, 107, 400, 650),
    g(4, 13157, 19, 125, 600, 970),
    g(6, 16662, 19, 125, 640, 1010),
    g(8, 20955, 14, 142, 820, 1320),
    g(10, 22911, 14, 142, 0, 0),
    g(12, 26441, 14, 142, 950, 1450),
    g(14, 30201, 14, 142, 0, 0),
    g(16, 33249, 11, 180, 1040, 1680),
    g(18, 37897, 11, 180, 0, 0),
    g(20, 41910, 11, 180, 1270, 1910),
    g(24, 47803, 11, 180, 1270, 1910),
    g(28, 53746, 11, 180, 0, 0),
    g(32, 59614, 11, 180, 1590, 2340),
    g(36, 65710, 11, 217, 0, 0),
    g(40, 75184, 11, 217, 1750, 2670),
    g(44, 81534, 11, 217, 0, 0),
    g(48, 87884, 11, 217, 2060, 2980),
    g(56, 100330, 11, 217, 0, 0),
    g(64, 113030, 11, 217, 2540, 3580),
    g(72, 125730, 11, 217, 0, 0),
    g(80, 138430, 11, 217, 2860, 4010),
    g(88, 151130, 11, 217, 0, 0),
    g(96, 163830, 11, 217, 2860, 4010),
];

/// Per pitch: threads per inch, thread height h and tolerance of the minor diameter of G internal, in
/// micrometres. The tolerance of the major diameter of G external is twice that of its pitch diameter.
pub(crate) const PITCHES: [(u8, u16, u16); 4] = [(28, 581, 282), (19, 856, 445), (14, 1162, 541), (11, 1479, 640)];
