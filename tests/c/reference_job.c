/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* The tables of plans, of single fields of a job, and of what the lead of a feed is off. */
#include "reference.h"

#include <stdio.h>
#include <string.h>

enum { ROOM = 32768 };

/* A JSON text that grows; names and values of the tables need no escapes but those of `value`. */
typedef struct json {
    char text[4096];
    size_t length;
} json;

static void add(json *out, const char *format, const char *first, const char *second)
{
    out->length += (size_t)snprintf(out->text + out->length, sizeof out->text - out->length, format, first, second);
}

/* Columns that are fields of the job by the same name. */
static const char *const same[] = {"unit", "mode", "decimals", "rpm", "hole", "full_thread_depth_mm", "tap",
                                   "drill_sets", "drill_mm", "percent", "basis", "tap_set_on", "tap_centre_mm"};

/* An object of the columns that are given, under the names of the fields. */
static void add_object(json *out, csv_row *row, const char *name, const char *const (*members)[2])
{
    const char *between = "";
    size_t place;
    add(out, ",\"%s\":{%s", name, "");
    for (place = 0; place < 2; place++) {
        const char *cell = csv_cell(row, members[place][0]);
        if (*cell) {
            add(out, "%s\"%s\":", between, members[place][1]);
            add(out, "\"%s\"%s", cell, "");
            between = ",";
        }
    }
    add(out, "}%s%s", "", "");
}

/* The row's job as JSON: every value as text. */
static void job_json(csv_row *row, json *out)
{
    static const char *const machine[][2] = {{"speed_step", "speed_step"}, {"highest_rpm", "highest_rpm"}};
    static const char *const codes[][2] = {{"tap_rh", "tap_rh"}, {"tap_lh", "tap_lh"}};
    const char *dialect = csv_cell(row, "dialect");
    const char *thread = csv_cell(row, "designation");
    size_t place;
    memset(out, 0, sizeof *out);
    add(out, "{\"schema\":1%s%s", "", "");
    if (*thread) {
        add(out, ",\"thread\":\"%s\"%s", thread, "");
    }
    for (place = 0; place < sizeof same / sizeof same[0]; place++) {
        const char *cell = csv_cell(row, same[place]);
        if (*cell) {
            add(out, ",\"%s\":\"%s\"", same[place], cell);
        }
    }
    add_object(out, row, "machine", machine);
    if (strcmp(dialect, "own") == 0) {
        add_object(out, row, "dialect", codes);
    } else if (*dialect) {
        add(out, ",\"dialect\":\"%s\"%s", dialect, "");
    }
    add(out, "}%s%s", "", "");
}

/* The choices of the row's job. */
static void job_choices(csv_row *row, threadcalc_job_t *job, threadcalc_dialect_t *own)
{
    static const char *const modes[] = {"per_minute", "per_revolution"};
    static const char *const holes[] = {"through", "blind"};
    static const char *const set_on[] = {"front", "centre"};
    const char *dialect = csv_cell(row, "dialect");
    job->unit = reference_unit(row);
    job->mode = csv_choice(row, "mode", modes, 2);
    job->hole = csv_choice(row, "hole", holes, 2);
    job->tap = reference_tap(row);
    job->basis = reference_basis(row);
    job->tap_set_on = csv_choice(row, "tap_set_on", set_on, 2);
    job->drill_sets = reference_sets_of(csv_cell(row, "drill_sets"));
    job->dialect = *dialect ? own : NULL;
    own->base = THREADCALC_DIALECT_RS274NGC;
    if (strcmp(dialect, "own") == 0) {
        own->base = THREADCALC_DIALECT_OWN;
        snprintf(own->tap_rh, sizeof own->tap_rh, "%s", csv_cell(row, "tap_rh"));
        snprintf(own->tap_lh, sizeof own->tap_lh, "%s", csv_cell(row, "tap_lh"));
    }
}

/* The row's job as a structure, which points to its dialect. */
static int32_t job_structure(csv_row *row, threadcalc_job_t *job, threadcalc_dialect_t *own)
{
    const threadcalc_job_t begun = THREADCALC_JOB_INIT;
    const struct { const char *column; threadcalc_ratio_t *number; } numbers[] = {
        {"decimals", &job->decimals}, {"rpm", &job->rpm}, {"full_thread_depth_mm", &job->full_thread_depth_mm},
        {"drill_mm", &job->drill_mm}, {"percent", &job->percent}, {"tap_centre_mm", &job->tap_centre_mm},
        {"speed_step", &job->machine_speed_step}, {"highest_rpm", &job->machine_highest_rpm}};
    int32_t status = THREADCALC_STATUS_OK;
    size_t place;
    *job = begun;
    if (*csv_cell(row, "designation")) {
        status = reference_thread(row, &job->thread);
    }
    for (place = 0; status == THREADCALC_STATUS_OK && place < sizeof numbers / sizeof numbers[0]; place++) {
        status = reference_number(row, numbers[place].column, numbers[place].number);
    }
    job_choices(row, job, own);
    return status;
}

static void differs_if(csv_row *row, int differs, const char *what)
{
    if (differs) {
        printf("%s:%s %s\n", row->table->name, csv_cell(row, "id"), what);
        row->differences++;
    }
}

/* Both JSON doors, with and without an error, have the same answer as the structure. */
static void compare_doors(csv_row *row, const threadcalc_job_t *job, int32_t wanted)
{
    static char of_json[ROOM], of_job[ROOM], page[ROOM];
    const uint8_t *text;
    size_t needed = 0;
    json given;
    threadcalc_plan_t plan;
    job_json(row, &given);
    text = (const uint8_t *)given.text;
    differs_if(row, threadcalc_plan_json(text, given.length, of_json, ROOM, &needed) != wanted,
               "plan_json: other status");
    if (wanted != THREADCALC_STATUS_OK) {
        return;
    }
    differs_if(row, threadcalc_plan_json_of_job(job, of_job, ROOM, &needed, NULL) != wanted,
               "plan_json_of_job: refused");
    differs_if(row, strcmp(of_json, of_job) != 0, "plan_json and plan_json_of_job differ");
    differs_if(row, threadcalc_plan_text(job, page, ROOM, &needed, NULL) != wanted, "plan_text: refused");
    differs_if(row, threadcalc_plan(job, &plan, sizeof plan, NULL) != wanted || !strstr(page, plan.feed.word),
               "plan_text: does not show the word");
}

static void plan_lists(csv_row *row, const threadcalc_plan_t *plan)
{
    char card[8][64], withheld[5][64], findings[20][64], number[64];
    size_t needed = 0;
    int32_t place;
    for (place = 0; place < plan->card_count; place++) {
        (void)threadcalc_write_number(&plan->card[place].rpm, number, sizeof number, &needed, NULL);
        snprintf(card[place], sizeof card[place], "S%.20s=%s", number, plan->card[place].word);
    }
    for (place = 0; place < plan->withheld_count; place++) {
        snprintf(withheld[place], sizeof withheld[place], "%s", threadcalc_finding_name(plan->withheld[place]));
    }
    for (place = 0; place < plan->finding_count; place++) {
        snprintf(findings[place], sizeof findings[place], "%s/%s", threadcalc_finding_name(plan->findings[place].id),
                 threadcalc_severity_name(plan->findings[place].severity));
    }
    reference_joined(row, "card", " ", card[0], sizeof card[0], plan->card_count);
    reference_joined(row, "withheld", " ", withheld[0], sizeof withheld[0], plan->withheld_count);
    reference_joined(row, "findings", " ", findings[0], sizeof findings[0], plan->finding_count);
    reference_joined(row, "blocks", "; ", plan->blocks[0], sizeof plan->blocks[0], plan->block_count);
    reference_joined(row, "restore", " ", plan->restore[0], sizeof plan->restore[0], plan->restore_count);
}

/* The confidence with a dash for each blank. */
static void confidence(csv_row *row, int32_t number)
{
    char name[64];
    char *blank;
    snprintf(name, sizeof name, "%s", number ? threadcalc_confidence_name(number) : "");
    while ((blank = strchr(name, ' ')) != NULL) {
        *blank = '-';
    }
    csv_text_or_none(row, "confidence", name);
}

static int32_t plan(csv_row *row)
{
    threadcalc_job_t job;
    threadcalc_plan_t found;
    threadcalc_dialect_t own = THREADCALC_DIALECT_INIT;
    int32_t status = job_structure(row, &job, &own);
    if (status == THREADCALC_STATUS_OK) {
        status = threadcalc_plan(&job, &found, sizeof found, &row->error);
    }
    compare_doors(row, &job, status);
    if (status != THREADCALC_STATUS_OK) {
        return status;
    }
    status = reference_written(row, "thread", &found.thread);
    csv_text(row, "drill", found.tap_drill.chosen.drill.name);
    csv_exact(row, "programmed_rpm", found.programmed_rpm);
    csv_text(row, "word", found.feed.word);
    csv_exact(row, "axial_error_mm", found.axial_error_mm);
    csv_exact(row, "program_tap_mm", found.depths.program_tap_mm);
    plan_lists(row, &found);
    confidence(row, found.limits.confidence);
    return status;
}

/* A job with one field: what is required and missing next stands in the error of its plan. */
static int32_t job_field(csv_row *row)
{
    static char text[ROOM];
    uint8_t value[256];
    const char *key = csv_cell(row, "key");
    const char *point;
    const size_t length = csv_bytes(row, "value", value, sizeof value - 1);
    size_t needed = 0, depth = 0;
    json given;
    char room[32];
    int32_t status;
    value[length] = '\0';
    memset(&given, 0, sizeof given);
    add(&given, "{\"schema\":1,%s%s", "", "");
    for (; (point = strchr(key, '.')) != NULL; key = point + 1, depth++) {
        snprintf(room, sizeof room, "%.*s", (int)(point - key), key);
        add(&given, "\"%s\":{%s", room, "");
    }
    add(&given, "\"%s\":\"%s\"", key, (const char *)value);
    for (; depth > 0; depth--) {
        add(&given, "}%s%s", "", "");
    }
    add(&given, "}%s%s", "", "");
    status = threadcalc_plan_json_with_error((const uint8_t *)given.text, given.length, text, ROOM, &needed,
                                             &row->error);
    if (status != THREADCALC_STATUS_MISSING) {
        return status;
    }
    csv_text(row, "next_missing", threadcalc_field_name(row->error.field));
    return THREADCALC_STATUS_OK;
}

/* The axial error is the plan's: no call has a depth and a feed only. */
static int32_t axial_error(csv_row *row, const threadcalc_thread_t *thread, const threadcalc_feed_request_t *asked)
{
    threadcalc_job_t job = THREADCALC_JOB_INIT;
    threadcalc_plan_t found;
    int32_t status;
    job.thread = *thread;
    job.unit = asked->unit;
    job.mode = asked->mode;
    job.decimals = asked->decimals;
    job.hole = THREADCALC_HOLE_THROUGH;
    job.tap = THREADCALC_TAP_CUT;
    job.drill_mm = thread->pitch_mm;
    status = reference_number(row, "rpm", &job.rpm);
    if (status == THREADCALC_STATUS_OK) {
        status = reference_number(row, "depth_mm", &job.full_thread_depth_mm);
    }
    if (status == THREADCALC_STATUS_OK) {
        status = threadcalc_plan(&job, &found, sizeof found, &row->error);
    }
    if (status == THREADCALC_STATUS_OK) {
        csv_exact(row, "axial_error_mm", found.axial_error_mm);
    }
    return status;
}

static int32_t feed_error(csv_row *row)
{
    static const char *const modes[] = {"per_minute", "per_revolution"};
    threadcalc_feed_request_t asked = THREADCALC_FEED_REQUEST_INIT;
    threadcalc_thread_t thread;
    threadcalc_feed_t found;
    int32_t status = reference_thread(row, &thread);
    asked.unit = reference_unit(row);
    asked.mode = csv_choice(row, "mode", modes, 2);
    if (status == THREADCALC_STATUS_OK && asked.mode == THREADCALC_MODE_PER_MINUTE) {
        status = reference_number(row, "rpm", &asked.rpm);
    }
    if (status == THREADCALC_STATUS_OK) {
        asked.lead_mm = thread.lead_mm;
        status = reference_number(row, "decimals", &asked.decimals);
    }
    if (status == THREADCALC_STATUS_OK) {
        status = threadcalc_feed(&asked, &found, sizeof found, &row->error);
    }
    if (status != THREADCALC_STATUS_OK) {
        return status;
    }
    csv_text(row, "text", found.word + 1);
    csv_exact(row, "value", found.value);
    csv_exact(row, "lead_cut_mm", found.lead_cut_mm);
    return axial_error(row, &thread, &asked);
}

void reference_jobs(void)
{
    csv_run("plan", plan);
    csv_run("job_field", job_field);
    csv_run("feed_error", feed_error);
}
