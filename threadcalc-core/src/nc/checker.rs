//! The check of a program that comes in pieces.

use super::cut::Cuts;
use super::declared::Comments;
use super::drilled::{Drilled, Tapped};
use super::finding::{MOST_CALLS_TOLD, ProgramFinding};
use super::finding_id::ProgramFindingId as Id;
use super::judge::Judge;
use super::list::List;
use super::options::{CheckOptions, Tool};
use super::reader::{Reader, ReaderSettings};
use super::report::{Event, Reason, Unchecked};
use super::shadow::Shadow;
use super::state::{Act, Call, Effects, State};
use crate::dialect::{Dialect, NumberSpaces};
use crate::error::{Code, Error, Field};

/// How many programs of one text are known by their numbers.
const MOST_PROGRAMS: usize = 64;

/// Checks a program that is handed over in pieces of any size: what lead every tapped hole will get, and what is
/// doubtful or wrong.
///
/// No heap, memory that does not grow with the program. Calls of subprograms are not followed here: a piece that
/// has gone by cannot be read again; [`ProgramCheck`](super::ProgramCheck) follows them.
///
/// ```
/// use threadcalc_core::Dialect;
/// use threadcalc_core::nc::{CheckOptions, Checker, Event};
///
/// let mut checker = Checker::new(&Dialect::rs274ngc(), &CheckOptions::default());
/// let program = b"G17 G21 G90 G94 G54\nT1 M6 (TAP M6)\nG43 H1 Z5.\nS500 M3\nG98 G84 X0 Y0 Z-12. R5. F800.\nG80\nM30\n";
/// let mut found = Vec::new();
/// let mut rest = &program[..];
/// while !rest.is_empty() {
///     rest = &rest[checker.read(rest)..];
///     while let Some(event) = checker.next_event() {
///         found.push(event);
///     }
/// }
/// checker.finish();
/// while let Some(event) = checker.next_event() {
///     found.push(event);
/// }
/// let findings: Vec<_> = found
///     .iter()
///     .filter_map(|event| match event {
///         Event::Finding(finding) => Some((finding.line(), finding.id().name(), finding.suggestion())),
///         Event::Hole(_) => None,
///     })
///     .collect();
/// assert_eq!(findings, [(5, "lead-mismatch", "F500.")]);
/// ```
///
/// # Source
/// RS274/NGC, NISTIR 6556 (format, modal groups, order, cycles); ISO 6983-1; where controls differ, the dialect.
#[derive(Clone, Debug)]
pub struct Checker {
    pub(super) reader: Reader,
    pub(super) judge: Judge,
    shadow: Shadow,
    /// Programs that were run by a call.
    pub(super) called: List<u64, MOST_PROGRAMS>,
    is_skipping: bool,
    is_finished: bool,
    pub(super) follows_calls: bool,
    settings: ReaderSettings,
}

impl Checker {
    /// A check at the beginning of a program.
    #[must_use]
    pub fn new(dialect: &Dialect, options: &CheckOptions) -> Self {
        Self {
            reader: Reader::new(settings(dialect)),
            judge: Judge::new(dialect, options),
            shadow: Shadow::new(),
            called: List::new(0),
            is_skipping: false,
            is_finished: false,
            follows_calls: false,
            settings: settings(dialect),
        }
    }

    /// Tells a tool of the shop's list; of two with one number the first counts.
    ///
    /// # Errors
    /// [`Code::TooLong`] beyond [`MOST_TOOLS`](super::MOST_TOOLS).
    pub fn add_tool(&mut self, tool: &Tool) -> Result<(), Error> {
        if self.judge.tools.push(*tool) {
            return Ok(());
        }
        Err(Error::new(Code::TooLong, Field::Tool).hint_text("at most 64 tools"))
    }

    /// Takes bytes until something is found or all are taken; says how many. What was found is to be taken with
    /// [`next_event`](Self::next_event) before more is read.
    #[must_use]
    pub fn read(&mut self, bytes: &[u8]) -> usize {
        let mut taken = 0_usize;
        while self.judge.queue.is_empty() {
            let passed = bytes.get(taken..).map_or(0, |rest| self.pass(rest).bytes);
            taken = taken.saturating_add(passed);
            let Some(rest) = bytes.get(taken..).filter(|rest| !rest.is_empty()) else { break };
            let now = self.reader.read(rest);
            taken = taken.saturating_add(now.bytes);
            if now.is_block {
                self.block();
            }
        }
        taken
    }

    /// The program ends here.
    pub fn finish(&mut self) {
        if self.is_finished {
            return;
        }
        self.is_finished = true;
        if self.reader.finish() {
            self.block();
        }
        self.end();
    }

    /// The next hole or finding that is known; None: more of the program is needed.
    pub fn next_event(&mut self) -> Option<Event> {
        self.judge.queue.take()
    }

    /// What was not checked so far, and why.
    pub fn not_checked(&self) -> impl Iterator<Item = Unchecked> + '_ {
        self.judge.not_checked.iter()
    }

    /// How its reader is set.
    pub(super) const fn settings(&self) -> ReaderSettings {
        self.settings
    }

    /// Whether blocks are left out, or judged for both positions of the switch for block delete.
    pub(super) const fn is_skipping(&self) -> bool {
        self.is_skipping || self.shadow.is_open()
    }

    /// The lines of the calls that are being followed, the outermost first.
    pub(super) fn set_calls(&mut self, lines: impl Iterator<Item = u32>) {
        self.judge.calls = [0; MOST_CALLS_TOLD];
        self.judge.calls.iter_mut().zip(lines).for_each(|(place, line)| *place = line);
    }

    /// The block that was just read; what it does is given back for who follows calls.
    pub(super) fn block(&mut self) -> Option<Effects> {
        let block = self.reader.block();
        let begins = block.program_number();
        if let Some(program) = begins.filter(|_| self.judge.state.ended) {
            self.is_skipping = self.called.as_slice().contains(&program);
            if !self.is_skipping {
                self.judge.begin();
                self.shadow = Shadow::new();
            }
        }
        if self.is_skipping || self.judge.state.ended {
            if !self.is_skipping && !block.words().is_empty() {
                self.judge.not_checked.note(Reason::BehindTheEnd, block.line());
            }
            return None;
        }
        let switch_is_on = self.judge.options.block_delete;
        let is_deleted = block.block_delete().is_some();
        if is_deleted {
            self.shadow.begin(&self.judge);
        }
        let runs = !(is_deleted && switch_is_on);
        let effects = if runs { Some(self.judge.take(block)) } else { None };
        let this = effects.filter(|effects| effects.act == Act::Tap && effects.repeats > 0);
        let lead = |state: &State| Cuts::of(state, &self.judge.dialect).first().map(|cut| cut.lead_mm);
        let mine = this.map(|_| lead(&self.judge.state));
        if let Some(finding) = self.shadow.follow(block, is_deleted && !switch_is_on, mine, &self.judge) {
            self.judge.tell(finding);
        }
        // A return to no call begins the program again; behind a `/` it may not.
        let again = |effects: &Effects| effects.call_return && !is_deleted && self.judge.calls[0] == 0;
        if let Some(effects) = effects.filter(|effects| effects.program_end || again(effects)) {
            self.judge.close();
            self.judge.state.ended = true;
            return Some(effects);
        }
        if let Some(effects) = effects {
            self.call_unfollowed(effects.call);
        }
        self.lost();
        effects
    }

    fn call_unfollowed(&mut self, call: Option<Call>) {
        if call.is_some() && !self.follows_calls {
            let line = self.judge.line;
            self.judge.not_checked.note(Reason::CallNotFollowed, line);
        }
    }

    fn lost(&mut self) {
        let lost = self.judge.queue.lost();
        if lost > 0 {
            let line = self.judge.line;
            self.judge.not_checked.note(Reason::FindingsLost, line);
        }
    }

    fn end(&mut self) {
        self.judge.close();
        let ended = self.judge.state.ended || matches!(self.reader.percent_lines(), [_, Some(_)]);
        if !ended && self.judge.holes > 0 {
            let finding = self.judge.at_block(Id::MissingEnd);
            self.judge.tell(finding);
        }
        if let Some(line) = self.reader.line_ends().first_other() {
            self.judge.tell(ProgramFinding::new(Id::MixedLineEndings, line, 1, 1));
        }
        if self.reader.has_byte_order_mark() {
            self.judge.tell(ProgramFinding::new(Id::NonAscii, 1, 1, 1));
        }
    }
}

impl Judge {
    /// Another program begins behind the end of the last: nothing holds any more.
    fn begin(&mut self) {
        self.state = State::start(&self.dialect);
        self.comments = Comments::default();
        self.drilled = Drilled::new();
        self.tapped = Tapped::new();
        self.before_change = None;
    }
}

/// The reader's part of a dialect.
fn settings(dialect: &Dialect) -> ReaderSettings {
    let reading = &dialect.reading;
    let usual = ReaderSettings::default();
    ReaderSettings {
        semicolon_comment: reading.semicolon_comment.unwrap_or(usual.semicolon_comment),
        max_block_chars: reading.max_block_chars.map_or(usual.max_block_chars, u32::from),
        spaces_are_errors: reading.spaces_in_numbers == Some(NumberSpaces::Error),
        block_delete_inside: usual.block_delete_inside,
    }
}
