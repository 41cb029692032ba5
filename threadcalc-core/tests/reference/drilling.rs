//! Drills by name, lists of drills, what a drill probably cuts, and the hole of a form tap.

use threadcalc_core::{
    Code, Drill, Error, Field, Length, OwnDrills, Stock, TapDrillRequest, form_hole_mm, judge_drill,
    nearest_exact_speeds, probable_hole_mm, tap_drill,
};

use crate::table::{Failure, Got, Row, Table};
use crate::texts::ids;
use crate::{basis, decimals, in_unit, number, optional_number, tap, thread, unit};

fn drill(row: Row<'_>) -> Result<Drill, Failure> {
    Ok(Drill::read(&row.bytes("drill"))?)
}

fn speed(found: Option<i64>) -> Got {
    Got::Exact(found.map(Length::integer))
}

#[test]
fn reads_drills() {
    Table::open("read_drill").check(|row| {
        let drill = Drill::read(&row.bytes("name"))?;
        Ok(vec![
            ("drill", Got::Text(drill.name().to_string())),
            ("set", Got::TextOrNone(drill.set().map_or("", |set| set.name()).into())),
            ("diameter_mm", Got::Exact(Some(drill.diameter_mm()))),
        ])
    });
}

#[test]
fn finds_the_nearest_exact_speeds() {
    Table::open("nearest_exact_speeds").check(|row| {
        let step = optional_number(row, "step")?.unwrap_or(Length::ONE);
        let (lowest, highest) = (optional_number(row, "lowest")?, optional_number(row, "highest")?);
        let (lead, rpm) = (thread(row)?.lead_mm(), number(row, "rpm")?);
        let (below, above) = nearest_exact_speeds(lead, rpm, unit(row)?, decimals(row)?, step, lowest, highest)?;
        Ok(vec![("below", speed(below)), ("above", speed(above))])
    });
}

#[test]
fn chooses_from_a_list() {
    Table::open("own_drills").check(|row| {
        let mut own = OwnDrills::new();
        for (place, name) in row.required("drills")?.split(';').enumerate() {
            // A list takes names and drills alike.
            if place % 2 == 0 { own.read(name.as_bytes())? } else { own.add(Drill::read(name.as_bytes())?)? }
        }
        assert_eq!(own.iter().count(), row.cell("drills").split(';').count());
        if !row.cell("sets").is_empty() {
            // One place for both: the types of the Rust door hold either sets or a list.
            return Err(Error::new(Code::Contradiction, Field::DrillSets).into());
        }
        let stock = Stock::from(&own);
        let oversize = optional_number(row, "oversize_mm")?;
        let request = TapDrillRequest {
            tap: tap(row)?,
            percent: optional_number(row, "percent")?,
            basis: basis(row)?,
            sets: oversize.map_or(stock, |oversize| stock.with_oversize_mm(oversize)),
            taper_reamer: row.cell("taper_reamer") == "true",
        };
        let found = tap_drill(&thread(row)?, &request)?;
        let beside: Vec<_> = found.alternatives.iter().flatten().map(|other| other.drill.name().to_string()).collect();
        Ok(vec![
            ("drill", Got::Text(found.chosen.drill.name().to_string())),
            ("within_limits", Got::Text(found.chosen.within_limits.to_string())),
            ("alternatives", Got::TextOrNone(beside.join(";"))),
            ("findings", ids(found.findings.iter())),
        ])
    });
}

#[test]
fn judges_drills() {
    Table::open("judge_drill").check(|row| {
        let oversize = optional_number(row, "oversize_mm")?;
        let found = judge_drill(&thread(row)?, drill(row)?, tap(row)?, basis(row)?, oversize)?;
        let probable = found.probable;
        Ok(vec![
            ("percent", Got::Double(found.chosen.percent)),
            ("within_limits", Got::Text(found.chosen.within_limits.to_string())),
            ("left_to_limit_mm", Got::Exact(found.chosen.left_to_limit_mm)),
            ("probable_hole_mm", Got::Exact(probable.map(|hole| hole.hole_mm))),
            ("probable_percent", Got::Double(probable.map_or(f64::NAN, |hole| hole.percent))),
            ("probable_left_to_limit_mm", Got::Exact(probable.and_then(|hole| hole.left_to_limit_mm))),
            ("findings", ids(found.findings.iter())),
        ])
    });
}

#[test]
fn gives_probable_holes() {
    Table::open("probable_hole").check(|row| {
        let hole = probable_hole_mm(&drill(row)?, optional_number(row, "oversize_mm")?)?;
        Ok(vec![("hole", Got::Double(in_unit(row, Some(hole))?.map_or(f64::NAN, Length::to_f64)))])
    });
}

#[test]
fn gives_holes_for_form_taps() {
    Table::open("form_hole").check(|row| {
        let (least, most) = form_hole_mm(&thread(row)?)?;
        Ok(vec![("least_mm", Got::Exact(Some(least))), ("most_mm", Got::Exact(Some(most)))])
    });
}
