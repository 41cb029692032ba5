/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* The tables of tapping strokes, axis feeds, patterns and holders. */
#include "reference.h"

#include <stdio.h>
#include <string.h>

static int32_t motion_asked(csv_row *row, threadcalc_motion_request_t *asked)
{
    int32_t status = reference_number(row, "lead_mm", &asked->lead_mm);
    if (status == THREADCALC_STATUS_OK) {
        status = reference_number(row, "rpm", &asked->rpm);
    }
    if (status == THREADCALC_STATUS_OK) {
        status = reference_number(row, "travel_mm", &asked->travel_mm);
    }
    if (status == THREADCALC_STATUS_OK) {
        status = reference_number(row, "retract_factor", &asked->retract_factor);
    }
    if (status == THREADCALC_STATUS_OK && *csv_cell(row, "peck_mm")) {
        status = reference_number(row, "peck_mm", &asked->peck_mm);
    }
    asked->dwell_s = reference_double(row, "dwell_s");
    if (*csv_cell(row, "acceleration_rpm_s")) {
        asked->acceleration_is_given = 1;
        asked->acceleration_rpm_s = reference_double(row, "acceleration_rpm_s");
    }
    return status;
}

static int32_t motion(csv_row *row)
{
    threadcalc_motion_request_t asked = THREADCALC_MOTION_REQUEST_INIT;
    threadcalc_tapping_time_t found;
    char strokes[12];
    int32_t status = motion_asked(row, &asked);
    if (status == THREADCALC_STATUS_OK) {
        status = threadcalc_tapping_time(&asked, &found, sizeof found, &row->error);
    }
    if (status != THREADCALC_STATUS_OK) {
        return status;
    }
    csv_double(row, "reached_rpm", found.reached_rpm);
    csv_double(row, "retract_rpm", found.retract_rpm);
    csv_text(row, "reaches_speed", reference_yes(found.reaches_speed));
    csv_double(row, "turns", found.turns);
    csv_double(row, "turns_to_speed", found.turns_to_speed);
    csv_double(row, "distance_to_speed_mm", found.distance_to_speed_mm);
    csv_double(row, "time_in_s", found.time_in_s);
    csv_double(row, "time_out_s", found.time_out_s);
    csv_double(row, "time_s", found.time_s);
    snprintf(strokes, sizeof strokes, "%d", (int)found.strokes);
    csv_text(row, "strokes", strokes);
    return status;
}

static int32_t ramp(csv_row *row)
{
    const double acceleration = reference_double(row, "acceleration_rpm_s");
    const double turns = reference_double(row, "turns");
    threadcalc_ratio_t rpm;
    double value = 0.0;
    int32_t status = reference_number(row, "rpm", &rpm);
    if (status == THREADCALC_STATUS_OK) {
        status = strcmp(csv_cell(row, "what"), "turns") == 0
            ? threadcalc_turns_to_speed(&rpm, acceleration, &value, &row->error)
            : threadcalc_speed_after_turns(turns, acceleration, &value, &row->error);
    }
    if (status == THREADCALC_STATUS_OK) {
        csv_double(row, "value", value);
    }
    return status;
}

static int32_t feed_fit(csv_row *row)
{
    threadcalc_ratio_t lead, rpm, factor, limit;
    threadcalc_feed_fit_t fit;
    int32_t status = reference_number(row, "lead_mm", &lead);
    if (status == THREADCALC_STATUS_OK) {
        status = reference_number(row, "rpm", &rpm);
    }
    if (status == THREADCALC_STATUS_OK) {
        status = reference_number(row, "retract_factor", &factor);
    }
    if (status == THREADCALC_STATUS_OK) {
        status = reference_number(row, "limit_mm_min", &limit);
    }
    if (status == THREADCALC_STATUS_OK) {
        status = threadcalc_feed_fit(&lead, &rpm, &factor, &limit, &fit, sizeof fit, &row->error);
    }
    if (status == THREADCALC_STATUS_OK) {
        csv_exact(row, "feed_mm_min", fit.feed_mm_min);
        csv_exact(row, "retract_feed_mm_min", fit.retract_feed_mm_min);
        csv_text(row, "is_within", reference_yes(fit.is_within));
        csv_exact(row, "fastest_rpm", fit.fastest_rpm);
    }
    return status;
}

static int32_t pattern_time(csv_row *row)
{
    const uint32_t holes = (uint32_t)csv_whole(row, "holes", 0);
    threadcalc_ratio_t distance, feed;
    double found = 0.0;
    int32_t status = reference_number(row, "rapid_distance_mm", &distance);
    if (status == THREADCALC_STATUS_OK) {
        status = reference_number(row, "rapid_feed_mm_min", &feed);
    }
    if (status == THREADCALC_STATUS_OK) {
        status = threadcalc_pattern_time_s(holes, &distance, &feed, reference_double(row, "seconds_per_hole"), &found,
                                           &row->error);
    }
    if (status == THREADCALC_STATUS_OK) {
        csv_double(row, "time_s", found);
    }
    return status;
}

static int32_t holder_clearance(csv_row *row)
{
    static const char *const names[] = {"rigid", "tension_compression", "floating"};
    const int32_t holder = csv_choice(row, "holder", names, 3);
    threadcalc_thread_t thread;
    threadcalc_holder_clearance_t room;
    int32_t status = reference_thread(row, &thread);
    if (status == THREADCALC_STATUS_OK) {
        status = threadcalc_holder_clearance(&thread, holder, &room, sizeof room, &row->error);
    }
    if (status == THREADCALC_STATUS_OK) {
        csv_text(row, "holder", threadcalc_holder_name(holder));
        csv_exact(row, "least_mm", room.least_mm);
        csv_exact(row, "ample_mm", room.ample_mm);
        csv_exact(row, "least_turns", room.least_turns);
        csv_exact(row, "ample_turns", room.ample_turns);
    }
    return status;
}

/* The numbers on both sides of the stroke in the column `room_mm`. */
static int32_t room_of(csv_row *row, threadcalc_ratio_t room[2])
{
    const char *text = csv_cell(row, "room_mm");
    const size_t length = strcspn(text, "/");
    const char *behind = text + length + (text[length] == '/');
    const int32_t status = threadcalc_read_number((const uint8_t *)text, length, &room[0], &row->error);
    return status == THREADCALC_STATUS_OK
        ? threadcalc_read_number((const uint8_t *)behind, strlen(behind), &room[1], &row->error)
        : status;
}

static int32_t holder_travel(csv_row *row)
{
    static const char *const names[] = {"lead_mm", "depth_mm", "underfeed_percent", "over_travel_turns"};
    threadcalc_ratio_t given[4], room[2];
    threadcalc_holder_travel_t travel;
    int32_t fits = 0;
    size_t place;
    int32_t status = room_of(row, room);
    for (place = 0; place < 4 && status == THREADCALC_STATUS_OK; place++) {
        status = reference_number(row, names[place], &given[place]);
    }
    if (status == THREADCALC_STATUS_OK) {
        status = threadcalc_holder_travel(&given[0], &given[1], &given[2], &given[3], &travel, sizeof travel,
                                          &row->error);
    }
    if (status == THREADCALC_STATUS_OK) {
        status = threadcalc_holder_fits(&given[0], &given[1], &given[2], &given[3], &room[0], &room[1], &fits,
                                        &row->error);
    }
    if (status == THREADCALC_STATUS_OK) {
        csv_exact(row, "extension_mm", travel.extension_mm);
        csv_exact(row, "compression_mm", travel.compression_mm);
        csv_text(row, "fits", reference_yes(fits));
    }
    return status;
}

void reference_motion(void)
{
    csv_run("motion", motion);
    csv_run("ramp", ramp);
    csv_run("feed_fit", feed_fit);
    csv_run("pattern_time", pattern_time);
    csv_run("holder_clearance", holder_clearance);
    csv_run("holder_travel", holder_travel);
}
