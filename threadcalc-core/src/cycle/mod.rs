//! The words of a tapping cycle under a dialect, and what must be restored after it.

mod codes;
mod numbers;
mod words;

pub use words::Cycle;

use crate::dialect::{Dialect, DwellUnit, LetterText, RetractIn, ReturnTo, is_free};
use crate::error::{Code, Error, Field};
use crate::feed::{Feed, Unit};
use crate::finding::Finding;
use crate::length::{Length, Ratio};
use crate::motion::Holder;
use crate::thread::{Hand, Thread};
use codes::{Codes, Refusal};
pub(crate) use numbers::MOST_DWELL_S;
use numbers::Numbers;

/// What a tapping cycle is made of. Lengths in millimetres, whatever the unit of the feed.
#[derive(Clone, Copy, Debug)]
pub struct CycleRequest<'a> {
    /// The control's dialect.
    pub dialect: &'a Dialect,
    /// The thread: its hand and its lead.
    pub thread: &'a Thread,
    /// The feed, made for the thread's lead and, per minute, for this speed.
    pub feed: &'a Feed,
    /// Programmed speed, at most 9 decimals.
    pub rpm: Ratio,
    /// From the face to the point that the tap's length offset is set on.
    pub depth_mm: Length,
    /// R plane above the face.
    pub r_plane_mm: Length,
    /// How the tap is held.
    pub holder: Holder,
    /// Depth of a peck; None: in one stroke.
    pub peck_mm: Option<Length>,
    /// Wait at the bottom in seconds, 0 to 60; None or 0: none.
    pub dwell_s: Option<Ratio>,
    /// Speed on the way out over speed on the way in; None or 1: out as fast as in.
    pub retract_factor: Option<Ratio>,
    /// Where the tap returns to.
    pub return_to: ReturnTo,
}

/// The words of one tapped hole at the place the spindle stands, or the finding that says why there are none.
///
/// ```text
/// G17 G21 G90 G94              plane, unit, absolute, feed mode
/// S600 M3                      M3 or M4 where the control needs it
/// M135 S600                    where a rigid holder needs a code of its own
/// G99 G84 Z-20. R5. F750.      the tapping cycle; peck, dwell and way out before F
/// G80
/// ```
///
/// The tapped depth is rounded deeper, the R plane higher and a peck shallower, to the dialect's decimals.
/// What the dialect lacks is refused with [`CodeNotOnControl`](crate::FindingId::CodeNotOnControl). Pecks are
/// refused with [`PeckTapping`](crate::FindingId::PeckTapping) where the tap would not meet its thread again:
/// in a floating holder, and in any that gives if the control needs a code to synchronise, since that code
/// is for rigid holders.
///
/// # Errors
/// [`Code::Contradiction`] if the feed is that of another speed or lead, if the dialect tells the left hand
/// in two ways, or if two words would have one letter; [`Code::OutOfRange`] and [`Code::NotExact`] for
/// numbers that no word can hold; [`Code::Missing`] if the dialect does not say what a dwell or a way out is
/// counted in.
///
/// # Example
/// ```
/// use threadcalc_core::*;
///
/// let (thread, rpm) = (Thread::read(b"M8x1.25-6H")?, Length::integer(600));
/// let feed = feed(thread.lead_mm(), Some(rpm), Unit::Mm, FeedMode::PerMinute, 3)?;
/// let mut request = CycleRequest {
///     dialect: &Dialect::rs274ngc(),
///     thread: &thread,
///     feed: &feed,
///     rpm,
///     depth_mm: Length::integer(20),
///     r_plane_mm: Length::integer(5),
///     holder: Holder::Rigid,
///     peck_mm: None,
///     dwell_s: None,
///     retract_factor: None,
///     return_to: ReturnTo::RPlane,
/// };
/// let words = cycle(&request)?.expect("G84 is on the control");
/// assert!(words.blocks().any(|line| line.as_str() == "G99 G84 Z-20. R5. F750."));
/// request.peck_mm = Some(Length::integer(5));
/// let lacks = cycle(&request)?.expect_err("no pecks");
/// assert_eq!(lacks.suggestion(), "rs274ngc has no word for the depth of a peck");
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// ISO 6983-1 (G17, G80, G84, G90, G94, G95); NISTIR 6556 (G20, G21, G98, G99); rounding: common practice.
pub fn cycle(request: &CycleRequest<'_>) -> Result<Result<Cycle, Finding>, Error> {
    let mut cycle = Cycle::default();
    Ok(match write_cycle(request, &mut cycle)? {
        None => Ok(cycle),
        Some(refusal) => Err(refusal.finding(request.dialect)),
    })
}

/// The same into a cycle without words.
#[inline(never)]
pub(crate) fn write_cycle(request: &CycleRequest<'_>, cycle: &mut Cycle) -> Result<Option<Refusal>, Error> {
    let numbers = Numbers::of(request)?;
    let codes = match Codes::of(request, &numbers)? {
        Ok(codes) => codes,
        Err(refusal) => return Ok(Some(refusal)),
    };
    let dialect = request.dialect;
    let left = request.thread.hand() == Hand::Left;

    cycle.word("G17");
    cycle.word(if request.feed.unit() == Unit::Mm { "G21" } else { "G20" });
    cycle.word("G90");
    cycle.code(codes.mode);
    cycle.end_line();
    let turns = dialect.needs_spindle_running || dialect.lh_by_spindle_direction;
    let speed = |cycle: &mut Cycle| cycle.number(b'S', request.rpm, false, Field::Rpm);
    let rigid = dialect.rigid_tap_code.filter(|_| request.holder == Holder::Rigid);
    let speed_in_rigid = rigid.is_some() && dialect.rigid_tap_code_has_s;
    if turns {
        speed(cycle)?;
        cycle.word(if left { "M4" } else { "M3" });
        cycle.end_line();
    } else if !speed_in_rigid {
        speed(cycle)?;
        cycle.end_line();
    }
    if let Some(code) = rigid {
        cycle.code(code);
        if speed_in_rigid {
            speed(cycle)?;
        }
        cycle.end_line();
    }
    tapping_line(cycle, request, &numbers, &codes)?;
    cycle.word("G80");
    cycle.end_line();

    // All three, also where one would still hold: the next tool's programmer does not know what came before.
    cycle.restore_later(dialect.feed_per_minute.as_str(), "feed mode");
    cycle.restore_later("F", "the next cut needs its own F");
    cycle.restore_later("M3", "spindle direction, the next tool is right-hand");
    Ok(None)
}

/// Return, cycle, Z, R, what the dialect has letters for, and F last.
#[inline(never)]
fn tapping_line(cycle: &mut Cycle, request: &CycleRequest<'_>, numbers: &Numbers, codes: &Codes) -> Result<(), Error> {
    let dialect = request.dialect;
    let point = dialect.trailing_point;
    let in_seconds = dialect.dwell_unit == Some(DwellUnit::Seconds);
    let own = [
        Own { letter: dialect.peck_word, number: numbers.peck, point, field: Field::Peck },
        Own {
            letter: dialect.dwell_word,
            number: counted_dwell(dialect, numbers.dwell_s)?,
            point: point && in_seconds,
            field: Field::Dwell,
        },
        Own {
            letter: dialect.retract_multiplier_word,
            number: counted_retract(dialect, numbers.retract_factor)?,
            point: false,
            field: Field::RetractFactor,
        },
    ];
    check_letters(own)?;
    cycle.code(codes.return_to);
    cycle.code(codes.tap);
    cycle.number(b'Z', numbers.depth.negative(), point, Field::Depth)?;
    cycle.number(b'R', numbers.r_plane, point, Field::RPlane)?;
    for Own { letter, number, point, field } in own {
        // A letter is a byte long: `check_letters` saw to that.
        let byte = letter.and_then(|letter| letter.as_str().bytes().next());
        if let (Some(letter), Some(number)) = (byte, number) {
            cycle.number(letter, number, point, field)?;
        }
    }
    match request.feed.word().strip_suffix(".") {
        Some(whole) if !point => cycle.word(whole),
        _ => cycle.text(request.feed.word_text()),
    }
    cycle.end_line();
    Ok(())
}

/// A word whose letter is the dialect's own.
#[derive(Clone, Copy)]
struct Own {
    letter: Option<LetterText>,
    number: Option<Length>,
    point: bool,
    field: Field,
}

/// No two words of one line have one letter: a control would take one of them, or stop.
fn check_letters(own: [Own; 3]) -> Result<(), Error> {
    let letter = |own: Own| own.letter.filter(|_| own.number.is_some());
    let [peck, dwell, out] = own.map(letter);
    let free = |letter: LetterText| matches!(letter.as_str().as_bytes(), [byte] if is_free(*byte));
    let alike = |a: Option<LetterText>, b: Option<LetterText>| a.is_some() && a == b;
    let taken = [peck, dwell, out].into_iter().flatten().any(|letter| !free(letter));
    if taken || alike(peck, dwell) || alike(dwell, out) || alike(peck, out) {
        return Err(Error::new(Code::Contradiction, Field::Dialect)
            .hint_text("peck, dwell and way out need a letter each, and none that the cycle has already"));
    }
    Ok(())
}

fn counted_dwell(dialect: &Dialect, seconds: Option<Ratio>) -> Result<Option<Ratio>, Error> {
    let Some(seconds) = seconds else { return Ok(None) };
    match dialect.dwell_unit {
        None => Err(Error::new(Code::Missing, Field::DialectDwellUnit).hint_text(DwellUnit::CHOICES)),
        Some(DwellUnit::Seconds) => Ok(Some(seconds)),
        Some(DwellUnit::Milliseconds) => {
            let counted = seconds.times(Length::integer(1_000))?;
            let fraction = Error::new(Code::NotExact, Field::Dwell)
                .got(seconds.to_f64())
                .hint_text("the control counts whole milliseconds");
            counted.whole().map(|_| Some(counted)).ok_or(fraction)
        }
    }
}

fn counted_retract(dialect: &Dialect, factor: Option<Ratio>) -> Result<Option<Ratio>, Error> {
    let Some(factor) = factor else { return Ok(None) };
    match dialect.retract_in {
        None => Err(Error::new(Code::Missing, Field::DialectRetractIn).hint_text(RetractIn::CHOICES)),
        Some(RetractIn::Factor) => Ok(Some(factor)),
        Some(RetractIn::Percent) => factor.times(Length::integer(100)).map(Some),
    }
}
