//! Which drill of the sets to take.

use core::cmp::Reverse;

use super::search::{Mark, around, next_larger, next_smaller};
use super::{Basis, Drill, DrillSet, DrillSets, Tap, drill_diameter, percent_thread};
use crate::error::{Code, Error, Field};
use crate::finding::{Finding, FindingId, Findings, NumberKey};
use crate::form::Form;
use crate::length::{Length, Ratio};
use crate::limits::{Confidence, Limits};
use crate::named::named;
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

/// What a tap drill is asked for.
#[derive(Clone, Copy, Debug)]
pub struct TapDrillRequest {
    /// Cut or form tap.
    pub tap: Tap,
    /// Percent of thread; without it, the drill nearest to D − P (cut) or D − P/2 (form), and for a
    /// taper thread by its own rule.
    pub percent: Option<Ratio>,
    /// Basis of the percent: required with a percent for a cut tap, 3H/4 for the answer otherwise.
    pub basis: Option<Basis>,
    /// The drills to choose from.
    pub sets: DrillSets,
    /// For a taper thread: the hole is reamed to the taper before it is tapped.
    pub taper_reamer: bool,
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

/// A chosen tap drill.
#[derive(Clone, Copy, Debug)]
pub struct TapDrill {
    /// The drill, with its percent and what is left to the limit.
    pub chosen: Alternative,
    /// The basis of every percent here; None for a form tap, whose 100 % is 0.68 P, and for pipe
    /// threads, whose 100 % is their own height.
    pub basis: Option<Basis>,
    /// The limits the hole was judged by.
    pub limits: Option<Limits>,
    /// The next smaller and larger drills of the sets, smallest first.
    pub alternatives: [Option<Alternative>; 4],
    /// What is doubtful.
    pub findings: Findings<3>,
}

/// Chooses the drill of the sets for a tapped hole.
///
/// With a percent: the drill nearest to that hole, whatever the limits (`within_limits` says).
/// Without: the drill nearest to D − P within the class's minor-diameter limits (cut), or nearest to
/// D − P/2 (form). Nearest is by diameter, ties to the larger. A thread without a class is judged
/// by the standard's medium class, with finding `class-assumed`; G and Rp need no class. NPSC and NPSM
/// need a percent.
///
/// ```text
/// NPT, NPTF  nearest to K0 = E0 − 0.8 p; with taper reamer to K3 = K0 − 3 p/16
/// Rc         the smallest drill not below D1 at the face; with taper reamer nearest to D1 − useful thread/16
/// ```
///
/// Without a taper reamer a straight hole gives full threads only near the face: finding `taper-hole`.
///
/// # Errors
/// [`Code::Missing`] without a set or basis, [`Code::NoDrill`], [`Code::Contradiction`] for a taper
/// reamer in a straight thread, [`Code::DoesNotApply`] for a percent or a form tap in a taper thread,
/// [`Code::NotSourced`] for NPSC and NPSM without a percent and for NPSF, and those of [`percent_thread`].
///
/// # Example
/// ```
/// use threadcalc_core::{Basis, DrillSets, Length, Tap, TapDrillRequest, Thread, tap_drill};
///
/// let request = TapDrillRequest {
///     tap: Tap::Cut,
///     percent: Some(Length::integer(75)),
///     basis: Some(Basis::ThreeQuartersH),
///     sets: DrillSets::INCH,
///     taper_reamer: false,
/// };
/// let found = tap_drill(&Thread::read(b"1/4-20 UNC-2B")?, &request)?;
/// assert_eq!(found.chosen.drill.name().as_str(), "#7");
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// ISO 2306 (D − P); Machinery's Handbook 31 (percent); form taps: common practice. NPT: the rule gives
/// every drill up to 2 in of ASME B94.9-2008, table of taper pipe tap limits (direct tapping); with taper
/// reamer and for Rc: common practice.
pub fn tap_drill(thread: &Thread, request: &TapDrillRequest) -> Result<TapDrill, Error> {
    if request.sets.is_none() {
        return Err(Error::new(Code::Missing, Field::DrillSets).hint_text(DrillSet::CHOICES));
    }
    if thread.form().is_taper() {
        return super::taper::tap_drill(thread, request);
    }
    if request.taper_reamer {
        return Err(Error::new(Code::Contradiction, Field::TaperReamer).hint_text("this thread is straight"));
    }
    let basis = answer_basis(thread, request.tap, request.percent, request.basis);
    let mut findings = Findings::new();
    let limits = judging_limits(thread, request.tap, &mut findings)?;
    let drill = match request.percent {
        Some(percent) => {
            let hole = drill_diameter(thread, percent, request.tap, basis)?;
            let around = around(request.sets, Mark::Derived(hole));
            nearest(around, |diameter| (diameter.to_f64() - hole).abs())
        }
        None => nearest_by_rule(thread, request, limits.as_ref())?,
    };
    let drill = drill
        .ok_or(Error::new(Code::NoDrill, Field::DrillSets).hint_text("other sets, or a percent with its basis"))?;
    answer(thread, drill, request.sets, request.tap, basis, limits, findings)
}

/// The basis of the answer: without a percent a cut tap's is only a way to report, 3H/4 if not said.
fn answer_basis(thread: &Thread, tap: Tap, percent: Option<Ratio>, basis: Option<Basis>) -> Option<Basis> {
    match (tap, percent) {
        (Tap::Cut, None) if !thread.form().is_pipe() => Some(basis.unwrap_or(Basis::ThreeQuartersH)),
        _ => basis,
    }
}

/// A drill that the shop has, judged like a chosen one; no neighbours.
pub(crate) fn judge_given(
    thread: &Thread,
    drill: Drill,
    tap: Tap,
    basis: Option<Basis>,
    taper_reamer: bool,
) -> Result<TapDrill, Error> {
    if thread.form().is_taper() {
        return super::taper::judge_given(thread, drill, tap, basis, taper_reamer);
    }
    let mut findings = Findings::new();
    let limits = judging_limits(thread, tap, &mut findings)?;
    answer(thread, drill, DrillSets::NONE, tap, answer_basis(thread, tap, None, basis), limits, findings)
}

/// A drill with its neighbours in the sets, and a finding where it misses the limits.
fn answer(
    thread: &Thread,
    drill: Drill,
    sets: DrillSets,
    tap: Tap,
    basis: Option<Basis>,
    limits: Option<Limits>,
    mut findings: Findings<3>,
) -> Result<TapDrill, Error> {
    let judge = |drill| judged(thread, drill, tap, basis, limits.as_ref());
    let chosen = judge(drill)?;
    if chosen.within_limits == WithinLimits::No {
        findings.push(outside_limits(&chosen));
    }
    let alternatives = beside(drill, sets).map(|beside| beside.and_then(|beside| judge(beside).ok()));
    Ok(TapDrill { chosen, basis, limits, alternatives, findings })
}

/// The limits a drilled hole is judged by: the class's own, else the medium class's with a finding.
fn judging_limits(thread: &Thread, tap: Tap, findings: &mut Findings<3>) -> Result<Option<Limits>, Error> {
    if tap == Tap::Form {
        return Ok(None);
    }
    let thread = match thread.tolerance_class() {
        Some(_) => *thread,
        None if thread.medium_internal_class().is_empty() => *thread,
        None => {
            findings.push(class_assumed(thread));
            thread.with_class(thread.medium_internal_class().as_bytes())?
        }
    };
    if thread.tolerance_class().and_then(|class| class.side()) == Some(Side::External) {
        findings.push(
            Finding::new(FindingId::LimitsNotSourced)
                .with_evidence("thread")
                .with_suggestion("the class is of an external thread, whose limits are no hole's"),
        );
        return Ok(None);
    }
    match thread.limits() {
        Ok(limits) => {
            if limits.confidence == Confidence::Formula {
                findings.push(Finding::new(FindingId::ToleranceByFormula).with_evidence("thread"));
            }
            Ok(Some(limits))
        }
        Err(error) if error.code() == Code::NotSourced => {
            findings
                .push(Finding::new(FindingId::LimitsNotSourced).with_evidence("thread").with_suggestion(error.hint()));
            Ok(None)
        }
        Err(error) => Err(error),
    }
}

pub(crate) fn class_assumed(thread: &Thread) -> Finding {
    Finding::new(FindingId::ClassAssumed).with_evidence("thread").with_suggestion(thread.medium_internal_class())
}

fn outside_limits(judged: &Alternative) -> Finding {
    let left = judged.left_to_limit_mm.map_or(f64::NAN, Length::to_f64);
    Finding::new(FindingId::DrillOutsideLimits)
        .with_evidence("drill_mm")
        .with_number(NumberKey::DrillMm, judged.drill.diameter_mm().to_f64())
        .with_number(NumberKey::LeftToLimitMm, left)
        .with_suggestion("a drill within the minor-diameter limits")
}

/// The drill with the smallest distance; ties to the larger, then to the first set.
pub(super) fn nearest<D: PartialOrd + Copy>(
    drills: impl Iterator<Item = Drill>,
    away: impl Fn(Length) -> D,
) -> Option<Drill> {
    let rank = |drill: &Drill| (Reverse(drill.diameter_mm()), drill.set().map(DrillSet::number));
    drills
        .fold(None, |best: Option<(Drill, D)>, drill| {
            let distance = away(drill.diameter_mm());
            match best {
                Some((held, least)) if least < distance || (least == distance && rank(&held) <= rank(&drill)) => best,
                _ => Some((drill, distance)),
            }
        })
        .map(|(drill, _)| drill)
}

fn nearest_by_rule(
    thread: &Thread,
    request: &TapDrillRequest,
    limits: Option<&Limits>,
) -> Result<Option<Drill>, Error> {
    // D - P speaks of the thread's own diameter; theirs is none of the pipe's, and no chart has been read.
    if matches!(thread.form(), Form::Npsc | Form::Npsm | Form::Npsf) {
        return Err(Error::new(Code::NotSourced, Field::Percent)
            .hint_text("the drills of straight NPS threads have not been read: give a percent of 1.6 P"));
    }
    let pitch = thread.pitch_mm();
    let depth = match request.tap {
        Tap::Cut => pitch,
        Tap::Form => pitch.over(Length::integer(2))?,
    };
    let hole = thread.major_mm().minus(depth)?;
    // Where the limits cut the nearest drill off, the one just inside them is next.
    let minor = limits.map_or((None, None), |limits| limits.minor_mm);
    let marks = [Some(hole), minor.0, minor.1];
    let candidates = marks.into_iter().flatten().flat_map(|mark| around(request.sets, Mark::Exact(mark)));
    let usable = candidates.filter(|drill| limits.and_then(|l| l.minor_holds(drill.diameter_mm())).unwrap_or(true));
    Ok(nearest(usable, |diameter| diameter.minus(hole).map_or(Length::integer(i64::MAX), Length::magnitude)))
}

/// One drill with its percent and its place in the limits.
fn judged(
    thread: &Thread,
    drill: Drill,
    tap: Tap,
    basis: Option<Basis>,
    limits: Option<&Limits>,
) -> Result<Alternative, Error> {
    let diameter = drill.diameter_mm();
    let within = limits.and_then(|limits| limits.minor_holds(diameter));
    Ok(Alternative {
        drill,
        percent: percent_thread(thread, diameter, tap, basis)?,
        within_limits: match within {
            None => WithinLimits::DoesNotApply,
            Some(true) => WithinLimits::Yes,
            Some(false) => WithinLimits::No,
        },
        left_to_limit_mm: limits.and_then(|limits| limits.minor_mm.1).map(|most| most.minus(diameter)).transpose()?,
    })
}

/// The two next smaller and the two next larger diameters, smallest first.
pub(super) fn beside(chosen: Drill, sets: DrillSets) -> [Option<Drill>; 4] {
    let lower = next_smaller(sets, chosen.diameter_mm());
    let upper = next_larger(sets, chosen.diameter_mm());
    [
        lower.and_then(|drill| next_smaller(sets, drill.diameter_mm())),
        lower,
        upper,
        upper.and_then(|drill| next_larger(sets, drill.diameter_mm())),
    ]
}

impl DrillSets {
    /// The sets a shop reaches for first: metric drills for M, G, R, Rp and Rc, inch drills for the others.
    #[must_use]
    pub const fn usual(form: Form) -> Self {
        match form {
            Form::Metric => Self::NONE.with(DrillSet::Metric),
            _ if form.is_whitworth() => Self::NONE.with(DrillSet::Metric),
            _ => Self::INCH,
        }
    }
}
