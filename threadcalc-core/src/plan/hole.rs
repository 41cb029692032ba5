//! The depths of a planned hole, and what of hole and part is in their way.

use super::make::Filled;
use super::notes::{Notes, assume};
use super::{Job, MOST_PLAN_FINDINGS};
use crate::depth::{
    BottomVerdict, Countersunk, DepthRequest, DepthRounding, Depths, Hole, RunOut, TapSetOn, countersink, depths,
    program_depth, run_out_mm,
};
use crate::drill::TapDrill;
use crate::error::{Code, Error, Field};
use crate::feed::Unit;
use crate::finding::{Finding, FindingId, Findings, NumberKey, Severity};
use crate::length::{Length, Rounding};
use crate::motion::{Holder, least_clearance_mm};
use crate::tap::{ChamferForm, chamfers_that_fit};
use crate::taper_depth::{TaperDepthRequest, TaperDepths, taper_depths};
use crate::thread::Thread;

/// The longest chamfer of form C in threads (DIN 2197).
const LONGEST_FORM_C: Length = Length::integer(3);
/// Stop and chips below a straight tap, chips below a taper tap, in pitches (common practice).
const BOTTOM_CLEARANCE_PITCHES: i64 = 3;
const TAPER_CLEARANCE_PITCHES: i64 = 2;
/// The usual countersink of a tapped hole in degrees.
const USUAL_COUNTERSINK_ANGLE: Length = Length::integer(90);
/// The usual twist drill's point angle in degrees.
const USUAL_POINT_ANGLE: Length = Length::integer(118);
/// Deeper than this many diameters a tapped hole needs care (common practice).
const DEEP_DIAMETERS: i32 = 3;

/// Depths of a straight or of a taper hole.
pub(super) struct HoleDepths {
    pub straight: Depths,
    pub taper: Option<TaperDepths>,
}

#[inline(never)]
pub(super) fn plan_depths(
    thread: &Thread,
    drill: &TapDrill,
    job: &Job,
    filled: &mut Filled,
    findings: &mut Findings<MOST_PLAN_FINDINGS>,
    notes: &mut Notes,
) -> Result<HoleDepths, Error> {
    let unit = job.unit.unwrap_or(Unit::Mm);
    let drill_mm = drill.chosen.drill.diameter_mm();
    let found = if thread.form().is_taper() {
        let taper = taper(thread, drill_mm, job, filled, notes)?;
        HoleDepths { straight: first_hole(&taper, unit)?, taper: Some(taper) }
    } else {
        HoleDepths { straight: straight(thread, drill_mm, job, filled, notes)?, taper: None }
    };
    r_plane(thread, job, filled, unit, findings, notes)?;
    Ok(found)
}

fn straight(
    thread: &Thread,
    drill_mm: Length,
    job: &Job,
    filled: &mut Filled,
    notes: &mut Notes,
) -> Result<Depths, Error> {
    let hole = job.hole.unwrap_or(Hole::Blind);
    for (given, field) in
        [(job.projection_mm.is_some(), Field::Projection), (job.taper_reamer == Some(true), Field::TaperReamer)]
    {
        if given {
            return Err(Error::new(Code::Contradiction, field).hint_text("this thread is straight"));
        }
    }
    let full_thread_mm = job.full_thread_depth_mm.unwrap_or(Length::ZERO);
    if hole == Hole::Through {
        let thickness = job.part_thickness_mm.filter(|thickness| full_thread_mm > *thickness);
        if let Some(thickness) = thickness {
            return Err(Error::new(Code::OutOfRange, Field::FullThreadDepth)
                .got(full_thread_mm.to_f64())
                .within(0.0, thickness.to_f64())
                .hint_text("not more than the part's thickness"));
        }
    }
    let centre = job.tap_centre_mm.unwrap_or(Length::ZERO);
    let tap_set_on = match job.tap_set_on {
        Some(place) => place,
        None if centre == Length::ZERO => TapSetOn::Front,
        None => return Err(Error::new(Code::Missing, Field::TapSetOn).hint_text(TapSetOn::CHOICES)),
    };
    let chamfer_threads = chamfer_threads(job, filled, notes)?;
    let point_angle_deg = assume(&mut filled.point_angle_deg, USUAL_POINT_ANGLE, notes, FindingId::PointAngleAssumed);
    let clearance = match hole {
        Hole::Blind => {
            let usual = thread.pitch_mm().times(Length::integer(BOTTOM_CLEARANCE_PITCHES))?;
            assume(&mut filled.bottom_clearance_mm, usual, notes, FindingId::BottomClearanceAssumed)
        }
        Hole::Through => *filled.bottom_clearance_mm.get_or_insert(Length::ZERO),
    };
    let request = DepthRequest {
        full_thread_mm,
        chamfer_threads,
        drill_mm,
        point_angle_deg,
        bottom_clearance_mm: clearance.plus(coast_mm(job, thread, hole)?)?,
        tap_centre_mm: *filled.tap_centre_mm.get_or_insert(centre),
        tap_set_on: *filled.tap_set_on.get_or_insert(tap_set_on),
        hole,
    };
    depths(thread, &request)
}

/// What the drill has to make room for besides the tap: the spindle's coasting, and the part behind the thread.
fn coast_mm(job: &Job, thread: &Thread, hole: Hole) -> Result<Length, Error> {
    match hole {
        Hole::Blind => over_travel_mm(job, thread),
        Hole::Through => match (job.part_thickness_mm, job.full_thread_depth_mm) {
            (Some(thickness), Some(thread)) => thickness.minus(thread),
            _ => Ok(Length::ZERO),
        },
    }
}

/// The way that the tap goes on while the spindle coasts.
pub(super) fn over_travel_mm(job: &Job, thread: &Thread) -> Result<Length, Error> {
    let turns = job.over_travel_turns.unwrap_or(Length::ZERO);
    crate::range::zero_or_more(turns, Field::OverTravel, 20)?.times(thread.lead_mm())
}

/// The chamfer planned on: as given, the longest of its form, or the longest of form C with a note.
fn chamfer_threads(job: &Job, filled: &mut Filled, notes: &mut Notes) -> Result<Length, Error> {
    let Some((least, most)) = job.chamfer_form.map(ChamferForm::threads) else {
        return Ok(assume(&mut filled.chamfer_threads, LONGEST_FORM_C, notes, FindingId::ChamferAssumed));
    };
    let threads = *filled.chamfer_threads.get_or_insert(most);
    if threads < least || threads > most {
        return Err(Error::new(Code::Contradiction, Field::ChamferThreads)
            .got(threads.to_f64())
            .within(least.to_f64(), most.to_f64())
            .hint_text("the threads of the form that is given beside it"));
    }
    Ok(threads)
}

fn taper(
    thread: &Thread,
    drill_mm: Length,
    job: &Job,
    filled: &mut Filled,
    notes: &mut Notes,
) -> Result<TaperDepths, Error> {
    let excluded = [
        (job.full_thread_depth_mm.is_some(), Field::FullThreadDepth),
        (job.chamfer_threads.is_some(), Field::ChamferThreads),
        (job.chamfer_form.is_some(), Field::ChamferForm),
        (job.tap_centre_mm.is_some(), Field::TapCentre),
        (job.countersink_mm.is_some(), Field::Countersink),
    ];
    if let Some((_, field)) = excluded.into_iter().find(|(given, _)| *given) {
        return Err(Error::new(Code::DoesNotApply, field)
            .hint_text("a taper thread's depth follows from its gauge and the tap's projection: leave it out"));
    }
    let usual = thread.pitch_mm().times(Length::integer(TAPER_CLEARANCE_PITCHES))?;
    let point_angle_deg = assume(&mut filled.point_angle_deg, USUAL_POINT_ANGLE, notes, FindingId::PointAngleAssumed);
    let clearance = assume(&mut filled.bottom_clearance_mm, usual, notes, FindingId::BottomClearanceAssumed);
    let request = TaperDepthRequest {
        projection_mm: job.projection_mm,
        drill_mm,
        point_angle_deg,
        bottom_clearance_mm: clearance.plus(over_travel_mm(job, thread)?)?,
    };
    filled.tap_set_on.get_or_insert(TapSetOn::Front);
    taper_depths(thread, &request)
}

/// The program's depths of the first hole: its tap rounds shallower, since depth is size.
fn first_hole(taper: &TaperDepths, unit: Unit) -> Result<Depths, Error> {
    let decimals = crate::cycle::axis_decimals(unit);
    let program = program_depth(taper.first_hole_mm, unit, decimals, DepthRounding::Shallower)?;
    Ok(Depths {
        tap_mm: taper.tap_mm,
        program_tap_mm: program.depth_mm,
        full_diameter_mm: taper.full_diameter_mm,
        drill_point_mm: taper.drill_point_mm,
    })
}

/// The R plane: as given, else the usual one or what the holder needs, with a finding where it is too near.
fn r_plane(
    thread: &Thread,
    job: &Job,
    filled: &mut Filled,
    unit: Unit,
    findings: &mut Findings<MOST_PLAN_FINDINGS>,
    notes: &mut Notes,
) -> Result<(), Error> {
    let turns = job.machine.least_clearance_turns.unwrap_or(Length::ZERO);
    let of_machine = crate::range::zero_or_more(turns, Field::MachineClearance, 1000)?.times(thread.lead_mm())?;
    let needed = least_clearance_mm(thread, filled.holder.unwrap_or(Holder::Rigid))?.max(of_machine);
    let (usual, step) = match unit {
        Unit::Mm => (Length::integer(5), Length::ONE),
        Unit::Inch => (Length::parts(127, 25), Length::parts(127, 100)), // 0.2 and 0.05 in
    };
    let up = needed.over(step)?.round_to(0, Rounding::Up)?.to_length()?.times(step)?;
    let r_plane = assume(&mut filled.r_plane_mm, usual.max(up), notes, FindingId::RPlaneAssumed);
    if !r_plane.is_positive() {
        return Err(Error::new(Code::OutOfRange, Field::RPlane)
            .got(r_plane.to_f64())
            .hint_text("a height above the face in mm, above 0"));
    }
    if r_plane < needed {
        findings.push(
            Finding::new(FindingId::ClearanceShort)
                .with_evidence("r_plane_mm")
                .with_number(NumberKey::RPlaneMm, r_plane.to_f64())
                .with_number(NumberKey::NeededMm, needed.to_f64())
                .with_suggestion("a higher R plane"),
        );
    }
    Ok(())
}

/// How deep the thread is in metal: what a lead error adds up over.
pub(super) fn depth_in_metal(job: &Job, depths: &Depths) -> Length {
    job.full_thread_depth_mm.unwrap_or(depths.tap_mm)
}

/// What is doubtful about the depths.
#[inline(never)]
pub(super) fn of_depth(
    findings: &mut Findings<MOST_PLAN_FINDINGS>,
    thread: &Thread,
    job: &Job,
    depths: &HoleDepths,
) -> Result<(), Error> {
    let depth = depth_in_metal(job, &depths.straight);
    if depth.is_more_than((DEEP_DIAMETERS, 1), thread.major_mm()) && depths.taper.is_none() {
        findings.push(
            Finding::new(FindingId::DeepThread)
                .with_evidence("full_thread_depth_mm")
                .with_number(NumberKey::Diameters, depth.to_f64() / thread.major_mm().to_f64()),
        );
    }
    // How deep the tap's end goes at most: coasting, and for a taper thread the turn kept for trimming.
    let trim = if depths.taper.is_some() { thread.pitch_mm() } else { Length::ZERO };
    let tap_end = depths.straight.tap_mm.plus(trim)?.plus(over_travel_mm(job, thread)?)?;
    match job.hole {
        Some(Hole::Through) => through(findings, job, tap_end, depth)?,
        _ => blind(findings, thread, job, tap_end, depths)?,
    }
    Ok(())
}

fn through(
    findings: &mut Findings<MOST_PLAN_FINDINGS>,
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
        findings.push(
            Finding::new(FindingId::TapComesOut).with_evidence("hole").with_number(NumberKey::BelowMm, below.to_f64()),
        );
    }
    Ok(())
}

fn blind(
    findings: &mut Findings<MOST_PLAN_FINDINGS>,
    thread: &Thread,
    job: &Job,
    tap_end: Length,
    depths: &HoleDepths,
) -> Result<(), Error> {
    if let Some(drilled) = job.drill_depth_mm {
        bottoms(findings, thread, job, drilled, tap_end, depths)?;
    }
    run_out(findings, thread, job, depths)?;
    let Some(thickness) = job.part_thickness_mm else { return Ok(()) };
    let floor = thickness.to_f64() - depths.straight.drill_point_mm;
    // A floor thinner than a pitch bulges or breaks through: judgement.
    if floor < thread.pitch_mm().to_f64() {
        findings.push(
            Finding::new(FindingId::FloorThin)
                .with_severity(if floor <= 0.0 { Severity::Error } else { Severity::Warning })
                .with_evidence("part_thickness_mm")
                .with_number(NumberKey::RoomMm, floor)
                .with_number(NumberKey::NeededMm, depths.straight.drill_point_mm)
                .with_suggestion("a flatter drill point, a shorter chamfer, or less full thread"),
        );
    }
    Ok(())
}

/// A hole that is drilled already: is there room for the tap, and what would fit.
#[inline(never)]
fn bottoms(
    findings: &mut Findings<MOST_PLAN_FINDINGS>,
    thread: &Thread,
    job: &Job,
    drilled: Length,
    tap_end: Length,
    depths: &HoleDepths,
) -> Result<(), Error> {
    let room = drilled.minus(tap_end)?;
    let severity = match BottomVerdict::of(room, thread) {
        BottomVerdict::Fine => return Ok(()),
        BottomVerdict::Warning => Severity::Warning,
        BottomVerdict::Error => Severity::Error,
    };
    let mut finding = Finding::new(FindingId::TapBottoms)
        .with_severity(severity)
        .with_evidence("drill_depth_mm")
        .with_number(NumberKey::RoomMm, room.to_f64())
        .with_number(NumberKey::NeededMm, depths.straight.full_diameter_mm.to_f64())
        .with_suggestion("drill deeper, or tap less deep");
    if let Some(full_thread) = job.full_thread_depth_mm {
        let fits = full_thread.plus(room)?;
        if fits.is_positive() {
            finding = finding.with_number(NumberKey::FullThreadMm, fits.to_f64());
        }
        let room_threads = drilled.minus(full_thread)?.over(thread.pitch_mm())?;
        if let Some(form) = chamfers_that_fit(Hole::Blind, room_threads).next() {
            finding = finding.with_suggestion("; chamfer form ").with_suggestion(form.name()).with_suggestion(" fits");
        }
    }
    findings.push(finding);
    Ok(())
}

/// The normal run-out of the standard, where it has one for this pitch.
fn run_out(
    findings: &mut Findings<MOST_PLAN_FINDINGS>,
    thread: &Thread,
    job: &Job,
    depths: &HoleDepths,
) -> Result<(), Error> {
    let (Ok(run_out), Some(full_thread)) = (run_out_mm(thread, RunOut::Normal), job.full_thread_depth_mm) else {
        return Ok(());
    };
    let room = job.drill_depth_mm.unwrap_or(depths.straight.full_diameter_mm).minus(full_thread)?;
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

/// The countersink, if there is one, and what it takes of the full thread.
#[inline(never)]
pub(super) fn sunk(
    thread: &Thread,
    job: &Job,
    filled: &mut Filled,
    drill_mm: Length,
    findings: &mut Findings<MOST_PLAN_FINDINGS>,
) -> Result<Option<Countersunk>, Error> {
    let Some(diameter) = job.countersink_mm else {
        return match job.countersink_angle_deg {
            Some(_) => Err(Error::new(Code::Missing, Field::Countersink).hint_text("its diameter at the face in mm")),
            None => Ok(None),
        };
    };
    let angle = *filled.countersink_angle_deg.get_or_insert(USUAL_COUNTERSINK_ANGLE);
    let found = countersink(thread, diameter, angle, Some(drill_mm))?;
    findings.push(
        Finding::new(FindingId::CountersinkEatsThread)
            .with_severity(Severity::Info)
            .with_evidence("countersink_mm")
            .with_number(NumberKey::CountersinkMm, diameter.to_f64())
            .with_number(NumberKey::CountersinkAngleDeg, angle.to_f64())
            .with_number(NumberKey::FullThreadLostMm, found.full_thread_lost_mm),
    );
    Ok(Some(found))
}
