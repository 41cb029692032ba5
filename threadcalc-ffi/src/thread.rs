//! Threads: read, written, built, listed, looked at.

use core::ffi::c_char;

use threadcalc_core::{
    Field, Form, Series, Thread, choice, is_iso_262, read_fit, standard_threads, threads_near_diameter,
    threads_near_pitch,
};

use crate::choices::{threadcalc_form, threadcalc_series};
use crate::codes::threadcalc_status;
use crate::memory::{Output, SizedOutput, bytes, input, list, text_out};
use crate::number::given;
use crate::status::{Fault, guard, optional, threadcalc_error_t};
use crate::types::{threadcalc_finding_t, threadcalc_ratio_t, threadcalc_thread_t};

/// Reads one designation: M8x1.25-6H, 1/4-20 UNC-2B, #10-32, M16xPh3P1.5-LH, G1/2A, Rc 1/2, 1/4-18 NPT,
/// MJ6x1-4H5H, Tr40x14P7, 1/4-28 UNJF-3B, 1.500-4-ACME-2G, 1/2 BSW, 2 BA, S0.8, M8x1.25 STI.
/// Any bytes may be given.
///
/// Errors, with the byte: empty, unreadable, too-long (80 bytes), series-mismatch, unknown-class, fit,
/// unsupported-form, out-of-range, not-exact, overflow.
/// Source: ISO 965-1 and ASME B1.1 (designations), ISO 261 (coarse pitches); ISO 228-1, ISO 7-1,
/// ASME B1.20.1 and B1.20.3 (pipe threads).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_thread_read(
    designation: *const u8,
    length: usize,
    thread: *mut threadcalc_thread_t,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let designation = unsafe { bytes(designation, length) }?;
        let thread = unsafe { Output::new(thread) }?;
        thread.write(threadcalc_thread_t::of(&Thread::read(designation)?));
        Ok(())
    })
}

/// Reads a fit: M8x1.25-6H/6g, 1/4-20 UNC-2A/2B, Rp/R 1/2. Internal and external thread, whatever their
/// order in the text. A class of both sides, normal of BA, 2G of ACME, gets the side that the other leaves.
///
/// Errors, with the byte: those of threadcalc_thread_read; missing for a text with one class only,
/// contradiction for two classes of one side, and for two different ones that are of both sides (2G/3G).
/// Source: ISO 965-1:2013 (designation of a fit); ISO 7-1:1994 (Rp/R, Rc/R); ASME B1.1-2003; from memory.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_read_fit(
    fit: *const u8,
    length: usize,
    internal: *mut threadcalc_thread_t,
    external: *mut threadcalc_thread_t,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let fit = unsafe { bytes(fit, length) }?;
        let (internal, external) = unsafe { (Output::new(internal)?, Output::new(external)?) };
        let (hole, screw) = read_fit(fit)?;
        internal.write(threadcalc_thread_t::of(&hole));
        external.write(threadcalc_thread_t::of(&screw));
        Ok(())
    })
}

/// A metric thread, right hand, single start, from its diameter and pitch in mm.
///
/// Errors: missing, out-of-range (diameter up to 2000 mm, pitch up to 5/8 of it), overflow.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_thread_metric(
    diameter_mm: *const threadcalc_ratio_t,
    pitch_mm: *const threadcalc_ratio_t,
    thread: *mut threadcalc_thread_t,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let diameter = unsafe { given(diameter_mm, Field::Diameter) }?;
        let pitch = unsafe { given(pitch_mm, Field::Pitch) }?;
        let thread = unsafe { Output::new(thread) }?;
        thread.write(threadcalc_thread_t::of(&Thread::metric(diameter, pitch)?));
        Ok(())
    })
}

/// A Unified thread, right hand, single start, from its diameter in inches and its threads per inch.
///
/// Errors: as threadcalc_thread_metric.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_thread_unified(
    diameter_in: *const threadcalc_ratio_t,
    threads_per_inch: *const threadcalc_ratio_t,
    thread: *mut threadcalc_thread_t,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let diameter = unsafe { given(diameter_in, Field::Diameter) }?;
        let threads = unsafe { given(threads_per_inch, Field::ThreadsPerInch) }?;
        let thread = unsafe { Output::new(thread) }?;
        thread.write(threadcalc_thread_t::of(&Thread::unified(diameter, threads)?));
        Ok(())
    })
}

/// A Unified thread from the text that names its size (1/4, #10, No. 10, 10, 1 1/4, 0.3) and its threads
/// per inch. A bare whole number is read by the pitch: 10 with 32 is No. 10, 1 with 8 is 1 in.
///
/// Errors: as threadcalc_thread_read for the size, as threadcalc_thread_metric.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_thread_unified_size(
    size_text: *const u8,
    length: usize,
    threads_per_inch: *const threadcalc_ratio_t,
    thread: *mut threadcalc_thread_t,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let size = unsafe { bytes(size_text, length) }?;
        let threads = unsafe { given(threads_per_inch, Field::ThreadsPerInch) }?;
        let thread = unsafe { Output::new(thread) }?;
        thread.write(threadcalc_thread_t::of(&Thread::unified_size(size, threads)?));
        Ok(())
    })
}

/// The tapped hole that takes a wire insert (STI) for a thread: the same pitch on a larger diameter.
///
/// Errors: as threadcalc_thread_write; unsupported-form for another thread than M, MJ, UN and UNJ of one
/// start, contradiction for an external one.
/// Source: ASME B18.29.1-2010 and B18.29.2M-2005: larger by 1.5 H, to 0.001 mm and 0.0001 in; from memory.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_thread_with_wire_insert(
    thread: *const threadcalc_thread_t,
    hole: *mut threadcalc_thread_t,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let thread = unsafe { input(thread) }?.read()?;
        let hole = unsafe { Output::new(hole) }?;
        hole.write(threadcalc_thread_t::of(&thread.with_wire_insert()?));
        Ok(())
    })
}

/// Writes the canonical designation: pitch always written, ASCII x, class before -LH.
///
/// Errors: those of a thread given as a structure (missing, unknown-value, out-of-range, unknown-class,
/// contradiction, series-mismatch, unsupported-form, overflow), buffer-too-short.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_thread_write(
    thread: *const threadcalc_thread_t,
    text: *mut c_char,
    capacity: usize,
    needed: *mut usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let thread = unsafe { input(thread) }?.read()?;
        unsafe { text_out(|sink| sink.display(thread), text, capacity, needed) }?;
        Ok(())
    })
}

/// Writes the text that names the size: 10, 1/2, No. 10, 1 1/4. At most 16 bytes with its NUL.
///
/// Errors: as threadcalc_thread_write.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_thread_size_text(
    thread: *const threadcalc_thread_t,
    text: *mut c_char,
    capacity: usize,
    needed: *mut usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let size = unsafe { input(thread) }?.read()?.size();
        unsafe { text_out(|sink| sink.display(size), text, capacity, needed) }?;
        Ok(())
    })
}

/// What is doubtful about a thread as read: a special, with the standard threads near it; an older name
/// that leaves something to assume; for a pipe thread the families it is taken for.
///
/// count is how many there are; with too little room only count is written.
/// Errors: as threadcalc_thread_write.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_thread_findings(
    thread: *const threadcalc_thread_t,
    findings: *mut threadcalc_finding_t,
    capacity: usize,
    count: *mut usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let found = unsafe { input(thread) }?.read()?.findings();
        unsafe { list(|| found.iter().map(threadcalc_finding_t::of), findings, capacity, count) }?;
        Ok(())
    })
}

/// Every thread of the standard series, right hand, without a class: form, diameter, coarse to fine.
///
/// form and series narrow the list; 0 is any. Pipe threads have no series. count is how many there are; with too little room only
/// count is written.
/// Errors: unknown-value, buffer-too-short.
/// Source: ISO 261:1998 table 2; ASME B1.1-2003 table 1; ASME B1.20.1-1983; ASME B1.20.3; ISO 228-1:2000;
/// ISO 7-1:1994.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_standard_threads(
    form: threadcalc_form,
    series: threadcalc_series,
    threads: *mut threadcalc_thread_t,
    capacity: usize,
    count: *mut usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let form = optional(form, Form::from_number, Field::Form, Form::CHOICES)?;
        let series = optional(series, Series::from_number, Field::Series, Series::CHOICES)?;
        unsafe { list_threads(standard_threads(form, series), threads, capacity, count) }
    })
}

/// The threads of an iterator, in the caller's array.
unsafe fn list_threads(
    found: impl Iterator<Item = Thread> + Clone,
    threads: *mut threadcalc_thread_t,
    capacity: usize,
    count: *mut usize,
) -> Result<(), Fault> {
    unsafe { list(|| found.clone().map(|thread| threadcalc_thread_t::of(&thread)), threads, capacity, count) }?;
    Ok(())
}

/// The standard threads of all families whose basic major diameter is about this one.
///
/// diameter_mm as it was measured, within_mm how far a diameter may be from it, 0 for exactly; a screw measures
/// less than its basic diameter. Of pipe threads the diameter of the thread counts, of NPT and its kin the
/// pipe's outside.
/// Errors: missing, out-of-range, overflow, buffer-too-short (count is how many there are).
/// Source: as threadcalc_standard_threads.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_threads_near_diameter(
    diameter_mm: *const threadcalc_ratio_t,
    within_mm: *const threadcalc_ratio_t,
    threads: *mut threadcalc_thread_t,
    capacity: usize,
    count: *mut usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let (diameter, within) = unsafe { (given(diameter_mm, Field::Diameter)?, given(within_mm, Field::Within)?) };
        let found = threads_near_diameter(diameter, within)?;
        unsafe { list_threads(found, threads, capacity, count) }
    })
}

/// The standard threads of all families whose pitch is about this one. They have one start: of a lead with
/// several the pitch is the lead over their number.
///
/// pitch_mm and within_mm as in threadcalc_threads_near_diameter.
/// Errors: missing, out-of-range, overflow, buffer-too-short (count is how many there are).
/// Source: as threadcalc_standard_threads.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_threads_near_pitch(
    pitch_mm: *const threadcalc_ratio_t,
    within_mm: *const threadcalc_ratio_t,
    threads: *mut threadcalc_thread_t,
    capacity: usize,
    count: *mut usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let (pitch, within) = unsafe { (given(pitch_mm, Field::Pitch)?, given(within_mm, Field::Within)?) };
        let found = threads_near_pitch(pitch, within)?;
        unsafe { list_threads(found, threads, capacity, count) }
    })
}

/// How strongly the standard prefers the diameter: 1 first, 2 second, 3 third choice; Unified: 1 primary,
/// 2 secondary; 0 if it does not list it, and for pipe threads.
///
/// Errors: as threadcalc_thread_write.
/// Source: ISO 261:1998 table 2; ASME B1.1-2003 table 1.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_choice(
    thread: *const threadcalc_thread_t,
    preference: *mut i32,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let thread = unsafe { input(thread) }?.read()?;
        let place = unsafe { Output::new(preference) }?;
        place.write(choice(&thread).map_or(0, i32::from));
        Ok(())
    })
}

/// 1 if ISO 262 selects this diameter and pitch for screws, bolts and nuts; else 0.
///
/// Errors: as threadcalc_thread_write.
/// Source: ISO 262:1998.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_is_iso_262(
    thread: *const threadcalc_thread_t,
    is_selected: *mut i32,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let thread = unsafe { input(thread) }?.read()?;
        let place = unsafe { Output::new(is_selected) }?;
        place.write(i32::from(is_iso_262(&thread)));
        Ok(())
    })
}

/// Basic profile: unrounded formulas, doubles; NaN where the standard has none. A pipe thread's is that
/// at the gauge plane. Frozen.
#[repr(C)]
#[derive(Clone, Copy, Default)]
pub struct threadcalc_profile_t {
    /// Height of the fundamental triangle, H, in mm.
    pub triangle_height_mm: f64,
    /// Basic major diameter, D, in mm.
    pub major_mm: f64,
    /// Basic pitch diameter, D2, in mm.
    pub pitch_diameter_mm: f64,
    /// Basic minor diameter of the internal thread, D1, in mm.
    pub minor_mm: f64,
    /// Minor diameter of the external thread at its rounded root, d3, in mm.
    pub external_minor_mm: f64,
    /// Tensile stress area of the external thread in mm2.
    pub stress_area_mm2: f64,
    /// Angles of the two flanks against the normal to the axis, in degrees.
    pub flank_angles_deg: [f64; 2],
}

impl threadcalc_profile_t {
    pub(crate) fn of(profile: &threadcalc_core::Profile) -> Self {
        Self {
            triangle_height_mm: profile.triangle_height_mm,
            major_mm: profile.major_mm,
            pitch_diameter_mm: profile.pitch_diameter_mm,
            minor_mm: profile.minor_mm,
            external_minor_mm: profile.external_minor_mm,
            stress_area_mm2: profile.stress_area_mm2,
            flank_angles_deg: profile.flank_angles_deg,
        }
    }
}

/// The basic profile. profile_size is sizeof(threadcalc_profile_t).
///
/// Errors: as threadcalc_thread_write; structure-size.
/// Source: ISO 68-1, ISO 724, ISO 898-1 (stress area); ASME B1.1; ISO 228-1:2000; ISO 7-1:1994;
/// ASME B1.20.1-1983.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_profile(
    thread: *const threadcalc_thread_t,
    profile: *mut threadcalc_profile_t,
    profile_size: usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let thread = unsafe { input(thread) }?.read()?;
        let profile = unsafe { SizedOutput::new(profile, profile_size) }?;
        profile.write(threadcalc_profile_t::of(&thread.profile()));
        Ok(())
    })
}
