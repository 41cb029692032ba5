"""Audits that were run before: the baseline of known findings and the journal."""

from __future__ import annotations

import json
import os
import pathlib
import shutil
import signal
import subprocess
import sys

import archives
import pytest
import threadcalc as tc
from test_audit import Shown, audited, shown

RS274 = {"dialect": "rs274ngc"}


def told(folder: pathlib.Path, **more: object) -> dict[str, tuple[list[str], list[str]]]:
    """By file: what is told and what is silenced."""
    return {
        str(one.path.relative_to(folder)): ([f.id for f in one.findings], [f.id for f in one.silenced])
        for one in tc.audit(folder, **{**RS274, **more})
    }


@pytest.fixture
def shop(tmp_path: pathlib.Path) -> pathlib.Path:
    archives.write(tmp_path / "shop", {"cover.nc": archives.WRONG, "plate.nc": archives.CLEAN})
    return tmp_path / "shop"


def known(folder: pathlib.Path) -> pathlib.Path:
    path = folder.parent / "known.jsonl"
    tc.write_baseline(tc.audit(folder, **RS274), path)
    return path


def test_what_is_known_is_silent_wherever_its_lines_are(shop: pathlib.Path) -> None:
    baseline = known(shop)
    silent = {"cover.nc": ([], ["lead-mismatch"]), "plate.nc": ([], [])}
    assert told(shop, baseline=baseline) == silent
    for text in (
        "(A LINE MORE)\n\n" + archives.WRONG,
        archives.WRONG.replace("G98 G84 X0 Y0 Z-12. R5. F800.", "N50G98 g84 x0Y0 Z-12.R5. f800."),
        archives.WRONG.replace("\n", "\r\n"),
        archives.WRONG.replace("S500", "N40 S500"),
    ):
        archives.write(shop, {"cover.nc": text})
        assert told(shop, baseline=baseline) == silent, text
    shutil.move(shop, shop.parent / "moved")
    assert told(shop.parent / "moved", baseline=baseline) == silent


def test_what_is_changed_comes_back(shop: pathlib.Path) -> None:
    baseline = known(shop)
    back = (["lead-mismatch"], [])
    for old, new in (
        ("F800.", "F801."),  # its block
        ("X0 ", "X1. "),
        ("S500", "S501"),  # a block that it rests on
        ("(TAP M6)", "(TAP M5)"),
        ("G80", "X9.\nG80"),  # a hole more
    ):
        archives.write(shop, {"cover.nc": archives.WRONG.replace(old, new)})
        assert told(shop, baseline=baseline)["cover.nc"] == back, new
    archives.write(shop, {"cover.nc": archives.WRONG, "copy.nc": archives.WRONG})
    assert told(shop, baseline=baseline) == {
        "copy.nc": back, "cover.nc": ([], ["lead-mismatch"]), "plate.nc": ([], [])
    }


def test_a_second_fault_that_is_equal_is_told(shop: pathlib.Path) -> None:
    hole = "G98 G84 X0 Y0 Z-12. R5. F800.\nG80\n"
    archives.write(shop, {"cover.nc": archives.WRONG.replace("M30", "S500\nG0 Z5.\nM30")})
    baseline = known(shop)
    before = told(shop)["cover.nc"][0]
    archives.write(shop, {"cover.nc": archives.WRONG.replace("M30", f"(AGAIN)\n{hole}M30")})
    (program, _) = tc.audit(shop, **RS274, baseline=baseline)
    lines = [one.line for one in program.findings if one.id == "lead-mismatch"]
    assert before == ["lead-mismatch"] and lines == [8]
    assert [(one.id, one.line) for one in program.silenced] == [("lead-mismatch", 5)]
    # Both known, both silent; one mended, and the summary says that one is left over.
    baseline = known(shop)
    assert told(shop, baseline=baseline)["cover.nc"][0] == []
    archives.write(shop, {"cover.nc": archives.WRONG})
    audit = tc.audit(shop, **RS274, baseline=baseline)
    assert [one.findings for one in audit] == [[], []] and audit.summary.known_left is not None
    assert audit.summary.known_left > 0 and audit.summary.silenced == {"error": 1}
    assert "error lead-mismatch: 0, and 1 silenced by the baseline" in str(audit)


def test_the_file_of_known_findings_is_sorted_lines(shop: pathlib.Path) -> None:
    archives.mixed(shop)
    programs = list(tc.audit(shop, **RS274))
    path = shop.parent / "known.jsonl"
    count = tc.write_baseline(programs, path)
    assert count == sum(len(one.findings) for one in programs) > 50
    head, *lines = path.read_text(encoding="utf-8").splitlines()
    assert json.loads(head) == {"known_findings_schema": 1}
    rows = [json.loads(line) for line in lines]
    assert all(list(row) == ["file", "id", "block", "key", "severity", "count"] for row in rows)
    assert sum(row["count"] for row in rows) == count
    keys = [(row["file"], row["id"], row["block"], row["key"]) for row in rows]
    assert keys == sorted(keys) and len(set(keys)) == len(keys)
    assert {"caf\\xE9.nc", "deep/er/cover.nc"} <= {row["file"] for row in rows}
    first = path.read_bytes()
    # What was silenced stays known, the order of the programs does not matter, and no part is left.
    again = list(tc.audit(shop, **RS274, baseline=path, workers=3))
    assert sum(len(one.findings) for one in again) == 0
    assert tc.write_baseline(reversed(again), path) == count and path.read_bytes() == first
    assert sorted(one.name for one in shop.parent.iterdir()) == ["known.jsonl", "shop"]
    # Doubled lines, as a merge leaves them, silence no second finding.
    path.write_bytes(first + b"".join(first.splitlines(keepends=True)[1:]))
    audit = tc.audit(shop, **RS274, baseline=path)
    assert sum(len(one.silenced) for one in audit) == count and audit.summary.known_left == 0


@pytest.mark.parametrize(("text", "words"), [
    ('{"known_findings_schema":2}\n', "schema 2, this version reads 1"),
    ("", "its first line has to be"),
    ("G1\n", "its first line has to be"),
    ('{"known_findings_schema":1}\n{"file":"a"}\n', "line 2: missing field"),
    ('{"known_findings_schema":1}\n{"file":"a","id":"b","block":"","key":"1","severity":"c","count":1}\n', "32 hexa"),
])
def test_a_baseline_that_is_none_is_an_error(shop: pathlib.Path, text: str, words: str) -> None:
    path = shop.parent / "known.jsonl"
    path.write_text(text, encoding="utf-8")
    with pytest.raises(ValueError, match=words):
        tc.audit(shop, **RS274, baseline=path)
    pytest.raises(FileNotFoundError, tc.audit, shop, **RS274, baseline=shop / "none")


def lines_of(journal: pathlib.Path) -> list[bytes]:
    return journal.read_bytes().splitlines(keepends=True)


def test_a_journal_gives_the_same_and_reads_only_what_changed(tmp_path: pathlib.Path) -> None:
    archives.mixed(tmp_path / "archive")
    folder, journal = tmp_path / "archive", tmp_path / "journal"
    fresh = audited(folder)
    assert audited(folder, resume=journal) == fresh == audited(folder, resume=journal)
    read = len(lines_of(journal))
    assert read == 1 + len(fresh) - 4  # links and the pipe are looked at each time
    # Another text of the same size and time is not looked at: it is not read.
    cover = folder / "deep/er/cover.nc"
    before = cover.stat()
    cover.write_bytes(archives.WRONG.replace("F800.", "F900.").encode())
    os.utime(cover, ns=(before.st_atime_ns, before.st_mtime_ns))
    assert audited(folder, resume=journal) == fresh and len(lines_of(journal)) == read
    # With another time it is.
    os.utime(cover, ns=(before.st_atime_ns, before.st_mtime_ns + 1))
    assert audited(folder, resume=journal) == audited(folder) != fresh
    assert len(lines_of(journal)) == read + 1
    assert audited(folder, resume=journal) == audited(folder) and len(lines_of(journal)) == read + 1
    # The baseline is no part of it.
    known = tmp_path / "known"
    tc.write_baseline(tc.audit(folder, **RS274, resume=journal), known)
    audit = tc.audit(folder, **RS274, resume=journal, baseline=known)
    assert sum(len(one.findings) for one in audit) == 0 < audit.summary.silenced["error"]


def test_journal_and_baseline_are_no_programs(tmp_path: pathlib.Path) -> None:
    archives.write(tmp_path, {"a.nc": archives.WRONG})
    told = {"resume": tmp_path / "journal.nc", "baseline": tmp_path / "known.nc"}
    tc.write_baseline(tc.audit(tmp_path, **RS274), told["baseline"])
    for _ in range(2):
        assert [one.path.name for one in tc.audit(tmp_path, **RS274, **told)] == ["a.nc"]


def test_a_journal_of_something_else_is_an_error(shop: pathlib.Path) -> None:
    journal = shop.parent / "journal"
    told = {"options": {"thread": "M6"}, "machine": {"highest_rpm": 9000}, "tools": [{"number": 3}]}
    audited(shop, **told, resume=journal)
    before = journal.read_bytes()
    audited(shop, **told, resume=journal, workers=1, suffixes=[".nc"], largest_bytes=1000)
    for other, words in (
        ({"dialect": "unset"}, "under another dialect"),
        ({"dialect": {shop: "rs274ngc"}}, "under another dialect"),
        ({"options": {}}, "under other options or another machine"),
        ({"machine": {"highest_rpm": 9001}}, "under other options or another machine"),
        ({"tools": []}, "under another list of tools"),
    ):
        with pytest.raises(ValueError, match=words):
            audited(shop, **{**told, **other}, resume=journal)
        assert journal.read_bytes() == before
    for head, words in (
        (before.replace(b'"audit_journal_schema":1', b'"audit_journal_schema":7'), "schema 7, this version writes 1"),
        (before.replace(b'"version":"', b'"version":"9'), "written by version 9"),
        (b"G1 X1\n", "no journal of an audit"),
        (b"G1 X1", "no journal of an audit"),
        (before.replace(b'"report"', b'report', 1), "line 2 cannot be read"),
    ):
        journal.write_bytes(head)
        with pytest.raises(ValueError, match=words):
            audited(shop, **told, resume=journal)
        assert journal.read_bytes() == head
    pytest.raises(OSError, audited, shop, resume=shop)


def test_a_torn_journal_loses_its_last_line_only(shop: pathlib.Path) -> None:
    journal = shop.parent / "journal"
    fresh = audited(shop, resume=journal)
    whole = journal.read_bytes()
    ends = [place for place, byte in enumerate(whole) if byte == 10]
    for cut in {*range(0, len(whole), 37), *ends, *(end + 1 for end in ends), len(whole) - 1}:
        journal.write_bytes(whole[:cut])
        assert audited(shop, resume=journal) == fresh, cut
        assert sorted(lines_of(journal)) == sorted(whole.splitlines(keepends=True)), cut
    # Blocks that a power cut left empty, and a whole line of nonsense.
    for tail in (b"\0" * 512, b"\0" * 512 + b"\n", b'{"file":"x"}\n'):
        journal.write_bytes(whole + tail)
        assert audited(shop, resume=journal) == fresh and journal.read_bytes() == whole
    # What cannot be made again is checked again.
    journal.write_bytes(whole.replace(b'"lead-mismatch"', b'"no-such-thing"'))
    assert audited(shop, resume=journal) == fresh


def test_a_killed_audit_goes_on_where_it_was(tmp_path: pathlib.Path) -> None:
    folder, journal = tmp_path / "archive", tmp_path / "journal"
    archives.many(folder, 400)
    code = (
        "import sys, threadcalc as tc\n"
        "for done, one in enumerate(tc.audit(sys.argv[1], dialect='rs274ngc', workers=2, resume=sys.argv[2]), 1):\n"
        "    if done == 150: print('here', flush=True); sys.stdin.read()\n"
    )
    process = subprocess.Popen([sys.executable, "-c", code, str(folder), str(journal)], stdin=subprocess.PIPE,
                               stdout=subprocess.PIPE, text=True)
    assert process.stdout is not None and process.stdout.readline() == "here\n"
    process.send_signal(signal.SIGKILL)
    process.communicate()
    assert process.returncode == -signal.SIGKILL
    kept = lines_of(journal)
    assert len(kept) == 151
    resumed: list[Shown] = [shown(one) for one in tc.audit(folder, **RS274, resume=journal)]
    assert resumed == audited(folder)
    after = lines_of(journal)
    assert after[:151] == kept and len(after) == 401
