//! Choices about what a control makes of a program: 32-bit numbers with names, 0 for "not given", which here means
//! that nobody has said.
//!
//! The numbers are the core's; `tests/header.rs` compares every one of them.

/// What F means in a tapping cycle.
pub type threadcalc_feed_basis = i32;
/// Not given.
pub const THREADCALC_FEED_BASIS_UNSET: i32 = 0;
/// What it means everywhere: per minute under G94, per revolution under G95.
pub const THREADCALC_FEED_BASIS_BY_MODE: i32 = 1;
/// Feed per minute, whatever the mode.
pub const THREADCALC_FEED_BASIS_PER_MIN_ALWAYS: i32 = 2;
/// The lead, whatever the mode.
pub const THREADCALC_FEED_BASIS_PER_REV_IN_TAP_CYCLE: i32 = 3;
/// Nothing: the lead stands behind a letter of its own.
pub const THREADCALC_FEED_BASIS_LEAD_WORD: i32 = 4;

/// How long the code for rigid tapping holds.
pub type threadcalc_rigid_until = i32;
/// Not given.
pub const THREADCALC_RIGID_UNTIL_UNSET: i32 = 0;
/// For the next cycle only.
pub const THREADCALC_RIGID_UNTIL_NEXT_CYCLE: i32 = 1;
/// Until the cycle is cancelled.
pub const THREADCALC_RIGID_UNTIL_CYCLE_CANCELLED: i32 = 2;
/// Until the spindle stops or turns otherwise.
pub const THREADCALC_RIGID_UNTIL_SPINDLE_CODE: i32 = 3;
/// Until the end of the program.
pub const THREADCALC_RIGID_UNTIL_PROGRAM_END: i32 = 4;

/// What no repeats, L0, mean.
pub type threadcalc_repeat_zero = i32;
/// Not given.
pub const THREADCALC_REPEAT_ZERO_UNSET: i32 = 0;
/// An alarm.
pub const THREADCALC_REPEAT_ZERO_ERROR: i32 = 1;
/// The cycle is kept for later positions; nothing is tapped here.
pub const THREADCALC_REPEAT_ZERO_STORE_ONLY: i32 = 2;
/// One hole, as if nothing stood there.
pub const THREADCALC_REPEAT_ZERO_ONCE: i32 = 3;

/// What a number without a point is.
pub type threadcalc_no_point = i32;
/// Not given.
pub const THREADCALC_NO_POINT_UNSET: i32 = 0;
/// What it says: X10 is ten.
pub const THREADCALC_NO_POINT_AS_WRITTEN: i32 = 1;
/// A count of least increments: X10 is a hundredth of a millimetre.
pub const THREADCALC_NO_POINT_LEAST_INCREMENT: i32 = 2;

/// What blanks inside a number are.
pub type threadcalc_spaces_in_numbers = i32;
/// Not given.
pub const THREADCALC_SPACES_IN_NUMBERS_UNSET: i32 = 0;
/// Nothing: X1 2 is twelve.
pub const THREADCALC_SPACES_IN_NUMBERS_IGNORED: i32 = 1;
/// An alarm.
pub const THREADCALC_SPACES_IN_NUMBERS_ERROR: i32 = 2;

/// In what order the words of one block act.
pub type threadcalc_block_order = i32;
/// Not given.
pub const THREADCALC_BLOCK_ORDER_UNSET: i32 = 0;
/// Feed mode, F and S before the units.
pub const THREADCALC_BLOCK_ORDER_RS274NGC: i32 = 1;
/// The units before everything that has one.
pub const THREADCALC_BLOCK_ORDER_UNITS_FIRST: i32 = 2;
