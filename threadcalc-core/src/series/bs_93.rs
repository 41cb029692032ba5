//! BS 93:2008: BA threads No. 0 to No. 25, one pitch each.
//!
//! Origin of the values: the rule of the standard, p = 0.9^n mm and d = 6 p^1.2 mm, each to two significant figures;
//! No. 0 to 16 agree with the table of the standard as Machinery's Handbook 31, p. 2115, prints it.

use super::listed::{Row, row};
use crate::length::{Length, Rounding};

/// The depth of thread, 0.6 P to the nearest 0.005 mm: all 17 depths that the standard's table has of No. 0 to 16.
pub(crate) fn ba_depth(pitch: Length) -> Length {
    // 120 P in steps of 0.005 mm. Pitches are at most 1 mm, and no two-figure one lies between two steps.
    let steps = pitch.times(Length::integer(120)).and_then(|steps| steps.round_to(0, Rounding::HalfEven));
    Length::parts(steps.ok().and_then(|steps| u32::try_from(steps.units()).ok()).unwrap_or(0), 200)
}

/// The sizes, No. 0 first: the largest diameter first: micrometres.
#[rustfmt::skip]
pub(super) static SIZES: [Row; 26] = [
    row(6_000, &[1_000]),
    row(5_300, &[900]),
    row(4_700, &[810]),
    row(4_100, &[730]),
    row(3_600, &[660]),
    row(3_200, &[590]),
    row(2_800, &[530]),
    row(2_500, &[480]),
    row(2_200, &[430]),
    row(1_900, &[390]),
    row(1_700, &[350]),
    row(1_500, &[310]),
    row(1_300, &[280]),
    row(1_200, &[250]),
    row(1_000, &[230]),
    row(900, &[210]),
    row(790, &[190]),
    row(700, &[170]),
    row(620, &[150]),
    row(540, &[140]),
    row(480, &[120]),
    row(420, &[110]),
    row(370, &[98]),
    row(330, &[89]),
    row(290, &[80]),
    row(250, &[72]),
];
