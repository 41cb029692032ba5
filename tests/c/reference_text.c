/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* The tables of ways to write a thread: many for one, two threads in one text, and what is refused, and where. */
#include "reference.h"

#include <stdio.h>

static int32_t written_form(csv_row *row)
{
    uint8_t text[1024];
    threadcalc_thread_t thread;
    threadcalc_finding_t findings[16];
    size_t count = 0;
    const size_t length = csv_bytes(row, "text", text, sizeof text);
    int32_t status = threadcalc_thread_read(text, length, &thread, &row->error);
    if (status == THREADCALC_STATUS_OK) {
        status = reference_written(row, "canonical", &thread);
    }
    if (status == THREADCALC_STATUS_OK) {
        status = threadcalc_thread_findings(&thread, findings, 16, &count, &row->error);
    }
    if (status == THREADCALC_STATUS_OK) {
        reference_findings(row, findings, count);
    }
    return status;
}

static int32_t fit(csv_row *row)
{
    uint8_t text[1024];
    threadcalc_thread_t internal, external;
    const size_t length = csv_bytes(row, "text", text, sizeof text);
    int32_t status = threadcalc_read_fit(text, length, &internal, &external, &row->error);
    if (status == THREADCALC_STATUS_OK) {
        status = reference_written(row, "internal", &internal);
    }
    if (status == THREADCALC_STATUS_OK) {
        status = reference_written(row, "external", &external);
    }
    return status;
}

static int32_t bad_designation(csv_row *row)
{
    uint8_t text[1024];
    threadcalc_thread_t thread;
    const size_t length = csv_bytes(row, "text", text, sizeof text);
    if (!*csv_cell(row, "at")) {
        printf("bad_designation.csv:%s names no byte\n", csv_cell(row, "id"));
        row->differences++;
    }
    return threadcalc_thread_read(text, length, &thread, &row->error);
}

void reference_texts(void)
{
    csv_run("written_form", written_form);
    csv_run("fit", fit);
    csv_run("bad_designation", bad_designation);
}
