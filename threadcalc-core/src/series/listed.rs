//! The standards that list one or a few pitches for each diameter: one shape of table for all of them.

use super::token::Series;
use super::{asme_b1_5, asme_b1_9, bs_84, bs_93, iso_1501, iso_2904};
use crate::form::Form;
use crate::length::Length;

/// A diameter and its pitches, coarse to fine, in the parts that its table counts in.
pub(super) struct Row {
    pub diameter: u32,
    pub pitches: &'static [u16],
}

pub(super) const fn row(diameter: u32, pitches: &'static [u16]) -> Row {
    Row { diameter, pitches }
}

/// A table of one form, and what it counts in.
#[derive(Clone, Copy)]
pub(super) struct Table {
    pub rows: &'static [Row],
    series: Option<Series>,
    is_inch: bool,
}

impl Table {
    /// Micrometres, or 64ths of an inch.
    #[inline(never)]
    pub fn diameter(self, row: &Row) -> Length {
        // At most 24 in: far inside 32 bits.
        if self.is_inch {
            Length::parts(row.diameter.saturating_mul(127), 320)
        } else {
            Length::parts(row.diameter, 1000)
        }
    }

    /// Micrometres, or eighths of a thread per inch: 203.2 mm over them.
    #[inline(never)]
    pub fn pitch(self, parts: u16) -> Length {
        let parts = u32::from(parts);
        if self.is_inch { Length::parts(1016, parts.saturating_mul(5)) } else { Length::parts(parts, 1000) }
    }
}

const fn metric(rows: &'static [Row]) -> Table {
    Table { rows, series: None, is_inch: false }
}

const fn inch(rows: &'static [Row], series: Option<Series>) -> Table {
    Table { rows, series, is_inch: true }
}

/// The tables of a form; none for the forms that have tables of their own.
pub(super) fn tables(form: Form) -> &'static [Table] {
    static MINIATURE: [Table; 1] = [metric(&iso_1501::SIZES)];
    static BA: [Table; 1] = [metric(&bs_93::SIZES)];
    static TRAPEZOIDAL: [Table; 1] = [metric(&iso_2904::SIZES)];
    static WHITWORTH: [Table; 2] = [inch(&bs_84::COARSE, Some(Series::Bsw)), inch(&bs_84::FINE, Some(Series::Bsf))];
    static ACME: [Table; 1] = [inch(&asme_b1_5::SIZES, None)];
    static BUTTRESS: [Table; 1] = [inch(&asme_b1_9::SIZES, None)];
    match form {
        Form::Miniature => &MINIATURE,
        Form::Ba => &BA,
        Form::Trapezoidal => &TRAPEZOIDAL,
        Form::Whitworth => &WHITWORTH,
        Form::Acme | Form::StubAcme => &ACME,
        Form::Buttress | Form::PullButtress => &BUTTRESS,
        _ => &[],
    }
}

/// A diameter with a pitch that the form's standard lists.
#[derive(Clone, Copy)]
pub(crate) struct Listed {
    pub diameter: Length,
    pub pitch: Length,
    pub series: Option<Series>,
}

/// All of a form, in the order of its tables.
pub(crate) fn listed(form: Form) -> ListedSizes {
    ListedSizes { tables: tables(form), row: 0, pitch: 0 }
}

/// A place in the tables of a form.
#[derive(Clone)]
pub(crate) struct ListedSizes {
    tables: &'static [Table],
    row: usize,
    pitch: usize,
}

impl Iterator for ListedSizes {
    type Item = Listed;

    // Once in the program, however it is searched.
    #[inline(never)]
    fn next(&mut self) -> Option<Listed> {
        loop {
            let (table, others) = self.tables.split_first()?;
            let Some(row) = table.rows.get(self.row) else {
                (self.tables, self.row, self.pitch) = (others, 0, 0);
                continue;
            };
            let Some(parts) = row.pitches.get(self.pitch) else {
                (self.row, self.pitch) = (self.row.saturating_add(1), 0);
                continue;
            };
            self.pitch = self.pitch.saturating_add(1);
            return Some(Listed { diameter: table.diameter(row), pitch: table.pitch(*parts), series: table.series });
        }
    }
}

/// The size of a number of BA, 0 to 25.
pub(crate) fn ba_size(number: i64) -> Option<Listed> {
    usize::try_from(number).ok().and_then(|number| listed(Form::Ba).nth(number))
}

/// The number of a size of BA.
pub(crate) fn ba_number(diameter: Length, pitch: Length) -> Option<i64> {
    // Over a slice, whose places need no count that could overflow.
    let [table] = tables(Form::Ba) else { return None };
    // No row is made a length: that would cost more than all else.
    let is = |length: Length, um: u32| {
        let (top, bottom) = (length.numerator().checked_mul(1000), length.denominator());
        top.is_some() && top == i64::from(um).checked_mul(bottom)
    };
    let place = table.rows.iter().position(|row| {
        is(diameter, row.diameter) && row.pitches.first().is_some_and(|parts| is(pitch, u32::from(*parts)))
    })?;
    i64::try_from(place).ok()
}
