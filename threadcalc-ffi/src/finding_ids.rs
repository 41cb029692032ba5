//! Findings and the numbers they carry, as C knows them: 32-bit numbers with names, 0 for "not given".
//!
//! The numbers are the core's; `tests/header.rs` compares every one of them.

/// How bad a finding is.
pub type threadcalc_severity = i32;
/// Not given.
pub const THREADCALC_SEVERITY_UNSET: i32 = 0;
/// Wrong: no words are given while it stands.
pub const THREADCALC_SEVERITY_ERROR: i32 = 1;
/// Doubtful: look at it before pressing start.
pub const THREADCALC_SEVERITY_WARNING: i32 = 2;
/// Good to know, or an assumption that was made.
pub const THREADCALC_SEVERITY_INFO: i32 = 3;

/// The stable id of a finding.
pub type threadcalc_finding = i32;
/// Not given.
pub const THREADCALC_FINDING_UNSET: i32 = 0;
/// No class was given; the standard's medium internal class is used.
pub const THREADCALC_FINDING_CLASS_ASSUMED: i32 = 1;
/// The thread stands in no standard series.
pub const THREADCALC_FINDING_NOT_STANDARD: i32 = 2;
/// The drilled hole is outside the class's minor-diameter limits.
pub const THREADCALC_FINDING_DRILL_OUTSIDE_LIMITS: i32 = 3;
/// The class's limits have not been read, so the drilled hole is not judged by them.
pub const THREADCALC_FINDING_LIMITS_NOT_SOURCED: i32 = 4;
/// An external class in a tapping job.
pub const THREADCALC_FINDING_EXTERNAL_CLASS: i32 = 5;
/// No dialect was given, so no words can be given.
pub const THREADCALC_FINDING_DIALECT_UNSET: i32 = 6;
/// The control has no code for what the job needs.
pub const THREADCALC_FINDING_CODE_NOT_ON_CONTROL: i32 = 7;
/// The chamfer was not given; the longest of form C is planned on.
pub const THREADCALC_FINDING_CHAMFER_ASSUMED: i32 = 8;
/// The room below the tap was not given.
pub const THREADCALC_FINDING_BOTTOM_CLEARANCE_ASSUMED: i32 = 9;
/// The drill's point angle was not given.
pub const THREADCALC_FINDING_POINT_ANGLE_ASSUMED: i32 = 10;
/// The R plane was not given.
pub const THREADCALC_FINDING_R_PLANE_ASSUMED: i32 = 11;
/// No drill and no set was given.
pub const THREADCALC_FINDING_DRILL_SETS_ASSUMED: i32 = 12;
/// The control rounds the speed down, or the machine's highest speed cuts it.
pub const THREADCALC_FINDING_SPEED_ROUNDED: i32 = 13;
/// Rounding of the feed word leaves an error in the lead.
pub const THREADCALC_FINDING_FEED_ROUNDED: i32 = 14;
/// The thread is deeper than three diameters.
pub const THREADCALC_FINDING_DEEP_THREAD: i32 = 15;
/// The tap comes out below a through hole.
pub const THREADCALC_FINDING_TAP_COMES_OUT: i32 = 16;
/// The feed of a multi-start thread follows the lead, not the pitch.
pub const THREADCALC_FINDING_MULTI_START: i32 = 17;
/// More findings than there is room for; their number.
pub const THREADCALC_FINDING_MORE_FINDINGS: i32 = 18;
/// The pipe thread was written in an older or open way; which family is assumed.
pub const THREADCALC_FINDING_FAMILY_ASSUMED: i32 = 19;
/// Which pipe threads this one is easily taken for.
pub const THREADCALC_FINDING_PIPE_FAMILY: i32 = 20;
/// Without a taper reamer a straight hole gives full threads only near the face.
pub const THREADCALC_FINDING_TAPER_HOLE: i32 = 21;
/// Words of a note that were not understood, by byte and length.
pub const THREADCALC_FINDING_NOT_READ: i32 = 30;
/// Lengths without a mark were read in the system of the thread.
pub const THREADCALC_FINDING_UNIT_ASSUMED: i32 = 31;
/// A number behind a times sign was read as the depth of the thread.
pub const THREADCALC_FINDING_DEPTH_READ: i32 = 32;
/// The drilled hole of a note leaves no thread, or is less deep than its thread.
pub const THREADCALC_FINDING_HOLE_DOES_NOT_FIT: i32 = 33;
/// The standard's tables have no tolerance for this thread; its formula made the limits.
pub const THREADCALC_FINDING_TOLERANCE_BY_FORMULA: i32 = 40;
/// The tap's hand is not that of the thread.
pub const THREADCALC_FINDING_TAP_HAND: i32 = 60;
/// The tap is for another thread.
pub const THREADCALC_FINDING_TAP_THREAD: i32 = 61;
/// A tap for wire inserts where none is wanted, or the other way round.
pub const THREADCALC_FINDING_TAP_WIRE_INSERT: i32 = 62;
/// The tap is for another class of thread.
pub const THREADCALC_FINDING_TAP_CLASS: i32 = 63;
/// The tap leaves the thread too small, plated or not.
pub const THREADCALC_FINDING_TAP_TOO_SMALL: i32 = 64;
/// The tap makes the thread larger than its class allows.
pub const THREADCALC_FINDING_TAP_TOO_LARGE: i32 = 65;
/// The shank does not say what has to be known.
pub const THREADCALC_FINDING_TAP_UNMARKED: i32 = 66;
/// The tap is within its maker's own limits.
pub const THREADCALC_FINDING_TAP_OWN_LIMITS: i32 = 67;
/// The chamfer does not suit the hole.
pub const THREADCALC_FINDING_TAP_CHAMFER: i32 = 68;
/// The tap reaches the end of the drilled hole's full diameter.
pub const THREADCALC_FINDING_TAP_BOTTOMS: i32 = 80;
/// What is left of the part below the drill's point.
pub const THREADCALC_FINDING_FLOOR_THIN: i32 = 81;
/// The countersink takes full thread away at the mouth.
pub const THREADCALC_FINDING_COUNTERSINK_EATS_THREAD: i32 = 82;
/// The run-out below the full thread is shorter than the standard's.
pub const THREADCALC_FINDING_RUN_OUT_SHORT: i32 = 83;
/// The R plane is too near for the holder or for the spindle's ramp.
pub const THREADCALC_FINDING_CLEARANCE_SHORT: i32 = 84;
/// The spindle does not reach the speed in this hole.
pub const THREADCALC_FINDING_SPEED_NOT_REACHED: i32 = 85;
/// The axis cannot feed that fast.
pub const THREADCALC_FINDING_AXIS_FEED_LIMIT: i32 = 86;
/// The way out is faster than the spindle turns.
pub const THREADCALC_FINDING_RETRACT_SPEED_LIMIT: i32 = 87;
/// The spindle has not the torque for this tap.
pub const THREADCALC_FINDING_TORQUE_LIMIT: i32 = 88;
/// A starting value stands for the cutting force.
pub const THREADCALC_FINDING_CUTTING_FORCE_ASSUMED: i32 = 89;
/// The feed is below the lead on purpose.
pub const THREADCALC_FINDING_UNDERFEED: i32 = 90;
/// The holder was not given; rigid is assumed.
pub const THREADCALC_FINDING_HOLDER_ASSUMED: i32 = 91;
/// The hole is that of the other kind of tap.
pub const THREADCALC_FINDING_OTHER_TAPS_HOLE: i32 = 92;
/// A drill that cuts as oversize as drills do leaves a hole above the limit.
pub const THREADCALC_FINDING_OVERSIZE_OVER_LIMIT: i32 = 93;
/// A thread strips before the screw breaks.
pub const THREADCALC_FINDING_THREAD_STRIPS_FIRST: i32 = 94;
/// Starting values stand for strengths.
pub const THREADCALC_FINDING_STRENGTH_ASSUMED: i32 = 95;
/// The load is more than the weakest part carries.
pub const THREADCALC_FINDING_LOAD_TOO_HIGH: i32 = 96;
/// A plated thread needs a larger tap.
pub const THREADCALC_FINDING_PLATING_TAP: i32 = 97;
/// Pecks need a control and a holder that meet the thread again.
pub const THREADCALC_FINDING_PECK_TAPPING: i32 = 98;
/// How far the holder gives in this hole.
pub const THREADCALC_FINDING_HOLDER_TRAVEL: i32 = 99;
/// The kind of tap does not suit the hole.
pub const THREADCALC_FINDING_TAP_KIND_UNSUITED: i32 = 100;
/// A trapezoidal or buttress profile, which one pass of one tap seldom makes.
pub const THREADCALC_FINDING_DEEP_PROFILE: i32 = 101;
/// The limits that a joint is computed from have not been read.
pub const THREADCALC_FINDING_JOINT_LEFT_OUT: i32 = 102;

/// The name of a number that a finding carries.
pub type threadcalc_number = i32;
/// Not given.
pub const THREADCALC_NUMBER_UNSET: i32 = 0;
/// Drilled hole in mm.
pub const THREADCALC_NUMBER_DRILL_MM: i32 = 1;
/// What is left to the largest minor diameter in mm.
pub const THREADCALC_NUMBER_LEFT_TO_LIMIT_MM: i32 = 2;
/// Speed asked for.
pub const THREADCALC_NUMBER_ASKED_RPM: i32 = 3;
/// Speed the control holds.
pub const THREADCALC_NUMBER_SPEED_RPM: i32 = 4;
/// Relative error of the lead.
pub const THREADCALC_NUMBER_LEAD_ERROR: i32 = 5;
/// Error of the lead over the depth in mm.
pub const THREADCALC_NUMBER_AXIAL_ERROR_MM: i32 = 6;
/// Depth in diameters.
pub const THREADCALC_NUMBER_DIAMETERS: i32 = 7;
/// What comes out below in mm.
pub const THREADCALC_NUMBER_BELOW_MM: i32 = 8;
/// Threads of chamfer.
pub const THREADCALC_NUMBER_CHAMFER_THREADS: i32 = 9;
/// Room below the tap in mm.
pub const THREADCALC_NUMBER_BOTTOM_CLEARANCE_MM: i32 = 10;
/// Point angle in degrees.
pub const THREADCALC_NUMBER_POINT_ANGLE_DEG: i32 = 11;
/// R plane in mm.
pub const THREADCALC_NUMBER_R_PLANE_MM: i32 = 12;
/// Lead in mm.
pub const THREADCALC_NUMBER_LEAD_MM: i32 = 13;
/// Pitch in mm.
pub const THREADCALC_NUMBER_PITCH_MM: i32 = 14;
/// Starts.
pub const THREADCALC_NUMBER_STARTS: i32 = 15;
/// A count.
pub const THREADCALC_NUMBER_COUNT: i32 = 16;
/// Length of full thread in mm.
pub const THREADCALC_NUMBER_FULL_THREAD_MM: i32 = 17;
/// Turns of the thread.
pub const THREADCALC_NUMBER_TURNS: i32 = 18;
/// Byte offset in a text.
pub const THREADCALC_NUMBER_BYTE: i32 = 30;
/// Length in a text, in bytes.
pub const THREADCALC_NUMBER_LENGTH: i32 = 31;
/// A depth in mm.
pub const THREADCALC_NUMBER_DEPTH_MM: i32 = 32;
/// Pitch diameter of a tap above the basic one in mm.
pub const THREADCALC_NUMBER_ABOVE_BASIC_MM: i32 = 70;
/// What it may be at most, or has to be at least, in mm.
pub const THREADCALC_NUMBER_LIMIT_MM: i32 = 71;
/// Threads of room.
pub const THREADCALC_NUMBER_ROOM_THREADS: i32 = 72;
/// What there is, or what is left, in mm.
pub const THREADCALC_NUMBER_ROOM_MM: i32 = 80;
/// What it takes in mm.
pub const THREADCALC_NUMBER_NEEDED_MM: i32 = 81;
/// The largest speed that fits.
pub const THREADCALC_NUMBER_FASTEST_RPM: i32 = 82;
/// The speed that is reached.
pub const THREADCALC_NUMBER_REACHED_RPM: i32 = 83;
/// A feed in mm/min.
pub const THREADCALC_NUMBER_FEED_MM_MIN: i32 = 84;
/// Its limit in mm/min.
pub const THREADCALC_NUMBER_LIMIT_MM_MIN: i32 = 85;
/// A torque in Nm.
pub const THREADCALC_NUMBER_TORQUE_NM: i32 = 86;
/// The torque there is in Nm.
pub const THREADCALC_NUMBER_TORQUE_LIMIT_NM: i32 = 87;
/// A specific cutting force in N/mm².
pub const THREADCALC_NUMBER_CUTTING_FORCE_N_MM2: i32 = 88;
/// Percent of the lead.
pub const THREADCALC_NUMBER_UNDERFEED_PERCENT: i32 = 89;
/// A length of engagement in mm.
pub const THREADCALC_NUMBER_REQUIRED_LENGTH_MM: i32 = 90;
/// Strip load of the screw's threads over that of the hole's.
pub const THREADCALC_NUMBER_STRIP_RATIO: i32 = 91;
/// Weakest load over the load given.
pub const THREADCALC_NUMBER_SAFETY_FACTOR: i32 = 92;
/// A tensile strength in MPa.
pub const THREADCALC_NUMBER_TENSILE_MPA: i32 = 93;
/// A shear strength in MPa.
pub const THREADCALC_NUMBER_SHEAR_MPA: i32 = 94;
/// The hole that a drill probably leaves, in mm.
pub const THREADCALC_NUMBER_PROBABLE_MM: i32 = 95;
/// The holder is drawn out by this much, in mm.
pub const THREADCALC_NUMBER_EXTENSION_MM: i32 = 96;
/// The holder is pushed in by this much, in mm.
pub const THREADCALC_NUMBER_COMPRESSION_MM: i32 = 97;
/// Thickness of a plating in micrometres.
pub const THREADCALC_NUMBER_PLATING_UM: i32 = 98;
/// Percent of thread.
pub const THREADCALC_NUMBER_PERCENT: i32 = 99;
/// Diameter of a countersink in mm.
pub const THREADCALC_NUMBER_COUNTERSINK_MM: i32 = 100;
/// Included angle of a countersink in degrees.
pub const THREADCALC_NUMBER_COUNTERSINK_ANGLE_DEG: i32 = 101;
/// Full thread that is lost, in mm.
pub const THREADCALC_NUMBER_FULL_THREAD_LOST_MM: i32 = 102;
