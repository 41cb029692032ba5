//! How a plan is made: what is asked, then one part after the other in its place.
//!
//! The steps are kept out of line, here and in the files beside: what one of them takes of the stack is
//! given back before the next.

use super::notes::Notes;
use super::parts::{Fed, Filled, Parts};
use super::together::with_gauges;
use super::{Job, Plan, Spindle, findings, hole, joint, room, spindle, tapping};
use crate::depth::{Depths, Hole};
use crate::drill::{Drill, DrillSets, Stock, Tap, TapDrill, TapDrillRequest, judge_given, tap_drill};
use crate::error::{Code, Error, Field};
use crate::feed::{Feed, FeedMode, Unit, feed, programmed_speed};
use crate::finding::{FindingId, Findings};
use crate::length::{Length, Ratio};
use crate::motion::Holder;
use crate::tap::ShankMark;
use crate::thread::{Side, Thread};

/// The required fields of a job.
struct Given<'a> {
    written: &'a Thread,
    unit: Unit,
    mode: FeedMode,
    decimals: u8,
    hole: Hole,
    tap: Tap,
}

fn given(job: &Job) -> Result<Given<'_>, Error> {
    if let Some(missing) = job.missing().next() {
        return Err(missing);
    }
    let all = || {
        Some(Given {
            written: job.thread.as_ref()?,
            unit: job.unit?,
            mode: job.mode?,
            decimals: job.decimals?,
            hole: job.hole?,
            tap: job.tap?,
        })
    };
    all().ok_or(Error::new(Code::Missing, Field::Job))
}

/// Plans one tapped hole: thread, limits, drill, speed, feed, depths, words and what is doubtful.
///
/// Required in the job: thread, unit, mode, decimals, a speed, hole, full thread depth (but for taper
/// threads), tap. What is missing beyond these is assumed, and each assumption is a finding.
///
/// # Errors
/// [`Code::Missing`] names the field; every error of the single calculations.
///
/// # Example
/// ```
/// use threadcalc_core::{Job, Value, plan};
///
/// let mut job = Job::default();
/// for (key, value) in [
///     ("thread", "1/4-20 UNC-2B"), ("unit", "mm"), ("mode", "per_minute"), ("decimals", "3"),
///     ("rpm", "720"), ("hole", "blind"), ("full_thread_depth_mm", "12"), ("tap", "cut"),
///     ("dialect", "rs274ngc"),
/// ] {
///     job.set(key, Value::Text(value.as_bytes()))?;
/// }
/// let plan = plan(&job)?;
/// assert!(plan.cycle.words().any(|word| word == "F914.4"));
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// Those of the single calculations.
pub fn plan(job: &Job) -> Result<Plan, Error> {
    let given = given(job)?;
    job.check_digits()?;
    let thread = given.written.as_tapped()?;
    let drill_sets = drill_sets(&thread, job);
    // Large parts stay where they were made until the plan is put together: each is copied once.
    let drill = choose_drill(&thread, given.tap, job, drill_sets);
    let drill = drill.as_ref().map_err(|error| of_thread(of_percent(*error, job)))?;
    check_oversize(&thread, job, drill)?;
    let fed = fed(job, &given, &thread);
    let fed = fed.as_ref().map_err(|error| *error)?;
    let mark = tapping::shank_mark(job);
    let mark = mark.as_ref().map_err(|error| *error)?;
    of_drill(job, &given, &thread, drill, drill_sets, fed, mark.as_ref())
}

#[inline(never)]
fn fed(job: &Job, given: &Given<'_>, thread: &Thread) -> Result<Fed, Error> {
    let asked_rpm = spindle::asked_speed(job, thread)?;
    let step = job.machine.speed_step.unwrap_or(Length::ONE);
    let programmed_rpm = programmed_speed(asked_rpm, step, job.machine.lowest_rpm, job.machine.highest_rpm)
        .map_err(|error| spindle::of_speed(error, job))?;
    let lead = spindle::fed_lead(job, thread)?;
    let speed = (given.mode == FeedMode::PerMinute).then_some(programmed_rpm);
    Ok(Fed { asked_rpm, programmed_rpm, feed: feed(lead, speed, given.unit, given.mode, given.decimals)? })
}

/// All that comes after the drill.
#[inline(never)]
fn of_drill(
    job: &Job,
    given: &Given<'_>,
    thread: &Thread,
    drill: &TapDrill,
    drill_sets: DrillSets,
    fed: &Fed,
    mark: Option<&ShankMark>,
) -> Result<Plan, Error> {
    let mut parts = Parts {
        thread,
        drill,
        limits: drill.limits,
        fed,
        holder: job.holder.unwrap_or(Holder::Rigid),
        lead_error: Ratio::ZERO,
        axial_error_mm: Length::ZERO,
        lead_cut_mm: Length::ZERO,
        depths: Depths::NONE,
        taper: None,
        countersink: None,
        spindle: Spindle::default(),
        tap_class: None,
        tap_limit: None,
        joint: None,
        formed_minor_mm: None,
        filled: Filled { drill_sets, ..Filled::of(job) },
        notes: Notes::default(),
        findings: Findings::new(),
    };
    given.written.tell_doubts(&mut parts.findings);
    steps(&mut parts, job, given, mark)?;
    with_gauges(job, &mut parts)
}

/// Every step after the feed, with what is doubtful. What most jobs do not ask about is not even called.
#[inline(never)]
fn steps(parts: &mut Parts<'_>, job: &Job, given: &Given<'_>, mark: Option<&ShankMark>) -> Result<(), Error> {
    of_callout(parts, job, given);
    hole::plan_depths(parts, job)?;
    of_feed(parts, job)?;
    room::of_depth(parts, job)?;
    spindle::spindle(parts, job)?;
    if job.coating_um.is_some() {
        tapping::of_plated_hole(job, parts.drill, parts.limits.as_ref(), &mut parts.findings)?;
    }
    tapping::of_tap(parts, job, mark, given.tap, given.hole)?;
    if job.countersink_mm.is_some() || job.countersink_angle_deg.is_some() {
        hole::sunk(parts, job)?;
    }
    if job.screw.is_some() || job.part_shear_mpa.is_some() {
        joint::of_screw(parts, job)?;
    }
    if given.tap == Tap::Form {
        tapping::of_formed(parts)?;
    }
    parts.notes.tell(parts.thread, &parts.filled, &mut parts.findings);
    Ok(())
}

/// Limits, and what is doubtful about thread, drill, speed and holder.
#[inline(never)]
fn of_callout(parts: &mut Parts<'_>, job: &Job, given: &Given<'_>) {
    if parts.limits.is_none() {
        parts.limits = parts.thread.limits().ok();
    }
    parts.findings.extend(&parts.drill.findings);
    findings::of_thread(&mut parts.findings, parts.thread);
    findings::of_speed(&mut parts.findings, &job.machine, parts.fed.asked_rpm, parts.fed.programmed_rpm);
    note_class(given.written, &mut parts.notes);
    if parts.filled.drill_sets != job.drill_sets {
        parts.notes.push(FindingId::DrillSetsAssumed);
    }
    spindle::holder(&mut parts.filled, &mut parts.notes);
    if let Some(underfeed) = spindle::underfeed(job) {
        spindle::of_underfeed(underfeed, parts.holder, &mut parts.findings);
    }
}

/// What the feed word makes of the lead.
#[inline(never)]
fn of_feed(parts: &mut Parts<'_>, job: &Job) -> Result<(), Error> {
    let (feed, limits) = (&parts.fed.feed, parts.limits.as_ref());
    parts.lead_error = feed.lead_error()?;
    parts.axial_error_mm = Feed::axial_error_of(parts.lead_error, hole::depth_in_metal(job, &parts.depths))?;
    parts.lead_cut_mm = if parts.lead_error == Length::ZERO { feed.lead_mm() } else { feed.lead_cut_mm()? };
    let errors = (parts.lead_error, parts.axial_error_mm);
    findings::of_feed(&mut parts.findings, feed, parts.thread.form(), parts.holder, errors, limits);
    Ok(())
}

/// The class that had to be put in the place of one of a screw, or of none.
fn note_class(written: &Thread, notes: &mut Notes) {
    if written.side() == Some(Side::External) {
        notes.push(FindingId::ExternalClass);
    } else if written.tolerance_class().is_none() && !written.medium_internal_class().is_empty() {
        notes.push(FindingId::ClassAssumed);
    }
}

/// The drill sets to choose from, the usual ones where the job has neither drill nor sets.
fn drill_sets(thread: &Thread, job: &Job) -> DrillSets {
    if job.drill_mm.is_some() || !job.drill_list.is_empty() || !job.drill_sets.is_none() {
        return job.drill_sets;
    }
    DrillSets::usual(thread.form())
}

#[inline(never)]
fn choose_drill(thread: &Thread, tap: Tap, job: &Job, sets: DrillSets) -> Result<TapDrill, Error> {
    let taper_reamer = job.taper_reamer.unwrap_or(false);
    let both = |field| Err(Error::new(Code::Contradiction, field).hint_text("one way to say which drill, not two"));
    if let Some(diameter) = job.drill_mm {
        let excluded = [
            (job.percent.is_some(), Field::Percent),
            (!job.drill_sets.is_none(), Field::DrillSets),
            (!job.drill_list.is_empty(), Field::DrillList),
        ];
        if let Some((_, field)) = excluded.into_iter().find(|(given, _)| *given) {
            return both(field);
        }
        return judge_given(thread, Drill::of_diameter(diameter), tap, job.basis, job.oversize_mm, taper_reamer);
    }
    if !job.drill_list.is_empty() && !job.drill_sets.is_none() {
        return both(Field::DrillList);
    }
    let stock = if job.drill_list.is_empty() { Stock::from(sets) } else { Stock::from(&job.drill_list) };
    let sets = oversized(stock, job.oversize_mm);
    tap_drill(thread, &TapDrillRequest { tap, percent: job.percent, basis: job.basis, sets, taper_reamer })
}

/// A job that asks for a percent has no drill of its own to be wrong about.
fn of_percent(error: Error, job: &Job) -> Error {
    match job.percent {
        Some(percent) if error.field() == Field::Drill => Error::new(error.code(), Field::Percent)
            .got(percent.to_f64())
            .hint_text("the nearest drill of the sets leaves no thread: more percent, or finer sets"),
        _ => error,
    }
}

/// Errors about the kind of thread name the job's field.
fn of_thread(error: Error) -> Error {
    match error.field() {
        Field::Side => error.about(Field::Thread).hint_text("R is the thread outside: the hole's is Rc or Rp"),
        Field::Form | Field::ToleranceClass => error.about(Field::Thread),
        _ => error,
    }
}

/// Refuses an oversize that leaves no thread.
fn check_oversize(thread: &Thread, job: &Job, drill: &TapDrill) -> Result<(), Error> {
    let Some(oversize) = job.oversize_mm else { return Ok(()) };
    let room = thread.major_mm().minus(drill.chosen.drill.diameter_mm())?;
    if !oversize.is_negative() && oversize < room {
        return Ok(());
    }
    Err(Error::new(Code::OutOfRange, Field::Oversize)
        .got(oversize.to_f64())
        .within(0.0, room.to_f64())
        .hint_text("how much larger than the drill the hole is, in mm; the hole stays below the major diameter"))
}

const fn oversized(stock: Stock<'_>, oversize_mm: Option<Length>) -> Stock<'_> {
    match oversize_mm {
        Some(oversize) => stock.with_oversize_mm(oversize),
        None => stock,
    }
}
