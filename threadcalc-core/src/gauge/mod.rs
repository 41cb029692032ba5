//! Gauging a tapped hole: which gauges, how far NOT GO may enter, what to do next, wires.

mod moves;
mod wires;

pub use moves::{
    GaugeReading, GaugeResult, Move, NextMove, RE_ENTRY_RULE, ReEntry, Verdict, next_move, re_entry_r, trimmed_depth_mm,
};
pub use wires::{best_wire_mm, over_wires};

use crate::error::{Code, Error, Field};
use crate::form::Form;
use crate::length::Length;
use crate::limits::Limits;
use crate::named::named;
use crate::thread::{Hand, Side, Thread};

named! {
    /// A gauge by what it checks.
    pub enum GaugeKind {
        /// GO thread plug: pitch diameter with pitch and angles, and major diameter of a hole.
        ThreadPlugGo = 1 "thread_plug_go",
        /// NOT GO thread plug: pitch diameter of a hole alone.
        ThreadPlugNotGo = 2 "thread_plug_not_go",
        /// GO plain plug: smallest minor diameter of a hole.
        PlainPlugGo = 3 "plain_plug_go",
        /// NOT GO plain plug: largest minor diameter of a hole.
        PlainPlugNotGo = 4 "plain_plug_not_go",
        /// GO thread ring of a screw.
        ThreadRingGo = 5 "thread_ring_go",
        /// NOT GO thread ring of a screw.
        ThreadRingNotGo = 6 "thread_ring_not_go",
        /// GO snap or plain ring: largest major diameter of a screw.
        PlainRingGo = 7 "plain_ring_go",
        /// NOT GO snap or plain ring: smallest major diameter of a screw.
        PlainRingNotGo = 8 "plain_ring_not_go",
        /// Taper thread plug, read by how far it enters.
        TaperPlug = 9 "taper_plug",
        /// Taper thread ring, read by how far it goes on.
        TaperRing = 10 "taper_ring",
    }
}

/// A gauge to fetch, with the product's limits that it stands for.
///
/// The sizes are the limits of the thread. The gauge's own size, with its maker's tolerance and wear, is in
/// the gauge standards and is not sourced here.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Gauge {
    /// What it is.
    pub kind: GaugeKind,
    /// The pitch diameter that it stands for; of a taper gauge, at the gauge plane.
    pub pitch_diameter_mm: Option<Length>,
    /// The major or minor diameter that it stands for; a NOT GO thread gauge has relieved ones.
    pub diameter_mm: Option<Length>,
}

/// The gauges of a thread.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub struct Gauges {
    held: [Option<Gauge>; 4],
    /// Left: left-hand gauges, turned anticlockwise.
    pub hand: Hand,
    /// True if the thread has no class and the standard's medium one was taken.
    pub class_assumed: bool,
    /// The source of the limits; `None` where none have been read.
    pub limits_source: Option<&'static str>,
}

impl Gauges {
    /// The gauges, GO before NOT GO, thread gauges before plain ones.
    pub fn iter(&self) -> impl Iterator<Item = &Gauge> {
        self.held.iter().flatten()
    }
}

#[cfg(feature = "serde")]
impl serde::Serialize for Gauges {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        use serde::ser::SerializeStruct;
        struct Held<'a>(&'a Gauges);
        impl serde::Serialize for Held<'_> {
            fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
                serializer.collect_seq(self.0.iter())
            }
        }
        let mut gauges = serializer.serialize_struct("Gauges", 4)?;
        gauges.serialize_field("gauges", &Held(self))?;
        gauges.serialize_field("hand", &self.hand)?;
        gauges.serialize_field("class_assumed", &self.class_assumed)?;
        gauges.serialize_field("limits_source", &self.limits_source)?;
        gauges.end()
    }
}

/// Which gauges to fetch for a thread, with the limits they stand for.
///
/// ```text
/// hole    GO plug      smallest pitch and major diameter     NOT GO plug   largest pitch diameter
///         GO pin       smallest minor diameter               NOT GO pin    largest minor diameter
/// screw   GO ring      largest pitch and minor diameter      NOT GO ring   smallest pitch diameter
///         GO snap      largest major diameter                NOT GO snap   smallest major diameter
/// taper   one plug or ring, read by its turns
/// ```
///
/// A thread without a side is taken as a hole. A size is `None` where the standard's limit has not been
/// read; the gauge is to be fetched all the same.
///
/// # Errors
/// [`Code::Overflow`] and other errors of [`Thread::limits`] than that limits have not been read or that
/// the class is unset.
///
/// # Example
/// ```
/// use threadcalc_core::{GaugeKind, Thread, gauges};
///
/// let set = gauges(&Thread::read(b"M10x1-6H-LH")?)?;
/// let pin = set.iter().find(|gauge| gauge.kind == GaugeKind::PlainPlugGo).and_then(|gauge| gauge.diameter_mm);
/// assert_eq!(pin.map(|pin| pin.to_string()), Some("8.917".into()));
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// ISO 1502 and ASME B1.2 for what a gauge checks, from memory; the limits' own sources.
pub fn gauges(thread: &Thread) -> Result<Gauges, Error> {
    gauges_with(thread, None)
}

/// The same with the thread's limits at hand, where they have been asked for already.
#[inline(never)]
pub(crate) fn gauges_with(thread: &Thread, limits: Option<&Limits>) -> Result<Gauges, Error> {
    if thread.form().is_taper() {
        return of_taper(thread);
    }
    match limits {
        Some(limits) => Ok(of_limits(thread, Some(limits))),
        None => of_class(thread),
    }
}

/// The side that is gauged where the thread is of both: the hole's.
fn gauged_side(thread: &Thread) -> Side {
    thread.side().unwrap_or(Side::Internal)
}

#[inline(never)]
fn of_taper(thread: &Thread) -> Result<Gauges, Error> {
    let kind = if gauged_side(thread) == Side::Internal { GaugeKind::TaperPlug } else { GaugeKind::TaperRing };
    let pipe = thread.pipe()?;
    let gauge = Gauge { kind, pitch_diameter_mm: pipe.pitch_diameter_gauge_plane_mm, diameter_mm: None };
    let held = [Some(gauge), None, None, None];
    Ok(Gauges { held, hand: thread.hand(), class_assumed: false, limits_source: Some(pipe.source) })
}

/// With the limits of the thread's class, or of the medium one.
#[inline(never)]
fn of_class(thread: &Thread) -> Result<Gauges, Error> {
    let side = gauged_side(thread);
    let classed = if side == Side::Internal { thread.as_tapped()? } else { *thread };
    // A class of both sides is that of the side that is gauged.
    let classed = if classed.side().is_none() { classed.with_side(side)? } else { classed };
    match classed.limits() {
        Ok(limits) => Ok(of_limits(thread, Some(&limits))),
        Err(error) if matches!(error.code(), Code::NotSourced | Code::ClassUnset) => Ok(of_limits(thread, None)),
        Err(error) => Err(error),
    }
}

fn of_limits(thread: &Thread, limits: Option<&Limits>) -> Gauges {
    let side = gauged_side(thread);
    let has_medium = !thread.medium_internal_class().is_empty();
    let class_assumed = side == Side::Internal && thread.tolerance_class().is_none() && has_medium;
    let held = if side == Side::Internal { of_hole(limits) } else { of_screw(limits) };
    // What the standard sets no size for is no gauge; a size that has not been read takes none away.
    let all = limits.is_none() || !thread.form().has_no_largest_minor();
    let is_one = |gauge: &Gauge| all || gauge.pitch_diameter_mm.or(gauge.diameter_mm).is_some();
    let held = held.map(|gauge| Some(gauge).filter(is_one));
    Gauges { held, hand: thread.hand(), class_assumed, limits_source: limits.map(|limits| limits.source) }
}

fn of_hole(limits: Option<&Limits>) -> [Gauge; 4] {
    let (major, pitch, minor) = ranges(limits);
    [
        Gauge { kind: GaugeKind::ThreadPlugGo, pitch_diameter_mm: pitch.0, diameter_mm: major.0 },
        Gauge { kind: GaugeKind::ThreadPlugNotGo, pitch_diameter_mm: pitch.1, diameter_mm: None },
        Gauge { kind: GaugeKind::PlainPlugGo, pitch_diameter_mm: None, diameter_mm: minor.0 },
        Gauge { kind: GaugeKind::PlainPlugNotGo, pitch_diameter_mm: None, diameter_mm: minor.1 },
    ]
}

fn of_screw(limits: Option<&Limits>) -> [Gauge; 4] {
    let (major, pitch, minor) = ranges(limits);
    [
        Gauge { kind: GaugeKind::ThreadRingGo, pitch_diameter_mm: pitch.1, diameter_mm: minor.1 },
        Gauge { kind: GaugeKind::ThreadRingNotGo, pitch_diameter_mm: pitch.0, diameter_mm: None },
        Gauge { kind: GaugeKind::PlainRingGo, pitch_diameter_mm: None, diameter_mm: major.1 },
        Gauge { kind: GaugeKind::PlainRingNotGo, pitch_diameter_mm: None, diameter_mm: major.0 },
    ]
}

type Range = crate::limits::Range;

fn ranges(limits: Option<&Limits>) -> (Range, Range, Range) {
    limits.map_or(((None, None), (None, None), (None, None)), |limits| {
        (limits.major_mm, limits.pitch_diameter_mm, limits.minor_mm)
    })
}

/// How far a NOT GO thread gauge may go.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct NotGoRule {
    /// The most turns, by hand and without force, from either end.
    pub most_turns: u8,
    /// The standard that says so.
    pub standard: &'static str,
    /// What it says besides.
    pub remark: &'static str,
}

/// How far the NOT GO thread gauge of a thread may go.
///
/// # Errors
/// [`Code::DoesNotApply`] for taper threads; [`Code::NotSourced`] for other threads than M, UN, UNR and UNJ, and
/// for the holes of wire inserts.
///
/// # Example
/// ```
/// use threadcalc_core::{Thread, not_go_rule};
///
/// assert_eq!(not_go_rule(&Thread::read(b"M8")?)?.most_turns, 2);
/// assert_eq!(not_go_rule(&Thread::read(b"1/4-20")?)?.most_turns, 3);
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// ISO 1502:1996 and ASME B1.2-1983 as gauge makers quote them; the remark on ISO 1502, and that ASME B1.2 is for
/// UNR and UNJ too, from memory.
pub fn not_go_rule(thread: &Thread) -> Result<NotGoRule, Error> {
    match thread.form() {
        _ if thread.is_wire_insert() => Err(Error::new(Code::NotSourced, Field::Form)
            .hint_text("how far NOT GO (HI) may enter the hole of a wire insert has not been read")),
        Form::Metric => Ok(NotGoRule {
            most_turns: 2,
            standard: "ISO 1502:1996",
            remark: "a thread of three turns or fewer must not let it through",
        }),
        Form::Unified | Form::UnifiedR | Form::UnifiedJ => Ok(NotGoRule {
            most_turns: 3,
            standard: "ASME B1.2-1983",
            remark: "thin or soft parts and few threads may need another rule",
        }),
        form if form.is_taper() => Err(Error::new(Code::DoesNotApply, Field::Form)
            .hint_text("a taper gauge is read by its turns, there is no NOT GO")),
        _ => Err(Error::new(Code::NotSourced, Field::Form)
            .hint_text("how far NOT GO may enter this thread has not been read: see the standard on the drawing")),
    }
}
