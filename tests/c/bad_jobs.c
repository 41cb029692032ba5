/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* Members of a job that no caller should set: each is named, and no plan is written. */
#include "bad_input.h"

static void refused(const threadcalc_job_t *job, int32_t status, int32_t field)
{
    static threadcalc_plan_t plan;
    threadcalc_error_t error;
    memset(&error, 0, sizeof error);
    REFUSED(status, plan, threadcalc_plan(job, &plan, sizeof plan, &error));
    CHECK(error.field == field);
}

/* Numbers of choices that are none. */
static void unknown_choices(void)
{
    static const int32_t numbers[] = {-1, 99, INT32_MAX, INT32_MIN};
    size_t place;
    for (place = 0; place < sizeof numbers / sizeof numbers[0]; place++) {
        threadcalc_job_t job = good_job();
        const struct { int32_t *member; int32_t field; } choices[] = {
            {&job.tap_kind, THREADCALC_FIELD_TAP_KIND},   {&job.chamfer_form, THREADCALC_FIELD_CHAMFER_FORM},
            {&job.holder, THREADCALC_FIELD_HOLDER},       {&job.material, THREADCALC_FIELD_MATERIAL},
            {&job.taper_reamer, THREADCALC_FIELD_TAPER_REAMER}, {&job.return_to, THREADCALC_FIELD_RETURN_TO},
            {&job.screw.property_class, THREADCALC_FIELD_SCREW_PROPERTY_CLASS},
        };
        size_t choice;
        for (choice = 0; choice < sizeof choices / sizeof choices[0]; choice++) {
            *choices[choice].member = numbers[place];
            refused(&job, THREADCALC_STATUS_UNKNOWN_VALUE, choices[choice].field);
            *choices[choice].member = 0;
        }
        job.machine_gear_count = numbers[place];
        refused(&job, THREADCALC_STATUS_OUT_OF_RANGE, THREADCALC_FIELD_MACHINE_GEARS);
    }
}

/* Gears and lists that are none. */
static void bad_lists(void)
{
    threadcalc_job_t job = good_job();
    threadcalc_drill_t drills[2];
    memset(drills, 0, sizeof drills);
    job.machine_gear_count = 1;
    refused(&job, THREADCALC_STATUS_MISSING, THREADCALC_FIELD_MACHINE_GEARS);
    job.machine_gears[0].lowest_rpm = ratio(20, 1);
    job.machine_gears[0].highest_rpm = ratio(600, 1);
    refused(&job, THREADCALC_STATUS_OUT_OF_RANGE, THREADCALC_FIELD_MACHINE_GEARS);
    job.machine_gears[0].point_count = 9;
    refused(&job, THREADCALC_STATUS_OUT_OF_RANGE, THREADCALC_FIELD_MACHINE_GEARS);
    job = good_job();
    job.drill_list_count = 1;
    refused(&job, THREADCALC_STATUS_NULL_POINTER, THREADCALC_FIELD_POINTER);
    job.drill_list = drills;
    refused(&job, THREADCALC_STATUS_MISSING, THREADCALC_FIELD_DRILL_LIST);
    job.drill_list_count = 25;
    refused(&job, THREADCALC_STATUS_TOO_LONG, THREADCALC_FIELD_DRILL_LIST);
}

/* Texts and reserved members. */
static void bad_members(void)
{
    threadcalc_job_t job = good_job();
    memset(job.tap_mark, 0xD8, sizeof job.tap_mark);
    refused(&job, THREADCALC_STATUS_UNKNOWN_VALUE, THREADCALC_FIELD_TAP_MARK);
    job = good_job();
    job.screw.tolerance_class[0] = ' ';
    refused(&job, THREADCALC_STATUS_UNKNOWN_VALUE, THREADCALC_FIELD_SCREW_TOLERANCE_CLASS);
    job = good_job();
    job.reserved = 1;
    refused(&job, THREADCALC_STATUS_UNSUPPORTED_FIELD, THREADCALC_FIELD_SIZE);
    job = good_job();
    job.screw.reserved = 1;
    refused(&job, THREADCALC_STATUS_UNSUPPORTED_FIELD, THREADCALC_FIELD_SIZE);
}

/* Numbers without a denominator, or below what makes sense. */
static void bad_numbers(void)
{
    threadcalc_job_t job = good_job();
    const struct { threadcalc_ratio_t *member; int32_t field; } numbers[] = {
        {&job.surface_speed_m_min, THREADCALC_FIELD_SURFACE_SPEED_M_MIN},
        {&job.projection_mm, THREADCALC_FIELD_PROJECTION_MM},
        {&job.underfeed_percent, THREADCALC_FIELD_UNDERFEED_PERCENT},
        {&job.over_travel_turns, THREADCALC_FIELD_OVER_TRAVEL_TURNS},
        {&job.part_thickness_mm, THREADCALC_FIELD_PART_THICKNESS_MM},
        {&job.coating_um, THREADCALC_FIELD_COATING_UM},
        {&job.cutting_force_n_mm2, THREADCALC_FIELD_CUTTING_FORCE_N_MM2},
        {&job.oversize_mm, THREADCALC_FIELD_OVERSIZE_MM},
        {&job.machine_acceleration_rpm_s, THREADCALC_FIELD_MACHINE_ACCELERATION_RPM_S},
        {&job.screw.load_n, THREADCALC_FIELD_SCREW_LOAD_N},
    };
    size_t place;
    for (place = 0; place < sizeof numbers / sizeof numbers[0]; place++) {
        *numbers[place].member = ratio(1, 0);
        refused(&job, THREADCALC_STATUS_OUT_OF_RANGE, numbers[place].field);
        *numbers[place].member = ratio(0, 0);
    }
}

void bad_jobs(void)
{
    unknown_choices();
    bad_lists();
    bad_members();
    bad_numbers();
}
