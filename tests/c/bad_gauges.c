/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* Gauges: no pointer, no room, no choice, numbers that mean nothing. */
#include "bad_input.h"

enum {
    OK = THREADCALC_STATUS_OK,
    IS_NULL = THREADCALC_STATUS_NULL_POINTER,
    IS_SIZE = THREADCALC_STATUS_STRUCTURE_SIZE,
    MISSING = THREADCALC_STATUS_MISSING,
    UNKNOWN = THREADCALC_STATUS_UNKNOWN_VALUE,
    RANGE = THREADCALC_STATUS_OUT_OF_RANGE,
    NOT_THIS = THREADCALC_STATUS_DOES_NOT_APPLY
};

static threadcalc_thread_t taper(void)
{
    threadcalc_thread_t thread;
    memset(&thread, 0, sizeof thread);
    CHECK(threadcalc_thread_read(TEXT("1/4-18 NPT"), &thread, NULL) == OK);
    return thread;
}

static void of_gauges(void)
{
    const threadcalc_thread_t thread = good_thread();
    threadcalc_thread_t blank, hole = good_thread();
    threadcalc_gauges_t set;
    threadcalc_not_go_rule_t rule;
    const size_t half = sizeof set / 2;
    memset(&blank, 0, sizeof blank);
    REFUSED(IS_NULL, set, threadcalc_gauges(NULL, &set, sizeof set, NULL));
    CHECK(threadcalc_gauges(&thread, NULL, sizeof set, NULL) == IS_NULL);
    REFUSED(IS_SIZE, set, threadcalc_gauges(&thread, &set, 0, NULL));
    REFUSED(MISSING, set, threadcalc_gauges(&blank, &set, sizeof set, NULL));
    memset(&set, 0xA5, sizeof set);
    CHECK(threadcalc_gauges(&thread, &set, half, NULL) == OK && set.gauge_count == 4);
    CHECK(bad_input_untouched((const unsigned char *)&set + half, sizeof set - half));
    CHECK(threadcalc_gauges(&thread, &set, sizeof set, NULL) == OK);
    CHECK(strncmp(set.limits_source, "ISO 965-1", 9) == 0);
    CHECK(threadcalc_thread_read(TEXT("1/2-14 NPSF"), &hole, NULL) == OK);
    CHECK(threadcalc_gauges(&hole, &set, sizeof set, NULL) == OK && set.limits_source[0] == '\0');
    REFUSED(IS_NULL, rule, threadcalc_not_go_rule(NULL, &rule, sizeof rule, NULL));
    CHECK(threadcalc_not_go_rule(&thread, NULL, sizeof rule, NULL) == IS_NULL);
    REFUSED(IS_SIZE, rule, threadcalc_not_go_rule(&thread, &rule, 0, NULL));
    REFUSED(MISSING, rule, threadcalc_not_go_rule(&blank, &rule, sizeof rule, NULL));
    CHECK(threadcalc_not_go_rule(&thread, &rule, sizeof rule, NULL) == OK);
    CHECK(strcmp(rule.standard, "ISO 1502:1996") == 0);
    CHECK(strcmp(rule.remark, "a thread of three turns or fewer must not let it through") == 0);
}

static void of_moves(void)
{
    static const int32_t numbers[] = {-1, 5, 99, INT32_MAX, INT32_MIN};
    const threadcalc_thread_t thread = good_thread();
    const threadcalc_ratio_t turns = ratio(3, 1), asked = ratio(12, 1), none = ratio(0, 0), no_parts = ratio(1, 0);
    threadcalc_next_move_t next;
    const size_t half = sizeof next / 2;
    size_t place;
    REFUSED(IS_NULL, next, threadcalc_next_move(NULL, 2, &turns, &asked, &next, sizeof next, NULL));
    CHECK(threadcalc_next_move(&thread, 2, &turns, &asked, NULL, sizeof next, NULL) == IS_NULL);
    REFUSED(IS_SIZE, next, threadcalc_next_move(&thread, 2, &turns, &asked, &next, 0, NULL));
    REFUSED(MISSING, next, threadcalc_next_move(&thread, 0, &turns, &asked, &next, sizeof next, NULL));
    for (place = 0; place < sizeof numbers / sizeof numbers[0]; place++) {
        REFUSED(UNKNOWN, next,
                threadcalc_next_move(&thread, numbers[place], &turns, &asked, &next, sizeof next, NULL));
    }
    for (place = 2; place <= 4; place++) {
        const threadcalc_gauge_reading reading = (threadcalc_gauge_reading)place;
        REFUSED(MISSING, next, threadcalc_next_move(&thread, reading, NULL, &asked, &next, sizeof next, NULL));
        REFUSED(MISSING, next, threadcalc_next_move(&thread, reading, &none, &asked, &next, sizeof next, NULL));
    }
    REFUSED(MISSING, next, threadcalc_next_move(&thread, 2, &turns, NULL, &next, sizeof next, NULL));
    REFUSED(MISSING, next, threadcalc_next_move(&thread, 2, &turns, &none, &next, sizeof next, NULL));
    REFUSED(RANGE, next, threadcalc_next_move(&thread, 2, &no_parts, &asked, &next, sizeof next, NULL));
    REFUSED(RANGE, next, threadcalc_next_move(&thread, 2, &turns, &no_parts, &next, sizeof next, NULL));
    REFUSED(THREADCALC_STATUS_CONTRADICTION, next,
            threadcalc_next_move(&thread, 1, &turns, NULL, &next, sizeof next, NULL));
    memset(&next, 0xA5, sizeof next);
    CHECK(threadcalc_next_move(&thread, 1, NULL, NULL, &next, half, NULL) == OK);
    CHECK(next.verdict == THREADCALC_VERDICT_ACCEPT && next.move_count == 1);
    CHECK(bad_input_untouched((const unsigned char *)&next + half, sizeof next - half));
}

static void of_depths_and_planes(void)
{
    const threadcalc_thread_t thread = good_thread(), pipe = taper();
    const threadcalc_ratio_t depth = ratio(16, 1), turn = ratio(1, 1), none = ratio(0, 0), no_parts = ratio(1, 0);
    const threadcalc_ratio_t far = ratio(INT64_MAX, 1), fine = ratio(1, INT64_MAX);
    threadcalc_ratio_t deeper;
    threadcalc_re_entry_t again;
    REFUSED(IS_NULL, deeper, threadcalc_trimmed_depth_mm(NULL, &depth, &turn, &deeper, NULL));
    REFUSED(IS_NULL, deeper, threadcalc_trimmed_depth_mm(&pipe, NULL, &turn, &deeper, NULL));
    REFUSED(IS_NULL, deeper, threadcalc_trimmed_depth_mm(&pipe, &depth, NULL, &deeper, NULL));
    CHECK(threadcalc_trimmed_depth_mm(&pipe, &depth, &turn, NULL, NULL) == IS_NULL);
    REFUSED(MISSING, deeper, threadcalc_trimmed_depth_mm(&pipe, &none, &turn, &deeper, NULL));
    REFUSED(MISSING, deeper, threadcalc_trimmed_depth_mm(&pipe, &depth, &none, &deeper, NULL));
    REFUSED(RANGE, deeper, threadcalc_trimmed_depth_mm(&pipe, &no_parts, &turn, &deeper, NULL));
    REFUSED(RANGE, deeper, threadcalc_trimmed_depth_mm(&pipe, &far, &turn, &deeper, NULL));
    REFUSED(RANGE, deeper, threadcalc_trimmed_depth_mm(&pipe, &depth, &far, &deeper, NULL));
    REFUSED(NOT_THIS, deeper, threadcalc_trimmed_depth_mm(&thread, &depth, &turn, &deeper, NULL));
    REFUSED(IS_NULL, again, threadcalc_re_entry_r(NULL, &turn, &depth, &again, sizeof again, NULL));
    REFUSED(IS_NULL, again, threadcalc_re_entry_r(&depth, NULL, &depth, &again, sizeof again, NULL));
    REFUSED(IS_NULL, again, threadcalc_re_entry_r(&depth, &turn, NULL, &again, sizeof again, NULL));
    CHECK(threadcalc_re_entry_r(&depth, &turn, &depth, NULL, sizeof again, NULL) == IS_NULL);
    REFUSED(IS_SIZE, again, threadcalc_re_entry_r(&depth, &turn, &depth, &again, 0, NULL));
    REFUSED(MISSING, again, threadcalc_re_entry_r(&none, &turn, &depth, &again, sizeof again, NULL));
    REFUSED(MISSING, again, threadcalc_re_entry_r(&depth, &none, &depth, &again, sizeof again, NULL));
    REFUSED(MISSING, again, threadcalc_re_entry_r(&depth, &turn, &none, &again, sizeof again, NULL));
    REFUSED(RANGE, again, threadcalc_re_entry_r(&depth, &no_parts, &depth, &again, sizeof again, NULL));
    REFUSED(RANGE, again, threadcalc_re_entry_r(&depth, &turn, &far, &again, sizeof again, NULL));
    REFUSED(THREADCALC_STATUS_OVERFLOW, again,
            threadcalc_re_entry_r(&depth, &fine, &turn, &again, sizeof again, NULL));
    CHECK(strncmp(threadcalc_re_entry_rule(), "same tool and same length", 25) == 0);
    CHECK(strlen(threadcalc_re_entry_rule()) > 100);
}

static void of_wires(void)
{
    static const int32_t numbers[] = {-1, 2, 99, INT32_MAX, INT32_MIN};
    const threadcalc_thread_t thread = good_thread(), pipe = taper();
    const threadcalc_ratio_t wire = ratio(29, 40), diameter = ratio(1797, 250);
    const threadcalc_ratio_t none = ratio(0, 0), no_parts = ratio(1, 0);
    double over;
    size_t place;
    REFUSED(IS_NULL, over, threadcalc_best_wire_mm(NULL, &over, NULL));
    CHECK(threadcalc_best_wire_mm(&thread, NULL, NULL) == IS_NULL);
    REFUSED(NOT_THIS, over, threadcalc_best_wire_mm(&pipe, &over, NULL));
    REFUSED(IS_NULL, over, threadcalc_over_wires(NULL, &wire, &diameter, 0, &over, NULL));
    REFUSED(IS_NULL, over, threadcalc_over_wires(&thread, NULL, &diameter, 0, &over, NULL));
    REFUSED(IS_NULL, over, threadcalc_over_wires(&thread, &wire, NULL, 0, &over, NULL));
    CHECK(threadcalc_over_wires(&thread, &wire, &diameter, 0, NULL, NULL) == IS_NULL);
    REFUSED(MISSING, over, threadcalc_over_wires(&thread, &none, &diameter, 0, &over, NULL));
    REFUSED(MISSING, over, threadcalc_over_wires(&thread, &wire, &none, 0, &over, NULL));
    REFUSED(RANGE, over, threadcalc_over_wires(&thread, &no_parts, &diameter, 0, &over, NULL));
    REFUSED(RANGE, over, threadcalc_over_wires(&thread, &wire, &no_parts, 0, &over, NULL));
    REFUSED(NOT_THIS, over, threadcalc_over_wires(&pipe, &wire, &diameter, 0, &over, NULL));
    for (place = 0; place < sizeof numbers / sizeof numbers[0]; place++) {
        REFUSED(UNKNOWN, over, threadcalc_over_wires(&thread, &wire, &diameter, numbers[place], &over, NULL));
    }
}

static void of_names(void)
{
    static const int32_t numbers[] = {0, -1, 50000, INT32_MAX, INT32_MIN};
    size_t place;
    for (place = 0; place < sizeof numbers / sizeof numbers[0]; place++) {
        const int32_t number = numbers[place];
        CHECK(strcmp(threadcalc_tap_kind_name(number), "unknown") == 0);
        CHECK(strcmp(threadcalc_suits_name(number), "unknown") == 0);
        CHECK(strcmp(threadcalc_chamfer_form_name(number), "unknown") == 0);
        CHECK(strcmp(threadcalc_iso_tap_class_name(number), "unknown") == 0);
        CHECK(strcmp(threadcalc_limit_letter_name(number), "unknown") == 0);
        CHECK(strcmp(threadcalc_gauge_name(number), "unknown") == 0);
        CHECK(strcmp(threadcalc_gauge_reading_name(number), "unknown") == 0);
        CHECK(strcmp(threadcalc_verdict_name(number), "unknown") == 0);
        CHECK(strcmp(threadcalc_move_name(number), "unknown") == 0);
    }
}

void bad_gauges(void)
{
    of_gauges();
    of_moves();
    of_depths_and_planes();
    of_wires();
    of_names();
}
