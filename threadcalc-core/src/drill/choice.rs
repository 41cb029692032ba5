//! Which drill of the sets to take.

use super::judge::{Judge, TapDrill, answer_basis, judging_limits};
use super::percent::has_bases;
use super::search::{Found, Window};
use super::stock::{Drills, Stock};
use super::{Basis, Drill, DrillSet, DrillSets, Tap, drill_diameter, form_hole};
use crate::error::{Code, Error, Field};
use crate::form::Form;
use crate::length::{Length, Ratio, Rounding};
use crate::limits::Limits;
use crate::profile::height_in_pitches;
use crate::thread::Thread;

/// What a tap drill is asked for.
///
/// `sets` are whole [`DrillSets`], the [`OwnDrills`](crate::OwnDrills) of a shop by reference, or a [`Stock`]
/// of either with its own oversize.
#[derive(Clone, Copy, Debug)]
pub struct TapDrillRequest<S = DrillSets> {
    /// Cut or form tap.
    pub tap: Tap,
    /// Percent of thread; without it, the drill nearest to the rule's hole, see [`tap_drill`].
    pub percent: Option<Ratio>,
    /// Basis of the percent of M and UN: required with a percent for a cut tap, 3H/4 for the answer otherwise.
    pub basis: Option<Basis>,
    /// The drills to choose from.
    pub sets: S,
    /// For a taper thread: the hole is reamed to the taper before it is tapped.
    pub taper_reamer: bool,
}

/// Chooses the drill of the sets for a tapped hole.
///
/// With a percent: the drill nearest to that hole, whatever the limits (`within_limits` says).
/// Without: the drill nearest to the rule's hole within the class's minor-diameter limits (cut), or nearest to
/// D − P/2 (form). Nearest is by diameter, ties to the larger. A thread without a class is judged
/// by the standard's medium class, with finding `class-assumed`; G and Rp need no class. NPSC and NPSM
/// need a percent.
///
/// | thread | hole without a percent | of its own height |
/// |---|---|---|
/// | M, UN and their wire inserts, G, Rp | D − P | |
/// | BSW, BSF | D − P | 78 % |
/// | MJ, UNJ, BA | D − 0.9 P | 92 %, BA 75 % |
/// | S | D − 0.8 P | 83 % |
/// | Tr, ACME | D − 0.95 P | 95 % |
/// | stub ACME | D − 0.57 P | 95 % |
/// | buttress | D − 1.14 P | 95 % |
///
/// Where no limits are known, the drill of the lower rows and of a wire insert is not below the basic minor
/// diameter: the tap is not made to cut there.
///
/// ```text
/// NPT, NPTF  nearest to K0 = E0 − 0.8 p; with taper reamer to K3 = K0 − 3 p/16
/// Rc         the smallest drill not below D1 at the face; with taper reamer nearest to D1 − useful thread/16
/// ```
///
/// Without a taper reamer a straight hole gives full threads only near the face: finding `taper-hole`.
///
/// A list is chosen from by the same rule. Without a percent none of it may lie outside the limits, nor for
/// a form tap outside 50 to 100 % of 0.68 P; where no limits are known, not more than half a pitch from
/// the rule's hole. The error then gives the nearest drill and the range that would do, as it does for sets.
///
/// # Errors
/// [`Code::Missing`] without a set, drill or basis, [`Code::NoDrill`], [`Code::Contradiction`] for a taper
/// reamer in a straight thread, [`Code::DoesNotApply`] for a percent or a form tap in a taper thread,
/// [`Code::NotSourced`] for NPSC and NPSM without a percent and for NPSF, and those of [`percent_thread`](crate::percent_thread).
///
/// # Example
/// ```
/// use threadcalc_core::{Basis, DrillSets, Length, Tap, TapDrillRequest, Thread, tap_drill};
///
/// let request = TapDrillRequest {
///     tap: Tap::Cut,
///     percent: Some(Length::integer(75)),
///     basis: Some(Basis::ThreeQuartersH),
///     sets: DrillSets::INCH,
///     taper_reamer: false,
/// };
/// let found = tap_drill(&Thread::read(b"1/4-20 UNC-2B")?, &request)?;
/// assert_eq!(found.chosen.drill.name().as_str(), "#7");
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// ISO 2306 (D − P of M and UN); Machinery's Handbook 31 (percent); form taps and the rules of the other straight
/// threads: common practice. NPT: the rule gives
/// every drill up to 2 in of ASME B94.9-2008, table of taper pipe tap limits (direct tapping); with taper
/// reamer and for Rc: common practice.
pub fn tap_drill<'a, S>(thread: &Thread, request: &TapDrillRequest<S>) -> Result<TapDrill, Error>
where
    S: Copy + Into<Stock<'a>>,
{
    let TapDrillRequest { tap, percent, basis, sets, taper_reamer } = *request;
    of_stock(thread, &TapDrillRequest { tap, percent, basis, sets: sets.into(), taper_reamer })
}

#[inline(never)]
fn of_stock(thread: &Thread, request: &TapDrillRequest<Stock<'_>>) -> Result<TapDrill, Error> {
    let stock = &request.sets;
    match stock.drills {
        Drills::Sets(sets) if sets.is_none() => {
            return Err(Error::new(Code::Missing, Field::DrillSets).hint_text(DrillSet::CHOICES));
        }
        Drills::Own(own) if own.is_empty() => {
            return Err(Error::new(Code::Missing, Field::DrillList).hint_text("the drills there are, such as 6.8"));
        }
        _ => {}
    }
    if thread.form().is_taper() {
        return super::taper::tap_drill(thread, request);
    }
    if request.taper_reamer {
        return Err(Error::new(Code::Contradiction, Field::TaperReamer).hint_text("this thread is straight"));
    }
    let basis = answer_basis(thread, request.tap, request.percent, request.basis);
    let (limits, doubts) = judging_limits(thread, request.tap)?;
    let found = match request.percent {
        Some(percent) => nearest_to(stock, drill_diameter(thread, percent, request.tap, basis)?, thread)?,
        None => nearest_by_rule(thread, request.tap, stock, limits.as_ref())?,
    };
    let judge = Judge::new(thread, request.tap, basis, limits, stock.oversize)?;
    judge.answer(found.chosen.drill(), Some(&found), doubts)
}

/// The drill nearest to a derived hole, in mm; of a list only what leaves any thread.
fn nearest_to(stock: &Stock<'_>, hole: f64, thread: &Thread) -> Result<Found, Error> {
    // A mark that is off by the rounding of a double still has the drill beside it in the window.
    let mut window = Window::EMPTY;
    window.fill(stock, (hole * PICOMETRES_IN_MM) as i64);
    let major = if stock.is_own() { thread.major_mm().picometres_to(Rounding::Up) } else { i64::MAX };
    let away = |picometres| (picometres as f64 / PICOMETRES_IN_MM - hole).abs();
    let chosen = window.nearest(|picometres| picometres < major, away);
    let range = (Length::ZERO, thread.major_mm());
    let chosen = chosen.ok_or_else(|| no_drill(stock, &window, away, Some(range)))?;
    Ok(window.found(chosen))
}

const PICOMETRES_IN_MM: f64 = 1e9;

/// The drill nearest to an exact hole among the usable ones, from `least` to `most`.
pub(super) fn nearest_between(
    stock: &Stock<'_>,
    hole: Length,
    least: Option<Length>,
    most: Option<Length>,
) -> Result<Found, Error> {
    let low = least.map_or(i64::MIN, |least| least.picometres_to(Rounding::Up));
    let high = most.map_or(i64::MAX, |most| most.picometres_to(Rounding::Down));
    // Where the limits cut the nearest drill off, the one just inside them is next.
    let mark = hole.picometres_to(Rounding::Up).min(high).max(low);
    let mut window = Window::EMPTY;
    window.fill(stock, mark);
    let away = |picometres| hole.away(picometres);
    let chosen = window.nearest(|picometres| low <= picometres && picometres <= high, away);
    let chosen = chosen.ok_or_else(|| no_drill(stock, &window, away, least.zip(most)))?;
    Ok(window.found(chosen))
}

/// No drill does: the nearest is named, and the range that would do.
fn no_drill<D: PartialOrd + Copy>(
    stock: &Stock<'_>,
    window: &Window,
    away: impl Fn(i64) -> D,
    range: Option<(Length, Length)>,
) -> Error {
    let nearest = window.nearest(|_| true, away).map_or(f64::NAN, |spot| spot.drill().diameter_mm().to_f64());
    let (low, high) = range.map_or((f64::NAN, f64::NAN), |(low, high)| (low.to_f64(), high.to_f64()));
    let (field, hint) = match stock.drills {
        Drills::Sets(_) => {
            (Field::DrillSets, "that is the nearest of the sets, in mm: other sets, or a hole bored to this range")
        }
        Drills::Own(_) => (Field::DrillList, "that is the nearest of the list, in mm; a drill of this range would do"),
    };
    Error::new(Code::NoDrill, field).got(nearest).within(low, high).hint_text(hint)
}

fn nearest_by_rule(thread: &Thread, tap: Tap, stock: &Stock<'_>, limits: Option<&Limits>) -> Result<Found, Error> {
    let pitch = thread.pitch_mm();
    let half = || pitch.over(Length::integer(2));
    let depth = if tap == Tap::Cut { pitch.times(cut_depth(thread.form())?)? } else { half()? };
    let hole = thread.major_mm().minus(depth)?;
    let (least, most) = match limits.map(|limits| limits.minor_mm) {
        Some((Some(least), Some(most))) => (Some(least), Some(most)),
        Some((Some(least), None)) if stock.is_own() => (Some(least), Some(least.max(hole).plus(half()?)?)),
        Some((Some(least), None)) => (Some(least), None),
        // Sets have a drill near every hole; a list may have none.
        _ if tap == Tap::Form && !stock.is_own() => (None, None),
        _ if tap == Tap::Form => {
            let (least, most) = form_hole::reach(thread)?;
            (Some(least), Some(most))
        }
        _ => {
            let read = limits.and_then(|limits| limits.minor_mm.0);
            let basic = read.map_or_else(|| least_cut(thread), |least| Ok(Some(least)))?;
            let near = if stock.is_own() { Some(hole.minus(half()?)?) } else { None };
            (near.max(basic), if stock.is_own() { Some(hole.plus(half()?)?) } else { None })
        }
    };
    nearest_between(stock, hole, least, most)
}

/// How far below the major diameter the rule's hole lies, in pitches.
fn cut_depth(form: Form) -> Result<Length, Error> {
    Ok(match form {
        // D - P speaks of the thread's own diameter; theirs is none of the pipe's, and no chart has been read.
        Form::Npsc | Form::Npsm | Form::Npsf => {
            return Err(Error::new(Code::NotSourced, Field::Percent)
                .hint_text("the drills of straight NPS threads have not been read: give a percent of 1.6 P"));
        }
        Form::MetricJ | Form::UnifiedJ | Form::Ba => const { Length::parts(9, 10) },
        Form::Miniature => const { Length::parts(4, 5) },
        Form::Trapezoidal | Form::Acme => const { Length::parts(19, 20) },
        Form::StubAcme => const { Length::parts(57, 100) },
        Form::Buttress | Form::PullButtress => const { Length::parts(57, 50) },
        _ => Length::ONE,
    })
}

/// The basic minor diameter, to a millionth of the pitch, where no limits are known and a drill near the rule's
/// hole may lie below it.
fn least_cut(thread: &Thread) -> Result<Option<Length>, Error> {
    if !thread.is_wire_insert() && (thread.form().is_pipe() || has_bases(thread.form())) {
        return Ok(None);
    }
    let millionths = libm::rint(height_in_pitches(thread.form(), thread.pitch_mm()) * 1e6) as i64;
    let height = thread.pitch_mm().times(Length::new(millionths, 1_000_000)?)?;
    thread.major_mm().minus(height).map(Some)
}

/// The drill that the rule takes from the usual sets.
pub(super) fn usual_drill(thread: &Thread, tap: Tap, limits: Option<&Limits>) -> Option<Drill> {
    let stock = DrillSets::usual(thread.form()).into();
    nearest_by_rule(thread, tap, &stock, limits).ok().map(|found| found.chosen.drill())
}

impl DrillSets {
    /// The sets a shop reaches for first: metric drills for the metric threads and for those of 55°, BSW, BSF, G,
    /// R, Rp and Rc, whose lists are in millimetres now; inch drills for the others.
    ///
    /// # Source
    /// Common practice.
    #[must_use]
    pub const fn usual(form: Form) -> Self {
        if !form.is_inch() || form.is_whitworth_pipe() || matches!(form, Form::Whitworth) {
            Self::NONE.with(DrillSet::Metric)
        } else {
            Self::INCH
        }
    }
}
