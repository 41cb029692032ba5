//! What holds where a program taps and should not, and what it leaves behind.

use super::block::Block;
use super::codes::Spindle;
use super::cut::{Basis, Cuts, is_by_lead_word};
use super::declared::Declared;
use super::fault::FaultKind;
use super::finding::{EvidenceKind, FindingNumber, ProgramFinding, ProgramNumberKey as Key};
use super::finding_id::ProgramFindingId as Id;
use super::judge::{Judge, Tapping};
use super::readings;
use super::report::Reason;
use super::state::{Act, Effects, Found, Mode, Motion, Said, letter_bit};
use crate::dialect::DwellUnit;
use crate::feed::{FeedMode, Unit};
use crate::finding::Severity;
use crate::length::Length;
use crate::motion::Holder;
use crate::thread::Hand;

/// No mill and no drill feeds more than this in a turn, in mm; per minute nobody feeds so little.
const MOST_MM_A_TURN: i64 = 5;

impl Judge {
    /// What is wrong with a block as it is written. True if it is told to be one that could not be read.
    pub(super) fn faults(&mut self, block: &Block) -> bool {
        let mut not_read = false;
        for fault in block.faults() {
            let id = match fault.kind {
                FaultKind::UnclosedComment => Id::UnclosedComment,
                FaultKind::BadNumber | FaultKind::TooManyDigits | FaultKind::BlankInNumber => Id::BadNumber,
                FaultKind::DuplicateWord => Id::DuplicateWord,
                FaultKind::TooManyMWords => Id::TwoCodesOneGroup,
                FaultKind::NonAscii | FaultKind::NonAsciiInComment => Id::NonAscii,
                FaultKind::LineTooLong => Id::LineTooLong,
                // Words of a program's flow: what they do is not followed.
                FaultKind::NestedComment | FaultKind::ProgramName => continue,
                _ => Id::BlockNotRead,
            };
            let mut finding = ProgramFinding::new(id, self.line, fault.column, fault.end_column);
            match fault.kind {
                FaultKind::NonAscii => finding = finding.severe(Severity::Error),
                FaultKind::LineTooLong => finding = finding.with(Key::Chars, block_chars(block)),
                _ => {}
            }
            not_read |= id == Id::BlockNotRead;
            self.tell(finding);
        }
        not_read
    }

    /// What a block leaves behind or changes, whatever it moves.
    ///
    /// True if the control does not have a code of it, and stops.
    pub(super) fn modal(&mut self, effects: &Effects, before: Motion) -> bool {
        if let Some(found) = effects.twice {
            self.tell(self::at(Id::TwoCodesOneGroup, self.line, &found));
        }
        let stops = self.foreign(effects);
        // A cycle that was active at the call is that of the places in the subprogram.
        let returns = effects.call_return && self.motion_at_call != Some(before);
        let ends = effects.tool_change || effects.program_end || returns;
        if before.taps() && (ends || self.state.motion != before) {
            self.close();
        }
        let is_cycle = matches!(before, Motion::Tap { .. });
        if is_cycle && ends && self.state.motion == before {
            let finding = self.at_block(Id::CycleNotCancelled).because(EvidenceKind::Cycle, self.state.cycle.line);
            self.tell(finding.write("G80"));
        }
        match effects.act {
            Act::FeedMove | Act::Drill | Act::OtherCycle => self.carried(effects),
            // Of two motions in one block, the second has been told.
            Act::Nothing if effects.twice.is_none() => {
                let finding = self.at_block(Id::AxisWordsWithoutMotion);
                self.tell(finding);
            }
            _ => {}
        }
        stops
    }

    /// Tapping codes that this control does not have.
    fn foreign(&mut self, effects: &Effects) -> bool {
        let Some(found) = effects.foreign.filter(|found| found.letter == b'G') else { return false };
        let alarms = self.dialect.reading.unlisted_codes_alarm == Some(true);
        let stops = alarms || matches!(found.tenths, 740 | 840);
        if stops {
            let letter = if found.letter == b'M' { "M" } else { "G" };
            let finding = self::at(Id::CodeNotOnControl, self.line, &found)
                .with_number(Key::Word, FindingNumber::Text(letter))
                .with(Key::Code, f64::from(found.tenths) / 10.0);
            self.tell(finding);
            self.state.motion = Motion::Unknown;
        }
        stops
    }

    /// F is used under another mode than the one that it was given under.
    pub(super) fn feed_kept_under_other_mode(&mut self, at: &Tapping) {
        let (Some(feed), Some(now)) = (self.state.feed, self.state.mode) else { return };
        if is_by_lead_word(&self.state, &self.dialect) || feed.mode.is_none_or(|then| then == now.value) {
            return;
        }
        let finding = self
            .at_block(Id::FeedModeChangeWithoutFeed)
            .with_some(Key::Feed, feed.said.value.map(Length::to_f64))
            .because(EvidenceKind::Feed, feed.said.line)
            .because(EvidenceKind::FeedMode, now.line);
        self.count(finding, now.line, at.count);
    }

    /// The first move at feed behind tapping: F and the feed mode may still be the tap's.
    fn carried(&mut self, effects: &Effects) {
        let Some(mut feed) = self.state.feed else { return };
        let Some(value) = feed.said.value else { return };
        let (speed, unit) = (self.speed(), self.state.unit().unwrap_or(Unit::Mm));
        let per_revolution = self.state.mode.is_some_and(|mode| mode.value == Mode::Feed(FeedMode::PerRevolution));
        let in_mm = if unit == Unit::Inch { value.times(Length::INCH).ok() } else { Some(value) };
        let feed_mm_min = in_mm.and_then(|feed| if per_revolution { feed.times(speed?).ok() } else { Some(feed) });
        // A new F that a mill can feed in a turn was meant for one.
        let is_by_turn = effects.feed_word && in_mm.is_some_and(|feed| feed <= Length::integer(MOST_MM_A_TURN));
        let finding = match self.state.tapped_mode_line {
            Some(line) if per_revolution && !is_by_turn => self
                .at_block(Id::FeedModeLeftActive)
                .with(Key::SetAtLine, f64::from(line))
                .with_some(Key::SpeedRpm, speed.map(Length::to_f64))
                .because(EvidenceKind::FeedMode, line)
                .write("G94"),
            _ if feed.for_tapping && !effects.feed_word => self
                .at_block(Id::FeedCarriedOver)
                .with(Key::SetAtLine, f64::from(feed.said.line))
                .because(EvidenceKind::Feed, feed.said.line),
            _ => return,
        };
        let finding =
            finding.with(Key::Feed, value.to_f64()).with_some(Key::FeedMmMin, feed_mm_min.map(Length::to_f64));
        self.tell(finding);
        // Told once for every feed and mode that is carried.
        feed.for_tapping = false;
        self.state.feed = Some(feed);
        self.state.tapped_mode_line = None;
    }

    /// What the program should have said before its first hole.
    pub(super) fn at_first_hole(&mut self) {
        let state = &self.state;
        let missing = [
            (!state.return_stated && matches!(state.motion, Motion::Tap { .. }), Id::ReturnPlaneUnstated),
            (state.units.is_none(), Id::UnitsUnstated),
            (state.incremental.is_none(), Id::DistanceModeUnstated),
            (state.mode.is_none(), Id::FeedModeUnstated),
        ];
        for (is_missing, id) in missing {
            if is_missing {
                let finding = self.at_block(id);
                self.tell_once(finding);
            }
        }
    }

    /// The values that a hole needs.
    pub(super) fn values_at_hole(&mut self, effects: &Effects, at: &Tapping, cuts: &Cuts) {
        let cycle = &self.state.cycle;
        let needed = [self.state.speed, self.advance(), cycle.r, cycle.z];
        let open = |said: &&Said| said.value.is_none();
        let axes = effects.unknown & (letter_bit(b'X') | letter_bit(b'Y')) != 0;
        let first = needed.iter().flatten().find(open);
        if axes || first.is_some() {
            let finding = match effects.unknown_at {
                Some(found) => self::at(Id::UnresolvedValue, self.line, &found),
                None => self.at_block(Id::UnresolvedValue),
            };
            // Where a word is no number, that has been told.
            if axes || first.is_some_and(|said| !(said.unreadable && said.line == self.line)) {
                self.tell(finding);
            }
        } else if cuts.first().is_none() {
            self.missing_words(at);
        }
        if cycle_is_new(effects, &self.state.cycle) {
            self.missing_cycle_words(at);
        }
    }

    /// The word that the tap advances by: F, or the lead in a word of its own.
    fn advance(&self) -> Option<Said> {
        let is_by_lead_word = is_by_lead_word(&self.state, &self.dialect);
        if is_by_lead_word { self.state.cycle.lead } else { self.state.feed.map(|feed| feed.said) }
    }

    fn missing_words(&mut self, at: &Tapping) {
        let is_zero = |value: Option<Length>| value.is_none_or(|value| !value.is_positive());
        let cause = self.state.cycle.line;
        let advance = self.advance().and_then(|said| said.value);
        if is_zero(advance) {
            let finding = self.at_block(Id::NoFeed).with_some(Key::Feed, advance.map(Length::to_f64));
            self.count(finding, cause, at.count);
        } else if at.basis == Basis::PerMinute && is_zero(self.speed()) {
            let finding = self.at_block(Id::NoSpeed);
            self.count(finding, cause, at.count);
        }
    }

    fn missing_cycle_words(&mut self, at: &Tapping) {
        let is_stroke = self.state.motion == Motion::Stroke;
        for (word, is_missing) in
            [("R", self.state.cycle.r.is_none() && !is_stroke), ("Z", self.state.cycle.z.is_none())]
        {
            if is_missing {
                let finding = self.at_block(Id::CycleWordMissing).with_number(Key::Word, FindingNumber::Text(word));
                self.count(finding, self.line, at.count);
            }
        }
    }

    /// Whether the cycle runs with a tool that is no tap, or that came after it.
    pub(super) fn left_active(&mut self, at: &Tapping) -> bool {
        let changed = self.state.cycle.other_tool;
        let is_tap = at.kind.is_none_or(super::options::ToolKind::is_tap);
        let is_cycle = matches!(self.state.motion, Motion::Tap { .. });
        if !is_cycle || (is_tap && !changed) || (at.kind.is_none() && !changed) {
            return false;
        }
        let feed = self.state.feed.and_then(|feed| feed.said.value);
        let finding = self
            .at_block(Id::CycleLeftActive)
            .with_some(Key::LeadMm, at.lead_mm.or(self.first_lead()).map(Length::to_f64))
            .with_some(Key::Feed, feed.map(Length::to_f64))
            .with_some(Key::SpeedRpm, self.speed().map(Length::to_f64))
            .because(EvidenceKind::Cycle, self.state.cycle.line)
            .because(EvidenceKind::Tool, self.state.tool.map_or(0, |tool| tool.line))
            .write("G80");
        self.count(finding, self.state.cycle.line, at.count);
        true
    }

    fn first_lead(&self) -> Option<Length> {
        Cuts::of(&self.state, &self.dialect).first().map(|cut| cut.lead_mm)
    }

    /// Modal states that do not go with tapping, and what the machine's limits say.
    pub(super) fn at_every_hole(&mut self, effects: &Effects, at: &Tapping, declared: Option<&Declared>) {
        let state = &self.state;
        let no_offset = !state.length_offset.value && state.tool.is_some();
        let is_cycle = matches!(state.motion, Motion::Tap { .. });
        let under_increments = state.is_incremental() && !state.cycle.incremental && is_cycle;
        let unlocked = self.dialect.reading.override_locked_in_cycle == Some(false) && !state.overrides_locked;
        let wrong = [
            (!state.plane_is_xy.value, Id::WrongPlane, state.plane_is_xy.line),
            (state.mode.is_some_and(|mode| mode.value == Mode::InverseTime), Id::InverseTimeActive, 0),
            (state.surface_speed.is_some_and(|on| on.value), Id::ConstantSurfaceSpeedActive, 0),
            (state.compensation.value, Id::CutterCompActive, state.compensation.line),
            (no_offset, Id::LengthOffsetMissing, state.tool.map_or(0, |tool| tool.line)),
            (unlocked, Id::OverrideUnlocked, 0),
            (under_increments, Id::StickyDepthInIncremental, state.cycle.line),
            (state.motion == Motion::Stroke && effects.moves_across, Id::OffAxisStroke, 0),
        ];
        for (is_wrong, id, line) in wrong {
            if is_wrong {
                let cause = if line == 0 { self.state.cycle.line } else { line };
                let finding = self.at_block(id);
                self.count(finding, cause, at.count);
            }
        }
        self.transforms(at);
        self.spindle(at);
        self.rigid(effects, at);
        self.extras(at);
        self.tool_against_list(at);
        self.limits(at, declared);
    }

    fn transforms(&mut self, at: &Tapping) {
        let state = &self.state;
        let line =
            [state.mirror, state.scale, state.rotate].iter().filter(|held| held.value).map(|held| held.line).max();
        let Some(line) = line else { return };
        let finding = self
            .at_block(Id::MirrorScaleRotationActive)
            .severe(Severity::error_if(state.scale.value))
            .with(Key::MirroredAxes, f64::from(state.mirrored_axes))
            .with(Key::Scale, if state.scale.value { 1.0 } else { 0.0 })
            .with(Key::SetAtLine, f64::from(line));
        self.count(finding, line, at.count);
        if at.hand.is_none() {
            self.not_checked.note(Reason::HandNotKnown, self.line);
        }
    }

    fn spindle(&mut self, at: &Tapping) {
        let starts = self.dialect.reading.cycle_starts_spindle;
        let turning = self.state.spindle;
        let is_stroke = self.state.motion == Motion::Stroke;
        let needs = self.dialect.needs_spindle_running && starts != Some(true) && !self.dialect.is_unset();
        let wrong_way = !self.dialect.lh_by_spindle_direction
            && matches!(
                (turning.value, at.hand),
                (Spindle::CounterClockwise, Some(Hand::Right)) | (Spindle::Clockwise, Some(Hand::Left))
            );
        if (needs || is_stroke) && (turning.value == Spindle::Stopped || (wrong_way && needs)) {
            let right = if at.hand == Some(Hand::Left) { "M4" } else { "M3" };
            let finding = self.at_block(Id::SpindleDirection).write(right);
            self.count(finding, self.state.cycle.line, at.count);
        } else if starts == Some(true) && turning.value != Spindle::Stopped && self.state.cycle.holes == 1 {
            let finding = self.at_block(Id::SpindleStartBeforeCycle);
            self.count(finding, turning.line, at.count);
        }
    }

    fn rigid(&mut self, effects: &Effects, at: &Tapping) {
        let Some(code) = self.dialect.rigid_tap_code else { return };
        if at.holder != Holder::Rigid || self.state.motion == Motion::Stroke {
            return;
        }
        let Some(rigid) = self.state.rigid else {
            let finding = self.at_block(Id::RigidTapCodeMissing).write(code.as_str());
            let is_open = self.state.rigid_is_open;
            let finding = if is_open { finding.uncertain(readings::RIGID_ENDS_WITH_CYCLE) } else { finding };
            self.count(finding, self.state.cycle.line, at.count);
            return;
        };
        let (Some(there), Some(here)) = (rigid.value, self.speed()) else { return };
        if there != here && !effects.rigid_code {
            let finding = self
                .at_block(Id::RigidTapCodeSpeedDiffers)
                .with(Key::RigidTapCodeSpeedRpm, there.to_f64())
                .with(Key::CycleSpeedRpm, here.to_f64());
            self.count(finding, rigid.line, at.count);
        }
    }

    /// Pecks, dwell, and numbers that count least increments.
    fn extras(&mut self, at: &Tapping) {
        let cycle = self.state.cycle;
        let peck = cycle.peck.and_then(|said| said.value).filter(|peck| peck.is_positive());
        let pecks = matches!(self.state.motion, Motion::Tap { pecks: true, .. }) || peck.is_some();
        if pecks {
            let passes = peck.zip(at.travel_mm).and_then(|(peck, travel)| travel.over(peck).ok());
            let finding =
                self.at_block(Id::PeckInTap).with_some(Key::Passes, passes.map(|passes| libm::ceil(passes.to_f64())));
            self.count(finding, cycle.line, at.count);
        }
        if let Some(dwell) = cycle.dwell.and_then(|said| said.value) {
            self.dwell(dwell, at);
        }
        let counted = [cycle.r, cycle.z, self.state.feed.map(|feed| feed.said)];
        if let Some(said) = counted.into_iter().flatten().find(|said| said.counted && said.line == self.line) {
            let finding = ProgramFinding::new(Id::ImplicitDecimalUsed, said.line, said.column, said.end_column)
                .with_some(Key::Value, said.value.map(Length::to_f64));
            self.tell(finding);
        }
    }

    /// 20 seconds and more in a hole, or less than 5 milliseconds, are the other unit's numbers.
    fn dwell(&mut self, dwell: Length, at: &Tapping) {
        let seconds = match self.dialect.dwell_unit {
            Some(DwellUnit::Milliseconds) => dwell.over(Length::integer(1000)).unwrap_or(dwell),
            Some(_) => dwell,
            None => return,
        };
        let is_long = seconds >= Length::integer(20);
        let is_short = dwell.is_positive() && seconds < const { Length::parts(5, 1000) };
        if is_long || is_short {
            let finding =
                self.at_block(Id::DwellUnit).with(Key::DwellWord, dwell.to_f64()).with(Key::Seconds, seconds.to_f64());
            self.count(finding, self.state.cycle.line, at.count);
        }
    }

    fn tool_against_list(&mut self, at: &Tapping) {
        let listed = at.tool.and_then(|tool| tool.thread);
        let Some((listed, said)) = listed.zip(self.comments.of_tool()) else { return };
        let same = listed.lead_mm() == said.thread.lead_mm()
            && listed.major_mm() == said.thread.major_mm()
            && listed.hand() == said.thread.hand();
        if !same {
            let mut finding = self.at_block(Id::ToolThreadMismatch).because(EvidenceKind::Thread, said.line);
            finding.thread = Some(listed);
            self.count(finding, said.line, at.count);
        }
    }
}

/// The first hole behind the cycle's code.
fn cycle_is_new(effects: &Effects, cycle: &super::state::CycleWords) -> bool {
    effects.motion_code.is_some() && cycle.holes <= 1
}

fn at(id: Id, line: u32, found: &Found) -> ProgramFinding {
    ProgramFinding::new(id, line, found.column, found.end_column)
}

/// The length of a line in bytes.
fn block_chars(block: &Block) -> f64 {
    block.end().saturating_sub(block.start()) as f64
}
