//! Lengths of engagement: groups of metric threads, recommended classes, limits of Unified threads at a length.

use core::ffi::c_char;

use threadcalc_core::{EngagementGroup, EngagementLengths, Field, FitQuality, Side, engagement_group};

use crate::choices::{threadcalc_confidence, threadcalc_side};
use crate::codes::threadcalc_status;
use crate::limits::threadcalc_limits_t;
use crate::memory::{SizedOutput, fixed_text, input, text_out};
use crate::number::given;
use crate::status::{guard, required, threadcalc_error_t};
use crate::tap_choices::{threadcalc_engagement_group_kind, threadcalc_fit_quality};
use crate::types::{threadcalc_ratio_t, threadcalc_thread_t};

/// Lengths of normal engagement of one diameter and pitch in mm, exact, and the group of a length. Frozen.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct threadcalc_engagement_lengths_t {
    /// Normal is longer than this; up to this it is short.
    pub normal_over_mm: threadcalc_ratio_t,
    /// Normal is up to this; more is long.
    pub normal_to_mm: threadcalc_ratio_t,
    /// The group of the length that was asked for.
    pub group: threadcalc_engagement_group_kind,
    /// How sure the lengths are.
    pub confidence: threadcalc_confidence,
    /// Standard, edition and table or rule.
    pub source: [c_char; 96],
}

impl threadcalc_engagement_lengths_t {
    fn of(found: &EngagementLengths) -> Self {
        Self {
            normal_over_mm: threadcalc_ratio_t::of(found.normal_over_mm),
            normal_to_mm: threadcalc_ratio_t::of(found.normal_to_mm),
            group: found.group.number(),
            confidence: found.confidence.number(),
            source: fixed_text(found.source),
        }
    }
}

/// Whether a length of engagement is short, normal or long for a metric thread. found_size is
/// sizeof(threadcalc_engagement_lengths_t).
///
/// The standard's table, and where it has nothing its formula, 2.24 P d^0.2 and 6.7 P d^0.2 with the smallest
/// diameter of the thread's step, to 0.01 mm: the confidence says so. The limits of size of a class are the same
/// for every group: what changes is the class that is recommended, threadcalc_recommended_class.
/// Errors: missing, out-of-range (0 to 10000 mm), does-not-apply (threads other than ISO metric M),
/// not-sourced (outside 1 to 355 mm and pitches of 0.2 to 8 mm), those of threadcalc_thread_write, structure-size.
/// Source: ISO 965-1, table of lengths of engagement; the formula from memory.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_engagement_group(
    thread: *const threadcalc_thread_t,
    length_mm: *const threadcalc_ratio_t,
    found: *mut threadcalc_engagement_lengths_t,
    found_size: usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let thread = unsafe { input(thread) }?.read()?;
        let length = unsafe { given(length_mm, Field::EngagementLength) }?;
        let place = unsafe { SizedOutput::new(found, found_size) }?;
        place.write(threadcalc_engagement_lengths_t::of(&engagement_group(&thread, length)?));
        Ok(())
    })
}

/// The class of tolerance of metric threads that is recommended for a group of engagement: position H inside, h for
/// fine and g for other external threads; the empty text where there is none (short and coarse). At most 5 bytes.
///
/// Up to 1.4 mm the medium class of normal engagement is 5H and 6h.
/// Errors: missing, unknown-value, buffer-too-short.
/// Source: ISO 965-1, recommended classes, from memory; the grades of internal threads as tap makers print them.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_recommended_class(
    side: threadcalc_side,
    group: threadcalc_engagement_group_kind,
    quality: threadcalc_fit_quality,
    text: *mut c_char,
    capacity: usize,
    needed: *mut usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let side = required(side, Side::from_number, Field::Side, Side::CHOICES)?;
        let group = required(group, EngagementGroup::from_number, Field::EngagementGroup, EngagementGroup::CHOICES)?;
        let quality = required(quality, FitQuality::from_number, Field::FitQuality, FitQuality::CHOICES)?;
        let class = group.recommended_class(side, quality).unwrap_or("");
        unsafe { text_out(|sink| sink.display(class), text, capacity, needed) }?;
        Ok(())
    })
}

/// The limits of size of the tolerance class where this much of a Unified thread engages. limits_size is
/// sizeof(threadcalc_limits_t).
///
/// The tolerance of the pitch diameter counts with the length of engagement LE: 0.0015 D^(1/3) +
/// 0.0015 sqrt(LE) + 0.015 P^(2/3) of 2A, in inches. The standard's tables, and threadcalc_limits, take LE = D for
/// UNC, UNF, 4-UN, 6-UN and 8-UN and hold up to 1.5 D; for the others LE = 9 P, and they hold from 5 P to 15 P.
/// The source says whether they hold for this length. Only the far limit of the pitch diameter moves; a drawing
/// that wants other limits than those of the tables gives them itself. Threads of other standards have the limits
/// of threadcalc_limits at every length.
/// Errors: missing, out-of-range (0 to 10000 mm), not-sourced for UNJ and for inch holes of wire inserts, those of
/// threadcalc_limits.
/// Source: ASME B1.1-2003, formulas for limits of size; for which lengths the tables hold, and that the allowance
/// stays, from memory.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_limits_at(
    thread: *const threadcalc_thread_t,
    length_mm: *const threadcalc_ratio_t,
    limits: *mut threadcalc_limits_t,
    limits_size: usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let thread = unsafe { input(thread) }?.read()?;
        let length = unsafe { given(length_mm, Field::EngagementLength) }?;
        let place = unsafe { SizedOutput::new(limits, limits_size) }?;
        place.write(threadcalc_limits_t::of(&thread.limits_at(length)?));
        Ok(())
    })
}
