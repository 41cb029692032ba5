"""The operations of the tables of coated threads."""

from __future__ import annotations

import threadcalc as tc
from operations import given, six_limits, thread
from strengths import attributes
from table import Cells


def coating_growth(row: Cells) -> dict[str, object]:
    growth = thread(row).coating_growth(**given(row, "thickness_um"))
    return attributes(growth, "crest_mm", "pitch_diameter_mm")


def before_coating(row: Cells) -> dict[str, object]:
    return six_limits(row, thread(row).limits_before_coating(**given(row, "thinnest_um", "thickest_um")))


def thickest_coating(row: Cells) -> dict[str, object]:
    return {"thickest_um": thread(row).thickest_coating_um()}


OPERATIONS = (before_coating, coating_growth, thickest_coating)
