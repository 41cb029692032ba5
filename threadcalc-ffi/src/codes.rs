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
/// Depth of the drilled hole.
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
/// Length of engagement.
pub const THREADCALC_FIELD_LENGTH_MM: i32 = 80;
/// What of the engagement has no full thread.
pub const THREADCALC_FIELD_WITHOUT_FULL_THREAD_MM: i32 = 81;
/// Shear strength of the tapped part.
pub const THREADCALC_FIELD_INTERNAL_SHEAR_MPA: i32 = 82;
/// Shear strength of the screw.
pub const THREADCALC_FIELD_EXTERNAL_SHEAR_MPA: i32 = 83;
/// Tensile strength of the screw.
pub const THREADCALC_FIELD_EXTERNAL_TENSILE_MPA: i32 = 84;
/// The hole of an engagement as drilled.
pub const THREADCALC_FIELD_DRILLED_MM: i32 = 85;
/// An axial load.
pub const THREADCALC_FIELD_LOAD_N: i32 = 86;
/// Surface speed of a tap.
pub const THREADCALC_FIELD_SURFACE_SPEED_M_MIN: i32 = 100;
/// Specific cutting force.
pub const THREADCALC_FIELD_CUTTING_FORCE_N_MM2: i32 = 101;
/// What multiplies a torque: kind of tap, forming, taper.
pub const THREADCALC_FIELD_TORQUE_FACTOR: i32 = 102;
/// A torque.
pub const THREADCALC_FIELD_TORQUE_NM: i32 = 103;
/// The gears of a spindle.
pub const THREADCALC_FIELD_GEARS: i32 = 104;
/// The torque curve of a gear.
pub const THREADCALC_FIELD_TORQUE_CURVE: i32 = 105;
/// Travel of a stroke.
pub const THREADCALC_FIELD_TRAVEL_MM: i32 = 106;
/// Acceleration of the spindle.
pub const THREADCALC_FIELD_ACCELERATION_RPM_S: i32 = 107;
/// Speed on the way out over speed on the way in.
pub const THREADCALC_FIELD_RETRACT_FACTOR: i32 = 108;
/// Wait at the bottom of a stroke.
pub const THREADCALC_FIELD_DWELL_S: i32 = 109;
/// Turns of the spindle.
pub const THREADCALC_FIELD_TURNS: i32 = 110;
/// Feed limit of an axis.
pub const THREADCALC_FIELD_FEED_LIMIT_MM_MIN: i32 = 111;
/// How far the feed is below the lead.
pub const THREADCALC_FIELD_UNDERFEED_PERCENT: i32 = 112;
/// Turns that the spindle coasts on.
pub const THREADCALC_FIELD_OVER_TRAVEL_TURNS: i32 = 113;
/// Way of a rapid move.
pub const THREADCALC_FIELD_RAPID_DISTANCE_MM: i32 = 114;
/// Feed of a rapid move.
pub const THREADCALC_FIELD_RAPID_FEED_MM_MIN: i32 = 115;
/// Time of a hole.
pub const THREADCALC_FIELD_SECONDS_PER_HOLE: i32 = 116;
/// The mark on a tap's shank.
pub const THREADCALC_FIELD_TAP_MARK: i32 = 117;
/// H, L or D limit of a tap.
pub const THREADCALC_FIELD_TAP_LIMIT: i32 = 118;
/// Thickness of a plating.
pub const THREADCALC_FIELD_PLATING_UM: i32 = 119;
/// Pitch diameter.
pub const THREADCALC_FIELD_PITCH_DIAMETER_MM: i32 = 120;
/// Threads of room for a chamfer.
pub const THREADCALC_FIELD_ROOM_THREADS: i32 = 121;
/// Turns that a taper gauge stands off.
pub const THREADCALC_FIELD_STAND_OFF_TURNS: i32 = 122;
/// Diameter of a measuring wire.
pub const THREADCALC_FIELD_WIRE_MM: i32 = 123;
/// Whether the hole is for a wire insert.
pub const THREADCALC_FIELD_WIRE_INSERT: i32 = 126;
/// Whether the lead angle is taken into account.
pub const THREADCALC_FIELD_LEAD_ANGLE: i32 = 127;
/// What a gauge said.
pub const THREADCALC_FIELD_RESULT: i32 = 128;
/// Class of a tap by ISO 2857.
pub const THREADCALC_FIELD_TAP_CLASS: i32 = 129;
/// Surface speed of a tap in feet per minute.
pub const THREADCALC_FIELD_SURFACE_SPEED_FT_MIN: i32 = 130;
/// Material of the part.
pub const THREADCALC_FIELD_MATERIAL: i32 = 131;
/// How the tap is built.
pub const THREADCALC_FIELD_TAP_KIND: i32 = 132;
/// Chamfer form of the tap.
pub const THREADCALC_FIELD_CHAMFER_FORM: i32 = 133;
/// The drills that the shop owns.
pub const THREADCALC_FIELD_DRILL_LIST: i32 = 134;
/// Thickness of the part at the hole.
pub const THREADCALC_FIELD_PART_THICKNESS_MM: i32 = 135;
/// How the tap is held.
pub const THREADCALC_FIELD_HOLDER: i32 = 136;
/// Depth of a peck.
pub const THREADCALC_FIELD_PECK_MM: i32 = 137;
/// Shear strength of the part.
pub const THREADCALC_FIELD_PART_SHEAR_MPA: i32 = 138;
/// Class of the screw's thread.
pub const THREADCALC_FIELD_SCREW_TOLERANCE_CLASS: i32 = 139;
/// Property class of the screw.
pub const THREADCALC_FIELD_SCREW_PROPERTY_CLASS: i32 = 140;
/// Tensile strength of the screw.
pub const THREADCALC_FIELD_SCREW_TENSILE_MPA: i32 = 141;
/// Shear strength of the screw.
pub const THREADCALC_FIELD_SCREW_SHEAR_MPA: i32 = 142;
/// Length of engagement of the screw.
pub const THREADCALC_FIELD_SCREW_ENGAGEMENT_MM: i32 = 143;
/// Load on the screw.
pub const THREADCALC_FIELD_SCREW_LOAD_N: i32 = 144;
/// Feed limit of the machine's axis.
pub const THREADCALC_FIELD_MACHINE_AXIS_FEED_LIMIT_MM_MIN: i32 = 145;
/// Acceleration of the machine's spindle.
pub const THREADCALC_FIELD_MACHINE_ACCELERATION_RPM_S: i32 = 146;
/// Gears of the machine's spindle.
pub const THREADCALC_FIELD_MACHINE_GEARS: i32 = 147;
/// Retract factor of the machine.
pub const THREADCALC_FIELD_MACHINE_RETRACT_FACTOR: i32 = 148;
/// Turns of clearance that the machine needs.
pub const THREADCALC_FIELD_MACHINE_LEAST_CLEARANCE_TURNS: i32 = 149;
/// Thickness of the plating of a job.
pub const THREADCALC_FIELD_COATING_UM: i32 = 150;
/// The holder's extension.
pub const THREADCALC_FIELD_HOLDER_EXTENSION_MM: i32 = 151;
/// The holder's compression.
pub const THREADCALC_FIELD_HOLDER_COMPRESSION_MM: i32 = 152;
/// Whether left hand is the right-hand code with the spindle turning backwards.
pub const THREADCALC_FIELD_DIALECT_LH_BY_SPINDLE_DIRECTION: i32 = 160;
/// Code of feed per minute.
pub const THREADCALC_FIELD_DIALECT_FEED_PER_MINUTE: i32 = 161;
/// Code that makes the next tapping cycle a synchronised one.
pub const THREADCALC_FIELD_DIALECT_RIGID_TAP_CODE: i32 = 162;
/// Whether that code carries the speed.
pub const THREADCALC_FIELD_DIALECT_RIGID_TAP_CODE_HAS_S: i32 = 163;
/// Letter of the peck's depth.
pub const THREADCALC_FIELD_DIALECT_PECK_WORD: i32 = 164;
/// Code of the right-hand tapping cycle with pecks.
pub const THREADCALC_FIELD_DIALECT_PECK_CODE_RH: i32 = 165;
/// Code of the left-hand tapping cycle with pecks.
pub const THREADCALC_FIELD_DIALECT_PECK_CODE_LH: i32 = 166;
/// Letter of the dwell at the bottom.
pub const THREADCALC_FIELD_DIALECT_DWELL_WORD: i32 = 167;
/// What the dwell is counted in.
pub const THREADCALC_FIELD_DIALECT_DWELL_UNIT: i32 = 168;
/// Letter of the faster way out.
pub const THREADCALC_FIELD_DIALECT_RETRACT_MULTIPLIER_WORD: i32 = 169;
/// What the faster way out is counted in.
pub const THREADCALC_FIELD_DIALECT_RETRACT_IN: i32 = 170;
/// Code of the return to the R plane.
pub const THREADCALC_FIELD_DIALECT_RETURN_R_PLANE: i32 = 171;
/// Code of the return to the height before the cycle.
pub const THREADCALC_FIELD_DIALECT_RETURN_INITIAL: i32 = 172;
/// Decimals of axis words in millimetres.
pub const THREADCALC_FIELD_DIALECT_AXIS_DECIMALS_MM: i32 = 173;
/// Decimals of axis words in inches.
pub const THREADCALC_FIELD_DIALECT_AXIS_DECIMALS_INCH: i32 = 174;
/// Whether a whole number has a point.
pub const THREADCALC_FIELD_DIALECT_TRAILING_POINT: i32 = 175;
/// Where the tap returns to.
pub const THREADCALC_FIELD_RETURN_TO: i32 = 176;
/// What the depth of a drilled hole is measured to.
pub const THREADCALC_FIELD_DRILL_DEPTH_TO: i32 = 180;
/// The side that a depth is rounded to.
pub const THREADCALC_FIELD_DEPTH_ROUNDING: i32 = 181;
/// Normal, short or long run-out.
pub const THREADCALC_FIELD_RUN_OUT: i32 = 182;
/// Depth to the very end of the tap.
pub const THREADCALC_FIELD_TAP_END_MM: i32 = 183;
/// Depth to the drill's point.
pub const THREADCALC_FIELD_DRILL_POINT_MM: i32 = 184;
/// How far the drill's full diameter comes out below.
pub const THREADCALC_FIELD_DRILL_CLEARANCE_MM: i32 = 185;
/// How much larger than itself a drill cuts.
pub const THREADCALC_FIELD_OVERSIZE_MM: i32 = 190;
/// Thickness of a coating.
pub const THREADCALC_FIELD_THICKNESS_UM: i32 = 191;
/// The thinnest that a coating may be.
pub const THREADCALC_FIELD_THINNEST_UM: i32 = 192;
/// The thickest that a coating may be.
pub const THREADCALC_FIELD_THICKEST_UM: i32 = 193;
/// Short, normal or long engagement.
pub const THREADCALC_FIELD_GROUP: i32 = 194;
/// What a thread is for: fine, medium or coarse.
pub const THREADCALC_FIELD_QUALITY: i32 = 195;
/// The unit before any units code.
pub const THREADCALC_FIELD_DIALECT_UNITS_DEFAULT: i32 = 200;
/// The feed mode before any code of it.
pub const THREADCALC_FIELD_DIALECT_FEED_MODE_DEFAULT: i32 = 201;
/// Codes of the units.
pub const THREADCALC_FIELD_DIALECT_UNITS_CODES: i32 = 202;
/// Codes of inches.
pub const THREADCALC_FIELD_DIALECT_UNITS_CODES_INCH: i32 = 203;
/// Codes of millimetres.
pub const THREADCALC_FIELD_DIALECT_UNITS_CODES_MM: i32 = 204;
/// What F means in a tapping cycle.
pub const THREADCALC_FIELD_DIALECT_FEED_BASIS: i32 = 205;
/// Letter of the lead.
pub const THREADCALC_FIELD_DIALECT_LEAD_WORD: i32 = 206;
/// Code of one synchronised stroke.
pub const THREADCALC_FIELD_DIALECT_STROKE_CODE: i32 = 207;
/// Whether the tapping cycle starts the spindle.
pub const THREADCALC_FIELD_DIALECT_CYCLE_STARTS_SPINDLE: i32 = 208;
/// How long the code for rigid tapping holds.
pub const THREADCALC_FIELD_DIALECT_RIGID_TAP_CODE_STICKY_UNTIL: i32 = 209;
/// Whether S may stand in the cycle's block.
pub const THREADCALC_FIELD_DIALECT_S_IN_CYCLE_BLOCK_ALLOWED: i32 = 210;
/// Decimals of S that the control keeps.
pub const THREADCALC_FIELD_DIALECT_S_DECIMALS: i32 = 211;
/// Whether a peck returns to the R plane.
pub const THREADCALC_FIELD_DIALECT_PECK_RETURNS_TO_R: i32 = 212;
/// Letter of repeats.
pub const THREADCALC_FIELD_DIALECT_REPEAT_WORD: i32 = 213;
/// What no repeats mean.
pub const THREADCALC_FIELD_DIALECT_REPEAT_ZERO_MEANS: i32 = 214;
/// What a number without a point is.
pub const THREADCALC_FIELD_DIALECT_NO_POINT: i32 = 215;
/// Least increments of words.
pub const THREADCALC_FIELD_DIALECT_LEAST_INCREMENT: i32 = 216;
/// The most decimals of words.
pub const THREADCALC_FIELD_DIALECT_MAX_DECIMALS: i32 = 217;
/// Code that mirrors an axis.
pub const THREADCALC_FIELD_DIALECT_MIRROR_ON: i32 = 218;
/// Code that ends mirroring.
pub const THREADCALC_FIELD_DIALECT_MIRROR_OFF: i32 = 219;
/// Code that scales.
pub const THREADCALC_FIELD_DIALECT_SCALE_ON: i32 = 220;
/// Code that ends scaling.
pub const THREADCALC_FIELD_DIALECT_SCALE_OFF: i32 = 221;
/// Code that rotates.
pub const THREADCALC_FIELD_DIALECT_ROTATE_ON: i32 = 222;
/// Code that ends rotation.
pub const THREADCALC_FIELD_DIALECT_ROTATE_OFF: i32 = 223;
/// Whether a mirrored cycle changes its hand.
pub const THREADCALC_FIELD_DIALECT_MIRROR_FLIPS_HAND: i32 = 224;
/// Whether G0 to G3 end a cycle.
pub const THREADCALC_FIELD_DIALECT_RAPID_CANCELS_CYCLE: i32 = 225;
/// Whether R and Z outlive a cycle.
pub const THREADCALC_FIELD_DIALECT_CYCLE_WORDS_STICKY_ACROSS_CANCEL: i32 = 226;
/// Whether a change of units converts F.
pub const THREADCALC_FIELD_DIALECT_F_CONVERTED_ON_UNITS_CHANGE: i32 = 227;
/// Whether overrides are locked in the cycle.
pub const THREADCALC_FIELD_DIALECT_OVERRIDE_LOCKED_IN_CYCLE: i32 = 228;
/// Whether a semicolon begins a comment.
pub const THREADCALC_FIELD_DIALECT_SEMICOLON_COMMENT: i32 = 229;
/// The longest line in characters.
pub const THREADCALC_FIELD_DIALECT_MAX_BLOCK_CHARS: i32 = 230;
/// What blanks inside a number are.
pub const THREADCALC_FIELD_DIALECT_SPACES_IN_NUMBERS: i32 = 231;
/// Code that calls a subprogram.
pub const THREADCALC_FIELD_DIALECT_SUBPROGRAM_CALL: i32 = 232;
/// Code that returns from a subprogram.
pub const THREADCALC_FIELD_DIALECT_SUBPROGRAM_RETURN: i32 = 233;
/// In what order the words of a block act.
pub const THREADCALC_FIELD_DIALECT_ORDER_TABLE: i32 = 234;
/// Whether unlisted codes are an alarm.
pub const THREADCALC_FIELD_DIALECT_UNLISTED_CODES_ALARM: i32 = 235;
/// A program.
pub const THREADCALC_FIELD_PROGRAM: i32 = 240;
/// A tool of a tool list.
pub const THREADCALC_FIELD_TOOL: i32 = 250;
/// What a lead may be off a pitch.
pub const THREADCALC_FIELD_WITHIN: i32 = 251;
/// Face of the part in the program's Z.
pub const THREADCALC_FIELD_SURFACE_Z_MM: i32 = 252;
/// Position of the switch for block delete.
pub const THREADCALC_FIELD_BLOCK_DELETE: i32 = 253;
/// Whether formulas are computed.
pub const THREADCALC_FIELD_EVALUATE_MACROS: i32 = 254;
/// What a tool is.
pub const THREADCALC_FIELD_KIND: i32 = 255;
