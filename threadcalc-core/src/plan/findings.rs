//! What a plan finds doubtful or wrong.

use crate::depth::{Depths, Hole};
use crate::drill::DrillSets;
use crate::feed::FeedMode;
use crate::finding::{Finding, FindingId, Findings, NumberKey, Severity};
use crate::length::{Length, Ratio};
use crate::plan::Machine;
use crate::thread::Thread;

/// Relative lead errors for a rigid holder: from here on it is doubtful, from there on wrong.
/// Judgement of the trade, 0.1 % and 0.5 %.
const DOUBTFUL_LEAD: (u32, u32) = (1, 1_000);
const WRONG_LEAD: (u32, u32) = (5, 1_000);
/// Deeper than this many diameters a tapped hole needs care (common practice).
const DEEP_DIAMETERS: i64 = 3;

/// Fills in what the job leaves open, with the finding that says so.
pub(super) fn assume(slot: &mut Option<Length>, usual: Length, notes: &mut Findings, id: FindingId) -> Length {
    let (key, evidence) = match id {
        FindingId::ChamferAssumed => (NumberKey::ChamferThreads, "chamfer_threads"),
        FindingId::PointAngleAssumed => (NumberKey::PointAngleDeg, "point_angle_deg"),
        FindingId::BottomClearanceAssumed => (NumberKey::BottomClearanceMm, "bottom_clearance_mm"),
        _ => (NumberKey::RPlaneMm, "r_plane_mm"),
    };
    *slot.get_or_insert_with(|| {
        notes.push(Finding::new(id).with_evidence(evidence).with_number(key, usual.to_f64()));
        usual
    })
}

pub(super) fn external_class(thread: &Thread) -> Finding {
    Finding::new(FindingId::ExternalClass).with_evidence("thread").with_suggestion(thread.medium_internal_class())
}

pub(super) fn dialect_unset() -> Finding {
    Finding::new(FindingId::DialectUnset)
        .with_evidence("dialect")
        .with_suggestion("rs274ngc, or the fields of your control's own")
}

pub(super) fn drill_sets_assumed(thread: &Thread) -> Finding {
    Finding::new(FindingId::DrillSetsAssumed).with_evidence("drill_sets").with_suggestion(
        if DrillSets::usual(thread.form()) == DrillSets::INCH { "number, letter and fractional" } else { "metric" },
    )
}

pub(super) fn of_thread(findings: &mut Findings, thread: &Thread) {
    if thread.starts() > 1 {
        findings.push(
            Finding::new(FindingId::MultiStart)
                .with_evidence("thread")
                .with_number(NumberKey::Starts, f64::from(thread.starts()))
                .with_number(NumberKey::LeadMm, thread.lead_mm().to_f64())
                .with_number(NumberKey::PitchMm, thread.pitch_mm().to_f64()),
        );
    }
}

pub(super) fn of_speed(findings: &mut Findings, machine: &Machine, asked: Ratio, programmed: Ratio) {
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

pub(super) fn of_feed(findings: &mut Findings, mode: FeedMode, lead_error: Ratio, axial_error: Length) {
    let size = lead_error.magnitude();
    let severity = if size >= Length::parts(WRONG_LEAD.0, WRONG_LEAD.1) {
        Severity::Error
    } else if size >= Length::parts(DOUBTFUL_LEAD.0, DOUBTFUL_LEAD.1) {
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
            .with_suggestion(match mode {
                FeedMode::PerMinute => "more decimals, or a speed whose feed is exact",
                FeedMode::PerRevolution => "more decimals",
            }),
    );
}

pub(super) fn of_depth(findings: &mut Findings, thread: &Thread, depth: Length, depths: &Depths, hole: Hole) {
    let deep = thread.major_mm().times(Length::integer(DEEP_DIAMETERS)).is_ok_and(|limit| depth > limit);
    if deep {
        findings.push(
            Finding::new(FindingId::DeepThread)
                .with_evidence("full_thread_depth_mm")
                .with_number(NumberKey::Diameters, depth.to_f64() / thread.major_mm().to_f64()),
        );
    }
    if hole == Hole::Through {
        let below = depths.tap_mm.minus(depth).map_or(f64::NAN, Length::to_f64);
        findings
            .push(Finding::new(FindingId::TapComesOut).with_evidence("hole").with_number(NumberKey::BelowMm, below));
    }
}
