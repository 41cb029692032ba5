"""The operation of the table of programs."""

from __future__ import annotations

import json

import threadcalc as tc
from table import Cells


def pairs(cell: str) -> dict[str, str]:
    return dict(pair.split("=", 1) for pair in cell.split("; ") if pair)


def nested(flat: dict[str, str]) -> dict[str, object]:
    """``units_codes.inch`` is ``inch`` in ``units_codes``."""
    found: dict = {}
    for key, value in flat.items():
        *outer, name = key.split(".")
        place = found
        for part in outer:
            place = place.setdefault(part, {})
        place[name] = value
    return found


def dialect_of(row: Cells) -> tc.Dialect:
    fields = pairs(row["dialect"])
    return tc.Dialect(fields.pop("base", "unset"), **nested(fields))


def program_of(row: Cells, column: str) -> bytes:
    return row.bytes(column).replace(b" | ", b"\n")


def nc_check(row: Cells) -> dict[str, object]:
    dialect = dialect_of(row)
    told = nested(pairs(row["options"]))
    machine = told.pop("machine", None)
    tools = [pairs(cell.strip()) for cell in row["tools"].split("|") if cell.strip()]
    report = tc.check(program_of(row, "program"), dialect=dialect, options=told, machine=machine, tools=tools)
    wanted = row["findings"]
    told_of = [one for one in report.findings if one.severity != "info" or one.id in wanted]
    told_of.sort(key=lambda one: (one.line, one.id))
    return {
        "holes": [f"{hole.line}:{six_digits(hole.lead_mm)}:{hole.hand or 'none'}" for hole in report.tapped_holes],
        "findings": [f"{one.line}:{one.id}:{one.severity}" for one in told_of],
    }


def six_digits(lead: object) -> str:
    if lead is None:
        return "none"
    text = repr(float(f"{float(lead):.5e}"))  # type: ignore[arg-type]
    return text.removesuffix(".0")


def nc_compare(row: Cells) -> dict[str, object]:
    old, new = program_of(row, "old"), program_of(row, "new")
    comparison = tc.compare(old, new, dialect=dialect_of(row), options=pairs(row["options"]))
    texts = [str(change).replace(",", ";") for change in comparison.changes]
    data = comparison.to_dict()
    assert json.loads(comparison.to_json()) == data
    return {
        "counts": " ".join(str(count) for count in data["counts"].values()),
        "text": " | ".join(texts),
        "not_compared": [f"{value}:{count}" for value, count in comparison.not_compared.items()],
    }


OPERATIONS = (nc_check, nc_compare)
