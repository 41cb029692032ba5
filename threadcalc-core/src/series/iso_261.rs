//! ISO 261:1998 "General plan": the diameters M1 to M300 with the choice column, the coarse pitch
//! and the fine pitches of table 2, and beside each diameter the pitches that ISO 262:1998
//! "Selected sizes for screws, bolts and nuts" takes over (M1 to M64).
//!
//! Origin of the values: diameters and pitches as read, row by row, in GB/T 193-2003, the national
//! standard that adopts ISO 261:1998; the ISO 262 pitches as read in a reproduced table of that
//! standard; the choice columns and the split between coarse and fine from memory.
//!
//! Completeness: the whole table was written out again from these rows and matched the text of the
//! read table character by character, so no diameter or pitch is missing or added.
//!
//! Notes of the standard that the rows cannot carry:
//! - M14x1.25 is for spark plugs only, M35x1.5 for lock nuts of rolling bearings only.
//! - M30x3 and M33x3 stand in brackets: to be avoided as far as possible.
//! - Above M68 there is no coarse pitch; 6 mm and 8 mm stand in the fine columns there.
//! - A pitch finer than the table gives is allowed up to M22 for 0.5 mm, M33 for 0.75 mm, M80 for
//!   1 mm, M150 for 1.5 mm, M200 for 2 mm and M300 for 3 mm. Such threads (M39x1, M45x1) are not
//!   listed.
//!
//! Met in practice, but neither in the table nor covered by that note: M1.7, M2.3, M2.6, M16x1.25,
//! M18x1.25, M63x1.5, M64x5.5.

/// One diameter of ISO 261.
pub(crate) struct MetricSize {
    /// Nominal diameter in micrometres.
    pub diameter_um: u32,
    /// Column of ISO 261 the diameter stands in: 1, 2 or 3.
    pub choice: u8,
    /// Coarse pitch in micrometres; 0: the diameter has none.
    pub coarse_um: u16,
    /// Fine pitches in micrometres, descending.
    pub fine_um: &'static [u16],
    /// Pitches of this diameter that ISO 262 selects, coarse first; empty: not in ISO 262.
    pub iso_262_um: &'static [u16],
}

/// A row of the table: diameter, choice, coarse pitch, fine pitches, pitches of ISO 262.
const fn m(
    diameter_um: u32,
    choice: u8,
    coarse_um: u16,
    fine_um: &'static [u16],
    iso_262_um: &'static [u16],
) -> MetricSize {
    MetricSize { diameter_um, choice, coarse_um, fine_um, iso_262_um }
}

/// ISO 261:1998 table 2 with the selection of ISO 262:1998 table 1, sorted by diameter.
#[rustfmt::skip]
pub(crate) const SIZES: [MetricSize; 106] = [
    m(1_000, 1, 250, &[200], &[250]),
    m(1_100, 2, 250, &[200], &[]),
    m(1_200, 1, 250, &[200], &[250]),
    m(1_400, 2, 300, &[200], &[300]),
    m(1_600, 1, 350, &[200], &[350]),
    m(1_800, 2, 350, &[200], &[350]),
    m(2_000, 1, 400, &[250], &[400]),
    m(2_200, 2, 450, &[250], &[]),
    m(2_500, 1, 450, &[350], &[450]),
    m(3_000, 1, 500, &[350], &[500]),
    m(3_500, 2, 600, &[350], &[600]),
    m(4_000, 1, 700, &[500], &[700]),
    m(4_500, 2, 750, &[500], &[]),
    m(5_000, 1, 800, &[500], &[800]),
    m(5_500, 3, 0, &[500], &[]),
    m(6_000, 1, 1_000, &[750], &[1_000]),
    m(7_000, 2, 1_000, &[750], &[1_000]),
    m(8_000, 1, 1_250, &[1_000, 750], &[1_250, 1_000]),
    m(9_000, 3, 1_250, &[1_000, 750], &[]),
    m(10_000, 1, 1_500, &[1_250, 1_000, 750], &[1_500, 1_250, 1_000]),
    m(11_000, 3, 1_500, &[1_000, 750], &[]),
    m(12_000, 1, 1_750, &[1_500, 1_250, 1_000], &[1_750, 1_500, 1_250]),
    m(14_000, 2, 2_000, &[1_500, 1_250, 1_000], &[2_000, 1_500]),
    m(15_000, 3, 0, &[1_500, 1_000], &[]),
    m(16_000, 1, 2_000, &[1_500, 1_000], &[2_000, 1_500]),
    m(17_000, 3, 0, &[1_500, 1_000], &[]),
    m(18_000, 2, 2_500, &[2_000, 1_500, 1_000], &[2_500, 2_000, 1_500]),
    m(20_000, 1, 2_500, &[2_000, 1_500, 1_000], &[2_500, 2_000, 1_500]),
    m(22_000, 2, 2_500, &[2_000, 1_500, 1_000], &[2_500, 2_000, 1_500]),
    m(24_000, 1, 3_000, &[2_000, 1_500, 1_000], &[3_000, 2_000]),
    m(25_000, 3, 0, &[2_000, 1_500, 1_000], &[]),
    m(26_000, 3, 0, &[1_500], &[]),
    m(27_000, 2, 3_000, &[2_000, 1_500, 1_000], &[3_000, 2_000]),
    m(28_000, 3, 0, &[2_000, 1_500, 1_000], &[]),
    m(30_000, 1, 3_500, &[3_000, 2_000, 1_500, 1_000], &[3_500, 2_000]),
    m(32_000, 3, 0, &[2_000, 1_500], &[]),
    m(33_000, 2, 3_500, &[3_000, 2_000, 1_500], &[3_500, 2_000]),
    m(35_000, 3, 0, &[1_500], &[]),
    m(36_000, 1, 4_000, &[3_000, 2_000, 1_500], &[4_000, 3_000]),
    m(38_000, 3, 0, &[1_500], &[]),
    m(39_000, 2, 4_000, &[3_000, 2_000, 1_500], &[4_000, 3_000]),
    m(40_000, 3, 0, &[3_000, 2_000, 1_500], &[]),
    m(42_000, 1, 4_500, &[4_000, 3_000, 2_000, 1_500], &[4_500, 3_000]),
    m(45_000, 2, 4_500, &[4_000, 3_000, 2_000, 1_500], &[4_500, 3_000]),
    m(48_000, 1, 5_000, &[4_000, 3_000, 2_000, 1_500], &[5_000, 3_000]),
    m(50_000, 3, 0, &[3_000, 2_000, 1_500], &[]),
    m(52_000, 2, 5_000, &[4_000, 3_000, 2_000, 1_500], &[5_000, 4_000]),
    m(55_000, 3, 0, &[4_000, 3_000, 2_000, 1_500], &[]),
    m(56_000, 1, 5_500, &[4_000, 3_000, 2_000, 1_500], &[5_500, 4_000]),
    m(58_000, 3, 0, &[4_000, 3_000, 2_000, 1_500], &[]),
    m(60_000, 2, 5_500, &[4_000, 3_000, 2_000, 1_500], &[5_500, 4_000]),
    m(62_000, 3, 0, &[4_000, 3_000, 2_000, 1_500], &[]),
    m(64_000, 1, 6_000, &[4_000, 3_000, 2_000, 1_500], &[6_000, 4_000]),
    m(65_000, 3, 0, &[4_000, 3_000, 2_000, 1_500], &[]),
    m(68_000, 2, 6_000, &[4_000, 3_000, 2_000, 1_500], &[]),
    m(70_000, 3, 0, &[6_000, 4_000, 3_000, 2_000, 1_500], &[]),
    m(72_000, 1, 0, &[6_000, 4_000, 3_000, 2_000, 1_500], &[]),
    m(75_000, 3, 0, &[4_000, 3_000, 2_000, 1_500], &[]),
    m(76_000, 2, 0, &[6_000, 4_000, 3_000, 2_000, 1_500], &[]),
    m(78_000, 3, 0, &[2_000], &[]),
    m(80_000, 1, 0, &[6_000, 4_000, 3_000, 2_000, 1_500], &[]),
    m(82_000, 3, 0, &[2_000], &[]),
    m(85_000, 2, 0, &[6_000, 4_000, 3_000, 2_000], &[]),
    m(90_000, 1, 0, &[6_000, 4_000, 3_000, 2_000], &[]),
    m(95_000, 2, 0, &[6_000, 4_000, 3_000, 2_000], &[]),
    m(100_000, 1, 0, &[6_000, 4_000, 3_000, 2_000], &[]),
    m(105_000, 2, 0, &[6_000, 4_000, 3_000, 2_000], &[]),
    m(110_000, 1, 0, &[6_000, 4_000, 3_000, 2_000], &[]),
    m(115_000, 2, 0, &[6_000, 4_000, 3_000, 2_000], &[]),
    m(120_000, 2, 0, &[6_000, 4_000, 3_000, 2_000], &[]),
    m(125_000, 1, 0, &[8_000, 6_000, 4_000, 3_000, 2_000], &[]),
    m(130_000, 2, 0, &[8_000, 6_000, 4_000, 3_000, 2_000], &[]),
    m(135_000, 3, 0, &[6_000, 4_000, 3_000, 2_000], &[]),
    m(140_000, 1, 0, &[8_000, 6_000, 4_000, 3_000, 2_000], &[]),
    m(145_000, 3, 0, &[6_000, 4_000, 3_000, 2_000], &[]),
    m(150_000, 2, 0, &[8_000, 6_000, 4_000, 3_000, 2_000], &[]),
    m(155_000, 3, 0, &[6_000, 4_000, 3_000], &[]),
    m(160_000, 1, 0, &[8_000, 6_000, 4_000, 3_000], &[]),
    m(165_000, 3, 0, &[6_000, 4_000, 3_000], &[]),
    m(170_000, 2, 0, &[8_000, 6_000, 4_000, 3_000], &[]),
    m(175_000, 3, 0, &[6_000, 4_000, 3_000], &[]),
    m(180_000, 1, 0, &[8_000, 6_000, 4_000, 3_000], &[]),
    m(185_000, 3, 0, &[6_000, 4_000, 3_000], &[]),
    m(190_000, 2, 0, &[8_000, 6_000, 4_000, 3_000], &[]),
    m(195_000, 3, 0, &[6_000, 4_000, 3_000], &[]),
    m(200_000, 1, 0, &[8_000, 6_000, 4_000, 3_000], &[]),
    m(205_000, 3, 0, &[6_000, 4_000, 3_000], &[]),
    m(210_000, 2, 0, &[8_000, 6_000, 4_000, 3_000], &[]),
    m(215_000, 3, 0, &[6_000, 4_000, 3_000], &[]),
    m(220_000, 1, 0, &[8_000, 6_000, 4_000, 3_000], &[]),
    m(225_000, 3, 0, &[6_000, 4_000, 3_000], &[]),
    m(230_000, 3, 0, &[8_000, 6_000, 4_000, 3_000], &[]),
    m(235_000, 3, 0, &[6_000, 4_000, 3_000], &[]),
    m(240_000, 2, 0, &[8_000, 6_000, 4_000, 3_000], &[]),
    m(245_000, 3, 0, &[6_000, 4_000, 3_000], &[]),
    m(250_000, 1, 0, &[8_000, 6_000, 4_000, 3_000], &[]),
    m(255_000, 3, 0, &[6_000, 4_000], &[]),
    m(260_000, 2, 0, &[8_000, 6_000, 4_000], &[]),
    m(265_000, 3, 0, &[6_000, 4_000], &[]),
    m(270_000, 3, 0, &[8_000, 6_000, 4_000], &[]),
    m(275_000, 3, 0, &[6_000, 4_000], &[]),
    m(280_000, 1, 0, &[8_000, 6_000, 4_000], &[]),
    m(285_000, 3, 0, &[6_000, 4_000], &[]),
    m(290_000, 3, 0, &[8_000, 6_000, 4_000], &[]),
    m(295_000, 3, 0, &[6_000, 4_000], &[]),
    m(300_000, 2, 0, &[8_000, 6_000, 4_000], &[]),
];

/// Whether the diameters rise strictly.
const fn sorted(mut sizes: &[MetricSize]) -> bool {
    while let [first, rest @ ..] = sizes {
        match rest {
            [second, ..] if first.diameter_um >= second.diameter_um => return false,
            _ => sizes = rest,
        }
    }
    true
}

/// Whether the pitches fall strictly from `above` (0: no bound).
const fn descending(mut above: u16, mut pitches: &[u16]) -> bool {
    while let [first, rest @ ..] = pitches {
        if *first == 0 || (above != 0 && *first >= above) {
            return false;
        }
        above = *first;
        pitches = rest;
    }
    true
}

/// Whether `pitch` is the coarse pitch or one of the fine pitches of `size`.
const fn lists(size: &MetricSize, pitch: u16) -> bool {
    let mut fine = size.fine_um;
    while let [first, rest @ ..] = fine {
        if *first == pitch {
            return true;
        }
        fine = rest;
    }
    size.coarse_um == pitch
}

/// Whether every row is of the form its fields promise.
const fn well_formed(mut sizes: &[MetricSize]) -> bool {
    while let [size, rest @ ..] = sizes {
        if !matches!(size.choice, 1..=3) || !descending(size.coarse_um, size.fine_um) || !descending(0, size.iso_262_um)
        {
            return false;
        }
        let mut selected = size.iso_262_um;
        while let [pitch, others @ ..] = selected {
            if !lists(size, *pitch) {
                return false;
            }
            selected = others;
        }
        sizes = rest;
    }
    true
}

const _: () = assert!(sorted(&SIZES));
const _: () = assert!(well_formed(&SIZES));
