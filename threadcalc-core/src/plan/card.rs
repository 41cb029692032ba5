//! The card of S and F pairs: people on shift change S alone.

use super::Job;
use crate::error::Error;
use crate::feed::{Feed, FeedMode, Unit, exact_speeds, feed, programmed_speed};
use crate::length::{Length, Ratio, Rounding};

/// A speed and the feed that belongs to it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct CardRow {
    /// Speed in rpm.
    pub rpm: Ratio,
    /// Its feed.
    pub feed: Feed,
    /// True if the word is exact.
    pub exact: bool,
    /// True for the speed of the plan.
    pub planned: bool,
}

/// How many speeds a card shows.
pub(super) const MOST_CARD_ROWS: usize = 6;

/// Half, three quarters and all of the speed, with the exact speeds nearest below and above.
pub(super) fn card(
    lead_mm: Length,
    rpm: Ratio,
    job: &Job,
    unit: Unit,
    decimals: u8,
) -> Result<[Option<CardRow>; MOST_CARD_ROWS], Error> {
    let whole = |speed: Option<Ratio>, rounding| {
        speed.and_then(|speed| speed.round_to(0, rounding).ok()).map(|decimal| decimal.units())
    };
    let lowest = whole(job.machine.lowest_rpm, Rounding::Up).unwrap_or(1).max(1);
    let highest = whole(job.machine.highest_rpm, Rounding::Down).unwrap_or(i64::MAX);
    let step = job.machine.speed_step.unwrap_or(Length::ONE);
    let reachable = |speed: &i64| Length::integer(*speed).over(step).is_ok_and(|steps| steps.whole().is_some());
    let exact = |lowest: i64, highest: i64| -> Option<Ratio> {
        let speeds = exact_speeds(lead_mm, rpm, unit, decimals, 64, lowest, Some(highest)).ok()?;
        speeds.into_iter().find(reachable).map(Length::integer)
    };
    let planned = rpm.round_to(0, Rounding::Down)?.units();
    // Of a speed that is no whole number the whole one below is a speed of its own.
    let below = if rpm.whole().is_some() { planned.saturating_sub(1) } else { planned };
    let slower = |numerator| -> Option<Ratio> {
        let speed = rpm.times(Length::new(numerator, 4).ok()?).ok()?;
        programmed_speed(speed, step, job.machine.lowest_rpm, job.machine.highest_rpm).ok()
    };
    // A pair of a speed far away from the job's is no help at the machine: within half and double.
    let near = |speed: &Ratio| {
        speed.times(Length::integer(2)).is_ok_and(|twice| twice >= rpm)
            && rpm.times(Length::integer(2)).is_ok_and(|twice| *speed <= twice)
    };
    let mut speeds = [
        slower(2),
        slower(3),
        exact(lowest, below).filter(near),
        Some(rpm),
        exact(planned.saturating_add(1), highest).filter(near),
        None,
    ];
    speeds.sort_unstable_by_key(|speed| (speed.is_none(), *speed));
    let mut rows = [None; MOST_CARD_ROWS];
    let mut last = None;
    for (row, speed) in rows.iter_mut().zip(speeds.into_iter().flatten()) {
        if last == Some(speed) {
            continue;
        }
        last = Some(speed);
        let Ok(feed) = feed(lead_mm, Some(speed), unit, FeedMode::PerMinute, decimals) else { continue };
        *row = Some(CardRow { rpm: speed, feed, exact: feed.lead_error()? == Length::ZERO, planned: speed == rpm });
    }
    Ok(rows)
}
