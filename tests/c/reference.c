/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* Every table of the reference folder, row by row, through the C library. */
#include "reference.h"

#include <stdio.h>
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

int main(void)
{
    reference_threads();
    reference_feeds();
    reference_drills();
    printf("reference: %lu rows passed, %lu failed\n", (unsigned long)csv_passed, (unsigned long)csv_failed);
    return csv_failed > 0 || csv_passed == 0;
}
