//! The words of a tapping cycle, and what must be restored after it.

use core::fmt::Write;

use crate::error::{Code, Error, Field};
use crate::feed::{Feed, FeedMode, Unit};
use crate::finding::{Finding, FindingId};
use crate::length::{Length, Rounding};
use crate::text::Text;
use crate::thread::Hand;

/// A code of a control, such as `G84`.
pub type CodeText = Text<8>;

/// A word of a program.
type Word = Text<24>;

/// What a control calls things. A claim about one machine: somebody must have proved it there.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub struct Dialect {
    /// The shop's own name for it.
    pub name: Text<16>,
    /// Code of the right-hand tapping cycle; None: the control has none.
    pub tap_rh: Option<CodeText>,
    /// Code of the left-hand tapping cycle; None: the control has none.
    pub tap_lh: Option<CodeText>,
    /// Code of feed per revolution; None: the control taps by feed per minute only.
    pub feed_per_revolution: Option<CodeText>,
    /// Whether the spindle must already turn when the cycle starts.
    pub needs_spindle_running: bool,
}

impl Dialect {
    /// A dialect that says nothing yet.
    #[must_use]
    pub const fn unset() -> Self {
        Self { name: Text::new(), tap_rh: None, tap_lh: None, feed_per_revolution: None, needs_spindle_running: true }
    }

    /// RS274/NGC: G84 right hand only, feed per minute only, spindle turning clockwise before it.
    ///
    /// # Source
    /// NISTIR 6556: G84, and table 4 (modal groups: no G74, no G95).
    #[must_use]
    pub fn rs274ngc() -> Self {
        Self { name: Text::holding("rs274ngc").unwrap_or_default(), tap_rh: CodeText::holding("G84"), ..Self::unset() }
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

    fn tapping_code(&self, hand: Hand) -> Option<CodeText> {
        match hand {
            Hand::Right => self.tap_rh,
            Hand::Left => self.tap_lh,
        }
    }
}

/// The most words and lines of one tapping block.
const MOST_WORDS: usize = 12;
const MOST_BLOCKS: usize = 4;

/// The words of one tapped hole at the place the spindle stands, in program lines.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Cycle {
    words: [Word; MOST_WORDS],
    ends: [u8; MOST_BLOCKS],
    restore: [Word; 3],
}

/// What a cycle is made of.
#[derive(Clone, Copy, Debug)]
pub(crate) struct CycleRequest<'a> {
    pub dialect: &'a Dialect,
    pub hand: Hand,
    pub rpm: Length,
    pub feed: &'a Feed,
    pub depth_mm: Length,
    pub r_plane_mm: Length,
}

impl Cycle {
    /// The words in order.
    pub fn words(&self) -> impl Iterator<Item = &str> {
        self.words.iter().map(Text::as_str).filter(|word| !word.is_empty())
    }

    /// The program lines in order, words separated by blanks.
    pub fn blocks(&self) -> impl Iterator<Item = Text<112>> + '_ {
        let starts = core::iter::once(0).chain(self.ends.iter().copied());
        starts.zip(self.ends.iter().copied()).filter(|(start, end)| start < end).map(|(start, end)| {
            let mut line = Text::new();
            for word in self.words.get(usize::from(start)..usize::from(end)).unwrap_or(&[]) {
                let joint = if line.is_empty() { "" } else { " " };
                // At most three short codes and three words of 24 bytes stand on one line.
                let _fits = line.push(joint) && line.push(word.as_str());
            }
            line
        })
    }

    /// What the next operation must set again: feed mode, F, spindle direction.
    pub fn restore(&self) -> impl Iterator<Item = &str> {
        self.restore.iter().map(Text::as_str).filter(|word| !word.is_empty())
    }

    fn line(&mut self, words: &[Word]) {
        let mut count = u8::try_from(self.words().count()).unwrap_or(u8::MAX);
        for word in words {
            if let Some(place) = self.words.get_mut(usize::from(count)) {
                *place = *word;
                count = count.saturating_add(1);
            }
        }
        if let Some(end) = self.ends.iter_mut().find(|end| **end == 0) {
            *end = count;
        }
    }
}

/// The words, or the finding that says what the control lacks.
pub(crate) fn cycle(request: &CycleRequest<'_>) -> Result<Result<Cycle, Finding>, Error> {
    let dialect = request.dialect;
    let lacks = |what: &str| {
        Finding::new(FindingId::CodeNotOnControl)
            .with_evidence("dialect")
            .with_suggestion(if dialect.name.is_empty() { "it" } else { dialect.name.as_str() })
            .with_suggestion(" has no ")
            .with_suggestion(what)
    };
    let Some(code) = dialect.tapping_code(request.hand) else {
        return Ok(Err(lacks(match request.hand {
            Hand::Right => "right-hand tapping cycle",
            Hand::Left => "left-hand tapping cycle",
        })));
    };
    let mode = match (request.feed.mode(), dialect.feed_per_revolution) {
        (FeedMode::PerMinute, _) => word("G94"),
        (FeedMode::PerRevolution, Some(code)) => word(code.as_str()),
        (FeedMode::PerRevolution, None) => return Ok(Err(lacks("feed per revolution"))),
    };
    let unit = request.feed.unit();
    let decimals = axis_decimals(unit);
    // A tapped depth rounds deeper, the R plane higher.
    let depth = request.depth_mm.over(unit.in_mm())?.round_to(decimals, Rounding::Up)?.to_length()?;
    let r_plane = request.r_plane_mm.over(unit.in_mm())?.round_to(decimals, Rounding::Up)?.to_length()?;

    let mut cycle = Cycle::default();
    cycle.line(&[
        word("G17"),
        word(match unit {
            Unit::Mm => "G21",
            Unit::Inch => "G20",
        }),
        word("G90"),
        mode,
    ]);
    let direction = match request.hand {
        Hand::Right => "M3",
        Hand::Left => "M4",
    };
    let speed = number_word('S', request.rpm, false)?;
    if dialect.needs_spindle_running {
        cycle.line(&[speed, word(direction)]);
    } else {
        cycle.line(&[speed]);
    }
    let (z, r) = (number_word('Z', depth.negative(), true)?, number_word('R', r_plane, true)?);
    cycle.line(&[word("G99"), word(code.as_str()), z, r, word(request.feed.word())]);
    cycle.line(&[word("G80")]);
    cycle.restore = [word("G94"), word("F"), word("M3")];
    Ok(Ok(cycle))
}

/// Decimals of axis words: the least increment that mills of either unit read.
pub(crate) const fn axis_decimals(unit: Unit) -> u8 {
    match unit {
        Unit::Mm => 3,
        Unit::Inch => 4,
    }
}

fn word(text: &str) -> Word {
    Text::holding(text).unwrap_or_default()
}

/// A letter with a number that a control reads: no trailing zeros, a point where asked for.
fn number_word(letter: char, value: Length, point: bool) -> Result<Word, Error> {
    let overflow =
        Error::new(Code::Overflow, Field::Depth).got(value.to_f64()).hint_text("a number that fits in a word");
    let mut text = Text::new();
    let tail = if point && value.whole().is_some() { "." } else { "" };
    write!(text, "{letter}{value}{tail}").map_err(|_| overflow)?;
    Ok(text)
}

#[cfg(feature = "serde")]
impl serde::Serialize for Dialect {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        use serde::ser::SerializeStruct;
        let mut dialect = serializer.serialize_struct("Dialect", 5)?;
        dialect.serialize_field("name", &self.name)?;
        dialect.serialize_field("tap_rh", &self.tap_rh)?;
        dialect.serialize_field("tap_lh", &self.tap_lh)?;
        dialect.serialize_field("feed_per_revolution", &self.feed_per_revolution)?;
        dialect.serialize_field("needs_spindle_running", &self.needs_spindle_running)?;
        dialect.end()
    }
}
