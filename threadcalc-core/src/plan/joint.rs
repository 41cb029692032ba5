//! What the screw and the planned hole carry together.

use super::{Job, MOST_PLAN_FINDINGS};
use crate::depth::Countersunk;
use crate::drill::{TapDrill, WithinLimits};
use crate::engagement::{Engagement, EngagementRequest, Weakest, engagement};
use crate::error::{Code, Error, Field};
use crate::finding::{Finding, FindingId, Findings, NumberKey, Severity};
use crate::form::Form;
use crate::length::Length;
use crate::thread::Thread;

/// Shear strength of steel over its tensile strength (common practice).
const SHEAR_OF_TENSILE: f64 = 0.6;

/// The joint, if the job speaks of a screw.
#[inline(never)]
pub(super) fn joint(
    thread: &Thread,
    job: &Job,
    drill: &TapDrill,
    countersink: Option<&Countersunk>,
    findings: &mut Findings<MOST_PLAN_FINDINGS>,
) -> Result<Option<Engagement>, Error> {
    let Some(screw) = job.screw else { return Ok(None) };
    let missing = |field, hint| Error::new(Code::Missing, field).hint_text(hint);
    let part_shear = job.part_shear_mpa.ok_or(missing(Field::PartShear, "shear strength of the tapped part in MPa"))?;
    let starting = screw.property_class.map(|class| class.starting_strength());
    let tensile = screw.tensile_mpa.map(Length::to_f64).or(starting.map(|class| class.tensile_mpa));
    let tensile =
        tensile.ok_or(missing(Field::ScrewTensile, "tensile strength of the screw in MPa, or its property class"))?;
    let shear = screw.shear_mpa.map_or(tensile * SHEAR_OF_TENSILE, Length::to_f64);
    if screw.tensile_mpa.is_none() || screw.shear_mpa.is_none() {
        findings.push(
            Finding::new(FindingId::StrengthAssumed)
                .with_severity(Severity::Info)
                .with_evidence("screw")
                .with_number(NumberKey::TensileMpa, tensile)
                .with_number(NumberKey::ShearMpa, shear),
        );
    }
    let medium: &[u8] = if thread.form() == Form::Metric { b"6g" } else { b"2A" };
    let class = screw.tolerance_class.as_ref().map_or(medium, |class| class.as_str().as_bytes());
    let external =
        if thread.form().is_pipe() { *thread } else { thread.without_class().with_class(class).map_err(of_class)? };
    let request = EngagementRequest {
        length_mm: screw.engagement_mm.or(job.full_thread_depth_mm).unwrap_or(Length::ZERO),
        // The screw does not hold where the countersink has taken the thread; to the nanometre, upwards.
        without_full_thread_mm: countersink.map_or(Ok(Length::ZERO), |sunk| {
            Length::new(libm::ceil(sunk.full_thread_lost_mm * 1e6) as i64, 1_000_000)
        })?,
        internal_shear_mpa: part_shear.to_f64(),
        external_shear_mpa: shear,
        external_tensile_mpa: tensile,
        // Outside the limits there is a finding already, and the limits are the better ground.
        drilled_mm: (drill.chosen.within_limits == WithinLimits::Yes).then(|| drill.chosen.drill.diameter_mm()),
        load_n: screw.load_n.map(Length::to_f64),
    };
    let found = engagement(thread, &external, &request).map_err(of_job)?;
    of_joint(&found, findings);
    Ok(Some(found))
}

fn of_class(error: Error) -> Error {
    error.about(Field::ScrewClass)
}

/// The engagement's fields by their names in a job.
fn of_job(error: Error) -> Error {
    error.about(match error.field() {
        Field::EngagementLength => Field::ScrewEngagement,
        Field::InternalShear => Field::PartShear,
        Field::ExternalShear => Field::ScrewShear,
        Field::ExternalTensile => Field::ScrewTensile,
        Field::Load => Field::ScrewLoad,
        Field::WithoutFullThread => Field::Countersink,
        other => other,
    })
}

fn of_joint(found: &Engagement, findings: &mut Findings<MOST_PLAN_FINDINGS>) {
    if found.weakest != Weakest::Screw {
        findings.push(
            Finding::new(FindingId::ThreadStripsFirst)
                .with_evidence("screw")
                .with_number(NumberKey::RequiredLengthMm, found.required_length_mm)
                .with_number(NumberKey::StripRatio, found.strip_ratio)
                .with_suggestion(if found.weakest == Weakest::Internal {
                    "the hole's threads"
                } else {
                    "the screw's threads"
                }),
        );
    }
    if let Some(factor) = found.safety_factor.filter(|factor| *factor < 1.0) {
        findings.push(
            Finding::new(FindingId::LoadTooHigh)
                .with_evidence("screw.load_n")
                .with_number(NumberKey::SafetyFactor, factor),
        );
    }
}
