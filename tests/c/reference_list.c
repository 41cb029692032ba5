/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* The tables of threads made of parts, of lists, of doubles, of the errors of feeds and of depths. */
#include "reference.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

static const char *const hand_names[] = {"right", "left"};
static const char *const side_names[] = {"internal", "external"};

static int32_t made(csv_row *row, threadcalc_thread_t *thread)
{
    const char *form = csv_cell(row, "form");
    const char *size_text = csv_cell(row, "size");
    threadcalc_ratio_t size = {0, 0}, pitch;
    int32_t status = reference_number(row, "pitch", &pitch);
    if (status == THREADCALC_STATUS_OK && strcmp(form, "unified_size") != 0) {
        status = reference_number(row, "size", &size);
    }
    if (status != THREADCALC_STATUS_OK) {
        return status;
    }
    if (strcmp(form, "metric") == 0) {
        return threadcalc_thread_metric(&size, &pitch, thread, &row->error);
    }
    if (strcmp(form, "unified") == 0) {
        return threadcalc_thread_unified(&size, &pitch, thread, &row->error);
    }
    return threadcalc_thread_unified_size((const uint8_t *)size_text, strlen(size_text), &pitch, thread, &row->error);
}

static int32_t wire_insert(csv_row *row)
{
    threadcalc_thread_t screw, hole;
    int32_t status = reference_thread(row, &screw);
    if (status == THREADCALC_STATUS_OK) {
        status = threadcalc_thread_with_wire_insert(&screw, &hole, &row->error);
    }
    if (status == THREADCALC_STATUS_OK) {
        csv_exact(row, "major_mm", hole.major_mm);
        status = reference_written(row, "hole", &hole);
    }
    return status;
}

static int32_t thread_parts(csv_row *row)
{
    threadcalc_thread_t parts, thread;
    char text[128];
    size_t needed = 0;
    const char *class = csv_cell(row, "tolerance_class");
    int32_t status = made(row, &parts);
    if (status != THREADCALC_STATUS_OK) {
        return status;
    }
    /* What follows from the others is left out; starts of 0 and a hand of 0 are one and right. */
    parts.series = 0;
    memset(&parts.lead_mm, 0, sizeof parts.lead_mm);
    parts.starts = (int32_t)csv_whole(row, "starts", 0);
    parts.hand = csv_choice(row, "hand", hand_names, 2);
    parts.side = csv_choice(row, "side", side_names, 2);
    snprintf(parts.tolerance_class, sizeof parts.tolerance_class, "%s", class);
    status = threadcalc_thread_write(&parts, text, sizeof text, &needed, &row->error);
    if (status != THREADCALC_STATUS_OK) {
        return status;
    }
    csv_text(row, "canonical", text);
    /* The text says all but a side without a class. */
    status = threadcalc_thread_read((const uint8_t *)text, needed - 1, &thread, &row->error);
    if (status == THREADCALC_STATUS_OK) {
        const int32_t side = thread.side ? thread.side : parts.side;
        csv_text_or_none(row, "series", thread.series ? threadcalc_series_name(thread.series) : "");
        csv_text_or_none(row, "on_side", side ? threadcalc_side_name(side) : "");
        csv_exact(row, "lead_mm", thread.lead_mm);
    }
    return status;
}

/* The number of a form or a series by its name; 99 for a name that is none. */
static int32_t number_of(csv_row *row, const char *column, const char *(THREADCALC_CALL *name_of)(int32_t))
{
    const char *cell = csv_cell(row, column);
    int32_t number;
    if (!*cell) {
        return 0;
    }
    for (number = 1; number < 99; number++) {
        if (strcmp(name_of(number), cell) == 0) {
            return number;
        }
    }
    return 99;
}

/* The canonical text of one thread of a list, or nothing. */
static int32_t listed(csv_row *row, const char *column, const threadcalc_thread_t *thread, size_t count)
{
    if (count == 0) {
        csv_text_or_none(row, column, "");
        return THREADCALC_STATUS_OK;
    }
    return reference_written(row, column, thread);
}

static int32_t standard_threads(csv_row *row)
{
    static threadcalc_thread_t threads[1024];
    char shown[32];
    size_t count = 0;
    const int32_t form = number_of(row, "form", threadcalc_form_name);
    const int32_t series = number_of(row, "series", threadcalc_series_name);
    int32_t status = threadcalc_standard_threads(form, series, threads, 1024, &count, &row->error);
    if (status == THREADCALC_STATUS_OK) {
        snprintf(shown, sizeof shown, "%lu", (unsigned long)count);
        csv_text(row, "count", shown);
        status = listed(row, "first", threads, count);
    }
    if (status == THREADCALC_STATUS_OK) {
        status = listed(row, "last", threads + (count ? count - 1 : 0), count);
    }
    return status;
}

static int32_t standing(csv_row *row)
{
    threadcalc_thread_t thread;
    char shown[32];
    int32_t choice = 0, is_iso_262 = 0;
    int32_t status = reference_thread(row, &thread);
    if (status == THREADCALC_STATUS_OK) {
        status = threadcalc_choice(&thread, &choice, &row->error);
    }
    if (status == THREADCALC_STATUS_OK) {
        status = threadcalc_is_iso_262(&thread, &is_iso_262, &row->error);
    }
    if (status == THREADCALC_STATUS_OK) {
        snprintf(shown, sizeof shown, "%ld", (long)choice);
        csv_text(row, "standard", thread.is_standard ? "yes" : "no");
        csv_text(row, "choice", choice ? shown : "-");
        csv_text(row, "iso_262", is_iso_262 ? "yes" : "no");
    }
    return status;
}

/* C has no list of near threads of its own: they stand in the suggestion of the finding. */
static int32_t near(csv_row *row)
{
    threadcalc_thread_t thread;
    threadcalc_finding_t findings[4];
    char suggestion[sizeof findings[0].suggestion] = "";
    size_t count = 0, place, length = 0;
    int32_t status = reference_thread(row, &thread);
    (void)csv_cell(row, "near");
    if (status == THREADCALC_STATUS_OK) {
        status = threadcalc_thread_findings(&thread, findings, 4, &count, &row->error);
    }
    if (status != THREADCALC_STATUS_OK) {
        return status;
    }
    for (place = 0; place < count; place++) {
        if (findings[place].id == THREADCALC_FINDING_NOT_STANDARD) {
            strcpy(suggestion, findings[place].suggestion);
        }
    }
    for (length = 0; suggestion[length]; length++) {
        suggestion[length] = suggestion[length] == ',' ? ';' : suggestion[length];
    }
    csv_text_or_none(row, "suggestion", suggestion);
    return status;
}

static int32_t drills(csv_row *row)
{
    static threadcalc_drill_t all[1024];
    char shown[32];
    size_t count = 0;
    const int32_t status = threadcalc_drills(reference_sets(row), all, 1024, &count, &row->error);
    if (status == THREADCALC_STATUS_OK && count > 0) {
        snprintf(shown, sizeof shown, "%lu", (unsigned long)count);
        csv_text(row, "count", shown);
        csv_text(row, "first", all[0].name);
        csv_text(row, "last", all[count - 1].name);
    }
    return status;
}

static int32_t drill_of_diameter(csv_row *row)
{
    threadcalc_ratio_t diameter;
    threadcalc_drill_t drill;
    int32_t status = reference_number(row, "diameter_mm", &diameter);
    if (status == THREADCALC_STATUS_OK) {
        status = threadcalc_drill_of_diameter(&diameter, &drill, &row->error);
    }
    if (status == THREADCALC_STATUS_OK) {
        csv_text(row, "name", drill.name);
        csv_text_or_none(row, "set", drill.set ? threadcalc_drill_set_name(drill.set) : "");
    }
    return status;
}

static int32_t exact_number(csv_row *row)
{
    threadcalc_ratio_t value;
    char text[64];
    size_t needed = 0;
    double again = 0.0;
    int32_t status = threadcalc_exact_number(strtod(csv_cell(row, "number"), NULL), &value, &row->error);
    if (status == THREADCALC_STATUS_OK) {
        status = threadcalc_write_number(&value, text, sizeof text, &needed, &row->error);
    }
    if (status == THREADCALC_STATUS_OK) {
        status = threadcalc_nearest_double(&value, &again, &row->error);
    }
    if (status == THREADCALC_STATUS_OK) {
        csv_text(row, "text", text);
        csv_exact(row, "value", value);
        csv_double(row, "number", again);
    }
    return status;
}

static int32_t depths(csv_row *row)
{
    static const char *const set_on[] = {"front", "centre"};
    static const char *const holes[] = {"through", "blind"};
    threadcalc_depth_request_t asked = THREADCALC_DEPTH_REQUEST_INIT;
    struct { const char *column; threadcalc_ratio_t *number; } numbers[6];
    threadcalc_thread_t thread;
    threadcalc_depths_t found;
    size_t place;
    int32_t status = reference_thread(row, &thread);
    numbers[0].column = "full_thread_mm", numbers[0].number = &asked.full_thread_mm;
    numbers[1].column = "chamfer_threads", numbers[1].number = &asked.chamfer_threads;
    numbers[2].column = "drill_mm", numbers[2].number = &asked.drill_mm;
    numbers[3].column = "point_angle_deg", numbers[3].number = &asked.point_angle_deg;
    numbers[4].column = "bottom_clearance_mm", numbers[4].number = &asked.bottom_clearance_mm;
    numbers[5].column = "tap_centre_mm", numbers[5].number = &asked.tap_centre_mm;
    for (place = 0; status == THREADCALC_STATUS_OK && place < 6; place++) {
        status = reference_number(row, numbers[place].column, numbers[place].number);
    }
    if (status == THREADCALC_STATUS_OK) {
        asked.tap_set_on = csv_choice(row, "tap_set_on", set_on, 2);
        asked.hole = csv_choice(row, "hole", holes, 2);
        status = threadcalc_depths(&thread, &asked, &found, sizeof found, &row->error);
    }
    if (status == THREADCALC_STATUS_OK) {
        csv_exact(row, "tap_mm", found.tap_mm);
        csv_exact(row, "program_tap_mm", found.program_tap_mm);
        csv_exact(row, "full_diameter_mm", found.full_diameter_mm);
        csv_double(row, "drill_point_mm", found.drill_point_mm);
    }
    return status;
}

void reference_lists(void)
{
    csv_run("thread_parts", thread_parts);
    csv_run("wire_insert", wire_insert);
    csv_run("standard_threads", standard_threads);
    csv_run("standing", standing);
    csv_run("near", near);
    csv_run("drills", drills);
    csv_run("drill_of_diameter", drill_of_diameter);
    csv_run("exact_number", exact_number);
    csv_run("depths", depths);
}
