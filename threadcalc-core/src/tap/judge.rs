//! Whether the tap in the hand is the one for the job.

use super::chamfer::ChamferForm;
use super::closing_mm;
use super::judge_size::{of_class, of_limit, unmarked};
use super::mark::ShankMark;
use crate::depth::Hole;
use crate::error::{Code, Error, Field};
use crate::finding::{Finding, FindingId, Findings, NumberKey, OpenFindings, Severity};
use crate::length::{Length, Ratio};
use crate::range::zero_or_more;
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
    judge_tap_in(mark, job, &mut findings.open())?;
    Ok(findings)
}

/// The same, told among other findings.
pub(crate) fn judge_tap_in(mark: &ShankMark, job: &TapJob, findings: &mut OpenFindings<'_>) -> Result<(), Error> {
    if job.thread.side() == Some(Side::External) {
        return Err(Error::new(Code::Contradiction, Field::Thread).hint_text("a tap cuts internal threads"));
    }
    if let Some(room) = job.room_threads {
        zero_or_more(room, Field::RoomThreads, 1000)?;
    }
    let closing = closing_mm(&job.thread, job.plating_um)?;
    let thread = with_a_class(&job.thread, findings)?;
    of_thread(findings, mark, job);
    match mark.limit {
        Some(limit) => of_limit(findings, &thread, limit, closing, job.plating_um)?,
        None => of_class(findings, mark, &thread, closing, job.plating_um)?,
    }
    of_rest(findings, mark, job);
    Ok(())
}

/// The maker's own limits, the chamfer, and what was not understood.
#[inline(never)]
fn of_rest(findings: &mut OpenFindings<'_>, mark: &ShankMark, job: &TapJob) {
    if mark.own_limits {
        findings.push(
            Finding::new(FindingId::TapOwnLimits)
                .with_evidence("tap_mark")
                .with_suggestion("usually larger than the standard's tap of that class: gauge the first hole"),
        );
    }
    if let Some(form) = mark.chamfer {
        of_chamfer(findings, form, job);
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
}

/// The thread with its class, or the standard's medium one with the finding that says so.
#[inline(never)]
fn with_a_class(thread: &Thread, findings: &mut OpenFindings<'_>) -> Result<Thread, Error> {
    if thread.tolerance_class().is_none() && !thread.medium_internal_class().is_empty() {
        findings.push(crate::drill::class_assumed(thread));
    }
    thread.as_tapped()
}

#[inline(never)]
fn of_thread(findings: &mut OpenFindings<'_>, mark: &ShankMark, job: &TapJob) {
    if mark.hand != job.thread.hand() {
        findings.write(FindingId::TapHand, "tap_mark", |finding| {
            finding.suggest(match job.thread.hand() {
                Hand::Left => "the shank must say LH",
                Hand::Right => "a tap without LH",
            });
        });
    }
    match &mark.thread {
        None => findings.push(unmarked("no thread on the shank: measure it, or take another tap")),
        Some(tap) if !same_thread(tap, &job.thread) => other_thread(findings, tap, &job.thread.without_class()),
        Some(_) => {}
    }
    let wanted = job.wire_insert || job.thread.is_wire_insert();
    if mark.wire_insert != wanted {
        findings.write(FindingId::TapWireInsert, "tap_mark", |finding| {
            finding.suggest(if wanted { "a tap marked STI or EG" } else { "a tap without STI or EG" });
        });
    }
}

#[inline(never)]
fn other_thread(findings: &mut OpenFindings<'_>, tap: &Thread, wanted: &Thread) {
    findings.write(FindingId::TapThread, "tap_mark", |finding| {
        finding.add_number(NumberKey::PitchMm, tap.pitch_mm().to_f64());
        finding.suggest_as_written(wanted);
    });
}

/// Whether a wire insert is meant is another question.
fn same_thread(tap: &Thread, wanted: &Thread) -> bool {
    (tap.form(), tap.starts(), tap.named_by(), tap.pitch_mm())
        == (wanted.form(), wanted.starts(), wanted.named_by(), wanted.pitch_mm())
}

fn of_chamfer(findings: &mut OpenFindings<'_>, form: ChamferForm, job: &TapJob) {
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
