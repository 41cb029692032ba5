/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* 10,000 random plans hashed: every door has to print the same hash. Run from the root of the repository. */
#include <stdio.h>
#include <string.h>

#include "threadcalc.h"

enum { JOBS = 10000, MOST_THREADS = 1024, LONGEST_TEXT = 65536 };

static threadcalc_thread_t threads[MOST_THREADS];
static uint64_t thread_count = 0;
static uint64_t random_state = 20261125;
static uint64_t hash = UINT64_C(0xCBF29CE484222325);

static uint64_t pick(uint64_t count)
{
    uint64_t mixed;
    random_state += UINT64_C(0x9E3779B97F4A7C15);
    mixed = random_state;
    mixed = (mixed ^ (mixed >> 30)) * UINT64_C(0xBF58476D1CE4E5B9);
    mixed = (mixed ^ (mixed >> 27)) * UINT64_C(0x94D049BB133111EB);
    return (mixed ^ (mixed >> 31)) % count;
}

static void add(const char *text)
{
    for (; *text; text++) {
        hash = (hash ^ (uint8_t)*text) * UINT64_C(0x00000100000001B3);
    }
}

static void add_item(const char *text)
{
    add(text);
    add("|");
}

static void add_ratio(threadcalc_ratio_t value)
{
    char text[64];
    snprintf(text, sizeof text, "%lld/%lld|", (long long)value.numerator, (long long)value.denominator);
    add(text);
}

static void add_double(double value)
{
    uint64_t bits;
    char text[32];
    memcpy(&bits, &value, sizeof bits);
    snprintf(text, sizeof text, "%016llx|", (unsigned long long)bits);
    add(text);
}

static void add_texts(char (*texts)[32], int32_t count)
{
    int32_t place;
    for (place = 0; place < count; place++) {
        add(place ? " " : "");
        add(texts[place]);
    }
    add("|");
}

static int read_threads(void)
{
    char line[256];
    FILE *file = fopen("tests/same_bits/threads.txt", "r");
    if (!file) {
        return 0;
    }
    while (fgets(line, sizeof line, file)) {
        line[strcspn(line, "\r\n")] = '\0';
        if (line[0] == '#') {
            continue;
        }
        if (thread_count == MOST_THREADS
            || threadcalc_thread_read((const uint8_t *)line, strlen(line), &threads[thread_count], NULL) != 0) {
            fprintf(stderr, "threads.txt: %s\n", line);
            fclose(file);
            return 0;
        }
        thread_count++;
    }
    fclose(file);
    return thread_count > 0;
}

static threadcalc_ratio_t parts(uint64_t count, int64_t in_one)
{
    threadcalc_ratio_t value;
    value.numerator = (int64_t)count;
    value.denominator = in_one;
    return value;
}

/* One job by the draws of the README, all of them in its order, used or not. */
static threadcalc_job_t draw(void)
{
    static const uint64_t angles[] = {118, 130, 135, 140};
    static const threadcalc_dialect_t rs274ngc = {.size = (uint32_t)sizeof(threadcalc_dialect_t),
                                                  .base = THREADCALC_DIALECT_RS274NGC};
    threadcalc_job_t job = THREADCALC_JOB_INIT;
    uint64_t drill, percent, basis, sets;
    job.thread = threads[pick(thread_count)];
    job.unit = pick(2) ? THREADCALC_UNIT_INCH : THREADCALC_UNIT_MM;
    job.mode = pick(2) ? THREADCALC_MODE_PER_REVOLUTION : THREADCALC_MODE_PER_MINUTE;
    job.decimals = parts(pick(6) + 1, 1);
    job.rpm = parts(pick(60000) + 1, 10);
    job.hole = pick(2) ? THREADCALC_HOLE_BLIND : THREADCALC_HOLE_THROUGH;
    job.full_thread_depth_mm = parts(pick(4000) + 1, 100);
    job.tap = pick(2) ? THREADCALC_TAP_FORM : THREADCALC_TAP_CUT;
    drill = pick(3);
    percent = pick(26) + 50;
    basis = pick(2);
    sets = pick(15) + 1;
    if (drill == 1) {
        job.percent = parts(percent, 1);
        if (job.tap == THREADCALC_TAP_CUT) {
            job.basis = basis ? THREADCALC_BASIS_FIVE_EIGHTHS_H : THREADCALC_BASIS_THREE_QUARTERS_H;
        }
    }
    if (drill == 2) {
        job.drill_sets = (uint32_t)sets;
    }
    job.point_angle_deg = parts(angles[pick(4)], 1);
    job.dialect = pick(2) ? NULL : &rs274ngc;
    return job;
}

static int add_plan(const threadcalc_job_t *job, threadcalc_plan_t *plan)
{
    static char text[LONGEST_TEXT];
    size_t needed = 0;
    int32_t place;
    if (threadcalc_thread_write(&plan->thread, text, sizeof text, &needed, NULL) != 0) {
        return 0;
    }
    add_item(text);
    add_ratio(plan->thread.lead_mm);
    add_ratio(plan->programmed_rpm);
    add_item(plan->feed.word);
    add_ratio(plan->feed.value);
    add_ratio(plan->feed.lead_error);
    add_ratio(plan->axial_error_mm);
    add_ratio(plan->feed.lead_cut_mm);
    add_item(plan->tap_drill.chosen.drill.name);
    add_double(plan->tap_drill.chosen.percent);
    add_ratio(plan->depths.tap_mm);
    add_ratio(plan->depths.program_tap_mm);
    add_ratio(plan->depths.full_diameter_mm);
    add_double(plan->depths.drill_point_mm);
    add_texts(plan->words, plan->word_count);
    add_texts(plan->restore, plan->restore_count);
    for (place = 0; place < plan->finding_count; place++) {
        add(place ? " " : "");
        add(threadcalc_finding_name(plan->findings[place].id));
    }
    add("|");
    for (place = 0; place < plan->withheld_count; place++) {
        add(place ? " " : "");
        add(threadcalc_finding_name(plan->withheld[place]));
    }
    add("\n");
    /* The text of a plan ends in a line feed of its own. */
    if (threadcalc_plan_text(job, text, sizeof text, &needed, NULL) != 0) {
        return 0;
    }
    add(text);
    if (threadcalc_plan_json_of_job(job, text, sizeof text, &needed, NULL) != 0) {
        return 0;
    }
    add(text);
    add("\n");
    return 1;
}

/* Whether all plans were made; some jobs have an error instead of a plan. */
static int hash_all(void)
{
    int planned = 0;
    int number;
    if (!read_threads()) {
        return 0;
    }
    for (number = 0; number < JOBS; number++) {
        const threadcalc_job_t job = draw();
        threadcalc_plan_t plan;
        threadcalc_error_t error;
        const int32_t status = threadcalc_plan(&job, &plan, sizeof plan, &error);
        if (status == THREADCALC_STATUS_OK) {
            planned++;
            if (!add_plan(&job, &plan)) {
                fprintf(stderr, "job %d has a plan, but not its texts\n", number);
                return 0;
            }
        } else {
            add("error ");
            add(threadcalc_status_name(status));
            add(" ");
            add(threadcalc_field_name(error.field));
            add("\n");
        }
    }
    return planned > JOBS / 2;
}

int main(void)
{
    char want[64] = "";
    char got[64];
    FILE *file = fopen("tests/same_bits/expected.txt", "r");
    int same = 0;
    if (file && fgets(want, sizeof want, file)) {
        want[strcspn(want, "\r\n")] = '\0';
        same = hash_all();
    }
    if (file) {
        fclose(file);
    }
    snprintf(got, sizeof got, "%016llx", (unsigned long long)hash);
    if (!same || strcmp(want, got) != 0) {
        printf("want %s got %s\n", want, got);
        same = 0;
    }
    printf("same_bits: %d passed, %d failed\n", same, !same);
    return !same;
}
