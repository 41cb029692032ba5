/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* The tables of all limits of size, and of what a fit of threads carries. */
#include "reference.h"

#include <math.h>
#include <stdio.h>
#include <string.h>

static const char *const names[] = {"major_min", "major_max", "pitch_min", "pitch_max", "minor_min", "minor_max"};

static void in_order(const threadcalc_limits_t *found, threadcalc_ratio_t *limits)
{
    limits[0] = found->major_mm.low;
    limits[1] = found->major_mm.high;
    limits[2] = found->pitch_diameter_mm.low;
    limits[3] = found->pitch_diameter_mm.high;
    limits[4] = found->minor_mm.low;
    limits[5] = found->minor_mm.high;
}

void reference_six_limits(csv_row *row, const threadcalc_limits_t *found)
{
    threadcalc_ratio_t limits[6];
    size_t place;
    in_order(found, limits);
    for (place = 0; place < 6; place++) {
        csv_exact(row, names[place], reference_in_unit(row, limits[place]));
    }
    csv_text(row, "unit", found->native_unit == THREADCALC_UNIT_INCH ? "inch"
                          : found->native_unit == THREADCALC_UNIT_MM ? "mm"
                                                                     : "neither unit");
}

/* The limits, and which one the standard does not set. */
static int32_t size_limits(csv_row *row)
{
    threadcalc_thread_t thread;
    threadcalc_limits_t found;
    threadcalc_ratio_t limits[6];
    char absent[96] = "";
    size_t place;
    int32_t status = reference_thread(row, &thread);
    if (status == THREADCALC_STATUS_OK) {
        status = threadcalc_limits(&thread, &found, sizeof found, &row->error);
    }
    if (status != THREADCALC_STATUS_OK) {
        return status;
    }
    reference_six_limits(row, &found);
    in_order(&found, limits);
    for (place = 0; place < 6; place++) {
        if (limits[place].denominator == 0) {
            const size_t length = strlen(absent);
            snprintf(absent + length, sizeof absent - length, "%s%s", length ? " " : "", names[place]);
        }
    }
    csv_text_or_none(row, "absent", absent);
    return status;
}

/* The double nearest to the number of a column; `is_given` says whether there is one. */
static int32_t nearest(csv_row *row, const char *column, double *value, int32_t *is_given)
{
    threadcalc_ratio_t number;
    int32_t status = reference_number(row, column, &number);
    *is_given = number.denominator != 0;
    if (status == THREADCALC_STATUS_OK && *is_given) {
        status = threadcalc_nearest_double(&number, value, &row->error);
    }
    return status;
}

static int32_t engagement_asked(csv_row *row, threadcalc_engagement_request_t *asked)
{
    int32_t is_given;
    int32_t status = reference_number(row, "length_mm", &asked->length_mm);
    if (status == THREADCALC_STATUS_OK) {
        status = reference_number(row, "without_full_thread_mm", &asked->without_full_thread_mm);
    }
    if (status == THREADCALC_STATUS_OK) {
        status = reference_number(row, "drilled_mm", &asked->drilled_mm);
    }
    if (status == THREADCALC_STATUS_OK) {
        status = nearest(row, "internal_shear_mpa", &asked->internal_shear_mpa, &is_given);
    }
    if (status == THREADCALC_STATUS_OK) {
        status = nearest(row, "external_shear_mpa", &asked->external_shear_mpa, &is_given);
    }
    if (status == THREADCALC_STATUS_OK) {
        status = nearest(row, "external_tensile_mpa", &asked->external_tensile_mpa, &is_given);
    }
    if (status == THREADCALC_STATUS_OK) {
        status = nearest(row, "load_n", &asked->load_n, &asked->load_is_given);
    }
    return status;
}

static int32_t engagement(csv_row *row)
{
    static const char *const sides[] = {"internal", "external"};
    threadcalc_engagement_request_t asked = THREADCALC_ENGAGEMENT_REQUEST_INIT;
    threadcalc_engagement_t found;
    threadcalc_thread_t threads[2];
    uint8_t text[1024];
    size_t side;
    int32_t status = THREADCALC_STATUS_OK;
    for (side = 0; side < 2 && status == THREADCALC_STATUS_OK; side++) {
        const size_t length = csv_bytes(row, sides[side], text, sizeof text);
        status = threadcalc_thread_read(text, length, &threads[side], &row->error);
    }
    if (status == THREADCALC_STATUS_OK) {
        status = engagement_asked(row, &asked);
    }
    if (status == THREADCALC_STATUS_OK) {
        status = threadcalc_engagement(&threads[0], &threads[1], &asked, &found, sizeof found, &row->error);
    }
    if (status != THREADCALC_STATUS_OK) {
        return status;
    }
    csv_double(row, "tensile_area_mm2", found.tensile_area_mm2);
    csv_double(row, "internal_shear_area_mm2", found.internal_shear_area_mm2);
    csv_double(row, "external_shear_area_mm2", found.external_shear_area_mm2);
    csv_double(row, "tensile_load_n", found.tensile_load_n);
    csv_double(row, "internal_strip_load_n", found.internal_strip_load_n);
    csv_double(row, "external_strip_load_n", found.external_strip_load_n);
    csv_text(row, "weakest", threadcalc_weakest_name(found.weakest));
    csv_double(row, "required_length_mm", found.required_length_mm);
    csv_double(row, "strip_ratio", found.strip_ratio);
    csv_double(row, "safety_factor", found.safety_factor);
    return status;
}

static int32_t starting_strength(csv_row *row)
{
    static const char *const names[] = {"4.6", "4.8", "5.6", "5.8", "6.8", "8.8", "9.8", "10.9", "12.9"};
    const int32_t property_class = csv_choice(row, "property_class", names, 9);
    threadcalc_starting_strength_t found;
    threadcalc_ratio_t diameter;
    int32_t status = reference_number(row, "diameter_mm", &diameter);
    if (status == THREADCALC_STATUS_OK) {
        status = threadcalc_starting_strength(property_class, &diameter, &found, sizeof found, &row->error);
    }
    if (status == THREADCALC_STATUS_OK) {
        csv_text(row, "property_class", threadcalc_property_class_name(property_class));
        csv_double(row, "tensile_mpa", found.tensile_mpa);
        csv_double(row, "shear_mpa", found.shear_mpa);
    }
    return status;
}

void reference_limits(void)
{
    csv_run("limits_metric", size_limits);
    csv_run("limits_unified", size_limits);
    csv_run("limits_acme", reference_sided_limits);
    csv_run("limits_ba", reference_sided_limits);
    csv_run("limits_buttress", reference_sided_limits);
    csv_run("limits_j", reference_sided_limits);
    csv_run("limits_not_read", reference_sided_limits);
    csv_run("limits_trapezoidal", reference_sided_limits);
    csv_run("limits_wire_insert", reference_sided_limits);
    csv_run("engagement", engagement);
    csv_run("starting_strength", starting_strength);
}
