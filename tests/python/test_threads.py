"""Nothing is shared that can be changed: eight threads read one Thread and get one answer."""

from __future__ import annotations

import itertools
import sys
import threading
from collections.abc import Callable, Iterator
from concurrent.futures import ThreadPoolExecutor

import pytest
import threadcalc as tc

THREADS = 8
THREAD = tc.Thread("7/16-14 UNC-2B")


@pytest.fixture(autouse=True)
def many_switches() -> Iterator[None]:
    """A switch between threads as often as the interpreter can."""
    usual = sys.getswitchinterval()
    sys.setswitchinterval(1e-6)
    yield
    sys.setswitchinterval(usual)


def answers() -> list[str]:
    found = []
    for rpm in range(300, 800):
        feed = tc.feed(THREAD, rpm, unit="mm", mode="per_minute", decimals=3)
        found.append(f"{feed.word} {feed.lead_error} {THREAD.pitch_mm} {hash(THREAD)} {THREAD.limits().minor_mm}")
        with pytest.raises(tc.DesignationError) as raised:
            tc.Thread(f"{rpm}/0-20")
        found.append(f"{raised.value} {raised.value.at}")
    job = tc.Job(
        thread=THREAD, unit="mm", mode="per_minute", decimals=3, rpm=650, hole="blind", full_thread_depth_mm=20, tap="cut"
    )
    return [*found, *(tc.plan(job).text for _ in range(20))]


def together(answer: Callable[[], list[str]]) -> list[list[str]]:
    """The answers of eight threads that begin at once."""
    start = threading.Barrier(THREADS)

    def ask(_: int) -> list[str]:
        start.wait()
        return answer()

    with ThreadPoolExecutor(THREADS) as pool:
        return list(pool.map(ask, range(THREADS)))


def test_eight_threads_over_one_thread() -> None:
    assert together(answers) == [answers()] * THREADS


def test_a_planted_answer_of_shared_state_is_seen() -> None:
    calls = itertools.count()

    def counting() -> list[str]:
        return [str(next(calls))]

    assert together(counting) != [counting()] * THREADS
