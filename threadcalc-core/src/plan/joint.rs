//! What the screw and the planned hole carry together.

use super::parts::Parts;
use super::{Job, MOST_PLAN_FINDINGS, Screw};
use crate::depth::Countersunk;
use crate::drill::{TapDrill, WithinLimits};
use crate::engagement::{
    Engagement, EngagementRequest, STRENGTHS_MPA, StartingStrength, Weakest, carries_a_screw, engagement,
};
use crate::error::{Code, Error, Field};
use crate::finding::{Finding, FindingId, Findings, NumberKey, Severity};
use crate::form::Form;
use crate::length::Length;
use crate::thread::{Side, Thread};

/// Where the shear strength is from of a screw whose tensile strength alone is given.
pub(super) const OWN_TENSILE: &str = "shear 0.6 of the tensile strength, common practice";

/// The joint, if the job speaks of a screw.
#[inline(never)]
pub(super) fn of_screw(parts: &mut Parts<'_>, job: &Job) -> Result<(), Error> {
    parts.joint = joint(parts.thread, job, parts.drill, parts.countersink.as_ref(), &mut parts.findings)?;
    Ok(())
}

fn joint(
    thread: &Thread,
    job: &Job,
    drill: &TapDrill,
    countersink: Option<&Countersunk>,
    findings: &mut Findings<MOST_PLAN_FINDINGS>,
) -> Result<Option<Engagement>, Error> {
    let Some(screw) = job.screw else {
        return match job.part_shear_mpa {
            None => Ok(None),
            Some(_) => Err(Error::new(Code::Missing, Field::ScrewTensile)
                .hint_text("part_shear_mpa is one side of a joint: say the screw's strength too, or leave it out")),
        };
    };
    carries_a_screw(thread).map_err(|error| {
        error.about(Field::Thread).hint_text(match thread.form() {
            _ if thread.is_wire_insert() => "the insert carries: its maker says what it holds; leave the screw out",
            form if form.is_pipe() => {
                "a pipe thread seals or holds a fitting; a screw goes into M or UN: leave the screw out"
            }
            _ => "what M, MJ, UN and UNJ carry is computed, and of no other thread: leave the screw out",
        })
    })?;
    let part_shear = part_shear(job, findings)?;
    let screw_strength = screw_strength(thread, &screw, findings)?;
    engaged(&screw, job)?;
    let found = found(thread, job, &screw, drill, countersink, part_shear, screw_strength);
    match found {
        Ok(found) => {
            of_joint(&found, findings);
            Ok(Some(found))
        }
        // The plan stands without its joint.
        Err(error) if error.code() == Code::NotSourced => {
            findings.write(FindingId::JointLeftOut, "screw", |finding| finding.suggest(error.hint()));
            Ok(None)
        }
        Err(error) => Err(of_job(error, job)),
    }
}

/// The screw of the job in the planned hole.
#[inline(never)]
fn found(
    thread: &Thread,
    job: &Job,
    screw: &Screw,
    drill: &TapDrill,
    countersink: Option<&Countersunk>,
    part_shear: f64,
    screw_strength: StartingStrength,
) -> Result<Engagement, Error> {
    let request = EngagementRequest {
        length_mm: screw.engagement_mm.or(job.full_thread_depth_mm).unwrap_or(Length::ZERO),
        // The screw does not hold where the countersink has taken the thread; to the nanometre, upwards.
        without_full_thread_mm: countersink.map_or(Ok(Length::ZERO), |sunk| {
            Length::new(libm::ceil(sunk.full_thread_lost_mm * 1e6) as i64, 1_000_000)
        })?,
        internal_shear_mpa: part_shear,
        external_shear_mpa: screw_strength.shear_mpa,
        external_tensile_mpa: screw_strength.tensile_mpa,
        // Outside the limits there is a finding already, and the limits are the better ground.
        drilled_mm: (drill.chosen.within_limits == WithinLimits::Yes).then(|| drill.chosen.drill.diameter_mm()),
        load_n: screw.load_n.map(Length::to_f64),
    };
    engagement(thread, &external(thread, screw)?, &request)
}

/// The screw's thread, of its own class or of the usual one.
#[inline(never)]
fn external(thread: &Thread, screw: &Screw) -> Result<Thread, Error> {
    let class = screw.tolerance_class.as_ref().map_or(medium(thread.form()), |class| class.as_str().as_bytes());
    let external = thread.without_class().with_class(class).map_err(of_class)?;
    if external.side() == Some(Side::Internal) {
        return Err(Error::new(Code::Contradiction, Field::ScrewClass)
            .hint_text("a class of the screw, such as 6g or 2A; the hole's class stands in the thread"));
    }
    Ok(external)
}

/// The class that a screw usually has: ISO 965-1 and ASME B1.1; of MJ and UNJ from memory.
const fn medium(form: Form) -> &'static [u8] {
    match form {
        Form::Metric => b"6g",
        Form::MetricJ => b"4h6h",
        Form::UnifiedJ => b"3A",
        _ => b"2A",
    }
}

/// Shear strength of the tapped part in MPa: the job's, or its material's to start from.
#[inline(never)]
fn part_shear(job: &Job, findings: &mut Findings<MOST_PLAN_FINDINGS>) -> Result<f64, Error> {
    if let Some(shear) = job.part_shear_mpa {
        return Ok(shear.to_f64());
    }
    let missing = Error::new(Code::Missing, Field::PartShear);
    let material =
        job.material.ok_or(missing.hint_text("shear strength of the tapped part in MPa, or its material"))?;
    let starting = material.starting_strength();
    findings.push(assumed(&starting, "part_shear_mpa"));
    Ok(starting.shear_mpa)
}

/// Strengths of the screw in MPa: the job's, or its property class's to start from.
#[inline(never)]
fn screw_strength(
    thread: &Thread,
    screw: &Screw,
    findings: &mut Findings<MOST_PLAN_FINDINGS>,
) -> Result<StartingStrength, Error> {
    let mut strength = match (screw.tensile_mpa, screw.property_class) {
        (Some(tensile), _) => {
            let tensile =
                crate::range::within(tensile.to_f64(), Field::ScrewTensile, STRENGTHS_MPA.0, STRENGTHS_MPA.1)?;
            StartingStrength::of_tensile(tensile, OWN_TENSILE)
        }
        (None, Some(class)) => {
            class.starting_strength(thread.major_mm()).map_err(|error| error.about(Field::ScrewProperty))?
        }
        (None, None) => {
            return Err(Error::new(Code::Missing, Field::ScrewTensile)
                .hint_text("tensile strength of the screw in MPa, or its property class"));
        }
    };
    if let Some(shear) = screw.shear_mpa {
        strength.shear_mpa = shear.to_f64();
    }
    if screw.tensile_mpa.is_none() || screw.shear_mpa.is_none() {
        findings.push(assumed(&strength, "screw"));
    }
    Ok(strength)
}

fn assumed(strength: &StartingStrength, evidence: &'static str) -> Finding {
    Finding::new(FindingId::StrengthAssumed)
        .with_severity(Severity::Info)
        .with_evidence(evidence)
        .with_number(NumberKey::TensileMpa, strength.tensile_mpa)
        .with_number(NumberKey::ShearMpa, strength.shear_mpa)
}

fn of_class(error: Error) -> Error {
    error.about(Field::ScrewClass)
}

/// The screw holds in full thread only.
#[inline(never)]
fn engaged(screw: &Screw, job: &Job) -> Result<(), Error> {
    let (Some(engagement), Some(depth)) = (screw.engagement_mm, job.full_thread_depth_mm) else { return Ok(()) };
    if engagement.is_positive() && engagement <= depth {
        return Ok(());
    }
    Err(Error::new(Code::OutOfRange, Field::ScrewEngagement)
        .got(engagement.to_f64())
        .within(0.0, depth.to_f64())
        .hint_text("above 0, and not longer than the full thread"))
}

/// The engagement's fields by their names in a job.
fn of_job(error: Error, job: &Job) -> Error {
    let countersink = job.countersink_mm.unwrap_or(Length::ZERO);
    if error.field() == Field::WithoutFullThread {
        return Error::new(error.code(), Field::Countersink)
            .got(countersink.to_f64())
            .hint_text("it takes all the thread that the screw engages: a smaller countersink");
    }
    error.about(match error.field() {
        Field::EngagementLength => Field::ScrewEngagement,
        Field::InternalShear => Field::PartShear,
        Field::ExternalShear => Field::ScrewShear,
        Field::ExternalTensile => Field::ScrewTensile,
        Field::Load => Field::ScrewLoad,
        Field::ToleranceClass => Field::ScrewClass,
        other => other,
    })
}

#[inline(never)]
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
