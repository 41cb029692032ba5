"""``threadcalc audit``: folders of programs, by danger, with a baseline and a journal."""

from __future__ import annotations

import json
import os
import pathlib
import pty
import re
import subprocess

import pytest
import threadcalc as tc
from test_command import CLEAN, COMMAND, refused, run
from test_report import results

WRONG = CLEAN.replace(b"F500.", b"F800.")
SEVERAL = CLEAN.replace(b"F500.", b"F800.\nX9.\nX18.")
DOUBTFUL = CLEAN.replace(b"G43 H1\n", b"")
DIALECT = ("--dialect", "rs274ngc")


@pytest.fixture
def archive(tmp_path: pathlib.Path, monkeypatch: pytest.MonkeyPatch) -> pathlib.Path:
    """A folder of programs: one of each danger, and what is none."""
    monkeypatch.chdir(tmp_path)
    folder = pathlib.Path("programs")
    (folder / "left").mkdir(parents=True)
    files = {"a.nc": DOUBTFUL, "b.nc": WRONG, "c.nc": CLEAN, "left/d.nc": SEVERAL, "left/e.bin": bytes(40)}
    for name, text in files.items():
        (folder / name).write_bytes(text)
    return folder


def heads(text: str) -> list[str]:
    """The first words of what was listed: ``error b.nc lead-mismatch``."""
    head = re.compile(r"(error|warning|info) programs/(\S+), line \d+, column \d+: ([a-z-]+): ")
    return [" ".join(found) for found in head.findall(" ".join(text.split()))]


def test_the_most_dangerous_comes_first(archive: pathlib.Path) -> None:
    done = run("audit", str(archive), *DIALECT, status=1)
    assert heads(done.stdout) == [
        "error left/d.nc lead-mismatch",
        "error b.nc lead-mismatch",
        "warning a.nc length-offset-missing",
    ]
    told = " ".join(done.stdout.split())
    why = "because: M6x1 named in line 2, S set in line 4"
    assert f"the thread has 1 mm: 7.2 mm off at the bottom: write F500. {why}" in told
    assert "e.bin: binary" in told and "files: 5 of 5" in told and done.stderr == ""
    assert done.stdout.endswith("Prove out: guards shut, above the part, single block, rapid reduced.\n")


def test_what_comes_out_does_not_depend_on_the_workers(archive: pathlib.Path) -> None:
    one, two = (run("audit", str(archive), *DIALECT, "--workers", count, status=1).stdout for count in ("1", "3"))
    assert one == two


def test_a_line_of_json_for_each_file(archive: pathlib.Path) -> None:
    done = run("audit", str(archive), *DIALECT, "--json", status=1)
    lines = [json.loads(line) for line in done.stdout.splitlines()]
    assert [pathlib.Path(line["file"]).name for line in lines] == ["a.nc", "b.nc", "c.nc", "d.nc", "e.bin"]
    assert lines[1]["report"] == tc.check(archive / "b.nc", dialect="rs274ngc").to_dict()
    assert lines[4]["report"] is None and "binary" in lines[4]["skipped"] and "files: 5 of 5" in done.stderr


def test_one_log_of_sarif(archive: pathlib.Path) -> None:
    found = results(run("audit", str(archive), *DIALECT, "--sarif", status=1).stdout)
    assert [result["ruleId"] for result in found] == ["length-offset-missing", "lead-mismatch", "lead-mismatch"]
    assert found[1]["locations"][0]["physicalLocation"]["artifactLocation"]["uri"] == "programs/b.nc"


def test_what_the_baseline_knows_is_not_listed(archive: pathlib.Path) -> None:
    known = "known.jsonl"
    wrote = run("audit", str(archive), *DIALECT, "--write-baseline", known, status=1)
    assert wrote.stderr == f"{known}: 3 known findings\n"
    again = run("audit", str(archive), *DIALECT, "--baseline", known)
    assert heads(again.stdout) == [] and "silenced" in again.stdout
    (archive / "c.nc").write_bytes(CLEAN.replace(b"Z-12.", b"Z-11.").replace(b"F500.", b"F450."))
    asked = ("audit", str(archive), *DIALECT, "--baseline", known)
    assert heads(run(*asked, status=1).stdout) == ["error c.nc lead-mismatch"]
    log = results(run(*asked, "--sarif", status=1).stdout)
    assert ["suppressions" in result for result in log] == [True, True, False, True]
    lines = run(*asked, "--json", status=1).stdout.splitlines()
    assert [json.loads(line)["silenced"] for line in lines] == [[0], [0], [], [0], []]


def test_a_journal_gives_the_same_again(archive: pathlib.Path) -> None:
    journal = ("--resume", "journal.jsonl")
    first, again = (run("audit", str(archive), *DIALECT, *journal, status=1).stdout for _ in range(2))
    assert first == again
    logs = {run("audit", str(archive), *DIALECT, *more, "--sarif", status=1).stdout for more in ((), journal)}
    assert len(logs) == 1
    assert "dialect" in refused("audit", str(archive), "--dialect", "unset", *journal)


def test_every_folder_may_have_its_own_dialect(archive: pathlib.Path) -> None:
    mill = pathlib.Path("mill.json")
    mill.write_text(json.dumps(tc.Dialect("rs274ngc", tap_rh="G184").to_dict()))
    left = ("--dialect-of", f"{archive / 'left'}={mill}")
    assert "code-not-on-control" in run("audit", str(archive), *DIALECT, *left, status=1).stdout
    alone = run("audit", str(archive), *left, status=1).stdout
    assert alone.count("no-dialect") == 4  # three files and their count


def test_suffixes_and_sizes(archive: pathlib.Path) -> None:
    most = len(CLEAN) - 1
    told = run("audit", str(archive), *DIALECT, "--suffix", ".nc", "--largest-bytes", str(most)).stdout
    assert f"c.nc: too-large: {len(CLEAN)} bytes, at most {most}" in " ".join(told.split())
    assert "left out by their names: 1" in told


@pytest.mark.parametrize(
    ("arguments", "said"),
    [
        ([], "'--dialect' or '--dialect-of'. rs274ngc, unset"),
        (["--dialect", "rs274ngc", "--workers", "0"], "--workers"),
        (["--dialect", "rs274ngc", "--dialect-of", "left"], "FOLDER=DIALECT"),
        (["--dialect", "rs274ngc", "--baseline", "none.jsonl"], "none.jsonl: No such file"),
        (["--dialect", "rs274ngc", "--option", "thraed=M6"], "thread"),
    ],
    ids=str,
)
def test_wrong_use_is_refused_in_one_line(archive: pathlib.Path, arguments: list[str], said: str) -> None:
    message = refused("audit", str(archive), *arguments)
    assert message.startswith("threadcalc audit: ") and said in message


def test_a_path_that_is_not_there_and_a_baseline_that_is_none(archive: pathlib.Path) -> None:
    assert "none: " in refused("audit", str(archive / "none"), *DIALECT)
    assert "known_findings_schema" in refused("audit", str(archive), *DIALECT, "--baseline", str(archive / "a.nc"))


def test_the_bar_is_for_a_terminal_only(archive: pathlib.Path) -> None:
    command = [COMMAND, "audit", str(archive), *DIALECT]
    piped = subprocess.run(command, capture_output=True, check=False)
    assert piped.returncode == 1 and piped.stderr == b""
    control, terminal = pty.openpty()
    with os.fdopen(terminal, "wb") as stderr:
        shown = subprocess.run(command, stdout=subprocess.PIPE, stderr=stderr, check=False)
        assert b"100%" in os.read(control, 65536)
    os.close(control)
    assert shown.stdout == piped.stdout
