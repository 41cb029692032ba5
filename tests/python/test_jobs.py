"""Jobs as dicts: values of the wrong kind, and every field there and back."""

from __future__ import annotations

import json
from fractions import Fraction

import pytest
import threadcalc as tc
from hypothesis import given, settings
from hypothesis import strategies as st
from jobs import METRIC


CODES = st.lists(st.sampled_from(["G20", "G70", "G21", "G71"]), max_size=2, unique=True)
KNOWN = st.sampled_from([True, False, "yes", "no", "unknown"])


def by_word(number: st.SearchStrategy[object]) -> st.SearchStrategy[dict[str, object]]:
    by_unit = st.fixed_dictionaries({}, optional={"mm": number, "inch": number | st.none()})
    return st.fixed_dictionaries({}, optional={"axis": by_unit, "F_per_min": by_unit, "F_per_rev": by_unit | st.none()})


@pytest.mark.parametrize(
    ("key", "value", "message"),
    [
        ("rpm", True, "rpm: expected a number, got bool"),
        ("rpm", [600], "rpm: expected an int, Fraction, Decimal, str or float, got list"),
        ("unit", True, "unit: expected one of: mm inch, got bool"),
        ("unit", ["mm"], "unit: expected one of: mm inch, got list"),
        ("thread", {"a": 1}, "thread: expected a text, got dict"),
        ("tap_mark", ["M8"], "tap_mark: expected a text, got list"),
        ("taper_reamer", [], "taper_reamer: expected true or false, got list"),
        ("screw", "8.8", "screw: expected a dict, got str"),
        ("machine", ["mill"], "machine: expected a dict, got list"),
        ("dialect", {"units_codes": "G20"}, "dialect.units_codes: expected a dict, got str"),
        ("dialect", {"units_codes": {"mm": [21]}}, "dialect.units_codes.mm: expected str or bytes, got int"),
        ("dialect", {"max_decimals": {"axis": 3}}, "dialect.max_decimals.axis: expected a dict, got int"),
        ("dialect", {"mirror_flips_hand": []}, "dialect.mirror_flips_hand: expected true, false, or unknown, got list"),
        ("dialect", {"S_decimals": True}, "dialect.S_decimals: expected a number, got bool"),
        ("machine", {"gears": [20, 600, 10]}, "machine.gears: expected a list of numbers for each gear, got int"),
    ],
)
def test_a_value_of_the_wrong_kind_says_what_the_field_takes(key: str, value: object, message: str) -> None:
    with pytest.raises(TypeError) as raised:
        tc.plan(METRIC | {key: value})
    assert str(raised.value) == message


def hundredths(low: int, high: int) -> st.SearchStrategy[Fraction]:
    return st.integers(low, high).map(lambda number: Fraction(number, 100))


# Fields that no drawn job of the same bits has, and those that change what a plan computes most.
OPTIONAL = {
    "tap_kind": st.sampled_from(["straight_flute", "spiral_point", "spiral_flute"]),
    "tap_mark": st.sampled_from(["M8x1.25 6H", "M10 6HX LH", "1/4-20 UNC GH3"]),
    "chamfer_threads": hundredths(0, 2000),
    "tap_set_on": st.sampled_from(["front", "centre"]),
    "oversize_mm": hundredths(0, 100),
    "drill_mm": hundredths(600, 760),
    "point_angle_deg": st.integers(60, 180),
    "bottom_clearance_mm": hundredths(0, 2000),
    "countersink_mm": hundredths(770, 1600),
    "r_plane_mm": hundredths(1, 5000),
    "peck_mm": hundredths(1, 1600),
    "dwell_s": hundredths(0, 6000),
    "return_to": st.sampled_from(["r_plane", "initial"]),
    "coating_um": hundredths(0, 5000),
    "cutting_force_n_mm2": st.integers(50, 20000),
    "hole_count": st.integers(1, 1000),
    "machine": st.fixed_dictionaries(
        {},
        optional={
            "highest_rpm": st.integers(600, 20000),
            "lowest_rpm": hundredths(1, 60000),
            "speed_step": hundredths(1, 1000),
            "axis_feed_limit_mm_min": hundredths(1, 10**6),
            "acceleration_rpm_s": st.integers(1, 10**5),
            "retract_factor": hundredths(10, 1000),
            "least_clearance_turns": hundredths(0, 2000),
            "gears": st.lists(st.integers(1, 99).map(lambda torque: [20, 4000, torque]), max_size=4),
        },
    ),
    "screw": st.fixed_dictionaries(
        {"property_class": st.sampled_from(["4.6", "8.8", "12.9"])},
        optional={
            "tolerance_class": st.sampled_from(["6g", "6h", "4h"]),
            "tensile_mpa": st.integers(1, 2000),
            "shear_mpa": st.integers(1, 2000),
            "engagement_mm": hundredths(1, 1600),
            "load_n": hundredths(1, 10**9),
        },
    ),
    "dialect": st.fixed_dictionaries(
        {"tap_rh": st.just("G84")},
        optional={
            "name": st.sampled_from(["mill-1", "lathe"]),
            "tap_lh": st.sampled_from(["G74", "none"]),
            "feed_per_minute": st.sampled_from(["G94", "G98"]),
            "rigid_tap_code": st.sampled_from(["M29", "none"]),
            "rigid_tap_code_has_s": st.booleans(),
            "needs_spindle_running": st.booleans(),
            "peck_word": st.sampled_from(["Q", "none"]),
            "dwell_word": st.just("P"),
            "dwell_unit": st.sampled_from(["seconds", "milliseconds"]),
            "retract_multiplier_word": st.just("J"),
            "retract_in": st.sampled_from(["factor", "percent"]),
            "return_initial": st.sampled_from(["G98", "none"]),
            "axis_decimals_mm": st.integers(0, 9),
            "trailing_point": st.booleans(),
            "units_default": st.sampled_from(["mm", "inch"]),
            "feed_mode_default": st.sampled_from(["per_minute", "G95"]),
            "units_codes": st.fixed_dictionaries({}, optional={"inch": CODES, "mm": CODES}),
            "feed_basis": st.sampled_from(["by_mode", "per_min_always", "per_rev_in_tap_cycle", "lead_word"]),
            "lead_word": st.sampled_from(["K", "none"]),
            "cycle_starts_spindle": KNOWN,
            "S_decimals": st.integers(0, 9),
            "no_point": st.sampled_from(["as_written", "least_increment"]),
            "least_increment": by_word(st.integers(0, 9).map(lambda decimals: Fraction(1, 10**decimals))),
            "max_decimals": by_word(st.integers(0, 9)),
            "mirror_on": st.sampled_from(["G51.1", ["G51.1"], "none"]),
            "mirror_flips_hand": KNOWN,
            "F_converted_on_units_change": KNOWN,
            "max_block_chars": st.integers(1, 65535),
            "order_table": st.sampled_from(["rs274ngc", "units_first"]),
        },
    ),
}


@settings(max_examples=1000, deadline=None)
@given(st.fixed_dictionaries({}, optional=OPTIONAL))
def test_every_field_of_a_job_goes_there_and_back(fields: dict[str, object]) -> None:
    job = tc.Job(**METRIC, part_shear_mpa=200, **fields)
    again = tc.Job(**json.loads(job.to_json()))
    assert again == job and again.to_json() == job.to_json()
    try:
        plan = tc.plan(job)
    except tc.ThreadcalcError as error:
        with pytest.raises(tc.ThreadcalcError) as raised:
            tc.plan(again)
        assert str(raised.value) == str(error) and error.field in error.args[0]
        return
    assert tc.plan(again).to_json() == plan.to_json()
