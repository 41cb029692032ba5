//! One job in, one plan out.

mod card;
mod findings;
mod hole;
mod job;
mod joint;
mod keys;
mod make;
mod notes;
mod page;
mod parts;
mod room;
mod sources;
mod spindle;
mod tapping;
mod text;
mod together;
mod tools;
mod work;

#[cfg(feature = "serde")]
mod json;

pub use card::CardRow;
pub use job::{Job, MOST_MACHINE_GEARS, Machine, Screw};
pub use make::plan;
pub use sources::Source;

use card::MOST_CARD_ROWS;

use crate::cycle::Cycle;
use crate::depth::{Countersunk, Depths};
use crate::drill::TapDrill;
use crate::engagement::Engagement;
use crate::feed::Feed;
use crate::finding::{FindingId, Findings};
use crate::gauge::{Gauges, NotGoRule};
use crate::length::{Length, Ratio};
use crate::limits::Limits;
use crate::profile::Profile;
use crate::tap::{IsoTap, TapLimit};
use crate::taper_depth::TaperDepths;
use crate::thread::Thread;

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
    /// The limit of the tap, where it is known: H of an inch tap, under a plating the one that leaves room for it,
    /// else the one that tap makers recommend for the class; D of a metric one beside its ISO class, as they
    /// recommend it for 6H, raised for a plating; none of a form tap that is not plated.
    pub tap_limit: Option<TapLimit>,
    /// What the joint carries, where the job speaks of a screw.
    pub joint: Option<Engagement>,
    /// The gauges to fetch.
    pub gauges: Gauges,
    /// Smallest and largest minor diameter that a formed thread is judged by in mm; None for a cut thread, and
    /// where the rule has not been read.
    pub formed_minor_mm: Option<(Length, Length)>,
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
