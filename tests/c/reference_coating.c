/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* The tables of coated threads. */
#include "reference.h"

enum { OK = THREADCALC_STATUS_OK };

static int32_t coating_growth(csv_row *row)
{
    threadcalc_thread_t thread;
    threadcalc_ratio_t thickness;
    threadcalc_coating_growth_t found;
    int32_t status = reference_thread(row, &thread);
    if (status == OK) {
        status = reference_number(row, "thickness_um", &thickness);
    }
    if (status == OK) {
        status = threadcalc_coating_growth(&thread, &thickness, &found, sizeof found, &row->error);
    }
    if (status == OK) {
        csv_exact(row, "crest_mm", found.crest_mm);
        csv_exact(row, "pitch_diameter_mm", found.pitch_diameter_mm);
    }
    return status;
}

static int32_t before_coating(csv_row *row)
{
    threadcalc_thread_t thread;
    threadcalc_ratio_t thinnest, thickest;
    threadcalc_limits_t found;
    int32_t status = reference_thread(row, &thread);
    if (status == OK) {
        status = reference_number(row, "thinnest_um", &thinnest);
    }
    if (status == OK) {
        status = reference_number(row, "thickest_um", &thickest);
    }
    if (status == OK) {
        status = threadcalc_limits_before_coating(&thread, &thinnest, &thickest, &found, sizeof found, &row->error);
    }
    if (status == OK) {
        reference_six_limits(row, &found);
    }
    return status;
}

static int32_t thickest_coating(csv_row *row)
{
    threadcalc_thread_t thread;
    threadcalc_ratio_t found;
    int32_t status = reference_thread(row, &thread);
    if (status == OK) {
        status = threadcalc_thickest_coating_um(&thread, &found, &row->error);
    }
    if (status == OK) {
        csv_exact(row, "thickest_um", found);
    }
    return status;
}

void reference_coatings(void)
{
    csv_run("coating_growth", coating_growth);
    csv_run("before_coating", before_coating);
    csv_run("thickest_coating", thickest_coating);
}
