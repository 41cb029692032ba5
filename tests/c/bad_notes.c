/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* Hole notes and comments: no pointer, no room, no choice, and texts of any bytes. */
#include "bad_input.h"

enum { OK = THREADCALC_STATUS_OK, IS_NULL = THREADCALC_STATUS_NULL_POINTER };

static void of_hole_notes(void)
{
    static const int32_t numbers[] = {-1, 3, 99, INT32_MAX, INT32_MIN};
    static uint8_t long_text[401];
    threadcalc_hole_note_t note;
    threadcalc_error_t error;
    size_t place, half = sizeof note / 2;
    REFUSED(IS_NULL, note, threadcalc_read_hole_note(NULL, 2, 0, &note, sizeof note, NULL));
    CHECK(threadcalc_read_hole_note(TEXT("M8"), 0, NULL, sizeof note, NULL) == IS_NULL);
    REFUSED(THREADCALC_STATUS_STRUCTURE_SIZE, note, threadcalc_read_hole_note(TEXT("M8"), 0, &note, 0, NULL));
    for (place = 0; place < sizeof numbers / sizeof numbers[0]; place++) {
        REFUSED(THREADCALC_STATUS_UNKNOWN_VALUE, note,
                threadcalc_read_hole_note(TEXT("M8"), numbers[place], &note, sizeof note, NULL));
        CHECK(strcmp(threadcalc_sides_name(numbers[place] == 3 ? 4 : numbers[place]), "unknown") == 0);
        CHECK(strcmp(threadcalc_plating_name(numbers[place]), "unknown") == 0);
    }
    REFUSED(THREADCALC_STATUS_EMPTY, note, threadcalc_read_hole_note(TEXT(""), 0, &note, sizeof note, NULL));
    memset(long_text, ' ', sizeof long_text);
    REFUSED(THREADCALC_STATUS_TOO_LONG, note,
            threadcalc_read_hole_note(long_text, sizeof long_text, 0, &note, sizeof note, NULL));
    REFUSED(THREADCALC_STATUS_TOO_LONG, note,
            threadcalc_read_hole_note(long_text, SIZE_MAX, 0, &note, sizeof note, NULL));
    REFUSED(THREADCALC_STATUS_SERIES_MISMATCH, note,
            threadcalc_read_hole_note(TEXT("4X 1/4-20 UNF"), 0, &note, sizeof note, &error));
    CHECK(error.at == 10);
    memset(&note, 0xA5, sizeof note);
    CHECK(threadcalc_read_hole_note(TEXT("4X M8x1.25-6H 16 DEEP"), 1, &note, half, NULL) == OK);
    CHECK(note.thread.form == THREADCALC_FORM_METRIC && note.thread_at == 3 && note.thread_length == 10);
    CHECK(bad_input_untouched((const unsigned char *)&note + half, sizeof note - half));
    CHECK(threadcalc_read_hole_note(TEXT("\xD8" "8 THRU BLUE"), 1, &note, sizeof note, NULL) == OK);
    CHECK(note.thread.form == 0 && note.drill_through == 1 && note.count == 0 && note.finding_count == 1);
    CHECK(note.findings[0].id == THREADCALC_FINDING_NOT_READ && note.thread_depth_mm.denominator == 0);
}

static void of_comments(void)
{
    static const int32_t numbers[] = {-1, 2, INT32_MAX, INT32_MIN};
    threadcalc_found_thread_t found[4];
    size_t place, count = 0;
    int32_t has_more = 7;
    REFUSED(IS_NULL, found, threadcalc_read_comment(NULL, 2, 0, found, 4, &count, &has_more, NULL));
    REFUSED(IS_NULL, count, threadcalc_read_comment(TEXT("TAP M8"), 0, NULL, 4, &count, &has_more, NULL));
    REFUSED(IS_NULL, found, threadcalc_read_comment(TEXT("TAP M8"), 0, found, 4, NULL, &has_more, NULL));
    for (place = 0; place < sizeof numbers / sizeof numbers[0]; place++) {
        REFUSED(THREADCALC_STATUS_UNKNOWN_VALUE, found,
                threadcalc_read_comment(TEXT("M8"), numbers[place], found, 4, &count, &has_more, NULL));
    }
    CHECK(has_more == 7);
    REFUSED(THREADCALC_STATUS_BUFFER_TOO_SHORT, found,
            threadcalc_read_comment(TEXT("TAP M6, TAP M8"), 0, found, 1, &count, &has_more, NULL));
    CHECK(count == 2 && has_more == 7);
    CHECK(threadcalc_read_comment(TEXT("TAP M6, TAP M8"), 0, NULL, 0, &count, NULL, NULL)
          == THREADCALC_STATUS_BUFFER_TOO_SHORT && count == 2);
    memset(found, 0xA5, sizeof found);
    CHECK(threadcalc_read_comment(TEXT("TAP M6, TAP M8"), 0, found, 2, &count, NULL, NULL) == OK && count == 2);
    CHECK(found[1].at == 12 && found[1].length == 2 && found[1].thread.form == THREADCALC_FORM_METRIC);
    CHECK(bad_input_untouched(&found[2], 2 * sizeof found[0]));
    CHECK(threadcalc_read_comment(TEXT("TAP M3 M4 M5 M6 M8"), 0, found, 4, &count, &has_more, NULL) == OK);
    CHECK(count == 4 && has_more == 1);
    CHECK(threadcalc_read_comment(TEXT("M8"), 0, NULL, 0, &count, &has_more, NULL) == OK);
    CHECK(count == 0 && has_more == 0);
    CHECK(threadcalc_read_comment(TEXT("M8"), 1, found, 4, &count, &has_more, NULL) == OK && count == 1);
    CHECK(threadcalc_read_comment(TEXT(""), 1, found, 4, &count, &has_more, NULL) == OK && count == 0);
}

/* Every byte in every place of a note and a comment: read or refused, never out of bounds. */
static void of_any_bytes(void)
{
    static const char whole[] = "4X M8x1.25-6H 16 DEEP / #7 DRILL, G1/2";
    uint8_t text[sizeof whole - 1];
    threadcalc_hole_note_t note;
    threadcalc_found_thread_t found[4];
    size_t place, count = 0;
    int byte, held = 1;
    for (place = 0; place < sizeof text; place++) {
        for (byte = 0; byte < 256; byte++) {
            memcpy(text, whole, sizeof text);
            text[place] = (uint8_t)byte;
            if (threadcalc_read_hole_note(text, sizeof text, 1, &note, sizeof note, NULL) == OK) {
                held = held && note.thread_at >= 0 && note.thread_length >= 0;
                held = held && (size_t)(note.thread_at + note.thread_length) <= sizeof text;
            }
            held = held && threadcalc_read_comment(text, sizeof text, 1, found, 4, &count, NULL, NULL) == OK;
        }
    }
    CHECK(held);
}

void bad_notes(void)
{
    of_hole_notes();
    of_comments();
    of_any_bytes();
}
