/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* Eight threads over one thread value: each gets the answers that one alone gets. With the argument `race` they
   also count in one place without a lock, which the checkers of data races have to see. */
#define _POSIX_C_SOURCE 200809L
#include <pthread.h>
#include <stdio.h>
#include <string.h>

#include "threadcalc.h"

enum { THREADS = 8, SPEEDS = 200, ROOM = 16384 };

typedef struct answers {
    char words[SPEEDS][32];
    double percents[SPEEDS];
    threadcalc_error_t error;
    char page[ROOM];
    int32_t status;
} answers;

static threadcalc_thread_t shared;
static threadcalc_job_t job;
static answers alone, together[THREADS];
static int racing = 0;
static long counted = 0;

static void count(void)
{
    if (racing) {
        counted++;
    }
}

/* Notes the first status that is not the one wanted. */
static void note(answers *out, int32_t status, int32_t wanted)
{
    if (out->status == THREADCALC_STATUS_OK && status != wanted) {
        out->status = status ? status : THREADCALC_STATUS_INTERNAL_FAULT;
    }
}

static void *answer(void *place)
{
    answers *out = place;
    const threadcalc_ratio_t drill_mm = {9347, 1000};
    threadcalc_feed_request_t asked = THREADCALC_FEED_REQUEST_INIT;
    threadcalc_thread_t none;
    threadcalc_feed_t feed;
    size_t needed = 0;
    int speed;
    memset(out, 0, sizeof *out);
    asked.unit = THREADCALC_UNIT_MM;
    asked.mode = THREADCALC_MODE_PER_MINUTE;
    asked.decimals = (threadcalc_ratio_t){3, 1};
    asked.lead_mm = shared.lead_mm;
    for (speed = 0; speed < SPEEDS; speed++) {
        asked.rpm = (threadcalc_ratio_t){300 + speed, 1};
        note(out, threadcalc_feed(&asked, &feed, sizeof feed, NULL), THREADCALC_STATUS_OK);
        memcpy(out->words[speed], feed.word, sizeof feed.word);
        note(out, threadcalc_percent_thread(&shared, &drill_mm, THREADCALC_TAP_CUT, THREADCALC_BASIS_THREE_QUARTERS_H,
                                            &out->percents[speed], NULL), THREADCALC_STATUS_OK);
        note(out, threadcalc_thread_read((const uint8_t *)"M8x", 3, &none, &out->error),
             THREADCALC_STATUS_UNREADABLE);
        count();
    }
    note(out, threadcalc_plan_text(&job, out->page, sizeof out->page, &needed, NULL), THREADCALC_STATUS_OK);
    return NULL;
}

static int prepare(void)
{
    static const char designation[] = "7/16-14 UNC-2B";
    const threadcalc_job_t begun = THREADCALC_JOB_INIT;
    job = begun;
    job.unit = THREADCALC_UNIT_MM;
    job.mode = THREADCALC_MODE_PER_MINUTE;
    job.hole = THREADCALC_HOLE_BLIND;
    job.tap = THREADCALC_TAP_CUT;
    job.decimals = (threadcalc_ratio_t){3, 1};
    job.rpm = (threadcalc_ratio_t){650, 1};
    job.full_thread_depth_mm = (threadcalc_ratio_t){20, 1};
    if (threadcalc_thread_read((const uint8_t *)designation, strlen(designation), &shared, NULL)) {
        return 0;
    }
    job.thread = shared;
    return 1;
}

int main(int argc, char **argv)
{
    pthread_t threads[THREADS];
    unsigned passed = 0, failed = 0;
    int place;
    racing = argc > 1 && strcmp(argv[1], "race") == 0;
    if (!prepare()) {
        printf("threads: the thread cannot be read\n");
        return 1;
    }
    for (place = 0; place < THREADS; place++) {
        if (pthread_create(&threads[place], NULL, answer, &together[place])) {
            printf("threads: cannot start\n");
            return 1;
        }
    }
    for (place = 0; place < THREADS; place++) {
        pthread_join(threads[place], NULL);
    }
    answer(&alone);
    for (place = 0; place < THREADS; place++) {
        const int same = alone.status == THREADCALC_STATUS_OK && memcmp(&alone, &together[place], sizeof alone) == 0;
        *(same ? &passed : &failed) += 1;
    }
    printf("threads: %u passed, %u failed\n", passed, failed);
    return failed > 0 || passed == 0;
}
