/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* Numbers, choices and texts that mean nothing. */
#include "bad_input.h"

#include <float.h>
#include <math.h>

enum {
    OK = THREADCALC_STATUS_OK,
    MISSING = THREADCALC_STATUS_MISSING,
    UNKNOWN = THREADCALC_STATUS_UNKNOWN_VALUE,
    RANGE = THREADCALC_STATUS_OUT_OF_RANGE,
    NOT_EXACT = THREADCALC_STATUS_NOT_EXACT,
    OVERFLOW_ = THREADCALC_STATUS_OVERFLOW
};

static void doubles(void)
{
    static const double inexact[] = {NAN, INFINITY, -INFINITY, DBL_MIN, 1e-10, 1.0 / 3.0};
    static const double too_large[] = {DBL_MAX, -DBL_MAX, 1e300, 1e19, -1e19};
    threadcalc_ratio_t number;
    char text[64];
    size_t place, needed = 0;
    for (place = 0; place < sizeof inexact / sizeof inexact[0]; place++) {
        REFUSED(NOT_EXACT, number, threadcalc_exact_number(inexact[place], &number, NULL));
        REFUSED(NOT_EXACT, text,
                threadcalc_feed_word(TEXT("M8"), inexact[place], 1, 1, 3, text, sizeof text, &needed));
    }
    for (place = 0; place < sizeof too_large / sizeof too_large[0]; place++) {
        REFUSED(OVERFLOW_, number, threadcalc_exact_number(too_large[place], &number, NULL));
        REFUSED(OVERFLOW_, text,
                threadcalc_feed_word(TEXT("M8"), too_large[place], 1, 1, 3, text, sizeof text, &needed));
    }
    REFUSED(RANGE, text, threadcalc_feed_word(TEXT("M8"), 0.0, 1, 1, 3, text, sizeof text, &needed));
    REFUSED(RANGE, text, threadcalc_feed_word(TEXT("M8"), -1.0, 1, 1, 3, text, sizeof text, &needed));
    CHECK(threadcalc_exact_number(6.8, &number, NULL) == OK && number.numerator == 34 && number.denominator == 5);
    CHECK(threadcalc_exact_number(-0.0, &number, NULL) == OK && number.numerator == 0 && number.denominator == 1);
}

static void ratios(void)
{
    const threadcalc_ratio_t none = ratio(0, 0), no_parts = ratio(1, 0), good = ratio(600, 1);
    const threadcalc_ratio_t most = ratio(INT64_MIN, -1);
    threadcalc_ratio_t number;
    threadcalc_feed_request_t asked = good_feed();
    threadcalc_feed_t feed;
    threadcalc_thread_t thread;
    double value;
    char text[64];
    size_t needed = 0;
    REFUSED(MISSING, value, threadcalc_nearest_double(&none, &value, NULL));
    REFUSED(RANGE, value, threadcalc_nearest_double(&no_parts, &value, NULL));
    REFUSED(MISSING, text, threadcalc_write_number(&none, text, sizeof text, &needed, NULL));
    REFUSED(RANGE, text, threadcalc_write_number(&no_parts, text, sizeof text, &needed, NULL));
    REFUSED(OVERFLOW_, text, threadcalc_write_number(&most, text, sizeof text, &needed, NULL));
    REFUSED(RANGE, number, threadcalc_programmed_speed(&good, &no_parts, NULL, NULL, &number, NULL));
    REFUSED(RANGE, number, threadcalc_programmed_speed(&good, NULL, &no_parts, NULL, &number, NULL));
    REFUSED(RANGE, number, threadcalc_programmed_speed(&good, NULL, NULL, &no_parts, &number, NULL));
    REFUSED(RANGE, thread, threadcalc_thread_metric(&good, &no_parts, &thread, NULL));
    REFUSED(MISSING, thread, threadcalc_thread_metric(&none, &good, &thread, NULL));
    REFUSED(MISSING, thread, threadcalc_thread_unified(&good, &none, &thread, NULL));
    REFUSED(MISSING, thread, threadcalc_thread_unified_size(TEXT("1/4"), &none, &thread, NULL));
    REFUSED(THREADCALC_STATUS_UNREADABLE, thread, threadcalc_thread_unified_size(TEXT("1/4 x"), &good, &thread, NULL));
    asked.decimals = ratio(7, 2);
    REFUSED(RANGE, feed, threadcalc_feed(&asked, &feed, sizeof feed, NULL));
    asked.decimals = ratio(INT64_MAX, 1);
    REFUSED(RANGE, feed, threadcalc_feed(&asked, &feed, sizeof feed, NULL));
    asked.decimals = ratio(3, 1);
    asked.lead_mm = ratio(-5, 4);
    REFUSED(RANGE, feed, threadcalc_feed(&asked, &feed, sizeof feed, NULL));
    asked.lead_mm = ratio(5, 0);
    REFUSED(RANGE, feed, threadcalc_feed(&asked, &feed, sizeof feed, NULL));
    asked.lead_mm = ratio(INT64_MAX, 1);
    REFUSED(OVERFLOW_, feed, threadcalc_feed(&asked, &feed, sizeof feed, NULL));
}

static void choices(void)
{
    static const int32_t numbers[] = {-1, 3, 99, INT32_MAX, INT32_MIN};
    const threadcalc_ratio_t percent = ratio(75, 1), good = ratio(600, 1);
    const threadcalc_thread_t thread = good_thread();
    threadcalc_feed_t feed;
    threadcalc_tap_drill_t drill;
    threadcalc_depths_t depths;
    threadcalc_plan_t plan;
    threadcalc_drill_t named, own;
    int64_t speeds[1];
    char text[64];
    double value;
    size_t place, count = 0;
    CHECK(threadcalc_drill_named(1, TEXT("6.8"), &own, NULL) == OK);
    for (place = 0; place < sizeof numbers / sizeof numbers[0]; place++) {
        const int32_t number = numbers[place];
        threadcalc_feed_request_t asked = good_feed();
        threadcalc_tap_drill_request_t wanted = good_drill();
        threadcalc_depth_request_t depth = good_depth();
        threadcalc_job_t job = good_job();
        threadcalc_thread_t other = thread;
        asked.unit = number;
        REFUSED(UNKNOWN, feed, threadcalc_feed(&asked, &feed, sizeof feed, NULL));
        asked = good_feed();
        asked.mode = number;
        REFUSED(UNKNOWN, feed, threadcalc_feed(&asked, &feed, sizeof feed, NULL));
        wanted.tap = number;
        REFUSED(UNKNOWN, drill, threadcalc_tap_drill(&thread, &wanted, &drill, sizeof drill, NULL));
        wanted = good_drill();
        wanted.basis = number;
        REFUSED(UNKNOWN, drill, threadcalc_tap_drill(&thread, &wanted, &drill, sizeof drill, NULL));
        depth.hole = number;
        REFUSED(UNKNOWN, depths, threadcalc_depths(&thread, &depth, &depths, sizeof depths, NULL));
        depth = good_depth();
        depth.tap_set_on = number;
        REFUSED(UNKNOWN, depths, threadcalc_depths(&thread, &depth, &depths, sizeof depths, NULL));
        job.unit = number;
        REFUSED(UNKNOWN, plan, threadcalc_plan(&job, &plan, sizeof plan, NULL));
        job = good_job();
        job.tap_set_on = number;
        REFUSED(UNKNOWN, plan, threadcalc_plan(&job, &plan, sizeof plan, NULL));
        other.form = number == 3 ? THREADCALC_FORM_PULL_BUTTRESS + 1 : number;
        REFUSED(UNKNOWN, text, threadcalc_thread_write(&other, text, sizeof text, &count, NULL));
        other = thread;
        other.hand = number;
        REFUSED(UNKNOWN, text, threadcalc_thread_write(&other, text, sizeof text, &count, NULL));
        other = thread;
        other.side = number;
        REFUSED(UNKNOWN, text, threadcalc_thread_write(&other, text, sizeof text, &count, NULL));
        other = thread;
        other.written_as = number == 3 ? THREADCALC_WRITTEN_AS_AMERICAN_NATIONAL + 1 : number;
        REFUSED(UNKNOWN, text, threadcalc_thread_write(&other, text, sizeof text, &count, NULL));
        other = thread;
        other.wire_insert = number;
        REFUSED(UNKNOWN, text, threadcalc_thread_write(&other, text, sizeof text, &count, NULL));
        wanted = good_drill();
        wanted.taper_reamer = number;
        REFUSED(UNKNOWN, drill, threadcalc_tap_drill(&thread, &wanted, &drill, sizeof drill, NULL));
        REFUSED(UNKNOWN, other,
                threadcalc_standard_threads(number == 3 ? THREADCALC_FORM_PULL_BUTTRESS + 1 : number, 0, &other, 1, &count, NULL));
        REFUSED(UNKNOWN, value, threadcalc_drill_diameter(&thread, &percent, number, 1, &value, NULL));
        REFUSED(UNKNOWN, value, threadcalc_percent_thread(&thread, &percent, 1, number, &value, NULL));
        REFUSED(UNKNOWN, speeds, threadcalc_exact_speeds(&good, &good, number, 3, 1, 0, speeds, 1, &count, NULL));
        REFUSED(UNKNOWN, speeds,
                threadcalc_nearest_exact_speeds(&good, &good, number, 3, NULL, NULL, NULL, speeds, speeds, NULL));
        REFUSED(UNKNOWN, drill, threadcalc_judge_drill(&thread, &own, number, 0, NULL, &drill, sizeof drill, NULL));
        REFUSED(UNKNOWN, drill, threadcalc_judge_drill(&thread, &own, 1, number, NULL, &drill, sizeof drill, NULL));
        named = own;
        named.set = number == 3 ? THREADCALC_DRILL_SET_FRACTIONAL + 1 : number;
        REFUSED(UNKNOWN, drill, threadcalc_judge_drill(&thread, &named, 1, 0, NULL, &drill, sizeof drill, NULL));
        REFUSED(UNKNOWN, text, threadcalc_feed_word(TEXT("M8"), 600.0, number, 1, 3, text, sizeof text, &count));
        REFUSED(UNKNOWN, text, threadcalc_feed_word(TEXT("M8"), 600.0, 1, number, 3, text, sizeof text, &count));
    }
    REFUSED(UNKNOWN, named, threadcalc_drill_named(5, TEXT("6.8"), &named, NULL));
    REFUSED(MISSING, named, threadcalc_drill_named(0, TEXT("6.8"), &named, NULL));
    REFUSED(UNKNOWN, named, threadcalc_drills(16, &named, 1, &count, NULL));
    REFUSED(UNKNOWN, named, threadcalc_drills(UINT32_MAX, &named, 1, &count, NULL));
    REFUSED(RANGE, text, threadcalc_feed_word(TEXT("M8"), 600.0, 1, 1, -1, text, sizeof text, &count));
    REFUSED(RANGE, text, threadcalc_feed_word(TEXT("M8"), 600.0, 1, 1, INT32_MAX, text, sizeof text, &count));
}

static void texts(void)
{
    static const uint8_t with_nul[] = {'M', '8', 0, 'x', '1'};
    static const uint8_t no_text[] = {0xFF, 0xFE, 0x80};
    threadcalc_thread_t thread = good_thread();
    threadcalc_ratio_t number;
    threadcalc_drill_t drill;
    threadcalc_error_t error;
    char text[64];
    size_t needed = 0;
    memset(thread.tolerance_class, 'X', sizeof thread.tolerance_class);
    REFUSED(THREADCALC_STATUS_UNKNOWN_CLASS, text,
            threadcalc_thread_write(&thread, text, sizeof text, &needed, NULL));
    REFUSED(THREADCALC_STATUS_UNREADABLE, thread, threadcalc_thread_read(with_nul, sizeof with_nul, &thread, &error));
    CHECK(error.at == 2);
    REFUSED(THREADCALC_STATUS_UNREADABLE, thread, threadcalc_thread_read(no_text, sizeof no_text, &thread, &error));
    CHECK(error.at == 0);
    REFUSED(THREADCALC_STATUS_EMPTY, thread, threadcalc_thread_read(no_text, 0, &thread, NULL));
    REFUSED(THREADCALC_STATUS_TOO_LONG, thread, threadcalc_thread_read(no_text, SIZE_MAX, &thread, NULL));
    REFUSED(THREADCALC_STATUS_TOO_LONG, number, threadcalc_read_number(no_text, SIZE_MAX, &number, NULL));
    REFUSED(THREADCALC_STATUS_UNREADABLE, number, threadcalc_read_number(TEXT("1\0" "2"), &number, NULL));
    REFUSED(UNKNOWN, drill, threadcalc_drill_named(1, TEXT("6.8\0"), &drill, NULL));
}

static void names(void)
{
    static const int32_t numbers[] = {-1, 50000, INT32_MAX, INT32_MIN};
    size_t place;
    for (place = 0; place < sizeof numbers / sizeof numbers[0]; place++) {
        const int32_t number = numbers[place];
        CHECK(strcmp(threadcalc_status_name(number), "unknown") == 0);
        CHECK(strcmp(threadcalc_field_name(number), "unknown") == 0);
        CHECK(strcmp(threadcalc_finding_name(number), "unknown") == 0);
        CHECK(strcmp(threadcalc_finding_message(number), "unknown") == 0);
        CHECK(strcmp(threadcalc_severity_name(number), "unknown") == 0);
        CHECK(strcmp(threadcalc_number_name(number), "unknown") == 0);
        CHECK(strcmp(threadcalc_form_name(number), "unknown") == 0);
        CHECK(strcmp(threadcalc_form_symbol(number), "unknown") == 0);
        CHECK(strcmp(threadcalc_written_as_name(number), "unknown") == 0);
        CHECK(strcmp(threadcalc_series_name(number), "unknown") == 0);
        CHECK(strcmp(threadcalc_hand_name(number), "unknown") == 0);
        CHECK(strcmp(threadcalc_side_name(number), "unknown") == 0);
        CHECK(strcmp(threadcalc_drill_set_name(number), "unknown") == 0);
        CHECK(strcmp(threadcalc_within_limits_name(number), "unknown") == 0);
        CHECK(strcmp(threadcalc_confidence_name(number), "unknown") == 0);
    }
    CHECK(threadcalc_abi_version() == THREADCALC_ABI_VERSION);
    CHECK(strcmp(threadcalc_version(), THREADCALC_VERSION) == 0);
}

void bad_values(void)
{
    doubles();
    ratios();
    choices();
    texts();
    names();
}
