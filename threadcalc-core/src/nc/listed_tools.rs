//! The tool list that stands in comments at the head of a program: `(T3 TAP M8)`.

use super::declared::{Declared, ThreadSource};
use super::list::List;
use super::options::ToolKind;
use super::tool_comment::ToolText;
use crate::comment::read_comment;
use crate::feed::Unit;

/// How many tools are kept; what a larger list says of the others is not used.
const MOST_LISTED: usize = 32;

/// What a comment says of one tool.
#[derive(Clone, Copy, Debug, Default)]
struct Listed {
    number: u32,
    text: ToolText,
    thread: Option<Declared>,
}

/// What comments say of tools by their numbers.
#[derive(Clone, Debug)]
pub(super) struct ListedTools {
    held: List<Listed, MOST_LISTED>,
}

impl Default for ListedTools {
    fn default() -> Self {
        Self { held: List::new(Listed::default()) }
    }
}

impl ListedTools {
    /// Keeps what a comment says of the tool that it begins with; false if it begins with none.
    pub(super) fn read(&mut self, text: &[u8], line: u32, unit: Option<Unit>) -> bool {
        let Some((number, rest)) = numbered(text) else { return false };
        let tool = ToolText::read_listed(rest, unit);
        let comment = read_comment(rest, tool.kind.is_some_and(ToolKind::is_tap));
        let thread = comment.threads().next().map(|found| found.thread);
        let thread = thread.map(|thread| Declared { thread, source: ThreadSource::ToolListComment, line });
        if tool.kind.is_none() && thread.is_none() {
            return true;
        }
        let said = Listed { number, text: tool, thread };
        if let Some(listed) = self.held.iter_mut().find(|listed| listed.number == number) {
            *listed = said;
        } else {
            let _kept = self.held.push(said);
        }
        true
    }

    /// What was said of a tool.
    pub(super) fn of(&self, number: u32) -> Option<(ToolText, Option<Declared>)> {
        let listed = self.held.as_slice().iter().find(|listed| listed.number == number)?;
        Some((listed.text, listed.thread))
    }
}

/// The number of the tool that a text begins with, `T3`, `TOOL 3`, `T#03`, and what stands behind it.
fn numbered(text: &[u8]) -> Option<(u32, &[u8])> {
    let (first, rest) = text.trim_ascii_start().split_first()?;
    if !first.eq_ignore_ascii_case(&b'T') {
        return None;
    }
    let is_word = rest.get(..3).is_some_and(|word| word.eq_ignore_ascii_case(b"OOL"));
    let rest = if is_word { rest.get(3..)?.trim_ascii_start() } else { rest };
    let rest = rest.strip_prefix(b"#").unwrap_or(rest);
    let digits = rest.iter().take_while(|byte| byte.is_ascii_digit()).count();
    let (number, rest) = rest.split_at_checked(digits)?;
    // `T3.5` and `T3X` are no numbers of tools.
    let ends = rest.first().is_none_or(|next| !next.is_ascii_alphanumeric() && !matches!(next, b'.' | b','));
    let number = core::str::from_utf8(number).ok()?.parse().ok()?;
    ends.then_some((number, rest))
}
