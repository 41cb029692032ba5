//! What a check gives: tapped holes and findings.

use core::ffi::c_char;

use threadcalc_core::nc::{Event, FindingNumber, ProgramFinding, TappedHole, ThreadSource};
use threadcalc_core::{FeedMode, Hand, Unit};

use crate::choices::{threadcalc_hand, threadcalc_mode, threadcalc_unit};
use crate::finding_ids::threadcalc_severity;
use crate::memory::{Zeroed, display_text, fill, fixed_text, or_zeros};
use crate::nc_choices::{
    THREADCALC_EVENT_FINDING, THREADCALC_EVENT_HOLE, threadcalc_event, threadcalc_evidence, threadcalc_program_number,
    threadcalc_thread_source,
};
use crate::nc_finding_ids::threadcalc_program_finding;
use crate::types::{threadcalc_ratio_t, threadcalc_thread_t};

/// A number of a finding: a double, or a short text where text is not empty. Frozen.
#[repr(C)]
#[derive(Clone, Copy, Default)]
pub struct threadcalc_program_number_t {
    /// What it is.
    pub key: threadcalc_program_number,
    /// 0.
    pub reserved: i32,
    /// The number, in the unit that the key names; 0 where there is a text.
    pub value: f64,
    /// A letter or a hand, "R", "LH"; else empty.
    pub text: [c_char; 16],
}

/// A line that a finding rests on. Frozen.
#[repr(C)]
#[derive(Clone, Copy, Default)]
pub struct threadcalc_evidence_t {
    /// What the line did.
    pub kind: threadcalc_evidence,
    /// The line, from 1; 0: the control's own default or an input of the check.
    pub line: u32,
}

/// A tapped hole or a finding. New members are added at the end only; those of the other kind are 0.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct threadcalc_program_event_t {
    /// Hole, finding or nothing.
    pub kind: threadcalc_event,
    /// The line, from 1.
    pub line: u32,
    /// The number of the program that the line is in; -1 if it has none.
    pub program: i64,
    /// The tool in the spindle, T; -1 if it is not known.
    pub tool: i64,
    /// Which of the program's tapping blocks it is or speaks of, from 1; 0: none.
    pub hole: u32,
    /// Of a hole: how many holes, one behind the other.
    pub count: u32,
    /// The thread that is expected; all zeros if nobody names one.
    pub thread: threadcalc_thread_t,
    /// Of a hole: who names the thread; 0: nobody.
    pub source: threadcalc_thread_source,
    /// Of a hole: the hand that is cut; 0 if it depends on the control.
    pub hand: threadcalc_hand,
    /// Of a hole: the lead that is cut, in mm; 0/0 if it cannot be computed.
    pub lead_mm: threadcalc_ratio_t,
    /// Of a hole: S in turns per minute; 0/0 if it is not known.
    pub speed_rpm: threadcalc_ratio_t,
    /// Of a hole: F in the program's unit and mode; 0/0 if it is not known.
    pub feed: threadcalc_ratio_t,
    /// Of a hole: from the face to the tap's end, in mm; 0/0 if it is not known.
    pub depth_mm: threadcalc_ratio_t,
    /// Of a finding: what it is.
    pub id: threadcalc_program_finding,
    /// Of a finding: how bad it is.
    pub severity: threadcalc_severity,
    /// Of a finding: where in the line it begins, in bytes from 1.
    pub column: u32,
    /// Of a finding: the column behind its end.
    pub end_column: u32,
    /// Of a finding: 0 if it rests on something assumed, else 1.
    pub is_certain: i32,
    /// Of a finding: how many numbers it carries.
    pub number_count: i32,
    /// Of a finding: how many lines it rests on.
    pub evidence_count: i32,
    /// Of a finding: how many calls lead to the line, at most 4 of which are told.
    pub call_count: i32,
    /// The numbers.
    pub numbers: [threadcalc_program_number_t; 12],
    /// The lines that it rests on.
    pub evidence: [threadcalc_evidence_t; 8],
    /// Lines of the calls that lead to the line, the outermost first.
    pub calls: [u32; 4],
    /// What to write instead; may be empty.
    pub suggestion: [c_char; 56],
    /// Which reading of an unknown fact it holds under; may be empty.
    pub reading: [c_char; 96],
    /// What will happen, in words.
    pub message: [c_char; 256],
    /// Of a finding: 1 if the suggestion takes the place of what stands from column to end_column; else it is to be
    /// added, or stands for a word of another block.
    pub replaces: i32,
    /// Unused, 0.
    pub reserved: i32,
    /// Of a hole: where it is in the program's X, in mm; of several the last one; 0/0 if it is not known.
    pub x_mm: threadcalc_ratio_t,
    /// Of a hole: the same in Y.
    pub y_mm: threadcalc_ratio_t,
    /// Of a hole: the unit that the program is in; 0 if it does not say.
    pub unit: threadcalc_unit,
    /// Of a hole: the feed mode that holds; 0 if the program does not say.
    pub feed_mode: threadcalc_mode,
    /// Of a hole: the work offset that both are counted from, "G54", "G54.1 P2".
    pub work_offset: [c_char; 24],
}

// SAFETY: integers, doubles and arrays of these.
unsafe impl Zeroed for threadcalc_program_event_t {}

impl threadcalc_program_event_t {
    pub(crate) fn of_option(event: Option<&Event>) -> Self {
        match event {
            Some(Event::Hole(hole)) => Self::of_hole(hole),
            Some(Event::Finding(finding)) => Self::of_finding(finding),
            None => or_zeros(None),
        }
    }

    fn of_hole(hole: &TappedHole) -> Self {
        Self {
            kind: THREADCALC_EVENT_HOLE,
            line: hole.line,
            program: number_of(hole.program),
            tool: number_of(hole.tool.map(u64::from)),
            hole: hole.number,
            count: hole.count,
            thread: hole.thread.as_ref().map_or_else(threadcalc_thread_t::default, threadcalc_thread_t::of),
            source: hole.source.map_or(0, ThreadSource::number),
            hand: hole.hand.map_or(0, Hand::number),
            lead_mm: threadcalc_ratio_t::of_option(hole.lead_mm),
            speed_rpm: threadcalc_ratio_t::of_option(hole.speed_rpm),
            feed: threadcalc_ratio_t::of_option(hole.feed),
            depth_mm: threadcalc_ratio_t::of_option(hole.depth_mm),
            x_mm: threadcalc_ratio_t::of_option(hole.x_mm),
            y_mm: threadcalc_ratio_t::of_option(hole.y_mm),
            unit: hole.unit.map_or(0, Unit::number),
            feed_mode: hole.feed_mode.map_or(0, FeedMode::number),
            work_offset: display_text(hole.work_offset),
            ..or_zeros(None)
        }
    }

    fn of_finding(finding: &ProgramFinding) -> Self {
        let (numbers, number_count) = fill(
            [threadcalc_program_number_t::default(); 12],
            finding.numbers().map(|(key, number)| {
                let (value, text) = match number {
                    FindingNumber::Double(value) => (value, ""),
                    FindingNumber::Text(text) => (0.0, text),
                };
                threadcalc_program_number_t { key: key.number(), reserved: 0, value, text: fixed_text(text) }
            }),
        );
        let (evidence, evidence_count) = fill(
            [threadcalc_evidence_t::default(); 8],
            finding.evidence().map(|line| threadcalc_evidence_t { kind: line.kind.number(), line: line.line }),
        );
        let (calls, call_count) = fill([0; 4], finding.call_path());
        Self {
            kind: THREADCALC_EVENT_FINDING,
            line: finding.line(),
            program: number_of(finding.program()),
            tool: number_of(finding.tool().map(u64::from)),
            hole: finding.hole().unwrap_or(0),
            thread: finding.thread().map_or_else(threadcalc_thread_t::default, threadcalc_thread_t::of),
            id: finding.id().number(),
            severity: finding.severity().number(),
            column: finding.column(),
            end_column: finding.end_column(),
            is_certain: i32::from(finding.certain()),
            number_count,
            evidence_count,
            call_count,
            numbers,
            evidence,
            calls,
            suggestion: fixed_text(finding.suggestion()),
            reading: fixed_text(finding.reading()),
            message: display_text(finding.message()),
            replaces: i32::from(finding.replaces()),
            ..or_zeros(None)
        }
    }
}

/// A number from 0, or -1 for none.
fn number_of(number: Option<u64>) -> i64 {
    number.map_or(-1, |number| i64::try_from(number).unwrap_or(i64::MAX))
}
