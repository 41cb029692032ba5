/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* Strokes, axis feeds, patterns and holders, asked for in every wrong way. */
#include "bad_input.h"

#include <math.h>
#include <stddef.h>

enum {
    OK = THREADCALC_STATUS_OK,
    IS_NULL = THREADCALC_STATUS_NULL_POINTER,
    IS_SIZE = THREADCALC_STATUS_STRUCTURE_SIZE,
    IS_FIELD = THREADCALC_STATUS_UNSUPPORTED_FIELD,
    MISSING = THREADCALC_STATUS_MISSING,
    UNKNOWN = THREADCALC_STATUS_UNKNOWN_VALUE,
    RANGE = THREADCALC_STATUS_OUT_OF_RANGE,
    CONTRADICTION = THREADCALC_STATUS_CONTRADICTION
};

static const double no_numbers[] = {NAN, INFINITY, -INFINITY, -1.0, 1e8};
static const size_t no_number_count = sizeof no_numbers / sizeof no_numbers[0];

static void motion_pointers_and_sizes(void)
{
    static const uint32_t wrong[] = {0, 1, 3, 4, 5, 4097, UINT32_MAX};
    struct { threadcalc_motion_request_t asked; unsigned char tail[64]; } longer;
    threadcalc_motion_request_t asked = good_motion();
    threadcalc_tapping_time_t found;
    size_t place;
    REFUSED(IS_NULL, found, threadcalc_tapping_time(NULL, &found, sizeof found, NULL));
    CHECK(threadcalc_tapping_time(&asked, NULL, sizeof found, NULL) == IS_NULL);
    REFUSED(IS_SIZE, found, threadcalc_tapping_time(&asked, &found, 0, NULL));
    for (place = 0; place <= sizeof wrong / sizeof wrong[0]; place++) {
        asked.size = place < sizeof wrong / sizeof wrong[0] ? wrong[place] : (uint32_t)sizeof asked - 1;
        REFUSED(IS_SIZE, found, threadcalc_tapping_time(&asked, &found, sizeof found, NULL));
    }
    memset(&longer, 0, sizeof longer);
    longer.asked = good_motion();
    longer.asked.size = (uint32_t)sizeof longer;
    CHECK(threadcalc_tapping_time(&longer.asked, &found, sizeof found, NULL) == OK);
    /* 16 turns at 10 a second, there and back, without ramps. */
    CHECK(fabs(found.time_s - 3.2) < 1e-12 && found.turns == 16.0 && found.reaches_speed == 1 && found.strokes == 1);
    longer.tail[0] = 1;
    REFUSED(IS_FIELD, found, threadcalc_tapping_time(&longer.asked, &found, sizeof found, NULL));
    memset(&found, 0xA5, sizeof found);
    asked = good_motion();
    CHECK(threadcalc_tapping_time(&asked, &found, sizeof(double), NULL) == OK && found.reached_rpm == 600.0);
    CHECK(bad_input_untouched((const unsigned char *)&found + sizeof(double), sizeof found - sizeof(double)));
}

/* A caller that knows no peck, whatever its memory holds behind its request. */
static void motion_before_pecks(void)
{
    threadcalc_motion_request_t asked = good_motion();
    threadcalc_tapping_time_t found;
    asked.peck_mm = ratio(7, 1);
    CHECK(threadcalc_tapping_time(&asked, &found, sizeof found, NULL) == OK && found.strokes == 3);
    asked.size = (uint32_t)offsetof(threadcalc_motion_request_t, peck_mm);
    CHECK(threadcalc_tapping_time(&asked, &found, sizeof found, NULL) == OK && found.strokes == 1);
}

static void motion_refused(int32_t status, threadcalc_motion_request_t asked)
{
    threadcalc_tapping_time_t found;
    REFUSED(status, found, threadcalc_tapping_time(&asked, &found, sizeof found, NULL));
}

static void motion_values(void)
{
    const threadcalc_ratio_t wrong[] = {{0, 0}, {1, 0}, {-1, 1}, {0, 1}};
    static const int32_t why[] = {MISSING, RANGE, RANGE, RANGE};
    threadcalc_motion_request_t asked;
    size_t place;
    for (place = 0; place < 4; place++) {
        asked = good_motion();
        asked.lead_mm = wrong[place];
        motion_refused(why[place], asked);
        asked = good_motion();
        asked.rpm = wrong[place];
        motion_refused(why[place], asked);
        asked = good_motion();
        asked.travel_mm = wrong[place];
        motion_refused(why[place], asked);
        asked = good_motion();
        asked.retract_factor = place == 0 ? ratio(1, 11) : wrong[place];
        motion_refused(RANGE, asked);
        asked = good_motion();
        /* Of 20 mm: a little too deep; 0 of 0 parts is no peck. */
        asked.peck_mm = place == 0 ? ratio(2001, 100) : wrong[place];
        motion_refused(RANGE, asked);
    }
    for (place = 0; place < no_number_count; place++) {
        asked = good_motion();
        asked.dwell_s = no_numbers[place];
        motion_refused(RANGE, asked);
        asked = good_motion();
        asked.acceleration_rpm_s = no_numbers[place];
        motion_refused(CONTRADICTION, asked);
        asked.acceleration_is_given = 1;
        motion_refused(RANGE, asked);
        asked.acceleration_is_given = -1;
        motion_refused(UNKNOWN, asked);
    }
    asked = good_motion();
    asked.acceleration_is_given = 1;
    motion_refused(RANGE, asked);
    asked = good_motion();
    asked.peck_mm = ratio(199, 10000);
    motion_refused(RANGE, asked);
}

static void ramps(void)
{
    const threadcalc_ratio_t rpm = ratio(600, 1), none = ratio(0, 0), no_parts = ratio(1, 0), zero = ratio(0, 1);
    double value;
    size_t place;
    REFUSED(IS_NULL, value, threadcalc_turns_to_speed(NULL, 1500.0, &value, NULL));
    REFUSED(MISSING, value, threadcalc_turns_to_speed(&none, 1500.0, &value, NULL));
    REFUSED(RANGE, value, threadcalc_turns_to_speed(&no_parts, 1500.0, &value, NULL));
    REFUSED(RANGE, value, threadcalc_turns_to_speed(&zero, 1500.0, &value, NULL));
    CHECK(threadcalc_turns_to_speed(&rpm, 1500.0, NULL, NULL) == IS_NULL);
    CHECK(threadcalc_speed_after_turns(2.0, 1500.0, NULL, NULL) == IS_NULL);
    for (place = 0; place < no_number_count; place++) {
        REFUSED(RANGE, value, threadcalc_turns_to_speed(&rpm, no_numbers[place], &value, NULL));
        REFUSED(RANGE, value, threadcalc_speed_after_turns(no_numbers[place], 1500.0, &value, NULL));
        REFUSED(RANGE, value, threadcalc_speed_after_turns(2.0, no_numbers[place], &value, NULL));
    }
}

static void feeds_and_patterns(void)
{
    const threadcalc_ratio_t one = ratio(1, 1), none = ratio(0, 0), no_parts = ratio(1, 0), minus = ratio(-1, 1);
    const threadcalc_ratio_t *const wrong[] = {NULL, &none, &no_parts, &minus};
    static const int32_t why[] = {IS_NULL, MISSING, RANGE, RANGE};
    threadcalc_feed_fit_t fit;
    double value;
    size_t place;
    for (place = 0; place < 4; place++) {
        const threadcalc_ratio_t *bad = wrong[place];
        REFUSED(why[place], fit, threadcalc_feed_fit(bad, &one, &one, &one, &fit, sizeof fit, NULL));
        REFUSED(why[place], fit, threadcalc_feed_fit(&one, bad, &one, &one, &fit, sizeof fit, NULL));
        REFUSED(why[place], fit, threadcalc_feed_fit(&one, &one, &one, bad, &fit, sizeof fit, NULL));
        if (place < 2) {
            /* A factor that is left out is 1. */
            CHECK(threadcalc_feed_fit(&one, &one, bad, &one, &fit, sizeof fit, NULL) == OK && fit.is_within == 1);
        } else {
            REFUSED(RANGE, fit, threadcalc_feed_fit(&one, &one, bad, &one, &fit, sizeof fit, NULL));
        }
        REFUSED(why[place], value, threadcalc_pattern_time_s(12, bad, &one, 3.0, &value, NULL));
        REFUSED(why[place], value, threadcalc_pattern_time_s(12, &one, bad, 3.0, &value, NULL));
    }
    CHECK(threadcalc_feed_fit(&one, &one, &one, &one, NULL, sizeof fit, NULL) == IS_NULL);
    REFUSED(IS_SIZE, fit, threadcalc_feed_fit(&one, &one, &one, &one, &fit, 0, NULL));
    CHECK(threadcalc_pattern_time_s(12, &one, &one, 3.0, NULL, NULL) == IS_NULL);
    REFUSED(RANGE, value, threadcalc_pattern_time_s(0, &one, &one, 3.0, &value, NULL));
    REFUSED(RANGE, value, threadcalc_pattern_time_s(UINT32_MAX, &one, &one, 3.0, &value, NULL));
    for (place = 0; place < no_number_count; place++) {
        REFUSED(RANGE, value, threadcalc_pattern_time_s(12, &one, &one, no_numbers[place], &value, NULL));
    }
}

static void holders(void)
{
    static const int32_t numbers[] = {-1, 4, 99, INT32_MAX, INT32_MIN};
    const threadcalc_thread_t thread = good_thread();
    threadcalc_holder_clearance_t room;
    size_t place;
    REFUSED(IS_NULL, room, threadcalc_holder_clearance(NULL, 1, &room, sizeof room, NULL));
    CHECK(threadcalc_holder_clearance(&thread, 1, NULL, sizeof room, NULL) == IS_NULL);
    REFUSED(IS_SIZE, room, threadcalc_holder_clearance(&thread, 1, &room, 0, NULL));
    REFUSED(MISSING, room, threadcalc_holder_clearance(&thread, 0, &room, sizeof room, NULL));
    for (place = 0; place < sizeof numbers / sizeof numbers[0]; place++) {
        REFUSED(UNKNOWN, room, threadcalc_holder_clearance(&thread, numbers[place], &room, sizeof room, NULL));
    }
}

/* Each of the numbers of the two calls in turn as NULL, not given, and without parts. */
static void holder_travel(void)
{
    const threadcalc_ratio_t good = ratio(1, 1), none = ratio(0, 0), no_parts = ratio(1, 0);
    const threadcalc_ratio_t *const wrong[] = {NULL, &none, &no_parts};
    static const int32_t why[] = {IS_NULL, MISSING, RANGE};
    threadcalc_holder_travel_t travel;
    int32_t fits;
    size_t place, number;
    for (number = 0; number < 6; number++) {
        for (place = 0; place < 3; place++) {
            const threadcalc_ratio_t *given[6];
            size_t other;
            for (other = 0; other < 6; other++) {
                given[other] = other == number ? wrong[place] : &good;
            }
            REFUSED(why[place], fits,
                    threadcalc_holder_fits(given[0], given[1], given[2], given[3], given[4], given[5], &fits, NULL));
            if (number < 4) {
                REFUSED(why[place], travel,
                        threadcalc_holder_travel(given[0], given[1], given[2], given[3], &travel, sizeof travel, NULL));
            }
        }
    }
    CHECK(threadcalc_holder_fits(&good, &good, &good, &good, &good, &good, NULL, NULL) == IS_NULL);
    CHECK(threadcalc_holder_travel(&good, &good, &good, &good, NULL, sizeof travel, NULL) == IS_NULL);
    REFUSED(IS_SIZE, travel, threadcalc_holder_travel(&good, &good, &good, &good, &travel, 0, NULL));
    CHECK(threadcalc_holder_travel(&good, &good, &good, &good, &travel, sizeof travel, NULL) == OK);
    CHECK(travel.extension_mm.numerator == 101 && travel.extension_mm.denominator == 100);
}

void bad_motions(void)
{
    motion_pointers_and_sizes();
    motion_before_pecks();
    motion_values();
    ramps();
    feeds_and_patterns();
    holders();
    holder_travel();
}
