"""A million calls, threads and feeds, plans and errors mixed, keep no memory.

usage: build/venv/bin/python tests/python/memory.py [calls]

Compared after a warm-up: the blocks that Python's allocator has handed out, and the memory of the process,
which Rust's allocator is part of. Both have to see a leak that is planted in one of twenty calls: of a
Python object, and of a block of the C library's heap. Last line: N passed, N failed, N skipped.
"""

from __future__ import annotations

import ctypes
import gc
import pathlib
import resource
import sys
from collections.abc import Callable

import threadcalc as tc

CALLS = 1_000_000
WARM_UP = 100_000
PLANTED_CALLS = 500_000
MOST_BLOCKS = 200
# A third of what one call of the twenty would leak with blocks of the smallest size.
MOST_BYTES = 512 * 1024
STATM = pathlib.Path("/proc/self/statm")

JOB = {
    "thread": "7/16-14 UNC-2B",
    "unit": "mm",
    "mode": "per_minute",
    "decimals": 3,
    "rpm": 650,
    "hole": "blind",
    "full_thread_depth_mm": 20,
    "tap": "cut",
    "dialect": "rs274ngc",
}


def refused(call: Callable[..., object], *arguments: object, **keywords: object) -> None:
    """A call that raises; the message, the traceback and all they hold go away with it."""
    try:
        call(*arguments, **keywords)
    except tc.ThreadcalcError as error:
        assert error.name
        return
    raise AssertionError(f"{call} was not refused")


def twenty_calls(turn: int) -> None:
    """Twenty calls of the package; what they are asked changes with the turn."""
    rpm = 300 + turn % 500
    thread = tc.Thread("M8x1.25-6H") if turn % 2 else tc.Thread("7/16-14 UNC-2B")
    inch = tc.Thread.unified("#10", 32).with_class("2B")
    for unit in ("mm", "inch"):
        word = tc.feed(thread, rpm, unit=unit, mode="per_minute", decimals=3)
        word.axial_error_mm(20)
    tc.exact_speeds(thread, rpm, unit="mm", decimals=3)
    tc.programmed_speed(f"{rpm}.3", step=10)
    tc.read_number("127/70")
    tc.Drill.of_diameter(6.8)
    tc.tap_drill(thread, tap="cut").alternatives
    tc.percent_thread(inch, "4.1", tap="cut", basis="3H/4")
    thread.limits()
    tc.read_comment("(TAP 1/4-20)", tool_is_tap=True)
    refused(tc.Thread, "M8x")
    refused(tc.Thread, f"{turn}/0-20")
    refused(tc.feed, thread, unit="mm", mode="per_minute", decimals=3)
    refused(tc.read_number, "fast")
    tc.plan(JOB | {"rpm": rpm}).to_json()
    refused(tc.plan, JOB | {"rpn": rpm})


def resident() -> int:
    """Bytes of the process that are in memory."""
    return int(STATM.read_text().split()[1]) * resource.getpagesize()


def growth(calls: int, call: Callable[[int], None]) -> tuple[int, int]:
    """Blocks and bytes more than before, once everything that has to be there once is there."""
    turns = calls // 20
    for turn in range(min(turns, WARM_UP // 20)):
        call(turn)
    gc.collect()
    blocks, size = sys.getallocatedblocks(), resident()
    for turn in range(turns):
        call(turn)
    gc.collect()
    return sys.getallocatedblocks() - blocks, resident() - size


def main() -> int:
    if not STATM.exists():
        print("skipped: the memory of a process is read from /proc, which is not here")
        print("python memory: 0 passed, 0 failed, 3 skipped")
        return 0
    calls = int(sys.argv[1]) if len(sys.argv) > 1 else CALLS
    kept: list[object] = []
    heap = ctypes.CDLL(None)
    heap.malloc.argtypes, heap.malloc.restype = [ctypes.c_size_t], ctypes.c_void_p

    def keeping(turn: int) -> None:
        kept.append(object())
        twenty_calls(turn)

    def leaking(turn: int) -> None:
        heap.malloc(16)
        twenty_calls(turn)

    blocks, size = growth(calls, twenty_calls)
    print(f"{calls} calls: {blocks:+} blocks, {size:+} bytes")
    found = [blocks <= MOST_BLOCKS and size <= MOST_BYTES]
    blocks, size = growth(PLANTED_CALLS, keeping)
    print(f"{PLANTED_CALLS} calls, one of twenty keeps an object: {blocks:+} blocks, {size:+} bytes")
    found.append(blocks > MOST_BLOCKS)
    blocks, size = growth(PLANTED_CALLS, leaking)
    print(f"{PLANTED_CALLS} calls, one of twenty leaks 16 bytes: {blocks:+} blocks, {size:+} bytes")
    found.append(size > MOST_BYTES)
    print(f"python memory: {sum(found)} passed, {len(found) - sum(found)} failed, 0 skipped")
    return 0 if all(found) else 1


if __name__ == "__main__":
    sys.exit(main())
