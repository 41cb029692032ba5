/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* A job as a text of keys and values, read into a structure and written as JSON. */
#ifndef REFERENCE_JOB_TEXT_H
#define REFERENCE_JOB_TEXT_H

#include "csv.h"

/* What a job points to. */
typedef struct reference_job_parts {
    threadcalc_dialect_t dialect;
    threadcalc_drill_t drills[24];
} reference_job_parts;

/* Reads `key=value; key=value` into a job that points to the parts. Returns the status of the first value refused. */
int32_t reference_job_of_text(const char *text, threadcalc_job_t *job, reference_job_parts *parts, csv_row *row);

/* The same text as the JSON of a job, every value as text. */
void reference_job_json(const char *text, char *json, size_t capacity);

#endif
