"""Ratios of ``feed`` and ``plan`` against their floors, in one process.

The floor is an empty function of the same signature and answer, for ``feed`` a bare format expression
beside it, for ``plan`` the core's own time on top; they are in the module only when it is built with the
feature ``bench``, in an environment of its own:

    python3 -m venv build/bench
    build/bench/bin/pip install 'maturin>=1.9.4,<2'
    build/bench/bin/maturin build --release --features bench -m threadcalc-py/Cargo.toml -o build/bench/wheels
    build/bench/bin/pip install --force-reinstall build/bench/wheels/*.whl
    build/bench/bin/python tests/python/bench.py

Results are checked, times never are.
"""

from __future__ import annotations

import gc
import statistics
import timeit

import threadcalc as tc
from threadcalc import _threadcalc

REPEATS, CALLS = 41, 50_000
KEYWORDS = "unit='mm', mode='per_minute', decimals=3"


def rounds(statements: dict[str, str], names: dict[str, object]) -> list[dict[str, float]]:
    """Nanoseconds of one call of every statement, once a round: a busy moment meets all of a round alike."""
    timers = {name: timeit.Timer(statement, globals=names) for name, statement in statements.items()}
    return [{name: timer.timeit(CALLS) / CALLS * 1e9 for name, timer in timers.items()} for _ in range(REPEATS)]


def feeds() -> None:
    names: dict[str, object] = {"thread": tc.Thread("7/16-14 UNC-2B"), "rpm": 650, "feed": tc.feed}
    statements = {"feed": f"feed(thread, rpm, {KEYWORDS})", "format": "f'F{rpm*25.4/14:.3f}'"}
    statements["feed and its word"] = f"{statements['feed']}.word"
    if hasattr(_threadcalc, "empty_feed"):
        names["empty"] = _threadcalc.empty_feed
        statements["empty call"] = f"empty(thread, rpm, {KEYWORDS})"
    words = [eval(statements[name], dict(names)) for name in ("feed and its word", "format")]
    assert words == ["F1179.286", "F1179.286"], words
    gc.disable()
    measured = rounds(statements, names)
    for name in statements:
        time = statistics.median(times[name] for times in measured)
        ratio = statistics.median(times["feed"] / times[name] for times in measured)
        print(f"{name}: {time:.0f} ns, {ratio:.2f} = feed / this")
    if "empty call" not in statements:
        print("no empty call: build with --features bench, see the head of this file")


# What ``plan(Job)`` may cost, in plans of the core with an empty call.
MOST_OF_A_PLAN = 1.3
JOB = {
    "thread": "7/16-14 UNC-2B", "rpm": 650, "unit": "mm", "mode": "per_minute", "decimals": 3, "hole": "blind",
    "full_thread_depth_mm": 20, "tap": "cut", "dialect": "rs274ngc",
}


def plans() -> bool:
    """Prints the line of ``plan``; false if it is above its limit."""
    if not hasattr(_threadcalc, "empty_plan"):
        return True
    job = tc.Job(**JOB)
    names: dict[str, object] = {"job": job, "plan": tc.plan, "empty": _threadcalc.empty_plan}
    words = [eval(f"{name}(job).words", dict(names)) for name in ("plan", "empty")]
    assert words[0] == words[1] and "F1179.286" in words[0], words
    timers = [timeit.Timer(f"{name}(job)", globals=names) for name in ("plan", "empty")]
    calls = CALLS // 10
    times = []
    for _ in range(REPEATS):
        plan, empty = (timer.timeit(calls) / calls * 1e9 for timer in timers)
        times.append((plan, empty, _threadcalc.core_plans_ns(job, calls) / calls))
    plan, empty, core = (statistics.median(column) for column in zip(*times))
    ratio = statistics.median(plan / (empty + core) for plan, empty, core in times)
    mark = "" if ratio <= MOST_OF_A_PLAN else ", MISSED"
    print(f"plan: {plan:.0f} ns, core {core:.0f} ns, empty call {empty:.0f} ns, {ratio:.2f} = plan / both, "
          f"at most {MOST_OF_A_PLAN}{mark}")
    return ratio <= MOST_OF_A_PLAN


def main() -> int:
    feeds()
    return 0 if plans() else 1


if __name__ == "__main__":
    raise SystemExit(main())
