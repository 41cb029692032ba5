/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* The samples of tests/nc with what is expected of them: in pieces through the handle, and whole through JSON. What is
   expected is read by a JSON library of its own. Run from the root of the repository with the names of the files. */
#include "reference.h"

#include <cjson/cJSON.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

enum { MOST_FOUND = 64, MOST_REPORT = 65536 };

typedef struct found {
    threadcalc_program_event_t holes[MOST_FOUND];
    threadcalc_program_event_t findings[MOST_FOUND];
    size_t hole_count;
    size_t finding_count;
} found;

static const size_t pieces[] = {1, 7, 64, 100000};
static unsigned failures;
/* FNV-1a of every report, each with a line feed behind it. */
static uint64_t hash = UINT64_C(0xCBF29CE484222325);

static void fail(const char *where, const char *what, const char *more)
{
    failures++;
    fprintf(stderr, "%s: %s%s%s\n", where, what, *more ? ": " : "", more);
}

static const cJSON *member(const cJSON *object, const char *key)
{
    return cJSON_GetObjectItemCaseSensitive(object, key);
}

/* All of a file, with a NUL behind it; NULL if it cannot be read. */
static char *file(const char *path, size_t *length)
{
    FILE *const open = fopen(path, "rb");
    char *text = NULL;
    long size;
    if (!open) {
        return NULL;
    }
    if (fseek(open, 0, SEEK_END) == 0 && (size = ftell(open)) >= 0 && fseek(open, 0, SEEK_SET) == 0) {
        text = malloc((size_t)size + 1);
        *length = text ? fread(text, 1, (size_t)size, open) : 0;
        if (text) {
            text[*length] = '\0';
        }
    }
    fclose(open);
    return text;
}

/* A value of a dialect as text: the members of a list have blanks between them. False for null. */
static int text_of(const cJSON *value, char *text, size_t capacity)
{
    const cJSON *item;
    *text = '\0';
    if (cJSON_IsArray(value)) {
        cJSON_ArrayForEach(item, value)
        {
            const size_t length = strlen(text);
            snprintf(text + length, capacity - length, "%s%s", length ? " " : "", item->valuestring);
        }
    } else if (cJSON_IsBool(value)) {
        snprintf(text, capacity, "%s", cJSON_IsTrue(value) ? "true" : "false");
    } else if (cJSON_IsNumber(value)) {
        snprintf(text, capacity, "%.15g", value->valuedouble);
    } else if (cJSON_IsString(value)) {
        snprintf(text, capacity, "%s", value->valuestring);
    }
    /* What a dialect says to be unknown is a member that is not set. */
    return !cJSON_IsNull(value) && strcmp(text, "unknown") != 0;
}

static void set(const char *where, threadcalc_dialect_t *mill, const char *prefix, const cJSON *fields)
{
    const cJSON *field;
    cJSON_ArrayForEach(field, fields)
    {
        char key[96], text[96];
        csv_row row;
        snprintf(key, sizeof key, "%s%s%s", prefix, *prefix ? "." : "", field->string);
        if (cJSON_IsObject(field)) {
            set(where, mill, key, field);
        } else if (text_of(field, text, sizeof text)
                   && reference_dialect_set(&row, mill, key, text) != THREADCALC_STATUS_OK) {
            fail(where, "a field of the dialect is not taken", key);
        }
    }
}

static void keep(void *place, const threadcalc_program_event_t *event)
{
    found *const all = place;
    if (event->kind == THREADCALC_EVENT_HOLE && all->hole_count < MOST_FOUND) {
        all->holes[all->hole_count++] = *event;
    } else if (event->kind == THREADCALC_EVENT_FINDING && all->finding_count < MOST_FOUND) {
        all->findings[all->finding_count++] = *event;
    }
}

/* The same to a millionth, or to the decimals that are printed. */
static int is_near(const cJSON *expected, double got)
{
    const double want = expected->valuedouble;
    char printed[40];
    const char *point;
    double within = fabs(want) * 1e-6;
    snprintf(printed, sizeof printed, "%.15g", want);
    point = strchr(printed, '.');
    if (point && strlen(point + 1) >= 3 && 0.5001 * pow(10.0, -(double)strlen(point + 1)) > within) {
        within = 0.5001 * pow(10.0, -(double)strlen(point + 1));
    }
    return fabs(got - want) <= within;
}

/* A null is an exact number that there is not. */
static int is_ratio(const cJSON *expected, threadcalc_ratio_t got)
{
    if (cJSON_IsNull(expected)) {
        return got.denominator == 0;
    }
    return got.denominator != 0 && is_near(expected, (double)got.numerator / (double)got.denominator);
}

static int is_hole(const cJSON *expected, const threadcalc_program_event_t *got)
{
    const cJSON *const hand = member(expected, "hand");
    return member(expected, "line")->valueint == (int)got->line && member(expected, "count")->valueint == (int)got->count
           && (cJSON_IsNull(hand) ? got->hand == THREADCALC_HAND_UNSET
                                  : strcmp(hand->valuestring, threadcalc_hand_name(got->hand)) == 0)
           && is_ratio(member(expected, "lead_mm"), got->lead_mm)
           && is_ratio(member(expected, "speed_rpm"), got->speed_rpm) && is_ratio(member(expected, "feed"), got->feed);
}

static int has_number(const cJSON *expected, const threadcalc_program_event_t *got)
{
    int32_t place;
    for (place = 0; place < got->number_count; place++) {
        const threadcalc_program_number_t *const number = &got->numbers[place];
        if (strcmp(threadcalc_program_number_name(number->key), expected->string) == 0) {
            return cJSON_IsString(expected) ? strcmp(number->text, expected->valuestring) == 0
                                            : !*number->text && is_near(expected, number->value);
        }
    }
    return 0;
}

static int is_finding(const cJSON *expected, const threadcalc_program_event_t *got)
{
    const cJSON *const certain = member(expected, "certain"), *number;
    if (strcmp(member(expected, "id")->valuestring, threadcalc_program_finding_name(got->id)) != 0
        || strcmp(member(expected, "severity")->valuestring, threadcalc_severity_name(got->severity)) != 0
        || member(expected, "line")->valueint != (int)got->line
        || (certain && cJSON_IsTrue(certain) != (got->is_certain != 0))) {
        return 0;
    }
    cJSON_ArrayForEach(number, member(expected, "numbers"))
    {
        if (!has_number(number, got)) {
            return 0;
        }
    }
    return 1;
}

static void compare_holes(const char *where, const cJSON *expected, const found *all)
{
    const cJSON *hole;
    size_t place = 0;
    if ((size_t)cJSON_GetArraySize(expected) != all->hole_count) {
        fail(where, "not as many holes as expected", "");
        return;
    }
    cJSON_ArrayForEach(hole, expected)
    {
        if (!is_hole(hole, &all->holes[place++])) {
            char *const text = cJSON_PrintUnformatted(hole);
            fail(where, "another hole than", text);
            free(text);
        }
    }
}

/* Every finding that is expected is there; what is there beside them is no more than an info. */
static void compare_findings(const char *where, const cJSON *run, const found *all)
{
    int is_met[MOST_FOUND] = {0};
    const cJSON *expected, *name;
    size_t place;
    cJSON_ArrayForEach(expected, member(run, "findings"))
    {
        for (place = 0; place < all->finding_count; place++) {
            if (!is_met[place] && is_finding(expected, &all->findings[place])) {
                break;
            }
        }
        if (place < all->finding_count) {
            is_met[place] = 1;
        } else {
            char *const text = cJSON_PrintUnformatted(expected);
            fail(where, "missing", text);
            free(text);
        }
    }
    for (place = 0; place < all->finding_count; place++) {
        const threadcalc_program_event_t *const got = &all->findings[place];
        int is_refused = got->severity != THREADCALC_SEVERITY_INFO;
        cJSON_ArrayForEach(name, member(run, "must_not"))
        {
            is_refused |= strcmp(name->valuestring, threadcalc_program_finding_name(got->id)) == 0;
        }
        if (!is_met[place] && is_refused) {
            fail(where, "not expected", got->message);
        }
    }
}

/* The run in pieces of a size: holes and findings. */
static void in_pieces(const char *where, const cJSON *run, const char *program, size_t length, size_t piece)
{
    static found all;
    threadcalc_dialect_t mill = THREADCALC_DIALECT_INIT;
    threadcalc_check_options_t options = THREADCALC_CHECK_OPTIONS_INIT;
    threadcalc_checker_t *const checker = malloc(threadcalc_checker_size());
    const cJSON *const told = member(run, "options");
    threadcalc_error_t error;
    char surface[40];
    int32_t status;
    memset(&all, 0, sizeof all);
    mill.base = THREADCALC_DIALECT_OWN;
    set(where, &mill, "", member(run, "dialect"));
    text_of(member(told, "surface_z_mm"), surface, sizeof surface);
    status = threadcalc_read_number((const uint8_t *)surface, strlen(surface), &options.surface_z_mm, &error);
    options.block_delete = cJSON_IsTrue(member(told, "block_delete")) ? THREADCALC_ANSWER_YES : THREADCALC_ANSWER_NO;
    options.evaluate_macros =
        cJSON_IsTrue(member(told, "evaluate_macros")) ? THREADCALC_ANSWER_YES : THREADCALC_ANSWER_NO;
    status = status ? status : threadcalc_checker_begin(checker, threadcalc_checker_size(), &mill, &options, &error);
    status = status ? status : reference_in_pieces(checker, (const uint8_t *)program, length, piece, keep, &all, &error);
    free(checker);
    if (status != THREADCALC_STATUS_OK) {
        fail(where, "refused", error.message);
        return;
    }
    compare_holes(where, member(run, "tapped_holes"), &all);
    compare_findings(where, run, &all);
}

/* The run through JSON: its report goes into the hash. */
static void whole(const char *where, const cJSON *run, const char *program, size_t length)
{
    static char report[MOST_REPORT];
    char *request, *byte;
    size_t needed = 0;
    threadcalc_error_t error;
    cJSON *const object = cJSON_CreateObject();
    cJSON_AddNumberToObject(object, "schema", 1);
    cJSON_AddItemToObject(object, "dialect", cJSON_Duplicate(member(run, "dialect"), 1));
    cJSON_AddItemToObject(object, "options", cJSON_Duplicate(member(run, "options"), 1));
    request = cJSON_PrintUnformatted(object);
    if (threadcalc_check_json((const uint8_t *)program, length, (const uint8_t *)request, strlen(request), report,
                              sizeof report, &needed, &error)
        != THREADCALC_STATUS_OK) {
        fail(where, "refused as JSON", error.message);
    }
    for (byte = report; *byte; byte++) {
        hash = (hash ^ (uint8_t)*byte) * UINT64_C(0x00000100000001B3);
    }
    hash = (hash ^ '\n') * UINT64_C(0x00000100000001B3);
    free(request);
    cJSON_Delete(object);
}

/* Every run of a file of expectations. Returns how many. */
static unsigned sample(const char *path)
{
    char name[256], where[320];
    size_t length = 0, size;
    unsigned runs = 0;
    const cJSON *run;
    char *const text = file(path, &length);
    cJSON *const expected = text ? cJSON_ParseWithLength(text, length) : NULL;
    char *program;
    if (!expected) {
        fail(path, "cannot be read", "");
        free(text);
        return 0;
    }
    snprintf(name, sizeof name, "%.*s/%s", (int)(strrchr(path, '/') - path), path, member(expected, "program")->valuestring);
    program = file(name, &length);
    if (program) {
        cJSON_ArrayForEach(run, member(expected, "runs"))
        {
            snprintf(where, sizeof where, "%s (%s)", name, member(run, "label")->valuestring);
            for (size = 0; size < sizeof pieces / sizeof pieces[0]; size++) {
                in_pieces(where, run, program, length, pieces[size]);
            }
            whole(where, run, program, length);
            runs++;
        }
    } else {
        fail(name, "cannot be read", "");
    }
    free(program);
    cJSON_Delete(expected);
    free(text);
    return runs;
}

int main(int count, char **paths)
{
    unsigned runs = 0;
    int place;
    char got[24];
    size_t length = 0;
    char *want;
    for (place = 1; place < count; place++) {
        runs += sample(paths[place]);
    }
    snprintf(got, sizeof got, "%016llx\n", (unsigned long long)hash);
    want = file("tests/same_bits/reports.txt", &length);
    if (!want || strcmp(want, got) != 0) {
        fail("tests/same_bits/reports.txt", "another hash of all reports", got);
    }
    free(want);
    printf("samples: %u runs, %u failures\n", runs, failures);
    return failures > 0 || runs != 17;
}
