//! Drills, percent of thread, and the choice of a tap drill.

use core::mem::offset_of;

use threadcalc_core::{
    Alternative, Basis, Code, Drill, DrillSet, Error, Field, Stock, Tap, TapDrill, TapDrillRequest, drill_diameter,
    percent_thread, tap_drill,
};

use crate::choices::{
    threadcalc_basis, threadcalc_drill_set, threadcalc_drill_sets, threadcalc_tap, threadcalc_within_limits,
};
use crate::codes::threadcalc_status;
use crate::judged_drill::own_drills;
use crate::limits::threadcalc_limits_t;
use crate::memory::{Output, Request, SizedOutput, bytes, fill, input, list, request};
use crate::number::given;
use crate::status::{flag, guard, optional, required, threadcalc_error_t};
use crate::types::{drill_sets, threadcalc_drill_t, threadcalc_finding_t, threadcalc_ratio_t, threadcalc_thread_t};

/// Every drill of the sets, set by set, each in the order of its names. No set: none.
///
/// count is how many there are; with too little room only count is written.
/// Errors: unknown-value, buffer-too-short.
/// Source: ASME B94.11M (number, letter, fractional); ISO 235 (metric).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_drills(
    sets: threadcalc_drill_sets,
    drills: *mut threadcalc_drill_t,
    capacity: usize,
    count: *mut usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let sets = drill_sets(sets)?;
        let all = || threadcalc_core::drills(sets).map(|drill| threadcalc_drill_t::of(&drill));
        unsafe { list(all, drills, capacity, count) }?;
        Ok(())
    })
}

/// The drill of a set with this name: "6.8", "#7", "F", "5/16", "1 1/64".
///
/// Errors: missing (set), unknown-value (no such set or drill).
/// Source: as threadcalc_drills.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_drill_named(
    set: threadcalc_drill_set,
    name: *const u8,
    length: usize,
    drill: *mut threadcalc_drill_t,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let set = required(set, DrillSet::from_number, Field::DrillSets, DrillSet::CHOICES)?;
        let name = unsafe { bytes(name, length) }?;
        let drill = unsafe { Output::new(drill) }?;
        drill.write(threadcalc_drill_t::of(&Drill::named(set, name)?));
        Ok(())
    })
}

/// The drill of exactly this diameter in mm, of any set, else one that is named by its diameter.
///
/// Errors: missing, out-of-range (denominator 0).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_drill_of_diameter(
    diameter_mm: *const threadcalc_ratio_t,
    drill: *mut threadcalc_drill_t,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let diameter = unsafe { given(diameter_mm, Field::Drill) }?;
        let drill = unsafe { Output::new(drill) }?;
        drill.write(threadcalc_drill_t::of(&Drill::of_diameter(diameter)));
        Ok(())
    })
}

pub(crate) fn tap_of(tap: threadcalc_tap) -> Result<Tap, Error> {
    required(tap, Tap::from_number, Field::Tap, Tap::CHOICES)
}

pub(crate) fn basis_of(basis: threadcalc_basis) -> Result<Option<Basis>, Error> {
    optional(basis, Basis::from_number, Field::Basis, Basis::CHOICES)
}

/// The hole for a percent of thread, in mm: D - 1.299038 P x percent/100 on the basis 3H/4,
/// D - 1.082532 P x percent/100 on 5H/8, D - 0.68 P x percent/100 for a form tap. The others
/// have their own height: MJ and UNJ 0.974279 P, S 0.96 P, BSW, BSF, G and Rp 1.280655 P, BA 1.2 P to 0.01 mm,
/// buttress 1.2 P, Tr and ACME P, stub ACME 0.6 P; NPSC and NPSM: E1 + 0.8 P - 1.6 P x percent/100. D is the
/// hole's own, of a wire insert larger than the screw's.
///
/// percent is above 0 and up to 100. basis is required for a cut tap in M and UN, and an error for a form tap and
/// for all other threads.
/// Errors: missing, unknown-value, contradiction (a basis that has no place, external thread),
/// out-of-range, does-not-apply (taper thread; formed Tr, ACME, buttress), not-sourced (NPSF; other formed
/// threads that are not of 60 degrees), those of threadcalc_thread_write.
/// Source: Machinery's Handbook 31 (3H/4); ISO 68-1 (5H/8); form taps: common practice; own heights: those of
/// threadcalc_profile, ISO 228-1:2000 and ASME B1.20.1-1983.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_drill_diameter(
    thread: *const threadcalc_thread_t,
    percent: *const threadcalc_ratio_t,
    tap: threadcalc_tap,
    basis: threadcalc_basis,
    drill_mm: *mut f64,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let thread = unsafe { input(thread) }?.read()?;
        let percent = unsafe { given(percent, Field::Percent) }?;
        let place = unsafe { Output::new(drill_mm) }?;
        place.write(drill_diameter(&thread, percent, tap_of(tap)?, basis_of(basis)?)?);
        Ok(())
    })
}

/// The percent of thread that a drilled hole leaves; the inverse of threadcalc_drill_diameter.
///
/// drill_mm is the hole's diameter in mm, above 0 and below the major diameter.
/// Errors and source: as threadcalc_drill_diameter.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_percent_thread(
    thread: *const threadcalc_thread_t,
    drill_mm: *const threadcalc_ratio_t,
    tap: threadcalc_tap,
    basis: threadcalc_basis,
    percent: *mut f64,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let thread = unsafe { input(thread) }?.read()?;
        let drill = unsafe { given(drill_mm, Field::Drill) }?;
        let place = unsafe { Output::new(percent) }?;
        place.write(percent_thread(&thread, drill, tap_of(tap)?, basis_of(basis)?)?);
        Ok(())
    })
}

/// What a tap drill is asked for. Begin with THREADCALC_TAP_DRILL_REQUEST_INIT.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct threadcalc_tap_drill_request_t {
    /// sizeof(threadcalc_tap_drill_request_t).
    pub size: u32,
    /// Cut or form tap. Required.
    pub tap: threadcalc_tap,
    /// Basis of the percent; required with a percent for a cut tap, an error for a form tap and for pipe
    /// threads.
    pub basis: threadcalc_basis,
    /// The drills to choose from. Required, unless drills are listed.
    pub sets: threadcalc_drill_sets,
    /// For a taper thread: 1 if the hole is reamed to the taper before it is tapped, else 0.
    pub taper_reamer: i32,
    /// 0.
    pub reserved: u32,
    /// Percent of thread; without it the drill nearest to the rule's hole, see threadcalc_tap_drill. None for a
    /// taper thread.
    pub percent: threadcalc_ratio_t,
    /// The drills that the shop owns, to choose from instead of sets; NULL if none are listed. Of a drill in
    /// no set only the diameter counts.
    pub drills: *const threadcalc_drill_t,
    /// How many drills are listed, up to 24.
    pub drill_count: usize,
    /// How much larger than the drill its hole is, in mm, 0 or more; 0/0: the usual.
    pub oversize_mm: threadcalc_ratio_t,
}

// SAFETY: integers and a pointer that may be NULL.
unsafe impl Request for threadcalc_tap_drill_request_t {
    const STARTS: &'static [usize] = &[
        offset_of!(Self, tap),
        offset_of!(Self, basis),
        offset_of!(Self, sets),
        offset_of!(Self, taper_reamer),
        offset_of!(Self, reserved),
        offset_of!(Self, percent),
        offset_of!(Self, drills),
        offset_of!(Self, drill_count),
        offset_of!(Self, oversize_mm),
    ];
}

/// A drill with what it leaves. Frozen.
#[repr(C)]
#[derive(Clone, Copy, Default)]
pub struct threadcalc_judged_drill_t {
    /// The drill.
    pub drill: threadcalc_drill_t,
    /// Percent of thread on the basis of the answer; NaN for a taper thread, where it has no meaning.
    pub percent: f64,
    /// What is left to the largest minor diameter in mm, negative beyond it; 0/0 if there is none.
    pub left_to_limit_mm: threadcalc_ratio_t,
    /// Within the class's minor-diameter limits.
    pub within_limits: threadcalc_within_limits,
    /// 0.
    pub reserved: i32,
}

impl threadcalc_judged_drill_t {
    pub(crate) fn of(judged: &Alternative) -> Self {
        Self {
            drill: threadcalc_drill_t::of(&judged.drill),
            percent: judged.percent,
            left_to_limit_mm: threadcalc_ratio_t::of_option(judged.left_to_limit_mm),
            within_limits: judged.within_limits.number(),
            reserved: 0,
        }
    }
}

/// A chosen tap drill. Frozen.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct threadcalc_tap_drill_t {
    /// The drill.
    pub chosen: threadcalc_judged_drill_t,
    /// The basis of every percent here; 0 for a form tap, whose 100 % is 0.68 P, and for other threads
    /// than M and UN, whose 100 % is their own height.
    pub basis: threadcalc_basis,
    /// How many of the alternatives there are.
    pub alternative_count: i32,
    /// The next smaller and larger drills of the sets, smallest first.
    pub alternatives: [threadcalc_judged_drill_t; 4],
    /// The limits that the hole was judged by.
    pub limits: threadcalc_limits_t,
    /// How many of the findings there are.
    pub finding_count: i32,
    /// 0.
    pub reserved: i32,
    /// What is doubtful.
    pub findings: [threadcalc_finding_t; 4],
    /// The hole that the drill probably leaves, in mm, as threadcalc_probable_hole; 0/0 for a taper thread and
    /// where no oversize is known or no thread would be left. It never changes which drill is chosen.
    pub probable_hole_mm: threadcalc_ratio_t,
    /// What the probable hole leaves to the largest minor diameter in mm; 0/0 if there is none.
    pub probable_left_to_limit_mm: threadcalc_ratio_t,
    /// Percent of thread that the probable hole leaves, on the basis; NaN if there is none.
    pub probable_percent: f64,
}

impl threadcalc_tap_drill_t {
    pub(crate) fn of(found: &TapDrill) -> Self {
        let beside = found.alternatives.iter().flatten().map(threadcalc_judged_drill_t::of);
        let (alternatives, alternative_count) = fill([threadcalc_judged_drill_t::default(); 4], beside);
        let (findings, finding_count) =
            fill([threadcalc_finding_t::NONE; 4], found.findings.iter().map(threadcalc_finding_t::of));
        Self {
            chosen: threadcalc_judged_drill_t::of(&found.chosen),
            basis: found.basis.map_or(0, Basis::number),
            alternative_count,
            alternatives,
            limits: found.limits.as_ref().map_or(threadcalc_limits_t::NONE, threadcalc_limits_t::of),
            finding_count,
            reserved: 0,
            findings,
            probable_hole_mm: threadcalc_ratio_t::of_option(found.probable.map(|probable| probable.hole_mm)),
            probable_left_to_limit_mm: threadcalc_ratio_t::of_option(
                found.probable.and_then(|probable| probable.left_to_limit_mm),
            ),
            probable_percent: found.probable.map_or(f64::NAN, |probable| probable.percent),
        }
    }
}

/// The drill of the sets, or of a list of drills, for a tapped hole. found_size is
/// sizeof(threadcalc_tap_drill_t).
///
/// With a percent: the drill nearest to that hole, whatever the limits. Without: the drill nearest to
/// D - P within the class's minor-diameter limits (cut), or nearest to D - P/2 (form). MJ, UNJ and BA take
/// D - 0.9 P, S D - 0.8 P, Tr and ACME D - 0.95 P, stub ACME D - 0.57 P, buttress D - 1.14 P. Ties go to the
/// larger. A thread without a class is judged by the standard's medium class, with a finding.
/// NPT, NPTF: nearest to K0 = E0 - 0.8 p, with taper reamer to K0 - 3 p/16. Rc: the smallest drill not
/// below D1 at the face, with taper reamer nearest to D1 - useful thread/16. Without a taper reamer
/// finding taper-hole says how deep the threads are full.
/// A list is chosen from by the same rule; no-drill gives the nearest of the list and the range that would do.
/// Errors: missing, unknown-value, contradiction (also a taper reamer in a straight thread, sets
/// beside a list), out-of-range, too-long (more than 24 drills), not-exact (a drill of the list), no-drill, does-not-apply (percent or form tap in a taper thread), those of threadcalc_thread_write,
/// structure-size, unsupported-field.
/// Source: ISO 2306 (D - P); Machinery's Handbook 31 (percent); ASME B94.9-2008 (NPT, direct tapping);
/// form taps, taper reamer, Rc and the rules of the other straight threads: common practice.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_tap_drill(
    thread: *const threadcalc_thread_t,
    drill_request: *const threadcalc_tap_drill_request_t,
    found: *mut threadcalc_tap_drill_t,
    found_size: usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let thread = unsafe { input(thread) }?.read()?;
        let asked = unsafe { request(drill_request) }?;
        let place = unsafe { SizedOutput::new(found, found_size) }?;
        crate::feed::checked_reserve(asked.reserved)?;
        let (sets, own) = (drill_sets(asked.sets)?, unsafe { own_drills(asked.drills, asked.drill_count) }?);
        if !own.is_empty() && !sets.is_none() {
            return Err(Error::new(Code::Contradiction, Field::DrillSets).hint_text("either sets or a list").into());
        }
        let stock = if own.is_empty() { Stock::from(sets) } else { Stock::from(&own) };
        let oversize = asked.oversize_mm.read(Field::Oversize)?;
        let asked = TapDrillRequest {
            tap: tap_of(asked.tap)?,
            percent: asked.percent.read(Field::Percent)?,
            basis: basis_of(asked.basis)?,
            sets: oversize.map_or(stock, |oversize| stock.with_oversize_mm(oversize)),
            taper_reamer: flag(asked.taper_reamer, Field::TaperReamer)?,
        };
        place.write(threadcalc_tap_drill_t::of(&tap_drill(&thread, &asked)?));
        Ok(())
    })
}
