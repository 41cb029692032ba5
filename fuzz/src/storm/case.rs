//! One drawn program through reader and checker, and what has to hold of it.

use threadcalc_core::Dialect;
use threadcalc_core::nc::{
    CheckOptions, Checker, Event, ProgramCheck, ProgramFindingId, Reader, ReaderSettings, Reason, Report, Tool,
    Unchecked, Variables,
};

use super::draw::Known;
use super::random::Random;
use super::told::Told;
use crate::nc::{self, Lines};

/// How many blocks calls may run beside one for every byte, and how many events of a block there is room for.
const BLOCKS_OF_CALLS: usize = 100_000;
const EVENTS_OF_A_BLOCK: usize = 60;

/// What was met: that a run was about something.
#[derive(Clone, Default)]
pub struct Tally {
    /// Programs that went through reader and checker.
    pub programs: u64,
    /// Their bytes.
    pub bytes: u64,
    /// Tapped holes.
    pub holes: u64,
    /// Programs that were checked in pieces as well.
    pub in_pieces: u64,
    /// Programs whose report was written as JSON.
    pub written: u64,
    /// Findings by number.
    pub findings: Vec<u64>,
    /// Reasons by number.
    pub reasons: Vec<u64>,
}

impl Tally {
    /// Adds another's.
    pub fn add(&mut self, other: &Self) {
        self.programs += other.programs;
        self.bytes += other.bytes;
        self.holes += other.holes;
        self.in_pieces += other.in_pieces;
        self.written += other.written;
        add_all(&mut self.findings, &other.findings);
        add_all(&mut self.reasons, &other.reasons);
    }

    /// The findings that were never met.
    pub fn never_found(&self) -> impl Iterator<Item = &'static str> + '_ {
        let is_met = |id: &ProgramFindingId| self.findings.get(id.number() as usize).is_some_and(|count| *count > 0);
        ProgramFindingId::ALL.iter().filter(move |id| !is_met(id)).map(|id| id.name())
    }

    /// The reasons that were never met.
    pub fn never_a_reason(&self) -> impl Iterator<Item = &'static str> + '_ {
        let is_met = |reason: &Reason| self.reasons.get(reason.number() as usize).is_some_and(|count| *count > 0);
        Reason::ALL.iter().filter(move |reason| !is_met(reason)).map(|reason| reason.name())
    }
}

fn add_all(sums: &mut Vec<u64>, more: &[u64]) {
    sums.resize(sums.len().max(more.len()), 0);
    sums.iter_mut().zip(more).for_each(|(sum, more)| *sum += more);
}

fn count(counts: &mut Vec<u64>, number: usize) {
    if counts.len() <= number {
        counts.resize(number + 1, 0);
    }
    counts[number] += 1;
}

/// All that cases are drawn from, and the room that they use again.
pub struct Storm<'a> {
    seed: u64,
    known: &'a Known,
    told: &'a Told,
    program: Vec<u8>,
    lines: Lines,
    events: Vec<Event>,
    tally: Tally,
}

/// A program with what its check is told.
struct Case<'a> {
    program: &'a [u8],
    dialect: &'a Dialect,
    options: &'a CheckOptions,
    tools: &'a [Tool],
}

impl<'a> Storm<'a> {
    /// Cases of a seed, drawn from these programs.
    #[must_use]
    pub fn new(seed: u64, known: &'a Known, told: &'a Told) -> Self {
        let (lines, tally) = (Lines::default(), Tally::default());
        Self { seed, known, told, program: Vec::new(), lines, events: Vec::new(), tally }
    }

    /// What was met so far.
    #[must_use]
    pub const fn tally(&self) -> &Tally {
        &self.tally
    }

    /// The program that was drawn last.
    #[must_use]
    pub fn program(&self) -> &[u8] {
        &self.program
    }

    /// Draws a case and runs it; panics if something does not hold.
    pub fn run(&mut self, number: u64) {
        let mut random = Random::new(self.seed, number);
        self.known.draw(&mut random, &mut self.program);
        let Told { dialects, options, tools } = self.told;
        let case = Case {
            program: &self.program,
            dialect: &dialects[random.below(dialects.len())],
            options: &options[random.below(options.len())],
            tools: &tools[random.below(tools.len())],
        };
        self.lines.of(case.program);
        self.tally.programs += 1;
        self.tally.bytes += case.program.len() as u64;
        read(&case, &mut random);
        check(&case, &mut random, &self.lines, &mut self.events, &mut self.tally);
    }
}

/// Through the reader: no more blocks than bytes, places within their lines, values or reasons.
fn read(case: &Case<'_>, random: &mut Random) {
    let mut settings = ReaderSettings::default();
    settings.semicolon_comment = !random.one_in(3);
    settings.spaces_are_errors = random.one_in(3);
    settings.block_delete_inside = random.one_in(3);
    settings.max_block_chars = if random.one_in(3) { 20 } else { 256 };
    let size = if random.one_in(2) { case.program.len().max(1) } else { 1 + random.below(40) };
    let has_values = random.one_in(16);
    let mut variables = Variables::new();
    let (mut reader, mut blocks) = (Reader::new(settings), 0);
    let mut take = |reader: &Reader| {
        let block = reader.block();
        blocks += 1;
        nc::block(block, case.program);
        if has_values {
            nc::values(block, &variables);
            variables.assign(block);
        }
    };
    for mut piece in case.program.chunks(size) {
        while !piece.is_empty() {
            let taken = reader.read(piece);
            assert!(taken.bytes > 0 && (taken.is_block || taken.bytes == piece.len()));
            piece = &piece[taken.bytes..];
            if taken.is_block {
                take(&reader);
            }
        }
    }
    if reader.finish() {
        take(&reader);
    }
    assert!(blocks <= case.program.len() && !reader.finish());
    assert_eq!(reader.offset(), case.program.len() as u64);
}

/// Through the checker, whole, and for some in pieces, as text and as JSON.
fn check(case: &Case<'_>, random: &mut Random, lines: &Lines, events: &mut Vec<Event>, tally: &mut Tally) {
    let follows_calls = case.dialect.reading.subprogram_call.is_some();
    let calls = if follows_calls { BLOCKS_OF_CALLS + case.program.len() } else { 0 };
    let most = (case.program.len() + 2 + calls) * EVENTS_OF_A_BLOCK;
    let mut whole = ProgramCheck::new(case.program, case.dialect, case.options);
    case.tools.iter().for_each(|tool| whole.add_tool(tool).expect("few tools"));
    events.clear();
    events.extend(whole.by_ref().take(most));
    assert!(events.len() < most, "{most} events");
    for event in events.iter() {
        nc::event(event, lines);
        match event {
            Event::Hole(_) => tally.holes += 1,
            Event::Finding(finding) => count(&mut tally.findings, finding.id().number() as usize),
        }
    }
    not_checked(case, whole.not_checked(), lines, events, tally);
    if random.one_in(16) {
        events.iter().take(100).for_each(nc::text);
    }
    if random.one_in(64) {
        tally.written += 1;
        json(events, &whole.not_checked().collect::<Vec<_>>());
    }
    if random.one_in(4) {
        tally.in_pieces += 1;
        let size = if random.one_in(3) { 1 } else { 1 + random.below(40) };
        let reasons: Vec<_> = whole.not_checked().collect();
        in_pieces(case, size, events, &reasons, follows_calls.then_some(tally));
    }
}

/// What was not checked: each reason once, with a line of the program, and those that an event asks for.
fn not_checked(
    case: &Case<'_>,
    reasons: impl Iterator<Item = Unchecked>,
    lines: &Lines,
    events: &[Event],
    tally: &mut Tally,
) {
    let mut seen = 0_u64;
    for told in reasons {
        let bit = 1 << told.reason.number();
        assert!(seen & bit == 0 && told.count > 0 && lines.has(told.first_line), "{told:?}");
        seen |= bit;
        count(&mut tally.reasons, told.reason.number() as usize);
    }
    let has = |reason: Reason| seen & (1 << reason.number()) != 0;
    assert!(!has(Reason::MacrosLeft) || case.options.leave_macros);
    assert!(!has(Reason::CallNotFollowed), "calls are followed here");
    if has(Reason::FindingsLost) {
        return;
    }
    for event in events {
        match event {
            Event::Hole(hole) => {
                assert!(
                    hole.lead_mm.is_some() || has(Reason::LeadNotKnown) || is_left_active(events, hole.number),
                    "{hole:?}"
                );
            }
            Event::Finding(finding) => {
                assert!(finding.id() != ProgramFindingId::BlockNotRead || has(Reason::BlockNotRead), "{finding}");
            }
        }
    }
}

/// Whether the hole is a cycle that was left active: its lead is no matter. One finding tells of all, by the first;
/// which line that has says nothing where a call goes back.
fn is_left_active(events: &[Event], number: u32) -> bool {
    events.iter().any(|event| {
        matches!(event, Event::Finding(finding)
            if finding.id() == ProgramFindingId::CycleLeftActive && finding.hole().is_some_and(|first| first <= number))
    })
}

/// A report that a reader of JSON takes, with as many entries.
fn json(events: &[Event], not_checked: &[Unchecked]) {
    let (mut tapped_holes, mut findings) = (Vec::new(), Vec::new());
    for event in events.iter().take(2000) {
        match event {
            Event::Hole(hole) => tapped_holes.push(*hole),
            Event::Finding(finding) => findings.push(*finding),
        }
    }
    let report = Report { tapped_holes: &tapped_holes, findings: &findings, not_checked };
    let text = serde_json::to_string(&report).expect("a report is written");
    let read: serde_json::Value = serde_json::from_str(&text).expect("what was written is JSON");
    let length = |key: &str| read[key].as_array().map(Vec::len);
    assert_eq!(length("tapped_holes"), Some(tapped_holes.len()), "{text}");
    assert_eq!(length("findings"), Some(findings.len()), "{text}");
    assert_eq!(length("not_checked"), Some(not_checked.len()), "{text}");
}

/// The same events in pieces as in one. A check in pieces follows no calls: under a dialect that has them, two
/// ways of cutting are compared.
fn in_pieces(case: &Case<'_>, size: usize, whole: &[Event], reasons: &[Unchecked], with_calls: Option<&mut Tally>) {
    let new = || nc::checker(case.dialect, case.options, case.tools);
    if let Some(tally) = with_calls {
        let (mut one, mut events) = (new(), Vec::new());
        nc::in_pieces(&mut one, case.program, case.program.len().max(1), |event| events.push(event));
        let reasons: Vec<_> = one.not_checked().collect();
        reasons.iter().for_each(|told| count(&mut tally.reasons, told.reason.number() as usize));
        is_same(&mut new(), case.program, size, &events, &reasons);
    } else {
        is_same(&mut new(), case.program, size, whole, reasons);
    }
}

fn is_same(checker: &mut Checker, program: &[u8], size: usize, whole: &[Event], reasons: &[Unchecked]) {
    let mut place = 0;
    nc::in_pieces(checker, program, size, |event| {
        assert!(whole.get(place) == Some(&event), "{event:?} in pieces of {size}, whole {:?}", whole.get(place));
        place += 1;
    });
    assert_eq!(place, whole.len(), "events in pieces of {size}");
    assert!(checker.not_checked().eq(reasons.iter().copied()), "reasons in pieces of {size}");
}
