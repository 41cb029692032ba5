//! Coated threads.

use threadcalc_core::{CoatingGrowth, Field};

use crate::codes::threadcalc_status;
use crate::limits::threadcalc_limits_t;
use crate::memory::{Output, SizedOutput, input};
use crate::number::given;
use crate::status::{guard, threadcalc_error_t};
use crate::types::{threadcalc_ratio_t, threadcalc_thread_t};

/// How much a coating changes the diameters of a thread, in mm, exact: an external thread grows by it, an
/// internal one closes. Frozen.
#[repr(C)]
#[derive(Clone, Copy, Default)]
pub struct threadcalc_coating_growth_t {
    /// Major and minor diameter: twice the thickness.
    pub crest_mm: threadcalc_ratio_t,
    /// Pitch diameter: four times the thickness on a 60 degree thread.
    pub pitch_diameter_mm: threadcalc_ratio_t,
}

impl threadcalc_coating_growth_t {
    fn of(growth: CoatingGrowth) -> Self {
        Self {
            crest_mm: threadcalc_ratio_t::of(growth.crest_mm),
            pitch_diameter_mm: threadcalc_ratio_t::of(growth.pitch_diameter_mm),
        }
    }
}

/// How much a coating of one thickness changes the diameters. growth_size is
/// sizeof(threadcalc_coating_growth_t).
///
/// With a and b the flank angles: 2 t (1/cos a + 1/cos b) / (tan a + tan b) on the pitch diameter, 4 t on a 60
/// degree thread; the factors of other threads are to four decimals, rounded up. thickness_um is measured square
/// to the surface in um, 0 to 1000, and the same all over: thin even coats only, never hot-dip, paint or dipped
/// coats. A current plates crests and the first threads thicker: gauge after coating.
/// Errors: missing, out-of-range, those of threadcalc_thread_write, structure-size.
/// Source: Machinery's Handbook 27 p. 1793 (ASME B1.13M); derived for other flanks.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_coating_growth(
    thread: *const threadcalc_thread_t,
    thickness_um: *const threadcalc_ratio_t,
    growth: *mut threadcalc_coating_growth_t,
    growth_size: usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let thread = unsafe { input(thread) }?.read()?;
        let thickness = unsafe { given(thickness_um, Field::CoatingThickness) }?;
        let place = unsafe { SizedOutput::new(growth, growth_size) }?;
        place.write(threadcalc_coating_growth_t::of(thread.coating_growth(thickness)?));
        Ok(())
    })
}

/// The limits of size to make a thread to, so that it keeps those of its class once it is coated, in mm, exact
/// and not rounded. limits_size is sizeof(threadcalc_limits_t).
///
/// External: the largest less the growth by the thickest coating, the smallest less that by the thinnest; internal
/// the other way. In um, 0 to 1000; where only a nominal or smallest thickness is known, half as much again is
/// taken as the thickest. The limits of a class with an allowance (6g, 2A) are those before coating as they are:
/// see threadcalc_thickest_coating_um. The positions of ISO 965-4 and ISO 965-5 are another matter.
/// Errors: missing, out-of-range (also a band that takes the whole tolerance, with the thickest that does not,
/// and a coating that leaves no thread), contradiction (the thinnest is more than the thickest), those of
/// threadcalc_limits.
/// Source: Machinery's Handbook 27 p. 1793 (ASME B1.13M), external threads; internal threads likewise.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_limits_before_coating(
    thread: *const threadcalc_thread_t,
    thinnest_um: *const threadcalc_ratio_t,
    thickest_um: *const threadcalc_ratio_t,
    limits: *mut threadcalc_limits_t,
    limits_size: usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let thread = unsafe { input(thread) }?.read()?;
        let thinnest = unsafe { given(thinnest_um, Field::CoatingThinnest) }?;
        let thickest = unsafe { given(thickest_um, Field::CoatingThickest) }?;
        let place = unsafe { SizedOutput::new(limits, limits_size) }?;
        place.write(threadcalc_limits_t::of(&thread.limits_before_coating(thinnest, thickest)?));
        Ok(())
    })
}

/// The thickest coating that the allowance of the class has room for, in um, exact; 0 for a class without one.
///
/// A quarter of the allowance on a 60 degree thread. The limits of such a class (6g, 2A) are those before
/// coating; once coated, GO of the basic size and NOT GO of the class gauge it. An allowance that is not the
/// coating's to use is kept by threadcalc_limits_before_coating.
/// Errors: not-sourced for holes of wire inserts and other threads than M, UN, UNR and pipe threads, those of
/// threadcalc_limits, does-not-apply (Rp and NPSC: no allowance).
/// Source: ASME B1.1, section on coated threads, as ASTM F1941 quotes it; metric: ISO 965-1, from memory.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_thickest_coating_um(
    thread: *const threadcalc_thread_t,
    thickest_um: *mut threadcalc_ratio_t,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let thread = unsafe { input(thread) }?.read()?;
        let place = unsafe { Output::new(thickest_um) }?;
        place.write(threadcalc_ratio_t::of(thread.thickest_coating_um()?));
        Ok(())
    })
}
