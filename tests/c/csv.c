/* SPDX-License-Identifier: MIT OR Apache-2.0 */
#include "csv.h"

#include <errno.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

size_t csv_passed = 0;
size_t csv_failed = 0;

/* A fault of the table or of this runner, not of the library. */
static void broken(const csv_table *table, const char *what, const char *detail)
{
    fprintf(stderr, "%s: %s %s\n", table->name, what, detail);
    exit(1);
}

static char *read_file(const csv_table *table)
{
    const char *folder = getenv("THREADCALC_REFERENCE");
    char path[4096];
    const int length = snprintf(path, sizeof path, "%s/%s", folder ? folder : "tests/reference", table->name);
    FILE *file;
    char *text;
    size_t size;
    if (length < 0 || (size_t)length >= sizeof path) {
        broken(table, "the path is too long:", folder ? folder : "");
    }
    file = fopen(path, "rb");
    if (!file) {
        broken(table, "cannot open", path);
    }
    text = malloc(1 << 20);
    if (!text) {
        broken(table, "no memory for", path);
    }
    size = fread(text, 1, (1 << 20) - 1, file);
    if (ferror(file) || !feof(file)) {
        broken(table, "cannot read, or is too long:", path);
    }
    fclose(file);
    text[size] = '\0';
    return text;
}

/* Cuts a line at its commas, in place. */
static size_t split(const csv_table *table, char *line, char **cells)
{
    size_t count = 0;
    for (;;) {
        char *comma = strchr(line, ',');
        if (count == CSV_MOST_COLUMNS) {
            broken(table, "too many columns:", line);
        }
        cells[count++] = line;
        if (!comma) {
            return count;
        }
        *comma = '\0';
        line = comma + 1;
    }
}

static void open_table(csv_table *table, const char *name)
{
    char *line;
    memset(table, 0, sizeof *table);
    snprintf(table->name, sizeof table->name, "%s.csv", name);
    table->text = read_file(table);
    for (line = strtok(table->text, "\n"); line; line = strtok(NULL, "\n")) {
        const size_t length = strlen(line);
        if (length > 0 && line[length - 1] == '\r') {
            line[length - 1] = '\0';
        }
        if (line[0] == '#') {
            if (table->head_count == CSV_MOST_HEADS) {
                broken(table, "too many head lines:", line);
            }
            table->heads[table->head_count++] = line;
        } else if (table->column_count == 0) {
            table->column_count = split(table, line, table->columns);
        } else {
            if (table->row_count == CSV_MOST_ROWS) {
                broken(table, "too many rows:", line);
            }
            table->rows[table->row_count++] = line;
        }
    }
}

/* The value of the head line that begins with "# key: ", and with `word ` behind it if there is a word. */
static const char *head(const csv_table *table, const char *key, const char *word)
{
    char wanted[96];
    size_t place;
    snprintf(wanted, sizeof wanted, word ? "# %s: %s " : "# %s: ", key, word);
    for (place = 0; place < table->head_count; place++) {
        if (strncmp(table->heads[place], wanted, strlen(wanted)) == 0) {
            return table->heads[place] + strlen(wanted);
        }
    }
    return NULL;
}

static size_t column_place(const csv_table *table, const char *column)
{
    size_t place;
    for (place = 0; place < table->column_count; place++) {
        if (strcmp(table->columns[place], column) == 0) {
            return place;
        }
    }
    return CSV_MOST_COLUMNS;
}

const char *csv_cell(csv_row *row, const char *column)
{
    const size_t place = column_place(row->table, column);
    if (place == CSV_MOST_COLUMNS) {
        broken(row->table, "no column", column);
    }
    row->table->used[place] = 1;
    return row->cells[place];
}

size_t csv_bytes(csv_row *row, const char *column, uint8_t *bytes, size_t capacity)
{
    const char *cell = csv_cell(row, column);
    size_t count = 0;
    while (*cell) {
        if (count == capacity) {
            broken(row->table, "a cell is too long:", column);
        }
        if (cell[0] == '\\' && cell[1] == 'x' && cell[2] && cell[3]) {
            const char digits[3] = {cell[2], cell[3], '\0'};
            bytes[count++] = (uint8_t)strtoul(digits, NULL, 16);
            cell += 4;
        } else {
            bytes[count++] = (uint8_t)*cell++;
        }
    }
    return count;
}

static int64_t whole(csv_row *row, const char *text)
{
    char *end;
    long long value;
    errno = 0;
    value = strtoll(text, &end, 10);
    if (errno || end == text || *end) {
        broken(row->table, "no whole number:", text);
    }
    return (int64_t)value;
}

int64_t csv_whole(csv_row *row, const char *column, int64_t otherwise)
{
    const char *cell = csv_cell(row, column);
    return *cell ? whole(row, cell) : otherwise;
}

int32_t csv_choice(csv_row *row, const char *column, const char *const *names, size_t count)
{
    const char *cell = csv_cell(row, column);
    size_t place;
    if (!*cell) {
        return 0;
    }
    for (place = 0; place < count; place++) {
        if (strcmp(cell, names[place]) == 0) {
            return (int32_t)place + 1;
        }
    }
    return 99;
}

static int wants_result(csv_row *row)
{
    return strcmp(csv_cell(row, "status"), "ok") == 0;
}

static void differs(csv_row *row, const char *what, const char *want, const char *got)
{
    printf("%s:%s %s: want %s got %s\n", row->table->name, csv_cell(row, "id"), what, want, got);
    row->differences++;
}

void csv_text_or_none(csv_row *row, const char *column, const char *got)
{
    const char *want = csv_cell(row, column);
    if (wants_result(row) && strcmp(want, got) != 0) {
        differs(row, column, want, got);
    }
}

void csv_text(csv_row *row, const char *column, const char *got)
{
    if (*csv_cell(row, column)) {
        csv_text_or_none(row, column, got);
    }
}

/* A decimal or a fraction in lowest terms, read here without the library's own reader. */
static threadcalc_ratio_t ratio_of(csv_row *row, const char *cell)
{
    char digits[64];
    threadcalc_ratio_t value = {0, 1};
    int64_t left, right;
    size_t count = 0;
    int behind_point = 0;
    for (; *cell && *cell != '/'; cell++) {
        if (*cell == '.') {
            behind_point = 1;
            continue;
        }
        if (count + 1 == sizeof digits || (behind_point && value.denominator > INT64_MAX / 10)) {
            broken(row->table, "a number is too long:", cell);
        }
        digits[count++] = *cell;
        value.denominator *= behind_point ? 10 : 1;
    }
    digits[count] = '\0';
    value.numerator = whole(row, digits);
    if (*cell == '/') {
        const int64_t bottom = whole(row, cell + 1);
        if (bottom <= 0 || value.denominator > INT64_MAX / bottom) {
            broken(row->table, "a denominator is too large:", cell);
        }
        value.denominator *= bottom;
    }
    left = value.numerator;
    right = value.denominator;
    while (right != 0) {
        const int64_t rest = left % right;
        left = right;
        right = rest;
    }
    left = left < 0 ? -left : left;
    value.numerator /= left;
    value.denominator /= left;
    return value;
}

void csv_exact(csv_row *row, const char *column, threadcalc_ratio_t got)
{
    const char *cell = csv_cell(row, column);
    if (*cell && wants_result(row)) {
        const threadcalc_ratio_t none = {0, 0};
        const threadcalc_ratio_t want = strcmp(cell, "-") == 0 ? none : ratio_of(row, cell);
        if (want.numerator != got.numerator || want.denominator != got.denominator) {
            char shown[64];
            snprintf(shown, sizeof shown, "%lld/%lld", (long long)got.numerator, (long long)got.denominator);
            differs(row, column, cell, shown);
        }
    }
}

/* The tolerance of a column: a number, or half a unit of the decimals that another column counts. */
static double tolerance(csv_row *row, const char *column)
{
    const char *line = head(row->table, "tolerance", column);
    char word[64];
    char *end;
    double value;
    if (!line) {
        broken(row->table, "no tolerance for", column);
    }
    snprintf(word, sizeof word, "%.*s", (int)strcspn(line, " "), line);
    value = strtod(word, &end);
    return *end ? 0.5 * pow(0.1, (double)whole(row, csv_cell(row, word))) : value;
}

void csv_double(csv_row *row, const char *column, double got)
{
    const char *cell = csv_cell(row, column);
    if (*cell && wants_result(row)) {
        char *end;
        const double want = strtod(cell, &end);
        const int is_none = strcmp(cell, "-") == 0;
        if (is_none ? !isnan(got) : *end || !(fabs(want - got) <= tolerance(row, column))) {
            char shown[64];
            snprintf(shown, sizeof shown, "%.17g", got);
            differs(row, column, cell, shown);
        }
    }
}

/* A failure's name, and its byte where the table has that column. */
static void compare_status(csv_row *row, int32_t status)
{
    const char *want = csv_cell(row, "status");
    const char *got = threadcalc_status_name(status);
    if (strcmp(want, got) != 0) {
        differs(row, "status", want, got);
    }
    if (status != THREADCALC_STATUS_OK && row->error.code != status) {
        differs(row, "error.code", got, threadcalc_status_name(row->error.code));
    }
    if (column_place(row->table, "at") != CSV_MOST_COLUMNS) {
        const char *at = csv_cell(row, "at");
        if (*at && status != THREADCALC_STATUS_OK && whole(row, at) != row->error.at) {
            char shown[32];
            snprintf(shown, sizeof shown, "%lld", (long long)row->error.at);
            differs(row, "at", at, shown);
        }
    }
}

static int is_about(const char *column)
{
    return strcmp(column, "id") == 0 || strcmp(column, "status") == 0 || strcmp(column, "origin") == 0
        || strcmp(column, "source") == 0;
}

void csv_run(const char *name, csv_operation operation)
{
    csv_table *table = malloc(sizeof *table);
    size_t place;
    const char *rows;
    if (!table) {
        exit(1);
    }
    open_table(table, name);
    for (place = 0; place < table->row_count; place++) {
        csv_row row;
        memset(&row, 0, sizeof row);
        row.table = table;
        if (split(table, table->rows[place], row.cells) != table->column_count) {
            broken(table, "a row has another number of cells than the column line:", row.cells[0]);
        }
        compare_status(&row, operation(&row));
        *(row.differences ? &csv_failed : &csv_passed) += 1;
    }
    rows = head(table, "rows", NULL);
    if (!rows || strtoul(rows, NULL, 10) != (unsigned long)place) {
        printf("%s: want %s rows, ran %lu\n", table->name, rows ? rows : "a head with its", (unsigned long)place);
        csv_failed++;
    }
    for (place = 0; place < table->column_count; place++) {
        if (!table->used[place] && !is_about(table->columns[place])) {
            printf("%s: no check looks at the column %s\n", table->name, table->columns[place]);
            csv_failed++;
        }
    }
    free(table->text);
    free(table);
}
