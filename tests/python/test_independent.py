"""Feeds against ``fractions`` and drills against ``mpmath``, which share no line with the library."""

from __future__ import annotations

import random
from decimal import Decimal
from fractions import Fraction

import pytest
import threadcalc as tc
from mpmath import mp, mpf, sqrt

SEED = 20261125
CASES = 10_000
INCH = Fraction(127, 5)


def half_even(value: Fraction) -> int:
    """The whole number nearest to a value; a tie goes to the even one."""
    below = value.numerator // value.denominator
    twice_rest = 2 * (value - below)
    return below + (twice_rest > 1 or (twice_rest == 1 and below % 2 == 1))


def text_of(units: int, decimals: int) -> str:
    """No exponent, no trailing zeros, always a point."""
    digits = format(Decimal(units).scaleb(-decimals).normalize(), "f")
    return digits if "." in digits else digits + "."


def fits(value: Fraction) -> bool:
    """Whether the library can hold it: 64-bit whole numbers in lowest terms, each with a negative."""
    return abs(value.numerator) < 1 << 63 and value.denominator < 1 << 63


def as_given(draw: random.Random, tenths: int) -> int | float | str | Fraction | Decimal:
    """A number of tenths in one of the types that a caller may use."""
    exact = Fraction(tenths, 10)
    if exact.denominator == 1 and draw.randrange(2):
        return int(exact)
    return draw.choice((exact, tenths / 10, Decimal(tenths).scaleb(-1), f"{tenths // 10}.{tenths % 10}"))


def drawn_feed(draw: random.Random, case: int) -> tuple[Fraction, int | None, str, int]:
    """Lead, tenths of a turn per minute (None: per revolution), unit, decimals."""
    unit, decimals = draw.choice(("mm", "inch")), draw.randrange(10)
    if case % 4 == 0:
        # Ties are rare by chance: make one.
        odd = 2 * draw.choice((0, draw.randrange(5_000))) + 1
        return Fraction(odd, 2 * 10**decimals) * (INCH if unit == "inch" else 1), None, unit, decimals
    lead = draw.choice(
        (
            Fraction(draw.randrange(1, 8_001), 1_000),
            Fraction(254, draw.randrange(5, 805)),
            Fraction(draw.randrange(1, 10**9), 999_999_937),
        )
    )
    return lead, draw.randrange(1, 600_001) if case % 4 < 3 else None, unit, decimals


def test_feeds_are_the_rounded_product() -> None:
    draw = random.Random(SEED)
    words = zeros = ties = errors = 0
    for case in range(CASES):
        lead, tenths, unit, decimals = drawn_feed(draw, case)
        per_minute = lead if tenths is None else lead * Fraction(tenths, 10)
        exact = per_minute / INCH if unit == "inch" else per_minute
        scaled = exact * 10**decimals
        units = half_even(scaled)
        rpm = None if tenths is None else as_given(draw, tenths)
        mode = "per_revolution" if tenths is None else "per_minute"
        what = f"{lead} {rpm!r} {unit} {decimals}"
        ties += scaled.denominator == 2
        if units == 0:
            with pytest.raises(tc.ThreadcalcError) as raised:
                tc.feed(lead, rpm, unit=unit, mode=mode, decimals=decimals)
            assert raised.value.name == "feed-rounds-to-zero", what
            zeros += 1
            continue
        feed = tc.feed(lead, rpm, unit=unit, mode=mode, decimals=decimals)
        value = Fraction(units, 10**decimals)
        assert (feed.text, feed.word) == (text_of(units, decimals), "F" + text_of(units, decimals)), what
        assert feed.value == Fraction(feed.text) == value, what
        assert feed.exact == exact, what
        words += 1
        if fits(value / exact) and fits(value / exact - 1):
            assert feed.lead_error == value / exact - 1, what
            errors += 1
        else:
            with pytest.raises(tc.ThreadcalcError) as raised:
                _ = feed.lead_error
            assert raised.value.name == "overflow", what
    # Each kind has to be met often, else this test says nothing about it.
    assert words > CASES * 3 // 4 and errors > CASES * 3 // 4, (words, errors)
    assert ties > CASES // 5 and zeros > CASES // 20, (ties, zeros)


def exactly(value: Fraction) -> mpf:
    return mpf(value.numerator) / value.denominator


def drawn_thread(draw: random.Random) -> tuple[tc.Thread, Fraction, Fraction]:
    """A thread with its major diameter and pitch in millimetres."""
    if draw.randrange(2):
        pitch = Fraction(draw.randrange(20, 801), 100)
        major = pitch * 2 + Fraction(draw.randrange(1, 30_000), 100)
        return tc.Thread.metric(major, pitch), major, pitch
    per_inch = draw.randrange(4, 81)
    inches = Fraction(2, per_inch) + Fraction(draw.randrange(1, 4_000), 1_000)
    return tc.Thread.unified(inches, per_inch), inches * INCH, INCH / per_inch


def drawn_height(draw: random.Random) -> tuple[dict[str, str], mpf]:
    """Tap and basis as keywords, and the pitches that are 100 %: 3H/4 or 5H/8 of H = sqrt(3)/2 P, or 0.68 P."""
    return draw.choice(
        (
            ({"tap": "cut", "basis": "3H/4"}, sqrt(mpf(3)) / 2 * 3 / 4 * 2),
            ({"tap": "cut", "basis": "5H/8"}, sqrt(mpf(3)) / 2 * 5 / 8 * 2),
            ({"tap": "form"}, mpf(68) / 100),
        )
    )


def rounding() -> mpf:
    """The most that one rounding to a double moves a number of size 1, with room for products of such errors."""
    return mpf(2) ** -53 * (1 + mpf(2) ** -40)


def test_holes_for_a_percent() -> None:
    draw = random.Random(SEED + 1)
    with mp.workdps(50):
        for _ in range(CASES):
            thread, major, pitch = drawn_thread(draw)
            keywords, pitches = drawn_height(draw)
            percent = Fraction(draw.randrange(1, 10_001), 100)
            got = tc.drill_diameter(thread, percent, **keywords)
            depth = pitches * exactly(pitch) * exactly(percent) / 100
            want = exactly(major) - depth
            # The depth is rounded 6 times (constant, pitch, percent, two products, quotient), the
            # major diameter once, the difference once.
            tolerance = (6 * depth + exactly(major) + abs(want)) * rounding()
            assert abs(mpf(got) - want) <= tolerance, f"{thread!r} {percent} {keywords}: got {got}, want {want}"


def test_percents_of_a_hole() -> None:
    draw = random.Random(SEED + 2)
    with mp.workdps(50):
        for _ in range(CASES):
            thread, major, pitch = drawn_thread(draw)
            keywords, pitches = drawn_height(draw)
            drill = Fraction(int((major - pitch * draw.randrange(1, 140) / 100) * 1_000), 1_000)
            got = tc.percent_thread(thread, drill, **keywords)
            want = exactly(major - drill) / (pitches * exactly(pitch)) * 100
            # Rounded 6 times: difference, constant, pitch, product, quotient, times 100.
            tolerance = 6 * want * rounding()
            assert abs(mpf(got) - want) <= tolerance, f"{thread!r} {drill} {keywords}: got {got}, want {want}"
