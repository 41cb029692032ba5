//! ASME B1.20.1-1983 table 2 (NPT) and ASME B1.20.3 (NPTF): pipe sizes, outside diameters, threads
//! per inch and hand-tight engagement L1; ASME B94.9-2008 table of taper pipe tap limits: how far the
//! small end of a tap projects through the L1 ring gauge.
//!
//! E0, E1, L2 and E2 are the standard's formulas, exact; nothing of them is stored.
//!
//! Origin of the values: the rows 1/16 to 3/4, 1 1/2, 3, 6, 8, 10, 14, 18 and 24 in, and every
//! projection, were read; the other rows of L1 and the range of sizes of NPTF, NPSC, NPSM and NPSF are
//! from memory.

use crate::length::Length;

/// One nominal pipe size.
pub(crate) struct InchPipe {
    /// Nominal pipe size in sixteenths of an inch.
    pub sixteenths: u16,
    /// Outside diameter of the pipe, D, in 1/10000 in.
    pub outside_e4_in: u32,
    /// Threads per inch, in tenths.
    pub per_inch_tenths: u16,
    /// Hand-tight engagement, L1, in 1/10000 in.
    pub hand_tight_e4_in: u16,
    /// Projection of a tap's small end through the L1 ring, in 1/10000 in; 0: not in the table.
    pub projection_e4_in: u16,
    /// Which threads exist in this size: a sum of the bits below; NPT has them all.
    pub also: u8,
}

/// NPTF exists.
pub(crate) const NPTF: u8 = 1;
/// NPSC exists.
pub(crate) const NPSC: u8 = 2;
/// NPSM exists.
pub(crate) const NPSM: u8 = 4;
/// NPSF exists.
pub(crate) const NPSF: u8 = 8;

/// A count of 1/10000 in, in millimetres.
pub(crate) const fn e4_inches(count: u16) -> Length {
    Length::parts((count as u32).saturating_mul(127), 50_000)
}

/// From 14 in on the size names the outside diameter, "14 O.D."
pub(crate) const FIRST_OUTSIDE_DIAMETER_SIZE: u16 = 14 * 16;

const fn n(sixteenths: u16, outside: u32, per_inch: u16, hand_tight: u16, projection: u16, also: u8) -> InchPipe {
    InchPipe {
        sixteenths,
        outside_e4_in: outside,
        per_inch_tenths: per_inch,
        hand_tight_e4_in: hand_tight,
        projection_e4_in: projection,
        also,
    }
}

/// Sorted by size.
pub(crate) const SIZES: [InchPipe; 24] = [
    n(1, 3125, 270, 1600, 3120, NPTF | NPSF),
    n(2, 4050, 270, 1615, 3120, NPTF | NPSC | NPSM | NPSF),
    n(4, 5400, 180, 2278, 4590, NPTF | NPSC | NPSM | NPSF),
    n(6, 6750, 180, 2400, 4540, NPTF | NPSC | NPSM | NPSF),
    n(8, 8400, 140, 3200, 5790, NPTF | NPSC | NPSM | NPSF),
    n(12, 10500, 140, 3390, 5650, NPTF | NPSC | NPSM | NPSF),
    n(16, 13150, 115, 4000, 6780, NPTF | NPSC | NPSM | NPSF),
    n(20, 16600, 115, 4200, 6860, NPTF | NPSC | NPSM),
    n(24, 19000, 115, 4200, 6990, NPTF | NPSC | NPSM),
    n(32, 23750, 115, 4360, 6670, NPTF | NPSC | NPSM),
    n(40, 28750, 80, 6820, 9250, NPTF | NPSC | NPSM),
    n(48, 35000, 80, 7660, 9250, NPTF | NPSC | NPSM),
    n(56, 40000, 80, 8210, 0, NPSC | NPSM),
    n(64, 45000, 80, 8440, 0, NPSC | NPSM),
    n(80, 55630, 80, 9370, 0, NPSM),
    n(96, 66250, 80, 9580, 0, NPSM),
    n(128, 86250, 80, 10630, 0, 0),
    n(160, 107500, 80, 12100, 0, 0),
    n(192, 127500, 80, 13600, 0, 0),
    n(224, 140000, 80, 15620, 0, 0),
    n(256, 160000, 80, 18120, 0, 0),
    n(288, 180000, 80, 20000, 0, 0),
    n(320, 200000, 80, 21250, 0, 0),
    n(384, 240000, 80, 23750, 0, 0),
];
