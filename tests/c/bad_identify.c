/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* Leads and words to be identified, asked for in every wrong way. */
#include "bad_input.h"

enum {
    OK = THREADCALC_STATUS_OK,
    IS_NULL = THREADCALC_STATUS_NULL_POINTER,
    IS_SIZE = THREADCALC_STATUS_STRUCTURE_SIZE,
    IS_FIELD = THREADCALC_STATUS_UNSUPPORTED_FIELD,
    IS_SHORT = THREADCALC_STATUS_BUFFER_TOO_SHORT,
    MISSING = THREADCALC_STATUS_MISSING,
    UNKNOWN = THREADCALC_STATUS_UNKNOWN_VALUE,
    RANGE = THREADCALC_STATUS_OUT_OF_RANGE,
    ROOM = 54
};

/* F0.05 in inches per turn with all the decimals there are: three pitches. */
static threadcalc_feed_words_t good_words(void)
{
    threadcalc_feed_words_t words = THREADCALC_FEED_WORDS_INIT;
    words.unit = THREADCALC_UNIT_INCH;
    words.mode = THREADCALC_MODE_PER_REVOLUTION;
    words.feed = ratio(1, 20);
    words.feed_decimals = ratio(2, 1);
    words.most_feed_decimals = ratio(2, 1);
    return words;
}

/* Both outputs stay as they were. */
#define WORDS_REFUSED(status, words)                                                                  \
    do {                                                                                              \
        memset(matches, 0xA5, sizeof matches);                                                        \
        REFUSED(status, found, threadcalc_identify_feed(words, &found, sizeof found, matches, ROOM, &count, NULL)); \
        CHECK(bad_input_untouched(matches, sizeof matches));                                          \
    } while (0)

static void of_leads(void)
{
    static const int32_t no_starts[] = {-1, 13, INT32_MAX, INT32_MIN};
    const threadcalc_ratio_t lead = ratio(127, 100), none = ratio(0, 0), wide = ratio(1, 50), broken = ratio(1, 0);
    const threadcalc_ratio_t too_wide = ratio(1, 3), negative = ratio(-5, 4), huge = ratio(INT64_MAX, 1);
    threadcalc_identification_t found;
    threadcalc_match_t matches[ROOM];
    size_t count = 0, place;
    CHECK(threadcalc_identify(&lead, NULL, 0, &found, sizeof found, matches, 1, &count, NULL) == OK && count == 1);
    CHECK(found.verdict == THREADCALC_LEAD_VERDICT_IDENTIFIED && strcmp(matches[0].name, "20 TPI") == 0);
    CHECK(found.starts == 1 && strcmp(found.text, "20 TPI (0.000 %)") == 0);
    CHECK(threadcalc_identify(&lead, &none, 1, &found, sizeof found, matches, 1, &count, NULL) == OK && count == 1);
    count = 0;
    memset(matches, 0xA5, sizeof matches);
    REFUSED(IS_SHORT, found, threadcalc_identify(&lead, &wide, 1, &found, sizeof found, matches, 1, &count, NULL));
    CHECK(count == 2 && bad_input_untouched(matches, sizeof matches));
    REFUSED(IS_SHORT, found, threadcalc_identify(&lead, &wide, 1, &found, sizeof found, NULL, 0, &count, NULL));
    CHECK(threadcalc_identify(&lead, &wide, 1, &found, sizeof found, matches, 2, &count, NULL) == OK && count == 2);
    REFUSED(IS_NULL, found, threadcalc_identify(NULL, NULL, 1, &found, sizeof found, matches, 1, &count, NULL));
    REFUSED(IS_NULL, found, threadcalc_identify(&lead, NULL, 1, &found, sizeof found, NULL, 1, &count, NULL));
    REFUSED(IS_NULL, found, threadcalc_identify(&lead, NULL, 1, &found, sizeof found, matches, 1, NULL, NULL));
    CHECK(threadcalc_identify(&lead, NULL, 1, NULL, sizeof found, matches, 1, &count, NULL) == IS_NULL);
    REFUSED(IS_SIZE, found, threadcalc_identify(&lead, NULL, 1, &found, 0, matches, 1, &count, NULL));
    REFUSED(MISSING, found, threadcalc_identify(&none, NULL, 1, &found, sizeof found, matches, 1, &count, NULL));
    REFUSED(RANGE, found, threadcalc_identify(&broken, NULL, 1, &found, sizeof found, matches, 1, &count, NULL));
    REFUSED(RANGE, found, threadcalc_identify(&negative, NULL, 1, &found, sizeof found, matches, 1, &count, NULL));
    REFUSED(RANGE, found, threadcalc_identify(&huge, NULL, 1, &found, sizeof found, matches, 1, &count, NULL));
    REFUSED(RANGE, found, threadcalc_identify(&lead, &too_wide, 1, &found, sizeof found, matches, 1, &count, NULL));
    REFUSED(RANGE, found, threadcalc_identify(&lead, &broken, 1, &found, sizeof found, matches, 1, &count, NULL));
    for (place = 0; place < sizeof no_starts / sizeof no_starts[0]; place++) {
        const int32_t starts = no_starts[place];
        REFUSED(RANGE, found, threadcalc_identify(&lead, NULL, starts, &found, sizeof found, matches, 1, &count, NULL));
    }
}

static void of_words(void)
{
    static const uint32_t wrong[] = {0, 1, 3, 4, 5, 4097, UINT32_MAX};
    struct { threadcalc_feed_words_t words; unsigned char tail[64]; } longer;
    threadcalc_feed_words_t words = good_words();
    threadcalc_identification_t found;
    threadcalc_match_t matches[ROOM];
    size_t count = 0, place;
    CHECK(threadcalc_identify_feed(&words, &found, sizeof found, matches, 3, &count, NULL) == OK && count == 3);
    CHECK(found.verdict == THREADCALC_LEAD_VERDICT_AMBIGUOUS && strcmp(matches[2].name, "19 TPI") == 0);
    memset(&found, 0xA5, sizeof found);
    CHECK(threadcalc_identify_feed(&words, &found, sizeof(int32_t), matches, 3, &count, NULL) == OK);
    CHECK(found.verdict == THREADCALC_LEAD_VERDICT_AMBIGUOUS);
    CHECK(bad_input_untouched((const unsigned char *)&found + sizeof(int32_t), sizeof found - sizeof(int32_t)));
    WORDS_REFUSED(IS_NULL, NULL);
    for (place = 0; place <= sizeof wrong / sizeof wrong[0]; place++) {
        words.size = place < sizeof wrong / sizeof wrong[0] ? wrong[place] : (uint32_t)sizeof words - 1;
        WORDS_REFUSED(IS_SIZE, &words);
    }
    memset(&longer, 0, sizeof longer);
    longer.words = good_words();
    longer.words.size = (uint32_t)sizeof longer;
    CHECK(threadcalc_identify_feed(&longer.words, &found, sizeof found, matches, 3, &count, NULL) == OK);
    longer.tail[63] = 1;
    WORDS_REFUSED(IS_FIELD, &longer.words);
    words = good_words();
    words.unit = 0;
    WORDS_REFUSED(MISSING, &words);
    words.unit = 3;
    WORDS_REFUSED(UNKNOWN, &words);
    words = good_words();
    words.mode = 0;
    WORDS_REFUSED(MISSING, &words);
    words.mode = -1;
    WORDS_REFUSED(UNKNOWN, &words);
    words = good_words();
    words.feed = ratio(0, 0);
    WORDS_REFUSED(MISSING, &words);
    words = good_words();
    words.feed_decimals = ratio(1, 2);
    WORDS_REFUSED(RANGE, &words);
    words.feed_decimals = ratio(256, 1);
    WORDS_REFUSED(RANGE, &words);
    words = good_words();
    words.starts = 13;
    WORDS_REFUSED(RANGE, &words);
}

/* All families about a diameter or a pitch. */
static void of_sizes(void)
{
    const threadcalc_ratio_t diameter = ratio(20955, 1000), pitch = ratio(7, 1), exactly = ratio(0, 1);
    const threadcalc_ratio_t none = ratio(0, 0), below = ratio(-1, 1000);
    threadcalc_thread_t threads[8];
    size_t count = 0;
    CHECK(threadcalc_threads_near_diameter(&diameter, &exactly, threads, 4, &count, NULL) == OK && count == 4);
    CHECK(threadcalc_threads_near_pitch(&pitch, &exactly, threads, 4, &count, NULL) == OK && count == 4);
    count = 0;
    REFUSED(IS_SHORT, threads, threadcalc_threads_near_diameter(&diameter, &exactly, threads, 3, &count, NULL));
    CHECK(count == 4);
    REFUSED(IS_SHORT, threads, threadcalc_threads_near_pitch(&pitch, &exactly, threads, 0, &count, NULL));
    REFUSED(IS_NULL, threads, threadcalc_threads_near_diameter(NULL, &exactly, threads, 8, &count, NULL));
    REFUSED(IS_NULL, threads, threadcalc_threads_near_diameter(&diameter, NULL, threads, 8, &count, NULL));
    REFUSED(IS_NULL, threads, threadcalc_threads_near_pitch(&pitch, &exactly, threads, 8, NULL, NULL));
    CHECK(threadcalc_threads_near_pitch(&pitch, &exactly, NULL, 8, &count, NULL) == IS_NULL);
    REFUSED(MISSING, threads, threadcalc_threads_near_diameter(&none, &exactly, threads, 8, &count, NULL));
    REFUSED(MISSING, threads, threadcalc_threads_near_pitch(&pitch, &none, threads, 8, &count, NULL));
    REFUSED(RANGE, threads, threadcalc_threads_near_diameter(&diameter, &below, threads, 8, &count, NULL));
    REFUSED(RANGE, threads, threadcalc_threads_near_pitch(&below, &exactly, threads, 8, &count, NULL));
}

static void of_threads(void)
{
    static const int32_t numbers[] = {0, -1, 4, 50000, INT32_MAX, INT32_MIN};
    const threadcalc_ratio_t pitch = ratio(127, 70), diameter = ratio(20955, 1000), none = ratio(0, 0);
    threadcalc_thread_t threads[8];
    size_t count = 0, place;
    CHECK(threadcalc_threads_of_pitch(&pitch, &diameter, 0, threads, 4, &count, NULL) == OK && count == 4);
    count = 0;
    REFUSED(IS_SHORT, threads, threadcalc_threads_of_pitch(&pitch, &diameter, 1, threads, 3, &count, NULL));
    CHECK(count == 4);
    REFUSED(IS_NULL, threads, threadcalc_threads_of_pitch(NULL, &diameter, 1, threads, 8, &count, NULL));
    REFUSED(IS_NULL, threads, threadcalc_threads_of_pitch(&pitch, NULL, 1, threads, 8, &count, NULL));
    REFUSED(IS_NULL, threads, threadcalc_threads_of_pitch(&pitch, &diameter, 1, threads, 8, NULL, NULL));
    CHECK(threadcalc_threads_of_pitch(&pitch, &diameter, 1, NULL, 8, &count, NULL) == IS_NULL);
    REFUSED(MISSING, threads, threadcalc_threads_of_pitch(&none, &diameter, 1, threads, 8, &count, NULL));
    REFUSED(MISSING, threads, threadcalc_threads_of_pitch(&pitch, &none, 1, threads, 8, &count, NULL));
    REFUSED(RANGE, threads, threadcalc_threads_of_pitch(&pitch, &diameter, 13, threads, 8, &count, NULL));
    of_sizes();
    for (place = 0; place < sizeof numbers / sizeof numbers[0]; place++) {
        CHECK(strcmp(threadcalc_lead_verdict_name(numbers[place]), "unknown") == 0);
    }
}

void bad_identify(void)
{
    of_leads();
    of_words();
    of_threads();
}
