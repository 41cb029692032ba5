//! The drill for a taper pipe thread: there is no percent and no limit, only the cone.

use super::choice::nearest_between;
use super::stock::Stock;
use super::{Alternative, Basis, Drill, Tap, TapDrill, TapDrillRequest, WithinLimits};
use crate::error::{Code, Error, Field};
use crate::finding::{Finding, FindingId, Findings, NumberKey, Severity};
use crate::length::Length;
use crate::pipe::TAPER;
use crate::thread::{Side, Thread};

pub(super) fn tap_drill(thread: &Thread, request: &TapDrillRequest<Stock<'_>>) -> Result<TapDrill, Error> {
    refuse(thread, request.tap, request.percent.is_some(), request.basis)?;
    let hole = hole(thread, request.taper_reamer)?;
    // A hole more than a pitch away is another thread's.
    let pitch = thread.pitch_mm();
    let least = if hole.not_below { hole.diameter } else { hole.diameter.minus(pitch)? };
    let most = hole.diameter.plus(pitch)?;
    let found = nearest_between(&request.sets, hole.diameter, Some(least), Some(most)).map_err(|error| {
        if request.sets.is_own() { error } else { error.got(hole.diameter.to_f64()).hint_text("other sets") }
    })?;
    let mut findings = Findings::new();
    if !request.taper_reamer {
        findings.push(straight_hole(thread, &hole)?);
    }
    Ok(TapDrill {
        chosen: unjudged(found.chosen.drill()),
        basis: None,
        limits: None,
        alternatives: found.beside(|spot| Some(unjudged(spot.drill()))),
        probable: None,
        findings,
    })
}

fn refuse(thread: &Thread, tap: Tap, percent: bool, basis: Option<Basis>) -> Result<(), Error> {
    let refused = |code, field, hint| Err(Error::new(code, field).hint_text(hint));
    if thread.side() == Some(Side::External) {
        return refused(Code::Contradiction, Field::Side, "an external thread has no tap drill");
    }
    if percent || basis.is_some() {
        let field = if percent { Field::Percent } else { Field::Basis };
        return refused(Code::DoesNotApply, field, "a taper thread has another percent at each turn: give none");
    }
    if tap == Tap::Form {
        return refused(Code::DoesNotApply, Field::Tap, "taper pipe threads are cut");
    }
    Ok(())
}

/// A drill that the shop has: doubtful where it is further from the rule's hole than half the thread's height,
/// wrong where it is further than a pitch.
pub(super) fn judge_given(
    thread: &Thread,
    drill: Drill,
    tap: Tap,
    basis: Option<Basis>,
    taper_reamer: bool,
) -> Result<TapDrill, Error> {
    refuse(thread, tap, false, basis)?;
    let hole = hole(thread, taper_reamer)?;
    let mut findings = Findings::new();
    if !taper_reamer {
        findings.push(straight_hole(thread, &hole)?);
    }
    let away = drill.diameter_mm().minus(hole.diameter)?;
    if away.magnitude() > thread.pitch_mm().times(const { Length::parts(2, 5) })? {
        // A hole more than a pitch away is another thread's.
        let severity = if away.magnitude() > thread.pitch_mm() { Severity::Error } else { Severity::Warning };
        findings.push(
            Finding::new(FindingId::DrillOutsideLimits)
                .with_severity(severity)
                .with_evidence("drill_mm")
                .with_number(NumberKey::DrillMm, drill.diameter_mm().to_f64())
                .with_number(NumberKey::NeededMm, hole.diameter.to_f64())
                .with_suggestion("a drill nearer to the hole of the rule"),
        );
    }
    Ok(TapDrill {
        chosen: unjudged(drill),
        basis: None,
        limits: None,
        alternatives: [None; 4],
        probable: None,
        findings,
    })
}

/// The hole that is wanted, and how deep it gives full threads.
struct Hole {
    diameter: Length,
    not_below: bool,
    full_threads: Length,
}

fn hole(thread: &Thread, taper_reamer: bool) -> Result<Hole, Error> {
    let pipe = thread.pipe()?;
    let height = pipe.thread_height_mm;
    if let (Some(diameter), Some(length), Some(height)) =
        (pipe.pitch_diameter_gauge_plane_mm, pipe.useful_length_mm, height)
    {
        let at_face = diameter.minus(height)?;
        let at_end = at_face.minus(length.times(TAPER)?)?;
        return Ok(Hole {
            diameter: if taper_reamer { at_end } else { at_face },
            not_below: !taper_reamer,
            // The hole is as wide as the minor diameter at the face, so behind it the crests are cut short.
            full_threads: Length::ZERO,
        });
    }
    // Dryseal threads share the pitch cone, and the drills of the table.
    let height = thread.pitch_mm().times(const { Length::parts(4, 5) })?;
    let small_end = pipe.pitch_diameter_small_end_mm.unwrap_or(Length::ZERO).minus(height)?;
    let wrench = thread.pitch_mm().times(Length::integer(3))?.times(TAPER)?;
    Ok(Hole {
        diameter: if taper_reamer { small_end.minus(wrench)? } else { small_end },
        not_below: false,
        full_threads: pipe.hand_tight_length_mm.unwrap_or(Length::ZERO),
    })
}

fn unjudged(drill: Drill) -> Alternative {
    Alternative { drill, percent: f64::NAN, within_limits: WithinLimits::DoesNotApply, left_to_limit_mm: None }
}

fn straight_hole(thread: &Thread, hole: &Hole) -> Result<Finding, Error> {
    let turns = hole.full_threads.over(thread.pitch_mm())?;
    Ok(Finding::new(FindingId::TaperHole)
        .with_evidence("thread")
        .with_number(NumberKey::FullThreadMm, hole.full_threads.to_f64())
        .with_number(NumberKey::Turns, turns.to_f64())
        .with_suggestion("ream to the taper for full threads all the way"))
}
