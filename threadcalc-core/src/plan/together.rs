//! How a plan is put together: card, gauges and words, and every part copied once into the answer.
//!
//! Each step keeps one part more and goes less deep, so that none takes more of the stack than the others.

use super::card::{self, CardRow, MOST_CARD_ROWS, Speeds};
use super::parts::Parts;
use super::{Job, MOST_PLAN_FINDINGS, Plan, Spindle, findings};
use crate::cycle::{Cycle, CycleRequest, write_cycle};
use crate::dialect::{Dialect, ReturnTo};
use crate::drill::TapDrill;
use crate::error::Error;
use crate::finding::{FindingId, Findings, Severity};
use crate::gauge::{Gauges, NotGoRule, gauges_with, not_go_rule};
use crate::length::Length;
use crate::profile::Profile;
use crate::taper_depth::TaperDepths;

/// The plan with what is made of its parts: first the speeds of the card and the gauges, which take little room.
#[inline(never)]
pub(super) fn with_gauges(job: &Job, parts: &mut Parts<'_>) -> Result<Plan, Error> {
    let speeds = card::speeds(&parts.fed.feed, parts.fed.programmed_rpm, job);
    let gauges = gauges_with(parts.thread, parts.limits.as_ref());
    let profile = parts.thread.profile();
    with_words(job, parts, &speeds, gauges.as_ref().map_err(|error| *error)?, &profile)
}

/// The plan with its words, if no finding withholds them.
#[inline(never)]
fn with_words(
    job: &Job,
    parts: &mut Parts<'_>,
    speeds: &Speeds,
    gauges: &Gauges,
    profile: &Profile,
) -> Result<Plan, Error> {
    let mut cycle = Cycle::default();
    write_words(job, parts, &mut cycle)?;
    let withheld = withheld(&parts.findings, &mut cycle);
    Ok(with_card(job, parts, speeds, gauges, profile, &cycle, withheld))
}

/// The words, or the finding that says why there are none.
#[inline(never)]
fn write_words(job: &Job, parts: &mut Parts<'_>, cycle: &mut Cycle) -> Result<(), Error> {
    let Some(dialect) = dialect_of(job, &mut parts.findings) else { return Ok(()) };
    let request = CycleRequest {
        dialect,
        thread: parts.thread,
        rpm: parts.fed.programmed_rpm,
        feed: &parts.fed.feed,
        depth_mm: parts.depths.program_tap_mm,
        r_plane_mm: parts.filled.r_plane_mm.unwrap_or(Length::ZERO),
        holder: parts.holder,
        peck_mm: job.peck_mm,
        dwell_s: job.dwell_s,
        retract_factor: job.machine.retract_factor,
        return_to: job.return_to.unwrap_or(ReturnTo::RPlane),
    };
    if let Some(refusal) = write_cycle(&request, cycle)? {
        refusal.tell(dialect, &mut parts.findings.open());
    }
    Ok(())
}

/// The plan with its card.
#[inline(never)]
fn with_card(
    job: &Job,
    parts: &Parts<'_>,
    speeds: &Speeds,
    gauges: &Gauges,
    profile: &Profile,
    cycle: &Cycle,
    withheld: [Option<FindingId>; 4],
) -> Plan {
    let mut card = [None; MOST_CARD_ROWS];
    card::fill(&mut card, &parts.fed.feed, parts.fed.programmed_rpm, speeds);
    let not_go = not_go_rule(parts.thread).ok();
    let Parts { drill, findings, spindle, taper, .. } = parts;
    put_together(job, parts, drill, findings, spindle, taper, cycle, withheld, &card, gauges, profile, not_go)
}

/// Every part copied once.
#[inline(never)]
#[expect(clippy::too_many_arguments, reason = "of a large part behind another reference a copy would be made first")]
fn put_together(
    job: &Job,
    parts: &Parts<'_>,
    drill: &TapDrill,
    findings: &Findings<MOST_PLAN_FINDINGS>,
    spindle: &Spindle,
    taper: &Option<TaperDepths>,
    cycle: &Cycle,
    withheld: [Option<FindingId>; 4],
    card: &[Option<CardRow>; MOST_CARD_ROWS],
    gauges: &Gauges,
    profile: &Profile,
    not_go: Option<NotGoRule>,
) -> Plan {
    Plan {
        thread: *parts.thread,
        profile: *profile,
        limits: parts.limits,
        drill: *drill,
        asked_rpm: parts.fed.asked_rpm,
        programmed_rpm: parts.fed.programmed_rpm,
        feed: parts.fed.feed,
        lead_error: parts.lead_error,
        axial_error_mm: parts.axial_error_mm,
        lead_cut_mm: parts.lead_cut_mm,
        depths: parts.depths,
        taper: *taper,
        countersink: parts.countersink,
        spindle: *spindle,
        tap_class: parts.tap_class,
        tap_limit: parts.tap_limit,
        joint: parts.joint,
        gauges: *gauges,
        formed_minor_mm: parts.formed_minor_mm,
        not_go,
        cycle: *cycle,
        withheld,
        findings: *findings,
        card: *card,
        job: parts.filled.job(job),
    }
}

/// The dialect to write words in, if they can be written; an unset one is a finding.
#[inline(never)]
fn dialect_of<'a>(job: &'a Job, findings: &mut Findings<MOST_PLAN_FINDINGS>) -> Option<&'a Dialect> {
    // A rigid holder cannot be fed off the lead: that is said already, and no cycle can be written.
    let off_the_lead = findings.iter().any(|f| f.id() == FindingId::Underfeed && f.severity() == Severity::Error);
    match &job.dialect {
        Some(_) if off_the_lead => None,
        Some(dialect) if !dialect.is_unset() => Some(dialect),
        _ => {
            findings.push(findings::dialect_unset());
            None
        }
    }
}

/// The findings that keep the words back: every error, and an unset dialect.
#[inline(never)]
fn withheld(findings: &Findings<MOST_PLAN_FINDINGS>, cycle: &mut Cycle) -> [Option<FindingId>; 4] {
    let mut ids = [None; 4];
    let keeps_back = findings.iter().filter(|f| f.severity() == Severity::Error || f.id() == FindingId::DialectUnset);
    for (slot, finding) in ids.iter_mut().zip(keeps_back) {
        *slot = Some(finding.id());
        *cycle = Cycle::default();
    }
    ids
}
