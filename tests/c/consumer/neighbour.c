/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* Two Rust libraries in one program. */
#include <stdint.h>
#include <string.h>

#include "threadcalc.h"

extern uint32_t neighbour_catches(uint32_t number);

int main(void)
{
    threadcalc_thread_t thread;
    const char *designation = "M8";
    const int32_t status = threadcalc_thread_read((const uint8_t *)designation, strlen(designation), &thread, NULL);
    return status == THREADCALC_STATUS_OK && neighbour_catches(0) == 7 && neighbour_catches(4) == 25 ? 0 : 1;
}
