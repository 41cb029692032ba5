/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* The tables of texts around designations: hole notes and comments. */
#include "reference.h"

#include <stdio.h>
#include <string.h>

static void whole(csv_row *row, const char *column, int is_there, int64_t got)
{
    char text[32] = "";
    if (is_there) {
        snprintf(text, sizeof text, "%lld", (long long)got);
    }
    csv_text_or_none(row, column, text);
}

static void flags(csv_row *row, const threadcalc_hole_note_t *note)
{
    const struct { int32_t is_set; const char *name; } all[] = {
        {note->thread_through, "thread-through"},   {note->drill_through, "drill-through"},
        {note->has_countersink, "countersink"},     {note->has_counterbore, "counterbore"},
        {note->is_spotface, "spotface"},            {note->equally_spaced, "equally-spaced"},
    };
    char words[128] = "";
    size_t place;
    for (place = 0; place < sizeof all / sizeof all[0]; place++) {
        if (all[place].is_set == 1) {
            reference_join(words, sizeof words, " ", all[place].name);
        }
    }
    csv_text_or_none(row, "flags", words);
}

/* Byte and length of each finding not-read. */
static void unread(csv_row *row, const threadcalc_hole_note_t *note)
{
    char words[256] = "";
    int32_t place;
    for (place = 0; place < note->finding_count; place++) {
        const threadcalc_finding_t *finding = &note->findings[place];
        char word[48];
        if (finding->number_count == 2 && finding->number_key[0] == THREADCALC_NUMBER_BYTE
            && finding->number_key[1] == THREADCALC_NUMBER_LENGTH) {
            snprintf(word, sizeof word, "%.0f+%.0f", finding->number[0], finding->number[1]);
            reference_join(words, sizeof words, " ", word);
        }
    }
    csv_text_or_none(row, "unread", words);
}

static int32_t hole_note(csv_row *row)
{
    uint8_t text[1024];
    threadcalc_hole_note_t note;
    const size_t length = csv_bytes(row, "text", text, sizeof text);
    const int32_t unit = reference_unit(row);
    int32_t status = threadcalc_read_hole_note(text, length, unit, &note, sizeof note, &row->error);
    if (status != THREADCALC_STATUS_OK) {
        return status;
    }
    if (note.thread.form != 0) {
        status = reference_written(row, "thread", &note.thread);
    } else {
        csv_text_or_none(row, "thread", "");
    }
    whole(row, "thread_at", note.thread.form != 0, note.thread_at);
    whole(row, "thread_length", note.thread.form != 0, note.thread_length);
    whole(row, "count", note.count != 0, (int64_t)note.count);
    reference_exact_text(row, "thread_depth_mm", note.thread_depth_mm);
    reference_exact_text(row, "drill_mm", note.drill_mm);
    reference_exact_text(row, "drill_depth_mm", note.drill_depth_mm);
    reference_exact_text(row, "countersink_mm", note.countersink_mm);
    reference_exact_text(row, "countersink_angle_deg", note.countersink_angle_deg);
    reference_exact_text(row, "counterbore_mm", note.counterbore_mm);
    reference_exact_text(row, "counterbore_depth_mm", note.counterbore_depth_mm);
    reference_exact_text(row, "bolt_circle_mm", note.bolt_circle_mm);
    csv_text_or_none(row, "sides", note.sides ? threadcalc_sides_name(note.sides) : "");
    csv_text_or_none(row, "plating", note.plating ? threadcalc_plating_name(note.plating) : "");
    flags(row, &note);
    unread(row, &note);
    reference_findings(row, note.findings, (size_t)note.finding_count);
    return status;
}

static int32_t comment(csv_row *row)
{
    static const char *const no_and_yes[] = {"no", "yes"};
    uint8_t text[4096];
    threadcalc_found_thread_t found[4];
    char threads[512] = "", places[128] = "";
    size_t count = 0, place;
    int32_t has_more = 0;
    const size_t length = csv_bytes(row, "text", text, sizeof text);
    const int32_t tool_is_tap = csv_choice(row, "tool_is_tap", no_and_yes, 2) - 1;
    int32_t status = threadcalc_read_comment(text, length, tool_is_tap, found, 4, &count, &has_more, &row->error);
    for (place = 0; status == THREADCALC_STATUS_OK && place < count; place++) {
        char word[128];
        size_t needed = 0;
        status = threadcalc_thread_write(&found[place].thread, word, sizeof word, &needed, &row->error);
        reference_join(threads, sizeof threads, ";", word);
        snprintf(word, sizeof word, "%lld+%lld", (long long)found[place].at, (long long)found[place].length);
        reference_join(places, sizeof places, " ", word);
    }
    csv_text_or_none(row, "threads", threads);
    csv_text_or_none(row, "places", places);
    csv_text(row, "more", has_more ? "yes" : "no");
    return status;
}

void reference_notes(void)
{
    csv_run("hole_note", hole_note);
    csv_run("comment", comment);
}
