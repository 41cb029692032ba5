//! The whole hole note of a drawing.

use threadcalc_core::{Field, HoleNote, Plating, Sides, Unit, read_hole_note};

use crate::choices::{threadcalc_plating, threadcalc_sides, threadcalc_unit};
use crate::codes::threadcalc_status;
use crate::memory::{SizedOutput, bytes, fill};
use crate::status::{guard, optional, threadcalc_error_t};
use crate::types::{offset, threadcalc_finding_t, threadcalc_ratio_t, threadcalc_thread_t};

/// A hole note as read; lengths in mm, exact, 0/0 where the note says none. New members are added at the
/// end only.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct threadcalc_hole_note_t {
    /// The thread; all zeros without one.
    pub thread: threadcalc_thread_t,
    /// Where the thread's callout begins in the note, in bytes; 0 without a thread.
    pub thread_at: i64,
    /// How many bytes of the note the thread's callout is; 0 without a thread.
    pub thread_length: i64,
    /// Depth of full thread.
    pub thread_depth_mm: threadcalc_ratio_t,
    /// Diameter of the drilled hole.
    pub drill_mm: threadcalc_ratio_t,
    /// Depth of the drilled hole.
    pub drill_depth_mm: threadcalc_ratio_t,
    /// Diameter of the countersink.
    pub countersink_mm: threadcalc_ratio_t,
    /// Included angle of the countersink in degrees.
    pub countersink_angle_deg: threadcalc_ratio_t,
    /// Diameter of the counterbore or spotface.
    pub counterbore_mm: threadcalc_ratio_t,
    /// Depth of the counterbore or spotface.
    pub counterbore_depth_mm: threadcalc_ratio_t,
    /// Diameter of the circle that the holes lie on.
    pub bolt_circle_mm: threadcalc_ratio_t,
    /// How many holes; 0 where the note does not say.
    pub count: u32,
    /// 1 if the thread goes through.
    pub thread_through: i32,
    /// 1 if the drilled hole goes through.
    pub drill_through: i32,
    /// 1 if the hole is countersunk, with sizes or without.
    pub has_countersink: i32,
    /// 1 if the hole is counterbored or spotfaced, with sizes or without.
    pub has_counterbore: i32,
    /// 1 if the counterbore is a spotface: only as deep as it takes to clean up.
    pub is_spotface: i32,
    /// 1 if the holes are equally spaced.
    pub equally_spaced: i32,
    /// Near, far or both sides.
    pub sides: threadcalc_sides,
    /// Whether the thread's limits are meant after or before plating.
    pub plating: threadcalc_plating,
    /// How many of the findings there are.
    pub finding_count: i32,
    /// What was assumed, what is doubtful, and what was not understood.
    pub findings: [threadcalc_finding_t; 12],
}

impl threadcalc_hole_note_t {
    fn of(note: &HoleNote) -> Self {
        let exact = threadcalc_ratio_t::of_option;
        let (findings, finding_count) =
            fill([threadcalc_finding_t::NONE; 12], note.findings().iter().map(threadcalc_finding_t::of));
        Self {
            thread: note.thread().as_ref().map_or_else(threadcalc_thread_t::default, threadcalc_thread_t::of),
            thread_at: offset(note.thread_at()),
            thread_length: offset(note.thread_length()),
            thread_depth_mm: exact(note.thread_depth_mm()),
            drill_mm: exact(note.drill_mm()),
            drill_depth_mm: exact(note.drill_depth_mm()),
            countersink_mm: exact(note.countersink_mm()),
            countersink_angle_deg: exact(note.countersink_angle_deg()),
            counterbore_mm: exact(note.counterbore_mm()),
            counterbore_depth_mm: exact(note.counterbore_depth_mm()),
            bolt_circle_mm: exact(note.bolt_circle_mm()),
            count: note.count().unwrap_or(0),
            thread_through: i32::from(note.thread_through()),
            drill_through: i32::from(note.drill_through()),
            has_countersink: i32::from(note.has_countersink()),
            has_counterbore: i32::from(note.has_counterbore()),
            is_spotface: i32::from(note.is_spotface()),
            equally_spaced: i32::from(note.equally_spaced()),
            sides: note.sides().map_or(0, Sides::number),
            plating: note.plating().map_or(0, Plating::number),
            finding_count,
            findings,
        }
    }
}

/// Reads the whole hole note of a drawing, of one line or several: "4X M8x1.25-6H 16 DEEP", "1/4-20 UNC-2B
/// THRU, #7 DRILL", the symbols of depth, countersink and counterbore. note_size is
/// sizeof(threadcalc_hole_note_t). UTF-8, or lone Latin-1 bytes; offsets are bytes of the text.
///
/// unit is the drawing's: 1 mm, 2 inch, 0 not given. Without it lengths that bear no mark are in the unit of
/// the thread's standard, with finding unit-assumed. Words that are not understood are findings not-read
/// with byte and length.
/// Errors: those of threadcalc_thread_read for the thread of the note; empty, too-long (400 bytes),
/// unreadable (neither thread nor hole), missing (a length without a unit in a note without a thread),
/// contradiction (two threads, two values of one thing, through and a depth), out-of-range, unknown-value
/// (unit), structure-size.
/// Source: ISO 129-1 and ASME Y14.5 for the symbols, from memory; common practice for the words.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_read_hole_note(
    text: *const u8,
    length: usize,
    unit: threadcalc_unit,
    note: *mut threadcalc_hole_note_t,
    note_size: usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let text = unsafe { bytes(text, length) }?;
        let unit = optional(unit, Unit::from_number, Field::Unit, Unit::CHOICES)?;
        let place = unsafe { SizedOutput::new(note, note_size) }?;
        place.write(threadcalc_hole_note_t::of(&read_hole_note(text, unit)?));
        Ok(())
    })
}
