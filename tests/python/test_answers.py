"""Engagement, cutting data, motion, gauges and taps: the names, types and errors that callers rely on."""

from __future__ import annotations

import ast
import copy
import inspect
import itertools
import pathlib
import pickle
from decimal import Decimal
from fractions import Fraction

import pytest
import threadcalc as tc

STUB = pathlib.Path(__file__).parents[2] / "threadcalc-py/python/threadcalc/_threadcalc.pyi"
HOLE, SCREW = tc.Thread("M10x1.5-6H"), tc.Thread("M10x1.5-6g")
STRENGTHS = {"internal_shear_mpa": 200, "external_shear_mpa": 480, "external_tensile_mpa": 800}
TAPER = tc.Thread("1/4-18 NPT")
PATTERN = {"rapid_distance_mm": 50, "rapid_feed_mm_min": 20000, "seconds_per_hole": 3}


@pytest.mark.parametrize(
    ("call", "positional", "keyword_only"),
    [
        (
            tc.engagement,
            ["internal", "external", "length_mm"],
            [*STRENGTHS, "without_full_thread_mm", "drilled_mm", "load_n"],
        ),
        (tc.spindle_speed, ["diameter_mm", "surface_speed_m_min"], []),
        (tc.torque_nm, ["thread", "cutting_force_n_mm2"], ["factor"]),
        (tc.power_kw, ["torque_nm", "rpm"], []),
        (
            tc.tapping_time,
            ["lead_mm", "rpm", "travel_mm"],
            ["acceleration_rpm_s", "retract_factor", "dwell_s", "peck_mm"],
        ),
        (tc.over_wires, ["thread", "wire_mm", "pitch_diameter_mm"], ["lead_angle"]),
        (tc.best_wire_mm, ["thread"], []),
    ],
)
def test_parameters_have_the_names_of_the_contract(call, positional, keyword_only) -> None:
    parameters = inspect.signature(call).parameters.values()
    assert [p.name for p in parameters if p.kind is p.POSITIONAL_OR_KEYWORD] == positional
    assert [p.name for p in parameters if p.kind is p.KEYWORD_ONLY] == keyword_only


@pytest.mark.parametrize("left_out", STRENGTHS)
def test_a_strength_never_has_a_default(left_out: str) -> None:
    keywords = {key: value for key, value in STRENGTHS.items() if key != left_out}
    pytest.raises(TypeError, tc.engagement, HOLE, SCREW, 10, **keywords)


def test_an_unknown_acceleration_has_to_be_said() -> None:
    pytest.raises(TypeError, tc.tapping_time, 1, 600, 20)
    least = tc.tapping_time(1, 600, 20, acceleration_rpm_s=None)
    assert (least.time_s, least.turns_to_speed, least.reaches_speed) == (4.0, 0.0, True)
    assert tc.tapping_time(1, 600, 20, acceleration_rpm_s=1e7).time_s > least.time_s
    waited = tc.tapping_time(1, 600, 20, acceleration_rpm_s=None, retract_factor=2, dwell_s=0.5)
    assert waited.time_s == 3.5 and waited.retract_rpm == 1200


@pytest.mark.parametrize("peck", [7.5, Fraction(15, 2), Decimal("7.5"), "7.5"])
def test_pecks_are_counted_in_the_time(peck: object) -> None:
    plain = tc.tapping_time(1, 600, 20, acceleration_rpm_s=None, dwell_s=0.5)
    assert plain == tc.tapping_time(1, 600, 20, acceleration_rpm_s=None, dwell_s=0.5, peck_mm=None)
    pecked = tc.tapping_time(1, 600, 20, acceleration_rpm_s=None, dwell_s=0.5, peck_mm=peck)
    # 7.5 + 15 + 20 turns at 10 a second, both ways, and three waits.
    assert (plain.strokes, plain.time_s, pecked.strokes, pecked.time_s) == (1, 4.5, 3, 10.0)
    assert type(pecked.strokes) is int and pecked.turns == 20


@pytest.mark.parametrize("peck", [0, -1, "0.0199", 20.1])
def test_a_peck_out_of_range_names_itself(peck: object) -> None:
    with pytest.raises(tc.ThreadcalcError) as caught:
        tc.tapping_time(1, 600, 20, acceleration_rpm_s=None, peck_mm=peck)
    error = caught.value
    assert (error.name, error.field) == ("out-of-range", "peck_mm") and "1000 strokes" in error.hint
    assert f"got {peck}, expected 0.02 to 20;" in str(error)
    pytest.raises(TypeError, tc.tapping_time, 1, 600, 20, acceleration_rpm_s=None, peck_mm=[1])


@pytest.mark.parametrize("value", [800, 800.0, Fraction(800), Decimal("800"), "800", "800.0"])
def test_measured_numbers_come_as_any_of_five_types(value: object) -> None:
    found = tc.engagement(HOLE, SCREW, 10, **STRENGTHS | {"external_tensile_mpa": value})
    assert found == tc.engagement(HOLE, SCREW, 10, **STRENGTHS)
    assert tc.power_kw(value, "1000") == tc.power_kw(800.0, 1000)


@pytest.mark.parametrize("value", [True, None, b"1", [1], object(), 1j])
def test_what_is_no_number_is_a_type_error(value: object) -> None:
    for call in (
        lambda: tc.engagement(HOLE, SCREW, 10, **STRENGTHS | {"internal_shear_mpa": value}),
        lambda: tc.power_kw(value, 100),
        lambda: tc.speed_after_turns(1, value),
        lambda: tc.Gear(1, 2, [(1, value)]),
        lambda: tc.Gear(1, 2, value),
        lambda: tc.gear_fit(value, 1, 1),
        lambda: tc.pattern_time_s(value, **PATTERN),
        lambda: tc.TapLimit("H", value),
        lambda: tc.re_entry_r(1, 1, value),
    ):
        pytest.raises(TypeError, call)


@pytest.mark.parametrize(
    ("call", "name", "field"),
    [
        (lambda: tc.engagement(SCREW, HOLE, 10, **STRENGTHS), "contradiction", "side"),
        (lambda: tc.engagement(HOLE, SCREW, 10, **STRENGTHS | {"external_tensile_mpa": 0}), "out-of-range", "external_tensile_mpa"),
        (lambda: tc.engagement(HOLE, SCREW, 10, **STRENGTHS, load_n=0), "out-of-range", "load_n"),
        (lambda: tc.engagement(HOLE, SCREW, 10, **STRENGTHS, without_full_thread_mm=10), "out-of-range", "without_full_thread_mm"),
        (lambda: tc.engagement(HOLE, SCREW, 10, **STRENGTHS, drilled_mm=10), "out-of-range", "drilled_mm"),
        (lambda: tc.power_kw(float("nan"), 100), "out-of-range", "torque_nm"),
        (lambda: tc.power_kw(10**400, 100), "overflow", "torque_nm"),
        (lambda: tc.power_kw("1e3", 100), "unreadable", "torque_nm"),
        (lambda: tc.torque_nm(HOLE, 10), "out-of-range", "cutting_force_n_mm2"),
        (lambda: tc.torque_by_pitch(HOLE, 2500, factor=0), "out-of-range", "torque_factor"),
        (lambda: tc.torque_by_chip_area(TAPER, 2500, drill_mm=11, factor=1), "does-not-apply", "form"),
        (lambda: tc.gear_fit(itertools.repeat(tc.Gear(1, 2, [(1, 1)])), 1, 1), "out-of-range", "gears"),
        (lambda: tc.pattern_time_s(-1, **PATTERN), "out-of-range", "hole_count"),
        (lambda: tc.pattern_time_s(2**40, **PATTERN), "out-of-range", "hole_count"),
        (lambda: tc.feed_fit(1, 600, feed_limit_mm_min=0), "out-of-range", "feed_limit_mm_min"),
        (lambda: tc.holder_travel(1, 20, underfeed_percent=21, over_travel_turns=0), "out-of-range", "underfeed_percent"),
        (lambda: tc.over_wires(HOLE, 0.1, 9.026), "out-of-range", "wire_mm"),
        (lambda: tc.best_wire_mm(TAPER), "does-not-apply", "form"),
        (lambda: tc.not_go_rule(tc.Thread("G1/2")), "not-sourced", "form"),
        (lambda: tc.next_move(HOLE, "go_stops", turns=3), "missing", "turns"),
        (lambda: tc.next_move(HOLE, "not_go_enters"), "missing", "turns"),
        (lambda: tc.next_move(HOLE, "go_passes", turns=3), "contradiction", "turns"),
        (lambda: tc.TapLimit("H", 256 + 3), "out-of-range", "tap_limit"),
        (lambda: tc.TapLimit("H", -3), "out-of-range", "tap_limit"),
        (lambda: tc.TapLimit("G", 3), "unknown-value", "tap_limit"),
        (lambda: tc.iso_tap_class(tc.Thread("M8")), "class-unset", "tolerance_class"),
        (lambda: tc.judge_tap(tc.read_shank_mark("M8"), HOLE, hole="deep"), "unknown-value", "hole"),
    ],
)
def test_bad_values_are_named(call, name: str, field: str) -> None:
    with pytest.raises(tc.ThreadcalcError) as caught:
        call()
    assert (caught.value.name, caught.value.field) == (name, field)


@pytest.mark.parametrize(
    ("call", "word"),
    [
        (lambda bad: tc.holder_clearance(HOLE, bad), "holder"),
        (lambda bad: tc.starting_strength(bad, 10), "property_class"),
        (lambda bad: tc.starting_forces(bad), "material"),
        (lambda bad: tc.starting_part_strength(bad), "material"),
        (lambda bad: tc.TapKind(bad), "tap_kind"),
        (lambda bad: tc.ChamferForm(bad), "chamfer"),
        (lambda bad: tc.iso_tap_pitch_diameter_mm(HOLE, bad), "tap_class"),
        (lambda bad: tc.next_move(HOLE, bad), "result"),
    ],
)
def test_an_unknown_name_is_refused_with_the_choices(call, word: str) -> None:
    with pytest.raises(tc.ThreadcalcError, match=rf"^{word}: .*one of: ") as caught:
        call("no such thing")
    assert caught.value.name == "unknown-value"
    pytest.raises(TypeError, call, 3)


def listed(alias: str) -> list[str]:
    """The names that a Literal of the stub lists."""
    for node in ast.walk(ast.parse(STUB.read_text(encoding="utf-8"))):
        if isinstance(node, ast.AnnAssign) and getattr(node.target, "id", "") == alias:
            return [constant.value for constant in ast.walk(node) if isinstance(constant, ast.Constant)]
    raise AssertionError(alias)


def test_the_stub_lists_the_choices_of_the_library() -> None:
    assert (tc.materials(), tc.property_classes()) == (listed("_Material"), listed("_PropertyClass"))
    for alias, call in (
        ("_Holder", lambda name: tc.holder_clearance(HOLE, name)),
        ("_TapKind", tc.TapKind),
        ("_Chamfer", tc.ChamferForm),
        ("_TapClass", lambda name: tc.iso_tap_pitch_diameter_mm(HOLE, name)),
        ("_Hole", lambda name: tc.chamfers_that_fit(name, 3)),
    ):
        with pytest.raises(tc.ThreadcalcError) as caught:
            call("no such thing")
        assert caught.value.hint == f"one of: {' '.join(listed(alias))}"
        assert all(call(name) is not None for name in listed(alias))


def test_starting_values_are_marked() -> None:
    for name in tc.property_classes():
        strength = tc.starting_strength(name, 10)
        assert strength.shear_mpa == pytest.approx(0.6 * strength.tensile_mpa) and "from memory" in strength.source
    for name in tc.materials():
        strength = tc.starting_part_strength(name)
        assert strength.shear_mpa == pytest.approx(0.6 * strength.tensile_mpa) and "from memory" in strength.source
    forces = [tc.starting_forces(name) for name in tc.materials()]
    assert [one.material for one in forces if not one.is_read] == ["aluminium"]
    assert None in {one.by_chip_area_n_mm2 for one in forces}
    assert tc.torque_nm(HOLE, forces[0].by_pitch_n_mm2) == tc.torque_by_pitch(HOLE, 2300).likely_nm


def test_exact_answers_are_fractions_and_absent_ones_are_none() -> None:
    fit = tc.feed_fit(tc.Thread("7/16-14").lead_mm, 650, feed_limit_mm_min=1000)
    assert fit.fastest_rpm == Fraction(1000) / Fraction(127, 70) and type(fit.feed_mm_min) is Fraction
    assert tc.engagement(HOLE, SCREW, 10, **STRENGTHS).safety_factor is None
    alone = tc.gear_fit([tc.Gear(20, 500, [(20, 5)])], 6, 900)
    assert (alone.gear, alone.torque_nm, alone.is_enough, alone.fastest_rpm) == (None, None, False, None)
    set_of = tc.gauges(tc.Thread("M8-6g"))
    assert [gauge.kind for gauge in set_of.gauges][0] == "thread_ring_go" and set_of.gauges[1].diameter_mm is None
    assert tc.gauges(TAPER).gauges[0].kind == "taper_plug" and tc.gauges(tc.Thread("M8")).class_assumed
    assert tc.TapLimit("D", 5).above_basic_mm(tc.Thread("M20"))[0] is None
    assert tc.iso_tap_class(tc.Thread("M8-7G")).tap_class is None


@pytest.mark.parametrize(("text", "confidence"), [("M8-6H", "confirmed"), ("M8x1.1-6H", "by formula"), ("M10x1.4-6g", "by formula")])
def test_limits_outside_the_tables_say_so(text: str, confidence: str) -> None:
    assert tc.Thread(text).limits().confidence == confidence


def test_names_of_taps_are_values() -> None:
    for value in (tc.TapKind("form"), tc.ChamferForm("plug"), tc.TapLimit("H", 3)):
        name = type(value).__name__
        twin = eval(repr(value), {name: getattr(tc, name)})
        assert twin == value and hash(twin) == hash(value) and copy.copy(value) == value
        assert pickle.loads(pickle.dumps(value)) == value
    assert tc.TapLimit("H", 3) != tc.TapLimit("L", 3) and tc.ChamferForm("A") != tc.ChamferForm("B")


def test_marks_are_read_from_str_and_bytes() -> None:
    mark = tc.read_shank_mark("1/4-20 UNC GH3 plug ÄÖ")
    assert (mark.thread, mark.limit, mark.ground) == (tc.Thread("1/4-20 UNC"), tc.TapLimit("H", 3), True)
    assert mark.chamfer == tc.ChamferForm("plug") and mark.not_read == (20, 4)
    assert mark == tc.read_shank_mark("1/4-20 UNC GH3 plug ÄÖ".encode())
    with pytest.raises(tc.DesignationError) as caught:
        tc.read_shank_mark("1/4-20 UNF H3")
    assert caught.value.name == "series-mismatch"
    pytest.raises(TypeError, tc.read_shank_mark, 3)
    pytest.raises(TypeError, tc.judge_tap, "M8 6H", HOLE)


def test_answers_cannot_be_changed_and_name_themselves() -> None:
    mark = tc.read_shank_mark("M8 6H")
    answers = [
        tc.engagement(HOLE, SCREW, 10, **STRENGTHS),
        tc.starting_strength("8.8", 10),
        tc.starting_part_strength("aluminium"),
        tc.torque_by_pitch(HOLE, 2500),
        tc.forming_factor(),
        tc.starting_forces("aluminium"),
        tc.Gear(1, 2, [(1, 1)]),
        tc.gear_fit([tc.Gear(1, 2, [(1, 1)])], 1, 1),
        tc.tapping_time(1, 600, 20, acceleration_rpm_s=None),
        tc.feed_fit(1, 600, feed_limit_mm_min=1000),
        tc.holder_clearance(HOLE, "rigid"),
        tc.holder_travel(1, 20, underfeed_percent=5, over_travel_turns=0),
        tc.gauges(HOLE),
        tc.gauges(HOLE).gauges[0],
        tc.not_go_rule(HOLE),
        tc.next_move(HOLE, "go_passes"),
        tc.re_entry_r(5, 1, 7),
        tc.TapKind("form").advice("blind"),
        tc.iso_tap_class(HOLE),
        mark,
    ]
    for answer in answers:
        assert type(answer).__name__ in repr(answer) and answer == answer
        with pytest.raises(AttributeError):
            answer.remark = "x"
    assert "same tool" in tc.re_entry_r(5, 1, 7).rule
