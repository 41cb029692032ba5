"""The names, types and errors that callers rely on."""

from __future__ import annotations

import copy
import inspect
import json
import pickle
from decimal import Decimal
from fractions import Fraction

import pytest
import threadcalc as tc
from jobs import UNIFIED
from threadcalc import Drill, Thread  # noqa: F401  eval(repr(x)) needs the names

FEED = {"unit": "mm", "mode": "per_minute", "decimals": 3}
TAPER = {"drill_mm": 11, "point_angle_deg": 118, "bottom_clearance_mm": 3}
DEPTHS = {"chamfer_threads": 3, "drill_mm": 6.8, "point_angle_deg": 118, "bottom_clearance_mm": 3}


def raised(call, *arguments, **keywords) -> tc.ThreadcalcError:
    with pytest.raises(tc.ThreadcalcError) as caught:
        call(*arguments, **keywords)
    return caught.value


def test_every_public_name_is_there_once() -> None:
    assert tc.__all__ == sorted(set(tc.__all__), key=lambda name: (name.lower() == name, name))
    assert all(getattr(tc, name).__module__.startswith("threadcalc") for name in tc.__all__)
    public = {name for name in vars(tc) if not name.startswith("_")}
    # The command is there as soon as somebody has imported it.
    assert public - set(tc.__all__) - {"command"} == {"errors", "sarif_log"}


def test_a_thread_has_the_attributes_of_the_contract() -> None:
    thread = tc.Thread("7/16-14 UNC-2B-LH")
    assert (thread.form, thread.series, thread.is_standard, thread.size) == ("unified", "UNC", True, "7/16")
    exact = (thread.nominal_mm, thread.major_mm, thread.pitch_mm, thread.lead_mm, thread.taper_on_diameter)
    assert exact == (Fraction(889, 80), Fraction(889, 80), Fraction(127, 70), Fraction(127, 70), 0)
    assert all(type(value) is Fraction for value in exact)
    assert (thread.starts, thread.hand, thread.side, thread.tolerance_class) == (1, "left", "internal", "2B")
    assert (thread.wire_insert, thread.findings) == (False, [])


@pytest.mark.parametrize(
    "thread",
    [
        tc.Thread("M8"),
        tc.Thread("M10x1-6H-LH"),
        tc.Thread("M16xPh3P1.5-6H"),
        tc.Thread("1/4-20 UNC-2B"),
        tc.Thread("10-32 UNF").with_side("external"),
        tc.Thread("G1/2A-LH"),
        tc.Thread("G1/2").with_side("external"),
        tc.Thread("1/2 BSPT"),
        tc.Thread("1/4-18 NPTF-1"),
        tc.Thread.metric(Fraction(31, 3), Fraction(1, 3)).with_hand("left"),
        tc.Thread.unified(Fraction(1001, 3000), Fraction(55, 3)).with_class("2B").with_starts(3),
    ],
    ids=repr,
)
def test_a_thread_is_a_value(thread: tc.Thread) -> None:
    twins = [eval(repr(thread)), copy.copy(thread), copy.deepcopy(thread)]
    twins += [pickle.loads(pickle.dumps(thread, protocol)) for protocol in range(pickle.HIGHEST_PROTOCOL + 1)]
    for twin in twins:
        assert twin == thread and hash(twin) == hash(thread) and repr(twin) == repr(thread)
    assert thread != thread.with_hand("right" if thread.hand == "left" else "left")
    assert len({thread, *twins}) == 1


def test_a_thread_cannot_be_changed() -> None:
    thread = tc.Thread("M8")
    with pytest.raises(AttributeError):
        thread.starts = 2
    with pytest.raises(AttributeError):
        thread.remark = "x"
    thread.findings.append("x")
    assert thread.findings == []
    with pytest.raises(TypeError):
        type("Mine", (tc.Thread,), {})


def test_threads_are_made_from_figures_and_texts() -> None:
    assert tc.Thread.metric("8", Decimal("1.25")) == tc.Thread("M8") == tc.Thread(b"M8\xd71.25")
    assert tc.Thread.unified(0.25, 20) == tc.Thread.unified("1/4", "20") == tc.Thread("1/4-20")
    assert tc.Thread.unified("#10", 32) == tc.Thread("10-32")
    assert str(tc.Thread("M8").with_class("6H")) == "M8x1.25-6H"
    assert tc.Thread("M16x1.5").with_starts(2) == tc.Thread("M16xPh3P1.5")


@pytest.mark.parametrize("value", [5, Fraction(5), Decimal("5"), Decimal("5E0"), "5", "5.0", 5.0])
def test_exact_numbers_come_as_any_of_five_types(value: object) -> None:
    assert tc.programmed_speed(value) == 5
    assert tc.feed(value, 1, **FEED).exact == 5


def test_a_float_is_its_shortest_decimal_text() -> None:
    assert tc.feed(0.1, 1, **FEED).exact == Fraction(1, 10)
    assert tc.feed(1e-9, 10**6, **FEED).exact == Fraction(1, 1000)
    for value in (25.4 / 14, 1e-10, float("nan"), float("inf"), Decimal("NaN"), Decimal("1e-10"), "0.1234567891"):
        assert raised(tc.feed, value, 650, **FEED).name == "not-exact"
    for value in (10**19, -(2**63), Fraction(1, 10**20), Decimal("1e30"), 1e300):
        assert raised(tc.feed, value, 650, **FEED).name == "overflow"


@pytest.mark.parametrize("value", [True, False, None, b"1", [1], object(), 1j])
def test_what_is_no_number_is_a_type_error(value: object) -> None:
    for call in (
        lambda: tc.programmed_speed(value),
        lambda: tc.feed(value, 650, **FEED),
        lambda: tc.Thread.metric(8, value),
        lambda: tc.drill_diameter(tc.Thread("M8"), value, tap="cut", basis="3H/4"),
        lambda: tc.feed(1, 650, unit="mm", mode="per_minute", decimals=value),
    ):
        pytest.raises(TypeError, call)


def test_a_bool_is_no_number_in_a_job() -> None:
    pytest.raises(TypeError, tc.plan, UNIFIED | {"rpm": True})
    pytest.raises(TypeError, tc.Job, machine={"speed_step": True})
    assert tc.Job(dialect={"needs_spindle_running": False}).to_dict()["dialect"]["needs_spindle_running"] is False


@pytest.mark.parametrize("left_out", FEED)
def test_unit_mode_and_decimals_never_have_a_default(left_out: str) -> None:
    keywords = {key: value for key, value in FEED.items() if key != left_out}
    pytest.raises(TypeError, tc.feed, tc.Thread("M8"), 650, **keywords)
    error = raised(tc.plan, {key: value for key, value in UNIFIED.items() if key != left_out})
    assert (error.name, error.field) == ("missing", left_out)


@pytest.mark.parametrize(
    ("call", "positional", "keyword_only"),
    [
        (tc.feed, ["thread_or_lead_mm", "rpm"], ["unit", "mode", "decimals"]),
        (tc.exact_speeds, ["thread_or_lead_mm", "rpm"], ["unit", "decimals", "count", "lowest", "highest"]),
        (tc.programmed_speed, ["rpm"], ["step", "lowest", "highest"]),
        (tc.drill_diameter, ["thread", "percent"], ["tap", "basis"]),
        (tc.percent_thread, ["thread", "drill_mm"], ["tap", "basis"]),
        (tc.tap_drill, ["thread"], ["tap", "percent", "basis", "sets", "taper_reamer", "drills", "oversize_mm"]),
        (
            tc.taper_depths,
            ["thread"],
            ["drill_mm", "point_angle_deg", "bottom_clearance_mm", "projection_mm"],
        ),
        (
            tc.depths,
            ["thread", "full_thread_mm"],
            [*DEPTHS, "tap_centre_mm", "tap_set_on", "through"],
        ),
    ],
)
def test_parameters_have_the_names_of_the_contract(call, positional, keyword_only) -> None:
    parameters = inspect.signature(call).parameters.values()
    assert [p.name for p in parameters if p.kind is p.POSITIONAL_OR_KEYWORD] == positional
    assert [p.name for p in parameters if p.kind is p.KEYWORD_ONLY] == keyword_only


def test_an_error_says_all_there_is_to_say() -> None:
    error = raised(tc.Thread, "1/4-20 UNF")
    assert isinstance(error, tc.DesignationError) and isinstance(error, ValueError)
    assert (error.name, error.code, error.at) == ("series-mismatch", 7, 7)
    assert "UNC" in error.hint and "got 20, expected 28" in str(error)
    other = raised(tc.feed, 1, 0, **FEED)
    assert type(other) is tc.ThreadcalcError
    assert (other.name, other.code, other.at, other.field) == ("out-of-range", 5, None, "rpm")
    assert str(other).startswith("rpm: ") and other.hint in str(other)
    for each in (error, other):
        twin = pickle.loads(pickle.dumps(each))
        assert type(twin) is type(each) and vars(twin) == vars(each) and str(twin) == str(each)


@pytest.mark.parametrize(
    ("call", "name", "field"),
    [
        (lambda: tc.feed(1, 1, unit="MM2", mode="per_minute", decimals=3), "unknown-value", "unit"),
        (lambda: tc.feed(1, 1, unit="mm", mode="per minute?", decimals=3), "unknown-value", "mode"),
        (lambda: tc.feed(1, 1, unit="mm\ud800", mode="per_minute", decimals=3), "unknown-value", "unit"),
        (lambda: tc.feed(1, 1, unit="mm", mode="per_minute", decimals=10), "out-of-range", "decimals"),
        (lambda: tc.feed(1, 1, unit="mm", mode="per_minute", decimals=-1), "out-of-range", "decimals"),
        (lambda: tc.feed(1, 1, unit="mm", mode="per_revolution", decimals=3), "contradiction", "rpm"),
        (lambda: tc.feed(1, **FEED), "missing", "rpm"),
        (lambda: tc.tap_drill(tc.Thread("M8"), tap="cut", percent=75), "missing", "basis"),
        (lambda: tc.tap_drill(tc.Thread("M8"), tap="cut", sets=[]), "missing", "drill_sets"),
        (lambda: tc.tap_drill(tc.Thread("M8"), tap="cut", sets="metrical"), "unknown-value", "drill_sets"),
        (lambda: tc.Thread("M8").limits(), "class-unset", "tolerance_class"),
        (lambda: tc.Thread("M8").pipe(), "does-not-apply", "form"),
        (lambda: tc.Thread("Rc1/2").limits(), "does-not-apply", "form"),
        (lambda: tc.taper_depths(tc.Thread("G1/2"), **TAPER), "does-not-apply", "form"),
        (lambda: tc.taper_depths(tc.Thread("Rc1/2"), **TAPER), "missing", "projection_mm"),
        (lambda: tc.tap_drill(tc.Thread("M8"), tap="cut", taper_reamer=True), "contradiction", "taper_reamer"),
        (lambda: tc.read_hole_note("M8", unit="furlong"), "unknown-value", "unit"),
        (lambda: tc.Thread("M8-6H").with_side("external"), "contradiction", "side"),
        (lambda: tc.exact_speeds(1, 1, unit="mm", decimals=3, count=-1), "out-of-range", "count"),
        (lambda: tc.drills("imperial"), "unknown-value", "drill_sets"),
        (lambda: tc.Drill("number", "#98"), "unknown-value", "drill_mm"),
        (lambda: tc.standard_threads(form="pipe"), "unknown-value", "form"),
        (lambda: tc.depths(tc.Thread("M8"), 16, **DEPTHS | {"point_angle_deg": 0}), "out-of-range", "point_angle_deg"),
        (lambda: tc.read_number("\ud800"), "unreadable", "number"),
        (lambda: tc.Thread(""), "empty", "designation"),
    ],
)
def test_bad_values_are_named(call, name: str, field: str) -> None:
    error = raised(call)
    assert (error.name, error.field) == (name, field)


def test_feed_gives_word_and_exact_numbers() -> None:
    feed = tc.feed(tc.Thread("7/16-14 UNC"), 650, **FEED)
    assert (feed.word, feed.text, str(feed), feed.unit, feed.mode) == (
        "F1179.286",
        "1179.286",
        "F1179.286",
        "mm",
        "per_minute",
    )
    assert feed.exact == Fraction(127, 70) * 650 and feed.value == Fraction("1179.286")
    assert feed.lead_error == feed.value / feed.exact - 1
    assert feed.axial_error_mm(20) == feed.lead_error * 20
    assert feed.lead_cut_mm == feed.value / 650
    assert feed == tc.feed("127/70", 650, **FEED)


def test_lists_are_lists_of_their_class() -> None:
    assert [type(drill) for drill in tc.drills("number", "letter")] == [tc.Drill] * (97 + 26)
    assert {drill.set for drill in tc.drills()} == {"metric", "number", "letter", "fractional"}
    for drill in [*tc.drills(), tc.Drill.of_diameter("1/3")]:
        assert eval(repr(drill)) == drill == pickle.loads(pickle.dumps(drill)) == copy.copy(drill)
    assert tc.near(tc.Thread("M10x1.3"))[0] == ("M10x1.25", "same-diameter")
    speeds = tc.exact_speeds(tc.Thread("5/8-11"), 450, unit="inch", decimals=4, count=3)
    assert speeds == [451, 440, 462]


def test_tap_drill_is_judged_by_limits() -> None:
    found = tc.tap_drill(tc.Thread("7/16-14 UNC-2B"), tap="cut")
    assert (found.drill.name, found.basis, found.within_limits, found.findings) == ("U", "3H/4", "yes", [])
    assert found.left_to_limit_mm == found.limits.minor_mm[1] - found.drill.diameter_mm
    assert [type(other) for other in found.alternatives] == [tc.Alternative] * 4
    assumed = tc.tap_drill(tc.Thread("7/16-14 UNC"), tap="cut")
    assert [finding.id for finding in assumed.findings] == ["class-assumed"]
    form = tc.tap_drill(tc.Thread("M8-6H"), tap="form")
    assert (form.basis, form.within_limits, form.left_to_limit_mm) == (None, "does-not-apply", None)


def test_depths_distinguish_the_tap_from_the_program() -> None:
    blind = tc.depths(tc.Thread("M8"), 16, **DEPTHS, tap_centre_mm=2, tap_set_on="front")
    assert (blind.tap_mm, blind.program_tap_mm) == (Fraction("21.75"), Fraction("19.75"))
    centre = tc.depths(tc.Thread("M8"), 16, **DEPTHS, tap_centre_mm=2, tap_set_on="centre")
    assert centre.program_tap_mm == centre.tap_mm
    through = tc.depths(tc.Thread("M8"), 16, **DEPTHS, through=True)
    assert through.full_diameter_mm == 19
    pytest.raises(TypeError, tc.depths, tc.Thread("M8"), 16, **DEPTHS, through="yes")


def test_a_plan_has_everything_and_its_json_is_its_dict() -> None:
    plan = tc.plan(UNIFIED)
    assert plan.thread == tc.Thread("7/16-14 UNC-2B") and plan.feed.word == "F1179.286"
    assert (plan.programmed_rpm, plan.asked_rpm, plan.withheld) == (650, 650, [])
    assert plan.words[-1] == "G80" and " ".join(plan.blocks) == " ".join(plan.words)
    assert plan.restore == ["G94", "F", "M3"]
    assert (plan.lead_cut_mm, plan.axial_error_mm) == (plan.feed.lead_cut_mm, plan.feed.axial_error_mm(20))
    assert plan.limits == plan.thread.limits() and plan.profile == plan.thread.profile()
    assert [row.planned for row in plan.card].count(True) == 1 and plan.not_checked
    assert str(plan) == plan.text and plan.text.endswith("\n")
    parsed = plan.to_dict()
    assert parsed == json.loads(plan.to_json())
    assert parsed["feed"]["word"] == plan.feed.word and Fraction(parsed["lead_cut_mm"]) == plan.lead_cut_mm
    assert [found["id"] for found in parsed["findings"]] == [found.id for found in plan.findings]


def test_a_job_is_a_dict_or_keywords_and_goes_round() -> None:
    by_keywords = tc.Job(**UNIFIED)
    assert by_keywords == tc.Job(**by_keywords.to_dict()) and by_keywords.missing == []
    planned = tc.plan(by_keywords)
    assert planned.to_json() == tc.plan(UNIFIED).to_json() == tc.plan(by_keywords.to_dict()).to_json()
    # With every assumption filled in, the job plans the same numbers without any finding.
    again = tc.plan(planned.job)
    assert (again.words, again.findings) == (planned.words, [])
    assert tc.Job().missing == [key for key in UNIFIED if key not in ("dialect", "rpm")][:4] + [
        "rpm",
        "hole",
        "full_thread_depth_mm",
        "tap",
    ]


def test_a_job_takes_nested_fields_objects_and_lists() -> None:
    special = tc.Thread.metric(Fraction(31, 3), Fraction(1, 3))
    job = UNIFIED | {"thread": special, "machine": {"speed_step": 10, "highest_rpm": "637.5"}, "drill_sets": ["metric"]}
    plan = tc.plan(job)
    assert plan.thread.pitch_mm == Fraction(1, 3) and plan.programmed_rpm == 630
    gears = [[20, 700, 120], (20, 4000, 20, 100, 4000, "2.5")]
    plan = tc.plan(UNIFIED | {"material": "aluminium", "machine": {"gears": gears}, "screw": {"tensile_mpa": 800}, "part_shear_mpa": 200})
    assert plan.spindle.gear is not None and plan.joint is not None
    assert tc.plan(plan.job.to_dict()).spindle == plan.spindle
    own = {"name": "mill-2", "tap_rh": "G84.2", "needs_spindle_running": False}
    assert "G84.2" in tc.plan(UNIFIED | {"dialect": own}).words
    assert tc.plan(UNIFIED | {"dialect": None}).withheld == ["dialect-unset"]


@pytest.mark.parametrize(
    ("change", "name", "word"),
    [
        ({"full_thread_dept_mm": 3}, "unknown-key", "full_thread_dept_mm"),
        ({"machine": {"highest": 3}}, "unknown-key", "machine.highest"),
        ({"full_thread_dept_mm": object()}, "unknown-key", "full_thread_dept_mm"),
        ({"holder": "soft"}, "unknown-value", "holder"),
        ({"machine": {"gears": [[20, 600]]}}, "out-of-range", "machine.gears"),
        ({"machine": {"gears": [[20, 600, 1]] * 5}}, "too-long", "machine.gears"),
        ({"screw": {"length": 3}}, "unknown-key", "screw.length"),
        ({"unit": "furlong"}, "unknown-value", "unit"),
        ({"schema": 2}, "unknown-value", "schema"),
        ({"rpm": float("nan")}, "not-exact", "rpm"),
        ({"rpm": 10**30}, "overflow", "rpm"),
        ({"thread": "M8x"}, "unreadable", "designation"),
    ],
)
def test_a_bad_field_of_a_job_is_named(change: dict, name: str, word: str) -> None:
    error = raised(tc.plan, UNIFIED | change)
    assert error.name == name and str(error).startswith(word)
    assert isinstance(error, tc.DesignationError) == ("thread" in change)


def test_wrong_types_in_a_job_are_type_errors() -> None:
    for bad in (None, "M8", 3, [("thread", "M8")], {3: 4}, UNIFIED | {"machine": "mill"}, UNIFIED | {"tap": object()}):
        pytest.raises(TypeError, tc.plan, bad)


def test_findings_have_one_shape_and_an_error_withholds_the_words() -> None:
    plan = tc.plan(UNIFIED | {"thread": "7/16-14 UNC-2A"})
    assert plan.words == plan.blocks == [] and "external-class" in plan.withheld
    for finding in plan.findings:
        assert finding.severity in ("error", "warning", "info")
        assert all(isinstance(text, str) for text in (finding.id, finding.message, finding.evidence, finding.suggestion))
        assert all(type(key) is str and type(number) is float for key, number in finding.numbers.items())
        assert str(finding).startswith(f"{finding.severity} {finding.id}: ")
    assert plan.findings == tc.plan(UNIFIED | {"thread": "7/16-14 UNC-2A"}).findings


def test_results_cannot_be_changed_or_made_by_hand() -> None:
    plan = tc.plan(UNIFIED)
    for result in (plan, plan.feed, plan.depths, plan.drill, plan.limits, plan.profile, plan.findings[0], plan.card[0]):
        with pytest.raises(AttributeError):
            result.word = "F1."
        pytest.raises(TypeError, type(result))
        assert type(result).__name__ in repr(result)
