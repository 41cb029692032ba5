/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* A program through the handle of a check, piece by piece. */
#include "reference.h"

static int32_t take(threadcalc_checker_t *checker, reference_keep keep, void *found, threadcalc_error_t *error)
{
    threadcalc_program_event_t event;
    int32_t status;
    do {
        status = threadcalc_checker_next(checker, &event, sizeof event, error);
        if (status == THREADCALC_STATUS_OK && event.kind != THREADCALC_EVENT_NONE) {
            keep(found, &event);
        }
    } while (status == THREADCALC_STATUS_OK && event.kind != THREADCALC_EVENT_NONE);
    return status;
}

int32_t reference_in_pieces(threadcalc_checker_t *checker, const uint8_t *program, size_t length, size_t piece,
                            reference_keep keep, void *found, threadcalc_error_t *error)
{
    size_t at = 0;
    int32_t status = THREADCALC_STATUS_OK;
    while (status == THREADCALC_STATUS_OK && at < length) {
        const size_t size = length - at < piece ? length - at : piece;
        size_t taken = 0;
        status = threadcalc_checker_read(checker, program + at, size, &taken, error);
        at += taken;
        if (status == THREADCALC_STATUS_OK) {
            status = take(checker, keep, found, error);
        }
    }
    if (status == THREADCALC_STATUS_OK) {
        status = threadcalc_checker_finish(checker, error);
    }
    return status == THREADCALC_STATUS_OK ? take(checker, keep, found, error) : status;
}
