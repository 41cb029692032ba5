//! From what a gauge says to what to do next.

use core::ffi::c_char;

use threadcalc_core::{
    Field, GaugeReading, GaugeResult, Move, NextMove, RE_ENTRY_RULE, ReEntry, next_move, re_entry_r, trimmed_depth_mm,
};

use crate::codes::threadcalc_status;
use crate::memory::{Output, SizedOutput, fill, input};
use crate::names::c_text;
use crate::number::{given, perhaps};
use crate::status::{guard, required, threadcalc_error_t};
use crate::tap_choices::{threadcalc_gauge_reading, threadcalc_move, threadcalc_verdict};
use crate::types::{threadcalc_ratio_t, threadcalc_thread_t};

/// What to do next. Frozen.
#[repr(C)]
#[derive(Clone, Copy, Default)]
pub struct threadcalc_next_move_t {
    /// What becomes of this hole.
    pub verdict: threadcalc_verdict,
    /// How many of the moves there are.
    pub move_count: i32,
    /// The moves, first things first.
    pub moves: [threadcalc_move; 6],
    /// How much deeper the tap has to go, exact; negative: less deep, for the next hole. 0/0 where depth is
    /// not the question.
    pub deeper_mm: threadcalc_ratio_t,
}

impl threadcalc_next_move_t {
    fn of(next: &NextMove) -> Self {
        let (moves, move_count) = fill([0; 6], next.moves().map(Move::number));
        Self {
            verdict: next.verdict.number(),
            move_count,
            moves,
            deeper_mm: threadcalc_ratio_t::of_option(next.deeper_mm),
        }
    }
}

/// What to do after gauging a tapped hole. next_size is sizeof(threadcalc_next_move_t).
///
/// turns: until the gauge stops; of a taper plug turns from flush, above 0 outside the hole, where the thread
/// is small. NULL or 0/0 for a GO that goes to the full depth. required_turns: the depth of full thread that
/// is asked for over the lead; needed for a GO that stops, not looked at otherwise. The verdict is by this gauge.
/// GO to full depth: good. GO stops below 1 turn: it does not start; names, burr, chips, new tap, larger tap.
/// GO stops later: clean, tap deeper by the missing turns x lead, new tap, larger tap. NOT GO beyond its rule:
/// stop, feed, axial force, cutting, smaller tap for the next hole; this one is too large. Taper plug beyond
/// its turns: out, tap deeper with the same R; in, the next hole less deep, this one is too large.
/// Errors: missing, unknown-value (result), contradiction (turns of a GO that goes to the full depth),
/// does-not-apply (external thread, a gauge of another kind of thread), not-sourced (NOT GO where
/// threadcalc_not_go_rule has none), out-of-range (turns outside 0 to 1000, taper plug -20 to 20), overflow, those of
/// threadcalc_thread_write, structure-size.
/// Source: common practice; how far NOT GO may enter: threadcalc_not_go_rule; taper threads: their gauge's
/// turns.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_next_move(
    thread: *const threadcalc_thread_t,
    result: threadcalc_gauge_reading,
    turns: *const threadcalc_ratio_t,
    required_turns: *const threadcalc_ratio_t,
    next: *mut threadcalc_next_move_t,
    next_size: usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let thread = unsafe { input(thread) }?.read()?;
        let reading = required(result, GaugeReading::from_number, Field::GaugeReading, GaugeReading::CHOICES)?;
        let turns = unsafe { perhaps(turns, Field::Turns) }?;
        let asked = unsafe { perhaps(required_turns, Field::Turns) }?;
        let place = unsafe { SizedOutput::new(next, next_size) }?;
        let found = next_move(&thread, asked, GaugeResult::new(reading, turns)?)?;
        place.write(threadcalc_next_move_t::of(&found));
        Ok(())
    })
}

/// The depth that brings a taper plug flush, with the same R, exact: depth + stand-off turns x lead.
///
/// depth_mm is the tapping depth of the program, below the face. stand_off_turns, -20 to 20: above 0 the plug
/// stands out and the thread is small; below 0 it sinks in, and the new depth is for the next hole.
/// Errors: missing, does-not-apply (straight thread), out-of-range (a depth outside 0 to 10000 mm, before or
/// after), overflow, those of threadcalc_thread_write.
/// Source: derived.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_trimmed_depth_mm(
    thread: *const threadcalc_thread_t,
    depth_mm: *const threadcalc_ratio_t,
    stand_off_turns: *const threadcalc_ratio_t,
    new_depth_mm: *mut threadcalc_ratio_t,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let thread = unsafe { input(thread) }?.read()?;
        let depth = unsafe { given(depth_mm, Field::Depth) }?;
        let turns = unsafe { given(stand_off_turns, Field::StandOff) }?;
        let place = unsafe { Output::new(new_depth_mm) }?;
        place.write(threadcalc_ratio_t::of(trimmed_depth_mm(&thread, depth, turns)?));
        Ok(())
    })
}

/// An R plane from which the tap finds the thread again. Frozen.
#[repr(C)]
#[derive(Clone, Copy, Default)]
pub struct threadcalc_re_entry_t {
    /// The R plane in mm.
    pub r_mm: threadcalc_ratio_t,
    /// By how many pitches it has moved; above 0 away from the part.
    pub pitches: i64,
}

impl threadcalc_re_entry_t {
    fn of(again: &ReEntry) -> Self {
        Self { r_mm: threadcalc_ratio_t::of(again.r_mm), pitches: again.pitches }
    }
}

/// The R plane nearest to a wanted one that lies whole pitches from the R that the hole was tapped from; ties
/// go away from the part. again_size is sizeof(threadcalc_re_entry_t).
///
/// Both are Z of one work offset, and grow away from the part. The rest of threadcalc_re_entry_rule has to hold
/// as well. With several starts a whole pitch finds the next start's groove, which is as good.
/// Errors: missing, out-of-range (a pitch outside 0 to 1000 mm, planes beyond 10000 mm either way), overflow,
/// structure-size.
/// Source: derived.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_re_entry_r(
    r_mm: *const threadcalc_ratio_t,
    pitch_mm: *const threadcalc_ratio_t,
    wanted_mm: *const threadcalc_ratio_t,
    again: *mut threadcalc_re_entry_t,
    again_size: usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let r = unsafe { given(r_mm, Field::RPlane) }?;
        let pitch = unsafe { given(pitch_mm, Field::Pitch) }?;
        let wanted = unsafe { given(wanted_mm, Field::RPlane) }?;
        let place = unsafe { SizedOutput::new(again, again_size) }?;
        place.write(threadcalc_re_entry_t::of(&re_entry_r(r, pitch, wanted)?));
        Ok(())
    })
}

/// What has to hold when a tap enters a tapped hole again, in words. Never NULL.
#[unsafe(no_mangle)]
pub extern "C" fn threadcalc_re_entry_rule() -> *const c_char {
    static RULE: [u8; 256] = c_text(RE_ENTRY_RULE);
    RULE.as_ptr().cast()
}
