//! Which diameters and pitches the standards list, and what is near a thread that they do not.

mod asme_b1_1;
mod asme_b1_20_1;
mod asme_b1_5;
mod asme_b1_9;
mod bs_84;
mod bs_93;
mod by_size;
mod iso_1501;
mod iso_228_1;
mod iso_261;
mod iso_2904;
mod listed;
mod near;
mod pipe;
mod pitches;
mod sizes;
mod token;

pub(crate) use asme_b1_20_1::{InchPipe, e4_inches};
pub(crate) use bs_93::ba_depth;
pub use by_size::{threads_near_diameter, threads_near_pitch};
pub(crate) use iso_228_1::{MetricPipe, minor_tolerance, whitworth_height};
pub(crate) use listed::{Listed, ba_number, ba_size, listed};
pub(crate) use near::add_near;
pub use near::{Near, NearThreads, near};
pub(crate) use pipe::{PipeSize, inch_pipe, metric_pipe, other_system, pipe_size, pipe_sizes};
pub(crate) use pitches::{ListedPitch, PITCHES};
pub use pitches::{PitchSystem, PitchSystems};
pub(crate) use sizes::sizes;
pub use token::Series;

use crate::form::Form;
use crate::length::Length;
use crate::thread::Thread;
use asme_b1_1::UnifiedSize;
use iso_261::MetricSize;

/// The constant-pitch series, in the order of the bits of [`UnifiedSize::constant`].
const CONSTANT_PITCH: [(Series, u16, u16); 8] = [
    (Series::Un4, 4, asme_b1_1::UN4),
    (Series::Un6, 6, asme_b1_1::UN6),
    (Series::Un8, 8, asme_b1_1::UN8),
    (Series::Un12, 12, asme_b1_1::UN12),
    (Series::Un16, 16, asme_b1_1::UN16),
    (Series::Un20, 20, asme_b1_1::UN20),
    (Series::Un28, 28, asme_b1_1::UN28),
    (Series::Un32, 32, asme_b1_1::UN32),
];

/// `value` as a whole count of `1 / parts`, if it is one.
fn count_of(value: Length, parts: i64) -> Option<i64> {
    let scaled = value.numerator().checked_mul(parts)?;
    (scaled.checked_rem(value.denominator())? == 0).then_some(scaled.checked_div(value.denominator())?)
}

fn metric_size(diameter: Length) -> Option<&'static MetricSize> {
    let um = count_of(diameter, 1000)?;
    let place = iso_261::SIZES.binary_search_by(|size| i64::from(size.diameter_um).cmp(&um)).ok()?;
    iso_261::SIZES.get(place)
}

fn unified_size(diameter: Length) -> Option<&'static UnifiedSize> {
    // 1/10000 in is 127/50000 mm.
    let scaled = diameter.numerator().checked_mul(50_000)?;
    let part = diameter.denominator().checked_mul(127)?;
    let e4 = (scaled.checked_rem(part)? == 0).then_some(scaled.checked_div(part)?)?;
    let place = asme_b1_1::SIZES.binary_search_by(|size| i64::from(size.diameter_e4_in).cmp(&e4)).ok()?;
    asme_b1_1::SIZES.get(place)
}

/// Threads per inch in tenths, if they are whole.
fn tenths_per_inch(pitch: Length) -> Option<i64> {
    // 25.4 mm / pitch in tenths: 254 / pitch.
    let top = pitch.denominator().checked_mul(254)?;
    (top.checked_rem(pitch.numerator())? == 0).then_some(top.checked_div(pitch.numerator())?)
}

/// The series that lists this diameter with this pitch, and whether the form's standard lists them.
pub(crate) fn place(form: Form, diameter: Length, pitch: Length) -> (Option<Series>, bool) {
    if form.is_metric() {
        let series = metric_series(diameter, pitch).filter(|_| form == Form::Metric || is_metric_j(diameter, pitch));
        return (series, series.is_some());
    }
    if form.is_unified() {
        let series = unified_size(diameter).and_then(|size| unified_series(size, pitch));
        return (Some(series.unwrap_or(Series::Uns)), series.is_some());
    }
    listed_place(form, diameter, pitch)
}

/// Apart, for the stack that its walk through the tables takes.
#[inline(never)]
fn listed_place(form: Form, diameter: Length, pitch: Length) -> (Option<Series>, bool) {
    let found = listed(form).find(|row| row.diameter == diameter && row.pitch == pitch);
    (found.and_then(|row| row.series), found.is_some())
}

fn metric_series(diameter: Length, pitch: Length) -> Option<Series> {
    let (size, um) = (metric_size(diameter)?, count_of(pitch, 1000)?);
    if i64::from(size.coarse_um) == um {
        return Some(Series::Coarse);
    }
    size.fine_um.iter().any(|fine| i64::from(*fine) == um).then_some(Series::Fine)
}

/// ISO 5855-1:1999 takes the sizes of ISO 261 from 1.6 mm on, with pitches from 0.35 mm on (from memory).
fn is_metric_j(diameter: Length, pitch: Length) -> bool {
    diameter >= const { Length::parts(8, 5) } && pitch >= const { Length::parts(7, 20) }
}

fn unified_series(size: &UnifiedSize, pitch: Length) -> Option<Series> {
    let tenths = tenths_per_inch(pitch)?;
    let graded = [(size.unc_tenths, Series::Unc), (size.unf_tenths, Series::Unf), (size.unef_tenths, Series::Unef)];
    if let Some((_, series)) = graded.iter().find(|(listed, _)| i64::from(*listed) == tenths) {
        return Some(*series);
    }
    let listed = |(_, per_inch, bit): &&(Series, u16, u16)| {
        i64::from(per_inch.saturating_mul(10)) == tenths && size.constant & bit != 0
    };
    CONSTANT_PITCH.iter().find(listed).map(|(series, _, _)| *series)
}

/// The pitch that a series has at a diameter.
pub(crate) fn pitch_of(series: Series, diameter: Length) -> Option<Length> {
    let tenths = match series {
        Series::Coarse => {
            let um = metric_size(diameter)?.coarse_um;
            return (um != 0).then(|| Length::parts(u32::from(um), 1000));
        }
        Series::Fine | Series::Uns => None,
        Series::Bsw | Series::Bsf => {
            return listed(Form::Whitworth)
                .find(|row| row.series == Some(series) && row.diameter == diameter)
                .map(|row| row.pitch);
        }
        Series::Unc => Some(unified_size(diameter)?.unc_tenths),
        Series::Unf => Some(unified_size(diameter)?.unf_tenths),
        Series::Unef => Some(unified_size(diameter)?.unef_tenths),
        constant => {
            let (_, per_inch, bit) = CONSTANT_PITCH.iter().find(|(series, _, _)| *series == constant)?;
            (unified_size(diameter)?.constant & bit != 0).then(|| per_inch.saturating_mul(10))
        }
    };
    tenths.filter(|tenths| *tenths != 0).map(|tenths| Length::parts(254, u32::from(tenths)))
}

/// Whether ISO 262 selects this diameter and pitch for screws, bolts and nuts.
#[must_use]
pub fn is_iso_262(thread: &Thread) -> bool {
    let selected = || {
        let um = count_of(thread.pitch_mm(), 1000)?;
        Some(metric_size(thread.major_mm())?.iso_262_um.iter().any(|pitch| i64::from(*pitch) == um))
    };
    thread.form() == Form::Metric && thread.starts() == 1 && selected().unwrap_or(false)
}

/// How strongly the standard prefers the diameter: 1 first, 2 second, 3 third choice; None if it
/// does not list it. Unified: 1 primary, 2 secondary.
#[must_use]
pub fn choice(thread: &Thread) -> Option<u8> {
    let nominal = thread.nominal_mm()?;
    match thread.form() {
        form if form.is_metric() => metric_size(nominal).map(|size| size.choice),
        form if form.is_unified() => unified_size(nominal).map(|size| if size.secondary { 2 } else { 1 }),
        _ => None,
    }
}

fn metric_diameter(size: &MetricSize) -> Length {
    Length::parts(size.diameter_um, 1000)
}

fn unified_diameter(size: &UnifiedSize) -> Length {
    // At most 60000 * 127: far inside 32 bits.
    Length::parts(size.diameter_e4_in.saturating_mul(127), 50_000)
}

/// Every thread that the standards list, right hand, without a class.
///
/// `form` or `series` narrow the list; the order is that of the forms' numbers, then size, then coarse to
/// fine. Pipe threads and the families with one pitch a size have no series; holes for wire inserts are those
/// of M and UN, [`Thread::with_wire_insert`].
///
/// ```
/// use threadcalc_core::{Form, Series, standard_threads};
///
/// let coarse = standard_threads(Some(Form::Metric), Some(Series::Coarse));
/// assert_eq!(coarse.count(), 40);
/// ```
///
/// # Source
/// ISO 261:1998 table 2; ASME B1.1-2003 table 1; ASME B1.20.1-1983; ASME B1.20.3; ISO 228-1:2000; ISO 7-1:1994;
/// from memory in part: ISO 5855-1:1999, ISO 1501:2009, ASME B1.15-1995, BS 84:2007, BS 93:2008, ISO 2904:2020,
/// ASME B1.5-1997, B1.8-1988 and B1.9-1973.
pub fn standard_threads(form: Option<Form>, series: Option<Series>) -> impl Iterator<Item = Thread> + Clone {
    let forms = Form::ALL.iter().copied().filter(move |own| form.is_none_or(|form| form == *own));
    forms
        .flat_map(|form| threads_of_form(form, |_, _| true))
        .filter(move |thread| series.is_none() || thread.series() == series)
}

/// Those of a form whose basic major diameter and pitch are wanted: only they are built.
pub(crate) fn threads_of_form(
    form: Form,
    is_wanted: impl Fn(Length, Length) -> bool + Copy,
) -> impl Iterator<Item = Thread> + Clone {
    let pipe = pipe_sizes(form).filter(move |size| is_wanted(size.major, size.pitch));
    let pipe = pipe.map(move |size| Thread::of_pipe_size(form, size));
    sizes(form)
        .filter(move |(diameter, pitch)| is_wanted(*diameter, *pitch))
        .filter_map(move |(diameter, pitch)| Thread::build(form, diameter, pitch, 1).ok())
        .chain(pipe)
}
