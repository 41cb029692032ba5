/* Plans one tapped hole in one call and prints the plan: a clamp-bar hole in the eight-valve body of
   the demo shop, which makes irrigation manifolds. */
#include <stdio.h>
#include <string.h>

#include "threadcalc.h"

int main(void)
{
    const char *designation = "7/16-14 UNC-2B";
    static char text[16384];
    threadcalc_job_t job = THREADCALC_JOB_INIT;
    threadcalc_dialect_t dialect = THREADCALC_DIALECT_INIT;
    threadcalc_error_t error;
    size_t needed;

    if (threadcalc_abi_version() != THREADCALC_ABI_VERSION) {
        fprintf(stderr, "the library is not the one this program was built for\n");
        return 2;
    }
    if (threadcalc_thread_read((const uint8_t *)designation, strlen(designation), &job.thread, &error)) {
        fprintf(stderr, "%s\n", error.message);
        return 1;
    }
    job.rpm = (threadcalc_ratio_t){650, 1};
    job.unit = THREADCALC_UNIT_MM;
    job.mode = THREADCALC_MODE_PER_MINUTE;
    job.decimals = (threadcalc_ratio_t){3, 1};
    job.hole = THREADCALC_HOLE_BLIND;
    job.full_thread_depth_mm = (threadcalc_ratio_t){20, 1};
    job.tap = THREADCALC_TAP_CUT;
    dialect.base = THREADCALC_DIALECT_RS274NGC;
    job.dialect = &dialect;
    if (threadcalc_plan_text(&job, text, sizeof text, &needed, &error)) {
        fprintf(stderr, "%s\n", error.message);
        return 1;
    }
    fputs(text, stdout);
    return 0;
}
