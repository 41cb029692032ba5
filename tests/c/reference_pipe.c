/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* The tables of pipe threads: dimensions, limits, drills and the depths of tapers. */
#include "reference.h"

#include <math.h>
#include <string.h>

/* The thread of the row on the side that the caller says. */
static int32_t sided(csv_row *row, threadcalc_thread_t *thread)
{
    static const char *const names[] = {"internal", "external"};
    const int32_t side = csv_choice(row, "side", names, 2);
    const int32_t status = reference_thread(row, thread);
    if (status == THREADCALC_STATUS_OK && side != 0) {
        thread->side = side;
    }
    return status;
}

/* An exact number against one that is printed. */
static void printed(csv_row *row, const char *column, threadcalc_ratio_t got)
{
    csv_double(row, column, got.denominator == 0 ? NAN : (double)got.numerator / (double)got.denominator);
}

static int32_t pipe(csv_row *row)
{
    threadcalc_thread_t thread;
    threadcalc_pipe_t found;
    int32_t status = reference_thread(row, &thread);
    if (status == THREADCALC_STATUS_OK) {
        status = threadcalc_pipe(&thread, &found, sizeof found, &row->error);
    }
    if (status != THREADCALC_STATUS_OK) {
        return status;
    }
    csv_exact(row, "pipe_diameter", reference_in_unit(row, found.pipe_diameter_mm));
    printed(row, "pitch_diameter_small_end", reference_in_unit(row, found.pitch_diameter_small_end_mm));
    printed(row, "pitch_diameter_gauge_plane", reference_in_unit(row, found.pitch_diameter_gauge_plane_mm));
    csv_exact(row, "hand_tight_length", reference_in_unit(row, found.hand_tight_length_mm));
    printed(row, "effective_length", reference_in_unit(row, found.effective_length_mm));
    printed(row, "pitch_diameter_effective", reference_in_unit(row, found.pitch_diameter_effective_mm));
    printed(row, "minor_diameter_small_end", reference_in_unit(row, found.minor_diameter_small_end_mm));
    printed(row, "thread_height", reference_in_unit(row, found.thread_height_mm));
    csv_exact(row, "gauge_length", reference_in_unit(row, found.gauge_length_mm));
    csv_exact(row, "useful_length", reference_in_unit(row, found.useful_length_mm));
    csv_exact(row, "gauge_tolerance_turns", found.gauge_tolerance_turns);
    return status;
}

int32_t reference_sided_limits(csv_row *row)
{
    threadcalc_thread_t thread;
    threadcalc_limits_t found;
    int32_t status = sided(row, &thread);
    if (status == THREADCALC_STATUS_OK) {
        status = threadcalc_limits(&thread, &found, sizeof found, &row->error);
    }
    if (status != THREADCALC_STATUS_OK) {
        return status;
    }
    reference_six_limits(row, &found);
    return status;
}

static int32_t pipe_drill(csv_row *row)
{
    static const char *const no_and_yes[] = {"false", "true"};
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
        asked.taper_reamer = csv_choice(row, "taper_reamer", no_and_yes, 2) - 1;
        status = threadcalc_tap_drill(&thread, &asked, &found, sizeof found, &row->error);
    }
    if (status == THREADCALC_STATUS_OK) {
        csv_text(row, "drill", found.chosen.drill.name);
        csv_text(row, "within_limits", threadcalc_within_limits_name(found.chosen.within_limits));
        reference_findings(row, found.findings, (size_t)found.finding_count);
    }
    return status;
}

static int32_t asked_depths(csv_row *row, threadcalc_taper_depth_request_t *asked)
{
    int32_t status = reference_number(row, "projection_mm", &asked->projection_mm);
    if (status == THREADCALC_STATUS_OK) {
        status = reference_number(row, "drill_mm", &asked->drill_mm);
    }
    if (status == THREADCALC_STATUS_OK) {
        status = reference_number(row, "point_angle_deg", &asked->point_angle_deg);
    }
    if (status == THREADCALC_STATUS_OK) {
        status = reference_number(row, "bottom_clearance_mm", &asked->bottom_clearance_mm);
    }
    return status;
}

static int32_t taper_depth(csv_row *row)
{
    threadcalc_taper_depth_request_t asked = THREADCALC_TAPER_DEPTH_REQUEST_INIT;
    threadcalc_thread_t thread;
    threadcalc_taper_depths_t found;
    int32_t status = reference_thread(row, &thread);
    if (status == THREADCALC_STATUS_OK) {
        status = asked_depths(row, &asked);
    }
    if (status == THREADCALC_STATUS_OK) {
        status = threadcalc_taper_depths(&thread, &asked, &found, sizeof found, &row->error);
    }
    if (status != THREADCALC_STATUS_OK) {
        return status;
    }
    printed(row, "hand_tight_mm", found.hand_tight_mm);
    printed(row, "used_projection_mm", found.projection_mm);
    printed(row, "projection_tolerance_mm", found.projection_tolerance_mm);
    printed(row, "tap_mm", found.tap_mm);
    printed(row, "first_hole_mm", found.first_hole_mm);
    printed(row, "full_diameter_mm", found.full_diameter_mm);
    csv_double(row, "drill_point_mm", found.drill_point_mm);
    printed(row, "tap_turns", found.tap_turns);
    printed(row, "hand_tight_turns", found.hand_tight_turns);
    printed(row, "diameter_per_turn_mm", found.diameter_per_turn_mm);
    csv_exact(row, "gauge_tolerance_turns", found.gauge_tolerance_turns);
    return status;
}

void reference_pipes(void)
{
    csv_run("pipe", pipe);
    csv_run("pipe_limits", reference_sided_limits);
    csv_run("pipe_drill", pipe_drill);
    csv_run("taper_depth", taper_depth);
}
