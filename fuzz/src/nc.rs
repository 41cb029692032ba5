//! What has to hold of programs that are read and checked, whoever made them.

use threadcalc_core::nc::{Block, CheckOptions, Checker, Event, Tool, Variables, evaluate};
use threadcalc_core::{Dialect, Value};

use crate::check;

/// A dialect with these fields set.
pub fn with(fields: &[(&str, &str)], mut dialect: Dialect) -> Dialect {
    for (key, value) in fields {
        dialect.set(key, Value::Text(value.as_bytes())).unwrap_or_else(|error| panic!("{key}={value}: {error}"));
    }
    dialect
}

/// Hands a program over in pieces of a size; every event goes to `take`.
pub fn in_pieces(checker: &mut Checker, program: &[u8], size: usize, mut take: impl FnMut(Event)) {
    for mut piece in program.chunks(size) {
        while !piece.is_empty() {
            let taken = checker.read(piece);
            let mut events = 0;
            while let Some(event) = checker.next_event() {
                events += 1;
                take(event);
            }
            assert!(taken > 0 && (events > 0 || taken == piece.len()), "{taken} bytes, {events} events");
            piece = &piece[taken..];
        }
    }
    checker.finish();
    while let Some(event) = checker.next_event() {
        take(event);
    }
}

/// A checker that knows these tools.
pub fn checker(dialect: &Dialect, options: &CheckOptions, tools: &[Tool]) -> Checker {
    let mut checker = Checker::new(dialect, options);
    tools.iter().for_each(|tool| checker.add_tool(tool).expect("few tools"));
    checker
}

/// The bytes of a program by its lines, which end with LF, CRLF or CR.
#[derive(Default)]
pub struct Lines(Vec<u32>);

impl Lines {
    /// Of this program; the room of the last one is used again.
    pub fn of(&mut self, program: &[u8]) -> &Self {
        self.0.clear();
        let mut length = 0;
        let mut before = 0;
        for &byte in program {
            match byte {
                b'\n' if before == b'\r' => {}
                b'\n' | b'\r' => {
                    self.0.push(length);
                    length = 0;
                }
                _ => length += 1,
            }
            before = byte;
        }
        self.0.push(length);
        self
    }

    /// Whether there is a line with this number.
    pub fn has(&self, line: u32) -> bool {
        line > 0 && line as usize <= self.0.len()
    }

    /// How many bytes a line has.
    pub fn length(&self, line: u32) -> u32 {
        self.0[line as usize - 1]
    }
}

/// A block whose places lie in its line, and which is unreadable only where a fault says why.
pub fn block(block: &Block, program: &[u8]) {
    let line = &program[block.start() as usize..block.end() as usize];
    assert!(!line.iter().any(|byte| matches!(byte, b'\n' | b'\r')));
    let end = line.len() as u32 + 1;
    for word in block.words() {
        assert_eq!(line[word.column() as usize - 1].to_ascii_uppercase(), word.letter());
        assert!(word.column() < word.end_column() && word.end_column() <= end);
    }
    for comment in block.comments() {
        assert_eq!(&line[comment.column as usize..][..comment.text.len()], comment.text);
        assert!(comment.column < comment.end_column && comment.end_column <= end);
    }
    for fault in block.faults() {
        assert!(0 < fault.column && fault.column < fault.end_column && fault.end_column <= end, "{fault:?}");
        assert!(
            block.is_readable()
                || block.more_faults() > 0
                || block.faults().iter().any(|fault| fault.kind.hides_words())
        );
    }
}

/// Every value of a block is a sound number, or there is a reason why it is none.
pub fn values(block: &Block, variables: &Variables) {
    let assigned = block.assignments().iter().flat_map(|assignment| [assignment.index, assignment.value]);
    for value in block.words().iter().map(|word| word.value()).chain(assigned) {
        match evaluate(block, value, variables) {
            Ok(value) => check::number(value),
            Err(why) => assert!(!why.to_string().is_empty()),
        }
    }
}

/// An event whose places lie in the program.
pub fn event(event: &Event, lines: &Lines) {
    match event {
        Event::Hole(hole) => {
            assert!(lines.has(hole.line) && hole.number > 0 && hole.count > 0, "{hole:?}");
            assert!(hole.lead_mm.is_none_or(|lead| lead.is_positive()), "{hole:?}");
        }
        Event::Finding(finding) => {
            assert!(lines.has(finding.line()), "{finding:?}");
            assert!(0 < finding.column() && finding.column() <= finding.end_column(), "{finding:?}");
            assert!(finding.end_column() <= lines.length(finding.line()) + 1, "{finding:?}");
            let is_told = |line: u32| line == 0 || lines.has(line);
            assert!(finding.evidence().all(|evidence| is_told(evidence.line)), "{finding:?}");
            assert!(finding.call_path().all(|line| lines.has(line)), "{finding:?}");
        }
    }
}

/// A finding whose text has no gap.
pub fn text(event: &Event) {
    if let Event::Finding(finding) = event {
        assert!(!finding.to_string().contains(['{', '}', '[', ']', '?']), "{finding}");
    }
}
