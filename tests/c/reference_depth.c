/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* The tables of depths back from a drilled hole, its bottom, its mouth, and of depths of programs. */
#include "reference.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

enum { OK = THREADCALC_STATUS_OK };

typedef struct named_number {
    const char *column;
    threadcalc_ratio_t *number;
} named_number;

static int32_t read_numbers(csv_row *row, const named_number *numbers, size_t count)
{
    int32_t status = OK;
    size_t place;
    for (place = 0; status == OK && place < count; place++) {
        status = reference_number(row, numbers[place].column, numbers[place].number);
    }
    return status;
}

/* Adds the text of an exact number to a list of texts, "none" for 0/0. */
static void add_number(char *texts, size_t capacity, threadcalc_ratio_t number)
{
    char text[64] = "none";
    size_t needed;
    const size_t length = strlen(texts);
    if (number.denominator != 0) {
        threadcalc_write_number(&number, text, sizeof text, &needed, NULL);
    }
    snprintf(texts + length, capacity - length, "%s%s", length ? " " : "", text);
}

static void add_name(char *texts, size_t capacity, const char *name)
{
    const size_t length = strlen(texts);
    snprintf(texts + length, capacity - length, "%s%s", length ? " " : "", name);
}

static int32_t set_on(csv_row *row)
{
    static const char *const places[] = {"front", "centre"};
    return csv_choice(row, "tap_set_on", places, 2);
}

static int32_t blind_hole(csv_row *row, threadcalc_blind_hole_t *hole)
{
    static const char *const ends[] = {"full_diameter", "point"};
    const named_number numbers[] = {{"drill_depth_mm", &hole->drill_depth_mm},
                                    {"drill_mm", &hole->drill_mm},
                                    {"point_angle_deg", &hole->point_angle_deg},
                                    {"bottom_clearance_mm", &hole->bottom_clearance_mm},
                                    {"tap_centre_mm", &hole->tap_centre_mm}};
    hole->drill_depth_to = csv_choice(row, "drill_depth_to", ends, 2);
    return read_numbers(row, numbers, sizeof numbers / sizeof numbers[0]);
}

static int32_t full_thread_that_fits(csv_row *row)
{
    threadcalc_blind_hole_t hole = THREADCALC_BLIND_HOLE_INIT;
    threadcalc_ratio_t chamfer;
    threadcalc_thread_t thread;
    threadcalc_blind_thread_t found;
    int32_t status = reference_thread(row, &thread);
    status = status == OK ? blind_hole(row, &hole) : status;
    status = status == OK ? reference_number(row, "chamfer_threads", &chamfer) : status;
    if (status == OK) {
        hole.tap_set_on = set_on(row);
        status = threadcalc_full_thread_that_fits(&thread, &hole, &chamfer, &found, sizeof found, &row->error);
    }
    if (status == OK) {
        csv_exact(row, "full_thread_mm", found.full_thread_mm);
        csv_exact(row, "tap_mm", found.tap_mm);
        csv_exact(row, "program_tap_mm", found.program_tap_mm);
        csv_exact(row, "full_diameter_mm", found.full_diameter_mm);
        csv_double(row, "drill_point_mm", found.drill_point_mm);
    }
    return status;
}

static int32_t chamfers_for_full_thread(csv_row *row)
{
    threadcalc_blind_hole_t hole = THREADCALC_BLIND_HOLE_INIT;
    threadcalc_chamfer_reading_t readings[16];
    threadcalc_ratio_t wanted;
    threadcalc_thread_t thread;
    char forms[128] = "", lengths[512] = "";
    size_t count = 0, place;
    int32_t status = reference_thread(row, &thread);
    status = status == OK ? blind_hole(row, &hole) : status;
    status = status == OK ? reference_number(row, "wanted_mm", &wanted) : status;
    if (status == OK) {
        hole.tap_set_on = THREADCALC_TAP_SET_ON_FRONT;
        status = threadcalc_chamfers_for_full_thread(&thread, &hole, &wanted, readings, 16, &count, &row->error);
    }
    if (status != OK) {
        return status;
    }
    for (place = 0; place < count; place++) {
        add_number(lengths, sizeof lengths, readings[place].full_thread_mm);
        if (readings[place].gives_wanted) {
            add_name(forms, sizeof forms, threadcalc_chamfer_form_name(readings[place].form));
        }
    }
    csv_text_or_none(row, "forms", forms);
    csv_text_or_none(row, "full_threads", lengths);
    return status;
}

static int32_t bottoming(csv_row *row)
{
    threadcalc_ratio_t tap, point, drill, angle;
    const named_number numbers[] = {
        {"tap_end_mm", &tap}, {"drill_point_mm", &point}, {"drill_mm", &drill}, {"point_angle_deg", &angle}};
    threadcalc_thread_t thread;
    threadcalc_bottoming_t found;
    char angles[128] = "", diameters[256] = "", rooms[256] = "", verdicts[128] = "";
    int32_t place, status = reference_thread(row, &thread);
    status = status == OK ? read_numbers(row, numbers, 4) : status;
    if (status == OK) {
        status = threadcalc_bottoming(&thread, &tap, &point, &drill, angle.denominator ? &angle : NULL, &found,
                                      sizeof found, &row->error);
    }
    if (status != OK) {
        return status;
    }
    for (place = 0; place < found.reading_count; place++) {
        const threadcalc_bottom_reading_t *reading = &found.readings[place];
        add_number(angles, sizeof angles, reading->point_angle_deg);
        add_number(diameters, sizeof diameters, reading->full_diameter_mm);
        add_number(rooms, sizeof rooms, reading->room_mm);
        add_name(verdicts, sizeof verdicts, threadcalc_bottom_verdict_name(reading->verdict));
    }
    csv_text_or_none(row, "angles_deg", angles);
    csv_text_or_none(row, "full_diameters_mm", diameters);
    csv_text_or_none(row, "rooms_mm", rooms);
    csv_text_or_none(row, "verdicts", verdicts);
    csv_text(row, "worst", threadcalc_bottom_verdict_name(found.worst));
    csv_text(row, "is_certain", found.is_certain ? "yes" : "no");
    return status;
}

static int32_t run_out(csv_row *row)
{
    static const char *const kinds[] = {"normal", "short", "long"};
    threadcalc_thread_t thread;
    threadcalc_ratio_t found;
    int32_t status = reference_thread(row, &thread);
    if (status == OK) {
        status = threadcalc_run_out(&thread, csv_choice(row, "run_out", kinds, 3), &found, &row->error);
    }
    if (status == OK) {
        csv_exact(row, "run_out_mm", found);
    }
    return status;
}

static int32_t countersink(csv_row *row)
{
    threadcalc_ratio_t diameter, angle, hole;
    const named_number numbers[] = {{"countersink_mm", &diameter}, {"angle_deg", &angle}, {"hole_mm", &hole}};
    threadcalc_thread_t thread;
    threadcalc_countersunk_t found;
    threadcalc_usual_countersink_t usual;
    char least[64] = "", most[64] = "", degrees[64] = "", text[256];
    int32_t of_usual, status = reference_thread(row, &thread);
    status = status == OK ? read_numbers(row, numbers, 3) : status;
    if (status == OK) {
        status = threadcalc_countersink(&thread, &diameter, &angle, &hole, &found, sizeof found, &row->error);
    }
    if (status != OK) {
        return status;
    }
    csv_double(row, "tip_mm", found.tip_mm);
    csv_double(row, "depth_at_major_mm", found.depth_at_major_mm);
    csv_double(row, "full_thread_lost_mm", found.full_thread_lost_mm);
    of_usual = threadcalc_usual_countersink(&thread, &usual, sizeof usual, NULL);
    if (of_usual == OK) {
        add_number(least, sizeof least, usual.least_mm);
        add_number(most, sizeof most, usual.most_mm);
        add_number(degrees, sizeof degrees, usual.angle_deg);
        snprintf(text, sizeof text, "%s to %s at %s", least, most, degrees);
    } else {
        snprintf(text, sizeof text, "%s", threadcalc_status_name(of_usual));
    }
    csv_text(row, "usual", text);
    return status;
}

static int32_t program_depth(csv_row *row)
{
    static const char *const sides[] = {"deeper", "shallower"};
    const int32_t unit = reference_unit(row), side = csv_choice(row, "rounding", sides, 2);
    const int32_t decimals = (int32_t)csv_whole(row, "decimals", -1);
    threadcalc_ratio_t depth;
    threadcalc_program_depth_t found;
    int32_t status;
    if (strcmp(csv_cell(row, "what"), "derived") == 0) {
        const double derived = strtod(csv_cell(row, "depth_mm"), NULL);
        status = threadcalc_program_depth_of_derived(derived, unit, decimals, side, &found, sizeof found, &row->error);
    } else {
        status = reference_number(row, "depth_mm", &depth);
        if (status == OK) {
            status = threadcalc_program_depth(&depth, unit, decimals, side, &found, sizeof found, &row->error);
        }
    }
    if (status == OK) {
        csv_text(row, "text", found.text);
        csv_exact(row, "value", found.value);
        csv_exact(row, "back_mm", found.depth_mm);
    }
    return status;
}

static int32_t through_hole(csv_row *row)
{
    threadcalc_through_hole_request_t asked = THREADCALC_THROUGH_HOLE_REQUEST_INIT;
    const named_number numbers[] = {{"part_thickness_mm", &asked.part_thickness_mm},
                                    {"chamfer_threads", &asked.chamfer_threads},
                                    {"over_travel_turns", &asked.over_travel_turns},
                                    {"drill_mm", &asked.drill_mm},
                                    {"point_angle_deg", &asked.point_angle_deg},
                                    {"drill_clearance_mm", &asked.drill_clearance_mm},
                                    {"tap_centre_mm", &asked.tap_centre_mm}};
    threadcalc_thread_t thread;
    threadcalc_through_hole_t found;
    int32_t status = reference_thread(row, &thread);
    status = status == OK ? read_numbers(row, numbers, sizeof numbers / sizeof numbers[0]) : status;
    if (status == OK) {
        asked.tap_set_on = set_on(row);
        status = threadcalc_through_hole(&thread, &asked, &found, sizeof found, &row->error);
    }
    if (status == OK) {
        csv_exact(row, "program_tap_mm", found.program_tap_mm);
        csv_exact(row, "tap_mm", found.tap_mm);
        csv_exact(row, "tap_below_mm", found.tap_below_mm);
        csv_exact(row, "full_diameter_mm", found.full_diameter_mm);
        csv_double(row, "drill_point_mm", found.drill_point_mm);
        csv_double(row, "drill_below_mm", found.drill_below_mm);
    }
    return status;
}

void reference_depths(void)
{
    csv_run("full_thread_that_fits", full_thread_that_fits);
    csv_run("chamfers_for_full_thread", chamfers_for_full_thread);
    csv_run("bottoming", bottoming);
    csv_run("run_out", run_out);
    csv_run("countersink", countersink);
    csv_run("program_depth", program_depth);
    csv_run("through_hole", through_hole);
}
