/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* Jobs as texts of keys and values: into a structure, and as JSON. */
#include "reference.h"
#include "reference_job_text.h"

#include <stdio.h>
#include <string.h>

enum { KEY_ROOM = 64, VALUE_ROOM = 128 };

typedef struct pair {
    char room[KEY_ROOM];
    char key[KEY_ROOM];
    char value[VALUE_ROOM];
} pair;

/* The next pair of `key=value; key=value`; its key is parted at the point. Returns what is left, or NULL. */
static const char *next_pair(const char *text, pair *found)
{
    const char *end = strstr(text, "; ");
    const size_t length = end ? (size_t)(end - text) : strlen(text);
    char whole[KEY_ROOM + VALUE_ROOM];
    char *equals, *point;
    if (!*text) {
        return NULL;
    }
    snprintf(whole, sizeof whole, "%.*s", (int)length, text);
    equals = strchr(whole, '=');
    *equals = '\0';
    snprintf(found->value, sizeof found->value, "%s", equals + 1);
    point = strchr(whole, '.');
    snprintf(found->key, sizeof found->key, "%.63s", point ? point + 1 : whole);
    if (point) {
        *point = '\0';
    }
    snprintf(found->room, sizeof found->room, "%.63s", point ? whole : "");
    return text + length + (end ? 2 : 0);
}

/* The number of a name among those of a choice; -1 if there is none. */
static int32_t number_of(const char *name, const char *(THREADCALC_CALL *name_of)(int32_t))
{
    int32_t number;
    for (number = 1; number < 32; number++) {
        if (strcmp(name_of(number), name) == 0) {
            return number;
        }
    }
    return -1;
}

/* The place of a name in a list, from 1; -1 if it is not there. */
static int32_t place_of(const char *name, const char *const *names, int32_t count)
{
    int32_t place;
    for (place = 0; place < count; place++) {
        if (strcmp(names[place], name) == 0) {
            return place + 1;
        }
    }
    return -1;
}

/* Sets a choice. Returns 1 if the key is one. */
static int set_choice(threadcalc_job_t *job, const pair *given)
{
    static const char *const units[] = {"mm", "inch"};
    static const char *const modes[] = {"per_minute", "per_revolution"};
    static const char *const holes[] = {"through", "blind"};
    static const char *const taps[] = {"cut", "form"};
    static const char *const bases[] = {"3H/4", "5H/8"};
    static const char *const returns[] = {"r_plane", "initial"};
    static const char *const places[] = {"front", "centre"};
    static const char *const answers[] = {"true", "false"};
    const char *value = given->value;
    const struct { const char *key; int32_t *member; int32_t number; } choices[] = {
        {"unit", &job->unit, place_of(value, units, 2)},
        {"mode", &job->mode, place_of(value, modes, 2)},
        {"hole", &job->hole, place_of(value, holes, 2)},
        {"tap", &job->tap, place_of(value, taps, 2)},
        {"basis", &job->basis, place_of(value, bases, 2)},
        {"taper_reamer", &job->taper_reamer, place_of(value, answers, 2)},
        {"return_to", &job->return_to, place_of(value, returns, 2)},
        {"tap_set_on", &job->tap_set_on, place_of(value, places, 2)},
        {"tap_kind", &job->tap_kind, number_of(value, threadcalc_tap_kind_name)},
        {"chamfer_form", &job->chamfer_form, number_of(value, threadcalc_chamfer_form_name)},
        {"holder", &job->holder, number_of(value, threadcalc_holder_name)},
        {"material", &job->material, number_of(value, threadcalc_material_name)},
    };
    size_t place;
    if (!*given->room && strcmp(given->key, "drill_sets") == 0) {
        job->drill_sets = reference_sets_of(value);
        return 1;
    }
    if (strcmp(given->room, "screw") == 0 && strcmp(given->key, "property_class") == 0) {
        job->screw.property_class = number_of(value, threadcalc_property_class_name);
        return 1;
    }
    for (place = 0; !*given->room && place < sizeof choices / sizeof choices[0]; place++) {
        if (strcmp(choices[place].key, given->key) == 0) {
            *choices[place].member = choices[place].number;
            return 1;
        }
    }
    return 0;
}

/* Sets a text or a built-in dialect. Returns 1 if the key is one. */
static int set_text(threadcalc_job_t *job, threadcalc_dialect_t *dialect, const pair *given)
{
    char *member = NULL;
    size_t size = 0;
    if (!*given->room && strcmp(given->key, "dialect") == 0) {
        job->dialect = dialect;
        dialect->base = THREADCALC_DIALECT_RS274NGC;
        return 1;
    }
    if (!*given->room && strcmp(given->key, "tap_mark") == 0) {
        member = job->tap_mark;
        size = sizeof job->tap_mark;
    } else if (strcmp(given->room, "screw") == 0 && strcmp(given->key, "tolerance_class") == 0) {
        member = job->screw.tolerance_class;
        size = sizeof job->screw.tolerance_class;
    }
    if (member) {
        strncpy(member, given->value, size);
    }
    return member != NULL;
}

/* The drills of a list: names with commas between them. */
static int32_t add_drills(threadcalc_job_t *job, threadcalc_drill_t *drills, const char *names, csv_row *row)
{
    int32_t status = THREADCALC_STATUS_OK;
    job->drill_list = drills;
    while (status == THREADCALC_STATUS_OK && *names) {
        const size_t length = strcspn(names, ",");
        status = threadcalc_read_drill((const uint8_t *)names, length, &drills[job->drill_list_count++], &row->error);
        names += length + (names[length] == ',');
    }
    if (status != THREADCALC_STATUS_OK) {
        row->error.field = THREADCALC_FIELD_DRILL_LIST;
    }
    return status;
}

/* The member of a key that holds a number; NULL if there is none. */
static threadcalc_ratio_t *number_member(threadcalc_job_t *job, const pair *given)
{
#define OF_JOB(member) {"", #member, &job->member}
#define OF_MACHINE(member) {"machine", #member, &job->machine_##member}
#define OF_SCREW(member) {"screw", #member, &job->screw.member}
    const struct { const char *room; const char *key; threadcalc_ratio_t *member; } numbers[] = {
        OF_JOB(decimals), OF_JOB(rpm), OF_JOB(surface_speed_m_min), OF_JOB(surface_speed_ft_min),
        OF_JOB(full_thread_depth_mm), OF_JOB(chamfer_threads), OF_JOB(tap_centre_mm), OF_JOB(projection_mm),
        OF_JOB(holder_extension_mm), OF_JOB(holder_compression_mm), OF_JOB(underfeed_percent),
        OF_JOB(over_travel_turns), OF_JOB(drill_mm), OF_JOB(oversize_mm), OF_JOB(percent), OF_JOB(point_angle_deg),
        OF_JOB(bottom_clearance_mm), OF_JOB(drill_depth_mm), OF_JOB(part_thickness_mm), OF_JOB(countersink_mm),
        OF_JOB(countersink_angle_deg), OF_JOB(r_plane_mm), OF_JOB(peck_mm), OF_JOB(dwell_s),
        OF_JOB(coating_um), OF_JOB(cutting_force_n_mm2), OF_JOB(part_shear_mpa), OF_JOB(hole_count),
        OF_MACHINE(highest_rpm), OF_MACHINE(lowest_rpm), OF_MACHINE(speed_step),
        OF_MACHINE(axis_feed_limit_mm_min), OF_MACHINE(acceleration_rpm_s), OF_MACHINE(retract_factor),
        OF_MACHINE(least_clearance_turns), OF_SCREW(tensile_mpa), OF_SCREW(shear_mpa), OF_SCREW(engagement_mm),
        OF_SCREW(load_n)};
#undef OF_SCREW
#undef OF_MACHINE
#undef OF_JOB
    size_t place;
    for (place = 0; place < sizeof numbers / sizeof numbers[0]; place++) {
        if (strcmp(numbers[place].room, given->room) == 0 && strcmp(numbers[place].key, given->key) == 0) {
            return numbers[place].member;
        }
    }
    return NULL;
}

static int32_t read_number(const char *text, size_t length, threadcalc_ratio_t *number, csv_row *row)
{
    return threadcalc_read_number((const uint8_t *)text, length, number, &row->error);
}

/* A gear of one torque, which is all the table has: lowest and highest speed, torque. */
static int32_t add_gear(threadcalc_job_t *job, const char *value, csv_row *row)
{
    threadcalc_gear_t *gear = &job->machine_gears[job->machine_gear_count++];
    const char *first = strchr(value, ' ');
    const char *second = first ? strchr(first + 1, ' ') : NULL;
    threadcalc_ratio_t torque = {0, 0};
    int32_t status = read_number(value, (size_t)(first - value), &gear->lowest_rpm, row);
    if (status == THREADCALC_STATUS_OK) {
        status = read_number(first + 1, (size_t)(second - first - 1), &gear->highest_rpm, row);
    }
    if (status == THREADCALC_STATUS_OK) {
        status = read_number(second + 1, strlen(second + 1), &torque, row);
    }
    gear->point_count = 1;
    gear->points[0].rpm = gear->lowest_rpm;
    gear->points[0].torque_nm = (double)torque.numerator / (double)torque.denominator;
    return status;
}

static int32_t set(threadcalc_job_t *job, reference_job_parts *parts, const pair *given, csv_row *row)
{
    threadcalc_ratio_t *number;
    if (!*given->room && strcmp(given->key, "thread") == 0) {
        return threadcalc_thread_read((const uint8_t *)given->value, strlen(given->value), &job->thread, &row->error);
    }
    if (strcmp(given->key, "gears") == 0) {
        return add_gear(job, given->value, row);
    }
    if (strcmp(given->key, "drill_list") == 0) {
        return add_drills(job, parts->drills, given->value, row);
    }
    if (strcmp(given->room, "dialect") == 0) {
        job->dialect = &parts->dialect;
        parts->dialect.base = THREADCALC_DIALECT_OWN;
        return reference_dialect_set(row, &parts->dialect, given->key, given->value);
    }
    number = number_member(job, given);
    if (number) {
        return read_number(given->value, strlen(given->value), number, row);
    }
    return set_choice(job, given) || set_text(job, &parts->dialect, given) ? THREADCALC_STATUS_OK : THREADCALC_STATUS_UNKNOWN_KEY;
}

int32_t reference_job_of_text(const char *text, threadcalc_job_t *job, reference_job_parts *parts, csv_row *row)
{
    static const threadcalc_dialect_t begun = THREADCALC_DIALECT_INIT;
    int32_t status = THREADCALC_STATUS_OK;
    pair given;
    memset(parts, 0, sizeof *parts);
    parts->dialect = begun;
    while (status == THREADCALC_STATUS_OK && (text = next_pair(text, &given)) != NULL) {
        status = set(job, parts, &given, row);
    }
    return status;
}

static void add(char *json, size_t capacity, const char *text)
{
    const size_t length = strlen(json);
    snprintf(json + length, capacity - length, "%s", text);
}

/* The name of a pair behind `prefix`, or NULL if it does not begin so. */
static const char *name_behind(const pair *given, const char *prefix, char *name)
{
    snprintf(name, 2 * KEY_ROOM, "%s%s%s", given->room, *given->room ? "." : "", given->key);
    return strncmp(name, prefix, strlen(prefix)) == 0 ? name + strlen(prefix) : NULL;
}

/* Whether a pair of the job before `end` has a name that begins with `prefix`. */
static int stands_before(const char *job, const char *end, const char *prefix)
{
    char name[2 * KEY_ROOM];
    pair given;
    while ((job = next_pair(job, &given)) != NULL && job != end) {
        if (name_behind(&given, prefix, name)) {
            return 1;
        }
    }
    return 0;
}

/* The members below a prefix as JSON, every value as text; objects inside as deep as the points say. */
static void add_members(char *json, size_t capacity, const char *job, const char *prefix, const char *between)
{
    const char *left = job;
    char name[2 * KEY_ROOM], inner[2 * KEY_ROOM];
    pair given;
    while ((left = next_pair(left, &given)) != NULL) {
        const char *key = name_behind(&given, prefix, name);
        const size_t length = key ? strcspn(key, ".") : 0;
        if (!key) {
            continue;
        }
        if (key[length]) {
            name[(size_t)(key - name) + length + 1] = '\0';
            if (stands_before(job, left, name)) {
                continue;
            }
        }
        add(json, capacity, between);
        add(json, capacity, "\"");
        between = ",";
        snprintf(inner, sizeof inner, "%.*s\":", (int)length, key);
        add(json, capacity, inner);
        if (key[length]) {
            add(json, capacity, "{");
            add_members(json, capacity, job, name, "");
            add(json, capacity, "}");
        } else {
            add(json, capacity, "\"");
            add(json, capacity, given.value);
            add(json, capacity, "\"");
        }
    }
}

void reference_job_json(const char *job, char *json, size_t capacity)
{
    snprintf(json, capacity, "{\"schema\":1");
    add_members(json, capacity, job, "", ",");
    add(json, capacity, "}");
}
