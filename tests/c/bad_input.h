/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* Counted checks, and the good inputs that the bad ones differ from in one place. */
#ifndef BAD_INPUT_H
#define BAD_INPUT_H

#include <string.h>

#include "threadcalc.h"

/* One check: true or a line with the place. */
#define CHECK(condition) bad_input_check((condition), #condition, __FILE__, __LINE__)

/* The call returns this status and leaves the output as it was. */
#define REFUSED(status, output, call)                                                                 \
    do {                                                                                              \
        memset(&(output), 0xA5, sizeof(output));                                                      \
        CHECK((call) == (status) && bad_input_untouched(&(output), sizeof(output)));                  \
    } while (0)

/* A string literal as pointer and length. */
#define TEXT(literal) (const uint8_t *)(literal), sizeof(literal) - 1

void bad_input_check(int good, const char *what, const char *file, int line);
int bad_input_untouched(const void *output, size_t size);

threadcalc_ratio_t ratio(int64_t numerator, int64_t denominator);
threadcalc_thread_t good_thread(void);
threadcalc_feed_request_t good_feed(void);
threadcalc_tap_drill_request_t good_drill(void);
threadcalc_depth_request_t good_depth(void);
threadcalc_taper_depth_request_t good_taper_depth(void);
threadcalc_engagement_request_t good_engagement(void);
threadcalc_motion_request_t good_motion(void);
threadcalc_gear_t good_gear(void);
threadcalc_dialect_t good_dialect(void);
threadcalc_cycle_request_t good_cycle(void);
threadcalc_job_t good_job(void);

/* A job as JSON that has a plan. */
#define GOOD_JSON                                                                                     \
    "{\"schema\":1,\"thread\":\"M8x1.25-6H\",\"rpm\":600,\"unit\":\"mm\",\"mode\":\"per_minute\","    \
    "\"decimals\":3,\"hole\":\"blind\",\"full_thread_depth_mm\":16,\"tap\":\"cut\""

void bad_pointers(void);
void bad_sizes(void);
void bad_buffers(void);
void bad_values(void);
void bad_threads(void);
void bad_notes(void);
void bad_limits(void);
void bad_strengths(void);
void bad_motions(void);
void bad_cycles(void);
void bad_json(void);
void bad_jobs(void);
void bad_taps(void);
void bad_gauges(void);
void bad_depths(void);
void bad_checks(void);
void bad_identify(void);

#endif
