//! Choices about depths: 32-bit numbers with names, 0 for "not given".
//!
//! The numbers are the core's; `tests/header.rs` compares every one of them.

/// What the depth of a drilled hole is measured to.
pub type threadcalc_drilled_to = i32;
/// Not given.
pub const THREADCALC_DRILLED_TO_UNSET: i32 = 0;
/// The end of the full diameter.
pub const THREADCALC_DRILLED_TO_FULL_DIAMETER: i32 = 1;
/// The tip of the drill's point.
pub const THREADCALC_DRILLED_TO_POINT: i32 = 2;

/// What the room below a tap means. The larger number is the worse.
pub type threadcalc_bottom_verdict = i32;
/// Not given.
pub const THREADCALC_BOTTOM_VERDICT_UNSET: i32 = 0;
/// More than one pitch of room.
pub const THREADCALC_BOTTOM_VERDICT_FINE: i32 = 1;
/// 0 to 1 pitch: no room for chips, nor for a spindle that stops late.
pub const THREADCALC_BOTTOM_VERDICT_WARNING: i32 = 2;
/// Less than 0: the tap runs into the cone of the hole.
pub const THREADCALC_BOTTOM_VERDICT_ERROR: i32 = 3;

/// The run-outs of a blind tapped hole in DIN 76-1.
pub type threadcalc_run_out_kind = i32;
/// Not given.
pub const THREADCALC_RUN_OUT_UNSET: i32 = 0;
/// The normal one, e1.
pub const THREADCALC_RUN_OUT_NORMAL: i32 = 1;
/// The short one, e2.
pub const THREADCALC_RUN_OUT_SHORT: i32 = 2;
/// The long one, e3.
pub const THREADCALC_RUN_OUT_LONG: i32 = 3;

/// The side that a depth may be off to.
pub type threadcalc_depth_rounding = i32;
/// Not given.
pub const THREADCALC_DEPTH_ROUNDING_UNSET: i32 = 0;
/// Straight threads and drills: never less full thread, never less room.
pub const THREADCALC_DEPTH_ROUNDING_DEEPER: i32 = 1;
/// The first hole of a taper pipe tap: it can be tapped deeper, but not made smaller again.
pub const THREADCALC_DEPTH_ROUNDING_SHALLOWER: i32 = 2;
