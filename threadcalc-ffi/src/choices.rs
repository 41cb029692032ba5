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
/// ISO 5855-1 metric thread with a larger root, MJ.
pub const THREADCALC_FORM_METRIC_J: i32 = 12;
/// ISO 1501 miniature thread, S.
pub const THREADCALC_FORM_MINIATURE: i32 = 13;
/// ASME B1.1 external thread with a rounded root, UNR.
pub const THREADCALC_FORM_UNIFIED_R: i32 = 14;
/// ASME B1.15 inch thread with a larger root, UNJ.
pub const THREADCALC_FORM_UNIFIED_J: i32 = 15;
/// BS 84 inch thread of 55°: BSW, BSF.
pub const THREADCALC_FORM_WHITWORTH: i32 = 16;
/// BS 93 small metric thread of 47.5°, BA.
pub const THREADCALC_FORM_BA: i32 = 17;
/// ISO 2904 metric trapezoidal thread of 30°, Tr.
pub const THREADCALC_FORM_TRAPEZOIDAL: i32 = 18;
/// ASME B1.5 inch trapezoidal thread of 29°.
pub const THREADCALC_FORM_ACME: i32 = 19;
/// ASME B1.8 inch trapezoidal thread of 29° and less depth.
pub const THREADCALC_FORM_STUB_ACME: i32 = 20;
/// ASME B1.9 thread of 7° and 45°, which carries pressing away from its leading end.
pub const THREADCALC_FORM_BUTTRESS: i32 = 21;
/// ASME B1.9 thread the other way round, which carries pulling.
pub const THREADCALC_FORM_PULL_BUTTRESS: i32 = 22;

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
/// British Standard Whitworth, coarse.
pub const THREADCALC_SERIES_BSW: i32 = 15;
/// British Standard Fine.
pub const THREADCALC_SERIES_BSF: i32 = 16;

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
/// Outside the standard's tables: its formula, rounded to the R40 series.
pub const THREADCALC_CONFIDENCE_BY_FORMULA: i32 = 4;

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

/// The dialect that the fields of a control's own are set in.
pub type threadcalc_dialect = i32;
/// Not given.
pub const THREADCALC_DIALECT_UNSET: i32 = 0;
/// RS274/NGC: G84 right hand only, feed per minute only.
pub const THREADCALC_DIALECT_RS274NGC: i32 = 1;
/// None: the control has what the further members say, and no tapping cycle without them.
pub const THREADCALC_DIALECT_OWN: i32 = 2;

/// What a dwell at the bottom is counted in.
pub type threadcalc_dwell_unit = i32;
/// Not given.
pub const THREADCALC_DWELL_UNIT_UNSET: i32 = 0;
/// Seconds, perhaps with decimals.
pub const THREADCALC_DWELL_UNIT_SECONDS: i32 = 1;
/// Whole milliseconds.
pub const THREADCALC_DWELL_UNIT_MILLISECONDS: i32 = 2;

/// What the way out, faster than the way in, is counted in.
pub type threadcalc_retract_in = i32;
/// Not given.
pub const THREADCALC_RETRACT_IN_UNSET: i32 = 0;
/// Speed out over speed in.
pub const THREADCALC_RETRACT_IN_FACTOR: i32 = 1;
/// The same in percent.
pub const THREADCALC_RETRACT_IN_PERCENT: i32 = 2;

/// Where the tap returns to after the hole.
pub type threadcalc_return_to = i32;
/// Not given.
pub const THREADCALC_RETURN_TO_UNSET: i32 = 0;
/// The R plane.
pub const THREADCALC_RETURN_TO_R_PLANE: i32 = 1;
/// The height that it stood at before the cycle.
pub const THREADCALC_RETURN_TO_INITIAL: i32 = 2;

/// An answer to a question with a default.
pub type threadcalc_answer = i32;
/// Not given: the default holds.
pub const THREADCALC_ANSWER_UNSET: i32 = 0;
/// Yes.
pub const THREADCALC_ANSWER_YES: i32 = 1;
/// No.
pub const THREADCALC_ANSWER_NO: i32 = 2;

/// What a lead says of the thread.
pub type threadcalc_lead_verdict = i32;
/// Not given.
pub const THREADCALC_LEAD_VERDICT_UNSET: i32 = 0;
/// One pitch is near.
pub const THREADCALC_LEAD_VERDICT_IDENTIFIED: i32 = 1;
/// More than one pitch may be meant.
pub const THREADCALC_LEAD_VERDICT_AMBIGUOUS: i32 = 2;
/// No pitch is near.
pub const THREADCALC_LEAD_VERDICT_NONSTANDARD: i32 = 3;
