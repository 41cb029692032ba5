//! Which gauges to fetch, how far NOT GO may enter, and measurement over wires.

use core::ffi::c_char;

use threadcalc_core::{Field, Gauge, Gauges, NotGoRule, best_wire_mm, gauges, not_go_rule, over_wires};

use crate::choices::threadcalc_hand;
use crate::codes::threadcalc_status;
use crate::memory::{Output, SizedOutput, fill, fixed_text, input};
use crate::number::given;
use crate::status::{flag, guard, threadcalc_error_t};
use crate::tap_choices::threadcalc_gauge;
use crate::types::{threadcalc_ratio_t, threadcalc_thread_t};

/// A gauge to fetch, with the product's limits that it stands for; the gauge's own size, with its maker's
/// tolerance and wear, is in the gauge standards. Frozen.
#[repr(C)]
#[derive(Clone, Copy, Default)]
pub struct threadcalc_gauge_t {
    /// What it is.
    pub kind: threadcalc_gauge,
    /// 0.
    pub reserved: i32,
    /// The pitch diameter that it stands for; of a taper gauge, at the gauge plane. 0/0 if there is none, or
    /// if it has not been read.
    pub pitch_diameter_mm: threadcalc_ratio_t,
    /// The major or minor diameter that it stands for; 0/0 as above. A NOT GO thread gauge has relieved ones.
    pub diameter_mm: threadcalc_ratio_t,
}

impl threadcalc_gauge_t {
    fn of(gauge: &Gauge) -> Self {
        Self {
            kind: gauge.kind.number(),
            reserved: 0,
            pitch_diameter_mm: threadcalc_ratio_t::of_option(gauge.pitch_diameter_mm),
            diameter_mm: threadcalc_ratio_t::of_option(gauge.diameter_mm),
        }
    }
}

/// The gauges of a thread. Frozen.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct threadcalc_gauges_t {
    /// How many of the gauges there are.
    pub gauge_count: i32,
    /// Left: left-hand gauges, turned anticlockwise.
    pub hand: threadcalc_hand,
    /// 1 if the thread has no class and the standard's medium one was taken.
    pub class_assumed: i32,
    /// 0.
    pub reserved: i32,
    /// GO before NOT GO, thread gauges before plain ones.
    pub gauges: [threadcalc_gauge_t; 4],
    /// Source of the limits; empty where none have been read.
    pub limits_source: [c_char; 96],
}

impl threadcalc_gauges_t {
    pub(crate) fn of(set: &Gauges) -> Self {
        let (gauges, gauge_count) = fill([threadcalc_gauge_t::default(); 4], set.iter().map(threadcalc_gauge_t::of));
        Self {
            gauge_count,
            hand: set.hand.number(),
            class_assumed: i32::from(set.class_assumed),
            reserved: 0,
            gauges,
            limits_source: fixed_text(set.limits_source.unwrap_or_default()),
        }
    }
}

/// Which gauges to fetch for a thread, with the limits they stand for. found_size is
/// sizeof(threadcalc_gauges_t).
///
/// Hole: GO plug (smallest pitch and major diameter), NOT GO plug (largest pitch diameter), GO and NOT GO
/// plain plug (smallest and largest minor diameter). Screw: GO ring (largest pitch and minor diameter), NOT GO
/// ring (smallest pitch diameter), GO and NOT GO plain ring or snap (largest and smallest major diameter).
/// Taper: one plug or ring, read by its turns. A thread without a side is taken as a hole. A size is 0/0 where
/// the standard's limit has not been read; the gauge is to be fetched all the same.
/// Errors: those of threadcalc_thread_write, overflow, structure-size.
/// Source: ISO 1502 and ASME B1.2 for what a gauge checks, from memory; the limits' own sources.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_gauges(
    thread: *const threadcalc_thread_t,
    found: *mut threadcalc_gauges_t,
    found_size: usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let thread = unsafe { input(thread) }?.read()?;
        let place = unsafe { SizedOutput::new(found, found_size) }?;
        place.write(threadcalc_gauges_t::of(&gauges(&thread)?));
        Ok(())
    })
}

/// How far a NOT GO thread gauge may go. Frozen.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct threadcalc_not_go_rule_t {
    /// The most turns, by hand and without force, from either end.
    pub most_turns: i32,
    /// The standard that says so.
    pub standard: [c_char; 32],
    /// What it says besides.
    pub remark: [c_char; 92],
}

impl threadcalc_not_go_rule_t {
    pub(crate) fn of(rule: &NotGoRule) -> Self {
        Self {
            most_turns: i32::from(rule.most_turns),
            standard: fixed_text(rule.standard),
            remark: fixed_text(rule.remark),
        }
    }
}

/// How far the NOT GO thread gauge of a thread may go. rule_size is sizeof(threadcalc_not_go_rule_t).
///
/// Errors: does-not-apply (taper thread), not-sourced (another thread than M, UN, UNR and UNJ, the
/// hole of a wire insert), those of threadcalc_thread_write,
/// structure-size.
/// Source: ISO 1502:1996 and ASME B1.2-1983 as gauge makers quote them; the remark on ISO 1502 from memory.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_not_go_rule(
    thread: *const threadcalc_thread_t,
    rule: *mut threadcalc_not_go_rule_t,
    rule_size: usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let thread = unsafe { input(thread) }?.read()?;
        let place = unsafe { SizedOutput::new(rule, rule_size) }?;
        place.write(threadcalc_not_go_rule_t::of(&not_go_rule(&thread)?));
        Ok(())
    })
}

/// The wire that touches the flanks at the pitch line, in mm: P / (2 cos a), a the angle of a flank; 60
/// degrees: 0.577350 P, 55 degrees: 0.563691 P.
///
/// Errors: does-not-apply (taper thread, unequal flanks), those of threadcalc_thread_write.
/// Source: FED-STD-H28, from memory; a handbook page prints 0.57735 P.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_best_wire_mm(
    thread: *const threadcalc_thread_t,
    wire_mm: *mut f64,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let thread = unsafe { input(thread) }?.read()?;
        let place = unsafe { Output::new(wire_mm) }?;
        place.write(best_wire_mm(&thread)?);
        Ok(())
    })
}

/// The measurement over three wires, in mm: E - (P/2) cot a + W (1 + cosec a), E the pitch diameter, W the
/// wire, a the angle of a flank.
///
/// lead_angle is 1 to add (W/2) tan2(lead angle) cos a cot a for the tilt of the wires, else 0; most shop
/// tables leave it out. The flattening of wires and flanks under the measuring force is in neither.
/// Errors: out-of-range for a wire that does not rest on the flanks (60 degrees: 0.56 to 0.90 P; 55 degrees:
/// 0.506 to 0.853 P) or a pitch diameter that is not the thread's (major diameter - 2 P to + P); missing,
/// unknown-value (lead_angle), does-not-apply (taper thread, unequal flanks), those of threadcalc_thread_write.
/// Source: FED-STD-H28 from memory; without its last term as a model engineers' handbook prints it, with its
/// range of wires for 60 degrees; the range for 55 degrees from memory.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_over_wires(
    thread: *const threadcalc_thread_t,
    wire_mm: *const threadcalc_ratio_t,
    pitch_diameter_mm: *const threadcalc_ratio_t,
    lead_angle: i32,
    over_wires_mm: *mut f64,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let thread = unsafe { input(thread) }?.read()?;
        let wire = unsafe { given(wire_mm, Field::Wire) }?;
        let diameter = unsafe { given(pitch_diameter_mm, Field::PitchDiameter) }?;
        let tilted = flag(lead_angle, Field::LeadAngle)?;
        let place = unsafe { Output::new(over_wires_mm) }?;
        place.write(over_wires(&thread, wire, diameter, tilted)?);
        Ok(())
    })
}
