//! What a call returns, and the value that an error speaks of.
//!
//! The numbers are the core's; `tests/header.rs` compares every one of them.

/// What a call returns: 0 is success. 1 to 99 are faults of the values, 100 and above of the call.
pub type threadcalc_status = i32;
/// Success.
pub const THREADCALC_STATUS_OK: i32 = 0;
/// The text is empty or blank.
pub const THREADCALC_STATUS_EMPTY: i32 = 1;
/// The text stops making sense at the byte given.
pub const THREADCALC_STATUS_UNREADABLE: i32 = 2;
/// The text is longer than any of its kind.
pub const THREADCALC_STATUS_TOO_LONG: i32 = 3;
/// The number has no exact value here (more than 9 decimals, NaN, infinity).
pub const THREADCALC_STATUS_NOT_EXACT: i32 = 4;
/// The number is outside the range that makes sense.
pub const THREADCALC_STATUS_OUT_OF_RANGE: i32 = 5;
/// An exact result does not fit in 64-bit numerator and denominator.
pub const THREADCALC_STATUS_OVERFLOW: i32 = 6;
/// The series that is named has another pitch at this diameter.
pub const THREADCALC_STATUS_SERIES_MISMATCH: i32 = 7;
/// The tolerance class does not exist for this thread.
pub const THREADCALC_STATUS_UNKNOWN_CLASS: i32 = 8;
/// Limits need a tolerance class.
pub const THREADCALC_STATUS_CLASS_UNSET: i32 = 9;
/// The standard's value has not been read, and is not guessed.
pub const THREADCALC_STATUS_NOT_SOURCED: i32 = 10;
/// The feed is smaller than half its last decimal.
pub const THREADCALC_STATUS_FEED_ROUNDS_TO_ZERO: i32 = 11;
/// A required value is missing.
pub const THREADCALC_STATUS_MISSING: i32 = 12;
/// The value is not one of the choices.
pub const THREADCALC_STATUS_UNKNOWN_VALUE: i32 = 13;
/// The key is not known.
pub const THREADCALC_STATUS_UNKNOWN_KEY: i32 = 14;
/// Two values exclude each other.
pub const THREADCALC_STATUS_CONTRADICTION: i32 = 15;
/// No drill of the sets lies within the limits.
pub const THREADCALC_STATUS_NO_DRILL: i32 = 16;
/// A fit names two threads; one was expected.
pub const THREADCALC_STATUS_FIT: i32 = 17;
/// The thread form is known but not supported by this version.
pub const THREADCALC_STATUS_UNSUPPORTED_FORM: i32 = 18;
/// The question has no meaning for this thread.
pub const THREADCALC_STATUS_DOES_NOT_APPLY: i32 = 19;
/// A pointer that must point somewhere is null (C).
pub const THREADCALC_STATUS_NULL_POINTER: i32 = 100;
/// The size member of a request is not one this library knows (C).
pub const THREADCALC_STATUS_STRUCTURE_SIZE: i32 = 101;
/// The caller's buffer is too short; the length needed was written (C).
pub const THREADCALC_STATUS_BUFFER_TOO_SHORT: i32 = 102;
/// The field is part of the contract, but not supported by this version.
pub const THREADCALC_STATUS_UNSUPPORTED_FIELD: i32 = 103;
/// The text is not JSON, or not of the shape expected.
pub const THREADCALC_STATUS_BAD_JSON: i32 = 104;
/// A fault of the library itself, caught at its border: please report it.
pub const THREADCALC_STATUS_INTERNAL_FAULT: i32 = 199;

/// The value that an error speaks of.
pub type threadcalc_field = i32;
/// None.
pub const THREADCALC_FIELD_UNSET: i32 = 0;
/// A thread designation.
pub const THREADCALC_FIELD_DESIGNATION: i32 = 1;
/// A number given as text or as a double.
pub const THREADCALC_FIELD_NUMBER: i32 = 2;
/// An exact length.
pub const THREADCALC_FIELD_LENGTH: i32 = 3;
/// Nominal diameter.
pub const THREADCALC_FIELD_DIAMETER: i32 = 4;
/// Pitch.
pub const THREADCALC_FIELD_PITCH: i32 = 5;
/// Threads per inch.
pub const THREADCALC_FIELD_THREADS_PER_INCH: i32 = 6;
/// Lead.
pub const THREADCALC_FIELD_LEAD_MM: i32 = 7;
/// Number of starts.
pub const THREADCALC_FIELD_STARTS: i32 = 8;
/// Series token.
pub const THREADCALC_FIELD_SERIES: i32 = 9;
/// Tolerance class.
pub const THREADCALC_FIELD_TOLERANCE_CLASS: i32 = 10;
/// Internal or external.
pub const THREADCALC_FIELD_SIDE: i32 = 11;
/// Spindle speed.
pub const THREADCALC_FIELD_RPM: i32 = 12;
/// Speed step of the control.
pub const THREADCALC_FIELD_STEP: i32 = 13;
/// Lowest speed.
pub const THREADCALC_FIELD_LOWEST: i32 = 14;
/// Highest speed.
pub const THREADCALC_FIELD_HIGHEST: i32 = 15;
/// Unit of the program.
pub const THREADCALC_FIELD_UNIT: i32 = 16;
/// Feed mode of the program.
pub const THREADCALC_FIELD_MODE: i32 = 17;
/// Decimals of a word.
pub const THREADCALC_FIELD_DECIMALS: i32 = 18;
/// How many results are wanted.
pub const THREADCALC_FIELD_COUNT: i32 = 19;
/// Feed.
pub const THREADCALC_FIELD_FEED: i32 = 20;
/// Percent of thread.
pub const THREADCALC_FIELD_PERCENT: i32 = 21;
/// Basis of the percent of thread.
pub const THREADCALC_FIELD_BASIS: i32 = 22;
/// Cut or form tap.
pub const THREADCALC_FIELD_TAP: i32 = 23;
/// Drill diameter.
pub const THREADCALC_FIELD_DRILL_MM: i32 = 24;
/// Drill sets.
pub const THREADCALC_FIELD_DRILL_SETS: i32 = 25;
/// Through or blind.
pub const THREADCALC_FIELD_HOLE: i32 = 26;
/// Full thread depth.
pub const THREADCALC_FIELD_FULL_THREAD_DEPTH_MM: i32 = 27;
/// Threads of the tap's chamfer.
pub const THREADCALC_FIELD_CHAMFER_THREADS: i32 = 28;
/// The place on the tap its length offset is set on.
pub const THREADCALC_FIELD_TAP_SET_ON: i32 = 29;
/// Length of the tap's male centre.
pub const THREADCALC_FIELD_TAP_CENTRE_MM: i32 = 30;
/// Point angle of the drill.
pub const THREADCALC_FIELD_POINT_ANGLE_DEG: i32 = 31;
/// Room below the tap.
pub const THREADCALC_FIELD_BOTTOM_CLEARANCE_MM: i32 = 32;
/// Height of the R plane.
pub const THREADCALC_FIELD_R_PLANE_MM: i32 = 33;
/// The control's dialect.
pub const THREADCALC_FIELD_DIALECT: i32 = 34;
/// The thread of a job.
pub const THREADCALC_FIELD_THREAD: i32 = 35;
/// The whole job.
pub const THREADCALC_FIELD_JOB: i32 = 36;
/// A key of a job.
pub const THREADCALC_FIELD_KEY: i32 = 37;
/// Schema number of a JSON text.
pub const THREADCALC_FIELD_SCHEMA: i32 = 38;
/// Highest speed of the machine.
pub const THREADCALC_FIELD_MACHINE_HIGHEST_RPM: i32 = 39;
/// Lowest speed of the machine.
pub const THREADCALC_FIELD_MACHINE_LOWEST_RPM: i32 = 40;
/// Speed step of the machine.
pub const THREADCALC_FIELD_MACHINE_SPEED_STEP: i32 = 41;
/// Code of the right-hand tapping cycle.
pub const THREADCALC_FIELD_DIALECT_TAP_RH: i32 = 42;
/// Code of the left-hand tapping cycle.
pub const THREADCALC_FIELD_DIALECT_TAP_LH: i32 = 43;
/// Code of feed per revolution.
pub const THREADCALC_FIELD_DIALECT_FEED_PER_REVOLUTION: i32 = 44;
/// Whether the tapping cycle needs a spindle that already turns.
pub const THREADCALC_FIELD_DIALECT_NEEDS_SPINDLE_RUNNING: i32 = 45;
/// Name of the dialect.
pub const THREADCALC_FIELD_DIALECT_NAME: i32 = 46;
/// A depth along the axis.
pub const THREADCALC_FIELD_DEPTH_MM: i32 = 47;
/// A pointer argument (C).
pub const THREADCALC_FIELD_POINTER: i32 = 48;
/// Text buffer (C).
pub const THREADCALC_FIELD_BUFFER: i32 = 49;
/// The size member of a request (C).
pub const THREADCALC_FIELD_SIZE: i32 = 50;
/// Form of thread.
pub const THREADCALC_FIELD_FORM: i32 = 51;
/// Hand of thread.
pub const THREADCALC_FIELD_HAND: i32 = 52;
/// Through-hole flag.
pub const THREADCALC_FIELD_THROUGH: i32 = 53;
/// Whether the hole is reamed to the taper.
pub const THREADCALC_FIELD_TAPER_REAMER: i32 = 54;
/// How far a tap projects through its ring gauge.
pub const THREADCALC_FIELD_PROJECTION_MM: i32 = 55;
/// An older or open name of a pipe thread.
pub const THREADCALC_FIELD_WRITTEN_AS: i32 = 56;
/// A hole note of a drawing.
pub const THREADCALC_FIELD_NOTE: i32 = 60;
/// Number of holes of a note.
pub const THREADCALC_FIELD_HOLE_COUNT: i32 = 61;
/// Depth of full thread in a note.
pub const THREADCALC_FIELD_THREAD_DEPTH_MM: i32 = 62;
/// Depth of the drilled hole in a note.
pub const THREADCALC_FIELD_DRILL_DEPTH_MM: i32 = 63;
/// Diameter of a countersink.
pub const THREADCALC_FIELD_COUNTERSINK_MM: i32 = 64;
/// Angle of a countersink.
pub const THREADCALC_FIELD_COUNTERSINK_ANGLE_DEG: i32 = 65;
/// Diameter of a counterbore or spotface.
pub const THREADCALC_FIELD_COUNTERBORE_MM: i32 = 66;
/// Depth of a counterbore or spotface.
pub const THREADCALC_FIELD_COUNTERBORE_DEPTH_MM: i32 = 67;
/// Diameter of a bolt circle.
pub const THREADCALC_FIELD_BOLT_CIRCLE_MM: i32 = 68;
/// Whether the class is meant before or after plating.
pub const THREADCALC_FIELD_PLATING: i32 = 69;
