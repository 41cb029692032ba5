/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* What no caller should give: every call refuses it with a status and writes nothing. */
#include "bad_input.h"

#include <stdio.h>

static unsigned long passed = 0;
static unsigned long failed = 0;

void bad_input_check(int good, const char *what, const char *file, int line)
{
    if (good) {
        passed++;
    } else {
        failed++;
        printf("%s:%d %s\n", file, line, what);
    }
}

int bad_input_untouched(const void *output, size_t size)
{
    const unsigned char *bytes = output;
    size_t place;
    for (place = 0; place < size; place++) {
        if (bytes[place] != 0xA5) {
            return 0;
        }
    }
    return 1;
}

threadcalc_ratio_t ratio(int64_t numerator, int64_t denominator)
{
    threadcalc_ratio_t value;
    value.numerator = numerator;
    value.denominator = denominator;
    return value;
}

threadcalc_thread_t good_thread(void)
{
    threadcalc_thread_t thread;
    memset(&thread, 0, sizeof thread);
    CHECK(threadcalc_thread_read(TEXT("M8x1.25-6H"), &thread, NULL) == THREADCALC_STATUS_OK);
    return thread;
}

threadcalc_feed_request_t good_feed(void)
{
    threadcalc_feed_request_t asked = THREADCALC_FEED_REQUEST_INIT;
    asked.unit = THREADCALC_UNIT_MM;
    asked.mode = THREADCALC_MODE_PER_MINUTE;
    asked.decimals = ratio(3, 1);
    asked.lead_mm = ratio(5, 4);
    asked.rpm = ratio(600, 1);
    return asked;
}

threadcalc_tap_drill_request_t good_drill(void)
{
    threadcalc_tap_drill_request_t asked = THREADCALC_TAP_DRILL_REQUEST_INIT;
    asked.tap = THREADCALC_TAP_CUT;
    asked.sets = THREADCALC_DRILL_SETS_METRIC;
    return asked;
}

threadcalc_depth_request_t good_depth(void)
{
    threadcalc_depth_request_t asked = THREADCALC_DEPTH_REQUEST_INIT;
    asked.hole = THREADCALC_HOLE_BLIND;
    asked.full_thread_mm = ratio(16, 1);
    asked.chamfer_threads = ratio(3, 1);
    asked.drill_mm = ratio(34, 5);
    asked.point_angle_deg = ratio(118, 1);
    asked.bottom_clearance_mm = ratio(3, 1);
    return asked;
}

threadcalc_taper_depth_request_t good_taper_depth(void)
{
    threadcalc_taper_depth_request_t asked = THREADCALC_TAPER_DEPTH_REQUEST_INIT;
    asked.drill_mm = ratio(111, 10);
    asked.point_angle_deg = ratio(118, 1);
    asked.bottom_clearance_mm = ratio(3, 1);
    return asked;
}

threadcalc_engagement_request_t good_engagement(void)
{
    threadcalc_engagement_request_t asked = THREADCALC_ENGAGEMENT_REQUEST_INIT;
    asked.length_mm = ratio(12, 1);
    asked.internal_shear_mpa = 200.0;
    asked.external_shear_mpa = 480.0;
    asked.external_tensile_mpa = 800.0;
    return asked;
}

threadcalc_motion_request_t good_motion(void)
{
    threadcalc_motion_request_t asked = THREADCALC_MOTION_REQUEST_INIT;
    asked.lead_mm = ratio(5, 4);
    asked.rpm = ratio(600, 1);
    asked.travel_mm = ratio(20, 1);
    return asked;
}

threadcalc_gear_t good_gear(void)
{
    threadcalc_gear_t gear;
    memset(&gear, 0, sizeof gear);
    gear.lowest_rpm = ratio(20, 1);
    gear.highest_rpm = ratio(500, 1);
    gear.point_count = 1;
    gear.points[0].rpm = ratio(20, 1);
    gear.points[0].torque_nm = 120.0;
    return gear;
}

threadcalc_dialect_t good_dialect(void)
{
    threadcalc_dialect_t mill = THREADCALC_DIALECT_INIT;
    mill.base = THREADCALC_DIALECT_OWN;
    memcpy(mill.name, "mill-1", 7);
    memcpy(mill.tap_rh, "G84", 4);
    memcpy(mill.tap_lh, "G74", 4);
    return mill;
}

threadcalc_cycle_request_t good_cycle(void)
{
    threadcalc_cycle_request_t asked = THREADCALC_CYCLE_REQUEST_INIT;
    asked.unit = THREADCALC_UNIT_MM;
    asked.mode = THREADCALC_MODE_PER_MINUTE;
    asked.holder = THREADCALC_HOLDER_RIGID;
    asked.return_to = THREADCALC_RETURN_TO_R_PLANE;
    asked.decimals = ratio(3, 1);
    asked.rpm = ratio(600, 1);
    asked.depth_mm = ratio(20, 1);
    asked.r_plane_mm = ratio(5, 1);
    return asked;
}

threadcalc_job_t good_job(void)
{
    threadcalc_job_t job = THREADCALC_JOB_INIT;
    job.unit = THREADCALC_UNIT_MM;
    job.mode = THREADCALC_MODE_PER_MINUTE;
    job.hole = THREADCALC_HOLE_BLIND;
    job.tap = THREADCALC_TAP_CUT;
    job.thread = good_thread();
    job.decimals = ratio(3, 1);
    job.rpm = ratio(600, 1);
    job.full_thread_depth_mm = ratio(16, 1);
    return job;
}

int main(void)
{
    bad_pointers();
    bad_sizes();
    bad_buffers();
    bad_values();
    bad_threads();
    bad_notes();
    bad_limits();
    bad_strengths();
    bad_motions();
    bad_cycles();
    bad_json();
    bad_jobs();
    bad_taps();
    bad_gauges();
    bad_depths();
    bad_checks();
    bad_identify();
    printf("bad_input: %lu passed, %lu failed\n", passed, failed);
    return failed > 0 || passed == 0;
}
