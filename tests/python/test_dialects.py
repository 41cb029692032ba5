"""Dialects as shops write them down: every one is taken, and comes back as it was."""

from __future__ import annotations

import json
from fractions import Fraction

import pytest
import threadcalc as tc
from jobs import METRIC

# Two controls that were never built, which differ in what F is in a cycle.
BY_MODE: dict[str, object] = {
    "name": "neutral-A",
    "units_default": None,
    "feed_mode_default": "G94",
    "units_codes": {"inch": ["G20", "G70"], "mm": ["G21", "G71"]},
    "feed_basis": "by_mode",
    "tap_rh": ["G84"],
    "tap_lh": ["G74"],
    "lh_by_spindle_direction": False,
    "cycle_starts_spindle": True,
    "needs_spindle_running": False,
    "rigid_tap_code": None,
    "peck_word": "Q",
    "retract_multiplier_word": "J",
    "dwell_unit": "s",
    "repeat_word": "L",
    "repeat_zero_means": "error",
    "no_point": "as_written",
    "least_increment": None,
    "max_decimals": None,
    "semicolon_comment": True,
    "spaces_in_numbers": "ignored",
    "max_block_chars": 256,
    "rapid_cancels_cycle": True,
    "F_converted_on_units_change": False,
    "override_locked_in_cycle": True,
    "mirror_flips_hand": "unknown",
    "mirror_on": ["G51.1"],
    "mirror_off": ["G50.1"],
    "scale_on": ["G51"],
    "scale_off": ["G50"],
    "subprogram_call": "M98",
    "subprogram_return": "M99",
}
LEAD: dict[str, object] = BY_MODE | {"name": "neutral-F-is-lead", "feed_basis": "per_rev_in_tap_cycle"}
TOLD = {
    "name": "told-in-full",
    "tap_rh": "G84",
    "units_default": "inch",
    "feed_mode_default": "per_revolution",
    "units_codes": {"inch": "G70 G20", "mm": ("G71",)},
    "feed_basis": "lead_word",
    "lead_word": "K",
    "stroke_code": "G33.1",
    "cycle_starts_spindle": "yes",
    "rigid_tap_code": "M135",
    "rigid_tap_code_sticky_until": "next_cycle",
    "S_in_cycle_block_allowed": "no",
    "S_decimals": 0,
    "peck_returns_to_R": True,
    "repeat_word": "K",
    "repeat_zero_means": "store_only",
    "no_point": "least_increment",
    "least_increment": {
        "axis": {"mm": 0.001, "inch": "0.0001"},
        "F_per_min": {"mm": 1, "inch": Fraction(1, 100)},
        "F_per_rev": {"mm": "1/10000", "inch": None},
    },
    "max_decimals": {"axis": {"mm": 3, "inch": 4}, "F_per_min": {"mm": "0"}, "F_per_rev": None},
    "mirror_on": "M21",
    "mirror_off": "M23",
    "scale_on": "G51",
    "scale_off": "G50",
    "rotate_on": "G68",
    "rotate_off": "G69",
    "mirror_flips_hand": False,
    "rapid_cancels_cycle": False,
    "cycle_words_sticky_across_cancel": True,
    "F_converted_on_units_change": True,
    "override_locked_in_cycle": False,
    "unlisted_codes_alarm": True,
    "semicolon_comment": False,
    "max_block_chars": 80,
    "spaces_in_numbers": "error",
    "subprogram_call": "M98",
    "subprogram_return": "M99",
    "order_table": "units_first",
}


@pytest.mark.parametrize("fields", [BY_MODE, LEAD, TOLD], ids=lambda fields: str(fields["name"]))
def test_a_dialect_is_taken_alone_and_in_a_job_and_comes_back(fields: dict[str, object]) -> None:
    mill = tc.Dialect(**fields)
    assert tc.Dialect(mill.to_dict()) == tc.Dialect(**json.loads(mill.to_json())) == tc.Dialect(mill) == mill
    assert mill.name == fields["name"]
    job = tc.Job(**METRIC, dialect=fields)
    assert job == tc.Job(**METRIC, dialect=mill) == tc.Job(**job.to_dict())
    assert job.to_dict()["dialect"] == mill.to_dict()
    plan = tc.plan(METRIC | {"dialect": fields})
    assert plan.to_dict()["job"]["dialect"] == mill.to_dict()
    assert plan.job == tc.plan(plan.job).job


@pytest.mark.parametrize("fields", [BY_MODE, LEAD], ids=lambda fields: str(fields["name"]))
def test_what_is_written_down_is_what_is_read(fields: dict[str, object]) -> None:
    mill = tc.Dialect(**fields)
    other_words = {"G94": "per_minute", "s": "seconds", "unknown": None}
    for key, value in fields.items():
        held = getattr(mill if hasattr(mill, key) else mill.reading, key)
        if key in ("least_increment", "max_decimals"):
            assert held == {word: {"mm": None, "inch": None} for word in ("axis", "F_per_min", "F_per_rev")}
        elif isinstance(value, list):
            assert [held] == value, key
        else:
            assert held == (other_words.get(value, value) if isinstance(value, str) else value), key


def test_every_field_of_a_reading_is_seen() -> None:
    mill = tc.Dialect(**TOLD)
    read = mill.reading
    assert read.units_codes == {"inch": ["G70", "G20"], "mm": ["G71"]}
    assert read.least_increment == {
        "axis": {"mm": Fraction(1, 1_000), "inch": Fraction(1, 10_000)},
        "F_per_min": {"mm": 1, "inch": Fraction(1, 100)},
        "F_per_rev": {"mm": Fraction(1, 10_000), "inch": None},
    }
    assert read.max_decimals["F_per_min"] == {"mm": 0, "inch": None}
    assert (read.S_in_cycle_block_allowed, read.S_decimals, read.peck_returns_to_R) == (False, 0, True)
    assert (read.rigid_tap_code_sticky_until, read.F_converted_on_units_change) == ("next_cycle", True)
    nothing = tc.Dialect().reading
    names = [name for name in dir(read) if not name.startswith("_")]
    assert len(names) == 34
    for name in names:
        assert getattr(read, name) != getattr(nothing, name), name
        if name not in ("units_codes", "least_increment", "max_decimals"):
            assert getattr(nothing, name) is None, name
            assert f"{name} " in repr(read)
    assert read == tc.Dialect(mill, name="other").reading != nothing
    # What JSON says is what the properties say; exact numbers are texts there.
    written = mill.to_dict()
    assert written["least_increment"]["axis"] == {"mm": "0.001", "inch": "0.0001"}
    same = [name for name in names if name != "least_increment"]
    assert {name: getattr(read, name) for name in same} == {name: written[name] for name in same}


def test_nobody_knows_better_than_a_dialect() -> None:
    # What a built-in dialect says can be taken back.
    mill = tc.Dialect("rs274ngc", rapid_cancels_cycle="unknown", repeat_word="none", units_codes={"inch": []})
    assert tc.Dialect("rs274ngc").reading.rapid_cancels_cycle is True
    assert (mill.reading.rapid_cancels_cycle, mill.reading.repeat_word, mill.reading.units_codes["inch"]) == (None, None, [])
    # The built-in dialect says nothing of what its source leaves open.
    read = tc.Dialect("rs274ngc").reading
    assert (read.no_point, read.feed_basis, read.order_table) == ("as_written", "by_mode", "rs274ngc")
    assert (read.units_default, read.mirror_flips_hand, read.override_locked_in_cycle) == (None, None, None)
    for fields, name, text in (
        ({"units_codes": {"inch": ["G20", "G70", "G170"]}}, "too-long", "at most two codes"),
        ({"least_increment": {"axis": {"mm": 0.005}}}, "out-of-range", "0.01"),
        ({"max_decimals": {"axis": {"mm": 10}}}, "out-of-range", "0 to 9"),
        ({"cycle_starts_spindle": "perhaps"}, "unknown-value", "unknown"),
        ({"max_decimals": {"axis": {"cm": 3}}}, "unknown-key", "dialect.max_decimals.axis.mm"),
        ({"S_decimal": 0}, "unknown-key", "dialect.S_decimals"),
    ):
        with pytest.raises(tc.ThreadcalcError, match=text) as caught:
            tc.Dialect(**fields)
        assert caught.value.name == name
