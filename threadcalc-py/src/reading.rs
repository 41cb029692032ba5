//! `Reading`: what a control makes of a program.

use pyo3::prelude::*;
use pyo3::types::PyDict;
use threadcalc_core::{self as core, DecimalsByWord, Unit, WordDecimals};

use crate::answer::{Shown, answer};

answer! {
    /// What a control makes of the words that it reads.
    Reading(core::Reading) {
        /// The unit before any units code.
        units_default,
        /// The feed mode before any code of it.
        feed_mode_default,
        /// What F is in a tapping cycle.
        feed_basis,
        /// Letter of the lead, where it does not stand behind F.
        lead_word,
        /// Code of one synchronised stroke that is no cycle.
        stroke_code,
        /// Whether the tapping cycle starts the spindle.
        cycle_starts_spindle,
        /// How long the code for rigid tapping holds.
        rigid_tap_code_until as "rigid_tap_code_sticky_until",
        /// Whether S may stand in the cycle's own block.
        speed_in_cycle_block as "S_in_cycle_block_allowed",
        /// Decimals of S that the control keeps.
        speed_decimals as "S_decimals",
        /// Whether a peck returns to the R plane.
        peck_returns_to_r as "peck_returns_to_R",
        /// Letter of repeats.
        repeat_word,
        /// What no repeats mean.
        repeat_zero_means,
        /// What a number without a point is.
        no_point,
        /// Code that mirrors an axis.
        mirror_on,
        /// Code that ends mirroring.
        mirror_off,
        /// Code that scales.
        scale_on,
        /// Code that ends scaling.
        scale_off,
        /// Code that rotates.
        rotate_on,
        /// Code that ends rotation.
        rotate_off,
        /// Whether a mirrored tapping cycle changes its hand.
        mirror_flips_hand,
        /// Whether G0 to G3 end a cycle.
        rapid_cancels_cycle,
        /// Whether R and Z of a cancelled cycle are still there for the next one.
        cycle_words_sticky_across_cancel,
        /// Whether a change of units converts F.
        feed_converted_on_units_change as "F_converted_on_units_change",
        /// Whether overrides are locked inside the cycle.
        override_locked_in_cycle,
        /// Whether codes that neither the dialect names nor all mills share are an alarm.
        unlisted_codes_alarm,
        /// Whether a semicolon begins a comment.
        semicolon_comment,
        /// The longest line that the control takes, in characters.
        max_block_chars,
        /// What blanks inside a number are.
        spaces_in_numbers,
        /// Code that calls a subprogram.
        subprogram_call,
        /// Code that returns from one.
        subprogram_return,
        /// In what order the words of a block act.
        order_table,
    }

    /// Codes of the units, by unit.
    #[getter]
    fn units_codes<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyDict>> {
        let list = |codes: &[Option<core::CodeText>]| -> Vec<String> {
            codes.iter().flatten().map(ToString::to_string).collect()
        };
        let found = PyDict::new(py);
        found.set_item("inch", list(&self.0.inch_codes))?;
        found.set_item("mm", list(&self.0.mm_codes))?;
        Ok(found)
    }

    /// Least increments by word and unit.
    #[getter]
    fn least_increment<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyDict>> {
        by_word(py, &self.0.least_increment, WordDecimals::increment)
    }

    /// The most decimals by word and unit.
    #[getter]
    fn max_decimals<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyDict>> {
        by_word(py, &self.0.max_decimals, WordDecimals::of)
    }
}

/// Numbers by word and unit, under the names that they have in JSON.
fn by_word<'py, T: Shown>(
    py: Python<'py>,
    words: &DecimalsByWord,
    number: fn(WordDecimals, Unit) -> Option<T>,
) -> PyResult<Bound<'py, PyDict>> {
    let found = PyDict::new(py);
    for (name, word) in
        [("axis", words.axis), ("F_per_min", words.feed_per_minute), ("F_per_rev", words.feed_per_revolution)]
    {
        let by_unit = PyDict::new(py);
        by_unit.set_item("mm", number(word, Unit::Mm).shown(py)?)?;
        by_unit.set_item("inch", number(word, Unit::Inch).shown(py)?)?;
        found.set_item(name, by_unit)?;
    }
    Ok(found)
}

impl Shown for core::Reading {
    fn shown<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        Bound::new(py, Reading(*self)).map(Bound::into_any)
    }

    fn text(&self) -> String {
        Reading(*self).__repr__()
    }
}
