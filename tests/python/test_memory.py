"""A million calls leave no memory behind, and the measure sees a leak in one call of ten."""

import ctypes
import gc
import sys
from collections.abc import Callable
from pathlib import Path

import threadcalc as tc

WARM_UP = 20_000
CALLS = 1_000_000
#: Blocks that the interpreter may keep for itself, and pages for its own free lists: 1 MiB in 10^6 calls.
MOST_BLOCKS = 200
MOST_PAGES = 256
JOB = {
    "unit": "mm",
    "mode": "per_minute",
    "decimals": 3,
    "rpm": 650,
    "hole": "blind",
    "full_thread_depth_mm": 20,
    "tap": "cut",
    "dialect": "rs274ngc",
}


def round_of_calls() -> int:
    """Ten calls of every kind: values, answers with findings, plans, and errors that are raised and caught."""
    thread = tc.Thread("7/16-14 UNC-2B")
    word = tc.feed(thread, 650, unit="mm", mode="per_minute", decimals=3)
    pipe = tc.Thread("1/4-18 NPT").pipe()
    note = tc.read_hole_note("4X M8x1.25-6H 16 DEEP", unit="mm")
    found = tc.read_comment("TAP M8X1.25 LH", tool_is_tap=True)
    drill = tc.tap_drill(thread, tap="cut", sets=["number", "letter", "fractional"])
    kept = len(word.text) + len(str(pipe.hand_tight_length_mm)) + len(found.threads) + len(drill.findings)
    for text in ("M8-9Z", "1/4-19 NPT"):
        try:
            tc.Thread(text)
        except tc.DesignationError as error:
            kept += len(error.hint)
    kept += len(tc.plan({"thread": thread, **JOB}).to_json())
    try:
        tc.plan({"thread": thread})
    except tc.ThreadcalcError as error:
        kept += error.code
    return kept + len(note.findings)


def pages() -> int:
    return int(Path("/proc/self/statm").read_text().split()[1])


def heap() -> ctypes.CDLL:
    """The allocator of the native part."""
    library = ctypes.CDLL(None)
    library.malloc.argtypes, library.malloc.restype = [ctypes.c_size_t], ctypes.c_void_p
    return library


def use_up_holes() -> None:
    """Takes what other tests of this process gave back, where a lost block would need no page of its own."""
    malloc, taken = heap().malloc, 0
    # 64 pages of the smallest blocks, which are 32 bytes long: new memory once nearly all of them are new.
    while taken < 60:
        before = pages()
        for _ in range(64 * 4096 // 32):
            malloc(16)
        taken = pages() - before


def growth(once: Callable[[], object], calls: int) -> tuple[int, int]:
    """Blocks and pages that `calls` calls, ten in each `once`, leave behind."""
    for _ in range(WARM_UP // 10):
        once()
    gc.collect()
    use_up_holes()
    blocks, resident = sys.getallocatedblocks(), pages()
    for _ in range(calls // 10):
        once()
    gc.collect()
    return sys.getallocatedblocks() - blocks, pages() - resident


def test_a_million_calls_leave_nothing() -> None:
    blocks, resident = growth(round_of_calls, CALLS)
    assert blocks <= MOST_BLOCKS and resident <= MOST_PAGES, (blocks, resident)


def test_the_measure_sees_an_object_that_is_kept() -> None:
    kept: list[float] = []

    def keeping() -> None:
        round_of_calls()
        kept.append(len(kept) + 0.5)

    blocks, _ = growth(keeping, CALLS // 20)
    assert blocks > MOST_BLOCKS, blocks


def test_the_measure_sees_a_block_of_the_heap_that_is_lost() -> None:
    """As the allocator of the native part would lose it: one of the smallest blocks in ten calls."""
    malloc = heap().malloc

    def losing() -> None:
        round_of_calls()
        malloc(16)

    _, resident = growth(losing, CALLS)
    assert resident > MOST_PAGES, resident
