/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* The members of a dialect by the names that they have in JSON. */
#include "reference.h"

#include <string.h>

/* A text as it fits: one that is too long fills its member without a NUL. */
static void fill(char *member, size_t size, const char *value)
{
    const size_t length = strlen(value);
    memset(member, 0, size);
    memcpy(member, value, length < size ? length : size);
}

/* Sets a member that holds a text. True if the key is one. */
static int set_text(threadcalc_dialect_t *mill, const char *key, const char *value)
{
#define OF(member) {#member, mill->member, sizeof mill->member}
    const struct { const char *key; char *member; size_t size; } texts[] = {
        OF(name), OF(tap_rh), OF(tap_lh), OF(feed_per_minute), OF(feed_per_revolution), OF(rigid_tap_code),
        OF(peck_code_rh), OF(peck_code_lh), OF(return_r_plane), OF(return_initial), OF(peck_word), OF(dwell_word),
        OF(retract_multiplier_word), OF(stroke_code), OF(mirror_on), OF(mirror_off), OF(scale_on), OF(scale_off),
        OF(rotate_on), OF(rotate_off), OF(subprogram_call), OF(subprogram_return), OF(lead_word), OF(repeat_word),
        {"units_codes.inch", mill->units_codes_inch, sizeof mill->units_codes_inch},
        {"units_codes.mm", mill->units_codes_mm, sizeof mill->units_codes_mm}};
#undef OF
    size_t place;
    for (place = 0; place < sizeof texts / sizeof texts[0]; place++) {
        if (strcmp(key, texts[place].key) == 0) {
            fill(texts[place].member, texts[place].size, value);
            return 1;
        }
    }
    return 0;
}

/* The number of a name among up to four; one behind the last for a name that is none of them. */
static int32_t number_of(const char *name, const char *const *names)
{
    int32_t place;
    for (place = 0; place < 4 && names[place] && strcmp(name, names[place]) != 0; place++) {
    }
    return place + 1;
}

/* Sets a member that holds a choice. True if the key is one. */
static int set_choice(threadcalc_dialect_t *mill, const char *key, const char *value)
{
    static const char *const answers[4] = {"true", "false"};
    const struct { const char *key; int32_t *member; const char *names[4]; } choices[] = {
        {"dwell_unit", &mill->dwell_unit, {"seconds", "milliseconds"}},
        {"retract_in", &mill->retract_in, {"factor", "percent"}},
        {"units_default", &mill->units_default, {"mm", "inch"}},
        {"feed_mode_default", &mill->feed_mode_default, {"per_minute", "per_revolution"}},
        {"feed_basis", &mill->feed_basis, {"by_mode", "per_min_always", "per_rev_in_tap_cycle", "lead_word"}},
        {"rigid_tap_code_sticky_until", &mill->rigid_tap_code_sticky_until,
         {"next_cycle", "cycle_cancelled", "spindle_code", "program_end"}},
        {"repeat_zero_means", &mill->repeat_zero_means, {"error", "store_only", "once"}},
        {"no_point", &mill->no_point, {"as_written", "least_increment"}},
        {"spaces_in_numbers", &mill->spaces_in_numbers, {"ignored", "error"}},
        {"order_table", &mill->order_table, {"rs274ngc", "units_first"}}};
#define OF(member) {#member, &mill->member}
    const struct { const char *key; int32_t *member; } asked[] = {
        OF(needs_spindle_running), OF(lh_by_spindle_direction), OF(rigid_tap_code_has_s), OF(trailing_point),
        OF(cycle_starts_spindle), OF(mirror_flips_hand), OF(rapid_cancels_cycle),
        OF(cycle_words_sticky_across_cancel), OF(override_locked_in_cycle), OF(unlisted_codes_alarm),
        OF(semicolon_comment),
        {"S_in_cycle_block_allowed", &mill->s_in_cycle_block_allowed},
        {"peck_returns_to_R", &mill->peck_returns_to_r},
        {"F_converted_on_units_change", &mill->f_converted_on_units_change}};
#undef OF
    size_t place;
    for (place = 0; place < sizeof choices / sizeof choices[0]; place++) {
        if (strcmp(key, choices[place].key) == 0) {
            *choices[place].member = number_of(value, choices[place].names);
            return 1;
        }
    }
    for (place = 0; place < sizeof asked / sizeof asked[0]; place++) {
        if (strcmp(key, asked[place].key) == 0) {
            *asked[place].member = number_of(value, answers);
            return 1;
        }
    }
    return 0;
}

/* The member of a key that holds a number; NULL if there is none. */
static threadcalc_ratio_t *number_member(threadcalc_dialect_t *mill, const char *key)
{
    const struct { const char *key; threadcalc_ratio_t *member; } numbers[] = {
        {"axis_decimals_mm", &mill->axis_decimals_mm},
        {"axis_decimals_inch", &mill->axis_decimals_inch},
        {"S_decimals", &mill->s_decimals},
        {"max_block_chars", &mill->max_block_chars},
        {"least_increment.axis.mm", &mill->least_increment_axis_mm},
        {"least_increment.axis.inch", &mill->least_increment_axis_inch},
        {"least_increment.F_per_min.mm", &mill->least_increment_f_per_min_mm},
        {"least_increment.F_per_min.inch", &mill->least_increment_f_per_min_inch},
        {"least_increment.F_per_rev.mm", &mill->least_increment_f_per_rev_mm},
        {"least_increment.F_per_rev.inch", &mill->least_increment_f_per_rev_inch},
        {"max_decimals.axis.mm", &mill->max_decimals_axis_mm},
        {"max_decimals.axis.inch", &mill->max_decimals_axis_inch},
        {"max_decimals.F_per_min.mm", &mill->max_decimals_f_per_min_mm},
        {"max_decimals.F_per_min.inch", &mill->max_decimals_f_per_min_inch},
        {"max_decimals.F_per_rev.mm", &mill->max_decimals_f_per_rev_mm},
        {"max_decimals.F_per_rev.inch", &mill->max_decimals_f_per_rev_inch}};
    size_t place;
    for (place = 0; place < sizeof numbers / sizeof numbers[0]; place++) {
        if (strcmp(key, numbers[place].key) == 0) {
            return numbers[place].member;
        }
    }
    return NULL;
}

/* Short names of units and codes for modes are for texts: a number stands for their name. */
static const char *name_of(const char *key, const char *value)
{
    static const char *const names[][3] = {{"dwell_unit", "s", "seconds"},
                                           {"dwell_unit", "ms", "milliseconds"},
                                           {"feed_mode_default", "G94", "per_minute"},
                                           {"feed_mode_default", "G95", "per_revolution"}};
    size_t place;
    for (place = 0; place < sizeof names / sizeof names[0]; place++) {
        if (strcmp(key, names[place][0]) == 0 && strcmp(value, names[place][1]) == 0) {
            return names[place][2];
        }
    }
    return value;
}

int32_t reference_dialect_set(csv_row *row, threadcalc_dialect_t *mill, const char *key, const char *given)
{
    const char *const value = name_of(key, given);
    threadcalc_ratio_t *number = number_member(mill, key);
    if (number) {
        return threadcalc_read_number((const uint8_t *)value, strlen(value), number, &row->error);
    }
    return set_text(mill, key, value) || set_choice(mill, key, value) ? THREADCALC_STATUS_OK
                                                                      : THREADCALC_STATUS_UNKNOWN_KEY;
}
