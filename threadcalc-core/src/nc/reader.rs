//! Programs as bytes, in pieces of any size.

use super::block::Block;
use super::fault::FaultKind;
use super::lines::{LineEnd, LineEnds, Mark};
use super::quick::{Lines, Run};
use super::scan::Scanner;
use super::words;

/// What a control takes a line for, where controls differ.
///
/// ```
/// use threadcalc_core::nc::ReaderSettings;
///
/// let mut settings = ReaderSettings::default();
/// settings.semicolon_comment = false;
/// assert_eq!(settings.max_block_chars, 256);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub struct ReaderSettings {
    /// `;` begins a comment up to the end of the line. Without it, it is a stray character.
    pub semicolon_comment: bool,
    /// The most bytes of a line, blanks and comments too: a longer one is read, and told.
    pub max_block_chars: u32,
    /// A blank inside a number is a fault; otherwise it means nothing.
    pub spaces_are_errors: bool,
    /// `/` behind the beginning of a block is a block delete for what stands behind it; otherwise it is
    /// a fault.
    pub block_delete_inside: bool,
}

impl Default for ReaderSettings {
    /// Comments behind `;`, 256 bytes a line (RS274/NGC), blanks without meaning, `/` at the beginning only.
    fn default() -> Self {
        Self { semicolon_comment: true, max_block_chars: 256, spaces_are_errors: false, block_delete_inside: false }
    }
}

/// What a reader took of the bytes that it was given.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub struct Taken {
    /// How many of them; the rest is for the next call.
    pub bytes: usize,
    /// True if with them a block is complete: [`Reader::block`].
    pub is_block: bool,
}

/// Reads a program in pieces of any size, without a heap, in time linear in its length.
///
/// A block is a line with something on it. Lines end with LF, CRLF or CR. A line with nothing but `%`
/// begins the program, a second one ends it: what is behind it is not read. The blocks are the same
/// however the program is cut into pieces.
///
/// ```
/// use threadcalc_core::nc::{Reader, ReaderSettings};
///
/// let mut reader = Reader::new(ReaderSettings::default());
/// let mut holes = Vec::new();
/// for mut piece in [&b"%\r\nG0 X1"[..], b"0.\r", b"\nG84 Z-1", b"5. F1.25"] {
///     while !piece.is_empty() {
///         let taken = reader.read(piece);
///         piece = &piece[taken.bytes..];
///         if taken.is_block {
///             holes.push((reader.block().line(), reader.block().words().len()));
///         }
///     }
/// }
/// if reader.finish() {
///     holes.push((reader.block().line(), reader.block().words().len()));
/// }
/// assert_eq!(holes, [(2, 2), (3, 3)]);
/// ```
///
/// # Source
/// RS274/NGC, NISTIR 6556, sections 3.2 (files) and 3.3 (format of a line); ISO 6983-1 (block format).
#[derive(Clone, Debug)]
pub struct Reader {
    settings: ReaderSettings,
    block: Block,
    scanner: Scanner,
    /// The line that is read next or now, and the byte of the program that is next.
    line: u32,
    offset: u64,
    column: u32,
    is_in_line: bool,
    mark: Mark,
    ends: LineEnds,
    percent_lines: [Option<u32>; 2],
}

impl Reader {
    /// A reader at the beginning of a program.
    #[must_use]
    pub const fn new(settings: ReaderSettings) -> Self {
        Self {
            settings,
            block: Block::new(),
            scanner: Scanner::new(),
            line: 1,
            offset: 0,
            column: 1,
            is_in_line: false,
            mark: Mark::NEW,
            ends: LineEnds::NONE,
            percent_lines: [None; 2],
        }
    }

    /// Takes bytes up to the end of the next block, or all.
    #[must_use]
    pub fn read(&mut self, bytes: &[u8]) -> Taken {
        let mut rest = bytes;
        while let Some(first) = rest.first() {
            let settled = self.settle_line_end(rest);
            if settled > 0 {
                rest = rest.get(settled..).unwrap_or(&[]);
                continue;
            }
            if self.is_ended() {
                self.skip(rest, rest.len());
                break;
            }
            if !self.is_in_line {
                if self.mark.takes(*first) {
                    rest = self.skip(rest, 1);
                    continue;
                }
                rest = self.begin_line(rest);
            }
            let used = self.scan(rest);
            rest = self.skip(rest, used);
            if let Some(end) = rest.first() {
                let end = if *end == b'\n' { LineEnd::Lf } else { LineEnd::Cr };
                let is_block = self.end_line(Some(end));
                rest = self.skip(rest, 1);
                if is_block {
                    return Taken { bytes: bytes.len().saturating_sub(rest.len()), is_block };
                }
            }
        }
        Taken { bytes: bytes.len(), is_block: false }
    }

    /// Of a CRLF behind a block or at the end of a piece, the LF comes with the next bytes; how many belong to it.
    #[inline]
    pub(super) fn settle_line_end(&mut self, bytes: &[u8]) -> usize {
        let Some(first) = bytes.first().filter(|_| !self.is_in_line) else { return 0 };
        let is_settled = self.ends.settle(Some(*first));
        if is_settled {
            self.skip(bytes, 1);
        }
        usize::from(is_settled)
    }

    /// A run of lines that only move, if one begins with these bytes.
    pub(super) fn run<'a>(&self, bytes: &'a [u8]) -> Option<Run<'a>> {
        let end_with_cr = self.ends.is_crlf()?;
        if self.is_in_line || !self.mark.is_over() || self.is_ended() {
            return None;
        }
        Run::of(bytes, Lines { end_with_cr, most_chars: self.settings.max_block_chars })
    }

    /// Goes on behind a run that begins here.
    pub(super) fn pass(&mut self, run: &Run<'_>) {
        self.ends.note_more(run.lines());
        self.line = self.line.saturating_add(run.lines());
        self.offset = self.offset.saturating_add(run.bytes() as u64);
    }

    /// The program ends here: true if with that a last block is complete.
    #[must_use]
    pub fn finish(&mut self) -> bool {
        self.ends.settle(None);
        if self.is_ended() {
            return false;
        }
        if let Some(read) = self.mark.give_up() {
            self.begin_with(read);
        }
        self.is_in_line && self.end_line(None)
    }

    /// The block that was completed last. While a line is read, that line so far.
    #[must_use]
    pub const fn block(&self) -> &Block {
        &self.block
    }

    /// Goes on elsewhere in the same program, at the beginning of a line.
    pub(super) fn go_to(&mut self, line: u32, offset: u64) {
        self.ends.settle(None);
        self.line = line;
        self.offset = offset;
        self.column = 1;
        self.is_in_line = false;
    }

    /// The line that is read next.
    pub(super) const fn line(&self) -> u32 {
        self.line
    }

    /// How many bytes of the program were taken.
    #[must_use]
    pub const fn offset(&self) -> u64 {
        self.offset
    }

    /// True if the program begins with a UTF-8 byte order mark.
    #[must_use]
    pub const fn has_byte_order_mark(&self) -> bool {
        self.mark.is_read()
    }

    /// The lines with nothing but `%`: the one that begins the program and the one that ends it.
    #[must_use]
    pub const fn percent_lines(&self) -> [Option<u32>; 2] {
        self.percent_lines
    }

    /// True behind the second `%` line: nothing more is read.
    #[must_use]
    pub const fn is_ended(&self) -> bool {
        self.percent_lines[1].is_some()
    }

    /// Which line ends were seen.
    #[must_use]
    pub const fn line_ends(&self) -> &LineEnds {
        &self.ends
    }

    fn skip<'a>(&mut self, bytes: &'a [u8], count: usize) -> &'a [u8] {
        self.offset = self.offset.saturating_add(count as u64);
        bytes.get(count..).unwrap_or(&[])
    }

    /// Begins a line, and takes the words that are easily read.
    #[inline]
    fn begin_line<'a>(&mut self, bytes: &'a [u8]) -> &'a [u8] {
        if let Some(read) = self.mark.give_up() {
            self.begin_with(read);
            return bytes;
        }
        self.is_in_line = true;
        self.block.begin(self.line, self.offset);
        let used = words::take::<false>(bytes, 1, &mut self.block);
        self.column = (used as u32).saturating_add(1);
        self.scanner.begin();
        self.skip(bytes, used)
    }

    /// The first line begins with bytes that might have been a byte order mark.
    fn begin_with(&mut self, read: &[u8]) {
        self.is_in_line = true;
        self.block.begin(self.line, 0);
        self.scanner.begin();
        for byte in read {
            self.take(*byte);
        }
    }

    fn take(&mut self, byte: u8) {
        self.scanner.take(byte, self.column, &mut self.block, &self.settings);
        self.column = self.column.saturating_add(1);
    }

    /// Reads on to the end of the line; how many bytes that are.
    fn scan(&mut self, bytes: &[u8]) -> usize {
        let mut rest = bytes;
        while let [byte, behind @ ..] = rest {
            if matches!(byte, b'\n' | b'\r') {
                break;
            }
            if byte.is_ascii_alphabetic() && self.scanner.is_between_words() {
                let used = self.take_words(rest);
                if used > 0 {
                    rest = rest.get(used..).unwrap_or(&[]);
                    continue;
                }
            }
            self.take(*byte);
            rest = behind;
        }
        bytes.len().saturating_sub(rest.len())
    }

    /// Takes the words that are easily read, in the middle of a line; how many bytes that are.
    #[inline(never)]
    fn take_words(&mut self, bytes: &[u8]) -> usize {
        if self.column as usize > words::FURTHEST {
            return 0;
        }
        let used = words::take::<true>(bytes, self.column, &mut self.block);
        self.column = self.column.saturating_add(used as u32);
        used
    }

    /// True if the line that ends has something on it.
    fn end_line(&mut self, end: Option<LineEnd>) -> bool {
        if self.scanner.has_begun() {
            self.scanner.end(self.column, &mut self.block, &self.settings);
        }
        let length = self.column.saturating_sub(1);
        if length > self.settings.max_block_chars {
            self.block.fault(FaultKind::LineTooLong, self.settings.max_block_chars.saturating_add(1), self.column);
        }
        if self.scanner.is_percent() {
            let [first, second] = &mut self.percent_lines;
            *(if first.is_none() { first } else { second }) = Some(self.line);
        }
        self.block.end = self.offset;
        if let Some(end) = end {
            self.ends.note(end, self.line);
        }
        self.line = self.line.saturating_add(1);
        self.column = 1;
        self.is_in_line = false;
        !self.block.is_empty()
    }
}

/// The blocks of a program that is whole in memory, one after the other.
///
/// Each block lives until the next is asked for, so this is no `Iterator`.
///
/// ```
/// use threadcalc_core::nc::{Blocks, ReaderSettings};
///
/// let mut program = Blocks::new(b"G95\nG84 Z-15. F1.25\n\nX30.\n", ReaderSettings::default());
/// let mut lines = Vec::new();
/// while let Some(block) = program.next() {
///     lines.push(block.line());
/// }
/// assert_eq!(lines, [1, 2, 4]);
/// ```
#[derive(Clone, Debug)]
pub struct Blocks<'a> {
    reader: Reader,
    rest: &'a [u8],
    is_finished: bool,
}

impl<'a> Blocks<'a> {
    /// The blocks of these bytes.
    #[must_use]
    pub const fn new(program: &'a [u8], settings: ReaderSettings) -> Self {
        Self { reader: Reader::new(settings), rest: program, is_finished: false }
    }

    /// The next block.
    #[allow(clippy::should_implement_trait, reason = "an Iterator cannot lend what it holds")]
    pub fn next(&mut self) -> Option<&Block> {
        let taken = self.reader.read(self.rest);
        self.rest = self.rest.get(taken.bytes..).unwrap_or(&[]);
        let is_block = taken.is_block || (!core::mem::replace(&mut self.is_finished, true) && self.reader.finish());
        is_block.then_some(self.reader.block())
    }

    /// The reader: what is known of the whole program.
    #[must_use]
    pub const fn reader(&self) -> &Reader {
        &self.reader
    }
}
