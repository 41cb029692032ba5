/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* The tables of drills and tapped holes. */
#include "reference.h"

#include <string.h>

static const char *const set_names[] = {"metric", "number", "letter", "fractional"};

static int32_t drill(csv_row *row)
{
    uint8_t name[1024];
    threadcalc_drill_t found;
    const size_t length = csv_bytes(row, "name", name, sizeof name);
    const int32_t set = csv_choice(row, "set", set_names, 4);
    const int32_t status = threadcalc_drill_named(set, name, length, &found, &row->error);
    if (status == THREADCALC_STATUS_OK) {
        csv_exact(row, "diameter_mm", found.diameter_mm);
        csv_text(row, "name", found.name);
    }
    return status;
}

static int32_t percent(csv_row *row)
{
    threadcalc_thread_t thread;
    threadcalc_ratio_t drill_mm;
    double found = 0.0;
    int32_t status = reference_thread(row, &thread);
    if (status == THREADCALC_STATUS_OK) {
        status = reference_number(row, "drill_mm", &drill_mm);
    }
    if (status == THREADCALC_STATUS_OK) {
        status = threadcalc_percent_thread(&thread, &drill_mm, reference_tap(row), reference_basis(row), &found,
                                           &row->error);
    }
    if (status == THREADCALC_STATUS_OK) {
        csv_double(row, "percent", found);
    }
    return status;
}

static int32_t drill_diameter(csv_row *row)
{
    threadcalc_thread_t thread;
    threadcalc_ratio_t wanted;
    double found = 0.0;
    int32_t status = reference_thread(row, &thread);
    if (status == THREADCALC_STATUS_OK) {
        status = reference_number(row, "percent", &wanted);
    }
    if (status == THREADCALC_STATUS_OK) {
        status = threadcalc_drill_diameter(&thread, &wanted, reference_tap(row), reference_basis(row), &found,
                                           &row->error);
    }
    if (status == THREADCALC_STATUS_OK) {
        csv_double(row, "drill_mm", found);
    }
    return status;
}

static int32_t tap_drill(csv_row *row)
{
    threadcalc_tap_drill_request_t asked = THREADCALC_TAP_DRILL_REQUEST_INIT;
    threadcalc_thread_t thread;
    threadcalc_tap_drill_t found;
    int32_t status = reference_thread(row, &thread);
    if (status == THREADCALC_STATUS_OK) {
        status = reference_number(row, "percent", &asked.percent);
    }
    if (status == THREADCALC_STATUS_OK) {
        asked.tap = reference_tap(row);
        asked.basis = reference_basis(row);
        asked.sets = reference_sets(row);
        status = threadcalc_tap_drill(&thread, &asked, &found, sizeof found, &row->error);
    }
    if (status == THREADCALC_STATUS_OK) {
        csv_text(row, "drill", found.chosen.drill.name);
        csv_text(row, "within_limits", threadcalc_within_limits_name(found.chosen.within_limits));
    }
    return status;
}

static int32_t read_drill(csv_row *row)
{
    static const char *const none = "";
    uint8_t name[1024];
    threadcalc_drill_t found;
    const size_t length = csv_bytes(row, "name", name, sizeof name);
    const int32_t status = threadcalc_read_drill(name, length, &found, &row->error);
    if (status == THREADCALC_STATUS_OK) {
        csv_text(row, "drill", found.name);
        csv_text_or_none(row, "set", found.set ? set_names[found.set - 1] : none);
        csv_exact(row, "diameter_mm", found.diameter_mm);
    }
    return status;
}

/* The drill of the column `drill`. */
static int32_t row_drill(csv_row *row, threadcalc_drill_t *drill)
{
    uint8_t name[1024];
    const size_t length = csv_bytes(row, "drill", name, sizeof name);
    return threadcalc_read_drill(name, length, drill, &row->error);
}

enum { MOST_DRILLS = 32 };

/* The drills of the column `drills`, separated by semicolons. */
static int32_t row_drills(csv_row *row, threadcalc_drill_t drills[MOST_DRILLS], size_t *count)
{
    const char *names = csv_cell(row, "drills");
    for (*count = 0; *count < MOST_DRILLS; names++) {
        const size_t length = strcspn(names, ";");
        const int32_t status = threadcalc_read_drill((const uint8_t *)names, length, &drills[*count], &row->error);
        if (status != THREADCALC_STATUS_OK) {
            return status;
        }
        *count += 1;
        names += length;
        if (*names == '\0') {
            break;
        }
    }
    return THREADCALC_STATUS_OK;
}

static void own_drills_found(csv_row *row, const threadcalc_tap_drill_t *found)
{
    char beside[256] = "";
    int32_t place;
    for (place = 0; place < found->alternative_count; place++) {
        strcat(beside, place ? ";" : "");
        strcat(beside, found->alternatives[place].drill.name);
    }
    csv_text(row, "drill", found->chosen.drill.name);
    csv_text(row, "within_limits", threadcalc_within_limits_name(found->chosen.within_limits));
    csv_text_or_none(row, "alternatives", beside);
    reference_findings(row, found->findings, (size_t)found->finding_count);
}

static int32_t own_drills(csv_row *row)
{
    threadcalc_tap_drill_request_t asked = THREADCALC_TAP_DRILL_REQUEST_INIT;
    threadcalc_drill_t drills[MOST_DRILLS];
    threadcalc_thread_t thread;
    threadcalc_tap_drill_t found;
    int32_t status = reference_thread(row, &thread);
    if (status == THREADCALC_STATUS_OK) {
        status = reference_number(row, "percent", &asked.percent);
    }
    if (status == THREADCALC_STATUS_OK) {
        status = reference_number(row, "oversize_mm", &asked.oversize_mm);
    }
    if (status == THREADCALC_STATUS_OK) {
        status = row_drills(row, drills, &asked.drill_count);
    }
    if (status == THREADCALC_STATUS_OK) {
        asked.tap = reference_tap(row);
        asked.basis = reference_basis(row);
        asked.sets = reference_sets(row);
        asked.taper_reamer = strcmp(csv_cell(row, "taper_reamer"), "true") == 0;
        asked.drills = drills;
        status = threadcalc_tap_drill(&thread, &asked, &found, sizeof found, &row->error);
    }
    if (status == THREADCALC_STATUS_OK) {
        own_drills_found(row, &found);
    }
    return status;
}

static int32_t judge_drill(csv_row *row)
{
    threadcalc_ratio_t oversize;
    threadcalc_drill_t drill;
    threadcalc_thread_t thread;
    threadcalc_tap_drill_t found;
    int32_t status = reference_thread(row, &thread);
    if (status == THREADCALC_STATUS_OK) {
        status = reference_number(row, "oversize_mm", &oversize);
    }
    if (status == THREADCALC_STATUS_OK) {
        status = row_drill(row, &drill);
    }
    if (status == THREADCALC_STATUS_OK) {
        status = threadcalc_judge_drill(&thread, &drill, reference_tap(row), reference_basis(row), &oversize, &found,
                                        sizeof found, &row->error);
    }
    if (status == THREADCALC_STATUS_OK) {
        csv_double(row, "percent", found.chosen.percent);
        csv_text(row, "within_limits", threadcalc_within_limits_name(found.chosen.within_limits));
        csv_exact(row, "left_to_limit_mm", found.chosen.left_to_limit_mm);
        csv_exact(row, "probable_hole_mm", found.probable_hole_mm);
        csv_double(row, "probable_percent", found.probable_percent);
        csv_exact(row, "probable_left_to_limit_mm", found.probable_left_to_limit_mm);
        reference_findings(row, found.findings, (size_t)found.finding_count);
    }
    return status;
}

static int32_t probable_hole(csv_row *row)
{
    threadcalc_ratio_t oversize, hole;
    threadcalc_drill_t drill;
    int32_t status = row_drill(row, &drill);
    if (status == THREADCALC_STATUS_OK) {
        status = reference_number(row, "oversize_mm", &oversize);
    }
    if (status == THREADCALC_STATUS_OK) {
        status = threadcalc_probable_hole(&drill, &oversize, &hole, &row->error);
    }
    if (status == THREADCALC_STATUS_OK) {
        hole = reference_in_unit(row, hole);
        csv_double(row, "hole", (double)hole.numerator / (double)hole.denominator);
    }
    return status;
}

static int32_t form_hole(csv_row *row)
{
    threadcalc_thread_t thread;
    threadcalc_ratio_t least, most;
    int32_t status = reference_thread(row, &thread);
    if (status == THREADCALC_STATUS_OK) {
        status = threadcalc_form_hole(&thread, &least, &most, &row->error);
    }
    if (status == THREADCALC_STATUS_OK) {
        csv_exact(row, "least_mm", least);
        csv_exact(row, "most_mm", most);
    }
    return status;
}

void reference_drills(void)
{
    csv_run("read_drill", read_drill);
    csv_run("own_drills", own_drills);
    csv_run("judge_drill", judge_drill);
    csv_run("probable_hole", probable_hole);
    csv_run("form_hole", form_hole);
    csv_run("drill", drill);
    csv_run("percent", percent);
    csv_run("drill_diameter", drill_diameter);
    csv_run("tap_drill", tap_drill);
}
