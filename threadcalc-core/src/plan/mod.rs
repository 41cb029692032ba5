//! One job in, one plan out.

mod card;
mod findings;
mod hole;
mod job;
mod joint;
mod keys;
mod page;
mod sources;
mod spindle;
mod tapping;
mod text;
mod tools;
mod work;

#[cfg(feature = "serde")]
mod json;

pub use card::CardRow;
pub use job::{Job, MOST_MACHINE_GEARS, Machine, Screw};
pub use sources::Source;

use card::MOST_CARD_ROWS;

use crate::cycle::{Cycle, CycleRequest, ReturnTo, cycle};
use crate::depth::{Countersunk, Depths, Hole};
use crate::drill::{Drill, DrillSets, Stock, Tap, TapDrill, TapDrillRequest, judge_given, tap_drill};
use crate::engagement::Engagement;
use crate::error::{Code, Error, Field};
use crate::feed::{Feed, FeedMode, Unit, feed, programmed_speed};
use crate::finding::{FindingId, Findings, Severity};
use crate::gauge::{Gauges, NotGoRule, gauges_with, not_go_rule};
use crate::length::{Length, Ratio};
use crate::limits::Limits;
use crate::profile::Profile;
use crate::tap::{IsoTap, TapLimit};
use crate::taper_depth::TaperDepths;
use crate::thread::{Side, Thread};

pub use spindle::Spindle;

/// Version of the JSON of jobs and plans.
pub const SCHEMA: i64 = 1;

/// Everything from a callout to a tapping block.
#[derive(Clone, Copy, Debug)]
#[non_exhaustive]
pub struct Plan {
    /// The thread, internal, with the class that was used.
    pub thread: Thread,
    /// The job as it was planned: every assumption filled in.
    pub job: Job,
    /// Basic profile.
    pub profile: Profile,
    /// Limits of size; None where the standard's values are not sourced.
    pub limits: Option<Limits>,
    /// The drill, its percent and its neighbours.
    pub drill: TapDrill,
    /// The speed asked for.
    pub asked_rpm: Ratio,
    /// The speed the control will hold.
    pub programmed_rpm: Ratio,
    /// The feed word and its error.
    pub feed: Feed,
    /// Relative error of the lead.
    pub lead_error: Ratio,
    /// Error of the lead over the full thread depth in mm.
    pub axial_error_mm: Length,
    /// The lead that will be cut in mm.
    pub lead_cut_mm: Length,
    /// Depths from the face; of a taper thread, whose program is the first hole's, with more in `taper`.
    pub depths: Depths,
    /// Depths of a taper thread, whose depth is its size.
    pub taper: Option<TaperDepths>,
    /// The countersink and what it takes of the full thread, where the job has one.
    pub countersink: Option<Countersunk>,
    /// What holder, spindle and axis have to do.
    pub spindle: Spindle,
    /// Class of tap by ISO 2857; metric threads with a class only.
    pub tap_class: Option<IsoTap>,
    /// The H limit that leaves room for the plating; inch taps under a plating only.
    pub tap_limit: Option<TapLimit>,
    /// What the joint carries, where the job speaks of a screw.
    pub joint: Option<Engagement>,
    /// The gauges to fetch.
    pub gauges: Gauges,
    /// How far NOT GO may enter, where that has been read.
    pub not_go: Option<NotGoRule>,
    /// The words; empty while a finding of severity error stands or the dialect is unset.
    pub cycle: Cycle,
    /// The ids of the findings that withhold the words.
    pub withheld: [Option<FindingId>; 4],
    /// What is doubtful or wrong.
    pub findings: Findings<MOST_PLAN_FINDINGS>,
    card: [Option<CardRow>; MOST_CARD_ROWS],
}

/// How many findings a plan holds.
pub(crate) const MOST_PLAN_FINDINGS: usize = 20;

impl Plan {
    /// Speeds with their feeds, slowest first; empty per revolution, where the feed is the lead.
    pub fn card(&self) -> impl Iterator<Item = &CardRow> {
        self.card.iter().flatten()
    }

    /// What this plan did not check, by what the job left out and by what no plan can see.
    pub fn not_checked(&self) -> impl Iterator<Item = &'static str> + Clone {
        let job = &self.job;
        let always = |what| Some(what);
        let unless = |checked: bool, what| (!checked).then_some(what);
        [
            always("tool in the pocket and its offsets"),
            unless(job.part_thickness_mm.is_some(), "part thickness"),
            always("clamps"),
            unless(job.tap_mark.is_some(), "what the tap's shank says"),
            always("chamfer of this very tap"),
            always("pitch diameter: only the gauge shows it"),
            unless(self.spindle.gear.is_some(), "torque of the spindle"),
            unless(self.spindle.axis.is_some(), "feed limit of the axis"),
            unless(job.machine.acceleration_rpm_s.is_some(), "how fast the spindle comes to speed"),
            always("synchronisation of this machine"),
            always("coolant"),
        ]
        .into_iter()
        .flatten()
    }
}

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
    let mut job = *job;
    let Given { written, unit, mode, decimals, hole, tap } = given(&job)?;
    job.check_digits()?;
    let (mut findings, mut notes) = (Findings::new(), Notes::new());
    findings.extend(&written.findings());
    let thread = internal(&written, &mut notes)?;
    let drill = choose_drill(&thread, tap, &mut job, &mut notes).map_err(|error| of_thread(of_percent(error, &job)))?;
    check_oversize(&thread, &job, &drill)?;
    findings.extend(&drill.findings);
    findings::of_thread(&mut findings, &thread);

    let asked = spindle::asked_speed(&job, &thread)?;
    let step = job.machine.speed_step.unwrap_or(Length::ONE);
    let programmed = programmed_speed(asked, step, job.machine.lowest_rpm, job.machine.highest_rpm)
        .map_err(|error| spindle::of_speed(error, &job))?;
    findings::of_speed(&mut findings, &job.machine, asked, programmed);
    let holder = spindle::holder(&mut job, &mut notes);
    let lead = spindle::fed_lead(&job, &thread, holder, &mut findings)?;
    let speed = (mode == FeedMode::PerMinute).then_some(programmed);
    let feed = feed(lead, speed, unit, mode, decimals)?;
    let depths = hole::plan_depths(&thread, &drill, &mut job, hole, holder, &mut findings, &mut notes)?;
    let cut_mm = hole::depth_in_metal(&job, &depths.straight);
    let lead_error = feed.lead_error()?;
    let axial_error = Feed::axial_error_of(lead_error, cut_mm)?;
    let limits = drill.limits.or_else(|| thread.limits().ok());
    findings::of_feed(&mut findings, mode, holder, lead_error, axial_error, limits.as_ref());
    hole::of_depth(&mut findings, &thread, &job, &depths)?;
    let spindle = spindle::spindle(&thread, &job, programmed, tap, holder, &depths.straight, &mut findings)?;
    let (tap_class, tap_limit) = tapping::of_tap(&thread, &job, tap, hole, &mut findings)?;
    let countersink = hole::sunk(&thread, &mut job, drill.chosen.drill.diameter_mm(), &mut findings)?;
    let joint = joint::joint(&thread, &job, &drill, countersink.as_ref(), &mut findings)?;
    let card = match mode {
        FeedMode::PerMinute => card::card(lead, programmed, &job, unit, decimals)?,
        FeedMode::PerRevolution => [None; MOST_CARD_ROWS],
    };
    findings.extend(&notes);

    // A rigid holder cannot be fed off the lead: that is said already, and no cycle can be written.
    let off_the_lead = findings.iter().any(|f| f.id() == FindingId::Underfeed && f.severity() == Severity::Error);
    let words = match job.dialect {
        Some(_) if off_the_lead => None,
        Some(dialect) if !dialect.is_unset() => {
            let request = CycleRequest {
                dialect: &dialect,
                thread: &thread,
                rpm: programmed,
                feed: &feed,
                depth_mm: depths.straight.program_tap_mm,
                r_plane_mm: job.r_plane_mm.unwrap_or(Length::ZERO),
                holder,
                peck_mm: job.peck_mm,
                dwell_s: job.dwell_s,
                retract_factor: job.machine.retract_factor,
                return_to: job.return_to.unwrap_or(ReturnTo::RPlane),
            };
            cycle(&request)?.map_err(|finding| findings.push(finding)).ok()
        }
        _ => {
            findings.push(findings::dialect_unset());
            None
        }
    };
    let withheld = withheld(&findings);
    Ok(Plan {
        thread,
        profile: thread.profile(),
        limits,
        drill,
        asked_rpm: asked,
        programmed_rpm: programmed,
        feed,
        lead_error,
        axial_error_mm: axial_error,
        lead_cut_mm: feed.lead_cut_mm()?,
        depths: depths.straight,
        taper: depths.taper,
        countersink,
        spindle,
        tap_class,
        tap_limit,
        joint,
        gauges: gauges_with(&thread, limits.as_ref())?,
        not_go: not_go_rule(&thread).ok(),
        cycle: words.filter(|_| withheld.iter().all(Option::is_none)).unwrap_or_default(),
        withheld,
        findings,
        card,
        job,
    })
}

/// What was assumed: told behind what is doubtful.
type Notes = Findings<10>;

/// The thread as a tapped hole: with a class, and a finding where one had to be assumed.
fn internal(written: &Thread, notes: &mut Notes) -> Result<Thread, Error> {
    let medium = written.medium_internal_class();
    let thread = if written.side() == Some(Side::External) {
        notes.push(findings::external_class(written));
        // The hole is planned on the medium class all the same; its words are withheld.
        written.without_class()
    } else if written.tolerance_class().is_some() {
        return Ok(written.with_side(Side::Internal).unwrap_or(*written));
    } else {
        if !medium.is_empty() {
            notes.push(crate::drill::class_assumed(written));
        }
        *written
    };
    if medium.is_empty() {
        // R has no internal side: its drill is refused with the reason.
        return Ok(thread.with_side(Side::Internal).unwrap_or(thread));
    }
    thread.with_class(medium.as_bytes())
}

fn choose_drill(thread: &Thread, tap: Tap, job: &mut Job, notes: &mut Notes) -> Result<TapDrill, Error> {
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
    let (percent, basis) = (job.percent, job.basis);
    if !job.drill_list.is_empty() {
        if !job.drill_sets.is_none() {
            return both(Field::DrillList);
        }
        let sets = oversized(Stock::from(&job.drill_list), job.oversize_mm);
        return tap_drill(thread, &TapDrillRequest { tap, percent, basis, sets, taper_reamer });
    }
    if job.drill_sets.is_none() {
        job.drill_sets = DrillSets::usual(thread.form());
        notes.push(findings::drill_sets_assumed(thread));
    }
    let sets = oversized(Stock::from(job.drill_sets), job.oversize_mm);
    tap_drill(thread, &TapDrillRequest { tap, percent, basis, sets, taper_reamer })
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
fn withheld(findings: &Findings<MOST_PLAN_FINDINGS>) -> [Option<FindingId>; 4] {
    let mut ids = [None; 4];
    let keeps_back = findings.iter().filter(|f| f.severity() == Severity::Error || f.id() == FindingId::DialectUnset);
    for (slot, finding) in ids.iter_mut().zip(keeps_back) {
        *slot = Some(finding.id());
    }
    ids
}
