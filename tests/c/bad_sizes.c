/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* Requests and results of sizes that are not the library's own. */
#include "bad_input.h"

enum { IS_SIZE = THREADCALC_STATUS_STRUCTURE_SIZE, IS_FIELD = THREADCALC_STATUS_UNSUPPORTED_FIELD };
enum { OK = THREADCALC_STATUS_OK, TAIL = 64 };

/* Sizes that no version of a request has had. */
static const uint32_t wrong[] = {0, 1, 3, 4, 5, 4097, UINT32_MAX};
static const size_t wrong_count = sizeof wrong / sizeof wrong[0];

static void of_feeds(void)
{
    struct { threadcalc_feed_request_t asked; unsigned char tail[TAIL]; } longer;
    threadcalc_feed_t found;
    size_t place;
    for (place = 0; place <= wrong_count; place++) {
        threadcalc_feed_request_t asked = good_feed();
        asked.size = place < wrong_count ? wrong[place] : (uint32_t)sizeof asked - 1;
        REFUSED(IS_SIZE, found, threadcalc_feed(&asked, &found, sizeof found, NULL));
    }
    memset(&longer, 0, sizeof longer);
    longer.asked = good_feed();
    longer.asked.size = (uint32_t)sizeof longer;
    CHECK(threadcalc_feed(&longer.asked, &found, sizeof found, NULL) == OK && strcmp(found.word, "F750.") == 0);
    longer.tail[TAIL - 1] = 1;
    REFUSED(IS_FIELD, found, threadcalc_feed(&longer.asked, &found, sizeof found, NULL));
    longer.tail[TAIL - 1] = 0;
    longer.asked.reserved = 1;
    REFUSED(IS_FIELD, found, threadcalc_feed(&longer.asked, &found, sizeof found, NULL));
}

static void of_tap_drills(void)
{
    struct { threadcalc_tap_drill_request_t asked; unsigned char tail[TAIL]; } longer;
    const threadcalc_thread_t thread = good_thread();
    threadcalc_tap_drill_t found;
    size_t place;
    for (place = 0; place <= wrong_count; place++) {
        threadcalc_tap_drill_request_t asked = good_drill();
        asked.size = place < wrong_count ? wrong[place] : (uint32_t)sizeof asked - 1;
        REFUSED(IS_SIZE, found, threadcalc_tap_drill(&thread, &asked, &found, sizeof found, NULL));
    }
    memset(&longer, 0, sizeof longer);
    longer.asked = good_drill();
    longer.asked.size = (uint32_t)sizeof longer;
    CHECK(threadcalc_tap_drill(&thread, &longer.asked, &found, sizeof found, NULL) == OK);
    CHECK(strcmp(found.chosen.drill.name, "6.75") == 0);
    longer.tail[0] = 1;
    REFUSED(IS_FIELD, found, threadcalc_tap_drill(&thread, &longer.asked, &found, sizeof found, NULL));
    longer.tail[0] = 0;
    longer.asked.reserved = 1;
    REFUSED(IS_FIELD, found, threadcalc_tap_drill(&thread, &longer.asked, &found, sizeof found, NULL));
}

static void of_depths(void)
{
    struct { threadcalc_depth_request_t asked; unsigned char tail[TAIL]; } longer;
    const threadcalc_thread_t thread = good_thread();
    threadcalc_depths_t found;
    size_t place;
    for (place = 0; place <= wrong_count; place++) {
        threadcalc_depth_request_t asked = good_depth();
        asked.size = place < wrong_count ? wrong[place] : (uint32_t)sizeof asked - 1;
        REFUSED(IS_SIZE, found, threadcalc_depths(&thread, &asked, &found, sizeof found, NULL));
    }
    memset(&longer, 0, sizeof longer);
    longer.asked = good_depth();
    longer.asked.size = (uint32_t)sizeof longer;
    CHECK(threadcalc_depths(&thread, &longer.asked, &found, sizeof found, NULL) == OK);
    CHECK(found.tap_mm.numerator == 79 && found.tap_mm.denominator == 4);
    longer.tail[0] = 1;
    REFUSED(IS_FIELD, found, threadcalc_depths(&thread, &longer.asked, &found, sizeof found, NULL));
    longer.tail[0] = 0;
    longer.asked.reserved = 1;
    REFUSED(IS_FIELD, found, threadcalc_depths(&thread, &longer.asked, &found, sizeof found, NULL));
}

static void of_taper_depths(void)
{
    struct { threadcalc_taper_depth_request_t asked; unsigned char tail[TAIL]; } longer;
    threadcalc_thread_t thread = good_thread();
    threadcalc_taper_depths_t found;
    size_t place;
    CHECK(threadcalc_thread_read(TEXT("1/4 NPT"), &thread, NULL) == OK);
    for (place = 0; place <= wrong_count; place++) {
        threadcalc_taper_depth_request_t asked = good_taper_depth();
        asked.size = place < wrong_count ? wrong[place] : (uint32_t)sizeof asked - 1;
        REFUSED(IS_SIZE, found, threadcalc_taper_depths(&thread, &asked, &found, sizeof found, NULL));
    }
    memset(&longer, 0, sizeof longer);
    longer.asked = good_taper_depth();
    longer.asked.size = (uint32_t)sizeof longer;
    CHECK(threadcalc_taper_depths(&thread, &longer.asked, &found, sizeof found, NULL) == OK);
    CHECK(found.gauge_tolerance_turns.numerator == 1 && found.gauge_tolerance_turns.denominator == 1);
    longer.tail[0] = 1;
    REFUSED(IS_FIELD, found, threadcalc_taper_depths(&thread, &longer.asked, &found, sizeof found, NULL));
    longer.tail[0] = 0;
    longer.asked.reserved = 1;
    REFUSED(IS_FIELD, found, threadcalc_taper_depths(&thread, &longer.asked, &found, sizeof found, NULL));
    longer.asked.reserved = 0;
    REFUSED(IS_SIZE, found, threadcalc_taper_depths(&thread, &longer.asked, &found, 0, NULL));
}

static void of_plans(void)
{
    struct { threadcalc_job_t job; unsigned char tail[TAIL]; } longer;
    threadcalc_plan_t found;
    char text[64];
    size_t place, needed = 0;
    for (place = 0; place <= wrong_count; place++) {
        threadcalc_job_t job = good_job();
        job.size = place < wrong_count ? wrong[place] : (uint32_t)sizeof job - 1;
        REFUSED(IS_SIZE, found, threadcalc_plan(&job, &found, sizeof found, NULL));
        REFUSED(IS_SIZE, text, threadcalc_plan_text(&job, text, sizeof text, &needed, NULL));
        REFUSED(IS_SIZE, text, threadcalc_plan_json_of_job(&job, text, sizeof text, &needed, NULL));
    }
    memset(&longer, 0, sizeof longer);
    longer.job = good_job();
    longer.job.size = (uint32_t)sizeof longer;
    CHECK(threadcalc_plan(&longer.job, &found, sizeof found, NULL) == OK);
    longer.tail[TAIL / 2] = 0x80;
    REFUSED(IS_FIELD, found, threadcalc_plan(&longer.job, &found, sizeof found, NULL));
    REFUSED(IS_FIELD, text, threadcalc_plan_text(&longer.job, text, sizeof text, &needed, NULL));
}

/* A result of no size is refused; a shorter one is written as far as it goes. */
static void of_results(void)
{
    const threadcalc_thread_t thread = good_thread();
    const threadcalc_feed_request_t feed_asked = good_feed();
    const threadcalc_tap_drill_request_t drill_asked = good_drill();
    const threadcalc_depth_request_t depth_asked = good_depth();
    const threadcalc_job_t job = good_job();
    threadcalc_feed_t feed;
    threadcalc_tap_drill_t drill;
    threadcalc_depths_t depths;
    threadcalc_plan_t plan;
    threadcalc_profile_t profile;
    threadcalc_limits_t limits;
    threadcalc_pipe_t pipe;
    const size_t half = sizeof feed / 2;
    REFUSED(IS_SIZE, feed, threadcalc_feed(&feed_asked, &feed, 0, NULL));
    REFUSED(IS_SIZE, drill, threadcalc_tap_drill(&thread, &drill_asked, &drill, 0, NULL));
    REFUSED(IS_SIZE, depths, threadcalc_depths(&thread, &depth_asked, &depths, 0, NULL));
    REFUSED(IS_SIZE, plan, threadcalc_plan(&job, &plan, 0, NULL));
    REFUSED(IS_SIZE, profile, threadcalc_profile(&thread, &profile, 0, NULL));
    REFUSED(IS_SIZE, limits, threadcalc_limits(&thread, &limits, 0, NULL));
    REFUSED(IS_SIZE, pipe, threadcalc_pipe(&thread, &pipe, 0, NULL));
    memset(&feed, 0xA5, sizeof feed);
    CHECK(threadcalc_feed(&feed_asked, &feed, half, NULL) == OK && strcmp(feed.word, "F750.") == 0);
    CHECK(bad_input_untouched((const unsigned char *)&feed + half, sizeof feed - half));
}

void bad_sizes(void)
{
    of_feeds();
    of_tap_drills();
    of_depths();
    of_taper_depths();
    of_plans();
    of_results();
}
