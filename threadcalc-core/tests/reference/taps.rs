//! Chamfers, classes and limits of taps, what shanks say, and what is made of it.

use super::table::{Failure, Got, Row, Table};
use super::{job_with, number, optional_number, thread};
use threadcalc_core::{
    ChamferForm, Code, Error, Field, FindingId, Hole, IsoTapClass, Length, LimitLetter, TapJob, TapKind, TapLimit,
    chamfers_that_fit, h_limit_for_plating, iso_tap_class, judge_tap, read_shank_mark, usual_tap_limit,
    usual_tap_limit_for_plating,
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
fn knows_the_kinds_of_tap() {
    Table::open("tap_kind").check(|row| {
        let kind = known(TapKind::from_name(row.cell("kind").as_bytes()), Field::TapKind)?;
        let hole = hole(row)?.expect("a hole");
        let advice = kind.advice(hole);
        assert!(!advice.reason.is_empty());
        Ok(vec![
            ("tap", Got::Text(kind.tap().name().into())),
            ("torque_factor", Got::Double(kind.torque_factor().unwrap_or(f64::NAN))),
            ("suits", Got::Text(advice.suits.name().into())),
        ])
    });
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
        let (hole, room) = (hole(row)?.unwrap(), number(row, "room_threads")?);
        let forms: Vec<_> = chamfers_that_fit(hole, room).collect();
        assert!(ChamferForm::ALL.iter().all(|form| form.fits(hole, room) == forms.contains(form)));
        let names: Vec<_> = forms.into_iter().map(ChamferForm::name).collect();
        Ok(vec![("forms", Got::TextOrNone(names.join(" ")))])
    });
}

#[test]
fn gives_the_tap_class() {
    Table::open("tap_class").check(|row| {
        let (thread, plating) = (thread(row)?, number(row, "plating_um")?);
        let tap = iso_tap_class(&thread, plating)?;
        if plating == Length::ZERO {
            assert_eq!(tap.class, thread.tolerance_class().and_then(|class| IsoTapClass::of(class.as_str())));
        }
        Ok(vec![
            ("tap_class", Got::Text(tap.class.map_or("none", |class| class.name()).into())),
            ("closing_mm", Got::Exact(Some(tap.closing_mm))),
        ])
    });
}

#[test]
fn gives_the_pitch_diameters_of_tap_classes() {
    Table::open("tap_class_size").check(|row| {
        let class = known(IsoTapClass::from_name(row.cell("tap_class").as_bytes()), Field::IsoTapClass)?;
        let (smallest, largest) = class.pitch_diameter_mm(&thread(row)?)?;
        Ok(vec![("smallest_mm", Got::Double(smallest.to_f64())), ("largest_mm", Got::Double(largest.to_f64()))])
    });
}

#[test]
fn gives_the_limits_of_taps() {
    Table::open("tap_limit").check(|row| {
        let letter = known(LimitLetter::from_name(row.cell("letter").as_bytes()), Field::TapLimit)?;
        // What is no u8 is out of range as well.
        let number = u8::try_from(row.cell("number").parse::<i64>().unwrap()).unwrap_or(u8::MAX);
        let (limit, thread) = (TapLimit::new(letter, number)?, thread(row)?);
        assert_eq!(limit.to_string(), format!("{}{}", row.cell("letter"), row.cell("number")));
        let (smallest, largest) = limit.above_basic_mm(&thread)?;
        let or_none = |length: Option<Length>| length.map_or("none".into(), |length| length.to_string());
        let (smallest_pitch, largest_pitch) = match limit.pitch_diameter_mm(&thread) {
            Ok((smallest, largest)) => (or_none(smallest), largest.to_string()),
            Err(error) => (error.code().name().into(), error.code().name().into()),
        };
        Ok(vec![
            ("smallest_mm", Got::Text(or_none(smallest))),
            ("largest_mm", Got::Exact(Some(largest))),
            ("smallest_pitch_mm", Got::Text(smallest_pitch)),
            ("largest_pitch_mm", Got::Text(largest_pitch)),
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
fn gives_the_usual_limit_for_a_class() {
    Table::open("usual_tap_limit").check(|row| {
        let limit = usual_tap_limit(&thread(row)?)?;
        // Whatever is recommended has to cut within the class.
        let (smallest, largest) = limit.pitch_diameter_mm(&thread(row)?)?;
        let (low, high) = thread(row)?.limits()?.pitch_diameter_mm;
        let (low, high) = (low.unwrap(), high.unwrap());
        assert!(largest < high && smallest.is_none_or(|smallest| low <= smallest));
        if limit.letter() == LimitLetter::D {
            // Half of the tolerance or more is left for what the tap cuts larger than it is, and no waste of it.
            let taken = largest.minus(low)?.over(high.minus(low)?)?;
            assert!(taken <= Length::new(1, 2)? && taken >= Length::new(3, 8)?, "{limit}: {taken}");
        }
        Ok(vec![("limit", Got::Text(limit.to_string()))])
    });
}

#[test]
fn raises_the_usual_limit_for_a_plating() {
    Table::open("usual_tap_limit_for_plating").check(|row| {
        let (thread, plating) = (thread(row)?, number(row, "plating_um")?);
        let limit = usual_tap_limit_for_plating(&thread, plating)?;
        // Plated, the thread of the largest tap lies within the class, and that of the smallest is no smaller than basic.
        let closing = plating.times(Length::new(4, 1000)?)?;
        let (smallest, largest) = limit.pitch_diameter_mm(&thread)?;
        let (low, high) = thread.limits()?.pitch_diameter_mm;
        assert!(largest.minus(closing)? < high.unwrap());
        assert!(smallest.is_none_or(|smallest| low.unwrap() <= smallest.minus(closing).unwrap()));
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
