//! ISO 965-1:2013, the tables of fundamental deviations and of tolerances, in micrometres.
//!
//! Transcribed cell by cell; the standard says that the tables govern. A cell is confirmed if the value of
//! the standard's formula, rounded to the R40 series of ISO 3, is the cell's, or if a second source
//! prints it; `M` marks the others, which are from memory of the standard. The tests compute every
//! cell's mark anew. 0: the standard has no such cell.

use super::Confidence;

/// Marks a cell that nothing confirms.
pub(super) const M: u16 = 1 << 15;

/// What depends on the pitch alone.
pub(super) struct ByPitch {
    pub pitch_um: u16,
    /// 3/4 H and 5/4 H, whole micrometres as ISO 724 gives its diameters.
    pub pitch_depth_um: u16,
    pub minor_depth_um: u16,
    /// Distance from basic size: G and g, f, e.
    pub deviations: [u16; 3],
    /// T_D1 of grades 4 to 8.
    pub minor: [u16; 5],
    /// T_d of grades 4, 6 and 8.
    pub major: [u16; 3],
}

/// What depends on the diameter step and the pitch.
pub(super) struct BySize {
    pub pitch_um: u16,
    /// T_D2 of grades 4 to 8.
    pub internal: [u16; 5],
    /// T_d2 of grades 3 to 9.
    pub external: [u16; 7],
}

/// A cell: its micrometres and how sure they are.
pub(super) const fn cell(packed: u16) -> Option<(u16, Confidence)> {
    match packed & !M {
        0 => None,
        um if packed & M == 0 => Some((um, Confidence::Confirmed)),
        um => Some((um, Confidence::Memory)),
    }
}

/// 3/4 H and 5/4 H of a 60° thread in 1e-15 pitches.
pub(super) const PITCH_DEPTH_E15: i128 = 649_519_052_838_329;
pub(super) const MINOR_DEPTH_E15: i128 = 1_082_531_754_730_548;

/// A depth in whole micrometres; the factors are irrational, so there are no ties.
const fn depth_um(pitch_um: u16, depth_e15: i128) -> u16 {
    let um_e15 = (pitch_um as i128).wrapping_mul(depth_e15).wrapping_add(500_000_000_000_000);
    (um_e15 / 1_000_000_000_000_000) as u16
}

const fn by_pitch(pitch_um: u16, deviations: [u16; 3], minor: [u16; 5], major: [u16; 3]) -> ByPitch {
    let pitch_depth_um = depth_um(pitch_um, PITCH_DEPTH_E15);
    let minor_depth_um = depth_um(pitch_um, MINOR_DEPTH_E15);
    ByPitch { pitch_um, pitch_depth_um, minor_depth_um, deviations, minor, major }
}

const fn by_size(pitch_um: u16, internal: [u16; 5], external: [u16; 7]) -> BySize {
    BySize { pitch_um, internal, external }
}

/// Deviations G = g, f, e; T_D1 of grades 4 to 8; T_d of grades 4, 6, 8.
#[rustfmt::skip]
pub(super) static PITCHES: [ByPitch; 25] = [
    by_pitch(200, [17, 0, 0], [38, 0, 0, 0, 0], [36 | M, 56, 0]),
    by_pitch(250, [18, 0, 0], [45, 56 | M, 0, 0, 0], [42 | M, 67, 0]),
    by_pitch(300, [18, 0, 0], [53, 67, 85, 0, 0], [48, 75, 0]),
    by_pitch(350, [19, 34, 0], [63, 80, 100, 0, 0], [53, 85, 0]),
    by_pitch(400, [19, 34, 0], [71, 90, 112, 0, 0], [60, 95, 0]),
    by_pitch(450, [20, 35 | M, 0], [80, 100, 125, 0, 0], [63, 100, 0]),
    by_pitch(500, [20, 36, 50 | M], [90 | M, 112 | M, 140, 180 | M, 0], [67, 106, 0]),
    by_pitch(600, [21, 36 | M, 53 | M], [100, 125, 160, 200, 0], [80, 125, 0]),
    by_pitch(700, [22, 38, 56], [112, 140, 180, 224, 0], [90 | M, 140, 0]),
    by_pitch(750, [22, 38, 56 | M], [118, 150, 190, 236, 0], [90, 140, 0]),
    by_pitch(800, [24, 38 | M, 60], [125, 160, 200, 250, 315], [95, 150, 236]),
    by_pitch(1_000, [26, 40, 60], [150 | M, 190 | M, 236, 300 | M, 375], [112, 180, 280]),
    by_pitch(1_250, [28, 42, 63], [170, 212, 265, 335, 425], [132, 212, 335]),
    by_pitch(1_500, [32, 45 | M, 67], [190, 236 | M, 300, 375, 475 | M], [150, 236, 375]),
    by_pitch(1_750, [34, 48 | M, 71], [212, 265, 335, 425, 530], [170 | M, 265, 425]),
    by_pitch(2_000, [38, 52 | M, 71], [236, 300, 375, 475, 600], [180, 280, 450]),
    by_pitch(2_500, [42, 58 | M, 80 | M], [280, 355, 450, 560, 710], [212, 335, 530]),
    by_pitch(3_000, [48, 63, 85], [315, 400, 500, 630, 800], [236, 375, 600]),
    by_pitch(3_500, [53, 70 | M, 90], [355, 450, 560, 710, 900], [265, 425, 670]),
    by_pitch(4_000, [60, 75, 95], [375, 475, 600, 750, 950], [300 | M, 475, 750 | M]),
    by_pitch(4_500, [63, 80, 100], [425, 530, 670, 850 | M, 1_060], [315, 500, 800]),
    by_pitch(5_000, [71, 85, 106], [450, 560, 710, 900, 1_120], [335, 530, 850]),
    by_pitch(5_500, [75, 90, 112], [475, 600, 750, 950, 1_180], [355, 560, 900]),
    by_pitch(6_000, [80, 95, 118], [500, 630, 800, 1_000, 1_250 | M], [375, 600, 950]),
    by_pitch(8_000, [100, 118, 140], [630, 800, 1_000, 1_250, 1_600], [450, 710, 1_180]),
];

/// A step of nominal diameters, over the end of the step before and up to its own, and its rows.
pub(super) struct Step {
    pub to_um: i64,
    pub rows: &'static [BySize],
}

/// Diameters of the steps begin above this.
pub(super) const OVER_UM: i64 = 990;

/// T_D2 of grades 4 to 8; T_d2 of grades 3 to 9. The edition of 1998 carried the last step on to 355 mm.
#[rustfmt::skip]
pub(super) static STEPS: [Step; 9] = [
    Step { to_um: 1_400, rows: &[
        by_size(200, [40, 0, 0, 0, 0], [24, 30, 38, 48, 0, 0, 0]),
        by_size(250, [45, 56, 0, 0, 0], [26, 34, 42, 53, 0, 0, 0]),
        by_size(300, [48, 60, 75, 0, 0], [28, 36, 45, 56, 0, 0, 0]),
    ] },
    Step { to_um: 2_800, rows: &[
        by_size(200, [42, 0, 0, 0, 0], [25, 32, 40, 50, 0, 0, 0]),
        by_size(250, [48, 60, 0, 0, 0], [28, 36, 45, 56, 0, 0, 0]),
        by_size(350, [53, 67, 85, 0, 0], [32, 40, 50, 63, 80, 0, 0]),
        by_size(400, [56, 71, 90, 0, 0], [34, 42, 53, 67, 85, 0, 0]),
        by_size(450, [60, 75, 95, 0, 0], [36, 45, 56, 71, 90, 0, 0]),
    ] },
    Step { to_um: 5_600, rows: &[
        by_size(350, [56, 71, 90, 0, 0], [34, 42, 53, 67, 85, 0, 0]),
        by_size(500, [63 | M, 80 | M, 100, 125 | M, 0], [38 | M, 48, 60 | M, 75, 95 | M, 0, 0]),
        by_size(600, [71, 90, 112, 140, 0], [42, 53, 67, 85, 106, 0, 0]),
        by_size(700, [75, 95, 118, 150, 0], [45, 56, 71, 90, 112, 0, 0]),
        by_size(750, [75 | M, 95 | M, 118, 150 | M, 0], [45, 56, 71 | M, 90, 112 | M, 0, 0]),
        by_size(800, [80, 100, 125, 160, 200], [48, 60, 75, 95, 118, 150, 190]),
    ] },
    Step { to_um: 11_200, rows: &[
        by_size(750, [85, 106, 132, 170, 0], [50, 63, 80, 100, 125, 0, 0]),
        by_size(1_000, [95, 118, 150, 190, 236], [56, 71, 90, 112, 140, 180, 224]),
        by_size(1_250, [100, 125, 160, 200, 250], [60, 75, 95, 118, 150, 190, 236]),
        by_size(1_500, [112, 140, 180, 224, 280], [67, 85 | M, 106, 132, 170 | M, 212, 265]),
    ] },
    Step { to_um: 22_400, rows: &[
        by_size(1_000, [100, 125, 160, 200, 250], [60, 75, 95, 118, 150, 190, 236]),
        by_size(1_250, [112, 140, 180, 224, 280], [67 | M, 85 | M, 106, 132, 170 | M, 212, 265]),
        by_size(1_500, [118, 150, 190, 236, 300], [71, 90, 112, 140, 180 | M, 224, 280]),
        by_size(1_750, [125, 160, 200, 250, 315], [75, 95, 118, 150, 190, 236, 300]),
        by_size(2_000, [132, 170, 212, 265, 335], [80, 100, 125, 160, 200, 250, 315]),
        by_size(2_500, [140 | M, 180, 224, 280 | M, 355], [85, 106, 132 | M, 170, 212, 265 | M, 335]),
    ] },
    Step { to_um: 45_000, rows: &[
        by_size(1_000, [106, 132, 170, 212, 0], [63, 80, 100, 125, 160, 200, 250]),
        by_size(1_500, [125, 160, 200, 250, 315], [75, 95, 118, 150, 190, 236, 300]),
        by_size(2_000, [140, 180, 224, 280, 355], [85, 106, 132, 170, 212, 265, 335]),
        by_size(3_000, [170, 212, 265, 335, 425], [100, 125, 160, 200, 250, 315, 400]),
        by_size(3_500, [180, 224, 280, 355, 450], [106, 132, 170, 212, 265, 335, 425]),
        by_size(4_000, [190, 236, 300, 375, 475], [112, 140, 180, 224, 280, 355, 450]),
        by_size(4_500, [200, 250, 315, 400, 500], [118, 150, 190, 236, 300, 375, 475]),
    ] },
    Step { to_um: 90_000, rows: &[
        by_size(1_500, [132 | M, 170, 212, 265 | M, 335], [80, 100, 125, 160, 200, 250, 315]),
        by_size(2_000, [150, 190, 236, 300, 375], [90, 112, 140, 180, 224, 280, 355]),
        by_size(3_000, [180, 224, 280, 355, 450], [106, 132, 170, 212, 265, 335, 425]),
        by_size(4_000, [200, 250, 315, 400, 500], [118, 150, 190, 236, 300, 375, 475]),
        by_size(5_000, [212 | M, 265 | M, 335, 425 | M, 530 | M], [125 | M, 160, 200 | M, 250, 315, 400 | M, 500 | M]),
        by_size(5_500, [224, 280, 355, 450, 560], [132, 170, 212, 265, 335, 425, 530]),
        by_size(6_000, [236, 300, 375, 475, 600], [140, 180, 224, 280, 355, 450, 560]),
    ] },
    Step { to_um: 180_000, rows: &[
        by_size(2_000, [160, 200, 250, 315 | M, 400], [95, 118, 150, 190, 236, 300 | M, 375]),
        by_size(3_000, [190, 236, 300, 375, 475], [112, 140, 180, 224, 280, 355, 450]),
        by_size(4_000, [212, 265, 335, 425, 530], [125, 160, 200, 250, 315, 400, 500]),
        by_size(6_000, [250, 315, 400, 500, 630], [150, 190, 236, 300, 375, 475, 600]),
        by_size(8_000, [280, 355, 450, 560, 710], [170, 212, 265, 335, 425, 530, 670]),
    ] },
    Step { to_um: 300_000, rows: &[
        by_size(3_000, [212, 265 | M, 335 | M, 425, 530 | M], [125 | M, 160 | M, 200 | M, 250 | M, 315 | M, 400, 500 | M]),
        by_size(4_000, [236, 300 | M, 375 | M, 475, 600 | M], [140, 180 | M, 224 | M, 280 | M, 355 | M, 450 | M, 560 | M]),
        by_size(6_000, [265, 335, 425, 530, 670], [160, 200, 250, 315, 400, 500, 630]),
        by_size(8_000, [300, 375, 475, 600, 750], [180, 224, 280, 355, 450, 560, 710]),
    ] },
];
