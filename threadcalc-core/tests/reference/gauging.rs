//! Gauges, what follows from them, and wires.

use super::table::{Failure, Got, Table};
use super::{number, optional_number, thread, unit};
use threadcalc_core::{
    Gauge, GaugeKind, GaugeReading, GaugeResult, best_wire_mm, gauges, next_move, not_go_rule, over_wires, re_entry_r,
    trimmed_depth_mm,
};

#[test]
fn names_the_gauges() {
    Table::open("gauges").check(|row| {
        let thread = thread(row)?;
        let set = gauges(&thread)?;
        let of = |kind: GaugeKind| set.iter().find(|gauge| gauge.kind == kind);
        let pitch = |kind| of(kind).and_then(|gauge: &Gauge| gauge.pitch_diameter_mm);
        let plain = |kind| of(kind).and_then(|gauge: &Gauge| gauge.diameter_mm);
        let names: Vec<_> = set.iter().map(|gauge| gauge.kind.name()).collect();
        let turns = match not_go_rule(&thread) {
            Ok(rule) => rule.most_turns.to_string(),
            Err(error) => error.code().name().into(),
        };
        Ok(vec![
            ("gauges", Got::Text(names.join(" "))),
            ("go_pitch_mm", Got::Exact(pitch(GaugeKind::ThreadPlugGo))),
            ("not_go_pitch_mm", Got::Exact(pitch(GaugeKind::ThreadPlugNotGo))),
            ("plain_go_mm", Got::Exact(plain(GaugeKind::PlainPlugGo))),
            ("plain_not_go_mm", Got::Exact(plain(GaugeKind::PlainPlugNotGo))),
            ("most_turns", Got::Text(turns)),
            ("class_assumed", Got::Text(if set.class_assumed { "yes" } else { "no" }.into())),
            ("hand", Got::Text(set.hand.to_string())),
        ])
    });
}

#[test]
fn gives_the_next_move() {
    Table::open("next_move").check(|row| {
        let reading = GaugeReading::from_name(row.cell("result").as_bytes()).unwrap();
        let result = GaugeResult::new(reading, optional_number(row, "turns")?)?;
        let next = next_move(&thread(row)?, optional_number(row, "required_turns")?, result)?;
        let moves: Vec<_> = next.moves().map(|next| next.name()).collect();
        let deeper = next.deeper_mm.map(|length| length.to_string());
        Ok(vec![
            ("verdict", Got::Text(next.verdict.to_string())),
            ("moves", Got::Text(moves.join(" "))),
            ("deeper_mm", Got::TextOrNone(deeper.unwrap_or_default())),
        ])
    });
}

#[test]
fn trims_taper_depths() {
    Table::open("trimmed_depth").check(|row| {
        let depth = trimmed_depth_mm(&thread(row)?, number(row, "depth_mm")?, number(row, "stand_off_turns")?)?;
        Ok(vec![("new_depth_mm", Got::Exact(Some(depth)))])
    });
}

#[test]
fn moves_r_by_whole_pitches() {
    Table::open("re_entry").check(|row| {
        let again = re_entry_r(number(row, "r_mm")?, number(row, "pitch_mm")?, number(row, "wanted_mm")?)?;
        Ok(vec![("new_r_mm", Got::Exact(Some(again.r_mm))), ("pitches", Got::Text(again.pitches.to_string()))])
    });
}

#[test]
fn measures_over_wires() {
    Table::open("over_wires").check(|row| {
        let (thread, unit) = (thread(row)?, unit(row)?.in_mm());
        let in_mm = |column| Ok::<_, Failure>(number(row, column)?.times(unit)?);
        let lead_angle = row.cell("lead_angle") == "yes";
        let over = over_wires(&thread, in_mm("wire")?, in_mm("pitch_diameter")?, lead_angle)?;
        Ok(vec![
            ("over_wires", Got::Double(over / unit.to_f64())),
            ("best_wire", Got::Double(best_wire_mm(&thread)? / unit.to_f64())),
        ])
    });
}
