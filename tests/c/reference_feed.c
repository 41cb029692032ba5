/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* The tables of feeds and speeds. */
#include "reference.h"

#include <stdio.h>
#include <string.h>

/* The same word through the call without structures, from the nearest double of the speed. */
static void flat_word(csv_row *row, const threadcalc_feed_request_t *asked)
{
    uint8_t designation[1024];
    char word[24] = "";
    size_t needed = 0;
    double rpm = 0.0;
    threadcalc_ratio_t again = {0, 0};
    const size_t length = csv_bytes(row, "designation", designation, sizeof designation);
    if (asked->rpm.denominator != 0) {
        (void)threadcalc_nearest_double(&asked->rpm, &rpm, NULL);
        (void)threadcalc_exact_number(rpm, &again, NULL);
    }
    /* A third of a turn has no double that stands for it. */
    if (again.numerator == asked->rpm.numerator && again.denominator == asked->rpm.denominator) {
        (void)threadcalc_feed_word(designation, length, rpm, asked->unit, asked->mode,
                                   (int32_t)asked->decimals.numerator, word, sizeof word, &needed);
        csv_text(row, "word", word);
    }
}

static int32_t feed(csv_row *row)
{
    static const char *const modes[] = {"per_minute", "per_revolution"};
    threadcalc_feed_request_t asked = THREADCALC_FEED_REQUEST_INIT;
    threadcalc_thread_t thread;
    threadcalc_feed_t found;
    int32_t status = reference_thread(row, &thread);
    if (status == THREADCALC_STATUS_OK) {
        asked.lead_mm = thread.lead_mm;
        status = reference_number(row, "rpm", &asked.rpm);
    }
    if (status == THREADCALC_STATUS_OK) {
        status = reference_number(row, "decimals", &asked.decimals);
    }
    if (status == THREADCALC_STATUS_OK) {
        asked.unit = reference_unit(row);
        asked.mode = csv_choice(row, "mode", modes, 2);
        status = threadcalc_feed(&asked, &found, sizeof found, &row->error);
    }
    if (status == THREADCALC_STATUS_OK) {
        flat_word(row, &asked);
        csv_text(row, "word", found.word);
        csv_exact(row, "exact", found.exact);
        csv_exact(row, "lead_error", found.lead_error);
    }
    return status;
}

static int32_t programmed_speed(csv_row *row)
{
    threadcalc_ratio_t rpm, step, lowest, highest, held;
    int32_t status = reference_number(row, "rpm", &rpm);
    if (status == THREADCALC_STATUS_OK) {
        status = reference_number(row, "step", &step);
    }
    if (status == THREADCALC_STATUS_OK) {
        status = reference_number(row, "lowest", &lowest);
    }
    if (status == THREADCALC_STATUS_OK) {
        status = reference_number(row, "highest", &highest);
    }
    if (status == THREADCALC_STATUS_OK) {
        status = threadcalc_programmed_speed(&rpm, &step, &lowest, &highest, &held, &row->error);
    }
    if (status == THREADCALC_STATUS_OK) {
        csv_exact(row, "speed", held);
    }
    return status;
}

static int32_t exact_speeds(csv_row *row)
{
    threadcalc_thread_t thread;
    threadcalc_ratio_t rpm;
    int64_t speeds[64];
    char list[1024] = "";
    size_t count = 0, place;
    const int32_t unit = reference_unit(row);
    const int32_t decimals = (int32_t)csv_whole(row, "decimals", -1);
    const size_t wanted = (size_t)csv_whole(row, "count", 0);
    const int64_t lowest = csv_whole(row, "lowest", 0);
    const int64_t highest = csv_whole(row, "highest", 0);
    int32_t status = reference_thread(row, &thread);
    if (wanted > 64) {
        printf("exact_speeds.csv: more speeds are asked for than there is room\n");
        csv_failed++;
        return status;
    }
    if (status == THREADCALC_STATUS_OK) {
        status = reference_number(row, "rpm", &rpm);
    }
    if (status == THREADCALC_STATUS_OK) {
        status = threadcalc_exact_speeds(&thread.lead_mm, &rpm, unit, decimals, lowest, highest, speeds, wanted,
                                         &count, &row->error);
    }
    if (status != THREADCALC_STATUS_OK) {
        return status;
    }
    for (place = 0; place < count; place++) {
        const size_t length = strlen(list);
        snprintf(list + length, sizeof list - length, "%s%lld", place ? " " : "", (long long)speeds[place]);
    }
    csv_text_or_none(row, "speeds", list);
    return status;
}

static int32_t nearest_exact_speeds(csv_row *row)
{
    threadcalc_thread_t thread;
    threadcalc_ratio_t rpm, step, lowest, highest, found = {0, 0};
    int64_t below, above;
    const int32_t unit = reference_unit(row);
    const int32_t decimals = (int32_t)csv_whole(row, "decimals", -1);
    int32_t status = reference_thread(row, &thread);
    if (status == THREADCALC_STATUS_OK) {
        status = reference_number(row, "rpm", &rpm);
    }
    if (status == THREADCALC_STATUS_OK) {
        status = reference_number(row, "step", &step);
    }
    if (status == THREADCALC_STATUS_OK) {
        status = reference_number(row, "lowest", &lowest);
    }
    if (status == THREADCALC_STATUS_OK) {
        status = reference_number(row, "highest", &highest);
    }
    if (status == THREADCALC_STATUS_OK) {
        status = threadcalc_nearest_exact_speeds(&thread.lead_mm, &rpm, unit, decimals, &step, &lowest, &highest, &below,
                                                 &above, &row->error);
    }
    if (status == THREADCALC_STATUS_OK) {
        found.numerator = below;
        found.denominator = below != 0;
        csv_exact(row, "below", found);
        found.numerator = above;
        found.denominator = above != 0;
        csv_exact(row, "above", found);
    }
    return status;
}

void reference_feeds(void)
{
    csv_run("nearest_exact_speeds", nearest_exact_speeds);
    csv_run("feed", feed);
    csv_run("programmed_speed", programmed_speed);
    csv_run("exact_speeds", exact_speeds);
}
