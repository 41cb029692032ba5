/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* NULL for each pointer of each call in turn. */
#include "bad_input.h"

enum { IS_NULL = THREADCALC_STATUS_NULL_POINTER, OK = THREADCALC_STATUS_OK };

static void in_texts(void)
{
    char text[64];
    size_t needed;
    const threadcalc_thread_t thread = good_thread();
    const threadcalc_ratio_t number = ratio(1, 4);
    const threadcalc_job_t job = good_job();
    REFUSED(IS_NULL, text, threadcalc_thread_write(NULL, text, sizeof text, &needed, NULL));
    REFUSED(IS_NULL, needed, threadcalc_thread_write(&thread, NULL, 64, &needed, NULL));
    REFUSED(IS_NULL, text, threadcalc_thread_write(&thread, text, sizeof text, NULL, NULL));
    REFUSED(IS_NULL, text, threadcalc_thread_size_text(NULL, text, sizeof text, &needed, NULL));
    REFUSED(IS_NULL, needed, threadcalc_thread_size_text(&thread, NULL, 64, &needed, NULL));
    REFUSED(IS_NULL, text, threadcalc_thread_size_text(&thread, text, sizeof text, NULL, NULL));
    REFUSED(IS_NULL, text, threadcalc_write_number(NULL, text, sizeof text, &needed, NULL));
    REFUSED(IS_NULL, needed, threadcalc_write_number(&number, NULL, 64, &needed, NULL));
    REFUSED(IS_NULL, text, threadcalc_write_number(&number, text, sizeof text, NULL, NULL));
    REFUSED(IS_NULL, text, threadcalc_plan_text(NULL, text, sizeof text, &needed, NULL));
    REFUSED(IS_NULL, needed, threadcalc_plan_text(&job, NULL, 64, &needed, NULL));
    REFUSED(IS_NULL, text, threadcalc_plan_text(&job, text, sizeof text, NULL, NULL));
    REFUSED(IS_NULL, text, threadcalc_plan_json_of_job(NULL, text, sizeof text, &needed, NULL));
    REFUSED(IS_NULL, needed, threadcalc_plan_json_of_job(&job, NULL, 64, &needed, NULL));
    REFUSED(IS_NULL, text, threadcalc_plan_json_of_job(&job, text, sizeof text, NULL, NULL));
    REFUSED(IS_NULL, text, threadcalc_plan_json(NULL, 2, text, sizeof text, &needed));
    REFUSED(IS_NULL, needed, threadcalc_plan_json(TEXT(GOOD_JSON "}"), NULL, 64, &needed));
    REFUSED(IS_NULL, text, threadcalc_plan_json(TEXT(GOOD_JSON "}"), text, sizeof text, NULL));
    REFUSED(IS_NULL, text, threadcalc_plan_json_with_error(NULL, 2, text, sizeof text, &needed, NULL));
    REFUSED(IS_NULL, needed, threadcalc_plan_json_with_error(TEXT(GOOD_JSON "}"), NULL, 64, &needed, NULL));
    REFUSED(IS_NULL, text, threadcalc_plan_json_with_error(TEXT(GOOD_JSON "}"), text, sizeof text, NULL, NULL));
    REFUSED(IS_NULL, text, threadcalc_feed_word(NULL, 2, 600.0, 1, 1, 3, text, sizeof text, &needed));
    REFUSED(IS_NULL, needed, threadcalc_feed_word(TEXT("M8"), 600.0, 1, 1, 3, NULL, 64, &needed));
    REFUSED(IS_NULL, text, threadcalc_feed_word(TEXT("M8"), 600.0, 1, 1, 3, text, sizeof text, NULL));
}

static void in_threads(void)
{
    const threadcalc_ratio_t number = ratio(1, 1);
    threadcalc_thread_t out;
    threadcalc_profile_t profile;
    threadcalc_limits_t limits;
    threadcalc_pipe_t pipe;
    int32_t number_out;
    threadcalc_finding_t findings[2];
    int64_t numerator, denominator;
    size_t count;
    const threadcalc_thread_t thread = good_thread();
    REFUSED(IS_NULL, out, threadcalc_thread_read(NULL, 2, &out, NULL));
    REFUSED(IS_NULL, out, threadcalc_thread_read(NULL, 0, &out, NULL));
    CHECK(threadcalc_thread_read(TEXT("M8"), NULL, NULL) == IS_NULL);
    REFUSED(IS_NULL, out, threadcalc_thread_metric(NULL, &number, &out, NULL));
    REFUSED(IS_NULL, out, threadcalc_thread_metric(&number, NULL, &out, NULL));
    CHECK(threadcalc_thread_metric(&number, &number, NULL, NULL) == IS_NULL);
    REFUSED(IS_NULL, out, threadcalc_thread_unified(NULL, &number, &out, NULL));
    REFUSED(IS_NULL, out, threadcalc_thread_unified(&number, NULL, &out, NULL));
    CHECK(threadcalc_thread_unified(&number, &number, NULL, NULL) == IS_NULL);
    REFUSED(IS_NULL, out, threadcalc_thread_unified_size(NULL, 3, &number, &out, NULL));
    REFUSED(IS_NULL, out, threadcalc_thread_unified_size(TEXT("1/4"), NULL, &out, NULL));
    CHECK(threadcalc_thread_unified_size(TEXT("1/4"), &number, NULL, NULL) == IS_NULL);
    REFUSED(IS_NULL, findings, threadcalc_thread_findings(NULL, findings, 2, &count, NULL));
    REFUSED(IS_NULL, count, threadcalc_thread_findings(&thread, NULL, 2, &count, NULL));
    REFUSED(IS_NULL, findings, threadcalc_thread_findings(&thread, findings, 2, NULL, NULL));
    REFUSED(IS_NULL, count, threadcalc_standard_threads(0, 0, NULL, 1, &count, NULL));
    REFUSED(IS_NULL, out, threadcalc_standard_threads(0, 0, &out, 1, NULL, NULL));
    REFUSED(IS_NULL, profile, threadcalc_profile(NULL, &profile, sizeof profile, NULL));
    CHECK(threadcalc_profile(&thread, NULL, sizeof profile, NULL) == IS_NULL);
    CHECK(threadcalc_read_fit(TEXT("M8-6H/6g"), NULL, &out, NULL) == IS_NULL);
    REFUSED(IS_NULL, out, threadcalc_read_fit(TEXT("M8-6H/6g"), &out, NULL, NULL));
    REFUSED(IS_NULL, out, threadcalc_read_fit(NULL, 2, &out, &out, NULL));
    REFUSED(IS_NULL, number_out, threadcalc_choice(NULL, &number_out, NULL));
    CHECK(threadcalc_choice(&thread, NULL, NULL) == IS_NULL);
    REFUSED(IS_NULL, number_out, threadcalc_is_iso_262(NULL, &number_out, NULL));
    CHECK(threadcalc_is_iso_262(&thread, NULL, NULL) == IS_NULL);
    REFUSED(IS_NULL, pipe, threadcalc_pipe(NULL, &pipe, sizeof pipe, NULL));
    CHECK(threadcalc_pipe(&thread, NULL, sizeof pipe, NULL) == IS_NULL);
    REFUSED(IS_NULL, limits, threadcalc_limits(NULL, &limits, sizeof limits, NULL));
    CHECK(threadcalc_limits(&thread, NULL, sizeof limits, NULL) == IS_NULL);
    REFUSED(IS_NULL, numerator, threadcalc_lead(NULL, 2, &numerator, &denominator));
    REFUSED(IS_NULL, denominator, threadcalc_lead(TEXT("M8"), NULL, &denominator));
    REFUSED(IS_NULL, numerator, threadcalc_lead(TEXT("M8"), &numerator, NULL));
}

static void in_numbers_and_feeds(void)
{
    const threadcalc_ratio_t number = ratio(600, 1);
    const threadcalc_feed_request_t asked = good_feed();
    threadcalc_ratio_t out;
    threadcalc_feed_t feed;
    int64_t speeds[2];
    size_t count;
    double value;
    REFUSED(IS_NULL, out, threadcalc_read_number(NULL, 1, &out, NULL));
    CHECK(threadcalc_read_number(TEXT("1"), NULL, NULL) == IS_NULL);
    CHECK(threadcalc_exact_number(1.5, NULL, NULL) == IS_NULL);
    REFUSED(IS_NULL, value, threadcalc_nearest_double(NULL, &value, NULL));
    CHECK(threadcalc_nearest_double(&number, NULL, NULL) == IS_NULL);
    REFUSED(IS_NULL, out, threadcalc_programmed_speed(NULL, NULL, NULL, NULL, &out, NULL));
    CHECK(threadcalc_programmed_speed(&number, NULL, NULL, NULL, NULL, NULL) == IS_NULL);
    CHECK(threadcalc_programmed_speed(&number, NULL, NULL, NULL, &out, NULL) == OK && out.numerator == 600);
    REFUSED(IS_NULL, feed, threadcalc_feed(NULL, &feed, sizeof feed, NULL));
    CHECK(threadcalc_feed(&asked, NULL, sizeof feed, NULL) == IS_NULL);
    REFUSED(IS_NULL, speeds, threadcalc_exact_speeds(NULL, &number, 1, 3, 1, 0, speeds, 2, &count, NULL));
    REFUSED(IS_NULL, speeds, threadcalc_exact_speeds(&number, NULL, 1, 3, 1, 0, speeds, 2, &count, NULL));
    REFUSED(IS_NULL, count, threadcalc_exact_speeds(&number, &number, 1, 3, 1, 0, NULL, 2, &count, NULL));
    REFUSED(IS_NULL, speeds, threadcalc_exact_speeds(&number, &number, 1, 3, 1, 0, speeds, 2, NULL, NULL));
}

static void in_judged_drills(void)
{
    const threadcalc_ratio_t number = ratio(34, 5);
    const threadcalc_thread_t thread = good_thread();
    threadcalc_tap_drill_request_t asked = good_drill();
    threadcalc_drill_t drill, blank;
    threadcalc_tap_drill_t found;
    threadcalc_ratio_t least, most;
    int64_t below, above;
    memset(&blank, 0, sizeof blank);
    REFUSED(IS_NULL, drill, threadcalc_read_drill(NULL, 1, &drill, NULL));
    CHECK(threadcalc_read_drill(TEXT("6.8"), NULL, NULL) == IS_NULL);
    REFUSED(THREADCALC_STATUS_TOO_LONG, drill, threadcalc_read_drill((const uint8_t *)"6.8", SIZE_MAX, &drill, NULL));
    CHECK(threadcalc_read_drill(TEXT("6.8"), &drill, NULL) == OK);
    REFUSED(IS_NULL, least, threadcalc_probable_hole(NULL, NULL, &least, NULL));
    CHECK(threadcalc_probable_hole(&drill, NULL, NULL, NULL) == IS_NULL);
    CHECK(threadcalc_probable_hole(&drill, NULL, &least, NULL) == OK && least.numerator == 55 && least.denominator == 8);
    REFUSED(IS_NULL, least, threadcalc_form_hole(NULL, &least, &most, NULL));
    REFUSED(IS_NULL, most, threadcalc_form_hole(&thread, NULL, &most, NULL));
    REFUSED(IS_NULL, least, threadcalc_form_hole(&thread, &least, NULL, NULL));
    REFUSED(IS_NULL, found, threadcalc_judge_drill(NULL, &drill, 1, 0, NULL, &found, sizeof found, NULL));
    REFUSED(IS_NULL, found, threadcalc_judge_drill(&thread, NULL, 1, 0, NULL, &found, sizeof found, NULL));
    CHECK(threadcalc_judge_drill(&thread, &drill, 1, 0, NULL, NULL, sizeof found, NULL) == IS_NULL);
    REFUSED(THREADCALC_STATUS_STRUCTURE_SIZE, found, threadcalc_judge_drill(&thread, &drill, 1, 0, NULL, &found, 0, NULL));
    REFUSED(THREADCALC_STATUS_MISSING, found,
            threadcalc_judge_drill(&thread, &blank, 1, 0, NULL, &found, sizeof found, NULL));
    asked.sets = 0;
    asked.drill_count = 1;
    REFUSED(IS_NULL, found, threadcalc_tap_drill(&thread, &asked, &found, sizeof found, NULL));
    asked.drills = &drill;
    asked.drill_count = 25;
    REFUSED(THREADCALC_STATUS_TOO_LONG, found, threadcalc_tap_drill(&thread, &asked, &found, sizeof found, NULL));
    asked.drill_count = SIZE_MAX;
    REFUSED(THREADCALC_STATUS_TOO_LONG, found, threadcalc_tap_drill(&thread, &asked, &found, sizeof found, NULL));
    asked.drill_count = 0;
    REFUSED(THREADCALC_STATUS_MISSING, found, threadcalc_tap_drill(&thread, &asked, &found, sizeof found, NULL));
    asked.drill_count = 1;
    CHECK(threadcalc_tap_drill(&thread, &asked, &found, sizeof found, NULL) == OK);
    asked.sets = 1;
    REFUSED(THREADCALC_STATUS_CONTRADICTION, found,
            threadcalc_tap_drill(&thread, &asked, &found, sizeof found, NULL));
    REFUSED(IS_NULL, below,
            threadcalc_nearest_exact_speeds(NULL, &number, 1, 3, NULL, NULL, NULL, &below, &above, NULL));
    REFUSED(IS_NULL, below,
            threadcalc_nearest_exact_speeds(&number, NULL, 1, 3, NULL, NULL, NULL, &below, &above, NULL));
    REFUSED(IS_NULL, above,
            threadcalc_nearest_exact_speeds(&number, &number, 1, 3, NULL, NULL, NULL, NULL, &above, NULL));
    REFUSED(IS_NULL, below,
            threadcalc_nearest_exact_speeds(&number, &number, 1, 3, NULL, NULL, NULL, &below, NULL, NULL));
}

static void in_drills_and_plans(void)
{
    const threadcalc_ratio_t number = ratio(34, 5), percent = ratio(75, 1);
    const threadcalc_tap_drill_request_t asked = good_drill();
    const threadcalc_depth_request_t depth = good_depth();
    const threadcalc_thread_t thread = good_thread();
    const threadcalc_job_t job = good_job();
    threadcalc_drill_t drill;
    threadcalc_tap_drill_t found;
    threadcalc_depths_t depths;
    threadcalc_taper_depths_t taper_depths;
    threadcalc_plan_t plan;
    const threadcalc_taper_depth_request_t taper = good_taper_depth();
    size_t count;
    double value;
    REFUSED(IS_NULL, count, threadcalc_drills(1, NULL, 1, &count, NULL));
    REFUSED(IS_NULL, drill, threadcalc_drills(1, &drill, 1, NULL, NULL));
    REFUSED(IS_NULL, drill, threadcalc_drill_named(1, NULL, 1, &drill, NULL));
    CHECK(threadcalc_drill_named(1, TEXT("6.8"), NULL, NULL) == IS_NULL);
    REFUSED(IS_NULL, drill, threadcalc_drill_of_diameter(NULL, &drill, NULL));
    CHECK(threadcalc_drill_of_diameter(&number, NULL, NULL) == IS_NULL);
    REFUSED(IS_NULL, value, threadcalc_drill_diameter(NULL, &percent, 1, 1, &value, NULL));
    REFUSED(IS_NULL, value, threadcalc_drill_diameter(&thread, NULL, 1, 1, &value, NULL));
    CHECK(threadcalc_drill_diameter(&thread, &percent, 1, 1, NULL, NULL) == IS_NULL);
    REFUSED(IS_NULL, value, threadcalc_percent_thread(NULL, &number, 1, 1, &value, NULL));
    REFUSED(IS_NULL, value, threadcalc_percent_thread(&thread, NULL, 1, 1, &value, NULL));
    CHECK(threadcalc_percent_thread(&thread, &number, 1, 1, NULL, NULL) == IS_NULL);
    REFUSED(IS_NULL, found, threadcalc_tap_drill(NULL, &asked, &found, sizeof found, NULL));
    REFUSED(IS_NULL, found, threadcalc_tap_drill(&thread, NULL, &found, sizeof found, NULL));
    CHECK(threadcalc_tap_drill(&thread, &asked, NULL, sizeof found, NULL) == IS_NULL);
    REFUSED(IS_NULL, depths, threadcalc_depths(NULL, &depth, &depths, sizeof depths, NULL));
    REFUSED(IS_NULL, depths, threadcalc_depths(&thread, NULL, &depths, sizeof depths, NULL));
    CHECK(threadcalc_depths(&thread, &depth, NULL, sizeof depths, NULL) == IS_NULL);
    REFUSED(IS_NULL, taper_depths, threadcalc_taper_depths(NULL, &taper, &taper_depths, sizeof taper_depths, NULL));
    REFUSED(IS_NULL, taper_depths, threadcalc_taper_depths(&thread, NULL, &taper_depths, sizeof taper_depths, NULL));
    CHECK(threadcalc_taper_depths(&thread, &taper, NULL, sizeof taper_depths, NULL) == IS_NULL);
    REFUSED(IS_NULL, plan, threadcalc_plan(NULL, &plan, sizeof plan, NULL));
    CHECK(threadcalc_plan(&job, NULL, sizeof plan, NULL) == IS_NULL);
}

static void the_error(void)
{
    threadcalc_error_t error;
    threadcalc_thread_t thread;
    memset(&error, 0xA5, sizeof error);
    CHECK(threadcalc_thread_read(NULL, 2, &thread, &error) == IS_NULL);
    CHECK(error.code == IS_NULL && error.at == -1 && error.got != error.got);
    CHECK(memchr(error.message, '\0', sizeof error.message) != NULL && error.message[0] != '\0');
    memset(&error, 0xA5, sizeof error);
    CHECK(threadcalc_thread_read(TEXT("M8"), &thread, &error) == OK);
    CHECK(bad_input_untouched(&error, sizeof error));
}

void bad_pointers(void)
{
    in_texts();
    in_threads();
    in_numbers_and_feeds();
    in_drills_and_plans();
    in_judged_drills();
    the_error();
}
