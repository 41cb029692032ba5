//! The card of S and F pairs: people on shift change S alone.

use super::Job;
use crate::feed::{Feed, FeedMode, feed, held_speed, nearest_exact_speeds};
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
pub(super) const MOST_CARD_ROWS: usize = 5;

const HALF: Ratio = Length::parts(1, 2);
const THREE_QUARTERS: Ratio = Length::parts(3, 4);

/// The speeds of a card, slowest first.
pub(super) type Speeds = [Option<Ratio>; MOST_CARD_ROWS];

/// Half, three quarters and all of the speed, with the exact speeds nearest below and above; none per revolution.
#[inline(never)]
pub(super) fn speeds(planned: &Feed, rpm: Ratio, job: &Job) -> Speeds {
    if planned.mode() != FeedMode::PerMinute {
        return [None; MOST_CARD_ROWS];
    }
    let (lead_mm, unit, decimals) = (planned.lead_mm(), planned.unit(), planned.decimals());
    let step = job.machine.speed_step.unwrap_or(Length::ONE);
    let (lowest, highest) = (job.machine.lowest_rpm, job.machine.highest_rpm);
    let (below, above) =
        nearest_exact_speeds(lead_mm, rpm, unit, decimals, step, lowest, highest).unwrap_or((None, None));
    let slower = |part| held_speed(rpm.times(part).ok()?, step, lowest, highest).ok().flatten();
    let (half, three_quarters, below) = (slower(HALF), slower(THREE_QUARTERS), below.map(Length::integer));
    // All but these two stand in order by themselves: an exact speed is no less than half, which is rounded down.
    let (lower, upper) = if below < three_quarters { (below, three_quarters) } else { (three_quarters, below) };
    [half, lower, upper, Some(rpm), above.map(Length::integer)]
}

/// Every speed once, with its feed.
#[inline(never)]
pub(super) fn fill(rows: &mut [Option<CardRow>; MOST_CARD_ROWS], planned: &Feed, rpm: Ratio, speeds: &Speeds) {
    let mut last = None;
    for (row, speed) in rows.iter_mut().zip(speeds.iter().flatten()) {
        if last != Some(speed) {
            last = Some(speed);
            fill_row(row, planned, rpm, *speed);
        }
    }
}

/// The feed of a speed; a speed that no feed can be had for leaves its place empty.
#[inline(never)]
fn fill_row(row: &mut Option<CardRow>, planned: &Feed, rpm: Ratio, speed: Ratio) {
    let is_planned = speed == rpm;
    let feed = match is_planned {
        true => *planned,
        false => {
            let (unit, decimals) = (planned.unit(), planned.decimals());
            match feed(planned.lead_mm(), Some(speed), unit, FeedMode::PerMinute, decimals) {
                Ok(feed) => feed,
                Err(_) => return,
            }
        }
    };
    *row = Some(CardRow { rpm: speed, feed, exact: feed.is_exact(), planned: is_planned });
}
