//! Limits of size.

use core::ffi::c_char;

use threadcalc_core::{Limits, Range};

use crate::choices::{threadcalc_confidence, threadcalc_unit};
use crate::codes::threadcalc_status;
use crate::memory::{SizedOutput, fixed_text, input};
use crate::status::{guard, threadcalc_error_t};
use crate::types::{threadcalc_ratio_t, threadcalc_thread_t};

/// Smallest and largest size in mm, exact; 0/0 where the standard sets none or it has not been read. Frozen.
#[repr(C)]
#[derive(Clone, Copy, Default)]
pub struct threadcalc_range_t {
    /// Smallest.
    pub low: threadcalc_ratio_t,
    /// Largest.
    pub high: threadcalc_ratio_t,
}

impl threadcalc_range_t {
    pub(crate) fn of(range: Range) -> Self {
        Self { low: threadcalc_ratio_t::of_option(range.0), high: threadcalc_ratio_t::of_option(range.1) }
    }
}

/// Limits of size: the standard's own rounded decimals. Frozen. All zeros: the standard's values have
/// not been read.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct threadcalc_limits_t {
    /// Major diameter.
    pub major_mm: threadcalc_range_t,
    /// Pitch diameter.
    pub pitch_diameter_mm: threadcalc_range_t,
    /// Minor diameter.
    pub minor_mm: threadcalc_range_t,
    /// The unit in which the standard gives its decimals.
    pub native_unit: threadcalc_unit,
    /// How many decimals the standard gives, in that unit; pitch diameters in inches have at least four.
    pub decimals: i32,
    /// How sure the limits are.
    pub confidence: threadcalc_confidence,
    /// 1; 0 where there are no limits.
    pub is_given: i32,
    /// Standard, edition and table or rule.
    pub source: [c_char; 96],
}

impl threadcalc_limits_t {
    pub(crate) const NONE: Self = {
        let none = threadcalc_ratio_t { numerator: 0, denominator: 0 };
        let range = threadcalc_range_t { low: none, high: none };
        Self {
            major_mm: range,
            pitch_diameter_mm: range,
            minor_mm: range,
            native_unit: 0,
            decimals: 0,
            confidence: 0,
            is_given: 0,
            source: [0; 96],
        }
    };

    pub(crate) fn of(limits: &Limits) -> Self {
        Self {
            major_mm: threadcalc_range_t::of(limits.major_mm),
            pitch_diameter_mm: threadcalc_range_t::of(limits.pitch_diameter_mm),
            minor_mm: threadcalc_range_t::of(limits.minor_mm),
            native_unit: limits.native_unit.number(),
            decimals: i32::from(limits.decimals),
            confidence: limits.confidence.number(),
            is_given: 1,
            source: fixed_text(limits.source),
        }
    }
}

/// The limits of size of the thread's tolerance class. limits_size is sizeof(threadcalc_limits_t).
///
/// Beside M, UN, G, Rp, NPSC and NPSM: MJ and UNJ (minor diameters not read but the smallest of UNJ's hole), holes for
/// wire inserts in M and UN, Tr of one start over 5.6 to 180 mm (of both the hole's largest minor diameter not read),
/// ACME 2G 3G 4G and stub ACME 2G (the far limits of its roots not read) of one start, holes with buttress threads of
/// class 2 (major diameter not read), BA No. 0 to 16 (close bolts No. 0 to 10; normal: bolts, and all holes). A limit
/// that has not been read is 0/0.
///
/// Errors: class-unset (no class; or a class of both sides, such as 2G, without a side), unknown-class (an external
/// M class whose crest grade does not exist; close bolts from No. 11 BA), not-sourced (the
/// standard's values have not been read; the hint says which have), does-not-apply (a taper thread is gauged by
/// turns: see threadcalc_pipe, threadcalc_taper_depths), those of threadcalc_thread_write, structure-size.
/// Source: ISO 965-1:2013; ASME B1.1-2003; ISO 228-1:2000 (G); ISO 7-1:1994 (Rp); ASME B1.20.1-1983 (NPSC,
/// NPSM); ISO 2903:2016 with GOST 24739-81; ASME B1.5-1997; ASME B1.9-1973; BS 93; ISO 5855-1:1999; ASME B1.15-1995
/// and SAE AS8879D; ASME B18.29.1-2010 and B18.29.2M-2005. The structure says which.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_limits(
    thread: *const threadcalc_thread_t,
    limits: *mut threadcalc_limits_t,
    limits_size: usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let thread = unsafe { input(thread) }?.read()?;
        let limits = unsafe { SizedOutput::new(limits, limits_size) }?;
        limits.write(threadcalc_limits_t::of(&thread.limits()?));
        Ok(())
    })
}
