/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* The tables for C alone: pointers, sizes and buffers that are wrong, and texts that are no JSON. */
#include "reference.h"

#include <stdio.h>
#include <string.h>

#define TEXT(literal) (const uint8_t *)(literal), sizeof(literal) - 1

static int is(csv_row *row, const char *fault)
{
    return strcmp(csv_cell(row, "fault"), fault) == 0;
}

static int32_t read_call(csv_row *row)
{
    threadcalc_thread_t thread;
    const uint8_t *text = is(row, "null text") ? NULL : (const uint8_t *)"M8";
    return threadcalc_thread_read(text, 2, is(row, "null result") ? NULL : &thread, &row->error);
}

static int32_t write_call(csv_row *row)
{
    threadcalc_thread_t thread;
    char text[64], shown[32];
    size_t needed = 0;
    int32_t status = threadcalc_thread_read(TEXT("M8x1.25-6H"), &thread, &row->error);
    if (status == THREADCALC_STATUS_OK) {
        const size_t room = is(row, "short buffer") ? 10 : sizeof text;
        status = threadcalc_thread_write(is(row, "null structure") ? NULL : &thread, is(row, "null text") ? NULL : text,
                                         room, is(row, "null length") ? NULL : &needed, &row->error);
    }
    snprintf(shown, sizeof shown, "%lu", (unsigned long)needed);
    if (*csv_cell(row, "needed") && strcmp(csv_cell(row, "needed"), shown) != 0) {
        printf("%s:%s needed: got %s\n", row->table->name, csv_cell(row, "id"), shown);
        row->differences++;
    }
    return status;
}

static int32_t feed_call(csv_row *row)
{
    struct { threadcalc_feed_request_t asked; uint32_t tail[4]; } given;
    threadcalc_feed_t found;
    const threadcalc_feed_request_t begun = THREADCALC_FEED_REQUEST_INIT;
    memset(&given, 0, sizeof given);
    given.asked = begun;
    given.asked.unit = THREADCALC_UNIT_MM;
    given.asked.mode = THREADCALC_MODE_PER_MINUTE;
    given.asked.decimals = (threadcalc_ratio_t){3, 1};
    given.asked.lead_mm = (threadcalc_ratio_t){5, 4};
    given.asked.rpm = (threadcalc_ratio_t){600, 1};
    if (is(row, "request of size 0")) {
        given.asked.size = 0;
    } else if (is(row, "request a byte short")) {
        given.asked.size = (uint32_t)sizeof given.asked - 1;
    } else if (is(row, "request of size 5000")) {
        given.asked.size = 5000;
    } else if (is(row, "member of a later version")) {
        given.asked.size = (uint32_t)sizeof given;
        given.tail[3] = 1;
    } else if (is(row, "zeros of a later version")) {
        given.asked.size = (uint32_t)sizeof given;
    } else if (is(row, "reserved member")) {
        given.asked.reserved = 1;
    }
    return threadcalc_feed(is(row, "null request") ? NULL : &given.asked, is(row, "null result") ? NULL : &found,
                           is(row, "result of size 0") ? 0 : sizeof found, &row->error);
}

static int32_t list_call(csv_row *row)
{
    threadcalc_thread_t threads[2];
    size_t count = 0;
    return threadcalc_standard_threads(THREADCALC_FORM_METRIC, 0, is(row, "null list") ? NULL : threads, 2,
                                       is(row, "null count") ? NULL : &count, &row->error);
}

/* The flat calls have no error to fill: the row's gets the status. */
static int32_t flat_call(csv_row *row)
{
    char text[32];
    size_t needed = 0;
    int64_t numerator = 0, denominator = 0;
    const uint8_t *designation = is(row, "null text") ? NULL : (const uint8_t *)"1/4-20 UNC";
    if (strcmp(csv_cell(row, "call"), "lead") == 0) {
        row->error.code = threadcalc_lead(designation, 10, &numerator, is(row, "null result") ? NULL : &denominator);
    } else {
        row->error.code = threadcalc_feed_word(designation, 10, 720.0, 1, 1, 3, text, is(row, "short buffer") ? 6 : 32,
                                               is(row, "null length") ? NULL : &needed);
    }
    return row->error.code;
}

static int32_t border(csv_row *row)
{
    static const struct { const char *name; int32_t (*call)(csv_row *row); } calls[] = {
        {"thread_read", read_call}, {"thread_write", write_call}, {"feed", feed_call},
        {"standard_threads", list_call}, {"lead", flat_call}, {"feed_word", flat_call}};
    const char *name = csv_cell(row, "call");
    size_t place;
    (void)csv_cell(row, "needed");
    for (place = 0; place < sizeof calls / sizeof calls[0]; place++) {
        if (strcmp(calls[place].name, name) == 0) {
            return calls[place].call(row);
        }
    }
    printf("%s:%s: no such call here\n", row->table->name, csv_cell(row, "id"));
    row->differences++;
    return THREADCALC_STATUS_OK;
}

static int32_t json_text(csv_row *row)
{
    static char plan[32768];
    uint8_t job[2048];
    size_t needed = 0;
    const size_t length = csv_bytes(row, "text", job, sizeof job);
    return threadcalc_plan_json_with_error(job, length, plan, sizeof plan, &needed, &row->error);
}

void reference_borders(void)
{
    csv_run("c/border", border);
    csv_run("c/json", json_text);
}
