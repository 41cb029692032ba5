"""Tapping cycles read back: a reader of program text that knows nothing of threads finds the thread again."""

from __future__ import annotations

import random
import re
from fractions import Fraction

import pytest
import threadcalc as tc

SEED = 20_261_125
HOLES = 4_000
THREADS = tc.standard_threads()
# A control that was never built.
MILL = {
    "name": "mill-1",
    "tap_rh": "G384",
    "tap_lh": "G374",
    "feed_per_revolution": "G95",
    "needs_spindle_running": False,
    "rigid_tap_code": "M135",
    "rigid_tap_code_has_s": True,
    "peck_word": "Q",
    "dwell_word": "P",
    "dwell_unit": "milliseconds",
    "retract_multiplier_word": "J",
    "retract_in": "percent",
}
TURNED = {
    "name": "mill-2",
    "tap_rh": "G384",
    "lh_by_spindle_direction": True,
    "feed_per_revolution": "G95",
    "peck_word": "Q",
    "peck_code_rh": "G385",
    "dwell_word": "P",
    "dwell_unit": "seconds",
    "retract_multiplier_word": "I",
    "retract_in": "factor",
    "trailing_point": False,
    "axis_decimals_mm": 4,
    "axis_decimals_inch": 5,
}


def read(program: str) -> tuple[set[str], dict[str, Fraction]]:
    """Codes and values of a program: letter and number, the last one counts."""
    codes: set[str] = set()
    values: dict[str, Fraction] = {}
    for line in program.splitlines():
        words = re.findall(r"([A-Z])([+-]?[0-9]+(?:\.[0-9]*)?)", line)
        assert "".join(letter + number for letter, number in words) == line.replace(" ", ""), line
        letters = [letter for letter, _ in words if letter not in "GM"]
        assert len(letters) == len(set(letters)), line
        codes |= {letter + number for letter, number in words if letter in "GM"}
        values |= {letter: Fraction(number.rstrip(".")) for letter, number in words if letter not in "GM"}
    return codes, values


def near(written: Fraction, asked: Fraction, decimals: int, up: bool) -> bool:
    """Whether a number was rounded to its last decimal, up or down."""
    over = written - asked if up else asked - written
    return 0 <= over < Fraction(1, 10**decimals)


@pytest.mark.parametrize("fields", [MILL, TURNED], ids=lambda fields: str(fields["name"]))
def test_what_is_written_reads_back_to_the_thread(fields: dict[str, object]) -> None:
    draw = random.Random(SEED)
    mill = tc.Dialect(**fields)
    for _ in range(HOLES):
        thread = draw.choice(THREADS).with_hand(draw.choice(("right", "left")))
        unit, mode = draw.choice(("mm", "inch")), draw.choice(("per_minute", "per_revolution"))
        inch = Fraction("25.4") if unit == "inch" else Fraction(1)
        rpm = Fraction(draw.randint(500, 60_000), 10)
        feed = tc.feed(thread, rpm if mode == "per_minute" else None, unit=unit, mode=mode, decimals=draw.randint(4, 9))
        depth, r_plane = Fraction(draw.randint(1, 99_999), 1_000), Fraction(draw.randint(1, 20_000), 1_000)
        own = {
            "peck_mm": draw.choice((None, (depth + r_plane) / draw.randint(1, 4))),
            "dwell_s": draw.choice((None, Fraction(draw.randint(1, 60_000), 1_000))),
            "retract_factor": draw.choice((None, Fraction(draw.randint(11, 40), 10))),
        }
        if own["peck_mm"] is not None and own["peck_mm"] / inch < Fraction(1, 1_000):
            own["peck_mm"] = None
        made = tc.cycle(
            thread, feed, dialect=mill, rpm=rpm, depth_mm=depth, r_plane_mm=r_plane, holder="rigid", return_to="r_plane", **own
        )
        assert made.refused is None
        codes, values = read("\n".join(made.blocks))

        assert ("G20" in codes, "G21" in codes) == (unit == "inch", unit == "mm")
        lead = values["F"] * inch / (1 if "G95" in codes else values["S"])
        assert lead == thread.lead_mm * (1 + feed.lead_error)
        assert ("G95" in codes, "G94" in codes) == (mode == "per_revolution", mode == "per_minute")
        left = "G374" in codes if "tap_lh" in fields else "M4" in codes
        assert left == (thread.hand == "left")
        decimals = mill.axis_decimals_inch if unit == "inch" else mill.axis_decimals_mm
        assert near(-values["Z"], depth / inch, decimals, up=True)
        assert near(values["R"], r_plane / inch, decimals, up=True)
        assert ("Q" in values) == (own["peck_mm"] is not None)
        assert own["peck_mm"] is None or near(values["Q"], own["peck_mm"] / inch, decimals, up=False)
        assert values.get("P") == (own["dwell_s"] and own["dwell_s"] * (1000 if mill.dwell_unit == "milliseconds" else 1))
        factor = values.get("J", values.get("I"))
        assert factor == (own["retract_factor"] and own["retract_factor"] * (100 if mill.retract_in == "percent" else 1))
        assert {"G17", "G90", "G99", "G80"} <= codes
        assert made.restore == ["G94", "F", "M3"]


def test_a_feed_that_is_not_of_this_hole_is_refused() -> None:
    m8, m10 = tc.Thread("M8"), tc.Thread("M10")
    feed = tc.feed(m8, 600, unit="mm", mode="per_minute", decimals=3)
    hole = {"dialect": "rs274ngc", "depth_mm": 20, "r_plane_mm": 5, "holder": "rigid", "return_to": "r_plane"}
    for thread, rpm, field in ((m8, 601, "rpm"), (m10, 600, "feed")):
        with pytest.raises(tc.ThreadcalcError) as caught:
            tc.cycle(thread, feed, rpm=rpm, **hole)
        assert (caught.value.name, caught.value.field) == ("contradiction", field)
    # A holder that gives may be fed a little off the lead.
    under = tc.feed(m8.lead_mm * Fraction(95, 100), 600, unit="mm", mode="per_minute", decimals=3)
    assert tc.cycle(m8, under, rpm=600, **hole | {"holder": "tension_compression"}).words[-2] == "F712.5"


def test_a_dialect_is_known_by_its_fields() -> None:
    mill = tc.Dialect("rs274ngc", tap_lh="G74")
    assert (mill.name, mill.tap_rh, mill.tap_lh, mill.dwell_unit) == ("rs274ngc", "G84", "G74", None)
    assert tc.Dialect(mill) == mill != tc.Dialect("rs274ngc")
    assert tc.Dialect(mill, return_initial="none").return_initial is None
    own = {name for name in dir(mill) if not name.startswith(("_", "to_"))} - {"reading"}
    assert set(mill.to_dict()) == own | {name for name in dir(mill.reading) if not name.startswith("_")}
    assert "tap_rh G84" in repr(mill)
    for fields, text in (({"tap": "G84"}, "dialect.tap_lh"), ({"peck_letter": "Q"}, "dialect.peck_code_lh")):
        with pytest.raises(tc.ThreadcalcError, match=text) as caught:
            tc.Dialect(**fields)
        assert caught.value.name == "unknown-key"
    for wrong in (5, ["G84"], None):
        with pytest.raises(TypeError):
            tc.cycle(tc.Thread("M8"), None, dialect=wrong)
