/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* The tables of taps: kinds, chamfers, classes and limits, what shanks say, and what is made of it. */
#include "reference.h"

#include <math.h>
#include <stdio.h>
#include <string.h>

enum { OK = THREADCALC_STATUS_OK };

static double nearest(threadcalc_ratio_t number)
{
    double value = NAN;
    return threadcalc_nearest_double(&number, &value, NULL) == OK ? value : NAN;
}

static int32_t tap_kind(csv_row *row)
{
    const int32_t hole = reference_hole(row);
    threadcalc_tap_advice_t advice;
    threadcalc_tap_kind kind;
    threadcalc_tap tap = 0;
    double factor = 0.0;
    int32_t status;
    REFERENCE_NAMED(row, "kind", threadcalc_tap_kind_name, kind);
    status = threadcalc_tap_of_kind(kind, &tap, &row->error);
    if (status == OK) {
        status = threadcalc_tap_torque_factor(kind, &factor, &row->error);
    }
    if (status == OK) {
        status = threadcalc_tap_advice(kind, hole, &advice, sizeof advice, &row->error);
    }
    if (status == OK) {
        csv_text(row, "tap", tap == THREADCALC_TAP_FORM ? "form" : "cut");
        csv_double(row, "torque_factor", factor);
        csv_text(row, "suits", advice.reason[0] ? threadcalc_suits_name(advice.suits) : "no reason");
    }
    return status;
}

static int32_t chamfer(csv_row *row)
{
    static const char *const holes[] = {"both", "through", "blind"};
    threadcalc_chamfer_form form;
    threadcalc_chamfer_t found;
    int32_t status;
    REFERENCE_NAMED(row, "form", threadcalc_chamfer_form_name, form);
    status = threadcalc_chamfer(form, &found, sizeof found, &row->error);
    if (status == OK) {
        csv_exact(row, "shortest", found.shortest_threads);
        csv_exact(row, "longest", found.longest_threads);
        csv_text(row, "usual_hole", holes[found.usual_hole]);
    }
    return status;
}

/* The forms that the list has, and those that fit one by one. */
static int32_t chamfer_fit(csv_row *row)
{
    const int32_t hole = reference_hole(row);
    threadcalc_chamfer_form forms[16], form;
    threadcalc_ratio_t room;
    char listed[128] = "", one_by_one[128] = "";
    size_t count = 0, place;
    int32_t status = reference_number(row, "room_threads", &room);
    if (status == OK) {
        status = threadcalc_chamfers_that_fit(hole, &room, forms, 16, &count, &row->error);
    }
    for (place = 0; place < count; place++) {
        reference_join(listed, sizeof listed, " ", threadcalc_chamfer_form_name(forms[place]));
    }
    for (form = THREADCALC_CHAMFER_FORM_A; status == OK && form <= THREADCALC_CHAMFER_FORM_BOTTOMING; form++) {
        int32_t fits = 0;
        status = threadcalc_chamfer_fits(form, hole, &room, &fits, &row->error);
        if (fits) {
            reference_join(one_by_one, sizeof one_by_one, " ", threadcalc_chamfer_form_name(form));
        }
    }
    csv_text_or_none(row, "forms", listed);
    csv_text_or_none(row, "forms", one_by_one);
    return status;
}

static int32_t tap_class(csv_row *row)
{
    threadcalc_thread_t thread;
    threadcalc_ratio_t plating;
    threadcalc_iso_tap_t found;
    int32_t status = reference_thread(row, &thread);
    if (status == OK) {
        status = reference_number(row, "plating_um", &plating);
    }
    if (status == OK) {
        status = threadcalc_iso_tap(&thread, &plating, &found, sizeof found, &row->error);
    }
    if (status == OK) {
        csv_text(row, "tap_class", found.tap_class ? threadcalc_iso_tap_class_name(found.tap_class) : "none");
        csv_exact(row, "closing_mm", found.closing_mm);
    }
    return status;
}

static int32_t tap_class_size(csv_row *row)
{
    threadcalc_iso_tap_class tap_class_number;
    threadcalc_thread_t thread;
    threadcalc_range_t found;
    int32_t status = reference_thread(row, &thread);
    REFERENCE_NAMED(row, "tap_class", threadcalc_iso_tap_class_name, tap_class_number);
    if (status == OK) {
        status = threadcalc_iso_tap_pitch_diameter_mm(&thread, tap_class_number, &found, &row->error);
    }
    if (status == OK) {
        csv_double(row, "smallest_mm", nearest(found.low));
        csv_double(row, "largest_mm", nearest(found.high));
    }
    return status;
}

static void text_or_none(csv_row *row, const char *column, threadcalc_ratio_t got)
{
    if (got.denominator == 0) {
        csv_text(row, column, "none");
    } else {
        reference_exact_text(row, column, got);
    }
}

static int32_t tap_limit(csv_row *row)
{
    threadcalc_tap_limit_t limit;
    threadcalc_thread_t thread;
    threadcalc_range_t above, pitch;
    int32_t refused, status = reference_thread(row, &thread);
    REFERENCE_NAMED(row, "letter", threadcalc_limit_letter_name, limit.letter);
    limit.number = (int32_t)csv_whole(row, "number", 0);
    if (status == OK) {
        status = threadcalc_tap_limit_above_basic_mm(&limit, &thread, &above, &row->error);
    }
    if (status != OK) {
        return status;
    }
    text_or_none(row, "smallest_mm", above.low);
    csv_exact(row, "largest_mm", above.high);
    refused = threadcalc_tap_limit_pitch_diameter_mm(&limit, &thread, &pitch, &row->error);
    if (refused == OK) {
        text_or_none(row, "smallest_pitch_mm", pitch.low);
        text_or_none(row, "largest_pitch_mm", pitch.high);
    } else {
        csv_text(row, "smallest_pitch_mm", threadcalc_status_name(refused));
        csv_text(row, "largest_pitch_mm", threadcalc_status_name(refused));
    }
    return status;
}

/* The text of a limit; the empty text for none. */
static const char *limit_text(threadcalc_tap_limit_t limit, char *text, size_t capacity)
{
    text[0] = '\0';
    if (limit.letter != THREADCALC_LIMIT_LETTER_UNSET) {
        snprintf(text, capacity, "%s%ld", threadcalc_limit_letter_name(limit.letter), (long)limit.number);
    }
    return text;
}

static int32_t limit_for_plating(csv_row *row, int is_usual)
{
    threadcalc_thread_t thread;
    threadcalc_ratio_t plating;
    threadcalc_tap_limit_t found;
    char text[64];
    int32_t status = reference_thread(row, &thread);
    if (status == OK) {
        status = reference_number(row, "plating_um", &plating);
    }
    if (status == OK) {
        status = is_usual ? threadcalc_usual_tap_limit_for_plating(&thread, &plating, &found, &row->error)
                          : threadcalc_h_limit_for_plating(&thread, &plating, &found, &row->error);
    }
    if (status == OK) {
        csv_text(row, "limit", limit_text(found, text, sizeof text));
    }
    return status;
}

static int32_t h_limit_for_plating(csv_row *row)
{
    return limit_for_plating(row, 0);
}

static int32_t usual_tap_limit_for_plating(csv_row *row)
{
    return limit_for_plating(row, 1);
}

static int32_t usual_tap_limit(csv_row *row)
{
    threadcalc_thread_t thread;
    threadcalc_tap_limit_t found;
    char text[64];
    int32_t status = reference_thread(row, &thread);
    if (status == OK) {
        status = threadcalc_usual_tap_limit(&thread, &found, &row->error);
    }
    if (status == OK) {
        csv_text(row, "limit", limit_text(found, text, sizeof text));
    }
    return status;
}

static int32_t read_mark(csv_row *row, const char *column, threadcalc_shank_mark_t *mark)
{
    uint8_t text[256];
    const size_t length = csv_bytes(row, column, text, sizeof text);
    return threadcalc_read_shank_mark(text, length, mark, sizeof *mark, &row->error);
}

static void yes_or_no(csv_row *row, const char *column, int32_t flag)
{
    csv_text(row, column, flag == 1 ? "yes" : flag == 0 ? "no" : "no flag");
}

static int32_t shank_mark(csv_row *row)
{
    threadcalc_shank_mark_t mark;
    char text[64], not_read[64] = "";
    int32_t status = read_mark(row, "text", &mark);
    if (status != OK) {
        return status;
    }
    if (mark.thread.form != THREADCALC_FORM_UNSET) {
        status = reference_written(row, "thread", &mark.thread);
    } else {
        csv_text_or_none(row, "thread", "");
    }
    if (mark.not_read_length > 0) {
        snprintf(not_read, sizeof not_read, "%lld:%lld", (long long)mark.not_read_at,
                 (long long)mark.not_read_length);
    }
    csv_text(row, "hand", threadcalc_hand_name(mark.hand));
    csv_text_or_none(row, "tolerance_class", mark.tolerance_class);
    yes_or_no(row, "own_limits", mark.own_limits);
    yes_or_no(row, "ground", mark.ground);
    yes_or_no(row, "wire_insert", mark.wire_insert);
    csv_text_or_none(row, "limit", limit_text(mark.limit, text, sizeof text));
    csv_text_or_none(row, "iso_class", mark.iso_class ? threadcalc_iso_tap_class_name(mark.iso_class) : "");
    csv_text_or_none(row, "chamfer", mark.chamfer_form ? threadcalc_chamfer_form_name(mark.chamfer_form) : "");
    csv_text_or_none(row, "not_read", not_read);
    return status;
}

static int32_t judge_tap(csv_row *row)
{
    static const char *const no_and_yes[] = {"no", "yes"};
    threadcalc_tap_job_t job = THREADCALC_TAP_JOB_INIT;
    threadcalc_shank_mark_t mark;
    threadcalc_finding_t findings[12];
    char shown[512] = "", word[128];
    size_t count = 0, place;
    int32_t status = read_mark(row, "mark", &mark);
    job.hole = reference_hole(row);
    job.wire_insert = csv_choice(row, "wire_insert", no_and_yes, 2) - 1;
    if (status == OK) {
        status = reference_thread(row, &job.thread);
    }
    if (status == OK) {
        status = reference_number(row, "plating_um", &job.plating_um);
    }
    if (status == OK) {
        status = reference_number(row, "room_threads", &job.room_threads);
    }
    if (status == OK) {
        status = threadcalc_judge_tap(&mark, &job, findings, 12, &count, &row->error);
    }
    for (place = 0; place < count; place++) {
        /* What has been read of the limits is not what this table is about. */
        if (findings[place].id != THREADCALC_FINDING_LIMITS_NOT_SOURCED) {
            snprintf(word, sizeof word, "%s:%s", threadcalc_finding_name(findings[place].id),
                     threadcalc_severity_name(findings[place].severity));
            reference_join(shown, sizeof shown, " ", word);
        }
    }
    csv_text_or_none(row, "findings", shown);
    return status;
}

void reference_taps(void)
{
    csv_run("tap_kind", tap_kind);
    csv_run("chamfer", chamfer);
    csv_run("chamfer_fit", chamfer_fit);
    csv_run("tap_class", tap_class);
    csv_run("tap_class_size", tap_class_size);
    csv_run("tap_limit", tap_limit);
    csv_run("h_limit_for_plating", h_limit_for_plating);
    csv_run("usual_tap_limit", usual_tap_limit);
    csv_run("usual_tap_limit_for_plating", usual_tap_limit_for_plating);
    csv_run("shank_mark", shank_mark);
    csv_run("judge_tap", judge_tap);
}
