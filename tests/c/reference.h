/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* What the operations of all tables read their inputs with, and the groups of tables. */
#ifndef REFERENCE_H
#define REFERENCE_H

#include "csv.h"

/* The thread of the column `designation`. */
int32_t reference_thread(csv_row *row, threadcalc_thread_t *thread);

/* The limits of size of the thread on the side of the column `side`. */
int32_t reference_sided_limits(csv_row *row);

/* The exact number of a column; 0/0 for an empty cell. */
int32_t reference_number(csv_row *row, const char *column, threadcalc_ratio_t *number);

/* The number of a column that an operation takes as a double; `NaN` is one. */
double reference_double(csv_row *row, const char *column);

/* "yes" for 1, "no" for 0, and a text that no cell has for anything else. */
const char *reference_yes(int32_t flag);

/* The numbers of the names in the columns `unit`, `tap` and `basis`. */
int32_t reference_unit(csv_row *row);
int32_t reference_tap(csv_row *row);
int32_t reference_basis(csv_row *row);

/* The bits of the sets in the column `sets`; a set not known is a bit not known. */
uint32_t reference_sets(csv_row *row);

/* The same of a cell's text. */
uint32_t reference_sets_of(const char *names);

/* Whether a cell is this name, whatever its case, `-` or `_`. */
int reference_is(csv_row *row, const char *column, const char *name);

/* The number of the name in a cell, by the library's function that names numbers; 99 for a name that is none, and
   for an empty cell. A macro, so that every function is called by its own name. */
#define REFERENCE_NAMED(row, column, name_of, number)                                                 \
    do {                                                                                              \
        (number) = 1;                                                                                 \
        while ((number) < 99 && !reference_is(row, column, name_of(number))) {                        \
            (number)++;                                                                               \
        }                                                                                             \
    } while (0)

/* The number of the column `hole`; 0 for an empty cell, 99 for a hole that is none. */
int32_t reference_hole(csv_row *row);

/* Adds a word to words that are separated by blanks, or by another mark. */
void reference_join(char *words, size_t capacity, const char *mark, const char *word);

/* The program in a cell: its lines stand with " | " between them. Returns its length. */
size_t reference_program(csv_row *row, const char *column, uint8_t *program, size_t capacity);

/* An exact number as text in a list, so that an empty cell is "none". */
void reference_exact_text(csv_row *row, const char *column, threadcalc_ratio_t got);

/* Sets a member of a dialect by the name that it has in JSON, dotted where it is inside another. */
int32_t reference_dialect_set(csv_row *row, threadcalc_dialect_t *mill, const char *key, const char *value);

/* What takes an event of a check. */
typedef void (*reference_keep)(void *found, const threadcalc_program_event_t *event);

/* Hands a program to a check in pieces of some bytes, and every event to `keep`. */
int32_t reference_in_pieces(threadcalc_checker_t *checker, const uint8_t *program, size_t length, size_t piece,
                            reference_keep keep, void *found, threadcalc_error_t *error);

/* A length in mm as an exact number of the row's unit, in lowest terms; 0/0 stays 0/0. */
threadcalc_ratio_t reference_in_unit(csv_row *row, threadcalc_ratio_t mm);

/* All six limits in the unit of the row, and the standard's own unit. */
void reference_six_limits(csv_row *row, const threadcalc_limits_t *found);

/* Compares the names of findings, separated by blanks, with the column `findings`. */
void reference_findings(csv_row *row, const threadcalc_finding_t *findings, size_t count);

/* Compares the members of an array of texts, `step` bytes from one to the next, with a column. */
void reference_joined(csv_row *row, const char *column, const char *between, const char *first, size_t step,
                      int32_t count);

/* Compares the text of a thread with a column. Returns the status of the writer. */
int32_t reference_written(csv_row *row, const char *column, const threadcalc_thread_t *thread);

void reference_threads(void);
void reference_texts(void);
void reference_pipes(void);
void reference_notes(void);
void reference_feeds(void);
void reference_drills(void);
void reference_limits(void);
void reference_cutting(void);
void reference_motion(void);
void reference_lists(void);
void reference_cycles(void);
void reference_jobs(void);
void reference_plans(void);
void reference_depths(void);
void reference_borders(void);
void reference_taps(void);
void reference_sizes(void);
void reference_gauges(void);
void reference_checks(void);
void reference_compare(void);
void reference_identified(void);

#endif
