//! What a control makes of a program that it reads: the facts that controls differ in.

use super::{CodeText, LetterText};
use crate::feed::{FeedMode, Unit};
use crate::length::{Length, power_of_ten};
use crate::named::named;

named! {
    /// What F means in a tapping cycle.
    pub enum FeedBasis {
        /// What it means everywhere: per minute under G94, per revolution under G95.
        ByMode = 1 "by_mode",
        /// Feed per minute, whatever the mode.
        PerMinuteAlways = 2 "per_min_always",
        /// The lead, whatever the mode.
        PerRevolutionInTapCycle = 3 "per_rev_in_tap_cycle",
        /// Nothing: the lead stands behind a letter of its own.
        LeadWord = 4 "lead_word",
    }
}

named! {
    /// How long the code for rigid tapping holds.
    pub enum RigidUntil {
        /// For the next cycle only.
        NextCycle = 1 "next_cycle",
        /// Until the cycle is cancelled.
        CycleCancelled = 2 "cycle_cancelled",
        /// Until the spindle stops or turns otherwise.
        SpindleCode = 3 "spindle_code",
        /// Until the end of the program.
        ProgramEnd = 4 "program_end",
    }
}

named! {
    /// What no repeats, `L0`, mean.
    pub enum RepeatZero {
        /// An alarm.
        Error = 1 "error",
        /// The cycle is kept for later positions; nothing is tapped here.
        StoreOnly = 2 "store_only",
        /// One hole, as if nothing stood there.
        Once = 3 "once",
    }
}

named! {
    /// What a number without a point is.
    pub enum NoPoint {
        /// What it says: `X10` is ten.
        AsWritten = 1 "as_written",
        /// A count of least increments: `X10` is a hundredth of a millimetre.
        LeastIncrement = 2 "least_increment",
    }
}

named! {
    /// What blanks inside a number are.
    pub enum NumberSpaces {
        /// Nothing: `X1 2` is twelve.
        Ignored = 1 "ignored",
        /// An alarm.
        Error = 2 "error",
    }
}

named! {
    /// In what order the words of one block act.
    pub enum BlockOrder {
        /// Feed mode, F and S before the units.
        Rs274Ngc = 1 "rs274ngc",
        /// The units before everything that has one.
        UnitsFirst = 2 "units_first",
    }
}

/// Decimals of one kind of word in both units; None: not known.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct WordDecimals {
    /// In millimetre programs.
    pub mm: Option<u8>,
    /// In inch programs.
    pub inch: Option<u8>,
}

impl WordDecimals {
    /// Those of one unit.
    #[must_use]
    pub const fn of(self, unit: Unit) -> Option<u8> {
        match unit {
            Unit::Mm => self.mm,
            Unit::Inch => self.inch,
        }
    }

    /// One of the last decimal of a unit, 1/1000 for three; None: not known, or more decimals than a control has.
    #[must_use]
    pub fn increment(self, unit: Unit) -> Option<Length> {
        Length::new(1, power_of_ten(self.of(unit)?).ok()?).ok()
    }
}

/// Decimals by what the word holds.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct DecimalsByWord {
    /// Lengths: X, Y, Z, R, Q.
    pub axis: WordDecimals,
    /// F under feed per minute.
    pub feed_per_minute: WordDecimals,
    /// F under feed per revolution.
    pub feed_per_revolution: WordDecimals,
}

/// What a control makes of the words that it reads. What is None is not known: a checker then tries every reading
/// and says where the answer depends on it.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
#[non_exhaustive]
pub struct Reading {
    /// The unit before any units code. A parameter of the control, and of many the one it had when it was switched
    /// off.
    pub units_default: Option<Unit>,
    /// The feed mode before any code of it. Mills start per minute, lathes per revolution.
    pub feed_mode_default: Option<FeedMode>,
    /// Codes of inches. G20 on controls of American descent, G70 by ISO 6983-1; some take both.
    pub inch_codes: [Option<CodeText>; 2],
    /// Codes of millimetres: G21, or G71 by ISO 6983-1.
    pub mm_codes: [Option<CodeText>; 2],
    /// What F is in a tapping cycle. Some controls always take it for the lead there, some always for feed per
    /// minute, and F1.5 is then right on one and breaks the tap on the other.
    pub feed_basis: Option<FeedBasis>,
    /// Letter of the lead, where it does not stand behind F.
    pub lead_word: Option<LetterText>,
    /// Code of one synchronised stroke that is no cycle: down and back with the lead behind a letter of its own.
    pub stroke_code: Option<CodeText>,
    /// Whether the tapping cycle starts the spindle. If it does, M3 before it is wasted or an alarm; if it does not,
    /// the tap is pushed into the hole unturned without it.
    pub cycle_starts_spindle: Option<bool>,
    /// How long the code for rigid tapping holds. Where it holds for one cycle, the second tool taps
    /// unsynchronised.
    pub rigid_tap_code_until: Option<RigidUntil>,
    /// Whether S may stand in the cycle's own block. Some controls take it only after the stroke.
    pub speed_in_cycle_block: Option<bool>,
    /// Decimals of S that the control keeps, 0 to 9. Most cut them off.
    pub speed_decimals: Option<u8>,
    /// Whether a peck returns to the R plane. If not it breaks the chip in the hole, and the times differ.
    pub peck_returns_to_r: Option<bool>,
    /// Letter of repeats: L or K.
    pub repeat_word: Option<LetterText>,
    /// What no repeats mean.
    pub repeat_zero_means: Option<RepeatZero>,
    /// What a number without a point is: `Z-20` is 20 mm on one control and 0.02 mm on the other.
    pub no_point: Option<NoPoint>,
    /// Decimals of the least increment by word, which numbers without a point count.
    pub least_increment: DecimalsByWord,
    /// The most decimals of a word that the control takes; with as many, a word may be a rounded one.
    pub max_decimals: DecimalsByWord,
    /// Code that mirrors an axis.
    pub mirror_on: Option<CodeText>,
    /// Code that ends mirroring.
    pub mirror_off: Option<CodeText>,
    /// Code that scales.
    pub scale_on: Option<CodeText>,
    /// Code that ends scaling.
    pub scale_off: Option<CodeText>,
    /// Code that rotates.
    pub rotate_on: Option<CodeText>,
    /// Code that ends rotation.
    pub rotate_off: Option<CodeText>,
    /// Whether a mirrored tapping cycle changes its hand. On one control the hole is left-hand, on the other the
    /// tap breaks.
    pub mirror_flips_hand: Option<bool>,
    /// Whether G0 to G3 end a cycle. Where they do not, only G80 does.
    pub rapid_cancels_cycle: Option<bool>,
    /// Whether R and Z of a cancelled cycle are still there for the next one.
    pub cycle_words_sticky_across_cancel: Option<bool>,
    /// Whether a change of units converts F. Where it does not, F40 in inches becomes F40 in millimetres.
    pub feed_converted_on_units_change: Option<bool>,
    /// Whether overrides are locked inside the cycle. Where not, M49 has to lock them.
    pub override_locked_in_cycle: Option<bool>,
    /// Whether a semicolon begins a comment.
    pub semicolon_comment: Option<bool>,
    /// The longest line that the control takes, in characters.
    pub max_block_chars: Option<u16>,
    /// What blanks inside a number are.
    pub spaces_in_numbers: Option<NumberSpaces>,
    /// Code that calls a subprogram, its number behind P.
    pub subprogram_call: Option<CodeText>,
    /// Code that returns from one.
    pub subprogram_return: Option<CodeText>,
    /// Whether codes that neither the dialect names nor all mills share are an alarm. If not, they may be what they
    /// are elsewhere.
    pub unlisted_codes_alarm: Option<bool>,
    /// In what order the words of a block act: whether `G20 F40.` is inches per minute.
    pub order_table: Option<BlockOrder>,
}

impl Reading {
    /// Nothing known but the codes of the units, which no control uses for anything else.
    pub(super) fn unset() -> Self {
        Self {
            inch_codes: [CodeText::holding("G20"), CodeText::holding("G70")],
            mm_codes: [CodeText::holding("G21"), CodeText::holding("G71")],
            ..Self::default()
        }
    }

    /// RS274/NGC.
    ///
    /// # Source
    /// NISTIR 6556: table 4 (codes), table 8 (order), 3.3 (line format), 3.5.16 (cycles); that F is kept as a
    /// number when the units change: the source of that interpreter.
    pub(super) fn rs274ngc() -> Self {
        Self {
            feed_mode_default: Some(FeedMode::PerMinute),
            inch_codes: [CodeText::holding("G20"), None],
            mm_codes: [CodeText::holding("G21"), None],
            feed_basis: Some(FeedBasis::ByMode),
            cycle_starts_spindle: Some(false),
            speed_in_cycle_block: Some(true),
            repeat_word: LetterText::holding("L"),
            repeat_zero_means: Some(RepeatZero::Error),
            no_point: Some(NoPoint::AsWritten),
            rapid_cancels_cycle: Some(true),
            cycle_words_sticky_across_cancel: Some(false),
            feed_converted_on_units_change: Some(false),
            semicolon_comment: Some(false),
            max_block_chars: Some(256),
            spaces_in_numbers: Some(NumberSpaces::Ignored),
            unlisted_codes_alarm: Some(true),
            order_table: Some(BlockOrder::Rs274Ngc),
            ..Self::default()
        }
    }
}
