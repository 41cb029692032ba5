//! The card of S and F pairs: people on shift change S alone.

use super::Job;
use crate::error::Error;
use crate::feed::{Feed, FeedMode, feed, nearest_exact_speeds, programmed_speed};
use crate::length::{Length, Ratio};

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

const HALF: Ratio = Length::parts(1, 2);
const THREE_QUARTERS: Ratio = Length::parts(3, 4);

/// Half, three quarters and all of the speed, with the exact speeds nearest below and above.
#[inline(never)]
pub(super) fn fill(
    rows: &mut [Option<CardRow>; MOST_CARD_ROWS],
    planned: &Feed,
    rpm: Ratio,
    job: &Job,
) -> Result<(), Error> {
    let (lead_mm, unit, decimals) = (planned.lead_mm(), planned.unit(), planned.decimals());
    let step = job.machine.speed_step.unwrap_or(Length::ONE);
    let (lowest, highest) = (job.machine.lowest_rpm, job.machine.highest_rpm);
    let (below, above) =
        nearest_exact_speeds(lead_mm, rpm, unit, decimals, step, lowest, highest).unwrap_or((None, None));
    let slower = |part| programmed_speed(rpm.times(part).ok()?, step, lowest, highest).ok();
    let (half, three_quarters, below) = (slower(HALF), slower(THREE_QUARTERS), below.map(Length::integer));
    // All but these two stand in order by themselves: an exact speed is no less than half, which is rounded down.
    let (lower, upper) = if below < three_quarters { (below, three_quarters) } else { (three_quarters, below) };
    let speeds = [half, lower, upper, Some(rpm), above.map(Length::integer)];
    let mut last = None;
    for (row, speed) in rows.iter_mut().zip(speeds.into_iter().flatten()) {
        if last == Some(speed) {
            continue;
        }
        last = Some(speed);
        let made =
            if speed == rpm { Ok(*planned) } else { feed(lead_mm, Some(speed), unit, FeedMode::PerMinute, decimals) };
        let Ok(feed) = made else { continue };
        *row = Some(CardRow { rpm: speed, feed, exact: feed.is_exact()?, planned: speed == rpm });
    }
    Ok(())
}
