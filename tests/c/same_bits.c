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

static threadcalc_ratio_t one_of(uint64_t place, uint64_t first, uint64_t second)
{
    const uint64_t choices[] = {0, first, second};
    return parts(choices[place], place ? 1 : 0);
}

static void draw_machine(threadcalc_job_t *job)
{
    static const int64_t gears[2][3] = {{20, 600, 40}, {20, 4000, 8}};
    int32_t place;
    job->machine_acceleration_rpm_s = one_of(pick(3), 500, 4000);
    job->machine_axis_feed_limit_mm_min = one_of(pick(3), 1000, 4000);
    job->machine_gear_count = (int32_t)pick(3);
    for (place = 0; place < job->machine_gear_count; place++) {
        threadcalc_gear_t *gear = &job->machine_gears[place];
        gear->lowest_rpm = parts((uint64_t)gears[place][0], 1);
        gear->highest_rpm = parts((uint64_t)gears[place][1], 1);
        gear->point_count = 1;
        gear->points[0].rpm = gear->lowest_rpm;
        gear->points[0].torque_nm = (double)gears[place][2];
    }
}

static void draw_screw(threadcalc_job_t *job)
{
    const uint64_t screw = pick(3);
    if (screw == 1) {
        job->screw.property_class = THREADCALC_PROPERTY_CLASS_8_8;
        job->part_shear_mpa = parts(200, 1);
    } else if (screw == 2) {
        job->screw.tensile_mpa = parts(900, 1);
        job->screw.load_n = parts(5000, 1);
        job->part_shear_mpa = parts(250, 1);
    }
}

/* The draws behind the one that says whether they are used. */
static void draw_rest(threadcalc_job_t *job, uint64_t drill)
{
    static const threadcalc_ratio_t none = {0, 0};
    static const char *const names[] = {"#7", "F", "6.8", "8.5"};
    static threadcalc_drill_t drills[4];
    uint64_t underfeed, speed, surface, form;
    threadcalc_ratio_t drilled;
    size_t place;
    if (pick(2)) {
        job->full_thread_depth_mm = none;
    }
    job->holder = (int32_t)pick(3) + 1;
    underfeed = pick(4);
    job->underfeed_percent = job->holder == THREADCALC_HOLDER_RIGID ? none : parts(underfeed, 1);
    job->over_travel_turns = parts(pick(4), 2);
    speed = pick(3);
    surface = pick(40) + 2;
    if (speed) {
        job->rpm = none;
        *(speed == 1 ? &job->surface_speed_m_min : &job->surface_speed_ft_min) = parts(surface, 1);
    }
    job->material = (int32_t)pick(10) + 1;
    form = pick(20);
    job->chamfer_form = form < 10 ? 0 : (int32_t)form - 9;
    job->part_thickness_mm = one_of(pick(3), 10, 60);
    drilled = one_of(pick(3), 20, 45);
    if (job->hole != THREADCALC_HOLE_THROUGH) {
        job->drill_depth_mm = drilled;
    }
    place = (size_t)pick(6);
    job->countersink_mm = one_of(place < 3 ? 0 : place - 3, 12, 30);
    job->coating_um = one_of(pick(3), 5, 9);
    draw_machine(job);
    draw_screw(job);
    if (pick(2)) {
        job->hole_count = parts(12, 1);
    }
    if (pick(3) == 2 && drill == 0) {
        for (place = 0; place < 4; place++) {
            (void)threadcalc_read_drill((const uint8_t *)names[place], strlen(names[place]), &drills[place], NULL);
        }
        job->drill_list = drills;
        job->drill_list_count = 4;
    }
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
    if (pick(2)) {
        draw_rest(&job, drill);
    } else {
        threadcalc_job_t unused = THREADCALC_JOB_INIT;
        draw_rest(&unused, drill);
    }
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
