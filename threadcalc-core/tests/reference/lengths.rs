//! Lengths of engagement: groups of metric threads, recommended classes, limits of Unified threads at a length.

use crate::table::{Failure, Got, Row, Table};
use crate::{number, six_limits, thread};
use threadcalc_core::{EngagementGroup, FitQuality, Side, engagement_group};

fn choice<T>(row: Row<'_>, column: &str, of: fn(&[u8]) -> Option<T>) -> Result<T, Failure> {
    of(row.required(column)?.as_bytes()).ok_or(Failure::NoChoice)
}

#[test]
fn groups_lengths_of_engagement() {
    Table::open("engagement_group").check(|row| {
        let found = engagement_group(&thread(row)?, number(row, "length_mm")?)?;
        Ok(vec![
            ("group", Got::Text(found.group.to_string())),
            ("normal_over_mm", Got::Exact(Some(found.normal_over_mm))),
            ("normal_to_mm", Got::Exact(Some(found.normal_to_mm))),
            ("confidence", Got::Text(found.confidence.to_string())),
        ])
    });
}

#[test]
fn recommends_classes() {
    Table::open("recommended_class").check(|row| {
        let group = choice(row, "group", EngagementGroup::from_name)?;
        let (side, quality) = (choice(row, "side", Side::from_name)?, choice(row, "quality", FitQuality::from_name)?);
        let class = group.recommended_class(side, quality);
        // A class that is recommended is one that limits are asked for by.
        assert!(class.is_none_or(|class| threadcalc_core::Thread::read(format!("M8-{class}").as_bytes()).is_ok()));
        Ok(vec![("class", Got::Text(class.unwrap_or("none").into()))])
    });
}

#[test]
fn gives_limits_at_a_length() {
    Table::open("limits_at").check(|row| {
        let limits = thread(row)?.limits_at(number(row, "length_mm")?)?;
        let mut results = six_limits(row, &limits)?;
        results.push(("confidence", Got::Text(limits.confidence.to_string())));
        Ok(results)
    });
}
