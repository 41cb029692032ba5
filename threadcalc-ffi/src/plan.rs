//! One job in, one plan out.

use core::ffi::c_char;

use threadcalc_core::{CardRow, Error, Plan, TapSetOn, plan};

use crate::choices::threadcalc_tap_set_on;
use crate::codes::threadcalc_status;
use crate::countersink::threadcalc_countersunk_t;
use crate::depth::threadcalc_depths_t;
use crate::drill::threadcalc_tap_drill_t;
use crate::engagement::threadcalc_engagement_t;
use crate::feed::threadcalc_feed_t;
use crate::finding_ids::threadcalc_finding;
use crate::gauge::{threadcalc_gauges_t, threadcalc_not_go_rule_t};
use crate::job::threadcalc_job_t;
use crate::json::write_plan;
use crate::limits::{threadcalc_limits_t, threadcalc_range_t};
use crate::memory::{SizedOutput, fill, fixed_text, or_zeros, padded_text, request, text_out};
use crate::spindle::threadcalc_spindle_t;
use crate::status::{guard, threadcalc_error_t};
use crate::tap::threadcalc_iso_tap_t;
use crate::tap_mark::threadcalc_tap_limit_t;
use crate::taper_depth::threadcalc_taper_depths_t;
use crate::thread::threadcalc_profile_t;
use crate::types::{threadcalc_finding_t, threadcalc_ratio_t, threadcalc_thread_t};

/// A speed and the feed that belongs to it. Frozen.
#[repr(C)]
#[derive(Clone, Copy, Default)]
pub struct threadcalc_card_row_t {
    /// Speed in turns per minute.
    pub rpm: threadcalc_ratio_t,
    /// Its feed word.
    pub word: [c_char; 32],
    /// 1 if the word is exact.
    pub is_exact: i32,
    /// 1 for the speed of the plan.
    pub is_planned: i32,
}

impl threadcalc_card_row_t {
    fn of(row: &CardRow) -> Self {
        Self {
            rpm: threadcalc_ratio_t::of(row.rpm),
            word: padded_text(row.feed.word_text()),
            is_exact: i32::from(row.exact),
            is_planned: i32::from(row.planned),
        }
    }
}

/// Everything from a callout to a tapping block. New members are added at the end only.
///
/// While a finding of severity error stands, or the dialect is unset, there are no words, and withheld
/// lists why.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct threadcalc_plan_t {
    /// The thread, internal, with the class that was used.
    pub thread: threadcalc_thread_t,
    /// Basic profile.
    pub profile: threadcalc_profile_t,
    /// Limits of size.
    pub limits: threadcalc_limits_t,
    /// The drill, its percent and its neighbours.
    pub tap_drill: threadcalc_tap_drill_t,
    /// The speed asked for, in turns per minute.
    pub asked_rpm: threadcalc_ratio_t,
    /// The speed the control will hold.
    pub programmed_rpm: threadcalc_ratio_t,
    /// The feed word and its error.
    pub feed: threadcalc_feed_t,
    /// Error of the lead over the full thread depth in mm.
    pub axial_error_mm: threadcalc_ratio_t,
    /// Depths from the face.
    pub depths: threadcalc_depths_t,
    /// Threads of chamfer planned on.
    pub chamfer_threads: threadcalc_ratio_t,
    /// Length of the tap's male centre planned on, in mm.
    pub tap_centre_mm: threadcalc_ratio_t,
    /// Point angle planned on, in degrees.
    pub point_angle_deg: threadcalc_ratio_t,
    /// Room below the tap planned on, in mm.
    pub bottom_clearance_mm: threadcalc_ratio_t,
    /// R plane planned on, in mm.
    pub r_plane_mm: threadcalc_ratio_t,
    /// Where the tap's length offset is set.
    pub tap_set_on: threadcalc_tap_set_on,
    /// How many rows the card has.
    pub card_count: i32,
    /// How many words there are.
    pub word_count: i32,
    /// How many program lines there are.
    pub block_count: i32,
    /// How many words must be restored.
    pub restore_count: i32,
    /// How many ids withhold the words.
    pub withheld_count: i32,
    /// How many findings there are.
    pub finding_count: i32,
    /// The ids of the findings that withhold the words.
    pub withheld: [threadcalc_finding; 5],
    /// Speeds with their feeds, slowest first; none per revolution, where the feed is the lead.
    pub card: [threadcalc_card_row_t; 8],
    /// The words in order.
    pub words: [[c_char; 32]; 20],
    /// The program lines in order, words separated by blanks.
    pub blocks: [[c_char; 160]; 6],
    /// What the next operation must set again.
    pub restore: [[c_char; 32]; 4],
    /// What is doubtful or wrong.
    pub findings: [threadcalc_finding_t; 20],
    /// 1 if taper holds something: the thread is a taper one.
    pub has_taper: i32,
    /// 1 if tap_class holds something: the thread is metric.
    pub has_tap_class: i32,
    /// 1 if tap_limit holds something: an inch tap under a plating.
    pub has_tap_limit: i32,
    /// 1 if joint holds something: the job speaks of a screw.
    pub has_joint: i32,
    /// 1 if not_go holds something: how far NOT GO may enter has been read.
    pub has_not_go: i32,
    /// 1 if countersink holds something: the job has one.
    pub has_countersink: i32,
    /// Depths of a taper thread, whose depth is its size.
    pub taper: threadcalc_taper_depths_t,
    /// The countersink and what it takes of the full thread.
    pub countersink: threadcalc_countersunk_t,
    /// What holder, spindle and axis have to do.
    pub spindle: threadcalc_spindle_t,
    /// Class of tap by ISO 2857.
    pub tap_class: threadcalc_iso_tap_t,
    /// The H limit that leaves room for the plating.
    pub tap_limit: threadcalc_tap_limit_t,
    /// What the joint carries.
    pub joint: threadcalc_engagement_t,
    /// The gauges to fetch.
    pub gauges: threadcalc_gauges_t,
    /// Minor diameter that a formed thread is judged by; 0/0 for cut threads and where none was read.
    pub formed_minor_mm: threadcalc_range_t,
    /// How far NOT GO may enter.
    pub not_go: threadcalc_not_go_rule_t,
}

impl threadcalc_plan_t {
    fn of(plan: &Plan) -> Result<Self, Error> {
        let job = &plan.job;
        let (withheld, withheld_count) = fill([0; 5], plan.withheld.iter().flatten().map(|id| id.number()));
        let (card, card_count) =
            fill([threadcalc_card_row_t::default(); 8], plan.card().map(threadcalc_card_row_t::of));
        let (words, word_count) = fill([[0; 32]; 20], plan.cycle.words().map(fixed_text));
        let (blocks, block_count) = fill([[0; 160]; 6], plan.cycle.blocks().map(|line| fixed_text(line.as_str())));
        let (restore, restore_count) = fill([[0; 32]; 4], plan.cycle.restore().map(fixed_text));
        let (findings, finding_count) =
            fill([threadcalc_finding_t::NONE; 20], plan.findings.iter().map(threadcalc_finding_t::of));
        Ok(Self {
            thread: threadcalc_thread_t::of(&plan.thread),
            profile: threadcalc_profile_t::of(&plan.profile),
            limits: plan.limits.as_ref().map_or(threadcalc_limits_t::NONE, threadcalc_limits_t::of),
            tap_drill: threadcalc_tap_drill_t::of(&plan.drill),
            asked_rpm: threadcalc_ratio_t::of(plan.asked_rpm),
            programmed_rpm: threadcalc_ratio_t::of(plan.programmed_rpm),
            feed: threadcalc_feed_t::of(&plan.feed)?,
            axial_error_mm: threadcalc_ratio_t::of(plan.axial_error_mm),
            depths: threadcalc_depths_t::of(&plan.depths),
            chamfer_threads: threadcalc_ratio_t::of_option(job.chamfer_threads),
            tap_centre_mm: threadcalc_ratio_t::of_option(job.tap_centre_mm),
            point_angle_deg: threadcalc_ratio_t::of_option(job.point_angle_deg),
            bottom_clearance_mm: threadcalc_ratio_t::of_option(job.bottom_clearance_mm),
            r_plane_mm: threadcalc_ratio_t::of_option(job.r_plane_mm),
            tap_set_on: job.tap_set_on.map_or(0, TapSetOn::number),
            card_count,
            word_count,
            block_count,
            restore_count,
            withheld_count,
            finding_count,
            withheld,
            card,
            words,
            blocks,
            restore,
            findings,
            has_taper: i32::from(plan.taper.is_some()),
            has_tap_class: i32::from(plan.tap_class.is_some()),
            has_tap_limit: i32::from(plan.tap_limit.is_some()),
            has_joint: i32::from(plan.joint.is_some()),
            has_not_go: i32::from(plan.not_go.is_some()),
            has_countersink: i32::from(plan.countersink.is_some()),
            taper: or_zeros(plan.taper.as_ref().map(threadcalc_taper_depths_t::of)),
            countersink: or_zeros(plan.countersink.as_ref().map(threadcalc_countersunk_t::of)),
            spindle: threadcalc_spindle_t::of(&plan.spindle),
            tap_class: or_zeros(plan.tap_class.map(threadcalc_iso_tap_t::of)),
            tap_limit: or_zeros(plan.tap_limit.map(threadcalc_tap_limit_t::of)),
            joint: or_zeros(plan.joint.as_ref().map(threadcalc_engagement_t::of)),
            gauges: threadcalc_gauges_t::of(&plan.gauges),
            formed_minor_mm: threadcalc_range_t::of(
                plan.formed_minor_mm.map_or((None, None), |(low, high)| (Some(low), Some(high))),
            ),
            not_go: or_zeros(plan.not_go.as_ref().map(threadcalc_not_go_rule_t::of)),
        })
    }
}

/// Plans one tapped hole: thread, limits, drill, speed, feed, depths, words and what is doubtful.
/// found_size is sizeof(threadcalc_plan_t).
///
/// Errors: missing names the member; every error of the single calculations; structure-size,
/// unsupported-field.
/// Source: those of the single calculations.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_plan(
    job: *const threadcalc_job_t,
    found: *mut threadcalc_plan_t,
    found_size: usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let job = unsafe { request(job)?.read() }?;
        let place = unsafe { SizedOutput::new(found, found_size) }?;
        place.write(threadcalc_plan_t::of(&plan(&job)?)?);
        Ok(())
    })
}

/// The plan of a job as a machinist reads it: UTF-8, lines ended by a line feed.
///
/// Errors: as threadcalc_plan, buffer-too-short.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_plan_text(
    job: *const threadcalc_job_t,
    text: *mut c_char,
    capacity: usize,
    needed: *mut usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let plan = plan(&unsafe { request(job)?.read() }?)?;
        unsafe { text_out(|sink| sink.display(plan), text, capacity, needed) }?;
        Ok(())
    })
}

/// The plan of a job as JSON: exact values are texts, derived ones numbers, what is not given null.
///
/// Errors: as threadcalc_plan, buffer-too-short.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_plan_json_of_job(
    job: *const threadcalc_job_t,
    text: *mut c_char,
    capacity: usize,
    needed: *mut usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let plan = plan(&unsafe { request(job)?.read() }?)?;
        unsafe { text_out(|sink| write_plan(&plan, sink), text, capacity, needed) }?;
        Ok(())
    })
}
