//! What stands around the lines of a program: its byte order mark and the ends of its lines.

use crate::named::named;

/// The UTF-8 byte order mark.
const MARK: &[u8] = b"\xEF\xBB\xBF";

/// How far a byte order mark at the beginning of a program is read.
#[derive(Clone, Debug)]
pub(super) struct Mark {
    read: usize,
    /// Nothing more of it can come.
    is_over: bool,
}

impl Mark {
    pub(super) const NEW: Self = Self { read: 0, is_over: false };

    pub(super) const fn is_read(&self) -> bool {
        self.read == MARK.len()
    }

    pub(super) const fn is_over(&self) -> bool {
        self.is_over
    }

    /// Whether the byte belongs to it.
    #[inline]
    pub(super) fn takes(&mut self, byte: u8) -> bool {
        if self.is_over || MARK.get(self.read) != Some(&byte) {
            return false;
        }
        self.read = self.read.wrapping_add(1);
        self.is_over = self.is_read();
        true
    }

    /// It is over: the bytes that were taken, if they were none of it.
    #[inline]
    pub(super) fn give_up(&mut self) -> Option<&'static [u8]> {
        if self.is_over {
            return None;
        }
        self.is_over = true;
        let read = core::mem::take(&mut self.read);
        MARK.get(..read).filter(|read| !read.is_empty())
    }
}

named! {
    /// What ends a line.
    pub enum LineEnd {
        /// Line feed.
        Lf = 1 "lf",
        /// Carriage return and line feed.
        CrLf = 2 "crlf",
        /// Carriage return.
        Cr = 3 "cr",
    }
}

/// The line ends of a program.
///
/// ```
/// use threadcalc_core::nc::{Blocks, LineEnd, ReaderSettings};
///
/// let mut program = Blocks::new(b"G21\r\nG90\nG0", ReaderSettings::default());
/// while program.next().is_some() {}
/// let ends = program.reader().line_ends();
/// assert_eq!((ends.count(LineEnd::CrLf), ends.count(LineEnd::Lf), ends.first_other()), (1, 1, Some(2)));
/// ```
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct LineEnds {
    counts: [u32; 3],
    first: Option<LineEnd>,
    first_other: Option<u32>,
    /// The line that a CR ended: what it is depends on the next byte.
    open: Option<u32>,
}

impl LineEnds {
    pub(super) const NONE: Self = Self { counts: [0; 3], first: None, first_other: None, open: None };

    /// How many lines end so.
    #[must_use]
    pub fn count(&self, end: LineEnd) -> u32 {
        let [lf, crlf, cr] = self.counts;
        match end {
            LineEnd::Lf => lf,
            LineEnd::CrLf => crlf,
            LineEnd::Cr => cr,
        }
    }

    /// The first line that ends otherwise than the first: line ends are mixed.
    #[must_use]
    pub const fn first_other(&self) -> Option<u32> {
        self.first_other
    }

    /// A line ended so; a CR may become a CRLF.
    #[inline]
    pub(super) fn note(&mut self, end: LineEnd, line: u32) {
        if end == LineEnd::Cr {
            self.open = Some(line);
        } else {
            self.keep(end, line);
        }
    }

    /// Whether the first line ends with CR and LF; None if it ends with CR alone, or none has ended.
    pub(super) fn is_crlf(&self) -> Option<bool> {
        self.first.filter(|first| *first != LineEnd::Cr && self.open.is_none()).map(|first| first == LineEnd::CrLf)
    }

    /// More lines that end as the first.
    pub(super) fn note_more(&mut self, lines: u32) {
        if let Some(first) = self.first {
            self.add(first, lines);
        }
    }

    fn add(&mut self, end: LineEnd, lines: u32) {
        let [lf, crlf, cr] = &mut self.counts;
        let count = match end {
            LineEnd::Lf => lf,
            LineEnd::CrLf => crlf,
            LineEnd::Cr => cr,
        };
        *count = count.saturating_add(lines);
    }

    fn keep(&mut self, end: LineEnd, line: u32) {
        self.add(end, 1);
        if self.first_other.is_none() && *self.first.get_or_insert(end) != end {
            self.first_other = Some(line);
        }
    }

    /// The byte behind a line end has come, or the end of the program: true if it belongs to the line end.
    #[inline]
    pub(super) fn settle(&mut self, next: Option<u8>) -> bool {
        let Some(line) = self.open.take() else { return false };
        let is_one = next == Some(b'\n');
        self.keep(if is_one { LineEnd::CrLf } else { LineEnd::Cr }, line);
        is_one
    }
}
