//! BS 84:2007: Whitworth threads, coarse (BSW) and fine (BSF), one pitch a size and series.
//!
//! Origin of the values: from memory of the standard; 10 sizes of BSW and 11 of BSF were read in charts of it.
//! 1/16, 3/32, 5/32 and 7/32 BSW stand in older editions only.

use super::listed::{Row, row};

/// BSW, sorted by diameter: 64ths of an inch, eighths of a thread per inch.
#[rustfmt::skip]
pub(super) static COARSE: [Row; 34] = [
    row(4, &[480]),
    row(6, &[384]),
    row(8, &[320]),
    row(10, &[256]),
    row(12, &[192]),
    row(14, &[192]),
    row(16, &[160]),
    row(20, &[144]),
    row(24, &[128]),
    row(28, &[112]),
    row(32, &[96]),
    row(36, &[96]),
    row(40, &[88]),
    row(44, &[88]),
    row(48, &[80]),
    row(56, &[72]),
    row(64, &[64]),
    row(72, &[56]),
    row(80, &[56]),
    row(96, &[48]),
    row(112, &[40]),
    row(128, &[36]),
    row(144, &[32]),
    row(160, &[32]),
    row(176, &[28]),
    row(192, &[28]),
    row(208, &[26]),
    row(224, &[26]),
    row(240, &[24]),
    row(256, &[24]),
    row(288, &[23]),
    row(320, &[22]),
    row(352, &[21]),
    row(384, &[20]),
];

/// BSF, sorted by diameter.
#[rustfmt::skip]
pub(super) static FINE: [Row; 30] = [
    row(12, &[256]),
    row(14, &[224]),
    row(16, &[208]),
    row(18, &[208]),
    row(20, &[176]),
    row(24, &[160]),
    row(28, &[144]),
    row(32, &[128]),
    row(36, &[128]),
    row(40, &[112]),
    row(44, &[112]),
    row(48, &[96]),
    row(56, &[88]),
    row(64, &[80]),
    row(72, &[72]),
    row(80, &[72]),
    row(88, &[64]),
    row(96, &[64]),
    row(104, &[64]),
    row(112, &[56]),
    row(128, &[56]),
    row(144, &[48]),
    row(160, &[48]),
    row(176, &[48]),
    row(192, &[40]),
    row(208, &[40]),
    row(224, &[36]),
    row(240, &[36]),
    row(256, &[36]),
    row(272, &[32]),
];
