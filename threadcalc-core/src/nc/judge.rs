//! What is known while a program is checked, and what happens at a tapped hole.

use super::apply::Context;
use super::block::Block;
use super::codes::Codes;
use super::cut::Basis;
use super::declared::Comments;
use super::drilled::{Drilled, Tapped};
use super::finding::ProgramFinding;
use super::finding_id::ProgramFindingId as Id;
use super::list::List;
use super::options::{CheckOptions, Tool, ToolKind};
use super::pending::{OpenFindings, Queue};
use super::report::{Event, NotChecked, Reason};
use super::state::{Act, Effects, Motion, State};
use super::values::Values;
use super::variables::Variables;
use crate::dialect::Dialect;
use crate::length::Length;
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
    pub column: u32,
    pub end_column: u32,
    pub holes: u32,
    /// The lines of the calls that lead here.
    pub calls: [u32; super::finding::MOST_CALLS_TOLD],
    /// The motion that held at the innermost of them.
    pub motion_at_call: Option<Motion>,
}

/// A hole that is about to be tapped.
#[derive(Clone, Copy, Debug)]
pub(super) struct Tapping {
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
        let (least, most) = as_hole(thread).limits().ok()?.pitch_diameter_mm;
        most?.minus(least?).ok().filter(|tolerance| tolerance.is_positive())
    }
}

/// A thread as a tapped hole, or as it is where it has no internal side.
pub(super) fn as_hole(thread: &Thread) -> Thread {
    thread.as_tapped().unwrap_or(*thread)
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
            motion_at_call: None,
        }
    }

    /// Takes a block: the state changes, and what is wrong with it is told.
    pub(super) fn take(&mut self, block: &Block) -> Effects {
        self.line = block.line();
        let first = block.words().first();
        self.column = first.map_or(1, |word| word.column());
        self.end_column = block.words().last().map_or(self.column, |word| word.end_column());
        let not_read = self.faults(block);
        if not_read || !block.is_readable() {
            self.not_checked.note(Reason::BlockNotRead, self.line);
        }
        if !block.is_readable() {
            self.lose();
            self.variables.assign(block);
            return Effects::none();
        }
        let values = Values { variables: &self.variables, evaluates: !self.options.leave_macros };
        let context = Context { codes: &self.codes, dialect: &self.dialect, values };
        let before = self.state.motion;
        let effects = self.state.apply(block, &context);
        let tool_word = block.words().iter().any(|word| word.letter() == b'T');
        let change_to = effects.tool_change.then(|| self.state.tool.and_then(|tool| tool.value));
        self.comments.read(block, tool_word, change_to, self.state.unit());
        if effects.origin_moves {
            self.forget_places();
        }
        if self.modal(&effects, before) {
            // The control stops here.
            self.variables.assign(block);
            return effects;
        }
        match effects.act {
            Act::Tap => self.tap(&effects),
            Act::Drill | Act::OtherCycle => self.drill(&effects),
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
    }

    /// Places of the program are other places of the part from here on.
    fn forget_places(&mut self) {
        if self.drilled.forget() {
            self.not_checked.note(Reason::PlaceNotKnown, self.line);
        }
        self.tapped.clear();
    }

    /// A finding at the block.
    pub(super) fn at_block(&self, id: Id) -> ProgramFinding {
        ProgramFinding::new(id, self.line, self.column, self.end_column)
    }

    /// Sends a finding out.
    pub(super) fn tell(&mut self, finding: ProgramFinding) {
        let finding = self.stamped(finding);
        self.queue.push(Event::Finding(finding));
    }

    /// With the program, the tool and the calls that hold.
    fn stamped(&self, mut finding: ProgramFinding) -> ProgramFinding {
        finding.program = self.state.program;
        finding.tool = self.state.tool.and_then(|tool| tool.value);
        finding.calls = self.calls;
        finding
    }

    /// Sends a finding out the first time only.
    pub(super) fn tell_once(&mut self, finding: ProgramFinding) {
        let bit = 1_u128.wrapping_shl(finding.id().number() as u32);
        if self.told & bit == 0 {
            self.told |= bit;
            self.tell(finding);
        }
    }

    /// Counts holes to a finding, which goes out when its cause ends.
    pub(super) fn count(&mut self, finding: ProgramFinding, cause_line: u32, holes: u32) {
        let mut finding = self.stamped(finding);
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
}
