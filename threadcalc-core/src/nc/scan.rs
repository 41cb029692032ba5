//! A line, one byte after the other: the reading that understands everything.

use super::block::Block;
use super::comments::OpenComment;
use super::expression::{Expression, Step};
use super::fault::FaultKind;
use super::name::Name;
use super::reader::ReaderSettings;
use super::word::{Assignment, InnerDelete, Word, WordValue};

/// Which part of a line is read.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Mode {
    /// Only blanks so far.
    Start,
    /// `%` stands at this column, and nothing else does.
    Percent(u32),
    /// `/` stands there, and may have a number.
    Slash,
    /// Between words.
    Items,
    /// The letter of a word stands there.
    Letter,
    Value,
    /// The number of a variable stands there, and `=` has to follow.
    Equals,
    /// The rest of something that is no value.
    Bad(FaultKind),
    /// The name of a program, up to this byte.
    Quoted(u8),
    /// The rest of a line that is not understood: only its comments are.
    Rest,
}

/// What a value is for.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Purpose {
    Word(u8),
    Index,
    /// The value of the variable of this number.
    Assigned(WordValue),
}

/// What is known of a line so far, besides its block.
#[derive(Clone, Debug)]
pub(super) struct Scanner {
    mode: Mode,
    comment: Option<OpenComment>,
    purpose: Purpose,
    expression: Expression,
    /// Where the word or assignment begins, and what is behind its last byte.
    column: u32,
    end_column: u32,
    /// Letters behind the letter of a word, the last of them, and whether two are next to each other.
    name: Name,
    letter: (u8, u32),
    is_joined: bool,
    open_brackets: u32,
    awaits_level: bool,
}

impl Scanner {
    pub(super) const fn new() -> Self {
        Self {
            mode: Mode::Start,
            comment: None,
            purpose: Purpose::Index,
            expression: Expression::new(),
            column: 0,
            end_column: 0,
            name: Name::NONE,
            letter: (0, 0),
            is_joined: false,
            open_brackets: 0,
            awaits_level: false,
        }
    }

    /// A line begins; its first words may be in the block already.
    #[inline]
    pub(super) fn begin(&mut self) {
        self.mode = Mode::Start;
        self.comment = None;
        self.awaits_level = false;
    }

    /// True if the line is a `%` and blanks.
    pub(super) const fn is_percent(&self) -> bool {
        matches!(self.mode, Mode::Percent(_))
    }

    /// True where a word may begin and nothing is begun.
    #[inline]
    pub(super) const fn is_between_words(&self) -> bool {
        self.comment.is_none() && matches!(self.mode, Mode::Start | Mode::Slash | Mode::Items)
    }

    /// False while there is nothing that `end` would end.
    #[inline]
    pub(super) fn has_begun(&self) -> bool {
        self.comment.is_some() || !matches!(self.mode, Mode::Start | Mode::Items)
    }

    /// Takes a byte that ends no line.
    pub(super) fn take(&mut self, byte: u8, column: u32, block: &mut Block, settings: &ReaderSettings) {
        if let Some(comment) = &mut self.comment {
            if comment.take(byte, column, block) {
                self.comment = None;
            }
            return;
        }
        match byte {
            b' ' | b'\t' => {}
            b'(' => self.open_comment(b')', column, block, settings),
            b';' if settings.semicolon_comment => self.open_comment(b'\n', column, block, settings),
            0x80.. => {
                self.leave(block, settings);
                block.fault(FaultKind::NonAscii, column, column.saturating_add(1));
            }
            _ => self.take_code(byte, column, block, settings),
        }
    }

    /// The line ends before this column. A lone `%` is left as it is.
    pub(super) fn end(&mut self, column: u32, block: &mut Block, settings: &ReaderSettings) {
        match self.comment.take() {
            Some(comment) => comment.end_line(column, block),
            None if self.is_percent() => return,
            None => {}
        }
        self.finish(block, settings);
    }

    fn open_comment(&mut self, close: u8, column: u32, block: &mut Block, settings: &ReaderSettings) {
        // Inside brackets a formula goes on behind a comment.
        let inside = self.mode == Mode::Value && self.expression.brackets() > 0;
        match if inside { self.expression.pause(&mut block.operations) } else { Ok(()) } {
            Ok(()) if inside => {}
            Ok(()) => self.leave(block, settings),
            Err(fault) => self.spoil(fault, block),
        }
        self.comment = Some(OpenComment::new(close, column, block));
    }

    /// What was begun ends here, and what stands here is no code: a comment or a foreign byte.
    fn leave(&mut self, block: &mut Block, settings: &ReaderSettings) {
        if let Mode::Percent(at) = self.mode {
            block.fault(FaultKind::StrayCharacter, at, at.saturating_add(1));
            self.mode = Mode::Items;
        }
        let is_name = matches!(self.mode, Mode::Quoted(_));
        self.finish(block, settings);
        if is_name {
            self.mode = Mode::Rest;
        }
    }

    /// What was begun ends here.
    fn finish(&mut self, block: &mut Block, settings: &ReaderSettings) {
        if self.mode == Mode::Letter {
            self.resolve_letters(block, settings);
        }
        if self.mode == Mode::Value {
            self.complete(block);
        }
        match self.mode {
            Mode::Equals => block.fault(FaultKind::BadAssignment, self.column, self.end_column),
            Mode::Bad(fault) => self.push_bad(fault, block),
            Mode::Quoted(_) => block.fault(FaultKind::ProgramName, self.column, self.end_column),
            Mode::Rest => return,
            _ => {}
        }
        self.mode = Mode::Items;
        self.awaits_level = false;
    }

    fn take_code(&mut self, byte: u8, column: u32, block: &mut Block, settings: &ReaderSettings) {
        // A byte that ends one thing may begin the next.
        while !self.step(byte, column, block, settings) {}
    }

    /// Takes a byte; false if with it something ended, so that it has to be looked at again.
    fn step(&mut self, byte: u8, column: u32, block: &mut Block, settings: &ReaderSettings) -> bool {
        let end_column = column.saturating_add(1);
        match self.mode {
            Mode::Start | Mode::Slash => return self.take_head(byte, column, block),
            Mode::Percent(_) => {
                self.leave(block, settings);
                return false;
            }
            Mode::Items => self.begin_item(byte, column, block, settings),
            Mode::Letter => return self.take_letter(byte, column, block, settings),
            Mode::Value => return self.take_value(byte, column, block),
            Mode::Equals if byte == b'=' => {
                self.begin_value(true, block, settings);
                self.end_column = end_column;
            }
            Mode::Equals => {
                self.open_brackets = 0;
                self.mode = Mode::Bad(FaultKind::BadAssignment);
                return false;
            }
            Mode::Bad(fault) if self.open_brackets == 0 && byte.is_ascii_alphabetic() => {
                self.push_bad(fault, block);
                return false;
            }
            Mode::Bad(_) => {
                match byte {
                    b'[' => self.open_brackets = self.open_brackets.saturating_add(1),
                    b']' => self.open_brackets = self.open_brackets.saturating_sub(1),
                    _ => {}
                }
                self.end_column = end_column;
            }
            Mode::Quoted(close) => {
                self.end_column = end_column;
                if byte == close {
                    block.fault(FaultKind::ProgramName, self.column, end_column);
                    self.mode = Mode::Rest;
                }
            }
            Mode::Rest => {}
        }
        true
    }

    /// What only the beginning of a line has: block delete and `%`.
    fn take_head(&mut self, byte: u8, column: u32, block: &mut Block) -> bool {
        let is_start = self.mode == Mode::Start;
        self.mode = Mode::Items;
        match byte {
            b'/' if is_start => {
                block.block_delete = Some(0);
                self.mode = Mode::Slash;
            }
            b'%' if is_start => self.mode = Mode::Percent(column),
            b'1'..=b'9' if !is_start => block.block_delete = Some(byte & 15),
            _ => return false,
        }
        true
    }

    fn take_value(&mut self, byte: u8, column: u32, block: &mut Block) -> bool {
        let step = self.expression.take(byte, column, &mut block.operations);
        if matches!(step, Step::Taken | Step::Full) {
            self.end_column = column.saturating_add(1);
        }
        match step {
            Step::Taken => {}
            Step::Full => self.spoil(FaultKind::FormulaTooLong, block),
            Step::Done => self.complete(block),
            Step::Bad(fault) => self.spoil(fault, block),
        }
        matches!(step, Step::Taken | Step::Full)
    }

    /// A word, an assignment, a slash, or something that means nothing.
    fn begin_item(&mut self, byte: u8, column: u32, block: &mut Block, settings: &ReaderSettings) {
        let end_column = column.saturating_add(1);
        let awaits_level = core::mem::take(&mut self.awaits_level);
        match byte {
            _ if byte.is_ascii_alphabetic() => self.begin_word(byte.to_ascii_uppercase(), column),
            b'#' => {
                self.purpose = Purpose::Index;
                (self.column, self.end_column) = (column, end_column);
                self.begin_value(false, block, settings);
            }
            b'/' if settings.block_delete_inside && block.inner_delete.is_none() => {
                block.inner_delete = Some(InnerDelete { level: 0, column });
                self.awaits_level = true;
            }
            b'/' => block.fault(FaultKind::SlashInside, column, end_column),
            b'1'..=b'9' if awaits_level => {
                block.inner_delete = block.inner_delete.map(|delete| InnerDelete { level: byte & 15, ..delete });
            }
            _ => block.fault(FaultKind::StrayCharacter, column, end_column),
        }
    }

    fn begin_word(&mut self, letter: u8, column: u32) {
        self.purpose = Purpose::Word(letter);
        (self.column, self.end_column) = (column, column.saturating_add(1));
        self.letter = (letter, column);
        self.name = Name::NONE;
        self.is_joined = false;
        self.mode = Mode::Letter;
    }

    fn begin_value(&mut self, is_open: bool, block: &Block, settings: &ReaderSettings) {
        self.expression.begin(is_open, settings.spaces_are_errors, &block.operations);
        self.mode = Mode::Value;
    }

    /// The word that is read, if it is one, has only its letter so far.
    const fn is_only_letter(&self) -> bool {
        self.letter.1 == self.column
    }

    /// Takes a byte behind a letter; false if it has to be looked at again.
    fn take_letter(&mut self, byte: u8, column: u32, block: &mut Block, settings: &ReaderSettings) -> bool {
        if byte.is_ascii_alphabetic() {
            self.is_joined |= self.end_column == column;
            self.letter = (byte.to_ascii_uppercase(), column);
            self.end_column = column.saturating_add(1);
            if self.name.push(byte) {
                return true;
            }
            self.is_joined = true;
        }
        let quote = match byte {
            b'<' => Some(b'>'),
            b'"' => Some(b'"'),
            _ => None,
        };
        if let (Some(close), Purpose::Word(b'O'), true) = (quote, self.purpose, self.is_only_letter()) {
            self.mode = Mode::Quoted(close);
            self.end_column = column.saturating_add(1);
            return true;
        }
        if byte == b'[' && self.name.is_function() {
            let name = self.name;
            self.begin_value(false, block, settings);
            self.expression.begin_function(name);
        } else {
            self.resolve_letters(block, settings);
        }
        false
    }

    /// Letters that are no function: those before the last have no value, and its value follows.
    fn resolve_letters(&mut self, block: &mut Block, settings: &ReaderSettings) {
        if self.is_joined || self.name.len() > 1 {
            block.fault(FaultKind::Letters, self.column, self.end_column);
            self.mode = Mode::Rest;
            return;
        }
        if !self.is_only_letter() {
            if let Purpose::Word(first) = self.purpose {
                let end_column = self.column.saturating_add(1);
                block.fault(FaultKind::BadNumber, self.column, end_column);
                block.push(Word::new(first, WordValue::Unreadable, self.column, end_column));
            }
            let (letter, column) = self.letter;
            self.begin_word(letter, column);
        }
        self.begin_value(false, block, settings);
    }

    /// The value is complete, or ends before it is.
    fn complete(&mut self, block: &mut Block) {
        match self.expression.end(&mut block.operations) {
            Ok(value) => self.push(value, block),
            Err(fault) => {
                self.spoil(fault, block);
                self.push_bad(fault, block);
            }
        }
    }

    fn push(&mut self, value: WordValue, block: &mut Block) {
        let (column, end_column) = (self.column, self.end_column);
        self.mode = Mode::Items;
        match self.purpose {
            Purpose::Word(letter) => block.push(Word::new(letter, value, column, end_column)),
            Purpose::Assigned(index) => block.push_assignment(Assignment { index, value, column, end_column }),
            Purpose::Index => {
                self.purpose = Purpose::Assigned(value);
                self.mode = Mode::Equals;
            }
        }
    }

    /// The value is none; what belongs to it is still to be skipped.
    fn spoil(&mut self, fault: FaultKind, block: &mut Block) {
        self.expression.discard(&mut block.operations);
        self.open_brackets = self.expression.brackets();
        self.mode = Mode::Bad(fault);
    }

    /// The word or assignment whose value is none.
    fn push_bad(&mut self, fault: FaultKind, block: &mut Block) {
        let (column, end_column) = (self.column, self.end_column);
        block.fault(fault, column, end_column);
        if self.open_brackets > 0 && fault != FaultKind::UnclosedBracket {
            block.fault(FaultKind::UnclosedBracket, column, end_column);
        }
        match self.purpose {
            // Any variable may have changed.
            Purpose::Index if fault != FaultKind::BadAssignment => {
                block.fault(FaultKind::BadAssignment, column, end_column);
            }
            Purpose::Assigned(_) if fault == FaultKind::BadAssignment => {}
            Purpose::Index => {}
            _ => self.push(WordValue::Unreadable, block),
        }
        self.mode = Mode::Items;
    }
}
