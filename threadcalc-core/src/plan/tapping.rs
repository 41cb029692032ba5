//! The tap of a planned hole: its kind, its class under a plating, what its shank says.

use super::parts::Parts;
use super::{Job, MOST_PLAN_FINDINGS};
use crate::depth::Hole;
use crate::drill::{Tap, TapDrill, WithinLimits};
use crate::error::{Code, Error, Field};
use crate::finding::{Finding, FindingId, Findings, NumberKey, Severity};
use crate::form::Form;
use crate::length::Length;
use crate::limits::Limits;
use crate::tap::{
    IsoTap, ShankMark, Suits, TapJob, TapKind, TapLimit, h_limit_for_plating, iso_tap_class, judge_tap_in,
    read_shank_mark, usual_tap_limit, usual_tap_limit_for_plating,
};
use crate::thread::Thread;

/// What the shank says, where the job has it: read before the plan takes its room, since reading goes deep.
#[inline(never)]
pub(super) fn shank_mark(job: &Job) -> Result<Option<ShankMark>, Error> {
    job.tap_mark.as_ref().map(|mark| read_shank_mark(mark.as_str().as_bytes())).transpose()
}

/// The class or limit of the tap, and the findings about kind, plating and shank.
#[inline(never)]
pub(super) fn of_tap(
    parts: &mut Parts<'_>,
    job: &Job,
    mark: Option<&ShankMark>,
    tap: Tap,
    hole: Hole,
) -> Result<(), Error> {
    if let Some(kind) = job.tap_kind {
        of_kind(kind, tap, hole, &mut parts.findings)?;
    }
    let plating = crate::range::zero_or_more(job.coating_um.unwrap_or(Length::ZERO), Field::Coating, 1000)?;
    if let Some(mark) = mark {
        of_mark(parts.thread, job, mark, plating, hole, &mut parts.findings)?;
    }
    if parts.thread.form().is_metric() && !parts.thread.is_wire_insert() {
        parts.tap_class = Some(iso_tap_class(parts.thread, plating).map_err(of_coating)?);
    }
    let class = parts.tap_class.as_ref();
    parts.tap_limit = tap_limit(parts.thread, class, plating, tap, &mut parts.findings)?;
    if let Some(class) = class.filter(|_| plating.is_positive()) {
        of_plated_class(class, plating, &mut parts.findings);
    }
    Ok(())
}

/// The limit of the tap by its number, where one is known.
#[inline(never)]
fn tap_limit(
    thread: &Thread,
    class: Option<&IsoTap>,
    plating: Length,
    tap: Tap,
    findings: &mut Findings<MOST_PLAN_FINDINGS>,
) -> Result<Option<TapLimit>, Error> {
    Ok(match class {
        None if plating.is_positive() && !thread.form().is_unified() && !thread.is_wire_insert() => {
            let gauged = "the taps of this thread have no limits for it: gauge after plating";
            findings.push(plating_tap(plating).with_severity(Severity::Warning).with_suggestion(gauged));
            None
        }
        None if plating.is_positive() => h_limit(thread, plating, findings)?,
        // What makers recommend is for taps that cut; a form tap is made larger.
        _ if tap == Tap::Form => None,
        None => usual_tap_limit(thread).ok(),
        // Beside the ISO class, for the taps of the inch system; raised for the plating.
        Some(_) => usual_tap_limit_for_plating(thread, plating).ok(),
    })
}

/// The class of ISO 2857 that leaves room for a plating.
#[inline(never)]
fn of_plated_class(class: &IsoTap, plating: Length, findings: &mut Findings<MOST_PLAN_FINDINGS>) {
    let finding = plating_tap(plating);
    findings.push(match class.class {
        Some(class) => finding.with_suggestion("ISO 2857 class ").with_suggestion(class.name()),
        None => finding
            .with_severity(Severity::Warning)
            .with_number(NumberKey::AboveBasicMm, class.closing_mm.to_f64())
            .with_suggestion("a special tap, larger by the closing of the plating"),
    });
}

#[inline(never)]
fn of_mark(
    thread: &Thread,
    job: &Job,
    mark: &ShankMark,
    plating_um: Length,
    hole: Hole,
    findings: &mut Findings<MOST_PLAN_FINDINGS>,
) -> Result<(), Error> {
    let asked = TapJob {
        thread: *thread,
        plating_um,
        hole: Some(hole),
        room_threads: room_threads(thread, job)?,
        wire_insert: thread.is_wire_insert(),
    };
    judge_tap_in(mark, &asked, &mut findings.open()).map_err(of_coating)
}

/// Errors about the plating name the job's own field.
fn of_coating(error: Error) -> Error {
    if error.field() == Field::PlatingThickness { error.about(Field::Coating) } else { error }
}

#[inline(never)]
fn of_kind(kind: TapKind, tap: Tap, hole: Hole, findings: &mut Findings<MOST_PLAN_FINDINGS>) -> Result<(), Error> {
    if kind.tap() != tap {
        return Err(Error::new(Code::Contradiction, Field::TapKind)
            .hint_text("form goes with tap form, the other kinds with tap cut"));
    }
    let advice = kind.advice(hole);
    let severity = match advice.suits {
        Suits::Well => return Ok(()),
        Suits::WithCare => Severity::Info,
        Suits::Badly => Severity::Warning,
    };
    findings.push(
        Finding::new(FindingId::TapKindUnsuited)
            .with_severity(severity)
            .with_evidence("tap_kind")
            .with_suggestion(advice.reason),
    );
    Ok(())
}

/// Threads of room below the full thread, where the drilled hole is known.
fn room_threads(thread: &Thread, job: &Job) -> Result<Option<Length>, Error> {
    let (Some(drilled), Some(depth)) = (job.drill_depth_mm, job.full_thread_depth_mm) else { return Ok(None) };
    let room = drilled.minus(depth)?.over(thread.pitch_mm())?;
    Ok(Some(room.max(Length::ZERO)))
}

#[inline(never)]
fn h_limit(
    thread: &Thread,
    plating: Length,
    findings: &mut Findings<MOST_PLAN_FINDINGS>,
) -> Result<Option<TapLimit>, Error> {
    match h_limit_for_plating(thread, plating) {
        Ok(limit) => {
            let mut name = crate::text::Text::<8>::new();
            // H and at most two digits.
            let _fits = core::fmt::Write::write_fmt(&mut name, format_args!("{limit}"));
            findings.push(plating_tap(plating).with_suggestion("at least limit ").with_suggestion(name.as_str()));
            Ok(Some(limit))
        }
        Err(error)
            if matches!(error.code(), Code::NotSourced | Code::OutOfRange) && error.field() == Field::TapLimit =>
        {
            let reason =
                if error.hint().is_empty() { "a special tap: the plating closes too much" } else { error.hint() };
            findings.push(plating_tap(plating).with_severity(Severity::Warning).with_suggestion(reason));
            Ok(None)
        }
        Err(error) => Err(of_coating(error)),
    }
}

fn plating_tap(plating: Length) -> Finding {
    Finding::new(FindingId::PlatingTap)
        .with_severity(Severity::Info)
        .with_evidence("coating_um")
        .with_number(NumberKey::PlatingUm, plating.to_f64())
}

/// A plating closes the drilled hole by twice its thickness: what is in limits before it may be under them after.
#[inline(never)]
pub(super) fn of_plated_hole(
    job: &Job,
    drill: &TapDrill,
    limits: Option<&Limits>,
    findings: &mut Findings<MOST_PLAN_FINDINGS>,
) -> Result<(), Error> {
    let (Some(plating), Some(least)) = (job.coating_um, limits.and_then(|limits| limits.minor_mm.0)) else {
        return Ok(());
    };
    let needed = least.plus(plating.over(Length::integer(500))?)?;
    let diameter = drill.chosen.drill.diameter_mm();
    if drill.chosen.within_limits == WithinLimits::Yes && diameter < needed {
        findings.push(
            Finding::new(FindingId::DrillOutsideLimits)
                .with_evidence("coating_um")
                .with_number(NumberKey::DrillMm, diameter.to_f64())
                .with_number(NumberKey::NeededMm, needed.to_f64())
                .with_number(NumberKey::PlatingUm, plating.to_f64())
                .with_suggestion("plated, the hole is below the smallest minor diameter: a larger drill"),
        );
    }
    Ok(())
}

/// The minor diameter of a formed thread: a hole 6H is judged by that of 7H.
///
/// # Source
/// DIN 13-50, from memory; ISO 965-1 (7H).
#[inline(never)]
pub(super) fn of_formed(parts: &mut Parts<'_>) -> Result<(), Error> {
    parts.formed_minor_mm = formed_minor_mm(parts.thread)?;
    Ok(())
}

fn formed_minor_mm(thread: &Thread) -> Result<Option<(Length, Length)>, Error> {
    let is_6h = || thread.tolerance_class().is_some_and(|class| class.as_str() == "6H");
    if thread.form() != Form::Metric || thread.is_wire_insert() || !is_6h() {
        return Ok(None);
    }
    match thread.without_class().with_class(b"7H")?.limits() {
        Ok(limits) => Ok(limits.minor_mm.0.zip(limits.minor_mm.1)),
        Err(error) if error.code() == Code::NotSourced => Ok(None),
        Err(error) => Err(error),
    }
}
