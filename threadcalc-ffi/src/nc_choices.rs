//! What findings and holes of a program carry, as C knows it: 32-bit numbers with names, 0 for "not given".
//!
//! The numbers are the core's; `tests/header.rs` compares every one of them.

/// The name of a number that a finding of a program carries.
pub type threadcalc_program_number = i32;
/// Not given.
pub const THREADCALC_PROGRAM_NUMBER_UNSET: i32 = 0;
/// Holes that are tapped so.
pub const THREADCALC_PROGRAM_NUMBER_AFFECTED_HOLES: i32 = 1;
/// The point angle that stands for the one nobody told.
pub const THREADCALC_PROGRAM_NUMBER_ASSUMED_POINT_ANGLE_DEG: i32 = 2;
/// Room below the tap.
pub const THREADCALC_PROGRAM_NUMBER_BOTTOM_CLEARANCE_MM: i32 = 3;
/// The same with a drill of 130 degrees.
pub const THREADCALC_PROGRAM_NUMBER_BOTTOM_CLEARANCE_130_DEG_MM: i32 = 4;
/// The same with a drill of 140 degrees.
pub const THREADCALC_PROGRAM_NUMBER_BOTTOM_CLEARANCE_140_DEG_MM: i32 = 5;
/// The line that changed it.
pub const THREADCALC_PROGRAM_NUMBER_CHANGED_AT_LINE: i32 = 6;
/// Characters of a line.
pub const THREADCALC_PROGRAM_NUMBER_CHARS: i32 = 7;
/// A count.
pub const THREADCALC_PROGRAM_NUMBER_COUNT: i32 = 8;
/// Speed of the cycle.
pub const THREADCALC_PROGRAM_NUMBER_CYCLE_SPEED_RPM: i32 = 9;
/// Drill diameter.
pub const THREADCALC_PROGRAM_NUMBER_DRILL_MM: i32 = 10;
/// Length of the drill's point.
pub const THREADCALC_PROGRAM_NUMBER_DRILL_POINT_MM: i32 = 11;
/// Z of the drill's point.
pub const THREADCALC_PROGRAM_NUMBER_DRILL_Z_MM: i32 = 12;
/// The letter of a dwell.
pub const THREADCALC_PROGRAM_NUMBER_DWELL_WORD: i32 = 13;
/// What it should be.
pub const THREADCALC_PROGRAM_NUMBER_EXPECTED: i32 = 14;
/// The lead of the declared thread.
pub const THREADCALC_PROGRAM_NUMBER_EXPECTED_LEAD_MM: i32 = 15;
/// One over the other.
pub const THREADCALC_PROGRAM_NUMBER_FACTOR: i32 = 16;
/// F as it is written.
pub const THREADCALC_PROGRAM_NUMBER_FEED: i32 = 17;
/// The feed it comes to.
pub const THREADCALC_PROGRAM_NUMBER_FEED_MM_MIN: i32 = 18;
/// Depth of the hole's full diameter.
pub const THREADCALC_PROGRAM_NUMBER_FULL_DIAMETER_DEPTH_MM: i32 = 19;
/// Length of full thread.
pub const THREADCALC_PROGRAM_NUMBER_FULL_THREAD_MM: i32 = 20;
/// The lead before a change.
pub const THREADCALC_PROGRAM_NUMBER_LEAD_BEFORE_MM: i32 = 21;
/// The lead behind it.
pub const THREADCALC_PROGRAM_NUMBER_LEAD_AFTER_MM: i32 = 22;
/// Relative error of the lead.
pub const THREADCALC_PROGRAM_NUMBER_LEAD_ERROR: i32 = 23;
/// The lead where a change of units converts F.
pub const THREADCALC_PROGRAM_NUMBER_LEAD_IF_CONVERTED_MM: i32 = 24;
/// The lead under the other feed mode.
pub const THREADCALC_PROGRAM_NUMBER_LEAD_IF_OTHER_MODE_MM: i32 = 25;
/// The lead that is cut.
pub const THREADCALC_PROGRAM_NUMBER_LEAD_MM: i32 = 26;
/// The lead with the switch for block delete off: the blocks run.
pub const THREADCALC_PROGRAM_NUMBER_LEAD_OFF_MM: i32 = 27;
/// The lead with the switch on: the blocks are left out.
pub const THREADCALC_PROGRAM_NUMBER_LEAD_ON_MM: i32 = 28;
/// The machine's feed limit.
pub const THREADCALC_PROGRAM_NUMBER_LIMIT_MM_MIN: i32 = 29;
/// The machine's speed limit.
pub const THREADCALC_PROGRAM_NUMBER_LIMIT_RPM: i32 = 30;
/// How many axes are mirrored.
pub const THREADCALC_PROGRAM_NUMBER_MIRRORED_AXES: i32 = 31;
/// Speed out over speed in.
pub const THREADCALC_PROGRAM_NUMBER_MULTIPLIER: i32 = 32;
/// Turns at the nominal depth.
pub const THREADCALC_PROGRAM_NUMBER_NOMINAL_TURNS: i32 = 33;
/// Passes of a peck cycle.
pub const THREADCALC_PROGRAM_NUMBER_PASSES: i32 = 34;
/// Percent of thread.
pub const THREADCALC_PROGRAM_NUMBER_PERCENT: i32 = 35;
/// Pitch.
pub const THREADCALC_PROGRAM_NUMBER_PITCH_MM: i32 = 36;
/// What is programmed.
pub const THREADCALC_PROGRAM_NUMBER_PROGRAMMED: i32 = 37;
/// Z of the R plane.
pub const THREADCALC_PROGRAM_NUMBER_R_MM: i32 = 38;
/// The speed that is reached.
pub const THREADCALC_PROGRAM_NUMBER_REACHABLE_RPM: i32 = 39;
/// The speed of the way out.
pub const THREADCALC_PROGRAM_NUMBER_RETRACT_RPM: i32 = 40;
/// The S of the code for rigid tapping.
pub const THREADCALC_PROGRAM_NUMBER_RIGID_TAP_CODE_SPEED_RPM: i32 = 41;
/// 1 where scaling is active.
pub const THREADCALC_PROGRAM_NUMBER_SCALE: i32 = 42;
/// Seconds.
pub const THREADCALC_PROGRAM_NUMBER_SECONDS: i32 = 43;
/// The line that set it.
pub const THREADCALC_PROGRAM_NUMBER_SET_AT_LINE: i32 = 44;
/// S before a change.
pub const THREADCALC_PROGRAM_NUMBER_SPEED_BEFORE_RPM: i32 = 45;
/// S behind it.
pub const THREADCALC_PROGRAM_NUMBER_SPEED_AFTER_RPM: i32 = 46;
/// S.
pub const THREADCALC_PROGRAM_NUMBER_SPEED_RPM: i32 = 47;
/// Starts of the thread.
pub const THREADCALC_PROGRAM_NUMBER_STARTS: i32 = 48;
/// The F to write instead.
pub const THREADCALC_PROGRAM_NUMBER_SUGGESTED_FEED: i32 = 49;
/// Z of the tap's end.
pub const THREADCALC_PROGRAM_NUMBER_TAP_Z_MM: i32 = 50;
/// Torque of the tap.
pub const THREADCALC_PROGRAM_NUMBER_TORQUE_NM: i32 = 51;
/// Torque of the spindle.
pub const THREADCALC_PROGRAM_NUMBER_TORQUE_LIMIT_NM: i32 = 52;
/// Threads per inch.
pub const THREADCALC_PROGRAM_NUMBER_TPI: i32 = 53;
/// From R to Z.
pub const THREADCALC_PROGRAM_NUMBER_TRAVEL_MM: i32 = 54;
/// Turns.
pub const THREADCALC_PROGRAM_NUMBER_TURNS: i32 = 55;
/// A value.
pub const THREADCALC_PROGRAM_NUMBER_VALUE: i32 = 56;
/// The letter of a word.
pub const THREADCALC_PROGRAM_NUMBER_WORD: i32 = 57;
/// Z.
pub const THREADCALC_PROGRAM_NUMBER_Z_MM: i32 = 58;
/// How far the tap is from true at the bottom.
pub const THREADCALC_PROGRAM_NUMBER_DRIFT_MM: i32 = 59;
/// The same in parts of the pitch.
pub const THREADCALC_PROGRAM_NUMBER_DRIFT_PITCHES: i32 = 60;
/// The second nearest pitch.
pub const THREADCALC_PROGRAM_NUMBER_NEXT_PITCH_MM: i32 = 61;
/// Its threads per inch.
pub const THREADCALC_PROGRAM_NUMBER_NEXT_TPI: i32 = 62;
/// How far the lead is from it.
pub const THREADCALC_PROGRAM_NUMBER_NEXT_LEAD_ERROR: i32 = 63;
/// The number of a code.
pub const THREADCALC_PROGRAM_NUMBER_CODE: i32 = 64;

/// What a line contributes to a finding.
pub type threadcalc_evidence = i32;
/// Not given.
pub const THREADCALC_EVIDENCE_UNSET: i32 = 0;
/// It set S.
pub const THREADCALC_EVIDENCE_SPEED: i32 = 1;
/// It set F.
pub const THREADCALC_EVIDENCE_FEED: i32 = 2;
/// It set the unit.
pub const THREADCALC_EVIDENCE_UNITS: i32 = 3;
/// It set the feed mode.
pub const THREADCALC_EVIDENCE_FEED_MODE: i32 = 4;
/// It began the cycle.
pub const THREADCALC_EVIDENCE_CYCLE: i32 = 5;
/// It changed the tool.
pub const THREADCALC_EVIDENCE_TOOL: i32 = 6;
/// It names the thread.
pub const THREADCALC_EVIDENCE_THREAD: i32 = 7;
/// It drilled the hole.
pub const THREADCALC_EVIDENCE_DRILL: i32 = 8;
/// It is left out by the switch for block delete.
pub const THREADCALC_EVIDENCE_BLOCK_DELETE: i32 = 9;

/// Where the expected thread of a hole is named.
pub type threadcalc_thread_source = i32;
/// Not given.
pub const THREADCALC_THREAD_SOURCE_UNSET: i32 = 0;
/// An input of the check.
pub const THREADCALC_THREAD_SOURCE_GIVEN: i32 = 1;
/// The tool list.
pub const THREADCALC_THREAD_SOURCE_TOOL_LIST: i32 = 2;
/// The comment of the tool change.
pub const THREADCALC_THREAD_SOURCE_TOOL_COMMENT: i32 = 3;
/// A comment within three lines before the hole.
pub const THREADCALC_THREAD_SOURCE_NEAR_COMMENT: i32 = 4;
/// A comment since the tool change.
pub const THREADCALC_THREAD_SOURCE_OPERATION_COMMENT: i32 = 5;
/// The comment of the program's first line.
pub const THREADCALC_THREAD_SOURCE_PROGRAM_COMMENT: i32 = 6;
/// A comment that begins with the tool's number, in a list of tools.
pub const THREADCALC_THREAD_SOURCE_TOOL_LIST_COMMENT: i32 = 7;

/// Why something was not checked.
pub type threadcalc_reason = i32;
/// Not given.
pub const THREADCALC_REASON_UNSET: i32 = 0;
/// The lead of a hole could not be computed.
pub const THREADCALC_REASON_LEAD_NOT_KNOWN: i32 = 1;
/// No thread is declared and none was identified.
pub const THREADCALC_REASON_THREAD_NOT_KNOWN: i32 = 2;
/// The depth of a hole could not be computed.
pub const THREADCALC_REASON_DEPTH_NOT_KNOWN: i32 = 3;
/// Where a hole is could not be computed.
pub const THREADCALC_REASON_PLACE_NOT_KNOWN: i32 = 4;
/// The hole was drilled by a drill whose diameter is not known.
pub const THREADCALC_REASON_DRILL_NOT_KNOWN: i32 = 5;
/// The text was not read: a block with something that no reader takes.
pub const THREADCALC_REASON_BLOCK_NOT_READ: i32 = 6;
/// Formulas and variables were left alone, as asked.
pub const THREADCALC_REASON_MACROS_LEFT: i32 = 7;
/// A call was not followed.
pub const THREADCALC_REASON_CALL_NOT_FOLLOWED: i32 = 8;
/// More drilled holes than are kept.
pub const THREADCALC_REASON_HOLES_FORGOTTEN: i32 = 9;
/// More findings in one block than there is room for.
pub const THREADCALC_REASON_FINDINGS_LOST: i32 = 10;
/// What stands behind the end of the program.
pub const THREADCALC_REASON_BEHIND_THE_END: i32 = 11;
/// The hand depends on the control.
pub const THREADCALC_REASON_HAND_NOT_KNOWN: i32 = 12;

/// What a tool is.
pub type threadcalc_tool_kind = i32;
/// Not given.
pub const THREADCALC_TOOL_KIND_UNSET: i32 = 0;
/// A tap that cuts.
pub const THREADCALC_TOOL_KIND_CUT_TAP: i32 = 1;
/// A tap that forms.
pub const THREADCALC_TOOL_KIND_FORM_TAP: i32 = 2;
/// A tap; cut or form is not known.
pub const THREADCALC_TOOL_KIND_TAP: i32 = 3;
/// A drill.
pub const THREADCALC_TOOL_KIND_DRILL: i32 = 4;
/// A spot or centre drill.
pub const THREADCALC_TOOL_KIND_SPOT_DRILL: i32 = 5;
/// Any other tool.
pub const THREADCALC_TOOL_KIND_OTHER: i32 = 6;

/// What a check gives next.
pub type threadcalc_event = i32;
/// Nothing: more of the program is needed, or it is at its end.
pub const THREADCALC_EVENT_NONE: i32 = 0;
/// A block that taps.
pub const THREADCALC_EVENT_HOLE: i32 = 1;
/// Something doubtful or wrong.
pub const THREADCALC_EVENT_FINDING: i32 = 2;
