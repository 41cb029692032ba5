//! From what a gauge says to what to do next.

use super::not_go_rule;
use crate::error::{Code, Error, Field};
use crate::length::{Length, Ratio, Rounding};
use crate::named::named;
use crate::range::{above_zero, zero_or_more};
use crate::thread::{Side, Thread};

/// More turns than a gauge has.
const MOST_TURNS: i64 = 1_000;
/// Beyond any travel, in mm.
const MOST_MM: i64 = 10_000;

named! {
    /// What becomes of the hole.
    pub enum Verdict {
        /// It is good by this gauge.
        Accept = 1 "accept",
        /// It can be brought to size.
        Rework = 2 "rework",
        /// No tap makes it smaller again.
        Reject = 3 "reject",
    }
}

named! {
    /// One thing to do, in the order of a [`NextMove`].
    pub enum Move {
        /// Nothing.
        Nothing = 1 "nothing",
        /// Blow chips and oil out, and gauge again before anything else.
        CleanAndGaugeAgain = 2 "clean_and_gauge_again",
        /// See that gauge, tap and drawing name the same thread, class and hand.
        CompareNames = 3 "compare_names",
        /// Countersink or deburr the mouth.
        Deburr = 4 "deburr",
        /// Tap deeper, if the drilled hole has room: same tool and length, same S, same R.
        TapDeeper = 5 "tap_deeper",
        /// Take a new tap: this one is worn or chipped.
        ChangeTap = 6 "change_tap",
        /// Take the next larger class or H limit of tap.
        LargerTap = 7 "larger_tap",
        /// Take the next smaller class or H limit of tap, for the next hole.
        SmallerTap = 8 "smaller_tap",
        /// Compare feed and lead at the speed that really ran; overrides off.
        CheckFeed = 9 "check_feed",
        /// Look for force along the axis: holder, its springs, the feed below the lead, a heavy start.
        CheckAxialForce = 10 "check_axial_force",
        /// Look for run-out, chips welded to the flanks, coolant.
        CheckCutting = 11 "check_cutting",
        /// Stop, and gauge the holes back to the last good one.
        StopAndGaugeBack = 12 "stop_and_gauge_back",
        /// A wire insert or the next size, if the engineer says so.
        RepairOrScrap = 13 "repair_or_scrap",
        /// Tap the next hole less deep.
        TapShallower = 14 "tap_shallower",
    }
}

named! {
    /// What a gauge said, without its turns.
    pub enum GaugeReading {
        /// GO goes to the full depth of thread.
        GoPasses = 1 "go_passes",
        /// GO stops before it.
        GoStops = 2 "go_stops",
        /// NOT GO enters.
        NotGoEnters = 3 "not_go_enters",
        /// The notch of a taper plug stands off the face, or is flush with it.
        TaperStands = 4 "taper_stands",
    }
}

/// What a gauge said.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum GaugeResult {
    /// GO goes to the full depth of thread.
    GoPasses,
    /// GO stops, by hand and without force, after this many turns.
    GoStops {
        /// Turns until it stops; below 1 it does not start.
        turns: Ratio,
    },
    /// NOT GO enters by this many turns.
    NotGoEnters {
        /// Turns until it stops.
        turns: Ratio,
    },
    /// The notch of a taper plug stands off the face, hand tight: above 0 outside the hole (the thread is
    /// small), below 0 inside.
    TaperStands {
        /// Turns from flush.
        turns: Ratio,
    },
}

impl GaugeResult {
    /// The result of a reading and its turns.
    ///
    /// # Errors
    /// [`Code::Missing`] without turns, [`Code::Contradiction`] with turns for a GO that goes to the full depth.
    ///
    /// # Example
    /// ```
    /// use threadcalc_core::{GaugeReading, GaugeResult, Length};
    ///
    /// let stops = GaugeResult::new(GaugeReading::GoStops, Some(Length::integer(10)))?;
    /// assert_eq!(stops, GaugeResult::GoStops { turns: Length::integer(10) });
    /// # Ok::<(), threadcalc_core::Error>(())
    /// ```
    pub fn new(reading: GaugeReading, turns: Option<Ratio>) -> Result<Self, Error> {
        match (reading, turns) {
            (GaugeReading::GoPasses, None) => Ok(Self::GoPasses),
            (GaugeReading::GoPasses, Some(turns)) => Err(Error::new(Code::Contradiction, Field::Turns)
                .got(turns.to_f64())
                .hint_text("GO that goes to the full depth has no turns")),
            (GaugeReading::GoStops, Some(turns)) => Ok(Self::GoStops { turns }),
            (GaugeReading::NotGoEnters, Some(turns)) => Ok(Self::NotGoEnters { turns }),
            (GaugeReading::TaperStands, Some(turns)) => Ok(Self::TaperStands { turns }),
            (_, None) => Err(Error::new(Code::Missing, Field::Turns).hint_text("turns until the gauge stops")),
        }
    }
}

/// How many moves there are at most.
const MOST_MOVES: usize = 6;

/// What to do next.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub struct NextMove {
    /// What becomes of this hole.
    pub verdict: Verdict,
    moves: [Option<Move>; MOST_MOVES],
    /// How much deeper the tap has to go, exact; negative: less deep, for the next hole. `None` where depth
    /// is not the question.
    pub deeper_mm: Option<Length>,
}

impl NextMove {
    /// The moves, first things first.
    pub fn moves(&self) -> impl Iterator<Item = Move> {
        self.moves.into_iter().flatten()
    }

    fn new(verdict: Verdict, moves: &[Move], deeper_mm: Option<Length>) -> Self {
        let mut held = [None; MOST_MOVES];
        for (slot, next) in held.iter_mut().zip(moves) {
            *slot = Some(*next);
        }
        Self { verdict, moves: held, deeper_mm }
    }
}

#[cfg(feature = "serde")]
impl serde::Serialize for NextMove {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        use serde::ser::SerializeStruct;
        struct Moves<'a>(&'a NextMove);
        impl serde::Serialize for Moves<'_> {
            fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
                serializer.collect_seq(self.0.moves())
            }
        }
        let mut next = serializer.serialize_struct("NextMove", 3)?;
        next.serialize_field("verdict", &self.verdict)?;
        next.serialize_field("moves", &Moves(self))?;
        next.serialize_field("deeper_mm", &self.deeper_mm)?;
        next.end()
    }
}

/// What to do after gauging a tapped hole.
///
/// | gauge | move |
/// |---|---|
/// | GO to full depth | good |
/// | GO does not start | names of gauge, tap and drawing; burr; chips; new tap; larger tap |
/// | GO stops at turn n | clean; if it stops there again, tap deeper by the missing turns × lead; new tap; larger tap |
/// | NOT GO within the rule | good |
/// | NOT GO beyond it | stop; feed; axial force; cutting; smaller tap for the next hole; this one is too large |
/// | taper plug within its turns | good; `deeper_mm` would centre it |
/// | taper plug stands out | clean; tap deeper by turns × lead, with the same R |
/// | taper plug sinks in | stop; next hole less deep; this one is too large |
///
/// `required_turns`: the depth of full thread that is asked for over the lead; needed for a GO that stops, not
/// looked at otherwise. Tapping deeper enters the hole again: see [`RE_ENTRY_RULE`].
///
/// # Errors
/// [`Code::Missing`] for a GO that stops without `required_turns`; [`Code::DoesNotApply`] for external threads,
/// for GO and NOT GO in a taper thread and a taper plug in a straight one; [`Code::NotSourced`] for NOT GO in a
/// thread that [`not_go_rule`](crate::not_go_rule) has none for; [`Code::OutOfRange`] for turns outside 0 to 1000
/// (−20 to 20 for a taper plug); [`Code::Overflow`].
///
/// # Example
/// ```
/// use threadcalc_core::{GaugeResult, Length, Move, Thread, next_move};
///
/// let (thread, ten) = (Thread::read(b"M8-6H")?, Length::integer(10));
/// let next = next_move(&thread, Some(Length::new(64, 5)?), GaugeResult::GoStops { turns: ten })?;
/// assert_eq!(next.moves().next(), Some(Move::CleanAndGaugeAgain));
/// assert_eq!(next.deeper_mm.map(|mm| mm.to_string()), Some("3.5".into())); // 2.8 turns of 1.25
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// Common practice; how far NOT GO may enter: [`not_go_rule`](crate::not_go_rule); taper threads: their
/// gauge's turns.
pub fn next_move(thread: &Thread, required_turns: Option<Ratio>, result: GaugeResult) -> Result<NextMove, Error> {
    let does_not_apply = |hint| Err(Error::new(Code::DoesNotApply, Field::Form).hint_text(hint));
    if thread.side() == Some(Side::External) {
        return does_not_apply("a tapped hole");
    }
    let good = NextMove::new(Verdict::Accept, &[Move::Nothing], None);
    match (result, thread.form().is_taper()) {
        (GaugeResult::TaperStands { turns }, true) => taper_stands(thread, turns),
        (GaugeResult::TaperStands { .. }, false) => does_not_apply("a straight thread is gauged with GO and NOT GO"),
        (_, true) => does_not_apply("a taper thread is gauged by the turns that its plug stands off"),
        (GaugeResult::GoPasses, false) => Ok(good),
        (GaugeResult::GoStops { turns }, false) => {
            let missing = Error::new(Code::Missing, Field::Turns).hint_text("required_turns: full thread over lead");
            let required = above_zero(required_turns.ok_or(missing)?, Field::Turns, MOST_TURNS)?;
            go_stops(thread, required, zero_or_more(turns, Field::Turns, MOST_TURNS)?)
        }
        (GaugeResult::NotGoEnters { turns }, false) => {
            let most = Length::integer(i64::from(not_go_rule(thread)?.most_turns));
            let beyond = zero_or_more(turns, Field::Turns, MOST_TURNS)? > most;
            Ok(if beyond { too_large() } else { good })
        }
    }
}

fn go_stops(thread: &Thread, required: Ratio, turns: Ratio) -> Result<NextMove, Error> {
    if turns >= required {
        return Ok(NextMove::new(Verdict::Accept, &[Move::Nothing], None));
    }
    if turns < Length::ONE {
        let moves = [Move::CompareNames, Move::Deburr, Move::CleanAndGaugeAgain, Move::ChangeTap, Move::LargerTap];
        return Ok(NextMove::new(Verdict::Rework, &moves, None));
    }
    let moves = [Move::CleanAndGaugeAgain, Move::TapDeeper, Move::ChangeTap, Move::LargerTap];
    let missing = required.minus(turns)?.times(thread.lead_mm())?;
    Ok(NextMove::new(Verdict::Rework, &moves, Some(missing)))
}

fn too_large() -> NextMove {
    let moves = [
        Move::StopAndGaugeBack,
        Move::CheckFeed,
        Move::CheckAxialForce,
        Move::CheckCutting,
        Move::SmallerTap,
        Move::RepairOrScrap,
    ];
    NextMove::new(Verdict::Reject, &moves, None)
}

fn taper_stands(thread: &Thread, turns: Ratio) -> Result<NextMove, Error> {
    check_stand_off(turns)?;
    let deeper = Some(turns.times(thread.lead_mm())?);
    let tolerance = thread.pipe()?.gauge_tolerance_turns.unwrap_or(Length::ONE);
    Ok(if turns.magnitude() <= tolerance {
        NextMove::new(Verdict::Accept, &[Move::Nothing], deeper)
    } else if turns.is_positive() {
        NextMove::new(Verdict::Rework, &[Move::CleanAndGaugeAgain, Move::TapDeeper], deeper)
    } else {
        NextMove::new(Verdict::Reject, &[Move::StopAndGaugeBack, Move::TapShallower, Move::RepairOrScrap], deeper)
    })
}

fn check_stand_off(turns: Ratio) -> Result<(), Error> {
    if turns.magnitude() <= Length::integer(20) {
        return Ok(());
    }
    Err(Error::new(Code::OutOfRange, Field::StandOff).got(turns.to_f64()).within(-20.0, 20.0))
}

/// The depth that brings a taper plug flush, with the same R, exact.
///
/// ```text
/// new depth = depth + stand-off turns × lead        above 0: the plug stands out, the thread is small
/// ```
///
/// `depth_mm` is the tapping depth of the program, below the face. A plug that sinks in makes the next hole less
/// deep; the gauged one is too large.
///
/// # Errors
/// [`Code::DoesNotApply`] for straight threads; [`Code::OutOfRange`] for turns outside −20 to 20, a depth
/// outside 0 to 10 000 mm, before or after; [`Code::Overflow`].
///
/// # Example
/// ```
/// use threadcalc_core::{Length, Thread, trimmed_depth_mm};
///
/// let thread = Thread::read(b"1/4-18 NPT")?;
/// let deeper = trimmed_depth_mm(&thread, Length::new(16_033, 1000)?, Length::ONE)?;
/// assert!((deeper.to_f64() - 17.444).abs() < 0.0005);
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// Derived.
pub fn trimmed_depth_mm(thread: &Thread, depth_mm: Length, stand_off_turns: Ratio) -> Result<Length, Error> {
    if !thread.form().is_taper() {
        return Err(Error::new(Code::DoesNotApply, Field::Form).hint_text("a straight thread's depth is not its size"));
    }
    above_zero(depth_mm, Field::Depth, MOST_MM)?;
    check_stand_off(stand_off_turns)?;
    above_zero(depth_mm.plus(stand_off_turns.times(thread.lead_mm())?)?, Field::Depth, MOST_MM)
}

/// What has to hold when a tap enters a tapped hole again. Whether a control starts every stroke at the same angle
/// of the spindle is in its manual; without that no R plane finds the thread again.
///
/// # Source
/// Common practice.
pub const RE_ENTRY_RULE: &str = "same tool and same length, same S, and the same R or R moved by whole pitches; \
    synchronised cycle only, on a control that starts every stroke at the same angle of the spindle; \
    never shift R or the tool length for a dry run over a tapped hole";

/// An R plane from which the tap finds the thread again.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct ReEntry {
    /// The R plane.
    pub r_mm: Length,
    /// By how many pitches it has moved; above 0 away from the part.
    pub pitches: i64,
}

/// The R plane nearest to a wanted one that lies whole pitches from the R that the hole was tapped from.
/// Ties go away from the part.
///
/// ```text
/// R = r + k P,   k whole, |R − wanted| least
/// ```
///
/// Both are Z of one work offset, and grow away from the part.
/// The rest of [`RE_ENTRY_RULE`] has to hold as well. With several starts a whole pitch finds the next
/// start's groove, which is as good.
///
/// # Errors
/// [`Code::OutOfRange`] for a pitch outside 0 to 1000 mm or planes beyond ±10 000 mm; [`Code::Overflow`].
///
/// # Example
/// ```
/// use threadcalc_core::{Length, re_entry_r};
///
/// let (r, pitch) = (Length::integer(5), Length::new(5, 4)?);
/// let again = re_entry_r(r, pitch, Length::integer(12))?;
/// assert_eq!((again.r_mm.to_string(), again.pitches), ("12.5".into(), 6));
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// Derived.
pub fn re_entry_r(r_mm: Length, pitch_mm: Length, wanted_mm: Length) -> Result<ReEntry, Error> {
    let pitch = above_zero(pitch_mm, Field::Pitch, 1_000)?;
    for plane in [r_mm, wanted_mm] {
        if plane.magnitude() > Length::integer(MOST_MM) {
            return Err(Error::new(Code::OutOfRange, Field::RPlane)
                .got(plane.to_f64())
                .within(-(MOST_MM as f64), MOST_MM as f64));
        }
    }
    let apart = wanted_mm.minus(r_mm)?.over(pitch)?;
    let pitches = apart.plus(const { Length::parts(1, 2) })?.round_to(0, Rounding::Down)?.units();
    Ok(ReEntry { r_mm: r_mm.plus(pitch.times(Length::integer(pitches))?)?, pitches })
}
