/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* One fault, named by the argument, that a checker of memory has to see; none without an argument. */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "threadcalc.h"

static const uint8_t designation[] = "M8x1.25-6H";

/* The library is told of room that is not there: its own write goes over the end. */
static int overrun(char *text, size_t capacity)
{
    threadcalc_thread_t thread;
    size_t needed = 0;
    return threadcalc_thread_read(designation, sizeof designation - 1, &thread, NULL)
        || threadcalc_thread_write(&thread, text, capacity, &needed, NULL);
}

int main(int argc, char **argv)
{
    const char *fault = argc > 1 ? argv[1] : "none";
    char *volatile text = malloc(16);
    volatile int largest = 2147483647;
    int failed;
    if (!text) {
        return 1;
    }
    failed = overrun(text, strcmp(fault, "overrun") == 0 ? 0 : 16);
    if (strcmp(fault, "overrun") == 0) {
        char *volatile shorter = malloc(8);
        failed = !shorter || overrun(shorter, 16);
        free(shorter);
    } else if (strcmp(fault, "overflow") == 0) {
        text[16] = 1;
    } else if (strcmp(fault, "undefined") == 0) {
        largest = largest + argc;
    } else if (strcmp(fault, "leak") == 0) {
        text = NULL;
    }
    free(text);
    printf("planted: %s %d\n", fault, failed);
    return failed;
}
