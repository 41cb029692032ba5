//! What is wrong with a line of a program as it is written.

use super::list::List;
use crate::finding::Severity;
use crate::named::named;

/// How many faults of one block are kept in full.
const MOST_FAULTS: usize = 16;

named! {
    /// What is wrong with a line as it is written; what the line does is another question.
    pub enum FaultKind {
        /// A comment that nothing closes: the rest of the line is comment.
        UnclosedComment = 1 "unclosed-comment",
        /// `(` inside a comment: comments do not nest, the first `)` closes it.
        NestedComment = 2 "nested-comment",
        /// No number where there has to be one: none at all, no digit, a comma, two points, two signs.
        BadNumber = 3 "bad-number",
        /// A number of more than 18 digits.
        TooManyDigits = 4 "too-many-digits",
        /// A blank inside a number, where the settings forbid it.
        BlankInNumber = 5 "blank-in-number",
        /// A letter other than G and M twice in a block.
        DuplicateWord = 6 "duplicate-word",
        /// More than four M words in a block.
        TooManyMWords = 7 "too-many-m-words",
        /// Bytes above 127 in a comment.
        NonAsciiInComment = 8 "non-ascii-in-comment",
        /// Bytes above 127 outside comments: the block is not interpreted.
        NonAscii = 9 "non-ascii",
        /// A character that means nothing where it stands.
        StrayCharacter = 10 "stray-character",
        /// `/` behind the beginning of the line.
        SlashInside = 11 "slash-inside",
        /// A `[` that nothing closes.
        UnclosedBracket = 12 "unclosed-bracket",
        /// A formula with more operations or brackets than there is room for.
        FormulaTooLong = 13 "formula-too-long",
        /// A line of more bytes than a block may have: they are its end column less one.
        LineTooLong = 14 "line-too-long",
        /// Letters next to each other that have no value and are no function: `GOTO`, `IF`, `WHILE`.
        Letters = 15 "letters",
        /// A program that is named and not numbered: `O<name>`.
        ProgramName = 16 "program-name",
        /// N behind the beginning of a block.
        LineNumberInside = 17 "line-number-inside",
        /// `#` that is not followed by a variable and `=`.
        BadAssignment = 18 "bad-assignment",
        /// More words than there is room for.
        TooManyWords = 19 "too-many-words",
        /// More assignments than there is room for.
        TooManyAssignments = 20 "too-many-assignments",
    }
}

impl FaultKind {
    /// How bad it is.
    #[must_use]
    pub const fn severity(self) -> Severity {
        match self {
            Self::NonAsciiInComment => Severity::Info,
            Self::LineTooLong | Self::ProgramName => Severity::Warning,
            _ => Severity::Error,
        }
    }

    /// True if it leaves open which words the block has: the block must not be interpreted.
    #[must_use]
    pub const fn hides_words(self) -> bool {
        matches!(
            self,
            Self::NonAscii
                | Self::StrayCharacter
                | Self::UnclosedBracket
                | Self::Letters
                | Self::ProgramName
                | Self::BadAssignment
                | Self::TooManyWords
                | Self::TooManyAssignments
        )
    }

    /// True if neighbours in a run of characters are told as one.
    const fn comes_in_runs(self) -> bool {
        matches!(self, Self::NonAscii | Self::StrayCharacter)
    }
}

/// A fault and where it is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub struct Fault {
    /// What is wrong.
    pub kind: FaultKind,
    /// Where it begins, in bytes from 1.
    pub column: u32,
    /// The column behind it.
    pub end_column: u32,
}

/// The faults of a block.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Faults {
    kept: List<Fault, MOST_FAULTS>,
    more: u32,
}

impl Faults {
    pub(super) const NONE: Self =
        Self { kept: List::new(Fault { kind: FaultKind::BadNumber, column: 0, end_column: 0 }), more: 0 };

    pub(super) fn kept(&self) -> &[Fault] {
        self.kept.as_slice()
    }

    pub(super) const fn more(&self) -> u32 {
        self.more
    }

    pub(super) fn clear(&mut self) {
        self.kept.clear();
        self.more = 0;
    }

    pub(super) fn push(&mut self, kind: FaultKind, column: u32, end_column: u32) {
        if let Some(last) = self.kept.last_mut() {
            if kind.comes_in_runs() && last.kind == kind && last.end_column == column {
                last.end_column = end_column;
                return;
            }
        }
        if !self.kept.push(Fault { kind, column, end_column }) {
            self.more = self.more.saturating_add(1);
        }
    }
}
