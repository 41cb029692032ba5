/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* Engagement, speeds, torque, power and gears, asked for in every wrong way. */
#include "bad_input.h"

#include <math.h>

enum {
    OK = THREADCALC_STATUS_OK,
    IS_NULL = THREADCALC_STATUS_NULL_POINTER,
    IS_SIZE = THREADCALC_STATUS_STRUCTURE_SIZE,
    IS_FIELD = THREADCALC_STATUS_UNSUPPORTED_FIELD,
    MISSING = THREADCALC_STATUS_MISSING,
    UNKNOWN = THREADCALC_STATUS_UNKNOWN_VALUE,
    RANGE = THREADCALC_STATUS_OUT_OF_RANGE,
    CONTRADICTION = THREADCALC_STATUS_CONTRADICTION,
    OVERFLOW_ = THREADCALC_STATUS_OVERFLOW
};

static const double no_strengths[] = {0.0, -1.0, NAN, INFINITY, -INFINITY, 1e6};
static const int32_t no_choices[] = {-1, 11, 99, INT32_MAX, INT32_MIN};

static threadcalc_thread_t screw(void)
{
    threadcalc_thread_t thread;
    memset(&thread, 0, sizeof thread);
    CHECK(threadcalc_thread_read(TEXT("M8x1.25-6g"), &thread, NULL) == OK);
    return thread;
}

static void engagement_pointers_and_sizes(void)
{
    static const uint32_t wrong[] = {0, 1, 3, 4, 5, 4097, UINT32_MAX};
    struct { threadcalc_engagement_request_t asked; unsigned char tail[64]; } longer;
    const threadcalc_thread_t hole = good_thread(), bolt = screw();
    threadcalc_engagement_request_t asked = good_engagement();
    threadcalc_engagement_t found;
    size_t place;
    REFUSED(IS_NULL, found, threadcalc_engagement(NULL, &bolt, &asked, &found, sizeof found, NULL));
    REFUSED(IS_NULL, found, threadcalc_engagement(&hole, NULL, &asked, &found, sizeof found, NULL));
    REFUSED(IS_NULL, found, threadcalc_engagement(&hole, &bolt, NULL, &found, sizeof found, NULL));
    CHECK(threadcalc_engagement(&hole, &bolt, &asked, NULL, sizeof found, NULL) == IS_NULL);
    REFUSED(IS_SIZE, found, threadcalc_engagement(&hole, &bolt, &asked, &found, 0, NULL));
    for (place = 0; place <= sizeof wrong / sizeof wrong[0]; place++) {
        asked.size = place < sizeof wrong / sizeof wrong[0] ? wrong[place] : (uint32_t)sizeof asked - 1;
        REFUSED(IS_SIZE, found, threadcalc_engagement(&hole, &bolt, &asked, &found, sizeof found, NULL));
    }
    memset(&longer, 0, sizeof longer);
    longer.asked = good_engagement();
    longer.asked.size = (uint32_t)sizeof longer;
    CHECK(threadcalc_engagement(&hole, &bolt, &longer.asked, &found, sizeof found, NULL) == OK);
    CHECK(found.weakest == THREADCALC_WEAKEST_SCREW && found.safety_factor != found.safety_factor);
    longer.tail[63] = 1;
    REFUSED(IS_FIELD, found, threadcalc_engagement(&hole, &bolt, &longer.asked, &found, sizeof found, NULL));
    memset(&found, 0xA5, sizeof found);
    asked = good_engagement();
    CHECK(threadcalc_engagement(&hole, &bolt, &asked, &found, sizeof(double), NULL) == OK);
    CHECK(fabs(found.tensile_area_mm2 - 36.6) < 0.05);
    CHECK(bad_input_untouched((const unsigned char *)&found + sizeof(double), sizeof found - sizeof(double)));
}

/* One request that is refused, and nothing written. */
static void engagement_refused(int32_t status, threadcalc_engagement_request_t asked)
{
    const threadcalc_thread_t hole = good_thread(), bolt = screw();
    threadcalc_engagement_t found;
    REFUSED(status, found, threadcalc_engagement(&hole, &bolt, &asked, &found, sizeof found, NULL));
}

static void engagement_values(void)
{
    const threadcalc_thread_t hole = good_thread(), bolt = screw();
    threadcalc_engagement_request_t asked = good_engagement();
    threadcalc_engagement_t found;
    size_t place;
    REFUSED(CONTRADICTION, found, threadcalc_engagement(&bolt, &hole, &asked, &found, sizeof found, NULL));
    for (place = 0; place < sizeof no_strengths / sizeof no_strengths[0]; place++) {
        asked = good_engagement();
        asked.internal_shear_mpa = no_strengths[place];
        engagement_refused(RANGE, asked);
        asked = good_engagement();
        asked.external_shear_mpa = no_strengths[place];
        engagement_refused(RANGE, asked);
        asked = good_engagement();
        asked.external_tensile_mpa = no_strengths[place];
        engagement_refused(RANGE, asked);
        asked = good_engagement();
        asked.load_is_given = 1;
        asked.load_n = place < 5 ? no_strengths[place] : 1e16;
        engagement_refused(RANGE, asked);
        asked.load_is_given = 0;
        if (place > 0) {
            engagement_refused(CONTRADICTION, asked);
        }
        asked.load_is_given = 2;
        engagement_refused(UNKNOWN, asked);
    }
    asked = good_engagement();
    asked.length_mm = ratio(0, 0);
    engagement_refused(MISSING, asked);
    asked.length_mm = ratio(12, 0);
    engagement_refused(RANGE, asked);
    asked = good_engagement();
    asked.without_full_thread_mm = ratio(1, 0);
    engagement_refused(RANGE, asked);
    asked.without_full_thread_mm = ratio(12, 1);
    engagement_refused(RANGE, asked);
    asked = good_engagement();
    asked.drilled_mm = ratio(8, 1);
    engagement_refused(RANGE, asked);
    asked.drilled_mm = ratio(INT64_MIN, 1);
    engagement_refused(OVERFLOW_, asked);
}

static void speeds(void)
{
    const threadcalc_ratio_t ten = ratio(10, 1), none = ratio(0, 0), no_parts = ratio(1, 0), minus = ratio(-1, 1);
    const threadcalc_ratio_t *const wrong[] = {NULL, &none, &no_parts, &minus};
    static const int32_t why[] = {IS_NULL, MISSING, RANGE, RANGE};
    double value;
    size_t place;
    for (place = 0; place < 4; place++) {
        const threadcalc_ratio_t *bad = wrong[place];
        REFUSED(why[place], value, threadcalc_spindle_speed(bad, &ten, &value, NULL));
        REFUSED(why[place], value, threadcalc_spindle_speed(&ten, bad, &value, NULL));
        REFUSED(why[place], value, threadcalc_spindle_speed_feet(bad, &ten, &value, NULL));
        REFUSED(why[place], value, threadcalc_spindle_speed_feet(&ten, bad, &value, NULL));
        REFUSED(why[place], value, threadcalc_surface_speed_m_min(bad, &ten, &value, NULL));
        REFUSED(why[place], value, threadcalc_surface_speed_m_min(&ten, bad, &value, NULL));
        REFUSED(why[place], value, threadcalc_power_kw(5.0, bad, &value, NULL));
    }
    CHECK(threadcalc_spindle_speed(&ten, &ten, NULL, NULL) == IS_NULL);
    CHECK(threadcalc_spindle_speed_feet(&ten, &ten, NULL, NULL) == IS_NULL);
    CHECK(threadcalc_surface_speed_m_min(&ten, &ten, NULL, NULL) == IS_NULL);
    CHECK(threadcalc_power_kw(5.0, &ten, NULL, NULL) == IS_NULL);
    for (place = 1; place < sizeof no_strengths / sizeof no_strengths[0]; place++) {
        const double bad = place == 5 ? 1e7 : no_strengths[place];
        REFUSED(RANGE, value, threadcalc_power_kw(bad, &ten, &value, NULL));
    }
}

static void torques(void)
{
    const threadcalc_thread_t thread = good_thread();
    const threadcalc_ratio_t drill = ratio(34, 5), none = ratio(0, 0), major = ratio(8, 1);
    threadcalc_torque_band_t band;
    size_t place;
    REFUSED(IS_NULL, band, threadcalc_torque_by_pitch(NULL, 2500.0, 1.0, &band, sizeof band, NULL));
    CHECK(threadcalc_torque_by_pitch(&thread, 2500.0, 1.0, NULL, sizeof band, NULL) == IS_NULL);
    REFUSED(IS_SIZE, band, threadcalc_torque_by_pitch(&thread, 2500.0, 1.0, &band, 0, NULL));
    REFUSED(IS_NULL, band, threadcalc_torque_by_chip_area(NULL, &drill, 3900.0, 1.0, &band, sizeof band, NULL));
    REFUSED(IS_NULL, band, threadcalc_torque_by_chip_area(&thread, NULL, 3900.0, 1.0, &band, sizeof band, NULL));
    CHECK(threadcalc_torque_by_chip_area(&thread, &drill, 3900.0, 1.0, NULL, sizeof band, NULL) == IS_NULL);
    REFUSED(IS_SIZE, band, threadcalc_torque_by_chip_area(&thread, &drill, 3900.0, 1.0, &band, 0, NULL));
    REFUSED(MISSING, band, threadcalc_torque_by_chip_area(&thread, &none, 3900.0, 1.0, &band, sizeof band, NULL));
    REFUSED(RANGE, band, threadcalc_torque_by_chip_area(&thread, &major, 3900.0, 1.0, &band, sizeof band, NULL));
    for (place = 0; place < sizeof no_strengths / sizeof no_strengths[0]; place++) {
        const double bad = no_strengths[place];
        REFUSED(RANGE, band, threadcalc_torque_by_pitch(&thread, bad, 1.0, &band, sizeof band, NULL));
        REFUSED(RANGE, band, threadcalc_torque_by_pitch(&thread, 2500.0, bad, &band, sizeof band, NULL));
        REFUSED(RANGE, band, threadcalc_torque_by_chip_area(&thread, &drill, bad, 1.0, &band, sizeof band, NULL));
        REFUSED(RANGE, band, threadcalc_torque_by_chip_area(&thread, &drill, 3900.0, bad, &band, sizeof band, NULL));
    }
}

static void starting_values(void)
{
    const threadcalc_ratio_t m10 = ratio(10, 1), m42 = ratio(42, 1), none = ratio(0, 0);
    threadcalc_starting_strength_t strength;
    threadcalc_starting_forces_t forces;
    threadcalc_factor_range_t range;
    size_t place;
    for (place = 0; place < sizeof no_choices / sizeof no_choices[0]; place++) {
        REFUSED(UNKNOWN, strength, threadcalc_starting_strength(no_choices[place], &m10, &strength, sizeof strength, NULL));
        REFUSED(UNKNOWN, strength, threadcalc_starting_part_strength(no_choices[place], &strength, sizeof strength, NULL));
        REFUSED(UNKNOWN, forces, threadcalc_starting_forces(no_choices[place], &forces, sizeof forces, NULL));
        CHECK(strcmp(threadcalc_property_class_name(no_choices[place]), "unknown") == 0);
        CHECK(strcmp(threadcalc_material_name(no_choices[place]), "unknown") == 0);
        CHECK(strcmp(threadcalc_weakest_name(no_choices[place]), "unknown") == 0);
        CHECK(strcmp(threadcalc_holder_name(no_choices[place]), "unknown") == 0);
    }
    REFUSED(MISSING, strength, threadcalc_starting_strength(0, &m10, &strength, sizeof strength, NULL));
    REFUSED(IS_SIZE, strength, threadcalc_starting_strength(1, &m10, &strength, 0, NULL));
    CHECK(threadcalc_starting_strength(1, &m10, NULL, sizeof strength, NULL) == IS_NULL);
    REFUSED(IS_NULL, strength, threadcalc_starting_strength(1, NULL, &strength, sizeof strength, NULL));
    REFUSED(MISSING, strength, threadcalc_starting_strength(1, &none, &strength, sizeof strength, NULL));
    REFUSED(RANGE, strength, threadcalc_starting_strength(1, &m42, &strength, sizeof strength, NULL));
    REFUSED(MISSING, strength, threadcalc_starting_part_strength(0, &strength, sizeof strength, NULL));
    REFUSED(IS_SIZE, strength, threadcalc_starting_part_strength(1, &strength, 0, NULL));
    CHECK(threadcalc_starting_part_strength(1, NULL, sizeof strength, NULL) == IS_NULL);
    REFUSED(MISSING, forces, threadcalc_starting_forces(0, &forces, sizeof forces, NULL));
    REFUSED(IS_SIZE, forces, threadcalc_starting_forces(1, &forces, 0, NULL));
    CHECK(threadcalc_starting_forces(1, NULL, sizeof forces, NULL) == IS_NULL);
    REFUSED(IS_SIZE, range, threadcalc_forming_factor(&range, 0, NULL));
    CHECK(threadcalc_forming_factor(NULL, sizeof range, NULL) == IS_NULL);
    REFUSED(IS_SIZE, range, threadcalc_taper_factor(&range, 0, NULL));
    CHECK(threadcalc_taper_factor(NULL, sizeof range, NULL) == IS_NULL);
}

/* One gear that is refused, alone and as the last of six. */
static void gear_refused(int32_t status, threadcalc_gear_t gear)
{
    const threadcalc_ratio_t rpm = ratio(100, 1);
    threadcalc_gear_t gears[6];
    threadcalc_gear_fit_t fit;
    size_t place;
    REFUSED(status, fit, threadcalc_gear_fit(&gear, 1, 10.0, &rpm, &fit, sizeof fit, NULL));
    for (place = 0; place < 5; place++) {
        gears[place] = good_gear();
    }
    gears[5] = gear;
    REFUSED(status, fit, threadcalc_gear_fit(gears, 6, 10.0, &rpm, &fit, sizeof fit, NULL));
}

static void gears(void)
{
    const threadcalc_ratio_t rpm = ratio(100, 1), none = ratio(0, 0);
    threadcalc_gear_t gear = good_gear();
    threadcalc_gear_fit_t fit;
    size_t place;
    REFUSED(IS_NULL, fit, threadcalc_gear_fit(NULL, 1, 10.0, &rpm, &fit, sizeof fit, NULL));
    REFUSED(IS_NULL, fit, threadcalc_gear_fit(NULL, 0, 10.0, &rpm, &fit, sizeof fit, NULL));
    REFUSED(IS_NULL, fit, threadcalc_gear_fit(&gear, 1, 10.0, NULL, &fit, sizeof fit, NULL));
    CHECK(threadcalc_gear_fit(&gear, 1, 10.0, &rpm, NULL, sizeof fit, NULL) == IS_NULL);
    REFUSED(IS_SIZE, fit, threadcalc_gear_fit(&gear, 1, 10.0, &rpm, &fit, 0, NULL));
    REFUSED(MISSING, fit, threadcalc_gear_fit(&gear, 1, 10.0, &none, &fit, sizeof fit, NULL));
    REFUSED(RANGE, fit, threadcalc_gear_fit(&gear, 0, 10.0, &rpm, &fit, sizeof fit, NULL));
    /* Counts that the memory does not hold: nothing behind the first gear may be read. */
    REFUSED(RANGE, fit, threadcalc_gear_fit(&gear, 7, 10.0, &rpm, &fit, sizeof fit, NULL));
    REFUSED(RANGE, fit, threadcalc_gear_fit(&gear, SIZE_MAX, 10.0, &rpm, &fit, sizeof fit, NULL));
    for (place = 1; place < sizeof no_strengths / sizeof no_strengths[0]; place++) {
        const double bad = place == 5 ? 1e7 : no_strengths[place];
        REFUSED(RANGE, fit, threadcalc_gear_fit(&gear, 1, bad, &rpm, &fit, sizeof fit, NULL));
        gear.points[0].torque_nm = bad;
        gear_refused(RANGE, gear);
        gear = good_gear();
    }
    for (place = 0; place < sizeof no_choices / sizeof no_choices[0]; place++) {
        gear.point_count = no_choices[place];
        gear_refused(RANGE, gear);
    }
    gear.point_count = 9;
    gear_refused(RANGE, gear);
    gear.point_count = 2;
    gear_refused(MISSING, gear);
    gear.points[1].rpm = ratio(20, 1);
    gear_refused(CONTRADICTION, gear);
    gear.points[1].rpm = ratio(20, 0);
    gear_refused(RANGE, gear);
    gear = good_gear();
    gear.reserved = 1;
    gear_refused(IS_FIELD, gear);
    gear = good_gear();
    gear.lowest_rpm = none;
    gear_refused(MISSING, gear);
    gear = good_gear();
    gear.highest_rpm = none;
    gear_refused(MISSING, gear);
    gear.highest_rpm = ratio(10, 1);
    gear_refused(CONTRADICTION, gear);
    /* Points behind the count are not read. */
    gear = good_gear();
    gear.points[1].rpm = ratio(1, 0);
    gear.points[7].torque_nm = NAN;
    CHECK(threadcalc_gear_fit(&gear, 1, 10.0, &rpm, &fit, sizeof fit, NULL) == OK);
    CHECK(fit.gear == 0 && fit.is_enough == 1 && fit.torque_nm == 120.0 && fit.fastest_rpm == 500.0);
}

void bad_strengths(void)
{
    engagement_pointers_and_sizes();
    engagement_values();
    speeds();
    torques();
    starting_values();
    gears();
}
