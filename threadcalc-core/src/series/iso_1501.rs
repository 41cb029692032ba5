//! ISO 1501:2009: miniature threads S0.3 to S1.4, one pitch each.
//!
//! Origin of the values: from memory of the standard; ASME B1.10M and JIS B 0201-1973 print the same 14 sizes and
//! pitches.

use super::listed::{Row, row};

/// The sizes, sorted by diameter: micrometres.
#[rustfmt::skip]
pub(super) static SIZES: [Row; 14] = [
    row(300, &[80]),
    row(350, &[90]),
    row(400, &[100]),
    row(450, &[100]),
    row(500, &[125]),
    row(550, &[125]),
    row(600, &[150]),
    row(700, &[175]),
    row(800, &[200]),
    row(900, &[225]),
    row(1_000, &[250]),
    row(1_100, &[250]),
    row(1_200, &[250]),
    row(1_400, &[300]),
];
