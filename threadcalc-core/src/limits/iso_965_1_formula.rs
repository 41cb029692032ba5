//! ISO 965-1:2013, the formulas behind the tables, in micrometres, rounded to the R40 series of ISO 3.
//!
//! P and d in mm, d the geometric mean of its diameter step:
//!
//! ```text
//! EI(G) = es(g) = 15 + 11 P     es(f) = 30 + 11 P     es(e) = 50 + 11 P
//! T_d(6)  = 180 P^(2/3) − 3.15 / √P
//! T_D1(6) = 433 P − 190 P^1.22 below 1 mm, 230 P^0.7 from 1 mm
//! T_d2(6) = 90 P^0.4 d^0.1
//! T_D2 of grades 4 to 8 = 0.85 1.06 1.32 1.7 2.12 T_d2(6)
//! other grades 3 4 5 7 8 9 = 0.5 0.63 0.8 1.25 1.6 2 times grade 6
//! ```
//!
//! No power of a pitch outside the tables is rational, so there is no tie to decide; `libm` has the
//! powers to the last bits, the same on every machine.

/// ISO 3, R40, in hundredths.
pub(super) const R40: [u16; 40] = [
    100, 106, 112, 118, 125, 132, 140, 150, 160, 170, 180, 190, 200, 212, 224, 236, 250, 265, 280, 300, 315, 335, 355,
    375, 400, 425, 450, 475, 500, 530, 560, 600, 630, 670, 710, 750, 800, 850, 900, 950,
];

/// The nearest number of the R40 series, to whole micrometres, from 10 to 10000 µm.
#[inline(never)]
pub(super) fn r40(um: f64) -> i64 {
    let mut decade = 0.1;
    while um >= 1000.0 * decade && decade < 10.0 {
        decade *= 10.0;
    }
    // The first number of the next decade closes the series.
    let series = R40.iter().copied().chain([1000]).map(|hundredths| f64::from(hundredths) * decade);
    let off = |number: f64| libm::fabs(number - um);
    let nearest = series.fold(0.0, |best, number| if off(number) < off(best) { number } else { best });
    libm::rint(nearest) as i64
}

/// The ratio of a grade to grade 6; of T_D2 to T_d2(6).
fn ratio(grade: u8) -> f64 {
    match grade {
        3 => 0.5,
        4 => 0.63,
        5 => 0.8,
        7 => 1.25,
        8 => 1.6,
        9 => 2.0,
        _ => 1.0,
    }
}

fn internal_ratio(grade: u8) -> f64 {
    match grade {
        4 => 0.85,
        5 => 1.06,
        7 => 1.7,
        8 => 2.12,
        _ => 1.32,
    }
}

/// Deviation of a column of the table: G and g, f, e.
pub(super) fn deviation(column: usize, pitch_mm: f64) -> i64 {
    let at_zero = match column {
        0 => 15.0,
        1 => 30.0,
        _ => 50.0,
    };
    r40(at_zero + 11.0 * pitch_mm)
}

/// T_D1.
pub(super) fn minor(grade: u8, pitch_mm: f64) -> i64 {
    let grade_6 = if pitch_mm < 1.0 {
        433.0 * pitch_mm - 190.0 * libm::pow(pitch_mm, 1.22)
    } else {
        230.0 * libm::pow(pitch_mm, 0.7)
    };
    r40(grade_6 * ratio(grade))
}

/// T_d.
pub(super) fn major(grade: u8, pitch_mm: f64) -> i64 {
    let grade_6 = 180.0 * libm::pow(pitch_mm, 2.0 / 3.0) - 3.15 / libm::sqrt(pitch_mm);
    r40(grade_6 * ratio(grade))
}

/// The ends of the diameter steps in micrometres; the last is that of the edition of 1998, whose formula
/// this is.
const STEP_ENDS_UM: [u32; 10] = [990, 1_400, 2_800, 5_600, 11_200, 22_400, 45_000, 90_000, 180_000, 355_000];

/// T_D2 and T_d2, for the diameter step of a thread.
pub(super) fn pitch_diameter(is_internal: bool, grade: u8, pitch_mm: f64, major_um: i64) -> i64 {
    let mut steps = STEP_ENDS_UM.iter().zip(STEP_ENDS_UM.iter().skip(1));
    let (over, end) = steps.rfind(|(over, _)| i64::from(**over) < major_um).unwrap_or((&990, &1_400));
    let mean_mm = libm::sqrt(f64::from(*over) * f64::from(*end)) / 1000.0;
    let grade_6 = 90.0 * libm::pow(pitch_mm, 0.4) * libm::pow(mean_mm, 0.1);
    r40(grade_6 * if is_internal { internal_ratio(grade) } else { ratio(grade) })
}
