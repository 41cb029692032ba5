#!/usr/bin/env python3
"""Writes the texts of the reference tables as fuzz inputs: fuzz/seeds.py FOLDER, one folder in it a target."""

import csv
import hashlib
import json
import re
import sys
from pathlib import Path

TESTS = Path(__file__).resolve().parent.parent / "tests"
TABLES = TESTS / "reference"
# Settings and size of the pieces of a program.
PROGRAM_HEADS = [b"\x00\x07", b"\x01\x02", b"\x06\x11", b"\x0f\x05"]
CHECK_HEADS = [b"\x00\x07", b"\x02\x03"]

JOB = {
    "schema": 1, "thread": "M8", "unit": "mm", "mode": "per_minute", "decimals": 3, "rpm": 650,
    "hole": "blind", "full_thread_depth_mm": 20, "tap": "cut", "dialect": "rs274ngc",
}
VARIANTS = [
    {"unit": "inch", "decimals": 4, "hole": "through"},
    {"mode": "per_revolution", "dialect": {"name": "own", "tap_rh": "G84.2", "tap_lh": "G84.3", "feed_per_revolution": "G95"}},
    {"tap": "form", "drill_mm": "7.4", "point_angle_deg": 140},
    {"drill_sets": ["number", "letter"], "percent": "75", "basis": "3H/4", "chamfer_threads": 4.5},
    {"tap_centre_mm": 2, "tap_set_on": "centre", "bottom_clearance_mm": 1.5, "r_plane_mm": 3},
    {"machine": {"highest_rpm": 600, "lowest_rpm": 50, "speed_step": "0.5"}, "dialect": None},
    {"dialect": {"tap_rh": "G84", "needs_spindle_running": False}, "percent": 70, "basis": "5H/8"},
]


def texts(table, column):
    """The bytes of a column; the tables write what a CSV cannot hold as \\xHH."""
    with open(TABLES / f"{table}.csv", encoding="utf-8", newline="") as file:
        for row in csv.DictReader(line for line in file if not line.startswith("#")):
            if row.get(column):
                plain = row[column].encode("utf-8")
                yield re.sub(rb"\\x([0-9a-fA-F]{2})", lambda hit: bytes([int(hit[1], 16)]), plain)


def jobs(designations):
    """Jobs for the JSON door: every designation once, every variant with one."""
    for number, designation in enumerate(designations):
        variant = VARIANTS[number % len(VARIANTS)]
        yield json.dumps(JOB | variant | {"thread": designation.decode("latin-1")}).encode()


def programs():
    """Whole programs, and each of their lines with every setting."""
    for program in sorted(TESTS.glob("nc/*.nc")):
        text = program.read_bytes()
        yield PROGRAM_HEADS[0] + text[:510]
        for line in text.splitlines(keepends=True):
            yield from (head + line for head in PROGRAM_HEADS)


def checked():
    """Whole programs under every dialect, and those of the table of checks."""
    for program in sorted(TESTS.glob("nc/*.nc")):
        yield from (head + program.read_bytes()[:1022] for head in CHECK_HEADS)
    for program in texts("nc_check", "program"):
        yield b"\x02\x05" + program.replace(b" | ", b"\n")[:1022]


def main():
    folder = Path(sys.argv[1])
    designations = sorted({text for table in TABLES.glob("*.csv") for column in ("text", "thread", "designation")
                           if table.stem not in ("read_number", "hole_note", "comment") for text in texts(table.stem, column)})
    numbers = sorted(set(texts("read_number", "text")))
    pairs = [left + b";" + right for left, right in zip(numbers, numbers[1:])]
    inputs_of = {
        "designation": designations,
        "number": numbers + pairs,
        "json": jobs(designations),
        "hole_note": set(texts("hole_note", "text")),
        "comment": set(texts("comment", "text")),
        "program": set(programs()),
        "nc_check": set(checked()),
    }
    for target, inputs in inputs_of.items():
        (folder / target).mkdir(parents=True, exist_ok=True)
        for text in inputs:
            (folder / target / hashlib.sha1(text).hexdigest()).write_bytes(text)


main()
