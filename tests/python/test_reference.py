"""Every table of ``tests/reference``, row by row: the same rows that Rust and C run."""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction

import depths
import drilling
import cycles
import gauging
import jobs
import lists
import operations
import programs
import pytest
import sizes
import strengths
import threadcalc as tc
from operations import given, in_unit, thread
from table import TABLES, Cells, Table


def decimals(row: Cells) -> dict[str, int]:
    return {"decimals": int(row["decimals"])} if row["decimals"] else {}


def read_number(row: Cells) -> dict[str, object]:
    return {"value": tc.read_number(row.bytes("text"))}


def designation(row: Cells) -> dict[str, object]:
    found = tc.Thread(row.bytes("text"))
    return {
        "canonical": str(found),
        "form": found.form,
        "series": [found.series or ""],
        "size": found.size,
        "tolerance_class": [found.tolerance_class or ""],
        "side": [found.side or ""],
        "hand": found.hand,
        "starts": found.starts,
        "major_mm": found.major_mm,
        "findings": [finding.id for finding in found.findings],
    }


def lead(row: Cells) -> dict[str, object]:
    found = thread(row)
    return {"pitch_mm": found.pitch_mm, "lead_mm": found.lead_mm, "starts": found.starts, "hand": found.hand}


def profile_metric(row: Cells) -> dict[str, object]:
    found = thread(row).profile()
    columns = ("triangle_height_mm", "pitch_diameter_mm", "minor_mm", "external_minor_mm", "stress_area_mm2")
    return {column: getattr(found, column) for column in columns}


def profile_trapezoidal(row: Cells) -> dict[str, object]:
    found = thread(row).profile()
    return {column: getattr(found, column) for column in ("pitch_diameter_mm", "minor_mm", "external_minor_mm")}


def profile_unified(row: Cells) -> dict[str, object]:
    found = thread(row).profile()
    values = {
        "pitch_diameter_in": (found.pitch_diameter_mm, 25.4),
        "minor_in": (found.minor_mm, 25.4),
        "external_minor_in": (found.external_minor_mm, 25.4),
        "stress_area_in2": (found.stress_area_mm2, 645.16),
    }
    # Where the standard has none there is nothing to divide.
    return {name: None if value is None else value / unit for name, (value, unit) in values.items()}


def minor_limits(row: Cells) -> dict[str, object]:
    found = thread(row).limits()
    low, high = found.minor_mm
    return {
        "minor_min": in_unit(row, low),
        "minor_max": in_unit(row, high),
        "pitch_min": in_unit(row, found.pitch_diameter_mm[0]),
        "unit": found.native_unit,
    }


def drill(row: Cells) -> dict[str, object]:
    found = tc.Drill(**given(row, "set"), name=row.bytes("name"))
    assert found in tc.drills(row["set"])
    return {"diameter_mm": found.diameter_mm, "name": found.name}


def percent(row: Cells) -> dict[str, object]:
    keywords = given(row, "drill_mm", "tap", "basis")
    return {"percent": tc.percent_thread(thread(row), **keywords)}


def drill_diameter(row: Cells) -> dict[str, object]:
    keywords = given(row, "percent", "tap", "basis")
    return {"drill_mm": tc.drill_diameter(thread(row), **keywords)}


def tap_drill(row: Cells) -> dict[str, object]:
    found = tc.tap_drill(thread(row), **given(row, "tap", "percent", "basis"), sets=row["sets"])
    return {"drill": found.drill.name, "within_limits": found.within_limits}


def programmed_speed(row: Cells) -> dict[str, object]:
    return {"speed": tc.programmed_speed(**given(row, "rpm", "step", "lowest", "highest"))}


def feed(row: Cells) -> dict[str, object]:
    found = tc.feed(thread(row), **given(row, "rpm", "unit", "mode"), **decimals(row))
    return {"word": found.word, "exact": found.exact, "lead_error": found.lead_error}


def exact_speeds(row: Cells) -> dict[str, object]:
    whole = {name: int(cell) for name, cell in given(row, "count", "lowest", "highest").items()}
    return {"speeds": tc.exact_speeds(thread(row), **given(row, "rpm", "unit"), **decimals(row), **whole)}


OPERATIONS: dict[str, Callable[[Cells], dict[str, object]]] = {
    operation.__name__: operation
    for operation in (
        designation,
        drill,
        drill_diameter,
        exact_speeds,
        feed,
        lead,
        minor_limits,
        percent,
        profile_metric,
        profile_trapezoidal,
        profile_unified,
        programmed_speed,
        read_number,
        tap_drill,
        *depths.OPERATIONS,
        *drilling.OPERATIONS,
        *cycles.OPERATIONS,
        *sizes.OPERATIONS,
        *gauging.OPERATIONS,
        *operations.OPERATIONS,
        *lists.OPERATIONS,
        *jobs.OPERATIONS,
        *programs.OPERATIONS,
        *strengths.OPERATIONS,
    )
}


def test_every_table_has_an_operation() -> None:
    assert sorted(OPERATIONS) == TABLES


@pytest.mark.parametrize("name", TABLES)
def test_every_row(name: str) -> None:
    table = Table(name)
    run = table.check(OPERATIONS[name], tc.ThreadcalcError)
    assert run == table.count, f"{table.name}: {run} rows run, the head says {table.count}"
    helpers = {column for column in table.tolerances.values() if column in table.columns}
    ignored = set(table.columns) - table.used - helpers
    assert not ignored, f"{table.name}: columns that no check looks at: {ignored}"


def wrong(cell: str) -> str:
    """Another value of the same kind."""
    try:
        return str(Fraction(cell) + 1)
    except ValueError:
        return f"{cell}x"


@pytest.mark.parametrize("name", TABLES)
def test_a_wrong_cell_is_seen(name: str) -> None:
    table, operation = Table(name), OPERATIONS[name]
    seen: set[str] = set()
    for row in table.rows:
        if row["status"] != "ok":
            continue
        for column in set(operation(row)) - seen:
            if row[column] not in ("", "-"):
                planted = Cells(dict(row) | {column: wrong(row[column])}, table.used)
                assert table.faults(planted, operation, tc.ThreadcalcError), f"{row['id']} {column}"
                seen.add(column)
    bad = [row for row in table.rows if row["status"] != "ok"]
    for row in bad[:1]:
        assert table.faults(Cells(dict(row) | {"status": "ok"}, table.used), operation, tc.ThreadcalcError)
    assert seen or len(bad) == table.count, f"{table.name}: nothing was planted"
