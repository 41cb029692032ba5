/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* Taps: no pointer, no room, no choice, marks of any bytes and of any members. */
#include "bad_input.h"

enum {
    OK = THREADCALC_STATUS_OK,
    IS_NULL = THREADCALC_STATUS_NULL_POINTER,
    IS_SIZE = THREADCALC_STATUS_STRUCTURE_SIZE,
    IS_SHORT = THREADCALC_STATUS_BUFFER_TOO_SHORT,
    MISSING = THREADCALC_STATUS_MISSING,
    UNKNOWN = THREADCALC_STATUS_UNKNOWN_VALUE,
    RANGE = THREADCALC_STATUS_OUT_OF_RANGE
};

/* Numbers that are no choice of any kind. */
static const int32_t numbers[] = {-1, 11, 99, INT32_MAX, INT32_MIN};
enum { NUMBERS = sizeof numbers / sizeof numbers[0] };

static void of_kinds(void)
{
    threadcalc_tap_advice_t advice;
    threadcalc_tap tap;
    double factor;
    size_t place;
    CHECK(threadcalc_tap_of_kind(1, NULL, NULL) == IS_NULL);
    CHECK(threadcalc_tap_torque_factor(1, NULL, NULL) == IS_NULL);
    CHECK(threadcalc_tap_advice(1, 1, NULL, sizeof advice, NULL) == IS_NULL);
    REFUSED(IS_SIZE, advice, threadcalc_tap_advice(1, 1, &advice, 0, NULL));
    REFUSED(MISSING, tap, threadcalc_tap_of_kind(0, &tap, NULL));
    REFUSED(MISSING, factor, threadcalc_tap_torque_factor(0, &factor, NULL));
    REFUSED(MISSING, advice, threadcalc_tap_advice(0, 1, &advice, sizeof advice, NULL));
    REFUSED(MISSING, advice, threadcalc_tap_advice(1, 0, &advice, sizeof advice, NULL));
    for (place = 0; place < NUMBERS; place++) {
        REFUSED(UNKNOWN, tap, threadcalc_tap_of_kind(numbers[place], &tap, NULL));
        REFUSED(UNKNOWN, factor, threadcalc_tap_torque_factor(numbers[place], &factor, NULL));
        REFUSED(UNKNOWN, advice, threadcalc_tap_advice(numbers[place], 1, &advice, sizeof advice, NULL));
        REFUSED(UNKNOWN, advice, threadcalc_tap_advice(1, numbers[place], &advice, sizeof advice, NULL));
    }
    memset(&advice, 0xA5, sizeof advice);
    CHECK(threadcalc_tap_advice(THREADCALC_TAP_KIND_SPIRAL_FLUTE, THREADCALC_HOLE_BLIND, &advice, 16, NULL) == OK);
    CHECK(advice.suits == THREADCALC_SUITS_WELL && memcmp(advice.reason, "draws the ch", 12) == 0);
    CHECK(bad_input_untouched((const unsigned char *)&advice + 16, sizeof advice - 16));
    CHECK(threadcalc_tap_advice(THREADCALC_TAP_KIND_SPIRAL_FLUTE, THREADCALC_HOLE_BLIND, &advice, sizeof advice, NULL)
          == OK && strcmp(advice.reason, "draws the chips up and out") == 0);
}

static void of_chamfers(void)
{
    const threadcalc_ratio_t room = ratio(3, 1), none = ratio(0, 0), no_parts = ratio(1, 0);
    threadcalc_chamfer_form forms[10];
    threadcalc_chamfer_t chamfer;
    int32_t fits;
    size_t place, count = 0;
    CHECK(threadcalc_chamfer(1, NULL, sizeof chamfer, NULL) == IS_NULL);
    REFUSED(IS_SIZE, chamfer, threadcalc_chamfer(1, &chamfer, 0, NULL));
    REFUSED(MISSING, chamfer, threadcalc_chamfer(0, &chamfer, sizeof chamfer, NULL));
    REFUSED(IS_NULL, fits, threadcalc_chamfer_fits(1, 1, NULL, &fits, NULL));
    CHECK(threadcalc_chamfer_fits(1, 1, &room, NULL, NULL) == IS_NULL);
    REFUSED(MISSING, fits, threadcalc_chamfer_fits(0, 1, &room, &fits, NULL));
    REFUSED(MISSING, fits, threadcalc_chamfer_fits(1, 0, &room, &fits, NULL));
    REFUSED(MISSING, fits, threadcalc_chamfer_fits(1, 1, &none, &fits, NULL));
    REFUSED(RANGE, fits, threadcalc_chamfer_fits(1, 1, &no_parts, &fits, NULL));
    REFUSED(IS_NULL, forms, threadcalc_chamfers_that_fit(1, NULL, forms, 10, &count, NULL));
    REFUSED(IS_NULL, count, threadcalc_chamfers_that_fit(1, &room, NULL, 10, &count, NULL));
    REFUSED(IS_NULL, forms, threadcalc_chamfers_that_fit(1, &room, forms, 10, NULL, NULL));
    REFUSED(MISSING, forms, threadcalc_chamfers_that_fit(0, &room, forms, 10, &count, NULL));
    REFUSED(MISSING, forms, threadcalc_chamfers_that_fit(1, &none, forms, 10, &count, NULL));
    for (place = 0; place < NUMBERS; place++) {
        REFUSED(UNKNOWN, chamfer, threadcalc_chamfer(numbers[place], &chamfer, sizeof chamfer, NULL));
        REFUSED(UNKNOWN, fits, threadcalc_chamfer_fits(numbers[place], 1, &room, &fits, NULL));
        REFUSED(UNKNOWN, fits, threadcalc_chamfer_fits(1, numbers[place], &room, &fits, NULL));
        REFUSED(UNKNOWN, forms, threadcalc_chamfers_that_fit(numbers[place], &room, forms, 10, &count, NULL));
    }
    /* C, E, F, semi-bottoming and bottoming have three threads or less. */
    REFUSED(IS_SHORT, forms, threadcalc_chamfers_that_fit(2, &room, forms, 4, &count, NULL));
    CHECK(count == 5);
    memset(forms, 0xA5, sizeof forms);
    CHECK(threadcalc_chamfers_that_fit(2, &room, forms, 5, &count, NULL) == OK && count == 5);
    CHECK(forms[0] == THREADCALC_CHAMFER_FORM_C && bad_input_untouched(&forms[5], 5 * sizeof forms[0]));
}

static void of_classes(void)
{
    const threadcalc_thread_t thread = good_thread();
    const threadcalc_ratio_t plating = ratio(5, 1), none = ratio(0, 0), no_parts = ratio(5, 0);
    const threadcalc_ratio_t negative = ratio(-1, 1), hot_dip = ratio(1001, 1);
    threadcalc_iso_tap_t tap, without;
    threadcalc_range_t range;
    size_t place;
    REFUSED(IS_NULL, tap, threadcalc_iso_tap(NULL, &plating, &tap, sizeof tap, NULL));
    CHECK(threadcalc_iso_tap(&thread, &plating, NULL, sizeof tap, NULL) == IS_NULL);
    REFUSED(IS_SIZE, tap, threadcalc_iso_tap(&thread, &plating, &tap, 0, NULL));
    REFUSED(RANGE, tap, threadcalc_iso_tap(&thread, &no_parts, &tap, sizeof tap, NULL));
    REFUSED(RANGE, tap, threadcalc_iso_tap(&thread, &negative, &tap, sizeof tap, NULL));
    REFUSED(RANGE, tap, threadcalc_iso_tap(&thread, &hot_dip, &tap, sizeof tap, NULL));
    CHECK(threadcalc_iso_tap(&thread, NULL, &tap, sizeof tap, NULL) == OK);
    CHECK(threadcalc_iso_tap(&thread, &none, &without, sizeof without, NULL) == OK);
    CHECK(memcmp(&tap, &without, sizeof tap) == 0 && tap.tap_class == 2 && tap.closing_mm.numerator == 0);
    REFUSED(IS_NULL, range, threadcalc_iso_tap_pitch_diameter_mm(NULL, 2, &range, NULL));
    CHECK(threadcalc_iso_tap_pitch_diameter_mm(&thread, 2, NULL, NULL) == IS_NULL);
    REFUSED(MISSING, range, threadcalc_iso_tap_pitch_diameter_mm(&thread, 0, &range, NULL));
    for (place = 0; place < NUMBERS; place++) {
        REFUSED(UNKNOWN, range, threadcalc_iso_tap_pitch_diameter_mm(&thread, numbers[place], &range, NULL));
    }
}

static void of_limits(void)
{
    static const int32_t out_of_range[] = {0, 31, -1, 256 + 3, INT32_MAX, INT32_MIN};
    const threadcalc_thread_t thread = good_thread();
    const threadcalc_ratio_t plating = ratio(8, 1), negative = ratio(-1, 1);
    const threadcalc_tap_limit_t good = {THREADCALC_LIMIT_LETTER_D, 5};
    threadcalc_tap_limit_t limit = {0, 0}, found;
    threadcalc_range_t range;
    threadcalc_error_t error;
    size_t place;
    REFUSED(IS_NULL, range, threadcalc_tap_limit_above_basic_mm(NULL, &thread, &range, NULL));
    REFUSED(IS_NULL, range, threadcalc_tap_limit_above_basic_mm(&good, NULL, &range, NULL));
    CHECK(threadcalc_tap_limit_above_basic_mm(&good, &thread, NULL, NULL) == IS_NULL);
    REFUSED(IS_NULL, range, threadcalc_tap_limit_pitch_diameter_mm(NULL, &thread, &range, NULL));
    REFUSED(IS_NULL, range, threadcalc_tap_limit_pitch_diameter_mm(&good, NULL, &range, NULL));
    CHECK(threadcalc_tap_limit_pitch_diameter_mm(&good, &thread, NULL, NULL) == IS_NULL);
    REFUSED(MISSING, range, threadcalc_tap_limit_above_basic_mm(&limit, &thread, &range, NULL));
    REFUSED(MISSING, range, threadcalc_tap_limit_pitch_diameter_mm(&limit, &thread, &range, NULL));
    for (place = 0; place < sizeof out_of_range / sizeof out_of_range[0]; place++) {
        limit.letter = THREADCALC_LIMIT_LETTER_H;
        limit.number = out_of_range[place];
        REFUSED(RANGE, range, threadcalc_tap_limit_above_basic_mm(&limit, &thread, &range, &error));
        CHECK(error.got == (double)out_of_range[place] && error.low == 1.0 && error.high == 30.0);
        REFUSED(RANGE, range, threadcalc_tap_limit_pitch_diameter_mm(&limit, &thread, &range, NULL));
    }
    for (place = 0; place < NUMBERS; place++) {
        limit.letter = numbers[place];
        limit.number = 3;
        REFUSED(UNKNOWN, range, threadcalc_tap_limit_above_basic_mm(&limit, &thread, &range, NULL));
        REFUSED(UNKNOWN, range, threadcalc_tap_limit_pitch_diameter_mm(&limit, &thread, &range, NULL));
    }
    REFUSED(IS_NULL, found, threadcalc_h_limit_for_plating(NULL, &plating, &found, NULL));
    CHECK(threadcalc_h_limit_for_plating(&thread, &plating, NULL, NULL) == IS_NULL);
    REFUSED(IS_NULL, found, threadcalc_usual_tap_limit(NULL, &found, NULL));
    CHECK(threadcalc_usual_tap_limit(&thread, NULL, NULL) == IS_NULL);
    REFUSED(IS_NULL, found, threadcalc_usual_tap_limit_for_plating(NULL, &plating, &found, NULL));
    CHECK(threadcalc_usual_tap_limit_for_plating(&thread, &plating, NULL, NULL) == IS_NULL);
    REFUSED(RANGE, found, threadcalc_h_limit_for_plating(&thread, &negative, &found, NULL));
    CHECK(threadcalc_h_limit_for_plating(&thread, NULL, &found, NULL) == OK);
    CHECK(found.letter == THREADCALC_LIMIT_LETTER_H && found.number == 1);
}

static void of_marks(void)
{
    static const char whole[] = "M8x1.25 6HX LH FORM C GH3";
    uint8_t text[sizeof whole - 1];
    threadcalc_shank_mark_t mark;
    threadcalc_error_t error;
    const size_t half = sizeof mark / 2;
    size_t place;
    int byte, held = 1;
    REFUSED(IS_NULL, mark, threadcalc_read_shank_mark(NULL, 2, &mark, sizeof mark, NULL));
    CHECK(threadcalc_read_shank_mark(TEXT("M8"), NULL, sizeof mark, NULL) == IS_NULL);
    REFUSED(IS_SIZE, mark, threadcalc_read_shank_mark(TEXT("M8"), &mark, 0, NULL));
    REFUSED(THREADCALC_STATUS_EMPTY, mark, threadcalc_read_shank_mark(TEXT(""), &mark, sizeof mark, NULL));
    REFUSED(THREADCALC_STATUS_TOO_LONG, mark,
            threadcalc_read_shank_mark((const uint8_t *)whole, SIZE_MAX, &mark, sizeof mark, NULL));
    REFUSED(THREADCALC_STATUS_SERIES_MISMATCH, mark,
            threadcalc_read_shank_mark(TEXT("H3 1/4-20 UNF"), &mark, sizeof mark, &error));
    CHECK(error.at == 10);
    memset(&mark, 0xA5, sizeof mark);
    CHECK(threadcalc_read_shank_mark(TEXT("M8 6H LH"), &mark, half, NULL) == OK);
    CHECK(mark.thread.form == THREADCALC_FORM_METRIC);
    CHECK(bad_input_untouched((const unsigned char *)&mark + half, sizeof mark - half));
    /* Every byte in every place: read or refused, never out of bounds. */
    for (place = 0; place < sizeof text; place++) {
        for (byte = 0; byte < 256; byte++) {
            memcpy(text, whole, sizeof text);
            text[place] = (uint8_t)byte;
            if (threadcalc_read_shank_mark(text, sizeof text, &mark, sizeof mark, NULL) == OK) {
                held = held && mark.not_read_at >= 0 && mark.not_read_length >= 0;
                held = held && (size_t)(mark.not_read_at + mark.not_read_length) <= sizeof text;
            }
        }
    }
    CHECK(held);
}

static threadcalc_shank_mark_t good_mark(void)
{
    threadcalc_shank_mark_t mark;
    memset(&mark, 0, sizeof mark);
    CHECK(threadcalc_read_shank_mark(TEXT("STI M8x1 6HX LH QQ B"), &mark, sizeof mark, NULL) == OK);
    return mark;
}

static threadcalc_tap_job_t good_tap_job(void)
{
    threadcalc_tap_job_t job = THREADCALC_TAP_JOB_INIT;
    job.thread = good_thread();
    return job;
}

/* A mark with one member changed is refused with this status. */
#define REFUSED_MARK(status, member, value)                                                           \
    do {                                                                                              \
        threadcalc_shank_mark_t changed = good_mark();                                                \
        changed.member = (value);                                                                     \
        REFUSED(status, findings, threadcalc_judge_tap(&changed, &job, findings, 12, &count, NULL));  \
    } while (0)

/* A job with one member changed is refused with this status. */
#define REFUSED_JOB(status, member, value)                                                            \
    do {                                                                                              \
        threadcalc_tap_job_t changed = good_tap_job();                                                \
        changed.member = (value);                                                                     \
        REFUSED(status, findings, threadcalc_judge_tap(&mark, &changed, findings, 12, &count, NULL)); \
    } while (0)

static void of_members(void)
{
    static const uint32_t wrong[] = {0, 1, 3, 4, 5, 4097, UINT32_MAX, sizeof(threadcalc_tap_job_t) - 1};
    const threadcalc_shank_mark_t mark = good_mark();
    const threadcalc_tap_job_t job = good_tap_job();
    threadcalc_finding_t findings[12];
    size_t place, count = 0;
    for (place = 0; place < NUMBERS; place++) {
        REFUSED_MARK(UNKNOWN, hand, numbers[place]);
        REFUSED_MARK(UNKNOWN, own_limits, numbers[place]);
        REFUSED_MARK(UNKNOWN, ground, numbers[place]);
        REFUSED_MARK(UNKNOWN, wire_insert, numbers[place]);
        REFUSED_MARK(UNKNOWN, iso_class, numbers[place]);
        REFUSED_MARK(UNKNOWN, chamfer_form, numbers[place]);
        REFUSED_MARK(UNKNOWN, limit.letter, numbers[place]);
        REFUSED_JOB(UNKNOWN, hole, numbers[place]);
        REFUSED_JOB(UNKNOWN, wire_insert, numbers[place]);
    }
    REFUSED_MARK(MISSING, limit.number, 3);
    REFUSED_MARK(RANGE, limit.letter, THREADCALC_LIMIT_LETTER_H);
    REFUSED_MARK(RANGE, not_read_at, -1);
    REFUSED_MARK(RANGE, not_read_length, -1);
    REFUSED_MARK(THREADCALC_STATUS_UNKNOWN_CLASS, tolerance_class[1], 'Z');
    REFUSED_MARK(THREADCALC_STATUS_CONTRADICTION, thread.wire_insert, 1);
    REFUSED_MARK(MISSING, thread.form, 0);
    REFUSED_JOB(MISSING, thread.form, 0);
    REFUSED_JOB(RANGE, plating_um, ratio(-1, 1));
    REFUSED_JOB(RANGE, plating_um, ratio(1, 0));
    REFUSED_JOB(RANGE, room_threads, ratio(-1, 1));
    REFUSED_JOB(THREADCALC_STATUS_CONTRADICTION, thread.tolerance_class[1], 'g');
    REFUSED_JOB(THREADCALC_STATUS_UNSUPPORTED_FIELD, reserved, 1);
    for (place = 0; place < sizeof wrong / sizeof wrong[0]; place++) {
        REFUSED_JOB(IS_SIZE, size, wrong[place]);
    }
}

static void of_judgements(void)
{
    struct { threadcalc_tap_job_t job; unsigned char tail[64]; } longer;
    const threadcalc_tap_job_t job = good_tap_job();
    threadcalc_shank_mark_t mark = good_mark();
    threadcalc_finding_t findings[12];
    size_t exact = 0, count = 0;
    REFUSED(IS_NULL, findings, threadcalc_judge_tap(NULL, &job, findings, 12, &count, NULL));
    REFUSED(IS_NULL, findings, threadcalc_judge_tap(&mark, NULL, findings, 12, &count, NULL));
    REFUSED(IS_NULL, count, threadcalc_judge_tap(&mark, &job, NULL, 12, &count, NULL));
    REFUSED(IS_NULL, findings, threadcalc_judge_tap(&mark, &job, findings, 12, NULL, NULL));
    CHECK(threadcalc_judge_tap(&mark, &job, NULL, 0, &exact, NULL) == IS_SHORT && exact == 5);
    REFUSED(IS_SHORT, findings, threadcalc_judge_tap(&mark, &job, findings, exact - 1, &count, NULL));
    CHECK(count == exact);
    CHECK(threadcalc_judge_tap(&mark, &job, findings, exact, &count, NULL) == OK && count == exact);
    CHECK(findings[0].id == THREADCALC_FINDING_TAP_HAND && findings[4].id == THREADCALC_FINDING_NOT_READ);
    /* Byte and length of what was not read are those of the mark. */
    CHECK(findings[4].number[0] == 16.0 && findings[4].number[1] == 2.0);
    memset(&longer, 0, sizeof longer);
    longer.job = job;
    longer.job.size = (uint32_t)sizeof longer;
    CHECK(threadcalc_judge_tap(&mark, &longer.job, findings, 12, &count, NULL) == OK && count == exact);
    longer.tail[63] = 1;
    REFUSED(THREADCALC_STATUS_UNSUPPORTED_FIELD, findings,
            threadcalc_judge_tap(&mark, &longer.job, findings, 12, &count, NULL));
    /* A mark that says nothing: no thread, no class. */
    memset(&mark, 0, sizeof mark);
    CHECK(threadcalc_judge_tap(&mark, &job, findings, 12, &count, NULL) == OK && count == 2);
    CHECK(findings[0].id == THREADCALC_FINDING_TAP_UNMARKED && findings[1].id == THREADCALC_FINDING_TAP_UNMARKED);
    /* A mark that the caller filled in. */
    mark.thread = job.thread;
    memcpy(mark.tolerance_class, "6H", 3);
    CHECK(threadcalc_judge_tap(&mark, &job, findings, 12, &count, NULL) == OK && count == 0);
}

void bad_taps(void)
{
    of_kinds();
    of_chamfers();
    of_classes();
    of_limits();
    of_marks();
    of_members();
    of_judgements();
}
