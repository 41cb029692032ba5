//! Every diameter with its pitches of a form, one after the other: one walk over tables of every shape.

use super::listed::Table;
use super::{CONSTANT_PITCH, asme_b1_1, is_metric_j, iso_261, listed, metric_diameter, unified_diameter};
use crate::form::Form;
use crate::length::Length;

/// A place in the tables of a form; hands out diameter and pitch, coarse to fine.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Sizes {
    form: Form,
    row: usize,
    pitch: usize,
}

/// What stands at a place of a table.
enum Slot {
    Pitch(Length, Length),
    /// No pitch here, perhaps further on in the row.
    Blank,
    EndOfRow,
    End,
}

/// Every diameter with its pitches that the standard of a form lists; none for pipe threads.
pub(crate) const fn sizes(form: Form) -> Sizes {
    Sizes { form, row: 0, pitch: 0 }
}

impl Iterator for Sizes {
    type Item = (Length, Length);

    // Once in the program: every search of a standard goes through it.
    #[inline(never)]
    fn next(&mut self) -> Option<Self::Item> {
        loop {
            let slot = self.slot();
            self.pitch = self.pitch.saturating_add(1);
            match slot {
                Slot::Pitch(diameter, pitch) => return Some((diameter, pitch)),
                Slot::Blank => {}
                Slot::EndOfRow => (self.row, self.pitch) = (self.row.saturating_add(1), 0),
                Slot::End => return None,
            }
        }
    }
}

impl Sizes {
    fn slot(&self) -> Slot {
        if self.form.is_metric() {
            self.metric()
        } else if self.form.is_unified() {
            self.unified()
        } else {
            self.listed()
        }
    }

    fn metric(&self) -> Slot {
        let Some(size) = iso_261::SIZES.get(self.row) else { return Slot::End };
        // The coarse pitch stands before the fine ones.
        let um = match self.pitch.checked_sub(1) {
            None => Some(size.coarse_um),
            Some(fine) => size.fine_um.get(fine).copied(),
        };
        let Some(um) = um else { return Slot::EndOfRow };
        let (diameter, pitch) = (metric_diameter(size), Length::parts(u32::from(um), 1000));
        if um == 0 || (self.form == Form::MetricJ && !is_metric_j(diameter, pitch)) {
            return Slot::Blank;
        }
        Slot::Pitch(diameter, pitch)
    }

    fn unified(&self) -> Slot {
        let Some(size) = asme_b1_1::SIZES.get(self.row) else { return Slot::End };
        let tenths = match self.pitch {
            0 => size.unc_tenths,
            1 => size.unf_tenths,
            2 => size.unef_tenths,
            other => match CONSTANT_PITCH.get(other.saturating_sub(3)) {
                Some((_, per_inch, bit)) if size.constant & bit != 0 => per_inch.saturating_mul(10),
                Some(_) => 0,
                None => return Slot::EndOfRow,
            },
        };
        if tenths == 0 {
            return Slot::Blank;
        }
        Slot::Pitch(unified_diameter(size), Length::parts(254, u32::from(tenths)))
    }

    fn listed(&self) -> Slot {
        let mut row = self.row;
        for table in listed::tables(self.form) {
            match row.checked_sub(table.rows.len()) {
                Some(further) => row = further,
                None => return slot_of(table, row, self.pitch),
            }
        }
        Slot::End
    }
}

fn slot_of(table: &Table, row: usize, pitch: usize) -> Slot {
    let Some(row) = table.rows.get(row) else { return Slot::End };
    match row.pitches.get(pitch) {
        Some(parts) => Slot::Pitch(table.diameter(row), table.pitch(*parts)),
        None => Slot::EndOfRow,
    }
}
