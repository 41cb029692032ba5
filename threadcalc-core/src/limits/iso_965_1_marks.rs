//! The tables of ISO 965-1 against its formulas: what every cell's mark rests on.

use std::format;
use std::string::String;
use std::vec::Vec;

use super::Confidence;
use super::iso_965_1::depth_um;
use super::iso_965_1_formula as formula;
use super::iso_965_1_table::{self as table, BySize, MINOR_DEPTH_E15, PITCH_DEPTH_E15};
use crate::length::Length;

/// Cells off the formula that a document prints: quantity, end of the diameter step in µm (0: none),
/// pitch in µm, grade; and where.
const PRINTED: [(&str, i64, u16, u8, &str); 15] = [
    ("T_D1", 0, 500, 6, "M3 6H minor diameter 2.459 to 2.599, ISO 965-2"),
    ("T_D1", 0, 1_000, 6, "M10x1 6H minor diameter 8.917 to 9.153, ASME B1.13M"),
    ("T_D1", 0, 2_500, 6, "M20 6AZ minor diameter +350 to +800 µm, ISO 965-5"),
    ("T_d", 0, 4_000, 6, "M36 6az major diameter -380 to -855 µm, ISO 965-4"),
    ("T_D2", 2_800, 450, 6, "M2.5 6H pitch diameter 2.208 to 2.303, ISO 965-2"),
    ("T_D2", 5_600, 500, 6, "M3 6H pitch diameter 2.675 to 2.775, ISO 965-2"),
    ("T_D2", 5_600, 750, 6, "M4.5 6H pitch diameter 4.013 to 4.131, ISO 965-2"),
    ("T_D2", 11_200, 1_500, 6, "M10 6H pitch diameter 9.026 to 9.206, ISO 965-2"),
    ("T_D2", 22_400, 1_250, 6, "M12x1.25 6H pitch diameter 11.188 to 11.368, ASME B1.13M"),
    ("T_D2", 22_400, 1_500, 6, "M12x1.5 6H pitch diameter 11.026 to 11.216, ASME B1.13M"),
    ("T_D2", 45_000, 4_500, 6, "M42 6AZ pitch diameter +390 to +705 µm, ISO 965-5"),
    ("T_d2", 5_600, 500, 4, "M3 4g6g pitch diameter 2.607 to 2.655, ASME B1.13M"),
    ("T_d2", 5_600, 500, 6, "M3 6g pitch diameter 2.580 to 2.655, ISO 965-2"),
    ("T_d2", 90_000, 5_000, 6, "M48 6az pitch diameter -400 to -650 µm, ISO 965-4"),
    ("EI(G), es(g)", 0, 750, 0, "M6x0.75 6g major diameter 5.838 to 5.978, ASME B1.13M; 22 in the standard's table 1"),
];

/// One cell with what is known of it.
struct Known {
    quantity: &'static str,
    step_um: i64,
    pitch_um: u16,
    grade: u8,
    packed: u16,
    formula: i64,
}

impl Known {
    fn fault(&self) -> Option<String> {
        let (um, confidence) = table::cell(self.packed)?;
        let by_formula = i64::from(um) == self.formula;
        let printed = PRINTED.iter().any(|(quantity, step, pitch, grade, _)| {
            (*quantity, *step, *pitch, *grade) == (self.quantity, self.step_um, self.pitch_um, self.grade)
        });
        // A cell is a number of the R40 series near its formula, whatever else confirms it.
        let near = (i64::from(um) - self.formula).abs() * 8 <= self.formula;
        let marked = confidence == Confidence::Confirmed;
        (marked != (by_formula || printed) || !near || (by_formula && printed)).then(|| {
            let Self { quantity, step_um, pitch_um, grade, formula, .. } = self;
            format!("{quantity} to {step_um} P {pitch_um} grade {grade}: {um} {confidence}, formula {formula}")
        })
    }
}

fn by_pitch() -> Vec<Known> {
    let mut cells = Vec::new();
    for row in &table::PITCHES {
        let pitch_um = row.pitch_um;
        let pitch_mm = f64::from(pitch_um) / 1000.0;
        let mut push = |quantity, grade, packed, formula| {
            cells.push(Known { quantity, step_um: 0, pitch_um, grade, packed, formula });
        };
        for (column, name) in ["EI(G), es(g)", "es(f)", "es(e)"].into_iter().enumerate() {
            push(name, 0, row.deviations[column], formula::deviation(column, pitch_mm));
        }
        for (grade, packed) in (4..).zip(row.minor) {
            push("T_D1", grade, packed, formula::minor(grade, pitch_mm));
        }
        for (grade, packed) in [4, 6, 8].into_iter().zip(row.major) {
            push("T_d", grade, packed, formula::major(grade, pitch_mm));
        }
    }
    cells
}

fn of_size(row: &BySize, step_um: i64) -> impl Iterator<Item = Known> {
    let pitch_um = row.pitch_um;
    let formula = move |inside, grade| formula::pitch_diameter(inside, grade, f64::from(pitch_um) / 1000.0, step_um);
    let of = move |quantity, inside| {
        move |(grade, packed)| Known { quantity, step_um, pitch_um, grade, packed, formula: formula(inside, grade) }
    };
    (4..).zip(row.internal).map(of("T_D2", true)).chain((3..).zip(row.external).map(of("T_d2", false)))
}

fn all() -> Vec<Known> {
    let by_size = table::STEPS.iter().flat_map(|step| step.rows.iter().flat_map(|row| of_size(row, step.to_um)));
    by_pitch().into_iter().chain(by_size).collect()
}

#[test]
fn every_mark_is_what_the_formula_and_the_documents_say() {
    let cells = all();
    let faults: Vec<_> = cells.iter().filter_map(Known::fault).collect();
    assert!(faults.is_empty(), "{}", faults.join("\n"));
    let given = cells.iter().filter_map(|cell| table::cell(cell.packed));
    let (sure, unsure): (Vec<_>, Vec<_>) = given.partition(|(_, confidence)| *confidence == Confidence::Confirmed);
    assert_eq!((sure.len(), unsure.len()), (658, 80));
    // Planted: a wrong value and a wrong mark are noticed in every cell.
    for cell in cells.iter().filter(|cell| cell.packed != 0) {
        for packed in [cell.packed ^ table::M, (cell.packed & !table::M) * 2] {
            assert!(Known { packed, ..*cell }.fault().is_some(), "{} {}", cell.quantity, cell.pitch_um);
        }
    }
}

#[test]
fn grades_grow_along_every_row() {
    let value = |packed: &u16| table::cell(*packed).map(|(um, _)| um);
    let grows = |row: &[u16]| row.iter().filter_map(value).is_sorted_by(|a, b| a < b);
    for row in &table::PITCHES {
        assert!(grows(&row.deviations) && grows(&row.minor) && grows(&row.major), "{}", row.pitch_um);
    }
    for row in table::STEPS.iter().flat_map(|step| step.rows) {
        assert!(grows(&row.internal) && grows(&row.external), "{}", row.pitch_um);
    }
    assert!(table::PITCHES.is_sorted_by_key(|row| row.pitch_um) && table::STEPS.is_sorted_by_key(|step| step.to_um));
}

#[test]
fn depths_of_the_table_are_those_of_any_pitch() {
    for row in &table::PITCHES {
        let pitch = Length::new(i64::from(row.pitch_um), 1000).unwrap();
        assert_eq!(depth_um(pitch, PITCH_DEPTH_E15), Ok(i64::from(row.pitch_depth_um)));
        assert_eq!(depth_um(pitch, MINOR_DEPTH_E15), Ok(i64::from(row.minor_depth_um)));
    }
}

#[test]
fn r40_is_the_series_of_iso_3() {
    let printed = [(10.0, 10), (21.2, 21), (21.9, 22), (26.5, 26), (42.5, 42), (47.5, 48), (97.6, 100), (103.3, 106)];
    for (um, number) in printed {
        assert_eq!(formula::r40(um), number, "{um}");
    }
    assert_eq!([999.0, 1_289.9, 973.0].map(formula::r40), [1_000, 1_320, 950]);
}
