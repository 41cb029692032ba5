//! Whether the tap in the hand is the one for the job.

use super::chamfer::ChamferForm;
use super::class::{IsoTapClass, iso_tap_class};
use super::closing_mm;
use super::limit::{TapLimit, h_limit_for_plating};
use super::mark::ShankMark;
use crate::depth::Hole;
use crate::error::{Code, Error, Field};
use crate::finding::{Finding, FindingId, Findings, NumberKey, Severity};
use crate::form::Form;
use crate::length::{Length, Ratio};
use crate::range::zero_or_more;
use crate::text::Text;
use crate::thread::{Hand, Side, Thread};

/// How many findings a tap can have.
const MOST_TAP_FINDINGS: usize = 12;

/// What a tap is wanted for.
#[derive(Clone, Copy, Debug)]
pub struct TapJob {
    /// The thread; without a class it is judged by the standard's medium class.
    pub thread: Thread,
    /// Thickness of a plating that the thread is gauged after, in µm; 0 without.
    pub plating_um: Length,
    /// Through or blind, if it is known.
    pub hole: Option<Hole>,
    /// Threads of room for the chamfer, if they are known; see [`ChamferForm::fits`].
    pub room_threads: Option<Ratio>,
    /// Whether the hole is for a wire insert; a thread that is one says so itself.
    pub wire_insert: bool,
}

/// Compares what stands on a shank with the job.
///
/// | finding | when |
/// |---|---|
/// | `tap-hand` | the hand differs |
/// | `tap-thread`, `tap-wire-insert` | form, size, pitch or starts differ; a wire insert is wanted or not |
/// | `tap-class` | the class marked is not that of the job: error where it is two classes larger or a looser UN class, warning where it is one larger, info where it is smaller |
/// | `tap-too-small` | the limit or the class leaves no room for the plating; warning where that is not certain |
/// | `tap-too-large` | the largest tap of the limit is above the class, where the class's limits have been read |
/// | `tap-unmarked` | no thread, or neither class nor limit; with plating, no limit |
/// | `tap-own-limits` | `6HX` |
/// | `tap-chamfer` | form B in a blind hole, or less room than the longest chamfer |
/// | `class-assumed`, `limits-not-sourced`, `not-read` | as their names say |
///
/// A tap cuts a little larger than it is; what comes of that only the gauge says.
///
/// # Errors
/// [`Code::OutOfRange`] for a plating outside 0 to 1000 µm or negative room; [`Code::Contradiction`] for an
/// external thread; [`Code::Overflow`].
///
/// # Example
/// ```
/// use threadcalc_core::{FindingId, Length, TapJob, Thread, judge_tap, read_shank_mark};
///
/// let job = TapJob {
///     thread: Thread::read(b"M10x1-6H-LH")?,
///     plating_um: Length::ZERO,
///     hole: None,
///     room_threads: None,
///     wire_insert: false,
/// };
/// let findings = judge_tap(&read_shank_mark(b"M10x1 6H HSS-E")?, &job)?;
/// assert!(findings.iter().any(|finding| finding.id() == FindingId::TapHand));
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// ISO 2857 and ASME B94.9, from memory; which severity: judgement.
pub fn judge_tap(mark: &ShankMark, job: &TapJob) -> Result<Findings<MOST_TAP_FINDINGS>, Error> {
    let mut findings = Findings::new();
    if job.thread.side() == Some(Side::External) {
        return Err(Error::new(Code::Contradiction, Field::Thread).hint_text("a tap cuts internal threads"));
    }
    if let Some(room) = job.room_threads {
        zero_or_more(room, Field::RoomThreads, 1000)?;
    }
    let closing = closing_mm(&job.thread, job.plating_um)?;
    let thread = with_a_class(&job.thread, &mut findings)?;
    of_thread(&mut findings, mark, job);
    match mark.limit {
        Some(limit) => of_limit(&mut findings, &thread, limit, closing, job.plating_um)?,
        None => of_class(&mut findings, mark, &thread, closing, job.plating_um)?,
    }
    if mark.own_limits {
        findings.push(
            Finding::new(FindingId::TapOwnLimits)
                .with_evidence("tap_mark")
                .with_suggestion("usually larger than the standard's tap of that class: gauge the first hole"),
        );
    }
    if let Some(form) = mark.chamfer {
        of_chamfer(&mut findings, form, job);
    }
    if let Some((at, length)) = mark.not_read {
        findings.push(
            Finding::new(FindingId::NotRead)
                .with_severity(Severity::Info)
                .with_evidence("tap_mark")
                .with_number(NumberKey::Byte, at as f64)
                .with_number(NumberKey::Length, length as f64),
        );
    }
    Ok(findings)
}

/// The thread with its class, or the standard's medium one with the finding that says so.
fn with_a_class(thread: &Thread, findings: &mut Findings<MOST_TAP_FINDINGS>) -> Result<Thread, Error> {
    if thread.tolerance_class().is_none() && !thread.medium_internal_class().is_empty() {
        findings.push(crate::drill::class_assumed(thread));
    }
    thread.as_tapped()
}

fn of_thread(findings: &mut Findings<MOST_TAP_FINDINGS>, mark: &ShankMark, job: &TapJob) {
    if mark.hand != job.thread.hand() {
        findings.push(Finding::new(FindingId::TapHand).with_evidence("tap_mark").with_suggestion(
            match job.thread.hand() {
                Hand::Left => "the shank must say LH",
                Hand::Right => "a tap without LH",
            },
        ));
    }
    match mark.thread {
        None => findings.push(unmarked("no thread on the shank: measure it, or take another tap")),
        Some(tap) if !same_thread(&tap, &job.thread) => findings.push(
            Finding::new(FindingId::TapThread)
                .with_evidence("tap_mark")
                .with_number(NumberKey::PitchMm, tap.pitch_mm().to_f64())
                .with_suggestion(written(&job.thread.without_class()).as_str()),
        ),
        Some(_) => {}
    }
    let wanted = job.wire_insert || job.thread.is_wire_insert();
    if mark.wire_insert != wanted {
        findings.push(Finding::new(FindingId::TapWireInsert).with_evidence("tap_mark").with_suggestion(if wanted {
            "a tap marked STI or EG"
        } else {
            "a tap without STI or EG"
        }));
    }
}

/// Whether a wire insert is meant is another question.
fn same_thread(tap: &Thread, wanted: &Thread) -> bool {
    (tap.form(), tap.starts(), tap.named_by(), tap.pitch_mm())
        == (wanted.form(), wanted.starts(), wanted.named_by(), wanted.pitch_mm())
}

fn written(thread: &Thread) -> Text<96> {
    use core::fmt::Write;
    let mut text = Text::new();
    // No designation is longer than the room.
    let _fits = write!(text, "{thread}");
    text
}

fn unmarked(suggestion: &str) -> Finding {
    Finding::new(FindingId::TapUnmarked).with_evidence("tap_mark").with_suggestion(suggestion)
}

/// A limit says more than a class: it is numbers.
#[inline(never)]
fn of_limit(
    findings: &mut Findings<MOST_TAP_FINDINGS>,
    thread: &Thread,
    limit: TapLimit,
    closing: Length,
    plating_um: Length,
) -> Result<(), Error> {
    let (smallest, largest) = match limit.above_basic_mm(thread) {
        Ok(range) => range,
        Err(error) if error.code() == Code::NotSourced => {
            findings.push(not_sourced(error.hint()));
            return Ok(());
        }
        Err(error) => return Err(error),
    };
    if smallest.is_none_or(|smallest| smallest < closing) {
        let certain = largest < closing;
        // Without plating a tap of unknown smallest size is an ordinary one.
        if certain || closing.is_positive() || smallest.is_some() {
            let mut finding = Finding::new(FindingId::TapTooSmall)
                .with_severity(if certain { Severity::Error } else { Severity::Warning })
                .with_evidence("tap_mark")
                .with_number(NumberKey::AboveBasicMm, smallest.unwrap_or(largest).to_f64())
                .with_number(NumberKey::LimitMm, closing.to_f64());
            if let Ok(enough) = h_limit_for_plating(thread, plating_um) {
                use core::fmt::Write;
                let mut text = Text::<96>::new();
                let _fits = write!(text, "{enough} or larger");
                finding = finding.with_suggestion(text.as_str());
            }
            findings.push(finding);
        }
    }
    let limits = thread.limits().map(|limits| limits.pitch_diameter_mm);
    let (Ok((Some(class_least), Some(class_most))), Ok((_, tap_most))) = (limits, limit.pitch_diameter_mm(thread))
    else {
        findings.push(not_sourced("the pitch diameter limits of the class"));
        return Ok(());
    };
    let left = tap_most.minus(closing)?;
    if left > class_most {
        findings.push(
            Finding::new(FindingId::TapTooLarge)
                .with_evidence("tap_mark")
                .with_number(NumberKey::AboveBasicMm, left.minus(class_least)?.to_f64())
                .with_number(NumberKey::LimitMm, class_most.minus(class_least)?.to_f64()),
        );
    }
    Ok(())
}

fn not_sourced(what: &str) -> Finding {
    Finding::new(FindingId::LimitsNotSourced)
        .with_severity(Severity::Info)
        .with_evidence("thread")
        .with_suggestion(what)
}

/// A class that is marked, or the class of ISO 2857, against the one for the job.
#[inline(never)]
fn of_class(
    findings: &mut Findings<MOST_TAP_FINDINGS>,
    mark: &ShankMark,
    thread: &Thread,
    closing: Length,
    plating_um: Length,
) -> Result<(), Error> {
    let marked = mark.tolerance_class.as_ref().map(|class| class.as_str());
    let own_sizes = thread.is_wire_insert() && closing.is_positive();
    if thread.form().is_metric() && !own_sizes {
        let wanted = match thread.tolerance_class().filter(|_| thread.is_wire_insert()) {
            Some(class) => IsoTapClass::of(class.as_str()),
            None => iso_tap_class(thread, plating_um)?.class,
        };
        let Some(rank) = metric_rank(mark) else {
            findings.push(unmarked("neither class nor limit"));
            return Ok(());
        };
        let wanted = wanted.map(IsoTapClass::number);
        if closing.is_positive() && wanted.is_none_or(|wanted| rank < wanted) {
            findings.push(of_closing(thread, rank, wanted.is_some(), closing)?);
        } else {
            findings.extend(&of_rank(rank, wanted));
        }
        return Ok(());
    }
    let Some(class) = marked else {
        // The taps of BSW, BSF, BA and S are sold without a class.
        let has_class = thread.form().is_translating() || !thread.medium_internal_class().is_empty();
        let is_sold_bare = matches!(thread.form(), Form::Whitworth | Form::Ba | Form::Miniature);
        if (has_class && !is_sold_bare) || closing.is_positive() {
            findings.push(unmarked("neither class nor limit"));
        }
        return Ok(());
    };
    if let Some(wanted) = thread.tolerance_class() {
        findings.extend(&of_grade(thread.form(), class, wanted.as_str()));
    }
    if closing.is_positive() {
        findings.push(
            unmarked("plated: a class alone does not say how large the tap is, an H limit does")
                .with_number(NumberKey::LimitMm, closing.to_f64()),
        );
    }
    Ok(())
}

/// A class by its number, or another kind of class altogether.
fn of_grade(form: Form, marked: &str, wanted: &str) -> Findings<1> {
    let mut findings = Findings::new();
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
    findings
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

/// A class that the plating asks more of: too small where the smallest tap of it closes below GO.
fn of_closing(thread: &Thread, rank: i32, has_class: bool, closing: Length) -> Result<Finding, Error> {
    let above = match IsoTapClass::from_number(rank).map(|class| class.pitch_diameter_mm(thread)) {
        Some(Ok((smallest, _))) => Some(smallest.minus(thread.basic_pitch_diameter_mm()?)?),
        Some(Err(error)) if error.code() != Code::NotSourced => return Err(error),
        // A larger tap than the classes have, or one whose size has not been read.
        _ => None,
    };
    let too_small = above.is_none_or(|above| above < closing) && rank < 4;
    let finding = if too_small {
        Finding::new(FindingId::TapTooSmall)
    } else {
        Finding::new(FindingId::TapClass).with_severity(Severity::Warning)
    };
    let finding = above.map_or(finding, |above| finding.with_number(NumberKey::AboveBasicMm, above.to_f64()));
    Ok(finding.with_evidence("tap_mark").with_number(NumberKey::LimitMm, closing.to_f64()).with_suggestion(
        if has_class {
            "a tap of the next class of ISO 2857, such as 6G for 6H after plating"
        } else {
            "a special tap, larger by the closing of the plating"
        },
    ))
}

/// A class beside the one that is wanted, without a plating or above what it asks.
fn of_rank(rank: i32, wanted: Option<i32>) -> Findings<1> {
    let mut findings = Findings::new();
    match wanted.map(|wanted| rank.saturating_sub(wanted)) {
        None => findings.push(no_class()),
        Some(0) => {}
        Some(..=-1) => findings.push(other_class(Severity::Info)),
        Some(1) => findings.push(other_class(Severity::Warning)),
        Some(_) => findings.push(other_class(Severity::Error)),
    }
    findings
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

fn of_chamfer(findings: &mut Findings<MOST_TAP_FINDINGS>, form: ChamferForm, job: &TapJob) {
    let longest = form.threads().1;
    let hole = job.hole.unwrap_or(Hole::Through);
    let room = job.room_threads.unwrap_or(longest);
    if form.fits(hole, room) {
        return;
    }
    let mut finding = Finding::new(FindingId::TapChamfer)
        .with_evidence("tap_mark")
        .with_number(NumberKey::ChamferThreads, longest.to_f64());
    if let Some(room) = job.room_threads {
        finding = finding.with_number(NumberKey::RoomThreads, room.to_f64());
    }
    findings.push(finding.with_suggestion(match form {
        ChamferForm::B => "form B drives the chips to the bottom of a blind hole",
        _ => "a shorter chamfer, or a deeper hole",
    }));
}
