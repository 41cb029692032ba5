//! The motion of a block: where it goes, and what a cycle keeps for its next holes.

use super::apply::Context;
use super::state::{Act, CycleWords, Effects, Motion, Said, State};
use super::turns::Words;
use crate::dialect::RepeatZero;
use crate::length::Length;

impl State {
    /// The motion of the block, by the code that holds and the axis words that stand in it.
    pub(super) fn go(&mut self, words: &Words, context: &Context<'_>, effects: &mut Effects) {
        let motion = if effects.moves_in_cycle { effects.motion_code.unwrap_or(self.motion) } else { self.motion };
        let has_axis = words.has_axis();
        effects.moves_across = words.get(b'X').is_some() || words.get(b'Y').is_some();
        effects.act = match motion {
            Motion::Tap { .. } | Motion::Drill | Motion::OtherCycle => {
                self.take_cycle_words(words, context);
                if !has_axis && effects.motion_code.is_none() {
                    return;
                }
                self.repeat(words, context, effects);
                self.move_across(words, effects.repeats);
                self.cycle.holes = self.cycle.holes.saturating_add(1);
                match motion {
                    Motion::Tap { .. } => Act::Tap,
                    Motion::Drill => Act::Drill,
                    _ => Act::OtherCycle,
                }
            }
            Motion::Stroke if effects.motion_code.is_some() => {
                let z = words.get(b'Z').map(|said| self.said_in_mm(said));
                self.cycle = CycleWords { z, line: words.line, ..CycleWords::default() };
                let lead = words.of(context.dialect.reading.lead_word);
                self.cycle.lead = lead.map(|said| self.said_in_mm(said));
                self.cycle.incremental = self.is_incremental();
                self.cycle.initial_z = self.position.z;
                self.cycle.holes = 1;
                effects.moves_across = self.leaves_its_place(words);
                Act::Tap
            }
            _ if !has_axis => return,
            Motion::Rapid | Motion::Feed => {
                self.move_across(words, 1);
                self.move_down(words);
                if motion == Motion::Rapid { Act::Rapid } else { Act::FeedMove }
            }
            Motion::None | Motion::Unknown => {
                self.lose_axes(words);
                Act::NotKnown
            }
            Motion::Cancelled | Motion::Stroke => {
                self.lose_axes(words);
                Act::Nothing
            }
        };
        if effects.act == Act::Tap {
            if let Some(feed) = self.feed.as_mut().filter(|_| self.cycle.lead.is_none()) {
                feed.for_tapping = true;
                self.tapped_mode_line = self.mode.map(|mode| mode.line);
            }
        }
    }

    fn take_cycle_words(&mut self, words: &Words, context: &Context<'_>) {
        let dialect = context.dialect;
        let in_mm = |said: Said| self.said_in_mm(said);
        let incremental = self.is_incremental();
        let (r, z) = (words.get(b'R').map(in_mm), words.get(b'Z').map(in_mm));
        let peck = words.of(dialect.peck_word).map(in_mm);
        let lead = words.of(dialect.reading.lead_word).map(in_mm);
        let cycle = &mut self.cycle;
        if r.is_some() || z.is_some() {
            cycle.incremental = incremental;
        }
        cycle.r = r.or(cycle.r);
        cycle.z = z.or(cycle.z);
        cycle.peck = peck.or(cycle.peck);
        cycle.lead = lead.or(cycle.lead);
        cycle.dwell = words.of(dialect.dwell_word).or(cycle.dwell);
        cycle.retract = words.of(dialect.retract_multiplier_word).or(cycle.retract);
    }

    fn repeat(&self, words: &Words, context: &Context<'_>, effects: &mut Effects) {
        let reading = &context.dialect.reading;
        let Some(said) = words.of(reading.repeat_word) else { return };
        let count = said.value.and_then(Length::whole).and_then(|count| u32::try_from(count).ok());
        effects.repeats = match count {
            Some(0) => u32::from(reading.repeat_zero_means == Some(RepeatZero::Once)),
            Some(count) => count,
            None => 1,
        };
    }

    /// Whether X or Y of the block is another place than this one.
    fn leaves_its_place(&self, words: &Words) -> bool {
        [(b'X', self.position.x), (b'Y', self.position.y)].into_iter().any(|(axis, here)| {
            let there = words.place(axis).map(|place| place.and_then(|place| self.in_mm(place)));
            let stays = if self.is_incremental() { Some(Length::ZERO) } else { here };
            there.is_some_and(|there| there.is_none() || there != stays)
        })
    }

    pub(super) fn move_across(&mut self, words: &Words, times: u32) {
        let incremental = self.is_incremental();
        let times = Length::integer(i64::from(times));
        for (axis, is_x) in [(b'X', true), (b'Y', false)] {
            let Some(place) = words.place(axis) else { continue };
            let here = if is_x { self.position.x } else { self.position.y };
            let there = place.and_then(|place| self.in_mm(place));
            let there = if incremental {
                here.zip(there).and_then(|(here, step)| here.plus(step.times(times).ok()?).ok())
            } else {
                there
            };
            *(if is_x { &mut self.position.x } else { &mut self.position.y }) = there;
        }
    }

    pub(super) fn move_down(&mut self, words: &Words) {
        let Some(place) = words.place(b'Z') else { return };
        let there = place.and_then(|place| self.in_mm(place));
        self.position.z = if self.is_incremental() {
            self.position.z.zip(there).and_then(|(here, step)| here.plus(step).ok())
        } else {
            there
        };
    }
}
