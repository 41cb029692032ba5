//! Pipe threads: dimensions, limits, drills and the depths of tapers.

use crate::table::{Got, Results, Row, Table};
use crate::texts::ids;
use crate::{Failure, basis, in_unit, job_with, number, optional_number, six_limits, tap, thread};
use threadcalc_core::{Length, Side, TapDrillRequest, TaperDepthRequest, Thread, tap_drill, taper_depths};

fn sided(row: Row<'_>) -> Result<Thread, Failure> {
    let thread = thread(row)?;
    match row.cell("side") {
        "" => Ok(thread),
        name => Ok(thread.with_side(Side::from_name(name.as_bytes()).expect("a side"))?),
    }
}

#[test]
fn gives_pipe_dimensions() {
    Table::open("pipe").check(|row| {
        let pipe = thread(row)?.pipe()?;
        let exact = |length| Ok::<_, Failure>(Got::Exact(in_unit(row, length)?));
        let printed = |length| Ok::<_, Failure>(Got::Double(in_unit(row, length)?.map_or(f64::NAN, Length::to_f64)));
        Ok(vec![
            ("pipe_diameter", exact(pipe.pipe_diameter_mm)?),
            ("pitch_diameter_small_end", printed(pipe.pitch_diameter_small_end_mm)?),
            ("pitch_diameter_gauge_plane", printed(pipe.pitch_diameter_gauge_plane_mm)?),
            ("hand_tight_length", exact(pipe.hand_tight_length_mm)?),
            ("effective_length", printed(pipe.effective_length_mm)?),
            ("pitch_diameter_effective", printed(pipe.pitch_diameter_effective_mm)?),
            ("minor_diameter_small_end", printed(pipe.minor_diameter_small_end_mm)?),
            ("thread_height", printed(pipe.thread_height_mm)?),
            ("gauge_length", exact(pipe.gauge_length_mm)?),
            ("useful_length", exact(pipe.useful_length_mm)?),
            ("gauge_tolerance_turns", Got::Exact(pipe.gauge_tolerance_turns)),
        ])
    });
}

/// The limits of the side that the caller says.
pub fn sided_limits(row: Row<'_>) -> Result<Results, Failure> {
    six_limits(row, &sided(row)?.limits()?)
}

#[test]
fn gives_pipe_limits() {
    Table::open("pipe_limits").check(sided_limits);
}

#[test]
fn chooses_pipe_drills() {
    Table::open("pipe_drill").check(|row| {
        let request = TapDrillRequest {
            tap: tap(row)?,
            percent: optional_number(row, "percent")?,
            basis: basis(row)?,
            sets: job_with("drill_sets", row.cell("sets"))?.drill_sets,
            taper_reamer: row.cell("taper_reamer").parse().expect("true or false"),
        };
        let found = tap_drill(&thread(row)?, &request)?;
        Ok(vec![
            ("drill", Got::Text(found.chosen.drill.name().to_string())),
            ("within_limits", Got::Text(found.chosen.within_limits.to_string())),
            ("findings", ids(found.findings.iter())),
        ])
    });
}

#[test]
fn gives_taper_depths() {
    Table::open("taper_depth").check(|row| {
        let thread = thread(row)?;
        let request = TaperDepthRequest {
            projection_mm: optional_number(row, "projection_mm")?,
            drill_mm: number(row, "drill_mm")?,
            point_angle_deg: number(row, "point_angle_deg")?,
            bottom_clearance_mm: number(row, "bottom_clearance_mm")?,
        };
        let found = taper_depths(&thread, &request)?;
        let double = |length: Length| Got::Double(length.to_f64());
        let tolerance = found.projection_tolerance_mm.map_or(f64::NAN, Length::to_f64);
        Ok(vec![
            ("hand_tight_mm", double(found.hand_tight_mm)),
            ("used_projection_mm", double(found.projection_mm)),
            ("projection_tolerance_mm", Got::Double(tolerance)),
            ("tap_mm", double(found.tap_mm)),
            ("first_hole_mm", double(found.first_hole_mm)),
            ("full_diameter_mm", double(found.full_diameter_mm)),
            ("drill_point_mm", Got::Double(found.drill_point_mm)),
            ("tap_turns", double(found.tap_turns)),
            ("hand_tight_turns", double(found.hand_tight_turns)),
            ("diameter_per_turn_mm", double(found.diameter_per_turn_mm)),
            ("gauge_tolerance_turns", Got::Exact(Some(found.gauge_tolerance_turns))),
        ])
    });
}
