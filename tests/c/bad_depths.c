/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* Pointers, sizes and values that no call about a hole's depth, bottom and mouth takes. */
#include "bad_input.h"

enum {
    OK = THREADCALC_STATUS_OK,
    IS_NULL = THREADCALC_STATUS_NULL_POINTER,
    IS_SIZE = THREADCALC_STATUS_STRUCTURE_SIZE,
    IS_FIELD = THREADCALC_STATUS_UNSUPPORTED_FIELD,
    IS_MISSING = THREADCALC_STATUS_MISSING,
    IS_RANGE = THREADCALC_STATUS_OUT_OF_RANGE,
    IS_UNKNOWN = THREADCALC_STATUS_UNKNOWN_VALUE,
    IS_SHORT = THREADCALC_STATUS_BUFFER_TOO_SHORT,
    TAIL = 64
};

static const threadcalc_ratio_t none = {0, 0}, broken = {1, 0}, three = {3, 1};

static threadcalc_blind_hole_t good_hole(void)
{
    threadcalc_blind_hole_t hole = THREADCALC_BLIND_HOLE_INIT;
    hole.drill_depth_to = THREADCALC_DRILLED_TO_FULL_DIAMETER;
    hole.drill_depth_mm = ratio(47, 2);
    hole.drill_mm = ratio(34, 5);
    hole.bottom_clearance_mm = ratio(15, 4);
    return hole;
}

static threadcalc_through_hole_request_t good_through(void)
{
    threadcalc_through_hole_request_t asked = THREADCALC_THROUGH_HOLE_REQUEST_INIT;
    asked.part_thickness_mm = ratio(20, 1);
    asked.chamfer_threads = three;
    asked.drill_mm = ratio(34, 5);
    asked.point_angle_deg = ratio(118, 1);
    asked.drill_clearance_mm = ratio(1, 1);
    return asked;
}

static void of_blind_holes(void)
{
    const threadcalc_thread_t thread = good_thread(), blank = {0};
    threadcalc_blind_hole_t hole = good_hole();
    threadcalc_blind_thread_t found;
    threadcalc_chamfer_reading_t readings[10];
    size_t count;
    CHECK(threadcalc_full_thread_that_fits(&thread, &hole, &three, &found, sizeof found, NULL) == OK);
    CHECK(found.full_thread_mm.numerator == 16 && found.drill_point_mm != found.drill_point_mm);
    REFUSED(IS_NULL, found, threadcalc_full_thread_that_fits(NULL, &hole, &three, &found, sizeof found, NULL));
    REFUSED(IS_NULL, found, threadcalc_full_thread_that_fits(&thread, NULL, &three, &found, sizeof found, NULL));
    REFUSED(IS_NULL, found, threadcalc_full_thread_that_fits(&thread, &hole, NULL, &found, sizeof found, NULL));
    CHECK(threadcalc_full_thread_that_fits(&thread, &hole, &three, NULL, sizeof found, NULL) == IS_NULL);
    REFUSED(IS_SIZE, found, threadcalc_full_thread_that_fits(&thread, &hole, &three, &found, 0, NULL));
    REFUSED(IS_MISSING, found, threadcalc_full_thread_that_fits(&thread, &hole, &none, &found, sizeof found, NULL));
    REFUSED(IS_RANGE, found, threadcalc_full_thread_that_fits(&thread, &hole, &broken, &found, sizeof found, NULL));
    REFUSED(IS_MISSING, found, threadcalc_full_thread_that_fits(&blank, &hole, &three, &found, sizeof found, NULL));
    REFUSED(IS_NULL, readings, threadcalc_chamfers_for_full_thread(NULL, &hole, &three, readings, 10, &count, NULL));
    REFUSED(IS_NULL, readings, threadcalc_chamfers_for_full_thread(&thread, NULL, &three, readings, 10, &count, NULL));
    REFUSED(IS_NULL, readings, threadcalc_chamfers_for_full_thread(&thread, &hole, NULL, readings, 10, &count, NULL));
    REFUSED(IS_NULL, readings, threadcalc_chamfers_for_full_thread(&thread, &hole, &three, readings, 10, NULL, NULL));
    REFUSED(IS_NULL, count, threadcalc_chamfers_for_full_thread(&thread, &hole, &three, NULL, 10, &count, NULL));
    REFUSED(IS_MISSING, count, threadcalc_chamfers_for_full_thread(&thread, &hole, &none, readings, 10, &count, NULL));
    REFUSED(IS_SHORT, readings, threadcalc_chamfers_for_full_thread(&thread, &hole, &three, readings, 9, &count, NULL));
    CHECK(count == 10);
    CHECK(threadcalc_chamfers_for_full_thread(&thread, &hole, &three, NULL, 0, &count, NULL) == IS_SHORT);
    CHECK(threadcalc_chamfers_for_full_thread(&thread, &hole, &three, readings, 10, &count, NULL) == OK);
    CHECK(count == 10 && readings[0].form == THREADCALC_CHAMFER_FORM_A);
}

static void of_members_of_blind_holes(void)
{
    struct { threadcalc_blind_hole_t hole; unsigned char tail[TAIL]; } longer;
    static const uint32_t wrong[] = {0, 1, 3, 4, 5, 4097, UINT32_MAX, sizeof(threadcalc_blind_hole_t) - 1};
    const threadcalc_thread_t thread = good_thread();
    threadcalc_blind_hole_t hole;
    threadcalc_blind_thread_t found;
    size_t place;
#define HOLE_REFUSED(status) \
    REFUSED(status, found, threadcalc_full_thread_that_fits(&thread, &hole, &three, &found, sizeof found, NULL))
    for (place = 0; place < sizeof wrong / sizeof wrong[0]; place++) {
        hole = good_hole(), hole.size = wrong[place];
        HOLE_REFUSED(IS_SIZE);
    }
    hole = good_hole(), hole.reserved = 1;
    HOLE_REFUSED(IS_FIELD);
    hole = good_hole(), hole.drill_depth_to = 0;
    HOLE_REFUSED(IS_MISSING);
    hole = good_hole(), hole.drill_depth_to = 3;
    HOLE_REFUSED(IS_UNKNOWN);
    hole = good_hole(), hole.tap_set_on = -1;
    HOLE_REFUSED(IS_UNKNOWN);
    hole = good_hole(), hole.tap_centre_mm = ratio(1, 1);
    HOLE_REFUSED(IS_MISSING);
    hole = good_hole(), hole.drill_depth_mm = none;
    HOLE_REFUSED(IS_MISSING);
    hole = good_hole(), hole.drill_mm = broken;
    HOLE_REFUSED(IS_RANGE);
    hole = good_hole(), hole.point_angle_deg = broken;
    HOLE_REFUSED(IS_RANGE);
    hole = good_hole(), hole.drill_depth_to = THREADCALC_DRILLED_TO_POINT;
    HOLE_REFUSED(IS_MISSING);
#undef HOLE_REFUSED
    memset(&longer, 0, sizeof longer);
    longer.hole = good_hole();
    longer.hole.size = (uint32_t)sizeof longer;
    CHECK(threadcalc_full_thread_that_fits(&thread, &longer.hole, &three, &found, sizeof found, NULL) == OK);
    longer.tail[TAIL - 1] = 1;
    REFUSED(IS_FIELD, found,
            threadcalc_full_thread_that_fits(&thread, &longer.hole, &three, &found, sizeof found, NULL));
}

static void of_bottoms(void)
{
    const threadcalc_thread_t thread = good_thread();
    const threadcalc_ratio_t tap = ratio(79, 4), point = ratio(22, 1), drill = ratio(34, 5), angle = ratio(118, 1);
    const size_t half = sizeof(threadcalc_bottoming_t) / 2;
    threadcalc_bottoming_t found;
    threadcalc_ratio_t run_out;
    memset(&found, 0xA5, sizeof found);
    CHECK(threadcalc_bottoming(&thread, &tap, &point, &drill, NULL, &found, half, NULL) == OK);
    CHECK(found.reading_count == 4 && bad_input_untouched((const char *)&found + half, sizeof found - half));
    CHECK(threadcalc_bottoming(&thread, &tap, &point, &drill, &none, &found, sizeof found, NULL) == OK);
    CHECK(found.reading_count == 4 && found.is_certain == 0);
    REFUSED(IS_NULL, found, threadcalc_bottoming(NULL, &tap, &point, &drill, &angle, &found, sizeof found, NULL));
    REFUSED(IS_NULL, found, threadcalc_bottoming(&thread, NULL, &point, &drill, &angle, &found, sizeof found, NULL));
    REFUSED(IS_NULL, found, threadcalc_bottoming(&thread, &tap, NULL, &drill, &angle, &found, sizeof found, NULL));
    REFUSED(IS_NULL, found, threadcalc_bottoming(&thread, &tap, &point, NULL, &angle, &found, sizeof found, NULL));
    CHECK(threadcalc_bottoming(&thread, &tap, &point, &drill, &angle, NULL, sizeof found, NULL) == IS_NULL);
    REFUSED(IS_SIZE, found, threadcalc_bottoming(&thread, &tap, &point, &drill, &angle, &found, 0, NULL));
    REFUSED(IS_MISSING, found, threadcalc_bottoming(&thread, &none, &point, &drill, NULL, &found, sizeof found, NULL));
    REFUSED(IS_RANGE, found, threadcalc_bottoming(&thread, &tap, &point, &drill, &broken, &found, sizeof found, NULL));
    REFUSED(IS_NULL, run_out, threadcalc_run_out(NULL, THREADCALC_RUN_OUT_NORMAL, &run_out, NULL));
    CHECK(threadcalc_run_out(&thread, THREADCALC_RUN_OUT_NORMAL, NULL, NULL) == IS_NULL);
    REFUSED(IS_MISSING, run_out, threadcalc_run_out(&thread, 0, &run_out, NULL));
    REFUSED(IS_UNKNOWN, run_out, threadcalc_run_out(&thread, 4, &run_out, NULL));
    REFUSED(IS_UNKNOWN, run_out, threadcalc_run_out(&thread, INT32_MIN, &run_out, NULL));
}

static void of_mouths(void)
{
    const threadcalc_thread_t thread = good_thread();
    const threadcalc_ratio_t wide = ratio(42, 5), angle = ratio(90, 1), drill = ratio(34, 5);
    threadcalc_countersunk_t found;
    threadcalc_usual_countersink_t usual;
    CHECK(threadcalc_countersink(&thread, &wide, &angle, NULL, &found, sizeof found, NULL) == OK);
    CHECK(threadcalc_countersink(&thread, &wide, &angle, &none, &found, sizeof found, NULL) == OK);
    REFUSED(IS_NULL, found, threadcalc_countersink(NULL, &wide, &angle, &drill, &found, sizeof found, NULL));
    REFUSED(IS_NULL, found, threadcalc_countersink(&thread, NULL, &angle, &drill, &found, sizeof found, NULL));
    REFUSED(IS_NULL, found, threadcalc_countersink(&thread, &wide, NULL, &drill, &found, sizeof found, NULL));
    CHECK(threadcalc_countersink(&thread, &wide, &angle, &drill, NULL, sizeof found, NULL) == IS_NULL);
    REFUSED(IS_SIZE, found, threadcalc_countersink(&thread, &wide, &angle, &drill, &found, 0, NULL));
    REFUSED(IS_MISSING, found, threadcalc_countersink(&thread, &none, &angle, &drill, &found, sizeof found, NULL));
    REFUSED(IS_RANGE, found, threadcalc_countersink(&thread, &wide, &broken, &drill, &found, sizeof found, NULL));
    REFUSED(IS_NULL, usual, threadcalc_usual_countersink(NULL, &usual, sizeof usual, NULL));
    CHECK(threadcalc_usual_countersink(&thread, NULL, sizeof usual, NULL) == IS_NULL);
    REFUSED(IS_SIZE, usual, threadcalc_usual_countersink(&thread, &usual, 0, NULL));
}

static void of_program_depths(void)
{
    const threadcalc_ratio_t depth = ratio(79, 4);
    const int32_t mm = THREADCALC_UNIT_MM, deeper = THREADCALC_DEPTH_ROUNDING_DEEPER;
    threadcalc_program_depth_t found;
    CHECK(threadcalc_program_depth(&depth, mm, 3, deeper, &found, sizeof found, NULL) == OK);
    CHECK(strcmp(found.text, "19.75") == 0);
    REFUSED(IS_NULL, found, threadcalc_program_depth(NULL, mm, 3, deeper, &found, sizeof found, NULL));
    CHECK(threadcalc_program_depth(&depth, mm, 3, deeper, NULL, sizeof found, NULL) == IS_NULL);
    CHECK(threadcalc_program_depth_of_derived(19.75, mm, 3, deeper, NULL, sizeof found, NULL) == IS_NULL);
    REFUSED(IS_SIZE, found, threadcalc_program_depth(&depth, mm, 3, deeper, &found, 0, NULL));
    REFUSED(IS_SIZE, found, threadcalc_program_depth_of_derived(19.75, mm, 3, deeper, &found, 0, NULL));
    REFUSED(IS_MISSING, found, threadcalc_program_depth(&none, mm, 3, deeper, &found, sizeof found, NULL));
    REFUSED(IS_RANGE, found, threadcalc_program_depth(&depth, mm, -1, deeper, &found, sizeof found, NULL));
    REFUSED(IS_RANGE, found, threadcalc_program_depth(&depth, mm, INT32_MAX, deeper, &found, sizeof found, NULL));
    REFUSED(IS_MISSING, found, threadcalc_program_depth(&depth, 0, 3, deeper, &found, sizeof found, NULL));
    REFUSED(IS_UNKNOWN, found, threadcalc_program_depth(&depth, 3, 3, deeper, &found, sizeof found, NULL));
    REFUSED(IS_MISSING, found, threadcalc_program_depth_of_derived(19.75, mm, 3, 0, &found, sizeof found, NULL));
    REFUSED(IS_UNKNOWN, found, threadcalc_program_depth_of_derived(19.75, mm, 3, 3, &found, sizeof found, NULL));
}

static void of_through_holes(void)
{
    struct { threadcalc_through_hole_request_t asked; unsigned char tail[TAIL]; } longer;
    static const uint32_t wrong[] = {0, 1, 3, 4, 5, 4097, UINT32_MAX, sizeof(threadcalc_through_hole_request_t) - 1};
    const threadcalc_thread_t thread = good_thread();
    threadcalc_through_hole_request_t asked = good_through();
    threadcalc_through_hole_t found;
    size_t place;
#define THROUGH_REFUSED(status) REFUSED(status, found, threadcalc_through_hole(&thread, &asked, &found, sizeof found, NULL))
    REFUSED(IS_NULL, found, threadcalc_through_hole(NULL, &asked, &found, sizeof found, NULL));
    REFUSED(IS_NULL, found, threadcalc_through_hole(&thread, NULL, &found, sizeof found, NULL));
    CHECK(threadcalc_through_hole(&thread, &asked, NULL, sizeof found, NULL) == IS_NULL);
    REFUSED(IS_SIZE, found, threadcalc_through_hole(&thread, &asked, &found, 0, NULL));
    for (place = 0; place < sizeof wrong / sizeof wrong[0]; place++) {
        asked = good_through(), asked.size = wrong[place];
        THROUGH_REFUSED(IS_SIZE);
    }
    asked = good_through(), asked.tap_set_on = 3;
    THROUGH_REFUSED(IS_UNKNOWN);
    asked = good_through(), asked.tap_centre_mm = ratio(1, 1);
    THROUGH_REFUSED(IS_MISSING);
    asked = good_through(), asked.over_travel_turns = broken;
    THROUGH_REFUSED(IS_RANGE);
    asked = good_through(), asked.part_thickness_mm = none;
    THROUGH_REFUSED(IS_MISSING);
#undef THROUGH_REFUSED
    memset(&longer, 0, sizeof longer);
    longer.asked = good_through();
    longer.asked.size = (uint32_t)sizeof longer;
    CHECK(threadcalc_through_hole(&thread, &longer.asked, &found, sizeof found, NULL) == OK);
    CHECK(found.tap_below_mm.numerator == 15 && found.tap_below_mm.denominator == 4);
    longer.tail[0] = 1;
    REFUSED(IS_FIELD, found, threadcalc_through_hole(&thread, &longer.asked, &found, sizeof found, NULL));
}

void bad_depths(void)
{
    of_blind_holes();
    of_members_of_blind_holes();
    of_bottoms();
    of_mouths();
    of_program_depths();
    of_through_holes();
}
