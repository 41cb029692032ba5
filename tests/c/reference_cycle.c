/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* The table of tapping cycles. */
#include "reference.h"

#include <stdio.h>
#include <string.h>

/* The row's dialect: a base, then `key=value`. */
static int32_t dialect(csv_row *row, threadcalc_dialect_t *mill)
{
    char text[512];
    char *word, *value;
    int32_t status = THREADCALC_STATUS_OK;
    snprintf(text, sizeof text, "%s", csv_cell(row, "dialect"));
    word = strtok(text, " ");
    if (word) {
        mill->base = strcmp(word, "unset") == 0 ? THREADCALC_DIALECT_OWN : THREADCALC_DIALECT_RS274NGC;
    }
    while (status == THREADCALC_STATUS_OK && word && (word = strtok(NULL, " ")) != NULL) {
        value = strchr(word, '=');
        *value++ = '\0';
        status = reference_dialect_set(row, mill, word, value);
    }
    return status;
}

static void compare(csv_row *row, const threadcalc_cycle_t *found)
{
    const char *refused = found->refused.id ? threadcalc_finding_name(found->refused.id) : "";
    reference_joined(row, "blocks", "; ", found->blocks[0], sizeof found->blocks[0], found->block_count);
    reference_joined(row, "restore", " ", found->restore[0], sizeof found->restore[0], found->restore_count);
    csv_text_or_none(row, "refused", refused);
    csv_text_or_none(row, "reason", found->refused.suggestion);
    if ((found->word_count == 0) != (found->refused.id != 0)) {
        printf("%s:%s words and a refusal, or neither\n", row->table->name, csv_cell(row, "id"));
        row->differences++;
    }
}

static int32_t cycle(csv_row *row)
{
    static const char *const modes[] = {"per_minute", "per_revolution"};
    static const char *const holders[] = {"rigid", "tension_compression", "floating"};
    static const char *const returns[] = {"r_plane", "initial"};
    threadcalc_dialect_t mill = THREADCALC_DIALECT_INIT;
    threadcalc_cycle_request_t asked = THREADCALC_CYCLE_REQUEST_INIT;
    const struct { const char *column; threadcalc_ratio_t *number; } numbers[] = {
        {"decimals", &asked.decimals}, {"rpm", &asked.rpm}, {"depth_mm", &asked.depth_mm},
        {"r_plane_mm", &asked.r_plane_mm}, {"peck_mm", &asked.peck_mm}, {"dwell_s", &asked.dwell_s},
        {"retract_factor", &asked.retract_factor}};
    threadcalc_thread_t thread;
    threadcalc_cycle_t found;
    size_t place;
    int32_t status = reference_thread(row, &thread);
    for (place = 0; status == THREADCALC_STATUS_OK && place < sizeof numbers / sizeof numbers[0]; place++) {
        status = reference_number(row, numbers[place].column, numbers[place].number);
    }
    if (status == THREADCALC_STATUS_OK) {
        status = dialect(row, &mill);
    }
    if (status != THREADCALC_STATUS_OK) {
        return status;
    }
    asked.unit = reference_unit(row);
    asked.mode = csv_choice(row, "mode", modes, 2);
    asked.holder = csv_choice(row, "holder", holders, 3);
    asked.return_to = csv_choice(row, "return_to", returns, 2);
    status = threadcalc_cycle(&thread, &mill, &asked, &found, sizeof found, &row->error);
    if (status == THREADCALC_STATUS_OK) {
        compare(row, &found);
    }
    return status;
}

void reference_cycles(void)
{
    csv_run("cycle", cycle);
}
