//! ASME B1.1-2003 table 1 "Diameter-pitch combinations for the standard series of threads": sizes
//! 0 (0.060 in) to 6 in, primary and secondary, with the coarse (UNC), fine (UNF) and extra-fine
//! (UNEF) pitch and the constant-pitch series (4-UN to 32-UN) that list the size.
//!
//! Where a graded pitch equals the number of a constant-pitch series (1/4-28 is UNF, 1-8 is UNC)
//! the standard prints the name of the graded series in that column; such a row has no bit here, so
//! that a diameter and a pitch always name one series.
//!
//! Origin of the values: compared line by line with reprints of the standard's tables of basic
//! dimensions were the whole UNC, UNF, UNEF and 8-UN columns, 6-UN up to 2 7/8 in and 28-UN up to
//! 7/8 in. From memory are the columns 4-UN, 12-UN, 16-UN, 20-UN and 32-UN and the rest of 6-UN and
//! 28-UN; of these a read list of limits confirms every series at 5/8 in and 12-UN to 20-UN at
//! 11/16 in, and another list the range of 20-UN (up to 3 in).
//!
//! Special threads (UNS, the "selected combinations" of the tables of limits, for instance 6-10 or
//! 2 7/16-16) are no part of the standard series and not listed, nor are the older 4-36, 6-36, 8-40
//! and 14-24.

/// One diameter of the ASME B1.1 standard series.
pub(crate) struct UnifiedSize {
    /// Basic major diameter in 1/10000 in.
    pub diameter_e4_in: u32,
    /// Secondary size of the table.
    pub secondary: bool,
    /// Coarse pitch, threads per inch in tenths (45 = 4.5); 0: none.
    pub unc_tenths: u16,
    /// Fine pitch, threads per inch in tenths; 0: none.
    pub unf_tenths: u16,
    /// Extra-fine pitch, threads per inch in tenths; 0: none.
    pub unef_tenths: u16,
    /// Bit set of the constant-pitch series that list this size: bit 0 = 4-UN, 1 = 6-UN, 2 = 8-UN,
    /// 3 = 12-UN, 4 = 16-UN, 5 = 20-UN, 6 = 28-UN, 7 = 32-UN.
    pub constant: u16,
}

/// The 4-UN series in [`UnifiedSize::constant`].
pub(crate) const UN4: u16 = 1 << 0;
/// The 6-UN series in [`UnifiedSize::constant`].
pub(crate) const UN6: u16 = 1 << 1;
/// The 8-UN series in [`UnifiedSize::constant`].
pub(crate) const UN8: u16 = 1 << 2;
/// The 12-UN series in [`UnifiedSize::constant`].
pub(crate) const UN12: u16 = 1 << 3;
/// The 16-UN series in [`UnifiedSize::constant`].
pub(crate) const UN16: u16 = 1 << 4;
/// The 20-UN series in [`UnifiedSize::constant`].
pub(crate) const UN20: u16 = 1 << 5;
/// The 28-UN series in [`UnifiedSize::constant`].
pub(crate) const UN28: u16 = 1 << 6;
/// The 32-UN series in [`UnifiedSize::constant`].
pub(crate) const UN32: u16 = 1 << 7;

/// A row of the table: diameter, secondary, UNC, UNF, UNEF, constant-pitch series.
const fn u(
    diameter_e4_in: u32,
    secondary: bool,
    coarse: u16,
    fine: u16,
    extra_fine: u16,
    constant: u16,
) -> UnifiedSize {
    UnifiedSize { diameter_e4_in, secondary, unc_tenths: coarse, unf_tenths: fine, unef_tenths: extra_fine, constant }
}

/// ASME B1.1-2003 table 1, sorted by diameter.
#[rustfmt::skip]
pub(crate) const SIZES: [UnifiedSize; 71] = [
    u(600, false, 0, 800, 0, 0), // No. 0
    u(730, true, 640, 720, 0, 0), // No. 1
    u(860, false, 560, 640, 0, 0), // No. 2
    u(990, true, 480, 560, 0, 0), // No. 3
    u(1_120, false, 400, 480, 0, 0), // No. 4
    u(1_250, false, 400, 440, 0, 0), // No. 5
    u(1_380, false, 320, 400, 0, 0), // No. 6
    u(1_640, false, 320, 360, 0, 0), // No. 8
    u(1_900, false, 240, 320, 0, 0), // No. 10
    u(2_160, true, 240, 280, 320, 0), // No. 12
    u(2_500, false, 200, 280, 320, 0), // 1/4
    u(3_125, false, 180, 240, 320, UN20 | UN28), // 5/16
    u(3_750, false, 160, 240, 320, UN20 | UN28), // 3/8
    u(4_375, false, 140, 200, 280, UN16 | UN32), // 7/16
    u(5_000, false, 130, 200, 280, UN16 | UN32), // 1/2
    u(5_625, false, 120, 180, 240, UN16 | UN20 | UN28 | UN32), // 9/16
    u(6_250, false, 110, 180, 240, UN12 | UN16 | UN20 | UN28 | UN32), // 5/8
    u(6_875, true, 0, 0, 240, UN12 | UN16 | UN20 | UN28 | UN32), // 11/16
    u(7_500, false, 100, 160, 200, UN12 | UN28 | UN32), // 3/4
    u(8_125, true, 0, 0, 200, UN12 | UN16 | UN28 | UN32), // 13/16
    u(8_750, false, 90, 140, 200, UN12 | UN16 | UN28 | UN32), // 7/8
    u(9_375, true, 0, 0, 200, UN12 | UN16 | UN28 | UN32), // 15/16
    u(10_000, false, 80, 120, 200, UN16 | UN28 | UN32), // 1
    u(10_625, true, 0, 0, 180, UN8 | UN12 | UN16 | UN20 | UN28), // 1 1/16
    u(11_250, false, 70, 120, 180, UN8 | UN16 | UN20 | UN28), // 1 1/8
    u(11_875, true, 0, 0, 180, UN8 | UN12 | UN16 | UN20 | UN28), // 1 3/16
    u(12_500, false, 70, 120, 180, UN8 | UN16 | UN20 | UN28), // 1 1/4
    u(13_125, true, 0, 0, 180, UN8 | UN12 | UN16 | UN20 | UN28), // 1 5/16
    u(13_750, false, 60, 120, 180, UN8 | UN16 | UN20 | UN28), // 1 3/8
    u(14_375, true, 0, 0, 180, UN6 | UN8 | UN12 | UN16 | UN20 | UN28), // 1 7/16
    u(15_000, false, 60, 120, 180, UN8 | UN16 | UN20 | UN28), // 1 1/2
    u(15_625, true, 0, 0, 180, UN6 | UN8 | UN12 | UN16 | UN20), // 1 9/16
    u(16_250, false, 0, 0, 180, UN6 | UN8 | UN12 | UN16 | UN20), // 1 5/8
    u(16_875, true, 0, 0, 180, UN6 | UN8 | UN12 | UN16 | UN20), // 1 11/16
    u(17_500, false, 50, 0, 0, UN6 | UN8 | UN12 | UN16 | UN20), // 1 3/4
    u(18_125, true, 0, 0, 0, UN6 | UN8 | UN12 | UN16 | UN20), // 1 13/16
    u(18_750, false, 0, 0, 0, UN6 | UN8 | UN12 | UN16 | UN20), // 1 7/8
    u(19_375, true, 0, 0, 0, UN6 | UN8 | UN12 | UN16 | UN20), // 1 15/16
    u(20_000, false, 45, 0, 0, UN6 | UN8 | UN12 | UN16 | UN20), // 2
    u(21_250, true, 0, 0, 0, UN6 | UN8 | UN12 | UN16 | UN20), // 2 1/8
    u(22_500, false, 45, 0, 0, UN6 | UN8 | UN12 | UN16 | UN20), // 2 1/4
    u(23_750, true, 0, 0, 0, UN6 | UN8 | UN12 | UN16 | UN20), // 2 3/8
    u(25_000, false, 40, 0, 0, UN6 | UN8 | UN12 | UN16 | UN20), // 2 1/2
    u(26_250, true, 0, 0, 0, UN4 | UN6 | UN8 | UN12 | UN16 | UN20), // 2 5/8
    u(27_500, false, 40, 0, 0, UN6 | UN8 | UN12 | UN16 | UN20), // 2 3/4
    u(28_750, true, 0, 0, 0, UN4 | UN6 | UN8 | UN12 | UN16 | UN20), // 2 7/8
    u(30_000, false, 40, 0, 0, UN6 | UN8 | UN12 | UN16 | UN20), // 3
    u(31_250, true, 0, 0, 0, UN4 | UN6 | UN8 | UN12 | UN16), // 3 1/8
    u(32_500, false, 40, 0, 0, UN6 | UN8 | UN12 | UN16), // 3 1/4
    u(33_750, true, 0, 0, 0, UN4 | UN6 | UN8 | UN12 | UN16), // 3 3/8
    u(35_000, false, 40, 0, 0, UN6 | UN8 | UN12 | UN16), // 3 1/2
    u(36_250, true, 0, 0, 0, UN4 | UN6 | UN8 | UN12 | UN16), // 3 5/8
    u(37_500, false, 40, 0, 0, UN6 | UN8 | UN12 | UN16), // 3 3/4
    u(38_750, true, 0, 0, 0, UN4 | UN6 | UN8 | UN12 | UN16), // 3 7/8
    u(40_000, false, 40, 0, 0, UN6 | UN8 | UN12 | UN16), // 4
    u(41_250, true, 0, 0, 0, UN4 | UN6 | UN8 | UN12 | UN16), // 4 1/8
    u(42_500, false, 0, 0, 0, UN4 | UN6 | UN8 | UN12 | UN16), // 4 1/4
    u(43_750, true, 0, 0, 0, UN4 | UN6 | UN8 | UN12 | UN16), // 4 3/8
    u(45_000, false, 0, 0, 0, UN4 | UN6 | UN8 | UN12 | UN16), // 4 1/2
    u(46_250, true, 0, 0, 0, UN4 | UN6 | UN8 | UN12 | UN16), // 4 5/8
    u(47_500, false, 0, 0, 0, UN4 | UN6 | UN8 | UN12 | UN16), // 4 3/4
    u(48_750, true, 0, 0, 0, UN4 | UN6 | UN8 | UN12 | UN16), // 4 7/8
    u(50_000, false, 0, 0, 0, UN4 | UN6 | UN8 | UN12 | UN16), // 5
    u(51_250, true, 0, 0, 0, UN4 | UN6 | UN8 | UN12 | UN16), // 5 1/8
    u(52_500, false, 0, 0, 0, UN4 | UN6 | UN8 | UN12 | UN16), // 5 1/4
    u(53_750, true, 0, 0, 0, UN4 | UN6 | UN8 | UN12 | UN16), // 5 3/8
    u(55_000, false, 0, 0, 0, UN4 | UN6 | UN8 | UN12 | UN16), // 5 1/2
    u(56_250, true, 0, 0, 0, UN4 | UN6 | UN8 | UN12 | UN16), // 5 5/8
    u(57_500, false, 0, 0, 0, UN4 | UN6 | UN8 | UN12 | UN16), // 5 3/4
    u(58_750, true, 0, 0, 0, UN4 | UN6 | UN8 | UN12 | UN16), // 5 7/8
    u(60_000, false, 0, 0, 0, UN4 | UN6 | UN8 | UN12 | UN16), // 6
];

/// Whether the diameters rise strictly.
const fn sorted(mut sizes: &[UnifiedSize]) -> bool {
    while let [first, rest @ ..] = sizes {
        match rest {
            [second, ..] if first.diameter_e4_in >= second.diameter_e4_in => return false,
            _ => sizes = rest,
        }
    }
    true
}

/// The bit of the constant-pitch series with this many threads per inch (in tenths); 0: none.
const fn bit(tenths: u16) -> u16 {
    match tenths {
        40 => UN4,
        60 => UN6,
        80 => UN8,
        120 => UN12,
        160 => UN16,
        200 => UN20,
        280 => UN28,
        320 => UN32,
        _ => 0,
    }
}

/// Whether no row names one pitch twice and the graded pitches get finer from UNC to UNEF.
const fn well_formed(mut sizes: &[UnifiedSize]) -> bool {
    while let [size, rest @ ..] = sizes {
        let graded = bit(size.unc_tenths) | bit(size.unf_tenths) | bit(size.unef_tenths);
        if size.constant & graded != 0 || size.constant >> 8 != 0 {
            return false;
        }
        if size.unf_tenths != 0 && size.unc_tenths >= size.unf_tenths {
            return false;
        }
        if size.unef_tenths != 0 && (size.unf_tenths >= size.unef_tenths || size.unc_tenths >= size.unef_tenths) {
            return false;
        }
        sizes = rest;
    }
    true
}

const _: () = assert!(sorted(&SIZES));
const _: () = assert!(well_formed(&SIZES));
