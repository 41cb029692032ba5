/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* One table of the reference folder: its head, its rows, and the comparison of a row with a result. */
#ifndef CSV_H
#define CSV_H

#include <stddef.h>
#include <stdint.h>

#include "threadcalc.h"

enum { CSV_MOST_COLUMNS = 32, CSV_MOST_HEADS = 32, CSV_MOST_ROWS = 8192 };

typedef struct csv_table {
    char name[64];
    char *text;
    char *heads[CSV_MOST_HEADS];
    size_t head_count;
    char *columns[CSV_MOST_COLUMNS];
    int used[CSV_MOST_COLUMNS];
    size_t column_count;
    char *rows[CSV_MOST_ROWS];
    size_t row_count;
} csv_table;

typedef struct csv_row {
    csv_table *table;
    char *cells[CSV_MOST_COLUMNS];
    /* What the library said; written by the calls of an operation. */
    threadcalc_error_t error;
    int differences;
} csv_row;

/* One operation on one row: calls the library, compares the results, and returns the status. */
typedef int32_t (*csv_operation)(csv_row *row);

/* Rows that passed and failed over all tables so far. */
extern size_t csv_passed;
extern size_t csv_failed;

/* Runs every row of a table. */
void csv_run(const char *name, csv_operation operation);

/* The cell of a column as it stands in the file. */
const char *csv_cell(csv_row *row, const char *column);

/* The bytes a cell stands for: \xHH is one byte. Returns how many there are. */
size_t csv_bytes(csv_row *row, const char *column, uint8_t *bytes, size_t capacity);

/* The whole number in a cell; `otherwise` where it is empty. */
int64_t csv_whole(csv_row *row, const char *column, int64_t otherwise);

/* The number of a name in a list that begins with 1: 0 for an empty cell, 99 for a name not listed. */
int32_t csv_choice(csv_row *row, const char *column, const char *const *names, size_t count);

/* Comparisons of a result; each empty cell is "not tested", `-` for a number is "there is none": 0/0 or NaN.
   Nothing is compared if the row wants an error. */
void csv_text(csv_row *row, const char *column, const char *got);
void csv_exact(csv_row *row, const char *column, threadcalc_ratio_t got);
void csv_double(csv_row *row, const char *column, double got);

/* As csv_text, but an empty cell is "none". */
void csv_text_or_none(csv_row *row, const char *column, const char *got);

#endif
