//! What a control calls things, and what it makes of a program that it reads.

mod keys;
mod reading;
mod reading_keys;

#[cfg(feature = "serde")]
mod json;

pub(crate) use keys::is_free;
pub use reading::{
    BlockOrder, DecimalsByWord, FeedBasis, NoPoint, NumberSpaces, Reading, RepeatZero, RigidUntil, WordDecimals,
};

use crate::error::{Code, Error, Field};
use crate::feed::{FeedMode, Unit};
use crate::named::named;
use crate::text::Text;
use crate::thread::Hand;

/// A code of a control, such as `G84`.
pub type CodeText = Text<8>;

/// The letter of a word, such as `Q`.
pub type LetterText = Text<1>;

named! {
    /// What a dwell at the bottom is counted in.
    pub enum DwellUnit {
        /// Seconds, perhaps with decimals.
        Seconds = 1 "seconds",
        /// Whole milliseconds.
        Milliseconds = 2 "milliseconds",
    }
}

named! {
    /// What the way out, faster than the way in, is counted in.
    pub enum RetractIn {
        /// Speed out over speed in.
        Factor = 1 "factor",
        /// The same in percent.
        Percent = 2 "percent",
    }
}

named! {
    /// Where the tap returns to after the hole.
    pub enum ReturnTo {
        /// The R plane.
        RPlane = 1 "r_plane",
        /// The height that it stood at before the cycle.
        Initial = 2 "initial",
    }
}

/// What a control calls things. A claim about one machine: somebody must have proved it there.
///
/// The words that all mills of the word-address format share are no fields: G17, G20, G21, G80, G90, and
/// the letters F, R, S and Z. Of a letter only what [`Dialect::set`] lets through can be written.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub struct Dialect {
    /// The shop's own name for it, up to 19 bytes: what a text of C has room for.
    pub name: Text<19>,
    /// Code of the right-hand tapping cycle; None: the control has none.
    pub tap_rh: Option<CodeText>,
    /// Code of the left-hand tapping cycle; None: the control has none. Some controls have one of their
    /// own, some tell the hand by the spindle's direction, some cannot tap left-hand at all.
    pub tap_lh: Option<CodeText>,
    /// Left hand is the right-hand cycle with the spindle turning backwards (M4) before it. Then the
    /// direction is written for right-hand holes too, since it decides.
    pub lh_by_spindle_direction: bool,
    /// Code of feed per minute, G94 unless said otherwise. Controls that use G98 and G99 for the feed mode
    /// have another.
    pub feed_per_minute: CodeText,
    /// Code of feed per revolution; None: the control taps by feed per minute only.
    pub feed_per_revolution: Option<CodeText>,
    /// Whether the spindle must already turn when the cycle starts. A cycle that starts the spindle itself
    /// stops it first if it turns, or refuses to start.
    pub needs_spindle_running: bool,
    /// Code that makes the next tapping cycle a synchronised one, before it on a line of its own; None: the
    /// cycle itself says whether it is one. Controls with such a code tap unsynchronised without it, which
    /// is right for holders that give and breaks taps in rigid ones.
    pub rigid_tap_code: Option<CodeText>,
    /// Whether that code carries the speed, `S600` on the same line. Some controls take it from there only.
    pub rigid_tap_code_has_s: bool,
    /// Letter of a peck's depth; None: no pecks. It stands on the tapping cycle's line, unless pecks have a
    /// cycle of their own.
    pub peck_word: Option<LetterText>,
    /// Code of the right-hand cycle with pecks, where that is a cycle of its own.
    pub peck_code_rh: Option<CodeText>,
    /// Code of the left-hand cycle with pecks, where that is a cycle of its own.
    pub peck_code_lh: Option<CodeText>,
    /// Letter of the dwell at the bottom; None: the cycle has no dwell.
    pub dwell_word: Option<LetterText>,
    /// What the dwell is counted in; required for a dwell. The same number is a thousand times as long on
    /// one control as on the other.
    pub dwell_unit: Option<DwellUnit>,
    /// Letter of a faster way out; None: out as fast as in.
    pub retract_multiplier_word: Option<LetterText>,
    /// What the faster way out is counted in; required for one.
    pub retract_in: Option<RetractIn>,
    /// Code of the return to the R plane, G99 unless said otherwise; None: the control has none. On
    /// controls that use G98 and G99 for the feed mode they would change the feed.
    pub return_r_plane: Option<CodeText>,
    /// Code of the return to the height before the cycle, G98 unless said otherwise; None: the control has
    /// none.
    pub return_initial: Option<CodeText>,
    /// Decimals of axis words in millimetres, 0 to 9; 3 unless said otherwise. Beyond its least increment a
    /// control rounds, cuts off or stops.
    pub axis_decimals_mm: u8,
    /// Decimals of axis words in inches, 0 to 9; 4 unless said otherwise.
    pub axis_decimals_inch: u8,
    /// Whether a whole length, feed or dwell in seconds has a point, `Z-20.`; yes unless said otherwise.
    /// Without it some controls count in least increments, a thousandth of what is meant.
    pub trailing_point: bool,
    /// What the control makes of a program, for checking one; nothing that is written depends on it.
    pub reading: Reading,
}

impl Dialect {
    /// A dialect that says nothing yet: it has no tapping cycle.
    #[must_use]
    pub fn unset() -> Self {
        let held = |text| Text::holding(text).unwrap_or_default();
        Self {
            name: Text::new(),
            tap_rh: None,
            tap_lh: None,
            lh_by_spindle_direction: false,
            feed_per_minute: held("G94"),
            feed_per_revolution: None,
            needs_spindle_running: true,
            rigid_tap_code: None,
            rigid_tap_code_has_s: false,
            peck_word: None,
            peck_code_rh: None,
            peck_code_lh: None,
            dwell_word: None,
            dwell_unit: None,
            retract_multiplier_word: None,
            retract_in: None,
            return_r_plane: Some(held("G99")),
            return_initial: Some(held("G98")),
            axis_decimals_mm: axis_decimals(Unit::Mm),
            axis_decimals_inch: axis_decimals(Unit::Inch),
            trailing_point: true,
            reading: Reading::unset(),
        }
    }

    /// RS274/NGC: G84 right hand only, feed per minute only, spindle turning clockwise before it, no
    /// pecks, no dwell and no faster way out.
    ///
    /// # Source
    /// NISTIR 6556: G84 (which has no P), G98 and G99, and table 4 (modal groups: no G74, no G95).
    #[must_use]
    pub fn rs274ngc() -> Self {
        Self {
            name: Text::holding("rs274ngc").unwrap_or_default(),
            tap_rh: CodeText::holding("G84"),
            reading: Reading::rs274ngc(),
            ..Self::unset()
        }
    }

    /// One of the two built-in dialects, `rs274ngc` or `unset`.
    ///
    /// # Errors
    /// [`Code::UnknownValue`] for any other name.
    pub fn built_in(name: &[u8]) -> Result<Self, Error> {
        match name {
            b"rs274ngc" => Ok(Self::rs274ngc()),
            b"unset" => Ok(Self::unset()),
            _ => Err(Error::new(Code::UnknownValue, Field::Dialect)
                .hint_text("rs274ngc or unset, or the fields of the control's own dialect")),
        }
    }

    /// True for a dialect that names no tapping cycle at all.
    #[must_use]
    pub const fn is_unset(&self) -> bool {
        self.tap_rh.is_none() && self.tap_lh.is_none()
    }

    /// The code that taps, with pecks or without; None: the control has none.
    pub(crate) fn tapping_code(&self, hand: Hand, pecks: bool) -> Option<CodeText> {
        let (code, peck_code) = match hand {
            Hand::Left if !self.lh_by_spindle_direction => (self.tap_lh, self.peck_code_lh),
            Hand::Right | Hand::Left => (self.tap_rh, self.peck_code_rh),
        };
        // Where pecks have a cycle of their own for one hand, the plain cycle of the other does not peck.
        let own = self.peck_code_rh.is_some() || self.peck_code_lh.is_some();
        if pecks && own { peck_code.filter(|_| code.is_some()) } else { code }
    }

    /// The code of a feed mode; None: the control has none.
    pub(crate) const fn feed_code(&self, mode: FeedMode) -> Option<CodeText> {
        match mode {
            FeedMode::PerMinute => Some(self.feed_per_minute),
            FeedMode::PerRevolution => self.feed_per_revolution,
        }
    }

    /// The code of a return; None: the control has none.
    pub(crate) const fn return_code(&self, to: ReturnTo) -> Option<CodeText> {
        match to {
            ReturnTo::RPlane => self.return_r_plane,
            ReturnTo::Initial => self.return_initial,
        }
    }

    /// Decimals of its axis words in a unit.
    pub(crate) const fn decimals(&self, unit: Unit) -> u8 {
        match unit {
            Unit::Mm => self.axis_decimals_mm,
            Unit::Inch => self.axis_decimals_inch,
        }
    }
}

/// Decimals of axis words: the least increment that mills of either unit read.
pub(crate) const fn axis_decimals(unit: Unit) -> u8 {
    match unit {
        Unit::Mm => 3,
        Unit::Inch => 4,
    }
}
