//! Runs of lines that only move, passed over in one step where nothing can be found at them.

use super::apply::Context;
use super::checker::Checker;
use super::judge::Judge;
use super::quick::Run;
use super::state::{Effects, Mode, Motion, State};
use super::turns::Words;
use super::values::Values;
use super::word::{Word, WordValue};
use crate::feed::FeedMode;

/// What was passed over.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct Passed {
    pub bytes: usize,
    pub blocks: u32,
}

impl Checker {
    /// Passes over lines that only move, if they begin with these bytes and nothing can be found at them.
    pub(super) fn pass(&mut self, bytes: &[u8]) -> Passed {
        if self.is_skipping() || !self.judge.finds_nothing_at_moves() {
            return Passed::default();
        }
        let settled = self.reader.settle_line_end(bytes);
        let rest = bytes.get(settled..).unwrap_or(&[]);
        let Some(run) = self.reader.run(rest) else { return Passed { bytes: settled, blocks: 0 } };
        let judge = &mut self.judge;
        let values = Values { variables: &judge.variables, evaluates: !judge.options.leave_macros };
        let context = Context { codes: &judge.codes, dialect: &judge.dialect, values };
        judge.comments.pass();
        judge.state.pass(&run, self.reader.line(), &context);
        self.reader.pass(&run);
        Passed { bytes: settled.saturating_add(run.bytes()), blocks: run.lines() }
    }
}

impl Judge {
    /// Whether moves only change what the next of them changes again: places are absolute, no cycle takes their words,
    /// and neither F nor the feed mode is that of tapping.
    fn finds_nothing_at_moves(&self) -> bool {
        let state = &self.state;
        let per_revolution = state.mode.is_some_and(|mode| mode.value == Mode::Feed(FeedMode::PerRevolution));
        let carries =
            state.feed.is_some_and(|feed| feed.for_tapping) || (state.tapped_mode_line.is_some() && per_revolution);
        matches!(state.motion, Motion::Rapid | Motion::Feed)
            && !carries
            && !state.is_incremental()
            && !state.ended
            && self.codes.moves_as_usual
            && self.queue.is_idle()
    }
}

impl State {
    /// What a run leaves behind, of which `line` is the first: its last words, taken as those of one block.
    fn pass(&mut self, run: &Run<'_>, line: u32, context: &Context<'_>) {
        let mut words = Words::of_line(line);
        for letter in *b"FXYZ" {
            let Some(last) = run.last(letter) else { continue };
            let line = line.saturating_add(last.lines_before);
            let word = Word::new(letter, WordValue::Number(last.number), last.column, last.end_column);
            words.set(letter, self.said(&word, last.number.to_length().ok(), line, context));
        }
        if let Some(code) = run.last(b'G') {
            self.motion = if code.number.mantissa() == 0 { Motion::Rapid } else { Motion::Feed };
        }
        self.take_feed_and_speed(&words, context, &mut Effects::none());
        self.move_across(&words, 1);
        self.move_down(&words);
    }
}
