/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* The tables of spindle speeds, torque, power and gears. */
#include "reference.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

/* Beyond the most gears and the most points, so that the library says that there are too many. */
enum { MOST_GEARS = 8, MOST_POINTS = 8 };

static int is(csv_row *row, const char *column, const char *text)
{
    return strcmp(csv_cell(row, column), text) == 0;
}

static int32_t spindle_speed(csv_row *row)
{
    threadcalc_ratio_t diameter, surface_speed, rpm;
    double value = 0.0;
    int32_t status = reference_number(row, "diameter", &diameter);
    if (status == THREADCALC_STATUS_OK) {
        status = reference_number(row, "surface_speed", &surface_speed);
    }
    if (status == THREADCALC_STATUS_OK) {
        status = reference_number(row, "rpm", &rpm);
    }
    if (status != THREADCALC_STATUS_OK) {
        return status;
    }
    if (is(row, "what", "surface")) {
        status = threadcalc_surface_speed_m_min(&diameter, &rpm, &value, &row->error);
    } else if (is(row, "unit", "inch")) {
        status = threadcalc_spindle_speed_feet(&diameter, &surface_speed, &value, &row->error);
    } else {
        status = threadcalc_spindle_speed(&diameter, &surface_speed, &value, &row->error);
    }
    if (status == THREADCALC_STATUS_OK) {
        csv_double(row, "value", value);
    }
    return status;
}

/* A number, or `forming low`: which end of which range. */
static int32_t factor_of(csv_row *row, double *factor)
{
    threadcalc_factor_range_t range;
    const char *cell = csv_cell(row, "factor");
    const char *end = strchr(cell, ' ');
    int32_t status;
    if (!end) {
        *factor = reference_double(row, "factor");
        return THREADCALC_STATUS_OK;
    }
    status = strncmp(cell, "forming ", 8) == 0 ? threadcalc_forming_factor(&range, sizeof range, &row->error)
                                               : threadcalc_taper_factor(&range, sizeof range, &row->error);
    if (status == THREADCALC_STATUS_OK) {
        *factor = strcmp(end, " low") == 0 ? range.low : strcmp(end, " high") == 0 ? range.high : range.start;
    }
    return status;
}

static int32_t torque(csv_row *row)
{
    const double force = reference_double(row, "force_n_mm2");
    double factor = 0.0;
    threadcalc_thread_t thread;
    threadcalc_ratio_t drill;
    threadcalc_torque_band_t band;
    int32_t status = reference_thread(row, &thread);
    if (status == THREADCALC_STATUS_OK) {
        status = reference_number(row, "drill_mm", &drill);
    }
    if (status == THREADCALC_STATUS_OK) {
        status = factor_of(row, &factor);
    }
    if (status != THREADCALC_STATUS_OK) {
        return status;
    }
    if (is(row, "formula", "pitch")) {
        status = threadcalc_torque_by_pitch(&thread, force, factor, &band, sizeof band, &row->error);
    } else {
        status = threadcalc_torque_by_chip_area(&thread, &drill, force, factor, &band, sizeof band, &row->error);
    }
    if (status == THREADCALC_STATUS_OK) {
        csv_double(row, "likely_nm", band.likely_nm);
        csv_double(row, "low_nm", band.low_nm);
        csv_double(row, "high_nm", band.high_nm);
        csv_double(row, "worn_nm", band.worn_nm);
    }
    return status;
}

static const char *const materials[] = {
    "free_cutting_steel", "structural_steel", "tempered_steel", "high_strength_steel", "tool_steel",
    "austenitic_stainless", "grey_cast_iron", "malleable_cast_iron", "copper_alloy", "aluminium",
};

static int32_t starting_forces(csv_row *row)
{
    const int32_t material = csv_choice(row, "material", materials, sizeof materials / sizeof materials[0]);
    threadcalc_starting_forces_t forces;
    const int32_t status = threadcalc_starting_forces(material, &forces, sizeof forces, &row->error);
    if (status == THREADCALC_STATUS_OK) {
        csv_text(row, "material", threadcalc_material_name(material));
        csv_double(row, "by_pitch_n_mm2", forces.by_pitch_n_mm2);
        csv_double(row, "by_chip_area_n_mm2", forces.by_chip_area_n_mm2);
        csv_text(row, "is_read", reference_yes(forces.is_read));
    }
    return status;
}

static int32_t starting_part_strength(csv_row *row)
{
    const int32_t material = csv_choice(row, "material", materials, sizeof materials / sizeof materials[0]);
    threadcalc_starting_strength_t found;
    const int32_t status = threadcalc_starting_part_strength(material, &found, sizeof found, &row->error);
    if (status == THREADCALC_STATUS_OK) {
        csv_double(row, "tensile_mpa", found.tensile_mpa);
        csv_double(row, "shear_mpa", found.shear_mpa);
    }
    return status;
}

static int32_t power(csv_row *row)
{
    threadcalc_ratio_t rpm;
    double found = 0.0;
    int32_t status = reference_number(row, "rpm", &rpm);
    if (status == THREADCALC_STATUS_OK) {
        status = threadcalc_power_kw(reference_double(row, "torque_nm"), &rpm, &found, &row->error);
    }
    if (status == THREADCALC_STATUS_OK) {
        csv_double(row, "power_kw", found);
    }
    return status;
}

/* `20-500 20:120 500:120`: the range, then the points; their count goes beyond the array, they do not. */
static int32_t gear_of(csv_row *row, char *text, threadcalc_gear_t *gear)
{
    char *point = strchr(text, ' ');
    char *between;
    int32_t status;
    memset(gear, 0, sizeof *gear);
    if (point) {
        *point++ = '\0';
    }
    between = strrchr(text, '-');
    *between = '\0';
    status = threadcalc_read_number((const uint8_t *)text, strlen(text), &gear->lowest_rpm, &row->error);
    if (status == THREADCALC_STATUS_OK) {
        text = between + 1;
        status = threadcalc_read_number((const uint8_t *)text, strlen(text), &gear->highest_rpm, &row->error);
    }
    while (point && status == THREADCALC_STATUS_OK) {
        char *behind = strchr(point, ' ');
        char *torque_nm = strchr(point, ':');
        if (gear->point_count < MOST_POINTS) {
            threadcalc_torque_point_t *place = &gear->points[gear->point_count];
            const size_t length = (size_t)(torque_nm - point);
            status = threadcalc_read_number((const uint8_t *)point, length, &place->rpm, &row->error);
            place->torque_nm = strtod(torque_nm + 1, NULL);
        }
        gear->point_count++;
        point = behind ? behind + 1 : NULL;
    }
    return status;
}

static int32_t gears_of(csv_row *row, threadcalc_gear_t *gears, size_t *count)
{
    char text[512];
    char *gear = text;
    int32_t status = THREADCALC_STATUS_OK;
    snprintf(text, sizeof text, "%s", csv_cell(row, "gears"));
    while (gear && *gear && *count < MOST_GEARS && status == THREADCALC_STATUS_OK) {
        char *bar = strchr(gear, '|');
        if (bar) {
            *bar++ = '\0';
        }
        status = gear_of(row, gear, &gears[*count]);
        (*count)++;
        gear = bar;
    }
    return status;
}

/* `none` stands for no value, so that it is compared and not left out. */
static void double_or_none(csv_row *row, const char *column, double got)
{
    if (got != got || is(row, column, "none")) {
        csv_text(row, column, got != got ? "none" : "a number");
    } else {
        csv_double(row, column, got);
    }
}

static int32_t gear_fit(csv_row *row)
{
    threadcalc_gear_t gears[MOST_GEARS];
    threadcalc_gear_fit_t fit;
    threadcalc_ratio_t rpm;
    char gear[16] = "none";
    size_t count = 0;
    int32_t status = gears_of(row, gears, &count);
    if (status == THREADCALC_STATUS_OK) {
        status = reference_number(row, "rpm", &rpm);
    }
    if (status == THREADCALC_STATUS_OK) {
        status = threadcalc_gear_fit(gears, count, reference_double(row, "torque_nm"), &rpm, &fit, sizeof fit,
                                     &row->error);
    }
    if (status != THREADCALC_STATUS_OK) {
        return status;
    }
    if (fit.gear >= 0) {
        snprintf(gear, sizeof gear, "%ld", (long)fit.gear);
    }
    csv_text(row, "gear", gear);
    double_or_none(row, "held_nm", fit.torque_nm);
    double_or_none(row, "fastest_rpm", fit.fastest_rpm);
    csv_text(row, "is_enough", reference_yes(fit.is_enough));
    return status;
}

void reference_cutting(void)
{
    csv_run("spindle_speed", spindle_speed);
    csv_run("torque", torque);
    csv_run("starting_forces", starting_forces);
    csv_run("starting_part_strength", starting_part_strength);
    csv_run("power", power);
    csv_run("gear_fit", gear_fit);
}
