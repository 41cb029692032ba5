/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/*
 * threadcalc: threads and tapped holes, exact and offline.
 *
 * Every call is safe from any thread at any time: no global state, no files, no locale, and no
 * allocation but in threadcalc_plan_json, threadcalc_plan_json_with_error, threadcalc_check_json and
 * threadcalc_compare_json. These four read a text of any shape: they take memory from the heap while
 * they run, and give all of it back; where there is none left, the process ends. Lengths are in
 * millimetres, speeds in turns per minute, unless a name says otherwise. Calls return 0 on success, else the number of an error
 * (threadcalc_status_name), and write results only on success. Pointers are checked for NULL;
 * otherwise they must point to what their type says. The last argument `error` may be NULL. Text in
 * is pointer and length, UTF-8, no NUL needed; text out is buffer, capacity and the length needed,
 * which counts the NUL.
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
 * ISO 5855-1 metric thread with a larger root, MJ.
 */
#define THREADCALC_FORM_METRIC_J 12

/**
 * ISO 1501 miniature thread, S.
 */
#define THREADCALC_FORM_MINIATURE 13

/**
 * ASME B1.1 external thread with a rounded root, UNR.
 */
#define THREADCALC_FORM_UNIFIED_R 14

/**
 * ASME B1.15 inch thread with a larger root, UNJ.
 */
#define THREADCALC_FORM_UNIFIED_J 15

/**
 * BS 84 inch thread of 55°: BSW, BSF.
 */
#define THREADCALC_FORM_WHITWORTH 16

/**
 * BS 93 small metric thread of 47.5°, BA.
 */
#define THREADCALC_FORM_BA 17

/**
 * ISO 2904 metric trapezoidal thread of 30°, Tr.
 */
#define THREADCALC_FORM_TRAPEZOIDAL 18

/**
 * ASME B1.5 inch trapezoidal thread of 29°.
 */
#define THREADCALC_FORM_ACME 19

/**
 * ASME B1.8 inch trapezoidal thread of 29° and less depth.
 */
#define THREADCALC_FORM_STUB_ACME 20

/**
 * ASME B1.9 thread of 7° and 45°, which carries pressing away from its leading end.
 */
#define THREADCALC_FORM_BUTTRESS 21

/**
 * ASME B1.9 thread the other way round, which carries pulling.
 */
#define THREADCALC_FORM_PULL_BUTTRESS 22

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
 * British Standard Whitworth, coarse.
 */
#define THREADCALC_SERIES_BSW 15

/**
 * British Standard Fine.
 */
#define THREADCALC_SERIES_BSF 16

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
 * Not given.
 */
#define THREADCALC_LEAD_VERDICT_UNSET 0

/**
 * One pitch is near.
 */
#define THREADCALC_LEAD_VERDICT_IDENTIFIED 1

/**
 * More than one pitch may be meant.
 */
#define THREADCALC_LEAD_VERDICT_AMBIGUOUS 2

/**
 * No pitch is near.
 */
#define THREADCALC_LEAD_VERDICT_NONSTANDARD 3

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
 * Depth of the drilled hole.
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
 * Whether the hole is for a wire insert.
 */
#define THREADCALC_FIELD_WIRE_INSERT 126

/**
 * Whether the lead angle is taken into account.
 */
#define THREADCALC_FIELD_LEAD_ANGLE 127

/**
 * What a gauge said.
 */
#define THREADCALC_FIELD_RESULT 128

/**
 * Class of a tap by ISO 2857.
 */
#define THREADCALC_FIELD_TAP_CLASS 129

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
#define THREADCALC_FIELD_DIALECT_RETRACT_MULTIPLIER_WORD 169

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
 * What the depth of a drilled hole is measured to.
 */
#define THREADCALC_FIELD_DRILL_DEPTH_TO 180

/**
 * The side that a depth is rounded to.
 */
#define THREADCALC_FIELD_DEPTH_ROUNDING 181

/**
 * Normal, short or long run-out.
 */
#define THREADCALC_FIELD_RUN_OUT 182

/**
 * Depth to the very end of the tap.
 */
#define THREADCALC_FIELD_TAP_END_MM 183

/**
 * Depth to the drill's point.
 */
#define THREADCALC_FIELD_DRILL_POINT_MM 184

/**
 * How far the drill's full diameter comes out below.
 */
#define THREADCALC_FIELD_DRILL_CLEARANCE_MM 185

/**
 * How much larger than itself a drill cuts.
 */
#define THREADCALC_FIELD_OVERSIZE_MM 190

/**
 * Thickness of a coating.
 */
#define THREADCALC_FIELD_THICKNESS_UM 191

/**
 * The thinnest that a coating may be.
 */
#define THREADCALC_FIELD_THINNEST_UM 192

/**
 * The thickest that a coating may be.
 */
#define THREADCALC_FIELD_THICKEST_UM 193

/**
 * Short, normal or long engagement.
 */
#define THREADCALC_FIELD_GROUP 194

/**
 * What a thread is for: fine, medium or coarse.
 */
#define THREADCALC_FIELD_QUALITY 195

/**
 * The unit before any units code.
 */
#define THREADCALC_FIELD_DIALECT_UNITS_DEFAULT 200

/**
 * The feed mode before any code of it.
 */
#define THREADCALC_FIELD_DIALECT_FEED_MODE_DEFAULT 201

/**
 * Codes of the units.
 */
#define THREADCALC_FIELD_DIALECT_UNITS_CODES 202

/**
 * Codes of inches.
 */
#define THREADCALC_FIELD_DIALECT_UNITS_CODES_INCH 203

/**
 * Codes of millimetres.
 */
#define THREADCALC_FIELD_DIALECT_UNITS_CODES_MM 204

/**
 * What F means in a tapping cycle.
 */
#define THREADCALC_FIELD_DIALECT_FEED_BASIS 205

/**
 * Letter of the lead.
 */
#define THREADCALC_FIELD_DIALECT_LEAD_WORD 206

/**
 * Code of one synchronised stroke.
 */
#define THREADCALC_FIELD_DIALECT_STROKE_CODE 207

/**
 * Whether the tapping cycle starts the spindle.
 */
#define THREADCALC_FIELD_DIALECT_CYCLE_STARTS_SPINDLE 208

/**
 * How long the code for rigid tapping holds.
 */
#define THREADCALC_FIELD_DIALECT_RIGID_TAP_CODE_STICKY_UNTIL 209

/**
 * Whether S may stand in the cycle's block.
 */
#define THREADCALC_FIELD_DIALECT_S_IN_CYCLE_BLOCK_ALLOWED 210

/**
 * Decimals of S that the control keeps.
 */
#define THREADCALC_FIELD_DIALECT_S_DECIMALS 211

/**
 * Whether a peck returns to the R plane.
 */
#define THREADCALC_FIELD_DIALECT_PECK_RETURNS_TO_R 212

/**
 * Letter of repeats.
 */
#define THREADCALC_FIELD_DIALECT_REPEAT_WORD 213

/**
 * What no repeats mean.
 */
#define THREADCALC_FIELD_DIALECT_REPEAT_ZERO_MEANS 214

/**
 * What a number without a point is.
 */
#define THREADCALC_FIELD_DIALECT_NO_POINT 215

/**
 * Least increments of words.
 */
#define THREADCALC_FIELD_DIALECT_LEAST_INCREMENT 216

/**
 * The most decimals of words.
 */
#define THREADCALC_FIELD_DIALECT_MAX_DECIMALS 217

/**
 * Code that mirrors an axis.
 */
#define THREADCALC_FIELD_DIALECT_MIRROR_ON 218

/**
 * Code that ends mirroring.
 */
#define THREADCALC_FIELD_DIALECT_MIRROR_OFF 219

/**
 * Code that scales.
 */
#define THREADCALC_FIELD_DIALECT_SCALE_ON 220

/**
 * Code that ends scaling.
 */
#define THREADCALC_FIELD_DIALECT_SCALE_OFF 221

/**
 * Code that rotates.
 */
#define THREADCALC_FIELD_DIALECT_ROTATE_ON 222

/**
 * Code that ends rotation.
 */
#define THREADCALC_FIELD_DIALECT_ROTATE_OFF 223

/**
 * Whether a mirrored cycle changes its hand.
 */
#define THREADCALC_FIELD_DIALECT_MIRROR_FLIPS_HAND 224

/**
 * Whether G0 to G3 end a cycle.
 */
#define THREADCALC_FIELD_DIALECT_RAPID_CANCELS_CYCLE 225

/**
 * Whether R and Z outlive a cycle.
 */
#define THREADCALC_FIELD_DIALECT_CYCLE_WORDS_STICKY_ACROSS_CANCEL 226

/**
 * Whether a change of units converts F.
 */
#define THREADCALC_FIELD_DIALECT_F_CONVERTED_ON_UNITS_CHANGE 227

/**
 * Whether overrides are locked in the cycle.
 */
#define THREADCALC_FIELD_DIALECT_OVERRIDE_LOCKED_IN_CYCLE 228

/**
 * Whether a semicolon begins a comment.
 */
#define THREADCALC_FIELD_DIALECT_SEMICOLON_COMMENT 229

/**
 * The longest line in characters.
 */
#define THREADCALC_FIELD_DIALECT_MAX_BLOCK_CHARS 230

/**
 * What blanks inside a number are.
 */
#define THREADCALC_FIELD_DIALECT_SPACES_IN_NUMBERS 231

/**
 * Code that calls a subprogram.
 */
#define THREADCALC_FIELD_DIALECT_SUBPROGRAM_CALL 232

/**
 * Code that returns from a subprogram.
 */
#define THREADCALC_FIELD_DIALECT_SUBPROGRAM_RETURN 233

/**
 * In what order the words of a block act.
 */
#define THREADCALC_FIELD_DIALECT_ORDER_TABLE 234

/**
 * Whether unlisted codes are an alarm.
 */
#define THREADCALC_FIELD_DIALECT_UNLISTED_CODES_ALARM 235

/**
 * A program.
 */
#define THREADCALC_FIELD_PROGRAM 240

/**
 * A tool of a tool list.
 */
#define THREADCALC_FIELD_TOOL 250

/**
 * What a lead may be off a pitch.
 */
#define THREADCALC_FIELD_WITHIN 251

/**
 * Face of the part in the program's Z.
 */
#define THREADCALC_FIELD_SURFACE_Z_MM 252

/**
 * Position of the switch for block delete.
 */
#define THREADCALC_FIELD_BLOCK_DELETE 253

/**
 * Whether formulas are computed.
 */
#define THREADCALC_FIELD_EVALUATE_MACROS 254

/**
 * What a tool is.
 */
#define THREADCALC_FIELD_KIND 255

/**
 * Not given.
 */
#define THREADCALC_DRILLED_TO_UNSET 0

/**
 * The end of the full diameter.
 */
#define THREADCALC_DRILLED_TO_FULL_DIAMETER 1

/**
 * The tip of the drill's point.
 */
#define THREADCALC_DRILLED_TO_POINT 2

/**
 * Not given.
 */
#define THREADCALC_BOTTOM_VERDICT_UNSET 0

/**
 * More than one pitch of room.
 */
#define THREADCALC_BOTTOM_VERDICT_FINE 1

/**
 * 0 to 1 pitch: no room for chips, nor for a spindle that stops late.
 */
#define THREADCALC_BOTTOM_VERDICT_WARNING 2

/**
 * Less than 0: the tap runs into the cone of the hole.
 */
#define THREADCALC_BOTTOM_VERDICT_ERROR 3

/**
 * Not given.
 */
#define THREADCALC_RUN_OUT_UNSET 0

/**
 * The normal one, e1.
 */
#define THREADCALC_RUN_OUT_NORMAL 1

/**
 * The short one, e2.
 */
#define THREADCALC_RUN_OUT_SHORT 2

/**
 * The long one, e3.
 */
#define THREADCALC_RUN_OUT_LONG 3

/**
 * Not given.
 */
#define THREADCALC_DEPTH_ROUNDING_UNSET 0

/**
 * Straight threads and drills: never less full thread, never less room.
 */
#define THREADCALC_DEPTH_ROUNDING_DEEPER 1

/**
 * The first hole of a taper pipe tap: it can be tapped deeper, but not made smaller again.
 */
#define THREADCALC_DEPTH_ROUNDING_SHALLOWER 2

/**
 * Not given.
 */
#define THREADCALC_FEED_BASIS_UNSET 0

/**
 * What it means everywhere: per minute under G94, per revolution under G95.
 */
#define THREADCALC_FEED_BASIS_BY_MODE 1

/**
 * Feed per minute, whatever the mode.
 */
#define THREADCALC_FEED_BASIS_PER_MIN_ALWAYS 2

/**
 * The lead, whatever the mode.
 */
#define THREADCALC_FEED_BASIS_PER_REV_IN_TAP_CYCLE 3

/**
 * Nothing: the lead stands behind a letter of its own.
 */
#define THREADCALC_FEED_BASIS_LEAD_WORD 4

/**
 * Not given.
 */
#define THREADCALC_RIGID_UNTIL_UNSET 0

/**
 * For the next cycle only.
 */
#define THREADCALC_RIGID_UNTIL_NEXT_CYCLE 1

/**
 * Until the cycle is cancelled.
 */
#define THREADCALC_RIGID_UNTIL_CYCLE_CANCELLED 2

/**
 * Until the spindle stops or turns otherwise.
 */
#define THREADCALC_RIGID_UNTIL_SPINDLE_CODE 3

/**
 * Until the end of the program.
 */
#define THREADCALC_RIGID_UNTIL_PROGRAM_END 4

/**
 * Not given.
 */
#define THREADCALC_REPEAT_ZERO_UNSET 0

/**
 * An alarm.
 */
#define THREADCALC_REPEAT_ZERO_ERROR 1

/**
 * The cycle is kept for later positions; nothing is tapped here.
 */
#define THREADCALC_REPEAT_ZERO_STORE_ONLY 2

/**
 * One hole, as if nothing stood there.
 */
#define THREADCALC_REPEAT_ZERO_ONCE 3

/**
 * Not given.
 */
#define THREADCALC_NO_POINT_UNSET 0

/**
 * What it says: X10 is ten.
 */
#define THREADCALC_NO_POINT_AS_WRITTEN 1

/**
 * A count of least increments: X10 is a hundredth of a millimetre.
 */
#define THREADCALC_NO_POINT_LEAST_INCREMENT 2

/**
 * Not given.
 */
#define THREADCALC_SPACES_IN_NUMBERS_UNSET 0

/**
 * Nothing: X1 2 is twelve.
 */
#define THREADCALC_SPACES_IN_NUMBERS_IGNORED 1

/**
 * An alarm.
 */
#define THREADCALC_SPACES_IN_NUMBERS_ERROR 2

/**
 * Not given.
 */
#define THREADCALC_BLOCK_ORDER_UNSET 0

/**
 * Feed mode, F and S before the units.
 */
#define THREADCALC_BLOCK_ORDER_RS274NGC 1

/**
 * The units before everything that has one.
 */
#define THREADCALC_BLOCK_ORDER_UNITS_FIRST 2

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
 * A trapezoidal or buttress profile, which one pass of one tap seldom makes.
 */
#define THREADCALC_FINDING_DEEP_PROFILE 101

/**
 * The limits that a joint is computed from have not been read.
 */
#define THREADCALC_FINDING_JOINT_LEFT_OUT 102

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
 * Diameter of a countersink in mm.
 */
#define THREADCALC_NUMBER_COUNTERSINK_MM 100

/**
 * Included angle of a countersink in degrees.
 */
#define THREADCALC_NUMBER_COUNTERSINK_ANGLE_DEG 101

/**
 * Full thread that is lost, in mm.
 */
#define THREADCALC_NUMBER_FULL_THREAD_LOST_MM 102

/**
 * Version of the binary interface: raised on any break.
 */
#define THREADCALC_ABI_VERSION 1

/**
 * Not given.
 */
#define THREADCALC_PROGRAM_NUMBER_UNSET 0

/**
 * Holes that are tapped so.
 */
#define THREADCALC_PROGRAM_NUMBER_AFFECTED_HOLES 1

/**
 * The point angle that stands for the one nobody told.
 */
#define THREADCALC_PROGRAM_NUMBER_ASSUMED_POINT_ANGLE_DEG 2

/**
 * Room below the tap.
 */
#define THREADCALC_PROGRAM_NUMBER_BOTTOM_CLEARANCE_MM 3

/**
 * The same with a drill of 130 degrees.
 */
#define THREADCALC_PROGRAM_NUMBER_BOTTOM_CLEARANCE_130_DEG_MM 4

/**
 * The same with a drill of 140 degrees.
 */
#define THREADCALC_PROGRAM_NUMBER_BOTTOM_CLEARANCE_140_DEG_MM 5

/**
 * The line that changed it.
 */
#define THREADCALC_PROGRAM_NUMBER_CHANGED_AT_LINE 6

/**
 * Characters of a line.
 */
#define THREADCALC_PROGRAM_NUMBER_CHARS 7

/**
 * A count.
 */
#define THREADCALC_PROGRAM_NUMBER_COUNT 8

/**
 * Speed of the cycle.
 */
#define THREADCALC_PROGRAM_NUMBER_CYCLE_SPEED_RPM 9

/**
 * Drill diameter.
 */
#define THREADCALC_PROGRAM_NUMBER_DRILL_MM 10

/**
 * Length of the drill's point.
 */
#define THREADCALC_PROGRAM_NUMBER_DRILL_POINT_MM 11

/**
 * Z of the drill's point.
 */
#define THREADCALC_PROGRAM_NUMBER_DRILL_Z_MM 12

/**
 * The letter of a dwell.
 */
#define THREADCALC_PROGRAM_NUMBER_DWELL_WORD 13

/**
 * What it should be.
 */
#define THREADCALC_PROGRAM_NUMBER_EXPECTED 14

/**
 * The lead of the declared thread.
 */
#define THREADCALC_PROGRAM_NUMBER_EXPECTED_LEAD_MM 15

/**
 * One over the other.
 */
#define THREADCALC_PROGRAM_NUMBER_FACTOR 16

/**
 * F as it is written.
 */
#define THREADCALC_PROGRAM_NUMBER_FEED 17

/**
 * The feed it comes to.
 */
#define THREADCALC_PROGRAM_NUMBER_FEED_MM_MIN 18

/**
 * Depth of the hole's full diameter.
 */
#define THREADCALC_PROGRAM_NUMBER_FULL_DIAMETER_DEPTH_MM 19

/**
 * Length of full thread.
 */
#define THREADCALC_PROGRAM_NUMBER_FULL_THREAD_MM 20

/**
 * The lead before a change.
 */
#define THREADCALC_PROGRAM_NUMBER_LEAD_BEFORE_MM 21

/**
 * The lead behind it.
 */
#define THREADCALC_PROGRAM_NUMBER_LEAD_AFTER_MM 22

/**
 * Relative error of the lead.
 */
#define THREADCALC_PROGRAM_NUMBER_LEAD_ERROR 23

/**
 * The lead where a change of units converts F.
 */
#define THREADCALC_PROGRAM_NUMBER_LEAD_IF_CONVERTED_MM 24

/**
 * The lead under the other feed mode.
 */
#define THREADCALC_PROGRAM_NUMBER_LEAD_IF_OTHER_MODE_MM 25

/**
 * The lead that is cut.
 */
#define THREADCALC_PROGRAM_NUMBER_LEAD_MM 26

/**
 * The lead with the switch for block delete off: the blocks run.
 */
#define THREADCALC_PROGRAM_NUMBER_LEAD_OFF_MM 27

/**
 * The lead with the switch on: the blocks are left out.
 */
#define THREADCALC_PROGRAM_NUMBER_LEAD_ON_MM 28

/**
 * The machine's feed limit.
 */
#define THREADCALC_PROGRAM_NUMBER_LIMIT_MM_MIN 29

/**
 * The machine's speed limit.
 */
#define THREADCALC_PROGRAM_NUMBER_LIMIT_RPM 30

/**
 * How many axes are mirrored.
 */
#define THREADCALC_PROGRAM_NUMBER_MIRRORED_AXES 31

/**
 * Speed out over speed in.
 */
#define THREADCALC_PROGRAM_NUMBER_MULTIPLIER 32

/**
 * Turns at the nominal depth.
 */
#define THREADCALC_PROGRAM_NUMBER_NOMINAL_TURNS 33

/**
 * Passes of a peck cycle.
 */
#define THREADCALC_PROGRAM_NUMBER_PASSES 34

/**
 * Percent of thread.
 */
#define THREADCALC_PROGRAM_NUMBER_PERCENT 35

/**
 * Pitch.
 */
#define THREADCALC_PROGRAM_NUMBER_PITCH_MM 36

/**
 * What is programmed.
 */
#define THREADCALC_PROGRAM_NUMBER_PROGRAMMED 37

/**
 * Z of the R plane.
 */
#define THREADCALC_PROGRAM_NUMBER_R_MM 38

/**
 * The speed that is reached.
 */
#define THREADCALC_PROGRAM_NUMBER_REACHABLE_RPM 39

/**
 * The speed of the way out.
 */
#define THREADCALC_PROGRAM_NUMBER_RETRACT_RPM 40

/**
 * The S of the code for rigid tapping.
 */
#define THREADCALC_PROGRAM_NUMBER_RIGID_TAP_CODE_SPEED_RPM 41

/**
 * 1 where scaling is active.
 */
#define THREADCALC_PROGRAM_NUMBER_SCALE 42

/**
 * Seconds.
 */
#define THREADCALC_PROGRAM_NUMBER_SECONDS 43

/**
 * The line that set it.
 */
#define THREADCALC_PROGRAM_NUMBER_SET_AT_LINE 44

/**
 * S before a change.
 */
#define THREADCALC_PROGRAM_NUMBER_SPEED_BEFORE_RPM 45

/**
 * S behind it.
 */
#define THREADCALC_PROGRAM_NUMBER_SPEED_AFTER_RPM 46

/**
 * S.
 */
#define THREADCALC_PROGRAM_NUMBER_SPEED_RPM 47

/**
 * Starts of the thread.
 */
#define THREADCALC_PROGRAM_NUMBER_STARTS 48

/**
 * The F to write instead.
 */
#define THREADCALC_PROGRAM_NUMBER_SUGGESTED_FEED 49

/**
 * Z of the tap's end.
 */
#define THREADCALC_PROGRAM_NUMBER_TAP_Z_MM 50

/**
 * Torque of the tap.
 */
#define THREADCALC_PROGRAM_NUMBER_TORQUE_NM 51

/**
 * Torque of the spindle.
 */
#define THREADCALC_PROGRAM_NUMBER_TORQUE_LIMIT_NM 52

/**
 * Threads per inch.
 */
#define THREADCALC_PROGRAM_NUMBER_TPI 53

/**
 * From R to Z.
 */
#define THREADCALC_PROGRAM_NUMBER_TRAVEL_MM 54

/**
 * Turns.
 */
#define THREADCALC_PROGRAM_NUMBER_TURNS 55

/**
 * A value.
 */
#define THREADCALC_PROGRAM_NUMBER_VALUE 56

/**
 * The letter of a word.
 */
#define THREADCALC_PROGRAM_NUMBER_WORD 57

/**
 * Z.
 */
#define THREADCALC_PROGRAM_NUMBER_Z_MM 58

/**
 * How far the tap is from true at the bottom.
 */
#define THREADCALC_PROGRAM_NUMBER_DRIFT_MM 59

/**
 * The same in parts of the pitch.
 */
#define THREADCALC_PROGRAM_NUMBER_DRIFT_PITCHES 60

/**
 * The second nearest pitch.
 */
#define THREADCALC_PROGRAM_NUMBER_NEXT_PITCH_MM 61

/**
 * Its threads per inch.
 */
#define THREADCALC_PROGRAM_NUMBER_NEXT_TPI 62

/**
 * How far the lead is from it.
 */
#define THREADCALC_PROGRAM_NUMBER_NEXT_LEAD_ERROR 63

/**
 * The number of a code.
 */
#define THREADCALC_PROGRAM_NUMBER_CODE 64

/**
 * Not given.
 */
#define THREADCALC_EVIDENCE_UNSET 0

/**
 * It set S.
 */
#define THREADCALC_EVIDENCE_SPEED 1

/**
 * It set F.
 */
#define THREADCALC_EVIDENCE_FEED 2

/**
 * It set the unit.
 */
#define THREADCALC_EVIDENCE_UNITS 3

/**
 * It set the feed mode.
 */
#define THREADCALC_EVIDENCE_FEED_MODE 4

/**
 * It began the cycle.
 */
#define THREADCALC_EVIDENCE_CYCLE 5

/**
 * It changed the tool.
 */
#define THREADCALC_EVIDENCE_TOOL 6

/**
 * It names the thread.
 */
#define THREADCALC_EVIDENCE_THREAD 7

/**
 * It drilled the hole.
 */
#define THREADCALC_EVIDENCE_DRILL 8

/**
 * It is left out by the switch for block delete.
 */
#define THREADCALC_EVIDENCE_BLOCK_DELETE 9

/**
 * Not given.
 */
#define THREADCALC_THREAD_SOURCE_UNSET 0

/**
 * An input of the check.
 */
#define THREADCALC_THREAD_SOURCE_GIVEN 1

/**
 * The tool list.
 */
#define THREADCALC_THREAD_SOURCE_TOOL_LIST 2

/**
 * The comment of the tool change.
 */
#define THREADCALC_THREAD_SOURCE_TOOL_COMMENT 3

/**
 * A comment within three lines before the hole.
 */
#define THREADCALC_THREAD_SOURCE_NEAR_COMMENT 4

/**
 * A comment since the tool change.
 */
#define THREADCALC_THREAD_SOURCE_OPERATION_COMMENT 5

/**
 * The comment of the program's first line.
 */
#define THREADCALC_THREAD_SOURCE_PROGRAM_COMMENT 6

/**
 * A comment that begins with the tool's number, in a list of tools.
 */
#define THREADCALC_THREAD_SOURCE_TOOL_LIST_COMMENT 7

/**
 * Not given.
 */
#define THREADCALC_REASON_UNSET 0

/**
 * The lead of a hole could not be computed.
 */
#define THREADCALC_REASON_LEAD_NOT_KNOWN 1

/**
 * No thread is declared and none was identified.
 */
#define THREADCALC_REASON_THREAD_NOT_KNOWN 2

/**
 * The depth of a hole could not be computed.
 */
#define THREADCALC_REASON_DEPTH_NOT_KNOWN 3

/**
 * Where a hole is could not be computed.
 */
#define THREADCALC_REASON_PLACE_NOT_KNOWN 4

/**
 * The hole was drilled by a drill whose diameter is not known.
 */
#define THREADCALC_REASON_DRILL_NOT_KNOWN 5

/**
 * The text was not read: a block with something that no reader takes.
 */
#define THREADCALC_REASON_BLOCK_NOT_READ 6

/**
 * Formulas and variables were left alone, as asked.
 */
#define THREADCALC_REASON_MACROS_LEFT 7

/**
 * A call was not followed.
 */
#define THREADCALC_REASON_CALL_NOT_FOLLOWED 8

/**
 * More drilled holes than are kept.
 */
#define THREADCALC_REASON_HOLES_FORGOTTEN 9

/**
 * More findings in one block than there is room for.
 */
#define THREADCALC_REASON_FINDINGS_LOST 10

/**
 * What stands behind the end of the program.
 */
#define THREADCALC_REASON_BEHIND_THE_END 11

/**
 * The hand depends on the control.
 */
#define THREADCALC_REASON_HAND_NOT_KNOWN 12

/**
 * Not given.
 */
#define THREADCALC_TOOL_KIND_UNSET 0

/**
 * A tap that cuts.
 */
#define THREADCALC_TOOL_KIND_CUT_TAP 1

/**
 * A tap that forms.
 */
#define THREADCALC_TOOL_KIND_FORM_TAP 2

/**
 * A tap; cut or form is not known.
 */
#define THREADCALC_TOOL_KIND_TAP 3

/**
 * A drill.
 */
#define THREADCALC_TOOL_KIND_DRILL 4

/**
 * A spot or centre drill.
 */
#define THREADCALC_TOOL_KIND_SPOT_DRILL 5

/**
 * Any other tool.
 */
#define THREADCALC_TOOL_KIND_OTHER 6

/**
 * Nothing: more of the program is needed, or it is at its end.
 */
#define THREADCALC_EVENT_NONE 0

/**
 * A block that taps.
 */
#define THREADCALC_EVENT_HOLE 1

/**
 * Something doubtful or wrong.
 */
#define THREADCALC_EVENT_FINDING 2

/**
 * Not given.
 */
#define THREADCALC_PROGRAM_FINDING_UNSET 0

/**
 * The lead that is cut is not the thread's.
 */
#define THREADCALC_PROGRAM_FINDING_LEAD_MISMATCH 1

/**
 * The lead fits in the other unit.
 */
#define THREADCALC_PROGRAM_FINDING_INCH_METRIC_MIX 2

/**
 * The lead fits under the other feed mode.
 */
#define THREADCALC_PROGRAM_FINDING_FEED_MODE_MIX 3

/**
 * The lead fits with the point elsewhere.
 */
#define THREADCALC_PROGRAM_FINDING_DECIMAL_POINT 4

/**
 * A word without a point is counted in least increments.
 */
#define THREADCALC_PROGRAM_FINDING_IMPLICIT_DECIMAL_USED 5

/**
 * The feed follows the pitch of a thread with several starts.
 */
#define THREADCALC_PROGRAM_FINDING_LEAD_VS_PITCH 6

/**
 * S was changed in an active cycle, F was not.
 */
#define THREADCALC_PROGRAM_FINDING_STALE_FEED_AFTER_SPEED_CHANGE 7

/**
 * F was set in the other unit and is used now.
 */
#define THREADCALC_PROGRAM_FINDING_UNITS_CHANGED_AFTER_FEED 8

/**
 * The feed mode changed and F was kept.
 */
#define THREADCALC_PROGRAM_FINDING_FEED_MODE_CHANGE_WITHOUT_FEED 9

/**
 * F is the exact feed rounded or cut off.
 */
#define THREADCALC_PROGRAM_FINDING_FEED_ROUNDED 10

/**
 * The cycle has no speed.
 */
#define THREADCALC_PROGRAM_FINDING_NO_SPEED 11

/**
 * The cycle has no feed.
 */
#define THREADCALC_PROGRAM_FINDING_NO_FEED 12

/**
 * The cycle is of the other hand than the thread.
 */
#define THREADCALC_PROGRAM_FINDING_WRONG_HAND 13

/**
 * The spindle does not turn as the cycle needs it.
 */
#define THREADCALC_PROGRAM_FINDING_SPINDLE_DIRECTION 14

/**
 * The spindle is started before a cycle that starts it itself.
 */
#define THREADCALC_PROGRAM_FINDING_SPINDLE_START_BEFORE_CYCLE 15

/**
 * The code for rigid tapping is missing.
 */
#define THREADCALC_PROGRAM_FINDING_RIGID_TAP_CODE_MISSING 16

/**
 * The code for rigid tapping has another speed.
 */
#define THREADCALC_PROGRAM_FINDING_RIGID_TAP_CODE_SPEED_DIFFERS 17

/**
 * The tool is changed or the program ends in an active cycle.
 */
#define THREADCALC_PROGRAM_FINDING_CYCLE_NOT_CANCELLED 18

/**
 * A tool that is no tap runs the tapping cycle.
 */
#define THREADCALC_PROGRAM_FINDING_CYCLE_LEFT_ACTIVE 19

/**
 * Axis words without a motion code behind G80.
 */
#define THREADCALC_PROGRAM_FINDING_AXIS_WORDS_WITHOUT_MOTION 20

/**
 * The tapping feed is still there in the first feed move afterwards.
 */
#define THREADCALC_PROGRAM_FINDING_FEED_CARRIED_OVER 21

/**
 * Feed per revolution is still there in milling.
 */
#define THREADCALC_PROGRAM_FINDING_FEED_MODE_LEFT_ACTIVE 22

/**
 * The first block of the cycle lacks R or Z.
 */
#define THREADCALC_PROGRAM_FINDING_CYCLE_WORD_MISSING 23

/**
 * Z is not below R.
 */
#define THREADCALC_PROGRAM_FINDING_CYCLE_GEOMETRY 24

/**
 * The depth makes no sense for the thread.
 */
#define THREADCALC_PROGRAM_FINDING_DEPTH_IMPLAUSIBLE 25

/**
 * The tap reaches the end of the drilled hole's full diameter.
 */
#define THREADCALC_PROGRAM_FINDING_TAP_BOTTOMS_HOLE 26

/**
 * No drilling here before the tap.
 */
#define THREADCALC_PROGRAM_FINDING_HOLE_NOT_DRILLED 27

/**
 * The drilled hole does not suit the thread.
 */
#define THREADCALC_PROGRAM_FINDING_DRILL_SIZE 28

/**
 * The depth of a taper thread is far from its nominal turns.
 */
#define THREADCALC_PROGRAM_FINDING_TAPER_DEPTH 29

/**
 * The R plane is too near.
 */
#define THREADCALC_PROGRAM_FINDING_CLEARANCE_SHORT 30

/**
 * The spindle does not come to speed in this hole.
 */
#define THREADCALC_PROGRAM_FINDING_SPEED_NEVER_REACHED 31

/**
 * The speed is above the machine's.
 */
#define THREADCALC_PROGRAM_FINDING_SPEED_LIMIT 32

/**
 * The feed is above the axis's.
 */
#define THREADCALC_PROGRAM_FINDING_AXIS_FEED_LIMIT 33

/**
 * The way out is faster than the spindle.
 */
#define THREADCALC_PROGRAM_FINDING_RETRACT_SPEED_LIMIT 34

/**
 * The torque is above the spindle's.
 */
#define THREADCALC_PROGRAM_FINDING_TORQUE_LIMIT 35

/**
 * Neither return is stated.
 */
#define THREADCALC_PROGRAM_FINDING_RETURN_PLANE_UNSTATED 36

/**
 * The unit is that of the control when it was switched on.
 */
#define THREADCALC_PROGRAM_FINDING_UNITS_UNSTATED 37

/**
 * Absolute or incremental is not stated.
 */
#define THREADCALC_PROGRAM_FINDING_DISTANCE_MODE_UNSTATED 38

/**
 * The feed mode is not stated.
 */
#define THREADCALC_PROGRAM_FINDING_FEED_MODE_UNSTATED 39

/**
 * The plane is not that of the drilling axis.
 */
#define THREADCALC_PROGRAM_FINDING_WRONG_PLANE 40

/**
 * Inverse time is active in a cycle.
 */
#define THREADCALC_PROGRAM_FINDING_INVERSE_TIME_ACTIVE 41

/**
 * Constant surface speed is active in a cycle.
 */
#define THREADCALC_PROGRAM_FINDING_CONSTANT_SURFACE_SPEED_ACTIVE 42

/**
 * Cutter compensation is active in a cycle.
 */
#define THREADCALC_PROGRAM_FINDING_CUTTER_COMP_ACTIVE 43

/**
 * No length offset is active for the tool.
 */
#define THREADCALC_PROGRAM_FINDING_LENGTH_OFFSET_MISSING 44

/**
 * Mirror, scale or rotation is active in a cycle.
 */
#define THREADCALC_PROGRAM_FINDING_MIRROR_SCALE_ROTATION_ACTIVE 45

/**
 * Overrides are not locked in the cycle.
 */
#define THREADCALC_PROGRAM_FINDING_OVERRIDE_UNLOCKED 46

/**
 * The cycle pecks.
 */
#define THREADCALC_PROGRAM_FINDING_PECK_IN_TAP 47

/**
 * The dwell is implausible.
 */
#define THREADCALC_PROGRAM_FINDING_DWELL_UNIT 48

/**
 * The cycle is repeated at one place.
 */
#define THREADCALC_PROGRAM_FINDING_REPEAT_IN_PLACE 49

/**
 * A hole is tapped twice.
 */
#define THREADCALC_PROGRAM_FINDING_DUPLICATE_HOLE 50

/**
 * An incremental block reuses absolute R or Z.
 */
#define THREADCALC_PROGRAM_FINDING_STICKY_DEPTH_IN_INCREMENTAL 51

/**
 * A single stroke moves across.
 */
#define THREADCALC_PROGRAM_FINDING_OFF_AXIS_STROKE 52

/**
 * Tool list and comment name different threads.
 */
#define THREADCALC_PROGRAM_FINDING_TOOL_THREAD_MISMATCH 53

/**
 * The lead is that of one pitch.
 */
#define THREADCALC_PROGRAM_FINDING_THREAD_IDENTIFIED 54

/**
 * The lead is that of several pitches.
 */
#define THREADCALC_PROGRAM_FINDING_AMBIGUOUS_THREAD 55

/**
 * The lead is that of no pitch.
 */
#define THREADCALC_PROGRAM_FINDING_NONSTANDARD_LEAD 56

/**
 * The switch for block delete changes what is tapped.
 */
#define THREADCALC_PROGRAM_FINDING_BLOCK_DELETE_CHANGES_RESULT 57

/**
 * A value is not known.
 */
#define THREADCALC_PROGRAM_FINDING_UNRESOLVED_VALUE 58

/**
 * A subprogram is not in this text.
 */
#define THREADCALC_PROGRAM_FINDING_SUBPROGRAM_MISSING 59

/**
 * Subprograms call each other too deep.
 */
#define THREADCALC_PROGRAM_FINDING_RECURSION_LIMIT 60

/**
 * A comment that nothing closes.
 */
#define THREADCALC_PROGRAM_FINDING_UNCLOSED_COMMENT 61

/**
 * A number that is none.
 */
#define THREADCALC_PROGRAM_FINDING_BAD_NUMBER 62

/**
 * A letter twice in a block.
 */
#define THREADCALC_PROGRAM_FINDING_DUPLICATE_WORD 63

/**
 * Two codes of one group in a block.
 */
#define THREADCALC_PROGRAM_FINDING_TWO_CODES_ONE_GROUP 64

/**
 * The block could not be read.
 */
#define THREADCALC_PROGRAM_FINDING_BLOCK_NOT_READ 65

/**
 * The line is longer than a control takes.
 */
#define THREADCALC_PROGRAM_FINDING_LINE_TOO_LONG 66

/**
 * Line ends of more than one kind.
 */
#define THREADCALC_PROGRAM_FINDING_MIXED_LINE_ENDINGS 67

/**
 * Bytes above 127.
 */
#define THREADCALC_PROGRAM_FINDING_NON_ASCII 68

/**
 * The program does not end.
 */
#define THREADCALC_PROGRAM_FINDING_MISSING_END 69

/**
 * Less full thread than is declared.
 */
#define THREADCALC_PROGRAM_FINDING_FULL_THREAD_SHORT 70

/**
 * The control has no such code.
 */
#define THREADCALC_PROGRAM_FINDING_CODE_NOT_ON_CONTROL 71

/**
 * The answer depends on the control.
 */
#define THREADCALC_PROGRAM_FINDING_DIALECT_UNSET 72

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
#define THREADCALC_ENGAGEMENT_GROUP_UNSET 0

/**
 * Short, S.
 */
#define THREADCALC_ENGAGEMENT_GROUP_S 1

/**
 * Normal, N: what the classes of tolerance are made for.
 */
#define THREADCALC_ENGAGEMENT_GROUP_N 2

/**
 * Long, L.
 */
#define THREADCALC_ENGAGEMENT_GROUP_L 3

/**
 * Not given.
 */
#define THREADCALC_FIT_QUALITY_UNSET 0

/**
 * Precision threads, where the fit may vary little.
 */
#define THREADCALC_FIT_QUALITY_FINE 1

/**
 * General use.
 */
#define THREADCALC_FIT_QUALITY_MEDIUM 2

/**
 * Where threads are hard to make: hot rolled bars, long blind holes.
 */
#define THREADCALC_FIT_QUALITY_COARSE 3

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
#define THREADCALC_GAUGE_READING_UNSET 0

/**
 * GO goes to the full depth of thread.
 */
#define THREADCALC_GAUGE_READING_GO_PASSES 1

/**
 * GO stops before it.
 */
#define THREADCALC_GAUGE_READING_GO_STOPS 2

/**
 * NOT GO enters.
 */
#define THREADCALC_GAUGE_READING_NOT_GO_ENTERS 3

/**
 * The notch of a taper plug stands off the face, or is flush with it.
 */
#define THREADCALC_GAUGE_READING_TAPER_STANDS 4

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
 * A check that is under way, in memory of the caller's: threadcalc_checker_size bytes, aligned to 16. It holds no
 * pointers and is never ended: the memory is the caller's to reuse. One thread at a time.
 */
typedef struct threadcalc_checker_t threadcalc_checker_t;

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
     * 1 for the hole of a wire insert (STI), which is made from nominal_mm, the diameter of the screw; else 0.
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
     * Tolerance class as written, NUL-terminated, with -S or -L behind it where the designation says short or long
     * engagement; empty if there is none.
     */
    char tolerance_class[8];
} threadcalc_thread_t;

/**
 * What the depth of a drilled hole is measured to.
 */
typedef int32_t threadcalc_drilled_to;

/**
 * The place on the tap that its length offset is set on.
 */
typedef int32_t threadcalc_tap_set_on;

/**
 * A blind hole that is drilled, and what has to have room in it below the thread: mm, exact. Begin with
 * THREADCALC_BLIND_HOLE_INIT.
 */
typedef struct {
    /**
     * sizeof(threadcalc_blind_hole_t).
     */
    uint32_t size;
    /**
     * What the depth is measured to. Required.
     */
    threadcalc_drilled_to drill_depth_to;
    /**
     * Where the tap's length offset is set; required with a male centre.
     */
    threadcalc_tap_set_on tap_set_on;
    /**
     * 0.
     */
    uint32_t reserved;
    /**
     * Depth of the hole from the face, above 0 and up to 10 000. Required.
     */
    threadcalc_ratio_t drill_depth_mm;
    /**
     * The drilled hole's diameter. Required.
     */
    threadcalc_ratio_t drill_mm;
    /**
     * Point angle of the drill in degrees, above 60 and up to 180; required for a depth to the point.
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
} threadcalc_blind_hole_t;

/**
 * The thread that a blind hole has room for: depths from the face in mm. Frozen.
 */
typedef struct {
    /**
     * The longest full thread.
     */
    threadcalc_ratio_t full_thread_mm;
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
     * To the drill's point; derived. NaN if neither it nor the angle was given.
     */
    double drill_point_mm;
} threadcalc_blind_thread_t;

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
 * The chamfer of a tap by its letter or by its name.
 */
typedef int32_t threadcalc_chamfer_form;

/**
 * One form of chamfer in a blind hole. Frozen.
 */
typedef struct {
    /**
     * The form.
     */
    threadcalc_chamfer_form form;
    /**
     * 1 if a tap of this form gives the full thread that is wanted, else 0.
     */
    int32_t gives_wanted;
    /**
     * Its longest chamfer in threads.
     */
    threadcalc_ratio_t chamfer_threads;
    /**
     * The full thread above that chamfer in mm; 0/0 if nothing is left.
     */
    threadcalc_ratio_t full_thread_mm;
} threadcalc_chamfer_reading_t;

/**
 * What the room below a tap means. The larger number is the worse.
 */
typedef int32_t threadcalc_bottom_verdict;

/**
 * The bottom of a hole as one point angle makes it. Frozen.
 */
typedef struct {
    /**
     * What the room means.
     */
    threadcalc_bottom_verdict verdict;
    /**
     * 0.
     */
    uint32_t reserved;
    /**
     * The point angle in degrees.
     */
    threadcalc_ratio_t point_angle_deg;
    /**
     * How deep the hole has its full diameter, in mm; below 0 where the point alone is deeper.
     */
    threadcalc_ratio_t full_diameter_mm;
    /**
     * From the very end of the tap to there, in mm.
     */
    threadcalc_ratio_t room_mm;
} threadcalc_bottom_reading_t;

/**
 * The readings of one hole: one for a known point angle, one for each usual angle otherwise. Frozen.
 */
typedef struct {
    /**
     * The worst verdict of all readings.
     */
    threadcalc_bottom_verdict worst;
    /**
     * 1 if the angle was given, 0 if the usual ones were assumed.
     */
    int32_t is_certain;
    /**
     * How many readings there are, 1 or 4.
     */
    int32_t reading_count;
    /**
     * 0.
     */
    uint32_t reserved;
    /**
     * The readings, the sharpest point first; zeros behind the last.
     */
    threadcalc_bottom_reading_t readings[4];
} threadcalc_bottoming_t;

/**
 * The run-outs of a blind tapped hole in DIN 76-1.
 */
typedef int32_t threadcalc_run_out_kind;

/**
 * How much a coating changes the diameters of a thread, in mm, exact: an external thread grows by it, an
 * internal one closes. Frozen.
 */
typedef struct {
    /**
     * Major and minor diameter: twice the thickness.
     */
    threadcalc_ratio_t crest_mm;
    /**
     * Pitch diameter: four times the thickness on a 60 degree thread.
     */
    threadcalc_ratio_t pitch_diameter_mm;
} threadcalc_coating_growth_t;

/**
 * Smallest and largest size in mm, exact; 0/0 where the standard sets none or it has not been read. Frozen.
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
 * The unit the machine is set to. Never has a default.
 */
typedef int32_t threadcalc_unit;

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
     * How many decimals the standard gives, in that unit; pitch diameters in inches have at least four.
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
 * A countersunk mouth: depths from the face in mm, derived. Frozen.
 */
typedef struct {
    /**
     * To the tip of a pointed countersink that leaves this diameter at the face; one with a flat goes less
     * deep.
     */
    double tip_mm;
    /**
     * To where the cone has narrowed to the major diameter: above it there is no thread at all. 0 for a
     * countersink no larger than that.
     */
    double depth_at_major_mm;
    /**
     * To where the cone has narrowed to the hole: the thread is whole only from there on. What the
     * countersink takes of the full thread.
     */
    double full_thread_lost_mm;
} threadcalc_countersunk_t;

/**
 * The countersink that is usual for a thread: exact. Frozen.
 */
typedef struct {
    /**
     * Smallest diameter at the face in mm.
     */
    threadcalc_ratio_t least_mm;
    /**
     * Largest diameter at the face in mm.
     */
    threadcalc_ratio_t most_mm;
    /**
     * Included angle in degrees.
     */
    threadcalc_ratio_t angle_deg;
} threadcalc_usual_countersink_t;

/**
 * Torque of a tap in Nm: never one number. Frozen.
 */
typedef struct {
    /**
     * A new tap under good conditions: half the likely torque.
     */
    double low_nm;
    /**
     * What the formula gives.
     */
    double likely_nm;
    /**
     * A new tap under bad conditions: half as much again.
     */
    double high_nm;
    /**
     * A worn tap: twice the likely torque.
     */
    double worn_nm;
} threadcalc_torque_band_t;

/**
 * A group of materials that taps alike.
 */
typedef int32_t threadcalc_material;

/**
 * Cutting forces to start from; the tap maker's own replace them. Frozen.
 */
typedef struct {
    /**
     * For threadcalc_torque_by_pitch, in N/mm2.
     */
    double by_pitch_n_mm2;
    /**
     * For threadcalc_torque_by_chip_area, in N/mm2; NaN where the table has none.
     */
    double by_chip_area_n_mm2;
    /**
     * 1 if they were read in a published table; 0: from memory of the trade.
     */
    int32_t is_read;
    /**
     * 0.
     */
    int32_t reserved;
} threadcalc_starting_forces_t;

/**
 * A factor that nobody knows better than to a range. Frozen.
 */
typedef struct {
    /**
     * Smallest in use.
     */
    double low;
    /**
     * Where to start from without better knowledge.
     */
    double start;
    /**
     * Largest in use.
     */
    double high;
} threadcalc_factor_range_t;

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
 * What the feed is counted by. Never has a default.
 */
typedef int32_t threadcalc_mode;

/**
 * What F means in a tapping cycle.
 */
typedef int32_t threadcalc_feed_basis;

/**
 * How long the code for rigid tapping holds.
 */
typedef int32_t threadcalc_rigid_until;

/**
 * What no repeats, L0, mean.
 */
typedef int32_t threadcalc_repeat_zero;

/**
 * What a number without a point is.
 */
typedef int32_t threadcalc_no_point;

/**
 * What blanks inside a number are.
 */
typedef int32_t threadcalc_spaces_in_numbers;

/**
 * In what order the words of one block act.
 */
typedef int32_t threadcalc_block_order;

/**
 * What a control calls things, and what it makes of a program: a claim about one machine that somebody must have
 * proved there.
 *
 * Begin with THREADCALC_DIALECT_INIT and a base; a member left at zero stays as the base has it. Every text
 * ends with a NUL or fills its member. A code is a letter and digits, "G84"; a word is a letter, but none of
 * F G M N O R S T X Y Z; "none" says that the control has no such code or word. From units_default on nothing that
 * is written depends on the members: they are for checking a program, and what is not given there is not known.
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
    char retract_multiplier_word[8];
    /**
     * The unit before any units code.
     */
    threadcalc_unit units_default;
    /**
     * The feed mode before any code of it.
     */
    threadcalc_mode feed_mode_default;
    /**
     * What F is in a tapping cycle. Right on one control, F1.5 breaks the tap on another.
     */
    threadcalc_feed_basis feed_basis;
    /**
     * How long rigid_tap_code holds.
     */
    threadcalc_rigid_until rigid_tap_code_sticky_until;
    /**
     * What no repeats mean.
     */
    threadcalc_repeat_zero repeat_zero_means;
    /**
     * What a number without a point is.
     */
    threadcalc_no_point no_point;
    /**
     * What blanks inside a number are.
     */
    threadcalc_spaces_in_numbers spaces_in_numbers;
    /**
     * In what order the words of a block act.
     */
    threadcalc_block_order order_table;
    /**
     * Whether the tapping cycle starts the spindle.
     */
    threadcalc_answer cycle_starts_spindle;
    /**
     * Whether S may stand in the cycle's own block.
     */
    threadcalc_answer s_in_cycle_block_allowed;
    /**
     * Whether a peck returns to the R plane; if not it breaks the chip in the hole.
     */
    threadcalc_answer peck_returns_to_r;
    /**
     * Whether a mirrored tapping cycle changes its hand.
     */
    threadcalc_answer mirror_flips_hand;
    /**
     * Whether G0 to G3 end a cycle.
     */
    threadcalc_answer rapid_cancels_cycle;
    /**
     * Whether R and Z of a cancelled cycle are still there for the next one.
     */
    threadcalc_answer cycle_words_sticky_across_cancel;
    /**
     * Whether a change of units converts F.
     */
    threadcalc_answer f_converted_on_units_change;
    /**
     * Whether overrides are locked inside the cycle.
     */
    threadcalc_answer override_locked_in_cycle;
    /**
     * Whether codes that neither the dialect names nor all mills share are an alarm.
     */
    threadcalc_answer unlisted_codes_alarm;
    /**
     * Whether a semicolon begins a comment.
     */
    threadcalc_answer semicolon_comment;
    /**
     * Codes of inches, one or two with a blank between, "G20 G70"; both if not given.
     */
    char units_codes_inch[22];
    /**
     * Codes of millimetres: "G21 G71" if not given.
     */
    char units_codes_mm[22];
    /**
     * Code of one synchronised stroke that is no cycle.
     */
    char stroke_code[12];
    /**
     * Code that mirrors an axis.
     */
    char mirror_on[12];
    /**
     * Code that ends mirroring.
     */
    char mirror_off[12];
    /**
     * Code that scales.
     */
    char scale_on[12];
    /**
     * Code that ends scaling.
     */
    char scale_off[12];
    /**
     * Code that rotates.
     */
    char rotate_on[12];
    /**
     * Code that ends rotation.
     */
    char rotate_off[12];
    /**
     * Code that calls a subprogram, its number behind P.
     */
    char subprogram_call[12];
    /**
     * Code that returns from one.
     */
    char subprogram_return[12];
    /**
     * Letter of the lead, where it does not stand behind F.
     */
    char lead_word[8];
    /**
     * Letter of repeats, "L".
     */
    char repeat_word[8];
    /**
     * Decimals of S that the control keeps, 0 to 9.
     */
    threadcalc_ratio_t s_decimals;
    /**
     * The longest line that the control takes in characters, 1 to 65535.
     */
    threadcalc_ratio_t max_block_chars;
    /**
     * Least increment of axis words in mm programs, {1, 1000}: 1, 0.1, 0.01 and so on to nine decimals.
     */
    threadcalc_ratio_t least_increment_axis_mm;
    /**
     * Least increment of axis words in inch programs.
     */
    threadcalc_ratio_t least_increment_axis_inch;
    /**
     * Least increment of F per minute in mm programs.
     */
    threadcalc_ratio_t least_increment_f_per_min_mm;
    /**
     * Least increment of F per minute in inch programs.
     */
    threadcalc_ratio_t least_increment_f_per_min_inch;
    /**
     * Least increment of F per revolution in mm programs.
     */
    threadcalc_ratio_t least_increment_f_per_rev_mm;
    /**
     * Least increment of F per revolution in inch programs.
     */
    threadcalc_ratio_t least_increment_f_per_rev_inch;
    /**
     * The most decimals of axis words in mm programs, 0 to 9.
     */
    threadcalc_ratio_t max_decimals_axis_mm;
    /**
     * The most decimals of axis words in inch programs.
     */
    threadcalc_ratio_t max_decimals_axis_inch;
    /**
     * The most decimals of F per minute in mm programs.
     */
    threadcalc_ratio_t max_decimals_f_per_min_mm;
    /**
     * The most decimals of F per minute in inch programs.
     */
    threadcalc_ratio_t max_decimals_f_per_min_inch;
    /**
     * The most decimals of F per revolution in mm programs.
     */
    threadcalc_ratio_t max_decimals_f_per_rev_mm;
    /**
     * The most decimals of F per revolution in inch programs.
     */
    threadcalc_ratio_t max_decimals_f_per_rev_inch;
} threadcalc_dialect_t;

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
     * What the next operation must set again: feed mode, F, spindle direction.
     */
    char restore[4][32];
} threadcalc_cycle_t;

/**
 * Whether the hole goes through the part.
 */
typedef int32_t threadcalc_hole;

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
     * The drills to choose from. Required, unless drills are listed.
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
     * Percent of thread; without it the drill nearest to the rule's hole, see threadcalc_tap_drill. None for a
     * taper thread.
     */
    threadcalc_ratio_t percent;
    /**
     * The drills that the shop owns, to choose from instead of sets; NULL if none are listed. Of a drill in
     * no set only the diameter counts.
     */
    const threadcalc_drill_t *drills;
    /**
     * How many drills are listed, up to 24.
     */
    size_t drill_count;
    /**
     * How much larger than the drill its hole is, in mm, 0 or more; 0/0: the usual.
     */
    threadcalc_ratio_t oversize_mm;
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
 * A chosen tap drill. Frozen.
 */
typedef struct {
    /**
     * The drill.
     */
    threadcalc_judged_drill_t chosen;
    /**
     * The basis of every percent here; 0 for a form tap, whose 100 % is 0.68 P, and for other threads
     * than M and UN, whose 100 % is their own height.
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
    /**
     * The hole that the drill probably leaves, in mm, as threadcalc_probable_hole; 0/0 for a taper thread and
     * where no oversize is known or no thread would be left. It never changes which drill is chosen.
     */
    threadcalc_ratio_t probable_hole_mm;
    /**
     * What the probable hole leaves to the largest minor diameter in mm; 0/0 if there is none.
     */
    threadcalc_ratio_t probable_left_to_limit_mm;
    /**
     * Percent of thread that the probable hole leaves, on the basis; NaN if there is none.
     */
    double probable_percent;
} threadcalc_tap_drill_t;

/**
 * What an engagement is made of: mm, MPa = N/mm2, N. Begin with THREADCALC_ENGAGEMENT_REQUEST_INIT.
 */
typedef struct {
    /**
     * sizeof(threadcalc_engagement_request_t).
     */
    uint32_t size;
    /**
     * 1 if there is a load, else 0 and load_n 0.
     */
    int32_t load_is_given;
    /**
     * Length of engagement, incomplete threads and all. Required.
     */
    threadcalc_ratio_t length_mm;
    /**
     * What of it has no full thread, chamfers of hole and screw and the tap's chamfer; 0/0: none.
     */
    threadcalc_ratio_t without_full_thread_mm;
    /**
     * The hole as it was drilled; 0/0: the largest minor diameter of the internal class.
     */
    threadcalc_ratio_t drilled_mm;
    /**
     * Shear strength of the tapped part. Required.
     */
    double internal_shear_mpa;
    /**
     * Shear strength of the screw. Required.
     */
    double external_shear_mpa;
    /**
     * Tensile strength of the screw. Required.
     */
    double external_tensile_mpa;
    /**
     * An axial load to be held against the weakest part.
     */
    double load_n;
} threadcalc_engagement_request_t;

/**
 * The part of a fit that gives way first.
 */
typedef int32_t threadcalc_weakest;

/**
 * What a fit carries; derived. Frozen.
 */
typedef struct {
    /**
     * Tensile stress area of the screw.
     */
    double tensile_area_mm2;
    /**
     * Shear area of the threads in the hole.
     */
    double internal_shear_area_mm2;
    /**
     * Shear area of the screw's threads.
     */
    double external_shear_area_mm2;
    /**
     * Load that breaks the screw.
     */
    double tensile_load_n;
    /**
     * Load that strips the hole.
     */
    double internal_strip_load_n;
    /**
     * Load that strips the screw.
     */
    double external_strip_load_n;
    /**
     * The length of engagement, incomplete threads and all, at which the weaker of the two threads
     * carries the screw's tensile load.
     */
    double required_length_mm;
    /**
     * Strip load of the screw's threads over that of the hole's, J; above 1 the hole strips first.
     */
    double strip_ratio;
    /**
     * The weakest part's load over the load given; NaN without one.
     */
    double safety_factor;
    /**
     * What gives way first; of equals the screw, then its threads.
     */
    threadcalc_weakest weakest;
    /**
     * 0.
     */
    int32_t reserved;
} threadcalc_engagement_t;

/**
 * Property classes of screws.
 */
typedef int32_t threadcalc_property_class;

/**
 * Strengths to begin with where nothing better is known: never a default. Frozen.
 */
typedef struct {
    /**
     * Smallest tensile strength of the property class or the group of materials.
     */
    double tensile_mpa;
    /**
     * 0.6 of it.
     */
    double shear_mpa;
    /**
     * Where both are from.
     */
    char source[96];
} threadcalc_starting_strength_t;

/**
 * How long a metric thread engages, beside its diameter and pitch.
 */
typedef int32_t threadcalc_engagement_group_kind;

/**
 * Lengths of normal engagement of one diameter and pitch in mm, exact, and the group of a length. Frozen.
 */
typedef struct {
    /**
     * Normal is longer than this; up to this it is short.
     */
    threadcalc_ratio_t normal_over_mm;
    /**
     * Normal is up to this; more is long.
     */
    threadcalc_ratio_t normal_to_mm;
    /**
     * The group of the length that was asked for.
     */
    threadcalc_engagement_group_kind group;
    /**
     * How sure the lengths are.
     */
    threadcalc_confidence confidence;
    /**
     * Standard, edition and table or rule.
     */
    char source[96];
} threadcalc_engagement_lengths_t;

/**
 * What a thread is for, where a class is recommended.
 */
typedef int32_t threadcalc_fit_quality;

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
 * A gauge by what it checks.
 */
typedef int32_t threadcalc_gauge;

/**
 * A gauge to fetch, with the product's limits that it stands for; the gauge's own size, with its maker's
 * tolerance and wear, is in the gauge standards. Frozen.
 */
typedef struct {
    /**
     * What it is.
     */
    threadcalc_gauge kind;
    /**
     * 0.
     */
    int32_t reserved;
    /**
     * The pitch diameter that it stands for; of a taper gauge, at the gauge plane. 0/0 if there is none, or
     * if it has not been read.
     */
    threadcalc_ratio_t pitch_diameter_mm;
    /**
     * The major or minor diameter that it stands for; 0/0 as above. A NOT GO thread gauge has relieved ones.
     */
    threadcalc_ratio_t diameter_mm;
} threadcalc_gauge_t;

/**
 * The gauges of a thread. Frozen.
 */
typedef struct {
    /**
     * How many of the gauges there are.
     */
    int32_t gauge_count;
    /**
     * Left: left-hand gauges, turned anticlockwise.
     */
    threadcalc_hand hand;
    /**
     * 1 if the thread has no class and the standard's medium one was taken.
     */
    int32_t class_assumed;
    /**
     * 0.
     */
    int32_t reserved;
    /**
     * GO before NOT GO, thread gauges before plain ones.
     */
    threadcalc_gauge_t gauges[4];
    /**
     * Source of the limits; empty where none have been read.
     */
    char limits_source[96];
} threadcalc_gauges_t;

/**
 * How far a NOT GO thread gauge may go. Frozen.
 */
typedef struct {
    /**
     * The most turns, by hand and without force, from either end.
     */
    int32_t most_turns;
    /**
     * The standard that says so.
     */
    char standard[32];
    /**
     * What it says besides.
     */
    char remark[92];
} threadcalc_not_go_rule_t;

/**
 * What a gauge said, without its turns.
 */
typedef int32_t threadcalc_gauge_reading;

/**
 * What becomes of the hole.
 */
typedef int32_t threadcalc_verdict;

/**
 * One thing to do, in the order of threadcalc_next_move_t.
 */
typedef int32_t threadcalc_move;

/**
 * What to do next. Frozen.
 */
typedef struct {
    /**
     * What becomes of this hole.
     */
    threadcalc_verdict verdict;
    /**
     * How many of the moves there are.
     */
    int32_t move_count;
    /**
     * The moves, first things first.
     */
    threadcalc_move moves[6];
    /**
     * How much deeper the tap has to go, exact; negative: less deep, for the next hole. 0/0 where depth is
     * not the question.
     */
    threadcalc_ratio_t deeper_mm;
} threadcalc_next_move_t;

/**
 * An R plane from which the tap finds the thread again. Frozen.
 */
typedef struct {
    /**
     * The R plane in mm.
     */
    threadcalc_ratio_t r_mm;
    /**
     * By how many pitches it has moved; above 0 away from the part.
     */
    int64_t pitches;
} threadcalc_re_entry_t;

/**
 * A point of a torque curve. Frozen.
 */
typedef struct {
    /**
     * Spindle speed in turns per minute.
     */
    threadcalc_ratio_t rpm;
    /**
     * Torque that the spindle holds there, in Nm.
     */
    double torque_nm;
} threadcalc_torque_point_t;

/**
 * A gear of a spindle: its range of speeds and the torque over it, linear between the points. Frozen.
 *
 * One point is a torque that holds over the whole range. More have to ascend and to reach from the lowest
 * to the highest speed. Take the curve of the duty that tapping is, which is short-time.
 */
typedef struct {
    /**
     * Lowest speed in turns per minute; may be 0/1.
     */
    threadcalc_ratio_t lowest_rpm;
    /**
     * Highest speed in turns per minute.
     */
    threadcalc_ratio_t highest_rpm;
    /**
     * How many of the points there are, 1 to 8.
     */
    int32_t point_count;
    /**
     * 0.
     */
    uint32_t reserved;
    /**
     * The points; those behind point_count are not read.
     */
    threadcalc_torque_point_t points[8];
} threadcalc_gear_t;

/**
 * How a speed and a torque fit the gears of a spindle. Frozen.
 */
typedef struct {
    /**
     * The gear with the most torque at the speed, counted from 0 as given; -1 if none runs it.
     */
    int32_t gear;
    /**
     * 1 if its torque is enough, else 0.
     */
    int32_t is_enough;
    /**
     * The torque that it holds there, in Nm; NaN if none runs the speed.
     */
    double torque_nm;
    /**
     * The largest speed of any gear at which the torque is there, whatever was asked; NaN if there is none.
     * Round it down.
     */
    double fastest_rpm;
} threadcalc_gear_fit_t;

/**
 * Room from the R plane to the face by holder; exact. Frozen.
 */
typedef struct {
    /**
     * The least in use, in mm.
     */
    threadcalc_ratio_t least_mm;
    /**
     * What is always enough for the holder, though not for a slow spindle's ramp, in mm.
     */
    threadcalc_ratio_t ample_mm;
    /**
     * Turns of the spindle over least_mm.
     */
    threadcalc_ratio_t least_turns;
    /**
     * Turns of the spindle over ample_mm.
     */
    threadcalc_ratio_t ample_turns;
} threadcalc_holder_clearance_t;

/**
 * How far a holder has to give, in mm; exact. Frozen.
 */
typedef struct {
    /**
     * The tap is pulled out of the holder by this much.
     */
    threadcalc_ratio_t extension_mm;
    /**
     * The tap is pushed into the holder by this much.
     */
    threadcalc_ratio_t compression_mm;
} threadcalc_holder_travel_t;

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
 * What a lead says of the thread.
 */
typedef int32_t threadcalc_lead_verdict;

/**
 * What a lead says of the thread. Frozen.
 */
typedef struct {
    /**
     * Identified, ambiguous or nonstandard.
     */
    threadcalc_lead_verdict verdict;
    /**
     * The starts that were declared.
     */
    int32_t starts;
    /**
     * The lead in mm.
     */
    threadcalc_ratio_t lead_mm;
    /**
     * The shortest lead in mm that rounded words may stand for; else the lead.
     */
    threadcalc_ratio_t shortest_lead_mm;
    /**
     * The longest lead in mm that rounded words may stand for; else the lead.
     */
    threadcalc_ratio_t longest_lead_mm;
    /**
     * The first four matches with their errors, "0.8 mm (-0.388 %); 32 TPI (+0.397 %)".
     */
    char text[128];
} threadcalc_identification_t;

/**
 * A standard pitch and how far a lead is from it. Frozen.
 */
typedef struct {
    /**
     * The pitch in mm.
     */
    threadcalc_ratio_t pitch_mm;
    /**
     * Its threads per inch; 0/0 for a metric pitch.
     */
    threadcalc_ratio_t tpi;
    /**
     * lead / (pitch x starts) - 1; positive means that the lead is too long.
     */
    threadcalc_ratio_t lead_error;
    /**
     * The pitch in words, "0.8 mm", "32 TPI".
     */
    char name[16];
    /**
     * 1 if ISO 261 lists it, else 0.
     */
    int32_t is_metric;
    /**
     * 1 if ASME B1.1 lists it, else 0.
     */
    int32_t is_unified;
    /**
     * 1 if ISO 228-1 and ISO 7-1 list it, else 0.
     */
    int32_t is_whitworth_pipe;
    /**
     * 1 if ASME B1.20 lists it, else 0.
     */
    int32_t is_npt;
    /**
     * 1 if the lead, or one that its rounded words stand for, is within the tolerance; else 0.
     */
    int32_t is_within;
    /**
     * 1 if the lead is this pitch to one in a million, else 0.
     */
    int32_t is_exact;
} threadcalc_match_t;

/**
 * Feed and speed of a program, and how they are written. Begin with THREADCALC_FEED_WORDS_INIT.
 */
typedef struct {
    /**
     * sizeof(threadcalc_feed_words_t).
     */
    uint32_t size;
    /**
     * Unit of the program. Required.
     */
    threadcalc_unit unit;
    /**
     * Feed per minute or per revolution. Required.
     */
    threadcalc_mode mode;
    /**
     * Starts of the thread as they are declared; 0 is read as 1.
     */
    int32_t starts;
    /**
     * The feed in the unit of the program, above 0. Required.
     */
    threadcalc_ratio_t feed;
    /**
     * Decimals that the feed is written with, a whole number 0 to 9; 0/0 if that is not known.
     */
    threadcalc_ratio_t feed_decimals;
    /**
     * The most decimals that the control takes in a feed; 0/0 if that is not known.
     */
    threadcalc_ratio_t most_feed_decimals;
    /**
     * The speed in turns per minute, above 0; required per minute, left out per revolution.
     */
    threadcalc_ratio_t rpm;
    /**
     * Decimals that the speed is written with; 0/0 if that is not known.
     */
    threadcalc_ratio_t rpm_decimals;
    /**
     * The most decimals that the control takes in a speed; 0/0 if that is not known.
     */
    threadcalc_ratio_t most_rpm_decimals;
    /**
     * Relative tolerance, 0 to 1/4; 0/0 is 7/2000.
     */
    threadcalc_ratio_t within;
} threadcalc_feed_words_t;

/**
 * The motion that taps one hole. Begin with THREADCALC_MOTION_REQUEST_INIT.
 */
typedef struct {
    /**
     * sizeof(threadcalc_motion_request_t).
     */
    uint32_t size;
    /**
     * 1 if the acceleration is known; else 0 and acceleration_rpm_s 0: no ramps, so that the time is the
     * least there can be.
     */
    int32_t acceleration_is_given;
    /**
     * Lead of the thread in mm. Required.
     */
    threadcalc_ratio_t lead_mm;
    /**
     * Programmed speed in turns per minute. Required.
     */
    threadcalc_ratio_t rpm;
    /**
     * From the R plane to the bottom of the stroke in mm: more than the depth from the face. Required.
     */
    threadcalc_ratio_t travel_mm;
    /**
     * Speed on the way out over speed on the way in, 0.1 or more; 0/0: 1. The machine's highest speed does
     * not limit it here.
     */
    threadcalc_ratio_t retract_factor;
    /**
     * How fast the spindle gains and loses speed, the same both ways, in turns per minute per second.
     */
    double acceleration_rpm_s;
    /**
     * Wait at the bottom of each stroke in seconds.
     */
    double dwell_s;
    /**
     * Depth of a peck in mm, a thousandth of the travel to all of it; 0/0: one stroke. The strokes end at one
     * peck from the R plane, at two, and so on, the last at the full travel.
     */
    threadcalc_ratio_t peck_mm;
} threadcalc_motion_request_t;

/**
 * What tapping a hole comes to; derived. Frozen.
 */
typedef struct {
    /**
     * The fastest that the spindle turns on the way in: that of the last stroke, the deepest.
     */
    double reached_rpm;
    /**
     * The fastest that it turns on the way out, after the last stroke.
     */
    double retract_rpm;
    /**
     * Turns of the last stroke.
     */
    double turns;
    /**
     * Turns from standstill to the programmed speed, reached or not.
     */
    double turns_to_speed;
    /**
     * The way that these turns take: an R plane at least this high lets the tap enter at full speed.
     */
    double distance_to_speed_mm;
    /**
     * Time in, of all strokes.
     */
    double time_in_s;
    /**
     * Time out, of all strokes.
     */
    double time_out_s;
    /**
     * Time in, the dwell of each stroke and time out.
     */
    double time_s;
    /**
     * 1 if the programmed speed is reached on the way in, in the last stroke at least, else 0.
     */
    int32_t reaches_speed;
    /**
     * How many strokes; 1 without a peck.
     */
    uint32_t strokes;
} threadcalc_tapping_time_t;

/**
 * How a tapping stroke fits the feed limit of its axis; exact. Frozen.
 */
typedef struct {
    /**
     * Axis feed on the way in, in mm/min.
     */
    threadcalc_ratio_t feed_mm_min;
    /**
     * Axis feed on the way out, in mm/min.
     */
    threadcalc_ratio_t retract_feed_mm_min;
    /**
     * The largest speed that both are within the limit at, in turns per minute; not rounded.
     */
    threadcalc_ratio_t fastest_rpm;
    /**
     * 1 if both are within the limit, else 0.
     */
    int32_t is_within;
    /**
     * 0.
     */
    int32_t reserved;
} threadcalc_feed_fit_t;

/**
 * What a check is told. Begin with THREADCALC_CHECK_OPTIONS_INIT; a member left at zero is "not given".
 */
typedef struct {
    /**
     * sizeof(threadcalc_check_options_t).
     */
    uint32_t size;
    /**
     * Whether the switch for block delete is on: blocks that begin with / are left out; no if not given.
     */
    threadcalc_answer block_delete;
    /**
     * Whether formulas and variables are computed; yes if not given.
     */
    threadcalc_answer evaluate_macros;
    /**
     * How taps are held, where the tool list does not say; rigid if not given.
     */
    threadcalc_holder holder;
    /**
     * The thread of every tapped hole, before what the program's comments say.
     */
    threadcalc_thread_t thread;
    /**
     * The face of the part in the program's Z, in mm; 0 if not given.
     */
    threadcalc_ratio_t surface_z_mm;
    /**
     * Full thread that the drawing wants, in mm.
     */
    threadcalc_ratio_t full_thread_depth_mm;
    /**
     * Under-feed that is wanted, in percent of the lead.
     */
    threadcalc_ratio_t underfeed_percent;
    /**
     * Specific cutting force in N/mm2 for kc P^2 D / 8000; without it the torque is not checked.
     */
    threadcalc_ratio_t cutting_force_n_mm2;
    /**
     * Highest spindle speed of the machine for tapping, in turns per minute.
     */
    threadcalc_ratio_t machine_highest_rpm;
    /**
     * Feed limit of the axis that taps, in mm/min.
     */
    threadcalc_ratio_t machine_axis_feed_limit_mm_min;
    /**
     * How fast the spindle gains and loses speed, in rpm/s.
     */
    threadcalc_ratio_t machine_acceleration_rpm_s;
    /**
     * Turns that the tap needs above the face; 2 if not given.
     */
    threadcalc_ratio_t machine_least_clearance_turns;
    /**
     * How many of machine_gears there are, 0 to 4.
     */
    int32_t machine_gear_count;
    /**
     * 0.
     */
    uint32_t reserved;
    /**
     * The spindle's gears with their torque; none: torque is not checked.
     */
    threadcalc_gear_t machine_gears[4];
} threadcalc_check_options_t;

/**
 * What a tool is.
 */
typedef int32_t threadcalc_tool_kind;

/**
 * A tool of the shop's list. Begin with THREADCALC_TOOL_INIT; a member left at zero is "not given".
 */
typedef struct {
    /**
     * sizeof(threadcalc_tool_t).
     */
    uint32_t size;
    /**
     * Its number in the program, T.
     */
    uint32_t number;
    /**
     * What it is.
     */
    threadcalc_tool_kind kind;
    /**
     * How it is held.
     */
    threadcalc_holder holder;
    /**
     * The thread that it taps.
     */
    threadcalc_thread_t thread;
    /**
     * Its diameter in mm.
     */
    threadcalc_ratio_t diameter_mm;
    /**
     * A drill's point angle in degrees.
     */
    threadcalc_ratio_t point_angle_deg;
    /**
     * Threads of a tap's chamfer.
     */
    threadcalc_ratio_t chamfer_threads;
} threadcalc_tool_t;

/**
 * What a check gives next.
 */
typedef int32_t threadcalc_event;

/**
 * Where the expected thread of a hole is named.
 */
typedef int32_t threadcalc_thread_source;

/**
 * The stable id of a finding of a program.
 */
typedef int32_t threadcalc_program_finding;

/**
 * The name of a number that a finding of a program carries.
 */
typedef int32_t threadcalc_program_number;

/**
 * A number of a finding: a double, or a short text where text is not empty. Frozen.
 */
typedef struct {
    /**
     * What it is.
     */
    threadcalc_program_number key;
    /**
     * 0.
     */
    int32_t reserved;
    /**
     * The number, in the unit that the key names; 0 where there is a text.
     */
    double value;
    /**
     * A letter or a hand, "R", "LH"; else empty.
     */
    char text[16];
} threadcalc_program_number_t;

/**
 * What a line contributes to a finding.
 */
typedef int32_t threadcalc_evidence;

/**
 * A line that a finding rests on. Frozen.
 */
typedef struct {
    /**
     * What the line did.
     */
    threadcalc_evidence kind;
    /**
     * The line, from 1; 0: the control's own default or an input of the check.
     */
    uint32_t line;
} threadcalc_evidence_t;

/**
 * A tapped hole or a finding. New members are added at the end only; those of the other kind are 0.
 */
typedef struct {
    /**
     * Hole, finding or nothing.
     */
    threadcalc_event kind;
    /**
     * The line, from 1.
     */
    uint32_t line;
    /**
     * The number of the program that the line is in; -1 if it has none.
     */
    int64_t program;
    /**
     * The tool in the spindle, T; -1 if it is not known.
     */
    int64_t tool;
    /**
     * Which of the program's tapping blocks it is or speaks of, from 1; 0: none.
     */
    uint32_t hole;
    /**
     * Of a hole: how many holes, one behind the other.
     */
    uint32_t count;
    /**
     * The thread that is expected; all zeros if nobody names one.
     */
    threadcalc_thread_t thread;
    /**
     * Of a hole: who names the thread; 0: nobody.
     */
    threadcalc_thread_source source;
    /**
     * Of a hole: the hand that is cut; 0 if it depends on the control.
     */
    threadcalc_hand hand;
    /**
     * Of a hole: the lead that is cut, in mm; 0/0 if it cannot be computed.
     */
    threadcalc_ratio_t lead_mm;
    /**
     * Of a hole: S in turns per minute; 0/0 if it is not known.
     */
    threadcalc_ratio_t speed_rpm;
    /**
     * Of a hole: F in the program's unit and mode; 0/0 if it is not known.
     */
    threadcalc_ratio_t feed;
    /**
     * Of a hole: from the face to the tap's end, in mm; 0/0 if it is not known.
     */
    threadcalc_ratio_t depth_mm;
    /**
     * Of a finding: what it is.
     */
    threadcalc_program_finding id;
    /**
     * Of a finding: how bad it is.
     */
    threadcalc_severity severity;
    /**
     * Of a finding: where in the line it begins, in bytes from 1.
     */
    uint32_t column;
    /**
     * Of a finding: the column behind its end.
     */
    uint32_t end_column;
    /**
     * Of a finding: 0 if it rests on something assumed, else 1.
     */
    int32_t is_certain;
    /**
     * Of a finding: how many numbers it carries.
     */
    int32_t number_count;
    /**
     * Of a finding: how many lines it rests on.
     */
    int32_t evidence_count;
    /**
     * Of a finding: how many calls lead to the line, at most 4 of which are told.
     */
    int32_t call_count;
    /**
     * The numbers.
     */
    threadcalc_program_number_t numbers[12];
    /**
     * The lines that it rests on.
     */
    threadcalc_evidence_t evidence[8];
    /**
     * Lines of the calls that lead to the line, the outermost first.
     */
    uint32_t calls[4];
    /**
     * What to write instead; may be empty.
     */
    char suggestion[56];
    /**
     * Which reading of an unknown fact it holds under; may be empty.
     */
    char reading[96];
    /**
     * What will happen, in words.
     */
    char message[256];
    /**
     * Of a finding: 1 if the suggestion takes the place of what stands from column to end_column; else it is to be
     * added, or stands for a word of another block.
     */
    int32_t replaces;
    /**
     * Unused, 0.
     */
    int32_t reserved;
    /**
     * Of a hole: where it is in the program's X, in mm; of several the last one; 0/0 if it is not known.
     */
    threadcalc_ratio_t x_mm;
    /**
     * Of a hole: the same in Y.
     */
    threadcalc_ratio_t y_mm;
    /**
     * Of a hole: the unit that the program is in; 0 if it does not say.
     */
    threadcalc_unit unit;
    /**
     * Of a hole: the feed mode that holds; 0 if the program does not say.
     */
    threadcalc_mode feed_mode;
    /**
     * Of a hole: the work offset that both are counted from, "G54", "G54.1 P2".
     */
    char work_offset[24];
} threadcalc_program_event_t;

/**
 * Why something was not checked.
 */
typedef int32_t threadcalc_reason;

/**
 * How often something was not checked, and where first. New members are added at the end only.
 */
typedef struct {
    /**
     * Why; THREADCALC_REASON_UNSET behind the last.
     */
    threadcalc_reason reason;
    /**
     * How often.
     */
    uint32_t count;
    /**
     * The first line.
     */
    uint32_t first_line;
    /**
     * 0.
     */
    uint32_t reserved;
    /**
     * The reason in words.
     */
    char text[64];
} threadcalc_unchecked_t;

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
 * How a tap is built.
 */
typedef int32_t threadcalc_tap_kind;

/**
 * The screw of a joint. Frozen. All zeros: no screw. Strengths in MPa.
 */
typedef struct {
    /**
     * Property class: its tensile strength is a starting value where none is given.
     */
    threadcalc_property_class property_class;
    /**
     * 0.
     */
    int32_t reserved;
    /**
     * Class of its thread, "6g"; 6g or 2A if not given. Ends with a NUL or fills the member.
     */
    char tolerance_class[8];
    /**
     * Tensile strength.
     */
    threadcalc_ratio_t tensile_mpa;
    /**
     * Shear strength; 0.6 of the tensile strength if not given.
     */
    threadcalc_ratio_t shear_mpa;
    /**
     * Length of engagement in mm; the full thread depth if not given.
     */
    threadcalc_ratio_t engagement_mm;
    /**
     * Load along the axis in newtons.
     */
    threadcalc_ratio_t load_n;
} threadcalc_screw_t;

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
    /**
     * The drills that the shop owns, by name or diameter, instead of drill_sets; NULL without.
     */
    const threadcalc_drill_t *drill_list;
    /**
     * How many of them there are, at most 24.
     */
    size_t drill_list_count;
    /**
     * How much larger than the drill its hole is, in mm; the usual oversize if not given.
     */
    threadcalc_ratio_t oversize_mm;
    /**
     * Surface speed at the major diameter in m/min, instead of rpm.
     */
    threadcalc_ratio_t surface_speed_m_min;
    /**
     * Surface speed at the major diameter in ft/min, instead of rpm.
     */
    threadcalc_ratio_t surface_speed_ft_min;
    /**
     * How the tap is built.
     */
    threadcalc_tap_kind tap_kind;
    /**
     * Form of the tap's chamfer: planned on its longest.
     */
    threadcalc_chamfer_form chamfer_form;
    /**
     * How the tap is held; rigid if not given.
     */
    threadcalc_holder holder;
    /**
     * Material of the part, for starting values.
     */
    threadcalc_material material;
    /**
     * Whether a taper thread's hole is reamed to the taper before it is tapped; no if not given.
     */
    threadcalc_answer taper_reamer;
    /**
     * Where the tap returns to; the R plane if not given.
     */
    threadcalc_return_to return_to;
    /**
     * 0.
     */
    int32_t reserved;
    /**
     * How many of machine_gears there are, 0 to 4.
     */
    int32_t machine_gear_count;
    /**
     * What stands on the tap's shank, up to 96 bytes: it is judged against the job.
     */
    char tap_mark[104];
    /**
     * How far a taper pipe tap's small end projects through its ring gauge, in mm; of ASME B94.9 if not given.
     */
    threadcalc_ratio_t projection_mm;
    /**
     * How far the holder can be drawn out, in mm.
     */
    threadcalc_ratio_t holder_extension_mm;
    /**
     * How far the holder can be pushed in, in mm.
     */
    threadcalc_ratio_t holder_compression_mm;
    /**
     * Percent by which the feed stays below the lead; 0 if not given.
     */
    threadcalc_ratio_t underfeed_percent;
    /**
     * Turns that the spindle coasts on at the bottom of a hole; 0 if not given.
     */
    threadcalc_ratio_t over_travel_turns;
    /**
     * The hole that is already drilled, to the end of its full diameter, in mm.
     */
    threadcalc_ratio_t drill_depth_mm;
    /**
     * Thickness of the part at the hole, in mm.
     */
    threadcalc_ratio_t part_thickness_mm;
    /**
     * Diameter of the countersink at the face, in mm.
     */
    threadcalc_ratio_t countersink_mm;
    /**
     * Included angle of the countersink in degrees; 90 if not given.
     */
    threadcalc_ratio_t countersink_angle_deg;
    /**
     * Depth of a peck in mm; none if not given.
     */
    threadcalc_ratio_t peck_mm;
    /**
     * Wait at the bottom in seconds; 0 if not given.
     */
    threadcalc_ratio_t dwell_s;
    /**
     * Thickness of a plating that the thread is gauged after, in micrometres; 0 if not given.
     */
    threadcalc_ratio_t coating_um;
    /**
     * Specific cutting force in N/mm2 for kc P^2 D / 8000, instead of the material's starting value.
     */
    threadcalc_ratio_t cutting_force_n_mm2;
    /**
     * Shear strength of the part in MPa, for what the joint carries; without it the material has one to start from.
     */
    threadcalc_ratio_t part_shear_mpa;
    /**
     * How many such holes the part has, for the time.
     */
    threadcalc_ratio_t hole_count;
    /**
     * Feed limit of the axis that taps, in mm/min.
     */
    threadcalc_ratio_t machine_axis_feed_limit_mm_min;
    /**
     * How fast the spindle gains and loses speed, in rpm/s.
     */
    threadcalc_ratio_t machine_acceleration_rpm_s;
    /**
     * Speed on the way out over speed on the way in; 1 if not given.
     */
    threadcalc_ratio_t machine_retract_factor;
    /**
     * Turns that the tap needs above the face, whatever the holder.
     */
    threadcalc_ratio_t machine_least_clearance_turns;
    /**
     * The spindle's gears with their torque; none: torque is not checked.
     */
    threadcalc_gear_t machine_gears[4];
    /**
     * The screw that goes in, for what the joint carries.
     */
    threadcalc_screw_t screw;
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

/**
 * What holder, spindle and axis have to do for one hole. Frozen. A part that its has_ member denies is zeros.
 */
typedef struct {
    /**
     * 1 if torque and power_kw hold something: the job has a material or a cutting force.
     */
    int32_t has_torque;
    /**
     * 1 if gear holds something: the job has a torque and the machine gears.
     */
    int32_t has_gear;
    /**
     * 1 if axis holds something: the machine has a feed limit.
     */
    int32_t has_axis;
    /**
     * 1 if holder_travel holds something: the holder gives.
     */
    int32_t has_holder_travel;
    /**
     * Torque of the tap.
     */
    threadcalc_torque_band_t torque;
    /**
     * Power that the likely torque takes at the programmed speed, in kW; NaN without a torque.
     */
    double power_kw;
    /**
     * Time of all the holes of the part without the ways between them, in seconds; NaN without a count.
     */
    double all_holes_s;
    /**
     * The gear, for the largest torque of a new tap.
     */
    threadcalc_gear_fit_t gear;
    /**
     * Speeds and times from the R plane to the bottom and back, all strokes of a job with pecks.
     */
    threadcalc_tapping_time_t time;
    /**
     * The axis feed against its limit.
     */
    threadcalc_feed_fit_t axis;
    /**
     * How far the holder has to give.
     */
    threadcalc_holder_travel_t holder_travel;
} threadcalc_spindle_t;

/**
 * The class of a ground tap for ISO metric threads.
 */
typedef int32_t threadcalc_iso_tap_class;

/**
 * The tap class for a thread, plated or not. Frozen.
 */
typedef struct {
    /**
     * The class of ISO 2857; 0 if the standard has none: a tap of special size.
     */
    threadcalc_iso_tap_class tap_class;
    /**
     * 0.
     */
    int32_t reserved;
    /**
     * How much the plating closes the pitch diameter, and a special tap has to be larger.
     */
    threadcalc_ratio_t closing_mm;
} threadcalc_iso_tap_t;

/**
 * The letter of a tap's limit.
 */
typedef int32_t threadcalc_limit_letter;

/**
 * The limit of a ground tap: H3, D5. Frozen. All zeros are "not given".
 */
typedef struct {
    /**
     * The letter.
     */
    threadcalc_limit_letter letter;
    /**
     * The number, 1 to 30.
     */
    int32_t number;
} threadcalc_tap_limit_t;

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
    threadcalc_finding_t findings[20];
    /**
     * 1 if taper holds something: the thread is a taper one.
     */
    int32_t has_taper;
    /**
     * 1 if tap_class holds something: the thread is metric.
     */
    int32_t has_tap_class;
    /**
     * 1 if tap_limit holds something: an inch tap under a plating.
     */
    int32_t has_tap_limit;
    /**
     * 1 if joint holds something: the job speaks of a screw.
     */
    int32_t has_joint;
    /**
     * 1 if not_go holds something: how far NOT GO may enter has been read.
     */
    int32_t has_not_go;
    /**
     * 1 if countersink holds something: the job has one.
     */
    int32_t has_countersink;
    /**
     * Depths of a taper thread, whose depth is its size.
     */
    threadcalc_taper_depths_t taper;
    /**
     * The countersink and what it takes of the full thread.
     */
    threadcalc_countersunk_t countersink;
    /**
     * What holder, spindle and axis have to do.
     */
    threadcalc_spindle_t spindle;
    /**
     * Class of tap by ISO 2857.
     */
    threadcalc_iso_tap_t tap_class;
    /**
     * The H limit that leaves room for the plating.
     */
    threadcalc_tap_limit_t tap_limit;
    /**
     * What the joint carries.
     */
    threadcalc_engagement_t joint;
    /**
     * The gauges to fetch.
     */
    threadcalc_gauges_t gauges;
    /**
     * Minor diameter that a formed thread is judged by; 0/0 for cut threads and where none was read.
     */
    threadcalc_range_t formed_minor_mm;
    /**
     * How far NOT GO may enter.
     */
    threadcalc_not_go_rule_t not_go;
} threadcalc_plan_t;

/**
 * The side that a depth may be off to.
 */
typedef int32_t threadcalc_depth_rounding;

/**
 * A depth as a program says it. Frozen.
 */
typedef struct {
    /**
     * The number of the word without sign and letter: no trailing zeros, always a point, "19.75", "21.".
     */
    char text[32];
    /**
     * What a control reads back from it, in the unit of the program.
     */
    threadcalc_ratio_t value;
    /**
     * The same in mm.
     */
    threadcalc_ratio_t depth_mm;
} threadcalc_program_depth_t;

/**
 * How well something suits.
 */
typedef int32_t threadcalc_suits;

/**
 * How a kind of tap suits a kind of hole. Frozen.
 */
typedef struct {
    /**
     * How well it suits.
     */
    threadcalc_suits suits;
    /**
     * Why, in words.
     */
    char reason[124];
} threadcalc_tap_advice_t;

/**
 * What a form of chamfer is. Frozen.
 */
typedef struct {
    /**
     * The shortest chamfer of the form in threads.
     */
    threadcalc_ratio_t shortest_threads;
    /**
     * The longest chamfer of the form in threads. Plan on this one.
     */
    threadcalc_ratio_t longest_threads;
    /**
     * The kind of hole that the form is made for; 0 for both.
     */
    threadcalc_hole usual_hole;
    /**
     * 0.
     */
    int32_t reserved;
} threadcalc_chamfer_t;

/**
 * What the shank of a tap says; what it does not say is 0. Frozen.
 *
 * A mark given to a call may be one that was read, or one that the caller filled in.
 */
typedef struct {
    /**
     * The thread, without class; all zeros without one.
     */
    threadcalc_thread_t thread;
    /**
     * Left only if the shank says so; 0 is read as right.
     */
    threadcalc_hand hand;
    /**
     * 1 for 6HX: the maker's own limits for that class, usually towards its upper end.
     */
    int32_t own_limits;
    /**
     * 1 if the thread of the tap is ground: G or GROUND.
     */
    int32_t ground;
    /**
     * 1 for STI or EG: for a wire insert, larger than the screw's own thread.
     */
    int32_t wire_insert;
    /**
     * H, L or D limit.
     */
    threadcalc_tap_limit_t limit;
    /**
     * Class of ISO 2857.
     */
    threadcalc_iso_tap_class iso_class;
    /**
     * Form of the chamfer.
     */
    threadcalc_chamfer_form chamfer_form;
    /**
     * Where the first word begins that was not understood, in bytes.
     */
    int64_t not_read_at;
    /**
     * How many bytes that word is; 0 if all was understood.
     */
    int64_t not_read_length;
    /**
     * The class of thread that the tap is meant to cut, NUL-terminated; empty if there is none.
     */
    char tolerance_class[8];
} threadcalc_shank_mark_t;

/**
 * What a tap is wanted for. Begin with THREADCALC_TAP_JOB_INIT.
 */
typedef struct {
    /**
     * sizeof(threadcalc_tap_job_t).
     */
    uint32_t size;
    /**
     * Through or blind; 0 if it is not known.
     */
    threadcalc_hole hole;
    /**
     * 1 if the hole is for a wire insert, else 0.
     */
    int32_t wire_insert;
    /**
     * 0.
     */
    uint32_t reserved;
    /**
     * The thread; without a class it is judged by the standard's medium class. Required.
     */
    threadcalc_thread_t thread;
    /**
     * Thickness of a plating that the thread is gauged after, in um, 0 to 1000; left out: none.
     */
    threadcalc_ratio_t plating_um;
    /**
     * Threads of room for the chamfer, as for threadcalc_chamfer_fits; left out: not known.
     */
    threadcalc_ratio_t room_threads;
} threadcalc_tap_job_t;

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
 * What a tapped through hole is made of: mm, exact. Begin with THREADCALC_THROUGH_HOLE_REQUEST_INIT.
 */
typedef struct {
    /**
     * sizeof(threadcalc_through_hole_request_t).
     */
    uint32_t size;
    /**
     * Where the tap's length offset is set; required with a male centre.
     */
    threadcalc_tap_set_on tap_set_on;
    /**
     * Thickness of the part at the hole, above 0. Required.
     */
    threadcalc_ratio_t part_thickness_mm;
    /**
     * Threads of the tap's chamfer, 0 to 20; plan on the longest of its form. Required.
     */
    threadcalc_ratio_t chamfer_threads;
    /**
     * Turns that the spindle coasts on after the programmed depth, 0 to 20; left out: none.
     */
    threadcalc_ratio_t over_travel_turns;
    /**
     * The drilled hole's diameter. Required.
     */
    threadcalc_ratio_t drill_mm;
    /**
     * Point angle of the drill in degrees, above 60 and up to 180. Required.
     */
    threadcalc_ratio_t point_angle_deg;
    /**
     * How far the drill's full diameter has to come out, so that no burr is left. Required.
     */
    threadcalc_ratio_t drill_clearance_mm;
    /**
     * Length of the tap's male centre; left out: none.
     */
    threadcalc_ratio_t tap_centre_mm;
} threadcalc_through_hole_request_t;

/**
 * Depths of a tapped through hole in mm: from the face, and what comes out below the back face. Frozen.
 */
typedef struct {
    /**
     * To the point that the tap's length offset is set on: what the program says.
     */
    threadcalc_ratio_t program_tap_mm;
    /**
     * To the very end of the tap at its deepest: centre and over-travel included.
     */
    threadcalc_ratio_t tap_mm;
    /**
     * What of that comes out below.
     */
    threadcalc_ratio_t tap_below_mm;
    /**
     * To the end of the drill's full diameter.
     */
    threadcalc_ratio_t full_diameter_mm;
    /**
     * To the drill's point; derived.
     */
    double drill_point_mm;
    /**
     * What of that comes out below; derived.
     */
    double drill_below_mm;
} threadcalc_through_hole_t;

#ifdef __cplusplus
extern "C" {
#endif // __cplusplus

/**
 * The longest full thread in a blind hole that is drilled to a given depth: threadcalc_depths back.
 * chamfer_threads is 0 to 20, the longest of the tap's form. found_size is
 * sizeof(threadcalc_blind_thread_t).
 *
 * full diameter = depth, or depth - d/2 / tan(point angle / 2) for a depth to the point;
 * tap = full diameter - bottom clearance; full thread = tap - tap centre - chamfer threads x P. Exact; the
 * height of the point is taken to the next 0.000001 mm above (at 90 and 180 degrees it is exact).
 * Errors: missing, unknown-value, out-of-range (drill_depth_mm with the depth that has to be passed where
 * nothing is left for a full thread), does-not-apply (a taper thread), overflow, those of
 * threadcalc_thread_write, structure-size, unsupported-field.
 * Source: common practice; chamfer lengths by form: DIN 2197.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_full_thread_that_fits(
    const threadcalc_thread_t *thread,
    const threadcalc_blind_hole_t *hole,
    const threadcalc_ratio_t *chamfer_threads,
    threadcalc_blind_thread_t *found,
    size_t found_size,
    threadcalc_error_t *error);

/**
 * Every form of chamfer in a blind hole, A to F first: the full thread above its longest chamfer, and whether
 * that is what is wanted. B drives its chips to the bottom and never gives it.
 *
 * wanted_mm is the full thread wanted, above 0. count is how many readings there are, 10; with too little
 * room only count is written.
 * Errors: as threadcalc_full_thread_that_fits, but for a hole that is too shallow; buffer-too-short.
 * Source: DIN 2197 as tap makers print it.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_chamfers_for_full_thread(
    const threadcalc_thread_t *thread,
    const threadcalc_blind_hole_t *hole,
    const threadcalc_ratio_t *wanted_mm,
    threadcalc_chamfer_reading_t *readings,
    size_t capacity,
    size_t *count,
    threadcalc_error_t *error);

/**
 * The room below a tap in a blind hole whose depth is given to the drill's point. found_size is
 * sizeof(threadcalc_bottoming_t).
 *
 * full diameter = drill point - d/2 / tan(point angle / 2); room = full diameter - end of the tap. Less than
 * 0 is an error, 0 to 1 pitch a warning. tap_end_mm counts from the face to the very end of the tap, its
 * centre included. point_angle_deg may be NULL or 0/0: unknown; then every usual angle is answered: 118,
 * 130, 135 and 140 degrees. Exact; the height of the point is taken to the next 0.000001 mm above (at 90
 * and 180 degrees it is exact).
 * Errors: missing, out-of-range, overflow, those of threadcalc_thread_write, structure-size.
 * Source: common practice.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_bottoming(
    const threadcalc_thread_t *thread,
    const threadcalc_ratio_t *tap_end_mm,
    const threadcalc_ratio_t *drill_point_mm,
    const threadcalc_ratio_t *drill_mm,
    const threadcalc_ratio_t *point_angle_deg,
    threadcalc_bottoming_t *found,
    size_t found_size,
    threadcalc_error_t *error);

/**
 * The run-out of a blind hole for an ISO metric thread, in mm: the hole has to have its full diameter at
 * least to full thread + run-out. By pitch, for coarse and fine threads alike.
 *
 * Errors: missing, unknown-value, does-not-apply (another thread than M, the hole of a wire insert), not-sourced
 * (pitches that the table does not have, the short and the long run-out), contradiction (external thread), those of threadcalc_thread_write.
 * Source: DIN 76-1, run-out of blind tapped holes, e1.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_run_out(
    const threadcalc_thread_t *thread,
    threadcalc_run_out_kind run_out,
    threadcalc_ratio_t *run_out_mm,
    threadcalc_error_t *error);

/**
 * How much a coating of one thickness changes the diameters. growth_size is
 * sizeof(threadcalc_coating_growth_t).
 *
 * With a and b the flank angles: 2 t (1/cos a + 1/cos b) / (tan a + tan b) on the pitch diameter, 4 t on a 60
 * degree thread; the factors of other threads are to four decimals, rounded up. thickness_um is measured square
 * to the surface in um, 0 to 1000, and the same all over: thin even coats only, never hot-dip, paint or dipped
 * coats. A current plates crests and the first threads thicker: gauge after coating.
 * Errors: missing, out-of-range, those of threadcalc_thread_write, structure-size.
 * Source: Machinery's Handbook 27 p. 1793 (ASME B1.13M); derived for other flanks.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_coating_growth(
    const threadcalc_thread_t *thread,
    const threadcalc_ratio_t *thickness_um,
    threadcalc_coating_growth_t *growth,
    size_t growth_size,
    threadcalc_error_t *error);

/**
 * The limits of size to make a thread to, so that it keeps those of its class once it is coated, in mm, exact
 * and not rounded. limits_size is sizeof(threadcalc_limits_t).
 *
 * External: the largest less the growth by the thickest coating, the smallest less that by the thinnest; internal
 * the other way. In um, 0 to 1000; where only a nominal or smallest thickness is known, half as much again is
 * taken as the thickest. The limits of a class with an allowance (6g, 2A) are those before coating as they are:
 * see threadcalc_thickest_coating_um. The positions of ISO 965-4 and ISO 965-5 are another matter.
 * Errors: missing, out-of-range (also a band that takes the whole tolerance, with the thickest that does not,
 * and a coating that leaves no thread), contradiction (the thinnest is more than the thickest), those of
 * threadcalc_limits.
 * Source: Machinery's Handbook 27 p. 1793 (ASME B1.13M), external threads; internal threads likewise.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_limits_before_coating(
    const threadcalc_thread_t *thread,
    const threadcalc_ratio_t *thinnest_um,
    const threadcalc_ratio_t *thickest_um,
    threadcalc_limits_t *limits,
    size_t limits_size,
    threadcalc_error_t *error);

/**
 * The thickest coating that the allowance of the class has room for, in um, exact; 0 for a class without one.
 *
 * A quarter of the allowance on a 60 degree thread. The limits of such a class (6g, 2A) are those before
 * coating; once coated, GO of the basic size and NOT GO of the class gauge it. An allowance that is not the
 * coating's to use is kept by threadcalc_limits_before_coating.
 * Errors: not-sourced for holes of wire inserts and other threads than M, UN, UNR and pipe threads, those of
 * threadcalc_limits, does-not-apply (Rp and NPSC: no allowance).
 * Source: ASME B1.1, section on coated threads, as ASTM F1941 quotes it; metric: ISO 965-1, from memory.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_thickest_coating_um(
    const threadcalc_thread_t *thread,
    threadcalc_ratio_t *thickest_um,
    threadcalc_error_t *error);

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
 * The depth of a countersink, and the full thread that it takes away at the mouth of a tapped hole.
 * found_size is sizeof(threadcalc_countersunk_t).
 *
 * tip = C/2 / tan(angle/2); depth at major = (C - D)/2 / tan(angle/2), 0 if C is no larger than D; full
 * thread lost = (C - hole)/2 / tan(angle/2). countersink_mm is the diameter C at the face, larger than the
 * hole; angle_deg the included angle, 60 to 130; hole_mm the drilled hole, NULL or 0/0 for the basic minor
 * diameter.
 * Errors: missing, out-of-range, contradiction (external thread), does-not-apply (taper thread),
 * not-sourced (a profile that nobody has read), those of threadcalc_thread_write, structure-size.
 * Source: geometry; minor diameter: ISO 68-1, ASME B1.1, ISO 228-1, ISO 7-1, ASME B1.20.1.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_countersink(
    const threadcalc_thread_t *thread,
    const threadcalc_ratio_t *countersink_mm,
    const threadcalc_ratio_t *angle_deg,
    const threadcalc_ratio_t *hole_mm,
    threadcalc_countersunk_t *found,
    size_t found_size,
    threadcalc_error_t *error);

/**
 * The usual countersink of an ISO metric tapped hole: 1 to 1.05 times the nominal diameter, 120 degrees.
 * usual_size is sizeof(threadcalc_usual_countersink_t).
 *
 * Errors: does-not-apply (another thread than M, the hole of a wire insert), contradiction (external thread),
 * those of threadcalc_thread_write, structure-size.
 * Source: DIN 76-1, from memory; common practice.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_usual_countersink(
    const threadcalc_thread_t *thread,
    threadcalc_usual_countersink_t *usual,
    size_t usual_size,
    threadcalc_error_t *error);

/**
 * The spindle speed at which a diameter runs at a surface speed, in turns per minute, not rounded:
 * n = 1000 v / (pi D), v in m/min, D in mm. What the control holds of it is threadcalc_programmed_speed.
 *
 * Errors: missing, out-of-range (a diameter outside 0 to 2 000 mm, a surface speed outside 0 to
 * 20 000 m/min, or a speed above 1 000 000), overflow.
 * Source: tool makers' published formulas; common practice.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_spindle_speed(
    const threadcalc_ratio_t *diameter_mm,
    const threadcalc_ratio_t *surface_speed_m_min,
    double *rpm,
    threadcalc_error_t *error);

/**
 * The spindle speed at which a diameter in inches runs at a surface speed in feet per minute, in turns
 * per minute, not rounded: n = 12 v / (pi D).
 *
 * Errors: missing, out-of-range (a diameter outside 0 to 2 000 in, a surface speed outside 0 to
 * 20 000 ft/min, or a speed above 1 000 000), overflow.
 * Source: tool makers' published formulas; common practice.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_spindle_speed_feet(
    const threadcalc_ratio_t *diameter_in,
    const threadcalc_ratio_t *surface_speed_ft_min,
    double *rpm,
    threadcalc_error_t *error);

/**
 * The surface speed of a diameter at a spindle speed, in m/min: v = pi D n / 1000. Feet per minute are
 * m/min / 0.3048.
 *
 * Errors: missing, out-of-range (a diameter outside 0 to 2 000 mm, a speed outside 0 to 1 000 000 turns
 * per minute), overflow.
 * Source: tool makers' published formulas; common practice.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_surface_speed_m_min(
    const threadcalc_ratio_t *diameter_mm,
    const threadcalc_ratio_t *rpm,
    double *surface_speed,
    threadcalc_error_t *error);

/**
 * The torque of a tap from pitch and diameter. band_size is sizeof(threadcalc_torque_band_t).
 *
 * M = starts x factor x kc P^2 D / 8000, in Nm; kc in N/mm2 out of a table for this very formula, P and
 * the basic major diameter D in mm. factor: 1 for a cutting tap in a straight thread; see
 * threadcalc_forming_factor and threadcalc_taper_factor.
 * Errors: out-of-range (a force outside 50 to 20 000 N/mm2, a factor outside 0.1 to 20), those of
 * threadcalc_thread_write, structure-size.
 * Source: a tap maker's published formula; the band and the starts: common practice.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_torque_by_pitch(
    const threadcalc_thread_t *thread,
    double force_by_pitch_n_mm2,
    double factor,
    threadcalc_torque_band_t *band,
    size_t band_size,
    threadcalc_error_t *error);

/**
 * The torque of a cutting tap from the metal that the drilled hole leaves. band_size is
 * sizeof(threadcalc_torque_band_t).
 *
 * M = starts x factor x tan(theta) kc (D - Do)^2 (D + 2 Do) / 24000, in Nm; theta the angle of a flank, kc
 * in N/mm2 out of a table for this very formula, D and the hole Do in mm. factor: for the kind of tap, in
 * steel 1.35 (straight flutes), 1.15 (spiral flutes), 0.95 (spiral point).
 * Errors: missing, out-of-range (a hole outside 0 to the major diameter, a force outside 50 to
 * 20 000 N/mm2, a factor outside 0.1 to 20), does-not-apply (taper thread), those of
 * threadcalc_thread_write, structure-size.
 * Source: a tap maker's published formula; the band and the starts: common practice.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_torque_by_chip_area(
    const threadcalc_thread_t *thread,
    const threadcalc_ratio_t *drill_mm,
    double force_by_chip_area_n_mm2,
    double factor,
    threadcalc_torque_band_t *band,
    size_t band_size,
    threadcalc_error_t *error);

/**
 * The cutting forces of a group of materials to start from. forces_size is
 * sizeof(threadcalc_starting_forces_t).
 *
 * Errors: missing, unknown-value, structure-size.
 * Source: a tap maker's published tables, one for each formula; aluminium from memory of the trade.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_starting_forces(
    threadcalc_material material,
    threadcalc_starting_forces_t *forces,
    size_t forces_size,
    threadcalc_error_t *error);

/**
 * How much more torque a form tap takes than a cutting tap in the same thread: 2 to 3, start at 2.5.
 * range_size is sizeof(threadcalc_factor_range_t).
 *
 * Errors: structure-size.
 * Source: a tap maker's published rule; the start, its middle: a judgement.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_forming_factor(
    threadcalc_factor_range_t *range,
    size_t range_size,
    threadcalc_error_t *error);

/**
 * How much more torque a taper pipe tap takes, which cuts on its whole length: 2 to 3, start at 2.5.
 * range_size is sizeof(threadcalc_factor_range_t).
 *
 * Errors: structure-size.
 * Source: common practice.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_taper_factor(
    threadcalc_factor_range_t *range,
    size_t range_size,
    threadcalc_error_t *error);

/**
 * The power that a torque takes at a speed, in kW: P = 2 pi M n / 60000.
 *
 * Errors: missing, out-of-range (a torque outside 0 to 1 000 000 Nm, a speed outside 0 to 1 000 000 turns
 * per minute).
 * Source: mechanics; derived.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_power_kw(
    double torque_nm,
    const threadcalc_ratio_t *rpm,
    double *power,
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
 * D - 1.082532 P x percent/100 on 5H/8, D - 0.68 P x percent/100 for a form tap. The others
 * have their own height: MJ and UNJ 0.974279 P, S 0.96 P, BSW, BSF, G and Rp 1.280655 P, BA 1.2 P to 0.01 mm,
 * buttress 1.2 P, Tr and ACME P, stub ACME 0.6 P; NPSC and NPSM: E1 + 0.8 P - 1.6 P x percent/100. D is the
 * hole's own, of a wire insert larger than the screw's.
 *
 * percent is above 0 and up to 100. basis is required for a cut tap in M and UN, and an error for a form tap and
 * for all other threads.
 * Errors: missing, unknown-value, contradiction (a basis that has no place, external thread),
 * out-of-range, does-not-apply (taper thread; formed Tr, ACME, buttress), not-sourced (NPSF; other formed
 * threads that are not of 60 degrees), those of threadcalc_thread_write.
 * Source: Machinery's Handbook 31 (3H/4); ISO 68-1 (5H/8); form taps: common practice; own heights: those of
 * threadcalc_profile, ISO 228-1:2000 and ASME B1.20.1-1983.
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
 * The drill of the sets, or of a list of drills, for a tapped hole. found_size is
 * sizeof(threadcalc_tap_drill_t).
 *
 * With a percent: the drill nearest to that hole, whatever the limits. Without: the drill nearest to
 * D - P within the class's minor-diameter limits (cut), or nearest to D - P/2 (form). MJ, UNJ and BA take
 * D - 0.9 P, S D - 0.8 P, Tr and ACME D - 0.95 P, stub ACME D - 0.57 P, buttress D - 1.14 P. Ties go to the
 * larger. A thread without a class is judged by the standard's medium class, with a finding.
 * NPT, NPTF: nearest to K0 = E0 - 0.8 p, with taper reamer to K0 - 3 p/16. Rc: the smallest drill not
 * below D1 at the face, with taper reamer nearest to D1 - useful thread/16. Without a taper reamer
 * finding taper-hole says how deep the threads are full.
 * A list is chosen from by the same rule; no-drill gives the nearest of the list and the range that would do.
 * Errors: missing, unknown-value, contradiction (also a taper reamer in a straight thread, sets
 * beside a list), out-of-range, too-long (more than 24 drills), not-exact (a drill of the list), no-drill, does-not-apply (percent or form tap in a taper thread), those of threadcalc_thread_write,
 * structure-size, unsupported-field.
 * Source: ISO 2306 (D - P); Machinery's Handbook 31 (percent); ASME B94.9-2008 (NPT, direct tapping);
 * form taps, taper reamer, Rc and the rules of the other straight threads: common practice.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_tap_drill(
    const threadcalc_thread_t *thread,
    const threadcalc_tap_drill_request_t *drill_request,
    threadcalc_tap_drill_t *found,
    size_t found_size,
    threadcalc_error_t *error);

/**
 * What a screw and a tapped hole carry together, at the limits of size that overlap least. found_size is
 * sizeof(threadcalc_engagement_t).
 *
 * L = length - length without full thread; At = pi/4 ((d2 + d3)/2)^2 (M), pi/4 (D - 0.9743/n)^2 (UN);
 * ASs = pi n L D1max (1/(2n) + 0.57735 (d2min - D1max)); ASn = pi n L dmin (1/(2n) + 0.57735 (dmin - D2max));
 * loads are At x tensile strength, ASs and ASn x shear strengths; D1max is the hole as drilled if it is given.
 * Static loads along the axis that the threads share evenly: no bending, no fatigue, no temperature, no
 * torque. Structural, pressure and lifting joints belong to the engineer responsible.
 * Errors: missing, class-unset, not-sourced, contradiction (sides swapped, two different threads, classes
 * without overlap, a load without its flag), does-not-apply (another thread than M, MJ, UN, UNR and UNJ,
 * the hole of a wire insert), unknown-value (flag),
 * out-of-range (lengths up to 10 000 mm, strengths 0.000001 to 100 000 MPa, drilled hole, load), those of
 * threadcalc_thread_write, structure-size, unsupported-field.
 * Source: FED-STD-H28/2B and ASME B1.1 appendix B (shear areas, length of engagement, J); ISO 898-1 (At
 * of M); ASME B1.1 (At of UN).
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_engagement(
    const threadcalc_thread_t *internal,
    const threadcalc_thread_t *external,
    const threadcalc_engagement_request_t *engagement_request,
    threadcalc_engagement_t *found,
    size_t found_size,
    threadcalc_error_t *error);

/**
 * The smallest tensile strength of a screw of a property class and of this nominal diameter, and 0.6 of it as
 * shear strength. found_size is sizeof(threadcalc_starting_strength_t).
 *
 * Class 8.8 has 800 MPa up to 16 mm and 830 MPa above; class 9.8 ends at 16 mm. A measured or specified shear
 * strength comes first.
 * Errors: missing, unknown-value, out-of-range (a diameter below 1.6 mm, above 39 mm, above 16 mm in class
 * 9.8), structure-size.
 * Source: ISO 898-1:2013 scope and table 3, from memory; shear: common practice for steel.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_starting_strength(
    threadcalc_property_class property_class,
    const threadcalc_ratio_t *diameter_mm,
    threadcalc_starting_strength_t *found,
    size_t found_size,
    threadcalc_error_t *error);

/**
 * The tensile strength that the weakest usual material of a group has, and 0.6 of it as shear strength: for the
 * threads of a tapped part. found_size is sizeof(threadcalc_starting_strength_t).
 *
 * The groups with a range stand at its lower end. Of the others: free-cutting steel 11SMn30, grey cast iron
 * EN-GJL-150, copper alloy leaded gunmetal as cast, aluminium EN AW-5754 soft. Pure aluminium and castings of
 * aluminium carry less: the material's certificate comes first.
 * Errors: missing, unknown-value, structure-size.
 * Source: EN 10087, EN 1561, EN 485-2 and the ranges of the groups, from memory; shear: common practice.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_starting_part_strength(
    threadcalc_material material,
    threadcalc_starting_strength_t *found,
    size_t found_size,
    threadcalc_error_t *error);

/**
 * Whether a length of engagement is short, normal or long for a metric thread. found_size is
 * sizeof(threadcalc_engagement_lengths_t).
 *
 * The standard's table, and where it has nothing its formula, 2.24 P d^0.2 and 6.7 P d^0.2 with the smallest
 * diameter of the thread's step, to 0.01 mm: the confidence says so. The limits of size of a class are the same
 * for every group: what changes is the class that is recommended, threadcalc_recommended_class.
 * Errors: missing, out-of-range (0 to 10000 mm), does-not-apply (threads other than ISO metric M),
 * not-sourced (outside 1 to 355 mm and pitches of 0.2 to 8 mm), those of threadcalc_thread_write, structure-size.
 * Source: ISO 965-1, table of lengths of engagement; the formula from memory.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_engagement_group(
    const threadcalc_thread_t *thread,
    const threadcalc_ratio_t *length_mm,
    threadcalc_engagement_lengths_t *found,
    size_t found_size,
    threadcalc_error_t *error);

/**
 * The class of tolerance of metric threads that is recommended for a group of engagement: position H inside, h for
 * fine and g for other external threads; the empty text where there is none (short and coarse). At most 5 bytes.
 *
 * Up to 1.4 mm the medium class of normal engagement is 5H and 6h.
 * Errors: missing, unknown-value, buffer-too-short.
 * Source: ISO 965-1, recommended classes, from memory; the grades of internal threads as tap makers print them.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_recommended_class(
    threadcalc_side side,
    threadcalc_engagement_group_kind group,
    threadcalc_fit_quality quality,
    char *text,
    size_t capacity,
    size_t *needed,
    threadcalc_error_t *error);

/**
 * The limits of size of the tolerance class where this much of a Unified thread engages. limits_size is
 * sizeof(threadcalc_limits_t).
 *
 * The tolerance of the pitch diameter counts with the length of engagement LE: 0.0015 D^(1/3) +
 * 0.0015 sqrt(LE) + 0.015 P^(2/3) of 2A, in inches. The standard's tables, and threadcalc_limits, take LE = D for
 * UNC, UNF, 4-UN, 6-UN and 8-UN and hold up to 1.5 D; for the others LE = 9 P, and they hold from 5 P to 15 P.
 * The source says whether they hold for this length. Only the far limit of the pitch diameter moves; a drawing
 * that wants other limits than those of the tables gives them itself. Threads of other standards have the limits
 * of threadcalc_limits at every length.
 * Errors: missing, out-of-range (0 to 10000 mm), not-sourced for UNJ and for inch holes of wire inserts, those of
 * threadcalc_limits.
 * Source: ASME B1.1-2003, formulas for limits of size; for which lengths the tables hold, and that the allowance
 * stays, from memory.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_limits_at(
    const threadcalc_thread_t *thread,
    const threadcalc_ratio_t *length_mm,
    threadcalc_limits_t *limits,
    size_t limits_size,
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
 * The whole speeds next below and next above rpm at which a feed word per minute is exact and which the
 * control can hold, from half of rpm to its double and within lowest and highest. 0: there is none.
 *
 * decimals is 0 to 9. A control holds the multiples of step; NULL or 0/0: every whole speed. lowest and
 * highest: NULL or 0/0 for no limit.
 * Errors: missing, unknown-value, out-of-range, overflow.
 * Source: derived; the multiples of the denominator of lead x 10^decimals.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_nearest_exact_speeds(
    const threadcalc_ratio_t *lead_mm,
    const threadcalc_ratio_t *rpm,
    threadcalc_unit unit,
    int32_t decimals,
    const threadcalc_ratio_t *step,
    const threadcalc_ratio_t *lowest,
    const threadcalc_ratio_t *highest,
    int64_t *below,
    int64_t *above,
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
 * Which gauges to fetch for a thread, with the limits they stand for. found_size is
 * sizeof(threadcalc_gauges_t).
 *
 * Hole: GO plug (smallest pitch and major diameter), NOT GO plug (largest pitch diameter), GO and NOT GO
 * plain plug (smallest and largest minor diameter). Screw: GO ring (largest pitch and minor diameter), NOT GO
 * ring (smallest pitch diameter), GO and NOT GO plain ring or snap (largest and smallest major diameter).
 * Taper: one plug or ring, read by its turns. A thread without a side is taken as a hole. A size is 0/0 where
 * the standard's limit has not been read; the gauge is to be fetched all the same.
 * Errors: those of threadcalc_thread_write, overflow, structure-size.
 * Source: ISO 1502 and ASME B1.2 for what a gauge checks, from memory; the limits' own sources.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_gauges(
    const threadcalc_thread_t *thread,
    threadcalc_gauges_t *found,
    size_t found_size,
    threadcalc_error_t *error);

/**
 * How far the NOT GO thread gauge of a thread may go. rule_size is sizeof(threadcalc_not_go_rule_t).
 *
 * Errors: does-not-apply (taper thread), not-sourced (another thread than M, UN, UNR and UNJ, the
 * hole of a wire insert), those of threadcalc_thread_write,
 * structure-size.
 * Source: ISO 1502:1996 and ASME B1.2-1983 as gauge makers quote them; the remark on ISO 1502 from memory.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_not_go_rule(
    const threadcalc_thread_t *thread,
    threadcalc_not_go_rule_t *rule,
    size_t rule_size,
    threadcalc_error_t *error);

/**
 * The wire that touches the flanks at the pitch line, in mm: P / (2 cos a), a the angle of a flank; 60
 * degrees: 0.577350 P, 55 degrees: 0.563691 P.
 *
 * Errors: does-not-apply (taper thread, unequal flanks), those of threadcalc_thread_write.
 * Source: FED-STD-H28, from memory; a handbook page prints 0.57735 P.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_best_wire_mm(
    const threadcalc_thread_t *thread,
    double *wire_mm,
    threadcalc_error_t *error);

/**
 * The measurement over three wires, in mm: E - (P/2) cot a + W (1 + cosec a), E the pitch diameter, W the
 * wire, a the angle of a flank.
 *
 * lead_angle is 1 to add (W/2) tan2(lead angle) cos a cot a for the tilt of the wires, else 0; most shop
 * tables leave it out. The flattening of wires and flanks under the measuring force is in neither.
 * Errors: out-of-range for a wire that does not rest on the flanks (60 degrees: 0.56 to 0.90 P; 55 degrees:
 * 0.506 to 0.853 P) or a pitch diameter that is not the thread's (major diameter - 2 P to + P); missing,
 * unknown-value (lead_angle), does-not-apply (taper thread, unequal flanks), those of threadcalc_thread_write.
 * Source: FED-STD-H28 from memory; without its last term as a model engineers' handbook prints it, with its
 * range of wires for 60 degrees; the range for 55 degrees from memory.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_over_wires(
    const threadcalc_thread_t *thread,
    const threadcalc_ratio_t *wire_mm,
    const threadcalc_ratio_t *pitch_diameter_mm,
    int32_t lead_angle,
    double *over_wires_mm,
    threadcalc_error_t *error);

/**
 * What to do after gauging a tapped hole. next_size is sizeof(threadcalc_next_move_t).
 *
 * turns: until the gauge stops; of a taper plug turns from flush, above 0 outside the hole, where the thread
 * is small. NULL or 0/0 for a GO that goes to the full depth. required_turns: the depth of full thread that
 * is asked for over the lead; needed for a GO that stops, not looked at otherwise. The verdict is by this gauge.
 * GO to full depth: good. GO stops below 1 turn: it does not start; names, burr, chips, new tap, larger tap.
 * GO stops later: clean, tap deeper by the missing turns x lead, new tap, larger tap. NOT GO beyond its rule:
 * stop, feed, axial force, cutting, smaller tap for the next hole; this one is too large. Taper plug beyond
 * its turns: out, tap deeper with the same R; in, the next hole less deep, this one is too large.
 * Errors: missing, unknown-value (result), contradiction (turns of a GO that goes to the full depth),
 * does-not-apply (external thread, a gauge of another kind of thread), not-sourced (NOT GO where
 * threadcalc_not_go_rule has none), out-of-range (turns outside 0 to 1000, taper plug -20 to 20), overflow, those of
 * threadcalc_thread_write, structure-size.
 * Source: common practice; how far NOT GO may enter: threadcalc_not_go_rule; taper threads: their gauge's
 * turns.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_next_move(
    const threadcalc_thread_t *thread,
    threadcalc_gauge_reading result,
    const threadcalc_ratio_t *turns,
    const threadcalc_ratio_t *required_turns,
    threadcalc_next_move_t *next,
    size_t next_size,
    threadcalc_error_t *error);

/**
 * The depth that brings a taper plug flush, with the same R, exact: depth + stand-off turns x lead.
 *
 * depth_mm is the tapping depth of the program, below the face. stand_off_turns, -20 to 20: above 0 the plug
 * stands out and the thread is small; below 0 it sinks in, and the new depth is for the next hole.
 * Errors: missing, does-not-apply (straight thread), out-of-range (a depth outside 0 to 10000 mm, before or
 * after), overflow, those of threadcalc_thread_write.
 * Source: derived.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_trimmed_depth_mm(
    const threadcalc_thread_t *thread,
    const threadcalc_ratio_t *depth_mm,
    const threadcalc_ratio_t *stand_off_turns,
    threadcalc_ratio_t *new_depth_mm,
    threadcalc_error_t *error);

/**
 * The R plane nearest to a wanted one that lies whole pitches from the R that the hole was tapped from; ties
 * go away from the part. again_size is sizeof(threadcalc_re_entry_t).
 *
 * Both are Z of one work offset, and grow away from the part. The rest of threadcalc_re_entry_rule has to hold
 * as well. With several starts a whole pitch finds the next start's groove, which is as good.
 * Errors: missing, out-of-range (a pitch outside 0 to 1000 mm, planes beyond 10000 mm either way), overflow,
 * structure-size.
 * Source: derived.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_re_entry_r(
    const threadcalc_ratio_t *r_mm,
    const threadcalc_ratio_t *pitch_mm,
    const threadcalc_ratio_t *wanted_mm,
    threadcalc_re_entry_t *again,
    size_t again_size,
    threadcalc_error_t *error);

/**
 * What has to hold when a tap enters a tapped hole again, in words. Never NULL.
 */
THREADCALC_API const char *THREADCALC_CALL threadcalc_re_entry_rule(void);

/**
 * Finds the gear for a speed and a torque, and the largest speed that would do. gears has gear_count
 * gears, 1 to 6; fit_size is sizeof(threadcalc_gear_fit_t).
 *
 * Where ranges overlap the gear with the most torque is taken, the first on a tie. A control that chooses
 * by the speed alone may take another one: force the range by its code. Ask with high_nm of a torque band
 * for a new tap, with worn_nm for its end.
 * Errors: missing, contradiction (a lowest speed above the highest, points that do not ascend),
 * out-of-range (no gear or more than 6, no point or more than 8, points that do not reach over the range,
 * a torque below 0, a speed not above 0), overflow, structure-size, unsupported-field.
 * Source: derived.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_gear_fit(
    const threadcalc_gear_t *gears,
    size_t gear_count,
    double torque_nm,
    const threadcalc_ratio_t *rpm,
    threadcalc_gear_fit_t *fit,
    size_t fit_size,
    threadcalc_error_t *error);

/**
 * The room from the R plane to the face that is in use. found_size is
 * sizeof(threadcalc_holder_clearance_t).
 *
 * Rigid: 2 P to 5 P; the others: 5 P to 10 P or 12 mm, whichever is more, so that the holder centres again.
 * The larger of this and threadcalc_turns_to_speed decides.
 * Errors: missing, unknown-value, overflow, those of threadcalc_thread_write, structure-size.
 * Source: common practice; floating holders as tension and compression ones: a judgement.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_holder_clearance(
    const threadcalc_thread_t *thread,
    threadcalc_holder holder,
    threadcalc_holder_clearance_t *found,
    size_t found_size,
    threadcalc_error_t *error);

/**
 * How far a tension and compression holder has to give in a hole. found_size is
 * sizeof(threadcalc_holder_travel_t).
 *
 * At depth: under-feed percent / 100 x depth, behind the tap an extension, before it a compression; at the
 * stop: the same + over-travel turns x lead, for the spindle coasts on while the axis stands. depth_mm:
 * from the face to the end of the stroke. A negative under-feed is a feed above the lead, which presses the
 * tap into the holder.
 * Errors: missing, out-of-range (lead 0 to 1 000 mm, depth 0 to 10 000 mm, under-feed -20 to 20 %,
 * over-travel 0 to 20 turns), overflow, structure-size.
 * Source: derived.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_holder_travel(
    const threadcalc_ratio_t *lead_mm,
    const threadcalc_ratio_t *depth_mm,
    const threadcalc_ratio_t *underfeed_percent,
    const threadcalc_ratio_t *over_travel_turns,
    threadcalc_holder_travel_t *found,
    size_t found_size,
    threadcalc_error_t *error);

/**
 * Whether a holder with this much extension and compression has room for what threadcalc_holder_travel
 * finds: fits is 1 or 0.
 *
 * Errors: those of threadcalc_holder_travel; missing and out-of-range (denominator 0) also for the room.
 * Source: derived.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_holder_fits(
    const threadcalc_ratio_t *lead_mm,
    const threadcalc_ratio_t *depth_mm,
    const threadcalc_ratio_t *underfeed_percent,
    const threadcalc_ratio_t *over_travel_turns,
    const threadcalc_ratio_t *extension_mm,
    const threadcalc_ratio_t *compression_mm,
    int32_t *fits,
    threadcalc_error_t *error);

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
 * The standard pitches that a lead may be, nearest first and the finer one first on a tie: those within the
 * tolerance; where there is none, or one that another is as near as, the two nearest. There are at most 54.
 *
 * lead_mm is above 0 and up to 1000; within is the relative tolerance, 0 to 1/4, and 7/2000 where it is
 * NULL or 0/0; starts are those declared, up to 12, and 1 where it is 0: more are never inferred, and a lead
 * alone never gives a diameter. One pitch within the tolerance is identified, more are ambiguous, and so are
 * two within 0.45 % where the nearest is not within 0.35 %. found_size is
 * sizeof(threadcalc_identification_t). A holder that is under-fed on purpose shortens the lead by more than
 * pitches lie apart: use the declared thread there.
 * Errors: missing, out-of-range, overflow, structure-size, buffer-too-short (count is how many there are).
 * Source: the pitches of ISO 261, ASME B1.1, ISO 228-1, ISO 7-1, ASME B1.20.1 and B1.20.3; derived.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_identify(
    const threadcalc_ratio_t *lead_mm,
    const threadcalc_ratio_t *within,
    int32_t starts,
    threadcalc_identification_t *found,
    size_t found_size,
    threadcalc_match_t *matches,
    size_t capacity,
    size_t *count,
    threadcalc_error_t *error);

/**
 * The standard pitches that feed and speed of a program may be, as threadcalc_identify gives them.
 *
 * The lead is feed / speed, or the feed itself per revolution. A word that is written with all the decimals
 * that the control takes may be rounded: it stands for everything within half of its last digit, and the
 * tolerance is counted from the nearest of these leads.
 * Errors: missing, unknown-value, contradiction (a speed per revolution, a value with more decimals than are
 * said to be written), out-of-range, overflow, structure-size, unsupported-field, buffer-too-short (count is
 * how many there are).
 * Source: ISO 6983-1 (F with G94 and G95); 1 in = 25.4 mm exactly; derived.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_identify_feed(
    const threadcalc_feed_words_t *words,
    threadcalc_identification_t *found,
    size_t found_size,
    threadcalc_match_t *matches,
    size_t capacity,
    size_t *count,
    threadcalc_error_t *error);

/**
 * The standard threads of a pitch and about a diameter, with these starts. There may be none.
 *
 * pitch_mm as a match gives it, diameter_mm as a table of tools or a comment gives it: a basic major
 * diameter within 0.0127 mm (0.0005 in) of it is the same. starts 0 is read as 1; pipe threads have one.
 * Errors: missing, out-of-range, overflow, buffer-too-short (count is how many there are).
 * Source: as threadcalc_standard_threads; the room of the diameter is derived from three decimals of an
 * inch.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_threads_of_pitch(
    const threadcalc_ratio_t *pitch_mm,
    const threadcalc_ratio_t *diameter_mm,
    int32_t starts,
    threadcalc_thread_t *threads,
    size_t capacity,
    size_t *count,
    threadcalc_error_t *error);

/**
 * The drill that a name or a diameter means: "6.8", "6.8 mm", "#7", "No. 7", "F", "13/64", "1 1/64", "0.2010 in".
 *
 * A number without a unit is in mm, also a whole one (the 2 inch drill is "2 in"); a fraction is in inches. A diameter that stands in no set is a drill
 * named by its diameter.
 * Errors: empty, unreadable, unknown-value (#98), out-of-range, those of threadcalc_read_number.
 * Source: as threadcalc_drills.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_read_drill(
    const uint8_t *name,
    size_t length,
    threadcalc_drill_t *drill,
    threadcalc_error_t *error);

/**
 * The hole that a drill probably leaves in average work, in mm: drills cut larger than they are.
 *
 * Number, letter and fractional drills: the mean oversize printed for the drill, between two drills by a
 * straight line to 0.0001 in: #7 0.2010 leaves 0.2048. Others: 0.075 mm, below 3.5 mm the inch drills'
 * where it is less. oversize_mm, 0 or more, takes the place of both; NULL or 0/0: the usual.
 * Errors: not-sourced (below 3/64 in; inch drills above 1 3/64 in), out-of-range, those of
 * threadcalc_drill_named.
 * Source: a tap maker's tap drill chart (inch); a drill maker's tap drill page (metric mean 0.075 mm).
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_probable_hole(
    const threadcalc_drill_t *drill,
    const threadcalc_ratio_t *oversize_mm,
    threadcalc_ratio_t *hole_mm,
    threadcalc_error_t *error);

/**
 * The usual window of the hole for a form tap, smallest and largest diameter in mm: 75 and 65 % of its own
 * height, D - 0.68 P x percent/100. The tap maker's window goes before it.
 *
 * Errors: not-sourced (no thread of 60 degrees), does-not-apply (Tr, ACME, buttress), contradiction (external
 * thread), out-of-range, those of threadcalc_thread_write.
 * Source: common practice.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_form_hole(
    const threadcalc_thread_t *thread,
    threadcalc_ratio_t *least_mm,
    threadcalc_ratio_t *most_mm,
    threadcalc_error_t *error);

/**
 * Judges a drill for a tapped hole as threadcalc_tap_drill judges the one it chooses; no alternatives.
 * found_size is sizeof(threadcalc_tap_drill_t).
 *
 * oversize_mm is how much larger than the drill its hole is; NULL or 0/0: the usual. Finding other-taps-hole:
 * the other kind of tap takes this hole. Finding oversize-over-limit: the drill is within the limits and its
 * probable hole is not.
 * Errors: those of threadcalc_percent_thread, threadcalc_drill_named and threadcalc_probable_hole
 * (out-of-range).
 * Source: as threadcalc_tap_drill and threadcalc_probable_hole; the other tap's hole: common practice.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_judge_drill(
    const threadcalc_thread_t *thread,
    const threadcalc_drill_t *drill,
    threadcalc_tap tap,
    threadcalc_basis basis,
    const threadcalc_ratio_t *oversize_mm,
    threadcalc_tap_drill_t *found,
    size_t found_size,
    threadcalc_error_t *error);

/**
 * The limits of size of the thread's tolerance class. limits_size is sizeof(threadcalc_limits_t).
 *
 * Beside M, UN, G, Rp, NPSC and NPSM: MJ and UNJ (minor diameters not read but the smallest of UNJ's hole), holes for
 * wire inserts in M and UN, Tr of one start over 5.6 to 180 mm (of both the hole's largest minor diameter not read),
 * ACME 2G 3G 4G and stub ACME 2G (the far limits of its roots not read) of one start, holes with buttress threads of
 * class 2 (major diameter not read), BA No. 0 to 16 (close bolts No. 0 to 10; normal: bolts, and all holes). A limit
 * that has not been read is 0/0.
 *
 * Errors: class-unset (no class; or a class of both sides, such as 2G, without a side), unknown-class (an external
 * M class whose crest grade does not exist; close bolts from No. 11 BA), not-sourced (the
 * standard's values have not been read; the hint says which have), does-not-apply (a taper thread is gauged by
 * turns: see threadcalc_pipe, threadcalc_taper_depths), those of threadcalc_thread_write, structure-size.
 * Source: ISO 965-1:2013; ASME B1.1-2003; ISO 228-1:2000 (G); ISO 7-1:1994 (Rp); ASME B1.20.1-1983 (NPSC,
 * NPSM); ISO 2903:2016 with GOST 24739-81; ASME B1.5-1997; ASME B1.9-1973; BS 93; ISO 5855-1:1999; ASME B1.15-1995
 * and SAE AS8879D; ASME B18.29.1-2010 and B18.29.2M-2005. The structure says which.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_limits(
    const threadcalc_thread_t *thread,
    threadcalc_limits_t *limits,
    size_t limits_size,
    threadcalc_error_t *error);

/**
 * The speed that a tapping stroke reaches, and the time that the hole takes. found_size is
 * sizeof(threadcalc_tapping_time_t).
 *
 * Assumed: the axis follows the turning spindle exactly; the spindle starts at rest at the R plane, gains
 * speed at a constant rate, holds it, loses it at the same rate and stands still at the bottom; it waits;
 * the same back. A control that smooths its ramps takes longer. With a peck the tap goes back to the R plane
 * after every stroke, at the speed of the way out, and in again from there: a control that only breaks the
 * chip at each peck takes less than this. N = travel / lead turns; n in turns per minute, a in turns per
 * minute per second:
 * n^2 / (60 a) up to N: t = 60 N / n + n / a, reached = n; else t = 2 reached / a, reached = sqrt(60 a N);
 * out: the same with n x retract factor; turns to speed = n^2 / (120 a); pecks: the sums over strokes of peck,
 * 2 peck, 3 peck and at last travel.
 * Errors: missing, unknown-value (flag), contradiction (an acceleration without its flag), out-of-range
 * (lead 0 to 1 000 mm, speed 0 to 1 000 000, travel 0 to 10 000 mm, acceleration 1 to 10 000 000, retract
 * factor 0.1 to 1 000, dwell 0 to 1 000 000 s, peck from a thousandth of the travel to all of it), overflow, structure-size, unsupported-field.
 * Source: mechanics; derived.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_tapping_time(
    const threadcalc_motion_request_t *motion_request,
    threadcalc_tapping_time_t *found,
    size_t found_size,
    threadcalc_error_t *error);

/**
 * Turns that the spindle makes from standstill to a speed: what the tap needs above the face if it is to
 * enter at full speed. N = n^2 / (120 a), n in turns per minute, a in turns per minute per second.
 *
 * Errors: missing, out-of-range (a speed outside 0 to 1 000 000, an acceleration outside 1 to 10 000 000).
 * Source: mechanics; derived.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_turns_to_speed(
    const threadcalc_ratio_t *rpm,
    double acceleration_rpm_s,
    double *turns,
    threadcalc_error_t *error);

/**
 * The speed that the spindle has after a number of turns from standstill, in turns per minute:
 * n = sqrt(120 a N), a in turns per minute per second.
 *
 * Errors: out-of-range (turns outside 0 to 1 000 000, an acceleration outside 1 to 10 000 000).
 * Source: mechanics; derived.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_speed_after_turns(
    double turns,
    double acceleration_rpm_s,
    double *rpm,
    threadcalc_error_t *error);

/**
 * Checks the axis feed that a lead and a speed ask for against the axis' limit, which some controls clamp
 * silently and then cut the wrong pitch. fit_size is sizeof(threadcalc_feed_fit_t).
 *
 * feed = lead x n; retract feed = feed x retract factor; fastest n = limit / (lead x the larger of 1 and
 * the retract factor). retract_factor may be NULL or 0/0: 1.
 * Errors: missing, out-of-range (lead 0 to 1 000 mm, speed 0 to 1 000 000, retract factor 0.1 to 1 000,
 * limit 0 to 10 000 000 mm/min), overflow, structure-size.
 * Source: derived.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_feed_fit(
    const threadcalc_ratio_t *lead_mm,
    const threadcalc_ratio_t *rpm,
    const threadcalc_ratio_t *retract_factor,
    const threadcalc_ratio_t *feed_limit_mm_min,
    threadcalc_feed_fit_t *fit,
    size_t fit_size,
    threadcalc_error_t *error);

/**
 * The time of a pattern of holes for a quotation, in seconds:
 * t = holes x (seconds per hole + 60 x rapid distance / rapid feed).
 *
 * rapid_distance_mm: from hole to hole, and down to R and up again where the cycle returns higher; per
 * hole, the way to the first one included. The axes' own ramps, tool change and coolant are not in it.
 * Errors: missing, out-of-range (holes 1 to 1 000 000 000, distance 0 to 10 000 mm, rapid feed 0 to
 * 10 000 000 mm/min, seconds per hole 0 to 1 000 000), overflow.
 * Source: derived.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_pattern_time_s(
    uint32_t holes,
    const threadcalc_ratio_t *rapid_distance_mm,
    const threadcalc_ratio_t *rapid_feed_mm_min,
    double seconds_per_hole,
    double *time_s,
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
 * "S", "N", "L". Never NULL.
 */
THREADCALC_API const char *THREADCALC_CALL threadcalc_engagement_group_name(int32_t group);

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
 * "well", "with_care", "badly". Never NULL.
 */
THREADCALC_API const char *THREADCALC_CALL threadcalc_suits_name(int32_t suits);

/**
 * "A" to "F", "taper", "plug", "semi_bottoming", "bottoming". Never NULL.
 */
THREADCALC_API const char *THREADCALC_CALL threadcalc_chamfer_form_name(int32_t chamfer_form);

/**
 * "1", "2", "3". Never NULL.
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
 * "go_passes", "go_stops", "not_go_enters", "taper_stands". Never NULL.
 */
THREADCALC_API const char *THREADCALC_CALL threadcalc_gauge_reading_name(int32_t gauge_reading);

/**
 * "accept", "rework", "reject". Never NULL.
 */
THREADCALC_API const char *THREADCALC_CALL threadcalc_verdict_name(int32_t verdict);

/**
 * "tap_deeper", "change_tap". Never NULL.
 */
THREADCALC_API const char *THREADCALC_CALL threadcalc_move_name(int32_t next);

/**
 * "fine", "warning", "error". Never NULL.
 */
THREADCALC_API const char *THREADCALC_CALL threadcalc_bottom_verdict_name(int32_t bottom_verdict);

/**
 * The stable id of a finding of a program: "lead-mismatch". Never NULL.
 */
THREADCALC_API const char *THREADCALC_CALL threadcalc_program_finding_name(int32_t finding);

/**
 * The name of a number that a finding of a program carries: "lead_mm". Never NULL.
 */
THREADCALC_API const char *THREADCALC_CALL threadcalc_program_number_name(int32_t key);

/**
 * "identified", "ambiguous", "nonstandard". Never NULL.
 */
THREADCALC_API const char *THREADCALC_CALL threadcalc_lead_verdict_name(int32_t lead_verdict);

/**
 * How many bytes a check takes.
 */
THREADCALC_API size_t THREADCALC_CALL threadcalc_checker_size(void);

/**
 * Begins the check of a program in memory of the caller's, of size bytes. The options may be NULL.
 *
 * The memory need not be cleared; what stood there is gone. Calls of subprograms are not followed here, since a piece
 * that has gone by cannot be read again: threadcalc_check_json follows them.
 * Errors: null-pointer, out-of-range (memory that is not aligned to 16 bytes), structure-size, missing (no dialect),
 * those of threadcalc_cycle for a dialect, unknown-value.
 * Source: RS274/NGC, NISTIR 6556; ISO 6983-1; where controls differ, the dialect.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_checker_begin(
    threadcalc_checker_t *checker,
    size_t size,
    const threadcalc_dialect_t *dialect,
    const threadcalc_check_options_t *options,
    threadcalc_error_t *error);

/**
 * Tells a tool of the shop's list, before the program is read; of two with one number the first counts.
 *
 * Errors: null-pointer, missing (not begun), too-long (more than 64 tools), structure-size, unknown-value, those of
 * threadcalc_thread_write.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_checker_add_tool(
    threadcalc_checker_t *checker,
    const threadcalc_tool_t *tool,
    threadcalc_error_t *error);

/**
 * Takes bytes of the program until something is found or all are taken; taken says how many. Then ask
 * threadcalc_checker_next until it gives THREADCALC_EVENT_NONE, and hand over the rest.
 *
 * Errors: null-pointer, missing (not begun), contradiction (the program was finished).
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_checker_read(
    threadcalc_checker_t *checker,
    const uint8_t *program,
    size_t length,
    size_t *taken,
    threadcalc_error_t *error);

/**
 * The next hole or finding that is known; kind is THREADCALC_EVENT_NONE if there is none. event_size is
 * sizeof(threadcalc_program_event_t).
 *
 * Errors: null-pointer, missing (not begun), structure-size.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_checker_next(
    threadcalc_checker_t *checker,
    threadcalc_program_event_t *event,
    size_t event_size,
    threadcalc_error_t *error);

/**
 * The program ends here: what can be said only now is to be taken with threadcalc_checker_next. Again it does nothing.
 *
 * Errors: null-pointer, missing (not begun).
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_checker_finish(
    threadcalc_checker_t *checker,
    threadcalc_error_t *error);

/**
 * What was not checked so far, by index from 0; behind the last, reason is THREADCALC_REASON_UNSET.
 *
 * Errors: null-pointer, missing (not begun), structure-size.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_checker_not_checked(
    threadcalc_checker_t *checker,
    size_t index,
    threadcalc_unchecked_t *unchecked,
    size_t unchecked_size,
    threadcalc_error_t *error);

/**
 * Compares two versions of a program: the JSON text of what is known in, the JSON text of what has become of the
 * tapped holes out. UTF-8; needed counts the NUL.
 *
 * The programs are bytes, of any encoding. The request is that of threadcalc_check_json and holds for both. A hole is
 * found again by work offset, X and Y, then by order and thread. The answer is that of schema/comparison.schema.json:
 * each change with the hole before and after and a line of text, and what was known on neither side. It says nothing
 * of whether either version is right. Memory is taken from the heap while the call runs.
 * Errors: those of threadcalc_check_json.
 * Source: as threadcalc_check_json.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_compare_json(
    const uint8_t *old_program,
    size_t old_length,
    const uint8_t *new_program,
    size_t new_length,
    const uint8_t *request,
    size_t request_length,
    char *text,
    size_t capacity,
    size_t *needed,
    threadcalc_error_t *error);

/**
 * Checks a whole program: the JSON text of what is known in, the JSON text of a report out. UTF-8; needed counts the
 * NUL.
 *
 * The program is bytes, of any encoding. The request is an object of schema (1), dialect ("rs274ngc", "unset" or an
 * object, required), options, machine (as in a job) and tools, a list of objects; an unknown key is an error. Calls of
 * subprograms are followed where they stand in the same text. The report is that of schema/report.schema.json.
 * Memory for the answer is taken from the heap while the call runs; threadcalc_checker_begin takes none.
 * Errors: bad-json, too-long (65536 bytes of request, 64 tools), unknown-key, unknown-value, missing, those of
 * threadcalc_cycle for a dialect, buffer-too-short.
 * Source: RS274/NGC, NISTIR 6556; ISO 6983-1; where controls differ, the dialect.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_check_json(
    const uint8_t *program,
    size_t length,
    const uint8_t *request,
    size_t request_length,
    char *text,
    size_t capacity,
    size_t *needed,
    threadcalc_error_t *error);

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
 * A depth in the unit of the program, at its decimals, rounded once to the side that is safe. found_size is
 * sizeof(threadcalc_program_depth_t).
 *
 * depth_mm is 0 to 10 000, from the face down; decimals is 0 to 9.
 * Errors: missing, unknown-value, out-of-range, overflow, structure-size.
 * Source: common practice; ISO 6983-1 (numbers with a point); 1 in = 25.4 mm exactly.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_program_depth(
    const threadcalc_ratio_t *depth_mm,
    threadcalc_unit unit,
    int32_t decimals,
    threadcalc_depth_rounding rounding,
    threadcalc_program_depth_t *found,
    size_t found_size,
    threadcalc_error_t *error);

/**
 * The same of a derived depth, such as that of a drill's point: the nearest 0.000000001 mm is rounded, since
 * the last digits of a double are no depth. found_size is sizeof(threadcalc_program_depth_t).
 *
 * Errors: as threadcalc_program_depth; NaN is out-of-range.
 * Source: as threadcalc_program_depth.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_program_depth_of_derived(
    double depth_mm,
    threadcalc_unit unit,
    int32_t decimals,
    threadcalc_depth_rounding rounding,
    threadcalc_program_depth_t *found,
    size_t found_size,
    threadcalc_error_t *error);

/**
 * Whether a kind of tap cuts or forms.
 *
 * Errors: missing, unknown-value.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_tap_of_kind(
    threadcalc_tap_kind tap_kind,
    threadcalc_tap *tap,
    threadcalc_error_t *error);

/**
 * The factor K of a kind of tap for the torque by chip area, coarse pitch in steel: straight flutes 1.35,
 * spiral flutes 1.15, spiral point 0.95; NaN for a form tap, which leaves no chip.
 *
 * Errors: missing, unknown-value.
 * Source: a tap maker's published table (chamfer of 5 threads for straight flutes).
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_tap_torque_factor(
    threadcalc_tap_kind tap_kind,
    double *torque_factor,
    threadcalc_error_t *error);

/**
 * How a kind of tap suits a through or a blind hole, and why. advice_size is
 * sizeof(threadcalc_tap_advice_t).
 *
 * Errors: missing, unknown-value, structure-size.
 * Source: common practice.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_tap_advice(
    threadcalc_tap_kind tap_kind,
    threadcalc_hole hole,
    threadcalc_tap_advice_t *advice,
    size_t advice_size,
    threadcalc_error_t *error);

/**
 * How many threads a form of chamfer takes, and the hole it is made for. chamfer_size is
 * sizeof(threadcalc_chamfer_t).
 *
 * Errors: missing, unknown-value, structure-size.
 * Source: DIN 2197 as tap makers print it (B to 5.5: from memory of the standard, some print 5); the names:
 * tap makers' published tables; the usual hole: common practice.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_chamfer(
    threadcalc_chamfer_form chamfer_form,
    threadcalc_chamfer_t *chamfer,
    size_t chamfer_size,
    threadcalc_error_t *error);

/**
 * 1 if the longest chamfer of the form has room, else 0. Form B never fits a blind hole: its spiral point
 * drives the chips to the bottom.
 *
 * room_threads, in threads: in a blind hole between the end of full thread and the end of the drilled
 * diameter, below a through hole down to what the tap may not touch.
 * Errors: missing, unknown-value, out-of-range (denominator 0).
 * Source: as threadcalc_chamfer.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_chamfer_fits(
    threadcalc_chamfer_form chamfer_form,
    threadcalc_hole hole,
    const threadcalc_ratio_t *room_threads,
    int32_t *fits,
    threadcalc_error_t *error);

/**
 * The forms of chamfer that fit a hole with this room, in the order of their numbers; room_threads as for
 * threadcalc_chamfer_fits.
 *
 * count is how many there are; with too little room only count is written.
 * Errors: as threadcalc_chamfer_fits, buffer-too-short.
 * Source: as threadcalc_chamfer.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_chamfers_that_fit(
    threadcalc_hole hole,
    const threadcalc_ratio_t *room_threads,
    threadcalc_chamfer_form *forms,
    size_t capacity,
    size_t *count,
    threadcalc_error_t *error);

/**
 * The class of ISO 2857 for the tolerance class of an ISO metric thread and the plating of the hole.
 * tap_size is sizeof(threadcalc_iso_tap_t).
 *
 * plating_um is the thickness on the surface in um, 0 to 1000; NULL or 0/0: none. It closes the pitch
 * diameter by four times as much. Up to the allowance of position G the class is the one for position G of the same grade;
 * more: none, a special tap that is larger by the closing. The hole is gauged after plating with the gauges
 * of position H; a class of position G on the drawing is the one before plating. Thin even plating only, never hot-dip.
 * Errors: does-not-apply (another thread than M and MJ, the hole of a wire insert), class-unset, contradiction (an external class),
 * out-of-range, those of threadcalc_thread_write, structure-size.
 * Source: ISO 2857 and ISO 965-1 (EI of position G, by its formula), from memory.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_iso_tap(
    const threadcalc_thread_t *thread,
    const threadcalc_ratio_t *plating_um,
    threadcalc_iso_tap_t *tap,
    size_t tap_size,
    threadcalc_error_t *error);

/**
 * The smallest and the largest pitch diameter of a tap of a class, in mm, not rounded.
 *
 * With t the tolerance of the pitch diameter of a thread 5H: class 1 D2 + 0.1 t to D2 + 0.3 t, class 2 0.3 t
 * to 0.5 t, class 3 0.5 t to 0.7 t. The thread's own class does not matter: it is in the choice of the tap's.
 * Errors: missing, unknown-value, does-not-apply (another thread than M and MJ, the hole of a wire
 * insert), not-sourced (t has not been read),
 * those of threadcalc_thread_write.
 * Source: ISO 2857, from memory; two tap makers' published tables give the same limits from M3 to M12.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_iso_tap_pitch_diameter_mm(
    const threadcalc_thread_t *thread,
    threadcalc_iso_tap_class tap_class,
    threadcalc_range_t *pitch_diameter_mm,
    threadcalc_error_t *error);

/**
 * How far the pitch diameter of a tap may lie above the basic one of the thread, in mm, smallest and largest.
 *
 * H n: (n - 1) x 0.0005 in to n x 0.0005 in. L n: as much below. D n: largest n x 0.013 mm; smallest 0.020
 * (P 0.8), 0.025 (P 1) or 0.031 (P 1.25, 1.5) less, 0/0 at other pitches, where the tolerance has not been read.
 * Errors: missing, unknown-value, out-of-range (number), not-sourced (H and L above 1 in, where the steps are
 * wider), those of threadcalc_thread_write.
 * Source: ASME B94.9 from memory; D as a tap maker's published table gives it for M5 to M10.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_tap_limit_above_basic_mm(
    const threadcalc_tap_limit_t *limit,
    const threadcalc_thread_t *thread,
    threadcalc_range_t *above_basic_mm,
    threadcalc_error_t *error);

/**
 * The smallest and the largest pitch diameter of a tap by its limit, in mm; the smallest is 0/0 where
 * threadcalc_tap_limit_above_basic_mm has none.
 *
 * Errors: those of threadcalc_tap_limit_above_basic_mm; not-sourced and does-not-apply (a taper thread) where
 * the thread has no basic pitch diameter among its limits.
 * Source: as threadcalc_tap_limit_above_basic_mm; the basic pitch diameter: as threadcalc_limits.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_tap_limit_pitch_diameter_mm(
    const threadcalc_tap_limit_t *limit,
    const threadcalc_thread_t *thread,
    threadcalc_range_t *pitch_diameter_mm,
    threadcalc_error_t *error);

/**
 * The limit of a ground tap that tap makers recommend to cut a class of thread in the usual materials, not
 * plated, H for Unified and D for metric threads: a recommendation and no standard. GO and NOT GO decide.
 *
 * Errors: class-unset, does-not-apply (an external class, another thread than UN and M), not-sourced (the
 * hole of a wire insert, other classes than 2B,
 * 3B and 6H, other Unified sizes than those of UNC and UNF up to 3/4-10, other metric ones than the coarse
 * pitches of M1.6 to M36 of the first choice, M1.8, M3.5, M4.5, M7, M14, M8x1 and M10x1.25), those of
 * threadcalc_thread_write.
 * Source: a tap maker's printed recommendations for classes 2B and 3B. D: printed recommendations for 6H (M1.6,
 * M1.8) and the one limit for which a tap maker's printed list has each of the other sizes; common practice.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_usual_tap_limit(
    const threadcalc_thread_t *thread,
    threadcalc_tap_limit_t *limit,
    threadcalc_error_t *error);

/**
 * The limit of a ground tap for a thread that is gauged after plating: the usual one, raised by what the plating
 * closes the pitch diameter over the step of 0.0005 in (H) or 0.013 mm (D), rounded up.
 *
 * plating_um is the thickness on the surface in um, 0 to 1000; it closes the pitch diameter of a 60 degree
 * thread by four times as much.
 * Errors: those of threadcalc_usual_tap_limit, out-of-range (also beyond 30).
 * Source: four times the thickness, raised by as many limits: common practice; the usual limit as there.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_usual_tap_limit_for_plating(
    const threadcalc_thread_t *thread,
    const threadcalc_ratio_t *plating_um,
    threadcalc_tap_limit_t *limit,
    threadcalc_error_t *error);

/**
 * The smallest H limit whose taps leave room for a plating: its closing over 0.0005 in, rounded up, + 1.
 *
 * plating_um is the thickness on the surface in um, 0 to 1000; it closes the pitch diameter of a 60 degree
 * thread by four times as much. Without plating it is H1: taps are chosen larger than that for their life;
 * what the class allows at most is for the gauge.
 * Errors: out-of-range (also beyond H30), not-sourced (above 1 in), those of threadcalc_thread_write.
 * Source: ASME B94.9, from memory; derived.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_h_limit_for_plating(
    const threadcalc_thread_t *thread,
    const threadcalc_ratio_t *plating_um,
    threadcalc_tap_limit_t *limit,
    threadcalc_error_t *error);

/**
 * Reads what stands on the shank of a tap: M8x1.25 6HX LH, 1/4-20 UNC GH3 HSS, M10 D5. mark_size is
 * sizeof(threadcalc_shank_mark_t). UTF-8, or lone Latin-1 bytes; offsets are bytes of the text.
 *
 * Words in any order: the thread as in a designation; LH, LEFT; the class of thread that it cuts, with X
 * within the maker's own limits; ISO1 to ISO3; the limit H3, L1, D5, with G ground; STI or EG for a wire
 * insert; the chamfer C, FORM C, C/2-3, PLUG; material, coating and flutes, which are of no account.
 * Errors: empty, too-long (96 bytes), unreadable if nothing is understood; those of threadcalc_thread_read if
 * the thread contradicts itself; structure-size.
 * Source: common practice; ASME B94.9 and DIN 2197 for letters, from memory.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_read_shank_mark(
    const uint8_t *text,
    size_t length,
    threadcalc_shank_mark_t *mark,
    size_t mark_size,
    threadcalc_error_t *error);

/**
 * Compares what stands on a shank with the job: hand, thread, class or limit, plating, chamfer.
 *
 * Findings tap-hand, tap-thread, tap-wire-insert (errors); tap-class, tap-too-small, tap-too-large,
 * tap-unmarked, tap-own-limits, tap-chamfer; class-assumed, limits-not-sourced, not-read. A tap cuts a little
 * larger than it is; what comes of that only the gauge says. count is how many there are, up to 12; with too
 * little room only count is written.
 * Errors: out-of-range (plating outside 0 to 1000 um, negative room), contradiction (an external thread),
 * missing, unknown-value, unknown-class, those of threadcalc_thread_write, structure-size, unsupported-field,
 * buffer-too-short.
 * Source: ISO 2857 and ASME B94.9, from memory; which severity: judgement.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_judge_tap(
    const threadcalc_shank_mark_t *mark,
    const threadcalc_tap_job_t *tap_job,
    threadcalc_finding_t *findings,
    size_t capacity,
    size_t *count,
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
 * Reads one designation: M8x1.25-6H, 1/4-20 UNC-2B, #10-32, M16xPh3P1.5-LH, G1/2A, Rc 1/2, 1/4-18 NPT,
 * MJ6x1-4H5H, Tr40x14P7, 1/4-28 UNJF-3B, 1.500-4-ACME-2G, 1/2 BSW, 2 BA, S0.8, M8x1.25 STI.
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
 * order in the text. A class of both sides, normal of BA, 2G of ACME, gets the side that the other leaves.
 *
 * Errors, with the byte: those of threadcalc_thread_read; missing for a text with one class only,
 * contradiction for two classes of one side, and for two different ones that are of both sides (2G/3G).
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
 * The tapped hole that takes a wire insert (STI) for a thread: the same pitch on a larger diameter.
 *
 * Errors: as threadcalc_thread_write; unsupported-form for another thread than M, MJ, UN and UNJ of one
 * start, contradiction for an external one.
 * Source: ASME B18.29.1-2010 and B18.29.2M-2005: larger by 1.5 H, to 0.001 mm and 0.0001 in; from memory.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_thread_with_wire_insert(
    const threadcalc_thread_t *thread,
    threadcalc_thread_t *hole,
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
 * The standard threads of all families whose basic major diameter is about this one.
 *
 * diameter_mm as it was measured, within_mm how far a diameter may be from it, 0 for exactly; a screw measures
 * less than its basic diameter. Of pipe threads the diameter of the thread counts, of NPT and its kin the
 * pipe's outside.
 * Errors: missing, out-of-range, overflow, buffer-too-short (count is how many there are).
 * Source: as threadcalc_standard_threads.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_threads_near_diameter(
    const threadcalc_ratio_t *diameter_mm,
    const threadcalc_ratio_t *within_mm,
    threadcalc_thread_t *threads,
    size_t capacity,
    size_t *count,
    threadcalc_error_t *error);

/**
 * The standard threads of all families whose pitch is about this one. They have one start: of a lead with
 * several the pitch is the lead over their number.
 *
 * pitch_mm and within_mm as in threadcalc_threads_near_diameter.
 * Errors: missing, out-of-range, overflow, buffer-too-short (count is how many there are).
 * Source: as threadcalc_standard_threads.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_threads_near_pitch(
    const threadcalc_ratio_t *pitch_mm,
    const threadcalc_ratio_t *within_mm,
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

/**
 * How far tap and drill come out below a part: the room that vice, parallels and table have to leave.
 * found_size is sizeof(threadcalc_through_hole_t).
 *
 * tap below = chamfer threads x P + tap centre + over-travel turns x lead; tap = thickness + tap below; the
 * program leaves out the over-travel. Full diameter = thickness + drill clearance; drill below = drill
 * clearance + d/2 / tan(point angle / 2). The whole thickness gets full thread.
 * Errors: missing, unknown-value, out-of-range, does-not-apply (a taper thread), overflow, those of
 * threadcalc_thread_write, structure-size, unsupported-field.
 * Source: common practice; chamfer lengths by form: DIN 2197.
 */
THREADCALC_API threadcalc_status THREADCALC_CALL threadcalc_through_hole(
    const threadcalc_thread_t *thread,
    const threadcalc_through_hole_request_t *hole_request,
    threadcalc_through_hole_t *found,
    size_t found_size,
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
#define THREADCALC_FEED_WORDS_INIT THREADCALC_REQUEST_INIT(threadcalc_feed_words_t)
#define THREADCALC_TAP_DRILL_REQUEST_INIT THREADCALC_REQUEST_INIT(threadcalc_tap_drill_request_t)
#define THREADCALC_DEPTH_REQUEST_INIT THREADCALC_REQUEST_INIT(threadcalc_depth_request_t)
#define THREADCALC_TAPER_DEPTH_REQUEST_INIT THREADCALC_REQUEST_INIT(threadcalc_taper_depth_request_t)
#define THREADCALC_TAP_JOB_INIT THREADCALC_REQUEST_INIT(threadcalc_tap_job_t)
#define THREADCALC_ENGAGEMENT_REQUEST_INIT THREADCALC_REQUEST_INIT(threadcalc_engagement_request_t)
#define THREADCALC_MOTION_REQUEST_INIT THREADCALC_REQUEST_INIT(threadcalc_motion_request_t)
#define THREADCALC_BLIND_HOLE_INIT THREADCALC_REQUEST_INIT(threadcalc_blind_hole_t)
#define THREADCALC_THROUGH_HOLE_REQUEST_INIT THREADCALC_REQUEST_INIT(threadcalc_through_hole_request_t)
#define THREADCALC_DIALECT_INIT THREADCALC_REQUEST_INIT(threadcalc_dialect_t)
#define THREADCALC_CYCLE_REQUEST_INIT THREADCALC_REQUEST_INIT(threadcalc_cycle_request_t)
#define THREADCALC_JOB_INIT THREADCALC_REQUEST_INIT(threadcalc_job_t)
#define THREADCALC_CHECK_OPTIONS_INIT THREADCALC_REQUEST_INIT(threadcalc_check_options_t)
#define THREADCALC_TOOL_INIT THREADCALC_REQUEST_INIT(threadcalc_tool_t)
