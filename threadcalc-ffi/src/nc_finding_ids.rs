//! The findings of a program and what goes with them, as C knows them: 32-bit numbers with names, 0 for "not given".
//!
//! The numbers are the core's; `tests/header.rs` compares every one of them.

/// The stable id of a finding of a program.
pub type threadcalc_program_finding = i32;
/// Not given.
pub const THREADCALC_PROGRAM_FINDING_UNSET: i32 = 0;
/// The lead that is cut is not the thread's.
pub const THREADCALC_PROGRAM_FINDING_LEAD_MISMATCH: i32 = 1;
/// The lead fits in the other unit.
pub const THREADCALC_PROGRAM_FINDING_INCH_METRIC_MIX: i32 = 2;
/// The lead fits under the other feed mode.
pub const THREADCALC_PROGRAM_FINDING_FEED_MODE_MIX: i32 = 3;
/// The lead fits with the point elsewhere.
pub const THREADCALC_PROGRAM_FINDING_DECIMAL_POINT: i32 = 4;
/// A word without a point is counted in least increments.
pub const THREADCALC_PROGRAM_FINDING_IMPLICIT_DECIMAL_USED: i32 = 5;
/// The feed follows the pitch of a thread with several starts.
pub const THREADCALC_PROGRAM_FINDING_LEAD_VS_PITCH: i32 = 6;
/// S was changed in an active cycle, F was not.
pub const THREADCALC_PROGRAM_FINDING_STALE_FEED_AFTER_SPEED_CHANGE: i32 = 7;
/// F was set in the other unit and is used now.
pub const THREADCALC_PROGRAM_FINDING_UNITS_CHANGED_AFTER_FEED: i32 = 8;
/// The feed mode changed and F was kept.
pub const THREADCALC_PROGRAM_FINDING_FEED_MODE_CHANGE_WITHOUT_FEED: i32 = 9;
/// F is the exact feed rounded or cut off.
pub const THREADCALC_PROGRAM_FINDING_FEED_ROUNDED: i32 = 10;
/// The cycle has no speed.
pub const THREADCALC_PROGRAM_FINDING_NO_SPEED: i32 = 11;
/// The cycle has no feed.
pub const THREADCALC_PROGRAM_FINDING_NO_FEED: i32 = 12;
/// The cycle is of the other hand than the thread.
pub const THREADCALC_PROGRAM_FINDING_WRONG_HAND: i32 = 13;
/// The spindle does not turn as the cycle needs it.
pub const THREADCALC_PROGRAM_FINDING_SPINDLE_DIRECTION: i32 = 14;
/// The spindle is started before a cycle that starts it itself.
pub const THREADCALC_PROGRAM_FINDING_SPINDLE_START_BEFORE_CYCLE: i32 = 15;
/// The code for rigid tapping is missing.
pub const THREADCALC_PROGRAM_FINDING_RIGID_TAP_CODE_MISSING: i32 = 16;
/// The code for rigid tapping has another speed.
pub const THREADCALC_PROGRAM_FINDING_RIGID_TAP_CODE_SPEED_DIFFERS: i32 = 17;
/// The tool is changed or the program ends in an active cycle.
pub const THREADCALC_PROGRAM_FINDING_CYCLE_NOT_CANCELLED: i32 = 18;
/// A tool that is no tap runs the tapping cycle.
pub const THREADCALC_PROGRAM_FINDING_CYCLE_LEFT_ACTIVE: i32 = 19;
/// Axis words without a motion code behind G80.
pub const THREADCALC_PROGRAM_FINDING_AXIS_WORDS_WITHOUT_MOTION: i32 = 20;
/// The tapping feed is still there in the first feed move afterwards.
pub const THREADCALC_PROGRAM_FINDING_FEED_CARRIED_OVER: i32 = 21;
/// Feed per revolution is still there in milling.
pub const THREADCALC_PROGRAM_FINDING_FEED_MODE_LEFT_ACTIVE: i32 = 22;
/// The first block of the cycle lacks R or Z.
pub const THREADCALC_PROGRAM_FINDING_CYCLE_WORD_MISSING: i32 = 23;
/// Z is not below R.
pub const THREADCALC_PROGRAM_FINDING_CYCLE_GEOMETRY: i32 = 24;
/// The depth makes no sense for the thread.
pub const THREADCALC_PROGRAM_FINDING_DEPTH_IMPLAUSIBLE: i32 = 25;
/// The tap reaches the end of the drilled hole's full diameter.
pub const THREADCALC_PROGRAM_FINDING_TAP_BOTTOMS_HOLE: i32 = 26;
/// No drilling here before the tap.
pub const THREADCALC_PROGRAM_FINDING_HOLE_NOT_DRILLED: i32 = 27;
/// The drilled hole does not suit the thread.
pub const THREADCALC_PROGRAM_FINDING_DRILL_SIZE: i32 = 28;
/// The depth of a taper thread is far from its nominal turns.
pub const THREADCALC_PROGRAM_FINDING_TAPER_DEPTH: i32 = 29;
/// The R plane is too near.
pub const THREADCALC_PROGRAM_FINDING_CLEARANCE_SHORT: i32 = 30;
/// The spindle does not come to speed in this hole.
pub const THREADCALC_PROGRAM_FINDING_SPEED_NEVER_REACHED: i32 = 31;
/// The speed is above the machine's.
pub const THREADCALC_PROGRAM_FINDING_SPEED_LIMIT: i32 = 32;
/// The feed is above the axis's.
pub const THREADCALC_PROGRAM_FINDING_AXIS_FEED_LIMIT: i32 = 33;
/// The way out is faster than the spindle.
pub const THREADCALC_PROGRAM_FINDING_RETRACT_SPEED_LIMIT: i32 = 34;
/// The torque is above the spindle's.
pub const THREADCALC_PROGRAM_FINDING_TORQUE_LIMIT: i32 = 35;
/// Neither return is stated.
pub const THREADCALC_PROGRAM_FINDING_RETURN_PLANE_UNSTATED: i32 = 36;
/// The unit is that of the control when it was switched on.
pub const THREADCALC_PROGRAM_FINDING_UNITS_UNSTATED: i32 = 37;
/// Absolute or incremental is not stated.
pub const THREADCALC_PROGRAM_FINDING_DISTANCE_MODE_UNSTATED: i32 = 38;
/// The feed mode is not stated.
pub const THREADCALC_PROGRAM_FINDING_FEED_MODE_UNSTATED: i32 = 39;
/// The plane is not that of the drilling axis.
pub const THREADCALC_PROGRAM_FINDING_WRONG_PLANE: i32 = 40;
/// Inverse time is active in a cycle.
pub const THREADCALC_PROGRAM_FINDING_INVERSE_TIME_ACTIVE: i32 = 41;
/// Constant surface speed is active in a cycle.
pub const THREADCALC_PROGRAM_FINDING_CONSTANT_SURFACE_SPEED_ACTIVE: i32 = 42;
/// Cutter compensation is active in a cycle.
pub const THREADCALC_PROGRAM_FINDING_CUTTER_COMP_ACTIVE: i32 = 43;
/// No length offset is active for the tool.
pub const THREADCALC_PROGRAM_FINDING_LENGTH_OFFSET_MISSING: i32 = 44;
/// Mirror, scale or rotation is active in a cycle.
pub const THREADCALC_PROGRAM_FINDING_MIRROR_SCALE_ROTATION_ACTIVE: i32 = 45;
/// Overrides are not locked in the cycle.
pub const THREADCALC_PROGRAM_FINDING_OVERRIDE_UNLOCKED: i32 = 46;
/// The cycle pecks.
pub const THREADCALC_PROGRAM_FINDING_PECK_IN_TAP: i32 = 47;
/// The dwell is implausible.
pub const THREADCALC_PROGRAM_FINDING_DWELL_UNIT: i32 = 48;
/// The cycle is repeated at one place.
pub const THREADCALC_PROGRAM_FINDING_REPEAT_IN_PLACE: i32 = 49;
/// A hole is tapped twice.
pub const THREADCALC_PROGRAM_FINDING_DUPLICATE_HOLE: i32 = 50;
/// An incremental block reuses absolute R or Z.
pub const THREADCALC_PROGRAM_FINDING_STICKY_DEPTH_IN_INCREMENTAL: i32 = 51;
/// A single stroke moves across.
pub const THREADCALC_PROGRAM_FINDING_OFF_AXIS_STROKE: i32 = 52;
/// Tool list and comment name different threads.
pub const THREADCALC_PROGRAM_FINDING_TOOL_THREAD_MISMATCH: i32 = 53;
/// The lead is that of one pitch.
pub const THREADCALC_PROGRAM_FINDING_THREAD_IDENTIFIED: i32 = 54;
/// The lead is that of several pitches.
pub const THREADCALC_PROGRAM_FINDING_AMBIGUOUS_THREAD: i32 = 55;
/// The lead is that of no pitch.
pub const THREADCALC_PROGRAM_FINDING_NONSTANDARD_LEAD: i32 = 56;
/// The switch for block delete changes what is tapped.
pub const THREADCALC_PROGRAM_FINDING_BLOCK_DELETE_CHANGES_RESULT: i32 = 57;
/// A value is not known.
pub const THREADCALC_PROGRAM_FINDING_UNRESOLVED_VALUE: i32 = 58;
/// A subprogram is not in this text.
pub const THREADCALC_PROGRAM_FINDING_SUBPROGRAM_MISSING: i32 = 59;
/// Subprograms call each other too deep.
pub const THREADCALC_PROGRAM_FINDING_RECURSION_LIMIT: i32 = 60;
/// A comment that nothing closes.
pub const THREADCALC_PROGRAM_FINDING_UNCLOSED_COMMENT: i32 = 61;
/// A number that is none.
pub const THREADCALC_PROGRAM_FINDING_BAD_NUMBER: i32 = 62;
/// A letter twice in a block.
pub const THREADCALC_PROGRAM_FINDING_DUPLICATE_WORD: i32 = 63;
/// Two codes of one group in a block.
pub const THREADCALC_PROGRAM_FINDING_TWO_CODES_ONE_GROUP: i32 = 64;
/// The block could not be read.
pub const THREADCALC_PROGRAM_FINDING_BLOCK_NOT_READ: i32 = 65;
/// The line is longer than a control takes.
pub const THREADCALC_PROGRAM_FINDING_LINE_TOO_LONG: i32 = 66;
/// Line ends of more than one kind.
pub const THREADCALC_PROGRAM_FINDING_MIXED_LINE_ENDINGS: i32 = 67;
/// Bytes above 127.
pub const THREADCALC_PROGRAM_FINDING_NON_ASCII: i32 = 68;
/// The program does not end.
pub const THREADCALC_PROGRAM_FINDING_MISSING_END: i32 = 69;
/// Less full thread than is declared.
pub const THREADCALC_PROGRAM_FINDING_FULL_THREAD_SHORT: i32 = 70;
/// The control has no such code.
pub const THREADCALC_PROGRAM_FINDING_CODE_NOT_ON_CONTROL: i32 = 71;
/// The answer depends on the control.
pub const THREADCALC_PROGRAM_FINDING_DIALECT_UNSET: i32 = 72;
