"""Reports as JSON and as SARIF: against the committed schema, and the standard's."""

from __future__ import annotations

import io
import json
import pathlib

import pytest
import threadcalc as tc
from jsonschema import Draft7Validator, Draft202012Validator

ROOT = pathlib.Path(__file__).resolve().parents[2]
PROGRAMS = sorted((ROOT / "tests/nc").glob("*.nc"))
REPORT = Draft202012Validator(json.loads((ROOT / "schema/report.schema.json").read_text("utf-8")))
# OASIS, SARIF 2.1.0, its JSON schema.
SARIF = Draft7Validator(json.loads((ROOT / "tests/reference/sarif-schema-2.1.0.json").read_text("utf-8")))
SMALL = b"G17 G21 G90 G94\nT1 M6 (TAP M6)\nG43 H1\nS500 M3\nG98 G84 X0 Y0 Z-12. R5. F800.\nG80\nM30\n"
STALE = SMALL.replace(b"F800.", b"F500.").replace(b"G80", b"S400\nX9.\nG80")
DIALECTS = ("rs274ngc", "unset")


def faults(validator: Draft7Validator | Draft202012Validator, data: object) -> list[str]:
    return [f"{'.'.join(map(str, one.absolute_path))}: {one.message}" for one in validator.iter_errors(data)]


def results(log: str) -> list[dict]:
    """The results of a log that the standard's schema takes."""
    read = json.loads(log)
    assert faults(SARIF, read) == []
    (run,) = read["runs"]
    for result in run["results"]:
        assert run["tool"]["driver"]["rules"][result["ruleIndex"]]["id"] == result["ruleId"]
    return run["results"]


@pytest.mark.parametrize("dialect", DIALECTS)
@pytest.mark.parametrize("path", PROGRAMS, ids=lambda path: path.stem)
def test_a_report_is_what_its_schema_says(path: pathlib.Path, dialect: str) -> None:
    report = tc.check(path, dialect=dialect)
    record = report.to_dict()
    assert faults(REPORT, record) == [] and json.loads(report.to_json()) == record
    assert [one["text"] for one in record["findings"]] == [one.text for one in report.findings]
    for one, told in zip(report.findings, record["findings"], strict=True):
        assert (one.id, one.replaces, one.grounds) == (told["id"], told["replaces"], told["grounds"])
        assert str(one).endswith(f": {one.text}") and one.text.startswith(one.message)
        assert [(given["kind"], given["line"]) for given in told["evidence"]] == one.evidence


def test_there_are_programs() -> None:
    assert len(PROGRAMS) == 14


def test_the_schema_refuses_a_report_with_a_fault() -> None:
    record = tc.check(SMALL, dialect="rs274ngc").to_dict()
    record["findings"][0]["severity"] = "fatal"
    assert faults(REPORT, record)


def test_a_suggestion_for_a_word_elsewhere_replaces_nothing() -> None:
    (stale,) = tc.check(STALE, dialect="rs274ngc").findings
    assert (stale.id, stale.suggestion, stale.replaces) == ("stale-feed-after-speed-change", "F400.", False)
    (wrong,) = tc.check(SMALL, dialect="rs274ngc").findings
    block = SMALL.decode().splitlines()[wrong.line - 1]
    assert wrong.replaces and block[wrong.column - 1 : wrong.end_column - 1] == "F800."


def test_every_kind_of_finding_is_explained() -> None:
    kinds = tc.program_finding_kinds()
    assert len(kinds) == len({kind.id for kind in kinds}) == 72
    for kind in kinds:
        assert kind.meaning.endswith(".") and kind.meaning[0].isupper() and kind.message
        assert kind.severity in ("error", "warning", "info")
    assert kinds[0] == tc.program_finding_kinds()[0] != kinds[1]


@pytest.mark.parametrize("dialect", DIALECTS)
def test_all_programs_in_one_log(dialect: str) -> None:
    reports = [(path.relative_to(ROOT), tc.check(path, dialect=dialect)) for path in PROGRAMS]
    found = results(tc.sarif(reports))
    assert len(found) == sum(len(report.findings) for _, report in reports) > 20
    assert tc.sarif((path, report.to_dict()) for path, report in reports) == tc.sarif(reports)


def test_a_result_has_its_place_its_grounds_and_its_fix() -> None:
    (wrong,) = results(tc.sarif([("manifolds/port 1.nc", tc.check(SMALL, dialect="rs274ngc"))]))
    assert (wrong["ruleId"], wrong["level"]) == ("lead-mismatch", "error")
    (place,) = wrong["locations"]
    column = SMALL.splitlines()[4].index(b"F800.") + 1
    region = {"startLine": 5, "startColumn": column, "endColumn": column + len("F800.")}
    assert place["physicalLocation"] == {"artifactLocation": {"uri": "manifolds/port%201.nc"}, "region": region}
    related = wrong["relatedLocations"]
    said = [(one["message"]["text"], one["physicalLocation"]["region"]["startLine"]) for one in related]
    assert ("thread named in line 2", 2) in said and ("S set in line 4", 4) in said
    (fix,) = wrong["fixes"]
    (change,) = fix["artifactChanges"]
    assert change["replacements"] == [{"deletedRegion": region, "insertedContent": {"text": "F500."}}]
    assert wrong["properties"]["numbers"]["lead_mm"] == 1.6 and wrong["properties"]["thread"] == "M6x1"
    (stale,) = results(tc.sarif([("x.nc", tc.check(STALE, dialect="rs274ngc"))]))
    assert "fixes" not in stale and stale["message"]["text"].endswith("write F400.")


def test_what_rests_on_an_assumption_is_no_fix() -> None:
    reports = [(path, tc.check(path, dialect="unset")) for path in PROGRAMS]
    mended = [result for result in results(tc.sarif(reports)) if "fixes" in result]
    assert mended and all(result["properties"]["certain"] for result in mended)
    assert any(one.replaces and not one.certain for _, report in reports for one in report.findings)


def test_levels_notes_and_what_was_not_checked(tmp_path: pathlib.Path) -> None:
    report = tc.check(SMALL.replace(b"(TAP M6)", b"").replace(b"F800.", b"F#5"), dialect="rs274ngc")
    out = io.StringIO()
    with tc.SarifLog(out) as log:
        log.add(tmp_path / "a.nc", report)
        log.skip("pic%ture\udce9.nc", "binary")
    found = results(out.getvalue())
    assert {result["level"] for result in found} <= {"error", "warning", "note"}
    notes = json.loads(out.getvalue())["runs"][0]["invocations"][0]["toolExecutionNotifications"]
    texts = [note["message"]["text"] for note in notes]
    assert "not checked: the lead could not be computed" in texts and "not checked: binary" in texts
    assert "never checked, no text shows it: switches and overrides at the machine" in texts
    places = [place["physicalLocation"] for note in notes for place in note.get("locations", ())]
    uris = {place["artifactLocation"]["uri"] for place in places}
    assert uris == {(tmp_path / "a.nc").as_uri(), "pic%25ture%E9.nc"}


def test_what_a_baseline_knows_is_suppressed() -> None:
    report = tc.check(PROGRAMS[2], dialect="rs274ngc")
    first, *others = report.findings
    out = io.StringIO()
    with tc.SarifLog(out) as log:
        log.add("x.nc", report, silenced=[first])
    suppressed = ["suppressions" in result for result in results(out.getvalue())]
    assert suppressed == [True] + [False] * len(others)
