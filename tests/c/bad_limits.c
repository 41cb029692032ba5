/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* Limits of coated threads and at lengths of engagement, asked for in every wrong way. */
#include "bad_input.h"

enum {
    OK = THREADCALC_STATUS_OK,
    IS_NULL = THREADCALC_STATUS_NULL_POINTER,
    IS_SIZE = THREADCALC_STATUS_STRUCTURE_SIZE,
    IS_SHORT = THREADCALC_STATUS_BUFFER_TOO_SHORT,
    MISSING = THREADCALC_STATUS_MISSING,
    UNKNOWN = THREADCALC_STATUS_UNKNOWN_VALUE,
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

static void of_lengths(void)
{
    const threadcalc_thread_t thread = good_thread();
    const threadcalc_ratio_t length = ratio(12, 1), none = ratio(0, 0), zero = ratio(0, 1);
    threadcalc_engagement_lengths_t found;
    threadcalc_limits_t limits;
    threadcalc_error_t error;
    REFUSED(IS_NULL, found, threadcalc_engagement_group(NULL, &length, &found, sizeof found, NULL));
    REFUSED(IS_NULL, found, threadcalc_engagement_group(&thread, NULL, &found, sizeof found, NULL));
    CHECK(threadcalc_engagement_group(&thread, &length, NULL, sizeof found, NULL) == IS_NULL);
    REFUSED(IS_SIZE, found, threadcalc_engagement_group(&thread, &length, &found, 0, NULL));
    REFUSED(MISSING, found, threadcalc_engagement_group(&thread, &none, &found, sizeof found, &error));
    CHECK(error.field == THREADCALC_FIELD_LENGTH_MM);
    REFUSED(RANGE, found, threadcalc_engagement_group(&thread, &zero, &found, sizeof found, NULL));
    CHECK(threadcalc_engagement_group(&thread, &length, &found, sizeof found, NULL) == OK);
    CHECK(found.group == THREADCALC_ENGAGEMENT_GROUP_N && found.normal_to_mm.numerator == 12);
    REFUSED(IS_NULL, limits, threadcalc_limits_at(NULL, &length, &limits, sizeof limits, NULL));
    REFUSED(IS_NULL, limits, threadcalc_limits_at(&thread, NULL, &limits, sizeof limits, NULL));
    CHECK(threadcalc_limits_at(&thread, &length, NULL, sizeof limits, NULL) == IS_NULL);
    REFUSED(IS_SIZE, limits, threadcalc_limits_at(&thread, &length, &limits, 0, NULL));
    REFUSED(MISSING, limits, threadcalc_limits_at(&thread, &none, &limits, sizeof limits, NULL));
    REFUSED(RANGE, limits, threadcalc_limits_at(&thread, &zero, &limits, sizeof limits, NULL));
}

static void of_classes(void)
{
    enum { HOLE = THREADCALC_SIDE_INTERNAL, NORMAL = THREADCALC_ENGAGEMENT_GROUP_N, MEDIUM = THREADCALC_FIT_QUALITY_MEDIUM };
    static const int32_t no_choices[] = {-1, 4, 99, INT32_MAX, INT32_MIN};
    threadcalc_error_t error;
    char text[8];
    size_t needed = 0, place;
    CHECK(threadcalc_recommended_class(HOLE, NORMAL, MEDIUM, text, sizeof text, &needed, NULL) == OK);
    CHECK(strcmp(text, "6H") == 0 && needed == 3);
    CHECK(threadcalc_recommended_class(HOLE, NORMAL, MEDIUM, text, 2, &needed, NULL) == IS_SHORT && needed == 3);
    CHECK(threadcalc_recommended_class(HOLE, NORMAL, MEDIUM, NULL, 8, &needed, NULL) == IS_NULL);
    CHECK(threadcalc_recommended_class(HOLE, NORMAL, MEDIUM, text, 8, NULL, NULL) == IS_NULL);
    CHECK(threadcalc_recommended_class(0, NORMAL, MEDIUM, text, 8, &needed, &error) == MISSING);
    CHECK(error.field == THREADCALC_FIELD_SIDE);
    CHECK(threadcalc_recommended_class(HOLE, 0, MEDIUM, text, 8, &needed, &error) == MISSING);
    CHECK(error.field == THREADCALC_FIELD_GROUP);
    CHECK(threadcalc_recommended_class(HOLE, NORMAL, 0, text, 8, &needed, &error) == MISSING);
    CHECK(error.field == THREADCALC_FIELD_QUALITY);
    for (place = 0; place < sizeof no_choices / sizeof no_choices[0]; place++) {
        const int32_t other = no_choices[place];
        CHECK(threadcalc_recommended_class(other, NORMAL, MEDIUM, text, 8, &needed, NULL) == UNKNOWN);
        CHECK(threadcalc_recommended_class(HOLE, other, MEDIUM, text, 8, &needed, NULL) == UNKNOWN);
        CHECK(threadcalc_recommended_class(HOLE, NORMAL, other, text, 8, &needed, NULL) == UNKNOWN);
    }
}

void bad_limits(void)
{
    of_coatings();
    of_lengths();
    of_classes();
}
