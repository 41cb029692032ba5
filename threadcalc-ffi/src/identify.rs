//! Which standard pitch the lead of a program is.

use core::ffi::c_char;

use threadcalc_core::nc::{
    FeedWords, Identification, LEAD_WITHIN, Match, PitchSystem, identify, identify_feed, threads_of_pitch,
};
use threadcalc_core::{Error, FeedMode, Field, Unit};

use crate::choices::{threadcalc_lead_verdict, threadcalc_mode, threadcalc_unit};
use crate::codes::threadcalc_status;
use crate::feed::decimals;
use crate::memory::{Request, SizedOutput, fixed_text, list, request, starts};
use crate::number::{given, perhaps};
use crate::status::{Fault, guard, required, threadcalc_error_t};
use crate::types::{threadcalc_ratio_t, threadcalc_thread_t};

/// Feed and speed of a program, and how they are written. Begin with THREADCALC_FEED_WORDS_INIT.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct threadcalc_feed_words_t {
    /// sizeof(threadcalc_feed_words_t).
    pub size: u32,
    /// Unit of the program. Required.
    pub unit: threadcalc_unit,
    /// Feed per minute or per revolution. Required.
    pub mode: threadcalc_mode,
    /// Starts of the thread as they are declared; 0 is read as 1.
    pub starts: i32,
    /// The feed in the unit of the program, above 0. Required.
    pub feed: threadcalc_ratio_t,
    /// Decimals that the feed is written with, a whole number 0 to 9; 0/0 if that is not known.
    pub feed_decimals: threadcalc_ratio_t,
    /// The most decimals that the control takes in a feed; 0/0 if that is not known.
    pub most_feed_decimals: threadcalc_ratio_t,
    /// The speed in turns per minute, above 0; required per minute, left out per revolution.
    pub rpm: threadcalc_ratio_t,
    /// Decimals that the speed is written with; 0/0 if that is not known.
    pub rpm_decimals: threadcalc_ratio_t,
    /// The most decimals that the control takes in a speed; 0/0 if that is not known.
    pub most_rpm_decimals: threadcalc_ratio_t,
    /// Relative tolerance, 0 to 1/4; 0/0 is 7/2000.
    pub within: threadcalc_ratio_t,
}

// SAFETY: integers only.
unsafe impl Request for threadcalc_feed_words_t {
    const STARTS: &'static [usize] = starts![
        unit,
        mode,
        starts,
        feed,
        feed_decimals,
        most_feed_decimals,
        rpm,
        rpm_decimals,
        most_rpm_decimals,
        within,
    ];
}

/// A standard pitch and how far a lead is from it. Frozen.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct threadcalc_match_t {
    /// The pitch in mm.
    pub pitch_mm: threadcalc_ratio_t,
    /// Its threads per inch; 0/0 for a metric pitch.
    pub tpi: threadcalc_ratio_t,
    /// lead / (pitch x starts) - 1; positive means that the lead is too long.
    pub lead_error: threadcalc_ratio_t,
    /// The pitch in words, "0.8 mm", "32 TPI".
    pub name: [c_char; 16],
    /// 1 if ISO 261 lists it, else 0.
    pub is_metric: i32,
    /// 1 if ASME B1.1 lists it, else 0.
    pub is_unified: i32,
    /// 1 if ISO 228-1 and ISO 7-1 list it, else 0.
    pub is_whitworth_pipe: i32,
    /// 1 if ASME B1.20 lists it, else 0.
    pub is_npt: i32,
    /// 1 if the lead, or one that its rounded words stand for, is within the tolerance; else 0.
    pub is_within: i32,
    /// 1 if the lead is this pitch to one in a million, else 0.
    pub is_exact: i32,
}

impl threadcalc_match_t {
    fn of(near: &Match) -> Self {
        let holds = |system| i32::from(near.systems.holds(system));
        Self {
            pitch_mm: threadcalc_ratio_t::of(near.pitch_mm),
            tpi: threadcalc_ratio_t::of_option(near.tpi),
            lead_error: threadcalc_ratio_t::of(near.lead_error),
            name: fixed_text(&near.to_string()),
            is_metric: holds(PitchSystem::Metric),
            is_unified: holds(PitchSystem::Unified),
            is_whitworth_pipe: holds(PitchSystem::WhitworthPipe),
            is_npt: holds(PitchSystem::Npt),
            is_within: i32::from(near.is_within),
            is_exact: i32::from(near.is_exact()),
        }
    }
}

/// What a lead says of the thread. Frozen.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct threadcalc_identification_t {
    /// Identified, ambiguous or nonstandard.
    pub verdict: threadcalc_lead_verdict,
    /// The starts that were declared.
    pub starts: i32,
    /// The lead in mm.
    pub lead_mm: threadcalc_ratio_t,
    /// The shortest lead in mm that rounded words may stand for; else the lead.
    pub shortest_lead_mm: threadcalc_ratio_t,
    /// The longest lead in mm that rounded words may stand for; else the lead.
    pub longest_lead_mm: threadcalc_ratio_t,
    /// The first four matches with their errors, "0.8 mm (-0.388 %); 32 TPI (+0.397 %)".
    pub text: [c_char; 128],
}

impl threadcalc_identification_t {
    fn of(found: &Identification) -> Self {
        Self {
            verdict: found.verdict().number(),
            starts: i32::from(found.starts()),
            lead_mm: threadcalc_ratio_t::of(found.lead_mm()),
            shortest_lead_mm: threadcalc_ratio_t::of(found.shortest_lead_mm()),
            longest_lead_mm: threadcalc_ratio_t::of(found.longest_lead_mm()),
            text: fixed_text(&found.to_string()),
        }
    }
}

/// Starts as the core counts them.
fn declared(starts: i32) -> i64 {
    if starts == 0 { 1 } else { i64::from(starts) }
}

/// Writes the matches, and with room for all of them the answer.
///
/// # Safety
/// As for every list of the library.
unsafe fn write(
    found: &Identification,
    place: &SizedOutput<threadcalc_identification_t>,
    matches: *mut threadcalc_match_t,
    capacity: usize,
    count: *mut usize,
) -> Result<(), Fault> {
    unsafe { list(|| found.matches().map(|near| threadcalc_match_t::of(&near)), matches, capacity, count) }?;
    place.write(threadcalc_identification_t::of(found));
    Ok(())
}

/// The standard pitches that a lead may be, nearest first and the finer one first on a tie: those within the
/// tolerance; where there is none, or one that another is as near as, the two nearest. There are at most 54.
///
/// lead_mm is above 0 and up to 1000; within is the relative tolerance, 0 to 1/4, and 7/2000 where it is
/// NULL or 0/0; starts are those declared, up to 12, and 1 where it is 0: more are never inferred, and a lead
/// alone never gives a diameter. One pitch within the tolerance is identified, more are ambiguous, and so are
/// two within 0.45 % where the nearest is not within 0.35 %. found_size is
/// sizeof(threadcalc_identification_t). A holder that is under-fed on purpose shortens the lead by more than
/// pitches lie apart: use the declared thread there.
/// Errors: missing, out-of-range, overflow, structure-size, buffer-too-short (count is how many there are).
/// Source: the pitches of ISO 261, ASME B1.1, ISO 228-1, ISO 7-1, ASME B1.20.1 and B1.20.3; derived.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_identify(
    lead_mm: *const threadcalc_ratio_t,
    within: *const threadcalc_ratio_t,
    starts: i32,
    found: *mut threadcalc_identification_t,
    found_size: usize,
    matches: *mut threadcalc_match_t,
    capacity: usize,
    count: *mut usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let lead = unsafe { given(lead_mm, Field::Lead) }?;
        let within = unsafe { perhaps(within, Field::Within) }?.unwrap_or(LEAD_WITHIN);
        let place = unsafe { SizedOutput::new(found, found_size) }?;
        let found = identify(lead, within, declared(starts))?;
        unsafe { write(&found, &place, matches, capacity, count) }
    })
}

fn words_of(words: &threadcalc_feed_words_t) -> Result<FeedWords, Error> {
    let places = |number: threadcalc_ratio_t| number.read(Field::Decimals)?.map(decimals).transpose();
    Ok(FeedWords {
        feed: words.feed.required(Field::Feed)?,
        feed_decimals: places(words.feed_decimals)?,
        most_feed_decimals: places(words.most_feed_decimals)?,
        rpm: words.rpm.read(Field::Rpm)?,
        rpm_decimals: places(words.rpm_decimals)?,
        most_rpm_decimals: places(words.most_rpm_decimals)?,
        unit: required(words.unit, Unit::from_number, Field::Unit, Unit::CHOICES)?,
        mode: required(words.mode, FeedMode::from_number, Field::Mode, FeedMode::CHOICES)?,
    })
}

/// The standard pitches that feed and speed of a program may be, as threadcalc_identify gives them.
///
/// The lead is feed / speed, or the feed itself per revolution. A word that is written with all the decimals
/// that the control takes may be rounded: it stands for everything within half of its last digit, and the
/// tolerance is counted from the nearest of these leads.
/// Errors: missing, unknown-value, contradiction (a speed per revolution, a value with more decimals than are
/// said to be written), out-of-range, overflow, structure-size, unsupported-field, buffer-too-short (count is
/// how many there are).
/// Source: ISO 6983-1 (F with G94 and G95); 1 in = 25.4 mm exactly; derived.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_identify_feed(
    words: *const threadcalc_feed_words_t,
    found: *mut threadcalc_identification_t,
    found_size: usize,
    matches: *mut threadcalc_match_t,
    capacity: usize,
    count: *mut usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let words = unsafe { request(words) }?;
        let place = unsafe { SizedOutput::new(found, found_size) }?;
        let within = words.within.read(Field::Within)?.unwrap_or(LEAD_WITHIN);
        let found = identify_feed(&words_of(&words)?, within, declared(words.starts))?;
        unsafe { write(&found, &place, matches, capacity, count) }
    })
}

/// The standard threads of a pitch and about a diameter, with these starts. There may be none.
///
/// pitch_mm as a match gives it, diameter_mm as a table of tools or a comment gives it: a basic major
/// diameter within 0.0127 mm (0.0005 in) of it is the same. starts 0 is read as 1; pipe threads have one.
/// Errors: missing, out-of-range, overflow, buffer-too-short (count is how many there are).
/// Source: as threadcalc_standard_threads; the room of the diameter is derived from three decimals of an
/// inch.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_threads_of_pitch(
    pitch_mm: *const threadcalc_ratio_t,
    diameter_mm: *const threadcalc_ratio_t,
    starts: i32,
    threads: *mut threadcalc_thread_t,
    capacity: usize,
    count: *mut usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let pitch = unsafe { given(pitch_mm, Field::Pitch) }?;
        let diameter = unsafe { given(diameter_mm, Field::Diameter) }?;
        let found = threads_of_pitch(pitch, diameter, declared(starts))?;
        unsafe { list(|| found.clone().map(|thread| threadcalc_thread_t::of(&thread)), threads, capacity, count) }?;
        Ok(())
    })
}
