//! A value of a hole as text.

use core::fmt::{self, Write};

use super::values::HoleValue;
use crate::feed::Unit;
use crate::length::Length;
use crate::nc::report::TappedHole;
use crate::text::{Rounded, Text};

/// Leads are compared by their digits; nobody measures a depth or a place finer than this.
const LEAD_DECIMALS: u8 = 6;
const LENGTH_DECIMALS: u8 = 4;

/// A value as text, and the unit behind it.
pub(super) struct Shown {
    text: Text<192>,
    unit: &'static str,
}

impl Shown {
    /// In a unit, with the decimals that somebody at the machine can use.
    pub(super) fn of(value: HoleValue, hole: &TappedHole, unit: Option<Unit>) -> Self {
        Self::written(value, hole, unit, false)
    }

    /// In millimetres, exactly.
    pub(super) fn exact(value: HoleValue, hole: &TappedHole) -> Self {
        Self::written(value, hole, Some(Unit::Mm), true)
    }

    fn written(value: HoleValue, hole: &TappedHole, unit: Option<Unit>, exact: bool) -> Self {
        let mut shown = Self { text: Text::new(), unit: "" };
        let is_inch = unit == Some(Unit::Inch);
        if shown.write(value, hole, is_inch, exact).is_none() {
            shown.text = Text::holding("not known").unwrap_or_default();
            return shown;
        }
        shown.unit = match value {
            HoleValue::Lead | HoleValue::Depth if is_inch => " in",
            HoleValue::Lead | HoleValue::Depth => " mm",
            HoleValue::Speed => " rpm",
            _ => "",
        };
        shown
    }

    /// Writes a value; None if it is not known. A text without room for all of it ends there.
    fn write(&mut self, value: HoleValue, hole: &TappedHole, is_inch: bool, exact: bool) -> Option<fmt::Result> {
        Some(match value {
            HoleValue::Lead => self.length(hole.lead_mm?, LEAD_DECIMALS, is_inch, exact),
            HoleValue::Depth => self.length(hole.depth_mm?, LENGTH_DECIMALS, is_inch, exact),
            HoleValue::Hand => self.text.write_str(hole.hand?.name()),
            HoleValue::Speed => self.number(hole.speed_rpm?, LEAD_DECIMALS, exact),
            HoleValue::Count => write!(self.text, "{}", Length::integer(i64::from(hole.count))),
            HoleValue::Thread => match hole.thread {
                Some(thread) => write!(self.text, "{thread}"),
                None => self.text.write_str("none"),
            },
            HoleValue::Tool => write!(self.text, "{}", Length::integer(i64::from(hole.tool?))),
            HoleValue::Place => self.place(hole, is_inch, exact),
        })
    }

    pub(super) fn text(&self) -> &str {
        self.text.as_str()
    }

    /// The unit with a blank before it; empty where there is none.
    pub(super) const fn unit(&self) -> &'static str {
        self.unit
    }

    fn number(&mut self, number: Length, decimals: u8, exact: bool) -> fmt::Result {
        if exact { write!(self.text, "{number}") } else { write!(self.text, "{}", Rounded(number.to_f64(), decimals)) }
    }

    fn length(&mut self, mm: Length, decimals: u8, is_inch: bool, exact: bool) -> fmt::Result {
        let length = if is_inch { mm.over(Length::INCH).unwrap_or(mm) } else { mm };
        self.number(length, decimals, exact)
    }

    fn place(&mut self, hole: &TappedHole, is_inch: bool, exact: bool) -> fmt::Result {
        for (axis, place) in [("X", hole.x_mm), ("Y", hole.y_mm)] {
            self.text.write_str(axis)?;
            match place {
                Some(place) => self.length(place, LENGTH_DECIMALS, is_inch, exact)?,
                None => self.text.write_str("?")?,
            }
            self.text.write_str(" ")?;
        }
        write!(self.text, "{}", hole.work_offset)
    }
}
