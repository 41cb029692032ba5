"""Jobs that several tests begin with, and the operations of the tables of plans and of single fields of a job."""

from __future__ import annotations

import json

import threadcalc as tc
from operations import given
from table import Cells

METRIC: dict[str, object] = {
    "thread": "M8x1.25-6H",
    "unit": "mm",
    "mode": "per_minute",
    "decimals": 3,
    "rpm": 600,
    "hole": "blind",
    "full_thread_depth_mm": 16,
    "tap": "cut",
}
UNIFIED: dict[str, object] = METRIC | {
    "thread": "7/16-14 UNC-2B",
    "rpm": 650,
    "full_thread_depth_mm": 20,
    "dialect": "rs274ngc",
}

FIELDS = (
    "unit",
    "mode",
    "decimals",
    "rpm",
    "hole",
    "full_thread_depth_mm",
    "tap",
    "drill_sets",
    "drill_mm",
    "percent",
    "basis",
    "tap_set_on",
    "tap_centre_mm",
)


def fields_of(row: Cells) -> dict[str, object]:
    """The fields of the row's job; the codes of the control's own dialect are a dict."""
    fields: dict[str, object] = {**given(row, *FIELDS, thread="designation")}
    machine = given(row, speed_step="speed_step", highest_rpm="highest_rpm")
    own = given(row, "tap_rh", "tap_lh")
    dialect = own if row["dialect"] == "own" else row["dialect"]
    return fields | ({"machine": machine} if machine else {}) | ({"dialect": dialect} if dialect else {})


def plan(row: Cells) -> dict[str, object]:
    fields = fields_of(row)
    found = tc.plan(tc.Job(**fields))
    data = found.to_dict()
    # A dict is planned like a job; the JSON says the same as the object.
    assert tc.plan(fields).to_json() == found.to_json()
    assert (json.loads(found.to_json()), data["feed"]["word"]) == (data, found.feed.word)
    assert found.feed.word in str(found)
    return {
        "thread": str(found.thread),
        "drill": found.drill.drill.name,
        "programmed_rpm": found.programmed_rpm,
        "word": found.feed.word,
        "axial_error_mm": found.axial_error_mm,
        "program_tap_mm": found.depths.program_tap_mm,
        "card": [f"S{row.rpm}={row.feed.word}" for row in found.card],
        "blocks": ["; ".join(found.blocks)],
        "restore": found.restore,
        "withheld": found.withheld,
        "findings": [f"{finding.id}/{finding.severity}" for finding in found.findings],
        "confidence": [found.limits.confidence.replace(" ", "-") if found.limits else ""],
    }


def place(fields: dict[str, object], key: str, value: object) -> None:
    """Puts a value at a dotted key: every point is a dict."""
    *rooms, key = key.split(".")
    for room in rooms:
        inner = fields.setdefault(room, {})
        assert isinstance(inner, dict)
        fields = inner
    fields[key] = value


def job_field(row: Cells) -> dict[str, object]:
    fields: dict[str, object] = {}
    place(fields, row["key"], row.bytes("value"))
    job = tc.Job(**fields)
    return {"next_missing": job.missing[0]}


def job_of_text(text: str) -> dict[str, object]:
    """A job as text: key=value, separated by semicolons; a key with a point belongs to a dict."""
    fields: dict[str, object] = {}
    for pair in text.split("; "):
        key, _, value = pair.partition("=")
        place(fields, key, value)
    return fields


def whole_plan(row: Cells) -> dict[str, object]:
    found = tc.plan(job_of_text(row.bytes("job").decode()))
    # What was planned is a job again, with the same plan but for what need not be assumed any more.
    again = tc.plan(found.job.to_dict())
    assert (again.blocks, again.depths, again.spindle) == (found.blocks, found.depths, found.spindle)
    spindle, joint = found.spindle, found.joint
    torque, travel = spindle.torque, spindle.holder_travel
    formed = found.formed_minor_mm
    return {
        "drill": found.drill.drill.name,
        "programmed_rpm": found.programmed_rpm,
        "word": found.feed.word,
        "program_tap_mm": found.depths.program_tap_mm,
        "full_diameter_mm": found.depths.full_diameter_mm,
        "drill_point_mm": found.depths.drill_point_mm,
        "torque_nm": torque.likely_nm if torque else None,
        "power_kw": spindle.power_kw,
        "time_s": spindle.time.time_s,
        "reached_rpm": spindle.time.reached_rpm,
        "extension_mm": travel.extension_mm if travel else None,
        "tap_class": found.tap_class.tap_class if found.tap_class else None,
        "tap_limit": str(found.tap_limit) if found.tap_limit else None,
        "weakest": joint.weakest if joint else None,
        "required_length_mm": joint.required_length_mm if joint else None,
        "safety_factor": joint.safety_factor if joint else None,
        "lost_mm": found.countersink.full_thread_lost_mm if found.countersink else None,
        "not_go_turns": str(found.not_go.most_turns) if found.not_go else None,
        "formed_minor_mm": " ".join(str(float(end)) for end in formed) if formed else None,
        "blocks": "; ".join(found.blocks),
        "withheld": found.withheld,
        "findings": [f"{finding.id}/{finding.severity}" for finding in found.findings],
    }


OPERATIONS = (job_field, plan, whole_plan)
