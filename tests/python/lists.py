"""The operations of the tables of threads made of parts, of lists, of numbers and of depths."""

from __future__ import annotations

import json
from collections.abc import Callable
from fractions import Fraction

import threadcalc as tc
from operations import given, thread
from table import Cells


def wire_insert(row: Cells) -> dict[str, object]:
    hole = thread(row).with_wire_insert()
    return {"hole": str(hole), "major_mm": hole.major_mm}


def thread_parts(row: Cells) -> dict[str, object]:
    size, pitch = ([row[column]] if row[column] else [] for column in ("size", "pitch"))
    match row["form"]:
        case "metric":
            found = tc.Thread.metric(*size, *pitch)
        case "unified":
            # A text would name the size.
            found = tc.Thread.unified(*map(tc.read_number, size), *pitch)
        case _:
            found = tc.Thread.unified(*size, *pitch)
    if row["starts"]:
        found = found.with_starts(int(row["starts"]))
    if row["hand"]:
        found = found.with_hand(row["hand"])
    if row["tolerance_class"]:
        found = found.with_class(row["tolerance_class"])
    if row["side"]:
        found = found.with_side(row["side"])
    return {
        "canonical": str(found),
        "series": [found.series or ""],
        "on_side": [found.side or ""],
        "lead_mm": found.lead_mm,
    }


def standard_threads(row: Cells) -> dict[str, object]:
    found = tc.standard_threads(**given(row, "form", "series"))
    first, last = (found[0], found[-1]) if found else ("", "")
    return {"count": len(found), "first": [first], "last": [last]}


def standing(row: Cells) -> dict[str, object]:
    # Rust and C have calls for the other two.
    row["choice"], row["iso_262"]
    return {"standard": "yes" if thread(row).is_standard else "no"}


def near(row: Cells) -> dict[str, object]:
    found = thread(row)
    doubts = [finding for finding in found.findings if finding.id == "not-standard"]
    return {
        "near": ["; ".join(f"{text} {reason}" for text, reason in tc.near(found))],
        "suggestion": [doubt.suggestion.replace(", ", "; ") for doubt in doubts],
    }


def drills(row: Cells) -> dict[str, object]:
    found = tc.drills(*row["sets"].split())
    return {"count": len(found), "first": found[0].name, "last": found[-1].name}


def drill_of_diameter(row: Cells) -> dict[str, object]:
    found = tc.Drill.of_diameter(*given(row, "diameter_mm").values())
    return {"name": found.name, "set": [found.set or ""]}


def exact_number(row: Cells) -> dict[str, object]:
    """A double goes in wherever a number does; a job gives back what it stands for."""
    job = tc.Job(rpm=float(row["number"]))
    assert json.loads(job.to_json()) == job.to_dict()
    text = job.to_dict()["rpm"]
    return {"text": text, "value": Fraction(text), "number": float(Fraction(text))}


def feed_error(row: Cells) -> dict[str, object]:
    speed = given(row, "rpm") if row["mode"] == "per_minute" else {}
    found = tc.feed(thread(row), **speed, **given(row, "unit", "mode"), decimals=int(row["decimals"]))
    return {
        "text": found.text,
        "value": found.value,
        "lead_cut_mm": found.lead_cut_mm,
        "axial_error_mm": found.axial_error_mm(row["depth_mm"]),
    }


def depths(row: Cells) -> dict[str, object]:
    lengths = given(
        row, "full_thread_mm", "chamfer_threads", "drill_mm", "point_angle_deg", "bottom_clearance_mm", "tap_centre_mm"
    )
    found = tc.depths(thread(row), **lengths, **given(row, "tap_set_on"), through=row["hole"] == "through")
    columns = ("tap_mm", "program_tap_mm", "full_diameter_mm", "drill_point_mm")
    return {column: getattr(found, column) for column in columns}


def identify(row: Cells) -> dict[str, object]:
    keywords: dict[str, object] = dict(given(row, "within"))
    if row["starts"]:
        keywords["starts"] = int(row["starts"])
    if row["lead_mm"]:
        found = tc.identify_lead(row["lead_mm"], **keywords)
        listed = tc.identify(row["lead_mm"], **keywords)
        assert listed == ([] if found.verdict == "nonstandard" else found.matches)
    else:
        columns = given(
            row, "rpm_decimals", "most_rpm_decimals", decimals="feed_decimals", most_decimals="most_feed_decimals"
        )
        places = {name: int(cell) for name, cell in columns.items()}
        found = tc.identify_feed(**given(row, "feed", "rpm", "unit", "mode"), **places, **keywords)

    def each(between: str, show: Callable[[tc.Match], str]) -> list[str]:
        return [between.join(show(near) for near in found.matches)]

    def yes(flag: bool) -> str:
        return "yes" if flag else "no"

    return {
        "verdict": found.verdict,
        "matches": each("; ", str),
        "systems": each("; ", lambda near: "+".join(near.systems)),
        "pitch_mm": found.matches[0].pitch_mm,
        "errors": each("; ", lambda near: f"{near.lead_error.numerator}/{near.lead_error.denominator}"),
        "is_within": each(" ", lambda near: yes(near.is_within)),
        "is_exact": each(" ", lambda near: yes(near.is_exact)),
        "shortest_mm": found.shortest_lead_mm,
        "longest_mm": found.longest_lead_mm,
        "text": str(found),
    }


def threads_of_pitch(row: Cells) -> dict[str, object]:
    starts = {"starts": int(row["starts"])} if row["starts"] else {}
    found = tc.threads_of_pitch(row["pitch_mm"], row["diameter_mm"], **starts)
    return {"threads": ["; ".join(map(str, found))]}


def threads_near(row: Cells) -> dict[str, object]:
    find = tc.threads_near_pitch if row["by"] == "pitch" else tc.threads_near_diameter
    return {"threads": ["; ".join(map(str, find(row["value_mm"], row["within_mm"])))]}


OPERATIONS = (
    depths,
    drill_of_diameter,
    drills,
    exact_number,
    feed_error,
    identify,
    near,
    standard_threads,
    standing,
    thread_parts,
    wire_insert,
    threads_near,
    threads_of_pitch,
)
