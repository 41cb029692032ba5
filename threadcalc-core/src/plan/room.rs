//! Whether the planned hole has room: below the tap, in the floor of a blind hole, behind a through hole.

use super::hole::{depth_in_metal, over_travel_mm};
use super::parts::{Filled, Parts};
use super::{Job, MOST_PLAN_FINDINGS};
use crate::depth::{
    BlindHole, BottomVerdict, Depths, DrilledTo, Hole, RunOut, TapSetOn, chamfer_that_gives, full_thread_that_fits,
    run_out_mm,
};
use crate::error::{Code, Error, Field};
use crate::finding::{Finding, FindingId, Findings, NumberKey, Severity};
use crate::form::Form;
use crate::length::Length;
use crate::thread::Thread;

/// Deeper than this many diameters a tapped hole needs care (common practice).
const DEEP_DIAMETERS: i32 = 3;

/// What is doubtful about the depths.
#[inline(never)]
pub(super) fn of_depth(parts: &mut Parts<'_>, job: &Job) -> Result<(), Error> {
    let Parts { thread, drill, depths, taper, findings, filled, .. } = parts;
    let depth = depth_in_metal(job, depths);
    if depth.is_more_than((DEEP_DIAMETERS, 1), thread.major_mm()) && taper.is_none() {
        findings.write(FindingId::DeepThread, "full_thread_depth_mm", |finding| {
            finding.add_number(NumberKey::Diameters, depth.to_f64() / thread.major_mm().to_f64());
        });
    }
    // How deep the tap's end goes at most: coasting, and for a taper thread the turn kept for trimming.
    let trim = if taper.is_some() { thread.pitch_mm() } else { Length::ZERO };
    let tap_end = depths.tap_mm.plus(trim)?.plus(over_travel_mm(job, thread)?)?;
    match (job.hole, job.drill_depth_mm) {
        (Some(Hole::Through), _) => return through(findings, thread, job, tap_end, depth),
        (_, Some(drilled)) => {
            let hole = drilled_hole(thread, job, filled, drilled, drill.chosen.drill.diameter_mm())?;
            let asked = job.full_thread_depth_mm.zip(filled.chamfer_threads);
            bottoms(findings, thread, &hole, tap_end, depths.full_diameter_mm, asked)?;
        }
        (_, None) => {}
    }
    if thread.form() == Form::Metric {
        run_out(findings, thread, job, depths)?;
    }
    if let Some(thickness) = job.part_thickness_mm {
        floor(findings, thread, job, depths, thickness);
    }
    Ok(())
}

#[inline(never)]
fn through(
    findings: &mut Findings<MOST_PLAN_FINDINGS>,
    thread: &Thread,
    job: &Job,
    tap_end: Length,
    depth: Length,
) -> Result<(), Error> {
    if job.drill_depth_mm.is_some() {
        return Err(Error::new(Code::Contradiction, Field::DrillDepth)
            .hint_text("a through hole is drilled through: give the part's thickness"));
    }
    let below = tap_end.minus(job.part_thickness_mm.unwrap_or(depth))?;
    // A thread that ends inside a thick part leaves nothing to meet below.
    if below.is_positive() {
        let finding = Finding::new(FindingId::TapComesOut).with_evidence("hole");
        let finding = finding.with_number(NumberKey::BelowMm, below.to_f64());
        findings.push(if thinner_than_gauge(thread, job)? {
            finding
                .with_severity(Severity::Warning)
                .with_suggestion("the part is thinner than the thread that is tightened by hand: a boss")
        } else {
            finding
        });
    }
    Ok(())
}

/// Whether a taper thread has less part than its gauge goes in.
fn thinner_than_gauge(thread: &Thread, job: &Job) -> Result<bool, Error> {
    let Some(thickness) = job.part_thickness_mm.filter(|_| thread.form().is_taper()) else { return Ok(false) };
    let pipe = thread.pipe()?;
    Ok(pipe.hand_tight_length_mm.or(pipe.gauge_length_mm).is_some_and(|length| thickness < length))
}

/// What a blind hole leaves of the part behind it.
#[inline(never)]
fn floor(findings: &mut Findings<MOST_PLAN_FINDINGS>, thread: &Thread, job: &Job, depths: &Depths, thickness: Length) {
    // A hole that is drilled already has its own end; the height of the drill's point is the same.
    let planned = depths.full_diameter_mm;
    let point = depths.drill_point_mm - planned.to_f64();
    let drilled = job.drill_depth_mm.map_or(depths.drill_point_mm, |drilled| drilled.to_f64() + point);
    let floor = thickness.to_f64() - drilled;
    // A floor thinner than a pitch bulges or breaks through: judgement.
    if floor < thread.pitch_mm().to_f64() {
        findings.push(
            Finding::new(FindingId::FloorThin)
                .with_severity(if floor <= 0.0 { Severity::Error } else { Severity::Warning })
                .with_evidence("part_thickness_mm")
                .with_number(NumberKey::RoomMm, floor)
                .with_number(NumberKey::NeededMm, drilled)
                .with_suggestion(match job.drill_depth_mm {
                    Some(_) => "the hole that is drilled already, with its point, leaves no more",
                    None => "a flatter drill point, a shorter chamfer, or less full thread",
                }),
        );
    }
}

/// A hole that is drilled already, with what the plan keeps free below the tap.
fn drilled_hole(
    thread: &Thread,
    job: &Job,
    filled: &Filled,
    drilled: Length,
    drill_mm: Length,
) -> Result<BlindHole, Error> {
    let clearance = filled.bottom_clearance_mm.unwrap_or(Length::ZERO);
    Ok(BlindHole {
        drill_depth_mm: drilled,
        drill_depth_to: DrilledTo::FullDiameter,
        drill_mm,
        point_angle_deg: None,
        bottom_clearance_mm: clearance.plus(over_travel_mm(job, thread)?)?,
        tap_centre_mm: filled.tap_centre_mm.unwrap_or(Length::ZERO),
        tap_set_on: filled.tap_set_on.unwrap_or(TapSetOn::Front),
    })
}

/// Whether the drilled hole has room for the tap, and what would fit of the full thread and chamfer `asked` for.
#[inline(never)]
fn bottoms(
    findings: &mut Findings<MOST_PLAN_FINDINGS>,
    thread: &Thread,
    hole: &BlindHole,
    tap_end: Length,
    needed: Length,
    asked: Option<(Length, Length)>,
) -> Result<(), Error> {
    let room = hole.drill_depth_mm.minus(tap_end)?;
    let severity = match BottomVerdict::of(room, thread) {
        BottomVerdict::Fine => return Ok(()),
        BottomVerdict::Warning => Severity::Warning,
        BottomVerdict::Error => Severity::Error,
    };
    let fits = asked.and_then(|(_, chamfer_threads)| fitting_thread(thread, hole, chamfer_threads));
    let form = match asked {
        Some((full_thread, _)) => chamfer_that_gives(thread, hole, full_thread)?,
        None => None,
    };
    findings.write(FindingId::TapBottoms, "drill_depth_mm", |finding| {
        finding.rate(severity);
        finding.add_number(NumberKey::RoomMm, room.to_f64());
        finding.add_number(NumberKey::NeededMm, needed.to_f64());
        finding.suggest("drill deeper, or tap less deep");
        if let Some(fits) = fits {
            finding.add_number(NumberKey::FullThreadMm, fits.to_f64());
        }
        if let Some(form) = form {
            finding.suggest("; chamfer form ");
            finding.suggest(form.name());
            finding.suggest(" fits");
        }
    });
    Ok(())
}

#[inline(never)]
fn fitting_thread(thread: &Thread, hole: &BlindHole, chamfer_threads: Length) -> Option<Length> {
    full_thread_that_fits(thread, hole, chamfer_threads).ok().map(|fits| fits.full_thread_mm)
}

/// The normal run-out of the standard, where it has one for this pitch.
#[inline(never)]
fn run_out(
    findings: &mut Findings<MOST_PLAN_FINDINGS>,
    thread: &Thread,
    job: &Job,
    depths: &Depths,
) -> Result<(), Error> {
    let (Ok(run_out), Some(full_thread)) = (run_out_mm(thread, RunOut::Normal), job.full_thread_depth_mm) else {
        return Ok(());
    };
    let room = job.drill_depth_mm.unwrap_or(depths.full_diameter_mm).minus(full_thread)?;
    if room < run_out {
        findings.push(
            Finding::new(FindingId::RunOutShort)
                .with_severity(Severity::Info)
                .with_evidence("bottom_clearance_mm")
                .with_number(NumberKey::RoomMm, room.to_f64())
                .with_number(NumberKey::NeededMm, run_out.to_f64()),
        );
    }
    Ok(())
}
