"""The operations of the tables of gauges, wires and taps."""

from __future__ import annotations

import threadcalc as tc
from operations import decimal_text, given, thread
from strengths import attributes, yes
from table import Cells


def gauges(row: Cells) -> dict[str, object]:
    one = thread(row)
    found = tc.gauges(one)
    of = {gauge.kind: gauge for gauge in found.gauges}
    sizes = {
        "go_pitch_mm": ("thread_plug_go", "pitch_diameter_mm"),
        "not_go_pitch_mm": ("thread_plug_not_go", "pitch_diameter_mm"),
        "plain_go_mm": ("plain_plug_go", "diameter_mm"),
        "plain_not_go_mm": ("plain_plug_not_go", "diameter_mm"),
    }
    try:
        turns = str(tc.not_go_rule(one).most_turns)
    except tc.ThreadcalcError as error:
        turns = error.name
    return {
        "gauges": [gauge.kind for gauge in found.gauges],
        **{column: getattr(of.get(kind), name, None) for column, (kind, name) in sizes.items()},
        "most_turns": turns,
        "class_assumed": yes(found.class_assumed),
        "hand": found.hand,
    }


def next_move(row: Cells) -> dict[str, object]:
    found = tc.next_move(thread(row), row["result"], **given(row, "turns", "required_turns"))
    # As text in a list: an empty cell is "none" here, not "anything".
    return {"verdict": found.verdict, "moves": found.moves, "deeper_mm": decimal_text(found.deeper_mm)}


def trimmed_depth(row: Cells) -> dict[str, object]:
    return {"new_depth_mm": tc.trimmed_depth_mm(thread(row), **given(row, "depth_mm", "stand_off_turns"))}


def re_entry(row: Cells) -> dict[str, object]:
    again = tc.re_entry_r(**given(row, "r_mm", "pitch_mm", "wanted_mm"))
    return {"new_r_mm": again.r_mm, "pitches": str(again.pitches)}


def over_wires(row: Cells) -> dict[str, object]:
    one = thread(row)
    inch = {"mm": 1, "inch": tc.read_number("25.4")}[row["unit"]]
    wire, diameter = (tc.read_number(row[column]) * inch for column in ("wire", "pitch_diameter"))
    over = tc.over_wires(one, wire, diameter, lead_angle={"yes": True, "no": False}[row["lead_angle"]])
    return {"over_wires": over / float(inch), "best_wire": tc.best_wire_mm(one) / float(inch)}


def tap_kind(row: Cells) -> dict[str, object]:
    kind = tc.TapKind(row["kind"])
    advice = kind.advice(row["hole"])
    assert advice.reason
    return {"tap": kind.tap, "torque_factor": kind.torque_factor, "suits": advice.suits}


def chamfer(row: Cells) -> dict[str, object]:
    form = tc.ChamferForm(row["form"])
    return {
        "shortest": form.shortest_threads,
        "longest": form.longest_threads,
        "usual_hole": form.usual_hole or "both",
    }


def chamfer_fit(row: Cells) -> dict[str, object]:
    forms = tc.chamfers_that_fit(row["hole"], row["room_threads"])
    assert all(form.fits(row["hole"], row["room_threads"]) for form in forms)
    return {"forms": [form.name for form in forms]}


def tap_class(row: Cells) -> dict[str, object]:
    found = tc.iso_tap_class(thread(row), **given(row, "plating_um"))
    return {"tap_class": found.tap_class or "none", "closing_mm": found.closing_mm}


def tap_class_size(row: Cells) -> dict[str, object]:
    smallest, largest = tc.iso_tap_pitch_diameter_mm(thread(row), row["tap_class"])
    return {"smallest_mm": smallest, "largest_mm": largest}


def tap_limit(row: Cells) -> dict[str, object]:
    limit = tc.TapLimit(row["letter"], int(row["number"]))
    assert str(limit) == row["letter"] + row["number"]
    one = thread(row)
    smallest, largest = limit.above_basic_mm(one)
    try:
        pitch = [length if length is None else decimal_text(length)[0] for length in limit.pitch_diameter_mm(one)]
    except tc.ThreadcalcError as error:
        pitch = [error.name, error.name]
    return {
        "smallest_mm": "none" if smallest is None else smallest,
        "largest_mm": largest,
        "smallest_pitch_mm": pitch[0] or "none",
        "largest_pitch_mm": pitch[1],
    }


def h_limit_for_plating(row: Cells) -> dict[str, object]:
    return {"limit": str(tc.h_limit_for_plating(thread(row), row["plating_um"]))}


def usual_tap_limit(row: Cells) -> dict[str, object]:
    return {"limit": str(tc.usual_tap_limit(thread(row)))}


def usual_tap_limit_for_plating(row: Cells) -> dict[str, object]:
    return {"limit": str(tc.usual_tap_limit_for_plating(thread(row), row["plating_um"]))}


def shank_mark(row: Cells) -> dict[str, object]:
    mark = tc.read_shank_mark(row.bytes("text"))
    texts = {
        "thread": mark.thread,
        "tolerance_class": mark.tolerance_class,
        "limit": mark.limit,
        "iso_class": mark.iso_class,
        "chamfer": mark.chamfer and mark.chamfer.name,
        "not_read": mark.not_read and "{}:{}".format(*mark.not_read),
    }
    flags = {name: yes(is_so) for name, is_so in attributes(mark, "own_limits", "ground", "wire_insert").items()}
    return {name: ["" if text is None else text] for name, text in texts.items()} | flags | {"hand": mark.hand}


def judge_tap(row: Cells) -> dict[str, object]:
    keywords = given(row, "plating_um", "hole", "room_threads")
    insert = {"yes": True, "no": False}[row["wire_insert"]]
    findings = tc.judge_tap(tc.read_shank_mark(row.bytes("mark")), thread(row), **keywords, wire_insert=insert)
    # What has been read of the limits is not what this table is about.
    shown = [f"{one.id}:{one.severity}" for one in findings if one.id != "limits-not-sourced"]
    return {"findings": shown}


OPERATIONS = (
    chamfer,
    chamfer_fit,
    gauges,
    h_limit_for_plating,
    judge_tap,
    next_move,
    over_wires,
    re_entry,
    shank_mark,
    tap_class,
    tap_class_size,
    tap_kind,
    tap_limit,
    trimmed_depth,
    usual_tap_limit,
    usual_tap_limit_for_plating,
)
