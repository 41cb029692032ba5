//! The whole hole note of a drawing: how many, which thread, how deep, drilled, countersunk, plated.

mod clauses;
mod draft;
mod drills;
mod places;
mod read;
mod sinks;
mod values;
mod words;

use crate::error::{Code, Error, Field};
use crate::feed::Unit;
use crate::finding::Findings;
use crate::length::{Length, Ratio};
use crate::named::named;
use crate::plain::Plain;
use crate::thread::Thread;

/// The longest note that is looked at, in bytes.
const LONGEST: usize = 400;
/// Room for the plain text: vulgar fractions take more than they did.
const PLAIN: usize = 640;
/// How many findings a note holds: two of the thread, three readings, four unread runs, the rest.
const MOST_FINDINGS: usize = 10;

named! {
    /// Which side of the part a note speaks of.
    pub enum Sides {
        /// The side that is seen.
        Near = 1 "near",
        /// The side away from the viewer.
        Far = 2 "far",
        /// Both sides, or both ends.
        Both = 3 "both",
    }
}

named! {
    /// When the limits of the thread are to be met.
    pub enum Plating {
        /// The limits are those of the plated thread: it is tapped oversize.
        After = 1 "after",
        /// The limits are those of the thread before it is plated.
        Before = 2 "before",
    }
}

/// A hole note as read. `Copy`; lengths are exact and in millimetres.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct HoleNote {
    count: Option<u32>,
    thread: Option<Thread>,
    thread_at: usize,
    thread_length: usize,
    thread_depth_mm: Option<Length>,
    thread_through: bool,
    drill_mm: Option<Length>,
    drill_depth_mm: Option<Length>,
    drill_through: bool,
    has_countersink: bool,
    countersink_mm: Option<Length>,
    countersink_angle_deg: Option<Ratio>,
    has_counterbore: bool,
    counterbore_mm: Option<Length>,
    counterbore_depth_mm: Option<Length>,
    is_spotface: bool,
    sides: Option<Sides>,
    plating: Option<Plating>,
    equally_spaced: bool,
    bolt_circle_mm: Option<Length>,
    findings: Findings<MOST_FINDINGS>,
}

impl HoleNote {
    /// How many holes; `None` where the note does not say.
    #[must_use]
    pub const fn count(&self) -> Option<u32> {
        self.count
    }

    /// The thread.
    #[must_use]
    pub const fn thread(&self) -> Option<Thread> {
        self.thread
    }

    /// Where the thread's callout begins in the note, in bytes; 0 without a thread.
    #[must_use]
    pub const fn thread_at(&self) -> usize {
        self.thread_at
    }

    /// How many bytes of the note the thread's callout is; 0 without a thread.
    #[must_use]
    pub const fn thread_length(&self) -> usize {
        self.thread_length
    }

    /// Depth of full thread in mm.
    #[must_use]
    pub const fn thread_depth_mm(&self) -> Option<Length> {
        self.thread_depth_mm
    }

    /// True if the thread goes through.
    #[must_use]
    pub const fn thread_through(&self) -> bool {
        self.thread_through
    }

    /// Diameter of the drilled hole in mm.
    #[must_use]
    pub const fn drill_mm(&self) -> Option<Length> {
        self.drill_mm
    }

    /// Depth of the drilled hole in mm.
    #[must_use]
    pub const fn drill_depth_mm(&self) -> Option<Length> {
        self.drill_depth_mm
    }

    /// True if the drilled hole goes through.
    #[must_use]
    pub const fn drill_through(&self) -> bool {
        self.drill_through
    }

    /// True if the hole is countersunk, with sizes or without.
    #[must_use]
    pub const fn has_countersink(&self) -> bool {
        self.has_countersink
    }

    /// Diameter of the countersink in mm.
    #[must_use]
    pub const fn countersink_mm(&self) -> Option<Length> {
        self.countersink_mm
    }

    /// Included angle of the countersink in degrees.
    #[must_use]
    pub const fn countersink_angle_deg(&self) -> Option<Ratio> {
        self.countersink_angle_deg
    }

    /// True if the hole is counterbored or spotfaced, with sizes or without.
    #[must_use]
    pub const fn has_counterbore(&self) -> bool {
        self.has_counterbore
    }

    /// Diameter of the counterbore or spotface in mm.
    #[must_use]
    pub const fn counterbore_mm(&self) -> Option<Length> {
        self.counterbore_mm
    }

    /// Depth of the counterbore or spotface in mm.
    #[must_use]
    pub const fn counterbore_depth_mm(&self) -> Option<Length> {
        self.counterbore_depth_mm
    }

    /// True if the counterbore is a spotface: only as deep as it takes to clean up.
    #[must_use]
    pub const fn is_spotface(&self) -> bool {
        self.is_spotface
    }

    /// Near, far or both sides.
    #[must_use]
    pub const fn sides(&self) -> Option<Sides> {
        self.sides
    }

    /// Whether the thread's limits are meant after or before plating.
    #[must_use]
    pub const fn plating(&self) -> Option<Plating> {
        self.plating
    }

    /// True if the holes are equally spaced.
    #[must_use]
    pub const fn equally_spaced(&self) -> bool {
        self.equally_spaced
    }

    /// Diameter of the circle that the holes lie on, in mm.
    #[must_use]
    pub const fn bolt_circle_mm(&self) -> Option<Length> {
        self.bolt_circle_mm
    }

    /// What was assumed, what is doubtful, and what was not understood.
    #[must_use]
    pub const fn findings(&self) -> &Findings<10> {
        &self.findings
    }
}

/// Reads the whole hole note of a drawing, of one line or several.
///
/// | part | written as |
/// |---|---|
/// | count | `4X`, `4 X`, `(4)`, `4 PLACES`, `4 PLCS`, `4 HOLES`, `4 OFF`, `QTY 4`, `4-M8`; 1 to 9999 |
/// | thread | every designation that [`Thread::read`] reads; `2 START`, `LEFT HAND`, `CLASS 2B` behind it |
/// | depth | `↧16`, `16 DEEP`, `DEPTH 16`, `X 16`, `FULL THREAD 16`, `16 MIN`, `THRU`: of what stands before it |
/// | drill | `Ø6.8`, `6.8 DIA`, `#7 DRILL`, `F DRILL`, `5/16 DRILL`, `DRILL 6.8`, `PILOT 5` |
/// | countersink | `⌵Ø10 X 90°`, `CSK 10 x 90`, `C'SINK`, `90 DEG CSK TO 10` |
/// | counterbore | `⌴Ø14 ↧8`, `C'BORE 14 X 8 DEEP`, `SPOTFACE Ø20` |
/// | place | `BOTH SIDES`, `NEAR SIDE`, `FAR SIDE`, `EQ SP`, `ON 100 BC`, `ON Ø100`, `PCD 100` |
/// | plating | `CLASS APPLIES AFTER PLATING`, `BEFORE PLATING` |
///
/// Units: lengths with a mark (`mm`, `in`, `"`) are in it, names of drills (`#7`, `F`, `5/16`) are inches.
/// Other lengths are in `unit`, the drawing's; without it in the unit of the thread's standard (a fraction
/// is inches then), with finding `unit-assumed`. Results are in millimetres, exact.
///
/// Nothing is dropped: words that are not understood are findings `not-read` with byte and length. A number
/// behind a times sign that can be no pitch is the depth, `M8 x 20`, with finding `depth-read`.
///
/// Offsets are bytes of `text`. Lone Latin-1 bytes are read like their UTF-8 forms.
///
/// # Errors
/// Those of [`Thread::read`] for the thread of the note. [`Code::Empty`]; [`Code::TooLong`] above 400
/// bytes; [`Code::Unreadable`] if there is neither thread nor hole; [`Code::Missing`] for a length without
/// a unit in a note without a thread; [`Code::Contradiction`] for two threads, two values of one thing, or
/// through and a depth of one thing; [`Code::OutOfRange`] for a length or a count that is not positive and
/// an angle outside 0 to 180 degrees; [`Code::UnsupportedForm`] for the name of a form that is not read
/// (ACME, STI …) anywhere in the note.
///
/// # Example
/// ```
/// use threadcalc_core::read_hole_note;
///
/// let note = read_hole_note("4X M8x1.25-6H ↧16 / Ø6.8 ↧20 AFTER PLATING".as_bytes(), None)?;
/// assert_eq!(note.count(), Some(4));
/// assert_eq!(note.thread().map(|thread| thread.to_string()).as_deref(), Some("M8x1.25-6H"));
/// assert_eq!(note.thread_depth_mm().map(|depth| depth.to_string()).as_deref(), Some("16"));
/// assert_eq!(note.drill_mm().map(|drill| drill.to_string()).as_deref(), Some("6.8"));
/// assert_eq!(note.findings().iter().map(|f| f.id().name()).collect::<Vec<_>>(), ["unit-assumed"]);
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// ISO 129-1 and ASME Y14.5 for the symbols, from memory; common practice for the words.
pub fn read_hole_note(text: &[u8], unit: Option<Unit>) -> Result<HoleNote, Error> {
    let too_long = |at| Error::new(Code::TooLong, Field::Note).at_byte(at).hint_text("at most 400 bytes");
    if text.len() > LONGEST {
        return Err(too_long(LONGEST));
    }
    let (plain, whole) = Plain::<PLAIN>::of(text);
    let origin = |place: usize| plain.origin(place);
    if !whole {
        return Err(too_long(origin(PLAIN)));
    }
    let Some(first) = plain.text().iter().position(|byte| !matches!(byte, b' ' | b'\n')) else {
        return Err(Error::new(Code::Empty, Field::Note)
            .at_byte(text.len())
            .hint_text("a hole note such as 4X M8x1.25-6H 16 DEEP"));
    };
    read::read(plain.text())
        .and_then(|draft| draft.finish(unit, first, origin))
        .map_err(|error| error.at().map_or(error, |at| error.at_byte(origin(at as usize))))
}
