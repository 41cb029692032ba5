//! Which thread a hole is to have, and which tool taps it: by the order in which people are trusted.

use super::block::Block;
use super::listed_tools::ListedTools;
use super::options::{Tool, ToolKind};
use super::tool_comment::ToolText;
use crate::comment::read_comment;
use crate::feed::Unit;
use crate::length::Length;
use crate::named::named;
use crate::thread::Thread;

/// A comment speaks for a hole this many lines behind it.
const NEAR_LINES: u32 = 3;

named! {
    /// Where the expected thread is named.
    pub enum ThreadSource {
        /// An input of the check.
        Given = 1 "given",
        /// The tool list.
        ToolList = 2 "tool_list",
        /// The comment of the tool change.
        ToolComment = 3 "tool_comment",
        /// A comment within three lines before the hole.
        NearComment = 4 "near_comment",
        /// A comment since the tool change.
        OperationComment = 5 "operation_comment",
        /// The comment of the program's first line.
        ProgramComment = 6 "program_comment",
        /// A comment that begins with the tool's number, in a list of tools.
        ToolListComment = 7 "tool_list_comment",
    }
}

/// A thread that somebody named.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Declared {
    pub thread: Thread,
    pub source: ThreadSource,
    /// The line of it; 0 for an input.
    pub line: u32,
}

/// What comments have said so far.
#[derive(Clone, Debug, Default)]
pub(super) struct Comments {
    tool: Option<Declared>,
    near: Option<Declared>,
    operation: Option<Declared>,
    program: Option<Declared>,
    /// What the comment of the tool's own block says that it is.
    pub tool_text: ToolText,
    /// The comment of a block with T but without M6 speaks of the tool that comes.
    pending: Option<(ToolText, Option<Declared>)>,
    /// The lines of nothing but comments that stand right before this block.
    before: Before,
    /// The list of tools at the head of the program.
    listed: ListedTools,
}

/// What lines of comments say of the tool that comes next.
#[derive(Clone, Copy, Debug, Default)]
struct Before {
    said: Option<(ToolText, Option<Declared>)>,
    /// They speak of several tools: a list.
    is_list: bool,
}

impl Before {
    fn add(&mut self, text: &[u8], line: u32, unit: Option<Unit>) {
        let tool_text = ToolText::read(text, unit);
        let Some(kind) = tool_text.kind else { return };
        let thread = read_comment(text, kind.is_tap()).threads().next().map(|found| found.thread);
        let declared = thread.map(|thread| Declared { thread, source: ThreadSource::ToolComment, line });
        self.is_list |= self.said.is_some();
        self.said = Some((tool_text, declared));
    }
}

impl Comments {
    /// Reads the comments of a block; of a tool change, `change_to` is the tool behind it, None if it is not known.
    pub(super) fn read(&mut self, block: &Block, tool_word: bool, change_to: Option<Option<u32>>, unit: Option<Unit>) {
        let tool_change = change_to.is_some();
        if tool_change {
            (self.tool, self.near, self.operation) = (None, None, None);
            let pending = self.pending.take().filter(|_| !tool_word);
            let before = self.before.said.filter(|_| !self.before.is_list);
            let listed = || change_to.flatten().and_then(|tool| self.listed.of(tool));
            (self.tool_text, self.tool) = pending.or(before).or_else(listed).unwrap_or_default();
        }
        for comment in block.comments() {
            self.read_one(comment.text, block, tool_word, tool_change, unit);
            if block.words().is_empty() && block.program_number().is_none() {
                self.before.add(comment.text, block.line(), unit);
            }
        }
        if !block.words().is_empty() || block.program_number().is_some() {
            self.before = Before::default();
        }
    }

    /// Blocks with words and without comments went by.
    pub(super) fn pass(&mut self) {
        self.before = Before::default();
    }

    fn read_one(&mut self, text: &[u8], block: &Block, tool_word: bool, tool_change: bool, unit: Option<Unit>) {
        let of_tool = tool_word || tool_change;
        let tool_text = if of_tool { ToolText::read(text, unit) } else { ToolText::default() };
        let is_tap = tool_text.kind.is_some_and(ToolKind::is_tap);
        let thread = read_comment(text, is_tap).threads().next().map(|found| found.thread);
        let source = if of_tool {
            ThreadSource::ToolComment
        } else if block.program_number().is_some() {
            ThreadSource::ProgramComment
        } else {
            ThreadSource::OperationComment
        };
        let declared = thread.map(|thread| Declared { thread, source, line: block.line() });
        if tool_change {
            if tool_text.kind.is_some() {
                // What the block itself says stands before what stood before it.
                let own = self.tool.filter(|tool| tool.line == block.line());
                (self.tool_text, self.tool) = (tool_text, own.or(declared));
            }
            let of_list = self.tool.is_some_and(|tool| tool.source == ThreadSource::ToolListComment);
            self.tool = if of_list { declared.or(self.tool) } else { self.tool.or(declared) };
        } else if tool_word {
            self.pending = Some((tool_text, declared));
        } else if block.program_number().is_some() {
            self.program = declared.or(self.program);
        } else if self.listed.read(text, block.line(), unit) {
            // It speaks of that tool, and not of what comes next.
        } else if let Some(declared) = declared {
            self.near = Some(Declared { source: ThreadSource::NearComment, ..declared });
            self.operation = Some(declared);
        }
    }

    /// The thread of a hole at a line.
    pub(super) fn thread(&self, given: Option<Thread>, tool: Option<&Tool>, line: u32) -> Option<Declared> {
        let given = given.map(|thread| Declared { thread, source: ThreadSource::Given, line: 0 });
        let listed = tool.and_then(|tool| tool.thread);
        let listed = listed.map(|thread| Declared { thread, source: ThreadSource::ToolList, line: 0 });
        let near = self.near.filter(|near| line.saturating_sub(near.line) <= NEAR_LINES);
        given.or(listed).or(self.tool).or(near).or(self.operation).or(self.program)
    }

    /// The thread that the comments of the tool name.
    pub(super) fn of_tool(&self) -> Option<Declared> {
        self.tool
    }

    /// What the tool is, and a drill's diameter: the list before the comment.
    pub(super) fn kind(&self, tool: Option<&Tool>) -> (Option<ToolKind>, Option<Length>) {
        let kind = tool.and_then(|tool| tool.kind).or(self.tool_text.kind);
        // A tool that somebody gave a thread to is a tap, whatever it is called.
        let by_thread =
            (self.tool.is_some() || tool.is_some_and(|tool| tool.thread.is_some())).then_some(ToolKind::Tap);
        let diameter = tool.and_then(|tool| tool.diameter_mm).or(self.tool_text.drill_mm);
        (kind.or(by_thread), diameter)
    }
}
