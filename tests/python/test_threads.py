"""Nothing is shared that can be changed: eight threads read one Thread and get one answer."""

from concurrent.futures import ThreadPoolExecutor

import threadcalc as tc

THREAD = tc.Thread("7/16-14 UNC-2B")


def answers(_: int) -> list[str]:
    found = []
    for rpm in range(300, 800):
        feed = tc.feed(THREAD, rpm, unit="mm", mode="per_minute", decimals=3)
        found.append(f"{feed.word} {feed.lead_error} {THREAD.pitch_mm} {hash(THREAD)}")
    job = tc.Job(
        thread=THREAD, unit="mm", mode="per_minute", decimals=3, rpm=650, hole="blind", full_thread_depth_mm=20, tap="cut"
    )
    return [*found, *(tc.plan(job).text for _ in range(20))]


def test_eight_threads_over_one_thread() -> None:
    alone = answers(0)
    with ThreadPoolExecutor(8) as pool:
        together = list(pool.map(answers, range(8)))
    assert together == [alone] * 8
