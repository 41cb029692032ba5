//! Times, feeds and holders of tapping strokes.

use super::cutting::double;
use super::table::{Failure, Got, Table};
use super::{number, thread};
use threadcalc_core::{
    Code, Error, Field, Holder, TappingMotion, feed_fit, holder_clearance, holder_travel, pattern_time_s, read_number,
    speed_after_turns, tapping_time, turns_to_speed,
};

fn yes(is_so: bool) -> Got {
    Got::Text(if is_so { "yes" } else { "no" }.into())
}

#[test]
fn gives_times_of_strokes() {
    Table::open("motion").check(|row| {
        let (ramp, peck) = (row.cell("acceleration_rpm_s"), row.cell("peck_mm"));
        let found = tapping_time(&TappingMotion {
            lead_mm: number(row, "lead_mm")?,
            rpm: number(row, "rpm")?,
            travel_mm: number(row, "travel_mm")?,
            acceleration_rpm_s: (!ramp.is_empty()).then(|| ramp.parse().unwrap()),
            retract_factor: number(row, "retract_factor")?,
            dwell_s: double(row, "dwell_s")?,
            peck_mm: (!peck.is_empty()).then(|| number(row, "peck_mm")).transpose()?,
        })?;
        Ok(vec![
            ("reached_rpm", Got::Double(found.reached_rpm)),
            ("retract_rpm", Got::Double(found.retract_rpm)),
            ("reaches_speed", yes(found.reaches_speed)),
            ("turns", Got::Double(found.turns)),
            ("turns_to_speed", Got::Double(found.turns_to_speed)),
            ("distance_to_speed_mm", Got::Double(found.distance_to_speed_mm)),
            ("time_in_s", Got::Double(found.time_in_s)),
            ("time_out_s", Got::Double(found.time_out_s)),
            ("time_s", Got::Double(found.time_s)),
            ("strokes", Got::Text(found.strokes.to_string())),
        ])
    });
}

#[test]
fn gives_ramps() {
    Table::open("ramp").check(|row| {
        let acceleration = double(row, "acceleration_rpm_s")?;
        let value = match row.cell("what") {
            "turns" => turns_to_speed(number(row, "rpm")?, acceleration)?,
            "speed" => speed_after_turns(double(row, "turns")?, acceleration)?,
            other => panic!("{other}"),
        };
        Ok(vec![("value", Got::Double(value))])
    });
}

#[test]
fn checks_the_axis_feed() {
    Table::open("feed_fit").check(|row| {
        let (lead, rpm, factor) = (number(row, "lead_mm")?, number(row, "rpm")?, number(row, "retract_factor")?);
        let fit = feed_fit(lead, rpm, factor, number(row, "limit_mm_min")?)?;
        Ok(vec![
            ("feed_mm_min", Got::Exact(Some(fit.feed_mm_min))),
            ("retract_feed_mm_min", Got::Exact(Some(fit.retract_feed_mm_min))),
            ("is_within", yes(fit.is_within)),
            ("fastest_rpm", Got::Exact(Some(fit.fastest_rpm))),
        ])
    });
}

#[test]
fn gives_clearance_by_holder() {
    Table::open("holder_clearance").check(|row| {
        let unknown = Failure::Core(Error::new(Code::UnknownValue, Field::Key));
        let holder = Holder::from_name(row.cell("holder").as_bytes()).ok_or(unknown)?;
        let room = holder_clearance(&thread(row)?, holder)?;
        Ok(vec![
            ("least_mm", Got::Exact(Some(room.least_mm))),
            ("ample_mm", Got::Exact(Some(room.ample_mm))),
            ("least_turns", Got::Exact(Some(room.least_turns))),
            ("ample_turns", Got::Exact(Some(room.ample_turns))),
        ])
    });
}

#[test]
fn gives_the_travel_of_holders() {
    Table::open("holder_travel").check(|row| {
        let (lead, depth) = (number(row, "lead_mm")?, number(row, "depth_mm")?);
        let travel = holder_travel(lead, depth, number(row, "underfeed_percent")?, number(row, "over_travel_turns")?)?;
        let (extension, compression) = row.cell("room_mm").split_once('/').unwrap();
        let room = |text: &str| read_number(text.as_bytes());
        Ok(vec![
            ("extension_mm", Got::Exact(Some(travel.extension_mm))),
            ("compression_mm", Got::Exact(Some(travel.compression_mm))),
            ("fits", yes(travel.fits(room(extension)?, room(compression)?))),
        ])
    });
}

#[test]
fn gives_the_time_of_patterns() {
    Table::open("pattern_time").check(|row| {
        let (distance, feed) = (number(row, "rapid_distance_mm")?, number(row, "rapid_feed_mm_min")?);
        let holes = row.cell("holes").parse().unwrap();
        let time = pattern_time_s(holes, distance, feed, double(row, "seconds_per_hole")?)?;
        Ok(vec![("time_s", Got::Double(time))])
    });
}
