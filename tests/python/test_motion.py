"""Times of tapping strokes against scipy, which integrates the motion of the spindle.

From the acceleration as a function of time comes the speed, from the speed come the turns, each by
numerical integration; the times at which the speed is reached, the brake is put on and the spindle stands
are found as roots. No formula of the library stands here. With pecks every stroke is integrated by itself.
"""

from __future__ import annotations

import random
from fractions import Fraction

import numpy as np
import pytest
import threadcalc as tc
from numpy.typing import NDArray
from scipy.integrate import cumulative_trapezoid
from scipy.optimize.elementwise import find_root

SEED = 20261127
CASES = 10_000
# Of these some have as many strokes as a hole may have.
PECKED, MOST_STROKES = 2_000, 1_000
RELATIVE = 1e-9
# Points on each piece of a stroke; the trapezoid rule is exact on a speed that is linear over a piece.
POINTS = 5

Numbers = NDArray[np.float64]


def drawn(draw: random.Random, least: float, most: float) -> Fraction:
    """A number of three digits, as likely small as large."""
    value = Fraction(f"{least * (most / least) ** draw.random():.2e}")
    return min(max(value, Fraction(str(least))), Fraction(str(most)))


def strokes() -> list[dict[str, object]]:
    draw = random.Random(SEED)
    return [
        {
            "lead_mm": draw.choice((drawn(draw, 0.2, 50), Fraction(127, 5 * draw.randrange(4, 81)))),
            "rpm": drawn(draw, 1, 100_000),
            "travel_mm": drawn(draw, 0.01, 10_000),
            "acceleration_rpm_s": float(drawn(draw, 1, 1e7)),
            "retract_factor": drawn(draw, 0.1, 1000) if draw.randrange(2) else 1,
            "dwell_s": float(drawn(draw, 0.001, 100)) if draw.randrange(2) else 0.0,
        }
        for _ in range(CASES)
    ]


def pecked() -> list[dict[str, object]]:
    """Strokes with pecks: a few of them most often, now and then up to as many as there may be."""
    draw = random.Random(SEED + 1)
    cases = strokes()[:PECKED]
    for place, case in enumerate(cases):
        count = MOST_STROKES if place % 200 == 0 else draw.randrange(1, 12)
        # From one peck that is all of the travel to pecks that leave a little or almost a peck for the last stroke.
        rest = draw.choice((Fraction(0), Fraction(draw.randrange(1000), 1000)))
        case["peck_mm"] = case["travel_mm"] / (count - rest if count > 1 else 1)
    return cases


def ends(case: dict[str, object]) -> list[Fraction]:
    """Where the strokes end, from the R plane, in mm."""
    found = [case["peck_mm"]]
    while found[-1] < case["travel_mm"]:
        found.append(min(found[-1] + case["peck_mm"], case["travel_mm"]))
    return found


def run(pieces: list[tuple[Numbers, Numbers]]) -> tuple[Numbers, Numbers]:
    """Speed in rpm and turns at the end of pieces of motion from rest: how long each lasts, and its acceleration."""
    shape = np.broadcast_shapes(*(np.shape(number) for piece in pieces for number in piece))
    begin, times, accelerations = np.zeros(shape), [], []
    for seconds, acceleration in pieces:
        times.append(np.linspace(begin, begin + seconds, POINTS, axis=-1))
        accelerations.append(np.broadcast_to(np.asarray(acceleration)[..., None], (*shape, POINTS)))
        begin = begin + seconds
    time = np.concatenate(times, axis=-1)
    speed = cumulative_trapezoid(np.concatenate(accelerations, axis=-1), time, initial=0)
    turns = cumulative_trapezoid(speed / 60, time, initial=0)
    return speed[..., -1], turns[..., -1]


def root(function: object, most: Numbers, *arguments: Numbers) -> Numbers:
    """Where a function of a time is 0, somewhere from 0 to `most`."""
    found = find_root(function, (np.zeros_like(most), most), args=arguments)
    assert found.success.all()
    return found.x


def to_rest(up: Numbers, hold: Numbers, rate: Numbers) -> Numbers:
    """How long the brake takes after a ramp up and a time at speed. Twice as long as the ramp is too long."""

    def left(down: Numbers, up: Numbers, hold: Numbers, rate: Numbers) -> Numbers:
        return run([(up, rate), (hold, 0 * rate), (down, -rate)])[0]

    return root(left, 2 * up, up, hold, rate)


def turns_to_rest(up: Numbers, hold: Numbers, rate: Numbers) -> Numbers:
    return run([(up, rate), (hold, 0 * rate), (to_rest(up, hold, rate), -rate)])[1]


def one_way(asked: Numbers, turns: Numbers, rate: Numbers) -> dict[str, Numbers]:
    """One way of a stroke, from rest to rest."""
    # No ramp here lasts longer: a thousand times the fastest speed at the slowest acceleration.
    longest = np.full_like(asked, 2e8)
    to_speed = root(lambda up, asked, rate: run([(up, rate)])[0] - asked, longest, asked, rate)
    none = np.zeros_like(asked)
    is_long = turns_to_rest(to_speed, none, rate) <= turns
    up, hold = to_speed.copy(), none.copy()
    # A long stroke holds its speed, for less time than all turns take at it; a short one brakes before.
    long = (asked[is_long], turns[is_long], rate[is_long], to_speed[is_long])
    hold[is_long] = root(
        lambda hold, turns, rate, up: turns_to_rest(up, hold, rate) - turns, 61 * long[1] / long[0], *long[1:]
    )
    short = (turns[~is_long], rate[~is_long])
    up[~is_long] = root(
        lambda up, turns, rate: turns_to_rest(up, 0 * up, rate) - turns, to_speed[~is_long], *short
    )
    return {
        "reached_rpm": run([(up, rate)])[0],
        "reaches_speed": is_long,
        "turns_to_speed": run([(to_speed, rate)])[1],
        "time_s": up + hold + to_rest(up, hold, rate),
    }


@pytest.fixture(scope="module")
def cases() -> list[dict[str, object]]:
    return strokes()


def column(cases: list[dict[str, object]], name: str) -> Numbers:
    return np.array([float(case[name]) for case in cases])


def test_times_are_those_of_the_integrated_motion(cases: list[dict[str, object]]) -> None:
    turns = np.array([float(case["travel_mm"] / case["lead_mm"]) for case in cases])
    rate, dwell, lead = (column(cases, name) for name in ("acceleration_rpm_s", "dwell_s", "lead_mm"))
    asked_out = np.array([float(case["rpm"] * case["retract_factor"]) for case in cases])
    way_in, way_out = one_way(column(cases, "rpm"), turns, rate), one_way(asked_out, turns, rate)
    found = [tc.tapping_time(**case) for case in cases]
    reached = np.array([one.reaches_speed for one in found])
    # Both kinds of stroke, and each of them often, in and out.
    for way in (way_in, way_out):
        assert 1000 < way["reaches_speed"].sum() < CASES - 1000
    assert (reached == way_in["reaches_speed"]).all()
    want = {
        "turns": turns,
        "reached_rpm": way_in["reached_rpm"],
        "retract_rpm": way_out["reached_rpm"],
        "turns_to_speed": way_in["turns_to_speed"],
        "distance_to_speed_mm": way_in["turns_to_speed"] * lead,
        "time_in_s": way_in["time_s"],
        "time_out_s": way_out["time_s"],
        "time_s": way_in["time_s"] + dwell + way_out["time_s"],
    }
    for name, wanted in want.items():
        got = np.array([getattr(one, name) for one in found])
        off = np.abs(got / wanted - 1)
        worst = int(off.argmax())
        assert off[worst] <= RELATIVE, f"{name}: got {got[worst]!r}, want {wanted[worst]!r} for {cases[worst]}"


def test_times_with_pecks_are_those_of_every_stroke_integrated() -> None:
    cases = pecked()
    depths = [ends(case) for case in cases]
    counts = np.array([len(ends) for ends in depths])
    last = counts.cumsum() - 1
    turns = np.array([float(end / case["lead_mm"]) for case, ends in zip(cases, depths, strict=True) for end in ends])
    rate = column(cases, "acceleration_rpm_s").repeat(counts)
    asked_out = np.array([float(case["rpm"] * case["retract_factor"]) for case in cases]).repeat(counts)
    way_in, way_out = one_way(column(cases, "rpm").repeat(counts), turns, rate), one_way(asked_out, turns, rate)
    time_in, time_out = (np.add.reduceat(way["time_s"], last - counts + 1) for way in (way_in, way_out))
    found = [tc.tapping_time(**case) for case in cases]
    # Holes whose first strokes are short and whose last one is long are tried, and holes of all counts.
    mixed = way_in["reaches_speed"][last] & ~way_in["reaches_speed"][last - counts + 1]
    assert mixed.sum() > 100 and counts.max() == MOST_STROKES and (counts == 1).sum() > 50
    assert [one.strokes for one in found] == counts.tolist()
    assert [one.reaches_speed for one in found] == way_in["reaches_speed"][last].tolist()
    want = {
        "turns": turns[last],
        "reached_rpm": way_in["reached_rpm"][last],
        "retract_rpm": way_out["reached_rpm"][last],
        "time_in_s": time_in,
        "time_out_s": time_out,
        "time_s": time_in + counts * column(cases, "dwell_s") + time_out,
    }
    for name, wanted in want.items():
        got = [getattr(one, name) for one in found]
        np.testing.assert_allclose(got, wanted, rtol=RELATIVE, atol=0, err_msg=name)


def test_ramps_are_those_of_the_integrated_motion(cases: list[dict[str, object]]) -> None:
    turns = np.array([float(case["travel_mm"] / case["lead_mm"]) for case in cases])
    rate = column(cases, "acceleration_rpm_s")
    longest = np.full_like(turns, 2e8)
    up = root(lambda up, turns, rate: run([(up, rate)])[1] - turns, longest, turns, rate)
    wanted = run([(up, rate)])[0]
    got = [tc.speed_after_turns(*pair) for pair in zip(turns.tolist(), rate.tolist(), strict=True)]
    np.testing.assert_allclose(got, wanted, rtol=RELATIVE, atol=0)
    # And back: the turns that the stroke's own speed takes.
    to_speed = root(lambda up, asked, rate: run([(up, rate)])[0] - asked, longest, column(cases, "rpm"), rate)
    got = [tc.turns_to_speed(case["rpm"], case["acceleration_rpm_s"]) for case in cases]
    np.testing.assert_allclose(got, run([(to_speed, rate)])[1], rtol=RELATIVE, atol=0)
