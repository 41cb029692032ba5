/* The ports of an irrigation manifold: from the hole note on the drawing to drill and depth. */
#include <stdio.h>
#include <string.h>

#include "threadcalc.h"

static const char *const note_text = "6X 1/4-18 NPT";

static double mm(threadcalc_ratio_t exact)
{
    double value = 0.0;
    threadcalc_nearest_double(&exact, &value, NULL);
    return value;
}

static void print(const threadcalc_hole_note_t *note, const char *drill, const threadcalc_taper_depths_t *depths)
{
    char thread[64];
    threadcalc_finding_t findings[4];
    size_t count = 0, place;

    threadcalc_thread_write(&note->thread, thread, sizeof thread, &count, NULL);
    printf("%u x %s, drill %s\n", note->count ? (unsigned)note->count : 1u, thread, drill);
    printf("first hole  %.3f mm, then gauge\n", mm(depths->first_hole_mm));
    printf("tap, basic  %.3f mm = %.2f turns\n", mm(depths->tap_mm), mm(depths->tap_turns));
    printf("one turn    %.4f mm on the diameter\n", mm(depths->diameter_per_turn_mm));
    printf("drill point %.3f mm\n", depths->drill_point_mm);
    threadcalc_thread_findings(&note->thread, findings, 4, &count, NULL);
    for (place = 0; place < count; place++) {
        printf("%s: %s\n", threadcalc_finding_name(findings[place].id), findings[place].suggestion);
    }
}

int main(void)
{
    threadcalc_tap_drill_request_t wanted = THREADCALC_TAP_DRILL_REQUEST_INIT;
    threadcalc_taper_depth_request_t asked = THREADCALC_TAPER_DEPTH_REQUEST_INIT;
    threadcalc_hole_note_t note;
    threadcalc_tap_drill_t drill;
    threadcalc_taper_depths_t depths;
    threadcalc_error_t error;

    wanted.tap = THREADCALC_TAP_CUT;
    wanted.sets = THREADCALC_DRILL_SETS_NUMBER | THREADCALC_DRILL_SETS_LETTER | THREADCALC_DRILL_SETS_FRACTIONAL;
    asked.point_angle_deg = (threadcalc_ratio_t){118, 1};
    if (threadcalc_read_hole_note((const uint8_t *)note_text, strlen(note_text), 0, &note, sizeof note, &error)
        || threadcalc_tap_drill(&note.thread, &wanted, &drill, sizeof drill, &error)) {
        fprintf(stderr, "%s\n", error.message);
        return 1;
    }
    asked.drill_mm = drill.chosen.drill.diameter_mm;
    asked.bottom_clearance_mm = note.thread.pitch_mm;
    asked.bottom_clearance_mm.numerator *= 2;
    if (threadcalc_taper_depths(&note.thread, &asked, &depths, sizeof depths, &error)) {
        fprintf(stderr, "%s\n", error.message);
        return 1;
    }
    print(&note, drill.chosen.drill.name, &depths);
    return 0;
}
