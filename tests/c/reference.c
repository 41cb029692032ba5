/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* Every table of the reference folder, row by row, through the C library. */
#include "reference.h"

#include <ctype.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

int32_t reference_thread(csv_row *row, threadcalc_thread_t *thread)
{
    uint8_t text[1024];
    const size_t length = csv_bytes(row, "designation", text, sizeof text);
    return threadcalc_thread_read(text, length, thread, &row->error);
}

int32_t reference_number(csv_row *row, const char *column, threadcalc_ratio_t *number)
{
    const char *cell = csv_cell(row, column);
    number->numerator = 0;
    number->denominator = 0;
    if (!*cell) {
        return THREADCALC_STATUS_OK;
    }
    return threadcalc_read_number((const uint8_t *)cell, strlen(cell), number, &row->error);
}

double reference_double(csv_row *row, const char *column)
{
    const char *cell = csv_cell(row, column);
    /* Not every C library reads these two words. */
    return strcmp(cell, "NaN") == 0 ? (double)NAN : strcmp(cell, "inf") == 0 ? (double)INFINITY : strtod(cell, NULL);
}

const char *reference_yes(int32_t flag)
{
    return flag == 1 ? "yes" : flag == 0 ? "no" : "no flag";
}

int32_t reference_unit(csv_row *row)
{
    static const char *const names[] = {"mm", "inch"};
    return csv_choice(row, "unit", names, 2);
}

int32_t reference_tap(csv_row *row)
{
    static const char *const names[] = {"cut", "form"};
    return csv_choice(row, "tap", names, 2);
}

int32_t reference_basis(csv_row *row)
{
    static const char *const names[] = {"3H/4", "5H/8"};
    return csv_choice(row, "basis", names, 2);
}

static int same_letter(char left, char right)
{
    left = left == '-' ? '_' : left;
    right = right == '-' ? '_' : right;
    return tolower((unsigned char)left) == tolower((unsigned char)right);
}

int reference_is(csv_row *row, const char *column, const char *name)
{
    const char *cell = csv_cell(row, column);
    while (*name && same_letter(*name, *cell)) {
        name++;
        cell++;
    }
    return !*name && !*cell;
}

int32_t reference_hole(csv_row *row)
{
    static const char *const names[] = {"through", "blind"};
    return csv_choice(row, "hole", names, 2);
}

void reference_join(char *words, size_t capacity, const char *mark, const char *word)
{
    const size_t length = strlen(words);
    snprintf(words + length, capacity - length, "%s%s", length ? mark : "", word);
}

size_t reference_program(csv_row *row, const char *column, uint8_t *program, size_t capacity)
{
    const size_t length = csv_bytes(row, column, program, capacity);
    size_t from, to = 0;
    for (from = 0; from < length; from++) {
        if (from + 2 < length && memcmp(program + from, " | ", 3) == 0) {
            program[to++] = '\n';
            from += 2;
        } else {
            program[to++] = program[from];
        }
    }
    return to;
}

void reference_exact_text(csv_row *row, const char *column, threadcalc_ratio_t got)
{
    char text[64] = "";
    size_t needed = 0;
    if (got.denominator != 0 && threadcalc_write_number(&got, text, sizeof text, &needed, NULL) != 0) {
        snprintf(text, sizeof text, "no number");
    }
    csv_text_or_none(row, column, text);
}

uint32_t reference_sets(csv_row *row)
{
    return reference_sets_of(csv_cell(row, "sets"));
}

uint32_t reference_sets_of(const char *names)
{
    static const char *const known[] = {"metric", "number", "letter", "fractional"};
    uint32_t bits = 0;
    while (*names) {
        const size_t length = strcspn(names, " ");
        uint32_t bit = 16;
        uint32_t place;
        for (place = 0; place < 4; place++) {
            if (strlen(known[place]) == length && strncmp(names, known[place], length) == 0) {
                bit = (uint32_t)1 << place;
            }
        }
        bits |= bit;
        names += length;
        names += strspn(names, " ");
    }
    return bits;
}

threadcalc_ratio_t reference_in_unit(csv_row *row, threadcalc_ratio_t mm)
{
    threadcalc_ratio_t inches;
    int64_t left, right;
    if (reference_unit(row) != THREADCALC_UNIT_INCH || mm.denominator == 0) {
        return mm;
    }
    inches.numerator = mm.numerator * 5;
    inches.denominator = mm.denominator * 127;
    left = inches.numerator;
    right = inches.denominator;
    while (right != 0) {
        const int64_t rest = left % right;
        left = right;
        right = rest;
    }
    left = left < 0 ? -left : left;
    inches.numerator /= left;
    inches.denominator /= left;
    return inches;
}

void reference_findings(csv_row *row, const threadcalc_finding_t *findings, size_t count)
{
    char names[512] = "";
    size_t place, length = 0;
    for (place = 0; place < count; place++) {
        const char *name = threadcalc_finding_name(findings[place].id);
        snprintf(names + length, sizeof names - length, "%s%s", place ? " " : "", name);
        length = strlen(names);
    }
    csv_text_or_none(row, "findings", names);
}

void reference_joined(csv_row *row, const char *column, const char *between, const char *first, size_t step,
                      int32_t count)
{
    char all[1024] = "";
    int32_t place;
    for (place = 0; place < count; place++) {
        const size_t length = strlen(all);
        snprintf(all + length, sizeof all - length, "%s%s", place ? between : "", first + (size_t)place * step);
    }
    csv_text_or_none(row, column, all);
}

int32_t reference_written(csv_row *row, const char *column, const threadcalc_thread_t *thread)
{
    char text[128];
    size_t needed = 0;
    const int32_t status = threadcalc_thread_write(thread, text, sizeof text, &needed, &row->error);
    if (status == THREADCALC_STATUS_OK) {
        csv_text_or_none(row, column, text);
    }
    return status;
}

int main(void)
{
    reference_threads();
    reference_texts();
    reference_pipes();
    reference_notes();
    reference_feeds();
    reference_drills();
    reference_limits();
    reference_cutting();
    reference_motion();
    reference_lists();
    reference_cycles();
    reference_jobs();
    reference_plans();
    reference_depths();
    reference_borders();
    reference_taps();
    reference_sizes();
    reference_gauges();
    reference_checks();
    reference_compare();
    reference_identified();
    printf("reference: %lu rows passed, %lu failed\n", (unsigned long)csv_passed, (unsigned long)csv_failed);
    return csv_failed > 0 || csv_passed == 0;
}
