/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* Tapping cycles and dialects that mean nothing. */
#include "bad_input.h"

#include <stddef.h>

enum {
    OK = THREADCALC_STATUS_OK,
    IS_NULL = THREADCALC_STATUS_NULL_POINTER,
    IS_SIZE = THREADCALC_STATUS_STRUCTURE_SIZE,
    IS_FIELD = THREADCALC_STATUS_UNSUPPORTED_FIELD,
    MISSING = THREADCALC_STATUS_MISSING,
    UNKNOWN = THREADCALC_STATUS_UNKNOWN_VALUE,
    RANGE = THREADCALC_STATUS_OUT_OF_RANGE,
    TAIL = 64
};

static const uint32_t wrong[] = {0, 1, 3, 4, 5, UINT32_MAX};
static const size_t wrong_count = sizeof wrong / sizeof wrong[0];

static void pointers(void)
{
    const threadcalc_thread_t thread = good_thread();
    const threadcalc_dialect_t mill = good_dialect();
    const threadcalc_cycle_request_t asked = good_cycle();
    threadcalc_cycle_t found;
    threadcalc_error_t error;
    REFUSED(IS_NULL, found, threadcalc_cycle(NULL, &mill, &asked, &found, sizeof found, NULL));
    REFUSED(IS_NULL, found, threadcalc_cycle(&thread, NULL, &asked, &found, sizeof found, NULL));
    REFUSED(IS_NULL, found, threadcalc_cycle(&thread, &mill, NULL, &found, sizeof found, NULL));
    CHECK(threadcalc_cycle(&thread, &mill, &asked, NULL, sizeof found, &error) == IS_NULL);
    CHECK(error.code == IS_NULL && error.field == THREADCALC_FIELD_POINTER);
    CHECK(threadcalc_cycle(&thread, &mill, &asked, &found, sizeof found, NULL) == OK);
    CHECK(found.word_count > 0 && found.refused.id == 0 && strcmp(found.blocks[2], "G99 G84 Z-20. R5. F750.") == 0);
}

static void sizes(void)
{
    struct { threadcalc_cycle_request_t asked; unsigned char tail[TAIL]; } longer;
    struct { threadcalc_dialect_t mill; unsigned char tail[TAIL]; } wider;
    const threadcalc_thread_t thread = good_thread();
    threadcalc_job_t job = good_job();
    threadcalc_cycle_t found;
    threadcalc_plan_t plan;
    size_t place;
    for (place = 0; place <= wrong_count; place++) {
        threadcalc_cycle_request_t asked = good_cycle();
        threadcalc_dialect_t mill = good_dialect();
        asked.size = place < wrong_count ? wrong[place] : (uint32_t)sizeof asked - 1;
        REFUSED(IS_SIZE, found, threadcalc_cycle(&thread, &mill, &asked, &found, sizeof found, NULL));
        asked = good_cycle();
        mill.size = place < wrong_count ? wrong[place] : (uint32_t)sizeof mill - 1;
        REFUSED(IS_SIZE, found, threadcalc_cycle(&thread, &mill, &asked, &found, sizeof found, NULL));
        job.dialect = &mill;
        REFUSED(IS_SIZE, plan, threadcalc_plan(&job, &plan, sizeof plan, NULL));
    }
    memset(&longer, 0, sizeof longer);
    memset(&wider, 0, sizeof wider);
    longer.asked = good_cycle();
    longer.asked.size = (uint32_t)sizeof longer;
    wider.mill = good_dialect();
    wider.mill.size = (uint32_t)sizeof wider;
    CHECK(threadcalc_cycle(&thread, &wider.mill, &longer.asked, &found, sizeof found, NULL) == OK);
    longer.tail[0] = 1;
    REFUSED(IS_FIELD, found, threadcalc_cycle(&thread, &wider.mill, &longer.asked, &found, sizeof found, NULL));
    longer.tail[0] = 0;
    wider.tail[TAIL - 1] = 1;
    REFUSED(IS_FIELD, found, threadcalc_cycle(&thread, &wider.mill, &longer.asked, &found, sizeof found, NULL));
    wider.tail[TAIL - 1] = 0;
    longer.asked.reserved = 1;
    REFUSED(IS_FIELD, found, threadcalc_cycle(&thread, &wider.mill, &longer.asked, &found, sizeof found, NULL));
    longer.asked.reserved = 0;
    REFUSED(IS_SIZE, found, threadcalc_cycle(&thread, &wider.mill, &longer.asked, &found, 0, NULL));
    memset(&found, 0xA5, sizeof found);
    place = offsetof(threadcalc_cycle_t, words);
    CHECK(threadcalc_cycle(&thread, &wider.mill, &longer.asked, &found, place, NULL) == OK);
    CHECK(found.word_count == 12 && bad_input_untouched(found.words, sizeof found - place));
}

/* A dialect of an older caller, who knows no more than its first members. */
static void older(void)
{
    const threadcalc_thread_t thread = good_thread();
    const threadcalc_cycle_request_t asked = good_cycle();
    threadcalc_dialect_t mill = good_dialect();
    threadcalc_cycle_t found;
    mill.size = (uint32_t)offsetof(threadcalc_dialect_t, tap_lh);
    memcpy(mill.tap_lh, "what is this", sizeof mill.tap_lh);
    CHECK(threadcalc_cycle(&thread, &mill, &asked, &found, sizeof found, NULL) == OK && found.word_count == 12);
    mill.size = (uint32_t)offsetof(threadcalc_dialect_t, tap_rh);
    CHECK(threadcalc_cycle(&thread, &mill, &asked, &found, sizeof found, NULL) == OK && found.word_count == 0);
    CHECK(found.refused.id == THREADCALC_FINDING_CODE_NOT_ON_CONTROL);
    mill = good_dialect();
    mill.size = (uint32_t)offsetof(threadcalc_dialect_t, units_default);
    memset((char *)&mill + mill.size, 0xA5, sizeof mill - mill.size);
    CHECK(threadcalc_cycle(&thread, &mill, &asked, &found, sizeof found, NULL) == OK && found.word_count == 12);
}

static void choices(void)
{
    static const int32_t numbers[] = {-1, 4, 5, 99, INT32_MAX, INT32_MIN};
    const threadcalc_thread_t thread = good_thread();
    threadcalc_job_t job = good_job();
    threadcalc_cycle_t found;
    threadcalc_plan_t plan;
    size_t place, member;
    for (place = 0; place < sizeof numbers / sizeof numbers[0]; place++) {
        for (member = 0; member < 4; member++) {
            const threadcalc_dialect_t mill = good_dialect();
            threadcalc_cycle_request_t asked = good_cycle();
            int32_t *const members[] = {&asked.unit, &asked.mode, &asked.holder, &asked.return_to};
            *members[member] = numbers[place];
            REFUSED(UNKNOWN, found, threadcalc_cycle(&thread, &mill, &asked, &found, sizeof found, NULL));
            *members[member] = 0;
            REFUSED(MISSING, found, threadcalc_cycle(&thread, &mill, &asked, &found, sizeof found, NULL));
        }
        for (member = 0; member < 24; member++) {
            const threadcalc_cycle_request_t asked = good_cycle();
            threadcalc_dialect_t mill = good_dialect();
            int32_t *const members[] = {&mill.base, &mill.needs_spindle_running, &mill.lh_by_spindle_direction,
                                        &mill.rigid_tap_code_has_s, &mill.trailing_point, &mill.dwell_unit,
                                        &mill.retract_in, &mill.units_default, &mill.feed_mode_default,
                                        &mill.feed_basis, &mill.rigid_tap_code_sticky_until, &mill.repeat_zero_means,
                                        &mill.no_point, &mill.spaces_in_numbers, &mill.order_table,
                                        &mill.cycle_starts_spindle, &mill.s_in_cycle_block_allowed,
                                        &mill.peck_returns_to_r, &mill.mirror_flips_hand, &mill.rapid_cancels_cycle,
                                        &mill.cycle_words_sticky_across_cancel, &mill.f_converted_on_units_change,
                                        &mill.override_locked_in_cycle, &mill.unlisted_codes_alarm,
                                        &mill.semicolon_comment};
            if (numbers[place] == 4
                && (members[member] == &mill.feed_basis || members[member] == &mill.rigid_tap_code_sticky_until)) {
                continue;
            }
            *members[member] = numbers[place];
            REFUSED(UNKNOWN, found, threadcalc_cycle(&thread, &mill, &asked, &found, sizeof found, NULL));
            job.dialect = &mill;
            REFUSED(UNKNOWN, plan, threadcalc_plan(&job, &plan, sizeof plan, NULL));
        }
    }
}

static void numbers(void)
{
    const threadcalc_ratio_t no_parts = ratio(1, 0), negative = ratio(-1, 1);
    const threadcalc_thread_t thread = good_thread();
    threadcalc_dialect_t mill = good_dialect();
    threadcalc_cycle_t found;
    size_t member;
    memcpy(mill.peck_word, "Q", 2);
    memcpy(mill.dwell_word, "P", 2);
    memcpy(mill.retract_multiplier_word, "J", 2);
    for (member = 0; member < 8; member++) {
        threadcalc_cycle_request_t asked = good_cycle();
        threadcalc_ratio_t *const members[] = {&asked.rpm,     &asked.depth_mm, &asked.r_plane_mm,   &asked.decimals,
                                               &asked.peck_mm, &asked.dwell_s,  &asked.retract_factor, &asked.feed_lead_mm};
        *members[member] = no_parts;
        REFUSED(RANGE, found, threadcalc_cycle(&thread, &mill, &asked, &found, sizeof found, NULL));
        *members[member] = negative;
        REFUSED(RANGE, found, threadcalc_cycle(&thread, &mill, &asked, &found, sizeof found, NULL));
        if (member < 4) {
            *members[member] = ratio(0, 0);
            REFUSED(MISSING, found, threadcalc_cycle(&thread, &mill, &asked, &found, sizeof found, NULL));
        }
    }
    mill.axis_decimals_mm = ratio(10, 1);
    {
        threadcalc_cycle_request_t asked = good_cycle();
        REFUSED(RANGE, found, threadcalc_cycle(&thread, &mill, &asked, &found, sizeof found, NULL));
        mill.axis_decimals_mm = ratio(0, 0);
        asked.feed_lead_mm = ratio(19, 16);
        REFUSED(THREADCALC_STATUS_CONTRADICTION, found,
                threadcalc_cycle(&thread, &mill, &asked, &found, sizeof found, NULL));
        asked.holder = THREADCALC_HOLDER_TENSION_COMPRESSION;
        CHECK(threadcalc_cycle(&thread, &mill, &asked, &found, sizeof found, NULL) == OK);
        CHECK(strcmp(found.blocks[2], "G99 G84 Z-20. R5. F712.5") == 0);
    }
}

/* Numbers of a dialect beyond what each of them may be; the first is the largest that it may. */
static void numbers_of_dialect(void)
{
    const threadcalc_ratio_t digit[] = {ratio(9, 1), ratio(10, 1), ratio(-1, 1), ratio(5, 2), ratio(1, 0)};
    const threadcalc_ratio_t line[] = {ratio(65535, 1), ratio(65536, 1), ratio(0, 1), ratio(161, 2), ratio(1, 0)};
    const threadcalc_ratio_t increment[] = {ratio(1, 1), ratio(10, 1), ratio(0, 1), ratio(1, 200), ratio(-1, 1000)};
    const threadcalc_thread_t thread = good_thread();
    const threadcalc_cycle_request_t asked = good_cycle();
    size_t member, place;
    for (member = 0; member < 16; member++) {
        threadcalc_dialect_t mill = good_dialect();
        threadcalc_ratio_t *const members[] = {
            &mill.axis_decimals_mm, &mill.axis_decimals_inch, &mill.s_decimals, &mill.max_decimals_axis_mm,
            &mill.max_decimals_axis_inch, &mill.max_decimals_f_per_min_mm, &mill.max_decimals_f_per_min_inch,
            &mill.max_decimals_f_per_rev_mm, &mill.max_decimals_f_per_rev_inch, &mill.max_block_chars,
            &mill.least_increment_axis_mm, &mill.least_increment_axis_inch, &mill.least_increment_f_per_min_mm,
            &mill.least_increment_f_per_min_inch, &mill.least_increment_f_per_rev_mm,
            &mill.least_increment_f_per_rev_inch};
        const threadcalc_ratio_t *const given = member < 9 ? digit : member < 10 ? line : increment;
        threadcalc_cycle_t found;
        threadcalc_error_t error;
        *members[member] = given[0];
        CHECK(threadcalc_cycle(&thread, &mill, &asked, &found, sizeof found, NULL) == OK);
        for (place = 1; place < 5; place++) {
            *members[member] = given[place];
            REFUSED(RANGE, found, threadcalc_cycle(&thread, &mill, &asked, &found, sizeof found, &error));
            CHECK(strncmp(threadcalc_field_name(error.field), "dialect.", 8) == 0);
        }
    }
}

/* Texts without a NUL, with bytes that are no text, and of the longest kind. */
static void texts(void)
{
    const threadcalc_thread_t thread = good_thread();
    const threadcalc_cycle_request_t asked = good_cycle();
    threadcalc_cycle_t found;
    size_t member;
    for (member = 0; member < 17; member++) {
        threadcalc_dialect_t mill = good_dialect();
        char *const members[] = {
            mill.name, mill.tap_rh, mill.rigid_tap_code, mill.peck_word, mill.lead_word, mill.repeat_word,
            mill.units_codes_inch, mill.units_codes_mm, mill.stroke_code, mill.mirror_on, mill.mirror_off,
            mill.scale_on, mill.scale_off, mill.rotate_on, mill.rotate_off, mill.subprogram_call,
            mill.subprogram_return};
        const size_t lengths[] = {
            sizeof mill.name, sizeof mill.tap_rh, sizeof mill.rigid_tap_code, sizeof mill.peck_word,
            sizeof mill.lead_word, sizeof mill.repeat_word, sizeof mill.units_codes_inch, sizeof mill.units_codes_mm,
            sizeof mill.stroke_code, sizeof mill.mirror_on, sizeof mill.mirror_off, sizeof mill.scale_on,
            sizeof mill.scale_off, sizeof mill.rotate_on, sizeof mill.rotate_off, sizeof mill.subprogram_call,
            sizeof mill.subprogram_return};
        memset(members[member], 0xFF, lengths[member]);
        REFUSED(UNKNOWN, found, threadcalc_cycle(&thread, &mill, &asked, &found, sizeof found, NULL));
        memset(members[member], 'G', lengths[member]);
        REFUSED(UNKNOWN, found, threadcalc_cycle(&thread, &mill, &asked, &found, sizeof found, NULL));
    }
}

/* Two codes fill their member to the last byte; a third is too many. */
static void units_codes(void)
{
    const threadcalc_thread_t thread = good_thread();
    const threadcalc_cycle_request_t asked = good_cycle();
    threadcalc_dialect_t mill = good_dialect();
    threadcalc_cycle_t found;
    memcpy(mill.units_codes_inch, "G20 G70 G1", 11);
    REFUSED(THREADCALC_STATUS_TOO_LONG, found, threadcalc_cycle(&thread, &mill, &asked, &found, sizeof found, NULL));
    memcpy(mill.units_codes_inch, "G1234567    G1234567", 20);
    CHECK(threadcalc_cycle(&thread, &mill, &asked, &found, sizeof found, NULL) == OK);
}

void bad_cycles(void)
{
    pointers();
    sizes();
    older();
    choices();
    numbers();
    numbers_of_dialect();
    texts();
    units_codes();
}
