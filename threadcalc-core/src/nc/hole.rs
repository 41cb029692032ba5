//! How deep a hole is tapped, and what was drilled there before.

use super::declared::Declared;
use super::drilled::{DrilledHole, Place};
use super::finding::{EvidenceKind, ProgramNumberKey as Key};
use super::finding_id::ProgramFindingId as Id;
use super::judge::{Judge, Tapping, as_hole};
use super::options::ToolKind;
use super::readings;
use super::report::Reason;
use super::state::{Act, Effects};
use crate::depth::{BottomVerdict, bottoming, point_height_mm};
use crate::drill::{Drill, Tap, WithinLimits, judge_drill};
use crate::finding::Severity;
use crate::length::Length;
use crate::taper_depth::{TaperDepthRequest, taper_depths};
use crate::thread::Thread;

/// Deeper than this many diameters nobody taps.
const MOST_DIAMETERS: i64 = 12;
/// A taper thread this many turns off its nominal depth is guessed.
const TAPER_TURNS: i64 = 2;

/// Percent of what a form tap makes: beyond it there is too much metal, below it hardly a thread (judgement).
const FORM_PERCENT: core::ops::RangeInclusive<f64> = 40.0..=100.0;

impl Judge {
    /// A hole that is drilled.
    pub(super) fn drill(&mut self, effects: &Effects) {
        if effects.repeats == 0 {
            return;
        }
        // A bored hole is a hole too, but a program that only bores is none that drills.
        self.drilled.any |= effects.act == Act::Drill;
        self.drilled.somewhere |= effects.repeats > 1 && self.state.is_incremental();
        let tool = self.tool();
        let (kind, diameter_mm) = self.comments.kind(tool.as_ref());
        let Some(place) = Place::of(self.state.position, self.state.work_offset) else {
            self.drilled.somewhere = true;
            return;
        };
        let hole = DrilledHole {
            place,
            z_mm: self.state.cycle.heights().1,
            diameter_mm,
            point_angle_deg: tool.and_then(|tool| tool.point_angle_deg),
            is_spot: kind == Some(ToolKind::SpotDrill),
            line: self.line,
        };
        if self.drilled.push(hole) {
            self.not_checked.note(Reason::HolesForgotten, self.line);
        }
    }

    /// The depth of a tapped hole, by itself and against the drilled hole.
    pub(super) fn depth(&mut self, effects: &Effects, at: &Tapping, declared: Option<&Declared>) {
        self.geometry(at, declared);
        let place = Place::of(self.state.position, self.state.work_offset);
        let Some(place) = place else {
            self.not_checked.note(Reason::PlaceNotKnown, self.line);
            return;
        };
        self.again(effects, at, &place);
        let thread = declared.map(|declared| declared.thread);
        match self.drilled.at(&place, thread.map(|thread| thread.major_mm())) {
            Some(hole) => {
                if let Some(thread) = thread {
                    self.size(&hole, at, &thread);
                    self.bottom(&hole, at, &thread);
                }
            }
            None if self.drilled.any && !self.drilled.somewhere && !self.drilled.has(&place) => {
                let finding = self.at_block(Id::HoleNotDrilled);
                self.tell_hole(finding);
            }
            None => {}
        }
        self.tapped.push(place, self.line);
    }

    /// A finding of this hole alone.
    fn tell_hole(&mut self, mut finding: super::finding::ProgramFinding) {
        finding.hole = Some(self.holes);
        self.tell(finding);
    }

    fn geometry(&mut self, at: &Tapping, declared: Option<&Declared>) {
        let Some(z) = at.z_mm else {
            // Under G91 the depth from the face may be open while the travel is known.
            self.not_checked.note(Reason::DepthNotKnown, self.line);
            return;
        };
        if let Some(r) = at.r_mm.filter(|r| *r <= z) {
            let finding = self.at_block(Id::CycleGeometry).with(Key::RMm, r.to_f64()).with(Key::ZMm, z.to_f64());
            self.count(finding, self.state.cycle.line, at.count);
            return;
        }
        let depth = at.depth_mm.unwrap_or(Length::ZERO);
        let lead = declared.map(|declared| declared.thread.lead_mm()).or(at.lead_mm);
        let diameters =
            declared.and_then(|declared| declared.thread.major_mm().times(Length::integer(MOST_DIAMETERS)).ok());
        let shallow = !depth.is_positive() || lead.is_some_and(|lead| depth < lead);
        if shallow || diameters.is_some_and(|most| depth > most) {
            let turns = lead.and_then(|lead| depth.over(lead).ok());
            let finding = self
                .at_block(Id::DepthImplausible)
                .severe(Severity::error_if(shallow))
                .with(Key::ZMm, z.to_f64())
                .with_some(Key::Turns, turns.map(Length::to_f64));
            self.count(finding, self.state.cycle.line, at.count);
            return;
        }
        if let Some(declared) = declared {
            self.full_thread(depth, at, &declared.thread);
            self.taper(depth, at, &declared.thread);
        }
    }

    /// Full thread ends where the chamfer begins.
    fn full_thread(&mut self, depth: Length, at: &Tapping, thread: &Thread) {
        let Some(wanted) = self.options.full_thread_depth_mm else { return };
        // The longest chamfer of form C, where the tool list does not say.
        let chamfer = at.tool.and_then(|tool| tool.chamfer_threads);
        let full = chamfer.unwrap_or(Length::integer(3)).times(thread.pitch_mm()).and_then(|long| depth.minus(long));
        let Some(full) = full.ok().filter(|full| *full < wanted) else { return };
        let mut finding = self.at_block(Id::FullThreadShort).with(Key::FullThreadMm, full.to_f64());
        if chamfer.is_none() {
            finding = finding.uncertain(readings::CHAMFER_OF_THREE);
        }
        self.count(finding, self.state.cycle.line, at.count);
    }

    fn taper(&mut self, depth: Length, at: &Tapping, thread: &Thread) {
        if !thread.form().is_taper() {
            return;
        }
        // The turns are those of gauge and tap: any drill and any room below do.
        let request = TaperDepthRequest {
            projection_mm: None,
            drill_mm: Length::ONE,
            point_angle_deg: Length::integer(118),
            bottom_clearance_mm: Length::ZERO,
        };
        let Ok(nominal) = taper_depths(thread, &request) else { return };
        let Ok(turns) = depth.over(thread.pitch_mm()) else { return };
        let off = turns.minus(nominal.tap_turns).map(Length::magnitude);
        if off.is_ok_and(|off| off > Length::integer(TAPER_TURNS)) {
            let finding = self
                .at_block(Id::TaperDepth)
                .with(Key::Turns, turns.to_f64())
                .with(Key::NominalTurns, nominal.tap_turns.to_f64());
            self.count(finding, self.state.cycle.line, at.count);
        }
    }

    /// The same place once more.
    fn again(&mut self, effects: &Effects, at: &Tapping, place: &Place) {
        if at.count > 1 && !(self.state.is_incremental() && effects.moves_across) {
            let finding = self.at_block(Id::RepeatInPlace).with(Key::Count, f64::from(at.count));
            self.tell_hole(finding);
        } else if let Some(line) = self.tapped.line_of(place) {
            let finding = self.at_block(Id::DuplicateHole).with(Key::Count, 2.0).because(EvidenceKind::Cycle, line);
            self.tell_hole(finding);
        }
    }

    /// The drill against the thread.
    fn size(&mut self, hole: &DrilledHole, at: &Tapping, thread: &Thread) {
        let Some(diameter) = hole.diameter_mm else {
            self.not_checked.note(Reason::DrillNotKnown, self.line);
            return;
        };
        if thread.form().is_taper() {
            return;
        }
        let drill = Drill::of_diameter(diameter);
        let as_hole = as_hole(thread);
        let judged = |tap| judge_drill(&as_hole, drill, tap, None, None).ok();
        let suits = |tap| {
            judged(tap)
                .filter(|judged| judged.chosen.within_limits != WithinLimits::No && !judged.findings.has_error())
                .is_some_and(|judged| tap == Tap::Cut || FORM_PERCENT.contains(&judged.chosen.percent))
        };
        let taps: &[Tap] = match at.kind {
            Some(ToolKind::FormTap) => &[Tap::Form],
            Some(ToolKind::CutTap) => &[Tap::Cut],
            _ => &[Tap::Cut, Tap::Form],
        };
        if taps.iter().copied().any(suits) {
            return;
        }
        let percent = taps.first().and_then(|tap| judged(*tap)).map(|judged| judged.chosen.percent);
        let mut finding = self
            .at_block(Id::DrillSize)
            .severe(Severity::error_if(diameter >= thread.major_mm()))
            .with(Key::DrillMm, diameter.to_f64())
            .with_some(Key::Percent, percent)
            .because(EvidenceKind::Drill, hole.line);
        finding.thread = Some(*thread);
        self.count(finding, hole.line, at.count);
    }

    /// Whether the tap reaches the end of the drilled hole's full diameter.
    fn bottom(&mut self, hole: &DrilledHole, at: &Tapping, thread: &Thread) {
        let (Some(diameter), Some(drill_z), Some(tap_depth), Some(tap_z)) =
            (hole.diameter_mm, hole.z_mm, at.depth_mm, at.z_mm)
        else {
            return;
        };
        let surface = self.options.surface_z_mm.unwrap_or(Length::ZERO);
        let Ok(point) = surface.minus(drill_z) else { return };
        let Ok(found) = bottoming(thread, tap_depth, point, diameter, hole.point_angle_deg) else { return };
        let Some(first) = found.readings().next() else { return };
        if found.worst() == BottomVerdict::Fine {
            return;
        }
        // The verdict is exact and on the safe side; what is shown is the cone's own height.
        let room = |angle: Length| {
            let full = point.to_f64() - point_height_mm(diameter, angle);
            (full, full - tap_depth.to_f64())
        };
        let (full, clearance) = room(first.point_angle_deg);
        let mut finding = self
            .at_block(Id::TapBottomsHole)
            .severe(Severity::error_if(found.worst() == BottomVerdict::Error))
            .with(Key::TapZMm, tap_z.to_f64())
            .with(Key::DrillZMm, drill_z.to_f64())
            .with(Key::DrillPointMm, point_height_mm(diameter, first.point_angle_deg))
            .with(Key::FullDiameterDepthMm, full)
            .with(Key::BottomClearanceMm, clearance)
            .because(EvidenceKind::Drill, hole.line);
        if hole.point_angle_deg.is_none() {
            finding = finding
                .with(Key::AssumedPointAngleDeg, first.point_angle_deg.to_f64())
                .with(Key::BottomClearance130DegMm, room(Length::integer(130)).1)
                .with(Key::BottomClearance140DegMm, room(Length::integer(140)).1)
                .uncertain(readings::POINT_OF_118_DEGREES);
        }
        finding.thread = Some(*thread);
        self.tell_hole(finding);
    }
}
