//! What programs say: the standard pitches of a lead.

use crate::table::{Got, Results, Row, Table};
use crate::{Failure, job_with, number, optional_number, unit, whole};
use threadcalc_core::nc::{FeedWords, Identification, LEAD_WITHIN, Match, identify, identify_feed, threads_of_pitch};
use threadcalc_core::{Length, threads_near_diameter, threads_near_pitch};

/// Decimals go to the operation as they are; only what is no u8 is for the job's reader to refuse.
fn decimals(row: Row<'_>, column: &str) -> Result<Option<u8>, Failure> {
    match row.cell(column) {
        "" => Ok(None),
        cell => cell.parse().map_or_else(|_| Ok(job_with("decimals", cell)?.decimals), |decimals| Ok(Some(decimals))),
    }
}

fn words(row: Row<'_>) -> Result<FeedWords, Failure> {
    Ok(FeedWords {
        feed: number(row, "feed")?,
        feed_decimals: decimals(row, "feed_decimals")?,
        most_feed_decimals: decimals(row, "most_feed_decimals")?,
        rpm: optional_number(row, "rpm")?,
        rpm_decimals: decimals(row, "rpm_decimals")?,
        most_rpm_decimals: decimals(row, "most_rpm_decimals")?,
        unit: unit(row)?,
        mode: job_with("mode", row.cell("mode"))?.mode.ok_or(Failure::ByType)?,
    })
}

fn fraction(value: Length) -> String {
    format!("{}/{}", value.numerator(), value.denominator())
}

fn found(row: Row<'_>) -> Result<Identification, Failure> {
    let within = optional_number(row, "within")?.unwrap_or(LEAD_WITHIN);
    let starts = whole(row, "starts").unwrap_or(1);
    Ok(match optional_number(row, "lead_mm")? {
        Some(lead) => identify(lead, within, starts)?,
        None => identify_feed(&words(row)?, within, starts)?,
    })
}

fn identified(row: Row<'_>) -> Result<Results, Failure> {
    let found = found(row)?;
    let each = |show: &dyn Fn(Match) -> String, between: &str| {
        Got::Text(found.matches().map(show).collect::<Vec<_>>().join(between))
    };
    let systems = |near: Match| near.systems.iter().map(|system| system.name()).collect::<Vec<_>>().join("+");
    let yes = |is: bool| String::from(if is { "yes" } else { "no" });
    let per_inch = |near: &Match| near.tpi.is_none_or(|per_inch| Length::INCH.over(per_inch) == Ok(near.pitch_mm));
    assert!(found.matches().all(|near| per_inch(&near)), "{}: threads per inch", row.cell("id"));
    assert_eq!(i64::from(found.starts()), whole(row, "starts").unwrap_or(1));
    Ok(vec![
        ("verdict", Got::Text(found.verdict().to_string())),
        ("matches", each(&|near| near.to_string(), "; ")),
        ("systems", each(&systems, "; ")),
        ("pitch_mm", Got::Exact(found.matches().next().map(|near| near.pitch_mm))),
        ("errors", each(&|near| fraction(near.lead_error), "; ")),
        ("is_within", each(&|near| yes(near.is_within), " ")),
        ("is_exact", each(&|near| yes(near.is_exact()), " ")),
        ("shortest_mm", Got::Exact(Some(found.shortest_lead_mm()))),
        ("longest_mm", Got::Exact(Some(found.longest_lead_mm()))),
        ("text", Got::Text(found.to_string())),
    ])
}

#[test]
fn identifies_leads() {
    Table::open("identify").check(identified);
}

#[test]
fn lists_threads_near_a_size() {
    Table::open("threads_near").check(|row| {
        let (value, within) = (number(row, "value_mm")?, number(row, "within_mm")?);
        let threads: Vec<_> = match row.cell("by") {
            "pitch" => threads_near_pitch(value, within)?.collect(),
            _ => threads_near_diameter(value, within)?.collect(),
        };
        let threads: Vec<_> = threads.iter().map(ToString::to_string).collect();
        Ok(vec![("threads", Got::TextOrNone(threads.join("; ")))])
    });
}

#[test]
fn lists_threads_of_a_pitch() {
    Table::open("threads_of_pitch").check(|row| {
        let (pitch, diameter) = (number(row, "pitch_mm")?, number(row, "diameter_mm")?);
        let threads = threads_of_pitch(pitch, diameter, whole(row, "starts").unwrap_or(1))?;
        let threads: Vec<_> = threads.map(|thread| thread.to_string()).collect();
        Ok(vec![("threads", Got::TextOrNone(threads.join("; ")))])
    });
}
