"""Depths back from a hole, its bottom and mouth, and depths of programs: names, types and errors."""

from __future__ import annotations

import inspect
from decimal import Decimal
from fractions import Fraction

import pytest
import threadcalc as tc

M8 = tc.Thread("M8-6H")
BLIND = {"drill_depth_to": "full_diameter", "drill_mm": 6.8, "chamfer_threads": 3, "bottom_clearance_mm": 3.75}
FORMS = {"drill_depth_mm": 23.5} | {key: value for key, value in BLIND.items() if key != "chamfer_threads"}
THROUGH = {"chamfer_threads": 3, "drill_mm": 6.8, "point_angle_deg": 118, "drill_clearance_mm": 1}
WORD = {"unit": "mm", "decimals": 3, "rounding": "deeper"}


@pytest.mark.parametrize(
    ("call", "positional", "keyword_only"),
    [
        (
            tc.full_thread_that_fits,
            ["thread", "drill_depth_mm"],
            [*BLIND, "point_angle_deg", "tap_centre_mm", "tap_set_on"],
        ),
        (tc.chamfers_for_full_thread, ["thread", "wanted_mm"], [*FORMS, "point_angle_deg", "tap_centre_mm"]),
        (tc.bottoming, ["thread", "tap_end_mm", "drill_point_mm"], ["drill_mm", "point_angle_deg"]),
        (tc.run_out_mm, ["thread", "run_out"], []),
        (tc.countersink, ["thread", "countersink_mm"], ["angle_deg", "hole_mm"]),
        (tc.usual_countersink, ["thread"], []),
        (tc.program_depth, ["depth_mm"], [*WORD]),
        (tc.program_depth_of_derived, ["depth_mm"], [*WORD]),
        (
            tc.through_hole,
            ["thread", "part_thickness_mm"],
            [*THROUGH, "over_travel_turns", "tap_centre_mm", "tap_set_on"],
        ),
    ],
)
def test_parameters_have_the_names_of_the_contract(call, positional, keyword_only) -> None:
    parameters = inspect.signature(call).parameters.values()
    assert [p.name for p in parameters if p.kind is p.POSITIONAL_OR_KEYWORD] == positional
    assert [p.name for p in parameters if p.kind is p.KEYWORD_ONLY] == keyword_only


@pytest.mark.parametrize(
    ("call", "name", "field"),
    [
        (lambda: tc.full_thread_that_fits(M8, 7.5, **BLIND), "out-of-range", "drill_depth_mm"),
        (
            lambda: tc.full_thread_that_fits(M8, 26, **BLIND | {"drill_depth_to": "point"}),
            "missing",
            "point_angle_deg",
        ),
        (
            lambda: tc.full_thread_that_fits(M8, 26, **BLIND | {"drill_depth_to": "?"}),
            "unknown-value",
            "drill_depth_to",
        ),
        (lambda: tc.full_thread_that_fits(M8, 23.5, **BLIND, tap_set_on="tip"), "unknown-value", "tap_set_on"),
        (lambda: tc.chamfers_for_full_thread(M8, 0, **FORMS), "out-of-range", "full_thread_depth_mm"),
        (lambda: tc.bottoming(M8, 0, 22, drill_mm=6.8), "out-of-range", "tap_end_mm"),
        (lambda: tc.bottoming(M8, 20, 0, drill_mm=6.8), "out-of-range", "drill_point_mm"),
        (lambda: tc.bottoming(M8, 20, 22, drill_mm=6.8, point_angle_deg=60), "out-of-range", "point_angle_deg"),
        (lambda: tc.run_out_mm(M8, "long"), "not-sourced", "run_out"),
        (lambda: tc.run_out_mm(tc.Thread("M7x0.9"), "normal"), "not-sourced", "pitch"),
        (lambda: tc.run_out_mm(tc.Thread("1/4-20"), "normal"), "does-not-apply", "form"),
        (lambda: tc.countersink(M8, 6.5, angle_deg=90), "out-of-range", "countersink_mm"),
        (lambda: tc.countersink(M8, 8.4, angle_deg=59), "out-of-range", "countersink_angle_deg"),
        (lambda: tc.program_depth(-1, **WORD), "out-of-range", "depth_mm"),
        (lambda: tc.program_depth(1, **WORD | {"decimals": 10}), "out-of-range", "decimals"),
        (lambda: tc.program_depth(1, **WORD | {"rounding": "nearest"}), "unknown-value", "depth_rounding"),
        (lambda: tc.program_depth(26.703872784726475, **WORD), "not-exact", "depth_mm"),
        (lambda: tc.program_depth_of_derived(float("nan"), **WORD), "out-of-range", "depth_mm"),
        (lambda: tc.through_hole(M8, 0, **THROUGH), "out-of-range", "part_thickness_mm"),
        (lambda: tc.through_hole(M8, 20, **THROUGH, over_travel_turns=21), "out-of-range", "over_travel_turns"),
        (
            lambda: tc.through_hole(M8, 20, **THROUGH | {"drill_clearance_mm": -1}),
            "out-of-range",
            "drill_clearance_mm",
        ),
    ],
)
def test_bad_values_are_named(call, name: str, field: str) -> None:
    with pytest.raises(tc.ThreadcalcError) as caught:
        call()
    assert (caught.value.name, caught.value.field) == (name, field)


@pytest.mark.parametrize("value", [True, None, b"1", [1], object(), 1j])
def test_what_is_no_number_is_a_type_error(value: object) -> None:
    for call in (
        lambda: tc.full_thread_that_fits(M8, value, **BLIND),
        lambda: tc.chamfers_for_full_thread(M8, value, **FORMS),
        lambda: tc.bottoming(M8, value, 22, drill_mm=6.8),
        lambda: tc.countersink(M8, value, angle_deg=90),
        lambda: tc.program_depth(value, **WORD),
        lambda: tc.program_depth_of_derived(value, **WORD),
        lambda: tc.through_hole(M8, value, **THROUGH),
    ):
        pytest.raises(TypeError, call)
    pytest.raises(TypeError, tc.bottoming, "M8", 20, 22, drill_mm=6.8)


@pytest.mark.parametrize("value", [23.5, Fraction(47, 2), Decimal("23.5"), "23.5", "47/2"])
def test_a_depth_comes_as_any_of_five_types(value: object) -> None:
    found = tc.full_thread_that_fits(M8, value, **BLIND)
    assert (found.full_thread_mm, found.tap_mm, found.drill_point_mm) == (16, Fraction("19.75"), None)
    again = tc.depths(M8, found.full_thread_mm, point_angle_deg=118, chamfer_threads=3, drill_mm=6.8, bottom_clearance_mm=3.75)
    assert (again.tap_mm, again.full_diameter_mm) == (found.tap_mm, found.full_diameter_mm)


def test_answers_compare_and_say_what_they_are() -> None:
    bottom = tc.bottoming(M8, 19.75, 21.5, drill_mm=6.8)
    assert bottom == tc.bottoming(M8, "19.75", "21.5", drill_mm="6.8") != tc.bottoming(M8, 19.75, 22, drill_mm=6.8)
    assert repr(bottom) == "<Bottoming 118 error, 130 warning, 135 warning, 140 warning>"
    assert [type(reading) for reading in bottom.readings] == [tc.BottomReading] * 4
    assert (bottom.worst, bottom.is_certain) == ("error", False)
    word = tc.program_depth(21, unit="inch", decimals=4, rounding="deeper")
    assert (word.text, word.value) == ("0.8268", Fraction("0.8268")) and "text 0.8268" in repr(word)
    forms = tc.chamfers_for_full_thread(M8, 16, **FORMS)
    assert [reading.form for reading in forms] == ["A", "B", "C", "D", "E", "F", "taper", "plug", "semi_bottoming", "bottoming"]
    assert tc.usual_countersink(M8) == tc.usual_countersink(tc.Thread("M8-LH"))
