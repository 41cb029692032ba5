//! Choices as C knows them: 32-bit numbers with names, 0 for "not given".
//!
//! The numbers are the core's; `tests/header.rs` compares every one of them.

/// The profile of a thread.
pub type threadcalc_form = i32;
/// Not given.
pub const THREADCALC_FORM_UNSET: i32 = 0;
/// ISO 68-1 metric thread, M.
pub const THREADCALC_FORM_METRIC: i32 = 1;
/// ASME B1.1 Unified inch thread, UN.
pub const THREADCALC_FORM_UNIFIED: i32 = 2;
/// ASME B1.20.1 taper pipe thread, general use.
pub const THREADCALC_FORM_NPT: i32 = 3;
/// ASME B1.20.3 taper pipe thread, dryseal.
pub const THREADCALC_FORM_NPTF: i32 = 4;
/// ASME B1.20.1 straight pipe thread in couplings.
pub const THREADCALC_FORM_NPSC: i32 = 5;
/// ASME B1.20.1 straight pipe thread for free-fitting mechanical joints.
pub const THREADCALC_FORM_NPSM: i32 = 6;
/// ASME B1.20.3 straight internal pipe thread, dryseal.
pub const THREADCALC_FORM_NPSF: i32 = 7;
/// ISO 228-1 parallel pipe thread; the joint does not seal on the thread.
pub const THREADCALC_FORM_G: i32 = 8;
/// ISO 7-1 taper external pipe thread.
pub const THREADCALC_FORM_R: i32 = 9;
/// ISO 7-1 parallel internal pipe thread.
pub const THREADCALC_FORM_RP: i32 = 10;
/// ISO 7-1 taper internal pipe thread.
pub const THREADCALC_FORM_RC: i32 = 11;

/// An older or open name of a pipe thread, which leaves something to assume.
pub type threadcalc_written_as = i32;
/// None: the thread was written by the name of its standard.
pub const THREADCALC_WRITTEN_AS_UNSET: i32 = 0;
/// BSP: British Standard Pipe, neither parallel nor taper said. Read as G.
pub const THREADCALC_WRITTEN_AS_BSP: i32 = 1;
/// BSPP: British Standard Pipe, parallel: G or Rp. Read as G.
pub const THREADCALC_WRITTEN_AS_BSPP: i32 = 2;
/// BSPT: British Standard Pipe, taper: R or Rc. Read as Rc.
pub const THREADCALC_WRITTEN_AS_BSPT: i32 = 3;
/// PF: older mark of the parallel thread, G.
pub const THREADCALC_WRITTEN_AS_PF: i32 = 4;
/// PT: older mark of the taper thread, R or Rc. Read as Rc.
pub const THREADCALC_WRITTEN_AS_PT: i32 = 5;
/// PS: older mark of the parallel internal jointing thread, Rp.
pub const THREADCALC_WRITTEN_AS_PS: i32 = 6;
/// NPT(F): NPT or NPTF, not said which. Read as NPT.
pub const THREADCALC_WRITTEN_AS_NPT_OR_NPTF: i32 = 7;
/// NC, NF or NEF: American National. Read as UNC, UNF or UNEF.
pub const THREADCALC_WRITTEN_AS_AMERICAN_NATIONAL: i32 = 8;

/// The standard's token for a row of diameters and pitches.
pub type threadcalc_series = i32;
/// Not given.
pub const THREADCALC_SERIES_UNSET: i32 = 0;
/// ISO 261 coarse pitch.
pub const THREADCALC_SERIES_COARSE: i32 = 1;
/// ISO 261 fine pitch.
pub const THREADCALC_SERIES_FINE: i32 = 2;
/// Unified coarse.
pub const THREADCALC_SERIES_UNC: i32 = 3;
/// Unified fine.
pub const THREADCALC_SERIES_UNF: i32 = 4;
/// Unified extra fine.
pub const THREADCALC_SERIES_UNEF: i32 = 5;
/// Unified constant pitch, 4 threads per inch.
pub const THREADCALC_SERIES_UN_4: i32 = 6;
/// Unified constant pitch, 6 threads per inch.
pub const THREADCALC_SERIES_UN_6: i32 = 7;
/// Unified constant pitch, 8 threads per inch.
pub const THREADCALC_SERIES_UN_8: i32 = 8;
/// Unified constant pitch, 12 threads per inch.
pub const THREADCALC_SERIES_UN_12: i32 = 9;
/// Unified constant pitch, 16 threads per inch.
pub const THREADCALC_SERIES_UN_16: i32 = 10;
/// Unified constant pitch, 20 threads per inch.
pub const THREADCALC_SERIES_UN_20: i32 = 11;
/// Unified constant pitch, 28 threads per inch.
pub const THREADCALC_SERIES_UN_28: i32 = 12;
/// Unified constant pitch, 32 threads per inch.
pub const THREADCALC_SERIES_UN_32: i32 = 13;
/// Unified special: a diameter-pitch combination outside the standard series.
pub const THREADCALC_SERIES_UNS: i32 = 14;

/// The direction of the helix.
pub type threadcalc_hand = i32;
/// Not given.
pub const THREADCALC_HAND_UNSET: i32 = 0;
/// Advances when turned clockwise.
pub const THREADCALC_HAND_RIGHT: i32 = 1;
/// Advances when turned anticlockwise.
pub const THREADCALC_HAND_LEFT: i32 = 2;

/// The side of a fit.
pub type threadcalc_side = i32;
/// Not given.
pub const THREADCALC_SIDE_UNSET: i32 = 0;
/// A tapped hole or a nut.
pub const THREADCALC_SIDE_INTERNAL: i32 = 1;
/// A screw.
pub const THREADCALC_SIDE_EXTERNAL: i32 = 2;

/// Which side of the part a note speaks of.
pub type threadcalc_sides = i32;
/// Not given.
pub const THREADCALC_SIDES_UNSET: i32 = 0;
/// The side that is seen.
pub const THREADCALC_SIDES_NEAR: i32 = 1;
/// The side away from the viewer.
pub const THREADCALC_SIDES_FAR: i32 = 2;
/// Both sides, or both ends.
pub const THREADCALC_SIDES_BOTH: i32 = 3;

/// When the limits of the thread are to be met.
pub type threadcalc_plating = i32;
/// Not given.
pub const THREADCALC_PLATING_UNSET: i32 = 0;
/// The limits are those of the plated thread: it is tapped oversize.
pub const THREADCALC_PLATING_AFTER: i32 = 1;
/// The limits are those of the thread before it is plated.
pub const THREADCALC_PLATING_BEFORE: i32 = 2;

/// The unit the machine is set to. Never has a default.
pub type threadcalc_unit = i32;
/// Not given.
pub const THREADCALC_UNIT_UNSET: i32 = 0;
/// Millimetres (G21).
pub const THREADCALC_UNIT_MM: i32 = 1;
/// Inches (G20).
pub const THREADCALC_UNIT_INCH: i32 = 2;

/// What the feed is counted by. Never has a default.
pub type threadcalc_mode = i32;
/// Not given.
pub const THREADCALC_MODE_UNSET: i32 = 0;
/// Units per minute (G94).
pub const THREADCALC_MODE_PER_MINUTE: i32 = 1;
/// Units per revolution (G95).
pub const THREADCALC_MODE_PER_REVOLUTION: i32 = 2;

/// How the tap makes the thread.
pub type threadcalc_tap = i32;
/// Not given.
pub const THREADCALC_TAP_UNSET: i32 = 0;
/// It cuts chips.
pub const THREADCALC_TAP_CUT: i32 = 1;
/// It displaces metal; also called a roll tap.
pub const THREADCALC_TAP_FORM: i32 = 2;

/// What 100 % of thread is. Two bases are in print; neither is a default.
pub type threadcalc_basis = i32;
/// Not given.
pub const THREADCALC_BASIS_UNSET: i32 = 0;
/// 3/4 H, 1.299038 P on the diameter: the inch trade's charts.
pub const THREADCALC_BASIS_THREE_QUARTERS_H: i32 = 1;
/// 5/8 H, 1.082532 P on the diameter: the basic height, down to the basic minor diameter.
pub const THREADCALC_BASIS_FIVE_EIGHTHS_H: i32 = 2;

/// A set of drills.
pub type threadcalc_drill_set = i32;
/// Not given.
pub const THREADCALC_DRILL_SET_UNSET: i32 = 0;
/// Metric sizes, named by their diameter.
pub const THREADCALC_DRILL_SET_METRIC: i32 = 1;
/// Number sizes, `#1` to `#97`.
pub const THREADCALC_DRILL_SET_NUMBER: i32 = 2;
/// Letter sizes, `A` to `Z`.
pub const THREADCALC_DRILL_SET_LETTER: i32 = 3;
/// Fractional inch sizes, `1/64` to `3 1/2`.
pub const THREADCALC_DRILL_SET_FRACTIONAL: i32 = 4;

/// Whether a drilled hole lies within the class's minor-diameter limits.
pub type threadcalc_within_limits = i32;
/// Not given.
pub const THREADCALC_WITHIN_LIMITS_UNSET: i32 = 0;
/// It does.
pub const THREADCALC_WITHIN_LIMITS_YES: i32 = 1;
/// It does not.
pub const THREADCALC_WITHIN_LIMITS_NO: i32 = 2;
/// A form tap makes the minor diameter itself, or no limits are known.
pub const THREADCALC_WITHIN_LIMITS_DOES_NOT_APPLY: i32 = 3;

/// Whether the hole goes through the part.
pub type threadcalc_hole = i32;
/// Not given.
pub const THREADCALC_HOLE_UNSET: i32 = 0;
/// It does.
pub const THREADCALC_HOLE_THROUGH: i32 = 1;
/// It does not.
pub const THREADCALC_HOLE_BLIND: i32 = 2;

/// The place on the tap that its length offset is set on.
pub type threadcalc_tap_set_on = i32;
/// Not given.
pub const THREADCALC_TAP_SET_ON_UNSET: i32 = 0;
/// The front of the chamfer.
pub const THREADCALC_TAP_SET_ON_FRONT: i32 = 1;
/// The tip of the male centre.
pub const THREADCALC_TAP_SET_ON_CENTRE: i32 = 2;

/// How sure a limit of size is.
pub type threadcalc_confidence = i32;
/// Not given.
pub const THREADCALC_CONFIDENCE_UNSET: i32 = 0;
/// The tolerance cell agrees with its formula's R40 value, or a second source prints it.
pub const THREADCALC_CONFIDENCE_CONFIRMED: i32 = 1;
/// Made by the standard's own rule; printed tables may keep legacy values in single cells.
pub const THREADCALC_CONFIDENCE_BY_RULE: i32 = 2;
/// Written from memory of the standard; nobody has read the value in the source.
pub const THREADCALC_CONFIDENCE_FROM_MEMORY: i32 = 3;

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

/// Several sets of drills, one bit each; 0 is "not given".
pub type threadcalc_drill_sets = u32;
/// Metric sizes.
pub const THREADCALC_DRILL_SETS_METRIC: u32 = 1;
/// Number sizes.
pub const THREADCALC_DRILL_SETS_NUMBER: u32 = 2;
/// Letter sizes.
pub const THREADCALC_DRILL_SETS_LETTER: u32 = 4;
/// Fractional inch sizes.
pub const THREADCALC_DRILL_SETS_FRACTIONAL: u32 = 8;

/// The control's dialect.
pub type threadcalc_dialect = i32;
/// Not given: a plan has no words.
pub const THREADCALC_DIALECT_UNSET: i32 = 0;
/// RS274/NGC: G84 right hand only, feed per minute only.
pub const THREADCALC_DIALECT_RS274NGC: i32 = 1;
/// The control's own, as the further members of the structure say.
pub const THREADCALC_DIALECT_OWN: i32 = 2;

/// An answer to a question with a default.
pub type threadcalc_answer = i32;
/// Not given: the default holds.
pub const THREADCALC_ANSWER_UNSET: i32 = 0;
/// Yes.
pub const THREADCALC_ANSWER_YES: i32 = 1;
/// No.
pub const THREADCALC_ANSWER_NO: i32 = 2;
