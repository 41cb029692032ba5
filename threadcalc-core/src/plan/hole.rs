//! The depths of a planned hole.

use super::notes::{Notes, assume};
use super::parts::{Filled, Parts};
use super::{Job, MOST_PLAN_FINDINGS};
use crate::depth::{DepthRequest, DepthRounding, Depths, Hole, TapSetOn, countersink, depths, program_depth};
use crate::error::{Code, Error, Field};
use crate::feed::Unit;
use crate::finding::{Finding, FindingId, Findings, NumberKey, Severity};
use crate::length::{Length, Rounding};
use crate::motion::{Holder, least_clearance_mm};
use crate::tap::ChamferForm;
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

/// The deepest hole and the thickest part that are looked at.
const MOST_MM: i64 = 10_000;

/// The depths and the R plane.
#[inline(never)]
pub(super) fn plan_depths(parts: &mut Parts<'_>, job: &Job) -> Result<(), Error> {
    let Parts { thread, drill, depths, taper, findings, filled, notes, .. } = parts;
    let unit = job.unit.unwrap_or(Unit::Mm);
    for (given, field) in [(job.drill_depth_mm, Field::DrillDepth), (job.part_thickness_mm, Field::PartThickness)] {
        given.map_or(Ok(Length::ONE), |given| crate::range::above_zero(given, field, MOST_MM))?;
    }
    let drill_mm = drill.chosen.drill.diameter_mm();
    if thread.form().is_taper() {
        let found = taper_hole(thread, drill_mm, job, filled, notes)?;
        *depths = first_hole(&found, unit, job.axis_decimals(unit))?;
        *taper = Some(found);
    } else {
        *depths = straight(thread, drill_mm, job, filled, notes)?;
    }
    r_plane(thread, job, filled, unit, findings, notes)
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
        None => {
            return Err(Error::new(Code::Missing, Field::TapSetOn)
                .hint_text("the place on the tap that its length offset is set on: front or centre"));
        }
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

fn taper_hole(
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
        (job.countersink_angle_deg.is_some(), Field::CountersinkAngle),
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
fn first_hole(taper: &TaperDepths, unit: Unit, decimals: u8) -> Result<Depths, Error> {
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
        Unit::Inch => (const { Length::parts(127, 25) }, const { Length::parts(127, 100) }), // 0.2 and 0.05 in
    };
    let enough = match needed > usual {
        true => needed.over(step)?.round_to(0, Rounding::Up)?.to_length()?.times(step)?,
        false => usual,
    };
    let r_plane = assume(&mut filled.r_plane_mm, enough, notes, FindingId::RPlaneAssumed);
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

/// The countersink, if there is one, and what it takes of the full thread.
#[inline(never)]
pub(super) fn sunk(parts: &mut Parts<'_>, job: &Job) -> Result<(), Error> {
    let Some(diameter) = job.countersink_mm else {
        return match job.countersink_angle_deg {
            Some(_) => Err(Error::new(Code::Missing, Field::Countersink).hint_text("its diameter at the face in mm")),
            None => Ok(()),
        };
    };
    let angle = *parts.filled.countersink_angle_deg.get_or_insert(USUAL_COUNTERSINK_ANGLE);
    let found = countersink(parts.thread, diameter, angle, Some(parts.drill.chosen.drill.diameter_mm()))?;
    let nothing_left = job.full_thread_depth_mm.is_some_and(|depth| found.full_thread_lost_mm >= depth.to_f64());
    parts.findings.push(
        Finding::new(FindingId::CountersinkEatsThread)
            .with_severity(if nothing_left { Severity::Error } else { Severity::Info })
            .with_evidence("countersink_mm")
            .with_number(NumberKey::CountersinkMm, diameter.to_f64())
            .with_number(NumberKey::CountersinkAngleDeg, angle.to_f64())
            .with_number(NumberKey::FullThreadLostMm, found.full_thread_lost_mm)
            .with_suggestion(if nothing_left { "it takes the whole thread: a smaller countersink" } else { "" }),
    );
    parts.countersink = Some(found);
    Ok(())
}
