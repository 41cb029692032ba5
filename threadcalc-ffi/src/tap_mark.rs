//! Limits of taps, what stands on their shanks, and whether a tap is the one for the job.

use core::ffi::c_char;
use core::mem::offset_of;

use threadcalc_core::{
    ChamferForm, Code, Error, Field, Form, Hand, Hole, IsoTapClass, Length, LimitLetter, Range, ShankMark, TapJob,
    TapLimit, Thread, ToleranceClass, h_limit_for_plating, judge_tap, read_shank_mark, usual_tap_limit,
    usual_tap_limit_for_plating,
};

use crate::choices::{threadcalc_hand, threadcalc_hole};
use crate::codes::threadcalc_status;
use crate::limits::threadcalc_range_t;
use crate::memory::{Output, Request, SizedOutput, bytes, input, list, padded_text, request, text_of};
use crate::status::{flag, guard, optional, required, threadcalc_error_t};
use crate::tap::plating_of;
use crate::tap_choices::{threadcalc_chamfer_form, threadcalc_iso_tap_class, threadcalc_limit_letter};
use crate::types::{offset, threadcalc_finding_t, threadcalc_ratio_t, threadcalc_thread_t};

/// The limit of a ground tap: H3, D5. Frozen. All zeros are "not given".
#[repr(C)]
#[derive(Clone, Copy, Default, PartialEq, Eq)]
pub struct threadcalc_tap_limit_t {
    /// The letter.
    pub letter: threadcalc_limit_letter,
    /// The number, 1 to 30.
    pub number: i32,
}

impl threadcalc_tap_limit_t {
    pub(crate) fn of(limit: TapLimit) -> Self {
        Self { letter: limit.letter().number(), number: i32::from(limit.number()) }
    }

    fn read(self) -> Result<TapLimit, Error> {
        let letter = required(self.letter, LimitLetter::from_number, Field::TapLimit, LimitLetter::CHOICES)?;
        // What is no u8 is out of range as well: the core says which range.
        let number = u8::try_from(self.number).unwrap_or(u8::MAX);
        TapLimit::new(letter, number).map_err(|error| error.got(f64::from(self.number)))
    }

    fn read_optional(self) -> Result<Option<TapLimit>, Error> {
        if self == Self::default() { Ok(None) } else { self.read().map(Some) }
    }
}

/// What the two calls for the sizes of a limit have in common.
unsafe fn of_limit(
    limit: *const threadcalc_tap_limit_t,
    thread: *const threadcalc_thread_t,
    range: *mut threadcalc_range_t,
    error: *mut threadcalc_error_t,
    size: impl Fn(TapLimit, &Thread) -> Result<(Option<Length>, Length), Error>,
) -> threadcalc_status {
    guard(error, || {
        let limit = unsafe { input(limit) }?.read()?;
        let thread = unsafe { input(thread) }?.read()?;
        let place = unsafe { Output::new(range) }?;
        let (smallest, largest) = size(limit, &thread)?;
        let sizes: Range = (smallest, Some(largest));
        place.write(threadcalc_range_t::of(sizes));
        Ok(())
    })
}

/// How far the pitch diameter of a tap may lie above the basic one of the thread, in mm, smallest and largest.
///
/// H n: (n - 1) x 0.0005 in to n x 0.0005 in. L n: as much below. D n: largest n x 0.013 mm; smallest 0.020
/// (P 0.8), 0.025 (P 1) or 0.031 (P 1.25, 1.5) less, 0/0 at other pitches, where the tolerance has not been read.
/// Errors: missing, unknown-value, out-of-range (number), not-sourced (H and L above 1 in, where the steps are
/// wider), those of threadcalc_thread_write.
/// Source: ASME B94.9 from memory; D as a tap maker's published table gives it for M5 to M10.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_tap_limit_above_basic_mm(
    limit: *const threadcalc_tap_limit_t,
    thread: *const threadcalc_thread_t,
    above_basic_mm: *mut threadcalc_range_t,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    unsafe { of_limit(limit, thread, above_basic_mm, error, TapLimit::above_basic_mm) }
}

/// The smallest and the largest pitch diameter of a tap by its limit, in mm; the smallest is 0/0 where
/// threadcalc_tap_limit_above_basic_mm has none.
///
/// Errors: those of threadcalc_tap_limit_above_basic_mm; not-sourced and does-not-apply (a taper thread) where
/// the thread has no basic pitch diameter among its limits.
/// Source: as threadcalc_tap_limit_above_basic_mm; the basic pitch diameter: as threadcalc_limits.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_tap_limit_pitch_diameter_mm(
    limit: *const threadcalc_tap_limit_t,
    thread: *const threadcalc_thread_t,
    pitch_diameter_mm: *mut threadcalc_range_t,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    unsafe { of_limit(limit, thread, pitch_diameter_mm, error, TapLimit::pitch_diameter_mm) }
}

/// The limit of a ground tap that tap makers recommend to cut a class of thread in the usual materials, not
/// plated, H for Unified and D for metric threads: a recommendation and no standard. GO and NOT GO decide.
///
/// Errors: class-unset, does-not-apply (an external class, another thread than UN and M), not-sourced (the
/// hole of a wire insert, other classes than 2B,
/// 3B and 6H, other Unified sizes than those of UNC and UNF up to 3/4-10, other metric ones than the coarse
/// pitches of M1.6 to M36 of the first choice, M1.8, M3.5, M4.5, M7, M14, M8x1 and M10x1.25), those of
/// threadcalc_thread_write.
/// Source: a tap maker's printed recommendations for classes 2B and 3B. D: printed recommendations for 6H (M1.6,
/// M1.8) and the one limit for which a tap maker's printed list has each of the other sizes; common practice.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_usual_tap_limit(
    thread: *const threadcalc_thread_t,
    limit: *mut threadcalc_tap_limit_t,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let thread = unsafe { input(thread) }?.read()?;
        let place = unsafe { Output::new(limit) }?;
        place.write(threadcalc_tap_limit_t::of(usual_tap_limit(&thread)?));
        Ok(())
    })
}

/// The limit of a ground tap for a thread that is gauged after plating: the usual one, raised by what the plating
/// closes the pitch diameter over the step of 0.0005 in (H) or 0.013 mm (D), rounded up.
///
/// plating_um is the thickness on the surface in um, 0 to 1000; it closes the pitch diameter of a 60 degree
/// thread by four times as much.
/// Errors: those of threadcalc_usual_tap_limit, out-of-range (also beyond 30).
/// Source: four times the thickness, raised by as many limits: common practice; the usual limit as there.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_usual_tap_limit_for_plating(
    thread: *const threadcalc_thread_t,
    plating_um: *const threadcalc_ratio_t,
    limit: *mut threadcalc_tap_limit_t,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    unsafe { for_plating(thread, plating_um, limit, error, usual_tap_limit_for_plating) }
}

/// The smallest H limit whose taps leave room for a plating: its closing over 0.0005 in, rounded up, + 1.
///
/// plating_um is the thickness on the surface in um, 0 to 1000; it closes the pitch diameter of a 60 degree
/// thread by four times as much. Without plating it is H1: taps are chosen larger than that for their life;
/// what the class allows at most is for the gauge.
/// Errors: out-of-range (also beyond H30), not-sourced (above 1 in), those of threadcalc_thread_write.
/// Source: ASME B94.9, from memory; derived.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_h_limit_for_plating(
    thread: *const threadcalc_thread_t,
    plating_um: *const threadcalc_ratio_t,
    limit: *mut threadcalc_tap_limit_t,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    unsafe { for_plating(thread, plating_um, limit, error, h_limit_for_plating) }
}

unsafe fn for_plating(
    thread: *const threadcalc_thread_t,
    plating_um: *const threadcalc_ratio_t,
    limit: *mut threadcalc_tap_limit_t,
    error: *mut threadcalc_error_t,
    limit_of: fn(&Thread, Length) -> Result<TapLimit, Error>,
) -> threadcalc_status {
    guard(error, || {
        let thread = unsafe { input(thread) }?.read()?;
        let plating = unsafe { plating_of(plating_um) }?;
        let place = unsafe { Output::new(limit) }?;
        place.write(threadcalc_tap_limit_t::of(limit_of(&thread, plating)?));
        Ok(())
    })
}

/// What the shank of a tap says; what it does not say is 0. Frozen.
///
/// A mark given to a call may be one that was read, or one that the caller filled in.
#[repr(C)]
#[derive(Clone, Copy, Default)]
pub struct threadcalc_shank_mark_t {
    /// The thread, without class; all zeros without one.
    pub thread: threadcalc_thread_t,
    /// Left only if the shank says so; 0 is read as right.
    pub hand: threadcalc_hand,
    /// 1 for 6HX: the maker's own limits for that class, usually towards its upper end.
    pub own_limits: i32,
    /// 1 if the thread of the tap is ground: G or GROUND.
    pub ground: i32,
    /// 1 for STI or EG: for a wire insert, larger than the screw's own thread.
    pub wire_insert: i32,
    /// H, L or D limit.
    pub limit: threadcalc_tap_limit_t,
    /// Class of ISO 2857.
    pub iso_class: threadcalc_iso_tap_class,
    /// Form of the chamfer.
    pub chamfer_form: threadcalc_chamfer_form,
    /// Where the first word begins that was not understood, in bytes.
    pub not_read_at: i64,
    /// How many bytes that word is; 0 if all was understood.
    pub not_read_length: i64,
    /// The class of thread that the tap is meant to cut, NUL-terminated; empty if there is none.
    pub tolerance_class: [c_char; 8],
}

impl threadcalc_shank_mark_t {
    fn of(mark: &ShankMark) -> Self {
        let (at, length) = mark.not_read.unwrap_or((0, 0));
        Self {
            thread: mark.thread.as_ref().map_or_else(threadcalc_thread_t::default, threadcalc_thread_t::of),
            hand: mark.hand.number(),
            own_limits: i32::from(mark.own_limits),
            ground: i32::from(mark.ground),
            wire_insert: i32::from(mark.wire_insert),
            limit: mark.limit.map_or_else(threadcalc_tap_limit_t::default, threadcalc_tap_limit_t::of),
            iso_class: mark.iso_class.map_or(0, IsoTapClass::number),
            chamfer_form: mark.chamfer.map_or(0, ChamferForm::number),
            not_read_at: offset(at),
            not_read_length: offset(length),
            tolerance_class: mark.tolerance_class.map_or([0; 8], |class| padded_text(class.text())),
        }
    }

    fn read(&self) -> Result<ShankMark, Error> {
        let mut mark = ShankMark::default();
        mark.thread = self.thread.read_optional()?;
        mark.hand = optional(self.hand, Hand::from_number, Field::Hand, Hand::CHOICES)?.unwrap_or(Hand::Right);
        mark.own_limits = flag(self.own_limits, Field::TapMark)?;
        mark.ground = flag(self.ground, Field::TapMark)?;
        mark.wire_insert = flag(self.wire_insert, Field::WireInsert)?;
        mark.limit = self.limit.read_optional()?;
        mark.iso_class = optional(self.iso_class, IsoTapClass::from_number, Field::IsoTapClass, IsoTapClass::CHOICES)?;
        mark.chamfer = optional(self.chamfer_form, ChamferForm::from_number, Field::ChamferForm, ChamferForm::CHOICES)?;
        mark.tolerance_class = class_of(text_of(&self.tolerance_class))?;
        mark.not_read = self.not_read()?;
        Ok(mark)
    }

    fn not_read(&self) -> Result<Option<(usize, usize)>, Error> {
        if self.not_read_length == 0 {
            return Ok(None);
        }
        let wrong = |_| {
            Error::new(Code::OutOfRange, Field::TapMark)
                .hint_text("not_read_at and not_read_length are bytes of a text")
        };
        let at = usize::try_from(self.not_read_at).map_err(wrong)?;
        Ok(Some((at, usize::try_from(self.not_read_length).map_err(wrong)?)))
    }
}

/// The class of a text, of whichever form it is: no two forms have the same.
fn class_of(text: &[u8]) -> Result<Option<ToleranceClass>, Error> {
    if text.is_empty() {
        return Ok(None);
    }
    let unknown = Error::new(Code::UnknownClass, Field::ToleranceClass).hint_text("a class such as 6H or 2B");
    Form::ALL.iter().find_map(|form| ToleranceClass::new(*form, text).ok()).map(Some).ok_or(unknown)
}

/// Reads what stands on the shank of a tap: M8x1.25 6HX LH, 1/4-20 UNC GH3 HSS, M10 D5. mark_size is
/// sizeof(threadcalc_shank_mark_t). UTF-8, or lone Latin-1 bytes; offsets are bytes of the text.
///
/// Words in any order: the thread as in a designation; LH, LEFT; the class of thread that it cuts, with X
/// within the maker's own limits; ISO1 to ISO3; the limit H3, L1, D5, with G ground; STI or EG for a wire
/// insert; the chamfer C, FORM C, C/2-3, PLUG; material, coating and flutes, which are of no account.
/// Errors: empty, too-long (96 bytes), unreadable if nothing is understood; those of threadcalc_thread_read if
/// the thread contradicts itself; structure-size.
/// Source: common practice; ASME B94.9 and DIN 2197 for letters, from memory.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_read_shank_mark(
    text: *const u8,
    length: usize,
    mark: *mut threadcalc_shank_mark_t,
    mark_size: usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let text = unsafe { bytes(text, length) }?;
        let place = unsafe { SizedOutput::new(mark, mark_size) }?;
        place.write(threadcalc_shank_mark_t::of(&read_shank_mark(text)?));
        Ok(())
    })
}

/// What a tap is wanted for. Begin with THREADCALC_TAP_JOB_INIT.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct threadcalc_tap_job_t {
    /// sizeof(threadcalc_tap_job_t).
    pub size: u32,
    /// Through or blind; 0 if it is not known.
    pub hole: threadcalc_hole,
    /// 1 if the hole is for a wire insert, else 0.
    pub wire_insert: i32,
    /// 0.
    pub reserved: u32,
    /// The thread; without a class it is judged by the standard's medium class. Required.
    pub thread: threadcalc_thread_t,
    /// Thickness of a plating that the thread is gauged after, in um, 0 to 1000; left out: none.
    pub plating_um: threadcalc_ratio_t,
    /// Threads of room for the chamfer, as for threadcalc_chamfer_fits; left out: not known.
    pub room_threads: threadcalc_ratio_t,
}

// SAFETY: integers and arrays of integers only.
unsafe impl Request for threadcalc_tap_job_t {
    const STARTS: &'static [usize] = &[
        offset_of!(Self, hole),
        offset_of!(Self, wire_insert),
        offset_of!(Self, reserved),
        offset_of!(Self, thread),
        offset_of!(Self, plating_um),
        offset_of!(Self, room_threads),
    ];
}

impl threadcalc_tap_job_t {
    fn read(&self) -> Result<TapJob, Error> {
        crate::feed::checked_reserve(self.reserved)?;
        Ok(TapJob {
            thread: self.thread.read()?,
            plating_um: self.plating_um.read(Field::PlatingThickness)?.unwrap_or(Length::ZERO),
            hole: optional(self.hole, Hole::from_number, Field::Hole, Hole::CHOICES)?,
            room_threads: self.room_threads.read(Field::RoomThreads)?,
            wire_insert: flag(self.wire_insert, Field::WireInsert)?,
        })
    }
}

/// Compares what stands on a shank with the job: hand, thread, class or limit, plating, chamfer.
///
/// Findings tap-hand, tap-thread, tap-wire-insert (errors); tap-class, tap-too-small, tap-too-large,
/// tap-unmarked, tap-own-limits, tap-chamfer; class-assumed, limits-not-sourced, not-read. A tap cuts a little
/// larger than it is; what comes of that only the gauge says. count is how many there are, up to 12; with too
/// little room only count is written.
/// Errors: out-of-range (plating outside 0 to 1000 um, negative room), contradiction (an external thread),
/// missing, unknown-value, unknown-class, those of threadcalc_thread_write, structure-size, unsupported-field,
/// buffer-too-short.
/// Source: ISO 2857 and ASME B94.9, from memory; which severity: judgement.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_judge_tap(
    mark: *const threadcalc_shank_mark_t,
    tap_job: *const threadcalc_tap_job_t,
    findings: *mut threadcalc_finding_t,
    capacity: usize,
    count: *mut usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let mark = unsafe { input(mark) }?.read()?;
        let job = unsafe { request(tap_job) }?.read()?;
        let found = judge_tap(&mark, &job)?;
        unsafe { list(|| found.iter().map(threadcalc_finding_t::of), findings, capacity, count) }?;
        Ok(())
    })
}
