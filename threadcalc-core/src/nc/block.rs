//! A block: what stands on one line of a program.

use super::comments::{BlockComment, Comments};
use super::fault::{Fault, FaultKind, Faults};
use super::list::List;
use super::number::Number;
use super::postfix::{Formula, Operation, Operations};
use super::word::{Assignment, InnerDelete, Word, WordValue};

/// How many words of one block are kept.
const MOST_WORDS: usize = 64;
/// How many assignments of one block are kept.
const MOST_ASSIGNMENTS: usize = 16;
/// RS274/NGC, table 4: at most four M words on a line.
const MOST_M_WORDS: u8 = 4;

/// What stands on one line: words in their order, assignments, comments, and what is wrong with it.
///
/// Columns count bytes from 1, a byte order mark not counted; the byte of a column is
/// `start() + column - 1`.
///
/// ```
/// use threadcalc_core::nc::{Blocks, ReaderSettings};
///
/// let mut program = Blocks::new(b"/2 N30 G84 Z-19.5 (TAP M8)\nF[#1*2]\n", ReaderSettings::default());
/// let block = program.next().unwrap();
/// assert_eq!((block.line(), block.block_delete(), block.line_number()), (1, Some(2), Some(30)));
/// assert_eq!(block.words()[1].number().unwrap().to_string(), "-19.5");
/// assert_eq!(block.comments().next().unwrap().text, b"TAP M8");
/// let block = program.next().unwrap();
/// assert_eq!((block.line(), block.words()[0].letter(), block.words()[0].number()), (2, b'F', None));
/// assert!(program.next().is_none());
/// ```
///
/// # Source
/// RS274/NGC, NISTIR 6556, section 3.3 (format of a line); ISO 6983-1 (block, word, block delete).
#[derive(Clone, Debug, PartialEq)]
pub struct Block {
    pub(super) line: u32,
    pub(super) start: u64,
    pub(super) end: u64,
    pub(super) block_delete: Option<u8>,
    pub(super) inner_delete: Option<InnerDelete>,
    pub(super) line_number: Option<u64>,
    pub(super) program_number: Option<u64>,
    letters: u32,
    m_words: u8,
    hides_words: bool,
    words: List<Word, MOST_WORDS>,
    assignments: List<Assignment, MOST_ASSIGNMENTS>,
    pub(super) operations: Operations,
    pub(super) comments: Comments,
    faults: Faults,
}

/// The bit of a letter, in upper case.
const fn bit(letter: u8) -> u32 {
    1_u32.wrapping_shl(letter as u32)
}

impl Block {
    pub(super) const fn new() -> Self {
        let blank = Assignment { index: WordValue::Unreadable, value: WordValue::Unreadable, column: 0, end_column: 0 };
        Self {
            line: 0,
            start: 0,
            end: 0,
            block_delete: None,
            inner_delete: None,
            line_number: None,
            program_number: None,
            letters: 0,
            m_words: 0,
            hides_words: false,
            words: List::new(Word::new(0, WordValue::Unreadable, 0, 0)),
            assignments: List::new(blank),
            operations: Operations::NONE,
            comments: Comments::NONE,
            faults: Faults::NONE,
        }
    }

    /// Empties it for the line that begins at this byte.
    #[inline]
    pub(super) fn begin(&mut self, line: u32, start: u64) {
        self.line = line;
        self.start = start;
        self.end = start;
        self.block_delete = None;
        self.inner_delete = None;
        self.line_number = None;
        self.program_number = None;
        self.letters = 0;
        self.m_words = 0;
        self.hides_words = false;
        self.words.clear();
        self.assignments.clear();
        self.operations.clear();
        self.comments.clear();
        self.faults.clear();
    }

    /// The line, from 1; a line that is too far for 32 bits is the last of them.
    #[must_use]
    pub const fn line(&self) -> u32 {
        self.line
    }

    /// The byte of the program at which the line begins, from 0, behind a byte order mark.
    #[must_use]
    pub const fn start(&self) -> u64 {
        self.start
    }

    /// The byte behind the line, from 0: where its end mark stands.
    #[must_use]
    pub const fn end(&self) -> u64 {
        self.end
    }

    /// The switch that leaves the block out: 1 to 9, 0 for a `/` without a number, `None` without one.
    #[must_use]
    pub const fn block_delete(&self) -> Option<u8> {
        self.block_delete
    }

    /// The first `/` behind the beginning of the block, where the settings allow it.
    #[must_use]
    pub const fn inner_delete(&self) -> Option<InnerDelete> {
        self.inner_delete
    }

    /// The number of its N.
    #[must_use]
    pub const fn line_number(&self) -> Option<u64> {
        self.line_number
    }

    /// The number of its O: a program begins.
    #[must_use]
    pub const fn program_number(&self) -> Option<u64> {
        self.program_number
    }

    /// The words in the order in which they are written, but for N and O.
    #[must_use]
    pub fn words(&self) -> &[Word] {
        self.words.as_slice()
    }

    /// The assignments in the order in which they are written.
    #[must_use]
    pub fn assignments(&self) -> &[Assignment] {
        self.assignments.as_slice()
    }

    /// The operations of one of its formulas, in the order in which they are done.
    #[must_use]
    pub fn operations(&self, formula: Formula) -> &[Operation] {
        self.operations.of(formula)
    }

    /// The first eight comments, in order.
    pub fn comments(&self) -> impl Iterator<Item = BlockComment<'_>> {
        self.comments.iter()
    }

    /// How many comments there are besides those.
    #[must_use]
    pub const fn more_comments(&self) -> u32 {
        self.comments.more()
    }

    /// The first sixteen faults, in the order in which they were found.
    #[must_use]
    pub fn faults(&self) -> &[Fault] {
        self.faults.kept()
    }

    /// How many faults there are besides those.
    #[must_use]
    pub const fn more_faults(&self) -> u32 {
        self.faults.more()
    }

    /// False if a fault leaves open which words the block has: it must not be interpreted, and what it
    /// does to the state of the machine is unknown.
    #[must_use]
    pub const fn is_readable(&self) -> bool {
        !self.hides_words
    }

    /// True if there is nothing on the line but blanks.
    pub(super) fn is_empty(&self) -> bool {
        self.has_no_items() && self.block_delete.is_none() && self.comments.iter().next().is_none()
    }

    /// True while the line has no word, number, assignment or fault.
    pub(super) fn has_no_items(&self) -> bool {
        self.words.len() == 0
            && self.line_number.is_none()
            && self.program_number.is_none()
            && self.assignments.len() == 0
            && self.faults.kept().is_empty()
    }

    pub(super) fn fault(&mut self, kind: FaultKind, column: u32, end_column: u32) {
        self.hides_words |= kind.hides_words();
        self.faults.push(kind, column, end_column);
    }

    /// Adds a word that has no fault; false if it has one, or if there is no room.
    #[inline]
    pub(super) fn push_sound(&mut self, word: Word) -> bool {
        let bit = bit(word.letter);
        match word.letter {
            _ if self.words.len() >= MOST_WORDS => return false,
            b'G' => {}
            b'M' if self.m_words >= MOST_M_WORDS => return false,
            b'M' => self.m_words = self.m_words.wrapping_add(1),
            _ if self.letters & bit != 0 => return false,
            _ => self.letters |= bit,
        }
        self.words.push(word)
    }

    /// Adds a word, or an N or O.
    pub(super) fn push(&mut self, word: Word) {
        let (column, end_column) = (word.column, word.end_column);
        if matches!(word.letter, b'N' | b'O') {
            self.push_number(word);
            return;
        }
        if self.push_sound(word) {
            return;
        }
        if word.letter == b'M' {
            if self.m_words >= MOST_M_WORDS {
                self.fault(FaultKind::TooManyMWords, column, end_column);
            }
        } else if self.letters & bit(word.letter) != 0 {
            self.fault(FaultKind::DuplicateWord, column, end_column);
        }
        if !self.words.push(word) {
            self.fault(FaultKind::TooManyWords, column, end_column);
        }
    }

    /// Takes the number of an N or O.
    fn push_number(&mut self, word: Word) {
        let (column, end_column) = (word.column, word.end_column);
        let plain = word.number().and_then(Number::plain);
        if plain.is_none() && word.value != WordValue::Unreadable {
            self.fault(FaultKind::BadNumber, column, end_column);
        }
        if self.letters & bit(word.letter) != 0 {
            self.fault(FaultKind::DuplicateWord, column, end_column);
            return;
        }
        if word.letter == b'N' && !(self.has_no_items() || plain.is_none()) {
            self.fault(FaultKind::LineNumberInside, column, end_column);
        }
        self.letters |= bit(word.letter);
        if word.letter == b'N' {
            self.line_number = plain;
        } else {
            self.program_number = plain;
        }
    }

    /// Takes the number of an N at the beginning of a line.
    #[inline]
    pub(super) fn push_line_number(&mut self, number: Number) -> bool {
        let plain = number.plain();
        let takes = plain.is_some() && self.has_no_items();
        if takes {
            self.line_number = plain;
            self.letters |= bit(b'N');
        }
        takes
    }

    pub(super) fn push_assignment(&mut self, assignment: Assignment) {
        if !self.assignments.push(assignment) {
            self.fault(FaultKind::TooManyAssignments, assignment.column, assignment.end_column);
        }
    }
}
