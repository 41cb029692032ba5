"""Whatever is given: an answer, a ThreadcalcError or a TypeError, and nothing else."""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction

import pytest
import threadcalc as tc
from hypothesis import example, given
from hypothesis import strategies as st
from jobs import UNIFIED

STANDARD = tc.standard_threads()
WRITTEN = [str(thread) for thread in STANDARD]
THREAD = tc.Thread("7/16-14 UNC-2B")
FEED = tc.feed(THREAD, 650, unit="mm", mode="per_minute", decimals=3)
OTHER_KEYS = (
    "basis",
    "drill_sets",
    "machine",
    "machine.speed_step",
    "percent",
    "point_angle_deg",
    "thread ",
)

# What each operation is given where nothing is replaced: every one of these has an answer.
CALLS: dict[str, tuple[Callable[..., object], dict[str, object]]] = {
    "feed": (
        lambda lead, rpm, **named: tc.feed(lead, rpm, **named),
        {"lead": THREAD, "rpm": 650, "unit": "mm", "mode": "per_minute", "decimals": 3},
    ),
    "exact_speeds": (
        lambda lead, rpm, **named: tc.exact_speeds(lead, rpm, **named),
        {"lead": THREAD, "rpm": 650, "unit": "mm", "decimals": 3, "count": 5, "lowest": 1, "highest": 2_000},
    ),
    "programmed_speed": (
        lambda rpm, **named: tc.programmed_speed(rpm, **named),
        {"rpm": 650, "step": 10, "lowest": 50, "highest": 4_000},
    ),
    "drill_diameter": (
        lambda thread, percent, **named: tc.drill_diameter(thread, percent, **named),
        {"thread": THREAD, "percent": 70, "tap": "cut", "basis": "3H/4"},
    ),
    "percent_thread": (
        lambda thread, drill, **named: tc.percent_thread(thread, drill, **named),
        {"thread": THREAD, "drill": "9.4", "tap": "cut", "basis": "3H/4"},
    ),
    "tap_drill": (
        lambda thread, **named: tc.tap_drill(thread, **named),
        {"thread": THREAD, "tap": "cut", "percent": 70, "basis": "3H/4", "sets": "letter number"},
    ),
    "depths": (
        lambda thread, depth, **named: tc.depths(thread, depth, **named),
        {
            "thread": THREAD,
            "depth": 20,
            "chamfer_threads": 3,
            "drill_mm": "9.4",
            "point_angle_deg": 118,
            "bottom_clearance_mm": 1,
            "tap_centre_mm": 0,
            "tap_set_on": "front",
            "through": False,
        },
    ),
    "taper_depths": (
        lambda thread, **named: tc.taper_depths(thread, **named),
        {
            "thread": tc.Thread("1/4 NPT"),
            "drill_mm": "11.1",
            "point_angle_deg": 118,
            "bottom_clearance_mm": 3,
            "projection_mm": 10,
        },
    ),
    "taper_drill": (
        lambda thread, **named: tc.tap_drill(thread, **named),
        {"thread": tc.Thread("Rc1/2"), "tap": "cut", "sets": "metric", "taper_reamer": False},
    ),
    "read_hole_note": (
        lambda text, **named: tc.read_hole_note(text, **named),
        {"text": "4X M8x1.25-6H 16 DEEP", "unit": "mm"},
    ),
    "read_comment": (
        lambda text, **named: tc.read_comment(text, **named),
        {"text": "TAP M8, 1/4-20", "tool_is_tap": True},
    ),
    "cycle": (
        lambda **named: tc.cycle(THREAD, FEED, **named),
        {
            "dialect": "rs274ngc",
            "rpm": 650,
            "depth_mm": 20,
            "r_plane_mm": 5,
            "holder": "rigid",
            "return_to": "r_plane",
            "peck_mm": 5,
            "dwell_s": 0,
            "retract_factor": 1,
        },
    ),
    "Dialect": (
        tc.Dialect,
        {
            "tap_rh": "G84",
            "peck_word": "Q",
            "dwell_unit": "seconds",
            "axis_decimals_mm": 3,
            "trailing_point": True,
            "units_codes": {"inch": ["G20", "G70"]},
            "max_decimals": {"axis": {"mm": 3}},
            "feed_basis": "by_mode",
            "cycle_starts_spindle": "unknown",
            "max_block_chars": 256,
        },
    ),
    "plan": (lambda **job: tc.plan(job), UNIFIED),
    "Job": (tc.Job, UNIFIED),
    "metric": (tc.Thread.metric, {"diameter_mm": 10, "pitch_mm": "1.5"}),
    "unified": (tc.Thread.unified, {"diameter_in": "1/4", "threads_per_inch": 20}),
    "with_class": (lambda value: THREAD.with_class(value), {"value": "3B"}),
    "with_hand": (lambda value: THREAD.with_hand(value), {"value": "left"}),
    "with_side": (lambda value: tc.Thread("M8").with_side(value), {"value": "internal"}),
    "with_starts": (lambda value: THREAD.with_starts(value), {"value": 2}),
    "standard_threads": (tc.standard_threads, {"form": "unified", "series": "UNC"}),
    "drills": (lambda name: tc.drills(name), {"name": "letter"}),
}

LETTERS = st.text("MUNCFEJSPLRTHGABgh0123456789xX×./,-+*() #№\x00\n\ud800", max_size=20)
NUMBERS = (
    st.integers(-5, 5_000)
    | st.integers()
    | st.sampled_from([1 << 63, (1 << 63) - 1, -(1 << 63), 1 << 200, 0.1, 1e-9, 5e-324, 1.7e308])
    | st.floats()
    | st.fractions()
    | st.fractions(0, 20_000, max_denominator=1_000)
    | st.decimals()
    | st.decimals(0, 20_000, places=3)
)
NAMES = st.sampled_from(
    "mm inch per_minute per_revolution cut form 3H/4 5H/8 metric letter internal external left".split()
)
ANYTHING = (
    NUMBERS
    | NAMES
    | LETTERS
    | st.text()
    | st.binary()
    | st.none()
    | st.booleans()
    | NUMBERS.map(str)
    | st.builds(object)
    | st.lists(st.none() | NAMES | NUMBERS, max_size=3)
    | st.dictionaries(st.text(max_size=5), NUMBERS, max_size=2)
    | st.sampled_from(STANDARD)
)


def looked_at(answer: object) -> None:
    """Reads all that an answer shows, and what that shows."""
    for item in answer if isinstance(answer, list | tuple) else [answer]:
        if not type(item).__module__.startswith("threadcalc"):
            continue
        for name in dir(item):
            if not name.startswith("_") or name in ("__str__", "__repr__", "__hash__"):
                only_own_errors(lambda name=name, item=item: read_of(item, name))


def read_of(item: object, name: str) -> None:
    shown = getattr(item, name)
    if callable(shown) and (name.startswith("__") or name in ("to_json", "to_dict", "limits", "profile", "pipe")):
        shown()


def only_own_errors(call: Callable[[], object]) -> object:
    """The answer, or None after a ThreadcalcError or a TypeError; any other exception goes through."""
    try:
        return call()
    except TypeError:
        return None
    except tc.ThreadcalcError as error:
        assert error.name and error.code > 0 and error.field and str(error)
        assert error.at is None or error.at >= 0
        return None


@st.composite
def edited(draw: st.DrawFn) -> str:
    """A designation of the standard with a few characters put in, taken out or changed."""
    text = draw(st.sampled_from(WRITTEN)) + draw(st.sampled_from(["", "-6H", "-2B", "-LH", " (x)"]))
    for _ in range(draw(st.integers(0, 3))):
        start = draw(st.integers(0, len(text)))
        text = text[:start] + draw(LETTERS.filter(lambda part: len(part) < 3)) + text[start + draw(st.integers(0, 2)) :]
    return text


@given(edited() | edited().map(lambda text: text.encode("utf-8", "replace")) | LETTERS | st.binary() | ANYTHING)
@example("M" * 100_000)
@example(b"\xff" * 300)
@example("\ud800")
def test_reading_a_designation(given_text: object) -> None:
    thread = only_own_errors(lambda: tc.Thread(given_text))
    if thread is not None:
        assert isinstance(thread, tc.Thread)
        assert tc.Thread(str(thread)) == thread, "what is written reads back"
        looked_at(thread)


@given(edited())
def test_an_offset_stands_in_the_text(text: str) -> None:
    try:
        tc.Thread(text)
    except tc.DesignationError as error:
        size = len(text.encode("utf-8", "surrogatepass"))
        assert error.at is None or 0 <= error.at <= size


def test_standard_threads_read_back() -> None:
    assert len(STANDARD) > 100
    differ = [text for thread, text in zip(STANDARD, WRITTEN, strict=True) if tc.Thread(text) != thread]
    assert differ == []
    assert len(set(WRITTEN)) == len(set(STANDARD)) == len(STANDARD)


FIT = st.sampled_from(["/", "-6H/6g", "-2A/2B", "/R"])


@given(st.builds(str.__add__, edited(), FIT) | edited() | LETTERS | st.binary() | ANYTHING)
@example("Rp/R 1/2")
@example("\ud800/")
def test_reading_a_fit(given_text: object) -> None:
    fit = only_own_errors(lambda: tc.read_fit(given_text))
    if fit is not None:
        internal, external = fit
        assert (internal.side, external.side) == ("internal", "external")
        assert tc.Thread(str(internal)) == internal and tc.Thread(str(external)) == external


NOTE_PARTS = st.sampled_from(
    ["4X ", "(4) ", " 16 DEEP", " THRU", "\u230016", " #7 DRILL", " CSK 10 X 90", " / ", "\n", " EQ SP", "\u21a716"]
)
NOTES = st.lists(NOTE_PARTS | edited(), max_size=6).map("".join)


@given(NOTES | NOTES.map(lambda text: text.encode("utf-8", "replace")) | st.text() | st.binary() | ANYTHING)
@example("M8" * 300)
def test_reading_notes_and_comments(text: object) -> None:
    note = only_own_errors(lambda: tc.read_hole_note(text))
    looked_at(note)
    comment = only_own_errors(lambda: tc.read_comment(text, tool_is_tap=True))
    if comment is None:
        assert not isinstance(text, str | bytes)
        return
    looked_at(comment)
    whole = text if isinstance(text, bytes) else text.encode("utf-8", "surrogatepass")
    ends = [0]
    for found in comment.threads:
        assert ends[-1] <= found.at < found.at + found.length <= len(whole)
        ends.append(found.at + found.length)


@given(LETTERS | st.text() | st.binary() | NUMBERS.map(str) | ANYTHING)
def test_reading_a_number(text: object) -> None:
    value = only_own_errors(lambda: tc.read_number(text))
    assert value is None or (isinstance(value, Fraction) and tc.read_number(f"{value}") == value)


@pytest.mark.parametrize("name", CALLS)
def test_the_plain_call_has_an_answer(name: str) -> None:
    call, fields = CALLS[name]
    assert call(**fields)


@pytest.mark.parametrize("name", CALLS)
@given(data=st.data())
def test_any_values_in_place_of_some(name: str, data: st.DataObject) -> None:
    call, fields = CALLS[name]
    keys = [*fields, *(OTHER_KEYS if fields is UNIFIED else ())]
    replaced = data.draw(st.dictionaries(st.sampled_from(keys), ANYTHING, min_size=1, max_size=2))
    looked_at(only_own_errors(lambda: call(**(fields | replaced))))


@given(ANYTHING | st.dictionaries(st.text() | st.sampled_from([*UNIFIED, *OTHER_KEYS]) | st.integers(), ANYTHING))
def test_any_job(job: object) -> None:
    looked_at(only_own_errors(lambda: tc.plan(job)))


@given(
    lead=st.sampled_from(STANDARD) | st.fractions("1/1000", 30, max_denominator=10_000),
    rpm=st.none() | st.fractions("1/10", 60_000, max_denominator=10) | st.integers(1, 10**7).map(lambda n: n / 1_000),
    unit=st.sampled_from(["mm", "inch"]),
    decimals=st.integers(0, 9),
)
def test_a_feed_word_reads_back(lead: object, rpm: object, unit: str, decimals: int) -> None:
    mode = "per_revolution" if rpm is None else "per_minute"
    try:
        feed = tc.feed(lead, rpm, unit=unit, mode=mode, decimals=decimals)
    except tc.ThreadcalcError as error:
        assert error.name == "feed-rounds-to-zero"
        return
    assert feed.word == str(feed) == "F" + feed.text
    assert tc.read_number(feed.text) == feed.value == Fraction(feed.text)
    assert abs(feed.value - feed.exact) <= Fraction(1, 2 * 10**decimals)
