//! How the tap is held: clearance above the hole, and how far a holder has to give.

use threadcalc_core::{Error, Field, Holder, HolderClearance, HolderTravel, holder_clearance, holder_travel};

use crate::codes::threadcalc_status;
use crate::memory::{Output, SizedOutput, input};
use crate::number::given;
use crate::status::{guard, required, threadcalc_error_t};
use crate::tap_choices::threadcalc_holder;
use crate::types::{threadcalc_ratio_t, threadcalc_thread_t};

/// Room from the R plane to the face by holder; exact. Frozen.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct threadcalc_holder_clearance_t {
    /// The least in use, in mm.
    pub least_mm: threadcalc_ratio_t,
    /// What is always enough for the holder, though not for a slow spindle's ramp, in mm.
    pub ample_mm: threadcalc_ratio_t,
    /// Turns of the spindle over least_mm.
    pub least_turns: threadcalc_ratio_t,
    /// Turns of the spindle over ample_mm.
    pub ample_turns: threadcalc_ratio_t,
}

impl threadcalc_holder_clearance_t {
    fn of(room: &HolderClearance) -> Self {
        Self {
            least_mm: threadcalc_ratio_t::of(room.least_mm),
            ample_mm: threadcalc_ratio_t::of(room.ample_mm),
            least_turns: threadcalc_ratio_t::of(room.least_turns),
            ample_turns: threadcalc_ratio_t::of(room.ample_turns),
        }
    }
}

/// The room from the R plane to the face that is in use. found_size is
/// sizeof(threadcalc_holder_clearance_t).
///
/// Rigid: 2 P to 5 P; the others: 5 P to 10 P or 12 mm, whichever is more, so that the holder centres again.
/// The larger of this and threadcalc_turns_to_speed decides.
/// Errors: missing, unknown-value, overflow, those of threadcalc_thread_write, structure-size.
/// Source: common practice; floating holders as tension and compression ones: a judgement.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_holder_clearance(
    thread: *const threadcalc_thread_t,
    holder: threadcalc_holder,
    found: *mut threadcalc_holder_clearance_t,
    found_size: usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let thread = unsafe { input(thread) }?.read()?;
        let holder = required(holder, Holder::from_number, Field::Holder, Holder::CHOICES)?;
        let place = unsafe { SizedOutput::new(found, found_size) }?;
        place.write(threadcalc_holder_clearance_t::of(&holder_clearance(&thread, holder)?));
        Ok(())
    })
}

/// How far a holder has to give, in mm; exact. Frozen.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct threadcalc_holder_travel_t {
    /// The tap is pulled out of the holder by this much.
    pub extension_mm: threadcalc_ratio_t,
    /// The tap is pushed into the holder by this much.
    pub compression_mm: threadcalc_ratio_t,
}

impl threadcalc_holder_travel_t {
    pub(crate) fn of(travel: &HolderTravel) -> Self {
        Self {
            extension_mm: threadcalc_ratio_t::of(travel.extension_mm),
            compression_mm: threadcalc_ratio_t::of(travel.compression_mm),
        }
    }
}

/// The travel of a holder from the arguments of both calls.
///
/// # Safety
/// As for every input of the library.
unsafe fn travel_of(
    lead_mm: *const threadcalc_ratio_t,
    depth_mm: *const threadcalc_ratio_t,
    underfeed_percent: *const threadcalc_ratio_t,
    over_travel_turns: *const threadcalc_ratio_t,
) -> Result<HolderTravel, Error> {
    let lead = unsafe { given(lead_mm, Field::Lead) }?;
    let depth = unsafe { given(depth_mm, Field::Depth) }?;
    let underfeed = unsafe { given(underfeed_percent, Field::Underfeed) }?;
    let over_travel = unsafe { given(over_travel_turns, Field::OverTravel) }?;
    holder_travel(lead, depth, underfeed, over_travel)
}

/// How far a tension and compression holder has to give in a hole. found_size is
/// sizeof(threadcalc_holder_travel_t).
///
/// At depth: under-feed percent / 100 x depth, behind the tap an extension, before it a compression; at the
/// stop: the same + over-travel turns x lead, for the spindle coasts on while the axis stands. depth_mm:
/// from the face to the end of the stroke. A negative under-feed is a feed above the lead, which presses the
/// tap into the holder.
/// Errors: missing, out-of-range (lead 0 to 1 000 mm, depth 0 to 10 000 mm, under-feed -20 to 20 %,
/// over-travel 0 to 20 turns), overflow, structure-size.
/// Source: derived.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_holder_travel(
    lead_mm: *const threadcalc_ratio_t,
    depth_mm: *const threadcalc_ratio_t,
    underfeed_percent: *const threadcalc_ratio_t,
    over_travel_turns: *const threadcalc_ratio_t,
    found: *mut threadcalc_holder_travel_t,
    found_size: usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let place = unsafe { SizedOutput::new(found, found_size) }?;
        let travel = unsafe { travel_of(lead_mm, depth_mm, underfeed_percent, over_travel_turns) }?;
        place.write(threadcalc_holder_travel_t::of(&travel));
        Ok(())
    })
}

/// Whether a holder with this much extension and compression has room for what threadcalc_holder_travel
/// finds: fits is 1 or 0.
///
/// Errors: those of threadcalc_holder_travel; missing and out-of-range (denominator 0) also for the room.
/// Source: derived.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_holder_fits(
    lead_mm: *const threadcalc_ratio_t,
    depth_mm: *const threadcalc_ratio_t,
    underfeed_percent: *const threadcalc_ratio_t,
    over_travel_turns: *const threadcalc_ratio_t,
    extension_mm: *const threadcalc_ratio_t,
    compression_mm: *const threadcalc_ratio_t,
    fits: *mut i32,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let place = unsafe { Output::new(fits) }?;
        let travel = unsafe { travel_of(lead_mm, depth_mm, underfeed_percent, over_travel_turns) }?;
        let extension = unsafe { given(extension_mm, Field::HolderExtension) }?;
        let compression = unsafe { given(compression_mm, Field::HolderCompression) }?;
        place.write(i32::from(travel.fits(extension, compression)));
        Ok(())
    })
}
