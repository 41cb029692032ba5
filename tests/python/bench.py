"""Ratios of ``feed`` against its floor and against a bare format expression, in one process.

The floor is an empty function of the same signature and answer; it is in the module only when it is
built with the feature ``bench``, in an environment of its own:

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

REPEATS, CALLS = 15, 200_000
KEYWORDS = "unit='mm', mode='per_minute', decimals=3"


def nanoseconds(statement: str, names: dict[str, object]) -> float:
    """Median time of one call."""
    times = timeit.repeat(statement, globals=names, repeat=REPEATS, number=CALLS)
    return statistics.median(times) / CALLS * 1e9


def main() -> None:
    names: dict[str, object] = {"thread": tc.Thread("7/16-14 UNC-2B"), "rpm": 650, "feed": tc.feed}
    statements = {"feed": f"feed(thread, rpm, {KEYWORDS})", "format": "f'F{rpm*25.4/14:.3f}'"}
    statements["feed and its word"] = f"{statements['feed']}.word"
    if hasattr(_threadcalc, "empty_feed"):
        names["empty"] = _threadcalc.empty_feed
        statements["empty call"] = f"empty(thread, rpm, {KEYWORDS})"
    words = [eval(statements[name], dict(names)) for name in ("feed and its word", "format")]
    assert words == ["F1179.286", "F1179.286"], words
    gc.disable()
    times = {name: nanoseconds(statement, names) for name, statement in statements.items()}
    for name, time in times.items():
        print(f"{name}: {time:.0f} ns, {times['feed'] / time:.2f} = feed / this")


if __name__ == "__main__":
    main()
