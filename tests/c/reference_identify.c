/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* The tables of identified leads and of the threads of a pitch. */
#include "reference.h"

#include <stdio.h>
#include <string.h>

enum { ROOM = 64, MOST_TEXT = 2048 };

static const char *const modes[] = {"per_minute", "per_revolution"};

/* The systems of a match, "unified+npt". */
static void add_systems(char *words, size_t capacity, const threadcalc_match_t *match)
{
    char systems[64] = "";
    if (match->is_metric) {
        reference_join(systems, sizeof systems, "+", "metric");
    }
    if (match->is_unified) {
        reference_join(systems, sizeof systems, "+", "unified");
    }
    if (match->is_whitworth_pipe) {
        reference_join(systems, sizeof systems, "+", "whitworth-pipe");
    }
    if (match->is_npt) {
        reference_join(systems, sizeof systems, "+", "npt");
    }
    reference_join(words, capacity, "; ", systems);
}

static void compare_matches(csv_row *row, const threadcalc_match_t *matches, size_t count)
{
    static char systems[MOST_TEXT], errors[MOST_TEXT], within[MOST_TEXT], exact[MOST_TEXT], names[MOST_TEXT];
    size_t place;
    systems[0] = errors[0] = within[0] = exact[0] = names[0] = '\0';
    for (place = 0; place < count; place++) {
        const threadcalc_match_t *match = &matches[place];
        char shown[64];
        snprintf(shown, sizeof shown, "%lld/%lld", (long long)match->lead_error.numerator,
                 (long long)match->lead_error.denominator);
        reference_join(names, sizeof names, "; ", match->name);
        reference_join(errors, sizeof errors, "; ", shown);
        reference_join(within, sizeof within, " ", reference_yes(match->is_within));
        reference_join(exact, sizeof exact, " ", reference_yes(match->is_exact));
        add_systems(systems, sizeof systems, match);
    }
    csv_text(row, "matches", names);
    csv_text(row, "errors", errors);
    csv_text(row, "is_within", within);
    csv_text(row, "is_exact", exact);
    csv_text(row, "systems", systems);
}

static int32_t words(csv_row *row, threadcalc_feed_words_t *asked)
{
    struct { const char *column; threadcalc_ratio_t *number; } numbers[6];
    size_t place;
    int32_t status = THREADCALC_STATUS_OK;
    asked->unit = reference_unit(row);
    asked->mode = csv_choice(row, "mode", modes, 2);
    numbers[0].column = "feed", numbers[0].number = &asked->feed;
    numbers[1].column = "feed_decimals", numbers[1].number = &asked->feed_decimals;
    numbers[2].column = "most_feed_decimals", numbers[2].number = &asked->most_feed_decimals;
    numbers[3].column = "rpm", numbers[3].number = &asked->rpm;
    numbers[4].column = "rpm_decimals", numbers[4].number = &asked->rpm_decimals;
    numbers[5].column = "most_rpm_decimals", numbers[5].number = &asked->most_rpm_decimals;
    for (place = 0; status == THREADCALC_STATUS_OK && place < 6; place++) {
        status = reference_number(row, numbers[place].column, numbers[place].number);
    }
    return status;
}

static int32_t identify(csv_row *row)
{
    threadcalc_feed_words_t asked = THREADCALC_FEED_WORDS_INIT;
    threadcalc_match_t matches[ROOM];
    threadcalc_identification_t found;
    threadcalc_ratio_t lead;
    size_t count = 0;
    int32_t status = reference_number(row, "within", &asked.within);
    asked.starts = (int32_t)csv_whole(row, "starts", 0);
    if (status == THREADCALC_STATUS_OK) {
        status = reference_number(row, "lead_mm", &lead);
    }
    if (status == THREADCALC_STATUS_OK && *csv_cell(row, "lead_mm")) {
        status = threadcalc_identify(&lead, &asked.within, asked.starts, &found, sizeof found, matches, ROOM, &count,
                                     &row->error);
    } else if (status == THREADCALC_STATUS_OK) {
        status = words(row, &asked);
        if (status == THREADCALC_STATUS_OK) {
            status = threadcalc_identify_feed(&asked, &found, sizeof found, matches, ROOM, &count, &row->error);
        }
    }
    if (status != THREADCALC_STATUS_OK) {
        return status;
    }
    csv_text(row, "verdict", threadcalc_lead_verdict_name(found.verdict));
    csv_text(row, "text", found.text);
    csv_exact(row, "pitch_mm", matches[0].pitch_mm);
    csv_exact(row, "shortest_mm", found.shortest_lead_mm);
    csv_exact(row, "longest_mm", found.longest_lead_mm);
    compare_matches(row, matches, count);
    return status;
}

static int32_t threads_of_pitch(csv_row *row)
{
    threadcalc_thread_t threads[ROOM];
    threadcalc_ratio_t pitch, diameter;
    char words[512] = "";
    size_t count = 0, place;
    int32_t status = reference_number(row, "pitch_mm", &pitch);
    if (status == THREADCALC_STATUS_OK) {
        status = reference_number(row, "diameter_mm", &diameter);
    }
    if (status == THREADCALC_STATUS_OK) {
        status = threadcalc_threads_of_pitch(&pitch, &diameter, (int32_t)csv_whole(row, "starts", 0), threads, ROOM,
                                             &count, &row->error);
    }
    for (place = 0; status == THREADCALC_STATUS_OK && place < count; place++) {
        char text[64];
        size_t needed = 0;
        status = threadcalc_thread_write(&threads[place], text, sizeof text, &needed, &row->error);
        reference_join(words, sizeof words, "; ", text);
    }
    if (status == THREADCALC_STATUS_OK) {
        csv_text_or_none(row, "threads", words);
    }
    return status;
}

/* Those about a diameter or a pitch, of all families. */
static int32_t threads_near(csv_row *row)
{
    threadcalc_thread_t threads[ROOM];
    threadcalc_ratio_t value, within;
    char words[1024] = "";
    size_t count = 0, place;
    int32_t status = reference_number(row, "value_mm", &value);
    if (status == THREADCALC_STATUS_OK) {
        status = reference_number(row, "within_mm", &within);
    }
    if (status == THREADCALC_STATUS_OK && strcmp(csv_cell(row, "by"), "pitch") == 0) {
        status = threadcalc_threads_near_pitch(&value, &within, threads, ROOM, &count, &row->error);
    } else if (status == THREADCALC_STATUS_OK) {
        status = threadcalc_threads_near_diameter(&value, &within, threads, ROOM, &count, &row->error);
    }
    for (place = 0; status == THREADCALC_STATUS_OK && place < count; place++) {
        char text[64];
        size_t needed = 0;
        status = threadcalc_thread_write(&threads[place], text, sizeof text, &needed, &row->error);
        reference_join(words, sizeof words, "; ", text);
    }
    if (status == THREADCALC_STATUS_OK) {
        csv_text_or_none(row, "threads", words);
    }
    return status;
}

void reference_identified(void)
{
    csv_run("identify", identify);
    csv_run("threads_of_pitch", threads_of_pitch);
    csv_run("threads_near", threads_near);
}
