"""Ratio of an audit by two workers to one by one worker, over the same files in the same run.

    build/venv/bin/python tests/python/bench_audit.py [FOLDER]

Without a folder it makes an archive of its own: programs of 2 to 200 kB, milled contours with tapped holes among
them. Results are checked, times never are. Run it where at least two processors are free.
"""

from __future__ import annotations

import pathlib
import statistics
import sys
import tempfile
import time

import archives
import threadcalc as tc

ROUNDS, FILES = 9, 1200
# What two workers are to be worth, where two processors are free.
LEAST = 1.6


def contour(number: int) -> str:
    """Blocks of a contour; some programs have hundreds, some ten thousand."""
    blocks = 20 + (number * 7919) % 2500 * (1 + number % 3)
    lines = (f"N{line}G1X{line * 0.37:.3f}Y{line % 97 * 0.113:.3f}F800.\n" for line in range(10, 10 + blocks))
    return "".join(lines)


def archive(folder: pathlib.Path) -> None:
    for number in range(FILES):
        tapped = archives.WRONG if number % 50 == 0 else archives.CLEAN
        text = tapped.replace("M30", f"T2 M6 (MILL)\nG43 H2 S4000 M3\nG0 X0 Y0 Z5.\n{contour(number)}M30")
        archives.write(folder, {f"{number // 100:03}/part{number:05}.nc": text})


def timed(folder: pathlib.Path, workers: int) -> tuple[float, str]:
    start = time.perf_counter()
    audit = tc.audit(folder, dialect="rs274ngc", workers=workers)
    for _ in audit:
        pass
    return time.perf_counter() - start, str(audit)


def measure(folder: pathlib.Path) -> bool:
    size = sum(path.stat().st_size for path in folder.rglob("*") if path.is_file())
    expected = timed(folder, 1)[1]
    rounds = []
    for _ in range(ROUNDS):
        (one, said), (two, said_too) = timed(folder, 1), timed(folder, 2)
        assert said == said_too == expected
        rounds.append((one, two))
    one, two = (statistics.median(column) for column in zip(*rounds))
    ratio = statistics.median(one / two for one, two in rounds)
    mark = "" if ratio >= LEAST else ", MISSED"
    print(f"audit of {size / 1e6:.0f} MB: {one * 1e3:.0f} ms by one worker, {two * 1e3:.0f} ms by two, "
          f"{ratio:.2f} = one / two, at least {LEAST}{mark}")
    print("rounds:", " ".join(f"{one / two:.2f}" for one, two in rounds))
    return ratio >= LEAST


def main() -> int:
    if len(sys.argv) > 1:
        return 0 if measure(pathlib.Path(sys.argv[1])) else 1
    with tempfile.TemporaryDirectory() as name:
        archive(pathlib.Path(name))
        return 0 if measure(pathlib.Path(name)) else 1


if __name__ == "__main__":
    raise SystemExit(main())
