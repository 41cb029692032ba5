/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* The check of a program with what it cannot take. */
#include "bad_input.h"

#include <stdlib.h>

#define REQUEST "{\"schema\":1,\"dialect\":\"rs274ngc\""

static void handle(void)
{
    const size_t size = threadcalc_checker_size();
    unsigned char *const memory = malloc(size + 16);
    threadcalc_checker_t *const checker = (threadcalc_checker_t *)(void *)memory;
    threadcalc_dialect_t mill = THREADCALC_DIALECT_INIT;
    threadcalc_check_options_t options = THREADCALC_CHECK_OPTIONS_INIT;
    threadcalc_tool_t tool = THREADCALC_TOOL_INIT;
    threadcalc_program_event_t event;
    threadcalc_unchecked_t unchecked;
    size_t taken;
    int count;
    memset(memory, 0, size + 16);
    mill.base = THREADCALC_DIALECT_RS274NGC;
    /* Not begun. */
    REFUSED(THREADCALC_STATUS_MISSING, taken, threadcalc_checker_read(checker, TEXT("G0"), &taken, NULL));
    REFUSED(THREADCALC_STATUS_MISSING, event, threadcalc_checker_next(checker, &event, sizeof event, NULL));
    CHECK(threadcalc_checker_finish(checker, NULL) == THREADCALC_STATUS_MISSING);
    CHECK(threadcalc_checker_begin(NULL, size, &mill, NULL, NULL) == THREADCALC_STATUS_NULL_POINTER);
    CHECK(threadcalc_checker_begin(checker, size - 1, &mill, NULL, NULL) == THREADCALC_STATUS_STRUCTURE_SIZE);
    CHECK(threadcalc_checker_begin(checker, size, NULL, NULL, NULL) == THREADCALC_STATUS_MISSING);
    CHECK(threadcalc_checker_begin((threadcalc_checker_t *)(void *)(memory + 8), size, &mill, NULL, NULL)
          == THREADCALC_STATUS_OUT_OF_RANGE);
    options.block_delete = 7;
    CHECK(threadcalc_checker_begin(checker, size, &mill, &options, NULL) == THREADCALC_STATUS_UNKNOWN_VALUE);
    options.block_delete = 0;
    options.machine_gear_count = 5;
    CHECK(threadcalc_checker_begin(checker, size, &mill, &options, NULL) == THREADCALC_STATUS_OUT_OF_RANGE);
    options.machine_gear_count = 0;
    options.size = 3;
    CHECK(threadcalc_checker_begin(checker, size, &mill, &options, NULL) == THREADCALC_STATUS_STRUCTURE_SIZE);
    CHECK(memory[0] == 0);
    CHECK(threadcalc_checker_begin(checker, size, &mill, NULL, NULL) == THREADCALC_STATUS_OK);
    REFUSED(THREADCALC_STATUS_NULL_POINTER, taken, threadcalc_checker_read(checker, NULL, 3, &taken, NULL));
    CHECK(threadcalc_checker_read(checker, TEXT("G0"), NULL, NULL) == THREADCALC_STATUS_NULL_POINTER);
    CHECK(threadcalc_checker_next(checker, NULL, sizeof event, NULL) == THREADCALC_STATUS_NULL_POINTER);
    REFUSED(THREADCALC_STATUS_STRUCTURE_SIZE, event, threadcalc_checker_next(checker, &event, 0, NULL));
    REFUSED(THREADCALC_STATUS_STRUCTURE_SIZE, unchecked,
            threadcalc_checker_not_checked(checker, 0, &unchecked, 0, NULL));
    CHECK(threadcalc_checker_not_checked(checker, 99, &unchecked, sizeof unchecked, NULL) == THREADCALC_STATUS_OK);
    CHECK(unchecked.reason == THREADCALC_REASON_UNSET);
    tool.kind = 99;
    CHECK(threadcalc_checker_add_tool(checker, &tool, NULL) == THREADCALC_STATUS_UNKNOWN_VALUE);
    tool.kind = 0;
    for (count = 0; count < 64; count++) {
        CHECK(threadcalc_checker_add_tool(checker, &tool, NULL) == THREADCALC_STATUS_OK);
    }
    CHECK(threadcalc_checker_add_tool(checker, &tool, NULL) == THREADCALC_STATUS_TOO_LONG);
    CHECK(threadcalc_checker_finish(checker, NULL) == THREADCALC_STATUS_OK);
    REFUSED(THREADCALC_STATUS_CONTRADICTION, taken, threadcalc_checker_read(checker, TEXT("G0"), &taken, NULL));
    free(memory);
}

static void text(void)
{
    char answer[4096];
    size_t needed;
    const uint8_t *const program = (const uint8_t *)"M30\n";
    CHECK(strcmp(threadcalc_program_number_name(THREADCALC_PROGRAM_NUMBER_LEAD_MM), "lead_mm") == 0);
    CHECK(strcmp(threadcalc_program_number_name(9999), "unknown") == 0);
    CHECK(threadcalc_check_json(program, 4, TEXT(REQUEST "}"), answer, sizeof answer, &needed, NULL) == THREADCALC_STATUS_OK);
    CHECK(answer[0] == '{' && answer[needed - 2] == '}');
    REFUSED(THREADCALC_STATUS_BUFFER_TOO_SHORT, answer,
            threadcalc_check_json(program, 4, TEXT(REQUEST "}"), answer, 8, &needed, NULL));
    REFUSED(THREADCALC_STATUS_NULL_POINTER, answer,
            threadcalc_check_json(NULL, 4, TEXT(REQUEST "}"), answer, sizeof answer, &needed, NULL));
    REFUSED(THREADCALC_STATUS_BAD_JSON, answer,
            threadcalc_check_json(program, 4, TEXT(REQUEST), answer, sizeof answer, &needed, NULL));
    REFUSED(THREADCALC_STATUS_UNKNOWN_KEY, answer,
            threadcalc_check_json(program, 4, TEXT(REQUEST ",\"option\":{}}"), answer, sizeof answer, &needed, NULL));
    REFUSED(THREADCALC_STATUS_MISSING, answer,
            threadcalc_check_json(program, 4, TEXT("{\"schema\":1}"), answer, sizeof answer, &needed, NULL));
}

static void comparison(void)
{
    char answer[8192];
    size_t needed;
    const uint8_t *const old = (const uint8_t *)"M30\n", *const tapping = (const uint8_t *)"G84 X0 Y0 Z-1. R1. F1.\n";
    CHECK(threadcalc_compare_json(old, 4, tapping, 23, TEXT(REQUEST "}"), answer, sizeof answer, &needed, NULL)
          == THREADCALC_STATUS_OK);
    CHECK(answer[0] == '{' && answer[needed - 2] == '}' && strstr(answer, "\"added\":1,"));
    /* Empty texts are programs. */
    CHECK(threadcalc_compare_json(old, 0, tapping, 0, TEXT(REQUEST "}"), answer, sizeof answer, &needed, NULL)
          == THREADCALC_STATUS_OK);
    REFUSED(THREADCALC_STATUS_BUFFER_TOO_SHORT, answer,
            threadcalc_compare_json(old, 4, tapping, 23, TEXT(REQUEST "}"), answer, 8, &needed, NULL));
    REFUSED(THREADCALC_STATUS_NULL_POINTER, answer,
            threadcalc_compare_json(NULL, 4, tapping, 23, TEXT(REQUEST "}"), answer, sizeof answer, &needed, NULL));
    REFUSED(THREADCALC_STATUS_NULL_POINTER, answer,
            threadcalc_compare_json(old, 4, NULL, 23, TEXT(REQUEST "}"), answer, sizeof answer, &needed, NULL));
    REFUSED(THREADCALC_STATUS_BAD_JSON, answer,
            threadcalc_compare_json(old, 4, tapping, 23, TEXT(REQUEST), answer, sizeof answer, &needed, NULL));
    REFUSED(THREADCALC_STATUS_UNKNOWN_KEY, answer,
            threadcalc_compare_json(old, 4, tapping, 23, TEXT(REQUEST ",\"old\":\"\"}"), answer, sizeof answer, &needed,
                                    NULL));
    REFUSED(THREADCALC_STATUS_MISSING, answer,
            threadcalc_compare_json(old, 4, tapping, 23, TEXT("{\"schema\":1}"), answer, sizeof answer, &needed, NULL));
}

void bad_checks(void)
{
    handle();
    text();
    comparison();
}
