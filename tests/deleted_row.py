"""Deletes one row of each reference table in a copy: all three runners have to fail on that copy,
and of the tables for one language alone the runner of that one.

The runners read the folder that THREADCALC_REFERENCE names.
"""

import os
import pathlib
import shutil
import subprocess
import sys
import tempfile

ROOT = pathlib.Path(__file__).resolve().parent.parent
RUNNERS = {
    "Rust": ["cargo", "test", "-q", "-p", "threadcalc-core", "--test", "reference"],
    "C": ["build/c/reference"],
    "Python": ["build/venv/bin/python", "-m", "pytest", "-q", "-x", "tests/python/test_reference.py"],
}

# Folders of tables that one runner reads.
ALONE = {"c": ["C"], "rust": ["Rust"]}


def fails(command: list[str], folder: pathlib.Path) -> bool:
    environment = dict(os.environ, THREADCALC_REFERENCE=str(folder))
    done = subprocess.run(command, cwd=ROOT, env=environment, capture_output=True, check=False)
    return done.returncode != 0


def main() -> int:
    tables = sorted((ROOT / "tests/reference").rglob("*.csv"))
    passed = failed = 0
    with tempfile.TemporaryDirectory() as scratch:
        copy = pathlib.Path(scratch) / "reference"
        shutil.copytree(ROOT / "tests/reference", copy)
        for language, command in RUNNERS.items():
            if fails(command, copy):
                failed += 1
                print(f"{language}: fails on an unchanged copy")
        for table in tables:
            lines = table.read_text().splitlines(keepends=True)
            name = table.relative_to(ROOT / "tests/reference")
            (copy / name).write_text("".join(lines[:-1]))
            readers = ALONE.get(name.parent.name, list(RUNNERS))
            for language, command in ((reader, RUNNERS[reader]) for reader in readers):
                if fails(command, copy):
                    passed += 1
                else:
                    failed += 1
                    print(f"{language}: does not notice a row missing in {name}")
            (copy / name).write_text("".join(lines))
    print(f"deleted row: {passed} passed, {failed} failed")
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main())
