/* The feed word of a thread, its error, and the speeds at which it is exact. */
#include <stdio.h>
#include <string.h>

#include "threadcalc.h"

int main(void)
{
    const char *designation = "5/8-11 UNC-2B";
    threadcalc_feed_request_t request = THREADCALC_FEED_REQUEST_INIT;
    threadcalc_thread_t thread;
    threadcalc_feed_t feed;
    threadcalc_error_t error;
    int64_t speeds[3];
    size_t count = 0;

    if (threadcalc_thread_read((const uint8_t *)designation, strlen(designation), &thread, &error)) {
        fprintf(stderr, "%s\n", error.message);
        return 1;
    }
    request.unit = THREADCALC_UNIT_INCH;
    request.mode = THREADCALC_MODE_PER_MINUTE;
    request.lead_mm = thread.lead_mm;
    request.rpm = (threadcalc_ratio_t){450, 1};
    request.decimals = (threadcalc_ratio_t){2, 1};
    if (threadcalc_feed(&request, &feed, sizeof feed, &error)) {
        fprintf(stderr, "%s\n", error.message);
        return 1;
    }
    printf("%s at S450: %s, lead error %lld/%lld\n", designation, feed.word,
           (long long)feed.lead_error.numerator, (long long)feed.lead_error.denominator);
    if (threadcalc_exact_speeds(&request.lead_mm, &request.rpm, request.unit, 2, 1, 0, speeds, 3, &count, &error)) {
        fprintf(stderr, "%s\n", error.message);
        return 1;
    }
    for (size_t place = 0; place < count; place++) {
        printf("exact at S%lld\n", (long long)speeds[place]);
    }
    return 0;
}
