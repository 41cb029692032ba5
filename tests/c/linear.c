/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* A program of one piece over and over, through the check: linear NUMBER BYTES. How much work that is, is counted by
   who runs it. Without arguments it says how many pieces it knows. */
#include "threadcalc.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

enum { PIECE = 4096 };

/* What a line, a block, a list and a call may be made of without end. The first of two texts stands once. */
static const char *const pieces[][2] = {
    {"", "X1 "},
    {"", "("},
    {"", "(M8)"},
    {"", "(M8 (M6 "},
    {"", "["},
    {"X", "[1+"},
    {"X1", "]"},
    {"#1=1\nX", "[#1*"},
    {"", "#1="},
    {"", "##"},
    {"", "1"},
    {"", "A"},
    {"", "/"},
    {"", "%"},
    {"", "%\n"},
    {"", "\r"},
    {"", " "},
    {"", "\xE4"},
    {"", "(TAP M8X1.25)\n"},
    {"", "T1 M6 (TAP M8)\n"},
    {"", "O7\n"},
    {"", "#1=[#1+1]\n"},
    {"G21 G90 G94 S500\nG84 Z-9. R5. F500.\n", "X1.\n"},
    {"G21 G90 G94 S500\n", "G84 X1. Y1. Z-9. R5. F500.\n"},
    {"G21 G90 G94 S500\nG84 Z-9. R5. F500.\n", "/X1.\nS400\n"},
    {"G21 G90 G94 S500\nG91 G81 Z-9. R5. F500.\n", "X1.\n"},
    {"G21 G90 G94 S500\nG84 Z-9. R5. F700.\n", "X1. F800.\n"},
};

static void drain(threadcalc_checker_t *checker)
{
    threadcalc_program_event_t event;
    while (threadcalc_checker_next(checker, &event, sizeof event, NULL) == THREADCALC_STATUS_OK
           && event.kind != THREADCALC_EVENT_NONE) {
    }
}

static int read_all(threadcalc_checker_t *checker, const char *text, size_t length)
{
    while (length > 0) {
        size_t taken = 0;
        const size_t size = length < PIECE ? length : PIECE;
        if (threadcalc_checker_read(checker, (const uint8_t *)text, size, &taken, NULL) != THREADCALC_STATUS_OK) {
            return 1;
        }
        drain(checker);
        text += taken;
        length -= taken;
    }
    return 0;
}

int main(int count, char **arguments)
{
    const size_t known = sizeof pieces / sizeof pieces[0];
    threadcalc_dialect_t mill = THREADCALC_DIALECT_INIT;
    threadcalc_checker_t *const checker = malloc(threadcalc_checker_size());
    size_t number, bytes, at;
    char *text;
    int failed;
    if (count != 3) {
        free(checker);
        return printf("%lu\n", (unsigned long)known) < 0;
    }
    number = (size_t)strtoul(arguments[1], NULL, 10) % known;
    bytes = (size_t)strtoul(arguments[2], NULL, 10);
    text = malloc(bytes + 1);
    for (at = 0; at < bytes; at++) {
        text[at] = pieces[number][1][at % strlen(pieces[number][1])];
    }
    mill.base = THREADCALC_DIALECT_RS274NGC;
    failed = threadcalc_checker_begin(checker, threadcalc_checker_size(), &mill, NULL, NULL) != THREADCALC_STATUS_OK
             || read_all(checker, pieces[number][0], strlen(pieces[number][0])) || read_all(checker, text, bytes)
             || threadcalc_checker_finish(checker, NULL) != THREADCALC_STATUS_OK;
    drain(checker);
    free(text);
    free(checker);
    return failed;
}
