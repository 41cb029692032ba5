"""The operations of the tables of depths back from a hole, its bottom, its mouth, and depths of programs."""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction

import threadcalc as tc
from operations import decimal_text, given, thread
from strengths import attributes, yes
from table import Cells

HOLE = ("drill_depth_mm", "drill_depth_to", "drill_mm", "point_angle_deg", "bottom_clearance_mm", "tap_centre_mm")


def texts(numbers: Iterable[Fraction | None]) -> list[str]:
    return ["none" if number is None else decimal_text(number)[0] for number in numbers]


def full_thread_that_fits(row: Cells) -> dict[str, object]:
    found = tc.full_thread_that_fits(thread(row), **given(row, *HOLE, "tap_set_on", "chamfer_threads"))
    return attributes(found, "full_thread_mm", "tap_mm", "program_tap_mm", "full_diameter_mm", "drill_point_mm")


def chamfers_for_full_thread(row: Cells) -> dict[str, object]:
    found = tc.chamfers_for_full_thread(thread(row), **given(row, *HOLE, "wanted_mm"))
    for reading in found:
        assert reading.chamfer_threads == tc.ChamferForm(reading.form).longest_threads
    return {
        "forms": [reading.form for reading in found if reading.gives_wanted],
        "full_threads": texts(reading.full_thread_mm for reading in found),
    }


def bottoming(row: Cells) -> dict[str, object]:
    found = tc.bottoming(thread(row), **given(row, "tap_end_mm", "drill_point_mm", "drill_mm", "point_angle_deg"))
    return {
        "angles_deg": texts(reading.point_angle_deg for reading in found.readings),
        "full_diameters_mm": texts(reading.full_diameter_mm for reading in found.readings),
        "rooms_mm": texts(reading.room_mm for reading in found.readings),
        "verdicts": [reading.verdict for reading in found.readings],
        "worst": found.worst,
        "is_certain": yes(found.is_certain),
    }


def run_out(row: Cells) -> dict[str, object]:
    return {"run_out_mm": tc.run_out_mm(thread(row), **given(row, "run_out"))}


def countersink(row: Cells) -> dict[str, object]:
    one = thread(row)
    found = tc.countersink(one, **given(row, "countersink_mm", "angle_deg", "hole_mm"))
    try:
        usual = tc.usual_countersink(one)
        shown = "{} to {} at {}".format(*texts([usual.least_mm, usual.most_mm, usual.angle_deg]))
    except tc.ThreadcalcError as error:
        shown = error.name
    return attributes(found, "tip_mm", "depth_at_major_mm", "full_thread_lost_mm") | {"usual": shown}


def program_depth(row: Cells) -> dict[str, object]:
    keywords = given(row, "depth_mm", "unit", "rounding") | {"decimals": int(row["decimals"])}
    if row["what"] == "derived":
        found = tc.program_depth_of_derived(**keywords | {"depth_mm": float(row["depth_mm"])})
    else:
        found = tc.program_depth(**keywords)
    return {"text": found.text, "value": found.value, "back_mm": found.depth_mm}


def through_hole(row: Cells) -> dict[str, object]:
    lengths = ("part_thickness_mm", "drill_mm", "drill_clearance_mm", "tap_centre_mm", "point_angle_deg")
    keywords = given(row, *lengths, "chamfer_threads", "over_travel_turns", "tap_set_on")
    return attributes(
        tc.through_hole(thread(row), **keywords),
        "program_tap_mm",
        "tap_mm",
        "tap_below_mm",
        "full_diameter_mm",
        "drill_point_mm",
        "drill_below_mm",
    )


OPERATIONS = (
    bottoming,
    chamfers_for_full_thread,
    countersink,
    full_thread_that_fits,
    program_depth,
    run_out,
    through_hole,
)
