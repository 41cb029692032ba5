"""The operations of the tables of coated threads and of lengths of engagement."""

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


def engagement_group(row: Cells) -> dict[str, object]:
    found = tc.engagement_group(thread(row), **given(row, "length_mm"))
    assert found.source.startswith("ISO 965-1")
    return attributes(found, "group", "normal_over_mm", "normal_to_mm", "confidence")


def recommended_class(row: Cells) -> dict[str, object]:
    return {"class": tc.recommended_class(**given(row, "side", "group", "quality")) or "none"}


def limits_at(row: Cells) -> dict[str, object]:
    found = thread(row).limits_at(**given(row, "length_mm"))
    return six_limits(row, found) | {"confidence": found.confidence}


OPERATIONS = (before_coating, coating_growth, engagement_group, limits_at, recommended_class, thickest_coating)
