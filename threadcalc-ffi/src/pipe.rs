//! The dimensions of a pipe thread that a straight screw thread does not have.

use core::ffi::c_char;

use threadcalc_core::Pipe;

use crate::choices::threadcalc_confidence;
use crate::codes::threadcalc_status;
use crate::memory::{SizedOutput, fixed_text, input};
use crate::status::{guard, threadcalc_error_t};
use crate::types::{threadcalc_ratio_t, threadcalc_thread_t};

/// Basic dimensions of a pipe thread in mm, exact; 0/0 where its standard has none. Frozen.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct threadcalc_pipe_t {
    /// Outside diameter of the pipe, D.
    pub pipe_diameter_mm: threadcalc_ratio_t,
    /// Pitch diameter at the small end, E0; at the end of the pipe, deepest in the hole.
    pub pitch_diameter_small_end_mm: threadcalc_ratio_t,
    /// Pitch diameter at the gauge plane, E1, D2 or d2: at the face of a tapped hole.
    pub pitch_diameter_gauge_plane_mm: threadcalc_ratio_t,
    /// Length of hand-tight engagement, L1.
    pub hand_tight_length_mm: threadcalc_ratio_t,
    /// Length of effective thread, L2.
    pub effective_length_mm: threadcalc_ratio_t,
    /// Pitch diameter at the end of the effective thread, E2.
    pub pitch_diameter_effective_mm: threadcalc_ratio_t,
    /// Minor diameter at the small end, K0.
    pub minor_diameter_small_end_mm: threadcalc_ratio_t,
    /// Height of the thread, h.
    pub thread_height_mm: threadcalc_ratio_t,
    /// Gauge length of ISO 7-1.
    pub gauge_length_mm: threadcalc_ratio_t,
    /// Useful thread of ISO 7-1 at the basic gauge length.
    pub useful_length_mm: threadcalc_ratio_t,
    /// Turns that the gauge may stand off, either way.
    pub gauge_tolerance_turns: threadcalc_ratio_t,
    /// How sure the table's values are.
    pub confidence: threadcalc_confidence,
    /// 0.
    pub reserved: i32,
    /// Standard, edition and table or rule.
    pub source: [c_char; 96],
}

impl threadcalc_pipe_t {
    fn of(pipe: &Pipe) -> Self {
        let exact = threadcalc_ratio_t::of_option;
        Self {
            pipe_diameter_mm: exact(pipe.pipe_diameter_mm),
            pitch_diameter_small_end_mm: exact(pipe.pitch_diameter_small_end_mm),
            pitch_diameter_gauge_plane_mm: exact(pipe.pitch_diameter_gauge_plane_mm),
            hand_tight_length_mm: exact(pipe.hand_tight_length_mm),
            effective_length_mm: exact(pipe.effective_length_mm),
            pitch_diameter_effective_mm: exact(pipe.pitch_diameter_effective_mm),
            minor_diameter_small_end_mm: exact(pipe.minor_diameter_small_end_mm),
            thread_height_mm: exact(pipe.thread_height_mm),
            gauge_length_mm: exact(pipe.gauge_length_mm),
            useful_length_mm: exact(pipe.useful_length_mm),
            gauge_tolerance_turns: exact(pipe.gauge_tolerance_turns),
            confidence: pipe.confidence.number(),
            reserved: 0,
            source: fixed_text(pipe.source),
        }
    }
}

/// The dimensions of a pipe thread. pipe_size is sizeof(threadcalc_pipe_t).
///
/// With D in inches: E0 = D - (0.05 D + 1.1) p, E1 = E0 + L1/16, L2 = (0.80 D + 6.8) p, E2 = E0 + L2/16,
/// K0 = E0 - 0.8 p; G, R, Rp, Rc: D2 = D - h, h = 0.640327 P as printed.
/// Errors: does-not-apply (no pipe thread), those of threadcalc_thread_write, structure-size.
/// Source: ASME B1.20.1-1983 table 2; ASME B1.20.3; ISO 7-1:1994; ISO 228-1:2000. The structure says which.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_pipe(
    thread: *const threadcalc_thread_t,
    pipe: *mut threadcalc_pipe_t,
    pipe_size: usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let thread = unsafe { input(thread) }?.read()?;
        let place = unsafe { SizedOutput::new(pipe, pipe_size) }?;
        place.write(threadcalc_pipe_t::of(&thread.pipe()?));
        Ok(())
    })
}
