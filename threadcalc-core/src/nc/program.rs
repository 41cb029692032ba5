//! The check of a program that is all at hand: calls of subprograms are followed.

use super::checker::Checker;
use super::finding::ProgramFinding;
use super::finding_id::ProgramFindingId as Id;
use super::list::List;
use super::options::{CheckOptions, Tool};
use super::reader::Blocks;
use super::report::{Event, Unchecked};
use super::state::{Call, Effects, Motion};
use crate::dialect::Dialect;
use crate::error::Error;

/// How deep calls are followed.
const MOST_CALLS: usize = 10;
/// How many subprograms of one text are found.
const MOST_PROGRAMS: usize = 256;
/// How many blocks calls may run: one for every byte of the text, some fifteen times its blocks, and these.
const BLOCKS_IN_ANY_CASE: u64 = 100_000;

/// A place in the text that can be gone to.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
struct Spot {
    offset: usize,
    line: u32,
}

/// A call that is being followed.
#[derive(Clone, Copy, Debug, Default)]
struct Frame {
    back: Spot,
    target: Spot,
    left: u32,
    line: u32,
    /// What held at the call.
    motion: Option<Motion>,
    program: Option<u64>,
}

/// The check of a whole program: holes and findings in the order in which they are known.
///
/// ```
/// use threadcalc_core::Dialect;
/// use threadcalc_core::nc::{CheckOptions, Event, ProgramCheck};
///
/// let mut mill = Dialect::rs274ngc();
/// for (key, code) in [("subprogram_call", "M98"), ("subprogram_return", "M99")] {
///     mill.set(key, threadcalc_core::Value::Text(code.as_bytes()))?;
/// }
/// let program = b"G17 G21 G90 G94\nT1 M6 (TAP M6)\nG43 H1 Z5. S500 M3\nG98 G84 X0 Y0 Z-12. R5. F500.\n\
///     M98 P7\nG80\nM30\nO7\nX10.\nX20.\nM99\n";
/// let check = ProgramCheck::new(program, &mill, &CheckOptions::default());
/// let holes: Vec<_> = check
///     .filter_map(|event| match event {
///         Event::Hole(hole) => Some(hole.line),
///         Event::Finding(_) => None,
///     })
///     .collect();
/// assert_eq!(holes, [4, 9, 10]);
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// As [`Checker`].
#[derive(Clone, Debug)]
pub struct ProgramCheck<'a> {
    text: &'a [u8],
    checker: Checker,
    at: usize,
    frames: List<Frame, MOST_CALLS>,
    programs: List<(u64, Spot), MOST_PROGRAMS>,
    is_indexed: bool,
    is_done: bool,
    budget: u64,
}

impl<'a> ProgramCheck<'a> {
    /// A check at the beginning of a text.
    #[must_use]
    pub fn new(text: &'a [u8], dialect: &Dialect, options: &CheckOptions) -> Self {
        let mut checker = Checker::new(dialect, options);
        checker.follows_calls = true;
        Self {
            text,
            checker,
            at: 0,
            frames: List::new(Frame::default()),
            programs: List::new((0, Spot::default())),
            is_indexed: false,
            is_done: false,
            budget: BLOCKS_IN_ANY_CASE.saturating_add(text.len() as u64),
        }
    }

    /// Tells a tool of the shop's list.
    ///
    /// # Errors
    /// Those of [`Checker::add_tool`].
    pub fn add_tool(&mut self, tool: &Tool) -> Result<(), Error> {
        self.checker.add_tool(tool)
    }

    /// What was not checked so far, and why.
    pub fn not_checked(&self) -> impl Iterator<Item = Unchecked> + '_ {
        self.checker.not_checked()
    }

    /// Reads one block.
    fn step(&mut self) {
        let rest = self.text.get(self.at..).unwrap_or(&[]);
        if rest.is_empty() {
            if self.checker.reader.finish() {
                let effects = self.checker.block();
                self.after(effects);
            } else if self.frames.len() > 0 {
                // The text ends inside a subprogram: as if it returned.
                self.come_back(true);
            } else {
                self.checker.finish();
                self.is_done = true;
            }
            return;
        }
        let passed = self.checker.pass(rest);
        if self.frames.len() > 0 {
            self.budget = self.budget.saturating_sub(u64::from(passed.blocks));
        }
        let rest = rest.get(passed.bytes..).unwrap_or(&[]);
        let taken = self.checker.reader.read(rest);
        self.at = self.at.saturating_add(passed.bytes).saturating_add(taken.bytes);
        if taken.is_block {
            let effects = self.checker.block();
            self.after(effects);
        }
    }

    fn after(&mut self, effects: Option<Effects>) {
        if self.frames.len() > 0 {
            self.budget = self.budget.saturating_sub(1);
        }
        let Some(effects) = effects else { return };
        if effects.program_end {
            self.come_back(true);
        } else if effects.call_return {
            self.come_back(false);
        } else if let Some(call) = effects.call.filter(|call| call.repeats > 0) {
            self.call(&call);
        }
    }

    fn call(&mut self, call: &Call) {
        self.index();
        let known = self.programs.as_slice().iter().find(|(number, _)| Some(*number) == call.program);
        let Some((number, target)) = known.copied() else {
            self.tell(Id::SubprogramMissing);
            return;
        };
        // Of a CRLF, the LF may be still to come.
        let is_open = self.text.get(self.at.saturating_sub(1)..self.at.saturating_add(1)) == Some(b"\r\n");
        let back = Spot { offset: self.at.saturating_add(usize::from(is_open)), line: self.checker.reader.line() };
        let line = self.checker.reader.block().line();
        let (motion, program) = (Some(self.checker.judge.state.motion), self.checker.judge.state.program);
        let frame = Frame { back, target, left: call.repeats.saturating_sub(1), line, motion, program };
        if self.budget == 0 || !self.frames.push(frame) {
            self.tell(Id::RecursionLimit);
            return;
        }
        if !self.checker.called.as_slice().contains(&number) {
            self.checker.called.push(number);
        }
        self.go_to(target);
    }

    /// Behind the call, or once more through what it calls; `all`: out of every call.
    fn come_back(&mut self, all: bool) {
        let Some(mut frame) = self.frames.pop() else { return };
        if all {
            while let Some(outer) = self.frames.pop() {
                frame = outer;
            }
        } else if frame.left > 0 && self.budget == 0 {
            self.tell(Id::RecursionLimit);
        } else if frame.left > 0 {
            frame.left = frame.left.saturating_sub(1);
            self.frames.push(frame);
            self.go_to(frame.target);
            return;
        }
        self.checker.judge.state.program = frame.program;
        self.go_to(frame.back);
    }

    fn go_to(&mut self, spot: Spot) {
        self.at = spot.offset;
        self.checker.reader.go_to(spot.line, spot.offset as u64);
        self.checker.judge.motion_at_call = self.frames.as_slice().last().and_then(|frame| frame.motion);
        self.checker.set_calls(self.frames.as_slice().iter().map(|frame| frame.line));
    }

    fn tell(&mut self, id: Id) {
        let finding: ProgramFinding = self.checker.judge.at_block(id);
        self.checker.judge.tell(finding);
    }

    /// Finds where the programs of the text begin, the first time that one is called.
    fn index(&mut self) {
        if self.is_indexed {
            return;
        }
        self.is_indexed = true;
        let mut blocks = Blocks::new(self.text, self.checker.settings());
        while let Some(block) = blocks.next() {
            if let Some(number) = block.program_number() {
                let offset = usize::try_from(block.start()).unwrap_or(usize::MAX);
                self.programs.push((number, Spot { offset, line: block.line() }));
            }
        }
    }
}

impl Iterator for ProgramCheck<'_> {
    type Item = Event;

    fn next(&mut self) -> Option<Event> {
        loop {
            if let Some(event) = self.checker.next_event() {
                return Some(event);
            }
            if self.is_done {
                return None;
            }
            self.step();
        }
    }
}
