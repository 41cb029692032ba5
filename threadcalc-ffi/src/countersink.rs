//! The countersink of a tapped hole.

use threadcalc_core::{Countersunk, Field, UsualCountersink, countersink, usual_countersink};

use crate::codes::threadcalc_status;
use crate::memory::{SizedOutput, input};
use crate::number::{given, perhaps};
use crate::status::{guard, threadcalc_error_t};
use crate::types::{threadcalc_ratio_t, threadcalc_thread_t};

/// A countersunk mouth: depths from the face in mm, derived. Frozen.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct threadcalc_countersunk_t {
    /// To the tip of a pointed countersink that leaves this diameter at the face; one with a flat goes less
    /// deep.
    pub tip_mm: f64,
    /// To where the cone has narrowed to the major diameter: above it there is no thread at all. 0 for a
    /// countersink no larger than that.
    pub depth_at_major_mm: f64,
    /// To where the cone has narrowed to the hole: the thread is whole only from there on. What the
    /// countersink takes of the full thread.
    pub full_thread_lost_mm: f64,
}

impl threadcalc_countersunk_t {
    pub(crate) fn of(found: &Countersunk) -> Self {
        Self {
            tip_mm: found.tip_mm,
            depth_at_major_mm: found.depth_at_major_mm,
            full_thread_lost_mm: found.full_thread_lost_mm,
        }
    }
}

/// The countersink that is usual for a thread: exact. Frozen.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct threadcalc_usual_countersink_t {
    /// Smallest diameter at the face in mm.
    pub least_mm: threadcalc_ratio_t,
    /// Largest diameter at the face in mm.
    pub most_mm: threadcalc_ratio_t,
    /// Included angle in degrees.
    pub angle_deg: threadcalc_ratio_t,
}

impl threadcalc_usual_countersink_t {
    fn of(usual: &UsualCountersink) -> Self {
        Self {
            least_mm: threadcalc_ratio_t::of(usual.least_mm),
            most_mm: threadcalc_ratio_t::of(usual.most_mm),
            angle_deg: threadcalc_ratio_t::of(usual.angle_deg),
        }
    }
}

/// The depth of a countersink, and the full thread that it takes away at the mouth of a tapped hole.
/// found_size is sizeof(threadcalc_countersunk_t).
///
/// tip = C/2 / tan(angle/2); depth at major = (C - D)/2 / tan(angle/2), 0 if C is no larger than D; full
/// thread lost = (C - hole)/2 / tan(angle/2). countersink_mm is the diameter C at the face, larger than the
/// hole; angle_deg the included angle, 60 to 130; hole_mm the drilled hole, NULL or 0/0 for the basic minor
/// diameter.
/// Errors: missing, out-of-range, contradiction (external thread), does-not-apply (taper thread),
/// not-sourced (a profile that nobody has read), those of threadcalc_thread_write, structure-size.
/// Source: geometry; minor diameter: ISO 68-1, ASME B1.1, ISO 228-1, ISO 7-1, ASME B1.20.1.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_countersink(
    thread: *const threadcalc_thread_t,
    countersink_mm: *const threadcalc_ratio_t,
    angle_deg: *const threadcalc_ratio_t,
    hole_mm: *const threadcalc_ratio_t,
    found: *mut threadcalc_countersunk_t,
    found_size: usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let thread = unsafe { input(thread) }?.read()?;
        let diameter = unsafe { given(countersink_mm, Field::Countersink) }?;
        let angle = unsafe { given(angle_deg, Field::CountersinkAngle) }?;
        let hole = unsafe { perhaps(hole_mm, Field::Drill) }?;
        let place = unsafe { SizedOutput::new(found, found_size) }?;
        place.write(threadcalc_countersunk_t::of(&countersink(&thread, diameter, angle, hole)?));
        Ok(())
    })
}

/// The usual countersink of an ISO metric tapped hole: 1 to 1.05 times the nominal diameter, 120 degrees.
/// usual_size is sizeof(threadcalc_usual_countersink_t).
///
/// Errors: does-not-apply (another thread than M, the hole of a wire insert), contradiction (external thread),
/// those of threadcalc_thread_write, structure-size.
/// Source: DIN 76-1, from memory; common practice.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_usual_countersink(
    thread: *const threadcalc_thread_t,
    usual: *mut threadcalc_usual_countersink_t,
    usual_size: usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let thread = unsafe { input(thread) }?.read()?;
        let place = unsafe { SizedOutput::new(usual, usual_size) }?;
        place.write(threadcalc_usual_countersink_t::of(&usual_countersink(&thread)?));
        Ok(())
    })
}
