//! The synchronised feed, and the speeds at which it is exact.

use core::ffi::c_char;
use core::mem::offset_of;

use threadcalc_core::{Code, Error, Feed, FeedMode, Field, Length, Unit, exact_speeds, feed, nearest_exact_speeds};

use crate::choices::{threadcalc_mode, threadcalc_unit};
use crate::codes::threadcalc_status;
use crate::memory::{Output, Request, SizedOutput, list_of_at_most, padded_text, request};
use crate::number::{given, perhaps};
use crate::status::{guard, required, threadcalc_error_t};
use crate::types::threadcalc_ratio_t;

/// What a feed is made of. Begin with THREADCALC_FEED_REQUEST_INIT.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct threadcalc_feed_request_t {
    /// sizeof(threadcalc_feed_request_t).
    pub size: u32,
    /// Unit of the machine. Required.
    pub unit: threadcalc_unit,
    /// Feed per minute or per revolution. Required.
    pub mode: threadcalc_mode,
    /// 0.
    pub reserved: u32,
    /// Decimals of the word, a whole number 0 to 9: {3, 1}. Required.
    pub decimals: threadcalc_ratio_t,
    /// Lead in mm, above 0. Required.
    pub lead_mm: threadcalc_ratio_t,
    /// Programmed speed in turns per minute; required per minute, left out per revolution.
    pub rpm: threadcalc_ratio_t,
}

// SAFETY: integers only.
unsafe impl Request for threadcalc_feed_request_t {
    const STARTS: &'static [usize] = &[
        offset_of!(Self, unit),
        offset_of!(Self, mode),
        offset_of!(Self, reserved),
        offset_of!(Self, decimals),
        offset_of!(Self, lead_mm),
        offset_of!(Self, rpm),
    ];
}

/// A synchronised feed. Frozen.
#[repr(C)]
#[derive(Clone, Copy, Default)]
pub struct threadcalc_feed_t {
    /// The word, "F914.4".
    pub word: [c_char; 32],
    /// What a control reads back from the word, in its unit.
    pub value: threadcalc_ratio_t,
    /// The feed before rounding, in the unit of the word.
    pub exact: threadcalc_ratio_t,
    /// value / exact - 1; positive means that the programmed lead is too long.
    pub lead_error: threadcalc_ratio_t,
    /// The lead that will really be cut, in mm. Over a depth the tap is off by lead_error x depth.
    pub lead_cut_mm: threadcalc_ratio_t,
}

impl threadcalc_feed_t {
    pub(crate) fn of(feed: &Feed) -> Result<Self, Error> {
        Ok(Self {
            word: padded_text(feed.word_text()),
            value: threadcalc_ratio_t::of(feed.value()?),
            exact: threadcalc_ratio_t::of(feed.exact()?),
            lead_error: threadcalc_ratio_t::of(feed.lead_error()?),
            lead_cut_mm: threadcalc_ratio_t::of(feed.lead_cut_mm()?),
        })
    }
}

/// Decimals as the core counts them.
pub(crate) fn decimals(number: Length) -> Result<u8, Error> {
    let out_of_range = || Error::new(Code::OutOfRange, Field::Decimals).got(number.to_f64()).within(0.0, 9.0);
    number.whole().and_then(|number| u8::try_from(number).ok()).ok_or_else(out_of_range)
}

/// Reserved members are 0 until a later version gives them a meaning.
pub(crate) fn checked_reserve(reserved: u32) -> Result<(), Error> {
    if reserved == 0 { Ok(()) } else { Err(Error::new(Code::UnsupportedField, Field::Size).hint_text("reserved is 0")) }
}

fn feed_of(request: &threadcalc_feed_request_t) -> Result<Feed, Error> {
    checked_reserve(request.reserved)?;
    let unit = required(request.unit, Unit::from_number, Field::Unit, Unit::CHOICES)?;
    let mode = required(request.mode, FeedMode::from_number, Field::Mode, FeedMode::CHOICES)?;
    let places = request.decimals.required(Field::Decimals)?;
    let lead = request.lead_mm.required(Field::Lead)?;
    feed(lead, request.rpm.read(Field::Rpm)?, unit, mode, decimals(places)?)
}

/// The feed of a lead, rounded once, half to even. feed_size is sizeof(threadcalc_feed_t).
///
/// Errors: missing, unknown-value, contradiction (a speed per revolution), out-of-range,
/// feed-rounds-to-zero, overflow, structure-size, unsupported-field.
/// Source: ISO 6983-1 (F with G94 and G95); 1 in = 25.4 mm exactly.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_feed(
    feed_request: *const threadcalc_feed_request_t,
    feed: *mut threadcalc_feed_t,
    feed_size: usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let asked = unsafe { request(feed_request) }?;
        let place = unsafe { SizedOutput::new(feed, feed_size) }?;
        place.write(threadcalc_feed_t::of(&feed_of(&asked)?)?);
        Ok(())
    })
}

/// Whole speeds within lowest to highest at which a feed word per minute is exact: nearest to rpm
/// first, the lower one first on a tie. There may be none.
///
/// decimals is 0 to 9, lowest is 1 or more, highest 0 is no limit. speeds has room for wanted numbers;
/// count is how many were found.
/// Errors: missing, unknown-value, out-of-range, overflow.
/// Source: derived; the multiples of the denominator of lead x 10^decimals.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_exact_speeds(
    lead_mm: *const threadcalc_ratio_t,
    rpm: *const threadcalc_ratio_t,
    unit: threadcalc_unit,
    decimals: i32,
    lowest: i64,
    highest: i64,
    speeds: *mut i64,
    wanted: usize,
    count: *mut usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let lead = unsafe { given(lead_mm, Field::Lead) }?;
        let rpm = unsafe { given(rpm, Field::Rpm) }?;
        let unit = required(unit, Unit::from_number, Field::Unit, Unit::CHOICES)?;
        let decimals = crate::feed::decimals(Length::integer(i64::from(decimals)))?;
        let highest = (highest != 0).then_some(highest);
        let found = exact_speeds(lead, rpm, unit, decimals, wanted, lowest, highest)?;
        unsafe { list_of_at_most(found, speeds, wanted, count) }?;
        Ok(())
    })
}

/// The whole speeds next below and next above rpm at which a feed word per minute is exact and which the
/// control can hold, from half of rpm to its double and within lowest and highest. 0: there is none.
///
/// decimals is 0 to 9. A control holds the multiples of step; NULL or 0/0: every whole speed. lowest and
/// highest: NULL or 0/0 for no limit.
/// Errors: missing, unknown-value, out-of-range, overflow.
/// Source: derived; the multiples of the denominator of lead x 10^decimals.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_nearest_exact_speeds(
    lead_mm: *const threadcalc_ratio_t,
    rpm: *const threadcalc_ratio_t,
    unit: threadcalc_unit,
    decimals: i32,
    step: *const threadcalc_ratio_t,
    lowest: *const threadcalc_ratio_t,
    highest: *const threadcalc_ratio_t,
    below: *mut i64,
    above: *mut i64,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let lead = unsafe { given(lead_mm, Field::Lead) }?;
        let rpm = unsafe { given(rpm, Field::Rpm) }?;
        let unit = required(unit, Unit::from_number, Field::Unit, Unit::CHOICES)?;
        let decimals = crate::feed::decimals(Length::integer(i64::from(decimals)))?;
        let step = unsafe { perhaps(step, Field::Step) }?.unwrap_or(Length::ONE);
        let (lowest, highest) =
            (unsafe { perhaps(lowest, Field::Lowest) }?, unsafe { perhaps(highest, Field::Highest) }?);
        let (low, high) = (unsafe { Output::new(below) }?, unsafe { Output::new(above) }?);
        let (below, above) = nearest_exact_speeds(lead, rpm, unit, decimals, step, lowest, highest)?;
        low.write(below.unwrap_or(0));
        high.write(above.unwrap_or(0));
        Ok(())
    })
}
