//! Kinds and chamfers of taps, and the class of tap for a thread.

use core::ffi::c_char;

use threadcalc_core::{
    ChamferForm, Error, Field, Hole, IsoTap, IsoTapClass, Length, TapAdvice, TapKind, chamfers_that_fit, iso_tap_class,
};

use crate::choices::{threadcalc_hole, threadcalc_tap};
use crate::codes::threadcalc_status;
use crate::limits::threadcalc_range_t;
use crate::memory::{Output, SizedOutput, fixed_text, input, list};
use crate::number::{given, perhaps};
use crate::status::{guard, required, threadcalc_error_t};
use crate::tap_choices::{threadcalc_chamfer_form, threadcalc_iso_tap_class, threadcalc_suits, threadcalc_tap_kind};
use crate::types::{threadcalc_ratio_t, threadcalc_thread_t};

fn kind_of(kind: threadcalc_tap_kind) -> Result<TapKind, Error> {
    required(kind, TapKind::from_number, Field::TapKind, TapKind::CHOICES)
}

fn form_of(form: threadcalc_chamfer_form) -> Result<ChamferForm, Error> {
    required(form, ChamferForm::from_number, Field::ChamferForm, ChamferForm::CHOICES)
}

fn hole_of(hole: threadcalc_hole) -> Result<Hole, Error> {
    required(hole, Hole::from_number, Field::Hole, Hole::CHOICES)
}

/// The thickness of a plating in µm; 0 if none is given.
///
/// # Safety
/// As for every input of the library.
pub(crate) unsafe fn plating_of(plating_um: *const threadcalc_ratio_t) -> Result<Length, Error> {
    Ok(unsafe { perhaps(plating_um, Field::PlatingThickness) }?.unwrap_or(Length::ZERO))
}

/// Whether a kind of tap cuts or forms.
///
/// Errors: missing, unknown-value.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_tap_of_kind(
    tap_kind: threadcalc_tap_kind,
    tap: *mut threadcalc_tap,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let place = unsafe { Output::new(tap) }?;
        place.write(kind_of(tap_kind)?.tap().number());
        Ok(())
    })
}

/// The factor K of a kind of tap for the torque by chip area, coarse pitch in steel: straight flutes 1.35,
/// spiral flutes 1.15, spiral point 0.95; NaN for a form tap, which leaves no chip.
///
/// Errors: missing, unknown-value.
/// Source: a tap maker's published table (chamfer of 5 threads for straight flutes).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_tap_torque_factor(
    tap_kind: threadcalc_tap_kind,
    torque_factor: *mut f64,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let place = unsafe { Output::new(torque_factor) }?;
        place.write(kind_of(tap_kind)?.torque_factor().unwrap_or(f64::NAN));
        Ok(())
    })
}

/// How a kind of tap suits a kind of hole. Frozen.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct threadcalc_tap_advice_t {
    /// How well it suits.
    pub suits: threadcalc_suits,
    /// Why, in words.
    pub reason: [c_char; 124],
}

impl threadcalc_tap_advice_t {
    fn of(advice: TapAdvice) -> Self {
        Self { suits: advice.suits.number(), reason: fixed_text(advice.reason) }
    }
}

/// How a kind of tap suits a through or a blind hole, and why. advice_size is
/// sizeof(threadcalc_tap_advice_t).
///
/// Errors: missing, unknown-value, structure-size.
/// Source: common practice.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_tap_advice(
    tap_kind: threadcalc_tap_kind,
    hole: threadcalc_hole,
    advice: *mut threadcalc_tap_advice_t,
    advice_size: usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let place = unsafe { SizedOutput::new(advice, advice_size) }?;
        place.write(threadcalc_tap_advice_t::of(kind_of(tap_kind)?.advice(hole_of(hole)?)));
        Ok(())
    })
}

/// What a form of chamfer is. Frozen.
#[repr(C)]
#[derive(Clone, Copy, Default)]
pub struct threadcalc_chamfer_t {
    /// The shortest chamfer of the form in threads.
    pub shortest_threads: threadcalc_ratio_t,
    /// The longest chamfer of the form in threads. Plan on this one.
    pub longest_threads: threadcalc_ratio_t,
    /// The kind of hole that the form is made for; 0 for both.
    pub usual_hole: threadcalc_hole,
    /// 0.
    pub reserved: i32,
}

impl threadcalc_chamfer_t {
    fn of(form: ChamferForm) -> Self {
        let (shortest, longest) = form.threads();
        Self {
            shortest_threads: threadcalc_ratio_t::of(shortest),
            longest_threads: threadcalc_ratio_t::of(longest),
            usual_hole: form.usual_hole().map_or(0, Hole::number),
            reserved: 0,
        }
    }
}

/// How many threads a form of chamfer takes, and the hole it is made for. chamfer_size is
/// sizeof(threadcalc_chamfer_t).
///
/// Errors: missing, unknown-value, structure-size.
/// Source: DIN 2197 as tap makers print it (B to 5.5: from memory of the standard, some print 5); the names:
/// tap makers' published tables; the usual hole: common practice.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_chamfer(
    chamfer_form: threadcalc_chamfer_form,
    chamfer: *mut threadcalc_chamfer_t,
    chamfer_size: usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let place = unsafe { SizedOutput::new(chamfer, chamfer_size) }?;
        place.write(threadcalc_chamfer_t::of(form_of(chamfer_form)?));
        Ok(())
    })
}

/// 1 if the longest chamfer of the form has room, else 0. Form B never fits a blind hole: its spiral point
/// drives the chips to the bottom.
///
/// room_threads, in threads: in a blind hole between the end of full thread and the end of the drilled
/// diameter, below a through hole down to what the tap may not touch.
/// Errors: missing, unknown-value, out-of-range (denominator 0).
/// Source: as threadcalc_chamfer.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_chamfer_fits(
    chamfer_form: threadcalc_chamfer_form,
    hole: threadcalc_hole,
    room_threads: *const threadcalc_ratio_t,
    fits: *mut i32,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let room = unsafe { given(room_threads, Field::RoomThreads) }?;
        let place = unsafe { Output::new(fits) }?;
        place.write(i32::from(form_of(chamfer_form)?.fits(hole_of(hole)?, room)));
        Ok(())
    })
}

/// The forms of chamfer that fit a hole with this room, in the order of their numbers; room_threads as for
/// threadcalc_chamfer_fits.
///
/// count is how many there are; with too little room only count is written.
/// Errors: as threadcalc_chamfer_fits, buffer-too-short.
/// Source: as threadcalc_chamfer.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_chamfers_that_fit(
    hole: threadcalc_hole,
    room_threads: *const threadcalc_ratio_t,
    forms: *mut threadcalc_chamfer_form,
    capacity: usize,
    count: *mut usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let room = unsafe { given(room_threads, Field::RoomThreads) }?;
        let hole = hole_of(hole)?;
        unsafe { list(|| chamfers_that_fit(hole, room).map(ChamferForm::number), forms, capacity, count) }?;
        Ok(())
    })
}

/// The tap class for a thread, plated or not. Frozen.
#[repr(C)]
#[derive(Clone, Copy, Default)]
pub struct threadcalc_iso_tap_t {
    /// The class of ISO 2857; 0 if the standard has none: a tap of special size.
    pub tap_class: threadcalc_iso_tap_class,
    /// 0.
    pub reserved: i32,
    /// How much the plating closes the pitch diameter, and a special tap has to be larger.
    pub closing_mm: threadcalc_ratio_t,
}

impl threadcalc_iso_tap_t {
    pub(crate) fn of(tap: IsoTap) -> Self {
        Self {
            tap_class: tap.class.map_or(0, IsoTapClass::number),
            reserved: 0,
            closing_mm: threadcalc_ratio_t::of(tap.closing_mm),
        }
    }
}

/// The class of ISO 2857 for the tolerance class of an ISO metric thread and the plating of the hole.
/// tap_size is sizeof(threadcalc_iso_tap_t).
///
/// plating_um is the thickness on the surface in um, 0 to 1000; NULL or 0/0: none. It closes the pitch
/// diameter by four times as much. Up to the allowance of position G the class is the one for position G of the same grade;
/// more: none, a special tap that is larger by the closing. The hole is gauged after plating with the gauges
/// of position H; a class of position G on the drawing is the one before plating. Thin even plating only, never hot-dip.
/// Errors: does-not-apply (another thread than M and MJ, the hole of a wire insert), class-unset, contradiction (an external class),
/// out-of-range, those of threadcalc_thread_write, structure-size.
/// Source: ISO 2857 and ISO 965-1 (EI of position G, by its formula), from memory.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_iso_tap(
    thread: *const threadcalc_thread_t,
    plating_um: *const threadcalc_ratio_t,
    tap: *mut threadcalc_iso_tap_t,
    tap_size: usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let thread = unsafe { input(thread) }?.read()?;
        let plating = unsafe { plating_of(plating_um) }?;
        let place = unsafe { SizedOutput::new(tap, tap_size) }?;
        place.write(threadcalc_iso_tap_t::of(iso_tap_class(&thread, plating)?));
        Ok(())
    })
}

/// The smallest and the largest pitch diameter of a tap of a class, in mm, not rounded.
///
/// With t the tolerance of the pitch diameter of a thread 5H: class 1 D2 + 0.1 t to D2 + 0.3 t, class 2 0.3 t
/// to 0.5 t, class 3 0.5 t to 0.7 t. The thread's own class does not matter: it is in the choice of the tap's.
/// Errors: missing, unknown-value, does-not-apply (another thread than M and MJ, the hole of a wire
/// insert), not-sourced (t has not been read),
/// those of threadcalc_thread_write.
/// Source: ISO 2857, from memory; two tap makers' published tables give the same limits from M3 to M12.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_iso_tap_pitch_diameter_mm(
    thread: *const threadcalc_thread_t,
    tap_class: threadcalc_iso_tap_class,
    pitch_diameter_mm: *mut threadcalc_range_t,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let thread = unsafe { input(thread) }?.read()?;
        let class = required(tap_class, IsoTapClass::from_number, Field::IsoTapClass, IsoTapClass::CHOICES)?;
        let place = unsafe { Output::new(pitch_diameter_mm) }?;
        let (smallest, largest) = class.pitch_diameter_mm(&thread)?;
        place.write(threadcalc_range_t::of((Some(smallest), Some(largest))));
        Ok(())
    })
}
