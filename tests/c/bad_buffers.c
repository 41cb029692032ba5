/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* Buffers that are just long enough, one short, empty or not there. */
#include "bad_input.h"

enum { IS_SHORT = THREADCALC_STATUS_BUFFER_TOO_SHORT, OK = THREADCALC_STATUS_OK, ROOM = 16384 };

/* One call that writes a text, with everything else good. */
typedef threadcalc_status (*writer)(char *text, size_t capacity, size_t *needed);

static threadcalc_status designation(char *text, size_t capacity, size_t *needed)
{
    const threadcalc_thread_t thread = good_thread();
    return threadcalc_thread_write(&thread, text, capacity, needed, NULL);
}

static threadcalc_status size_text(char *text, size_t capacity, size_t *needed)
{
    const threadcalc_thread_t thread = good_thread();
    return threadcalc_thread_size_text(&thread, text, capacity, needed, NULL);
}

static threadcalc_status number(char *text, size_t capacity, size_t *needed)
{
    const threadcalc_ratio_t value = ratio(INT64_MIN + 1, INT64_MAX - 1);
    return threadcalc_write_number(&value, text, capacity, needed, NULL);
}

static threadcalc_status feed_word(char *text, size_t capacity, size_t *needed)
{
    return threadcalc_feed_word(TEXT("M8"), 600.0, 1, 1, 3, text, capacity, needed);
}

static threadcalc_status plan_text(char *text, size_t capacity, size_t *needed)
{
    const threadcalc_job_t job = good_job();
    return threadcalc_plan_text(&job, text, capacity, needed, NULL);
}

static threadcalc_status plan_json_of_job(char *text, size_t capacity, size_t *needed)
{
    const threadcalc_job_t job = good_job();
    return threadcalc_plan_json_of_job(&job, text, capacity, needed, NULL);
}

static threadcalc_status plan_json(char *text, size_t capacity, size_t *needed)
{
    return threadcalc_plan_json(TEXT(GOOD_JSON "}"), text, capacity, needed);
}

static void of_texts(void)
{
    static const writer writers[] = {designation, size_text, number,   feed_word,
                                     plan_text,   plan_json, plan_json_of_job};
    static char text[ROOM], again[ROOM];
    size_t place, needed = 0, exact = 0;
    for (place = 0; place < sizeof writers / sizeof writers[0]; place++) {
        const writer write = writers[place];
        CHECK(write(text, ROOM, &exact) == OK && exact == strlen(text) + 1 && exact > 1);
        needed = 0;
        CHECK(write(NULL, 0, &needed) == IS_SHORT && needed == exact);
        needed = 0;
        REFUSED(IS_SHORT, again, write(again, 0, &needed));
        CHECK(needed == exact);
        needed = 0;
        REFUSED(IS_SHORT, again, write(again, exact - 1, &needed));
        CHECK(needed == exact);
        needed = 0;
        memset(again, 0xA5, sizeof again);
        CHECK(write(again, exact, &needed) == OK && needed == exact && strcmp(text, again) == 0);
        CHECK(bad_input_untouched(again + exact, ROOM - exact));
    }
}

static void of_lists(void)
{
    static threadcalc_thread_t threads[4096];
    static threadcalc_drill_t drills[1024];
    threadcalc_finding_t findings[8];
    threadcalc_thread_t special;
    size_t exact = 0, count = 0;
    CHECK(threadcalc_standard_threads(0, 0, NULL, 0, &exact, NULL) == IS_SHORT && exact > 1 && exact < 4096);
    REFUSED(IS_SHORT, threads, threadcalc_standard_threads(0, 0, threads, exact - 1, &count, NULL));
    CHECK(count == exact);
    CHECK(threadcalc_standard_threads(0, 0, threads, exact, &count, NULL) == OK && count == exact);
    CHECK(threads[exact - 1].form != 0);
    CHECK(bad_input_untouched(threads + exact, sizeof threads - exact * sizeof threads[0]));
    CHECK(threadcalc_drills(1, NULL, 0, &exact, NULL) == IS_SHORT && exact > 1 && exact < 1024);
    REFUSED(IS_SHORT, drills, threadcalc_drills(1, drills, exact - 1, &count, NULL));
    CHECK(count == exact);
    CHECK(threadcalc_drills(1, drills, exact, &count, NULL) == OK && count == exact);
    CHECK(threadcalc_drills(0, NULL, 0, &count, NULL) == OK && count == 0);
    CHECK(threadcalc_thread_read(TEXT("M8x1.1"), &special, NULL) == OK);
    CHECK(threadcalc_thread_findings(&special, NULL, 0, &exact, NULL) == IS_SHORT && exact == 1);
    REFUSED(IS_SHORT, findings, threadcalc_thread_findings(&special, findings, 0, &count, NULL));
    CHECK(threadcalc_thread_findings(&special, findings, 1, &count, NULL) == OK && count == 1);
    CHECK(findings[0].id == THREADCALC_FINDING_NOT_STANDARD);
}

static void of_speeds(void)
{
    const threadcalc_ratio_t lead = ratio(127, 70), rpm = ratio(600, 1);
    int64_t speeds[4];
    size_t count = 99;
    memset(speeds, 0xA5, sizeof speeds);
    CHECK(threadcalc_exact_speeds(&lead, &rpm, 1, 3, 1, 0, NULL, 0, &count, NULL) == OK && count == 0);
    CHECK(threadcalc_exact_speeds(&lead, &rpm, 1, 3, 1, 0, speeds, 3, &count, NULL) == OK && count == 3);
    CHECK(speeds[0] % 7 == 0 && bad_input_untouched(&speeds[3], sizeof speeds[3]));
}

void bad_buffers(void)
{
    of_texts();
    of_lists();
    of_speeds();
}
