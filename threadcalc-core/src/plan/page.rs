//! Paragraphs of at most 80 columns.

use core::fmt::{self, Write};

use crate::feed::Unit;
use crate::length::{Decimal, Length, Rounding};
use crate::number_key::NumberKey;
use crate::text::{Plain, Text};

/// The widest line.
const COLUMNS: usize = 80;
/// Where the text of a labelled paragraph begins.
const INDENT: &str = "          ";

/// Writes paragraphs: a label, then items that wrap to lines of their own when a line is full.
pub(super) struct Page<'a> {
    out: &'a mut dyn Write,
    line: Text<160>,
    fresh: bool,
}

impl<'a> Page<'a> {
    pub(super) fn new(out: &'a mut dyn Write) -> Self {
        Self { out, line: Text::new(), fresh: true }
    }

    /// Ends the line there is and begins a paragraph with a label in its margin.
    pub(super) fn label(&mut self, label: &str) -> fmt::Result {
        self.end_line()?;
        write!(self.line, " {label}")?;
        while self.line.as_str().len() < INDENT.len() {
            self.line.write_str(" ")?;
        }
        Ok(())
    }

    /// Ends the line there is and begins one at the text's indent.
    pub(super) fn next_line(&mut self) -> fmt::Result {
        self.end_line()?;
        self.line.write_str(INDENT)
    }

    /// Ends the line there is and begins a paragraph with words of its own in place of a label.
    pub(super) fn open(&mut self, words: &str) -> fmt::Result {
        self.end_line()?;
        self.line.write_str(words)
    }

    /// Adds an item after `gap`, or on a new line if this one is full. The last column is kept for
    /// the separator that the next item may leave here.
    pub(super) fn item(&mut self, gap: &str, item: fmt::Arguments<'_>) -> fmt::Result {
        self.item_within(COLUMNS.saturating_sub(1), gap, item)
    }

    fn item_within(&mut self, room: usize, gap: &str, item: fmt::Arguments<'_>) -> fmt::Result {
        let mut text = Text::<160>::new();
        text.write_fmt(item)?;
        let gap = if self.fresh { "" } else { gap };
        let used = [gap.len(), text.as_str().len()]
            .iter()
            .fold(self.line.as_str().len(), |sum, part| sum.saturating_add(*part));
        if used > room && !self.fresh {
            // A separator belongs to what stands before it.
            self.line.write_str(gap.trim_end())?;
            self.next_line()?;
        } else {
            self.line.write_str(gap)?;
        }
        // What is wider than a whole line goes in word by word.
        let several = words(text.as_str()).nth(1).is_some();
        if several && INDENT.len().saturating_add(text.as_str().len()) > room {
            self.fresh = true;
            return words(text.as_str()).try_for_each(|word| self.item_within(room, " ", format_args!("{word}")));
        }
        self.put(text.as_str())
    }

    fn put(&mut self, text: &str) -> fmt::Result {
        self.fresh = false;
        self.line.write_str(text)
    }

    /// Adds a sentence word by word; it ends its paragraph.
    pub(super) fn sentence(&mut self, text: &str) -> fmt::Result {
        words(text).try_for_each(|word| self.item_within(COLUMNS, " ", format_args!("{word}")))
    }

    /// Adds words that more may follow, after a separator.
    pub(super) fn phrase(&mut self, separator: &str, text: &str) -> fmt::Result {
        let gaps = core::iter::once(separator).chain(core::iter::repeat(" "));
        words(text).zip(gaps).try_for_each(|(word, gap)| self.item(gap, format_args!("{word}")))
    }

    /// The same for words with numbers among them.
    pub(super) fn flow(&mut self, separator: &str, text: fmt::Arguments<'_>) -> fmt::Result {
        let mut held = Text::<160>::new();
        held.write_fmt(text)?;
        self.phrase(separator, held.as_str())
    }

    /// Pads the line to a column, for tables.
    pub(super) fn column(&mut self, column: usize) -> fmt::Result {
        while self.line.as_str().len() < column {
            self.line.write_str(" ")?;
        }
        Ok(())
    }

    /// Adds a text that ends at a column, for tables of numbers.
    pub(super) fn right(&mut self, column: usize, text: fmt::Arguments<'_>) -> fmt::Result {
        let mut held = Text::<32>::new();
        held.write_fmt(text)?;
        self.column(column.saturating_sub(held.as_str().len()))?;
        if !self.line.as_str().ends_with(' ') {
            self.put(" ")?;
        }
        self.put(held.as_str())
    }

    /// Ends the line there is, if there is one.
    pub(super) fn end_line(&mut self) -> fmt::Result {
        if !self.line.is_empty() {
            self.out.write_str(self.line.as_str().trim_end())?;
            self.out.write_str("\n")?;
        }
        self.line = Text::new();
        self.fresh = true;
        Ok(())
    }
}

/// The words of a text.
fn words(text: &str) -> impl Iterator<Item = &str> {
    // As a set of one: the search for a single char links a slicing panic.
    text.split([' '])
}

/// An exact value at a number of decimals, for reading.
pub(super) struct Fixed(pub Length, pub u8);

impl fmt::Display for Fixed {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self.0.round_to(self.1, Rounding::HalfEven) {
            Ok(decimal) => fmt::Display::fmt(&decimal, f),
            Err(_) => fmt::Display::fmt(&self.0, f),
        }
    }
}

/// A millimetre value in inches at four decimals.
pub(super) struct Inches(pub Length);

impl fmt::Display for Inches {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self.0.over(Length::INCH) {
            Ok(inches) => Fixed(inches, 4).fmt(f),
            Err(_) => f.write_str("-"),
        }
    }
}

/// An exact value in full, or at a number of decimals where it has more.
pub(super) struct Exactly(pub Length, pub u8);

impl fmt::Display for Exactly {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self.0.as_decimal().filter(|decimal| decimal.decimals() <= self.1) {
            Some(decimal) => fmt::Display::fmt(&decimal, f),
            None => Fixed(self.0, self.1).fmt(f),
        }
    }
}

/// The unit as it stands behind a number.
pub(super) const fn short(unit: Unit) -> &'static str {
    match unit {
        Unit::Mm => "mm",
        Unit::Inch => "in",
    }
}

/// A diameter, or a range of them, in the unit that comes first, then in the other one if both are wanted.
pub(super) struct Both {
    pub low: Length,
    pub high: Option<Length>,
    pub first: Unit,
    /// Decimals of the inches, where these come first; three of millimetres, four of inches otherwise.
    pub decimals: u8,
    pub both: bool,
}

impl fmt::Display for Both {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let in_unit = |f: &mut fmt::Formatter<'_>, unit: Unit, decimals| {
            let value = |mm: Length| Fixed(mm.over(unit.in_mm()).unwrap_or(mm), decimals);
            write!(f, "{}", value(self.low))?;
            if let Some(high) = self.high {
                write!(f, " to {}", value(high))?;
            }
            write!(f, " {}", short(unit))
        };
        let (second, decimals) = match self.first {
            Unit::Mm => {
                in_unit(f, Unit::Mm, 3)?;
                (Unit::Inch, 4)
            }
            Unit::Inch => {
                in_unit(f, Unit::Inch, self.decimals)?;
                (Unit::Mm, 3)
            }
        };
        if !self.both {
            return Ok(());
        }
        f.write_str(" (")?;
        in_unit(f, second, decimals)?;
        f.write_str(")")
    }
}

/// A derived double at a number of decimals, for reading.
pub(super) struct Shown(pub f64, pub u8);

impl fmt::Display for Shown {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        // Saying nothing is better than a nought that nobody computed.
        if !self.0.is_finite() {
            return f.write_str("?");
        }
        let power = crate::length::power_of_ten(self.1).map_err(|_| fmt::Error)?;
        let scaled = libm::rint(self.0 * power as f64);
        // Saturating: a number too large for this is past any reading.
        let decimal = Decimal::new(scaled as i64, self.1).map_err(|_| fmt::Error)?;
        fmt::Display::fmt(&decimal, f)
    }
}

/// The units that the names of numbers end in, the longer first.
const ENDINGS: [(&str, &str); 11] = [
    ("_n_mm2", " N/mm2"),
    ("_mm_min", " mm/min"),
    ("_mm", " mm"),
    ("_um", " um"),
    ("_rpm", " rpm"),
    ("_deg", " deg"),
    ("_nm", " Nm"),
    ("_mpa", " MPa"),
    ("_threads", " threads"),
    ("_turns", " turns"),
    ("_percent", " %"),
];

/// A finding's number by its name and with its unit: `r plane 5 mm`.
pub(super) struct Measure(pub NumberKey, pub f64);

impl fmt::Display for Measure {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let name = self.0.name();
        let ending = ENDINGS.iter().find_map(|(ending, unit)| Some((name.strip_suffix(ending)?, *unit)));
        let (name, unit) = ending.unwrap_or((name, ""));
        // The shop's letter is a capital.
        let name = if self.0 == NumberKey::RPlaneMm { "R plane" } else { name };
        let value = if libm::fabs(self.1) < 0.1 { self.1 } else { libm::rint(self.1 * 1e4) / 1e4 };
        write!(f, "{} {}{unit}", Words(name), Plain(value))
    }
}

/// A signed exact value at a number of decimals.
pub(super) struct Signed(pub Length, pub u8);

impl fmt::Display for Signed {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        if !self.0.is_negative() {
            f.write_str("+")?;
        }
        Fixed(self.0, self.1).fmt(f)
    }
}

/// A name with blanks for its underscores and dashes.
pub(super) struct Words(pub &'static str);

impl fmt::Display for Words {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.0.chars().try_for_each(|letter| f.write_char(if matches!(letter, '_' | '-') { ' ' } else { letter }))
    }
}
