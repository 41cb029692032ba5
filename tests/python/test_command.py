"""The command: what it prints, what it refuses, and how it ends."""

from __future__ import annotations

import json
import os
import pathlib
import subprocess
import sys
from importlib.metadata import version

import pytest
import threadcalc as tc
from click.testing import CliRunner, Result
from threadcalc.command import main

ROOT = pathlib.Path(__file__).resolve().parents[2]
COVER = str(ROOT / "examples/shop/valve_cover.nc")
COMMAND = pathlib.Path(sys.executable).with_name("threadcalc")
CLEAN = b"G17 G21 G90 G94\nT1 M6 (TAP M6)\nG43 H1\nS500 M3\nG98 G84 X0 Y0 Z-12. R5. F500.\nG80\nM30\n"
JOB = {
    "thread": "M8x1.25-6H", "unit": "mm", "mode": "per_minute", "decimals": 3, "rpm": 500, "hole": "blind",
    "full_thread_depth_mm": 16, "tap": "cut", "dialect": "rs274ngc",
}  # fmt: skip


def run(*arguments: str, given: bytes | str | None = None, status: int = 0) -> Result:
    done = CliRunner().invoke(main, list(arguments), input=given)
    assert done.exit_code == status, (done.output, done.exception)
    for line in done.stdout.splitlines() if "--json" not in arguments and "--sarif" not in arguments else ():
        assert line.isascii() and len(line) <= 80, line
    if status == 2:
        assert done.stdout == "" and len(done.stderr.splitlines()) == 1, done.output
    return done


def refused(*arguments: str, given: bytes | str | None = None) -> str:
    return run(*arguments, given=given, status=2).stderr


def test_check_prints_the_report() -> None:
    done = run("check", COVER, "--dialect", "rs274ngc", status=1)
    report = str(tc.check(pathlib.Path(COVER), dialect="rs274ngc"))
    assert done.stdout.split() == f"{COVER} {report}".split() and done.stderr == ""
    clean = run("check", "-", "--dialect", "rs274ngc", given=CLEAN)
    assert clean.stdout.startswith("-\nno findings\nchecked: 1 tapping block, 1 hole\n")
    assert "Prove out: guards shut" in clean.stdout


def test_warnings_alone_are_no_errors() -> None:
    program = CLEAN.replace(b"G43 H1\n", b"")
    assert "warning length-offset-missing" in run("check", "-", "--dialect", "rs274ngc", given=program).stdout


def test_compare_prints_the_comparison(tmp_path: pathlib.Path) -> None:
    new = str(ROOT / "examples/shop/valve_cover_2.nc")
    done = run("compare", COVER, new, "--dialect", "rs274ngc")
    comparison = tc.compare(pathlib.Path(COVER), pathlib.Path(new), dialect="rs274ngc")
    assert done.stdout.split() == str(comparison).split() and len(comparison) == 4
    assert run("compare", COVER, new, "--dialect", "rs274ngc", "--json").stdout == comparison.to_json() + "\n"
    assert "rs274ngc" in refused("compare", COVER, new)
    assert "standard input" in refused("compare", "-", "-", "--dialect", "rs274ngc")
    assert "gone.nc" in refused("compare", COVER, str(tmp_path / "gone.nc"), "--dialect", "rs274ngc")


def test_check_as_data(tmp_path: pathlib.Path) -> None:
    clean = tmp_path / "clean.nc"
    clean.write_bytes(CLEAN)
    lines = run("check", COVER, str(clean), "--dialect", "rs274ngc", "--json", status=1).stdout.splitlines()
    assert [json.loads(line)["file"] for line in lines] == [COVER, str(clean)]
    assert lines[1].endswith(f'"report":{tc.check(clean, dialect="rs274ngc").to_json()}}}')
    log = run("check", COVER, str(clean), "--dialect", "rs274ngc", "--sarif", status=1).stdout
    reports = [(path, tc.check(pathlib.Path(path), dialect="rs274ngc")) for path in (COVER, clean)]
    assert log == tc.sarif(reports)


def test_a_program_that_cannot_be_read_does_not_keep_the_others_back(tmp_path: pathlib.Path) -> None:
    done = CliRunner().invoke(main, ["check", str(tmp_path / "none.nc"), COVER, "--dialect", "rs274ngc"])
    assert done.exit_code == 2 and "stale-feed-after-speed-change" in done.stdout
    assert done.stderr == f"threadcalc check: {tmp_path / 'none.nc'}: No such file or directory\n"


def test_what_a_check_is_told(tmp_path: pathlib.Path) -> None:
    dialect, machine, tools = (tmp_path / f"{name}.json" for name in ("dialect", "machine", "tools"))
    dialect.write_text(json.dumps(tc.Dialect("rs274ngc", feed_per_revolution="G95").to_dict()))
    machine.write_text('\ufeff{"highest_rpm": 400}', encoding="utf-8")
    tools.write_text('[{"number": 1, "thread": "M8"}]')
    told = ("--dialect", str(dialect), "--machine", str(machine), "--tools", str(tools))
    done = run("check", "-", *told, "--option", "thread=M6x1", given=CLEAN, status=1)
    assert "error speed-limit" in done.stdout and "error tool-thread-mismatch" in done.stdout


def test_the_dialect_has_no_default_and_is_named_with_its_choices() -> None:
    assert "--dialect" in (said := refused("check", COVER)) and "rs274ngc, unset" in said
    assert "rs274ngc or unset" in refused("check", COVER, "--dialect", "some")


@pytest.mark.parametrize(
    ("arguments", "said"),
    [
        (["check", "--dialect", "unset"], "PROGRAM"),
        (["check", "-", "--dialect", "unset", "--option", "thraed=M6"], "thread"),
        (["check", "-", "--dialect", "unset", "--option", "thread"], "KEY=VALUE"),
        (["check", "-", "--dialect", "unset", "--option", "thread=M6", "--option", "thread=M8"], "twice"),
        (["check", "-", "--dialect", "unset", "--machine", "none.json"], "none.json: No such file"),
        (["plan", "--job", "-"], "no JSON"),
        (["plan", "M8", "--rpm", "500"], "unit: missing; one of: mm inch"),
        (["identify"], "--feed"),
        (["identify", "1.25", "--unit", "mm"], "--unit"),
        (["identify", "--feed", "625", "--rpm", "500", "--mode", "per_minute"], "mm or inch"),
        (["identify", "--feed", "625", "--rpm", "500", "--unit", "mm"], "per_minute or per_revolution"),
        (["identify", "--feed", "625", "--rpm", "500", "--unit", "cm", "--mode", "per_minute"], "mm inch"),
        (["identify", "x"], "lead"),
        (["explain", "wrong-hnad"], "wrong-hand"),
        (["chekc"], "chekc"),
        (["check", "--jsno"], "--json"),
    ],
    ids=str,
)
def test_wrong_use_is_refused_in_one_line(arguments: list[str], said: str) -> None:
    message = refused(*arguments, given="")
    assert message.startswith("threadcalc") and said in message


@pytest.mark.parametrize(
    ("text", "said"),
    [
        (b'{"thread": "M8",}', "line 1, column"),
        (b'{"thread": "M8", "thread": "M6"}', "'thread' stands twice"),
        (b"[]", "expected a job"),
        (b"[3]", "expected a job"),
        (b"\xff", "byte 1 is no UTF-8"),
        (b"[" * 100_000, "no JSON"),
        (b'{"thread": 3}', "thread: not one of the choices; a text"),
        (b'{"thraed": "M8"}', "thread"),
    ],
    ids=str,
)
def test_a_job_that_cannot_be_read_is_refused_in_one_line(text: bytes, said: str) -> None:
    assert said in refused("plan", "--job", "-", given=text)


def test_plan_prints_the_page() -> None:
    page = tc.plan(JOB).text
    assert run("plan", "--job", "-", given=json.dumps(JOB)).stdout == page.rstrip("\n") + "\n"
    options = ["--unit", "mm", "--mode", "per-minute", "--decimals", "3", "--rpm", "500", "--hole", "blind"]
    options += ["--depth-mm", "16", "--tap", "cut", "--dialect", "rs274ngc"]
    assert run("plan", "M8x1.25-6H", *options).stdout.strip() == page.strip()
    assert "Cautions" in page
    limited = run("plan", "--job", "-", "--rpm", "600", "--set", "machine.highest_rpm=550", given=json.dumps(JOB))
    assert "S550" in limited.stdout
    assert "STOP" in run("plan", "M8x1.25-6g", "--job", "-", given=json.dumps(JOB), status=1).stdout


def test_plans_as_data() -> None:
    lines = run("plan", "--job", "-", "--json", given=json.dumps([JOB, JOB | {"rpm": 400}])).stdout.splitlines()
    assert lines == [tc.plan(JOB).to_json(), tc.plan(JOB | {"rpm": 400}).to_json()]
    said = refused("plan", "--job", "-", given=json.dumps([JOB, JOB | {"rpm": -1}]))
    assert "job 2: rpm" in said


def test_identify_names_the_pitch() -> None:
    assert run("identify", "1.8143").stdout == f"{tc.identify_lead('1.8143')}\n"
    words = ("--feed", "1179.286", "--rpm", "650", "--unit", "mm", "--mode", "per_minute", "--decimals", "3")
    assert "14 TPI" in run("identify", *words).stdout
    assert "1.25 mm" in run("identify", "--feed", "1.25", "--unit", "mm", "--mode", "per_revolution").stdout


def test_explain_lists_and_explains() -> None:
    listed = " ".join(run("explain").stdout.split())
    for kind in tc.program_finding_kinds():
        assert f"{kind.id}: {kind.meaning}" in listed
        assert kind.meaning in " ".join(run("explain", kind.id.upper().replace("-", "_")).stdout.split())


def test_help_says_how_the_command_ends() -> None:
    text = run("--help").stdout
    assert "Exit status: 0 if" in text and "prove out" in text
    assert run("--version").stdout == f"threadcalc {version('threadcalc')}\n"


def test_names_that_no_screen_takes_are_shown_safely(tmp_path: pathlib.Path) -> None:
    path = os.fsencode(tmp_path) + b"/port\x1b[2J\xe9.nc"
    with open(path, "wb") as file:
        file.write(CLEAN)
    done = subprocess.run([COMMAND, "check", path, "--dialect", "rs274ngc"], capture_output=True, check=False)
    assert done.returncode == 0 and b"port\\x1b[2J\\udce9.nc\nno findings" in done.stdout and done.stderr == b""


def test_the_installed_command_reads_the_standard_input() -> None:
    done = subprocess.run([COMMAND, "check", "-", "--dialect", "unset"], input=CLEAN, capture_output=True, check=False)
    assert done.returncode == 0 and b"checked: 1 tapping block" in done.stdout
    gone = subprocess.run([COMMAND, "check"], capture_output=True, check=False)
    assert gone.returncode == 2 and b"Traceback" not in gone.stderr
