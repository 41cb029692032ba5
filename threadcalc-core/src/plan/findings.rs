//! What a plan finds doubtful or wrong.

use super::{MOST_PLAN_FINDINGS, Machine};
use crate::feed::{Feed, FeedMode};
use crate::finding::{Finding, FindingId, Findings, NumberKey, Severity};
use crate::form::Form;
use crate::length::{Length, Ratio};
use crate::limits::Limits;
use crate::motion::Holder;
use crate::profile::axial_on_pitch_diameter_e3;
use crate::thread::Thread;

pub(super) fn dialect_unset() -> Finding {
    Finding::new(FindingId::DialectUnset)
        .with_evidence("dialect")
        .with_suggestion("rs274ngc, or the fields of your control's own")
}

#[inline(never)]
pub(super) fn of_thread(findings: &mut Findings<MOST_PLAN_FINDINGS>, thread: &Thread) {
    if thread.starts() > 1 {
        findings.push(
            Finding::new(FindingId::MultiStart)
                .with_evidence("thread")
                .with_number(NumberKey::Starts, f64::from(thread.starts()))
                .with_number(NumberKey::LeadMm, thread.lead_mm().to_f64())
                .with_number(NumberKey::PitchMm, thread.pitch_mm().to_f64()),
        );
    }
    if thread.form().is_translating() {
        // Up to here a tap with a long chamfer does it in soft material (common practice).
        let is_small = thread.pitch_mm() <= Length::integer(2);
        findings.push(
            Finding::new(FindingId::DeepProfile)
                .with_severity(if is_small { Severity::Info } else { Severity::Warning })
                .with_evidence("thread")
                .with_number(NumberKey::PitchMm, thread.pitch_mm().to_f64())
                .with_suggestion("a set of taps, each started in the thread of the one before, or a single point"),
        );
    }
}

#[inline(never)]
pub(super) fn of_speed(
    findings: &mut Findings<MOST_PLAN_FINDINGS>,
    machine: &Machine,
    asked: Ratio,
    programmed: Ratio,
) {
    if asked == programmed {
        return;
    }
    // A step of the control is nothing; a machine too slow for the job is worth a look.
    let cut = machine.highest_rpm.is_some_and(|highest| highest < asked);
    findings.push(
        Finding::new(FindingId::SpeedRounded)
            .with_severity(if cut { Severity::Warning } else { Severity::Info })
            .with_evidence("rpm")
            .with_number(NumberKey::AskedRpm, asked.to_f64())
            .with_number(NumberKey::SpeedRpm, programmed.to_f64()),
    );
}

/// Relative errors by holder: doubtful from here on; wrong from there on, too long and too short. Judgement of
/// the trade: 0.1 % and 0.5 % where nothing gives; 1 %, 3 % and 6 % where the holder gives.
const fn lead_limits(holder: Holder) -> (Length, Length, Length) {
    const RIGID: [Length; 2] = [Length::parts(1, 1_000), Length::parts(5, 1_000)];
    const GIVING: [Length; 3] = [Length::parts(1, 100), Length::parts(3, 100), Length::parts(6, 100)];
    match (holder, RIGID, GIVING) {
        (Holder::Rigid, [doubtful, wrong], _) => (doubtful, wrong, wrong),
        (Holder::TensionCompression | Holder::Floating, _, [doubtful, too_long, too_short]) => {
            (doubtful, too_long, too_short)
        }
    }
}

/// Shares of the pitch-diameter tolerance that a lead error may take: doubtful, wrong (judgement).
const DOUBTFUL_SHARE: f64 = 0.2;
const WRONG_SHARE: f64 = 0.5;

#[inline(never)]
pub(super) fn of_feed(
    findings: &mut Findings<MOST_PLAN_FINDINGS>,
    feed: &Feed,
    form: Form,
    holder: Holder,
    (lead_error, axial_error): (Ratio, Length),
    limits: Option<&Limits>,
) {
    let (doubtful, too_long, too_short) = lead_limits(holder);
    let size = lead_error.magnitude();
    let wrong = if lead_error.is_negative() { too_short } else { too_long };
    // Only where nothing gives does the error go into the flanks.
    let tolerance = limits.and_then(|limits| {
        let (low, high) = limits.pitch_diameter_mm;
        high?.minus_to_f64(low?).ok()
    });
    let share = match tolerance {
        Some(tolerance) if holder == Holder::Rigid => {
            axial_error.magnitude().to_f64() * (f64::from(axial_on_pitch_diameter_e3(form)) / 1000.0) / tolerance
        }
        _ => 0.0,
    };
    let severity = if size >= wrong || share >= WRONG_SHARE {
        Severity::Error
    } else if size >= doubtful || share >= DOUBTFUL_SHARE {
        Severity::Warning
    } else {
        return;
    };
    findings.push(
        Finding::new(FindingId::FeedRounded)
            .with_severity(severity)
            .with_evidence("decimals")
            .with_number(NumberKey::LeadError, lead_error.to_f64())
            .with_number(NumberKey::AxialErrorMm, axial_error.to_f64())
            .with_suggestion(match feed.mode() {
                FeedMode::PerMinute => "more decimals, or a speed whose feed is exact",
                FeedMode::PerRevolution => "more decimals",
            }),
    );
}
