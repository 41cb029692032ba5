/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* Stands in for bcryptprimitives.dll where an old wine lacks it: every Windows since 7 has it. Rust's
   standard library is linked to it; threadcalc never asks for a random number. */
#include <windows.h>

#include <ntsecapi.h>

__declspec(dllexport) BOOL WINAPI ProcessPrng(unsigned char *bytes, SIZE_T length)
{
    return RtlGenRandom(bytes, (ULONG)length);
}
