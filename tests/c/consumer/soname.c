/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* Prints the name that the shared library has to bear. */
#include <stdio.h>

#include "threadcalc.h"

int main(void)
{
    printf("libthreadcalc.so.%d\n", (int)threadcalc_abi_version());
    return 0;
}
