//! Profiles and limits of the threads that are neither M, UN nor pipe.

use crate::pipes::sided_limits;
use crate::table::{Got, Table};
use crate::{number, thread};
use threadcalc_core::Length;

#[test]
fn gives_the_trapezoidal_profile() {
    Table::open("profile_trapezoidal").check(|row| {
        let profile = thread(row)?.profile();
        Ok(vec![
            ("pitch_diameter_mm", Got::Double(profile.pitch_diameter_mm)),
            ("minor_mm", Got::Double(profile.minor_mm)),
            ("external_minor_mm", Got::Double(profile.external_minor_mm)),
        ])
    });
}

#[test]
fn gives_acme_limits() {
    Table::open("limits_acme").check(sided_limits);
}

#[test]
fn gives_trapezoidal_limits() {
    Table::open("limits_trapezoidal").check(sided_limits);
}

#[test]
fn gives_limits_of_holes_for_wire_inserts() {
    Table::open("limits_wire_insert").check(sided_limits);
}

#[test]
fn gives_limits_of_threads_with_a_larger_root() {
    Table::open("limits_j").check(sided_limits);
}

#[test]
fn gives_buttress_limits() {
    Table::open("limits_buttress").check(sided_limits);
}

#[test]
fn gives_ba_limits() {
    Table::open("limits_ba").check(sided_limits);
}

#[test]
fn refuses_limits_that_nobody_has_read() {
    Table::open("limits_not_read").check(sided_limits);
}

/// A ground tap that is made for a class cuts a hole of that class.
#[test]
fn printed_taps_for_wire_inserts_lie_within_their_holes() {
    // Half a unit of the last printed digit: 0.00005 in.
    let unread = Length::new(1, 20_000).unwrap();
    Table::open("rust/wire_insert_taps").check(|row| {
        let (low, high) = thread(row)?.limits()?.pitch_diameter_mm;
        let [low, high] = [low, high].map(|limit| limit.unwrap().over(Length::INCH).unwrap());
        let (least, most) = (number(row, "tap_least_in")?, number(row, "tap_most_in")?);
        assert!(low <= least.plus(unread).unwrap() && most <= high, "{}: {low} {least} {most} {high}", row.cell("id"));
        Ok(Vec::new())
    });
}
