//! One job in, one plan out.

mod findings;
mod job;
mod page;
mod text;
mod work;

#[cfg(feature = "serde")]
mod json;

pub use job::{Job, Machine, Value};

use crate::cycle::{Cycle, CycleRequest, ReturnTo, cycle};
use crate::depth::{DepthRequest, Depths, Hole, TapSetOn, depths};
use crate::drill::{Drill, DrillSets, Tap, TapDrill, TapDrillRequest, judge_given, tap_drill};
use crate::error::{Code, Error, Field};
use crate::feed::{Feed, FeedMode, Unit, exact_speeds, feed, programmed_speed};
use crate::finding::{FindingId, Findings, Severity};
use crate::form::Form;
use crate::length::{Length, Ratio};
use crate::limits::Limits;
use crate::motion::Holder;
use crate::profile::Profile;
use crate::thread::{Side, Thread};

/// Version of the JSON of jobs and plans.
pub const SCHEMA: i64 = 1;

/// The longest chamfer of form C in threads (DIN 2197).
const LONGEST_FORM_C: i64 = 3;
/// Stop and chips below the tap, in pitches (common practice).
const BOTTOM_CLEARANCE_PITCHES: i64 = 3;
/// The usual twist drill's point angle in degrees.
const USUAL_POINT_ANGLE: i64 = 118;

/// A speed and the feed that belongs to it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct CardRow {
    /// Speed in rpm.
    pub rpm: Ratio,
    /// Its feed.
    pub feed: Feed,
    /// True if the word is exact.
    pub exact: bool,
    /// True for the speed of the plan.
    pub planned: bool,
}

/// How many speeds a card shows.
const MOST_CARD_ROWS: usize = 6;

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
    /// Depths from the face.
    pub depths: Depths,
    /// The words; empty while a finding of severity error stands or the dialect is unset.
    pub cycle: Cycle,
    /// The ids of the findings that withhold the words.
    pub withheld: [Option<FindingId>; 4],
    /// What is doubtful or wrong.
    pub findings: Findings,
    card: [Option<CardRow>; MOST_CARD_ROWS],
}

impl Plan {
    /// Speeds with their feeds, slowest first; empty per revolution, where the feed is the lead.
    pub fn card(&self) -> impl Iterator<Item = &CardRow> {
        self.card.iter().flatten()
    }

    /// What a plan cannot check.
    #[must_use]
    pub const fn not_checked(&self) -> &'static [&'static str] {
        &work::NOT_CHECKED
    }
}

/// The required fields of a job.
struct Given {
    written: Thread,
    unit: Unit,
    mode: FeedMode,
    decimals: u8,
    asked: Ratio,
    hole: Hole,
    depth: Length,
    tap: Tap,
}

fn given(job: &Job) -> Result<Given, Error> {
    let all = || {
        Some(Given {
            written: job.thread?,
            unit: job.unit?,
            mode: job.mode?,
            decimals: job.decimals?,
            asked: job.rpm?,
            hole: job.hole?,
            depth: job.full_thread_depth_mm?,
            tap: job.tap?,
        })
    };
    all().ok_or_else(|| job.missing().next().unwrap_or(Error::new(Code::Missing, Field::Job)))
}

/// Plans one tapped hole: thread, limits, drill, speed, feed, depths, words and what is doubtful.
///
/// Required in the job: thread, unit, mode, decimals, rpm, hole, full thread depth, tap. What is
/// missing beyond these is assumed, and each assumption is a finding.
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
    let mut notes = Findings::new();
    let Given { written, unit, mode, decimals, asked, hole, depth, tap } = given(&job)?;
    job.check_digits()?;
    if written.form().is_taper() || written.form() == Form::Npsf {
        return Err(Error::new(Code::UnsupportedForm, Field::Thread)
            .hint_text("no plan for taper and dryseal threads yet: ask for tap drill and taper depths"));
    }
    let thread = internal(&written, &mut notes)?;
    let drill = choose_drill(&thread, tap, &mut job, &mut notes)?;
    let step = job.machine.speed_step.unwrap_or(Length::ONE);
    let programmed = programmed_speed(asked, step, job.machine.lowest_rpm, job.machine.highest_rpm)?;
    let speed = (mode == FeedMode::PerMinute).then_some(programmed);
    let feed = feed(thread.lead_mm(), speed, unit, mode, decimals)?;
    let lead_error = feed.lead_error()?;
    let axial_error = feed.axial_error_mm(depth)?;
    let card = if mode == FeedMode::PerMinute {
        card(&thread, programmed, &job, unit, decimals)?
    } else {
        [None; MOST_CARD_ROWS]
    };
    let depths = plan_depths(&thread, &drill, &mut job, hole, depth, unit, &mut notes)?;

    let mut findings = Findings::new();
    findings.extend(&written.findings());
    findings.extend(&drill.findings);
    findings::of_thread(&mut findings, &thread);
    findings::of_speed(&mut findings, &job.machine, asked, programmed);
    findings::of_feed(&mut findings, mode, lead_error, axial_error);
    findings::of_depth(&mut findings, &thread, depth, &depths, hole);
    findings.extend(&notes);

    let words = match job.dialect {
        Some(dialect) if !dialect.is_unset() => {
            let request = CycleRequest {
                dialect: &dialect,
                thread: &thread,
                rpm: programmed,
                feed: &feed,
                depth_mm: depths.program_tap_mm,
                r_plane_mm: job.r_plane_mm.unwrap_or(Length::ZERO),
                holder: Holder::Rigid,
                peck_mm: None,
                dwell_s: None,
                retract_factor: None,
                return_to: ReturnTo::RPlane,
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
        limits: drill.limits.or(thread.limits().ok()),
        drill,
        asked_rpm: asked,
        programmed_rpm: programmed,
        feed,
        lead_error,
        axial_error_mm: axial_error,
        lead_cut_mm: feed.lead_cut_mm()?,
        depths,
        cycle: words.filter(|_| withheld.iter().all(Option::is_none)).unwrap_or_default(),
        withheld,
        findings,
        card,
        job,
    })
}

/// The thread as a tapped hole: with a class, and a finding where one had to be assumed.
fn internal(written: &Thread, notes: &mut Findings) -> Result<Thread, Error> {
    if written.side() == Some(Side::External) {
        notes.push(findings::external_class(written));
        // The hole is planned on the medium class all the same; its words are withheld.
        let class = written.medium_internal_class().as_bytes();
        let (size, pitch, starts) = (written.major_mm(), written.pitch_mm(), i64::from(written.starts()));
        return Thread::from_parts(written.form(), size, pitch, starts, written.hand(), None, class);
    }
    if written.tolerance_class().is_some() || written.medium_internal_class().is_empty() {
        return Ok(*written);
    }
    notes.push(crate::drill::class_assumed(written));
    written.with_class(written.medium_internal_class().as_bytes())
}

fn choose_drill(thread: &Thread, tap: Tap, job: &mut Job, notes: &mut Findings) -> Result<TapDrill, Error> {
    if let Some(diameter) = job.drill_mm {
        let excluded = [(job.percent.is_some(), Field::Percent), (!job.drill_sets.is_none(), Field::DrillSets)];
        if let Some((_, field)) = excluded.into_iter().find(|(given, _)| *given) {
            return Err(Error::new(Code::Contradiction, field)
                .hint_text("drill_mm already says which drill: give one or the other"));
        }
        return judge_given(thread, Drill::of_diameter(diameter), tap, job.basis);
    }
    if job.drill_sets.is_none() {
        job.drill_sets = DrillSets::usual(thread.form());
        notes.push(findings::drill_sets_assumed(thread));
    }
    let request =
        TapDrillRequest { tap, percent: job.percent, basis: job.basis, sets: job.drill_sets, taper_reamer: false };
    tap_drill(thread, &request)
}

fn plan_depths(
    thread: &Thread,
    drill: &TapDrill,
    job: &mut Job,
    hole: Hole,
    full_thread_mm: Length,
    unit: Unit,
    notes: &mut Findings,
) -> Result<Depths, Error> {
    let centre = job.tap_centre_mm.unwrap_or(Length::ZERO);
    let tap_set_on = match job.tap_set_on {
        Some(place) => place,
        None if centre == Length::ZERO => TapSetOn::Front,
        None => return Err(Error::new(Code::Missing, Field::TapSetOn).hint_text(TapSetOn::CHOICES)),
    };
    let request = DepthRequest {
        full_thread_mm,
        chamfer_threads: findings::assume(
            &mut job.chamfer_threads,
            Length::integer(LONGEST_FORM_C),
            notes,
            FindingId::ChamferAssumed,
        ),
        drill_mm: drill.chosen.drill.diameter_mm(),
        point_angle_deg: findings::assume(
            &mut job.point_angle_deg,
            Length::integer(USUAL_POINT_ANGLE),
            notes,
            FindingId::PointAngleAssumed,
        ),
        bottom_clearance_mm: match hole {
            Hole::Blind => findings::assume(
                &mut job.bottom_clearance_mm,
                thread.pitch_mm().times(Length::integer(BOTTOM_CLEARANCE_PITCHES))?,
                notes,
                FindingId::BottomClearanceAssumed,
            ),
            Hole::Through => *job.bottom_clearance_mm.get_or_insert(Length::ZERO),
        },
        tap_centre_mm: *job.tap_centre_mm.get_or_insert(centre),
        tap_set_on: *job.tap_set_on.get_or_insert(tap_set_on),
        hole,
    };
    let usual_r_plane = match unit {
        Unit::Mm => Length::integer(5),
        Unit::Inch => Length::new(127, 25)?, // 0.2 in
    };
    let r_plane = findings::assume(&mut job.r_plane_mm, usual_r_plane, notes, FindingId::RPlaneAssumed);
    if !r_plane.is_positive() {
        return Err(Error::new(Code::OutOfRange, Field::RPlane)
            .got(r_plane.to_f64())
            .hint_text("a height above the face in mm, above 0"));
    }
    depths(thread, &request)
}

/// Half, three quarters and all of the speed, with the exact speeds nearest below and above.
fn card(
    thread: &Thread,
    rpm: Ratio,
    job: &Job,
    unit: Unit,
    decimals: u8,
) -> Result<[Option<CardRow>; MOST_CARD_ROWS], Error> {
    let whole =
        |speed: Option<Ratio>| speed.and_then(|speed| speed.round_to(0, crate::Rounding::Down).ok()).map(|d| d.units());
    let lowest = whole(job.machine.lowest_rpm).unwrap_or(1).max(1);
    let highest = whole(job.machine.highest_rpm).unwrap_or(i64::MAX);
    let step = job.machine.speed_step.unwrap_or(Length::ONE);
    let reachable = |speed: &i64| Length::integer(*speed).over(step).is_ok_and(|steps| steps.whole().is_some());
    let exact = |lowest: i64, highest: i64| -> Option<Ratio> {
        let speeds = exact_speeds(thread.lead_mm(), rpm, unit, decimals, 64, lowest, Some(highest)).ok()?;
        speeds.into_iter().find(reachable).map(Length::integer)
    };
    let planned = rpm.round_to(0, crate::Rounding::Down)?.units();
    // Of a speed that is no whole number the whole one below is a speed of its own.
    let below = if rpm.whole().is_some() { planned.saturating_sub(1) } else { planned };
    let slower = |numerator| -> Option<Ratio> {
        let speed = rpm.times(Length::new(numerator, 4).ok()?).ok()?;
        programmed_speed(speed, step, job.machine.lowest_rpm, job.machine.highest_rpm).ok()
    };
    // A pair of a speed far away from the job's is no help at the machine: within half and double.
    let near = |speed: &Ratio| {
        speed.times(Length::integer(2)).is_ok_and(|twice| twice >= rpm)
            && rpm.times(Length::integer(2)).is_ok_and(|twice| *speed <= twice)
    };
    let mut speeds = [
        slower(2),
        slower(3),
        exact(lowest, below).filter(near),
        Some(rpm),
        exact(planned.saturating_add(1), highest).filter(near),
        None,
    ];
    speeds.sort_unstable_by_key(|speed| (speed.is_none(), *speed));
    let mut rows = [None; MOST_CARD_ROWS];
    let mut last = None;
    for (row, speed) in rows.iter_mut().zip(speeds.into_iter().flatten()) {
        if last == Some(speed) {
            continue;
        }
        last = Some(speed);
        let Ok(feed) = feed(thread.lead_mm(), Some(speed), unit, FeedMode::PerMinute, decimals) else { continue };
        *row = Some(CardRow { rpm: speed, feed, exact: feed.lead_error()? == Length::ZERO, planned: speed == rpm });
    }
    Ok(rows)
}

/// The findings that keep the words back: every error, and an unset dialect.
fn withheld(findings: &Findings) -> [Option<FindingId>; 4] {
    let mut ids = [None; 4];
    let keeps_back = findings.iter().filter(|f| f.severity() == Severity::Error || f.id() == FindingId::DialectUnset);
    for (slot, finding) in ids.iter_mut().zip(keeps_back) {
        *slot = Some(finding.id());
    }
    ids
}
