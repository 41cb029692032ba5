//! Depths back from a drilled hole, its bottom and its mouth, and depths as a program says them.

use super::table::{Failure, Got, Row, Table};
use super::{decimals, number, optional_number, thread, unit};
use threadcalc_core::{
    BlindHole, Code, DepthRounding, DrilledTo, Error, Field, Length, RunOut, TapSetOn, ThroughHoleRequest, bottoming,
    chamfers_for_full_thread, countersink, full_thread_that_fits, program_depth, program_depth_of_derived, run_out_mm,
    through_hole, usual_countersink,
};

/// A choice that has to be made.
fn choice<T>(row: Row<'_>, column: &str, read: impl Fn(&[u8]) -> Option<T>, field: Field) -> Result<T, Failure> {
    let name = row.required(column)?;
    read(name.as_bytes()).ok_or(Failure::Core(Error::new(Code::UnknownValue, field)))
}

fn set_on(row: Row<'_>) -> Result<TapSetOn, Failure> {
    let is_left_out = row.cell("tap_set_on").is_empty();
    if is_left_out { Ok(TapSetOn::Front) } else { choice(row, "tap_set_on", TapSetOn::from_name, Field::TapSetOn) }
}

fn blind_hole(row: Row<'_>, tap_set_on: TapSetOn) -> Result<BlindHole, Failure> {
    Ok(BlindHole {
        drill_depth_mm: number(row, "drill_depth_mm")?,
        drill_depth_to: choice(row, "drill_depth_to", DrilledTo::from_name, Field::DrilledTo)?,
        drill_mm: number(row, "drill_mm")?,
        point_angle_deg: optional_number(row, "point_angle_deg")?,
        bottom_clearance_mm: number(row, "bottom_clearance_mm")?,
        tap_centre_mm: optional_number(row, "tap_centre_mm")?.unwrap_or(Length::ZERO),
        tap_set_on,
    })
}

fn joined<T: ToString>(items: impl IntoIterator<Item = T>) -> Got {
    let texts: Vec<_> = items.into_iter().map(|item| item.to_string()).collect();
    Got::TextOrNone(texts.join(" "))
}

#[test]
fn finds_the_full_thread_that_fits() {
    Table::open("full_thread_that_fits").check(|row| {
        let (hole, chamfer) = (blind_hole(row, set_on(row)?)?, number(row, "chamfer_threads")?);
        let found = full_thread_that_fits(&thread(row)?, &hole, chamfer)?;
        Ok(vec![
            ("full_thread_mm", Got::Exact(Some(found.full_thread_mm))),
            ("tap_mm", Got::Exact(Some(found.tap_mm))),
            ("program_tap_mm", Got::Exact(Some(found.program_tap_mm))),
            ("full_diameter_mm", Got::Exact(Some(found.full_diameter_mm))),
            ("drill_point_mm", Got::Double(found.drill_point_mm.unwrap_or(f64::NAN))),
        ])
    });
}

#[test]
fn finds_the_chamfers_for_a_full_thread() {
    Table::open("chamfers_for_full_thread").check(|row| {
        let hole = blind_hole(row, TapSetOn::Front)?;
        let found = chamfers_for_full_thread(&thread(row)?, &hole, number(row, "wanted_mm")?)?;
        let left = |length: Option<Length>| length.map_or(String::from("none"), |length| length.to_string());
        for reading in found {
            assert_eq!(reading.chamfer_threads, reading.form.threads().1, "the longest of its form");
        }
        Ok(vec![
            ("forms", joined(found.iter().filter(|reading| reading.gives_wanted).map(|reading| reading.form))),
            ("full_threads", joined(found.iter().map(|reading| left(reading.full_thread_mm)))),
        ])
    });
}

#[test]
fn reads_the_bottom_of_a_hole() {
    Table::open("bottoming").check(|row| {
        let (tap, point, drill) =
            (number(row, "tap_end_mm")?, number(row, "drill_point_mm")?, number(row, "drill_mm")?);
        let found = bottoming(&thread(row)?, tap, point, drill, optional_number(row, "point_angle_deg")?)?;
        Ok(vec![
            ("angles_deg", joined(found.readings().map(|reading| reading.point_angle_deg))),
            ("full_diameters_mm", joined(found.readings().map(|reading| reading.full_diameter_mm))),
            ("rooms_mm", joined(found.readings().map(|reading| reading.room_mm))),
            ("verdicts", joined(found.readings().map(|reading| reading.verdict))),
            ("worst", Got::Text(found.worst().to_string())),
            ("is_certain", Got::Text(if found.is_certain() { "yes" } else { "no" }.into())),
        ])
    });
}

#[test]
fn gives_run_outs() {
    Table::open("run_out").check(|row| {
        let run_out = choice(row, "run_out", RunOut::from_name, Field::RunOut)?;
        Ok(vec![("run_out_mm", Got::Exact(Some(run_out_mm(&thread(row)?, run_out)?)))])
    });
}

#[test]
fn gives_countersinks() {
    Table::open("countersink").check(|row| {
        let (thread, hole) = (thread(row)?, optional_number(row, "hole_mm")?);
        let found = countersink(&thread, number(row, "countersink_mm")?, number(row, "angle_deg")?, hole)?;
        let usual = match usual_countersink(&thread) {
            Ok(usual) => format!("{} to {} at {}", usual.least_mm, usual.most_mm, usual.angle_deg),
            Err(error) => error.code().name().into(),
        };
        Ok(vec![
            ("tip_mm", Got::Double(found.tip_mm)),
            ("depth_at_major_mm", Got::Double(found.depth_at_major_mm)),
            ("full_thread_lost_mm", Got::Double(found.full_thread_lost_mm)),
            ("usual", Got::Text(usual)),
        ])
    });
}

#[test]
fn gives_depths_of_programs() {
    Table::open("program_depth").check(|row| {
        let rounding = choice(row, "rounding", DepthRounding::from_name, Field::DepthRounding)?;
        let (unit, decimals) = (unit(row)?, decimals(row)?);
        let found = if row.cell("what") == "derived" {
            program_depth_of_derived(row.cell("depth_mm").parse().unwrap(), unit, decimals, rounding)?
        } else {
            program_depth(number(row, "depth_mm")?, unit, decimals, rounding)?
        };
        Ok(vec![
            ("text", Got::Text(found.text.to_string())),
            ("value", Got::Exact(Some(found.value))),
            ("back_mm", Got::Exact(Some(found.depth_mm))),
        ])
    });
}

#[test]
fn gives_what_comes_out_below() {
    Table::open("through_hole").check(|row| {
        let request = ThroughHoleRequest {
            part_thickness_mm: number(row, "part_thickness_mm")?,
            chamfer_threads: number(row, "chamfer_threads")?,
            over_travel_turns: optional_number(row, "over_travel_turns")?.unwrap_or(Length::ZERO),
            drill_mm: number(row, "drill_mm")?,
            point_angle_deg: number(row, "point_angle_deg")?,
            drill_clearance_mm: number(row, "drill_clearance_mm")?,
            tap_centre_mm: optional_number(row, "tap_centre_mm")?.unwrap_or(Length::ZERO),
            tap_set_on: set_on(row)?,
        };
        let found = through_hole(&thread(row)?, &request)?;
        Ok(vec![
            ("program_tap_mm", Got::Exact(Some(found.program_tap_mm))),
            ("tap_mm", Got::Exact(Some(found.tap_mm))),
            ("tap_below_mm", Got::Exact(Some(found.tap_below_mm))),
            ("full_diameter_mm", Got::Exact(Some(found.full_diameter_mm))),
            ("drill_point_mm", Got::Double(found.drill_point_mm)),
            ("drill_below_mm", Got::Double(found.drill_below_mm)),
        ])
    });
}
