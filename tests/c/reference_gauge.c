/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* The tables of gauges, what follows from them, and wires. */
#include "reference.h"

#include <stdio.h>
#include <string.h>

enum { OK = THREADCALC_STATUS_OK };

/* The gauge of a kind, blank if there is none. */
static threadcalc_gauge_t of_kind(const threadcalc_gauges_t *set, threadcalc_gauge kind)
{
    threadcalc_gauge_t none;
    int32_t place;
    for (place = 0; place < set->gauge_count; place++) {
        if (set->gauges[place].kind == kind) {
            return set->gauges[place];
        }
    }
    memset(&none, 0, sizeof none);
    return none;
}

static int32_t gauges(csv_row *row)
{
    threadcalc_thread_t thread;
    threadcalc_gauges_t set;
    threadcalc_not_go_rule_t rule;
    char names[256] = "", turns[32];
    int32_t place, refused, status = reference_thread(row, &thread);
    if (status == OK) {
        status = threadcalc_gauges(&thread, &set, sizeof set, &row->error);
    }
    if (status != OK) {
        return status;
    }
    for (place = 0; place < set.gauge_count; place++) {
        reference_join(names, sizeof names, " ", threadcalc_gauge_name(set.gauges[place].kind));
    }
    refused = threadcalc_not_go_rule(&thread, &rule, sizeof rule, &row->error);
    snprintf(turns, sizeof turns, "%ld", refused == OK ? (long)rule.most_turns : -1L);
    csv_text(row, "gauges", names);
    csv_exact(row, "go_pitch_mm", of_kind(&set, THREADCALC_GAUGE_THREAD_PLUG_GO).pitch_diameter_mm);
    csv_exact(row, "not_go_pitch_mm", of_kind(&set, THREADCALC_GAUGE_THREAD_PLUG_NOT_GO).pitch_diameter_mm);
    csv_exact(row, "plain_go_mm", of_kind(&set, THREADCALC_GAUGE_PLAIN_PLUG_GO).diameter_mm);
    csv_exact(row, "plain_not_go_mm", of_kind(&set, THREADCALC_GAUGE_PLAIN_PLUG_NOT_GO).diameter_mm);
    csv_text(row, "most_turns", refused == OK ? turns : threadcalc_status_name(refused));
    csv_text(row, "class_assumed", set.class_assumed == 1 ? "yes" : set.class_assumed == 0 ? "no" : "no flag");
    csv_text(row, "hand", threadcalc_hand_name(set.hand));
    return status;
}

static int32_t next_move(csv_row *row)
{
    threadcalc_gauge_reading reading;
    threadcalc_thread_t thread;
    threadcalc_ratio_t turns, required;
    threadcalc_next_move_t next;
    char moves[256] = "";
    int32_t place, status = reference_thread(row, &thread);
    REFERENCE_NAMED(row, "result", threadcalc_gauge_reading_name, reading);
    if (status == OK) {
        status = reference_number(row, "turns", &turns);
    }
    if (status == OK) {
        status = reference_number(row, "required_turns", &required);
    }
    if (status == OK) {
        status = threadcalc_next_move(&thread, reading, &turns, &required, &next, sizeof next, &row->error);
    }
    if (status != OK) {
        return status;
    }
    for (place = 0; place < next.move_count; place++) {
        reference_join(moves, sizeof moves, " ", threadcalc_move_name(next.moves[place]));
    }
    csv_text(row, "verdict", threadcalc_verdict_name(next.verdict));
    csv_text(row, "moves", moves);
    reference_exact_text(row, "deeper_mm", next.deeper_mm);
    return status;
}

static int32_t trimmed_depth(csv_row *row)
{
    threadcalc_thread_t thread;
    threadcalc_ratio_t depth, turns, found;
    int32_t status = reference_thread(row, &thread);
    if (status == OK) {
        status = reference_number(row, "depth_mm", &depth);
    }
    if (status == OK) {
        status = reference_number(row, "stand_off_turns", &turns);
    }
    if (status == OK) {
        status = threadcalc_trimmed_depth_mm(&thread, &depth, &turns, &found, &row->error);
    }
    if (status == OK) {
        csv_exact(row, "new_depth_mm", found);
    }
    return status;
}

static int32_t re_entry(csv_row *row)
{
    threadcalc_ratio_t r, pitch, wanted;
    threadcalc_re_entry_t again;
    char pitches[32];
    int32_t status = reference_number(row, "r_mm", &r);
    if (status == OK) {
        status = reference_number(row, "pitch_mm", &pitch);
    }
    if (status == OK) {
        status = reference_number(row, "wanted_mm", &wanted);
    }
    if (status == OK) {
        status = threadcalc_re_entry_r(&r, &pitch, &wanted, &again, sizeof again, &row->error);
    }
    if (status == OK) {
        snprintf(pitches, sizeof pitches, "%lld", (long long)again.pitches);
        csv_exact(row, "new_r_mm", again.r_mm);
        /* The answer holds only with the rest of the rule. */
        csv_text(row, "pitches", strstr(threadcalc_re_entry_rule(), "whole pitches") ? pitches : "no rule");
    }
    return status;
}

/* A number of the row's unit in mm; the library brings it to lowest terms. */
static int32_t in_mm(csv_row *row, const char *column, threadcalc_ratio_t *number)
{
    const int32_t status = reference_number(row, column, number);
    if (reference_unit(row) == THREADCALC_UNIT_INCH) {
        number->numerator *= 127;
        number->denominator *= 5;
    }
    return status;
}

static int32_t over_wires(csv_row *row)
{
    static const char *const no_and_yes[] = {"no", "yes"};
    const double unit = reference_unit(row) == THREADCALC_UNIT_INCH ? 25.4 : 1.0;
    const int32_t lead_angle = csv_choice(row, "lead_angle", no_and_yes, 2) - 1;
    threadcalc_thread_t thread;
    threadcalc_ratio_t wire, diameter;
    double over = 0.0, best = 0.0;
    int32_t status = reference_thread(row, &thread);
    if (status == OK) {
        status = in_mm(row, "wire", &wire);
    }
    if (status == OK) {
        status = in_mm(row, "pitch_diameter", &diameter);
    }
    if (status == OK) {
        status = threadcalc_over_wires(&thread, &wire, &diameter, lead_angle, &over, &row->error);
    }
    if (status == OK) {
        status = threadcalc_best_wire_mm(&thread, &best, &row->error);
    }
    if (status == OK) {
        csv_double(row, "over_wires", over / unit);
        csv_double(row, "best_wire", best / unit);
    }
    return status;
}

void reference_gauges(void)
{
    csv_run("gauges", gauges);
    csv_run("next_move", next_move);
    csv_run("trimmed_depth", trimmed_depth);
    csv_run("re_entry", re_entry);
    csv_run("over_wires", over_wires);
}
