//! What is known while a program is checked, and what happens at a tapped hole.

use super::apply::Context;
use super::block::Block;
use super::codes::{Codes, Spindle};
use super::cut::{Basis, Cuts, bases};
use super::declared::{Comments, Declared};
use super::drilled::{Drilled, Tapped};
use super::finding::Finding;
use super::finding_id::FindingId as Id;
use super::list::List;
use super::options::{CheckOptions, Tool, ToolKind};
use super::pending::{OpenFindings, Queue};
use super::report::{Event, NotChecked, Reason, TappedHole};
use super::state::{Act, Effects, Motion, State};
use super::values::Values;
use super::variables::Variables;
use crate::dialect::Dialect;
use crate::finding::Severity;
use crate::length::Length;
use crate::limits::Limits;
use crate::motion::Holder;
use crate::thread::{Hand, Thread};

/// How many tools a list has.
pub const MOST_TOOLS: usize = 64;

/// What held when F was last used for tapping, before S was changed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct BeforeChange {
    pub feed_line: u32,
    pub speed_line: u32,
    pub speed: Length,
    pub lead_mm: Length,
}

/// All that is known.
#[derive(Clone, Debug)]
pub(super) struct Judge {
    pub dialect: Dialect,
    pub codes: Codes,
    pub options: CheckOptions,
    pub tools: List<Tool, MOST_TOOLS>,
    pub variables: Variables,
    pub state: State,
    pub comments: Comments,
    pub drilled: Drilled,
    pub tapped: Tapped,
    pub open: OpenFindings,
    pub queue: Queue<Event>,
    pub not_checked: NotChecked,
    pub before_change: Option<BeforeChange>,
    /// What is told once in a program, by its id.
    told: u128,
    /// The line of the block, and the columns of its first word.
    pub line: u32,
    column: u32,
    end_column: u32,
    pub holes: u32,
    /// The lines of the calls that lead here.
    pub calls: [u32; super::finding::MOST_CALLS_TOLD],
}

/// A hole that is about to be tapped.
#[derive(Clone, Copy, Debug)]
pub(super) struct Tapping {
    pub line: u32,
    pub column: u32,
    pub end_column: u32,
    pub holder: Holder,
    pub kind: Option<ToolKind>,
    pub tool: Option<Tool>,
    pub basis: Basis,
    pub hand: Option<Hand>,
    /// How many holes at this block.
    pub count: u32,
    /// R and the tap's end in the program's Z.
    pub r_mm: Option<Length>,
    pub z_mm: Option<Length>,
    /// From the face to the tap's end.
    pub depth_mm: Option<Length>,
    /// From R to the tap's end.
    pub travel_mm: Option<Length>,
    /// The lead that is taken to be cut.
    pub lead_mm: Option<Length>,
}

impl Tapping {
    /// The tolerance of the pitch diameter of a thread's medium class, or of the one it has.
    pub(super) fn pitch_tolerance_mm(&self, thread: &Thread) -> Option<Length> {
        let (least, most) = limits_of(thread)?.pitch_diameter_mm;
        let (least, most) = (least?, most?);
        most.minus(least).ok().filter(|tolerance| tolerance.is_positive())
    }
}

/// The limits of a thread as a tapped hole.
pub(super) fn limits_of(thread: &Thread) -> Option<Limits> {
    as_hole(thread).limits().ok()
}

/// A thread as a tapped hole: with its own internal class, or the medium one.
pub(super) fn as_hole(thread: &Thread) -> Thread {
    let medium = thread.medium_internal_class();
    let is_internal = thread.side() != Some(crate::thread::Side::External);
    if (is_internal && thread.tolerance_class().is_some()) || medium.is_empty() {
        return *thread;
    }
    thread.without_class().with_class(medium.as_bytes()).unwrap_or(*thread)
}

impl Judge {
    pub(super) fn new(dialect: &Dialect, options: &CheckOptions) -> Self {
        Self {
            dialect: *dialect,
            codes: Codes::of(dialect),
            options: *options,
            tools: List::new(Tool::BLANK),
            variables: Variables::new(),
            state: State::start(dialect),
            comments: Comments::default(),
            drilled: Drilled::new(),
            tapped: Tapped::new(),
            open: OpenFindings::new(),
            queue: Queue::new(Event::NONE),
            not_checked: NotChecked::new(),
            before_change: None,
            told: 0,
            line: 0,
            column: 1,
            end_column: 1,
            holes: 0,
            calls: [0; super::finding::MOST_CALLS_TOLD],
        }
    }

    /// Takes a block: the state changes, and what is wrong with it is told.
    pub(super) fn take(&mut self, block: &Block) -> Effects {
        self.line = block.line();
        let first = block.words().first();
        self.column = first.map_or(1, |word| word.column());
        self.end_column = block.words().last().map_or(self.column, |word| word.end_column());
        self.faults(block);
        if !block.is_readable() {
            self.lose();
            self.variables.assign(block);
            return Effects::none(self.state.motion);
        }
        let values = Values { variables: &self.variables, evaluates: !self.options.leave_macros };
        let context = Context { codes: &self.codes, dialect: &self.dialect, values };
        let before = self.state.motion;
        let effects = self.state.apply(block, &context);
        let tool_word = block.words().iter().any(|word| word.letter() == b'T');
        self.comments.read(block, tool_word, effects.tool_change, self.state.unit());
        self.modal(&effects, before);
        match effects.act {
            Act::Tap => self.tap(&effects),
            Act::Drill => self.drill(&effects),
            _ => {}
        }
        self.variables.assign(block);
        if self.options.leave_macros && !block.assignments().is_empty() {
            self.not_checked.note(Reason::MacrosLeft, self.line);
        }
        effects
    }

    /// A block that could not be read: what moves next is not known until a code says so.
    fn lose(&mut self) {
        self.close();
        self.state.motion = Motion::Unknown;
        self.state.position = super::state::Position::default();
        self.not_checked.note(Reason::BlockNotRead, self.line);
    }

    /// A finding at the block.
    pub(super) fn at_block(&self, id: Id) -> Finding {
        Finding::new(id, self.line, self.column, self.end_column)
    }

    /// Sends a finding out.
    pub(super) fn tell(&mut self, mut finding: Finding) {
        finding.program = self.state.program;
        finding.tool = self.state.tool.and_then(|tool| tool.value);
        finding.calls = self.calls;
        self.queue.push(Event::Finding(finding));
    }

    /// Sends a finding out the first time only.
    pub(super) fn tell_once(&mut self, finding: Finding) {
        let bit = 1_u128.wrapping_shl(finding.id().number() as u32);
        if self.told & bit == 0 {
            self.told |= bit;
            self.tell(finding);
        }
    }

    /// Counts holes to a finding, which goes out when its cause ends.
    pub(super) fn count(&mut self, mut finding: Finding, cause_line: u32, holes: u32) {
        finding.program = self.state.program;
        finding.tool = self.state.tool.and_then(|tool| tool.value);
        finding.calls = self.calls;
        finding.hole = Some(self.holes);
        if let Some(out) = self.open.add(finding, cause_line, holes) {
            self.queue.push(Event::Finding(out));
        }
    }

    /// What was counted goes out: the cycle, the tool or the program ends.
    pub(super) fn close(&mut self) {
        while let Some(finding) = self.open.take() {
            self.queue.push(Event::Finding(finding));
        }
    }

    pub(super) fn speed(&self) -> Option<Length> {
        self.state.speed.and_then(|said| said.value)
    }

    /// The tool in the spindle, if the list has it.
    pub(super) fn tool(&self) -> Option<Tool> {
        let number = self.state.tool.and_then(|tool| tool.value)?;
        self.tools.as_slice().iter().find(|tool| tool.number == number).copied()
    }

    fn tap(&mut self, effects: &Effects) {
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
        self.at_first_hole(&at);
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
        let value = |said: Option<super::state::Said>| said.and_then(|said| said.value);
        let (r, z) = (value(state.cycle.r), value(state.cycle.z));
        // Under G91 R counts from where the tap stands, and Z from R.
        let (r_mm, z_mm) = if state.cycle.incremental {
            let r = r.zip(state.cycle.initial_z).and_then(|(r, from)| from.plus(r).ok());
            (r, r.zip(z).and_then(|(r, z)| r.plus(z).ok()))
        } else if state.motion == Motion::Stroke {
            (state.cycle.initial_z, z)
        } else {
            (r, z)
        };
        let surface = self.options.surface_z_mm.unwrap_or(Length::ZERO);
        let travel = r_mm.zip(z_mm).and_then(|(r, z)| r.minus(z).ok());
        let travel = travel.or(if state.cycle.incremental { z.map(Length::negative) } else { None });
        Tapping {
            line: self.line,
            column: self.column,
            end_column: self.end_column,
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
            line: at.line,
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
            None => self.note_good(first.lead_mm),
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
    fn cause_line(&self, finding: &Finding) -> u32 {
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
        let name = |hand| super::finding::FindingNumber::Text(if hand == Hand::Left { "LH" } else { "RH" });
        let right = self.code_of(declared.thread.hand());
        let finding = self
            .at_block(Id::WrongHand)
            .with_number(super::finding::NumberKey::Programmed, name(hand))
            .with_number(super::finding::NumberKey::Expected, name(declared.thread.hand()))
            .write(right.as_ref().map_or("", |code| code.as_str()));
        let finding = self.with_grounds(finding, declared);
        self.count(finding, self.state.cycle.line, at.count);
    }

    /// The dialect's tapping code of a hand, as it is written.
    fn code_of(&self, hand: Hand) -> Option<crate::dialect::CodeText> {
        if self.dialect.lh_by_spindle_direction {
            return crate::dialect::CodeText::holding(if hand == Hand::Left { "M4" } else { "M3" });
        }
        self.dialect.tapping_code(hand, false)
    }

    /// How bad the worst of what is to come may be.
    pub(super) fn severity_of(&self, is_error: bool) -> Severity {
        if is_error { Severity::Error } else { Severity::Warning }
    }
}

impl Judge {
    /// No thread is declared: the lead alone.
    fn identify(&mut self, _cuts: &Cuts, at: &Tapping) {
        self.not_checked.note(Reason::ThreadNotKnown, at.line);
    }
}
