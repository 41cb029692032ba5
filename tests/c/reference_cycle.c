/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* The table of tapping cycles. */
#include "reference.h"

#include <stdio.h>
#include <string.h>

/* The number of a name; one behind the last for a name that is none of them. */
static int32_t number_of(const char *name, const char *const *names, int32_t count)
{
    int32_t place;
    for (place = 0; place < count && strcmp(name, names[place]) != 0; place++) {
    }
    return place + 1;
}

/* Sets a member that holds a text. True if the key is one. */
static int set_text(threadcalc_dialect_t *mill, const char *key, const char *value)
{
    const struct { const char *key; char *member; size_t size; } texts[] = {
        {"name", mill->name, sizeof mill->name},
        {"tap_rh", mill->tap_rh, sizeof mill->tap_rh},
        {"tap_lh", mill->tap_lh, sizeof mill->tap_lh},
        {"feed_per_minute", mill->feed_per_minute, sizeof mill->feed_per_minute},
        {"feed_per_revolution", mill->feed_per_revolution, sizeof mill->feed_per_revolution},
        {"rigid_tap_code", mill->rigid_tap_code, sizeof mill->rigid_tap_code},
        {"peck_code_rh", mill->peck_code_rh, sizeof mill->peck_code_rh},
        {"peck_code_lh", mill->peck_code_lh, sizeof mill->peck_code_lh},
        {"return_r_plane", mill->return_r_plane, sizeof mill->return_r_plane},
        {"return_initial", mill->return_initial, sizeof mill->return_initial},
        {"peck_word", mill->peck_word, sizeof mill->peck_word},
        {"dwell_word", mill->dwell_word, sizeof mill->dwell_word},
        {"retract_multiplier_word", mill->retract_multiplier_word, sizeof mill->retract_multiplier_word}};
    size_t place;
    for (place = 0; place < sizeof texts / sizeof texts[0]; place++) {
        if (strcmp(key, texts[place].key) == 0) {
            reference_fill(texts[place].member, texts[place].size, value);
            return 1;
        }
    }
    return 0;
}

/* Sets a member that holds a choice. True if the key is one. */
static int set_choice(threadcalc_dialect_t *mill, const char *key, const char *value)
{
    static const char *const answers[] = {"true", "false"};
    static const char *const units[] = {"seconds", "milliseconds"};
    static const char *const counted[] = {"factor", "percent"};
    const struct { const char *key; int32_t *member; const char *const *names; } choices[] = {
        {"needs_spindle_running", &mill->needs_spindle_running, answers},
        {"lh_by_spindle_direction", &mill->lh_by_spindle_direction, answers},
        {"rigid_tap_code_has_s", &mill->rigid_tap_code_has_s, answers},
        {"trailing_point", &mill->trailing_point, answers},
        {"dwell_unit", &mill->dwell_unit, units},
        {"retract_in", &mill->retract_in, counted}};
    size_t place;
    for (place = 0; place < sizeof choices / sizeof choices[0]; place++) {
        if (strcmp(key, choices[place].key) == 0) {
            *choices[place].member = number_of(value, choices[place].names, 2);
            return 1;
        }
    }
    return 0;
}

/* The row's dialect: a base, then `key=value`. */
static int32_t dialect(csv_row *row, threadcalc_dialect_t *mill)
{
    char text[512];
    char *word, *value;
    int32_t status = THREADCALC_STATUS_OK;
    snprintf(text, sizeof text, "%s", csv_cell(row, "dialect"));
    word = strtok(text, " ");
    if (word) {
        mill->base = strcmp(word, "unset") == 0 ? THREADCALC_DIALECT_OWN : THREADCALC_DIALECT_RS274NGC;
    }
    while (status == THREADCALC_STATUS_OK && word && (word = strtok(NULL, " ")) != NULL) {
        value = strchr(word, '=');
        *value++ = '\0';
        if (!set_text(mill, word, value) && !set_choice(mill, word, value)) {
            threadcalc_ratio_t *decimals =
                strcmp(word, "axis_decimals_mm") == 0 ? &mill->axis_decimals_mm : &mill->axis_decimals_inch;
            status = threadcalc_read_number((const uint8_t *)value, strlen(value), decimals, &row->error);
        }
    }
    return status;
}

static void compare(csv_row *row, const threadcalc_cycle_t *found)
{
    const char *refused = found->refused.id ? threadcalc_finding_name(found->refused.id) : "";
    reference_joined(row, "blocks", "; ", found->blocks[0], sizeof found->blocks[0], found->block_count);
    reference_joined(row, "restore", " ", found->restore[0], sizeof found->restore[0], found->restore_count);
    csv_text_or_none(row, "refused", refused);
    csv_text_or_none(row, "reason", found->refused.suggestion);
    if ((found->word_count == 0) != (found->refused.id != 0)) {
        printf("%s:%s words and a refusal, or neither\n", row->table->name, csv_cell(row, "id"));
        row->differences++;
    }
}

static int32_t cycle(csv_row *row)
{
    static const char *const modes[] = {"per_minute", "per_revolution"};
    static const char *const holders[] = {"rigid", "tension_compression", "floating"};
    static const char *const returns[] = {"r_plane", "initial"};
    threadcalc_dialect_t mill = THREADCALC_DIALECT_INIT;
    threadcalc_cycle_request_t asked = THREADCALC_CYCLE_REQUEST_INIT;
    const struct { const char *column; threadcalc_ratio_t *number; } numbers[] = {
        {"decimals", &asked.decimals}, {"rpm", &asked.rpm}, {"depth_mm", &asked.depth_mm},
        {"r_plane_mm", &asked.r_plane_mm}, {"peck_mm", &asked.peck_mm}, {"dwell_s", &asked.dwell_s},
        {"retract_factor", &asked.retract_factor}};
    threadcalc_thread_t thread;
    threadcalc_cycle_t found;
    size_t place;
    int32_t status = reference_thread(row, &thread);
    for (place = 0; status == THREADCALC_STATUS_OK && place < sizeof numbers / sizeof numbers[0]; place++) {
        status = reference_number(row, numbers[place].column, numbers[place].number);
    }
    if (status == THREADCALC_STATUS_OK) {
        status = dialect(row, &mill);
    }
    if (status != THREADCALC_STATUS_OK) {
        return status;
    }
    asked.unit = reference_unit(row);
    asked.mode = csv_choice(row, "mode", modes, 2);
    asked.holder = csv_choice(row, "holder", holders, 3);
    asked.return_to = csv_choice(row, "return_to", returns, 2);
    status = threadcalc_cycle(&thread, &mill, &asked, &found, sizeof found, &row->error);
    if (status == THREADCALC_STATUS_OK) {
        compare(row, &found);
    }
    return status;
}

void reference_cycles(void)
{
    csv_run("cycle", cycle);
}
