//! One block after the other changes the state, in the order in which a control takes its words.

use super::block::Block;
use super::codes::{Code, Codes, Meaning, Spindle};
use super::number::power_of_ten;
use super::state::{Act, Call, CycleWords, Effects, FeedWord, Found, Held, Mode, Motion, Said, State, letter_bit};
use super::turns::{TAKES_F, Words};
use super::values::Values;
use super::word::{Word, WordValue};
use crate::dialect::{BlockOrder, Dialect, NoPoint, RigidUntil};
use crate::feed::{FeedMode, Unit};
use crate::length::Length;

/// What a block is read with.
pub(super) struct Context<'a> {
    pub codes: &'a Codes,
    pub dialect: &'a Dialect,
    pub values: Values<'a>,
}

/// G54.1 in tenths.
const EXTENDED_OFFSET: u32 = 541;

impl State {
    /// Changes the state by a block that is read, and says what the block does.
    pub(super) fn apply(&mut self, block: &Block, context: &Context<'_>) -> Effects {
        let mut effects = Effects::none();
        if let Some(program) = block.program_number() {
            self.program = Some(program);
        }
        let words = self.words(block, context, &mut effects);
        let mut axis_words_are_own = false;
        let mut takes_feed = true;
        for (turn, meaning) in words.codes() {
            if takes_feed && turn >= TAKES_F {
                takes_feed = false;
                self.take_feed_and_speed(&words, context, &mut effects);
            }
            self.switch(meaning, &words, context, &mut effects);
            let own = matches!(
                meaning,
                Meaning::OwnAxisWords
                    | Meaning::Origin
                    | Meaning::Data
                    | Meaning::Mirror(_)
                    | Meaning::Scale(_)
                    | Meaning::Rotate(_)
                    | Meaning::Call
            );
            axis_words_are_own |= own;
        }
        if takes_feed {
            self.take_feed_and_speed(&words, context, &mut effects);
        }
        // A turned table holds another side of the part.
        effects.origin_moves |= b"ABC".iter().any(|axis| words.get(*axis).is_some());
        if axis_words_are_own {
            self.lose_axes(&words);
        } else {
            self.go(&words, context, &mut effects);
        }
        effects
    }

    /// Reads the words: values once, codes with what they mean.
    fn words(&self, block: &Block, context: &Context<'_>, effects: &mut Effects) -> Words {
        let mut words = Words::of_line(block.line());
        let units_first = context.dialect.reading.order_table == Some(BlockOrder::UnitsFirst);
        let mut groups = 0_u32;
        for word in block.words() {
            let value = context.values.of(block, word.value());
            if value.is_none() {
                effects.note_unknown(word);
            }
            if !matches!(word.letter(), b'G' | b'M') {
                if words.get(word.letter()).is_none() {
                    words.set(word.letter(), self.said(word, value, block.line(), context));
                }
                continue;
            }
            let Some(tenths) = value.and_then(super::word::code_tenths) else { continue };
            let found = Found::of(word, tenths);
            let meaning = context.codes.meaning(Code { letter: word.letter(), tenths });
            if meaning == Meaning::Unknown {
                effects.foreign = effects.foreign.or(Some(found));
            }
            let bit = context.codes.groups(meaning);
            if groups & bit != 0 {
                effects.twice = effects.twice.or(Some(found));
                continue;
            }
            groups |= bit;
            words.push_code(meaning, units_first);
        }
        words
    }

    /// A word with its value as the control counts it: a number without a point may count least increments.
    pub(super) fn said(&self, word: &Word, value: Option<Length>, line: u32, context: &Context<'_>) -> Said {
        let written = word.number();
        let reading = &context.dialect.reading;
        let counts = reading.no_point == Some(NoPoint::LeastIncrement)
            && written.is_some_and(|number| !number.had_point())
            && matches!(word.letter(), b'F' | b'I' | b'J' | b'K' | b'Q' | b'R' | b'X' | b'Y' | b'Z');
        let value = if counts {
            let by_word = match (word.letter(), self.mode) {
                (b'F', Some(Held { value: Mode::Feed(FeedMode::PerRevolution), .. })) => {
                    reading.least_increment.feed_per_revolution
                }
                (b'F', _) => reading.least_increment.feed_per_minute,
                _ => reading.least_increment.axis,
            };
            // An increment that nobody has told leaves the value unknown.
            let decimals = by_word.of(self.unit().unwrap_or(Unit::Mm));
            value.zip(decimals).and_then(|(value, decimals)| value.over(ten_to(decimals)?).ok())
        } else {
            value
        };
        let unreadable = matches!(word.value(), WordValue::Unreadable);
        Said { value, written, line, column: word.column(), end_column: word.end_column(), counted: counts, unreadable }
    }

    pub(super) fn take_feed_and_speed(&mut self, words: &Words, context: &Context<'_>, effects: &mut Effects) {
        if let Some(said) = words.get(b'F') {
            effects.feed_word = true;
            let mode = self.mode.map(|mode| mode.value);
            self.feed = Some(FeedWord { said, unit: self.unit(), mode, for_tapping: false });
        }
        if let Some(said) = words.get(b'S') {
            let kept = match (context.dialect.reading.speed_decimals, said.value) {
                (Some(decimals), Some(value)) => {
                    ten_to(decimals).and_then(|parts| value.down_to_multiple(Length::ONE.over(parts).ok()?).ok())
                }
                (_, value) => value,
            };
            self.speed = Some(Said { value: kept, ..said });
        }
        if let Some(said) = words.get(b'T') {
            self.tool_pending = said.value.and_then(Length::whole).and_then(|tool| u32::try_from(tool).ok());
        }
    }

    /// One code, but for the motion that a block makes.
    fn switch(&mut self, meaning: Meaning, words: &Words, context: &Context<'_>, effects: &mut Effects) {
        let line = words.line;
        let on = |value| Held::new(value, line);
        effects.origin_moves |=
            matches!(meaning, Meaning::Origin | Meaning::Mirror(_) | Meaning::Scale(_) | Meaning::Rotate(_));
        match meaning {
            Meaning::Units(unit) => {
                if self.unit() != Some(unit) {
                    self.units = Some(Held::new(unit, line));
                }
            }
            Meaning::FeedMode(mode) => self.set_mode(Mode::Feed(mode), line),
            Meaning::InverseTime => self.set_mode(Mode::InverseTime, line),
            Meaning::SurfaceSpeed(is_on) => self.surface_speed = Some(on(is_on)),
            Meaning::ToolChange => {
                effects.tool_change = true;
                self.tool = Some(Held::new(self.tool_pending, line));
                self.length_offset = on(false);
                self.cycle.other_tool = true;
            }
            Meaning::Spindle(spindle) => self.turn(Held::new(spindle, line), context),
            Meaning::RigidTap => {
                effects.rigid_code = true;
                self.rigid = Some(Held::new(words.get(b'S').and_then(|said| said.value), line));
                self.rigid_is_open = context.dialect.reading.rigid_tap_code_until.is_none();
            }
            Meaning::Override(locked) => self.overrides_locked = locked,
            Meaning::Plane { is_xy } => self.plane_is_xy = on(is_xy),
            Meaning::CutterCompensation(is_on) => self.compensation = on(is_on),
            Meaning::LengthOffset(is_on) => self.length_offset = on(is_on),
            Meaning::WorkOffset(offset) => {
                // Of G54.1, P says which.
                let extended = if offset == EXTENDED_OFFSET { whole(words.get(b'P')) } else { None };
                let extended = extended.and_then(|number| u32::try_from(number).ok()).unwrap_or(0);
                let offset = offset.saturating_add(extended.saturating_mul(1000));
                if self.work_offset != offset {
                    self.work_offset = offset;
                    self.position = super::state::Position::default();
                }
            }
            Meaning::Incremental(is_on) => self.incremental = Some(on(is_on)),
            Meaning::Return => self.return_stated = true,
            Meaning::Mirror(is_on) => {
                self.mirror = on(is_on);
                self.mirrored_axes = if is_on { words.axes().count_ones() } else { 0 };
            }
            Meaning::Scale(is_on) => self.scale = on(is_on),
            Meaning::Rotate(is_on) => self.rotate = on(is_on),
            Meaning::Data => effects.origin_moves = matches!(whole(words.get(b'L')), None | Some(2 | 20)),
            Meaning::Call => effects.call = Some(call(words, context)),
            Meaning::CallReturn => effects.call_return = true,
            Meaning::ProgramEnd => effects.program_end = true,
            Meaning::Rapid
            | Meaning::FeedMove
            | Meaning::Tap { .. }
            | Meaning::Stroke
            | Meaning::DrillCycle
            | Meaning::OtherCycle
            | Meaning::CancelCycle => self.begin_motion(meaning, words, context, effects),
            Meaning::OwnAxisWords | Meaning::Origin | Meaning::Stop | Meaning::Indifferent | Meaning::Unknown => {}
        }
    }

    /// The spindle's code, which may end the code for rigid tapping.
    fn turn(&mut self, spindle: Held<Spindle>, context: &Context<'_>) {
        let ends_rigid = context.dialect.reading.rigid_tap_code_until == Some(RigidUntil::SpindleCode);
        self.rigid = self.rigid.filter(|rigid| !ends_rigid || rigid.line == spindle.line);
        self.spindle = spindle;
    }

    fn set_mode(&mut self, mode: Mode, line: u32) {
        if self.mode.is_none_or(|before| before.value != mode) {
            self.mode = Some(Held::new(mode, line));
            self.tapped_mode_line = None;
        } else if let Some(before) = self.mode.as_mut().filter(|before| before.line == 0) {
            // The control's own default, which the program states now.
            before.line = line;
            self.tapped_mode_line = self.tapped_mode_line.map(|_| line);
        }
    }

    /// A code of group 1: what was active ends, and a cycle begins with no words of its own.
    fn begin_motion(&mut self, meaning: Meaning, words: &Words, context: &Context<'_>, effects: &mut Effects) {
        let motion = match meaning {
            Meaning::Rapid => Motion::Rapid,
            Meaning::FeedMove => Motion::Feed,
            Meaning::Tap { hand, pecks } => Motion::Tap { hand, pecks },
            Meaning::Stroke => Motion::Stroke,
            Meaning::DrillCycle => Motion::Drill,
            Meaning::OtherCycle => Motion::OtherCycle,
            _ => Motion::Cancelled,
        };
        effects.motion_code = Some(motion);
        let moves = matches!(motion, Motion::Rapid | Motion::Feed);
        if moves && self.motion.is_cycle() && context.dialect.reading.rapid_cancels_cycle == Some(false) {
            // Only G80 ends it there: the move is this block's, the cycle comes back behind it.
            effects.moves_in_cycle = true;
            return;
        }
        let sticky = context.dialect.reading.cycle_words_sticky_across_cancel == Some(true);
        if motion.is_cycle() && self.motion != motion {
            let (r, z) = if sticky || self.motion.is_cycle() { (self.cycle.r, self.cycle.z) } else { (None, None) };
            let initial_z = if self.motion.is_cycle() { self.cycle.initial_z } else { self.position.z };
            self.cycle = CycleWords { r, z, initial_z, line: words.line, ..CycleWords::default() };
        } else if motion.is_cycle() {
            self.cycle.line = words.line;
            self.cycle.other_tool = false;
        }
        let ends_rigid = match context.dialect.reading.rigid_tap_code_until {
            Some(RigidUntil::NextCycle) => self.motion.taps(),
            Some(RigidUntil::SpindleCode | RigidUntil::ProgramEnd) => false,
            Some(RigidUntil::CycleCancelled) | None => self.motion.taps() && !motion.is_cycle(),
        };
        self.rigid = self.rigid.filter(|rigid| !ends_rigid || rigid.line == words.line);
        self.motion = motion;
    }

    /// Axis words that belong to another code: where the axes are is not known behind it.
    pub(super) fn lose_axes(&mut self, words: &Words) {
        for (axis, place) in [(b'X', &mut self.position.x), (b'Y', &mut self.position.y), (b'Z', &mut self.position.z)]
        {
            if words.get(axis).is_some() {
                *place = None;
            }
        }
    }
}

/// 10 to this power.
fn ten_to(exponent: u8) -> Option<Length> {
    power_of_ten(exponent).map(Length::integer)
}

#[inline(never)]
fn whole(said: Option<Said>) -> Option<i64> {
    said.and_then(|said| said.value).and_then(Length::whole)
}

fn call(words: &Words, context: &Context<'_>) -> Call {
    let repeats = words.of(context.dialect.reading.repeat_word).or_else(|| words.get(b'L'));
    Call {
        program: whole(words.get(b'P')).and_then(|number| u64::try_from(number).ok()),
        repeats: whole(repeats).and_then(|count| u32::try_from(count).ok()).unwrap_or(1),
    }
}

impl Effects {
    pub(super) fn none() -> Self {
        Self {
            act: Act::None,
            motion_code: None,
            moves_in_cycle: false,
            tool_change: false,
            feed_word: false,
            rigid_code: false,
            repeats: 1,
            moves_across: false,
            origin_moves: false,
            call: None,
            call_return: false,
            program_end: false,
            foreign: None,
            twice: None,
            unknown: 0,
            unknown_at: None,
        }
    }

    fn note_unknown(&mut self, word: &Word) {
        if matches!(word.value(), WordValue::Unreadable) {
            return;
        }
        self.unknown |= letter_bit(word.letter());
        self.unknown_at = self.unknown_at.or(Some(Found::of(word, 0)));
    }
}

impl Found {
    const fn of(word: &Word, tenths: u32) -> Self {
        Self { letter: word.letter(), tenths, column: word.column(), end_column: word.end_column() }
    }
}
