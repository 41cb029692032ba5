/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* Eight threads of the system over one thread value: no call writes to what it is given, so all read the same. */
#include <pthread.h>
#include <stdio.h>
#include <string.h>

#include "threadcalc.h"

#define WORKERS 8
#define ROUNDS 2000

static const char designation[] = "7/16-14 UNC-2B";
static const char job[] = "{\"schema\":1,\"thread\":\"M8x1.25-6H\",\"unit\":\"mm\",\"mode\":\"per_minute\",\"decimals\":3,"
                          "\"rpm\":600,\"hole\":\"blind\",\"full_thread_depth_mm\":16,\"tap\":\"cut\"}";

/* All that one round of calls says. Shared by every worker: the thread. */
typedef struct {
    char text[64];
    char word[32];
    char plan[20000];
    threadcalc_profile_t profile;
} said_t;

static threadcalc_thread_t thread;
static said_t alone;

static int say(said_t *said)
{
    size_t needed = 0;

    memset(said, 0, sizeof *said);
    return threadcalc_thread_write(&thread, said->text, sizeof said->text, &needed, NULL) ||
           threadcalc_feed_word((const uint8_t *)designation, strlen(designation), 650, THREADCALC_UNIT_MM,
                                THREADCALC_MODE_PER_MINUTE, 3, said->word, sizeof said->word, &needed) ||
           threadcalc_plan_json((const uint8_t *)job, strlen(job), said->plan, sizeof said->plan, &needed) ||
           threadcalc_profile(&thread, &said->profile, sizeof said->profile, NULL);
}

static void *work(void *result)
{
    static _Thread_local said_t said;
    int *different = result;

    for (int round = 0; round < ROUNDS; round++) {
        *different += say(&said) != 0 || memcmp(&said, &alone, sizeof said) != 0;
    }
    return NULL;
}

int main(void)
{
    pthread_t workers[WORKERS];
    int different[WORKERS] = {0};
    int failed = threadcalc_thread_read((const uint8_t *)designation, strlen(designation), &thread, NULL) || say(&alone);

    for (int place = 0; place < WORKERS; place++) {
        failed += pthread_create(&workers[place], NULL, work, &different[place]) != 0;
    }
    for (int place = 0; place < WORKERS; place++) {
        failed += pthread_join(workers[place], NULL) != 0 || different[place] != 0;
    }
    printf("shared: %d passed, %d failed\n", failed == 0, failed != 0);
    return failed != 0;
}
