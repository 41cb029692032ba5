//! The words of one tapped hole.

use core::ffi::c_char;
use core::mem::offset_of;

use threadcalc_core::{
    Code, Cycle, CycleRequest, Dialect, Error, FeedMode, Field, Finding, Holder, ReturnTo, Thread, Unit, cycle, feed,
};

use crate::choices::{threadcalc_mode, threadcalc_return_to, threadcalc_unit};
use crate::codes::threadcalc_status;
use crate::dialect::{optional_dialect, threadcalc_dialect_t};
use crate::feed::{checked_reserve, decimals};
use crate::memory::{Request, SizedOutput, fill, fixed_text, input, request};
use crate::status::{guard, required, threadcalc_error_t};
use crate::tap_choices::threadcalc_holder;
use crate::types::{threadcalc_finding_t, threadcalc_ratio_t, threadcalc_thread_t};

/// What a tapping cycle is made of: mm, exact. Begin with THREADCALC_CYCLE_REQUEST_INIT.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct threadcalc_cycle_request_t {
    /// sizeof(threadcalc_cycle_request_t).
    pub size: u32,
    /// Unit of the machine. Required.
    pub unit: threadcalc_unit,
    /// Feed per minute or per revolution. Required.
    pub mode: threadcalc_mode,
    /// How the tap is held. Required.
    pub holder: threadcalc_holder,
    /// Where the tap returns to. Required.
    pub return_to: threadcalc_return_to,
    /// 0.
    pub reserved: u32,
    /// Decimals of the feed word, a whole number 0 to 9: {3, 1}. Required.
    pub decimals: threadcalc_ratio_t,
    /// Programmed speed in turns per minute, at most 9 decimals. Required.
    pub rpm: threadcalc_ratio_t,
    /// From the face to the point that the tap's length offset is set on. Required.
    pub depth_mm: threadcalc_ratio_t,
    /// R plane above the face. Required.
    pub r_plane_mm: threadcalc_ratio_t,
    /// The lead that the feed is made for, the thread's if not given; another only in a holder that gives.
    pub feed_lead_mm: threadcalc_ratio_t,
    /// Depth of a peck; left out: in one stroke.
    pub peck_mm: threadcalc_ratio_t,
    /// Wait at the bottom in seconds, 0 to 60; left out: none.
    pub dwell_s: threadcalc_ratio_t,
    /// Speed on the way out over speed on the way in; left out: out as fast as in.
    pub retract_factor: threadcalc_ratio_t,
}

// SAFETY: integers only.
unsafe impl Request for threadcalc_cycle_request_t {
    const STARTS: &'static [usize] = &[
        offset_of!(Self, unit),
        offset_of!(Self, mode),
        offset_of!(Self, holder),
        offset_of!(Self, return_to),
        offset_of!(Self, reserved),
        offset_of!(Self, decimals),
        offset_of!(Self, rpm),
        offset_of!(Self, depth_mm),
        offset_of!(Self, r_plane_mm),
        offset_of!(Self, feed_lead_mm),
        offset_of!(Self, peck_mm),
        offset_of!(Self, dwell_s),
        offset_of!(Self, retract_factor),
    ];
}

impl threadcalc_cycle_request_t {
    fn made(&self, thread: &Thread, dialect: &Dialect) -> Result<Result<Cycle, Finding>, Error> {
        checked_reserve(self.reserved)?;
        let unit = required(self.unit, Unit::from_number, Field::Unit, Unit::CHOICES)?;
        let mode = required(self.mode, FeedMode::from_number, Field::Mode, FeedMode::CHOICES)?;
        let places = decimals(self.decimals.required(Field::Decimals)?)?;
        let rpm = self.rpm.required(Field::Rpm)?;
        let lead = self.feed_lead_mm.read(Field::Lead)?.unwrap_or(thread.lead_mm());
        let speed = Some(rpm).filter(|_| mode == FeedMode::PerMinute);
        cycle(&CycleRequest {
            dialect,
            thread,
            feed: &feed(lead, speed, unit, mode, places)?,
            rpm,
            depth_mm: self.depth_mm.required(Field::Depth)?,
            r_plane_mm: self.r_plane_mm.required(Field::RPlane)?,
            holder: required(self.holder, Holder::from_number, Field::Holder, Holder::CHOICES)?,
            peck_mm: self.peck_mm.read(Field::Peck)?,
            dwell_s: self.dwell_s.read(Field::Dwell)?,
            retract_factor: self.retract_factor.read(Field::RetractFactor)?,
            return_to: required(self.return_to, ReturnTo::from_number, Field::ReturnTo, ReturnTo::CHOICES)?,
        })
    }
}

/// The words of one tapped hole at the place the spindle stands, or why there are none. New members are added
/// at the end only.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct threadcalc_cycle_t {
    /// The finding that says why there are no words; its id is 0 if there are.
    pub refused: threadcalc_finding_t,
    /// How many words there are.
    pub word_count: i32,
    /// How many program lines there are.
    pub block_count: i32,
    /// How many words must be restored.
    pub restore_count: i32,
    /// 0.
    pub reserved: i32,
    /// The words in order.
    pub words: [[c_char; 32]; 20],
    /// The program lines in order, words separated by blanks.
    pub blocks: [[c_char; 160]; 6],
    /// What the next operation must set again: feed mode, F, spindle direction.
    pub restore: [[c_char; 32]; 4],
}

impl threadcalc_cycle_t {
    fn of(made: Result<Cycle, Finding>) -> Self {
        let cycle = made.unwrap_or_default();
        let (words, word_count) = fill([[0; 32]; 20], cycle.words().map(fixed_text));
        let (blocks, block_count) = fill([[0; 160]; 6], cycle.blocks().map(|line| fixed_text(line.as_str())));
        let (restore, restore_count) = fill([[0; 32]; 4], cycle.restore().map(fixed_text));
        let refused = made.err().as_ref().map_or(threadcalc_finding_t::NONE, threadcalc_finding_t::of);
        Self { refused, word_count, block_count, restore_count, reserved: 0, words, blocks, restore }
    }
}

/// The words of one tapped hole. found_size is sizeof(threadcalc_cycle_t).
///
/// The tapped depth is rounded deeper, the R plane higher and a peck shallower, to the dialect's decimals. What
/// the dialect lacks is refused with the finding code-not-on-control; pecks with peck-tapping in a floating
/// holder, and in any that gives if the control needs a code to synchronise.
/// Errors: missing, unknown-value, out-of-range, not-exact, contradiction (the feed is that of another lead, the
/// dialect tells the left hand in two ways, two words would have one letter), feed-rounds-to-zero, overflow,
/// those of threadcalc_thread_write, structure-size, unsupported-field.
/// Source: ISO 6983-1 and NISTIR 6556 (the words); rounding: common practice.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_cycle(
    thread: *const threadcalc_thread_t,
    dialect: *const threadcalc_dialect_t,
    cycle_request: *const threadcalc_cycle_request_t,
    found: *mut threadcalc_cycle_t,
    found_size: usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let thread = unsafe { input(thread) }?.read()?;
        let dialect = unsafe { optional_dialect(dialect) }?.ok_or(Error::new(Code::NullPointer, Field::Pointer))?;
        let asked = unsafe { request(cycle_request) }?;
        let place = unsafe { SizedOutput::new(found, found_size) }?;
        place.write(threadcalc_cycle_t::of(asked.made(&thread, &dialect)?));
        Ok(())
    })
}
