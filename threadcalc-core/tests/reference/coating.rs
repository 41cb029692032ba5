//! Coated threads: growth, limits before coating, and what an allowance has room for.

use crate::table::{Got, Table};
use crate::{number, six_limits, thread};

#[test]
fn gives_the_growth_by_a_coating() {
    Table::open("coating_growth").check(|row| {
        let growth = thread(row)?.coating_growth(number(row, "thickness_um")?)?;
        Ok(vec![
            ("crest_mm", Got::Exact(Some(growth.crest_mm))),
            ("pitch_diameter_mm", Got::Exact(Some(growth.pitch_diameter_mm))),
        ])
    });
}

#[test]
fn gives_the_limits_before_coating() {
    Table::open("before_coating").check(|row| {
        let thread = thread(row)?;
        let limits = thread.limits_before_coating(number(row, "thinnest_um")?, number(row, "thickest_um")?)?;
        six_limits(row, &limits)
    });
}

#[test]
fn gives_the_thickest_coating_of_an_allowance() {
    Table::open("thickest_coating").check(|row| {
        let thickest = thread(row)?.thickest_coating_um()?;
        Ok(vec![("thickest_um", Got::Exact(Some(thickest)))])
    });
}
