/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* Whether the system has the library that Rust's standard library asks for random numbers. */
#include <windows.h>

int main(void)
{
    return LoadLibraryA("bcryptprimitives.dll") != NULL ? 0 : 1;
}
