//! What happens at a tapped hole: what it will be, and what is wrong with it.

use super::codes::Spindle;
use super::cut::{Basis, Cuts, bases};
use super::declared::Declared;
use super::finding::{FindingNumber, ProgramFinding, ProgramNumberKey};
use super::finding_id::ProgramFindingId as Id;
use super::judge::{BeforeChange, Judge, Tapping};
use super::report::{Event, Reason, TappedHole};
use super::state::{Effects, Mode, Motion};
use super::work_offset::WorkOffset;
use crate::dialect::CodeText;
use crate::length::Length;
use crate::motion::Holder;
use crate::thread::{Hand, Thread};

impl Judge {
    /// A block that taps.
    pub(super) fn tap(&mut self, effects: &Effects) {
        if effects.repeats == 0 {
            return;
        }
        self.holes = self.holes.saturating_add(1);
        let mut at = self.tapping(effects);
        let declared = self.comments.thread(self.options.thread, at.tool.as_ref(), self.line);
        let cuts = Cuts::of(&self.state, &self.dialect);
        let left_active = self.left_active(&at);
        let fits = |thread: &Thread| cuts.iter().find(|cut| super::lead::is_same(cut.lead_mm, thread.lead_mm()));
        let best = declared.as_ref().and_then(|declared| fits(&declared.thread)).or(cuts.first());
        at.lead_mm = best.map(|cut| cut.lead_mm);
        self.queue.push(Event::Hole(self.hole(&at, declared.as_ref(), best.is_some())));
        self.at_first_hole();
        self.values_at_hole(effects, &at, &cuts);
        if !left_active {
            self.judge_cuts(&cuts, declared.as_ref(), &at);
        }
        self.hand(&at, declared.as_ref());
        self.at_every_hole(effects, &at, declared.as_ref());
        self.depth(effects, &at, declared.as_ref());
    }

    fn tapping(&self, effects: &Effects) -> Tapping {
        let state = &self.state;
        let tool = self.tool();
        let is_stroke = state.motion == Motion::Stroke;
        let (r_mm, z_mm) = if is_stroke { state.cycle.stroke_heights() } else { state.cycle.heights() };
        let surface = self.options.surface_z_mm.unwrap_or(Length::ZERO);
        let travel = r_mm.zip(z_mm).and_then(|(r, z)| r.minus(z).ok());
        let travel = travel.or(if state.cycle.incremental {
            state.cycle.z.and_then(|said| Some(said.value?.negative()))
        } else {
            None
        });
        Tapping {
            holder: tool.and_then(|tool| tool.holder).or(self.options.holder).unwrap_or(Holder::Rigid),
            kind: self.comments.kind(tool.as_ref()).0,
            tool,
            basis: bases(state, &self.dialect).next().map_or(Basis::PerMinute, |(basis, _)| basis),
            hand: self.hand_of(),
            count: effects.repeats,
            r_mm,
            z_mm,
            depth_mm: z_mm.and_then(|z| surface.minus(z).ok()),
            travel_mm: travel,
            lead_mm: None,
        }
    }

    /// The hand that is cut: by the cycle or by the spindle; None for a single stroke, which has no hand of its own.
    fn hand_of(&self) -> Option<Hand> {
        let by_spindle = match self.state.spindle.value {
            Spindle::Clockwise => Some(Hand::Right),
            Spindle::CounterClockwise => Some(Hand::Left),
            Spindle::Stopped => None,
        };
        let hand = match self.state.motion {
            Motion::Tap { .. } if self.dialect.lh_by_spindle_direction => by_spindle,
            Motion::Tap { hand, .. } => Some(hand),
            _ => by_spindle,
        };
        let is_mirrored = self.state.mirror.value && self.state.mirrored_axes % 2 == 1;
        match (hand, is_mirrored, self.dialect.reading.mirror_flips_hand) {
            (Some(Hand::Right), true, Some(true)) => Some(Hand::Left),
            (Some(Hand::Left), true, Some(true)) => Some(Hand::Right),
            (_, true, None) => None,
            (hand, _, _) => hand,
        }
    }

    fn hole(&self, at: &Tapping, declared: Option<&Declared>, is_known: bool) -> TappedHole {
        let feed = self.state.feed.and_then(|feed| feed.said.value);
        TappedHole {
            line: self.line,
            number: self.holes,
            lead_mm: at.lead_mm.filter(|_| is_known),
            speed_rpm: self.speed(),
            feed,
            hand: at.hand,
            count: at.count,
            depth_mm: at.depth_mm,
            thread: declared.map(|declared| declared.thread),
            source: declared.map(|declared| declared.source),
            tool: self.state.tool.and_then(|tool| tool.value),
            program: self.state.program,
            x_mm: self.state.position.x,
            y_mm: self.state.position.y,
            work_offset: WorkOffset::of_state(self.state.work_offset),
            unit: self.state.unit(),
            feed_mode: self.state.mode.and_then(|mode| match mode.value {
                Mode::Feed(mode) => Some(mode),
                Mode::InverseTime => None,
            }),
        }
    }

    /// The leads under every reading against the thread: what holds under all of them is certain.
    fn judge_cuts(&mut self, cuts: &Cuts, declared: Option<&Declared>, at: &Tapping) {
        let Some(first) = cuts.first() else {
            self.not_checked.note(Reason::LeadNotKnown, self.line);
            return;
        };
        let Some(declared) = declared else {
            self.identify(cuts, at);
            self.feed_kept_under_other_mode(at);
            return;
        };
        let (mut wrong, mut right) = (None, false);
        for cut in cuts.iter() {
            match self.against(cut, declared, at) {
                Some(finding) => wrong = wrong.or(Some((finding, cut))),
                None => right = true,
            }
        }
        match wrong {
            None => {
                self.note_good(first.lead_mm);
                self.feed_kept_under_other_mode(at);
            }
            Some((finding, _)) if !right => {
                let finding = if cuts.is_one() { finding } else { finding.uncertain(first.reading) };
                let cause = self.cause_line(&finding);
                self.count(finding, cause, at.count);
            }
            Some((finding, cut)) => {
                // Right under one reading, wrong under another: the dialect has to say which.
                let mut open = self.at_block(Id::DialectUnset).uncertain(cut.reading);
                for (key, number) in finding.numbers().take(3) {
                    open.set(key, number);
                }
                self.count(open, self.state.cycle.line, at.count);
            }
        }
    }

    /// The lead fitted at this speed: what a later change of S is held against.
    fn note_good(&mut self, lead_mm: Length) {
        let (Some(feed), Some(speed)) = (&self.state.feed, &self.state.speed) else { return };
        if let Some(value) = speed.value {
            let (feed_line, speed_line) = (feed.said.line, speed.line);
            self.before_change = Some(BeforeChange { feed_line, speed_line, speed: value, lead_mm });
        }
    }

    /// Holes with one cause have one finding: the line that brought it in.
    fn cause_line(&self, finding: &ProgramFinding) -> u32 {
        match finding.id() {
            Id::StaleFeedAfterSpeedChange => finding.line(),
            _ => {
                let of_feed = self.state.feed.map_or(0, |feed| feed.said.line);
                let of_speed = self.state.speed.map_or(0, |speed| speed.line);
                of_feed.max(of_speed).max(self.state.cycle.line)
            }
        }
    }

    /// The hand of the cycle against that of the thread.
    fn hand(&mut self, at: &Tapping, declared: Option<&Declared>) {
        let (Some(declared), Some(hand)) = (declared, at.hand) else { return };
        if declared.thread.hand() == hand {
            return;
        }
        let name = |hand| FindingNumber::Text(if hand == Hand::Left { "LH" } else { "RH" });
        let right = self.code_of(declared.thread.hand());
        let finding = self
            .at_block(Id::WrongHand)
            .with_number(ProgramNumberKey::Programmed, name(hand))
            .with_number(ProgramNumberKey::Expected, name(declared.thread.hand()))
            .write(right.as_ref().map_or("", |code| code.as_str()));
        let finding = self.with_grounds(finding, declared);
        self.count(finding, self.state.cycle.line, at.count);
    }

    /// The dialect's tapping code of a hand, as it is written.
    fn code_of(&self, hand: Hand) -> Option<CodeText> {
        if self.dialect.lh_by_spindle_direction {
            return CodeText::holding(if hand == Hand::Left { "M4" } else { "M3" });
        }
        self.dialect.tapping_code(hand, false)
    }
}
