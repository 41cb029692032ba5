//! How the tap is held: clearance above the hole, and how far a holder has to give.

use super::{MOST_LEAD, MOST_TRAVEL};
use crate::error::{Code, Error, Field};
use crate::length::{Length, Ratio};
use crate::named::named;
use crate::range::{above_zero, zero_or_more};
use crate::thread::Thread;

named! {
    /// How the tap is held.
    pub enum Holder {
        /// No give along the axis; the cycle is synchronised.
        Rigid = 1 "rigid",
        /// Gives both ways along the axis, against springs.
        TensionCompression = 2 "tension_compression",
        /// Gives along the axis and sideways.
        Floating = 3 "floating",
    }
}

/// Room from the R plane to the face by holder.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct HolderClearance {
    /// The least in use.
    pub least_mm: Length,
    /// What is always enough for the holder, though not for a slow spindle's ramp.
    pub ample_mm: Length,
    /// Turns of the spindle over `least_mm`.
    pub least_turns: Ratio,
    /// Turns of the spindle over `ample_mm`.
    pub ample_turns: Ratio,
}

/// The room from the R plane to the face that is in use.
///
/// ```text
/// rigid                2 P     to  5 P
/// the others           5 P     to  10 P or 12 mm, whichever is more, so that the holder centres again
/// ```
///
/// For the turns that the spindle needs to reach its speed see
/// [`turns_to_speed`](crate::turns_to_speed); the larger of the two decides.
///
/// # Errors
/// [`Code::Overflow`].
///
/// # Example
/// ```
/// use threadcalc_core::{Holder, Thread, holder_clearance};
///
/// let room = holder_clearance(&Thread::read(b"M8")?, Holder::TensionCompression)?;
/// assert_eq!((room.least_mm.to_string(), room.ample_mm.to_string()), ("6.25".into(), "12.5".into()));
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// Common practice; floating holders as tension and compression ones: a judgement.
pub fn holder_clearance(thread: &Thread, holder: Holder) -> Result<HolderClearance, Error> {
    let pitches = |count: i64| thread.pitch_mm().times(Length::integer(count));
    let least = least_clearance_mm(thread, holder)?;
    let ample = match holder {
        Holder::Rigid => pitches(5)?,
        Holder::TensionCompression | Holder::Floating => pitches(10)?.max(Length::integer(12)),
    };
    Ok(HolderClearance {
        least_mm: least,
        ample_mm: ample,
        least_turns: least.over(thread.lead_mm())?,
        ample_turns: ample.over(thread.lead_mm())?,
    })
}

/// The least room alone.
pub(crate) fn least_clearance_mm(thread: &Thread, holder: Holder) -> Result<Length, Error> {
    let pitches = match holder {
        Holder::Rigid => 2,
        Holder::TensionCompression | Holder::Floating => 5,
    };
    thread.pitch_mm().times(Length::integer(pitches))
}

/// How far a holder has to give.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct HolderTravel {
    /// The tap is pulled out of the holder by this much.
    pub extension_mm: Length,
    /// The tap is pushed into the holder by this much.
    pub compression_mm: Length,
}

impl HolderTravel {
    /// Whether a holder with this much extension and compression has room for it.
    #[must_use]
    pub fn fits(&self, extension_mm: Length, compression_mm: Length) -> bool {
        self.extension_mm <= extension_mm && self.compression_mm <= compression_mm
    }
}

/// How far a tension and compression holder has to give in a hole.
///
/// ```text
/// at depth     under-feed percent / 100 × depth        behind the tap: extension; before it: compression
/// at the stop  the same + over-travel turns × lead     the spindle coasts on, the axis stands
/// ```
///
/// `depth_mm`: from the face, where the tap takes hold, to the end of the stroke. A negative under-feed is
/// a feed above the lead, which presses the tap into the holder. On the way out the same is taken back.
///
/// # Errors
/// [`Code::OutOfRange`] for an under-feed outside −20 to 20 %, over-travel outside 0 to 20 turns, or
/// lengths that make no sense; [`Code::Overflow`].
///
/// # Example
/// ```
/// use threadcalc_core::{Length, holder_travel};
///
/// // M10, 20 deep, 5 % under the lead, the spindle coasts for half a turn.
/// let lead = Length::new(3, 2)?;
/// let travel = holder_travel(lead, Length::integer(20), Length::integer(5), Length::new(1, 2)?)?;
/// assert_eq!(travel.extension_mm.to_string(), "1.75");
/// assert!(!travel.fits(Length::integer(1), Length::integer(1)));
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// Derived.
pub fn holder_travel(
    lead_mm: Length,
    depth_mm: Length,
    underfeed_percent: Ratio,
    over_travel_turns: Ratio,
) -> Result<HolderTravel, Error> {
    let lead = above_zero(lead_mm, Field::Lead, MOST_LEAD)?;
    let depth = zero_or_more(depth_mm, Field::Depth, MOST_TRAVEL)?;
    let coast = zero_or_more(over_travel_turns, Field::OverTravel, 20)?.times(lead)?;
    if underfeed_percent.magnitude() > Length::integer(20) {
        return Err(Error::new(Code::OutOfRange, Field::Underfeed)
            .got(underfeed_percent.to_f64())
            .within(-20.0, 20.0)
            .hint_text("percent of the lead; rarely more than 5"));
    }
    let behind = underfeed_percent.times(depth)?.over(Length::integer(100))?;
    Ok(HolderTravel {
        extension_mm: behind.plus(coast)?.max(Length::ZERO),
        compression_mm: behind.negative().max(Length::ZERO),
    })
}
