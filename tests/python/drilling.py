"""The operations of the tables of drills by name, lists of drills, probable holes and form taps' holes."""

from __future__ import annotations

import threadcalc as tc
from operations import given, ids, in_unit, thread
from table import Cells


def decimals(row: Cells) -> dict[str, int]:
    return {"decimals": int(row["decimals"])} if row["decimals"] else {}


def read_drill(row: Cells) -> dict[str, object]:
    drill = tc.Drill.read(row.bytes("name"))
    return {"drill": drill.name, "set": [drill.set or ""], "diameter_mm": drill.diameter_mm}


def nearest_exact_speeds(row: Cells) -> dict[str, object]:
    keywords = given(row, "rpm", "unit", "step", "lowest", "highest")
    below, above = tc.nearest_exact_speeds(thread(row), **keywords, **decimals(row))
    return {"below": below, "above": above}


def own_drills(row: Cells) -> dict[str, object]:
    keywords = given(row, "tap", "percent", "basis", "sets", "oversize_mm")
    reamer = row["taper_reamer"] == "true"
    found = tc.tap_drill(thread(row), **keywords, drills=row["drills"].split(";"), taper_reamer=reamer)
    return {
        "drill": found.drill.name,
        "within_limits": found.within_limits,
        "alternatives": [";".join(other.drill.name for other in found.alternatives)],
        "findings": ids(found.findings),
    }


def judge_drill(row: Cells) -> dict[str, object]:
    found = tc.judge_drill(thread(row), row.bytes("drill"), **given(row, "tap", "basis", "oversize_mm"))
    columns = (
        "percent",
        "within_limits",
        "left_to_limit_mm",
        "probable_hole_mm",
        "probable_percent",
        "probable_left_to_limit_mm",
    )
    return {column: getattr(found, column) for column in columns} | {"findings": ids(found.findings)}


def probable_hole(row: Cells) -> dict[str, object]:
    hole = tc.probable_hole_mm(row.bytes("drill"), **given(row, "oversize_mm"))
    return {"hole": in_unit(row, hole)}


def form_hole(row: Cells) -> dict[str, object]:
    least, most = tc.form_hole_mm(thread(row))
    return {"least_mm": least, "most_mm": most}


OPERATIONS = (form_hole, judge_drill, nearest_exact_speeds, own_drills, probable_hole, read_drill)
