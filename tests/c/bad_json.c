/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* The JSON door with what is not a job. */
#include "bad_input.h"

static char text[16384];
static size_t needed = 0;

/* The JSON is refused with this status; returns the byte that the error names. */
static int64_t refused(int32_t status, const uint8_t *job, size_t length)
{
    threadcalc_error_t error;
    memset(&error, 0, sizeof error);
    REFUSED(status, text, threadcalc_plan_json(job, length, text, sizeof text, &needed));
    REFUSED(status, text, threadcalc_plan_json_with_error(job, length, text, sizeof text, &needed, &error));
    CHECK(error.code == status && error.message[0] != '\0');
    return error.at;
}

void bad_json(void)
{
    static const uint8_t no_text[] = {'{', '"', 0xFF, '"', ':', '1', '}'};
    static uint8_t blanks[65537], deep[60000];
    const int32_t bad = THREADCALC_STATUS_BAD_JSON;
    CHECK(threadcalc_plan_json(TEXT(GOOD_JSON "}"), text, sizeof text, &needed) == THREADCALC_STATUS_OK);
    CHECK(text[0] == '{' && text[needed - 2] == '}');
    (void)refused(THREADCALC_STATUS_UNKNOWN_KEY, TEXT(GOOD_JSON ",\"speed\":1}"));
    (void)refused(THREADCALC_STATUS_UNKNOWN_KEY, TEXT(GOOD_JSON ",\"machine\":{\"speed\":1}}"));
    (void)refused(THREADCALC_STATUS_UNKNOWN_KEY, TEXT(GOOD_JSON ",\"machin\":{\"highest_rpm\":3000}}"));
    (void)refused(THREADCALC_STATUS_UNKNOWN_KEY, TEXT(GOOD_JSON ",\"drill_set\":[\"metric\"]}"));
    /* The message names the key; a NUL in it ends no message. */
    (void)refused(THREADCALC_STATUS_UNKNOWN_KEY, TEXT(GOOD_JSON ",\"\\u0000speed\":1}"));
    (void)refused(THREADCALC_STATUS_OUT_OF_RANGE, TEXT(GOOD_JSON ",\"machine\":{\"gears\":[[0,600]]}}"));
    (void)refused(bad, TEXT(GOOD_JSON ",\"rpm\":600}"));
    (void)refused(bad, TEXT(GOOD_JSON ",\"schema\":1}"));
    CHECK(refused(bad, TEXT("")) == 0);
    CHECK(refused(bad, TEXT("garbage")) == 0);
    CHECK(refused(bad, TEXT(GOOD_JSON)) == (int64_t)sizeof(GOOD_JSON) - 1);
    CHECK(refused(bad, TEXT(GOOD_JSON "}x")) == (int64_t)sizeof(GOOD_JSON));
    (void)refused(bad, TEXT("[]"));
    (void)refused(bad, TEXT("null"));
    (void)refused(bad, TEXT("{\"schema\":1,}"));
    (void)refused(bad, TEXT("{\"schema\":NaN}"));
    (void)refused(bad, TEXT("{\"schema\":1}\0"));
    (void)refused(bad, no_text, sizeof no_text);
    (void)refused(THREADCALC_STATUS_MISSING, TEXT("{}"));
    (void)refused(THREADCALC_STATUS_MISSING, TEXT("{\"schema\":1}"));
    (void)refused(THREADCALC_STATUS_UNKNOWN_VALUE, TEXT(GOOD_JSON ",\"basis\":\"H\"}"));
    (void)refused(THREADCALC_STATUS_UNKNOWN_VALUE, TEXT(GOOD_JSON ",\"percent\":[75]}"));
    (void)refused(THREADCALC_STATUS_UNKNOWN_VALUE, TEXT(GOOD_JSON ",\"percent\":{}}"));
    memset(blanks, ' ', sizeof blanks);
    (void)refused(THREADCALC_STATUS_TOO_LONG, blanks, sizeof blanks);
    (void)refused(bad, blanks, sizeof blanks - 1);
    memset(deep, '[', sizeof deep);
    (void)refused(bad, deep, sizeof deep);
    memcpy(deep, "{\"drill_sets\":", 14);
    (void)refused(bad, deep, sizeof deep);
}
