//! The Python door: conversions and classes, no arithmetic.
//!
//! | Python | Rust |
//! |---|---|
//! | `int`, `Fraction`, `Decimal`, `str`, `float` (its shortest decimal text) | `Length` in |
//! | `Fraction` | `Length` out |
//! | `float` | derived `f64` out |
//! | `None` | `None`, and NaN where a derived value is absent |
//! | `ThreadcalcError`, `DesignationError` | `Error` |
#![deny(clippy::float_arithmetic, clippy::arithmetic_side_effects)]

mod answer;
mod audit;
#[cfg(feature = "bench")]
mod bench;
mod blind_hole;
mod bottoming;
mod check;
mod comment;
mod compare;
mod countersink;
mod cutting;
mod cycle;
mod depth;
mod drill;
mod engagement;
mod engagement_group;
mod error;
mod feed;
mod fields;
mod finding;
mod gauge;
mod gear;
mod hole_note;
mod identify;
mod job;
mod limits;
mod motion;
mod number;
mod pipe;
mod plan;
mod program_depth;
mod program_finding;
mod reading;
mod tap;
mod tap_drill;
mod tap_mark;
mod taper_depth;
mod text;
mod thread;
mod through_hole;

#[pyo3::pymodule(gil_used = false)]
mod _threadcalc {
    #[pymodule_export]
    use crate::audit::{Audit, AuditSummary, AuditedProgram, audit, write_baseline};
    #[cfg(feature = "bench")]
    #[pymodule_export]
    use crate::bench::{core_plans_ns, empty_feed, empty_plan};
    #[pymodule_export]
    use crate::blind_hole::{BlindThread, ChamferReading, chamfers_for_full_thread, full_thread_that_fits};
    #[pymodule_export]
    use crate::bottoming::{BottomReading, Bottoming, bottoming, run_out_mm};
    #[pymodule_export]
    use crate::check::{Report, check};
    #[pymodule_export]
    use crate::comment::{Comment, FoundThread, read_comment};
    #[pymodule_export]
    use crate::compare::{Comparison, HoleChange, compare};
    #[pymodule_export]
    use crate::countersink::{Countersunk, UsualCountersink, countersink, usual_countersink};
    #[pymodule_export]
    use crate::cutting::{
        FactorRange, StartingForces, TorqueBand, forming_factor, materials, power_kw, spindle_speed,
        spindle_speed_feet, starting_forces, surface_speed_m_min, taper_factor, torque_by_chip_area, torque_by_pitch,
        torque_nm,
    };
    #[pymodule_export]
    use crate::cycle::{Cycle, Dialect, cycle};
    #[pymodule_export]
    use crate::depth::{Depths, depths};
    #[pymodule_export]
    use crate::drill::{Drill, drill_diameter, drills, percent_thread};
    #[pymodule_export]
    use crate::engagement::{
        Engagement, StartingStrength, engagement, property_classes, starting_part_strength, starting_strength,
    };
    #[pymodule_export]
    use crate::engagement_group::{EngagementLengths, engagement_group, recommended_class};
    #[pymodule_export]
    use crate::feed::{Feed, exact_speeds, feed, nearest_exact_speeds, programmed_speed};
    #[pymodule_export]
    use crate::finding::Finding;
    #[pymodule_export]
    use crate::gauge::{
        Gauge, Gauges, NextMove, NotGoRule, ReEntry, best_wire_mm, gauges, next_move, not_go_rule, over_wires,
        re_entry_r, trimmed_depth_mm,
    };
    #[pymodule_export]
    use crate::gear::{Gear, GearFit, gear_fit};
    #[pymodule_export]
    use crate::hole_note::{HoleNote, read_hole_note};
    #[pymodule_export]
    use crate::identify::{Identification, Match, identify, identify_feed, identify_lead, threads_of_pitch};
    #[pymodule_export]
    use crate::job::Job;
    #[pymodule_export]
    use crate::limits::{CoatingGrowth, Limits, Profile};
    #[pymodule_export]
    use crate::motion::{
        FeedFit, HolderClearance, HolderTravel, TappingTime, feed_fit, holder_clearance, holder_travel, pattern_time_s,
        speed_after_turns, tapping_time, turns_to_speed,
    };
    #[pymodule_export]
    use crate::number::read_number;
    #[pymodule_export]
    use crate::pipe::Pipe;
    #[pymodule_export]
    use crate::plan::{CardRow, Plan, Spindle, plan};
    #[pymodule_export]
    use crate::program_depth::{ProgramDepth, program_depth, program_depth_of_derived};
    #[pymodule_export]
    use crate::program_finding::{ProgramFinding, ProgramFindingKind, TappedHole, program_finding_kinds};
    #[pymodule_export]
    use crate::reading::Reading;
    #[pymodule_export]
    use crate::tap::{
        ChamferForm, IsoTap, TapAdvice, TapKind, chamfers_that_fit, iso_tap_class, iso_tap_pitch_diameter_mm,
    };
    #[pymodule_export]
    use crate::tap_drill::{Alternative, TapDrill, form_hole_mm, judge_drill, probable_hole_mm, tap_drill};
    #[pymodule_export]
    use crate::tap_mark::{
        ShankMark, TapLimit, h_limit_for_plating, judge_tap, read_shank_mark, usual_tap_limit,
        usual_tap_limit_for_plating,
    };
    #[pymodule_export]
    use crate::taper_depth::{TaperDepths, taper_depths};
    #[pymodule_export]
    use crate::thread::{Thread, near, read_fit, standard_threads, threads_near_diameter, threads_near_pitch};
    #[pymodule_export]
    use crate::through_hole::{ThroughHole, through_hole};
}
