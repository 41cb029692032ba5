/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* Limits of coated threads, asked for in every wrong way. */
#include "bad_input.h"

enum {
    OK = THREADCALC_STATUS_OK,
    IS_NULL = THREADCALC_STATUS_NULL_POINTER,
    IS_SIZE = THREADCALC_STATUS_STRUCTURE_SIZE,
    MISSING = THREADCALC_STATUS_MISSING,
    RANGE = THREADCALC_STATUS_OUT_OF_RANGE
};

static void of_coatings(void)
{
    const threadcalc_thread_t thread = good_thread();
    const threadcalc_ratio_t thin = ratio(5, 1), thick = ratio(8, 1), none = ratio(0, 0), no_number = ratio(1, 0);
    threadcalc_coating_growth_t growth;
    threadcalc_limits_t limits;
    threadcalc_ratio_t thickest;
    threadcalc_error_t error;
    REFUSED(IS_NULL, growth, threadcalc_coating_growth(NULL, &thin, &growth, sizeof growth, NULL));
    REFUSED(IS_NULL, growth, threadcalc_coating_growth(&thread, NULL, &growth, sizeof growth, NULL));
    CHECK(threadcalc_coating_growth(&thread, &thin, NULL, sizeof growth, NULL) == IS_NULL);
    REFUSED(IS_SIZE, growth, threadcalc_coating_growth(&thread, &thin, &growth, 0, NULL));
    REFUSED(MISSING, growth, threadcalc_coating_growth(&thread, &none, &growth, sizeof growth, &error));
    CHECK(error.field == THREADCALC_FIELD_THICKNESS_UM);
    REFUSED(RANGE, growth, threadcalc_coating_growth(&thread, &no_number, &growth, sizeof growth, NULL));
    REFUSED(IS_NULL, limits, threadcalc_limits_before_coating(NULL, &thin, &thick, &limits, sizeof limits, NULL));
    REFUSED(IS_NULL, limits, threadcalc_limits_before_coating(&thread, NULL, &thick, &limits, sizeof limits, NULL));
    REFUSED(IS_NULL, limits, threadcalc_limits_before_coating(&thread, &thin, NULL, &limits, sizeof limits, NULL));
    CHECK(threadcalc_limits_before_coating(&thread, &thin, &thick, NULL, sizeof limits, NULL) == IS_NULL);
    REFUSED(IS_SIZE, limits, threadcalc_limits_before_coating(&thread, &thin, &thick, &limits, 0, NULL));
    REFUSED(MISSING, limits,
            threadcalc_limits_before_coating(&thread, &none, &thick, &limits, sizeof limits, &error));
    CHECK(error.field == THREADCALC_FIELD_THINNEST_UM);
    REFUSED(MISSING, limits,
            threadcalc_limits_before_coating(&thread, &thin, &none, &limits, sizeof limits, &error));
    CHECK(error.field == THREADCALC_FIELD_THICKEST_UM);
    CHECK(threadcalc_limits_before_coating(&thread, &thin, &thick, &limits, sizeof limits, NULL) == OK);
    CHECK(limits.is_given == 1 && limits.major_mm.high.denominator == 0);
    REFUSED(IS_NULL, thickest, threadcalc_thickest_coating_um(NULL, &thickest, NULL));
    CHECK(threadcalc_thickest_coating_um(&thread, NULL, NULL) == IS_NULL);
}

void bad_limits(void)
{
    of_coatings();
}
