/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* The table of checked programs, piece by piece through the handle. */
#include "reference.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

enum { MOST_TEXT = 4096, MOST_FOUND = 64, PIECE = 7 };

typedef struct found_findings {
    threadcalc_program_event_t all[MOST_FOUND];
    size_t count;
    char holes[1024];
} found_findings;

/* Calls `set` with every key=value of a cell. Returns the first status that is none of OK. */
static int32_t pairs(csv_row *row, const char *column, void *target,
                     int32_t (*set)(csv_row *row, void *target, const char *key, const char *value))
{
    char cell[2048], *rest = cell;
    snprintf(cell, sizeof cell, "%s", csv_cell(row, column));
    while (*rest) {
        char *const behind = strstr(rest, "; "), *const value = strchr(rest, '=');
        int32_t status;
        if (behind) {
            *behind = '\0';
        }
        if (!value) {
            return THREADCALC_STATUS_UNREADABLE;
        }
        *value = '\0';
        status = set(row, target, rest, value + 1);
        if (status != THREADCALC_STATUS_OK) {
            return status;
        }
        rest = behind ? behind + 2 : value + 1 + strlen(value + 1);
    }
    return THREADCALC_STATUS_OK;
}

static int32_t number_of(csv_row *row, const char *text, threadcalc_ratio_t *number)
{
    return threadcalc_read_number((const uint8_t *)text, strlen(text), number, &row->error);
}

static int32_t set_dialect(csv_row *row, void *target, const char *key, const char *value)
{
    threadcalc_dialect_t *const mill = target;
    if (strcmp(key, "base") == 0) {
        mill->base = strcmp(value, "rs274ngc") == 0 ? THREADCALC_DIALECT_RS274NGC : THREADCALC_DIALECT_OWN;
        return THREADCALC_STATUS_OK;
    }
    return reference_dialect_set(row, mill, key, value);
}

static int32_t set_option(csv_row *row, void *target, const char *key, const char *value)
{
    threadcalc_check_options_t *const options = target;
    const struct { const char *key; threadcalc_ratio_t *member; } numbers[] = {
        {"surface_z_mm", &options->surface_z_mm},
        {"full_thread_depth_mm", &options->full_thread_depth_mm},
        {"underfeed_percent", &options->underfeed_percent},
        {"cutting_force_n_mm2", &options->cutting_force_n_mm2},
        {"machine.highest_rpm", &options->machine_highest_rpm},
        {"machine.axis_feed_limit_mm_min", &options->machine_axis_feed_limit_mm_min},
        {"machine.acceleration_rpm_s", &options->machine_acceleration_rpm_s},
        {"machine.least_clearance_turns", &options->machine_least_clearance_turns}};
    const int32_t answer = strcmp(value, "true") == 0 ? THREADCALC_ANSWER_YES : THREADCALC_ANSWER_NO;
    size_t place;
    for (place = 0; place < sizeof numbers / sizeof numbers[0]; place++) {
        if (strcmp(key, numbers[place].key) == 0) {
            return number_of(row, value, numbers[place].member);
        }
    }
    if (strcmp(key, "block_delete") == 0) {
        options->block_delete = answer;
    } else if (strcmp(key, "evaluate_macros") == 0) {
        options->evaluate_macros = answer;
    } else if (strcmp(key, "holder") == 0) {
        options->holder = strcmp(value, "floating") == 0              ? THREADCALC_HOLDER_FLOATING
                          : strcmp(value, "tension_compression") == 0 ? THREADCALC_HOLDER_TENSION_COMPRESSION
                                                                      : -1;
    } else if (strcmp(key, "machine.gears") == 0) {
        threadcalc_gear_t *const gear = &options->machine_gears[options->machine_gear_count++];
        long lowest = 0, highest = 0;
        double torque = 0.0;
        if (sscanf(value, "%ld %ld %lf", &lowest, &highest, &torque) != 3) {
            return THREADCALC_STATUS_UNREADABLE;
        }
        gear->lowest_rpm.numerator = lowest;
        gear->highest_rpm.numerator = highest;
        gear->lowest_rpm.denominator = gear->highest_rpm.denominator = 1;
        gear->point_count = 1;
        gear->points[0].rpm = gear->lowest_rpm;
        gear->points[0].torque_nm = torque;
    } else {
        return THREADCALC_STATUS_UNKNOWN_KEY;
    }
    return THREADCALC_STATUS_OK;
}

static int32_t set_tool(csv_row *row, void *target, const char *key, const char *value)
{
    threadcalc_tool_t *const tool = target;
    if (strcmp(key, "number") == 0) {
        tool->number = (uint32_t)strtoul(value, NULL, 10);
    } else if (strcmp(key, "thread") == 0) {
        return threadcalc_thread_read((const uint8_t *)value, strlen(value), &tool->thread, &row->error);
    } else if (strcmp(key, "kind") == 0) {
        tool->kind = strcmp(value, "cut_tap") == 0 ? THREADCALC_TOOL_KIND_CUT_TAP
                     : strcmp(value, "tap") == 0   ? THREADCALC_TOOL_KIND_TAP
                     : strcmp(value, "drill") == 0 ? THREADCALC_TOOL_KIND_DRILL
                                                   : -1;
    } else if (strcmp(key, "diameter_mm") == 0) {
        return number_of(row, value, &tool->diameter_mm);
    } else if (strcmp(key, "point_angle_deg") == 0) {
        return number_of(row, value, &tool->point_angle_deg);
    } else {
        return THREADCALC_STATUS_UNKNOWN_KEY;
    }
    return THREADCALC_STATUS_OK;
}

static void keep(void *place, const threadcalc_program_event_t *event)
{
    found_findings *const found = place;
    char word[96];
    if (event->kind == THREADCALC_EVENT_FINDING) {
        if (found->count < MOST_FOUND) {
            found->all[found->count++] = *event;
        }
        return;
    }
    if (event->lead_mm.denominator == 0) {
        snprintf(word, sizeof word, "%lu:none:", (unsigned long)event->line);
    } else {
        snprintf(word, sizeof word, "%lu:%.6g:", (unsigned long)event->line,
                 (double)event->lead_mm.numerator / (double)event->lead_mm.denominator);
    }
    strcat(word, event->hand == 0 ? "none" : event->hand == THREADCALC_HAND_RIGHT ? "right" : "left");
    reference_join(found->holes, sizeof found->holes, " ", word);
}

static int by_line(const void *left, const void *right)
{
    const threadcalc_program_event_t *const a = left, *const b = right;
    if (a->line != b->line) {
        return a->line < b->line ? -1 : 1;
    }
    const char *const first = threadcalc_program_finding_name(a->id);
    const char *const second = threadcalc_program_finding_name(b->id);
    return strcmp(first, second);
}

static void compare(csv_row *row, found_findings *found)
{
    static const char *const severities[] = {"unset", "error", "warning", "info"};
    char words[2048] = "", word[96];
    size_t place;
    qsort(found->all, found->count, sizeof found->all[0], by_line);
    for (place = 0; place < found->count; place++) {
        const threadcalc_program_event_t *const finding = &found->all[place];
        const char *const name = threadcalc_program_finding_name(finding->id);
        if (finding->severity == THREADCALC_SEVERITY_INFO && !strstr(csv_cell(row, "findings"), name)) {
            continue;
        }
        snprintf(word, sizeof word, "%lu:%s:%s", (unsigned long)finding->line, name, severities[finding->severity]);
        reference_join(words, sizeof words, " ", word);
    }
    csv_text_or_none(row, "holes", found->holes);
    csv_text_or_none(row, "findings", words);
}

/* Whether a call was met, which a check in pieces does not follow, and says so. */
static int has_call(threadcalc_checker_t *checker)
{
    threadcalc_unchecked_t unchecked;
    size_t index;
    for (index = 0; threadcalc_checker_not_checked(checker, index, &unchecked, sizeof unchecked, NULL) == 0
                    && unchecked.reason != THREADCALC_REASON_UNSET; index++) {
        if (unchecked.reason == THREADCALC_REASON_CALL_NOT_FOLLOWED) {
            return 1;
        }
    }
    return 0;
}

static int32_t check(csv_row *row)
{
    static uint8_t program[MOST_TEXT];
    static found_findings found;
    threadcalc_dialect_t mill = THREADCALC_DIALECT_INIT;
    threadcalc_check_options_t options = THREADCALC_CHECK_OPTIONS_INIT;
    threadcalc_tool_t tool = THREADCALC_TOOL_INIT;
    threadcalc_checker_t *const checker = malloc(threadcalc_checker_size());
    int32_t status;
    memset(&found, 0, sizeof found);
    mill.base = THREADCALC_DIALECT_OWN;
    status = pairs(row, "dialect", &mill, set_dialect);
    status = status ? status : pairs(row, "options", &options, set_option);
    status = status ? status : pairs(row, "tools", &tool, set_tool);
    status = status ? status
                    : threadcalc_checker_begin(checker, threadcalc_checker_size(), &mill, &options, &row->error);
    if (!status && *csv_cell(row, "tools")) {
        status = threadcalc_checker_add_tool(checker, &tool, &row->error);
    }
    status = status ? status : reference_in_pieces(checker, program, reference_program(row, "program", program, sizeof program), PIECE,
                                                   keep, &found, &row->error);
    if (!status && !has_call(checker)) {
        compare(row, &found);
    }
    free(checker);
    return status;
}

void reference_checks(void)
{
    csv_run("nc_check", check);
}
