//! Spindle speed, torque, power and gears.

use super::table::{Failure, Got, Row, Table};
use super::{number, thread};
use threadcalc_core::{
    FORMING_FACTOR, ForceByChipArea, ForceByPitch, Gear, Material, TAPER_FACTOR, TorquePoint, gear_fit, power_kw,
    read_number, spindle_speed, spindle_speed_feet, surface_speed_m_min, torque_by_chip_area, torque_by_pitch,
};

/// A number that an operation takes as a double; `NaN` is one.
pub fn double(row: Row<'_>, column: &str) -> Result<f64, Failure> {
    Ok(row.required(column)?.parse().unwrap())
}

#[test]
fn gives_spindle_and_surface_speeds() {
    Table::open("spindle_speed").check(|row| {
        let diameter = number(row, "diameter")?;
        let value = match (row.cell("what"), row.cell("unit")) {
            ("surface", "mm") => surface_speed_m_min(diameter, number(row, "rpm")?)?,
            ("rpm", "mm") => spindle_speed(diameter, number(row, "surface_speed")?)?,
            ("rpm", "inch") => spindle_speed_feet(diameter, number(row, "surface_speed")?)?,
            other => panic!("{other:?}"),
        };
        Ok(vec![("value", Got::Double(value))])
    });
}

/// A number, or `forming low`: which end of which range.
fn factor(row: Row<'_>) -> Result<f64, Failure> {
    let Some((kind, end)) = row.cell("factor").split_once(' ') else { return double(row, "factor") };
    let range = match kind {
        "forming" => FORMING_FACTOR,
        "taper" => TAPER_FACTOR,
        other => panic!("{other}"),
    };
    Ok(match end {
        "low" => range.low,
        "start" => range.start,
        "high" => range.high,
        other => panic!("{other}"),
    })
}

#[test]
fn gives_torque_bands() {
    Table::open("torque").check(|row| {
        let (thread, force, factor) = (thread(row)?, double(row, "force_n_mm2")?, factor(row)?);
        let band = match row.cell("formula") {
            "pitch" => torque_by_pitch(&thread, ForceByPitch::new(force)?, factor)?,
            "chip" => torque_by_chip_area(&thread, number(row, "drill_mm")?, ForceByChipArea::new(force)?, factor)?,
            other => panic!("{other}"),
        };
        Ok(vec![
            ("likely_nm", Got::Double(band.likely_nm)),
            ("low_nm", Got::Double(band.low_nm)),
            ("high_nm", Got::Double(band.high_nm)),
            ("worn_nm", Got::Double(band.worn_nm)),
        ])
    });
}

#[test]
fn gives_forces_to_start_from() {
    Table::open("starting_forces").check(|row| {
        let material = Material::from_name(row.cell("material").as_bytes()).ok_or(Failure::NoChoice)?;
        let by_chip_area = material.force_by_chip_area().map_or(f64::NAN, ForceByChipArea::n_mm2);
        Ok(vec![
            ("by_pitch_n_mm2", Got::Double(material.force_by_pitch().n_mm2())),
            ("by_chip_area_n_mm2", Got::Double(by_chip_area)),
            ("is_read", Got::Text(if material.is_read() { "yes" } else { "no" }.into())),
        ])
    });
}

#[test]
fn gives_strengths_of_the_part_to_start_from() {
    Table::open("starting_part_strength").check(|row| {
        let material = Material::from_name(row.cell("material").as_bytes()).ok_or(Failure::NoChoice)?;
        let strength = material.starting_strength();
        Ok(vec![("tensile_mpa", Got::Double(strength.tensile_mpa)), ("shear_mpa", Got::Double(strength.shear_mpa))])
    });
}

#[test]
fn gives_power() {
    Table::open("power").check(|row| {
        let power = power_kw(double(row, "torque_nm")?, number(row, "rpm")?)?;
        Ok(vec![("power_kw", Got::Double(power))])
    });
}

/// `20-500 20:120 500:120`: the range, then the points.
fn gear(text: &str) -> Result<Gear, Failure> {
    let mut words = text.split(' ');
    let (lowest, highest) = words.next().unwrap().rsplit_once('-').unwrap();
    let exact = |text: &str| read_number(text.as_bytes());
    let points: Result<Vec<_>, Failure> = words
        .map(|word| {
            let (rpm, torque_nm) = word.split_once(':').unwrap();
            Ok(TorquePoint { rpm: exact(rpm)?, torque_nm: torque_nm.parse().unwrap() })
        })
        .collect();
    Ok(Gear::new(exact(lowest)?, exact(highest)?, &points?)?)
}

#[test]
fn finds_the_gear() {
    Table::open("gear_fit").check(|row| {
        let gears: Result<Vec<_>, _> = row.cell("gears").split('|').filter(|text| !text.is_empty()).map(gear).collect();
        let (gears, torque, rpm) = (gears?, double(row, "torque_nm")?, number(row, "rpm")?);
        let fit = gear_fit(&gears, torque, rpm)?;
        // What one gear says of itself is what the choice among them says of it.
        assert_eq!(fit.torque_nm, fit.gear.and_then(|gear| gears[gear].torque_nm(rpm)));
        assert_eq!(fit.fastest_rpm, gears.iter().filter_map(|gear| gear.fastest_for(torque)).reduce(f64::max));
        // `none` stands for no value, so that it is compared and not left out.
        let or_none = |column: &'static str, value: Option<f64>| match (value, row.cell(column)) {
            (Some(value), want) if want != "none" => (column, Got::Double(value)),
            (value, _) => (column, Got::Text(value.map_or("none".into(), |value| value.to_string()))),
        };
        Ok(vec![
            ("gear", Got::Text(fit.gear.map_or("none".into(), |gear| gear.to_string()))),
            or_none("held_nm", fit.torque_nm),
            or_none("fastest_rpm", fit.fastest_rpm),
            ("is_enough", Got::Text(if fit.is_enough { "yes" } else { "no" }.into())),
        ])
    });
}
