"""Whether the reference tables reach everything: every public operation in every language, every error code.

usage: build/venv/bin/python tests/coverage/run.py FOLDER, which holds libthreadcalc.a

What is public is read from the code, what is called from the runners as they run (C, Python) or as the
compiler sees them (Rust). `exceptions.txt` names what has no row, and why. Each comparison is shown a
planted operation or code that it has to miss. Last line: N passed, N failed.
"""

from __future__ import annotations

import pathlib
import re
import sys
import types

import of_c
import of_python
import of_rust
import public_rust

ROOT = pathlib.Path(__file__).resolve().parents[2]
TABLES = ROOT / "tests/reference"
LEAST_ROWS = 500
CODE = re.compile(r'^ +Self::(\w+) => "([a-z-]+)",', re.MULTILINE)


def exceptions() -> set[tuple[str, str]]:
    """Language and operation of every line."""
    lines = (pathlib.Path(__file__).parent / "exceptions.txt").read_text(encoding="utf-8").splitlines()
    found = set()
    for line in lines:
        if line and not line.startswith("#"):
            language, operation, _reason = line.split(maxsplit=2)
            found.add((language, operation))
    return found


def rows() -> list[tuple[str, str]]:
    """Table and status of every row; the tables for C alone stand in a folder of their own."""
    found = []
    for path in sorted(TABLES.rglob("*.csv")):
        lines = [line for line in path.read_text(encoding="ascii").splitlines() if not line.startswith("#")]
        place = lines[0].split(",").index("status")
        found += [(str(path.relative_to(TABLES)), line.split(",")[place]) for line in lines[1:]]
    return found


def codes(source: str) -> set[str]:
    """The names of all error codes, from the text of error.rs."""
    return {name for _, name in CODE.findall(source)}


def report(what: str, missing: list[str], count: int, fault: bool) -> tuple[int, int]:
    """Prints one comparison; how many passed and failed."""
    for name in missing:
        print(f"{what}: no row for {name}")
    print(f"{what}: {count} of {count + len(missing)}{'' if fault else ', AND THE PLANTED ONE'} have rows")
    return count + fault, len(missing) + (not fault)


def operations(language: str, of: types.ModuleType, source: str, called: set[str]) -> tuple[int, int]:
    """Compares one language."""
    public, with_planted = of.required(source), of.required(of.planted(source))
    excepted = {operation for theirs, operation in exceptions() if theirs == language}
    stale = sorted(excepted - public | excepted & called)
    for name in stale:
        print(f"{language}: exceptions.txt names {name}, which {'has rows' if name in called else 'is not public'}")
    missing = sorted(public - called - excepted)
    fault = with_planted - public != set() and not (with_planted - public) & called
    passed, failed = report(language, missing, len(public) - len(missing) - len(excepted & public), fault)
    return passed, failed + len(stale)


def error_codes(found: list[tuple[str, str]]) -> tuple[int, int]:
    """Compares the codes with the statuses of the rows."""
    source = (public_rust.SOURCE / "error.rs").read_text(encoding="utf-8")
    statuses = {status for _, status in found}
    public = codes(source)
    with_planted = codes(source + '\n            Self::Planted => "planted",')
    missing = sorted(public - statuses)
    return report("error codes", missing, len(public) - len(missing), with_planted - public == {"planted"} - statuses)


def enough(found: list[tuple[str, str]]) -> tuple[int, int]:
    """Asserts the least number of rows."""
    print(f"rows: {len(found)}, at least {LEAST_ROWS} wanted")
    return int(len(found) >= LEAST_ROWS), int(len(found) < LEAST_ROWS)


def main() -> int:
    libraries = pathlib.Path(sys.argv[1]).resolve()
    rust, c, python = public_rust.library_text(), of_c.header_text(), of_python.stub_text()
    found = rows()
    counts = [
        operations("C", of_c, c, of_c.called(libraries)),
        operations("Python", of_python, python, of_python.called()),
        operations("Rust", of_rust, rust, of_rust.called()),
        error_codes(found),
        enough(found),
    ]
    passed, failed = (sum(numbers) for numbers in zip(*counts, strict=True))
    print(f"coverage: {passed} passed, {failed} failed")
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main())
