//! Whether a class or a limit that is marked on a tap is the one for the job.

use super::class::{IsoTapClass, iso_tap_class};
use super::limit::{TapLimit, h_limit_for_plating};
use super::mark::ShankMark;
use crate::error::{Code, Error};
use crate::finding::{Finding, FindingId, NumberKey, OpenFindings, Severity};
use crate::form::Form;
use crate::length::Length;
use crate::thread::Thread;

/// A limit says more than a class: it is numbers.
#[inline(never)]
pub(super) fn of_limit(
    findings: &mut OpenFindings<'_>,
    thread: &Thread,
    limit: TapLimit,
    closing: Length,
    plating_um: Length,
) -> Result<(), Error> {
    if !is_numbered(findings, thread, limit, closing, plating_um)? {
        return Ok(());
    }
    match class_range(thread).zip(largest_tap(thread, limit)) {
        Some((range, tap_most)) => too_large(findings, range, tap_most.minus(closing)?),
        None => {
            not_sourced(findings, "the pitch diameter limits of the class");
            Ok(())
        }
    }
}

/// Whether the limit has numbers at this size; where it has, whether they leave room for the plating.
#[inline(never)]
fn is_numbered(
    findings: &mut OpenFindings<'_>,
    thread: &Thread,
    limit: TapLimit,
    closing: Length,
    plating_um: Length,
) -> Result<bool, Error> {
    let (smallest, largest) = match limit.above_basic_mm(thread) {
        Ok(range) => range,
        Err(error) if error.code() == Code::NotSourced => {
            not_sourced(findings, error.hint());
            return Ok(false);
        }
        Err(error) => return Err(error),
    };
    if smallest.is_none_or(|smallest| smallest < closing) {
        let certain = largest < closing;
        // Without plating a tap of unknown smallest size is an ordinary one.
        if certain || closing.is_positive() || smallest.is_some() {
            let enough = h_limit_for_plating(thread, plating_um).ok();
            too_small(findings, smallest.unwrap_or(largest), closing, certain, enough);
        }
    }
    Ok(true)
}

/// A limit that leaves less than the plating closes; `enough` is the first that would do.
#[inline(never)]
fn too_small(findings: &mut OpenFindings<'_>, above: Length, closing: Length, certain: bool, enough: Option<TapLimit>) {
    findings.write(FindingId::TapTooSmall, "tap_mark", |finding| {
        finding.rate(if certain { Severity::Error } else { Severity::Warning });
        finding.add_number(NumberKey::AboveBasicMm, above.to_f64());
        finding.add_number(NumberKey::LimitMm, closing.to_f64());
        if let Some(enough) = enough {
            finding.suggest_as_written(&enough);
            finding.suggest(" or larger");
        }
    });
}

/// The largest tap of a limit, less what the plating closes, against the class.
#[inline(never)]
fn too_large(findings: &mut OpenFindings<'_>, (least, most): (Length, Length), largest: Length) -> Result<(), Error> {
    if largest > most {
        let (above, class) = (largest.minus(least)?, most.minus(least)?);
        findings.write(FindingId::TapTooLarge, "tap_mark", |finding| {
            finding.add_number(NumberKey::AboveBasicMm, above.to_f64());
            finding.add_number(NumberKey::LimitMm, class.to_f64());
        });
    }
    Ok(())
}

/// The smallest and largest pitch diameter of the thread's class, where both have been read.
#[inline(never)]
fn class_range(thread: &Thread) -> Option<(Length, Length)> {
    let (least, most) = thread.limits().ok()?.pitch_diameter_mm;
    least.zip(most)
}

#[inline(never)]
fn largest_tap(thread: &Thread, limit: TapLimit) -> Option<Length> {
    limit.pitch_diameter_mm(thread).ok().map(|(_, largest)| largest)
}

fn not_sourced(findings: &mut OpenFindings<'_>, what: &str) {
    findings.write(FindingId::LimitsNotSourced, "thread", |finding| {
        finding.rate(Severity::Info);
        finding.suggest(what);
    });
}

/// A class that is marked, or the class of ISO 2857, against the one for the job.
#[inline(never)]
pub(super) fn of_class(
    findings: &mut OpenFindings<'_>,
    mark: &ShankMark,
    thread: &Thread,
    closing: Length,
    plating_um: Length,
) -> Result<(), Error> {
    let own_sizes = thread.is_wire_insert() && closing.is_positive();
    if !thread.form().is_metric() || own_sizes {
        of_other_class(findings, mark, thread, closing);
        return Ok(());
    }
    let wanted = match thread.tolerance_class().filter(|_| thread.is_wire_insert()) {
        Some(class) => IsoTapClass::of(class.as_str()),
        None => iso_tap_class(thread, plating_um)?.class,
    };
    of_metric_class(findings, mark, thread, closing, wanted.map(IsoTapClass::number))
}

#[inline(never)]
fn of_metric_class(
    findings: &mut OpenFindings<'_>,
    mark: &ShankMark,
    thread: &Thread,
    closing: Length,
    wanted: Option<i32>,
) -> Result<(), Error> {
    match metric_rank(mark) {
        None => findings.push(unmarked("neither class nor limit")),
        Some(rank) if closing.is_positive() && wanted.is_none_or(|wanted| rank < wanted) => {
            let above = smallest_above(thread, rank)?;
            findings.push(of_closing(above, rank, wanted.is_some(), closing));
        }
        Some(rank) => of_rank(findings, rank, wanted),
    }
    Ok(())
}

#[inline(never)]
fn of_other_class(findings: &mut OpenFindings<'_>, mark: &ShankMark, thread: &Thread, closing: Length) {
    let Some(class) = mark.tolerance_class.as_ref() else {
        // The taps of BSW, BSF, BA and S are sold without a class.
        let has_class = thread.form().is_translating() || !thread.medium_internal_class().is_empty();
        let is_sold_bare = matches!(thread.form(), Form::Whitworth | Form::Ba | Form::Miniature);
        if (has_class && !is_sold_bare) || closing.is_positive() {
            findings.push(unmarked("neither class nor limit"));
        }
        return;
    };
    if let Some(wanted) = thread.tolerance_class() {
        of_grade(findings, thread.form(), class.as_str(), wanted.as_str());
    }
    if closing.is_positive() {
        findings.push(
            unmarked("plated: a class alone does not say how large the tap is, an H limit does")
                .with_number(NumberKey::LimitMm, closing.to_f64()),
        );
    }
}

/// A class by its number, or another kind of class altogether.
#[inline(never)]
fn of_grade(findings: &mut OpenFindings<'_>, form: Form, marked: &str, wanted: &str) {
    let grade = |class: &str| class.bytes().next().map_or(0, i32::from);
    let larger = grade(marked).saturating_sub(grade(wanted));
    // Of inch threads a smaller number is the looser class, of Tr a larger one.
    let looser = if form == Form::Trapezoidal { larger } else { larger.saturating_neg() };
    let letter = |class: &str| class.as_bytes().get(1).map(u8::to_ascii_uppercase);
    let same_kind = !matches!(form, Form::Acme | Form::Miniature) || letter(marked) == letter(wanted);
    if !same_kind {
        findings.push(
            Finding::new(FindingId::TapClass)
                .with_severity(Severity::Warning)
                .with_evidence("tap_mark")
                .with_suggestion("another kind of class than the job's, with other limits"),
        );
    } else if looser != 0 {
        findings.push(other_class(if looser > 0 { Severity::Error } else { Severity::Info }));
    }
}

/// 1 to 3 by ISO 2857, 4 beyond it.
fn metric_rank(mark: &ShankMark) -> Option<i32> {
    let of_class = |class: &str| match IsoTapClass::of(class) {
        Some(class) => Some(class.number()),
        None => matches!(class, "7G" | "8G").then_some(4),
    };
    let marked = mark.tolerance_class.as_ref().and_then(|class| of_class(class.as_str()));
    marked.or(mark.iso_class.map(|class| class.number()))
}

/// How much the smallest tap of a class is above the basic pitch diameter; None for a larger tap than the classes
/// have, or one whose size has not been read.
fn smallest_above(thread: &Thread, rank: i32) -> Result<Option<Length>, Error> {
    match IsoTapClass::from_number(rank).map(|class| class.smallest_above_mm(thread)) {
        Some(Err(error)) if error.code() == Code::NotSourced => Ok(None),
        above => above.transpose(),
    }
}

/// A class that the plating asks more of: too small where the smallest tap of it closes below GO.
#[inline(never)]
fn of_closing(above: Option<Length>, rank: i32, has_class: bool, closing: Length) -> Finding {
    let too_small = above.is_none_or(|above| above < closing) && rank < 4;
    let finding = if too_small {
        Finding::new(FindingId::TapTooSmall)
    } else {
        Finding::new(FindingId::TapClass).with_severity(Severity::Warning)
    };
    let finding = above.map_or(finding, |above| finding.with_number(NumberKey::AboveBasicMm, above.to_f64()));
    finding.with_evidence("tap_mark").with_number(NumberKey::LimitMm, closing.to_f64()).with_suggestion(if has_class {
        "a tap of the next class of ISO 2857, such as 6G for 6H after plating"
    } else {
        "a special tap, larger by the closing of the plating"
    })
}

/// A class beside the one that is wanted, without a plating or above what it asks.
#[inline(never)]
fn of_rank(findings: &mut OpenFindings<'_>, rank: i32, wanted: Option<i32>) {
    match wanted.map(|wanted| rank.saturating_sub(wanted)) {
        None => findings.push(no_class()),
        Some(0) => {}
        Some(..=-1) => findings.push(other_class(Severity::Info)),
        Some(1) => findings.push(other_class(Severity::Warning)),
        Some(_) => findings.push(other_class(Severity::Error)),
    }
}

fn other_class(severity: Severity) -> Finding {
    Finding::new(FindingId::TapClass).with_severity(severity).with_evidence("tap_mark").with_suggestion(
        if severity == Severity::Info {
            "smaller than need be: it gauges, and wears out sooner"
        } else {
            "larger than the class wants: NOT GO may enter"
        },
    )
}

/// No class of ISO 2857 is for it: a plating too thick for position G, or a class 7G or 8G.
fn no_class() -> Finding {
    Finding::new(FindingId::TapClass).with_evidence("thread").with_suggestion("no class of ISO 2857 is for this thread")
}

pub(super) fn unmarked(suggestion: &str) -> Finding {
    Finding::new(FindingId::TapUnmarked).with_evidence("tap_mark").with_suggestion(suggestion)
}
