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

void reference_drills(void)
{
    csv_run("drill", drill);
    csv_run("percent", percent);
    csv_run("drill_diameter", drill_diameter);
    csv_run("tap_drill", tap_drill);
}
