//! Chamfers, classes and limits of taps, what shanks say, and what is made of it.

use super::table::{Failure, Got, Row, Table};
use super::{job_with, number, optional_number, thread};
use threadcalc_core::{
    ChamferForm, Code, Error, Field, FindingId, Hole, Length, LimitLetter, TapJob, TapLimit, chamfers_that_fit,
    h_limit_for_plating, iso_tap_class, judge_tap, read_shank_mark,
};

fn known<T>(found: Option<T>, field: Field) -> Result<T, Failure> {
    found.ok_or(Failure::Core(Error::new(Code::UnknownValue, field)))
}

fn hole(row: Row<'_>) -> Result<Option<Hole>, Failure> {
    Ok(job_with("hole", row.cell("hole"))?.hole)
}

fn yes(is_so: bool) -> Got {
    Got::Text(if is_so { "yes" } else { "no" }.into())
}

fn or_none(value: Option<String>) -> Got {
    Got::TextOrNone(value.unwrap_or_default())
}

#[test]
fn knows_the_chamfers() {
    Table::open("chamfer").check(|row| {
        let form = known(ChamferForm::from_name(row.cell("form").as_bytes()), Field::TapMark)?;
        let (shortest, longest) = form.threads();
        Ok(vec![
            ("shortest", Got::Exact(Some(shortest))),
            ("longest", Got::Exact(Some(longest))),
            ("usual_hole", Got::Text(form.usual_hole().map_or("both", Hole::name).into())),
        ])
    });
}

#[test]
fn finds_the_chamfers_that_fit() {
    Table::open("chamfer_fit").check(|row| {
        let forms = chamfers_that_fit(hole(row)?.unwrap(), number(row, "room_threads")?);
        let names: Vec<_> = forms.map(ChamferForm::name).collect();
        Ok(vec![("forms", Got::TextOrNone(names.join(" ")))])
    });
}

#[test]
fn gives_the_tap_class() {
    Table::open("tap_class").check(|row| {
        let tap = iso_tap_class(&thread(row)?, number(row, "plating_um")?)?;
        Ok(vec![
            ("tap_class", Got::Text(tap.class.map_or("none", |class| class.name()).into())),
            ("closing_mm", Got::Exact(Some(tap.closing_mm))),
        ])
    });
}

#[test]
fn gives_the_limits_of_taps() {
    Table::open("tap_limit").check(|row| {
        let letter = known(LimitLetter::from_name(row.cell("letter").as_bytes()), Field::TapLimit)?;
        let limit = TapLimit::new(letter, row.cell("number").parse().unwrap())?;
        assert_eq!(limit.to_string(), format!("{}{}", row.cell("letter"), row.cell("number")));
        let (smallest, largest) = limit.above_basic_mm(&thread(row)?)?;
        Ok(vec![
            ("smallest_mm", Got::Text(smallest.map_or("none".into(), |length| length.to_string()))),
            ("largest_mm", Got::Exact(Some(largest))),
        ])
    });
}

#[test]
fn finds_the_limit_for_a_plating() {
    Table::open("h_limit_for_plating").check(|row| {
        let limit = h_limit_for_plating(&thread(row)?, number(row, "plating_um")?)?;
        Ok(vec![("limit", Got::Text(limit.to_string()))])
    });
}

#[test]
fn reads_shanks() {
    Table::open("shank_mark").check(|row| {
        let mark = read_shank_mark(&row.bytes("text"))?;
        Ok(vec![
            ("thread", or_none(mark.thread.map(|thread| thread.to_string()))),
            ("hand", Got::Text(mark.hand.to_string())),
            ("tolerance_class", or_none(mark.tolerance_class.map(|class| class.as_str().into()))),
            ("own_limits", yes(mark.own_limits)),
            ("ground", yes(mark.ground)),
            ("limit", or_none(mark.limit.map(|limit| limit.to_string()))),
            ("iso_class", or_none(mark.iso_class.map(|class| class.to_string()))),
            ("chamfer", or_none(mark.chamfer.map(|form| form.to_string()))),
            ("wire_insert", yes(mark.wire_insert)),
            ("not_read", or_none(mark.not_read.map(|(at, length)| format!("{at}:{length}")))),
        ])
    });
}

#[test]
fn judges_taps() {
    Table::open("judge_tap").check(|row| {
        let mark = read_shank_mark(&row.bytes("mark"))?;
        let job = TapJob {
            thread: thread(row)?,
            plating_um: number(row, "plating_um")?,
            hole: hole(row)?,
            room_threads: optional_number(row, "room_threads")?,
            wire_insert: row.cell("wire_insert") == "yes",
        };
        let findings = judge_tap(&mark, &job)?;
        // What has been read of the limits is not what this table is about.
        let shown = findings.iter().filter(|finding| finding.id() != FindingId::LimitsNotSourced);
        let shown: Vec<_> = shown.map(|finding| format!("{}:{}", finding.id(), finding.severity())).collect();
        Ok(vec![("findings", Got::TextOrNone(shown.join(" ")))])
    });
}

/// Where the core has the pitch diameter of 5H, the taps of ISO 2857 are those of two printed tables; where
/// it has not, it says so.
#[test]
fn pitch_diameters_of_taps_are_the_printed_ones() {
    use threadcalc_core::{IsoTapClass, Thread};
    // Class 2, from tap makers' tables, in µm.
    for (designation, smallest, largest) in [
        ("M3", 2_699, 2_715),
        ("M4", 3_574, 3_593),
        ("M5", 4_510, 4_530),
        ("M6", 5_385, 5_409),
        ("M8", 7_226, 7_251),
        ("M10", 9_068, 9_096),
        ("M12", 10_911, 10_943),
    ] {
        let thread = Thread::read(designation.as_bytes()).unwrap();
        let limits = thread.with_class(b"5H").unwrap().limits().map(|limits| limits.pitch_diameter_mm.1);
        match IsoTapClass::Class2.pitch_diameter_mm(&thread) {
            Ok(made) => {
                let off = |made: Length, um: i64| (made.to_f64() - um as f64 / 1000.0).abs();
                assert!(off(made.0, smallest) < 0.00051 && off(made.1, largest) < 0.00051, "{designation} {made:?}");
                assert!(matches!(limits, Ok(Some(_))));
            }
            Err(error) => {
                assert_eq!(error.code(), Code::NotSourced, "{designation}");
                assert!(!matches!(limits, Ok(Some(_))), "{designation}: the limit is there and was not used");
            }
        }
    }
}
