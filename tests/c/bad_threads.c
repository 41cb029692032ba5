/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* Thread structures that a caller gives back: as they came, in part, and at odds with themselves. */
#include "bad_input.h"

enum { OK = THREADCALC_STATUS_OK, AGAINST = THREADCALC_STATUS_CONTRADICTION, MOST_THREADS = 4096 };

static threadcalc_thread_t read_thread(const char *text)
{
    threadcalc_thread_t thread;
    memset(&thread, 0, sizeof thread);
    CHECK(threadcalc_thread_read((const uint8_t *)text, strlen(text), &thread, NULL) == OK);
    return thread;
}

/* Whether the call takes the thread; its text where it does. */
static int32_t written(const threadcalc_thread_t *thread, char *text, size_t capacity)
{
    size_t needed = 0;
    text[0] = '\0';
    return threadcalc_thread_write(thread, text, capacity, &needed, NULL);
}

/* Every standard thread goes in and out as it is, and from the members that it is built from alone. */
static void of_every_form(void)
{
    static threadcalc_thread_t threads[MOST_THREADS];
    int seen[THREADCALC_FORM_PULL_BUTTRESS + 1] = {0};
    size_t count = 0, place;
    CHECK(threadcalc_standard_threads(0, 0, threads, MOST_THREADS, &count, NULL) == OK);
    for (place = 0; place < count; place++) {
        const threadcalc_thread_t *thread = &threads[place];
        threadcalc_thread_t bare, again;
        char text[96], text_of_bare[96];
        memset(&bare, 0, sizeof bare);
        bare.form = thread->form;
        bare.major_mm = thread->major_mm;
        bare.pitch_mm = thread->pitch_mm;
        CHECK(written(thread, text, sizeof text) == OK && written(&bare, text_of_bare, sizeof text_of_bare) == OK);
        CHECK(strcmp(text, text_of_bare) == 0);
        again = read_thread(text);
        CHECK(memcmp(&again, thread, sizeof again) == 0);
        CHECK((thread->nominal_mm.denominator == 0)
              == (thread->form >= THREADCALC_FORM_NPT && thread->form <= THREADCALC_FORM_RC));
        CHECK(thread->wire_insert == 0 && thread->written_as == 0 && thread->is_standard == 1);
        CHECK(thread->form >= 1 && thread->form <= THREADCALC_FORM_PULL_BUTTRESS);
        seen[thread->form] = 1;
    }
    for (place = 1; place <= THREADCALC_FORM_PULL_BUTTRESS; place++) {
        CHECK(seen[place] == 1);
    }
}

/* The hole of a wire insert is made from the screw's diameter. */
static void of_wire_inserts(void)
{
    threadcalc_thread_t screw = read_thread("M8x1.25-6H"), hole, bare;
    char text[96];
    CHECK(threadcalc_thread_with_wire_insert(&screw, &hole, NULL) == OK && hole.wire_insert == 1);
    CHECK(hole.nominal_mm.numerator == 8 && hole.major_mm.numerator == 1203 && hole.major_mm.denominator == 125);
    CHECK(written(&hole, text, sizeof text) == OK && strcmp(text, "M8x1.25-6H STI") == 0);
    memset(&bare, 0, sizeof bare);
    bare.form = hole.form;
    bare.wire_insert = 1;
    bare.nominal_mm = hole.nominal_mm;
    bare.pitch_mm = hole.pitch_mm;
    CHECK(written(&bare, text, sizeof text) == OK && strcmp(text, "M8x1.25 STI") == 0);
    bare.major_mm = screw.major_mm;
    CHECK(written(&bare, text, sizeof text) == AGAINST);
    bare.wire_insert = 2;
    CHECK(written(&bare, text, sizeof text) == THREADCALC_STATUS_UNKNOWN_VALUE);
    screw = read_thread("Tr40x7");
    REFUSED(THREADCALC_STATUS_UNSUPPORTED_FORM, hole, threadcalc_thread_with_wire_insert(&screw, &hole, NULL));
    screw = read_thread("M8-6g");
    REFUSED(AGAINST, hole, threadcalc_thread_with_wire_insert(&screw, &hole, NULL));
}

static void of_older_names(void)
{
    threadcalc_finding_t findings[2];
    char text[96];
    size_t count = 0;
    threadcalc_thread_t thread = read_thread("1/2 BSPT-LH");
    CHECK(thread.form == THREADCALC_FORM_RC && thread.written_as == THREADCALC_WRITTEN_AS_BSPT);
    CHECK(strcmp(threadcalc_written_as_name(thread.written_as), "BSPT") == 0);
    CHECK(strcmp(threadcalc_form_symbol(thread.form), "Rc") == 0);
    CHECK(written(&thread, text, sizeof text) == OK && strcmp(text, "Rc1/2-LH") == 0);
    /* The name goes in and out with the thread: the finding is still there. */
    CHECK(threadcalc_thread_findings(&thread, findings, 2, &count, NULL) == OK && count == 2);
    CHECK(findings[0].id == THREADCALC_FINDING_FAMILY_ASSUMED && findings[1].id == THREADCALC_FINDING_PIPE_FAMILY);
    thread.written_as = 0;
    CHECK(threadcalc_thread_findings(&thread, findings, 2, &count, NULL) == OK && count == 1);
    thread.written_as = THREADCALC_WRITTEN_AS_BSPP;
    CHECK(written(&thread, text, sizeof text) == AGAINST);
    thread = good_thread();
    thread.written_as = THREADCALC_WRITTEN_AS_BSP;
    CHECK(written(&thread, text, sizeof text) == AGAINST);
}

static void of_members_at_odds(void)
{
    const threadcalc_thread_t metric = good_thread();
    const threadcalc_thread_t pipe = read_thread("1/4-18 NPT");
    threadcalc_thread_t thread = metric;
    char text[96];
    thread.nominal_mm = ratio(10, 1);
    CHECK(written(&thread, text, sizeof text) == AGAINST);
    thread = metric;
    thread.major_mm = ratio(0, 0);
    CHECK(written(&thread, text, sizeof text) == OK && strcmp(text, "M8x1.25-6H") == 0);
    thread.nominal_mm = ratio(0, 0);
    CHECK(written(&thread, text, sizeof text) == THREADCALC_STATUS_MISSING);
    thread = metric;
    thread.taper_on_diameter = ratio(1, 16);
    CHECK(written(&thread, text, sizeof text) == AGAINST);
    thread = metric;
    thread.lead_mm = ratio(5, 2);
    CHECK(written(&thread, text, sizeof text) == AGAINST);
    thread = metric;
    thread.side = THREADCALC_SIDE_EXTERNAL;
    CHECK(written(&thread, text, sizeof text) == AGAINST);
    thread = pipe;
    thread.nominal_mm = thread.major_mm;
    CHECK(written(&thread, text, sizeof text) == AGAINST);
    thread = pipe;
    thread.taper_on_diameter = ratio(0, 1);
    CHECK(written(&thread, text, sizeof text) == AGAINST);
    thread = pipe;
    thread.pitch_mm = ratio(127, 70);
    CHECK(written(&thread, text, sizeof text) == THREADCALC_STATUS_SERIES_MISMATCH);
    thread = pipe;
    thread.major_mm = ratio(25, 2);
    CHECK(written(&thread, text, sizeof text) == THREADCALC_STATUS_OUT_OF_RANGE);
    thread = pipe;
    thread.starts = 2;
    CHECK(written(&thread, text, sizeof text) == THREADCALC_STATUS_OUT_OF_RANGE);
    thread = pipe;
    thread.series = THREADCALC_SERIES_UNC;
    CHECK(written(&thread, text, sizeof text) == THREADCALC_STATUS_SERIES_MISMATCH);
}

/* What has no meaning for a thread, and what a taper thread has instead. */
static void of_questions(void)
{
    const threadcalc_thread_t metric = good_thread();
    const threadcalc_thread_t taper = read_thread("1/4-18 NPT"), straight = read_thread("G1/4");
    const threadcalc_thread_t screw = read_thread("R1/4");
    threadcalc_taper_depth_request_t asked = good_taper_depth();
    threadcalc_tap_drill_request_t drill_asked = good_drill();
    const threadcalc_depth_request_t depth = good_depth();
    threadcalc_taper_depths_t depths;
    threadcalc_tap_drill_t drill;
    threadcalc_depths_t straight_depths;
    threadcalc_limits_t limits;
    threadcalc_profile_t profile;
    threadcalc_pipe_t pipe;
    int32_t number = 0;
    const int32_t none = THREADCALC_STATUS_DOES_NOT_APPLY;
    REFUSED(none, pipe, threadcalc_pipe(&metric, &pipe, sizeof pipe, NULL));
    REFUSED(none, depths, threadcalc_taper_depths(&metric, &asked, &depths, sizeof depths, NULL));
    REFUSED(none, depths, threadcalc_taper_depths(&straight, &asked, &depths, sizeof depths, NULL));
    REFUSED(AGAINST, depths, threadcalc_taper_depths(&screw, &asked, &depths, sizeof depths, NULL));
    REFUSED(none, limits, threadcalc_limits(&taper, &limits, sizeof limits, NULL));
    REFUSED(none, straight_depths,
            threadcalc_depths(&taper, &depth, &straight_depths, sizeof straight_depths, NULL));
    CHECK(threadcalc_pipe(&taper, &pipe, sizeof pipe, NULL) == OK && pipe.gauge_length_mm.denominator == 0);
    CHECK(pipe.hand_tight_length_mm.numerator > 0 && pipe.source[0] != '\0' && pipe.confidence != 0);
    CHECK(threadcalc_profile(&taper, &profile, sizeof profile, NULL) == OK);
    CHECK(profile.stress_area_mm2 != profile.stress_area_mm2);
    CHECK(threadcalc_tap_drill(&taper, &drill_asked, &drill, sizeof drill, NULL) == OK);
    CHECK(drill.chosen.percent != drill.chosen.percent && drill.findings[0].id == THREADCALC_FINDING_TAPER_HOLE);
    drill_asked.taper_reamer = 1;
    CHECK(threadcalc_tap_drill(&taper, &drill_asked, &drill, sizeof drill, NULL) == OK && drill.finding_count == 0);
    REFUSED(AGAINST, drill, threadcalc_tap_drill(&metric, &drill_asked, &drill, sizeof drill, NULL));
    drill_asked.percent = ratio(75, 1);
    REFUSED(none, drill, threadcalc_tap_drill(&taper, &drill_asked, &drill, sizeof drill, NULL));
    CHECK(threadcalc_choice(&metric, &number, NULL) == OK && number == 1);
    CHECK(threadcalc_choice(&taper, &number, NULL) == OK && number == 0);
    CHECK(threadcalc_is_iso_262(&metric, &number, NULL) == OK && number == 1);
    CHECK(threadcalc_is_iso_262(&taper, &number, NULL) == OK && number == 0);
}

static void of_fits(void)
{
    threadcalc_thread_t internal, external;
    threadcalc_error_t error;
    char text[96];
    CHECK(threadcalc_read_fit(TEXT("M8x1.25-6g/6H"), &internal, &external, NULL) == OK);
    CHECK(written(&internal, text, sizeof text) == OK && strcmp(text, "M8x1.25-6H") == 0);
    CHECK(written(&external, text, sizeof text) == OK && strcmp(text, "M8x1.25-6g") == 0);
    /* Neither place is written if the text is refused. */
    memset(&external, 0xA5, sizeof external);
    REFUSED(THREADCALC_STATUS_MISSING, internal,
            threadcalc_read_fit(TEXT("M8-6H"), &internal, &external, &error));
    CHECK(error.at == 5 && bad_input_untouched(&external, sizeof external));
    REFUSED(AGAINST, internal, threadcalc_read_fit(TEXT("M8-6H/5H"), &internal, &external, NULL));
    REFUSED(THREADCALC_STATUS_EMPTY, internal, threadcalc_read_fit(TEXT(""), &internal, &external, NULL));
    CHECK(bad_input_untouched(&external, sizeof external));
}

void bad_threads(void)
{
    of_every_form();
    of_wire_inserts();
    of_older_names();
    of_members_at_odds();
    of_questions();
    of_fits();
}
