#![doc = include_str!("lib.md")]
#![no_std]
#![forbid(unsafe_code)]
#![cfg_attr(
    not(test),
    deny(
        clippy::unwrap_used,
        clippy::expect_used,
        clippy::panic,
        clippy::indexing_slicing,
        clippy::string_slice,
        clippy::arithmetic_side_effects,
        clippy::unreachable
    )
)]

#[cfg(test)]
extern crate std;

mod callout;
mod coating;
mod comment;
mod cursor;
mod cutting;
mod cycle;
mod decimal;
mod depth;
mod designation;
mod dialect;
mod doubts;
mod drill;
mod engagement;
mod engagement_group;
mod error;
mod feed;
mod field;
mod finding;
mod finding_id;
mod form;
mod gauge;
mod hole_note;
#[cfg(feature = "serde")]
mod json;
mod length;
mod limits;
mod motion;
mod named;
pub mod nc;
mod number;
mod number_key;
mod pipe;
mod plain;
mod plan;
mod profile;
mod range;
mod series;
mod tap;
mod taper_depth;
mod text;
mod thread;
mod tolerance_class;
mod value;

pub use coating::CoatingGrowth;
pub use comment::{Comment, FoundThread, read_comment};
pub use cutting::{
    FORMING_FACTOR, FactorRange, ForceByChipArea, ForceByPitch, Gear, GearFit, MOST_GEARS, Material, TAPER_FACTOR,
    TorqueBand, TorquePoint, gear_fit, power_kw, spindle_speed, spindle_speed_feet, surface_speed_m_min,
    torque_by_chip_area, torque_by_pitch,
};
pub use cycle::{Cycle, CycleRequest, cycle};
pub use depth::{
    BlindHole, BlindThread, BottomReading, BottomVerdict, Bottoming, ChamferReading, Countersunk, DepthRequest,
    DepthRounding, Depths, DrilledTo, Hole, ProgramDepth, RunOut, TapSetOn, ThroughHole, ThroughHoleRequest,
    USUAL_POINT_ANGLES_DEG, UsualCountersink, bottoming, chamfers_for_full_thread, countersink, depths,
    full_thread_that_fits, program_depth, program_depth_of_derived, run_out_mm, through_hole, usual_countersink,
};
pub use designation::read_fit;
pub use dialect::{
    BlockOrder, CodeText, DecimalsByWord, Dialect, DwellUnit, FeedBasis, LetterText, NoPoint, NumberSpaces, Reading,
    RepeatZero, RetractIn, ReturnTo, RigidUntil, WordDecimals,
};
pub use drill::{
    Alternative, Basis, Drill, DrillSet, DrillSets, MOST_OWN_DRILLS, OwnDrills, ProbableHole, Stock, Tap, TapDrill,
    TapDrillRequest, WithinLimits, drill_diameter, drills, form_hole_mm, judge_drill, percent_thread, probable_hole_mm,
    tap_drill,
};
pub use engagement::{Engagement, EngagementRequest, PropertyClass, StartingStrength, Weakest, engagement};
pub use engagement_group::{EngagementGroup, EngagementLengths, FitQuality, engagement_group};
pub use error::{Code, Error, Field};
pub use feed::{ExactSpeeds, Feed, FeedMode, Unit, exact_speeds, feed, nearest_exact_speeds, programmed_speed};
pub use finding::{Finding, FindingId, Findings, NumberKey, Severity};
pub use form::{Form, WrittenAs};
pub use gauge::{
    Gauge, GaugeKind, GaugeReading, GaugeResult, Gauges, Move, NextMove, NotGoRule, RE_ENTRY_RULE, ReEntry, Verdict,
    best_wire_mm, gauges, next_move, not_go_rule, over_wires, re_entry_r, trimmed_depth_mm,
};
pub use hole_note::{HoleNote, Plating, Sides, read_hole_note};
pub use length::{Decimal, Length, Ratio, Rounding};
pub use limits::{Confidence, Limits, Range};
pub use motion::{
    FeedFit, Holder, HolderClearance, HolderTravel, TappingMotion, TappingTime, feed_fit, holder_clearance,
    holder_travel, pattern_time_s, speed_after_turns, tapping_time, turns_to_speed,
};
pub use number::read_number;
pub use pipe::Pipe;
pub use plan::{CardRow, Job, MOST_MACHINE_GEARS, Machine, Plan, SCHEMA, Screw, Source, Spindle, plan};
pub use profile::Profile;
pub use series::{
    Near, NearThreads, Series, choice, is_iso_262, near, standard_threads, threads_near_diameter, threads_near_pitch,
};
pub use tap::{
    ChamferForm, IsoTap, IsoTapClass, LimitLetter, ShankMark, Suits, TapAdvice, TapJob, TapKind, TapLimit,
    chamfers_that_fit, h_limit_for_plating, iso_tap_class, judge_tap, read_shank_mark, usual_tap_limit,
    usual_tap_limit_for_plating,
};
pub use taper_depth::{TaperDepthRequest, TaperDepths, taper_depths};
pub use text::Text;
pub use thread::{Hand, Side, Thread};
pub use tolerance_class::ToleranceClass;
pub use value::Value;
