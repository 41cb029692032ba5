"""The operations of the tables of pipe threads, written forms, fits, hole notes and comments."""

from __future__ import annotations

from decimal import Decimal
from fractions import Fraction

import threadcalc as tc
from table import Cells


def given(row: Cells, *columns: str, **renamed: str) -> dict[str, str]:
    """The cells that are not empty, as keywords."""
    names = {column: column for column in columns} | renamed
    return {name: row[column] for name, column in names.items() if row[column]}


def thread(row: Cells) -> tc.Thread:
    return tc.Thread(row.bytes("designation"))


def in_unit(row: Cells, length: Fraction | None) -> Fraction | None:
    """A length in the row's unit."""
    return length / Fraction("25.4") if length is not None and row["unit"] == "inch" else length


def ids(findings: list[tc.Finding]) -> list[str]:
    return [finding.id for finding in findings]


def pipe(row: Cells) -> dict[str, object]:
    found = thread(row).pipe()
    lengths = (
        "pipe_diameter",
        "pitch_diameter_small_end",
        "pitch_diameter_gauge_plane",
        "hand_tight_length",
        "effective_length",
        "pitch_diameter_effective",
        "minor_diameter_small_end",
        "thread_height",
        "gauge_length",
        "useful_length",
    )
    in_its_unit = {name: in_unit(row, getattr(found, f"{name}_mm")) for name in lengths}
    return in_its_unit | {"gauge_tolerance_turns": found.gauge_tolerance_turns}


def pipe_limits(row: Cells) -> dict[str, object]:
    written = thread(row)
    sided = written.with_side(row["side"]) if row["side"] else written
    return six_limits(row, sided.limits())


def six_limits(row: Cells, found: tc.Limits) -> dict[str, object]:
    """All six limits in the row's unit, and the standard's own."""
    ends = {}
    for name, (low, high) in {
        "major": found.major_mm,
        "pitch": found.pitch_diameter_mm,
        "minor": found.minor_mm,
    }.items():
        ends |= {f"{name}_min": in_unit(row, low), f"{name}_max": in_unit(row, high)}
    return ends | {"unit": found.native_unit}


def pipe_drill(row: Cells) -> dict[str, object]:
    reamer = {"true": True, "false": False}[row["taper_reamer"]]
    keywords = given(row, "tap", "percent", "basis")
    found = tc.tap_drill(thread(row), **keywords, sets=row["sets"], taper_reamer=reamer)
    return {"drill": found.drill.name, "within_limits": found.within_limits, "findings": ids(found.findings)}


def taper_depth(row: Cells) -> dict[str, object]:
    keywords = given(row, "projection_mm", "drill_mm", "point_angle_deg", "bottom_clearance_mm")
    found = tc.taper_depths(thread(row), **keywords)
    columns = (
        "hand_tight_mm",
        "projection_tolerance_mm",
        "tap_mm",
        "first_hole_mm",
        "full_diameter_mm",
        "drill_point_mm",
        "tap_turns",
        "hand_tight_turns",
        "diameter_per_turn_mm",
        "gauge_tolerance_turns",
    )
    return {column: getattr(found, column) for column in columns} | {"used_projection_mm": found.projection_mm}


def written_form(row: Cells) -> dict[str, object]:
    found = tc.Thread(row.bytes("text"))
    return {"canonical": str(found), "findings": ids(found.findings)}


def fit(row: Cells) -> dict[str, object]:
    internal, external = tc.read_fit(row.bytes("text"))
    return {"internal": str(internal), "external": str(external)}


def bad_designation(row: Cells) -> dict[str, object]:
    assert row["at"], f"{row['id']} names no byte"
    return {"text": str(tc.Thread(row.bytes("text")))}


def decimal_text(value: Fraction | None) -> list[str]:
    """An exact number as decimal text in a list, so that an empty cell is "none"."""
    if value is None:
        return [""]
    if any((value * 10**places).denominator == 1 for places in range(19)):
        return [format(Decimal(value.numerator) / value.denominator, "f")]
    return [str(value)]


def hole_note(row: Cells) -> dict[str, object]:
    note = tc.read_hole_note(row.bytes("text"), unit=row["unit"] or None)
    lengths = ("thread_depth_mm", "drill_mm", "drill_depth_mm", "countersink_mm", "countersink_angle_deg")
    lengths += ("counterbore_mm", "counterbore_depth_mm", "bolt_circle_mm")
    flags = {
        "thread-through": note.thread_through,
        "drill-through": note.drill_through,
        "countersink": note.has_countersink,
        "counterbore": note.has_counterbore,
        "spotface": note.is_spotface,
        "equally-spaced": note.equally_spaced,
    }
    others = ("count", "thread", "thread_at", "thread_length", "sides", "plating")
    shown = {name: getattr(note, name) for name in others}
    numbers = [finding.numbers for finding in note.findings]
    return {
        **{name: ["" if value is None else value] for name, value in shown.items()},
        **{name: decimal_text(getattr(note, name)) for name in lengths},
        "flags": [name for name, is_set in flags.items() if is_set],
        "findings": ids(note.findings),
        "unread": [f"{n['byte']:.0f}+{n['length']:.0f}" for n in numbers if {"byte", "length"} <= n.keys()],
    }


def comment(row: Cells) -> dict[str, object]:
    text = row.bytes("text")
    found = tc.read_comment(text, tool_is_tap={"yes": True, "no": False}[row["tool_is_tap"]])
    return {
        "threads": [";".join(str(one.thread) for one in found.threads)],
        "places": [f"{one.at}+{one.length}" for one in found.threads],
        "more": "yes" if found.more else "no",
    }


OPERATIONS = (
    bad_designation,
    comment,
    fit,
    hole_note,
    pipe,
    pipe_drill,
    pipe_limits,
    taper_depth,
    written_form,
)
