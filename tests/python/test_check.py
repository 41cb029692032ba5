"""Programs through the Python door: the samples with what is expected of them, and what may be handed in."""

from __future__ import annotations

import json
import pathlib
from fractions import Fraction

import pytest
import threadcalc as tc

FOLDER = pathlib.Path(__file__).parent.parent / "nc"
SAMPLES = [
    pytest.param(path, run, id=f"{path.stem}-{place}")
    for path in sorted(FOLDER.glob("*.expect.json"))
    for place, run in enumerate(json.loads(path.read_bytes())["runs"])
]
SMALL = b"G17 G21 G90 G94\nT1 M6 (TAP M6)\nG43 H1\nS500 M3\nG98 G84 X0 Y0 Z-12. R5. F500.\nG80\nM30\n"


def agrees(want: object, got: object) -> bool:
    """The same, or numbers to a millionth or to the decimals that are printed."""
    if isinstance(want, (int, float)) and isinstance(got, (int, float, Fraction)) and not isinstance(want, bool):
        decimals = len(str(want).partition(".")[2]) if isinstance(want, float) else 0
        printed = 0.5001 * 10.0**-decimals if decimals >= 3 else 0.0
        return abs(float(got) - want) <= max(1e-6 * abs(want), printed)
    return want == got


@pytest.mark.parametrize(("path", "run"), SAMPLES)
def test_samples_are_judged_as_expected(path: pathlib.Path, run: dict) -> None:
    program = (FOLDER / json.loads(path.read_bytes())["program"]).read_bytes()
    report = tc.check(program, dialect=run["dialect"], options=run["options"])
    holes = report.tapped_holes
    assert len(holes) == len(run["tapped_holes"])
    for want, got in zip(run["tapped_holes"], holes):
        assert all(agrees(value, getattr(got, key)) for key, value in want.items()), (want, got)
    left = list(report.findings)
    for want in run["findings"]:
        keys = {key: want[key] for key in ("id", "line", "severity", "certain") if key in want}
        same = [
            one
            for one in left
            if all(getattr(one, key) == value for key, value in keys.items())
            and all(key in one.numbers and agrees(value, one.numbers[key]) for key, value in want["numbers"].items())
        ]
        assert same, (want, [str(one) for one in left])
        left.remove(same[0])
    assert [str(one) for one in left if one.severity != "info" or one.id in run["must_not"]] == []


def test_there_are_samples() -> None:
    assert len(SAMPLES) == 17


def test_bytes_text_and_files_are_one_program(tmp_path: pathlib.Path) -> None:
    path = tmp_path / "cover.nc"
    path.write_bytes(SMALL)
    reports = [tc.check(given, dialect="rs274ngc") for given in (SMALL, SMALL.decode(), path)]
    assert {str(report) for report in reports} == {str(reports[0])}
    assert str(reports[0]).startswith("no findings\nchecked: 1 tapping block, 1 hole\n")
    assert path.read_bytes() == SMALL
    pytest.raises(FileNotFoundError, tc.check, tmp_path / "none.nc", dialect="rs274ngc")
    pytest.raises(TypeError, tc.check, 3, dialect="rs274ngc")
    pytest.raises(TypeError, tc.check, SMALL)


def test_options_machine_and_tools_are_told_by_name() -> None:
    def ids(**told: object) -> set[str]:
        return {one.id for one in tc.check(SMALL, dialect="rs274ngc", **told).findings}

    assert ids() == set()
    assert ids(options={"thread": tc.Thread("M8")}) == {"lead-mismatch"}
    assert ids(machine={"highest_rpm": 400}) == {"speed-limit"}
    gears = {"gears": [[20, 3000, 1]]}
    assert ids(options={"cutting_force_n_mm2": 2500}, machine=gears) == {"torque-limit"}
    assert ids(tools=[{"number": 1, "thread": "M8x1.25"}]) == {"lead-mismatch", "tool-thread-mismatch"}
    for told, key in (
        ({"options": {"surface_z": 0}}, "surface_z_mm"),
        ({"machine": {"highest": 3}}, "machine.highest_rpm"),
        ({"tools": [{"num": 3}]}, "number"),
    ):
        with pytest.raises(tc.ThreadcalcError) as caught:
            ids(**told)
        assert (caught.value.name, caught.value.hint) == ("unknown-key", key)
    pytest.raises(TypeError, ids, tools=[3])
    pytest.raises(tc.ThreadcalcError, ids, tools=[{"number": place} for place in range(65)])


def test_a_finding_says_what_why_and_what_to_write() -> None:
    report = tc.check(SMALL.replace(b"F500.", b"F800."), dialect="rs274ngc")
    (one,) = report.findings
    assert (one.id, one.severity, one.line, one.suggestion, one.certain) == ("lead-mismatch", "error", 5, "F500.", True)
    assert one.numbers["lead_mm"] == 1.6 and one.numbers["affected_holes"] == 1
    assert ("thread", 2) in one.evidence and one.thread == tc.Thread("M6x1") and one.tool == 1
    assert "1.6" in one.message and str(one).endswith("write F500.")
    assert any("offsets" in what for what in report.not_checked)
