//! ASME B1.5-1997 and B1.8-1988: preferred diameters and pitches of ACME and stub ACME threads, the same of both.
//!
//! Origin of the values: 21 of the 23 sizes as read in a table of B1.8, 4 1/2 and 5 in from memory.

use super::listed::{Row, row};

/// The sizes, sorted by diameter: 64ths of an inch, eighths of a thread per inch.
#[rustfmt::skip]
pub(super) static SIZES: [Row; 23] = [
    row(16, &[128]),
    row(20, &[112]),
    row(24, &[96]),
    row(28, &[96]),
    row(32, &[80]),
    row(40, &[64]),
    row(48, &[48]),
    row(56, &[48]),
    row(64, &[40]),
    row(72, &[40]),
    row(80, &[40]),
    row(88, &[32]),
    row(96, &[32]),
    row(112, &[32]),
    row(128, &[32]),
    row(144, &[24]),
    row(160, &[24]),
    row(176, &[24]),
    row(192, &[16]),
    row(224, &[16]),
    row(256, &[16]),
    row(288, &[16]),
    row(320, &[16]),
];
