//! How a plan is made: what is asked, then one part after the other in its place.
//!
//! The steps are kept out of line, here and in the files beside: what one of them takes of the stack is
//! given back before the next.

use super::card::{self, MOST_CARD_ROWS};
use super::notes::{Note, Notes};
use super::{Job, MOST_PLAN_FINDINGS, Plan, findings, hole, joint, spindle, tapping};
use crate::cycle::{Cycle, CycleRequest, write_cycle};
use crate::depth::{Hole, TapSetOn};
use crate::dialect::{Dialect, ReturnTo};
use crate::drill::{Drill, DrillSets, Stock, Tap, TapDrill, TapDrillRequest, judge_given, tap_drill};
use crate::error::{Code, Error, Field};
use crate::feed::{Feed, FeedMode, Unit, feed, programmed_speed};
use crate::finding::{FindingId, Findings, Severity};
use crate::gauge::{gauges_with, not_go_rule};
use crate::length::Length;
use crate::motion::Holder;
use crate::thread::{Side, Thread};

/// The required fields of a job.
struct Given {
    written: Thread,
    unit: Unit,
    mode: FeedMode,
    decimals: u8,
    hole: Hole,
    tap: Tap,
}

fn given(job: &Job) -> Result<Given, Error> {
    if let Some(missing) = job.missing().next() {
        return Err(missing);
    }
    let all = || {
        Some(Given {
            written: job.thread?,
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
    let mut notes = Notes::new();
    let thread = internal(&given.written, &mut notes)?;
    let mut filled = Filled::of(job);
    filled.drill_sets = drill_sets(&thread, job, &mut notes);
    // Large parts stay where they were made until the plan is put together: each is copied once.
    let drill = choose_drill(&thread, given.tap, job, filled.drill_sets);
    let drill = drill.as_ref().map_err(|error| of_thread(of_percent(*error, job)))?;
    check_oversize(&thread, job, drill)?;
    of_drill(job, &given, &thread, drill, &mut filled, &mut notes)
}

/// All that comes after the drill.
#[inline(never)]
fn of_drill(
    job: &Job,
    given: &Given,
    thread: &Thread,
    drill: &TapDrill,
    filled: &mut Filled,
    notes: &mut Notes,
) -> Result<Plan, Error> {
    let Given { written, unit, mode, decimals, hole, tap } = given;
    let mut findings = Findings::new();
    written.tell_doubts(&mut findings);
    findings.extend(&drill.findings);
    findings::of_thread(&mut findings, thread);

    let asked = spindle::asked_speed(job, thread)?;
    let step = job.machine.speed_step.unwrap_or(Length::ONE);
    let programmed = programmed_speed(asked, step, job.machine.lowest_rpm, job.machine.highest_rpm)
        .map_err(|error| spindle::of_speed(error, job))?;
    findings::of_speed(&mut findings, &job.machine, asked, programmed);
    let holder = spindle::holder(filled, notes);
    let lead = spindle::fed_lead(job, thread, holder, &mut findings)?;
    let speed = (*mode == FeedMode::PerMinute).then_some(programmed);
    let feed = feed(lead, speed, *unit, *mode, *decimals)?;
    let depths = hole::plan_depths(thread, drill, job, filled, &mut findings, notes);
    let depths = depths.as_ref().map_err(|error| *error)?;
    let lead_error = feed.lead_error()?;
    let axial_error = Feed::axial_error_of(lead_error, hole::depth_in_metal(job, &depths.straight))?;
    let limits = drill.limits.or_else(|| thread.limits().ok());
    findings::of_feed(&mut findings, *mode, holder, lead_error, axial_error, limits.as_ref());
    hole::of_depth(&mut findings, thread, job, depths)?;
    let r_plane = filled.r_plane_mm.unwrap_or(Length::ZERO);
    let spindle = spindle::spindle(thread, job, programmed, holder, &depths.straight, r_plane, &mut findings);
    let spindle = spindle.as_ref().map_err(|error| *error)?;
    tapping::of_plated_hole(job, drill, limits.as_ref(), &mut findings)?;
    let (tap_class, tap_limit) = tapping::of_tap(thread, job, *tap, *hole, &mut findings)?;
    let countersink = hole::sunk(thread, job, filled, drill.chosen.drill.diameter_mm(), &mut findings)?;
    let joint = joint::joint(thread, job, drill, countersink.as_ref(), &mut findings)?;
    let mut card = [None; MOST_CARD_ROWS];
    if *mode == FeedMode::PerMinute {
        card::fill(&mut card, &feed, programmed, job)?;
    }
    notes.tell(thread, &mut findings);

    let mut cycle = Cycle::default();
    if let Some(dialect) = dialect_of(job, &mut findings) {
        let request = CycleRequest {
            dialect,
            thread,
            rpm: programmed,
            feed: &feed,
            depth_mm: depths.straight.program_tap_mm,
            r_plane_mm: r_plane,
            holder,
            peck_mm: job.peck_mm,
            dwell_s: job.dwell_s,
            retract_factor: job.machine.retract_factor,
            return_to: job.return_to.unwrap_or(ReturnTo::RPlane),
        };
        write_words(&request, &mut cycle, &mut findings)?;
    }
    let withheld = withheld(&findings);
    if withheld.iter().any(Option::is_some) {
        cycle = Cycle::default();
    }
    let lead_cut_mm = feed.lead_cut_mm()?;
    let gauges = gauges_with(thread, limits.as_ref());
    let gauges = gauges.as_ref().map_err(|error| *error)?;
    Ok(Plan {
        thread: *thread,
        profile: thread.profile(),
        limits,
        drill: *drill,
        asked_rpm: asked,
        programmed_rpm: programmed,
        feed,
        lead_error,
        axial_error_mm: axial_error,
        lead_cut_mm,
        depths: depths.straight,
        taper: depths.taper,
        countersink,
        spindle: *spindle,
        tap_class,
        tap_limit,
        joint,
        gauges: *gauges,
        formed_minor_mm: tapping::formed_minor_mm(thread, *tap)?,
        not_go: not_go_rule(thread).ok(),
        cycle,
        withheld,
        findings,
        card,
        job: filled.job(job),
    })
}

/// The words, or the finding that says why there are none.
#[inline(never)]
fn write_words(
    request: &CycleRequest<'_>,
    cycle: &mut Cycle,
    findings: &mut Findings<MOST_PLAN_FINDINGS>,
) -> Result<(), Error> {
    if let Err(finding) = write_cycle(request, cycle)? {
        findings.push(finding);
    }
    Ok(())
}

/// The dialect to write words in, if they can be written; an unset one is a finding.
#[inline(never)]
fn dialect_of<'a>(job: &'a Job, findings: &mut Findings<MOST_PLAN_FINDINGS>) -> Option<&'a Dialect> {
    // A rigid holder cannot be fed off the lead: that is said already, and no cycle can be written.
    let off_the_lead = findings.iter().any(|f| f.id() == FindingId::Underfeed && f.severity() == Severity::Error);
    match &job.dialect {
        Some(_) if off_the_lead => None,
        Some(dialect) if !dialect.is_unset() => Some(dialect),
        _ => {
            findings.push(findings::dialect_unset());
            None
        }
    }
}

/// What the plan fills in where the job is silent.
pub(super) struct Filled {
    pub drill_sets: DrillSets,
    pub holder: Option<Holder>,
    pub chamfer_threads: Option<Length>,
    pub tap_set_on: Option<TapSetOn>,
    pub tap_centre_mm: Option<Length>,
    pub point_angle_deg: Option<Length>,
    pub bottom_clearance_mm: Option<Length>,
    pub countersink_angle_deg: Option<Length>,
    pub r_plane_mm: Option<Length>,
}

impl Filled {
    const fn of(job: &Job) -> Self {
        Self {
            drill_sets: job.drill_sets,
            holder: job.holder,
            chamfer_threads: job.chamfer_threads,
            tap_set_on: job.tap_set_on,
            tap_centre_mm: job.tap_centre_mm,
            point_angle_deg: job.point_angle_deg,
            bottom_clearance_mm: job.bottom_clearance_mm,
            countersink_angle_deg: job.countersink_angle_deg,
            r_plane_mm: job.r_plane_mm,
        }
    }

    /// The job with every assumption filled in.
    const fn job(&self, job: &Job) -> Job {
        Job {
            drill_sets: self.drill_sets,
            holder: self.holder,
            chamfer_threads: self.chamfer_threads,
            tap_set_on: self.tap_set_on,
            tap_centre_mm: self.tap_centre_mm,
            point_angle_deg: self.point_angle_deg,
            bottom_clearance_mm: self.bottom_clearance_mm,
            countersink_angle_deg: self.countersink_angle_deg,
            r_plane_mm: self.r_plane_mm,
            ..*job
        }
    }
}

/// The thread as a tapped hole: with a class, and a finding where one had to be assumed.
fn internal(written: &Thread, notes: &mut Notes) -> Result<Thread, Error> {
    let medium = written.medium_internal_class();
    let thread = if written.side() == Some(Side::External) {
        notes.push(Note::of(FindingId::ExternalClass));
        // The hole is planned on the medium class all the same; its words are withheld.
        written.without_class()
    } else if written.tolerance_class().is_some() {
        return Ok(written.with_side(Side::Internal).unwrap_or(*written));
    } else {
        if !medium.is_empty() {
            notes.push(Note::of(FindingId::ClassAssumed));
        }
        *written
    };
    if medium.is_empty() {
        // R has no internal side: its drill is refused with the reason.
        return Ok(thread.with_side(Side::Internal).unwrap_or(thread));
    }
    thread.with_class(medium.as_bytes())
}

/// The drill sets to choose from, the usual ones with a note where the job has neither drill nor sets.
fn drill_sets(thread: &Thread, job: &Job, notes: &mut Notes) -> DrillSets {
    if job.drill_mm.is_some() || !job.drill_list.is_empty() || !job.drill_sets.is_none() {
        return job.drill_sets;
    }
    notes.push(Note::of(FindingId::DrillSetsAssumed));
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

/// The findings that keep the words back: every error, and an unset dialect.
#[inline(never)]
fn withheld(findings: &Findings<MOST_PLAN_FINDINGS>) -> [Option<FindingId>; 4] {
    let mut ids = [None; 4];
    let keeps_back = findings.iter().filter(|f| f.severity() == Severity::Error || f.id() == FindingId::DialectUnset);
    for (slot, finding) in ids.iter_mut().zip(keeps_back) {
        *slot = Some(finding.id());
    }
    ids
}
