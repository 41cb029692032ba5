//! The parts of a plan while it is made.

use super::notes::Notes;
use super::{Job, MOST_PLAN_FINDINGS, Spindle};
use crate::depth::{Countersunk, Depths, TapSetOn};
use crate::drill::{DrillSets, TapDrill};
use crate::engagement::Engagement;
use crate::feed::Feed;
use crate::finding::Findings;
use crate::length::{Length, Ratio};
use crate::limits::Limits;
use crate::motion::Holder;
use crate::tap::{IsoTap, TapLimit};
use crate::taper_depth::TaperDepths;
use crate::thread::Thread;

/// What is made step by step, each part where it stands until the plan is put together.
pub(super) struct Parts<'a> {
    pub thread: &'a Thread,
    pub drill: &'a TapDrill,
    pub limits: Option<Limits>,
    pub fed: &'a Fed,
    pub holder: Holder,
    pub lead_error: Ratio,
    pub axial_error_mm: Length,
    pub lead_cut_mm: Length,
    pub depths: Depths,
    pub taper: Option<TaperDepths>,
    pub countersink: Option<Countersunk>,
    pub spindle: Spindle,
    pub tap_class: Option<IsoTap>,
    pub tap_limit: Option<TapLimit>,
    pub joint: Option<Engagement>,
    pub formed_minor_mm: Option<(Length, Length)>,
    pub filled: Filled,
    pub notes: Notes,
    pub findings: Findings<MOST_PLAN_FINDINGS>,
}

/// Speed and feed.
pub(super) struct Fed {
    pub asked_rpm: Ratio,
    pub programmed_rpm: Ratio,
    pub feed: Feed,
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
    pub(super) const fn of(job: &Job) -> Self {
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
    pub(super) const fn job(&self, job: &Job) -> Job {
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
