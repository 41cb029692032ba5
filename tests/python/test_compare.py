"""The comparison of two versions: types, JSON against its schema, and what both versions are told alike."""

from __future__ import annotations

import json
import pathlib
from fractions import Fraction

import pytest
import threadcalc as tc
from jsonschema import Draft202012Validator
from programs import dialect_of, pairs, program_of
from table import Table

ROOT = pathlib.Path(__file__).parent.parent.parent
SCHEMA = json.loads((ROOT / "schema/comparison.schema.json").read_text("utf-8"))
OLD = "G17 G21 G90 G94\nT2 M6 (TAP M8)\nS640 M3\nG43 H2 Z25.\nG99 G84 X0 Y0 Z-15. R5. F800.\nX20.\nG80\nM30\n"
NEW = OLD.replace("X20.", "X20. F1024.\nX40.")


def test_a_comparison_is_a_list_of_changes() -> None:
    comparison = tc.compare(OLD, NEW, dialect="rs274ngc")
    assert len(comparison) == len(list(comparison)) == 2
    assert list(comparison) == comparison.changes
    changed, added = comparison
    assert (changed.kind, changed.changed, changed.not_compared) == ("changed", ["lead"], [])
    assert changed.before is not None and changed.after is not None
    assert (changed.before.lead_mm, changed.after.lead_mm) == (Fraction(5, 4), Fraction(8, 5))
    assert (added.kind, added.before, added.changed) == ("added", None, [])
    assert repr(changed) == f"<HoleChange {changed}>"
    assert repr(comparison) == "<Comparison: 1 changed, 1 added, 0 removed>"
    summary = "2 tapping blocks before, 3 now: 1 changed, 1 added, 0 removed"
    assert str(comparison).splitlines()[:3] == [str(changed), str(added), summary]
    assert not tc.compare(OLD, OLD, dialect="rs274ngc")


def test_a_hole_says_where_it_is() -> None:
    hole = tc.check(NEW, dialect="rs274ngc").tapped_holes[2]
    assert (hole.x_mm, hole.y_mm, hole.work_offset) == (40, 0, "G54")
    assert (hole.unit, hole.feed_mode) == ("mm", "per_minute")
    bare = tc.check("G54.1 P7\nG84 X#1 Y2. Z-1. R1. F1.\n", dialect={"tap_rh": "G84"}).tapped_holes[0]
    assert (bare.x_mm, bare.y_mm, bare.work_offset, bare.unit, bare.feed_mode) == (None, 2, "G54.1 P7", None, None)


def test_the_json_of_every_row_is_that_of_the_schema() -> None:
    Draft202012Validator.check_schema(SCHEMA)
    validator = Draft202012Validator(SCHEMA)
    rows = [row for row in Table("nc_compare").rows if row["status"] == "ok"]
    assert len(rows) > 50
    for row in rows:
        old, new = program_of(row, "old"), program_of(row, "new")
        comparison = tc.compare(old, new, dialect=dialect_of(row), options=pairs(row["options"]))
        data = json.loads(comparison.to_json())
        assert data == comparison.to_dict()
        validator.validate(data)
        assert [change["text"] for change in data["changes"]] == [str(change) for change in comparison]
        assert [change["changed"] for change in data["changes"]] == [change.changed for change in comparison]
        assert data["counts"] == comparison.counts
        assert {open["value"]: open["count"] for open in data["not_compared"]} == comparison.not_compared


def test_what_hides_holes_is_told_of_the_version_that_has_it() -> None:
    calling = OLD.replace("G80", "M98 P7\nG80")
    mill = tc.Dialect("rs274ngc", subprogram_call="M98", subprogram_return="M99")
    told = str(tc.compare(OLD, calling, dialect=mill))
    assert "no tapped hole changed" in told
    report = tc.compare(OLD, OLD.replace("M30", "M30\nG84 X9."), dialect=mill)
    assert "holes may be missing, new version, line 9: text behind the end of the program" in str(report)
    assert "old version" not in str(report)


def test_files_tools_and_a_machine(tmp_path: pathlib.Path) -> None:
    old, new = tmp_path / "old.nc", tmp_path / "new.nc"
    old.write_text(OLD)
    new.write_text(NEW)
    tools = [{"number": 2, "thread": "M8x1"}]
    comparison = tc.compare(old, new, dialect="rs274ngc", machine={"highest_rpm": 4000}, tools=tools)
    assert comparison.changes[0].after is not None
    assert str(comparison.changes[0].after.thread) == "M8x1"
    with pytest.raises(OSError):
        tc.compare(old, tmp_path / "none.nc", dialect="rs274ngc")
    with pytest.raises(TypeError):
        tc.compare(OLD, NEW)  # type: ignore[call-arg]
    with pytest.raises(tc.ThreadcalcError, match="unknown key"):
        tc.compare(OLD, NEW, dialect="rs274ngc", options={"thraed": "M8"})
