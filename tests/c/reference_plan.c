/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* The table of whole plans: jobs as texts of keys and values, by structure and by JSON. */
#include "reference.h"
#include "reference_job_text.h"

#include <math.h>
#include <stdio.h>
#include <string.h>

enum { ROOM = 65536 };

/* The JSON door refuses and answers as the structure does. */
static void compare_doors(csv_row *row, const char *text, const threadcalc_job_t *job, int32_t wanted)
{
    static char given[ROOM], of_json[ROOM], of_job[ROOM];
    size_t needed = 0;
    int32_t got;
    reference_job_json(text, given, ROOM);
    got = threadcalc_plan_json((const uint8_t *)given, strlen(given), of_json, ROOM, &needed);
    if (got != wanted) {
        printf("%s:%s plan_json: status %d\n", row->table->name, csv_cell(row, "id"), (int)got);
        row->differences++;
    }
    if (wanted == THREADCALC_STATUS_OK
        && (threadcalc_plan_json_of_job(job, of_job, ROOM, &needed, NULL) != wanted || strcmp(of_json, of_job) != 0)) {
        printf("%s:%s plan_json and plan_json_of_job differ\n", row->table->name, csv_cell(row, "id"));
        row->differences++;
    }
}

static void names_of_findings(csv_row *row, const threadcalc_plan_t *plan)
{
    char all[1024] = "";
    int32_t place;
    for (place = 0; place < plan->finding_count; place++) {
        const size_t length = strlen(all);
        snprintf(all + length, sizeof all - length, "%s%s/%s", place ? " " : "",
                 threadcalc_finding_name(plan->findings[place].id),
                 threadcalc_severity_name(plan->findings[place].severity));
    }
    csv_text_or_none(row, "findings", all);
    all[0] = '\0';
    for (place = 0; place < plan->withheld_count; place++) {
        const size_t length = strlen(all);
        snprintf(all + length, sizeof all - length, "%s%s", place ? " " : "", threadcalc_finding_name(plan->withheld[place]));
    }
    csv_text_or_none(row, "withheld", all);
}

static void results(csv_row *row, const threadcalc_plan_t *plan)
{
    const threadcalc_spindle_t *spindle = &plan->spindle;
    const threadcalc_ratio_t none = {0, 0};
    const int32_t tap_class = plan->has_tap_class ? plan->tap_class.tap_class : 0;
    char text[32];
    csv_double(row, "torque_nm", spindle->has_torque ? spindle->torque.likely_nm : (double)NAN);
    csv_double(row, "power_kw", spindle->power_kw);
    csv_double(row, "time_s", spindle->time.time_s);
    csv_double(row, "reached_rpm", spindle->time.reached_rpm);
    csv_exact(row, "extension_mm", spindle->has_holder_travel ? spindle->holder_travel.extension_mm : none);
    csv_text(row, "tap_class", tap_class ? threadcalc_iso_tap_class_name(tap_class) : "-");
    snprintf(text, sizeof text, "%s%d", threadcalc_limit_letter_name(plan->tap_limit.letter), (int)plan->tap_limit.number);
    csv_text(row, "tap_limit", plan->has_tap_limit ? text : "-");
    csv_text(row, "weakest", plan->has_joint ? threadcalc_weakest_name(plan->joint.weakest) : "-");
    csv_double(row, "required_length_mm", plan->has_joint ? plan->joint.required_length_mm : (double)NAN);
    csv_double(row, "safety_factor", plan->has_joint ? plan->joint.safety_factor : (double)NAN);
    csv_double(row, "lost_mm", plan->has_countersink ? plan->countersink.full_thread_lost_mm : (double)NAN);
    snprintf(text, sizeof text, "%d", (int)plan->not_go.most_turns);
    csv_text(row, "not_go_turns", plan->has_not_go ? text : "-");
}

/* A range as two numbers, - if there is none. */
static void formed(csv_row *row, const threadcalc_range_t *range)
{
    char low[48], high[48], both[100];
    size_t needed = 0;
    if (range->low.denominator == 0) {
        csv_text(row, "formed_minor_mm", "-");
    } else if (threadcalc_write_number(&range->low, low, sizeof low, &needed, NULL) == THREADCALC_STATUS_OK
               && threadcalc_write_number(&range->high, high, sizeof high, &needed, NULL) == THREADCALC_STATUS_OK) {
        snprintf(both, sizeof both, "%s %s", low, high);
        csv_text(row, "formed_minor_mm", both);
    }
}

static void blocks(csv_row *row, const threadcalc_plan_t *plan)
{
    char all[1024] = "";
    int32_t place;
    for (place = 0; place < plan->block_count; place++) {
        const size_t length = strlen(all);
        snprintf(all + length, sizeof all - length, "%s%s", place ? "; " : "", plan->blocks[place]);
    }
    csv_text(row, "blocks", all);
}

static int32_t whole_plan(csv_row *row)
{
    threadcalc_job_t job = THREADCALC_JOB_INIT;
    threadcalc_plan_t found;
    reference_job_parts parts;
    uint8_t text[4096];
    int32_t status;
    text[csv_bytes(row, "job", text, sizeof text - 1)] = '\0';
    status = reference_job_of_text((const char *)text, &job, &parts, row);
    if (status == THREADCALC_STATUS_OK) {
        status = threadcalc_plan(&job, &found, sizeof found, &row->error);
    }
    compare_doors(row, (const char *)text, &job, status);
    if (status != THREADCALC_STATUS_OK) {
        return status;
    }
    csv_text(row, "drill", found.tap_drill.chosen.drill.name);
    csv_exact(row, "programmed_rpm", found.programmed_rpm);
    csv_text(row, "word", found.feed.word);
    csv_exact(row, "program_tap_mm", found.depths.program_tap_mm);
    csv_exact(row, "full_diameter_mm", found.depths.full_diameter_mm);
    csv_double(row, "drill_point_mm", found.depths.drill_point_mm);
    results(row, &found);
    formed(row, &found.formed_minor_mm);
    blocks(row, &found);
    names_of_findings(row, &found);
    return status;
}

void reference_plans(void)
{
    csv_run("whole_plan", whole_plan);
}
