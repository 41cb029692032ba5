//! What a drilled hole leaves: percent, its place in the limits, what a drill probably cuts, what is doubtful.

use core::fmt::Write;

use super::oversize::probable_hole_mm;
use super::percent::{FullHeight, full_height, has_bases};
use super::search::{Found, Spot};
use super::{Basis, Drill, Tap, choice, form_hole};
use crate::error::{Code, Error};
use crate::finding::{Finding, FindingId, Findings, NumberKey};
use crate::length::{Length, Ratio};
use crate::limits::{Confidence, Limits};
use crate::named::named;
use crate::text::Text;
use crate::thread::{Side, Thread};

named! {
    /// Whether a drilled hole lies within the class's minor-diameter limits.
    pub enum WithinLimits {
        /// It does.
        Yes = 1 "yes",
        /// It does not.
        No = 2 "no",
        /// A form tap makes the minor diameter itself, or no limits are known.
        DoesNotApply = 3 "does-not-apply",
    }
}

impl WithinLimits {
    const fn of(holds: bool) -> Self {
        if holds { Self::Yes } else { Self::No }
    }
}

/// A drill beside the chosen one.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Alternative {
    /// The drill.
    pub drill: Drill,
    /// Percent of thread on the basis of the answer; NaN for a taper thread, where it has no meaning.
    pub percent: f64,
    /// Within the class's minor-diameter limits.
    pub within_limits: WithinLimits,
    /// What is left to the largest minor diameter in mm, negative beyond it; None if there is none.
    pub left_to_limit_mm: Option<Length>,
}

/// The hole that a drill probably leaves, larger than the drill.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct ProbableHole {
    /// Its diameter in mm.
    pub hole_mm: Length,
    /// Percent of thread that it leaves, on the basis of the answer.
    pub percent: f64,
    /// What it leaves to the largest minor diameter in mm, negative beyond it; None if there is none.
    pub left_to_limit_mm: Option<Length>,
}

/// A chosen tap drill.
#[derive(Clone, Copy, Debug)]
pub struct TapDrill {
    /// The drill, with its percent and what is left to the limit.
    pub chosen: Alternative,
    /// The basis of every percent here; None for a form tap, whose 100 % is 0.68 P, and for other threads
    /// than M and UN, whose 100 % is their own height.
    pub basis: Option<Basis>,
    /// The limits the hole was judged by.
    pub limits: Option<Limits>,
    /// The next smaller and larger drills of the sets, smallest first.
    pub alternatives: [Option<Alternative>; 4],
    /// The hole that the drill probably leaves, as [`probable_hole_mm`] has it; None for a taper thread, and
    /// where no oversize is known or no thread would be left. It never changes which drill is chosen.
    pub probable: Option<ProbableHole>,
    /// What is doubtful.
    pub findings: Findings<4>,
}

/// Judges a drill that the shop has for a tapped hole, as [`tap_drill`](crate::tap_drill) judges the one it
/// chooses; no alternatives.
///
/// `oversize_mm` is how much larger than the drill its hole is, in millimetres, where that is known.
/// Findings beside those of the limits: `other-taps-hole` for a hole that the other kind of tap takes in this
/// thread; `oversize-over-limit` where the drill is within the limits and its probable hole is not.
///
/// # Errors
/// Those of [`percent_thread`](crate::percent_thread), of the thread's limits, and
/// [`Code::OutOfRange`] for an oversize below 0.
///
/// # Example
/// ```
/// use threadcalc_core::{Drill, FindingId, Tap, Thread, judge_drill};
///
/// let found = judge_drill(&Thread::read(b"M8-6H")?, Drill::read(b"7.4")?, Tap::Cut, None, None)?;
/// assert!(found.findings.iter().any(|finding| finding.id() == FindingId::OtherTapsHole));
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// Limits: those of the thread's standard. Percent and probable hole: as [`percent_thread`](crate::percent_thread)
/// and [`probable_hole_mm`]. The other tap's hole: common practice, between 50 and 80 % of 0.68 P for a form
/// tap, between 1.0825 P and 0.75 P below the major diameter for a cut tap.
pub fn judge_drill(
    thread: &Thread,
    drill: Drill,
    tap: Tap,
    basis: Option<Basis>,
    oversize_mm: Option<Length>,
) -> Result<TapDrill, Error> {
    judge_given(thread, drill, tap, basis, oversize_mm, false)
}

/// The same, where a taper thread's hole may be reamed to the taper.
pub(crate) fn judge_given(
    thread: &Thread,
    drill: Drill,
    tap: Tap,
    basis: Option<Basis>,
    oversize_mm: Option<Length>,
    taper_reamer: bool,
) -> Result<TapDrill, Error> {
    if thread.form().is_taper() {
        return super::taper::judge_given(thread, drill, tap, basis, taper_reamer);
    }
    let (limits, doubts) = judging_limits(thread, tap)?;
    let basis = answer_basis(thread, tap, None, basis);
    Judge::new(thread, tap, basis, limits, oversize_mm)?.answer(drill, None, doubts)
}

/// The basis of the answer: without a percent a cut tap's is only a way to report, 3H/4 if not said.
pub(super) fn answer_basis(thread: &Thread, tap: Tap, percent: Option<Ratio>, basis: Option<Basis>) -> Option<Basis> {
    match (tap, percent) {
        (Tap::Cut, None) if has_bases(thread.form()) => Some(basis.unwrap_or(Basis::ThreeQuartersH)),
        _ => basis,
    }
}

/// What every drill for one hole is judged by.
pub(super) struct Judge<'a> {
    thread: &'a Thread,
    tap: Tap,
    full: FullHeight,
    basis: Option<Basis>,
    limits: Option<Limits>,
    /// The minor-diameter limits, where both are whole numbers of picometres.
    minor_picometres: Option<(i64, i64)>,
    oversize: Option<Length>,
}

impl<'a> Judge<'a> {
    pub(super) fn new(
        thread: &'a Thread,
        tap: Tap,
        basis: Option<Basis>,
        limits: Option<Limits>,
        oversize: Option<Length>,
    ) -> Result<Self, Error> {
        let full = full_height(thread, tap, basis)?;
        let minor = limits.as_ref().and_then(|limits| limits.minor_mm.0.zip(limits.minor_mm.1));
        let minor_picometres = minor.and_then(|(low, high)| low.picometres().zip(high.picometres()));
        Ok(Self { thread, tap, full, basis, limits, minor_picometres, oversize })
    }

    /// One drill with its percent and its place in the limits; its diameter also in picometres, if it is whole.
    fn judged(&self, drill: Drill, picometres: Option<i64>) -> Result<Alternative, Error> {
        let diameter = drill.diameter_mm();
        let (within_limits, left_to_limit_mm) = match (self.minor_picometres, picometres, &self.limits) {
            (_, _, None) => (WithinLimits::DoesNotApply, None),
            // In whole numbers nothing has to be brought to one denominator.
            (Some((low, high)), Some(drill), _) => {
                let left = Length::decimal_parts(high.saturating_sub(drill), 9, 9);
                (WithinLimits::of(low <= drill && drill <= high), Some(left))
            }
            (_, _, Some(limits)) => (
                match limits.minor_holds(diameter) {
                    // Not below the smallest, and there is no largest.
                    None if self.thread.form().has_no_largest_minor() => WithinLimits::Yes,
                    holds => holds.map_or(WithinLimits::DoesNotApply, WithinLimits::of),
                },
                limits.minor_mm.1.map(|most| most.minus(diameter)).transpose()?,
            ),
        };
        let percent = self.full.percent_at(diameter, picometres)?;
        Ok(Alternative { drill, percent, within_limits, left_to_limit_mm })
    }

    /// What the drill probably leaves; None where no oversize is known or no thread would be left.
    fn probable(&self, drill: &Drill) -> Result<Option<ProbableHole>, Error> {
        let hole_mm = match probable_hole_mm(drill, self.oversize) {
            Ok(hole) => hole,
            Err(error) if error.code() == Code::NotSourced => return Ok(None),
            Err(error) => return Err(error),
        };
        let most = self.limits.as_ref().and_then(|limits| limits.minor_mm.1);
        let left_to_limit_mm = most.map(|most| most.minus(hole_mm)).transpose()?;
        Ok(self.full.percent(hole_mm).ok().map(|percent| ProbableHole { hole_mm, percent, left_to_limit_mm }))
    }

    /// The chosen drill with those beside it, and findings where it misses the limits or is another tap's.
    pub(super) fn answer(self, drill: Drill, found: Option<&Found>, doubts: LimitDoubts) -> Result<TapDrill, Error> {
        let mut findings = Findings::new();
        doubts.tell(&mut findings, self.thread);
        let chosen = self.judged(drill, drill.diameter_mm().picometres())?;
        let probable = self.probable(&drill)?;
        if chosen.within_limits == WithinLimits::No {
            findings.push(outside_limits(&chosen));
        } else if let Some(over) = probable.as_ref().and_then(|probable| over_limit(&chosen, probable)) {
            findings.push(over);
        }
        if chosen.within_limits != WithinLimits::Yes
            && form_hole::is_other_taps(self.thread, self.tap, drill.diameter_mm())
        {
            findings.push(self.other_taps(&drill));
        }
        let beside = |spot: &Spot| self.judged(spot.drill(), Some(spot.picometres)).ok();
        let alternatives = found.map_or([None; 4], |found| found.beside(beside));
        Ok(TapDrill { chosen, basis: self.basis, limits: self.limits, alternatives, probable, findings })
    }

    fn other_taps(&self, drill: &Drill) -> Finding {
        let (other, own) = match self.tap {
            Tap::Cut => ("a form tap's hole; a cut tap takes ", Tap::Cut),
            Tap::Form => ("a cut tap's hole; a form tap takes ", Tap::Form),
        };
        let mut suggestion = Text::<96>::new();
        if let Some(right) = choice::usual_drill(self.thread, own, self.limits.as_ref()) {
            // A name is short: both have room.
            let _fits = write!(suggestion, "{other}{}", right.name());
        }
        Finding::new(FindingId::OtherTapsHole)
            .with_evidence("drill_mm")
            .with_number(NumberKey::DrillMm, drill.diameter_mm().to_f64())
            .with_suggestion(suggestion.as_str())
    }
}

/// What is doubtful about the limits, in little room until it is told.
#[derive(Clone, Copy, Default)]
pub(super) struct LimitDoubts {
    class_assumed: bool,
    by_formula: bool,
    /// Why there are no limits, or not all.
    not_sourced: Option<&'static str>,
}

impl LimitDoubts {
    fn tell(self, findings: &mut Findings<4>, thread: &Thread) {
        if self.class_assumed {
            findings.push(class_assumed(thread));
        }
        if self.by_formula {
            findings.push(Finding::new(FindingId::ToleranceByFormula).with_evidence("thread"));
        }
        if let Some(reason) = self.not_sourced {
            findings.push(Finding::new(FindingId::LimitsNotSourced).with_evidence("thread").with_suggestion(reason));
        }
    }
}

/// The limits a drilled hole is judged by: the class's own, else the medium class's with a finding.
pub(super) fn judging_limits(thread: &Thread, tap: Tap) -> Result<(Option<Limits>, LimitDoubts), Error> {
    let mut doubts = LimitDoubts::default();
    if tap == Tap::Form {
        return Ok((None, doubts));
    }
    if thread.tolerance_class().and_then(|class| class.side()) == Some(Side::External) {
        doubts.not_sourced = Some("the class is of an external thread, whose limits are no hole's");
        return Ok((None, doubts));
    }
    doubts.class_assumed = thread.tolerance_class().is_none() && !thread.medium_internal_class().is_empty();
    let thread = thread.as_tapped()?;
    match thread.limits() {
        Ok(limits) => {
            doubts.by_formula = limits.confidence == Confidence::Formula;
            if limits.minor_mm.1.is_none() && !thread.form().has_no_largest_minor() {
                doubts.not_sourced = Some("only by its smallest minor diameter: the largest has not been read");
            }
            Ok((Some(limits), doubts))
        }
        Err(error) if error.code() == Code::NotSourced => {
            doubts.not_sourced = Some(error.hint());
            Ok((None, doubts))
        }
        Err(error) => Err(error),
    }
}

pub(crate) fn class_assumed(thread: &Thread) -> Finding {
    Finding::new(FindingId::ClassAssumed).with_evidence("thread").with_suggestion(thread.medium_internal_class())
}

fn outside_limits(judged: &Alternative) -> Finding {
    let finding = Finding::new(FindingId::DrillOutsideLimits)
        .with_evidence("drill_mm")
        .with_number(NumberKey::DrillMm, judged.drill.diameter_mm().to_f64())
        .with_suggestion("a drill within the minor-diameter limits");
    // A class may have a smallest minor diameter and no largest.
    match judged.left_to_limit_mm {
        Some(left) => finding.with_number(NumberKey::LeftToLimitMm, left.to_f64()),
        None => finding,
    }
}

fn over_limit(chosen: &Alternative, probable: &ProbableHole) -> Option<Finding> {
    let left = probable.left_to_limit_mm.filter(|left| left.is_negative())?;
    let finding = Finding::new(FindingId::OversizeOverLimit)
        .with_evidence("drill_mm")
        .with_number(NumberKey::DrillMm, chosen.drill.diameter_mm().to_f64())
        .with_number(NumberKey::ProbableMm, probable.hole_mm.to_f64())
        .with_number(NumberKey::LeftToLimitMm, left.to_f64());
    Some(finding.with_suggestion("a smaller drill, or a reamed hole"))
}
