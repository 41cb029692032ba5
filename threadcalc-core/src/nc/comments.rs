//! The comments of a line.

use super::block::Block;
use super::fault::FaultKind;
use super::list::List;

/// How many comments of one line are kept.
const MOST_COMMENTS: usize = 8;
/// How many bytes of text the comments of one line have together.
const MOST_TEXT: usize = 512;

/// A comment of a line.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub struct BlockComment<'a> {
    /// Its text as bytes, without what opens and closes it.
    pub text: &'a [u8],
    /// Where its `(` or `;` stands, in bytes from 1; the text begins behind it.
    pub column: u32,
    /// The column behind it, or behind the line if nothing closes it.
    pub end_column: u32,
    /// True if there was no room for all of its text.
    pub is_cut: bool,
}

#[derive(Clone, Copy, Debug, PartialEq)]
struct Place {
    column: u32,
    end_column: u32,
    start: u16,
    length: u16,
    is_cut: bool,
}

/// Texts and places of the comments of a line.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Comments {
    places: List<Place, MOST_COMMENTS>,
    text: List<u8, MOST_TEXT>,
    more: u32,
    /// False while a comment without a place is read.
    kept: bool,
}

impl Comments {
    pub(super) const NONE: Self = Self {
        places: List::new(Place { column: 0, end_column: 0, start: 0, length: 0, is_cut: false }),
        text: List::new(0),
        more: 0,
        kept: false,
    };

    pub(super) fn clear(&mut self) {
        self.places.clear();
        self.text.clear();
        self.more = 0;
        self.kept = false;
    }

    pub(super) const fn more(&self) -> u32 {
        self.more
    }

    pub(super) fn open(&mut self, column: u32) {
        let start = self.text.len() as u16;
        self.kept = self.places.push(Place { column, end_column: column, start, length: 0, is_cut: false });
        if !self.kept {
            self.more = self.more.saturating_add(1);
        }
    }

    /// A byte of the comment that was opened last.
    pub(super) fn push(&mut self, byte: u8) {
        let Some(place) = self.places.last_mut().filter(|_| self.kept) else { return };
        if self.text.push(byte) {
            place.length = place.length.saturating_add(1);
        } else {
            place.is_cut = true;
        }
    }

    pub(super) fn close(&mut self, end_column: u32) {
        if let Some(place) = self.places.last_mut().filter(|_| self.kept) {
            place.end_column = end_column;
        }
        self.kept = false;
    }

    pub(super) fn iter(&self) -> impl Iterator<Item = BlockComment<'_>> {
        let text = self.text.as_slice();
        self.places.as_slice().iter().map(|place| {
            let start = usize::from(place.start);
            let end = start.saturating_add(usize::from(place.length));
            BlockComment {
                text: text.get(start..end).unwrap_or(&[]),
                column: place.column,
                end_column: place.end_column,
                is_cut: place.is_cut,
            }
        })
    }
}

/// A comment while its bytes come.
#[derive(Clone, Debug)]
pub(super) struct OpenComment {
    /// What closes it: `)`, or nothing on its line.
    close: u8,
    column: u32,
    /// Its first byte above 127, and what is behind the last.
    foreign: Option<(u32, u32)>,
}

impl OpenComment {
    /// A comment begins with the byte of this column.
    pub(super) fn new(close: u8, column: u32, block: &mut Block) -> Self {
        block.comments.open(column);
        Self { close, column, foreign: None }
    }

    /// Takes a byte that ends no line; true if it closes the comment.
    pub(super) fn take(&mut self, byte: u8, column: u32, block: &mut Block) -> bool {
        let end_column = column.saturating_add(1);
        if byte == self.close {
            self.end(end_column, block);
            return true;
        }
        if byte == b'(' && self.close == b')' {
            block.fault(FaultKind::NestedComment, column, end_column);
        }
        if byte >= 0x80 {
            self.foreign = Some((self.foreign.map_or(column, |(first, _)| first), end_column));
        }
        block.comments.push(byte);
        false
    }

    /// The line ends before this column.
    pub(super) fn end_line(&self, column: u32, block: &mut Block) {
        if self.close == b')' {
            block.fault(FaultKind::UnclosedComment, self.column, column);
        }
        self.end(column, block);
    }

    fn end(&self, end_column: u32, block: &mut Block) {
        block.comments.close(end_column);
        if let Some((first, behind)) = self.foreign {
            block.fault(FaultKind::NonAsciiInComment, first, behind);
        }
    }
}
