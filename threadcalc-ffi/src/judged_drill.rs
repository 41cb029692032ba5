//! Single drills: their names as people write them, what they probably cut, and judging a given one.

use threadcalc_core::{
    Drill, DrillSet, Error, Field, MOST_OWN_DRILLS, OwnDrills, form_hole_mm, judge_drill, probable_hole_mm,
};

use crate::choices::{threadcalc_basis, threadcalc_tap};
use crate::codes::threadcalc_status;
use crate::drill::{basis_of, tap_of, threadcalc_tap_drill_t};
use crate::memory::{Output, SizedOutput, bytes, input, items_or_none, text_of};
use crate::number::perhaps;
use crate::status::{guard, optional, threadcalc_error_t};
use crate::types::{threadcalc_drill_t, threadcalc_ratio_t, threadcalc_thread_t};

impl threadcalc_drill_t {
    /// The drill of a set by its name, or one of another diameter.
    pub(crate) fn read(&self) -> Result<Drill, Error> {
        let set = optional(self.set, DrillSet::from_number, Field::DrillSets, DrillSet::CHOICES)?;
        match set {
            Some(set) => Drill::named(set, text_of(&self.name)),
            None => Ok(Drill::of_diameter(self.diameter_mm.required(Field::Drill)?)),
        }
    }
}

/// The list of a request; none if there are no drills.
///
/// # Safety
/// As for every input of the library.
pub(crate) unsafe fn own_drills(drills: *const threadcalc_drill_t, count: usize) -> Result<OwnDrills, Error> {
    let mut own = OwnDrills::new();
    for drill in unsafe { items_or_none(drills, count, MOST_OWN_DRILLS, Field::DrillList) }? {
        own.add(drill.read().map_err(|error| own.fault(error))?)?;
    }
    Ok(own)
}

/// The drill that a name or a diameter means: "6.8", "6.8 mm", "#7", "No. 7", "F", "13/64", "1 1/64", "0.2010 in".
///
/// A number without a unit is in mm, also a whole one (the 2 inch drill is "2 in"); a fraction is in inches. A diameter that stands in no set is a drill
/// named by its diameter.
/// Errors: empty, unreadable, unknown-value (#98), out-of-range, those of threadcalc_read_number.
/// Source: as threadcalc_drills.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_read_drill(
    name: *const u8,
    length: usize,
    drill: *mut threadcalc_drill_t,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let name = unsafe { bytes(name, length) }?;
        let place = unsafe { Output::new(drill) }?;
        place.write(threadcalc_drill_t::of(&Drill::read(name)?));
        Ok(())
    })
}

/// The hole that a drill probably leaves in average work, in mm: drills cut larger than they are.
///
/// Number, letter and fractional drills: the mean oversize printed for the drill, between two drills by a
/// straight line to 0.0001 in: #7 0.2010 leaves 0.2048. Others: 0.075 mm, below 3.5 mm the inch drills'
/// where it is less. oversize_mm, 0 or more, takes the place of both; NULL or 0/0: the usual.
/// Errors: not-sourced (below 3/64 in; inch drills above 1 3/64 in), out-of-range, those of
/// threadcalc_drill_named.
/// Source: a tap maker's tap drill chart (inch); a drill maker's tap drill page (metric mean 0.075 mm).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_probable_hole(
    drill: *const threadcalc_drill_t,
    oversize_mm: *const threadcalc_ratio_t,
    hole_mm: *mut threadcalc_ratio_t,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let drill = unsafe { input(drill) }?.read()?;
        let oversize = unsafe { perhaps(oversize_mm, Field::Oversize) }?;
        let place = unsafe { Output::new(hole_mm) }?;
        place.write(threadcalc_ratio_t::of(probable_hole_mm(&drill, oversize)?));
        Ok(())
    })
}

/// The usual window of the hole for a form tap, smallest and largest diameter in mm: 75 and 65 % of its own
/// height, D - 0.68 P x percent/100. The tap maker's window goes before it.
///
/// Errors: not-sourced (no thread of 60 degrees), does-not-apply (Tr, ACME, buttress), contradiction (external
/// thread), out-of-range, those of threadcalc_thread_write.
/// Source: common practice.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_form_hole(
    thread: *const threadcalc_thread_t,
    least_mm: *mut threadcalc_ratio_t,
    most_mm: *mut threadcalc_ratio_t,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let thread = unsafe { input(thread) }?.read()?;
        let (low, high) = (unsafe { Output::new(least_mm) }?, unsafe { Output::new(most_mm) }?);
        let (least, most) = form_hole_mm(&thread)?;
        low.write(threadcalc_ratio_t::of(least));
        high.write(threadcalc_ratio_t::of(most));
        Ok(())
    })
}

/// Judges a drill for a tapped hole as threadcalc_tap_drill judges the one it chooses; no alternatives.
/// found_size is sizeof(threadcalc_tap_drill_t).
///
/// oversize_mm is how much larger than the drill its hole is; NULL or 0/0: the usual. Finding other-taps-hole:
/// the other kind of tap takes this hole. Finding oversize-over-limit: the drill is within the limits and its
/// probable hole is not.
/// Errors: those of threadcalc_percent_thread, threadcalc_drill_named and threadcalc_probable_hole
/// (out-of-range).
/// Source: as threadcalc_tap_drill and threadcalc_probable_hole; the other tap's hole: common practice.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_judge_drill(
    thread: *const threadcalc_thread_t,
    drill: *const threadcalc_drill_t,
    tap: threadcalc_tap,
    basis: threadcalc_basis,
    oversize_mm: *const threadcalc_ratio_t,
    found: *mut threadcalc_tap_drill_t,
    found_size: usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let thread = unsafe { input(thread) }?.read()?;
        let drill = unsafe { input(drill) }?.read()?;
        let oversize = unsafe { perhaps(oversize_mm, Field::Oversize) }?;
        let place = unsafe { SizedOutput::new(found, found_size) }?;
        let found = judge_drill(&thread, drill, tap_of(tap)?, basis_of(basis)?, oversize)?;
        place.write(threadcalc_tap_drill_t::of(&found));
        Ok(())
    })
}
