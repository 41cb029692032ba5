/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* The table of compared programs, through JSON. */
#include "reference.h"

#include <stdio.h>
#include <string.h>

enum { MOST_TEXT = 4096, MOST_ANSWER = 65536 };

/* Adds the key=value pairs of a cell as members of a JSON object. */
static void members(char *json, size_t room, const char *cell)
{
    char pairs[1024], *rest = pairs;
    const char *between = "";
    snprintf(pairs, sizeof pairs, "%s", cell);
    while (*rest) {
        char *const behind = strstr(rest, "; "), *const value = strchr(rest, '=');
        const size_t length = strlen(json);
        if (behind) {
            *behind = '\0';
        }
        *value = '\0';
        snprintf(json + length, room - length, "%s\"%s\":\"%s\"", between, rest, value + 1);
        between = ",";
        rest = behind ? behind + 2 : value + 1 + strlen(value + 1);
    }
}

static void request_of(csv_row *row, char *json, size_t room)
{
    const char *const dialect = csv_cell(row, "dialect");
    if (strncmp(dialect, "base=", 5) == 0) {
        snprintf(json, room, "{\"schema\":1,\"dialect\":\"%s\",\"options\":{", dialect + 5);
    } else {
        snprintf(json, room, "{\"schema\":1,\"dialect\":{");
        members(json, room, dialect);
        strcat(json, "},\"options\":{");
    }
    members(json, room, csv_cell(row, "options"));
    strcat(json, "}}");
}

/* The texts of the changes, with ";" for a comma: none needs an escape. */
static void texts(csv_row *row, const char *answer)
{
    static const char mark[] = "\"text\":\"";
    static char joined[MOST_TEXT], one[MOST_TEXT];
    const char *const end = strstr(answer, "\"before_not_checked\"");
    const char *at = answer;
    joined[0] = '\0';
    while ((at = strstr(at, mark)) != NULL && at < end) {
        size_t length = 0;
        for (at += sizeof mark - 1; *at != '"' && length + 1 < sizeof one; at++) {
            one[length++] = *at == ',' ? ';' : *at;
        }
        one[length] = '\0';
        reference_join(joined, sizeof joined, " | ", one);
    }
    csv_text_or_none(row, "text", joined);
}

static void not_compared(csv_row *row, const char *answer)
{
    const char *at = answer;
    char joined[256] = "", value[16], word[32];
    unsigned count;
    for (; (at = strstr(at, "{\"value\":")) != NULL; at++) {
        if (sscanf(at, "{\"value\":\"%15[a-z]\",\"count\":%u", value, &count) == 2) {
            snprintf(word, sizeof word, "%s:%u", value, count);
            reference_join(joined, sizeof joined, " ", word);
        }
    }
    csv_text_or_none(row, "not_compared", joined);
}

static void counts(csv_row *row, const char *answer)
{
    char numbers[64] = "no counts";
    unsigned before, after, changed, added, removed;
    const char *const at = strstr(answer, "\"counts\":{");
    if (at
        && sscanf(at, "\"counts\":{\"before\":%u,\"after\":%u,\"changed\":%u,\"added\":%u,\"removed\":%u}", &before,
                  &after, &changed, &added, &removed)
               == 5) {
        snprintf(numbers, sizeof numbers, "%u %u %u %u %u", before, after, changed, added, removed);
    }
    csv_text(row, "counts", numbers);
}

static int32_t compare(csv_row *row)
{
    static uint8_t old_program[MOST_TEXT], new_program[MOST_TEXT];
    static char request[2048], answer[MOST_ANSWER];
    const size_t old_length = reference_program(row, "old", old_program, sizeof old_program);
    const size_t new_length = reference_program(row, "new", new_program, sizeof new_program);
    size_t needed;
    int32_t status;
    request_of(row, request, sizeof request);
    status = threadcalc_compare_json(old_program, old_length, new_program, new_length, (const uint8_t *)request,
                                     strlen(request), answer, sizeof answer, &needed, &row->error);
    if (status == THREADCALC_STATUS_OK) {
        counts(row, answer);
        texts(row, answer);
        not_compared(row, answer);
    }
    return status;
}

void reference_compare(void)
{
    csv_run("nc_compare", compare);
}
