//! What the codes of a program mean under a dialect.

use crate::dialect::{CodeText, Dialect};
use crate::feed::{FeedMode, Unit};
use crate::thread::Hand;

/// A G or M code as a number in tenths.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Code {
    pub letter: u8,
    pub tenths: u32,
}

impl Code {
    /// Of a dialect's text, such as `G84.2`.
    fn of(text: &CodeText) -> Option<Self> {
        let (letter, digits) = text.as_str().split_at_checked(1)?;
        let (whole, tenth) = digits.split_once(['.']).unwrap_or((digits, "0"));
        let tenths = whole.parse::<u32>().ok()?.checked_mul(10)?.checked_add(tenth.parse().ok()?)?;
        Some(Self { letter: *letter.as_bytes().first()?, tenths })
    }
}

/// What a code does.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Meaning {
    Units(Unit),
    FeedMode(FeedMode),
    InverseTime,
    /// Constant surface speed on or off.
    SurfaceSpeed(bool),
    Rapid,
    /// A move at feed: along a line or an arc.
    FeedMove,
    /// The tapping cycle of a hand, with pecks of its own or without.
    Tap {
        hand: Hand,
        pecks: bool,
    },
    /// One synchronised stroke.
    Stroke,
    /// A cycle that drills.
    DrillCycle,
    /// A cycle that does something else.
    OtherCycle,
    CancelCycle,
    Incremental(bool),
    /// G17 or another plane.
    Plane {
        is_xy: bool,
    },
    CutterCompensation(bool),
    LengthOffset(bool),
    /// Which work offset, in tenths of its code.
    WorkOffset(u32),
    Return,
    /// Dwell and reference points: the axis words of the block are theirs.
    OwnAxisWords,
    /// Moves the origin by its axis words.
    Origin,
    /// Sets data by its words: the origin with L2 and L20.
    Data,
    Spindle(Spindle),
    ToolChange,
    Override(bool),
    RigidTap,
    Mirror(bool),
    Scale(bool),
    Rotate(bool),
    Call,
    CallReturn,
    /// M0 and M1.
    Stop,
    ProgramEnd,
    /// A code that changes nothing that is followed here.
    Indifferent,
    Unknown,
}

/// How the spindle turns.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Spindle {
    Clockwise,
    CounterClockwise,
    Stopped,
}

/// The dialect's own codes, in numbers.
#[derive(Clone, Debug)]
pub(super) struct Codes {
    own: [Option<(Code, Meaning)>; MOST_OWN],
    /// The dialect names no tapping cycle: G84 and G74 are taken for them.
    pub taps_by_custom: bool,
    /// What neither the dialect names nor all mills share is an alarm.
    only_own: bool,
    /// G0 to G3 are the moves that they are on all mills.
    pub moves_as_usual: bool,
}

const MOST_OWN: usize = 24;

impl Codes {
    pub(super) fn of(dialect: &Dialect) -> Self {
        let reading = &dialect.reading;
        let [inch, other_inch] = reading.inch_codes;
        let [mm, other_mm] = reading.mm_codes;
        let tap = |code: Option<CodeText>, hand, pecks| (code, Meaning::Tap { hand, pecks });
        let named = [
            tap(dialect.tap_rh, Hand::Right, false),
            tap(dialect.tap_lh, Hand::Left, false),
            tap(dialect.peck_code_rh, Hand::Right, true),
            tap(dialect.peck_code_lh, Hand::Left, true),
            (reading.stroke_code, Meaning::Stroke),
            (dialect.rigid_tap_code, Meaning::RigidTap),
            (inch, Meaning::Units(Unit::Inch)),
            (other_inch, Meaning::Units(Unit::Inch)),
            (mm, Meaning::Units(Unit::Mm)),
            (other_mm, Meaning::Units(Unit::Mm)),
            (Some(dialect.feed_per_minute), Meaning::FeedMode(FeedMode::PerMinute)),
            (dialect.feed_per_revolution, Meaning::FeedMode(FeedMode::PerRevolution)),
            (dialect.return_r_plane, Meaning::Return),
            (dialect.return_initial, Meaning::Return),
            (reading.mirror_on, Meaning::Mirror(true)),
            (reading.mirror_off, Meaning::Mirror(false)),
            (reading.scale_on, Meaning::Scale(true)),
            (reading.scale_off, Meaning::Scale(false)),
            (reading.rotate_on, Meaning::Rotate(true)),
            (reading.rotate_off, Meaning::Rotate(false)),
            (reading.subprogram_call, Meaning::Call),
            (reading.subprogram_return, Meaning::CallReturn),
        ];
        let mut own = [None; MOST_OWN];
        let known = named.into_iter().filter_map(|(text, meaning)| Some((Code::of(&text?)?, meaning)));
        own.iter_mut().zip(known).for_each(|(place, known)| *place = Some(known));
        let only_own = reading.unlisted_codes_alarm == Some(true);
        let mut codes = Self { own, taps_by_custom: dialect.is_unset(), only_own, moves_as_usual: false };
        let is = |tenths, meaning| codes.meaning(Code { letter: b'G', tenths }) == meaning;
        codes.moves_as_usual =
            is(0, Meaning::Rapid) && [10, 20, 30].into_iter().all(|tenths| is(tenths, Meaning::FeedMove));
        codes
    }

    /// What a code means: the dialect's own word first, then what all mills share.
    pub(super) fn meaning(&self, code: Code) -> Meaning {
        let own = self.own.iter().flatten().find(|(own, _)| *own == code);
        match (own, code.letter) {
            (Some((_, meaning)), _) => *meaning,
            (None, b'G') => self.of_g(code.tenths),
            (None, _) => of_m(code.tenths),
        }
    }

    /// The groups of a code, a bit each: codes that share one exclude each other in a block.
    ///
    /// On most mills G80 and the cycles have a group beside that of the moves, so that `G80 G0 Z100.` is one
    /// block (common practice); in RS274/NGC all of them are motions (NISTIR 6556 table 4).
    pub(super) fn groups(&self, meaning: Meaning) -> u32 {
        let of = |group: u8| 1_u32.wrapping_shl(u32::from(group));
        match meaning {
            Meaning::CancelCycle if !self.only_own => of(CYCLES),
            Meaning::CancelCycle | Meaning::Tap { .. } | Meaning::DrillCycle | Meaning::OtherCycle => {
                of(MOTIONS) | of(CYCLES)
            }
            _ => group(meaning).map_or(0, of),
        }
    }

    /// G codes that the mills of the word-address format share.
    ///
    /// NISTIR 6556 table 4 and ISO 6983-1; G74 as the left-hand cycle and G95 are common practice.
    fn of_g(&self, tenths: u32) -> Meaning {
        match tenths {
            0 => Meaning::Rapid,
            10 | 20 | 30 | 382 => Meaning::FeedMove,
            840 if self.taps_by_custom => Meaning::Tap { hand: Hand::Right, pecks: false },
            740 if self.taps_by_custom => Meaning::Tap { hand: Hand::Left, pecks: false },
            730 | 810 | 820 | 830 => Meaning::DrillCycle,
            760 | 850..=890 => Meaning::OtherCycle,
            800 => Meaning::CancelCycle,
            170 => Meaning::Plane { is_xy: true },
            180 | 190 => Meaning::Plane { is_xy: false },
            400 => Meaning::CutterCompensation(false),
            410 | 420 => Meaning::CutterCompensation(true),
            430 | 431 | 440 => Meaning::LengthOffset(true),
            490 => Meaning::LengthOffset(false),
            540..=593 => Meaning::WorkOffset(tenths),
            900 => Meaning::Incremental(false),
            910 => Meaning::Incremental(true),
            930 => Meaning::InverseTime,
            950 if !self.only_own => Meaning::FeedMode(FeedMode::PerRevolution),
            960 => Meaning::SurfaceSpeed(true),
            970 => Meaning::SurfaceSpeed(false),
            40 | 280 | 281 | 300 | 301 | 530 => Meaning::OwnAxisWords,
            100 => Meaning::Data,
            520 | 920..=923 => Meaning::Origin,
            610 | 611 | 640 => Meaning::Indifferent,
            _ => Meaning::Unknown,
        }
    }
}

/// M codes that the mills of the word-address format share (NISTIR 6556 table 4).
const fn of_m(tenths: u32) -> Meaning {
    match tenths {
        0 | 10 | 600 => Meaning::Stop,
        20 | 300 => Meaning::ProgramEnd,
        30 => Meaning::Spindle(Spindle::Clockwise),
        40 => Meaning::Spindle(Spindle::CounterClockwise),
        50 => Meaning::Spindle(Spindle::Stopped),
        60 => Meaning::ToolChange,
        70 | 80 | 90 => Meaning::Indifferent,
        480 => Meaning::Override(false),
        490 => Meaning::Override(true),
        _ => Meaning::Unknown,
    }
}

const MOTIONS: u8 = 1;
const CYCLES: u8 = 9;

/// The group of a code that is in one alone.
const fn group(meaning: Meaning) -> Option<u8> {
    Some(match meaning {
        Meaning::Rapid | Meaning::FeedMove | Meaning::Stroke => MOTIONS,
        Meaning::Plane { .. } => 2,
        Meaning::Incremental(_) => 3,
        Meaning::FeedMode(_) | Meaning::InverseTime => 5,
        Meaning::Units(_) => 6,
        Meaning::CutterCompensation(_) => 7,
        Meaning::LengthOffset(_) => 8,
        Meaning::Return => 10,
        Meaning::WorkOffset(_) => 12,
        Meaning::SurfaceSpeed(_) => 13,
        Meaning::Spindle(_) => 27,
        _ => return None,
    })
}
