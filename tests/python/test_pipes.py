"""Pipe threads, fits, hole notes and comments: what is exact, what is None, and what goes round."""

from __future__ import annotations

import pickle
from fractions import Fraction

import pytest
import threadcalc as tc

PIPE_FORMS = ["npt", "nptf", "npsc", "npsm", "npsf", "g", "r", "rp", "rc"]
TAPERS = {"npt", "nptf", "r", "rc"}
INCH = Fraction("25.4")


@pytest.mark.parametrize("form", PIPE_FORMS)
def test_every_pipe_thread_has_its_dimensions(form: str) -> None:
    threads = tc.standard_threads(form)
    assert len(threads) > 5
    for thread in threads:
        assert (thread.form, thread.series, thread.nominal_mm, thread.is_standard) == (form, None, None, True)
        assert (thread.choice, thread.is_iso_262, thread.wire_insert, thread.written_as) == (None, False, False, None)
        assert thread.taper_on_diameter == (Fraction(1, 16) if form in TAPERS else 0)
        pipe = thread.pipe()
        assert type(pipe.pitch_diameter_gauge_plane_mm) is Fraction and pipe == tc.Thread(str(thread)).pipe()
        assert pipe.source and pipe.confidence in ("confirmed", "by rule", "from memory")
        assert [finding.id for finding in thread.findings] == ["pipe-family"]
        assert tc.standard_threads(series="UNC") and thread not in tc.standard_threads(series="UNC")


def test_absent_dimensions_are_none() -> None:
    npt, parallel, taper = (tc.Thread(text).pipe() for text in ("1/4-18 NPT", "G1/4", "Rc1/4"))
    assert (npt.gauge_length_mm, npt.useful_length_mm, npt.gauge_tolerance_turns) == (None, None, 1)
    assert npt.pitch_diameter_gauge_plane_mm == npt.pitch_diameter_small_end_mm + npt.hand_tight_length_mm / 16
    assert (parallel.pipe_diameter_mm, parallel.gauge_length_mm, parallel.gauge_tolerance_turns) == (None, None, None)
    assert (taper.hand_tight_length_mm, type(taper.gauge_length_mm)) == (None, Fraction)
    dryseal = tc.Thread("1/4-18 NPTF")
    assert (dryseal.pipe().thread_height_mm, dryseal.profile().minor_mm) == (None, None)
    assert dryseal.profile().pitch_diameter_mm == pytest.approx(float(npt.pitch_diameter_gauge_plane_mm))
    assert (tc.Thread("M8").profile().stress_area_mm2 or 0) > 36 and tc.Thread("G1/2").profile().stress_area_mm2 is None
    assert "none" in repr(dryseal.profile()) and "nan" not in repr(dryseal.profile())


def test_an_older_name_is_remembered_and_is_no_part_of_the_value() -> None:
    old, new = tc.Thread("1/2 BSPT"), tc.Thread("Rc1/2")
    assert (old.written_as, new.written_as, old == new, hash(old) == hash(new)) == ("BSPT", None, True, True)
    assert [finding.id for finding in old.findings] == ["family-assumed", "pipe-family"]
    for twin in (pickle.loads(pickle.dumps(old)), old.with_hand("left").with_hand("right"), old.with_side("internal")):
        assert (twin.written_as, twin.findings) == ("BSPT", old.findings)


def test_choice_and_iso_262() -> None:
    found = {text: (tc.Thread(text).choice, tc.Thread(text).is_iso_262) for text in ("M8", "M7", "M9", "M8x1.1", "M8.1x1")}
    assert found == {"M8": (1, True), "M7": (2, True), "M9": (3, False), "M8x1.1": (1, False), "M8.1x1": (None, False)}
    assert (tc.Thread("1/4-20").choice, tc.Thread("12-24").choice, tc.Thread("0.3-24").choice) == (1, 2, None)


def test_taper_depths_follow_from_the_gauge() -> None:
    thread = tc.Thread("1/4-18 NPT")
    asked = {"drill_mm": "11.1", "point_angle_deg": 118, "bottom_clearance_mm": 3}
    table = tc.taper_depths(thread, **asked)
    assert table.hand_tight_mm == thread.pipe().hand_tight_length_mm == Fraction("0.2278") * INCH
    assert table.tap_mm == table.hand_tight_mm + table.projection_mm == table.first_hole_mm + thread.pitch_mm
    assert table.full_diameter_mm == table.tap_mm + thread.pitch_mm + 3 and table.drill_point_mm > table.full_diameter_mm
    assert table.tap_turns == table.tap_mm / thread.pitch_mm and table.projection_tolerance_mm == INCH / 16
    measured = tc.taper_depths(thread, **asked, projection_mm=table.projection_mm)
    assert (measured.tap_mm, measured.projection_tolerance_mm) == (table.tap_mm, None)
    assert measured != table and table == tc.taper_depths(thread, **asked)
    assert "TaperDepths" in repr(table)


def test_a_taper_drill_has_no_percent() -> None:
    straight = tc.tap_drill(tc.Thread("1/4-18 NPT"), tap="cut")
    reamed = tc.tap_drill(tc.Thread("1/4-18 NPT"), tap="cut", taper_reamer=True)
    assert (straight.percent, straight.basis, straight.within_limits) == (None, None, "does-not-apply")
    assert [other.percent for other in straight.alternatives] == [None] * 4
    assert ([finding.id for finding in straight.findings], reamed.findings) == (["taper-hole"], [])
    assert reamed.drill.diameter_mm < straight.drill.diameter_mm
    parallel = tc.tap_drill(tc.Thread("G1/2"), tap="cut")
    assert parallel.within_limits == "yes" and type(parallel.percent) is float
    pytest.raises(TypeError, tc.tap_drill, tc.Thread("1/4-18 NPT"), tap="cut", taper_reamer=1)


def test_a_plan_of_a_pipe_thread_has_no_nominal_diameter() -> None:
    job = {"thread": "1/2 BSPP", "unit": "mm", "mode": "per_minute", "decimals": 3, "rpm": 200}
    plan = tc.plan(job | {"hole": "blind", "full_thread_depth_mm": 12, "tap": "cut"})
    thread = plan.to_dict()["thread"]
    assert (thread["nominal_mm"], thread["major_mm"], thread["written_as"]) == (None, "20.955", "BSPP")
    assert plan.to_dict()["profile"]["stress_area_mm2"] is None
    metric = tc.plan(job | {"thread": "M8", "hole": "blind", "full_thread_depth_mm": 12, "tap": "cut"}).to_dict()
    assert (metric["thread"]["nominal_mm"], metric["thread"]["written_as"]) == ("8", None)


def test_a_fit_is_two_threads() -> None:
    internal, external = tc.read_fit("M8x1.25-6g/6H")
    assert (internal, external) == (tc.Thread("M8-6H"), tc.Thread("M8-6g")) == tc.read_fit(b"M8-6H/6g")
    assert [thread.form for thread in tc.read_fit("Rp/R 1/2")] == ["rp", "r"]
    for text, name, at in (("M8-6H", "missing", 5), ("M8-6H/5H", "contradiction", 6), ("", "empty", 0)):
        with pytest.raises(tc.DesignationError) as caught:
            tc.read_fit(text)
        assert (caught.value.name, caught.value.at) == (name, at)
    with pytest.raises(tc.DesignationError, match="read_fit"):
        tc.Thread("M8-6H/6g")


def test_a_note_is_read_whole_and_counts_bytes() -> None:
    note = tc.read_hole_note("4X \u230011 M12\u00d71.75 \u21a720", unit="mm")
    assert (note.count, note.drill_mm, note.thread_depth_mm) == (4, 11, 20)
    text = "4X \u230011 M12\u00d71.75 \u21a720".encode()
    assert text[note.thread_at : note.thread_at + note.thread_length] == "M12\u00d71.75".encode()
    assert note == tc.read_hole_note(text, unit="mm") != tc.read_hole_note(text)
    bare = tc.read_hole_note("\u00d88 THRU", unit="mm")
    assert (bare.thread, bare.thread_at, bare.thread_length, bare.drill_through, bare.count) == (None, None, None, True, None)
    unread = tc.read_hole_note("M8 16 DEEP BLUE", unit="mm").findings
    assert [(finding.id, finding.numbers) for finding in unread] == [("not-read", {"byte": 11.0, "length": 4.0})]
    with pytest.raises(tc.DesignationError) as caught:
        tc.read_hole_note("4X 1/4-20 UNF")
    assert (caught.value.name, caught.value.at) == ("series-mismatch", 10)
    pytest.raises(TypeError, tc.read_hole_note, 4)
    pytest.raises(TypeError, tc.read_hole_note, "M8", "mm")


def test_a_comment_mentions_threads() -> None:
    found = tc.read_comment("\u00d8 TAP M8 LH, 1/4-20 HOLES")
    assert [(str(one.thread), one.at, one.length) for one in found.threads] == [("M8x1.25-LH", 7, 5), ("1/4-20 UNC", 14, 6)]
    assert not found.more and found == tc.read_comment("\u00d8 TAP M8 LH, 1/4-20 HOLES".encode())
    assert tc.read_comment("M8").threads == [] and len(tc.read_comment("M8", tool_is_tap=True).threads) == 1
    many = tc.read_comment("TAP M3, TAP M4, TAP M5, TAP M6, TAP M8")
    assert (len(many.threads), many.more) == (4, True) and "and more" in repr(many)
    pytest.raises(TypeError, tc.read_comment, None)
    pytest.raises(TypeError, tc.read_comment, "M8", tool_is_tap=1)
