/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/*
 * threadcalc: threads and tapped holes, exact and offline.
 *
 * Every call is safe from any thread at any time: no allocation, no global state, no files, no
 * locale. Lengths are in millimetres, speeds in turns per minute, unless a name says otherwise.
 * Calls return 0 on success, else the number of an error (threadcalc_status_name), and write results
 * only on success. Pointers are checked for NULL; otherwise they must point to what their type says.
 * The last argument `error` may be NULL. Text in is pointer and length, UTF-8, no NUL needed; text out
 * is buffer, capacity and the length needed, which counts the NUL.
 *
 * The tap maker's data and the machine's manual come first; prove out every program. Pressure, gas and
 * structural joints belong to local codes and licensed practice.
 */

#ifndef THREADCALC_H
#define THREADCALC_H

/* Made by cbindgen from threadcalc-ffi: THREADCALC_WRITE_HEADER=1 cargo test -p threadcalc-ffi --test header */

#include <stddef.h>
#include <stdint.h>

/*
 * Where the functions are, and how they are called; both are empty but on Windows. There a program
 * that links the static library defines THREADCALC_STATIC before it includes this file.
 */
#if defined(_WIN32) && !defined(THREADCALC_STATIC)
#define THREADCALC_API __declspec(dllimport)
#else
#define THREADCALC_API
#endif
#if defined(_WIN32)
#define THREADCALC_CALL __cdecl
#else
#define THREADCALC_CALL
#endif

#define THREADCALC_VERSION "0.1.0"

/**
 * Not given.
 */
#define THREADCALC_FORM_UNSET 0

/**
 * ISO 68-1 metric thread, M.
 */
#define THREADCALC_FORM_METRIC 1

/**
 * ASME B1.1 Unified inch thread, UN.
 */
#define THREADCALC_FORM_UNIFIED 2

/**
 * ASME B1.20.1 taper pipe thread, general use.
 */
#define THREADCALC_FORM_NPT 3

/**
 * ASME B1.20.3 taper pipe thread, dryseal.
 */
#define THREADCALC_FORM_NPTF 4

/**
 * ASME B1.20.1 straight pipe thread in couplings.
 */
#define THREADCALC_FORM_NPSC 5

/**
 * ASME B1.20.1 straight pipe thread for free-fitting mechanical joints.
 */
#define THREADCALC_FORM_NPSM 6

/**
 * ASME B1.20.3 straight internal pipe thread, dryseal.
 */
#define THREADCALC_FORM_NPSF 7

/**
 * ISO 228-1 parallel pipe thread; the joint does not seal on the thread.
 */
#define THREADCALC_FORM_G 8

/**
 * ISO 7-1 taper external pipe thread.
 */
#define THREADCALC_FORM_R 9

/**
 * ISO 7-1 parallel internal pipe thread.
 */
#define THREADCALC_FORM_RP 10

/**
 * ISO 7-1 taper internal pipe thread.
 */
#define THREADCALC_FORM_RC 11

/**
 * None: the thread was written by the name of its standard.
 */
#define THREADCALC_WRITTEN_AS_UNSET 0

/**
 * BSP: British Standard Pipe, neither parallel nor taper said. Read as G.
 */
#define THREADCALC_WRITTEN_AS_BSP 1

/**
 * BSPP: British Standard Pipe, parallel: G or Rp. Read as G.
 */
#define THREADCALC_WRITTEN_AS_BSPP 2

/**
 * BSPT: British Standard Pipe, taper: R or Rc. Read as Rc.
 */
#define THREADCALC_WRITTEN_AS_BSPT 3

/**
 * PF: older mark of the parallel thread, G.
 */
#define THREADCALC_WRITTEN_AS_PF 4

/**
 * PT: older mark of the taper thread, R or Rc. Read as Rc.
 */
#define THREADCALC_WRITTEN_AS_PT 5

/**
 * PS: older mark of the parallel internal jointing thread, Rp.
 */
#define THREADCALC_WRITTEN_AS_PS 6

/**
 * NPT(F): NPT or NPTF, not said which. Read as NPT.
 */
#define THREADCALC_WRITTEN_AS_NPT_OR_NPTF 7

/**
 * NC, NF or NEF: American National. Read as UNC, UNF or UNEF.
 */
#define THREADCALC_WRITTEN_AS_AMERICAN_NATIONAL 8

/**
 * Not given.
 */
#define THREADCALC_SERIES_UNSET 0

/**
 * ISO 261 coarse pitch.
 */
#define THREADCALC_SERIES_COARSE 1

/**
 * ISO 261 fine pitch.
 */
#define THREADCALC_SERIES_FINE 2

/**
 * Unified coarse.
 */
#define THREADCALC_SERIES_UNC 3

/**
 * Unified fine.
 */
#define THREADCALC_SERIES_UNF 4

/**
 * Unified extra fine.
 */
#define THREADCALC_SERIES_UNEF 5

/**
 * Unified constant pitch, 4 threads per inch.
 */
#define THREADCALC_SERIES_UN_4 6

/**
 * Unified constant pitch, 6 threads per inch.
 */
#define THREADCALC_SERIES_UN_6 7

/**
 * Unified constant pitch, 8 threads per inch.
 */
#define THREADCALC_SERIES_UN_8 8

/**
 * Unified constant pitch, 12 threads per inch.
 */
#define THREADCALC_SERIES_UN_12 9

/**
 * Unified constant pitch, 16 threads per inch.
 */
#define THREADCALC_SERIES_UN_16 10

/**
 * Unified constant pitch, 20 threads per inch.
 */
#define THREADCALC_SERIES_UN_20 11

/**
 * Unified constant pitch, 28 threads per inch.
 */
#define THREADCALC_SERIES_UN_28 12

/**
 * Unified constant pitch, 32 threads per inch.
 */
#define THREADCALC_SERIES_UN_32 13

/**
 * Unified special: a diameter-pitch combination outside the standard series.
 */
#define THREADCALC_SERIES_UNS 14

/**
 * Not given.
 */
#define THREADCALC_HAND_UNSET 0

/**
 * Advances when turned clockwise.
 */
#define THREADCALC_HAND_RIGHT 1

/**
 * Advances when turned anticlockwise.
 */
#define THREADCALC_HAND_LEFT 2

/**
 * Not given.
 */
#define THREADCALC_SIDE_UNSET 0

/**
 * A tapped hole or a nut.
 */
#define THREADCALC_SIDE_INTERNAL 1

/**
 * A screw.
 */
#define THREADCALC_SIDE_EXTERNAL 2

/**
 * Not given.
 */
#define THREADCALC_SIDES_UNSET 0

/**
 * The side that is seen.
 */
#define THREADCALC_SIDES_NEAR 1

/**
 * The side away from the viewer.
 */
#define THREADCALC_SIDES_FAR 2

/**
 * Both sides, or both ends.
 */
#define THREADCALC_SIDES_BOTH 3

/**
 * Not given.
 */
#define THREADCALC_PLATING_UNSET 0

/**
 * The limits are those of the plated thread: it is tapped oversize.
 */
#define THREADCALC_PLATING_AFTER 1

/**
 * The limits are those of the thread before it is plated.
 */
#define THREADCALC_PLATING_BEFORE 2

/**
 * Not given.
 */
#define THREADCALC_UNIT_UNSET 0

/**
 * Millimetres (G21).
 */
#define THREADCALC_UNIT_MM 1

/**
 * Inches (G20).
 */
#define THREADCALC_UNIT_INCH 2

/**
 * Not given.
 */
#define THREADCALC_MODE_UNSET 0

/**
 * Units per minute (G94).
 */
#define THREADCALC_MODE_PER_MINUTE 1

/**
 * Units per revolution (G95).
 */
#define THREADCALC_MODE_PER_REVOLUTION 2

/**
 * Not given.
 */
#define THREADCALC_TAP_UNSET 0

/**
 * It cuts chips.
 */
#define THREADCALC_TAP_CUT 1

/**
 * It displaces metal; also called a roll tap.
 */
#define THREADCALC_TAP_FORM 2

/**
 * Not given.
 */
#define THREADCALC_BASIS_UNSET 0

/**
 * 3/4 H, 1.299038 P on the diameter: the inch trade's charts.
 */
#define THREADCALC_BASIS_THREE_QUARTERS_H 1

/**
 * 5/8 H, 1.082532 P on the diameter: the basic height, down to the basic minor diameter.
 */
#define THREADCALC_BASIS_FIVE_EIGHTHS_H 2

/**
 * Not given.
 */
#define THREADCALC_DRILL_SET_UNSET 0

/**
 * Metric sizes, named by their diameter.
 */
#define THREADCALC_DRILL_SET_METRIC 1

/**
 * Number sizes, `#1` to `#97`.
 */
#define THREADCALC_DRILL_SET_NUMBER 2

/**
 * Letter sizes, `A` to `Z`.
 */
#define THREADCALC_DRILL_SET_LETTER 3

/**
 * Fractional inch sizes, `1/64` to `3 1/2`.
 */
#define THREADCALC_DRILL_SET_FRACTIONAL 4

/**
 * Not given.
 */
#define THREADCALC_WITHIN_LIMITS_UNSET 0

/**
 * It does.
 */
#define THREADCALC_WITHIN_LIMITS_YES 1

/**
 * It does not.
 */
#define THREADCALC_WITHIN_LIMITS_NO 2

/**
 * A form tap makes the minor diameter itself, or no limits are known.
 */
#define THREADCALC_WITHIN_LIMITS_DOES_NOT_APPLY 3

/**
 * Not given.
 */
#define THREADCALC_HOLE_UNSET 0

/**
 * It does.
 */
#define THREADCALC_HOLE_THROUGH 1

/**
 * It does not.
 */
#define THREADCALC_HOLE_BLIND 2

/**
 * Not given.
 */
#define THREADCALC_TAP_SET_ON_UNSET 0

/**
 * The front of the chamfer.
 */
#define THREADCALC_TAP_SET_ON_FRONT 1

/**
 * The tip of the male centre.
 */
#define THREADCALC_TAP_SET_ON_CENTRE 2

/**
 * Not given.
 */
#define THREADCALC_CONFIDENCE_UNSET 0

/**
 * The tolerance cell agrees with its formula's R40 value, or a second source prints it.
 */
#define THREADCALC_CONFIDENCE_CONFIRMED 1

/**
 * Made by the standard's own rule; printed tables may keep legacy values in single cells.
 */
#define THREADCALC_CONFIDENCE_BY_RULE 2

/**
 * Written from memory of the standard; nobody has read the value in the source.
 */
#define THREADCALC_CONFIDENCE_FROM_MEMORY 3

/**
 * Outside the standard's tables: its formula, rounded to the R40 series.
 */
#define THREADCALC_CONFIDENCE_BY_FORMULA 4

/**
 * Metric sizes.
 */
#define THREADCALC_DRILL_SETS_METRIC 1

/**
 * Number sizes.
 */
#define THREADCALC_DRILL_SETS_NUMBER 2

/**
 * Letter sizes.
 */
#define THREADCALC_DRILL_SETS_LETTER 4

/**
 * Fractional inch sizes.
 */
#define THREADCALC_DRILL_SETS_FRACTIONAL 8

/**
 * Not given.
 */
#define THREADCALC_DIALECT_UNSET 0

/**
 * RS274/NGC: G84 right hand only, feed per minute only.
 */
#define THREADCALC_DIALECT_RS274NGC 1

/**
 * None: the control has what the further members say, and no tapping cycle without them.
 */
#define THREADCALC_DIALECT_OWN 2

/**
 * Not given.
 */
#define THREADCALC_DWELL_UNIT_UNSET 0

/**
 * Seconds, perhaps with decimals.
 */
#define THREADCALC_DWELL_UNIT_SECONDS 1

/**
 * Whole milliseconds.
 */
#define THREADCALC_DWELL_UNIT_MILLISECONDS 2

/**
 * Not given.
 */
#define THREADCALC_RETRACT_IN_UNSET 0

/**
 * Speed out over speed in.
 */
#define THREADCALC_RETRACT_IN_FACTOR 1

/**
 * The same in percent.
 */
#define THREADCALC_RETRACT_IN_PERCENT 2

/**
 * Not given.
 */
#define THREADCALC_RETURN_TO_UNSET 0

/**
 * The R plane.
 */
#define THREADCALC_RETURN_TO_R_PLANE 1

/**
 * The height that it stood at before the cycle.
 */
#define THREADCALC_RETURN_TO_INITIAL 2

/**
 * Not given: the default holds.
 */
#define THREADCALC_ANSWER_UNSET 0

/**
 * Yes.
 */
#define THREADCALC_ANSWER_YES 1

/**
 * No.
 */
#define THREADCALC_ANSWER_NO 2

/**
 * Success.
 */
#define THREADCALC_STATUS_OK 0

/**
 * The text is empty or blank.
 */
#define THREADCALC_STATUS_EMPTY 1

/**
 * The text stops making sense at the byte given.
 */
#define THREADCALC_STATUS_UNREADABLE 2

/**
 * The text is longer than any of its kind.
 */
#define THREADCALC_STATUS_TOO_LONG 3

/**
 * The number has no exact value here (more than 9 decimals, NaN, infinity).
 */
#define THREADCALC_STATUS_NOT_EXACT 4

/**
 * The number is outside the range that makes sense.
 */
#define THREADCALC_STATUS_OUT_OF_RANGE 5

/**
 * An exact result does not fit in 64-bit numerator and denominator.
 */
#define THREADCALC_STATUS_OVERFLOW 6

/**
 * The series that is named has another pitch at this diameter.
 */
#define THREADCALC_STATUS_SERIES_MISMATCH 7

/**
 * The tolerance class does not exist for this thread.
 */
#define THREADCALC_STATUS_UNKNOWN_CLASS 8

/**
 * Limits need a tolerance class.
 */
#define THREADCALC_STATUS_CLASS_UNSET 9

/**
 * The standard's value has not been read, and is not guessed.
 */
#define THREADCALC_STATUS_NOT_SOURCED 10

/**
 * The feed is smaller than half its last decimal.
 */
#define THREADCALC_STATUS_FEED_ROUNDS_TO_ZERO 11

/**
 * A required value is missing.
 */
#define THREADCALC_STATUS_MISSING 12

/**
 * The value is not one of the choices.
 */
#define THREADCALC_STATUS_UNKNOWN_VALUE 13

/**
 * The key is not known.
 */
#define THREADCALC_STATUS_UNKNOWN_KEY 14

/**
 * Two values exclude each other.
 */
#define THREADCALC_STATUS_CONTRADICTION 15

/**
 * No drill of the sets lies within the limits.
 */
#define THREADCALC_STATUS_NO_DRILL 16

/**
 * A fit names two threads; one was expected.
 */
#define THREADCALC_STATUS_FIT 17

/**
 * The thread form is known but not supported by this version.
 */
#define THREADCALC_STATUS_UNSUPPORTED_FORM 18

/**
 * The question has no meaning for this thread.
 */
#define THREADCALC_STATUS_DOES_NOT_APPLY 19

/**
 * A pointer that must point somewhere is null (C).
 */
#define THREADCALC_STATUS_NULL_POINTER 100

/**
 * The size member of a request is not one this library knows (C).
 */
#define THREADCALC_STATUS_STRUCTURE_SIZE 101

/**
 * The caller's buffer is too short; the length needed was written (C).
 */
#define THREADCALC_STATUS_BUFFER_TOO_SHORT 102

/**
 * The field is part of the contract, but not supported by this version.
 */
#define THREADCALC_STATUS_UNSUPPORTED_FIELD 103

/**
 * The text is not JSON, or not of the shape expected.
 */
#define THREADCALC_STATUS_BAD_JSON 104

/**
 * A fault of the library itself, caught at its border: please report it.
 */
#define THREADCALC_STATUS_INTERNAL_FAULT 199

/**
 * None.
 */
#define THREADCALC_FIELD_UNSET 0

/**
 * A thread designation.
 */
#define THREADCALC_FIELD_DESIGNATION 1

/**
 * A number given as text or as a double.
 */
#define THREADCALC_FIELD_NUMBER 2

/**
 * An exact length.
 */
#define THREADCALC_FIELD_LENGTH 3

/**
 * Nominal diameter.
 */
#define THREADCALC_FIELD_DIAMETER 4

/**
 * Pitch.
 */
#define THREADCALC_FIELD_PITCH 5

/**
 * Threads per inch.
 */
#define THREADCALC_FIELD_THREADS_PER_INCH 6

/**
 * Lead.
 */
#define THREADCALC_FIELD_LEAD_MM 7

/**
 * Number of starts.
 */
#define THREADCALC_FIELD_STARTS 8

/**
 * Series token.
 */
#define THREADCALC_FIELD_SERIES 9

/**
 * Tolerance class.
 */
#define THREADCALC_FIELD_TOLERANCE_CLASS 10

/**
 * Internal or external.
 */
#define THREADCALC_FIELD_SIDE 11

/**
 * Spindle speed.
 */
#define THREADCALC_FIELD_RPM 12

/**
 * Speed step of the control.
 */
#define THREADCALC_FIELD_STEP 13

/**
 * Lowest speed.
 */
#define THREADCALC_FIELD_LOWEST 14

/**
 * Highest speed.
 */
#define THREADCALC_FIELD_HIGHEST 15

/**
 * Unit of the program.
 */
#define THREADCALC_FIELD_UNIT 16

/**
 * Feed mode of the program.
 */
#define THREADCALC_FIELD_MODE 17

/**
 * Decimals of a word.
 */
#define THREADCALC_FIELD_DECIMALS 18

/**
 * How many results are wanted.
 */
#define THREADCALC_FIELD_COUNT 19

/**
 * Feed.
 */
#define THREADCALC_FIELD_FEED 20

/**
 * Percent of thread.
 */
#define THREADCALC_FIELD_PERCENT 21

/**
 * Basis of the percent of thread.
 */
#define THREADCALC_FIELD_BASIS 22

/**
 * Cut or form tap.
 */
#define THREADCALC_FIELD_TAP 23

/**
 * Drill diameter.
 */
#define THREADCALC_FIELD_DRILL_MM 24

/**
 * Drill sets.
 */
#define THREADCALC_FIELD_DRILL_SETS 25

/**
 * Through or blind.
 */
#define THREADCALC_FIELD_HOLE 26

/**
 * Full thread depth.
 */
#define THREADCALC_FIELD_FULL_THREAD_DEPTH_MM 27

/**
 * Threads of the tap's chamfer.
 */
#define THREADCALC_FIELD_CHAMFER_THREADS 28

/**
 * The place on the tap its length offset is set on.
 */
#define THREADCALC_FIELD_TAP_SET_ON 29

/**
 * Length of the tap's male centre.
 */
#define THREADCALC_FIELD_TAP_CENTRE_MM 30

/**
 * Point angle of the drill.
 */
#define THREADCALC_FIELD_POINT_ANGLE_DEG 31

/**
 * Room below the tap.
 */
#define THREADCALC_FIELD_BOTTOM_CLEARANCE_MM 32

/**
 * Height of the R plane.
 */
#define THREADCALC_FIELD_R_PLANE_MM 33

/**
 * The control's dialect.
 */
#define THREADCALC_FIELD_DIALECT 34

/**
 * The thread of a job.
 */
#define THREADCALC_FIELD_THREAD 35

/**
 * The whole job.
 */
#define THREADCALC_FIELD_JOB 36

/**
 * A key of a job.
 */
#define THREADCALC_FIELD_KEY 37

/**
 * Schema number of a JSON text.
 */
#define THREADCALC_FIELD_SCHEMA 38

/**
 * Highest speed of the machine.
 */
#define THREADCALC_FIELD_MACHINE_HIGHEST_RPM 39

/**
 * Lowest speed of the machine.
 */
#define THREADCALC_FIELD_MACHINE_LOWEST_RPM 40

/**
 * Speed step of the machine.
 */
#define THREADCALC_FIELD_MACHINE_SPEED_STEP 41

/**
 * Code of the right-hand tapping cycle.
 */
#define THREADCALC_FIELD_DIALECT_TAP_RH 42

/**
 * Code of the left-hand tapping cycle.
 */
#define THREADCALC_FIELD_DIALECT_TAP_LH 43

/**
 * Code of feed per revolution.
 */
#define THREADCALC_FIELD_DIALECT_FEED_PER_REVOLUTION 44

/**
 * Whether the tapping cycle needs a spindle that already turns.
 */
#define THREADCALC_FIELD_DIALECT_NEEDS_SPINDLE_RUNNING 45

/**
 * Name of the dialect.
 */
#define THREADCALC_FIELD_DIALECT_NAME 46

/**
 * A depth along the axis.
 */
#define THREADCALC_FIELD_DEPTH_MM 47

/**
 * A pointer argument (C).
 */
#define THREADCALC_FIELD_POINTER 48

/**
 * Text buffer (C).
 */
#define THREADCALC_FIELD_BUFFER 49

/**
 * The size member of a request (C).
 */
#define THREADCALC_FIELD_SIZE 50

/**
 * Form of thread.
 */
#define THREADCALC_FIELD_FORM 51

/**
 * Hand of thread.
 */
#define THREADCALC_FIELD_HAND 52

/**
 * Through-hole flag.
 */
#define THREADCALC_FIELD_THROUGH 53

/**
 * Whether the hole is reamed to the taper.
 */
#define THREADCALC_FIELD_TAPER_REAMER 54

/**
 * How far a tap projects through its ring gauge.
 */
#define THREADCALC_FIELD_PROJECTION_MM 55

/**
 * An older or open name of a pipe thread.
 */
#define THREADCALC_FIELD_WRITTEN_AS 56

/**
 * A hole note of a drawing.
 */
#define THREADCALC_FIELD_NOTE 60

/**
 * Number of holes of a note.
 */
#define THREADCALC_FIELD_HOLE_COUNT 61

/**
 * Depth of full thread in a note.
 */
#define THREADCALC_FIELD_THREAD_DEPTH_MM 62

/**
 * Depth of the drilled hole in a note.
 */
#define THREADCALC_FIELD_DRILL_DEPTH_MM 63

/**
 * Diameter of a countersink.
 */
#define THREADCALC_FIELD_COUNTERSINK_MM 64

/**
 * Angle of a countersink.
 */
#define THREADCALC_FIELD_COUNTERSINK_ANGLE_DEG 65

/**
 * Diameter of a counterbore or spotface.
 */
#define THREADCALC_FIELD_COUNTERBORE_MM 66

/**
 * Depth of a counterbore or spotface.
 */
#define THREADCALC_FIELD_COUNTERBORE_DEPTH_MM 67

/**
 * Diameter of a bolt circle.
 */
#define THREADCALC_FIELD_BOLT_CIRCLE_MM 68

/**
 * Whether the class is meant before or after plating.
 */
#define THREADCALC_FIELD_PLATING 69

/**
 * Length of engagement.
 */
#define THREADCALC_FIELD_LENGTH_MM 80

/**
 * What of the engagement has no full thread.
 */
#define THREADCALC_FIELD_WITHOUT_FULL_THREAD_MM 81

/**
 * Shear strength of the tapped part.
 */
#define THREADCALC_FIELD_INTERNAL_SHEAR_MPA 82

/**
 * Shear strength of the screw.
 */
#define THREADCALC_FIELD_EXTERNAL_SHEAR_MPA 83

/**
 * Tensile strength of the screw.
 */
#define THREADCALC_FIELD_EXTERNAL_TENSILE_MPA 84

/**
 * The hole of an engagement as drilled.
 */
#define THREADCALC_FIELD_DRILLED_MM 85

/**
 * An axial load.
 */
#define THREADCALC_FIELD_LOAD_N 86

/**
 * Surface speed of a tap.
 */
#define THREADCALC_FIELD_SURFACE_SPEED_M_MIN 100

/**
 * Specific cutting force.
 */
#define THREADCALC_FIELD_CUTTING_FORCE_N_MM2 101

/**
 * What multiplies a torque: kind of tap, forming, taper.
 */
#define THREADCALC_FIELD_TORQUE_FACTOR 102

/**
 * A torque.
 */
#define THREADCALC_FIELD_TORQUE_NM 103

/**
 * The gears of a spindle.
 */
#define THREADCALC_FIELD_GEARS 104

/**
 * The torque curve of a gear.
 */
#define THREADCALC_FIELD_TORQUE_CURVE 105

/**
 * Travel of a stroke.
 */
#define THREADCALC_FIELD_TRAVEL_MM 106

/**
 * Acceleration of the spindle.
 */
#define THREADCALC_FIELD_ACCELERATION_RPM_S 107

/**
 * Speed on the way out over speed on the way in.
 */
#define THREADCALC_FIELD_RETRACT_FACTOR 108

/**
 * Wait at the bottom of a stroke.
 */
#define THREADCALC_FIELD_DWELL_S 109

/**
 * Turns of the spindle.
 */
#define THREADCALC_FIELD_TURNS 110

/**
 * Feed limit of an axis.
 */
#define THREADCALC_FIELD_FEED_LIMIT_MM_MIN 111

/**
 * How far the feed is below the lead.
 */
#define THREADCALC_FIELD_UNDERFEED_PERCENT 112

/**
 * Turns that the spindle coasts on.
 */
#define THREADCALC_FIELD_OVER_TRAVEL_TURNS 113

/**
 * Way of a rapid move.
 */
#define THREADCALC_FIELD_RAPID_DISTANCE_MM 114

/**
 * Feed of a rapid move.
 */
#define THREADCALC_FIELD_RAPID_FEED_MM_MIN 115

/**
 * Time of a hole.
 */
#define THREADCALC_FIELD_SECONDS_PER_HOLE 116

/**
 * The mark on a tap's shank.
 */
#define THREADCALC_FIELD_TAP_MARK 117

/**
 * H, L or D limit of a tap.
 */
#define THREADCALC_FIELD_TAP_LIMIT 118

/**
 * Thickness of a plating.
 */
#define THREADCALC_FIELD_PLATING_UM 119

/**
 * Pitch diameter.
 */
#define THREADCALC_FIELD_PITCH_DIAMETER_MM 120

/**
 * Threads of room for a chamfer.
 */
#define THREADCALC_FIELD_ROOM_THREADS 121

/**
 * Turns that a taper gauge stands off.
 */
#define THREADCALC_FIELD_STAND_OFF_TURNS 122

/**
 * Diameter of a measuring wire.
 */
#define THREADCALC_FIELD_WIRE_MM 123

/**
 * Surface speed of a tap in feet per minute.
 */
#define THREADCALC_FIELD_SURFACE_SPEED_FT_MIN 130

/**
 * Material of the part.
 */
#define THREADCALC_FIELD_MATERIAL 131

/**
 * How the tap is built.
 */
#define THREADCALC_FIELD_TAP_KIND 132

/**
 * Chamfer form of the tap.
 */
#define THREADCALC_FIELD_CHAMFER_FORM 133

/**
 * The drills that the shop owns.
 */
#define THREADCALC_FIELD_DRILL_LIST 134

/**
 * Thickness of the part at the hole.
 */
#define THREADCALC_FIELD_PART_THICKNESS_MM 135

/**
 * How the tap is held.
 */
#define THREADCALC_FIELD_HOLDER 136

/**
 * Depth of a peck.
 */
#define THREADCALC_FIELD_PECK_MM 137

/**
 * Shear strength of the part.
 */
#define THREADCALC_FIELD_PART_SHEAR_MPA 138

/**
 * Class of the screw's thread.
 */
#define THREADCALC_FIELD_SCREW_TOLERANCE_CLASS 139

/**
 * Property class of the screw.
 */
#define THREADCALC_FIELD_SCREW_PROPERTY_CLASS 140

/**
 * Tensile strength of the screw.
 */
#define THREADCALC_FIELD_SCREW_TENSILE_MPA 141

/**
 * Shear strength of the screw.
 */
#define THREADCALC_FIELD_SCREW_SHEAR_MPA 142

/**
 * Length of engagement of the screw.
 */
#define THREADCALC_FIELD_SCREW_ENGAGEMENT_MM 143

/**
 * Load on the screw.
 */
#define THREADCALC_FIELD_SCREW_LOAD_N 144

/**
 * Feed limit of the machine's axis.
 */
#define THREADCALC_FIELD_MACHINE_AXIS_FEED_LIMIT_MM_MIN 145

/**
 * Acceleration of the machine's spindle.
 */
#define THREADCALC_FIELD_MACHINE_ACCELERATION_RPM_S 146

/**
 * Gears of the machine's spindle.
 */
#define THREADCALC_FIELD_MACHINE_GEARS 147

/**
 * Retract factor of the machine.
 */
#define THREADCALC_FIELD_MACHINE_RETRACT_FACTOR 148

/**
 * Turns of clearance that the machine needs.
 */
#define THREADCALC_FIELD_MACHINE_LEAST_CLEARANCE_TURNS 149

/**
 * Thickness of the plating of a job.
 */
#define THREADCALC_FIELD_COATING_UM 150

/**
 * The holder's extension.
 */
#define THREADCALC_FIELD_HOLDER_EXTENSION_MM 151

/**
 * The holder's compression.
 */
#define THREADCALC_FIELD_HOLDER_COMPRESSION_MM 152

/**
 * Whether left hand is the right-hand code with the spindle turning backwards.
 */
#define THREADCALC_FIELD_DIALECT_LH_BY_SPINDLE_DIRECTION 160

/**
 * Code of feed per minute.
 */
#define THREADCALC_FIELD_DIALECT_FEED_PER_MINUTE 161

/**
 * Code that makes the next tapping cycle a synchronised one.
 */
#define THREADCALC_FIELD_DIALECT_RIGID_TAP_CODE 162

/**
 * Whether that code carries the speed.
 */
#define THREADCALC_FIELD_DIALECT_RIGID_TAP_CODE_HAS_S 163

/**
 * Letter of the peck's depth.
 */
#define THREADCALC_FIELD_DIALECT_PECK_WORD 164

/**
 * Code of the right-hand tapping cycle with pecks.
 */
#define THREADCALC_FIELD_DIALECT_PECK_CODE_RH 165

/**
 * Code of the left-hand tapping cycle with pecks.
 */
#define THREADCALC_FIELD_DIALECT_PECK_CODE_LH 166

/**
 * Letter of the dwell at the bottom.
 */
#define THREADCALC_FIELD_DIALECT_DWELL_WORD 167

/**
 * What the dwell is counted in.
 */
#define THREADCALC_FIELD_DIALECT_DWELL_UNIT 168

/**
 * Letter of the faster way out.
 */
#define THREADCALC_FIELD_DIALECT_RETRACT_WORD 169

/**
 * What the faster way out is counted in.
 */
#define THREADCALC_FIELD_DIALECT_RETRACT_IN 170

/**
 * Code of the return to the R plane.
 */
#define THREADCALC_FIELD_DIALECT_RETURN_R_PLANE 171

/**
 * Code of the return to the height before the cycle.
 */
#define THREADCALC_FIELD_DIALECT_RETURN_INITIAL 172

/**
 * Decimals of axis words in millimetres.
 */
#define THREADCALC_FIELD_DIALECT_AXIS_DECIMALS_MM 173

/**
 * Decimals of axis words in inches.
 */
#define THREADCALC_FIELD_DIALECT_AXIS_DECIMALS_INCH 174

/**
 * Whether a whole number has a point.
 */
#define THREADCALC_FIELD_DIALECT_TRAILING_POINT 175

/**
 * Where the tap returns to.
 */
#define THREADCALC_FIELD_RETURN_TO 176

/**
 * Not given.
 */
#define THREADCALC_SEVERITY_UNSET 0

/**
 * Wrong: no words are given while it stands.
 */
#define THREADCALC_SEVERITY_ERROR 1

/**
 * Doubtful: look at it before pressing start.
 */
#define THREADCALC_SEVERITY_WARNING 2

/**
 * Good to know, or an assumption that was made.
 */
#define THREADCALC_SEVERITY_INFO 3

/**
 * Not given.
 */
#define THREADCALC_FINDING_UNSET 0

/**
 * No class was given; the standard's medium internal class is used.
 */
#define THREADCALC_FINDING_CLASS_ASSUMED 1

/**
 * The thread stands in no standard series.
 */
#define THREADCALC_FINDING_NOT_STANDARD 2

/**
 * The drilled hole is outside the class's minor-diameter limits.
 */
#define THREADCALC_FINDING_DRILL_OUTSIDE_LIMITS 3

/**
 * The class's limits have not been read, so the drilled hole is not judged by them.
 */
#define THREADCALC_FINDING_LIMITS_NOT_SOURCED 4

/**
 * An external class in a tapping job.
 */
#define THREADCALC_FINDING_EXTERNAL_CLASS 5

/**
 * No dialect was given, so no words can be given.
 */
#define THREADCALC_FINDING_DIALECT_UNSET 6

/**
 * The control has no code for what the job needs.
 */
#define THREADCALC_FINDING_CODE_NOT_ON_CONTROL 7

/**
 * The chamfer was not given; the longest of form C is planned on.
 */
#define THREADCALC_FINDING_CHAMFER_ASSUMED 8

/**
 * The room below the tap was not given.
 */
#define THREADCALC_FINDING_BOTTOM_CLEARANCE_ASSUMED 9

/**
 * The drill's point angle was not given.
 */
#define THREADCALC_FINDING_POINT_ANGLE_ASSUMED 10

/**
 * The R plane was not given.
 */
#define THREADCALC_FINDING_R_PLANE_ASSUMED 11

/**
 * No drill and no set was given.
 */
#define THREADCALC_FINDING_DRILL_SETS_ASSUMED 12

/**
 * The control rounds the speed down, or the machine's highest speed cuts it.
 */
#define THREADCALC_FINDING_SPEED_ROUNDED 13

/**
 * Rounding of the feed word leaves an error in the lead.
 */
#define THREADCALC_FINDING_FEED_ROUNDED 14

/**
 * The thread is deeper than three diameters.
 */
#define THREADCALC_FINDING_DEEP_THREAD 15

/**
 * The tap comes out below a through hole.
 */
#define THREADCALC_FINDING_TAP_COMES_OUT 16

/**
 * The feed of a multi-start thread follows the lead, not the pitch.
 */
#define THREADCALC_FINDING_MULTI_START 17

/**
 * More findings than there is room for; their number.
 */
#define THREADCALC_FINDING_MORE_FINDINGS 18

/**
 * The pipe thread was written in an older or open way; which family is assumed.
 */
#define THREADCALC_FINDING_FAMILY_ASSUMED 19

/**
 * Which pipe threads this one is easily taken for.
 */
#define THREADCALC_FINDING_PIPE_FAMILY 20

/**
 * Without a taper reamer a straight hole gives full threads only near the face.
 */
#define THREADCALC_FINDING_TAPER_HOLE 21

/**
 * Words of a note that were not understood, by byte and length.
 */
#define THREADCALC_FINDING_NOT_READ 30

/**
 * Lengths without a mark were read in the system of the thread.
 */
#define THREADCALC_FINDING_UNIT_ASSUMED 31

/**
 * A number behind a times sign was read as the depth of the thread.
 */
#define THREADCALC_FINDING_DEPTH_READ 32

/**
 * The drilled hole of a note leaves no thread, or is less deep than its thread.
 */
#define THREADCALC_FINDING_HOLE_DOES_NOT_FIT 33

/**
 * The standard's tables have no tolerance for this thread; its formula made the limits.
 */
#define THREADCALC_FINDING_TOLERANCE_BY_FORMULA 40

/**
 * The tap's hand is not that of the thread.
 */
#define THREADCALC_FINDING_TAP_HAND 60

/**
 * The tap is for another thread.
 */
#define THREADCALC_FINDING_TAP_THREAD 61

/**
 * A tap for wire inserts where none is wanted, or the other way round.
 */
#define THREADCALC_FINDING_TAP_WIRE_INSERT 62

/**
 * The tap is for another class of thread.
 */
#define THREADCALC_FINDING_TAP_CLASS 63

/**
 * The tap leaves the thread too small, plated or not.
 */
#define THREADCALC_FINDING_TAP_TOO_SMALL 64

/**
 * The tap makes the thread larger than its class allows.
 */
#define THREADCALC_FINDING_TAP_TOO_LARGE 65

/**
 * The shank does not say what has to be known.
 */
#define THREADCALC_FINDING_TAP_UNMARKED 66

/**
 * The tap is within its maker's own limits.
 */
#define THREADCALC_FINDING_TAP_OWN_LIMITS 67

/**
 * The chamfer does not suit the hole.
 */
#define THREADCALC_FINDING_TAP_CHAMFER 68

/**
 * The tap reaches the end of the drilled hole's full diameter.
 */
#define THREADCALC_FINDING_TAP_BOTTOMS 80

/**
 * What is left of the part below the drill's point.
 */
#define THREADCALC_FINDING_FLOOR_THIN 81

/**
 * The countersink takes full thread away at the mouth.
 */
#define THREADCALC_FINDING_COUNTERSINK_EATS_THREAD 82

/**
 * The run-out below the full thread is shorter than the standard's.
 */
#define THREADCALC_FINDING_RUN_OUT_SHORT 83

/**
 * The R plane is too near for the holder or for the spindle's ramp.
 */
#define THREADCALC_FINDING_CLEARANCE_SHORT 84

/**
 * The spindle does not reach the speed in this hole.
 */
#define THREADCALC_FINDING_SPEED_NOT_REACHED 85

/**
 * The axis cannot feed that fast.
 */
#define THREADCALC_FINDING_AXIS_FEED_LIMIT 86

/**
 * The way out is faster than the spindle turns.
 */
#define THREADCALC_FINDING_RETRACT_SPEED_LIMIT 87

/**
 * The spindle has not the torque for this tap.
 */
#define THREADCALC_FINDING_TORQUE_LIMIT 88

/**
 * A starting value stands for the cutting force.
 */
#define THREADCALC_FINDING_CUTTING_FORCE_ASSUMED 89

/**
 * The feed is below the lead on purpose.
 */
#define THREADCALC_FINDING_UNDERFEED 90

/**
 * The holder was not given; rigid is assumed.
 */
#define THREADCALC_FINDING_HOLDER_ASSUMED 91

/**
 * The hole is that of the other kind of tap.
 */
#define THREADCALC_FINDING_OTHER_TAPS_HOLE 92

/**
 * A drill that cuts as oversize as drills do leaves a hole above the limit.
 */
#define THREADCALC_FINDING_OVERSIZE_OVER_LIMIT 93

/**
 * A thread strips before the screw breaks.
 */
#define THREADCALC_FINDING_THREAD_STRIPS_FIRST 94

/**
 * Starting values stand for strengths.
 */
#define THREADCALC_FINDING_STRENGTH_ASSUMED 95

/**
 * The load is more than the weakest part carries.
 */
#define THREADCALC_FINDING_LOAD_TOO_HIGH 96

/**
 * A plated thread needs a larger tap.
 */
#define THREADCALC_FINDING_PLATING_TAP 97

/**
 * Pecks need a control and a holder that meet the thread again.
 */
#define THREADCALC_FINDING_PECK_TAPPING 98

/**
 * How far the holder gives in this hole.
 */
#define THREADCALC_FINDING_HOLDER_TRAVEL 99

/**
 * The kind of tap does not suit the hole.
 */
#define THREADCALC_FINDING_TAP_KIND_UNSUITED 100

/**
 * Not given.
 */
#define THREADCALC_NUMBER_UNSET 0

/**
 * Drilled hole in mm.
 */
#define THREADCALC_NUMBER_DRILL_MM 1

/**
 * What is left to the largest minor diameter in mm.
 */
#define THREADCALC_NUMBER_LEFT_TO_LIMIT_MM 2

/**
 * Speed asked for.
 */
#define THREADCALC_NUMBER_ASKED_RPM 3

/**
 * Speed the control holds.
 */
#define THREADCALC_NUMBER_SPEED_RPM 4

/**
 * Relative error of the lead.
 */
#define THREADCALC_NUMBER_LEAD_ERROR 5

/**
 * Error of the lead over the depth in mm.
 */
#define THREADCALC_NUMBER_AXIAL_ERROR_MM 6

/**
 * Depth in diameters.
 */
#define THREADCALC_NUMBER_DIAMETERS 7

/**
 * What comes out below in mm.
 */
#define THREADCALC_NUMBER_BELOW_MM 8

/**
 * Threads of chamfer.
 */
#define THREADCALC_NUMBER_CHAMFER_THREADS 9

/**
 * Room below the tap in mm.
 */
#define THREADCALC_NUMBER_BOTTOM_CLEARANCE_MM 10

/**
 * Point angle in degrees.
 */
#define THREADCALC_NUMBER_POINT_ANGLE_DEG 11

/**
 * R plane in mm.
 */
#define THREADCALC_NUMBER_R_PLANE_MM 12

/**
 * Lead in mm.
 */
#define THREADCALC_NUMBER_LEAD_MM 13

/**
 * Pitch in mm.
 */
#define THREADCALC_NUMBER_PITCH_MM 14

/**
 * Starts.
 */
#define THREADCALC_NUMBER_STARTS 15

/**
 * A count.
 */
#define THREADCALC_NUMBER_COUNT 16

/**
 * Length of full thread in mm.
 */
#define THREADCALC_NUMBER_FULL_THREAD_MM 17

/**
 * Turns of the thread.
 */
#define THREADCALC_NUMBER_TURNS 18

/**
 * Byte offset in a text.
 */
#define THREADCALC_NUMBER_BYTE 30

/**
 * Length in a text, in bytes.
 */
#define THREADCALC_NUMBER_LENGTH 31

/**
 * A depth in mm.
 */
#define THREADCALC_NUMBER_DEPTH_MM 32

/**
 * Pitch diameter of a tap above the basic one in mm.
 */
#define THREADCALC_NUMBER_ABOVE_BASIC_MM 70

/**
 * What it may be at most, or has to be at least, in mm.
 */
#define THREADCALC_NUMBER_LIMIT_MM 71

/**
 * Threads of room.
 */
#define THREADCALC_NUMBER_ROOM_THREADS 72

/**
 * What there is, or what is left, in mm.
 */
#define THREADCALC_NUMBER_ROOM_MM 80

/**
 * What it takes in mm.
 */
#define THREADCALC_NUMBER_NEEDED_MM 81

/**
 * The largest speed that fits.
 */
#define THREADCALC_NUMBER_FASTEST_RPM 82

/**
 * The speed that is reached.
 */
#define THREADCALC_NUMBER_REACHED_RPM 83

/**
 * A feed in mm/min.
 */
#define THREADCALC_NUMBER_FEED_MM_MIN 84

/**
 * Its limit in mm/min.
 */
#define THREADCALC_NUMBER_LIMIT_MM_MIN 85

/**
 * A torque in Nm.
 */
#define THREADCALC_NUMBER_TORQUE_NM 86

/**
 * The torque there is in Nm.
 */
#define THREADCALC_NUMBER_TORQUE_LIMIT_NM 87

/**
 * A specific cutting force in N/mm².
 */
#define THREADCALC_NUMBER_CUTTING_FORCE_N_MM2 88

/**
 * Percent of the lead.
 */
#define THREADCALC_NUMBER_UNDERFEED_PERCENT 89

/**
 * A length of engagement in mm.
 */
#define THREADCALC_NUMBER_REQUIRED_LENGTH_MM 90

/**
 * Strip load of the screw's threads over that of the hole's.
 */
#define THREADCALC_NUMBER_STRIP_RATIO 91

/**
 * Weakest load over the load given.
 */
#define THREADCALC_NUMBER_SAFETY_FACTOR 92

/**
 * A tensile strength in MPa.
 */
#define THREADCALC_NUMBER_TENSILE_MPA 93

/**
 * A shear strength in MPa.
 */
#define THREADCALC_NUMBER_SHEAR_MPA 94

/**
 * The hole that a drill probably leaves, in mm.
 */
#define THREADCALC_NUMBER_PROBABLE_MM 95

/**
 * The holder is drawn out by this much, in mm.
 */
#define THREADCALC_NUMBER_EXTENSION_MM 96

/**
 * The holder is pushed in by this much, in mm.
 */
#define THREADCALC_NUMBER_COMPRESSION_MM 97

/**
 * Thickness of a plating in micrometres.
 */
#define THREADCALC_NUMBER_PLATING_UM 98

/**
 * Percent of thread.
 */
#define THREADCALC_NUMBER_PERCENT 99

/**
 * Version of the binary interface: raised on any break.
 */
#define THREADCALC_ABI_VERSION 1

/**
 * Not given.
 */
#define THREADCALC_WEAKEST_UNSET 0

/**
 * The screw breaks in tension.
 */
#define THREADCALC_WEAKEST_SCREW 1

/**
 * The screw's threads strip.
 */
#define THREADCALC_WEAKEST_EXTERNAL 2

/**
 * The threads of the hole strip.
 */
#define THREADCALC_WEAKEST_INTERNAL 3

/**
 * Not given.
 */
#define THREADCALC_PROPERTY_CLASS_UNSET 0

/**
 * 4.6
 */
#define THREADCALC_PROPERTY_CLASS_4_6 1

/**
 * 4.8
 */
#define THREADCALC_PROPERTY_CLASS_4_8 2

/**
 * 5.6
 */
#define THREADCALC_PROPERTY_CLASS_5_6 3

/**
 * 5.8
 */
#define THREADCALC_PROPERTY_CLASS_5_8 4

/**
 * 6.8
 */
#define THREADCALC_PROPERTY_CLASS_6_8 5

/**
 * 8.8
 */
#define THREADCALC_PROPERTY_CLASS_8_8 6

/**
 * 9.8
 */
#define THREADCALC_PROPERTY_CLASS_9_8 7

/**
 * 10.9
 */
#define THREADCALC_PROPERTY_CLASS_10_9 8

/**
 * 12.9
 */
#define THREADCALC_PROPERTY_CLASS_12_9 9

/**
 * Not given.
 */
#define THREADCALC_MATERIAL_UNSET 0

/**
 * Free-cutting steel up to 700 N/mm².
 */
#define THREADCALC_MATERIAL_FREE_CUTTING_STEEL 1

/**
 * Structural steel, 500 to 950 N/mm².
 */
#define THREADCALC_MATERIAL_STRUCTURAL_STEEL 2

/**
 * Heat-treatable steel of medium strength, 500 to 950 N/mm².
 */
#define THREADCALC_MATERIAL_TEMPERED_STEEL 3

/**
 * Nitrided or tempered steel, 950 to 1400 N/mm².
 */
#define THREADCALC_MATERIAL_HIGH_STRENGTH_STEEL 4

/**
 * Tool steel, 950 to 1400 N/mm².
 */
#define THREADCALC_MATERIAL_TOOL_STEEL 5

/**
 * Austenitic stainless steel, 500 to 950 N/mm².
 */
#define THREADCALC_MATERIAL_AUSTENITIC_STAINLESS 6

/**
 * Grey cast iron, 150 to 250 HB.
 */
#define THREADCALC_MATERIAL_GREY_CAST_IRON 7

/**
 * Malleable cast iron, 350 to 700 N/mm².
 */
#define THREADCALC_MATERIAL_MALLEABLE_CAST_IRON 8

/**
 * Copper alloy with short chips, up to 500 N/mm².
 */
#define THREADCALC_MATERIAL_COPPER_ALLOY 9

/**
 * Wrought aluminium alloy.
 */
#define THREADCALC_MATERIAL_ALUMINIUM 10

/**
 * Not given.
 */
#define THREADCALC_HOLDER_UNSET 0

/**
 * No give along the axis; the cycle is synchronised.
 */
#define THREADCALC_HOLDER_RIGID 1

/**
 * Gives both ways along the axis, against springs.
 */
#define THREADCALC_HOLDER_TENSION_COMPRESSION 2

/**
 * Gives along the axis and sideways.
 */
#define THREADCALC_HOLDER_FLOATING 3

/**
 * Not given.
 */
#define THREADCALC_TAP_KIND_UNSET 0

/**
 * Straight flutes, a hand tap among them.
 */
#define THREADCALC_TAP_KIND_STRAIGHT_FLUTE 1

/**
 * Straight flutes with a spiral point, which pushes the chips ahead.
 */
#define THREADCALC_TAP_KIND_SPIRAL_POINT 2

/**
 * Spiral flutes, which draw the chips back.
 */
#define THREADCALC_TAP_KIND_SPIRAL_FLUTE 3

/**
 * Forms the thread without chips.
 */
#define THREADCALC_TAP_KIND_FORM 4

/**
 * Not given.
 */
#define THREADCALC_SUITS_UNSET 0

/**
 * The usual choice.
 */
#define THREADCALC_SUITS_WELL 1

/**
 * Works where the reason says.
 */
#define THREADCALC_SUITS_WITH_CARE 2

/**
 * Trouble to be expected.
 */
#define THREADCALC_SUITS_BADLY 3

/**
 * Not given.
 */
#define THREADCALC_CHAMFER_FORM_UNSET 0

/**
 * 6 to 8 threads.
 */
#define THREADCALC_CHAMFER_FORM_A 1

/**
 * 3.5 to 5.5 threads, with spiral point.
 */
#define THREADCALC_CHAMFER_FORM_B 2

/**
 * 2 to 3 threads.
 */
#define THREADCALC_CHAMFER_FORM_C 3

/**
 * 3.5 to 5 threads.
 */
#define THREADCALC_CHAMFER_FORM_D 4

/**
 * 1.5 to 2 threads.
 */
#define THREADCALC_CHAMFER_FORM_E 5

/**
 * 1 to 1.5 threads.
 */
#define THREADCALC_CHAMFER_FORM_F 6

/**
 * 7 to 10 threads.
 */
#define THREADCALC_CHAMFER_FORM_TAPER 7

/**
 * 3 to 5 threads.
 */
#define THREADCALC_CHAMFER_FORM_PLUG 8

/**
 * 2 to 2.5 threads.
 */
#define THREADCALC_CHAMFER_FORM_SEMI_BOTTOMING 9

/**
 * 1 to 2 threads.
 */
#define THREADCALC_CHAMFER_FORM_BOTTOMING 10

/**
 * Not given.
 */
#define THREADCALC_ISO_TAP_CLASS_UNSET 0

/**
 * For threads 4H and 5H.
 */
#define THREADCALC_ISO_TAP_CLASS_1 1

/**
 * For threads 6H, 4G and 5G.
 */
#define THREADCALC_ISO_TAP_CLASS_2 2

/**
 * For threads 7H, 8H and 6G.
 */
#define THREADCALC_ISO_TAP_CLASS_3 3

/**
 * Not given.
 */
#define THREADCALC_LIMIT_LETTER_UNSET 0

/**
 * Above basic, in steps of 0.0005 in.
 */
#define THREADCALC_LIMIT_LETTER_H 1

/**
 * Below basic, in steps of 0.0005 in.
 */
#define THREADCALC_LIMIT_LETTER_L 2

/**
 * Above basic on metric taps of the inch system, in steps of 0.013 mm.
 */
#define THREADCALC_LIMIT_LETTER_D 3

/**
 * Not given.
 */
#define THREADCALC_GAUGE_UNSET 0

/**
 * GO thread plug: pitch diameter with pitch and angles, and major diameter of a hole.
 */
#define THREADCALC_GAUGE_THREAD_PLUG_GO 1

/**
 * NOT GO thread plug: pitch diameter of a hole alone.
 */
#define THREADCALC_GAUGE_THREAD_PLUG_NOT_GO 2

/**
 * GO plain plug: smallest minor diameter of a hole.
 */
#define THREADCALC_GAUGE_PLAIN_PLUG_GO 3

/**
 * NOT GO plain plug: largest minor diameter of a hole.
 */
#define THREADCALC_GAUGE_PLAIN_PLUG_NOT_GO 4

/**
 * GO thread ring of a screw.
 */
#define THREADCALC_GAUGE_THREAD_RING_GO 5

/**
 * NOT GO thread ring of a screw.
 */
#define THREADCALC_GAUGE_THREAD_RING_NOT_GO 6

/**
 * GO snap or plain ring: largest major diameter of a screw.
 */
#define THREADCALC_GAUGE_PLAIN_RING_GO 7

/**
 * NOT GO snap or plain ring: smallest major diameter of a screw.
 */
#define THREADCALC_GAUGE_PLAIN_RING_NOT_GO 8

/**
 * Taper thread plug, read by how far it enters.
 */
#define THREADCALC_GAUGE_TAPER_PLUG 9

/**
 * Taper thread ring, read by how far it goes on.
 */
#define THREADCALC_GAUGE_TAPER_RING 10

/**
 * Not given.
 */
#define THREADCALC_VERDICT_UNSET 0

/**
 * It is good by this gauge.
 */
#define THREADCALC_VERDICT_ACCEPT 1

/**
 * It can be brought to size.
 */
#define THREADCALC_VERDICT_REWORK 2

/**
 * No tap makes it smaller again.
 */
#define THREADCALC_VERDICT_REJECT 3

/**
 * Not given.
 */
#define THREADCALC_MOVE_UNSET 0

/**
 * Nothing.
 */
#define THREADCALC_MOVE_NOTHING 1

/**
 * Blow chips and oil out, and gauge again before anything else.
 */
#define THREADCALC_MOVE_CLEAN_AND_GAUGE_AGAIN 2

/**
 * See that gauge, tap and drawing name the same thread, class and hand.
 */
#define THREADCALC_MOVE_COMPARE_NAMES 3

/**
 * Countersink or deburr the mouth.
 */
#define THREADCALC_MOVE_DEBURR 4

/**
 * Tap deeper, if the drilled hole has room: same tool and length, same S, same R.
 */
#define THREADCALC_MOVE_TAP_DEEPER 5

/**
 * Take a new tap: this one is worn or chipped.
 */
#define THREADCALC_MOVE_CHANGE_TAP 6

/**
 * Take the next larger class or H limit of tap.
 */
#define THREADCALC_MOVE_LARGER_TAP 7

/**
 * Take the next smaller class or H limit of tap, for the next hole.
 */
#define THREADCALC_MOVE_SMALLER_TAP 8

/**
 * Compare feed and lead at the speed that really ran; overrides off.
 */
#define THREADCALC_MOVE_CHECK_FEED 9

/**
 * Look for force along the axis: holder, its springs, the feed below the lead, a heavy start.
 */
#define THREADCALC_MOVE_CHECK_AXIAL_FORCE 10

/**
 * Look for run-out, chips welded to the flanks, coolant.
 */
#define THREADCALC_MOVE_CHECK_CUTTING 11

/**
 * Stop, and gauge the holes back to the last good one.
 */
#define THREADCALC_MOVE_STOP_AND_GAUGE_BACK 12

/**
 * A wire insert or the next size, if the engineer says so.
 */
#define THREADCALC_MOVE_REPAIR_OR_SCRAP 13

/**
 * Tap the next hole less deep.
 */
#define THREADCALC_MOVE_TAP_SHALLOWER 14

/**
 * What a call returns: 0 is success. 1 to 99 are faults of the values, 100 and above of the call.
 */
typedef int32_t threadcalc_status;

/**
 * The profile of a thread.
 */
typedef int32_t threadcalc_form;

/**
 * The standard's token for a row of diameters and pitches.
 */
typedef int32_t threadcalc_series;

/**
 * The direction of the helix.
 */
typedef int32_t threadcalc_hand;

/**
 * The side of a fit.
 */
typedef int32_t threadcalc_side;

/**
 * An older or open name of a pipe thread, which leaves something to assume.
 */
typedef int32_t threadcalc_written_as;

/**
 * An exact number: a length in mm, a speed in turns per minute, a percent, or a plain number.
 *
 * Results are in lowest terms with a positive denominator. 0/0 is "not given". Frozen.
 */
typedef struct {
    /**
     * Numerator; carries the sign.
     */
    int64_t numerator;
    /**
     * Denominator.
     */
    int64_t denominator;
} threadcalc_ratio_t;

/**
 * A screw thread. Frozen.
 *
 * A thread given to a call is built again from form, major diameter (or, where that is 0/0, the nominal
 * one), pitch, starts, hand, side, class and written_as. Series, lead, taper and the other diameter may
 * be left at 0, and otherwise have to agree; is_standard is not read. All zeros are "not given".
 */
typedef struct {
    /**
     * Profile.
     */
    threadcalc_form form;
    /**
     * The standard's series; 0 for a metric special.
     */
    threadcalc_series series;
    /**
     * Number of starts, 1 to 12; 0 is read as 1.
     */
    int32_t starts;
    /**
     * Hand; 0 is read as right.
     */
    threadcalc_hand hand;
    /**
     * Internal or external; 0 if neither class nor caller says so.
     */
    threadcalc_side side;
    /**
     * 1 if the standard lists this diameter with this pitch, single start; else 0.
     */
    int32_t is_standard;
    /**
     * 1 for the hole of a wire insert. This version reads none: always 0, anything else is refused.
     */
    int32_t wire_insert;
    /**
     * The older or open name that a pipe thread was read from; 0 if none. No part of the thread's value.
     */
    threadcalc_written_as written_as;
    /**
     * The diameter that names the thread in mm; 0/0 for a pipe thread, whose size is a name.
     */
    threadcalc_ratio_t nominal_mm;
    /**
     * Basic major diameter in mm. NPT and its kin: the outside diameter of the pipe; R and Rc: at the
     * gauge plane.
     */
    threadcalc_ratio_t major_mm;
    /**
     * Distance between neighbouring threads in mm.
     */
    threadcalc_ratio_t pitch_mm;
    /**
     * Advance in one turn in mm.
     */
    threadcalc_ratio_t lead_mm;
    /**
     * Taper on the diameter: 1/16 for NPT, NPTF, R and Rc, 0/1 for straight threads.
     */
    threadcalc_ratio_t taper_on_diameter;
    /**
     * Tolerance class as written, NUL-terminated; empty if there is none.
     */
    char tolerance_class[8];
} threadcalc_thread_t;

/**
 * A thread that a comment mentions. Frozen.
 */
typedef struct {
    /**
     * The thread.
     */
    threadcalc_thread_t thread;
    /**
     * Where its text begins, in bytes.
     */
    int64_t at;
    /**
     * How many bytes its text is.
     */
    int64_t length;
} threadcalc_found_thread_t;

/**
 * The value that an error speaks of.
 */
typedef int32_t threadcalc_field;

/**
 * Why a call failed. Frozen. Written only on failure; may be left out (NULL) in every call.
 */
typedef struct {
    /**
     * What the call returned.
     */
    threadcalc_status code;
    /**
     * The value that the error speaks of.
     */
    threadcalc_field field;
    /**
     * Byte offset, from 0, in the text that was read; -1 if there is none.
     */
    int64_t at;
    /**
     * What was given, NaN if that is not a number.
     */
    double got;
    /**
     * Lower end of what would do, NaN if open.
     */
    double low;
    /**
     * Upper end of what would do, NaN if open.
     */
    double high;
    /**
     * All of it in words, for people; not for programs.
     */
    char message[256];
} threadcalc_error_t;

/**
 * The dialect that the fields of a control's own are set in.
 */
typedef int32_t threadcalc_dialect;

/**
 * An answer to a question with a default.
 */
typedef int32_t threadcalc_answer;

/**
 * What a dwell at the bottom is counted in.
 */
typedef int32_t threadcalc_dwell_unit;

/**
 * What the way out, faster than the way in, is counted in.
 */
typedef int32_t threadcalc_retract_in;

/**
 * What a control calls things: a claim about one machine that somebody must have proved there.
 *
 * Begin with THREADCALC_DIALECT_INIT and a base; a member left at zero stays as the base has it. Every text
 * ends with a NUL or fills its member. A code is a letter and digits, "G84"; a word is a letter, but none of
 * F G M N O R S T X Y Z; "none" says that the control has no such code or word.
 */
typedef struct {
    /**
     * sizeof(threadcalc_dialect_t).
     */
    uint32_t size;
    /**
     * What the members are set in. Required.
     */
    threadcalc_dialect base;
    /**
     * Whether the spindle must already turn when the cycle starts; yes if not given.
     */
    threadcalc_answer needs_spindle_running;
    /**
     * Whether left hand is the right-hand cycle with the spindle turning backwards; no if not given.
     */
    threadcalc_answer lh_by_spindle_direction;
    /**
     * Whether rigid_tap_code carries the speed; no if not given.
     */
    threadcalc_answer rigid_tap_code_has_s;
    /**
     * Whether a whole length, feed or dwell in seconds has a point; yes if not given.
     */
    threadcalc_answer trailing_point;
    /**
     * What the dwell is counted in; required for a dwell.
     */
    threadcalc_dwell_unit dwell_unit;
    /**
     * What a faster way out is counted in; required for one.
     */
    threadcalc_retract_in retract_in;
    /**
     * Decimals of axis words in mm, a whole number 0 to 9: {3, 1} if not given.
     */
    threadcalc_ratio_t axis_decimals_mm;
    /**
     * Decimals of axis words in inches: {4, 1} if not given.
     */
    threadcalc_ratio_t axis_decimals_inch;
    /**
     * The shop's own name for it, up to 16 bytes.
     */
    char name[20];
    /**
     * Code of the right-hand tapping cycle, "G84".
     */
    char tap_rh[12];
    /**
     * Code of the left-hand tapping cycle.
     */
    char tap_lh[12];
    /**
     * Code of feed per minute; G94 if not given.
     */
    char feed_per_minute[12];
    /**
     * Code of feed per revolution.
     */
    char feed_per_revolution[12];
    /**
     * Code that makes the next tapping cycle a synchronised one, for rigid holders.
     */
    char rigid_tap_code[12];
    /**
     * Code of the right-hand cycle with pecks, where that is a cycle of its own.
     */
    char peck_code_rh[12];
    /**
     * Code of the left-hand cycle with pecks, where that is a cycle of its own.
     */
    char peck_code_lh[12];
    /**
     * Code of the return to the R plane; G99 if not given.
     */
    char return_r_plane[12];
    /**
     * Code of the return to the height before the cycle; G98 if not given.
     */
    char return_initial[12];
    /**
     * Letter of a peck's depth, "Q".
     */
    char peck_word[8];
    /**
     * Letter of the dwell at the bottom.
     */
    char dwell_word[8];
    /**
     * Letter of a faster way out.
     */
    char retract_word[8];
} threadcalc_dialect_t;

/**
 * The unit the machine is set to. Never has a default.
 */
typedef int32_t threadcalc_unit;

/**
 * What the feed is counted by. Never has a default.
 */
typedef int32_t threadcalc_mode;

/**
 * How the tap is held.
 */
typedef int32_t threadcalc_holder;

/**
 * Where the tap returns to after the hole.
 */
typedef int32_t threadcalc_return_to;

/**
 * What a tapping cycle is made of: mm, exact. Begin with THREADCALC_CYCLE_REQUEST_INIT.
 */
typedef struct {
    /**
     * sizeof(threadcalc_cycle_request_t).
     */
    uint32_t size;
    /**
     * Unit of the machine. Required.
     */
    threadcalc_unit unit;
    /**
     * Feed per minute or per revolution. Required.
     */
    threadcalc_mode mode;
    /**
     * How the tap is held. Required.
     */
    threadcalc_holder holder;
    /**
     * Where the tap returns to. Required.
     */
    threadcalc_return_to return_to;
    /**
     * 0.
     */
    uint32_t reserved;
    /**
     * Decimals of the feed word, a whole number 0 to 9: {3, 1}. Required.
     */
    threadcalc_ratio_t decimals;
    /**
     * Programmed speed in turns per minute, at most 9 decimals. Required.
     */
    threadcalc_ratio_t rpm;
    /**
     * From the face to the point that the tap's length offset is set on. Required.
     */
    threadcalc_ratio_t depth_mm;
    /**
     * R plane above the face. Required.
     */
    threadcalc_ratio_t r_plane_mm;
    /**
     * The lead that the feed is made for, the thread's if not given; another only in a holder that gives.
     */
    threadcalc_ratio_t feed_lead_mm;
    /**
     * Depth of a peck; left out: in one stroke.
     */
    threadcalc_ratio_t peck_mm;
    /**
     * Wait at the bottom in seconds, 0 to 60; left out: none.
     */
    threadcalc_ratio_t dwell_s;
    /**
     * Speed on the way out over speed on the way in; left out: out as fast as in.
     */
    threadcalc_ratio_t retract_factor;
} threadcalc_cycle_request_t;

/**
 * The stable id of a finding.
 */
typedef int32_t threadcalc_finding;

/**
 * How bad a finding is.
 */
typedef int32_t threadcalc_severity;

/**
 * The name of a number that a finding carries.
 */
typedef int32_t threadcalc_number;

/**
 * Something doubtful or wrong that does not keep a result from existing. Frozen.
 */
typedef struct {
    /**
     * What it is; threadcalc_finding_message says it in words.
     */
    threadcalc_finding id;
    /**
     * How bad it is.
     */
    threadcalc_severity severity;
    /**
     * How many numbers it carries, up to 3.
     */
    int32_t number_count;
    /**
     * What each number is.
     */
    threadcalc_number number_key[3];
    /**
     * The numbers, in the unit that the key names.
     */
    double number[3];
    /**
     * The input that it rests on, by its name in a job.
     */
    char evidence[40];
    /**
     * What would be right; may be empty.
     */
    char suggestion[104];
} threadcalc_finding_t;

/**
 * The words of one tapped hole at the place the spindle stands, or why there are none. New members are added
 * at the end only.
 */
typedef struct {
    /**
     * The finding that says why there are no words; its id is 0 if there are.
     */
    threadcalc_finding_t refused;
    /**
     * How many words there are.
     */
    int32_t word_count;
    /**
     * How many program lines there are.
     */
    int32_t block_count;
    /**
     * How many words must be restored.
     */
    int32_t restore_count;
    /**
     * 0.
     */
    int32_t reserved;
    /**
     * The words in order.
     */
    char words[20][32];
    /**
     * The program lines in order, words separated by blanks.
     */
    char blocks[6][160];
    /**
     * What the next operation must set again, and only that.
     */
    char restore[4][32];
} threadcalc_cycle_t;

/**
 * Whether the hole goes through the part.
 */
typedef int32_t threadcalc_hole;

/**
 * The place on the tap that its length offset is set on.
 */
typedef int32_t threadcalc_tap_set_on;

/**
 * What depths are made of: mm, exact. Begin with THREADCALC_DEPTH_REQUEST_INIT.
 */
typedef struct {
    /**
     * sizeof(threadcalc_depth_request_t).
     */
    uint32_t size;
    /**
     * Through or blind. Required.
     */
    threadcalc_hole hole;
    /**
     * Where the tap's length offset is set; required with a male centre.
     */
    threadcalc_tap_set_on tap_set_on;
    /**
     * 0.
     */
    uint32_t reserved;
    /**
     * Full thread from the face, above 0. Required.
     */
    threadcalc_ratio_t full_thread_mm;
    /**
     * Threads of the tap's chamfer, 0 to 20; plan on the longest of its form. Required.
     */
    threadcalc_ratio_t chamfer_threads;
    /**
     * The drilled hole's diameter. Required.
     */
    threadcalc_ratio_t drill_mm;
    /**
     * Point angle of the drill in degrees, above 60 and up to 180. Required.
     */
    threadcalc_ratio_t point_angle_deg;
    /**
     * Room below the tap: stop and chips. Required.
     */
    threadcalc_ratio_t bottom_clearance_mm;
    /**
     * Length of the tap's male centre; left out: none.
     */
    threadcalc_ratio_t tap_centre_mm;
} threadcalc_depth_request_t;

/**
 * Depths from the face in mm. Frozen.
 */
typedef struct {
    /**
     * To the very end of the tap, its centre included.
     */
    threadcalc_ratio_t tap_mm;
    /**
     * To the point that the tap's length offset is set on: what the program says.
     */
    threadcalc_ratio_t program_tap_mm;
    /**
     * To the end of the drill's full diameter.
     */
    threadcalc_ratio_t full_diameter_mm;
    /**
     * To the drill's point; derived.
     */
    double drill_point_mm;
} threadcalc_depths_t;

/**
 * Several sets of drills, one bit each; 0 is "not given".
 */
typedef uint32_t threadcalc_drill_sets;

/**
 * A set of drills.
 */
typedef int32_t threadcalc_drill_set;

/**
 * A drill. Frozen.
 */
typedef struct {
    /**
     * The set it belongs to; 0 for a diameter that stands in no set.
     */
    threadcalc_drill_set set;
    /**
     * Its name, "6.8", "#7", "F", "5/16"; empty for a diameter too long for a name.
     */
    char name[28];
    /**
     * Diameter in mm.
     */
    threadcalc_ratio_t diameter_mm;
} threadcalc_drill_t;

/**
 * How the tap makes the thread.
 */
typedef int32_t threadcalc_tap;

/**
 * What 100 % of thread is. Two bases are in print; neither is a default.
 */
typedef int32_t threadcalc_basis;

/**
 * What a tap drill is asked for. Begin with THREADCALC_TAP_DRILL_REQUEST_INIT.
 */
typedef struct {
    /**
     * sizeof(threadcalc_tap_drill_request_t).
     */
    uint32_t size;
    /**
     * Cut or form tap. Required.
     */
    threadcalc_tap tap;
    /**
     * Basis of the percent; required with a percent for a cut tap, an error for a form tap and for pipe
     * threads.
     */
    threadcalc_basis basis;
    /**
     * The drills to choose from. Required.
     */
    threadcalc_drill_sets sets;
    /**
     * For a taper thread: 1 if the hole is reamed to the taper before it is tapped, else 0.
     */
    int32_t taper_reamer;
    /**
     * 0.
     */
    uint32_t reserved;
    /**
     * Percent of thread; without it the drill nearest to D - P (cut) or D - P/2 (form). None for a taper
     * thread, whose drill has its own rule.
     */
    threadcalc_ratio_t percent;
} threadcalc_tap_drill_request_t;

/**
 * Whether a drilled hole lies within the class's minor-diameter limits.
 */
typedef int32_t threadcalc_within_limits;

/**
 * A drill with what it leaves. Frozen.
 */
typedef struct {
    /**
     * The drill.
     */
    threadcalc_drill_t drill;
    /**
     * Percent of thread on the basis of the answer; NaN for a taper thread, where it has no meaning.
     */
    double percent;
    /**
     * What is left to the largest minor diameter in mm, negative beyond it; 0/0 if there is none.
     */
    threadcalc_ratio_t left_to_limit_mm;
    /**
     * Within the class's minor-diameter limits.
     */
    threadcalc_within_limits within_limits;
    /**
     * 0.
     */
    int32_t reserved;
} threadcalc_judged_drill_t;

/**
 * Smallest and largest size in mm, exact; 0/0 where the standard sets none. Frozen.
 */
typedef struct {
    /**
     * Smallest.
     */
    threadcalc_ratio_t low;
    /**
     * Largest.
     */
    threadcalc_ratio_t high;
} threadcalc_range_t;

/**
 * How sure a limit of size is.
 */
typedef int32_t threadcalc_confidence;

/**
 * Limits of size: the standard's own rounded decimals. Frozen. All zeros: the standard's values have
 * not been read.
 */
typedef struct {
    /**
     * Major diameter.
     */
    threadcalc_range_t major_mm;
    /**
     * Pitch diameter.
     */
    threadcalc_range_t pitch_diameter_mm;
    /**
     * Minor diameter.
     */
    threadcalc_range_t minor_mm;
    /**
     * The unit in which the standard gives its decimals.
     */
    threadcalc_unit native_unit;
    /**
     * How many decimals the standard gives, in that unit.
     */
    int32_t decimals;
    /**
     * How sure the limits are.
     */
    threadcalc_confidence confidence;
    /**
     * 1; 0 where there are no limits.
     */
    int32_t is_given;
    /**
     * Standard, edition and table or rule.
     */
    char source[96];
} threadcalc_limits_t;

/**
 * A chosen tap drill. Frozen.
 */
typedef struct {
    /**
     * The drill.
     */
    threadcalc_judged_drill_t chosen;
    /**
     * The basis of every percent here; 0 for a form tap, whose 100 % is 0.68 P, and for pipe threads,
     * whose 100 % is their own height.
     */
    threadcalc_basis basis;
    /**
     * How many of the alternatives there are.
     */
    int32_t alternative_count;
    /**
     * The next smaller and larger drills of the sets, smallest first.
     */
    threadcalc_judged_drill_t alternatives[4];
    /**
     * The limits that the hole was judged by.
     */
    threadcalc_limits_t limits;
    /**
     * How many of the findings there are.
     */
    int32_t finding_count;
    /**
     * 0.
     */
    int32_t reserved;
    /**
     * What is doubtful.
     */
    threadcalc_finding_t findings[4];
} threadcalc_tap_drill_t;

/**
 * What a feed is made of. Begin with THREADCALC_FEED_REQUEST_INIT.
 */
typedef struct {
    /**
     * sizeof(threadcalc_feed_request_t).
     */
    uint32_t size;
    /**
     * Unit of the machine. Required.
     */
    threadcalc_unit unit;
    /**
     * Feed per minute or per revolution. Required.
     */
    threadcalc_mode mode;
    /**
     * 0.
     */
    uint32_t reserved;
    /**
     * Decimals of the word, a whole number 0 to 9: {3, 1}. Required.
     */
    threadcalc_ratio_t decimals;
    /**
     * Lead in mm, above 0. Required.
     */
    threadcalc_ratio_t lead_mm;
    /**
     * Programmed speed in turns per minute; required per minute, left out per revolution.
     */
    threadcalc_ratio_t rpm;
} threadcalc_feed_request_t;

/**
 * A synchronised feed. Frozen.
 */
typedef struct {
    /**
     * The word, "F914.4".
     */
    char word[32];
    /**
     * What a control reads back from the word, in its unit.
     */
    threadcalc_ratio_t value;
    /**
     * The feed before rounding, in the unit of the word.
     */
    threadcalc_ratio_t exact;
    /**
     * value / exact - 1; positive means that the programmed lead is too long.
     */
    threadcalc_ratio_t lead_error;
    /**
     * The lead that will really be cut, in mm. Over a depth the tap is off by lead_error x depth.
     */
    threadcalc_ratio_t lead_cut_mm;
} threadcalc_feed_t;

/**
 * Which side of the part a note speaks of.
 */
typedef int32_t threadcalc_sides;

/**
 * When the limits of the thread are to be met.
 */
typedef int32_t threadcalc_plating;

/**
 * A hole note as read; lengths in mm, exact, 0/0 where the note says none. New members are added at the
 * end only.
 */
typedef struct {
    /**
     * The thread; all zeros without one.
     */
    threadcalc_thread_t thread;
    /**
     * Where the thread's callout begins in the note, in bytes; 0 without a thread.
     */
    int64_t thread_at;
    /**
     * How many bytes of the note the thread's callout is; 0 without a thread.
     */
    int64_t thread_length;
    /**
     * Depth of full thread.
     */
    threadcalc_ratio_t thread_depth_mm;
    /**
     * Diameter of the drilled hole.
     */
    threadcalc_ratio_t drill_mm;
    /**
     * Depth of the drilled hole.
     */
    threadcalc_ratio_t drill_depth_mm;
    /**
     * Diameter of the countersink.
     */
    threadcalc_ratio_t countersink_mm;
    /**
     * Included angle of the countersink in degrees.
     */
    threadcalc_ratio_t countersink_angle_deg;
    /**
     * Diameter of the counterbore or spotface.
     */
    threadcalc_ratio_t counterbore_mm;
    /**
     * Depth of the counterbore or spotface.
     */
    threadcalc_ratio_t counterbore_depth_mm;
    /**
     * Diameter of the circle that the holes lie on.
     */
    threadcalc_ratio_t bolt_circle_mm;
    /**
     * How many holes; 0 where the note does not say.
     */
    uint32_t count;
    /**
     * 1 if the thread goes through.
     */
    int32_t thread_through;
    /**
     * 1 if the drilled hole goes through.
     */
    int32_t drill_through;
    /**
     * 1 if the hole is countersunk, with sizes or without.
     */
    int32_t has_countersink;
    /**
     * 1 if the hole is counterbored or spotfaced, with sizes or without.
     */
    int32_t has_counterbore;
    /**
     * 1 if the counterbore is a spotface: only as deep as it takes to clean up.
     */
    int32_t is_spotface;
    /**
     * 1 if the holes are equally spaced.
     */
    int32_t equally_spaced;
    /**
     * Near, far or both sides.
     */
    threadcalc_sides sides;
    /**
     * Whether the thread's limits are meant after or before plating.
     */
    threadcalc_plating plating;
    /**
     * How many of the findings there are.
     */
    int32_t finding_count;
    /**
     * What was assumed, what is doubtful, and what was not understood.
     */
    threadcalc_finding_t findings[12];
} threadcalc_hole_note_t;

/**
 * Basic dimensions of a pipe thread in mm, exact; 0/0 where its standard has none. Frozen.
 */
typedef struct {
    /**
     * Outside diameter of the pipe, D.
     */
    threadcalc_ratio_t pipe_diameter_mm;
    /**
     * Pitch diameter at the small end, E0; at the end of the pipe, deepest in the hole.
     */
    threadcalc_ratio_t pitch_diameter_small_end_mm;
    /**
     * Pitch diameter at the gauge plane, E1, D2 or d2: at the face of a tapped hole.
     */
    threadcalc_ratio_t pitch_diameter_gauge_plane_mm;
    /**
     * Length of hand-tight engagement, L1.
     */
    threadcalc_ratio_t hand_tight_length_mm;
    /**
     * Length of effective thread, L2.
     */
    threadcalc_ratio_t effective_length_mm;
    /**
     * Pitch diameter at the end of the effective thread, E2.
     */
    threadcalc_ratio_t pitch_diameter_effective_mm;
    /**
     * Minor diameter at the small end, K0.
     */
    threadcalc_ratio_t minor_diameter_small_end_mm;
    /**
     * Height of the thread, h.
     */
    threadcalc_ratio_t thread_height_mm;
    /**
     * Gauge length of ISO 7-1.
     */
    threadcalc_ratio_t gauge_length_mm;
    /**
     * Useful thread of ISO 7-1 at the basic gauge length.
     */
    threadcalc_ratio_t useful_length_mm;
    /**
     * Turns that the gauge may stand off, either way.
     */
    threadcalc_ratio_t gauge_tolerance_turns;
    /**
     * How sure the table's values are.
     */
    threadcalc_confidence confidence;
    /**
     * 0.
     */
    int32_t reserved;
    /**
     * Standard, edition and table or rule.
     */
    char source[96];
} threadcalc_pipe_t;

/**
 * One tapped hole. Begin with THREADCALC_JOB_INIT; a member left at zero is "not given".
 *
 * What is missing beyond the required members is assumed, and each assumption is a finding of the plan.
 */
typedef struct {
    /**
     * sizeof(threadcalc_job_t).
     */
    uint32_t size;
    /**
     * Unit of the machine. Required.
     */
    threadcalc_unit unit;
    /**
     * Feed per minute or per revolution. Required.
     */
    threadcalc_mode mode;
    /**
     * Through or blind. Required.
     */
    threadcalc_hole hole;
    /**
     * Cut or form tap. Required.
     */
    threadcalc_tap tap;
    /**
     * Basis of the percent.
     */
    threadcalc_basis basis;
    /**
     * Where the tap's length offset is set; required with a male centre.
     */
    threadcalc_tap_set_on tap_set_on;
    /**
     * The drills to choose from.
     */
    threadcalc_drill_sets drill_sets;
    /**
     * The thread. Required.
     */
    threadcalc_thread_t thread;
    /**
     * Decimals of the feed word, a whole number 0 to 9: {3, 1}. Required.
     */
    threadcalc_ratio_t decimals;
    /**
     * Spindle speed asked for, in turns per minute. Required.
     */
    threadcalc_ratio_t rpm;
    /**
     * Full thread from the face in mm. Required.
     */
    threadcalc_ratio_t full_thread_depth_mm;
    /**
     * Threads of the tap's chamfer; 3, the longest of form C, if not given.
     */
    threadcalc_ratio_t chamfer_threads;
    /**
     * Length of the tap's male centre in mm; 0 if not given.
     */
    threadcalc_ratio_t tap_centre_mm;
    /**
     * The drill there is, in mm; instead of drill_sets and percent.
     */
    threadcalc_ratio_t drill_mm;
    /**
     * Percent of thread wanted.
     */
    threadcalc_ratio_t percent;
    /**
     * Point angle of the drill in degrees; 118 if not given.
     */
    threadcalc_ratio_t point_angle_deg;
    /**
     * Room below the tap in mm; 3 pitches in a blind hole if not given.
     */
    threadcalc_ratio_t bottom_clearance_mm;
    /**
     * R plane above the face in mm; 5 mm or 0.2 in if not given.
     */
    threadcalc_ratio_t r_plane_mm;
    /**
     * Highest spindle speed of the machine for tapping, in turns per minute.
     */
    threadcalc_ratio_t machine_highest_rpm;
    /**
     * Lowest spindle speed of the machine for tapping.
     */
    threadcalc_ratio_t machine_lowest_rpm;
    /**
     * Step in which the control holds a speed; 1 if not given.
     */
    threadcalc_ratio_t machine_speed_step;
    /**
     * The control's dialect; without it (NULL) a plan has no words.
     */
    const threadcalc_dialect_t *dialect;
} threadcalc_job_t;

/**
 * Basic profile: unrounded formulas, doubles; NaN where the standard has none. A pipe thread's is that
 * at the gauge plane. Frozen.
 */
typedef struct {
    /**
     * Height of the fundamental triangle, H, in mm.
     */
    double triangle_height_mm;
    /**
     * Basic major diameter, D, in mm.
     */
    double major_mm;
    /**
     * Basic pitch diameter, D2, in mm.
     */
    double pitch_diameter_mm;
    /**
     * Basic minor diameter of the internal thread, D1, in mm.
     */
    double minor_mm;
    /**
     * Minor diameter of the external thread at its rounded root, d3, in mm.
     */
    double external_minor_mm;
    /**
     * Tensile stress area of the external thread in mm2.
     */
    double stress_area_mm2;
    /**
     * Angles of the two flanks against the normal to the axis, in degrees.
     */
    double flank_angles_deg[2];
} threadcalc_profile_t;

/**
 * A speed and the feed that belongs to it. Frozen.
 */
typedef struct {
    /**
     * Speed in turns per minute.
     */
    threadcalc_ratio_t rpm;
    /**
     * Its feed word.
     */
    char word[32];
    /**
     * 1 if the word is exact.
     */
    int32_t is_exact;
    /**
     * 1 for the speed of the plan.
     */
    int32_t is_planned;
} threadcalc_card_row_t;

/**
 * Everything from a callout to a tapping block. New members are added at the end only.
 *
 * While a finding of severity error stands, or the dialect is unset, there are no words, and withheld
 * lists why.
 */
typedef struct {
    /**
     * The thread, internal, with the class that was used.
     */
    threadcalc_thread_t thread;
    /**
     * Basic profile.
     */
    threadcalc_profile_t profile;
    /**
     * Limits of size.
     */
    threadcalc_limits_t limits;
    /**
     * The drill, its percent and its neighbours.
     */
    threadcalc_tap_drill_t tap_drill;
    /**
     * The speed asked for, in turns per minute.
     */
    threadcalc_ratio_t asked_rpm;
    /**
     * The speed the control will hold.
     */
    threadcalc_ratio_t programmed_rpm;
    /**
     * The feed word and its error.
     */
    threadcalc_feed_t feed;
    /**
     * Error of the lead over the full thread depth in mm.
     */
    threadcalc_ratio_t axial_error_mm;
    /**
     * Depths from the face.
     */
    threadcalc_depths_t depths;
    /**
     * Threads of chamfer planned on.
     */
    threadcalc_ratio_t chamfer_threads;
    /**
     * Length of the tap's male centre planned on, in mm.
     */
    threadcalc_ratio_t tap_centre_mm;
    /**
     * Point angle planned on, in degrees.
     */
    threadcalc_ratio_t point_angle_deg;
    /**
     * Room below the tap planned on, in mm.
     */
    threadcalc_ratio_t bottom_clearance_mm;
    /**
     * R plane planned on, in mm.
     */
    threadcalc_ratio_t r_plane_mm;
    /**
     * Where the tap's length offset is set.
     */
    threadcalc_tap_set_on tap_set_on;
    /**
     * How many rows the card has.
     */
    int32_t card_count;
    /**
     * How many words there are.
     */
    int32_t word_count;
    /**
     * How many program lines there are.
     */
    int32_t block_count;
    /**
     * How many words must be restored.
     */
    int32_t restore_count;
    /**
     * How many ids withhold the words.
     */
    int32_t withheld_count;
    /**
     * How many findings there are.
     */
    int32_t finding_count;
    /**
     * The ids of the findings that withhold the words.
     */
    threadcalc_finding withheld[5];
    /**
     * Speeds with their feeds, slowest first; none per revolution, where the feed is the lead.
     */
    threadcalc_card_row_t card[8];
    /**
     * The words in order.
     */
    char words[20][32];
    /**
     * The program lines in order, words separated by blanks.
     */
    char blocks[6][160];
    /**
     * What the next operation must set again.
     */
    char restore[4][32];
    /**
     * What is doubtful or wrong.
     */
    threadcalc_finding_t findings[16];
} threadcalc_plan_t;

/**
 * What the depths of a taper pipe hole are made of: mm, exact. Begin with
 * THREADCALC_TAPER_DEPTH_REQUEST_INIT.
 */
typedef struct {
    /**
     * sizeof(threadcalc_taper_depth_request_t).
     */
    uint32_t size;
    /**
     * 0.
     */
    uint32_t reserved;
    /**
     * How far the small end of this tap projects through its ring gauge: measure yours. Left out: the
     * projection of ASME B94.9 for NPT and NPTF; required for Rc, which has none.
     */
    threadcalc_ratio_t projection_mm;
    /**
     * The drilled hole's diameter. Required.
     */
    threadcalc_ratio_t drill_mm;
    /**
     * Point angle of the drill in degrees, above 60 and up to 180. Required.
     */
    threadcalc_ratio_t point_angle_deg;
    /**
     * Room below the tap for chips; one turn more is kept for trimming the depth. Required.
     */
    threadcalc_ratio_t bottom_clearance_mm;
} threadcalc_taper_depth_request_t;

/**
 * Depths of a taper pipe hole from the face, in mm; turns from the face. Frozen.
 */
typedef struct {
    /**
     * From the face to the plane that the tap's ring stands at: L1 (NPT, NPTF), the gauge length (Rc).
     */
    threadcalc_ratio_t hand_tight_mm;
    /**
     * How far the tap projects through the ring.
     */
    threadcalc_ratio_t projection_mm;
    /**
     * How much the table's projection may be off, either way; 0/0 for a measured tap.
     */
    threadcalc_ratio_t projection_tolerance_mm;
    /**
     * To the end of the tap for a thread of basic size.
     */
    threadcalc_ratio_t tap_mm;
    /**
     * The same for the first hole: one turn shallow, then gauge.
     */
    threadcalc_ratio_t first_hole_mm;
    /**
     * To the end of the drill's full diameter: one turn for trimming and the clearance below the tap.
     */
    threadcalc_ratio_t full_diameter_mm;
    /**
     * To the drill's point; derived.
     */
    double drill_point_mm;
    /**
     * Turns of the tap in the hole for basic size.
     */
    threadcalc_ratio_t tap_turns;
    /**
     * Turns of hand-tight engagement.
     */
    threadcalc_ratio_t hand_tight_turns;
    /**
     * Change of diameter for one turn deeper: P/16.
     */
    threadcalc_ratio_t diameter_per_turn_mm;
    /**
     * Turns that the gauge may stand off, either way.
     */
    threadcalc_ratio_t gauge_tolerance_turns;
} threadcalc_taper_depths_t;

#ifdef __cplusplus
extern "C" {
#endif // __cplusplus

/**
 * Finds the threads that a comment or a line of a tool list mentions, the first four in order. Dates, part
 * numbers, tool diameters and words of a program are none; nor is a designation that contradicts itself.
 *
 * tool_is_tap is 1 if the tool list says that the tool is a tap, else 0: a bare M8 is a thread then.
 * count is how many threads are listed, up to 4; with too little room only count is written. has_more is 1
 * if the comment mentions more than those, else 0; it may be NULL.
 * Errors: unknown-value (tool_is_tap), buffer-too-short. No text is an error.
 * Source: common practice.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_read_comment(
    const uint8_t *text,
    size_t length,
    int32_t tool_is_tap,
    threadcalc_found_thread_t *threads,
    size_t capacity,
    size_t *count,
    int32_t *has_more,
    threadcalc_error_t *error);

/**
 * The words of one tapped hole. found_size is sizeof(threadcalc_cycle_t).
 *
 * The tapped depth is rounded deeper, the R plane higher and a peck shallower, to the dialect's decimals. What
 * the dialect lacks is refused with the finding code-not-on-control; pecks with peck-tapping in a floating
 * holder, and in any that gives if the control needs a code to synchronise.
 * Errors: missing, unknown-value, out-of-range, not-exact, contradiction (the feed is that of another lead, the
 * dialect tells the left hand in two ways, two words would have one letter), feed-rounds-to-zero, overflow,
 * those of threadcalc_thread_write, structure-size, unsupported-field.
 * Source: ISO 6983-1 and NISTIR 6556 (the words); rounding: common practice.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_cycle(
    const threadcalc_thread_t *thread,
    const threadcalc_dialect_t *dialect,
    const threadcalc_cycle_request_t *cycle_request,
    threadcalc_cycle_t *found,
    size_t found_size,
    threadcalc_error_t *error);

/**
 * The depths of a tapped hole. found_size is sizeof(threadcalc_depths_t).
 *
 * tap = full thread + chamfer threads x P + tap centre; full diameter = tap + bottom clearance (through:
 * full thread + bottom clearance); drill point = full diameter + d/2 / tan(point angle / 2).
 * Errors: missing, unknown-value, out-of-range, overflow, does-not-apply (a taper thread: see
 * threadcalc_taper_depths), those of threadcalc_thread_write, structure-size, unsupported-field.
 * Source: common practice; chamfer lengths by form: DIN 2197.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_depths(
    const threadcalc_thread_t *thread,
    const threadcalc_depth_request_t *depth_request,
    threadcalc_depths_t *found,
    size_t found_size,
    threadcalc_error_t *error);

/**
 * Every drill of the sets, set by set, each in the order of its names. No set: none.
 *
 * count is how many there are; with too little room only count is written.
 * Errors: unknown-value, buffer-too-short.
 * Source: ASME B94.11M (number, letter, fractional); ISO 235 (metric).
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_drills(
    threadcalc_drill_sets sets,
    threadcalc_drill_t *drills,
    size_t capacity,
    size_t *count,
    threadcalc_error_t *error);

/**
 * The drill of a set with this name: "6.8", "#7", "F", "5/16", "1 1/64".
 *
 * Errors: missing (set), unknown-value (no such set or drill).
 * Source: as threadcalc_drills.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_drill_named(
    threadcalc_drill_set set,
    const uint8_t *name,
    size_t length,
    threadcalc_drill_t *drill,
    threadcalc_error_t *error);

/**
 * The drill of exactly this diameter in mm, of any set, else one that is named by its diameter.
 *
 * Errors: missing, out-of-range (denominator 0).
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_drill_of_diameter(
    const threadcalc_ratio_t *diameter_mm,
    threadcalc_drill_t *drill,
    threadcalc_error_t *error);

/**
 * The hole for a percent of thread, in mm: D - 1.299038 P x percent/100 on the basis 3H/4,
 * D - 1.082532 P x percent/100 on 5H/8, D - 0.68 P x percent/100 for a form tap. G and Rp:
 * D - 1.280655 P x percent/100; NPSC and NPSM: E1 + 0.8 P - 1.6 P x percent/100.
 *
 * percent is above 0 and up to 100. basis is required for a cut tap in a metric or Unified thread, and
 * an error for a form tap and for pipe threads, whose 100 % is their own height.
 * Errors: missing, unknown-value, contradiction (a basis that has no place, external thread),
 * out-of-range, does-not-apply (taper thread), not-sourced (NPSF, formed pipe thread), those of
 * threadcalc_thread_write.
 * Source: Machinery's Handbook 31 (3H/4); ISO 68-1 (5H/8); form taps: common practice; pipe threads:
 * the heights of ISO 228-1:2000 and ASME B1.20.1-1983.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_drill_diameter(
    const threadcalc_thread_t *thread,
    const threadcalc_ratio_t *percent,
    threadcalc_tap tap,
    threadcalc_basis basis,
    double *drill_mm,
    threadcalc_error_t *error);

/**
 * The percent of thread that a drilled hole leaves; the inverse of threadcalc_drill_diameter.
 *
 * drill_mm is the hole's diameter in mm, above 0 and below the major diameter.
 * Errors and source: as threadcalc_drill_diameter.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_percent_thread(
    const threadcalc_thread_t *thread,
    const threadcalc_ratio_t *drill_mm,
    threadcalc_tap tap,
    threadcalc_basis basis,
    double *percent,
    threadcalc_error_t *error);

/**
 * The drill of the sets for a tapped hole. found_size is sizeof(threadcalc_tap_drill_t).
 *
 * With a percent: the drill nearest to that hole, whatever the limits. Without: the drill nearest to
 * D - P within the class's minor-diameter limits (cut), or nearest to D - P/2 (form). Ties go to the
 * larger. A thread without a class is judged by the standard's medium class, with a finding.
 * NPT, NPTF: nearest to K0 = E0 - 0.8 p, with taper reamer to K0 - 3 p/16. Rc: the smallest drill not
 * below D1 at the face, with taper reamer nearest to D1 - useful thread/16. Without a taper reamer
 * finding taper-hole says how deep the threads are full.
 * Errors: missing, unknown-value, contradiction (also a taper reamer in a straight thread), out-of-range,
 * no-drill, does-not-apply (percent or form tap in a taper thread), those of threadcalc_thread_write,
 * structure-size, unsupported-field.
 * Source: ISO 2306 (D - P); Machinery's Handbook 31 (percent); ASME B94.9-2008 (NPT, direct tapping);
 * form taps, taper reamer and Rc: common practice.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_tap_drill(
    const threadcalc_thread_t *thread,
    const threadcalc_tap_drill_request_t *drill_request,
    threadcalc_tap_drill_t *found,
    size_t found_size,
    threadcalc_error_t *error);

/**
 * The feed of a lead, rounded once, half to even. feed_size is sizeof(threadcalc_feed_t).
 *
 * Errors: missing, unknown-value, contradiction (a speed per revolution), out-of-range,
 * feed-rounds-to-zero, overflow, structure-size, unsupported-field.
 * Source: ISO 6983-1 (F with G94 and G95); 1 in = 25.4 mm exactly.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_feed(
    const threadcalc_feed_request_t *feed_request,
    threadcalc_feed_t *feed,
    size_t feed_size,
    threadcalc_error_t *error);

/**
 * Whole speeds within lowest to highest at which a feed word per minute is exact: nearest to rpm
 * first, the lower one first on a tie. There may be none.
 *
 * decimals is 0 to 9, lowest is 1 or more, highest 0 is no limit. speeds has room for wanted numbers;
 * count is how many were found.
 * Errors: missing, unknown-value, out-of-range, overflow.
 * Source: derived; the multiples of the denominator of lead x 10^decimals.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_exact_speeds(
    const threadcalc_ratio_t *lead_mm,
    const threadcalc_ratio_t *rpm,
    threadcalc_unit unit,
    int32_t decimals,
    int64_t lowest,
    int64_t highest,
    int64_t *speeds,
    size_t wanted,
    size_t *count,
    threadcalc_error_t *error);

/**
 * The lead of a designation in mm, exact, in lowest terms.
 *
 * Errors: those of threadcalc_thread_read.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_lead(
    const uint8_t *designation,
    size_t length,
    int64_t *numerator,
    int64_t *denominator);

/**
 * The feed word of a designation: "F914.4". At most 24 bytes with its NUL.
 *
 * rpm is the programmed speed in turns per minute; it stands for its shortest decimal text. Per
 * revolution it has to be 0. unit 1 mm, 2 inch; mode 1 per minute, 2 per revolution; decimals 0 to 9.
 * needed counts the NUL.
 * Errors: those of threadcalc_thread_read, threadcalc_exact_number and threadcalc_feed; buffer-too-short.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_feed_word(
    const uint8_t *designation,
    size_t length,
    double rpm,
    int32_t unit,
    int32_t mode,
    int32_t decimals,
    char *text,
    size_t capacity,
    size_t *needed);

/**
 * The JSON door: the JSON text of a job in, the JSON text of its plan out. UTF-8; needed counts the NUL.
 *
 * The keys are those of threadcalc_job_t, with the objects machine and dialect; schema (1) is required,
 * an unknown key is an error. An exact number is a number or a text, "127/70".
 * Errors: bad-json, too-long (65536 bytes), unknown-key, those of threadcalc_plan, buffer-too-short.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_plan_json(
    const uint8_t *job,
    size_t length,
    char *text,
    size_t capacity,
    size_t *needed);

/**
 * threadcalc_plan_json that says what is wrong: at is the byte of the JSON text for bad-json, and the
 * byte of the key's own text otherwise; the message names the key.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_plan_json_with_error(
    const uint8_t *job,
    size_t length,
    char *text,
    size_t capacity,
    size_t *needed,
    threadcalc_error_t *error);

/**
 * The version of the binary interface of the library that runs; compare it with THREADCALC_ABI_VERSION.
 */
THREADCALC_API int32_t THREADCALC_CALL threadcalc_abi_version(void);

/**
 * Reads the whole hole note of a drawing, of one line or several: "4X M8x1.25-6H 16 DEEP", "1/4-20 UNC-2B
 * THRU, #7 DRILL", the symbols of depth, countersink and counterbore. note_size is
 * sizeof(threadcalc_hole_note_t). UTF-8, or lone Latin-1 bytes; offsets are bytes of the text.
 *
 * unit is the drawing's: 1 mm, 2 inch, 0 not given. Without it lengths that bear no mark are in the unit of
 * the thread's standard, with finding unit-assumed. Words that are not understood are findings not-read
 * with byte and length.
 * Errors: those of threadcalc_thread_read for the thread of the note; empty, too-long (400 bytes),
 * unreadable (neither thread nor hole), missing (a length without a unit in a note without a thread),
 * contradiction (two threads, two values of one thing, through and a depth), out-of-range, unknown-value
 * (unit), structure-size.
 * Source: ISO 129-1 and ASME Y14.5 for the symbols, from memory; common practice for the words.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_read_hole_note(
    const uint8_t *text,
    size_t length,
    threadcalc_unit unit,
    threadcalc_hole_note_t *note,
    size_t note_size,
    threadcalc_error_t *error);

/**
 * The limits of size of the thread's tolerance class. limits_size is sizeof(threadcalc_limits_t).
 *
 * Errors: class-unset, not-sourced (the standard's values have not been read), does-not-apply (a taper
 * thread is gauged by turns: see threadcalc_pipe), those of threadcalc_thread_write, structure-size.
 * Source: ISO 965-1:2013; ASME B1.1-2003; ISO 228-1:2000 (G); ISO 7-1:1994 (Rp). The structure says which.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_limits(
    const threadcalc_thread_t *thread,
    threadcalc_limits_t *limits,
    size_t limits_size,
    threadcalc_error_t *error);

/**
 * The stable name of a status: "ok", "out-of-range". Never NULL; "unknown" for an unknown number.
 */
THREADCALC_API const char *THREADCALC_CALL threadcalc_status_name(int32_t status);

/**
 * The stable name of the value that an error speaks of. Never NULL.
 */
THREADCALC_API const char *THREADCALC_CALL threadcalc_field_name(int32_t field);

/**
 * The stable name of a finding. Never NULL.
 */
THREADCALC_API const char *THREADCALC_CALL threadcalc_finding_name(int32_t finding);

/**
 * What a finding means, in one line. Never NULL.
 */
THREADCALC_API const char *THREADCALC_CALL threadcalc_finding_message(int32_t finding);

/**
 * "error", "warning", "info". Never NULL.
 */
THREADCALC_API const char *THREADCALC_CALL threadcalc_severity_name(int32_t severity);

/**
 * The stable name of a number that a finding carries; it ends in the unit. Never NULL.
 */
THREADCALC_API const char *THREADCALC_CALL threadcalc_number_name(int32_t number);

/**
 * "metric", "unified", "npt", "g". Never NULL.
 */
THREADCALC_API const char *THREADCALC_CALL threadcalc_form_name(int32_t form);

/**
 * The name of a form as the standards write it: "M", "UN", "NPT", "Rc". Never NULL.
 */
THREADCALC_API const char *THREADCALC_CALL threadcalc_form_symbol(int32_t form);

/**
 * The older or open name of a pipe thread: "BSPT", "NPT(F)". Never NULL.
 */
THREADCALC_API const char *THREADCALC_CALL threadcalc_written_as_name(int32_t written_as);

/**
 * The standard's token of a series: "coarse", "UNC", "8-UN". Never NULL.
 */
THREADCALC_API const char *THREADCALC_CALL threadcalc_series_name(int32_t series);

/**
 * "right", "left". Never NULL.
 */
THREADCALC_API const char *THREADCALC_CALL threadcalc_hand_name(int32_t hand);

/**
 * "internal", "external". Never NULL.
 */
THREADCALC_API const char *THREADCALC_CALL threadcalc_side_name(int32_t side);

/**
 * "near", "far", "both". Never NULL.
 */
THREADCALC_API const char *THREADCALC_CALL threadcalc_sides_name(int32_t sides);

/**
 * "after", "before". Never NULL.
 */
THREADCALC_API const char *THREADCALC_CALL threadcalc_plating_name(int32_t plating);

/**
 * "metric", "number", "letter", "fractional". Never NULL.
 */
THREADCALC_API const char *THREADCALC_CALL threadcalc_drill_set_name(int32_t set);

/**
 * "yes", "no", "does-not-apply". Never NULL.
 */
THREADCALC_API const char *THREADCALC_CALL threadcalc_within_limits_name(int32_t within_limits);

/**
 * How sure limits are: "confirmed", or what else there is. Never NULL.
 */
THREADCALC_API const char *THREADCALC_CALL threadcalc_confidence_name(int32_t confidence);

/**
 * The version of the library that runs, "1.2.3"; compare it with THREADCALC_VERSION. Never NULL.
 */
THREADCALC_API const char *THREADCALC_CALL threadcalc_version(void);

/**
 * "screw", "external", "internal". Never NULL.
 */
THREADCALC_API const char *THREADCALC_CALL threadcalc_weakest_name(int32_t weakest);

/**
 * "8.8", "10.9". Never NULL.
 */
THREADCALC_API const char *THREADCALC_CALL threadcalc_property_class_name(int32_t property_class);

/**
 * "aluminium", "structural_steel". Never NULL.
 */
THREADCALC_API const char *THREADCALC_CALL threadcalc_material_name(int32_t material);

/**
 * "rigid", "tension_compression", "floating". Never NULL.
 */
THREADCALC_API const char *THREADCALC_CALL threadcalc_holder_name(int32_t holder);

/**
 * "straight_flute", "spiral_point". Never NULL.
 */
THREADCALC_API const char *THREADCALC_CALL threadcalc_tap_kind_name(int32_t tap_kind);

/**
 * The stable name of a fitness. Never NULL.
 */
THREADCALC_API const char *THREADCALC_CALL threadcalc_suits_name(int32_t suits);

/**
 * "A" to "F". Never NULL.
 */
THREADCALC_API const char *THREADCALC_CALL threadcalc_chamfer_form_name(int32_t chamfer_form);

/**
 * "class_1". Never NULL.
 */
THREADCALC_API const char *THREADCALC_CALL threadcalc_iso_tap_class_name(int32_t iso_tap_class);

/**
 * "H", "L", "D". Never NULL.
 */
THREADCALC_API const char *THREADCALC_CALL threadcalc_limit_letter_name(int32_t limit_letter);

/**
 * "thread_plug_go". Never NULL.
 */
THREADCALC_API const char *THREADCALC_CALL threadcalc_gauge_name(int32_t gauge);

/**
 * "accept", "rework", "reject". Never NULL.
 */
THREADCALC_API const char *THREADCALC_CALL threadcalc_verdict_name(int32_t verdict);

/**
 * "tap_deeper", "change_tap". Never NULL.
 */
THREADCALC_API const char *THREADCALC_CALL threadcalc_move_name(int32_t next);

/**
 * Reads an exact number: 1.25, 1,25, .5, -2.5, 127/70, 1 1/4. A comma is a decimal comma; there is no
 * thousands separator, no exponent and no locale.
 *
 * Errors: empty, unreadable with the byte, too-long (64 bytes), not-exact (more than 9 decimals),
 * out-of-range (denominator 0), overflow.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_read_number(
    const uint8_t *text,
    size_t length,
    threadcalc_ratio_t *number,
    threadcalc_error_t *error);

/**
 * Writes an exact number: a decimal where it is one, else numerator/denominator. At most 41 bytes.
 *
 * Errors: out-of-range (denominator 0), missing (0/0), buffer-too-short.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_write_number(
    const threadcalc_ratio_t *number,
    char *text,
    size_t capacity,
    size_t *needed,
    threadcalc_error_t *error);

/**
 * The exact number that a double stands for: that of its shortest decimal text, 6.8 is 34/5.
 *
 * Errors: not-exact (more than 9 decimals, NaN, infinity), overflow.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_exact_number(
    double value,
    threadcalc_ratio_t *number,
    threadcalc_error_t *error);

/**
 * The nearest double of an exact number, correctly rounded; the same on every platform.
 *
 * Errors: out-of-range (denominator 0), missing (0/0).
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_nearest_double(
    const threadcalc_ratio_t *number,
    double *value,
    threadcalc_error_t *error);

/**
 * The speed that the control will really hold: rounded down to its step, never up; a speed above the
 * highest comes down to it. All in turns per minute, exact.
 *
 * step, lowest and highest may be NULL or 0/0: step 1, no limit.
 * Errors: missing (rpm), out-of-range (a speed or step not above 0, or nothing left above lowest),
 * overflow.
 * Source: common practice; controls drop the part of an S word that is finer than their step.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_programmed_speed(
    const threadcalc_ratio_t *rpm,
    const threadcalc_ratio_t *step,
    const threadcalc_ratio_t *lowest,
    const threadcalc_ratio_t *highest,
    threadcalc_ratio_t *programmed_rpm,
    threadcalc_error_t *error);

/**
 * The dimensions of a pipe thread. pipe_size is sizeof(threadcalc_pipe_t).
 *
 * With D in inches: E0 = D - (0.05 D + 1.1) p, E1 = E0 + L1/16, L2 = (0.80 D + 6.8) p, E2 = E0 + L2/16,
 * K0 = E0 - 0.8 p; G, R, Rp, Rc: D2 = D - h, h = 0.640327 P as printed.
 * Errors: does-not-apply (no pipe thread), those of threadcalc_thread_write, structure-size.
 * Source: ASME B1.20.1-1983 table 2; ASME B1.20.3; ISO 7-1:1994; ISO 228-1:2000. The structure says which.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_pipe(
    const threadcalc_thread_t *thread,
    threadcalc_pipe_t *pipe,
    size_t pipe_size,
    threadcalc_error_t *error);

/**
 * Plans one tapped hole: thread, limits, drill, speed, feed, depths, words and what is doubtful.
 * found_size is sizeof(threadcalc_plan_t).
 *
 * Errors: missing names the member; every error of the single calculations; structure-size,
 * unsupported-field.
 * Source: those of the single calculations.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_plan(
    const threadcalc_job_t *job,
    threadcalc_plan_t *found,
    size_t found_size,
    threadcalc_error_t *error);

/**
 * The plan of a job as a machinist reads it: UTF-8, lines ended by a line feed.
 *
 * Errors: as threadcalc_plan, buffer-too-short.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_plan_text(
    const threadcalc_job_t *job,
    char *text,
    size_t capacity,
    size_t *needed,
    threadcalc_error_t *error);

/**
 * The plan of a job as JSON: exact values are texts, derived ones numbers, what is not given null.
 *
 * Errors: as threadcalc_plan, buffer-too-short.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_plan_json_of_job(
    const threadcalc_job_t *job,
    char *text,
    size_t capacity,
    size_t *needed,
    threadcalc_error_t *error);

/**
 * The depths of a taper pipe hole: its depth sets its size. found_size is
 * sizeof(threadcalc_taper_depths_t).
 *
 * tap = L1 + projection of the tap through the L1 ring; first hole = tap - 1 P;
 * full diameter = tap + 1 P + bottom clearance; drill point = full diameter + d/2 / tan(point angle / 2);
 * turns = depth / P.
 * Errors: does-not-apply (straight thread), contradiction (external thread), missing (also a projection
 * that no table has), out-of-range, overflow, those of threadcalc_thread_write, structure-size,
 * unsupported-field.
 * Source: ASME B1.20.1-1983 (L1); ASME B94.9-2008, table of taper pipe tap limits (projection);
 * ISO 7-1:1994 (gauge length); one turn for trimming: common practice.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_taper_depths(
    const threadcalc_thread_t *thread,
    const threadcalc_taper_depth_request_t *depth_request,
    threadcalc_taper_depths_t *found,
    size_t found_size,
    threadcalc_error_t *error);

/**
 * Reads one designation: M8x1.25-6H, 1/4-20 UNC-2B, #10-32, M16xPh3P1.5-LH, G1/2A, Rc 1/2, 1/4-18 NPT.
 * Any bytes may be given.
 *
 * Errors, with the byte: empty, unreadable, too-long (80 bytes), series-mismatch, unknown-class, fit,
 * unsupported-form, out-of-range, not-exact, overflow.
 * Source: ISO 965-1 and ASME B1.1 (designations), ISO 261 (coarse pitches); ISO 228-1, ISO 7-1,
 * ASME B1.20.1 and B1.20.3 (pipe threads).
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_thread_read(
    const uint8_t *designation,
    size_t length,
    threadcalc_thread_t *thread,
    threadcalc_error_t *error);

/**
 * Reads a fit: M8x1.25-6H/6g, 1/4-20 UNC-2A/2B, Rp/R 1/2. Internal and external thread, whatever their
 * order in the text.
 *
 * Errors, with the byte: those of threadcalc_thread_read; missing for a text with one class only,
 * contradiction for two classes of one side.
 * Source: ISO 965-1:2013 (designation of a fit); ISO 7-1:1994 (Rp/R, Rc/R); ASME B1.1-2003; from memory.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_read_fit(
    const uint8_t *fit,
    size_t length,
    threadcalc_thread_t *internal,
    threadcalc_thread_t *external,
    threadcalc_error_t *error);

/**
 * A metric thread, right hand, single start, from its diameter and pitch in mm.
 *
 * Errors: missing, out-of-range (diameter up to 2000 mm, pitch up to 5/8 of it), overflow.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_thread_metric(
    const threadcalc_ratio_t *diameter_mm,
    const threadcalc_ratio_t *pitch_mm,
    threadcalc_thread_t *thread,
    threadcalc_error_t *error);

/**
 * A Unified thread, right hand, single start, from its diameter in inches and its threads per inch.
 *
 * Errors: as threadcalc_thread_metric.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_thread_unified(
    const threadcalc_ratio_t *diameter_in,
    const threadcalc_ratio_t *threads_per_inch,
    threadcalc_thread_t *thread,
    threadcalc_error_t *error);

/**
 * A Unified thread from the text that names its size (1/4, #10, No. 10, 10, 1 1/4, 0.3) and its threads
 * per inch. A bare whole number is read by the pitch: 10 with 32 is No. 10, 1 with 8 is 1 in.
 *
 * Errors: as threadcalc_thread_read for the size, as threadcalc_thread_metric.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_thread_unified_size(
    const uint8_t *size_text,
    size_t length,
    const threadcalc_ratio_t *threads_per_inch,
    threadcalc_thread_t *thread,
    threadcalc_error_t *error);

/**
 * Writes the canonical designation: pitch always written, ASCII x, class before -LH.
 *
 * Errors: those of a thread given as a structure (missing, unknown-value, out-of-range, unknown-class,
 * contradiction, series-mismatch, unsupported-form, overflow), buffer-too-short.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_thread_write(
    const threadcalc_thread_t *thread,
    char *text,
    size_t capacity,
    size_t *needed,
    threadcalc_error_t *error);

/**
 * Writes the text that names the size: 10, 1/2, No. 10, 1 1/4. At most 16 bytes with its NUL.
 *
 * Errors: as threadcalc_thread_write.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_thread_size_text(
    const threadcalc_thread_t *thread,
    char *text,
    size_t capacity,
    size_t *needed,
    threadcalc_error_t *error);

/**
 * What is doubtful about a thread as read: a special, with the standard threads near it; an older name
 * that leaves something to assume; for a pipe thread the families it is taken for.
 *
 * count is how many there are; with too little room only count is written.
 * Errors: as threadcalc_thread_write.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_thread_findings(
    const threadcalc_thread_t *thread,
    threadcalc_finding_t *findings,
    size_t capacity,
    size_t *count,
    threadcalc_error_t *error);

/**
 * Every thread of the standard series, right hand, without a class: form, diameter, coarse to fine.
 *
 * form and series narrow the list; 0 is any. Pipe threads have no series. count is how many there are; with too little room only
 * count is written.
 * Errors: unknown-value, buffer-too-short.
 * Source: ISO 261:1998 table 2; ASME B1.1-2003 table 1; ASME B1.20.1-1983; ASME B1.20.3; ISO 228-1:2000;
 * ISO 7-1:1994.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_standard_threads(
    threadcalc_form form,
    threadcalc_series series,
    threadcalc_thread_t *threads,
    size_t capacity,
    size_t *count,
    threadcalc_error_t *error);

/**
 * How strongly the standard prefers the diameter: 1 first, 2 second, 3 third choice; Unified: 1 primary,
 * 2 secondary; 0 if it does not list it, and for pipe threads.
 *
 * Errors: as threadcalc_thread_write.
 * Source: ISO 261:1998 table 2; ASME B1.1-2003 table 1.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_choice(
    const threadcalc_thread_t *thread,
    int32_t *preference,
    threadcalc_error_t *error);

/**
 * 1 if ISO 262 selects this diameter and pitch for screws, bolts and nuts; else 0.
 *
 * Errors: as threadcalc_thread_write.
 * Source: ISO 262:1998.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_is_iso_262(
    const threadcalc_thread_t *thread,
    int32_t *is_selected,
    threadcalc_error_t *error);

/**
 * The basic profile. profile_size is sizeof(threadcalc_profile_t).
 *
 * Errors: as threadcalc_thread_write; structure-size.
 * Source: ISO 68-1, ISO 724, ISO 898-1 (stress area); ASME B1.1; ISO 228-1:2000; ISO 7-1:1994;
 * ASME B1.20.1-1983.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_profile(
    const threadcalc_thread_t *thread,
    threadcalc_profile_t *profile,
    size_t profile_size,
    threadcalc_error_t *error);

#ifdef __cplusplus
}  // extern "C"
#endif  // __cplusplus

#endif  /* THREADCALC_H */

/* How a request begins: its own size, everything else not given. */
#ifdef __cplusplus
#define THREADCALC_REQUEST_INIT(type) [] { type made = type(); made.size = static_cast<uint32_t>(sizeof(type)); return made; }()
#else
#define THREADCALC_REQUEST_INIT(type) { .size = (uint32_t)sizeof(type) }
#endif
#define THREADCALC_FEED_REQUEST_INIT THREADCALC_REQUEST_INIT(threadcalc_feed_request_t)
#define THREADCALC_TAP_DRILL_REQUEST_INIT THREADCALC_REQUEST_INIT(threadcalc_tap_drill_request_t)
#define THREADCALC_DEPTH_REQUEST_INIT THREADCALC_REQUEST_INIT(threadcalc_depth_request_t)
#define THREADCALC_TAPER_DEPTH_REQUEST_INIT THREADCALC_REQUEST_INIT(threadcalc_taper_depth_request_t)
#define THREADCALC_DIALECT_INIT THREADCALC_REQUEST_INIT(threadcalc_dialect_t)
#define THREADCALC_CYCLE_REQUEST_INIT THREADCALC_REQUEST_INIT(threadcalc_cycle_request_t)
#define THREADCALC_JOB_INIT THREADCALC_REQUEST_INIT(threadcalc_job_t)
