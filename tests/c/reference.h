/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* What the operations of all tables read their inputs with, and the groups of tables. */
#ifndef REFERENCE_H
#define REFERENCE_H

#include "csv.h"

/* The thread of the column `designation`. */
int32_t reference_thread(csv_row *row, threadcalc_thread_t *thread);

/* The exact number of a column; 0/0 for an empty cell. */
int32_t reference_number(csv_row *row, const char *column, threadcalc_ratio_t *number);

/* The numbers of the names in the columns `unit`, `tap` and `basis`. */
int32_t reference_unit(csv_row *row);
int32_t reference_tap(csv_row *row);
int32_t reference_basis(csv_row *row);

void reference_threads(void);
void reference_feeds(void);
void reference_drills(void);

#endif
